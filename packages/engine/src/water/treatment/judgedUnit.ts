import {
  type CleanUnit,
  cleanUnit,
  type EngineProblemCode,
  engineProblem,
  isWaterTemperature,
  min_per_h,
  type Problem,
  pumpEfficiency_fraction,
  type TreatmentFinding,
  type TreatmentUnitFacts,
  type UnitFigures,
  usableFigure,
  usableFigureOrNone,
  type Verdict,
  verdictOf,
  wornAtLowest_ratio,
} from '../../kernel/index.ts';
import { ratingsDiffer_fraction } from './constants.ts';
import { treatedLitres_L_per_day } from './dayOfTreating.ts';
import { type Driving, drivenFlow, drivingOf, type FlowsOfUnit, unchecked_kPa } from './drivenFlow.ts';
import { handleForce_N } from './handStrokes.ts';
import { type AskedOfUnit, type DayOfUnit, dayOfUnit, meanWait_min, peaksOf } from './keepsUp.ts';
import { lastPressureTest } from './lastPressureTest.ts';
import { readingNow } from './readingNow.ts';
import { type JudgedUnit, type TreatmentGiven, unknownUnit } from './treatmentGiven.ts';
import { treatmentWorking } from './treatmentWorking.ts';
import { unitHead_m } from './unitHead.ts';

/** One unit of a site: what it passes clean, now and worn, what that means for a day, and what its last test with air says. */
export function judgedUnit(unit: TreatmentUnitFacts, units_count: number, given: TreatmentGiven): JudgedUnit {
  const { site, settings, gravityHead_m } = given;
  const { siteId } = site;
  const unknown = unknownUnit(unit, settings);
  const { figures } = unit;
  const named = { unit: unit.serial, part: unit.partId ?? '' };
  if (figures === null) {
    const place = { file: 'treatmentUnits.csv', siteId, column: 'partId' };
    const problem = engineProblem('treatment.part_unknown', place, { ...named, isNamed: String(unit.partId !== null) });
    return { finding: unknown, problems: [problem], working: [] };
  }
  const clean = cleanUnit(figures);
  const problems = [...ofFigures(siteId, named, figures, clean)];
  if (!isWaterTemperature(settings.waterTemperature_C)) return { finding: unknown, problems, working: [] };
  const by = drivingOf(site, figures, clean, gravityHead_m, units_count, settings);
  problems.push(...ofDrive(siteId, named, by, clean));
  const reading = clean.clean_per_m3 === null ? null : readingNow(site, unit, clean.clean_per_m3, settings);
  const resistanceNow_ratio = reading?.worn_ratio ?? null;
  const flows =
    by === null
      ? null
      : flowsOf(by, resistanceNow_ratio, wornAtLowest_ratio(clean, usableFigure(figures.lowestFlow_L_per_h)));
  const air = lastPressureTest(site, unit, flows?.now ?? null, settings.waterTemperature_C);
  problems.push(...(reading?.problems ?? []), ...air.problems);
  const asked = askedOf(given, figures, units_count);
  const days = flows === null || asked === null ? null : daysOf(asked, flows, settings);
  const finding: TreatmentFinding = {
    ...unknown,
    ...(flows === null || by === null ? {} : flowFigures(by, flows, figures)),
    ...(asked === null ? {} : askedFigures(asked)),
    ...(days === null || asked === null ? {} : dayFigures(asked, days)),
    ...(days === null || by === null ? {} : verdictWith(days, capOf(by, clean, figures, asked))),
    resistanceNow_ratio,
    unitHead_m: unitHead_m(site, settings),
    pressureTest: air.finding,
  };
  return { finding, problems, working: treatmentWorking({ finding, given, figures, clean, units_count, flows, air }) };
}

