import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';

/**
 * Readers of public instance files. The files are not part of this repository: the bench is given a folder of them.
 * A file that is not understood is told with its name, never guessed at.
 */

/** Files of a folder with this ending, by name; null where there is no such folder. */
export function instancesIn(folder, ending) {
  if (!existsSync(folder)) return null;
  const found = readdirSync(folder).filter((file) => file.endsWith(ending));
  return found.sort().map((file) => join(folder, file));
}

/**
 * A file of the TSPLIB family (.vrp, .tsp): `header` by its keys, `sections` by their names as rows of numbers. Numbers of an edge weight
 * section follow each other in one row, as lines mean nothing there.
 */
export function readSections(path) {
  const header = {};
  const sections = {};
  let section = null;
  for (const line of readFileSync(path, 'utf8').split(/\r?\n/)) {
    const text = line.trim();
    if (text === '' || text === 'EOF') continue;
    const named = /^([A-Z_]+)\s*:\s*(.*)$/.exec(text);
    if (named) header[named[1]] = named[2].trim();
    else if (/^[A-Z_]+$/.test(text)) {
      section = text;
      sections[section] = [];
    } else if (section !== null) {
      const row = text.split(/\s+/).map(Number);
      if (row.some(Number.isNaN)) throw new Error(`${basename(path)}: a row that holds no numbers, "${text}"`);
      if (section === 'EDGE_WEIGHT_SECTION') sections[section].push(...row);
      else sections[section].push(row);
    }
  }
  return { name: header.NAME ?? basename(path), header, sections };
}

/** Costs from every stop to every stop by the rule the file names: i × stops + j. `round` false: straight distances as they are. */
export function costsOf({ name, header, sections }, { round = true } = {}) {
  const stops = Number(header.DIMENSION);
  const rule = header.EDGE_WEIGHT_TYPE;
  if (rule === 'EXPLICIT') return explicitCosts(name, header, sections, stops);
  const rounded = { EUC_2D: (d) => Math.floor(d + 0.5), CEIL_2D: Math.ceil }[rule];
  if (!rounded) throw new Error(`${name}: edge weights ${rule} are not known here`);
  return straightCosts(
    sections.NODE_COORD_SECTION.map(([, x, y]) => [x, y]),
    round ? rounded : (d) => d,
  );
}

/** Straight distances between places [x, y], each passed through `rounded`. */
export function straightCosts(places, rounded) {
  const stops = places.length;
  const costs = new Float64Array(stops * stops);
  for (let i = 0; i < stops; i++)
    for (let j = 0; j < stops; j++)
      costs[i * stops + j] = rounded(Math.hypot(places[i][0] - places[j][0], places[i][1] - places[j][1]));
  return costs;
}

function explicitCosts(name, header, sections, stops) {
  const given = sections.EDGE_WEIGHT_SECTION;
  const costs = new Float64Array(stops * stops);
  const form = header.EDGE_WEIGHT_FORMAT;
  const columns = {
    FULL_MATRIX: () => [0, stops],
    LOWER_ROW: (i) => [0, i],
    LOWER_DIAG_ROW: (i) => [0, i + 1],
    UPPER_ROW: (i) => [i + 1, stops],
    UPPER_DIAG_ROW: (i) => [i, stops],
  }[form];
  if (!columns) throw new Error(`${name}: edge weights as ${form} are not known here`);
  let at = 0;
  for (let i = 0; i < stops; i++) {
    const [from, to] = columns(i);
    for (let j = from; j < to; j++, at++) {
      costs[i * stops + j] = given[at];
      if (form !== 'FULL_MATRIX') costs[j * stops + i] = given[at];
    }
  }
  if (at !== given.length) throw new Error(`${name}: ${given.length} edge weights where ${at} belong`);
  return costs;
}

