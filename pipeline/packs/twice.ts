/** What stands in a list more than once, in the order of the second time. */
export function twice(ids: readonly string[]): readonly string[] {
  const once = new Set<string>();
  const again = new Set<string>();
  for (const id of ids) (once.has(id) ? again : once).add(id);
  return [...again];
}
