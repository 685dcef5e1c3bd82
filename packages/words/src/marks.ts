import type { StationVerdict } from '@eavewell/engine';

/**
 * A small tank in section, three characters wide: full, half full, empty, dashed outline, and a dot for a station that is
 * not judged. The second form needs nothing but ASCII.
 */
export const verdictMarks: Readonly<Record<StationVerdict, { readonly drawn: string; readonly plain: string }>> = {
  holds: { drawn: '│█│', plain: '[#]' },
  tight: { drawn: '│▄│', plain: '[=]' },
  short: { drawn: '│ │', plain: '[ ]' },
  unknown: { drawn: '┊ ┊', plain: ': :' },
  notJudged: { drawn: ' · ', plain: ' - ' },
};
