import type { Demo, Values } from '../../../core/lesson/demos/demo.ts';
import { allowed } from '../../../core/lesson/demos/handles.ts';
import { DEMO } from '../../text/lessonDemoText.ts';
import type { DemoWords } from '../../text/lessonDemoWords.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { valueText } from './handleSpecs.ts';

interface Props {
  readonly demo: Demo;
  readonly words: DemoWords;
  readonly values: Values;
  readonly unit: LengthUnit;
  readonly onMove: (key: string, value: number) => void;
}

/** The handles of a demonstration to be dragged or stepped. */
export function Sliders({ demo, words, values, unit, onMove }: Props) {
  return (
    <fieldset className="demo-sliders">
      <legend className="vh">{DEMO.handles}</legend>
      {demo.handles.map((handle) => {
        const value = values[handle.key] ?? handle.start;
        const text = valueText(handle, value, unit);
        return (
          <label key={handle.key}>
            <span className="demo-slider-name">{words.handles[handle.key]}</span>
            <span className="demo-slider-value" aria-hidden="true">
              {text}
            </span>
            <input
              type="range"
              min={handle.min}
              max={handle.max}
              step={handle.step}
              value={value}
              aria-label={words.handles[handle.key]}
              aria-valuetext={text}
              onChange={(event) => onMove(handle.key, allowed(handle, Number(event.currentTarget.value)))}
            />
          </label>
        );
      })}
    </fieldset>
  );
}
