import type { DemoTrip } from './draft.ts';

/** Made by setup/demoPlans.mjs: days are counted from the first day of the rollout of the demo. */
export const tripsInForce: readonly DemoTrip[] = [
  { crewId: 'north', leaves: 0, back: 16, notBefore: null, sites: ['S040', 'S010'], handOvers: [7, 12] },
  { crewId: 'north', leaves: 18, back: 25, notBefore: null, sites: ['S034'], handOvers: [23] },
  { crewId: 'north', leaves: 28, back: 40, notBefore: null, sites: ['S044', 'S005'], handOvers: [32, 38] },
  { crewId: 'north', leaves: 43, back: 49, notBefore: null, sites: ['S018'], handOvers: [47] },
  { crewId: 'north', leaves: 51, back: 60, notBefore: null, sites: ['S020'], handOvers: [60] },
  { crewId: 'north', leaves: 82, back: 96, notBefore: 82, sites: ['S025', 'S014'], handOvers: [89, 94] },
  { crewId: 'north', leaves: 105, back: 113, notBefore: null, sites: ['S046'], handOvers: [112] },
  { crewId: 'shed', leaves: 2, back: 7, notBefore: null, sites: ['S054'], handOvers: [7] },
  { crewId: 'shed', leaves: 9, back: 11, notBefore: null, sites: ['S016'], handOvers: [11] },
  { crewId: 'shed', leaves: 15, back: 25, notBefore: null, sites: ['S011'], handOvers: [22] },
  { crewId: 'shed', leaves: 30, back: 32, notBefore: null, sites: ['S032'], handOvers: [32] },
  { crewId: 'shed', leaves: 36, back: 43, notBefore: null, sites: ['S048', 'S051'], handOvers: [38, 43] },
  { crewId: 'shed', leaves: 45, back: 53, notBefore: null, sites: ['S053'], handOvers: [51] },
  { crewId: 'shed', leaves: 84, back: 94, notBefore: 84, sites: ['S056', 'S059'], handOvers: [87, 93] },
  { crewId: 'shed', leaves: 105, back: 108, notBefore: null, sites: ['S038'], handOvers: [107] },
];

/** The same for the sites that are left, without a crew at the shed in the end; no day is kept of it. A site that nobody reaches before its way shuts for a season is in none. */
export const tripsBeside: readonly DemoTrip[] = [
  { crewId: 'north', leaves: 0, back: 13, notBefore: null, sites: ['S011', 'S014'], handOvers: [7, 10] },
  { crewId: 'north', leaves: 28, back: 40, notBefore: null, sites: ['S020', 'S018'], handOvers: [34, 39] },
  { crewId: 'north', leaves: 47, back: 59, notBefore: null, sites: ['S005', 'S056'], handOvers: [53, 56] },
  { crewId: 'north', leaves: 65, back: 77, notBefore: null, sites: ['S059'], handOvers: [69] },
  { crewId: 'north', leaves: 80, back: 87, notBefore: null, sites: ['S046'], handOvers: [86] },
  { crewId: 'south', leaves: 14, back: 27, notBefore: null, sites: ['S044', 'S053'], handOvers: [20, 24] },
  { crewId: 'south', leaves: 41, back: 46, notBefore: null, sites: ['S051'], handOvers: [45] },
  { crewId: 'south', leaves: 60, back: 63, notBefore: null, sites: ['S025'], handOvers: [63] },
  { crewId: 'shed', leaves: 2, back: 5, notBefore: null, sites: ['S032'], handOvers: [5] },
  { crewId: 'shed', leaves: 9, back: 11, notBefore: null, sites: ['S048'], handOvers: [11] },
];
