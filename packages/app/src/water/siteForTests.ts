import { type SiteFacts, type TankFacts, unmeasuredRoof, unmeasuredSite, unmeasuredTank } from '@eavewell/engine';

/** A tank with a volume written on it and no measures. */
export const statedTank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  nominal_L: 5000,
};

/** A round tank 2 m wide, drawn from between 0.1 m and 1.7 m. */
export const measuredTank: TankFacts = {
  ...statedTank,
  nominal_L: null,
  outletHeight_m: 0.1,
  overflowHeight_m: 1.7,
  diameter_m: 2,
};

/** A hall with one roof and one tank. */
export function siteWith(change: Partial<SiteFacts>): SiteFacts {
  return {
    ...unmeasuredSite,
    siteId: 'S1',
    name: 'Hall',
    latitude_deg: null,
    longitude_deg: null,
    siteClass: null,
    target: null,
    people: 30,
    peopleCountedOn: null,
    households_count: null,
    growthFraction_per_year: null,
    designYear: null,
    gaugeId: 'G1',
    rainFactor: 1,
    handOverDay: null,
    roofs: [
      {
        ...unmeasuredRoof,
        roofId: 'R1',
        length_m: 12,
        width_m: 10,
        material: 'corrugatedMetal',
        runoffFraction: 0.8,
        gutteredFraction: 0.8,
      },
    ],
    tanks: [statedTank],
    demand: [{ purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true }],
    ration: null,
    presence: null,
    secondSource: null,
    nearSecondSource: null,
    doubts: [],
    ...change,
  };
}
