import type { Station } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/**
 * The figure a station is known by, as short as it stands in a row.
 *
 * @param station - which
 * @param report - what the site came to
 * @param language - of the pack
 * @returns null where it has none, or none is known
 */
export function stationFigure(station: Station, report: SiteReport, language: Language): string | null {
  return figures[station](report, language);
}

type Figure = (report: SiteReport, language: Language) => string | null;

const figures: Readonly<Record<Station, Figure>> = {
  roof: ({ storages: [tank] }, { numbers }) =>
    tank === undefined ? null : numbers.quantity(tank.inflow_L_per_year, 'L_per_year'),
  gutter: ({ drainage }, { say, numbers }) => {
    const part = drainage?.parts[drainage.governing ?? -1];
    if (!part || part.flow_L_per_s === null || part.capacity_L_per_s === null) return null;
    const flow = say('drawn.flow_of', {
      flow: numbers.quantity(part.flow_L_per_s, 'number'),
      capacity: numbers.quantity(part.capacity_L_per_s, 'L_per_s'),
    });
    return say(`drawn.part_${part.part}`, { figure: flow });
  },
  settling: () => null,
  storage: ({ storages: [tank] }, { say, numbers }) =>
    tank === undefined
      ? null
      : say('drawn.figure_storage', {
          dry: numbers.dryDaysAYear(tank.dryDays_per_year),
          years: numbers.ofYears(tank.goodYears, tank.judgedYears),
        }),
  stand: ({ stands }, { say, numbers }) => {
    const known = stands.flatMap(({ bearing_kPa, bearingAllowed_kPa }) =>
      bearing_kPa === null || bearingAllowed_kPa === null ? [] : [{ bearing_kPa, bearingAllowed_kPa }],
    );
    const [worst] = [...known].sort(
      (a, b) => b.bearing_kPa / b.bearingAllowed_kPa - a.bearing_kPa / a.bearingAllowed_kPa,
    );
    return worst === undefined
      ? null
      : say('drawn.figure_of', {
          amount: numbers.quantity(worst.bearing_kPa, 'kPa'),
          most: numbers.quantity(worst.bearingAllowed_kPa, 'kPa'),
        });
  },
  treatmentUnit: ({ treatment: [unit] }, { say, numbers }) => {
    if (!unit || unit.flowNow_L_per_h === null) return null;
    const flow = numbers.quantity(unit.flowNow_L_per_h, 'L/h');
    if (unit.hoursNeeded_h === null) return flow;
    return say('drawn.figure_unit', { flow, hours: numbers.quantity(unit.hoursNeeded_h, 'h') });
  },
  tap: ({ head: [way] }, { say, numbers }) => {
    // Where there is a hand pump, the fall of the water alone judges nothing.
    if (way?.hasHandPump && way.pumpAdds_m !== null)
      return say('drawn.pump_adds', { head: numbers.quantity(way.pumpAdds_m, 'm') });
    if (!way || way.headLeft_m === null) return null;
    const head = numbers.quantity(Math.abs(way.headLeft_m), 'm');
    return way.headLeft_m < 0 ? say('drawn.head_missing', { head }) : say('drawn.head_left', { head });
  },
  cup: ({ safety }, { say }) => (safety?.mayDrink === 'no' ? say('drawn.drink_no') : null),
};

/** Why a station stands as it does, in the sentences the report is made of; null where nothing is said of it. */
export function stationReason(station: Station, report: SiteReport, { findings }: Language): string | null {
  const said: Readonly<Record<Station, readonly string[]>> = {
    roof: [],
    gutter: report.drainage === null ? [] : [report.drainage.finding],
    settling: report.settling.map(({ finding }) => finding),
    storage: report.storages.map((one) => findings.storage(one)),
    stand: report.stands.map((one) => one.said),
    treatmentUnit: report.treatment.map(({ finding }) => finding),
    tap: report.head.map(({ finding }) => finding),
    cup: report.safety === null ? [] : [report.safety.finding],
  };
  return said[station].length === 0 ? null : said[station].join(' ');
}
