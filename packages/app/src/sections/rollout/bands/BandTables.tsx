import type { RolloutSheet } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { OpensWorking, WorkingOfPart } from '../working/opening.tsx';
import { dateOf } from './axis.ts';
import { type StockLine, stockLines } from './curves.ts';

/** The curve of the people who drink, as a table: for who reads rather than looks. */
export const DrinkingTable = memo(function DrinkingTable({ sheet }: { readonly sheet: RolloutSheet }) {
  const { say, numbers } = useLanguage();
  const { servedByWeek, served, servedBefore_people: before } = sheet;
  if (servedByWeek.length === 0 && served.length === 0) return null;
  const count = (people: number) => numbers.fixed(before + people, 0);
  const isDrawn = servedByWeek.length > 0;
  return (
    <details className="band-table on-screen">
      <summary>{say('rolloutBands.drinking_table')}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{say(isDrawn ? 'rolloutBands.head_until' : 'rolloutBands.head_day')}</th>
            <th scope="col" className="num">
              {say(isDrawn ? 'rolloutBands.head_likely' : 'rolloutBands.head_people')}
            </th>
            {isDrawn ? (
              <th scope="col" className="num">
                {say('rolloutBands.head_between')}
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {isDrawn
            ? servedByWeek.map(({ until, p10, p50, p90 }) => (
                <tr key={until}>
                  <th scope="row">{numbers.date(until)}</th>
                  <td className="num">{count(p50)}</td>
                  <td className="num">
                    {say('numbers.between', { from: count(Math.min(p10, p90)), to: count(Math.max(p10, p90)) })}
                  </td>
                </tr>
              ))
            : served.map(({ day, people }) => (
                <tr key={day}>
                  <th scope="row">{numbers.date(day)}</th>
                  <td className="num">{count(people)}</td>
                </tr>
              ))}
        </tbody>
      </table>
    </details>
  );
});

/** The curve of the stock that is chosen, as a table: each day on which something comes or goes. */
export const StockTable = memo(function StockTable({
  sheet,
  chosen,
}: {
  readonly sheet: RolloutSheet;
  readonly chosen: string | null;
}) {
  const { say } = useLanguage();
  const lines = stockLines(sheet);
  const line = lines.find(({ key }) => key === chosen) ?? lines[0];
  if (line === undefined) return null;
  return (
    <details className="band-table on-screen">
      <summary>{say('rolloutBands.stock_table')}</summary>
      <StockRows line={line} part="stock" />
    </details>
  );
});

/** Each day on which something of a part comes to a store or goes, and what is left; the figures open in the part of the page that is named. */
export function StockRows({ line, part }: { readonly line: StockLine; readonly part: string }) {
  const { say, numbers } = useLanguage();
  return (
    <>
      <table>
        <caption>{say('rolloutBands.stock_part', { part: line.part, store: line.store })}</caption>
        <thead>
          <tr>
            <th scope="col">{say('rolloutBands.head_day')}</th>
            {(['in', 'out', 'left'] as const).map((head) => (
              <th key={head} scope="col" className="num">
                {say(`rolloutBands.head_${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {line.points.map(({ at, in_count, out_count, value }) => (
            <tr key={at}>
              <th scope="row">{numbers.date(dateOf(at))}</th>
              <td className="num">{numbers.fixed(in_count, 0)}</td>
              <td className="num">{numbers.fixed(out_count, 0)}</td>
              <td className="num">
                <OpensWorking
                  asked={{ figure: 'stock', store: line.storeId, part: line.partId, day: dateOf(at) }}
                  part={part}
                >
                  {numbers.fixed(value, 0)}
                </OpensWorking>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <WorkingOfPart part={part} />
    </>
  );
}
