/** The part of Eleventy 3 that is used here; it comes without types of its own. */
declare module '@11ty/eleventy' {
  export interface EleventyConfig {
    addGlobalData(name: string, value: unknown): void;
    setFrontMatterParsingOptions(options: {
      readonly engines: Readonly<Record<string, () => never>>;
    }): void;
    setNunjucksEnvironmentOptions(options: { readonly throwOnUndefined: boolean }): void;
    setUseGitIgnore(use: boolean): void;
    setTemplateFormats(formats: readonly string[]): void;
  }

  export interface EleventyPage {
    readonly outputPath: string | false;
    readonly content: string;
  }

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath?: string | false;
        readonly quietMode?: boolean;
        readonly loader?: 'esm' | 'cjs' | 'auto';
        readonly config?: (config: EleventyConfig) => void | Promise<void>;
      },
    );
    disableLogger(): void;
    write(): Promise<unknown>;
    toJSON(): Promise<readonly EleventyPage[]>;
  }
}
