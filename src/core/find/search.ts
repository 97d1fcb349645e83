import type { Judge } from '../design/assess.ts';
import type { Assessment } from '../design/assessment.ts';
import type { Candidate, Place } from './candidates.ts';
import { figuresOf } from './candidates.ts';
import { Field } from './field.ts';
import {
  SHORTCOMINGS,
  type Design,
  type Failed,
  type Figures,
  type FindAnswer,
  type Miss,
  type Shortcoming,
} from './findAnswer.ts';
import { bySize, frontOf } from './front.ts';
import type { Lot } from './lots.ts';
import { closestOf, nearestOf } from './misses.ts';
import { spread } from './chosen.ts';
import { solveField } from './solveField.ts';
import { shortfallsOf } from './shortfalls.ts';
import type { Wanted } from './wanted.ts';

/** What assesses candidates: by hand forms, by the solver as any joint, and by it with fewer points on the way. */
export interface Judges {
  readonly byHand: Judge;
  readonly solved: Judge;
  readonly quick: Judge;
}

export interface SearchAsked extends Judges {
  readonly alive?: (share: number) => void;
  readonly tell?: (soFar: FindAnswer) => void;
  readonly now?: () => number;
  /** Takes every hand form for exact, and tells all that nothing betters: for what is to be compared with brute force. */
  readonly isWhole?: boolean;
}

/** What has been found: as it is told, and where it stands. */
interface Told {
  readonly field: Field;
  readonly place: Place;
  readonly joint: Candidate['joint'];
  readonly figures: Figures;
}

/** News are told no more often than this [ms]. */
const NEWS_MS = 120;
/** Of each kind in each filament so many are told, and of what nothing at all betters so many. */
const OF_EACH = 4;
const OF_THE_BEST = 40;
/** Screening is the first share of the work, solving the rest. */
const SCREENED = 0.5;
/** So many of those that hand forms tell exactly are solved for what only the solver sees. */
const CONFIRMED = 24;

const keyOf = ({ at, row, depth, side }: Place) => `${at}/${row}/${depth}/${side}`;

/** One search, lot by lot. */
export class Search {
  readonly #fields: readonly Field[];
  readonly #wanted: Wanted;
  readonly #asked: SearchAsked;
  readonly #told = new Map<Field, Map<string, Told>>();
  readonly #total: number;
  #tried = 0;
  #share = 0;
  #lastNews = Number.NEGATIVE_INFINITY;
  #nearest: ReadonlyMap<Shortcoming, Miss> = new Map();
  #closest: Miss | undefined;

  constructor(lots: readonly Lot[], wanted: Wanted, asked: SearchAsked) {
    this.#wanted = wanted;
    this.#asked = asked;
    this.#fields = lots.map((lot) => new Field(lot, wanted, asked.isWhole === true));
    this.#total = this.#fields.reduce((sum, { total }) => sum + total, 0);
  }

  run(): void {
    for (const field of this.#fields) this.#screen(field);
    if (this.#asked.isWhole !== true) {
      this.#tellBest();
      const estimated = this.#fields.filter((field) => !field.isExact);
      estimated.forEach((field, i) => this.#solve(field, (i + 1) / (estimated.length + 1)));
      this.#confirm();
      this.#dropEstimates();
    }
    this.#nearest = nearestOf(this.#fields, this.#wanted, this.#judgeOf, this.#beat);
    if (this.#designs().length === 0) this.#closest = closestOf(this.#fields, this.#wanted, this.#judgeOf, this.#beat);
    this.#share = 1;
  }

  readonly #beat = (): void => {
    this.#asked.alive?.(this.#share);
  };

  #news(): void {
    const { tell, now = () => 0 } = this.#asked;
    if (!tell || now() - this.#lastNews < NEWS_MS) return;
    this.#lastNews = now();
    tell(this.answer(false));
  }

  readonly #judgeOf = (field: Field): Judge => (field.isExact ? this.#asked.byHand : this.#asked.quick);

  #screen(field: Field): void {
    const before = this.#tried;
    field.reckon(this.#beat);
    field.screen((done) => {
      this.#tried = before + done;
      this.#share = (SCREENED * this.#tried) / this.#total;
      this.#beat();
    });
    const most = this.#asked.isWhole === true ? Number.POSITIVE_INFINITY : OF_EACH;
    field.rows.forEach((_, row) => {
      // Where hand forms only estimate, they say what to look at while it is solved.
      for (const met of spread(field.frontOf(row), most)) this.#take(field, met, this.#asked.byHand);
    });
    this.#news();
  }

  /** Tells a candidate where it meets all that is wanted once it is assessed, and no longer where it cannot be. */
  #take(field: Field, place: Place, judge: Judge): void {
    const candidate = field.candidate(place);
    const assessed = judge(candidate.joint);
    if (assessed.ok) this.#judged(field, place, candidate, assessed.value);
    else this.#told.get(field)?.delete(keyOf(place));
  }

  #judged(field: Field, place: Place, { joint, room, air }: Candidate, a: Assessment): boolean {
    const told = this.#told.get(field) ?? new Map<string, Told>();
    this.#told.set(field, told);
    const meets = shortfallsOf(this.#wanted, a, room, air).length === 0;
    if (meets) told.set(keyOf(place), { field, place, joint, figures: figuresOf(a, room) });
    else told.delete(keyOf(place));
    return meets;
  }

  /** Of all that hand forms tell exactly, what nothing of any kind betters. */
  #tellBest(): void {
    const all = this.#fields
      .filter((field) => field.isExact)
      .flatMap((field) => field.rows.flatMap((_, row) => field.frontOf(row).map((met) => ({ field, ...met }))));
    for (const { field, ...met } of spread(frontOf(all), OF_THE_BEST)) this.#take(field, met, this.#asked.byHand);
    this.#news();
  }

