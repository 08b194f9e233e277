import { memoryFolder, readProperty } from '../../pipeline/read/index.js';

const FONTS = `
fonts:
  body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff, italic: files/alegreya-sans-latin-400-italic.woff, bold: files/alegreya-sans-latin-700-normal.woff }
  other: { package: "@fontsource/roboto", regular: files/roboto-latin-400-normal.woff }
`;
const BIO = 'bio: { x: 5, y: 32, width: 53.5, height: 24, font: body, size: 6.8, leading: 8.4 }';
const NAME = 'name: { x: 5, y: 12, width: 53.5, height: 6, font: body, size: 10, leading: 12 }';

function layout(id: string, more: string, trim = '{ width: 63.5, height: 88.9 }'): string {
  return `id: ${id}\ntrim: ${trim}\nbleed: 3.175\nsafe: 3.175\n${FONTS}${more}`;
}

function card(number: string, name: string, more: string, bio = 'bio: none\n---\n'): string {
  return `---\nnumber: ${number}\nname: ${name}\nspoiler: open\nimage: { file: art/a.svg, alt: "A lock gate", depicts: [] }\n${more}${bio}`;
}

const told = (text: string): string => `---\n${text}\n`;
export const LONG = Array.from({ length: 90 }, (_, index) => `word${String(index)}`).join(' ');

/** A set in which every card is odd in its own way. */
export const ODD = readProperty(
  memoryFolder(
    new Map([
      [
        'property.yaml',
        `id: ferrywrights
title: The Ferrywrights
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known from the trailers }
  - { id: spring, label: Episodes 4 to 7, lift: "2027-05-14T20:00:00+01:00[Europe/London]" }
  - { id: finale, label: Later episodes, lift: unset, held: absent, announce: false }
approvals: none
legal: { line: "© 2027 Lantern & Oar" }
`,
      ],
      [
        'people.yaml',
        `people:
  - { id: tobit, name: Tobit Crane, role: licensor, clearance: open }
`,
      ],
      [
        'backs/plain.yaml',
        layout(
          'plain',
          `zones:\n  number: { x: 5, y: 5, width: 10, height: 6, font: body, size: 10, leading: 12 }\n  ${NAME}\n  ${BIO}\n`,
        ),
      ],
      [
        'backs/painted.yaml',
        layout(
          'painted',
          `paper: "#123456"
frontPaper: "#654321"
panels:
  - { x: 0, y: 60, width: 63.5, height: 28.9, colour: "#abcdef" }
  - { x: 5, y: 40, width: 10, height: 5, colour: "#fedcba" }
front:
  name: { x: 5, y: 78, width: 53.5, height: 6, font: body, size: 10, leading: 12, align: center, tracking: 50 }
zones:
  ${BIO.replace('font: body', 'font: other').replace('8.4', '8.4, tracking: 20, align: justify, shrink: { to: 5 }')}
`,
        ),
      ],
      ['backs/blank.yaml', layout('blank', `blank: true\nzones:\n  ${NAME}\n`)],
      [
        'backs/poster.yaml',
        layout('poster', `zones:\n  ${NAME}\n  ${BIO}\n`, '{ width: 300, height: 400 }'),
      ],
      [
        'locks/plan.yaml',
        `id: locks
title: "The Ferrywrights: Nine Locks"
short: Nine Locks
spoiler: open
stage: writing
street: "2027-04-16T09:00:00+01:00[Europe/London]"
subsets:
  - { id: gates, title: Gates, group: base, numbers: { from: 1, to: 9 }, back: plain, bio: { words: { min: 1, max: 999 } } }
  - { id: walls, title: Walls, group: base, numbers: none, bio: none }
totals: { base: 9 }
`,
      ],
      ['locks/art/a.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
      ['locks/cards/gates/long.md', card('"1"', 'Too long', '', told(LONG))],
      ['locks/cards/gates/wide.md', card('"2"', 'Too wide', '', told('x'.repeat(70)))],
      ['locks/cards/gates/glyph.md', card('"3"', 'No glyph', '', told('The lock at Ω is shut.'))],
      [
        'locks/cards/gates/painted.md',
        card('"4"', 'Painted', 'back: painted\n', told(`${LONG.slice(0, 430)} fin`)),
      ],
      ['locks/cards/gates/blank.md', card('"5"', 'Blank', 'back: blank\n')],
      [
        'locks/cards/gates/poster.md',
        card('"6"', 'Poster', 'back: poster\n', told('A poster for a wall.')),
      ],
      [
        'locks/cards/gates/spans.md',
        card(
          '"7"',
          'Spans',
          '',
          told(
            'The lake [drowned a street](held:spring) once. [Nobody saw the bell.](held:finale) Row on.',
          ),
        ),
      ],
      [
        'locks/cards/gates/held.md',
        card(
          '"8"',
          'Ysolde',
          'holds: { name: spring, bio: spring }\npublicName: The voice\n',
          told('She rang it.'),
        ),
      ],
      [
        'locks/cards/gates/closed.md',
        card('"9"', 'Pellam', '', told('He knew.')).replace('spoiler: open', 'spoiler: spring'),
      ],
      ['locks/cards/walls/bare.md', card('none', 'A wall without a layout', '')],
    ]),
  ),
);
