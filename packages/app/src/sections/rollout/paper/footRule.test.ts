import { describe, expect, it } from 'vitest';
import { footRule } from './footRule.ts';

describe('the foot of a sheet of paper', () => {
  it('says what it is of at the left, and at the right which sheet of how many', () => {
    const rule = footRule({
      said: 'Lumevara. Plan: A.',
      numbered: ['Weeks, ', ' of ', ''],
      font: 'serif',
      direction: 'ltr',
    });
    expect(rule).toContain('@bottom-left { content: "Lumevara. Plan: A.";');
    expect(rule).toContain('@bottom-right { content: "Weeks, " counter(page) " of " counter(pages) "";');
  });

  it('stands the other way round where one reads from right to left', () => {
    const rule = footRule({ said: 'A', numbered: ['', ' B ', ''], font: 'serif', direction: 'rtl' });
    expect(rule).toMatch(
      /@bottom-right \{ content: "A";.*direction: rtl;.*@bottom-left \{ content: "" counter\(page\) " B "/,
    );
  });

  it('lets no name end its quotes, its rule or the style sheet', () => {
    const rule = footRule({ said: 'a"} b\\ \n</style><c>', numbered: ['', '', ''], font: 'serif', direction: 'ltr' });
    expect(rule).toContain('content: "a\\22 \\7d  b\\5c  \\a \\3c /style\\3e \\3c c\\3e "');
  });
});
