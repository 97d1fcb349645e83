import type { Page } from '@playwright/test';
import type { Joint, Swing } from '../../src/core/design/joint.ts';
import { radians } from '../../src/core/units.ts';
import { cycles, inHundred, share } from '../../src/ui/text/numbers.ts';
import { changed } from '../support/joints.ts';
import { cell, core, demoJoint, expect, field, openWith, tabTo, test, verdict, violations } from './support.ts';

const inUse = (page: Page) => page.getByRole('region', { name: 'In use' });
const slip = (page: Page) => page.getByRole('status').filter({ hasText: /Undo|Redo/ });
const wears = (page: Page) => inUse(page).getByRole('table').first();
const withSwings = (...also: readonly Swing[]): Joint => changed(demoJoint(), { movement: { also } });

test('adds, changes and takes out a movement with the keyboard alone', async ({ page }) => {
  await page.goto('/');
  const add = inUse(page).getByRole('button', { name: 'Add another movement' });
  await expect(add).toBeVisible();
  await page.getByRole('slider', { name: 'Effort against movement' }).focus();
  await tabTo(page, add);
  await page.keyboard.press('Enter');
  const amount = field(page, 'How far movement 2 goes');
  await expect(amount).toBeFocused();
  await expect(amount).toHaveValue('12');
  await page.keyboard.type('50/2');
  await page.keyboard.press('Enter');
  await expect(amount).toHaveValue('25');
  await expect(slip(page)).toContainText('Movement 2 made 25°, was 12');

  const a = core(withSwings({ amount: radians(25), ways: 'one way', cycles: 50_000 }));
  const [own, other] = a.life.wear;
  await expect(wears(page).getByRole('row')).toHaveCount(3);
  await expect(wears(page).getByRole('row').nth(1)).toContainText(cycles(own.median));
  await expect(wears(page).getByRole('row').nth(2)).toContainText(share(other?.share ?? Number.NaN));
  await expect(verdict(page)).toContainText(`the smaller one doing ${share(1 - own.share)} of the wear`);
  await expect(verdict(page)).toContainText(`${inHundred(a.life.chance)} in 100`);

  await page.keyboard.type('40');
  await page.keyboard.press('Enter');
  await expect(inUse(page).getByRole('alert').nth(1)).toContainText('cannot be over 35°; 40° is. Still using 25°.');
  await page.keyboard.press('Escape');
  await expect(amount).toHaveValue('25');

  await tabTo(page, inUse(page).getByRole('button', { name: 'Remove movement 2' }));
  await page.keyboard.press('Enter');
  await expect(amount).toHaveCount(0);
  await expect(add).toBeFocused();
  await expect(slip(page)).toContainText('Movement removed, was 25° one way');
  await page.keyboard.press('Control+z');
  await expect(amount).toHaveValue('25');
});

test('comes back only so far, which the brief asks and the amount takes along', async ({ page }) => {
  await page.goto('/');
  const ways = page.getByRole('combobox', { name: 'One way or both ways' });
  await tabTo(page, ways);
  await page.keyboard.press('a');
  const least = field(page, 'How far it comes back');
  await expect(least).toHaveValue('0');
  await expect(slip(page)).toContainText('Bends back as far as 0°, was one way');
  await tabTo(page, least);
  await page.keyboard.type('20');
  await page.keyboard.press('Enter');
  const swings = changed(demoJoint(), { movement: { ways: 'between', least: radians(20) } });
  await expect(verdict(page)).toContainText(`${inHundred(core(swings).life.chance)} in 100`);
  await expect(inUse(page).getByText('How its other end counts')).toBeVisible();
  const angle = field(page, 'Angle');
  await angle.fill('15');
  await angle.press('Enter');
  await expect(slip(page)).toContainText('Angle made 15°, was 35; comes back as far as 14° now');
  await expect(least).toHaveValue('14');
  await page.keyboard.press('Control+z');
  await expect(least).toHaveValue('20');
});

test('is read as a curve of push left by keys, and held for as long as is set', async ({ page }) => {
  await openWith(page, changed(demoJoint(), { movement: { held: true } }));
  const hours = field(page, 'Hours held bent at a time');
  await hours.fill('30*24');
  await hours.press('Enter');
  await expect(hours).toHaveValue('720');
  await expect(inUse(page)).toContainText('Held bent for');
  const push = inUse(page).getByRole('slider');
  await push.focus();
  await expect(push).toHaveAttribute('aria-valuetext', /^a month: \d+/);
  await page.keyboard.press('Home');
  await expect(push).toHaveAttribute('aria-valuetext', /^1.min: 100.% left/);
});

for (const size of [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
]) {
  test(`several movements fit and break no rule of accessibility at ${size.width} px`, async ({ page }) => {
    await page.setViewportSize(size);
    await page.goto('/');
    await cell(page, 'Wind-vane return').click();
    await expect(wears(page).getByRole('row')).toHaveCount(3);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width);
    expect(await violations(page)).toEqual([]);
  });
}

/** Presses every mark beside a figure, and tells of those that lead to no row of the same kind or better that says its source. */
function marksAstray(page: Page): Promise<{ readonly pressed: number; readonly astray: readonly string[] }> {
  return page.evaluate(() => {
    const astray: string[] = [];
    const marks = [...document.querySelectorAll<HTMLElement>('main .pv')];
    for (const mark of marks) {
      (document.activeElement as HTMLElement | null)?.blur();
      mark.click();
      const row = document.activeElement?.closest<HTMLElement>('.sources tr');
      if (!row || row.innerText.length < 20)
        astray.push(`${mark.ariaLabel} after ${mark.previousSibling?.textContent}`);
    }
    return { pressed: marks.length, astray };
  });
}

test('every mark beside a figure leads to a row that says where it comes from', async ({ page }) => {
  await page.goto('/');
  await cell(page, 'Wind-vane return').click();
  await expect(page.getByRole('region', { name: 'How sure is this?' })).toContainText('by sampling', {
    timeout: 60_000,
  });
  const { pressed, astray } = await marksAstray(page);
  expect(astray).toEqual([]);
  expect(pressed).toBeGreaterThan(15);
  // A mark leads to the row about its own figure, not only to some row of its kind: the last is that of the printer.
  await inUse(page)
    .getByRole('button', { name: /memory/ })
    .last()
    .click();
  await expect(page.locator('.sources tr:focus')).toHaveAttribute('data-about', 'printer');
});
