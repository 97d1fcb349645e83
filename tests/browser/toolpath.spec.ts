import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { sampleToolpath, SAMPLE_NAME } from '../../src/ui/toolpath/sampleToolpath.ts';
import { drop, expect, field, tabTo, test, verdict, violations } from './support.ts';

/** A check is over in a moment; a busy machine may take longer. */
const LONG = { timeout: 30_000 };

const chooser = (page: Page) => page.getByLabel('Toolpath to check').first();
const strip = (page: Page) => page.getByRole('navigation', { name: 'Thin sections of this toolpath' });
const findings = (page: Page) => page.getByRole('region', { name: 'What was found' });
const slip = (page: Page) => page.locator('.slip.of-check');
const against = (page: Page) => page.getByRole('combobox', { name: 'Held against' });
const where = (page: Page) => page.getByRole('region', { name: 'Where to look' });
const file = (name: string, text: string) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

async function choose(page: Page, name: string, text: string): Promise<void> {
  await chooser(page).setInputFiles(file(name, text));
  await expect(page.locator('.fname')).toHaveText(name, LONG);
}

async function openSample(page: Page): Promise<void> {
  await page.goto('/#toolpath');
  await page.getByRole('button', { name: 'Try a sample toolpath' }).click();
  await expect(page.locator('.fname')).toHaveText(SAMPLE_NAME, LONG);
}

test('the sample shows by keyboard what is laid across the flexure, and breaks no rule of accessibility', async ({
  page,
}) => {
  await page.goto('/#toolpath');
  // The place comes a step after the sheet; judged before, there would be nothing to judge.
  await expect(page.getByRole('button', { name: 'Try a sample toolpath' })).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await tabTo(page, page.getByRole('button', { name: 'Try a sample toolpath' }));
  await page.keyboard.press('Enter');
  await expect(page.locator('.fname')).toHaveText(SAMPLE_NAME, LONG);
  await expect(page.getByText('(invented)').first()).toBeVisible();
  await expect(strip(page).getByRole('listitem')).toHaveCount(1);
  await expect(verdict(page)).toContainText('Fail: not laid as the joint wants');
  await expect(verdict(page)).toContainText('6 of 30 layers');
  await expect(against(page).locator('option:checked')).toHaveText('Rain-flap hinge');
  await expect(findings(page)).toContainText('layers 9 to 14');
  await expect(findings(page)).toContainText('thin third line');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Blueprint' }).click();
  expect(await violations(page)).toEqual([]);
});

test('G-code dropped on the joints is looked at in its own place, and the joints stay as they were', async ({
  page,
}) => {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await drop(page, 'flap.gcode', sampleToolpath());
  await expect(page.locator('.fname')).toHaveText('flap.gcode', LONG);
  expect(new URL(page.url()).hash).toBe('#toolpath');
  await expect(page.getByText('(invented)')).toHaveCount(0);
  await page.getByRole('link', { name: 'Joints' }).click();
  await expect(page.getByText(/^Joint 1 of 13$/)).toBeVisible();
  await page.getByRole('link', { name: 'Toolpath' }).click();
  await expect(strip(page).getByRole('listitem')).toHaveCount(1);
});

test('a file whose name tells nothing is known by its first lines', async ({ page }) => {
  await page.goto('/#mesh');
  await drop(page, 'flap-without-ending', sampleToolpath());
  await expect(page.locator('.fname')).toHaveText('flap-without-ending', LONG);
  expect(new URL(page.url()).hash).toBe('#toolpath');
});

