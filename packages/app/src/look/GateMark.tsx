/**
 * The mark of a stand nobody signed for: a gate that is shut. It is no verdict, so it is not drawn as a tank. Its word always stands
 * beside it, so it is not read out.
 */
export function GateMark({ size = 18 }: { readonly size?: number }) {
  return (
    <svg
      className="gate-mark"
      viewBox="0 0 24 20"
      width={(size * 24) / 20}
      height={size}
      aria-hidden="true"
      focusable="false"
    >
      <path
        d="M3 1V19M21 1V19M3 5H21M3 15H21M3 15L21 5"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="square"
      />
    </svg>
  );
}
