import { createHash } from 'node:crypto';

import type {
  CardAnswer,
  CardLook,
  Conflict,
  DeskFinding,
  DraftAnswer,
  DrawnZone,
  Edit,
  FixAnswer,
  SavedAnswer,
  StatusAnswer,
  StatusRow,
  Trouble,
  TypedCard,
  ZoneFit,
} from '../../../pipeline/desk/protocol.js';

/** A card that is made up: its zone holds two lines of four words, and `bad` is a word to mend. */
export class MadeUpCard {
  static readonly key = 'high-water/crew/c001';
  #before: TypedCard | null = null;

  constructor(
    readonly name: string,
    public copy: string,
    public state = 'draft',
  ) {}

  get digest(): string {
    return createHash('sha256').update(JSON.stringify(this.typed())).digest('hex');
  }

  typed(copy = this.copy): TypedCard {
    const fields = { number: '1', name: this.name, spoiler: 'open', state: this.state };
    return { text: `---\nname: ${JSON.stringify(this.name)}\n---\n${copy}\n`, copy, fields };
  }

  edited(edit: Edit): TypedCard {
    return this.typed('copy' in edit ? (edit.copy ?? this.copy) : this.copy);
  }

  row(): StatusRow {
    return {
      card: MadeUpCard.key,
      set: 'high-water',
      subset: 'crew',
      subsetTitle: 'Crew and Craft',
      number: '1',
      name: this.name,
      state: this.state === 'ready' ? 'handed in' : 'draft',
      writer: 'jonah',
      writerName: 'Jonah Prewett',
      waitsFor: [],
      level: 'open',
      levelLabel: 'Known from the trailers',
      opens: 'open',
      fit: fitOf(this.copy),
      errors: findingsIn(this.copy).length,
      warnings: 0,
      blocks: [],
      remarks: [],
      unsaved: false,
    };
  }

  status(): StatusAnswer {
    return {
      property: 'The Ferrywrights',
      marked: 'Later episodes',
      zone: 'Europe/London',
      cards: [this.row()],
      people: [{ id: 'jonah', name: 'Jonah Prewett', role: 'writer' }],
      levels: [{ id: 'open', label: 'Known from the trailers' }],
      sheet: null,
      others: [],
      settled: true,
      looked: true,
    };
  }

  answer(): CardAnswer {
    return {
      card: MadeUpCard.key,
      file: `${MadeUpCard.key}.md`,
      digest: this.digest,
      saved: this.typed(),
      draft: null,
      form: ['number', 'name', 'spoiler'].map((key) => ({
        key,
        required: true,
        description: null,
        expected: null,
        shape: { type: 'text', suggestions: [] },
      })),
      look: this.look(this.copy),
      row: this.row(),
      history: [],
      change: null,
      canUndo: false,
      canRedo: false,
      readOnly: null,
      previous: null,
      next: null,
    };
  }

  look(copy: string): CardLook {
    return {
      sides: {
        why: null,
        front: null,
        back: {
          width: 180,
          height: 252,
          extent: { x: 0, y: 0, width: 180, height: 252 },
          ground: [],
          art: null,
          strips: [],
          zones: [zoneOf(copy)],
        },
        fits: [fitOf(copy)],
      },
      findings: findingsIn(copy),
      settled: true,
      names: [],
    };
  }

  draft(edit: Edit, sequence: number): DraftAnswer {
    const typed = this.edited(edit);
    const { sides, names } = this.look(typed.copy);
    return {
      card: MadeUpCard.key,
      sequence,
      look: { sides, names },
      typed,
      change: null,
      unsaved: typed.copy !== this.copy,
      unwritten: [],
    };
  }

  mended(edit: Edit, sequence: number): FixAnswer {
    const copy = this.edited(edit).copy.replace('bad', 'good');
    return { ...this.draft({ copy }, sequence), look: this.look(copy) };
  }

  save(base: string, edit: Edit): SavedAnswer | Conflict {
    const typed = this.edited(edit);
    if (base !== this.digest) {
      return {
        error: 'conflict',
        message: 'The file was changed since.',
        card: MadeUpCard.key,
        base: this.#before,
        yours: typed,
        disk: this.typed(),
        digest: this.digest,
        merged: null,
      };
    }
    const written = typed.copy !== this.copy;
    this.copy = typed.copy;
    return { saved: true, written, card: this.answer() };
  }

  /** Somebody else saves the card. */
  changeOutside(copy: string): void {
    this.#before = this.typed();
    this.copy = copy;
  }
}

export function trouble(message: string): Trouble {
  return { error: 'refused', message };
}

function linesOf(copy: string): readonly (readonly string[])[] {
  const words = copy.split(/\s+/).filter(Boolean);
  return Array.from({ length: Math.ceil(words.length / 4) }, (_, at) =>
    words.slice(at * 4, at * 4 + 4),
  );
}

function fitOf(copy: string): ZoneFit {
  const over = Math.max(0, linesOf(copy).length - 2);
  const free = Math.max(0, 2 - linesOf(copy).length);
  const lines = (count: number) => `${count} line${count === 1 ? '' : 's'}`;
  const tight = free > 0 ? `${lines(free)} free` : 'no line free';
  return {
    zone: 'bio',
    side: 'back',
    says: over > 0 ? `overset by ${lines(over)}` : tight,
    fits: over === 0,
    oversetLines: over,
    freeLines: free,
    wordsToCut: over * 4,
    size: 6.8,
    shrunk: false,
  };
}

function zoneOf(copy: string): DrawnZone {
  return {
    zone: 'bio',
    box: { x: 10, y: 20, width: 160, height: 20 },
    colour: '#000000',
    size: 8,
    fits: fitOf(copy).fits,
    lines: linesOf(copy).map((words, at) => ({
      baseline: 28 + at * 10,
      overset: at > 1,
      pieces: [
        {
          font: 'none',
          tracking: 0,
          ligatures: true,
          words: words.map((text, which) => ({ text, x: 10 + which * 40 })),
        },
      ],
    })),
  };
}

function findingsIn(copy: string): readonly DeskFinding[] {
  const from = copy.indexOf('bad');
  if (from < 0) return [];
  const place = { file: `${MadeUpCard.key}.md`, line: 4, column: from + 1 };
  return [
    {
      id: 'one',
      finding: {
        rule: 'name-near',
        severity: 'error',
        message: 'bad is not good',
        set: 'high-water',
        card: 'crew/c001',
        ...place,
        endLine: 4,
        endColumn: from + 4,
        related: [],
        fix: 'good',
      },
      place: { in: 'copy', from, to: from + 3 },
      fixable: true,
    },
  ];
}
