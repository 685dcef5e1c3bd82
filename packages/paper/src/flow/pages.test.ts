import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Band, band } from './band.ts';
import { pagesOf, type Section } from './pages.ts';

const body = { firstTop_pt: 100, top_pt: 50, end_pt: 400 };
const head = band(20, () => {}, { keepsNext: true });

const sections = fc.array(
  fc.record({
    startsPage: fc.boolean(),
    bands: fc.array(
      fc.record({
        height_pt: fc.integer({ min: 1, max: 120 }),
        before_pt: fc.integer({ min: 0, max: 12 }),
        keepsNext: fc.boolean(),
        hasHead: fc.boolean(),
      }),
      { maxLength: 30 },
    ),
  }),
  { maxLength: 6 },
);

const made = (
  given: readonly {
    readonly startsPage: boolean;
    readonly bands: readonly {
      readonly height_pt: number;
      readonly before_pt: number;
      readonly keepsNext: boolean;
      readonly hasHead: boolean;
    }[];
  }[],
): readonly Section[] =>
  given.map(({ startsPage, bands }) => ({
    startsPage,
    bands: bands.map(({ height_pt, before_pt, keepsNext, hasHead }) =>
      band(height_pt, () => {}, { before_pt, keepsNext, head: hasHead ? head : null }),
    ),
  }));

it('every band stands once, in order, on a page it fits, over no other', () => {
  fc.assert(
    fc.property(sections, (given) => {
      const all = made(given);
      const pages = pagesOf(all, body);
      const placed = pages.flat().filter(({ isAgain }) => !isAgain);
      expect(placed.map(({ band: one }) => one)).toEqual(all.flatMap(({ bands }) => bands));
      pages.forEach((page, nth) => {
        let y = nth === 0 ? body.firstTop_pt : body.top_pt;
        for (const one of page) {
          expect(one.y).toBeGreaterThanOrEqual(y);
          y = one.y + one.band.height_pt;
          expect(y).toBeLessThanOrEqual(body.end_pt);
        }
      });
    }),
  );
});

it('a heading does not end a page, a table that runs on has its head again, and a section begins its page', () => {
  const row = (): Band => band(30, () => {}, { head });
  const heading = band(25, () => {}, { keepsNext: true });
  const rows = Array.from({ length: 14 }, row);
  const pages = pagesOf(
    [
      { startsPage: true, bands: [heading, head, ...rows] },
      { startsPage: true, bands: [heading, row()] },
    ],
    body,
  );
  expect(pages.length).toBe(3);
  expect(pages[0]!.slice(0, 2).map((one) => one.band)).toEqual([heading, head]);
  expect(pages[1]![0]).toMatchObject({ band: head, isAgain: true });
  expect(pages[2]!.map((one) => one.band)).toEqual([heading, pages[2]![1]!.band]);
  // 300 pt hold nine rows; the tenth would leave its heading alone.
  const low = pagesOf([{ startsPage: true, bands: [...Array.from({ length: 9 }, row), heading, row()] }], body);
  expect(low[0]!.length).toBe(9);
  expect(low[1]!.map((one) => one.band)).toContain(heading);
});
