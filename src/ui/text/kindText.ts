/** Words of each kind of flexure, and how a joint lies, in words. As with families, only those of the first screen's are here at once. */
import type { Lying } from '../../core/print/profile.ts';
import type { KindText } from './kinds/kind.ts';
import { STRAIGHT_LEAF } from './kinds/straightLeaf.ts';

const known = new Map<string, KindText>();

/** Takes words in by the id of their family; `everyKindText.ts` takes in all. */
export function takeKindText(words: Readonly<Record<string, KindText>>): void {
  for (const [family, text] of Object.entries(words)) known.set(family, text);
}

takeKindText({ straightLeaf: STRAIGHT_LEAF });

/** Whether the words of a kind have been taken in. */
export function hasKindText(family: string): boolean {
  return known.has(family);
}

/** Words of a kind; every family of the core has some, and a test holds them together. */
export function kindText(family: string): KindText {
  const text = known.get(family);
  if (!text) throw new RangeError(`no words for the family ${family}`);
  return text;
}

const LYING_TEXT: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };

/** How a joint of a kind lies, as it stands after “printed”. */
export function lyingText(family: string, lying: Lying): string {
  return kindText(family).lying?.[lying] ?? LYING_TEXT[lying];
}
