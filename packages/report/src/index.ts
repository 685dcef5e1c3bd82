export { gaugeReport } from './gaugeReport.ts';
export { piecesSaid } from './kitLoadsReport.ts';
export { type KitAsked, type KitGiven, kitReport, type SiteKitGiven, siteKitReport } from './kitReport.ts';
export { kitSheets } from './kitSheets.ts';
export { type FaultAt, faultFinder, faultNamer } from './namedFaults.ts';
export { exceptionsFirst, type Placed, peopleDays } from './peopleDays.ts';
export { peopleOf } from './peopleOf.ts';
export { problemReport } from './problemReport.ts';
export { remediesInWords } from './remediesInWords.ts';
export { programmeRemediesReport, siteRemediesReport } from './remediesReport.ts';
export { problemIn, reportedFaults, restIn, siteReportIn } from './reportIn.ts';
export {
  type AboardGiven,
  type LegGiven,
  leftOutReasons,
  type RolloutGiven,
  rolloutReport,
} from './rolloutReport.ts';
export { rolloutSheets } from './rolloutSheets.ts';
export { safetyReport } from './safetyReport.ts';
export { siteCup } from './siteCup.ts';
export { findingOf, siteReport, workingReport } from './siteReport.ts';
export { type SiteSaid, shortIn, siteSaid } from './siteSaid.ts';
export { siteShort } from './siteShort.ts';
export { siteYears } from './siteYears.ts';
export { wearReport } from './wearReport.ts';
