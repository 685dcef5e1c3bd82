import type { Station } from '@eavewell/engine';
import type { Ink, Shape } from '../sheet/shapes.ts';
import type { BuiltRoof, BuiltStops, BuiltTank } from './building.ts';
import type { Circle } from './gutterCircle.ts';
import type { Placed, PlacedRoof, PlacedStop, PlacedTank } from './layout.ts';
import { isException, leader, verdictInks } from './marks.ts';
import { boxOfLetter, type Placer, widthOf } from './placer.ts';
import type { PartLetters, SectionInput } from './sectionTypes.ts';
import { footOf } from './stand.ts';
import { tapsAt, unitLift_m } from './tapStand.ts';
import type { View } from './view.ts';

/** What is said of a part beside it in the whole, or in the list of a cut-out. */
export interface Note {
  readonly text: string;
  /** What it tells of, and the side it had better stand on [px]. */
  readonly anchor: readonly [number, number];
  readonly side: readonly [number, number];
  readonly ink: Ink;
  readonly isStrong: boolean;
  /** Is it told in the whole, too? */
  readonly isInWhole: boolean;
}

type Said = Pick<SectionInput, 'words' | 'partLetters' | 'unitLetters' | 'sludge' | 'gates' | 'headLines'>;

/** The roof a cut-out at the gutter shows. */
export const gutteredRoof = (placed: readonly Placed[]): PlacedRoof | undefined => {
  const roofs = placed.filter((one): one is PlacedRoof => one.kind === 'roof');
  return roofs.find(({ outline }) => outline.hasRight) ?? roofs[0];
};

/** The tank a cut-out at what settles, or at the stand, shows. */
export function tankOf(placed: readonly Placed[], station: Station | 'whole'): PlacedTank | undefined {
  const tanks = placed.filter((one): one is PlacedTank => one.kind === 'tank' && one.tank !== null);
  if (station === 'settling') return tanks.find(({ tank }) => tank?.role === 'settling') ?? tanks[0];
  if (station === 'stand') {
    const tallest = (most: PlacedTank | undefined, one: PlacedTank) =>
      most?.tank && most.tank.standHeight_m.value >= one.tank!.standHeight_m.value ? most : one;
    return tanks.reduce<PlacedTank | undefined>(tallest, undefined);
  }
  return tanks[0];
}

/** Everything that can be said of what a picture shows, by station; of the whole, of all of it. */
export function notesOf(
  view: View,
  placed: readonly Placed[],
  station: Station | 'whole',
  said: Said,
): readonly Note[] {
  const is = (...stations: readonly Station[]) => station === 'whole' || stations.includes(station);
  const roof = gutteredRoof(placed);
  const tanks = station === 'whole' ? placed.filter((one) => one.kind === 'tank') : [tankOf(placed, station)];
  return [
    ...(is('gutter') && roof ? gutterNotes(view, roof, said) : []),
    ...tanks.flatMap((one) => (one?.tank ? tankNotes(view, one, one.tank, station, said) : [])),
    ...placed.flatMap((one) =>
      one.kind === 'treatmentUnit' || one.kind === 'tap' ? (is(one.kind) ? stopNotes(view, one, said) : []) : [],
    ),
  ];
}

interface Place {
  readonly anchor: Note['anchor'];
  readonly side: Note['side'];
}

const quiet = (text: string, place: Place, isInWhole: boolean): Note => ({
  text,
  ...place,
  ink: 'second',
  isStrong: false,
  isInWhole,
});
const loud = (text: string, place: Place, ink: Ink = 'ink'): Note => ({
  text,
  ...place,
  ink,
  isStrong: true,
  isInWhole: true,
});

/** What is said of parts with a flow: as loud as its verdict. */
const figured = (
  { partLetters = [], words }: Said,
  part: PartLetters['part'],
  ids: readonly (string | null)[],
  place: Place,
): readonly Note[] =>
  partLetters
    .filter((one) => one.part === part && ids.includes(one.id))
    .map(({ text, verdict }) => ({
      text: words.partSaid(part, text),
      ...place,
      ink: verdictInks[verdict],
      isStrong: isException(verdict),
      isInWhole: isException(verdict),
    }));

function gutterNotes({ k, y0 }: View, { roof, outline, x }: PlacedRoof, said: Said): readonly Note[] {
  const { words } = said;
  const { gutter, gutters, bore_m, downpipeIds } = roof;
  const right = x + outline.rightPipe_m * k;
  const at: Place = { anchor: [right, y0 - outline.eaveHeight_m * k], side: [30, -14] };
  const pipe: Place = { anchor: [right + 3, y0 - (outline.branchHeight_m + 0.1) * k], side: [22, 22] };
  const ids = gutters.map(({ gutterId }) => gutterId);
  const { value: width, how } = gutter.width_m;
  const fall = gutter.fall_mm_per_m;
  const fallen = words.fall(fall);
  const isKnown = fall !== null && how === 'measured';
  return [
    quiet(words.gutterSize(width, gutter.depth_m.value, worse(how, gutter.depth_m.how)), at, false),
    ...figured(said, 'gutter', ids, at),
    fall !== null && fall <= 0 ? loud(fallen, at) : quiet(fallen, at, isKnown),
    quiet(
      words.outlets(gutter.outlets_count.value, gutter.outlet_m.value, gutter.outlet_m.how, gutter.isGrated),
      at,
      false,
    ),
    ...figured(said, 'outlet', ids, at),
    quiet(words.bore(bore_m.value, bore_m.how), pipe, bore_m.how === 'measured'),
    ...figured(said, 'downpipe', downpipeIds, at),
    ...chamberNotes({ k, y0, x0: 0 }, roof, right, outline, said),
  ];
}

