import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export interface SourceFile {
  /** Path under `src`, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** Every script under `src`, or under a folder of it. */
export function sourceFiles(folder = ''): readonly SourceFile[] {
  const root = new URL('../../src/', import.meta.url);
  return readdirSync(fileURLToPath(root), { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.startsWith(folder) && /\.[cm]?[jt]sx?$/.test(path))
    .toSorted()
    .map((path) => ({ path, text: readFileSync(new URL(path, root), 'utf8') }));
}
