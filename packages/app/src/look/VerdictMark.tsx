import './verdictMark.css';

export type MarkedVerdict = 'holds' | 'tight' | 'short' | 'unknown' | 'notJudged';

/**
 * The mark of a verdict: a small tank in section. Full: holds; half full: tight; an empty heavy outline: short;
 * dashed: unknown. Where nothing is judged yet it is a dot. Its word always stands beside it, so it is not read out.
 */
export function VerdictMark({ verdict, size = 20 }: { readonly verdict: MarkedVerdict; readonly size?: number }) {
  return (
    <svg
      className={`verdict-mark v-${verdict}`}
      viewBox="0 0 20 24"
      width={(size * 20) / 24}
      height={size}
      aria-hidden="true"
      focusable="false"
    >
      {drawn[verdict]}
    </svg>
  );
}

/** The tank: a slightly domed lid, straight walls, a square foot. */
const tank = 'M2.5 22.5V5.5Q10 .5 17.5 5.5V22.5Z';

const drawn = {
  holds: <path d={tank} fill="currentColor" />,
  tight: (
    <>
      <path d={tank} fill="none" stroke="currentColor" strokeWidth="2.2" />
      <path d="M2.5 13H17.5V22.5H2.5Z" fill="currentColor" />
    </>
  ),
  short: <path d={tank} fill="none" stroke="currentColor" strokeWidth="3.6" />,
  unknown: <path d={tank} fill="none" stroke="currentColor" strokeWidth="2" strokeDasharray="3.2 2.4" />,
  notJudged: <circle cx="10" cy="14" r="2" fill="currentColor" />,
} as const;
