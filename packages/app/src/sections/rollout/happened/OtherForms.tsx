import { folderTables } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { crewAwayEntry } from './crewAway.ts';
import { AwayRow, Kind, nameIn, type OfRows, optionsIn, useFields } from './formParts.tsx';
import { brokeEntry } from './happenedChanges.ts';
import { stillAway } from './happenedRows.ts';
import { Opens } from './Opens.tsx';
import { ShortForm } from './ShortForm.tsx';

/** A boat or truck broke, or is there again. */
export function CarrierForms({ programmeId, rows, today }: OfRows) {
  const { say } = useLanguage();
  const fields = useFields();
  const { carrierId } = folderTables.carriersAway.columns;
  const which = { field: 'carrierId', column: carrierId, label: say('rolloutHappened.field_carrierId') };
  const away = stillAway(rows, 'carriersAway', today);
  return (
    <Kind title={say('rolloutHappened.carriers')}>
      {away.length === 0 ? null : (
        <ul className="plain-list">
          {away.map((row) => (
            <AwayRow
              key={row.key}
              {...{ programmeId, rows: [row] }}
              said={say('rolloutHappened.so_many', {
                count: Number(row.cells['count'] ?? '1'),
                name: nameIn(rows, 'carriers', row.cells['carrierId']),
              })}
            />
          ))}
        </ul>
      )}
      <Opens press={say('rolloutHappened.tell_broke')} formId="broke">
        {(close) => (
          <ShortForm
            programmeId={programmeId}
            formId="broke"
            press={say('rolloutHappened.enter')}
            fields={[
              { ...which, options: optionsIn(rows, 'carriers') },
              ...fields('carriersAway', ['count', 'from', 'to', 'reason']),
            ]}
            make={(cells) => brokeEntry(rows, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </Kind>
  );
}

/** A crew does not work for some days. */
export function CrewForms({ programmeId, rows }: OfRows) {
  const { say } = useLanguage();
  const fields = useFields();
  const { crewId } = folderTables.crewCarriers.columns;
  return (
    <Kind title={say('rolloutHappened.crews')}>
      <p className="small">{say('rolloutHappened.crews_about')}</p>
      <Opens press={say('rolloutHappened.tell_crewAway')} formId="crewAway">
        {(close) => (
          <ShortForm
            programmeId={programmeId}
            formId="crewAway"
            press={say('rolloutHappened.enter')}
            fields={[
              {
                ...{ field: 'crewId', column: crewId, label: say('rolloutHappened.field_crewId') },
                options: optionsIn(rows, 'crews'),
              },
              ...fields('workCalendars', ['from', 'to', 'reason']),
            ]}
            make={(cells) => crewAwayEntry(rows, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </Kind>
  );
}
