import type { Locator, Page } from '@playwright/test';
import { cell, expect, field, tabTo, test, verdict, violations } from './support.ts';

const opener = (page: Page) => page.getByRole('button', { name: 'Find a joint', exact: true });
const uses = (page: Page) => page.getByRole('button', { name: /^Use it: / });
const progress = (page: Page) => page.locator('.find-progress');
const head = (page: Page) => page.getByRole('heading', { name: /^Find a joint/ });
const slip = (page: Page) => page.locator('.slip');
/** A search of one kind in one filament is over in a moment, one of everything may take a busy machine a minute. */
const LONG = { timeout: 60_000 };
test.describe.configure({ timeout: 120_000 });

async function openFinder(page: Page): Promise<void> {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await opener(page).click();
  await expect(head(page)).toBeFocused();
}

async function only(page: Page, list: 'Kinds' | 'Filaments', name: string): Promise<void> {
  const group = page.getByRole('group', { name: list });
  await group.getByRole('button', { name: 'None' }).click();
  await group.getByRole('checkbox', { name }).check();
}

/** Opens it for leaves of PETG alone, however hard they push, and waits for all of them. */
async function openForLeaves(page: Page): Promise<void> {
  await openFinder(page);
  await page.getByText('What may be tried').click();
  await only(page, 'Kinds', 'straight leaf');
  await only(page, 'Filaments', 'PETG');
  await page.getByLabel('Wish for the effort').selectOption('any');
  await expect(progress(page)).toContainText(/^Tried /, LONG);
}

async function setTo(input: Locator, value: string): Promise<void> {
  await input.fill(value);
  await input.press('Enter');
}

/** Designs as the figure counts them. */
async function shown(page: Page): Promise<number> {
  const said = await page.locator('.shown').innerText();
  return Number(/(\d+) of \d+\.|All (\d+) are/.exec(said)?.slice(1).find(Boolean) ?? Number.NaN);
}

test('two clicks lead from the first screen to a joint that meets the brief, and one takes it back', async ({
  page,
}) => {
  await openFinder(page);
  await expect(uses(page).first()).toBeVisible(LONG);
  await uses(page).first().click(LONG);
  await expect(verdict(page)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue(/ for the rain-flap hinge$/);
  await expect(slip(page)).toContainText(/for the rain-flap hinge” added/);
  await expect(verdict(page)).toContainText(/Pass|Fit/i);
  await slip(page).getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(/^Joint 1 of 13$/)).toBeVisible();
});

