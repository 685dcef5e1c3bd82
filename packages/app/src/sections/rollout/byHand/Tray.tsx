import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { mayBePutIn } from './hand.ts';
import type { Held } from './places.ts';
import type { useDrag } from './useDrag.ts';

/** So many are shown at once [count]. Ours. */
const shown_most = 30;

/** Sites that are in no trip and may be: taken up by a press, or pulled into the bands. */
export function Tray({
  sheet,
  onTake,
  onPull,
}: {
  readonly sheet: RolloutSheet;
  onTake(held: Held): void;
  readonly onPull: ReturnType<typeof useDrag>['begin'];
}) {
  const { say, numbers } = useLanguage();
  const free = sheet.candidates.filter(({ tripId, reason }) => tripId === null && mayBePutIn(reason));
  if (sheet.planId === null || free.length === 0) return null;
  return (
    <details className="by-hand-tray on-screen" open={free.length <= 3}>
      <summary>{say('rolloutByHand.tray', { count: free.length })}</summary>
      <ul>
        {free.slice(0, shown_most).map(({ siteId, name, people }) => {
          const held: Held = { kind: 'site', siteId };
          return (
            <li key={siteId}>
              <button
                type="button"
                className="button plain"
                onClick={() => onTake(held)}
                onPointerDown={(event) => onPull(event, held, 0, false)}
              >
                {say('rolloutByHand.put_in', { site: name })}
              </button>
              {people === null ? null : <span className="small"> {numbers.people(people)}</span>}
            </li>
          );
        })}
      </ul>
      {free.length > shown_most ? (
        <p className="small">{say('rolloutByHand.tray_more', { count: free.length - shown_most })}</p>
      ) : null}
    </details>
  );
}
