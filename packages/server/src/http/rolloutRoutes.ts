import { dayOnClock, isoDay } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import type { RolloutWorking } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { z } from 'zod';
import type { OpenProgramme } from '../openProgramme.ts';
import { changesAmong } from '../rollouts/changesSince.ts';
import { withEntered } from '../rollouts/enteredCells.ts';
import { enteredSince, idOfFound } from '../rollouts/foundPlans.ts';
import type { SearchStart } from '../rollouts/rolloutAsks.ts';
import type { Rollouts } from '../rollouts/rollouts.ts';
import { Refused } from './problemReply.ts';
import * as answers from './rolloutSchemas.ts';
import { type App, answering, asIs, type Behind, type Find, failing, one } from './routing.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** There is none of that id. */
const unknown = (value: string) => new Refused([recordProblem('request.not_found', {}, { value })]);

/** An answer that was put together elsewhere, as it is. */
const sent = (reply: unknown, text: string) => asIs(reply).type('application/json; charset=utf-8').send(text);

/** Who goes where, when, by which way: a plan, its trips, two plans side by side, and the search for one. */
export function rolloutRoutes(app: App, behind: Behind, find: Find): void {
  sheetRoutes(app, behind, find);
  workingRoutes(app, behind, find);
  numbersRoutes(app, behind, find);
  searchRoutes(app, behind, find);
}

function sheetRoutes(app: App, { rollouts }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const sheet = answering('The rollout: one plan, its days, and what is not planned.', answers.sheetAnswer);
  app.get(
    `${one}/rollout`,
    { schema: { ...sheet, params, querystring: answers.planAsked } },
    async (request, reply) => {
      const { plan = null } = request.query;
      const text = await rollouts.sheet(await find(request), { planId: plan, language: languageOf(request).code });
      if (text === null) throw unknown(plan ?? '');
      return sent(reply, text);
    },
  );
  const trip = answering('One trip in full: the manifest, the legs, the days.', answers.tripAnswer);
  app.get(
    `${one}/rollout/trips/:tripId`,
    { schema: { ...trip, params: answers.tripAsked, querystring: answers.planAsked } },
    async (request, reply) => {
      const { plan = null } = request.query;
      const { tripId } = request.params;
      const asked = { planId: plan, tripId, language: languageOf(request).code };
      const found = await rollouts.trip(await find(request), asked);
      if (typeof found === 'string') throw unknown(found === 'plan' ? (plan ?? tripId) : tripId);
      return sent(reply, found.text);
    },
  );
  const compared = answering('Two plans side by side.', answers.comparisonAnswer);
  app.get(
    `${one}/rollout/compared`,
    { schema: { ...compared, params, querystring: answers.plansAsked } },
    async (request, reply) => {
      const { a, b } = request.query;
      const found = await rollouts.compared(await find(request), { a, b, language: languageOf(request).code });
      if (found === null) throw unknown(`${a}, ${b}`);
      return sent(reply, found.text);
    },
  );
}

/** How a figure of a plan was reached. */
function workingRoutes(app: App, { rollouts }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const working = answering('How a figure of the rollout was reached, line by line.', answers.workingAnswer);
  app.get(
    `${one}/rollout/working`,
    { schema: { ...working, params, querystring: answers.workingAsked } },
    async (request, reply) => {
      const { plan = null, beside = null, figure, site = '', store = '', part = '', day = '' } = request.query;
      const { area = null, differs = 'waiting' } = request.query;
      const asked = { figure, site, store, part, day, area, differs };
      const language = languageOf(request);
      const programme = await find(request);
      const of = { planId: plan, beside, language: language.code };
      const found = await rollouts.working(programme, { ...of, figure: asked });
      if (found === null)
        throw unknown(
          [plan ?? '', beside ?? '', figure, site, store, part, day].filter((one) => one !== '').join(', '),
        );
      const working = withEntered(JSON.parse(found.text) as RolloutWorking, programme.facts, language);
      return sent(reply, JSON.stringify(working));
    },
  );
}

/** What the evaluator in the page times plans by. */
function numbersRoutes(app: App, { rollouts }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const numbers = answering(
    'The rollout as numbers, with the legs of one plan, for the evaluator in the page.',
    answers.numbersAnswer,
  );
  app.get(
    `${one}/rollout/numbers`,
    { schema: { ...numbers, params, querystring: answers.planAsked } },
    async (request, reply) => {
      const { plan = null } = request.query;
      const found = await rollouts.numbers(await find(request), { planId: plan });
      if (found === null) throw unknown(plan ?? '');
      return sent(reply, found.text);
    },
  );
  const legs = answering('More legs for the evaluator in the page.', answers.legsAnswer);
  app.post(
    `${one}/rollout/legs`,
    { schema: { ...legs, params, querystring: answers.planAsked, body: answers.legsAsked } },
    async (request, reply) => {
      const { plan = null } = request.query;
      const found = await rollouts.legs(await find(request), { planId: plan, ...request.body });
      if (found === null) throw new Refused([recordProblem('request.other_state', {}, {})]);
      return sent(reply, found.text);
    },
  );
}

