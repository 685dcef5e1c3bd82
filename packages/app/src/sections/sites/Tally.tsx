import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { GateMark } from '../../look/GateMark.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { AskedLink } from './AskedLink.tsx';
import { type Asked, standingsWritten, withGate, withStanding } from './asked.ts';
import { type OverviewHead, type Standing, standings } from './overview.ts';

/** Marks of the verdicts; a site without one yet has the mark of what is not known. */
export const markOf = (standing: Standing) => (standing === 'notYet' ? 'notJudged' : standing);

/** Every site as a length: what needs her stands up in the manner of its mark, what holds is a thin line. */
export const TallyBar = memo(function TallyBar({ tally }: { readonly tally: OverviewHead['tally'] }) {
  return (
    <div className="tally-bar" aria-hidden="true">
      {standings.map((standing) =>
        tally[standing].sites === 0 ? null : (
          <span key={standing} className={`part ${standing}`} style={{ flexGrow: tally[standing].sites }} />
        ),
      )}
    </div>
  );
});

/** How many of each verdict; pressed, the list shows that verdict alone or along with others. */
export const TallyCounts = memo(function TallyCounts({
  programmeId,
  tally,
  asked,
  isDone,
  closed_count,
}: {
  readonly programmeId: string;
  readonly tally: OverviewHead['tally'];
  readonly asked: Asked;
  /** Are all verdicts there? Then a site without one has a row that cannot be used. */
  readonly isDone: boolean;
  /** Sites with a stand nobody signed for: no verdict, and counted beside them. */
  readonly closed_count: number;
}) {
  const { say } = useLanguage();
  const chosen = standingsWritten(asked.verdict) ?? [];
  return (
    <ul className="tally-counts" aria-label={say('sites.show_verdicts')}>
      {standings.map((standing) => {
        const count = tally[standing].sites;
        if (count === 0 && !chosen.includes(standing)) return null;
        return (
          <li key={standing}>
            <AskedLink
              programmeId={programmeId}
              asked={withStanding(asked, standing)}
              className={`w-${standing}`}
              isCurrent={chosen.includes(standing)}
            >
              <Count standing={standing} count={count} isDone={isDone} />
            </AskedLink>
          </li>
        );
      })}
      {closed_count === 0 && asked.gate === undefined ? null : (
        <li className="gate">
          <AskedLink programmeId={programmeId} asked={withGate(asked, 'closed')} isCurrent={asked.gate === 'closed'}>
            <GateCount count={closed_count} />
          </AskedLink>
        </li>
      )}
    </ul>
  );
});

/** A verdict's mark and how many have it: the same at each press. */
const Count = memo(function Count({
  standing,
  count,
  isDone,
}: {
  readonly standing: Standing;
  readonly count: number;
  readonly isDone: boolean;
}) {
  const { say } = useLanguage();
  return (
    <>
      <VerdictMark verdict={markOf(standing)} size={standing === 'holds' ? 14 : 22} />{' '}
      {say(`sites.count_${standing === 'notYet' && isDone ? 'notUsed' : standing}`, { count })}
    </>
  );
});

const GateCount = memo(function GateCount({ count }: { readonly count: number }) {
  const { say } = useLanguage();
  return (
    <>
      <GateMark /> {say('sites.count_gate', { count })}
    </>
  );
});
