import {
  L_per_usGallon,
  litresFromUsGallons,
  millimetresFromInches,
  roofPlanArea,
  squareMetresFromSquareFeet,
} from '../../packages/engine/src/kernel/index.ts';
import { firstFlushDepth, siteInflow_L } from '../../packages/engine/src/water/roof/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** A year's rain at once on a roof without first flush: area × rain × runoff fraction [L]. */
function plainYield_L(roofPlanArea_m2: number, rain_mm: number, runoffFraction: number): number {
  const record = { gaugeId: 'G', firstDay: 0, rain_mm: Float64Array.of(rain_mm), state: new Uint8Array(1) };
  const roof = { roofId: 'R', roofPlanArea_m2, gutteredFraction: 1, runoffFraction, firstFlush_mm: 0 };
  return siteInflow_L(record, [{ ...roof, drainHole: 'open' }], 1)[0]!;
}

const dispensary = { roof_m2: 190, runoffFraction: 0.9, rain_mm: 1056 };
const dispensarySupply_L = () => plainYield_L(dispensary.roof_m2, dispensary.rain_mm, dispensary.runoffFraction);

export const warwickSupply: PublishedFile = {
  source: 'warwick-dtu',
  method: 'siteInflow_L',
  rows: [
    { what: 'm³ a year', printed: '180.58', got: () => dispensarySupply_L() / 1000 },
    { what: 'L a day', printed: '494.7', got: () => dispensarySupply_L() / 365 },
    { what: 'm³ in a mean month', printed: '15.05', got: () => dispensarySupply_L() / 12 / 1000 },
  ].map(({ what, printed, got }) => ({
    place: `method 2, dispensary: supply, ${what}`,
    inputs: dispensary,
    printed,
    got,
  })),
};

export const lancaster: PublishedFile = {
  source: 'lancaster-2006',
  method: 'siteInflow_L',
  rows: [
    {
      place: 'appendix 3, equation 4: roof 45 ft × 25 ft, 22 in of rain [gal]',
      inputs: { length_ft: 45, width_ft: 25, rain_in: 22 },
      printed: '15484',
      got: () => {
        const area_m2 = squareMetresFromSquareFeet(roofPlanArea({ length_m: 45, width_m: 25, roofPlanArea_m2: null })!);
        return plainYield_L(area_m2, millimetresFromInches(22), 1) / L_per_usGallon;
      },
      follows: {
        value: 15427.5,
        tolerance: 10.4,
        reason:
          '22 ÷ 12 was rounded to 1.84 ft; the tolerance is half the last digit of its 7.48 gallons in a cubic foot',
      },
    },
  ],
};

const gallonsOn = (gallons: number, area_ft2: number): PublishedRow['got'] => {
  const diverter = {
    firstFlush_mm: null,
    chamber_L: litresFromUsGallons(gallons),
    drainHole: 'open',
    chamberBore_mm: null,
    drainHole_mm: null,
  } as const;
  return () => firstFlushDepth(diverter, squareMetresFromSquareFeet(area_ft2), 0).firstFlush_mm;
};
const inMillimetres = 'the millimetres were worked out from the printed gallons';

export const texasFirstFlush: PublishedFile = {
  source: 'twdb-2005',
  method: 'firstFlushDepth',
  rows: [
    { gallons: 10, area_ft2: 1000, printed: '0.407' },
    { gallons: 1, area_ft2: 100, printed: '0.407' },
    { gallons: 2, area_ft2: 100, printed: '0.815' },
  ].map(({ gallons, area_ft2, printed }) => ({
    place: `chapter 2, pages 7–8: ${gallons} gal on ${area_ft2} ft² (${inMillimetres})`,
    inputs: { gallons, area_ft2 },
    printed,
    got: gallonsOn(gallons, area_ft2),
  })),
};
