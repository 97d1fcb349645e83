import type { Page } from '@playwright/test';
import { matchEffort } from '../../src/core/design/matchEffort.ts';
import { radians } from '../../src/core/units.ts';
import { effortText } from '../../src/ui/text/amountText.ts';
import { percent } from '../../src/ui/text/numbers.ts';
import { changed } from '../support/joints.ts';
import { cell, core, demoJoint, expect, field, openWith, tabTo, test, verdict, violations } from './support.ts';

const match = (page: Page) => page.getByRole('region', { name: 'Match an effort' });
const little = (page: Page) => page.getByRole('region', { name: 'What a little more does' });
const slip = (page: Page) => page.getByRole('status').filter({ hasText: /Undo|Redo/ });
const wish = (page: Page) => field(page, 'Effort that is wished for');

test('matches an effort with the keyboard alone, puts it in place and takes it back', async ({ page }) => {
  await page.goto('/');
  const own = core(demoJoint()).effort.effort;
  await expect(wish(page)).toHaveValue(String(Number(own.toPrecision(3))));
  await expect(match(page)).toContainText('So hard it pushes back now');
  await page.getByRole('slider', { name: 'Effort against movement' }).focus();
  await tabTo(page, wish(page));
  await page.keyboard.type('20');
  await page.keyboard.press('Enter');
  const answer = matchEffort(demoJoint(), { effort: 20, at: radians(35) });
  const longer = answer.ok ? answer.value.matches.find(({ steps }) => steps[0] === 'length') : undefined;
  const length = String(longer?.after.sizes['length']);
  const use = match(page).getByRole('button', { name: `Use it: Make the leaf ${length} mm long` });
  await tabTo(page, use);
  await page.keyboard.press('Enter');
  await expect(slip(page)).toContainText(`Leaf made ${length} mm long, was 12.00`);
  await expect(field(page, 'Leaf length')).toHaveValue(length);
  await expect(match(page)).toContainText('It has that as it is: 20.0 N·mm at 35°.');
  await expect(match(page)).toBeFocused();
  await page.keyboard.press('Control+z');
  await expect(field(page, 'Leaf length')).toHaveValue('12.00');
  await expect(use).toBeVisible();
});

test('takes a wish at another angle, and refuses what nobody feels', async ({ page }) => {
  await page.goto('/');
  const at = field(page, 'Angle at which it is wished for');
  await at.fill('20');
  await at.press('Enter');
  await wish(page).fill('12');
  await wish(page).press('Enter');
  await expect(match(page).getByRole('listitem').first()).toContainText('12.0 N·mm at 20°');
  await wish(page).fill('0');
  await wish(page).press('Enter');
  await expect(match(page).getByRole('alert')).toContainText('Still using 12');
  await wish(page).press('Escape');
  await wish(page).fill('0.002');
  await wish(page).press('Enter');
  await expect(match(page)).toContainText('and the nearest is');
});

test('tells what a little more does, of a leaf at once', async ({ page }) => {
  await page.goto('/');
  const row = (name: string) =>
    little(page)
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name, exact: true }) });
  const three = core(changed(demoJoint(), { sizes: { lines: 3 } }));
  await expect(row('One line more')).toContainText(percent(three.strain.peak));
  await expect(row('One line more')).toContainText(effortText(three.effort.effort, 'turn'));
  await expect(row('One line more').getByText('the largest change').first()).toBeAttached();
  const pla = core(changed(demoJoint(), { profile: { filament: 'pla' } }));
  await expect(row('PLA')).toContainText(effortText(pla.effort.effort, 'turn'));
  await openWith(page, changed(demoJoint(), { sizes: { lines: 1 } }));
  await expect(row('One line fewer')).toContainText('Lines across cannot be under 1; 0 is.');
});

test('asks the solver for what snaps, once it is in sight, and matches where it snaps', async ({ page }) => {
  // Some forty solves of the slowest kind, on a machine that may do other things as well.
  test.setTimeout(240_000);
  await page.goto('/');
  await cell(page, 'Mode button').click();
  const snap = field(page, 'Effort at which it should snap');
  await expect(snap).toBeVisible({ timeout: 30_000 });
  await snap.fill('40');
  await snap.press('Enter');
  await expect(match(page).getByRole('listitem').first()).toContainText('40.0 N where it snaps', { timeout: 90_000 });
  await little(page).scrollIntoViewIfNeeded();
  await expect(little(page).locator('[aria-busy="false"]')).toBeVisible({ timeout: 90_000 });
  await expect(little(page).getByRole('row').filter({ hasText: 'Side by side, one more' })).toContainText(
    /\+100\u00a0%/,
  );
});

for (const width of [360, 1280, 2560]) {
  test(`fits ${width} px, and breaks no rule of accessibility`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.goto('/');
    await expect(verdict(page)).toBeVisible();
    await wish(page).fill('90');
    await wish(page).press('Enter');
    await match(page).getByRole('button', { name: /^All/ }).click();
    await expect(match(page).getByText('Whole counts alone')).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await violations(page)).toEqual([]);
  });
}
