import type { Demo, Values } from '../../../core/lesson/demos/demo.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import type { DemoWords } from '../../text/lessonDemoWords.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { choiceSpec, valueSpec } from './handleSpecs.ts';

interface Props {
  readonly demo: Demo;
  readonly words: DemoWords;
  readonly values: Values;
  readonly unit: LengthUnit;
  readonly onMove: (key: string, value: number) => void;
}

const FIELD = /\{(\w+)\}([.,:;]?)/;

/** How a demonstration is set up, with its handles live in the sentence. */
export function DemoSentence({ demo, words, values, unit, onMove }: Props) {
  const pieces = words.sentence.split(FIELD);
  const field = (key: string) => {
    const handle = demo.handles.find((one) => one.key === key);
    if (!handle) throw new RangeError(`the sentence of ${demo.id} names no handle ${key}`);
    const of = {
      handle,
      label: words.handles[key] ?? key,
      value: values[key] ?? handle.start,
      unit,
      onMove: (value: number) => onMove(key, value),
    };
    return handle.kind === 'choice' ? <ChoiceField spec={choiceSpec(of)} /> : <ValueField spec={valueSpec(of)} />;
  };
  return (
    <Sentence className="demo-sentence">
      {pieces.map((piece, i) => {
        if (i % 3 === 0) return piece;
        if (i % 3 === 2) return null;
        return (
          <span className="nw" key={piece}>
            {field(piece)}
            {pieces[i + 1]}
          </span>
        );
      })}
    </Sentence>
  );
}
