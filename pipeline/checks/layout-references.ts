import type { BackFile } from '../../schema/index.js';
import type { Card, Sourced } from '../model/index.js';
import { faultyFiles } from './faults.js';
import type { Remark } from './rule.js';
import type { Subject } from './subject.js';
import { refer } from './unknown.js';

/** Layouts, zones and fonts that are named and are not there. */
export function* layoutReferences(subject: Subject): Generator<Remark> {
  const { content, subsets } = subject;
  const faulty = faultyFiles(content);
  const known = new Set(content.layouts.keys());
  const canTell = (id: string | undefined): boolean => !faulty.has(`backs/${id ?? ''}.yaml`);
  for (const { set, plan, at, cards } of subsets) {
    if (canTell(plan.back)) {
      yield* refer('layout', plan.back, known, set.plan.source, ['subsets', at, 'back']);
    }
    for (const card of cards) {
      const { back } = card.front;
      if (canTell(back)) yield* refer('layout', back, known, card.source, ['back']);
      const layout = content.layouts.get(back ?? plan.back ?? '');
      if (layout) yield* zonesOfTexts(card, layout);
    }
  }
  for (const layout of content.layouts.values()) {
    yield* zonesOfShared(layout);
    yield* fontsOfZones(layout);
  }
}

function* zonesOfTexts(card: Card, { value }: Sourced<BackFile>): Generator<Remark> {
  const names = Object.keys(card.front.texts ?? {});
  if (names.length === 0) return;
  const zones = zoneNames(value);
  for (const name of names) yield* refer('zone', name, zones, card.source, ['texts', name], 'key');
}

function* zonesOfShared({ source, value }: Sourced<BackFile>): Generator<Remark> {
  const zones = zoneNames(value);
  for (const name of Object.keys(value.shared ?? {})) {
    yield* refer('zone', name, zones, source, ['shared', name], 'key');
  }
}

function* fontsOfZones({ source, value }: Sourced<BackFile>): Generator<Remark> {
  const fonts = new Set(Object.keys(value.fonts));
  for (const side of ['zones', 'front'] as const) {
    for (const [name, zone] of Object.entries(value[side] ?? {})) {
      yield* refer('font', zone.font, fonts, source, [side, name, 'font']);
    }
  }
}

function zoneNames(layout: BackFile): ReadonlySet<string> {
  return new Set([...Object.keys(layout.zones), ...Object.keys(layout.front ?? {})]);
}
