import type { LengthUnit } from '../../text/numbers.ts';
import { capital, figure } from '../../text/said.ts';
import {
  figureSpoken,
  LACKS,
  LADDER,
  laidMeans,
  laidText,
  LEARNED,
  movedBy,
  readingsText,
} from '../../text/testsLearnedText.ts';
import { Told } from '../Told.tsx';
import type { Trial } from '../trial.ts';
import { Unbroken } from '../Unbroken.tsx';
import { BeforeAfterBar } from './BeforeAfterBar.tsx';
import { lacksOfMarks, taughtFigures, taughtThickness, type Known, type TaughtFigure } from './figures.ts';
import { LadderPlot } from './LadderPlot.tsx';
import './learned.css';

interface Props {
  readonly trial: Trial;
  readonly unit: LengthUnit;
}

/** Strain that may be stood is no stiffness: each figure has its own word for more. */
const WORDS = {
  [LEARNED.modulus]: ['stiffer', 'softer'],
  [LEARNED.modulusAcrossLayers]: ['stiffer', 'softer'],
} as Readonly<Record<string, readonly [string, string]>>;

const range = ({ words }: Known) => (words.range === '' ? '' : ` (${words.range})`);

function Figure({ of: { name, before, after, by, odd, isInForce } }: { readonly of: TaughtFigure }) {
  const [more, less] = WORDS[name] ?? ['more', 'less'];
  const readings = readingsText(by, odd);
  return (
    <li>
      <h4>{name}</h4>
      <BeforeAfterBar {...{ before, after }} label={figureSpoken(name, before.words, after.words, readings)} />
      <p>
        <Told said={[figure(after.words.text, after.words.kind)]} />
        <Unbroken text={`${range(after)}, was `} />
        <Told said={[figure(before.words.text, before.words.kind)]} />
        <Unbroken text={`${range(before)}: ${movedBy(before.typical, after.typical, more, less)}, ${readings}.`} />
        {!isInForce && ` ${LEARNED.byHand}`}
      </p>
    </li>
  );
}

function Thickness({ trial, unit }: Props) {
  const { count } = trial.values;
  return taughtThickness(trial).map((told) => {
    const { countOf, line, rungs, odd } = told;
    // As set for the number in the sentence, by the settings of the rungs; else the rung that is nearest to it.
    const rung = rungs.toSorted((a, b) => Math.abs(a.count - count) - Math.abs(b.count - count))[0];
    if (!rung) return null;
    const laid = line.offset + line.factor * rung.set;
    return (
      <li key={countOf}>
        <LadderPlot {...{ told, unit }} />
        <p>
          {laidText(rung, rung.set, laid, 1.645 * line.sigma, unit)} {laidMeans(rung.set, laid)}{' '}
          {capital(readingsText(rungs.length, odd.length))}.
          {new Set(rungs.map(({ set }) => set)).size < 2 && ` ${LACKS.few(countOf)}`}
        </p>
      </li>
    );
  });
}

/** What the readings of the kind in hand have taught, each figure before and after; nothing where none did. */
export function LearnedFigures({ trial, unit }: Props) {
  const figures = taughtFigures(trial);
  const isLadder = taughtThickness(trial).length > 0;
  const lacks = lacksOfMarks(trial);
  if (figures.length === 0 && !isLadder && !lacks) return null;
  return (
    <section className="learned-figures" aria-label={LEARNED.heading}>
      <h3 className="h">
        {LEARNED.heading}
        <span className="aside">{isLadder ? LADDER.aid : LEARNED.aside}</span>
      </h3>
      <ul>
        <Thickness {...{ trial, unit }} />
        {figures.map((one) => (
          <Figure key={one.name} of={one} />
        ))}
      </ul>
      {lacks && <p className="small">{LACKS[lacks]}</p>}
    </section>
  );
}
