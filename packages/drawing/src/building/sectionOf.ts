import type { GroupShape, LetterShape, Shape } from '../sheet/shapes.ts';
import type { Building } from './building.ts';
import { type Carrier, carriersOf } from './carrier.ts';
import { paperScales, pxPerM_full } from './constants.ts';
import { dimensionShapes } from './dimensions.ts';
import { type Frame, frameOf } from './frame.ts';
import { gateBands } from './gate.ts';
import { sectionHandles } from './handles.ts';
import { headDimensions, headLineShapes } from './headLine.ts';
import { circleShapes, runShapes } from './largeGutter.ts';
import { fittingPxPerM } from './layout.ts';
import { markShapes } from './marks.ts';
import { noteList, noteShapes, notesOf } from './notes.ts';
import { boxOfLetter, Placer, widthOf } from './placer.ts';
import { scaleBar } from './scaleBar.ts';
import { sectionDimensions } from './sectionDimensions.ts';
import { balloonsOf, drawnBoxes } from './sectionMarks.ts';
import { group, sectionParts, watersOf } from './sectionParts.ts';
import type { Section, SectionInput, SectionWords } from './sectionTypes.ts';
import { area, proposed as blue, boxOf, isFine, line, unmeasured, type View } from './view.ts';
import { levelShapes } from './water.ts';

/** Dimension lines of a picture at most. Source: ours, docs/methods/drawing.md. */
const mostDimensions = 10;

/**
 * How does the building stand, roof to cup? The section from left to right at one scale, from its own measures, with the
 * water at its level, its dimensions, and the marks of its stations.
 *
 * @param input - the building, levels, verdicts, words, width [px], and whether the whole or a cut-out is wanted
 * @returns the picture [px], where its water is drawn, and what may be taken hold of
 * @definition ours: docs/methods/drawing.md
 * @law no letter stands outside the picture or on another; lengths on it are px to the metre times those of the building
 */
export function sectionOf(input: SectionInput): Section {
  const { frame, letters } = framed(input);
  const { view, width, height, detail } = frame;
  const waters = watersOf(frame);
  const levels = levelShapes({ waters, pxPerM: view.k }, input.levels);
  const byPart = new Map(levels.map((one) => [one.part, one]));
  const waterOf = (tankId: string): GroupShape =>
    byPart.get(`water:${tankId}`) ?? group(`water:${tankId}`, 'storage', []);
  return {
    width,
    height,
    pxPerM: view.k,
    shapes: [
      ...sectionParts(frame, waterOf, input.sludge),
      ...headLineShapes(frame, input.headLines ?? []),
      ...headPaper(frame),
      ...letters,
    ],
    handles: sectionHandles(frame),
    isCutOut: detail !== 'whole',
    waters,
  };
}

/** Empty rows over a small building are left off, so many px at a time, that a picture does not twitch while it is changed. */
const row_px = 24;

/** The frame and its letters; where a small building left rows over it empty, without them. */
function framed(input: SectionInput): { readonly frame: Frame; readonly letters: readonly Shape[] } {
  const frame = frameOf(input);
  const letters = sectionLetters(frame, input);
  if (frame.detail !== 'whole' || isFine(frame.view) || !frame.hasWords) return { frame, letters };
  const tops = [frame.ridge, ...topsOf(letters)];
  const spare = Math.floor((Math.min(...tops) - 8) / row_px) * row_px;
  if (spare <= 0) return { frame, letters };
  const view = { ...frame.view, y0: frame.view.y0 - spare };
  const lower = { ...frame, view, under: frame.under - spare, height: frame.height - spare };
  return { frame: lower, letters: sectionLetters(lower, input) };
}

/** The upper ends of letters and marks [px]. */
function topsOf(shapes: readonly Shape[]): readonly number[] {
  return shapes.flatMap((shape): readonly number[] => {
    if (shape.kind === 'group') return topsOf(shape.shapes);
    if (shape.kind === 'letter') return [boxOfLetter(shape).y];
    return shape.kind === 'mark' ? [shape.y - shape.height] : [];
  });
}

