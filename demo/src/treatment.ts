import type { Part } from './cast.ts';
import { type Chance, chanceFor } from './chance.ts';
import type { LaterTable, Row } from './draft.ts';
import { type MadeSite, wantedOf } from './sites.ts';
import { cartridgePart, cleanFlow_L_per_h, rated_kPa, unitParts } from './units.ts';

type Rows = Partial<Record<LaterTable, readonly Row[]>>;

/** From so many litres a day on a site has two units [L/day]. Ours. */
const twoUnits_L_per_day = 1700;
/** How often the flow was read where nothing is amiss, a set was changed already, and a unit was tested with air [fraction]. Ours. */
const [read_fraction, changed_fraction, tested_fraction] = [0.3, 0.15, 0.1] as const;
/** Water passes a membrane more easily by so much for each degree over 20 °C [fraction], roughly. */
const easier_fraction_per_K = 0.024;
const day_ms = 86_400_000;

/** The day so many days after another. */
export function laterDay(iso: string, days: number): string {
  return new Date(Date.parse(`${iso}T00:00:00Z`) + Math.round(days) * day_ms).toISOString().slice(0, 10);
}

const daysBetween = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / day_ms;

/** The last day anything was looked at in the demo. */
export const lastLooked = '2026-06-20';

/** The day a site was taken over, or about so where nobody said. */
export function takenOver(seed: number, { siteId, handOverDay }: MadeSite): string {
  return handOverDay ?? laterDay('2024-06-01', chanceFor(seed, `begun at ${siteId}`).whole(0, 400));
}

/** The units of a site, their cartridges, readings of their flow and tests with air. */
export function treatmentRows(seed: number, site: MadeSite, part: Part, clean: boolean): Rows {
  if (part === 'untreated') return {};
  const chance = chanceFor(seed, `unit of ${site.siteId}`);
  const asked_L_per_day = site.people * wantedOf(site.kind);
  const count = asked_L_per_day > twoUnits_L_per_day ? 2 : 1;
  const first = chance.whole(100, 899);
  const serials = Array.from({ length: count }, (_, i) => `U${first + i}`);
  const { installedOn, setSince } = daysOf(chance, takenOver(seed, site), part, clean);
  const partId = part === 'noViruses' || isChlorinated(part) ? unitParts.plain : unitParts.virusTested;
  const units = serials.map((serial) => ({ siteId: site.siteId, serial, partId, installedOn }));
  const cartridges = serials.flatMap((serial) => setRows(chance, site.siteId, serial, installedOn, setSince));
  const passed_L_per_day = asked_L_per_day / count;
  const flowReadings = readingsOf(
    chance,
    { siteId: site.siteId, serial: serials[0]!, setSince, passed_L_per_day },
    part,
  );
  const pressureTests = airTests(chance, site.siteId, serials[0]!, setSince, part, clean);
  return { treatmentUnits: units, cartridges, flowReadings, pressureTests };
}

/** Chlorinated sites have the unit that nobody tested with viruses. */
export function isChlorinated(part: Part): boolean {
  return part === 'chlorine' || part === 'littleChlorine';
}

/** When the unit came, and when its set was new. Sets that are due, or over it, came before the site was handed over. */
function daysOf(chance: Chance, takenOverOn: string, part: Part, clean: boolean) {
  const installedOn = laterDay(takenOverOn, -chance.whole(0, 20));
  if (part === 'overdue') return bothOn(laterDay('2023-05-10', chance.whole(0, 40)));
  if (part === 'nearDue') return bothOn(laterDay('2023-12-15', chance.whole(0, 70)));
  const isChanged = chance.share() < changed_fraction && !clean && daysBetween(installedOn, lastLooked) > 500;
  return { installedOn, setSince: isChanged ? laterDay(installedOn, chance.whole(200, 420)) : installedOn };
}

const bothOn = (day: string) => ({ installedOn: day, setSince: day });

/** Three cartridges of a unit, and those they took the place of. */
function setRows(chance: Chance, siteId: string, unitSerial: string, installedOn: string, setSince: string): Row[] {
  const batch = `B${chance.whole(21, 48)}`;
  const number = chance.whole(1000, 8999);
  const three = (from: number, more: Row) =>
    Array.from({ length: 3 }, (_, i) => {
      return { siteId, serial: `C${from + i}`, unitSerial, partId: cartridgePart, batch, ...more };
    });
  const now = three(number, { installedOn: setSince });
  if (setSince === installedOn) return now;
  const reason = chance.pick(['too slow after backwash', 'fell from the bench', 'changed with the season']);
  return [...three(number - 3, { installedOn, removedOn: setSince, reason }), ...now];
}

interface ReadOn {
  readonly siteId: string;
  readonly serial: string;
  readonly setSince: string;
  readonly passed_L_per_day: number;
}

/** Two readings of the first unit: the later one of a set that is more worn. */
function readingsOf(chance: Chance, { siteId, serial, setSince, passed_L_per_day }: ReadOn, part: Part): Row[] {
  const isRead = chance.share() < read_fraction || part === 'worn' || part === 'meterBackwards' || part === 'nearDue';
  const days = daysBetween(setSince, lastLooked);
  if (!isRead || days < 120) return [];
  const worn_ratio = part === 'worn' ? chance.between(1.9, 2.3) : chance.between(1.15, 1.5);
  return [0.5, 0.95].map((share, i) => {
    const pressure_kPa = chance.whole(34, 46);
    const waterTemperature_C = chance.whole(24, 28);
    const ratio = 1 + (worn_ratio - 1) * share;
    const warm = 1 + easier_fraction_per_K * (waterTemperature_C - 20);
    const flow_L_per_h = Math.round((cleanFlow_L_per_h * warm * pressure_kPa) / rated_kPa / ratio / 5) * 5;
    const meter_L = Math.round((passed_L_per_day * days * share * chance.between(0.85, 0.98)) / 100) * 100;
    const passed_L = part === 'meterBackwards' && i === 1 ? Math.round(meter_L / 400) * 100 : meter_L;
    const readOn = laterDay(setSince, days * share);
    return { siteId, unitSerial: serial, readOn, flow_L_per_h, pressure_kPa, waterTemperature_C, passed_L };
  });
}

/** A test with air at a few: the pressure falls little where the fibres are whole. */
function airTests(
  chance: Chance,
  siteId: string,
  unitSerial: string,
  setSince: string,
  part: Part,
  clean: boolean,
): Row[] {
  const isTested = chance.share() < tested_fraction || part === 'airFalls';
  const after = laterDay(setSince, chance.whole(20, 120));
  if (!isTested || clean || after > lastLooked) return [];
  const fall_kPa_per_min = part === 'airFalls' ? 9 : Math.round(chance.between(5, 20)) / 100;
  return [{ siteId, unitSerial, testedOn: after, pressure_kPa: 120, fall_kPa_per_min, airVolume_L: 1.5 }];
}
