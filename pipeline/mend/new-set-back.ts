/**
 * The layout of a new property: mm from the trimmed top left corner, type in points, the fonts that
 * come with the tool. Within its safe edge, no zone over another, no type under 5 pt.
 */
export const STANDARD_BACK = `format: 1
id: standard

# The card in mm, upright, and how far paint runs over its edge. Ask the printer for both.
trim: { width: 63.5, height: 88.9 }
bleed: 3.175
safe: 3.175
paper: "#ffffff"
frontPaper: "#ffffff"

fonts:
  body: { package: "@fontsource/source-serif-4", regular: files/source-serif-4-latin-400-normal.woff, italic: files/source-serif-4-latin-400-italic.woff, bold: files/source-serif-4-latin-700-normal.woff }
  head: { package: "@fontsource/source-sans-3", regular: files/source-sans-3-latin-700-normal.woff }

# What no zone is there for is not printed: \`texts: { caption: … }\` on a card fills a zone \`caption\`.
zones:
  number: { x: 46.5, y: 5, width: 12, height: 6, font: head, size: 11, leading: 13, align: right, hyphens: none, colour: "#1f2933" }
  name: { x: 5, y: 5, width: 40, height: 13, font: head, size: 13, leading: 14.5, align: left, hyphens: none, colour: "#1f2933", shrink: { to: 9.5 } }
  facts: { x: 5, y: 21.5, width: 53.5, height: 9.5, font: head, size: 7, leading: 8.6, align: left, hyphens: none, colour: "#3e4c59" }
  bio: { x: 5, y: 33, width: 53.5, height: 36, font: body, size: 7.5, leading: 10.2, align: left, widows: avoid, hyphens: none, colour: "#1f2933", shrink: { to: 6.6 } }
  credits: { x: 5, y: 70.5, width: 53.5, height: 7, font: head, size: 6, leading: 7.2, align: left, hyphens: none, colour: "#3e4c59" }
  # The legal line as the contract gives it. If it is longer than this, make room: it prints whole.
  legal: { x: 5, y: 78.5, width: 53.5, height: 6.9, font: body, size: 5, leading: 6, align: left, vertical: bottom, hyphens: none, colour: "#3e4c59" }

panels:
  - { x: 5, y: 19.5, width: 53.5, height: 0.25, colour: "#1f2933" }
`;
