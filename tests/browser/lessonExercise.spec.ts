/** Exercise pages: what a link shows, and how they come out of the printer: one sheet each, true scale, black on white. */
import type { Page } from '@playwright/test';
import { DEMO_IDS, type DemoId } from '../../src/core/lesson/demos/ids.ts';
import { exerciseOf, type AnyExercise } from '../../src/core/lesson/exercises/exerciseOf.ts';
import { ANSWER_PLACES, PAPERS, type Paper } from '../../src/ui/text/exerciseText.ts';
import { DEMO_WORDS } from '../../src/ui/text/lessonDemoWords.ts';
import { lengthsOnPaper } from './pdfLines.ts';
import { expect, test, violations } from './support.ts';

/** Width and height in points of 1/72 inch. */
const SIZES: Readonly<Record<Paper, readonly [number, number]>> = { a4: [595.28, 841.89], letter: [612, 792] };
const FORMATS: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'Letter' };
const SET = 14;

const address = (id: DemoId, more: Readonly<Record<string, string>> = {}) =>
  `/#lesson/exercise/${id}?${new URLSearchParams({ set: String(SET), ...more }).toString()}`;

async function open(page: Page, id: DemoId, more: Readonly<Record<string, string>> = {}): Promise<void> {
  await page.goto(address(id, more));
  await expect(
    page.getByRole('article', { name: `${DEMO_WORDS[id].name}, Set ${more['set'] ?? SET}`, exact: true }),
  ).toBeVisible();
  await page.evaluate(() => document.fonts.ready);
}

/** Sizes of the sheets of a PDF in points, one for each. */
function sheetsOf(pdf: Buffer): number[][] {
  return [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)],
  );
}

/** Prints as the page itself asks for its paper. */
async function printed(page: Page, paper: Paper, sheets: number): Promise<Buffer> {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const found = sheetsOf(pdf);
  expect(found, `${paper}: sheets`).toHaveLength(sheets);
  for (const [width = 0, height = 0] of found) {
    // The browser rounds paper to whole px of 1/96 inch, 0.75 pt.
    expect(Math.abs(width - SIZES[paper][0])).toBeLessThan(1.1);
    expect(Math.abs(height - SIZES[paper][1])).toBeLessThan(1.1);
  }
  // Where a printer does not heed the page, paper of that size is what is laid in.
  expect(sheetsOf(await page.pdf({ format: FORMATS[paper] })), `${paper}: laid in`).toHaveLength(sheets);
  return pdf;
}

/** A tenth of a millimetre: a caliper held to paper, and lines of 0.1 mm, tell no less. */
const ON_PAPER = 0.1;

/** What is to be measured on a page as straight lines [mm], and how many lines of it there are at least. */
function linesOf({ id, given }: AnyExercise): readonly (readonly [length: number, times: number])[] {
  switch (id) {
    case 'three-lengths':
    case 'short-or-long':
      return given.lengths.map((length) => [length, 2]);
    case 'one-line-more':
      return [given.thin, given.thick].map(({ thickness }) => [10 * thickness, 2]);
    case 'scaled-part':
      return [
        [given.length, 2],
        [given.scaledLength, 2],
      ];
    case 'one-or-many-bends':
      return [
        [given.length, 2 * given.bends.reduce((sum, count) => sum + count, 0)],
        [given.between, 2 * given.bends.reduce((sum, count) => sum + count - 1, 0)],
      ];
    case 'fillet-or-corner':
      // The wall of A runs on to its corner: by a radius farther than that of B, which ends where its round begins.
      return [
        [5 + 10 * given.fillet, 1],
        [5, 1],
      ];
    case 'filament-against-filament':
    case 'held-or-flexed':
      return [[given.length, 2]];
    case 'side-by-side':
      return [[given.length, 2 * given.count]];
    case 'arch-springs-back':
      return [[2 * given.span, 3]];
  }
}

