export { type HeadGiven, headFindings } from './headFindings.ts';
