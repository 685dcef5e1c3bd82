import { kg } from '@eavewell/report';
import type { RolloutReport, RolloutTripReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { reportedProblems } from './reportedWorking.ts';
import { replannedLines } from './rolloutReplanned.ts';
import type { Sheet } from './sheet.ts';

const { rollout: words } = spoken.commandLine;
const { numbers } = spoken;

/** Names that are listed before the rest is counted. */
const shownNames = 12;

/** Who goes where: when it ends and how sure that is, what is left out and broken, each crew's trips, goods, money. */
export function rolloutPage(sheet: Sheet, report: RolloutReport): void {
  sheet.line(report.programme);
  summary(sheet, report);
  replannedLines(sheet, report);
  exceptions(sheet, report);
  for (const crew of report.crews) {
    sheet.heading(words.crew(crew.name, crew.trips.length));
    for (const trip of crew.trips) tripLines(sheet, trip);
  }
  hauls(sheet, report);
  goods(sheet, report);
  months(sheet, report);
  areas(sheet, report);
  compared(sheet, report);
  reportedProblems(sheet, report.problems);
}

function summary(
  sheet: Sheet,
  { sites_count, people_count, from, finish, drinking, waiting, cost, isCostAtLeast, fuel_L, currency }: RolloutReport,
): void {
  if (sites_count === 0) {
    sheet.line(words.nothing);
    return;
  }
  sheet.line(words.planned(sites_count, numbers.people(people_count), numbers.date(from), numbers.date(finish.likely)));
  if (finish.futures !== null)
    sheet.line(
      words.futures(
        finish.runs_count,
        dateWithin(finish.futures.p50),
        dateWithin(finish.futures.p90),
        (finish.p90Between ?? []).map(dateWithin),
      ),
    );
  if (isEarly(finish)) sheet.line(words.early);
  if (drinking.said !== '') sheet.line(drinking.said);
  for (const proviso of drinking.provisos) sheet.line(proviso, 2, 2);
  const { longest } = waiting;
  sheet.line(
    words.waiting(
      numbers.days(waiting.mean_days),
      longest?.name ?? '',
      longest === null ? '' : numbers.days(longest.days),
    ),
  );
  if (waiting.bound !== null) sheet.line(waiting.bound.said);
  sheet.line(
    words.cost(
      currency === null ? numbers.fixed(cost, 0) : numbers.money(cost, currency),
      numbers.quantity(fuel_L, 'L'),
      isCostAtLeast,
    ),
  );
}

/** A day of the futures; those that are beyond the days looked at have none. */
const dateWithin = (day: string | null): string => (day === null ? words.notWithin : numbers.date(day));

/** Is the date of a plan on which nothing goes wrong earlier than nine in ten of the futures? */
const isEarly = ({ likely, futures }: RolloutReport['finish']): boolean =>
  futures !== null && (futures.p10 === null || likely < futures.p10);

function exceptions(sheet: Sheet, { leftOut, broken }: RolloutReport): void {
  const isDone = ({ reason }: RolloutReport['leftOut'][number]) => reason === 'handedOver';
  const open = leftOut.filter((one) => !isDone(one));
  const done_count = leftOut.length - open.length;
  if (done_count > 0) sheet.line(words.handedOver(done_count));
  if (open.length + broken.length === 0) return;
  sheet.heading(words.exceptions);
  const reasons = [...new Set(open.map(({ said }) => said))];
  for (const said of reasons) {
    const names = open.filter((one) => one.said === said).map(({ name }) => name);
    const rest = names.length - shownNames;
    sheet.line(words.leftOut(names.length, names.slice(0, shownNames).join(', '), Math.max(0, rest), said), 2, 2);
  }
  for (const { said } of broken.filter(({ kind }) => kind !== 'leftOut')) sheet.line(said, 2, 2);
}

function tripLines(sheet: Sheet, { tripId, said, stops, isLocked }: RolloutTripReport): void {
  sheet.line(`${tripId}${isLocked ? ` (${words.locked})` : ''}: ${said}`, 2, 2);
  for (const { name, people, handOver, served, futures, isUntreated } of stops)
    sheet.line(
      served === null
        ? words.stopUnknown(name, numbers.people(people), numbers.date(handOver))
        : words.stop({
            ...{ name, people: numbers.people(people), isTreated: !isUntreated },
            ...{ handOver: numbers.date(handOver), served: numbers.date(served) },
            between: futures && [dateWithin(futures.p10), dateWithin(futures.p90)],
          }),
      4,
      2,
    );
}

const nameIn =
  ({ places }: RolloutReport) =>
  (id: string) =>
    places.find((place) => place.id === id)?.name ?? id;

function hauls(sheet: Sheet, report: RolloutReport): void {
  if (report.hauls.length === 0) return;
  sheet.heading(words.hauls);
  haulLines(sheet, report.hauls, nameIn(report));
}

/** What is brought to a store: when, how much with its fuel, by what, for which trip. */
export function haulLines(sheet: Sheet, hauls: RolloutReport['hauls'], name: (id: string) => string): void {
  for (const { from, store, leaves, arrives, trips_count: trips, forTrip, by, loaded_kg } of hauls)
    sheet.line(
      words.haul({
        ...{ leaves: numbers.date(leaves), arrives: numbers.date(arrives), mass: kg(loaded_kg, spoken) },
        ...{ from: name(from), store: name(store), by, trips, forTrip },
      }),
      2,
      2,
    );
}

/** Of each of the goods the day on which least is left. */
function goods(sheet: Sheet, report: RolloutReport): void {
  const { stock } = report;
  if (stock.length === 0) return;
  sheet.heading(words.goods);
  const rows = stock.map(({ name, store, points }) => {
    const least = points.reduce((a, b) => (b.left_count < a.left_count ? b : a));
    const sum = (of: (point: (typeof points)[number]) => number) => points.reduce((all, point) => all + of(point), 0);
    return [
      name,
      nameIn(report)(store),
      String(sum((one) => one.in_count)),
      String(sum((one) => one.out_count)),
      String(least.left_count),
      numbers.date(least.day),
    ];
  });
  sheet.table(
    words.goodsColumns.map((head, at) => ({ head, align: at >= 2 && at <= 4 ? 'right' : 'left' })),
    rows,
  );
}

function months(sheet: Sheet, { moneyByMonth, currency }: RolloutReport): void {
  if (moneyByMonth.length === 0) return;
  sheet.heading(words.money);
  sheet.table(
    [words.monthColumn, words.amountColumn].map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' })),
    moneyByMonth.map(({ month, amount }) => [
      month,
      currency === null ? numbers.fixed(amount, 0) : numbers.money(amount, currency),
    ]),
  );
}

function areas(sheet: Sheet, { waiting }: RolloutReport): void {
  if (waiting.byArea.length < 2) return;
  sheet.heading(words.areas);
  sheet.table(
    words.areaColumns.map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' })),
    waiting.byArea.map(({ area, people, mean_days }) => [
      area ?? words.noArea,
      numbers.people(people),
      numbers.days(mean_days),
    ]),
  );
}

function compared(sheet: Sheet, { compared: rows, currency }: RolloutReport): void {
  if (rows === null) return;
  sheet.heading(words.compared);
  sheet.table(
    words.comparedColumns.map((head, at) => ({ head, align: at === 0 ? 'left' : 'right' })),
    rows.map(({ said, isBeaten, crews_count, leftOut_count, finish, weighted, cost }) => [
      isBeaten ? words.beaten(said) : said,
      ...[String(crews_count), String(leftOut_count), numbers.date(finish), numbers.fixed(weighted, 0)],
      currency === null ? numbers.fixed(cost, 0) : numbers.money(cost, currency),
    ]),
  );
  sheet.line(words.comparedAbout, 2);
}
