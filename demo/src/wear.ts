import { chanceFor } from './chance.ts';
import { changed, type DraftProgramme, type Row } from './draft.ts';
import { ofStand } from './measures.ts';

/** How often a survey leaves a cell out or finds something amiss [fraction]. Ours. */
const wearing = {
  runoffUnknown_fraction: 0.35,
  guttersUnknown_fraction: 0.05,
  noDiverter_fraction: 0.15,
  blockedDiverter_fraction: 0.04,
  fibreCement_fraction: 0.03,
  heightsUnknown_fraction: 0.08,
} as const;

/** Makes the tables as a true survey leaves them: cells not filled, some diverters missing or blocked. Not faults: doubts. */
export function wear(seed: number, draft: DraftProgramme): void {
  const chance = chanceFor(seed, 'wear');
  const { tables } = draft;
  tables.roofs = tables.roofs.map((roof) => changed(roof, roofWear(chance.share(), chance.share(), chance.share())));
  tables.diverters = tables.diverters
    .filter(() => chance.share() >= wearing.noDiverter_fraction)
    .map((row) => (chance.share() < wearing.blockedDiverter_fraction ? changed(row, { drainHole: 'blocked' }) : row));
  const unmeasured = new Set(
    tables.sites.filter(() => chance.share() < wearing.heightsUnknown_fraction).map(({ siteId }) => siteId),
  );
  const noHeights = {
    ...{ outletHeight_m: null, overflowHeight_m: null, diameter_m: null },
    ...Object.fromEntries(ofStand.map((column) => [column, null])),
  };
  // A settling tank without heights would count nothing.
  const lost = (tank: Row) => unmeasured.has(tank['siteId']!) && tank['role'] !== 'settling';
  tables.tanks = tables.tanks.map((tank) => (lost(tank) ? changed(tank, noHeights) : tank));
  if (tables.pipes) tables.pipes = tables.pipes.filter(({ siteId }) => !unmeasured.has(siteId!));
}

function roofWear(runoff: number, gutters: number, covering: number): Row {
  const fibreCement = covering < wearing.fibreCement_fraction ? { material: 'fibreCement' } : {};
  const unknownRunoff = runoff < wearing.runoffUnknown_fraction ? { runoffFraction: null } : {};
  const unknownGutters = gutters < wearing.guttersUnknown_fraction ? { gutteredFraction: null } : {};
  return { ...unknownRunoff, ...unknownGutters, ...fibreCement };
}
