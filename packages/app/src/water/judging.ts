import type { BandAtSize } from '@eavewell/engine';
import type { Language } from '@eavewell/words';
import { askedOf, bandSizesOf, type Judged, type JudgedOf, type SiteJudge } from './siteJudge.ts';
import type { FromWater, ToWater } from './waterMessages.ts';

type JudgeAsked = Extract<ToWater, { kind: 'judge' }>;
type RemediesAsked = Extract<ToWater, { kind: 'remedies' }>;

/** What judging needs of the thread it is done in. */
export interface Thread {
  tell(told: FromWater, transfer?: readonly Transferable[]): void;
  /** Lets what waits come in first. */
  turn(): Promise<void>;
}

/** Answers questions about one site, the newest first: an older one is left where it stands. */
export class Judging {
  judge: SiteJudge | null = null;
  private newest = 0;

  constructor(
    private readonly thread: Thread,
    private readonly languageOf: (tag: string) => Promise<Language>,
  ) {}

  /** Answers what is wanted, then the doubt about every size of it, letting a newer question come in after each step. */
  async answer(asked: JudgeAsked): Promise<void> {
    const { ask, draft, question, wanted } = asked;
    const language = await this.begin(asked);
    const done: { readonly of: JudgedOf; readonly waters: ReturnType<SiteJudge['judge']>['waters'] }[] = [];
    for (const of of wanted) {
      if (this.isOvertaken(ask)) return this.end(ask, true);
      const by = askedOf(of, draft, question);
      const found = by && this.judge!.judge(...by, language);
      const judged = found?.judged ?? null;
      this.thread.tell({ kind: 'judged', ask, of, judged }, judged === null ? [] : buffersOf(judged));
      if (found) done.push({ of, waters: found.waters });
      await this.thread.turn();
    }
    for (const { of, waters } of done) {
      const bands: BandAtSize[][] = [];
      for (const water of waters) {
        const band: BandAtSize[] = [];
        for (const volume_L of bandSizesOf(water)) {
          if (this.isOvertaken(ask)) return this.end(ask, true);
          const at = water.bandAt(volume_L);
          if (at === null) break;
          band.push(at);
          await this.thread.turn();
        }
        bands.push(band);
      }
      this.thread.tell({ kind: 'bands', ask, of, bands });
    }
    this.end(ask, false);
  }

  /** Works out what would mend the site. */
  async mend(asked: RemediesAsked): Promise<void> {
    const { ask, draft } = asked;
    const language = await this.begin(asked);
    if (this.isOvertaken(ask)) return this.end(ask, true);
    this.thread.tell({ kind: 'remedies', ask, remedies: this.judge!.remedies(draft, language) });
    this.end(ask, false);
  }

  /** What a draft comes to, and what it is compared with. */
  keep({ ask, draft }: Extract<ToWater, { kind: 'drafted' }>): void {
    if (this.judge !== null)
      this.thread.tell({ kind: 'toKeep', ask, before: this.judge.site, after: this.judge.drafted(draft) });
    this.end(ask, this.judge === null);
  }

  private async begin({ ask, language }: JudgeAsked | RemediesAsked): Promise<Language> {
    this.newest = Math.max(this.newest, ask);
    // A drag asks faster than a slow computer answers: all that waits is read first, and the last of it answered.
    const [words] = await Promise.all([this.languageOf(language), this.thread.turn()]);
    return words;
  }

  private isOvertaken(ask: number): boolean {
    return this.judge === null || ask < this.newest;
  }

  private end(ask: number, isOvertaken: boolean): void {
    this.thread.tell({ kind: 'end', ask, isOvertaken });
  }
}

/** The arrays that are made anew for each judgement: they are handed over, not copied. What a later step still reads is copied. */
export function buffersOf({ storages }: Judged): readonly ArrayBuffer[] {
  const kept = new Set<ArrayBufferLike>();
  const given = new Set<ArrayBuffer>();
  for (const { series, curve } of storages) {
    for (const array of [series.inflow_L, series.judgedAsked_L, series.state]) kept.add(array.buffer);
    for (const array of [...Object.values(series), curve.critical_L, curve.needs_L])
      if (ArrayBuffer.isView(array) && array.buffer instanceof ArrayBuffer) given.add(array.buffer);
  }
  return [...given].filter((buffer) => !kept.has(buffer));
}
