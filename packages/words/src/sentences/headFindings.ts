import type { HeadFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What a way to the taps is said from; a report names the assumption by its code alone. */
export type HeadSaid = Omit<HeadFinding, 'cappedBy'> & { readonly cappedBy: string | null };

/**
 * Whether water comes to the taps, in a few sentences.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function headSaid(w: Speech, f: HeadSaid): string {
  if (f.headLeft_m === null || f.flowWanted_L_per_min === null) return w.say('findings.head.unknown');
  const sentences = [...reaching(w, f, f.headLeft_m, f.flowWanted_L_per_min), ...bores(w, f)];
  return sentences.join(' ');
}

/** What comes by itself, or what a person must do at the pump. */
function reaching(w: Speech, f: HeadSaid, headLeft_m: number, wanted_L_per_min: number): readonly string[] {
  const { say, numbers } = w;
  const flow_L_per_min = f.flowLow_L_per_min ?? 0;
  const values = {
    wanted: numbers.quantity(wanted_L_per_min, 'L/min'),
    head: numbers.quantity(Math.abs(headLeft_m), 'm'),
    comes: yes(flow_L_per_min > 0),
    flow: numbers.quantity(flow_L_per_min, 'L/min'),
  };
  if (f.hasHandPump && f.pumpAdds_m !== null && f.pumpAdds_m > 0 && f.pumpPower_W !== null) {
    const adds = numbers.quantity(f.pumpAdds_m, 'm');
    const power = numbers.quantity(f.pumpPower_W, 'W');
    return [say('findings.head.pumped', { ...values, adds, power }), ...onePerson(w, f)];
  }
  return [say(headLeft_m < 0 ? 'findings.head.missing' : 'findings.head.left', values)];
}

/** What one person can keep up, where that may not be enough. */
function onePerson(
  { say, numbers }: Speech,
  { verdict, cappedBy, onePerson_L_per_min: flow }: HeadSaid,
): readonly string[] {
  if (flow === null || verdict === 'holds' || cappedBy !== null) return [];
  return [say('findings.head.onePerson', { flow: numbers.quantity(flow, 'L/min') })];
}

/** The narrowest pipe that would hold, where this one does not. */
function bores({ say, numbers }: Speech, f: HeadSaid): readonly string[] {
  if (f.cappedBy !== null) return [say('findings.head.pumpAssumed')];
  if (f.verdict === 'holds') return [];
  if (f.leastBore_mm === null) return [say('findings.head.noBore')];
  const bore = numbers.quantity(f.leastBore_mm, 'mm');
  if (f.leastPartId === null || f.leastPart_mm === null) return [say('findings.head.bore', { bore })];
  const partBore = numbers.quantity(f.leastPart_mm, 'mm');
  return [say('findings.head.boreOfPart', { bore, part: f.leastPartId, partBore })];
}
