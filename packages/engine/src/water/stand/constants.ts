import {
  type GroundClass,
  kilopascalsFromPsf,
  kilopascalsFromTonnesPerSquareMetre,
  type WindExposure,
} from '../../kernel/index.ts';

/** Temperature the water is weighed at [C]; between 5 and 35 °C it weighs no more than 0.5 % more or less. Ours. */
export const heldWater_C = 20;

/** Weight of a kilogram [N], rounded up as is the custom of such sums. Common practice, no source; standard gravity is 9.80665. */
export const weightOfOneKg_N = 9.81;

/** Source: nist-sp811, prefixes. */
export const N_per_kN = 1000;

/** What one listing lets a kind of ground carry. */
export interface BearingFigure {
  readonly bearing_kPa: number;
  /** `id, place` of docs/sources.json. */
  readonly source: string;
}

const ibc = (pressure_psf: number): BearingFigure => ({
  bearing_kPa: kilopascalsFromPsf(pressure_psf),
  source: 'ibc-2012, table 1806.2',
});
const nbc = (bearing_kPa: number): BearingFigure => ({ bearing_kPa, source: 'nbc-canada, table 9.4.4.1' });
const india = (pressure_t_per_m2: number): BearingFigure => ({
  bearing_kPa: kilopascalsFromTonnesPerSquareMetre(pressure_t_per_m2),
  source: 'indian-bearing, safe bearing capacities',
});
const bs = (bearing_kPa: number): BearingFigure => ({ bearing_kPa, source: 'bs-8004, table 1 (from memory)' });

/**
 * Presumptive bearing of ground by class, each listing's own figure for it [kPa]. Sources: ibc-2012 (seen; it tells gravel, sand, and clay
 * or silt apart, not dense from loose), nbc-canada (seen), indian-bearing (seen), bs-8004 (from memory, the lower end of its
 * ranges; its "less than" rows, loose sand and gravel and soft clay, name no figure and are left out). Which of their rows
 * stands for which of our classes is ours (docs/decisions/0183). A listing that has no row for a class is not in it.
 * softOrMadeGround has none: ibc-2012 and indian-bearing ask for an investigation.
 */
export const bearingFigures: Readonly<Record<GroundClass, readonly BearingFigure[]>> = {
  rock: [ibc(12000), nbc(500)],
  softRock: [ibc(4000), nbc(300)],
  denseGravel: [ibc(3000), nbc(150), india(45), bs(600)],
  looseGravel: [ibc(3000), nbc(50), india(25)],
  denseSand: [ibc(2000), nbc(150), india(25), bs(300)],
  looseSand: [ibc(2000), nbc(50), india(10)],
  silt: [ibc(1500), nbc(100), india(15)],
  stiffClay: [ibc(1500), nbc(150), india(45), bs(150)],
  firmClay: [ibc(1500), nbc(75), india(25), bs(75)],
  softClay: [nbc(40), india(5)],
  softOrMadeGround: [],
};

/**
 * What ground may be assumed to carry under a light building where nothing says that it is worse [kPa]. Shown beside the listings
 * and never judged by: it is of no class. Source: cfr-3285, 3285.202.
 */
export const ordinaryGround_kPa = kilopascalsFromPsf(1500);

/** ½ × density of air, 1.225 kg/m³: pressure of the wind is this × its speed squared [Pa s²/m²]. Source: asce-7, equation 29.3-1 in SI. */
export const windPressure_factor = 0.613;

/** How one exposure slows the wind near the ground. */
export interface ExposureFigures {
  /** Up to `flatTo_m` above ground; from there up the power law. */
  readonly nearGround_factor: number;
  readonly gradientHeight_m: number;
  readonly exponent_factor: number;
}

/**
 * Velocity pressure exposure coefficient Kz. Source: asce-7, table 29.3-1: 0.57, 0.85 and 1.03 up to 15 ft for exposures B, C and
 * D (seen); gradient heights 1,200, 900 and 700 ft and exponents 7, 9.5 and 11.5 from memory: they give 0.575, 0.849 and 1.030
 * at 15 ft, the seen figures. openWater stands for flat coasts and lake shores.
 */
export const exposures: Readonly<Record<WindExposure, ExposureFigures>> = {
  builtUp: { nearGround_factor: 0.57, gradientHeight_m: 365.76, exponent_factor: 7 },
  openGround: { nearGround_factor: 0.85, gradientHeight_m: 274.32, exponent_factor: 9.5 },
  openWater: { nearGround_factor: 1.03, gradientHeight_m: 213.36, exponent_factor: 11.5 },
};

/** The height up to which Kz is one figure: 15 ft [m]; and the leading factor of the power law above it. Source: asce-7, table 29.3-1 (the law from memory). */
export const flatTo_m = 4.572;
export const powerLaw_factor = 2.01;

/** Kzt on level ground. Source: asce-7, 26.8.2 (from memory). A ridge or cliff top asks for more: an engineer's to say. */
export const levelGround_factor = 1;

/** Kd of a round tank. Source: asce-7, table 26.6-1 (seen). */
export const roundTank_factor = 0.95;

/** Gust factor G of something stiff. Source: asce-7, 26.9.1 (from memory). */
export const gust_factor = 0.85;

/** Force coefficient Cf of an upright cylinder. Source: asce-7, figure 29.5-1 (from memory): 0.5 to 0.9 for tanks of our slenderness, smooth to ribbed. */
export const roundTankForce_factor = 0.7;

/** A stand resists tipping and sliding by at least this × what pushes it. Common practice, from memory. */
export const leastSafety_factor = 1.5;

/**
 * Friction under feet or under a tank. Ours: the low end of 0.3 to 0.4, which is what steel, timber or plastic on concrete or firm
 * soil gives when wet (from memory); nobody measures it, so the lowest is taken.
 */
export const friction_factor = 0.3;

/** No wind that a structure is designed for is faster [m/s]: a larger figure is in another unit. Ours: the fastest gust measured near the ground is 113 m/s (from memory), design speeds end near 90. */
export const fastestWind_m_per_s = 90;

/** A step of height, and the largest tank that may commonly stand so high without consent. */
export interface ConsentStep {
  readonly standHeight_m: number;
  readonly exempt_L: number;
}

/**
 * Tanks commonly exempt from building consent, by height of their stand. Source: nz-building-act, schedule 1, clause 23: 35,000 L on
 * the ground and 2,000 L at 2 m (seen), the other steps from memory. Shown as a note, as local rules differ; never a verdict.
 */
export const consentSteps: readonly ConsentStep[] = [
  { standHeight_m: 0, exempt_L: 35000 },
  { standHeight_m: 0.25, exempt_L: 16000 },
  { standHeight_m: 0.5, exempt_L: 8000 },
  { standHeight_m: 1, exempt_L: 4000 },
  { standHeight_m: 2, exempt_L: 2000 },
  { standHeight_m: 3, exempt_L: 1000 },
  { standHeight_m: 4, exempt_L: 500 },
];
