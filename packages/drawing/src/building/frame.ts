import type { Station } from '@eavewell/engine';
import type { Building } from './building.ts';
import { detailPxPerM, greatestPxPerM } from './constants.ts';
import type { Circle } from './gutterCircle.ts';
import { runRoom_px } from './gutterRun.ts';
import {
  type Layout,
  layoutOf,
  type Placed,
  type PlacedTank,
  reachOf,
  stopTop_m,
  tapWidth_m,
  topOf,
  unitWidth_m,
} from './layout.ts';
import { isException, markRoom } from './marks.ts';
import { gutteredRoof, type ListRows, listRows, type Note, notesOf, tankOf } from './notes.ts';
import type { SectionInput } from './sectionTypes.ts';
import type { View } from './view.ts';

/** The part of the section a picture shows, and at what scale. */
export interface Frame {
  readonly view: View;
  readonly width: number;
  readonly height: number;
  /** What it shows of them. */
  readonly placed: readonly Placed[];
  /** All there is, also what lies outside: pipes lead there. */
  readonly all: readonly Placed[];
  readonly hasDimensions: boolean;
  readonly hasWords: boolean;
  /** Highest point of the building [px]. */
  readonly ridge: number;
  /** Where lines of dimension run under the ground [px]. */
  readonly under: number;
  readonly detail: Station | 'whole';
  /** What a cut-out lists over its picture. */
  readonly notes: readonly Note[];
  readonly rows: ListRows;
  /** Room for it [px]. */
  readonly head: number;
  /** The gutter a cut-out shows large, over its picture. */
  readonly circle: Circle | null;
}

/** Under this width letters and dimensions are left to the cut-outs [px]. */
const narrow_px = 560;
/** Deepest thing in the ground [m]. */
const deep_m = 0.66;

export function frameOf(input: SectionInput): Frame {
  const detail = input.detail ?? 'whole';
  return detail === 'whole' ? wholeFrame(input) : detailFrame(input, detail);
}

function wholeFrame(input: SectionInput): Frame {
  const { building, proposed = null, width, pxPerM = null } = input;
  const isWide = width >= narrow_px;
  const layout = layoutOf(building, proposed, { width, pxPerM, hasDimensions: isWide });
  const hasDimensions = isWide && layout.hasRoomForLetters;
  const { k } = layout;
  const y0 = Math.ceil(layout.ridge_m * k + (isWide ? roomOver(layout, input) : 34));
  const under = y0 + Math.max(deep_m * k, 20) + (hasDimensions ? 16 : 0);
  const height = Math.ceil(under + (hasDimensions ? 22 : 25));
  const { placed } = layout;
  return {
    view: { k, x0: 0, y0 },
    width,
    height,
    placed,
    all: placed,
    hasDimensions,
    hasWords: isWide,
    under,
    ridge: y0 - layout.ridge_m * k,
    detail: 'whole',
    notes: [],
    rows: { tops: [], foot: 0 },
    head: 0,
    circle: null,
  };
}

/** Room over the highest point, so that the marks of roof and tank find their places [px]. */
function roomOver({ placed, ridge_m, k }: Layout, { stations, partLetters = [] }: SectionInput): number {
  const figures = Math.min(3, partLetters.filter(({ verdict }) => isException(verdict)).length) * 18;
  const tanks = placed.flatMap((one) => (one.kind === 'tank' && one.tank ? [topOf(one.tank)] : []));
  const tank = markRoom(stations.storage) - (ridge_m - Math.max(0, ...tanks)) * k;
  const roof = markRoom(stations.roof) - 20;
  // Where the building is small beside its letters, they stand in rows over it: one more for what is told in two lines.
  const rows = Math.max(0, 1400 / k - 24);
  const more = Object.values(stations).filter((verdict) => isException(verdict)).length - 1;
  return figures + Math.max(18, tank, roof, Math.min(64, rows)) + (rows > 18 ? Math.min(2, Math.max(0, more)) * 24 : 0);
}

