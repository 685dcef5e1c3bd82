import type { SiteFacts, TankFacts } from '@eavewell/engine';

/** A tank with a volume written on it and no measures. */
export const statedTank: TankFacts = {
  tankId: 'T1',
  nominal_L: 5000,
  partVolume_L: null,
  outletHeight_m: null,
  overflowHeight_m: null,
  diameter_m: null,
  joinedTo: null,
  role: 'storage',
  peopleFraction: null,
  height_m: null,
  standHeight_m: null,
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
        roofId: 'R1',
        length_m: 12,
        width_m: 10,
        roofPlanArea_m2: null,
        material: 'corrugatedMetal',
        runoffFraction: 0.8,
        gutteredFraction: 0.8,
        tankId: null,
        diverter: null,
        form: null,
        pitch_deg: null,
        eaveHeight_m: null,
      },
    ],
    tanks: [statedTank],
    gutters: [],
    downpipes: [],
    demand: [{ purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true }],
    ration: null,
    presence: null,
    secondSource: null,
    nearSecondSource: null,
    doubts: [],
    ...change,
  };
}