test('the keyboard alone finds a joint, and steps through the list', async ({ page }) => {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await tabTo(page, opener(page));
  await page.keyboard.press('Enter');
  await expect(head(page)).toBeFocused();
  await expect(uses(page).nth(2)).toBeVisible(LONG);
  await tabTo(page, page.locator('.may-try > summary'));
  await tabTo(page, uses(page).first());
  await page.keyboard.press('ArrowDown');
  await expect(uses(page).nth(1)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(uses(page).first()).toBeFocused();
  // What is reached is marked in both figures and told above the first.
  await expect(page.locator('.trade-picked')).toBeVisible();
  // An upright line has no width, and is not visible to whoever asks for an area.
  await expect(page.locator('.strip-picked')).toHaveCount(1);
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue(/ for the rain-flap hinge$/);
});

test('Escape closes it, and the focus goes back to what opened it', async ({ page }) => {
  await openFinder(page);
  await page.keyboard.press('Escape');
  await expect(opener(page)).toBeFocused();
  await expect(verdict(page)).toBeVisible();
});

test('a field that is changed starts anew, and what cannot be is refused under the sentence', async ({ page }) => {
  await openForLeaves(page);
  const before = await shown(page);
  await setTo(field(page, 'Room along it'), '12');
  await expect(progress(page)).toContainText(/^Tried /, LONG);
  await expect.poll(() => shown(page)).toBeLessThan(before);
  await expect(page.locator('.found').first()).toBeVisible();
  await setTo(field(page, 'Room along it'), '900');
  await expect(page.getByRole('alert').filter({ hasText: 'cannot be over' })).toContainText('Still using 12 mm');
  await expect(progress(page)).toContainText(/^Tried /);
  await page.getByRole('group', { name: 'Kinds' }).getByRole('button', { name: 'None' }).click();
  await expect(page.getByRole('group', { name: 'Kinds' }).getByRole('alert')).toBeVisible();
  await expect(progress(page)).toContainText('Waits for a brief');
  await page.getByRole('group', { name: 'Kinds' }).getByRole('checkbox', { name: 'straight leaf' }).check();
  await expect(progress(page)).toContainText(/^Tried /, LONG);
});

test('what is found by then is kept when the search is stopped, and it can go on', async ({ page }) => {
  await openFinder(page);
  const stop = page.getByRole('button', { name: 'Stop and keep these' });
  await expect(uses(page).first()).toBeVisible(LONG);
  await stop.click(LONG);
  await expect(progress(page)).toContainText(/Stopped at .+ of /);
  const kept = await uses(page).count();
  expect(kept).toBeGreaterThan(0);
  await expect(page.getByRole('button', { name: 'Go on' })).toBeFocused();
  await page.waitForTimeout(600);
  await expect(uses(page)).toHaveCount(kept);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(progress(page)).toContainText(/Trying|Tried/, LONG);
});

test('bars hide what lies outside them, by keys and by hand', async ({ page }) => {
  await openForLeaves(page);
  const all = await shown(page);
  const room = page.getByRole('slider', { name: 'Largest room shown' });
  await room.focus();
  await page.keyboard.press('PageDown');
  await expect(page.locator('.shown')).toContainText('Shown: room up to');
  const fewer = await shown(page);
  expect(fewer).toBeLessThan(all);
  await page.keyboard.press('Home');
  await expect(page.locator('.found-list')).toContainText('Nothing left');
  await page.locator('.found-list').getByRole('button', { name: 'show all' }).click();
  await expect(page.locator('.shown')).toContainText(`All ${all} are shown`);
  const chance = page.getByRole('slider', { name: 'Smallest chance shown' });
  await chance.hover();
  const box = await chance.boundingBox();
  if (!box) throw new Error('the bar of the chance has no place');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, box.y - 250, { steps: 5 });
  await page.mouse.up();
  await expect(page.locator('.shown')).toContainText('chance from');
  expect(await shown(page)).toBeLessThan(all);
  await page.getByRole('slider', { name: 'Smallest effort shown' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.shown')).toContainText('effort from');
  await page.getByRole('button', { name: 'Show all' }).click();
  await expect(page.locator('.shown')).toContainText(`All ${all} are shown`);
});

test('where nothing is found, one press allows what is missing, and it is found', async ({ page }) => {
  await openForLeaves(page);
  await setTo(field(page, 'Room along it'), '9');
  await expect(page.getByRole('region', { name: /^Nothing meets the brief/ })).toBeVisible(LONG);
  await expect(page.getByText(/No straight leaf in PETG fits in 9\.0.mm along; \d+\.\d.mm would\./)).toBeVisible();
  await page.getByRole('button', { name: /^Allow .+ along$/ }).click();
  await expect(head(page)).toBeFocused();
  await expect(uses(page).first()).toBeVisible(LONG);
  await expect(field(page, 'Room along it')).not.toHaveValue('9');
});

test('a miss can be looked at as a joint', async ({ page }) => {
  await openForLeaves(page);
  await page.locator('.why').getByRole('button', { name: 'Look at it' }).first().click();
  await expect(verdict(page)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue(
    'Straight leaf for the rain-flap hinge',
  );
});

test('the brief is kept when it is closed, over a reload, and for another joint one press takes it back', async ({
  page,
}) => {
  await openFinder(page);
  await setTo(field(page, 'Room along it'), '17');
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await page.reload();
  await expect(verdict(page)).toBeVisible();
  await opener(page).click();
  await expect(field(page, 'Room along it')).toHaveValue('17');
  await page.keyboard.press('Escape');
  await cell(page, 'Battery-door hinge').click();
  await opener(page).click();
  await expect(field(page, 'Room along it')).not.toHaveValue('17');
  await page.getByRole('button', { name: /^Take back the brief for .Rain-flap hinge/ }).click();
  await expect(field(page, 'Room along it')).toHaveValue('17');
});

test('a damaged brief is set aside', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('bendbook.finder', '{"brief":{"wanted":[1e999]}}'));
  await openFinder(page);
  await expect(field(page, 'Room along it')).toBeVisible();
});

test('an empty part offers it, and begins with what is found', async ({ page }) => {
  await page.goto('/');
  await expect(verdict(page)).toBeVisible();
  await page.getByRole('button', { name: 'New part' }).click();
  await opener(page).click();
  await expect(uses(page).first()).toBeVisible(LONG);
  await uses(page).first().click(LONG);
  await expect(verdict(page)).toBeVisible();
  await expect(page.getByText('Joint 1 of 1', { exact: true })).toBeVisible();
});

for (const width of [360, 620, 1100, 1280, 1760, 2560]) {
  test(`never scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openForLeaves(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await setTo(field(page, 'Room along it'), '3');
    await expect(page.getByRole('region', { name: /^Nothing meets the brief/ })).toBeVisible(LONG);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}

for (const width of [360, 1280]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`breaks no rule of accessibility at ${width} px, ${colorScheme}`, async ({ browser, baseURL }) => {
      // Three passes over a page of several hundred drawn things.
      test.slow();
      const context = await browser.newContext({
        viewport: { width, height: 800 },
        colorScheme,
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      await openFinder(page);
      await expect(page.getByRole('button', { name: 'Stop and keep these' })).toBeVisible(LONG);
      await page.getByRole('button', { name: 'Stop and keep these' }).click(LONG);
      expect(await violations(page)).toEqual([]);
      await page.getByText('What may be tried').click();
      await only(page, 'Kinds', 'straight leaf');
      await only(page, 'Filaments', 'PETG');
      await expect(progress(page)).toContainText(/^Tried /, LONG);
      expect(await violations(page)).toEqual([]);
      await setTo(field(page, 'Room along it'), '3');
      await expect(page.getByRole('region', { name: /^Nothing meets the brief/ })).toBeVisible(LONG);
      expect(await violations(page)).toEqual([]);
      await context.close();
    });
  }
}

test('every mark leads to where its number comes from', async ({ page }) => {
  await openForLeaves(page);
  const marks = page.locator('.found').first().locator('.pv');
  await expect(marks).toHaveCount(3);
  for (const mark of await marks.all()) {
    await mark.click();
    const focused = page.locator('.found-sources li:focus');
    await expect(focused).toBeInViewport();
  }
});
