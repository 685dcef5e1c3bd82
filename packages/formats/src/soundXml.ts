/** How an XML text may be. */
export interface XmlLimits {
  /** Elements inside one another. */
  readonly deepest: number;
  readonly most_elements: number;
}

/** Why an XML text is not parsed at all. */
export type XmlFault =
  | { readonly code: 'positions.doctype' }
  | { readonly code: 'positions.too_deep'; readonly deepest: number }
  | { readonly code: 'positions.too_many'; readonly most: number }
  | { readonly code: 'positions.xml_broken'; readonly reason: 'cutOff' };

/** What begins with `<` and is no tag, and how it ends. */
const others = [
  ['<!--', '-->'],
  ['<![CDATA[', ']]>'],
  ['<?', '?>'],
] as const;

/** Where a tag ends: the first > outside quotes; -1 where it does not. */
function tagEnd(text: string, from: number): number {
  let quote = '';
  for (let at = from; at < text.length; at++) {
    const letter = text[at]!;
    if (quote !== '') {
      if (letter === quote) quote = '';
    } else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '>') return at;
  }
  return -1;
}

/**
 * May this XML text be given to a parser? Not with a document type, in which entities could be declared, and not where it is
 * deeper or larger than anything a map needs. Nothing is parsed for it: it is read through once.
 *
 * @param text - the text [text]
 * @param limits - depth and number of elements
 * @returns null where it may; else the first fault
 * @problem positions.doctype - it has a document type
 * @law reads each letter a few times at most, whatever stands in the text
 * @source Extensible Markup Language (XML) 1.0, sections 2.4 to 2.8 (from memory)
 */
export function xmlFault(text: string, limits: XmlLimits): XmlFault | null {
  let [at, depth, elements] = [text.indexOf('<'), 0, 0];
  while (at !== -1) {
    const other = others.find(([start]) => text.startsWith(start, at));
    const end = other ? text.indexOf(other[1], at + other[0].length) : tagEnd(text, at);
    if (!other && text[at + 1] === '!') return { code: 'positions.doctype' };
    if (end === -1) return { code: 'positions.xml_broken', reason: 'cutOff' };
    if (!other) {
      if (text[at + 1] === '/') depth--;
      else {
        elements++;
        if (text[end - 1] !== '/') depth++;
      }
      if (depth > limits.deepest) return { code: 'positions.too_deep', deepest: limits.deepest };
      if (elements > limits.most_elements) return { code: 'positions.too_many', most: limits.most_elements };
    }
    at = text.indexOf('<', end);
  }
  return depth > 0 ? { code: 'positions.xml_broken', reason: 'cutOff' } : null;
}
