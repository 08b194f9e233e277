/** Octets of base64 or base64url, without anything that only Node or only a browser has. */
export function octetsOf(text: string): Uint8Array<ArrayBuffer> {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  const octets = new Uint8Array(plain.length);
  for (let at = 0; at < plain.length; at++) octets[at] = plain.charCodeAt(at);
  return octets;
}

/** Octets that are turned into signs at once. */
const RUN = 8192;

export function base64Of(octets: Uint8Array): string {
  const runs = Array.from({ length: Math.ceil(octets.length / RUN) }, (_, at) =>
    String.fromCharCode(...octets.subarray(at * RUN, (at + 1) * RUN)),
  );
  return btoa(runs.join(''));
}

export function base64UrlOf(octets: Uint8Array): string {
  return base64Of(octets).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}
