import { useLanguage } from '../language/LanguageProvider.tsx';
import type { Draft, DraftStep, RowNow } from './draft.ts';
import { rowId } from './draft.ts';
import { Field } from './Field.tsx';
import { formTable } from './formTables.ts';
import { optionsOf } from './options.ts';
import { useFieldWords } from './useFieldWords.ts';

export interface RowFieldsProps {
  readonly programmeId: string;
  /** The row as it stands; one that is new has no cells. */
  readonly row: RowNow;
  readonly draft: Draft;
  /** Columns that are not asked for, as the page says them. */
  readonly hidden: readonly string[];
  /** All rows whose ids may be named. */
  readonly known: readonly RowNow[];
  readonly isTried: boolean;
  dispatch(step: DraftStep): void;
}

/** Columns few sites need: they stand behind a press unless something is in them. */
const seldom: Readonly<Record<string, readonly string[]>> = {
  sites: [
    'rainFactor',
    'rationBelow_fraction',
    'rationedJudged_fraction',
    'rationedOther_fraction',
    'nearSecondSource',
    'growthFraction_per_year',
    'peopleCountedOn',
    'designYear',
    'skipping_fraction',
    'daysOff_per_year',
  ],
  parts: [
    ...['cartridges', 'membraneArea_m2', 'permeability_L_per_m2_h_bar', 'ratedFlow_L_per_h', 'ratedPressure_kPa'],
    ...['highestPressure_kPa', 'pore_nm', 'ratedLitres_L', 'ratedTurbidity_NTU', 'highestTurbidity_NTU'],
    ...['lifeLimit_years', 'lowestFlow_L_per_h', 'backwash_fraction', 'backwash_min_per_day', 'pistonBore_mm'],
    ...['pistonStroke_mm', 'leverRatio', 'bacteria_log10', 'viruses_log10', 'protozoa_log10', 'evidence'],
    'evidenceSource',
  ],
  settings: [
    ...['range_fraction', 'draws', 'seed', 'madeYears', 'dayOrder', 'wetDayAmounts', 'gapFilling'],
    ...['foulingSpread_fraction', 'flowReadingError_fraction', 'futures', 'leak_fraction'],
    'susceptibleToRotavirus_fraction',
  ],
};

/** The fields of one row. */
export function RowFields(props: RowFieldsProps) {
  const { say } = useLanguage();
  const { row, draft, hidden } = props;
  const table = formTable(row.table);
  if (table === null) return null;
  const own = draft.rows[rowId(row)];
  const isNew = own?.state === 'added';
  const asked = Object.keys(table.columns).filter(
    (name) => !hidden.includes(name) && (isNew || !table.key.includes(name)),
  );
  const isSeldom = (name: string) => seldom[row.table]?.includes(name) === true;
  const rare = asked.filter(isSeldom);
  const isOpen = rare.some((name) => row.cells[name] !== undefined || own?.cells[name] !== undefined);
  return (
    <>
      <div className="fields">
        {asked
          .filter((name) => !isSeldom(name))
          .map((name) => (
            <RowField key={name} {...props} name={name} isNew={isNew} />
          ))}
      </div>
      {rare.length === 0 ? null : (
        <details open={isOpen}>
          <summary className="press">{say('forms.seldom', { count: rare.length })}</summary>
          <div className="fields">
            {rare.map((name) => (
              <RowField key={name} {...props} name={name} isNew={isNew} />
            ))}
          </div>
        </details>
      )}
    </>
  );
}

function RowField(props: RowFieldsProps & { readonly name: string; readonly isNew: boolean }) {
  const { row, draft, name, known } = props;
  const table = formTable(row.table)!;
  const cell = draft.rows[rowId(row)]?.cells[name] ?? null;
  const siteId = draft.rows[rowId(row)]?.cells['siteId']?.typed ?? row.cells['siteId'] ?? null;
  return (
    <Field
      row={{ table: row.table, key: row.key }}
      column={name}
      contract={table.columns[name]!}
      present={row.cells[name] ?? null}
      cell={cell}
      options={optionsOf(table, name, known, siteId)?.filter(({ id }) => !isItself(row, name, id)) ?? null}
      isOpen={table.links[name]?.isOpen === true}
      isTried={props.isTried}
      isNewRow={props.isNew}
      programmeId={props.programmeId}
      dispatch={props.dispatch}
    />
  );
}

/** A tank is not joined to itself. */
const isItself = (row: RowNow, column: string, id: string) => column === 'joinedTo' && row.cells['tankId'] === id;

/** What a row is called: its own ids, and its name where it has one. */
export function RowTitle({ row, hidden }: { readonly row: RowNow; readonly hidden: readonly string[] }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const table = formTable(row.table);
  const said = (column: string) => {
    const cell = row.cells[column] ?? '';
    return row.table === 'demand' && column === 'purpose' ? words.choice(cell) : cell;
  };
  const ids = (table?.key ?? []).filter((column) => !hidden.includes(column)).map(said);
  const name = row.cells['name'];
  const shown = [name, ...ids].filter((text) => text !== undefined && text !== '').join(' · ');
  return shown === '' ? say('forms.new_row', { table: words.table(row.table) }) : shown;
}
