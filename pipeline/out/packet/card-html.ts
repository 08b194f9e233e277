import {
  TO_BE_REVEALED,
  type View,
  type ViewCard,
  type ViewOpening,
  type ViewRun,
} from '../../gate/index.js';
import { legalText, sayInstant, type Instant } from '../../model/index.js';
import { escapeMarkup } from '../../text/index.js';
import { isCut } from '../card/index.js';
import { earlierLines } from './earlier-lines.js';
import { sayField } from './now-words.js';
import { fieldsNow } from './now.js';
import { redline } from './redline.js';
import type { FieldText, SubmittedPart, SubmittedText } from './submission.js';

/** What a card says beside its two sides, as markup. */
export interface CardMarkup {
  readonly view: View;
  readonly card: ViewCard;
  readonly text: SubmittedText;
}

/** The words of a card, and everything its reviewer is told of it. */
export function cardHtml(markup: CardMarkup): string {
  const { card, text } = markup;
  return [
    wordsOf(markup),
    changesOf(text, fieldsNow(card)),
    listOf('Remarked by the checks', text.findings.map(escapeMarkup)),
    listOf('Opens', openingsOf(markup)),
    siteOf(markup),
    listOf('Sources', sourcesOf(card)),
    shownOf(card),
    earlierOf(markup),
  ].join('');
}

/** A section with its heading; none without a body. */
export function sectionOf(title: string, body: string, kind = ''): string {
  if (body === '') return '';
  const mark = kind === '' ? '' : ` class="${kind}"`;
  return `<section${mark}><h3>${title}</h3>${body}</section>`;
}

function listOf(title: string, items: readonly string[]): string {
  if (items.length === 0) return '';
  return sectionOf(title, `<ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>`);
}

function pairsOf(pairs: readonly (readonly [name: string, value: string])[]): string {
  const told = pairs.filter(([, value]) => value !== '');
  if (told.length === 0) return '';
  const rows = told.map(
    ([name, value]) => `<div><dt>${escapeMarkup(name)}</dt><dd>${lines(value)}</dd></div>`,
  );
  return `<dl>${rows.join('')}</dl>`;
}

function lines(text: string): string {
  return escapeMarkup(text).replaceAll('\n', '<br>');
}

function wordsOf({ view, card }: CardMarkup): string {
  const fields = fieldsNow(card)
    .filter(({ field }) => !['bio', 'publicName', 'alt', 'signers'].includes(field))
    .map(({ field, text }) => [sayField(field), text] as const);
  const legal = legalText(view.property.legal, card.review?.owed ?? []) ?? '';
  const rows = pairsOf([
    ...fields,
    ['Variation', card.tell ?? ''],
    ['Print run', card.run === null ? '' : String(card.run)],
    ['Statement', card.review?.statement ?? ''],
    ['Legal line', legal],
  ]);
  const bio = card.bioHeld ? `<p>[${TO_BE_REVEALED.toLowerCase()}]</p>` : bioOf(card.bio, view);
  return sectionOf('The words', `<div class="bio" data-bio>${bio}</div>${rows}`, 'words');
}

/** The paragraphs of a bio; held words say when they open. */
export function bioOf(bio: ViewCard['bio'], view: View): string {
  const zone = view.property.zone;
  return bio.map((runs) => `<p>${runs.map((run) => runOf(run, zone)).join('')}</p>`).join('');
}

function runOf(run: ViewRun, zone: string): string {
  if ('held' in run) return `<span class="held">[${TO_BE_REVEALED.toLowerCase()}]</span>`;
  const { text, bold, italic, opens } = run;
  if (text === '\n') return '<br>';
  const plain = escapeMarkup(text);
  const heavy = bold ? `<strong>${plain}</strong>` : plain;
  const leaning = italic ? `<em>${heavy}</em>` : heavy;
  if (opens === null) return leaning;
  return `<span class="held">${leaning}<small> [held: ${sayOpening(opens, zone)}]</small></span>`;
}

/** The part of a card that a field is decided on with. */
function partOf(field: string): SubmittedPart['part'] {
  if (field === 'words') return 'sales';
  return field === 'publicName' || field === 'alt' ? 'web' : 'copy';
}

/** "opens 14 May 2027, 10:00", as escaped text. */
export function sayOpening(at: Instant, zone: string): string {
  if (at === Infinity) return 'no date yet';
  return at === -Infinity ? 'open' : `opens ${escapeMarkup(sayInstant(at, zone))}`;
}

