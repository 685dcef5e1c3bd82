import type { SheetCandidate } from '@eavewell/tables';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { type ChoosingAsked, choosingAskedOf } from './choosingAsked.ts';
import { countKey } from './choosingWords.ts';
import type { CandidateTally } from './chosenCandidates.ts';

const from = '/p/$programmeId/rollout/sites';

/** Which sites are shown: found by name, by reason, by verdict, by area. */
export function ChoosingTools(props: {
  readonly candidates: readonly SheetCandidate[];
  readonly tally: CandidateTally;
  readonly asked: ChoosingAsked;
  readonly typed: string;
  onType(typed: string): void;
}) {
  const { candidates, tally, asked, typed, onType } = props;
  const { say, code } = useLanguage();
  const navigate = useNavigate({ from });
  const areas = useMemo(() => {
    const { compare } = new Intl.Collator(code, { numeric: true });
    return [...new Set(candidates.flatMap(({ area }) => area ?? []))].sort(compare);
  }, [candidates, code]);
  const put = (more: Record<string, unknown>) =>
    void navigate({ to: '.', search: (before) => choosingAskedOf({ ...before, ...more }), resetScroll: false });
  const { plan, ...filters } = asked;
  const ofPlan = plan === undefined ? {} : { plan };
  return (
    <search className="choosing-tools on-screen">
      <label>
        {say('sites.find')}
        <input
          type="search"
          value={typed}
          autoComplete="off"
          spellCheck={false}
          onChange={({ target }) => onType(target.value)}
        />
      </label>
      <ul aria-label={say('rolloutChoosing.show')}>
        {[...tally.byWhy].map(([why, { sites_count }]) => (
          <li key={why}>
            <Link
              from={from}
              to="."
              search={choosingAskedOf({ ...asked, site: undefined, why })}
              aria-current={asked.why === why}
              resetScroll={false}
            >
              {say(countKey(why), { count: sites_count })}
            </Link>
          </li>
        ))}
      </ul>
      <label>
        {say('rolloutChoosing.verdict')}
        <select value={asked.verdict ?? ''} onChange={({ target }) => put({ verdict: target.value })}>
          <option value="">{say('rolloutChoosing.any')}</option>
          {(['holds', 'tight', 'short', 'unknown'] as const).map((verdict) => (
            <option key={verdict} value={verdict}>
              {say('map.verdict', { verdict })}
            </option>
          ))}
        </select>
      </label>
      {areas.length < 2 ? null : (
        <label>
          {say('sites.filter_area')}
          <select value={asked.area ?? ''} onChange={({ target }) => put({ area: target.value })}>
            <option value="">{say('sites.any_area')}</option>
            {areas.map((area) => (
              <option key={area}>{area}</option>
            ))}
          </select>
        </label>
      )}
      {Object.keys(filters).length === 0 ? null : (
        <Link from={from} to="." search={ofPlan} className="all" resetScroll={false}>
          {say('rolloutChoosing.show_all')}
        </Link>
      )}
    </search>
  );
}
