import { numbers } from './numbers.ts';

/** "1 site", "3 sites". */
export const many = (count: number, one: string, more: string): string =>
  `${numbers.quantity(count, 'number')} ${count === 1 ? one : more}`;

export const sites = (count: number): string => many(count, 'site', 'sites');
