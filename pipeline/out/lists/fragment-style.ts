/**
 * The style of a fragment, every selector below its own class. It takes its colours and its type
 * from the page that it stands in, so that it reads on a light page and on a dark one.
 * @param own the class of the fragment.
 * @param accent a colour for the line above it, of six hexadecimal digits.
 */
export function fragmentStyle(own: string, accent: string): string {
  return `.${own} { --holdback-accent: ${accent}; --holdback-gap: .75rem; max-width: 48rem; padding-top: var(--holdback-gap); border-top: .25rem solid var(--holdback-accent); text-align: left; line-height: 1.45; overflow-wrap: anywhere; }
.${own} h2 { margin: 0 0 .25rem; font-size: 1.5em; line-height: 1.2; }
.${own} p { margin: .25rem 0; }
.${own} table { width: 100%; margin: calc(2 * var(--holdback-gap)) 0; border: 0; border-collapse: collapse; table-layout: fixed; font-size: 1em; }
.${own} caption { padding: 0 0 .375rem; caption-side: top; text-align: left; font-weight: 700; }
.${own} .holdback-kind { font-weight: 400; }
.${own} th, .${own} td { padding: .375rem var(--holdback-gap) .375rem 0; border: 0; border-bottom: 1px solid; border-bottom-color: color-mix(in srgb, currentcolor 28%, transparent); background: none; color: inherit; text-align: left; vertical-align: top; font-size: 1em; font-weight: 400; }
.${own} thead th { border-bottom-color: currentcolor; }
.${own} th:last-child, .${own} td:last-child { padding-right: 0; }
.${own} .holdback-number { width: 5.25em; font-variant-numeric: tabular-nums; }
.${own} .holdback-notes { width: 40%; }
.${own} .holdback-to-come .holdback-name { font-style: italic; }
.${own} summary { cursor: pointer; font-style: italic; }
.${own} a { color: inherit; text-decoration: underline; text-decoration-color: color-mix(in srgb, currentcolor 45%, transparent); text-underline-offset: .15em; }
.${own} .holdback-small { font-size: .875em; }
`;
}
