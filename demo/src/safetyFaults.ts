import { changed, type DraftProgramme, type LaterTable, type PlantedFault, type Row } from './draft.ts';
import { unitFigures, unitParts } from './units.ts';

/** A slip in a cell of a sample that leaves the cup of its site unknown. */
interface Slip {
  readonly table: LaterTable;
  readonly column: string;
  readonly value: number;
  readonly about: string;
}

const slips: readonly Slip[] = [
  { table: 'testPortions', column: 'positive', value: -1, about: 'fewer tubes than none turned' },
  { table: 'testPortions', column: 'volume_mL', value: 0, about: 'tubes without water' },
  { table: 'waterTests', column: 'pH', value: 71, about: 'a point forgotten in a pH' },
  { table: 'waterTests', column: 'waterTemperature_C', value: 79, about: 'water in °F' },
];

/**
 * Plants what may be wrong with samples and units: at the sites that have another station in doubt first, so that most stay sound.
 *
 * @param draft - the programme
 * @param sites - ids of sites, those to be taken first in front
 * @returns the faults; fewer where there are no such sites left
 */
export function plantSafetyFaults(draft: DraftProgramme, sites: readonly string[]): PlantedFault[] {
  const rowsOf = (table: LaterTable) => draft.tables[table] ?? [];
  const left = [...new Set(sites)].filter((id) => rowsOf('treatmentUnits').some(({ siteId }) => siteId === id));
  const take = (suits: (siteId: string) => boolean): string | undefined => {
    const at = left.findIndex(suits);
    return at < 0 ? undefined : left.splice(at, 1)[0];
  };
  const planted: PlantedFault[] = [];
  const unshown = take(() => true);
  if (unshown !== undefined) planted.push(...oldUnit(draft, unshown));
  for (const slip of slips) {
    const indexAt = (id: string) =>
      rowsOf(slip.table).findIndex((row) => row['siteId'] === id && typeof row[slip.column] === 'number');
    const siteId = take((id) => indexAt(id) >= 0);
    if (siteId !== undefined) planted.push(cellAt(draft, slip, siteId, indexAt(siteId)));
  }
  return [...planted, ...knownBefore(draft)];
}

function cellAt(
  draft: DraftProgramme,
  { table, column, value, about }: Slip,
  siteId: string,
  index: number,
): PlantedFault {
  const rows = draft.tables[table]!;
  draft.tables[table] = rows.with(index, changed(rows[index]!, { [column]: value }));
  return { file: `${table}.csv`, row: index + 2, column, code: 'cell.out_of_range', about, siteId, station: 'cup' };
}

/** A part with its pore in µm and log reductions that nothing shows, and a site whose units are of it. */
function oldUnit(draft: DraftProgramme, siteId: string): PlantedFault[] {
  const part: Row = {
    ...{ partId: unitParts.old, kind: 'treatmentUnit', name: 'treatment unit of the first year' },
    ...unitFigures.plain,
    ...{ pore_nm: 0.015, viruses_log10: 4, evidence: null, evidenceSource: null },
  };
  draft.tables.parts = [...draft.tables.parts, part];
  const units = draft.tables.treatmentUnits!;
  draft.tables.treatmentUnits = units.map((row) =>
    row['siteId'] === siteId ? changed(row, { partId: unitParts.old }) : row,
  );
  const inParts = { file: 'parts.csv', row: draft.tables.parts.length + 1 };
  return [
    { ...inParts, column: 'pore_nm', code: 'cell.other_unit', about: 'a pore in µm' },
    {
      ...{ file: 'treatmentUnits.csv', row: units.findIndex((row) => row['siteId'] === siteId) + 2 },
      ...{ column: 'partId', code: 'safety.no_evidence', about: 'log reductions that nothing shows', siteId },
      station: 'cup',
    },
  ];
}

/** What is no slip of a cell: every tube of a sample turned, and a sample taken before hand-over. They are told where they stand. */
function knownBefore({ tables: { testPortions = [], waterTests = [], sites } }: DraftProgramme): PlantedFault[] {
  // Where fewer than ten turned, other volumes of the sample may have stayed clear.
  const full = testPortions.findIndex(({ portions, positive }) => portions === 10 && positive === portions);
  const handOver = new Map(sites.map(({ siteId, handOverDay }) => [siteId, handOverDay]));
  const early = waterTests.findIndex(({ siteId, takenOn }) => String(takenOn) < String(handOver.get(siteId!) ?? ''));
  const at = (file: string, index: number, column: string) => ({ file, row: index + 2, column });
  const found: PlantedFault[] = [];
  if (full >= 0) {
    const siteId = String(testPortions[full]!['siteId']);
    const about = 'every tube of a sample turned';
    const code = 'waterTests.all_positive';
    found.push({ ...at('testPortions.csv', full, 'positive'), code, about, siteId, station: 'cup' });
  }
  if (early >= 0) {
    const about = 'a sample taken before hand-over';
    found.push({ ...at('waterTests.csv', early, 'takenOn'), code: 'waterTests.before_handover', about });
  }
  return found;
}
