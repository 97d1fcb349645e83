import type { Page } from '@playwright/test';
import { findFilament } from '../../src/core/material/shelf.ts';
import { drop, expect, field, tabTo, test, violations } from './support.ts';

const tally = (page: Page) => page.getByRole('region', { name: 'Tally' });
const says = (page: Page) => page.getByRole('region', { name: 'What is tested' });
const rows = (page: Page) =>
  tally(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });
const slip = (page: Page) => page.locator('.slip').first();
const said = (page: Page, what: string) => page.getByRole('alert').filter({ hasText: what });
const choice = (page: Page, name: string) => page.getByRole('main').getByRole('combobox', { name, exact: true });

/**
 * A bar of 10 × 4 mm whose curve is a straight line: E = 2000 MPa over 50 mm is 40 mm²·2000 MPa/50 mm = 1600 N for each millimetre
 * of stretch. It parts at 1.2 mm, under 1920 N, which are 48 MPa.
 */
const [MODULUS, STRENGTH] = ['2000', '48'];
const CURVE = Array.from({ length: 241 }, (_, i) => `${(i * 0.005).toFixed(3)};${(8 * i).toFixed(1)}`);
const TABLE = ['extension mm;force N', ...CURVE, '1.205;3', '1.210;2', ''].join('\n');

/** The place, with “Pull” chosen as somebody without a mouse would. */
async function open(page: Page): Promise<void> {
  await page.goto('/#tests');
  await expect(tally(page)).toBeVisible();
  await tabTo(page, choice(page, 'What is done'));
  await page.keyboard.press('p');
  await expect(choice(page, 'What is done')).toHaveValue('pull');
}

async function type(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).focus();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

async function putIn(page: Page): Promise<void> {
  await tabTo(page, tally(page).getByRole('button', { name: 'Put it in' }));
  await page.keyboard.press('Enter');
}

const read = (page: Page, name: string, text: string) =>
  page.getByLabel('Table of forces to read').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

/** Says over which length the stretch was read. */
async function sayGauge(page: Page): Promise<void> {
  await choice(page, 'Whether the gauge length is known').focus();
  await page.keyboard.press('ArrowUp');
  await expect(field(page, 'Gauge length')).toHaveValue('50');
}

test('a strength is put in, changed and taken back by keyboard', async ({ page }) => {
  await open(page);
  await expect(says(page)).toContainText('a bar of');
  await expect(tally(page)).toContainText('No piece of the plate is pulled');
  await expect(tally(page)).toContainText('Eye protection');
  await type(page, 'Broke at', '41.5');
  await putIn(page);
  await expect(rows(page)).toHaveCount(1);
  await expect(slip(page)).toContainText('Pull 1 put in: along lines: 41.5');
  await expect(field(page, 'Broke at, pull 1')).toHaveValue('41.5');
  await expect(field(page, 'Stiffness, pull 1')).toHaveCount(0);
  await type(page, 'Broke at, pull 1', '43');
  await expect(slip(page)).toContainText('Pull 1 made 43');
  await tabTo(page, slip(page).getByRole('button', { name: 'Undo' }));
  await page.keyboard.press('Enter');
  await expect(field(page, 'Broke at, pull 1')).toHaveValue('41.5');
  await type(page, 'Broke at, pull 1', '900');
  await expect(said(page, 'Broke at, pull 1 may be 0.1 to 500')).toBeVisible();
  await page.keyboard.press('Escape');
  await tally(page).getByRole('button', { name: 'Set aside: Pull 1' }).press('Enter');
  await expect(tally(page).getByRole('button', { name: 'Bring back: Pull 1' })).toBeVisible();
  await tally(page).getByRole('button', { name: 'Remove: Pull 1' }).press('Enter');
  await expect(rows(page)).toHaveCount(0);
});

test('a stiffness goes with it where the stretch was measured', async ({ page }) => {
  await open(page);
  await choice(page, 'Pulled').focus();
  await page.keyboard.press('ArrowDown');
  await choice(page, 'Whether its stretch was measured').focus();
  await page.keyboard.press('w');
  await type(page, 'Stiffness', '1450');
  await type(page, 'Broke at', '21');
  await putIn(page);
  await expect(tally(page).getByRole('cell', { name: 'across layers' })).toBeVisible();
  await expect(field(page, 'Broke at, pull 1')).toHaveValue('21');
  await expect(field(page, 'Stiffness, pull 1')).toHaveValue('1450');
  await type(page, 'Stiffness, pull 1', '1500');
  await expect(slip(page)).toContainText('Pull 1 made 1500');
  await expect(field(page, 'Stiffness, pull 1')).toHaveValue('1500');
});

