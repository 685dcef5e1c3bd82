import { buildingOf, sectionOf } from '@eavewell/drawing';
import { inspection, type Question, type StepCaution, stepsOf } from '@eavewell/tables';
import { type AppMessageKey, sectionFindings, sectionWords } from '@eavewell/words/app';
import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useMemo, useRef } from 'react';
import { queries } from '../../../api/queries.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches, PictureView } from '../../../look/PictureView.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import { type Judged, useSiteWater } from '../../../water/index.ts';
import { GateBand, type SignedTank, standingTanks } from '../GateBand.tsx';
import type { SiteReport } from '../siteFigures.ts';
import { markLetters } from '../water/markLetters.ts';
import { heightsToSetOut } from './heightsToSetOut.ts';
import { partsToFit } from './partsToFit.ts';
import '../site.css';
import './installation.css';

/** What is fitted at one site: drawn, listed and in order, to be printed on two sheets of A4 and carried there. */
export function InstallationSheet() {
  const { say, numbers } = useLanguage();
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId/installation' });
  const { data: site } = useSuspenseQuery(queries.site(programmeId, siteId));
  const water = useSiteWater(programmeId, siteId);
  const row = site.rows.find(({ table }) => table === 'sites')?.cells ?? {};
  const name = row['name'] ?? site.design?.name ?? siteId;
  const { saved, problem } = water;
  return (
    <article className="installation">
      <nav className="among on-screen" aria-label={say('app.sites')}>
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }}>
          <span aria-hidden="true">‹ </span>
          {say('installation.back', { name })}
        </Link>
        <button type="button" className="press" onClick={() => window.print()}>
          {say('water.print')}
        </button>
      </nav>
      <h1>{say('installation.title', { name })}</h1>
      <p className="facts-line">
        {[siteId, ...(row['area'] ? [row['area']] : [])].join(', ')}.{' '}
        {say('installation.printed', { day: numbers.date(new Date().toLocaleDateString('sv-SE')) })}
      </p>
      {saved === null ? (
        <p>
          {problem === null
            ? say('water.judging')
            : say('water.worker_none', { why: say(`water.problem_${problem.kind}`) })}
        </p>
      ) : (
        <Sheet judged={saved} name={name} tanks={standingTanks(site.rows)} />
      )}
    </article>
  );
}

function Sheet({
  judged,
  name,
  tanks,
}: {
  readonly judged: Judged;
  readonly name: string;
  readonly tanks: readonly SignedTank[];
}) {
  const { report, site } = judged;
  return (
    <>
      <GateBand gate={report.standGate} tanks={tanks} />
      <Drawn judged={judged} name={name} />
      <div className="two">
        <Parts site={site} />
        <Heights site={site} />
      </div>
      <NotKnown report={report} />
      <Steps judged={judged} />
      {report.standGate.gate === 'notNeeded' ? null : <Signing report={report} tanks={tanks} />}
      <Inspection judged={judged} />
    </>
  );
}

/** The section, as wide as the sheet. */
function Drawn({ judged: { report, site }, name }: { readonly judged: Judged; readonly name: string }) {
  const language = useLanguage();
  const room = useRef<HTMLDivElement>(null);
  const { width } = useWidth(room);
  const picture = useMemo(
    () =>
      width === null || width < 100
        ? null
        : sectionOf({
            building: buildingOf(site),
            levels: null,
            stations: report.stations,
            letters: markLetters(report, language),
            words: sectionWords(language),
            width,
            ...sectionFindings(report, site, language),
          }),
    [report, site, language, width],
  );
  return (
    <div ref={room} className="drawn-room">
      <PictureHatches />
      {picture === null ? null : (
        <div className="drawn-frame" dir="ltr">
          <PictureView picture={picture} name={language.say('water.section_name', { name })} />
        </div>
      )}
    </div>
  );
}

