import { changed, type DraftProgramme, type PlantedFault } from './draft.ts';

/** Slips in the tables of the rollout. None leaves the water of a site in doubt. */
export function plantRolloutFaults(draft: DraftProgramme): readonly PlantedFault[] {
  return [...levelInCentimetres(draft), ...closureOfTwoMinds(draft), ...goodsOfNoPart(draft), ...daysInWords(draft)];
}

/** One reading of the river is in centimetres. */
function levelInCentimetres(draft: DraftProgramme): PlantedFault[] {
  const rows = draft.tables.riverLevels ?? [];
  const index = rows.findIndex(({ level_m }) => Number(level_m) > 2.5);
  if (index < 0) return [];
  const level_m = Math.round(Number(rows[index]!['level_m']) * 100);
  draft.tables.riverLevels = rows.with(index, changed(rows[index]!, { level_m }));
  const about = 'a level in centimetres';
  return [{ file: 'riverLevels.csv', row: index + 2, column: 'level_m', code: 'rollout.level_unlikely', about }];
}

/** A closure that has months and dates. */
function closureOfTwoMinds(draft: DraftProgramme): PlantedFault[] {
  const rows = draft.tables.closures;
  if (rows === undefined) return [];
  const again = { closureId: 'LOW2', wayId: 'W03', months: '9', from: '2027-09-01', to: '2027-10-15' };
  draft.tables.closures = [...rows, again];
  const about = 'a closure with months and dates';
  return [{ file: 'closures.csv', row: rows.length + 2, column: 'months', code: 'rollout.closure_when', about }];
}

/** Goods to come under an id that no part has. */
function goodsOfNoPart(draft: DraftProgramme): PlantedFault[] {
  const rows = draft.tables.arrivals;
  if (rows === undefined) return [];
  const again = changed(rows[0]!, { arrivalId: 'SHIP2-9', partId: 'toolboxes', quantity: 4 });
  draft.tables.arrivals = [...rows, again];
  const about = 'goods to come that are no part of the list';
  return [{ file: 'arrivals.csv', row: rows.length + 2, column: 'partId', code: 'link.unknown_part', about }];
}

/** A crew that is to come later, whose days of rest are in words. */
function daysInWords(draft: DraftProgramme): PlantedFault[] {
  const rows = draft.tables.crews;
  const carriers = draft.tables.crewCarriers;
  if (rows === undefined || carriers === undefined) return [];
  const late = { crewId: 'later', name: 'crew that comes later', from: '2028-01-10', restDays: 'Sundays' };
  draft.tables.crews = [...rows, changed(rows[0]!, late)];
  draft.tables.crewCarriers = [...carriers, { crewId: 'later', carrierId: 'tractor' }];
  const about = 'days of the week in words';
  return [{ file: 'crews.csv', row: rows.length + 2, column: 'restDays', code: 'cell.not_weekdays', about }];
}
