/** The demonstrations of the lesson, in the order in which they are shown; each is a plain word that an address may hold. */
export const DEMO_IDS = [
  'three-lengths',
  'one-line-more',
  'scaled-part',
  'one-or-many-bends',
  'fillet-or-corner',
  'filament-against-filament',
  'short-or-long',
  'side-by-side',
  'held-or-flexed',
  'arch-springs-back',
] as const;

export type DemoId = (typeof DEMO_IDS)[number];

/** Whether an address names a demonstration that there is. */
export function isDemoId(name: string): name is DemoId {
  return DEMO_IDS.some((id) => id === name);
}
