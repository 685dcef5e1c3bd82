import { numbers } from './numbers.ts';

/** A count with its word, one or several. */
export function many(count: number, one: string, more: string): string {
  return `${numbers.quantity(count, 'number')} ${count === 1 ? one : more}`;
}
