import { rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type DayIndex, type ProgrammeFacts, readyKit, readyProgramme } from '@eavewell/engine';
import { type PacksReady, packOfSite, usualCarrier } from '@eavewell/paper';
import { loadPaperLanguage } from '@eavewell/words';

/** What packs are made with: plain data, for it travels to a thread. */
export interface PacksWanted {
  readonly siteIds: readonly string[];
  /** The folder they are written to. */
  readonly out: string;
  readonly language: string;
  /** What carries the kit; null: the usual one. */
  readonly carrierId: string | null;
  readonly today: DayIndex;
  /** `2026-06-09`. */
  readonly printedOn: string;
}

/** A pack that was written, or why there is none. */
export interface PackMade {
  readonly siteId: string;
  readonly pages_count: number;
  /** Rows of lists that did not find room. */
  readonly leftOut_count: number;
  /** Empty where the pack was written. */
  readonly said: readonly string[];
}

/**
 * Makes the packs of some sites, one file each: a file is there when it is whole, and not before.
 *
 * @param facts - the programme
 * @param wanted - the sites, the folder, the language, the day
 * @param told - told of each site when it is done
 * @returns when all are done
 * @definition ours
 */
export async function makePacks(
  facts: ProgrammeFacts,
  wanted: PacksWanted,
  told: (made: PackMade, nth: number) => void,
): Promise<void> {
  const shared = await packsReady(facts, wanted);
  const sites = new Map(facts.sites.map((site) => [site.siteId, site]));
  for (const [nth, siteId] of wanted.siteIds.entries()) {
    const pack = packOfSite(sites.get(siteId)!, shared);
    if (pack.kind === 'made') {
      const path = join(wanted.out, `${siteId}.pdf`);
      await writeFile(`${path}.unfinished`, pack.bytes);
      await rename(`${path}.unfinished`, path);
      told({ siteId, pages_count: pack.pages_count, leftOut_count: pack.leftOut_count, said: [] }, nth);
    } else told({ siteId, pages_count: 0, leftOut_count: 0, said: pack.said }, nth);
  }
}

async function packsReady(facts: ProgrammeFacts, wanted: PacksWanted): Promise<PacksReady> {
  const { today, printedOn } = wanted;
  const asked = new Set(wanted.siteIds);
  const sites = facts.sites.filter(({ siteId }) => asked.has(siteId));
  const { carriers } = facts.kit;
  return {
    ready: readyProgramme({ ...facts, sites }, { today }),
    kit: readyKit(facts, today),
    language: await loadPaperLanguage(wanted.language),
    options: { printedOn, printedAt: null },
    carrier: carriers.find(({ carrierId }) => carrierId === wanted.carrierId) ?? usualCarrier(carriers),
  };
}
