import type { TreatmentFinding, WearFinding } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { treatment: words, wear } = spoken.commandLine;
const { numbers } = spoken;

/** Whether one treatment unit keeps up, and the line at the taps in the busiest hours. */
export function treatmentSection(sheet: Sheet, f: TreatmentFinding): void {
  sheet.heading(words.heading(f.serial));
  sheet.line(spoken.findings.treatment(f), 2);
  if (f.peaks.length === 0) return;
  const wait = (minutes: number | null) => (minutes === null ? words.noEnd : numbers.quantity(minutes, 'min'));
  sheet.table(
    words.columns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    f.peaks.map(({ peak, asked_L, possible_L, lastWait_min, lastWaitWorn_min }) => [
      words.peak(peak),
      numbers.litres(asked_L),
      numbers.litres(possible_L),
      wait(lastWait_min),
      wait(lastWaitWorn_min),
    ]),
  );
}

/** When the cartridges of one unit are due. */
export function wearSection(sheet: Sheet, f: WearFinding): void {
  sheet.heading(wear.heading(f.serial));
  sheet.line(spoken.findings.wear(f), 2);
}
