import type { RolloutTripAnswer } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** Where it can hurt somebody: one frame, and on paper at the foot of every page. */
export function TripCautions({ of }: { readonly of: readonly RolloutTripAnswer['cautions'][number][] }) {
  const { say } = useLanguage();
  const once = [...new Map(of.map((one) => [one.name, one])).values()];
  if (once.length === 0) return null;
  return (
    <section className="trip-cautions" aria-label={say('rolloutTrip.caution')}>
      <div className="trip-frame">
        {once.map(({ name, said }) => (
          <p key={name}>{said}</p>
        ))}
      </div>
    </section>
  );
}
