import { expect, it } from 'vitest';
import { everyPage, routerPaths } from './everyPage.ts';

it('every address of the router is one of the pages that are looked at', async () => {
  expect(Object.keys(everyPage).sort()).toEqual(await routerPaths());
});
