import type { KitReport, WholeLifeCostReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';
import { columnsOf } from './text.ts';

const { kit: words } = spoken.commandLine;
const { numbers } = spoken;

/** Columns of the bar of a swing, and how many swings are shown. */
const barColumns = 15;
const shownSwings = 10;

/** A cost over a whole life: in sentences, by heads, and what moves it most. */
export function costSection(sheet: Sheet, cost: WholeLifeCostReport): void {
  sheet.line(cost.finding, 2);
  const reasons = [...new Set(cost.heads.flatMap(({ reasons: all }) => all.map(({ said }) => said)))];
  if (cost.isAtLeast && cost.perYear_amount === 0) {
    sheet.line(words.why(reasons.join('; ')), 2);
    return;
  }
  sheet.blank();
  const money = (amount: number) => numbers.money(amount, cost.currency);
  sheet.table(
    words.headColumns.map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' }) as const),
    cost.heads.map(({ name, perYear_amount, known_amount, least_amount, most_amount }) => [
      name,
      perYear_amount === null ? words.atLeast(money(known_amount)) : money(known_amount),
      numbers.range({ low: least_amount, high: most_amount }),
    ]),
  );
  if (reasons.length > 0) sheet.line(words.why(reasons.join('; ')), 2);
  swingSection(sheet, cost);
}

/** Each input alone, the widest first: of a person where the people are known, else of all. */
function swingSection(sheet: Sheet, cost: WholeLifeCostReport): void {
  const each = ({ perYear_amount, served_people }: Pick<WholeLifeCostReport, 'perYear_amount' | 'served_people'>) =>
    cost.served_people === null || served_people === null ? perYear_amount : perYear_amount / served_people;
  const moved = cost.swings.filter(({ low, high }) => each(low) !== each(high));
  sheet.heading(words.swings);
  if (moved.length === 0) {
    sheet.line(words.noSwings, 2);
    return;
  }
  const shown = moved.slice(0, shownSwings);
  const ends = shown.flatMap(({ low, high }) => [each(low), each(high)]);
  const [least, most] = [Math.min(...ends, each(cost)), Math.max(...ends, each(cost))];
  const at = (amount: number) =>
    most > least ? Math.round(((amount - least) / (most - least)) * (barColumns - 1)) : 0;
  const full = sheet.look.drawn ? '█' : '#';
  const empty = sheet.look.drawn ? '·' : '.';
  const bar = (a: number, b: number) =>
    Array.from({ length: barColumns }, (_, column) => {
      if (column === at(each(cost))) return '|';
      return column >= Math.min(at(a), at(b)) && column <= Math.max(at(a), at(b)) ? full : empty;
    }).join('');
  const unit = cost.served_people === null ? 'year' : 'person_per_year';
  const widest = Math.max(...ends.map((amount) => columnsOf(numbers.fixed(amount, 2))));
  sheet.line(`${words.swingKey}; ${numbers.quantity(each(cost), `${cost.currency}_per_${unit}`)}`, 2);
  sheet.table(
    words.swingColumns.map((head, nth) => ({ head, align: nth === 1 ? 'right' : 'left' }) as const),
    shown.map(({ name, low, high }) => [
      name,
      numbers.fixed(each(low), widest > 9 ? 0 : 2),
      bar(each(low), each(high)),
      numbers.fixed(each(high), widest > 9 ? 0 : 2),
    ]),
  );
}

/** What people spend today, and what a piped scheme would cost. */
export function besideSection(sheet: Sheet, { cost }: KitReport): void {
  const currency = (cost.all ?? cost.ofServed)?.currency ?? null;
  if (currency === null) return;
  sheet.heading(words.beside);
  for (const what of ['boughtWater', 'boiling', 'pipedScheme'] as const) {
    const { perPersonYear_amount, missing } = cost[what];
    const text =
      perPersonYear_amount === null ? words.missing(missing.join(', ')) : numbers.money(perPersonYear_amount, currency);
    sheet.line(words.besideOf(words.besides[what], text), 2, 2);
  }
}
