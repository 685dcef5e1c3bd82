import {
  type DesignSettings,
  explain,
  type PathogenRisk,
  type Reductions,
  type SafetyFinding,
  type SourceDays,
  type WaterOfYear,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { referencePathogens, yearOfDrinking_days } from './constants.ts';
import { type Drinkers, germOf } from './safetyRisks.ts';

/** Adds one line of a working. */
type Line = (
  code: WorkingCode,
  value: WorkingLine['value'],
  unit: string,
  inputs: readonly WorkingInput[],
  source?: string,
) => void;

/** Writes down how each figure of a safety finding was reached. It computes nothing: every value is taken from the finding. */
export function safetyWorking(f: SafetyFinding, drinkers: Drinkers, settings: DesignSettings): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line: Line = (code, value, unit, inputs, source = 'definition') =>
    explain(lines, { code, value, unit, inputs, source });
  for (const barrier of f.barriers)
    line(
      'safety.barrier',
      barrier.barrierId ?? barrier.kind,
      'text',
      [
        workingInput('barrierKind', barrier.kind, ''),
        workingInput('evidence', barrier.evidence, ''),
        ...classes(barrier.credited),
      ],
      'who-gdwq-4, Table 7.8 (from memory)',
    );
  const credited = classes(f.credited);
  line('safety.credited', worst(f.credited), 'log10', credited, 'who-hwt-2011, barriers in a row (from memory)');
  const leak = workingInput('leak', settings.leak_fraction, 'fraction');
  if (f.leaking !== null) line('safety.leaking', worst(f.leaking), 'log10', [...classes(f.leaking), leak]);
  const habits = [
    workingInput('skipping', f.skipping_fraction ?? 'unknown', 'fraction'),
    workingInput('daysOff', f.daysOff_per_year ?? 'unknown', 'days_per_year'),
    workingInput('comesBack', settings.recontamination_fraction ?? 'unknown', 'fraction'),
  ];
  line(
    'safety.effective',
    worst(f.effective),
    'log10',
    [...classes(f.effective), ...habits],
    'enger-2013, mean of the dose',
  );
  line('safety.tier', f.tier, 'count', credited, 'who-hwt-2011, performance tiers (from memory)');
  if (f.sourceDays !== null) sourceLine(line, f.sourceDays);
  for (const risk of f.risks) riskLines(line, risk, creditedFor(risk, f.credited), habits, drinkers, settings);
  if (f.boilsAt_C !== null) line('safety.boils', f.boilsAt_C, 'C', []);
  line('safety.verdict', f.verdict, '', [
    workingInput('target', f.target_DALY_per_person_per_year, 'DALY_per_person_per_year'),
    workingInput('mayDrink', f.mayDrink, ''),
    workingInput('cleanSamples', f.waterTests.clean_count, 'count'),
  ]);
  return lines;
}

