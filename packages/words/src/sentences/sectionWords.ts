import type { GroundClass, Station, StationVerdict } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { DrawnWords } from './drawnWords.ts';
import { flowWords } from './sectionFindings.ts';

/** How a measure of a drawing came: by tape, from others, or as such things usually are. */
type How = 'measured' | 'madeFrom' | 'usual';
type Part = 'gutter' | 'outlet' | 'downpipe' | 'overflow' | 'pipe';

/** The words a section and a plan are lettered with, on pages and on paper. */
export function sectionWords({ say, numbers }: DrawnWords) {
  const metres = (value: number) => say('drawn.metres', { value: numbers.fixed(value, 2) });
  return {
    metres: (value: number, how: How) => say(`drawn.length_${how}`, { length: metres(value) }),
    diameter: (value: number, how: How) => say(`drawn.length_${how}`, { length: `ø ${metres(value)}` }),
    roofOverGutters: (value: number, how: How) =>
      say('drawn.roof_over_gutters', { length: say(`drawn.length_${how}`, { length: metres(value) }) }),
    degrees: (value: number, how: How) => say(`drawn.length_${how}`, { length: `${numbers.fixed(value, 0)}°` }),
    scaleMark: (value: number, isLast: boolean) =>
      isLast ? `${numbers.given(value, '')} m` : numbers.given(value, ''),
    notMeasured: say('drawn.dashed_unknown'),
    proposed: say('drawn.dashed_proposed'),
    tankTooHigh: (by_m: number) => say('drawn.tank_too_high', { by: metres(by_m) }),
    guttered: (share: number, how: How) =>
      say(`drawn.length_${how}`, { length: say('drawn.guttered', { share: numbers.percent(share) }) }),
    downpipes: (count: number) => say('drawn.downpipes', { count }),
    ...fittingWords({ say, numbers }),
  };
}

/** Of gutters, pipes, what settles, pressure and stands. */
function fittingWords({ say, numbers }: DrawnWords) {
  const metres = (value_m: number) => say('drawn.metres', { value: numbers.fixed(value_m, 2) });
  const tenths = (value_m: number) => say('drawn.metres', { value: numbers.fixed(value_m, 1) });
  const mm = (value_m: number) => numbers.fixed(value_m * 1000, 0);
  const doubted = (length: string, how: How) => say(`drawn.length_${how}`, { length });
  const bore = (value_m: number, how: How) => doubted(`ø ${mm(value_m)} mm`, how);
  return {
    bore,
    partSaid: (part: Part, figure: string) => say(`drawn.part_${part}`, { figure }),
    fall: (value: number | null) => {
      if (value === null) return say('drawn.fall_unknown');
      if (value === 0) return say('drawn.level');
      const fall = numbers.given(Math.abs(value), '');
      return value > 0 ? say('drawn.fall', { fall }) : say('drawn.fall_back', { fall });
    },
    fallOver: (drop_m: number, run_m: number, how: How) =>
      doubted(say('drawn.fall_over', { drop: mm(drop_m), run: metres(run_m) }), how),
    gutterSize: (width_m: number, depth_m: number, how: How) => doubted(`${mm(width_m)} × ${mm(depth_m)} mm`, how),
    outlets: (count: number, bore_m: number, how: How, isGrated: boolean) =>
      say('drawn.outlets', { count, bore: bore(bore_m, how), grate: isGrated ? 'grated' : 'open' }),
    larger: (times: number) => say('drawn.larger', { times: numbers.given(times, '') }),
    chamber: (volume_L: number, how: How, hole_m: number | null) => {
      const litres = doubted(numbers.litres(volume_L), how);
      return hole_m === null ? litres : say('drawn.chamber', { litres, hole: mm(hole_m) });
    },
    holeBlocked: say('drawn.hole_blocked'),
    inletTooHigh: (by_m: number) => say('drawn.inlet_too_high', { by: metres(by_m) }),
    inlet: (value_m: number, how: How) => say('drawn.inlet', { height: doubted(metres(value_m), how) }),
    drawOff: (value_m: number, how: How) => say('drawn.draw_off', { height: doubted(metres(value_m), how) }),
    overflowAt: (value_m: number, how: How) => say('drawn.overflow_at', { height: doubted(metres(value_m), how) }),
    overflow: (count: number, bore_m: number, how: How, isScreened: boolean) =>
      say('drawn.overflow', { count, bore: bore(bore_m, how), screen: isScreened ? 'screened' : 'open' }),
    overflowWay: say('drawn.overflow_way'),
    sludge: (value_m: number) => say('drawn.sludge', { height: metres(value_m) }),
    cells: (count: number) => say('drawn.cells', { count }),
    headLeft: (value_m: number) => say('drawn.head_left', { head: tenths(value_m) }),
    pumpAdds: (value_m: number) => say('drawn.pump_adds', { head: tenths(value_m) }),
    ground: (groundClass: GroundClass | null) => say(`drawn.ground_${groundClass ?? 'unknown'}`),
    pads: (count: number, side_m: number) => say('drawn.pads', { count, side: metres(side_m) }),
    base: (value_m: number, how: How) => say('drawn.base', { width: doubted(metres(value_m), how) }),
  };
}