function chamberNotes(
  { k, y0 }: View,
  { diverter }: BuiltRoof,
  right: number,
  { branchHeight_m, chamber }: PlacedRoof['outline'],
  { words }: Said,
): readonly Note[] {
  if (diverter === null || chamber === null) return [];
  const low = branchHeight_m - 0.05 - chamber.length_m;
  const body: Place = { anchor: [right + 4, y0 - (low + chamber.length_m * 0.4) * k], side: [22, 6] };
  const foot: Place = { anchor: [right, y0 - (low - 0.08) * k], side: [22, 14] };
  const { chamber_L, hole_m, isBlocked } = diverter;
  return [
    quiet(words.chamber(chamber_L.value, chamber_L.how, hole_m), body, false),
    ...(isBlocked ? [loud(words.holeBlocked, foot, 'brick')] : []),
  ];
}

function tankNotes(
  { k, y0 }: View,
  { x }: PlacedTank,
  tank: BuiltTank,
  station: Station | 'whole',
  said: Said,
): readonly Note[] {
  const { words } = said;
  const foot = y0 - tank.standHeight_m.value * k;
  const radius = (tank.diameter_m.value / 2) * k;
  const over: Place = { anchor: [x + radius + 0.15 * k, foot - tank.overflowHeight_m.value * k + 4], side: [18, -16] };
  const inside: Place = { anchor: [x, foot - 0.05 * k], side: [radius + 16, 10] };
  const depth = said.sludge?.find(({ tankId }) => tankId === tank.tankId)?.height_m ?? null;
  const isWhole = station === 'whole';
  const settled = [
    ...(tank.cells_count > 1 ? [quiet(words.cells(tank.cells_count), { ...inside, side: [0, -30] }, true)] : []),
    ...(depth === null ? [] : [quiet(words.sludge(depth), inside, true)]),
  ];
  const { overflows_count, overflowBore_m, isOverflowScreened } = tank;
  const spilled = [
    quiet(
      words.overflow(overflows_count.value, overflowBore_m.value, overflowBore_m.how, isOverflowScreened),
      over,
      false,
    ),
    ...figured(said, 'overflow', [tank.tankId], over),
    quiet(words.overflowWay, over, false),
  ];
  const { inletHeight_m: inlet, outletHeight_m: outlet, overflowHeight_m: overflow } = tank;
  const heights = [
    ...(inlet === null ? [] : [quiet(words.inlet(inlet.value, inlet.how), over, false)]),
    quiet(words.overflowAt(overflow.value, overflow.how), over, false),
    quiet(words.drawOff(outlet.value, outlet.how), over, false),
  ];
  const stood = standNotes({ k, y0, x0: 0 }, x, tank, said, station);
  if (station === 'stand') return stood;
  if (station === 'settling') return [...settled, ...heights, ...spilled];
  return station === 'storage' || isWhole ? [...heights, ...spilled, ...settled, ...(isWhole ? stood : [])] : [];
}

function standNotes(
  { k, y0 }: View,
  x: number,
  tank: BuiltTank,
  { words, gates }: Said,
  station: Station | 'whole',
): readonly Note[] {
  const { ground, pads, base_m } = tank.stand;
  const edge = x + footOf(tank) * k;
  const under: Place = { anchor: [edge - 4, y0 + 0.3 * k], side: [24, 10] };
  const open = gates?.find(({ tankId, gate }) => gate === 'open' && tankId === tank.tankId);
  return [
    ...(ground !== null || station === 'stand' ? [quiet(words.ground(ground), under, ground !== null)] : []),
    ...(pads === null ? [] : [quiet(words.pads(pads.count, pads.side_m), under, false)]),
    quiet(words.base(base_m.value, base_m.how), under, false),
    ...(open ? [quiet(open.words, under, false)] : []),
  ];
}

function stopNotes({ k, y0 }: View, { kind, stops, x }: PlacedStop, said: Said): readonly Note[] {
  const leg = stops.legs[kind === 'tap' ? 'unitToTap' : 'tankToUnit'];
  const place: Place = { anchor: [x - 0.25 * k, y0 - 0.14 * k], side: [0, 22] };
  const { value, how } = leg.bore_m;
  return [
    ...(kind === 'tap' ? headNotes({ k, y0, x0: 0 }, x, stops, said) : unitNotes({ k, y0, x0: 0 }, x, stops, said)),
    quiet(said.words.bore(value, how), place, how === 'measured'),
    ...figured(said, 'pipe', leg.pipeIds, place),
  ];
}

