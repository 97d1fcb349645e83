/** Pages of test pieces, as they come out of the printer: sheets, true scale, black on white. */
import type { Page } from '@playwright/test';
import { PIECE_IDS, type PieceId } from '../../src/core/coupons/piece.ts';
import { PIECE_WORDS } from '../../src/ui/text/pieceText.ts';
import { expect, test, violations } from './support.ts';

/** The block of radii has a second sheet for those who go on counting. */
/** Eight corners and a table to go on counting fit one sheet of A4, and not quite one of Letter. */
const sheetsFor = (id: PieceId, format: string) => (id === 'radii' && format === 'Letter' ? 2 : 1);
/** Width and height in points of 1/72 inch. */
const PAPERS = [
  { format: 'A4', size: [595.28, 841.89] },
  { format: 'Letter', size: [612, 792] },
] as const;
const PX_PER_MM = 96 / 25.4;

const sheet = (page: Page, id: PieceId) => page.getByRole('article', { name: PIECE_WORDS[id].name });

async function openPage(page: Page, id: PieceId, theme: 'light' | 'dark' = 'light'): Promise<void> {
  await page.emulateMedia({ colorScheme: theme });
  await page.goto(`/#tests/page/${id}`);
  await expect(sheet(page, id)).toBeVisible();
}

/** Sizes of the sheets of a PDF in points, one for each. */
function sheetsOf(pdf: Buffer): number[][] {
  return [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)],
  );
}

async function boxWidth(page: Page, selector: string): Promise<number> {
  return page.locator(selector).evaluate((node) => node.getBoundingClientRect().width);
}

for (const id of PIECE_IDS) {
  test(`the page of ${id} fills whole sheets of A4 and Letter, and breaks no rule of accessibility`, async ({
    page,
  }) => {
    await openPage(page, id);
    expect(await violations(page)).toEqual([]);
    for (const { format, size } of PAPERS) {
      const sheets = sheetsOf(await page.pdf({ format }));
      expect(sheets, format).toHaveLength(sheetsFor(id, format));
      for (const [width = 0, height = 0] of sheets) {
        // The browser rounds paper to whole px of 1/96 inch, 0.75 pt.
        expect(Math.abs(width - size[0])).toBeLessThan(1.1);
        expect(Math.abs(height - size[1])).toBeLessThan(1.1);
      }
    }
  });
}

test('a line of 100 mm is 377.95 px long on screen and on paper, whatever the width of the screen', async ({
  page,
}) => {
  for (const width of [1280, 360]) {
    await page.setViewportSize({ width, height: 800 });
    await openPage(page, 'comb');
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      expect(Math.abs((await boxWidth(page, '.true-line')) - 100 * PX_PER_MM)).toBeLessThan(0.5);
    }
    await page.emulateMedia({ media: 'screen' });
  }
});

test('whoever reads in inches gets a line of 4 in and boxes in inches', async ({ page }) => {
  await page.goto('/#tests');
  await page.getByRole('button', { name: 'Inches' }).click();
  await openPage(page, 'ladder');
  await expect(page.getByRole('columnheader', { name: 'Mean, in' })).toBeVisible();
  // Half a pixel: what the browser rounds a box to.
  expect(Math.abs((await boxWidth(page, '.true-line')) - 4 * 96)).toBeLessThan(0.5);
  await expect(page.getByText('4 in from end to end')).toBeVisible();
  expect(await violations(page)).toEqual([]);
});

test('the comb is drawn life size, and so is the protractor of the hold piece', async ({ page }) => {
  await openPage(page, 'comb');
  await expect(page.locator('.piece-picture figcaption')).toContainText('1 : 1');
  const [, wide = 0] =
    /([\d.]+) × [\d.]+ × [\d.]+/
      .exec((await page.locator('.piece-picture figcaption').textContent()) ?? '')
      ?.map(Number) ?? [];
  expect(Math.abs((await boxWidth(page, '.piece-picture .slab >> nth=0')) - wide * PX_PER_MM)).toBeLessThan(1);
  await openPage(page, 'hold');
  expect(Math.abs((await boxWidth(page, '.protractor svg')) - 102 * PX_PER_MM)).toBeLessThan(0.5);
});

test('nothing runs over the edge of a phone', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  for (const id of PIECE_IDS) {
    await openPage(page, id);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), id).toBe(360);
    expect(await violations(page), id).toEqual([]);
  }
});

test('on paper there is nothing but the page, black on white in either theme', async ({ page }) => {
  for (const theme of ['light', 'dark'] as const) {
    await openPage(page, 'bar', theme);
    await page.emulateMedia({ media: 'print', colorScheme: theme });
    const seen = await page.evaluate(() => {
      const article = document.querySelector('.test-page');
      const shown = [...document.body.querySelectorAll('*')].filter((node) => node.checkVisibility());
      const beside = shown.filter((node) => !node.contains(article) && !article?.contains(node));
      const inks = new Set(shown.filter((node) => article?.contains(node)).map((node) => getComputedStyle(node).color));
      const grounds = new Set(shown.map((node) => getComputedStyle(node).backgroundColor));
      return { beside: beside.map((node) => node.outerHTML.slice(0, 80)), inks: [...inks], grounds: [...grounds] };
    });
    expect(seen.beside).toEqual([]);
    for (const ink of seen.inks) expect(['rgb(0, 0, 0)', 'rgb(51, 51, 51)']).toContain(ink);
    for (const ground of seen.grounds) expect(['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)']).toContain(ground);
    await page.emulateMedia({ media: 'screen' });
  }
});

test('a page is left by its button and by the way back of the browser', async ({ page }) => {
  await page.goto('/#tests');
  await page.getByRole('radio', { name: /Strip comb/ }).check();
  await page.getByRole('link', { name: 'Page to print' }).click();
  await expect(sheet(page, 'comb')).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('radio', { name: /Strip comb/ })).toBeVisible();
  await page.getByRole('link', { name: 'Page to print' }).click();
  await page.getByRole('button', { name: 'Back to the tests' }).click();
  await expect(page.getByRole('radio', { name: /Strip comb/ })).toBeChecked();
});

test('arrow keys go from piece to piece, and its files come when they are asked for', async ({ page }) => {
  await page.goto('/#tests');
  const pieces = page.getByRole('group', { name: 'Test piece to look at' }).getByRole('radio');
  await expect(pieces).toHaveCount(PIECE_IDS.length);
  await pieces.first().check();
  await pieces.first().focus();
  await page.keyboard.press('ArrowRight');
  await expect(pieces.nth(1)).toBeChecked();
  await expect(pieces.nth(1)).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(pieces.first()).toBeChecked();
  for (const [button, ending] of [
    ['3MF of this piece', /\.3mf$/],
    ['STL of this piece', /\.stl$/],
    ['3MF of the whole plate', /^test-plate.*\.3mf$/],
  ] as const) {
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    expect((await coming).suggestedFilename()).toMatch(ending);
  }
});
