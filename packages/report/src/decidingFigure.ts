import {
  type DesignSettings,
  type DrainageFinding,
  type HeadFinding,
  leastSafety_factor,
  type Problem,
  personPower_W,
  type SafetyFinding,
  type SettlingFinding,
  type SiteDesign,
  type StandFinding,
  type Station,
  stations,
  type TreatmentFinding,
} from '@eavewell/engine';
import type { SiteShort } from '@eavewell/tables';

type Deciding = NonNullable<SiteShort['decides']>;
type Figure = Omit<Deciding, 'station'>;
type Judged = Pick<
  SiteDesign,
  'verdict' | 'stations' | 'drainage' | 'settling' | 'stands' | 'head' | 'treatment' | 'safety'
>;

/** What a day at a treatment unit is held against. */
type Limits = Pick<DesignSettings, 'pumping_h_per_day' | 'waitLimit_min'>;

/** Figures of a list are told to a hundredth: the whole figure stands in the site's own report. */
const hundredth = (value: number) => Math.round(value * 100) / 100;

/** The first station, along the water's path, that stands as badly as the site; null where none was judged. */
const worstStation = ({ verdict, stations: all }: Judged): Station | null =>
  stations.find((station) => all[station] === verdict) ?? null;

/**
 * By which figure is a site short or tight, where that is not its tank?
 *
 * @param design - what the site came to
 * @param limits - hours people pump and how long the last in line is to wait [h/day], [min]
 * @returns the figure of its worst station with its range and what it is held against [L/s, fraction, kPa, factor, m, W, L/min, h, min,
 *   germs in 100 mL or healthy years lost a year by a million people: unit says which]; null where the tank is its worst station, or it holds or is unknown
 * @definition ours: the part that is fullest, the tank or the way to the tap that is worst off
 */
export function decidingFigure(design: Judged, limits: Limits): SiteShort['decides'] {
  const station = worstStation(design);
  if (station === null || (design.verdict !== 'short' && design.verdict !== 'tight')) return null;
  const figure = figureOf(station, design, limits);
  return figure && { station, ...figure };
}

function figureOf(station: Station, design: Judged, limits: Limits): Figure | null {
  const { verdict, drainage, settling, stands, head, treatment, safety } = design;
  if (station === 'gutter') return drainage && drainageFigure(drainage);
  if (station === 'settling') return settling[0] ? settlingFigure(settling[0]) : null;
  if (station === 'stand') return stands[0] ? standFigure(stands[0]) : null;
  if (station === 'tap') return head[0] ? headFigure(head[0]) : null;
  if (station === 'treatmentUnit') {
    const worst = treatment.find((one) => one.verdict === verdict);
    return worst ? treatmentFigure(worst, limits) : null;
  }
  if (station === 'cup') return safety && safetyFigure(safety);
  return null;
}

/** A figure, or none where its value is not known. */
function figure(
  name: Figure['figure'],
  id: string,
  unit: string,
  value: number | null,
  limit: number | null,
  range: Figure['range'] = null,
): Figure | null {
  if (value === null) return null;
  const ends = range && { low: hundredth(range.low), high: hundredth(range.high) };
  return { figure: name, id, value: hundredth(value), range: ends, limit: limit && hundredth(limit), unit };
}

function drainageFigure({ parts, governing, verdict }: DrainageFinding): Figure | null {
  const part = parts[governing ?? -1] ?? parts.find((one) => one.verdict === verdict);
  if (part === undefined) return null;
  const { flow_L_per_s, flow_L_per_s_range, capacity_L_per_s } = part;
  return figure(part.part, part.id, 'L/s', flow_L_per_s, capacity_L_per_s, flow_L_per_s_range);
}

function settlingFigure({ tankId, verdict, settledByDay_fraction, settledInStorm_fraction }: SettlingFinding) {
  const id = tankId ?? '';
  return verdict === 'short' || settledInStorm_fraction === null
    ? figure('settledByDay', id, 'fraction', settledByDay_fraction, null)
    : figure('settledInStorm', id, 'fraction', settledInStorm_fraction, null);
}

/** What fails first: the ground, else the wind on the empty tank, or on a tank that is not fastened. Where nothing does, what is nearer its limit. */
function standFigure(found: StandFinding): Figure | null {
  const { tankId, lacks, cappedBy, bearing_kPa, bearingAllowed_kPa, empty, loose } = found;
  const leastOf = (name: 'wind' | 'fastening', one: StandFinding['empty'] | null) => {
    const known = [one?.overturning_factor ?? null, one?.sliding_factor ?? null].filter((value) => value !== null);
    return known.length === 0 ? null : figure(name, tankId, 'factor', Math.min(...known), leastSafety_factor);
  };
  const bearing = figure('bearing', tankId, 'kPa', bearing_kPa, bearingAllowed_kPa);
  const isLoose = lacks.length === 0 ? cappedBy !== null : lacks.every((lack) => lack === 'fastening');
  const wind = isLoose ? leastOf('fastening', loose) : leastOf('wind', empty);
  return lacks.includes('bearing') || (lacks.length === 0 && wind === null) ? bearing : (wind ?? bearing);
}

