import type { Page } from '@playwright/test';
import { demoJoint, expect, openWith, tabTo, test, violations } from './support.ts';

async function open(page: Page, address = '#lesson/compare'): Promise<void> {
  await page.goto(`/${address}`);
  await expect(page.getByRole('table', { name: /how many times/ })).toBeVisible();
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
}

const heads = (page: Page) => page.locator('.compare-head a').allTextContents();
/** Lengths of what is drawn at rest, from the first pad to the last [px]. */
const drawnWidth = (page: Page, at: number) =>
  page
    .locator('.compare-table .lesson-picture')
    .nth(at)
    .locator('.at-rest')
    .evaluate((path) => (path as SVGGraphicsElement).getBBox().width);

test('four joints stand side by side at one scale, by their letters', async ({ page }) => {
  await open(page);
  expect(await heads(page)).toEqual(['Rain-flap hinge', 'Battery-door hinge', 'Bucket pivot', 'Wind-vane return']);
  await expect(page.locator('.compare-letter')).toHaveText(['A', 'B', 'C', 'D']);
  await expect(page.getByText(/All at scale/)).toContainText(':');
  await expect(page.getByRole('img', { name: 'A, Rain-flap hinge' })).toBeVisible();
});

test('what is drawn of a leaf twice as long is that much longer', async ({ page }) => {
  const flap = demoJoint();
  await openWith(page, { ...flap, id: 'long', name: 'Long flap', sizes: { ...flap.sizes, length: 24 } });
  // A joint from a link is open, and the first of those that are shown.
  await page.getByRole('link', { name: 'Lesson' }).click();
  await page.getByRole('link', { name: 'Side by side' }).click();
  await expect(page.locator('.compare-head')).toHaveCount(4);
  for (const name of (await heads(page)).slice(1)) await page.getByRole('checkbox', { name, exact: true }).uncheck();
  await page.getByRole('checkbox', { name: flap.name, exact: true }).check();
  await expect(page.locator('.compare-head a')).toHaveText(['Long flap', flap.name]);
  const [long, short] = [await drawnWidth(page, 0), await drawnWidth(page, 1)];
  const said = (await page.locator('.pictured').textContent()) ?? '';
  const scale = Number(/(\d+)\s*:\s*1/.exec(said)?.[1]);
  // 12 mm more of leaf at this scale; half a px is what the browser rounds boxes to.
  expect(Math.abs(long - short - (12 * scale * 96) / 25.4)).toBeLessThan(0.5);
  await expect(page.getByRole('row', { name: /Flexing length/ })).toContainText('0.5');
});

test('joints are chosen and moved by keyboard, and the address brings them back', async ({ page }) => {
  await open(page);
  await tabTo(page, page.getByRole('checkbox', { name: 'Bucket pivot' }));
  await page.keyboard.press('Space');
  await expect(page.locator('.compare-head')).toHaveCount(3);
  await tabTo(page, page.getByRole('checkbox', { name: 'Mode button' }));
  await page.keyboard.press('Space');
  await expect(page.getByText('Four stand side by side: take one away first')).toBeVisible();
  await page.getByRole('checkbox', { name: 'Pole grip' }).press('Space');
  await expect(page.getByRole('checkbox', { name: 'Pole grip' })).not.toBeChecked();
  await tabTo(page, page.getByRole('button', { name: 'Mode button: To the left' }));
  await page.keyboard.press('Enter');
  const order = ['Rain-flap hinge', 'Battery-door hinge', 'Mode button', 'Wind-vane return'];
  expect(await heads(page)).toEqual(order);
  await page.reload();
  await expect(page.locator('.compare-head a')).toHaveText(order);
  await tabTo(page, page.getByRole('link', { name: 'Open it: Mode button' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveTitle(/Mode button/);
});

test('a part of one joint says that it takes two', async ({ page }) => {
  await page.goto('/#lesson/compare?of=%zz,gone');
  await page.getByRole('button', { name: 'New part' }).click();
  await expect(page.getByText('Two joints make a comparison; this part has 0 joints.')).toBeVisible();
  await expect(page.getByRole('main').getByRole('link', { name: 'Add one in Joints.' })).toBeVisible();
});

for (const width of [360, 1280]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`joints side by side break no rule of accessibility at ${width} px, ${colorScheme}`, async ({
      browser,
      baseURL,
    }) => {
      const context = await browser.newContext({
        viewport: { width, height: 800 },
        colorScheme,
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      await open(page);
      expect(await violations(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await context.close();
    });
  }
}
