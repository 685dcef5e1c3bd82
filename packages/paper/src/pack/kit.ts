import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { type Band, type Cell, framed, heading, paragraph, table, text } from '../flow/index.ts';
import type { PackItem, PackLoad } from './content.ts';
import { withLead } from './overview.ts';

/**
 * The kit, load by load, with boxes for packed and landed.
 *
 * @param setter - lays its letters
 * @param width - of the body [pt]
 * @param loads - in the order they go
 * @param language - words
 * @param mostRows - of a load's list: what is left out is told in a line, with where it stands
 */
export function kit(
  setter: Setter,
  width: number,
  loads: readonly PackLoad[],
  language: Language,
  mostRows: number,
): readonly Band[] {
  const { say } = language;
  if (loads.length === 0)
    return [heading(setter, width, say('pack.kit')), ...paragraph(setter, width, say('pack.no_kit'))];
  return [
    heading(setter, width, say('pack.kit')),
    ...loads.flatMap((load) => loadBands(setter, width, load, language, mostRows)),
  ];
}

function loadBands(
  setter: Setter,
  width: number,
  load: PackLoad,
  language: Language,
  mostRows: number,
): readonly Band[] {
  const { say } = language;
  const shown = load.items.length > mostRows ? load.items.slice(0, Math.max(0, mostRows - 1)) : load.items;
  const left = load.items.length - shown.length;
  const rows = shown.map((item) => rowOf(item, language));
  if (left > 0) rows.push([text(say('pack.more_rows', { count: left }))]);
  const [first, ...others] = load.cautions;
  return [
    ...paragraph(setter, width, loadHead(load, language), { before_pt: 11, keepsNext: true }),
    ...(first === undefined ? [] : framed(setter, width, [first, ...others].map(withLead), 4)),
    ...table(setter, width, {
      before_pt: first === undefined ? 0 : 4,
      columns: [
        { head: say('pack.part'), share: 36 },
        { head: say('pack.size'), share: 21 },
        { head: say('pack.count'), share: 9, align: 'figures' },
        { head: say('pack.weight'), share: 14, align: 'figures' },
        { head: say('pack.hands'), share: 10, align: 'figures' },
        { head: say('pack.packed'), share: 9, align: 'middle' },
        { head: say('pack.landed'), share: 9, align: 'middle' },
      ],
      rows,
    }),
  ];
}

/** `Load 1, boat Tern. 450 kg of 600 kg; longest piece 6.0 m.` */
function loadHead({ loadId, carrier, weight_kg, limit_kg, longest_m }: PackLoad, { say, numbers }: Language) {
  const weight = weight_kg === null ? say('pack.weight_unknown') : numbers.quantity(weight_kg, 'kg');
  const told = [
    limit_kg === null ? weight : say('pack.weight_of', { weight, limit: numbers.quantity(limit_kg, 'kg') }),
    ...(longest_m === null ? [] : [say('pack.longest', { length: numbers.quantity(longest_m, 'm') })]),
  ];
  return [
    { text: `${say('pack.load_by', { load: loadId, carrier })}  `, weight: 'strong' },
    { text: told.join('; '), weight: 'plain' },
  ] as const;
}

function rowOf({ what, size, count, weight_kg, hands_count }: PackItem, { say, numbers }: Language): readonly Cell[] {
  const hands = hands_count === null ? '' : numbers.given(hands_count, '');
  return [
    text(what),
    text(size ?? ''),
    text(numbers.given(count, '')),
    text(weight_kg === null ? say('pack.not_known') : numbers.quantity(weight_kg, 'kg')),
    text(hands),
    { kind: 'box' },
    { kind: 'box' },
  ];
}
