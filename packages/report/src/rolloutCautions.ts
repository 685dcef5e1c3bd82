import type { RolloutLegReport, RolloutTripReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** Of every load; and of a load that goes on a river, or may: a leg of which no way is known. */
const ofAll = ['lashed', 'dangerApart', 'lifting'] as const;
const ofBoats = ['lifeVests', 'localSkipperDecides', 'freeboardMark', 'nobodyOnLoad'] as const;

/** What is told whenever the load of a trip is told: no load of a boat goes without it. */
export function cautionsOfTrip(legs: readonly RolloutLegReport[], { say }: Language): RolloutTripReport['cautions'] {
  const isAfloat = legs.some(
    ({ stretches }) => stretches.length === 0 || stretches.some(({ mode }) => mode === 'river'),
  );
  const said = [...(isAfloat ? ofBoats : []), ...ofAll].map((name) => ({ name, said: say(`loads.caution.${name}`) }));
  return isAfloat ? [{ name: 'noDark', said: say('rolloutReport.caution.noDark') }, ...said] : said;
}
