import { expect, it } from 'vitest';
import { messageFaults, mostLength } from './checkMessage.ts';

const english = '{count, plural, one {# row} other {# rows}} of {file}';
const faultsOf = (message: string, code = 'es') => messageFaults(message, english, code);

it('finds nothing wrong with a message that says the same', () => {
  expect(faultsOf('{count, plural, one {# fila} other {# filas}} de {file}')).toEqual([]);
  expect(faultsOf('{count, plural, =0 {ninguna} one {# fila} many {# de filas} other {# filas}} de {file}')).toEqual(
    [],
  );
  expect(faultsOf('{file}: {count, plural, other {#行}}', 'ja')).toEqual([]);
});

it('finds places that were lost and places nobody fills', () => {
  expect(faultsOf('{archivo}: {count, plural, one {# fila} other {# filas}}')).toEqual([
    { kind: 'placesLost', names: ['file'] },
    { kind: 'placesUnknown', names: ['archivo'] },
  ]);
});

it('finds what is broken', () => {
  expect(faultsOf('{count, plural, one {# fila} de {file}')[0]?.kind).toBe('broken');
  expect(faultsOf('{count, plural, one {# fila}} de {file}')[0]?.kind).toBe('broken');
});

it('asks for the forms the language has, and for no other', () => {
  expect(faultsOf('{count, plural, one {# wiersz} other {# wiersza}} {file}', 'pl')).toEqual([
    { kind: 'formsMissing', name: 'count', forms: ['many', 'few'] },
  ]);
  expect(faultsOf('{count, plural, one {# fila} few {# filas} other {# filas}} {file}')).toEqual([
    { kind: 'formsUnknown', name: 'count', forms: ['few'] },
  ]);
});

it('keeps the choices of English', () => {
  const choice = '{how, select, early {soon} other {late}}';
  expect(messageFaults('{how, select, early {pronto} other {tarde}}', choice, 'es')).toEqual([]);
  expect(messageFaults('{how, select, temprano {pronto} other {tarde}}', choice, 'es')).toEqual([
    { kind: 'formsUnknown', name: 'how', forms: ['temprano'] },
    { kind: 'formsMissing', name: 'how', forms: ['early'] },
  ]);
});

it('warns of what may not fit', () => {
  expect(mostLength('0123456789')).toBe(26);
  expect(messageFaults('x'.repeat(27), '0123456789', 'es')).toEqual([{ kind: 'tooLong', length: 27, most: 26 }]);
});

it('measures what is read, not how many forms a language has', () => {
  const rows = '{count, plural, one {# row} other {# rows}}';
  const arabic = '{count, plural, zero {#} one {صف} two {صفان} few {# صفوف} many {# صفًا} other {# صف}}';
  expect(arabic.length).toBeGreaterThan(1.6 * rows.length);
  expect(messageFaults(arabic, rows, 'ar')).toEqual([]);
  const wordy = arabic.replace('# صفوف', `# ${'ص'.repeat(20)}`);
  expect(messageFaults(wordy, rows, 'ar')).toEqual([{ kind: 'tooLong', length: 22, most: 19 }]);
});
