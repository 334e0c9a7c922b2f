import { describe, expect, it } from 'vitest';
import { gripOf } from '../../../src/views/editor/bay/marks/front.ts';
import { carcass, fitted, solved } from '../../fitout/designs.ts';

describe('what a hand takes a mover by', () => {
  it('is the screen itself where a mover has no panel', () => {
    const fitOut = solved([
      carcass(
        fitted('opening-1', { kind: 'tablet-mount', arm: 'arm-tablet-swing', tablet: 'tablet-dock', latch: null }),
      ),
    ]);
    const grip = gripOf(fitOut, 'opening-1/screen-turn');
    // The middle of a screen 300 wide about 439.7 and 60 thick from the face.
    expect(grip?.[0]).toBeCloseTo(439.7, 9);
    expect(grip?.[1]).toBeCloseTo(30, 9);
    expect(gripOf(fitOut, 'opening-1/arm-swing')).not.toBeNull();
    expect(gripOf(fitOut, 'opening-1/nothing')).toBeNull();
  });
});
