import * as kernel from '../../packages/engine/src/kernel/index.ts';
import * as parts from '../../packages/engine/src/parts/index.ts';
import * as cost from '../../packages/engine/src/programme/cost/index.ts';
import * as loads from '../../packages/engine/src/programme/loads/index.ts';
import * as rollout from '../../packages/engine/src/programme/rollout/index.ts';
import * as chlorine from '../../packages/engine/src/water/chlorine/index.ts';
import * as drainage from '../../packages/engine/src/water/drainage/index.ts';
import * as head from '../../packages/engine/src/water/head/index.ts';
import * as people from '../../packages/engine/src/water/people/index.ts';
import * as rain from '../../packages/engine/src/water/rain/index.ts';
import * as roof from '../../packages/engine/src/water/roof/index.ts';
import * as safety from '../../packages/engine/src/water/safety/index.ts';
import * as settling from '../../packages/engine/src/water/settling/index.ts';
import * as stand from '../../packages/engine/src/water/stand/index.ts';
import * as storage from '../../packages/engine/src/water/storage/index.ts';
import * as storm from '../../packages/engine/src/water/storm/index.ts';
import * as treatment from '../../packages/engine/src/water/treatment/index.ts';
import * as waterTests from '../../packages/engine/src/water/waterTests/index.ts';
import * as wear from '../../packages/engine/src/water/wear/index.ts';
import { dlyLines } from '../../packages/formats/src/stationDly.ts';
import { readStationRain } from '../../packages/tables/src/index.ts';
import { everyFile } from './everyFile.ts';
import { type PublishedRow, printedNumber, rowFault, toleranceOf } from './published.ts';

/** The rooms whose methods are listed. A function a door exports appears by itself. */
const rooms: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  chlorine,
  cost,
  drainage,
  kernel,
  loads,
  parts,
  people,
  rain,
  rollout,
  roof,
  safety,
  settling,
  stand,
  storage,
  storm,
  treatment,
  waterTests,
  head,
  wear,
  files: { dlyLines, readStationRain },
};

/** What the doors export beside methods: makers and writers of problems, working and dice, and orders of words. */
export const noMethods: readonly string[] = [
  'engineProblem',
  'explain',
  'problemMaker',
  'rainWorking',
  'crewTripsOf',
  'retiming',
  'setDrawn',
  'seedFor',
  'seededDice',
  'cellName',
  'workingInput',
];

interface Listed {
  readonly source: string;
  readonly method: string;
  readonly row: PublishedRow;
}

/** Every published row with its source and the method it checks. */
export function everyRow(): readonly Listed[] {
  return everyFile.flatMap(({ source, method, rows }) =>
    rows.map((row) => ({ source, method: row.method ?? method, row })),
  );
}

/** What the doors of the rooms export: `room` by name. Functions are methods; constants only where a row checks them. */
export function exportedNames(): ReadonlyMap<string, { readonly room: string; readonly isMethod: boolean }> {
  const names = new Map<string, { room: string; isMethod: boolean }>();
  for (const [room, door] of Object.entries(rooms)) {
    for (const [name, value] of Object.entries(door)) {
      names.set(name, { room, isMethod: typeof value === 'function' && !noMethods.includes(name) });
    }
  }
  return names;
}

/**
 * The page of methods against published figures: those without one first, then the others with their sources, then every
 * printed figure that does not follow from its own inputs.
 */
export function publishedPage(): string {
  const rows = everyRow();
  const bySource = new Map<string, Map<string, number>>();
  for (const { method, source, row } of rows) {
    const named = row.fromMemory ? `${source}, from memory` : source;
    const counts = bySource.get(method) ?? new Map<string, number>();
    bySource.set(method, counts.set(named, (counts.get(named) ?? 0) + 1));
  }
  const methods = [...exportedNames()].filter(([name, { isMethod }]) => isMethod || bySource.has(name));
  methods.sort(([a, { room: roomA }], [b, { room: roomB }]) => compare(roomA, roomB) || compare(a, b));
  const without = methods.filter(([name]) => !bySource.has(name));
  const withRows = methods.filter(([name]) => bySource.has(name));
  const lines = [
    '# Methods against published figures',
    '',
    'Made by `npm run generate` from `checks/published`; do not edit. A row is a figure printed by someone else. Methods that',
    'are ours have none and stand first: what proves them is beside their source, in `checks/laws` and in `checks/twins`.',
    `Makers and writers are not counted as methods: ${noMethods.join(', ')}.`,
    '',
    `## Without a published figure: ${without.length}`,
    '',
    '| room | method |',
    '|---|---|',
    ...without.map(([name, { room }]) => `| ${room} | \`${name}\` |`),
    '',
    `## With published figures: ${withRows.length} methods, ${rows.length} rows`,
    '',
    '| room | method | rows | sources |',
    '|---|---|---:|---|',
    ...withRows.map(([name, { room }]) => {
      const counts = [...bySource.get(name)!].sort(([a], [b]) => compare(a, b));
      const total = counts.reduce((sum, [, count]) => sum + count, 0);
      return `| ${room} | \`${name}\` | ${total} | ${counts.map(([named, count]) => `${named} (${count})`).join('; ')} |`;
    }),
    '',
    '## Printed figures that do not follow from their own inputs',
    '',
    '| source, place | printed | follows | got | why |',
    '|---|---:|---:|---:|---|',
    ...rows.filter(({ row }) => row.follows).map(({ source, row }) => misprintLine(source, row)),
    '',
    '## Rows with a wider tolerance than half the last printed digit',
    '',
    '| source, place | printed | got | tolerance | why |',
    '|---|---:|---:|---:|---|',
    ...rows.filter(({ row }) => row.tolerance).map(({ source, row }) => wideLine(source, row)),
    '',
  ];
  return lines.join('\n');
}

function misprintLine(source: string, row: PublishedRow): string {
  const { value, reason } = row.follows!;
  return `| ${source}, ${row.place} | ${row.printed} | ${value} | ${shown(row)} | ${reason} |`;
}

function wideLine(source: string, row: PublishedRow): string {
  return `| ${source}, ${row.place} | ${row.printed} | ${shown(row)} | ${toleranceOf(row)} | ${row.tolerance!.reason} |`;
}

/** What came of a row, to seven digits; a row that is wrong says so on the page too. */
function shown(row: PublishedRow): string {
  const got = row.got();
  const text = printedNumber(row) === null ? String(got) : String(Number(Number(got).toPrecision(7)));
  return rowFault(row) === null ? text : `${text} (not met)`;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
