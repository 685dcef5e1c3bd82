/**
 * The library that judges cells tries whether it may make functions of text, and the policy of these pages forbids that:
 * each try would be told as a breach. It is asked not to try. Its own door, `config`, would bring the library into the
 * first chunk; this is the place that door writes to.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
