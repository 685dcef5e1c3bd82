import type {
  GaugeFinding,
  Judged,
  Problem,
  ProgrammeFacts,
  SiteDesign,
  SiteRemedies,
  StorageSeries,
  WearFinding,
} from '@eavewell/engine';
import { gaugeReport, peopleOf, problemReport, siteReport } from '@eavewell/report';
import { type DesignReport, designSchemaVersion, type NotUsed } from '@eavewell/tables';
import { spoken } from '../language.ts';
import { siteUnderReport } from './scenarioReport.ts';
import { seriesJson } from './seriesText.ts';

/** Where the text of a report goes, piece by piece. */
export type Sink = (text: string) => Promise<void>;

/** What is known once every site is judged. */
export interface ReportEnd {
  readonly remedies: DesignReport['remedies'];
  /** Null where no scenario was asked for. */
  readonly asked: NonNullable<DesignReport['scenario']> | null;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** A number that is none would become null unseen: better to stop. */
function onlyNumbers(_key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`the report would hold ${value}`);
  return value;
}

/** A value as JSON, all of it numbers that are some. */
export function json(value: unknown): string {
  return JSON.stringify(value, onlyNumbers);
}

/** Writes a report site by site, so that the whole of it never stands in memory. */
export class JsonReport {
  readonly #sinks: readonly Sink[];
  #sites = 0;

  constructor(sinks: readonly Sink[]) {
    this.#sinks = sinks;
  }

  async open(version: string, facts: ProgrammeFacts, gauges: Iterable<GaugeFinding>): Promise<void> {
    const { people, unknown } = peopleOf(facts);
    const head: Pick<DesignReport, 'eavewell' | 'schema' | 'programme' | 'settings'> = {
      eavewell: version,
      schema: designSchemaVersion,
      programme: { name: facts.settings.programme, sites: facts.sites.length, people, sitesWithoutPeople: unknown },
      settings: { ...facts.settings },
    };
    const members = Object.entries(head).map(([name, value]) => `${json(name)}:${json(value)}`);
    const listed = [...gauges].map((gauge) => json(gaugeReport(gauge, spoken)));
    await this.#write(`{${members.join(',\n')},\n"gauges":[\n${listed.join(',\n')}\n],\n"sites":[`);
  }

  /** One site; `series` is left out where it is undefined. */
  async site(
    design: SiteDesign,
    remedies: SiteRemedies | null,
    wear: Judged<readonly WearFinding[]> | null,
    under: SiteDesign | null,
    series?: readonly StorageSeries[],
  ): Promise<void> {
    const scenario = under ? { scenario: siteUnderReport(under) } : {};
    const text = json({ ...siteReport(design, remedies, spoken, wear), ...scenario });
    await this.#write(`${this.#sites++ === 0 ? '' : ','}\n`);
    if (series === undefined) await this.#write(text);
    else await this.#write(`${text.slice(0, -1)},"series":[${series.map(seriesJson).join(',')}]}`);
  }

  async close({ remedies, asked, problems, notUsed }: ReportEnd): Promise<void> {
    const scenario = asked ? `"scenario":${json(asked)},\n` : '';
    await this.#write(`\n],\n"remedies":${json(remedies)},\n${scenario}"problems":[`);
    await this.#list(problems, (problem) => problemReport(problem, spoken));
    await this.#write('],\n"notUsed":[');
    await this.#list(notUsed, ({ file, row, column, value, code, cells }) => ({
      file,
      row,
      column: column ?? null,
      value,
      code,
      cells,
    }));
    await this.#write(']}\n');
  }

  async #list<T>(values: readonly T[], report: (value: T) => unknown): Promise<void> {
    for (const [index, value] of values.entries())
      await this.#write(`${index === 0 ? '' : ','}\n${json(report(value))}`);
  }

  async #write(text: string): Promise<void> {
    for (const sink of this.#sinks) await sink(text);
  }
}
