import { quantileOf, sampleCube, sampledShare } from '../numeric/sampling.ts';
import { checkSpread } from '../print/spread.ts';
import { fail, failIfAny, ok, type Result } from '../result.ts';
import { assessUnderstood } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { bySolver } from './bySolver.ts';
import type { DoubtAnswer, DoubtAsked, Percentiles } from './doubtAnswer.ts';
import { causesOf, printedAs, type Cause, type Draft } from './doubtCauses.ts';
import { checkPrints } from './doubtCheck.ts';
import { mechanicsNear, strayOf } from './doubtMechanics.ts';
import { doubtShares, type Print } from './doubtShares.ts';
import type { Joint } from './joint.ts';
import type { Solve } from './rememberSolved.ts';
import { askedOf, isExactByHand, type Respond, type Response } from './response.ts';
import { solveJoint } from './solveJoint.ts';
import { understand, type Understood } from './understand.ts';

/** What goes on while doubt is worked out. */
export interface DoubtWork {
  /** What solves: each time anew, or one that remembers. */
  readonly solve?: Solve;
  /** Called again and again with the share that is done, 0 to 1. */
  readonly tell?: (share: number) => void;
  readonly cancelled?: () => boolean;
}

/** Points of each solved way, and where what is carried over turns out too rough. */
const PARTS = { usual: 24, fine: 48 } as const;
/** So far may what is carried over lie from a solve before all is solved more finely: shares of strain and effort. */
const ROUGH = { strain: 0.01, effort: 0.03 } as const;
/** Points of the cloud. */
const CLOUD = 256;

/**
 * How sure the answer for a joint is: many prints of it, each as it may come out, through the same assessment.
 *
 * Sizes, filament, curve and specimens vary as `causesOf` says, independently of each other. Strains and efforts of each
 * print are carried over from a few solves (`mechanicsNear`), and eight prints are solved to see how well that does.
 *
 * Problems: those of `understand`, `checkSpread` and the solver; `cancelled`.
 *
 * @param joint - one flexure with its movement and print profile [-]
 * @param asked - how closely the printer keeps its sizes; samples [-], how they are drawn, seed [-]
 * @param work - what solves, and who is told how far it is [-]
 * @returns chance, percentiles and shares of the causes; the same for the same seed
 *
 * Source: strain-life, lattice-rules, additive-shares.
 */
export function doubtOf(joint: Joint, asked: DoubtAsked, work: DoubtWork = {}): Result<DoubtAnswer> {
  const checked = understand(joint);
  if (!checked.ok) return checked;
  const refused = failIfAny(checkSpread(asked.spread));
  if (refused) return refused;
  const usual = doubtWith(checked.value, asked, work, PARTS.usual);
  if (!usual.ok || !isRough(usual.value)) return usual;
  const fine = doubtWith(checked.value, asked, work, PARTS.fine);
  return fine.ok && (fine.value.checked?.strain ?? 0) < (usual.value.checked?.strain ?? 0) ? fine : usual;
}

function isRough({ checked }: DoubtAnswer): boolean {
  return checked !== undefined && (checked.strain > ROUGH.strain || checked.effort > ROUGH.effort);
}

function doubtWith(understood: Understood, asked: DoubtAsked, work: DoubtWork, parts: number): Result<DoubtAnswer> {
  const { tell = () => undefined, cancelled = () => false, solve = solveJoint } = work;
  const solver = bySolver({ whole: false, parts, cancelled }, solve);
  const response = solver(understood);
  if (!response.ok) return response;
  const nominal = assessedAs(understood, response.value);
  const causes = causesOf(understood, nominal, response.value, asked.spread);
  const near = mechanicsNear(understood, response.value, strayOf(causes), solver, (share) =>
    tell(PARTED.solved * share),
  );
  if (!near.ok) return near;
  const sampled = sampleCube(asked.how, asked.samples, causes.length, asked.seed);
  const points = sampled.sets.flat();
  const drafts = points.map((point) => draftAt(causes, point));
  const prints = made(drafts, printsBy(understood, near.value), work);
  if (!prints.ok) return prints;
  const answer = {
    asked,
    replicates: sampled.replicates,
    ...resultsOf(nominal, prints.value, sampled.each),
    ...doubtShares(causes, points, prints.value),
  };
  if (isExactByHand(askedOf(understood))) return ok(answer);
  const by = { carried: near.value, solver };
  const seen = checkPrints(understood, drafts, by, (share) => tell(PARTED.sampled + (1 - PARTED.sampled) * share));
  return seen.ok ? ok({ ...answer, checked: seen.value }) : seen;
}

