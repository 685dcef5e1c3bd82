import { createReadStream } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Checked } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { Stopped } from '@eavewell/work';
import { z } from 'zod';
import type { ExportAsked } from '../exportTask.ts';
import { orRefuse, Refused } from './problemReply.ts';
import { type App, answering, asIs, type Behind, type Find, failing, one } from './routing.ts';
import * as schemas from './schemas.ts';

/** Exports, and the list of what runs. */
export function taskRoutes(app: App, { tasks, programmes }: Behind, find: Find): void {
  const zip = { summary: 'The whole programme as a zip: its tables and its records.', params: schemas.programmeId };
  app.get(`${one}/export.zip`, { schema: zip }, async (request, typedReply) => {
    const { entry, version } = await find(request);
    const reply = asIs(typedReply);
    const name = entry.name.replace(/[^A-Za-z0-9 _-]/g, '').trim() || entry.programmeId;
    const folder = await programmes.passingFolder('exports');
    const file = join(folder, 'export.zip');
    const { programmeId } = entry;
    const asked: ExportAsked = { dataFolder: programmes.folder, programmeId, version, file };
    const about = { kind: 'export', programmeId, name: `${name}.zip`, importId: null } as const;
    const job = tasks.start<Checked<number>>(about, 'export', asked);
    // A page that goes away wants nothing any more.
    reply.raw.on('close', () => {
      job.cancel();
      void rm(folder, { recursive: true, force: true });
    });
    try {
      const size = orRefuse(await job.result);
      reply.header('content-disposition', `attachment; filename="${name}.zip"`).header('content-length', size);
      return reply.type('application/zip').send(createReadStream(file));
    } catch (error) {
      if (!(error instanceof Stopped)) throw error;
      throw new Refused([recordProblem('request.called_off', {}, {})]);
    }
  });
  const list = answering(
    'The long jobs that run, and those that were cut off when the program last ended.',
    schemas.taskList,
  );
  app.get('/api/tasks', { schema: list }, async () => ({ tasks: tasks.list().map((task) => ({ ...task })) }));
  const dismiss = {
    summary: 'Calls a job off, or puts away the word of one that was cut off.',
    params: schemas.taskAsked,
    response: { 204: z.null(), ...failing },
  };
  app.delete('/api/tasks/:taskId', { schema: dismiss }, async (request, reply) => {
    const { taskId } = request.params;
    if (!(await tasks.dismiss(taskId))) throw new Refused([recordProblem('request.not_found', {}, { value: taskId })]);
    return reply.code(204).send(null);
  });
}
