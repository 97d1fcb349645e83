import { plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';

/** Bending theory wants a leaf much longer than thick; common practice draws the line at five times, no source. */
const SLENDER = 5;
/** Products such as 2·0.42 + 2·0.8 may miss 2.44 by the last digit. */
const ROUND_OFF = 1e-9;

/**
 * A caution where plane bending of a slender leaf is doubtful.
 *
 * @param thickness - thickness of the thin section t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @returns `leaf-too-thick-for-length` when t > L/5 [-], or nothing
 *
 * Source: common-practice.
 */
export function notePlainBending(thickness: Mm, length: Mm): readonly Problem[] {
  const limit = length / SLENDER;
  if (thickness <= limit * (1 + ROUND_OFF)) return [];
  return [
    {
      code: 'leaf-too-thick-for-length',
      message: `A thickness of ${plain(thickness)} mm is over a fifth of the flexing length ${plain(length)} mm, so strain and effort are rougher than they look; make it ${plain(SLENDER * thickness)} mm long or thinner (common practice, no source)`,
      field: 'sizes.length',
      value: length,
      limit: SLENDER * thickness,
    },
  ];
}

/**
 * A refusal where what should bend is thicker than long: a block, which shears and dents rather than bends.
 *
 * @param thickness - thickness of the thin section t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param field - the size that makes it longer [-]
 * @param value - that size [mm], > 0
 * @returns `thicker-than-long` when t > L [-], or nothing
 */
export function refuseBlock(thickness: Mm, length: Mm, field = 'sizes.length', value: Mm = length): readonly Problem[] {
  if (thickness <= length * (1 + ROUND_OFF)) return [];
  // Whatever the size adds to the length at least as fast as it grows itself.
  const limit = value + thickness - length;
  return [
    {
      code: 'thicker-than-long',
      message: `A thin section ${plain(thickness)} mm thick and ${plain(length)} mm long is a block that does not bend; make it at least ${plain(thickness)} mm long, or thinner`,
      field,
      value,
      limit,
    },
  ];
}

/**
 * A refusal where the pad is too thin to carry the root fillets, or no thicker than what is meant to bend.
 *
 * @param pad - thickness of the pad [mm], > 0
 * @param thickness - thickness of the thin section [mm], > 0
 * @param fillet - root fillet [mm], ≥ 0
 * @param sides - on how many sides the pad stands out beyond the thin section [-], 1 or 2
 * @returns `pad-thinner-than-leaf` [-], or nothing
 */
export function refuseThinPad(pad: Mm, thickness: Mm, fillet: Mm, sides: 1 | 2): readonly Problem[] {
  const refuse = (limit: Mm, why: string): readonly Problem[] => [
    {
      code: 'pad-thinner-than-leaf',
      message: `A pad of ${plain(pad)} mm ${why}`,
      field: 'sizes.pad',
      value: pad,
      limit,
    },
  ];
  const least = thickness + sides * fillet;
  if (pad <= thickness * (1 + ROUND_OFF)) {
    // Bending stiffness goes by the cube: a pad twice as thick is eight times stiffer, and the root a root.
    const stiff = Math.max(least, 2 * thickness);
    return refuse(
      stiff,
      `is no thicker than the ${plain(thickness)} mm meant to bend, so it bends too; make it at least ${plain(stiff)} mm thick`,
    );
  }
  if (pad >= least * (1 - ROUND_OFF)) return [];
  const most = plain((pad - thickness) / sides);
  return refuse(
    least,
    `has no room for the fillets of ${plain(fillet)} mm on ${plain(thickness)} mm; make it at least ${plain(least)} mm thick, or the fillet at most ${most} mm`,
  );
}

/**
 * A caution about a root without a fillet.
 *
 * @param fillet - root fillet [mm], ≥ 0
 * @returns `sharp-root` when it is 0 [-], or nothing
 *
 * Source: common-practice.
 */
export function noteSharpRoot(fillet: Mm): readonly Problem[] {
  if (fillet > 0) return [];
  return [
    {
      code: 'sharp-root',
      message:
        'The root has no fillet, and sharp inner corners break first; give it a fillet of at least one line width',
      field: 'sizes.fillet',
      value: fillet,
      limit: 0,
    },
  ];
}
