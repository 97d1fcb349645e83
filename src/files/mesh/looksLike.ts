/** What a file is, told from what is in it; from its name only where that does not tell. */
import type { MeshFormat } from './meshFile.ts';
import { bytesBeyond, promisedTriangles, STL_HEAD_BYTES } from './stlBinary.ts';
import { narrowText } from './textBytes.ts';

/** A format that can be read, or what else the file looks like, as a sentence has it after “looks like”. */
export type Likeness = { readonly format: MeshFormat } | { readonly foreign: string };

/** How files of other kinds begin. Source: their published forms, from memory. */
const BEGINNINGS: readonly (readonly [string, string])[] = [
  ['\u0089PNG', 'a PNG picture'],
  ['\u00FF\u00D8\u00FF', 'a JPEG picture'],
  ['GIF8', 'a GIF picture'],
  ['RIFF', 'a picture, a film or a sound'],
  ['II*\0', 'a TIFF picture'],
  ['MM\0*', 'a TIFF picture'],
  ['%PDF', 'a PDF document'],
  ['\u001F\u008B', 'a gzip archive; unpack it first'],
  ['7z\u00BC\u00AF', 'a 7z archive; unpack it first'],
  ['Rar!', 'a RAR archive; unpack it first'],
  ['glTF', 'a glTF scene'],
  ['ply\n', 'a PLY mesh'],
  ['ply\r', 'a PLY mesh'],
  ['OFF\n', 'an OFF mesh'],
  ['OFF\r', 'an OFF mesh'],
  ['ISO-10303-21', 'a STEP file'],
  ['GCDE', 'binary G-code'],
];

/** The same for text, after the blanks at its head; in small letters. */
const TEXT_BEGINNINGS: readonly (readonly [RegExp, string])[] = [
  [/^<!doctype html|^<html/, 'a web page'],
  [/^<svg|^<\?xml[^>]*>\s*(?:<!--[\s\S]*?-->\s*)*(?:<!doctype svg|<svg)/, 'an SVG drawing'],
  [/^<\?xml[^>]*>\s*(?:<!--[\s\S]*?-->\s*)*<amf/, 'an AMF part'],
  [/^<\?xml|^<[a-z]+[\s>:]/, 'XML; a 3MF part is a zip archive with such a file in it'],
  [/^[{[]/, 'JSON'],
  [/^0\s+section\b/, 'a DXF drawing'],
];

const OBJ_WORDS = new Set(['v', 'vn', 'vt', 'vp', 'f', 'fo', 'o', 'g', 's', 'l', 'p', 'mtllib', 'usemtl']);
const G_CODE = /^(?:n\d+\s*)?[gmt]\d+(?:\.\d+)?(?=\s|;|$|[a-z])|^;/;
/** Text enough to tell by; long heads of comments come before the first words of some. */
const LOOK_BYTES = 65_536;

/**
 * @param bytes - the whole file
 * @param name - of the file
 */
export function looksLike(bytes: Uint8Array, name: string): Likeness {
  if (isZip(bytes)) return { format: '3MF' };
  if (promisedTriangles(bytes) > 0 && bytesBeyond(bytes) === 0) return { format: 'STL, binary' };
  const head = latin(bytes.subarray(0, 16));
  const beginning = BEGINNINGS.find(([start]) => head.startsWith(start));
  if (beginning) return { foreign: beginning[1] };
  const text = narrowText(bytes.subarray(0, LOOK_BYTES));
  return isText(text) ? textLikeness(text, name) : bytesLikeness(bytes, name);
}

function isZip([p, k, third, fourth]: Uint8Array): boolean {
  if (p !== 0x50 || k !== 0x4b) return false;
  return (third === 3 && fourth === 4) || (third === 5 && fourth === 6);
}

/** Control characters that no text has; numbers as bytes nearly always hold some. */
function isText(bytes: Uint8Array): boolean {
  return bytes.subarray(0, 4096).every((code) => code > 31 || (code >= 9 && code <= 13) || code === 26 || code === 27);
}

function textLikeness(bytes: Uint8Array, name: string): Likeness {
  const text = latin(bytes).trimStart().toLowerCase();
  if (/^(?:solid|facet)\b/.test(text)) return { format: 'STL, text' };
  const beginning = TEXT_BEGINNINGS.find(([pattern]) => pattern.test(text));
  if (beginning) return { foreign: beginning[1] };
  const lines = text.split(/[\r\n]+/).map((line) => line.trim());
  const obj = lines.filter((line) => OBJ_WORDS.has(line.split(/\s/, 1)[0] ?? '')).length;
  const moves = lines.filter((line) => G_CODE.test(line)).length;
  if (obj > moves || (obj === 0 && moves === 0 && isNamed(name, 'obj'))) return { format: 'OBJ' };
  return { foreign: moves > 0 ? 'G-code, the way of a printer and not a part' : other('text of another kind', name) };
}

/** Bytes beyond a whole facet cannot be told from damage by what is in the file; then the name decides. */
function bytesLikeness(bytes: Uint8Array, name: string): Likeness {
  const beyond = bytesBeyond(bytes);
  const isNearly = promisedTriangles(bytes) > 0 && beyond > 0 && beyond < 50;
  if (isNearly || isNamed(name, 'stl') || isEmptyStl(bytes)) return { format: 'STL, binary' };
  return { foreign: other('bytes of another kind', name) };
}

function other(kind: string, name: string): string {
  return isNamed(name, '3mf') ? `${kind} and not like the zip archive that a 3MF file is` : kind;
}

function isEmptyStl(bytes: Uint8Array): boolean {
  return bytes.length === STL_HEAD_BYTES && promisedTriangles(bytes) === 0;
}

function isNamed(name: string, ending: string): boolean {
  return name.toLowerCase().endsWith(`.${ending}`);
}

function latin(bytes: Uint8Array): string {
  return new TextDecoder('latin1').decode(bytes);
}
