export * from './changeRecord.ts';
export { type Absent, changesBetween, type WantedRows } from './changesBetween.ts';
export { type CellConflict, type Conflict, Facts, foldRecords, type RowConflict } from './foldRecords.ts';
export { type CellHistory, historyOf } from './historyOf.ts';
export { changesText, mergeRecords, type RecordsMerged, recordText, recordTextOf } from './mergeRecords.ts';
export {
  type PlanMove,
  type PlanRecord,
  planMoves,
  type RowsByTable,
  type TripAt,
  tablesOfPlans,
  takePlanRowsBack,
  touchesPlans,
} from './planMoves.ts';
export { readRecord, recordFields, rowChange } from './readRecord.ts';
export { type RecordProblemCode, recordProblem, recordProblems } from './recordProblems.ts';
export { recordsOfCopy } from './recordsOfCopy.ts';
export { changesWithout, type StepBack, stepsBack } from './stepsBack.ts';
export { type ChangedSince, nextSteps, type Steps, type TakenBack, takeBack } from './takeBack.ts';
