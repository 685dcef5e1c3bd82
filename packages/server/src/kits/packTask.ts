import type { SiteFacts } from '@eavewell/engine';
import { packOf, usualCarrier } from '@eavewell/paper';
import { reportedFaults, siteReportIn } from '@eavewell/report';
import type { DesignReport, SiteReport } from '@eavewell/tables';
import { loadPaperLanguage } from '@eavewell/words';
import { readKits, readSiteKits, revived } from './keptKits.ts';

/** What the pack of a site is made of. */
export interface PackAsked {
  /** The facts and the report of the site, each as the kept design has it, as JSON. */
  readonly facts: string;
  readonly report: string;
  readonly faults: DesignReport['problems'];
  /** Where kits are kept. */
  readonly kits: string;
  readonly siteId: string;
  readonly language: string;
  readonly printedOn: string;
  readonly printedAt: string;
}

/** A pack as a file, or the letters no face has. */
export type PackMade =
  | { readonly kind: 'made'; readonly bytes: Uint8Array }
  | { readonly kind: 'lettersMissing'; readonly letters: readonly string[] };

/** Lays the pack of one site on paper. */
export async function packTask(asked: PackAsked): Promise<PackMade> {
  const language = await loadPaperLanguage(asked.language);
  const { site } = JSON.parse(asked.facts, revived) as { readonly site: SiteFacts };
  const report = siteReportIn(JSON.parse(asked.report) as SiteReport, language, reportedFaults(asked.faults));
  const kept = await readKits(asked.kits);
  const place = kept?.sites.find(({ siteId }) => siteId === asked.siteId);
  const [kit] = kept === null || place === undefined ? [] : ((await readSiteKits(asked.kits, [place])) ?? []);
  const carrier = usualCarrier(kept?.market.kit.carriers ?? []);
  const { keptApart = [] } = kept?.market.kit ?? {};
  const carried = { parts: kept?.market.parts ?? [], carrier, keptApart };
  const programme = kept?.market.settings.programme ?? '';
  const given = { site, report, lines: kit?.kit.lines ?? [], carried, programme };
  const made = packOf(given, language, { printedOn: asked.printedOn, printedAt: asked.printedAt });
  return made.kind === 'made'
    ? { kind: 'made', bytes: made.bytes }
    : { kind: 'lettersMissing', letters: made.letters.map(({ letter }) => letter) };
}
