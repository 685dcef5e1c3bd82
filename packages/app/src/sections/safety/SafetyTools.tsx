import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import {
  type Drink,
  drinks,
  dues,
  type SafetyAsked,
  type SafetyTally,
  type SiteOfSafety,
  safetyAskedOf,
  withAsked,
} from './cups.ts';

const from = '/p/$programmeId/safety';

/** The mark a saying stands with: the water of a site that is fit stands as what holds does. */
export const markOfDrink: Readonly<Record<Drink, 'short' | 'unknown' | 'holds' | 'notJudged'>> = {
  no: 'short',
  notShown: 'unknown',
  yes: 'holds',
  notJudged: 'notJudged',
};

/** How many of each, and what is due; pressed, the list shows those alone. And one area alone. */
export function SafetyTools({
  sites,
  tally,
  asked,
  typed,
  onType,
}: {
  readonly sites: readonly SiteOfSafety[];
  readonly tally: SafetyTally;
  readonly asked: SafetyAsked;
  /** What was typed to find a village. */
  readonly typed: string;
  onType(typed: string): void;
}) {
  const { say, code } = useLanguage();
  const navigate = useNavigate({ from });
  const areas = useMemo(() => {
    const { compare } = new Intl.Collator(code, { numeric: true });
    return [...new Set(sites.flatMap(({ area }) => (area === null ? [] : [area])))].sort(compare);
  }, [sites, code]);
  const put = (area: string) =>
    void navigate({ to: '.', search: (before) => safetyAskedOf({ ...before, area }), resetScroll: false });
  const link = { from, to: '.', activeProps: {}, resetScroll: false } as const;
  return (
    <search className="safety-tools on-screen">
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
      <ul aria-label={say('safety.show')}>
        {drinks.map((drink) =>
          tally.drink[drink] === 0 && asked.drink !== drink ? null : (
            <li key={drink}>
              <Link {...link} search={withAsked(asked, 'drink', drink)} aria-current={asked.drink === drink}>
                <VerdictMark verdict={markOfDrink[drink]} size={drink === 'no' ? 22 : 16} />{' '}
                {say(`safety.count_${drink}`, { count: tally.drink[drink] })}
              </Link>
            </li>
          ),
        )}
        {dues.map((due) =>
          tally.due[due] === 0 && asked.due !== due ? null : (
            <li key={due}>
              <Link {...link} search={withAsked(asked, 'due', due)} aria-current={asked.due === due}>
                {say(`safety.due_${due}`, { count: tally.due[due] })}
              </Link>
            </li>
          ),
        )}
      </ul>
      {areas.length < 2 ? null : (
        <label>
          {say('sites.filter_area')}
          <select value={asked.area ?? ''} onChange={(event) => put(event.target.value)}>
            <option value="">{say('sites.any_area')}</option>
            {areas.map((area) => (
              <option key={area}>{area}</option>
            ))}
          </select>
        </label>
      )}
      {Object.keys(asked).length === 0 ? null : (
        <Link from={from} to="." search={{}} className="all" resetScroll={false}>
          {say('safety.show_all')}
        </Link>
      )}
    </search>
  );
}
