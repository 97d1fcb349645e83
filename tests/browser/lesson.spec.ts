import type { Page } from '@playwright/test';
import type { Values } from '../../src/core/lesson/demos/demo.ts';
import { DEMOS } from '../../src/core/lesson/demos/demos.ts';
import { startOf, stopsOf } from '../../src/core/lesson/demos/handles.ts';
import { DEMO_IDS, type DemoId } from '../../src/core/lesson/demos/ids.ts';
import { lengthFigure, percent } from '../../src/ui/text/numbers.ts';
import { lessonJointName, lifeShort } from '../../src/ui/text/lessonDemoText.ts';
import { DEMO_WORDS } from '../../src/ui/text/lessonDemoWords.ts';
import { cell, core, expect, tabTo, test, violations } from './support.ts';

const main = (page: Page) => page.getByRole('main');
const picture = (page: Page) => main(page).getByRole('figure', { name: 'The picture' });
const answer = (page: Page) => main(page).getByRole('status').first();
const step = (page: Page, name: string) => main(page).getByRole('button', { name, exact: true });

const answersAt = (id: DemoId, values: Values) => DEMOS[id].joints(values).map(core);

async function open(page: Page, of: string): Promise<void> {
  await page.goto(`/#lesson${of}`);
  await expect(picture(page).getByRole('listitem').first()).toBeVisible();
}

/** Everything that a reader of the page by ear is told of the picture, the question and the plot. */
async function told(page: Page): Promise<string> {
  const parts = await Promise.all(
    [picture(page), main(page).getByRole('region', { name: 'The question' })].map((part) => part.ariaSnapshot()),
  );
  return parts.join('\n');
}

/** The first length, going up, at which the question of the first demonstration is answered. */
function answering(): number {
  const demo = DEMOS['three-lengths'];
  const start = startOf(demo);
  const length = stopsOf(demo.handles[0]).find((stop) => {
    const values = { ...start, length: stop };
    return demo.goal(answersAt('three-lengths', values), values)?.isMet;
  });
  if (length === undefined) throw new Error('no length answers it');
  return length;
}

test('is walked through by keyboard alone: asked, bent, worked out, counted, answered and opened as a joint', async ({
  page,
}) => {
  await open(page, '');
  const words = DEMO_WORDS['three-lengths'];
  await expect(main(page).getByRole('heading', { name: words.ask })).toBeVisible();
  // No number before anybody has said what they expect, for no reader of the page.
  expect(await told(page)).not.toMatch(/\d\s*(%|mm|°)/);
  await expect(main(page).getByRole('slider')).toHaveCount(0);
  await expect(main(page).getByRole('spinbutton')).toHaveCount(0);

  await page.keyboard.press('PageDown');
  await expect(main(page).getByRole('heading', { name: words.claim })).toBeVisible();
  await expect(step(page, 'Bend')).toHaveAttribute('aria-current', 'step');
  await expect(answer(page)).toHaveText('Not yet.');
  expect(await picture(page).ariaSnapshot()).not.toMatch(/\d\s*%/);

  await page.keyboard.press('PageDown');
  const start = startOf(DEMOS['three-lengths']);
  for (const a of answersAt('three-lengths', start)) {
    await expect(picture(page).getByText(percent(a.strain.peak), { exact: true })).toBeVisible();
  }
  await expect(answer(page)).toHaveText(/^Not yet\. B strains/);

  const wanted = answering();
  for (let length = 12; length < wanted; length += 1) {
    await expect(answer(page)).toHaveText(/^Not yet/);
    await page.keyboard.press('ArrowUp');
  }
  await expect(answer(page)).toHaveText(/^Yes\. B strains/);
  await expect(main(page).getByRole('spinbutton', { name: 'Length of B' })).toHaveValue(lengthFigure(wanted, 'mm'));

  await page.keyboard.press('4');
  const [, b] = answersAt('three-lengths', { ...start, length: wanted });
  if (!b) throw new Error('there is no B');
  await expect(picture(page).getByText(lifeShort(b))).toBeVisible();

  await page.keyboard.press('h');
  await expect(main(page).getByText('Numbers are hidden')).toBeVisible();
  expect(await picture(page).ariaSnapshot()).not.toMatch(/\d\s*%/);
  await page.keyboard.press('h');
  await expect(picture(page).getByText(lifeShort(b))).toBeVisible();

  await page.keyboard.press('PageDown');
  const next = main(page).getByRole('heading', { name: DEMO_WORDS['one-line-more'].ask });
  await expect(next).toBeFocused();
  await expect(page).toHaveURL(/#lesson\/demo\/one-line-more/);
  await page.keyboard.press('p');
  await expect(main(page).getByRole('heading', { name: words.ask })).toBeFocused();

  await tabTo(page, main(page).getByRole('button', { name: 'Open as a joint, C' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#joints$/);
  const name = lessonJointName(words.name, 'C');
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue(name);
  await page.keyboard.press('Control+z');
  await expect(cell(page, name)).toHaveCount(0);
});

test('a link opens a demonstration exactly as it was left, and nonsense in it harms nothing', async ({ page }) => {
  await open(page, '/demo/one-line-more?lines=5&angle=12&step=3');
  const lines = main(page).getByRole('spinbutton', { name: 'Lines across B' });
  const angle = main(page).getByRole('spinbutton', { name: 'Angle of both' });
  await expect(lines).toHaveValue('5');
  await expect(angle).toHaveValue('12');
  await lines.focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Escape');
  await expect(page).toHaveURL(/lines=4&angle=12&step=3$/);
  await page.reload();
  await expect(lines).toHaveValue('4');
  await expect(step(page, 'Work it out')).toHaveAttribute('aria-current', 'step');

  await open(page, '/demo/one-line-more?lines=99&angle=steep&step=2');
  await expect(lines).toHaveValue('6');
  await expect(angle).toHaveValue('10');
  await open(page, '/demo/nothing-of-ours?step=nine');
  await expect(main(page).getByRole('heading', { name: DEMO_WORDS['three-lengths'].ask })).toBeVisible();
});

test('keys leave typing alone, and whatever is pressed with Ctrl', async ({ page }) => {
  await open(page, '/demo/three-lengths?step=2');
  const length = main(page).getByRole('spinbutton', { name: 'Length of B' });
  await length.focus();
  await page.keyboard.type('14');
  await page.keyboard.press('PageDown');
  await expect(step(page, 'Bend')).toHaveAttribute('aria-current', 'step');
  await page.keyboard.press('Enter');
  await expect(length).toHaveValue('14.00');
  await length.blur();
  await page.keyboard.press('Control+3');
  await expect(step(page, 'Bend')).toHaveAttribute('aria-current', 'step');
  await page.keyboard.press('3');
  await expect(step(page, 'Work it out')).toHaveAttribute('aria-current', 'step');
});

test('copies a link that opens it again, and shows it where the clipboard is refused', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, '/demo/held-or-flexed?time=1week&angle=25&step=4');
  await main(page).getByRole('button', { name: 'Copy link' }).click();
  await expect(main(page).getByText('Copied')).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toMatch(/#lesson\/demo\/held-or-flexed\?time=1week&angle=25&step=4$/);
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('refused'));
  });
  await page.keyboard.press('3');
  await main(page).getByRole('button', { name: 'Copy link' }).click();
  await expect(main(page).getByRole('textbox', { name: 'Link to this demonstration' })).toHaveValue(/step=3$/);
});

