import { dayIndexOf, isoDay, readIsoDay } from '@eavewell/engine';
import { mayBeAfloat } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import { drawLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import { drawQr, qrOf } from '../drawing/qr.ts';
import { type Band, band, heading, paragraph, ticks } from '../flow/index.ts';
import { type PaperOptions, printedSaid, runOn, type TripOnPaper } from './given.ts';
import { type PaperPart, type RolloutPaper, rolloutPaper } from './laid.ts';

type Stop = TripOnPaper['trip']['stops'][number];

/**
 * What hangs in a village before a crew comes: the week, how sure it is, what to prepare, whom to ask; one page for each stop of the trips.
 *
 * @param trips - of one plan, in any order
 * @param language - of the paper
 * @param options - when it is printed
 * @returns the file, or the letters no face has
 * @law every page has its cautions, those of boats where the crew comes by river, or may
 * @definition ours: docs/decisions/0369-notice-to-a-village.md
 */
export function noticesPaper(trips: readonly TripOnPaper[], language: Language, options: PaperOptions): RolloutPaper {
  const { say } = language;
  const parts = trips.flatMap((given) => given.trip.stops.map((stop) => noticeOf(given, stop, language, options)));
  const [first] = trips;
  const title = say('rolloutPapers.notices', { trips: trips.map(({ trip }) => trip.tripId).join(', ') });
  return rolloutPaper({ title, author: first?.programme ?? 'Eavewell' }, parts, language, options);
}

function noticeOf(given: TripOnPaper, stop: Stop, language: Language, options: PaperOptions): PaperPart {
  const { say, numbers } = language;
  const isAfloat = mayBeAfloat(given.legs);
  const cautions = [
    say('rolloutPapers.village_work'),
    ...(isAfloat ? [say('rolloutPapers.village_boat')] : []),
    say('pack.caution_drink'),
  ];
  return {
    head: {
      number: () => say('rolloutPapers.notice', { site: stop.siteId }),
      ...{ name: stop.name, laterName: stop.name },
      right: [numbers.people(stop.people), given.programme],
      printed: printedSaid(given, options, language),
      plans: say('pack.plans'),
    },
    caution: runOn(cautions),
    sections: (setter, width) => [{ startsPage: true, bands: noticeBands(setter, width, stop, isAfloat, language) }],
  };
}

/** Letters that are read from the door [pt]. Ours. */
const [week_pt, said_pt] = [24, 13] as const;

function noticeBands(
  setter: Setter,
  width: number,
  stop: Stop,
  isAfloat: boolean,
  language: Language,
): readonly Band[] {
  const { say, numbers } = language;
  const arrives = stop.arrives ?? stop.starts;
  const monday = arrives === null ? null : mondayOf(arrives);
  const week =
    monday === null
      ? say('rolloutPapers.week_unknown')
      : say('rolloutPapers.notice_week', { day: numbers.date(monday) });
  const untreated = stop.isUntreated ? [say('rolloutPapers.untreated')] : [];
  const texts = [...workSaid(stop, language), ...surely(stop, language), ...untreated];
  const prepared = ['clear', 'meet', 'sleep', 'help', 'sand', 'water'] as const;
  return [
    ...(stop.isHandedOver && stop.handOver !== null
      ? paragraph(setter, width, say('rolloutPapers.notice_done', { day: numbers.date(stop.handOver) }), {
          size: week_pt,
        })
      : paragraph(setter, width, week, { size: week_pt })),
    ...texts.flatMap((text) => paragraph(setter, width, text, { size: said_pt, before_pt: 6 })),
    ...paragraph(setter, width, say(isAfloat ? 'rolloutPapers.river_low' : 'rolloutPapers.way_shut'), {
      size: said_pt,
      before_pt: 8,
    }),
    heading(setter, width, say('rolloutPapers.prepare'), 16),
    ...ticks(
      setter,
      width,
      prepared.map((one) => say(`rolloutPapers.prepare_${one}`)),
    ),
    heading(setter, width, say('rolloutPapers.ask'), 16),
    askBand(setter, width, stop.siteId, say('rolloutPapers.ask_line')),
  ];
}

function workSaid({ starts, handOver }: Stop, { say, numbers }: Language): readonly string[] {
  if (starts === null || handOver === null) return [];
  return [say('rolloutPapers.reaches', { from: numbers.date(starts), to: numbers.date(handOver) })];
}

/** When there is water, and how sure that is: of the futures drawn, never of one day alone. */
function surely({ served, futures, handOver, isWayUp }: Stop, { say, numbers }: Language): readonly string[] {
  if (served === null) return isWayUp && handOver !== null ? [say('rolloutPapers.fills_unknown')] : [];
  const { p50 = null, p90 = null } = futures ?? {};
  const likely = say('rolloutPapers.sure', { day: numbers.date(served) });
  if (p50 === null || p90 === null) return [likely, say('rolloutPapers.sure_unknown')];
  return [likely, say('rolloutPapers.sure_range', { p50: numbers.date(p50), p90: numbers.date(p90) })];
}

/** 5 January 1970. Source: from memory; any Monday does. */
const someMonday = dayIndexOf(1970, 1, 5);

/** The Monday of the week of a day. Source: iso-8601, weeks begin on Monday (from memory). */
function mondayOf(iso: string): string | null {
  const day = readIsoDay(iso);
  if (day === null) return null;
  const sinceMonday = (((day - someMonday) % 7) + 7) % 7;
  return isoDay(day - sinceMonday);
}

const code_pt = mm(28);

/** Two lines to be written on, and beside them the code of the site with its id in letters under it. */
function askBand(setter: Setter, width: number, siteId: string, label: string): Band {
  const own = width - code_pt - mm(6);
  const code = qrOf(siteId);
  const id = setter.lines(siteId, 9, code_pt, 'strong');
  const set = setter.lines(label, 9.5, own);
  return band(code_pt + id.height_pt, (canvas, under, { x, y }) => {
    const left = setter.place(x, width, 0, own);
    canvas.unread(() => {
      for (const down of [mm(11), mm(23)]) canvas.rule(left, y + down, own, lines_pt.edge);
    });
    canvas.within(canvas.branch(under, 'P'), 'P', () =>
      drawLines(canvas, setter, set, { x: left, y: y + mm(23) + 2, width: own }),
    );
    const at = setter.place(x, width, width - code_pt, code_pt);
    canvas.within(canvas.branch(under, 'Figure', siteId), 'Figure', () => drawQr(canvas, code, at, y, code_pt));
    canvas.within(canvas.branch(under, 'P'), 'P', () =>
      drawLines(canvas, setter, id, { x: at, y: y + code_pt - 2, width: code_pt }, 'middle'),
    );
  });
}
