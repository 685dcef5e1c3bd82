import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useReach } from '../api/useReach.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Emblem } from '../look/Emblem.tsx';
import { LevelSign } from '../look/LevelSign.tsx';

/** What stands over every page: where one is, and what is saved where. The line under it is the water's surface. */
export function Head({ programmeId, children }: { readonly programmeId?: string; readonly children?: ReactNode }) {
  const { say } = useLanguage();
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
              <Link to="/p/$programmeId/sites" params={{ programmeId }} activeProps={{ 'aria-current': 'page' }}>
                {say('app.sites')}
                <LevelSign />
              </Link>
            </li>
          </ul>
        </nav>
      )}
      <KeptWhere />
    </header>
  );
}

/** What is saved where, in words. */
function KeptWhere() {
  const { say } = useLanguage();
  const reach = useReach();
  return (
    <p className="kept-where" role="status">
      {say(reach === 'here' ? 'app.saved_here' : 'app.not_reached')}
    </p>
  );
}
