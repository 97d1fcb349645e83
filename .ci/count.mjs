// Adds up the closing lines of the two test runners and ends with the exit status of `npm test`.
import { readFileSync } from 'node:fs';

const [, , log, status] = process.argv;
const escape = String.fromCharCode(27);
const text = readFileSync(log, 'utf8').replaceAll(new RegExp(`${escape}\\[[0-9;]*m`, 'g'), '');
const sum = (pattern) => [...text.matchAll(pattern)].reduce((total, match) => total + Number(match[1]), 0);
const unit = [...text.matchAll(/^\s*Tests\s+(.*)$/gm)].map((match) => match[1]).join(' ');
const unitCount = (word) => Number(unit.match(new RegExp(`(\\d+) ${word}`))?.[1] ?? 0);

const passed = unitCount('passed') + sum(/^\s+(\d+) passed \(/gm);
// A step that fails without a failing test (types, lint, size) still has to count as a failure.
const failed = Math.max(unitCount('failed') + sum(/^\s+(\d+) failed$/gm), status === '0' ? 0 : 1);
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);
