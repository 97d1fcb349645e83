/** The summary of a joint, as it comes out of the printer: one sheet of either paper, at true scale, black on white. */
import type { Page } from '@playwright/test';
import type { Joint } from '../../src/core/design/joint.ts';
import { findFamily } from '../../src/core/flexures/known.ts';
import { writePart } from '../../src/files/partText.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { DRIVEN } from '../support/families.ts';
import { lengthsOnPaper } from './pdfLines.ts';
import { core, demoJoint, expect, tabTo, test, violations } from './support.ts';

/** A tenth of a millimetre: a caliper held to paper, and lines of 0.1 mm, tell no less. */
const ON_PAPER = 0.1;
const PAPERS = ['A4', 'Letter'] as const;

const sheet = (page: Page, name: string) => page.getByRole('article', { name: `Summary of ${name}`, exact: true });

async function openSummary(page: Page, { id, name }: Pick<Joint, 'id' | 'name'>): Promise<void> {
  await page.goto(`/#lesson/summary/${id}`);
  await expect(sheet(page, name)).toBeVisible({ timeout: 30_000 });
}

/** One for each sheet of a PDF. */
const sheetsOf = (pdf: Buffer) => [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[/g)].length;
const isLong = (lengths: readonly number[], mm: number) => lengths.some((one) => Math.abs(one - mm) < ON_PAPER);

/** One sheet of either paper, whose ruler measures what it says. */
async function checkPrint(page: Page, name: string): Promise<readonly number[]> {
  let all: readonly number[] = [];
  for (const format of PAPERS) {
    const pdf = await page.pdf({ format });
    expect(sheetsOf(pdf), `${name} on ${format}`).toBe(1);
    all = lengthsOnPaper(pdf);
    expect(isLong(all, 100), `${name} on ${format}, 100 mm`).toBe(true);
    expect(isLong(all, 4 * 25.4), `${name} on ${format}, 4 in`).toBe(true);
  }
  return all;
}

test('every joint of the demonstration part fills one sheet of A4 and of Letter', async ({ page }) => {
  test.setTimeout(240_000);
  for (const joint of demoPart().joints) {
    await openSummary(page, joint);
    await checkPrint(page, joint.name);
  }
});

test('the drawing is at true scale: its flexing length measures true on paper, and five times that enlarged', async ({
  page,
}) => {
  const joint = demoJoint();
  await openSummary(page, joint);
  const captions = sheet(page, joint.name).locator('figcaption');
  await expect(captions.nth(0)).toContainText(/scale 1\s:\s1, true size/);
  await expect(captions.nth(1)).toContainText(/Enlarged 5\s:\s1/);
  const lengths = await checkPrint(page, joint.name);
  const { length } = core(joint);
  // The line of a short dimension runs on by a tail of 20 px, 5.29 mm, behind either arrow.
  const tails = (2 * 20 * 25.4) / 96;
  expect(isLong(lengths, length + tails)).toBe(true);
  expect(isLong(lengths, 5 * length)).toBe(true);
  // Nothing else on the sheet is of that length by chance: the same joint at another length has other lines.
  expect(isLong(lengths, length + tails + 1)).toBe(false);
  expect(isLong(lengths, 5 * length + 1)).toBe(false);
});

/** A joint of other sizes than its kind usually has. */
function large(family: string, name: string, sizes: Joint['sizes']): Joint {
  const found = findFamily(family);
  if (!found) throw new Error(`no family ${family}`);
  const joint = newJoint(found, name);
  return { ...joint, id: `l-${family}`, sizes: { ...joint.sizes, ...sizes } };
}

/** A joint of every kind in every way that it is moved, and some that are as large as their kinds go. */
function everyKind(): readonly Joint[] {
  const usual = DRIVEN.map(({ kind: { family }, drive }, at) => ({
    ...newJoint(family, `${family.id} ${drive.id}`, undefined, drive),
    id: `k${at}`,
  }));
  return [
    ...usual,
    large('spiral', 'A big spiral with a name that takes more than one line of the head of its page', {
      hub: 20,
      ring: 140,
      turns: 2,
    }),
    large('cellPanel', 'A long panel of cells', { cells: 36 }),
    large('slitPanel', 'A long panel of slits', { rows: 60 }),
    large('straightLeaf', 'A leaf as long as the sheet is wide', { length: 150 }),
  ];
}

