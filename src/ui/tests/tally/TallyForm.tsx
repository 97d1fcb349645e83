import { useState } from 'react';
import { bendingModulus } from '../../../core/material/choose.ts';
import type { FlexTally, MarkTally, Tally } from '../../../core/material/tally.ts';
import { thicknessOfLayers } from '../../../core/print/wholeLayers.ts';
import { thicknessOfLines } from '../../../core/print/wholeLines.ts';
import { radians, type MPa, type Rad } from '../../../core/units.ts';
import { lyingOf } from '../../../store/tests.ts';
import { ChoiceField, type ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { ValueField } from '../../controls/ValueField.tsx';
import { WordsField } from '../../filaments/own/WordsField.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { FORM, oneOf, PULL, SAID_OF, TALLY, tallyText } from '../../text/testsTallyText.ts';
import { expectedStrength } from '../pull/expected.ts';
import { ForceTable } from '../pull/ForceTable.tsx';
import { Stretch } from '../pull/Stretch.tsx';
import { newTallyId, putTally, today } from '../spools.ts';
import type { Trial } from '../trial.ts';
import { GRAVITY } from '../weight.ts';
import { mainField } from './mainField.ts';

interface Props {
  readonly trial: Trial;
  /** Number of what is put in. */
  readonly number: number;
  readonly unit: LengthUnit;
}

/** What is in the form and nowhere else. */
interface Draft {
  readonly cycles: number;
  readonly ended: FlexTally['ended'];
  readonly looks: MarkTally['looks'];
  /** Until something is read off, what would be expected stands there. */
  readonly measured?: number;
  readonly sag?: number;
  readonly left: Rad;
  readonly strength?: MPa;
  /** Only where its stretch was measured. */
  readonly modulus?: MPa | undefined;
  readonly seen: string;
}

const FIRST: Draft = {
  cycles: 1000,
  ended: 'broke',
  looks: 'whitened',
  left: radians(10),
  seen: '',
};

const HALF_MM = 2;

/** As far as such a bar should hang, by what is known of the filament. */
function expectedSag({ values, thickness, row }: Trial): number {
  const { grams, arm, depth } = values;
  const stiffness = bendingModulus(row, values.lying === 'upright').typical;
  const sag = (4 * grams * GRAVITY * arm ** 3) / (stiffness * depth * thickness ** 3);
  return Math.max(1, Math.round(Math.min(sag, 0.4 * arm) * HALF_MM)) / HALF_MM;
}

/** A bar of the trial that is pulled. */
function pulled({ values, row }: Trial, { strength, modulus }: Draft) {
  const { direction } = values;
  const broke = strength ?? expectedStrength(row, direction);
  return { kind: 'pull', direction, strength: broke, ...(modulus !== undefined && { modulus }) } as const;
}

/** As it would be written down. */
function tallyOf(trial: Trial, draft: Draft): Tally {
  const { values, thickness, bend, spool, profile, countOf } = trial;
  const { seen } = draft;
  const common = { id: newTallyId(spool), date: today(), seen };
  const { radius, count, depth } = values;
  const lying = lyingOf(values);
  switch (values.doing) {
    case 'flexes':
      return {
        ...common,
        kind: 'flexes',
        bend,
        thickness,
        lying,
        ways: values.ways,
        cycles: draft.cycles,
        ended: draft.ended,
      };
    case 'mark':
      return { ...common, kind: 'mark', radius, thickness, lying, looks: draft.looks };
    case 'thickness': {
      const set = countOf === 'layers' ? thicknessOfLayers(count, profile) : thicknessOfLines(count, profile);
      return { ...common, kind: 'thickness', countOf, count, set, measured: draft.measured ?? set };
    }
    case 'sag':
      return {
        ...common,
        kind: 'sag',
        lying,
        force: values.grams * GRAVITY,
        sag: draft.sag ?? expectedSag(trial),
        length: values.arm,
        thickness,
        depth,
      };
    case 'hold':
      return { ...common, kind: 'hold', radius, thickness, hours: values.hours, held: values.held, left: draft.left };
    case 'pull':
      return { ...common, ...pulled(trial, draft) };
  }
}

/** What the figure that was read off puts into the draft. */
function intoDraft(tally: Tally): Partial<Draft> {
  switch (tally.kind) {
    case 'flexes':
      return { cycles: tally.cycles };
    case 'mark':
      return { looks: tally.looks };
    case 'thickness':
      return { measured: tally.measured };
    case 'sag':
      return { sag: tally.sag };
    case 'hold':
      return { left: tally.left };
    case 'pull':
      return { strength: tally.strength };
  }
}

function endedSpec({ ended }: Draft, change: (more: Partial<Draft>) => void): ChoiceSpec {
  return {
    key: 'ended',
    label: TALLY.happened,
    value: ended,
    options: [
      { value: 'broke', text: TALLY.broke },
      { value: 'whole', text: TALLY.whole },
    ],
    take: (value) => {
      change({ ended: value as FlexTally['ended'] });
      return undefined;
    },
  };
}

function ReadOff({ trial, number, unit }: Props) {
  const [draft, setDraft] = useState<Draft>(FIRST);
  const { place, message } = useRefusals();
  const change = (more: Partial<Draft>) => setDraft((now) => ({ ...now, ...more }));
  const tally = tallyOf(trial, draft);
  const main = mainField(tally, {
    name: '',
    unit,
    put: (next) => {
      change(intoDraft(next));
      return undefined;
    },
  });
  const put = () => {
    const name = oneOf(tally.kind, number);
    const why = putTally(trial, tally, SAID_OF.put(name, tallyText(tally, unit)), unit);
    if (why === undefined) {
      place.settle('put');
      change({ seen: '' });
    } else place.refuse('put', why);
  };
  const [before, behind] = FORM[trial.values.doing];
  return (
    <SentenceContext value={place}>
      <div className="tally-form">
        <p className="says">
          {before} {'options' in main ? <ChoiceField spec={main} /> : <ValueField spec={main} />}
          {behind} {tally.kind === 'flexes' && <ChoiceField spec={endedSpec(draft, change)} />}
          {tally.kind === 'pull' && (
            <Stretch {...{ tally, unit }} row={trial.row} onChange={(modulus) => change({ modulus })} />
          )}
          ;{' '}
          <WordsField
            label={FORM.seen}
            words={draft.seen}
            asks={TALLY.seenAsks}
            onChange={(seen) => change({ seen })}
          />
        </p>
        <button type="button" className="b" onClick={put}>
          {TALLY.put}
        </button>
        <Refusal id={place.refusalId} message={message} />
      </div>
    </SentenceContext>
  );
}

/** The line in which what was read off is put in; of a bar that a machine has pulled also the way to its table. */
export function TallyForm(props: Props) {
  if (props.trial.values.doing !== 'pull') return <ReadOff {...props} />;
  return (
    <div className="pull-form">
      <p className="small">{PULL.note}</p>
      <ReadOff {...props} />
      <ForceTable trial={props.trial} unit={props.unit} />
    </div>
  );
}
