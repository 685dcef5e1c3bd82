import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { type Band, framed, heading, numbered, paragraph } from '../flow/index.ts';
import type { PackStep } from './content.ts';
import { withLead } from './overview.ts';

/** What is done, in order; each caution stands framed where the hand is, after the step's first words are read and before the next. */
export function steps(
  setter: Setter,
  width: number,
  all: readonly PackStep[],
  { say, numbers }: Language,
): readonly Band[] {
  if (all.length === 0) return [];
  return [
    heading(setter, width, say('pack.steps')),
    ...numbered(
      setter,
      width,
      all.map(({ said, cautions }, nth) => ({
        number: numbers.given(nth + 1, ''),
        bands: (own: number) => {
          const frames = cautions.length === 0 ? [] : framed(setter, own, cautions.map(withLead), 3);
          const lines = paragraph(setter, own, said, { before_pt: frames.length > 0 ? 3 : 8, keepsNext: false });
          // The caution is read before the hand does what it is for.
          return frames.length === 0 ? lines : [...keep(frames), ...lines];
        },
      })),
    ),
  ];
}

/** A caution is on the page of its step. */
const keep = (bands: readonly Band[]): readonly Band[] =>
  bands.map((one, nth) => ({ ...one, keepsNext: true, before_pt: nth === 0 ? 9 : one.before_pt }));
