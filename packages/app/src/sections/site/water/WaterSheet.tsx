import { type ReactNode, useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches } from '../../../look/PictureView.tsx';
import { isAsked, type Judged, type SiteWater, useSiteWater, yearsToAsk } from '../../../water/index.ts';
import { Remedies } from '../Remedies.tsx';
import type { SiteReport } from '../siteFigures.ts';
import { Charts, type ChartsOf } from './Charts.tsx';
import { DraftBar, Then } from './DraftBar.tsx';
import { DrawnSite } from './DrawnSite.tsx';
import { fittingFieldsOf } from './fittingFields.ts';
import { Leaving } from './Leaving.tsx';
import { MeasureField } from './MeasureField.tsx';
import { handlesOf } from './measureHandles.ts';
import { fieldsOf, type Measures } from './measures.ts';
import { PointedDay, PointedDayContext } from './pointedDay.ts';
import { pressedStation } from './pressedStation.ts';
import { Question } from './Question.tsx';
import { questionSaid } from './questionSaid.ts';
import { Stations } from './Stations.tsx';
import './water.css';

/** One site's water: the drawing that answers, what is tried on it, its stations, its record and what would mend it. */
export function WaterSheet({
  programmeId,
  siteId,
  name,
  design,
  verdictOf,
}: {
  readonly programmeId: string;
  readonly siteId: string;
  readonly name: string;
  /** As the program found it: shown until it is worked out here, and where it cannot be. */
  readonly design: SiteReport | null;
  /** The verdict in words, over the drawing. */
  verdictOf(
    report: SiteReport,
    remedies: SiteReport['remedies'],
    told: { readonly isTried: boolean; onOpen(code: string): void },
  ): ReactNode;
}) {
  const water = useSiteWater(programmeId, siteId);
  const [pointed] = useState(() => new PointedDay());
  const [opened, setOpened] = useState<string | null>(null);
  const shown = water.drafted ?? water.saved;
  const report = shown?.report ?? design;
  const remedies =
    water.saved === null
      ? (design?.remedies ?? null)
      : (water.remedies ?? (water.isMending ? (design?.remedies ?? null) : null));
  return (
    <PointedDayContext value={pointed}>
      <PictureHatches />
      {report === null ? null : verdictOf(report, remedies, { isTried: water.drafted !== null, onOpen: setOpened })}
      <Troubles water={water} hasDesign={design !== null} />
      {shown === null || water.saved === null ? (
        report === null ? null : (
          <Stations {...{ report, opened, programmeId, siteId }} onOpen={setOpened} />
        )
      ) : (
        <Answering
          {...{ programmeId, water, name, siteId, remedies, opened }}
          onOpen={setOpened}
          saved={water.saved}
          shown={shown}
        />
      )}
      {water.saved === null && remedies !== null ? (
        <Remedies found={remedies} judgedYears={report?.storages[0]?.judgedYears ?? null} />
      ) : null}
      {water.leaving === null ? null : <Leaving {...water.leaving} />}
    </PointedDayContext>
  );
}

function Troubles({ water, hasDesign }: { readonly water: SiteWater; readonly hasDesign: boolean }) {
  const { say } = useLanguage();
  const { problem, saved } = water;
  if (problem === null || saved !== null || !hasDesign) return null;
  return <p className="small">{say('water.worker_none', { why: say(`water.problem_${problem.kind}`) })}</p>;
}

// long: one sheet, read from above
function Answering({
  programmeId,
  water,
  saved,
  shown,
  name,
  siteId,
  remedies,
  opened,
  onOpen: setOpened,
}: {
  readonly programmeId: string;
  readonly water: SiteWater;
  readonly saved: Judged;
  readonly shown: Judged;
  readonly name: string;
  readonly siteId: string;
  readonly remedies: SiteReport['remedies'];
  readonly opened: string | null;
  onOpen(code: string | null): void;
}) {
  const [part, setPart] = useState<string | null>(null);
  const measures = useMeasures(water, saved);
  const { report } = shown;
  const onPart = useCallback((pressed: string) => setPart(pressed), []);
  const tried = water.drafted?.site ?? null;
  return (
    <>
      <DrawnSite
        {...{ name, report, tried, measures, onPart }}
        site={saved.site}
        storages={(water.asked ?? shown).storages}
        pressed={pressedStation(opened)}
      />
      <Beside water={water} measures={measures} part={part} saved={saved} shown={shown} />
      <DraftBar programmeId={programmeId} water={water} remedies={remedies} />
      <Stations {...{ report, opened, programmeId, siteId }} onOpen={setOpened} />
      <Record
        water={water}
        shown={water.asked ?? shown}
        siteId={siteId}
        onOpen={setOpened}
        remedies={
          remedies === null ? null : (
            <Remedies
              found={remedies}
              judgedYears={report.storages[0]?.judgedYears ?? null}
              onPoint={(changes) => water.preview(changes === null ? null : { kind: 'remedy', changes })}
              onTake={(changes) => water.change({ kind: 'remedy', changes })}
              onOpen={(changes, code) => {
                water.change({ kind: 'remedy', changes });
                setOpened(code);
              }}
            />
          )
        }
      />
    </>
  );
}

