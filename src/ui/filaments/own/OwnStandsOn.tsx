import { soundness } from '../../../core/material/choose.ts';
import { withCurve, withCurveOf } from '../../../core/material/ownFilament.ts';
import type { OwnFilament, Provenance } from '../../../core/material/types.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { GIVEN_FIGURES, type GivenFigure, type StandsRow } from '../../text/filamentCurveText.ts';
import { EDITOR, OWN_SAID, provenanceOf, TOLD_ASKS, wordsOf } from '../../text/ownText.ts';
import { evidenceOf, type ReadAt } from '../anchors.ts';
import { Stands, StandsLine, StandsOn } from '../StandsOn.tsx';
import { AnchorFields } from './AnchorFields.tsx';
import { baseOf, isSame } from './base.ts';
import { GivenField } from './GivenField.tsx';
import './own.css';
import { put } from './put.ts';
import { afterChange, toldOf, toldSpec } from './told.ts';
import { WordsField } from './WordsField.tsx';

interface Props {
  readonly row: OwnFilament;
  readonly at: ReadAt;
  readonly onRead: (at: ReadAt) => void;
}

const isGiven = (key: string): key is GivenFigure => GIVEN_FIGURES.some((one) => one === key);

/** Where all of the curve comes from, and the user's words on it. */
function CurveOrigin({ row, isAsMade }: { readonly row: OwnFilament; readonly isAsMade: boolean }) {
  const { provenance } = row.life;
  const base = baseOf(row);
  const { curve } = EDITOR.labels;
  const now = toldOf(provenance, isAsMade);
  const origin = toldSpec({
    key: 'life.told',
    label: curve,
    now,
    from: base?.name,
    isRule: false,
    take: (told, text) => {
      const said = OWN_SAID.origin(curve, text);
      if (told === 'as made') return base && put(withCurveOf(row, base), said);
      return put(withCurve(row, {}, provenanceOf(told, '')), said);
    },
  });
  return (
    <Sentence className="in-cell">
      {EDITOR.isSaid}
      <ChoiceField spec={origin} />
      {now !== 'as made' && (
        <WordsField
          label={EDITOR.words(curve)}
          words={wordsOf(provenance)}
          asks={TOLD_ASKS[now]}
          onChange={(words) =>
            void put(withCurve(row, {}, provenanceOf(now, words)), OWN_SAID.origin(curve, words || TOLD_ASKS[now]))
          }
        />
      )}
    </Sentence>
  );
}

/** What the curve of a filament of the user's own stands on, with everything in it that can be changed. */
export function OwnStandsOn({ row, at, onRead }: Props) {
  const base = baseOf(row);
  // What is said of the name or the colour of a row is nothing of its curve.
  const isAsMade = base !== undefined && isSame(row.life, base.life);
  const after: Provenance = afterChange(row.life.provenance, isAsMade);
  const kind = soundness(row.life.provenance);
  return (
    <StandsOn
      row={row}
      anchors={evidenceOf(row)}
      first={
        <>
          <StandsLine kind={kind}>
            <CurveOrigin {...{ row, isAsMade }} />
          </StandsLine>
          <StandsLine kind={kind}>
            <AnchorFields {...{ row, at, onRead, after }} />
          </StandsLine>
        </>
      }
      renderRow={(one: StandsRow) =>
        isGiven(one.key) ? <GivenField name={one.key} more={one.more} {...{ row, after }} /> : <Stands row={one} />
      }
    />
  );
}
