import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { TableRow } from '../../offline/outbox.ts';
import { useRowsWithKept } from '../../offline/useKept.ts';
import { WorkOutAgain } from '../sites/index.ts';

/** What tells of which facts an answer about a site is. */
interface SiteAnswer {
  readonly version: number;
  readonly designVersion: number | null;
  readonly done_fraction: number;
}

/** How far the verdicts are: worked out now, failed, or stopped by a person. */
export interface Standing {
  readonly done_fraction: number;
  readonly isFailed: boolean;
  readonly isCalledOff: boolean;
}

/** What is said of a verdict that is of before: the head, and what to do. Nobody is left to wait for what does not come. */
export function againWords({ isFailed, isCalledOff }: Standing) {
  if (isFailed) return { head: 'safety.again_failed', more: 'safety.again_failed_more', isStill: false } as const;
  if (isCalledOff) return { head: 'safety.again_failed', more: 'safety.again_stopped_more', isStill: false } as const;
  return { head: 'safety.paper_again', more: 'safety.again_more', isStill: true } as const;
}

/**
 * Is what is said of the cup of a site of before: were facts changed since, or is its first verdict still to come?
 *
 * @param site - as the server answers it
 * @param isKeptHere - do changes of the site wait in this browser, not sent yet?
 */
export const isCupOfBefore = ({ version, designVersion, done_fraction }: SiteAnswer, isKeptHere: boolean): boolean =>
  isKeptHere || (designVersion === null ? done_fraction < 1 : designVersion !== version);

/** The same on a page, with what waits in this browser. */
export function useIsCupOfBefore(
  programmeId: string,
  siteId: string,
  site: SiteAnswer & { readonly rows: readonly TableRow[] },
): boolean {
  return isCupOfBefore(site, useRowsWithKept(programmeId, siteId, site.rows) !== site.rows);
}

/** Said over what is of before: it is being worked out, or was not, and nothing of it hangs beside a tap yet. */
export function CupOfBefore({ programmeId, state }: { readonly programmeId: string; readonly state: Standing }) {
  const { say } = useLanguage();
  const { head, more, isStill } = againWords(state);
  return (
    <div className="trouble cup-of-before" role="status">
      <p>
        <strong>{say(head)}.</strong> {say(more)}
      </p>
      {isStill ? null : <WorkOutAgain programmeId={programmeId} isFailed={state.isFailed} />}
    </div>
  );
}
