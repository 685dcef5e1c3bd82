import {
  type DemandPurpose,
  type DownpipeFacts,
  type GutterFacts,
  isoDay,
  type PipeFacts,
  type RoofFacts,
  type SiteFacts,
  type TankFacts,
} from '@eavewell/engine';
import type { AppMessageKey, MessageValues } from '@eavewell/words/app';
import type { RowChange } from '../api/client.ts';
import type { Drafted } from './draftedSite.ts';

/** A row of the programme as the program gives it. */
export interface RowThere {
  readonly table: string;
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** Something to be told of what is kept, or of why nothing is. */
export interface KeptSaid {
  readonly key: AppMessageKey;
  readonly values: MessageValues;
}

/** What has to be written for the tables to give the drafted facts. */
export interface KeptRows {
  /** One record; empty where something stands against it. */
  readonly changes: readonly RowChange[];
  /** Why it cannot be kept; empty where it can. */
  readonly refused: readonly KeptSaid[];
  /** What is still to be done beside it. */
  readonly told: readonly KeptSaid[];
}

/** What stands in a cell: null is an empty one. */
type Cell = string | null;
/** What a cell is read as. */
type Fact = string | number | null;
type NewCells = Readonly<Record<string, Cell>>;

/** What is gathered while the tables are compared. */
interface Gathered {
  readonly siteId: string;
  readonly rows: readonly RowThere[];
  readonly changes: RowChange[];
  readonly refused: KeptSaid[];
}

const keyOf = (...ids: readonly string[]) => ids.join('/');
const cellOf = (value: Fact): Cell => (value === null ? null : String(value));

/**
 * What has to be written so that the programme's tables give exactly the drafted facts?
 *
 * @param before - the facts as the tables give them
 * @param after - the drafted facts, with the parts that tanks are
 * @param rows - the rows of the site: those of sites, roofs, diverters, tanks and demand that name it
 * @returns the changes, with what stood there before; none where a row is not there, and then why
 */
export function keptRows(before: SiteFacts, after: Drafted, rows: readonly RowThere[]): KeptRows {
  const { siteId } = before;
  const gathered: Gathered = { siteId, rows, changes: [], refused: [] };
  keepSite(gathered, before, after.site);
  keepTanks(gathered, before.tanks, after);
  keepRoofs(gathered, before.roofs, after.site.roofs);
  keepFittings(gathered, guttersCompared, before.gutters, after.site.gutters);
  keepFittings(gathered, downpipesCompared, before.downpipes, after.site.downpipes);
  keepFittings(gathered, pipesCompared, before.pipes, after.site.pipes);
  keepDemand(gathered, before.demand, after.site.demand);
  const told: KeptSaid[] =
    after.others_people > 0 ? [{ key: 'water.other_site_to_make', values: { people: after.others_people } }] : [];
  const { changes, refused } = gathered;
  return refused.length > 0 ? { changes: [], refused, told: [] } : { changes, refused, told };
}

function keepSite(gathered: Gathered, before: SiteFacts, after: SiteFacts): void {
  const cells: Record<string, Cell> = {};
  if (before.people !== after.people) cells['people'] = cellOf(after.people);
  if (before.tapHeight_m !== after.tapHeight_m) cells['tapHeight_m'] = cellOf(after.tapHeight_m);
  if (before.growthFraction_per_year !== after.growthFraction_per_year)
    cells['growthFraction_per_year'] = cellOf(after.growthFraction_per_year);
  if (before.secondSource?.secondSourceId !== after.secondSource?.secondSourceId)
    cells['secondSourceId'] = after.secondSource?.secondSourceId ?? null;
  const { people, growthFraction_per_year, secondSource, tapHeight_m } = before;
  const was = { people, tapHeight_m, growthFraction_per_year, secondSourceId: secondSource?.secondSourceId ?? null };
  edit(gathered, 'sites', gathered.siteId, cells, was);
}

/** Which column each fact of a tank stands in. */
const tankColumns = {
  ...{ nominal_L: 'nominal_L', outletHeight_m: 'outletHeight_m', overflowHeight_m: 'overflowHeight_m' },
  ...{ diameter_m: 'diameter_m', joinedTo: 'joinedTo', role: 'role', peopleFraction: 'peopleFraction' },
  ...{ height_m: 'height_m', standHeight_m: 'standHeight_m', inletHeight_m: 'inletHeight_m', cells_count: 'cells' },
  ...{ overflowBore_mm: 'overflowBore_mm', overflows_count: 'overflows', overflowScreen: 'overflowScreen' },
  ...{ emptyMass_kg: 'emptyMass_kg', standMass_kg: 'standMass_kg', groundClass: 'groundClass', pads_count: 'pads' },
  ...{ padSide_m: 'padSide_m', baseWidth_m: 'baseWidth_m', isFastened: 'fastened' },
  ...{ signedBy: 'signedBy', signedOn: 'signedOn' },
} as const satisfies Readonly<Partial<Record<keyof TankFacts, string>>>;

/** A fact of a tank as its cell has it. */
function tankCell(tank: TankFacts, fact: keyof typeof tankColumns): Cell {
  if (fact === 'signedOn') return tank.signedOn === null ? null : isoDay(tank.signedOn);
  if (fact === 'isFastened') return tank.isFastened === null ? null : tank.isFastened ? 'yes' : 'no';
  return cellOf(tank[fact]);
}

function keepTanks(gathered: Gathered, before: readonly TankFacts[], { site, bought }: Drafted): void {
  const { siteId } = gathered;
  for (const tank of before) {
    const after = site.tanks.find(({ tankId }) => tankId === tank.tankId);
    const key = keyOf(siteId, tank.tankId);
    if (after === undefined) remove(gathered, 'tanks', key);
    else edit(gathered, 'tanks', key, tankCells(tank, after, bought), tankFacts(tank));
  }
  for (const tank of site.tanks) {
    if (before.some(({ tankId }) => tankId === tank.tankId)) continue;
    const cells = tankCells(null, tank, bought);
    add(gathered, 'tanks', keyOf(siteId, tank.tankId), { siteId, tankId: tank.tankId, ...cells });
  }
}

/** The facts of a tank by their columns; an empty cell of a choice or a day says nothing of what somebody wrote. */
function tankFacts(tank: TankFacts): Readonly<Record<string, unknown>> {
  const unsaid = ['role', 'overflowScreen', 'isFastened', 'signedOn'];
  return Object.fromEntries(
    Object.entries(tankColumns).map(([fact, column]) => [
      column,
      unsaid.includes(fact) ? undefined : tank[fact as keyof typeof tankColumns],
    ]),
  );
}

/** Cells of a tank that are not as they were. */
function tankCells(before: TankFacts | null, after: TankFacts, bought: Drafted['bought']): NewCells {
  const cells: Record<string, Cell> = {};
  for (const fact of Object.keys(tankColumns) as (keyof typeof tankColumns)[])
    if (before === null || before[fact] !== after[fact]) cells[tankColumns[fact]] = tankCell(after, fact);
  const partId = bought.get(after.tankId);
  if (partId !== undefined) cells['partId'] = partId;
  else if (before !== null && after.partVolume_L === null) cells['partId'] = null;
  return cells;
}

function keepRoofs(gathered: Gathered, before: readonly RoofFacts[], after: readonly RoofFacts[]): void {
  for (const roof of after) {
    const was = before.find(({ roofId }) => roofId === roof.roofId);
    const key = keyOf(gathered.siteId, roof.roofId);
    const cells: Record<string, Cell> = {};
    if (was?.gutteredFraction !== roof.gutteredFraction) cells['gutteredFraction'] = cellOf(roof.gutteredFraction);
    if (was?.tankId !== roof.tankId) cells['tankId'] = roof.tankId;
    edit(gathered, 'roofs', key, cells, was ?? {});
    keepDiverter(gathered, was?.diverter ?? null, roof);
  }
}

/** What the rows of one table are compared by: their ids, and which column each fact stands in. */
interface Compared<Row> {
  readonly table: 'gutters' | 'downpipes' | 'pipes';
  readonly id: keyof Row & string;
  readonly columns: Readonly<Partial<Record<keyof Row & string, string>>>;
}

const guttersCompared: Compared<GutterFacts> = {
  table: 'gutters',
  id: 'gutterId',
  columns: {
    ...{ roofId: 'roofId', shape: 'shape', width_mm: 'width_mm', depth_mm: 'depth_mm', length_m: 'length_m' },
    ...{ fall_mm_per_m: 'fall_mm_per_m', outlet_mm: 'outlet_mm', baseWidth_mm: 'baseWidth_mm' },
    ...{ outlets_count: 'outlets', runToOutlet_m: 'runToOutlet_m', bends_count: 'bends', outletGrate: 'outletGrate' },
  },
};

const downpipesCompared: Compared<DownpipeFacts> = {
  table: 'downpipes',
  id: 'downpipeId',
  columns: { roofId: 'roofId', bore_mm: 'bore_mm', length_m: 'length_m' },
};

const pipesCompared: Compared<PipeFacts> = {
  table: 'pipes',
  id: 'pipeId',
  columns: {
    ...{ leg: 'leg', tankId: 'tankId', bore_mm: 'bore_mm', length_m: 'length_m', material: 'material' },
    ...{ elbows_count: 'elbows', tees_count: 'tees', valves_count: 'valves', meters_count: 'meters' },
    otherLoss_k: 'otherLoss_k',
  },
};

/** Rows of gutters and pipes: those that changed, new ones and those that are gone. */
function keepFittings<Row extends object>(
  gathered: Gathered,
  { table, id, columns }: Compared<Row>,
  before: readonly Row[],
  after: readonly Row[],
): void {
  if (before === after) return;
  const { siteId } = gathered;
  const idOf = (row: Row) => String(row[id]);
  const cellsOf = (row: Row): Readonly<Record<string, Fact>> =>
    Object.fromEntries(Object.entries(columns).map(([fact, column]) => [column, row[fact as keyof Row] as Fact]));
  for (const row of before)
    if (!after.some((one) => idOf(one) === idOf(row))) remove(gathered, table, keyOf(siteId, idOf(row)));
  for (const row of after) {
    const was = before.find((one) => idOf(one) === idOf(row));
    if (was === row) continue;
    const now = cellsOf(row);
    const key = keyOf(siteId, idOf(row));
    if (was === undefined) {
      const cells = Object.fromEntries(Object.entries(now).map(([column, fact]) => [column, cellOf(fact)]));
      add(gathered, table, key, { siteId, [id]: idOf(row), ...cells });
      continue;
    }
    const stood = cellsOf(was);
    const changed = Object.entries(now).filter(([column, fact]) => fact !== stood[column]);
    const cells = Object.fromEntries(changed.map(([column, fact]) => [column, cellOf(fact)]));
    edit(gathered, table, key, cells, stood);
  }
}

function keepDiverter(gathered: Gathered, was: RoofFacts['diverter'], { roofId, diverter }: RoofFacts): void {
  if (diverter === null || was?.firstFlush_mm === diverter.firstFlush_mm) return;
  const { siteId } = gathered;
  const firstFlush_mm = cellOf(diverter.firstFlush_mm);
  if (was === null) add(gathered, 'diverters', keyOf(siteId, roofId), { siteId, roofId, firstFlush_mm });
  else edit(gathered, 'diverters', keyOf(siteId, roofId), { firstFlush_mm }, was);
}

/** The site's own rows of demand; where it had none, those of the programme become its own. */
function keepDemand(gathered: Gathered, before: readonly DemandPurpose[], after: readonly DemandPurpose[]): void {
  if (before === after || JSON.stringify(before) === JSON.stringify(after)) return;
  const { siteId, rows } = gathered;
  if (after.length === 0) {
    gathered.refused.push({ key: 'water.demand_would_be_empty', values: {} });
    return;
  }
  const own = rows.filter(({ table }) => table === 'demand');
  if (own.length === 0) {
    for (const purpose of after) add(gathered, 'demand', keyOf(siteId, purpose.purpose), demandCells(siteId, purpose));
    return;
  }
  for (const purpose of before) {
    const now = after.find((one) => one.purpose === purpose.purpose);
    const key = keyOf(siteId, purpose.purpose);
    if (now === undefined) remove(gathered, 'demand', key);
    else if (now.litres_per_person_per_day !== purpose.litres_per_person_per_day)
      edit(gathered, 'demand', key, { litres_per_person_per_day: cellOf(now.litres_per_person_per_day) }, purpose);
  }
}

function demandCells(siteId: string, { purpose, litres_per_person_per_day, judged, months }: DemandPurpose): NewCells {
  return {
    siteId,
    purpose,
    litres_per_person_per_day: cellOf(litres_per_person_per_day),
    judged: judged ? 'yes' : 'no',
    months: months === undefined ? null : months.join(';'),
  };
}

function rowOf({ rows, refused }: Gathered, table: string, key: string): RowThere | null {
  const found = rows.find((row) => row.table === table && row.key === key);
  if (found === undefined) refused.push({ key: 'water.row_gone', values: { row: key } });
  return found ?? null;
}

/** Edits the cells of a row, unless somebody else changed one of them since the facts were read. */
function edit(gathered: Gathered, table: string, key: string, cells: NewCells, was: object): void {
  if (Object.keys(cells).length === 0) return;
  const row = rowOf(gathered, table, key);
  if (row === null) return;
  if (Object.keys(cells).some((column) => isOther(row.cells[column], (was as Record<string, unknown>)[column]))) {
    gathered.refused.push({ key: 'water.row_changed', values: { row: key } });
    return;
  }
  const changed = Object.entries(cells).filter(([column, cell]) => cell !== (row.cells[column] ?? null));
  if (changed.length === 0) return;
  const before = Object.fromEntries(changed.map(([column]) => [column, row.cells[column] ?? null]));
  gathered.changes.push({ kind: 'edited', table, key, before, after: Object.fromEntries(changed) });
}

/** Is the cell surely another value than the fact that was read of it? Undefined where the facts do not say. */
function isOther(cell: string | undefined, fact: unknown): boolean {
  if (fact === undefined) return false;
  if (cell === undefined || fact === null) return (cell ?? null) !== fact;
  if (typeof fact !== 'number') return cell !== fact;
  // A cell may be written in another way than figures are kept here.
  return Number.isFinite(Number(cell)) && Number(cell) !== fact;
}

function remove(gathered: Gathered, table: string, key: string): void {
  const row = rowOf(gathered, table, key);
  if (row !== null) gathered.changes.push({ kind: 'removed', table, key, before: { ...row.cells } });
}

function add({ rows, changes, refused }: Gathered, table: string, key: string, cells: NewCells): void {
  if (rows.some((row) => row.table === table && row.key === key)) {
    refused.push({ key: 'water.row_there', values: { row: key } });
    return;
  }
  const after = Object.fromEntries(Object.entries(cells).filter((cell): cell is [string, string] => cell[1] !== null));
  changes.push({ kind: 'added', table, key, after });
}
