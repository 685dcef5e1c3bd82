import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import type { ProgrammeYear, SiteInYear } from './programmeYears.ts';
import { sitesWords, yearWords } from './yearWords.ts';

/** Sites told before one asks for all. Ours. */
const first = 20;

/** Who would have been hurt in a year, the longest dry run first; each leads to its site. */
export function HurtSites({ year, programmeId }: { readonly year: ProgrammeYear; readonly programmeId: string }) {
  const language = useLanguage();
  const { say } = language;
  const [isAll, setAll] = useState(false);
  const { hurtSites, hurt, enough } = year;
  const shown = isAll ? hurtSites : hurtSites.slice(0, first);
  return (
    <section className="hurt-sites" aria-labelledby="hurt-year">
      <h2 id="hurt-year">{say('waterYears.year_head', { year: String(year.year) })}</h2>
      <p role="status">{yearWords(year, language)}</p>
      {hurt.sites === 0 ? null : (
        <>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('waterYears.head_site')}</th>
                <th scope="col" className="number">
                  {say('waterYears.head_people')}
                </th>
                <th scope="col" className="number">
                  {say('waterYears.head_longest')}
                </th>
                <th scope="col" className="number">
                  {say('waterYears.head_limit')}
                </th>
              </tr>
            </thead>
            <tbody>
              {shown.map((one) => (
                <HurtRow key={one.site.key} one={one} programmeId={programmeId} />
              ))}
            </tbody>
          </table>
          {shown.length === hurtSites.length ? null : (
            <button type="button" className="button on-screen" onClick={() => setAll(true)}>
              {say('waterYears.show_all', { count: hurtSites.length })}
            </button>
          )}
        </>
      )}
      {enough.sites === 0 ? null : (
        <p className="small">{say('waterYears.had_enough', { sites: sitesWords(enough, language) })}</p>
      )}
    </section>
  );
}

function HurtRow({ one, programmeId }: { readonly one: SiteInYear; readonly programmeId: string }) {
  const { say, numbers } = useLanguage();
  const { site, longestRun_days, limit_days } = one;
  return (
    <tr>
      <th scope="row">
        <VerdictMark verdict={site.verdict ?? 'notJudged'} size={16} />{' '}
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId: site.siteId || site.key }}>
          {site.name || site.key}
        </Link>
        {site.area === null ? null : <span className="small"> {site.area}</span>}
      </th>
      <td className="number">
        {site.people === null ? say('waterYears.not_known') : numbers.quantity(site.people, 'count')}
      </td>
      <td className="number w-short">
        <b>{numbers.days(longestRun_days)}</b>
      </td>
      <td className="number">{numbers.days(limit_days)}</td>
    </tr>
  );
}
