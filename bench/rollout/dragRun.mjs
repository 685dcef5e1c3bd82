/**
 * What a page does while a site is dragged, timed: the same code in Node and in a browser (drag.mjs). Nothing here knows either.
 *
 * @param engine - the engine's room of the rollout
 * @param given - the rollout as JSON carried it (text), the plan, the sites taken up with their legs (text), crews and trips aimed at
 * @param now_ms - a clock or a count of CPU time
 * @returns for each kind of work the milliseconds of each time it was done
 */
export function dragRun(engine, { numbers, plan, taken }, now_ms) {
  const times = { read: [], 'take up a site': [], drag: [], 'nearest place': [] };
  const found = { drags_count: 0, moved_count: 0, missing_count: 0, places_count: 0, timed_count: 0 };
  const timed = (name, work) => {
    const from = now_ms();
    const result = work();
    times[name].push(now_ms() - from);
    return result;
  };
  const [problem, before] = timed('read', () => {
    const read = engine.readNumbers(JSON.parse(numbers));
    return [read, { plan, outcome: engine.evaluatePlan(read, plan) }];
  });
  for (const { job, legs, aims } of taken) {
    const ready = timed('take up a site', () => engine.retiming(engine.withLegs(problem, JSON.parse(legs))));
    for (const aim of aims) {
      const becomes = timed('drag', () => {
        const moved = engine.moveSite(plan, job, aim);
        return moved.plan === null ? null : engine.whatBecomes(ready, before, moved.plan);
      });
      if (becomes === null) continue;
      found.drags_count++;
      found.moved_count += becomes.changes.sites.length;
      found.missing_count += becomes.missing.length;
    }
    const nearest = timed('nearest place', () => engine.nearestThatCan(ready, before, job, aims[0]));
    found.places_count += nearest.place === null ? 0 : 1;
    found.timed_count += nearest.tries_count;
  }
  return { times, found };
}
