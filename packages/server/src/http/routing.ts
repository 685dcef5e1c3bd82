import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import type { z } from 'zod';
import type { Designs } from '../designs/designs.ts';
import type { Reviews } from '../imports/reviews.ts';
import type { Kits } from '../kits/kits.ts';
import type { Changed, OpenProgramme } from '../openProgramme.ts';
import type { Overviews } from '../overview.ts';
import type { Programmes } from '../programmes.ts';
import type { RolloutPapers } from '../rollouts/rolloutPapers.ts';
import type { Rollouts } from '../rollouts/rollouts.ts';
import type { RunningTasks } from '../runningTasks.ts';
import { changedAnswer } from './answers.ts';
import type { Listeners } from './events.ts';
import { orRefuse } from './problemReply.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** What the routes answer from. */
export interface Behind {
  readonly programmes: Programmes;
  readonly designs: Designs;
  readonly kits: Kits;
  readonly rollouts: Rollouts;
  readonly rolloutPapers: RolloutPapers;
  readonly overviews: Overviews;
  readonly reviews: Reviews;
  readonly tasks: RunningTasks;
  readonly listeners: Listeners;
}

export type App = ReturnType<typeof typed>;
export const typed = (app: FastifyInstance) => app.withTypeProvider<ZodTypeProvider>();

export const one = '/api/programmes/:programmeId';
export const failing = { default: schemas.problemBody };
export const answering = <T extends z.ZodType>(summary: string, answer: T) => ({
  summary,
  response: { 200: answer, ...failing },
});

/** An answer that is sent as it is, put together elsewhere. */
export const asIs = (reply: unknown) => reply as FastifyReply;

/** The programme a request is about. */
export type Find = (request: { readonly params: { readonly programmeId: string } }) => Promise<OpenProgramme>;

/** What a change came to. */
export function changed(request: unknown, programme: OpenProgramme, made: Changed) {
  const found = { ok: true, value: orRefuse(made), problems: made.problems } as const;
  return changedAnswer(programme, found, languageOf(request as FastifyRequest));
}
