import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readFilamentFile } from '../../src/files/filamentFile.ts';
import { writeFilaments } from '../../src/files/filamentText.ts';
import { ownPetg } from '../support/ownFilaments.ts';
import { expect, test, violations } from './support.ts';

/** Opens PETG and makes a filament of one's own from it. */
async function makeOwn(page: Page): Promise<void> {
  await page.goto('/#filaments/petg');
  await page.getByRole('button', { name: 'Make my own from this' }).click();
  await expect(page).toHaveURL(/#filaments\/own-/);
}

const modulus = (page: Page) => page.getByRole('spinbutton', { name: 'Stiffness when bent', exact: true });

/** Types into a value field and takes it. */
async function put(page: Page, name: string, value: string): Promise<void> {
  const field = page.getByRole('spinbutton', { name, exact: true });
  await field.fill(value);
  await field.press('Enter');
}

const kept = (page: Page) => expect(page.getByText('on this machine only, saved')).toBeVisible();

test('makes a filament of one’s own, says where its value comes from, and takes each change back', async ({ page }) => {
  await makeOwn(page);
  await expect(modulus(page)).toHaveValue(/^1.850$/);
  await put(page, 'Stiffness when bent', '1700');
  await expect(modulus(page)).toHaveValue(/^1.700$/);
  const origin = page.getByRole('combobox', { name: 'Stiffness when bent, where it comes from' });
  await expect(origin).toHaveValue('memory');
  await origin.selectOption('test');
  const words = page.getByRole('textbox', { name: 'Stiffness when bent, in your words' });
  await words.fill('three bars over supports');
  await words.press('Enter');
  await expect(words).toHaveValue('three bars over supports');
  for (let n = 0; n < 3; n += 1) await page.keyboard.press('Control+z');
  await expect(modulus(page)).toHaveValue(/^1.850$/);
  await expect(origin).toHaveValue('as made');
});

test('refuses what cannot be, in words under the field, and keeps the old value', async ({ page }) => {
  await makeOwn(page);
  await put(page, 'Strain at which it stays bent', '3000');
  await expect(page.getByRole('alert').filter({ hasText: 'is above 2000 %' })).toContainText('Still using 3.5');
  await put(page, 'Strain at many cycles', '14');
  await expect(page.getByRole('alert').filter({ hasText: 'No falling curve goes through' })).toBeVisible();
});

test('lets the permissible strains follow the yield strain', async ({ page }) => {
  await makeOwn(page);
  await put(page, 'Strain at which it stays bent', '4');
  await expect(page.getByRole('spinbutton', { name: 'Strain stood once in a while', exact: true })).toHaveValue('2.8');
  await expect(page.getByRole('spinbutton', { name: 'Strain stood again and again', exact: true })).toHaveValue('1.68');
});

test('offers it to joints, works with it at once, and will not remove it while it is used', async ({ page }) => {
  await makeOwn(page);
  await page.getByRole('link', { name: 'Joints' }).click();
  const verdict = page.getByRole('region', { name: 'Verdict' });
  await expect(verdict).toBeVisible();
  await page.getByRole('combobox', { name: 'Filament' }).selectOption({ label: 'My PETG' });
  const before = await verdict.innerText();
  await page.goto('/#filaments');
  await page.getByRole('link', { name: 'My PETG' }).first().click();
  await expect(page.getByRole('button', { name: 'Remove' })).toHaveAttribute('aria-disabled', 'true');
  await put(page, 'Strain at few cycles', '2.5');
  await page.getByRole('link', { name: 'Joints' }).click();
  await expect(verdict).toBeVisible();
  await expect(verdict).not.toHaveText(before);
});

test('keeps it between visits, and brings it back when it was removed', async ({ page }) => {
  await makeOwn(page);
  await put(page, 'Stiffness when bent', '1700');
  await kept(page);
  await page.reload();
  await expect(modulus(page)).toHaveValue(/^1.700$/);
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(page).toHaveURL(/#filaments$/);
  await expect(page.getByRole('link', { name: 'My PETG' })).toHaveCount(0);
  await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('link', { name: 'My PETG' }).first()).toBeVisible();
});

test('shares it as a file and opens files of others, also by drop, without overwriting', async ({ page }) => {
  await makeOwn(page);
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share as a file' }).click();
  const file = await saved;
  expect(file.suggestedFilename()).toBe('my-petg.filament.json');
  const read = readFilamentFile(readFileSync(await file.path(), 'utf8'));
  expect(read).toMatchObject({ ok: true, value: [{ name: 'My PETG', own: { from: 'petg' } }] });

  const blue = { name: 'blue.json', mimeType: 'application/json', buffer: Buffer.from(writeFilaments([ownPetg()])) };
  await page.getByLabel('Filament file to open').setInputFiles(blue);
  await expect(page).toHaveURL(/own-petg$/);
  const other = writeFilaments([{ ...ownPetg(), own: { from: 'petg', remark: 'another spool' } }]);
  await page.evaluate((text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], 'other.json'));
    document.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, bubbles: true, cancelable: true }));
  }, other);
  await expect(page.getByRole('alert').filter({ hasText: 'came in as “PETG blue (2)”' })).toBeVisible();
});

