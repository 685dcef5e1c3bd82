import { noTreatment, readyProgramme, type SiteTreatmentFacts, unmeasuredUnit, wearOf } from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { madeProgramme } from '../twins/madeSites.ts';

const runs = process.env['EAVEWELL_SOAK'] ? 5_000 : 150;

/** Figures as they should be, and as nobody should ever write them. */
const hostile = fc.constantFrom(Number.NaN, Infinity, -Infinity, -1, -0, 0, 5e-324, 1e-12, 1e12, 1e300);
const known = (usual: number) =>
  fc.oneof({ weight: 12, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constant(null) }, hostile);
const figure = (usual: number) => fc.oneof({ weight: 12, arbitrary: fc.constant(usual) }, hostile);
const day = known(20_900);
const serial = fc.constantFrom(null, 'U1', 'U2');

const figures = fc.record({
  ...Object.fromEntries(Object.entries(unmeasuredUnit).map(([name, value]) => [name, fc.constant(value)])),
  ratedFlow_L_per_h: known(900),
  ratedPressure_kPa: known(60),
  lowestFlow_L_per_h: known(300),
  membraneArea_m2: known(3),
  permeability_L_per_m2_h_bar: known(400),
  ratedLitres_L: known(200_000),
  ratedTurbidity_NTU: known(5),
  highestTurbidity_NTU: known(50),
  lifeLimit_years: known(3),
  backwash_fraction: known(0.04),
});
const treatment = fc.record({
  units: fc.array(
    fc.record({
      ...{ serial: fc.constantFrom('U1', 'U2'), partId: fc.constant(null), installedOn: day },
      ...{ figures: fc.oneof({ weight: 8, arbitrary: figures }, fc.constant(null)), removedOn: fc.constant(null) },
    }),
    { maxLength: 2 },
  ),
  cartridges: fc.array(
    fc.record({
      ...{ serial: fc.constant('C1'), unitSerial: serial, partId: fc.constant(null), batch: fc.constant(null) },
      ...{ installedOn: day, removedOn: fc.constantFrom(null, 21_000), reason: fc.constant(null) },
    }),
    { maxLength: 2 },
  ),
  flowReadings: fc.array(
    fc.record({
      ...{ unitSerial: serial, readOn: figure(21_100), flow_L_per_h: figure(700), pressure_kPa: known(55) },
      ...{ waterTemperature_C: known(24), passed_L: known(60_000) },
    }),
    { maxLength: 3 },
  ),
  pressureTests: fc.constant([]),
});

/** Every number in a value that is none one can show. */
function strange(value: unknown, path: string): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => strange(one, `${path}.${name}`));
}

it('whatever is written of units, cartridges and readings, there are dates or reasons, and no figure that is none', () => {
  const made = madeProgramme(3);
  const settings = { ...made.settings, futures: 50, roofTurbidity_NTU: 2, cartridgeFailures_per_year: 0.1 };
  const ready = readyProgramme({ ...made, settings }, { today: 21_200 });
  let dated = 0;
  fc.assert(
    fc.property(treatment, (told) => {
      const facts = { ...noTreatment, ...told } as unknown as SiteTreatmentFacts;
      const { finding, problems } = wearOf({ ...made.site, treatment: facts }, ready);
      for (const one of finding ?? []) {
        if (one.endsOn !== null) dated++;
        expect(one.endsOn === null).toBe(one.unknownBy !== null);
        if (one.unknownBy !== null) expect(problems.map(({ code }) => code)).toContain(one.unknownBy);
      }
      expect(strange(finding, 'finding')).toEqual([]);
    }),
    { numRuns: runs, seed: 20261126 },
  );
  expect(dated).toBeGreaterThan(runs / 10);
});
