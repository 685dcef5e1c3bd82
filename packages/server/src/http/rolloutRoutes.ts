import { recordProblem } from '@eavewell/records';
import { z } from 'zod';
import { Refused } from './problemReply.ts';
import * as answers from './rolloutSchemas.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** Who goes where, when, by which way: a plan, its trips, two plans side by side, and the search for one. */
export function rolloutRoutes(app: App, { rollouts }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const none = () => new Refused([recordProblem('request.not_found', {}, { value: 'rollout' })]);
  const sheet = answering('The rollout: one plan, its days, and what is not planned.', answers.sheetAnswer);
  app.get(
    `${one}/rollout`,
    { schema: { ...sheet, params, querystring: answers.planAsked } },
    async (request, reply) => {
      const programme = await find(request);
      const planId = request.query.plan ?? null;
      const text = await rollouts.sheet(programme, { planId, language: languageOf(request).code });
      return asIs(reply).type('application/json; charset=utf-8').send(text);
    },
  );
  const trip = answering('One trip in full: the manifest, the legs, the days.', answers.tripAnswer);
  app.get(
    `${one}/rollout/trips/:tripId`,
    { schema: { ...trip, params: answers.tripAsked, querystring: answers.planAsked } },
    async (request) => {
      await find(request);
      throw none();
    },
  );
  const compared = answering('Two plans side by side.', answers.comparisonAnswer);
  app.get(
    `${one}/rollout/compared`,
    { schema: { ...compared, params, querystring: answers.plansAsked } },
    async (request) => {
      await find(request);
      throw none();
    },
  );
  const begun = answering('Begins the search for a plan; it is kept when it is found.', answers.searchBegun);
  app.post(`${one}/rollout/search`, { schema: { ...begun, params, body: answers.searchAsked } }, async (request) => {
    await find(request);
    throw none();
  });
  const state = answering('How the search for a plan gets on.', answers.searchState);
  app.get(`${one}/rollout/search`, { schema: { ...state, params } }, async (request) => {
    await find(request);
    throw none();
  });
  const numbers = answering(
    'The rollout as numbers, with the legs of one plan, for the evaluator in the page.',
    z.unknown(),
  );
  app.get(
    `${one}/rollout/numbers`,
    { schema: { ...numbers, params, querystring: answers.planAsked } },
    async (request) => {
      await find(request);
      throw none();
    },
  );
  const legs = answering('More legs for the evaluator in the page.', z.unknown());
  app.post(`${one}/rollout/legs`, { schema: { ...legs, params, body: answers.legsAsked } }, async (request) => {
    await find(request);
    throw none();
  });
}
