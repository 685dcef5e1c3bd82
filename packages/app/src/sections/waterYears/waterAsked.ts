/** Which year and which area are shown: it stands in the address, so that a link keeps it and back brings it again. */
export interface WaterAsked {
  /** The calendar year in which the water year ends; without it the worst. */
  readonly year?: number;
  readonly area?: string;
}

/** What an address asks for; what it does not know is left out. */
export function waterAskedOf({ year, area }: Readonly<Record<string, unknown>>): WaterAsked {
  const wanted = typeof area === 'number' ? String(area) : area;
  return {
    ...(typeof year === 'number' && Number.isInteger(year) ? { year } : {}),
    ...(typeof wanted === 'string' && wanted.trim() !== '' ? { area: wanted.slice(0, 200) } : {}),
  };
}
