import { createInterface, type Interface } from 'node:readline/promises';

import {
  answered,
  offered,
  questionsFor,
  writeSpec,
  type Answers,
  type Ground,
  type Part,
  type Question,
} from '../mend/index.js';
import { Cancelled } from './interrupts.js';
import type { Talk } from './io.js';
import { plain } from './report-text.js';

/** A talk with whoever starts a set. It writes nothing but questions. */
export interface Conversation {
  /**
   * Asks what was not answered yet; each answer is looked at as it is given.
   * @throws Cancelled at Ctrl-C, and where nobody answers any more.
   */
  readonly askAll: (answers: Answers, ground: Ground) => Promise<Answers>;
  /** Yes or no; no, if nothing is said. */
  readonly confirms: (question: string) => Promise<boolean>;
  readonly close: () => void;
}

const OPENING =
  'An empty answer takes what stands in brackets. ? explains a question. Ctrl-C leaves nothing.\n\n';

/** Opens a talk at a terminal. */
export function conversation({ input, output }: Talk): Conversation {
  const line = new Lines(createInterface({ input, output }));
  const say = (text: string): void => void output.write(text);
  return {
    askAll: async (given, ground) => {
      say(OPENING);
      let answers = given;
      for (const question of questionsFor(ground)) {
        if (answers.has(question.key)) continue;
        answers = await (question.parts
          ? askList(question, question.parts, answers, ground, line, say)
          : askOne(question, answers, ground, line, say));
      }
      return answers;
    },
    confirms: async (question) => /^y(?:es)?$/i.test((await line.ask(`${question}? [no] `)).trim()),
    close: () => {
      line.close();
    },
  };
}

type Say = (text: string) => void;

async function askOne(
  { key, ask, help, needed }: Question,
  answers: Answers,
  ground: Ground,
  line: Lines,
  say: Say,
): Promise<Answers> {
  const usual = offered(key, answers, ground);
  for (;;) {
    const text = await line.asked(ask, help, usual, say);
    if (text === null && needed !== true) return answers;
    if (text === null) {
      say('  this needs an answer; ? explains it\n');
      continue;
    }
    const outcome = answered(answers, key, [text], ground);
    if (outcome.ok) return outcome.answers;
    sayWhy(outcome.why, say);
  }
}

/** Asks for one thing after another, part by part, until the first part is left empty. */
async function askList(
  { key, needed, ask, help }: Question,
  parts: readonly Part[],
  given: Answers,
  ground: Ground,
  line: Lines,
  say: Say,
): Promise<Answers> {
  let answers = given;
  const specs: string[] = [];
  say(`${ask}. ${help}\n`);
  for (;;) {
    const spec = await askParts(
      parts,
      specs,
      (text) => answered(given, key, text, ground),
      line,
      say,
    );
    if (spec === null && (specs.length > 0 || needed !== true)) return answers;
    if (spec === null) {
      say('  this needs an answer; ? explains it\n');
      continue;
    }
    const outcome = answered(given, key, [...specs, spec], ground);
    if (outcome.ok) {
      specs.push(spec);
      answers = outcome.answers;
    } else sayWhy(outcome.why, say);
  }
}

/** One thing by its parts; null if the first is left empty. What is refused is asked again. */
async function askParts(
  parts: readonly Part[],
  before: readonly string[],
  look: (specs: readonly string[]) => ReturnType<typeof answered>,
  line: Lines,
  say: Say,
): Promise<string | null> {
  const said = new Map<string, string>();
  for (const [place, { key, ask, help, usual }] of parts.entries()) {
    const offer = offerOf(
      key,
      usual(said, before.length),
      said,
      (spec) => look([...before, spec]),
      before.length,
    );
    if (key === 'lift' && offer === null) continue;
    for (;;) {
      const text = await line.asked(ask, help, offer, say);
      if (text === null && place === 0) return null;
      if (text === null && key !== 'numbers') break;
      if (text === null) {
        say('  this needs an answer; ? explains it\n');
        continue;
      }
      const spec = writeSpec(withPlaces(new Map(said).set(key, text), parts, before.length));
      const outcome = look([...before, spec]);
      if (outcome.ok) {
        said.set(key, text);
        break;
      }
      sayWhy(outcome.why, say);
    }
  }
  return writeSpec(said);
}

/** Numbers hold their place until they are asked for; so does an id, since a title may be held. */
function withPlaces(
  said: ReadonlyMap<string, string>,
  parts: readonly Part[],
  at: number,
): ReadonlyMap<string, string> {
  if (!parts.some(({ key }) => key === 'numbers')) return said;
  return new Map([['id', neutralId(at)], ['numbers', '1-1'], ...said]);
}

function neutralId(at: number): string {
  return `subset-${String(at + 1)}`;
}

/** What is offered for a part: of an id that tells what is held, or is taken, a neutral one. */
function offerOf(
  key: string,
  usual: string | null,
  said: ReadonlyMap<string, string>,
  look: (spec: string) => ReturnType<typeof answered>,
  at: number,
): string | null {
  if (key !== 'id' || usual === null || !said.has('title')) return usual;
  const spec = writeSpec(new Map([['numbers', '1-1'], ...said, ['id', usual]]));
  return look(spec).ok ? usual : neutralId(at);
}

function sayWhy(why: readonly string[], say: Say): void {
  for (const each of why) say(`  ${plain(each)}\n`);
}

/** Lines of a person, one for each question, even if they were typed before it was asked. */
class Lines {
  readonly #waiting: string[] = [];
  #next: ((line: string | null) => void) | null = null;
  #isOver = false;

  constructor(private readonly reader: Interface) {
    reader.on('line', (text) => {
      if (this.#next) this.#give(text);
      else this.#waiting.push(text);
    });
    reader.on('SIGINT', () => {
      reader.close();
    });
    reader.on('close', () => {
      this.#isOver = true;
      this.#give(null);
    });
  }

  close(): void {
    this.reader.close();
  }

  /** @throws Cancelled where nobody answers any more. */
  async ask(prompt: string): Promise<string> {
    this.reader.setPrompt(prompt);
    if (!this.#isOver) this.reader.prompt();
    const text = this.#waiting.shift() ?? (this.#isOver ? null : await this.#wait());
    if (text === null) throw new Cancelled();
    return text;
  }

  /** An answer, or what stands in brackets; null for neither. */
  async asked(ask: string, help: string, usual: string | null, say: Say): Promise<string | null> {
    for (;;) {
      const text = (await this.ask(`${ask}${usual === null ? '' : ` [${plain(usual)}]`}: `)).trim();
      if (text !== '?') return text === '' ? usual : text;
      say(`  ${help}\n`);
    }
  }

  #wait(): Promise<string | null> {
    return new Promise((resolve) => {
      this.#next = resolve;
    });
  }

  #give(line: string | null): void {
    const next = this.#next;
    this.#next = null;
    next?.(line);
  }
}
