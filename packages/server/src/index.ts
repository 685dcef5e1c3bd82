export * as schemas from './http/schemas.ts';
export { keepPlan, type PlanFound } from './keepPlan.ts';
export { openApiText } from './openApi.ts';
export { listKept, type ProgrammeThere, type SeveralThere, writeKept } from './readKept.ts';
export { type ServeAsked, type Served, serve } from './serve.ts';
export { tasks } from './tasks.ts';
