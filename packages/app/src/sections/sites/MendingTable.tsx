import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { OverviewHead } from './overview.ts';

/** What would mend them all: each kind of change, at how many sites, for how much. */
export function MendingTable({ remedies }: { readonly remedies: NonNullable<OverviewHead['remedies']> }) {
  const { say, numbers } = useLanguage();
  const { looked, groups, mended, notMended, pricesOn } = remedies;
  if (looked.sites === 0) return null;
  const isCut = groups.some(({ isPromiseCut }) => isPromiseCut);
  return (
    <section className="mending" aria-label={say('sites.mend_table', { count: looked.sites })}>
      <table>
        <Heads count={looked.sites} />
        <tbody>
          {groups.map(({ about, verdict, isPromiseCut, sites, costsInWords }) => (
            <tr key={`${about} ${verdict} ${isPromiseCut}`}>
              <th scope="row">
                {about}
                {verdict === 'tight' ? `; ${say('sites.mend_then_tight')}` : ''}
                {isPromiseCut ? ' *' : ''}
              </th>
              <td className="number">{numbers.quantity(sites, 'count')}</td>
              <td className="number">{costsInWords}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{say('sites.mend_together')}</th>
            <td className="number">{numbers.quantity(mended.sites, 'count')}</td>
            <td className="number">{mended.costsInWords}</td>
          </tr>
        </tfoot>
      </table>
      {isCut ? <p className="small">{say('sites.mend_star')}</p> : null}
      <p className="small">
        {pricesOn === null ? say('sites.mend_no_prices') : say('sites.mend_prices', { day: numbers.date(pricesOn) })}
      </p>
      {notMended.map(({ reason, sentence, siteIds }) => (
        <p key={reason} className="small">
          {say('sites.mend_by_none', { count: siteIds.length, why: sentence })}
        </p>
      ))}
    </section>
  );
}

function Heads({ count }: { readonly count: number }) {
  const { say } = useLanguage();
  return (
    <thead>
      <tr>
        <th scope="col">{say('sites.mend_table', { count: count })}</th>
        <th scope="col" className="number">
          {say('sites.mend_sites')}
        </th>
        <th scope="col" className="number">
          {say('sites.mend_cost')}
        </th>
      </tr>
    </thead>
  );
}
