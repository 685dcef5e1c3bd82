import { type DrawnWords, type MarkLetters, markWords } from '@eavewell/words/app';
import type { Station } from '../../sites/index.ts';
import type { SiteReport } from '../siteFigures.ts';

/** What stands at each station's mark, the stations called as in the list of sites. */
export const markLetters = (report: SiteReport, words: DrawnWords): Readonly<Record<Station, MarkLetters>> =>
  markWords(report, words, (station, verdict) =>
    words.say('sites.station_stands', {
      station: words.say(`sites.station_${station}`),
      verdict: words.say(`sites.verdict_${verdict}`),
    }),
  );
