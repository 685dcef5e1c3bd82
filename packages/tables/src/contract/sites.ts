import { windExposures } from '@eavewell/engine';
import { above, choice, date, fraction, from, id, months, quantity, required, text, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

const [firstDay, lastDay] = ['1950-01-01', '2150-12-31'] as const;
const installDays = { hard: above(0, 1000), usual: from(0.25, 30), emptyMeans: 'as settings.json says' };

export const sites = defineTable({
  name: 'sites',
  about: 'The places that are to drink from their own roofs.',
  key: ['siteId'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Sites', 'Water'],
  columns: {
    siteId: required(id('The id of the site.')),
    name: required(text('What the site is called.')),
    latitude_deg: quantity('deg', 'Latitude, north positive, WGS 84.', { hard: from(-90, 90) }),
    longitude_deg: quantity('deg', 'Longitude, east positive, WGS 84.', { hard: from(-180, 180) }),
    people: whole(
      'person',
      'People who drink there: as counted where growth is stated, else those of the design year.',
      {
        hard: from(1, 100000),
        usual: from(10, 3000),
      },
    ),
    gaugeId: id('The gauge whose rain falls on the site.', 'the gauges within reach of its position'),
    rainFactor: quantity('ratio', "What the gauge's rain is multiplied by for the site.", {
      hard: above(0, 5),
      usual: from(0.5, 2),
      emptyMeans: '1',
    }),
    handOverDay: date('The day the site is handed over with an empty tank.', '1950-01-01', '2150-12-31'),
    rationBelow_fraction: fraction('Water is rationed while less than this share of the usable volume is in the tank.'),
    rationedJudged_fraction: fraction(
      'Share of the judged litres still given then; a day that cuts them is a dry day.',
      {
        emptyMeans: '1, where water is rationed',
      },
    ),
    rationedOther_fraction: fraction('Share of the other litres still given then.', {
      emptyMeans: '1, where water is rationed',
    }),
    siteClass: id('What sort of site it is, in your own words, such as village, school or clinic.', 'none'),
    peopleCountedOn: date('The day the people were counted; growth runs from its year.', '1950-01-01', '2150-12-31'),
    growthFraction_per_year: fraction(
      'What the people become more by in a year, as a share; under 0 they become fewer.',
      {
        hard: from(-0.5, 0.5),
        usual: from(-0.05, 0.1),
        emptyMeans: 'as settings.json says',
      },
    ),
    designYear: whole('year', 'The year whose people it is designed for.', {
      hard: from(1950, 2200),
      usual: from(2000, 2080),
      emptyMeans: 'so many years after hand-over, as settings.json says',
    }),
    households: whole('count', 'Households, for where the people were not counted.', {
      hard: from(1, 20000),
      usual: from(2, 600),
    }),
    secondSourceId: id('The source people fall back on when the tank is empty.', 'none'),
    presenceCalendar: id('The calendar of who is there when.', 'everyone, all the year'),
    area: text('The area it lies in, such as a district, an island or a valley: to find and choose sites by.'),
    nearSecondSource: id(
      'A source near by that people could fall back on and do not yet: looked at among the remedies.',
      'none',
    ),
    taps: whole('count', 'Taps at the treatment unit.', { hard: from(1, 200), usual: from(1, 12) }),
    tapHeight_m: quantity('m', "Height of the taps' mouths above the ground the tanks stand on; under 0 below it.", {
      hard: from(-100, 30),
      usual: from(-5, 2),
    }),
    unitHeight_m: quantity('m', 'Height of the inlet of the treatment unit above that ground; under 0 below it.', {
      hard: from(-100, 30),
      usual: from(-5, 3),
    }),
    handPump: yesNo('Does the treatment unit have a hand pump?'),
    windSpeed_m_per_s: quantity('m/s', 'The wind stands are held against, in metres a second.', {
      hard: from(0, 1000),
      usual: from(15, 80),
      emptyMeans: 'as settings.json says',
    }),
    windExposure: choice(
      windExposures,
      'How open it lies to the wind: among houses and trees, in open country, or by open water.',
      'as settings.json says',
    ),
    skipping_fraction: fraction('Share of the people who drink untreated water.', {
      emptyMeans: 'as settings.json says',
    }),
    daysOff_per_year: quantity('day/year', 'Days of a year on which nobody’s water is treated.', {
      hard: from(0, 366),
      usual: from(0, 60),
      emptyMeans: 'as settings.json says',
    }),
    altitude_m: quantity('m', 'Height above the sea, for boiling.', { hard: from(-450, 6000), usual: from(0, 4500) }),
    place: id('The place or site at which it hangs on the ways.', 'the site itself'),
    weatherArea: id('The area whose weather it has, in your own words; ways and sites of one area share it.', 'none'),
    readyFrom: date('The first day the community is ready for the work.', firstDay, lastDay),
    finishBy: date('The day by which it should be handed over.', firstDay, lastDay),
    workMonths: months('The months in which work may be done there, by number.', 'all'),
    priority_factor: quantity('ratio', 'Its people count so many times in the plan of who is served first.', {
      hard: above(0, 1000),
      usual: from(0.2, 10),
      emptyMeans: '1',
    }),
    priorityReason: text('Why it comes first.'),
    agreedOn: date('The day the community agreed.', firstDay, lastDay),
    installLow_days: quantity('day', 'Days of work for a crew at the least.', installDays),
    installLikely_days: quantity('day', 'Days of work for a crew most likely.', installDays),
    installHigh_days: quantity('day', 'Days of work for a crew at the most.', installDays),
    skill: id('What its crew must be able to do, as crews.csv says it.', 'nothing in particular'),
  },
});
