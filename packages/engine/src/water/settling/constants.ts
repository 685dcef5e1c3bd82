/** Factor of the laminar part of Ferguson and Church's curve [number], the same for every grain. Source: ferguson-church-2004, C1. */
export const laminarFactor = 18;

/** Factor of its turbulent part [number]: grains as they come in nature by sieve, and smooth spheres. Source: ferguson-church-2004, C2. */
export const turbulentFactor = { grain: 1, sphere: 0.4 } as const;

/** The grains shown, from clay to coarse sand [µm]. Ours; 2 and 63 µm are where clay, silt and sand part by ISO 14688-1 (from memory). */
export const shownGrains_um = [2, 5, 10, 20, 50, 63, 100, 200] as const;

/** One mixed cell, where nothing is said of baffles [count]. Ours: the worst there is; docs/decisions/0180-settling.md. */
export const cellsUnknown_count = 1;

/** Dry dirt in a cubic metre of wet sludge [kg/m3]. Ours: loose fresh mud, docs/decisions/0181-sludge.md. */
export const sludgeDry_kg_per_m3 = 250;

/** The sludge is to stay so far under the draw-off [m]. Ours, docs/decisions/0181-sludge.md. */
export const sludgeClearance_m = 0.1;

/** The inlet is to be so far over the draw-off, that what comes in does not go straight out [m]. Ours, docs/decisions/0180-settling.md. */
export const inletOverDrawOff_m = 0.1;

/** The draw-off is to be so far over the floor, that there is room for sludge [m]. Ours, docs/decisions/0181-sludge.md. */
export const leastDrawOff_m = 0.1;
