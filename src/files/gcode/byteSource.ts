/** A file that is read piece by piece. */
export interface ByteSource {
  readonly size: number;
  /** Bytes from one place to before another, both within the size. */
  readonly read: (from: number, to: number) => Promise<Uint8Array>;
}

export function blobSource(blob: Blob): ByteSource {
  return {
    size: blob.size,
    read: async (from, to) => new Uint8Array(await blob.slice(from, to).arrayBuffer()),
  };
}

export function bytesSource(bytes: Uint8Array): ByteSource {
  return { size: bytes.length, read: (from, to) => Promise.resolve(bytes.subarray(from, to)) };
}
