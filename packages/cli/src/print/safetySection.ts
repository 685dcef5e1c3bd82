import type { PathogenRisk, SafetyFinding, WaterTestFinding, WaterTestsFinding } from '@eavewell/engine';
import { sourceOfRisk } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { safety: words } = spoken.commandLine;
const { numbers } = spoken;

/** What may be said of drinking the water, its barriers, its germs, its samples, and what to do where a test fails. */
export function safetySection(sheet: Sheet, f: SafetyFinding): void {
  sheet.heading(words.heading);
  sheet.line(spoken.findings.safety(f), 2);
  if (f.needsTest.length > 0) sheet.line(words.testWanted(f.needsTest), 2);
  barriers(sheet, f);
  if (f.risks.length > 0) {
    sheet.line(words.risksAbout, 2);
    sheet.table(
      words.riskColumns.map((head, index) => ({ head, align: index < 2 ? 'left' : 'right' }) as const),
      f.risks.map((risk) => riskRow(risk, f)),
    );
  }
  sheet.line(spoken.findings.waterTests(f.waterTests), 2);
  if (f.waterTests.tests.length > 0)
    sheet.table(
      words.testColumns.map((head, index) => ({ head, align: index === 2 ? 'right' : 'left' }) as const),
      f.waterTests.tests.map((test) => testRow(test, f.waterTests)),
    );
  if (f.chlorine !== null) sheet.line(spoken.findings.chlorine(f.chlorine), 2);
  if (f.boilsAt_C !== null) sheet.line(words.boils(f.boilsAt_C), 2);
  sheet.line(words.testFails, 2);
}

function barriers(sheet: Sheet, { barriers: row }: SafetyFinding): void {
  if (row.length === 0) return;
  const steps = (value: number) => numbers.quantity(value, 'log10');
  sheet.table(
    words.barrierColumns.map((head, index) => ({ head, align: index < 2 ? 'left' : 'right' }) as const),
    row.map((barrier) => [
      words.barrier(barrier),
      words.evidence(barrier.evidence),
      steps(barrier.credited.bacteria_log10),
      steps(barrier.credited.viruses_log10),
      steps(barrier.credited.protozoa_log10),
    ]),
  );
}

function riskRow(risk: PathogenRisk, f: SafetyFinding): readonly string[] {
  const years = words.lostYears;
  return [
    words.pathogen(risk.pathogen),
    words.water(sourceOfRisk(risk, f)),
    years(risk.DALY_per_person_per_year),
    years(risk.DALYHigh_per_person_per_year),
    years(f.target_DALY_per_person_per_year),
  ];
}

function testRow(test: WaterTestFinding, { unusable }: WaterTestsFinding): readonly string[] {
  const isUnread = unusable.some(({ testId }) => testId === test.testId);
  const day = numbers.date(test.takenOn);
  return [
    test.isBeforeHandOver ? words.beforeHandOver(day) : day,
    words.point(test.point),
    words.count(test, isUnread),
    words.band(test.band),
  ];
}
