import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { allTables, folderTableNames } from '../contract/allTables.ts';
import { datapackage } from './datapackage.ts';
import { tableSchema } from './tableSchema.ts';

/** What the Data Package standard v2.0 asks of the parts used here, written from its text (datapackage.org/standard). */
const field = {
  type: 'object',
  required: ['name'],
  properties: {
    name: { type: 'string', minLength: 1 },
    type: { enum: ['string', 'number', 'integer', 'boolean', 'date', 'time'] },
    constraints: {
      type: 'object',
      additionalProperties: false,
      properties: {
        required: { type: 'boolean' },
        pattern: { type: 'string' },
        enum: { type: 'array', minItems: 1, uniqueItems: true },
        maxLength: { type: 'integer', minimum: 0 },
        minimum: { type: ['number', 'string'] },
        maximum: { type: ['number', 'string'] },
        exclusiveMinimum: { type: ['number', 'string'] },
      },
    },
  },
};
const names = { type: 'array', minItems: 1, uniqueItems: true, items: { type: 'string' } };
const schema = {
  type: 'object',
  required: ['fields'],
  properties: {
    $schema: { const: 'https://datapackage.org/profiles/2.0/tableschema.json' },
    fields: { type: 'array', minItems: 1, items: field },
    missingValues: { type: 'array', uniqueItems: true, items: { type: 'string' } },
    primaryKey: names,
    uniqueKeys: { type: 'array', minItems: 1, items: names },
    foreignKeys: {
      type: 'array',
      items: {
        type: 'object',
        required: ['fields', 'reference'],
        properties: {
          fields: names,
          reference: {
            type: 'object',
            required: ['fields'],
            properties: { fields: names, resource: { type: 'string' } },
          },
        },
      },
    },
  },
};
const standard = {
  type: 'object',
  required: ['resources'],
  properties: {
    $schema: { const: 'https://datapackage.org/profiles/2.0/datapackage.json' },
    name: { type: 'string', pattern: '^[a-z0-9._-]+$' },
    resources: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        required: ['name', 'path'],
        properties: {
          $schema: { const: 'https://datapackage.org/profiles/2.0/dataresource.json' },
          name: { type: 'string', pattern: '^[a-z0-9._-]+$' },
          // Relative, and never up.
          path: { type: 'string', pattern: '^(?!/)(?!.*\\.\\.)[^\\\\:]+$' },
          type: { const: 'table' },
          encoding: { const: 'utf-8' },
          mediatype: { enum: ['text/csv', 'application/json'] },
        },
        if: { required: ['type'] },
        // biome-ignore lint/suspicious/noThenProperty: the word of JSON Schema
        then: { required: ['schema'], properties: { schema } },
      },
    },
  },
};

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly type?: string;
  readonly schema?: {
    readonly fields: readonly { readonly name: string }[];
    readonly primaryKey?: readonly string[];
    readonly foreignKeys?: readonly {
      readonly fields: readonly string[];
      readonly reference: { readonly resource?: string; readonly fields: readonly string[] };
    }[];
  };
}

const content = {
  title: 'Tarn & Ferry: Water',
  tables: folderTableNames,
  gaugeIds: ['G-East', 'G-east', 'g.1'],
  hasSettings: true,
};
const descriptor = datapackage(content);
const resources = descriptor['resources'] as unknown as readonly Resource[];

describe('datapackage', () => {
  it('is what the standard asks', () => {
    const validate = new Ajv({ allowUnionTypes: true }).compile(standard);
    expect(validate(descriptor) ? [] : validate.errors).toEqual([]);
    expect(descriptor['name']).toBe('tarn-ferry-water');
  });

  it('the check of the standard can fail', () => {
    const validate = new Ajv({ allowUnionTypes: true }).compile(standard);
    expect(validate({ ...descriptor, name: 'Tarn Water' })).toBe(false);
    expect(validate({ ...descriptor, resources: [{ name: 'x', path: '../x.csv' }] })).toBe(false);
    expect(validate({ ...descriptor, resources: [{ name: 'x', path: 'x.csv', type: 'table' }] })).toBe(false);
  });

  it('names every file once, and no name twice', () => {
    expect(resources.map(({ path }) => path)).toEqual([
      ...folderTableNames.map((name) => `${name}.csv`),
      'rain/G-East.csv',
      'rain/G-east.csv',
      'rain/g.1.csv',
      'settings.json',
    ]);
    expect(new Set(resources.map(({ name }) => name)).size).toBe(resources.length);
  });

  it('links only to tables that are there, and a table to itself without its name', () => {
    const links = (list: readonly Resource[], name: string) =>
      list.find((resource) => resource.name === name)!.schema!.foreignKeys?.map(({ reference }) => reference.resource);
    expect(links(resources, 'tanks')).toEqual(['sites', 'parts', undefined]);
    const small = datapackage({ ...content, tables: ['sites', 'tanks'] })[
      'resources'
    ] as unknown as readonly Resource[];
    expect(links(small, 'tanks')).toEqual(['sites', undefined]);
    expect(links(small, 'sites')).toBeUndefined();
  });

  it('is named even where the title has no letters', () => {
    expect(datapackage({ ...content, title: '···' })['name']).toBe('programme');
  });
});

describe('tableSchema', () => {
  it.each(allTables.map((table) => [table.name, table] as const))(
    'of %s has its columns and a key of its columns',
    (_, table) => {
      const made = tableSchema(table) as unknown as NonNullable<Resource['schema']> & {
        uniqueKeys?: readonly string[][];
      };
      const columns = made.fields.map(({ name }) => name);
      expect(columns).toEqual(Object.keys(table.columns));
      expect(made.primaryKey ?? made.uniqueKeys![0]).toEqual(table.key);
      for (const link of made.foreignKeys ?? []) {
        expect(columns).toEqual(expect.arrayContaining([...link.fields]));
        const target = allTables.find(({ name }) => name === (link.reference.resource ?? table.name))!;
        expect(Object.keys(target.columns)).toEqual(expect.arrayContaining([...link.reference.fields]));
      }
    },
  );

  it('never makes a key of a column that may be empty the primary one', () => {
    const demand = tableSchema(allTables.find(({ name }) => name === 'demand')!);
    expect(demand['primaryKey']).toBeUndefined();
    expect(demand['uniqueKeys']).toEqual([['siteId', 'purpose']]);
  });
});