test('a long file says how far it is, and is stopped', async ({ page }) => {
  const folder = mkdtempSync(join(tmpdir(), 'toolpath-'));
  try {
    const path = join(folder, 'long.gcode');
    const text = Buffer.from(sampleToolpath());
    const long = openSync(path, 'w');
    // Long enough that nobody reads it within a blink.
    for (let i = 0; i < 3000; i += 1) writeSync(long, text);
    closeSync(long);
    await openSample(page);
    await chooser(page).setInputFiles(path);
    const bar = page.getByRole('progressbar', { name: /Reading “long\.gcode”/ });
    await expect(bar).toBeAttached(LONG);
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    const stopped = page.getByRole('alert', { name: 'Stopped' });
    await expect(stopped).toContainText('The toolpath before it stays on the sheet.');
    await expect(page.locator('.fname')).toHaveText(SAMPLE_NAME);
    await stopped.getByRole('button', { name: 'Dismiss' }).click();
    await expect(stopped).toHaveCount(0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a file that is no toolpath is refused with the reason, and the one before it stays', async ({ page }) => {
  await openSample(page);
  const bytes = Buffer.from(Array.from({ length: 400 }, (_, i) => (i * 37) % 256));
  await chooser(page).setInputFiles({ name: 'picture.gcode', mimeType: 'text/plain', buffer: bytes });
  const refused = page.getByRole('alert', { name: /^Refused/ });
  await expect(refused).toContainText('picture.gcode', LONG);
  await expect(refused).toContainText('stays on the sheet');
  await expect(page.locator('.fname')).toHaveText(SAMPLE_NAME);
});

test('a file that lays nothing is said to be a mill’s', async ({ page }) => {
  await page.goto('/#toolpath');
  await choose(page, 'plate.nc', 'G21\nG90\nG0 Z5\nG1 X10 Y0\nG1 Z-1\nG1 X20 Y10\nG0 Z5\n');
  await expect(verdict(page)).toContainText('Nothing is laid');
  await expect(verdict(page)).toContainText('this looks like a milling file');
});

test('lines that are not understood are counted and shown, and a file that breaks off says so', async ({ page }) => {
  await page.goto('/#toolpath');
  const lines = sampleToolpath().split('\n');
  const cut = [...lines.slice(0, 20), 'G1 X1..2 Y', ...lines.slice(20, 400), 'G1 X12.3 Y'].join('\n');
  await choose(page, 'cut.gcode', cut);
  await expect(page.getByText('breaks off inside its last line')).toBeVisible();
  await page.getByText('Lines that were not understood').click();
  await expect(page.locator('.bad-lines li').first()).toContainText('G1 X1..2 Y');
});

test('another joint, or none, is held against it; the slip takes it back', async ({ page }) => {
  await openSample(page);
  await against(page).selectOption({ label: 'no joint of yours' });
  await expect(page.locator('.brief')).toContainText('so against what the file itself lays most');
  await expect(slip(page)).toContainText('held against no joint of yours, was Rain-flap hinge');
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.brief')).toContainText('which wants');
  await page.keyboard.press('Control+y');
  await expect(page.locator('.brief')).toContainText('so against what the file itself lays most');
});

test('what is said of the printer outlasts the page; the file does not', async ({ page }) => {
  await openSample(page);
  await field(page, 'Filament diameter').press('ArrowUp');
  await expect(field(page, 'Filament diameter')).toHaveValue('2.85');
  await page.keyboard.press('Enter');
  await expect(page.getByText('as you said')).toBeVisible(LONG);
  await page.reload();
  await expect(page.getByRole('button', { name: 'Try a sample toolpath' })).toBeVisible();
  await choose(page, 'flap.gcode', sampleToolpath());
  await expect(field(page, 'Filament diameter')).toHaveValue('2.85');
});

test('a box drawn by keyboard is looked at, checked, changed and removed', async ({ page }) => {
  await openSample(page);
  await tabTo(page, where(page).getByRole('button', { name: 'Draw a box' }));
  await page.keyboard.press('Enter');
  await expect(slip(page)).toContainText('Box 2 drawn');
  await expect(strip(page).getByRole('listitem')).toHaveCount(2, LONG);
  await expect(strip(page).getByRole('button', { name: /^2/ })).toHaveAttribute('aria-current', 'true');
  await field(page, 'Length of box 2').fill('8');
  await page.keyboard.press('Enter');
  await expect(slip(page)).toContainText('Length of box 2 set to 8.00 mm, was 5.00');
  await expect(strip(page).getByRole('listitem')).toHaveCount(2, LONG);
  await field(page, 'Top of box 2').fill('-1');
  await page.keyboard.press('Enter');
  await expect(where(page)).toContainText('Top cannot be under');
  await page.keyboard.press('Escape');
  await where(page).getByRole('button', { name: 'Remove this box: 2' }).click();
  await expect(strip(page).getByRole('listitem')).toHaveCount(1);
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(strip(page).getByRole('listitem')).toHaveCount(2, LONG);
});

test('the report is read, kept as a file and printed', async ({ page }) => {
  await openSample(page);
  await page.getByRole('button', { name: 'Write the report' }).click();
  const report = page.getByRole('article', { name: `What ${SAMPLE_NAME} lays` });
  await expect(report).toContainText('One thin section is looked at');
  await expect(report).toContainText('layers 9 to 14');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep it as a file' }).click();
  const kept = await coming;
  expect(kept.suggestedFilename()).toBe('rain-flap-invented report.txt');
  await page.emulateMedia({ media: 'print' });
  await expect(report).toBeVisible();
  await expect(findings(page)).toBeHidden();
});

for (const width of [360, 620, 1280, 2560]) {
  test(`nothing runs over the edge of a page ${width} px wide`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openSample(page);
    await where(page).getByRole('button', { name: 'Draw a box' }).click();
    const [wide, room] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect(wide).toBeLessThanOrEqual(room ?? 0);
    // A table that is cut off makes no page wider.
    const rights = await page
      .locator('main table')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().right));
    expect(Math.max(...rights)).toBeLessThanOrEqual(width);
  });
}
