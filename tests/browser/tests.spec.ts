import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import type { Tally } from '../../src/core/material/tally.ts';
import { findFilament, withOnShelf } from '../../src/core/material/shelf.ts';
import type { Filament } from '../../src/core/material/types.ts';
import { learnRow, newTests, withTally } from '../../src/core/tallies/learnRow.ts';
import { cycles, grouped, inHundred } from '../../src/ui/text/numbers.ts';
import { cell, core, demoJoint, drop, expect, field, tabTo, test, verdict, violations } from './support.ts';

const tally = (page: Page) => page.getByRole('region', { name: 'Tally' });
const strips = (page: Page) =>
  tally(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });
const slip = (page: Page) => page.locator('.slip').first();
const curve = (page: Page) => page.getByRole('region', { name: 'Fig. 2' });
const counter = (page: Page) => page.getByRole('group', { name: /^Counter, strip/ });

interface Count {
  readonly bends: number;
  readonly ended: 'broke' | 'whole';
}

const FIVE: readonly Count[] = [
  { bends: 900, ended: 'broke' },
  { bends: 1460, ended: 'broke' },
  { bends: 2150, ended: 'broke' },
  { bends: 2500, ended: 'whole' },
  { bends: 1137, ended: 'whole' },
];

async function open(page: Page): Promise<void> {
  await page.goto('/#tests');
  await expect(tally(page)).toBeVisible();
}

/** Puts a count in as somebody without a mouse would. */
async function putIn(page: Page, { bends, ended }: Count): Promise<void> {
  const box = tally(page).getByRole('spinbutton', { name: 'Bends', exact: true });
  await box.focus();
  await page.keyboard.type(String(bends));
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press(ended === 'broke' ? 'b' : 's');
  await tabTo(page, tally(page).getByRole('button', { name: 'Put it in' }));
  await page.keyboard.press('Enter');
}

/** The row that five counts make of PETG, as the core learns it. */
function taught(counts: readonly Count[]): Filament {
  const petg = findFilament('petg');
  if (!petg) throw new Error('the table has no PETG');
  const strip = {
    kind: 'flexes',
    bend: { way: 'over', radius: 5 },
    thickness: 0.84,
    lying: 'flat',
    ways: 'one way',
  } as const;
  const row = counts.reduce(
    (so, { bends, ended }, at) => {
      const one: Tally = { ...strip, id: `s${at}`, date: '2026-11-25', seen: '', cycles: bends, ended };
      return withTally(so, one);
    },
    newTests(petg, 'PETG, spool 1', 'own-test', '', 'spool 1'),
  );
  return learnRow(row, petg).row;
}

/** What the core makes of the demo joint by these counts. */
function judged(counts: readonly Count[]) {
  const row = taught(counts);
  const joint = demoJoint();
  const tested = { ...joint, profile: { ...joint.profile, filament: row.id } };
  return withOnShelf([row as Parameters<typeof withOnShelf>[0][number]], () => core(tested));
}

test('five counts put in by keyboard move the curve and the chance of the joint to what the core says', async ({
  page,
}) => {
  await open(page);
  const before = core(demoJoint());
  await expect(verdict(page)).toContainText(`${inHundred(before.life.chance)} in 100`);
  await expect(tally(page)).toContainText('Nothing counted for PETG yet');
  for (const count of FIVE) await putIn(page, count);
  await expect(strips(page)).toHaveCount(5);
  await expect(verdict(page)).toContainText('Three strips broke, two are still whole.');
  const after = judged(FIVE);
  expect(after.life.chance).not.toBeCloseTo(before.life.chance, 3);
  await expect(verdict(page)).toContainText(`${inHundred(after.life.chance)} in 100`);
  await expect(verdict(page)).toContainText(cycles(after.life.median));
  await expect(curve(page).getByRole('table', { name: 'Strips that were counted' }).getByRole('row')).toHaveCount(6);
  await expect(curve(page).getByText('your five strips')).toBeVisible();
});

test('the joint is reckoned by the counts, and undo by removing a tally takes their word back', async ({ page }) => {
  await open(page);
  for (const count of FIVE) await putIn(page, count);
  await expect(verdict(page)).toContainText('still reckoned by plain PETG');
  await verdict(page).getByRole('button', { name: 'Reckon the rain-flap hinge by these tests' }).click();
  await expect(slip(page)).toContainText('reckoned by PETG, spool 1');
  await expect(verdict(page)).toContainText('is reckoned by PETG, spool 1');
  await page.getByRole('link', { name: 'Joints' }).click();
  const after = judged(FIVE);
  await expect(verdict(page)).toContainText(`${inHundred(after.life.chance)} in 100 reach your ${grouped(5000)}`);
  await page.getByRole('link', { name: 'Tests' }).click();
  const four = FIVE.slice(0, 4);
  await tally(page).getByRole('button', { name: 'Remove: Strip 5' }).click();
  await expect(strips(page)).toHaveCount(4);
  await expect(verdict(page)).toContainText(`${inHundred(judged(four).life.chance)} in 100`);
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(strips(page)).toHaveCount(5);
  await expect(verdict(page)).toContainText(`${inHundred(after.life.chance)} in 100`);
});

