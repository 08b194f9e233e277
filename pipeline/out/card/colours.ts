/** What a card is printed in where its layout names no colour. */
export const CARD_INK = '#000000';
export const CARD_PAPER = '#ffffff';

/** What is drawn where there is nothing to show yet. */
export const HAIRLINE = '#b9c0c6';
export const PANEL = '#f1f3f4';
