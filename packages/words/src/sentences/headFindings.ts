import type { HeadFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/**
 * Whether water comes to the taps, in a few sentences.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function headSaid(w: Speech, f: HeadFinding): string {
  if (f.headLeft_m === null || f.flowWanted_L_per_min === null) return w.say('findings.head.unknown');
  const sentences = [byItself(w, f, f.headLeft_m, f.flowWanted_L_per_min), ...pumped(w, f), ...bores(w, f)];
  return sentences.join(' ');
}

function byItself({ say, numbers }: Speech, f: HeadFinding, headLeft_m: number, wanted_L_per_min: number): string {
  const values = {
    wanted: numbers.quantity(wanted_L_per_min, 'L/min'),
    head: numbers.quantity(Math.abs(headLeft_m), 'm'),
    flow: numbers.quantity(f.flowLow_L_per_min ?? 0, 'L/min'),
  };
  return say(headLeft_m < 0 ? 'findings.head.missing' : 'findings.head.left', values);
}

/** What a person must do at the pump. */
function pumped({ say, numbers }: Speech, f: HeadFinding): readonly string[] {
  if (!f.hasHandPump || f.pumpAdds_m === null || f.pumpPower_W === null) return [];
  if (f.pumpAdds_m === 0) return [say('findings.head.noPumping')];
  const values = { adds: numbers.quantity(f.pumpAdds_m, 'm'), power: numbers.quantity(f.pumpPower_W, 'W') };
  return [
    say('findings.head.pumped', values),
    ...(f.onePerson_L_per_min !== null && f.verdict !== 'holds'
      ? [say('findings.head.onePerson', { flow: numbers.quantity(f.onePerson_L_per_min, 'L/min') })]
      : []),
  ];
}

/** The narrowest pipe that would hold, where this one does not. */
function bores({ say, numbers }: Speech, f: HeadFinding): readonly string[] {
  if (f.verdict === 'holds') return [];
  if (f.leastBore_mm === null) return [say('findings.head.noBore')];
  const bore = numbers.quantity(f.leastBore_mm, 'mm');
  if (f.leastPartId === null || f.leastPart_mm === null) return [say('findings.head.bore', { bore })];
  const partBore = numbers.quantity(f.leastPart_mm, 'mm');
  return [say('findings.head.boreOfPart', { bore, part: f.leastPartId, partBore })];
}
