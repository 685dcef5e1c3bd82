import { engineProblem, type GutterFacts } from '../../kernel/index.ts';
import { levelBelow_mm_per_m, runSlack_fraction } from './constants.ts';
import { sectionFaults } from './gutterSection.ts';
import { longGutterFactor } from './longGutterFactor.ts';
import { type Notes, placeOf } from './notes.ts';
import { fallOverRun_mm } from './uniformVelocity.ts';

/** Is there anything that keeps a gutter, or its outlets, from being judged? */
export interface GutterFaults {
  readonly gutter: boolean;
  readonly outlet: boolean;
}

/** The farthest way water runs along a gutter: as stated, else its length shared among its outlets; null where neither is known. */
export function runOf_m({ runToOutlet_m, length_m, outlets_count }: GutterFacts): number | null {
  return runToOutlet_m ?? (length_m === null ? null : length_m / (outlets_count ?? 1));
}

/** Everything that is missing or impossible about a gutter, each told as a problem of its own. */
export function gutterFaults(gutter: GutterFacts, notes: Notes): GutterFaults {
  const facts = { gutter: gutter.gutterId, roof: gutter.roofId };
  const isMeasured = noteMeasures(gutter, facts, notes);
  const runs = noteFall(gutter, facts, notes);
  const isRunKnown = noteRun(gutter, facts, notes);
  return { gutter: !isMeasured || !runs || !isRunKnown, outlet: noteOutlet(gutter, facts, notes) };
}

type Facts = Readonly<Record<string, string>>;

function noteMeasures(gutter: GutterFacts, facts: Facts, notes: Notes): boolean {
  const { width_mm, baseWidth_mm, length_m, shape } = gutter;
  const isSoleWider = shape === 'trapezoidal' && width_mm !== null && baseWidth_mm !== null && baseWidth_mm > width_mm;
  if (isSoleWider)
    notes.problems.push(
      engineProblem('drainage.sole_wider', placeOf(notes, 'gutters', 'baseWidth_mm'), {
        ...facts,
        ...{ baseWidth_mm, width_mm },
      }),
    );
  const faults: string[] = sectionFaults(gutter).filter((column) => !(isSoleWider && column === 'baseWidth_mm'));
  if (length_m === null || length_m <= 0) faults.push('length_m');
  if (faults.length > 0)
    notes.problems.push(
      engineProblem('drainage.gutter_not_measured', placeOf(notes, 'gutters', faults[0]), {
        ...facts,
        missing: faults,
      }),
    );
  return faults.length === 0 && !isSoleWider;
}

/** Level or backwards, water stands in it; where nobody measured the fall it is taken for level and said so. */
function noteFall(gutter: GutterFacts, facts: Facts, notes: Notes): boolean {
  const { fall_mm_per_m } = gutter;
  const place = placeOf(notes, 'gutters', 'fall_mm_per_m');
  if (fall_mm_per_m === null) {
    notes.problems.push(engineProblem('drainage.fall_unknown', place, facts));
    return true;
  }
  if (fall_mm_per_m > 0) return true;
  const run_m = runOf_m(gutter);
  const wanted = run_m === null ? {} : { run_m, fall_mm: fallOverRun_mm(run_m, levelBelow_mm_per_m) };
  const code = fall_mm_per_m === 0 ? 'drainage.gutter_level' : 'drainage.gutter_backwards';
  notes.problems.push(engineProblem(code, place, { ...facts, ...wanted, fall_mm_per_m }));
  return false;
}

/** No water runs farther than the gutter is long, nor can outlets be nearer than half of what each drains. */
function noteRun(gutter: GutterFacts, facts: Facts, notes: Notes): boolean {
  const { length_m, runToOutlet_m, depth_mm } = gutter;
  const place = placeOf(notes, 'gutters', 'runToOutlet_m');
  const outlets = gutter.outlets_count ?? 1;
  if (runToOutlet_m !== null && length_m !== null) {
    const least_m = (length_m / outlets / 2) * (1 - runSlack_fraction);
    if (runToOutlet_m > length_m * (1 + runSlack_fraction) || runToOutlet_m < least_m) {
      const told = { ...facts, run_m: runToOutlet_m, length_m, outlets };
      notes.problems.push(engineProblem('drainage.run_impossible', place, told));
      return false;
    }
  }
  const run_m = runOf_m(gutter);
  if (run_m === null || depth_mm === null || depth_mm <= 0) return true;
  if (longGutterFactor(run_m, depth_mm) !== null) return true;
  notes.problems.push(engineProblem('drainage.run_too_long', place, { ...facts, run_m, depth_mm }));
  return false;
}

/** True where its outlets cannot be judged. */
function noteOutlet(gutter: GutterFacts, facts: Facts, notes: Notes): boolean {
  const { outlet_mm, width_mm, depth_mm } = gutter;
  const place = placeOf(notes, 'gutters', 'outlet_mm');
  if (outlet_mm === null || outlet_mm <= 0) {
    notes.problems.push(engineProblem('drainage.outlet_not_measured', place, facts));
    return true;
  }
  if (width_mm !== null && outlet_mm > width_mm) {
    notes.problems.push(engineProblem('drainage.outlet_wider', place, { ...facts, outlet_mm, width_mm }));
    return true;
  }
  return depth_mm === null || depth_mm <= 0;
}
