import { type Standing, type Station, standings, stationsInOrder } from './overview.ts';

/** In which order the sites stand. */
export const orders = ['worst', 'cheapest', 'area', 'name'] as const;
export type Order = (typeof orders)[number];

/** Whether the stands are signed for: apart from every verdict. */
export const gates = ['closed', 'open'] as const;
export type Gate = (typeof gates)[number];

/** Which sites are shown, and how: it stands in the address, so that a link keeps it and back brings it again. */
export interface Asked {
  readonly text?: string;
  /** Verdicts with a point between, such as `short.tight`; without it all that need her, or all where a text is asked for. */
  readonly verdict?: string;
  readonly station?: Station;
  readonly gate?: Gate;
  readonly area?: string;
  readonly order?: Order;
}

const textOf = (value: unknown): string | undefined => {
  const text = typeof value === 'number' ? String(value) : value;
  return typeof text === 'string' && text.trim() !== '' ? text.slice(0, 200) : undefined;
};

const oneOf = <T extends string>(known: readonly T[], value: unknown): T | undefined =>
  known.find((one) => one === value);

/** What an address asks for; what it does not know is left out. */
export function askedOf(search: Readonly<Record<string, unknown>>): Asked {
  const text = textOf(search['text']);
  const verdict = writtenStandings(standingsWritten(textOf(search['verdict'])) ?? []);
  const station = oneOf(stationsInOrder, search['station']);
  const gate = oneOf(gates, search['gate']);
  const area = textOf(search['area']);
  const order = oneOf(orders, search['order']);
  return {
    ...(text === undefined ? {} : { text }),
    ...(verdict === undefined ? {} : { verdict }),
    ...(station === undefined ? {} : { station }),
    ...(gate === undefined ? {} : { gate }),
    ...(area === undefined ? {} : { area }),
    ...(order === undefined || order === 'worst' ? {} : { order }),
  };
}

/** The verdicts an address names; null where it names none. */
export function standingsWritten(text: string | undefined): readonly Standing[] | null {
  const named = text?.split('.') ?? [];
  const known = standings.filter((one) => named.includes(one));
  return known.length === 0 ? null : known;
}

/** Verdicts as an address names them; nothing where it need not. */
export function writtenStandings(chosen: readonly Standing[]): string | undefined {
  const known = standings.filter((one) => chosen.includes(one));
  return known.length === 0 ? undefined : known.join('.');
}

/** The address with one verdict more or less. */
export function withStanding(asked: Asked, standing: Standing): Asked {
  const chosen = standingsWritten(asked.verdict) ?? [];
  const next = chosen.includes(standing) ? chosen.filter((one) => one !== standing) : [...chosen, standing];
  const { verdict: _, ...rest } = asked;
  const verdict = writtenStandings(next);
  return verdict === undefined ? rest : { ...rest, verdict };
}

/** The address with the sites alone whose gate stands so, or with all of them again. */
export function withGate(asked: Asked, gate: Gate): Asked {
  const { gate: before, ...rest } = asked;
  return before === gate ? rest : { ...rest, gate };
}
