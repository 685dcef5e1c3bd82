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

/** Shows the pages in the light that was chosen. */
export function putLight(): void {
  const light = lightChosen();
  if (light === 'asComputer') delete document.documentElement.dataset['light'];
  else document.documentElement.dataset['light'] = light;
}
