import type { Page } from '@playwright/test';
import { standingOf } from '../../src/core/design/acrossFilaments.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { chanceText, lifeText } from '../../src/ui/text/filamentsText.ts';
import { core, expect, tabTo, test, violations } from './support.ts';

const PAGES = ['#filaments', '#filaments/pa12', '#filaments/pp-moulded'] as const;

async function open(page: Page, address: string): Promise<void> {
  await page.goto(`/${address}`);
  await expect(page.getByRole('figure').first()).toBeVisible();
  // What the user's own filaments need comes by itself.
  await expect(page.getByRole('button', { name: 'Open a filament file' })).toBeVisible();
}

const row = (page: Page, name: string) =>
  page
    .getByRole('table', { name: /Side by side/ })
    .getByRole('row')
    .filter({ has: page.getByRole('link', { name, exact: true }) });

for (const width of [360, 1280]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`filaments break no rule of accessibility at ${width} px, ${colorScheme}`, async ({ browser, baseURL }) => {
      // Four passes over a page of a thousand drawn things, which a busy machine does not do in the usual time.
      test.slow();
      const context = await browser.newContext({
        viewport: { width, height: 800 },
        colorScheme,
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      for (const address of PAGES) {
        await open(page, address);
        expect(await violations(page)).toEqual([]);
      }
      await open(page, '#filaments');
      await page.locator('.filaments .pv').first().click();
      await page.getByRole('button', { name: 'PLA', exact: true }).first().click();
      expect(await violations(page)).toEqual([]);
      await context.close();
    });
  }
}

