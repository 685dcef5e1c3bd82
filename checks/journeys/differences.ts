/** An array that travelled as its bytes, as it was; anything else as it is. */
function unpacked(value: object): object {
  if (!('base64' in value) || typeof value.base64 !== 'string') return value;
  const bytes = new Uint8Array(Buffer.from(value.base64, 'base64'));
  return 'isFloat' in value && value.isFloat === true ? new Float64Array(bytes.buffer) : bytes;
}

/**
 * Differences over what two engines of scripts may differ by: counts, days and whole litres not at all, other figures by 1e-12 of themselves; what
 * of a day is left over of a full tank (spill, content) by 1e-12 of the tank.
 */
export function differences(here: unknown, there: unknown, at = '', scale = 0): readonly string[] {
  if (typeof here === 'number' && typeof there === 'number') {
    if (here === there) return [];
    const isClose = Math.abs(here - there) <= 1e-12 * Math.max(scale, Math.abs(here), Math.abs(there));
    const isWhole = scale === 0 && (Number.isInteger(here) || Number.isInteger(there));
    return isClose && !isWhole ? [] : [`${at}: ${here} and ${there}`];
  }
  if (here === null || there === null || typeof here !== 'object' || typeof there !== 'object')
    return here === there ? [] : [`${at}: ${String(here)} and ${String(there)}`];
  const [one, other] = [here as Record<string, unknown>, unpacked(there) as Record<string, unknown>];
  const inDays =
    one['content_L'] instanceof Float64Array ? one['content_L'].reduce((a, b) => Math.max(a, b), 0) : scale;
  const isArray = ArrayBuffer.isView(one) && ArrayBuffer.isView(other);
  if (isArray && isSameArray(one as unknown as Numbers, other as unknown as Numbers, scale)) return [];
  const found: string[] = [];
  for (const name of new Set([...Object.keys(one), ...Object.keys(other)])) {
    if (name === 'took_ms') continue;
    found.push(...differences(one[name], other[name], `${at}.${name}`, inDays));
    if (found.length > 5) break;
  }
  return found;
}

type Numbers = ArrayLike<number>;

/** The quick way to see that there is nothing to tell. */
function isSameArray(one: Numbers, other: Numbers, scale: number): boolean {
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) {
    const [a, b] = [one[i]!, other[i]!];
    if (a !== b && !(Math.abs(a - b) <= 1e-12 * Math.max(scale, Math.abs(a), Math.abs(b)))) return false;
  }
  return true;
}
