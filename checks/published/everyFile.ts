import { betaBinomial, student } from './chances.ts';
import { monthlyMeans, monthlyTotals } from './completeness.ts';
import { sphere, warwickDemand, who } from './demand.ts';
import { distances } from './distances.ts';
import { droughtClasses, droughtIndex, normalTable, thomFit } from './drought.ts';
import { enhealth } from './enhealth.ts';
import { lMomentTests, reducedTable, textbookExtremes } from './extremes.ts';
import { liftingPage, liftingVertical } from './lifting.ts';
import { chancesOfRain, wetDays } from './madeRain.ts';
import { neighbourRain } from './neighbours.ts';
import type { PublishedFile } from './published.ts';
import { lancaster, texasFirstFlush, warwickSupply } from './roofYield.ts';
import { loucksVanBeek, punmia } from './sequentPeak.ts';
import { canadianGround, ibcGround, indianGround, philippineWind, tankWind } from './stands.ts';
import { stationFiles } from './stationFiles.ts';
import { textbookStorms } from './storms.ts';
import { conversions } from './units.ts';

/** Every list of published rows. A new one is added here, and its rows are run and counted. */
export const everyFile: readonly PublishedFile[] = [
  betaBinomial,
  canadianGround,
  chancesOfRain,
  conversions,
  distances,
  droughtClasses,
  droughtIndex,
  enhealth,
  ibcGround,
  indianGround,
  lMomentTests,
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
];