/** Dimension lines, notes, marks and the scale bar, each where it covers no other. */
function sectionLetters(frame: Frame, input: SectionInput): readonly Shape[] {
  const { view, width, height, detail, all } = frame;
  const placer = new Placer({ x: 0, y: 0, width, height }, drawnBoxes(frame));
  const bar = scaleBar(view, width - 10, height - 6, input.words, placer);
  const bands = frame.hasDimensions ? gateBands(frame, input.gates ?? [], placer) : [];
  const circled = circleShapes(frame, input, placer);
  const list = noteList(frame.notes, frame.rows, placer);
  const large = [...circled, ...runShapes(frame, input.words, placer)];
  const told = frame.hasWords ? proposedLetters(frame, input.proposedWords ?? [], placer) : [];
  const { shapes: dimensions } = frame.hasDimensions
    ? dimensionShapes(dimensionsOf(frame, input), placer, mostDimensions)
    : { shapes: [] };
  const carriers = frame.hasWords ? carriersOf({ k: view.k, placed: all }) : [];
  const marks = detail === 'whole' ? markShapes(balloonsOf(frame, input), placer, frame.hasWords) : [];
  const high = tooHigh(frame, carriers, input.words, placer);
  const notes =
    detail === 'whole' && frame.hasDimensions
      ? noteShapes(notesOf(view, all, 'whole', input), placer, !isFine(view))
      : [];
  const slope = frame.hasWords || detail === 'roof' ? pitch(frame, input.words, placer) : [];
  const key = frame.hasDimensions ? dashKey(frame, input, placer) : [];
  const quiet = [...dimensions, ...told, ...high, ...slope, ...list, ...notes, ...key];
  return [...large, group(null, null, quiet), ...bands, ...marks, group(null, null, bar)];
}

/**
 * At which scale of paper does a building fit a width?
 *
 * @param building - as drawn
 * @param width - of the drawing [px of 1/96 inch]
 * @param proposed - with what is to be built, or null
 * @returns one to so many, and its px to the metre; the smallest scale of the ladder where none fits
 * @source iso-5455, from memory
 */
export function paperScale(
  building: Building,
  width: number,
  proposed: Building | null = null,
): { readonly oneTo: number; readonly pxPerM: number } {
  const fitted = fittingPxPerM(building, proposed, width);
  const oneTo = paperScales.find((scale) => pxPerM_full / scale <= fitted) ?? paperScales[paperScales.length - 1]!;
  return { oneTo, pxPerM: pxPerM_full / oneTo };
}

const letterAt = (x: number, y: number, text: string, more: Partial<LetterShape>): LetterShape => ({
  kind: 'letter',
  x,
  y,
  text,
  size: 'lettering',
  anchor: 'start',
  ink: 'second',
  isStrong: false,
  hasHalo: true,
  turn_deg: 0,
  ...more,
});

/** What is proposed, in the tank that is to be built where there is room, else beside it. */
function proposedLetters({ view, placed }: Frame, lines: readonly string[], placer: Placer): readonly Shape[] {
  const first = placed.find((one) => one.kind === 'tank' && one.proposed !== null);
  if (first?.kind !== 'tank' || !first.proposed || lines.length === 0) return [];
  const width = Math.max(...lines.map((text) => widthOf(text, 'lettering', false)));
  const { standHeight_m, height_m } = first.proposed;
  const middle = view.y0 - (standHeight_m.value + height_m.value * 0.55) * view.k;
  const size = { width, height: lines.length * 17 };
  const inside = { x: first.x - width / 2, y: middle - size.height / 2, ...size };
  const isOwn = first.tank === null && width + 6 < first.proposed.diameter_m.value * view.k;
  const box = isOwn && placer.takeIfFree(inside) ? inside : placer.near([first.x, middle], [0, -60], size);
  if (!box) return [];
  return lines.map((text, nth) =>
    letterAt(box.x + width / 2, box.y + 12 + nth * 17, text, { ink: 'water', anchor: 'middle' }),
  );
}

/** Under the list of a cut-out nothing of the building is seen. */
function headPaper({ width, head }: Frame): readonly Shape[] {
  if (head === 0) return [];
  const flat: View = { k: 30, x0: 0, y0: 0 };
  const foot = -head / flat.k;
  return [
    area(flat, 'paper', null, boxOf(0, foot, width / flat.k, -foot)),
    line(flat, 'hair', { ink: 'rule', dash: 'none' }, [
      [0, foot],
      [width / flat.k, foot],
    ]),
  ];
}

