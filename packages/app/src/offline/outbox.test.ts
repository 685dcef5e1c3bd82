import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import type { RowChange } from '../api/client.ts';
import { NotDone, type ProblemBody } from '../api/client.ts';
import { clashesOf, followingOn, type KeptChange, nextToSend, withKept } from './outbox.ts';
import { type InTurn, Outbox } from './outboxSender.ts';
import { browserOutbox } from './outboxStore.ts';

const edit = (key: string, before: string | null, after: string | null, column = 'people'): RowChange => ({
  ...{ kind: 'edited', table: 'sites', key },
  before: { [column]: before },
  after: { [column]: after },
});
const kept = (sendId: string, changes: readonly RowChange[], more: Partial<KeptChange> = {}): KeptChange => ({
  ...{ sendId, programmeId: 'p-1', by: 'Nadi', at: '2026-03-01T10:00:00Z', changes },
  ...{ state: 'waits', isSure: false, clashes: [], problems: [], ...more },
});
const body = { type: '', title: '', status: 409, detail: '', problems: [] } as unknown as ProblemBody;

/** A program with one table, that may be away and makes nothing twice. */
class Program {
  reason: 'unreachable' | 'refused' | null = null;
  losesAnswer = false;
  refuses = '';
  readonly cells = new Map([['S001', { people: '120' } as Record<string, string>]]);
  readonly made: string[] = [];
  async send({ sendId, changes }: KeptChange): Promise<void> {
    await new Promise((done) => setTimeout(done, 2));
    if (this.reason) throw new NotDone(this.reason);
    if (sendId === this.refuses) throw new NotDone('problems', body);
    if (!this.made.includes(sendId)) {
      this.made.push(sendId);
      for (const change of changes)
        if (change.kind === 'edited')
          this.cells.set(change.key, { ...this.cells.get(change.key), ...(change.after as Record<string, string>) });
    }
    if (this.losesAnswer) throw new NotDone('unreachable');
  }
  async rows() {
    if (this.reason) throw new NotDone(this.reason);
    return (_: string, key: string) => this.cells.get(key) ?? null;
  }
}

/** The one lock all pages of a browser have. */
function oneLock(): InTurn {
  let isTaken = false;
  return async (work) => {
    if (isTaken) return;
    isTaken = true;
    await work().finally(() => {
      isTaken = false;
    });
  };
}

const asked = (sendId: string, changes: readonly RowChange[], programmeId = 'p-1') => ({
  ...{ sendId, programmeId, by: 'Nadi', changes },
});

describe('the outbox', () => {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
  });
  // The browser of a test ends with it: other files share this process.
  afterAll(() => void Reflect.deleteProperty(globalThis, 'indexedDB'));
  const started = () => {
    const program = new Program();
    const lock = oneLock();
    return { program, outbox: new Outbox(browserOutbox(), program, lock), lock };
  };

  test('keeps changes while the program is away or does not know the page, and sends them in order once it answers', async () => {
    const { program, outbox, lock } = started();
    for (const reason of ['unreachable', 'refused'] as const) {
      program.reason = reason;
      await outbox.keep(asked(`a-${reason}`, [edit('S001', '120', '121')]));
      await outbox.send();
      expect(program.made).toEqual([]);
    }
    // The page is closed and opened again: what was kept is there.
    const later = new Outbox(browserOutbox(), program, lock);
    expect((await later.read()).map(({ sendId }) => sendId)).toEqual(['a-unreachable', 'a-refused']);
    program.reason = null;
    await later.send();
    expect(program.made).toEqual(['a-unreachable', 'a-refused']);
    expect(await later.read()).toEqual([]);
  });

  test('two pages at once send nothing twice', async () => {
    const { program, outbox, lock } = started();
    const other = new Outbox(browserOutbox(), program, lock);
    for (let i = 0; i < 5; i++) await outbox.keep(asked(`send-${i}`, [edit('S001', '120', `${i}`)]));
    await Promise.all([outbox.send(), other.send(), outbox.send()]);
    expect(program.made).toEqual(['send-0', 'send-1', 'send-2', 'send-3', 'send-4']);
    expect(await outbox.read()).toEqual([]);
  });

  test('a lost answer makes nothing twice, and is no clash', async () => {
    const { program, outbox } = started();
    program.losesAnswer = true;
    await outbox.keep(asked('once', [edit('S001', '120', '134')]));
    await outbox.send();
    expect((await outbox.read()).map(({ state }) => state)).toEqual(['waits']);
    program.losesAnswer = false;
    await outbox.send();
    expect([program.made, await outbox.read()]).toEqual([['once'], []]);
  });

  test('what somebody else changed waits for a word, with all later ones of that programme, but of no other', async () => {
    const { program, outbox } = started();
    program.reason = 'unreachable';
    await outbox.keep(asked('mine', [edit('S001', '120', '134')]));
    await outbox.keep(asked('after', [edit('S001', '120', '135')]));
    await outbox.keep(asked('other', [edit('S002', null, '9')], 'p-2'));
    program.reason = null;
    program.cells.set('S001', { people: '99' });
    await outbox.send();
    expect(program.made).toEqual(['other']);
    const [mine, after] = await outbox.read();
    expect([mine!.state, after!.state]).toEqual(['clash', 'waits']);
    expect(mine!.clashes).toEqual([
      { table: 'sites', key: 'S001', column: 'people', before: '120', stands: '99', after: '134' },
    ]);
    await outbox.tryAgain('mine');
    expect([program.made, program.cells.get('S001')]).toEqual([['other', 'mine', 'after'], { people: '135' }]);
  });

  test('what the program refuses stays with its reasons until it is taken back', async () => {
    const { program, outbox } = started();
    program.refuses = 'wrong';
    await outbox.keep(asked('wrong', [edit('S001', '120', '1')]));
    await outbox.keep(asked('right', [edit('S001', null, '2', 'households')]));
    await outbox.send();
    expect((await outbox.read()).map(({ state }) => state)).toEqual(['refused', 'waits']);
    await outbox.takeBack('wrong');
    await outbox.send();
    expect([program.made, await outbox.read()]).toEqual([['right'], []]);
  });

  test('a browser that keeps nothing says so, and the change counts as not kept', async () => {
    const failing = { read: () => Promise.reject(new Error('no')), alter: () => Promise.reject(new Error('no')) };
    const outbox = new Outbox(failing, new Program(), oneLock());
    await expect(outbox.keep(asked('a', [edit('S001', '1', '2')]))).rejects.toThrow();
    await outbox.send();
    expect(outbox.now()).toEqual([]);
  });
});

