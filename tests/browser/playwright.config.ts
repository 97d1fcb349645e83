import { defineConfig } from '@playwright/test';
import { CHROMIUM_ARGS, findChromium } from './chromium.ts';

const { executablePath, env } = findChromium();
const port = Number(process.env['BROWSER_TEST_PORT'] ?? 41873);

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  forbidOnly: Boolean(process.env['CI']),
  workers: 1,
  // On a loaded machine a whole page may stand still for half a minute. A second try that passes is counted as flaky, and said.
  retries: process.env['CI'] ? 1 : 0,
  reporter: 'list',
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath,
      args: [...CHROMIUM_ARGS],
      env: { ...(process.env as Record<string, string>), ...env },
    },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: '../..',
    url: `http://127.0.0.1:${port}`,
    reuseExistingServer: !process.env['CI'],
  },
});
