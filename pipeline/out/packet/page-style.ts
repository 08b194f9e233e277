/** The looks of a packet's page. */
export const STYLE = `
:root { color-scheme: light dark; --ground: #fbfaf7; --sheet: #fff; --ink: #1c2429; --quiet: #55646c; --line: #d9d6cd; --mark: #0b6e69; --on: #fff; --in: #e2f1ee; --out: #f6e7e4; --warn: #9c1f17; }
@media (prefers-color-scheme: dark) { :root { --ground: #171d20; --sheet: #1f272b; --ink: #edf1f0; --quiet: #a6b4b9; --line: #3a464c; --mark: #6cc5be; --on: #10181a; --in: #1d3b39; --out: #43292a; --warn: #ffb0a6; } }
* { box-sizing: border-box; }
html { scroll-padding-bottom: 9rem; }
body { margin: 0; background: var(--ground); color: var(--ink); font: 1.0625rem/1.5 Georgia, 'Times New Roman', serif; overflow-wrap: anywhere; }
h1, h2, h3, p, ul, ol, dl, figure { margin: 0; }
h1 { font-size: 1.25rem; line-height: 1.25; }
h1 small { display: block; font-size: .9375rem; font-weight: normal; color: var(--quiet); }
h2 { font-size: 1.75rem; line-height: 1.2; }
h3 { font-size: 1rem; line-height: 1.4; color: var(--quiet); }
button, input, select, textarea { font: inherit; color: inherit; }
button { min-height: 2.75rem; min-width: 2.75rem; padding: .25rem .875rem; border: 1px solid var(--mark); border-radius: .25rem; background: transparent; color: var(--mark); cursor: pointer; }
button.main, button[aria-pressed='true'] { background: var(--mark); color: var(--on); font-weight: bold; }
button.plain { min-height: 2rem; padding: .125rem .5rem; text-align: left; }
input, select, textarea { width: 100%; min-height: 2.75rem; padding: .375rem .625rem; border: 1px solid var(--quiet); border-radius: .25rem; background: var(--sheet); }
input[type='checkbox'] { width: 1.5rem; height: 1.5rem; min-height: 0; margin: 0 .5rem 0 0; vertical-align: middle; accent-color: var(--mark); }
textarea { min-height: 6rem; resize: vertical; }
:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
summary { min-height: 1.75rem; cursor: pointer; color: var(--mark); }
.heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.top { display: grid; gap: .375rem 1.5rem; padding: .75rem 1rem; border-bottom: 1px solid var(--line); }
.top .until, #progress { color: var(--quiet); font-size: .9375rem; }
.tools { display: flex; flex-wrap: wrap; gap: .5rem; }
#warning { padding: .625rem 1rem; background: var(--out); color: var(--warn); font-weight: bold; }
#said { flex: 1 0 100%; order: -2; color: var(--mark); font-size: .9375rem; }
#said:empty { position: absolute; }
.frame { max-width: 84rem; margin: 0 auto; }
nav { padding: .5rem 1rem 0; }
#list { padding: 0; list-style: none; }
#list button { width: 100%; border-color: transparent; color: var(--ink); }
#list button[aria-current] { border-color: var(--mark); }
#list small { color: var(--quiet); }
#card { padding: 1rem; }
.head .where, .head .whose { color: var(--quiet); font-size: .9375rem; }
.head h2:focus { outline: none; }
.said { display: flex; flex-wrap: wrap; gap: .25rem .5rem; padding: 0; list-style: none; margin-top: .375rem; }
.said li { padding: 0 .5rem; border: 1px solid var(--mark); border-radius: 1rem; font-size: .875rem; color: var(--mark); }
.sides { display: flex; flex-wrap: wrap; gap: 1rem; margin: 1rem 0; }
figure { flex: 0 1 20rem; min-width: 0; }
.drawn svg { display: block; width: 100%; height: auto; border-radius: .375rem; box-shadow: 0 0 0 1px var(--line), 0 2px 10px rgb(0 0 0 / .12); text-rendering: geometricPrecision; }
figcaption { margin-top: .375rem; color: var(--quiet); font-size: .8125rem; }
.told section { margin-top: 1rem; padding-top: .75rem; border-top: 1px solid var(--line); }
.told ul { padding-left: 1.25rem; }
.changes dl div { display: block; }
.bio p + p { margin-top: .5em; }
.bio { font-size: 1.125rem; max-width: 38rem; }
.held { border-bottom: 2px dotted var(--quiet); }
.held small { color: var(--quiet); }
dl { display: grid; gap: .125rem; margin-top: .375rem; }
dl div { display: grid; grid-template-columns: minmax(5rem, 8rem) 1fr; gap: .75rem; }
dt { color: var(--quiet); }
dd { margin: 0; }
ins { text-decoration: none; border-bottom: 2px solid var(--mark); background: var(--in); font-weight: bold; }
del { background: var(--out); }
#decide { position: sticky; bottom: 0; padding: .5rem 1rem; background: var(--sheet); border-top: 2px solid var(--mark); display: flex; flex-wrap: wrap; gap: .375rem .75rem; align-items: center; }
#standing { flex: 1 1 8rem; }
#verdicts { flex: 1 0 100%; order: -1; }
#parts-box[open], #remarks { flex: 1 0 100%; }
#decide .turn button, #decide .more button { min-height: 2.25rem; padding: .125rem .5rem; font-size: .9375rem; }
#decide h3 { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.turn, .verdicts, .more { display: flex; flex-wrap: wrap; gap: .375rem; }
#standing { font-size: .9375rem; }
#remarks { padding: 0; list-style: none; font-size: .9375rem; }
fieldset { border: 1px solid var(--line); border-radius: .25rem; margin: .25rem 0; }
#parts label { display: inline-flex; align-items: center; min-height: 2rem; margin-right: 1rem; }
dialog { scroll-padding-bottom: 9rem; width: min(46rem, calc(100vw - 1.5rem)); max-height: calc(100vh - 1.5rem); padding: 1rem; border: 2px solid var(--mark); border-radius: .375rem; background: var(--ground); color: var(--ink); }
dialog.wide { width: min(72rem, calc(100vw - 1.5rem)); }
dialog::backdrop { background: rgb(10 16 18 / .55); }
dialog h2 { font-size: 1.375rem; margin-bottom: .5rem; }
dialog form, dialog .stack { display: grid; gap: .75rem; align-content: start; }
dialog .fault { color: var(--warn); font-weight: bold; }
dialog .fault:empty, #dialog-said:empty { position: absolute; }
#dialog-said { margin-top: .5rem; color: var(--mark); }
dialog .foot { position: sticky; bottom: -1rem; margin: 0 -1rem -1rem; padding: .5rem 1rem 1rem; display: grid; gap: .375rem; background: var(--ground); border-top: 1px solid var(--line); }
dialog .acts { display: flex; flex-wrap: wrap; gap: .5rem; }
dialog label { display: block; font-weight: bold; }
dialog label.inline { display: inline; }
dialog .hint { color: var(--quiet); font-size: .9375rem; }
dialog ul.plainly { padding-left: 1.25rem; }
dialog ul.ways { padding: 0; list-style: none; display: grid; gap: .25rem; }
dialog textarea.text { min-height: 12rem; }
kbd { display: inline-block; min-width: 1.75rem; padding: 0 .375rem; border: 1px solid var(--quiet); border-radius: .25rem; text-align: center; font: .9375rem ui-monospace, monospace; }
#print { display: none; }
.box { display: inline-block; width: .875rem; height: .875rem; border: 1px solid currentColor; vertical-align: -.125rem; margin-right: .375rem; }
@media (max-width: 43.99rem) { #verdicts:not(.all) > :nth-child(n + 2):not(.fold) { display: none; } .verdicts .main { flex: 1 1 auto; } #standing { flex-basis: auto; order: 1; } #parts-box { order: 2; } #parts-box summary { font-size: .9375rem; } dialog .acts button { padding: .25rem .625rem; font-size: .9375rem; } dialog h2 { font-size: 1.1875rem; } #decide .more { margin-left: auto; } #decide { gap: .375rem; } html { scroll-padding-bottom: 12rem; } .top { padding-bottom: .5rem; } .top .tools button { padding: .25rem .5rem; font-size: .9375rem; } #finish-open { margin-left: auto; } }
@media (min-width: 44rem) { .verdicts .fold { display: none; } .top { grid-template-columns: 1fr auto; align-items: center; } .top .tools { grid-row: 1; grid-column: 2; } .two { display: grid; grid-template-columns: 1fr 22rem; gap: 1.25rem; } }
@media (min-width: 70rem) { .frame { display: grid; grid-template-columns: 17rem 1fr; } nav { max-height: calc(100vh - 6rem); overflow: auto; position: sticky; top: 0; } #card { display: grid; grid-template-columns: auto minmax(20rem, 1fr); gap: 0 2rem; align-items: start; } #card .head { grid-column: 1 / -1; } #card .sides { flex-wrap: nowrap; flex-direction: row; } #card figure { flex: 0 0 17rem; } #card .sides.lying { flex-direction: column; } #card .lying figure { flex: none; width: 32rem; max-width: 44vw; } .told section:first-child { border-top: 0; padding-top: 0; } .told section:first-child h3 { margin-bottom: .25rem; } }
@media (prefers-reduced-motion: no-preference) { dialog[open] { animation: come .12s ease-out; } @keyframes come { from { opacity: 0; } } }
@media print {
  :root { color-scheme: light; --ground: #fff; --sheet: #fff; --ink: #000; --quiet: #444; --line: #999; --mark: #000; --in: #fff; --out: #fff; --warn: #000; }
  body > :not(#print) { display: none !important; }
  html { font-size: 9pt; }
  #print { display: block; }
  #print .told { columns: 2; column-gap: 8mm; }
  #print section { break-inside: avoid; }
  #print article { break-after: page; }
  #print figure { flex: 0 0 63.5mm; }
  #print .verdicts { margin-top: 1rem; gap: .375rem 1.25rem; border-top: 1px solid #000; padding-top: .5rem; }
}
`;
