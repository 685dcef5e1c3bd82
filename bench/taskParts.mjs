// What a task of the page consists of: events of the browser within it (scripts, style, layout, collections of garbage) with the
// time each takes by itself, and the functions that its samples fell on.

/** What is traced besides, where the parts of tasks are asked for. It slows the page a little, so figures are taken without. */
export const tracedForParts = [
  'devtools.timeline',
  'v8',
  'disabled-by-default-v8.cpu_profiler',
  'disabled-by-default-v8.gc',
];

const most_parts = 9;
const most_functions = 8;

/**
 * Tells the parts of one task.
 *
 * @param events - of the trace
 * @param task - its event
 * @returns lines: events with their own CPU [ms], then functions with their share of the samples [ms by the clock]
 */
export function partsOf(events, task) {
  const { pid, tid, ts, dur } = task;
  const within = events
    .filter(
      (one) => one.pid === pid && one.tid === tid && one.ph === 'X' && one.ts >= ts && one.ts + one.dur <= ts + dur,
    )
    .sort((a, b) => a.ts - b.ts || b.dur - a.dur);
  // The profiler's own beginning is no part of the page.
  if (within.some(({ name }) => name === 'CpuProfiler::StartProfiling')) return null;
  const told = [...ownTimes(within)].sort((a, b) => b[1] - a[1]).slice(0, most_parts);
  const functions = [...samplesOf(events, task)].sort((a, b) => b[1] - a[1]).slice(0, most_functions);
  return [
    `    events: ${told.map(([name, ms]) => `${name} ${ms.toFixed(1)}`).join(', ')}`,
    ...functions.map(([name, ms]) => `    ${ms.toFixed(1)} ${name}`),
  ];
}

/** What each kind of event took by itself [ms of CPU], those within it left out. */
function ownTimes(within) {
  const own = new Map();
  const open = [];
  const add = (name, ms) => own.set(name, (own.get(name) ?? 0) + ms);
  for (const one of within) {
    while (open.length > 0 && open.at(-1).ts + open.at(-1).dur < one.ts + one.dur) open.pop();
    const taken = (one.tdur ?? one.dur) / 1000;
    if (open.length > 0) add(nameOf(open.at(-1)), -taken);
    add(nameOf(one), taken);
    open.push(one);
  }
  return own;
}

/** An event by its name, with what tells one from another of it: which event, how many elements. */
function nameOf({ name, args }) {
  if (name === 'EventDispatch') return `${name}:${args.data?.type}`;
  if (name === 'UpdateLayoutTree') return `${name}(${args.elementCount})`;
  if (name === 'Layout') return `${name}(${args.beginData?.dirtyObjects} of ${args.beginData?.totalObjects})`;
  return name;
}

/** The functions in which the samples of a task fell [ms by the clock]. */
function samplesOf(events, { pid, tid, ts, dur }) {
  const taken = new Map();
  for (const profile of events.filter((one) => one.name === 'Profile' && one.pid === pid && one.tid === tid)) {
    const nodes = new Map();
    let at = profile.args.data.startTime;
    const chunks = events.filter((one) => one.name === 'ProfileChunk' && one.pid === pid && one.id === profile.id);
    for (const { args } of chunks.sort((a, b) => a.ts - b.ts)) {
      const { cpuProfile = {}, timeDeltas = [] } = args.data;
      for (const node of cpuProfile.nodes ?? []) nodes.set(node.id, node.callFrame);
      (cpuProfile.samples ?? []).forEach((id, i) => {
        at += timeDeltas[i];
        if (at < ts || at > ts + dur) return;
        const { functionName, url = '', lineNumber = 0 } = nodes.get(id) ?? { functionName: '?' };
        const name = `${functionName || '(without a name)'} ${url.split('/').at(-1)}:${lineNumber + 1}`;
        taken.set(name, (taken.get(name) ?? 0) + timeDeltas[i] / 1000);
      });
    }
  }
  return taken;
}
