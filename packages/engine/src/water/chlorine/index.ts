export { chlorineFinding } from './chlorineFinding.ts';
