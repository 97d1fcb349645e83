/** Pictures of a page, saved and looked at apart from the page they come from. */
import { readFileSync } from 'node:fs';
import type { Download, Page } from '@playwright/test';
import { SaxesParser } from 'saxes';
import { pixelsText } from '../../src/ui/text/imagesText.ts';
import { expect, tabTo, test, violations } from './support.ts';

/** Clear paper round a picture [px]. */
const MARGIN = 8;
/** Two dots are unlike when one of their colours is off by more than this of 255: edges of letters are softened differently. */
const UNLIKE = 48;
/**
 * A picture is drawn on whole px of its own while a figure may stand between two of them on the page, so that the edges
 * of letters and hairlines come out lighter or darker; one word that is missing makes more than this.
 */
const SHARE = 0.004;

/** A promise, and what keeps it. */
function withResolvers(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let keep: (() => void) | undefined;
  const promise = new Promise<void>((resolve) => {
    keep = resolve;
  });
  return { promise, resolve: () => keep?.() };
}

const opener = (page: Page) => page.getByRole('button', { name: 'Pictures of this page' });
const rows = (page: Page) => page.getByRole('region', { name: 'Pictures of this page' }).getByRole('listitem');

async function openList(page: Page): Promise<void> {
  await opener(page).click();
  await expect(rows(page).first()).toBeVisible();
}

async function save(page: Page, kind: 'SVG' | 'PNG', name: string): Promise<Download> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: `${kind} of ${name}`, exact: true }).click();
  return coming;
}

const bytesOf = async (saved: Download) => readFileSync(await saved.path());

interface Read {
  readonly names: ReadonlySet<string>;
  readonly root: Readonly<Record<string, string>>;
  readonly title: string;
}

