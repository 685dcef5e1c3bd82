import { Link } from '@tanstack/react-router';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Main } from './Main.tsx';

/** An address at which nothing stands. */
export function NoSuchSheet() {
  const { say } = useLanguage();
  return (
    <Main>
      <h1>{say('app.no_such_page')}</h1>
      <p>
        <Link to="/">{say('app.to_start')}</Link>
      </p>
    </Main>
  );
}
