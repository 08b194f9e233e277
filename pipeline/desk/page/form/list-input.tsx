import type { FieldShape, FieldValue } from '../../protocol.js';
import { FieldInput, emptyOf, type InputProps } from './input.js';

/** A list, item by item. */
export function ListInput(
  props: InputProps & { readonly items: FieldShape; readonly values: readonly FieldValue[] },
) {
  const { items, values, path, change, described } = props;
  const name = String(path.at(-1) ?? '');
  const without = (at: number): void => change(values.filter((_, which) => which !== at));
  return (
    <div>
      {values.map((value, at) => (
        <div class="list-item" key={at}>
          <FieldInput
            shape={items}
            path={[...path, at]}
            value={value}
            change={(next) => change(values.map((each, which) => (which === at ? next : each)))}
            described={described}
            named={`${name} ${at + 1}`}
            isRequired
          />
          <button type="button" onClick={() => without(at)}>
            Take off<span class="unseen"> {`${name} ${at + 1}`}</span>
          </button>
        </div>
      ))}
      <button type="button" class="plain" onClick={() => change([...values, emptyOf(items)])}>
        Add to {name}
      </button>
    </div>
  );
}
