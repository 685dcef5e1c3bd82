import {
  type MapPoint,
  type PositionMatch,
  type PositionTarget,
  shown,
  type WayKnown,
  type WayOfLine,
} from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { maps: words } = spoken.commandLine;

/** How many of one kind are listed. */
const fewRows = 20;
const fewNames = 10;

/** The matches of a map, by what may be done with them. */
export interface MatchesShown {
  readonly sure: readonly PositionMatch[];
  readonly likely: readonly PositionMatch[];
  readonly doubtful: readonly PositionMatch[];
  /** Where the table has them already. */
  readonly already: number;
}

const positionText = (position: MapPoint['position'] | null) =>
  position === null ? words.noPosition : words.position(position.latitude_deg, position.longitude_deg);

const pointName = ({ name, ids, number }: MapPoint) => shown(name ?? ids[0] ?? words.unnamed(number));

function matchTable(sheet: Sheet, title: string, matches: readonly PositionMatch[], all: boolean): void {
  if (matches.length === 0) return;
  sheet.heading(title);
  const shown = all ? matches : matches.slice(0, fewRows);
  sheet.table(
    words.columns.map((head, index) => ({ head, align: index === 4 ? 'right' : 'left' }) as const),
    shown.map(({ target, point, moved_km }) => [
      target.id,
      pointName(point),
      positionText(target.position),
      positionText(point.position),
      words.moved(moved_km),
    ]),
  );
  if (shown.length < matches.length) sheet.line(words.more(matches.length - shown.length), 2);
}

/** What the map would set: what is sure, what is likely, what is in doubt. */
export function matchesSection(sheet: Sheet, { sure, likely, doubtful, already }: MatchesShown, all: boolean): void {
  matchTable(sheet, words.sure, sure, all);
  matchTable(sheet, words.likely, likely, all);
  matchTable(sheet, words.doubtful, doubtful, all);
  sheet.blank();
  if (already > 0) sheet.line(words.already(already), 0, 2);
  if (sure.length + likely.length + doubtful.length + already === 0) sheet.line(words.nothingMatched, 0, 2);
}

/** What is on one side only. */
export function unmatchedSection(
  sheet: Sheet,
  points: readonly MapPoint[],
  targets: readonly PositionTarget[],
  all: boolean,
): void {
  const most = all ? Number.POSITIVE_INFINITY : fewNames;
  if (points.length > 0) {
    sheet.heading(words.unmatchedPoints(points.length));
    sheet.line(words.few(points.map(pointName), most), 2);
  }
  if (targets.length === 0) return;
  sheet.heading(words.unmatchedRows(targets.length));
  sheet.line(
    words.few(
      targets.map(({ id, name }) => `${name} (${id})`),
      most,
    ),
    2,
  );
  const without = targets.filter(({ position }) => position === null).map(({ id }) => id);
  if (without.length > 0) sheet.line(words.withoutPosition(without.length, words.few(without, most)), 2);
}

/** The lines of the map as ways. */
export function waysSection(sheet: Sheet, ways: readonly WayOfLine[], known: readonly WayKnown[], all: boolean): void {
  sheet.heading(words.ways);
  if (ways.length === 0) {
    sheet.line(words.noLines, 2);
    return;
  }
  const shown = all ? ways : ways.slice(0, fewRows);
  const isNew = new Set(known.map(({ row }) => row));
  sheet.table(
    [...words.waysColumns, ''].map((head, index) => ({ head, align: index === 5 ? 'right' : 'left' }) as const),
    shown.map(({ wayId, name, from, to, mode, length_km, row }) => [
      wayId,
      name ?? words.unknown,
      from ?? words.unknown,
      to ?? words.unknown,
      mode ?? words.unknown,
      words.length(length_km),
      row !== null && isNew.has(row) ? '' : words.newWay,
    ]),
  );
  if (shown.length < ways.length) sheet.line(words.more(ways.length - shown.length), 2);
}
