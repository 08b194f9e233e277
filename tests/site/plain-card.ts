import type { PublicCard } from '../../schema/index.js';

/** Instants of the demo, and a card of which nothing is told: what public data made by hand begin with. */

export const SHOPS = '2027-04-16T09:00:00+01:00[Europe/London]';
export const PREMIERE = '2027-04-16T20:00:00+01:00[Europe/London]';
export const SPRING = '2027-05-14T20:00:00+01:00[Europe/London]';

export const PLAIN_CARD: PublicCard = {
  state: 'shown',
  number: null,
  letter: null,
  page: null,
  name: '',
  level: 0,
  nameLevel: 0,
  opens: null,
  revealed: null,
  bio: [],
  bioHeld: false,
  facts: [],
  texts: [],
  image: null,
  signers: [],
  signersLevel: 0,
  credits: [],
  creditsLevel: 0,
  tell: null,
  shortPrint: null,
  run: null,
};
