/** How strain and effort change with the thickness and the length of a joint, carried over from a few solves. */
import { normalCdf } from '../numeric/normal.ts';
import { ok, type Result } from '../result.ts';
import { byHand, isExactByHand, askedOf, type Respond, type Response } from './response.ts';
import type { Solved, SolvedPath } from './solved.ts';
import { printedAs, type Cause } from './doubtCauses.ts';
import type { Understood } from './understand.ts';

/** How far thickness and length may stray: logarithms at two standard deviations, 0 where they do not. */
export interface Stray {
  readonly thickness: number;
  readonly length: number;
}

/** What a normal law has below two standard deviations. */
const TWO_SIGMA = normalCdf(2);

/**
 * How far the causes of doubt let thickness and length stray.
 *
 * @param causes - all that vary [-]
 * @returns logarithms at two standard deviations [-]
 */
export function strayOf(causes: readonly Cause[]): Stray {
  const far = (name: Cause['name']) => Math.log(causes.find((cause) => cause.name === name)?.at(TWO_SIGMA) ?? 1);
  return { thickness: far('thickness'), length: far('length') };
}

/** What of a response changes with size. */
const FIGURES = ['nominalStrain', 'strainWithin', 'strainAtRoots', 'effort', 'stiffness'] as const;
type Figure = (typeof FIGURES)[number];

/** Logarithms of one figure over that of the joint as set: at the middle 0, then by powers of how far it strays. */
interface Growth {
  readonly a: number;
  readonly aa: number;
  readonly b: number;
  readonly bb: number;
  readonly ab: number;
}

/** Strains of places that hardly strain are noise of the mesh, and matter to nothing. */
const HARDLY = 1e-3;

/**
 * What answers the mechanics of prints that differ a little in thickness and length.
 *
 * Where hand forms are exact they answer each print. Else the joint is solved as set and at five sizes round it, two standard
 * deviations away, and the logarithm of each figure is carried between them by a polynomial of second order:
 *
 *     ln y = ln y₀ + c₁u + c₁₁u² + c₂v + c₂₂v² + c₁₂uv,   u = ln(t/t₀)/Δt,   v = ln(L/L₀)/ΔL
 *
 * Its way is that of the joint as set with strains and efforts grown alike.
 *
 * Problems: those of `solver`, at the edge of what is printed.
 *
 * @param understood - a checked joint [-]
 * @param nominal - its mechanics as set, by `solver` [-]
 * @param stray - how far thickness and length stray [-]
 * @param solver - what solves, without shapes [-]
 * @param tell - called before each solve with the share that is done [-]
 * @returns what answers such prints
 */
export function mechanicsNear(
  understood: Understood,
  nominal: Response,
  stray: Stray,
  solver: Respond,
  tell: (share: number) => void,
): Result<Respond> {
  if (isExactByHand(askedOf(understood))) return ok(byHand);
  const logs: number[][] = [];
  for (const [u, v] of NODES) {
    tell(logs.length / NODES.length);
    const isNew = (u === 0 || stray.thickness > 0) && (v === 0 || stray.length > 0);
    const there = isNew ? solver(printedAs(understood, straying(stray, u, v))) : ok(nominal);
    if (!there.ok) return there;
    logs.push(FIGURES.map((figure) => growth(nominal, there.value, figure)));
  }
  const grown = Object.fromEntries(
    FIGURES.map((figure, i) => [figure, growthOf(logs.map((row) => row[i] ?? 0))]),
  ) as Readonly<Record<Figure, Growth>>;
  return ok(carried(understood, stray, nominal, grown));
}

/** Where it is solved besides as set, in units of how far it strays: thickness, length. */
const NODES = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
] as const;

/** A print that strays so far. */
function straying(stray: Stray, u: number, v: number) {
  return { thickness: Math.exp(u * stray.thickness), length: Math.exp(v * stray.length) };
}

function growth(from: Response, to: Response, figure: Figure): number {
  const least = HARDLY * from.nominalStrain;
  const isStrain = figure === 'strainWithin' || figure === 'strainAtRoots';
  if (isStrain && from[figure] < least) return 0;
  const ratio = to[figure] / from[figure];
  return ratio > 0 && Number.isFinite(ratio) ? Math.log(ratio) : 0;
}

/** The polynomial through the middle and the five nodes. */
function growthOf([up = 0, down = 0, right = 0, left = 0, corner = 0]: readonly number[]): Growth {
  const [a, aa] = [(up - down) / 2, (up + down) / 2];
  const [b, bb] = [(right - left) / 2, (right + left) / 2];
  return { a, aa, b, bb, ab: corner - up - right };
}

function straysBy(ratio: number, far: number): number {
  return far > 0 ? Math.log(ratio) / far : 0;
}

function carried(from: Understood, stray: Stray, nominal: Response, grown: Readonly<Record<Figure, Growth>>): Respond {
  const name = from.family.roles.length;
  return (understood) => {
    const u = straysBy(understood.section.thickness / from.section.thickness, stray.thickness);
    const v = straysBy((understood.sizes[name] ?? 1) / (from.sizes[name] ?? 1), stray.length);
    const by = (figure: Figure) => {
      const { a, aa, b, bb, ab } = grown[figure];
      return Math.exp(a * u + aa * u * u + b * v + bb * v * v + ab * u * v);
    };
    const { solved } = nominal;
    const way = solved && grownWay(solved, by('strainWithin'), by('strainAtRoots'), by('effort'));
    return ok({
      ...nominal,
      ...Object.fromEntries(FIGURES.map((figure) => [figure, nominal[figure] * by(figure)])),
      ...(way ? { solved: way } : {}),
    });
  };
}

/** A way with all its strains and efforts grown alike. */
function grownWay(solved: Solved, within: number, atRoots: number, effort: number): Solved {
  const grownPath = (path: SolvedPath): SolvedPath => ({
    ...path,
    points: path.points.map((point) => ({
      ...point,
      effort: effort * point.effort,
      peakWithin: within * point.peakWithin,
      peakAtEnds: atRoots * point.peakAtEnds,
    })),
    events: path.events.map((event) => ({ ...event, effort: effort * event.effort })),
  });
  return {
    ...solved,
    forward: grownPath(solved.forward),
    ...(solved.back ? { back: grownPath(solved.back) } : {}),
  };
}
