import { type CountedIn, engineProblem, type Problem } from '../../kernel/index.ts';
import type { SiteKit } from './kitOfSite.ts';
import { compareText, type ReadyRules } from './readyRules.ts';

/** So many of a part for several sites. */
export interface SumLine {
  readonly partId: string;
  readonly name: string;
  readonly kind: string;
  readonly countedIn: CountedIn;
  /** Null: known at no site. */
  readonly total_count: number | null;
  /** Of them to have over. */
  readonly spare_count: number | null;
  /** Is there more that nobody could count? */
  readonly isAtLeast: boolean;
  /** What each site takes, by siteId; null: not known there. */
  readonly bySite: readonly { readonly siteId: string; readonly total_count: number | null }[];
}

/** The kits of several sites together. */
export interface KitSum {
  /** By partId. */
  readonly lines: readonly SumLine[];
  readonly sites_count: number;
}

/**
 * What do the kits of several sites come to: of one trip, or of the whole programme? Their sum, part by part; sites keep their own whole bars and
 * spares.
 *
 * @param kits - kits of sites [count, in what each part is counted in], each site once
 * @returns a line for each part [count], with what each site takes [count]
 * @law the kit of the programme is the sum of those of its sites, whatever their order
 * @definition ours: docs/decisions/0244-spares-go-along-to-the-site.md
 */
export function kitsTogether(kits: readonly SiteKit[]): KitSum {
  const byPart = new Map<
    string,
    {
      name: string;
      kind: string;
      countedIn: CountedIn;
      isAtLeast: boolean;
      spare: number;
      sites: SumLine['bySite'][number][];
    }
  >();
  const sorted = [...kits].sort((a, b) => compareText(a.siteId, b.siteId));
  for (const { siteId, lines } of sorted) {
    for (const { partId, name, kind, countedIn, total_count, spare_count, isAtLeast } of lines) {
      const sum = byPart.get(partId) ?? { name, kind, countedIn, isAtLeast: false, spare: 0, sites: [] };
      sum.sites.push({ siteId, total_count });
      sum.spare += spare_count ?? 0;
      sum.isAtLeast ||= isAtLeast || total_count === null;
      byPart.set(partId, sum);
    }
  }
  const lines = [...byPart].map(([partId, { name, kind, countedIn, isAtLeast, spare, sites }]): SumLine => {
    const known = sites.flatMap(({ total_count }) => (total_count === null ? [] : [total_count]));
    const total_count = known.length === 0 ? null : known.reduce((sum, one) => sum + one, 0);
    return {
      ...{ partId, name, kind, countedIn },
      total_count,
      spare_count: total_count === null ? null : spare,
      isAtLeast,
      bySite: sites,
    };
  });
  return { lines: lines.sort((a, b) => compareText(a.partId, b.partId)), sites_count: kits.length };
}

/**
 * Which parts does no site need, and which rules count nothing anywhere? The catalogue may have more than one programme needs; a rule that counts
 * nothing was meant for something.
 *
 * @param kits - kits of all sites of a programme [count]
 * @param ready - rules and catalogue, looked through: readyRules
 * @returns one problem for parts, one for rules, where there are any
 * @problem kit.parts_uncounted - parts of the catalogue that nothing counts at any site
 * @problem kit.rules_idle - rules that count nothing at any site
 * @definition ours: docs/methods/kit.md
 */
export function uncountedIn(kits: readonly SiteKit[], ready: ReadyRules): readonly Problem[] {
  const { rules, parts } = ready;
  const counted = new Set(kits.flatMap(({ lines }) => lines.map(({ partId }) => partId)));
  const used = new Set(kits.flatMap(({ ruleIds }) => ruleIds));
  const left = [...parts.values()].filter(({ partId, kind }) => kind !== 'site' && !counted.has(partId));
  const idle = rules.filter(({ ruleId }) => !used.has(ruleId)).map(({ ruleId }) => ruleId);
  const problems: Problem[] = [];
  if (left.length > 0) {
    const of = left.map(({ partId }) => partId).sort(compareText);
    problems.push(engineProblem('kit.parts_uncounted', { file: 'parts.csv' }, { of }));
  }
  if (idle.length > 0) problems.push(engineProblem('kit.rules_idle', { file: 'kitRules.csv' }, { of: idle }));
  return problems;
}
