import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme, remediesOf, wearOf } from '@eavewell/engine';
import { filesOfProgramme, readProgramme } from '@eavewell/formats';
import {
  faultFinder,
  faultNamer,
  problemReport,
  reportedFaults,
  shortIn,
  siteReport,
  siteReportIn,
  siteSaid,
  siteShort,
} from '@eavewell/report';
import { english, loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { inFolder } from '../faults/folder.ts';
import { treated } from './treatedSites.ts';

/** As it comes back from where it is kept. */
const kept = <T>(value: T): T => JSON.parse(JSON.stringify(value));

/** A smaller one, with treatment, samples and raw water at every second site. */
function withTreatment() {
  const { planted: _, gauges_count: _g, rawFiles: _r, ...made } = demoProgramme({ sites: 12, clean: true });
  return { ...made, tables: { ...made.tables, ...treated(made.tables) } };
}

const cases = [
  ['the demo', demoProgramme({ sites: 40 }), 40],
  ['a programme with treatment', withTreatment(), 12],
] as const;

it.each(cases)(
  '%s: a report said again in Spanish is the report that is made in Spanish',
  async (_, programme, count) => {
    const spanish = await loadLanguage('es');
    const files = Object.fromEntries(filesOfProgramme(programme));
    await inFolder(files, async (folder) => {
      const { facts, problems } = await readProgramme(folder);
      const ready = readyProgramme(facts);
      const faultAt = faultFinder(problems);
      const reported = reportedFaults(kept(problems.map((problem) => problemReport(problem, english))));
      const [inEnglish, inSpanish] = [faultNamer(faultAt, english), faultNamer(faultAt, spanish)];
      let [sites, doubts, verdicts, sets] = [0, 0, new Set<string>(), 0];
      for (const design of designSites(facts.sites, ready)) {
        const site = facts.sites[sites]!;
        const remedies = remediesOf(site, ready, design);
        const wear = wearOf(site, ready, design);
        const report = kept(siteReport(inEnglish(design), remedies, english, wear));
        expect(siteReportIn(report, spanish, reported)).toEqual(
          kept(siteReport(inSpanish(design), remedies, spanish, wear)),
        );
        expect(siteReportIn(report, english, reported)).toEqual(report);
        const short = kept(siteShort(site, inEnglish(design), remedies, english, facts.settings));
        const said = kept(siteSaid(design, remedies, faultAt));
        expect(shortIn(short, said, spanish)).toEqual(
          kept(siteShort(site, inSpanish(design), remedies, spanish, facts.settings)),
        );
        expect(shortIn(short, said, english)).toEqual(short);
        sites++;
        doubts += Number(said.fault !== null);
        verdicts.add(design.verdict);
        sets += report.wear?.length ?? 0;
      }
      expect(sites).toBe(count);
      if (count === 40) expect([verdicts.size, Number(doubts > 0)]).toEqual([4, 1]);
      else expect(sets).toBe(6);
    });
  },
);
