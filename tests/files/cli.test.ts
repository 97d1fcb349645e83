import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const SAVED = 'tests/files/saved/part-v1.json';

/** Starts the command as a person would, with these arguments and this on its standard input. */
function run(args: readonly string[], input: string | Uint8Array = '') {
  const started = spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'src/cli/assess.ts', ...args], {
    cwd: ROOT,
    input,
    encoding: 'utf8',
  });
  return { code: started.status, out: started.stdout, err: started.stderr };
}

describe('the command', { timeout: 60_000 }, () => {
  let folder = '';
  const file = (name: string) => join(folder, name);
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'bendbook-'));
    writeFileSync(
      file('garbage.json'),
      Uint8Array.from({ length: 500 }, (_, n) => (n * 37 + 101) % 256),
    );
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('prints one JSON document for several files, in their order, and nothing else', () => {
    const { code, out, err } = run([SAVED, file('garbage.json'), file('absent.json')]);
    const document = JSON.parse(out);
    expect(document).toMatchObject({ format: 'bendbook-assessment', version: 2 });
    expect(document.parts).toHaveLength(1);
    expect(document.parts[0]).toMatchObject({ file: SAVED, name: 'Balcony weather station', notes: [] });
    expect(document.parts[0].joints).toHaveLength(3);
    expect(document.problems).toMatchObject([
      { file: file('garbage.json'), code: 'unreadable' },
      { file: file('absent.json'), code: 'unreadable' },
    ]);
    expect([code, err]).toEqual([1, '']);
  });

  it('reads a good part from standard input and ends with 0', () => {
    const { code, out, err } = run(['-'], readFileSync(join(ROOT, SAVED)));
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ parts: [{ file: '-', joints: [{}, {}, {}] }], problems: [] });
  });

  it.each([[[]], [['--help']], [['--loud', SAVED]]])('says how it is used when given %j, and ends with 2', (args) => {
    const { code, out, err } = run(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('npm run -s assess -- part.json');
  });
});