function riskLines(
  line: Line,
  risk: PathogenRisk,
  credited_log10: number,
  habits: readonly WorkingInput[],
  { groups }: Drinkers,
  settings: DesignSettings,
): void {
  const chain = 'who-gdwq-4, Table 7.4 (from memory)';
  const germ = workingInput('germ', risk.pathogen, '');
  const litres = workingInput('litresDrunk', settings.litresDrunk_L_per_person_per_day, 'L_per_person_per_day');
  const comesBack = workingInput('comesBack', settings.recontamination_fraction ?? 'unknown', 'fraction');
  const reduction = workingInput('reduction', credited_log10, 'log10');
  const waters = risk.waters.map((of) => ({ ...of, said: waterOf(of) }));
  for (const { said, raw_per_L, rawHigh_per_L, drinking_per_L } of waters) {
    const high = workingInput('high', rawHigh_per_L ?? 'unknown', 'per_L');
    line('safety.raw', raw_per_L, 'per_L', [germ, ...said, high], 'survey');
    const raw = workingInput('raw', raw_per_L, 'per_L');
    line('safety.drinking', drinking_per_L, 'per_L', [germ, ...said, raw, reduction, comesBack], chain);
  }
  // What is drunk every day needs no telling; two waters are told with their days.
  const each = waters.flatMap(({ said, raw_per_L }) => [
    ...(waters.length > 1 || risk.waters[0]!.days_per_year < yearOfDrinking_days ? said : []),
    workingInput('raw', raw_per_L, 'per_L'),
  ]);
  const highs = waters.map(({ rawHigh_per_L }) => workingInput('high', rawHigh_per_L ?? 'unknown', 'per_L'));
  const { illness_fraction, burden_DALY_per_case, susceptible_fraction } = germOf(risk.pathogen, settings);
  const illOfInfected = workingInput('illOfInfected', illness_fraction, 'fraction');
  const ofCase = [
    workingInput('burdenOfCase', burden_DALY_per_case, 'DALY_per_case'),
    workingInput('susceptible', susceptible_fraction, 'fraction'),
  ];
  const people = workingInput('groups', groups.filter(({ people_factor }) => people_factor > 0).length, 'count');
  const days = workingInput('days', yearOfDrinking_days, 'days');
  line(
    'safety.infectionYear',
    risk.infection_per_year,
    'fraction',
    [germ, ...each, litres, days, people, ...habits],
    chain,
  );
  const infected = workingInput('infected', risk.infection_per_year, 'fraction');
  line('safety.illness', risk.illness_per_year, 'fraction', [germ, infected, illOfInfected], chain);
  const ill = workingInput('ill', risk.illness_per_year, 'fraction');
  line('safety.daly', risk.DALY_per_person_per_year, 'DALY_per_person_per_year', [germ, ill, ...ofCase], chain);
  line('safety.dalyRange', risk.DALYHigh_per_person_per_year, 'DALY_per_person_per_year', [
    ...[germ, ...highs],
    workingInput('litresDrunkHigh', settings.litresDrunkHigh_L_per_person_per_day, 'L_per_person_per_day'),
    workingInput('seed', settings.seed, ''),
  ]);
  const target = settings.healthTarget_DALY_per_person_per_year;
  line(
    'safety.needed',
    risk.needed_log10,
    'log10',
    [germ, ...each, litres, days, illOfInfected, ...ofCase, workingInput('target', target, 'DALY_per_person_per_year')],
    chain,
  );
}

/** A water and its days of the year. */
function waterOf({ secondSourceId, days_per_year }: WaterOfYear): readonly WorkingInput[] {
  return [
    workingInput('water', secondSourceId ?? 'roofWater', ''),
    workingInput('daysDrunk', days_per_year, 'days_per_year'),
  ];
}

/** On how many days the second source is drunk. */
function sourceLine(line: Line, { secondSourceId, days_per_year: days, days_per_year_range: range }: SourceDays): void {
  line('safety.sourceDays', days, 'days_per_year', [
    workingInput('water', secondSourceId, ''),
    workingInput('daysLow', range?.low ?? 'unknown', 'days_per_year'),
    workingInput('daysHigh', range?.high ?? 'unknown', 'days_per_year'),
  ]);
}

/** What is credited of the class of a germ. */
function creditedFor({ pathogen }: PathogenRisk, credited: Reductions): number {
  return credited[`${referencePathogens[pathogen].germs}_log10`];
}

function classes({ bacteria_log10, viruses_log10, protozoa_log10 }: Reductions): readonly WorkingInput[] {
  return [
    workingInput('bacteria', bacteria_log10, 'log10'),
    workingInput('viruses', viruses_log10, 'log10'),
    workingInput('protozoa', protozoa_log10, 'log10'),
  ];
}

/** The least of the three. */
function worst({ bacteria_log10, viruses_log10, protozoa_log10 }: Reductions): number {
  return Math.min(bacteria_log10, viruses_log10, protozoa_log10);
}
