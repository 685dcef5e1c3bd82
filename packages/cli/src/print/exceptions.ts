import { type SiteDesign, type SiteRemedies, type Verdict, verdictOrder } from '@eavewell/engine';
import { exceptionsFirst, findingOf, peopleDays } from '@eavewell/report';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { design } = spoken.commandLine;
const { numbers } = spoken;

/** How many sites are shown before the rest are only counted. */
const mostShown = 40;

/** What is kept of a site until all are judged, so that the exceptions can be put in order. */
export interface Exception {
  readonly siteId: string;
  readonly verdict: Verdict;
  readonly who: string;
  readonly finding: string;
  /** Its target, where that is not the programme's. */
  readonly target: string | null;
  readonly dry: string | null;
  /** The smallest change that mends it, for a site that is short. */
  readonly remedy: string | null;
  /** People × dry days a year; people alone where the dry days are not known. */
  readonly weight: number;
}

/** Who a site is: name, id and people. */
export function whoText(site: Pick<SiteDesign, 'name' | 'siteId' | 'people' | 'design_people'>): string {
  const { name, siteId, people, design_people } = site;
  if (people === null) return design.who(name, siteId, design.peopleNotKnown);
  const grown = design_people === null || design_people === people ? '' : design.inDesignYear(design_people);
  return design.who(name, siteId, `${numbers.people(people)}${grown}`);
}

/** The sites as they are judged: counted, and those that do not hold kept. */
export class Exceptions {
  readonly counts: Record<Verdict, number> = { short: 0, unknown: 0, tight: 0, holds: 0 };
  readonly #kept: Exception[] = [];
  #firstHolding: string | null = null;

  add(site: SiteDesign, remedies: SiteRemedies | null): void {
    this.counts[site.verdict]++;
    if (site.verdict === 'holds') {
      this.#firstHolding ??= site.siteId;
      return;
    }
    this.#kept.push({
      siteId: site.siteId,
      verdict: site.verdict,
      who: whoText(site),
      finding: findingOf(site, spoken),
      target: ownTarget(site),
      dry: dryText(site),
      remedy: site.verdict === 'short' && remedies ? remedyText(remedies) : null,
      weight: peopleDays(site),
    });
  }

  /** Short first, then unknown, then tight; within each the most people for the most dry days. */
  inOrder(): readonly Exception[] {
    return [...this.#kept].sort(exceptionsFirst);
  }

  print(sheet: Sheet, folder: string): void {
    sheet.blank();
    const inOrder = this.inOrder();
    const all = Object.values(this.counts).reduce((sum, count) => sum + count, 0);
    if (all === 0) {
      sheet.line(design.noSites);
      return;
    }
    sheet.tally(this.counts, verdictOrder);
    const shown = inOrder.slice(0, mostShown);
    for (const site of shown) {
      sheet.blank();
      sheet.verdict(
        site.verdict,
        [site.who, site.target, site.finding, site.dry, site.remedy].filter((text) => text !== null),
      );
    }
    sheet.blank();
    if (inOrder.length > shown.length) {
      sheet.line(design.moreSites(inOrder.length - shown.length), 0, 2);
      sheet.blank();
      sheet.tally(this.counts, verdictOrder);
      sheet.blank();
    }
    const example = inOrder[0]?.siteId ?? this.#firstHolding ?? '';
    if (this.counts.holds > 0) sheet.verdict('holds', [spoken.commandLine.verdictGroups.holds(this.counts.holds)]);
    sheet.line(design.notJudgedYet);
    sheet.line(design.seeOne(folder, example), 0, 2);
  }
}

/** What a site was judged by, where that is not the programme's target; of a site without a verdict nothing was. */
export function ownTarget({ siteClass, target, targetFrom, verdict }: SiteDesign): string | null {
  if (siteClass === null || targetFrom === 'programme' || verdict === 'unknown') return null;
  return `${spoken.findings.classTarget(siteClass, target)}.`;
}

/** The smallest change that mends it, or why none does. */
function remedyText({ remedies: [first], notMended }: SiteRemedies): string | null {
  if (first) return spoken.remedies.smallest(first);
  return notMended && spoken.remedies.notMended(notMended);
}

/** Dry days and the longest run, where there are any. */
function dryText(site: SiteDesign): string | null {
  const [worst] = site.storages;
  const run = worst?.longestRun;
  if (!worst || !run) return null;
  return `${design.dryDays(worst.dryDays_per_year, worst.dryDays_per_year_range)}; ${design.longestRun(run.days, numbers.date(run.from))}.`;
}
