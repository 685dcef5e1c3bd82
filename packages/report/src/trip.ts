/** What a page of one trip needs, and nothing of reports. */
export { daysOfTrip, type TripDated, type TripDay, type TripEvent } from './rolloutDays.ts';
export {
  type AboardLine,
  type LimitBy,
  loadOfTrip,
  type StopLoad,
  type TripLoad,
  type TripLoaded,
} from './rolloutLoad.ts';
export { kg } from './rolloutLoadSaid.ts';
