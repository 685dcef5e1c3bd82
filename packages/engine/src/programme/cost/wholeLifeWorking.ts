import { explain, type WorkingLine, workingInput } from '../../kernel/index.ts';
import { headParts } from './headCosts.ts';
import { capitalRecovery } from './interest.ts';
import type { WholeLifeCost, WholeLifeGiven } from './wholeLifeCost.ts';

/** Writes down how a whole-life cost was reached. */
export function explainCost(finding: WholeLifeCost, given: WholeLifeGiven, lines: WorkingLine[]): void {
  const { years_count, currency } = finding;
  const perYear = `${currency}_per_year`;
  const parts = headParts(given.items, years_count);
  const years = workingInput('costYears', years_count, 'year');
  for (const { head, perYear_amount } of finding.heads) {
    if (head === 'costOfCapital') continue;
    const own = parts.filter((part) => part.head === head && part.reason === null);
    const spent = own.flatMap(({ what, likely_amount }) => [
      workingInput('costItem', what, ''),
      workingInput('perYear', likely_amount, perYear),
    ]);
    explain(lines, {
      ...{ code: 'cost.head' as const, value: perYear_amount, unit: perYear },
      inputs: [workingInput('costHead', head, ''), years, ...spent],
      source: 'prices',
    });
  }
  explainCapital(finding, given, perYear, lines);
  explain(lines, {
    ...{ code: 'cost.perYear' as const, value: finding.perYear_amount, unit: perYear },
    inputs: finding.heads.map(({ head, known_amount }) => workingInput(head, known_amount, perYear)),
    source: 'newnan-tables, equivalent uniform annual cost',
  });
  explainPeople(finding, given, lines);
}

function explainCapital(finding: WholeLifeCost, given: WholeLifeGiven, perYear: string, lines: WorkingLine[]): void {
  const { years_count } = finding;
  const own = finding.heads.find(({ head }) => head === 'costOfCapital')!;
  const years = workingInput('costYears', years_count, 'year');
  const interest = given.interest === null ? [] : [workingInput('interest', given.interest.likely, 'fraction')];
  const { interestFrom } = given;
  if (given.interest !== null && interestFrom)
    explain(lines, {
      code: 'cost.realInterest',
      value: given.interest.likely,
      unit: 'fraction',
      inputs: [
        workingInput('nominalInterest', interestFrom.interest_fraction_per_year, 'fraction'),
        workingInput('inflation', interestFrom.inflation_fraction_per_year, 'fraction'),
      ],
      source: 'fisher-1930',
    });
  if (given.interest !== null)
    explain(lines, {
      code: 'cost.capitalRecovery',
      value: capitalRecovery(given.interest.likely, years_count),
      unit: 'fraction',
      inputs: [...interest, years],
      source: 'newnan-tables, capital recovery',
    });
  explain(lines, {
    ...{ code: 'cost.costOfCapital' as const, value: own.perYear_amount, unit: perYear },
    inputs: [...interest, years],
    source: 'newnan-tables, capital recovery',
  });
}

function explainPeople(finding: WholeLifeCost, given: WholeLifeGiven, lines: WorkingLine[]): void {
  const { currency, served_people, perYear_amount } = finding;
  const perYear = workingInput('perYear', perYear_amount, `${currency}_per_year`);
  if (served_people !== null) {
    explain(lines, {
      ...{ code: 'cost.peopleYears' as const, value: served_people, unit: 'person' },
      inputs: [
        workingInput('peopleAtStart', given.people!, 'person'),
        workingInput('growth', given.growth_fraction_per_year ?? 0, 'fraction'),
        workingInput('costYears', given.years_count, 'year'),
        workingInput('workingService', given.workingService!.likely, 'fraction'),
      ],
      source: 'settings',
    });
    explain(lines, {
      ...{
        code: 'cost.perPersonYear' as const,
        value: finding.perPersonYear_amount,
        unit: `${currency}_per_person_per_year`,
      },
      inputs: [perYear, workingInput('servedPeople', served_people, 'person')],
      source: 'washcost-heads, cost per person served',
    });
  }
  if (finding.design_people !== null)
    explain(lines, {
      ...{
        code: 'cost.perDesignPerson' as const,
        value: finding.perDesignPerson_amount,
        unit: `${currency}_per_person_per_year`,
      },
      inputs: [perYear, workingInput('designPeople', finding.design_people, 'person')],
      source: 'definition',
    });
}
