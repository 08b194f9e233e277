import { useEffect, useState } from 'preact/hooks';
import type { StatusAnswer } from '../../protocol.js';
import { counted } from '../parts/counted.js';
import { useKeys } from '../shell/keys.js';
import { Title } from '../shell/title.js';
import { FilterFields } from './filter-fields.js';
import { filtered, keepFilters, keptFilters } from './filters.js';
import { Rows } from './rows.js';
import { Totals } from './totals.js';

/** How every card stands. */
export function StatusScreen({ status }: { readonly status: StatusAnswer | null }) {
  const [filters, setFilters] = useState(keptFilters);
  useEffect(() => keepFilters(filters), [filters]);
  useKeys('Status sheet', [
    { chord: '/', does: 'To the words to look for', press: () => focusOn('#filter-text') },
    { chord: 'c', does: 'To the first card', press: () => focusOn('.cards tbody th a') },
    ...STEPS,
  ]);
  if (!status) return <Title words="Status sheet" more="Fetching it…" />;
  const rows = filtered(status.cards, filters);
  return (
    <>
      <Title words="Status sheet" more={[status.property, ...saysWhether(status)].join(' · ')} />
      <FilterFields status={status} filters={filters} change={setFilters} />
      <p id="listed" role="status">
        {counted(rows.length, 'card')} of {status.cards.length}
      </p>
      <Rows rows={rows} looked={status.looked} />
      <h2>Totals by subset</h2>
      {status.looked ? (
        <Totals rows={rows} />
      ) : (
        <p class="quiet">They are counted once all rules have looked.</p>
      )}
      <Others others={status.others} />
    </>
  );
}

/** Whether what is said of the cards is known yet. */
function saysWhether({ looked, settled }: StatusAnswer): readonly string[] {
  if (!looked) return ['fits and findings come once all rules have looked; you can write already'];
  return settled ? [] : ['the rules are still looking'];
}

/** What the list of shortcuts says of keys that the table itself takes. */
const STEPS = [
  { chord: 'ArrowDown', does: 'In the table: next card', press: () => undefined },
  { chord: 'ArrowUp', does: 'In the table: card before', press: () => undefined },
  { chord: 'Enter', does: 'Open the card', press: () => undefined },
].map((key) => ({ ...key, isElsewhere: true }));

function focusOn(selector: string): void {
  document.querySelector<HTMLElement>(selector)?.focus();
}

function Others({ others }: { readonly others: StatusAnswer['others'] }) {
  if (others.length === 0) return null;
  return (
    <details class="panel">
      <summary>{counted(others.length, 'finding')} in files that are no card</summary>
      <ul class="findings">
        {others.map(({ id, finding }) => (
          <li key={id} class={finding.severity}>
            <p>{finding.message}</p>
            <p class="small quiet">
              {finding.file}, line {finding.line} · {finding.rule}
            </p>
          </li>
        ))}
      </ul>
    </details>
  );
}
