import { useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Head } from '../../sheet/Head.tsx';
import { ShownMenu } from '../../sheet/ProgrammeMenu.tsx';
import { MakeProgramme } from './MakeProgramme.tsx';
import './programmes.css';

/** The programmes of this computer: to open, and to make another. */
export function Programmes() {
  const { say } = useLanguage();
  const { data } = useSuspenseQuery(queries.programmes());
  return (
    <>
      <Head>
        <ShownMenu />
      </Head>
      <main id="sheet" className="sheet" tabIndex={-1}>
        <h1>{say('programmes.title', { count: data.programmes.length })}</h1>
        <ul className="programmes">
          {data.programmes.map((programme) => (
            <li key={programme.programmeId}>
              <OneProgramme {...programme} />
            </li>
          ))}
        </ul>
        <MakeProgramme />
      </main>
    </>
  );
}

type Entry = { readonly programmeId: string; readonly name: string; readonly madeAt: string };

function OneProgramme({ programmeId, name, madeAt }: Entry) {
  const { say, numbers } = useLanguage();
  const params = { programmeId };
  return (
    <>
      <h2>
        <Link to="/p/$programmeId/sites" params={params}>
          {name}
        </Link>
      </h2>
      <p className="small">{say('programmes.made', { when: numbers.moment(madeAt) })}</p>
      <p className="programme-presses on-screen">
        <Link to="/p/$programmeId/take-in" params={params} search={{}}>
          {say('programmeMenu.take_in')}
        </Link>
        <Link to="/p/$programmeId/changes" params={params}>
          {say('programmeMenu.changes')}
        </Link>
        <Link to="/p/$programmeId/settings" params={params}>
          {say('programmeMenu.settings')}
        </Link>
        <a href={`/api/programmes/${programmeId}/export.zip`} download>
          {say('programmeMenu.export')}
        </a>
      </p>
    </>
  );
}
