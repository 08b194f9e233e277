import type { Decision } from '../../../../schema/index.js';
import { plainBio, rewritten, tidied } from '../bio-words.js';
import { sayField } from '../now-words.js';
import type { PageCard, PageWords, Setter } from '../page-data.js';
import { ask, close } from './dialog.js';
import { byId, labelled, make } from './dom.js';

export type Changes = NonNullable<Decision['changes']>;

/** Milliseconds after the last key before a card is set anew. */
const PAUSE = 120;

/** A field that can be rewritten. */
interface Field {
  readonly field: string;
  readonly was: string;
  readonly input: HTMLInputElement | HTMLTextAreaElement;
}

/** The new words of a card, or what is wrong with them. */
type Reading =
  { readonly words: PageWords; readonly changes: Changes } | { readonly wrong: string };

/** Takes new words for a card, and sets it with them as they are typed. */
export class Rewriting {
  constructor(readonly setter: () => Promise<Setter>) {}

  ask(card: PageCard, words: PageWords, before: Changes, take: (changes: Changes) => void): void {
    const fields = fieldsOf(words, before);
    const faults = make('p', '', { class: 'hint', role: 'status', id: 'fit' });
    const sides = make('div', '', { class: 'stack' });
    const held = words.bio.flat().filter((run) => run.held);
    const hint = held.length === 0 ? '' : heldHint(held.map(({ text }) => text));
    const rows = fields.map(({ field, input }, at) =>
      labelled(sayField(field), input, `field-${String(at)}`),
    );
    const typed = make('div', [...rows, make('p', hint, { class: 'hint' })], { class: 'stack' });
    const body = [make('div', [typed, make('div', [sides])], { class: 'two' })];
    const art = byId('card', HTMLElement).querySelector('image')?.getAttribute('href') ?? null;
    let isSet: Promise<string> = Promise.resolve('');
    let timer = 0;
    const setNow = (): void => {
      clearTimeout(timer);
      timer = 0;
      isSet = this.#set(readFields(words, fields), art, faults, sides);
    };
    typed.addEventListener('input', () => {
      clearTimeout(timer);
      timer = window.setTimeout(setNow, PAUSE);
    });
    const act = (): string | null => {
      const reading = readFields(words, fields);
      if ('wrong' in reading) return reading.wrong;
      if (reading.changes.length === 0) return 'Nothing is changed: change a text, or approve it.';
      setNow();
      void isSet.then((fault) => {
        if (fault !== '') return;
        close();
        take(reading.changes);
      });
      return null;
    };
    ask({
      title: `Approved with changes: ${card.heading}`,
      body,
      accept: ['Accept the changes', act],
      status: faults,
      wide: true,
    });
    setNow();
  }

  /** Draws the card with its new words and says how it fits; returns what keeps it from printing. */
  async #set(
    reading: Reading,
    art: string | null,
    faults: HTMLElement,
    sides: HTMLElement,
  ): Promise<string> {
    if ('wrong' in reading) {
      faults.className = 'fault';
      faults.textContent = reading.wrong;
      return reading.wrong;
    }
    const { set } = await this.setter();
    const { front, back, faults: found } = set(reading.words, art);
    const fault = found.join(' ');
    faults.className = fault === '' ? 'hint' : 'fault';
    faults.textContent = fault === '' ? 'It fits.' : `${fault} It can be accepted when it fits.`;
    sides.innerHTML = [back, front]
      .filter((svg) => svg !== '')
      .map((svg) => `<div class="drawn">${svg}</div>`)
      .join('');
    return fault;
  }
}

function heldHint(texts: readonly string[]): string {
  return `Held words stay as they are: ${texts.map((text) => `“${text}”`).join(', ')}.`;
}

function fieldsOf({ bio, rest }: PageWords, before: Changes): readonly Field[] {
  const field = (name: string, was: string, input: Field['input']): Field => {
    input.value = before.find((change) => change.field === name)?.text ?? was;
    return { field: name, was, input };
  };
  return [
    field('name', rest.name, make('input')),
    ...(bio.length === 0
      ? []
      : [field('bio', plainBio(bio), make('textarea', '', { class: 'text' }))]),
    ...rest.facts.map(({ name, value }) => field(`facts.${name}`, value, make('input'))),
    ...Object.entries(rest.texts).map(([zone, text]) =>
      field(`texts.${zone}`, text, make('textarea')),
    ),
  ];
}

function readFields(words: PageWords, fields: readonly Field[]): Reading {
  const changes = fields.flatMap(({ field, was, input }) => {
    const text = input instanceof HTMLTextAreaElement ? tidied(input.value) : input.value.trim();
    return text === was || text === tidied(was) ? [] : [{ field, text }];
  });
  const empty = changes.find(({ text }) => text === '');
  if (empty) return { wrong: `${sayField(empty.field)}: a text cannot be empty.` };
  const change = (field: string): string | undefined =>
    changes.find((each) => each.field === field)?.text;
  const { rest } = words;
  const bio = change('bio');
  const anew = bio === undefined ? { bio: words.bio } : rewritten(words.bio, bio);
  if ('lost' in anew) {
    return { wrong: `These words are held and must stay as they are: “${anew.lost}”.` };
  }
  const facts = rest.facts.map(({ name, value }) => ({
    name,
    value: change(`facts.${name}`) ?? value,
  }));
  const texts = Object.entries(rest.texts).map(
    ([zone, text]) => [zone, change(`texts.${zone}`) ?? text] as const,
  );
  return {
    changes,
    words: {
      ...words,
      bio: anew.bio,
      rest: {
        ...rest,
        name: change('name') ?? rest.name,
        facts,
        texts: Object.fromEntries(texts),
      },
    },
  };
}
