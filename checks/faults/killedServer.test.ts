import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { seededDice } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { good } from './folder.ts';
import { type Page, zipOf } from './served.ts';
import { begunFolder, inRoom, pageOf, start } from './started.ts';

/** How often the program is killed; `npm run soak` asks for more. */
const kills = process.env['EAVEWELL_SOAK'] === '1' ? 50 : 6;

const steps = ['import', 'edit', 'undo', 'redo', 'design'] as const;
type Step = (typeof steps)[number];

/** People of three sites: all that is changed here, so that what must stand is known without asking the program. */
type People = Readonly<Record<string, string>>;

/** What stands, by a plain list: each change with what was before it, so that it can be taken back. */
interface Plain {
  people: People;
  done: readonly People[];
  undone: readonly People[];
  version: number;
}

function after(plain: Plain, step: Step, people: People): Plain {
  const { done, undone, version } = plain;
  if (step === 'undo')
    return { people: done.at(-1)!, done: done.slice(0, -1), undone: [...undone, plain.people], version: version + 1 };
  if (step === 'redo')
    return { people: undone.at(-1)!, done: [...done, plain.people], undone: undone.slice(0, -1), version: version + 1 };
  return { people, done: [...done, plain.people], undone: [], version: version + 1 };
}

const csvOf = (people: People) =>
  `siteId,people\n${Object.entries(people)
    .map((row) => `${row.join(',')}\n`)
    .join('')}`;

async function peopleIn(page: Page, programme: string): Promise<People> {
  const { body } = await page.ask('GET', `${programme}/tables/sites`);
  return Object.fromEntries(
    body.rows.map(({ key, cells }: { key: string; cells: { people: string } }) => [key, cells.people]),
  );
}

/** Asks for one step; gives its status, or null where the program was gone before it answered. */
async function taken(page: Page, programme: string, step: Step, now: People, people: People): Promise<number | null> {
  const by = { by: 'Nadi' };
  try {
    if (step === 'design') return (await page.ask('GET', `${programme}/design`)).status;
    if (step === 'undo' || step === 'redo') return (await page.ask('POST', `${programme}/${step}`, by)).status;
    if (step === 'import')
      return (await page.takeIn(programme, 'sites.csv', new TextEncoder().encode(csvOf(people)))).status;
    const changes = Object.keys(people)
      .filter((key) => people[key] !== now[key])
      .map((key) => ({
        ...{ kind: 'edited', table: 'sites', key },
        ...{ before: { people: now[key] }, after: { people: people[key] } },
      }));
    return (await page.ask('POST', `${programme}/changes`, { ...by, changes })).status;
  } catch {
    return null;
  }
}

it(`killed ${kills} times among imports, edits, undo, redo and designs: what was answered stands, nothing is half there`, async () => {
  const below = seededDice(20261126).next;
  const counts = { answered: 0, cut: 0, cutAndThere: 0, ...Object.fromEntries(steps.map((step) => [step, 0])) };
  await inRoom(async (room) => {
    const folder = await begunFolder(join(room, 'data'));
    let running = await start(folder);
    let page = await pageOf(running);
    const programme = await page.empty('Tarn water');
    expect((await page.takeIn(programme, 'tarn.zip', zipOf(good))).status).toBe(200);
    let plain: Plain = { people: await peopleIn(page, programme), done: [], undone: [], version: 1 };
    for (let kill = 0; kill < kills; kill++) {
      const { process } = running;
      const timer = setTimeout(() => process.kill('SIGKILL'), below(400));
      for (let status: number | null = 200; status !== null; ) {
        const may = steps.filter(
          (step) => (step !== 'undo' || plain.done.length > 0) && (step !== 'redo' || plain.undone.length > 0),
        );
        const step = may[below(may.length)]!;
        // Always another number, so that each of them is a change.
        const people = { ...plain.people, [`S00${1 + below(3)}`]: String(1000 + kill * 1000 + plain.version) };
        status = await taken(page, programme, step, plain.people, people);
        counts[step as keyof typeof counts]++;
        const next = step === 'design' ? plain : after(plain, step, people);
        if (status !== null) {
          expect([step, status]).toEqual([step, 200]);
          plain = next;
          counts.answered++;
          continue;
        }
        counts.cut++;
        await running.ended;
        clearTimeout(timer);
        running = await start(folder);
        page = await pageOf(running);
        const { body } = await page.ask('GET', programme);
        if (body.version !== plain.version) {
          expect(body.version).toBe(next.version);
          plain = next;
          counts.cutAndThere++;
        }
        expect(await peopleIn(page, programme)).toEqual(plain.people);
        expect((await readdir(join(folder, 'passing')).catch(() => [])).filter((name) => name === 'imports')).toEqual(
          [],
        );
      }
    }
    running.process.kill('SIGTERM');
    expect(await running.ended).toBe(0);
    // The last export holds all of it, and no export is half there.
    const own = join(folder, 'exports', programme.split('/').at(-1)!);
    const zips = (await readdir(own)).filter((name) => name !== 'programme.json');
    expect(zips.every((name) => /^[\dT-]+Z-\d+\.zip$/.test(name))).toBe(true);
    const copy = await start(join(room, 'copy'), ['--from', join(folder, 'exports')]);
    const there = await pageOf(copy);
    expect((await there.ask('GET', programme)).body.version).toBe(plain.version);
    expect(await peopleIn(there, programme)).toEqual(plain.people);
    copy.process.kill('SIGTERM');
    await copy.ended;
  });
  console.log(`${kills} kills: ${JSON.stringify(counts)}`);
  expect(counts.cut).toBe(kills);
  expect(counts.answered).toBeGreaterThan(kills);
}, 1_200_000);
