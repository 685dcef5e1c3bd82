import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

interface Row {
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** Rows of a table, as the program has them. */
async function rowsOf(page: Page, programmeId: string, table: string): Promise<readonly Row[]> {
  const at = new URL(`/api/programmes/${programmeId}/tables/${table}`, page.url()).href;
  return ((await (await page.request.get(at)).json()) as { rows: readonly Row[] }).rows;
}

const dayAfter = (day: string, days: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** The way on which the trip that leaves first begins, and the day it does, of the plan in force. */
async function firstLeg(page: Page, programmeId: string): Promise<{ readonly leaves: string; readonly wayId: string }> {
  interface Trip {
    readonly state: string;
    readonly leaves: string;
    readonly legs: readonly { readonly wayIds: readonly string[] }[];
  }
  const at = new URL(`/api/programmes/${programmeId}/rollout`, page.url()).href;
  const { crews } = (await (await page.request.get(at)).json()) as { crews: readonly { trips: readonly Trip[] }[] };
  const [trip] = crews
    .flatMap(({ trips }) => trips.filter(({ state }) => state === 'planned'))
    .sort((a, b) => (a.leaves < b.leaves ? -1 : 1));
  return { leaves: trip!.leaves, wayId: trip!.legs[0]!.wayIds[0]! };
}

/** Asks for a plan of one second under a name, and waits until it is shown. */
async function makePlan(page: Page, name: string): Promise<void> {
  await page.locator('summary', { hasText: 'Make a plan' }).click();
  await page.getByRole('radio', { name: 'other:' }).check();
  // As it is written in another country.
  await page.getByRole('textbox', { name: 'Seconds to search' }).fill('1,5');
  await page.getByRole('textbox', { name: 'Name of the new plan' }).fill(name);
  await page.getByRole('button', { name: 'Make a plan' }).click();
  await expect.poll(() => page.locator('.plan-shown').textContent(), { timeout: 60_000 }).toContain(name);
}

journey(
  'a plan is made, a way closes, it is planned anew, two plans are compared, one is put in force',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    const rows = (table: string) => rowsOf(page, programmeId, table);
    const followed = async () =>
      (await rows('plans')).filter(({ cells }) => cells['isInForce'] === 'yes').map(({ cells }) => cells['name']);
    await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
    await page.getByRole('heading', { level: 1 }).waitFor();
    if ((await rows('plans')).length === 0) {
      await page.getByRole('button', { name: 'Make a plan' }).click();
      await page.getByRole('progressbar').waitFor();
      // Whoever comes back meanwhile finds it being searched for.
      await page.reload();
      await page.getByRole('progressbar').waitFor();
      await page.locator('.plan-shown').waitFor({ timeout: 60_000 });
    }
    await makePlan(page, 'Before the flood');
    await page.getByRole('button', { name: 'Put Before the flood in force' }).click();
    await page.getByText('In force', { exact: true }).waitFor();
    await expect.poll(followed).toEqual(['Before the flood']);

    // A way on which trips go is closed for a month: it is entered, by keyboard alone, and the plan says what moves.
    const { planId } = (await rows('plans')).find(({ cells }) => cells['name'] === 'Before the flood')!.cells;
    const days = async () =>
      (await rows('planTrips')).filter(({ cells }) => cells['planId'] === planId).map(({ cells }) => cells['leaves']);
    const before = await days();
    const first = await firstLeg(page, programmeId);
    const closes = { from: first.leaves, to: dayAfter(first.leaves, 40) };
    await page.getByRole('link', { name: 'What happened' }).click();
    await page.getByRole('button', { name: 'A way is closed' }).focus();
    await page.keyboard.press('Enter');
    const form = page.locator('form.short-form');
    await form.getByRole('button', { name: 'Enter it' }).click();
    // What is missing is said beside its field, and the first of them is gone to.
    await expect.poll(() => form.locator('[aria-invalid="true"]').count()).toBe(3);
    const what = form.getByLabel('What is closed');
    expect(await what.evaluate((one) => one === document.activeElement)).toBe(true);
    await what.selectOption(first.wayId);
    await form.getByLabel('First day').fill(closes.from);
    await form.getByLabel('Last day', { exact: true }).fill(dayAfter(closes.from, -1));
    await form.getByLabel('Why').fill('the harbour is closed');
    await page.keyboard.press('Enter');
    await form.getByText(/^It cannot be before /).waitFor();
    await form.getByLabel('Last day', { exact: true }).fill(closes.to);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Plan anew from today' }).waitFor();
    const closure = (await rows('closures')).find(({ cells }) => cells['reason'] === 'the harbour is closed')!;
    expect(closure.cells).toMatchObject({ ...closes, wayId: first.wayId });

    // What is found is shown before it is kept: nothing is written, and left it is gone.
    const looked = page.getByRole('heading', { level: 1, name: 'Before the flood, made anew: not kept yet' });
    const trips = page.getByRole('region', { name: /^\d+ trips? changes?$/ });
    await page.getByRole('button', { name: 'Plan anew from today' }).click();
    await looked.waitFor({ timeout: 60_000 });
    await page.getByText(/^With what happened people wait /).waitFor();
    const toTell = page.getByRole('region', { name: 'To be told another day' }).getByRole('listitem');
    await toTell
      .filter({ hasText: /: told .+, now .+, \d+ days? later\.$/ })
      .first()
      .waitFor();
    expect(await days()).toEqual(before);
    // Whoever comes back to it finds it there; each trip opens to where it went and where it would go.
    await page.reload();
    await looked.waitFor();
    const trip = trips.getByRole('listitem').first();
    await trip.locator('summary').focus();
    await page.keyboard.press('Enter');
    await trip.getByText('As things stand:').waitFor();
    await page.getByRole('button', { name: 'Leave the plan as it is' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('.plan-shown').waitFor();
    await page.getByRole('button', { name: 'Plan anew from today' }).waitFor();
    expect(await days()).toEqual(before);

    await page.getByRole('button', { name: 'Plan anew from today' }).click();
    await looked.waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Keep the plan made anew' }).click();
    await page.locator('.plan-shown').waitFor();
    await expect.poll(days).not.toEqual(before);
    // One step takes all of it back.
    await page.getByRole('button', { name: /^Undo:/ }).click();
    await expect.poll(days).toEqual(before);
    await page.getByRole('button', { name: 'Keep the plan: work its days out anew' }).click();
    await page.getByRole('button', { name: 'Keep the plan: work its days out anew' }).waitFor({ state: 'detached' });
    const kept = await days();
    expect(kept).toHaveLength(before.length);
    expect(kept).not.toEqual(before);

    await makePlan(page, 'Round the flood');
    await page.getByRole('link', { name: 'Plans side by side' }).click();
    await page.getByRole('heading', { level: 1, name: /side by side/ }).waitFor();
    await page.getByRole('combobox', { name: 'First plan' }).selectOption('Before the flood (in force)');
    await page.getByRole('combobox', { name: 'Beside it' }).selectOption('Round the flood');
    await page.getByRole('img', { name: /Before the flood: .* Round the flood: / }).waitFor();
    const differences = page.getByRole('table', { name: 'What Round the flood takes beside Before the flood' });
    const opens = differences.getByRole('row', { name: /^Waiting/ }).getByRole('button');
    await opens.focus();
    await page.keyboard.press('Enter');
    // The difference opens to what both plans come to, and closes again.
    const reached = page.getByRole('region', { name: 'How it was reached' });
    const asked = reached.getByRole('listitem').filter({ hasText: 'The second plan beside the first' });
    await expect.poll(() => asked.textContent()).toMatch(/Before the flood.*Round the flood/);
    await reached.getByRole('button', { name: 'Close' }).click();
    await reached.waitFor({ state: 'detached' });
    const day = page.locator('.compared-sites').first().getByRole('button').first();
    const said = (await day.textContent())!;
    await day.click();
    await expect.poll(() => reached.locator('.value').allTextContents()).toContain(said);
    await reached.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Put Round the flood in force' }).click();
    await expect.poll(followed).toEqual(['Round the flood']);
    await page.getByRole('button', { name: /^Undo:/ }).click();
    await expect.poll(followed).toEqual(['Before the flood']);
  },
  300_000,
);

journey(
  'what was typed and not entered is there when one comes back, and asks where others changed it',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    const happened = new URL(`/p/${programmeId}/rollout/happened`, page.url()).href;
    await page.goto(happened);
    await page.getByRole('button', { name: 'A way is closed' }).click();
    const form = page.locator('form.short-form');
    await form.getByLabel('First day').fill('2027-03-01');
    await form.getByLabel('Why').fill('the bridge is out');
    await page.getByRole('link', { name: 'Sites', exact: true }).click();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.goto(happened);
    await page.getByText(/What you typed here on/).waitFor();
    expect(await form.getByLabel('First day').inputValue()).toBe('2027-03-01');
    expect(await form.getByLabel('Why').inputValue()).toBe('the bridge is out');
    await page.getByRole('button', { name: 'Let it go' }).click();
    await expect.poll(() => form.getByLabel('Why').inputValue()).toBe('');

    // A day typed of goods that somebody else told of meanwhile: both days are named, and a press says which stands.
    await page.getByRole('button', { name: 'They came' }).first().click();
    const goods = page.locator('form.short-form').first();
    await goods.getByLabel(/^How many/).fill('1');
    const open = (await rowsOf(page, programmeId, 'arrivals')).filter(({ cells }) => cells['dueOn'] !== undefined);
    const changes = open.map(({ key, cells }) => ({
      ...{ kind: 'edited', table: 'arrivals', key },
      ...{ before: { quantity: cells['quantity'] }, after: { quantity: '977' } },
    }));
    const changed = await page.request.post(new URL(`/api/programmes/${programmeId}/changes`, page.url()).href, {
      headers: { origin: new URL(page.url()).origin },
      data: { by: 'Tam', sendId: crypto.randomUUID(), changes },
    });
    expect(changed.ok()).toBe(true);
    await goods.getByText('Somebody changed this to 977').waitFor();
    await goods.getByLabel('Came on').fill('2026-11-01');
    await goods.getByRole('button', { name: 'Enter it' }).click();
    const came = (await rowsOf(page, programmeId, 'arrivals')).filter(({ cells }) => cells['cameOn'] !== undefined);
    expect(came.filter(({ cells }) => cells['quantity'] === '1')).toEqual([]);
    await goods.getByText('Somebody changed this to 977').waitFor();
    await goods.getByRole('button', { name: /977/ }).click();
    await expect.poll(() => goods.getByLabel(/^How many/).inputValue()).toBe('977');
  },
);

journey(
  'a river is closed from one place to another, and more and fewer goods came: each is one record, and one undo',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    const rows = (table: string) => rowsOf(page, programmeId, table);
    const ways = (await rows('ways')).filter(({ cells }) => cells['mode'] === 'river');
    // Two stretches of water, one behind the other.
    const [first, second] = ways.flatMap((one) =>
      ways.flatMap((two) => (one.cells['to'] === two.cells['from'] ? [[one, two] as const] : [])),
    )[0]!;
    const before = await rows('closures');
    await page.goto(new URL(`/p/${programmeId}/rollout/happened`, page.url()).href);
    await page.getByRole('button', { name: 'A way is closed' }).click();
    const form = page.locator('form.short-form');
    await form.getByLabel('What is closed').selectOption({ label: 'By water, from one place to another' });
    await form.getByLabel('From', { exact: true }).selectOption(first.cells['from']!);
    await form.getByLabel('To', { exact: true }).selectOption(first.cells['from']!);
    await form.getByRole('button', { name: 'Enter it' }).click();
    await form.getByText('Not saved: 3 things are to be mended first.').waitFor();
    await form.getByRole('link', { name: 'To', exact: true }).click();
    await form.getByLabel('To', { exact: true }).selectOption(second.cells['to']!);
    await form.getByText('2 stretches close. Take off what stays open:').waitFor();
    await form.getByText(/no other way leads there:|No site still to be fitted is cut off/).waitFor();
    const day = dayAfter(new Date().toISOString().slice(0, 10), 20);
    await form.getByLabel('First day').fill(dayAfter(day, -15));
    await form.getByLabel('Is the last day known?').selectOption({ label: 'Not known yet: look again on a day' });
    await form.getByLabel('Look again on').fill(day);
    await form.getByRole('button', { name: 'Enter it' }).click();
    await page.getByText('The last day is a guess: look again then.').waitFor();
    await form.waitFor({ state: 'detached' });
    const made = (await rows('closures')).filter(({ key }) => !before.some((one) => one.key === key));
    expect(made.map(({ cells }) => [cells['wayId'], cells['to'], cells['isToGuessed']])).toEqual(
      [first, second].map(({ key }) => [key, day, 'yes']),
    );
    await page.getByRole('button', { name: /^Undo:/ }).click();
    await expect.poll(() => rows('closures')).toEqual(before);

    const arrivals = await rows('arrivals');
    await page.getByRole('button', { name: 'They came' }).first().click();
    const many = form.getByLabel('How many came');
    const promised = Number(await many.inputValue());
    await form.getByLabel('Came on').fill(dayAfter(day, -40));
    await many.fill(String(promised + 12));
    await form.getByRole('button', { name: 'Enter it' }).click();
    const asked = form.getByRole('group', { name: `12 more came than the ${promised} that were promised.` });
    await asked.getByRole('button', { name: 'Go back' }).click();
    expect(await many.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await rows('arrivals')).toEqual(arrivals);
    await many.fill(String(promised - 8));
    await form.getByLabel('8 of those promised did not come. Do they still come?').selectOption('unknown');
    await form.getByRole('button', { name: 'Enter it' }).click();
    await form.getByText('This is needed.').waitFor();
    await form.getByLabel('Ask again on').fill(day);
    await form.getByRole('button', { name: 'Enter it' }).click();
    await expect.poll(async () => (await rows('arrivals')).length).toBe(arrivals.length + 1);
    const rest = (await rows('arrivals')).find(({ key }) => !arrivals.some((one) => one.key === key))!;
    expect(rest.cells).toMatchObject({ quantity: '8', dueOn: day, slipHigh_days: '20' });
    await page.getByRole('button', { name: /^Undo:/ }).click();
    await expect.poll(() => rows('arrivals')).toEqual(arrivals);
  },
);
