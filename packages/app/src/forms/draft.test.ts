import { describe, expect, it } from 'vitest';
import { type Draft, type DraftStep, draftAfter, emptyDraft } from './draft.ts';

const row = { table: 'happened', key: 'closed' };
const type = (column: string, typed: string): DraftStep => ({
  ...{ kind: 'type', row, column },
  cell: { typed, chosen: null, seen: null },
});
const after = (...steps: readonly DraftStep[]): Draft =>
  steps.reduce((draft, step) => draftAfter(draft, step, '2031-05-01T08:00:00Z'), emptyDraft);
const sentAs = ({ rows }: Draft) => rows['happened/closed']?.sentAs;

describe('what was typed and sent', () => {
  const sent = { kind: 'send', row, sendId: 'once' } as const;

  it('keeps the name it was sent under, also in the browser, until something else is typed', () => {
    const draft = after(type('from', '2031-05-01'), sent);
    expect(sentAs(JSON.parse(JSON.stringify(draft)))).toBe('once');
    expect(sentAs(draftAfter(draft, type('reason', 'a tree'), ''))).toBeUndefined();
    const more = after(type('from', '2031-05-01'), type('reason', 'a tree'), sent);
    expect(sentAs(draftAfter(more, { kind: 'leaveCell', row, column: 'reason' }, ''))).toBeUndefined();
  });

  it('is nothing where nothing was typed, and gone once it is entered', () => {
    expect(after(sent)).toEqual(emptyDraft);
    expect(after(type('from', '2031-05-01'), sent, { kind: 'leaveRow', row })).toEqual(emptyDraft);
  });
});
