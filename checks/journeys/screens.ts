import type { Page } from 'playwright-core';

/**
 * What makes a page scroll sideways: nothing where it does not. What scrolls inside a frame of its own (a wide table, a map)
 * is no fault. wcag-2-2, 1.4.10: a page of 320 px, as a page of 1,280 px at 400 %.
 */
export const sidewaysCauses = (page: Page) =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - window.innerWidth;
    if (wide <= 0) return [];
    const isOut = (one: Element) => {
      const { left, right, width } = one.getBoundingClientRect();
      return width > 0 && (right > window.innerWidth + 0.5 || left < -0.5);
    };
    const out = [...document.querySelectorAll('body *')].filter(isOut).slice(0, 3);
    return [`${wide} px too wide`, ...out.map((one) => one.outerHTML.slice(0, 160))];
  });

/**
 * What is pressed and is smaller than it may be, of the outermost things that can be. A link in a line of text may be as high as
 * its line (wcag-2-2, 2.5.8, inline); what is drawn by the browser inside a label counts with its label.
 */
export const smallTargets = (page: Page, least: { readonly all: number; readonly buttons: number }) =>
  page.evaluate((least) => {
    const pressed =
      'a[href],button,input:not([type=hidden]),select,textarea,summary,[role=button],[role=option],[role=row],[role=menuitem],[role=switch],[role=tab],[role=slider]';
    const isInLine = (one: Element) =>
      getComputedStyle(one).display === 'inline' &&
      (one.parentElement?.textContent ?? '').trim() !== one.textContent?.trim();
    return [...document.querySelectorAll(pressed)].flatMap((found) => {
      const one = found.closest('label') ?? found;
      const style = getComputedStyle(one);
      const { width, height } = one.getBoundingClientRect();
      const isCut = (inside: Element | null): boolean => {
        if (inside === null) return false;
        const { clipPath, clip } = getComputedStyle(inside);
        return clipPath !== 'none' || clip !== 'auto' || isCut(inside.parentElement);
      };
      const isHidden = width <= 1 || height <= 1 || style.visibility === 'hidden' || isCut(one);
      if (isHidden || isInLine(one) || found.matches(':disabled,[aria-disabled=true]')) return [];
      // What has an edge all round is a main action or a field; figures that open and words to press stand in their lines.
      const isField = found.matches('select,input:not([type=checkbox]):not([type=radio])');
      const isRuled = style.borderTopStyle !== 'none' && !/^rgba.*, 0\)$/.test(style.borderTopColor);
      const isMain = isField || (found.matches('button,[role=button]') && isRuled);
      const wanted = isMain ? least.buttons : least.all;
      if (Math.min(width, height) >= wanted - 0.5) return [];
      return [`${Math.round(width)} × ${Math.round(height)} px, ${wanted} wanted: ${found.outerHTML.slice(0, 120)}`];
    });
  }, least);

/** The screens people have, and how large at least what is pressed must be on them [px]. */
export const screens = [
  { name: 'a laptop', width: 1280, height: 800, least: { all: 24, buttons: 24 } },
  { name: 'a laptop at 200 %', width: 640, height: 400, least: { all: 24, buttons: 24 } },
  { name: 'a phone', width: 360, height: 740, least: { all: 24, buttons: 44 } },
  { name: 'the narrowest phone, or a laptop at 400 %', width: 320, height: 256, least: { all: 24, buttons: 44 } },
];
