import {
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type Problem,
  type SiteFacts,
  type WaterTestsFinding,
} from '../../kernel/index.ts';

/** What samples since hand-over say of the cup. */
export interface SamplesSaid {
  readonly hasGerms: boolean;
  /** Is there a clean one that is young enough? */
  readonly isClean: boolean;
  readonly isTooOld: boolean;
  /** May one that cannot be used be the one that says no? */
  readonly isOpen: boolean;
  readonly cappedBy: EngineProblemCode | null;
  readonly problems: readonly Problem[];
}

/** What is asked of the samples of a site. */
export interface SamplesGiven {
  readonly site: Pick<SiteFacts, 'siteId'>;
  readonly waterTests: WaterTestsFinding | null;
  readonly today?: DayIndex | null;
  readonly settings: Pick<DesignSettings, 'sampleAge_days'>;
}

/** Did the last sample hold germs, and if not, is there a clean one that people may rest on? */
export function samplesSaid({ site, waterTests, today = null, settings }: SamplesGiven): SamplesSaid {
  const { last = null, clean_count = 0, lastCleanOn = null, isUnusableOpen: isOpen = false } = waterTests ?? {};
  const hasGerms = last !== null && (last.sign === 'more' || (last.sign === 'equal' && last.count_per_100mL! > 0));
  if (hasGerms) return { hasGerms, isClean: false, isTooOld: false, isOpen, cappedBy: null, problems: [] };
  const age_days = lastCleanOn === null || today === null ? null : today - lastCleanOn;
  const isTooOld = age_days !== null && age_days > settings.sampleAge_days;
  const isClean = clean_count > 0 && !isTooOld;
  if (isClean) return { hasGerms, isClean, isTooOld, isOpen, cappedBy: null, problems: [] };
  const place = { file: 'waterTests.csv', siteId: site.siteId };
  const problem = isTooOld
    ? engineProblem('safety.sample_too_old', place, { age_days: age_days!, most_days: settings.sampleAge_days })
    : engineProblem('safety.no_clean_sample', place, {});
  return { hasGerms, isClean, isTooOld, isOpen, cappedBy: problem.code, problems: [problem] };
}
