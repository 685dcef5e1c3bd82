import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { TableRow } from '../../offline/outbox.ts';
import { useRowsWithKept } from '../../offline/useKept.ts';

/** What tells of which facts an answer about a site is. */
interface SiteAnswer {
  readonly version: number;
  readonly designVersion: number | null;
  readonly done_fraction: number;
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

/** Said over what is of before: it is being worked out, and nothing of it hangs beside a tap yet. */
export function CupOfBefore() {
  const { say } = useLanguage();
  return (
    <p className="trouble cup-of-before" role="status">
      <strong>{say('safety.paper_again')}.</strong> {say('safety.again_more')}
    </p>
  );
}
