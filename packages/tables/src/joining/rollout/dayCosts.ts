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

type Costed = 'carriers' | 'crews';

/** Costs of a day, in the programme's currency on the day of its latest price. */
export class DayCosts {
  private readonly rows: RolloutRows;
  private readonly money: MoneyOn;

  constructor(rows: RolloutRows, { settings, kit, prices }: RolloutMoney) {
    this.rows = rows;
    const own = (['carriers', 'crews'] as const).flatMap((name) =>
      rows.used(name).flatMap(({ values }) => priced(values)),
    );
    const all = [prices, kit.costs, own].find((some) => some.length > 0) ?? [];
    const day = Math.max(...(all.length > 0 ? all.map(({ priceDate }) => priceDate) : [0]));
    this.money = moneyOn(settings, kit, day, all);
  }

  /** What a day costs [currency/day]; null where it is not known, with a problem where something is stated. */
  of(name: Costed, row: RowOf<'carriers'> | RowOf<'crews'>): number | null {
    const { cost_per_day, currency, priceDate } = row.values;
    if (cost_per_day === null) return null;
    const file = this.rows.tables[name]!.file;
    const place = { file, row: row.row, column: 'cost_per_day' };
    if (currency === null || priceDate === null) {
      const missing = (['currency', 'priceDate'] as const).filter((column) => row.values[column] === null);
      const link = { table: name, file, row, siteId: null, column: 'cost_per_day', id: String(cost_per_day) };
      this.rows.remark({ ...link, code: 'rollout.cost_unfinished', wholeRow: false }, { missing });
      return null;
    }
    const { amount, problems } = this.money.convert(cost_per_day, currency, priceDate, place);
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
