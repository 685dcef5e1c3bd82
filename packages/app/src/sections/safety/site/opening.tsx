import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { workingOf } from '../../site/siteFigures.ts';
import { Working } from '../../site/Working.tsx';
import type { SiteReport } from './safetyFigures.ts';

interface Opening {
  readonly lines: SiteReport['working'];
  /** The line that is opened, and in which part of the page; null where none is. */
  readonly opened: { readonly line: string; readonly part: string } | null;
  open(line: string, part: string): void;
  close(): void;
}

const OpeningContext = createContext<Opening | null>(null);
const PartContext = createContext('');

/** Lets every figure of a page open to its working, under the part of the page it stands in. */
export function WithWorkings({
  lines,
  children,
}: {
  readonly lines: SiteReport['working'];
  readonly children: ReactNode;
}) {
  const [opened, setOpened] = useState<Opening['opened']>(null);
  const value = useMemo<Opening>(
    () => ({
      ...{ lines, opened },
      open: (line, part) =>
        setOpened((before) => (before?.line === line && before.part === part ? null : { line, part })),
      close: () => setOpened(null),
    }),
    [lines, opened],
  );
  return <OpeningContext value={value}>{children}</OpeningContext>;
}

/** One part of the page; the working of a figure in it opens at its end. */
export function Part({
  id,
  title,
  children,
}: {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}) {
  const opening = useContext(OpeningContext);
  return (
    <PartContext value={id}>
      <section className={`safety-part ${id}`} aria-labelledby={`part-${id}`}>
        <h2 id={`part-${id}`}>{title}</h2>
        {children}
        {opening?.opened?.part === id ? (
          <Working lines={opening.lines} opened={opening.opened.line} onClose={opening.close} />
        ) : null}
      </section>
    </PartContext>
  );
}

/** A figure that opens to its working; plain where it has none. */
export function Opens({
  code,
  of,
  children,
}: {
  readonly code: string;
  readonly of?: string | null | undefined;
  readonly children: string;
}) {
  const { say } = useLanguage();
  const opening = useContext(OpeningContext);
  const part = useContext(PartContext);
  if (opening === null || !opening.lines.some((line) => line.code === code)) return children;
  const line = workingOf({ code, ...(of === null || of === undefined ? {} : { of }) });
  return (
    <button
      type="button"
      className="opens"
      aria-expanded={opening.opened?.line === line && opening.opened.part === part}
      aria-label={say('site.open_working', { figure: children })}
      onClick={() => opening.open(line, part)}
    >
      {children}
    </button>
  );
}
