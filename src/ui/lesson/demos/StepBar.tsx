import { DEMO, STEP_NAMES } from '../../text/lessonDemoText.ts';
import { STEPS, type Step } from './demoState.ts';

/** Ask, Bend, Work it out, Count. */
export function StepBar({ step, onStep }: { readonly step: Step; readonly onStep: (step: Step) => void }) {
  return (
    <ol className="demo-steps" aria-label={DEMO.steps}>
      {STEPS.map((one) => (
        <li key={one}>
          <button
            type="button"
            aria-current={one === step ? 'step' : undefined}
            aria-keyshortcuts={String(one)}
            onClick={() => onStep(one)}
          >
            {STEP_NAMES[one]}
          </button>
        </li>
      ))}
    </ol>
  );
}
