import type { Station, StationVerdict } from '@eavewell/engine';

/** The draughtsman's ladder of weights: dimension and hatch, beyond the cut, visible edge, cut through. */
export const weights = ['hair', 'thin', 'edge', 'cut'] as const;
export type Weight = (typeof weights)[number];

/** What a line, a letter or a ground is coloured with: names of the look, never colours. */
export const inks = ['ink', 'second', 'mark', 'rule', 'water', 'waterline', 'ochre', 'brick', 'paper'] as const;
export type Ink = (typeof inks)[number];

/** `proposed`: what is to be built; `unknown`: what was not measured. */
export const dashes = ['none', 'proposed', 'unknown', 'dotted'] as const;
export type Dash = (typeof dashes)[number];

/** What a closed shape is filled with. On paper `water` and `low` become hatches, so that all reads in black and white. */
export const grounds = [
  'none',
  'paper',
  'ink',
  'water',
  'low',
  'likely',
  'earth',
  'concrete',
  'masonry',
  'figure',
  'ochre',
  'brick',
  // The same as a pale wash that letters stand on.
  'ochreWash',
  'brickWash',
  'waterline',
  'mark',
  // How full a tank was, from nearly empty to full; and days that were not measured.
  'level1',
  'level2',
  'level3',
  'level4',
  'level5',
  'level6',
  'doubt',
] as const;
export type Ground = (typeof grounds)[number];

/** How a line is drawn. */
export interface Pen {
  readonly weight: Weight;
  readonly ink: Ink;
  readonly dash: Dash;
}

/** Outline and filling of a path: `d` is the path of SVG 2 in px of the picture. */
export interface PathShape {
  readonly kind: 'path';
  readonly d: string;
  /** Null: no outline. */
  readonly pen: Pen | null;
  readonly ground: Ground;
}

/** Lettering. Its height does not scale with the building. */
export interface LetterShape {
  readonly kind: 'letter';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** 13, 16 and 22 px of the look. */
  readonly size: 'lettering' | 'body' | 'figure';
  readonly anchor: 'start' | 'middle' | 'end';
  readonly ink: Ink;
  readonly isStrong: boolean;
  /** Paper round the letters, so that lines under them do not cross them. */
  readonly hasHalo: boolean;
  /** Turned about its own point, anticlockwise [deg]. */
  readonly turn_deg: number;
}

/** The mark of a verdict, its foot's middle at x, y. */
export interface MarkShape {
  readonly kind: 'mark';
  readonly verdict: StationVerdict;
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** Shapes that belong to one part of the building or of a chart. */
export interface GroupShape {
  readonly kind: 'group';
  /** `tank:T1`, `roof:R1`, `gutter:R1`, `person`, `year:1998`, …; null where nothing is said of it. */
  readonly part: string | null;
  /** The station it stands at; null where it stands at none. */
  readonly station: Station | null;
  readonly shapes: readonly Shape[];
}

export type Shape = PathShape | LetterShape | MarkShape | GroupShape;

/**
 * Something of the picture that can be taken hold of: its box on the picture, and what a step along it means. The page lays
 * a field over it that hand and keyboard can use; the drawing itself knows nothing of hands.
 */
export interface Handle {
  /** `tank:T1:height`, `roof:R1:gutter`, … */
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The way it is moved. */
  readonly along: 'x' | 'y';
  /** What one px the growing way (up, or right) adds [unit of what is changed]. */
  readonly perPx: number;
}

/** A drawing or a chart: shapes in px of 1/96 inch, y down. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** px to the metre where it is drawn to scale; null for a chart. */
  readonly pxPerM: number | null;
  readonly shapes: readonly Shape[];
  readonly handles: readonly Handle[];
  /** A cut-out of something larger: its lines run on beyond the frame, which hides them. */
  readonly isCutOut?: boolean;
}
