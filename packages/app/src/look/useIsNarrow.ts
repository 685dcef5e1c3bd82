import { useSyncExternalStore } from 'react';

/** Below this width two things do not stand side by side: sites.css has the same. */
const narrow = '(max-width: 1100px)';

const subscribe = (listener: () => void) => {
  const asked = matchMedia(narrow);
  asked.addEventListener('change', listener);
  return () => asked.removeEventListener('change', listener);
};

/** Is the page too narrow for list and map side by side? */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(subscribe, () => matchMedia(narrow).matches);
}