test('a first tally and the spool made for it are one step to undo', async ({ page }) => {
  await open(page);
  await putIn(page, { bends: 900, ended: 'broke' });
  await expect(slip(page)).toContainText('“PETG, spool 1” made for it');
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(tally(page)).toContainText('Nothing counted for PETG yet');
  await page.getByRole('link', { name: 'Filaments' }).click();
  await expect(page.getByRole('main').getByText('PETG, spool 1')).toHaveCount(0);
});

test('counts outlast the page, and so does a count that is going on', async ({ page }) => {
  await open(page);
  await putIn(page, { bends: 900, ended: 'broke' });
  await counter(page).focus();
  for (let i = 0; i < 7; i += 1) await page.keyboard.press('Space');
  await expect(field(page, 'Count so far')).toHaveValue('7');
  await expect(page.getByText('on this machine only, saved')).toBeVisible();
  await page.reload();
  await expect(strips(page)).toHaveCount(2);
  await expect(tally(page).getByText('being counted')).toBeVisible();
  await expect(field(page, 'Count so far')).toHaveValue('7');
});

test('the counter goes by its keys, takes one back, and leaves keys alone that others want', async ({ page }) => {
  await open(page);
  await counter(page).focus();
  for (let i = 0; i < 12; i += 1) await page.keyboard.press('Space');
  await page.keyboard.press('Backspace');
  await expect(field(page, 'Count so far')).toHaveValue('11');
  // A field has its letters to itself.
  const seen = tally(page).getByRole('textbox', { name: 'What was seen', exact: true });
  await seen.focus();
  await page.keyboard.type('bs b');
  await expect(seen).toHaveValue('bs b');
  await expect(field(page, 'Count so far')).toHaveValue('11');
  await page.keyboard.press('Escape');
  await counter(page).focus();
  await page.keyboard.press('b');
  await expect(strips(page)).toHaveCount(1);
  await expect(field(page, 'Bends, strip 1')).toHaveValue('11');
  await expect(slip(page)).toContainText('Strip 1 counted: 11, broke');
});

test('a strip still whole is gone on with, and its count cannot fall', async ({ page }) => {
  await open(page);
  await putIn(page, { bends: 1460, ended: 'whole' });
  await tally(page)
    .getByRole('button', { name: /^Go on: Strip 1/ })
    .click();
  const stands = field(page, 'Count so far');
  await expect(stands).toHaveValue(grouped(1460));
  await stands.fill('900');
  await stands.press('Enter');
  await expect(counter(page).getByRole('alert')).toHaveText(
    `Strip 1 says ${grouped(1460)}, then 900: a count cannot fall. Still using ${grouped(1460)}.`,
  );
  await stands.press('Escape');
  await counter(page).focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('b');
  await expect(field(page, 'Bends, strip 1')).toHaveValue(grouped(1461));
  await expect(strips(page)).toHaveCount(1);
});

test('nonsense in a field is refused with the reason, and what was there stays', async ({ page }) => {
  await open(page);
  const radius = field(page, 'Radius of the bar');
  for (const [text, why] of [
    ['-3', 'may be 0.5 to 200'],
    ['banana', 'Still using 5'],
    ['9999', 'may be 0.5 to 200'],
  ] as const) {
    await radius.fill(text);
    await radius.press('Enter');
    await expect(page.getByRole('region', { name: 'What is tested' }).getByRole('alert').first()).toContainText(why);
    await radius.press('Escape');
  }
  await expect(radius).toHaveValue('5');
  const bends = tally(page).getByRole('spinbutton', { name: 'Bends', exact: true });
  await bends.fill('0');
  await bends.press('Enter');
  await expect(tally(page).getByRole('alert').filter({ hasText: 'Bends may be' })).toBeVisible();
});

