import type { Point3 } from './triangleMesh.ts';

export function from3(a: Point3, b: Point3): Point3 {
  return { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
}

/** The point `scale` times a direction away from a point. */
export function along3(point: Point3, direction: Point3, scale: number): Point3 {
  return { x: point.x + scale * direction.x, y: point.y + scale * direction.y, z: point.z + scale * direction.z };
}

export function dot3(a: Point3, b: Point3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross3(a: Point3, b: Point3): Point3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

export function times3(a: Point3, scale: number): Point3 {
  return { x: a.x * scale, y: a.y * scale, z: a.z * scale };
}

export function length3(a: Point3): number {
  return Math.hypot(a.x, a.y, a.z);
}

export function distance3(a: Point3, b: Point3): number {
  return Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);
}

/** Same direction, length 1; undefined for what has no length. */
export function unit3(a: Point3): Point3 | undefined {
  const length = length3(a);
  return length > 0 && Number.isFinite(length) ? times3(a, 1 / length) : undefined;
}

/** The part of a vector that stands square on a direction of length 1. */
export function squareTo(direction: Point3, vector: Point3): Point3 {
  return along3(vector, direction, -dot3(direction, vector));
}

/** Some direction square to one of length 1: the coordinate axis that it leans on least, made square. */
export function anySquareTo(direction: Point3): Point3 {
  const { x, y, z } = direction;
  const [ax, ay, az] = [Math.abs(x), Math.abs(y), Math.abs(z)];
  const axis = ax <= ay && ax <= az ? { x: 1, y: 0, z: 0 } : ay <= az ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 };
  return unit3(squareTo(direction, axis)) ?? axis;
}
