import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { kindText } from '../../src/ui/text/kindText.ts';
import { verdictHeading } from '../../src/ui/text/verdictText.ts';
import { cell, expect, field, tabTo, test, verdict, violations } from './support.ts';

/** What a new joint of a kind does, in the words of its brief. */
const begins = (family: string) => {
  const { drives } = kindText(family);
  const [first = ''] = Object.values(drives);
  return new RegExp(first, 'i');
};

const named = (family: string) => new RegExp(`^${kindText(family).name}$`, 'i');

test('every kind is taken from the catalogue by mouse, and its brief reads and is answered', async ({ page }) => {
  // Eleven joints are made and answered one after the other, which a busy machine does not do in the usual time.
  test.slow();
  await page.goto('/');
  for (const { id, parameters, roles } of FAMILIES) {
    await page.getByRole('button', { name: 'Add a joint' }).click();
    await page.getByRole('radiogroup').getByText(named(id)).click();
    const brief = page.getByRole('region', { name: 'What is wanted' });
    await expect(brief).toContainText(begins(id));
    await expect(brief).not.toContainText(/[{}]|NaN|undefined/);
    await expect(verdict(page).getByRole('heading')).toHaveText(/Pass|Caution|Fail|Beyond/);
    await expect(field(page, kindText(id).sizes[roles.length] ?? '')).toBeVisible();
    await brief.getByRole('button', { name: 'More' }).click();
    const shown = await brief.getByRole('spinbutton').count();
    expect(shown).toBeGreaterThan(Object.keys(parameters).length / 2);
    await expect(brief).not.toContainText(/[{}]|NaN|undefined/);
  }
});

/** The joint of the demo part that shows a kind. */
function demoOf(family: string): Joint {
  const found = demoPart().joints.find((joint) => joint.family === family);
  if (!found) throw new Error(`the demo part has no ${family}`);
  return found;
}

test('the demo part shows every kind: its brief reads, it is answered as the core answers, and it is drawn', async ({
  page,
}) => {
  test.slow();
  await page.goto('/');
  for (const { id } of FAMILIES) {
    const joint = demoOf(id);
    await cell(page, joint.name).press('Enter');
    const brief = page.getByRole('region', { name: 'What is wanted' });
    await expect(brief).toContainText(new RegExp(kindText(id).drives[joint.movement.drive] ?? '', 'i'));
    await expect(brief).not.toContainText(/[{}]|NaN|undefined/);
    await expect(verdict(page)).toHaveAttribute('aria-busy', 'false', { timeout: 30_000 });
    const answer = assess(joint, bySolver({}));
    if (!answer.ok) throw new Error(answer.problems[0].message);
    await expect(verdict(page).getByRole('heading')).toHaveText(verdictHeading(answer.value));
    await expect(page.getByRole('region', { name: 'Drawing' }).getByRole('figure').first()).toBeVisible();
    await expect(page.getByRole('contentinfo')).toContainText(`${joint.name}, ${kindText(id).name}`);
  }
});

test('the catalogue is walked and used by keyboard alone', async ({ page }) => {
  await page.goto('/');
  await tabTo(page, page.getByRole('button', { name: 'Add a joint' }));
  await page.keyboard.press('Enter');
  const kind = (family: string) => page.getByRole('radio', { name: named(family) });
  await expect(kind('straightLeaf')).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(kind('crease')).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(kind('crossedLeaves')).toBeFocused();
  await page.keyboard.press('End');
  await expect(kind('slitPanel')).toBeFocused();
  await page.keyboard.press('Home');
  await page.keyboard.press('o');
  await expect(kind('toggle')).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Add a joint' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('s');
  await expect(kind('spiral')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'What is wanted' })).toContainText('Turns on a pin');
  await expect(page.getByRole('main')).toBeFocused();
});

test('a kind that cannot do what is asked says why and is not taken', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Add a joint' }).click();
  await page.getByLabel('What it should do').selectOption('stay');
  const crease = page.getByRole('radio', { name: named('crease') });
  await expect(crease).toHaveAttribute('aria-disabled', 'true');
  await expect(crease).toHaveAccessibleDescription(/It always comes back/);
  await crease.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('radiogroup')).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('radio', { name: named('snapArch') }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'What is wanted' })).toContainText('snaps through');
});

test('the open joint is made another kind, keeps its name, and comes back by undo', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Another kind' }).click();
  await expect(page.getByRole('heading', { name: 'Another kind for “Rain-flap hinge”' })).toBeVisible();
  await page.getByRole('radio', { name: named('straightLeaf') }).press('c');
  await page.keyboard.press('c');
  await page.keyboard.press('Enter');
  const brief = page.getByRole('region', { name: 'What is wanted' });
  await expect(brief).toContainText('that cross');
  await expect(field(page, 'Angle')).toHaveValue('35');
  await expect(page.getByRole('textbox', { name: 'Name of this joint' })).toHaveValue('Rain-flap hinge');
  await expect(page.getByRole('button', { name: 'Another kind' })).toBeFocused();
  await page.keyboard.press('Control+z');
  await expect(brief).toContainText('over a leaf');
});

test('an effort is wished for and given up by keyboard', async ({ page }) => {
  await page.goto('/');
  const more = page.getByRole('button', { name: 'More', exact: true });
  await tabTo(page, more);
  await page.keyboard.press('Enter');
  const wish = page.getByLabel('How hard it may push back');
  await tabTo(page, wish);
  await page.keyboard.press('ArrowDown');
  const most = field(page, 'Effort at most');
  await tabTo(page, most);
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await expect(most).toHaveValue('12');
  await expect(verdict(page)).toContainText('over your 12.0');
  await wish.focus();
  await page.keyboard.press('ArrowUp');
  await expect(most).toHaveCount(0);
});

for (const width of [360, 1280]) {
  test(`the catalogue fits a page ${width} wide`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto('/');
    await page.getByRole('button', { name: 'Add a joint' }).click();
    await expect(page.getByRole('radio')).toHaveCount(FAMILIES.length);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });
}
