/** One roof slope with rain leaving its eave. */
export function Emblem() {
  return (
    <svg viewBox="0 0 32 26" width="32" height="26" aria-hidden="true" focusable="false">
      <path d="M2 14 15 5l11 6v5" fill="none" stroke="var(--ink)" strokeWidth="2" />
      <path d="M26 17c2 2.6 2.6 3.5 2.6 4.8a2.6 2.6 0 0 1-5.2 0c0-1.3.6-2.2 2.6-4.8z" fill="var(--water)" />
    </svg>
  );
}
