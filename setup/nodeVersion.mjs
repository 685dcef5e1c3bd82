/** What is asked of Node, in words, for whoever has another one. */
export const nodeWanted = 'Node 20.19 or newer in the 20 line, 22.12 or newer in the 22 line, or Node 24 or newer';

/**
 * Does this version of Node run the program?
 *
 * @param {string} version - as `process.versions.node` gives it
 * @returns {boolean}
 */
export function nodeIsSupported(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major === 20) return minor >= 19;
  if (major === 22) return minor >= 12;
  return major >= 24;
}
