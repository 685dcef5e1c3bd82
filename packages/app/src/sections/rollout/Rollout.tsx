import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { BandsByHand } from './byHand/BandsByHand.tsx';
import { useKeepItineraries } from './crew/useKeepItineraries.ts';
import { FindVillage } from './finding/FindVillage.tsx';
import { PaperFoot } from './paper/PaperFoot.tsx';
import { PlansBar } from './plans/PlansBar.tsx';
import { planNamed } from './plans/planNamed.ts';
import { rolloutQuery } from './rolloutQuery.ts';
import { WeekMap } from './weekMap/WeekMap.tsx';
import { WithWorkings } from './working/opening.tsx';
import { PlanFigures } from './working/PlanFigures.tsx';

const from = '/p/$programmeId/rollout';

/** Who goes where, when, by which way: the plan in force, or the one that is asked for. */
export function Rollout() {
  const { programmeId } = useParams({ from });
  const { plan } = useSearch({ from });
  const { data: sheet } = useSuspenseQuery(rolloutQuery(programmeId, plan));
  useKeepItineraries(sheet, programmeId);
  const { say } = useLanguage();
  return (
    <WithWorkings sheet={sheet} programmeId={programmeId}>
      <PaperFoot programme={sheet.programme} plan={planNamed(sheet)} sheet={say('rolloutBands.name')} />
      <div className="rollout">
        <h1>{sheet.sentence}</h1>
        {sheet.rest === '' ? null : <p className="rest">{sheet.rest}</p>}
        <PlanFigures sheet={sheet} />
        <FindVillage sheet={sheet} programmeId={programmeId} />
        <PlansBar sheet={sheet} programmeId={programmeId} />
        <BandsByHand sheet={sheet} programmeId={programmeId} />
        <WeekMap sheet={sheet} programmeId={programmeId} />
      </div>
    </WithWorkings>
  );
}
