import type { AppLanguage } from '@eavewell/words/app';
import type { Figure, SiteReport } from './siteFigures.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;
type Treatment = SiteReport['treatment'][number];
type Wear = NonNullable<SiteReport['wear']>[number];

/** The longest wait of the two hours that most people come in; null where a line has no end that day, or none was reckoned. */
function longestWait(
  { peaks }: Treatment,
  of: 'lastWait_min' | 'lastWaitWorn_min',
): { readonly wait_min: number | null } | null {
  if (peaks.length === 0) return null;
  const waits = peaks.map((peak) => peak[of]);
  return { wait_min: waits.includes(null) ? null : Math.max(...waits.map((wait) => wait ?? 0)) };
}

/** A unit, with how many others pass, run and wait as it does. */
export type UnitsAlike = Treatment & { readonly others_count: number };

/** Units of which the very same is to be told go together: the first of them, and how many more there are. */
export function alike(treatment: readonly Treatment[], words: Words): readonly UnitsAlike[] {
  const groups = new Map<string, Treatment[]>();
  for (const one of treatment) {
    const told = JSON.stringify(
      unitFigures({ ...one, serial: null }, words).map(({ value, likely }) => [value, likely]),
    );
    groups.set(told, [...(groups.get(told) ?? []), one]);
  }
  return [...groups.values()].map(([first, ...others]) => ({ ...first!, others_count: others.length }));
}

/** The figures by which a treatment unit is judged: flow, hours and wait, as its set is now and when it is worn. */
export function unitFigures(found: Treatment & Partial<UnitsAlike>, words: Words): readonly Figure[] {
  const { say, numbers } = words;
  const { serial, flowNow_L_per_h, flowWorn_L_per_h, hoursNeeded_h, hoursNeededWorn_h } = found;
  const of = serial === null ? {} : { of: serial };
  const unit = unitWords(serial ?? '', found.others_count ?? 0, words);
  const worn = (amount: string) => say('site.when_worn', { amount });
  const figures: Figure[] = [];
  if (flowNow_L_per_h !== null)
    figures.push({
      ...{ code: 'treatment.flowNow', ...of },
      value: say('site.unit_flow', { unit, flow: numbers.quantity(flowNow_L_per_h, 'L/h') }),
      likely: flowWorn_L_per_h === null ? '' : worn(numbers.quantity(flowWorn_L_per_h, 'L/h')),
      target: '',
    });
  if (hoursNeeded_h !== null)
    figures.push({
      ...{ code: 'treatment.hoursNeeded', ...of },
      value: say('site.unit_hours', { unit, hours: numbers.quantity(hoursNeeded_h, 'h') }),
      likely: hoursNeededWorn_h === null ? '' : worn(numbers.quantity(hoursNeededWorn_h, 'h')),
      target: '',
    });
  const [now, later] = [longestWait(found, 'lastWait_min'), longestWait(found, 'lastWaitWorn_min')];
  const minutes = ({ wait_min }: { readonly wait_min: number | null }) =>
    wait_min === null ? say('site.wait_no_end') : numbers.quantity(wait_min, 'min');
  if (now !== null)
    figures.push({
      ...{ code: 'treatment.lastWait', ...of },
      value: say('site.unit_wait', { unit, wait: minutes(now) }),
      likely: later === null ? '' : worn(minutes(later)),
      target: '',
    });
  return figures;
}

const unitWords = (unit: string, count: number, { say }: Words) =>
  count === 0 ? unit : say('site.units_alike', { unit, count });

/** When a set of cartridges is due, with its range; null where no date is given. */
export function dueFigure({ serial, endsOn }: Wear, { say, numbers }: Words): Figure | null {
  if (endsOn === null) return null;
  return {
    ...{ code: 'wear.endsOn', of: serial },
    value: say('site.set_due', { unit: serial, day: numbers.date(endsOn.p50) }),
    likely:
      endsOn.p10 === endsOn.p90
        ? ''
        : say('site.likely_between', { from: numbers.date(endsOn.p10), to: numbers.date(endsOn.p90) }),
    target: '',
  };
}

/** The germ that does most harm, held against the target. */
export function cupFigures(safety: NonNullable<SiteReport['safety']>, { say, numbers }: Words): readonly Figure[] {
  const [worst] = safety.risks;
  if (worst === undefined) return [];
  const daly = (value: number) => numbers.quantity(Number(value.toPrecision(2)), 'DALY/person/year');
  return [
    {
      ...{ code: 'safety.daly', of: worst.pathogen },
      value: say('site.cup_risk', { pathogen: worst.pathogen, risk: daly(worst.DALY_per_person_per_year) }),
      likely: say('site.up_to', { amount: daly(worst.DALYHigh_per_person_per_year) }),
      target: say('site.at_most', { amount: daly(safety.target_DALY_per_person_per_year) }),
    },
  ];
}
