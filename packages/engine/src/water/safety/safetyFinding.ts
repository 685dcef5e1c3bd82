import type {
  ChlorineFinding,
  DesignSettings,
  Judged,
  SafetyFinding,
  SiteFacts,
  WaterTestsFinding,
} from '../../kernel/index.ts';

/** What safety is judged by. */
export interface SafetyGiven {
  readonly site: SiteFacts;
  /** Null where there is neither sample nor walk. */
  readonly waterTests: WaterTestsFinding | null;
  /** Null where water is not chlorinated. */
  readonly chlorine: ChlorineFinding | null;
  /** At which water boils there; null where the height is not known. */
  readonly boilsAt_C: number | null;
  readonly settings: DesignSettings;
}

/**
 * Is the water of a site fit to drink?
 *
 * @param given - the site's facts, what samples and chlorine say, and the settings
 * @returns barriers, risks and what may be said of drinking it; null where safety is not judged
 * @definition ours
 */
export function safetyFinding(given: SafetyGiven): Judged<SafetyFinding> {
  void given;
  return { finding: null, problems: [], working: [] };
}
