/** Pages of test pieces, as they come out of the printer: sheets, true scale, black on white. */
import type { Page } from '@playwright/test';
import { PIECE_IDS, type PieceId } from '../../src/core/coupons/piece.ts';
import { LYINGS, type Lying } from '../../src/core/print/profile.ts';
import { PIECE_WORDS } from '../../src/ui/text/pieceText.ts';
import { lengthsOnPaper } from './pdfLines.ts';
import { expect, test, violations } from './support.ts';

/** Width and height in points of 1/72 inch. */
const PAPERS = [
  { format: 'A4', size: [595.28, 841.89] },
  { format: 'Letter', size: [612, 792] },
] as const;
const PX_PER_MM = 96 / 25.4;

const sheet = (page: Page, id: PieceId) => page.getByRole('article', { name: PIECE_WORDS[id].name });

async function openPage(page: Page, id: PieceId, theme: 'light' | 'dark' = 'light'): Promise<void> {
  await page.emulateMedia({ colorScheme: theme });
  await page.goto(`/#tests/page/${id}`);
  await expect(sheet(page, id)).toBeVisible();
}

/** Sizes of the sheets of a PDF in points, one for each. */
function sheetsOf(pdf: Buffer): number[][] {
  return [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)],
  );
}

async function boxWidth(page: Page, selector: string): Promise<number> {
  return page.locator(selector).evaluate((node) => node.getBoundingClientRect().width);
}

const LIES: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };

/** Goes to the tests first, where unit and lying are chosen. */
async function choose(page: Page, unit: 'mm' | 'inch', lying: Lying = 'flat'): Promise<void> {
  await page.goto('/#tests');
  const lies = page.getByRole('main').getByRole('combobox', { name: 'Strips lie' });
  await lies.selectOption({ label: LIES[lying] });
  // Offered only to those who read in millimetres.
  const inches = page.getByRole('button', { name: 'Inches' });
  if (unit === 'inch' && (await inches.isVisible())) await inches.click();
}

/** A tenth of a millimetre: a caliper held to paper, and lines of 0.1 mm, tell no less. */
const ON_PAPER = 0.1;
const isLong = (lengths: readonly number[], mm: number) => lengths.some((one) => Math.abs(one - mm) < ON_PAPER);

/** One sheet, of the size asked for, its lines of 100 mm and of 4 in not scaled to fit anything. */
function checkSheets(pdf: Buffer, { format, size }: (typeof PAPERS)[number]): void {
  const sheets = sheetsOf(pdf);
  expect(sheets, format).toHaveLength(1);
  for (const [width = 0, height = 0] of sheets) {
    // The browser rounds paper to whole px of 1/96 inch, 0.75 pt.
    expect(Math.abs(width - size[0])).toBeLessThan(1.1);
    expect(Math.abs(height - size[1])).toBeLessThan(1.1);
  }
  const lengths = lengthsOnPaper(pdf);
  expect(isLong(lengths, 100), `${format}, 100 mm`).toBe(true);
  expect(isLong(lengths, 4 * 25.4), `${format}, 4 in`).toBe(true);
}

for (const id of PIECE_IDS) {
  test(`the page of ${id} fills one sheet of A4 and Letter at true scale, and breaks no rule of accessibility`, async ({
    page,
  }) => {
    await openPage(page, id);
    expect(await violations(page)).toEqual([]);
    for (const paper of PAPERS) checkSheets(await page.pdf({ format: paper.format }), paper);
  });
}

test('pages in inches and of strips that lie in other ways fill one sheet each, at true scale as well', async ({
  page,
}) => {
  test.setTimeout(120_000);
  for (const lying of LYINGS) {
    await choose(page, 'inch', lying);
    for (const id of PIECE_IDS) {
      await openPage(page, id);
      for (const paper of PAPERS) checkSheets(await page.pdf({ format: paper.format }), paper);
    }
  }
});

