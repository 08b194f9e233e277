import type { BackFile, Zone } from '../../schema/index.js';
import { spotOf, type Sourced } from '../model/index.js';
import type { Remark } from './rule.js';
import type { Subject } from './subject.js';

/** A zone of a layout, and where its values stand. */
export interface LayoutZone {
  readonly layout: Sourced<BackFile>;
  readonly side: 'zones' | 'front';
  readonly name: string;
  readonly zone: Zone;
}

/** Every zone of every layout. */
export function layoutZones({ content }: Subject): LayoutZone[] {
  return [...content.layouts.values()].flatMap((layout) =>
    (['zones', 'front'] as const).flatMap((side) =>
      Object.entries(layout.value[side] ?? {}).map(([name, zone]) => ({
        layout,
        side,
        name,
        zone,
      })),
    ),
  );
}

/** A remark at a value of a zone, or at the name of the zone. */
export function onZone(
  { layout, side, name }: LayoutZone,
  key: string | null,
  words: Omit<Remark, 'spot'>,
): Remark {
  const spot =
    key === null
      ? spotOf(layout.source, [side, name], 'key')
      : spotOf(layout.source, [side, name, key]);
  return { spot, ...words };
}
