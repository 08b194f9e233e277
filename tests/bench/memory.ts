import { check } from '../../pipeline/checks/index.js';
import { diskFolder, readProperty, keptDictionaries } from '../../pipeline/read/index.js';

/** Checks the content folder that is named and prints the peak resident memory in MB. */
const { content, fonts } = readProperty(diskFolder(process.argv[2] ?? ''));
check(content, { fonts, dictionaries: keptDictionaries });
process.stdout.write(String(process.resourceUsage().maxRSS / 1024));
