export * from './building/index.ts';
export * from './charts/index.ts';
export * from './kit/index.ts';
export { type CarePictureId, carePicture, carePictureIds } from './pictures/index.ts';
export * from './safety/index.ts';
export * from './sheet/shapes.ts';
export { type SvgNode, svgOf } from './sheet/svgOf.ts';
export { svgText } from './sheet/svgText.ts';
