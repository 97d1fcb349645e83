/** Namespaces of 3MF and its extensions, and what leaving one unread means for the shape. Source: 3mf-core 2.3.1; names of the extensions from memory. */
import type { Problem } from '../../core/problems.ts';

const BASE = 'http://schemas.microsoft.com/3dmanufacturing';
export const MODEL_SPACE = `${BASE}/core/2015/02`;
export const PRODUCTION_SPACE = `${BASE}/production/2015/06`;

/** Colours and names of groups of triangles change nothing of the shape; production is read. */
const HARMLESS = new Set([MODEL_SPACE, PRODUCTION_SPACE, `${BASE}/material/2015/02`, `${BASE}/trianglesets/2021/07`]);

/** Shapes beside the mesh. What stands for them in a model, and what to say of it. */
const NOT_READ: readonly { readonly begins: string; readonly element: string; readonly said: string }[] = [
  {
    begins: `${BASE}/beamlattice/`,
    element: 'beamlattice',
    said: 'A lattice of beams is not read, so that whatever it holds together is missing; export it as a mesh to have it checked',
  },
  {
    begins: `${BASE}/slice/`,
    element: 'slicestack',
    said: 'Slices are not read; the mesh beside them is, and may be coarser than they are',
  },
];

/** What it means that a model requires an extension: nothing, that something is not read, or nobody knows what. */
export function harmOf(space: string): 'none' | 'not read' | 'unknown' {
  if (HARMLESS.has(space)) return 'none';
  return NOT_READ.some(({ begins }) => space.startsWith(begins)) ? 'not read' : 'unknown';
}

/** What to say of an element of an extension; without an element, of the extension. Undefined where nothing is lost. */
export function extensionNote(space: string, element?: string): Problem | undefined {
  const found = NOT_READ.find(({ begins }) => space.startsWith(begins));
  if (!found || (element !== undefined && element !== found.element)) return undefined;
  return { code: 'left-out', message: found.said };
}
