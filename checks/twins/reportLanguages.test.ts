import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme, remediesOf } from '@eavewell/engine';
import { filesOfProgramme, readProgramme } from '@eavewell/formats';
import { siteReport, siteReportIn } from '@eavewell/report';
import { english, loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { inFolder } from '../faults/folder.ts';

it('a report said again in Spanish is the report that is made in Spanish', async () => {
  const spanish = await loadLanguage('es');
  const files = Object.fromEntries(filesOfProgramme(demoProgramme({ sites: 24 })));
  await inFolder(files, async (folder) => {
    const { facts } = await readProgramme(folder);
    const ready = readyProgramme(facts);
    let [sites, verdicts] = [0, new Set<string>()];
    for (const design of designSites(facts.sites, ready)) {
      const remedies = remediesOf(facts.sites[sites]!, ready, design);
      const inEnglish = siteReport(design, remedies, english);
      expect(siteReportIn(inEnglish, spanish)).toEqual(siteReport(design, remedies, spanish));
      expect(siteReportIn(inEnglish, english)).toEqual(inEnglish);
      sites++;
      verdicts.add(design.verdict);
    }
    expect([sites, verdicts.size]).toEqual([24, 4]);
  });
});
