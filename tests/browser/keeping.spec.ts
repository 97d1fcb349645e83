import { readFileSync } from 'node:fs';
import { readPart } from '../../src/files/partFile.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { changed } from '../support/joints.ts';
import { core, demoJoint, expect, field, openWith, test, verdict } from './support.ts';

const COUNT = demoPart().joints.length;

test('keeps everything over a reload', async ({ page }) => {
  await page.goto('/');
  await field(page, 'Leaf length').fill('17.5');
  await field(page, 'Leaf length').press('Enter');
  await page.getByRole('button', { name: 'Inches' }).click();
  await page.getByRole('button', { name: 'Blueprint' }).click();
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await expect(page.getByRole('contentinfo')).toContainText(`Joint 2 of ${COUNT + 1}`);
  await page.waitForTimeout(800); // the autosave waits for a pause in typing
  await page.reload();
  await expect(page.getByRole('contentinfo')).toContainText(`Joint 2 of ${COUNT + 1}`);
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'blueprint');
  await expect(field(page, 'Leaf length')).toHaveValue('0.689');
});

test('exports a part, and takes it back as it was', async ({ page }) => {
  await page.goto('/');
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export' }).click();
  const path = await (await saved).path();
  const part = readPart(readFileSync(path, 'utf8'));
  expect(part.ok && part.value.part.joints[0]).toEqual(demoJoint());
  await page.getByRole('button', { name: 'New part' }).click();
  await page.getByLabel('Part file to import').setInputFiles(path);
  await expect(page.getByRole('navigation', { name: /Joints of this part/ })).toContainText('Battery-door hinge');
});

test('refuses a broken file in words and loses nothing', async ({ page }) => {
  await page.goto('/');
  for (const [name, text] of [
    ['broken.json', '{ "format": "bendbook-part", "ver'],
    ['other.json', '{ "hello": 1 }'],
    ['newer.json', JSON.stringify({ format: 'bendbook-part', version: 999, part: {} })],
  ] as const) {
    const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
    await page.getByLabel('Part file to import').setInputFiles(file);
    await expect(page.getByRole('alert').filter({ hasText: /\w/ }).first()).toBeVisible();
    await expect(page.getByRole('navigation', { name: /Joints of this part/ })).toContainText('Battery-door hinge');
  }
});

test('carries a whole joint in a link', async ({ page }) => {
  const joint = changed(demoJoint(), { sizes: { lines: 4, length: 31 }, profile: { filament: 'pa12' } });
  await openWith(page, { ...joint, name: 'Linked leaf' });
  await expect(field(page, 'Leaf length')).toHaveValue('31.00');
  await expect(field(page, 'Lines across')).toHaveValue('4');
  await expect(page.getByRole('contentinfo')).toContainText('Linked leaf');
  expect(core(joint).verdict.grade).toBe('pass');
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
});

test('says that a link is broken and opens what was there', async ({ page }) => {
  await page.goto('/#joint=1&kind=rope&length=banana');
  await expect(page.getByRole('alert').filter({ hasText: /\w/ }).first()).toBeVisible();
  await expect(page.getByRole('navigation', { name: /Joints of this part/ })).toContainText('Battery-door hinge');
});

test('adds, renames, moves and deletes joints, each undone by one step', async ({ page }) => {
  await page.goto('/');
  const strip = page.getByRole('navigation', { name: /Joints of this part/ });
  await page.getByRole('button', { name: 'Add a joint' }).click();
  await page.getByRole('radio', { name: 'crease' }).press('Enter');
  await expect(page.getByRole('contentinfo')).toContainText(`Joint ${COUNT + 1} of ${COUNT + 1}`);
  await page.getByRole('textbox', { name: 'Name of this joint' }).fill('Lid fold');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('contentinfo')).toContainText('Lid fold');
  await page.getByRole('button', { name: 'Move left' }).click();
  await expect(page.getByRole('contentinfo')).toContainText(`Joint ${COUNT} of ${COUNT + 1}`);
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(strip).not.toContainText('Lid fold');
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('Control+z');
  await expect(page.getByRole('contentinfo')).toContainText(`of ${COUNT}`);
});

test('gives the outline as DXF and SVG, and the dimensions as text', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/');
  for (const [name, start] of [
    ['SVG', '<'],
    ['DXF', '0'],
  ] as const) {
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name, exact: true }).click();
    const text = readFileSync(await (await saved).path(), 'utf8');
    expect(text.trim().startsWith(start)).toBe(true);
  }
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('12.00');
});

for (const [what, kept] of [
  ['broken', '{ "format": "bendbook-part", "vers'],
  ['newer', JSON.stringify({ format: 'bendbook-part', version: 999, part: { name: 'From tomorrow' } })],
] as const) {
  test(`sets a ${what} save aside, says so, and gives it back whole`, async ({ page }) => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await page.waitForTimeout(800); // the autosave waits for a pause in typing
    await page.evaluate(
      async (text) =>
        new Promise<void>((done, failed) => {
          const open = indexedDB.open('bendbook');
          open.addEventListener('error', () => failed(open.error ?? new Error('not opened')));
          open.addEventListener('success', () => {
            const change = open.result.transaction('parts', 'readwrite');
            change.objectStore('parts').put(text, 'part');
            change.addEventListener('complete', () => {
              open.result.close();
              done();
            });
          });
        }),
      kept,
    );
    await page.reload();
    await expect(page.getByText(/was set aside as it was/)).toBeVisible();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download it' }).click();
    expect(readFileSync(await (await saved).path(), 'utf8')).toBe(kept);
    // New work is kept beside it, and it is still there on the next visit.
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await page.waitForTimeout(800);
    await page.reload();
    await expect(page.getByText(/was set aside as it was/)).toBeVisible();
    await expect(page.getByRole('contentinfo')).toContainText(`of ${COUNT + 1}`);
  });
}
