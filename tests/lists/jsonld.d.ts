declare module 'jsonld' {
  interface Options {
    readonly base?: string;
    readonly expandContext?: object;
    readonly documentLoader?: (address: string) => Promise<never>;
  }
  const jsonld: {
    flatten(document: object, context: null, options: Options): Promise<unknown[]>;
  };
  export default jsonld;
}
