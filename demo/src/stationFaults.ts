import { changed, type DraftProgramme, type PlantedFault, type Row } from './draft.ts';

type StationTable = 'sites' | 'gutters' | 'tanks';

/** A slip in one cell of a site that leaves one station of it unknown, or short. */
interface Slip {
  readonly table: StationTable;
  readonly station: 'gutter' | 'stand' | 'tap';
  readonly cells: Row;
  readonly column: string;
  readonly code: string;
  readonly about: string;
  /** Does the row lend itself to it? */
  readonly suits: (row: Row) => boolean;
}

const isAny = () => true;
const isOnStand = ({ groundClass }: Row) => typeof groundClass === 'string';

/** Those of one line stand at one site: it is left in doubt once, and shows each of its stations. */
const slipsBySite: readonly (readonly Slip[])[] = [
  [
    gutter({ fall_mm_per_m: 0 }, 'fall_mm_per_m', 'drainage.gutter_level', 'a gutter that is level'),
    tank({ groundClass: 'softOrMadeGround' }, 'stand.ground_to_investigate', 'a stand on made ground'),
  ],
  [
    gutter({ fall_mm_per_m: -4 }, 'fall_mm_per_m', 'drainage.gutter_backwards', 'a gutter that falls back'),
    tank({ groundClass: null }, 'stand.ground_unknown', 'ground nobody looked at'),
  ],
  [
    gutter({ outlet_mm: 400 }, 'outlet_mm', 'drainage.outlet_wider', 'an outlet wider than its gutter'),
    site(
      { windSpeed_m_per_s: '120 km/h' },
      'windSpeed_m_per_s',
      'cell.unit_in_number',
      'stand',
      'wind in another unit',
    ),
  ],
  [site({ tapHeight_m: 4.5, handPump: false }, 'tapHeight_m', 'head.tap_above', 'tap', 'taps above the water')],
];

/** Plants them at sites that have gutters, stands and pipes; fewer where there are no such sites left. */
export function plantStationFaults(draft: DraftProgramme, free: readonly string[]): PlantedFault[] {
  const { tanks, gutters = [], pipes = [] } = draft.tables;
  const withGutters = new Set(gutters.map(({ siteId }) => siteId));
  const withPipes = new Set(pipes.map(({ siteId }) => siteId));
  const withStands = new Set(tanks.flatMap((row) => (isOnStand(row) ? [row['siteId']] : [])));
  const whole = free.filter((id) => withGutters.has(id) && withPipes.has(id) && withStands.has(id));
  return slipsBySite.flatMap((slips, i) => {
    const siteId = whole[i];
    return siteId === undefined ? [] : slips.map((slip) => planted(draft, siteId, slip));
  });
}

function planted(draft: DraftProgramme, siteId: string, slip: Slip): PlantedFault {
  const { table, cells, column, code, about, station, suits } = slip;
  const rows = draft.tables[table] ?? [];
  const index = rows.findIndex((row) => row['siteId'] === siteId && suits(row));
  draft.tables[table] = rows.with(index, changed(rows[index]!, cells));
  return { file: `${table}.csv`, row: index + 2, column, code, about, siteId, station };
}

function gutter(cells: Row, column: string, code: string, about: string): Slip {
  return { table: 'gutters', station: 'gutter', cells, column, code, about, suits: isAny };
}

function tank(cells: Row, code: string, about: string): Slip {
  return { table: 'tanks', station: 'stand', cells, column: 'groundClass', code, about, suits: isOnStand };
}

function site(cells: Row, column: string, code: string, station: 'stand' | 'tap', about: string): Slip {
  return { table: 'sites', station, cells, column, code, about, suits: isAny };
}
