import { rolloutSheet } from '@eavewell/tables';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { settled } from './everyPage.ts';
import { journey } from './journey.ts';

const dayBefore = (day: string, days: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) - days * 86_400_000).toISOString().slice(0, 10);

journey(
  'before a plan is made anew it is said which trips should have left, and nobody has said whether they did',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    const at = (path: string) => new URL(path, page.url()).href;
    const sheet = async () =>
      rolloutSheet.parse(await (await page.request.get(at(`/api/programmes/${programmeId}/rollout`))).json());
    const { planId, day, crews } = await sheet();
    const trip = crews.flatMap(({ trips }) => trips).find(({ state, isOverdue }) => state === 'planned' && !isOverdue)!;
    const key = `${planId}/${trip.tripId}`;
    const tables = await page.request.get(at(`/api/programmes/${programmeId}/tables/planTrips`));
    const { rows } = (await tables.json()) as { rows: readonly { key: string; cells: Record<string, string> }[] };
    const { leaves = null, notBefore = null } = rows.find((row) => row.key === key)!.cells;
    const before = { leaves, notBefore };
    const after = { leaves: dayBefore(day, 3), notBefore: null };
    const closure = { closureId: 'CX', wayId: trip.legs[0]!.wayIds[0]!, from: day, to: dayBefore(day, -30) };
    const changes = [
      { kind: 'edited', table: 'planTrips', key, before, after },
      { kind: 'added', table: 'closures', key: 'CX', after: { ...closure, reason: 'a tree across' } },
    ];
    const data = { by: 'Oren', changes };
    expect((await page.request.post(at(`/api/programmes/${programmeId}/changes`), { data })).status()).toBe(200);
    const unsaid = (await sheet()).crews
      .flatMap(({ trips }) => trips)
      .filter(({ state, isOverdue }) => state === 'planned' && isOverdue);
    expect(unsaid.map(({ tripId }) => tripId)).toContain(trip.tripId);
    await page.goto(at(`/p/${programmeId}/rollout`));
    await page.getByRole('button', { name: 'Plan anew from today' }).waitFor();
    const said = new RegExp(`^${unsaid.length} trips? should have left, and nobody has said`);
    await page.locator('.changed-since p', { hasText: said }).waitFor();
    await page.getByRole('link', { name: /^Say first whether (?:it|they) left$/ }).click();
    await page.getByRole('heading', { level: 1, name: 'What happened' }).waitFor();
    await expect.poll(() => page.getByText(/ should have left on .*\. Has it\?/).count()).toBe(unsaid.length);
  },
);

journey(
  'a guessed last day of a closure is drawn and told as one, in the weeks after it too',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    const at = new URL(`/api/programmes/${programmeId}/rollout`, page.url());
    const sheet = rolloutSheet.parse(await (await page.request.get(at.href)).json());
    const free = sheet.crews
      .flatMap(({ trips }) => trips.flatMap(({ legs }) => legs.flatMap(({ wayIds }) => wayIds)))
      .find((wayId) => !sheet.strips.some(({ wayIds, spans }) => wayIds.includes(wayId) && spans.length > 0))!;
    const days = (count: number) => new Date(Date.now() + count * 86_400_000).toISOString().slice(0, 10);
    const after = {
      closureId: 'GUESS',
      wayId: free,
      from: days(-3),
      to: days(4),
      isToGuessed: 'yes',
      reason: 'a slide',
    };
    const changes = [{ kind: 'added', table: 'closures', key: 'GUESS', after }];
    const changed = await page.request.post(new URL(`/api/programmes/${programmeId}/changes`, at).href, {
      headers: { origin: at.origin },
      data: { by: 'Tam', sendId: crypto.randomUUID(), changes },
    });
    expect(changed.ok()).toBe(true);
    await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
    await page.locator('.trip-cell button').first().waitFor();
    await settled(page);
    const row = page.locator('.band-list > li').filter({ hasText: 'a slide' });
    expect(await row.locator('.b-unsure').count()).toBe(1);
    expect(await row.locator('.way-name').textContent()).toMatch(/, and that day is a guess: closed: a slide/);
    await page.getByText('All trips in words, crew by crew').click();
    await page.locator('.crew-list summary').first().click();
    await page
      .locator('.crew-list')
      .getByText(/that day is a guess/)
      .waitFor();
    const told = page.locator('.week-words');
    // Two weeks on, the last day is past, and nobody has said that it is open.
    await page.goto(new URL(`/p/${programmeId}/rollout?week=${days(14)}`, page.url()).href);
    await told.getByText(/a slide until .*Nobody has said that it is open/).waitFor();
    await page.locator('.closed-way.of-unsure').waitFor({ state: 'attached' });
    await page.goto(new URL(`/p/${programmeId}/rollout?week=${days(28)}`, page.url()).href);
    await told.waitFor();
    expect(await told.getByText('a slide').count()).toBe(0);
  },
);
