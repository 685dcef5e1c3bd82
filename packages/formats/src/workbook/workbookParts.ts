import { type CellFormat, cellFormat } from './numberFormats.ts';
import { readXml, type XmlAttributes } from './readXml.ts';
import { plainText } from './sheetCells.ts';
import type { DaySystem } from './spreadsheetDays.ts';
import { overLimit, Unreadable, workbookLimits } from './workbookLimits.ts';
import type { Package } from './zipPackage.ts';

/** A sheet as the workbook lists it. */
export interface SheetListed {
  readonly name: string;
  readonly isHidden: boolean;
  /** The part its cells are in; null where it is none of this file. */
  readonly part: string | null;
}

/** What a workbook says of its sheets, before any is read. */
export interface WorkbookParts {
  readonly sheets: readonly SheetListed[];
  readonly days: DaySystem;
  readonly textsPart: string | null;
  readonly formatsPart: string | null;
  /** Links to other workbooks, which are never followed. */
  readonly otherWorkbooks: number;
}

interface Relation {
  readonly id: string;
  readonly type: string;
  readonly target: string | null;
}

/** The part a target leads to from the part it is named in. Segments `..` may climb within the package, not out of it. */
function partFrom(base: string, target: string): string | null {
  const path = target.startsWith('/') ? target.slice(1) : base.slice(0, base.lastIndexOf('/') + 1) + target;
  const kept: string[] = [];
  for (const segment of path.split('/')) {
    if (segment === '' || segment === '.') continue;
    if (segment !== '..') kept.push(segment);
    else if (kept.pop() === undefined) return null;
  }
  return kept.join('/');
}

async function relationsOf(zip: Package, part: string): Promise<readonly Relation[]> {
  const cut = part.lastIndexOf('/') + 1;
  const file = `${part.slice(0, cut)}_rels/${part.slice(cut)}.rels`;
  if (!zip.has(file)) return [];
  const relations: Relation[] = [];
  await readXml(zip.read(file), {
    open(name, { Id: id = '', Type: type = '', Target: target = '', TargetMode: mode }) {
      if (name !== 'Relationship') return;
      if (relations.length > workbookLimits.entries) throw overLimit('entries', relations.length);
      const isOutside = mode === 'External';
      relations.push({
        id,
        type: type.slice(type.lastIndexOf('/') + 1),
        target: isOutside ? null : partFrom(part, target),
      });
    },
  });
  return relations;
}

/** The attribute that names a relation, whatever its prefix. */
function relationId(attributes: XmlAttributes): string {
  const key = Object.keys(attributes).find((name) => name.endsWith(':id'));
  return (key && attributes[key]) ?? '';
}

/**
 * Which sheets has this workbook, and where do its parts stand?
 *
 * @param zip - the opened file
 * @returns the sheets in their order, the day it counts from, and the parts that hold texts and formats
 * @source ecma-376, Part 1, 18.2 (from memory); Part 2, relationships
 */
export async function workbookParts(zip: Package): Promise<WorkbookParts> {
  const root = (await relationsOf(zip, '')).find(({ type }) => type === 'officeDocument');
  const part = root?.target;
  if (!part || !zip.has(part)) throw new Unreadable('its main part is not there');
  const relations = await relationsOf(zip, part);
  const partOf = (id: string) =>
    relations.find((relation) => relation.id === id && relation.type === 'worksheet')?.target;
  const first = (type: string) => relations.find((relation) => relation.type === type)?.target ?? null;
  const sheets: SheetListed[] = [];
  let days: DaySystem = '1900';
  let isWorkbook = false;
  await readXml(zip.read(part), {
    open(name, attributes) {
      if (name === 'workbook') isWorkbook = true;
      if (name === 'workbookPr' && ['1', 'true'].includes(attributes['date1904'] ?? '')) days = '1904';
      if (name !== 'sheet') return;
      if (sheets.length > workbookLimits.entries) throw overLimit('entries', sheets.length);
      const target = partOf(relationId(attributes)) ?? null;
      const isHidden = (attributes['state'] ?? 'visible') !== 'visible';
      sheets.push({ name: plainText(attributes['name'] ?? ''), isHidden, part: target });
    },
  });
  if (!isWorkbook) throw new Unreadable('its main part is no workbook');
  const otherWorkbooks = relations.filter(({ type }) => type === 'externalLink').length;
  return { sheets, days, textsPart: first('sharedStrings'), formatsPart: first('styles'), otherWorkbooks };
}

/**
 * Which texts do the cells of a workbook share? Pronunciation that stands beside them is left out.
 *
 * @param pieces - the bytes of the part [byte]
 * @returns the texts in their order [text]
 * @source ecma-376, Part 1, 18.4 (from memory)
 */
export async function readSharedTexts(pieces: AsyncIterable<Uint8Array>): Promise<readonly string[]> {
  const texts: string[] = [];
  let text: string | null = null;
  let isInText = false;
  let isPhonetic = false;
  await readXml(pieces, {
    open(name) {
      if (name === 'si') text = '';
      else if (name === 'rPh') isPhonetic = true;
      else if (name === 't') isInText = !isPhonetic;
    },
    text(piece) {
      if (isInText && text !== null) text += piece;
    },
    close(name) {
      if (name === 't') isInText = false;
      else if (name === 'rPh') isPhonetic = false;
      else if (name === 'si' && text !== null) {
        texts.push(plainText(text));
        if (texts.length > workbookLimits.cells) throw overLimit('cells', texts.length);
        text = null;
      }
    },
  });
  return texts;
}

/**
 * How does each style of a workbook show numbers?
 *
 * @param pieces - the bytes of the part [byte]
 * @returns the format of each style, by its number
 * @source ecma-376, Part 1, 18.8 (from memory)
 */
export async function readFormats(pieces: AsyncIterable<Uint8Array>): Promise<readonly CellFormat[]> {
  const codes = new Map<string, string>();
  const formats: CellFormat[] = [];
  let isInCells = false;
  await readXml(pieces, {
    open(name, { numFmtId: id = '0', formatCode: code }) {
      if (name === 'numFmt' && code !== undefined && codes.size < workbookLimits.entries) codes.set(id, code);
      else if (name === 'cellXfs') isInCells = true;
      else if (name === 'xf' && isInCells && formats.length < workbookLimits.cells)
        formats.push(cellFormat(Number(id), codes.get(id)));
    },
    close(name) {
      if (name === 'cellXfs') isInCells = false;
    },
  });
  return formats;
}