/** A cut-out: what stands about one station, at not less than 40 px to the metre, or at what a sheet to scale says. */
function detailFrame(input: SectionInput, station: Station): Frame {
  const { building, proposed = null, width } = input;
  const wide = (k: number) => {
    const whole = layoutOf(building, proposed, { width: 1e7, pxPerM: k, hasDimensions: true, isDetail: true });
    return { layout: whole, window: windowOf(whole, station, building) };
  };
  const first = wide(detailPxPerM);
  const used_px = first.window.to - first.window.from;
  const fitting = Math.max(detailPxPerM, Math.min(greatestPxPerM * 1.4, (detailPxPerM * width) / used_px));
  const k = input.pxPerM ?? fitting;
  const { layout, window } = wide(k);
  const spare = width - (window.to - window.from);
  const left = window.from - (spare > 0 ? spare / 2 : window.isFromRight ? spare : 0);
  const all = layout.placed.map((one) => ({ ...one, x: one.x - left }));
  const notes = notesOf({ k, x0: 0, y0: 0 }, all, station, input);
  const circle = station === 'gutter' ? { x: width - radius_px - 10, y: radius_px + 8, radius: radius_px } : null;
  const rows = listRows(notes, width, circle);
  const head = notes.length === 0 ? 0 : rows.foot + 4 + (circle === null ? 0 : runRoom_px);
  const y0 = Math.ceil(window.top_m * k + 14 + head);
  const under = y0 + Math.max(deep_m * k, 20) + 14;
  const placed = all.filter((one) => reaches(one, k, width));
  const height = Math.ceil(under + (station === 'treatmentUnit' || station === 'tap' || station === 'cup' ? 24 : 46));
  return {
    view: { k, x0: 0, y0 },
    width,
    height,
    placed,
    all,
    hasDimensions: true,
    hasWords: false,
    under,
    ridge: 0,
    detail: station,
    notes,
    rows,
    head,
    circle,
  };
}

/** Half of a detail circle [px]. */
export const radius_px = 52;

function reaches(one: Placed, k: number, width: number): boolean {
  const [left, right] = extentOf(one);
  return one.x + right * k > 0 && one.x + left * k < width;
}

/** How far something reaches left and right of where it stands [m]. */
export function extentOf(one: Placed): readonly [number, number] {
  if (one.kind === 'roof') return [-one.outline.leftOut_m, one.outline.width_m + one.outline.rightOut_m];
  if (one.kind === 'tank') {
    const radius = Math.max(...[one.tank, one.proposed].map((tank) => (tank === null ? 0 : reachOf(tank))));
    return [-radius - 0.35, radius + 0.45];
  }
  return [-0.1, one.kind === 'tap' ? tapWidth_m : unitWidth_m];
}

interface Window {
  /** px of the whole layout. */
  readonly from: number;
  readonly to: number;
  readonly top_m: number;
  /** Where it does not all fit, its right end is shown. */
  readonly isFromRight: boolean;
}

function windowOf({ placed, k }: Layout, station: Station, building: Building): Window {
  const roof = gutteredRoof(placed);
  if (station === 'roof' || station === 'gutter') {
    if (!roof) return windowOf({ placed, k } as Layout, 'tap', building);
    const { outline, x } = roof;
    const right = x + (outline.width_m + outline.rightOut_m) * k + 14;
    const isRoof = station === 'roof';
    const left = isRoof ? x - outline.leftOut_m * k - 8 : x + Math.max(0, outline.width_m - 2.2) * k - 14;
    const top_m = isRoof ? outline.ridgeHeight_m + 0.2 : Math.min(outline.ridgeHeight_m, outline.eaveHeight_m + 0.75);
    return { from: left, to: right + 64, top_m, isFromRight: true };
  }
  if (station === 'storage' || station === 'settling' || station === 'stand') {
    const own = station === 'storage' ? undefined : tankOf(placed, station);
    const tanks = own ? [own] : placed.filter((one): one is PlacedTank => one.kind === 'tank');
    const [first, last] = [tanks[0]!, tanks[tanks.length - 1]!];
    const top_m = Math.max(
      ...tanks.flatMap(({ tank, proposed }) => [tank, proposed].map((one) => (one ? topOf(one) : 0))),
    );
    return {
      from: first.x + extentOf(first)[0] * k - 92,
      to: last.x + extentOf(last)[1] * k + 80,
      top_m,
      isFromRight: false,
    };
  }
  // What is drunk is drawn from the taps.
  const stop = placed.find(({ kind }) => kind === (station === 'cup' ? 'tap' : station))!;
  const [left, right] = extentOf(stop);
  const top_m = 0.1 + (stop.kind === 'tap' || stop.kind === 'treatmentUnit' ? stopTop_m(stop.kind, stop.stops) : 0);
  return { from: stop.x + left * k - 12, to: stop.x + right * k + 12, top_m, isFromRight: false };
}