function flowsOf(by: Driving, now_ratio: number | null, worn_ratio: number | null): FlowsOfUnit {
  const now = drivenFlow(by, now_ratio ?? 1, 'point');
  const worn = worn_ratio === null ? null : drivenFlow(by, worn_ratio, 'worst');
  const ratio = Math.max(now_ratio ?? 1, worn_ratio ?? 1);
  return { clean: drivenFlow(by, 1, 'point'), now, worn, worst: drivenFlow(by, ratio, 'worst') };
}

/** Its share of what the site asks; null where that is not known. */
function askedOf(
  { site, demandHighest_L_per_day: all_L }: TreatmentGiven,
  { backwash_fraction, backwash_min_per_day }: UnitFigures,
  units_count: number,
): AskedOfUnit | null {
  const asked_L = usableFigureOrNone(all_L);
  if (asked_L === null) return null;
  const taps_count = usableFigure(site.taps_count);
  return {
    litres_L_per_day: asked_L / units_count,
    backwash: {
      backwash_fraction: usableFigureOrNone(backwash_fraction) ?? 0,
      backwash_min_per_day: usableFigureOrNone(backwash_min_per_day) ?? 0,
    },
    taps_count: taps_count === null ? null : taps_count / units_count,
  };
}

interface DaysOfUnit {
  readonly now: DayOfUnit;
  readonly worst: DayOfUnit;
  readonly isWornKnown: boolean;
}

function daysOf(asked: AskedOfUnit, flows: FlowsOfUnit, settings: TreatmentGiven['settings']): DaysOfUnit {
  const more = { ...asked, litres_L_per_day: asked.litres_L_per_day * (1 + settings.treatmentMargin_fraction) };
  return {
    now: dayOfUnit(asked, flows.now.flow_L_per_min, settings),
    worst: dayOfUnit(more, flows.worst.flow_L_per_min, settings),
    isWornKnown: flows.worn !== null,
  };
}

function flowFigures(by: Driving, { clean, now, worn }: FlowsOfUnit, figures: UnitFigures) {
  const [bore_mm, lever_ratio] = [usableFigure(figures.pistonBore_mm), usableFigure(figures.lever_ratio)];
  const isFelt = now.pumped_kPa !== null && bore_mm !== null && lever_ratio !== null;
  return {
    drive: by.drive,
    pressure_kPa: now.pressure_kPa,
    flowClean_L_per_h: clean.flow_L_per_min * min_per_h,
    flowNow_L_per_h: now.flow_L_per_min * min_per_h,
    flowWorn_L_per_h: worn === null ? null : worn.flow_L_per_min * min_per_h,
    pumpPower_W: now.power_W,
    strokes_per_min: now.pumped_kPa === null || by.stroke_L === null ? null : now.flow_L_per_min / by.stroke_L,
    handForce_N: isFelt ? handleForce_N(now.pumped_kPa, bore_mm, lever_ratio, pumpEfficiency_fraction) : null,
  };
}

function askedFigures({ litres_L_per_day, backwash: { backwash_fraction, backwash_min_per_day } }: AskedOfUnit) {
  return {
    asked_L_per_day: litres_L_per_day,
    treated_L_per_day: treatedLitres_L_per_day(litres_L_per_day, backwash_fraction),
    backwash_min_per_day,
  };
}

function dayFigures(asked: AskedOfUnit, { now, worst, isWornKnown }: DaysOfUnit) {
  return {
    hoursNeeded_h: now.hours_h,
    hoursNeededWorn_h: isWornKnown ? worst.hours_h : null,
    peaks: peaksOf(now, isWornKnown ? worst : null),
    meanWait_min: meanWait_min(asked, now),
  };
}

/** The verdict; where only something nobody said makes it hold, it is tight. */
function verdictWith(
  { now, worst }: DaysOfUnit,
  cappedBy: EngineProblemCode | null,
): { readonly verdict: Verdict; readonly cappedBy: EngineProblemCode | null } {
  const verdict = verdictOf(now.meets, worst.meets);
  return verdict === 'holds' && cappedBy !== null ? { verdict: 'tight', cappedBy } : { verdict, cappedBy: null };
}

