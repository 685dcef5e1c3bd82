import { type DownpipeFacts, engineProblem, explain, type PartFacts, workingInput } from '../../kernel/index.ts';
import { downpipeFlow } from './constants.ts';
import { downpipeCapacity_L_per_s } from './downpipeCapacity.ts';
import { type JudgedPart, judgedPart } from './judgedPart.ts';
import { type Notes, placeOf } from './notes.ts';
import type { RoofStorm } from './roofStorms.ts';
import { type SiteStorm, shareOf } from './siteStorm.ts';

/** The downpipes of one roof, judged: they share its flow evenly. A roof of which none was measured has none judged, and that is said. */
export function downpipeParts(
  { roof, flow, cappedBy }: RoofStorm,
  downpipes: readonly DownpipeFacts[],
  storm: SiteStorm | null,
  parts: readonly PartFacts[],
  notes: Notes,
): readonly JudgedPart[] {
  if (downpipes.length === 0) {
    const place = placeOf(notes, 'downpipes');
    notes.problems.push(engineProblem('drainage.downpipe_missing', place, { roof: roof.roofId }));
  }
  const choices = parts.flatMap(({ partId, kind, bore_mm }) =>
    kind === 'downpipe' && bore_mm !== null
      ? [{ partId, size_mm: bore_mm, capacity_L_per_s: downpipeCapacity_L_per_s(bore_mm) }]
      : [],
  );
  explainBores(downpipes, notes);
  return downpipes.map(({ downpipeId, bore_mm }) =>
    judgedPart({
      ...{ part: 'downpipe', id: downpipeId, roofId: roof.roofId },
      flow: shareOf(flow, 1 / downpipes.length),
      capacity_L_per_s: capacityOf(downpipeId, bore_mm, roof.roofId, notes),
      caps: [storm?.cappedBy ?? null, cappedBy],
      choices,
    }),
  );
}

function capacityOf(downpipeId: string, bore_mm: number | null, roof: string, notes: Notes): number | null {
  if (isBore(bore_mm)) return downpipeCapacity_L_per_s(bore_mm);
  const place = placeOf(notes, 'downpipes', 'bore_mm');
  notes.problems.push(engineProblem('drainage.downpipe_not_measured', place, { downpipe: downpipeId, roof }));
  return null;
}

function isBore(bore_mm: number | null): bore_mm is number {
  return bore_mm !== null && bore_mm > 0;
}

/** What pipes of each bore take, once for all of the same. */
function explainBores(downpipes: readonly DownpipeFacts[], notes: Notes): void {
  const bores_mm = new Set(downpipes.map(({ bore_mm }) => bore_mm).filter(isBore));
  for (const bore_mm of bores_mm) {
    const own = downpipes.filter((one) => one.bore_mm === bore_mm).map(({ downpipeId }) => downpipeId);
    explain(notes.working, {
      code: 'drainage.downpipe',
      value: downpipeCapacity_L_per_s(bore_mm),
      unit: 'L_per_s',
      inputs: [
        workingInput('downpipe', own.join(', '), 'text'),
        workingInput('bore', bore_mm, 'mm'),
        workingInput('fill', downpipeFlow.fill_fraction, 'fraction'),
      ],
      source: 'en-12056-3, Table 8 (from memory)',
    });
  }
}
