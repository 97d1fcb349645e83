/** Part files as tests want them: whole ones of a mesh, and 3MF packages put together by hand. */
import { strToU8, zipSync, type Zippable } from 'fflate';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { trianglesOf } from './meshSums.ts';

export const bytesOf = (text: string): Uint8Array => strToU8(text);

export function binaryStl(mesh: TriangleMesh, head = 'made for a test'): Uint8Array {
  const triangles = trianglesOf(mesh);
  const bytes = new Uint8Array(84 + 50 * triangles.length);
  const view = new DataView(bytes.buffer);
  bytes.set(bytesOf(head.padEnd(80).slice(0, 80)));
  view.setUint32(80, triangles.length, true);
  triangles.forEach((triangle, i) => {
    triangle.flat().forEach((value, k) => view.setFloat32(84 + 50 * i + 12 + 4 * k, value, true));
  });
  return bytes;
}

export function textStl(mesh: TriangleMesh, name = 'part'): string {
  const facets = trianglesOf(mesh).map(
    (triangle) =>
      `facet normal 0 0 0\n outer loop\n${triangle.map((place) => `  vertex ${place.join(' ')}\n`).join('')} endloop\nendfacet\n`,
  );
  return `solid ${name}\n${facets.join('')}endsolid ${name}\n`;
}

const triples = (numbers: ArrayLike<number>): readonly (readonly number[])[] =>
  Array.from({ length: numbers.length / 3 }, (_, i) => [numbers[3 * i]!, numbers[3 * i + 1]!, numbers[3 * i + 2]!]);

export function objText({ points, corners }: TriangleMesh): string {
  const places = triples(points).map((place) => `v ${place.join(' ')}\n`);
  const faces = triples(corners).map((face) => `f ${face.map((corner) => corner + 1).join(' ')}\n`);
  return `o part\n${places.join('')}${faces.join('')}`;
}

export function meshXml({ points, corners }: TriangleMesh): string {
  const vertices = triples(points).map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`);
  const triangles = triples(corners).map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`);
  return `<mesh><vertices>${vertices.join('\n')}</vertices><triangles>${triangles.join('\n')}</triangles></mesh>`;
}

export const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
export const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
const LIST = 'http://schemas.openxmlformats.org/package/2006/relationships';
const START = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';

export const modelXml = (resources: string, items: string, attributes = 'unit="millimeter"'): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<model xmlns="${CORE}" ${attributes}><resources>${resources}</resources>\n<build>${items}</build></model>`;

export const objectXml = (id: number | string, mesh: TriangleMesh, attributes = ''): string =>
  `<object id="${id}" ${attributes}>${meshXml(mesh)}</object>`;

export const relsXml = (target = '/3D/3dmodel.model', more = ''): string =>
  `<Relationships xmlns="${LIST}"><Relationship Id="r" Type="${START}" Target="${target}" ${more}/></Relationships>`;

/** A package of these files; the list of relationships is added where it is not among them. */
export const packaged = (files: Zippable): Uint8Array => zipSync({ '_rels/.rels': bytesOf(relsXml()), ...files });

/** A package of one model part. */
export const packagedModel = (model: string | Uint8Array): Uint8Array =>
  packaged({ '3D/3dmodel.model': typeof model === 'string' ? bytesOf(model) : model });

export const threemf = (mesh: TriangleMesh): Uint8Array =>
  packagedModel(modelXml(objectXml(1, mesh, 'name="part"'), '<item objectid="1"/>'));
