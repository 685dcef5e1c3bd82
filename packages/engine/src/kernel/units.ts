import { gravity_m_per_s2 } from './hydraulics.ts';

/** 1 mm of rain on 1 m² is 1 L: the water balance's coherent set is mm, m², L and days. */
export const L_per_m3 = 1000;

/** The coherent set of hydraulics is SI: lengths, times, masses and flows in it, by definition. */
export const mm_per_m = 1000;
export const um_per_m = 1e6;
export const s_per_min = 60;
export const s_per_h = 3600;
export const min_per_h = 60;

/** 0 °C [K], by definition of the degree Celsius. Source: NIST SP 811, App. B.8. */
export const zeroCelsius_K = 273.15;
export const g_per_kg = 1000;
export const months_per_year = 12;
export const L_per_min_per_m3_per_s = L_per_m3 * s_per_min;

/** International foot and inch, US liquid gallon: exact by definition. Source: NIST SP 811, App. B.8. */
export const m_per_ft = 0.3048;
export const mm_per_in = 25.4;
export const L_per_usGallon = 3.785411784;
/** Imperial gallon: exact by definition. Source: NIST SP 811, App. B.8. */
export const L_per_imperialGallon = 4.54609;

/** US gallons as litres [L]. */
export function litresFromUsGallons(gallons: number): number {
  return gallons * L_per_usGallon;
}

/** Square feet as square metres [m2]. */
export function squareMetresFromSquareFeet(area_ft2: number): number {
  return area_ft2 * m_per_ft * m_per_ft;
}

/** Inches as millimetres [mm]. */
export function millimetresFromInches(depth_in: number): number {
  return depth_in * mm_per_in;
}

/** Litres from cubic metres [L]. */
export function litresFromCubicMetres(volume_m3: number): number {
  return volume_m3 * L_per_m3;
}

/** International mile and nautical mile, in metres: exact by definition. Source: NIST SP 811, App. B.8. */
export const m_per_mile = 1609.344;
export const m_per_nauticalMile = 1852;
const m_per_km = 1000;

/** The kilopascal, and the bar, which is allowed beside SI. Source: NIST SP 811, App. B.8. */
export const Pa_per_kPa = 1000;
export const Pa_per_bar = 100_000;

/** Pound, avoirdupois: exact by definition. Source: NIST SP 811, App. B.8. */
const kg_per_lb = 0.45359237;

/** The pressure of a pound-force on a square foot [Pa]. Source: NIST SP 811, App. B.8. */
const Pa_per_psf = 47.88026;

/** Pounds-force on a square foot as kilopascals [kPa]. */
export function kilopascalsFromPsf(pressure_psf: number): number {
  return (pressure_psf * Pa_per_psf) / Pa_per_kPa;
}

/** Kilopascals as pounds-force on a square foot [lbf/ft²]. */
export function psfFromKilopascals(pressure_kPa: number): number {
  return (pressure_kPa * Pa_per_kPa) / Pa_per_psf;
}

/** Metric tonnes-force on a square metre as kilopascals [kPa]. */
export function kilopascalsFromTonnesPerSquareMetre(pressure_t_per_m2: number): number {
  return pressure_t_per_m2 * gravity_m_per_s2;
}

/** Mean length of a year: 146,097 days in 400 years [day]. Source: the rule of the Gregorian calendar. */
export const meanYear_days = 365.2425;

/** A pound-force on a square inch [Pa]. Source: NIST SP 811, App. B.8. */
const Pa_per_psi = 6894.757;
/** A conventional metre of water [kPa]: exact by definition. Source: NIST SP 811, App. B.8. */
const kPa_per_mH2O = 9.80665;
const kPa_per_bar = Pa_per_bar / Pa_per_kPa;
const mbar_per_bar = 1000;
/** Degrees Fahrenheit at which water freezes, and so many degrees Celsius are so many Fahrenheit: exact by definition. Source: NIST SP 811, App. B.8. */
const freezing_F = 32;
const C_per_9F = 5;
const F_per_5C = 9;

/** One unit in another: less so much, times so much, over so much, so that tenths are a division and round once. */
interface Conversion {
  /** Taken off first; left out: nothing. */
  readonly less?: number;
  readonly times: number;
  readonly over: number;
}

const times = (factor: number): Conversion => ({ times: factor, over: 1 });
/** A factor that is exact in so many decimals, as whole numbers: 45 ft are 13.716 m, and not a last bit more. */
const decimal = (factor: number, decimals: number): Conversion => {
  const scale = 10 ** decimals;
  return { times: Math.round(factor * scale), over: scale };
};
const over = (divisor: number): Conversion => ({ times: 1, over: divisor });
const cm_per_m = 100;
const mm_per_cm = 10;
const tenths_per_mm = 10;
const percent_per_whole = 100;
const mL_per_L = 1000;
const nm_per_um = 1000;
const um_per_mm = 1000;
const mg_per_g = 1000;
/** One per cent of a solution is ten grams in a litre, as stocks of chlorine are named. Common practice, no source. */
const g_per_L_per_percent = 10;

