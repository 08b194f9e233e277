import type { Lack } from './approval.js';

/** What an approval lacks, in words. @param nameOf the name of a person by id. */
export function sayLack(lack: Lack, role: string, nameOf: (id: string) => string): string {
  switch (lack.is) {
    case 'nobody decided':
      return `no ${role} has decided`;
    case 'decided otherwise':
      return `${nameOf(lack.by.person)} decided "${lack.by.verdict}"`;
    case 'changed since': {
      const version = lack.by.digest.slice(0, 6);
      return `${nameOf(lack.by.person)} approved version ${version}, and it was changed since`;
    }
    case 'opens earlier':
      return `${nameOf(lack.by.person)} approved it to open later (${lack.what.join(', ')})`;
  }
}
