import { type SiteEntry, stationsInOrder } from './overview.ts';

/** A row of the table that is saved: columns named as the tables of a programme name theirs. */
export function csvRow(site: SiteEntry) {
  const { stations, figures, remedy } = site;
  return {
    siteId: site.siteId,
    name: site.name,
    area: site.area,
    siteClass: site.siteClass,
    people: site.people,
    latitude_deg: site.latitude_deg,
    longitude_deg: site.longitude_deg,
    verdict: site.verdict,
    ...Object.fromEntries(stationsInOrder.map((station) => [station, stations?.[station] ?? null])),
    standGate: site.standGate,
    goodYears: figures?.goodYears ?? null,
    judgedYears: figures?.judgedYears ?? null,
    dryDays_per_year: figures?.dryDays_per_year ?? null,
    finding: site.finding,
    remedy: remedy?.about ?? site.notMended,
    cost: remedy?.amount ?? null,
    currency: remedy?.currency ?? null,
  };
}

/** Sites as a CSV file that spreadsheets open, also with accents; a cell that would be taken for a formula is not one. */
export async function csvOfSites(sites: Iterable<SiteEntry>): Promise<string> {
  const { unparse } = await import('papaparse');
  return `\uFEFF${unparse(Array.from(sites, csvRow), { escapeFormulae: /^[=+@\t\r]|^-(?![\d.])/, newline: '\r\n' })}\r\n`;
}

/** Gives a text to the person as a file. */
export function saveAs(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
