import { SAMPLINGS } from '../../../core/numeric/sampling.ts';
import { SAMPLE_COUNTS, useSpread } from '../../../store/spread.ts';
import { QuietButton } from '../../app/QuietButton.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { drawText, HOW_SAMPLED, SAMPLED, samplesText } from '../../text/sureText.ts';

interface Props {
  readonly seed: number;
  readonly replicates: number | undefined;
  readonly onDraw: (seed: number) => void;
}

/** How many prints are imagined, how they are drawn, and which draw it is: another shows what sampling alone changes. */
export function HowSampled({ seed, replicates, onDraw }: Props) {
  const { samples, how, choose } = useSpread();
  return (
    <Sentence className="use quiet">
      <ChoiceField
        spec={{
          key: 'samples',
          label: SAMPLED.samples,
          value: String(samples),
          options: SAMPLE_COUNTS.map((count) => ({ value: String(count), text: samplesText(count) })),
          take: (value) => {
            choose({ samples: Number(value) });
            return undefined;
          },
        }}
      />{' '}
      <ChoiceField
        spec={{
          key: 'how',
          label: SAMPLED.how,
          value: how,
          options: SAMPLINGS.map((one) => ({ value: one, text: HOW_SAMPLED[one] })),
          take: (value) => {
            choose({ how: SAMPLINGS.find((one) => one === value) ?? how });
            return undefined;
          },
        }}
      />
      {drawText(seed, { replicates: replicates ?? 1 })}
      <QuietButton onClick={() => onDraw(seed + 1)}>{SAMPLED.again}</QuietButton>
    </Sentence>
  );
}
