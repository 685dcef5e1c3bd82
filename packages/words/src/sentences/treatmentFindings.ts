import type { DayIndex, PressureTestFinding, TreatmentFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What one treatment unit is said from: codes as words, days as a report writes them. */
export type TreatmentSaid = Omit<TreatmentFinding, 'cappedBy' | 'pressureTest'> & {
  readonly cappedBy: string | null;
  readonly pressureTest: (Omit<PressureTestFinding, 'testedOn'> & { readonly testedOn: DayIndex | string }) | null;
};

/**
 * Whether a treatment unit keeps up, in a few sentences. Whether its water is fit to drink is another question.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function treatmentSaid(w: Speech, f: TreatmentSaid): string {
  const { say, numbers } = w;
  if (f.serial === null) return say('findings.treatment.none');
  if (f.flowNow_L_per_h === null || f.hoursNeeded_h === null)
    return say('findings.treatment.unknown', { serial: f.serial });
  const wait = f.peaks.reduce<number | null>(
    (longest, { lastWait_min }) => (longest === null || lastWait_min === null ? null : Math.max(longest, lastWait_min)),
    0,
  );
  const worn = f.flowWorn_L_per_h !== null && f.hoursNeededWorn_h !== null;
  return [
    say('findings.treatment.keepsUp', {
      serial: f.serial,
      flow: numbers.quantity(f.flowNow_L_per_h, 'L/h'),
      hours: numbers.quantity(f.hoursNeeded_h, 'h'),
      hasEnd: yes(wait !== null),
      wait: numbers.quantity(wait ?? 0, 'min'),
    }),
    ...(worn
      ? [
          say('findings.treatment.worn', {
            flow: numbers.quantity(f.flowWorn_L_per_h, 'L/h'),
            hours: numbers.quantity(f.hoursNeededWorn_h, 'h'),
          }),
        ]
      : []),
  ].join(' ');
}
