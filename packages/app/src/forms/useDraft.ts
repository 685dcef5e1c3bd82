import { useEffect, useReducer, useState } from 'react';
import { type Draft, type DraftStep, draftAfter, emptyDraft } from './draft.ts';
import { draftName, draftOf, unsaved } from './unsaved.ts';

function keptDraft(name: string): Draft {
  try {
    return draftOf(localStorage.getItem(name)) ?? emptyDraft;
  } catch {
    return emptyDraft;
  }
}

/** Keeps a draft in this browser; false where the browser keeps nothing. */
function keepDraft(name: string, draft: Draft): boolean {
  try {
    if (draft.beganAt === null) localStorage.removeItem(name);
    else localStorage.setItem(name, JSON.stringify(draft));
    return true;
  } catch {
    return draft.beganAt === null;
  }
}

/**
 * What was typed into a form and is not saved yet. It is kept in this browser, so that leaving the page loses nothing; where
 * the browser keeps nothing, leaving asks first.
 *
 * @param programmeId - the programme
 * @param formId - which form of it
 */
export function useDraft(programmeId: string, formId: string) {
  const name = draftName(programmeId, formId);
  const reduce = (draft: Draft, step: DraftStep) => draftAfter(draft, step, new Date().toISOString());
  const [draft, dispatch] = useReducer(reduce, name, keptDraft);
  const [foundAt] = useState(draft.beganAt);
  useEffect(() => {
    if (draft.beganAt === null) unsaved.note(name, 0);
    if (keepDraft(name, draft)) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [name, draft]);
  return { name, draft, dispatch, foundAt };
}
