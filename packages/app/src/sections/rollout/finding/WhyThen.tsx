import type { RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { OpensWorking } from '../working/opening.tsx';
import { workingQuery } from '../working/workingQuery.ts';

/** Why a village comes when it does, and what going there first would do; nothing until it is known. */
export function WhyThen(props: {
  readonly sheet: Pick<RolloutSheet, 'planId' | 'stamp' | 'futures'>;
  readonly programmeId: string;
  readonly siteId: string;
}) {
  const { say } = useLanguage();
  const { sheet, programmeId, siteId } = props;
  const asked = { figure: 'why', site: siteId } as const;
  const { data } = useQuery(workingQuery(programmeId, sheet.planId, `${sheet.stamp} ${sheet.futures}`, asked));
  if (data === undefined) return null;
  return (
    <p className="why-then">
      {data.said.join(' ')}{' '}
      <OpensWorking asked={asked} part={`village ${siteId}`}>
        {say('rolloutPlans.why_reached')}
      </OpensWorking>
    </p>
  );
}
