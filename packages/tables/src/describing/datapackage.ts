import { type FolderTableName, folderTableNames, folderTables } from '../contract/allTables.ts';
import { rain } from '../contract/rain.ts';
import type { Table } from '../contract/table.ts';
import { type Json, profiles, tableSchema } from './tableSchema.ts';

/** What stands in a programme folder. */
export interface FolderContent {
  readonly title: string;
  readonly tables: readonly FolderTableName[];
  readonly gaugeIds: readonly string[];
  readonly hasSettings: boolean;
}

function resource(name: string, path: string, table: Table, present: readonly string[]): Json {
  const links = table.foreignKeys.filter((link) => present.includes(link.table));
  return {
    $schema: profiles.resource,
    name: resourceName(name),
    path,
    type: 'table',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    description: table.about,
    schema: tableSchema({ ...table, foreignKeys: links }),
  };
}

/** The name of a table as the standard has names: small letters, words joined by `-`. */
function resourceName(table: string): string {
  return table.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

/** A name of the standard: small letters, digits, `.`, `_` and `-`. */
function packageName(title: string): string {
  const name = title
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return name === '' ? 'programme' : name;
}

/** Ids that differ only by case get a number, so that no name stands twice. */
function rainNames(gaugeIds: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return gaugeIds.map((gaugeId) => {
    const plain = `rain-${gaugeId.toLowerCase()}`;
    let name = plain;
    for (let n = 2; taken.has(name); n++) name = `${plain}.${n}`;
    taken.add(name);
    return name;
  });
}

/**
 * How does the open Data Package standard describe this folder?
 *
 * @param content - the tables, gauges and settings that stand in it
 * @returns the descriptor, as it stands in datapackage.json
 * @source Data Package standard v2.0
 * @law every path is relative and inside the folder
 */
export function datapackage(content: FolderContent): { readonly [key: string]: Json } {
  const present = folderTableNames.filter((name) => content.tables.includes(name));
  const names = rainNames(content.gaugeIds);
  return {
    $schema: profiles.package,
    name: packageName(content.title),
    title: content.title,
    resources: [
      ...present.map((name) => resource(name, folderTables[name].file, folderTables[name], present)),
      ...content.gaugeIds.map((gaugeId, i) => resource(names[i]!, `rain/${gaugeId}.csv`, rain, present)),
      ...(content.hasSettings
        ? [
            {
              $schema: profiles.resource,
              name: 'settings',
              path: 'settings.json',
              format: 'json',
              mediatype: 'application/json',
              encoding: 'utf-8',
            },
          ]
        : []),
    ],
  };
}