test('a row that is gone, and a new one, are for the program to say; a row to go that has changed is asked about', () => {
  const rows = (_: string, key: string) => (key === 'S001' ? { name: 'Ardi', people: '5' } : null);
  const removed: RowChange = { kind: 'removed', table: 'sites', key: 'S001', before: { name: 'Ardi', people: '4' } };
  expect(clashesOf([edit('S009', '1', '2')], rows)).toEqual([]);
  expect(clashesOf([{ kind: 'added', table: 'sites', key: 'S001', after: {} }], rows)).toEqual([]);
  expect(clashesOf([removed], rows).map(({ column, after }) => [column, after])).toEqual([['people', null]]);
  expect(clashesOf([edit('S001', '4', '5')], rows)).toEqual([]);
});

test('a person does not clash with herself', () => {
  const earlier = [kept('a', [edit('S001', '1', '2')]), kept('b', [edit('S001', '2', null), edit('S002', '7', '8')])];
  expect(followingOn(earlier, [edit('S001', '1', '3')])).toEqual([edit('S001', null, '3')]);
  const gone: RowChange = { kind: 'removed', table: 'sites', key: 'S002', before: { people: '7', name: 'x' } };
  expect(followingOn(earlier, [gone])).toEqual([{ ...gone, before: { people: '8', name: 'x' } }]);
});

test('none is sent past one of its programme that waits for a word', () => {
  const held = kept('a', [], { state: 'refused' });
  expect(nextToSend([held, kept('b', [])])).toBeNull();
  expect(nextToSend([held, kept('b', []), kept('c', [], { programmeId: 'p-2' })])?.sendId).toBe('c');
});

test('rows are shown as they will be saved; untouched rows stay the very same', () => {
  const rows = [{ table: 'sites', key: 'S001', cells: { siteId: 'S001', people: '1' } }];
  expect(withKept(rows, [kept('a', [edit('S002', '1', '2')])], () => true)).toBe(rows);
  const tank = { table: 'tanks', key: 'S001/T1', cells: { siteId: 'S001' } };
  const added: RowChange = { kind: 'added', table: 'tanks', key: 'S001/T1', after: { siteId: 'S001' } };
  const put = withKept(rows, [kept('a', [edit('S001', '1', null), added])], ({ cells }) => cells['siteId'] === 'S001');
  expect(put).toEqual([{ ...rows[0]!, cells: { siteId: 'S001' } }, tank]);
  const removed: RowChange = { kind: 'removed', table: 'sites', key: 'S001', before: {} };
  expect(withKept(rows, [kept('a', [removed])], () => true)).toEqual([]);
});
