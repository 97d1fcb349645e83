import { allowableNamed } from '../../design/allowables.ts';
import type { Assessment } from '../../design/assessment.ts';

/** What a strain means to a filament, from kept for good to broken. */
export type Standing = 'again and again' | 'once in a while' | 'hardly' | 'stays bent' | 'breaks';

/**
 * What the strain of a joint means to its filament: the first limit that it keeps.
 *
 * @param a - limits and strain of the joint as assessed [-]
 * @returns `hardly` between what it stands once in a while and where it stays bent
 */
export function standingOf({ allowables }: Pick<Assessment, 'allowables'>): Standing {
  const isKept = (name: 'repeated' | 'single' | 'yield' | 'break') => {
    const { strain, limit } = allowableNamed(allowables, name);
    return strain <= limit;
  };
  if (isKept('repeated')) return 'again and again';
  if (isKept('single')) return 'once in a while';
  if (isKept('yield')) return 'hardly';
  return isKept('break') ? 'stays bent' : 'breaks';
}
