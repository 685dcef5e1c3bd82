export { designStorm, type StormGiven } from './designStorm.ts';
