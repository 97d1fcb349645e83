import type { ReactNode } from 'react';
import type { Doing } from '../../store/tests.ts';
import { useTests } from '../../store/tests.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { WordsField } from '../filaments/own/WordsField.tsx';
import { Live } from '../life/Live.tsx';
import { percent, setLength, unitAfter, type LengthUnit } from '../text/numbers.ts';
import { ASKS, LABELS, TESTS, TESTS_SAID } from '../text/testsText.ts';
import { choiceSpec, filamentSpec, jointSpec, plateSpec, sizedSpec, stripSpec, type Sized } from './specs.ts';
import type { Made } from './pieces.ts';
import { describe } from './spools.ts';
import type { Trial } from './trial.ts';

interface Props {
  readonly trial: Trial;
  readonly made: Made;
  readonly unit: LengthUnit;
}

type Field = (name: Sized, stop?: string) => ReactNode;

function Thick({
  trial,
  unit,
  field,
  stop = ',',
}: Omit<Props, 'made'> & { readonly field: Field; readonly stop?: string }) {
  const thickness = `${setLength(trial.thickness, unit)}${unitAfter(unit)}`;
  return (
    <>
      {field('count')}{' '}
      <span className="nw">
        ({thickness}) thick{stop}
      </span>
    </>
  );
}

function Over({ trial, made, field }: Omit<Props, 'unit'> & { readonly field: Field }) {
  const way = <Live spec={choiceSpec('way', trial, made.pieces)} />;
  const { chosen } = made;
  const piece = chosen && (chosen.id === 'comb' || chosen.id === 'creases') ? chosen : undefined;
  if (trial.values.way === 'over')
    return (
      <>
        {way} <span className="nw">R {field('radius', ',')}</span>
      </>
    );
  return (
    <>
      {way} {field('turn')} over {field('length', ',')} {piece && <Live spec={stripSpec(trial, piece)} stop="," />}
    </>
  );
}

/** What is done, between the verb and what it is for. */
function Middle(props: Props & { readonly field: Field }) {
  const { trial, field } = props;
  const filament = (stop = '') => <Live spec={filamentSpec(trial)} stop={stop} />;
  const says: Readonly<Record<Doing, ReactNode>> = {
    flexes: (
      <>
        {field('strips')} {trial.values.piece === 'creases' ? 'creases' : 'strips'} of {filament(',')}{' '}
        <Thick {...props} /> <Over {...props} /> <Live spec={choiceSpec('ways', trial)} stop="," />
      </>
    ),
    mark: (
      <>
        a strip of {filament(',')} <Thick {...props} /> over <span className="nw">R {field('radius', ',')}</span>
      </>
    ),
    thickness: (
      <>
        the rungs of a ladder of {filament(',')} the one of {field('count', ',')}
      </>
    ),
    sag: (
      <>
        {field('grams')} on a bar of {filament(',')} <Thick {...props} /> {field('depth')} deep, {field('arm')} from the
        clamp,
      </>
    ),
    hold: (
      <>
        a strip of {filament(',')} <Thick {...props} /> bent to {field('held')} over{' '}
        <span className="nw">R {field('radius')}</span> for {field('hours', ',')}
      </>
    ),
    pull: (
      <>
        a bar of {filament(',')} <Live spec={choiceSpec('direction', trial)} stop="," /> {field('barWidth')} wide and{' '}
        {field('barThickness')} thick,
      </>
    ),
  };
  return says[trial.values.doing];
}

/** What is tested, as a sentence with its values live in it. */
export function TrialSentence({ trial, made, unit }: Props) {
  const field: Field = (name, stop = '') => <Live spec={sizedSpec(name, trial, unit)} stop={stop} />;
  const bends = trial.values.doing === 'flexes' || trial.values.doing === 'mark' || trial.values.doing === 'hold';
  return (
    <section className="brief" aria-label={TESTS.says}>
      <Sentence className="check-says">
        <Live spec={choiceSpec('doing', trial, made.pieces)} /> <Middle {...{ trial, made, unit, field }} /> for the{' '}
        <Live spec={jointSpec(trial)} stop="." />
        {bends && (
          <span className="strains">
            {' '}
            Its skin strains <span className="num">{percent(trial.strain)}</span>.
          </span>
        )}
      </Sentence>
      <Where {...{ trial, unit }} />
    </section>
  );
}

/** Which spool and printer, how the pieces lie and on what plate. */
function Where({ trial, unit }: Omit<Props, 'made'>) {
  const { values, spool } = trial;
  const set = useTests((state) => state.set);
  const printer = spool?.own.tests.printer ?? values.printer;
  const name = spool?.own.tests.spool ?? values.spool;
  const say = (which: 'printer' | 'spool', now: string, was: string) => {
    set({ [which]: now });
    const said = which === 'printer' ? TESTS_SAID.place(now, was) : TESTS_SAID.spool(now, was);
    if (spool) describe(spool, { [which]: now }, said);
  };
  return (
    <Sentence className="where-tested">
      Of <WordsField label={LABELS.spool} words={name} asks={ASKS.spool} onChange={(now) => say('spool', now, name)} />{' '}
      on{' '}
      <WordsField
        label={LABELS.printer}
        words={printer}
        asks={ASKS.printer}
        onChange={(now) => say('printer', now, printer)}
      />
      ; {values.doing === 'pull' ? TESTS.ofPlate : 'strips'}{' '}
      {values.piece === 'creases' ? (
        'lying as a crease'
      ) : (
        <>
          lie <Live spec={choiceSpec('lying', trial)} />
        </>
      )}
      , plate {<Live spec={plateSpec('x', trial, unit)} />} × <Live spec={plateSpec('y', trial, unit)} stop="." />
    </Sentence>
  );
}
