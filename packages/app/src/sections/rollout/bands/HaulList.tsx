import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { HaulKnown } from './HaulKnown.tsx';
import { haulValues, type SheetHaul } from './tripWords.ts';

/** Runs that stand open before the later ones. Ours. */
const next_most = 3;

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** What is brought between stores, in words, the next first. */
export function HaulList(at: At) {
  const { say } = useLanguage();
  const { hauls } = at.sheet;
  if (hauls.length === 0) return null;
  const later = hauls.slice(next_most);
  return (
    <section className="haul-list">
      <h2>{say('rolloutBands.hauls')}</h2>
      <Hauls hauls={hauls.slice(0, next_most)} {...at} />
      {later.length === 0 ? null : (
        <details>
          <summary>{say('rolloutBands.hauls_later', { count: later.length })}</summary>
          <Hauls hauls={later} {...at} />
        </details>
      )}
    </section>
  );
}

function Hauls({ hauls, ...at }: At & { readonly hauls: readonly SheetHaul[] }) {
  const language = useLanguage();
  const { say } = language;
  return (
    <ul className="trips">
      {hauls.map((haul) => {
        const values = haulValues(haul, at.sheet, language);
        return (
          <li key={haul.haulId}>
            <details className="run">
              <summary>
                <b>{values.leaves}</b>
                <span className="small">{say('rolloutBands.way_ends', { from: values.from, to: values.store })}</span>
              </summary>
              <HaulKnown haul={haul} {...at} />
            </details>
          </li>
        );
      })}
    </ul>
  );
}
