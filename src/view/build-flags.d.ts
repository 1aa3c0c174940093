/** True only in the build that the browser tests drive; a released build drops what it guards. */
declare const __TEST_HOOKS__: boolean;
