import type { GaugeFinding, ProgrammeFacts, Target } from '@eavewell/engine';
import { peopleOf } from '@eavewell/report';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { design } = spoken.commandLine;

/** What is judged, on what record, against which target. */
export function programmeHead(sheet: Sheet, facts: ProgrammeFacts, gauges: ReadonlyMap<string, GaugeFinding>): void {
  const { settings } = facts;
  sheet.heading(settings.programme);
  const { people, unknown } = peopleOf(facts);
  const counted = design.programme(facts.sites.length, people, gauges.size);
  sheet.line(unknown > 0 ? `${counted}; ${design.peopleUnknown(unknown)}` : counted);
  for (const text of recordText(gauges)) sheet.line(text, 0, 2);
  // The page of one site says its own target beside its verdict.
  const [ofProgramme, ...ofClasses] = targetTexts(facts);
  for (const text of facts.sites.length === 1 ? [ofProgramme!] : [ofProgramme!, ...ofClasses]) sheet.line(text, 0, 2);
  if (settings.dayOrder !== 'drawFirst') sheet.line(design.order(settings.dayOrder), 0, 2);
  sheet.line(design.litres(settings.litres_per_person_per_day), 0, 2);
}

/** The programme's target, then those of the classes that are asked for something else. */
export function targetTexts(facts: Pick<ProgrammeFacts, 'settings' | 'sites'>): readonly string[] {
  return [
    design.target(spoken.findings.target(facts.settings.target)),
    ...classTargets(facts.sites).map(([siteClass, target]) => spoken.findings.classTarget(siteClass, target)),
  ];
}

/** The classes that are asked for something else than the programme, by name. */
function classTargets(sites: ProgrammeFacts['sites']): readonly (readonly [string, Target])[] {
  const found = new Map<string, Target>();
  for (const { siteClass, target } of sites) if (siteClass !== null && target !== null) found.set(siteClass, target);
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1));
}

function recordText(gauges: ReadonlyMap<string, GaugeFinding>): readonly string[] {
  const all = [...gauges.values()].flatMap((gauge) => (gauge.rain ? [gauge.rain] : []));
  if (all.length === 0) return [design.noRecord];
  const made = all.filter((rain) => rain.madeDays > 0);
  const rains = all.filter((rain) => rain.madeDays === 0);
  const madeText = made.length === 0 ? [] : [design.made(made.length, made[0]!.judgedYears)];
  if (rains.length === 0) return madeText;
  let [least, most, first, last] = [Number.POSITIVE_INFINITY, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const rain of rains) {
    least = Math.min(least, rain.judgedYears);
    most = Math.max(most, rain.judgedYears);
    first = Math.min(first, rain.years[0]!.label);
    last = Math.max(last, rain.years.at(-1)!.label);
  }
  return [design.record(least, most, first, last), ...madeText];
}
