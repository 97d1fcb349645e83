import { useId, useState } from 'react';
import type { Order } from '../../core/design/acrossFilaments.ts';
import { useSession } from '../../store/session.ts';
import { ChoiceField, type ChoiceSpec } from '../controls/ChoiceField.tsx';
import { Sentence } from '../controls/Sentence.tsx';
import {
  JOINT_REFUSED,
  NO_JOINT,
  NOT_HERE,
  orderOptions,
  SAME_STRAIN,
  STRAIN_SOURCE,
  shownOptions,
  timesWords,
  waysWords,
  type ShownRows,
} from '../text/filamentsText.ts';
import { kindWords } from '../text/filamentValueText.ts';
import { percent } from '../text/numbers.ts';
import { useComparing, useMarked } from './comparing.ts';
import { SourceMark } from './SourceMark.tsx';
import type { YourJoint } from './useYourJoint.ts';

/** Nothing that is offered is refused. */
const taking = (take: (value: string) => void) => (value: string) => {
  take(value);
  return undefined;
};

function useSpecs(
  count: number,
  order: Order,
  { joint, assessment }: YourJoint,
): Record<'shown' | 'order' | 'joint', ChoiceSpec> {
  const { shown, setOrder, setShown } = useComparing();
  const marked = useMarked();
  const joints = useSession((state) => state.part.joints);
  const selectJoint = useSession((state) => state.selectJoint);
  return {
    shown: {
      key: 'shown',
      label: 'Filaments shown',
      value: shown,
      options: shownOptions(count, marked.length),
      take: taking((value) => setShown(value as ShownRows)),
    },
    order: {
      key: 'order',
      label: 'Order',
      value: order,
      options: orderOptions(assessment !== undefined),
      take: taking((value) => setOrder(value as Order)),
    },
    joint: {
      key: 'joint',
      label: 'Your joint',
      value: joint?.id ?? '',
      options: joints.map(({ id, name }) => ({ value: id, text: name })),
      take: taking(selectJoint),
    },
  };
}

interface Props {
  readonly count: number;
  readonly order: Order;
  readonly yours: YourJoint;
  /** Whether the address names a filament that is not here. */
  readonly isLost: boolean;
}

/** What is compared, in what order, and against which joint. */
export function CompareSentence({ count, order, yours, isLost }: Props) {
  const specs = useSpecs(count, order, yours);
  const { joint, assessment } = yours;
  const noteId = useId();
  const [open, setOpen] = useState(false);
  return (
    <div className="compare-says">
      {isLost && <output className="lost">{NOT_HERE}</output>}
      <Sentence className="about">
        <ChoiceField spec={specs.shown} /> filaments at <span className="nw">23 °C,</span> in the order of{' '}
        <span className="nw">
          <ChoiceField spec={specs.order} />
          {joint ? ',' : '.'}
        </span>
        {joint && (
          <>
            {' '}
            set against your{' '}
            <span className="nw">
              <ChoiceField spec={specs.joint} />
              {assessment ? ':' : '.'}
            </span>
          </>
        )}
        {assessment && (
          <>
            {' '}
            {assessment.estimate && 'about '}
            <span className="num">{percent(assessment.strain.peak)}</span>
            <SourceMark
              kind={assessment.provenance.strain}
              of="this strain"
              open={open}
              controls={noteId}
              onToggle={() => setOpen(!open)}
            />{' '}
            strain, {waysWords(assessment.joint.movement)},{' '}
            <span className="nw">{timesWords(assessment.joint.movement)}.</span>
          </>
        )}
      </Sentence>
      {open && assessment && (
        <p className="origin-said" id={noteId}>
          {kindWords(assessment.provenance.strain)}: {STRAIN_SOURCE} <a href="#joints">{assessment.joint.name}</a>.
        </p>
      )}
      <p className="small">{assessment ? SAME_STRAIN : joint ? JOINT_REFUSED : NO_JOINT}</p>
    </div>
  );
}
