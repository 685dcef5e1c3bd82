import type { Language } from '@eavewell/words';
import type { Canvas, Pdf } from '../document/canvas.ts';
import { drawLines, type SetLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import { type Band, band, table, text } from '../flow/index.ts';
import type { WayLeg } from './content.ts';

/** Least room of a stretch, so that what is said of it stands under it [pt]. */
const least_pt = mm(34);
const [namesHigh_pt, lineHigh_pt, inset_pt] = [14, 24, mm(4)] as const;

const saidOf = ({ mode, length_km, time_h, range_h, note }: WayLeg, { say, numbers }: Language): readonly string[] => {
  const how = say(`pack.way_${mode}`);
  const length = length_km === null ? say('pack.way_length_unknown') : numbers.distance_km(length_km);
  const first = say('pack.way_length', { how, length });
  const time = time_h === null ? say('pack.way_time_unknown') : hours(time_h, say);
  const range =
    range_h && say('pack.way_range', { low: numbers.given(range_h.low, ''), high: numbers.given(range_h.high, '') });
  return [first, range ? `${time} (${range})` : time, ...(note === null ? [] : [note])];
};

/** Hours and minutes as one says them. */
function hours(time_h: number, say: Language['say']): string {
  const all_min = Math.round((time_h * 60) / 5) * 5;
  const [h, min] = [Math.floor(all_min / 60), all_min % 60];
  if (h === 0) return say('pack.way_min', { min: Math.max(5, min) });
  return min === 0 ? say('pack.way_h', { h }) : say('pack.way_h_min', { h, min });
}

/** Widths by length, none less than its words need; where the stretches are too many for the line they share it. */
function widthsOf(legs: readonly WayLeg[], width: number): readonly number[] {
  const least = Math.min(least_pt, width / legs.length);
  const rest = width - least * legs.length;
  const weights = legs.map(({ length_km }) => Math.sqrt(Math.max(0, length_km ?? 1)));
  const all = weights.reduce((sum, one) => sum + one, 0) || 1;
  return weights.map((one) => least + (rest * one) / all);
}

/** A name where it stands: from where in the line, how long [pt], and on which row over it. */
interface Stop {
  readonly set: SetLines;
  readonly from: number;
  readonly long: number;
  readonly row: number;
}

/** White between two names [pt]. */
const apart_pt = 8;
/** More stretches than so many are a table. Ours: a line of them could not be read. */
const mostLegs = 5;

/** Names over their places, pushed apart; every second one a row higher where one row is too short; null where two are. */
function stopsOf(sets: readonly SetLines[], places: readonly number[], width: number): readonly Stop[] | null {
  const longs = sets.map(({ lines }) => Math.max(...lines.map(({ width_pt }) => width_pt)));
  const last = sets.length - 1;
  for (const rows of [1, 2]) {
    const stops = sets.map((set, nth): Stop & { from: number } => {
      const long = longs[nth]!;
      const from =
        nth === 0 ? 0 : nth === last ? width - long : Math.min(Math.max(0, places[nth]! - long / 2), width - long);
      return { set, from, long, row: (last - nth) % rows };
    });
    for (let nth = last - rows; nth >= 0; nth--)
      stops[nth]!.from = Math.min(stops[nth]!.from, stops[nth + rows]!.from - apart_pt - stops[nth]!.long);
    if (stops.every(({ from }) => from >= 0)) return stops;
  }
  return null;
}

/**
 * The way in as one line: road as two strokes, river as a wave, foot as dots, and the names of where one changes.
 *
 * @param setter - lays its letters; from right to left the way begins at the right
 * @param width - of the band [pt]
 * @param legs - in the order they are gone
 * @param language - words
 * @returns nothing where no way is known; a table where the line would have too many stretches, or names too long
 */
export function wayBand(setter: Setter, width: number, legs: readonly WayLeg[], language: Language): readonly Band[] {
  if (legs.length === 0) return [];
  const widths = widthsOf(legs, width - 2 * inset_pt);
  const places = [inset_pt];
  for (const one of widths) places.push(places[places.length - 1]! + one);
  const names = [legs[0]!.from, ...legs.map(({ to }) => to)];
  const stops = stopsOf(
    names.map((name) => setter.lines(name, 'body', width, 'strong')),
    places,
    width,
  );
  if (stops === null || legs.length > mostLegs) return wayTable(setter, width, legs, language);
  const said = legs.map((leg, nth) => saidOf(leg, language).map((one) => setter.lines(one, 9.5, widths[nth]! - 6)));
  const under = Math.max(...said.map((sets) => sets.reduce((sum, { height_pt }) => sum + height_pt, 0)));
  const over = namesHigh_pt * (1 + Math.max(...stops.map(({ row }) => row)));
  return [
    band(over + lineHigh_pt + under, (canvas, tree, { x, y }) => {
      const at = (from: number) => setter.place(x, width, from, 0);
      const middle = y + over + 11;
      canvas.unread(() => canvas.drawing((pdf) => drawWay(pdf, legs, places.map(at), middle)));
      canvas.within(canvas.branch(tree, 'P'), 'P', () => {
        for (const { set, from, long, row } of stops) {
          const room = { x: setter.place(x, width, from, long), y: y + over - namesHigh_pt * (row + 1), width: long };
          drawLines(canvas, setter, set, room);
        }
        said.forEach((sets, nth) => {
          drawSaid(canvas, setter, sets, at((places[nth]! + places[nth + 1]!) / 2), middle + 13, widths[nth]!);
        });
      });
    }),
  ];
}

function wayTable(setter: Setter, width: number, legs: readonly WayLeg[], language: Language): readonly Band[] {
  const rows = legs.map((leg) => [text(leg.from), text(leg.to), text(saidOf(leg, language).join('; '))]);
  const heads = [28, 28, 44].map((share) => ({ head: '', share }));
  return table(setter, width, { columns: heads, rows, isHeadless: true });
}

function drawSaid(
  canvas: Canvas,
  setter: Setter,
  sets: readonly SetLines[],
  middle: number,
  y: number,
  width: number,
): void {
  let top = y;
  for (const set of sets) {
    drawLines(canvas, setter, set, { x: middle - width / 2, y: top, width }, 'middle');
    top += set.height_pt;
  }
}

/** The line itself: a square where it begins, bars where one changes, a house where it ends. */
function drawWay(pdf: Pdf, legs: readonly WayLeg[], places: readonly number[], y: number): void {
  legs.forEach(({ mode }, nth) => {
    const [from, to] = [places[nth]!, places[nth + 1]!];
    if (mode === 'road')
      for (const by of [-1.3, 1.3])
        pdf
          .moveTo(from, y + by)
          .lineTo(to, y + by)
          .lineWidth(lines_pt.edge)
          .undash()
          .stroke('#000');
    else if (mode === 'foot') {
      pdf.moveTo(from, y).lineTo(to, y).lineWidth(1.6).lineCap('round').dash(0.01, { space: 5 }).stroke('#000');
      pdf.undash().lineCap('butt');
    } else {
      const waves = Math.max(1, Math.round(Math.abs(to - from) / 90));
      const step = (to - from) / (2 * waves);
      pdf.moveTo(from, y);
      for (let wave = 0; wave < 2 * waves; wave++) {
        const start = from + wave * step;
        const by = (wave % 2 === 0 ? -1 : 1) * 9;
        pdf.bezierCurveTo(start + step * 0.35, y + by, start + step * 0.65, y + by, start + step, y);
      }
      pdf.lineWidth(1.6).undash().stroke('#000');
    }
  });
  places.forEach((x, nth) => {
    if (nth === 0)
      pdf
        .rect(x - 4, y - 4, 8, 8)
        .lineWidth(lines_pt.cut)
        .fillAndStroke('#fff', '#000');
    else if (nth === places.length - 1)
      pdf
        .moveTo(x - 6, y + 6)
        .lineTo(x - 6, y - 1)
        .lineTo(x, y - 7)
        .lineTo(x + 6, y - 1)
        .lineTo(x + 6, y + 6)
        .closePath()
        .lineWidth(lines_pt.cut)
        .fillAndStroke('#fff', '#000');
    else
      pdf
        .moveTo(x, y - 4.5)
        .lineTo(x, y + 4.5)
        .lineWidth(2.2)
        .stroke('#000');
  });
}