/** Jobs with loads (.vrp): costs, demands with the base first, capacity. The base must be the first stop. */
export function readLoads(path) {
  const file = readSections(path);
  const stops = Number(file.header.DIMENSION);
  const base = file.sections.DEPOT_SECTION?.[0]?.[0] ?? 1;
  if (base !== 1) throw new Error(`${file.name}: its base is stop ${base}, not the first`);
  if (file.header.DISTANCE !== undefined) throw new Error(`${file.name}: a limit of length is not known here`);
  const demand = new Int32Array(stops);
  for (const [stop, amount] of file.sections.DEMAND_SECTION) demand[stop - 1] = amount;
  return { name: file.name, cost: costsOf(file), demand, capacity: Number(file.header.CAPACITY) };
}

/**
 * Jobs with loads and windows (Solomon's form, .txt). Distances and times are cut to one decimal and told in tenths, as whole numbers
 * (the convention of the DIMACS challenge); `scale` is 10.
 */
export function readWindows(path) {
  const lines = readFileSync(path, 'utf8').split(/\r?\n/);
  const rows = lines.map((line) => line.trim().split(/\s+/).map(Number));
  const numbers = rows.filter((row) => row.length > 1 && row.every((value) => !Number.isNaN(value)));
  const [fleet, ...stops] = numbers;
  if (fleet?.length !== 2 || stops.some((row) => row.length !== 7))
    throw new Error(`${basename(path)}: not the form of Solomon's files`);
  const scale = 10;
  const column = (at, by) => Float64Array.from(stops, (row) => row[at] * by);
  return {
    name: lines[0].trim(),
    cost: straightCosts(
      stops.map(([, x, y]) => [x, y]),
      (d) => Math.floor(d * scale),
    ),
    demand: Int32Array.from(stops, (row) => row[3]),
    capacity: fleet[1],
    opens: column(4, scale),
    closes: column(5, scale),
    service: column(6, scale),
    scale,
  };
}

/**
 * Jobs with loads, windows and goods that come over time, for vehicles that go out several times (.vrp of type MTVRPTWR). Distances are cut
 * to one decimal; they and all times are told in tenths, as whole numbers, and so are the values of the .sol files (recounted: all four
 * of ours give the cost they print). Every vehicle is at the base, the first stop, at its opening; loading takes no time.
 */
export function readReleases(path) {
  const file = readSections(path);
  const { header, sections } = file;
  const stops = Number(header.DIMENSION);
  const rows = (section) => {
    const found = sections[section];
    if (found?.length !== stops) throw new Error(`${file.name}: ${section} is not there for each of ${stops} stops`);
    return found;
  };
  if (header.TYPE !== 'MTVRPTWR') throw new Error(`${file.name}: type ${header.TYPE} is not the one known here`);
  if (sections.DEPOT_SECTION?.length !== 1 || sections.DEPOT_SECTION[0][0] !== 1)
    throw new Error(`${file.name}: its base is not the first stop`);
  if (sections.VEHICLES_RELOAD_DEPOT_SECTION?.some(([, at]) => at !== 1))
    throw new Error(`${file.name}: a vehicle loads elsewhere than at the base`);
  const scale = 10;
  const windows = rows('TIME_WINDOW_SECTION');
  return {
    name: file.name,
    cost: straightCosts(
      rows('NODE_COORD_SECTION').map(([, x, y]) => [x, y]),
      (d) => Math.floor(d * scale),
    ),
    demand: Int32Array.from(rows('DEMAND_SECTION'), ([, amount]) => amount),
    capacity: Number(header.CAPACITY),
    vehicles: Number(header.VEHICLES),
    opens: Float64Array.from(windows, ([, opens]) => opens * scale),
    closes: Float64Array.from(windows, ([, , closes]) => closes * scale),
    service: Float64Array.from({ length: stops }, (_, at) => (at === 0 ? 0 : Number(header.SERVICE_TIME) * scale)),
    release: Float64Array.from(rows('RELEASE_TIME_SECTION'), ([, at]) => at * scale),
  };
}

/** The value of the .sol file beside an instance, or null where there is none. */
export function valueBeside(path) {
  const beside = path.replace(/\.[^.]+$/, '.sol');
  if (!existsSync(beside)) return null;
  const cost = /^\s*cost\s*:?\s*([\d.]+)/im.exec(readFileSync(beside, 'utf8'));
  return cost ? Number(cost[1]) : null;
}
