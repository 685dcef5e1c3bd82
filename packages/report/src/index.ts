export { gaugeReport } from './gaugeReport.ts';
export { faultFinder, faultNamer } from './namedFaults.ts';
export { exceptionsFirst, type Placed, peopleDays } from './peopleDays.ts';
export { peopleOf } from './peopleOf.ts';
export { problemReport } from './problemReport.ts';
export { remediesInWords } from './remediesInWords.ts';
export { programmeRemediesReport, siteRemediesReport } from './remediesReport.ts';
export { findingOf, siteReport } from './siteReport.ts';
export { siteShort } from './siteShort.ts';