for (const id of DEMO_IDS) {
  test(`the pages of ${id} take a sheet each of A4 and Letter, and what is measured on them is true`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    for (const paper of PAPERS) {
      await open(page, id, { paper, answers: 'none' });
      const lengths = lengthsOnPaper(await printed(page, paper, 1));
      const countOf = (mm: number) => lengths.filter((one) => Math.abs(one - mm) < ON_PAPER).length;
      expect(countOf(100), `${paper}, 100 mm`).toBeGreaterThan(0);
      expect(countOf(4 * 25.4), `${paper}, 4 in`).toBeGreaterThan(0);
      for (const [length, times] of linesOf(exerciseOf(id, SET) as AnyExercise))
        expect(countOf(length), `${paper}, ${length} mm`).toBeGreaterThanOrEqual(times);
      await open(page, id, { paper, answers: 'second' });
      await printed(page, paper, 2);
    }
  });

  test(`the page of ${id} breaks no rule of accessibility in either theme, narrow or wide`, async ({ page }) => {
    test.setTimeout(120_000);
    for (const theme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: theme });
      for (const width of [360, 1280]) {
        await page.setViewportSize({ width, height: 800 });
        // A page of its own each time, so that the answers are hidden again.
        await page.goto('about:blank');
        await open(page, id);
        await page.getByRole('button', { name: 'Show the answers' }).click();
        expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width}`).toBe(width);
        expect(await violations(page), `${theme}, ${width}`).toEqual([]);
      }
    }
  });
}

test('arches rise on the page as far as they are said to, twice as large', async ({ page }) => {
  await open(page, 'arch-springs-back');
  await page.emulateMedia({ media: 'print' });
  const high = await page
    .locator('.exercise-sheet .edge')
    .evaluateAll((nodes) =>
      nodes.map(
        (node) => ((node as SVGPathElement).getBBox().height * (node as SVGPathElement).getScreenCTM()!.d * 25.4) / 96,
      ),
    );
  const { rises } = exerciseOf('arch-springs-back', SET).given;
  expect(high).toHaveLength(rises.length);
  high.forEach((mm, at) => expect(Math.abs(mm - 2 * rises[at]!)).toBeLessThan(ON_PAPER));
});

test('thirty pages for a class are all different and have their answers after them', async ({ page }) => {
  test.setTimeout(180_000);
  for (const id of ['three-lengths', 'arch-springs-back', 'short-or-long', 'held-or-flexed'] as const) {
    for (const paper of PAPERS) {
      await open(page, id, { paper });
      // The browser would ask for a printer; what it would be sent is looked at instead.
      await page.evaluate(() => {
        window.print = () => undefined;
      });
      await page.getByRole('button', { name: 'Print 30 pages, all different' }).click();
      // Thirty pages, and twelve sets on a sheet of answers.
      const sheets = sheetsOf(await page.pdf({ preferCSSPageSize: true }));
      expect(sheets, `${id}, ${paper}`).toHaveLength(30 + 3);
    }
  }
  await open(page, 'three-lengths', { answers: 'none' });
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('spinbutton', { name: 'Pages for a class' }).fill('3');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Print 3 pages, all different' }).click();
  const names = await page
    .locator('.on-paper .exercise-sheet')
    .evaluateAll((nodes) => nodes.map((node) => node.ariaLabel));
  expect(names).toEqual([14, 15, 16].map((set) => `${DEMO_WORDS['three-lengths'].name}, Set ${set}`));
  expect(sheetsOf(await page.pdf({ preferCSSPageSize: true }))).toHaveLength(3);
});

test('on paper there is nothing but the page, black on white in either theme', async ({ page }) => {
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMedia({ media: 'screen', colorScheme: theme });
    await open(page, 'filament-against-filament');
    await page.emulateMedia({ media: 'print', colorScheme: theme });
    const seen = await page.evaluate(() => {
      const sheets = [...document.querySelectorAll('.exercise-sheet')];
      const shown = [...document.body.querySelectorAll('*')].filter((node) => node.checkVisibility());
      const within = (node: Element) => sheets.some((sheet) => sheet.contains(node));
      const beside = shown.filter((node) => !within(node) && !sheets.some((sheet) => node.contains(sheet)));
      const inks = new Set(shown.filter(within).map((node) => getComputedStyle(node).color));
      const grounds = new Set(shown.map((node) => getComputedStyle(node).backgroundColor));
      return { beside: beside.map((node) => node.outerHTML.slice(0, 80)), inks: [...inks], grounds: [...grounds] };
    });
    expect(seen.beside).toEqual([]);
    for (const ink of seen.inks) expect(['rgb(0, 0, 0)', 'rgb(51, 51, 51)']).toContain(ink);
    for (const ground of seen.grounds) expect(['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)']).toContain(ground);
  }
});

test('a link opens the same page, and nonsense in it the nearest that there is', async ({ page }) => {
  await page.goto('/#lesson/exercise');
  const set = page.getByRole('spinbutton', { name: 'Set of numbers' });
  await expect(set).toHaveValue('14');
  await page.getByRole('combobox', { name: 'Demonstration' }).selectOption({ label: 'side by side for force' });
  await page.getByRole('combobox', { name: 'Paper' }).selectOption('letter');
  await set.focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('article', { name: 'Side by side for force, Set 15', exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Next set' }).click();
  await expect(set).toHaveValue('16');
  const link = page.url();
  expect(link).toContain('#lesson/exercise/side-by-side?set=16&paper=letter&answers=second&pages=30');
  const text = await page.getByRole('article').first().innerText();
  await page.goto('about:blank');
  await page.goto(link);
  await expect(page.getByRole('article').first()).toBeVisible();
  expect(await page.getByRole('article').first().innerText()).toBe(text);
  await page.goto('/#lesson/exercise/no-such?set=5000&paper=quarto&answers=x&pages=-2');
  await expect(set).toHaveValue('999');
  await expect(page.getByRole('spinbutton', { name: 'Pages for a class' })).toHaveValue('1');
  await set.fill('1000');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert').filter({ hasText: 'a whole number from 1 to 999' })).toBeVisible();
});

test('answers are not on the page until they are asked for, and are hidden again with another set', async ({
  page,
}) => {
  expect(ANSWER_PLACES).toContain('second');
  await open(page, 'three-lengths');
  const { lengths } = exerciseOf('three-lengths', SET).given;
  const answers = page.getByRole('region', { name: `Answers, set ${SET}` });
  await expect(answers.getByRole('listitem')).toHaveCount(0);
  // The sheet of answers waits for the printer; neither eye nor ear meets it before.
  await expect(page.getByRole('article')).toHaveCount(1);
  await page.getByRole('button', { name: 'Show the answers' }).focus();
  await page.keyboard.press('Enter');
  await expect(answers.getByRole('listitem')).toHaveCount(7);
  await expect(answers.getByRole('listitem').first()).toContainText(`R\u00a0${lengths[2]}\u00a0mm`);
  await page.getByRole('button', { name: 'Next set' }).click();
  await expect(page.getByRole('button', { name: 'Show the answers' })).toHaveAttribute('aria-expanded', 'false');
});