const dimensionsOf = (frame: Frame, { words, headLines = [] }: SectionInput) => [
  ...sectionDimensions(frame, words),
  ...(frame.detail === 'whole' || frame.detail === 'tap' ? headDimensions(frame, headLines) : []),
];

/** Where a tank, or its inlet, stands too high for its gutter, it is said beside the pipe. */
function tooHigh({ view }: Frame, carriers: readonly Carrier[], words: SectionWords, placer: Placer): readonly Shape[] {
  return carriers.flatMap(({ axis, tooHigh_m, inletTooHigh_m }) => {
    if (Math.max(tooHigh_m, inletTooHigh_m) <= 0.005) return [];
    const text = tooHigh_m > 0.005 ? words.tankTooHigh(tooHigh_m) : words.inletTooHigh(inletTooHigh_m);
    const [x, y] = axis[1]!;
    const anchor = [view.x0 + x * view.k, view.y0 - y * view.k] as const;
    const box = placer.near(anchor, [-14, -8], { width: widthOf(text, 'lettering', true), height: 14 });
    return box ? [letterAt(box.x, box.y + 11, text, { ink: 'brick', isStrong: true })] : [];
  });
}

/** The pitch, as a small triangle over the right slope of the first roof that has one. */
function pitch({ view, placed }: Frame, words: SectionWords, placer: Placer): readonly Shape[] {
  const first = placed.find((one) => one.kind === 'roof' && one.roof.form !== 'flat');
  if (first?.kind !== 'roof') return [];
  const { outline, roof, x } = first;
  const { value, how } = roof.pitch_deg;
  const isOneWay = roof.form === 'oneSlope';
  const from = outline.width_m * (isOneWay ? 0.45 : 0.66);
  const run = Math.min(46, outline.width_m * view.k * 0.14);
  const rise = run * outline.tan;
  if (run < 14 || rise < 3) return [];
  const left = x + from * view.k;
  const top =
    view.y0 - (outline.ridgeHeight_m - (from - outline.top[outline.top.length - 2]![0]) * outline.tan) * view.k - 16;
  const text = words.degrees(value, how);
  const letter = letterAt(left + run * 0.55, top - 3 + Math.min(4, rise * 0.3), text, {
    ink: how === 'usual' ? 'second' : 'ink',
  });
  const box = {
    x: left,
    y: top - 16,
    width: Math.max(run, run * 0.55 + widthOf(text, 'lettering', false)),
    height: 16 + rise,
  };
  if (!placer.takeIfFree(box)) return [];
  const flat: View = { k: 30, x0: 0, y0: 0 };
  const corners = [
    [left, top],
    [left, top + rise],
    [left + run, top + rise],
    [left, top],
  ] as const;
  const brush = how === 'usual' ? unmeasured : ({ ink: 'ink', dash: 'none' } as const);
  return [
    line(
      flat,
      'hair',
      brush,
      corners.map(([px, py]) => [px / flat.k, -py / flat.k] as const),
    ),
    letter,
  ];
}

/** What dashes mean, where there are any. */
function dashKey(
  { height, placed }: Frame,
  { words, building, proposed }: SectionInput,
  placer: Placer,
): readonly Shape[] {
  const isAnyUsual = JSON.stringify(building).includes('"how":"usual"');
  const isAnyProposed = Boolean(proposed) && placed.some((one) => 'proposed' in one && one.proposed !== null);
  const flat: View = { k: 30, x0: 0, y0: 0 };
  const shapes: Shape[] = [];
  let x = 12;
  for (const [is, text, brush] of [
    [isAnyUsual, words.notMeasured, unmeasured],
    [isAnyProposed, words.proposed, blue],
  ] as const) {
    const long = 30 + widthOf(text, 'lettering', false);
    if (!is || !placer.takeIfFree({ x, y: height - 16, width: long, height: 14 })) continue;
    shapes.push(
      line(flat, 'edge', brush, [
        [x / 30, -(height - 9) / 30],
        [(x + 24) / 30, -(height - 9) / 30],
      ]),
    );
    shapes.push(letterAt(x + 30, height - 5, text, { ink: brush === blue ? 'water' : 'second' }));
    x += long + 18;
  }
  return shapes;
}
