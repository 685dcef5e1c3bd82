export { facesOf, type Weight } from './faces.ts';
export type { MissingLetter, Text } from './letters.ts';
export { type Line, linesOf } from './lines.ts';
export { type Direction, paragraphOf } from './paragraph.ts';
