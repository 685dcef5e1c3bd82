import {
  type BarrierFinding,
  type ChlorineFinding,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type Problem,
  type Reductions,
  type SiteFacts,
  type StatedReductions,
  type TreatmentUnitFacts,
  unmeasuredUnit,
} from '../../kernel/index.ts';
import { mostCredited } from './constants.ts';
import { creditedReductions, rowReductions } from './creditedReductions.ts';
import { meanReduction_log10, parallelReduction_log10 } from './meanReduction.ts';
import { byClass, fieldOf } from './reductions.ts';

/** A barrier that some or all of the people's water passes. */
export interface RowBarrier {
  readonly credited: Reductions;
  readonly used_fraction: number;
}

/** All barriers of a site. */
export interface SafetyBarriers {
  readonly findings: readonly BarrierFinding[];
  /** One after another; all units together are one. */
  readonly row: readonly RowBarrier[];
  readonly credited: Reductions;
  /** With one cartridge leaking; null where there is no unit. */
  readonly leaking: Reductions | null;
  /** Is there evidence for any of them, or none that wants it? */
  readonly isShown: boolean;
  /** Why no verdict of them is better than tight; null where nothing is. */
  readonly cappedBy: EngineProblemCode | null;
  /** Did a test with air show that a unit takes out less than is stated? */
  readonly isTestedLess: boolean;
  readonly problems: readonly Problem[];
}

/** What a barrier is credited with, and what of it wants telling. */
interface Credit {
  readonly finding: BarrierFinding;
  readonly stated: StatedReductions;
  /** What its test with air supports, where that is less than what is stated of a class; else null. */
  readonly supported_log10: number | null;
  /** Less than is stated of the largest germs, which such a test is for: there is a hole. */
  readonly isTestedLess: boolean;
}

/**
 * The barriers of a site, with what each is credited. Units stand side by side and share the water equally, so that together they are the mean of what
 * they let through. A unit has no more than its last test with air supports: what flows through a hole is not filtered of anything.
 */
export function safetyBarriers(
  site: SiteFacts,
  chlorine: ChlorineFinding | null,
  settings: DesignSettings,
  supported_log10: ReadonlyMap<string, number>,
): SafetyBarriers {
  const units = site.treatment.units.filter(({ removedOn }) => removedOn === null);
  const ofUnits = units.map((unit) => creditOfUnit(unit, settings, supported_log10.get(unit.serial) ?? null));
  const others = site.safety.barriers.map(
    ({ barrierId, kind, reductions }): Credit => ({
      finding: {
        ...{ kind, barrierId, evidence: reductions.evidence ?? 'none', leaking: null },
        credited: creditedReductions({ kind, stated: reductions, most: null }),
      },
      stated: reductions,
      supported_log10: null,
      isTestedLess: false,
    }),
  );
  const ofChlorine = chlorine === null ? [] : [chlorineBarrier(chlorine)];
  const together = unitsTogether(ofUnits.map(({ finding }) => finding.credited));
  const row: readonly RowBarrier[] = [
    ...(together === null ? [] : [{ credited: together, used_fraction: 1 }]),
    ...ofChlorine.map(({ credited }) => ({ credited, used_fraction: 1 })),
    ...site.safety.barriers.map(({ used_fraction }, index) => ({
      credited: others[index]!.finding.credited,
      used_fraction: used_fraction ?? 1,
    })),
  ];
  const all = [...ofUnits, ...others];
  const isTestedLess = ofUnits.some((one) => one.isTestedLess);
  const findings = [...ofUnits.map(({ finding }) => finding), ...ofChlorine, ...others.map(({ finding }) => finding)];
  const withoutUnits = rowReductions(row.slice(together === null ? 0 : 1).map(({ credited }) => credited));
  const leaking = leakingTogether(ofUnits.map(({ finding }) => finding));
  return {
    ...{ findings, row },
    credited: rowReductions(row.map(({ credited }) => credited)),
    leaking: leaking === null ? null : rowReductions([leaking, withoutUnits]),
    isShown: findings.length === 0 || findings.some(({ evidence }) => evidence !== 'none'),
    cappedBy: isTestedLess
      ? 'safety.test_supports_less'
      : all.some(isUnsigned)
        ? 'safety.evidence_without_source'
        : null,
    isTestedLess,
    problems: barrierProblems(site.siteId, all, findings),
  };
}