test('takes nonsense nowhere, and says what is wrong with it in its row', async ({ page }) => {
  await makeOwn(page);
  const density = page.getByRole('row', { name: /^Density/ });
  for (const [typed, why] of [
    ['heavy', 'cannot be read'],
    ['', 'needs a number'],
    ['1e400', 'cannot be as large'],
    ['1e9', 'is above 5000 kg/m³'],
    ['-5', 'is below 100 kg/m³'],
    ['1/0', 'divided by nothing'],
  ] as const) {
    await put(page, 'Density', typed);
    await expect(density.getByRole('alert')).toContainText(why);
    await expect(density.getByRole('alert')).toContainText(/Still using 1.270.kg/);
  }
  await put(page, 'Density, low', '2000');
  await expect(density.getByRole('alert')).toContainText('its low 2000 kg/m³ is above its usual 1270 kg/m³');
  for (const typed of ['0', '1e12']) {
    await put(page, 'Many cycles', typed);
    await expect(page.getByRole('alert').filter({ hasText: 'Many cycles must be from 1 to' })).toBeVisible();
  }
  const name = page.getByRole('textbox', { name: 'Name', exact: true });
  await name.fill('   ');
  await name.press('Enter');
  await expect(name).toHaveValue('My PETG');
  await name.fill('W'.repeat(300));
  await name.press('Enter');
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

test('moves nothing when an edit begins', async ({ page }) => {
  await makeOwn(page);
  // The fields come in a file of their own: until then the rows of the table stand there, which are others.
  await expect(page.getByRole('spinbutton', { name: 'Stiffness when bent', exact: true })).toBeVisible();
  await expect(page.getByRole('spinbutton', { name: 'Strain at few cycles', exact: true })).toBeVisible();
  const heights = () =>
    page
      .locator('.numbers tr, .stands-on tr')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  const before = await heights();
  for (const name of ['Stiffness when bent', 'Density, high', 'Doubt about the curve', 'Strain at few cycles']) {
    await page.getByRole('spinbutton', { name, exact: true }).focus();
    await page.keyboard.press('5');
    expect(await heights()).toEqual(before);
    await page.keyboard.press('Escape');
  }
});

test('shows the evidence of a copied curve until its course is changed, and again when that is undone', async ({
  page,
}) => {
  await makeOwn(page);
  const stands = page.getByRole('region', { name: 'What the curve stands on' });
  await expect(stands).toContainText('common practice');
  await expect(stands.getByRole('heading')).toContainText('as in PETG');
  await put(page, 'Strain at few cycles', '6');
  await expect(stands).not.toContainText('common practice');
  await expect(stands).toContainText('Set through 6 % at 1 000');
  await page.keyboard.press('Control+z');
  await expect(stands).toContainText('common practice');
});

test('stays whole when the open filament goes: by undo, by removal and the way back, by an address of nothing', async ({
  page,
}) => {
  await makeOwn(page);
  const lost = page.getByText('No filament is kept under this address');
  const { hash } = new URL(page.url());
  await put(page, 'Density', '1280');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(lost).toBeVisible();
  await page.keyboard.press('Control+Shift+z');
  await expect(page).toHaveTitle(/^My PETG, /);
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(page).toHaveURL(/#filaments$/);
  await expect(lost).toBeHidden();
  await page.goBack();
  await expect(page).toHaveURL(new RegExp(`${hash}$`));
  await expect(lost).toBeVisible();
  await page.goto('/#filaments/own-xyz');
  await page.reload();
  await expect(lost).toBeVisible();
  await expect(page.getByRole('table', { name: /Side by side/ })).toBeVisible();
});

test('makes, edits and removes a filament in a part without joints', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'New part' }).click();
  await makeOwn(page);
  await put(page, 'Density', '1280');
  await expect(page.getByRole('spinbutton', { name: 'Density', exact: true })).toHaveValue(/^1.280$/);
  await page.getByRole('link', { name: 'All filaments' }).click();
  await expect(page.getByRole('link', { name: 'My PETG' }).first()).toBeVisible();
  await expect(page.getByText(/your joint/i)).toHaveCount(0);
  await page.goBack();
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(page).toHaveURL(/#filaments$/);
  await expect(page.getByRole('link', { name: 'My PETG' })).toHaveCount(0);
});

test('carries two hundred filaments without drowning the page in them', async ({ page }) => {
  // Two hundred rows of a wide table, which a busy machine draws slowly.
  test.slow();
  await page.goto('/#filaments');
  const many = Array.from({ length: 200 }, (_, at) => ownPetg(`own-${at + 1}`, `Spool ${at + 1}`));
  const file = { name: 'many.json', mimeType: 'application/json', buffer: Buffer.from(writeFilaments(many)) };
  await page.getByLabel('Filament file to open').setInputFiles(file);
  await expect(page).toHaveURL(/own-1$/, { timeout: 30_000 });
  await expect(page.getByRole('status').filter({ hasText: 'and 198 more put with your filaments' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Copy', exact: true })).toHaveAttribute('aria-disabled', 'true');
  await page.getByRole('link', { name: 'All filaments' }).click();
  await expect(page.getByRole('table', { name: /Side by side/ }).getByRole('rowheader')).toHaveCount(210, {
    timeout: 30_000,
  });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
});

for (const width of [360, 800, 1280]) {
  test(`the page of an own filament breaks no rule of accessibility and stays as wide as it is at ${width} px`, async ({
    page,
  }) => {
    // A pass over a page of a thousand drawn things, which a busy machine does not do in the usual time.
    test.slow();
    await page.setViewportSize({ width, height: 800 });
    await makeOwn(page);
    await put(page, 'Strain at few cycles', '6');
    await put(page, 'Density', '1e9');
    await expect(page.getByRole('alert').filter({ hasText: 'is above 5000' })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
