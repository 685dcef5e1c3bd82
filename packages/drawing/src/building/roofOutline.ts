import { cylinderVolume_L } from '@eavewell/engine';
import type { BuiltRoof } from './building.ts';
import {
  branchDrop_m,
  chamberBores_m,
  chamberClearance_m,
  leastChamber_m,
  leastDrop_m,
  overhang_m,
  overhangShare,
} from './constants.ts';
import type { Point } from './view.ts';

/** The lines a roof's section is built on, in m from its left eave and the ground. */
export interface RoofOutline {
  readonly width_m: number;
  readonly overhang_m: number;
  /** Top of the sheet, eave to eave. */
  readonly top: readonly Point[];
  readonly ridgeHeight_m: number;
  readonly eaveHeight_m: number;
  readonly tan: number;
  /** Which eaves have gutters. */
  readonly hasLeft: boolean;
  readonly hasRight: boolean;
  /** Middle of the right gutter and of the pipe under it; of the left. */
  readonly rightPipe_m: number;
  readonly leftPipe_m: number;
  /** Where the first flush branches from the pipe to the tank. */
  readonly branchHeight_m: number;
  readonly chamber: Chamber | null;
  /** What it takes left of its left eave, and right of its right one. */
  readonly leftOut_m: number;
  readonly rightOut_m: number;
}

/** So many pipes side by side, each so long. */
export interface Chamber {
  readonly count: number;
  readonly bore_m: number;
  readonly length_m: number;
}

const sheetOver_m = 0.05;
const mostPipes = 12;

/**
 * The lines of a roof; the branch of its first flush hangs at its usual depth under the gutter, or as much higher as the
 * tank asks that it leads to.
 */
export function roofOutline(roof: BuiltRoof, wanted_m = 0): RoofOutline {
  const width_m = roof.width_m.value;
  const eave = roof.eaveHeight_m.value;
  const tan = Math.tan((roof.pitch_deg.value * Math.PI) / 180);
  const isOneWay = roof.form === 'oneSlope' || roof.form === 'flat';
  const rise = isOneWay ? width_m * tan : (width_m / 2) * tan;
  const low = eave + sheetOver_m;
  const ridge: Point = isOneWay ? [0, low + rise] : [width_m / 2, low + rise];
  const share = roof.gutteredFraction.value;
  const half = roof.gutter.width_m.value / 2;
  const highest = eave - Math.min(leastDrop_m, eave * 0.3);
  const branchHeight_m = Math.min(highest, Math.max(eave * 0.5, eave - branchDrop_m, wanted_m));
  const chamber = roof.diverter && chamberOf(roof.diverter.chamber_L.value, roof.diverter.bore_m, branchHeight_m);
  const pipes_m = chamber === null ? 0 : chamber.count * chamber.bore_m * 1.3;
  return {
    width_m,
    overhang_m: Math.min(overhang_m, width_m * overhangShare),
    top: isOneWay ? [ridge, [width_m, low]] : [[0, low], ridge, [width_m, low]],
    ridgeHeight_m: low + rise,
    eaveHeight_m: eave,
    tan,
    hasLeft: !isOneWay && share > 0.5,
    hasRight: share > 0,
    rightPipe_m: width_m + half - 0.02,
    leftPipe_m: 0.02 - half,
    branchHeight_m,
    chamber,
    leftOut_m: Math.max(0.15, roof.gutter.width_m.value + 0.1),
    rightOut_m: Math.max(0.3, roof.gutter.width_m.value + 0.1, half + pipes_m + 0.1),
  };
}

/** Height of the sheet over a point of the width. */
export function sheetAt({ top }: RoofOutline, x: number): number {
  for (let index = 1; index < top.length; index++) {
    const [[x0, y0], [x1, y1]] = [top[index - 1]!, top[index]!];
    if (x <= x1 || index === top.length - 1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return top[0]![1];
}

/**
 * A first-flush chamber at its true volume: of the bore measured, else of the least usual bore that hangs clear of the
 * ground; of several pipes where one would be too long.
 */
export function chamberOf(volume_L: number, bore_m: number | null, branchHeight_m: number): Chamber | null {
  if (!(volume_L > 0)) return null;
  const room = Math.max(leastChamber_m, branchHeight_m - chamberClearance_m);
  const length = (bore: number) => volume_L / cylinderVolume_L(bore, 1);
  const counted = (bore: number) => Math.max(1, Math.ceil(length(bore) / room - 1e-9));
  // More pipes than could hang there: the measured bore is not what the chamber is made of.
  const given = bore_m !== null && counted(bore_m) <= mostPipes ? bore_m : null;
  const widest = Math.max(
    chamberBores_m[chamberBores_m.length - 1]!,
    Math.sqrt(volume_L / cylinderVolume_L(1, room * mostPipes)),
  );
  const bore = given ?? chamberBores_m.find((one) => length(one) <= room) ?? widest;
  const count = Math.min(mostPipes, counted(bore));
  return { count, bore_m: bore, length_m: length(bore) / count };
}
