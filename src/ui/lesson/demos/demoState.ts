/** What is shown of a demonstration, and how it stands in an address. */
import type { Values } from '../../../core/lesson/demos/demo.ts';
import { DEMOS } from '../../../core/lesson/demos/demos.ts';
import { readValue, written } from '../../../core/lesson/demos/handles.ts';
import { DEMO_IDS, isDemoId, type DemoId } from '../../../core/lesson/demos/ids.ts';
import { lessonAddress, type LessonAddress } from '../route.ts';

/** Ask, Bend, Work it out, Count. */
export const STEPS = [1, 2, 3, 4] as const;
export type Step = (typeof STEPS)[number];

export interface Shown {
  readonly id: DemoId;
  readonly values: Values;
  readonly step: Step;
  /** Numbers taken back, whatever the step. */
  readonly hidden: boolean;
}

/** Up to this step there are no numbers. */
const WITHOUT_NUMBERS = 2;

/** The step as far as it shows: numbers that are hidden again leave no more than the bend. */
export function levelOf({ step, hidden }: Pick<Shown, 'step' | 'hidden'>): Step {
  return hidden && step > WITHOUT_NUMBERS ? WITHOUT_NUMBERS : step;
}

/** What an address names; where it names nothing that there is, the first demonstration as at first. Never throws. */
export function shownIn({ of, values: asked }: Pick<LessonAddress, 'of' | 'values'>): Shown {
  const id = isDemoId(of) ? of : DEMO_IDS[0];
  const values = Object.fromEntries(
    DEMOS[id].handles.map((handle) => [handle.key, readValue(handle, asked.get(handle.key))]),
  );
  const step = STEPS.find((one) => String(one) === asked.get('step')) ?? STEPS[0];
  return { id, values, step, hidden: asked.get('hidden') === '1' };
}

/** The address of a demonstration exactly as it is shown. */
export function addressOf({ id, values, step, hidden }: Shown): string {
  const handles = DEMOS[id].handles.map((handle) => [handle.key, written(handle, values[handle.key] ?? handle.start)]);
  return lessonAddress('demo', id, {
    ...Object.fromEntries(handles),
    step: String(step),
    ...(hidden ? { hidden: '1' } : {}),
  });
}

/** The demonstration so many places on, or nothing past either end. */
export function beside(id: DemoId, by: 1 | -1): DemoId | undefined {
  return DEMO_IDS[DEMO_IDS.indexOf(id) + by];
}
