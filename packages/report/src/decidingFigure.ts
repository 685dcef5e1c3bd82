import {
  type DrainageFinding,
  type HeadFinding,
  leastSafety_factor,
  type Problem,
  personPower_W,
  type SettlingFinding,
  type SiteDesign,
  type StandFinding,
  type Station,
  stations,
} from '@eavewell/engine';
import type { SiteShort } from '@eavewell/tables';

type Deciding = NonNullable<SiteShort['decides']>;
type Figure = Omit<Deciding, 'station'>;
type Judged = Pick<SiteDesign, 'verdict' | 'stations' | 'drainage' | 'settling' | 'stands' | 'head'>;

/** Figures of a list are told to a hundredth: the whole figure stands in the site's own report. */
const hundredth = (value: number) => Math.round(value * 100) / 100;

/** The first station, along the water's path, that stands as badly as the site; null where none was judged. */
const worstStation = ({ verdict, stations: all }: Judged): Station | null =>
  stations.find((station) => all[station] === verdict) ?? null;

/**
 * By which figure is a site short or tight, where that is not its tank?
 *
 * @param design - what the site came to
 * @returns the figure of its worst station with its range and what it is held against [L/s, fraction, kPa, factor, m, W or L/min: unit says
 *   which]; null where the tank is its worst station, or it holds or is unknown
 * @definition ours: the part that is fullest, the tank or the way to the tap that is worst off
 */
export function decidingFigure(design: Judged): SiteShort['decides'] {
  const station = worstStation(design);
  if (station === null || (design.verdict !== 'short' && design.verdict !== 'tight')) return null;
  const figure = figureOf(station, design);
  return figure && { station, ...figure };
}

function figureOf(station: Station, { drainage, settling, stands, head }: Judged): Figure | null {
  if (station === 'gutter') return drainage && drainageFigure(drainage);
  if (station === 'settling') return settling[0] ? settlingFigure(settling[0]) : null;
  if (station === 'stand') return stands[0] ? standFigure(stands[0]) : null;
  if (station === 'tap') return head[0] ? headFigure(head[0]) : null;
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

/** The rooms whose problems leave a station unknown. */
const roomsOf: Readonly<Partial<Record<Station, readonly string[]>>> = {
  gutter: ['drainage', 'storm'],
  settling: ['settling'],
  stand: ['stand'],
  tap: ['head'],
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
  return design.problems.find(isOfStation) ?? null;
}
