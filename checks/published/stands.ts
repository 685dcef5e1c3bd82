import type { GroundClass } from '../../packages/engine/src/kernel/index.ts';
import {
  convertedTo,
  kilopascalsFromTonnesPerSquareMetre,
  psfFromKilopascals,
} from '../../packages/engine/src/kernel/index.ts';
import {
  bearingFigures,
  gust_factor,
  roundTank_factor,
  velocityPressure_Pa,
  windForce_N,
} from '../../packages/engine/src/water/stand/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** What a listing has for one of our classes [kPa]. */
function figureOf(groundClass: GroundClass, source: string): number {
  return bearingFigures[groundClass].find((one) => one.source.startsWith(source))!.bearing_kPa;
}

const ibcRows: readonly (readonly [string, GroundClass, string])[] = [
  ['crystalline bedrock', 'rock', '12000'],
  ['sedimentary and foliated rock', 'softRock', '4000'],
  ['sandy gravel and gravel, GW and GP', 'denseGravel', '3000'],
  ['sand, silty and clayey sand and gravel', 'denseSand', '2000'],
  ['clay, sandy and silty clay, silt', 'firmClay', '1500'],
];

/** What the table prints, out of our constants, which are in kPa. */
export const ibcGround: PublishedFile = {
  source: 'ibc-2012',
  method: 'bearingFigures',
  rows: ibcRows.map(([row, groundClass, printed]) => ({
    place: `table 1806.2, ${row} [psf]`,
    inputs: { groundClass },
    printed,
    got: () => psfFromKilopascals(figureOf(groundClass, 'ibc-2012')),
  })),
};

const canadian: readonly (readonly [string, GroundClass | null, string, number, string])[] = [
  ['dense sand or gravel', 'denseSand', '150', 150, '3130'],
  ['loose sand or gravel', 'looseSand', '50', 50, '1044'],
  ['dense silt', 'silt', '100', 100, '2088'],
  ['stiff clay', 'stiffClay', '150', 150, '3132'],
  ['firm clay', 'firmClay', '75', 75, '1570'],
  ['soft clay', 'softClay', '40', 40, '835'],
  ['till', null, '200', 200, '4177'],
  ['clay shale', 'softRock', '300', 300, '6265'],
  ['sound rock', 'rock', '500', 500, '10442'],
];

/** The page prints both units: our constants against its kPa, our conversion against its psf. */
export const canadianGround: PublishedFile = {
  source: 'nbc-canada',
  method: 'psfFromKilopascals',
  rows: canadian.flatMap(([row, groundClass, kPa, pressure_kPa, psf]): PublishedRow[] => {
    const converted: PublishedRow = {
      place: `table 9.4.4.1, ${row} [psf]`,
      inputs: { pressure_kPa },
      printed: psf,
      tolerance: { value: 0.003 * Number(psf), reason: 'the page rounds one conversion to 10 psf and cuts others off' },
      got: () => psfFromKilopascals(pressure_kPa),
    };
    // Till is none of our classes.
    if (groundClass === null) return [converted];
    const own: PublishedRow = {
      place: `table 9.4.4.1, ${row} [kPa]`,
      inputs: { groundClass },
      printed: kPa,
      got: () => figureOf(groundClass, 'nbc-canada'),
      method: 'bearingFigures',
    };
    return [own, converted];
  }),
};

const indian: readonly (readonly [string, GroundClass | null, number, string])[] = [
  ['gravel, compact', 'denseGravel', 45, '450'],
  ['coarse sand, compact and dry', null, 45, '450'],
  ['medium sand, compact and dry', 'denseSand', 25, '250'],
  ['fine sand and silt', 'silt', 15, '150'],
  ['loose gravel', 'looseGravel', 25, '250'],
  ['fine sand, loose and dry', 'looseSand', 10, '100'],
  ['stiff clay', 'stiffClay', 45, '450'],
  ['medium clay', 'firmClay', 25, '250'],
  ['moist clay', null, 15, '150'],
  ['very soft clay', 'softClay', 5, '50'],
];

export const indianGround: PublishedFile = {
  source: 'indian-bearing',
  method: 'kilopascalsFromTonnesPerSquareMetre',
  rows: indian.map(([row, groundClass, pressure_t_per_m2, printed]) => ({
    place: `safe bearing capacities, ${row} [kN/m²]`,
    inputs: { pressure_t_per_m2, ...(groundClass === null ? {} : { groundClass }) },
    printed,
    tolerance: {
      value: 0.02 * Number(printed),
      reason: 'the listing takes gravity as 10 m/s²; standard gravity is 9.80665',
    },
    got: () =>
      groundClass === null
        ? kilopascalsFromTonnesPerSquareMetre(pressure_t_per_m2)
        : figureOf(groundClass, 'indian-bearing'),
    ...(groundClass === null ? {} : { method: 'bearingFigures' }),
  })),
};

export const philippineWind: PublishedFile = {
  source: 'nscp-207',
  method: 'velocityPressure_Pa',
  rows: [
    {
      place: 'worked example, velocity pressure [N/m²]',
      inputs: { exposure: 0.7778, topography: 1, direction: 0.85, windSpeed: 72.2222 },
      printed: '2113.9224',
      tolerance: { value: 2113.9224e-5, reason: 'the speed, 260 km/h, and Kz are printed to four decimals' },
      got: () =>
        velocityPressure_Pa({
          windSpeed_m_per_s: 72.2222,
          exposure_factor: 0.7778,
          topography_factor: 1,
          direction_factor: 0.85,
        }),
    },
  ],
};

export const tankWind: PublishedFile = {
  source: 'api-650-thread',
  method: 'windForce_N',
  rows: [
    {
      place: 'design wind pressure of a tank at 120 mph, qz × G [psf]',
      inputs: { exposure: 1.04, direction: 0.95, windSpeed_mph: 120, importance: 1, gust: 0.85 },
      printed: '31.0',
      tolerance: { value: 0.062, reason: 'worked with 0.00256 in psf and mph, which is 0.613 in SI rounded up: 0.2 %' },
      got: () => {
        const pressure_Pa = velocityPressure_Pa({
          windSpeed_m_per_s: convertedTo('m/s', 'mph', 120)!,
          exposure_factor: 1.04,
          topography_factor: 1,
          direction_factor: roundTank_factor,
        });
        return psfFromKilopascals(windForce_N(pressure_Pa, gust_factor, 1, 1) / 1000);
      },
    },
  ],
};