/** What can be changed, by the draft as it stands: while something is dragged, its handle stays what it was. */
function useMeasures(water: SiteWater, saved: Judged): Measures {
  const language = useLanguage();
  const { drafted, pointed, preview, change } = water;
  const standing = useRef(saved.site);
  if (pointed === null) standing.current = drafted?.site ?? saved.site;
  const now = standing.current;
  return useMemo(
    () => ({
      fields: fieldsOf(saved.site, now, saved.settings, language),
      fittings: fittingFieldsOf(saved.site, now, language),
      handles: handlesOf(now, language, { preview, change }),
    }),
    [saved, now, language, preview, change],
  );
}

/** The measures beside the drawing, and what is asked of the rain. */
function Beside({
  water,
  measures,
  part,
  saved,
  shown,
}: {
  readonly water: SiteWater;
  readonly measures: Measures;
  readonly part: string | null;
  readonly saved: Judged;
  readonly shown: Judged;
}) {
  const { say } = useLanguage();
  const fields = useRef<HTMLDivElement>(null);
  const fittings = useRef<HTMLDetailsElement>(null);
  const { asked, question } = water;
  useEffect(() => {
    if (part === null) return;
    const found = fields.current?.querySelector<HTMLElement>(`[data-measure="${fieldOf(part)}"] input`);
    if (fittings.current !== null && found && fittings.current.contains(found)) fittings.current.open = true;
    found?.focus();
  }, [part]);
  return (
    <section className="beside-drawing on-screen" aria-labelledby="measures-head">
      <h2 id="measures-head" className="said-only">
        {say('water.measures')}
      </h2>
      <div ref={fields}>
        <Fields fields={measures.fields} water={water} />
        <details ref={fittings}>
          <summary>{say('water.fittings')}</summary>
          <Fields fields={measures.fittings} water={water} />
        </details>
      </div>
      <details open={isAsked(question) || undefined}>
        <summary>{say('water.ask_rain')}</summary>
        <Question asked={question} years={yearsToAsk(saved)} ownOrder={saved.settings.dayOrder} onAsk={water.ask} />
        {asked === null ? null : <Then now={shown} then={asked} />}
      </details>
    </section>
  );
}

/** Fields side by side. */
function Fields({ fields, water }: { readonly fields: Measures['fields']; readonly water: SiteWater }) {
  const { numbers } = useLanguage();
  return (
    <div className="measures">
      {fields.map((one) => (
        <div key={one.key} data-measure={one.key}>
          <MeasureField
            label={one.label}
            unit={one.unit}
            value={one.value}
            saved={
              one.saved === one.value || one.saved === null ? null : numbers.given(rounded(one.saved, one), one.unit)
            }
            limits={one.limits}
            onPreview={(value) => water.preview(value === null ? null : one.step(value))}
            onChange={(value) => water.change(one.step(value))}
          />
        </div>
      ))}
    </div>
  );
}

/** As its field shows it. */
const rounded = (value: number, { limits }: Measures['fields'][number]) => Number(value.toFixed(limits.decimals));

/** The field of a part that was pressed. */
function fieldOf(part: string): string {
  const [kind, id] = part.split(':');
  if (kind === 'water' || kind === 'stand') return `tank:${id}`;
  if (kind === 'roof' || kind === 'downpipe') return `gutter:${id}`;
  if (kind === 'diverter') return `flush:${id}`;
  return kind === 'person' ? 'people' : part;
}

/** The record of the body of water that is looked at, and what would mend the site beside its curve. */
function Record({
  water,
  shown,
  siteId,
  remedies,
  onOpen,
}: {
  readonly water: SiteWater;
  readonly shown: Judged;
  readonly siteId: string;
  readonly remedies: ReactNode;
  onOpen(code: string): void;
}) {
  const language = useLanguage();
  const { say } = language;
  const [chosen, choose] = useState<string | null>(null);
  // The drawing answers at once; the charts follow when there is time.
  const { report, storages } = useDeferredValue(shown);
  const at = Math.max(
    0,
    report.storages.findIndex(({ tankIds }) => tankIds.join('+') === chosen),
  );
  const [found, drawn] = [report.storages[at], storages[at]];
  const isAsked = water.asked !== null;
  const of = useMemo<ChartsOf | null>(() => {
    if (found === undefined || drawn === undefined) return null;
    const { longestDryRun_days } = report.target;
    return { found, drawn, longestDryRun_days, isAsked };
  }, [found, drawn, report.target, isAsked]);
  if (of === null) return remedies;
  const asked = isAsked ? questionSaid(water.question, language) : null;
  const names = report.storages.map(({ tankIds }) => tankIds.join('+'));
  return (
    <>
      {asked === null ? null : <p role="note">{asked}</p>}
      {names.length < 2 ? null : (
        <p className="bodies on-screen">
          {say('water.bodies')}{' '}
          {names.map((name, i) => (
            <button key={name} type="button" className="press" aria-pressed={i === at} onClick={() => choose(name)}>
              {say('water.tank_of', { tank: name })}
            </button>
          ))}
        </p>
      )}
      <Charts
        of={of}
        siteId={siteId}
        beside={remedies}
        isBusy={water.isJudging}
        // The working that stands on the page is of the real rain.
        onOpen={isAsked ? undefined : onOpen}
      />
    </>
  );
}
