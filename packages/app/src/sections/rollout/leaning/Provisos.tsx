import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import './leaning.css';

/** Under the first sentence: sites that are not treated, not done, left out, not shown to hold. */
export function Provisos({ sheet: { provisos } }: { readonly sheet: RolloutSheet }) {
  const { say } = useLanguage();
  if (provisos.length === 0) return null;
  return (
    <ul className="provisos" aria-label={say('rolloutPlans.provisos')}>
      {provisos.map(({ kind, said }) => (
        <li key={kind} className={kind === 'untreated' || kind === 'notDone' ? 'w-short' : undefined}>
          {said}
        </li>
      ))}
    </ul>
  );
}
