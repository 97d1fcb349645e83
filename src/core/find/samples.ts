/** What solved shapes of a lot tell of the others, where hand forms only estimate. */
import type { Lot } from './lots.ts';
import { BIT, type Moves } from './cell.ts';
import type { Shapes } from './shapes.ts';

/** One solved shape: its figures over those of its hand form, and the bits of how it moves. */
export interface Sample {
  readonly at: number;
  readonly nominal: number;
  readonly peak: number;
  readonly effort: number;
  readonly moves: number;
}

/** Where a shape stands on each rung, 0 to 1. */
function stepsOf({ rungs }: Lot, at: number, into: Float64Array): void {
  let rest = at;
  rungs.forEach(({ values }, i) => {
    const many = values.length;
    into[i] = many > 1 ? (rest % many) / (many - 1) : 0;
    rest = Math.floor(rest / many);
  });
}

/** Nearer than this is the sample itself: one rung of thirty is 0.03, squared 0.001. */
const ITSELF = 1e-6;

/**
 * Up to what distance another is taken to touch, or to rest in the wrong place, as a solved one does: every rung is 1 long from
 * end to end, so that the first is about one step and the second a quarter of one rung.
 */
const BESIDE = { touching: 0.04, resting: 0.25 } as const;

/** What is estimated of a lot: its hand forms, corrected by what has been solved nearby. */
export class Estimates {
  readonly #hand: Shapes;
  readonly #expected: Moves;
  readonly #samples: Sample[] = [];
  readonly #steps: Float64Array[] = [];
  readonly shapes: Shapes;
  readonly moves: Moves;

  constructor(hand: Shapes, expected: Moves) {
    this.#hand = hand;
    this.#expected = expected;
    this.moves = expected.slice();
    const { nominal, peak, effort, possible } = hand;
    this.shapes = {
      ...hand,
      nominal: nominal.slice(),
      peak: peak.slice(),
      effort: effort.slice(),
      possible: possible.slice(),
    };
  }

  /** By hand form alone. */
  get hand(): Shapes {
    return this.#hand;
  }

  has(at: number): boolean {
    return this.#samples.some((sample) => sample.at === at);
  }

  /** A shape that cannot be solved is none to try. */
  drop(at: number): void {
    this.shapes.possible[at] = 0;
  }

  add(sample: Sample): void {
    const steps = new Float64Array(this.#hand.lot.rungs.length);
    stepsOf(this.#hand.lot, sample.at, steps);
    this.#samples.push(sample);
    this.#steps.push(steps);
  }

  /** Corrects these shapes: ratios between samples by their nearness, how one moves as the nearest does that is not far. */
  correct(only: Int32Array): void {
    if (this.#samples.length === 0) return;
    const here = new Float64Array(this.#hand.lot.rungs.length);
    for (const at of only) {
      if (this.shapes.possible[at] === 0) continue;
      stepsOf(this.#hand.lot, at, here);
      this.#correctOne(at, here);
    }
  }

  #correctOne(at: number, here: Float64Array): void {
    let [sum, nominal, peak, effort] = [0, 0, 0, 0];
    let [nearest, moves] = [Infinity, 0];
    for (let i = 0; i < this.#samples.length; i += 1) {
      const sample = this.#samples[i] as Sample;
      const squared = distance(here, this.#steps[i] as Float64Array);
      const weight = 1 / (squared + ITSELF) ** 2;
      sum += weight;
      nominal += weight * Math.log(sample.nominal);
      peak += weight * Math.log(sample.peak);
      effort += weight * Math.log(sample.effort);
      if (squared < nearest) [nearest, moves] = [squared, sample.moves];
    }
    const { shapes } = this;
    shapes.nominal[at] = (this.#hand.nominal[at] ?? 0) * Math.exp(nominal / sum);
    shapes.peak[at] = (this.#hand.peak[at] ?? 0) * Math.exp(peak / sum);
    shapes.effort[at] = (this.#hand.effort[at] ?? 0) * Math.exp(effort / sum);
    const alike = nearest < BESIDE.touching ** 2 ? moves : nearest < BESIDE.resting ** 2 ? moves & ~BIT.touches : 0;
    this.moves[at] = (this.#expected[at] ?? 0) | alike;
  }
}

function distance(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return sum;
}
