import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { FIND } from '../text/findText.ts';
import { effortWishOf } from './wantedChange.ts';
import { CHOICES, valueSpec, type WantedOf, type WantedValue } from './wantedSpecs.ts';

/** How far, how often and for how many of a hundred. */
function Moves({ of }: { readonly of: WantedOf }) {
  const isBetween = of.wanted.movement.ways === 'between';
  return (
    <>
      <Value name="amount" of={of} /> <Live spec={CHOICES.ways(of)} stop={isBetween ? '' : ','} />{' '}
      {isBetween && (
        <>
          <Value name="least" of={of} stop="," />{' '}
        </>
      )}
      <Value name="cycles" of={of} /> times, for <Live spec={CHOICES.chance(of)} stop="," />
    </>
  );
}

function Value({ name, of, stop = '' }: { readonly name: WantedValue; readonly of: WantedOf; readonly stop?: string }) {
  return <Live spec={valueSpec(name, of)} stop={stop} />;
}

/** How hard it may push back. */
function Effort({ of }: { readonly of: WantedOf }) {
  const wish = effortWishOf(of.wanted);
  const [hasLeast, hasMost] = [wish === 'least' || wish === 'between', wish === 'most' || wish === 'between'];
  return (
    <>
      <Live spec={CHOICES.effort(of)} stop={wish === 'any' ? '.' : ''} />
      {hasLeast && (
        <>
          {' '}
          <Value name="effortAtLeast" of={of} stop={hasMost ? '' : '.'} />
        </>
      )}
      {hasLeast && hasMost && ' and'}
      {hasMost && (
        <>
          {' '}
          <Value name="effortAtMost" of={of} stop="." />
        </>
      )}
    </>
  );
}

/** What stays bent, and whether it should stay where it is moved to. */
function After({ of }: { readonly of: WantedOf }) {
  const isLimited = of.wanted.setAtMost !== undefined;
  return (
    <>
      It <Live spec={CHOICES.stays(of)} stop=";" /> what is left bent after a flex{' '}
      <Live spec={CHOICES.set(of)} stop={isLimited ? '' : '.'} />
      {isLimited && (
        <>
          {' '}
          <Value name="setAtMost" of={of} stop="." />
        </>
      )}
    </>
  );
}

/** What is looked for, as a sentence with every value live in it. */
export function FindSentence({ of }: { readonly of: WantedOf }) {
  return (
    <Sentence className="find-says">
      {FIND.begins[of.wanted.measure]} <Moves of={of} /> in at most <Value name="along" of={of} /> along,{' '}
      <Value name="across" of={of} /> across and <Value name="depth" of={of} /> of depth, of which it takes{' '}
      <Value name="depthAtLeast" of={of} /> or more, pushing back <Effort of={of} /> <After of={of} /> Printed{' '}
      <Live spec={CHOICES.supports(of)} /> supports, with <Value name="lineWidth" of={of} /> lines and{' '}
      <Value name="layerHeight" of={of} /> layers.
    </Sentence>
  );
}
