import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { TEST_LIMITS } from '../../../store/tests.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { COUNTER } from '../../text/testsText.ts';
import { numberSpec } from '../specs.ts';
import type { Trial } from '../trial.ts';
import { Fives } from './Fives.tsx';
import { useCounter, type Counter as Counting } from './useCounter.ts';

interface Props {
  readonly trial: Trial;
  /** Number of the strip that is counted. */
  readonly strip: number;
  readonly unit: LengthUnit;
}

/** So many bends apart they are said to those who do not see them. */
const SPOKEN = 10;

function Stands({ counter, strip, unit }: Pick<Props, 'strip' | 'unit'> & { readonly counter: Counting }) {
  const spec = numberSpec({
    key: 'stands',
    label: COUNTER.stands,
    kind: 'count',
    value: counter.cycles,
    ...TEST_LIMITS.cycles,
    step: 1,
    unit,
    take: (cycles) => {
      if (cycles < counter.floor) return COUNTER.fell(strip, counter.floor, cycles);
      counter.stand(cycles);
      return undefined;
    },
  });
  return (
    <Sentence className="in-cell">
      {COUNTER.standsAt}
      <ValueField spec={spec} />
      {COUNTER.bends}
    </Sentence>
  );
}

function Buttons({ press }: Pick<Counting, 'press'>) {
  return (
    <div className="counter-keys">
      <button type="button" className="b" onClick={() => press('bent')}>
        {COUNTER.bent} <kbd>Space</kbd>
      </button>
      <button type="button" className="b" onClick={() => press('broke')}>
        {COUNTER.broke} <kbd>B</kbd>
      </button>
      <button type="button" className="b" onClick={() => press('stop')}>
        {COUNTER.stop} <kbd>S</kbd>
      </button>
      <button type="button" className="b quiet" onClick={() => press('back')}>
        {COUNTER.back}
      </button>
    </div>
  );
}

/** Where bends are counted while a strip is bent: by one key, or by one large button. */
export function Counter({ trial, strip, unit }: Props) {
  const [box, counter] = useCounter(trial, strip, unit);
  const { cycles } = counter;
  const hundreds = cycles - (cycles % 100);
  const told = cycles - (cycles % SPOKEN);
  return (
    // Keys of its own, as a keyboard has: the box is reached by Tab and says what they do.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <fieldset ref={box} className="counter" tabIndex={0} aria-label={COUNTER.name(strip)}>
      <div className="counter-told">
        <p>
          <span>{COUNTER.this(strip)}</span>
          <b>{cycles % 100}</b>
        </p>
        <div>
          <Fives count={cycles % 100} />
          <span>{COUNTER.after(hundreds)}</span>
        </div>
        <output className="vh">{told > 0 ? COUNTER.told(strip, told) : ''}</output>
      </div>
      <Buttons press={counter.press} />
      <Stands counter={counter} strip={strip} unit={unit} />
      <p className="small">{COUNTER.keys}</p>
    </fieldset>
  );
}
