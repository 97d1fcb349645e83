import { gzipSync } from 'node:zlib';
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

// The brief and the verdict wait for 150 kB of it, which the size budget of the build holds; the drawing comes beside them.
test('loads at most 185 kB of script until the whole first screen stands', async ({ page }) => {
  let bytes = 0;
  let standing = false;
  page.on('response', (response) => {
    if (!response.url().endsWith('.js') || standing) return;
    void response.body().then((body) => (bytes += gzipSync(body).length));
  });
  await page.goto('/');
  await expect(verdict(page).getByRole('heading')).toBeVisible();
  await expect(page.getByRole('slider', { name: 'Flexing length', exact: true })).toBeVisible();
  standing = true;
  expect(bytes).toBeGreaterThan(60_000);
  expect(bytes).toBeLessThanOrEqual(185_000);
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
