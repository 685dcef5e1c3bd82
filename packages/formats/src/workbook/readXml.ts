import { SaxesParser } from 'saxes';
import { overLimit, Unreadable, workbookLimits } from './workbookLimits.ts';

/** Attributes of an element by their names without a prefix; `r:id` keeps it, for it stands beside others of that name. */
export type XmlAttributes = Readonly<Record<string, string | undefined>>;

/** What is told of an XML text as it is read. Names come without their prefix. */
export interface XmlListener {
  open(name: string, attributes: XmlAttributes): void;
  text?(text: string): void;
  close?(name: string): void;
}

const plainName = (name: string) => name.slice(name.indexOf(':') + 1);

/** The decoder of the text these bytes begin: UTF-8, or UTF-16 with its mark. A byte that is no letter is refused. */
function decoderOf(first: Uint8Array) {
  const mark = first[0]! * 256 + first[1]!;
  const encoding = mark === 0xfffe ? 'utf-16le' : mark === 0xfeff ? 'utf-16be' : 'utf-8';
  return new TextDecoder(encoding, { fatal: true });
}

function parserFor(listener: XmlListener): SaxesParser {
  const parser = new SaxesParser({ position: false, xmlns: false });
  let depth = 0;
  parser.on('error', (error) => {
    throw new Unreadable(`its XML is broken (${error.message.replace(/\s+/g, ' ')})`);
  });
  parser.on('doctype', () => {
    throw new Unreadable('its XML declares a document type, which no workbook does');
  });
  parser.on('opentag', ({ name, attributes }) => {
    if (++depth > workbookLimits.depth) throw overLimit('depth', depth);
    listener.open(plainName(name), attributes as XmlAttributes);
  });
  parser.on('text', (text) => listener.text?.(text));
  parser.on('cdata', (text) => listener.text?.(text));
  parser.on('closetag', ({ name }) => {
    depth--;
    listener.close?.(plainName(name));
  });
  return parser;
}

/**
 * Reads a well-formed XML text piece by piece. No entity but the five of XML is known, no document type is let in, and nothing is
 * fetched.
 *
 * @param pieces - the bytes [byte]
 * @param listener - what is told of elements and text
 * @returns when all is read; rejects with Unreadable where it is not well-formed
 * @source xml-1-0, 2.1 and 4.6 (from memory)
 */
export async function readXml(pieces: AsyncIterable<Uint8Array>, listener: XmlListener): Promise<void> {
  const parser = parserFor(listener);
  let decoder: ReturnType<typeof decoderOf> | null = null;
  try {
    for await (const piece of pieces) {
      decoder ??= decoderOf(piece);
      parser.write(decoder.decode(piece, { stream: true }));
    }
    parser.write(decoder?.decode() ?? '');
  } catch (error) {
    if (error instanceof TypeError) throw new Unreadable('bytes that are no letters');
    if (error instanceof RangeError) throw new Unreadable('a text too long to hold');
    throw error;
  }
  parser.close();
}
