import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type SiteEntry, type Standing, standingOf } from './overview.ts';
import type { Overview } from './overviewOpened.ts';
import { leadWords, lineWords, mendWords, peopleWords } from './rowWords.ts';
import { markOf } from './Tally.tsx';

/** The whole list on paper: every site that is shown, not the rows of the screen alone. */
export function PrintList({
  name,
  overview,
  places,
  shown,
  isDone,
}: {
  readonly name: string;
  readonly overview: Overview;
  /** Of the sites in it, in their order. */
  readonly places: Uint32Array;
  readonly shown: readonly Standing[];
  readonly isDone: boolean;
}) {
  const { say, numbers } = useLanguage();
  const day = numbers.date(new Date().toLocaleDateString('sv-SE'));
  const verdicts = shown.map((standing) => say(`sites.verdict_${standing}`)).join(', ');
  return (
    <section className="print-list">
      <h2>{say('sites.print_title', { name })}</h2>
      <p>{say('sites.print_about', { count: places.length, day, verdicts })}</p>
      <p>{say('sites.print_caution')}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('sites.print_site')}</th>
            <th scope="col">{say('sites.print_finding')}</th>
            <th scope="col">{say('sites.mend_head')}</th>
          </tr>
        </thead>
        <tbody>
          {Array.from(places, (place) => (
            <PrintRow key={place} site={overview.siteAt(place)!} isDone={isDone} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** One site on paper: mark with name and people, finding, change. */
function PrintRow({ site, isDone }: { readonly site: SiteEntry; readonly isDone: boolean }) {
  const language = useLanguage();
  const { main, more } = mendWords(site, language);
  return (
    <tr>
      <th scope="row">
        <VerdictMark verdict={markOf(standingOf(site))} size={16} /> {site.name || site.key} ({site.siteId})
        <br />
        <span>{[peopleWords(site, language), ...(site.area === null ? [] : [site.area])].join(', ')}</span>
        {site.standGate === 'closed' ? (
          <>
            <br />
            {language.say('sites.gate_closed_full')}
          </>
        ) : null}
      </th>
      <td>
        <b>{leadWords(site, language)}</b> {lineWords(site, isDone, language)}
      </td>
      <td>
        {main}
        <br />
        {more}
      </td>
    </tr>
  );
}
