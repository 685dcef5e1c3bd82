import { expect, it } from 'vitest';
import { openApiText } from './openApi.ts';

it('names exactly the parameters that stand in each path', async () => {
  const { paths } = JSON.parse(await openApiText()) as {
    readonly paths: Readonly<Record<string, Readonly<Record<string, { parameters?: { in: string; name: string }[] }>>>>;
  };
  const differing = Object.entries(paths).flatMap(([path, methods]) => {
    const wanted = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
    return Object.entries(methods).flatMap(([method, { parameters = [] }]) => {
      const told = parameters.flatMap((one) => (one.in === 'path' ? [one.name] : [])).sort();
      return JSON.stringify(told) === JSON.stringify(wanted) ? [] : [`${method} ${path}`];
    });
  });
  expect(Object.keys(paths).length).toBeGreaterThan(20);
  expect(differing).toEqual([]);
});