for (const width of [360, 620, 1100, 1280, 1760, 2560]) {
  test(`filaments never scroll sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    for (const address of PAGES) {
      await open(page, address);
      if (address === '#filaments') {
        await page.getByLabel('Filaments shown').selectOption('all');
        await page.locator('.filaments .pv').first().click();
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });
}

/** Presses every mark on the page, and tells of those that open no note that says where a number comes from. */
function marksWithoutSource(page: Page): Promise<{ readonly pressed: number; readonly failed: readonly string[] }> {
  return page.evaluate(async () => {
    const failed: string[] = [];
    const marks = [...document.querySelectorAll<HTMLElement>('main .pv')];
    for (const mark of marks) {
      mark.click();
      await new Promise(requestAnimationFrame);
      const note = document.getElementById(mark.getAttribute('aria-controls') ?? '');
      const says = note?.checkVisibility() ? note.innerText : '';
      if (!/memory|published|computed/i.test(says)) failed.push(`${mark.ariaLabel}: ${says}`);
      mark.click();
      await new Promise(requestAnimationFrame);
    }
    return { pressed: marks.length, failed };
  });
}

test('every marked number leads to where it comes from in one step', async ({ page }) => {
  // Every mark is pressed twice, and the page drawn in between.
  test.slow();
  await open(page, '#filaments');
  const { pressed, failed } = await marksWithoutSource(page);
  expect(pressed).toBeGreaterThan(90);
  expect(failed).toEqual([]);
});

test('every marked number of one filament leads to its row, whose document is one step further', async ({ page }) => {
  await open(page, '#filaments/petg');
  const marks = page.locator('.four .pv');
  await expect(marks).toHaveCount(4);
  for (const mark of await marks.all()) {
    await mark.click();
    const focused = page.locator('tr:focus');
    await expect(focused).toBeInViewport();
    await expect(focused).toContainText(/memory|published|computed/i);
  }
  const breaks = page.locator('#number-strainAtBreak');
  await breaks.locator('summary').click();
  await expect(breaks).toContainText('S14: tm-mech');
});

test('the keyboard goes through filaments, opens one, goes on to the next and back', async ({ page }) => {
  await open(page, '#filaments');
  const link = (name: string) => row(page, name).getByRole('link');
  await tabTo(page, link('TPU 95A'));
  await page.keyboard.press('ArrowDown');
  await expect(link('PP')).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(link('PA6')).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(row(page, 'PA6').getByRole('button').first()).toBeFocused();
  await page.keyboard.press('Space');
  await expect(page.getByText(/PA6, stiffness: 1.200.MPa/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByText(/PA6, stiffness: 1.200.MPa/)).toBeHidden();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#filaments\/pa6$/);
  await expect(page).toHaveTitle(/^PA6, /);
  await page.keyboard.press('ArrowRight');
  await expect(page).toHaveURL(/#filaments\/pa12$/);
  await page.keyboard.press('ArrowLeft');
  await expect(page).toHaveURL(/#filaments\/pa6$/);
  await page.keyboard.press('ArrowLeft');
  await expect(page).toHaveURL(/#filaments\/asa$/);
  await page.keyboard.press('Escape');
  await expect(page).toHaveURL(/#filaments$/);
  await expect(row(page, 'PETG')).toBeVisible();
});

test('reads the curves by keyboard without leaving the filament', async ({ page }) => {
  await open(page, '#filaments/petg');
  const figure = page.getByRole('slider', { name: /Strain against life/ });
  await figure.focus();
  await page.keyboard.press('ArrowRight');
  await expect(figure).toHaveAttribute('aria-valuetext', /1.200 cycles: \d+\.\d\d.% for half/);
  await page.keyboard.press('End');
  await expect(figure).toHaveAttribute('aria-valuetext', /nobody has counted/);
  await page.keyboard.press('Escape');
  await expect(page).toHaveURL(/#filaments\/petg$/);
});

test('tells the lives that the core tells, for whichever joint is chosen', async ({ page }) => {
  await open(page, '#filaments');
  for (const name of ['Rain-flap hinge', 'Borrowed clip neck']) {
    await page.getByLabel('Your joint').selectOption({ label: name });
    const joint = demoPart().joints.find((one) => one.name === name);
    if (!joint) throw new Error(`the demonstration part has no ${name}`);
    const a = core(joint);
    for (const filament of FILAMENTS) {
      const standing = standingOf(a, filament);
      const cells = page.locator(`[data-row="${filament.id}"] .life`);
      await expect(cells).toContainText(lifeText(standing));
      await expect(cells).toContainText(chanceText(standing));
    }
  }
});

test('puts filaments in another order', async ({ page }) => {
  await open(page, '#filaments');
  await page.getByLabel('Order').selectOption('stiffness');
  const names = page.locator('.filaments [data-row] th a');
  await expect(names.first()).toHaveText('PLA');
  await expect(names.last()).toHaveText('TPU 95A');
});

test('a fourth band asks which to drop', async ({ page }) => {
  await open(page, '#filaments');
  const names = page.getByRole('group', { name: 'Show the spread of' });
  await names.getByRole('button', { name: 'PLA' }).click();
  const question = page.getByRole('group', { name: /Show PLA in the place of/ });
  await expect(question.getByRole('button', { name: 'PETG' })).toBeFocused();
  await question.getByRole('button', { name: 'PA12' }).click();
  await expect(question).toBeHidden();
  await expect(names.getByRole('button', { name: 'PLA' })).toHaveAttribute('aria-pressed', 'true');
  await expect(names.getByRole('button', { name: 'PA12' })).toHaveAttribute('aria-pressed', 'false');
});

test('makes the open joint of the filament that is looked at, and undo takes it back', async ({ page }) => {
  await open(page, '#filaments/pp');
  await page.getByRole('button', { name: 'Use it for Rain-flap hinge' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'made of PP, was PETG' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Use it for Rain-flap hinge' })).toBeHidden();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Use it for Rain-flap hinge' })).toBeVisible();
});

test('filaments shift nothing while they load', async ({ page }) => {
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(globalThis, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await open(page, '#filaments');
  await page.waitForTimeout(500); // fonts and idle work
  const total = await page.evaluate(() =>
    (globalThis as unknown as { shifts: number[] }).shifts.reduce((sum, shift) => sum + shift, 0),
  );
  // As of the sheet of joints: far below the 0.1 that the web's own vitals call good.
  expect(total).toBeLessThan(0.02);
});

test('comes back from filaments to the sheet of joints', async ({ page }) => {
  await open(page, '#filaments');
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Joints' }).click();
  await expect(page.getByRole('region', { name: 'Verdict' })).toBeVisible();
  await expect(page).toHaveTitle(/^Rain-flap hinge, /);
});
