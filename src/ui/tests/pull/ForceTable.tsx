import type { ReactNode } from 'react';
import { useChooser } from '../../app/useChooser.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { Live } from '../../life/Live.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { PULL } from '../../text/testsTallyText.ts';
import { knownSpec, sizedSpec } from '../specs.ts';
import { takeForces } from '../takeCsv.ts';
import type { Trial } from '../trial.ts';

interface Props {
  readonly trial: Trial;
  readonly unit: LengthUnit;
}

/** Words that a figure follows only where it is known. */
function Known({ trial, unit, of, stop }: Props & { readonly of: keyof typeof OF; readonly stop: string }): ReactNode {
  const isKnown = trial.values[of];
  return (
    <>
      <Live spec={knownSpec(of, trial)} stop={isKnown ? '' : stop} />
      {isKnown && (
        <>
          {' '}
          <Live spec={sizedSpec(OF[of], trial, unit)} stop={stop} />
        </>
      )}
    </>
  );
}

const OF = { knowsGauge: 'gaugeLength', knowsSpeed: 'speed' } as const;

/** The way to a bar by the table of its forces, and what the table does not say of it. */
export function ForceTable(props: Props) {
  const { place, message } = useRefusals();
  const { chooser, open } = useChooser({ label: PULL.chooser, accept: '.csv,.txt,.tsv,text/csv', take: takeForces });
  return (
    <SentenceContext value={place}>
      <div className="tally-form">
        <p className="says">
          {PULL.table[0]} <Known {...props} of="knowsGauge" stop={PULL.table[1]} />{' '}
          <Known {...props} of="knowsSpeed" stop="." />
        </p>
        <button type="button" className="b" onClick={open}>
          {PULL.read}
        </button>
        {chooser}
        <Refusal id={place.refusalId} message={message} />
      </div>
    </SentenceContext>
  );
}
