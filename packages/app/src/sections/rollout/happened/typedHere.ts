import { createContext, useContext, useState } from 'react';
import { type DraftCell, type DraftRow, emptyDraft, rowId } from '../../../forms/draft.ts';
import type { useDraft } from '../../../forms/useDraft.ts';

/** What was typed into the short forms of a page and not entered, all of it in one draft: each form is a row of it. Null: nothing is kept. */
export const TypedHere = createContext<Pick<ReturnType<typeof useDraft>, 'draft' | 'dispatch'> | null>(null);

const rowOf = (formId: string) => ({ table: 'happened', key: formId });

/** The ids of forms into which something was typed that is not entered. */
export function useTypedForms(): ReadonlySet<string> {
  const { draft } = useContext(TypedHere) ?? { draft: emptyDraft };
  return new Set(Object.values(draft.rows).map(({ key }) => key));
}

/**
 * What is typed into one short form: kept with the page, or as long as the form stands where it has no id or the page keeps nothing.
 *
 * @param formId - names the form on its page; null: it is not kept
 */
export function useTyped(formId: string | null) {
  const page = useContext(TypedHere);
  const [own, setOwn] = useState<DraftRow['cells']>({});
  if (page === null || formId === null)
    return {
      cells: own,
      type: (field: string, cell: DraftCell) => setOwn((before) => ({ ...before, [field]: cell })),
      leaveCell: (field: string) =>
        setOwn((before) => Object.fromEntries(Object.entries(before).filter(([other]) => other !== field))),
      leave: () => setOwn({}),
      sendAs: () => undefined,
    };
  const row = rowOf(formId);
  const { draft, dispatch } = page;
  return {
    cells: draft.rows[rowId(row)]?.cells ?? {},
    type: (field: string, cell: DraftCell) => dispatch({ kind: 'type', row, column: field, cell }),
    leaveCell: (field: string) => dispatch({ kind: 'leaveCell', row, column: field }),
    leave: () => dispatch({ kind: 'leaveRow', row }),
    /** What the sending of it is called: the same name until something else is typed. */
    sendAs: () => {
      const sendId = draft.rows[rowId(row)]?.sentAs ?? crypto.randomUUID();
      dispatch({ kind: 'send', row, sendId });
      return sendId;
    },
  };
}
