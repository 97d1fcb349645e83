import { expect } from 'vitest';
import type { Problem } from '../../src/core/problems.ts';
import type { MeshFile } from '../../src/files/mesh/meshFile.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { bytesOf } from './meshWriters.ts';

const asBytes = (file: string | Uint8Array): Uint8Array => (typeof file === 'string' ? bytesOf(file) : file);

/** The mesh in a file that must be read. */
export function readPart(file: string | Uint8Array, name = 'part'): MeshFile {
  const result = readMesh(asBytes(file), name);
  if (!result.ok) throw new Error(`refused: ${result.problems[0].message}`);
  expect(result.notes).toEqual(result.value.notes);
  return result.value;
}

/** What is said of a file that must be refused. */
export function refused(file: string | Uint8Array, name = 'part'): Problem {
  const result = readMesh(asBytes(file), name);
  if (result.ok) throw new Error(`read as ${result.value.format}`);
  const [problem] = result.problems;
  expect(problem.message).not.toMatch(/(?<!“)NaN|undefined(?! entity)|\.$/);
  return problem;
}
