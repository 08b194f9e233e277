import { countableKind, sayHold, type Spot } from '../../model/index.js';
import { countLike } from '../../text/index.js';
import type { Claim } from './judge.js';
import { toldOf } from './odds.js';
import { tellingOdds } from './odds-words.js';
import type { WrongSum } from './sum.js';
import type { BadLink, CountedText } from './claims.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';
import { unknown } from '../unknown.js';

/** Most real counts that a finding names. */
const MOST_NAMED = 3;

/** The words of a claim, and of a link what it counts. */
export function sayClaim({ text, mention, link, real }: Claim): string {
  const words = text.told.text.slice(mention.from, link ? mention.number.to : mention.to);
  return link ? `${words}: ${real[0]?.of ?? `\`${link.names}\``}` : words;
}

/** "14, the subset `signals`", "what is true of 14, the subset `signals`". */
export function sayReal({ real, taken }: Claim): string {
  const named = real.slice(0, MOST_NAMED).map(({ value, of }) => `${String(value)}, ${of}`);
  const rest = real.length > MOST_NAMED ? ['another count of the plan'] : [];
  const counts = [...named, ...rest].join('; or ');
  if (taken.relation === 'numbers') return real.map(({ of }) => of).join('; or ');
  return taken.hedge === null && taken.relation === 'exact' && taken.high === null
    ? counts
    : `what is true of ${counts}`;
}

/** Where the number of a claim stands. */
export function spotOfClaim({ text, mention }: Claim): Spot {
  return text.told.spotOf(mention.number.from, mention.number.to);
}

/** Whether a sales text says that its claims are subject to change. */
export function maySoftly({ text: { sales } }: Pick<Claim, 'text'>): boolean {
  if (!sales) return false;
  return sales.words.some((paragraph) =>
    /\bsubject\s+to\s+change\b/i.test(paragraph.map(({ text }) => text).join('')),
  );
}

/** What is said of a claim that does not hold, in a text that has not gone yet. */
export function wrongClaim(claim: Claim): Remark {
  const { text } = claim;
  return {
    ...text.told.owner,
    spot: spotOfClaim(claim),
    message: `${text.told.what} claims another count than there is`,
    found: sayClaim(claim),
    expected: sayReal(claim),
    ...(maySoftly(claim) ? { severity: 'warning' } : {}),
    ...fixOf(claim),
  };
}

/** The right number in the form of the wrong one, where there is one and it stands there as such. */
function fixOf(claim: Claim): Pick<Remark, 'fix' | 'certain'> {
  const { mention, taken, real, text, link } = claim;
  const { number } = mention;
  const exact = taken.relation === 'exact' && taken.hedge === null && taken.high === null;
  const values = new Set(real.map(({ value }) => value));
  const [value] = values;
  if (!exact || values.size !== 1 || value === undefined) return {};
  if (number.kind !== 'count' || number.form === 'other') return {};
  // Between one and several the words around it change too.
  if ((number.value === 1) !== (value === 1)) return {};
  const spot = spotOfClaim(claim);
  const typed = text.told.text.slice(number.from, number.to);
  if (spot.source.text.slice(spot.from, spot.to) !== typed) return {};
  const fix = countLike(typed, value);
  return link === null ? { fix } : { fix, certain: true };
}

/** What is said of a link that counts nothing. */
export function badLinkRemark({ link, why }: BadLink, { text }: CountedText): Remark {
  const { told } = text;
  const words = told.text.slice(link.from, link.to);
  if (why === 'unknown') {
    return {
      ...told.owner,
      ...unknown('subset, group or total', link.names, namesIn(text), idSpot(link, text)),
    };
  }
  return {
    ...told.owner,
    spot: told.spotOf(link.from, link.to),
    message:
      why === 'no number'
        ? `this count of \`${link.names}\` says no number`
        : `this count of \`${link.names}\` says several numbers`,
    found: words,
    expected: 'one number, or no link',
  };
}

function namesIn({ sets }: CountedText['text']): string[] {
  const names = sets.flatMap((set) => {
    const { subsets, totals } = set.plan.value;
    return [
      ...subsets.map(({ id }) => id),
      ...subsets.map(({ group }) => group),
      ...Object.keys(totals ?? {}),
    ].filter((name) => countableKind(set, name) !== null);
  });
  return [...new Set([...names, 'none'])];
}

/** Where the id of a link stands: behind its words. */
function idSpot({ names, source }: BadLink['link'], { told }: CountedText['text']): Spot {
  const place = told.spotOf(0, told.text.length);
  const link = `(count:${names})`;
  const at = place.source.text.indexOf(link, source.to);
  if (at < 0) return { source: place.source, from: source.from, to: source.to };
  const from = at + '(count:'.length;
  return { source: place.source, from, to: from + names.length };
}

/** What is said of parts that do not make their total. */
export function sumRemark({ total, parts }: WrongSum, { text }: CountedText): Remark {
  const sum = parts.reduce((all, { number }) => all + number.value, 0);
  const typed = (from: number, to: number): string => text.told.text.slice(from, to);
  const listed = parts.map(({ number }) => typed(number.from, number.to)).join(' + ');
  return {
    ...text.told.owner,
    spot: text.told.spotOf(total.number.from, total.number.to),
    message: 'the parts that this sentence lists do not make its total',
    found: `${listed} = ${String(sum)}, and it says ${typed(total.number.from, total.number.to)}`,
    expected: 'parts that make the total, or a total that they make',
    ...(maySoftly({ text }) ? { severity: 'warning' } : {}),
  };
}

/** What is said of a claim over cards that leave no trace when it is read. */
export function tellingClaim(claim: Claim, subject: Subject): Remark {
  const { text, held, real } = claim;
  const of = real[0]?.of ?? 'them';
  const by = held ? sayHold(subject.schedule, held) : 'a level';
  return {
    ...text.told.owner,
    spot: spotOfClaim(claim),
    message: `${text.told.what} counts a card that leaves no trace when it is read`,
    found: `${sayClaim({ ...claim, link: null })}: a card of ${of} is held by ${by}`,
    expected: 'no count of these cards, or a text that is held as long',
  };
}

const MONTHS =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

/** "1 December 2026" of "2026-12-01". */
export function sayDay(date: string): string {
  const [year = '', month = '', day = ''] = date.split('-');
  return `${String(Number(day))} ${MONTHS[Number(month) - 1] ?? ''} ${year}`;
}

/** What is said of a claim of a text that has gone, and no longer holds. */
export function changedPromise(claim: Claim, sent: string): Remark {
  return {
    ...claim.text.told.owner,
    spot: spotOfClaim(claim),
    message: `since ${sayDay(sent)} this is a promise, and it no longer holds`,
    found: sayClaim(claim),
    expected: sayReal(claim),
    ...(maySoftly(claim) ? { severity: 'warning' } : {}),
  };
}

/**
 * Claims over cards of which one is absent for the text: a leak, whatever number they give. And odds
 * of several kinds together by which those of a held one follow.
 */
export function* tellingClaims(subject: Subject, texts: readonly CountedText[]): Generator<Remark> {
  for (const { claims, odds } of texts) {
    for (const claim of claims) if (claim.verdict === 'tells') yield tellingClaim(claim, subject);
    for (const each of odds) {
      const told = toldOf(each, subject);
      if (told) yield tellingOdds(each, told, subject);
    }
  }
}
