/** Set by the template, before the worker. */
declare const KEPT: readonly string[];
declare const RELEASE: string;
/** The worker itself. */
declare const worker: ServiceWorkerGlobalScope;
