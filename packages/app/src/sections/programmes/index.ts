export { Programmes } from './Programmes.tsx';