test('moves nothing by itself, and has no button to move it where less motion is asked for', async ({ page }) => {
  await open(page, '/demo/three-lengths?step=2');
  const move = main(page).getByRole('button', { name: 'Bend them once' });
  const still = await picture(page).innerHTML();
  await page.waitForTimeout(400);
  expect(await picture(page).innerHTML()).toBe(still);
  await move.click();
  await expect(main(page).getByRole('button', { name: 'Stop' })).toBeVisible();
  await expect(move).toBeVisible();
  expect(await picture(page).innerHTML()).toBe(still);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await expect(move).toHaveCount(0);
});

test('fills the screen and leaves it', async ({ page }) => {
  await open(page, '/demo/three-lengths?step=3');
  await page.keyboard.press('f');
  await expect(page.getByRole('navigation', { name: 'Places' })).toBeHidden();
  await expect(main(page).getByRole('navigation', { name: 'Path of demonstrations' }).first()).toBeHidden();
  await page.keyboard.press('f');
  await expect(page.getByRole('navigation', { name: 'Places' })).toBeVisible();
});

test('the arch that stands alone comes back until it rises high enough', async ({ page }) => {
  await open(page, '/demo/arch-springs-back?rise=4.25&step=3');
  await expect(answer(page)).toHaveText(/^Not yet\. .*B stays/);
  for (let i = 0; i < 4; i += 1) await page.keyboard.press('ArrowUp');
  await expect(answer(page)).toHaveText(/^Yes\. Pushed through and let go, A stays/);
});

for (const width of [360, 1280]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`breaks no rule of accessibility at ${width} px, ${colorScheme}`, async ({ browser, baseURL }) => {
      const context = await browser.newContext({
        viewport: { width, height: 800 },
        colorScheme,
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      for (const of of ['', '/demo/three-lengths?step=4', '/demo/arch-springs-back?step=4']) {
        await open(page, of);
        if (of.includes('arch')) await expect(main(page).getByRole('figure')).toHaveCount(2);
        expect(await violations(page)).toEqual([]);
      }
      await context.close();
    });
  }

  test(`never scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    for (const id of DEMO_IDS) {
      await open(page, `/demo/${id}?step=4`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });
}
