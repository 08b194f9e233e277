import canonicalize from 'canonicalize';

import type { AnswerFile } from '../../../schema/index.js';
import { base64UrlOf, octetsOf } from './octets.js';

type Unsigned = Omit<AnswerFile, 'signature'>;

/** As `signedOctets` of the approval rules has it: what reads a decision file checks these octets. */
function octetsToSign({ format, property, packet, person, decisions, remarks }: Unsigned) {
  const text = canonicalize({ format, property, packet, person, decisions, remarks });
  return new TextEncoder().encode(`Holdback decision file 1\n${text ?? ''}`);
}

/** The text of a decision file, signed by Ed25519 with a PKCS #8 key in base64url. */
export async function signedAnswer(answer: Unsigned, privateKey: string): Promise<string> {
  const key = await signingKey(privateKey);
  const octets = await crypto.subtle.sign('Ed25519', key, octetsToSign(answer));
  const signature = base64UrlOf(new Uint8Array(octets));
  return `${canonicalize({ ...answer, signature }) ?? ''}\n`;
}

function signingKey(privateKey: string) {
  return crypto.subtle.importKey('pkcs8', octetsOf(privateKey), 'Ed25519', false, ['sign']);
}

/** Whether decisions can be signed here: not every browser has Ed25519. */
export async function canSign(privateKey: string): Promise<boolean> {
  return signingKey(privateKey).then(
    () => true,
    () => false,
  );
}
