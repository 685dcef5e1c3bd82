import { Link, useParams } from '@tanstack/react-router';
import { Fragment, useEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { printAlone } from '../../look/printAlone.ts';
import type { SiteReport } from './siteFigures.ts';
import { foldedWorking } from './workingFolds.ts';

type Line = SiteReport['working'][number];

/**
 * How a figure was reached: formula in words, inputs with units, source. Of a long working the line that was asked for
 * stands first, then those its figures come from; all others are behind a heading. Copied and printed it is whole.
 */
// long: the parts of a working as they are read
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
  const whole = useRef<HTMLElement>(null);
  // The figure whose other lines were opened: of another one they are folded again.
  const [unfolded, setUnfolded] = useState('');
  // Who opens it reads it: the focus goes where it begins, and the line asked for comes into view.
  useEffect(() => {
    head.current?.focus();
    whole.current?.querySelector(`.asked, #${lineId(opened.split(' ')[0]!)}`)?.scrollIntoView({ block: 'nearest' });
  }, [opened]);
  const { asked, from, others, isFolded } = useMemo(() => foldedWorking(lines, opened), [lines, opened]);
  const print = () => {
    flushSync(() => setUnfolded(opened));
    if (whole.current) printAlone(whole.current);
  };
  const list = (of: readonly number[]) => (
    <ol>
      {of.map((i) => {
        const line = lines[i]!;
        return (
          <li
            key={`${line.code} ${i}`}
            value={i + 1}
            id={lines.findIndex(({ code }) => code === line.code) === i ? lineId(line.code) : undefined}
            className={asked.includes(i) ? 'asked' : undefined}
          >
            <LineWords line={line} />
          </li>
        );
      })}
    </ol>
  );
  return (
    <section className="working" aria-labelledby="working-head" ref={whole}>
      <h2 id="working-head" ref={head} tabIndex={-1}>
        {say('site.working')}
      </h2>
      <div className="acts on-screen">
        <Copy lines={lines} />
        <button type="button" className="press" onClick={print}>
          {say('water.print')}
        </button>
        <button type="button" className="press" onClick={onClose}>
          {say('site.working_close')}
        </button>
      </div>
      {isFolded ? (
        <>
          {list(asked)}
          {from.length === 0 ? null : (
            <>
              <h3>{say('site.working_from')}</h3>
              {list(from)}
            </>
          )}
          <details
            open={unfolded === opened}
            onToggle={({ currentTarget }) => setUnfolded(currentTarget.open ? opened : '')}
          >
            <summary>{say('site.working_others', { count: others.length })}</summary>
            {list(others)}
          </details>
        </>
      ) : (
        list(lines.map((_, i) => i))
      )}
    </section>
  );
}

/** Puts the whole working on the clipboard, a line each, to be pasted into a letter or a sheet. */
function Copy({ lines }: { readonly lines: readonly Line[] }) {
  const { say, numbers } = useLanguage();
  const [isCopied, setCopied] = useState(false);
  const copy = async () => {
    const text = lines.map((line, i) => `${i + 1}\t${partsOf(line, numbers).join('\t')}`).join('\n');
    await navigator.clipboard.writeText(text);
    setCopied(true);
  };
  return (
    <>
      <button type="button" className="press" onClick={() => void copy()}>
        {say('water.copy')}
      </button>
      <span role="status">{isCopied ? say('water.copied') : ''}</span>
    </>
  );
}

type Numbers = ReturnType<typeof useLanguage>['numbers'];

/** A line of a working as texts: what it is and by which formula, of what, what it comes to, who says so. */
function partsOf({ label, value, unit, said, formula, inputs, sourceSaid }: Line, numbers: Numbers) {
  const entered = enteredIn(inputs).map((cell) => cell.said);
  const given = inputs
    .map((input) => `${input.label} ${input.said ?? numbers.given(input.value, input.unit)}`)
    .join('; ');
  return [
    `${label} = ${formula}`,
    given,
    said ?? numbers.quantity(value, unit),
    [sourceSaid, ...entered].join('; '),
  ] as const;
}

type CellEntered = { readonly table: string; readonly key: string; readonly said: string };

/** The cells that inputs of a line were entered in, each once. */
function enteredIn(inputs: Line['inputs']): readonly CellEntered[] {
  const cells = inputs.flatMap(({ from = [] }) =>
    from.flatMap(({ table, key, said }) => (said === undefined ? [] : [{ table, key, said }])),
  );
  return cells.filter(({ said }, at) => cells.findIndex((cell) => cell.said === said) === at);
}

const lineId = (code: string) => `working-${code.replaceAll('.', '-')}`;

function LineWords({ line }: { readonly line: Line }) {
  const { say, numbers } = useLanguage();
  const { label, formula, sourceSaid } = line;
  const [, given, amount] = partsOf(line, numbers);
  const entered = enteredIn(line.inputs);
  return (
    <>
      <span className="label">
        <b>{label}</b> = {formula}
        {given === '' ? null : <span className="small">{say('site.working_with', { inputs: given })}</span>}
      </span>
      <b className="value">{amount}</b>
      <span className="small source">
        {sourceSaid}
        {entered.length === 0 ? null : `; ${say('site.working_entered')}`}
        {entered.map((cell, at) => (
          <Fragment key={cell.said}>
            {at === 0 ? '' : '; '}
            <ToCell cell={cell} />
          </Fragment>
        ))}
      </span>
    </>
  );
}

/** Where an input was entered; it leads to the page of its row, where there is one. */
function ToCell({ cell: { table, key, said } }: { readonly cell: CellEntered }) {
  const programmeId = useParams({ strict: false, select: (params) => params.programmeId });
  if (programmeId === undefined) return said;
  if (table === 'sites')
    return (
      <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId: key }}>
        {said}
      </Link>
    );
  if (table === 'crews')
    return (
      <Link to="/p/$programmeId/rollout/crews/$crewId" params={{ programmeId, crewId: key }}>
        {said}
      </Link>
    );
  return table === 'settings' ? (
    <Link to="/p/$programmeId/settings" params={{ programmeId }}>
      {said}
    </Link>
  ) : (
    said
  );
}
