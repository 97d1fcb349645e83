// Installs what package-lock.json names when node_modules is missing or older than the lock; otherwise does nothing.
// It talks on stderr only, so that a command whose answer is JSON on stdout stays clean.
import { execSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const stamp = 'node_modules/.installed-from';
const lock = readFileSync('package-lock.json', 'utf8');
if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== lock) {
  process.stderr.write('Installing the packages of package-lock.json ...\n');
  execSync('npm ci --no-audit --no-fund', { stdio: ['ignore', 2, 2] });
  writeFileSync(stamp, lock);
}
