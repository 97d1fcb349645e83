import { angle, percent } from '../text/numbers.ts';
import { SCALING_SAYS } from '../text/meshText.ts';
import { useChecked } from './checked.ts';

/** More than this are told by their ends. */
const MOST = 4;

/** That a scaled part strains the same, with its own figures. */
export function ScalingSays() {
  const { groups, values } = useChecked();
  const strains = groups.flatMap(({ one }) => (one.assessed.ok ? [one.assessed.value.strain.peak] : []));
  const different = [...new Set(strains.toSorted((a, b) => a - b).map((strain) => percent(strain)))];
  if (different.length === 0) return null;
  const [first = '', last = ''] = [different[0], different.at(-1)];
  const told = different.length <= MOST ? different : [`${first} to ${last}`];
  return <p className="say">{SCALING_SAYS(angle(values.asked.turn), told)}</p>;
}
