/** Whether a path is relative, plain and stays inside its folder, on every system. */
export function isInside(path: string): boolean {
  return !/[\\:\0]/.test(path) && path.split('/').every((step) => !/^\.{0,2}$/.test(step));
}
