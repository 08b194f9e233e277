import type { Kind, PlannedCard, ReleasePlan } from '../../pipeline/packs/index.js';

/** The figures of the demo's print run, each of which can be changed by itself. */
export const FIGURES = {
  hobbyPack: 6,
  hobbyBox: 24,
  hobbyCase: 12,
  hobbyCases: 200,
  hobbyCharts: 4,
  hobbyBenches: 6,
  hobbySignals: 8,
  hobbyLetters: 96,
  autographsABox: 1,
  relics: 1200,
  relicsEach: 240,
  relicCards: 5,
  relicPlaces: 4,
  sketchesACase: 1,
  tarred: 29_316,
  varnished: 84,
  brassNailed: 12,
  keel: 1,
  plates: 4,
  retailPack: 6,
  retailBox: 10,
  retailCase: 16,
  retailCases: 90,
  retailCharts: 8,
  retailBenches: 12,
  retailSignals: 9,
  lamplit: 1,
  lamplitEach: 300,
  base: 84,
  copies: 4000,
  seventeen: 3750,
  lampIsLit: 250,
};
export type Figures = Readonly<Record<keyof typeof FIGURES, number>>;

function cards(prefix: string, count: number, from = 1): readonly PlannedCard[] {
  return Array.from({ length: count }, (_, at) => {
    const label = `${prefix}${String(from + at)}`;
    return { id: `cards/${label}`, label };
  });
}

/** *High Water* as it is packed, with these figures. */
export function highWater(figures: Figures = FIGURES): ReleasePlan {
  const f = figures;
  const crew = cards('', 48).map((card) =>
    card.label === '17' ? { ...card, stated: f.seventeen } : card,
  );
  const lit = {
    id: 'cards/17b',
    label: '17 b',
    variationOf: 'cards/17',
    copies: f.lampIsLit,
    stated: f.lampIsLit,
  };
  const story = cards('', f.base - 49, 49);
  const checklist = cards('', 1, f.base);
  const base = [...crew, ...story, ...checklist].map(({ id, label }) => ({ id, label }));
  const subset = (id: string, title: string, own: readonly PlannedCard[]): Kind => ({
    id,
    title,
    what: 'subset',
    cards: own,
  });
  const parallel = (id: string, title: string, own: readonly PlannedCard[]): Kind => ({
    id,
    title,
    what: 'parallel',
    cards: own.map(({ id: card, label }) => ({ id: `${id}/${card}`, label })),
  });
  return {
    products: [
      {
        id: 'hobby',
        title: 'Hobby',
        cardsAPack: f.hobbyPack,
        packsABox: f.hobbyBox,
        boxesACase: f.hobbyCase,
        cases: f.hobbyCases,
        collation: 'random',
      },
      {
        id: 'retail',
        title: 'Retail',
        cardsAPack: f.retailPack,
        packsABox: f.retailBox,
        boxesACase: f.retailCase,
        cases: f.retailCases,
        collation: 'random',
      },
    ],
    kinds: [
      { ...subset('crew', 'Crew and Craft', [...crew, lit]), base: true, stated: f.copies },
      { ...subset('story', 'High Water', story), base: true, stated: f.copies },
      { ...subset('checklist', 'Checklist', checklist), base: true, stated: f.copies },
      subset('charts', 'Lake Charts', cards('LC-', 8)),
      subset('benches', 'Maker’s Benches', cards('MB-', 12)),
      subset('signals', 'Night Signals', cards('NS-', 16)),
      subset('letters', 'Letters from the Drowned Street', cards('LD-', 6)),
      subset('signatures', 'Signatures', cards('SG-', 12)),
      {
        ...subset('relics', 'Timber Relics', cards('TR-', f.relicCards)),
        places: f.relicPlaces,
        stated: f.relicsEach,
      },
      subset('sketches', 'Sketch Cards', cards('sketch ', 20)),
      parallel('tarred', 'Tarred', base),
      { ...parallel('varnished', 'Varnished', base), run: f.varnished },
      { ...parallel('brass-nailed', 'Brass-Nailed', base), run: f.brassNailed },
      { ...parallel('keel', 'Keel', base), run: f.keel },
      { ...parallel('plates', 'Printing Plates', base), run: f.plates },
      { ...parallel('lamplit', 'Lamplit', crew), stated: f.lamplitEach },
    ],
    entries: [
      { product: 'hobby', kind: 'charts', amount: { by: 'odds', packs: f.hobbyCharts } },
      { product: 'hobby', kind: 'benches', amount: { by: 'odds', packs: f.hobbyBenches } },
      { product: 'hobby', kind: 'signals', amount: { by: 'odds', packs: f.hobbySignals } },
      { product: 'hobby', kind: 'letters', amount: { by: 'odds', packs: f.hobbyLetters } },
      { product: 'hobby', kind: 'signatures', amount: { by: 'box', copies: f.autographsABox } },
      { product: 'hobby', kind: 'relics', amount: { by: 'copies', copies: f.relics } },
      { product: 'hobby', kind: 'sketches', amount: { by: 'case', copies: f.sketchesACase } },
      { product: 'hobby', kind: 'tarred', amount: { by: 'copies', copies: f.tarred } },
      { product: 'hobby', kind: 'varnished', amount: { by: 'run' } },
      { product: 'hobby', kind: 'brass-nailed', amount: { by: 'run' } },
      { product: 'hobby', kind: 'keel', amount: { by: 'run' } },
      { product: 'hobby', kind: 'plates', amount: { by: 'run' } },
      { product: 'retail', kind: 'charts', amount: { by: 'odds', packs: f.retailCharts } },
      { product: 'retail', kind: 'benches', amount: { by: 'odds', packs: f.retailBenches } },
      { product: 'retail', kind: 'signals', amount: { by: 'odds', packs: f.retailSignals } },
      { product: 'retail', kind: 'lamplit', amount: { by: 'odds', packs: f.lamplit } },
    ],
  };
}
