import type { RowNow } from '../../forms/draft.ts';
import { nextId } from '../../forms/options.ts';
import type { FormSection } from '../../forms/TablesForm.tsx';

/** Tables whose rows the cells of a site may name. */
export const namedBySites = ['gauges', 'parts', 'targets', 'presence', 'secondSources'] as const;

/** Ids of new rows of a site begin with these letters where there are none yet. */
const letters = {
  roofs: ['roofId', 'R'],
  gutters: ['gutterId', 'G'],
  downpipes: ['downpipeId', 'D'],
  tanks: ['tankId', 'T'],
  pipes: ['pipeId', 'P'],
  treatmentUnits: ['serial', 'U'],
  cartridges: ['serial', 'C'],
  barriers: ['barrierId', 'B'],
  waterTests: ['testId', 'W'],
} as const;

/**
 * The tables of a site in a form.
 *
 * @param siteId - the site [text]
 * @param rows - its rows, with those that are being added
 * @param isNew - the site itself is new: its id is asked for
 */
export function siteSections(siteId: string, rows: readonly RowNow[], isNew: boolean): readonly FormSection[] {
  const idFor = (table: keyof typeof letters) => {
    const [column, letter] = letters[table];
    const ids = rows.filter((row) => row.table === table).map((row) => row.cells[column] ?? '');
    return { siteId, [column]: nextId(ids, letter) };
  };
  const hidden = ['siteId'];
  return [
    { table: 'sites', hidden: isNew ? [] : hidden, isGrowing: false, newRow: () => ({}) },
    { table: 'roofs', hidden, isGrowing: true, newRow: () => idFor('roofs') },
    { table: 'gutters', hidden, isGrowing: true, newRow: () => idFor('gutters') },
    { table: 'downpipes', hidden, isGrowing: true, newRow: () => idFor('downpipes') },
    { table: 'tanks', hidden, isGrowing: true, newRow: () => idFor('tanks') },
    { table: 'pipes', hidden, isGrowing: true, newRow: () => ({ ...idFor('pipes'), leg: 'tankToUnit' }) },
    { table: 'diverters', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'treatmentUnits', hidden, isGrowing: true, newRow: () => idFor('treatmentUnits') },
    { table: 'cartridges', hidden, isGrowing: true, newRow: () => idFor('cartridges') },
    { table: 'flowReadings', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'pressureTests', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'rawWater', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'barriers', hidden, isGrowing: true, newRow: () => idFor('barriers') },
    { table: 'chlorination', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'waterTests', hidden, isGrowing: true, newRow: () => idFor('waterTests') },
    { table: 'testPortions', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'inspections', hidden, isGrowing: true, newRow: () => ({ siteId }) },
    { table: 'demand', hidden, isGrowing: true, newRow: () => ({ siteId, judged: 'yes' }) },
  ];
}
