import { strToU8, zipSync } from 'fflate';
import type { TriangleMesh } from '../../core/geometry/mesh/triangleMesh.ts';
import type { WrittenSolid } from './writtenSolid.ts';

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const MODEL_TYPE = 'application/vnd.ms-package.3dmanufacturing-3dmodel+xml';
const START = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const TYPES = 'http://schemas.openxmlformats.org/package/2006/content-types';
const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const MODEL_PATH = '3D/3dmodel.model';
/** Earliest date that the archive can hold: a file tells nothing of when it was made, so that the same solids are the same bytes. */
const NO_DATE = new Date(1980, 0, 1);

/** What stands in the file about all of it. */
export interface About {
  readonly title: string;
  readonly description: string;
}

/**
 * Solids as a 3MF file: an object and a build item for each, in mm, always the same bytes for the same solids.
 *
 * @param solids - solids with their names and where each stands [mm]
 * @param about - title and description [-]
 * @returns the file
 *
 * Source: 3mf-core.
 */
export function write3mf(solids: readonly WrittenSolid[], about: About): Uint8Array {
  const files = {
    '[Content_Types].xml': `${HEAD}<Types xmlns="${TYPES}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="${MODEL_TYPE}"/></Types>\n`,
    '_rels/.rels': `${HEAD}<Relationships xmlns="${RELATIONS}"><Relationship Target="/${MODEL_PATH}" Id="model" Type="${START}"/></Relationships>\n`,
    [MODEL_PATH]: modelText(solids, about),
  };
  const bytes = Object.entries(files).map(([path, text]) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(bytes), { level: 6, mtime: NO_DATE });
}

function modelText(solids: readonly WrittenSolid[], { title, description }: About): string {
  const objects = solids.map(({ name, mesh }, i) => objectText(i + 1, name, mesh));
  const items = solids.map(
    ({ at }, i) => `<item objectid="${i + 1}" transform="1 0 0 0 1 0 0 0 1 ${at.x} ${at.y} 0"/>\n`,
  );
  return [
    `${HEAD}<model unit="millimeter" xml:lang="en-GB" xmlns="${CORE}">\n`,
    `<metadata name="Title">${escaped(title)}</metadata>\n`,
    `<metadata name="Description">${escaped(description)}</metadata>\n`,
    '<metadata name="Application">Bendbook</metadata>\n',
    `<resources>\n${objects.join('')}</resources>\n<build>\n${items.join('')}</build>\n</model>\n`,
  ].join('');
}

function objectText(id: number, name: string, { points, corners }: TriangleMesh): string {
  const lines = [`<object id="${id}" type="model" name="${escaped(name)}">\n<mesh>\n<vertices>\n`];
  for (let i = 0; i < points.length; i += 3)
    lines.push(`<vertex x="${points[i]}" y="${points[i + 1]}" z="${points[i + 2]}"/>\n`);
  lines.push('</vertices>\n<triangles>\n');
  for (let i = 0; i < corners.length; i += 3)
    lines.push(`<triangle v1="${corners[i]}" v2="${corners[i + 1]}" v3="${corners[i + 2]}"/>\n`);
  lines.push('</triangles>\n</mesh>\n</object>\n');
  return lines.join('');
}

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character);
}
