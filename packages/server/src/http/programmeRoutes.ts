import { programmeFacts } from '../programmeFacts.ts';
import { servedDemo } from '../servedDemo.ts';
import * as answers from './answers.ts';
import { orRefuse } from './problemReply.ts';
import { type App, answering, type Behind, type Find, failing, one } from './routing.ts';
import * as schemas from './schemas.ts';

/** The programmes of a data folder, side by side. */
export function programmeRoutes(app: App, { programmes, designs }: Behind, find: Find): void {
  const list = answering('The programmes of this data folder, those set aside among them.', schemas.programmes);
  app.get('/api/programmes', { schema: list }, async () => {
    const listed = [];
    for (const entry of await programmes.list())
      listed.push({ ...entry, ...(await programmeFacts(programmes, designs, entry)) });
    return { programmes: listed };
  });
  const make = {
    summary: 'Makes a programme: empty, or invented to try things on.',
    body: schemas.newProgramme,
    response: { 201: schemas.programmeEntry, ...failing },
  };
  app.post('/api/programmes', { schema: make }, async (request, reply) => {
    const { name, from, by } = request.body;
    const tables = from === 'demo' ? servedDemo() : null;
    const made = orRefuse(await programmes.make(name, by, tables, from === 'demo' ? 'demo' : null));
    return reply.code(201).send({ ...made.entry });
  });
  const change = answering('Gives a programme another name, sets it aside or brings it back.', schemas.programmeListed);
  const changeSchema = { ...change, params: schemas.programmeId, body: schemas.programmeChanged };
  app.patch(one, { schema: changeSchema }, async (request) => {
    const { by, name, isSetAside } = request.body;
    const entry = orRefuse(await programmes.changeEntry(request.params.programmeId, by, { name, isSetAside }));
    return { ...entry, ...(await programmeFacts(programmes, designs, entry)) };
  });
  const state = answering('Where a programme stands.', schemas.programmeState);
  app.get(one, { schema: { ...state, params: schemas.programmeId } }, async (request) => {
    const programme = await find(request);
    return answers.stateAnswer(programme, await designs.state(programme));
  });
}
