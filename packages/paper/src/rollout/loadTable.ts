import { type AboardLine, kg, massOf, type TotalSaid, type TripLoad } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { type Band, type Cell, heading, paragraph, table, text } from '../flow/index.ts';
import { whatOf } from '../pack/loadsSaid.ts';

/** A row, and whether it is the head of a stop, which does not end a page. */
interface Row {
  readonly cells: readonly Cell[];
  readonly isHead: boolean;
}

const blank: Cell = { kind: 'blank' };
const box: Cell = { kind: 'box' };

/**
 * What is aboard, in the order it is put in, with boxes for loaded and landed, and its sums.
 *
 * @param setter - lays its letters
 * @param width - of the body [pt]
 * @param load - what is aboard
 * @param around - what stands over it, and its sums
 * @param language - words
 */
export function loadTable(
  setter: Setter,
  width: number,
  load: TripLoad,
  around: { readonly head: string; readonly totals: readonly TotalSaid[] },
  language: Language,
): readonly Band[] {
  const { say } = language;
  const head = heading(setter, width, around.head, 8);
  if (load.stops.every(({ lines }) => lines.length === 0))
    return [head, ...paragraph(setter, width, say('rolloutPapers.nothing'))];
  const rows: readonly Row[] = [
    ...load.stops.flatMap((stop) => [
      { isHead: true, cells: stopCells(stop, language) },
      ...stop.lines.map((line) => ({ isHead: false, cells: lineCells(line, language) })),
    ]),
    ...totals(around.totals),
  ];
  const bands = table(setter, width, {
    columns: [
      { head: say('pack.part'), share: 40 },
      { head: say('pack.count'), share: 9, align: 'figures' },
      { head: say('rolloutPapers.each'), share: 13, align: 'figures' },
      { head: say('pack.weight'), share: 15, align: 'figures' },
      { head: say('rolloutPapers.longest'), share: 11, align: 'figures' },
      { head: say('rolloutPapers.lift'), share: 10, align: 'figures' },
      { head: say('rolloutPapers.loaded'), share: 10, align: 'middle' },
      { head: say('pack.landed'), share: 10, align: 'middle' },
    ],
    rows: rows.map(({ cells }) => cells),
  });
  const dangers = load.hasBothDangers
    ? paragraph(setter, width, say('rolloutPapers.both_dangers'), { weight: 'strong' })
    : [];
  // The first band is the head of the table.
  return [
    head,
    ...dangers,
    ...bands.map((one, at) => (at > 0 && rows[at - 1]!.isHead ? { ...one, keepsNext: true } : one)),
  ];
}

function stopCells(stop: TripLoad['stops'][number], language: Language): readonly Cell[] {
  const { say, numbers } = language;
  const { nth, name } = stop;
  const people = stop.people === null ? say('pack.not_known') : numbers.people(stop.people);
  return [
    text(say('rolloutPapers.stop', { nth, site: name, people }), 'strong', beforeMass_count),
    ...[blank, blank],
    text(massOf(stop, language), 'strong'),
  ];
}

function lineCells(line: AboardLine, language: Language): readonly Cell[] {
  const { say, numbers } = language;
  const { name, count, each_count, mass_kg, danger, longest_m, lift_people, isPresumed } = line;
  const part = whatOf(name, each_count, language);
  const what = isPresumed ? say('rolloutPapers.presumed', { name: part }) : part;
  const unweighed = say('rolloutPapers.weight_not_known');
  return [
    danger === null ? text(what) : text(say(`rolloutPapers.apart_${danger}`, { name: what }), 'strong'),
    text(numbers.given(count, '')),
    text(mass_kg === null || count === 0 ? '' : kg(mass_kg / count, language)),
    text(mass_kg === null ? unweighed : kg(mass_kg, language)),
    text(longest_m === null ? '' : numbers.quantity(longest_m, 'm')),
    text(lift_people === null ? '' : numbers.given(lift_people, '')),
    ...[box, box],
  ];
}

/** Words of a sum stand over the columns before its mass, or over all where it has none. */
const [beforeMass_count, columns_count] = [3, 8] as const;

/** Sums, what they are held against and the crew end no page: who signs stands under them. */
const totals = (all: readonly TotalSaid[]): readonly Row[] =>
  all.map(({ said, mass }) => ({
    isHead: true,
    cells: [
      text(said, 'strong', mass === '' ? columns_count : beforeMass_count),
      ...[blank, blank],
      mass === '' ? blank : text(mass, 'strong'),
    ],
  }));
