import type { Carrier, CarrierLoads, KitsCarried, LoadPieces, LoadRule, NotCarried, Stowed } from '@eavewell/engine';
import type { CarrierLoadsReport, KitsCarriedReport, LoadCountsReport, StowedReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { problemReport } from './problemReport.ts';

const named = ({ partId, name, each_count, count }: LoadPieces) => ({ partId, name, each_count, count });

/**
 * Pieces as they are named in a load: how many, of what, and how many are in each.
 *
 * @param pieces - of one part [count]
 * @param language - words
 * @returns the name [text]
 * @definition ours
 */
export function piecesSaid({ name, each_count, count }: LoadPieces, { say, numbers }: Language): string {
  const isPack = each_count === 1 ? 'no' : each_count < 1 ? 'part' : 'yes';
  const each = each_count < 1 ? Math.round(1 / each_count) : each_count;
  return say('kitReport.pieces', { isPack, name, count, each: numbers.quantity(each, '') });
}

const allSaid = (pieces: readonly LoadPieces[], language: Language) =>
  pieces.map((one) => piecesSaid(one, language)).join('; ');

function notCarriedSaid(piece: NotCarried, language: Language): string {
  const { numbers, say } = language;
  const over = (['kg', 'L', 'm'] as const).flatMap((unit) => {
    const by = piece[`over_${unit}`];
    return by === null ? [] : [numbers.quantity(by, unit)];
  });
  const pieces = piecesSaid(piece, language);
  return over.length === 0 ? pieces : say('kitReport.loads.over', { pieces, by: over.join(', ') });
}

function loadsSaid(found: CarrierLoads, language: Language): string {
  const { say, numbers } = language;
  const { limits, loads, isLeast, leastLoads_count, cannotCarry, noMass } = found;
  if (limits === null) return say('kitReport.loads.noLimit');
  const mass = loads.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const told = {
    count: loads.length,
    isLeast: isLeast ? 'yes' : 'no',
    least: leastLoads_count ?? loads.length,
    mass: numbers.quantity(mass, 'kg'),
  };
  const isNothing = loads.length === 0 && cannotCarry.length === 0 && noMass.length === 0;
  return [
    ...(loads.length > 0 ? [say('kitReport.loads.made', told)] : []),
    ...(isNothing ? [say('kitReport.loads.none')] : []),
    ...(cannotCarry.length > 0
      ? [
          say('kitReport.loads.cannot', {
            pieces: cannotCarry.map((one) => notCarriedSaid(one, language)).join('; '),
          }),
        ]
      : []),
    ...(noMass.length > 0
      ? [
          say('kitReport.loads.noMass', {
            pieces: allSaid(noMass, language),
            count: noMass.reduce((sum, { count }) => sum + count, 0),
          }),
        ]
      : []),
  ].join(' ');
}

const rulesSaid = (rules: readonly LoadRule[], { say }: Language) =>
  rules.map((name) => ({ name, said: say(`loads.rule.${name}`) }));

/**
 * How a kit is carried by one carrier, field by field, with its sentences.
 *
 * @param carrier - the carrier
 * @param found - its loads
 * @param language - words
 * @returns the part of the report
 * @definition ours
 */
export function carrierLoadsReport(carrier: Carrier, found: CarrierLoads, language: Language): CarrierLoadsReport {
  return {
    ...{ carrierId: found.carrierId, name: carrier.name, mode: found.mode },
    finding: loadsSaid(found, language),
    limits: found.limits && { ...found.limits },
    loads: found.loads.map((load) => ({ ...load, pieces: load.pieces.map(named) })),
    ...{ leastLoads_count: found.leastLoads_count, isLeast: found.isLeast },
    cannotCarry: found.cannotCarry.map(({ over_kg, over_L, over_m, ...piece }) => ({
      ...named(piece),
      ...{ over_kg, over_L, over_m },
    })),
    noMass: found.noMass.map(named),
    noBulk: found.noBulk.map(named),
    noLength: found.noLength.map(named),
    rules: rulesSaid(found.rules, language),
    cautions: found.cautions.map((name) => ({ name, said: language.say(`loads.caution.${name}`) })),
    problems: found.problems.map((problem) => problemReport(problem, language)),
  };
}

/**
 * The same as counts alone.
 *
 * @param found - loads of a carrier
 * @returns how many loads, and how many pieces are in none [count]
 * @definition ours
 */
export function loadCountsReport(found: CarrierLoads): LoadCountsReport {
  const sum = (pieces: readonly LoadPieces[]) => pieces.reduce((all, { count }) => all + count, 0);
  return {
    carrierId: found.carrierId,
    loads_count: found.limits === null ? null : found.loads.length,
    isLeast: found.isLeast,
    cannotCarry_count: sum(found.cannotCarry),
    noMass_count: sum(found.noMass),
  };
}

/**
 * What is put aboard, the first first.
 *
 * @param stowed - pieces in the order they are put in
 * @param language - words
 * @returns the part of the report
 * @definition ours
 */
export function stowedReport(stowed: readonly Stowed[], language: Language): StowedReport[] {
  return stowed.map(({ stopId, isFragile, rules, ...piece }) => ({
    ...named(piece),
    ...{ siteId: stopId, isFragile, rules: rulesSaid(rules, language) },
  }));
}

/**
 * How many whole kits go into each carrier, of the sites that need one.
 *
 * @param sites - of each site with a kit, what goes into the same carriers in the same order
 * @param language - words
 * @returns a part of the report for each carrier
 * @definition ours: fewest, middle and most over the sites
 */
export function kitsCarriedReport(
  sites: readonly (readonly KitsCarried[])[],
  carriers: readonly Carrier[],
  language: Language,
): KitsCarriedReport[] {
  return carriers.map((carrier) => {
    const found = sites.flatMap((all) => all.filter((one) => one.carrier.carrierId === carrier.carrierId));
    const counts = found.flatMap(({ found: kits }) =>
      kits === null || kits.kits_count === null ? [] : [kits.kits_count],
    );
    counts.sort((a, b) => a - b);
    const limitedBy = { mass: 0, bulk: 0, longest: 0, keptApart: 0 };
    for (const { found: kits } of found) if (kits !== null && kits.limitedBy !== null) limitedBy[kits.limitedBy]++;
    const figures = {
      ...{ sites_count: sites.length, known_count: counts.length },
      least_count: counts[0] ?? null,
      middle_count: middleOf(counts),
      most_count: counts.at(-1) ?? null,
    };
    return {
      ...{ carrierId: carrier.carrierId, name: carrier.name, mode: carrier.mode },
      finding: [carriedSaid(figures, language), ...limitsSaid(limitedBy, language)].join(' '),
      ...figures,
      limitedBy,
    };
  });
}

/** Of two in the middle, the fewer. */
const middleOf = (sorted: readonly number[]) => sorted[Math.floor((sorted.length - 1) / 2)] ?? null;

/** By which limit, at how many sites. */
function limitsSaid(limitedBy: KitsCarriedReport['limitedBy'], { say }: Language): readonly string[] {
  const limits = (['mass', 'bulk', 'longest', 'keptApart'] as const).flatMap((limit) =>
    limitedBy[limit] === 0 ? [] : [say(`kitReport.carried.${limit}`, { count: limitedBy[limit] })],
  );
  return limits.length === 0 ? [] : [say('kitReport.carried.decided', { limits: limits.join('; ') })];
}

function carriedSaid(
  figures: Pick<KitsCarriedReport, 'sites_count' | 'known_count' | 'least_count' | 'middle_count' | 'most_count'>,
  { say }: Language,
): string {
  const { sites_count, known_count, least_count, middle_count, most_count } = figures;
  if (sites_count === 0) return say('kitReport.carried.none');
  if (least_count === null || middle_count === null || most_count === null) return say('kitReport.carried.unknown');
  return say('kitReport.carried.some', {
    isOne: least_count === most_count ? 'yes' : 'no',
    ...{ least: least_count, most: most_count, middle: middle_count, known: known_count, sites: sites_count },
    isAll: known_count === sites_count ? 'yes' : 'no',
  });
}
