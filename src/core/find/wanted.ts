import type { Movement, Surroundings } from '../design/joint.ts';
import type { Drive } from '../flexures/family.ts';
import type { Room } from '../flexures/sought.ts';
import type { Lying, PrintProfile } from '../print/profile.ts';
import type { Mm } from '../units.ts';

/** What is looked for: a movement, the room there is, how hard it may push, and what it may be made of. */
export interface Wanted {
  /** As of a joint. A kind that has not its drive is moved by its first of the same measure; without `stays` either will do. */
  readonly movement: Movement;
  readonly measure: Drive['measure'];
  /** [N·mm] or [N] as the drive measures; the most is in the movement. */
  readonly effortAtLeast?: number;
  /** What may stay bent after one movement, [rad] or [mm]; absent where that does not matter by itself. */
  readonly setAtMost?: number;
  /** Room there is at most, for what bends with its fillets. */
  readonly room: Room;
  /** Shallower ones are not tried. */
  readonly depthAtLeast: Mm;
  /** Whether what is laid over air may be held up by supports. */
  readonly supports: boolean;
  /** Keys of the kinds, of the filaments and of the ways to lie that are ticked. */
  readonly families: readonly string[];
  readonly filaments: readonly string[];
  readonly lyings: readonly Lying[];
  /** Its filament and lying are replaced by those tried. */
  readonly profile: PrintProfile;
  readonly surroundings?: Surroundings;
}
