/** Works out how sure a joint is: apart from the other jobs, since a drawing and a verdict do not wait for it. */
import { doubtOf } from '../core/design/doubt.ts';
import { rememberSolved } from '../core/design/rememberSolved.ts';
import type { Alive, Input, Output } from './protocol.ts';

/** Some twenty coarse ways of each joint: they stay for another draw and another filament. */
const solve = rememberSolved(undefined, 200);

export function doubtJob({ joint, asked }: Input<'doubt'>, alive: Alive): Output<'doubt'> {
  let done = 0;
  const tell = (share: number) => {
    // What turns out too rough is begun again more finely.
    done = Math.max(done, share);
    alive(done);
  };
  const cancelled = () => {
    alive(done);
    return false;
  };
  return doubtOf(joint, asked, { solve, tell, cancelled });
}
