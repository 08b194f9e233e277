import type { StatusAnswer, StatusRow } from '../../protocol.js';
import { subsetOf } from './filters.js';

interface Total {
  readonly title: string;
  readonly cards: number;
  readonly states: ReadonlyMap<string, number>;
  readonly overset: number;
  readonly errors: number;
  readonly warnings: number;
}

/** What the cards of each subset add up to, as the sheet shows them. */
export function Totals({ rows }: { readonly rows: StatusAnswer['cards'] }) {
  const totals = [...bySubset(rows)].map(([key, own]) => ({ key, ...totalOf(own) }));
  return (
    <div class="scroll" role="region" aria-label="Totals by subset" tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col">Subset</th>
            <th scope="col" class="figure">
              Cards
            </th>
            <th scope="col">States</th>
            <th scope="col" class="figure">
              Overset
            </th>
            <th scope="col" class="figure">
              Errors
            </th>
            <th scope="col" class="figure">
              Warnings
            </th>
          </tr>
        </thead>
        <tbody>
          {totals.map((total) => (
            <tr key={total.key}>
              <th scope="row">{total.title}</th>
              <Figures total={total} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All</th>
            <Figures total={totalOf(rows)} />
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

function Figures({ total }: { readonly total: Total }) {
  const { cards, states, overset, errors, warnings } = total;
  return (
    <>
      <td class="figure">{cards}</td>
      <td>{[...states].map(([state, count]) => `${count} ${state}`).join(', ')}</td>
      <td class="figure">{overset}</td>
      <td class="figure">{errors}</td>
      <td class="figure">{warnings}</td>
    </>
  );
}

function bySubset(rows: readonly StatusRow[]): ReadonlyMap<string, readonly StatusRow[]> {
  const found = new Map<string, StatusRow[]>();
  for (const row of rows) {
    const own = found.get(subsetOf(row));
    if (own) own.push(row);
    else found.set(subsetOf(row), [row]);
  }
  return found;
}

function totalOf(rows: readonly StatusRow[]): Total {
  const states = new Map<string, number>();
  let [overset, errors, warnings] = [0, 0, 0];
  for (const row of rows) {
    const state = row.state ?? 'unreadable';
    states.set(state, (states.get(state) ?? 0) + 1);
    if (row.fit?.fits === false) overset += 1;
    errors += row.errors;
    warnings += row.warnings;
  }
  return {
    title: rows[0]?.subsetTitle ?? '',
    cards: rows.length,
    states,
    overset,
    errors,
    warnings,
  };
}
