export { type Band, band } from './band.ts';
export { columns, stackHeight } from './columns.ts';
export { type Placed, pagesOf } from './pages.ts';
export { type Cell, table, text } from './table.ts';
export { framed, heading, paragraph } from './texts.ts';
export { numbered, ticks } from './ticks.ts';
