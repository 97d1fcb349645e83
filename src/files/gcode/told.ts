/** What moves tell of the text that asks for them. */
import type { GcodeText } from './gcodeText.ts';

const NO_COUNTS = {
  modal: 0,
  resets: 0,
  feedResets: 0,
  firmwareRetractions: 0,
  firmwareRestores: 0,
  toolChanges: 0,
};

export class Told {
  /** From G0 to G3. */
  readonly moves = new Uint32Array(4);
  readonly counts = { ...NO_COUNTS };
  readonly isEver = { inch: false, relative: false, volumetric: false, flow: false };
  readonly tools = new Set<number>();

  all(
    absoluteFeed: boolean,
    relativeFeed: boolean,
  ): Pick<GcodeText, 'moves' | 'isEver' | 'tools' | keyof typeof NO_COUNTS> {
    const [g0, g1, g2, g3] = this.moves;
    return {
      ...this.counts,
      moves: [g0!, g1!, g2!, g3!],
      isEver: { ...this.isEver, relativeFeed, absoluteFeed },
      tools: [...this.tools].toSorted((a, b) => a - b),
    };
  }
}
