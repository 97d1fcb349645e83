/** What of many designs is worth telling: those than which nothing is both smaller and surer. */

/** What designs are weighed by: size [mm], less is better; chance [-], more is better; effort [N·mm] or [N] between equals. */
export interface Weighed {
  readonly size: number;
  readonly chance: number;
  readonly effort: number;
}

/** Over this no count of prints tells one from another: at 1 in 2000. */
export const SURE = 0.9995;

/** Equal figures that were summed in another order differ by so much of themselves. */
const SAME = 1e-9;

function atMost(a: number, b: number): boolean {
  return a <= b * (1 + SAME);
}

function less(a: number, b: number): boolean {
  return a < b * (1 - SAME);
}

/**
 * Whether one design is as small and as sure as another, and smaller, surer or, where they are alike in both, softer. Chances over
 * 99.95 in 100 count as the same.
 *
 * @param a - size [mm], chance [-], effort [N·mm] or [N]
 * @param b - the other: size [mm], chance [-], effort [N·mm] or [N]
 * @returns true where `a` leaves no reason to take `b` [-]
 *
 * @example betters({ size: 9, chance: 0.97, effort: 8 }, { size: 10, chance: 0.97, effort: 5 }) // → true
 */
export function betters(a: Weighed, b: Weighed): boolean {
  const [sureA, sureB] = [Math.min(a.chance, SURE), Math.min(b.chance, SURE)];
  if (!atMost(a.size, b.size) || !atMost(sureB, sureA)) return false;
  return less(a.size, b.size) || less(sureB, sureA) || less(a.effort, b.effort);
}

/** Smallest first, then softest: the order in which designs are told. */
export function bySize(a: Pick<Weighed, 'size' | 'effort'>, b: Pick<Weighed, 'size' | 'effort'>): number {
  return a.size - b.size || a.effort - b.effort;
}

/** Keeps of all that is offered what nothing else betters. */
export class Front<T extends Weighed> {
  #kept: T[] = [];

  /** Smallest first, then softest. */
  get kept(): readonly T[] {
    return this.#kept.toSorted(bySize);
  }

  get length(): number {
    return this.#kept.length;
  }

  /** Whether something that was kept betters it: asked before it is made. */
  isBettered(offered: Weighed): boolean {
    const kept = this.#kept;
    for (let i = 0; i < kept.length; i += 1) {
      const one = kept[i] as T;
      if (!betters(one, offered)) continue;
      // What betters one betters many: it is looked at first from now on.
      if (i > 0) [kept[0], kept[i]] = [one, kept[0] as T];
      return true;
    }
    return false;
  }

  /** Keeps it, and lets go what it betters; it must not be bettered itself. */
  keep(offered: T): void {
    this.#kept = this.#kept.filter((one) => !betters(offered, one));
    this.#kept.push(offered);
  }
}

/**
 * Of these, those that nothing else among them betters.
 *
 * @param all - size [mm], chance [-], effort [N·mm] or [N]
 * @returns smallest first, then softest
 */
export function frontOf<T extends Weighed>(all: readonly T[]): readonly T[] {
  const front = new Front<T>();
  for (const one of all) if (!front.isBettered(one)) front.keep(one);
  return front.kept;
}
