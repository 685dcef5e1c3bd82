export * from './building.ts';
export { buildingOf } from './buildingOf.ts';
export { type PlanInput, planOf } from './planOf.ts';
export { paperScale, sectionOf } from './sectionOf.ts';
export type {
  GateAt,
  HeadLine,
  HeadPoint,
  Level,
  MarkWords,
  PartLetters,
  Section,
  SectionInput,
  SectionWords,
  SludgeDepth,
  WaterPlace,
} from './sectionTypes.ts';
export { levelShapes, waterHeights } from './water.ts';
