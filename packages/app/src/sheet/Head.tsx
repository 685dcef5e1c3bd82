import { Link, useMatches } from '@tanstack/react-router';
import { memo, type ReactNode } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Emblem } from '../look/Emblem.tsx';
import { LevelSign } from '../look/LevelSign.tsx';
import { KeptWhere } from '../offline/KeptWhere.tsx';
import { UndoSteps } from './UndoSteps.tsx';

/** Sections in the order of her questions; pages that stand elsewhere and belong to one of them: the drawing of one site is of the section Water. */
const sections = [
  { to: '/p/$programmeId/sites', words: 'app.sites', isExact: true, at: [] },
  { to: '/p/$programmeId/water', words: 'waterYears.section', isExact: false, at: ['/p/$programmeId/sites/$siteId'] },
  {
    to: '/p/$programmeId/safety',
    words: 'safety.section',
    isExact: false,
    at: ['/p/$programmeId/sites/$siteId/safety', '/p/$programmeId/sites/$siteId/water-safety'],
  },
  { to: '/p/$programmeId/kit', words: 'kit.section', isExact: false, at: ['/p/$programmeId/sites/$siteId/kit'] },
  { to: '/p/$programmeId/rollout', words: 'rolloutSheet.section', isExact: false, at: [] },
] as const satisfies readonly { readonly at: readonly string[]; readonly [more: string]: unknown }[];

/** What stands over every page: where one is, and what is saved where. The line under it is the water's surface. */
export const Head = memo(function Head({
  programmeId,
  children,
}: {
  readonly programmeId?: string;
  readonly children?: ReactNode;
}) {
  const { say } = useLanguage();
  // It is asked so that the head is not drawn anew for each change of the address.
  const at = useMatches({ select: (matches) => matches.at(-1)?.fullPath });
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
            {sections.map(({ to, words, at: below, isExact }) => (
              <li key={to}>
                <Link
                  to={to}
                  params={{ programmeId }}
                  activeOptions={{ exact: isExact, includeSearch: false }}
                  activeProps={{ 'aria-current': 'page' }}
                  {...(at !== undefined && (below as readonly string[]).includes(at)
                    ? { 'aria-current': 'location' }
                    : {})}
                >
                  {say(words)}
                  <LevelSign />
                </Link>
              </li>
            ))}
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
