export { type AllSizes, allSizes, criticalVolumes, type SizeRules, type SizesAndTank } from './allSizes.ts';
export { type ChosenTank, chosenTank } from './chosenTank.ts';
export { compareStorages, type StorageRank } from './compareStorages.ts';
export { holdPrecision_fraction } from './constants.ts';
export {
  askedDaysOf,
  dryDaysAt,
  goodYearsAt,
  goodYearsNeeded,
  shortfallAt_L,
  tankForDays,
  tankForRuns,
  yearNeeds,
} from './curve.ts';
export {
  type Balance,
  dayByDay,
  judgedRules,
  type RunRules,
  type TankRun,
  type TankSeries,
} from './dayByDay.ts';
export { balanceUnder, looksAtContent, rulesOf } from './dayRules.ts';
export { type DrawnYears, drawPool, drawYears, type PoolYear } from './drawYears.ts';
export { type DryRuns, dryRuns } from './dryRuns.ts';
export { type FilledDryDays, filledDryDays } from './filledDryDays.ts';
export { firstServiceDay } from './firstService.ts';
export { firstServiceWaits, middleWaits } from './firstServiceWaits.ts';
export { type RationFound, rationOf } from './rationOf.ts';
export { rerunRecords } from './rerun.ts';
export { type DrawnRecords, drawnRecords } from './resample.ts';
export { runCurve } from './runCurve.ts';
export { coveredDays, type FromSecondSource, fromSecondSource, leftToSource_L } from './secondSource.ts';
export { type SiteGroup, type SiteGroups, siteGroups } from './siteGroups.ts';
export { isShareMet, type SizeCurve, sizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
export {
  type ChosenDoubt,
  type DoubtCase,
  daysMet_fraction,
  type SizeDoubt,
  sizeDoubt,
  tankToHold_L,
} from './sizeDoubt.ts';
export { type SizeReader, sizeReader } from './sizeReader.ts';
export {
  type BandAtSize,
  bandAtSize,
  bandSizes_L,
  type SizedTank,
  type StorageCurve,
  storageCurve,
} from './storageCurve.ts';
export { type StorageCase, type StorageFound, storageFinding } from './storageFinding.ts';
export { overflowFor_m, type SiteTank, usableVolume } from './usableVolume.ts';
export { type KnownToHold, type SizeVerdict, verdictsBySize } from './verdictsBySize.ts';
export { type RasterYear, yearRaster } from './yearRaster.ts';
