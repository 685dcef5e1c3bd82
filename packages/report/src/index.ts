export { gaugeReport } from './gaugeReport.ts';
export { peopleOf } from './peopleOf.ts';
export { problemReport } from './problemReport.ts';
export { programmeRemediesReport, siteRemediesReport } from './remediesReport.ts';
export { designReportIn, findingIn, remedyIn, siteReportIn } from './reportIn.ts';
export { findingOf, siteReport } from './siteReport.ts';
