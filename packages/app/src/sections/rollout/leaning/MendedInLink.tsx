import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { mendedIn } from './leaning.ts';

/** The way to where that is mended which a plan leans on. */
export function MendedInLink(props: {
  readonly problem: RolloutSheet['problems'][number];
  readonly programmeId: string;
}) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const { problem, programmeId } = props;
  const where = mendedIn(problem);
  if (where === null) return null;
  const text = (name: string) => say('rolloutPlans.leans_mend', { where: name });
  const params = { programmeId };
  switch (where.to) {
    case 'site':
      return (
        <Link className="on-screen" to="/p/$programmeId/sites/$siteId" params={{ ...params, siteId: where.siteId }}>
          {text(where.siteId)}
        </Link>
      );
    case 'table':
      return (
        <Link className="on-screen" to="/p/$programmeId/settings/$table" params={{ ...params, table: where.table }}>
          {text(words.tableOfAll(where.table))}
        </Link>
      );
    case 'kit':
      return (
        <Link className="on-screen" to="/p/$programmeId/kit" params={params}>
          {text(say('rolloutPlans.leans_kit'))}
        </Link>
      );
    case 'sites':
      return (
        <Link className="on-screen" to="/p/$programmeId/rollout/sites" params={params}>
          {text(say('rolloutPlans.leans_sites'))}
        </Link>
      );
    default:
      return (
        <Link className="on-screen" to="/p/$programmeId/settings" params={params}>
          {text(say('rolloutPlans.leans_settings'))}
        </Link>
      );
  }
}
