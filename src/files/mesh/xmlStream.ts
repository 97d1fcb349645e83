/** Reads a file of XML piece by piece, without ever holding all of it; no document types and nothing from elsewhere. */
import { SaxesParser, type SaxesTagNS } from 'saxes';
import { MAX_XML_DEPTH, MAX_XML_PIECE } from './meshLimits.ts';
import { count, FETCH_AGAIN, quoted, refuse } from './refusal.ts';
import { wideTextOf } from './textBytes.ts';
import { unpack } from './unpack.ts';
import type { ZipEntry } from './zipDirectory.ts';

export type XmlTag = SaxesTagNS;

export interface XmlHearer {
  /** @param line - in which the tag ends, from 1 */
  readonly open?: (tag: XmlTag, line: number) => void;
  readonly close?: (tag: XmlTag, line: number) => void;
  readonly progress?: (share: number) => void;
}

const ENCODINGS = new Set(['utf-8', 'utf8', 'utf-16', 'utf-16le', 'utf-16be', 'us-ascii', 'ascii']);

export function readXml(entry: ZipEntry, hearer: XmlHearer): void {
  const reader = new XmlReader(entry.name, hearer);
  unpack(entry, (piece, share) => {
    reader.take(piece);
    hearer.progress?.(share);
  });
  reader.end();
}

class XmlReader {
  private readonly name: string;
  private readonly parser = new SaxesParser({ xmlns: true });
  private decoder: TextDecoder | undefined;
  private depth = 0;
  private sinceTag = 0;

  constructor(name: string, { open, close }: XmlHearer) {
    const { parser } = this;
    this.name = name;
    parser.on('error', ({ message }) => this.refuse(`is no well-formed XML: ${reason(message)}`));
    parser.on('doctype', () => this.refuse('has a document type, which 3MF forbids', 'unreadable'));
    parser.on('xmldecl', ({ encoding }) => this.checkEncoding(encoding));
    parser.on('opentag', (tag) => {
      this.sinceTag = 0;
      this.depth += 1;
      if (this.depth > MAX_XML_DEPTH) this.refuse(`nests elements more than ${MAX_XML_DEPTH} deep`, 'too-large');
      open?.(tag, parser.line);
    });
    parser.on('closetag', (tag) => {
      this.sinceTag = 0;
      this.depth -= 1;
      close?.(tag, parser.line);
    });
  }

  take(piece: Uint8Array): void {
    if (piece.length === 0) return;
    this.decoder ??= new TextDecoder(wideTextOf(piece) ?? 'utf-8', { fatal: true });
    this.write(this.decoded(piece, true));
  }

  end(): void {
    this.write(this.decoded(new Uint8Array(), false));
    this.parser.close();
  }

  private write(text: string): void {
    this.sinceTag += text.length;
    this.parser.write(text);
    if (this.sinceTag > MAX_XML_PIECE) {
      this.refuse(
        `has ${count(this.sinceTag)} characters without a tag, and ${count(MAX_XML_PIECE)} are read at most`,
        'too-large',
      );
    }
  }

  private decoded(piece: Uint8Array, stream: boolean): string {
    try {
      return this.decoder?.decode(piece, { stream }) ?? '';
    } catch {
      return this.refuse('is not the Unicode text that it must be');
    }
  }

  private checkEncoding(encoding: string | undefined): void {
    if (encoding === undefined || ENCODINGS.has(encoding.toLowerCase())) return;
    this.refuse(`is encoded as ${quoted(encoding)}, where 3MF has UTF-8`, 'unreadable');
  }

  private refuse(what: string, code: 'file-damaged' | 'unreadable' | 'too-large' = 'file-damaged'): never {
    const remedy = code === 'file-damaged' ? FETCH_AGAIN : 'export the part again';
    return refuse(code, `${quoted(this.name)}, line ${count(this.parser.line)}, ${what}; ${remedy}`);
  }
}

/** The package puts line and column before its reason; the line is said already. */
function reason(message: string): string {
  return message
    .replace(/^\d+:\d+:\s*/, '')
    .replace(/\.$/, '')
    .slice(0, 80);
}
