import type { GutterShape } from '../../kernel/index.ts';

/** A gutter in section, as the water that stands in it sees it. Levels are measured up from its lowest point. */
export interface GutterSection {
  readonly depth_mm: number;
  /** Area of the water [mm2], its width at the top [mm], and area × depth of its middle under the surface [mm3], at a level [mm]. */
  readonly at: (level_mm: number) => WaterAt;
  /** Of sole and sides, to the brim. */
  readonly wetted_mm: number;
}

/** Water in a gutter at one level. */
export interface WaterAt {
  readonly area_mm2: number;
  readonly width_mm: number;
  readonly moment_mm3: number;
}

/** The measures a section is made of. */
export interface SectionFacts {
  readonly shape: GutterShape | null;
  /** Across its top, inside. */
  readonly width_mm: number | null;
  readonly depth_mm: number | null;
  /** Across its sole, of a trapezium. */
  readonly baseWidth_mm: number | null;
}

/** What is wanted, or wrong, before a section can be drawn: a column of gutters.csv. */
export type SectionFault = 'shape' | 'width_mm' | 'depth_mm' | 'baseWidth_mm';

/**
 * What is missing or impossible in these measures of a gutter? A trapezium needs its sole, which is no wider than its top.
 *
 * @param facts - shape [text], width_mm, depth_mm and baseWidth_mm [mm], each above 0 or null
 * @returns the columns, in their order [text]; none where the section can be drawn
 * @definition ours
 * @example
 * sectionFaults({ shape: 'halfRound', width_mm: 100, depth_mm: null, baseWidth_mm: null }) // → ['depth_mm']
 * sectionFaults({ shape: 'trapezoidal', width_mm: 100, depth_mm: 80, baseWidth_mm: 120 }) // → ['baseWidth_mm']
 */
export function sectionFaults(facts: SectionFacts): readonly SectionFault[] {
  const { shape, width_mm, depth_mm, baseWidth_mm } = facts;
  const faults: SectionFault[] = [];
  if (shape === null) faults.push('shape');
  if (!isAboveZero(width_mm)) faults.push('width_mm');
  if (!isAboveZero(depth_mm)) faults.push('depth_mm');
  if (shape === 'trapezoidal' && !(isAboveZero(baseWidth_mm) && !(width_mm !== null && baseWidth_mm > width_mm)))
    faults.push('baseWidth_mm');
  return faults;
}

function isAboveZero(value: number | null): value is number {
  return value !== null && value > 0 && value < Infinity;
}

/**
 * Which section has a gutter of these measures? A half round deeper than half its width has upright sides above its round sole; a cut pipe is the
 * circle through both edges and the sole, shallow or deep.
 *
 * @param facts - shape [text], width_mm, depth_mm and baseWidth_mm [mm]
 * @returns the section, levels and widths in mm; null where sectionFaults has something to say
 * @definition plane geometry: docs/methods/drainage.md
 */
export function gutterSection(facts: SectionFacts): GutterSection | null {
  if (sectionFaults(facts).length > 0) return null;
  const { shape, baseWidth_mm } = facts;
  const width_mm = facts.width_mm!;
  const depth_mm = facts.depth_mm!;
  if (shape === 'rectangular') return trapezium(width_mm, width_mm, depth_mm);
  if (shape === 'trapezoidal') return trapezium(baseWidth_mm!, width_mm, depth_mm);
  if (shape === 'halfRound' && depth_mm > width_mm / 2) return withUprightSides(width_mm, depth_mm);
  return partOfCircle(width_mm, depth_mm);
}

/**
 * How large is the waterway of a gutter, to its brim?
 *
 * @param section - the gutter in section
 * @returns area [mm2], above 0
 * @definition plane geometry: docs/methods/drainage.md
 */
export function waterway_mm2(section: GutterSection): number {
  return section.at(section.depth_mm).area_mm2;
}

function trapezium(sole_mm: number, top_mm: number, depth_mm: number): GutterSection {
  const spread = (top_mm - sole_mm) / depth_mm;
  return {
    depth_mm,
    at: (level) => ({
      area_mm2: level * (sole_mm + (spread * level) / 2),
      width_mm: sole_mm + spread * level,
      moment_mm3: (sole_mm * level ** 2) / 2 + (spread * level ** 3) / 6,
    }),
    wetted_mm: sole_mm + 2 * Math.hypot(depth_mm, (top_mm - sole_mm) / 2),
  };
}

/** Chord and height of a segment give its circle: r = (w² ÷ 4 + d²) ÷ 2d. */
function partOfCircle(width_mm: number, depth_mm: number): GutterSection {
  const radius_mm = (width_mm ** 2 / 4 + depth_mm ** 2) / (2 * depth_mm);
  return {
    depth_mm,
    at: (level_mm) => waterInCircle(radius_mm, level_mm),
    wetted_mm: radius_mm * angleOf(radius_mm, depth_mm),
  };
}

/** The angle of a segment, seen from the middle of its circle [rad]. */
function angleOf(radius_mm: number, level_mm: number): number {
  return 2 * Math.acos(Math.min(1, Math.max(-1, 1 - level_mm / radius_mm)));
}

/** Water in a round pipe or gutter that stands so high in it. */
export function waterInCircle(radius_mm: number, level_mm: number): WaterAt {
  const angle = angleOf(radius_mm, level_mm);
  const area_mm2 = (radius_mm ** 2 * (angle - Math.sin(angle))) / 2;
  const width_mm = 2 * Math.sqrt(Math.max(0, level_mm * (2 * radius_mm - level_mm)));
  return { area_mm2, width_mm, moment_mm3: width_mm ** 3 / 12 - area_mm2 * (radius_mm - level_mm) };
}

function withUprightSides(width_mm: number, depth_mm: number): GutterSection {
  const radius_mm = width_mm / 2;
  const round = waterInCircle(radius_mm, radius_mm);
  return {
    depth_mm,
    at: (level_mm) => {
      const above_mm = level_mm - radius_mm;
      if (above_mm <= 0) return waterInCircle(radius_mm, level_mm);
      return {
        area_mm2: round.area_mm2 + width_mm * above_mm,
        width_mm,
        moment_mm3: round.moment_mm3 + round.area_mm2 * above_mm + (width_mm * above_mm ** 2) / 2,
      };
    },
    wetted_mm: Math.PI * radius_mm + 2 * (depth_mm - radius_mm),
  };
}
