import { useNavigate } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { ProgrammeYear } from './programmeYears.ts';
import { yearWords } from './yearWords.ts';

/** A row a year: pale water for the people who would have had enough, brick for those who would not. Pressed, or gone to by the arrow keys, a year is opened beside it. */
export function YearRows({
  years,
  chosen,
  worst,
}: {
  readonly years: readonly ProgrammeYear[];
  readonly chosen: ProgrammeYear;
  readonly worst: ProgrammeYear | null;
}) {
  const { say } = useLanguage();
  const most = Math.max(1, ...years.map(({ enough, hurt }) => enough.people + hurt.people));
  const most_sites = Math.max(...years.map(({ enough, hurt }) => enough.sites + hurt.sites));
  return (
    <fieldset className="year-rows">
      <legend>{say('waterYears.picture')}</legend>
      <p className="small key">
        <span className="swatch enough" aria-hidden="true" /> {say('waterYears.key_enough')}{' '}
        <span className="swatch hurt" aria-hidden="true" /> {say('waterYears.key_hurt')}
      </p>
      {years.map((year) => (
        <YearRow key={year.year} {...{ year, most, most_sites }} isChosen={year === chosen} isWorst={year === worst} />
      ))}
    </fieldset>
  );
}

function YearRow({
  year,
  most,
  most_sites,
  isChosen,
  isWorst,
}: {
  readonly year: ProgrammeYear;
  /** People of the year that has the most of them, and sites of the one that has the most of those. */
  readonly most: number;
  readonly most_sites: number;
  readonly isChosen: boolean;
  readonly isWorst: boolean;
}) {
  const language = useLanguage();
  const { say } = language;
  const navigate = useNavigate({ from: '/p/$programmeId/water' });
  const { hurt, enough } = year;
  const of = enough.sites + hurt.sites;
  const choose = () =>
    void navigate({ to: '.', search: (before) => ({ ...before, year: year.year }), replace: true, resetScroll: false });
  const share = (people: number) => ({ inlineSize: `${(100 * people) / most}%` });
  return (
    <label className={isWorst ? 'year-row worst' : 'year-row'}>
      <input
        type="radio"
        name="year"
        checked={isChosen}
        onChange={choose}
        aria-label={`${year.year}: ${yearWords(year, language)}`}
      />
      <span className="year-label">{year.year}</span>
      <span className="bar" aria-hidden="true">
        <span className="enough" style={share(enough.people)} />
        <span className="hurt" style={share(hurt.people)} />
      </span>
      <span className="said" aria-hidden="true">
        {hurt.sites === 0 ? null : say('waterYears.sites_people', { sites: hurt.sites, people: hurt.people })}
        {of === most_sites ? null : <span className="of"> {say('waterYears.of_sites', { of })}</span>}
      </span>
    </label>
  );
}