  #solve(field: Field, share: number): void {
    const before = this.#share;
    const to = SCREENED + (1 - SCREENED) * share * 0.7;
    solveField(field, this.#asked, {
      take: (place, candidate, a) => this.#judged(field, place, candidate, a),
      wanted: this.#wanted,
      beat: (done) => {
        this.#share = before + (to - before) * done;
        this.#beat();
        this.#news();
      },
    });
  }

  /** Solves those told by hand form, first what the list begins with: it may touch itself on the way. */
  #confirm(): void {
    const byHand = this.#designs()
      .filter(({ figures }) => figures.by === 'hand form')
      .slice(0, CONFIRMED);
    const before = this.#share;
    byHand.forEach(({ told: { field, place } }, i) => {
      this.#take(field, place, this.#asked.solved);
      this.#share = before + ((1 - before) * (i + 1)) / byHand.length;
      this.#beat();
      this.#news();
    });
  }

  /** What has not been solved is no design. */
  #dropEstimates(): void {
    for (const told of this.#told.values())
      for (const [key, { figures }] of told) if (figures.by === 'estimate') told.delete(key);
  }

  #designs(): readonly (Design & { readonly told: Told })[] {
    const all = [...this.#told.values()].flatMap((told) => [...told.values()]);
    const best = new Set(frontOf(all.map((told) => ({ told, ...told.figures }))).map(({ told }) => told));
    return all
      .map((told) => ({ joint: told.joint, figures: told.figures, isBest: best.has(told), told }))
      .toSorted((a, b) => bySize(a.figures, b.figures));
  }

  #counts(): readonly Failed[] {
    const tallies = this.#fields.map(({ tally }) => tally);
    return SHORTCOMINGS.flatMap((reason) => {
      const counts = tallies.map((tally) => tally.countOf(reason));
      const alone = counts.reduce((sum, one) => sum + one.alone, 0);
      const withOthers = counts.reduce((sum, one) => sum + one.withOthers, 0);
      return alone + withOthers > 0 ? [{ reason, alone, withOthers }] : [];
    }).toSorted((a, b) => b.alone + b.withOthers - a.alone - a.withOthers);
  }

  /** All that has been found so far. */
  answer(isDone: boolean): FindAnswer {
    return {
      tried: this.#tried,
      total: this.#total,
      share: isDone ? 1 : this.#share,
      impossible: this.#fields.reduce((sum, field) => sum + (field.isReckoned ? field.impossible : 0), 0),
      meets: this.#fields.reduce((sum, { tally }) => sum + tally.meets, 0),
      designs: this.#designs().map(({ joint, figures, isBest }) => ({ joint, figures, isBest })),
      failed: this.#counts().map((failed) => {
        const nearest = this.#nearest.get(failed.reason);
        return nearest ? { ...failed, nearest } : failed;
      }),
      ...(this.#closest ? { closest: this.#closest } : {}),
      isDone,
    };
  }
}
