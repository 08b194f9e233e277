import { describe, expect, it } from 'vitest';

import { guard, type Guarding } from '../../pipeline/desk/guard.js';

const TOKEN = 'a-token-of-chance';
const GUARDING: Guarding = {
  port: 4173,
  token: TOKEN,
  methodsOf: (path) =>
    path === '/api/save'
      ? ['POST']
      : ['/', '/desk.js', '/api/card'].includes(path)
        ? ['GET', 'HEAD']
        : null,
  needsToken: (path) => path.startsWith('/api/'),
};
const HOST = '127.0.0.1:4173';
const OWN = 'http://127.0.0.1:4173';

type Headers = Readonly<Record<string, string>>;
const GET: Headers = { Host: HOST, 'X-Holdback-Token': TOKEN };
const POST: Headers = { ...GET, Origin: OWN, 'Content-Type': 'application/json' };

function statusOf(
  method: string,
  target: string,
  headers: Headers,
  more: readonly string[] = [],
): number {
  const raw = [...Object.entries(headers).flat(), ...more];
  const guarded = guard({ method, target, headers: raw }, GUARDING);
  return guarded.ok ? 200 : guarded.status;
}

const without = (headers: Headers, name: string): Headers =>
  Object.fromEntries(Object.entries(headers).filter(([key]) => key !== name));

