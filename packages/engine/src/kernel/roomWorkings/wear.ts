/** The steps of a working of room wear, in their order. */
export const wearWorkings = ['wear.litres', 'wear.turbidity', 'wear.fouling', 'wear.ends', 'wear.endsOn'] as const;
