import { readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, tripForTests } from '../sheetForTests.ts';
import { dateOf } from './axis.ts';
import { axisFor, paperAxes, spanOf } from './span.ts';

const day = (text: string) => readIsoDay(text)!;
const dates = ({ from, until }: ReturnType<typeof spanOf>) => [dateOf(from), dateOf(until)];

describe('the days that are drawn', () => {
  it('have all trips on them, today, and the days of the plan', () => {
    const done = tripForTests('T0', '2026-04-01', '2026-04-12', [], { state: 'done' });
    const late = tripForTests('T9', '2027-01-04', '2027-01-20', []);
    expect(dates(spanOf(sheetForTests([])))).toEqual(['2026-06-10', '2026-12-27']);
    expect(dates(spanOf(sheetForTests([crewForTests('1', [done, late])])))).toEqual(['2026-04-01', '2027-01-20']);
  });

  it('are not stretched over centuries by a mistake in a date', () => {
    const { from, until } = spanOf(sheetForTests([], { until: '9999-12-31' }));
    expect(dateOf(from)).toBe('2026-06-10');
    expect(until - from).toBeLessThan(366 * 13);
  });

  it('are one week where no date can be read', () => {
    expect(spanOf(sheetForTests([], { day: 'x', from: 'x', until: 'x' }))).toEqual({ from: 0, until: 0 });
  });
});

describe('weeks shown at once', () => {
  const span = { from: day('2026-01-05'), until: day('2027-12-26') };

  it('fill the room there is', () => {
    expect(axisFor(span, 'quarter', 1040).week_px).toBe(80);
    expect(axisFor(span, 'half', 1040).week_px).toBe(40);
    expect(axisFor(span, 'all', 1030)).toMatchObject({ weeks_count: 103, week_px: 10 });
  });

  it('are no more than there are', () => {
    expect(axisFor({ from: span.from, until: span.from + 27 }, 'half', 400).week_px).toBe(100);
  });

  it('are never too narrow to be a trip', () => {
    expect(axisFor(span, 'all', 100).week_px).toBe(4);
  });
});

describe('sheets of paper', () => {
  const span = { from: day('2026-01-05'), until: day('2027-12-26') };

  it('follow each other without a gap from two weeks before today to the end', () => {
    const axes = paperAxes(span, day('2026-06-10'), 900);
    expect(dateOf(axes[0]!.first)).toBe('2026-05-25');
    for (let i = 1; i < axes.length; i++)
      expect(axes[i]!.first).toBe(axes[i - 1]!.first + axes[i - 1]!.weeks_count * 7);
    const last = axes.at(-1)!;
    expect(last.first + last.weeks_count * 7).toBeGreaterThan(span.until);
    for (const { width_px, weeks_count } of axes) {
      expect(width_px).toBeCloseTo(900, 6);
      expect(weeks_count).toBeLessThanOrEqual(30);
    }
  });

  it('show all of a plan that is over', () => {
    expect(dateOf(paperAxes(span, day('2028-06-10'), 900)[0]!.first)).toBe('2026-01-05');
  });
});
