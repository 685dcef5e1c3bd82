import { folderTables, readRows } from '@eavewell/tables';
import { csvText } from './csvText.ts';
import { edited, type FilesToKeep } from './keepPositions.ts';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** The tables a plan is kept in; what names another row comes after it. */
const planTables = ['plans', 'planTrips', 'planStops'] as const;

/** Rows of plans, cells as text. */
export type PlanTables = Readonly<Record<(typeof planTables)[number], readonly Readonly<Record<string, string>>[]>>;

/**
 * Which files do plans come to that stand by themselves?
 *
 * @param plans - their rows
 * @returns the text of each table, by the name its file has in every programme [text]
 * @law laid into the folder of their programme, or taken in, they are plans it keeps
 * @definition ours: docs/decisions/0409-the-command-keeps-its-plan.md
 */
export function filesOfPlans(plans: PlanTables): ReadonlyMap<string, string> {
  return new Map(
    planTables.map((name) => [folderTables[name].file, csvText(Object.keys(folderTables[name].columns), plans[name])]),
  );
}

/**
 * Which files would change if a folder kept a plan more, and how? Rows that stand stay as they are, save for that no other plan is in force where this one is
 * to be; nothing is written yet.
 *
 * @param folder - the programme folder [text]
 * @param plans - the rows of a plan whose id is free
 * @returns the files by name; or the problem, and then none is to be written
 * @problem positions.table_encoding - a table is not in UTF-8
 * @problem positions.table_broken - a table that is there cannot be changed surely
 * @definition ours: docs/decisions/0409-the-command-keeps-its-plan.md
 */
export async function withPlan(folder: string, plans: PlanTables): Promise<FilesToKeep> {
  const files = new Map<string, Uint8Array | string>();
  const isFollowed = plans.plans.some(({ isInForce }) => isInForce === 'yes');
  for (const name of planTables) {
    const table = folderTables[name];
    const present = await readFileBytes(folder, table.file);
    if (present.bytes === null && present.problem) return { problem: present.problem };
    if (present.bytes === null || present.bytes.length === 0) {
      files.set(table.file, filesOfPlans(plans).get(table.file)!);
      continue;
    }
    const rows = name === 'plans' && isFollowed ? followedIn(present.bytes) : [];
    const made = await edited(folder, { table, added: plans[name], rows });
    if ('code' in made) return { problem: made };
    files.set(table.file, made);
  }
  return { files };
}

/** The rows of plans in force, to be so no longer. */
function followedIn(bytes: Uint8Array) {
  const table = folderTables.plans;
  const csv = readCsvFile(bytes, { file: table.file, columns: Object.keys(table.columns), needed: true });
  const read = readRows(table, csv.header, csv.rows, { file: table.file, decimalComma: csv.decimalComma });
  return read.rows
    .filter(({ values }) => values.isInForce === true)
    .map(({ row }) => ({ row, values: { isInForce: 'no' } }));
}
