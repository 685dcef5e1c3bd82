export { loadSolveLinear } from './solveLinear.ts';
