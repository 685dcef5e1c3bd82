import { rolloutSheet } from '@eavewell/tables';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
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
