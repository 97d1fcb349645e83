import { toggleAt, type ToggleState } from '../../closedForms/toggle.ts';
import { placesOnTheWay, toggleParts } from '../../flexures/toggleHandForms.ts';
import type { ToggleSizes } from '../../flexures/toggleSizes.ts';
import type { HandAsked } from '../kindWorking.ts';
import { formula, given, type Step } from '../step.ts';

const SOURCE = { source: 'two-bar-truss' } as const;

/** The symbols of one state of the pins: how far they are apart, and how far necks have turned. */
interface Opened {
  readonly travel: string;
  readonly run: string;
  readonly opened: string;
}
interface At extends Opened {
  readonly turned: string;
  readonly last: string;
}

const WANTED: At = { travel: 'v', run: 'c', opened: 'u', turned: 'χ', last: 'χ_3' };
const MOST_OPEN: Opened = { travel: 'v_u', run: 'c_u', opened: 'u_m' };
const MOST_TURNED: At = { travel: 'v_χ', run: 'c_χ', opened: 'u_χ', turned: 'χ_b', last: 'χ_m' };

function openedSteps({ travel, run, opened }: Opened, state: ToggleState): readonly Step[] {
  return [
    formula({ ...SOURCE, id: 'pin-run', symbol: run, expression: `sqrt(ℓ_0^2 - (H - ${travel})^2)`, unit: 'mm' }),
    formula({
      ...SOURCE,
      id: 'pin-opened',
      symbol: opened,
      expression: `2 * (${run} - a)`,
      unit: 'mm',
      // As made and mirrored nothing is open but round-off.
      ...(state.opened > 1e-6 ? { figure: state.opened } : {}),
    }),
  ];
}

function turnedSteps({ travel, opened, turned, last }: At, state: ToggleState): readonly Step[] {
  return [
    formula({
      ...SOURCE,
      id: 'pin-turned',
      symbol: turned,
      expression: `asin(H / ℓ_0) - asin((H - ${travel}) / ℓ_0)`,
      unit: '',
      figure: state.turned,
    }),
    formula({
      ...SOURCE,
      id: 'pin-last',
      symbol: last,
      expression: `${turned} + λ * ${opened}`,
      unit: '',
      figure: state.lastTurned,
    }),
  ];
}

/** Where on the way something is largest: a share of the travel, in so many places. */
function placeStep(travel: string, place: number, places: number, count: string): Step {
  return formula({
    ...SOURCE,
    id: 'pin-place',
    symbol: travel,
    expression: `v * ${count} / n_p`,
    given: [given(count, place, '', 'summed'), given('n_p', places, '', 'constant')],
    unit: 'mm',
  });
}

/**
 * The pins at the wanted end, and where spring and last neck are bent most, if that is before it. Before them stand `a`,
 * `H`, `ℓ_0`, `λ` and `v`; at the wanted end they give `c`, `u`, `χ` and `χ_3`.
 *
 * @param asked - sizes [mm], thickness of the necks [mm] and travel of the push [mm]
 * @returns the steps, and the symbols of the largest opening and the largest turn of the last neck [-]
 *
 * Source: two-bar-truss.
 */
export function pinStates({
  sizes,
  thickness,
  amount,
}: Pick<HandAsked<ToggleSizes>, 'sizes' | 'thickness' | 'amount'>): {
  readonly steps: readonly Step[];
  readonly opened: string;
  readonly last: string;
} {
  const parts = toggleParts(sizes, thickness);
  const { places, travel, mostOpened, mostTurned } = placesOnTheWay(sizes, thickness, amount);
  const stateAt = (place: number) => toggleAt(parts, (travel * place) / places);
  const wanted = stateAt(places);
  const steps = [...openedSteps(WANTED, wanted), ...turnedSteps(WANTED, wanted)];
  const open = stateAt(mostOpened);
  const isOpenBefore = mostOpened !== places;
  if (isOpenBefore) steps.push(placeStep(MOST_OPEN.travel, mostOpened, places, 'n_u'), ...openedSteps(MOST_OPEN, open));
  const turned = stateAt(mostTurned);
  const isTurnedBefore = mostTurned !== places;
  if (isTurnedBefore) {
    steps.push(
      placeStep(MOST_TURNED.travel, mostTurned, places, 'n_χ'),
      ...openedSteps(MOST_TURNED, turned),
      ...turnedSteps(MOST_TURNED, turned),
    );
  }
  return {
    steps,
    opened: (isOpenBefore ? MOST_OPEN : WANTED).opened,
    last: (isTurnedBefore ? MOST_TURNED : WANTED).last,
  };
}
