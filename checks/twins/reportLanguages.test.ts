import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme, remediesOf } from '@eavewell/engine';
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

/** As it comes back from where it is kept. */
const kept = <T>(value: T): T => JSON.parse(JSON.stringify(value));

it('a report said again in Spanish is the report that is made in Spanish', async () => {
  const spanish = await loadLanguage('es');
  const files = Object.fromEntries(filesOfProgramme(demoProgramme({ sites: 40 })));
  await inFolder(files, async (folder) => {
    const { facts, problems } = await readProgramme(folder);
    const ready = readyProgramme(facts);
    const faultAt = faultFinder(problems);
    const reported = reportedFaults(kept(problems.map((problem) => problemReport(problem, english))));
    const [inEnglish, inSpanish] = [faultNamer(faultAt, english), faultNamer(faultAt, spanish)];
    let [sites, doubts, verdicts] = [0, 0, new Set<string>()];
    for (const design of designSites(facts.sites, ready)) {
      const site = facts.sites[sites]!;
      const remedies = remediesOf(site, ready, design);
      const report = kept(siteReport(inEnglish(design), remedies, english, null));
      expect(siteReportIn(report, spanish, reported)).toEqual(
        kept(siteReport(inSpanish(design), remedies, spanish, null)),
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
    }
    expect([sites, verdicts.size]).toEqual([40, 4]);
    expect(doubts).toBeGreaterThan(0);
  });
});