/** What changed of a text since its reviewer last decided on it; nothing if they never did. */
export function changesOf({ was, parts }: SubmittedText, now: readonly FieldText[]): string {
  if (parts.every(({ last }) => last === null)) return '';
  const touched = new Set(
    parts.flatMap(({ part, last }) => (last?.isCurrent === false ? [part] : [])),
  );
  const title = 'Changed since you last decided';
  const fields = [...new Set([...was, ...now].map(({ field }) => field))];
  const rows = fields.flatMap((field) => {
    const before = was.find((each) => each.field === field)?.text;
    const after = now.find((each) => each.field === field)?.text ?? '';
    if (!touched.has(partOf(field)) || (before ?? '') === after) return [];
    const body = redline(before ?? '', after);
    return [`<div><dt>${escapeMarkup(sayField(field))}</dt><dd>${body}</dd></div>`];
  });
  if (rows.length > 0) return sectionOf(title, `<dl>${rows.join('')}</dl>`, 'changes');
  if (touched.size === 0) return '';
  const besides = [...touched].map((part) => BESIDES[part]).join('; ');
  return sectionOf(title, `<p>No words, but: ${besides}.</p>`, 'changes');
}

/** What can change of a part without its words. */
const BESIDES: Readonly<Record<SubmittedPart['part'], string>> = {
  copy: 'how the words are marked, or when they open',
  image: 'the picture',
  layout: 'the layout',
  web: 'what the website shows, or when',
  sales: 'how the sales text is marked, or when it opens',
};

function openingsOf({ view, card }: CardMarkup): readonly string[] {
  const zone = view.property.zone;
  const placeholder = card.state === 'placeholder' && card.opens !== null;
  const { review } = card;
  return [
    ...(placeholder ? [`The card ${sayOpening(card.opens, zone)}`] : []),
    ...openingLines(review?.openings ?? [], zone),
    ...(review === null ? [] : [`Collectors have it: ${sayHands(review.inHands, zone)}`]),
  ];
}

/** A line for each opening, with all that opens at it. */
function openingLines(openings: readonly ViewOpening[], zone: string): readonly string[] {
  const whats = new Map<string, string[]>();
  for (const { what, label, at } of openings) {
    const named = label === '' ? '' : ` (${escapeMarkup(label)})`;
    const when = `${sayOpening(at, zone)}${named}`;
    whats.set(when, [...(whats.get(when) ?? []), escapeMarkup(sayWhat(what))]);
  }
  return [...whats].map(([when, names]) => `${names.join(', ')}: ${when}`);
}

/** "field facts.Berth" as "Berth"; "words …" as what they are. */
function sayWhat(what: string): string {
  const [kind = '', name] = what.split(/ (.*)/s);
  if (name === undefined) return kind === 'card' ? 'The card' : kind;
  return kind === 'words' ? `The words “${name}”` : sayField(name);
}

function sayHands(at: Instant, zone: string): string {
  return at === Infinity ? 'no date yet' : escapeMarkup(sayInstant(at, zone));
}

function siteOf({ view, card }: CardMarkup): string {
  const shows = view.property.shows.map(sayShown).join(', ');
  return sectionOf(
    'On the website',
    pairsOf([
      ['Public name', card.review?.publicName ?? ''],
      ['Picture in words', card.image?.alt ?? ''],
      ['The site shows', shows === '' ? 'names and numbers alone' : shows],
    ]),
  );
}

/** A picture has two sides; of all else nothing is said but that it shows. */
function sayShown(shown: string): string {
  return shown.startsWith('art ') ? shown : shown.replace(/ front$/, '');
}

function sourcesOf({ review }: ViewCard): readonly string[] {
  return (review?.sources ?? []).map(({ title, ref, for: what }) => {
    const subject = what === null ? '' : `${what}: `;
    return escapeMarkup(`${subject}${title}${ref === null ? '' : `, ${ref}`}`);
  });
}

function shownOf({ review }: ViewCard): string {
  return sectionOf(
    'People',
    pairsOf([
      ['In the picture', (review?.depicts ?? []).join(', ')],
      ['Drawn after', review?.ref ?? ''],
      ['To sign', (review?.signers ?? []).map(({ name, state }) => `${name}: ${state}`).join('\n')],
    ]),
  );
}

function earlierOf({ view, text }: CardMarkup): string {
  return listOf(
    'Earlier rounds',
    earlierLines(text.earlier, view.property.zone).map(({ at, who, what, more }) => {
      const rest = more.map((line) => `<br>${escapeMarkup(line)}`).join('');
      return `<strong>${escapeMarkup(who)}</strong>, ${escapeMarkup(at)}: ${escapeMarkup(what)}${rest}`;
    }),
  );
}

/** What is said at the head of a card besides its name. */
export function standingOf({ card, text }: Pick<CardMarkup, 'card' | 'text'>): readonly string[] {
  return [
    ...(card.state === 'not issued' ? ['Not issued'] : []),
    ...(isCut(card) ? ['Not as printed'] : []),
    ...saidOf(text),
  ];
}

/** Whether a text is as it was when its reviewer last decided on it. */
export function saidOf({ parts }: SubmittedText): readonly string[] {
  if (parts.length === 0) return ['To read: there is nothing on it for you to decide'];
  if (parts.every(({ last }) => last === null)) return ['New to you'];
  const isSame = parts.every(({ last }) => last?.isCurrent === true);
  return [isSame ? 'Unchanged since you last decided' : 'Changed since you last decided'];
}
