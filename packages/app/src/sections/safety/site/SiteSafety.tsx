import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useMemo } from 'react';
import { queries } from '../../../api/queries.ts';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches } from '../../../look/PictureView.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { SafetyCaution } from '../Caution.tsx';
import { reasonsOfReport, tableOf } from '../cupWords.ts';
import { dosesOf } from '../doses.ts';
import { CupOfBefore, useIsCupOfBefore } from '../ofBefore.tsx';
import { Chlorine } from './Chlorine.tsx';
import { Opens, Part, WithWorkings } from './opening.tsx';
import { Risks } from './Risks.tsx';
import { Samples } from './Samples.tsx';
import { type SafetyReport, type SiteReport, safetyLines, safetyProblems } from './safetyFigures.ts';
import { Way } from './Way.tsx';
import { WearPart } from './Wear.tsx';
import '../../site/site.css';
import '../safety.css';

/** Whether the water of one site is fit to drink: the way of the water, the risks, the samples, and when cartridges are due. */
// long: one part of a page as it is read, line after line
export function SiteSafety() {
  const { say } = useLanguage();
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId/safety' });
  const { data: site } = useSuspenseQuery(queries.site(programmeId, siteId));
  const { design, rows } = site;
  const row = rows.find(({ table }) => table === 'sites')?.cells ?? {};
  const name = row['name'] ?? design?.name ?? siteId;
  const people = design?.people ?? null;
  const isOfBefore = useIsCupOfBefore(programmeId, siteId, site);
  const lines = useMemo(() => (design === null ? [] : safetyLines(design)), [design]);
  const chlorinated = rows.find(({ table }) => table === 'chlorination')?.cells ?? {};
  return (
    <article className="site-safety">
      <nav className="among on-screen" aria-label={say('safety.section')}>
        <Link to="/p/$programmeId/safety" params={{ programmeId }}>
          <span aria-hidden="true">‹ </span>
          {say('safety.back')}
        </Link>
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }}>
          {say('safety.to_site')}
        </Link>
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }} hash="form-waterTests">
          {say('safety.write_test')}
        </Link>
        <Link to="/p/$programmeId/sites/$siteId/water-safety" params={{ programmeId, siteId }}>
          {say('safety.to_paper')}
        </Link>
      </nav>
      <h1>{say('safety.site_title', { name })}</h1>
      <p className="facts-line">
        {[
          siteId,
          people === null ? say('sites.no_people') : say('site.people', { people }),
          ...(row['area'] ? [row['area']] : []),
        ].join(', ')}
      </p>
      {isOfBefore ? <CupOfBefore programmeId={programmeId} state={site} /> : null}
      {design?.safety ? <Said design={design} safety={design.safety} isOfBefore={isOfBefore} /> : null}
      <SafetyCaution />
      {design?.safety ? (
        <WithWorkings lines={lines}>
          <PictureHatches />
          {design.safety.isReckoned ? (
            <>
              <Way safety={design.safety} />
              <Risks safety={design.safety} />
            </>
          ) : null}
          <Samples safety={design.safety} rows={rows} siteId={siteId} />
          {design.safety.chlorine === null ? null : (
            <Chlorine found={design.safety.chlorine} doses={dosesOf(design.safety.chlorine, chlorinated)} />
          )}
          {(design.wear ?? []).length === 0 ? null : <WearPart wear={design.wear ?? []} />}
          <Boiling safety={design.safety} />
          <Found design={design} ofRows={site.problems} />
        </WithWorkings>
      ) : (
        <p className="verdict">
          <VerdictMark verdict="unknown" size={40} />
          <span>{say(design === null ? 'safety.because_notYet' : 'safety.because_notJudged')}</span>
        </p>
      )}
    </article>
  );
}

/** What may be said of drinking it, larger than all else, and why. */
function Said({
  design,
  safety,
  isOfBefore,
}: {
  readonly design: SiteReport;
  readonly safety: SafetyReport;
  readonly isOfBefore: boolean;
}) {
  const language = useLanguage();
  const { say } = language;
  const { mayDrink } = safety;
  const [first, ...others] = reasonsOfReport(safety, language);
  const { cup } = design.stations;
  // Facts in doubt beside it: it is not said to be fit then.
  const said = mayDrink === 'yes' && cup === 'unknown' ? 'notShown' : mayDrink;
  // That it is fit is not said of before.
  if (isOfBefore && said === 'yes') return null;
  return (
    <div className={`verdict may-${said}`}>
      <VerdictMark verdict={cup} size={said === 'yes' ? 28 : 48} />
      <div>
        <p className={`may w-${cup}`}>{say(`safety.drink_${said}`)}.</p>
        <p className="sentence">
          {first} {said === 'yes' ? null : say('safety.step_treat')}
        </p>
        {others.length === 0 ? null : <p className="small">{others.join(' ')}</p>}
      </div>
    </div>
  );
}

/** How water is boiled at the height of the site. */
function Boiling({ safety: { boilsAt_C } }: { readonly safety: SafetyReport }) {
  const { say, numbers } = useLanguage();
  return (
    <Part id="boiling" title={say('safety.boiling')}>
      <p>
        {say('safety.boil')}{' '}
        {boilsAt_C === null ? (
          say('safety.boils_unknown')
        ) : (
          <Opens code="safety.boils">{say('safety.boils_at', { at: numbers.quantity(boilsAt_C, 'C') })}</Opens>
        )}
      </p>
    </Part>
  );
}

/** What was found of it, and what is to be done. */
function Found({
  design,
  ofRows,
}: {
  readonly design: SiteReport;
  readonly ofRows: Parameters<typeof safetyProblems>[1];
}) {
  const { say } = useLanguage();
  const { table: nameOf } = useFieldWords();
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId/safety' });
  const problems = safetyProblems(design, ofRows);
  if (problems.length === 0) return null;
  return (
    <section className="problems-found">
      <h2>{say('safety.found')}</h2>
      <ul>
        {problems.map(({ code, what, todo, severity, place }) => (
          <li key={`${code} ${what}`} className={severity}>
            {what} {todo}{' '}
            {place.row === undefined || place.file === undefined ? null : (
              <Link
                to="/p/$programmeId/sites/$siteId"
                params={{ programmeId, siteId }}
                hash={`form-${tableOf(place.file)}`}
                className="on-screen"
              >
                {say('safety.mend_in', { table: nameOf(tableOf(place.file)) })}
              </Link>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
