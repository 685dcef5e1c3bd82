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
  if (f.serial === null) return w.say('findings.treatment.none');
  const { serial } = f;
  const unknown = f.flowNow_L_per_h === null || f.verdict === 'unknown';
  const sentences = [
    ...(f.flowNow_L_per_h === null ? [] : [passes(w, f, serial)]),
    ...(unknown ? [w.say('findings.treatment.unknown', { serial })] : dayAtTaps(w, f)),
    ...(f.cappedBy === null ? [] : [w.say('findings.treatment.capped')]),
    ...testSaid(w, f),
  ];
  return sentences.join(' ');
}

function passes({ say, numbers }: Speech, f: TreatmentSaid, serial: string): string {
  return say('findings.treatment.passes', {
    serial,
    flow: numbers.quantity(f.flowNow_L_per_h, 'L/h'),
    drive: f.drive ?? 'rated',
    isRead: yes(f.resistanceNow_ratio !== null),
  });
}

/** Hours of the day that asks for most and the line at the taps, now and at the unfavourable end. */
function dayAtTaps({ say, numbers }: Speech, f: TreatmentSaid): readonly string[] {
  const asked = numbers.litres(f.asked_L_per_day ?? 0);
  if (f.hoursNeeded_h === null) return [say('findings.treatment.dayNever', { asked })];
  const hours = (value: number | null) => numbers.quantity(value, 'h');
  const [wait_min, wornWait_min] = [longest(f, 'lastWait_min'), longest(f, 'lastWaitWorn_min')];
  const minutes = (value: number | null) => numbers.quantity(value ?? 0, 'min');
  const line =
    wait_min === 0 ? say('findings.treatment.noWait') : say('findings.treatment.wait', { wait: minutes(wait_min) });
  const worn =
    f.hoursNeededWorn_h === null
      ? say('findings.treatment.wornNever')
      : say('findings.treatment.worn', {
          hours: hours(f.hoursNeededWorn_h),
          ends: yes(wornWait_min !== null),
          wait: minutes(wornWait_min),
        });
  return [
    say('findings.treatment.day', { asked, hours: hours(f.hoursNeeded_h) }),
    wait_min === null ? say('findings.treatment.waitEndless') : line,
    ...(f.flowWorn_L_per_h === null ? [] : [worn]),
  ];
}

/** The longest wait of both peaks; null where a line does not end. */
function longest({ peaks }: TreatmentSaid, of: 'lastWait_min' | 'lastWaitWorn_min'): number | null {
  const waits = peaks.map((peak) => peak[of]);
  return waits.includes(null) ? null : Math.max(0, ...waits.map((wait) => wait!));
}

/** What the last test with air says, and what it does not. */
function testSaid({ say, numbers }: Speech, { pressureTest: test }: TreatmentSaid): readonly string[] {
  if (test === null) return [];
  return [
    say('findings.treatment.test', {
      day: numbers.date(test.testedOn),
      hole: numbers.quantity(test.smallestSeen_um, 'um'),
      hasLog: yes(test.supports_log10 !== null),
      log: numbers.quantity(test.supports_log10 ?? 0, 'log10'),
    }),
  ];
}
