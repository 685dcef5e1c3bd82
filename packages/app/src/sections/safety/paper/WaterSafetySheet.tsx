import { germClasses } from '@eavewell/engine';
import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { queries } from '../../../api/queries.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import type { TableRow } from '../../../offline/outbox.ts';
import { WorkOutAgain } from '../../sites/index.ts';
import { todayHere } from '../cups.ts';
import { countWords, reasonsOfReport } from '../cupWords.ts';
import { DoseTable } from '../DoseTable.tsx';
import { dosesOf } from '../doses.ts';
import { notedOf } from '../noted.ts';
import { againWords, type Standing, useIsCupOfBefore } from '../ofBefore.tsx';
import { barrierName, type SafetyReport } from '../site/safetyFigures.ts';
import '../../site/site.css';
import '../safety.css';
import './paper.css';

/** What hangs beside the taps: may it be drunk, what shows it, how it is made fit, and what to do when a test fails. */
export function WaterSafetySheet() {
  const { say, numbers } = useLanguage();
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId/water-safety' });
  const { data: site } = useSuspenseQuery(queries.site(programmeId, siteId));
  const { design, rows } = site;
  const cellsOf = (table: string) => rows.find((one) => one.table === table)?.cells ?? {};
  const name = cellsOf('sites')['name'] ?? design?.name ?? siteId;
  const safety = design?.safety ?? null;
  const isOfBefore = useIsCupOfBefore(programmeId, siteId, site);
  return (
    <article className="water-safety">
      <nav className="among on-screen" aria-label={say('safety.section')}>
        <Link to="/p/$programmeId/sites/$siteId/safety" params={{ programmeId, siteId }}>
          <span aria-hidden="true">‹ </span>
          {say('safety.site_title', { name })}
        </Link>
        {isOfBefore ? (
          <span className="small">{say('safety.print_later')}</span>
        ) : (
          <button type="button" className="press" onClick={() => window.print()}>
            {say('water.print')}
          </button>
        )}
      </nav>
      <h1>{say('safety.paper_title', { name })}</h1>
      <p className="facts-line">
        {siteId}. {say('safety.printed', { day: numbers.date(todayHere()) })}
      </p>
      <p className="caution">{say('safety.caution')}</p>
      {isOfBefore ? (
        <NotYet isNo={safety?.mayDrink === 'no'} programmeId={programmeId} state={site} />
      ) : (
        <MayDrink safety={safety} isDoubted={design?.stations.cup === 'unknown'} />
      )}
      <WhatToDo safety={safety} chlorination={cellsOf('chlorination')} />
      {safety?.isReckoned === false ? null : <Barriers safety={safety} />}
      <Tests safety={safety} rows={rows} siteId={siteId} />
      <Calls />
    </article>
  );
}

/** In the place of what may be said, while that is of before: this sheet is not to be hung up. */
function NotYet({
  isNo,
  programmeId,
  state,
}: {
  readonly isNo: boolean;
  readonly programmeId: string;
  readonly state: Standing;
}) {
  const { say } = useLanguage();
  const { head, more, isStill } = againWords(state);
  return (
    <section className="may-drink is-again" aria-label={say('safety.may_drink')} role="status">
      <p className="large">{say(head)}</p>
      <p>
        {say(more)} {isNo ? <strong>{say('safety.again_no')}</strong> : null} {say('safety.step_treat')}
      </p>
      {isStill ? null : <WorkOutAgain programmeId={programmeId} isFailed={state.isFailed} />}
    </section>
  );
}

/** The one thing that is read from the door. */
function MayDrink({ safety, isDoubted }: { readonly safety: SafetyReport | null; readonly isDoubted: boolean }) {
  const language = useLanguage();
  const { say } = language;
  const may = safety === null ? 'notShown' : safety.mayDrink === 'yes' && isDoubted ? 'notShown' : safety.mayDrink;
  return (
    <section className={`may-drink is-${may}`} aria-label={say('safety.may_drink')}>
      <p className="large">
        {may === 'yes' ? <VerdictMark verdict="holds" size={26} /> : null} {say(`safety.paper_${may}`)}
      </p>
      <p>
        {safety === null
          ? say('safety.because_notJudged')
          : may === 'no'
            ? `${reasonsOfReport(safety, language, 'paper')[0]} ${say('safety.paper_until')}`
            : reasonsOfReport(safety, language, 'paper').join(' ')}
      </p>
      {safety !== null && safety.failedUnits.length > 0 && safety.reasons[0] !== 'unitFailed' && may === 'no' ? (
        <p>
          {say('safety.because_unitFailed', { count: safety.failedUnits.length, units: safety.failedUnits.join(', ') })}
        </p>
      ) : null}
      {may === 'no' && safety?.sourceDays ? <p>{safety.sourceDays.finding}</p> : null}
    </section>
  );
}

