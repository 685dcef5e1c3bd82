import { describe, expect, it } from 'vitest';
import { dateOrder, dayInOrder } from './dateOrder.ts';

describe('the order of day and month', () => {
  it.each([
    [['02/03/2001', '13/03/2001'], 'proved', 'dayFirst'],
    [['02-03-2001', '3-13-2001'], 'proved', 'monthFirst'],
    [['02.03.2001', '04.05.2001'], 'unknown', undefined],
    [['13/03/2001', '03/13/2001'], 'unknown', undefined],
    [['2001-03-13', 'Monday', ''], 'none', undefined],
    [['13/03/01', '13/03-2001'], 'none', undefined],
  ])('%j is %s', (texts, is, order) => {
    const shown = dateOrder(texts);
    expect(shown.is).toBe(is);
    expect(shown.is === 'proved' ? shown.order : undefined).toBe(order);
  });

  it('gives the day of a text in it, or none', () => {
    expect(dayInOrder('2/3/2001', 'dayFirst')).toBe('2001-03-02');
    expect(dayInOrder('2/3/2001', 'monthFirst')).toBe('2001-02-03');
    expect(dayInOrder('31/02/2001', 'dayFirst')).toBeNull();
    expect(dayInOrder('2001-03-02', 'dayFirst')).toBeNull();
  });
});
