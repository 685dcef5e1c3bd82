import { expect } from 'vitest';
import { but, day, type PlantedRollout } from './rolloutFolder.ts';

/** Faults of kept plans and of carriers that are away. */
export const faultsOfPlans: readonly PlantedRollout[] = [
  {
    fault: 'trips and stops of a plan that is not there',
    files: but('plans.csv', ['P2,With', 'P3,With']),
    problems: [
      'link.unknown_plan blocker @ planTrips.csv 4 planId = "P2"',
      'link.unknown_plan blocker @ planStops.csv 4 planId = "P2"',
      'link.unknown_plan blocker @ planStops.csv 5 planId = "P2"',
      'rollout.plan_without_trips note @ plans.csv 3 planId = "P3"',
    ],
    notUsed: [
      'planTrips.csv 4 whole link.unknown_plan',
      'planStops.csv 4 whole link.unknown_plan',
      'planStops.csv 5 whole link.unknown_plan',
    ],
    left: { trips: 2, stops: 2 },
  },
  {
    fault: 'a trip of a crew that is not there: the sites of it are in no trip',
    files: but('planTrips.csv', ['T2,east', 'T2,eest']),
    problems: ['link.unknown_crew blocker @ planTrips.csv 3 crewId = "eest"'],
    notUsed: ['planTrips.csv 3 whole link.unknown_crew', 'planStops.csv 3 whole link.unknown_trip'],
    left: { trips: 2, stops: 3 },
    shows: (_, { problems }) => expect(problems[0]!.facts['likely']).toBe('east'),
  },
  {
    fault: 'a stop of a trip that another plan has, and one of a site that is not there',
    files: but('planStops.csv', ['P2,S002,T1', 'P2,S002,T2'], ['P1,S001', 'P1,S009']),
    problems: [
      'link.unknown_site blocker @ planStops.csv 2 siteId = "S009"',
      'link.unknown_trip blocker @ planStops.csv 4 tripId = "T2"',
    ],
    notUsed: ['planStops.csv 2 whole link.unknown_site', 'planStops.csv 4 whole link.unknown_trip'],
    left: { stops: 2 },
  },
  {
    fault: 'a site twice in one plan',
    files: but('planStops.csv', ['P1,S002,T2', 'P1,S001,T2']),
    problems: ['row.key_twice blocker @ planStops.csv 3 siteId = "P1 S001"'],
    notUsed: ['planStops.csv 3 whole row.key_twice'],
    left: { stops: 3 },
  },
  {
    fault: 'a trip and a stop without their order',
    files: {
      ...but('planTrips.csv', ['east,1.5', 'east,']),
      'planStops.csv': but('planStops.csv', ['P2,S001,T1,1', 'P2,S001,T1,'])['planStops.csv']!,
    },
    problems: [
      'cell.missing blocker @ planTrips.csv 3 order = ""',
      'cell.missing blocker @ planStops.csv 5 order = ""',
    ],
    notUsed: [
      'planTrips.csv 3 whole cell.missing',
      'planStops.csv 5 whole cell.missing',
      'planStops.csv 3 whole link.unknown_trip',
    ],
    left: { trips: 2, stops: 2 },
  },
  {
    fault: 'a plan without trips',
    files: but('plans.csv', ['the board', 'the board\nP3,Third,,,,']),
    problems: ['rollout.plan_without_trips note @ plans.csv 4 planId = "P3"'],
    notUsed: [],
    left: { plans: 3 },
  },
  {
    fault: 'two plans in force: the one whose days were worked out last is followed',
    files: but('plans.csv', ['2027-01-04,,', '2027-01-04,yes,']),
    problems: ['rollout.plans_in_force warning @ plans.csv 2 isInForce = "P1"'],
    notUsed: ['plans.csv 2 isInForce rollout.plans_in_force'],
    shows: ({ plans }, { problems }) => {
      expect(plans.map(({ isInForce }) => isInForce)).toEqual([false, true]);
      expect(problems[0]!.facts['used']).toBe('P2');
    },
  },
  {
    fault: 'two plans in force of which one was never worked out',
    files: but('plans.csv', ['2027-01-04,,2026-12-21T08:00:00Z', '2027-01-04,yes,soon']),
    problems: ['rollout.plans_in_force warning @ plans.csv 3 isInForce = "P2"'],
    notUsed: ['plans.csv 3 isInForce rollout.plans_in_force'],
    shows: ({ plans }) => expect(plans.map(({ isInForce }) => isInForce)).toEqual([true, false]),
  },
  {
    fault: 'a trip back before it left',
    files: but('planTrips.csv', ['2027-02-23,2027-03-06', '2027-03-06,2027-02-23']),
    problems: ['rollout.back_before_left blocker @ planTrips.csv 2 backOn = "T1"'],
    notUsed: ['planTrips.csv 2 backOn rollout.back_before_left'],
    shows: ({ plans }) => expect(plans[0]!.trips[0]).toMatchObject({ leftOn: day('2027-03-06'), backOn: null }),
  },
  {
    fault: 'a trip back that nobody says left',
    files: but('planTrips.csv', ['2027-02-23,2027-03-06', ',2027-03-06']),
    problems: ['rollout.back_without_left warning @ planTrips.csv 2 backOn = "T1"'],
    notUsed: [],
    shows: (_, { problems }) => expect(problems[0]!.facts['used']).toBe('2027-02-22'),
  },
  {
    fault: 'a site handed over when the trip to it was not away',
    files: but('planTrips.csv', ['2027-02-23,2027-03-06', '2027-03-02,2027-03-06']),
    problems: ['rollout.handed_over_outside warning @ planStops.csv 2 siteId = "2027-03-01"'],
    notUsed: [],
  },
  {
    fault: 'carriers away until before they are, more than there are, and of no table',
    files: but(
      'carriersAway.csv',
      ['2027-03-08,2027-03-19', '2027-03-19,2027-03-08'],
      ['truck,1,2027-06-01,,\n', 'truck,3,2027-06-01,,\nB3,ship,,2027-06-01,,\n'],
    ),
    problems: [
      'link.unknown_carrier blocker @ carriersAway.csv 4 carrierId = "ship"',
      'rollout.dates_turned blocker @ carriersAway.csv 2 to = "B1"',
      'rollout.more_away_than_there warning @ carriersAway.csv 3 count = "3"',
    ],
    notUsed: ['carriersAway.csv 4 whole link.unknown_carrier', 'carriersAway.csv 2 whole rollout.dates_turned'],
    left: { carriersAway: 1 },
  },
];
