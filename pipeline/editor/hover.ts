import type { YamlPath } from '../model/index.js';
import { optionsAt } from '../read/index.js';
import type { Ground } from './ground.js';
import { bodyFrom, linkAt, paragraphAt } from './links.js';
import { formsOf, holdOfForm, nameAt, type NameForm } from './names.js';
import { sayOpening } from './openings.js';
import { wordsOf } from './schema-words.js';
import type { Line, Piece } from './shown.js';
import { capital, linesOfCount, linesOfThing } from './told-things.js';
import { kindOfValue } from './value-kinds.js';
import { schemasAt, yamlPlaceAt, type YamlPlace } from './yaml-place.js';

/** What is told of a place of a file, and the stretch that it is told of. */
export interface Told {
  readonly lines: readonly Line[];
  readonly from: number;
  readonly to: number;
}

/** What an editor tells of what stands at an offset; null where there is nothing to tell. */
export function hoverAt(ground: Ground, offset: number): Told | null {
  const { path, text } = ground;
  const start = bodyFrom(path, text);
  if (start !== null && offset >= start) return hoverInCopy(ground, start, offset);
  const place = yamlPlaceAt(path, text, offset);
  return place && hoverInYaml(ground, place, offset);
}

function hoverInCopy(ground: Ground, start: number, offset: number): Told | null {
  const { path, text } = ground;
  const link = linkAt(path, text, offset);
  const paragraph = paragraphAt(text, start, offset);
  const name = hoverOnName(paragraph.text, paragraph.from, offset, ground);
  if (!link) return name;
  const lines = linesOfLink(link, ground);
  if (!lines) return name;
  const { from, to } = link;
  return { lines: name ? [...lines, ...name.lines] : lines, from, to };
}

function linesOfLink(
  { kind, id }: { readonly kind: 'held' | 'count'; readonly id: string },
  ground: Ground,
): readonly Line[] | null {
  if (kind === 'held') return linesOfThing('hold', id, ground);
  if (id === 'none') return [['A number of the story, which counts nothing of the set']];
  return linesOfCount(id, ground);
}

function hoverInYaml(ground: Ground, place: YamlPlace, offset: number): Told | null {
  const { from, to } = place;
  if (place.what === 'key') {
    const lines = linesOfKey(ground, place.path);
    return lines && { lines, from, to };
  }
  const kind = kindOfValue(ground.shape.kind, place.path);
  const thing = kind && linesOfThing(kind, place.text, ground);
  if (thing) return { lines: thing, from, to };
  return hoverOnName(ground.text.slice(from, to), from, offset, ground);
}

function linesOfKey({ shape }: Ground, path: YamlPath): readonly Line[] | null {
  const map = path.slice(0, -1);
  const key = String(path.at(-1) ?? '');
  const { description, expected, choices } = wordsOf(optionsAt(schemasAt(shape.schema, map), key));
  const listed: Line = choices.flatMap((choice, at): readonly Piece[] =>
    at === 0 ? ['One of ', { code: choice }] : [', ', { code: choice }],
  );
  const lines: readonly Line[] = [
    ...(description === null ? [] : [[description]]),
    ...(choices.length > 1 ? [listed] : expected === null ? [] : [[`Expected: ${expected}`]]),
  ];
  if (lines.length === 0) return null;
  return [[{ code: key }], ...lines];
}

function hoverOnName(text: string, from: number, offset: number, ground: Ground): Told | null {
  const found = nameAt(text, offset - from, ground.content.names);
  const [first] = found?.forms ?? [];
  if (!found || !first) return null;
  const bearers = [...new Map(found.forms.map((form) => [form.name, form])).values()];
  const lines = bearers.flatMap((form) => linesOfName(form, ground));
  return { lines, from: from + found.from, to: from + found.to };
}

/** A name: what bears it, how it is said, its forms, what to avoid, when it opens. */
export function linesOfName(form: NameForm, ground: Ground): readonly Line[] {
  const { name } = form;
  const { schedule, clock, property } = ground;
  const forms = formsOf(name);
  const own = forms.filter(({ avoid, form: word }) => avoid === null && word !== name.name);
  const hold = holdOfForm({ ...form, own: {} }, schedule);
  const level = property.levels.find(({ id }) => id === name.level);
  const later = sayOpening(schedule, holdOfForm(form, schedule), clock);
  const opening = sayOpening(schedule, hold, clock);
  return [
    [{ strong: name.name }, `, ${name.kind}`],
    ...(name.say === undefined ? [] : [[`Said ${name.say}`]]),
    ...(own.length === 0 ? [] : [[`Also ${own.map((each) => sayForm(each, ground)).join(', ')}`]]),
    ...forms.flatMap(({ form: word, avoid }) =>
      avoid === null ? [] : [[`Not ${word}: ${avoid.use}${because(avoid.why)}`]],
    ),
    ...(name.style === 'italic' ? [['In italics in running text']] : []),
    ...(name.billing === 'full' ? [['Always in full']] : []),
    [`${level?.label ?? name.level} (`, { code: name.level }, `): ${opening}`],
    ...(later === opening ? [] : [[`${form.form}: ${later}`]]),
    ...(name.publicName === undefined ? [] : [[`Public name: ${name.publicName}`]]),
  ];
}

function because(why: string | undefined): string {
  return why === undefined ? '' : ` (${why})`;
}

/** A form, with when it opens if that is later than the name. */
function sayForm(form: NameForm, { schedule, clock }: Ground): string {
  const { own } = form;
  if (own.level === undefined && own.embargo === undefined) return form.form;
  return `${form.form} (${sayOpening(schedule, holdOfForm(form, schedule), clock)})`;
}

/** For a list: what bears a name, and when it opens. */
export function sayBriefly(form: NameForm, { schedule, clock }: Ground): string {
  return capital(`${form.name.kind}, ${sayOpening(schedule, holdOfForm(form, schedule), clock)}`);
}
