import {
  type EngineProblemCode,
  engineProblem,
  type Facts,
  type Problem,
  type stormProblems,
} from '../../kernel/index.ts';

/** The table each kind of storm is stated in. */
const tables = {
  stated: 'storms.csv',
  coefficients: 'stormCoefficients.csv',
  shortRecord: 'shortRain.csv',
  dailyMaxima: 'settings.json',
} as const;

/** A problem of the storm of one gauge, at the table it comes from. */
export function stormProblem(
  code: keyof typeof stormProblems & EngineProblemCode,
  gaugeId: string,
  of: keyof typeof tables,
  facts: Facts = {},
): Problem {
  return engineProblem(code, { file: tables[of], gaugeId }, facts);
}