const steps = ['stop', 'tell', 'treat', 'mend', 'again'] as const;

/** What is done when a test fails, how water is boiled at this height, and chlorine where it is used. */
function WhatToDo({
  safety,
  chlorination,
}: {
  readonly safety: SafetyReport | null;
  readonly chlorination: Readonly<Record<string, string>>;
}) {
  const { say, numbers } = useLanguage();
  const boilsAt_C = safety?.boilsAt_C ?? null;
  const doses = safety?.chlorine ? dosesOf(safety.chlorine, chlorination) : null;
  return (
    <div className="two">
      <section>
        <h2>{say('safety.when_fails')}</h2>
        <ol className="fails">
          {steps.map((step) => (
            <li key={step}>{say(`safety.step_${step}`)}</li>
          ))}
        </ol>
      </section>
      <section className="boils">
        <h2>{say('safety.boiling')}</h2>
        <p>
          {say('safety.boil')}{' '}
          {boilsAt_C === null
            ? say('safety.boils_unknown')
            : `${say('safety.boils_at', { at: numbers.quantity(boilsAt_C, 'C') })}.`}
        </p>
      </section>
      {doses === null ? null : (
        <section className="doses">
          <h2>{say('safety.doses')}</h2>
          <DoseTable doses={doses} />
          <p className="caution">{say('safety.chlorine_caution')}</p>
        </section>
      )}
    </div>
  );
}

function Barriers({ safety }: { readonly safety: SafetyReport | null }) {
  const language = useLanguage();
  const { say, numbers } = language;
  if (safety === null || safety.barriers.length === 0) return null;
  return (
    <section>
      <h2>{say('safety.shown_by')}</h2>
      <p>{say('safety.step_about')}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('safety.head_stop')}</th>
            <th scope="col">{say('safety.head_evidence')}</th>
            {germClasses.map((one) => (
              <th key={one} scope="col" className="num">
                {say(`safety.germs_${one}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {safety.barriers.map((barrier) => (
            <tr key={`${barrier.kind} ${barrier.barrierId}`}>
              <th scope="row">{barrierName(barrier, language)}</th>
              <td>{say(`safety.evidence_${barrier.evidence}`)}</td>
              {germClasses.map((one) => (
                <td key={one} className="num" data-head={say(`safety.germs_${one}`)}>
                  {numbers.fixed(barrier.credited[`${one}_log10`], 1)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Samples told, and lines in all: those that are left are for the next ones, fewer where doses take their room. One sheet holds it all. */
const [told, lines, linesBesideDoses] = [3, 6, 5] as const;

/** The last samples, with room to write the next. */
function Tests({
  safety,
  rows,
  siteId,
}: {
  readonly safety: SafetyReport | null;
  readonly rows: readonly TableRow[];
  readonly siteId: string;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const noted = notedOf(rows, siteId, language);
  const last = (safety?.waterTests.tests ?? []).filter(({ isBeforeHandOver }) => !isBeforeHandOver).slice(-told);
  return (
    <section className="tests">
      <h2>{say('safety.samples')}</h2>
      {last.length === 0 ? <p>{say('safety.no_sample')}</p> : null}
      <table>
        <thead>
          <tr>
            {(['day', 'point', 'found', 'chlorine', 'turbidity', 'by'] as const).map((head) => (
              <th key={head} scope="col">
                {say(`safety.head_${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {last.map((test) => (
            <tr key={test.testId}>
              <th scope="row">{numbers.date(test.takenOn)}</th>
              <td>{say(`safety.point_${test.point}`)}</td>
              <td>
                {countWords(
                  test,
                  language,
                  safety?.waterTests.unusable.some(({ testId }) => testId === test.testId),
                )}
                {test.band === null ? '' : `: ${say(`safety.band_${test.band}`)}`}
              </td>
              {(['chlorine', 'turbidity', 'by'] as const).map((one) => {
                const text = noted(test.testId)[one];
                return (
                  <td key={one} data-head={text === '' ? undefined : say(`safety.head_${one}`)}>
                    {text}
                  </td>
                );
              })}
            </tr>
          ))}
          {Array.from({ length: (safety?.chlorine ? linesBesideDoses : lines) - last.length }, (_, nth) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: empty lines to write on
            <tr key={nth} className="blank">
              {Array.from({ length: 6 }, (_cell, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={at} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const calls = ['authority', 'laboratory', 'programme', 'caretaker'] as const;

/** Who is called: lines to write on. */
function Calls() {
  const { say } = useLanguage();
  return (
    <section className="calls">
      <h2>{say('safety.calls')}</h2>
      <dl>
        {calls.map((one) => (
          <div key={one}>
            <dt>{say(`safety.call_${one}`)}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </section>
  );
}
