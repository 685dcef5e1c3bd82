import { dayOnClock, isoDay } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import type { RolloutWorking } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { z } from 'zod';
import type { OpenProgramme } from '../openProgramme.ts';
import { withEntered } from '../rollouts/enteredCells.ts';
import type { SearchStart } from '../rollouts/rolloutAsks.ts';
import type { Rollouts } from '../rollouts/rollouts.ts';
import { Refused } from './problemReply.ts';
import * as answers from './rolloutSchemas.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
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
  app.get(`${one}/rollout/search`, { schema: { ...state, params } }, async (request) => ({
    ...rollouts.searches.state(await find(request)),
  }));
}

/** Begins a search; refused where one runs, what it names is not there, or nothing can be planned. */
async function begin(
  rollouts: Rollouts,
  programme: OpenProgramme,
  { from, onlyCrews, keepTrips = [], name, ...asked }: z.infer<typeof answers.searchAsked>,
  language: Language,
): Promise<string> {
  const runs = () => new Refused([recordProblem('request.search_runs', {}, {})]);
  if (rollouts.searches.isRunning(programme)) throw runs();
  for (const planId of [from, asked.into])
    if (planId !== null && programme.facts.row('plans', planId) === null) throw unknown(planId);
  const start = async (): Promise<SearchStart> => {
    const found = await rollouts.searchStart(programme, { from, onlyCrews, keepTrips });
    if (found === 'plan') throw unknown(from ?? '');
    if (found === 'crew') throw unknown(onlyCrews?.join(', ') ?? '');
    if (found === 'nothing') throw new Refused([recordProblem('request.nothing_to_plan', {}, {})]);
    return found;
  };
  const search = { ...asked, name: name ?? nameOfNow(language) };
  const taskId = await rollouts.searches.begin(programme, search, language, start);
  if (taskId === null) throw runs();
  return taskId;
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
