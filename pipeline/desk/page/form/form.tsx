import { useState } from 'preact/hooks';
import type { FieldModel, FieldPath } from '../../protocol.js';
import type { Fields } from '../card/field-changes.js';
import { nameOfPath } from './names.js';
import { FieldInput, emptyOf } from './input.js';

/** The fields of a card besides its copy: those that it has or must have, and a way to others. */
export function Form(props: {
  readonly models: readonly FieldModel[];
  readonly fields: Fields;
  readonly change: (fields: Fields) => void;
}) {
  const { models, fields, change } = props;
  const shown = models.filter(({ key, required }) => required || Object.hasOwn(fields, key));
  const others = models.filter((model) => !shown.includes(model));
  return (
    <div class="stack">
      <div class="fields">
        {shown.map((model) => (
          <Field key={model.key} model={model} path={[model.key]} fields={fields} change={change} />
        ))}
      </div>
      <AddField
        models={others}
        add={(model) => change({ ...fields, [model.key]: emptyOf(model.shape) })}
      />
    </div>
  );
}

/** One key of a map with its name, what may stand there, and a way to take it off. */
export function Field(props: {
  readonly model: FieldModel;
  readonly path: FieldPath;
  readonly fields: Fields;
  readonly change: (fields: Fields) => void;
}) {
  const { model, path, fields, change } = props;
  const { key, shape, required, description } = model;
  const id = nameOfPath(path);
  const isSimple = shape.type !== 'list' && shape.type !== 'record' && shape.type !== 'group';
  const value = fields[key];
  const hint = description ?? hintOf(model) ?? '';
  const takeOff = (): void => change(without(fields, key));
  const input = (
    <FieldInput
      shape={shape}
      path={path}
      value={value ?? emptyOf(shape)}
      change={(next) => change({ ...fields, [key]: next })}
      described={hint === '' ? null : `${id}-hint`}
      isRequired={required}
    />
  );
  const hinted = hint !== '' && (
    <p class="hint" id={`${id}-hint`}>
      {hint}
    </p>
  );
  const off = !required && !isSimple && value !== undefined && (
    <button type="button" class="plain" onClick={takeOff}>
      Take off {key}
    </button>
  );
  if (!isSimple) {
    return (
      <fieldset class="stack wide-field" id={id} tabIndex={-1}>
        <legend>{key}</legend>
        {hinted}
        {input}
        {off}
      </fieldset>
    );
  }
  return (
    <div class="field">
      <label for={id}>{key}</label>
      {input}
      {hinted}
    </div>
  );
}

function AddField(props: {
  readonly models: readonly FieldModel[];
  readonly add: (model: FieldModel) => void;
}) {
  const { models, add } = props;
  const [key, setKey] = useState('');
  const model = models.find((each) => each.key === key);
  if (models.length === 0) return null;
  return (
    <div class="row">
      <label for="add-field">Another field</label>
      <select
        id="add-field"
        class="narrow"
        value={model?.key ?? ''}
        onChange={({ currentTarget }) => setKey(currentTarget.value)}
      >
        <option value="">Choose one</option>
        {models.map((each) => (
          <option key={each.key} value={each.key}>
            {each.key}
          </option>
        ))}
      </select>
      <button
        type="button"
        disabled={model === undefined}
        onClick={() => {
          if (model) add(model);
        }}
      >
        Add this field
      </button>
      {model?.description != null && <span class="small quiet">{model.description}</span>}
    </div>
  );
}

/** What may be typed, where it is typed and more than any text. */
function hintOf({ shape, expected }: FieldModel): string | null {
  const isTyped = shape.type === 'text' || shape.type === 'number' || shape.type === 'instant';
  if (!isTyped || expected === null || expected === 'some text') return null;
  return `Expected: ${expected}.`;
}

function without(fields: Fields, key: string): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([each]) => each !== key));
}
