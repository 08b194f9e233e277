import { describe, expect, it } from 'vitest';

import { houseText, packsSet } from '../../pipeline/out/packs/index.js';
import { workOut, type PublishedOdds } from '../../pipeline/packs/index.js';
import { highWater } from '../packs/high-water.js';

const plan = highWater();
const report = workOut(plan);

/** The last block of the text: what is told of the cases. */
function lastBlock(said: readonly PublishedOdds[]): string {
  const set = packsSet({ id: 'high-water', title: 'High Water', plan, report, said, findings: [] });
  return (
    houseText({ internal: 'INTERNAL', sets: [set] })
      .split('\n\n')
      .at(-1) ?? ''
  );
}

const keel = (packs: number): PublishedOdds => ({ product: 'hobby', kind: 'keel', packs });

describe('what public odds tell of the cases', () => {
  it('is said for the odds as they are stated, and for each step', () => {
    expect(lastBlock([keel(720)])).toBe(
      [
        'Hobby: what public odds and public runs tell of the number of cases, which is 200',
        '  Odds said                       cases  possible numbers',
        '  as the plan says them now  187 to 210                24',
        '  exactly, rounded up               200                 1',
        '  finely rounded             197 to 210                14',
        '  in round numbers           197 to 210                14',
        '  coarsely rounded           176 to 233                58',
        '',
      ].join('\n'),
    );
  });

  it.each([
    ['any number, where nothing is stated', [], /^ {2}as the plan says them now +any *$/mu],
    [
      'no number, where what is stated contradicts itself',
      [keel(686), { product: 'hobby', kind: 'plates', packs: 2 }],
      /^ {2}as the plan says them now +none *$/mu,
    ],
  ])('%s', (_, said, line) => {
    expect(lastBlock(said)).toMatch(line);
  });
});
