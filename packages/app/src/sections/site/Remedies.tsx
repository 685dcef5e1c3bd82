import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { costWords } from '../sites/index.ts';
import type { SiteReport } from './siteFigures.ts';

type Found = NonNullable<SiteReport['remedies']>;
type Remedy = Found['ranked'][number];

/** What can be done with a remedy: shown on the drawing while it is pointed at, and taken into the draft. */
export interface RemedyActs {
  onPoint?(changes: Remedy['changes'] | null): void;
  onTake?(changes: Remedy['changes']): void;
  /** Opens how a figure of it was reached: it is taken into the draft, and its working stands under the stations. */
  onOpen?(changes: Remedy['changes'], code: string): void;
}

/** What would mend a site: every change that does, and what it comes to if it is left. */
export function Remedies({
  found,
  judgedYears,
  ...acts
}: { readonly found: Found; readonly judgedYears: number | null } & RemedyActs) {
  const { say, numbers } = useLanguage();
  const { ranked, leaveIt } = found;
  return (
    <section className="remedies">
      <h2>{say('site.remedies')}</h2>
      {ranked.length === 0 ? (
        <p>{say('site.remedies_none')}</p>
      ) : (
        <>
          <p className="small">
            {acts.onTake === undefined ? null : `${say('water.remedies_press')} `}
            {say('site.remedies_order')}
          </p>
          <table>
            <thead>
              <tr>
                {(['remedy', 'remedy_then', 'remedy_dry', 'remedy_years', 'remedy_cost'] as const).map((head) => (
                  <th key={head} scope="col">
                    {say(`site.${head}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {ranked.map((remedy) => (
                <RemedyRow
                  key={`${remedy.about} ${remedy.tankVolume_L}`}
                  remedy={remedy}
                  judgedYears={judgedYears}
                  {...acts}
                />
              ))}
            </tbody>
          </table>
        </>
      )}
      {leaveIt === null || leaveIt.dryDays === 0 ? null : (
        <p>
          {say('site.leave', {
            year:
              leaveIt.ofMadeYears === null
                ? String(leaveIt.waterYear)
                : say('site.made_year', { year: String(leaveIt.waterYear) }),
            days: numbers.quantity(leaveIt.dryDays, 'day'),
            run: numbers.days(leaveIt.longestRun_days),
          })}
        </p>
      )}
      {found.said.map((said) => (
        <p key={said}>{said}</p>
      ))}
      <Cautions ranked={ranked} />
    </section>
  );
}

function RemedyRow({
  remedy,
  judgedYears,
  onPoint,
  onTake,
  onOpen,
}: { readonly remedy: Remedy; readonly judgedYears: number | null } & RemedyActs) {
  const { say, numbers } = useLanguage();
  const { changes, about, verdict, promiseCut_count, dryDays_per_year, goodYears, cost } = remedy;
  const { amount, currency } = cost;
  return (
    <tr onPointerEnter={() => onPoint?.(changes)} onPointerLeave={() => onPoint?.(null)}>
      <th scope="row">
        {onTake === undefined ? (
          about
        ) : (
          <button
            type="button"
            className="take"
            aria-label={say('water.take_remedy', { about })}
            onFocus={() => onPoint?.(changes)}
            onBlur={() => onPoint?.(null)}
            onClick={() => onTake(changes)}
          >
            {about}
          </button>
        )}
        {promiseCut_count > 0 ? <span className="small">{say('sites.mend_cuts')}</span> : null}
      </th>
      <td>
        <VerdictMark verdict={verdict} size={verdict === 'holds' ? 14 : 20} /> {say(`sites.verdict_${verdict}`)}
      </td>
      <td className="number">
        <span className="on-phone">{say('site.remedy_dry')}: </span>
        <Opens onOpen={onOpen && (() => onOpen(changes, 'storage.dryDays'))}>
          {numbers.fixed(dryDays_per_year, 1)}
        </Opens>
      </td>
      <td className="number">
        <span className="on-phone">{say('site.remedy_years')}: </span>
        <Opens onOpen={onOpen && (() => onOpen(changes, 'storage.goodYears'))}>
          {judgedYears === null ? numbers.quantity(goodYears, 'count') : numbers.ofYears(goodYears, judgedYears)}
        </Opens>
      </td>
      <td className="number">
        <Cost cost={cost} words={costWords(amount, currency, { say, numbers }) ?? say('site.cost_not_known')} />
      </td>
    </tr>
  );
}

/** What a remedy costs; opened, what is bought, at which price of which day. */
function Cost({ cost, words }: { readonly cost: Remedy['cost']; readonly words: string }) {
  const { say, numbers } = useLanguage();
  if (cost.bought.length === 0) return words;
  return (
    <details className="cost">
      <summary className="opens">{words}</summary>
      <ul>
        {cost.bought.map(({ partId, pieces_count, amount, currency, priceDate }) => (
          <li key={partId}>
            {say('water.bought', {
              pieces: pieces_count,
              part: partId,
              price: numbers.money(amount, currency),
              day: numbers.date(priceDate),
            })}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** A figure that opens to its working, where it can. */
function Opens({ onOpen, children }: { readonly onOpen?: (() => void) | undefined; readonly children: string }) {
  const { say } = useLanguage();
  if (onOpen === undefined) return children;
  return (
    <button
      type="button"
      className="opens"
      aria-label={say('site.open_working', { figure: children })}
      onClick={onOpen}
    >
      {children}
    </button>
  );
}

/** The caution where the hand is: water, height, weight. */
function Cautions({ ranked }: { readonly ranked: readonly Remedy[] }) {
  const { say } = useLanguage();
  const kinds = new Set<string>(ranked.flatMap(({ changes }) => changes.map(({ kind }) => kind)));
  const isHeight = ['gutter', 'firstFlush', 'largerGutter', 'outlet', 'downpipe'].some((kind) => kinds.has(kind));
  const isWeight = kinds.has('secondTank') || kinds.has('largerTank');
  return (
    <div className="heed">
      <p>{say('site.caution_water')}</p>
      {isHeight ? <p>{say('site.caution_height')}</p> : null}
      {isWeight ? <p>{say('site.caution_weight')}</p> : null}
    </div>
  );
}
