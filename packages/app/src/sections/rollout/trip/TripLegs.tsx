import { kg } from '@eavewell/report/trip';
import type { RolloutTripAnswer } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { haulValues } from '../bands/tripWords.ts';

/** What is brought to its store before it leaves, and by which way: without it the trip waits. */
export function TripHauls({ answer }: { readonly answer: RolloutTripAnswer }) {
  const language = useLanguage();
  const { say } = language;
  if (answer.hauls.length === 0) return null;
  return (
    <section aria-labelledby="trip-hauls">
      <h2 id="trip-hauls">{say('rolloutTrip.hauls')}</h2>
      <ul>
        {answer.hauls.map((haul) => (
          <li key={haul.haulId}>
            {say('rolloutBands.haul', haulValues(haul, answer, language))}
            <LegList legs={haul.legs} />
          </li>
        ))}
      </ul>
      <p className="small">{say('rolloutTrip.hauls_wait')}</p>
    </section>
  );
}

/** By which way a trip goes, leg by leg. */
export function TripLegs({ legs }: Pick<RolloutTripAnswer, 'legs'>) {
  const { say } = useLanguage();
  if (legs.length === 0) return null;
  return (
    <section aria-labelledby="trip-legs">
      <h2 id="trip-legs">{say('rolloutTrip.legs')}</h2>
      <LegList legs={legs} />
    </section>
  );
}

function LegList({ legs }: Pick<RolloutTripAnswer, 'legs'>) {
  const language = useLanguage();
  const { say, numbers } = language;
  return (
    <ol className="trip-legs">
      {legs.map((leg, nth) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: legs in the order they are gone; two runs of a day are alike
        <li key={nth}>
          {leg.leaves === null ? null : <b>{numbers.date(leg.leaves)} </b>}
          {leg.said}
          {leg.limit_kg === null ? null : (
            <span className="small"> {say('kit.may_carry', { mass: kg(leg.limit_kg, language) })}</span>
          )}
        </li>
      ))}
    </ol>
  );
}