/** The figure that makes a station an exception, by station. */
function exceptionFigures(report: SiteReport, words: DrawnWords): Readonly<Partial<Record<Station, string | null>>> {
  const { numbers, say } = words;
  const [tank] = report.storages;
  const [stand] = report.stands;
  const [way] = report.head;
  const [unit] = report.treatment;
  const fullest = report.drainage?.parts[report.drainage.governing ?? -1];
  const head_m = way?.headLeft_m ?? null;
  const headWords = () =>
    say(head_m! < 0 ? 'drawn.head_missing' : 'drawn.head_left', {
      head: `${numbers.fixed(Math.abs(head_m!), 1)} m`,
    });
  return {
    storage: tank ? numbers.dryDaysAYear(tank.dryDays_per_year) : null,
    gutter: fullest ? flowWords(fullest, words) : null,
    stand:
      stand?.lacks.includes('bearing') && stand.bearing_kPa !== null
        ? `${numbers.fixed(stand.bearing_kPa, 0)} kPa`
        : null,
    treatmentUnit: unit?.flowNow_L_per_h == null ? null : numbers.quantity(unit.flowNow_L_per_h, 'L/h'),
    cup: report.safety?.mayDrink === 'no' ? say('drawn.drink_no') : null,
    tap: head_m === null || way?.hasHandPump ? null : headWords(),
  };
}

/** What stands at the mark of a station. */
export interface MarkLetters {
  readonly word: string;
  /** The figure that makes it an exception; null where none is shown. */
  readonly figure: string | null;
}

/**
 * What stands at each station's mark: its name with its verdict, and the figure that makes it an exception.
 *
 * @param report - what the site came to
 * @param words - the language
 * @param stands - a station with its verdict: `tank short`
 */
export function markWords(
  report: SiteReport,
  words: DrawnWords,
  stands: (station: Station, verdict: StationVerdict) => string,
): Readonly<Record<Station, MarkLetters>> {
  const figures = exceptionFigures(report, words);
  const entries = (Object.keys(report.stations) as Station[]).map((station): [Station, MarkLetters] => {
    const verdict = report.stations[station];
    const word = stands(station, verdict);
    const isException = verdict === 'short' || verdict === 'tight';
    const figure = figures[station] ?? null;
    // What a unit passes stands beside it, also where it holds.
    const isTold = station === 'treatmentUnit' && verdict === 'holds' && figure !== null;
    return [station, { word: isTold ? `${word}: ${figure}` : word, figure: isException ? figure : null }];
  });
  return Object.fromEntries(entries) as Record<Station, MarkLetters>;
}
