import { type ReactNode, useState } from 'react';
import { useTypedForms } from './typedHere.ts';

/** Opens a form at a press; one into which something was typed and not entered stands open. */
export function Opens({
  press,
  formId,
  children,
}: {
  readonly press: string;
  readonly formId: string;
  children(close: () => void): ReactNode;
}) {
  const isTyped = useTypedForms().has(formId);
  const [isOpen, setOpen] = useState(isTyped);
  return (
    <>
      <button type="button" className="button on-screen" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {press}
      </button>
      {isOpen ? children(() => setOpen(false)) : null}
    </>
  );
}
