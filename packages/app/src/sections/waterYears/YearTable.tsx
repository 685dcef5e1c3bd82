import { useLanguage } from '../../language/LanguageProvider.tsx';
import { saveAs } from '../sites/index.ts';
import type { ProgrammeYear } from './programmeYears.ts';

/** A row of the table that is saved. */
export const yearCsvRow = ({ year, enough, hurt }: ProgrammeYear) => ({
  waterYear: year,
  sites: enough.sites + hurt.sites,
  enough_sites: enough.sites,
  enough_people: enough.people,
  tooLongDry_sites: hurt.sites,
  tooLongDry_people: hurt.people,
  withoutPeople_sites: enough.withoutPeople_count + hurt.withoutPeople_count,
});

/** The picture as a table, and as a file. */
export function YearTable({ years }: { readonly years: readonly ProgrammeYear[] }) {
  const { say, numbers } = useLanguage();
  const save = async () => {
    const { unparse } = await import('papaparse');
    saveAs(say('waterYears.csv_name'), `\uFEFF${unparse(years.map(yearCsvRow), { newline: '\r\n' })}\r\n`);
  };
  const heads = ['head_year', 'head_sites', 'head_enough_people', 'head_hurt_sites', 'head_hurt_people'] as const;
  return (
    <details className="year-table">
      <summary>{say('waterYears.as_table')}</summary>
      <div className="scrolls">
        <table>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col" className="number">
                  {say(`waterYears.${head}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {years.map(({ year, enough, hurt }) => (
              <tr key={year}>
                <th scope="row" className="number">
                  {year}
                </th>
                {[enough.sites + hurt.sites, enough.people, hurt.sites, hurt.people].map((count, i) => (
                  <td key={heads[i + 1]} className="number">
                    {numbers.quantity(count, 'count')}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <button type="button" className="button on-screen" onClick={() => void save()}>
        {say('waterYears.save_csv')}
      </button>
    </details>
  );
}