/** Over the treatment unit: what it passes at which pressure, and when its cartridges are due. What is wrong stands at its mark. */
function unitNotes({ k, y0 }: View, x: number, stops: BuiltStops, { unitLetters = [] }: Said): readonly Note[] {
  const place: Place = { anchor: [x + 0.5 * k, y0 - (1.28 + unitLift_m(stops)) * k], side: [-30, -66] };
  return unitLetters.map((text) => quiet(text, place, true));
}

/** Over the taps: the head that is left there, or what the pump must add. */
function headNotes({ k, y0 }: View, x: number, stops: BuiltStops, { words, headLines = [] }: Said): readonly Note[] {
  const [line] = headLines;
  const point = line?.points.find(({ at }) => at === 'tap');
  if (!line || !point || !Number.isFinite(point.head_m)) return [];
  const adds = line.pumpAdds_m ?? null;
  const top = Math.max(stops.tapHeight_m.value, point.elevation_m + point.head_m);
  const place: Place = { anchor: [x + tapsAt(stops)[0]! * k - 10, Math.max(6, y0 - top * k)], side: [-14, -30] };
  return adds === null ? [quietInWhole(words.headLeft(point.head_m), place)] : [loud(words.pumpAdds(adds), place)];
}

const quietInWhole = (text: string, place: Place): Note => ({ ...loud(text, place), isStrong: false });

const worse = (...all: readonly BuiltRoof['bore_m']['how'][]) =>
  all.includes('usual') ? 'usual' : all.includes('madeFrom') ? 'madeFrom' : 'measured';

const letterOf = ({ text, ink, isStrong }: Note, x: number, y: number) =>
  ({
    kind: 'letter',
    x,
    y,
    text,
    size: 'lettering',
    anchor: 'start',
    ink,
    isStrong,
    hasHalo: true,
    turn_deg: 0,
  }) as const;

/** How far from what they tell of they may stand in the whole [px]. */
const quietly_px = 64;
const loudly_px = 240;

/** In the whole: what is told of one spot together, near it, where it is free; what is loud first and farther out, in a small picture alone. */
export function noteShapes(notes: readonly Note[], placer: Placer, isSmall: boolean): readonly Shape[] {
  const bySpot = new Map<string, Note[]>();
  for (const note of notes.filter(({ isInWhole }) => isInWhole)) {
    const spot = note.anchor.join(' ');
    bySpot.set(spot, [...(bySpot.get(spot) ?? []), note]);
  }
  const isLoud = (lines: readonly Note[]) => lines.some(({ ink }) => ink !== 'second');
  return [...bySpot.values()]
    .filter((lines) => isLoud(lines) || !isSmall)
    .sort((a, b) => Number(isLoud(b)) - Number(isLoud(a)))
    .flatMap((lines) => {
      const { anchor, side } = lines[0]!;
      const width = Math.max(...lines.map(({ text, isStrong }) => widthOf(text, 'lettering', isStrong)));
      const size = { width, height: lines.length * noteLine_px };
      const box = isLoud(lines)
        ? (placer.near(anchor, side, size, loudly_px, false, 0.04) ?? placer.near(anchor, side, size, loudly_px, true))
        : placer.near(anchor, side, size, quietly_px);
      if (box === null) return [];
      const letters = lines.map((note, nth) => letterOf(note, box.x, box.y + nth * noteLine_px + 12));
      return [...leader(anchor, { ...box, y: box.y + 2 }), ...letters];
    });
}

/** Height of a line beside the building, and of one of the list of a cut-out [px]. */
const noteLine_px = 16;
const listLine_px = 18;

/** Where the list of a cut-out begins [px]. */
const listLeft_px = 12;
const listTop_px = 8;

/** Where each line of the list of a cut-out stands, and where the last one ends [px]. */
export interface ListRows {
  readonly tops: readonly number[];
  readonly foot: number;
}

/** One under the other; what is too wide to stand beside a detail circle, under it. */
export function listRows(notes: readonly Note[], width: number, circle: Circle | null): ListRows {
  const low = circle === null ? 0 : circle.y + circle.radius + listLine_px;
  const beside_px = circle === null ? width : circle.x - circle.radius - 2 * listLeft_px;
  const isNarrow = ({ text, isStrong }: Note) => widthOf(text, 'lettering', isStrong) <= beside_px - listLeft_px;
  const tops = new Map<Note, number>();
  let foot = listTop_px;
  const put = (note: Note) => {
    tops.set(note, foot);
    foot += listLine_px;
  };
  const wide: Note[] = [];
  for (const note of notes) {
    if (foot >= low || isNarrow(note)) put(note);
    else wide.push(note);
  }
  if (wide.length > 0) foot = Math.max(foot, low);
  wide.forEach(put);
  return { tops: notes.map((note) => tops.get(note)!), foot: Math.max(foot, low) };
}

/** The list of a cut-out. */
export function noteList(notes: readonly Note[], { tops }: ListRows, placer: Placer): readonly Shape[] {
  return notes.flatMap((note, nth) => {
    const letter = letterOf(note, listLeft_px, tops[nth]! + 12);
    return placer.takeIfFree(boxOfLetter(letter)) ? [letter] : [];
  });
}
