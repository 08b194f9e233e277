import type { HouseStyle } from '../../../schema/index.js';
import type { English } from '../../text/index.js';
import type { Subject } from '../subject.js';

const NO_STYLE: HouseStyle = {};

/** The house style of a set. What belongs to no set goes by what the plans of all sets agree on. */
export function styleOf(subject: Subject, set: string | undefined): HouseStyle {
  if (set !== undefined) {
    return subject.sets.find(({ id }) => id === set)?.plan.value.style ?? NO_STYLE;
  }
  const [first = NO_STYLE, ...others] = subject.sets.map(
    ({ plan }) => plan.value.style ?? NO_STYLE,
  );
  const agreed = <K extends keyof HouseStyle>(key: K): Pick<HouseStyle, K> =>
    first[key] !== undefined && others.every((style) => same(style[key], first[key]))
      ? first
      : NO_STYLE;
  const { english } = agreed('english');
  const { quotes } = agreed('quotes');
  const { speech } = agreed('speech');
  const { dash } = agreed('dash');
  const { ellipsis } = agreed('ellipsis');
  const { numbers } = agreed('numbers');
  const { units } = agreed('units');
  return {
    ...(english === undefined ? {} : { english }),
    ...(quotes === undefined ? {} : { quotes }),
    ...(speech === undefined ? {} : { speech }),
    ...(dash === undefined ? {} : { dash }),
    ...(ellipsis === undefined ? {} : { ellipsis }),
    ...(numbers === undefined ? {} : { numbers }),
    ...(units === undefined ? {} : { units }),
  };
}

function same(a: HouseStyle[keyof HouseStyle], b: HouseStyle[keyof HouseStyle]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Whose English a set is in: American unless its plan says other. */
export function englishOf(subject: Subject, set: string | undefined): English {
  return styleOf(subject, set).english ?? 'american';
}
