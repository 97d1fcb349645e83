import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { expect, test, verdict, violations } from './support.ts';

const SIZES = [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;

for (const size of SIZES) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`breaks no rule of accessibility at ${size.width} px, ${colorScheme}`, async ({ browser, baseURL }) => {
      const context = await browser.newContext({ viewport: size, colorScheme, baseURL: baseURL ?? '' });
      const page = await context.newPage();
      await page.goto('/');
      await expect(page.getByRole('region', { name: 'Curves' }).getByRole('figure')).toHaveCount(3);
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'More', exact: true }).click();
      expect(await violations(page)).toEqual([]);
      await context.close();
    });
  }
}

for (const width of [360, 620, 1100, 1280, 1760, 2560]) {
  test(`never scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto('/');
    await expect(page.getByRole('region', { name: 'Curves' }).getByRole('figure')).toHaveCount(3);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}

test('shifts nothing while it loads', async ({ page }) => {
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(globalThis, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto('/');
  await expect(page.getByRole('region', { name: 'Curves' }).getByRole('figure')).toHaveCount(3);
  await page.waitForTimeout(500); // fonts and idle work
  const total = await page.evaluate(() =>
    (globalThis as unknown as { shifts: number[] }).shifts.reduce((sum, shift) => sum + shift, 0),
  );
  // 0.1 is what the web's own vitals call good; a sheet that is laid out at once should stay far below.
  expect(total).toBeLessThan(0.02);
});

/** Addresses of the scripts that the page began to fetch before its brief, verdict and first drawing all stood. */
async function scriptsOfFirstScreen(page: Page): Promise<readonly string[]> {
  await page.addInitScript(() => {
    const parts = ['.brief input', '[aria-label="Verdict"] h2', '[role="slider"][aria-label="Flexing length"]'];
    new MutationObserver((_, watcher) => {
      if (!parts.every((part) => document.querySelector(part))) return;
      watcher.disconnect();
      performance.mark('first screen stands');
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto('/');
  await expect(page.getByRole('region', { name: 'Curves' }).getByRole('figure')).toHaveCount(3);
  return page.evaluate(() => {
    const [stood] = performance.getEntriesByName('first screen stands');
    const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
    return scripts.filter(({ startTime }) => startTime < (stood?.startTime ?? 0)).map(({ name }) => name);
  });
}

test('loads at most 150 kB of script until the whole first screen stands', async ({ page, request }) => {
  const asked = await scriptsOfFirstScreen(page);
  const texts = await Promise.all(asked.map(async (address) => (await request.get(address)).body()));
  const bytes = texts.reduce((sum, text) => sum + gzipSync(text).length, 0);
  expect(bytes).toBeGreaterThan(60_000);
  expect(bytes).toBeLessThanOrEqual(150_000);
});

test('still works when storage is refused', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
    Object.defineProperty(globalThis, 'localStorage', {
      get() {
        throw new Error('refused');
      },
    });
  });
  await page.goto('/');
  await expect(verdict(page).getByRole('heading')).toBeVisible();
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await expect(page.getByRole('contentinfo')).toContainText(/not kept|cannot|refus/i);
});

test('the cell of the open joint is wholly in sight, whichever is opened', async ({ page }) => {
  await page.setViewportSize({ width: 1500, height: 700 });
  await page.goto('/');
  const cells = page.locator('nav.strip li');
  await expect(cells.first()).toBeVisible();
  const count = await cells.count();
  expect(count).toBeGreaterThan(10);
  for (let place = count - 1; place >= 0; place -= 3) {
    const cell = cells.nth(place);
    // Neither by pointer nor by key, before which the test or the browser would scroll it into sight.
    await cell.getByRole('button').evaluate((button: HTMLElement) => button.click());
    await expect(cell.getByRole('button')).toHaveAttribute('aria-current', 'true');
    await expect(cell).toBeInViewport({ ratio: 0.99 });
  }
});
