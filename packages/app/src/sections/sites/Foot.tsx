import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { AskedLink } from './AskedLink.tsx';
import { type Asked, writtenStandings } from './asked.ts';

/** Under the list: the sites that hold, and what can be done with the list. */
export const Foot = memo(function Foot({
  programmeId,
  asked,
  areHoldsShown,
  holds,
}: {
  readonly programmeId: string;
  readonly asked: Asked;
  readonly areHoldsShown: boolean;
  readonly holds: number;
}) {
  const { say } = useLanguage();
  if (holds === 0 || areHoldsShown) return null;
  const { verdict: _, ...rest } = asked;
  const verdict = writtenStandings(['holds']);
  return (
    <p className="foot">
      <AskedLink programmeId={programmeId} asked={verdict === undefined ? rest : { ...rest, verdict }} isFromTop>
        {say('sites.that_hold', { count: holds })}
      </AskedLink>
    </p>
  );
});
