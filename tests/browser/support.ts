import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test as base, type Locator, type Page } from '@playwright/test';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { writeJointLink } from '../../src/files/jointLinkText.ts';
import '../support/everyKind.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * A page that must stay silent: no error, no complaint on the console, and no request that leaves for another host.
 */
export const test = base.extend({
  page: async ({ page, baseURL }, provide) => {
    const trouble: string[] = [];
    page.on('pageerror', (error) => trouble.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') trouble.push(message.text());
    });
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(`${baseURL}/`) && !/^(data|blob):/.test(url)) trouble.push(`asked ${url}`);
    });
    await provide(page);
    expect(trouble).toEqual([]);
  },
});

/** The first joint of the demonstration part, as the core knows it. */
export function demoJoint(): Joint {
  const [joint] = demoPart().joints;
  if (!joint) throw new Error('the demonstration part is empty');
  return joint;
}

/** What the core says of a joint that must not be refused. */
export function core(joint: Joint): Assessment {
  const answer = assess(joint);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

/** Opens the page with a joint in its link. */
export async function openWith(page: Page, joint: Joint): Promise<void> {
  await page.goto(`/#${writeJointLink(joint)}`);
  await expect(verdict(page)).toBeVisible();
}

export function verdict(page: Page): Locator {
  return page.getByRole('region', { name: 'Verdict' });
}

/** The cell of a joint in the strip; the name of the open one is a field beside it. */
export function cell(page: Page, name: string): Locator {
  const strip = page.getByRole('navigation', { name: 'Joints of this part' });
  return strip.getByRole('listitem').filter({ hasText: name }).getByRole('button');
}

/** A value in the brief. */
export function field(page: Page, name: string): Locator {
  return page.getByRole('main').getByRole('spinbutton', { name, exact: true });
}

/** Tabs until a control is reached, as somebody without a mouse would; fails when it is not on the way. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let presses = 0; presses < 120; presses += 1) {
    if (await target.evaluate((node) => node === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`not reached by Tab: ${target.toString()}`);
}

/** Rules of accessibility that this page breaks, as short lines. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run();
    return found.violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 120)).join(' | ')}`,
    );
  });
}

export { expect };

/** Drops a file as a hand would: with the events that a browser makes of it; `held` looks on before it is let go. */
export async function drop(
  page: Page,
  name: string,
  content: string | Uint8Array,
  held: () => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const data = await page.evaluateHandle(
    ([called, inside]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([Uint8Array.from(inside)], called));
      return transfer;
    },
    [name, [...bytes]] as const,
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await held();
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}
