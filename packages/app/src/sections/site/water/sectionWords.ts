import type { How, MarkWords, SectionWords } from '@eavewell/drawing';
import type { Station } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { stationsInOrder } from '../../sites/index.ts';
import type { SiteReport } from '../siteFigures.ts';
import { flowWords } from './sectionFindings.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** The words a section and a plan are lettered with. */
export function sectionWords({ say, numbers }: Words): SectionWords {
  const metres = (value: number) => say('water.metres', { value: numbers.fixed(value, 2) });
  return {
    metres: (value, how) => say(`water.length_${how}`, { length: metres(value) }),
    diameter: (value, how) => say(`water.length_${how}`, { length: `ø ${metres(value)}` }),
    roofOverGutters: (value, how) =>
      say('water.roof_over_gutters', { length: say(`water.length_${how}`, { length: metres(value) }) }),
    degrees: (value, how) => say(`water.length_${how}`, { length: `${numbers.fixed(value, 0)}°` }),
    scaleMark: (value, isLast) => (isLast ? `${numbers.given(value, '')} m` : numbers.given(value, '')),
    notMeasured: say('water.dashed_unknown'),
    proposed: say('water.dashed_proposed'),
    tankTooHigh: (by_m) => say('water.tank_too_high', { by: metres(by_m) }),
    guttered: (share, how) =>
      say(`water.length_${how}`, { length: say('water.guttered', { share: numbers.percent(share) }) }),
    downpipes: (count) => say('water.downpipes', { count }),
    ...fittingWords({ say, numbers }),
  };
}

type FittingWords = Omit<
  SectionWords,
  | 'metres'
  | 'diameter'
  | 'roofOverGutters'
  | 'degrees'
  | 'scaleMark'
  | 'notMeasured'
  | 'proposed'
  | 'tankTooHigh'
  | 'guttered'
  | 'northNotKnown'
  | 'downpipes'
>;

/** Of gutters, pipes, what settles, pressure and stands. */
function fittingWords({ say, numbers }: Words): FittingWords {
  const metres = (value_m: number) => say('water.metres', { value: numbers.fixed(value_m, 2) });
  const tenths = (value_m: number) => say('water.metres', { value: numbers.fixed(value_m, 1) });
  const mm = (value_m: number) => numbers.fixed(value_m * 1000, 0);
  const doubted = (length: string, how: How) => say(`water.length_${how}`, { length });
  const bore = (value_m: number, how: How) => doubted(`ø ${mm(value_m)} mm`, how);
  return {
    bore,
    partSaid: (part, figure) => say(`water.drawn_part_${part}`, { figure }),
    fall: (value) => {
      if (value === null) return say('water.drawn_fall_unknown');
      if (value === 0) return say('water.drawn_level');
      const fall = numbers.given(Math.abs(value), '');
      return value > 0 ? say('water.drawn_fall', { fall }) : say('water.drawn_fall_back', { fall });
    },
    fallOver: (drop_m, run_m, how) =>
      doubted(say('water.drawn_fall_over', { drop: mm(drop_m), run: metres(run_m) }), how),
    gutterSize: (width_m, depth_m, how) => doubted(`${mm(width_m)} × ${mm(depth_m)} mm`, how),
    outlets: (count, bore_m, how, isGrated) =>
      say('water.drawn_outlets', { count, bore: bore(bore_m, how), grate: isGrated ? 'grated' : 'open' }),
    larger: (times) => say('water.drawn_larger', { times: numbers.given(times, '') }),
    chamber: (volume_L, how, hole_m) => {
      const litres = doubted(numbers.litres(volume_L), how);
      return hole_m === null ? litres : say('water.drawn_chamber', { litres, hole: mm(hole_m) });
    },
    holeBlocked: say('water.drawn_hole_blocked'),
    inletTooHigh: (by_m) => say('water.drawn_inlet_too_high', { by: metres(by_m) }),
    inlet: (value_m, how) => say('water.drawn_inlet', { height: doubted(metres(value_m), how) }),
    drawOff: (value_m, how) => say('water.drawn_draw_off', { height: doubted(metres(value_m), how) }),
    overflowAt: (value_m, how) => say('water.drawn_overflow_at', { height: doubted(metres(value_m), how) }),
    overflow: (count, bore_m, how, isScreened) =>
      say('water.drawn_overflow', { count, bore: bore(bore_m, how), screen: isScreened ? 'screened' : 'open' }),
    overflowWay: say('water.drawn_overflow_way'),
    sludge: (value_m) => say('water.drawn_sludge', { height: metres(value_m) }),
    cells: (count) => say('water.drawn_cells', { count }),
    headLeft: (value_m) => say('water.drawn_head_left', { head: tenths(value_m) }),
    pumpAdds: (value_m) => say('water.drawn_pump_adds', { head: tenths(value_m) }),
    ground: (groundClass) => say(`water.drawn_ground_${groundClass ?? 'unknown'}`),
    pads: (count, side_m) => say('water.drawn_pads', { count, side: metres(side_m) }),
    base: (value_m, how) => say('water.drawn_base', { width: doubted(metres(value_m), how) }),
  };
}

/** The figure that makes a station an exception, by station. */
function exceptionFigures(report: SiteReport, words: Words): Readonly<Partial<Record<Station, string | null>>> {
  const { numbers, say } = words;
  const [tank] = report.storages;
  const [stand] = report.stands;
  const [way] = report.head;
  const [unit] = report.treatment;
  const fullest = report.drainage?.parts[report.drainage.governing ?? -1];
  const head_m = way?.headLeft_m ?? null;
  const headWords = () =>
    say(head_m! < 0 ? 'water.head_missing' : 'water.drawn_head_left', {
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
    cup: report.safety?.mayDrink === 'no' ? say('safety.drink_no') : null,
    tap: head_m === null || way?.hasHandPump ? null : headWords(),
  };
}

/** What stands at each station's mark: its name with its verdict, and the figure that makes it an exception. */
export function markWords(report: SiteReport, { say, numbers }: Words): Readonly<Record<Station, MarkWords>> {
  const figures = exceptionFigures(report, { say, numbers });
  const entries = stationsInOrder.map((station): [Station, MarkWords] => {
    const verdict = report.stations[station];
    const words = { station: say(`sites.station_${station}`), verdict: say(`sites.verdict_${verdict}`) };
    const isException = verdict === 'short' || verdict === 'tight';
    const figure = figures[station] ?? null;
    const stands = say('sites.station_stands', words);
    // What a unit passes stands beside it, also where it holds.
    const isTold = station === 'treatmentUnit' && verdict === 'holds' && figure !== null;
    return [station, { word: isTold ? `${stands}: ${figure}` : stands, figure: isException ? figure : null }];
  });
  return Object.fromEntries(entries) as Record<Station, MarkWords>;
}
