export { Sites } from './Sites.tsx';
