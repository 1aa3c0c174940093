/** True only in the build that the browser tests drive; a released build drops what it guards. */
declare const __TEST_HOOKS__: boolean;

/** Only in the built service worker: what it keeps, as paths beside it, and a version that changes with any of them. */
declare const __OFFLINE__: { readonly version: string; readonly files: readonly string[] };
