import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { drop, expect, field, tabTo, test, verdict, violations } from './support.ts';

const PARTS = 'tests/files/mesh/parts';
const LEAVES = 'syn-leaves-042-084-126.stl';
const GRIPPER = 'syn-four-hinge-gripper-084.stl';
/** A check is over in a moment; a busy machine may take longer. */
const LONG = { timeout: 30_000 };

const chooser = (page: Page) => page.getByLabel('Part file to check').first();
const strip = (page: Page) => page.getByRole('navigation', { name: 'Thin sections of this part' });
const findings = (page: Page) => page.getByRole('region', { name: 'Thin sections found' });
const rows = (page: Page) => findings(page).locator('tbody tr');
const slip = (page: Page) => page.locator('.slip.of-check');
const balloon = (page: Page, figure: string, number: number): Locator =>
  page.locator(figure).getByRole('button', { name: new RegExp(`^Number ${number}:`) });

async function choose(page: Page, name: string): Promise<void> {
  await chooser(page).setInputFiles(`${PARTS}/${name}`);
  await expect(page.locator('.fname')).toHaveText(name, LONG);
}

async function openWithPart(page: Page, name: string): Promise<void> {
  await page.goto('/#mesh');
  await choose(page, name);
}

/** Dropped, and told before it is let go what for. */
function dropPart(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  return drop(page, name, bytes, () => expect(page.getByText('Let go to look for thin sections')).toBeVisible());
}

test('a part dropped on the joints is checked in its own place, and the joints stay as they were', async ({ page }) => {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await dropPart(page, LEAVES, readFileSync(`${PARTS}/${LEAVES}`));
  await expect(page.locator('.fname')).toHaveText(LEAVES, LONG);
  expect(new URL(page.url()).hash).toBe('#mesh');
  await expect(strip(page).getByRole('listitem')).toHaveCount(3);
  await expect(rows(page)).toHaveCount(3);
  await expect(rows(page).nth(1)).toContainText('0.84');
  await expect(page.getByText('Mesh', { exact: true })).toHaveAttribute('aria-current', 'page');
  await page.getByRole('link', { name: 'Joints' }).click();
  await expect(page.getByText(/^Joint 1 of 13$/)).toBeVisible();
  // What was checked is still there.
  await page.getByRole('link', { name: 'Mesh' }).click();
  await expect(rows(page)).toHaveCount(3);
});

test('a file whose name tells nothing is known by what is in it', async ({ page }) => {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await dropPart(page, 'part-without-ending', readFileSync(`${PARTS}/${GRIPPER}`));
  await expect(page.locator('.fname')).toHaveText('part-without-ending', LONG);
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page)).toContainText('four alike');
});

test('another line width judges at once; a cure sets it, and the slip takes it back', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await expect(rows(page).nth(1)).toContainText('2 lines');
  await field(page, 'Line width').fill('0.56');
  await page.keyboard.press('Enter');
  await expect(rows(page).nth(0)).toContainText('0.75 lines');
  await expect(rows(page).nth(1)).toContainText('1.50 lines');
  await expect(verdict(page)).toContainText('Fail: none of three');
  const cure = page.getByRole('button', { name: 'Use it: Set lines to 0.42 mm' });
  await cure.click();
  await expect(field(page, 'Line width')).toHaveValue('0.42');
  await expect(slip(page)).toContainText('Lines set to 0.42 mm, were 0.56');
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(field(page, 'Line width')).toHaveValue('0.56');
  await page.keyboard.press('Control+z');
  await expect(field(page, 'Line width')).toHaveValue('0.42');
  // The values outlast the page, the file does not.
  await field(page, 'Line width').fill('0.5');
  await page.keyboard.press('Enter');
  await page.reload();
  await expect(page.getByRole('button', { name: 'Try a sample part' })).toBeVisible();
  await choose(page, LEAVES);
  await expect(field(page, 'Line width')).toHaveValue('0.50');
});

test('the scale takes a sum or a share, and its handle goes from one whole place to the next', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await field(page, 'Scale of the part').fill('4/3');
  await page.keyboard.press('Enter');
  await expect(field(page, 'Scale of the part')).toHaveValue('1.333');
  await field(page, 'Scale of the part').fill('200 %');
  await page.keyboard.press('Enter');
  await expect(field(page, 'Scale of the part')).toHaveValue('2.00');
  await expect(rows(page).nth(2)).toContainText('6 lines');
  const handle = page.getByRole('slider', { name: 'Scale of the part' });
  await handle.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(handle).toHaveAttribute('aria-valuenow', '1.99');
  await page.keyboard.press('PageUp');
  await expect(handle).toHaveAttribute('aria-valuenow', '2');
  await page.keyboard.press('PageDown');
  await expect(handle).toHaveAttribute('aria-valuenow', '1');
});

test('what is chosen in one place is chosen everywhere, by keyboard alone', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await tabTo(page, strip(page).getByRole('button', { name: /^1/ }));
  await page.keyboard.press('ArrowRight');
  await expect(strip(page).getByRole('button', { name: /^2/ })).toBeFocused();
  await expect(strip(page).getByRole('button', { name: /^2/ })).toHaveAttribute('aria-current', 'true');
  await expect(rows(page).nth(1)).toHaveClass('on');
  for (const figure of ['.part-picture', '.section-drawing']) {
    await expect(balloon(page, figure, 2)).toHaveAttribute('aria-pressed', 'true');
  }
  await tabTo(page, balloon(page, '.section-drawing', 2));
  await page.keyboard.press('ArrowRight');
  await expect(balloon(page, '.section-drawing', 3)).toBeFocused();
  await expect(rows(page).nth(2)).toHaveClass('on');
  await tabTo(page, rows(page).nth(2).getByRole('button', { name: 'Look at 3' }));
  await page.keyboard.press('ArrowUp');
  await expect(rows(page).nth(1).getByRole('button', { name: 'Look at 2' })).toBeFocused();
  await expect(verdict(page)).toContainText('Number 2');
});

