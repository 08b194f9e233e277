declare module 'commonmark-spec' {
  /** An example of the specification; → stands for a tab. */
  interface Example {
    readonly markdown: string;
    readonly html: string;
    readonly section: string;
    readonly number: number;
  }
  const specification: { readonly tests: readonly Example[] };
  export default specification;
}
