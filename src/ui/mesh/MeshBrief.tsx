import { useChecking } from '../../store/checking.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { useChecked } from './checked.ts';
import { partChoiceSpec, partValueSpec, type BriefOfPart, type PartChoice, type PartValue } from './meshSpecs.ts';

interface LiveProps {
  readonly of: BriefOfPart;
  readonly stop?: string;
}

function Value({ name, of, stop = '' }: LiveProps & { readonly name: PartValue }) {
  return <Live spec={partValueSpec(name, of)} stop={stop} />;
}

function Choice({ name, of, stop = '' }: LiveProps & { readonly name: PartChoice }) {
  return <Live spec={partChoiceSpec(name, of)} stop={stop} />;
}

/** How the part is printed and what is asked of its thin sections, as a sentence with every value live in it. */
export function MeshBrief() {
  const { name, values, unit, judged } = useChecked();
  const change = useChecking((state) => state.change);
  const of: BriefOfPart = { values, unit, change };
  return (
    <section className="brief" aria-label="Brief">
      <Sentence className="check-says">
        <span className="fname">{name}</span>, scaled <Value name="scale" of={of} stop="," /> in{' '}
        <Choice name="filament" of={of} stop="," /> <Choice name="up" of={of} stop="," /> in{' '}
        <Value name="lineWidth" of={of} /> lines and <Value name="layerHeight" of={of} /> layers from a{' '}
        <Value name="nozzle" of={of} /> nozzle; {judged.length === 1 ? 'it bends' : 'each bends'}{' '}
        <Value name="turn" of={of} /> <Choice name="ways" of={of} stop="," /> <Value name="cycles" of={of} /> times,{' '}
        <Choice name="held" of={of} stop="," /> for <Choice name="chance" of={of} stop="." />
      </Sentence>
    </section>
  );
}
