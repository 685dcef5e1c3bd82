export type { Face, Weight } from './faces.ts';
export { facesOf } from './faces.ts';
export { type MissingLetter, type Span, spansOf, type Text } from './letters.ts';
export { type Line, linesOf, type Run } from './lines.ts';
export { type Direction, type Paragraph, paragraphOf } from './paragraph.ts';
