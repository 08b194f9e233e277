import { WITH_LAYOUT, withLayout } from './fit-sample.js';
import { layoutZones, onZone } from './layout-remarks.js';
import type { Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/** A zone that reaches over the safe area of its card. */
export const zoneOutside: Rule = {
  id: 'zone-outside',
  about: 'fit',
  severity: 'error',
  why: 'What stands outside the safe area may be cut off when the sheet is trimmed.',
  look: zonesOutside,
  examples: {
    passes: [{ says: 'zones inside the safe area', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a zone that reaches to the edge',
        files: withLayout('width: 40, height: 4', 'width: 58, height: 4'),
        gives: {
          at: 'backs/small.yaml:9:3',
          covers: 'legal',
          message: '`legal` reaches out of the safe area by 2.5 mm',
          found: '5 to 63 mm across, 80 to 84 mm down',
          expected: '3 to 60.5 mm across, 3 to 85.9 mm down',
        },
      },
    ],
  },
};

function* zonesOutside(subject: Subject): Generator<Remark> {
  for (const placed of layoutZones(subject)) {
    const { trim, safe } = placed.layout.value;
    const { x, y, width, height } = placed.zone;
    const [right, bottom] = [trim.width - safe, trim.height - safe];
    const over = Math.max(safe - x, safe - y, x + width - right, y + height - bottom);
    if (over <= 1e-6) continue;
    yield onZone(placed, null, {
      message: `\`${placed.name}\` reaches out of the safe area by ${mm(over)} mm`,
      found: sayBox(x, x + width, y, y + height),
      expected: sayBox(safe, right, safe, bottom),
    });
  }
}

function sayBox(left: number, right: number, top: number, bottom: number): string {
  return `${mm(left)} to ${mm(right)} mm across, ${mm(top)} to ${mm(bottom)} mm down`;
}

/** Millimetres to a hundredth, without noughts at the end. */
function mm(length: number): string {
  return String(Math.round(length * 100) / 100);
}