/** Reads a file as XML of its own; throws where it is none. */
function read(text: string): Read {
  const parser = new SaxesParser({ xmlns: true });
  const names = new Set<string>();
  let root: Record<string, string> | undefined;
  let [title, inside] = ['', ''];
  parser.on('opentag', ({ name, attributes }) => {
    names.add(name);
    inside = name;
    root ??= Object.fromEntries(Object.entries(attributes).map(([key, one]) => [key, one.value]));
  });
  parser.on('text', (letters) => {
    if (inside === 'title') title += letters;
  });
  parser.on('closetag', () => {
    inside = '';
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(text).close();
  return { names, root: root ?? {}, title };
}

/** Nothing in a saved drawing leads out of it or needs a page round it. */
function standsAlone(text: string): Read {
  const found = read(text);
  expect(text).not.toContain('var(');
  expect(text).not.toMatch(/url\((?!#|data:)/);
  expect(text).not.toMatch(/\b(?:href|src)="(?!#|data:)/);
  for (const name of ['script', 'foreignObject', 'button', 'input']) expect([...found.names]).not.toContain(name);
  expect(text).not.toMatch(/\son\w+=/);
  return found;
}

/** Share of dots in which two pictures of the same size differ. */
async function shareUnlike(page: Page, one: Buffer, other: Buffer): Promise<number> {
  return page.evaluate(
    async ([a, b, off]) => {
      const dots = [a, b].map(async (base64) => {
        const image = new Image();
        image.src = `data:image/png;base64,${base64}`;
        await image.decode();
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [image.width, image.height];
        const paper = canvas.getContext('2d');
        paper?.drawImage(image, 0, 0);
        return paper?.getImageData(0, 0, image.width, image.height);
      });
      const [first, second] = await Promise.all(dots);
      if (!first || !second) throw new Error('no paper');
      if (first.width !== second.width || first.height !== second.height) throw new Error('of other sizes');
      let unlike = 0;
      for (let at = 0; at < first.data.length; at += 4) {
        const far = [0, 1, 2].some((i) => Math.abs((first.data[at + i] ?? 0) - (second.data[at + i] ?? 0)) > off);
        if (far) unlike += 1;
      }
      return unlike / (first.data.length / 4);
    },
    [one.toString('base64'), other.toString('base64'), UNLIKE] as const,
  );
}

/** A figure as it is seen on its page, without what is there for a hand; its papers only. */
async function seenOnPage(page: Page, figure: string): Promise<Buffer> {
  const hidden = await page.addStyleTag({
    content: '.hg, .chart-grip, .chart-cross { visibility: hidden !important; }',
  });
  await page.locator(figure).first().scrollIntoViewIfNeeded();
  await page.mouse.move(0, 0);
  const clip = await page
    .locator(figure)
    .first()
    .evaluate((node) => {
      const box = node.getBoundingClientRect();
      return { x: box.x + scrollX, y: box.y + scrollY, width: box.width, height: box.height };
    });
  const whole = { ...clip, width: Math.floor(clip.width), height: Math.floor(clip.height) };
  const shot = await page.screenshot({ clip: whole, fullPage: true });
  await hidden.evaluate((node) => (node as HTMLElement).remove());
  return shot;
}

/** A saved drawing on a page that has nothing else. */
async function seenAlone(page: Page, svg: Buffer, size: { width: number; height: number }): Promise<Buffer> {
  const blank = await page.context().newPage();
  await blank.setViewportSize({ width: size.width + 2 * MARGIN, height: size.height + 2 * MARGIN });
  await blank.setContent(
    `<body style="margin:0"><img src="data:image/svg+xml;base64,${svg.toString('base64')}" style="display:block"></body>`,
  );
  await blank.evaluate(async () => {
    await document.querySelector('img')?.decode();
  });
  // The faces come with the picture, but a moment after it.
  await blank.waitForTimeout(300);
  const shot = await blank.screenshot({ clip: { x: MARGIN, y: MARGIN, ...size } });
  await blank.close();
  return shot;
}

function pngSize(png: Buffer) {
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
  return { width: png.readUInt32BE(16), height: png.readUInt32BE(20) };
}

/** Saves a figure in both kinds and looks at both. */
async function checkFigure(page: Page, name: string, selector: string, fileStart: string): Promise<Buffer> {
  const onPage = await seenOnPage(page, selector);
  const saved = await save(page, 'SVG', name);
  expect(saved.suggestedFilename()).toMatch(new RegExp(`^${fileStart}.*\\.svg$`));
  const svg = await bytesOf(saved);
  const { root, title } = standsAlone(svg.toString());
  expect(title).toBe(name);
  const alone = await seenAlone(page, svg, pngSize(onPage));
  expect(await shareUnlike(page, onPage, alone), name).toBeLessThan(SHARE);

  const png = await save(page, 'PNG', name);
  expect(png.suggestedFilename()).toMatch(/\.png$/);
  const { width, height } = pngSize(await bytesOf(png));
  expect([width, height]).toEqual([3 * Number(root['width']), 3 * Number(root['height'])]);
  await expect(rows(page).filter({ hasText: name }).first()).toContainText(pixelsText(width, height));
  await expect(page.getByText(`${png.suggestedFilename()} saved.`)).toBeVisible();
  return alone;
}

test('the drawing and every curve of the first joint are saved as they are seen, and stand alone', async ({ page }) => {
  await page.goto('/');
  const papers = page.locator('.curves .chart-paper');
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  await expect(papers).toHaveCount(3);
  await openList(page);
  await expect(rows(page)).toHaveCount(4);
  const from = 'balcony-weather-station-rain-flap-hinge-fig';
  const drawing = await checkFigure(page, 'Fig. 1 Plan, as it lies on the plate', '.drawing .fig', from);
  const life = await checkFigure(
    page,
    'Fig. 2 Strain against life',
    '.curves figure:nth-of-type(1) .chart-paper',
    from,
  );
  const length = await checkFigure(
    page,
    'Fig. 3 Strain against flexing length',
    '.curves figure:nth-of-type(2) .chart-paper',
    from,
  );
  await checkFigure(page, 'Fig. 4 Effort against movement', '.curves figure:nth-of-type(3) .chart-paper', from);
  // The comparison can tell one figure from another.
  expect(await shareUnlike(page, life, length)).toBeGreaterThan(10 * SHARE);
  expect(drawing.length).toBeGreaterThan(10_000);
});

test('in the dark theme the picture is dark, and on asking black and grey on white', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto('/');
  await openList(page);
  const name = 'Fig. 1 Plan, as it lies on the plate';
  const dark = (await bytesOf(await save(page, 'SVG', name))).toString();
  expect(dark).toContain('fill="#0e2d52"');
  await page.getByRole('checkbox', { name: /On white/ }).check();
  const grey = (await bytesOf(await save(page, 'SVG', name))).toString();
  standsAlone(grey);
  const inks = new Set(grey.match(/#[0-9a-f]{6}(?=")/g));
  expect(inks.size).toBeGreaterThan(4);
  for (const ink of inks) expect(new Set([ink.slice(1, 3), ink.slice(3, 5), ink.slice(5)]).size, ink).toBe(1);
  expect(grey).toMatch(/<rect width="\d+" height="\d+" fill="#ffffff"\/>/);
  // Looking at it in other inks has changed nothing on the page.
  await expect(page.locator('.in-print-inks')).toHaveCount(0);
});

test('figures of other places are saved too: a filament, a part file with its tones, a lesson', async ({ page }) => {
  await page.goto('/#filaments');
  const curve = page.locator('figure.chart .chart-paper');
  await expect(curve.first()).toBeVisible();
  await openList(page);
  await checkFigure(page, 'Fig. 2 Strain against life, all of them', 'figure.chart .chart-paper', 'balcony|filaments|');

  await page.goto('/#mesh');
  await page
    .getByRole('button', { name: /sample|three leaves/i })
    .first()
    .click();
  await expect(page.locator('.part-picture canvas')).toBeVisible();
  await expect(rows(page).filter({ hasText: 'Fig. 1 The part' })).toBeVisible();
  await checkFigure(page, 'Fig. 1 The part, dimetric', '.part-picture .drawn', 'three-leaves');

  await page.goto('/#lesson');
  const lesson = rows(page)
    .filter({ hasText: /^Fig\. 1/ })
    .first();
  await expect(lesson).toBeVisible();
  await expect(rows(page).filter({ hasText: 'The part' })).toHaveCount(0);
  const name = (await lesson.locator('span').textContent()) ?? '';
  standsAlone((await bytesOf(await save(page, 'SVG', name))).toString());
});

test('by keyboard alone: opened, saved, left with Escape back to what opened it; no rule of accessibility is broken', async ({
  page,
}) => {
  await page.goto('/');
  await expect(opener(page)).toBeVisible();
  await opener(page).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText(/pictures found\./)).toBeVisible();
  expect(await violations(page)).toEqual([]);
  const png = page.getByRole('button', { name: /^PNG of Fig\. 1/ });
  await tabTo(page, png);
  const coming = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  await coming;
  await expect(png).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(rows(page)).toHaveCount(0);
  await expect(opener(page)).toBeFocused();
  await expect(opener(page)).toHaveAttribute('aria-expanded', 'false');
});

test('a picture that cannot be painted is said to be so, and the part stands', async ({ page }) => {
  await page.goto('/');
  await openList(page);
  await page.evaluate(() => {
    HTMLCanvasElement.prototype.toBlob = (answer) => answer(null);
  });
  await page.getByRole('button', { name: /^PNG of Fig\. 1/ }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'could not be made a PNG' })).toBeVisible();
});

test('on a phone the list runs over no edge, and nothing moves when its button comes', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  const { promise: released, resolve: release } = withResolvers();
  await page.route(/\/Pictures-[^/]*\.js$/, async (route) => {
    await released;
    await route.continue();
  });
  const asked = page.waitForRequest(/\/Pictures-[^/]*\.js$/);
  await page.goto('/');
  await asked;
  const kept = page.locator('.under-title');
  const high = () => kept.evaluate((node) => node.getBoundingClientRect().height);
  const before = await high();
  release();
  await expect(opener(page)).toBeVisible();
  expect(await high()).toBe(before);
  await openList(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  for (const button of await rows(page).first().getByRole('button').all())
    expect((await button.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
});
