import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { Mending } from './mending.ts';

/** The way to where it is changed that a site is not planned. */
export function MendingLink(props: {
  readonly programmeId: string;
  readonly siteId: string;
  readonly plan: string | undefined;
  readonly mending: Mending;
}) {
  const { say } = useLanguage();
  const { programmeId, siteId, plan, mending } = props;
  const text = say(mending.key);
  const ofPlan = plan === undefined ? {} : { plan };
  switch (mending.to) {
    case 'site':
    case 'facts':
      return (
        <Link
          to="/p/$programmeId/sites/$siteId"
          params={{ programmeId, siteId }}
          {...(mending.to === 'facts' ? { hash: 'form-sites' } : {})}
        >
          {text}
        </Link>
      );
    case 'kit':
      return (
        <Link to="/p/$programmeId/sites/$siteId/kit" params={{ programmeId, siteId }}>
          {text}
        </Link>
      );
    case 'agree':
      return (
        <Link to="/p/$programmeId/rollout/sites" params={{ programmeId }} search={{ ...ofPlan, site: siteId }}>
          {text}
        </Link>
      );
    case 'plan':
      return (
        <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={{ ...ofPlan, site: siteId }}>
          {text}
        </Link>
      );
    default:
      return (
        <Link to="/p/$programmeId/settings/$table" params={{ programmeId, table: mending.to }}>
          {text}
        </Link>
      );
  }
}
