import type { FieldModel, FieldShape, FieldValue } from '../../protocol.js';
import { isList, isMap, type Fields } from '../card/field-changes.js';

/** Front matter without what was left empty and need not be there. */
export function pruned(models: readonly FieldModel[], fields: Fields): Fields {
  const kept = Object.entries(fields).flatMap(([key, value]) => {
    const model = models.find((each) => each.key === key);
    const next = model ? prunedValue(model.shape, value) : value;
    return model?.required !== true && isEmpty(next) && model ? [] : [[key, next] as const];
  });
  return Object.fromEntries(kept);
}

function prunedValue(shape: FieldShape, value: FieldValue): FieldValue {
  if (shape.type === 'group' && isMap(value)) return pruned(shape.fields, value);
  if (shape.type === 'list' && isList(value)) {
    return value.map((item) => prunedValue(shape.items, item)).filter((item) => !isEmpty(item));
  }
  return value;
}

function isEmpty(value: FieldValue): boolean {
  if (isList(value)) return value.length === 0;
  return isMap(value) ? Object.keys(value).length === 0 : value === '';
}
