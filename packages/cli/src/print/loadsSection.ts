import { piecesSaid } from '@eavewell/report';
import type { CarrierLoadsReport, ProblemReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { kit: words } = spoken.commandLine;
const { numbers } = spoken;

/** How many loads of a carrier are listed where it is not the only one. */
const shownLoads = 6;

/** The loads of one carrier in the order they go, with what it cannot take. */
export function loadsSection(sheet: Sheet, found: CarrierLoadsReport, isAll: boolean): void {
  sheet.heading(words.loadsOf(found.name));
  sheet.line(found.finding, 2);
  const shown = isAll ? found.loads : found.loads.slice(0, shownLoads);
  for (const [nth, load] of shown.entries()) {
    const pieces = load.pieces.map((one) => piecesSaid(one, spoken)).join('; ');
    const text = words.load(
      load.carriedBy,
      numbers.quantity(load.mass_kg, 'kg'),
      load.bulk_L === null ? null : numbers.quantity(load.bulk_L, 'L'),
      pieces,
    );
    sheet.line(load.isFragile ? words.fragile(text) : text, 2, 2, `${nth + 1}.`);
  }
  if (shown.length < found.loads.length)
    sheet.line(words.moreLoads(found.loads.length - shown.length, found.carrierId), 2);
}

/** Cautions of all carriers, each once. */
export function cautionsOfLoadsSection(sheet: Sheet, all: readonly CarrierLoadsReport[]): void {
  const said = new Set(all.flatMap(({ cautions }) => cautions.map((one) => one.said)));
  if (said.size === 0) return;
  sheet.heading(words.cautions);
  for (const one of said) sheet.line(one, 2);
}

/** Problems that the finding of the loads does not tell already. */
export function besidesFinding(all: readonly CarrierLoadsReport[]): readonly ProblemReport[] {
  const told = ['loads.cannot_carry', 'loads.mass_unknown', 'loads.not_least', 'loads.no_limit'];
  return all.flatMap(({ problems }) => problems.filter(({ code }) => !told.includes(code)));
}