function headFigure({ tankIds, headLeft_m, pumpAdds_m, pumpPower_W }: HeadFinding): Figure | null {
  const id = tankIds.join('+');
  if (pumpAdds_m !== null) return figure('pumpPower', id, 'W', pumpPower_W, personPower_W);
  return figure('headLeft', id, 'm', headLeft_m, null);
}

/** The hours it takes, or the wait of the last in line where that is what is too long; of a worn set where the set as it is now would do. */
function treatmentFigure(found: TreatmentFinding, { pumping_h_per_day, waitLimit_min }: Limits): Figure | null {
  const { verdict, hoursNeeded_h, hoursNeededWorn_h, peaks } = found;
  const id = found.serial ?? '';
  const isWorn = verdict === 'tight';
  const hours_h = isWorn ? hoursNeededWorn_h : hoursNeeded_h;
  const waits = peaks.map(({ lastWait_min, lastWaitWorn_min }) => (isWorn ? lastWaitWorn_min : lastWait_min));
  const isLong = waits.some((wait_min) => wait_min === null || wait_min > waitLimit_min);
  if (isLong && hours_h !== null && hours_h <= pumping_h_per_day) {
    const known = waits.filter((wait_min) => wait_min !== null);
    const longest_min = known.length < waits.length ? null : Math.max(...known);
    return figure(isWorn ? 'lastWaitWorn' : 'lastWait', id, 'min', longest_min, waitLimit_min);
  }
  return figure(isWorn ? 'hoursNeededWorn' : 'hoursNeeded', id, 'h', hours_h, pumping_h_per_day);
}

/** What the last sample held; or what the germ that is worst takes of healthy years, at the high end where that alone is over the target. */
function safetyFigure({ verdict, waterTests, risks, target_DALY_per_person_per_year }: SafetyFinding): Figure | null {
  const { last } = waterTests;
  const count = last?.sign === 'less' ? 0 : (last?.count_per_100mL ?? 0);
  if (verdict === 'short' && last !== null && count > 0) return figure('germs', last.testId, '1/100mL', count, null);
  const [worst] = risks;
  if (worst === undefined) return null;
  const years = verdict === 'short' ? worst.DALY_per_person_per_year : worst.DALYHigh_per_person_per_year;
  const found = { figure: 'lostYears', id: worst.pathogen, range: null, unit: 'DALY/million/year' } as const;
  return { ...found, value: ofMillion(years), limit: ofMillion(target_DALY_per_person_per_year) };
}

/** Healthy years of a million people, to two figures: those of one person are too small to be rounded to a hundredth. */
const ofMillion = (years: number) => Number((years * 1e6).toPrecision(2));

/** What leaves a station unknown before all else its rooms find. */
const firstOf: Readonly<Partial<Record<Station, readonly string[]>>> = {
  cup: ['safety.raw_unknown', 'safety.source_raw_unknown', 'safety.no_barrier', 'safety.no_evidence'],
};

/** The rooms whose problems leave a station unknown. */
const roomsOf: Readonly<Partial<Record<Station, readonly string[]>>> = {
  gutter: ['drainage', 'storm'],
  settling: ['settling'],
  stand: ['stand'],
  treatmentUnit: ['treatment'],
  tap: ['head'],
  cup: ['safety', 'waterTests', 'chlorine', 'treatment'],
};

/**
 * What keeps a site from a verdict: its first blocker; or, where all that is unknown is a station beside the tank, what is missing there.
 *
 * @param design - what the site came to
 * @returns the problem; null where it has a verdict
 * @definition ours
 */
export function withheld(design: Judged & Pick<SiteDesign, 'problems'>): Problem | null {
  const blocker = design.problems.find(({ severity }) => severity === 'blocker');
  if (blocker !== undefined) return blocker;
  const station = design.verdict === 'unknown' ? worstStation(design) : null;
  if (station === null) return null;
  const rooms = roomsOf[station] ?? [];
  const isOfStation = ({ code, severity, facts }: Problem) =>
    severity === 'warning' &&
    code !== 'stand.not_signed' &&
    (rooms.some((room) => code.startsWith(`${room}.`)) ||
      (code === 'site.station_in_doubt' && roomsOf[station]?.includes(String(facts['station'])) === true));
  const found = design.problems.filter(isOfStation);
  const first = found.find(({ code }) => code === 'site.station_in_doubt' || firstOf[station]?.includes(code));
  return first ?? found[0] ?? null;
}
