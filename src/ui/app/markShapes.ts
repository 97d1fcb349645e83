import type { ProvenanceKind } from '../../core/material/types.ts';

interface MarkShape {
  /** What the mark says, in words. */
  readonly says: string;
  /** Width of the box of the drawing; all are 12 high. */
  readonly width: number;
  readonly path: string;
}

/** One pen for all four: § published, = computed here, ~ from memory, a struck tally for one's own test. */
export const MARK_SHAPES: Readonly<Record<ProvenanceKind, MarkShape>> = {
  published: {
    says: 'published',
    width: 10,
    path: 'M7 2.3C6.4.8 3.1.8 3.2 2.7S7.5 4.6 7.4 6.3 4.6 8 4.1 7M2.8 9.7C3.4 11.2 6.7 11.2 6.6 9.3S2.4 7.4 2.5 5.7 5.3 4 5.8 5',
  },
  computed: { says: 'computed here', width: 10, path: 'M1 4.3H9M1 7.7H9' },
  memory: { says: 'from memory', width: 10, path: 'M.8 7C2.2 3.6 3.6 4.4 5 6S7.8 8.4 9.2 5' },
  measured: {
    says: 'your test',
    width: 13,
    path: 'M1.2 1.5V10.5M4.7 1.5V10.5M8.2 1.5V10.5M11.7 1.5V10.5M-.6 9L13.5 3',
  },
};

/** In the order in which they are explained. */
export const MARK_KINDS: readonly ProvenanceKind[] = ['published', 'computed', 'memory', 'measured'];
