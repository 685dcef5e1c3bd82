/** How much of the stock goes into how much water, as the site's chlorination has it. */
export interface Doses {
  readonly rows: readonly { readonly water_L: number; readonly stock_mL: number }[];
  /** For a litre of stock of one per cent: grams of a powder, millilitres of a liquid; null where not known. */
  readonly product_per_L: number | null;
  readonly isLiquid: boolean;
  readonly wait_min: number | null;
}

/** Sizes of vessel that are in use: bucket, jerrycan, drum, tank [L]. Ours. */
const vessels_L = [10, 20, 200, 1000] as const;

interface Found {
  readonly stock_mL: number | null;
  readonly product_per_L: number | null;
  readonly wait_min: number | null;
}

/**
 * The doses of a site for vessels in use, by the dose of its own batch.
 *
 * @param found - the stock for one batch [mL], and the product of the stock
 * @param cells - the site's row of chlorination, as it is written
 * @returns null where the stock or the batch is not known
 */
export function dosesOf(found: Found, cells: Readonly<Record<string, string>>): Doses | null {
  const batch_L = Number.parseFloat((cells['batch_L'] ?? '').replace(',', '.'));
  const { stock_mL, product_per_L, wait_min } = found;
  if (stock_mL === null || !(batch_L > 0)) return null;
  const sizes = [...new Set([...vessels_L, batch_L])].sort((a, b) => a - b);
  return {
    rows: sizes.map((water_L) => ({ water_L, stock_mL: (stock_mL * water_L) / batch_L })),
    product_per_L,
    isLiquid: cells['product'] === 'bleach',
    wait_min,
  };
}
