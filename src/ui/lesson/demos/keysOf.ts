/** What the keys of a demonstration do to what is shown. */
import { DEMOS } from '../../../core/lesson/demos/demos.ts';
import { lessonAddress } from '../route.ts';
import { beside, levelOf, STEPS, type Shown, type Step } from './demoState.ts';
import { moved, stepped } from './handleSpecs.ts';
import type { DemoKeys } from './useDemoKeys.ts';

interface Asked {
  readonly shown: Shown;
  readonly change: (change: Partial<Shown>) => void;
  readonly filled: boolean;
  readonly setFilled: (filled: boolean) => void;
}

/** Goes to the demonstration beside, where there is one. */
function turn({ id }: Shown, by: 1 | -1, step: Step): void {
  const other = beside(id, by);
  if (other !== undefined) location.hash = lessonAddress('demo', other, { step: String(step) });
}

export function keysOf({ shown, change, filled, setFilled }: Asked): DemoKeys {
  const { id, values, step, hidden } = shown;
  const toStep = (to: Step) => change({ step: to, hidden: false });
  const [handle] = DEMOS[id].handles;
  const [first, last] = [STEPS[0], STEPS[3]];
  return {
    onBeside: (by) => turn(shown, by, first),
    onPage: (by) => {
      const to = STEPS.find((one) => one === step + by);
      if (to !== undefined) toStep(to);
      else turn(shown, by, by > 0 ? first : last);
    },
    onStep: (to) => toStep(STEPS.find((one) => one === to) ?? step),
    onMove: (by) => {
      // Before anything is shown to be moved, nothing moves.
      if (levelOf(shown) === first) return;
      const next = stepped(handle, values[handle.key] ?? handle.start, by > 0);
      change({ values: moved(values, handle.key, next) });
    },
    onFill: () => setFilled(!filled),
    onHide: () => change({ hidden: !hidden }),
    onLeave: () => setFilled(false),
  };
}
