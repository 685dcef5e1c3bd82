/** A year of a yearly change of prices [day]. Source: definition, the Julian year; docs/decisions/0254-prices-move-by-a-stated-change.md. */
export const priceYear_days = 365.25;

/** No amount, rate or factor is larger, or smaller without being 0 [any unit]. Ours: far outside any money there is. */
export const largestAmount = 1e15;
export const smallestAmount = 1e-15;
