import {
  defaultSettings,
  noKit,
  noKitFigures,
  noStorms,
  readIsoDay,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '@eavewell/engine';
import { expect, it } from 'vitest';
import { good, readFiles } from './folder.ts';

it('reads a folder without a fault whole and without a word', async () => {
  const read = await readFiles(good);
  expect(read.problems).toEqual([]);
  expect(read.notUsed).toEqual([]);
  expect(read.files).toEqual([
    { file: 'sites.csv', rows: 3, used: 3 },
    { file: 'roofs.csv', rows: 4, used: 4 },
    { file: 'diverters.csv', rows: 2, used: 2 },
    { file: 'tanks.csv', rows: 4, used: 4 },
    { file: 'demand.csv', rows: 3, used: 3 },
    { file: 'gauges.csv', rows: 2, used: 2 },
    { file: 'parts.csv', rows: 3, used: 3 },
    { file: 'prices.csv', rows: 2, used: 2 },
    { file: 'rain/G-east.csv', rows: 7, used: 7 },
    { file: 'rain/G-west.csv', rows: 7, used: 7 },
  ]);
});

it('joins the rows of all tables into what the engine is told', async () => {
  const { facts } = await readFiles(good);
  expect(facts.settings).toEqual({
    ...defaultSettings,
    programme: 'Tarn water',
    target: { ...defaultSettings.target, longestDryRun_days: 5 },
  });
  const drinking = { purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true };
  const washing = { purpose: 'washing', litres_per_person_per_day: 5, judged: false };
  const ten = { partId: 'tank-10', partVolume_L: 9800, partMass_kg: 210 };
  const metal = { ...unmeasuredRoof, material: 'corrugatedMetal' };
  expect(facts.sites).toEqual([
    {
      siteId: 'S001',
      name: 'Upper Tarn',
      siteClass: null,
      target: null,
      presence: null,
      secondSource: null,
      nearSecondSource: null,
      latitude_deg: -8.5,
      longitude_deg: 125.25,
      people: 120,
      peopleCountedOn: null,
      households_count: null,
      growthFraction_per_year: null,
      designYear: null,
      gaugeId: 'G-east',
      rainFactor: 1.1,
      handOverDay: readIsoDay('2027-03-01'),
      ration: null,
      roofs: [
        {
          ...metal,
          roofId: 'school',
          length_m: 24,
          width_m: 8.5,
          runoffFraction: 0.85,
          gutteredFraction: 1,
          tankId: null,
          diverter: {
            firstFlush_mm: 0.5,
            chamber_L: null,
            drainHole: 'open',
            chamberBore_mm: null,
            drainHole_mm: null,
          },
        },
        {
          ...metal,
          roofId: 'store',
          length_m: 6,
          width_m: 4,
          runoffFraction: null,
          gutteredFraction: 0.5,
          tankId: null,
          diverter: null,
        },
      ],
      tanks: [
        {
          ...unmeasuredTank,
          ...ten,
          tankId: 'T1',
          nominal_L: 10000,
          outletHeight_m: 0.1,
          overflowHeight_m: 2.2,
          diameter_m: 2.5,
        },
        { ...unmeasuredTank, ...ten, tankId: 'T2', nominal_L: 10000, joinedTo: 'T1' },
      ],
      demand: [drinking, washing],
      ...unmeasuredSite,
      doubts: [],
    },
    {
      siteId: 'S002',
      name: 'Lower Tarn',
      siteClass: null,
      target: null,
      presence: null,
      secondSource: null,
      nearSecondSource: null,
      latitude_deg: -8.55,
      longitude_deg: 125.3,
      people: 85,
      peopleCountedOn: null,
      households_count: null,
      growthFraction_per_year: null,
      designYear: null,
      gaugeId: 'G-east',
      rainFactor: 1,
      handOverDay: null,
      ration: null,
      roofs: [
        {
          ...unmeasuredRoof,
          roofId: 'hall',
          length_m: null,
          width_m: null,
          roofPlanArea_m2: 150,
          material: 'tile',
          runoffFraction: 0.8,
          gutteredFraction: 0.9,
          tankId: null,
          diverter: null,
        },
      ],
      tanks: [
        { ...unmeasuredTank, tankId: 'T1', nominal_L: 5000, partId: 'tank-5', partVolume_L: 4900, partMass_kg: 110 },
      ],
      demand: [drinking, washing],
      ...unmeasuredSite,
      doubts: [],
    },
    {
      siteId: 'S003',
      name: 'Ferry Stones',
      siteClass: null,
      target: null,
      presence: null,
      secondSource: null,
      nearSecondSource: null,
      latitude_deg: -8.75,
      longitude_deg: 125.5,
      people: 240,
      peopleCountedOn: null,
      households_count: null,
      growthFraction_per_year: null,
      designYear: null,
      gaugeId: 'G-west',
      rainFactor: 1,
      handOverDay: readIsoDay('2027-05-15'),
      ration: null,
      roofs: [
        {
          ...metal,
          roofId: 'school',
          length_m: 30,
          width_m: 9,
          runoffFraction: 0.85,
          gutteredFraction: 1,
          tankId: null,
          diverter: {
            firstFlush_mm: null,
            chamber_L: 120,
            drainHole: 'blocked',
            chamberBore_mm: null,
            drainHole_mm: null,
          },
        },
      ],
      tanks: [{ ...unmeasuredTank, tankId: 'T1', nominal_L: 20000 }],
      demand: [{ ...drinking, litres_per_person_per_day: 10 }],
      ...unmeasuredSite,
      doubts: [],
    },
  ]);
  expect(facts.gauges.map(({ gaugeId, name, readingTime, file }) => [gaugeId, name, readingTime, file])).toEqual([
    ['G-east', 'East Landing', '07:00', 'rain/G-east.csv'],
    ['G-west', 'West Landing', null, 'rain/G-west.csv'],
  ]);
  const first = readIsoDay('2001-02-26')!;
  expect(facts.gauges[0]!.readings).toEqual(
    [0, 12.5, null, 3.25, 0.2, 41, 0].map((rain_mm, i) => ({ day: first + i, rain_mm, row: i + 2 })),
  );
  expect(facts.gauges).toMatchObject([noStorms, noStorms]);
  expect(facts.parts[1]).toEqual({
    ...unmeasuredPart,
    partId: 'tank-5',
    kind: 'tank',
    name: 'Tank of five',
    volume_L: 4900,
    length_m: 1.9,
    mass_kg: 110,
    kit: {
      ...noKitFigures,
      ...{ width_m: 1.9, height_m: 2.1, packSize_count: 1, supplier: 'Harbour Yard', leadTime_days: 40 },
    },
  });
  expect(facts.kit).toEqual(noKit);
  expect(facts.prices[0]).toEqual({
    partId: 'tank-10',
    priceDate: readIsoDay('2026-02-01'),
    amount: 1450,
    currency: 'USD',
  });
});
