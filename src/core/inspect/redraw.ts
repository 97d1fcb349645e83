/** A thin section as it should be drawn, so that it lands on whole lines and lasts. */
import { filletLength } from '../closedForms/notchHinge.ts';
import { straightLeaf } from '../flexures/straightLeaf.ts';
import type { Mm } from '../units.ts';
import type { Flexure } from './flexure.ts';
import type { Judged, Landing, PrintedAs } from './judged.ts';
import { isWholeCount, landingOf, thicknessAt, type LaidOf } from './landing.ts';
import { leastOfRoots } from './roots.ts';
import { isLasting, isWhole } from './verdicts.ts';

/** Sizes of a thin section as in the file. */
export interface Drawn {
  readonly thickness: Mm;
  /** From pad to pad, fillets in it. */
  readonly length: Mm;
  /** At both roots. */
  readonly fillet: Mm;
}

/**
 * The same section with other sizes: of even thickness, with a quarter circle at each corner.
 *
 * @param flexure - as found [mm]
 * @param drawn - thickness, length and fillet [mm]; the length holds both fillets
 * @returns the section as the finder would then tell it [mm]
 *
 * Source: notch-hinge.
 */
export function redrawn(flexure: Flexure, { thickness, length, fillet }: Drawn): Flexure {
  const [first, second] = flexure.roots;
  return {
    ...flexure,
    thickness: { least: thickness, mean: thickness },
    length,
    bendingLength: length - 2 * fillet + 2 * filletLength(thickness, fillet),
    roots: [
      { ...first, fillet },
      { ...second, fillet },
    ],
  };
}

/** What a redrawn section is measured by. */
export interface Redrawing {
  readonly flexure: Flexure;
  readonly landing: Landing;
  readonly laid: LaidOf;
  /** What lines or layers have to fill over the thickness as in the file: scale, and more where it is aslant [-]. */
  readonly growth: number;
  readonly as: PrintedAs;
  readonly judge: (flexure: Flexure) => Judged;
}

/** Whole counts to which a thickness is brought: lines by twos, layers by ones; ties go down, because thick ones strain more. */
function countFor({ countOf, exact }: Landing): number {
  const step = countOf === 'lines' ? 2 : 1;
  return step * Math.max(1, Math.ceil(exact / step - 0.5 - 1e-9));
}

/** Sizes are told with so many decimals, fewer first. */
const DECIMALS = [2, 3, 4];

/**
 * The thickness of the nearest even count of lines, or of the nearest count of layers; as it is where it is whole already.
 *
 * @param redrawing - section and how it is laid [mm]
 * @returns thickness as in the file [mm]
 *
 * Source: bead-section.
 */
export function wholeThickness({ flexure, landing, laid, growth }: Redrawing): Mm {
  const { least } = flexure.thickness;
  if (isWhole(landing)) return least;
  const exact = thicknessAt(countFor(landing), laid) / growth;
  const isGood = (thickness: Mm) => isWholeCount(landingOf(thickness * growth, laid).exact);
  return DECIMALS.map((count) => Number(exact.toFixed(count))).find(isGood) ?? exact;
}

/** Fillets are drawn in steps of this. */
const FILLET_STEP: Mm = 0.05;

/**
 * A fillet of at least one line, of a crease of at least two layers; as much of it as the pads have room for, and no less than
 * it is.
 *
 * @param redrawing - section and how it is laid [mm]
 * @param thickness - as it is to be drawn [mm]
 * @returns fillet as in the file [mm]
 *
 * Source: common-practice.
 */
export function goodFillet({ flexure, laid, as }: Redrawing, thickness: Mm): Mm {
  const isCrease = laid.countOf === 'layers';
  const wanted = (isCrease ? 2 * laid.profile.layerHeight : laid.profile.lineWidth) / as.scale;
  const room = (leastOfRoots(flexure, 'shoulder') - thickness) / (isCrease ? 1 : 2);
  const steps = Math.min(Math.ceil(wanted / FILLET_STEP - 1e-9), Math.floor(room / FILLET_STEP + 1e-9));
  return Math.max(leastOfRoots(flexure, 'fillet'), Number((steps * FILLET_STEP).toFixed(2)));
}

/** A section made longer, and whether it is then whole and lasts. */
export interface Lengthened {
  readonly drawn: Drawn;
  readonly judged: Judged;
  readonly isGood: boolean;
}

/** Lengths are drawn in steps of this. */
const LENGTH_STEP: Mm = 0.1;

/**
 * The least length, no shorter than it is, at which a section of this thickness and fillet is whole and lasts; by bisection on
 * the judge. Longer ones last longer.
 *
 * @param redrawing - section and what judges it [-]
 * @param drawn - thickness and fillet as they are to be drawn [mm]
 * @returns the section, judged; the longest that is known where not even that lasts
 */
export function longEnough(
  { flexure, as, judge }: Redrawing,
  { thickness, fillet }: Pick<Drawn, 'thickness' | 'fillet'>,
): Lengthened {
  // Between its fillets a section has some length of its own.
  const shortest = Math.max(flexure.length, 2 * fillet + LENGTH_STEP);
  const firstStep = Math.ceil(shortest / LENGTH_STEP - 1e-9);
  const lengthAt = (step: number) =>
    step === 0 ? shortest : Number(((firstStep + step - 1) * LENGTH_STEP).toFixed(1));
  const at = (step: number) => {
    const drawn = { thickness, fillet, length: lengthAt(step) };
    return { drawn, judged: judge(redrawn(flexure, drawn)) };
  };
  const isGood = ({ judged }: ReturnType<typeof at>) => isWhole(judged.landing) && isLasting(judged);
  let good = Math.max(0, Math.floor(straightLeaf.parameters.length.max / as.scale / LENGTH_STEP) - firstStep);
  const longest = at(good);
  if (!isGood(longest)) return { ...longest, isGood: false };
  let bad = -1;
  while (good - bad > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (isGood(at(middle))) good = middle;
    else bad = middle;
  }
  return { ...at(good), isGood: true };
}
