import { useState } from 'preact/hooks';
import type { ProofRequest, StatusAnswer } from '../../protocol.js';
import { subsetOf } from '../status/filters.js';

const KINDS = [
  ['annotated', 'Annotated: a card a page'],
  ['nine-up', 'Nine cards a page'],
  ['deck', 'Cards in their true size'],
  ['overset', 'Only what is overset'],
] as const;

const PAPERS = [
  ['a4', 'A4'],
  ['letter', 'Letter'],
] as const;

/** Asks for a proof of a card, a subset or a set. */
export function ProofForm(props: {
  readonly status: StatusAnswer;
  readonly of: string;
  readonly ask: (request: ProofRequest) => void;
}) {
  const { status, ask } = props;
  const [of, setOf] = useState(props.of);
  const [kind, setKind] = useState<(typeof KINDS)[number][0]>('annotated');
  const [paper, setPaper] = useState<(typeof PAPERS)[number][0]>('a4');
  const card = status.cards.find((row) => row.card === of);
  return (
    <form
      class="panel"
      aria-labelledby="proof-title"
      onSubmit={(event) => {
        event.preventDefault();
        ask({ ...whatOf(of), kind, paper });
      }}
    >
      <h2 id="proof-title">Proof</h2>
      <div class="field">
        <label for="proof-of">Of what</label>
        <select
          id="proof-of"
          value={of}
          onChange={({ currentTarget }) => setOf(currentTarget.value)}
        >
          <option value="">Everything</option>
          {card && (
            <option value={card.card}>
              Card: {[card.number, card.name].filter((words) => words !== null).join(' · ')}
            </option>
          )}
          {setsOf(status).map(([id, title]) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </div>
      <Select id="proof-kind" words="How" choices={KINDS} value={kind} change={setKind} />
      <Select id="proof-paper" words="Paper" choices={PAPERS} value={paper} change={setPaper} />
      <div class="acts">
        <button class="main">Make the proof</button>
      </div>
    </form>
  );
}

function Select<T extends string>(props: {
  readonly id: string;
  readonly words: string;
  readonly choices: readonly (readonly [T, string])[];
  readonly value: T;
  readonly change: (value: T) => void;
}) {
  const { id, words, choices, value, change } = props;
  return (
    <div class="field">
      <label for={id}>{words}</label>
      <select
        id={id}
        value={value}
        onChange={({ currentTarget }) => {
          const found = choices.find(([each]) => each === currentTarget.value);
          if (found) change(found[0]);
        }}
      >
        {choices.map(([each, said]) => (
          <option key={each} value={each}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Sets and their subsets, by what a proof is asked of with. */
function setsOf({ cards, sheet }: StatusAnswer): readonly (readonly [string, string])[] {
  const found = new Map<string, string>();
  for (const row of cards) {
    const title = sheet?.sets.find(({ set }) => set === row.set)?.title ?? row.set;
    found.set(row.set, `Set: ${title}`);
    found.set(subsetOf(row), `Subset: ${row.subsetTitle} (${title})`);
  }
  return [...found];
}

/** `set`, `set/subset` or `set/subset/card`. */
function whatOf(of: string): Pick<ProofRequest, 'set' | 'subset' | 'card'> {
  const [set, subset, card] = of.split('/');
  if (set === undefined || set === '') return {};
  if (card !== undefined) return { card: of };
  return subset === undefined ? { set } : { set, subset };
}