/** How far the work is, as a share, when what is carried over has been solved, and when the prints have been made. */
const PARTED = { solved: 0.3, sampled: 0.6 } as const;
/** Prints between two looks at whether anybody still waits. */
const BLOCK = 64;

function made(
  drafts: readonly Draft[],
  printOf: (draft: Draft) => Print,
  { tell, cancelled }: DoubtWork,
): Result<readonly LivedPrint[]> {
  const prints: LivedPrint[] = [];
  for (const draft of drafts) {
    if (prints.length % BLOCK === 0) {
      if (cancelled?.() === true)
        return fail({ code: 'cancelled', message: 'The sampling was stopped', field: 'joint' });
      tell?.(PARTED.solved + ((PARTED.sampled - PARTED.solved) * prints.length) / drafts.length);
    }
    prints.push(lived(draft, printOf(draft)));
  }
  return ok(prints);
}

function assessedAs(understood: Understood, response: Response): Assessment {
  const assessed = assessUnderstood(understood, () => ok(response));
  if (!assessed.ok) throw new RangeError('mechanics that have been answered are assessed');
  return assessed.value;
}

function draftAt(causes: readonly Cause[], point: readonly number[]): Draft {
  return Object.fromEntries(causes.map(({ name, at }, i) => [name, at(point[i] ?? 0.5)]));
}

function printsBy(understood: Understood, respond: Respond): (draft: Draft) => Print {
  return (draft) => {
    const print = printedAs(understood, draft);
    const response = respond(print);
    if (!response.ok) throw new RangeError('what is carried over always answers');
    const { life, strain, effort } = assessedAs(print, response.value);
    return { median: life.median, strain: strain.peak, effort: effort.effort };
  };
}

/** A print with the life that it has itself. */
interface LivedPrint extends Print {
  readonly life: number;
}

function lived({ specimens = 0, curve = 0 }: Draft, print: Print): LivedPrint {
  return { ...print, life: print.median * 10 ** (specimens + curve) };
}

function resultsOf(
  nominal: Assessment,
  prints: readonly LivedPrint[],
  each: number,
): Omit<DoubtAnswer, 'asked' | 'replicates' | 'causes' | 'together' | 'checked'> {
  const wanted = nominal.joint.movement.cycles;
  const reaches = prints.map(({ life }) => life >= wanted);
  const sets = Array.from({ length: prints.length / each }, (_, r) => reaches.slice(r * each, (r + 1) * each));
  const stride = Math.max(1, Math.floor(prints.length / CLOUD));
  return {
    wanted,
    chance: sampledShare(sets),
    chanceOfVerdict: nominal.life.chance,
    breaksAtOnce: prints.filter(({ median }) => median === 0).length / prints.length,
    life: percentiles(prints.map(({ life }) => life)),
    strain: percentiles(prints.map(({ strain }) => strain)),
    effort: percentiles(prints.map(({ effort }) => effort)),
    cloud: prints.filter((_, i) => i % stride === 0).map(({ life, strain }) => ({ cycles: life, strain })),
  };
}

function percentiles(values: readonly number[]): Percentiles {
  const sorted = values.toSorted((one, other) => one - other);
  const [p10, p50, p90] = [0.1, 0.5, 0.9].map((share) => quantileOf(sorted, share)) as [number, number, number];
  return { p10, p50, p90 };
}
