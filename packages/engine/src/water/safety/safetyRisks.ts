import {
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type Pathogen,
  type PathogenRisk,
  type Problem,
  pathogens,
  type RawWater,
  type Reductions,
  type SiteFacts,
} from '../../kernel/index.ts';
import { burdenRange, type RawRange } from './burdenRange.ts';
import { referencePathogens, yearOfDrinking_days } from './constants.ts';
import { rowReductions } from './creditedReductions.ts';
import type { ReferencePathogen } from './germs.ts';
import { byClass, fieldOf, noReductions } from './reductions.ts';
import type { RowBarrier, SafetyBarriers } from './safetyBarriers.ts';
import { neededReduction_log10 } from './yearlyBurden.ts';
import {
  type DirtiedAgain,
  type DrinkersGroup,
  type DrinkingGiven,
  drunk_per_L,
  yearOfDrinking,
} from './yearOfDrinking.ts';

/** How people drink: who passes which barriers, how often nobody does, and what comes back into the cup. */
export interface Drinkers {
  readonly groups: readonly { readonly people_factor: number; readonly reductions: Reductions }[];
  /** Share who drink raw water, 0 where that is not known. */
  readonly skipping_fraction: number;
  readonly off_days: number;
  readonly dirtied: DirtiedAgain | null;
}

/**
 * Who drinks what. The same people are taken to leave out each barrier that not everybody uses: those who skip all treatment first, then those without the one fewest use. It
 * is the worst way the shares can fall together.
 */
export function drinkersOf(site: SiteFacts, row: readonly RowBarrier[], settings: DesignSettings): Drinkers {
  const skipping_fraction = skippingOf(site, settings) ?? 0;
  const most_fraction = 1 - skipping_fraction;
  const uses = row.map(({ credited, used_fraction }) => ({ credited, upTo: Math.min(used_fraction, most_fraction) }));
  const cuts = [...new Set([...uses.map(({ upTo }) => upTo), most_fraction])].sort((a, b) => a - b);
  const groups = cuts.map((cut, index) => ({
    people_factor: cut - (cuts[index - 1] ?? 0),
    reductions: rowReductions(uses.filter(({ upTo }) => upTo >= cut).map(({ credited }) => credited)),
  }));
  const comesBack_fraction = settings.recontamination_fraction;
  return {
    groups: [...groups, { people_factor: skipping_fraction, reductions: noReductions }],
    skipping_fraction,
    off_days: daysOffOf(site, settings) ?? 0,
    dirtied: comesBack_fraction === null ? null : { growth_factor: 1, comesBack_fraction, added_per_L: 0 },
  };
}

/** Share of the people who drink untreated water, as the site or the settings say; null where nobody does. */
export function skippingOf({ safety }: SiteFacts, settings: DesignSettings): number | null {
  return safety.skipping_fraction ?? settings.skipping_fraction;
}

/** Days of a year without treatment, as the site or the settings say; null where nobody does. */
export function daysOffOf({ safety }: SiteFacts, settings: DesignSettings): number | null {
  return safety.daysOff_per_year ?? settings.daysOff_per_year;
}

/** What all of it does to each class, as the mean of what is drunk: for display alone. */
export function effectiveOf({ groups, off_days, dirtied }: Drinkers): Reductions {
  const off_fraction = Math.min(off_days / yearOfDrinking_days, 1);
  return byClass((field) => {
    const people = groups.reduce((sum, { people_factor }) => sum + people_factor, 0);
    const treated = groups.reduce((sum, of) => sum + (of.people_factor / people) * 10 ** -of.reductions[field], 0);
    return 0 - Math.log10(drunk_per_L({ raw_per_L: 1, dirtied }, off_fraction + (1 - off_fraction) * treated));
  });
}

/** The risks of a site's waters. */
export interface SafetyRisks {
  /** The worst first. */
  readonly risks: readonly PathogenRisk[];
  /** Is the raw water of every germ known, of roofs and of the second source in use? */
  readonly isKnown: boolean;
  readonly cappedBy: EngineProblemCode | null;
  readonly problems: readonly Problem[];
}

