/** "1 line", "2 lines". */
export function amount(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}
