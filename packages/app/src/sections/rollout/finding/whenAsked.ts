/** Makes a thing when it is first asked for: to look through ten thousand names is prepared by the first letter, not as the page opens. */
export function whenAsked<T>(make: () => T): () => T {
  let made: { readonly of: T } | null = null;
  return () => {
    made ??= { of: make() };
    return made.of;
  };
}
