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
  type SourceDaysOfBody,
  type WaterOfYear,
} from '../../kernel/index.ts';
import { burdenRange, burdenRangeOfWaters, type RawRange } from './burdenRange.ts';
import { referencePathogens, yearOfDrinking_days } from './constants.ts';
import { rowReductions } from './creditedReductions.ts';
import { type DaysOfSource, meanOf } from './daysOfSource.ts';
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
import { neededOfWaters_log10, sourceDaysByYear, yearOfWaters } from './yearOfWaters.ts';

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
  /** Would a germ of the second source be too many, were its water drunk every day, where it is drunk on some? */
  readonly isSourceOver: boolean;
  readonly cappedBy: EngineProblemCode | null;
  readonly problems: readonly Problem[];
}

/** What each germ does to those who drink: each water as if it were drunk every day where its days are not known, else all waters of the year together. */
// long: what is missing, backwards or without a range, each told beside the risks
export function safetyRisks(
  site: SiteFacts,
  { credited }: SafetyBarriers,
  drinkers: Drinkers,
  days: DaysOfSource,
  settings: DesignSettings,
): SafetyRisks {
  const { source, bodies } = days;
  const waters = [null, ...(source === null ? [] : [source.secondSourceId])];
  const rows = site.safety.rawWater.filter(({ secondSourceId }) => waters.includes(secondSourceId));
  const missing = waters.map((of) => ({ of, germs: germsMissing(rows, of) })).filter(({ germs }) => germs.length > 0);
  const of = { credited, drinkers, settings };
  const risks =
    source === null || bodies === null
      ? rows.map((raw) => riskOf({ first: raw, second: null, bodies: null }, of))
      : pathogens.flatMap((germ) => {
          const [first = null, second = null] = waters.map((water) =>
            rows.find(({ secondSourceId, pathogen }) => secondSourceId === water && pathogen === germ),
          );
          return first === null && second === null ? [] : [riskOf({ first, second, bodies }, of)];
        });
  const place = { file: 'rawWater.csv', siteId: site.siteId };
  const over = bodies === null ? [] : rows.filter((raw) => raw.secondSourceId !== null && isOverEveryDay(raw, of));
  const told = (code: EngineProblemCode, those: readonly RawWater[]) =>
    those.length === 0 ? [] : [engineProblem(code, place, { germs: those.map(({ pathogen }) => pathogen) })];
  const unsourced = rows.filter(({ source: says }) => says === null);
  const backwards = rows.filter((raw) => isBackwards(raw));
  const withoutRange = rows.filter((raw) => raw.high_per_L === null);
  return {
    risks: risks.sort((a, b) => b.DALYHigh_per_person_per_year - a.DALYHigh_per_person_per_year),
    isKnown: missing.length === 0,
    isSourceOver: over.length > 0,
    cappedBy:
      backwards.length > 0
        ? 'safety.raw_range_backwards'
        : withoutRange.length > 0
          ? 'safety.raw_without_range'
          : unsourced.length > 0
            ? 'safety.raw_without_source'
            : over.length > 0
              ? 'safety.source_over_target'
              : null,
    problems: [
      ...(over.length > 0
        ? [
            engineProblem('safety.source_over_target', place, {
              source: source!.name,
              germs: over.map(({ pathogen }) => pathogen),
            }),
          ]
        : []),
      ...missing.map(({ of: water, germs }) =>
        water === null
          ? engineProblem('safety.raw_unknown', place, { germs })
          : engineProblem('safety.source_raw_unknown', place, { source: source!.name, germs }),
      ),
      ...(source !== null && bodies === null
        ? [engineProblem('safety.source_days_unknown', place, { source: source.name })]
        : []),
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

/** Waters of a year with one germ in them; bodies with the days of the second, null where the one there is is drunk every day. */
interface Waters {
  readonly first: RawWater | null;
  readonly second: RawWater | null;
  readonly bodies: readonly SourceDaysOfBody[] | null;
}

/** A water of which nobody counted this germ counts as without it: what is known of the others may be too much already. */
const none: RawRange = { low_per_L: null, typical_per_L: 0, high_per_L: null };

/** Who drinks, and what is done to what they drink. */
interface Drinking {
  readonly credited: Reductions;
  readonly drinkers: Drinkers;
  readonly settings: DesignSettings;
}

/** How people drink, as it bears on one germ. */
function habitsOf(germ: Pathogen, { drinkers, settings }: Drinking) {
  const { groups, off_days, dirtied } = drinkers;
  const pathogen = germOf(germ, settings);
  const people = groups.map(
    ({ people_factor, reductions }): DrinkersGroup => ({
      ...{ people_factor, reduction_log10: reductions[fieldOf[pathogen.germs]], untreated_fraction: 0 },
    }),
  );
  return { off_days, dirtied, groups: people, pathogen };
}

/** Would this water be over the target, were it drunk every day? */
function isOverEveryDay({ pathogen, typical_per_L }: RawWater, of: Drinking): boolean {
  const { litresDrunk_L_per_person_per_day: usual, healthTarget_DALY_per_person_per_year: target } = of.settings;
  const year = yearOfDrinking({ ...habitsOf(pathogen, of), raw_per_L: typical_per_L, drunk_L_per_day: usual });
  return year!.burden_DALY_per_person_per_year > target;
}

function riskOf({ first, second, bodies }: Waters, of: Drinking): PathogenRisk {
  const { credited, settings } = of;
  const { skipping_fraction, dirtied } = of.drinkers;
  const germ = (first ?? second!).pathogen;
  const habits = habitsOf(germ, of);
  const { pathogen, groups: people } = habits;
  const field = fieldOf[pathogen.germs];
  const usual = settings.litresDrunk_L_per_person_per_day;
  const high = Math.max(usual, settings.litresDrunkHigh_L_per_person_per_day);
  const [range, secondRange] = [first ? rangeOf(first) : none, second ? rangeOf(second) : none];
  const given: DrinkingGiven = { ...habits, raw_per_L: range.typical_per_L, drunk_L_per_day: usual };
  const other = bodies && { raw: secondRange.typical_per_L, bodies };
  const year = yearOfWaters(given, other)!;
  const drunk = { usual_L_per_day: usual, high_L_per_day: high };
  const judged =
    bodies === null
      ? burdenRange(habits, range, drunk, settings.seed)!
      : burdenRangeOfWaters(habits, range, { raw: secondRange, bodies }, drunk, settings.seed)!;
  const { burden_DALY_per_person_per_year: burden } = year;
  const ofSkipping = yearOfWaters({ ...given, groups: [{ ...people.at(-1)!, people_factor: 1 }] }, other)!;
  const borne = skipping_fraction * ofSkipping.burden_DALY_per_person_per_year;
  const target = settings.healthTarget_DALY_per_person_per_year;
  const source_days = meanOf(bodies === null ? [] : sourceDaysByYear(bodies));
  const waterOf = (raw: RawWater | null, days_per_year: number): readonly WaterOfYear[] =>
    raw === null
      ? []
      : [
          {
            secondSourceId: raw.secondSourceId,
            days_per_year,
            raw_per_L: raw.typical_per_L,
            rawHigh_per_L: rangeOf(raw).high_per_L,
            drinking_per_L: drunk_per_L({ raw_per_L: raw.typical_per_L, dirtied }, 10 ** -credited[field]),
          },
        ];
  return {
    pathogen: germ,
    waters: [...waterOf(first, yearOfDrinking_days - source_days), ...waterOf(second, source_days)],
    infection_per_year: year.infected_fraction,
    illness_per_year: year.ill_fraction,
    DALY_per_person_per_year: burden,
    DALYHigh_per_person_per_year: Math.max(burden, judged.judged_DALY_per_person_per_year),
    fromSkipping_fraction: burden > 0 ? Math.min(1, borne / burden) : 0,
    needed_log10:
      other === null
        ? neededReduction_log10(given.raw_per_L, usual, pathogen, target)
        : neededOfWaters_log10(given, other, target),
  };
}
