import { join, statedHold, type Content } from '../model/index.js';
import type { Standing } from './standing.js';
import { target, unseen, type Target } from './target.js';
import { ALIAS, NAME, SECRET } from './told-property.js';
import { tell } from './told.js';

type Name = NonNullable<Content['names']>['value']['names'][number];

/** Names and forms that are not yet open, in the order of the file. */
export function nameTargets(content: Content, standing: Standing): Target[] {
  return (content.names?.value.names ?? []).flatMap((name) =>
    unseenForms(name, standing).map(({ words, when }) =>
      target(words, `the name ${name.name}`, {
        always: when === 'held',
        exact: name.match === 'exact',
        except: name.except ?? [],
      }),
    ),
  );
}

function unseenForms(name: Name, standing: Standing): { words: string; when: string }[] {
  const own = statedHold(standing.schedule, name);
  const later = (name.aliases ?? []).flatMap((alias) => {
    if (typeof alias === 'string') return [];
    const hold = join(own, statedHold(standing.schedule, alias));
    return unseen(tell(ALIAS, alias), () => standing.isOpen(hold));
  });
  const forms = [...unseen(tell(NAME, name), () => standing.isOpen(own)), ...later];
  return forms.flatMap(({ words, when }) => [
    { words, when },
    ...withoutArticle(words).map((bare) => ({ words: bare, when })),
  ]);
}

/** A name of two words and more is told without its article too. */
function withoutArticle(words: string): string[] {
  const [, bare] = /^the\s+(\S+\s+\S.*)$/i.exec(words) ?? [];
  return bare === undefined ? [] : [bare];
}

/** Names and forms that are open: words that may be said. */
export function openNames(content: Content, standing: Standing): string[] {
  return (content.names?.value.names ?? []).flatMap((name) => {
    const own = statedHold(standing.schedule, name);
    const forms = (name.aliases ?? []).flatMap((alias) => {
      if (typeof alias === 'string') return standing.isOpen(own) ? [alias] : [];
      const hold = join(own, statedHold(standing.schedule, alias));
      return standing.isOpen(hold) ? [alias.form] : [];
    });
    return [...(standing.isOpen(own) ? [name.name] : []), name.publicName ?? '', ...forms];
  });
}

/** What secrets say that are not yet open. */
export function secretTargets(content: Content, standing: Standing): Target[] {
  return (content.names?.value.secrets ?? []).flatMap((secret) => {
    const hold = statedHold(standing.schedule, secret);
    return unseen(tell(SECRET, secret), () => standing.isOpen(hold)).map(({ words }) =>
      target(words, `the secret ${secret.id}`, { always: true }),
    );
  });
}
