/** The list of what a zip archive holds, read from its end without unpacking anything. Source: the published zip form, from memory. */
import { MAX_ENTRIES, MAX_UNPACKED_BYTES } from './meshLimits.ts';
import { count, FETCH_AGAIN, quoted, refuse } from './refusal.ts';

export interface ZipEntry {
  readonly name: string;
  /** Packed bytes as they lie in the archive. */
  readonly packed: Uint8Array;
  /** As stated; only unpacking shows whether it is true. */
  readonly size: number;
  readonly crc: number;
  readonly isDeflated: boolean;
}

const [LOCAL, CENTRAL, END, END_64, LOCATOR_64] = [0x04034b50, 0x02014b50, 0x06054b50, 0x06064b50, 0x07064b50];
const [LOCAL_BYTES, CENTRAL_BYTES, END_BYTES, LOCATOR_BYTES] = [30, 46, 22, 20];
const MAX_COMMENT = 0xffff;
/** Stands where the number itself is too large for its field and follows in 64 bits. */
const ELSEWHERE = 0xffffffff;

const utf8 = new TextDecoder();

/** Everything in an archive but its folders. */
export function zipEntries(bytes: Uint8Array): readonly ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { entries, at: first } = listOf(view);
  if (entries > MAX_ENTRIES) {
    const message = `The archive holds ${count(entries)} files, and ${count(MAX_ENTRIES)} are read at most; export the part on its own`;
    refuse('too-large', message, { value: entries, limit: MAX_ENTRIES });
  }
  const found: ZipEntry[] = [];
  let at = first;
  for (let i = 0; i < entries; i += 1) {
    if (at + CENTRAL_BYTES > bytes.length || view.getUint32(at, true) !== CENTRAL)
      refuseDamage(`file ${i + 1} of its list`);
    const nameBytes = view.getUint16(at + 28, true);
    const after = at + CENTRAL_BYTES + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (after > bytes.length) refuseDamage(`file ${i + 1} of its list`);
    const name = utf8.decode(bytes.subarray(at + CENTRAL_BYTES, at + CENTRAL_BYTES + nameBytes));
    if (!name.endsWith('/')) found.push(entryAt(bytes, view, at, name));
    at = after;
  }
  checkSum(found);
  return found;
}

/** Judged by what the list states, before a byte is unpacked; each file is held to its statement later. */
function checkSum(found: readonly ZipEntry[]): void {
  const sum = found.reduce((total, { size }) => total + size, 0);
  if (sum <= MAX_UNPACKED_BYTES) return;
  const message = `The archive holds ${count(sum)} bytes when unpacked, and ${count(MAX_UNPACKED_BYTES)} are unpacked at most; export the part more coarsely`;
  refuse('too-large', message, { value: sum, limit: MAX_UNPACKED_BYTES });
}

function listOf(view: DataView): { entries: number; at: number } {
  const lowest = Math.max(0, view.byteLength - END_BYTES - MAX_COMMENT);
  for (let at = view.byteLength - END_BYTES; at >= lowest; at -= 1) {
    if (view.getUint32(at, true) !== END) continue;
    const list = { entries: view.getUint16(at + 10, true), at: view.getUint32(at + 16, true) };
    return list.at === ELSEWHERE || list.entries === 0xffff ? wideListOf(view, at) : list;
  }
  return refuse(
    'file-damaged',
    `The file begins as a zip archive but has no list at its end, so it is cut off; ${FETCH_AGAIN}`,
  );
}

/** The same of an archive whose numbers are written in 64 bits, as some programs do whatever the size. */
function wideListOf(view: DataView, end: number): { entries: number; at: number } {
  const locator = end - LOCATOR_BYTES;
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64) refuseDamage('its list');
  const at = wide(view, locator + 8);
  if (at + 56 > view.byteLength || view.getUint32(at, true) !== END_64) refuseDamage('its list');
  return { entries: wide(view, at + 32), at: wide(view, at + 48) };
}

function entryAt(bytes: Uint8Array, view: DataView, at: number, name: string): ZipEntry {
  const method = view.getUint16(at + 10, true);
  if ((view.getUint16(at + 8, true) & 1) === 1) {
    refuse('unreadable', `${quoted(name)} in the archive is locked with a password; export the part without one`);
  }
  if (method !== 0 && method !== 8) {
    refuse(
      'unreadable',
      `${quoted(name)} in the archive is packed by method ${method}, and 0 and 8 are read; export the part again`,
      { value: method },
    );
  }
  const { size, packedSize, local } = sizesAt(view, at, name);
  if (local + LOCAL_BYTES > bytes.length || view.getUint32(local, true) !== LOCAL) refuseDamage(quoted(name));
  const start = local + LOCAL_BYTES + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + packedSize > bytes.length) refuseDamage(quoted(name));
  const packed = bytes.subarray(start, start + packedSize);
  return { name, packed, size, crc: view.getUint32(at + 16, true), isDeflated: method === 8 };
}

function sizesAt(view: DataView, at: number, name: string) {
  const [packedSize, size, local] = [
    view.getUint32(at + 20, true),
    view.getUint32(at + 24, true),
    view.getUint32(at + 42, true),
  ];
  if (packedSize !== ELSEWHERE && size !== ELSEWHERE && local !== ELSEWHERE) return { size, packedSize, local };
  let extra = at + CENTRAL_BYTES + view.getUint16(at + 28, true);
  const end = extra + view.getUint16(at + 30, true);
  while (extra + 4 <= end && view.getUint16(extra, true) !== 1) extra += 4 + view.getUint16(extra + 2, true);
  let field = extra + 4;
  // Only the numbers that do not stand in their own place follow here, in this order.
  const next = (short: number): number => {
    if (short !== ELSEWHERE) return short;
    if (field + 8 > end) refuseDamage(quoted(name));
    field += 8;
    return wide(view, field - 8);
  };
  const whole = next(size);
  return { size: whole, packedSize: next(packedSize), local: next(local) };
}

/** A number of 64 bits; past what a double holds it is past every file as well. */
function wide(view: DataView, at: number): number {
  return view.getUint32(at, true) + 2 ** 32 * view.getUint32(at + 4, true);
}

function refuseDamage(what: string): never {
  return refuse('file-damaged', `The zip archive is damaged or cut off at ${what}; ${FETCH_AGAIN}`);
}
