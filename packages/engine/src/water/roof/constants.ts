import type { RoofMaterial } from '../../kernel/index.ts';

/** Why a roof covering asks for care before anyone drinks from it. */
export type RoofCaution = 'organic' | 'asbestosDust' | 'treatedOrTarred';

/** What is known of a roof covering. */
export interface RoofCovering {
  /** Share of the rain that runs off over a year: the lowest and highest figure found, and the one used [fraction]. */
  readonly low: number;
  readonly used: number;
  readonly high: number;
  /** `id, place` of docs/sources.json. */
  readonly source: string;
  readonly caution: RoofCaution | null;
}

/**
 * Runoff fraction by roof covering [fraction].
 * - corrugatedMetal: 0.80–0.85 well-built corrugated iron, long-term mean (rwh-toolkit, sizing lesson); 0.9 new iron
 *   (warwick-dtu, sizing page, dispensary example). Used: the upper end of the long-term mean, as first flush is taken
 *   off on its own.
 * - tile: 0.75 (Indian manuals) and 0.6–0.9 glazed (Thomas & Martinson 2007), both from memory.
 * - concrete: 0.70 (Indian manuals, from memory); ends are those of any hard roof (warwick-dtu, sizing page).
 * - fibreCement: 0.80 (Indian manuals) and 0.8–0.9 (Thomas & Martinson 2007), both from memory.
 * - shingle: ends are those of any hard roof (warwick-dtu, sizing page); their middle is used, which is ours.
 * - thatch: 0.2 (Thomas & Martinson 2007), from memory; only one figure was found.
 */
export const roofCoverings: Readonly<Record<RoofMaterial, RoofCovering>> = {
  corrugatedMetal: { low: 0.8, used: 0.85, high: 0.9, source: 'rwh-toolkit, sizing lesson', caution: null },
  tile: { low: 0.6, used: 0.75, high: 0.9, source: 'indian-manuals, runoff table (from memory)', caution: null },
  concrete: { low: 0.5, used: 0.7, high: 0.9, source: 'indian-manuals, runoff table (from memory)', caution: null },
  fibreCement: {
    low: 0.8,
    used: 0.8,
    high: 0.9,
    source: 'indian-manuals, runoff table (from memory)',
    caution: 'asbestosDust',
  },
  shingle: { low: 0.5, used: 0.7, high: 0.9, source: 'warwick-dtu, sizing page', caution: 'treatedOrTarred' },
  thatch: {
    low: 0.2,
    used: 0.2,
    high: 0.2,
    source: 'thomas-martinson-2007, runoff table (from memory)',
    caution: 'organic',
  },
};

/** Runoff fraction where the covering is not known: the low end of any hard roof [fraction]. Source: warwick-dtu, sizing page. */
export const runoffOfUnknownCovering = { used: 0.5, source: 'warwick-dtu, sizing page' } as const;

/** A day with less rain than this counts as dry before a spell [mm]. Common practice, no source. */
export const dryDayBelow_mm = 1;

/** So many dry days in a row arm the first flush again [day]. Common practice, no source. */
export const armedAfter_days = 3;

/** Yields kept for one rain record before the oldest is let go [count]. Ours: 64 series of 32 years are 6 MB. */
export const yieldsKept_count = 64;

/** Area given and length × width further apart than this share of it are worth a second look [fraction]. Ours. */
export const largestDifference_fraction = 0.1;

/** Sides and plan areas of roofs are mostly not beyond these [m], [m2]. Common practice, no source. */
export const usualSide_m = { least: 2, most: 60 } as const;
export const usualPlanArea_m2 = { least: 6, most: 2000 } as const;

/** Depth let go that halves what dirt still comes [mm]. Source: martinson-thomas-2005, abstract. */
export const loadHalvedBy_mm = 1;

/** Rain up to this is light [mm/h]: a diverter that leaks as much loses whole spells. Common practice, from memory: 2.5 mm/h ends "light rain". */
export const lightRain_mm_per_h = 2.5;

/** A chamber that holds less than this share of what is wanted is warned of [fraction]. Ours. */
export const chamberEnough_fraction = 0.9;
