import { Link, useMatches } from '@tanstack/react-router';
import { memo, type ReactNode } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Emblem } from '../look/Emblem.tsx';
import { LevelSign } from '../look/LevelSign.tsx';
import { KeptWhere } from '../offline/KeptWhere.tsx';
import { UndoSteps } from './UndoSteps.tsx';

/** What stands over every page: where one is, and what is saved where. The line under it is the water's surface. */
export const Head = memo(function Head({
  programmeId,
  children,
}: {
  readonly programmeId?: string;
  readonly children?: ReactNode;
}) {
  const { say } = useLanguage();
  // It is asked so that the head is not drawn anew for each change of the address. The drawing of one site is of the section Water.
  const at = useMatches({ select: (matches) => matches.at(-1)?.fullPath });
  const isAtSite = at === '/p/$programmeId/sites/$siteId';
  const isAtSafety =
    at === '/p/$programmeId/sites/$siteId/safety' || at === '/p/$programmeId/sites/$siteId/water-safety';
  const isAtKit = at === '/p/$programmeId/sites/$siteId/kit';
  return (
    <header className="head">
      <Link to="/programmes" className="maker">
        <Emblem />
        {say('app.name')}
      </Link>
      {children}
      {programmeId === undefined ? null : (
        <nav aria-label={say('app.sections')}>
          <ul>
            <li>
              <Link
                to="/p/$programmeId/sites"
                params={{ programmeId }}
                activeOptions={{ exact: true, includeSearch: false }}
                activeProps={{ 'aria-current': 'page' }}
              >
                {say('app.sites')}
                <LevelSign />
              </Link>
            </li>
            <li>
              <Link
                to="/p/$programmeId/water"
                params={{ programmeId }}
                activeProps={{ 'aria-current': 'page' }}
                {...(isAtSite ? { 'aria-current': 'location' } : {})}
              >
                {say('waterYears.section')}
                <LevelSign />
              </Link>
            </li>
            <li>
              <Link
                to="/p/$programmeId/safety"
                params={{ programmeId }}
                activeOptions={{ includeSearch: false }}
                activeProps={{ 'aria-current': 'page' }}
                {...(isAtSafety ? { 'aria-current': 'location' } : {})}
              >
                {say('safety.section')}
                <LevelSign />
              </Link>
            </li>
            <li>
              <Link
                to="/p/$programmeId/kit"
                params={{ programmeId }}
                activeOptions={{ includeSearch: false }}
                activeProps={{ 'aria-current': 'page' }}
                {...(isAtKit ? { 'aria-current': 'location' } : {})}
              >
                {say('kit.section')}
                <LevelSign />
              </Link>
            </li>
            <li>
              <Link
                to="/p/$programmeId/rollout"
                params={{ programmeId }}
                activeOptions={{ includeSearch: false }}
                activeProps={{ 'aria-current': 'page' }}
              >
                {say('rolloutSheet.section')}
                <LevelSign />
              </Link>
            </li>
          </ul>
        </nav>
      )}
      <div className="head-end">
        <KeptWhere programmeId={programmeId} />
        {programmeId === undefined ? null : <UndoSteps programmeId={programmeId} />}
      </div>
    </header>
  );
});
