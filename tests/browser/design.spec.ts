import { radians } from '../../src/core/units.ts';
import { changed } from '../support/joints.ts';
import { core, demoJoint, expect, field, openWith, tabTo, test, verdict } from './support.ts';
import { cycles, grouped, inHundred, percent } from '../../src/ui/text/numbers.ts';

const withLength = (length: number) => changed(demoJoint(), { sizes: { length } });

test('sizes a hinge of the demonstration part with the keyboard alone', async ({ page }) => {
  await page.goto('/');
  const length = field(page, 'Leaf length');
  await tabTo(page, length);
  await page.keyboard.press('ArrowUp');
  await expect(length).toHaveValue('12.50');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('2*10 + 2');
  await page.keyboard.press('Enter');
  await expect(length).toHaveValue('22.00');
  await expect(verdict(page)).toContainText(percent(core(withLength(22)).strain.peak));
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
  await page.keyboard.press('Control+z');
  await expect(length).toHaveValue('12.50');
  await page.keyboard.press('Control+y');
  await expect(length).toHaveValue('22.00');
});

test('reads fractions and inches, and keeps the old value when it cannot', async ({ page }) => {
  await page.goto('/');
  const length = field(page, 'Leaf length');
  await length.fill('3/8 in');
  await length.press('Enter');
  await expect(length).toHaveValue('9.525');
  await length.fill('twelve');
  await length.press('Enter');
  await expect(length).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('region', { name: 'What is wanted' }).getByRole('alert')).not.toBeEmpty();
  await expect(verdict(page)).toContainText(percent(core(withLength(9.525)).strain.peak));
  await length.press('Escape');
  await expect(length).toHaveValue('9.525');
  await field(page, 'Lines across').fill('2.5');
  await field(page, 'Lines across').press('Enter');
  await expect(page.getByRole('region', { name: 'What is wanted' }).getByRole('alert')).toContainText('whole');
});

test('drags the length, and strain, life and drawing agree with the core', async ({ page }) => {
  await page.goto('/');
  const handle = page.getByRole('slider', { name: 'Flexing length', exact: true });
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('the handle is not drawn');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 30, y, { steps: 3 });
  await page.mouse.move(x + 76, y, { steps: 5 });
  await page.mouse.up();
  const length = Number(await field(page, 'Leaf length').inputValue());
  expect(length).toBeGreaterThan(12);
  const a = core(withLength(length));
  await expect(verdict(page)).toContainText(percent(a.strain.peak));
  await expect(verdict(page)).toContainText(`${inHundred(a.life.chance)} in 100`);
  await expect(verdict(page)).toContainText(cycles(a.life.median));
  await expect(handle).toHaveAttribute('aria-valuenow', String(length));
  await expect(page.getByRole('figure', { name: /Fig. 1/ })).toContainText(length.toFixed(2));
  await expect(page.getByRole('region', { name: 'To draw' })).toContainText(length.toFixed(2));
  await page.keyboard.press('Control+z');
  await expect(field(page, 'Leaf length')).toHaveValue('12.00');
});

test('makes a failing PLA hinge pass with two clicks', async ({ page }) => {
  const failing = changed(demoJoint(), { profile: { filament: 'pla' } });
  expect(core(failing).verdict.grade).toBe('fail');
  await openWith(page, failing);
  await expect(verdict(page).getByRole('heading')).toHaveText(/Fail/);
  const use = page.getByRole('button', { name: /^Use it: / }).first();
  const proposal = await use.getAttribute('aria-label');
  await use.click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Pass/);
  await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
  await expect(verdict(page).getByRole('heading')).toHaveText(/Fail/);
  await expect(page.getByRole('button', { name: /^Use it: / }).first()).toHaveAttribute('aria-label', proposal ?? '');
});

test('says the chance both ways and never a life past the data', async ({ page }) => {
  const easy = changed(demoJoint(), { sizes: { length: 60 }, movement: { cycles: 2_000_000 } });
  await openWith(page, easy);
  await expect(verdict(page)).toContainText('Beyond the data');
  const mild = changed(demoJoint(), { sizes: { length: 60 }, movement: { cycles: 200_000 } });
  await openWith(page, mild);
  await expect(verdict(page)).toContainText(grouped(1_000_000));
  await expect(verdict(page)).not.toContainText(grouped(core(mild).life.median));
});

