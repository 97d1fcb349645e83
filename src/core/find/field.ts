import { candidateAt, type Candidate, type Place } from './candidates.ts';
import { Front, type Weighed } from './front.ts';
import { rowsFor, type Row } from './rows.ts';
import { Estimates } from './samples.ts';
import { movesExpected, type Cell, type Screened } from './cell.ts';
import { screen } from './screen.ts';
import { fitting } from './stand.ts';
import { shapesOf } from './shapes.ts';
import { shapesIn, type Lot } from './lots.ts';
import { Tally } from './tally.ts';
import type { Wanted } from './wanted.ts';

/** One that meets all that is wanted, as far as it is screened. */
export interface Met extends Place, Weighed {}

/** Shapes between two beats. */
const AT_A_TIME = 64;

/** A lot as it is being searched: its shapes, what they fall short in, and for each filament what nothing betters. */
export class Field {
  readonly lot: Lot;
  readonly rows: readonly Row[];
  readonly #wanted: Wanted;
  readonly #trusts: boolean;
  #estimates: Estimates | undefined;
  #isExact = false;
  #tally = new Tally();
  #fronts: readonly Front<Met>[] = [];
  #fitting: Int32Array | undefined;

  /** `trusts`: hand forms are taken for exact, and nothing is expected that they do not tell. */
  constructor(lot: Lot, wanted: Wanted, trusts = false) {
    this.#trusts = trusts;
    this.lot = lot;
    this.#wanted = wanted;
    this.rows = rowsFor(wanted, lot);
  }

  /** Candidates to a shape, and in all. */
  get toShape(): number {
    return this.rows.length * this.lot.depths.length * this.lot.sides.length;
  }
  get total(): number {
    return shapesIn(this.lot) * this.toShape;
  }

  get estimates(): Estimates {
    if (!this.#estimates) throw new RangeError('a field is reckoned before it is screened');
    return this.#estimates;
  }
  get isReckoned(): boolean {
    return this.#estimates !== undefined;
  }

  get tally(): Tally {
    return this.#tally;
  }

  /** Candidates that cannot be made. */
  get impossible(): number {
    const { possible } = this.estimates.shapes;
    return possible.reduce((sum, one) => sum + (one === 0 ? 1 : 0), 0) * this.toShape;
  }

  /** Whether hand forms are exact for all that can be made. */
  get isExact(): boolean {
    return this.#isExact;
  }

  /** Works out every shape by hand form. */
  reckon(beat: () => void): void {
    const shapes = shapesOf(this.lot, this.#wanted, beat);
    this.#isExact = this.#trusts || shapes.possible.every((one, at) => one === 0 || shapes.exact[at] === 1);
    this.#estimates = new Estimates(shapes, this.#trusts ? new Int32Array(shapes.count) : movesExpected(shapes));
  }

  get #screened(): Screened {
    const { shapes, moves } = this.estimates;
    return { shapes, rows: this.rows, wanted: this.#wanted, moves };
  }

  /** Screens every candidate by hand forms. */
  screen(beat: (done: number) => void): void {
    const screened = this.#screened;
    const tally = new Tally();
    const fronts = this.rows.map(() => new Front<Met>());
    this.#walk(
      (cell) => {
        tally.take(screened, cell);
        if (cell.mask === 0) offer(fronts[cell.row] as Front<Met>, cell);
      },
      (shapes) => beat(shapes * this.toShape),
    );
    this.#tally = tally;
    this.#fronts = fronts;
  }

  /**
   * Looks again only for those that meet all and are no smaller than `least` [mm], by what has been solved since; what others fall
   * short in is left as it was.
   */
  lookAgain(least: number, beat: () => void): void {
    this.#fitting ??= fitting(this.#screened);
    this.estimates.correct(this.#fitting);
    const fronts = this.rows.map(() => new Front<Met>());
    const visit = (cell: Cell) => {
      if (cell.mask === 0 && cell.size >= least) offer(fronts[cell.row] as Front<Met>, cell);
    };
    this.#walk(visit, beat, this.#fitting);
    this.#fronts = fronts;
  }

  /** Visits every candidate once more. */
  each(visit: (cell: Cell, screened: Screened) => void): void {
    const screened = this.#screened;
    this.#walk(
      (cell) => visit(cell, screened),
      () => undefined,
    );
  }

  /** Visits the candidates of all shapes, or of those listed, some shapes at a time: `beat` hears how many it has been through. */
  #walk(visit: (cell: Cell) => void, beat: (shapes: number) => void, only?: Int32Array): void {
    const screened = this.#screened;
    const count = only?.length ?? screened.shapes.count;
    for (let from = 0; from < count; from += AT_A_TIME) {
      const to = Math.min(count, from + AT_A_TIME);
      screen(screened, visit, { from, to, only });
      beat(to);
    }
  }

  /** Of one filament, those than which nothing is both smaller and surer; smallest first. */
  frontOf(row: number): readonly Met[] {
    return this.#fronts[row]?.kept ?? [];
  }

  candidate(place: Place): Candidate {
    return candidateAt(this.lot, this.rows[place.row] as Row, place, this.#wanted);
  }
}

function offer(front: Front<Met>, cell: Cell): void {
  if (front.isBettered(cell)) return;
  const { at, row, depth, side, size, chance, effort } = cell;
  front.keep({ at, row, depth, side, size, chance, effort });
}
