export {
  type DesignReport,
  designReport,
  designSchemaText,
  designSchemaVersion,
  type GaugeReport,
  type ProblemReport,
  type SiteReport,
} from './designReport.ts';
export {
  type SafetyListReport,
  safetySchemaText,
  safetySchemaVersion,
  type WearListReport,
  wearSchemaText,
  wearSchemaVersion,
} from './dueReports.ts';
export {
  type KitLineReport,
  type KitReport,
  kitReport,
  kitSchemaText,
  kitSchemaVersion,
  type SiteKitLineReport,
  type SiteKitReport,
} from './kit.ts';
export type { ProgrammeCostReport, WholeLifeCostReport } from './kitCost.ts';
export type { CarrierLoadsReport, KitsCarriedReport, LoadCountsReport, StowedReport } from './kitLoads.ts';
export type { PlainSheet, PlainSheetColumn, SheetColumnKind } from './plainSheets.ts';
export { type RemediesInWords, remediesInWords } from './remedies.ts';
export {
  type RolloutHaulReport,
  type RolloutLegReport,
  type RolloutReport,
  type RolloutTripReport,
  rolloutReport,
  rolloutSchemaText,
  rolloutSchemaVersion,
} from './rollout.ts';
export { type RolloutComparison, type RolloutWorking, rolloutComparison, rolloutWorking } from './rolloutFigures.ts';
export {
  type RolloutSheet,
  type RolloutTripAnswer,
  rolloutSheet,
  rolloutTrip,
  type SheetCandidate,
  type SheetCrew,
  type SheetStop,
  type SheetStrip,
  type SheetTrip,
} from './rolloutSheet.ts';
export { type SiteCup, siteCup } from './siteCup.ts';
export { type SiteShort, siteShort } from './siteShort.ts';
export { type SiteYears, siteYears } from './siteYears.ts';
