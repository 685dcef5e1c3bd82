import {
  type CostReason,
  isoDay,
  type PersonYearCost,
  type ProgrammeCost,
  type Spread,
  type WholeLifeCost,
} from '@eavewell/engine';
import type { ProgrammeCostReport, WholeLifeCostReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** What an input of a cost is called: the part, or what is paid for, by its id. */
export type NameOf = (id: string) => string;

const spreadOf = ({ p10, p50, p90 }: Spread) => ({ p10, p50, p90 });
const reasonSaid = (reason: CostReason, { say }: Language) => ({ reason, said: say(`kitReport.reason.${reason}`) });

/** `price gutter-4m`, `life cartridge-set@S001 U1`, `cost visits`, `interest`. */
function inputSaid(inputId: string, nameOf: NameOf, { say }: Language): string {
  if (inputId === 'interest' || inputId === 'workingService') return say(`kitReport.input.${inputId}`);
  const [kind, ...rest] = inputId.split(' ');
  const id = rest.join(' ');
  if (kind === 'cost') return nameOf(id);
  const at = id.indexOf(' @');
  const what = nameOf(at < 0 ? id : id.slice(0, at));
  if (kind === 'price') return say('kitReport.input.price', { what });
  if (kind !== 'life') return inputId;
  return at < 0
    ? say('kitReport.input.life', { what })
    : say('kitReport.input.lifeAt', { what, unit: id.slice(at + 2) });
}

function costSaid(cost: WholeLifeCost, { say, numbers }: Language): string {
  const { currency, isAtLeast, perPersonYear_amount, perPersonYearSpread_amount: each } = cost;
  if (isAtLeast && cost.perYear_amount === 0) return say('kitReport.cost.nothing');
  const aYear = (amount: number) => numbers.quantity(amount, `${currency}_per_year`);
  const aPerson = (amount: number) => numbers.quantity(amount, `${currency}_per_person_per_year`);
  const range = ({ p10, p90 }: Spread) => numbers.range({ low: p10, high: p90 });
  const atLeast = isAtLeast ? 'yes' : 'no';
  const total = numbers.money(cost.total_amount, currency);
  return [
    say('kitReport.cost.perYear', {
      ...{ isAtLeast: atLeast, amount: aYear(cost.perYear_amount), years: cost.years_count },
      ...{ day: numbers.date(cost.day), range: range(cost.perYearSpread_amount) },
    }),
    perPersonYear_amount === null || each === null
      ? say('kitReport.cost.perPersonUnknown')
      : say('kitReport.cost.perPerson', {
          ...{ isAtLeast: atLeast, amount: aPerson(perPersonYear_amount), range: range(each) },
        }),
    ...(cost.perDesignPerson_amount === null
      ? []
      : [say('kitReport.cost.perDesignPerson', { amount: aPerson(cost.perDesignPerson_amount) })]),
    cost.presentValue_amount === null
      ? say('kitReport.cost.total', { total })
      : say('kitReport.cost.worth', { total, worth: numbers.money(cost.presentValue_amount, currency) }),
  ].join(' ');
}

/**
 * A cost over a whole life, field by field, with its sentences.
 *
 * @param cost - what was found [currency/year]
 * @param nameOf - what parts and spendings are called, by id
 * @param language - words
 * @returns the part of the report
 * @definition ours
 */
export function wholeLifeCostReport(cost: WholeLifeCost, nameOf: NameOf, language: Language): WholeLifeCostReport {
  return {
    finding: costSaid(cost, language),
    ...{ currency: cost.currency, day: isoDay(cost.day), years_count: cost.years_count },
    heads: cost.heads.map(({ head, perYear_amount, known_amount, least_amount, most_amount, reasons }) => ({
      ...{ head, name: language.say(`choices.${head}`) },
      ...{ perYear_amount, known_amount, least_amount, most_amount },
      reasons: reasons.map((reason) => reasonSaid(reason, language)),
    })),
    isAtLeast: cost.isAtLeast,
    total_amount: cost.total_amount,
    presentValue_amount: cost.presentValue_amount,
    perYear_amount: cost.perYear_amount,
    perYearSpread_amount: spreadOf(cost.perYearSpread_amount),
    served_people: cost.served_people,
    perPersonYear_amount: cost.perPersonYear_amount,
    perPersonYearSpread_amount: cost.perPersonYearSpread_amount && spreadOf(cost.perPersonYearSpread_amount),
    design_people: cost.design_people,
    perDesignPerson_amount: cost.perDesignPerson_amount,
    swings: cost.swings.map(({ inputId, low, high }) => ({
      ...{ inputId, name: inputSaid(inputId, nameOf, language) },
      low: { perYear_amount: low.perYear_amount, served_people: low.served_people },
      high: { perYear_amount: high.perYear_amount, served_people: high.served_people },
    })),
  };
}

const besideOf = ({ perPersonYear_amount, missing }: PersonYearCost) => ({
  perPersonYear_amount,
  missing: [...missing],
});

/**
 * What a programme costs, and what stands beside it.
 *
 * @param found - what was found
 * @param nameOf - what parts and spendings are called, by id
 * @param language - words
 * @returns the part of the report
 * @definition ours
 */
export function programmeCostReport(found: ProgrammeCost, nameOf: NameOf, language: Language): ProgrammeCostReport {
  return {
    all: found.cost && wholeLifeCostReport(found.cost, nameOf, language),
    ofServed: found.ofServed && wholeLifeCostReport(found.ofServed, nameOf, language),
    ...{ sites_count: found.sites_count, unknown_count: found.unknown_count, ofServed_count: found.ofServed_count },
    boughtWater: besideOf(found.beside.boughtWater),
    boiling: besideOf(found.beside.boiling),
    pipedScheme: besideOf(found.beside.pipedScheme),
  };
}
