const UP_TO_TWENTY = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/**
 * How many, in words, as British English says it before a noun: "no", "one", "forty-two", "one
 * hundred and six". From a thousand on in digits.
 * @throws RangeError for what is no count.
 */
export function countInWords(count: number): string {
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`${String(count)} is no count`);
  if (count >= 1000) return String(count);
  if (count < 100) return belowHundred(count);
  const hundreds = `${belowHundred(Math.floor(count / 100))} hundred`;
  return count % 100 === 0 ? hundreds : `${hundreds} and ${belowHundred(count % 100)}`;
}

function belowHundred(count: number): string {
  const small = UP_TO_TWENTY[count];
  if (small !== undefined) return small;
  const tens = TENS[Math.floor(count / 10)] ?? '';
  return count % 10 === 0 ? tens : `${tens}-${UP_TO_TWENTY[count % 10] ?? ''}`;
}
