import type { PlainSheet, PlainSheetColumn, RolloutReport } from '@eavewell/tables';

type Cell = string | number | null;

/** A sheet whose heads say what their cells are, and of numbers to how many decimals they are read: `hours_h:number:2`. */
function sheet(name: string, heads: string, rows: readonly (readonly Cell[])[]): PlainSheet {
  const columns = heads.split(' ').map((written) => {
    const [head = '', kind = 'text', decimals] = written.split(':');
    return { head, kind: kind as PlainSheetColumn['kind'], decimals: decimals === undefined ? null : Number(decimals) };
  });
  const read = (cell: Cell, at: number): Cell => {
    const { decimals } = columns[at]!;
    return typeof cell === 'number' && decimals !== null ? Number(cell.toFixed(decimals)) : cell;
  };
  return { name, columns: columns.map(({ head, kind }) => ({ head, kind })), rows: rows.map((row) => row.map(read)) };
}

/**
 * The plan as tables for other programs: each stop, each day of each crew, what is aboard, stock, people served, money. Heads are names with their
 * unit as in all our tables, the same in every language. Numbers are rounded for reading: those of the report have all their digits.
 *
 * @param report - the rollout
 * @returns sheets, named as their files are
 * @definition ours
 */
export function rolloutSheets(report: RolloutReport): readonly PlainSheet[] {
  const sheets = [plan(report), itineraries(report), manifests(report), stock(report), served(report), money(report)];
  return report.replanned === null ? sheets : [...sheets, changes(report.replanned)];
}

const tripsOf = ({ crews }: RolloutReport) =>
  crews.flatMap(({ crewId, trips }) => trips.map((trip) => ({ crewId, trip })));

function plan(report: RolloutReport): PlainSheet {
  return sheet(
    'plan',
    'tripId crewId leaves:day back:day nights_count:number waitsFor order:number siteId name people:number arrives:day starts:day handOver:day served:day servedP10:day servedP50:day servedP90:day',
    tripsOf(report).flatMap(({ crewId, trip }) =>
      trip.stops.map((stop, at): readonly Cell[] => [
        ...[trip.tripId, crewId, trip.leaves, trip.back, trip.nights_count, trip.waitsFor, at + 1],
        ...[stop.siteId, stop.name, stop.people, stop.arrives, stop.starts, stop.handOver, stop.served],
        ...[stop.futures?.p10 ?? null, stop.futures?.p50 ?? null, stop.futures?.p90 ?? null],
      ]),
    ),
  );
}

/** What a crew does, in its order: goes, works, is back. */
function itineraries(report: RolloutReport): PlainSheet {
  return sheet(
    'itineraries',
    'crewId tripId from:day to:day does where way mode hours_h:number:2 porters_count:number',
    tripsOf(report).flatMap(({ crewId, trip }): readonly (readonly Cell[])[] =>
      trip.legs.flatMap((leg) => {
        const goes = leg.stretches.map((one): readonly Cell[] => [
          ...[crewId, trip.tripId, leg.leaves, leg.arrives, 'goes', one.to, one.wayId, one.mode],
          ...[one.hours_h + one.changeOver_h, leg.porters_count],
        ]);
        const stop = trip.stops.find(({ siteId }) => siteId === leg.to);
        if (stop === undefined) return goes;
        return [
          ...goes,
          [crewId, trip.tripId, stop.starts, stop.handOver, 'works', stop.siteId, null, null, null, null],
        ];
      }),
    ),
  );
}

function manifests(report: RolloutReport): PlainSheet {
  return sheet(
    'manifests',
    'tripId crewId leaves:day order:number siteId partId name pieces_count:number each_count:number:4 mass_kg:number:3',
    tripsOf(report).flatMap(({ crewId, trip }) =>
      trip.aboard.map((one, at): readonly Cell[] => [
        ...[
          trip.tripId,
          crewId,
          trip.leaves,
          at + 1,
          one.siteId,
          one.partId,
          one.name,
          one.count,
          one.each_count,
          one.mass_kg,
        ],
      ]),
    ),
  );
}

function stock(report: RolloutReport): PlainSheet {
  return sheet(
    'stock',
    'store partId name day:day in_count:number out_count:number left_count:number',
    report.stock.flatMap(({ store, partId, name, points }) =>
      points.map((one): readonly Cell[] => [store, partId, name, one.day, one.in_count, one.out_count, one.left_count]),
    ),
  );
}

function served({ served: likely, servedByWeek }: RolloutReport): PlainSheet {
  const drawn = servedByWeek.map(({ until, p10, p50, p90 }): readonly Cell[] => [until, null, p10, p50, p90]);
  const rows = [...likely.map(({ day, people }): readonly Cell[] => [day, people, null, null, null]), ...drawn];
  return sheet(
    'served',
    'day:day people:number peopleP10:number peopleP50:number peopleP90:number',
    rows.sort(([a], [b]) => String(a).localeCompare(String(b))),
  );
}

function money({ moneyByMonth, currency }: RolloutReport): PlainSheet {
  return sheet(
    'money',
    'month amount:number:2 currency',
    moneyByMonth.map(({ month, amount }) => [month, amount, currency]),
  );
}

/** Sites whose day or crew is another than if the plan that is gone on from were left as it is. */
function changes({ sites }: NonNullable<RolloutReport['replanned']>): PlainSheet {
  return sheet(
    'changes',
    'siteId name people:number servedBefore:day servedAfter:day later_days:number crewBefore crewAfter',
    sites.map((site): readonly Cell[] => [
      ...[site.siteId, site.name, site.people, site.servedBefore, site.servedAfter, site.later_days],
      ...[site.crewBefore, site.crewAfter],
    ]),
  );
}
