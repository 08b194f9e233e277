/** "12,500". */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** "1 card", "84 cards". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** An exact number as it is read: "4,034 2/7", "2/7", "12"; below 0 with a minus. */
export function mixed(exact: string): string {
  const [over = '0', under] = exact.split('/');
  if (under === undefined) return groupedDigits(over);
  const sign = over.startsWith('-') ? '-' : '';
  const top = BigInt(over.replace('-', ''));
  const whole = top / BigInt(under);
  const part = `${String(top % BigInt(under))}/${under}`;
  return whole === 0n ? `${sign}${part}` : `${sign}${groupedDigits(String(whole))} ${part}`;
}

/** How much more, "+120", or how much less, "−3 1/2", than it is to be; "0" if neither. */
export function signed(exact: string): string {
  if (nearly(exact) === 0) return '0';
  return exact.startsWith('-') ? `−${mixed(exact.slice(1))}` : `+${mixed(exact)}`;
}

function groupedDigits(digits: string): string {
  return digits.replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** The nearest number to an exact one, for what is drawn or compared by eye. */
export function nearly(exact: string): number {
  const [over = '0', under = '1'] = exact.split('/');
  return Number(over) / Number(under);
}

/** "0.8", "12", "1.3333": four places at most. */
export function decimal(exact: string): string {
  return String(Math.round(nearly(exact) * 10_000) / 10_000);
}

/** "24", "8.2": one place, for averages. */
export function tenth(figure: number): string {
  return rounded(figure, 1);
}

/** "24", "8.2", "8.16": two places at most. */
export function hundredth(figure: number): string {
  return rounded(figure, 2);
}

function rounded(figure: number, places: number): string {
  const [whole = '0', part = ''] = figure.toFixed(places).split('.');
  const kept = part.replace(/0+$/, '');
  return kept === '' ? groupedDigits(whole) : `${groupedDigits(whole)}.${kept}`;
}

/** What is made as many of: "Crew and Craft", or "Crew and Craft, 17 b" of one card. */
export function nameOf(group: { readonly title: string; readonly only: string | null }): string {
  return group.only === null ? group.title : `${group.title}, ${group.only}`;
}
