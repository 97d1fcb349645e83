/** Part files to read: our own, and those of others that lie beside the project where they may. */
import { existsSync, readFileSync } from 'node:fs';

const OWN = new URL('../files/mesh/parts/', import.meta.url);
const CORPUS = new URL('../../../shared/corpus/', import.meta.url);

/** What another reader measured; lengths of 3MF in mm, of others in the unit of the file. */
export interface Measured {
  readonly triangles?: number;
  readonly vertices_after_exact_weld?: number;
  readonly bbox_min?: readonly number[];
  readonly bbox_max?: readonly number[];
  readonly area?: number;
  readonly signed_volume?: number;
  readonly solids?: number;
  readonly degenerate_repeated_vertex?: number;
  readonly degenerate_zero_area?: number;
  readonly duplicate_facets?: number;
  readonly open_edges?: number;
  readonly edges_shared_by_more_than_two?: number;
  readonly edges_with_clashing_orientation?: number;
  readonly shells?: number;
  readonly independent_reader_result?: string;
}

export interface CorpusFile {
  readonly file: string;
  readonly written_by_us: boolean;
  readonly measured: Measured;
}

interface Truth {
  readonly files: Readonly<Record<string, { readonly measured: Measured }>>;
}

export const ownPart = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, OWN)));
export const ownTruth = (): Truth => JSON.parse(readFileSync(new URL('truth.json', OWN), 'utf8')) as Truth;

export const corpusPart = (file: string): Uint8Array => new Uint8Array(readFileSync(new URL(file, CORPUS)));

/** The files of others in these folders; none where the collection is not beside the project. */
export function corpusOf(...folders: readonly string[]): readonly CorpusFile[] {
  const manifest = new URL('MANIFEST.json', CORPUS);
  if (!existsSync(manifest)) return [];
  const { files } = JSON.parse(readFileSync(manifest, 'utf8')) as { readonly files: readonly CorpusFile[] };
  return files.filter(({ file, written_by_us: ours }) => !ours && folders.includes(file.split('/')[0]!));
}
