import type { Part } from './cast.ts';
import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import { lastLooked, laterDay } from './treatment.ts';

/** The samples of a site, and the walks over it. */
export interface Samples {
  readonly waterTests: readonly Row[];
  readonly testPortions: readonly Row[];
  readonly inspections: readonly Row[];
}

/** How a sample was read: one bottle, ten tubes, three volumes of three tubes, or a plate. */
type Way = 'bottle' | 'tubes' | 'threeVolumes' | 'plate';
const ways: readonly Way[] = ['bottle', 'tubes', 'threeVolumes', 'plate', 'plate'];

const counting: readonly Way[] = ['tubes', 'threeVolumes', 'plate'];

/** How often somebody walked a site with a list of questions [fraction]. Ours. */
const walked_fraction = 0.65;
const questions = 10;

const portions: Readonly<Record<Way, (hasGerms: boolean) => readonly Row[]>> = {
  bottle: (hasGerms) => [{ kind: 'tubes', volume_mL: 100, portions: 1, positive: hasGerms ? 1 : 0 }],
  tubes: (hasGerms) => [{ kind: 'tubes', volume_mL: 10, portions: 10, positive: hasGerms ? 4 : 0 }],
  threeVolumes: (hasGerms) => [
    { kind: 'tubes', volume_mL: 50, portions: 3, positive: hasGerms ? 3 : 0 },
    { kind: 'tubes', volume_mL: 5, portions: 3, positive: hasGerms ? 1 : 0 },
    { kind: 'tubes', volume_mL: 0.5, portions: 3, positive: 0 },
  ],
  plate: (hasGerms) => [{ kind: 'plates', volume_mL: 100, portions: 1, colonies: hasGerms ? 23 : 0 }],
};

/** What comes seldom: the large volumes clean and the small ones not. */
const unlikely: readonly Row[] = [
  { kind: 'tubes', volume_mL: 10, portions: 5, positive: 0 },
  { kind: 'tubes', volume_mL: 1, portions: 5, positive: 3 },
  { kind: 'tubes', volume_mL: 0.1, portions: 5, positive: 4 },
];

const everyTube: readonly Row[] = [{ kind: 'tubes', volume_mL: 10, portions: 10, positive: 10 }];

interface Sample {
  readonly takenOn: string;
  readonly point: string;
  readonly portions: readonly Row[];
}

/** Samples of a site that was taken over on a day: most clean. */
export function samplesOf(seed: number, siteId: string, part: Part, takenOverOn: string, clean: boolean): Samples {
  const chance = chanceFor(seed, `samples of ${siteId}`);
  const taken = part === 'noSample' || part === 'untreated' ? [] : drawn(chance, part, takenOverOn);
  const isWalked = clean || chance.share() < walked_fraction;
  const risks = clean ? 1 : chance.pick([0, 1, 1, 2, 2, 3, 4, 7]);
  const walk = { siteId, inspectedOn: laterDay(takenOverOn, chance.whole(10, 120)), risks, questions };
  return {
    waterTests: taken.map(({ takenOn, point }, i) => ({
      ...{ siteId, testId: `W${i + 1}`, takenOn, point },
      ...{ turbidity_NTU: tenths(chance.between(0.1, 0.8)), pH: tenths(chance.between(6.7, 7.8)) },
      ...{ waterTemperature_C: chance.whole(23, 28), laboratory: chance.pick(['field kit', 'island laboratory']) },
    })),
    testPortions: taken.flatMap((sample, i) => sample.portions.map((row) => ({ siteId, testId: `W${i + 1}`, ...row }))),
    inspections: isWalked ? [{ ...walk, by: chance.pick(['health worker', 'programme']) }] : [],
  };
}

function drawn(chance: Chance, part: Part, takenOverOn: string): readonly Sample[] {
  // One bottle that turned tells that there are germs, and not how many: the parts that show a count have another way.
  const way = part === 'ecoliAtTap' ? chance.pick(counting) : chance.pick(ways);
  const first = laterDay(takenOverOn, chance.whole(7, 60));
  const before = laterDay(takenOverOn, -chance.whole(10, 40));
  const one = (takenOn: string, point: string, hasGerms: boolean) => ({
    ...{ takenOn: takenOn > lastLooked ? lastLooked : takenOn, point },
    portions: portions[way](hasGerms),
  });
  const clean = one(first, 'tap', false);
  if (part === 'ecoliAtTap') return [clean, one(laterDay(first, chance.whole(30, 100)), 'tap', true)];
  if (part === 'allPositive') return [clean, { ...one(laterDay(first, 60), 'tap', true), portions: everyTube }];
  if (part === 'ecoliBefore') return [one(before, 'tap', true), clean];
  if (part === 'rarePattern') return [{ takenOn: before, point: 'tank', portions: unlikely }, clean];
  const more = chance.share();
  if (more < 0.25) return [one(before, 'tank', false), clean];
  return more < 0.6 ? [clean, one(laterDay(first, chance.whole(30, 100)), 'container', false)] : [clean];
}

const tenths = (value: number) => Math.round(value * 10) / 10;
