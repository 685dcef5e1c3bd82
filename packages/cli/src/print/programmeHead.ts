import type { GaugeFinding, ProgrammeFacts } from '@eavewell/engine';
import { english } from '@eavewell/words';
import { peopleOf } from '../report/jsonReport.ts';
import type { Sheet } from './sheet.ts';

const { design } = english.commandLine;

/** What is judged, on what record, against which target. */
export function programmeHead(sheet: Sheet, facts: ProgrammeFacts, gauges: ReadonlyMap<string, GaugeFinding>): void {
  const { settings } = facts;
  sheet.heading(settings.programme);
  const { people, unknown } = peopleOf(facts);
  const counted = design.programme(facts.sites.length, people, gauges.size);
  sheet.line(unknown > 0 ? `${counted}; ${design.peopleUnknown(unknown)}` : counted);
  for (const text of recordText(gauges)) sheet.line(text, 0, 2);
  sheet.line(design.target(english.findings.target(settings.target)), 0, 2);
  sheet.line(design.litres(settings.litres_per_person_per_day), 0, 2);
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
