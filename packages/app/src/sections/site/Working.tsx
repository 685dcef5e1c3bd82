import { useEffect, useRef } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { SiteReport } from './siteFigures.ts';

type Line = SiteReport['working'][number];

/** How a figure was reached, line by line: formula in words, inputs with units, source. The line that was asked for stands out. */
export function Working({
  lines,
  opened,
  onClose,
}: {
  readonly lines: readonly Line[];
  readonly opened: string;
  onClose(): void;
}) {
  const { say } = useLanguage();
  const head = useRef<HTMLHeadingElement>(null);
  // Who opens it reads it: the focus goes where it begins, and the line asked for comes into view.
  useEffect(() => {
    head.current?.focus();
    document.getElementById(lineId(opened))?.scrollIntoView({ block: 'nearest' });
  }, [opened]);
  return (
    <section className="working" aria-labelledby="working-head">
      <h2 id="working-head" ref={head} tabIndex={-1}>
        {say('site.working')}
      </h2>
      <button type="button" className="press on-screen" onClick={onClose}>
        {say('site.working_close')}
      </button>
      <ol>
        {lines.map((line, i) => (
          <li
            // biome-ignore lint/suspicious/noArrayIndexKey: a working has lines of one code for each tank, in an order of its own
            key={`${line.code} ${i}`}
            id={lines.findIndex(({ code }) => code === line.code) === i ? lineId(line.code) : undefined}
            className={line.code === opened ? 'asked' : undefined}
          >
            <LineWords line={line} />
          </li>
        ))}
      </ol>
    </section>
  );
}

const lineId = (code: string) => `working-${code.replaceAll('.', '-')}`;

function LineWords({ line }: { readonly line: Line }) {
  const { say, numbers } = useLanguage();
  const { label, value, unit, formula, inputs, source } = line;
  const given = inputs.map((input) => `${input.label} ${numbers.given(input.value, input.unit)}`).join('; ');
  return (
    <>
      <span className="label">
        <b>{label}</b> = {formula}
        {given === '' ? null : <span className="small">{say('site.working_with', { inputs: given })}</span>}
      </span>
      <b className="value">{numbers.quantity(value, unit)}</b>
      <span className="small source">{source}</span>
    </>
  );
}
