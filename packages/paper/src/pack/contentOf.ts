import { buildingOf, carePicture, carePictureIds } from '@eavewell/drawing';
import { residualWanted_mg_per_L, type SiteFacts, type Station, type StationVerdict } from '@eavewell/engine';
import { type SiteReport, stepsOf } from '@eavewell/tables';
import { type Language, markWords, sectionFindings, sectionWords } from '@eavewell/words';
import type { CaretakerPicture, PackStation, PackStep, PackTests, SitePackContent } from './content.ts';
import { sectionForPaper } from './sectionForPaper.ts';
import { stationFigure, stationReason } from './stationSaid.ts';

/** What a pack is gathered from: a site's facts and what it came to, and what other rooms say of the trip. */
export interface Gathered
  extends Pick<SitePackContent, 'programme' | 'caretaker' | 'trip' | 'way' | 'loads' | 'detail'> {
  readonly site: SiteFacts;
  /** In the language of the pack. */
  readonly report: SiteReport;
  /** Who measured it last, and when; null: not known. */
  readonly measuredBy: string | null;
  readonly measuredOn: string | null;
}

/**
 * What is said in the pack of one site.
 *
 * @param gathered - facts, report, and what is carried and gone
 * @param language - of the pack
 * @returns the content: nothing is judged here, and what is not known is null
 * @definition ours: docs/methods/paper.md
 */
export function contentOf(gathered: Gathered, language: Language): SitePackContent {
  const { site, report, measuredBy, measuredOn, ...given } = gathered;
  return {
    programme: given.programme,
    siteId: site.siteId,
    name: site.name,
    people: report.people,
    caretaker: given.caretaker,
    trip: given.trip,
    finding: report.finding,
    way: given.way,
    section: isDrawable(site) ? { ...sectionOf(site, report, language), measuredOn, measuredBy } : null,
    stations: (Object.keys(report.stations) as Station[]).map((station) => stationOf(station, report, language)),
    detail: given.detail,
    beforeAnything: beforeAnything(report, language),
    cautions: firstCautions(report, language),
    loads: given.loads,
    steps: stepsSaid(site, report, language),
    tests: testsOf(site, report, language),
    pictures: careSaid(language),
  };
}

/** A building of which nothing at all was entered is not drawn: all of it would be guessed. */
const isDrawable = ({ roofs, tanks }: SiteFacts): boolean => roofs.length > 0 || tanks.length > 0;

const standsIn =
  (language: Language) =>
  (station: Station, verdict: StationVerdict): string =>
    language.say('pack.station_stands', { station: language.stations[station], verdict: language.verdicts[verdict] });

function sectionOf(site: SiteFacts, report: SiteReport, language: Language) {
  return sectionForPaper({
    building: buildingOf(site),
    levels: null,
    stations: report.stations,
    letters: markWords(report, language, standsIn(language)),
    words: { ...sectionWords(language), proposed: language.say('drawn.proposed_on_paper') },
    ...sectionFindings(report, site, language),
  });
}

function stationOf(station: Station, report: SiteReport, language: Language): PackStation {
  const verdict = report.stations[station];
  return {
    station,
    verdict,
    figure: stationFigure(station, report, language),
    reason: verdict === 'holds' ? null : stationReason(station, report, language),
    toDo: toDo(station, verdict, report, language),
  };
}

/** What would mend the tank, or that something is to be measured; what mends other stations is in their sentences. */
function toDo(station: Station, verdict: StationVerdict, { remedies }: SiteReport, { say }: Language): string | null {
  if (verdict === 'unknown') return say('steps.measure');
  if (station !== 'storage' || (verdict !== 'short' && verdict !== 'tight')) return null;
  return remedies?.ranked[0]?.about ?? null;
}

function beforeAnything({ standGate }: SiteReport, { say }: Language): readonly string[] {
  const ground = standGate.gate === 'notNeeded' ? [] : [say('steps.before_ground')];
  return [say('steps.before_people'), ...ground, say('steps.before_roof'), say('steps.before_photos')];
}

/** On the first page: the gate of a stand, work at height, drinking. All others stand at their steps. */
function firstCautions({ standGate, cautions }: SiteReport, { say }: Language): readonly string[] {
  const high = cautions.filter(({ caution }) => caution === 'height' || caution === 'fragileRoof');
  return [
    ...(standGate.gate === 'closed' ? [standGate.said] : []),
    ...high.map(({ said }) => said),
    say('pack.caution_drink'),
  ];
}

function stepsSaid(site: SiteFacts, report: SiteReport, { say }: Language): readonly PackStep[] {
  const saidOf = (caution: string) => report.cautions.find((one) => one.caution === caution)?.said;
  return stepsOf(site, report).map(({ step, cautions }) => ({
    said: say(`steps.${step}`),
    cautions: cautions.map((caution) => {
      const said = saidOf(caution) ?? say(`cautions.${caution}`);
      const piece = caution === 'lifting' && report.heaviestPiece !== null ? ` ${report.heaviestPiece.said}` : '';
      return `${said}${piece}`;
    }),
  }));
}

/** Which places are sampled, how many taps and units there are, what flow they were planned for. */
function testsOf(site: SiteFacts, { treatment, safety }: SiteReport, { stations }: Language): PackTests {
  const units = treatment.flatMap(({ serial }) => (serial === null ? [] : [serial]));
  const flows = treatment.flatMap(({ flowClean_L_per_h }) => (flowClean_L_per_h === null ? [] : [flowClean_L_per_h]));
  const hasChlorine = safety !== null && safety.chlorine !== null;
  const tanks = site.tanks.slice(0, mostTanks).map(({ tankId }) => `${stations.storage} ${tankId}`);
  return {
    // Of one unit: what several give together depends on the taps.
    flow_L_per_h: treatment.length === 1 ? (flows[0] ?? null) : null,
    taps_count: site.taps_count,
    // What it was tested at before; never over what the catalogue gives the unit.
    air_kPa: treatment[0]?.pressureTest?.pressure_kPa ?? null,
    airMost_kPa: leastOf(site.treatment.units.map(({ figures }) => figures?.highestPressure_kPa ?? null)),
    airFall_kPa_per_min: treatment[0]?.pressureTest?.fallLimit_kPa_per_min ?? null,
    units,
    samplePlaces: [...tanks, stations.tap, stations.cup],
    residual_mg_per_L: hasChlorine ? residualWanted_mg_per_L(site.safety.chlorination?.pH ?? null) : null,
    hasChlorine,
  };
}

const leastOf = (values: readonly (number | null)[]): number | null => {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : Math.min(...known);
};

/** Tanks named in the record; others are written in. Ours. */
const mostTanks = 2;

const careSaid = ({ say }: Language): readonly CaretakerPicture[] =>
  carePictureIds.map((id) => ({ picture: carePicture(id), title: say(`pictures.${id}`) }));
