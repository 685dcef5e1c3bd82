/** Made from docs/openapi.json by `npm run generate`. */
export interface paths {
    readonly "/api/events": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Tells what changes, as it happens (server-sent events). */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path?: never;
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The programmes of this data folder. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path?: never;
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly programmes: readonly components["schemas"]["programme"][];
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        /** Makes a programme: empty, or invented to try things on. */
        readonly post: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path?: never;
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        /** @description Who makes the change. */
                        readonly by: string;
                        /**
                         * @default empty
                         * @enum {string}
                         */
                        readonly from?: "empty" | "demo";
                        readonly name: string;
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 201: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["programme"];
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Where a programme stands. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly conflicts: number;
                            /** @description The version the design is of; null where there is none yet. */
                            readonly designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            readonly done_fraction: number;
                            readonly isFailed: boolean;
                            readonly madeAt: string;
                            readonly name: string;
                            readonly programmeId: string;
                            readonly redo: string | null;
                            /** @description The record that undo would take back. */
                            readonly undo: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/changes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The records, newest first. */
        readonly get: {
            readonly parameters: {
                readonly query?: {
                    /** @description Only records before this place, counted from 1. */
                    readonly before?: number;
                    readonly most?: number;
                };
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly records: readonly {
                                /** Format: date-time */
                                readonly at: string;
                                readonly by: string;
                                readonly changeCount: number;
                                /** @description The first 200. */
                                readonly changes: readonly ({
                                    readonly after: {
                                        readonly [key: string]: string;
                                    };
                                    readonly key: string;
                                    /** @enum {string} */
                                    readonly kind: "added";
                                    readonly table: string;
                                } | {
                                    readonly after: {
                                        readonly [key: string]: string | null;
                                    };
                                    readonly before: {
                                        readonly [key: string]: string | null;
                                    };
                                    readonly key: string;
                                    /** @enum {string} */
                                    readonly kind: "edited";
                                    readonly table: string;
                                } | {
                                    readonly before: {
                                        readonly [key: string]: string;
                                    };
                                    readonly key: string;
                                    /** @enum {string} */
                                    readonly kind: "removed";
                                    readonly table: string;
                                })[];
                                readonly clock: number;
                                readonly device: string;
                                readonly number: number;
                                readonly offset_min: number;
                                readonly place: number;
                                readonly source: {
                                    /** @enum {string} */
                                    readonly kind: "form" | "import" | "visit" | "undo" | "redo";
                                    readonly name: string | null;
                                };
                                readonly takesBack: string | null;
                            }[];
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        /** Changes rows: one record of all that is asked, or nothing. */
        readonly post: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        /** @description Who makes the change. */
                        readonly by: string;
                        readonly changes: readonly ({
                            readonly after: {
                                readonly [key: string]: string;
                            };
                            readonly key: string;
                            /** @enum {string} */
                            readonly kind: "added";
                            readonly table: string;
                        } | {
                            readonly after: {
                                readonly [key: string]: string | null;
                            };
                            readonly before: {
                                readonly [key: string]: string | null;
                            };
                            readonly key: string;
                            /** @enum {string} */
                            readonly kind: "edited";
                            readonly table: string;
                        } | {
                            readonly before: {
                                readonly [key: string]: string;
                            };
                            readonly key: string;
                            /** @enum {string} */
                            readonly kind: "removed";
                            readonly table: string;
                        })[];
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly problems: readonly components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            readonly record: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/conflicts": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What two people said that cannot both be so. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly conflicts: readonly ({
                                readonly column: string;
                                readonly key: string;
                                /** @enum {string} */
                                readonly kind: "cell";
                                readonly over: string | null;
                                readonly overBy: string;
                                readonly stands: string | null;
                                readonly standsBy: string;
                                readonly table: string;
                            } | {
                                readonly changedBy: string;
                                readonly key: string;
                                /** @enum {string} */
                                readonly kind: "row";
                                readonly removedBy: string;
                                readonly table: string;
                            })[];
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/design": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The design, as far as it is; asking begins it where it is not made yet. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            /** @description The version the design is of; null where there is none yet. */
                            readonly designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            readonly done_fraction: number;
                            readonly isFailed: boolean;
                            readonly report: {
                                /** @description Version of the program. */
                                readonly eavewell: string;
                                readonly gauges: readonly components["schemas"]["gauge"][];
                                readonly notUsed: readonly components["schemas"]["notUsed"][];
                                /** @description What was found in the folder. */
                                readonly problems: readonly components["schemas"]["problem"][];
                                readonly programme: {
                                    readonly name: string;
                                    /** @description Of the sites whose people are known. */
                                    readonly people: number;
                                    readonly sites: number;
                                    readonly sitesWithoutPeople: number;
                                };
                                readonly remedies: components["schemas"]["remedies"];
                                /** @description Only where a scenario is asked for: a question put to the rain of the past, not a forecast. */
                                readonly scenario?: {
                                    readonly asked: {
                                        readonly lastYears: number | null;
                                        readonly wetDayRain_fraction: number;
                                        readonly wetDays_fraction: number;
                                    };
                                    readonly changed: readonly {
                                        readonly siteId: string;
                                        /**
                                         * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                         * @enum {string}
                                         */
                                        readonly under: "holds" | "tight" | "short" | "unknown";
                                        /**
                                         * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                         * @enum {string}
                                         */
                                        readonly verdict: "holds" | "tight" | "short" | "unknown";
                                    }[];
                                    /** @description Sites by verdict as they are. */
                                    readonly present: {
                                        readonly holds: number;
                                        readonly short: number;
                                        readonly tight: number;
                                        readonly unknown: number;
                                    };
                                    /** @description Sites by verdict under the scenario. */
                                    readonly under: {
                                        readonly holds: number;
                                        readonly short: number;
                                        readonly tight: number;
                                        readonly unknown: number;
                                    };
                                };
                                /** @enum {number} */
                                readonly schema: 2;
                                readonly settings: {
                                    /** @enum {string} */
                                    readonly dayOrder: "drawFirst" | "yas" | "ybs";
                                    readonly designAfterHandOver_years: number;
                                    readonly draws: number;
                                    readonly firstFlush_mm: number;
                                    /** @enum {string} */
                                    readonly gapFilling: "otherYears" | "normalRatio" | "inverseDistance";
                                    readonly gaugeReach_km: number;
                                    readonly growthFraction_per_year: number | null;
                                    readonly leastYears: number;
                                    readonly litres_per_person_per_day: number;
                                    readonly madeYears: number;
                                    readonly missingDays_fraction: number;
                                    readonly people_per_household: number | null;
                                    readonly programme: string;
                                    readonly range_fraction: number;
                                    readonly seed: number;
                                    readonly target: {
                                        readonly daysMet_fraction: number;
                                        readonly goodYears_fraction: number;
                                        readonly longestDryRun_days: number;
                                    };
                                    readonly waterYearStartMonth: number | null;
                                    /** @enum {string} */
                                    readonly wetDayAmounts: "gamma" | "mixedExponential";
                                };
                                readonly sites: readonly components["schemas"]["site"][];
                            } | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        /** Calls the running design off. */
        readonly delete: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly conflicts: number;
                            /** @description The version the design is of; null where there is none yet. */
                            readonly designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            readonly done_fraction: number;
                            readonly isFailed: boolean;
                            readonly madeAt: string;
                            readonly name: string;
                            readonly programmeId: string;
                            readonly redo: string | null;
                            /** @description The record that undo would take back. */
                            readonly undo: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/export.zip": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The whole programme as a zip: its tables and its records. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What stood in one cell, since when, and who put it there. */
        readonly get: {
            readonly parameters: {
                readonly query: {
                    readonly column: string;
                    readonly key: string;
                    readonly table: string;
                };
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly entries: readonly {
                                readonly after: string | null;
                                readonly before: string | null;
                                readonly record: {
                                    /** Format: date-time */
                                    readonly at: string;
                                    readonly by: string;
                                    readonly clock: number;
                                    readonly device: string;
                                    readonly number: number;
                                    readonly offset_min: number;
                                    readonly source: {
                                        /** @enum {string} */
                                        readonly kind: "form" | "import" | "visit" | "undo" | "redo";
                                        readonly name: string | null;
                                    };
                                    readonly takesBack: string | null;
                                };
                            }[];
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/imports": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Sends a zip of a programme folder, or one table, to be looked at. Nothing is written. The body is the file. */
        readonly post: {
            readonly parameters: {
                readonly query: {
                    /** @description What becomes of rows that are not in their file. */
                    readonly absent?: "stay" | "go";
                    readonly gaugeId?: string;
                    /** @description The name of the file that is sent. */
                    readonly name: string;
                    readonly table?: "rain" | "sites" | "roofs" | "diverters" | "tanks" | "demand" | "gauges" | "normals" | "parts" | "prices" | "targets" | "presence" | "secondSources" | "places" | "ways";
                };
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 201: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/imports/{importId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What a file brings, what is wrong in it, and what it would change. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly importId: string;
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        /** Lets a file go: nothing of it stays. */
        readonly delete: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly importId: string;
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 204: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly options?: never;
        readonly head?: never;
        /** Mends one cell of a file that waits. */
        readonly patch: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly importId: string;
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        readonly column: string;
                        readonly file: string;
                        readonly row: number;
                        readonly value: string;
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/imports/{importId}/accept": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Takes a file in, as one record. */
        readonly post: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly importId: string;
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        /** @description Who makes the change. */
                        readonly by: string;
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly problems: readonly components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            readonly record: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/redo": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Takes back the last undo. */
        readonly post: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        /** @description Who makes the change. */
                        readonly by: string;
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly problems: readonly components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            readonly record: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/sites": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Every site, with its verdict as far as it is known. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            /** @description The version the design is of; null where there is none yet. */
                            readonly designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            readonly done_fraction: number;
                            readonly isFailed: boolean;
                            readonly sites: readonly {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                readonly cells: {
                                    readonly [key: string]: string;
                                };
                                /** @description Null where it is not worked out yet, or the row cannot be used. */
                                readonly design: {
                                    /** @description The finding in a sentence or two. */
                                    readonly finding: string;
                                    /** @description As counted, or made from the households. */
                                    readonly people: number | null;
                                    /** @description The first change that would mend it, in words. */
                                    readonly remedy: string | null;
                                    readonly stations: {
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        readonly gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        readonly roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        readonly storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        readonly tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        readonly unit: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                    };
                                    /**
                                     * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                     * @enum {string}
                                     */
                                    readonly verdict: "holds" | "tight" | "short" | "unknown";
                                } | null;
                                readonly key: string;
                            }[];
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/sites/{siteId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One site in full. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                    readonly siteId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly design: components["schemas"]["site"] | null;
                            /** @description The version the design is of; null where there is none yet. */
                            readonly designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            readonly done_fraction: number;
                            readonly isFailed: boolean;
                            /** @description What was found in the tables about it. */
                            readonly problems: readonly components["schemas"]["problem"][];
                            readonly rows: readonly {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                readonly cells: {
                                    readonly [key: string]: string;
                                };
                                readonly key: string;
                                readonly table: string;
                            }[];
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/tables/{table}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The rows of one table. */
        readonly get: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                    readonly table: "rain" | "settings" | "wayLines" | "headers" | "files" | "sites" | "roofs" | "diverters" | "tanks" | "demand" | "gauges" | "normals" | "parts" | "prices" | "targets" | "presence" | "secondSources" | "places" | "ways";
                };
                readonly cookie?: never;
            };
            readonly requestBody?: never;
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly rows: readonly {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                readonly cells: {
                                    readonly [key: string]: string;
                                };
                                readonly key: string;
                            }[];
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/programmes/{programmeId}/undo": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Takes back the last change made on this computer. */
        readonly post: {
            readonly parameters: {
                readonly query?: never;
                readonly header?: never;
                readonly path: {
                    readonly programmeId: string;
                };
                readonly cookie?: never;
            };
            readonly requestBody: {
                readonly content: {
                    readonly "application/json": {
                        /** @description Who makes the change. */
                        readonly by: string;
                    };
                };
            };
            readonly responses: {
                /** @description Default Response */
                readonly 200: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": {
                            readonly problems: readonly components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            readonly record: string | null;
                            /** @description Grows with every change. */
                            readonly version: number;
                        };
                    };
                };
                /** @description Default Response */
                readonly default: {
                    headers: {
                        readonly [name: string]: unknown;
                    };
                    content: {
                        readonly "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        readonly gauge: {
            readonly gaugeId: string;
            readonly name: string;
            readonly problems: readonly components["schemas"]["problem"][];
            /** @description Null where the record cannot carry a verdict. */
            readonly rain: {
                /** @description Days at both ends that make no whole water year. */
                readonly cutDays: number;
                readonly filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                readonly firstDay: string;
                readonly judgedYears: number;
                /** @description A day, YYYY-MM-DD. */
                readonly lastDay: string;
                /** @description Longest run of days under 1 mm in the judged years. */
                readonly longestRainlessRun_days: number;
                /** @description Days of made-up rain: all or none. Its years are counted from 1, not by the calendar. */
                readonly madeDays: number;
                readonly meanAnnualRain_mm: number;
                /** @description Of the filled days, those filled from neighbouring gauges. */
                readonly neighbourDays: number;
                readonly waterYearStartMonth: number;
                readonly years: readonly {
                    readonly judged: boolean;
                    readonly missing_days: number;
                    readonly waterYear: number;
                }[];
            } | null;
        };
        readonly gaugeInput: {
            readonly gaugeId: string;
            readonly name: string;
            readonly problems: readonly components["schemas"]["problemInput"][];
            /** @description Null where the record cannot carry a verdict. */
            readonly rain: {
                /** @description Days at both ends that make no whole water year. */
                readonly cutDays: number;
                readonly filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                readonly firstDay: string;
                readonly judgedYears: number;
                /** @description A day, YYYY-MM-DD. */
                readonly lastDay: string;
                /** @description Longest run of days under 1 mm in the judged years. */
                readonly longestRainlessRun_days: number;
                /** @description Days of made-up rain: all or none. Its years are counted from 1, not by the calendar. */
                readonly madeDays: number;
                readonly meanAnnualRain_mm: number;
                /** @description Of the filled days, those filled from neighbouring gauges. */
                readonly neighbourDays: number;
                readonly waterYearStartMonth: number;
                readonly years: readonly {
                    readonly judged: boolean;
                    readonly missing_days: number;
                    readonly waterYear: number;
                }[];
            } | null;
        };
        readonly notUsed: {
            /** @description The whole row as it was written. */
            readonly cells: readonly string[];
            readonly code: string;
            /** @description Null where the whole row was not used. */
            readonly column: string | null;
            readonly file: string;
            readonly row: number;
            /** @description As it was written. */
            readonly value: string;
        };
        readonly notUsedInput: {
            /** @description The whole row as it was written. */
            readonly cells: readonly string[];
            readonly code: string;
            /** @description Null where the whole row was not used. */
            readonly column: string | null;
            readonly file: string;
            readonly row: number;
            /** @description As it was written. */
            readonly value: string;
        };
        readonly problem: {
            readonly code: string;
            readonly facts: {
                readonly [key: string]: string | number | readonly string[];
            };
            /** @description Where it was found. */
            readonly place: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                readonly cell?: string;
                readonly column?: string;
                /** @description A day, YYYY-MM-DD. */
                readonly day?: string;
                readonly file?: string;
                readonly gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                readonly row?: number;
                readonly siteId?: string;
            };
            /** @enum {string} */
            readonly severity: "blocker" | "warning" | "note";
            /** @description What to do about it. */
            readonly todo: string;
            /** @description What is wrong. */
            readonly what: string;
        };
        readonly problemInput: {
            readonly code: string;
            readonly facts: {
                readonly [key: string]: string | number | readonly string[];
            };
            /** @description Where it was found. */
            readonly place: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                readonly cell?: string;
                readonly column?: string;
                /** @description A day, YYYY-MM-DD. */
                readonly day?: string;
                readonly file?: string;
                readonly gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                readonly row?: number;
                readonly siteId?: string;
            };
            /** @enum {string} */
            readonly severity: "blocker" | "warning" | "note";
            /** @description What to do about it. */
            readonly todo: string;
            /** @description What is wrong. */
            readonly what: string;
        };
        readonly problems: {
            readonly detail: string;
            readonly problems: readonly components["schemas"]["problem"][];
            readonly status: number;
            readonly title: string;
            readonly type: string;
        };
        readonly problemsInput: {
            readonly detail: string;
            readonly problems: readonly components["schemas"]["problemInput"][];
            readonly status: number;
            readonly title: string;
            readonly type: string;
        };
        readonly programme: {
            readonly madeAt: string;
            readonly name: string;
            readonly programmeId: string;
        };
        readonly programmeInput: {
            readonly madeAt: string;
            readonly name: string;
            readonly programmeId: string;
        };
        /** @description Each site by its smallest remedy. */
        readonly remedies: {
            readonly groups: readonly {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                readonly isPromiseCut: boolean;
                readonly kinds: readonly ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "secondSource" | "people" | "litres")[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly verdict: "holds" | "tight" | "short" | "unknown";
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            }[];
            /** @description Sites that are short or tight. */
            readonly looked: {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            };
            /** @description Those that would hold. */
            readonly mended: {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            };
            readonly notMended: readonly {
                /** @enum {string} */
                readonly reason: "assumed" | "growth" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart";
                readonly siteIds: readonly string[];
            }[];
            /** @description Prices are the latest on or before this day; null where there are none. */
            readonly pricesOn: string | null;
        };
        /** @description Each site by its smallest remedy. */
        readonly remediesInput: {
            readonly groups: readonly {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                readonly isPromiseCut: boolean;
                readonly kinds: readonly ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "secondSource" | "people" | "litres")[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly verdict: "holds" | "tight" | "short" | "unknown";
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            }[];
            /** @description Sites that are short or tight. */
            readonly looked: {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            };
            /** @description Those that would hold. */
            readonly mended: {
                readonly costs: readonly {
                    readonly amount: number;
                    readonly currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                readonly people: number;
                readonly sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                readonly withoutCost_count: number;
                readonly withoutPeople_count: number;
            };
            readonly notMended: readonly {
                /** @enum {string} */
                readonly reason: "assumed" | "growth" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart";
                readonly siteIds: readonly string[];
            }[];
            /** @description Prices are the latest on or before this day; null where there are none. */
            readonly pricesOn: string | null;
        };
        readonly remedy: {
            /** @description The changes in words. */
            readonly about: string;
            /** @description One, or two together. */
            readonly changes: readonly ({
                /** @constant */
                readonly kind: "secondTank";
                readonly partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
                readonly volume_L: number;
            } | {
                /** @constant */
                readonly kind: "largerTank";
                readonly partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
                readonly volume_L: number;
            } | {
                readonly gutteredFraction: number;
                /** @constant */
                readonly kind: "gutter";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
            } | {
                readonly firstFlush_mm: number;
                /** @constant */
                readonly kind: "firstFlush";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
            } | {
                /** @constant */
                readonly kind: "secondSource";
                readonly name: string;
                readonly secondSourceId: string;
                /** @enum {string} */
                readonly sourceKind: "river" | "spring" | "well" | "pond" | "vendor";
            } | {
                /** @description Those of the design year who stay. */
                readonly carried_people: number;
                /** @constant */
                readonly kind: "people";
                /** @description Those who drink at a site of their own. */
                readonly others_people: number;
            } | {
                /** @description False: only the other purposes are dropped. */
                readonly isJudgedCut: boolean;
                /** @description What is left of the judged purposes. */
                readonly judged_L_per_person_per_day: number;
                /** @constant */
                readonly kind: "litres";
            })[];
            /** @description Of the parts alone: downpipes, brackets, stands, carrying and work are not in it. */
            readonly cost: {
                /** @description Null where a price is missing; 0 where nothing is bought. */
                readonly amount: number | null;
                readonly bought: readonly {
                    /** @description Of one. */
                    readonly amount: number;
                    readonly currency: string;
                    readonly partId: string;
                    readonly pieces_count: number;
                    /** @description A day, YYYY-MM-DD. */
                    readonly priceDate: string;
                }[];
                readonly currency: string | null;
                readonly reason: ("noPart" | "noPrice" | "onlyLaterPrices" | "roofLengthUnknown" | "currenciesDiffer" | "otherSite" | "secondSource") | null;
            };
            /** @description Of the tank that is then worst off. */
            readonly dryDays_per_year: number;
            readonly goodYears: number;
            /** @description 0: what was promised is kept; else the step down, the mildest 1. */
            readonly promiseCut_count: number;
            /** @description Days of water from the second source it declares; null where it declares none. */
            readonly sourceDays_per_year: number | null;
            /** @description Of all tanks together. */
            readonly tankVolume_L: number;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
        };
        readonly remedyInput: {
            /** @description The changes in words. */
            readonly about: string;
            /** @description One, or two together. */
            readonly changes: readonly ({
                /** @constant */
                readonly kind: "secondTank";
                readonly partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
                readonly volume_L: number;
            } | {
                /** @constant */
                readonly kind: "largerTank";
                readonly partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
                readonly volume_L: number;
            } | {
                readonly gutteredFraction: number;
                /** @constant */
                readonly kind: "gutter";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
            } | {
                readonly firstFlush_mm: number;
                /** @constant */
                readonly kind: "firstFlush";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                readonly tankId: string | null;
            } | {
                /** @constant */
                readonly kind: "secondSource";
                readonly name: string;
                readonly secondSourceId: string;
                /** @enum {string} */
                readonly sourceKind: "river" | "spring" | "well" | "pond" | "vendor";
            } | {
                /** @description Those of the design year who stay. */
                readonly carried_people: number;
                /** @constant */
                readonly kind: "people";
                /** @description Those who drink at a site of their own. */
                readonly others_people: number;
            } | {
                /** @description False: only the other purposes are dropped. */
                readonly isJudgedCut: boolean;
                /** @description What is left of the judged purposes. */
                readonly judged_L_per_person_per_day: number;
                /** @constant */
                readonly kind: "litres";
            })[];
            /** @description Of the parts alone: downpipes, brackets, stands, carrying and work are not in it. */
            readonly cost: {
                /** @description Null where a price is missing; 0 where nothing is bought. */
                readonly amount: number | null;
                readonly bought: readonly {
                    /** @description Of one. */
                    readonly amount: number;
                    readonly currency: string;
                    readonly partId: string;
                    readonly pieces_count: number;
                    /** @description A day, YYYY-MM-DD. */
                    readonly priceDate: string;
                }[];
                readonly currency: string | null;
                readonly reason: ("noPart" | "noPrice" | "onlyLaterPrices" | "roofLengthUnknown" | "currenciesDiffer" | "otherSite" | "secondSource") | null;
            };
            /** @description Of the tank that is then worst off. */
            readonly dryDays_per_year: number;
            readonly goodYears: number;
            /** @description 0: what was promised is kept; else the step down, the mildest 1. */
            readonly promiseCut_count: number;
            /** @description Days of water from the second source it declares; null where it declares none. */
            readonly sourceDays_per_year: number | null;
            /** @description Of all tanks together. */
            readonly tankVolume_L: number;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
        };
        readonly review: {
            /** @enum {string} */
            readonly absent: "stay" | "go";
            readonly changes: readonly {
                readonly added: number;
                readonly edited: number;
                readonly removed: number;
                /** @description The first 500. */
                readonly rows: readonly ({
                    readonly after: {
                        readonly [key: string]: string;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "added";
                    readonly table: string;
                } | {
                    readonly after: {
                        readonly [key: string]: string | null;
                    };
                    readonly before: {
                        readonly [key: string]: string | null;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "edited";
                    readonly table: string;
                } | {
                    readonly before: {
                        readonly [key: string]: string;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "removed";
                    readonly table: string;
                })[];
                readonly table: string;
            }[];
            readonly file: string;
            readonly files: readonly {
                readonly file: string;
                readonly rows: number;
                readonly used: number;
            }[];
            /** @description Records of an export that are not here yet. */
            readonly freshRecords: number;
            readonly importId: string;
            readonly isReading: boolean;
            readonly mayBeAccepted: boolean;
            readonly notUsed: readonly components["schemas"]["notUsed"][];
            readonly problems: readonly components["schemas"]["problem"][];
            readonly programmeId: string;
        };
        readonly reviewInput: {
            /** @enum {string} */
            readonly absent: "stay" | "go";
            readonly changes: readonly {
                readonly added: number;
                readonly edited: number;
                readonly removed: number;
                /** @description The first 500. */
                readonly rows: readonly ({
                    readonly after: {
                        readonly [key: string]: string;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "added";
                    readonly table: string;
                } | {
                    readonly after: {
                        readonly [key: string]: string | null;
                    };
                    readonly before: {
                        readonly [key: string]: string | null;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "edited";
                    readonly table: string;
                } | {
                    readonly before: {
                        readonly [key: string]: string;
                    };
                    readonly key: string;
                    /** @constant */
                    readonly kind: "removed";
                    readonly table: string;
                })[];
                readonly table: string;
            }[];
            readonly file: string;
            readonly files: readonly {
                readonly file: string;
                readonly rows: number;
                readonly used: number;
            }[];
            /** @description Records of an export that are not here yet. */
            readonly freshRecords: number;
            readonly importId: string;
            readonly isReading: boolean;
            readonly mayBeAccepted: boolean;
            readonly notUsed: readonly components["schemas"]["notUsedInput"][];
            readonly problems: readonly components["schemas"]["problemInput"][];
            readonly programmeId: string;
        };
        /** @description Only with --series. */
        readonly series: {
            /** @description At the end of the day. */
            readonly content_L: readonly number[];
            readonly dry: readonly boolean[];
            /** @description A day, YYYY-MM-DD. */
            readonly firstDay: string;
            readonly inflow_L: readonly number[];
            /** @description Asked for the judged purposes. */
            readonly judgedAsked_L: readonly number[];
            readonly judgedTaken_L: readonly number[];
            /** @description filled: from other years. neighbours: filled from neighbouring gauges. made: made up from normals. */
            readonly known: readonly ("measured" | "filled" | "neighbours" | "made" | "unknown")[];
            readonly otherTaken_L: readonly number[];
            /** @description At the site: the gauge's rain times the site's rain factor. */
            readonly rain_mm: readonly number[];
            /** @description Judged litres from the second source. */
            readonly secondSource_L: readonly number[];
            readonly spill_L: readonly number[];
            /** @description A tank, or tanks joined at the foot. */
            readonly tankIds: readonly string[];
        };
        /** @description Only with --series. */
        readonly seriesInput: {
            /** @description At the end of the day. */
            readonly content_L: readonly number[];
            readonly dry: readonly boolean[];
            /** @description A day, YYYY-MM-DD. */
            readonly firstDay: string;
            readonly inflow_L: readonly number[];
            /** @description Asked for the judged purposes. */
            readonly judgedAsked_L: readonly number[];
            readonly judgedTaken_L: readonly number[];
            /** @description filled: from other years. neighbours: filled from neighbouring gauges. made: made up from normals. */
            readonly known: readonly ("measured" | "filled" | "neighbours" | "made" | "unknown")[];
            readonly otherTaken_L: readonly number[];
            /** @description At the site: the gauge's rain times the site's rain factor. */
            readonly rain_mm: readonly number[];
            /** @description Judged litres from the second source. */
            readonly secondSource_L: readonly number[];
            readonly spill_L: readonly number[];
            /** @description A tank, or tanks joined at the foot. */
            readonly tankIds: readonly string[];
        };
        readonly site: {
            /** @description In the design year: those it is judged for. */
            readonly design_people: number | null;
            /** @description The finding in a sentence or two. */
            readonly finding: string;
            /** @description Of the tank that serves last; null where one never does. */
            readonly firstService: {
                /** @description A day, YYYY-MM-DD. */
                readonly firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                readonly handOverDay: string;
                readonly wait_days: number;
                /** @description The middle eight years in ten. */
                readonly wait_days_range: {
                    readonly high: number;
                    readonly low: number;
                };
            } | null;
            readonly gaugeId: string | null;
            readonly name: string;
            /** @description As counted, or made from the households. */
            readonly people: number | null;
            readonly problems: readonly components["schemas"]["problem"][];
            /** @description Null where the site is neither short nor tight. */
            readonly remedies: {
                /** @description The worst judged year, if it is left as it is. */
                readonly leaveIt: {
                    readonly dryDays: number;
                    readonly longestRun_days: number;
                    /** @description Its first day; null: no day is dry, or the rain is made up. */
                    readonly longestRunFrom: string | null;
                    /** @description The worst of so many judged years of made-up rain; null: measured rain. */
                    readonly ofMadeYears: number | null;
                    readonly shortfall_L: number;
                    /** @description Where it is told of some of the tanks; null: of all. */
                    readonly tankIds: readonly string[] | null;
                    readonly waterYear: number;
                } | null;
                /** @description Why none makes it hold; null where one does. */
                readonly notMended: ("assumed" | "growth" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart") | null;
                readonly peopleCarried: {
                    readonly carried_people: number;
                    readonly others_people: number;
                    /**
                     * @description What the site is with so many.
                     * @enum {string}
                     */
                    readonly verdict: "holds" | "tight";
                } | null;
                /** @description The first is the smallest change that mends it. */
                readonly ranked: readonly components["schemas"]["remedy"][];
            } | null;
            /** @description Only where a scenario is asked for. Null: not known. */
            readonly scenario?: {
                readonly dryDays_per_year: number | null;
                readonly finding: string;
                readonly goodYears: number | null;
                readonly judgedYears: number | null;
                readonly longestRun_days: number | null;
                readonly tankForTarget_L: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly verdict: "holds" | "tight" | "short" | "unknown";
            };
            /** @description One for each body of water; none where facts are missing. */
            readonly series?: readonly components["schemas"]["series"][];
            readonly siteClass: string | null;
            readonly siteId: string;
            readonly stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly unit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            /** @description One for each body of water people draw from, the worst first; none where facts are missing: the blockers say which. */
            readonly storages: readonly components["schemas"]["storage"][];
            /** @description What it was judged by. */
            readonly target: {
                readonly daysMet_fraction: number;
                readonly goodYears_fraction: number;
                readonly longestDryRun_days: number;
            };
            /**
             * @description Whose target that is.
             * @enum {string}
             */
            readonly targetFrom: "programme" | "class";
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
            readonly working: readonly components["schemas"]["workingLine"][];
        };
        readonly siteInput: {
            /** @description In the design year: those it is judged for. */
            readonly design_people: number | null;
            /** @description The finding in a sentence or two. */
            readonly finding: string;
            /** @description Of the tank that serves last; null where one never does. */
            readonly firstService: {
                /** @description A day, YYYY-MM-DD. */
                readonly firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                readonly handOverDay: string;
                readonly wait_days: number;
                /** @description The middle eight years in ten. */
                readonly wait_days_range: {
                    readonly high: number;
                    readonly low: number;
                };
            } | null;
            readonly gaugeId: string | null;
            readonly name: string;
            /** @description As counted, or made from the households. */
            readonly people: number | null;
            readonly problems: readonly components["schemas"]["problemInput"][];
            /** @description Null where the site is neither short nor tight. */
            readonly remedies: {
                /** @description The worst judged year, if it is left as it is. */
                readonly leaveIt: {
                    readonly dryDays: number;
                    readonly longestRun_days: number;
                    /** @description Its first day; null: no day is dry, or the rain is made up. */
                    readonly longestRunFrom: string | null;
                    /** @description The worst of so many judged years of made-up rain; null: measured rain. */
                    readonly ofMadeYears: number | null;
                    readonly shortfall_L: number;
                    /** @description Where it is told of some of the tanks; null: of all. */
                    readonly tankIds: readonly string[] | null;
                    readonly waterYear: number;
                } | null;
                /** @description Why none makes it hold; null where one does. */
                readonly notMended: ("assumed" | "growth" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart") | null;
                readonly peopleCarried: {
                    readonly carried_people: number;
                    readonly others_people: number;
                    /**
                     * @description What the site is with so many.
                     * @enum {string}
                     */
                    readonly verdict: "holds" | "tight";
                } | null;
                /** @description The first is the smallest change that mends it. */
                readonly ranked: readonly components["schemas"]["remedyInput"][];
            } | null;
            /** @description Only where a scenario is asked for. Null: not known. */
            readonly scenario?: {
                readonly dryDays_per_year: number | null;
                readonly finding: string;
                readonly goodYears: number | null;
                readonly judgedYears: number | null;
                readonly longestRun_days: number | null;
                readonly tankForTarget_L: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly verdict: "holds" | "tight" | "short" | "unknown";
            };
            /** @description One for each body of water; none where facts are missing. */
            readonly series?: readonly components["schemas"]["seriesInput"][];
            readonly siteClass: string | null;
            readonly siteId: string;
            readonly stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                readonly unit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            /** @description One for each body of water people draw from, the worst first; none where facts are missing: the blockers say which. */
            readonly storages: readonly components["schemas"]["storageInput"][];
            /** @description What it was judged by. */
            readonly target: {
                readonly daysMet_fraction: number;
                readonly goodYears_fraction: number;
                readonly longestDryRun_days: number;
            };
            /**
             * @description Whose target that is.
             * @enum {string}
             */
            readonly targetFrom: "programme" | "class";
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
            readonly working: readonly components["schemas"]["workingLineInput"][];
        };
        readonly storage: {
            /** @description Days on which judged litres are asked, in a mean judged year. */
            readonly askedDays_per_year: number;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            readonly cappedBy: string | null;
            /** @description Smallest of sizes that meets the target, where no exact size is known; without the second source. */
            readonly catalogueForTarget_L: number | null;
            /** @description Smallest of the catalogue that holds, where no exact size is known; without the second source. */
            readonly catalogueToHold_L: number | null;
            /** @description Good years among as many coming years as were judged. */
            readonly comingGood_years_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly daysMet_fraction: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly daysMet_fraction_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly dryDays_per_year: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly dryDays_per_year_range: {
                readonly high: number;
                readonly low: number;
            };
            /** @description Longest first, at most ten. */
            readonly dryRuns: readonly {
                readonly days: number;
                /** @description A day, YYYY-MM-DD. */
                readonly from: string;
                /** @description A day, YYYY-MM-DD. */
                readonly to: string;
                readonly waterYear: number;
            }[];
            readonly firstService: {
                /** @description A day, YYYY-MM-DD. */
                readonly firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                readonly handOverDay: string;
                readonly wait_days: number;
                /** @description The middle eight years in ten. */
                readonly wait_days_range: {
                    readonly high: number;
                    readonly low: number;
                };
            } | null;
            readonly goodYears: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly goodYears_fraction_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly goodYearsNeeded: number;
            readonly inflow_L_per_year: number;
            /** @description This tank with nothing asked but the judged litres, where it is short. */
            readonly judgedAlone: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            } | null;
            /** @description Mean over the days of the year. */
            readonly judgedDemand_L_per_day: number;
            /** @description Of the day that asks for most. */
            readonly judgedDemandHighest_L_per_day: number;
            readonly judgedYears: number;
            /** @description What keeps it short, the second source left out; null where it meets the target. */
            readonly lacks: ("tank" | "water" | "ration") | null;
            readonly longestRun: {
                readonly days: number;
                /** @description A day, YYYY-MM-DD. */
                readonly from: string;
                /** @description A day, YYYY-MM-DD. */
                readonly to: string;
                readonly waterYear: number;
            } | null;
            /** @description Why no exact smallest tank is known: each size was run on its own. Null where every size is known. */
            readonly noExactSize: ("order" | "ration") | null;
            /**
             * @description The order of each day.
             * @enum {string}
             */
            readonly order: "drawFirst" | "yas" | "ybs";
            readonly otherDemand_L_per_day: number;
            /** @description Days on which other purposes were short, in a mean year. */
            readonly otherShortDays_per_year: number;
            /** @description Who draw from it. */
            readonly people: number;
            /** @description What is given while less than the mark is in the tank; null: all that is asked. */
            readonly ration: {
                readonly below_fraction: number;
                readonly judged_fraction: number;
                readonly other_fraction: number;
            } | null;
            /** @description Days on which the ration was in force; those that cut the judged litres are dry days too. */
            readonly rationedDays_per_year: number | null;
            readonly secondSource: {
                readonly aloneDryDays_per_year: number;
                readonly aloneGoodYears: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly aloneVerdict: "holds" | "tight" | "short" | "unknown";
                /** @description Days on which judged litres come from it; they are not dry. */
                readonly days_per_year: number;
                readonly given_L_per_year: number;
                /** @enum {string} */
                readonly kind: "river" | "spring" | "well" | "pond" | "vendor";
                readonly name: string;
                readonly secondSourceId: string;
            } | null;
            /** @description Judged litres short in a mean year. */
            readonly shortfall_L_per_year: number;
            /** @description The catalogue's tanks and this one, by size, without the second source. */
            readonly sizes: readonly {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            }[];
            /** @description Smallest tank for the share of days, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForDays_L: number | null;
            /** @description Smallest tank for the dry runs, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForRuns_L: number | null;
            /** @description Smallest tank for both, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForTarget_L: number | null;
            /** @description A tank, or tanks joined at the foot. */
            readonly tankIds: readonly string[];
            /** @description Smallest tank that would hold, without the second source; null: this one does, or none would. */
            readonly tankToHold_L: number | null;
            readonly tankVolume_L: number;
            /** @description This tank with nothing rationed; null where nothing is. */
            readonly unrationed: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            } | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
            readonly years: readonly {
                readonly dryDays: number;
                /** @description Days that were not measured. */
                readonly filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                readonly firstDay: string;
                readonly judged: boolean;
                readonly longestRun_days: number;
                /** @description The calendar year it ends in. */
                readonly waterYear: number;
            }[];
            /** @description The generous end: rain is let in before people draw. */
            readonly yieldBeforeSpill: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
            };
        };
        readonly storageInput: {
            /** @description Days on which judged litres are asked, in a mean judged year. */
            readonly askedDays_per_year: number;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            readonly cappedBy: string | null;
            /** @description Smallest of sizes that meets the target, where no exact size is known; without the second source. */
            readonly catalogueForTarget_L: number | null;
            /** @description Smallest of the catalogue that holds, where no exact size is known; without the second source. */
            readonly catalogueToHold_L: number | null;
            /** @description Good years among as many coming years as were judged. */
            readonly comingGood_years_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly daysMet_fraction: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly daysMet_fraction_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly dryDays_per_year: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly dryDays_per_year_range: {
                readonly high: number;
                readonly low: number;
            };
            /** @description Longest first, at most ten. */
            readonly dryRuns: readonly {
                readonly days: number;
                /** @description A day, YYYY-MM-DD. */
                readonly from: string;
                /** @description A day, YYYY-MM-DD. */
                readonly to: string;
                readonly waterYear: number;
            }[];
            readonly firstService: {
                /** @description A day, YYYY-MM-DD. */
                readonly firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                readonly handOverDay: string;
                readonly wait_days: number;
                /** @description The middle eight years in ten. */
                readonly wait_days_range: {
                    readonly high: number;
                    readonly low: number;
                };
            } | null;
            readonly goodYears: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            readonly goodYears_fraction_range: {
                readonly high: number;
                readonly low: number;
            };
            readonly goodYearsNeeded: number;
            readonly inflow_L_per_year: number;
            /** @description This tank with nothing asked but the judged litres, where it is short. */
            readonly judgedAlone: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            } | null;
            /** @description Mean over the days of the year. */
            readonly judgedDemand_L_per_day: number;
            /** @description Of the day that asks for most. */
            readonly judgedDemandHighest_L_per_day: number;
            readonly judgedYears: number;
            /** @description What keeps it short, the second source left out; null where it meets the target. */
            readonly lacks: ("tank" | "water" | "ration") | null;
            readonly longestRun: {
                readonly days: number;
                /** @description A day, YYYY-MM-DD. */
                readonly from: string;
                /** @description A day, YYYY-MM-DD. */
                readonly to: string;
                readonly waterYear: number;
            } | null;
            /** @description Why no exact smallest tank is known: each size was run on its own. Null where every size is known. */
            readonly noExactSize: ("order" | "ration") | null;
            /**
             * @description The order of each day.
             * @enum {string}
             */
            readonly order: "drawFirst" | "yas" | "ybs";
            readonly otherDemand_L_per_day: number;
            /** @description Days on which other purposes were short, in a mean year. */
            readonly otherShortDays_per_year: number;
            /** @description Who draw from it. */
            readonly people: number;
            /** @description What is given while less than the mark is in the tank; null: all that is asked. */
            readonly ration: {
                readonly below_fraction: number;
                readonly judged_fraction: number;
                readonly other_fraction: number;
            } | null;
            /** @description Days on which the ration was in force; those that cut the judged litres are dry days too. */
            readonly rationedDays_per_year: number | null;
            readonly secondSource: {
                readonly aloneDryDays_per_year: number;
                readonly aloneGoodYears: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                readonly aloneVerdict: "holds" | "tight" | "short" | "unknown";
                /** @description Days on which judged litres come from it; they are not dry. */
                readonly days_per_year: number;
                readonly given_L_per_year: number;
                /** @enum {string} */
                readonly kind: "river" | "spring" | "well" | "pond" | "vendor";
                readonly name: string;
                readonly secondSourceId: string;
            } | null;
            /** @description Judged litres short in a mean year. */
            readonly shortfall_L_per_year: number;
            /** @description The catalogue's tanks and this one, by size, without the second source. */
            readonly sizes: readonly {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            }[];
            /** @description Smallest tank for the share of days, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForDays_L: number | null;
            /** @description Smallest tank for the dry runs, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForRuns_L: number | null;
            /** @description Smallest tank for both, without the second source; null: no tank would do, or noExactSize. */
            readonly tankForTarget_L: number | null;
            /** @description A tank, or tanks joined at the foot. */
            readonly tankIds: readonly string[];
            /** @description Smallest tank that would hold, without the second source; null: this one does, or none would. */
            readonly tankToHold_L: number | null;
            readonly tankVolume_L: number;
            /** @description This tank with nothing rationed; null where nothing is. */
            readonly unrationed: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
                readonly meetsTarget: boolean;
                readonly partId: string | null;
                readonly tankVolume_L: number;
            } | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            readonly verdict: "holds" | "tight" | "short" | "unknown";
            readonly years: readonly {
                readonly dryDays: number;
                /** @description Days that were not measured. */
                readonly filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                readonly firstDay: string;
                readonly judged: boolean;
                readonly longestRun_days: number;
                /** @description The calendar year it ends in. */
                readonly waterYear: number;
            }[];
            /** @description The generous end: rain is let in before people draw. */
            readonly yieldBeforeSpill: {
                readonly dryDays_per_year: number;
                readonly goodYears: number;
            };
        };
        readonly workingLine: {
            readonly code: string;
            /** @description In words. */
            readonly formula: string;
            readonly inputs: readonly {
                readonly label: string;
                readonly name: string;
                readonly unit: string;
                readonly value: number | string;
            }[];
            readonly label: string;
            /** @description `id, place` of docs/sources.json, or survey, settings, definition. */
            readonly source: string;
            /** @description Empty where the value has none. */
            readonly unit: string;
            /** @description Null where no such figure exists. */
            readonly value: number | string | {
                readonly high: number;
                readonly low: number;
            } | null;
        };
        readonly workingLineInput: {
            readonly code: string;
            /** @description In words. */
            readonly formula: string;
            readonly inputs: readonly {
                readonly label: string;
                readonly name: string;
                readonly unit: string;
                readonly value: number | string;
            }[];
            readonly label: string;
            /** @description `id, place` of docs/sources.json, or survey, settings, definition. */
            readonly source: string;
            /** @description Empty where the value has none. */
            readonly unit: string;
            /** @description Null where no such figure exists. */
            readonly value: number | string | {
                readonly high: number;
                readonly low: number;
            } | null;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export type operations = Record<string, never>;
