import { expect } from 'vitest';
import { but, type PlantedRollout } from './rolloutFolder.ts';

/** Faults of crews, goods, costs, sites and settings. */
export const faultsOfCrews: readonly PlantedRollout[] = [
  {
    fault: 'a crew whose base is nowhere',
    files: but('crews.csv', ['East crew,store,', 'East crew,stores,']),
    problems: ['link.unknown_place blocker @ crews.csv 2 base = "stores"'],
    notUsed: ['crews.csv 2 whole link.unknown_place'],
    left: { crews: 1 },
  },
  {
    fault: 'a crew without a base',
    files: but('crews.csv', ['East crew,store,', 'East crew,,']),
    problems: ['cell.missing blocker @ crews.csv 2 base = ""'],
    notUsed: ['crews.csv 2 whole cell.missing'],
    left: { crews: 1 },
  },
  {
    fault: 'a crew that leaves before it comes',
    files: but('crews.csv', ['2027-01-04,,120', '2027-01-04,2026-12-01,120']),
    problems: ['rollout.dates_turned blocker @ crews.csv 2 to = "east"'],
    notUsed: ['crews.csv 2 whole rollout.dates_turned'],
    left: { crews: 1 },
  },
  {
    fault: 'days of the week in words',
    files: but('crews.csv', ['sat;sun', 'Saturday and Sunday'], ['feasts,sun', 'feasts,Sunday']),
    problems: [
      'cell.not_weekdays blocker @ crews.csv 2 restDays = "Saturday and Sunday"',
      'cell.not_weekdays blocker @ crews.csv 3 restDays = "Sunday"',
    ],
    notUsed: ['crews.csv 2 restDays cell.not_weekdays', 'crews.csv 3 restDays cell.not_weekdays'],
    shows: ({ crews }, { problems }) => {
      expect(crews.map(({ restDays }) => restDays)).toEqual([[], []]);
      expect(problems.map(({ facts }) => facts['likely'])).toEqual(['', 'sun']);
    },
  },
  {
    fault: 'a calendar that is not there, and periods of one that share a day',
    files: {
      ...but('workCalendars.csv', ['2027-06-05', '2027-04-16']),
      'crews.csv': but('crews.csv', ['masonry,feasts', 'masonry,feast'])['crews.csv']!,
    },
    problems: [
      'rollout.calendar_overlaps blocker @ workCalendars.csv 3 from = "feasts"',
      'link.unknown_work_calendar blocker @ crews.csv 2 calendarId = "feast"',
    ],
    notUsed: [
      'workCalendars.csv 3 whole rollout.calendar_overlaps',
      'crews.csv 2 calendarId link.unknown_work_calendar',
    ],
    left: { calendars: 1 },
  },
  {
    fault: 'a period of a calendar that ends before it begins',
    files: but('workCalendars.csv', ['2027-04-12,2027-04-16', '2027-04-16,2027-04-12']),
    problems: ['rollout.dates_turned blocker @ workCalendars.csv 2 to = "feasts"'],
    notUsed: ['workCalendars.csv 2 whole rollout.dates_turned'],
    left: { calendars: 1 },
  },
  {
    fault: 'a crew whose only carrier is not there',
    files: but('crewCarriers.csv', ['west,boat', 'west,barge\nnorth,boat']),
    problems: [
      'link.unknown_crew blocker @ crewCarriers.csv 5 crewId = "north"',
      'link.unknown_carrier blocker @ crewCarriers.csv 4 carrierId = "barge"',
      'rollout.crew_without_carrier warning @ crews.csv 3 crewId = "west"',
    ],
    notUsed: ['crewCarriers.csv 5 whole link.unknown_crew', 'crewCarriers.csv 4 whole link.unknown_carrier'],
    shows: ({ crews }) => expect(crews[1]!.carrierIds).toEqual([]),
  },
  {
    fault: 'goods that are no part, go nowhere, or are fewer than none',
    files: but(
      'arrivals.csv',
      ['store,tank-5,12', 'store,tank-55,12'],
      ['A2,store,gutter-4,60,2026-11-02,,,', 'A2,stores,gutter-4,60,2026-11-02,,,\nA3,store,gutter-4,-5,2026-11-02,,,'],
    ),
    problems: [
      'cell.out_of_range blocker @ arrivals.csv 4 quantity = "-5"',
      'link.unknown_store blocker @ arrivals.csv 3 store = "stores"',
      'link.unknown_part blocker @ arrivals.csv 2 partId = "tank-55"',
    ],
    notUsed: [
      'arrivals.csv 4 whole cell.out_of_range',
      'arrivals.csv 3 whole link.unknown_store',
      'arrivals.csv 2 whole link.unknown_part',
    ],
    left: { arrivals: 0 },
  },
  {
    fault: 'goods that are later at the least than at the most',
    files: but('arrivals.csv', ['0,5,20', '20,5,0']),
    problems: ['rollout.range_turned blocker @ arrivals.csv 2 slipLikely_days = "5"'],
    notUsed: ['arrivals.csv 2 slipLikely_days rollout.range_turned'],
    shows: ({ arrivals }) => expect(arrivals[0]!.slip_days).toEqual({ low: 0, likely: 0, high: 0 }),
  },
  {
    fault: 'a cost without a currency, one without a day',
    files: {
      ...but('carriers.csv', ['60,USD', '60,']),
      'crews.csv': but('crews.csv', ['120,USD,2026-02-01', '120,USD,'])['crews.csv']!,
    },
    problems: [
      'rollout.cost_unfinished warning @ carriers.csv 2 cost_per_day = "60"',
      'rollout.cost_unfinished warning @ crews.csv 2 cost_per_day = "120"',
    ],
    notUsed: [],
    shows: ({ travel, crews }) => expect([travel[0]!.cost_per_day, crews[0]!.cost_per_day]).toEqual([null, null]),
  },
  {
    fault: 'a cost of a currency there is no rate of: not known, and never the same number',
    files: but('carriers.csv', ['60,USD', '60,XTS']),
    problems: ['money.rate_missing warning @ carriers.csv 2 cost_per_day = undefined'],
    notUsed: [],
    shows: ({ travel }) => expect(travel.map(({ cost_per_day }) => cost_per_day)).toEqual([null, 45]),
  },
  {
    fault: 'a site that hangs on nothing',
    files: but('sites.csv', ['2027-05-15,jetty', '2027-05-15,jety']),
    problems: ['link.unknown_place blocker @ sites.csv 4 place = "jety"'],
    notUsed: ['sites.csv 4 place link.unknown_place'],
    shows: ({ work }) => expect(work[2]!.place).toBe('S003'),
  },
  {
    fault: 'a site to be handed over before it is ready',
    files: but('sites.csv', ['2027-09-30', '2027-01-09']),
    problems: ['rollout.deadline_before_ready warning @ sites.csv 2 finishBy = "2027-01-09"'],
    notUsed: [],
  },
  {
    fault: 'a site that comes first, and nobody says why',
    files: but('sites.csv', ['clinic without water', '']),
    problems: ['rollout.priority_unexplained warning @ sites.csv 2 priorityReason = 2'],
    notUsed: [],
  },
  {
    fault: 'days of work the wrong way round, and a skill no crew has',
    files: but('sites.csv', ['1,2,5,masonry', '5,2,1,plumbing']),
    problems: [
      'rollout.range_turned blocker @ sites.csv 2 installLikely_days = "2"',
      'link.skill_unused warning @ sites.csv 2 skill = "plumbing"',
    ],
    notUsed: ['sites.csv 2 installLikely_days rollout.range_turned'],
    shows: ({ work }) => expect(work[0]!.install_days).toBeNull(),
  },
  {
    fault: 'cells of a site that cannot be read: its water is judged all the same',
    files: but('sites.csv', ['4 to 10,2,', 'dry season,many,'], ['2027-01-10', 'soon']),
    problems: [
      'cell.not_a_date blocker @ sites.csv 2 readyFrom = "soon"',
      'cell.not_months blocker @ sites.csv 2 workMonths = "dry season"',
      'cell.not_a_number blocker @ sites.csv 2 priority_factor = "many"',
    ],
    notUsed: [
      'sites.csv 2 readyFrom cell.not_a_date',
      'sites.csv 2 workMonths cell.not_months',
      'sites.csv 2 priority_factor cell.not_a_number',
    ],
    shows: ({ work }) => expect(work[0]).toMatchObject({ readyFrom: null, workMonths: [], priority_factor: 1 }),
  },
  {
    fault: 'settings of the rollout that cannot be used',
    files: but('settings.json', ['"2027-01-04"', '"04/01/2027", "installLow_days": 9'], ['"store"', '"stores"']),
    problems: [
      'settings.wrong_value blocker @ settings.json - rolloutStart = "\\"04/01/2027\\""',
      'rollout.range_turned blocker @ settings.json - installLikely_days = 2',
      'link.unknown_store blocker @ settings.json - mainStore = "stores"',
    ],
    notUsed: [],
    shows: (_, { facts: { settings } }) => {
      expect(settings).toMatchObject({ rolloutStart: null, mainStore: null });
      expect([settings.installLow_days, settings.installLikely_days, settings.installHigh_days]).toEqual([1, 2, 4]);
    },
  },
];
