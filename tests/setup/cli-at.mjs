// node cli-at.mjs <ms since 1970> <arguments>: the built `holdback` with a stated clock. The tool
// itself has no flag or variable for it.
const [instant, ...args] = process.argv.slice(2);
const cli = await import(new URL('../../dist/pipeline/cli/index.js', import.meta.url).href);
process.exitCode = await cli.main(args, cli.processIo(Number(instant)));
