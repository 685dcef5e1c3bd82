/**
 * Every fault that joining the tables of the rollout can find: places, ways, rivers, crews, goods and what sites ask for. value: what
 * stands there. None of them leaves the water of a site in doubt.
 */
export const rolloutProblems = {
  // Links. likely: the nearest known id, or ''.
  'link.unknown_store': 'blocker',
  'link.unknown_carrier': 'blocker',
  'link.unknown_way': 'blocker',
  'link.unknown_crew': 'blocker',
  'link.unknown_work_calendar': 'blocker',
  'link.unknown_river_gauge': 'blocker', // a gauge without readings
  'link.area_unused': 'warning', // an area that no way and no site names
  'link.skill_unused': 'warning', // a skill that no crew has
  // Ways and when they are closed.
  'rollout.way_to_itself': 'blocker',
  'rollout.way_unfinished': 'warning', // value: the way; missing: names of empty cells; it is on the map and in no plan
  'rollout.closure_of_nothing': 'blocker',
  'rollout.closure_when': 'blocker', // how: none, both or half of months and dates
  'rollout.dates_turned': 'blocker', // from, to [ISO day]
  // Rivers.
  'rollout.level_unlikely': 'blocker', // value: the first; gauge, likely, median, count of readings not used
  'rollout.levels_turned': 'blocker', // least, greatest
  'rollout.limit_unlikely': 'warning', // value: the limit; low, high: levels read; likely
  // Stores, crews and goods.
  'rollout.stores_in_circle': 'blocker', // stores: their ids, in the order they fill each other
  'rollout.store_without_carrier': 'warning',
  'rollout.crew_without_carrier': 'warning',
  'rollout.calendar_overlaps': 'blocker', // other: the row it overlaps with
  'rollout.cost_unfinished': 'warning', // value: the cost; missing: currency or priceDate, or both; isOnce: yes or no, a day
  'rollout.range_turned': 'blocker', // low, likely, high
  // Kept plans, and what is away.
  'link.unknown_plan': 'blocker',
  'link.unknown_trip': 'blocker', // of the plan of its row
  'rollout.plan_without_trips': 'note',
  'rollout.plans_in_force': 'warning', // value: one that is not taken as in force; used: the one that is
  'rollout.back_before_left': 'blocker', // value: the trip; left, back [ISO day]
  'rollout.back_without_left': 'warning', // value: the trip; used: the day it is taken to have left
  'rollout.handed_over_outside': 'warning', // value: the day; trip, left, back [ISO day]
  'rollout.more_away_than_there': 'warning', // value: how many; there: how many there are
  // Sites.
  'rollout.deadline_before_ready': 'warning', // ready: the day it is ready
  'rollout.priority_unexplained': 'warning',
} as const;
