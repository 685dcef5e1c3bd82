import { type Column, type FolderTableName, folderTables, settingColumn } from '@eavewell/tables';

/** A table as forms need it: its columns and what its keys and links are. */
export interface FormTable {
  readonly name: string;
  readonly key: readonly string[];
  readonly columns: Readonly<Record<string, Column<unknown>>>;
  /** The table and column whose rows a cell names. */
  readonly links: Readonly<Record<string, Link>>;
}

export interface Link {
  readonly table: string;
  readonly column: string;
  /** Only rows of the same site are meant. */
  readonly ofSite: boolean;
  /** A value that no row has may be written too. */
  readonly isOpen: boolean;
}

/** The settings in the order a person asks for them. */
export const settingFields = [
  'programme',
  'target.daysMet_fraction',
  'target.longestDryRun_days',
  'target.goodYears_fraction',
  'litres_per_person_per_day',
  'designAfterHandOver_years',
  'growthFraction_per_year',
  'people_per_household',
  'firstFlush_mm',
  'judgeDrainage',
  'stormReturnPeriod_years',
  'stormMargin_fraction',
  'fiveMinutesOfDay_fraction',
  'fiveMinutesOfDaySource',
  'judgeSettling',
  'settledTarget_fraction',
  'settlingGrain_um',
  'settlingGrainDensity_kg_per_m3',
  'waterTemperature_C',
  'roofSolids_g_per_m2_per_year',
  'judgeStand',
  'windSpeed_m_per_s',
  'windExposure',
  'standMargin_fraction',
  'judgeHead',
  'tapFlow_L_per_min',
  'residualHead_m',
  'headMargin_m',
  'unitHead_m',
  'pumping_h_per_day',
  'judgeTreatment',
  'peakShare_fraction',
  'waitLimit_min',
  'treatmentMargin_fraction',
  'roofTurbidity_NTU',
  'roofTurbidityHigh_NTU',
  'settledTurbidity_fraction',
  'cartridgeFailures_per_year',
  'foulingSpread_fraction',
  'flowReadingError_fraction',
  'futures',
  'judgeSafety',
  'healthTarget_DALY_per_person_per_year',
  'litresDrunk_L_per_person_per_day',
  'litresDrunkHigh_L_per_person_per_day',
  'skipping_fraction',
  'daysOff_per_year',
  'recontamination_fraction',
  'leak_fraction',
  'sampleAge_days',
  'susceptibleToRotavirus_fraction',
  'currency',
  'priceChange_fraction_per_year',
  'oldRate_days',
  'costYears',
  'interest_fraction_per_year',
  'inflation_fraction_per_year',
  'workingService_fraction',
  'workingServiceLow_fraction',
  'workingServiceHigh_fraction',
  'cutWaste_mm',
  'boughtWater_L_per_person_per_day',
  'boughtWater_amount_per_L',
  'boiledWater_L_per_person_per_day',
  'fuel_amount_per_kg',
  'fuelHeat_MJ_per_kg',
  'stoveEfficiency_fraction',
  'pipedScheme_amount_per_person',
  'pipedScheme_years',
  'pipedScheme_amount_per_person_per_year',
  'rolloutStart',
  'rolloutHorizon_days',
  'mainStore',
  'mustHold',
  'installLow_days',
  'installLikely_days',
  'installHigh_days',
  'learning_fraction',
  'riverEnds_h',
  'changeOver_h',
  'porterLoad_kg',
  'fuelPrice_per_L',
  'openChance_fraction',
  'closedRain_mm',
  'gaugeReach_km',
  'leastYears',
  'missingDays_fraction',
  'waterYearStartMonth',
  'gapFilling',
  'wetDayAmounts',
  'madeYears',
  'dayOrder',
  'range_fraction',
  'draws',
  'seed',
] as const;

/** Links that are not told as foreign keys, for what they name is no key by itself or need not be there. */
const looseLinks: Readonly<Record<string, Readonly<Record<string, Link>>>> = {
  crews: { calendarId: { table: 'workCalendars', column: 'calendarId', ofSite: false, isOpen: false } },
  sites: {
    siteClass: { table: 'targets', column: 'siteClass', ofSite: false, isOpen: true },
    secondSourceId: { table: 'secondSources', column: 'secondSourceId', ofSite: false, isOpen: false },
    nearSecondSource: { table: 'secondSources', column: 'secondSourceId', ofSite: false, isOpen: false },
    presenceCalendar: { table: 'presence', column: 'calendarId', ofSite: false, isOpen: false },
  },
};

const settings: FormTable = {
  name: 'settings',
  key: [],
  columns: Object.fromEntries(settingFields.map((field) => [field, settingColumn(field)!])),
  links: {},
};

function tableOf(name: FolderTableName): FormTable {
  const { key, columns, foreignKeys } = folderTables[name];
  const links = foreignKeys.map(({ fields, table, tableFields }) => {
    const ofSite = fields.length > 1;
    return [fields.at(-1)!, { table, column: tableFields.at(-1)!, ofSite, isOpen: false }] as const;
  });
  return { name, key, columns, links: { ...Object.fromEntries(links), ...looseLinks[name] } };
}

/**
 * The table of a name, for a form.
 *
 * @param name - a table of the folder, or `settings` with all fields as the cells of one row [text]
 * @returns the table; null where there is none
 */
export function formTable(name: string): FormTable | null {
  if (name === 'settings') return settings;
  return Object.hasOwn(folderTables, name) ? tableOf(name as FolderTableName) : null;
}

/** Of the tables of a site, those whose rows without a siteId are the whole programme's. */
export const tablesOfBoth: ReadonlySet<string> = new Set(['demand', 'rawWater', 'barriers']);
