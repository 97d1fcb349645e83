import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { NETWORK_HEADER, reportNetwork } from '../../src/cli/networkReport.ts';
import { inspectReport } from '../../src/cli/inspectReport.ts';
import { toolpathReport } from '../../src/cli/toolpathReport.ts';
import { HEADER, reportPart } from '../../src/cli/report.ts';
import type { Part } from '../../src/core/design/joint.ts';
import { writeFilaments } from '../../src/files/filamentText.ts';
import { checkPart, mendPart } from '../../src/core/inspect/checkPart.ts';
import { readNetwork } from '../../src/files/networkFile.ts';
import { readPart } from '../../src/files/partFile.ts';
import { checkText } from '../support/checkedToolpaths.ts';
import { ownPart } from '../support/corpus.ts';
import { AS_DROPPED } from '../support/flexures.ts';
import { leafPart } from '../support/laidParts.ts';
import { readPart as readMeshPart } from '../support/readPart.ts';
import { gcodeOf } from '../support/toolpaths.ts';

/** The examples of the README: what goes in, and what comes out, shortened and rounded. */
const [given, answer, path, network, networkAnswer, filaments, inspected, laid] = [
  ...readFileSync(new URL('../../README.md', import.meta.url), 'utf8').matchAll(/```json\n(.*?)```/gs),
].map(([, json]) => json ?? '');

/** Where a shortened, rounded example says something else than the whole, as short lines. */
function differences(example: unknown, whole: unknown, at: string): string[] {
  if (typeof example === 'number' && typeof whole === 'number') {
    // Half a unit in the last place that the README prints, which is three or four figures.
    const printed = String(example).replace('-', '').replace('.', '').replace(/^0+/, '').length;
    const room = Math.abs(example) * 10 ** (1 - Math.max(printed, 3));
    return Math.abs(example - whole) <= room ? [] : [`${at}: ${example}, not ${whole}`];
  }
  if (typeof example !== 'object' || example === null) return example === whole ? [] : [`${at}: ${String(example)}`];
  const inner = (whole ?? {}) as Readonly<Record<string, unknown>>;
  return Object.entries(example).flatMap(([key, value]) => differences(value, inner[key], `${at}.${key}`));
}

/** An example against what the command makes of it, as JSON. */
function expectSaid(example: string | undefined, whole: unknown): void {
  expect(differences(JSON.parse(example ?? ''), JSON.parse(JSON.stringify(whole)), 'document')).toEqual([]);
}

function partGiven(): Part {
  const read = readPart(given ?? '');
  if (!read.ok) throw new Error('the example must be read');
  return read.value.part;
}

describe('the examples of the README', () => {
  it('are a part that is read, and what the command says of it', () => {
    expectSaid(answer, { ...HEADER, parts: [{ file: 'part.json', ...reportPart(partGiven(), []) }], problems: [] });
  });

  it('show the way of the same joint when it is pushed', () => {
    const part = partGiven();
    const joints = part.joints.map((joint) => ({
      ...joint,
      movement: { ...joint.movement, drive: 'pushed', amount: 3 },
    }));
    expectSaid(path, reportPart({ ...part, joints }, [], { path: 2 }).joints[0]?.['path']);
  });

  it('show a network and what comes of it', () => {
    const read = readNetwork(network ?? '');
    if (!read.ok) throw new Error('the network of the example must be read');
    expect(read.notes).toEqual([]);
    expectSaid(networkAnswer, { ...NETWORK_HEADER, ...reportNetwork(read.value, read.notes, { parts: 3 }) });
  });

  it('show a filament of one’s own as it is written, which is the one of the saved part', () => {
    const saved = readPart(readFileSync(new URL('saved/part-v3.json', import.meta.url), 'utf8'));
    if (!saved.ok) throw new Error('the saved part must be read');
    expectSaid(filaments, JSON.parse(writeFilaments(saved.value.filaments)));
  });

  it('show what is told of the leaf of our own part files', () => {
    const { files, print } = JSON.parse(inspected ?? '');
    const part = checkPart(mendPart(readMeshPart(ownPart('syn-leaf-084x6.stl'))), 6 * AS_DROPPED.profile.lineWidth);
    expect(print.line_width_mm).toBe(AS_DROPPED.profile.lineWidth);
    expect(files.length).toBe(1);
    expectSaid(JSON.stringify(files[0]), { file: 'part.stl', ...inspectReport(part, AS_DROPPED) });
  });

  it('show what is told of a leaf in a toolpath', async () => {
    const layers = Array.from({ length: 20 }, (_, i) => ({
      contours: [0.42],
      ...(i >= 4 && i < 10 && { start: 3 + 0.25 * i }),
    }));
    const { toolpath } = leafPart({ length: 12, thickness: 0.84, height: 0.2, layers });
    const checked = await checkText(gcodeOf(toolpath), { thickest: 2.52 });
    expectSaid(laid, { file: 'part.gcode', ...toolpathReport(checked) });
  });

  it('would be missed if a figure went wrong', () => {
    expect(differences({ a: { b: 1.05 } }, { a: { b: 1.2 } }, 'x')).toHaveLength(1);
    expect(differences({ a: [1, -2.05] }, { a: [1, -2.2, 3] }, 'x')).toHaveLength(1);
  });
});
