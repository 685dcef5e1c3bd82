import type { RolloutComparison } from '@eavewell/tables';
import { useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { OpensWorking, WorkingOfPart } from '../working/opening.tsx';
import { differenceRows } from './planWords.ts';
import { byLateness } from './servedLines.ts';

/** The part of the page a figure opens in: one for each table. */
const [ofDifferences, ofAreas] = ['differences', 'areas'] as const;

/** What plan b takes beside plan a. */
export function Differences(props: {
  readonly compared: RolloutComparison;
  readonly currency: string | null;
  readonly labelled: string;
}) {
  const language = useLanguage();
  const { compared, currency, labelled } = props;
  const rows = differenceRows(compared, currency, language);
  const plans = { plan: compared.b.planId, beside: compared.a.planId };
  return (
    <>
      <table className="differences" aria-labelledby={labelled}>
        <tbody>
          {rows.map(({ differs, row, said }) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              <td>
                <OpensWorking asked={{ figure: 'differs', differs, ...plans }} part={ofDifferences}>
                  {said}
                </OpensWorking>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <WorkingOfPart part={ofDifferences} />
    </>
  );
}

type ComparedSite = RolloutComparison['sites'][number];

type Plan = Pick<RolloutComparison['a'], 'planId' | 'name'>;

interface Plans {
  readonly a: Plan;
  readonly b: Plan;
}

/** Sites shown of a list before one asks for more. Ours. */
const first = 12;

/** Who comes later under the second plan, who earlier, who in one of them alone. Made anew, it is set beside the plan as it stands now. */
export function ComparedSites(props: Plans & { readonly sites: readonly ComparedSite[]; readonly isAnew?: boolean }) {
  const { say } = useLanguage();
  const { sites, a, b, isAnew = false } = props;
  const { later, earlier, onlyOne, same_count } = byLateness(sites);
  return (
    <>
      <SiteTable
        part="later"
        sites={later}
        title={say(isAnew ? 'rolloutPlans.anew_later' : 'rolloutPlans.later', { b: b.name, count: later.length })}
        {...{ a, b }}
      />
      <SiteTable
        part="earlier"
        sites={earlier}
        title={say(isAnew ? 'rolloutPlans.anew_earlier' : 'rolloutPlans.earlier', { b: b.name, count: earlier.length })}
        {...{ a, b }}
      />
      <SiteTable
        part="onlyOne"
        sites={onlyOne}
        title={say('rolloutPlans.only_one', { count: onlyOne.length })}
        {...{ a, b }}
      />
      {same_count === 0 ? null : <p className="small">{say('rolloutPlans.same_day', { count: same_count })}</p>}
    </>
  );
}

// long: the markup of one table
function SiteTable({
  sites,
  title,
  part,
  a,
  b,
}: Plans & { readonly sites: readonly ComparedSite[]; readonly title: string; readonly part: string }) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const [isAll, setAll] = useState(false);
  if (sites.length === 0) return null;
  const day = (site: string, plan: Plan, served: string | null) =>
    served === null ? (
      say('rolloutPlans.not_served')
    ) : (
      <OpensWorking asked={{ figure: 'drinks', site, plan: plan.planId, beside: a.planId }} part={part}>
        {numbers.date(served)}
      </OpensWorking>
    );
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
      <p className="small">{say('rolloutPlans.days_are')}</p>
      <table className="compared-sites stacks">
        <thead>
          <tr>
            <th scope="col">{say('rolloutPlans.col_site')}</th>
            <th scope="col" className="num">
              {say('rolloutPlans.col_people')}
            </th>
            <th scope="col">{a.name}</th>
            <th scope="col">{b.name}</th>
            <th scope="col">{say('rolloutPlans.col_by')}</th>
          </tr>
        </thead>
        <tbody>
          {(isAll ? sites : sites.slice(0, first)).map((site) => (
            <tr key={site.siteId}>
              <th scope="row">{site.name}</th>
              <td className="num">{numbers.quantity(site.people, 'person')}</td>
              <td data-head={a.name}>{day(site.siteId, a, site.servedA)}</td>
              <td data-head={b.name}>{day(site.siteId, b, site.servedB)}</td>
              <td>{by(site)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <WorkingOfPart part={part} />
      {isAll || sites.length <= first ? null : (
        <button type="button" className="button on-screen" onClick={() => setAll(true)}>
          {say('rolloutPlans.all', { count: sites.length })}
        </button>
      )}
    </section>
  );
}

/** How long people of each area wait under either plan. */
export function ComparedAreas({ areas, a, b }: Plans & { readonly areas: RolloutComparison['byArea'] }) {
  const { say, numbers } = useLanguage();
  const id = useId();
  if (areas.length < 2) return null;
  const days = (area: string | null, plan: Plan, mean_days: number) => (
    <OpensWorking
      asked={{ figure: 'area', ...(area === null ? {} : { area }), plan: plan.planId, beside: a.planId }}
      part={ofAreas}
    >
      {numbers.quantity(Math.round(mean_days), 'day')}
    </OpensWorking>
  );
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
              {a.name}
            </th>
            <th scope="col" className="num">
              {b.name}
            </th>
          </tr>
        </thead>
        <tbody>
          {areas.map(({ area, people, meanA_days, meanB_days }) => (
            <tr key={area ?? ''}>
              <th scope="row">{area ?? say('rolloutPlans.no_area')}</th>
              <td className="num">{numbers.quantity(people, 'person')}</td>
              <td className="num" data-head={a.name}>
                {days(area, a, meanA_days)}
              </td>
              <td className="num" data-head={b.name}>
                {days(area, b, meanB_days)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <WorkingOfPart part={ofAreas} />
    </section>
  );
}
