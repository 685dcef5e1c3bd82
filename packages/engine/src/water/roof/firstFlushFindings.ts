import {
  type DesignSettings,
  type DiverterFacts,
  engineProblem,
  explain,
  type FirstFlushFinding,
  type Judged,
  type Problem,
  roofPlanArea,
  type SiteFacts,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { armedAfter_days, chamberEnough_fraction, lightRain_mm_per_h } from './constants.ts';
import { type FirstFlushChamber, firstFlushChamber } from './firstFlushChamber.ts';

/** What is gathered while chambers are looked at. */
interface Notes {
  readonly siteId: string;
  readonly problems: Problem[];
  readonly working: WorkingLine[];
}

/**
 * What do the first-flush chambers of this site do? Each diverter by its own roof: the chamber wanted for its depth, what it lets go, what is left of the
 * dirt and when it is empty again. Told, not judged. What it costs in water is in the balance.
 *
 * @param given - the site's facts and the settings, whose firstFlush_mm stands where no depth is stated
 * @returns one finding for each diverter whose roof is known: volumes [L], depth [mm], time [h]; problems and working
 * @problem drainage.first_flush_small - the chamber holds less than nine tenths of the depth wanted
 * @problem drainage.first_flush_slow - it takes longer than three days to empty
 * @problem drainage.first_flush_fast - it lets through more than a light rain while it is full
 * @problem drainage.first_flush_not_measured - chamber, bore or hole is missing, so that its emptying is not known
 * @definition ours: docs/decisions/0178-first-flush-told-not-judged.md
 */
export function firstFlushFindings(given: {
  readonly site: SiteFacts;
  readonly settings: Pick<DesignSettings, 'firstFlush_mm'>;
}): Judged<readonly FirstFlushFinding[]> {
  const { site, settings } = given;
  const notes: Notes = { siteId: site.siteId, problems: [], working: [] };
  const finding = site.roofs.flatMap((roof): FirstFlushFinding[] => {
    const { roofId, diverter } = roof;
    const drainedArea_m2 = (roofPlanArea(roof) ?? 0) * (roof.gutteredFraction ?? 1);
    if (diverter === null || !(drainedArea_m2 > 0)) return [];
    const wanted_mm = diverter.firstFlush_mm ?? settings.firstFlush_mm;
    const chamber = firstFlushChamber(diverter, drainedArea_m2, wanted_mm);
    explainChamber(roofId, diverter, chamber, { drainedArea_m2, wanted_mm }, notes.working);
    noteChamber(roofId, diverter, chamber, notes);
    const { diverted_mm, chamber_L, chamberWanted_L, emptying_h, leak_mm_per_h, loadLeft_fraction } = chamber;
    const figures = { diverted_mm, chamber_L, chamberWanted_L, emptying_h, leak_mm_per_h, loadLeft_fraction };
    return [{ roofId, isBlocked: diverter.drainHole === 'blocked', ...figures }];
  });
  return { finding, problems: notes.problems, working: notes.working };
}

function noteChamber(roof: string, diverter: DiverterFacts, chamber: FirstFlushChamber, notes: Notes): void {
  const { chamber_L, chamberWanted_L, emptying_h, leak_mm_per_h } = chamber;
  const place = (column: string) => ({ file: 'diverters.csv', siteId: notes.siteId, column });
  if (chamber_L !== null && chamber_L < chamberEnough_fraction * chamberWanted_L) {
    const facts = { roof, chamber_L, wanted_L: chamberWanted_L };
    notes.problems.push(engineProblem('drainage.first_flush_small', place('chamber_L'), facts));
  }
  if (diverter.drainHole === 'blocked' || chamberWanted_L === 0) return;
  if (emptying_h === null || leak_mm_per_h === null) {
    const { chamberBore_mm, drainHole_mm } = diverter;
    const measures = { chamber_L, chamberBore_mm, drainHole_mm };
    const missing = Object.entries(measures).flatMap(([name, value]) => (value === null ? [name] : []));
    const column = missing[0] ?? 'drainHole_mm';
    notes.problems.push(engineProblem('drainage.first_flush_not_measured', place(column), { roof, missing }));
    return;
  }
  if (emptying_h > armedAfter_days * 24)
    notes.problems.push(
      engineProblem('drainage.first_flush_slow', place('drainHole_mm'), { roof, emptying_h, days: armedAfter_days }),
    );
  if (leak_mm_per_h > lightRain_mm_per_h)
    notes.problems.push(
      engineProblem('drainage.first_flush_fast', place('drainHole_mm'), { roof, emptying_h, leak_mm_per_h }),
    );
}

function explainChamber(
  roof: string,
  { drainHole, chamberBore_mm, drainHole_mm }: DiverterFacts,
  chamber: FirstFlushChamber,
  { drainedArea_m2, wanted_mm }: { readonly drainedArea_m2: number; readonly wanted_mm: number },
  working: WorkingLine[],
): void {
  const named = workingInput('roof', roof, 'text');
  explain(working, {
    code: 'drainage.chamber',
    value: chamber.chamberWanted_L,
    unit: 'L',
    inputs: [named, workingInput('depth', wanted_mm, 'mm'), workingInput('drainedArea', drainedArea_m2, 'm2')],
    source: 'definition',
  });
  explain(working, {
    code: 'drainage.loadLeft',
    value: chamber.loadLeft_fraction,
    unit: 'fraction',
    inputs: [named, workingInput('diverted', chamber.diverted_mm, 'mm'), workingInput('drainHole', drainHole, 'text')],
    source: 'martinson-thomas-2005, abstract',
  });
  if (chamber.emptying_h === null) return;
  explain(working, {
    code: 'drainage.emptying',
    value: chamber.emptying_h,
    unit: 'h',
    inputs: [
      named,
      workingInput('chamber', chamber.chamber_L!, 'L'),
      workingInput('bore', chamberBore_mm!, 'mm'),
      workingInput('hole', drainHole_mm!, 'mm'),
      workingInput('chamberHeight', chamber.head_m!, 'm'),
    ],
    source: 'torricelli-1644',
  });
}
