export { openApiText } from './openApi.ts';
export { type ServeAsked, type Served, serve } from './serve.ts';
