export { annualMaximum_mm } from './annualMaximum.ts';
export { type DailyMaximum, dailyMaxima } from './dailyMaxima.ts';
export { type DoubleMass, doubleMass, doubleMassProblems, slopeRatio } from './doubleMass.ts';
export { type DrySpell, drySpells } from './drySpells.ts';
export { fillFromNeighbours, type NeighbourFilling } from './fillFromNeighbours.ts';
export { fillGaps } from './fillGaps.ts';
export { type GammaFit, gammaByLMoments, gammaByThom } from './gammaFits.ts';
export { judgedMadeRain } from './judgedMadeRain.ts';
export { judgedRain, type RainSettings } from './judgedRain.ts';
export { longestDryRunByYear } from './longestDryRunByYear.ts';
export { type MadeRain, type MadeRainOrder, madeRain } from './madeRain.ts';
export { type MixedExponentialFit, mixedExponentialByLikelihood } from './mixedExponentialFit.ts';
export { type MonthCompleteness, monthCompleteness } from './monthCompleteness.ts';
export { type MonthlyNormal, monthlyNormals } from './monthlyNormals.ts';
export { type MonthTotal, monthTotals } from './monthTotals.ts';
export { type DistanceNeighbour, inverseDistance_mm, normalRatio_mm, type RatioNeighbour } from './neighbourRain.ts';
export { type GaugeRecord, type Neighbour, neighboursOf } from './neighbours.ts';
export {
  type MonthNormal,
  type NormalFault,
  normalFault,
  normalsBesideRecord,
  normalsProblems,
  twelveNormals,
} from './normals.ts';
export { type RainByDistance, rainByDistance } from './rainByDistance.ts';
export { monthsFromNormals, monthsFromRecord, type RainMonth } from './rainMonths.ts';
export { rainRecord } from './rainRecord.ts';
export { rainWorking } from './rainWorking.ts';
export { type DayOfRain, type JudgedDaysFilled, judgedDaysFilled, wettestDay } from './recordFacts.ts';
export { scenarioRain } from './scenarioRain.ts';
export { type GammaMethod, type MonthSpi, type SpiClass, spi, spiClass, standardisedSums } from './spi.ts';
export { waterYearStart } from './waterYearStart.ts';
export {
  chainFromCounts,
  chainFromWetDays,
  type DayMoments,
  type PairCounts,
  type SpellLengths,
  spellLengths,
  type WetChain,
  wetDayMoments,
  wetShare,
} from './wetChain.ts';
export { amountMoments, type RainMoments, totalMoments, type WetDayAmounts } from './wetDayAmounts.ts';
export { type YearFacts, type YearMoments, yearFacts, yearMoments } from './yearFacts.ts';
