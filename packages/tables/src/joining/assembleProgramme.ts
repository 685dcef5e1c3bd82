import {
  type DesignSettings,
  type GaugeFacts,
  type GaugeNormal,
  noStorms,
  type PartFacts,
  type Place,
  type PriceFacts,
  type Problem,
  type ProgrammeFacts,
  type RainReading,
} from '@eavewell/engine';
import type { NotUsed } from '../reading/tableProblems.ts';
import { checkLinks } from './checkLinks.ts';
import { findDoubts } from './findDoubts.ts';
import { joinSites } from './joinSites.ts';
import { kitFacts, kitFiguresOf } from './kitOfTables.ts';
import { rolloutOfTables } from './rollout/rolloutOfTables.ts';
import { stormsByGauge } from './stormsByGauge.ts';
import type { TablesRead } from './tablesRead.ts';
import { unitFiguresOf } from './treatmentBySite.ts';

/** What was read of one gauge's rain. */
export interface RainOfGauge {
  readonly file: string;
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
}

/** Is there a file of readings that could not be used? Then it is to be mended, and normals do not stand in for it. */
function isRefused({ problems }: RainOfGauge): boolean {
  return problems.some(({ severity, code }) => severity === 'blocker' && code !== 'rainFile.missing');
}

/** All that was read of a folder, before it is joined. */
export interface ProgrammeParts {
  readonly settings: DesignSettings;
  readonly tables: TablesRead;
  /** Readings by gauge, and what was wrong with their file. */
  readonly rain: ReadonlyMap<string, RainOfGauge>;
  /** Faults of whole files that bear on every site: a settings value, a file cut off. */
  readonly doubtsOfAll: readonly Place[];
  /** Lengths of ways that have a line [km]; left out: none has. */
  readonly wayLengths_km?: ReadonlyMap<string, number>;
}

/** What the tables come to, with what came to light in joining them. */
export interface ProgrammeJoined {
  readonly facts: ProgrammeFacts;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** Normals by gauge. A month that two rows are about is not known: nobody can tell which of the two is right. */
function normalsByGauge({ normals }: TablesRead): ReadonlyMap<string, readonly GaugeNormal[]> {
  const keyOf = (gaugeId: string, month: number | string) => `${gaugeId} ${Number(month)}`;
  const lost = new Set((normals?.lost ?? []).map(({ keys }) => keyOf(keys['gaugeId'] ?? '', keys['month'] ?? '')));
  for (const { code, facts } of normals?.problems ?? []) {
    const [gaugeId = '', month = ''] = String(facts['value'] ?? '').split(' ');
    if (code === 'row.key_twice') lost.add(keyOf(gaugeId, month));
  }
  const byGauge = new Map<string, Map<number, GaugeNormal>>();
  for (const { values } of normals?.rows ?? []) {
    const [gaugeId, month] = [values.gaugeId!, values.month!];
    const months = byGauge.get(gaugeId) ?? new Map<number, GaugeNormal>();
    const isTwice = lost.has(keyOf(gaugeId, month)) || months.has(month);
    const { rain_mm, wetDays, source, yearFrom, yearTo } = values;
    const known = isTwice ? { rain_mm: null, wetDays: null } : { rain_mm, wetDays };
    months.set(month, { month, ...known, source, yearFrom, yearTo });
    byGauge.set(gaugeId, months);
  }
  return new Map([...byGauge].map(([gaugeId, months]) => [gaugeId, [...months.values()]]));
}

function gaugeFacts({ tables, rain }: ProgrammeParts): readonly GaugeFacts[] {
  const normals = normalsByGauge(tables);
  const storms = stormsByGauge(tables);
  return (tables.gauges?.rows ?? []).map(({ values }) => {
    const gaugeId = values.gaugeId!;
    const found = rain.get(gaugeId);
    return {
      gaugeId,
      name: values.name ?? gaugeId,
      latitude_deg: values.latitude_deg,
      longitude_deg: values.longitude_deg,
      readingTime: values.readingTime,
      readings: found?.readings ?? [],
      normals: found && isRefused(found) ? [] : (normals.get(gaugeId) ?? []),
      ...(storms.get(gaugeId) ?? noStorms),
      file: found?.file ?? `rain/${gaugeId}.csv`,
    };
  });
}

function partFacts({ parts }: TablesRead): readonly PartFacts[] {
  return (parts?.rows ?? []).map(({ values }) => ({
    partId: values.partId!,
    kind: values.kind!,
    name: values.name ?? values.partId!,
    volume_L: values.volume_L,
    length_m: values.length_m,
    mass_kg: values.mass_kg,
    shape: values.shape,
    topWidth_mm: values.topWidth_mm,
    baseWidth_mm: values.baseWidth_mm,
    depth_mm: values.depth_mm,
    bore_mm: values.bore_mm,
    unit: unitFiguresOf(values),
    kit: kitFiguresOf(values),
  }));
}

function priceFacts({ prices }: TablesRead, unlinked: ReadonlySet<string>): readonly PriceFacts[] {
  return (prices?.rows ?? [])
    .filter(({ row, values }) => !unlinked.has(`prices ${row}`) && values.currency !== null)
    .map(({ values }) => ({
      partId: values.partId!,
      priceDate: values.priceDate!,
      amount: values.amount!,
      currency: values.currency!,
    }));
}

/**
 * What is the engine told of this programme? The rows of all tables joined by their ids. A row that names what is not there is
 * not used; a site about which any row could not be used is in doubt, so that the engine gives no verdict on half its facts.
 *
 * @param parts - settings, tables and rain as they were read, and the faults that bear on every site
 * @returns the facts of the programme, with the problems found in joining and the rows not used for them
 * @problem link.unknown_site - a row names a site that is not there
 * @law a site in the table is in the facts, whatever stands in its other cells
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function assembleProgramme(parts: ProgrammeParts): ProgrammeJoined {
  const { tables } = parts;
  const links = checkLinks(tables);
  const doubts = findDoubts(tables, links.problems, parts.doubtsOfAll);
  const prices = priceFacts(tables, links.unlinked);
  const kit = kitFacts(tables, links.unlinked);
  const rollout = rolloutOfTables(tables, { settings: parts.settings, kit, prices }, parts.wayLengths_km ?? new Map());
  return {
    facts: {
      settings: rollout.settings,
      sites: joinSites(tables, links.unlinked, doubts, parts.settings),
      gauges: gaugeFacts(parts),
      parts: partFacts(tables),
      prices,
      kit,
      rollout: rollout.facts,
    },
    problems: [...links.problems, ...rollout.problems],
    notUsed: [...links.notUsed, ...rollout.notUsed],
  };
}
