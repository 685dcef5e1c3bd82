import type { RiskRow, SampleDot, WayInput, WayStop, WayStopKind } from '@eavewell/drawing';
import { dayIndexOf, type GermClass, germClasses, type Pathogen, type Reductions } from '@eavewell/engine';
import { type AppLanguage, nameOfSource, sourceOfRisk, waterOfRisk } from '@eavewell/words/app';
import type { components } from '../../../api/apiTypes.ts';
import { twoDigits } from '../cupWords.ts';

export type SiteReport = components['schemas']['site'];
export type SafetyReport = NonNullable<SiteReport['safety']>;
export type Barrier = SafetyReport['barriers'][number];
type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** The germ that stands for each class. */
export const classOf: Readonly<Record<Pathogen, GermClass>> = {
  campylobacter: 'bacteria',
  rotavirus: 'viruses',
  cryptosporidium: 'protozoa',
};

/** What a barrier is called, with its id where it has one. */
export function barrierName(
  { kind, barrierId }: Pick<Barrier, 'kind' | 'barrierId'>,
  { say }: Pick<Words, 'say'>,
): string {
  const name = say(`safety.stop_${kind}`);
  return barrierId === null ? name : `${name} ${barrierId}`;
}

/** The stops between roof and cup: units side by side are one. */
const stopsOf = (barriers: readonly Barrier[]): readonly Barrier[] =>
  barriers.filter(({ kind }, nth) => kind !== 'membrane' || barriers.findIndex((one) => one.kind === kind) === nth);

/** The number of a barrier's stop on the way, the roof being 1. */
export function stopNumber(barriers: readonly Barrier[], nth: number): number {
  const { kind } = barriers[nth]!;
  const stops = stopsOf(barriers);
  return 2 + (kind === 'membrane' ? stops.findIndex((one) => one.kind === kind) : stops.indexOf(barriers[nth]!));
}

/** What units side by side take out: all that is taken out, less what the others do. */
function together(all: Reductions, others: readonly Barrier[]): Reductions {
  const left = (field: keyof Reductions) =>
    Math.max(
      0,
      others.reduce((steps, { credited }) => steps - credited[field], all[field]),
    );
  return {
    bacteria_log10: left('bacteria_log10'),
    viruses_log10: left('viruses_log10'),
    protozoa_log10: left('protozoa_log10'),
  };
}

/** The way of the water as the picture takes it: from the roof, or from other water alone, through the barriers to the cup. */
export function wayOf({ barriers, risks, ...all }: SafetyReport, words: Words): WayInput {
  const others = barriers.filter(({ kind }) => kind !== 'membrane');
  const isOneUnit = barriers.length - others.length < 2;
  const isOfRoof =
    risks.length === 0 || risks.some(({ waters }) => waters.some(({ secondSourceId }) => secondSourceId === null));
  const first: WayStopKind = isOfRoof ? 'roof' : 'source';
  const end = (kind: WayStopKind): WayStop => ({
    ...{ kind, name: words.say(`safety.stop_${kind}`) },
    ...{ credited: null, leaking: null },
  });
  const needed = Object.fromEntries(
    germClasses.map((germClass) => {
      const own = risks.filter(({ pathogen }) => classOf[pathogen] === germClass);
      return [germClass, own.length === 0 ? null : Math.max(...own.map(({ needed_log10 }) => needed_log10))];
    }),
  ) as Record<GermClass, number | null>;
  return {
    stops: [
      end(first),
      ...stopsOf(barriers).map(({ kind, credited, leaking }) => ({
        ...(kind !== 'membrane' || isOneUnit
          ? { kind, credited, leaking }
          : { kind, credited: together(all.credited, others), leaking: all.leaking && together(all.leaking, others) }),
        name: words.say(`safety.stop_${kind}`),
      })),
      end('cup'),
    ],
    needed,
  };
}

/** A germ and the waters it is in. */
export function germWords(
  risk: SafetyReport['risks'][number],
  safety: Pick<SafetyReport, 'sourceDays'>,
  { say, numbers }: Words,
): string {
  const { pathogen } = risk;
  return say('safety.germ_in', { pathogen, ...waterOfRisk(sourceOfRisk(risk, safety), { numbers }) });
}

/** Whose water it is, where more than one is told of; nothing else. */
export function rawOfWords(
  { secondSourceId }: SafetyReport['risks'][number]['waters'][number],
  { waters }: SafetyReport['risks'][number],
  safety: Pick<SafetyReport, 'sourceDays'>,
  { say }: Pick<Words, 'say'>,
): string {
  return waters.length < 2
    ? ''
    : `${say('safety.raw_of', { source: nameOfSource(secondSourceId, safety) ?? 'none' })} `;
}