test('a table of forces gives the strength and the stiffness that it was made with', async ({ page }) => {
  await open(page);
  await sayGauge(page);
  const chooser = page.waitForEvent('filechooser');
  await tabTo(page, tally(page).getByRole('button', { name: 'Read a table of forces' }));
  await page.keyboard.press('Enter');
  await (await chooser).setFiles({ name: 'bar 1.txt', mimeType: 'text/plain', buffer: Buffer.from(TABLE) });
  await expect(field(page, 'Broke at, pull 1')).toHaveValue(STRENGTH);
  await expect(field(page, 'Stiffness, pull 1')).toHaveValue(MODULUS);
  await expect(page.getByLabel('Seen, pull 1')).toHaveValue('read from “bar 1.txt”');
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(tally(page)).toContainText('Nothing counted for PETG yet');
});

test('what a table does not tell is said, and nonsense is refused in words', async ({ page }) => {
  await open(page);
  await read(page, 'bar.csv', TABLE.replace('0.500;800.0', '0.500;n/a'));
  await expect(said(page, '“bar.csv” was read but for this.')).toContainText(
    'No stiffness can be told: an extension is a strain only over a length; give the gauge length.',
  );
  await expect(said(page, '“bar.csv” was read')).toContainText('Line 102 was left out');
  await expect(field(page, 'Broke at, pull 1')).toHaveValue(STRENGTH);
  await expect(field(page, 'Stiffness, pull 1')).toHaveCount(0);
  await read(page, 'poem.csv', 'the force\nthat through\nthe green fuse');
  await expect(said(page, '“poem.csv” was not taken.')).toContainText('give it in a column “force N”');
  await type(page, 'Width of the bar', '0.2');
  await expect(said(page, 'Width of the bar may be 1 to 100')).toBeVisible();
  await page.keyboard.press('Escape');
  await read(page, 'kilo.csv', TABLE.replace('force N', 'force kN'));
  await expect(said(page, '“kilo.csv” was not taken.')).toContainText('48000 MPa is above 500 MPa');
  await expect(rows(page)).toHaveCount(1);
});

test('a table that is dropped is read where bars are pulled, and elsewhere told where it goes', async ({ page }) => {
  await open(page);
  await sayGauge(page);
  await drop(page, 'one.csv', TABLE);
  await expect(field(page, 'Stiffness, pull 1')).toHaveValue(MODULUS);
  await drop(page, 'two.tsv', TABLE.replaceAll(';', '\t'));
  await expect(rows(page)).toHaveCount(2);
  await page.getByRole('link', { name: 'Joints' }).click();
  await drop(page, 'three.csv', TABLE);
  await expect(said(page, '“three.csv” was not taken.')).toContainText('Choose “Pull” as the first word under Tests');
  await expect(rows(page)).toHaveCount(2);
  await page.reload();
  await expect(choice(page, 'What is done')).toHaveValue('pull');
  await expect(field(page, 'Gauge length')).toHaveValue('50');
});

test('what bars have taught stands among the numbers of the filament, marked as a test of one’s own', async ({
  page,
}) => {
  await open(page);
  await sayGauge(page);
  await read(page, 'bar.csv', TABLE);
  await expect(rows(page)).toHaveCount(1);
  await page.getByRole('link', { name: 'Filaments' }).click();
  await page.getByRole('main').getByRole('link', { name: 'PETG, spool 1' }).first().click();
  const row = page.getByRole('row', { name: /^Strength when pulled/ });
  await expect(field(page, 'Strength when pulled')).toHaveValue(STRENGTH);
  await expect(row).toContainText('your own test');
  await expect(page.getByLabel('Strength when pulled, in your words')).toHaveValue('test prints: 1 bar pulled');
  // Most of what is believed of the stiffness is now what the bar said.
  await expect(page.getByLabel('Stiffness when pulled, in your words')).toHaveValue('test prints: 1 bar pulled');
  const petg = findFilament('petg')?.properties.youngsModulus.typical ?? Number.NaN;
  const told = Number((await field(page, 'Stiffness when pulled').inputValue()).replaceAll(/\s/g, ''));
  expect(told).toBeGreaterThan((petg + Number(MODULUS)) / 2);
  expect(told).toBeLessThan(Number(MODULUS));
});

for (const width of [360, 1280]) {
  test(`no rule of accessibility is broken and nothing hangs over the edge at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await open(page);
    await sayGauge(page);
    await read(page, 'bar.csv', TABLE);
    await expect(rows(page)).toHaveCount(1);
    await choice(page, 'Whether its stretch was measured').focus();
    await page.keyboard.press('w');
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await violations(page)).toEqual([]);
    expect(await over()).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Blueprint' }).click();
    expect(await violations(page)).toEqual([]);
    expect(await over()).toBeLessThanOrEqual(0);
  });
}
