import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { GateMark } from '../../look/GateMark.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type Asked, withGate, withStanding } from './asked.ts';
import { type OverviewHead, type Standing, standings } from './overview.ts';

/** Marks of the verdicts; a site without one yet has the mark of what is not known. */
export const markOf = (standing: Standing) => (standing === 'notYet' ? 'notJudged' : standing);

/** Every site as a length: what needs her stands up in the manner of its mark, what holds is a thin line. */
export function TallyBar({ tally }: { readonly tally: OverviewHead['tally'] }) {
  return (
    <div className="tally-bar" aria-hidden="true">
      {standings.map((standing) =>
        tally[standing].sites === 0 ? null : (
          <span key={standing} className={`part ${standing}`} style={{ flexGrow: tally[standing].sites }} />
        ),
      )}
    </div>
  );
}

/** How many of each verdict; pressed, the list shows that verdict alone or along with others. */
export function TallyCounts({
  tally,
  asked,
  shown,
  isDone,
  closed_count,
}: {
  readonly tally: OverviewHead['tally'];
  readonly asked: Asked;
  readonly shown: readonly Standing[];
  /** Are all verdicts there? Then a site without one has a row that cannot be used. */
  readonly isDone: boolean;
  /** Sites with a stand nobody signed for: no verdict, and counted beside them. */
  readonly closed_count: number;
}) {
  const { say } = useLanguage();
  return (
    <ul className="tally-counts" aria-label={say('sites.show_verdicts')}>
      {standings.map((standing) => {
        const count = tally[standing].sites;
        if (count === 0 && !(asked.verdict ?? '').split('.').includes(standing)) return null;
        const isShown = asked.verdict !== undefined && shown.includes(standing);
        return (
          <li key={standing}>
            <Link
              from="/p/$programmeId/sites"
              to="."
              search={withStanding(asked, standing)}
              className={`w-${standing}`}
              aria-current={isShown}
              activeProps={{}}
              resetScroll={false}
            >
              <VerdictMark verdict={markOf(standing)} size={standing === 'holds' ? 14 : 22} />{' '}
              {say(`sites.count_${standing === 'notYet' && isDone ? 'notUsed' : standing}`, { count })}
            </Link>
          </li>
        );
      })}
      {closed_count === 0 && asked.gate === undefined ? null : (
        <li className="gate">
          <Link
            from="/p/$programmeId/sites"
            to="."
            search={withGate(asked, 'closed')}
            aria-current={asked.gate === 'closed'}
            activeProps={{}}
            resetScroll={false}
          >
            <GateMark /> {say('sites.count_gate', { count: closed_count })}
          </Link>
        </li>
      )}
    </ul>
  );
}
