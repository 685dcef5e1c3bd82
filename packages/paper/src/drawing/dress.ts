import type { Dash, Ground, Ink, Weight } from '@eavewell/drawing';

/**
 * What shapes are dressed in on paper: black on white. Lines of .13, .18, .35 and .50 mm; what is water is a hatch of level lines,
 * the closer the fuller; what is a wash of colour on a screen is white, a hatch or black. The same as the printed page of the app.
 */

/** Thickness of lines [mm]. Source: the look, from the ladder of iso-128 (from memory). */
export const weights_mm: Readonly<Record<Weight, number>> = { hair: 0.13, thin: 0.18, edge: 0.35, cut: 0.5 };

const grey = '#444';
export const inkColors: Readonly<Record<Ink, string>> = {
  ink: '#000',
  second: '#000',
  mark: grey,
  rule: '#888',
  water: '#000',
  waterline: '#333',
  ochre: '#000',
  brick: '#000',
  paper: '#fff',
};

/** Strokes and gaps [px of 1/96 inch]. */
export const dashes_px: Readonly<Record<Dash, readonly [number, number] | null>> = {
  none: null,
  proposed: [6, 4],
  unknown: [3.5, 3],
  dotted: [1, 3],
};

/** Lines that fill a shape: level, leaning, in courses or in dots; so far apart and so thick [px]. */
export type Hatch =
  | { readonly kind: 'level'; readonly apart: number; readonly thick: number }
  | { readonly kind: 'leaning'; readonly apart: number; readonly thick: number }
  | { readonly kind: 'courses'; readonly apart: number; readonly thick: number }
  | { readonly kind: 'dots'; readonly apart: number; readonly thick: number };

const level = (apart: number, thick: number): Hatch => ({ kind: 'level', apart, thick });

/** A ground: white or black or a grey; a hatch on white; or nothing. */
export const grounds: Readonly<Record<Ground, string | Hatch | null>> = {
  none: null,
  paper: '#fff',
  ink: '#000',
  water: level(3, 0.6),
  low: level(6, 0.5),
  likely: { kind: 'dots', apart: 5, thick: 0.8 },
  earth: { kind: 'leaning', apart: 8, thick: 0.6 },
  concrete: { kind: 'dots', apart: 3.6, thick: 0.8 },
  masonry: { kind: 'courses', apart: 5, thick: 0.5 },
  figure: '#fff',
  ochre: '#777',
  brick: '#000',
  ochreWash: { kind: 'dots', apart: 5, thick: 0.8 },
  brickWash: { kind: 'leaning', apart: 4, thick: 0.5 },
  waterline: '#000',
  mark: '#777',
  level1: '#fff',
  level2: level(2.5, 0.2),
  level3: level(2.5, 0.45),
  level4: level(2.5, 0.7),
  level5: level(2.5, 1),
  level6: level(2.5, 1.35),
  doubt: { kind: 'leaning', apart: 4, thick: 0.5 },
};

/** Heights of letters on paper [px]: those of the printed page, less than those the picture was laid for. */
export const letterSizes_px = { lettering: 11.5, body: 14, figure: 17 } as const;
