import type { Page } from '@playwright/test';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { familyOf, findFamily } from '../../src/core/flexures/known.ts';
import { radians } from '../../src/core/units.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { kindText } from '../../src/ui/text/kindText.ts';
import { cycles, inHundred, percent } from '../../src/ui/text/numbers.ts';
import { ESTIMATED } from '../../src/ui/text/solverText.ts';
import { changed } from '../support/joints.ts';
import { expect, field, openWith, test, verdict } from './support.ts';

/** What the solver says of a joint that must not be refused. */
function solved(joint: Joint): Assessment {
  const answer = assess(joint, bySolver());
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

function pivot(): Joint {
  const family = findFamily('crossedLeaves');
  if (!family) throw new Error('there are no crossed leaves');
  return changed(newJoint(family, 'Pivot'), { movement: { cycles: 20_000, amount: radians(30) } });
}

const withLength = (length: number) => changed(pivot(), { sizes: { length } });

/** What crosses between the page and its workers, written down on the page. */
interface Traffic {
  /** What the sheet asked of the solver: whole answers, in the order in which they were asked. */
  readonly posted: { readonly id: string; readonly length: number }[];
  readonly done: string[];
  readonly workers: Worker[];
}

async function listenIn(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const traffic: Traffic = { posted: [], done: [], workers: [] };
    Object.assign(globalThis, { traffic });
    globalThis.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        const name = traffic.workers.push(this);
        this.addEventListener('message', ({ data }: MessageEvent<{ is: string; id: number }>) => {
          if (data.is === 'done') traffic.done.push(`${name} ${data.id}`);
        });
      }
      override postMessage(data: { id: number; input: { joint: Joint; drawn?: boolean } }): void {
        const { joint, drawn } = data.input;
        const id = `${traffic.workers.indexOf(this) + 1} ${data.id}`;
        if (drawn === true) traffic.posted.push({ id, length: joint.sizes['length'] ?? 0 });
        super.postMessage(data);
      }
    };
  });
}

const traffic = (page: Page) =>
  page.evaluate(() => {
    const { posted, done } = (globalThis as unknown as { traffic: Traffic }).traffic;
    return { posted, done };
  });

/** Arrow keys in the focused field, one a frame of a usual screen: up, and half of the way back. */
async function stepSixtyASecond(page: Page, changes: number): Promise<void> {
  await page.evaluate(async (count) => {
    const input = document.activeElement as HTMLInputElement;
    for (let made = 0; made < count; made += 1) {
      const key = made < (2 / 3) * count ? 'ArrowUp' : 'ArrowDown';
      input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
      await new Promise((resolve) => {
        setTimeout(resolve, 1000 / 60);
      });
    }
  }, changes);
}

async function expectSolved(page: Page, joint: Joint): Promise<void> {
  const a = solved(joint);
  await expect(verdict(page)).toHaveAttribute('aria-busy', 'false');
  await expect(verdict(page)).not.toContainText(ESTIMATED);
  await expect(verdict(page)).toContainText(`strains ${percent(a.strain.peak)}`);
  await expect(verdict(page)).toContainText(cycles(a.life.median));
  await expect(verdict(page)).toContainText(`${inHundred(a.life.chance)} in 100`);
}

test('answers sixty changes a second, and at the end as the solver does', async ({ page }) => {
  await listenIn(page);
  await openWith(page, pivot());
  await expectSolved(page, pivot());
  const length = field(page, 'Leaf length');
  await length.focus();
  const start = Number(await length.inputValue());
  const changes = 120;
  await stepSixtyASecond(page, changes);
  const end = Number(await length.inputValue());
  expect(end).not.toBe(start);
  await expectSolved(page, withLength(end));
  await expect(page.getByRole('figure', { name: /Fig. 1/ }).first()).toContainText(end.toFixed(2));
  const { posted, done } = await traffic(page);
  expect(posted.filter(({ id }) => !done.includes(id))).toEqual([]);
  expect(posted.length).toBeGreaterThan(1);
  expect(posted.length).toBeLessThanOrEqual(changes + 1);
  expect(posted.at(-1)?.length).toBe(end);
});

/** The sized joints of the demonstration part, which has every kind. */
const SIZED = demoPart().joints.filter(({ measuredThickness }) => measuredThickness === undefined);

test('follows every kind at sixty changes a second, without losing an answer', async ({ page }) => {
  test.slow();
  await listenIn(page);
  for (const joint of SIZED) {
    const { roles } = familyOf(joint);
    await openWith(page, joint);
    await expect(verdict(page)).toHaveAttribute('aria-busy', 'false');
    const room = field(page, kindText(joint.family).sizes[roles.length] ?? '');
    await room.focus();
    await stepSixtyASecond(page, 30);
    const end = Number(await room.inputValue());
    const after = solved(changed(joint, { sizes: { [roles.length]: end } }));
    await expect(verdict(page)).toHaveAttribute('aria-busy', 'false');
    await expect(verdict(page)).toContainText(`strains ${percent(after.strain.peak)}`);
    const { posted, done } = await traffic(page);
    expect(posted.filter(({ id }) => !done.includes(id))).toEqual([]);
  }
});

test('shows an estimate marked as such until the solver has answered', async ({ page }) => {
  const held: (() => void)[] = [];
  await page.route(/solve\.worker/, async (route) => {
    await new Promise<void>((resolve) => {
      held.push(resolve);
    });
    await route.continue();
  });
  await openWith(page, pivot());
  await expect(verdict(page)).toContainText('strains about');
  await expect(verdict(page)).toContainText(ESTIMATED);
  await expect(verdict(page)).toHaveAttribute('aria-busy', 'true');
  for (const letGo of held) letGo();
  await expectSolved(page, pivot());
  await expect(page.getByRole('region', { name: /Ways out|Room to spare/ })).toBeVisible();
});

test('does without workers where there are none', async ({ page }) => {
  await page.addInitScript('delete globalThis.Worker');
  await openWith(page, pivot());
  await expectSolved(page, pivot());
});

test('says so when the worker dies, lives on, and solves the next change in a new one', async ({ page }) => {
  test.setTimeout(60_000);
  await listenIn(page);
  await openWith(page, pivot());
  await expectSolved(page, pivot());
  await page.evaluate(() => {
    for (const worker of (globalThis as unknown as { traffic: Traffic }).traffic.workers) worker.terminate();
  });
  const length = field(page, 'Leaf length');
  await length.fill('14');
  await length.press('Enter');
  const trouble = page.getByRole('alert').filter({ hasText: 'The solver broke off' });
  await expect(trouble).toBeVisible({ timeout: 20_000 });
  await expect(verdict(page)).toContainText('strains about');
  await page.getByRole('button', { name: 'Try again' }).first().click();
  await expectSolved(page, withLength(14));
  await length.fill('16');
  await length.press('Enter');
  await expectSolved(page, withLength(16));
  await expect(trouble).toHaveCount(0);
});
