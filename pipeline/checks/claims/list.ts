import type { ListedNumber } from '../../../schema/index.js';
import { placeOf, type Content } from '../../model/index.js';
import type { Claim } from './judge.js';
import type { Mention } from './read.js';
import { listedOdds } from './odds-list.js';
import type { SaidOdds } from './odds-read.js';
import { linkOf, numberedTexts, type CountedText } from './claims.js';
import { ownerOf } from '../faults.js';
import { subjectOf, type Beside } from '../subject.js';

/** Every number of every text that may count cards, with what it was taken for, by place. */
export function listClaims(content: Content, beside: Beside): readonly ListedNumber[] {
  const subject = subjectOf(content, beside);
  if (!subject) return [];
  const all: ListedNumber[] = [];
  for (const counted of numberedTexts(subject)) {
    const claims = new Map(counted.claims.map((claim) => [claim.mention, claim]));
    const odds = counted.odds.flatMap((claim) => {
      const number = listedOdds(claim, subject);
      return number ? [{ claim, number }] : [];
    });
    for (const mention of counted.reading.mentions) {
      const isPart =
        mention.taken.as === 'odds' && odds.some(({ claim }) => isOf(mention, claim.said));
      if (!isPart) all.push(listed(counted, mention, claims.get(mention)));
    }
    all.push(...odds.map(({ number }) => number));
  }
  return all.sort(byPlace);
}

/** Whether a number is one by which odds are said: of "1:24" both. */
function isOf({ number }: Mention, { rate, number: own }: SaidOdds): boolean {
  return number === own || (rate.at <= number.at && number.at < rate.next);
}

function byPlace(a: ListedNumber, b: ListedNumber): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.column - b.column;
}

function listed({ text }: CountedText, mention: Mention, claim: Claim | undefined): ListedNumber {
  const { number, taken } = mention;
  const { told } = text;
  const spot = told.spotOf(number.from, number.to);
  const to = placeOf(spot.source.text, spot.to);
  const owner = ownerOf(spot.source.file);
  const link = linkOf(mention, text);
  // A link that cannot be compared has a finding of its own; `none` says story.
  const plain = link !== null && !claim ? 'story' : taken.as;
  return {
    set: told.owner.set ?? owner.set ?? null,
    card: told.owner.card ?? owner.card ?? null,
    file: spot.source.file,
    ...placeOf(spot.source.text, spot.from),
    endLine: to.line,
    endColumn: to.column,
    text: told.what,
    words: told.text.slice(claim ? mention.from : number.from, claim ? mention.to : number.to),
    number: number.value,
    taken: claim ? 'claim' : plain,
    ...(link === null ? {} : { link: link.names }),
    ...(claim ? standing(claim) : {}),
  };
}

function standing({ taken, verdict, real }: Claim): Partial<ListedNumber> {
  return {
    ...(taken.high === null ? {} : { to: taken.high.value }),
    ...(taken.hedge === null ? {} : { hedge: taken.hedge }),
    stands: verdict,
    real: real.map(({ value, of }) => ({ count: value, of })),
  };
}
