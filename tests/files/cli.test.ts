import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../support/command.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const SAVED = 'tests/files/saved/part-v1.json';

/** A leaf, held at one end and pushed at the other. */
const NETWORK = JSON.stringify({
  format: 'bendbook-network',
  version: 1,
  units: 'mm N MPa rad',
  modulus: 2000,
  poisson: 0.35,
  nodes: [
    { id: 'root', x: 0, y: 0 },
    { id: 'tip', x: 20, y: 0 },
  ],
  members: [{ id: 'leaf', from: 'root', to: 'tip', shape: { kind: 'straight' }, thickness: 0.84, width: 6 }],
  supports: [{ at: 'root', x: true, y: true, turn: true }],
  motions: [{ at: 'tip', y: 5 }],
});

const run = (args: readonly string[], input?: string | Uint8Array) => runCommand('assess', ROOT, args, input);

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
    expect(document).toMatchObject({ format: 'bendbook-assessment', version: 3 });
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

  it('solves a network from standard input, as finely as asked', () => {
    const { code, out, err } = run(['--network', '-', '--path', '2', '--elements', '8', '--refined'], NETWORK);
    expect([code, err]).toEqual([0, '']);
    const document = JSON.parse(out);
    expect(document).toMatchObject({ format: 'bendbook-network-answer', version: 1, file: '-', accuracy: 'refined' });
    expect(document.path.points).toHaveLength(3);
    expect(document.error.elements).toEqual([8]);
  });

  it.each([
    ['that is a part', SAVED, [], 'not-our-file'],
    ['that is not there', 'absent.json', [], 'unreadable'],
    ['without the pad asked for', '-', ['--pad', 'roof'], 'no-such-id'],
  ])('puts what is wrong with a network %s into the document and ends with 1', (_, named, more, code) => {
    const answer = run(['--network', named, ...more], NETWORK);
    expect([answer.code, answer.err]).toEqual([1, '']);
    expect(JSON.parse(answer.out)).toMatchObject({ file: named, problems: [{ code }] });
  });

  it.each([[[]], [['--help']], [['--loud', SAVED]], [['--path', '0', SAVED]]])(
    'says how it is used when given %j, and ends with 2',
    (args) => {
      const { code, out, err } = run(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain('npm run -s assess -- part.json');
    },
  );
});
