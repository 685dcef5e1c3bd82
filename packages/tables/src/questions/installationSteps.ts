import type { SiteFacts } from '@eavewell/engine';
import type { SiteReport } from '../report/index.ts';

/** What is done at a site, in this order. */
export const installationSteps = [
  'signed',
  'stand',
  'tank',
  'gutters',
  'downpipes',
  'flush',
  'screens',
  'pipes',
  'unit',
  'rinse',
  'fill',
  'tests',
  'drink',
] as const;
export type InstallationStep = (typeof installationSteps)[number];

/** Cautions as the sheet has them: those of the site, and the ladder's with work at height. */
export type StepCaution = SiteReport['cautions'][number]['caution'] | 'ladder' | 'drinking';

/** At which step a caution is said: before the hand is there. */
const saidAt: Readonly<Record<InstallationStep, readonly StepCaution[]>> = {
  signed: ['stand'],
  stand: [],
  tank: ['lifting'],
  gutters: ['height', 'ladder', 'fragileRoof'],
  downpipes: [],
  flush: [],
  screens: [],
  pipes: [],
  unit: [],
  rinse: [],
  fill: [],
  tests: [],
  drink: ['drinking'],
};

/**
 * What is done at this site, in order, each step with the cautions that apply there.
 *
 * @param site - its facts: what it has not is not done
 * @param report - what it came to: its cautions, and whether a stand has to be signed for
 * @returns the steps; a caution of the site whose step is left out stands with the first
 */
export function stepsOf(
  site: Pick<SiteFacts, 'roofs' | 'pipes' | 'treatment'>,
  { cautions, standGate }: Pick<SiteReport, 'cautions' | 'standGate'>,
): readonly { readonly step: InstallationStep; readonly cautions: readonly StepCaution[] }[] {
  const isDone: Readonly<Partial<Record<InstallationStep, boolean>>> = {
    signed: standGate.gate !== 'notNeeded',
    stand: standGate.gate !== 'notNeeded',
    unit: site.treatment.units.some(({ removedOn }) => removedOn === null),
    flush: site.roofs.some(({ diverter }) => diverter !== null),
  };
  const steps = installationSteps.filter((step) => isDone[step] ?? true);
  const named = new Set<StepCaution>(cautions.map(({ caution }) => caution));
  if (named.has('height') || named.has('fragileRoof')) named.add('ladder');
  named.add('drinking');
  const said = new Set(steps.flatMap((step) => saidAt[step]));
  const homeless = [...named].filter((caution) => !said.has(caution));
  return steps.map((step, i) => ({
    step,
    cautions: [...(i === 0 ? homeless : []), ...saidAt[step].filter((caution) => named.has(caution))],
  }));
}
