import { useState } from 'preact/hooks';
import type { FieldShape } from '../../protocol.js';
import type { Fields } from '../card/field-changes.js';
import { FieldInput, emptyOf, type InputProps } from './input.js';
import { nameOfPath } from './names.js';

type RecordShape = Extract<FieldShape, { readonly type: 'record' }>;

/** A map of any keys, each with its value. */
export function RecordInput(
  props: InputProps & { readonly shape: RecordShape; readonly fields: Fields },
) {
  const { shape, fields, path, change, described } = props;
  const without = (key: string): void =>
    change(Object.fromEntries(Object.entries(fields).filter(([each]) => each !== key)));
  return (
    <div>
      {Object.entries(fields).map(([key, value]) => (
        <div class="list-item" key={key}>
          <div class="field">
            <label for={nameOfPath([...path, key])}>{key}</label>
            <FieldInput
              shape={shape.values}
              path={[...path, key]}
              value={value}
              change={(next) => change({ ...fields, [key]: next })}
              described={described}
              isRequired
            />
          </div>
          <button type="button" onClick={() => without(key)}>
            Take off<span class="unseen"> {key}</span>
          </button>
        </div>
      ))}
      <AddKey
        id={`${nameOfPath(path)}-key`}
        of={String(path.at(-1) ?? '')}
        choices={shape.keys.map(({ text }) => text).filter((text) => !Object.hasOwn(fields, text))}
        add={(key) => {
          if (!Object.hasOwn(fields, key)) change({ ...fields, [key]: emptyOf(shape.values) });
        }}
      />
    </div>
  );
}

function AddKey(props: {
  readonly id: string;
  readonly of: string;
  readonly choices: readonly string[];
  readonly add: (key: string) => void;
}) {
  const { id, of, choices, add } = props;
  const [key, setKey] = useState('');
  const press = (): void => {
    if (key.trim() === '') return;
    add(key.trim());
    setKey('');
  };
  return (
    <div class="list-item">
      <div class="field">
        <label for={id}>One more of {of}</label>
        <input
          id={id}
          value={key}
          list={`${id}-list`}
          autocomplete="off"
          onInput={({ currentTarget }) => setKey(currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            press();
          }}
        />
        <datalist id={`${id}-list`}>
          {choices.map((choice) => (
            <option key={choice} value={choice} />
          ))}
        </datalist>
      </div>
      <button type="button" onClick={press}>
        Add<span class="unseen"> to {of}</span>
      </button>
    </div>
  );
}