test('lines of 100 mm and of 4 in are 377.95 and 384 px long on screen and on paper, whatever the width of the screen', async ({
  page,
}) => {
  for (const width of [1280, 360]) {
    await page.setViewportSize({ width, height: 800 });
    await openPage(page, 'comb');
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      // Half a pixel: what the browser rounds a box to, an eighth of a millimetre.
      expect(Math.abs((await boxWidth(page, '.true-line.in-mm')) - 100 * PX_PER_MM)).toBeLessThan(0.5);
      expect(Math.abs((await boxWidth(page, '.true-line.in-in')) - 4 * 96)).toBeLessThan(0.5);
    }
    await page.emulateMedia({ media: 'screen' });
  }
});

test('whoever reads in inches gets boxes, settings and steps in inches, radii in mm as they are marked', async ({
  page,
}) => {
  await choose(page, 'inch');
  await openPage(page, 'ladder');
  await expect(page.getByRole('columnheader', { name: 'Mean, in' })).toBeVisible();
  await expect(sheet(page, 'ladder')).toContainText(/lines 0\.0165\sin \(0\.42\smm\) wide/);
  expect(await violations(page)).toEqual([]);
  await openPage(page, 'bar');
  await expect(page.getByRole('columnheader', { name: 'Sag, in' })).toBeVisible();
  await expect(page.getByRole('columnheader', { name: 'Weight, g' })).toBeVisible();
  await expect(sheet(page, 'bar')).toContainText(/\d\.\d\d\sin stick out to the eye/);
  await openPage(page, 'radii');
  await expect(page.getByRole('cell', { name: /^R\s5\smm, 0\.1969\sin$/ })).toBeVisible();
  await expect(page.getByRole('columnheader', { name: 'Over R, mm' })).toBeVisible();
  expect(await violations(page)).toEqual([]);
});

/** What lines of a guide measure on screen [mm], and how far they turn on the way [°]. */
async function drawnLines(page: Page, selector: string) {
  return page.locator(selector).evaluateAll((nodes) =>
    nodes.map((node) => {
      const path = node as SVGPathElement;
      const [long, matrix] = [path.getTotalLength(), path.getScreenCTM()];
      const heading = (from: number, to: number) => {
        const [a, b] = [path.getPointAtLength(from), path.getPointAtLength(to)];
        return Math.atan2(a.y - b.y, b.x - a.x);
      };
      // From the first hundredth of the way to the last, each of which turns a hundredth of an even bend.
      const turned = heading(long * 0.99, long) - heading(0, long * 0.01);
      return { mm: (long * (matrix?.a ?? 0) * 25.4) / 96, turned: ((turned * 180) / Math.PI + 360) % 360 };
    }),
  );
}

const figures = async (page: Page, at: number) =>
  (await page.locator(`.boxes tbody tr > :nth-child(${at})`).allTextContents()).map((text) => Number.parseFloat(text));

for (const lying of LYINGS) {
  test(`the guide of a comb that lies ${LIES[lying]} has strips of their true lengths, turned as far as is asked`, async ({
    page,
  }) => {
    await choose(page, 'mm', lying);
    await openPage(page, 'comb');
    const lengths = await figures(page, 2);
    const turn = Number.parseFloat(
      (await page
        .getByText(/^\d+°$/)
        .first()
        .textContent()) ?? '',
    );
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      const lines = await drawnLines(page, '.turned');
      expect(lines).toHaveLength(lengths.length);
      lines.forEach(({ mm, turned }, at) => {
        // A grip of 12 mm is drawn on at its end.
        expect(Math.abs(mm - 12 - (lengths[at] ?? 0))).toBeLessThan(ON_PAPER);
        // A hundredth of the way is left out of the turn at its beginning, and grips are straight.
        expect(Math.abs(turned - turn)).toBeLessThan(0.06 * turn);
      });
    }
    await page.emulateMedia({ media: 'screen' });
    expect(await violations(page)).toEqual([]);
  });
}

