export { type Band, band } from './band.ts';
export { type ColumnOf, columns, stackHeight } from './columns.ts';
export { type Body, type Placed, pagesOf, type Section } from './pages.ts';
export { type Cell, type Column, table, text } from './table.ts';
export { framed, heading, paragraph, space, spaces_pt } from './texts.ts';
export { numbered, ticks } from './ticks.ts';
