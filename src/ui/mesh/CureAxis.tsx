import { useMemo } from 'react';
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Cure } from '../../core/inspect/cure.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import { letteringWidth } from '../drawing/lettering.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { CURED } from '../text/meshText.ts';
import { useChecked } from './checked.ts';

const HEIGHT = 40;
const LINE = 20;

interface Pair {
  readonly was: number;
  readonly now: number;
}

interface Axis {
  readonly pairs: readonly Pair[];
  readonly most: number;
  readonly ticks: readonly { readonly at: number; readonly high: number; readonly text: string }[];
  readonly say: (value: number) => string;
  readonly label: string;
}

const strainOf = ({ assessed }: Judged) => (assessed.ok ? 100 * assessed.value.strain.peak : Number.NaN);

/** Different pairs only: alike sections share theirs. */
function distinct(pairs: readonly Pair[], say: Axis['say']): readonly Pair[] {
  const seen = new Set<string>();
  return pairs.filter(({ was, now }) => {
    const key = `${say(was)} ${say(now)}`;
    const isNew = Number.isFinite(was) && Number.isFinite(now) && !seen.has(key);
    seen.add(key);
    return isNew;
  });
}

const sayCount = (count: number) =>
  Math.abs(count - Math.round(count)) <= 0.05 ? String(Math.round(count)) : count.toFixed(2);
const sayStrain = (value: number) => value.toFixed(2);

function lineAxis({ before, after }: Cure): Axis {
  const say = sayCount;
  const pairs = before.map(({ landing }, i) => ({ was: landing.exact, now: after[i]?.landing.exact ?? Number.NaN }));
  const most = Math.max(6.6, ...pairs.map(({ now, was }) => 1.06 * Math.max(now, was)));
  const every = most > 16 ? 4 : 2;
  const ticks = Array.from({ length: Math.floor(most) }, (_, i) => i + 1)
    .filter((at) => most <= 16 || at % 2 === 0)
    .map((at) => ({ at, high: at % every ? 3 : 6, text: at % every ? '' : String(at) }));
  return {
    pairs: distinct(pairs, say),
    most,
    ticks,
    say,
    label: CURED.lines(distinct(pairs, say).map(({ was, now }) => [say(was), say(now)])),
  };
}

/** Limits are those of the filament that is proposed. */
function strainAxis({ before, after }: Cure): Axis {
  const say = sayStrain;
  const pairs = before.map((one, i) => ({ was: strainOf(one), now: after[i] ? strainOf(after[i]) : Number.NaN }));
  const shown = distinct(pairs, say);
  const limits = after.flatMap(({ assessed }) => (assessed.ok ? [assessed.value.allowables] : [])).slice(0, 1);
  const ticks = limits.flatMap((all) =>
    (['repeated', 'yield'] as const).map((name) => {
      const at = 100 * allowableNamed(all, name).limit;
      return { at, high: 6, text: at.toFixed(at < 1 ? 2 : 1) };
    }),
  );
  const most = 1.12 * Math.max(...ticks.map(({ at }) => at), ...shown.flatMap(({ was, now }) => [was, now]), 1);
  return { pairs: shown, most, ticks, say, label: CURED.strains(shown.map(({ was, now }) => [say(was), say(now)])) };
}

/** Figures that would touch the one before are left out; the label has them all. */
function lettered(
  pairs: readonly Pair[],
  x: (at: number) => number,
  width: number,
  say: Axis['say'],
): readonly { at: number; text: string }[] {
  const kept: { at: number; text: string; end: number }[] = [];
  for (const { now } of pairs.toSorted((a, b) => a.now - b.now)) {
    const text = say(now);
    const half = letteringWidth(text, 12) / 2;
    const at = Math.min(Math.max(x(now), half + 1), width - half - 1);
    if (at - half > (kept.at(-1)?.end ?? -Infinity) + 4) kept.push({ at, text, end: at + half });
  }
  return kept;
}

/** One pair for each different section: hollow before, filled after; lines across, or strain where that is what changes. */
export function CureAxis({ cure }: { readonly cure: Cure }) {
  const { groups } = useChecked();
  const [ref, width] = useWidth<HTMLDivElement>();
  const isStrain = cure.change.kind === 'turn' || cure.change.kind === 'filament';
  const axis = useMemo(() => (isStrain ? strainAxis(cure) : lineAxis(cure)), [cure, isStrain]);
  const x = (at: number) => 5 + ((width - 12) * Math.min(at, axis.most)) / axis.most;
  const shown = groups.length > 12 ? axis.pairs.slice(0, 12) : axis.pairs;
  return (
    <div className="cure-axis" ref={ref}>
      {width > 0 && (
        <svg width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={axis.label}>
          <path className="Lh" d={`M2 ${LINE}H${width - 2}`} />
          {axis.ticks.map(({ at, high, text }) => (
            <g key={at}>
              <path className="L" d={`M${x(at)} ${LINE - high}V${LINE + high}`} />
              <text className="t2 s12" x={x(at)} y={11} textAnchor="middle">
                {text}
              </text>
            </g>
          ))}
          {shown.map(({ was, now }) => {
            const [p, q] = [x(was), x(now)];
            const side = q > p ? 4 : -4;
            return (
              <g key={`${was} ${now}`}>
                {Math.abs(q - p) > 10 && <path className="L" d={`M${p + side} ${LINE}H${q - side}`} />}
                <circle className="was" cx={p} cy={LINE} r="3.6" />
                <circle className="Ia" cx={q} cy={LINE} r="4.2" />
              </g>
            );
          })}
          {lettered(shown, x, width, axis.say).map(({ at, text }) => (
            <text key={at} className="ta s12" x={at} y={37} textAnchor="middle">
              {text}
            </text>
          ))}
        </svg>
      )}
    </div>
  );
}
