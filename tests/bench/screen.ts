/**
 * From a change in a field to the updated screen, on the built page in a real browser, scripts, styles and layout
 * included: first until brief, verdict, ways out and drawing stand, then until the curves and tables below have followed.
 * Under 16 ms it fits one frame at 60 Hz.
 */
import { spawn } from 'node:child_process';
import { chromium, type Page } from '@playwright/test';
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.ts';

const PORT = 41874;
const URL = `http://127.0.0.1:${PORT}/`;
const PRESSES = 120;
/** The first presses warm the engine up. */
const WARM = 20;

const FIELDS = ['Angle', 'Leaf depth', 'Line width', 'Lines across', 'Leaf length'] as const;

/** Time of each press until the first screen stands, and until everything has followed, in ms. */
async function pressTimes(page: Page, label: string): Promise<{ first: number[]; all: number[] }> {
  return page.evaluate(
    async ({ name, presses, warm }) => {
      const field = document.querySelector<HTMLInputElement>(`main input[aria-label="${name}"]`);
      const foot = document.querySelector('.foot');
      if (!field || !foot) throw new Error(`no field ${name}`);
      field.focus();
      const times = { first: [] as number[], all: [] as number[] };
      for (let press = 0; press < presses; press += 1) {
        // Up and down in turn, so that every press changes the joint and none runs into a limit.
        const key = press % 2 === 0 ? 'ArrowUp' : 'ArrowDown';
        const was = field.value;
        // The tables at the foot are the last to follow.
        const rest = new Promise<void>((done) => {
          const watcher = new MutationObserver(() => {
            watcher.disconnect();
            done();
          });
          watcher.observe(foot, { subtree: true, childList: true, characterData: true });
        });
        const start = performance.now();
        field.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        // React renders a key press in a microtask of its own; two turns of the queue are past it.
        await Promise.resolve();
        await Promise.resolve();
        document.body.getBoundingClientRect();
        const first = performance.now() - start;
        if (field.value === was) throw new Error(`${name} did not change; the press measured nothing`);
        await rest;
        document.body.getBoundingClientRect();
        const all = performance.now() - start;
        if (press >= warm) {
          times.first.push(first);
          times.all.push(all);
        }
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      }
      return times;
    },
    { name: label, presses: PRESSES, warm: WARM },
  );
}

function quantile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

async function answers(): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    const up = await fetch(URL).then(
      (response) => response.ok,
      () => false,
    );
    if (up) return;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error('the built page does not answer; run `npm run build` first');
}

const server = spawn(
  process.execPath,
  ['node_modules/vite/bin/vite.js', 'preview', '--host', '127.0.0.1', '--port', String(PORT), '--strictPort'],
  { stdio: 'ignore' },
);
try {
  await answers();
  const { executablePath, env } = findChromium();
  const browser = await chromium.launch({
    executablePath,
    args: [...CHROMIUM_ARGS],
    env: { ...(process.env as Record<string, string>), ...env },
  });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(URL);
  await page.getByRole('figure', { name: /Fig. 4/ }).waitFor();
  process.stdout.write('ms from a key in a field to the laid-out screen (1280 × 800): median, nine in ten under\n');
  const said = (times: readonly number[]) =>
    [0.5, 0.9].map((share) => quantile(times, share).toFixed(1).padStart(6)).join('');
  for (const label of FIELDS) {
    const { first, all } = await pressTimes(page, label);
    process.stdout.write(`${label.padEnd(18)} first screen ${said(first)}   everything ${said(all)}\n`);
  }
  await browser.close();
} finally {
  server.kill();
}
