import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { AreaYears } from './programmeYears.ts';

/** What the years come to in each area; pressed, the picture shows that area alone. */
export function AreaTable({ areas, chosen }: { readonly areas: readonly AreaYears[]; readonly chosen: string | null }) {
  const { say } = useLanguage();
  return (
    <section className="by-area" aria-labelledby="by-area">
      <h2 id="by-area">{say('waterYears.by_area')}</h2>
      <div className="scrolls">
        <table>
          <thead>
            <tr>
              <th scope="col">{say('waterYears.head_area')}</th>
              <th scope="col" className="number">
                {say('waterYears.head_sites')}
              </th>
              <th scope="col" className="number">
                {say('waterYears.head_people')}
              </th>
              <th scope="col" className="number">
                {say('waterYears.head_good_years')}
              </th>
              <th scope="col">{say('waterYears.head_worst')}</th>
            </tr>
          </thead>
          <tbody>
            {areas.map((one) => (
              <AreaRow key={one.area ?? ''} one={one} isChosen={one.area !== null && one.area === chosen} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function AreaRow({ one, isChosen }: { readonly one: AreaYears; readonly isChosen: boolean }) {
  const { say, numbers } = useLanguage();
  const { area, years, goodYears_count, years_count, worst } = one;
  return (
    <tr className={isChosen ? 'chosen' : ''}>
      <th scope="row">
        {area === null ? (
          say('waterYears.no_area')
        ) : (
          <Link
            from="/p/$programmeId/water"
            to="."
            search={(before) => ({ ...before, area })}
            aria-current={isChosen}
            activeProps={{}}
            resetScroll={false}
          >
            {area}
          </Link>
        )}
      </th>
      <td className="number">{numbers.quantity(years.counted.sites, 'count')}</td>
      <td className="number">{numbers.quantity(years.counted.people, 'count')}</td>
      <td className="number">{years_count === 0 ? '' : numbers.ofYears(goodYears_count, years_count)}</td>
      <td>
        {worst === null
          ? say('waterYears.no_bad_year')
          : say('waterYears.worst_of_area', {
              year: String(worst.year),
              sites: worst.hurt.sites,
              people: worst.hurt.people,
            })}
      </td>
    </tr>
  );
}
