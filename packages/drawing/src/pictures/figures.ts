import type { Limb } from '../building/people.ts';
import type { PathShape } from '../sheet/shapes.ts';
import { away, body, fine, type Spot, through } from './signs.ts';

/** How somebody stands: where hands and feet are; elbows and knees follow from the length of the limbs. */
export interface Pose {
  /** Crown to sole of the same person upright. */
  readonly size: number;
  readonly hip: Spot;
  readonly shoulder: Spot;
  /** Middle of the head; it sits on the shoulders where it is not given. */
  readonly head?: Spot;
  readonly hands: readonly Spot[];
  readonly feet: readonly Spot[];
  /** The way the knees point and the toes: 1 to the right. */
  readonly faces: 1 | -1;
  /** Which way elbows point: 1 clockwise of the way from shoulder to hand. */
  readonly elbows?: readonly (1 | -1)[];
  /** Child: a larger head and shorter limbs. */
  readonly isChild?: boolean;
}

/** Lengths and half thicknesses, shares of the size. Rounder than a drawing to scale, so that limbs stay open when printed small. */
const upperLeg = 0.255;
const lowerLeg = 0.255;
const upperArm = 0.175;
const lowerArm = 0.175;
/** A child's legs, shares of those of a grown person of the same size. */
const childLeg = 0.6;

/** Somebody, as an outline: no face, no dress of anyone. */
export function figure(pose: Pose): readonly PathShape[] {
  return body(limbsOf(pose));
}

function limbsOf(pose: Pose): readonly Limb[] {
  const { size, hip, shoulder, hands, feet, faces } = pose;
  const lean = Math.atan2(shoulder[1] - hip[1], shoulder[0] - hip[0]);
  const lean_deg = (lean * 180) / Math.PI;
  const r = (share: number) => share * size;
  const headSize = pose.isChild ? 0.145 : 0.085;
  const head = pose.head ?? away(shoulder, lean_deg, r(headSize + 0.075));
  const limbs: Limb[] = [
    [...head, r(headSize), ...away(head, 90, r(0.012)), r(headSize - 0.004)],
    [...shoulder, r(0.05), ...head, r(0.035)],
    [...shoulder, r(0.088), ...hip, r(0.078)],
  ];
  for (const foot of feet) {
    const leg = pose.isChild ? childLeg : 1;
    const knee = joint(hip, foot, leg * r(upperLeg), leg * r(lowerLeg), -faces as 1 | -1);
    limbs.push([...hip, r(0.075), ...knee, r(0.053)], [...knee, r(0.051), ...foot, r(0.036)]);
    limbs.push([foot[0], foot[1] + r(0.008), r(0.028), foot[0] + faces * r(0.075), foot[1] + r(0.012), r(0.024)]);
  }
  for (const [nth, hand] of hands.entries()) {
    const elbow = joint(shoulder, hand, r(upperArm), r(lowerArm), pose.elbows?.[nth] ?? faces);
    limbs.push([...shoulder, r(0.05), ...elbow, r(0.041)], [...elbow, r(0.041), ...hand, r(0.036)]);
    limbs.push([...hand, r(0.042), ...hand, r(0.0419)]);
  }
  return limbs;
}

/** Where elbow or knee is, between two ends; a limb that is too short is stretched. */
function joint(from: Spot, to: Spot, upper: number, lower: number, side: 1 | -1): Spot {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const stretch = Math.max(1, length / (upper + lower));
  const [a, b] = [upper * stretch, lower * stretch];
  const along = (a * a - b * b + length * length) / (2 * length || 1);
  const off = Math.sqrt(Math.max(0, a * a - along * along)) * side;
  const [ux, uy] = [(to[0] - from[0]) / (length || 1), (to[1] - from[1]) / (length || 1)];
  return [from[0] + ux * along - uy * off, from[1] + uy * along + ux * off];
}

/** A hand from near by: where its palm is, the way its forearm comes from, and what it does. */
export interface Hand {
  readonly palm: Spot;
  /** Where the forearm leaves the picture, or ends. */
  readonly from: Spot;
  readonly deed: 'grips' | 'lies';
  /** The way of what it grips, or of its fingers [deg]. */
  readonly turn_deg: number;
  /** 1: fingers on the clockwise side. */
  readonly side?: 1 | -1;
  readonly size?: number;
}

/** A hand. Gripping, its four fingers lie across what it holds; lying, they stretch out. Its forearm is open where it ends. */
export function hand({ palm, from, deed, turn_deg, side = 1, size = 1 }: Hand): readonly PathShape[] {
  const arm = forearm(from, palm, size);
  return deed === 'lies' ? lying(palm, turn_deg, side, size, arm) : gripping(palm, turn_deg, side, size, arm);
}

/** A forearm with straight ends, in ink so much wider [px]. */
const forearm = (from: Spot, palm: Spot, size: number) => (wider: number) => {
  const turn = (Math.atan2(palm[1] - from[1], palm[0] - from[0]) * 180) / Math.PI;
  const edge = (at: Spot, half: number, by: 1 | -1) => away(at, turn + by * 90, half + wider);
  const [far, near] = [5.4 * size, 4.8 * size];
  // The paper within reaches beyond the ink, so that no seam shows.
  const end = away(from, turn, wider < 0 ? -0.5 : 0);
  return through([edge(end, far, -1), edge(palm, near, -1), edge(palm, near, 1), edge(end, far, 1)], true);
};
type Forearm = ReturnType<typeof forearm>;

function lying(palm: Spot, turn_deg: number, side: 1 | -1, s: number, arm: Forearm): readonly PathShape[] {
  const nths = [-1.5, -0.5, 0.5, 1.5];
  const fingers = nths.map((nth): Limb => {
    const root = away(palm, turn_deg + 90, nth * 3.7 * s);
    return [...root, 2.3 * s, ...away(root, turn_deg + nth * 3, (Math.abs(nth) > 1 ? 11.5 : 13.5) * s), 2.1 * s];
  });
  const root = away(palm, turn_deg + side * 90, 4 * s);
  const thumb: Limb = [...root, 2.6 * s, ...away(root, turn_deg + side * 55, 9 * s), 2.1 * s];
  const between = [-1, 0, 1].map((nth) => {
    const gap = away(palm, turn_deg + 90, nth * 3.7 * s);
    return through([away(gap, turn_deg, 2.5 * s), away(gap, turn_deg + nth * 3, 9 * s)]);
  });
  return [...body([[...palm, 6.6 * s, ...palm, 6.5 * s], ...fingers, thumb], arm), fine(between.join(''))];
}

function gripping(palm: Spot, turn_deg: number, side: 1 | -1, s: number, arm: Forearm): readonly PathShape[] {
  const across = turn_deg + side * 90;
  const fingers = [-1.5, -0.5, 0.5, 1.5].flatMap((nth) => {
    const knuckle = away(palm, turn_deg, nth * 4.1 * s);
    return body([[...away(knuckle, across, -3.4 * s), 2.7 * s, ...away(knuckle, across, 4.6 * s), 2.6 * s]]);
  });
  return [...body([[...away(palm, turn_deg, -4 * s), 6 * s, ...away(palm, turn_deg, 4 * s), 6 * s]], arm), ...fingers];
}
