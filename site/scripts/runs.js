/**
 * The running part of a number and what stands before it: LC- and 12 for LC-12. Zeros in front
 * belong to what stands before.
 *
 * @param {string} number
 * @returns {{ readonly prefix: string, readonly value: number } | null} null without digits at its end
 */
export function runningPart(number) {
  const parts = /^(.*?)(0|[1-9]\d{0,8})$/su.exec(number);
  return parts && { prefix: parts[1] ?? '', value: Number(parts[2]) };
}

/**
 * Whether a number comes right after another: 18 after 17, LC-3 after LC-2.
 *
 * @param {string} before
 * @param {string} after
 */
export function follows(before, after) {
  const [a, b] = [runningPart(before), runningPart(after)];
  return a !== null && b !== null && a.prefix === b.prefix && a.value + 1 === b.value;
}
