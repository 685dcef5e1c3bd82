export { type DemoOptions, type DemoProgramme, demoProgramme } from './demoProgramme.ts';
export type { PlantedFault } from './draft.ts';
export { type DemoRain, demoRain, type MadeRain } from './rain.ts';
