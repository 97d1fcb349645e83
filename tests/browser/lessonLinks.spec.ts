import type { Page } from '@playwright/test';
import { cell, expect, tabTo, test, verdict } from './support.ts';

const scrubber = (page: Page) => page.getByRole('slider', { name: /^(Bent|Moved|Pushed|Pressed)/ });

async function copied(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect(page.getByText('Copied', { exact: true })).toBeVisible();
  return page.evaluate(() => navigator.clipboard.readText());
}

for (const name of ['Rain-flap hinge', 'Mode button']) {
  test(`a link opens ${name} moved as far as it was left`, async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.goto('/');
    if (name !== 'Rain-flap hinge') await cell(page, name).click();
    const hand = scrubber(page);
    await expect(hand).toBeVisible({ timeout: 20_000 });
    const full = await hand.getAttribute('aria-valuetext');
    await hand.focus();
    for (let presses = 0; presses < 5; presses += 1) await page.keyboard.press('ArrowLeft');
    const left = await hand.getAttribute('aria-valuetext');
    expect(left).not.toBe(full);
    const link = await copied(page);
    expect(link).toContain('bent=');
    const other = await context.newPage();
    await other.goto(link);
    await expect(verdict(other)).toBeVisible();
    // A page of its own solves anew, which takes longer than the usual wait where the machine is busy.
    await expect(scrubber(other)).toHaveAttribute('aria-valuetext', left ?? '', { timeout: 20_000 });
    await other.close();
  });
}

test('a link that says nonsense of how far it was moved still opens its joint', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/');
  const link = await copied(page);
  const other = await context.newPage();
  await other.goto(`${link}&bent=9.5`);
  await expect(verdict(other)).toBeVisible();
  await expect(scrubber(other)).toBeVisible();
  await other.goto('about:blank');
  await other.goto(`${link}&bent=nowhere`);
  await expect(verdict(other)).toBeVisible();
  await other.close();
});

test('a joint leads to its working, to others beside it and to its sheet of paper by keyboard', async ({ page }) => {
  for (const [name, seen] of [
    ['The working', 'they give what the program says'],
    ['Side by side', 'All at scale'],
    ['One-page summary', 'Print'],
  ] as const) {
    await page.goto('/#joints');
    const links = page.getByRole('navigation', { name: 'Show it to others' });
    await links.scrollIntoViewIfNeeded();
    const link = links.getByRole('link', { name });
    // From what stands above in the same foot: Tab alone has to reach it.
    await page.getByRole('button', { name: 'DXF' }).focus();
    await tabTo(page, link);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('main')).toContainText(seen);
    if (name !== 'The working') continue;
    const back = page.getByRole('main').locator('a[href="#joints"]').first();
    await expect(back).toBeVisible();
    await tabTo(page, back);
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/#joints$/);
    await expect(verdict(page)).toBeVisible();
  }
});