function creditOfUnit(
  { serial, figures }: TreatmentUnitFacts,
  { leak_fraction }: DesignSettings,
  supported_log10: number | null,
): Credit {
  const { reductions: stated, cartridges_count } = figures ?? unmeasuredUnit;
  const untested = creditedReductions({ kind: 'membrane', stated, most: null });
  const most = supported_log10 === null ? null : byClass(() => supported_log10);
  const credited = creditedReductions({ kind: 'membrane', stated, most });
  const isLess = Object.values(fieldOf).some((field) => untested[field] > credited[field]);
  const largest = untested.protozoa_log10 > 0 ? untested.protozoa_log10 : untested.bacteria_log10;
  const tight = { flow_L_per_min: 1, leak_fraction: 0 };
  const count = Math.max(1, cartridges_count ?? 1);
  const leaking = byClass((field) => {
    const cartridges = Array.from({ length: count }, (_, index) => ({
      ...tight,
      reduction_log10: credited[field],
      leak_fraction: index === 0 ? leak_fraction : 0,
    }));
    return parallelReduction_log10(cartridges)!;
  });
  return {
    finding: { kind: 'membrane', barrierId: serial, evidence: stated.evidence ?? 'none', credited, leaking },
    stated,
    supported_log10: isLess ? supported_log10 : null,
    isTestedLess: largest > (supported_log10 ?? Infinity),
  };
}

function chlorineBarrier({ credited }: ChlorineFinding): BarrierFinding {
  const isCredited = Object.values(credited).some((reduction) => reduction > 0);
  const evidence = isCredited ? ('credited' as const) : ('none' as const);
  return { kind: 'chlorine', barrierId: null, evidence, credited, leaking: null };
}

/** What units side by side take out; null where there is none. */
function unitsTogether(each: readonly Reductions[]): Reductions | null {
  if (each.length === 0) return null;
  return byClass(
    (field) => meanReduction_log10(each.map((one) => ({ share_factor: 1, reduction_log10: one[field] })))!,
  );
}

/** The same with one cartridge of one unit leaking, of the one where it does most harm. */
function leakingTogether(units: readonly BarrierFinding[]): Reductions | null {
  const cases = units.map(
    (_, leaky) => unitsTogether(units.map(({ credited, leaking }, index) => (index === leaky ? leaking! : credited)))!,
  );
  return cases.length === 0 ? null : byClass((field) => Math.min(...cases.map((one) => one[field])));
}

/** Is there evidence, and nobody who gave it? */
function isUnsigned({ stated: { evidence, source } }: Credit): boolean {
  return evidence !== null && evidence !== 'none' && source === null;
}

function barrierProblems(
  siteId: string,
  stated: readonly Credit[],
  findings: readonly BarrierFinding[],
): readonly Problem[] {
  const told = (
    code: EngineProblemCode,
    of: readonly BarrierFinding[],
    facts: Readonly<Record<string, number>> = {},
  ) => {
    if (of.length === 0) return [];
    const ofUnit = 'supports_log10' in facts ? 'pressureTests.csv' : 'parts.csv';
    const file = of.some(({ kind }) => kind === 'membrane') ? ofUnit : 'barriers.csv';
    return [engineProblem(code, { file, siteId }, { barriers: of.map(nameOf), ...facts })];
  };
  const where = (wanted: (one: Credit) => boolean) => stated.filter(wanted).map(({ finding }) => finding);
  const most = mostCredited.bacteria_log10;
  return [
    ...(findings.length === 0 ? [engineProblem('safety.no_barrier', { file: 'barriers.csv', siteId }, {})] : []),
    ...told(
      'safety.no_evidence',
      where(({ stated: { evidence } }) => (evidence ?? 'none') === 'none'),
    ),
    ...told('safety.evidence_without_source', where(isUnsigned)),
    ...stated.flatMap(({ finding, supported_log10, isTestedLess }) =>
      supported_log10 === null
        ? []
        : told(isTestedLess ? 'safety.test_supports_less' : 'safety.test_limits', [finding], {
            supports_log10: supported_log10,
          }),
    ),
    ...told(
      'safety.over_most',
      where(({ finding, stated: of }) => finding.evidence !== 'none' && greatestOf(of) > most),
      { most_log10: most },
    ),
    ...told(
      'safety.viruses_by_pore',
      where(
        ({ finding: { kind, evidence }, stated: { viruses_log10 } }) =>
          kind === 'membrane' && evidence !== 'challengeTest' && (viruses_log10 ?? 0) > 0,
      ),
    ),
  ];
}

function greatestOf({ bacteria_log10, viruses_log10, protozoa_log10 }: StatedReductions): number {
  return Math.max(bacteria_log10 ?? 0, viruses_log10 ?? 0, protozoa_log10 ?? 0);
}

function nameOf({ barrierId, kind }: BarrierFinding): string {
  return barrierId ?? kind;
}