test('checks a joint that somebody else drew, from a measured thickness', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'one I measured' }).click();
  const thickness = field(page, 'Measured thickness');
  await thickness.fill('0.63');
  await thickness.press('Enter');
  await expect(page.getByRole('main')).toContainText('1.50 lines');
  await expect(page.getByRole('main')).toContainText(/scal/i);
  await expect(page.getByRole('main')).toContainText(/strain as it was/i);
});

test('moves the joint with the scrubber, and effort follows', async ({ page }) => {
  await page.goto('/');
  const scrubber = page.getByRole('slider', { name: /Bent by/ });
  await scrubber.focus();
  await page.keyboard.press('Home');
  await expect(page.getByRole('region', { name: 'Drawing' })).toContainText('0.00 %');
  await page.keyboard.press('End');
  await expect(page.getByRole('region', { name: 'Drawing' })).toContainText(percent(core(demoJoint()).strain.peak));
});

test('shows a crease and folds it all the way', async ({ page }) => {
  const flat = changed(demoJoint(), {
    sizes: { length: 12 },
    movement: { amount: radians(180) },
    profile: { filament: 'tpu95a' },
  });
  await openWith(page, flat);
  await expect(field(page, 'Angle')).toHaveValue('180');
  await page.getByRole('button', { name: /Battery-door hinge/ }).click();
  await expect(field(page, 'Layers through')).toBeVisible();
});

test('takes any text in any field and never shows a number that is none', async ({ page }) => {
  // Every text in every field is over six hundred actions, each of which is answered; a busy machine takes its time.
  test.setTimeout(240_000);
  await page.goto('/');
  await page.getByRole('button', { name: 'More', exact: true }).click();
  const texts = [
    '',
    '-1',
    '0',
    '1e400',
    '9^9^9',
    '1/0',
    'a=3',
    'zeros(9e9)',
    '2 mm 3',
    '°',
    '٣',
    '1e-300',
    '9'.repeat(400),
    '5 000 000 000 000',
  ];
  const fields = page.getByRole('main').getByRole('spinbutton');
  for (let at = 0; at < (await fields.count()); at += 1) {
    for (const text of texts) {
      const one = fields.nth(at);
      await one.fill(text);
      await one.press('Enter');
      await one.press('Escape');
    }
  }
  await expect(page.locator('body')).not.toContainText(/NaN|undefined|Infinity|\[object/);
  await expect(verdict(page).getByRole('heading')).toBeVisible();
});

test('drags the point of each strain curve and reads the curves by keyboard', async ({ page }) => {
  await page.goto('/');
  const length = field(page, 'Leaf length');
  for (const name of ['Strain against flexing length', 'Strain against life']) {
    const curve = page.getByRole('slider', { name, exact: true });
    await curve.scrollIntoViewIfNeeded();
    const before = Number(await length.inputValue());
    const grip = await curve.locator('.chart-grip').boundingBox();
    if (!grip) throw new Error(`the point of “${name}” is not drawn`);
    const [x, y] = [grip.x + grip.width / 2, grip.y + grip.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    // A little down as well: along the curve, not across to that of another line count.
    await page.mouse.move(x + 40, y + 12, { steps: 5 });
    await page.mouse.up();
    const dragged = Number(await length.inputValue());
    expect(dragged).toBeGreaterThan(before);
    await expect(verdict(page)).toContainText(percent(core(withLength(dragged)).strain.peak));
  }
  const curve = page.getByRole('slider', { name: 'Strain against flexing length', exact: true });
  await curve.focus();
  await page.keyboard.press('Shift+ArrowRight');
  const read = Number(/^([\d.]+)/.exec((await curve.getAttribute('aria-valuetext')) ?? '')?.[1]);
  expect(await curve.getAttribute('aria-valuetext')).toContain(percent(core(withLength(read)).strain.peak));
  await page.keyboard.press('Enter');
  expect(Number(await length.inputValue())).toBe(read);
});
