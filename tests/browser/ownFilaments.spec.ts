import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readFilamentFile } from '../../src/files/filamentFile.ts';
import { writeFilaments } from '../../src/files/filamentText.ts';
import { ownPetg } from '../support/ownFilaments.ts';
import { expect, test } from './support.ts';

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
