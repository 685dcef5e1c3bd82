import { betaBinomial, student } from './chances.ts';
import {
  boilingPage,
  bucketDoses,
  ctByLogs,
  ctReading,
  ctTable,
  olderRegression,
  standardAtmosphere,
  stockRecipes,
} from './chlorine.ts';
import { monthlyMeans, monthlyTotals } from './completeness.ts';
import { costFiles } from './cost.ts';
import { sphere, warwickDemand, who } from './demand.ts';
import { distances } from './distances.ts';
import { drainageFiles } from './drainage.ts';
import { droughtClasses, droughtIndex, normalTable, thomFit } from './drought.ts';
import { aphaTable, bamTables, blodgettTables, jarvisBounds, jarvisTables, ridoutLimits } from './ecoli.ts';
import { enhealth } from './enhealth.ts';
import { lMomentTests, reducedTable, textbookExtremes } from './extremes.ts';
import { drawnSpreads, latestOfCrews, openDaysAlone, openDaysInSpells, ranksOfDraws, spreads } from './finishDates.ts';
import { firstFlushLoad, standpipes } from './firstFlush.ts';
import { gutterFiles } from './gutters.ts';
import { claimedOutputs, faoPower, labourer, shiftPower, sustained } from './handPumping.ts';
import { liftingPage, liftingVertical } from './lifting.ts';
import { boatPlates, ferryBoats, printedBins, textbookBounds } from './loads.ts';
import { chancesOfRain, wetDays } from './madeRain.ts';
import { neighbourRain } from './neighbours.ts';
import { drainingTank, frictionFactors } from './pipes.ts';
import { bamPlateCounts, haasBook, uncountablePlates } from './plates.ts';
import type { PublishedFile } from './published.ts';
import { lancaster, texasFirstFlush, warwickSupply } from './roofYield.ts';
import { calledExact, halfInfected, halfInfectedCampylobacter, roofGiardia, whoBurden } from './safety.ts';
import { allowedExceedances, germBandsPrinted, inspectionScores, membraneTable } from './samples.ts';
import { loucksVanBeek, punmia } from './sequentPeak.ts';
import { baffling, hazenVelocities, settlingDrop, settlingSphere } from './settling.ts';
import { canadianGround, ibcGround, indianGround, philippineWind, tankWind } from './stands.ts';
import { stationFiles } from './stationFiles.ts';
import { textbookStorms } from './storms.ts';
import { treatmentFiles } from './treatment.ts';
import { conversions } from './units.ts';
import { oldViscosity, waterPage, waterViscosity, waterViscosityByDensity } from './waterProperties.ts';

/** Every list of published rows. A new one is added here, and its rows are run and counted. */
export const everyFile: readonly PublishedFile[] = [
  betaBinomial,
  boatPlates,
  ferryBoats,
  printedBins,
  textbookBounds,
  canadianGround,
  chancesOfRain,
  conversions,
  ...costFiles,
  distances,
  ...drainageFiles,
  droughtClasses,
  droughtIndex,
  enhealth,
  ibcGround,
  indianGround,
  lMomentTests,
  firstFlushLoad,
  ...gutterFiles,
  lancaster,
  liftingPage,
  liftingVertical,
  loucksVanBeek,
  monthlyMeans,
  monthlyTotals,
  neighbourRain,
  normalTable,
  philippineWind,
  punmia,
  reducedTable,
  sphere,
  standpipes,
  stationFiles,
  student,
  tankWind,
  texasFirstFlush,
  textbookExtremes,
  textbookStorms,
  thomFit,
  warwickDemand,
  warwickSupply,
  wetDays,
  who,
  claimedOutputs,
  faoPower,
  labourer,
  shiftPower,
  sustained,
  drainingTank,
  frictionFactors,
  baffling,
  hazenVelocities,
  settlingDrop,
  settlingSphere,
  calledExact,
  halfInfected,
  halfInfectedCampylobacter,
  roofGiardia,
  whoBurden,
  oldViscosity,
  ...treatmentFiles,
  waterPage,
  waterViscosity,
  waterViscosityByDensity,
  aphaTable,
  bamPlateCounts,
  bamTables,
  blodgettTables,
  haasBook,
  jarvisBounds,
  jarvisTables,
  ridoutLimits,
  uncountablePlates,
  allowedExceedances,
  germBandsPrinted,
  inspectionScores,
  membraneTable,
  boilingPage,
  bucketDoses,
  ctByLogs,
  ctReading,
  ctTable,
  olderRegression,
  standardAtmosphere,
  stockRecipes,
  spreads,
  drawnSpreads,
  ranksOfDraws,
  latestOfCrews,
  openDaysAlone,
  openDaysInSpells,
];
