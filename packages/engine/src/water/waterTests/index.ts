export { waterTestsFinding } from './waterTestsFinding.ts';
