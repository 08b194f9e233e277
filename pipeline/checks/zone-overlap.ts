import type { Zone } from '../../schema/index.js';
import { SMALL_LAYOUT, WITH_LAYOUT } from './fit-sample.js';
import { layoutZones, onZone, type LayoutZone } from './layout-remarks.js';
import type { Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/** Two zones of one side that lie over each other. */
export const zoneOverlap: Rule = {
  id: 'zone-overlap',
  about: 'fit',
  severity: 'error',
  why: 'Two texts in one place can be read neither.',
  look: overlaps,
  examples: {
    passes: [{ says: 'zones beside each other', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a name over the bio',
        files: {
          ...WITH_LAYOUT,
          'backs/small.yaml': `${SMALL_LAYOUT}  name: { x: 20, y: 9, width: 30, height: 6, font: body, size: 7, leading: 9 }\n`,
        },
        gives: {
          at: 'backs/small.yaml:10:3',
          covers: 'name',
          message: '`name` lies over `bio`',
          found: '15 by 3 mm in common',
          expected: 'zones that do not touch the same place',
          related: ['backs/small.yaml:8:3 the other zone'],
        },
      },
    ],
  },
};

function* overlaps(subject: Subject): Generator<Remark> {
  const zones = layoutZones(subject);
  for (const [at, placed] of zones.entries()) {
    for (const earlier of zones.slice(0, at)) {
      if (earlier.layout !== placed.layout || earlier.side !== placed.side) continue;
      const common = inCommon(earlier.zone, placed.zone);
      if (common) yield overlapRemark(placed, earlier, common);
    }
  }
}

interface Common {
  readonly width: number;
  readonly height: number;
}

function inCommon(a: Zone, b: Zone): Common | null {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return width > 1e-6 && height > 1e-6 ? { width, height } : null;
}

function overlapRemark(placed: LayoutZone, earlier: LayoutZone, common: Common): Remark {
  const [width, height] = [common.width, common.height].map((length) =>
    String(Math.round(length * 100) / 100),
  );
  return onZone(placed, null, {
    message: `\`${placed.name}\` lies over \`${earlier.name}\``,
    found: `${width ?? ''} by ${height ?? ''} mm in common`,
    expected: 'zones that do not touch the same place',
    related: [{ message: 'the other zone', spot: onZone(earlier, null, { message: '' }).spot }],
  });
}
