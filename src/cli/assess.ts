/** `npm run -s assess -- part.json`: assesses exported parts and prints one JSON document. */
import { createReadStream } from 'node:fs';
import type { Problem } from '../core/problems.ts';
import { fail, type Result } from '../core/result.ts';
import type { Part } from '../core/design/joint.ts';
import { MAX_PART_BYTES, readPartBytes } from '../files/partFile.ts';
import { HEADER, reportPart, type PartReport } from './report.ts';

const USAGE = `Assesses every joint of exported parts and prints one JSON document.

  npm run -s assess -- part.json [more.json ...]
  npm run -s assess -- -            reads the part from standard input

Exit code: 0 every joint was assessed, 1 a file or a joint has problems (they are in the document), 2 wrong use.
`;

interface Answers {
  readonly parts: (PartReport & { readonly file: string })[];
  readonly problems: (Problem & { readonly file: string })[];
}

/** Reads no more than tells that it is too much, so that a wrong path cannot fill the memory. */
async function bytesOf(stream: AsyncIterable<Buffer>): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    size += chunk.length;
    if (size > MAX_PART_BYTES) break;
  }
  return Buffer.concat(chunks);
}

async function read(file: string): Promise<Result<Part>> {
  try {
    return readPartBytes(await bytesOf(file === '-' ? process.stdin : createReadStream(file)));
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return fail({ code: 'unreadable', message: `The file cannot be opened: ${reason}` });
  }
}

async function assessFiles(files: readonly string[]): Promise<Answers> {
  const answers: Answers = { parts: [], problems: [] };
  for (const file of files) {
    // One after the other: standard input can be read only once, and the answers keep the order of the files.
    const part = await read(file);
    if (part.ok) answers.parts.push({ file, ...reportPart(part.value, part.notes) });
    else answers.problems.push(...part.problems.map((problem) => ({ file, ...problem })));
  }
  return answers;
}

function isRefused({ parts, problems }: Answers): boolean {
  return problems.length > 0 || parts.some(({ joints }) => joints.some((joint) => 'problems' in joint));
}

async function main(given: readonly string[]): Promise<number> {
  const files = given.filter((argument) => argument === '-' || !argument.startsWith('-'));
  if (files.length === 0 || files.length < given.length) {
    process.stderr.write(USAGE);
    return 2;
  }
  const answers = await assessFiles(files);
  process.stdout.write(`${JSON.stringify({ ...HEADER, ...answers }, null, 2)}\n`);
  return isRefused(answers) ? 1 : 0;
}

process.exitCode = await main(process.argv.slice(2));
