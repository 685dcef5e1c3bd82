export {
  type DesignReport,
  designReport,
  designSchemaText,
  designSchemaVersion,
  type GaugeReport,
  type ProblemReport,
  type SiteReport,
} from './designReport.ts';
export { type RemediesInWords, remediesInWords } from './remedies.ts';
export { type SiteCup, siteCup } from './siteCup.ts';
export { type SiteShort, siteShort } from './siteShort.ts';
export { type SiteYears, siteYears } from './siteYears.ts';
