import type { HeadFinding } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { head: words } = spoken.commandLine;
const { numbers } = spoken;

/** Whether water comes to the taps, and what each pipe takes of the head. */
export function headSection(sheet: Sheet, f: HeadFinding): void {
  sheet.heading(words.heading(f.tankIds.length === 0 ? '' : spoken.findings.tanksNamed(f.tankIds)));
  sheet.line(spoken.findings.head(f), 2);
  if (f.segments.length === 0) return;
  const said = (value: number | null, unit: string) => (value === null ? '' : numbers.quantity(value, unit));
  sheet.table(
    words.columns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    f.segments.map(({ pipeId, bore_mm, length_m, velocity_m_per_s, friction_m, minor_m }) => [
      pipeId ?? words.unit,
      said(bore_mm, 'mm'),
      said(length_m, 'm'),
      said(velocity_m_per_s, 'm/s'),
      numbers.quantity(friction_m + minor_m, 'm'),
    ]),
  );
}
