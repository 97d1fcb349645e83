import type { Mm } from '../../../core/units.ts';
import type { Scene, SceneMember } from './scene.ts';
import { refined, type FineShape } from './strainField.ts';

/** Members one behind the other, laid as one: where no pad parts them, a line runs on. */
export interface Run extends Pick<SceneMember, 'id' | 'plane' | 'roots'> {
  readonly shape: FineShape;
}

/** Members that differ by less in thickness where they meet are one run [mm]. */
const SAME: Mm = 1e-6;

/** The seen members of a scene as printed, joined end to start where they meet on no pad and are equally thick. */
export function runsOf(scene: Scene, step: Mm): readonly Run[] {
  const { members } = scene.solved.network.model;
  const runs: (Run & { readonly to: string })[] = [];
  for (const [i, member] of scene.members.entries()) {
    const [model, sampled] = [members[i], scene.rest.shapes[i]];
    if (!model || !sampled || !member.isSeen) continue;
    const shape = refined(sampled, step);
    const before = runs.findIndex(({ to, roots, plane }) => to === model.from && !roots[1] && plane === member.plane);
    const run = runs[before];
    if (run && Math.abs(run.shape.thickness.at(-1)! - shape.thickness[0]!) < SAME) {
      runs[before] = { ...run, to: model.to, roots: [run.roots[0], member.roots[1]], shape: joined(run.shape, shape) };
    } else {
      runs.push({ id: member.id, plane: member.plane, roots: member.roots, to: model.to, shape });
    }
  }
  return runs;
}

const KEYS = ['along', 'x', 'y', 'angle', 'thickness', 'left', 'right'] as const;

function joined(a: FineShape, b: FineShape): FineShape {
  return Object.fromEntries(KEYS.map((key) => [key, [...a[key], ...b[key].slice(1)]])) as unknown as FineShape;
}

/** The same member carried straight on into its pads by so much at the ends that are roots. */
export function carriedOn(shape: FineShape, [near, far]: SceneMember['roots'], by: Mm): FineShape {
  const beyond = (end: number, way: 1 | -1): FineShape => {
    const one = (key: (typeof KEYS)[number]) => shape[key][end]!;
    const angle = one('angle');
    const place = { x: one('x') + way * by * Math.cos(angle), y: one('y') + way * by * Math.sin(angle) };
    return Object.fromEntries(
      KEYS.map((key) => [key, [key === 'x' || key === 'y' ? place[key] : one(key)]]),
    ) as unknown as FineShape;
  };
  const parts = [...(near ? [beyond(0, -1)] : []), shape, ...(far ? [beyond(shape.x.length - 1, 1)] : [])];
  return Object.fromEntries(KEYS.map((key) => [key, parts.flatMap((part) => part[key])])) as unknown as FineShape;
}