test('a thin section becomes a joint of the part, which opens on it and can be taken back', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await page.getByRole('button', { name: 'Make it a joint: 2' }).click();
  await expect(verdict(page)).toBeVisible();
  await expect(page.getByText(/^Joint 14 of 14$/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue(/syn-leaves-042-084-126/i);
  const said = page.locator('.slip').filter({ hasText: LEAVES });
  await expect(said).toContainText('added from');
  await said.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(/ of 13$/)).toBeVisible();
});

test('a file that is no part is refused with the reason, and the part before it stays', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await chooser(page).setInputFiles({
    name: 'broken.3mf',
    mimeType: 'model/3mf',
    buffer: Buffer.from('this is no archive, whatever its name says'),
  });
  const refused = page.getByRole('alert', { name: /^Refused/ });
  await expect(refused).toContainText('broken.3mf', LONG);
  await expect(refused).toContainText('42 bytes');
  await expect(refused).toContainText('stays on the sheet');
  await expect(page.locator('.fname')).toHaveText(LEAVES);
  await refused.getByRole('button', { name: 'Dismiss' }).click();
  await expect(refused).toHaveCount(0);
});

test('one press shows a sample part, with all that is told of it, and breaks no rule of accessibility', async ({
  page,
}) => {
  await page.goto('/#mesh');
  const sample = page.getByRole('button', { name: 'Try a sample part' });
  // The place comes a step after the sheet; judged before, there would be nothing to judge.
  await expect(sample).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await sample.click();
  await expect(rows(page)).toHaveCount(3, LONG);
  await expect(balloon(page, '.part-picture', 1)).toBeVisible(LONG);
  await expect(page.getByRole('button', { name: /^Use it: / }).first()).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Blueprint' }).click();
  expect(await violations(page)).toEqual([]);
});

test('what is noted of a thin section stands with it, and a press in its row leads there', async ({ page }) => {
  await openWithPart(page, GRIPPER);
  const noted = page.getByRole('region', { name: 'Noted of number 1' });
  await expect(noted).toContainText('one of several ways from pad to pad');
  await page.getByRole('button', { name: 'See 3 notes of 1 to 4' }).click();
  await expect(noted).toBeFocused();
  await expect(noted.getByText('under five times the thickness')).toBeVisible();
});

test('a press on what was passed over shows in the picture where it is', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await field(page, 'Thickest looked for').first().fill('1');
  await page.keyboard.press('Enter');
  const first = page.locator('.passed button').first();
  await expect(first).toBeVisible(LONG);
  await first.click();
  await expect(first).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.part-picture .passed-over')).toHaveText('a');
});

test('G-code dropped here goes to where toolpaths are looked at', async ({ page }) => {
  await openWithPart(page, LEAVES);
  const moves = { name: 'clip.gcode', mimeType: 'text/plain', buffer: Buffer.from('G1 X1 Y1\nG1 X5 Y1\n') };
  await chooser(page).setInputFiles(moves);
  await expect(page.locator('.fname')).toHaveText('clip.gcode', LONG);
  expect(new URL(page.url()).hash).toBe('#toolpath');
  await page.getByRole('link', { name: 'Mesh' }).click();
  await expect(rows(page)).toHaveCount(3);
});

test('a unit in doubt is asked about, and the answer stands', async ({ page }) => {
  await openWithPart(page, 'syn-leaf-084x6-in-inches.stl');
  await expect(page.getByRole('region', { name: 'Is it in inches?' })).toBeVisible();
  await expect(rows(page).first()).toContainText('0.84');
  await page.getByRole('button', { name: 'Read it in centimetres' }).click();
  await expect(rows(page).first()).toContainText('0.33');
  await expect(page.getByRole('region', { name: /^Is it in/ })).toHaveCount(0);
});

test('where nothing is thin it says so, and looks again for what is thicker', async ({ page }) => {
  await openWithPart(page, 'syn-no-neck-block.stl');
  await expect(verdict(page)).toContainText('No thin section found');
  await field(page, 'Thickest looked for').first().fill('4');
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toContainText('nowhere 4.00 mm', LONG);
});

test('a reply says what to ask of whoever drew it', async ({ page }) => {
  await openWithPart(page, LEAVES);
  await page.getByRole('button', { name: 'Write a reply to whoever drew it' }).click();
  const letter = page.getByRole('article', { name: new RegExp(`About ${LEAVES}`) });
  await expect(letter).toContainText('three thin sections');
  await page.emulateMedia({ media: 'print' });
  await expect(letter).toBeVisible();
  await expect(findings(page)).toBeHidden();
});

for (const width of [360, 1280, 2560]) {
  test(`nothing runs over the edge of a page ${width} px wide`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openWithPart(page, GRIPPER);
    await expect(balloon(page, '.part-picture', 1)).toBeVisible(LONG);
    const [wide, room] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect(wide).toBeLessThanOrEqual(room ?? 0);
  });
}
