import { Link } from '@tanstack/react-router';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** An address at which nothing stands. */
export function NoSuchSheet() {
  const { say } = useLanguage();
  return (
    <main id="sheet" className="sheet" tabIndex={-1}>
      <h1>{say('app.no_such_page')}</h1>
      <p>
        <Link to="/">{say('app.to_start')}</Link>
      </p>
    </main>
  );
}