/** Risks as multiples of the target, the worst first. */
export function riskRows(
  safety: Pick<SafetyReport, 'risks' | 'sourceDays' | 'target_DALY_per_person_per_year'>,
  words: Words,
): readonly RiskRow[] {
  const { risks, target_DALY_per_person_per_year: target } = safety;
  if (!(target > 0)) return [];
  return risks.map((risk) => ({
    name: germWords(risk, safety, words),
    short: words.say('safety.germ_alone', { pathogen: risk.pathogen }),
    typical_ratio: risk.DALY_per_person_per_year / target,
    high_ratio: risk.DALYHigh_per_person_per_year / target,
  }));
}

/** How many fall ill in a year: of a thousand, or of a million where that is next to nobody. */
export function illWords(illness_per_year: number, { say, numbers }: Words): string {
  const of = illness_per_year >= 1e-4 ? 1000 : 1_000_000;
  return say('safety.ill_of', {
    count: numbers.quantity(twoDigits(illness_per_year * of), ''),
    of: numbers.given(of, ''),
  });
}

/** The day index of an ISO day. */
export function dayOf(iso: string): number {
  const [year = 0, month = 1, day = 1] = iso.split('-').map(Number);
  return dayIndexOf(year, month, day);
}

/** The samples in which E. coli was looked for, as the picture takes them. */
export const sampleDots = ({ tests }: SafetyReport['waterTests']): readonly SampleDot[] =>
  tests.flatMap(({ takenOn, point, sign, count_per_100mL, low_per_100mL, high_per_100mL, isBeforeHandOver }) =>
    sign === null || count_per_100mL === null
      ? []
      : [{ takenOn: dayOf(takenOn), point, sign, count_per_100mL, low_per_100mL, high_per_100mL, isBeforeHandOver }],
  );

/** Is none clean in a row though one was since hand-over, so that it was the last that was not? */
export const hasCleanBefore = ({ clean_count, tests }: Pick<SafetyReport['waterTests'], 'clean_count' | 'tests'>) =>
  clean_count === 0 && tests.some(({ isBeforeHandOver, sign }) => !isBeforeHandOver && sign === 'less');

/** Three classes of germs in one line: how many tenfold steps each. */
export function classesWords(steps: Reductions, { say, numbers }: Words): string {
  return say('safety.of_classes', {
    bacteria: numbers.fixed(steps.bacteria_log10, 1),
    viruses: numbers.fixed(steps.viruses_log10, 1),
    protozoa: numbers.fixed(steps.protozoa_log10, 1),
  });
}

/** What days without treatment and people who skip it do, a sentence each. */
export function harmSentences(report: SafetyReport, words: Words): readonly string[] {
  const { say, numbers } = words;
  const { skipping_fraction: skipping, daysOff_per_year: off, risks } = report;
  const [worst] = risks;
  return [
    skipping === null
      ? say('safety.skipping_unknown')
      : skipping === 0
        ? say('safety.skipping_none')
        : say('safety.skipping', {
            share: numbers.percent(skipping),
            of: worst === undefined ? 'none' : numbers.percent(worst.fromSkipping_fraction),
            pathogen: worst?.pathogen ?? 'none',
          }),
    off === null
      ? say('safety.off_unknown')
      : off === 0
        ? say('safety.off_none')
        : say('safety.off', { days: numbers.daysAYear(off) }),
  ];
}

/** The rooms whose problems stand on the page of a site's safety. */
const rooms = ['safety', 'waterTests', 'chlorine', 'wear', 'treatment'];

/**
 * What was found of the safety of a site, each once, the gravest first.
 *
 * @param design - the site as it is judged
 * @param ofRows - what is wrong in the rows of the site: of that, what keeps its water from being judged is told as well
 */
export function safetyProblems(
  { problems, safety }: SiteReport,
  ofRows: readonly SiteReport['problems'][number][],
): readonly SiteReport['problems'][number][] {
  const own = problems.filter(({ code }) => rooms.includes(code.split('.')[0]!));
  const rows = [...(safety?.withheldBy ?? []), ...(safety?.waterTests.unusable ?? []).map(({ at }) => at)];
  const isOfWater = ({ place }: SiteReport['problems'][number]) =>
    place.row !== undefined && rows.some(({ file, row }) => file === place.file && row === place.row);
  const once = new Map([...ofRows.filter(isOfWater), ...own].map((problem) => [problem.what, problem]));
  const graves = ['blocker', 'warning', 'note'];
  return [...once.values()].sort((a, b) => graves.indexOf(a.severity) - graves.indexOf(b.severity));
}

/** The lines of a working that are of these rooms. */
export const safetyLines = ({ working }: SiteReport): SiteReport['working'] =>
  working.filter(({ code }) => rooms.includes(code.split('.')[0]!));
