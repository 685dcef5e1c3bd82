import type { DrainageFinding, DrainagePartFinding } from '@eavewell/engine';
import { verdictMarks } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { figures, headings } = spoken.commandLine;
const { numbers } = spoken;

/** Gutters, pipes and overflows in the storm: the finding, each part, and what first-flush chambers do. */
export function drainageSection(sheet: Sheet, f: DrainageFinding): void {
  sheet.heading(headings.drainage);
  sheet.line(spoken.findings.drainage(f), 2);
  if (f.parts.length > 0)
    sheet.table(
      figures.drainageColumns.map(
        (head, index) => ({ head, align: [1, 2, 3].includes(index) ? 'right' : 'left' }) as const,
      ),
      f.parts.map((part) => partRow(part, sheet.look.drawn)),
    );
  for (const one of f.firstFlush) sheet.line(spoken.findings.firstFlush(one), 2);
}

function partRow(part: DrainagePartFinding, isDrawn: boolean): readonly string[] {
  return [
    spoken.findings.drainagePart(part),
    part.flow_L_per_s === null ? '' : numbers.fixed(part.flow_L_per_s, 2),
    part.capacity_L_per_s === null ? '' : numbers.fixed(part.capacity_L_per_s, 2),
    part.use_fraction === null ? '' : numbers.percent(part.use_fraction),
    `${verdictMarks[part.verdict][isDrawn ? 'drawn' : 'plain']} ${spoken.verdicts[part.verdict]}`,
    part.smallestPartId ?? '',
  ];
}
