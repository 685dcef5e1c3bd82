import type { SiteFacts } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { DrawnWords } from './drawnWords.ts';

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
  words: DrawnWords,
) {
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
  { say, numbers }: DrawnWords,
): string | null {
  if (flow_L_per_s === null || capacity_L_per_s === null) return null;
  const capacity = numbers.quantity(capacity_L_per_s, 'L_per_s');
  return say('drawn.flow_of', { flow: numbers.quantity(flow_L_per_s, 'number'), capacity });
}

function lettersOf(part: NonNullable<SiteReport['drainage']>['parts'][number], words: DrawnWords) {
  const text = flowWords(part, words);
  return text === null ? [] : [{ part: part.part, id: part.id, text, verdict: part.verdict }];
}

function headLineOf({ tankIds, grade, hasHandPump, pumpAdds_m }: SiteReport['head'][number]) {
  const points = grade.flatMap(({ place, elevation_m, grade_m }) => {
    const at = drawnAt[place];
    return at === null || elevation_m === null ? [] : [{ at, elevation_m, head_m: grade_m - elevation_m }];
  });
  return points.length < 2 ? [] : [{ tankIds, points, pumpAdds_m: hasHandPump ? pumpAdds_m : null }];
}

/** May a tank on a stand be filled, and what is said of it. */
interface GateLetters {
  readonly tankId: string;
  readonly gate: 'closed' | 'open';
  readonly words: string;
}

/** A tank on a stand, signed for or not; one on the ground needs no signature. */
function gateOf(
  { tankId, standHeight_m, signedBy, signedOn }: SiteFacts['tanks'][number],
  { say }: Pick<DrawnWords, 'say'>,
): readonly GateLetters[] {
  if (standHeight_m === null || standHeight_m <= 0) return [];
  return signedBy === null || signedOn === null
    ? [{ tankId, gate: 'closed', words: say('drawn.gate_closed') }]
    : [{ tankId, gate: 'open', words: say('drawn.gate_open', { by: signedBy }) }];
}

/** What the drawing says beside the unit: flow, pressure, and when its set is due. */
export function unitLetters(
  { treatment, wear }: Pick<SiteReport, 'treatment' | 'wear'>,
  words: DrawnWords,
): readonly string[] {
  const { say, numbers } = words;
  const [unit] = treatment;
  if (unit === undefined || unit.serial === null) return [];
  const due = wear?.find(({ serial }) => serial === unit.serial)?.endsOn ?? null;
  return [
    ...(unit.flowNow_L_per_h === null ? [] : [numbers.quantity(unit.flowNow_L_per_h, 'L/h')]),
    ...(unit.pressure_kPa === null ? [] : [numbers.quantity(unit.pressure_kPa, 'kPa')]),
    ...(due === null ? [] : [say('drawn.due', { day: numbers.date(due.p50) })]),
  ];
}
