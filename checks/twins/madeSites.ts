import {
  type DesignSettings,
  defaultSettings,
  noKit,
  noRollout,
  noStorms,
  type ProgrammeFacts,
  type RainReading,
  readIsoDay,
  type SiteFacts,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '@eavewell/engine';
import { numbersFrom } from './records.ts';

const firstDay = readIsoDay('2001-01-01')!;
const years = 16;
const days = Math.round(years * 365.25);

/** Fewer draws than usual, so that every change can be judged the long way round. */
const settings: DesignSettings = { ...defaultSettings, draws: 60, firstFlush_mm: 0.5, waterYearStartMonth: 1 };

/**
 * A programme of one site and one gauge, made from a seed: seasons of rain, one or two roofs, some without their length or
 * with a chamber, tanks by height or as stated, one or two purposes or none; a catalogue of three tanks, not all priced.
 */
export function madeProgramme(seed: number): ProgrammeFacts & { readonly site: SiteFacts } {
  const next = numbersFrom(seed * 7907 + 11);
  for (let i = 0; i < 8; i++) next();
  const readings = madeReadings(next);
  const site = madeSite(seed, next);
  return {
    site,
    settings,
    sites: [site],
    gauges: [
      {
        ...noStorms,
        gaugeId: 'G',
        name: 'Made',
        readingTime: null,
        latitude_deg: null,
        longitude_deg: null,
        readings,
        normals: [],
        file: 'rain/G.csv',
      },
    ],
    kit: noKit,
    rollout: noRollout,
    ...madeCatalogue(seed, site.people!),
  };
}

function madeReadings(next: () => number): RainReading[] {
  const wetness = 0.25 + 0.3 * next();
  return Array.from({ length: days }, (_, i) => {
    const season = 0.7 + 0.3 * Math.sin((2 * Math.PI * i) / 365.25);
    const rain_mm = next() < wetness * season * 1.6 ? Math.round(-Math.log(1 - next()) * 110) / 10 : 0;
    return { day: firstDay + i, rain_mm, row: i + 2 };
  });
}

// long: one site, fact by fact
function madeSite(seed: number, next: () => number): SiteFacts {
  const one = <T>(...choices: readonly T[]): T => choices[Math.floor(next() * choices.length)]!;
  const people = 40 + Math.floor(next() * 120);
  const roof = (roofId: string) => ({
    ...unmeasuredRoof,
    roofId,

    length_m: one(14, 18.5, null),
    width_m: 8,
    roofPlanArea_m2: people * (1.5 + 3.5 * next()),
    material: 'corrugatedMetal' as const,

    runoffFraction: 0.85,
    gutteredFraction: one(0.45, 0.6, 0.8, 1, null),
    diverter: one(
      null,
      { firstFlush_mm: 2, chamber_L: null, drainHole: 'open' as const, chamberBore_mm: null, drainHole_mm: null },
      {
        firstFlush_mm: null,
        chamber_L: people * 2,
        drainHole: 'open' as const,
        chamberBore_mm: null,
        drainHole_mm: null,
      },
    ),
  });
  const tank = (tankId: string, joinedTo: string | null) => ({
    ...unmeasuredTank,
    tankId,
    nominal_L: people * one(60, 200, 400, 700),

    outletHeight_m: one(0.1, null),
    overflowHeight_m: 2.1,
    diameter_m: Math.sqrt(people) * one(0.25, 0.4, 0.6),
    joinedTo,
  });
  const washing = { purpose: 'washing', litres_per_person_per_day: 4, judged: false };
  const drinking = { purpose: 'drinking', litres_per_person_per_day: one(3, 4.5, 8), judged: true };
  const cooking = { purpose: 'cooking', litres_per_person_per_day: 1.5, judged: true };
  return {
    ...unmeasuredSite,
    siteId: `S${seed}`,
    name: 'Made up',
    siteClass: null,
    target: null,
    presence: null,
    secondSource: seed % 16 === 6 ? pond(seed) : null,
    nearSecondSource: seed % 2 === 0 ? pond(seed + 1) : null,
    latitude_deg: null,
    longitude_deg: null,
    people,
    peopleCountedOn: null,
    households_count: null,
    growthFraction_per_year: null,
    designYear: null,
    gaugeId: 'G',
    rainFactor: 1,
    handOverDay: null,
    ration: null,
    roofs: one([roof('R1')], [roof('R1'), roof('R2')]),
    tanks: one([tank('new', null)], [tank('T1', null), tank('T2', 'T1')]),
    demand: one([], [drinking], [drinking, cooking, washing], [drinking, washing]),

    doubts: [],
  };
}

/** A source that gives water in some months: half the year, three, or all of it. */
function pond(seed: number) {
  const months = [
    [6, 7, 8],
    [1, 2, 3, 4, 5, 6],
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
  ][seed % 3]!;
  return { secondSourceId: `pond${seed}`, name: 'Pond', kind: 'pond', months, turbidity_NTU: null } as const;
}

/**
 * The same site with its roofs and people shared between two tanks that are not joined, A1 (with A2 joined to it, at times) and
 * B1, of sizes that hold, are tight or are short.
 */
export function twoTanks(site: SiteFacts, seed: number): SiteFacts {
  const next = numbersFrom(seed * 104_729 + 5);
  for (let i = 0; i < 8; i++) next();
  const one = <T>(...choices: readonly T[]): T => choices[Math.floor(next() * choices.length)]!;
  const share = one(0.25, 0.5, 0.75);
  const [roof] = site.roofs;
  const people = site.people!;
  const roofOf = (roofId: string, tankId: string, fraction: number) => ({
    ...roof!,
    roofId,
    tankId,
    roofPlanArea_m2: people * fraction * (2.5 + 4 * next()),
    gutteredFraction: one(0.5, 0.8, 1, ...(seed % 4 === 0 ? [null] : [])),
  });
  const tank = (tankId: string, peopleFraction: number | null, litres: number, joinedTo: string | null = null) => ({
    ...unmeasuredTank,
    ...site.tanks[0]!,
    tankId,

    nominal_L: people * litres,
    peopleFraction,
    joinedTo,
  });
  const litres = () => one(120, 400, 1200);
  return {
    ...site,
    roofs: [roofOf('R1', 'A1', share), roofOf('R2', 'B1', 1 - share)],
    tanks: [
      tank('A1', share, share * litres()),
      ...(next() < 0.3 ? [tank('A2', null, share * litres(), 'A1')] : []),
      tank('B1', 1 - share, (1 - share) * litres()),
    ],
  };
}

function madeCatalogue(seed: number, people: number): Pick<ProgrammeFacts, 'parts' | 'prices'> {
  const part = (partId: string, kind: string, volume_L: number | null, length_m: number | null) => ({
    ...unmeasuredPart,
    partId,
    kind,
    name: partId,
    volume_L,
    length_m,
  });
  const price = (partId: string, amount: number, currency = 'XTS') => ({
    partId,
    priceDate: firstDay,
    amount,
    currency,
  });
  const odd = seed % 5 === 0;
  return {
    parts: [
      part('small', 'tank', people * 30, 1),
      part('middle', 'tank', people * 95, 2),
      part('large', 'tank', people * 240, 3),
      part('gutter-a', 'gutter', null, 4),
      part('gutter-b', 'gutter', null, 3),
      part('flush', 'diverter', null, 2),
      ...(seed % 4 < 2 ? [part('kit', 'site', null, null)] : []),
    ],
    prices: [
      price('small', 150),
      ...(odd ? [] : [price('middle', 420)]),
      price('large', 1300, odd ? 'XXX' : 'XTS'),
      price('gutter-a', 25),
      price('gutter-b', 17),
      ...(seed % 3 === 0 ? [] : [price('flush', 60)]),
      ...(seed % 4 === 0 ? [price('kit', 2400)] : []),
    ],
  };
}
