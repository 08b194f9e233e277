/** For each number of missing cards, the chances of how many are missing afterwards, from 0 up to it. */
type Transitions = readonly Float64Array[];

/**
 * After how many packs a set is complete with at least each of these chances, where it takes so many
 * that they cannot be gone through one by one: the transitions of one pack are squared again and again,
 * and each number of packs is found bit by bit. All is sums of positive terms, so nothing cancels out;
 * rows are brought back to 1, so that rounding does not grow with the packs.
 * @param brings for each number of missing cards, the chances that a pack brings 0, 1, 2, … of them.
 * @param chances rising, above 0 and below 1.
 */
export function manyPacksForChances(
  brings: readonly (readonly number[])[],
  chances: readonly number[],
): readonly number[] {
  const most = chances.at(-1) ?? 0;
  const ladder = [transitionsOf(brings)];
  for (let top = ladder[0]; top !== undefined && completeAfter(top) < most;) {
    top = squared(top);
    ladder.push(top);
  }
  return chances.map((chance) => {
    let standing = new Float64Array(brings.length);
    standing[brings.length - 1] = 1;
    let opened = 0;
    for (const [rung, transitions] of [...ladder.entries()].reverse()) {
      const after = moved(standing, transitions);
      if ((after[0] ?? 0) >= chance) continue;
      standing = after;
      opened += 2 ** rung;
    }
    return opened + 1;
  });
}

function transitionsOf(brings: readonly (readonly number[])[]): Transitions {
  return brings.map((shares, short) => {
    const row = new Float64Array(short + 1);
    for (const [found, share] of shares.entries()) row[short - found] = share;
    return row;
  });
}

/** The chance that nothing is missing any more, if everything was. */
function completeAfter(transitions: Transitions): number {
  return transitions.at(-1)?.[0] ?? 1;
}

function squared(once: Transitions): Transitions {
  return once.map((row) => {
    const twice = moved(row, once);
    const whole = twice.reduce((sum, each) => sum + each, 0);
    return twice.map((each) => each / whole);
  });
}

/** The chances of how many are missing, after these transitions. */
function moved(standing: Float64Array, transitions: Transitions): Float64Array<ArrayBuffer> {
  const after = new Float64Array(standing.length);
  for (let short = 0; short < standing.length; short += 1) {
    const probability = standing[short] ?? 0;
    const row = transitions[short];
    if (probability === 0 || row === undefined) continue;
    for (let left = 0; left <= short; left += 1) {
      after[left] = (after[left] ?? 0) + probability * (row[left] ?? 0);
    }
  }
  return after;
}
