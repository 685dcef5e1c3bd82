export { openApiText } from './openApi.ts';
export { readKept, type SeveralThere } from './readKept.ts';
export { type Served, type ServeAsked, serve } from './serve.ts';
export { tasks } from './tasks.ts';