/** What is not known and keeps a unit from holding. */
function capOf(
  by: Driving,
  clean: CleanUnit,
  figures: UnitFigures,
  asked: AskedOfUnit | null,
): EngineProblemCode | null {
  if (by.drive === 'rated') return 'treatment.pressure_unknown';
  if (asked?.taps_count === null) return 'treatment.taps_unknown';
  return lowestFlowFault(clean, figures);
}

function lowestFlowFault(clean: CleanUnit, figures: UnitFigures): EngineProblemCode | null {
  const lowest_L_per_h = usableFigure(figures.lowestFlow_L_per_h);
  if (lowest_L_per_h === null || clean.ratedPressure_kPa === null) return 'treatment.lowest_flow_unknown';
  return wornAtLowest_ratio(clean, lowest_L_per_h) === null ? 'treatment.lowest_flow_high' : null;
}

type Named = Readonly<Record<'unit' | 'part', string>>;

/** What is missing among the figures of the part, or does not fit. */
function ofFigures(siteId: string, named: Named, figures: UnitFigures, clean: CleanUnit): readonly Problem[] {
  const at = (column: string) => ({ file: 'parts.csv', siteId, column });
  if (clean.clean_per_m3 === null) return [engineProblem('treatment.flow_unknown', at('ratedFlow_L_per_h'), named)];
  const problems: Problem[] = [];
  const { rated_L_per_h, byArea_L_per_h } = clean;
  if (
    rated_L_per_h !== null &&
    byArea_L_per_h !== null &&
    Math.abs(Math.log(rated_L_per_h / byArea_L_per_h)) > Math.log1p(ratingsDiffer_fraction)
  )
    problems.push(
      engineProblem('treatment.rating_differs', at('ratedFlow_L_per_h'), { ...named, rated_L_per_h, byArea_L_per_h }),
    );
  const fault = lowestFlowFault(clean, figures);
  if (fault !== null) {
    const lowest = usableFigure(figures.lowestFlow_L_per_h);
    const facts =
      fault === 'treatment.lowest_flow_high'
        ? { lowest_L_per_h: lowest!, clean_L_per_h: rated_L_per_h ?? byArea_L_per_h! }
        : {};
    problems.push(engineProblem(fault, at('lowestFlow_L_per_h'), { ...named, ...facts }));
  }
  const [share, minutes] = [
    usableFigureOrNone(figures.backwash_fraction),
    usableFigureOrNone(figures.backwash_min_per_day),
  ];
  if (share === null || minutes === null) {
    const column = share === null ? 'backwash_fraction' : 'backwash_min_per_day';
    problems.push(engineProblem('treatment.backwash_unknown', at(column), named));
  }
  return problems;
}

/** What is missing of what drives the water, or is too much of it. */
function ofDrive(siteId: string, named: Named, by: Driving | null, clean: CleanUnit): readonly Problem[] {
  if (clean.clean_per_m3 === null) return [];
  const atSite = { file: 'sites.csv', siteId, column: 'handPump' };
  if (by === null) return [engineProblem('treatment.pressure_unknown', atSite, { ...named, isJudged: 'false' })];
  const problems: Problem[] = [];
  if (by.drive === 'rated')
    problems.push(engineProblem('treatment.pressure_unknown', atSite, { ...named, isJudged: 'true' }));
  if (by.drive === 'handPump' && by.stroke_L === null)
    problems.push(
      engineProblem('treatment.pump_unknown', { file: 'parts.csv', siteId, column: 'pistonBore_mm' }, named),
    );
  const [is_kPa, most_kPa] = [unchecked_kPa(by), by.mostPressure_kPa];
  if (is_kPa !== null && most_kPa !== null && is_kPa > most_kPa)
    problems.push(
      engineProblem(
        'treatment.pressure_high',
        { file: 'parts.csv', siteId, column: 'highestPressure_kPa' },
        { ...named, is_kPa, most_kPa, drive: by.drive },
      ),
    );
  return problems;
}
