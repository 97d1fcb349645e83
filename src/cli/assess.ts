/**
 * `npm run -s assess -- part.json`: assesses exported parts, or solves a network, and prints one JSON document. It is
 * written when everything is known, so that a call that is broken off leaves nothing behind.
 */
import { putOnShelf } from '../core/material/shelf.ts';
import type { Problem } from '../core/problems.ts';
import { MAX_NETWORK_BYTES, readNetworkBytes } from '../files/networkFile.ts';
import { MAX_PART_BYTES } from '../files/limits.ts';
import { readPartBytes } from '../files/partFile.ts';
import { readArguments, USAGE, type Asked } from './arguments.ts';
import { NETWORK_HEADER, reportNetwork } from './networkReport.ts';
import { emptyRoom } from './pathReport.ts';
import { printDocument } from './printDocument.ts';
import { clearProgress, showProgress } from './progress.ts';
import { readInput } from './readInput.ts';
import { HEADER, reportPart, type PartReport } from './report.ts';

interface Answer {
  readonly document: object;
  readonly hasProblems: boolean;
}

async function assessFiles({ files, path, prints }: Extract<Asked, { kind: 'parts' }>): Promise<Answer> {
  const parts: (PartReport & { readonly file: string })[] = [];
  const problems: (Problem & { readonly file: string })[] = [];
  const room = emptyRoom();
  for (const file of files) {
    // One after the other: standard input can be read only once, and the answers keep the order of the files.
    const part = await readInput(file, MAX_PART_BYTES, readPartBytes);
    if (!part.ok) {
      problems.push(...part.problems.map((problem) => ({ file, ...problem })));
      continue;
    }
    // Its joints find the filaments that came with it, and none that came with another.
    putOnShelf(part.value.filaments);
    const count = part.value.part.joints.length;
    const onJoint = (_: unknown, index: number) => showProgress(`joint ${index + 1} of ${count}`);
    parts.push({ file, ...reportPart(part.value.part, part.notes, { path, prints, onJoint }, room) });
  }
  const isRefused = parts.some(({ joints }) => joints.some((joint) => 'problems' in joint));
  return { document: { ...HEADER, parts, problems }, hasProblems: problems.length > 0 || isRefused };
}

async function solveNetwork({ file, asked }: Extract<Asked, { kind: 'network' }>): Promise<Answer> {
  const network = await readInput(file, MAX_NETWORK_BYTES, readNetworkBytes);
  showProgress('following the network');
  const report = network.ok ? reportNetwork(network.value, network.notes, asked) : { problems: network.problems };
  return { document: { ...NETWORK_HEADER, file, ...report }, hasProblems: report.problems.length > 0 };
}

async function main(given: readonly string[]): Promise<number> {
  const asked = readArguments(given);
  if (!asked) {
    process.stderr.write(USAGE);
    return 2;
  }
  const { document, hasProblems } = await (asked.kind === 'network' ? solveNetwork(asked) : assessFiles(asked));
  clearProgress();
  await printDocument(document);
  return hasProblems ? 1 : 0;
}

process.exitCode = await main(process.argv.slice(2));
