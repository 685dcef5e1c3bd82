import type { RolloutComparison } from '@eavewell/tables';
import { useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { differenceRows } from './planWords.ts';
import { byLateness } from './servedLines.ts';

/** What plan b takes beside plan a. */
export function Differences(props: {
  readonly compared: RolloutComparison;
  readonly currency: string | null;
  readonly labelled: string;
}) {
  const language = useLanguage();
  const rows = differenceRows(props.compared, props.currency, language);
  return (
    <table className="differences" aria-labelledby={props.labelled}>
      <tbody>
        {rows.map(({ row, said }) => (
          <tr key={row}>
            <th scope="row">{row}</th>
            <td>{said}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type ComparedSite = RolloutComparison['sites'][number];

interface Names {
  readonly a: string;
  readonly b: string;
}

/** Sites shown of a list before one asks for more. Ours. */
const first = 12;

/** Who comes later under the second plan, who earlier, who in one of them alone. */
export function ComparedSites({ sites, a, b }: Names & { readonly sites: readonly ComparedSite[] }) {
  const { say } = useLanguage();
  const { later, earlier, onlyOne, same_count } = byLateness(sites);
  return (
    <>
      <SiteTable sites={later} title={say('rolloutPlans.later', { b, count: later.length })} {...{ a, b }} />
      <SiteTable sites={earlier} title={say('rolloutPlans.earlier', { b, count: earlier.length })} {...{ a, b }} />
      <SiteTable sites={onlyOne} title={say('rolloutPlans.only_one', { count: onlyOne.length })} {...{ a, b }} />
      {same_count === 0 ? null : <p className="small">{say('rolloutPlans.same_day', { count: same_count })}</p>}
    </>
  );
}

// long: the markup of one table
function SiteTable({
  sites,
  title,
  a,
  b,
}: Names & { readonly sites: readonly ComparedSite[]; readonly title: string }) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const [isAll, setAll] = useState(false);
  if (sites.length === 0) return null;
  const day = (served: string | null) => (served === null ? say('rolloutPlans.not_served') : numbers.date(served));
  const by = ({ later_days }: ComparedSite) =>
    later_days === null
      ? ''
      : say('rolloutPlans.by', {
          amount: numbers.quantity(Math.abs(later_days), 'day'),
          how: later_days > 0 ? 'later' : 'earlier',
        });
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <table className="compared-sites stacks">
        <thead>
          <tr>
            <th scope="col">{say('rolloutPlans.col_site')}</th>
            <th scope="col" className="num">
              {say('rolloutPlans.col_people')}
            </th>
            <th scope="col">{a}</th>
            <th scope="col">{b}</th>
            <th scope="col">{say('rolloutPlans.col_by')}</th>
          </tr>
        </thead>
        <tbody>
          {(isAll ? sites : sites.slice(0, first)).map((site) => (
            <tr key={site.siteId}>
              <th scope="row">{site.name}</th>
              <td className="num">{numbers.quantity(site.people, 'person')}</td>
              <td data-head={a}>{day(site.servedA)}</td>
              <td data-head={b}>{day(site.servedB)}</td>
              <td>{by(site)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {isAll || sites.length <= first ? null : (
        <button type="button" className="button on-screen" onClick={() => setAll(true)}>
          {say('rolloutPlans.all', { count: sites.length })}
        </button>
      )}
    </section>
  );
}

/** How long people of each area wait under either plan. */
export function ComparedAreas({ areas, a, b }: Names & { readonly areas: RolloutComparison['byArea'] }) {
  const { say, numbers } = useLanguage();
  const id = useId();
  if (areas.length < 2) return null;
  const days = (mean_days: number) => numbers.quantity(Math.round(mean_days), 'day');
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{say('rolloutPlans.areas')}</h2>
      <table className="compared-areas stacks">
        <thead>
          <tr>
            <th scope="col">{say('rolloutPlans.col_area')}</th>
            <th scope="col" className="num">
              {say('rolloutPlans.col_people')}
            </th>
            <th scope="col" className="num">
              {a}
            </th>
            <th scope="col" className="num">
              {b}
            </th>
          </tr>
        </thead>
        <tbody>
          {areas.map(({ area, people, meanA_days, meanB_days }) => (
            <tr key={area ?? ''}>
              <th scope="row">{area ?? say('rolloutPlans.no_area')}</th>
              <td className="num">{numbers.quantity(people, 'person')}</td>
              <td className="num" data-head={a}>
                {days(meanA_days)}
              </td>
              <td className="num" data-head={b}>
                {days(meanB_days)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
