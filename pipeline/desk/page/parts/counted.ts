/** A count with its noun: 1 line, 2 lines. */
export function counted(count: number, one: string, more = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : more}`;
}
