import {
  defaultSettings,
  designSites,
  noSafety,
  type ProgrammeFacts,
  pathogens,
  rainOfSite,
  readyProgramme,
  referencePathogens,
  type SiteFacts,
  seriesOf,
} from '@eavewell/engine';
import { expect, it } from 'vitest';
import { madeProgramme, twoTanks } from './madeSites.ts';

// The risk of a year of two waters against a slow plain run: body by body, year by year, day by day, group by group, from the litres each day took from the second source.

const months = [
  [6, 7, 8],
  [1, 2, 3, 4, 5],
  [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
];
const raw = { roofs: 0.02, source: 5 };
const [skipping, off_days, steps] = [0.1, 12, 2];
const reductions = {
  ...{ bacteria_log10: steps, viruses_log10: steps, protozoa_log10: steps },
  ...{ evidence: 'credited', source: 'An invented authority' },
} as const;

function programme(seed: number) {
  const made = madeProgramme(seed);
  const tanks = seed % 2 === 0 ? twoTanks(made.site, seed) : made.site;
  const secondSource = { secondSourceId: 'R', name: 'R', kind: 'pond', months: months[seed % 3]!, turbidity_NTU: null };
  const rows = [null, 'R'].flatMap((secondSourceId) =>
    pathogens.map((pathogen) => {
      const typical_per_L = secondSourceId === null ? raw.roofs : raw.source;
      return { secondSourceId, pathogen, typical_per_L, low_per_L: null, high_per_L: typical_per_L * 4, source: 'x' };
    }),
  );
  const site = {
    ...{ ...tanks, secondSource },
    safety: {
      ...{ ...noSafety, rawWater: rows, skipping_fraction: skipping, daysOff_per_year: off_days },
      barriers: [{ barrierId: 'B', kind: 'other', reductions, used_fraction: null }],
    },
  } as SiteFacts;
  const facts: ProgrammeFacts = { ...made, settings: { ...made.settings, gapFilling: 'otherYears' }, sites: [site] };
  return { site, ready: readyProgramme(facts) };
}

/** Infected at least once in a year by Cryptosporidium, the slow way. */
function slowInfected({ site, ready }: ReturnType<typeof programme>, bodies: ReadonlyMap<string, number>): number {
  const { years } = rainOfSite(site, ready)!.rain!;
  const series = seriesOf(site, ready);
  const all_people = [...bodies.values()].reduce((sum, people) => sum + people, 0);
  const { response } = referencePathogens.cryptosporidium;
  if (response.form !== 'exponential') throw new Error('another response');
  const spared = (per_L: number, litres: number) => Math.exp(-response.perOrganism_fraction * per_L * litres);
  const litres = defaultSettings.litresDrunk_L_per_person_per_day;
  let infected = 0;
  let judged_years = 0;
  for (const { from, to, judged } of years) {
    if (!judged) continue;
    judged_years++;
    for (const { tankIds, secondSource_L } of series) {
      const waters = [...secondSource_L.subarray(from, to)].map((litresOfSource) =>
        litresOfSource > 0 ? raw.source : raw.roofs,
      );
      // A year has 365 days: one more is one of roof water, where there is any.
      if (waters.length === 366) waters.splice(Math.max(0, waters.indexOf(raw.roofs)), 1);
      for (const [isTreated, share] of [
        [true, 1 - skipping],
        [false, skipping],
      ] as const) {
        let through = 1;
        for (const per_L of waters) {
          const onDay = spared(isTreated ? per_L * 10 ** -steps : per_L, litres);
          through *= onDay ** (1 - off_days / 365) * spared(per_L, litres) ** (off_days / 365);
        }
        infected += (share * (1 - through) * bodies.get(tankIds[0]!)!) / all_people;
      }
    }
  }
  return infected / judged_years;
}

it('a year of two waters is that of its days one after another, for each body of water and each group of people', () => {
  let [drunk, bodies] = [0, 0];
  for (let seed = 1; seed <= 24; seed++) {
    const made = programme(seed);
    const [design] = designSites([made.site], made.ready);
    const { safety, storages } = design!;
    if (storages.length === 0 || safety!.sourceDays!.days_per_year === null) continue;
    const people = new Map(storages.map((one) => [one.tankIds[0]!, one.people]));
    const crypto = safety!.risks.find(({ pathogen }) => pathogen === 'cryptosporidium')!;
    const slow = slowInfected(made, people);
    expect(crypto.infection_per_year / slow, `programme ${seed}`).toBeCloseTo(1, 9);
    if (safety!.sourceDays!.days_per_year > 0) drunk++;
    if (storages.length > 1) bodies++;
  }
  expect(drunk).toBeGreaterThan(8);
  expect(bodies).toBeGreaterThan(4);
}, 60_000);
