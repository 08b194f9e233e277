import type { View, ViewCard, ViewSales } from '../../gate/index.js';
import type { FontShelf } from '../../typeset/index.js';
import { escapeMarkup } from '../../text/index.js';
import { isCut, setCard, zoneWordsOf, type Listed } from '../card/index.js';
import { bioOf, cardHtml, changesOf, saidOf, sectionOf, standingOf } from './card-html.js';
import { backSvg, frontSvg, voidSvg } from './card-sides.js';
import { plainWords } from './now.js';
import type { FaceList } from './faces.js';
import type { PageCard, PageWords } from './page-data.js';
import type { PictureList } from './picture.js';
import type { SideDrawing } from './side-svg.js';
import type { Submission, SubmittedText } from './submission.js';

/** What all cards of a page are made with. */
export interface Making {
  readonly view: View;
  readonly submission: Submission;
  readonly fonts: FontShelf;
  readonly pictures: PictureList;
  readonly faces: FaceList;
}

/** A card of the page: its two sides, its words, and what can be rewritten. */
export function pageCard(making: Making, listed: Listed, text: SubmittedText): PageCard {
  const { view } = making;
  const { card, set, subset } = listed;
  const heading = [card.number, card.letter, card.name].filter((part) => part !== null).join(' ');
  return {
    key: text.key,
    heading,
    subset: `${set.id}/${subset.id}`,
    subsetTitle: subset.title,
    parts: text.parts,
    isChanged: isChanged(text),
    html: articleOf(making, {
      heading,
      where: `${set.short} · ${subset.title}`,
      said: standingOf({ card, text }),
      sides: sidesOf(making, listed),
      body: cardHtml({ view, card, text }),
    }),
    words: text.parts.some(({ part }) => part === 'copy') ? wordsOf(making, listed) : null,
  };
}

/** A sales text of the page: words alone. */
export function pageSales(
  making: Making,
  set: { readonly id: string; readonly short: string },
  sales: ViewSales,
  text: SubmittedText,
): PageCard {
  const heading = sales.title ?? sales.kind;
  const words = `<div class="bio" data-bio>${bioOf(sales.words, making.view)}</div>`;
  const now = { field: 'words', text: plainWords(sales.words) };
  return {
    key: text.key,
    heading,
    subset: `${set.id}/sales`,
    subsetTitle: 'Sales texts',
    parts: text.parts,
    isChanged: isChanged(text),
    html: articleOf(making, {
      heading,
      where: `${set.short} · ${sales.kind}`,
      said: saidOf(text),
      sides: '',
      body: sectionOf('The words', words, 'words') + changesOf(text, [now]),
    }),
    words: null,
  };
}

function isChanged({ parts }: SubmittedText): boolean {
  return parts.some(({ last }) => last?.isCurrent !== true);
}

interface Article {
  readonly heading: string;
  readonly where: string;
  readonly said: readonly string[];
  readonly sides: string;
  readonly body: string;
}

function articleOf({ submission }: Making, article: Article): string {
  const { person, round } = submission;
  const said = article.said.map((words) => `<li>${escapeMarkup(words)}</li>`).join('');
  return (
    `<header class="head"><p class="where">${escapeMarkup(article.where)}</p>` +
    `<h2 tabindex="-1">${escapeMarkup(article.heading)}</h2>` +
    `<p class="whose">For ${escapeMarkup(person.name)} · submission ${String(round)}</p>` +
    (said === '' ? '' : `<ul class="said">${said}</ul>`) +
    `</header>${article.sides}<div class="told">${article.body}</div>`
  );
}

function sidesOf(making: Making, listed: Listed): string {
  const { view, fonts, faces } = making;
  const keyOf: SideDrawing['keyOf'] = (face) => faces.keyOf(face);
  const empty = voidSvg(listed);
  const { layout } = listed;
  if (empty !== null || !layout) {
    return `<div class="sides">${figureOf('front', empty ?? '', 'Front', making, listed.card)}</div>`;
  }
  const text = setCard(view, listed, { fonts });
  const front = frontSvg(listed, layout, text, artOf(making, listed), keyOf);
  const back = backSvg(listed, layout, text, keyOf);
  const lies = listed.trim.width > listed.trim.height ? ' lying' : '';
  return `<div class="sides${lies}">${figureOf('front', front, 'Front', making, listed.card)}${figureOf('back', back, 'Back', making, listed.card)}</div>`;
}

function figureOf(
  side: string,
  svg: string,
  title: string,
  { submission }: Making,
  card: ViewCard,
): string {
  const { person, round } = submission;
  const cut = isCut(card) ? ' · not as printed' : '';
  return `<figure data-side="${side}"><div class="drawn">${svg}</div><figcaption>${title} · ${escapeMarkup(person.name)}, submission ${String(round)}${cut}</figcaption></figure>`;
}

function artOf({ pictures }: Making, { card, layout }: Listed): SideDrawing['art'] {
  const picture = card.image && pictures.keyOf(card.image.source);
  if (picture !== null) return { picture };
  return layout?.frontPaper === undefined || card.image ? { hatched: 'Art to come' } : null;
}

function wordsOf({ view, faces, fonts }: Making, { card, layout }: Listed): PageWords {
  const family = layout && fonts.get(layout.id);
  for (const each of family?.values() ?? []) faces.keysOf(each);
  const { number, name, facts, texts, credits, legal, statement, shared } = zoneWordsOf(
    view,
    card,
    layout ?? {},
  );
  return {
    layout: family ? layout.id : null,
    bio: card.bio.map((runs) =>
      runs.flatMap((run) => {
        if ('held' in run) return [];
        const { text, italic, bold, opens } = run;
        return [{ text, italic, bold, held: opens !== null }];
      }),
    ),
    rest: { number, name, facts, texts, credits, legal, statement, shared },
  };
}
