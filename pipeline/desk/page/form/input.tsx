import { useState } from 'preact/hooks';
import type { FieldChoice, FieldPath, FieldShape, FieldValue } from '../../protocol.js';
import { isList, isMap } from '../card/field-changes.js';
import { Field } from './form.js';
import { ListInput } from './list-input.js';
import { nameOfPath } from './names.js';
import { RecordInput } from './record-input.js';

export interface InputProps {
  readonly shape: FieldShape;
  readonly path: FieldPath;
  readonly value: FieldValue;
  readonly change: (value: FieldValue) => void;
  /** The id of what explains it. */
  readonly described: string | null;
  /** What names it where no label does. */
  readonly named?: string;
  readonly isRequired: boolean;
}

/** What a value of a shape is to begin with. */
export function emptyOf(shape: FieldShape): FieldValue {
  if (shape.type === 'list') return [emptyOf(shape.items)];
  if (shape.type === 'record') return {};
  if (shape.type !== 'group') return '';
  const needed = shape.fields.filter(({ required }) => required);
  return Object.fromEntries(needed.map((model) => [model.key, emptyOf(model.shape)]));
}

/** The way to type or choose a value of any shape. */
export function FieldInput(props: InputProps) {
  const { shape, path, value, change } = props;
  if (shape.type === 'choice') return <Choice {...props} choices={shape.choices} />;
  if (shape.type === 'list') {
    // What may be one value or a list is shown as a list either way.
    return <ListInput {...props} items={shape.items} values={isList(value) ? value : [value]} />;
  }
  if (shape.type === 'record') {
    return <RecordInput {...props} shape={shape} fields={isMap(value) ? value : {}} />;
  }
  if (shape.type === 'group') {
    const fields = isMap(value) ? value : {};
    return (
      <div class="fields">
        {shape.fields.map((model) => (
          <Field
            key={model.key}
            model={model}
            path={[...path, model.key]}
            fields={fields}
            change={change}
          />
        ))}
      </div>
    );
  }
  return <Words {...props} suggestions={shape.suggestions} />;
}

/** From so many letters on, a field shows several lines. */
const LONG = 48;

function Words(props: InputProps & { readonly suggestions: readonly FieldChoice[] }) {
  const { path, value, change, described, named, isRequired, suggestions } = props;
  const id = nameOfPath(path);
  const text = typeof value === 'string' ? value : '';
  const [isLong] = useState(text.length > LONG);
  const common = {
    id,
    value: text,
    spellcheck: false,
    required: isRequired,
    ...(described === null ? {} : { 'aria-describedby': described }),
    ...(named === undefined ? {} : { 'aria-label': named }),
  };
  if (isLong) {
    return (
      <textarea {...common} rows={3} onInput={({ currentTarget }) => change(currentTarget.value)} />
    );
  }
  return (
    <>
      <input
        {...common}
        type="text"
        autocomplete="off"
        {...(suggestions.length === 0 ? {} : { list: `${id}-list`, role: undefined })}
        onInput={({ currentTarget }) => change(currentTarget.value)}
      />
      {suggestions.length > 0 && (
        <datalist id={`${id}-list`}>
          {suggestions.map(({ text: each, label }) => (
            <option key={each} value={each}>
              {label ?? each}
            </option>
          ))}
        </datalist>
      )}
    </>
  );
}

function Choice(props: InputProps & { readonly choices: readonly FieldChoice[] }) {
  const { path, value, change, described, named, isRequired, choices } = props;
  const now = typeof value === 'string' ? value : '';
  const isOdd = now !== '' && !choices.some(({ text }) => text === now);
  return (
    <select
      id={nameOfPath(path)}
      value={now}
      required={isRequired}
      {...(described === null ? {} : { 'aria-describedby': described })}
      {...(named === undefined ? {} : { 'aria-label': named })}
      onChange={({ currentTarget }) => change(currentTarget.value)}
    >
      {(!isRequired || now === '') && <option value="">not said</option>}
      {isOdd && <option value={now}>{now} (not valid)</option>}
      {choices.map(({ text, label }) => (
        <option key={text} value={text}>
          {label === null || label === text ? text : `${text}: ${label}`}
        </option>
      ))}
    </select>
  );
}
