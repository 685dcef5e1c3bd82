export * as schemas from './http/schemas.ts';
export { openApiText } from './openApi.ts';
export { readKept, type SeveralThere } from './readKept.ts';
export { type ServeAsked, type Served, serve } from './serve.ts';
export { tasks } from './tasks.ts';
