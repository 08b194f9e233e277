import type { BackFile, Zone } from '../../../schema/index.js';
import type { ZoneText } from '../../model/index.js';
import { setText, type Faces, type Setting } from '../../typeset/index.js';

/** A text in its zone. */
export interface ZoneSetting {
  readonly name: string;
  readonly zone: Zone;
  readonly setting: Setting;
}

/** What stands on the two sides of a card. */
export interface CardText {
  readonly front: readonly ZoneSetting[];
  readonly back: readonly ZoneSetting[];
}

/** Sets texts in the zones of a layout; `faces` by the name that the layout gives a font. */
export function setSides(
  layout: BackFile,
  words: ReadonlyMap<string, ZoneText>,
  faces: ReadonlyMap<string, Faces>,
  undivided: readonly string[] = [],
): CardText {
  const setZones = (zones: Readonly<Record<string, Zone>>): readonly ZoneSetting[] =>
    Object.entries(zones).flatMap(([name, zone]) => {
      const text = words.get(name);
      const family = faces.get(zone.font);
      if (!text || !family) return [];
      return [{ name, zone, setting: setText(text, zone, family, { undivided }) }];
    });
  return {
    front: setZones(layout.front ?? {}),
    back: layout.blank === true ? [] : setZones(layout.zones),
  };
}
