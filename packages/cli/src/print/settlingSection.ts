import type { SettlingFinding } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { settling: words } = spoken.commandLine;
const { numbers } = spoken;

/** What one settling tank does, and what leaves it by size of grain. */
export function settlingSection(sheet: Sheet, f: SettlingFinding): void {
  sheet.heading(words.heading(f.tankId ?? ''));
  sheet.line(spoken.findings.settling(f), 2);
  if (f.settledByDay_fraction === null) return;
  const share = (value: number | null) => (value === null ? words.notKnown : numbers.percent(value));
  sheet.table(
    words.columns.map((head) => ({ head, align: 'right' }) as const),
    f.grains.map(({ grain_um, leavesByDay_fraction, leavesInStorm_fraction }) => [
      numbers.quantity(grain_um, 'um'),
      share(leavesByDay_fraction),
      share(leavesInStorm_fraction),
    ]),
  );
}
