/** Kinds of flexure that the first screen does without: on their way, there from the last visit, and not to be had. */
import { test as base, type Page, type Route } from '@playwright/test';
import { cell, expect, test, verdict } from './support.ts';

const KINDS = '**/everyKind-*.js';

/** Holds the other kinds back until told to let them come. */
async function holdKinds(page: Page): Promise<() => Promise<void>> {
  const held: Route[] = [];
  await page.route(KINDS, (route) => void held.push(route));
  return async () => {
    await expect.poll(() => held.length).toBeGreaterThan(0);
    await Promise.all(held.map((route) => route.continue()));
  };
}

test('a joint whose kind is on its way keeps its room in the strip, and its sheet follows', async ({ page }) => {
  const letCome = await holdKinds(page);
  await page.goto('/');
  await expect(verdict(page).getByRole('heading')).toBeVisible();
  const pivot = cell(page, 'Bucket pivot');
  await expect(pivot).toContainText('…');
  const before = await pivot.boundingBox();
  await pivot.click();
  await expect(page.getByRole('contentinfo')).toContainText('Bucket pivot');
  await expect(verdict(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Copy link' })).toHaveAttribute('aria-disabled', 'true');
  await letCome();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
  await expect(pivot).toContainText(/Pass/);
  expect(await pivot.boundingBox()).toEqual(before);
  await expect(page.getByRole('contentinfo')).toContainText('Bucket pivot, crossed leaves');
});

test('a joint of another kind that was left open stands at once on the next visit', async ({ page }) => {
  await page.goto('/');
  await cell(page, 'Bucket pivot').click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
  const letCome = await holdKinds(page);
  await page.reload({ waitUntil: 'commit' });
  // Nothing is laid out that would have to give way: not the sheet, nor the strip above it.
  await expect(page.getByRole('main')).toHaveCount(0);
  await letCome();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
});

// With nothing to listen to the console: a file that does not come is an error there.
base('says so when a kind does not come, and tries again', async ({ page }) => {
  await page.route(KINDS, (route) => route.abort());
  await page.goto('/');
  const pivot = cell(page, 'Bucket pivot');
  await expect(pivot).toContainText('Not loaded');
  await pivot.click();
  await expect(page.getByRole('alert').filter({ hasText: 'did not come' })).toBeVisible();
  await cell(page, 'Rain-flap hinge').click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Caution/);
  await pivot.click();
  await page.unroute(KINDS);
  // A browser that asks no second time for a file that did not come loads the page again, with the same joint open.
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
  await expect(page.getByRole('contentinfo')).toContainText('Bucket pivot, crossed leaves');
});

base('never leaves a page that cannot be reached', async ({ page }) => {
  await page.route(KINDS, (route) => route.abort());
  await page.goto('/');
  await cell(page, 'Bucket pivot').click();
  await page.route('**/*', (route) => route.abort());
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'did not come' })).toBeVisible();
  await cell(page, 'Rain-flap hinge').click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Caution/);
});

base('stands without what does not come, and says so', async ({ page }) => {
  await page.route(/\/(UnderCurves|FilamentsPlace|Foot)-.*\.js/, (route) => route.abort());
  await page.goto('/');
  await expect(verdict(page).getByRole('heading')).toHaveText(/Caution/);
  await page.getByRole('slider').last().scrollIntoViewIfNeeded();
  const absent = page.getByRole('alert').filter({ hasText: 'A part of this page did not come' });
  await expect(absent).toBeVisible();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Caution/);
  await page.getByRole('link', { name: 'Filaments' }).click();
  await expect(absent).toBeVisible();
  await page.getByRole('link', { name: 'Joints' }).click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Caution/);
});
