import type { Page } from '@playwright/test';
import { expect, field, test, violations } from './support.ts';

const tally = (page: Page) => page.getByRole('region', { name: 'Tally', exact: true });
const says = (page: Page) => page.getByRole('region', { name: 'What these readings say' });
const choose = (page: Page, label: string, value: string) =>
  page.getByRole('main').getByRole('combobox', { name: label, exact: true }).selectOption(value);

async function set(page: Page, name: string, value: string): Promise<void> {
  const box = field(page, name);
  await box.fill(value);
  await box.press('Enter');
}

async function put(page: Page): Promise<void> {
  await tally(page).getByRole('button', { name: 'Put it in' }).click();
}

async function open(page: Page, doing: string): Promise<void> {
  await page.goto('/#tests');
  await expect(tally(page)).toBeVisible();
  await choose(page, 'What is done', doing);
}

test('rungs under a caliper say how thick lines come out, and sags how stiff the spool is', async ({ page }) => {
  await open(page, 'thickness');
  await expect(says(page)).toBeHidden();
  for (const [count, measured] of [
    ['1', '0.46'],
    ['2', '0.88'],
    ['4', '1.72'],
  ] as const) {
    await set(page, 'Lines across the strips', count);
    await set(page, 'Measured', measured);
    await put(page);
  }
  // Every rung is 0.04 mm too thick.
  await expect(says(page)).toContainText(/Four lines come out 1\.72\smm thick, not 1\.68/);
  await expect(says(page)).toContainText('By three readings.');
  await expect(says(page).getByRole('img', { name: /3 rungs of lines/ })).toBeVisible();
  expect(await violations(page)).toEqual([]);

  await choose(page, 'What is done', 'sag');
  await put(page);
  await expect(
    says(page).getByRole('img', { name: /^Stiffness to bend with: .* by one reading; before/ }),
  ).toBeVisible();
  await tally(page)
    .getByRole('button', { name: /^Remove/ })
    .click();
  await expect(says(page)).toBeHidden();
});

test('marks say what is missing, then which strain leaves no mark; nothing hangs over the edge of a phone', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await open(page, 'mark');
  for (const [radius, looks] of [
    ['16', 'unmarked'],
    ['8', 'unmarked'],
    ['4', 'whitened'],
  ] as const) {
    await set(page, 'Radius of the bar', radius);
    await tally(page).getByRole('combobox', { name: 'Looks', exact: true }).selectOption(looks);
    await put(page);
    if (radius === '16') await expect(says(page)).toContainText('Strips that whitened are needed');
  }
  await expect(says(page)).not.toContainText('needed');
  await expect(says(page).getByRole('img', { name: /^Strain of one brief flex: / })).toBeVisible();
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: 'Blueprint' }).click();
  expect(await violations(page)).toEqual([]);
});

test('a filament leads to its tests, and a tested spool back to its tallies', async ({ page }) => {
  await page.goto('/#filaments/pla');
  await page.getByRole('link', { name: 'Test prints of it' }).click();
  await expect(page.getByRole('combobox', { name: 'Filament or spool' })).toHaveValue('pla');
  await expect(page).toHaveURL(/#tests$/);
  await put(page);
  const spool = await page.getByRole('combobox', { name: 'Filament or spool' }).inputValue();
  expect(spool).toMatch(/^own-/);
  await choose(page, 'Filament or spool', 'petg');
  await page.goto(`/#filaments/${spool}`);
  await page.getByRole('link', { name: 'Its tallies under Tests' }).click();
  await expect(page.getByRole('combobox', { name: 'Filament or spool' })).toHaveValue(spool);
  await expect(tally(page).getByRole('rowheader')).toHaveCount(1);
  // Nonsense in the address is passed over.
  for (const nonsense of ['%22nothing', '%zz']) {
    await page.goto(`/#tests/of/${nonsense}`);
    await expect(page).toHaveURL(/#tests$/);
    await expect(page.getByRole('combobox', { name: 'Filament or spool' })).toHaveValue(spool);
  }
});
