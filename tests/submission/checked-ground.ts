/** Files for the ground of submissions, with cuts and a writer who is not told everything. */
const APPROVALS = 'approvals:\n';

export const CUTS =
  'cuts:\n  - { id: cut-1, received: "2026-07-20" }\n  - { id: cut-2, received: "2026-09-14", touches: [1/4] }\n';

export const PROPERTY_WITH_CUTS: Readonly<Record<string, string>> = {
  'property.yaml': `id: lake
title: The Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known }
  - { id: later, label: Episode 1, lift: "2027-04-16T20:00:00+01:00[Europe/London]" }
  - { id: last, label: Episode 2, lift: "2027-06-04T20:00:00+01:00[Europe/London]", held: absent }
embargoes:
  - { id: guest, label: A guest, lift: unset }
${CUTS}${APPROVALS}  - { parts: [copy, image, layout, web, sales], roles: [licensor] }
beats:
  - { at: 1/1, says: The water rises, level: open }
legal: { line: "© 2027 Lantern & Oar" }
`,
};

export const PEOPLE_TOO: Readonly<Record<string, string>> = {
  'people.yaml': `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }
  - { id: sefa, name: Sefa Brook, role: editor, clearance: last }
  - { id: wilf, name: Wilf Garrity, role: writer, clearance: open }
  - { id: amara, name: Amara Linde, role: licensor, clearance: last, knows: [guest] }
`,
};

export const LAMP_READ: Readonly<Record<string, string>> = {
  'one/cards/base/a2.md': `---
number: "2"
name: The Lamp
spoiler: open
state: ready
story: 1/4
checkedAgainst: cut-1
---
A lamp that nobody lit is burning.
`,
};