/** The units a column of ours may have been written in, by the unit it has here. There is no gallon without its country. */
const conversions: Readonly<Record<string, Readonly<Record<string, Conversion>>>> = {
  m: { ft: decimal(m_per_ft, 4), in: decimal(mm_per_in / mm_per_m, 4), cm: over(cm_per_m), mm: over(mm_per_m) },
  m2: { ft2: decimal(m_per_ft * m_per_ft, 8) },
  mm: { in: decimal(mm_per_in, 1), tenths: over(tenths_per_mm), cm: times(mm_per_cm) },
  'mm/m': {
    percent: times(mm_per_m / percent_per_whole),
    'cm/m': times(mm_per_cm),
    'in/ft': { times: mm_per_in * tenths_per_mm, over: m_per_ft * tenths_per_mm },
  },
  'mm/h': { 'in/h': decimal(mm_per_in, 1), 'cm/h': times(mm_per_cm) },
  kg: { lb: decimal(kg_per_lb, 8) },
  L: { m3: times(L_per_m3), usgal: decimal(L_per_usGallon, 9), impgal: decimal(L_per_imperialGallon, 5) },
  fraction: { percent: over(percent_per_whole) },
  mL: { L: times(mL_per_L) },
  nm: { um: times(nm_per_um), mm: times(nm_per_um * um_per_mm) },
  min: { h: times(min_per_h) },
  C: { F: { less: freezing_F, times: C_per_9F, over: F_per_5C } },
  kPa: {
    psi: decimal(Pa_per_psi / Pa_per_kPa, 6),
    bar: times(kPa_per_bar),
    mbar: { times: kPa_per_bar, over: mbar_per_bar },
    mH2O: decimal(kPa_per_mH2O, 5),
  },
  'kPa/min': {
    'psi/min': decimal(Pa_per_psi / Pa_per_kPa, 6),
    'bar/min': times(kPa_per_bar),
    'mbar/min': { times: kPa_per_bar, over: mbar_per_bar },
  },
  'L/h': {
    'L/min': times(min_per_h),
    'L/s': times(s_per_h),
    'm3/h': times(L_per_m3),
    usgpm: decimal(L_per_usGallon * min_per_h, 8),
    impgpm: decimal(L_per_imperialGallon * min_per_h, 4),
  },
  'mg/L': { 'g/L': times(mg_per_g) },
  'g/L': { percent: times(g_per_L_per_percent), 'mg/L': over(mg_per_g) },
  '1/L': { '1/100mL': times(mL_per_L / percent_per_whole) },
  'm/s': {
    kmh: { times: m_per_km, over: s_per_h },
    kn: { times: m_per_nauticalMile, over: s_per_h },
    mph: { times: m_per_mile, over: s_per_h },
  },
};

/**
 * In which other units may values be written that are wanted in this one?
 *
 * @param unit - the unit wanted [text]
 * @returns the names of the others; none where there is no conversion [text]
 * @definition ours: docs/decisions/0080-columns-saved.md
 * @example
 * unitsWritten('m') // → ['ft', 'in', 'cm', 'mm']
 */
export function unitsWritten(unit: string): readonly string[] {
  return Object.hasOwn(conversions, unit) ? Object.keys(conversions[unit]!) : [];
}

/**
 * What is a value, written in another unit, in the one that is wanted?
 *
 * @param unit - the unit wanted [text]
 * @param written - the unit it is written in, one of unitsWritten [text]
 * @param value - the value as written [the unit written]
 * @returns the value [the unit wanted]; null where there is no such conversion
 * @source nist-sp811, App. B.8
 * @example
 * convertedTo('mm', 'in', 2) // → 50.8
 * convertedTo('mm', 'tenths', 3) // → 0.3
 * convertedTo('m', 'ft', 45) // → 13.716
 * convertedTo('m', 'in', 7) // → 0.1778
 * convertedTo('m2', 'ft2', 100) // → 9.290304
 * convertedTo('L', 'usgal', 10) // → 37.85411784
 * convertedTo('L', 'impgal', 3) // → 13.63827
 * convertedTo('mm/h', 'in/h', 6) // → 152.4
 * convertedTo('kg', 'lb', 200) // → 90.718474
 * convertedTo('m/s', 'kmh', 180) // → 50
 * convertedTo('m/s', 'kn', 90) // → 46.3
 * convertedTo('m/s', 'mph', 100) // → 44.704
 * convertedTo('C', 'F', 77) // → 25
 * convertedTo('kPa', 'bar', 0.5) // → 50
 * convertedTo('kPa', 'psi', 10) // → 68.94757
 * convertedTo('kPa/min', 'psi/min', 10) // → 68.94757
 * convertedTo('L/h', 'L/min', 8) // → 480
 * convertedTo('L/h', 'usgpm', 10) // → 2271.2470704
 * convertedTo('L/h', 'impgpm', 1) // → 272.7654
 * convertedTo('nm', 'um', 0.015) // → 15
 * convertedTo('g/L', 'percent', 1) // → 10
 * convertedTo('1/L', '1/100mL', 3) // → 30
 */
export function convertedTo(unit: string, written: string, value: number): number | null {
  if (!unitsWritten(unit).includes(written)) return null;
  const conversion = conversions[unit]![written]!;
  return ((value - (conversion.less ?? 0)) * conversion.times) / conversion.over;
}
