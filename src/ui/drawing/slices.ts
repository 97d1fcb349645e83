/** Slices of a section along one axis, from 0 up [px]; where they go on too long, the middle is left out. */
export interface Slices {
  readonly at: readonly { readonly start: number; readonly size: number }[];
  readonly total: number;
  /** Where the middle has been left out. */
  readonly gap: { readonly start: number; readonly end: number } | undefined;
}

/** What is left open in place of a middle part [px]. */
const GAP = 12;

/** Slices between edges in rising order, whole ones only. */
export function slices(edges: readonly number[], longest: number): Slices {
  const total = edges.at(-1) ?? 0;
  const all = edges.slice(1).map((edge, i) => ({ start: edges[i] ?? 0, size: edge - (edges[i] ?? 0) }));
  if (total <= longest) return { at: all, total, gap: undefined };
  const half = (longest - GAP) / 2;
  const lower = all.filter(({ start, size }) => start + size <= half);
  const upper = all.filter(({ start }) => start >= total - half);
  const last = lower.at(-1);
  const start = last ? last.start + last.size : 0;
  const shift = (upper[0]?.start ?? total) - start - GAP;
  return {
    at: [...lower, ...upper.map((slice) => ({ ...slice, start: slice.start - shift }))],
    total: total - shift,
    gap: { start, end: start + GAP },
  };
}

/** A length that is not sliced, in two pieces where its middle is left out. */
export function uncut(total: number, longest: number): Slices {
  if (total <= longest) return { at: [{ start: 0, size: total }], total, gap: undefined };
  const half = (longest - GAP) / 2;
  const at = [0, half + GAP].map((start) => ({ start, size: half }));
  return { at, total: longest, gap: { start: half, end: half + GAP } };
}
