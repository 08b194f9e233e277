import { describe, expect, it } from 'vitest';

import { remembered } from '../../pipeline/release/index.js';

const art = (name: string): Uint8Array => new TextEncoder().encode(name);

/** Draws ten bytes of each art, and notes what was drawn; `bad` cannot be drawn the first time. */
function drawing(most: number) {
  const drawn: string[] = [];
  const draw = remembered((bytes, width) => {
    const name = new TextDecoder().decode(bytes);
    drawn.push(`${name} ${String(width)}`);
    if (name === 'bad' && drawn.length === 1) return Promise.reject(new Error('damaged'));
    return Promise.resolve({ bytes: new Uint8Array(10).fill(drawn.length), width, height: 1 });
  }, most);
  return { draw, drawn };
}

describe('remembered drawing', () => {
  it('draws the same art at the same width once, by its bytes', async () => {
    const { draw, drawn } = drawing(1000);
    const first = await draw(art('a'), 240);
    expect(await draw(art('a'), 240)).toBe(first);
    await Promise.all([draw(art('b'), 240), draw(art('b'), 240)]);
    await draw(art('a'), 560);
    expect(drawn).toEqual(['a 240', 'b 240', 'a 560']);
  });

  it('forgets the oldest when it is too much', async () => {
    const { draw, drawn } = drawing(25);
    for (const name of ['a', 'b', 'c', 'c', 'b', 'a']) {
      await draw(art(name), 240);
      await new Promise(setImmediate);
    }
    expect(drawn).toEqual(['a 240', 'b 240', 'c 240', 'a 240']);
  });

  it('draws again what could not be drawn', async () => {
    const { draw, drawn } = drawing(1000);
    await expect(draw(art('bad'), 240)).rejects.toThrow('damaged');
    expect((await draw(art('bad'), 240)).bytes).toEqual(new Uint8Array(10).fill(2));
    expect(drawn).toEqual(['bad 240', 'bad 240']);
  });
});
