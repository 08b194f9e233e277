/** What is laid over the sample of the rules, so that its cards are set: a layout with a small zone. */
export const SET_FILES: Readonly<Record<string, string>> = {
  'backs/standard.yaml': `id: standard
trim: { width: 63.5, height: 88.9 }
bleed: 3.175
safe: 3.175
fonts:
  body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff, italic: files/alegreya-sans-latin-400-italic.woff, bold: files/alegreya-sans-latin-700-normal.woff }
zones:
  number: { x: 5, y: 4, width: 10, height: 5, font: body, size: 8, leading: 10 }
  name: { x: 18, y: 4, width: 40, height: 5, font: body, size: 9, leading: 11 }
  bio: { x: 5, y: 32, width: 53.5, height: 12, font: body, size: 6.8, leading: 8.4 }
  legal: { x: 5, y: 80, width: 53.5, height: 4, font: body, size: 6, leading: 7 }
`,
  'names.yaml': `names:
  - { name: Odalys Thrane, kind: character, level: open, say: oh-DAH-liss, aliases: [Captain Thrane], avoid: [{ form: Miss Thrane, use: Captain Thrane, why: retitled }] }
`,
  'one/plan.yaml': `id: one
title: One
spoiler: open
stage: writing
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 2 }, back: standard, order: story, coverage: { from: 1/1, to: 1/9 } }
  - { id: extra, title: Extra, group: inserts, numbers: { prefix: X-, from: 1, to: 1 } }
totals: { base: 2, inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 } }
style: { english: british }
`,
};