/** What each germ of each water does to those who drink it. */
export function safetyRisks(
  site: SiteFacts,
  { credited }: SafetyBarriers,
  drinkers: Drinkers,
  settings: DesignSettings,
): SafetyRisks {
  const source = site.secondSource;
  const waters = [null, ...(source === null ? [] : [source.secondSourceId])];
  const rows = site.safety.rawWater.filter(({ secondSourceId }) => waters.includes(secondSourceId));
  const missing = waters.map((of) => ({ of, germs: germsMissing(rows, of) })).filter(({ germs }) => germs.length > 0);
  const risks = rows.map((raw) => riskOf(raw, credited, drinkers, settings));
  const place = { file: 'rawWater.csv', siteId: site.siteId };
  const told = (code: EngineProblemCode, of: readonly RawWater[]) =>
    of.length === 0 ? [] : [engineProblem(code, place, { germs: of.map(({ pathogen }) => pathogen) })];
  const unsourced = rows.filter(({ source: says }) => says === null);
  const backwards = rows.filter((raw) => isBackwards(raw));
  const withoutRange = rows.filter((raw) => raw.high_per_L === null);
  return {
    risks: risks.sort((a, b) => b.DALYHigh_per_person_per_year - a.DALYHigh_per_person_per_year),
    isKnown: missing.length === 0,
    cappedBy:
      backwards.length > 0
        ? 'safety.raw_range_backwards'
        : withoutRange.length > 0
          ? 'safety.raw_without_range'
          : unsourced.length > 0
            ? 'safety.raw_without_source'
            : null,
    problems: [
      ...missing.map(({ of, germs }) =>
        of === null
          ? engineProblem('safety.raw_unknown', place, { germs })
          : engineProblem('safety.source_raw_unknown', place, { source: source!.name, germs }),
      ),
      ...backwards.map(({ pathogen, low_per_L, typical_per_L, high_per_L }) =>
        engineProblem('safety.raw_range_backwards', place, {
          germ: pathogen,
          ...(low_per_L === null ? {} : { low_per_L }),
          typical_per_L,
          ...(high_per_L === null ? {} : { high_per_L }),
        }),
      ),
      ...told('safety.raw_without_range', withoutRange),
      ...told('safety.raw_without_source', unsourced),
    ],
  };
}

function germsMissing(rows: readonly RawWater[], of: string | null): readonly Pathogen[] {
  return pathogens.filter(
    (germ) => !rows.some(({ secondSourceId, pathogen }) => secondSourceId === of && pathogen === germ),
  );
}

function isBackwards({ low_per_L, typical_per_L, high_per_L }: RawWater): boolean {
  return (low_per_L ?? 0) > typical_per_L || (high_per_L ?? typical_per_L) < typical_per_L;
}

/** The range of raw water that can be used: an end on the wrong side of what is usual is none. */
function rangeOf({ low_per_L, typical_per_L, high_per_L }: RawWater): RawRange {
  return {
    low_per_L: low_per_L !== null && low_per_L <= typical_per_L ? low_per_L : null,
    typical_per_L,
    high_per_L: high_per_L !== null && high_per_L >= typical_per_L ? high_per_L : null,
  };
}

/** The germ as the settings have its people. */
export function germOf(pathogen: Pathogen, settings: DesignSettings): ReferencePathogen {
  const germ = referencePathogens[pathogen];
  return pathogen === 'rotavirus' ? { ...germ, susceptible_fraction: settings.susceptibleToRotavirus_fraction } : germ;
}

function riskOf(
  raw: RawWater,
  credited: Reductions,
  { groups, skipping_fraction, off_days, dirtied }: Drinkers,
  settings: DesignSettings,
): PathogenRisk {
  const pathogen = germOf(raw.pathogen, settings);
  const field = fieldOf[pathogen.germs];
  const people = groups.map(
    ({ people_factor, reductions }): DrinkersGroup => ({
      ...{ people_factor, reduction_log10: reductions[field], untreated_fraction: 0 },
    }),
  );
  const usual = settings.litresDrunk_L_per_person_per_day;
  const high = Math.max(usual, settings.litresDrunkHigh_L_per_person_per_day);
  const range = rangeOf(raw);
  const habits = { off_days, dirtied, groups: people, pathogen };
  const given: DrinkingGiven = { ...habits, raw_per_L: raw.typical_per_L, drunk_L_per_day: usual };
  const year = yearOfDrinking(given)!;
  const drunk = { usual_L_per_day: usual, high_L_per_day: high };
  const judged = burdenRange(habits, range, drunk, settings.seed)!.judged_DALY_per_person_per_year;
  const { burden_DALY_per_person_per_year: burden } = year;
  const ofSkipping = yearOfDrinking({ ...given, groups: [{ ...people.at(-1)!, people_factor: 1 }] })!;
  const borne = skipping_fraction * ofSkipping.burden_DALY_per_person_per_year;
  return {
    pathogen: raw.pathogen,
    secondSourceId: raw.secondSourceId,
    raw_per_L: raw.typical_per_L,
    rawHigh_per_L: range.high_per_L,
    drinking_per_L: drunk_per_L(given, 10 ** -credited[field]),
    infection_per_year: year.infected_fraction,
    illness_per_year: year.ill_fraction,
    DALY_per_person_per_year: burden,
    DALYHigh_per_person_per_year: Math.max(burden, judged),
    fromSkipping_fraction: burden > 0 ? Math.min(1, borne / burden) : 0,
    needed_log10: neededReduction_log10(
      raw.typical_per_L,
      usual,
      pathogen,
      settings.healthTarget_DALY_per_person_per_year,
    ),
  };
}
