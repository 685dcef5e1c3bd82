import type { DemoTrip } from './draft.ts';

/** Made by setup/demoPlans.mjs: days are counted from the first day of the rollout of the demo. */
export const tripsInForce: readonly DemoTrip[] = [
  { crewId: 'north', leaves: 0, back: 18, notBefore: null, sites: ['S054', 'S040'], handOvers: [4, 12] },
  { crewId: 'north', leaves: 23, back: 30, notBefore: null, sites: ['S016'], handOvers: [28] },
  { crewId: 'north', leaves: 35, back: 51, notBefore: null, sites: ['S010'], handOvers: [45] },
  { crewId: 'north', leaves: 56, back: 61, notBefore: null, sites: ['S020'], handOvers: [60] },
  { crewId: 'north', leaves: 64, back: 78, notBefore: null, sites: ['S011', 'S005'], handOvers: [68, 74] },
  { crewId: 'north', leaves: 85, back: 103, notBefore: null, sites: ['S025', 'S014'], handOvers: [89, 95] },
  { crewId: 'north', leaves: 106, back: 114, notBefore: null, sites: ['S046'], handOvers: [112] },
  { crewId: 'shed', leaves: 21, back: 29, notBefore: null, sites: ['S048', 'S051'], handOvers: [24, 28] },
  { crewId: 'shed', leaves: 35, back: 44, notBefore: null, sites: ['S034', 'S018'], handOvers: [38, 43] },
  { crewId: 'shed', leaves: 56, back: 58, notBefore: null, sites: ['S032'], handOvers: [58] },
  { crewId: 'shed', leaves: 63, back: 74, notBefore: null, sites: ['S053', 'S056'], handOvers: [67, 71] },
  { crewId: 'shed', leaves: 84, back: 95, notBefore: 84, sites: ['S044', 'S038'], handOvers: [88, 95] },
  { crewId: 'shed', leaves: 106, back: 116, notBefore: null, sites: ['S059'], handOvers: [113] },
];

/** The same for the sites that are left, without a crew at the shed in the end; no day is kept of it. */
export const tripsBeside: readonly DemoTrip[] = [
  { crewId: 'north', leaves: 0, back: 7, notBefore: null, sites: ['S032'], handOvers: [5] },
  { crewId: 'north', leaves: 31, back: 37, notBefore: null, sites: ['S020'], handOvers: [37] },
  { crewId: 'north', leaves: 39, back: 56, notBefore: null, sites: ['S011', 'S053', 'S005'], handOvers: [44, 48, 53] },
  { crewId: 'north', leaves: 59, back: 77, notBefore: null, sites: ['S025', 'S014'], handOvers: [63, 69] },
  { crewId: 'north', leaves: 80, back: 88, notBefore: null, sites: ['S046'], handOvers: [86] },
  { crewId: 'north', leaves: 90, back: 100, notBefore: null, sites: ['S056', 'S059'], handOvers: [93, 97] },
  { crewId: 'north', leaves: 314, back: 319, notBefore: null, sites: ['S038'], handOvers: [318] },
  { crewId: 'south', leaves: 9, back: 30, notBefore: null, sites: ['S044', 'S010'], handOvers: [17, 24] },
];