describe('the guard of the desk', () => {
  it.each<[string, number, string, string, Headers]>([
    // By the Fetch Standard a browser sends Origin with every POST, and Sec-Fetch-Site always.
    ['the page, opened by hand', 200, 'GET', '/', { Host: HOST, 'Sec-Fetch-Site': 'none' }],
    ['the page by its other name', 200, 'GET', '/', { Host: 'localhost:4173' }],
    [
      'a script of the page',
      200,
      'GET',
      '/desk.js',
      { Host: HOST, 'Sec-Fetch-Site': 'same-origin' },
    ],
    [
      'its request',
      200,
      'GET',
      '/api/card?card=a/b/c',
      { ...GET, 'Sec-Fetch-Site': 'same-origin' },
    ],
    [
      'its request that writes',
      200,
      'POST',
      '/api/save',
      { ...POST, 'Sec-Fetch-Site': 'same-origin' },
    ],
    [
      'JSON with its charset',
      200,
      'POST',
      '/api/save',
      { ...POST, 'Content-Type': 'application/json; charset=utf-8' },
    ],
    [
      'by the other name, the origin too',
      200,
      'POST',
      '/api/save',
      { ...POST, Host: 'localhost:4173', Origin: 'http://localhost:4173' },
    ],
    ['a name that leads here', 421, 'GET', '/', { Host: 'evil.example' }],
    [
      'a name that leads here, with port',
      421,
      'POST',
      '/api/save',
      { ...POST, Host: 'evil.example:4173', Origin: 'http://evil.example:4173' },
    ],
    ['a name that begins like ours', 421, 'GET', '/', { Host: 'localhost.evil.example:4173' }],
    ['a name that ends like ours', 421, 'GET', '/', { Host: 'evil-localhost:4173' }],
    ['another port', 421, 'GET', '/', { Host: '127.0.0.1:4174' }],
    ['no port', 421, 'GET', '/', { Host: '127.0.0.1' }],
    ['another loopback address', 421, 'GET', '/', { Host: '127.0.0.2:4173' }],
    ['the loopback of IPv6', 421, 'GET', '/', { Host: '[::1]:4173' }],
    ['a host in capitals', 421, 'GET', '/', { Host: 'LOCALHOST:4173' }],
    ['a dot at its end', 421, 'GET', '/', { Host: 'localhost.:4173' }],
    ['no host', 421, 'GET', '/', {}],
    [
      'a page elsewhere that writes',
      403,
      'POST',
      '/api/save',
      { ...POST, Origin: 'https://evil.example' },
    ],
    [
      'a page on another port',
      403,
      'POST',
      '/api/save',
      { ...POST, Origin: 'http://127.0.0.1:4174' },
    ],
    ['our other name', 403, 'POST', '/api/save', { ...POST, Origin: 'http://localhost:4173' }],
    ['by https', 403, 'POST', '/api/save', { ...POST, Origin: 'https://127.0.0.1:4173' }],
    ['a page without an origin', 403, 'POST', '/api/save', { ...POST, Origin: 'null' }],
    ['nobody who says so', 403, 'POST', '/api/save', without(POST, 'Origin')],
    [
      'a page elsewhere that reads',
      403,
      'GET',
      '/api/card',
      { ...GET, Origin: 'https://evil.example' },
    ],
    ['a frame that reads', 403, 'GET', '/api/card', { ...GET, Origin: 'null' }],
    ['a site elsewhere', 403, 'GET', '/', { Host: HOST, 'Sec-Fetch-Site': 'cross-site' }],
    [
      'another port of this machine',
      403,
      'GET',
      '/',
      { Host: HOST, 'Sec-Fetch-Site': 'same-site' },
    ],
    ['a form that a person sent', 403, 'POST', '/api/save', { ...POST, 'Sec-Fetch-Site': 'none' }],
    ['no token', 401, 'GET', '/api/card', { Host: HOST }],
    ['a wrong token', 401, 'GET', '/api/card', { ...GET, 'X-Holdback-Token': 'a-token-of-chancf' }],
    ['a part of the token', 401, 'GET', '/api/card', { ...GET, 'X-Holdback-Token': 'a-token' }],
    ['an empty token', 401, 'POST', '/api/save', { ...POST, 'X-Holdback-Token': '' }],
    [
      'a token in a cookie',
      401,
      'GET',
      '/api/card',
      { Host: HOST, Cookie: `X-Holdback-Token=${TOKEN}` },
    ],
    [
      'a form',
      415,
      'POST',
      '/api/save',
      { ...POST, 'Content-Type': 'application/x-www-form-urlencoded' },
    ],
    [
      'plain text, which asks no leave',
      415,
      'POST',
      '/api/save',
      { ...POST, 'Content-Type': 'text/plain' },
    ],
    [
      'JSON in another charset',
      415,
      'POST',
      '/api/save',
      { ...POST, 'Content-Type': 'application/json; charset=utf-16' },
    ],
    ['nothing that says what it is', 415, 'POST', '/api/save', without(POST, 'Content-Type')],
    ['another method', 405, 'DELETE', '/api/card', GET],
    ['a question before a request from elsewhere', 405, 'OPTIONS', '/api/save', GET],
    ['reading where one writes', 405, 'GET', '/api/save', GET],
    ['writing where one reads', 405, 'POST', '/api/card', POST],
    ['what is not there', 404, 'GET', '/property.yaml', GET],
    ['a step up', 400, 'GET', '/../property.yaml', GET],
    ['a step up, encoded', 400, 'GET', '/%2e%2e/property.yaml', GET],
    ['a step up with the other stroke', 400, 'GET', '/..\\property.yaml', GET],
    ['a hidden file', 400, 'GET', '/.holdback-journal', GET],
    ['a hidden folder', 400, 'GET', '/desk/.git/config', GET],
    ['an address of another server', 400, 'GET', 'http://evil.example/', GET],
    ['no path', 400, 'OPTIONS', '*', GET],
    ['two strokes', 400, 'GET', '//evil.example/', GET],
    ['an end of text', 400, 'GET', '/desk.js\0.png', GET],
    ['without an end', 400, 'GET', `/${'a'.repeat(3000)}`, GET],
  ])('%s: %i', (_who, status, method, target, headers) => {
    expect(statusOf(method, target, headers)).toBe(status);
  });

  it.each(['Host', 'Origin', 'X-Holdback-Token', 'Content-Type', 'Sec-Fetch-Site'])(
    'refuses a %s that stands twice, whatever it says',
    (name) => {
      const headers: Headers = { ...POST, 'Sec-Fetch-Site': 'same-origin' };
      const again = headers[name] ?? '';
      expect(statusOf('POST', '/api/save', headers, [name.toLowerCase(), again])).toBe(400);
    },
  );

  it('lets nobody in where there is no token', () => {
    const request = {
      method: 'GET',
      target: '/api/card',
      headers: ['host', HOST, 'x-holdback-token', ''],
    };
    expect(guard(request, { ...GUARDING, token: '' })).toMatchObject({ ok: false, status: 401 });
  });

  it('says of another method which ones there are', () => {
    const request = { method: 'PUT', target: '/api/save', headers: Object.entries(POST).flat() };
    expect(guard(request, GUARDING)).toEqual({
      ok: false,
      status: 405,
      why: 'not in this way',
      allow: 'POST',
    });
  });
});