function Parts({ site }: { readonly site: Judged['site'] }) {
  const language = useLanguage();
  const { say } = language;
  const lines = partsToFit(site, language);
  return (
    <section>
      <h2>{say('installation.parts')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('installation.part')}</th>
            <th scope="col">{say('installation.size')}</th>
            <th scope="col" className="num">
              {say('installation.amount')}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ ids, what, size, amount }) => (
            <tr key={`${what} ${ids.join(' ')} ${size}`}>
              <th scope="row">
                {what} <span className="small">{ids.join(', ')}</span>
              </th>
              <td>{size}</td>
              <td className="num">{amount}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Heights({ site }: { readonly site: Judged['site'] }) {
  const language = useLanguage();
  const { say } = language;
  return (
    <section>
      <h2>{say('installation.heights')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('installation.mark')}</th>
            <th scope="col">{say('installation.height')}</th>
          </tr>
        </thead>
        <tbody>
          {heightsToSetOut(site, language).map(({ ids, what, value }) => (
            <tr key={`${what} ${ids.join(' ')}`}>
              <th scope="row">
                {what} <span className="small">{ids.join(', ')}</span>
              </th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Which stations nobody could judge, and why in the words of what was found. */
function NotKnown({ report }: { readonly report: SiteReport }) {
  const { say } = useLanguage();
  const found = report.problems.filter(({ severity }) => severity !== 'note').map(({ what }) => what);
  return (
    <p className="not-known">
      <b>{say('installation.not_known')}</b>{' '}
      {found.length === 0 ? say('installation.nothing_unknown') : [...new Set(found)].slice(0, most_told).join(' ')}
      {found.length > most_told ? ` ${say('installation.more_unknown', { count: found.length - most_told })}` : ''}{' '}
      {say('installation.dots')}
    </p>
  );
}

/** So many of what is not known stand on the sheet; the others are on the site's page. Ours: two pages are to be enough. */
const most_told = 6;

function Steps({ judged: { report, site } }: { readonly judged: Judged }) {
  const { say } = useLanguage();
  const saidOf = (caution: StepCaution): string => {
    const own = report.cautions.find((one) => one.caution === caution)?.said ?? say(`cautions.${caution}`);
    return caution === 'lifting' && report.heaviestPiece !== null ? `${own} ${report.heaviestPiece.said}` : own;
  };
  return (
    <section>
      <h2>{say('installation.steps')}</h2>
      <ol className="steps">
        {stepsOf(site, report).map(({ step, cautions }) => (
          <li key={step}>
            {say(`steps.${step}`)}
            {cautions.map((caution) => (
              <p key={caution} className="caution">
                {saidOf(caution)}
              </p>
            ))}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Lines to sign on, one for each tank that stands on something. */
function Signing({ report, tanks }: { readonly report: SiteReport; readonly tanks: readonly SignedTank[] }) {
  const { say, numbers } = useLanguage();
  const rows = tanks.length > 0 ? tanks : report.stands.map((one) => ({ ...one, signedBy: null, signedOn: null }));
  return (
    <section className="signing">
      <h2>{say('installation.signing')}</h2>
      <p>{say('installation.signing_about')}</p>
      <table>
        <thead>
          <tr>
            {(['tank', 'name', 'licence', 'date', 'signature'] as const).map((head) => (
              <th key={head} scope="col">
                {say(`installation.sign_${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ tankId, signedBy, signedOn }) => (
            <tr key={tankId}>
              <th scope="row">{tankId}</th>
              <td>{signedBy ?? ''}</td>
              <td />
              <td>{signedOn === null ? '' : numbers.date(signedOn)}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What is looked at once all is fitted: screens, lid, gutters, stand, with boxes to tick. */
function Inspection({ judged: { site, report } }: { readonly judged: Judged }) {
  const { say } = useLanguage();
  const there: Readonly<Record<NonNullable<Question['onlyWith']>, boolean>> = {
    gutter: site.gutters.length > 0 || site.roofs.length > 0,
    diverter: site.roofs.some(({ diverter }) => diverter !== null),
    stand: report.standGate.gate !== 'notNeeded',
    tieDown: report.standGate.gate !== 'notNeeded',
  };
  const asked = inspection.questions.filter(({ onlyWith }) => onlyWith === null || there[onlyWith]);
  const said = (key: string) => say(key as AppMessageKey, {});
  return (
    <section className="inspection">
      <h2>{said(inspection.textKey)}</h2>
      <ul>
        {asked.map(({ id, textKey, choices }) => (
          <li key={id}>
            {said(textKey)}{' '}
            {choices.map((choice) => (
              <span key={choice.id} className="choice">
                <span className="box" aria-hidden="true" /> {said(choice.textKey)}
              </span>
            ))}
          </li>
        ))}
        <li>
          {say('installation.ladder_question')}{' '}
          <span className="choice">
            <span className="box" aria-hidden="true" /> {say('water.yes')}
          </span>
        </li>
      </ul>
    </section>
  );
}
