import { Link } from '@tanstack/react-router';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Tables that kits, loads and costs follow from. */
const tables = [
  'kitRules',
  'kitConditions',
  'parts',
  'prices',
  'carriers',
  'keptApart',
  'costs',
  'rates',
  'redenominations',
] as const;

/** What the figures follow from, each a page where it is changed. */
export function RuleLinks({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  return (
    <nav className="rule-links on-screen" aria-labelledby="rule-links">
      <h2 id="rule-links">{say('kit.change')}</h2>
      <p className="small">{say('kit.change_about')}</p>
      <ul>
        {tables.map((table) => (
          <li key={table}>
            <Link to="/p/$programmeId/settings/$table" params={{ programmeId, table }}>
              {words.tableOfAll(table)}
            </Link>
          </li>
        ))}
        <li>
          <Link to="/p/$programmeId/settings" params={{ programmeId }}>
            {say('settings.title')}
          </Link>
        </li>
      </ul>
    </nav>
  );
}
