/** A 3MF package: files by their part names, and the one that the model starts with. Source: 3mf-core 2. */
import { MAX_LIST_BYTES } from './meshLimits.ts';
import { count, quoted, refuse } from './refusal.ts';
import { readXml } from './xmlStream.ts';
import { zipEntries, type ZipEntry } from './zipDirectory.ts';

const RELATIONSHIPS = '_rels/.rels';
const START_PART = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';

export class Package3mf {
  /** By names without the slash at the head and in small letters, for part names are alike whatever their letters. */
  private readonly parts = new Map<string, ZipEntry>();

  constructor(bytes: Uint8Array) {
    for (const entry of zipEntries(bytes)) {
      const { name } = entry;
      const plain = name.replaceAll('\\', '/');
      if (plain.startsWith('/') || isOutside(plain)) {
        refuse(
          'unreadable',
          `${quoted(name)} in the archive points out of the archive, as no part file does; it is not read`,
        );
      }
      if (this.parts.has(plain.toLowerCase())) {
        const message = `The archive holds ${quoted(name)} twice, and which of them counts is not told; export the part again`;
        refuse('file-damaged', message);
      }
      this.parts.set(plain.toLowerCase(), entry);
    }
  }

  /**
   * @param name - of a part, from the root of the package, with or without a slash at its head
   * @param namedBy - who names it, as a sentence begins
   */
  part(name: string, namedBy: string): ZipEntry {
    const path = decoded(name).replaceAll('\\', '/').replace(/^\//, '');
    if (path.startsWith('/') || isOutside(path)) {
      refuse('unreadable', `${namedBy} names ${quoted(name)}, which is not inside the package; it is not read`);
    }
    const entry = this.parts.get(path.toLowerCase());
    return (
      entry ??
      refuse('file-damaged', `${namedBy} names ${quoted(name)}, which is not in the package; export the part again`)
    );
  }

  /** Name of the model part that holds what is to be printed. */
  startPart(): string {
    const list = this.parts.get(RELATIONSHIPS);
    if (!list)
      return refuse(
        'not-our-file',
        `The file is a zip archive but no 3MF part: ${RELATIONSHIPS} is not in it; if a part is packed in it, unpack it first`,
      );
    if (list.size > MAX_LIST_BYTES) {
      const message = `${RELATIONSHIPS} holds ${count(list.size)} bytes, and such a list is read up to ${count(MAX_LIST_BYTES)}; export the part again`;
      refuse('too-large', message, { value: list.size, limit: MAX_LIST_BYTES });
    }
    let start: string | undefined;
    readXml(list, {
      open: ({ local, attributes }) => {
        if (local !== 'Relationship' || attributes['Type']?.value !== START_PART || start !== undefined) return;
        start = attributes['Target']?.value ?? '';
        if (attributes['TargetMode']?.value === 'External') {
          refuse(
            'unreadable',
            `The model is said to be outside of the package, at ${quoted(start)}; nothing is fetched from there`,
          );
        }
      },
    });
    return (
      start ??
      refuse(
        'file-damaged',
        `${RELATIONSHIPS} names no 3D model, so nothing tells where the part is; export the part again`,
      )
    );
  }
}

/** Leads up and out, or names a drive or an address. */
function isOutside(path: string): boolean {
  return /^[a-z][a-z0-9+.-]*:/i.test(path) || path.split('/').includes('..');
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
