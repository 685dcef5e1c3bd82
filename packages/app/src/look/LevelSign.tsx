/** The draughtsman's mark of a free water surface. It hangs from the line of the head at the section one is in. */
export function LevelSign() {
  return (
    <svg className="level-sign" viewBox="0 0 20 16" width="20" height="16" aria-hidden="true" focusable="false">
      <path d="M5.5 0h9L10 7.5zM4 10.5h12M7 13h6M9 15.5h2" fill="none" stroke="var(--ink)" strokeWidth="1.2" />
    </svg>
  );
}
