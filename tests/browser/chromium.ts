/**
 * A Chromium for the browser tests without any system package: $CHROMIUM_PATH if set, else the binary that the npm
 * package @sparticuz/chromium carries, unpacked once into node_modules/.cache. The package's own loader is not used:
 * it keeps one unversioned copy in the temp folder and starts the browser with its site isolation switched off.
 */
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';

interface Browser {
  readonly executablePath: string;
  readonly env: Readonly<Record<string, string>>;
}

/** The browser, its renderer for machines without a graphics card, fonts, and the system libraries it links to. */
const ARCHIVES = ['swiftshader.tar.br', 'fonts.tar.br', 'al2023.tar.br'];

function unpack(bin: string, into: string): void {
  const plain = (name: string) => brotliDecompressSync(readFileSync(join(bin, name)));
  const executable = join(into, 'chromium');
  writeFileSync(executable, plain('chromium.br'));
  chmodSync(executable, 0o755);
  for (const name of ARCHIVES) {
    execFileSync('tar', ['-x', '-f', '-', '-C', into, '--no-same-owner'], { input: plain(name) });
  }
}

function packageRoot(): string {
  let root = dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'));
  while (!existsSync(join(root, 'bin', 'chromium.br'))) root = dirname(root);
  return root;
}

function unpackOnce(root: string): string {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const cache = resolve(root, '../../.cache');
  const home = join(cache, `chromium-${version}`);
  if (existsSync(home)) return home;
  mkdirSync(cache, { recursive: true });
  const scratch = mkdtempSync(join(cache, 'unpack-'));
  unpack(join(root, 'bin'), scratch);
  try {
    // Atomic, so that two runs may race; the loser finds the winner's copy and drops its own.
    renameSync(scratch, home);
  } catch (error) {
    rmSync(scratch, { recursive: true, force: true });
    if (!existsSync(home)) throw error;
  }
  return home;
}

export function findChromium(): Browser {
  const named = process.env['CHROMIUM_PATH'];
  if (named) return { executablePath: named, env: {} };
  const home = unpackOnce(packageRoot());
  return { executablePath: join(home, 'chromium'), env: { LD_LIBRARY_PATH: join(home, 'lib') } };
}

export const CHROMIUM_ARGS: readonly string[] = [
  '--no-sandbox', // build servers run tests as root
  '--no-zygote',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--font-render-hinting=none',
];
