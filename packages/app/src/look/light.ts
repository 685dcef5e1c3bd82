import { keep, kept } from '../kept.ts';

/** Which light the pages are for: as the computer says, day or night. */
export const lights = ['asComputer', 'day', 'night'] as const;
export type Light = (typeof lights)[number];

/** The light that was chosen in this browser. */
export const lightChosen = (): Light => lights.find((one) => one === kept('light')) ?? 'asComputer';

/** Shows the pages in a light, and remembers it. */
export function showLight(light: Light): void {
  keep('light', light);
  putLight();
}

/** Which light is shown: the one that was chosen, else the computer's. */
export function lightShown(chosen: Light, isDark: boolean): 'day' | 'night' {
  if (chosen !== 'asComputer') return chosen;
  return isDark ? 'night' : 'day';
}

/** Shows the pages in the light that was chosen, or in the computer's. */
export function putLight(): void {
  document.documentElement.dataset['light'] = lightShown(lightChosen(), ofComputer().matches);
}

/** Follows the computer where it goes from day to night, or another page where somebody chooses there. */
export function followLight(): void {
  putLight();
  ofComputer().addEventListener('change', putLight);
  window.addEventListener('storage', putLight);
}

/** Calls back whenever another light is shown; the answer ends it. */
export function onLight(changed: () => void): () => void {
  const watch = new MutationObserver(changed);
  watch.observe(document.documentElement, { attributeFilter: ['data-light'] });
  return () => watch.disconnect();
}

const ofComputer = () => matchMedia('(prefers-color-scheme: dark)');
