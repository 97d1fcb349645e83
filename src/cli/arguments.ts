import { parseArgs } from 'node:util';
import { LEAST_SAMPLES } from '../core/numeric/sampling.ts';
import type { PrintsAsked } from './doubtReport.ts';
import type { NetworkAsked } from './networkReport.ts';

export const USAGE = `Assesses every joint of exported parts, or solves one network, and prints one JSON document.

  npm run -s assess -- part.json [more.json ...] [--path N] [--prints N] [--seed n]
  npm run -s assess -- --network network.json [--path N] [--refined] [--elements n] [--pad id]

  -              in place of a file: reads standard input
  --path N       tells the whole way in N equal parts, 1 to 1000 (a network: 40 when left out)
  --prints N     says how sure each answer is, from N imagined prints: a power of 2, 64 to 65536
  --seed n       draws other prints, 1 to 999999; the same ones for the same number, 1 when left out
  --network file solves a network in the solver's own terms
  --refined      aims at 1e-9 instead of 1e-6 in efforts and places
  --elements n   elements along every member, a multiple of 4 up to 512, instead of as many as are needed
  --pad id       the pad or free node whose six stiffnesses are told; all that move when left out

Exit code: 0 everything was answered, 1 there are problems (they are in the document), 2 wrong use.
`;

const MOST_PARTS = 1000;
const MOST_PRINTS = 65_536;
const MOST_SEED = 999_999;
const MOST_ELEMENTS = 512;
const PARTS = 40;

export type Asked =
  | {
      readonly kind: 'parts';
      readonly files: readonly string[];
      readonly path: number | undefined;
      readonly prints: PrintsAsked | undefined;
    }
  | { readonly kind: 'network'; readonly file: string; readonly asked: NetworkAsked };

const OPTIONS = {
  path: { type: 'string', multiple: true },
  prints: { type: 'string', multiple: true },
  seed: { type: 'string', multiple: true },
  network: { type: 'string', multiple: true },
  refined: { type: 'boolean' },
  elements: { type: 'string', multiple: true },
  pad: { type: 'string', multiple: true },
} as const;

/** Thrown where the call cannot be understood. */
class WrongUse extends Error {}

function once(given: readonly string[] | undefined): string | undefined {
  if (given !== undefined && given.length > 1) throw new WrongUse();
  return given?.[0];
}

/** A whole number from 1 as digits only: neither 1e2 nor 0x10, which someone may not mean. */
function whole(given: string | undefined, most: number): number | undefined {
  if (given === undefined) return undefined;
  const value = /^[1-9]\d{0,5}$/.test(given) ? Number(given) : Number.NaN;
  if (!(value <= most)) throw new WrongUse();
  return value;
}

/** A power of 2, which even samples need, and their seed. */
function printsAsked(given: string | undefined, seedGiven: string | undefined): PrintsAsked | undefined {
  const samples = whole(given, MOST_PRINTS);
  const seed = whole(seedGiven, MOST_SEED);
  if (samples === undefined && seed !== undefined) throw new WrongUse();
  if (samples === undefined) return undefined;
  if (samples < LEAST_SAMPLES || !Number.isInteger(Math.log2(samples))) throw new WrongUse();
  return { samples, seed: seed ?? 1 };
}

function understood(given: readonly string[]): Asked {
  const { values, positionals: files } = parseArgs({ args: [...given], options: OPTIONS, allowPositionals: true });
  const path = whole(once(values.path), MOST_PARTS);
  const elements = whole(once(values.elements), MOST_ELEMENTS);
  const prints = printsAsked(once(values.prints), once(values.seed));
  const [file, pad, refined] = [once(values.network), once(values.pad), values.refined === true];
  if (file === undefined) {
    const isOfNetworks = refined || elements !== undefined || pad !== undefined;
    if (isOfNetworks || files.length === 0 || files.includes('')) throw new WrongUse();
    return { kind: 'parts', files, path, prints };
  }
  if (file === '' || files.length > 0 || prints !== undefined || (elements !== undefined && elements % 4 !== 0))
    throw new WrongUse();
  const accuracy = refined ? 'refined' : 'interactive';
  return {
    kind: 'network',
    file,
    asked: { parts: path ?? PARTS, accuracy, pad, ...(elements === undefined ? {} : { elements }) },
  };
}

/**
 * What a call asks for, or undefined where it cannot be understood.
 *
 * @param given - arguments as typed
 */
export function readArguments(given: readonly string[]): Asked | undefined {
  try {
    return understood(given);
  } catch (error) {
    // Unknown options and options without their value come from the reader of arguments as TypeErrors.
    if (error instanceof WrongUse || error instanceof TypeError) return undefined;
    throw error;
  }
}
