import { isoDay, plainWork, type SiteWork } from '@eavewell/engine';
import { skillsOf } from './crewRows.ts';
import { daysAsked, isTurned, type RolloutRows, type RowOf } from './rolloutRows.ts';

function installOf({ values }: RowOf<'sites'>) {
  return daysAsked(values.installLow_days, values.installLikely_days, values.installHigh_days);
}

/** Tells what is wrong with what the rollout asks of sites. */
export function checkWork(rows: RolloutRows): void {
  const place = { code: 'link.unknown_place', expected: 'a siteId or placeId', wholeRow: false } as const;
  rows.link(['sites', 'place'], rows.ends, place);
  const skills = new Set(rows.all('crews').flatMap(({ values }) => skillsOf(values.skills)));
  // A crew that could not be read may have it.
  const areCrewsKnown = rows.all('crews').length > 0 && rows.tables.crews!.lost.length === 0;
  for (const row of rows.used('sites')) {
    const { readyFrom, finishBy, priority_factor, priorityReason, skill } = row.values;
    const at = (column: string, code: Parameters<typeof rows.at>[3]) => rows.at('sites', row, column, code, false);
    const install = installOf(row);
    if (install !== null && isTurned(install))
      rows.fault(at('installLikely_days', 'rollout.range_turned'), { ...install });
    if (readyFrom !== null && finishBy !== null && finishBy < readyFrom) {
      const link = { ...at('finishBy', 'rollout.deadline_before_ready'), id: isoDay(finishBy) };
      rows.remark(link, { ready: isoDay(readyFrom) });
    }
    if ((priority_factor ?? 1) !== 1 && priorityReason === null)
      rows.remark(at('priorityReason', 'rollout.priority_unexplained'), { value: priority_factor! });
    if (areCrewsKnown && skill !== null && !skills.has(skill))
      rows.remark(at('skill', 'link.skill_unused'), { likely: '' });
  }
}

/** What the rollout asks of every site of the table; of one whose row could not be used nothing is known. */
export function workOf(rows: RolloutRows): readonly SiteWork[] {
  const known = rows.used('sites').map((row) => {
    const {
      siteId,
      readyFrom,
      finishBy,
      workMonths,
      priority_factor,
      priorityReason,
      agreedOn,
      skill,
      weatherArea,
      area,
    } = row.values;
    const install = installOf(row);
    return {
      ...{ siteId: siteId!, place: rows.linked('sites', row, 'place') ?? siteId!, readyFrom, finishBy },
      ...{ workMonths: workMonths ?? [], priority_factor: priority_factor ?? 1, priorityReason, agreedOn },
      ...{ install_days: install !== null && isTurned(install) ? null : install, skill, weatherArea, area },
    };
  });
  const ids = new Set(known.map(({ siteId }) => siteId));
  const lost = (rows.tables.sites?.lost ?? []).flatMap(({ keys: { siteId } }) => {
    if (siteId === undefined || ids.has(siteId)) return [];
    ids.add(siteId);
    return [{ siteId, place: siteId, ...plainWork }];
  });
  return [...known, ...lost];
}
