import type { SiteDesign } from '@eavewell/engine';
import { verdictMarks } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { figures, headings } = spoken.commandLine;
const { numbers, findings } = spoken;

/** Has a site a section of stands? Then the caution of stands is in it. */
export function hasStandSection(site: SiteDesign): boolean {
  return site.stands.length > 0 || site.standGate !== 'notNeeded';
}

/** The stands of a site: may they be filled, what the sums say, and the caution that stands beside every such sum. */
export function standSection(sheet: Sheet, site: SiteDesign): void {
  if (hasStandSection(site)) {
    sheet.heading(headings.stands);
    if (site.standGate !== 'notNeeded') sheet.line(findings.standGate(site.standGate), 2);
    for (const found of site.stands)
      sheet.line(findings.stand(found), 2, 2, verdictMarks[found.verdict][sheet.look.drawn ? 'drawn' : 'plain']);
    if (site.stands.length > 0) sheet.table(columnsOf(), site.stands.map(rowOf));
    sheet.line(spoken.cautions.stand, 2);
  }
  if (site.heaviestPiece !== null && site.cautions.includes('lifting')) {
    sheet.heading(headings.heaviestPiece);
    sheet.line(findings.heaviestPiece(site.heaviestPiece), 2);
  }
}

const columnsOf = () =>
  figures.standColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const);

function rowOf(f: SiteDesign['stands'][number]): readonly string[] {
  const figure = (value: number | null, unit: string) =>
    value === null ? spoken.say('numbers.notKnown') : numbers.quantity(value, unit);
  const both = (empty: number | null, full: number | null) => `${figure(empty, 'number')} / ${figure(full, 'number')}`;
  return [
    f.tankId,
    figure(f.massFull_kg, 'kg'),
    figure(f.bearing_kPa, 'kPa'),
    figure(f.bearingAllowed_kPa, 'kPa'),
    both(f.empty.overturning_factor, f.full.overturning_factor),
    both(f.empty.sliding_factor, f.full.sliding_factor),
  ];
}
