import { useEffect, useState } from 'preact/hooks';

/** A screen, as the part of the address after # says. */
export type Route =
  | { readonly screen: 'status' }
  | { readonly screen: 'card'; readonly card: string }
  | { readonly screen: 'reveals' }
  | { readonly screen: 'making'; readonly of: string };

/** The screen of an address; the status sheet where it names none. */
export function routeOf(hash: string): Route {
  const [screen = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  const named = rest.map(decoded).join('/');
  if (screen === 'card' && named !== '') return { screen, card: named };
  if (screen === 'making') return { screen, of: named };
  if (screen === 'reveals') return { screen };
  return { screen: 'status' };
}

export function addressOf(route: Route): string {
  if (route.screen === 'card') return `#/card/${encoded(route.card)}`;
  if (route.screen === 'making' && route.of !== '') return `#/making/${encoded(route.of)}`;
  return `#/${route.screen}`;
}

function encoded(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export function go(route: Route): void {
  location.hash = addressOf(route);
}

/** The screen that is asked for, now and whenever the address changes. */
export function useRoute(): Route {
  const [route, setRoute] = useState(() => routeOf(location.hash));
  useEffect(() => {
    const change = (): void => setRoute(routeOf(location.hash));
    addEventListener('hashchange', change);
    return () => removeEventListener('hashchange', change);
  }, []);
  return route;
}
