import type { SiteFacts } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** One line of what is fitted: which, what it is, its size and how much of it. */
export interface PartLine {
  readonly ids: readonly string[];
  readonly what: string;
  readonly size: string;
  readonly amount: string;
}

/** Where nobody measured, a line to write on. */
const blank = '……';

/**
 * What is fitted at a site, by the facts: gutters, outlets, downpipes, first flush, tanks, overflows and pipes. Alike ones stand in one line.
 *
 * @param site - its facts
 * @param words - the language of the sheet
 * @returns lines in the order of the water [mm, m, L]; what was not measured is left to be written in
 */
export function partsToFit(site: SiteFacts, words: Words): readonly PartLine[] {
  return together([
    ...site.gutters.flatMap((gutter) => gutterLines(gutter, words)),
    ...site.downpipes.map((downpipe) => downpipeLine(downpipe, words)),
    ...site.roofs.flatMap((roof) => flushLines(roof, words)),
    ...site.tanks.flatMap((tank) => tankLines(tank, words)),
    ...site.pipes.map((pipe) => pipeLine(pipe, words)),
  ]);
}

const mm = (value: number | null) => (value === null ? blank : String(Math.round(value)));
const bore = (value: number | null, { say }: Words) => say('installation.bore', { mm: mm(value) });
const length = (value: number | null, { say, numbers }: Words) =>
  say('drawn.metres', { value: value === null ? blank : numbers.fixed(value, 2) });

function gutterLines(gutter: SiteFacts['gutters'][number], words: Words): readonly PartLine[] {
  const { say } = words;
  const { gutterId, shape, width_mm, depth_mm, length_m, outlet_mm, outlets_count, outletGrate } = gutter;
  const size = say('installation.gutter_size', { width: mm(width_mm), depth: mm(depth_mm) });
  return [
    {
      ids: [gutterId],
      what: shape === null ? say('sites.part_gutter') : say(`installation.gutter_${shape}`),
      size,
      amount: length(length_m, words),
    },
    {
      ids: [gutterId],
      what: say(outletGrate === 'grated' ? 'installation.outlet_grated' : 'installation.outlet'),
      size: bore(outlet_mm, words),
      amount: say('installation.each', { count: outlets_count ?? 1 }),
    },
  ];
}

function downpipeLine({ downpipeId, bore_mm, length_m }: SiteFacts['downpipes'][number], words: Words): PartLine {
  return {
    ids: [downpipeId],
    what: words.say('sites.part_downpipe'),
    size: bore(bore_mm, words),
    amount: length(length_m, words),
  };
}

function flushLines({ roofId, diverter }: SiteFacts['roofs'][number], words: Words): readonly PartLine[] {
  if (diverter === null) return [];
  const { say, numbers } = words;
  const { chamber_L, chamberBore_mm, drainHole_mm } = diverter;
  return [
    {
      ids: [roofId],
      what: say('installation.flush'),
      size: say('installation.flush_size', { bore: mm(chamberBore_mm), hole: mm(drainHole_mm) }),
      amount: chamber_L === null ? `${blank} L` : numbers.litres(chamber_L),
    },
  ];
}

function tankLines(tank: SiteFacts['tanks'][number], words: Words): readonly PartLine[] {
  const { say, numbers } = words;
  const { tankId, role, partVolume_L, nominal_L, diameter_m, overflowBore_mm, overflows_count, overflowScreen } = tank;
  const volume_L = nominal_L ?? partVolume_L;
  return [
    {
      ids: [tankId],
      what: say(role === 'settling' ? 'sites.station_settling' : 'sites.station_storage'),
      size: diameter_m === null ? '' : `ø ${length(diameter_m, words)}`,
      amount: volume_L === null ? '' : numbers.litres(volume_L),
    },
    {
      ids: [tankId],
      what: say(overflowScreen === 'screened' ? 'installation.overflow_screened' : 'installation.overflow_open'),
      size: bore(overflowBore_mm, words),
      amount: say('installation.each', { count: overflows_count ?? 1 }),
    },
  ];
}

function pipeLine(pipe: SiteFacts['pipes'][number], words: Words): PartLine {
  const { say } = words;
  const { pipeId, leg, bore_mm, length_m, elbows_count, tees_count, valves_count, meters_count } = pipe;
  const fittings = say('installation.fittings', {
    elbows: elbows_count ?? 0,
    tees: tees_count ?? 0,
    valves: valves_count ?? 0,
    meters: meters_count ?? 0,
  }).trim();
  return {
    ids: [pipeId],
    what: say(`installation.pipe_${leg}`),
    size: `${bore(bore_mm, words)}${fittings === '' ? '' : `; ${fittings}`}`,
    amount: length(length_m, words),
  };
}

/** Alike lines become one, with the ids of all. */
function together(lines: readonly PartLine[]): readonly PartLine[] {
  const known = new Map<string, PartLine>();
  for (const line of lines) {
    const key = `${line.what}|${line.size}|${line.amount}`;
    const before = known.get(key);
    known.set(key, before === undefined ? line : { ...line, ids: [...before.ids, ...line.ids] });
  }
  return [...known.values()];
}
