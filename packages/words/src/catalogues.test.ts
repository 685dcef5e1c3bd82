import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { messageFaults } from './messages/checkMessage.ts';

const folder = new URL('../languages/', import.meta.url);
const read = (file: string) =>
  JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Readonly<Record<string, Readonly<Record<string, string>>>>;
const { language: _, ...english } = read('en.json');
const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
const total = (sections: Readonly<Record<string, object>>) =>
  Object.values(sections).reduce((sum, section) => sum + Object.keys(section).length, 0);

describe('the files of languages', () => {
  it('are there, English and Spanish among them', () => {
    expect(files).toEqual(expect.arrayContaining(['en.json', 'es.json']));
    expect(total(english)).toBeGreaterThan(20);
  });

  for (const file of files) {
    const { language, ...sections } = read(file);
    it(`${file} keeps its keys in order, one a line`, () => {
      for (const section of Object.values(sections)) {
        const keys = Object.keys(section);
        expect(keys).toEqual([...keys].sort());
      }
      const lines = readFileSync(new URL(file, folder), 'utf8').split('\n');
      expect(lines.length).toBeGreaterThan(total(sections));
    });

    it(`${file} has no message that English lacks, and none that says another thing`, () => {
      expect(language?.['direction']).toMatch(/^(?:ltr|rtl)$/);
      const code = language?.['code'] ?? '';
      expect(file).toBe(`${code}.json`);
      const wrong = Object.entries(sections).flatMap(([name, section]) =>
        Object.entries(section).flatMap(([key, message]) => {
          const own = english[name]?.[key];
          if (own === undefined) return [`${name}.${key}: not in English`];
          return messageFaults(message, own, code).map((fault) => `${name}.${key}: ${JSON.stringify(fault)}`);
        }),
      );
      expect(wrong).toEqual([]);
    });
  }

  it('lack nothing in Spanish', () => {
    const { language: _head, ...spanish } = read('es.json');
    const missing = Object.entries(english).flatMap(([name, section]) =>
      Object.keys(section)
        .filter((key) => spanish[name]?.[key] === undefined)
        .map((key) => `${name}.${key}`),
    );
    expect(missing).toEqual([]);
  });
});
