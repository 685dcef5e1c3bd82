import { countedIns, dangers, gutterShapes } from '@eavewell/engine';
import { above, choice, date, fraction, from, id, quantity, required, text, whole, yesNo } from './columns.ts';
import { reductionColumns } from './safety.ts';
import { defineTable } from './table.ts';

const size = { hard: above(0, 100) };

export const parts = defineTable({
  name: 'parts',
  about: 'The catalogue: what can be bought and carried.',
  key: ['partId'],
  usedBy: ['Water', 'Kit'],
  optional: true,
  columns: {
    partId: required(id('The id of the part.')),
    kind: required(
      choice(
        [
          'tank',
          'gutter',
          'outlet',
          'downpipe',
          'overflow',
          'diverter',
          'screen',
          'pipe',
          'valve',
          'meter',
          'tap',
          'pump',
          'stand',
          'treatmentUnit',
          'cartridge',
          'site',
          'other',
        ],
        'What sort of part it is; `site` is the kit of a whole site.',
      ),
    ),
    name: required(text('What the part is called.')),
    volume_L: quantity('L', 'Usable volume in litres, for a tank; up to 50 is taken for m³.', { hard: above(0, 1e7) }),
    mass_kg: quantity('kg', 'Mass of one.', { hard: above(0, 100000) }),
    length_m: quantity('m', 'Longest side, packed.', size),
    width_m: quantity('m', 'Second side, packed.', size),
    height_m: quantity('m', 'Third side, packed.', size),
    countedIn: choice(countedIns, 'What it is counted in.', 'piece'),
    bulk_L: quantity('L', 'Room it takes, packed, where its three sides are not all given.', { hard: above(0, 1e7) }),
    packSize: whole('piece', 'How many are sold together.', { hard: above(0, 100000) }),
    pieces_count: whole(
      'count',
      'Pieces one of it travels in, such as the shells of a tank: each with its share of mass and room, and as long as length_m.',
      {
        hard: from(1, 1000),
        emptyMeans: '1',
      },
    ),
    supplier: text('Who sells it.'),
    leadTime_days: whole('day', 'Days from order to arrival.', { hard: { low: 0, high: 3650 } }),
    stock_count: quantity('count', 'How many are in the store.', { hard: from(0, 1e9) }),
    stockCountedOn: date('The day they were counted.', '1950-01-01', '2150-12-31'),
    fragile: yesNo('May it break on the way?'),
    danger: choice(dangers, 'What it is kept away from other things for: chlorine, or fuel.'),
    life_years: quantity('year', 'For how long it serves.', { hard: above(0, 200), usual: from(1, 50) }),
    picture: text('The file of its picture.'),
    shape: choice(gutterShapes, 'The shape of a gutter in section.'),
    topWidth_mm: quantity('mm', 'Width of a gutter across its top, inside.', {
      hard: from(20, 1000),
      usual: from(60, 400),
    }),
    baseWidth_mm: quantity('mm', 'Width of its sole, inside, where that is not the width of its top.', {
      hard: from(10, 1000),
      usual: from(40, 300),
    }),
    depth_mm: quantity('mm', 'Depth of a gutter, inside.', { hard: from(10, 1000), usual: from(30, 300) }),
    bore_mm: quantity('mm', 'Inside diameter of a pipe, a downpipe, an outlet or an overflow.', {
      hard: from(4, 1000),
      usual: from(10, 250),
    }),
    cartridges: whole('count', 'Cartridges in parallel in a treatment unit.', {
      hard: from(1, 200),
      usual: from(1, 12),
    }),
    membraneArea_m2: quantity('m2', 'Membrane of all its cartridges.', {
      hard: above(0, 10000),
      usual: from(0.2, 200),
    }),
    permeability_L_per_m2_h_bar: quantity('L/m2/h/bar', 'What passes a square metre of clean membrane at 20 °C.', {
      hard: above(0, 20000),
      usual: from(20, 2000),
    }),
    ratedFlow_L_per_h: quantity('L/h', 'Flow of a clean set at the rated pressure and 20 °C.', {
      hard: above(0, 100000),
      usual: from(20, 10000),
    }),
    ratedPressure_kPa: quantity('kPa', 'The pressure its flow is rated at.', {
      hard: above(0, 2000),
      usual: from(2, 300),
    }),
    highestPressure_kPa: quantity('kPa', 'The highest pressure it may be given.', {
      hard: above(0, 2000),
      usual: from(20, 600),
    }),
    pore_nm: quantity('nm', 'Nominal pore, in millionths of a millimetre.', {
      hard: above(0, 10000),
      usual: from(5, 500),
      otherUnit: { unit: 'µm', high: 0.999, factor: 1000 },
    }),
    ratedLitres_L: quantity('L', 'Litres a set of cartridges is rated for.', {
      hard: above(0, 1e9),
      usual: from(10000, 1e7),
    }),
    ratedTurbidity_NTU: quantity('NTU', 'The turbidity those litres are rated at.', {
      hard: above(0, 1000),
      usual: from(0.2, 20),
    }),
    highestTurbidity_NTU: quantity('NTU', 'The highest turbidity it may be given.', {
      hard: above(0, 10000),
      usual: from(1, 500),
    }),
    lifeLimit_years: quantity('year', 'A set is changed after so long, whatever it passed.', {
      hard: above(0, 50),
      usual: from(0.5, 10),
    }),
    lowestFlow_L_per_h: quantity('L/h', 'Below this flow at the rated pressure and 20 °C a set is changed.', {
      hard: above(0, 100000),
      usual: from(10, 5000),
    }),
    backwash_fraction: fraction('Share of the treated litres that goes back through it to clean it.', {
      hard: from(0, 0.9),
      usual: from(0, 0.15),
    }),
    backwash_min_per_day: quantity('min/day', 'How long that takes in a day.', {
      hard: from(0, 600),
      usual: from(0, 60),
    }),
    pistonBore_mm: quantity('mm', 'Diameter of the piston of its hand pump.', {
      hard: above(0, 500),
      usual: from(20, 150),
    }),
    pistonStroke_mm: quantity('mm', 'How far the piston goes.', { hard: above(0, 1000), usual: from(30, 400) }),
    leverRatio: quantity('ratio', 'How many times longer the way of the hand is than that of the piston.', {
      hard: above(0, 50),
      usual: from(1, 12),
    }),
    ...reductionColumns,
  },
});
