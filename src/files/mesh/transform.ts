/** Affine transforms as 3MF writes them: twelve numbers, rows m00 m01 m02 to m30 m31 m32, for points that are rows. Source: 3mf-core 3.3. */

export type Transform = readonly number[];

export const UNMOVED: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** Everything so many times as large. */
export function enlarged(times: number): Transform {
  return UNMOVED.map((share) => share * times);
}

/**
 * One transform and then another. Points are rows and stand to the left, so that what comes first stands there too:
 * p·first·then.
 */
export function following(first: Transform, then: Transform): Transform {
  return Array.from({ length: 12 }, (_, i) => {
    const [row, column] = [Math.floor(i / 3), i % 3];
    const along = [0, 1, 2].reduce((sum, k) => sum + first[3 * row + k]! * then[3 * k + column]!, 0);
    return row === 3 ? along + then[9 + column]! : along;
  });
}

/** How many times as large a body becomes; below 0 where it is mirrored. */
export function growth(m: Transform): number {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = m;
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** Where one coordinate of a point goes; 0 for x, 1 for y, 2 for z. */
export function moved(m: Transform, axis: number, x: number, y: number, z: number): number {
  return x * m[axis]! + y * m[3 + axis]! + z * m[6 + axis]! + m[9 + axis]!;
}
