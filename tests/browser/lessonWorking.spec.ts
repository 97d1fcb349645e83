import type { Page } from '@playwright/test';
import { percent } from '../../src/ui/text/numbers.ts';
import { core, demoJoint, expect, tabTo, test, violations } from './support.ts';

async function open(page: Page, address = '#lesson/working'): Promise<void> {
  await page.goto(`/${address}`);
  await expect(page.locator('output.worked-out')).toContainText('they give what the program says');
}

const step = (page: Page, name: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name, exact: true }) });

test('the working gives the figures that Joints shows', async ({ page }) => {
  await open(page);
  const { strain } = core(demoJoint());
  await expect(step(page, 'Strain of the skin, bent to an arc')).toContainText(percent(strain.nominal));
  await expect(step(page, 'Peak strain, at the root')).toContainText(percent(strain.peak));
  await page.goto('/#joints');
  await expect(page.getByRole('region', { name: 'Verdict' })).toContainText(percent(strain.peak));
});

test('formulas are mathematics for whoever reads them by ear, each with its source and its limits', async ({
  page,
}) => {
  await open(page);
  const one = step(page, 'Strain of the skin, bent to an arc');
  await expect(one.locator('math').first()).toBeVisible();
  expect(await one.locator('mfrac').count()).toBeGreaterThanOrEqual(2);
  await expect(one).toContainText('Exact at any angle under a pure moment');
  await expect(one).toContainText('Elementary bending of a straight leaf');
  await expect(one).toContainText('The program says');
  // Greek letters stand in the face of the page and not in whatever the machine has.
  await page.evaluate(() => document.fonts.ready);
  const faces = await page.evaluate(
    () =>
      [...document.fonts].filter((face) => face.unicodeRange.startsWith('U+370') && face.status === 'loaded').length,
  );
  expect(faces).toBeGreaterThan(0);
});

test('another joint is worked out by keyboard, with the solver, and can be opened from there', async ({ page }) => {
  await open(page);
  const choice = page.getByRole('combobox', { name: 'Joint' });
  await tabTo(page, choice);
  await choice.selectOption({ label: 'Mode button' });
  await expect(page).toHaveURL(/#lesson\/working\/.+/);
  await expect(page.locator('output.worked-out')).toContainText('they give what the program says');
  await expect(page.getByText('The solver follows the true curve')).toBeVisible();
  await expect(step(page, 'Effort where it pushes back hardest')).toContainText('The program says');
  await tabTo(page, page.getByRole('link', { name: 'Back to the joint' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Verdict' })).toBeVisible();
  await expect(page).toHaveTitle(/Mode button/);
});

test('an address of a joint that is gone shows the open one, and no joint at all says so', async ({ page }) => {
  await open(page, '#lesson/working/gone%20%zz');
  await page.getByRole('button', { name: 'New part' }).click();
  await expect(page.getByText('There is no joint to work out yet.')).toBeVisible();
});

for (const width of [360, 1280]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`the working breaks no rule of accessibility at ${width} px, ${colorScheme}`, async ({ browser, baseURL }) => {
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