test('tallies go out as CSV and come in again, by chooser and by drop', async ({ page }) => {
  await open(page);
  for (const count of FIVE) await putIn(page, count);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Tallies as CSV' }).click();
  const saved = await saving;
  const text = await readFile(await saved.path(), 'utf8');
  expect(text).toContain('1460');
  // All of them are removed, and brought in again.
  for (let i = 5; i > 0; i -= 1)
    await tally(page)
      .getByRole('button', { name: `Remove: Strip ${i}` })
      .click();
  await expect(strips(page)).toHaveCount(0);
  const chooser = page.getByLabel('CSV of tallies to bring in');
  await chooser.setInputFiles({ name: 'mine.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await expect(strips(page)).toHaveCount(5);
  await expect(verdict(page)).toContainText(`${inHundred(judged(FIVE).life.chance)} in 100`);
  // What was put right in a spreadsheet is put right here.
  await drop(page, 'mended.csv', text.replace('1460', '1640'));
  await expect(field(page, 'Bends, strip 2')).toHaveValue(grouped(1640));
  await expect(strips(page)).toHaveCount(5);
  await drop(page, 'bad.csv', text.replace('1460', 'lots'));
  await expect(page.getByRole('alert').filter({ hasText: 'bad.csv' })).toContainText(/line 3/i);
  await expect(strips(page)).toHaveCount(5);
});

test('what to test next is ranked for the joint, and set up with one press', async ({ page }) => {
  await open(page);
  const next = page.getByRole('region', { name: 'What to test next' });
  const first = next.getByRole('listitem').first();
  await expect(first).toContainText('Costs', { timeout: 30_000 });
  const strip = next
    .getByRole('listitem')
    .filter({ hasText: /over R/ })
    .first();
  const heading = (await strip.getByRole('heading').textContent()) ?? '';
  await strip.getByRole('button').click();
  const radius = /R\s*([\d.]+)/.exec(heading)?.[1];
  await expect(field(page, 'Radius of the bar')).toHaveValue(radius ?? '');
});

for (const [piece, put, row] of [
  ['Thickness ladder', 'Measured', 'Measured, reading 1'],
  ['Deflection bar', 'Sag', 'Sag, weighing 1'],
  ['Hold piece', 'Left bent', 'Left bent, hold 1'],
] as const) {
  test(`the ${piece} has its own tally`, async ({ page }) => {
    await open(page);
    await page.getByRole('radio', { name: new RegExp(piece) }).check({ force: true });
    await expect(tally(page).getByRole('spinbutton', { name: put, exact: true })).toBeVisible();
    await tally(page).getByRole('button', { name: 'Put it in' }).click();
    await expect(field(page, row)).toBeVisible();
    await tally(page)
      .getByRole('button', { name: /^Set aside/ })
      .click();
    await expect(tally(page).getByRole('button', { name: /^Bring back/ })).toBeVisible();
  });
}

test('the sentence follows the piece: the strip of a comb, the weight of a bar, and what a small plate leaves', async ({
  page,
}) => {
  await open(page);
  const choose = (name: string) => page.getByRole('radio', { name: new RegExp(name) }).check({ force: true });
  const strip = page.getByRole('combobox', { name: 'Strip of the piece' });
  await choose('Strip comb');
  await expect(field(page, 'Turned to')).toHaveValue('90');
  await strip.selectOption('strip 1');
  const shortest = Number(await field(page, 'Free length').inputValue());
  await strip.selectOption('strip 6');
  expect(Number(await field(page, 'Free length').inputValue())).toBeGreaterThan(2 * shortest);
  await page.getByRole('combobox', { name: 'How the strips are bent' }).selectOption('over');
  await expect(page.getByRole('radio', { name: /Radius block/ })).toBeChecked();

  await page.getByRole('combobox', { name: 'What is done' }).selectOption({ label: 'Hang' });
  const says = page.getByRole('region', { name: 'Deflection bar' });
  const grams = await field(page, 'Weight').inputValue();
  await expect(says).toContainText(`hang about ${grams}`);

  await choose('Radius block');
  const side = field(page, 'Plate, left to right');
  await side.fill('120');
  await side.press('Enter');
  await expect(page.getByText(/more than the plate of 120 × 220 mm holds/)).toBeHidden();
  const deep = field(page, 'Plate, front to back');
  await deep.fill('120');
  await deep.press('Enter');
  await expect(page.getByText(/more than the plate of 120 × 120 mm holds, so that it is made smaller/)).toBeVisible();
  await deep.fill('80');
  await deep.press('Enter');
  await side.fill('80');
  await side.press('Enter');
  await expect(page.getByText(/^Radius block: .* do not fit on this plate/)).toBeVisible();
});

test('invented counts are called so, on a spool of their own', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Show it with invented counts' }).click();
  await expect(strips(page)).toHaveCount(5);
  await expect(page.getByText('invented counts', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Another spool' }).click();
  await expect(strips(page)).toHaveCount(0);
  await page.getByRole('link', { name: 'Joints' }).click();
  await expect(cell(page, 'Rain-flap hinge')).toBeVisible();
});

for (const width of [360, 1280, 1920]) {
  test(`no rule of accessibility is broken and nothing hangs over the edge at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await open(page);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Show it with invented counts' }).click();
    await expect(strips(page)).toHaveCount(5);
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await over()).toBeLessThanOrEqual(0);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Blueprint' }).click();
    expect(await violations(page)).toEqual([]);
    expect(await over()).toBeLessThanOrEqual(0);
  });
}