test('a joint of every kind in every way it is moved, and large ones, fill one sheet each', async ({ page }) => {
  test.setTimeout(420_000);
  const part = { name: 'A part with one joint of every kind', invented: true, joints: everyKind() };
  await page.goto('/');
  await page.getByLabel('Part file to import').setInputFiles({
    name: 'every-kind.bendbook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writePart(part, [])),
  });
  await expect(page.getByRole('navigation', { name: /Joints of this part/ })).toContainText('A long panel of slits');
  for (const joint of part.joints) {
    await openSummary(page, joint);
    await expect(sheet(page, joint.name).locator('.summary-drawings svg').first(), joint.name).toBeVisible();
    await checkPrint(page, joint.name);
  }
});

test('on paper there is nothing but the sheet, black and grey on white in either theme', async ({ page }) => {
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: theme });
    await openSummary(page, demoJoint());
    await page.emulateMedia({ media: 'print', colorScheme: theme });
    const seen = await page.evaluate(() => {
      const article = document.querySelector('.summary-sheet');
      const shown = [...document.body.querySelectorAll('*')].filter((node) => node.checkVisibility());
      const beside = shown.filter((node) => !node.contains(article) && !article?.contains(node));
      const inside = shown.filter((node) => article?.contains(node));
      const inks = inside.flatMap((node) => {
        const { color, fill, stroke, borderBottomColor } = getComputedStyle(node);
        return node instanceof SVGElement ? [fill, stroke] : [color, borderBottomColor];
      });
      const grounds = new Set(shown.map((node) => getComputedStyle(node).backgroundColor));
      return {
        beside: beside.map((node) => node.outerHTML.slice(0, 80)),
        inks: [...new Set(inks)].filter((ink) => ink.startsWith('rgb')),
        grounds: [...grounds],
      };
    });
    expect(seen.beside).toEqual([]);
    expect(seen.inks.length).toBeGreaterThan(3);
    for (const ink of seen.inks) expect(ink).toMatch(/^rgba?\((\d+), \1, \1\b/);
    for (const ground of seen.grounds) expect(['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)']).toContain(ground);
    await page.emulateMedia({ media: null });
  }
});

test('another joint is chosen by keyboard, and the way back opens it', async ({ page }) => {
  await page.goto('/#lesson/summary');
  await expect(sheet(page, demoJoint().name)).toBeVisible();
  expect(await violations(page)).toEqual([]);
  const choice = page.getByRole('combobox', { name: 'Joint' });
  await tabTo(page, choice);
  await page.keyboard.press('ArrowDown');
  await expect(sheet(page, 'Battery-door hinge')).toBeVisible();
  await expect(page).toHaveURL(/#lesson\/summary\/battery-door$/);
  await expect(page).toHaveTitle(/Summary of Battery-door hinge/);
  await tabTo(page, page.getByRole('button', { name: 'Back to the joint' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#joints$/);
  await expect(page).toHaveTitle(/^Battery-door hinge, Balcony weather station/);
});

test('a joint that is not there is said to be missing, with the others to choose from', async ({ page }) => {
  await page.goto('/#lesson/summary/nobody');
  await expect(page.getByText('No joint called “nobody” is in this part.')).toBeVisible();
  await page.getByRole('combobox', { name: 'Joint' }).selectOption({ label: 'Pole grip' });
  await expect(sheet(page, 'Pole grip')).toBeVisible();
});

test('whoever reads in inches gets a sheet in inches', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Inches' }).click();
  await openSummary(page, demoJoint());
  await expect(sheet(page, demoJoint().name)).toContainText('0.4724');
  await expect(sheet(page, demoJoint().name)).toContainText('inches');
  await checkPrint(page, 'in inches');
});

test('on a phone nothing runs over the edge and no rule of accessibility is broken', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  for (const joint of demoPart().joints.slice(0, 4)) {
    await openSummary(page, joint);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), joint.name).toBe(360);
    expect(await violations(page), joint.name).toEqual([]);
  }
});