test('the guide of the crease ladder has every fold at its true length, under pads at the angle that is asked', async ({
  page,
}) => {
  await openPage(page, 'creases');
  const lengths = await figures(page, 4);
  const arcs = await drawnLines(page, '.angle-guide .turned');
  expect(arcs).toHaveLength(lengths.length);
  arcs.forEach(({ mm }, at) => expect(Math.abs(mm - (lengths[at] ?? 0))).toBeLessThan(ON_PAPER));
  const turn = Number.parseFloat(
    (await page
      .getByText(/^\d+°$/)
      .first()
      .textContent()) ?? '',
  );
  const pads = await page.locator('.angle-guide path[stroke-dasharray]').evaluateAll((nodes) =>
    nodes.map((node) => {
      const [a, b] = [0, 1].map((at) => (node as SVGPathElement).getPointAtLength(at));
      return (Math.atan2((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0)) * 180) / Math.PI;
    }),
  );
  expect(pads).toHaveLength(lengths.length);
  // Points along a path come in single precision.
  for (const angle of pads) expect(Math.abs(angle - turn)).toBeLessThan(0.1);
});

test('the comb is drawn life size, and so is the protractor of the hold piece', async ({ page }) => {
  await openPage(page, 'comb');
  await expect(page.locator('.piece-picture figcaption')).toContainText('1 : 1');
  const [, wide = 0] =
    /([\d.]+) × [\d.]+ × [\d.]+/
      .exec((await page.locator('.piece-picture figcaption').textContent()) ?? '')
      ?.map(Number) ?? [];
  expect(Math.abs((await boxWidth(page, '.piece-picture .slab >> nth=0')) - wide * PX_PER_MM)).toBeLessThan(1);
  await openPage(page, 'hold');
  expect(Math.abs((await boxWidth(page, '.protractor svg')) - 102 * PX_PER_MM)).toBeLessThan(0.5);
});

test('nothing runs over the edge of a phone', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  for (const id of PIECE_IDS) {
    await openPage(page, id);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), id).toBe(360);
    expect(await violations(page), id).toEqual([]);
  }
});

test('on paper there is nothing but the page, black on white in either theme', async ({ page }) => {
  for (const theme of ['light', 'dark'] as const) {
    await openPage(page, 'bar', theme);
    await page.emulateMedia({ media: 'print', colorScheme: theme });
    const seen = await page.evaluate(() => {
      const article = document.querySelector('.test-page');
      const shown = [...document.body.querySelectorAll('*')].filter((node) => node.checkVisibility());
      const beside = shown.filter((node) => !node.contains(article) && !article?.contains(node));
      const inks = new Set(shown.filter((node) => article?.contains(node)).map((node) => getComputedStyle(node).color));
      const grounds = new Set(shown.map((node) => getComputedStyle(node).backgroundColor));
      return { beside: beside.map((node) => node.outerHTML.slice(0, 80)), inks: [...inks], grounds: [...grounds] };
    });
    expect(seen.beside).toEqual([]);
    for (const ink of seen.inks) expect(['rgb(0, 0, 0)', 'rgb(51, 51, 51)']).toContain(ink);
    for (const ground of seen.grounds) expect(['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)']).toContain(ground);
    await page.emulateMedia({ media: 'screen' });
  }
});

test('a page is left by its button and by the way back of the browser', async ({ page }) => {
  await page.goto('/#tests');
  await page.getByRole('radio', { name: /Strip comb/ }).check();
  await page.getByRole('link', { name: 'Page to print' }).click();
  await expect(sheet(page, 'comb')).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('radio', { name: /Strip comb/ })).toBeVisible();
  await page.getByRole('link', { name: 'Page to print' }).click();
  await page.getByRole('button', { name: 'Back to the tests' }).click();
  await expect(page.getByRole('radio', { name: /Strip comb/ })).toBeChecked();
});

test('arrow keys go from piece to piece, and its files come when they are asked for', async ({ page }) => {
  await page.goto('/#tests');
  const pieces = page.getByRole('group', { name: 'Test piece to look at' }).getByRole('radio');
  await expect(pieces).toHaveCount(PIECE_IDS.length);
  await pieces.first().check();
  await pieces.first().focus();
  await page.keyboard.press('ArrowRight');
  await expect(pieces.nth(1)).toBeChecked();
  await expect(pieces.nth(1)).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(pieces.first()).toBeChecked();
  for (const [button, ending] of [
    ['3MF of this piece', /\.3mf$/],
    ['STL of this piece', /\.stl$/],
    ['3MF of the whole plate', /^test-plate.*\.3mf$/],
  ] as const) {
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    expect((await coming).suggestedFilename()).toMatch(ending);
  }
});
