import type { WaterCurve } from '@eavewell/drawing';
import {
  bandSizes_L,
  type DesignSettings,
  dayOnClock,
  designSite,
  type GaugeFinding,
  type JudgedWater,
  type Problem,
  type ProgrammeFacts,
  type ReadyProgramme,
  type ReadyWanted,
  rainOfSite,
  rainUnder,
  readyProgramme,
  type SiteDesign,
  type SiteFacts,
  type SiteRemedies,
  type StorageSeries,
  siteInFull,
  siteRemedies,
  type WaterYear,
  wearOf,
} from '@eavewell/engine';
import { type FaultAt, faultFinder, faultNamer, siteRemediesReport, siteReport } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import { type Draft, emptyDraft, isAsked, isRainAsked, noQuestion, type Question } from './draft.ts';
import { type Drafted, drafted } from './draftedSite.ts';
import type { SiteReport } from './siteReport.ts';

/** One body of water, as it is drawn. */
export interface JudgedStorage {
  readonly tankIds: readonly string[];
  /** Day by day [L], [mm]. */
  readonly series: StorageSeries;
  /** Its bands are empty until they are worked out, and where sizes are run one by one. */
  readonly curve: WaterCurve;
  readonly years: readonly WaterYear[];
}

/** A site judged in this browser: what the program would report of it, and what is drawn of it. */
export interface Judged {
  /** In the page's language; its remedies are null until they are worked out. */
  readonly report: SiteReport;
  /** In the order of the report's storages; none where the site is `unknown`. */
  readonly storages: readonly JudgedStorage[];
  /** The facts it was judged by. */
  readonly site: SiteFacts;
  readonly settings: DesignSettings;
  readonly took_ms: number;
}

/** Which of the three is judged: as saved, as drafted, and either under the question. */
export type JudgedOf = 'saved' | 'drafted' | 'asked';

/** What was judged last, for what is asked of it afterwards. */
interface JudgedHere {
  readonly judged: Judged;
  readonly waters: readonly JudgedWater[];
}

/** One site with all it rests on, ready to be judged again and again. */
export class SiteJudge {
  private readonly ready: ReadyProgramme;
  private saved: SiteFacts;
  private readonly faultAt: FaultAt;
  /** The rain of the site never changes with a draft: it is found once, and once for each question. */
  private readonly gauge: GaugeFinding | undefined;
  private under: { readonly key: string; readonly gauge: GaugeFinding | undefined } | null = null;

  /**
   * @param facts - a programme with this one site, and all the gauges it rests on
   * @param siteId - the site
   * @param rests - which of the gauges are to be made ready, where not all are, and the faults behind the site's doubts
   */
  constructor(
    facts: ProgrammeFacts,
    siteId: string,
    { wanted = {}, faults = [] }: { readonly wanted?: ReadyWanted; readonly faults?: readonly Problem[] } = {},
  ) {
    const site = facts.sites.find((one) => one.siteId === siteId);
    if (site === undefined) throw new Error(`no site ${siteId} in the facts`);
    this.saved = site;
    this.ready = readyProgramme(facts, { today: dayOnClock(new Date()), ...wanted });
    this.faultAt = faultFinder(faults);
    this.gauge = rainOfSite(site, this.ready);
  }

  /** The site as it is saved. */
  get site(): SiteFacts {
    return this.saved;
  }

  /** The site as a draft has it, with what is to be known to keep it. */
  drafted(draft: Pick<Draft, 'steps'>): Drafted {
    return drafted(this.saved, draft, this.ready.settings);
  }

  /** A draft was kept: these are the saved facts from now on. */
  settle(site: SiteFacts): void {
    this.saved = site;
  }

  /**
   * Judges the site.
   *
   * @param draft - what was changed and is not kept
   * @param question - what is asked of the rain and of the day
   * @param language - the language of the report
   */
  judge(draft: Pick<Draft, 'steps'>, question: Question, language: Language): JudgedHere {
    const from = performance.now();
    const site = this.drafted(draft).site;
    const { design, waters } = siteInFull(site, this.gaugeUnder(question), this.programmeUnder(question));
    const storages = waters.map((water) => ({
      tankIds: water.finding.tankIds,
      series: water.series(),
      curve: { ...water.curve(), band: [], yearsBand: null },
      years: water.years,
    }));
    // A draft is judged at every move of a hand; when cartridges are due is told of what is saved.
    const isSaved = draft.steps.length === 0 && !isAsked(question);
    const wear = isSaved ? wearOf(site, this.ready, design) : null;
    const report = siteReport(faultNamer(this.faultAt, language)(design), null, language, wear) as SiteReport;
    const { settings } = this.ready;
    return { judged: { report, storages, site, settings, took_ms: performance.now() - from }, waters };
  }

  /**
   * What would mend the site? Takes up to a second.
   *
   * @returns remedies as the report has them; null where the site is neither short nor tight, and under a question, which no remedy mends
   */
  remedies(draft: Pick<Draft, 'steps'>, language: Language): SiteReport['remedies'] {
    const site = this.drafted(draft).site;
    const design: SiteDesign = designSite(site, this.gauge, this.ready);
    const found = this.foundFor(site, design);
    return found && (siteRemediesReport(found, design, language) as SiteReport['remedies']);
  }

  /** The same as the engine has them. */
  found(draft: Pick<Draft, 'steps'>): SiteRemedies | null {
    const site = this.drafted(draft).site;
    return this.foundFor(site, designSite(site, this.gauge, this.ready));
  }

  private foundFor(site: SiteFacts, design: SiteDesign): SiteRemedies | null {
    return siteRemedies(design, { site, gauge: this.gauge, programme: this.ready, market: this.ready.market });
  }

  private gaugeUnder(question: Question): GaugeFinding | undefined {
    if (!isRainAsked(question)) return this.gauge;
    const key = JSON.stringify(question.scenario);
    if (this.under?.key !== key)
      this.under = { key, gauge: rainOfSite(this.saved, rainUnder(this.ready, question.scenario)) };
    return this.under.gauge;
  }

  private programmeUnder({ order }: Question): ReadyProgramme {
    if (order === null) return this.ready;
    return { ...this.ready, settings: { ...this.ready.settings, dayOrder: order } };
  }
}

/** Which draft and question each of the three is judged by; null where it is the same as the one before. */
export function askedOf(of: JudgedOf, draft: Draft, question: Question): [Draft, Question] | null {
  if (of === 'saved') return [emptyDraft, noQuestion];
  if (of === 'drafted') return draft.steps.length === 0 ? null : [draft, noQuestion];
  return isAsked(question) ? [draft, question] : null;
}

/** The sizes whose doubt is worked out for a body of water [L]. */
export const bandSizesOf = ({ finding }: JudgedWater): readonly number[] => bandSizes_L(finding);
