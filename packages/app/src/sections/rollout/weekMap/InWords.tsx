import { useIsPrinting } from '../../../look/useIsPrinting.ts';

/** Names that are opened where they are asked for; on paper, where nothing opens, they stand there. */
export function InWords({ head, names }: { readonly head: string; readonly names: readonly string[] }) {
  const said = names.join('; ');
  if (useIsPrinting())
    return (
      <p className="small">
        {head}: {said}
      </p>
    );
  return (
    <details className="in-words">
      <summary>{head}</summary>
      {said}
    </details>
  );
}
