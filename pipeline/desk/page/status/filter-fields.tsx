import type { StatusAnswer } from '../../protocol.js';
import { NO_FILTERS, filtersOf, subsetOf, type Filters } from './filters.js';

type Choice = readonly [value: string, words: string];

/** The fields that narrow the sheet. */
export function FilterFields(props: {
  readonly status: StatusAnswer;
  readonly filters: Filters;
  readonly change: (filters: Filters) => void;
}) {
  const { status, filters, change } = props;
  const { cards, people, levels } = status;
  const subsets = new Map(cards.map((row) => [subsetOf(row), row.subsetTitle]));
  const states = new Set(cards.map(({ state }) => state ?? 'unreadable'));
  const writers = new Map(
    cards.flatMap(({ writer, writerName }) =>
      writer === null ? [] : [[writer, writerName ?? writer] as const],
    ),
  );
  const set = (part: Partial<Filters>): void => change({ ...filters, ...part });
  return (
    <form class="filters" role="search" onSubmit={toFirst}>
      <div class="field">
        <label for="filter-text">Number, name or words</label>
        <input
          id="filter-text"
          type="search"
          spellcheck={false}
          value={filters.text}
          onInput={({ currentTarget }) => set({ text: currentTarget.value })}
        />
      </div>
      <Select
        id="filter-me"
        words="Who you are"
        any="Not said"
        value={filters.me}
        choices={people.map(({ id, name }) => [id, name])}
        change={(me) => change(filtersOf(me))}
      />
      <Select
        id="filter-writer"
        words="Who has it"
        any="Anybody"
        value={filters.writer}
        choices={[
          ...(filters.me === '' ? [] : [['me', 'Mine'] as const]),
          ...writers,
          ['none', 'Nobody'],
        ]}
        change={(writer) => set({ writer })}
      />
      <Select
        id="filter-subset"
        words="Subset"
        any="All"
        value={filters.subset}
        choices={[...subsets]}
        change={(subset) => set({ subset })}
      />
      <Select
        id="filter-state"
        words="State"
        any="Any"
        value={filters.state}
        choices={[...states].map((state) => [state, state])}
        change={(state) => set({ state })}
      />
      <Select
        id="filter-level"
        words="Level"
        any="Any"
        value={filters.level}
        choices={levels.map(({ id, label }) => [id, label])}
        change={(level) => set({ level })}
      />
      <Select
        id="filter-findings"
        words="Findings"
        any="Any"
        value={filters.findings}
        choices={[
          ['any', 'Some'],
          ['errors', 'Errors'],
          ['none', 'None'],
        ]}
        change={(value) => set({ findings: isFindings(value) ? value : '' })}
      />
      <button type="button" onClick={() => change({ ...NO_FILTERS, me: filters.me })}>
        Show all cards
      </button>
    </form>
  );
}

/** Enter in a field goes to the first card that was found. */
function toFirst(event: SubmitEvent): void {
  event.preventDefault();
  document.querySelector<HTMLElement>('.cards tbody th a')?.focus();
}

function isFindings(value: string): value is Filters['findings'] {
  return ['', 'any', 'errors', 'none'].includes(value);
}

function Select(props: {
  readonly id: string;
  readonly words: string;
  readonly any: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly change: (value: string) => void;
}) {
  const { id, words, any, value, choices, change } = props;
  return (
    <div class="field">
      <label for={id}>{words}</label>
      <select id={id} value={value} onChange={({ currentTarget }) => change(currentTarget.value)}>
        <option value="">{any}</option>
        {choices.map(([each, said]) => (
          <option key={each} value={each}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}
