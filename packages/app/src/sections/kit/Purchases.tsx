import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { ProgrammeKitAnswer } from './kitQuery.ts';
import { allWords, countWords } from './kitWords.ts';

type Line = ProgrammeKitAnswer['lines'][number];
type Order = ProgrammeKitAnswer['suppliers'][number];

/** What is short and has to be bought, supplier by supplier, the first to order first; and what there is enough of. */
export function Purchases({ kit }: { readonly kit: ProgrammeKitAnswer }) {
  const language = useLanguage();
  const { say } = language;
  const bySoonest = [...kit.suppliers].sort((a, b) => (a.orderBy ?? '9').localeCompare(b.orderBy ?? '9'));
  const enough = kit.lines.filter(({ short_count }) => short_count === 0);
  const uncounted = kit.lines.filter(({ total_count }) => total_count === null);
  return (
    <section className="purchases" aria-labelledby="kit-short">
      <h2 id="kit-short">{say('kit.short')}</h2>
      {kit.lines.length === 0 ? <p>{say('kit.nothing_needed')}</p> : null}
      {kit.lines.length > 0 && bySoonest.length === 0 ? <p>{say('kit.nothing_short')}</p> : null}
      {bySoonest.length < 2 ? null : <p className="sentence">{allWords(bySoonest, language)}</p>}
      {bySoonest.map((order) => (
        <Supplier key={order.supplier ?? ''} order={order} kit={kit} />
      ))}
      {uncounted.length === 0 ? null : (
        <p>{say('kit.uncounted', { parts: uncounted.map(({ name }) => name).join(', ') })}</p>
      )}
      {enough.length === 0 ? null : (
        <details>
          <summary>{say('kit.enough', { count: enough.length })}</summary>
          <Lines lines={enough} isShort={false} name={say('kit.enough', { count: enough.length })} />
        </details>
      )}
    </section>
  );
}

function Supplier({ order, kit }: { readonly order: Order; readonly kit: ProgrammeKitAnswer }) {
  const { say, numbers } = useLanguage();
  const lines = kit.lines.filter(({ partId }) => order.partIds.includes(partId));
  const name = order.supplier ?? say('kit.no_supplier');
  const sum = order.sums.map(({ amount, currency }) => numbers.money(amount, currency)).join(' + ');
  const isLate = order.orderBy !== null && order.orderBy < kit.today;
  return (
    <>
      <h3>
        {name}
        {sum === '' ? null : <>: {order.unpriced.length > 0 ? say('kit.at_least', { amount: sum }) : sum}</>}
      </h3>
      {order.orderBy === null ? null : (
        <p className={isLate ? 'w-short' : undefined}>
          {say(isLate ? 'kit.order_late' : 'kit.order_until', { day: numbers.date(order.orderBy) })}
        </p>
      )}
      <Lines lines={lines} isShort name={name} />
    </>
  );
}

// long: a table of one row each
function Lines({
  lines,
  isShort,
  name,
}: {
  readonly lines: readonly Line[];
  readonly isShort: boolean;
  readonly name: string;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const heads = {
    needed: say('kit.head_needed'),
    stock: say('kit.head_stock'),
    short: say('kit.head_short'),
    packs: say('kit.head_packs'),
    order: say('kit.head_order'),
    amount: say('kit.head_amount'),
  };
  const hasDays = lines.some(({ orderBy }) => orderBy !== null);
  return (
    <table className="stacks">
      <caption className="said-only">{name}</caption>
      <thead>
        <tr>
          <th scope="col">{say('kit.head_part')}</th>
          <th scope="col" className="num">
            {heads.needed}
          </th>
          <th scope="col" className="num">
            {heads.stock}
          </th>
          {isShort ? (
            <>
              <th scope="col" className="num">
                {heads.short}
              </th>
              <th scope="col" className="num">
                {heads.packs}
              </th>
              {hasDays ? <th scope="col">{heads.order}</th> : null}
              <th scope="col" className="num">
                {heads.amount}
              </th>
            </>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.partId}>
            <th scope="row">{line.name}</th>
            <td className="num" data-head={heads.needed}>
              {countWords(line.total_count, line, language)}
            </td>
            <td className="num" data-head={heads.stock}>
              {line.inStock_count === null
                ? say('kit.not_counted')
                : countWords(line.inStock_count, { countedIn: line.countedIn }, language)}
            </td>
            {isShort ? (
              <>
                <td className="num" data-head={heads.short}>
                  <b>{countWords(line.short_count, line, language)}</b>
                </td>
                <td className="num" data-head={heads.packs}>
                  {line.packs_count === null
                    ? say('kit.not_known')
                    : line.packSize_count === 1
                      ? numbers.fixed(line.packs_count, 0)
                      : say('kit.packs_of', { count: line.packs_count, each: line.packSize_count })}
                </td>
                {hasDays ? (
                  <td data-head={heads.order} className={line.isLate ? 'w-short' : undefined}>
                    {line.orderBy === null ? say('kit.not_known') : numbers.date(line.orderBy)}
                  </td>
                ) : null}
                <td className="num" data-head={heads.amount}>
                  {line.price === null
                    ? say('kit.no_price')
                    : line.amount === null
                      ? say('kit.not_known')
                      : numbers.money(line.amount, line.price.currency)}
                </td>
              </>
            ) : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
