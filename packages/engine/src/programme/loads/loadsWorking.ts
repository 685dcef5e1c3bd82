import { type Carrier, explain, type WorkingLine, workingInput } from '../../kernel/index.ts';
import { bestLift_kg, carton_kg, twoPeople_kg } from '../../parts/index.ts';
import type { KitsFound, Load, LoadLimits } from './foundLoads.ts';

/** How the number of loads was reached. */
export function loadsWorking(
  loads: readonly Load[],
  least_count: number,
  limits: LoadLimits,
  carrier: Carrier,
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const { mode, limit_kg, limit_L, stowage_fraction } = carrier;
  const carried_kg = loads.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const pieces_count = loads.reduce((sum, { pieces }) => sum + pieces.reduce((all, { count }) => all + count, 0), 0);
  const pieces = [workingInput('pieces', pieces_count, 'piece')];
  explain(lines, { code: 'loads.carried', value: carried_kg, unit: 'kg', inputs: pieces, source: 'survey' });
  const stated = limit_kg === null ? [] : [workingInput('statedLimit', limit_kg, 'kg')];
  const isPeople = mode === 'person' || mode === 'twoPeople';
  const safe = {
    person: [workingInput('carton', carton_kg, 'kg'), workingInput('onePiece', bestLift_kg, 'kg')],
    twoPeople: [workingInput('forTwo', twoPeople_kg, 'kg')],
  };
  const inputs = [...stated, ...(mode === 'person' || mode === 'twoPeople' ? safe[mode] : [])];
  const source = isPeople ? 'niosh-94-110, load constant' : 'survey';
  explain(lines, { code: 'loads.limit', value: limits.load_kg, unit: 'kg', inputs, source });
  if (limits.load_L !== null) explain(lines, roomLine(limits.load_L, limit_L!, stowage_fraction));
  const bound = 'martello-toth-1990, chapter 8';
  explain(lines, { code: 'loads.least', value: least_count, unit: 'load', inputs: [], source: bound });
  explain(lines, { code: 'loads.loads', value: loads.length, unit: 'load', inputs: [], source: 'definition' });
  return lines;
}

function roomLine(value: number, stated_L: number, share: number): WorkingLine {
  const inputs = [workingInput('statedRoom', stated_L, 'L'), workingInput('stowage', share, 'fraction')];
  return { code: 'loads.room', value, unit: 'L', inputs, source: 'survey' };
}

/** How the number of kits was reached. */
export function kitsWorking(found: Omit<KitsFound, 'working'>, carrier: Carrier): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const step = (code: WorkingLine['code'], value: number | null, unit: string, inputs: WorkingLine['inputs'] = []) =>
    explain(lines, { code, value, unit, inputs, source: unit === 'kit' ? 'definition' : 'survey' });
  const { limit_kg, limit_L, stowage_fraction } = carrier;
  step('loads.kitMass', found.kit_kg, 'kg');
  step('loads.kitsByMass', found.byMass_count, 'kit', [workingInput('statedLimit', limit_kg!, 'kg')]);
  if (limit_L !== null) {
    explain(lines, roomLine(limit_L * stowage_fraction, limit_L, stowage_fraction));
    step('loads.kitBulk', found.kit_L, 'L');
    step('loads.kitsByBulk', found.byBulk_count, 'kit');
  }
  step('loads.kits', found.kits_count, 'kit');
  return lines;
}
