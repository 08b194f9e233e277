import { escapeMarkup } from '../../text/index.js';
import type { OwnBrief } from './own.js';

/** The parts of a page that are for one person alone; the same headings whatever is in them. */
export function ownSections({ person, names, subjects, stack }: OwnBrief): string {
  const namesToldOf = names.map(({ name, aliases, say }) => {
    const said = say === null ? '' : ` <small>(${escapeMarkup(say)})</small>`;
    const also = aliases.length === 0 ? '' : `; ${escapeMarkup(aliases.join(', '))}`;
    return `<li><b>${escapeMarkup(name)}</b>${said}${also}</li>`;
  });
  const subjectsToldOf = subjects.map((subject) => `<li>${escapeMarkup(subject)}</li>`);
  const taken = stack.map(
    ({ set, subset, cards }) =>
      `<tr><th scope="row">${escapeMarkup(set)}: ${escapeMarkup(subset)}</th><td>${cards.map(escapeMarkup).join(', ')}</td></tr>`,
  );
  return `<section class="own">
<h2>What not to raise</h2>
<p>For ${escapeMarkup(person)} alone: you know of it, and the public does not by then.</p>
${listOf('Names', namesToldOf)}${listOf('Subjects', subjectsToldOf)}${namesToldOf.length + subjectsToldOf.length === 0 ? NOTHING : ''}</section>
<section class="own">
<h2>What to take out of a stack opened on camera</h2>
${taken.length === 0 ? NOTHING : `<table><tbody>\n${taken.join('\n')}\n</tbody></table>\n`}</section>
`;
}

const NOTHING = '<p>Nothing that you know of.</p>\n';

function listOf(title: string, items: readonly string[]): string {
  return items.length === 0 ? '' : `<h3>${title}</h3>\n<ul>\n${items.join('\n')}\n</ul>\n`;
}
