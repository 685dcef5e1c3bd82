import type { GateAt, HeadLine, HeadPoint, PartLetters, SectionInput } from '@eavewell/drawing';
import type { SiteFacts, Station } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import type { SiteReport } from '../siteFigures.ts';
import { unitLetters } from '../treatmentFigures.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** Where the points of a line of pressure stand in the drawing. */
const drawnAt = { tank: 'tank', pipe: null, unitInlet: 'unit', unitOutlet: 'unit', tap: 'tap' } as const;

/**
 * What was found of gutters, pipes, stands and the treatment unit, as the section is lettered with it.
 *
 * @param report - what the site came to
 * @param site - its facts
 * @param words - the language of the page
 * @returns flow and capacity beside each part [L/s], the line of pressure [m], who signed for which stand, and what the unit passes
 */
export function sectionFindings(
  report: Pick<SiteReport, 'drainage' | 'head' | 'treatment' | 'wear'>,
  site: Pick<SiteFacts, 'tanks'>,
  words: Words,
): Pick<SectionInput, 'partLetters' | 'headLines' | 'gates' | 'unitLetters'> {
  return {
    partLetters: (report.drainage?.parts ?? []).flatMap((part) => lettersOf(part, words)),
    headLines: report.head.flatMap(headLineOf),
    unitLetters: unitLetters(report, words),
    gates: site.tanks.flatMap((tank) => gateOf(tank, words)),
  };
}

/** What the storm brings to a part, of what it carries. */
export function flowWords(
  {
    flow_L_per_s,
    capacity_L_per_s,
  }: Pick<NonNullable<SiteReport['drainage']>['parts'][number], 'flow_L_per_s' | 'capacity_L_per_s'>,
  { say, numbers }: Words,
): string | null {
  if (flow_L_per_s === null || capacity_L_per_s === null) return null;
  const capacity = numbers.quantity(capacity_L_per_s, 'L_per_s');
  return say('water.flow_of', { flow: numbers.quantity(flow_L_per_s, 'number'), capacity });
}

function lettersOf(part: NonNullable<SiteReport['drainage']>['parts'][number], words: Words): readonly PartLetters[] {
  const text = flowWords(part, words);
  return text === null ? [] : [{ part: part.part, id: part.id, text, verdict: part.verdict }];
}

function headLineOf({ tankIds, grade, hasHandPump, pumpAdds_m }: SiteReport['head'][number]): readonly HeadLine[] {
  const points = grade.flatMap(({ place, elevation_m, grade_m }): readonly HeadPoint[] => {
    const at = drawnAt[place];
    return at === null || elevation_m === null ? [] : [{ at, elevation_m, head_m: grade_m - elevation_m }];
  });
  return points.length < 2 ? [] : [{ tankIds, points, pumpAdds_m: hasHandPump ? pumpAdds_m : null }];
}

/** A tank on a stand, signed for or not; one on the ground needs no signature. */
function gateOf(
  { tankId, standHeight_m, signedBy, signedOn }: SiteFacts['tanks'][number],
  { say }: Words,
): readonly GateAt[] {
  if (standHeight_m === null || standHeight_m <= 0) return [];
  return signedBy === null || signedOn === null
    ? [{ tankId, gate: 'closed', words: say('water.gate_closed') }]
    : [{ tankId, gate: 'open', words: say('water.gate_open', { by: signedBy }) }];
}

/** The rooms whose workings belong to a station. */
const stationOf: Readonly<Record<string, Station>> = {
  drainage: 'gutter',
  storm: 'gutter',
  settling: 'settling',
  storage: 'storage',
  stand: 'stand',
  head: 'tap',
  treatment: 'treatmentUnit',
  wear: 'treatmentUnit',
  waterTests: 'cup',
  chlorine: 'cup',
  safety: 'cup',
};

/** The station whose working is open; null where none is. */
export const pressedStation = (opened: string | null): Station | null =>
  opened === null ? null : (stationOf[opened.split('.')[0]!] ?? null);
