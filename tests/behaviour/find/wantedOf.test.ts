import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { wantedOf } from '../../../src/core/find/wantedOf.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { soughtOf } from '../../../src/core/flexures/soughts.ts';
import { everyFilament } from '../../../src/core/material/shelf.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { expectClose } from '../../support/close.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';

describe('what is looked for in the place of a joint', () => {
  it('keeps its movement, where it is used, and its printer', () => {
    const movement = { ...LEAF.movement, effortAtMost: 40, held: true, heldHours: 8 };
    const joint = { ...LEAF, movement, surroundings: { temperatureC: 40, moisture: 'dry' } as const };
    const wanted = wantedOf(joint);
    expect(wanted.movement).toEqual(movement);
    expect(wanted.movement.stays).toBeUndefined();
    expect(wanted.measure).toBe('turn');
    expect(wanted.profile).toEqual(LEAF.profile);
    expect(wanted.surroundings).toEqual(joint.surroundings);
    expect('surroundings' in wantedOf(LEAF)).toBe(false);
  });

  it('gives somewhat more room than the joint takes, in whole 5 mm', () => {
    // 12 mm with fillets of 0.8 at both ends are 13.6 along; half as much again is 20.4.
    expect(wantedOf(LEAF).room).toEqual({ along: 25, across: 10, depth: 6 });
    expect(wantedOf(LEAF).depthAtLeast).toBe(3);
  });

  it.each(demoPart().joints)('gives $name room enough for itself', (joint) => {
    const { room, depthAtLeast } = wantedOf(joint);
    for (const side of [room.along, room.across]) {
      expect(side).toBeGreaterThanOrEqual(10);
      expect(side % 5).toBe(0);
    }
    const family = FAMILIES.find(({ id }) => id === joint.family);
    const thickness = joint.measuredThickness ?? family?.section(joint.sizes, joint.profile).thickness ?? Number.NaN;
    const own = soughtOf(joint.family).room(joint.sizes, thickness);
    expect(room.along).toBeGreaterThanOrEqual(own.along);
    expect(room.across).toBeGreaterThanOrEqual(own.across);
    expect(room.depth).toBe(own.depth);
    // Of two leaves in two planes the room is deeper than each of them.
    expect(depthAtLeast).toBe(Math.min(own.depth, joint.sizes['depth'] ?? own.depth) / 2);
  });

  it('asks it to push about as hard as it does, where nothing is said of that', () => {
    const now = assess(LEAF);
    if (!now.ok) throw new Error('the leaf is sound');
    const { effortAtLeast = Number.NaN, movement } = wantedOf(LEAF);
    const { effort } = now.value.effort;
    expectClose(3 * effortAtLeast, effort, { rel: 0.05, because: 'it is said to two figures' });
    expectClose((movement.effortAtMost ?? Number.NaN) / 3, effort, { rel: 0.05, because: 'it is said to two figures' });
    const limited = wantedOf(changed(LEAF, { movement: { effortAtMost: 40 } }));
    expect([limited.effortAtLeast, limited.movement.effortAtMost]).toEqual([undefined, 40]);
    const [button] = demoPart().joints.filter(({ family }) => family === 'snapArch');
    if (!button) throw new Error('the demonstration part has an arch');
    const { effortAtMost: _, ...free } = button.movement;
    expect(wantedOf({ ...button, movement: free }).movement).toEqual(free);
  });

  it('takes a measured thickness as it is', () => {
    const thick = changed(LEAF, { sizes: { fillet: 2 }, measuredThickness: 5 });
    // 5 mm and two fillets of 2 are 9 across; half as much again is 13.5.
    expect(wantedOf(thick).room.across).toBe(15);
  });

  it('tries every kind, every filament that prints, and what lies as the joint does', () => {
    const wanted = wantedOf(CREASE);
    expect(wanted.families).toEqual(FAMILIES.map(({ id }) => id));
    expect(wanted.filaments).not.toContain('pp-moulded');
    expect(wanted.filaments).toHaveLength(everyFilament().filter(({ printable }) => printable).length);
    expect(wanted.lyings).toEqual(['flat', 'crease']);
    expect(wantedOf(changed(LEAF, { profile: { lying: 'upright' } })).lyings).toEqual(['flat', 'crease', 'upright']);
    expect(wanted.supports).toBe(false);
  });
});
