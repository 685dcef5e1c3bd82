import {
  type DesignSettings,
  type KitFacts,
  type MoneyOn,
  moneyOn,
  type PricedOn,
  type PriceFacts,
} from '@eavewell/engine';
import type { RolloutRows, RowOf } from './rolloutRows.ts';

/** What money of the rollout is converted by. */
export interface RolloutMoney {
  readonly settings: Pick<DesignSettings, 'currency' | 'priceChange_fraction_per_year' | 'oldRate_days'>;
  readonly kit: Pick<KitFacts, 'rates' | 'redenominations' | 'costs'>;
  readonly prices: readonly PriceFacts[];
}

/** Tables with costs, and the column each has them in. */
type Costed = { readonly carriers: 'cost_per_day'; readonly crews: 'cost_per_day'; readonly places: 'setUp_amount' };

/** What a day or a store costs, in the programme's currency on the day of its latest price. */
export class DayCosts {
  private readonly rows: RolloutRows;
  private readonly money: MoneyOn;

  constructor(rows: RolloutRows, { settings, kit, prices }: RolloutMoney) {
    this.rows = rows;
    const own = (['carriers', 'crews', 'places'] as const).flatMap((name) =>
      rows.used(name).flatMap(({ values }) => priced(values)),
    );
    const all = [prices, kit.costs, own].find((some) => some.length > 0) ?? [];
    const day = Math.max(...(all.length > 0 ? all.map(({ priceDate }) => priceDate) : [0]));
    this.money = moneyOn(settings, kit, day, all);
  }

  /** What a day, or a store once, costs [currency/day, currency]; null where it is not known, with a problem where something is stated. */
  of<Name extends keyof Costed>(name: Name, column: Costed[Name], row: RowOf<Name>): number | null {
    const values: Readonly<Record<string, unknown>> = row.values;
    const stated = values[column] as number | null;
    const { currency, priceDate } = row.values as {
      readonly currency: string | null;
      readonly priceDate: number | null;
    };
    if (stated === null) return null;
    const file = this.rows.tables[name]!.file;
    const place = { file, row: row.row, column };
    if (currency === null || priceDate === null) {
      const missing = (['currency', 'priceDate'] as const).filter((one) => values[one] === null);
      const link = { table: name, file, row, siteId: null, column, id: String(stated) };
      const isOnce = column === 'setUp_amount' ? 'yes' : 'no';
      this.rows.remark({ ...link, code: 'rollout.cost_unfinished', wholeRow: false }, { missing, isOnce });
      return null;
    }
    const { amount, problems } = this.money.convert(stated, currency, priceDate, place);
    this.rows.problems.push(...problems);
    return amount;
  }
}

function priced({
  currency,
  priceDate,
}: {
  readonly currency: string | null;
  readonly priceDate: number | null;
}): readonly PricedOn[] {
  return currency === null || priceDate === null ? [] : [{ currency, priceDate }];
}
