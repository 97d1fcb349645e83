/** A sign for each kind of flexure, drawn by rule in a box of 108 by 72: y runs down, as on screen. */

export interface Pictogram {
  /** Closed paths: what does not bend. */
  readonly solid: string;
  /** Lines: what bends. */
  readonly bends: string;
  /** A second place of rest, dashed. */
  readonly second?: string;
}

type At = readonly [number, number];

const box = (x: number, y: number, width: number, height: number) => `M${x} ${y}h${width}v${height}h${-width}Z`;
const rounded = (value: number) => Number(value.toFixed(1));
const line = (points: readonly At[]) => `M${points.map(([x, y]) => `${rounded(x)} ${rounded(y)}`).join('L')}`;
const circle = (radius: number) =>
  `M${54 - radius} 36a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;
const steps = (count: number, at: (share: number) => At) => Array.from({ length: count + 1 }, (_, i) => at(i / count));
const join = <T>(items: readonly T[], drawn: (item: T, i: number) => string) => items.map(drawn).join('');

/** One wave from pad to pad, up by so much in the middle. */
const wave = (rise: number) =>
  line(steps(24, (share) => [14 + 80 * share, 43 - (rise / 2) * (1 - Math.cos(2 * Math.PI * share))]));

/** An arm from the hub to the ring. */
const arm = (k: number) =>
  line(
    steps(30, (share) => {
      const [radius, turn] = [7 + 24 * share, (k / 3 + 0.7 * share) * 2 * Math.PI];
      return [54 + radius * Math.cos(turn), 36 + radius * Math.sin(turn)];
    }),
  );

/** A stiff link: a bar 8 wide. */
function link([x, y]: At, [u, v]: At): string {
  const scale = 4 / Math.hypot(u - x, v - y);
  const [dx, dy] = [(y - v) * scale, (u - x) * scale];
  return `${line([
    [x + dx, y + dy],
    [u + dx, v + dy],
    [u - dx, v - dy],
    [x - dx, y - dy],
  ])}Z`;
}

/** A place on the curve that a panel wraps: so far round it, so far out. */
const wrapped = (turn: number, out: number): At => [54 + (60 + out) * Math.sin(turn), 90 - (60 + out) * Math.cos(turn)];
const SLATS = [-2, -1, 0, 1, 2];
const slat = (k: number) =>
  `${line([
    wrapped(k * 0.38 - 0.11, 7),
    wrapped(k * 0.38 + 0.11, 7),
    wrapped(k * 0.38 + 0.11, -7),
    wrapped(k * 0.38 - 0.11, -7),
  ])}Z`;
const leaf = (k: number) => line(steps(4, (share) => wrapped((k - 0.5) * 0.38 + (share - 0.5) * 0.18, 0)));

const STRIPS = [19, 33, 47, 61, 75, 89];
/** A strip between two rows of slits, and the bridges to the next: at the ends and in the middle by turns. */
const strip = (x: number, k: number) =>
  `M${x} 6V66${k === STRIPS.length - 1 ? '' : join(k % 2 === 0 ? [7.5, 64.5] : [36], (y) => `M${x} ${y}h14`)}`;

const PICTOGRAMS: Readonly<Record<string, Pictogram>> = {
  straightLeaf: { solid: box(2, 20, 20, 32) + box(86, 20, 20, 32), bends: 'M22 36H86' },
  crease: { solid: box(2, 26, 44, 20) + box(62, 26, 44, 20), bends: 'M46 44.5H62' },
  neck: { solid: 'M2 16H36a18 18 0 0 0 36 0H106V56H72a18 18 0 0 0-36 0H2Z', bends: '' },
  crossedLeaves: { solid: box(2, 2, 104, 14) + box(2, 56, 104, 14), bends: 'M24 16L84 56M84 16L24 56' },
  parallelLeaves: { solid: box(10, 2, 88, 14) + box(2, 58, 104, 12), bends: 'M24 16V58M84 16V58' },
  foldedLeaf: {
    solid: box(2, 52, 22, 18) + box(84, 52, 22, 18),
    bends: 'M13 52V17a13.5 13.5 0 0 1 27 0V44a13.5 13.5 0 0 0 27 0V17a13.5 13.5 0 0 1 27 0V52',
  },
  spiral: { solid: circle(34) + circle(30) + circle(7), bends: join([0, 1, 2], arm) },
  snapArch: { solid: box(2, 26, 12, 36) + box(94, 26, 12, 36), bends: wave(36), second: wave(-24) },
  toggle: {
    solid: box(2, 26, 14, 28) + box(92, 26, 14, 28) + link([24, 40], [46, 12]) + link([62, 12], [84, 40]),
    bends: 'M16 40H25M45 12H63M83 40H92',
    second: 'M17 40H24L46 66H62L84 40H91',
  },
  cellPanel: { solid: join(SLATS, slat), bends: join(SLATS.slice(1), leaf) },
  slitPanel: { solid: box(2, 6, 12, 60) + box(94, 6, 12, 60), bends: `M14 36h5M89 36h5${join(STRIPS, strip)}` },
};

/** The sign of a kind; every family of the core has one, and a test holds them together. */
export function pictogramOf(family: string): Pictogram {
  const pictogram = PICTOGRAMS[family];
  if (!pictogram) throw new RangeError(`no pictogram for the family ${family}`);
  return pictogram;
}
