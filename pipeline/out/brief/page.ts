import { escapeMarkup } from '../../text/index.js';
import { HOLDING_SENTENCE, type Brief, type BriefSet } from './brief.js';
import { ownSections } from './own-page.js';
import type { OwnBrief } from './own.js';
import { NOT_YET } from './text.js';

/**
 * A brief as one page for the host: it asks for nothing else, so that it works from a disk, and
 * prints on paper.
 * @param own what one person knows of besides: such a page is for them alone, and is sealed.
 */
export function briefPage(brief: Brief, own: OwnBrief | null = null): string {
  const title = `What may be said: ${brief.title}`;
  const warning = brief.preview ? `<p class="not-yet">${NOT_YET}</p>\n` : '';
  const names = brief.names.map(
    ({ name, aliases, say }) =>
      `<tr><th scope="row">${escapeMarkup(name)}</th><td>${escapeMarkup(say ?? '')}</td><td>${escapeMarkup(aliases.join(', '))}</td></tr>`,
  );
  const openings = brief.openings.map((at) => `<li>${escapeMarkup(at)}</li>`);
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${escapeMarkup(title)}</title>
<style>${STYLE}</style>
<main>
<header>
<h1>${escapeMarkup(title)}</h1>
<p>From ${escapeMarkup(brief.from)} (${escapeMarkup(brief.zone)}) on.</p>
${warning}${own === null ? '' : `<p class="not-yet">For ${escapeMarkup(own.person)} alone.</p>\n`}</header>
${own === null ? '' : ownSections(own)}${brief.sets.map(setSection).join('\n')}
${section(
  'Names, and how they are said',
  names,
  `<table><thead><tr><th scope="col">Name</th><th scope="col">Said</th><th scope="col">Also</th></tr></thead><tbody>
${names.join('\n')}
</tbody></table>`,
)}${section('More is revealed', openings, `<ul>${openings.join('')}</ul>`)}<section class="else">
<h2>About everything else say</h2>
<p class="say">${escapeMarkup(HOLDING_SENTENCE)}</p>
</section>
${brief.legal === null ? '' : `<footer>${escapeMarkup(brief.legal)}</footer>\n`}</main>
</html>
`;
}

function section(title: string, items: readonly string[], body: string): string {
  return items.length === 0 ? '' : `<section>\n<h2>${title}</h2>\n${body}\n</section>\n`;
}

function setSection({ title, sentences, subsets }: BriefSet): string {
  const own = sentences
    .map((sentence) => `<p class="say">${escapeMarkup(sentence)}</p>`)
    .join('\n');
  const parts = subsets.map(({ title: name, sentence, cards }) => {
    const list =
      cards.length === 0 ? '' : `\n<p class="cards">${cards.map(cardWords).join(' · ')}</p>`;
    return `<h3>${escapeMarkup(name)}</h3>\n<p class="say">${escapeMarkup(sentence)}</p>${list}`;
  });
  return `<section>\n<h2>${escapeMarkup(title)}</h2>\n${own}\n${parts.join('\n')}\n</section>`;
}

/** A number is not parted from the name that it goes with. */
function cardWords(card: string): string {
  return escapeMarkup(card.replace(' ', '\u00a0'));
}

const STYLE = `
:root { color-scheme: light dark; --ground: #fbfaf7; --ink: #1c2429; --quiet: #55646c; --rule: #ccd3d1; --mark: #0b6e69; }
@media (prefers-color-scheme: dark) { :root { --ground: #171d20; --ink: #edf1f0; --quiet: #a6b4b9; --rule: #3a464b; --mark: #6cc5be; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--ground); color: var(--ink); font: 1.25rem/1.5 Georgia, 'Times New Roman', serif; }
main { max-width: 44rem; margin: 0 auto; padding: 1.5rem 1.25rem 4rem; }
h1 { font-size: 2rem; line-height: 1.15; margin: 0 0 .5rem; }
h2 { font-size: 1.5rem; line-height: 1.2; margin: 2.5rem 0 .75rem; padding-top: .75rem; border-top: 2px solid var(--rule); }
h3 { font-size: 1.25rem; margin: 1.75rem 0 .25rem; }
p { margin: .25rem 0; }
header p, .cards, footer { color: var(--quiet); }
.cards, footer, td, th { font-size: 1.0625rem; }
.not-yet { color: var(--ink); border: 3px solid currentColor; padding: .5rem .75rem; font-weight: bold; }
.else .say { border-left: 6px solid var(--mark); padding-left: 1rem; font-size: 1.5rem; line-height: 1.35; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: .35rem .75rem .35rem 0; border-bottom: 1px solid var(--rule); overflow-wrap: anywhere; }
td:nth-child(2), .own td { font-weight: bold; }
.own { border-left: 6px solid currentColor; padding-left: 1rem; }
footer { margin-top: 3rem; }
@media print { body { font-size: 12pt; background: #fff; color: #000; } h2, h3 { break-after: avoid; } tr, p { break-inside: avoid; } }
`;
