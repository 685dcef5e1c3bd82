import { useSuspenseQuery } from '@tanstack/react-query';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Head } from '../../sheet/Head.tsx';
import { Main } from '../../sheet/Main.tsx';
import { ShownMenu } from '../../sheet/ProgrammeMenu.tsx';
import { MakeProgramme } from './MakeProgramme.tsx';
import { OneProgramme } from './OneProgramme.tsx';
import './programmes.css';

/** The programmes of this computer: to open, name and set aside, and to make another. */
export function Programmes() {
  const { say } = useLanguage();
  const { data } = useSuspenseQuery(queries.programmes());
  const open = data.programmes.filter(({ isSetAside }) => !isSetAside);
  const aside = data.programmes.filter(({ isSetAside }) => isSetAside);
  return (
    <>
      <Head>
        <ShownMenu />
      </Head>
      <Main>
        <h1>{say('programmes.title', { count: open.length })}</h1>
        <ul className="programmes">
          {open.map((programme) => (
            <OneProgramme key={programme.programmeId} programme={programme} />
          ))}
        </ul>
        <MakeProgramme />
        {aside.length === 0 ? null : (
          <>
            <h2>{say('programmes.set_aside_about')}</h2>
            <ul className="programmes">
              {aside.map((programme) => (
                <OneProgramme key={programme.programmeId} programme={programme} />
              ))}
            </ul>
          </>
        )}
      </Main>
    </>
  );
}
