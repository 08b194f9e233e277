/** How a field is called on the page. */
export function sayField(field: string): string {
  const known = NAMED[field];
  if (known !== undefined) return known;
  const [kind = '', name] = field.split(/\.(.*)/s);
  if (name !== undefined) return kind === 'texts' ? `Text: ${name}` : name;
  return kind;
}

const NAMED: Readonly<Record<string, string | undefined>> = {
  name: 'Name',
  bio: 'Bio',
  words: 'Words',
  credits: 'Credits',
  signers: 'Signers',
  publicName: 'Public name',
  alt: 'Picture in words',
  variation: 'Variation',
  shortPrint: 'Short print',
  run: 'Print run',
  'image.file': 'Picture',
  'image.alt': 'Picture in words',
  'image.ref': 'Drawn after',
  'image.depicts': 'In the picture',
};