function searchRoutes(app: App, { rollouts }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const begun = answering('Begins the search for a plan; it is kept when it is found.', answers.searchBegun);
  app.post(`${one}/rollout/search`, { schema: { ...begun, params, body: answers.searchAsked } }, async (request) => {
    const programme = await find(request);
    return { taskId: await begin(rollouts, programme, request.body, languageOf(request)) };
  });
  const state = answering('How the search for a plan gets on.', answers.searchState);
  app.get(`${one}/rollout/search`, { schema: { ...state, params } }, async (request) => {
    const programme = await find(request);
    return { ...rollouts.searches.state(programme), found: await foundTold(rollouts, programme) };
  });
  foundRoutes(app, rollouts, find);
}

/** Plans that were found and wait to be looked at. */
async function foundTold({ searches }: Rollouts, programme: OpenProgramme) {
  const all = await searches.found.list(programme);
  return all.map((found) => {
    const { into, by, at } = found;
    const { records, isPlanChanged } = enteredSince(programme, found);
    const { changes_count: entered_count } = changesAmong(records, into);
    return { into, planId: idOfFound(into), by, at, entered_count, isPlanChanged };
  });
}

/** Keeps what was found, or lets go of it. */
function foundRoutes(app: App, { searches }: Rollouts, find: Find): void {
  const params = answers.foundAsked;
  const kept = answering('Keeps a plan that was found, as one step.', answers.foundKept);
  const known = async (programme: OpenProgramme, into: string) => {
    const found = await searches.found.of(programme, into);
    if (found === null) throw unknown(into);
    return found;
  };
  app.post(
    `${one}/rollout/found/:into`,
    { schema: { ...kept, params, body: answers.keepFoundAsked } },
    async (request) => {
      const programme = await find(request);
      const found = await known(programme, request.params.into);
      if (found.at !== request.body.at) throw new Refused([recordProblem('request.other_state', {}, {})]);
      const { planId, isInPlace, problems } = await searches.keepFound(programme, request.body.by, found);
      if (problems.length > 0) throw new Refused(problems);
      return { planId, isInPlace };
    },
  );
  const left = {
    summary: 'Lets go of a plan that was found: nothing is written.',
    params,
    response: { 204: z.null(), ...failing },
  };
  app.delete(`${one}/rollout/found/:into`, { schema: left }, async (request, reply) => {
    const programme = await find(request);
    await searches.leaveFound(programme, await known(programme, request.params.into));
    return reply.code(204).send(null);
  });
}

/** Begins a search; refused where one runs, what it names is not there, or nothing can be planned. */
async function begin(
  rollouts: Rollouts,
  programme: OpenProgramme,
  { from, onlyCrews, keepTrips = [], name, isHeld = false, ...asked }: z.infer<typeof answers.searchAsked>,
  language: Language,
): Promise<string> {
  const runs = () => new Refused([recordProblem('request.search_runs', {}, {})]);
  if (rollouts.searches.isRunning(programme)) throw runs();
  for (const planId of [from, asked.into])
    if (planId !== null && programme.facts.row('plans', planId) === null) throw unknown(planId);
  const start = async (): Promise<SearchStart> => {
    const goesOnWith = isHeld && from === asked.into ? await heldOf(rollouts, programme, from) : null;
    const found = await rollouts.searchStart(programme, { from, onlyCrews, keepTrips, goesOnWith });
    if (found === 'plan') throw unknown(from ?? '');
    if (found === 'crew') throw unknown(onlyCrews?.join(', ') ?? '');
    if (found === 'nothing') throw new Refused([recordProblem('request.nothing_to_plan', {}, {})]);
    return found;
  };
  const search = { ...asked, isHeld, name: name ?? nameOfNow(language) };
  const taskId = await rollouts.searches.begin(programme, search, language, start);
  if (taskId === null) throw runs();
  return taskId;
}

/** What was found of a plan and may be gone on with; null: nothing, or the plan was changed since. */
async function heldOf({ searches }: Rollouts, programme: OpenProgramme, into: string | null): Promise<string | null> {
  const found = into === null ? null : await searches.found.of(programme, into);
  return found === null || enteredSince(programme, found).isPlanChanged ? null : idOfFound(found.into);
}

/** What a plan is called that nobody names: by the day and hour on this computer. */
function nameOfNow({ say, numbers }: Language): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return say('rolloutAnswers.planName', {
    day: numbers.date(isoDay(dayOnClock(now))),
    time: `${two(now.getHours())}:${two(now.getMinutes())}`,
  });
}
