/** Which build of the program runs: `build.mjs` puts a mark of the whole source here. */

declare const BUILD_MARK: string | undefined;

/** Undefined where the source runs without having been built. */
export const buildMark: string | undefined = typeof BUILD_MARK === 'string' ? BUILD_MARK : undefined;
