// long: made from the description of the API
/** Made from docs/openapi.json by `npm run generate`. */
export interface paths {
    "/api/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Tells what changes, as it happens (server-sent events).
         * @description changed: programmeId, version. design: programmeId, version, done_fraction. task: task, as in the list of tasks. programmes: one was made, named, set aside or brought back.
         */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The imports that wait, such as after the page was loaded again. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            imports: components["schemas"]["review"][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Sends files to be looked at: a form with files (multipart/form-data), or one file as the body. Zips of a programme folder, workbooks, tables, the files of a folder. Nothing is written. */
        post: {
            parameters: {
                query?: {
                    /** @description What becomes of rows that are not in their file. */
                    absent?: "stay" | "go";
                    gaugeId?: string;
                    /** @description The name of the file that is the body; left out where a form with files is sent. */
                    name?: string;
                    /** @description For a table alone whose name does not say which it is. */
                    table?: "rain" | "sites" | "roofs" | "gutters" | "downpipes" | "diverters" | "tanks" | "pipes" | "treatmentUnits" | "cartridges" | "flowReadings" | "pressureTests" | "rawWater" | "barriers" | "waterTests" | "testPortions" | "inspections" | "chlorination" | "demand" | "gauges" | "normals" | "storms" | "stormCoefficients" | "shortRain" | "parts" | "prices" | "rates" | "redenominations" | "costs" | "kitRules" | "kitConditions" | "keptApart" | "carriers" | "targets" | "presence" | "secondSources" | "places" | "ways" | "closures" | "riverLevels" | "wayLevels" | "crews" | "crewCarriers" | "workCalendars" | "arrivals" | "carriersAway" | "plans" | "planTrips" | "planStops";
                    /** @description no: answered before it is read; events and the review tell how far it is. */
                    wait?: "yes" | "no";
                };
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{importId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What files bring, what is wrong in them, and what they would change. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        /** Lets files go: nothing of them stays. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        /** Mends one cell of files that wait; or says what headers and sheets stand for; or which table a file is. */
        patch: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description The header of the column, as it stands in the file. */
                        column: string;
                        file: string;
                        row: number;
                        value: string;
                    } | {
                        /** @default [] */
                        columns?: {
                            /** @description Null: the column is kept and not read. */
                            column: string | null;
                            /** @enum {string} */
                            dateOrder?: "dmy" | "mdy" | "ymd";
                            /** @description The table's file, or the sheet. */
                            file: string;
                            header: string;
                            unit?: string;
                            /**
                             * @description The workbook it stands in, as it was sent; null: a table of its own.
                             * @default null
                             */
                            workbook?: string | null;
                        }[];
                        /** @default [] */
                        sheets?: {
                            sheet: string;
                            /** @description A table, or "rain " and a gauge; null: it is left alone. */
                            table: string | null;
                            workbook: string;
                        }[];
                    } | {
                        /** @description What was changed here since and is to be as the file has it; the others stay. */
                        stepsBack: "all" | {
                            /** @description Null: the row. */
                            column: string | null;
                            key: string;
                            table: string;
                        }[];
                    } | {
                        place: {
                            /** @default null */
                            gaugeId?: string | null;
                            name: string;
                            /** @enum {string} */
                            table: "rain" | "sites" | "roofs" | "gutters" | "downpipes" | "diverters" | "tanks" | "pipes" | "treatmentUnits" | "cartridges" | "flowReadings" | "pressureTests" | "rawWater" | "barriers" | "waterTests" | "testPortions" | "inspections" | "chlorination" | "demand" | "gauges" | "normals" | "storms" | "stormCoefficients" | "shortRain" | "parts" | "prices" | "rates" | "redenominations" | "costs" | "kitRules" | "kitConditions" | "keptApart" | "carriers" | "targets" | "presence" | "secondSources" | "places" | "ways" | "closures" | "riverLevels" | "wayLevels" | "crews" | "crewCarriers" | "workCalendars" | "arrivals" | "carriersAway" | "plans" | "planTrips" | "planStops";
                        };
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/api/imports/{importId}/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes files in, as one record. The name is for a programme that is made of them. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /**
                         * @description Where a programme here has this history already: make a second one beside it, with names of its own.
                         * @default false
                         */
                        beside?: boolean;
                        /** @description Who makes the change. */
                        by: string;
                        name?: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            problems: components["schemas"]["problem"][];
                            programmeId: string;
                            /** @description The name of the record that was made; null where nothing changed. */
                            record: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{importId}/redo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Makes it again. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{importId}/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes back the last mend. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/maps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The map files of this data folder. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            files: {
                                file: string;
                                map: components["schemas"]["mapFile"] | null;
                                problems: components["schemas"]["problem"][];
                            }[];
                            /** @description Where they stand; one may be laid there by hand. */
                            folder: string;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Keeps a file of map tiles (PMTiles, version 3). The body is the file, sent as application/vnd.pmtiles. */
        post: {
            parameters: {
                query: {
                    /** @description The name of the file that is sent. */
                    name: string;
                };
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["mapFile"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/maps/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Takes a map file away. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    file: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The programmes of this data folder, those set aside among them. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            programmes: components["schemas"]["programmeListed"][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Makes a programme: empty, or invented to try things on. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who makes the change. */
                        by: string;
                        /**
                         * @description To make one of files, send them to /api/imports.
                         * @default empty
                         * @enum {string}
                         */
                        from?: "empty" | "demo";
                        name: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["programme"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Where a programme stands. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            conflicts: number;
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            madeAt: string;
                            name: string;
                            programmeId: string;
                            redo: string | null;
                            /** @description The record that undo would take back. */
                            undo: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Gives a programme another name, sets it aside or brings it back. */
        patch: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who makes the change. */
                        by: string;
                        isSetAside?: boolean;
                        name?: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["programmeListed"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/api/programmes/{programmeId}/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The records, newest first. */
        get: {
            parameters: {
                query?: {
                    /** @description Only records before this place, counted from 1. */
                    before?: number;
                    most?: number;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            records: {
                                /** Format: date-time */
                                at: string;
                                by: string;
                                changeCount: number;
                                /** @description The first 200. */
                                changes: ({
                                    after: {
                                        [key: string]: string;
                                    };
                                    key: string;
                                    /** @enum {string} */
                                    kind: "added";
                                    table: string;
                                } | {
                                    after: {
                                        [key: string]: string | null;
                                    };
                                    before: {
                                        [key: string]: string | null;
                                    };
                                    key: string;
                                    /** @enum {string} */
                                    kind: "edited";
                                    table: string;
                                } | {
                                    before: {
                                        [key: string]: string;
                                    };
                                    key: string;
                                    /** @enum {string} */
                                    kind: "removed";
                                    table: string;
                                })[];
                                clock: number;
                                device: string;
                                number: number;
                                offset_min: number;
                                place: number;
                                /** @description What it did to plans, without an end; null: its changes are all there is. */
                                said: string | null;
                                source: {
                                    /** @enum {string} */
                                    kind: "form" | "import" | "visit" | "undo" | "redo";
                                    name: string | null;
                                };
                                takesBack: string | null;
                            }[];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Changes rows: one record of all that is asked, or nothing. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who makes the change. */
                        by: string;
                        changes: ({
                            after: {
                                [key: string]: string;
                            };
                            key: string;
                            /** @enum {string} */
                            kind: "added";
                            table: string;
                        } | {
                            after: {
                                [key: string]: string | null;
                            };
                            before: {
                                [key: string]: string | null;
                            };
                            key: string;
                            /** @enum {string} */
                            kind: "edited";
                            table: string;
                        } | {
                            before: {
                                [key: string]: string;
                            };
                            key: string;
                            /** @enum {string} */
                            kind: "removed";
                            table: string;
                        })[];
                        /** @description What this sending is called: sent once more, because its answer was lost, nothing is made twice. */
                        sendId?: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            problems: components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            record: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/conflicts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What two people said that cannot both be so. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            conflicts: ({
                                column: string;
                                key: string;
                                /** @enum {string} */
                                kind: "cell";
                                over: string | null;
                                overBy: string;
                                stands: string | null;
                                standsBy: string;
                                table: string;
                            } | {
                                changedBy: string;
                                key: string;
                                /** @enum {string} */
                                kind: "row";
                                removedBy: string;
                                table: string;
                            })[];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/design": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The design, as far as it is; asking begins it where it is not made yet. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            report: {
                                /** @description Version of the program. */
                                eavewell: string;
                                gauges: components["schemas"]["gauge"][];
                                notUsed: components["schemas"]["notUsed"][];
                                /** @description What was found in the folder. */
                                problems: components["schemas"]["problem"][];
                                programme: {
                                    name: string;
                                    /** @description Of the sites whose people are known. */
                                    people: number;
                                    sites: number;
                                    sitesWithoutPeople: number;
                                };
                                remedies: components["schemas"]["remedies"];
                                /** @description Only where a scenario is asked for: a question put to the rain of the past, not a forecast. */
                                scenario?: {
                                    asked: {
                                        lastYears: number | null;
                                        wetDayRain_fraction: number;
                                        wetDays_fraction: number;
                                    };
                                    changed: {
                                        siteId: string;
                                        /**
                                         * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                         * @enum {string}
                                         */
                                        under: "holds" | "tight" | "short" | "unknown";
                                        /**
                                         * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                         * @enum {string}
                                         */
                                        verdict: "holds" | "tight" | "short" | "unknown";
                                    }[];
                                    /** @description Sites by verdict as they are. */
                                    present: {
                                        holds: number;
                                        short: number;
                                        tight: number;
                                        unknown: number;
                                    };
                                    /** @description Sites by verdict under the scenario. */
                                    under: {
                                        holds: number;
                                        short: number;
                                        tight: number;
                                        unknown: number;
                                    };
                                };
                                /** @enum {number} */
                                schema: 2;
                                settings: {
                                    boiledWater_L_per_person_per_day: number | null;
                                    boughtWater_amount_per_L: number | null;
                                    boughtWater_L_per_person_per_day: number | null;
                                    cartridgeFailures_per_year: number | null;
                                    changeOver_h: number;
                                    closedRain_mm: number | null;
                                    costYears: number;
                                    /** @description The currency costs are told in; null: that of the latest price. */
                                    currency: string | null;
                                    cutWaste_mm: number;
                                    /** @enum {string} */
                                    dayOrder: "drawFirst" | "yas" | "ybs";
                                    daysOff_per_year: number | null;
                                    designAfterHandOver_years: number;
                                    draws: number;
                                    firstFlush_mm: number;
                                    fiveMinutesOfDay_fraction: number | null;
                                    fiveMinutesOfDaySource: string | null;
                                    flowReadingError_fraction: number;
                                    foulingSpread_fraction: number;
                                    fuel_amount_per_kg: number | null;
                                    fuelHeat_MJ_per_kg: number | null;
                                    fuelPrice_per_L: number | null;
                                    futures: number;
                                    /** @enum {string} */
                                    gapFilling: "otherYears" | "normalRatio" | "inverseDistance";
                                    gaugeReach_km: number;
                                    growthFraction_per_year: number | null;
                                    headMargin_m: number;
                                    healthTarget_DALY_per_person_per_year: number;
                                    inflation_fraction_per_year: number | null;
                                    installHigh_days: number;
                                    installLikely_days: number;
                                    installLow_days: number;
                                    interest_fraction_per_year: number | null;
                                    /** @enum {string} */
                                    judgeDrainage: "whereMeasured" | "always" | "never";
                                    /** @enum {string} */
                                    judgeHead: "whereMeasured" | "always" | "never";
                                    /** @enum {string} */
                                    judgeSafety: "whereMeasured" | "always" | "never";
                                    /** @enum {string} */
                                    judgeSettling: "whereMeasured" | "always" | "never";
                                    /** @enum {string} */
                                    judgeStand: "whereMeasured" | "always" | "never";
                                    /** @enum {string} */
                                    judgeTreatment: "whereMeasured" | "always" | "never";
                                    leak_fraction: number;
                                    learning_fraction: number;
                                    leastYears: number;
                                    litres_per_person_per_day: number;
                                    litresDrunk_L_per_person_per_day: number;
                                    litresDrunkHigh_L_per_person_per_day: number;
                                    madeYears: number;
                                    mainStore: string | null;
                                    missingDays_fraction: number;
                                    mustHold: boolean;
                                    oldRate_days: number;
                                    openChance_fraction: number;
                                    peakShare_fraction: number;
                                    people_per_household: number | null;
                                    pipedScheme_amount_per_person: number | null;
                                    pipedScheme_amount_per_person_per_year: number | null;
                                    pipedScheme_years: number | null;
                                    porterLoad_kg: number;
                                    priceChange_fraction_per_year: number | null;
                                    programme: string;
                                    pumping_h_per_day: number;
                                    range_fraction: number;
                                    recontamination_fraction: number | null;
                                    residualHead_m: number;
                                    riverEnds_h: number;
                                    rolloutHorizon_days: number;
                                    /** @description Days from 1 January 1970; null: the day it is asked on. */
                                    rolloutStart: number | null;
                                    roofSolids_g_per_m2_per_year: number | null;
                                    roofTurbidity_NTU: number | null;
                                    roofTurbidityHigh_NTU: number | null;
                                    sampleAge_days: number;
                                    seed: number;
                                    settledTarget_fraction: number;
                                    settledTurbidity_fraction: number;
                                    settlingGrain_um: number;
                                    settlingGrainDensity_kg_per_m3: number;
                                    skipping_fraction: number | null;
                                    standMargin_fraction: number;
                                    stormMargin_fraction: number;
                                    stormReturnPeriod_years: number;
                                    stoveEfficiency_fraction: number | null;
                                    susceptibleToRotavirus_fraction: number;
                                    tapFlow_L_per_min: number;
                                    target: {
                                        daysMet_fraction: number;
                                        goodYears_fraction: number;
                                        longestDryRun_days: number;
                                    };
                                    treatmentMargin_fraction: number;
                                    unitHead_m: number | null;
                                    waitLimit_min: number;
                                    waterTemperature_C: number;
                                    waterYearStartMonth: number | null;
                                    /** @enum {string} */
                                    wetDayAmounts: "gamma" | "mixedExponential";
                                    /** @enum {string} */
                                    windExposure: "builtUp" | "openGround" | "openWater";
                                    windSpeed_m_per_s: number | null;
                                    workingService_fraction: number | null;
                                    workingServiceHigh_fraction: number | null;
                                    workingServiceLow_fraction: number | null;
                                };
                                sites: components["schemas"]["site"][];
                            } | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Begins a design again that was called off or failed. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            conflicts: number;
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            madeAt: string;
                            name: string;
                            programmeId: string;
                            redo: string | null;
                            /** @description The record that undo would take back. */
                            undo: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        /** Calls the running design off. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            conflicts: number;
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            madeAt: string;
                            name: string;
                            programmeId: string;
                            redo: string | null;
                            /** @description The record that undo would take back. */
                            undo: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/export.zip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The whole programme as a zip: its tables and its records. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/gauges/{gaugeId}/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The readings of one gauge, compact, as the last design has them. */
        get: {
            parameters: {
                query?: {
                    /** @description What they were called; where they are others now, there are none. Left out: those of the last design. */
                    of?: string;
                };
                header?: never;
                path: {
                    gaugeId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["gaugeReadings"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What stood in one cell, since when, and who put it there. */
        get: {
            parameters: {
                query: {
                    column: string;
                    key: string;
                    table: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            entries: {
                                after: string | null;
                                before: string | null;
                                record: {
                                    /** Format: date-time */
                                    at: string;
                                    by: string;
                                    clock: number;
                                    device: string;
                                    number: number;
                                    offset_min: number;
                                    source: {
                                        /** @enum {string} */
                                        kind: "form" | "import" | "visit" | "undo" | "redo";
                                        name: string | null;
                                    };
                                    takesBack: string | null;
                                };
                            }[];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The imports that wait, such as after the page was loaded again. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            imports: components["schemas"]["review"][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Sends files to be looked at: a form with files (multipart/form-data), or one file as the body. Zips of a programme folder, workbooks, tables, the files of a folder. Nothing is written. */
        post: {
            parameters: {
                query?: {
                    /** @description What becomes of rows that are not in their file. */
                    absent?: "stay" | "go";
                    gaugeId?: string;
                    /** @description The name of the file that is the body; left out where a form with files is sent. */
                    name?: string;
                    /** @description For a table alone whose name does not say which it is. */
                    table?: "rain" | "sites" | "roofs" | "gutters" | "downpipes" | "diverters" | "tanks" | "pipes" | "treatmentUnits" | "cartridges" | "flowReadings" | "pressureTests" | "rawWater" | "barriers" | "waterTests" | "testPortions" | "inspections" | "chlorination" | "demand" | "gauges" | "normals" | "storms" | "stormCoefficients" | "shortRain" | "parts" | "prices" | "rates" | "redenominations" | "costs" | "kitRules" | "kitConditions" | "keptApart" | "carriers" | "targets" | "presence" | "secondSources" | "places" | "ways" | "closures" | "riverLevels" | "wayLevels" | "crews" | "crewCarriers" | "workCalendars" | "arrivals" | "carriersAway" | "plans" | "planTrips" | "planStops";
                    /** @description no: answered before it is read; events and the review tell how far it is. */
                    wait?: "yes" | "no";
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/imports/{importId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What files bring, what is wrong in them, and what they would change. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        /** Lets files go: nothing of them stays. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        /** Mends one cell of files that wait; or says what headers and sheets stand for; or which table a file is. */
        patch: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description The header of the column, as it stands in the file. */
                        column: string;
                        file: string;
                        row: number;
                        value: string;
                    } | {
                        /** @default [] */
                        columns?: {
                            /** @description Null: the column is kept and not read. */
                            column: string | null;
                            /** @enum {string} */
                            dateOrder?: "dmy" | "mdy" | "ymd";
                            /** @description The table's file, or the sheet. */
                            file: string;
                            header: string;
                            unit?: string;
                            /**
                             * @description The workbook it stands in, as it was sent; null: a table of its own.
                             * @default null
                             */
                            workbook?: string | null;
                        }[];
                        /** @default [] */
                        sheets?: {
                            sheet: string;
                            /** @description A table, or "rain " and a gauge; null: it is left alone. */
                            table: string | null;
                            workbook: string;
                        }[];
                    } | {
                        /** @description What was changed here since and is to be as the file has it; the others stay. */
                        stepsBack: "all" | {
                            /** @description Null: the row. */
                            column: string | null;
                            key: string;
                            table: string;
                        }[];
                    } | {
                        place: {
                            /** @default null */
                            gaugeId?: string | null;
                            name: string;
                            /** @enum {string} */
                            table: "rain" | "sites" | "roofs" | "gutters" | "downpipes" | "diverters" | "tanks" | "pipes" | "treatmentUnits" | "cartridges" | "flowReadings" | "pressureTests" | "rawWater" | "barriers" | "waterTests" | "testPortions" | "inspections" | "chlorination" | "demand" | "gauges" | "normals" | "storms" | "stormCoefficients" | "shortRain" | "parts" | "prices" | "rates" | "redenominations" | "costs" | "kitRules" | "kitConditions" | "keptApart" | "carriers" | "targets" | "presence" | "secondSources" | "places" | "ways" | "closures" | "riverLevels" | "wayLevels" | "crews" | "crewCarriers" | "workCalendars" | "arrivals" | "carriersAway" | "plans" | "planTrips" | "planStops";
                        };
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/api/programmes/{programmeId}/imports/{importId}/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes files in, as one record. The name is for a programme that is made of them. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /**
                         * @description Where a programme here has this history already: make a second one beside it, with names of its own.
                         * @default false
                         */
                        beside?: boolean;
                        /** @description Who makes the change. */
                        by: string;
                        name?: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            problems: components["schemas"]["problem"][];
                            programmeId: string;
                            /** @description The name of the record that was made; null where nothing changed. */
                            record: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/imports/{importId}/redo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Makes it again. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/imports/{importId}/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes back the last mend. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    importId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["review"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/kit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The kit of the programme, or of a trip: what is needed, short and to be bought, every site in short, what all of it costs. */
        get: {
            parameters: {
                query?: {
                    /** @description The day all is needed on. */
                    neededOn?: string;
                    /** @description The sites of a trip by their ids, in the order they are come to, with commas. */
                    sites?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["programmeKit"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/kit.xlsx": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The kit of the programme, or of a trip, as a workbook (.xlsx). */
        get: {
            parameters: {
                query?: {
                    /** @description The day all is needed on. */
                    neededOn?: string;
                    /** @description The sites of a trip by their ids, in the order they are come to, with commas. */
                    sites?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/overview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the page of sites needs, whole or in parts: sent once for each state, with ETag and packed where the page takes it. */
        get: {
            parameters: {
                query?: {
                    /** @description The first site wanted, counted from 0 in the order of the list. */
                    from?: number;
                    /** @description How many; all that follow where it is left out. */
                    most?: number;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["overview"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/problems": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is wrong in the tables of the programme. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            designVersion: number | null;
                            notUsed: components["schemas"]["notUsed"][];
                            problems: components["schemas"]["problem"][];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/redo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes back the last undo. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who makes the change. */
                        by: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            problems: components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            record: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The rollout: one plan, its days, and what is not planned. */
        get: {
            parameters: {
                query?: {
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description What the page of the rollout shows of one plan. The unit is the last part of a name; null is "not known", never 0. */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            broken: {
                                kind: string;
                                said: string;
                                siteId: string | null;
                                tripId: string | null;
                            }[];
                            /** @description Every site that is not handed over: planned or not, and why. */
                            candidates: {
                                agreedOn: string | null;
                                area: string | null;
                                finishBy: string | null;
                                /** @description No treatment unit is entered for it. */
                                isUntreated: boolean;
                                name: string;
                                people: number | null;
                                priority_factor: number;
                                priorityReason: string | null;
                                readyFrom: string | null;
                                /** @description Why it is not planned, as a word of the program; null: it may be. */
                                reason: string | null;
                                /** @description Why it is planned or not, for people. */
                                said: string;
                                siteId: string;
                                /** @description Null: in no trip of the plan. */
                                tripId: string | null;
                                verdict: ("holds" | "tight" | "short" | "unknown") | null;
                            }[];
                            /** @description What changed in the tables since the days of the plan were worked out last; null: nothing. */
                            changedSince: {
                                at: string;
                                /** @description The newest first, a few. */
                                changes: {
                                    at: string;
                                    by: string;
                                    said: string;
                                }[];
                                changes_count: number;
                                /** @description Sites handed over later than worked out: first those in no trip, then those none serves. */
                                later: {
                                    later_days: number | null;
                                    name: string;
                                    /** @description Null: it is not handed over within the days looked at, or in no trip. */
                                    now: string | null;
                                    people: number | null;
                                    siteId: string;
                                    /** @description A day, YYYY-MM-DD. */
                                    was: string;
                                    /** @description Why it is in no trip any more; null: it is in one. */
                                    why: string | null;
                                }[];
                                later_count: number;
                                /** @description Sites whose hand-over is another day than when it was worked out last. */
                                moved_count: number;
                                said: string;
                            } | null;
                            cost: number;
                            crews: {
                                base: string;
                                crewId: string;
                                /** @description The first day it is free for a trip of this plan. */
                                from: string | null;
                                /** @description What it travels by, in words. */
                                goesBy: string;
                                name: string;
                                people: number;
                                store: string;
                                /** @description In the order they go: those that left first. */
                                trips: {
                                    /** @description A day, YYYY-MM-DD. */
                                    back: string;
                                    broken: {
                                        kind: string;
                                        said: string;
                                        siteId: string | null;
                                    }[];
                                    /** @description Null: of a trip that left, it is not worked out any more. */
                                    cost: number | null;
                                    /** @description Null: of a trip that left, it is not worked out any more. */
                                    fuel_L: number | null;
                                    isLocked: boolean;
                                    /** @description It should have left, or be back, by today, and nobody has entered that it did. */
                                    isOverdue: boolean;
                                    /** @description A few days later a way it goes is closed, or a site is handed over too late. */
                                    isTight: boolean;
                                    /** @description Null: of a trip that left, it is not worked out any more. */
                                    kg: number | null;
                                    /** @description A day, YYYY-MM-DD. */
                                    leaves: string;
                                    legs: {
                                        arrives: string | null;
                                        from: string;
                                        hours_h: number;
                                        leaves: string | null;
                                        to: string;
                                        wayIds: string[];
                                    }[];
                                    /** @description Null: of a trip that left, it is not worked out any more. */
                                    litres: number | null;
                                    /** @description Null: of a trip that left, it is not worked out any more. */
                                    loaded_kg: number | null;
                                    nights_count: number;
                                    notBefore: string | null;
                                    order: number;
                                    /** @description When it should have left, and when it can; null where it is not overdue, or has left. */
                                    overdueSaid: string | null;
                                    said: string;
                                    /** @enum {string} */
                                    state: "done" | "underWay" | "planned";
                                    stops: {
                                        /** @description Null of a trip that left: what happened is known by day alone. */
                                        arrives: string | null;
                                        /** @description First days of service of the futures drawn. */
                                        futures: {
                                            /** @description Null: not within the days looked at. */
                                            p10: string | null;
                                            /** @description Null: not within the days looked at. */
                                            p50: string | null;
                                            /** @description Null: not within the days looked at. */
                                            p90: string | null;
                                        } | null;
                                        /** @description Of a trip that left the day that was entered, or none yet. */
                                        handOver: string | null;
                                        isHandedOver: boolean;
                                        /** @description Something of its kit could not be counted: its load is at least as told. */
                                        isKitInPart: boolean;
                                        /** @description No treatment unit is entered for it: its water is not shown to be fit to drink. */
                                        isUntreated: boolean;
                                        /** @description A part of its kit has no mass: its load is at least as told. */
                                        isUnweighed: boolean;
                                        /** @description False: the site is not done in this trip; what is broken says why. */
                                        isWayUp: boolean;
                                        /** @description The hand-over as it was when the plan was worked out last; null: never. */
                                        kept: string | null;
                                        name: string;
                                        people: number;
                                        served: string | null;
                                        siteId: string;
                                        starts: string | null;
                                    }[];
                                    tightSaid: string | null;
                                    tripId: string;
                                    waited_days: number;
                                    /** @enum {string} */
                                    waitsFor: "nothing" | "stock" | "way" | "carrier" | "notBefore" | "haul";
                                }[];
                            }[];
                            crewsLeftOut: string[];
                            currency: string | null;
                            /** @description Today. */
                            day: string;
                            /** @description When all of its sites drink. */
                            finish: {
                                futures: {
                                    /** @description Null: not within the days looked at. */
                                    p10: string | null;
                                    /** @description Null: not within the days looked at. */
                                    p50: string | null;
                                    /** @description Null: not within the days looked at. */
                                    p90: string | null;
                                } | null;
                                /** @description If all goes as likely; null: no trip serves a site. */
                                likely: string | null;
                                /** @description Two days: how well the ninth in ten is known, from that many futures. */
                                p90Between: (string | null)[] | null;
                                runs_count: number;
                            } | null;
                            /** @description The first day that is planned anew: today, or the start of the plan. */
                            from: string;
                            fuel_L: number;
                            /** @enum {string} */
                            futures: "none" | "beingDrawn" | "there";
                            /** @description By the day they leave. */
                            hauls: {
                                /** @description The last of it is there. */
                                arrives: string;
                                /** @description Null: not within the days looked at. */
                                back: string | null;
                                /** @description What it is brought by, by name; null: nobody says. */
                                by: string | null;
                                carrierId: string | null;
                                forTrip: string;
                                from: string;
                                fuel_kg: number;
                                /** @description Of all of them, there and back. */
                                fuel_L: number;
                                haulId: string;
                                /** @description Goods of all of them. */
                                kg: number;
                                /** @description A day, YYYY-MM-DD. */
                                leaves: string;
                                /** @description What all of them take, less goods and fuel; below 0: over the limit; null: no limit. */
                                left_kg: number | null;
                                /** @description Of one of them; null: no limit. */
                                limit_kg: number | null;
                                /** @description Goods and fuel of all of them. */
                                loaded_kg: number;
                                /** @description Each of them, in the order they go. */
                                runs: {
                                    /** @description A day, YYYY-MM-DD. */
                                    arrives: string;
                                    back: string | null;
                                    /** @description A day, YYYY-MM-DD. */
                                    leaves: string;
                                    /** @description It leaves for home; null: it does not come back within the days looked at. */
                                    returns: string | null;
                                }[];
                                store: string;
                                /** @description So often it goes there and back. */
                                trips_count: number;
                            }[];
                            isCostAtLeast: boolean;
                            moneyByMonth: {
                                amount: number;
                                month: string;
                            }[];
                            people_count: number;
                            places: {
                                kind: string | null;
                                latitude_deg: number | null;
                                longitude_deg: number | null;
                                name: string;
                                placeId: string;
                            }[];
                            /** @description The plan that is shown: the one asked for, else in force, else the newest; null: there is none. */
                            planId: string | null;
                            plans: {
                                from: string | null;
                                isInForce: boolean;
                                name: string;
                                note: string | null;
                                planId: string;
                                sites_count: number;
                                timedAt: string | null;
                                trips_count: number;
                            }[];
                            problems: components["schemas"]["problem"][];
                            programme: string;
                            /** @description Sites of which the sentence says nothing or too much: the gravest first. */
                            provisos: {
                                /**
                                 * @description In a trip that does not get them done; counted from the hand-over, as when water runs is not known; in no trip, for a reason; not treated; not shown to hold.
                                 * @enum {string}
                                 */
                                kind: "notDone" | "undated" | "leftOut" | "untreated" | "notHolding";
                                /** @description As far as they are known. */
                                people_count: number;
                                said: string;
                                siteIds: string[];
                            }[];
                            /** @description How far from the best plan possible, and what else is worth one line. */
                            rest: string;
                            /** @description When all drink, as likely as not and nine times in ten. */
                            sentence: string;
                            /** @description People who drink from a day on, if all goes as likely. */
                            served: {
                                /** @description A day, YYYY-MM-DD. */
                                day: string;
                                people: number;
                            }[];
                            /** @description People who drink already, but for those whom trips of this plan handed over: they are in `served`. */
                            servedBefore_people: number;
                            /** @description People who drink by the end of a week, of futures drawn; empty where none were. */
                            servedByWeek: {
                                p10: number;
                                p50: number;
                                p90: number;
                                /** @description A day, YYYY-MM-DD. */
                                until: string;
                            }[];
                            sites_count: number;
                            /** @description Of the facts and the day: what is asked by it is of the same state. */
                            stamp: string;
                            stock: {
                                name: string;
                                partId: string;
                                points: {
                                    /** @description A day, YYYY-MM-DD. */
                                    day: string;
                                    in_count: number;
                                    left_count: number;
                                    out_count: number;
                                }[];
                                store: string;
                            }[];
                            strips: {
                                /** @enum {string} */
                                mode: "road" | "river" | "foot";
                                name: string;
                                /** @description Days on which the plan does not go it, or goes it slower; both days included. Past ones too. */
                                spans: {
                                    /** @description A day, YYYY-MM-DD. */
                                    from: string;
                                    /** @description It opens after the last day if a guess is right: nobody knows the day. */
                                    isToGuessed: boolean;
                                    /** @enum {string} */
                                    kind: "closed" | "slower" | "tooLow" | "tooHigh";
                                    said: string;
                                    /** @description A day, YYYY-MM-DD. */
                                    to: string;
                                }[];
                                stripId: string;
                                wayIds: string[];
                                /** @description Share of the years of the gauge in which that week was closed; empty where no level was read. */
                                weeks: {
                                    closed_fraction: number;
                                    /** @description A day, YYYY-MM-DD. */
                                    from: string;
                                }[];
                            }[];
                            /** @description The last day that is drawn. */
                            until: string;
                            /** @description Of the facts it was made from. */
                            version: number;
                            waiting: {
                                bound: {
                                    all: {
                                        name: string;
                                        weighted: number;
                                    }[];
                                    /** @description How much more waiting than the best possible, at the most. */
                                    gap_fraction: number;
                                    name: string;
                                    said: string;
                                    weighted: number;
                                } | null;
                                byArea: {
                                    area: string | null;
                                    mean_days: number;
                                    people: number;
                                }[];
                                longest: {
                                    days: number;
                                    name: string;
                                    siteId: string;
                                } | null;
                                /** @description For a person. */
                                mean_days: number;
                                /** @description People times days from the first day planned to the first day of service. */
                                personDays: number;
                                /** @description The same with priorities. */
                                weighted: number;
                            } | null;
                            ways: {
                                from: string;
                                /** @description Longitude and latitude; null: straight. */
                                line_deg: number[][] | null;
                                /** @enum {string} */
                                mode: "road" | "river" | "foot";
                                name: string | null;
                                to: string;
                                wayId: string;
                            }[];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/compared": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Two plans side by side. */
        get: {
            parameters: {
                query: {
                    a: string;
                    b: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            a: {
                                from: string | null;
                                isInForce: boolean;
                                name: string;
                                note: string | null;
                                planId: string;
                                sites_count: number;
                                timedAt: string | null;
                                trips_count: number;
                            };
                            /** @description Null where both plans are kept. */
                            anew: {
                                /** @description When: of then are the tables it was found for. */
                                at: string;
                                /** @description What does not hold under the plan that was found, what is new first. */
                                broken: {
                                    /** @description Not broken as the plan stands. */
                                    isNew: boolean;
                                    said: string;
                                }[];
                                /** @description Who asked for it. */
                                by: string;
                                /** @description What was entered since, the newest first, a few. */
                                entered: {
                                    at: string;
                                    by: string;
                                    said: string;
                                }[];
                                entered_count: number;
                                /** @description The plan itself was changed since: kept, what was found stands beside it. */
                                isPlanChanged: boolean;
                                /** @description What happened did to waiting, end and money, and what the plan takes back. */
                                said: string[];
                                /** @description What happened did to the plan as it stands, against the days that were told. */
                                since: {
                                    /** @description Of the trips still to go, above what they cost before the changes. */
                                    cost: number | null;
                                    /** @description The last hand-over that was told. */
                                    lastToldDay: string | null;
                                    later_count: number;
                                    sooner_count: number;
                                    /** @description Sites of which no day was told: they are in no sum. */
                                    untold_count: number;
                                    waiting_personDays: number;
                                };
                                /** @description Sites to be told another day than they were: later ones first, those of most people and days before others. */
                                toldOtherwise: {
                                    /** @description Below 0: sooner; null: one of the days is none. */
                                    later_days: number | null;
                                    name: string;
                                    /** @description Its hand-over under the plan that was found; null: none within the days looked at. */
                                    newDay: string | null;
                                    people: number | null;
                                    siteId: string;
                                    /** @description The hand-over it was told; null: none within the days looked at. */
                                    toldDay: string | null;
                                }[];
                                /** @description Trips to another day, by another crew or to other sites: those that leave next first. */
                                trips: {
                                    /** @description Null: it is not made. */
                                    after: {
                                        /** @description By name. */
                                        crew: string;
                                        /** @description Null: not within the days looked at. */
                                        leaves: string | null;
                                        /** @description Names of its sites, in their order. */
                                        stops: string[];
                                    } | null;
                                    /** @description Null: it is not made. */
                                    before: {
                                        /** @description By name. */
                                        crew: string;
                                        /** @description Null: not within the days looked at. */
                                        leaves: string | null;
                                        /** @description Names of its sites, in their order. */
                                        stops: string[];
                                    } | null;
                                    /** @description It leaves in the next days under one of the plans: people may be packing. */
                                    isSoon: boolean;
                                    /** @enum {string} */
                                    kind: "new" | "gone" | "moved";
                                    said: string;
                                    tripId: string;
                                }[];
                            } | null;
                            b: {
                                from: string | null;
                                isInForce: boolean;
                                name: string;
                                note: string | null;
                                planId: string;
                                sites_count: number;
                                timedAt: string | null;
                                trips_count: number;
                            };
                            byArea: {
                                area: string | null;
                                meanA_days: number;
                                meanB_days: number;
                                people: number;
                            }[];
                            cost: number;
                            /** @description b after a: above 0 later. */
                            finish_days: number;
                            fuel_L: number;
                            /** @description People of all sites that can be planned. */
                            people_count: number;
                            /** @description The difference in sentences, the greatest first. */
                            said: string[];
                            /** @description People who drink from a day on, if all goes as likely. */
                            servedA: {
                                /** @description A day, YYYY-MM-DD. */
                                day: string;
                                people: number;
                            }[];
                            /** @description People who drink from a day on, if all goes as likely. */
                            servedB: {
                                /** @description A day, YYYY-MM-DD. */
                                day: string;
                                people: number;
                            }[];
                            sites: {
                                crewA: string | null;
                                crewB: string | null;
                                later_days: number | null;
                                name: string;
                                people: number;
                                servedA: string | null;
                                servedB: string | null;
                                siteId: string;
                            }[];
                            stamp: string;
                            trips_count: number;
                            waiting_personDays: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/crews/{crewId}/itinerary.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What one crew does, day by day, as a PDF in a language of paper. */
        get: {
            parameters: {
                query?: {
                    language?: string;
                    plan?: string;
                };
                header?: never;
                path: {
                    crewId: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/found/{into}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Keeps a plan that was found, as one step. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    into: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description When it was begun to be searched for: another one that was found since is not kept unseen. */
                        at: string;
                        /** @description Who keeps it. */
                        by: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description False: the plan was changed meanwhile, and it stands beside it. */
                            isInPlace: boolean;
                            /** @description The plan it is now. */
                            planId: string;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        /** Lets go of a plan that was found: nothing is written. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    into: string;
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/legs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** More legs for the evaluator in the page. */
        post: {
            parameters: {
                query?: {
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        pairs: {
                            from: number;
                            to: number;
                            travel: number;
                        }[];
                        stamp: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description As the evaluator of the page reads it. */
                            legs: {
                                [key: string]: unknown;
                            };
                            stamp: string;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/notices.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Notices to all villages a crew comes to in a month, as a PDF in a language of paper. */
        get: {
            parameters: {
                query: {
                    language?: string;
                    month: string;
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/numbers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The rollout as numbers, with the legs of one plan, for the evaluator in the page. */
        get: {
            parameters: {
                query?: {
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description As the evaluator of the page reads it. */
                            numbers: {
                                [key: string]: unknown;
                            };
                            /** @description Trips by crew, as the crews of the numbers; stops are places among its jobs. */
                            plan: {
                                trips: {
                                    isLocked: boolean;
                                    notBefore: number;
                                    stops: number[];
                                }[][];
                            };
                            planId: string | null;
                            stamp: string;
                            tripIds: string[][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How the search for a plan gets on. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            bound: number | null;
                            done_fraction: number;
                            /** @description Plans that were found and are not kept: they are looked at first. */
                            found: {
                                /** @description When it was begun to be searched for. */
                                at: string;
                                by: string;
                                /** @description Changes since, of what a plan is reckoned from. */
                                entered_count: number;
                                /** @description The plan it would take the place of. */
                                into: string;
                                /** @description The plan itself was changed since: kept, it stands beside it. */
                                isPlanChanged: boolean;
                                /** @description What it is asked by, side by side with that plan; it is in no table. */
                                planId: string;
                            }[];
                            gap_fraction: number | null;
                            /** @description The plan that was made last, once it is kept. */
                            planId: string | null;
                            /** @description Why none was made, in words. */
                            problem: string | null;
                            /** @description Null: none runs. */
                            taskId: string | null;
                            waiting: number | null;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        /** Begins the search for a plan; it is kept when it is found. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who asks. */
                        by: string;
                        /** @description The plan to go on from: its trips that left and those that are locked stay. Null: from nothing. */
                        from: string | null;
                        /** @description The plan that is made anew in place, one step that can be taken back. Null: a plan beside the others. */
                        into: string | null;
                        /** @description What is found in place of a plan is held until somebody keeps it or leaves it, and is gone on with where it is searched for again. Left out: it is kept at once. */
                        isHeld?: boolean;
                        /** @description Trips of the plan to go on from that stay as they are, as if they were locked. Left out: none. */
                        keepTrips?: string[];
                        /** @description What a new plan is called; null: by the day and hour. */
                        name: string | null;
                        /** @description Only the trips of these crews may change: the others are taken as locked. Null: all. */
                        onlyCrews: string[] | null;
                        /** @description How long is searched [s]. */
                        seconds: number;
                        seed: number;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            taskId: string;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/trips/{tripId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One trip in full: the manifest, the legs, the days. */
        get: {
            parameters: {
                query?: {
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                    tripId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description In the order it is put in: for the last stop first. */
                            aboard: {
                                /** @description Pieces. */
                                count: number;
                                /** @description What never goes in one load. */
                                danger: ("chlorine" | "fuel") | null;
                                /** @description So many of the part are in one piece. */
                                each_count: number;
                                /** @description Nobody states a stock or an arrival of it: it is planned as if it lay there. */
                                isPresumed: boolean;
                                /** @description People it takes to lift one; null: its mass is not known. */
                                lift_people: number | null;
                                longest_m: number | null;
                                /** @description Of all of them. */
                                mass_kg: number | null;
                                name: string;
                                partId: string;
                                siteId: string;
                            }[];
                            carriers: {
                                carrierId: string;
                                /** @description At its limit. */
                                freeboard_m: number | null;
                                /** @description With its crew and nothing else aboard. */
                                freeboardEmpty_m: number | null;
                                leastFreeboard_m: number | null;
                                length_m: number | null;
                                limit_kg: number | null;
                                limitSetBy: string | null;
                                mode: string;
                                name: string;
                            }[];
                            /** @description What is told whenever its load is told; more of them where a leg goes on a river. */
                            cautions: {
                                name: string;
                                said: string;
                            }[];
                            crew: {
                                base: string;
                                crewId: string;
                                /** @description The first day it is free for a trip of this plan. */
                                from: string | null;
                                /** @description What it travels by, in words. */
                                goesBy: string;
                                name: string;
                                people: number;
                                store: string;
                            };
                            /** @description The people of the crew with what they carry; null: not known. */
                            crew_kg: number | null;
                            /** @description The itinerary, day by day. */
                            days: {
                                /** @description A day, YYYY-MM-DD. */
                                day: string;
                                /** @description Is a way by river gone that day? Left out: not known. */
                                isAfloat?: boolean;
                                /** @description Does the crew rest that day? Left out: it works, or nobody knows. */
                                isRest?: boolean;
                                /** @description What is said of a night that is spent at no place. */
                                night?: string;
                                /** @description What the crew does that day, in order. */
                                said: string[];
                                siteIds: string[];
                                /** @description Where it spends the night; null: at its base. */
                                sleeps: string | null;
                            }[];
                            fuel_kg: number | null;
                            /** @description What is brought to its store for it before it leaves. */
                            hauls: {
                                /** @description The last of it is there. */
                                arrives: string;
                                /** @description Null: not within the days looked at. */
                                back: string | null;
                                /** @description What it is brought by, by name; null: nobody says. */
                                by: string | null;
                                carrier: {
                                    carrierId: string;
                                    /** @description At its limit. */
                                    freeboard_m: number | null;
                                    /** @description With its crew and nothing else aboard. */
                                    freeboardEmpty_m: number | null;
                                    leastFreeboard_m: number | null;
                                    length_m: number | null;
                                    limit_kg: number | null;
                                    limitSetBy: string | null;
                                    mode: string;
                                    name: string;
                                } | null;
                                carrierId: string | null;
                                forTrip: string;
                                from: string;
                                fuel_kg: number;
                                /** @description Of all of them, there and back. */
                                fuel_L: number;
                                haulId: string;
                                /** @description Goods of all of them. */
                                kg: number;
                                /** @description A day, YYYY-MM-DD. */
                                leaves: string;
                                /** @description What all of them take, less goods and fuel; below 0: over the limit; null: no limit. */
                                left_kg: number | null;
                                /** @description Each run there and back, in the order they are gone. */
                                legs: {
                                    arrives: string | null;
                                    /** @description Id of a place or site. */
                                    from: string;
                                    hours_h: number;
                                    /** @description Null: not told apart from the next leg. */
                                    leaves: string | null;
                                    /** @description The most that passes in one go; null: no limit. */
                                    limit_kg: number | null;
                                    /** @description Where the limit comes from: the first way that lets no more pass; null: no limit. */
                                    limitBy: {
                                        /** @description Null: porters. */
                                        carrierId: string | null;
                                        /** @description The way itself states the limit; else it is that of what carries there. */
                                        isOfWay: boolean;
                                        /** @enum {string} */
                                        mode: "road" | "river" | "foot";
                                        /** @description Its name, or its ends. */
                                        way: string;
                                        wayId: string;
                                    } | null;
                                    porters_count: number;
                                    said: string;
                                    stretches: {
                                        carrierId: string | null;
                                        /** @description Spent before it on changing carriers. */
                                        changeOver_h: number;
                                        from: string;
                                        hours_h: number;
                                        /** @enum {string} */
                                        mode: "road" | "river" | "foot";
                                        to: string;
                                        wayId: string;
                                    }[];
                                    to: string;
                                }[];
                                /** @description Of one of them; null: no limit. */
                                limit_kg: number | null;
                                /** @description Goods and fuel of all of them. */
                                loaded_kg: number;
                                /** @description Each of them, in the order they go. */
                                runs: {
                                    /** @description A day, YYYY-MM-DD. */
                                    arrives: string;
                                    back: string | null;
                                    /** @description A day, YYYY-MM-DD. */
                                    leaves: string;
                                    /** @description It leaves for home; null: it does not come back within the days looked at. */
                                    returns: string | null;
                                }[];
                                store: string;
                                /** @description So often it goes there and back. */
                                trips_count: number;
                            }[];
                            isInForce: boolean;
                            legs: {
                                arrives: string | null;
                                /** @description Id of a place or site. */
                                from: string;
                                hours_h: number;
                                /** @description Null: not told apart from the next leg. */
                                leaves: string | null;
                                /** @description The most that passes in one go; null: no limit. */
                                limit_kg: number | null;
                                /** @description Where the limit comes from: the first way that lets no more pass; null: no limit. */
                                limitBy: {
                                    /** @description Null: porters. */
                                    carrierId: string | null;
                                    /** @description The way itself states the limit; else it is that of what carries there. */
                                    isOfWay: boolean;
                                    /** @enum {string} */
                                    mode: "road" | "river" | "foot";
                                    /** @description Its name, or its ends. */
                                    way: string;
                                    wayId: string;
                                } | null;
                                porters_count: number;
                                said: string;
                                stretches: {
                                    carrierId: string | null;
                                    /** @description Spent before it on changing carriers. */
                                    changeOver_h: number;
                                    from: string;
                                    hours_h: number;
                                    /** @enum {string} */
                                    mode: "road" | "river" | "foot";
                                    to: string;
                                    wayId: string;
                                }[];
                                to: string;
                            }[];
                            /** @description Names of the places and sites its legs go by. */
                            places: {
                                name: string;
                                placeId: string;
                            }[];
                            plan: string;
                            planId: string;
                            programme: string;
                            stamp: string;
                            trip: {
                                /** @description A day, YYYY-MM-DD. */
                                back: string;
                                broken: {
                                    kind: string;
                                    said: string;
                                    siteId: string | null;
                                }[];
                                /** @description Null: of a trip that left, it is not worked out any more. */
                                cost: number | null;
                                /** @description Null: of a trip that left, it is not worked out any more. */
                                fuel_L: number | null;
                                isLocked: boolean;
                                /** @description It should have left, or be back, by today, and nobody has entered that it did. */
                                isOverdue: boolean;
                                /** @description A few days later a way it goes is closed, or a site is handed over too late. */
                                isTight: boolean;
                                /** @description Null: of a trip that left, it is not worked out any more. */
                                kg: number | null;
                                /** @description A day, YYYY-MM-DD. */
                                leaves: string;
                                legs: {
                                    arrives: string | null;
                                    from: string;
                                    hours_h: number;
                                    leaves: string | null;
                                    to: string;
                                    wayIds: string[];
                                }[];
                                /** @description Null: of a trip that left, it is not worked out any more. */
                                litres: number | null;
                                /** @description Null: of a trip that left, it is not worked out any more. */
                                loaded_kg: number | null;
                                nights_count: number;
                                notBefore: string | null;
                                order: number;
                                /** @description When it should have left, and when it can; null where it is not overdue, or has left. */
                                overdueSaid: string | null;
                                said: string;
                                /** @enum {string} */
                                state: "done" | "underWay" | "planned";
                                stops: {
                                    /** @description Null of a trip that left: what happened is known by day alone. */
                                    arrives: string | null;
                                    /** @description First days of service of the futures drawn. */
                                    futures: {
                                        /** @description Null: not within the days looked at. */
                                        p10: string | null;
                                        /** @description Null: not within the days looked at. */
                                        p50: string | null;
                                        /** @description Null: not within the days looked at. */
                                        p90: string | null;
                                    } | null;
                                    /** @description Of a trip that left the day that was entered, or none yet. */
                                    handOver: string | null;
                                    isHandedOver: boolean;
                                    /** @description Something of its kit could not be counted: its load is at least as told. */
                                    isKitInPart: boolean;
                                    /** @description No treatment unit is entered for it: its water is not shown to be fit to drink. */
                                    isUntreated: boolean;
                                    /** @description A part of its kit has no mass: its load is at least as told. */
                                    isUnweighed: boolean;
                                    /** @description False: the site is not done in this trip; what is broken says why. */
                                    isWayUp: boolean;
                                    /** @description The hand-over as it was when the plan was worked out last; null: never. */
                                    kept: string | null;
                                    name: string;
                                    people: number;
                                    served: string | null;
                                    siteId: string;
                                    starts: string | null;
                                }[];
                                tightSaid: string | null;
                                tripId: string;
                                waited_days: number;
                                /** @enum {string} */
                                waitsFor: "nothing" | "stock" | "way" | "carrier" | "notBefore" | "haul";
                            };
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/trips/{tripId}/hauls.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is brought to its store before one trip leaves, as a PDF in a language of paper. */
        get: {
            parameters: {
                query?: {
                    language?: string;
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                    tripId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/trips/{tripId}/manifest.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The manifest of one trip, as a PDF in a language of paper. */
        get: {
            parameters: {
                query?: {
                    language?: string;
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                    tripId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/trips/{tripId}/notices.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Notices to the villages of one trip, as a PDF in a language of paper. */
        get: {
            parameters: {
                query?: {
                    language?: string;
                    plan?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                    tripId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/rollout/working": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How a figure of the rollout was reached, line by line. */
        get: {
            parameters: {
                query: {
                    area?: string;
                    /** @description A plan it is set beside: both are timed from what has happened of that one. */
                    beside?: string;
                    day?: string;
                    differs?: "finish" | "waiting" | "cost" | "fuel" | "trips";
                    figure: "finish" | "drinks" | "why" | "waiting" | "bound" | "cost" | "stock" | "area" | "differs";
                    part?: string;
                    plan?: string;
                    site?: string;
                    store?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description The code of the line that was asked for. */
                            opens: string;
                            planId: string | null;
                            /** @description Of why a village comes when it does: what it says in sentences; else none. */
                            said: string[];
                            stamp: string;
                            /** @description Days of the plan (`planDay`, `planTime`) are counted from its first; `said` has them by the calendar. */
                            working: components["schemas"]["workingLine"][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/safety": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The cup of every site as it was judged, with its last sample and the sets of cartridges that are due: sent as the years are. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["programmeSafety"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/sites": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every site with its cells, and its verdict as far as it is known. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            sites: {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                cells: {
                                    [key: string]: string;
                                };
                                /** @description Null where it is not worked out yet, or the row cannot be used. */
                                design: {
                                    /** @description The finding in a sentence or two. */
                                    finding: string;
                                    /** @description As counted, or made from the households. */
                                    people: number | null;
                                    /** @description The first change that would mend it, in words. */
                                    remedy: string | null;
                                    stations: {
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                        /**
                                         * @description A station not modelled yet is notJudged and does not count.
                                         * @enum {string}
                                         */
                                        treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
                                    };
                                    /**
                                     * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                                     * @enum {string}
                                     */
                                    verdict: "holds" | "tight" | "short" | "unknown";
                                } | null;
                                key: string;
                            }[];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/sites/{siteId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One site in full. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                    siteId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            design: components["schemas"]["site"] | null;
                            /** @description The version the design is of; null where there is none yet. */
                            designVersion: number | null;
                            /** @description How far the design of the present facts is; 1 where it is this one. */
                            done_fraction: number;
                            /** @description A person called it off: it waits until it is begun again, or the facts change. */
                            isCalledOff: boolean;
                            isFailed: boolean;
                            /** @description What was found in the tables about it. */
                            problems: components["schemas"]["problem"][];
                            rows: {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                cells: {
                                    [key: string]: string;
                                };
                                key: string;
                                table: string;
                            }[];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/sites/{siteId}/facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All that the design and the remedies of one site follow from, as the last design has it, with the addresses of the readings. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                    siteId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["siteFacts"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/sites/{siteId}/kit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The kit, the loads and the whole-life cost of one site. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                    siteId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["siteKit"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/sites/{siteId}/pack.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The pack that is carried to one site, as a PDF in a language of paper. */
        get: {
            parameters: {
                query?: {
                    language?: string;
                };
                header?: never;
                path: {
                    programmeId: string;
                    siteId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/tables/{table}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The rows of one table. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                    table: "rain" | "settings" | "wayLines" | "headers" | "files" | "sites" | "roofs" | "gutters" | "downpipes" | "diverters" | "tanks" | "pipes" | "treatmentUnits" | "cartridges" | "flowReadings" | "pressureTests" | "rawWater" | "barriers" | "waterTests" | "testPortions" | "inspections" | "chlorination" | "demand" | "gauges" | "normals" | "storms" | "stormCoefficients" | "shortRain" | "parts" | "prices" | "rates" | "redenominations" | "costs" | "kitRules" | "kitConditions" | "keptApart" | "carriers" | "targets" | "presence" | "secondSources" | "places" | "ways" | "closures" | "riverLevels" | "wayLevels" | "crews" | "crewCarriers" | "workCalendars" | "arrivals" | "carriersAway" | "plans" | "planTrips" | "planStops";
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            rows: {
                                /** @description The cells of a row by column, as text; an empty cell is not there. */
                                cells: {
                                    [key: string]: string;
                                };
                                key: string;
                            }[];
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes back the last change made on this computer. */
        post: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": {
                        /** @description Who makes the change. */
                        by: string;
                    };
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            problems: components["schemas"]["problem"][];
                            /** @description The name of the record that was made; null where nothing changed. */
                            record: string | null;
                            /** @description Grows with every change. */
                            version: number;
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{programmeId}/years": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The water years of every site as they were judged: sent once for each state, with ETag and packed where the page takes it. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    programmeId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["years"];
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tasks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The long jobs that run, and those that were cut off when the program last ended. */
        get: {
            parameters: {
                query?: never;
                header?: never;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            tasks: components["schemas"]["task"][];
                        };
                    };
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tasks/{taskId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Calls a job off, or puts away the word of one that was cut off. */
        delete: {
            parameters: {
                query?: never;
                header?: never;
                path: {
                    taskId: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description Default Response */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["problems"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        drainage: {
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description The hardest rain that everything carries. */
            carries_mm_per_h: number | null;
            finding: string;
            firstFlush: {
                chamber_L: number | null;
                chamberWanted_L: number | null;
                /** @description Depth on the plan roof that is let go. */
                diverted_mm: number;
                emptying_h: number | null;
                isBlocked: boolean;
                /** @description Rain that just keeps up with its hole while it is full. */
                leak_mm_per_h: number | null;
                /** @description Dirt that still comes: a rule of thumb, no barrier to germs. */
                loadLeft_fraction: number;
                roofId: string;
                said: string;
            }[];
            /** @description Which of parts is fullest, counted from 0. */
            governing: number | null;
            /** @description Share of the measured rain that runs over; null: not known. */
            lost_fraction: number | null;
            parts: {
                /** @description Null where it was not measured well enough. */
                capacity_L_per_s: number | null;
                /** @description What the storm brings to it; null where that is not known. */
                flow_L_per_s: number | null;
                flow_L_per_s_range: {
                    high: number;
                    low: number;
                } | null;
                /** @description The gutter, the downpipe, or the first tank of the body of water. */
                id: string;
                /** @enum {string} */
                part: "gutter" | "outlet" | "downpipe" | "overflow";
                /** @description Null for an overflow: it takes what all its roofs bring. */
                roofId: string | null;
                /** @description Its width or bore. */
                smallest_mm: number | null;
                /** @description Smallest part of the catalogue that holds; null where none does, or this one does. */
                smallestPartId: string | null;
                /** @description Flow over capacity. */
                use_fraction: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
            }[];
            returnPeriod_years: number | null;
            storm_mm_per_h: number | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        drainageInput: {
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description The hardest rain that everything carries. */
            carries_mm_per_h: number | null;
            finding: string;
            firstFlush: {
                chamber_L: number | null;
                chamberWanted_L: number | null;
                /** @description Depth on the plan roof that is let go. */
                diverted_mm: number;
                emptying_h: number | null;
                isBlocked: boolean;
                /** @description Rain that just keeps up with its hole while it is full. */
                leak_mm_per_h: number | null;
                /** @description Dirt that still comes: a rule of thumb, no barrier to germs. */
                loadLeft_fraction: number;
                roofId: string;
                said: string;
            }[];
            /** @description Which of parts is fullest, counted from 0. */
            governing: number | null;
            /** @description Share of the measured rain that runs over; null: not known. */
            lost_fraction: number | null;
            parts: {
                /** @description Null where it was not measured well enough. */
                capacity_L_per_s: number | null;
                /** @description What the storm brings to it; null where that is not known. */
                flow_L_per_s: number | null;
                flow_L_per_s_range: {
                    high: number;
                    low: number;
                } | null;
                /** @description The gutter, the downpipe, or the first tank of the body of water. */
                id: string;
                /** @enum {string} */
                part: "gutter" | "outlet" | "downpipe" | "overflow";
                /** @description Null for an overflow: it takes what all its roofs bring. */
                roofId: string | null;
                /** @description Its width or bore. */
                smallest_mm: number | null;
                /** @description Smallest part of the catalogue that holds; null where none does, or this one does. */
                smallestPartId: string | null;
                /** @description Flow over capacity. */
                use_fraction: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
            }[];
            returnPeriod_years: number | null;
            storm_mm_per_h: number | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        /** @description A number as it is; what JSON has no word for is named. */
        figure: number | {
            /** @enum {string} */
            figure: "NaN" | "Infinity" | "-Infinity" | "-0";
        };
        /** @description A number as it is; what JSON has no word for is named. */
        figureInput: number | {
            /** @enum {string} */
            figure: "NaN" | "Infinity" | "-Infinity" | "-0";
        };
        gauge: {
            gaugeId: string;
            name: string;
            problems: components["schemas"]["problem"][];
            /** @description Null where the record cannot carry a verdict. */
            rain: {
                /** @description Days at both ends that make no whole water year. */
                cutDays: number;
                filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                firstDay: string;
                judgedYears: number;
                /** @description A day, YYYY-MM-DD. */
                lastDay: string;
                /** @description Longest run of days under 1 mm in the judged years. */
                longestRainlessRun_days: number;
                /** @description Days of made-up rain: all or none. Its years are counted from 1, not by the calendar. */
                madeDays: number;
                meanAnnualRain_mm: number;
                /** @description Of the filled days, those filled from neighbouring gauges. */
                neighbourDays: number;
                waterYearStartMonth: number;
                years: {
                    judged: boolean;
                    missing_days: number;
                    waterYear: number;
                }[];
            } | null;
            /** @description How hard it rains for five minutes; null where that is not known. */
            storm: components["schemas"]["storm"] | null;
        };
        gaugeInput: {
            gaugeId: string;
            name: string;
            problems: components["schemas"]["problemInput"][];
            /** @description Null where the record cannot carry a verdict. */
            rain: {
                /** @description Days at both ends that make no whole water year. */
                cutDays: number;
                filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                firstDay: string;
                judgedYears: number;
                /** @description A day, YYYY-MM-DD. */
                lastDay: string;
                /** @description Longest run of days under 1 mm in the judged years. */
                longestRainlessRun_days: number;
                /** @description Days of made-up rain: all or none. Its years are counted from 1, not by the calendar. */
                madeDays: number;
                meanAnnualRain_mm: number;
                /** @description Of the filled days, those filled from neighbouring gauges. */
                neighbourDays: number;
                waterYearStartMonth: number;
                years: {
                    judged: boolean;
                    missing_days: number;
                    waterYear: number;
                }[];
            } | null;
            /** @description How hard it rains for five minutes; null where that is not known. */
            storm: components["schemas"]["stormInput"] | null;
        };
        gaugeReadings: {
            /** @description Days counted from 1 January 1970, by stretches: the first, how many, the step. */
            days: [
                components["schemas"]["figure"],
                components["schemas"]["figure"],
                components["schemas"]["figure"]
            ][];
            gaugeId: string;
            /** @description A reading each; null where the gauge was not read. */
            rain_mm: (components["schemas"]["figure"] | null)[];
            /** @description The rows they stand in, likewise. */
            rows: [
                components["schemas"]["figure"],
                components["schemas"]["figure"],
                components["schemas"]["figure"]
            ][];
            /** @description Rain of intervals shorter than a day, those in which it rained. */
            short: {
                /** @description How long each is, in minutes, likewise. */
                intervals: [
                    components["schemas"]["figure"],
                    components["schemas"]["figure"],
                    components["schemas"]["figure"]
                ][];
                /** @description Ends of intervals, minutes counted from 1 January 1970, by stretches. */
                minutes: [
                    components["schemas"]["figure"],
                    components["schemas"]["figure"],
                    components["schemas"]["figure"]
                ][];
                /** @description Rain of each. */
                rain_mm: components["schemas"]["figure"][];
            };
        };
        gaugeReadingsInput: {
            /** @description Days counted from 1 January 1970, by stretches: the first, how many, the step. */
            days: [
                components["schemas"]["figureInput"],
                components["schemas"]["figureInput"],
                components["schemas"]["figureInput"]
            ][];
            gaugeId: string;
            /** @description A reading each; null where the gauge was not read. */
            rain_mm: (components["schemas"]["figureInput"] | null)[];
            /** @description The rows they stand in, likewise. */
            rows: [
                components["schemas"]["figureInput"],
                components["schemas"]["figureInput"],
                components["schemas"]["figureInput"]
            ][];
            /** @description Rain of intervals shorter than a day, those in which it rained. */
            short: {
                /** @description How long each is, in minutes, likewise. */
                intervals: [
                    components["schemas"]["figureInput"],
                    components["schemas"]["figureInput"],
                    components["schemas"]["figureInput"]
                ][];
                /** @description Ends of intervals, minutes counted from 1 January 1970, by stretches. */
                minutes: [
                    components["schemas"]["figureInput"],
                    components["schemas"]["figureInput"],
                    components["schemas"]["figureInput"]
                ][];
                /** @description Rain of each. */
                rain_mm: components["schemas"]["figureInput"][];
            };
        };
        head: {
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description From the low level; under 0 the taps lie higher. */
            fallToTap_m: number | null;
            fallToUnit_m: number | null;
            /** @description In a few sentences. */
            finding: string;
            flowFull_L_per_min: number | null;
            /** @description Without a hand pump, the tank at its outlet. */
            flowLow_L_per_min: number | null;
            /** @description With every tap open. */
            flowWanted_L_per_min: number | null;
            /** @description The same with the tank at its overflow. */
            fullLevel_m: number | null;
            /** @description At the flow wanted, the tank at its outlet. */
            grade: {
                /** @description Along the pipes from the tank. */
                along_m: number;
                /** @description Height of the place itself; null between places that were measured. */
                elevation_m: number | null;
                /** @description To which the water would rise in a tube beside it. */
                grade_m: number;
                /** @description The pipe that ends there. */
                pipeId: string | null;
                /** @enum {string} */
                place: "tank" | "pipe" | "unitInlet" | "unitOutlet" | "tap";
            }[];
            hasHandPump: boolean;
            /** @description At the taps at the flow wanted, the tank at its outlet; under 0: so much is missing. */
            headLeft_m: number | null;
            headLeftFull_m: number | null;
            /** @description The narrowest bore of all its pipes with which it holds; null where none does. */
            leastBore_mm: number | null;
            leastPart_mm: number | null;
            /** @description The narrowest pipe of the catalogue with which it holds. */
            leastPartId: string | null;
            lossInUnit_m: number | null;
            lossToTap_m: number | null;
            lossToUnit_m: number | null;
            /** @description Of the water over the ground, the tank at its outlet. */
            lowLevel_m: number | null;
            /** @description What one person can keep up; null where nothing is to be added. */
            onePerson_L_per_min: number | null;
            /** @description Null where there is no hand pump. */
            pumpAdds_m: number | null;
            /** @description At its handle, one person for all the taps. */
            pumpPower_W: number | null;
            /** @description In the order of the water, at the flow wanted. */
            segments: {
                bore_mm: number | null;
                /** @description Head its wall takes. */
                friction_m: number;
                leg: ("tankToUnit" | "unitToTap") | null;
                length_m: number | null;
                /** @description Head its fittings take; all that the unit takes. */
                minor_m: number;
                /** @description Null for the treatment unit. */
                pipeId: string | null;
                velocity_m_per_s: number | null;
            }[];
            /** @description How far the pump draws water up, losses included. */
            suction_m: number | null;
            /** @description None where a site that is to be judged has no tank or no pipe. */
            tankIds: string[];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        headInput: {
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description From the low level; under 0 the taps lie higher. */
            fallToTap_m: number | null;
            fallToUnit_m: number | null;
            /** @description In a few sentences. */
            finding: string;
            flowFull_L_per_min: number | null;
            /** @description Without a hand pump, the tank at its outlet. */
            flowLow_L_per_min: number | null;
            /** @description With every tap open. */
            flowWanted_L_per_min: number | null;
            /** @description The same with the tank at its overflow. */
            fullLevel_m: number | null;
            /** @description At the flow wanted, the tank at its outlet. */
            grade: {
                /** @description Along the pipes from the tank. */
                along_m: number;
                /** @description Height of the place itself; null between places that were measured. */
                elevation_m: number | null;
                /** @description To which the water would rise in a tube beside it. */
                grade_m: number;
                /** @description The pipe that ends there. */
                pipeId: string | null;
                /** @enum {string} */
                place: "tank" | "pipe" | "unitInlet" | "unitOutlet" | "tap";
            }[];
            hasHandPump: boolean;
            /** @description At the taps at the flow wanted, the tank at its outlet; under 0: so much is missing. */
            headLeft_m: number | null;
            headLeftFull_m: number | null;
            /** @description The narrowest bore of all its pipes with which it holds; null where none does. */
            leastBore_mm: number | null;
            leastPart_mm: number | null;
            /** @description The narrowest pipe of the catalogue with which it holds. */
            leastPartId: string | null;
            lossInUnit_m: number | null;
            lossToTap_m: number | null;
            lossToUnit_m: number | null;
            /** @description Of the water over the ground, the tank at its outlet. */
            lowLevel_m: number | null;
            /** @description What one person can keep up; null where nothing is to be added. */
            onePerson_L_per_min: number | null;
            /** @description Null where there is no hand pump. */
            pumpAdds_m: number | null;
            /** @description At its handle, one person for all the taps. */
            pumpPower_W: number | null;
            /** @description In the order of the water, at the flow wanted. */
            segments: {
                bore_mm: number | null;
                /** @description Head its wall takes. */
                friction_m: number;
                leg: ("tankToUnit" | "unitToTap") | null;
                length_m: number | null;
                /** @description Head its fittings take; all that the unit takes. */
                minor_m: number;
                /** @description Null for the treatment unit. */
                pipeId: string | null;
                velocity_m_per_s: number | null;
            }[];
            /** @description How far the pump draws water up, losses included. */
            suction_m: number | null;
            /** @description None where a site that is to be judged has no tank or no pipe. */
            tankIds: string[];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        mapFile: {
            /** @description Whose data it is; null where it does not say. */
            attribution: string | null;
            east_deg: number;
            file: string;
            /** @description Names of the layers of vector tiles. */
            layers: string[];
            leastZoom: number;
            mostZoom: number;
            north_deg: number;
            size_bytes: number;
            south_deg: number;
            /** @enum {string} */
            tiles: "vector" | "raster";
            west_deg: number;
        };
        mapFileInput: {
            /** @description Whose data it is; null where it does not say. */
            attribution: string | null;
            east_deg: number;
            file: string;
            /** @description Names of the layers of vector tiles. */
            layers: string[];
            leastZoom: number;
            mostZoom: number;
            north_deg: number;
            size_bytes: number;
            south_deg: number;
            /** @enum {string} */
            tiles: "vector" | "raster";
            west_deg: number;
        };
        notUsed: {
            /** @description The whole row as it was written. */
            cells: string[];
            code: string;
            /** @description Null where the whole row was not used. */
            column: string | null;
            file: string;
            row: number;
            /** @description As it was written. */
            value: string;
        };
        notUsedInput: {
            /** @description The whole row as it was written. */
            cells: string[];
            code: string;
            /** @description Null where the whole row was not used. */
            column: string | null;
            file: string;
            row: number;
            /** @description As it was written. */
            value: string;
        };
        overview: {
            /** @description Sites in all. */
            count: number;
            /** @description The version the verdicts are of, but for those told while a newer design runs. */
            designVersion: number | null;
            name: string;
            problemCounts: {
                blocker: number;
                note: number;
                warning: number;
            } | null;
            /** @description What would mend them together; null before the first design. */
            remedies: {
                groups: {
                    /** @description The kinds of change in words. */
                    about: string;
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    costsInWords: string;
                    isPromiseCut: boolean;
                    kinds: ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "fittings" | "secondSource" | "people" | "litres")[];
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /**
                     * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight" | "short" | "unknown";
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                }[];
                /** @description Sites that are short or tight. */
                looked: {
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                };
                /** @description Those that would hold. */
                mended: {
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    costsInWords: string;
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                };
                notMended: {
                    /** @enum {string} */
                    reason: "assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts";
                    sentence: string;
                    siteIds: string[];
                }[];
                /** @description Prices are the latest on or before this day; null where there are none. */
                pricesOn: string | null;
            } | null;
            /** @description Short first, then unknown, tight, holds; within each the most people for the most dry days. */
            sites: {
                area: string | null;
                /** @description The figure of the worst station, where that is not the tank and it is short or tight. */
                decides: {
                    /** @enum {string} */
                    figure: "gutter" | "outlet" | "downpipe" | "overflow" | "settledByDay" | "settledInStorm" | "bearing" | "wind" | "fastening" | "headLeft" | "pumpPower" | "hoursNeeded" | "hoursNeededWorn" | "lastWait" | "lastWaitWorn" | "germs" | "lostYears";
                    /** @description The gutter, the downpipe, the tank, the unit, the sample or the germ. */
                    id: string;
                    /** @description What the part carries, the ground takes, or is wanted. */
                    limit: number | null;
                    range: {
                        high: number;
                        low: number;
                    } | null;
                    /** @enum {string} */
                    station: "roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup";
                    unit: string;
                    value: number;
                } | null;
                /** @description In the design year: those it is judged for. */
                design_people: number | null;
                /** @description Null where the site has no verdict. */
                figures: {
                    /** @description The assumption that keeps it from holding: the code of its problem. */
                    cappedBy: string | null;
                    /** @description Good years among as many coming years as were judged. */
                    comingGood_years_range: {
                        high: number;
                        low: number;
                    };
                    /** @description To a tenth. */
                    dryDays_per_year: number;
                    /** @description To a tenth. */
                    dryDays_per_year_range: {
                        high: number;
                        low: number;
                    };
                    /** @description What the share of days of the target comes to, to a tenth. */
                    dryDaysAllowed_per_year: number;
                    goodYears: number;
                    goodYearsNeeded: number;
                    /** @description Is the share of days of the target met? */
                    isDaysMet: boolean;
                    judgedYears: number;
                    /** @description What keeps it short. */
                    lacks: ("tank" | "water" | "ration") | null;
                    longestRun_days: number | null;
                    /** @description Bodies of water; the figures are of the one that is worst off. */
                    storages_count: number;
                    tankVolume_L: number;
                } | null;
                finding: string | null;
                hasStorm: boolean | null;
                isNotToDrink: boolean | null;
                /** @description The key of its row in the table of sites. */
                key: string;
                latitude_deg: number | null;
                longitude_deg: number | null;
                name: string;
                /** @description Why no change mends it, in words. */
                notMended: string | null;
                /** @description As counted, or made from the households. */
                people: number | null;
                /** @description The smallest change that mends it; null where none does or none is needed. */
                remedy: {
                    /** @description The changes in words. */
                    about: string;
                    /** @description Of the parts alone; null where it is not known: noCost says why. */
                    amount: number | null;
                    currency: string | null;
                    noCost: string | null;
                    /** @description 0: what was promised is kept. */
                    promiseCut_count: number;
                    /** @description The changes, what it is then, and the cost, in a sentence. */
                    sentence: string;
                    /**
                     * @description What it is then.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight";
                } | null;
                siteClass: string | null;
                siteId: string;
                standGate: ("notNeeded" | "closed" | "open") | null;
                stations: {
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
                } | null;
                /** @description Place in targets, from 0. */
                target: number | null;
                /** @description Null where it is not worked out yet, or the row cannot be used. */
                verdict: ("holds" | "tight" | "short" | "unknown") | null;
                /** @description What keeps it, or its worst station, from a verdict, in words; null where nothing does. */
                withheldBy: string | null;
            }[];
            /** @description Sites and people by verdict; notYet: not worked out yet, or a row that cannot be used. */
            tally: {
                holds: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                notYet: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                short: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                tight: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                unknown: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
            };
            /** @description What sites are judged by: each site names its place here. */
            targets: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            }[];
            /** @description Grows with every change. */
            version: number;
        };
        overviewInput: {
            /** @description Sites in all. */
            count: number;
            /** @description The version the verdicts are of, but for those told while a newer design runs. */
            designVersion: number | null;
            name: string;
            problemCounts: {
                blocker: number;
                note: number;
                warning: number;
            } | null;
            /** @description What would mend them together; null before the first design. */
            remedies: {
                groups: {
                    /** @description The kinds of change in words. */
                    about: string;
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    costsInWords: string;
                    isPromiseCut: boolean;
                    kinds: ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "fittings" | "secondSource" | "people" | "litres")[];
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /**
                     * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight" | "short" | "unknown";
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                }[];
                /** @description Sites that are short or tight. */
                looked: {
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                };
                /** @description Those that would hold. */
                mended: {
                    costs: {
                        amount: number;
                        currency: string;
                    }[];
                    costsInWords: string;
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    /** @description Sites whose cost is not known; they are in no sum. */
                    withoutCost_count: number;
                    withoutPeople_count: number;
                };
                notMended: {
                    /** @enum {string} */
                    reason: "assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts";
                    sentence: string;
                    siteIds: string[];
                }[];
                /** @description Prices are the latest on or before this day; null where there are none. */
                pricesOn: string | null;
            } | null;
            /** @description Short first, then unknown, tight, holds; within each the most people for the most dry days. */
            sites: {
                area: string | null;
                /** @description The figure of the worst station, where that is not the tank and it is short or tight. */
                decides: {
                    /** @enum {string} */
                    figure: "gutter" | "outlet" | "downpipe" | "overflow" | "settledByDay" | "settledInStorm" | "bearing" | "wind" | "fastening" | "headLeft" | "pumpPower" | "hoursNeeded" | "hoursNeededWorn" | "lastWait" | "lastWaitWorn" | "germs" | "lostYears";
                    /** @description The gutter, the downpipe, the tank, the unit, the sample or the germ. */
                    id: string;
                    /** @description What the part carries, the ground takes, or is wanted. */
                    limit: number | null;
                    range: {
                        high: number;
                        low: number;
                    } | null;
                    /** @enum {string} */
                    station: "roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup";
                    unit: string;
                    value: number;
                } | null;
                /** @description In the design year: those it is judged for. */
                design_people: number | null;
                /** @description Null where the site has no verdict. */
                figures: {
                    /** @description The assumption that keeps it from holding: the code of its problem. */
                    cappedBy: string | null;
                    /** @description Good years among as many coming years as were judged. */
                    comingGood_years_range: {
                        high: number;
                        low: number;
                    };
                    /** @description To a tenth. */
                    dryDays_per_year: number;
                    /** @description To a tenth. */
                    dryDays_per_year_range: {
                        high: number;
                        low: number;
                    };
                    /** @description What the share of days of the target comes to, to a tenth. */
                    dryDaysAllowed_per_year: number;
                    goodYears: number;
                    goodYearsNeeded: number;
                    /** @description Is the share of days of the target met? */
                    isDaysMet: boolean;
                    judgedYears: number;
                    /** @description What keeps it short. */
                    lacks: ("tank" | "water" | "ration") | null;
                    longestRun_days: number | null;
                    /** @description Bodies of water; the figures are of the one that is worst off. */
                    storages_count: number;
                    tankVolume_L: number;
                } | null;
                finding: string | null;
                hasStorm: boolean | null;
                isNotToDrink: boolean | null;
                /** @description The key of its row in the table of sites. */
                key: string;
                latitude_deg: number | null;
                longitude_deg: number | null;
                name: string;
                /** @description Why no change mends it, in words. */
                notMended: string | null;
                /** @description As counted, or made from the households. */
                people: number | null;
                /** @description The smallest change that mends it; null where none does or none is needed. */
                remedy: {
                    /** @description The changes in words. */
                    about: string;
                    /** @description Of the parts alone; null where it is not known: noCost says why. */
                    amount: number | null;
                    currency: string | null;
                    noCost: string | null;
                    /** @description 0: what was promised is kept. */
                    promiseCut_count: number;
                    /** @description The changes, what it is then, and the cost, in a sentence. */
                    sentence: string;
                    /**
                     * @description What it is then.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight";
                } | null;
                siteClass: string | null;
                siteId: string;
                standGate: ("notNeeded" | "closed" | "open") | null;
                stations: {
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                    /**
                     * @description A station not modelled yet is notJudged and does not count.
                     * @enum {string}
                     */
                    treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
                } | null;
                /** @description Place in targets, from 0. */
                target: number | null;
                /** @description Null where it is not worked out yet, or the row cannot be used. */
                verdict: ("holds" | "tight" | "short" | "unknown") | null;
                /** @description What keeps it, or its worst station, from a verdict, in words; null where nothing does. */
                withheldBy: string | null;
            }[];
            /** @description Sites and people by verdict; notYet: not worked out yet, or a row that cannot be used. */
            tally: {
                holds: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                notYet: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                short: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                tight: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
                unknown: {
                    /** @description Of the sites whose people are known. */
                    people: number;
                    sites: number;
                    withoutPeople_count: number;
                };
            };
            /** @description What sites are judged by: each site names its place here. */
            targets: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            }[];
            /** @description Grows with every change. */
            version: number;
        };
        problem: {
            code: string;
            facts: {
                [key: string]: string | number | string[];
            };
            /** @description Where it was found. */
            place: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            };
            /** @enum {string} */
            severity: "blocker" | "warning" | "note";
            /** @description What to do about it. */
            todo: string;
            /** @description What is wrong. */
            what: string;
        };
        problemInput: {
            code: string;
            facts: {
                [key: string]: string | number | string[];
            };
            /** @description Where it was found. */
            place: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            };
            /** @enum {string} */
            severity: "blocker" | "warning" | "note";
            /** @description What to do about it. */
            todo: string;
            /** @description What is wrong. */
            what: string;
        };
        problems: {
            detail: string;
            problems: components["schemas"]["problem"][];
            status: number;
            title: string;
            type: string;
        };
        problemsInput: {
            detail: string;
            problems: components["schemas"]["problemInput"][];
            status: number;
            title: string;
            type: string;
        };
        programme: {
            madeAt: string;
            name: string;
            programmeId: string;
        };
        programmeInput: {
            madeAt: string;
            name: string;
            programmeId: string;
        };
        programmeKit: {
            beside: {
                boiling: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
                boughtWater: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
                pipedScheme: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
            };
            built_count: number;
            carriers: {
                carrierId: string;
                freeboard_cm: number | null;
                freeboardEmpty_cm: number | null;
                leastFreeboard_cm: number | null;
                limit_kg: number | null;
                limitSetBy: string | null;
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            /** @description The sites of the trip; null: all. */
            chosen: string[] | null;
            cost: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costServed: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costServed_count: number;
            costSites_count: number;
            costUnknown_count: number;
            currency: string | null;
            /** @description The design whose wear the costs take; null: none yet. */
            designVersion: number | null;
            lines: {
                amount: number | null;
                bought_count: number | null;
                /** @enum {string} */
                countedIn: "piece" | "m" | "kg" | "L";
                inStock_count: number | null;
                isAtLeast: boolean;
                isLate: boolean | null;
                kind: string;
                late_days: number | null;
                name: string;
                orderBy: string | null;
                packs_count: number | null;
                packSize_count: number;
                partId: string;
                price: {
                    amount: number;
                    currency: string;
                } | null;
                reason: string | null;
                short_count: number | null;
                spare_count: number | null;
                supplier: string | null;
                total_count: number | null;
            }[];
            neededOn: string | null;
            pricesOn: string | null;
            problems: components["schemas"]["problem"][];
            sites: {
                cost: {
                    isAtLeast: boolean;
                    perPersonYear_amount: number | null;
                    perYear_amount: number;
                    spread_amount: {
                        p10: number;
                        p90: number;
                    } | null;
                } | null;
                handOver: string | null;
                isBuilt: boolean;
                kitsIn: {
                    carrierId: string;
                    kits_count: number | null;
                }[];
                loads: {
                    carrierId: string;
                    left_count: number;
                    loads_count: number | null;
                }[];
                mass_kg: number;
                name: string | null;
                /** @description Pieces whose mass nobody states: the mass is at least so much. */
                noMass_count: number;
                parts_count: number;
                people: number | null;
                problems_count: number;
                siteId: string;
            }[];
            sites_count: number;
            suppliers: {
                orderBy: string | null;
                partIds: string[];
                sums: {
                    amount: number;
                    currency: string;
                }[];
                supplier: string | null;
                unpriced: string[];
            }[];
            /** @description Year-month-day. */
            today: string;
            trip: {
                carried: {
                    cannotCarry: {
                        count: number;
                        each_count: number;
                        name: string;
                        over_kg: number | null;
                        over_L: number | null;
                        over_m: number | null;
                        partId: string;
                    }[];
                    carrierId: string;
                    cautions: ("lifting" | "lifeVests" | "localSkipperDecides" | "freeboardMark" | "nobodyOnLoad" | "lashed" | "dangerApart")[];
                    isLeast: boolean;
                    leastLoads_count: number | null;
                    /** @description Of a load of several pieces; null: nobody stated it, and there is no load. */
                    limit_kg: number | null;
                    loads: {
                        bulk_L: number | null;
                        /** @enum {string} */
                        carriedBy: "one" | "two" | "carrier";
                        isFragile: boolean;
                        longest_m: number | null;
                        mass_kg: number;
                        pieces: {
                            count: number;
                            each_count: number;
                            name: string;
                            partId: string;
                        }[];
                    }[];
                    longest_m: number | null;
                    /** @enum {string} */
                    mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                    name: string;
                    noMass: {
                        count: number;
                        each_count: number;
                        name: string;
                        partId: string;
                    }[];
                    problems: components["schemas"]["problem"][];
                    /** @description In the order it is put in; what the carrier cannot take is left out. */
                    stowed: {
                        count: number;
                        each_count: number;
                        isFragile: boolean;
                        mass_kg: number | null;
                        name: string;
                        partId: string;
                        rules: string[];
                        siteId: string;
                    }[];
                }[];
                mass_kg: number;
                noMass_count: number;
            } | null;
            /** @description Asked for, and not there. */
            unknownSites: string[];
            /** @description Grows with every change. */
            version: number;
        };
        programmeKitInput: {
            beside: {
                boiling: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
                boughtWater: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
                pipedScheme: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
            };
            built_count: number;
            carriers: {
                carrierId: string;
                freeboard_cm: number | null;
                freeboardEmpty_cm: number | null;
                leastFreeboard_cm: number | null;
                limit_kg: number | null;
                limitSetBy: string | null;
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            /** @description The sites of the trip; null: all. */
            chosen: string[] | null;
            cost: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costServed: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costServed_count: number;
            costSites_count: number;
            costUnknown_count: number;
            currency: string | null;
            /** @description The design whose wear the costs take; null: none yet. */
            designVersion: number | null;
            lines: {
                amount: number | null;
                bought_count: number | null;
                /** @enum {string} */
                countedIn: "piece" | "m" | "kg" | "L";
                inStock_count: number | null;
                isAtLeast: boolean;
                isLate: boolean | null;
                kind: string;
                late_days: number | null;
                name: string;
                orderBy: string | null;
                packs_count: number | null;
                packSize_count: number;
                partId: string;
                price: {
                    amount: number;
                    currency: string;
                } | null;
                reason: string | null;
                short_count: number | null;
                spare_count: number | null;
                supplier: string | null;
                total_count: number | null;
            }[];
            neededOn: string | null;
            pricesOn: string | null;
            problems: components["schemas"]["problemInput"][];
            sites: {
                cost: {
                    isAtLeast: boolean;
                    perPersonYear_amount: number | null;
                    perYear_amount: number;
                    spread_amount: {
                        p10: number;
                        p90: number;
                    } | null;
                } | null;
                handOver: string | null;
                isBuilt: boolean;
                kitsIn: {
                    carrierId: string;
                    kits_count: number | null;
                }[];
                loads: {
                    carrierId: string;
                    left_count: number;
                    loads_count: number | null;
                }[];
                mass_kg: number;
                name: string | null;
                /** @description Pieces whose mass nobody states: the mass is at least so much. */
                noMass_count: number;
                parts_count: number;
                people: number | null;
                problems_count: number;
                siteId: string;
            }[];
            sites_count: number;
            suppliers: {
                orderBy: string | null;
                partIds: string[];
                sums: {
                    amount: number;
                    currency: string;
                }[];
                supplier: string | null;
                unpriced: string[];
            }[];
            /** @description Year-month-day. */
            today: string;
            trip: {
                carried: {
                    cannotCarry: {
                        count: number;
                        each_count: number;
                        name: string;
                        over_kg: number | null;
                        over_L: number | null;
                        over_m: number | null;
                        partId: string;
                    }[];
                    carrierId: string;
                    cautions: ("lifting" | "lifeVests" | "localSkipperDecides" | "freeboardMark" | "nobodyOnLoad" | "lashed" | "dangerApart")[];
                    isLeast: boolean;
                    leastLoads_count: number | null;
                    /** @description Of a load of several pieces; null: nobody stated it, and there is no load. */
                    limit_kg: number | null;
                    loads: {
                        bulk_L: number | null;
                        /** @enum {string} */
                        carriedBy: "one" | "two" | "carrier";
                        isFragile: boolean;
                        longest_m: number | null;
                        mass_kg: number;
                        pieces: {
                            count: number;
                            each_count: number;
                            name: string;
                            partId: string;
                        }[];
                    }[];
                    longest_m: number | null;
                    /** @enum {string} */
                    mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                    name: string;
                    noMass: {
                        count: number;
                        each_count: number;
                        name: string;
                        partId: string;
                    }[];
                    problems: components["schemas"]["problemInput"][];
                    /** @description In the order it is put in; what the carrier cannot take is left out. */
                    stowed: {
                        count: number;
                        each_count: number;
                        isFragile: boolean;
                        mass_kg: number | null;
                        name: string;
                        partId: string;
                        rules: string[];
                        siteId: string;
                    }[];
                }[];
                mass_kg: number;
                noMass_count: number;
            } | null;
            /** @description Asked for, and not there. */
            unknownSites: string[];
            /** @description Grows with every change. */
            version: number;
        };
        programmeListed: {
            /** @description Put away, kept whole; it can be brought back. */
            isSetAside: boolean;
            lastChange: {
                at: string;
                by: string;
            } | null;
            madeAt: string;
            name: string;
            /** @description Of the sites whose people are known. */
            people: number | null;
            programmeId: string;
            /** @description Null where it is set aside and was not opened, or cannot be read. */
            sites: number | null;
            /** @description What its history takes. */
            size_bytes: number;
            /** @description Grows with every change. */
            version: number;
            /** @description Sites whose people are not known. */
            withoutPeople_count: number | null;
        };
        programmeListedInput: {
            /** @description Put away, kept whole; it can be brought back. */
            isSetAside: boolean;
            lastChange: {
                at: string;
                by: string;
            } | null;
            madeAt: string;
            name: string;
            /** @description Of the sites whose people are known. */
            people: number | null;
            programmeId: string;
            /** @description Null where it is set aside and was not opened, or cannot be read. */
            sites: number | null;
            /** @description What its history takes. */
            size_bytes: number;
            /** @description Grows with every change. */
            version: number;
            /** @description Sites whose people are not known. */
            withoutPeople_count: number | null;
        };
        programmeSafety: {
            /** @description The version it is of; null before the first design. */
            designVersion: number | null;
            sites: {
                area: string | null;
                /** @description Null where nothing is told of its treatment and its water. */
                cup: components["schemas"]["siteCup"] | null;
                /** @description False where it is not worked out yet, or the row cannot be used. */
                isJudged: boolean;
                /** @description The key of its row in the table of sites. */
                key: string;
                name: string;
                /** @description As counted, or made from the households. */
                people: number | null;
                siteId: string;
            }[];
            /** @description Grows with every change. */
            version: number;
        };
        programmeSafetyInput: {
            /** @description The version it is of; null before the first design. */
            designVersion: number | null;
            sites: {
                area: string | null;
                /** @description Null where nothing is told of its treatment and its water. */
                cup: components["schemas"]["siteCupInput"] | null;
                /** @description False where it is not worked out yet, or the row cannot be used. */
                isJudged: boolean;
                /** @description The key of its row in the table of sites. */
                key: string;
                name: string;
                /** @description As counted, or made from the households. */
                people: number | null;
                siteId: string;
            }[];
            /** @description Grows with every change. */
            version: number;
        };
        /** @description Each site by its smallest remedy. */
        remedies: {
            groups: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                isPromiseCut: boolean;
                kinds: ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "fittings" | "secondSource" | "people" | "litres")[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            }[];
            /** @description Sites that are short or tight. */
            looked: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            };
            /** @description Those that would hold. */
            mended: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            };
            notMended: {
                /** @enum {string} */
                reason: "assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts";
                siteIds: string[];
            }[];
            /** @description Prices are the latest on or before this day; null where there are none. */
            pricesOn: string | null;
        };
        /** @description Each site by its smallest remedy. */
        remediesInput: {
            groups: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                isPromiseCut: boolean;
                kinds: ("gutter" | "firstFlush" | "secondTank" | "largerTank" | "fittings" | "secondSource" | "people" | "litres")[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            }[];
            /** @description Sites that are short or tight. */
            looked: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            };
            /** @description Those that would hold. */
            mended: {
                costs: {
                    amount: number;
                    currency: string;
                }[];
                /** @description Of the sites whose people are known. */
                people: number;
                sites: number;
                /** @description Sites whose cost is not known; they are in no sum. */
                withoutCost_count: number;
                withoutPeople_count: number;
            };
            notMended: {
                /** @enum {string} */
                reason: "assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts";
                siteIds: string[];
            }[];
            /** @description Prices are the latest on or before this day; null where there are none. */
            pricesOn: string | null;
        };
        remedy: {
            /** @description The changes in words. */
            about: string;
            /** @description Stations that do not hold with it and are not in its verdict. */
            besides: ("roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup")[];
            /** @description One, or two together, and the gutters and pipes they take. */
            changes: ({
                /** @constant */
                kind: "secondTank";
                /** @description As the catalogue has it. */
                mass_kg: number | null;
                partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
                volume_L: number;
            } | {
                /** @constant */
                kind: "largerTank";
                /** @description As the catalogue has it. */
                mass_kg: number | null;
                partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
                volume_L: number;
            } | {
                gutteredFraction: number;
                /** @constant */
                kind: "gutter";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
            } | {
                firstFlush_mm: number;
                /** @constant */
                kind: "firstFlush";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
            } | {
                baseWidth_mm: number | null;
                depth_mm: number;
                gutterIds: string[];
                /** @constant */
                kind: "largerGutter";
                partId: string;
                /** @enum {string} */
                shape: "halfRound" | "rectangular" | "trapezoidal" | "cutPipe";
                topWidth_mm: number;
            } | {
                /** @description How many more each gutter gets. */
                added_count: number;
                gutterIds: string[];
                /** @constant */
                kind: "outlet";
                /** @description All their outlets get this bore; null: those there stay. */
                outlet_mm: number | null;
                partId: string;
            } | {
                added_count: number;
                bore_mm: number;
                /** @description Those that are replaced. */
                downpipeIds: string[];
                /** @constant */
                kind: "downpipe";
                partId: string;
                roofId: string;
            } | {
                bore_mm: number;
                /** @constant */
                kind: "overflow";
                partId: string;
                tankId: string;
            } | {
                bore_mm: number;
                /** @constant */
                kind: "pipe";
                partId: string;
                pipeIds: string[];
            } | {
                /** @constant */
                kind: "secondSource";
                name: string;
                secondSourceId: string;
                /** @enum {string} */
                sourceKind: "river" | "spring" | "well" | "pond" | "vendor";
            } | {
                /** @description Those of the design year who stay. */
                carried_people: number;
                /** @constant */
                kind: "people";
                /** @description Those who drink at a site of their own. */
                others_people: number;
            } | {
                /** @description False: only the other purposes are dropped. */
                isJudgedCut: boolean;
                /** @description What is left of the judged purposes. */
                judged_L_per_person_per_day: number;
                /** @constant */
                kind: "litres";
            })[];
            /** @description Of the parts alone: downpipes that are not named, brackets, stands, carrying and work are not in it. */
            cost: {
                /** @description Null where a price is missing; 0 where nothing is bought. */
                amount: number | null;
                bought: {
                    /** @description Of one. */
                    amount: number;
                    currency: string;
                    partId: string;
                    pieces_count: number;
                    /** @description A day, YYYY-MM-DD. */
                    priceDate: string;
                }[];
                currency: string | null;
                reason: ("noPart" | "noPrice" | "onlyLaterPrices" | "roofLengthUnknown" | "runLengthUnknown" | "pieceLengthUnknown" | "rateMissing" | "otherSite" | "secondSource") | null;
            };
            /** @description Of the tank that is then worst off. */
            dryDays_per_year: number;
            goodYears: number;
            /** @description 0: what was promised is kept; else the step down, the mildest 1. */
            promiseCut_count: number;
            /** @description Days of water from the second source it declares; null where it declares none. */
            sourceDays_per_year: number | null;
            /**
             * @description May the tanks then be filled and handed over?
             * @enum {string}
             */
            standGate: "notNeeded" | "closed" | "open";
            /** @description Of all tanks together. */
            tankVolume_L: number;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        remedyInput: {
            /** @description The changes in words. */
            about: string;
            /** @description Stations that do not hold with it and are not in its verdict. */
            besides: ("roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup")[];
            /** @description One, or two together, and the gutters and pipes they take. */
            changes: ({
                /** @constant */
                kind: "secondTank";
                /** @description As the catalogue has it. */
                mass_kg: number | null;
                partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
                volume_L: number;
            } | {
                /** @constant */
                kind: "largerTank";
                /** @description As the catalogue has it. */
                mass_kg: number | null;
                partId: string;
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
                volume_L: number;
            } | {
                gutteredFraction: number;
                /** @constant */
                kind: "gutter";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
            } | {
                firstFlush_mm: number;
                /** @constant */
                kind: "firstFlush";
                /** @description The first tank of those it is made to; null where all tanks of the site are one. */
                tankId: string | null;
            } | {
                baseWidth_mm: number | null;
                depth_mm: number;
                gutterIds: string[];
                /** @constant */
                kind: "largerGutter";
                partId: string;
                /** @enum {string} */
                shape: "halfRound" | "rectangular" | "trapezoidal" | "cutPipe";
                topWidth_mm: number;
            } | {
                /** @description How many more each gutter gets. */
                added_count: number;
                gutterIds: string[];
                /** @constant */
                kind: "outlet";
                /** @description All their outlets get this bore; null: those there stay. */
                outlet_mm: number | null;
                partId: string;
            } | {
                added_count: number;
                bore_mm: number;
                /** @description Those that are replaced. */
                downpipeIds: string[];
                /** @constant */
                kind: "downpipe";
                partId: string;
                roofId: string;
            } | {
                bore_mm: number;
                /** @constant */
                kind: "overflow";
                partId: string;
                tankId: string;
            } | {
                bore_mm: number;
                /** @constant */
                kind: "pipe";
                partId: string;
                pipeIds: string[];
            } | {
                /** @constant */
                kind: "secondSource";
                name: string;
                secondSourceId: string;
                /** @enum {string} */
                sourceKind: "river" | "spring" | "well" | "pond" | "vendor";
            } | {
                /** @description Those of the design year who stay. */
                carried_people: number;
                /** @constant */
                kind: "people";
                /** @description Those who drink at a site of their own. */
                others_people: number;
            } | {
                /** @description False: only the other purposes are dropped. */
                isJudgedCut: boolean;
                /** @description What is left of the judged purposes. */
                judged_L_per_person_per_day: number;
                /** @constant */
                kind: "litres";
            })[];
            /** @description Of the parts alone: downpipes that are not named, brackets, stands, carrying and work are not in it. */
            cost: {
                /** @description Null where a price is missing; 0 where nothing is bought. */
                amount: number | null;
                bought: {
                    /** @description Of one. */
                    amount: number;
                    currency: string;
                    partId: string;
                    pieces_count: number;
                    /** @description A day, YYYY-MM-DD. */
                    priceDate: string;
                }[];
                currency: string | null;
                reason: ("noPart" | "noPrice" | "onlyLaterPrices" | "roofLengthUnknown" | "runLengthUnknown" | "pieceLengthUnknown" | "rateMissing" | "otherSite" | "secondSource") | null;
            };
            /** @description Of the tank that is then worst off. */
            dryDays_per_year: number;
            goodYears: number;
            /** @description 0: what was promised is kept; else the step down, the mildest 1. */
            promiseCut_count: number;
            /** @description Days of water from the second source it declares; null where it declares none. */
            sourceDays_per_year: number | null;
            /**
             * @description May the tanks then be filled and handed over?
             * @enum {string}
             */
            standGate: "notNeeded" | "closed" | "open";
            /** @description Of all tanks together. */
            tankVolume_L: number;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        review: {
            /** @enum {string} */
            absent: "stay" | "go";
            changes: {
                added: number;
                edited: number;
                removed: number;
                /** @description The first 500. */
                rows: ({
                    after: {
                        [key: string]: string;
                    };
                    key: string;
                    /** @constant */
                    kind: "added";
                    table: string;
                } | {
                    after: {
                        [key: string]: string | null;
                    };
                    before: {
                        [key: string]: string | null;
                    };
                    key: string;
                    /** @constant */
                    kind: "edited";
                    table: string;
                } | {
                    before: {
                        [key: string]: string;
                    };
                    key: string;
                    /** @constant */
                    kind: "removed";
                    table: string;
                })[];
                table: string;
            }[];
            done_fraction: number;
            /** @description What taking it in would break in tables that were not sent. */
            elsewhere: components["schemas"]["problem"][];
            /** @description The first of the files. */
            file: string;
            files: {
                file: string;
                /** @description The file it was sent in. */
                from: string;
                rows: number;
                /** @description The sheet of the workbook it was sent in; null for a file of its own. */
                sheet: string | null;
                used: number;
            }[];
            /** @description Records of an export that are not here yet. */
            freshRecords: number;
            headers: {
                choices: {
                    column: string;
                    hows: string[];
                }[];
                /** @description Null: the column is kept and not read. */
                column: string | null;
                dateOrder: string | null;
                /** @description The table's file, or the sheet. */
                file: string;
                /** @description Of the cells looked at, those that would be read. */
                fits: number;
                header: string;
                looked: number;
                /** @description What must be said before it can be accepted; null where nothing must. */
                open: string | null;
                unit: string | null;
                why: string[];
                workbook: string | null;
            }[];
            importId: string;
            /** @description Rows of workbooks of which something is said, and the numbers they have in their sheets. */
            inSheets: {
                file: string;
                inSheet: number;
                row: number;
            }[];
            isReading: boolean;
            mayBeAccepted: boolean;
            mends: {
                /** @description The header of the column, as it stands in the file. */
                column: string;
                file: string;
                row: number;
                value: string;
            }[];
            notUsed: components["schemas"]["notUsed"][];
            problems: components["schemas"]["problem"][];
            /** @description Null: the files are to become a programme of their own. */
            programmeId: string | null;
            /** @description What the files call the programme. */
            programmeName: string | null;
            /** @description The rows of which something is said, whole; the first 1,000. */
            rowsShown: {
                columns: {
                    column: string | null;
                    header: string;
                }[];
                file: string;
                rows: {
                    cells: string[];
                    row: number;
                }[];
            }[];
            sent: string[];
            sheets: {
                gauges: string[];
                headers: string[];
                likely: string | null;
                open: "gauge" | null;
                sheet: string;
                why: string[];
                workbook: string;
            }[];
            /** @description Cells and rows that were changed here since, and that the file would set back. The first 500. */
            stepsBack: {
                at: string;
                /** @description Who changed it since. */
                by: string;
                /** @description Null: the row. */
                column: string | null;
                /** @description Is it to be as the file has it? Where not, it stays, and no change tells of it. */
                isTaken: boolean;
                key: string;
                /** @description What the file has, which stood here before. */
                older: string | null;
                stands: string | null;
                table: string;
            }[];
            stepsBackCount: number;
            /** @description The programme here that has this history already. */
            there: {
                name: string;
                programmeId: string;
            } | null;
            /** @description Mends that were taken back and can be made again. */
            undone: {
                /** @description The header of the column, as it stands in the file. */
                column: string;
                file: string;
                row: number;
                value: string;
            }[];
            /** @description Files whose names do not say which table they are, and what they likely are. */
            unplaced: {
                gaugeId: string | null;
                name: string;
                table: string | null;
            }[];
        };
        reviewInput: {
            /** @enum {string} */
            absent: "stay" | "go";
            changes: {
                added: number;
                edited: number;
                removed: number;
                /** @description The first 500. */
                rows: ({
                    after: {
                        [key: string]: string;
                    };
                    key: string;
                    /** @constant */
                    kind: "added";
                    table: string;
                } | {
                    after: {
                        [key: string]: string | null;
                    };
                    before: {
                        [key: string]: string | null;
                    };
                    key: string;
                    /** @constant */
                    kind: "edited";
                    table: string;
                } | {
                    before: {
                        [key: string]: string;
                    };
                    key: string;
                    /** @constant */
                    kind: "removed";
                    table: string;
                })[];
                table: string;
            }[];
            done_fraction: number;
            /** @description What taking it in would break in tables that were not sent. */
            elsewhere: components["schemas"]["problemInput"][];
            /** @description The first of the files. */
            file: string;
            files: {
                file: string;
                /** @description The file it was sent in. */
                from: string;
                rows: number;
                /** @description The sheet of the workbook it was sent in; null for a file of its own. */
                sheet: string | null;
                used: number;
            }[];
            /** @description Records of an export that are not here yet. */
            freshRecords: number;
            headers: {
                choices: {
                    column: string;
                    hows: string[];
                }[];
                /** @description Null: the column is kept and not read. */
                column: string | null;
                dateOrder: string | null;
                /** @description The table's file, or the sheet. */
                file: string;
                /** @description Of the cells looked at, those that would be read. */
                fits: number;
                header: string;
                looked: number;
                /** @description What must be said before it can be accepted; null where nothing must. */
                open: string | null;
                unit: string | null;
                why: string[];
                workbook: string | null;
            }[];
            importId: string;
            /** @description Rows of workbooks of which something is said, and the numbers they have in their sheets. */
            inSheets: {
                file: string;
                inSheet: number;
                row: number;
            }[];
            isReading: boolean;
            mayBeAccepted: boolean;
            mends: {
                /** @description The header of the column, as it stands in the file. */
                column: string;
                file: string;
                row: number;
                value: string;
            }[];
            notUsed: components["schemas"]["notUsedInput"][];
            problems: components["schemas"]["problemInput"][];
            /** @description Null: the files are to become a programme of their own. */
            programmeId: string | null;
            /** @description What the files call the programme. */
            programmeName: string | null;
            /** @description The rows of which something is said, whole; the first 1,000. */
            rowsShown: {
                columns: {
                    column: string | null;
                    header: string;
                }[];
                file: string;
                rows: {
                    cells: string[];
                    row: number;
                }[];
            }[];
            sent: string[];
            sheets: {
                gauges: string[];
                headers: string[];
                likely: string | null;
                open: "gauge" | null;
                sheet: string;
                why: string[];
                workbook: string;
            }[];
            /** @description Cells and rows that were changed here since, and that the file would set back. The first 500. */
            stepsBack: {
                at: string;
                /** @description Who changed it since. */
                by: string;
                /** @description Null: the row. */
                column: string | null;
                /** @description Is it to be as the file has it? Where not, it stays, and no change tells of it. */
                isTaken: boolean;
                key: string;
                /** @description What the file has, which stood here before. */
                older: string | null;
                stands: string | null;
                table: string;
            }[];
            stepsBackCount: number;
            /** @description The programme here that has this history already. */
            there: {
                name: string;
                programmeId: string;
            } | null;
            /** @description Mends that were taken back and can be made again. */
            undone: {
                /** @description The header of the column, as it stands in the file. */
                column: string;
                file: string;
                row: number;
                value: string;
            }[];
            /** @description Files whose names do not say which table they are, and what they likely are. */
            unplaced: {
                gaugeId: string | null;
                name: string;
                table: string | null;
            }[];
        };
        /** @description A planning aid: the health authority and accredited laboratories decide. */
        safety: {
            /** @description Along the way of the water. */
            barriers: {
                /** @description A serial of a unit, an id of barriers; null for chlorine. */
                barrierId: string | null;
                /** @description Steps of ten by class of germs. */
                credited: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                };
                /**
                 * @description Without any it is credited nothing.
                 * @enum {string}
                 */
                evidence: "challengeTest" | "credited" | "none";
                /** @enum {string} */
                kind: "firstFlush" | "settling" | "storageTime" | "filter" | "ultraviolet" | "boiling" | "other" | "membrane" | "chlorine";
                /** @description With one cartridge leaking; null for what has no cartridges. */
                leaking: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                } | null;
            }[];
            /** @description At which water boils there; null where the height is not known. */
            boilsAt_C: number | null;
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Null where water is not chlorinated. */
            chlorine: {
                /** @description Steps of ten by class of germs. */
                credited: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                };
                /** @description Residual times contact time times the share of it that counts. */
                ct_mg_min_per_L: number | null;
                /** @description For three steps of ten, by the table; null outside it. */
                ctForGiardia_mg_min_per_L: number | null;
                /** @description By the regression, for comparison. */
                ctForGiardiaRegression_mg_min_per_L: number | null;
                /** @description In a few sentences. */
                finding: string;
                giardia_log10: number | null;
                /** @description Too turbid for chlorine to be relied on? Null where not known. */
                isTooTurbid: boolean | null;
                /** @description For a litre of stock of one per cent: grams of a powder, millilitres of a liquid. */
                product_per_L: number | null;
                residualBand: ("none" | "low" | "good" | "high" | "tooHigh") | null;
                /** @description For one batch, for the dose. */
                stock_mL: number | null;
                viruses_log10: number | null;
                wait_min: number | null;
            } | null;
            /** @description Sum of what is credited, for those whose water is treated. */
            credited: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            };
            /** @description Days on which the water of everybody goes untreated; null: not stated. */
            daysOff_per_year: number | null;
            /** @description Of the mean of what is drunk, over people and days: for display alone. */
            effective: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            };
            /** @description Units whose last test with air failed. */
            failedUnits: string[];
            /** @description In a few sentences. */
            finding: string;
            /** @description False where rows in doubt keep barriers and germs from being reckoned. */
            isReckoned: boolean;
            /** @description The same with one cartridge leaking; null where there is no unit. */
            leaking: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            } | null;
            /**
             * @description no: a sample after hand-over held E. coli, or treatment is known not to work. notShown: nothing proves it.
             * @enum {string}
             */
            mayDrink: "yes" | "notShown" | "no";
            /** @description Why a sample is to be taken: the last one failed, a unit failed its test with air, one cannot be used, none since hand-over was clean, the last clean one is too old, a set of cartridges is overdue. */
            needsTest: ("failed" | "unitFailed" | "unusable" | "none" | "tooOld" | "setOverdue")[];
            /** @description What makes no verdict and is told beside it: many risks found by the last walk, a set past its day. */
            notes: ("walkAtRisk" | "setOverdue")[];
            /** @description Why it may be said, the first told first. */
            reasons: ("found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown")[];
            /** @description The worst first. */
            risks: {
                /** @description Healthy years of life lost. */
                DALY_per_person_per_year: number;
                /** @description The high end of its range: it is judged. */
                DALYHigh_per_person_per_year: number;
                /** @description What those who drink untreated water bear of it. */
                fromSkipping_fraction: number;
                illness_per_year: number;
                /** @description A mean over people and days, those who skip among them. */
                infection_per_year: number;
                /** @description Log reduction wanted for the target, at the typical water. */
                needed_log10: number;
                /** @enum {string} */
                pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                /** @description The waters of the year in which the germ is known, that of roofs first; one alone where it is drunk, or taken as drunk, every day. */
                waters: {
                    /** @description Days of the year on which it is drunk, of 365, as a mean. */
                    days_per_year: number;
                    /** @description In treated water, on a day on which it is treated. */
                    drinking_per_L: number;
                    /** @description Before any treatment. */
                    raw_per_L: number;
                    rawHigh_per_L: number | null;
                    /** @description Null: the water of roofs. */
                    secondSourceId: string | null;
                }[];
            }[];
            /** @description Of the people, who drink untreated water; null: not stated. */
            skipping_fraction: number | null;
            /** @description Null where the site names no second source. */
            sourceDays: {
                /** @description As a mean over people; null where the balance of the tanks is not known: each water is then taken as drunk every day. */
                days_per_year: number | null;
                /** @description The fewest and the most of a year of the record. */
                days_per_year_range: {
                    high: number;
                    low: number;
                } | null;
                /** @description In a sentence. */
                finding: string;
                name: string;
                secondSourceId: string;
            } | null;
            target_DALY_per_person_per_year: number;
            /** @description 3: highly protective, 2: protective, 1: targeted, 0: none. */
            tier: 0 | 1 | 2 | 3;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            waterTests: {
                /** @description Clean ones in a row since hand-over, at tap and container. */
                clean_count: number;
                /** @description The mean that is then below with 95 % sureness. */
                cleanBelow_per_100mL: number | null;
                /** @description Clean ones in a row wanted to say that fewer than one in twenty is not. */
                cleanWanted_count: number;
                /** @description In a few sentences. */
                finding: string;
                inspection: {
                    /**
                     * @description E. coli in 100 mL: low under 1, intermediate from 1, high over 10, veryHigh over 100.
                     * @enum {string}
                     */
                    band: "low" | "intermediate" | "high" | "veryHigh";
                    /** @description A day, YYYY-MM-DD. */
                    inspectedOn: string;
                    score: number;
                } | null;
                /** @description May one of them be the one that says no? */
                isUnusableOpen: boolean;
                /** @description The last of tap or container since hand-over in which E. coli was looked for; one of shortly before that held them, while none since was clean. */
                last: {
                    band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                    count_per_100mL: number | null;
                    high_per_100mL: number | null;
                    /** @description It says nothing of the water handed over. */
                    isBeforeHandOver: boolean;
                    /** @description The likely range of the count, 95 %. */
                    low_per_100mL: number | null;
                    /** @enum {string} */
                    point: "tank" | "tap" | "container" | "secondSource";
                    /** @description How likely such a set of portions is beside the likeliest; under 0.05: test again. */
                    rarity: number | null;
                    /** @description Null where E. coli was not looked for. */
                    sign: ("less" | "equal" | "more") | null;
                    /** @description A day, YYYY-MM-DD. */
                    takenOn: string;
                    testId: string;
                } | null;
                /** @description The newest of them. */
                lastCleanOn: string | null;
                /** @description The worse of the last sample and the last inspection. */
                priority: ("low" | "intermediate" | "high" | "veryHigh") | null;
                /** @description In the order of their days. */
                tests: {
                    band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                    count_per_100mL: number | null;
                    high_per_100mL: number | null;
                    /** @description It says nothing of the water handed over. */
                    isBeforeHandOver: boolean;
                    /** @description The likely range of the count, 95 %. */
                    low_per_100mL: number | null;
                    /** @enum {string} */
                    point: "tank" | "tap" | "container" | "secondSource";
                    /** @description How likely such a set of portions is beside the likeliest; under 0.05: test again. */
                    rarity: number | null;
                    /** @description Null where E. coli was not looked for. */
                    sign: ("less" | "equal" | "more") | null;
                    /** @description A day, YYYY-MM-DD. */
                    takenOn: string;
                    testId: string;
                }[];
                /** @description Samples that cannot be used as they were written down. */
                unusable: {
                    /** @description The row that is to be mended. */
                    at: {
                        /** @description As a spreadsheet names it, such as D14; in workbooks. */
                        cell?: string;
                        column?: string;
                        /** @description A day, YYYY-MM-DD. */
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        /** @description Counted as a spreadsheet does: the first line is row 1. */
                        row?: number;
                        siteId?: string;
                    };
                    /**
                     * @description Its row could not be read; its day is still to come; what was found in it cannot be reckoned with.
                     * @enum {string}
                     */
                    because: "unread" | "dayToCome" | "portions";
                    /** @description Does what can be read of it say that E. coli were found? */
                    hasGerms: boolean;
                    testId: string;
                }[];
            };
            /** @description Rows that could not be used and keep more from being said. */
            withheldBy: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            }[];
        };
        /** @description A planning aid: the health authority and accredited laboratories decide. */
        safetyInput: {
            /** @description Along the way of the water. */
            barriers: {
                /** @description A serial of a unit, an id of barriers; null for chlorine. */
                barrierId: string | null;
                /** @description Steps of ten by class of germs. */
                credited: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                };
                /**
                 * @description Without any it is credited nothing.
                 * @enum {string}
                 */
                evidence: "challengeTest" | "credited" | "none";
                /** @enum {string} */
                kind: "firstFlush" | "settling" | "storageTime" | "filter" | "ultraviolet" | "boiling" | "other" | "membrane" | "chlorine";
                /** @description With one cartridge leaking; null for what has no cartridges. */
                leaking: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                } | null;
            }[];
            /** @description At which water boils there; null where the height is not known. */
            boilsAt_C: number | null;
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Null where water is not chlorinated. */
            chlorine: {
                /** @description Steps of ten by class of germs. */
                credited: {
                    bacteria_log10: number;
                    protozoa_log10: number;
                    viruses_log10: number;
                };
                /** @description Residual times contact time times the share of it that counts. */
                ct_mg_min_per_L: number | null;
                /** @description For three steps of ten, by the table; null outside it. */
                ctForGiardia_mg_min_per_L: number | null;
                /** @description By the regression, for comparison. */
                ctForGiardiaRegression_mg_min_per_L: number | null;
                /** @description In a few sentences. */
                finding: string;
                giardia_log10: number | null;
                /** @description Too turbid for chlorine to be relied on? Null where not known. */
                isTooTurbid: boolean | null;
                /** @description For a litre of stock of one per cent: grams of a powder, millilitres of a liquid. */
                product_per_L: number | null;
                residualBand: ("none" | "low" | "good" | "high" | "tooHigh") | null;
                /** @description For one batch, for the dose. */
                stock_mL: number | null;
                viruses_log10: number | null;
                wait_min: number | null;
            } | null;
            /** @description Sum of what is credited, for those whose water is treated. */
            credited: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            };
            /** @description Days on which the water of everybody goes untreated; null: not stated. */
            daysOff_per_year: number | null;
            /** @description Of the mean of what is drunk, over people and days: for display alone. */
            effective: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            };
            /** @description Units whose last test with air failed. */
            failedUnits: string[];
            /** @description In a few sentences. */
            finding: string;
            /** @description False where rows in doubt keep barriers and germs from being reckoned. */
            isReckoned: boolean;
            /** @description The same with one cartridge leaking; null where there is no unit. */
            leaking: {
                bacteria_log10: number;
                protozoa_log10: number;
                viruses_log10: number;
            } | null;
            /**
             * @description no: a sample after hand-over held E. coli, or treatment is known not to work. notShown: nothing proves it.
             * @enum {string}
             */
            mayDrink: "yes" | "notShown" | "no";
            /** @description Why a sample is to be taken: the last one failed, a unit failed its test with air, one cannot be used, none since hand-over was clean, the last clean one is too old, a set of cartridges is overdue. */
            needsTest: ("failed" | "unitFailed" | "unusable" | "none" | "tooOld" | "setOverdue")[];
            /** @description What makes no verdict and is told beside it: many risks found by the last walk, a set past its day. */
            notes: ("walkAtRisk" | "setOverdue")[];
            /** @description Why it may be said, the first told first. */
            reasons: ("found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown")[];
            /** @description The worst first. */
            risks: {
                /** @description Healthy years of life lost. */
                DALY_per_person_per_year: number;
                /** @description The high end of its range: it is judged. */
                DALYHigh_per_person_per_year: number;
                /** @description What those who drink untreated water bear of it. */
                fromSkipping_fraction: number;
                illness_per_year: number;
                /** @description A mean over people and days, those who skip among them. */
                infection_per_year: number;
                /** @description Log reduction wanted for the target, at the typical water. */
                needed_log10: number;
                /** @enum {string} */
                pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                /** @description The waters of the year in which the germ is known, that of roofs first; one alone where it is drunk, or taken as drunk, every day. */
                waters: {
                    /** @description Days of the year on which it is drunk, of 365, as a mean. */
                    days_per_year: number;
                    /** @description In treated water, on a day on which it is treated. */
                    drinking_per_L: number;
                    /** @description Before any treatment. */
                    raw_per_L: number;
                    rawHigh_per_L: number | null;
                    /** @description Null: the water of roofs. */
                    secondSourceId: string | null;
                }[];
            }[];
            /** @description Of the people, who drink untreated water; null: not stated. */
            skipping_fraction: number | null;
            /** @description Null where the site names no second source. */
            sourceDays: {
                /** @description As a mean over people; null where the balance of the tanks is not known: each water is then taken as drunk every day. */
                days_per_year: number | null;
                /** @description The fewest and the most of a year of the record. */
                days_per_year_range: {
                    high: number;
                    low: number;
                } | null;
                /** @description In a sentence. */
                finding: string;
                name: string;
                secondSourceId: string;
            } | null;
            target_DALY_per_person_per_year: number;
            /** @description 3: highly protective, 2: protective, 1: targeted, 0: none. */
            tier: 0 | 1 | 2 | 3;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            waterTests: {
                /** @description Clean ones in a row since hand-over, at tap and container. */
                clean_count: number;
                /** @description The mean that is then below with 95 % sureness. */
                cleanBelow_per_100mL: number | null;
                /** @description Clean ones in a row wanted to say that fewer than one in twenty is not. */
                cleanWanted_count: number;
                /** @description In a few sentences. */
                finding: string;
                inspection: {
                    /**
                     * @description E. coli in 100 mL: low under 1, intermediate from 1, high over 10, veryHigh over 100.
                     * @enum {string}
                     */
                    band: "low" | "intermediate" | "high" | "veryHigh";
                    /** @description A day, YYYY-MM-DD. */
                    inspectedOn: string;
                    score: number;
                } | null;
                /** @description May one of them be the one that says no? */
                isUnusableOpen: boolean;
                /** @description The last of tap or container since hand-over in which E. coli was looked for; one of shortly before that held them, while none since was clean. */
                last: {
                    band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                    count_per_100mL: number | null;
                    high_per_100mL: number | null;
                    /** @description It says nothing of the water handed over. */
                    isBeforeHandOver: boolean;
                    /** @description The likely range of the count, 95 %. */
                    low_per_100mL: number | null;
                    /** @enum {string} */
                    point: "tank" | "tap" | "container" | "secondSource";
                    /** @description How likely such a set of portions is beside the likeliest; under 0.05: test again. */
                    rarity: number | null;
                    /** @description Null where E. coli was not looked for. */
                    sign: ("less" | "equal" | "more") | null;
                    /** @description A day, YYYY-MM-DD. */
                    takenOn: string;
                    testId: string;
                } | null;
                /** @description The newest of them. */
                lastCleanOn: string | null;
                /** @description The worse of the last sample and the last inspection. */
                priority: ("low" | "intermediate" | "high" | "veryHigh") | null;
                /** @description In the order of their days. */
                tests: {
                    band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                    count_per_100mL: number | null;
                    high_per_100mL: number | null;
                    /** @description It says nothing of the water handed over. */
                    isBeforeHandOver: boolean;
                    /** @description The likely range of the count, 95 %. */
                    low_per_100mL: number | null;
                    /** @enum {string} */
                    point: "tank" | "tap" | "container" | "secondSource";
                    /** @description How likely such a set of portions is beside the likeliest; under 0.05: test again. */
                    rarity: number | null;
                    /** @description Null where E. coli was not looked for. */
                    sign: ("less" | "equal" | "more") | null;
                    /** @description A day, YYYY-MM-DD. */
                    takenOn: string;
                    testId: string;
                }[];
                /** @description Samples that cannot be used as they were written down. */
                unusable: {
                    /** @description The row that is to be mended. */
                    at: {
                        /** @description As a spreadsheet names it, such as D14; in workbooks. */
                        cell?: string;
                        column?: string;
                        /** @description A day, YYYY-MM-DD. */
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        /** @description Counted as a spreadsheet does: the first line is row 1. */
                        row?: number;
                        siteId?: string;
                    };
                    /**
                     * @description Its row could not be read; its day is still to come; what was found in it cannot be reckoned with.
                     * @enum {string}
                     */
                    because: "unread" | "dayToCome" | "portions";
                    /** @description Does what can be read of it say that E. coli were found? */
                    hasGerms: boolean;
                    testId: string;
                }[];
            };
            /** @description Rows that could not be used and keep more from being said. */
            withheldBy: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            }[];
        };
        /** @description Only with --series. */
        series: {
            /** @description At the end of the day. */
            content_L: number[];
            dry: boolean[];
            /** @description A day, YYYY-MM-DD. */
            firstDay: string;
            inflow_L: number[];
            /** @description Asked for the judged purposes. */
            judgedAsked_L: number[];
            judgedTaken_L: number[];
            /** @description filled: from other years. neighbours: filled from neighbouring gauges. made: made up from normals. */
            known: ("measured" | "filled" | "neighbours" | "made" | "unknown")[];
            otherTaken_L: number[];
            /** @description At the site: the gauge's rain times the site's rain factor. */
            rain_mm: number[];
            /** @description Judged litres from the second source. */
            secondSource_L: number[];
            spill_L: number[];
            /** @description A tank, or tanks joined at the foot. */
            tankIds: string[];
        };
        /** @description Only with --series. */
        seriesInput: {
            /** @description At the end of the day. */
            content_L: number[];
            dry: boolean[];
            /** @description A day, YYYY-MM-DD. */
            firstDay: string;
            inflow_L: number[];
            /** @description Asked for the judged purposes. */
            judgedAsked_L: number[];
            judgedTaken_L: number[];
            /** @description filled: from other years. neighbours: filled from neighbouring gauges. made: made up from normals. */
            known: ("measured" | "filled" | "neighbours" | "made" | "unknown")[];
            otherTaken_L: number[];
            /** @description At the site: the gauge's rain times the site's rain factor. */
            rain_mm: number[];
            /** @description Judged litres from the second source. */
            secondSource_L: number[];
            spill_L: number[];
            /** @description A tank, or tanks joined at the foot. */
            tankIds: string[];
        };
        settling: {
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Mixed cells in a row; 1 where nothing is said of walls in it. */
            cells_count: number;
            /** @description Until the sludge comes near the draw-off; null where not known, or never. */
            cleanAfter_months: number | null;
            /** @description In a few sentences. Fine clay and germs do not settle, whatever the verdict. */
            finding: string;
            /** @description After so long a tenth of the water has gone through by day, the tank being full. */
            firstTenth_min: number | null;
            /** @description In the hours people pump on the day that asks for most. */
            flowByDay_L_per_s: number | null;
            flowInStorm_L_per_s: number | null;
            /** @description The grain that is to settle. */
            grain_um: number;
            /** @description What leaves, from clay to sand; none where it is not known. */
            grains: {
                grain_um: number;
                leavesByDay_fraction: number | null;
                leavesInStorm_fraction: number | null;
            }[];
            overflowRateByDay_m_per_h: number | null;
            overflowRateInStorm_m_per_h: number | null;
            planArea_m2: number | null;
            settledByDay_fraction: number | null;
            settledInStorm_fraction: number | null;
            /** @description How fast it sinks in still water. */
            sinks_m_per_h: number | null;
            /** @description Null where it is not known what roofs shed. */
            sludge_L_per_year: number | null;
            /** @description Null where a site that is to be judged has no settling tank. */
            tankId: string | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        settlingInput: {
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Mixed cells in a row; 1 where nothing is said of walls in it. */
            cells_count: number;
            /** @description Until the sludge comes near the draw-off; null where not known, or never. */
            cleanAfter_months: number | null;
            /** @description In a few sentences. Fine clay and germs do not settle, whatever the verdict. */
            finding: string;
            /** @description After so long a tenth of the water has gone through by day, the tank being full. */
            firstTenth_min: number | null;
            /** @description In the hours people pump on the day that asks for most. */
            flowByDay_L_per_s: number | null;
            flowInStorm_L_per_s: number | null;
            /** @description The grain that is to settle. */
            grain_um: number;
            /** @description What leaves, from clay to sand; none where it is not known. */
            grains: {
                grain_um: number;
                leavesByDay_fraction: number | null;
                leavesInStorm_fraction: number | null;
            }[];
            overflowRateByDay_m_per_h: number | null;
            overflowRateInStorm_m_per_h: number | null;
            planArea_m2: number | null;
            settledByDay_fraction: number | null;
            settledInStorm_fraction: number | null;
            /** @description How fast it sinks in still water. */
            sinks_m_per_h: number | null;
            /** @description Null where it is not known what roofs shed. */
            sludge_L_per_year: number | null;
            /** @description Null where a site that is to be judged has no settling tank. */
            tankId: string | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
        };
        site: {
            /** @description Which cautions its work asks for. */
            cautions: {
                /** @enum {string} */
                caution: "height" | "fragileRoof" | "stand" | "lifting";
                said: string;
            }[];
            /** @description In the design year: those it is judged for. */
            design_people: number | null;
            /** @description Null where gutters and pipes are not judged. */
            drainage: components["schemas"]["drainage"] | null;
            /** @description The finding in a sentence or two. */
            finding: string;
            /** @description Of the tank that serves last; null where one never does. */
            firstService: {
                /** @description A day, YYYY-MM-DD. */
                firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                handOverDay: string;
                wait_days: number;
                /** @description The middle eight years in ten. */
                wait_days_range: {
                    high: number;
                    low: number;
                };
            } | null;
            gaugeId: string | null;
            /** @description The way to the taps, one for each body of water that is judged. */
            head: components["schemas"]["head"][];
            /** @description What is heaviest to carry; null where no part has a mass. */
            heaviestPiece: {
                /** @enum {string} */
                carriedBy: "one" | "two" | "more";
                /** @enum {string} */
                from: "site" | "catalogue";
                liftingIndex_factor: number;
                /** @description What one person may lift from the floor to a truck. */
                liftingLimit_kg: number;
                mass_kg: number;
                name: string;
                partId: string;
                said: string;
            } | null;
            name: string;
            /** @description As counted, or made from the households. */
            people: number | null;
            problems: components["schemas"]["problem"][];
            /** @description Null where the site is neither short nor tight. */
            remedies: {
                /** @description Stations that stay short, tight or unknown whatever is changed. */
                besides: ("roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup")[];
                /** @description The worst judged year, if it is left as it is. */
                leaveIt: {
                    dryDays: number;
                    longestRun_days: number;
                    /** @description Its first day; null: no day is dry, or the rain is made up. */
                    longestRunFrom: string | null;
                    /** @description The worst of so many judged years of made-up rain; null: measured rain. */
                    ofMadeYears: number | null;
                    shortfall_L: number;
                    /** @description Where it is told of some of the tanks; null: of all. */
                    tankIds: string[] | null;
                    waterYear: number;
                } | null;
                /** @description Why none makes it hold; null where one does. */
                notMended: ("assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts") | null;
                peopleCarried: {
                    carried_people: number;
                    others_people: number;
                    /**
                     * @description What the site is with so many.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight";
                } | null;
                /** @description The first is the smallest change that mends it. */
                ranked: components["schemas"]["remedy"][];
                /** @description What has to be known of the stations left out, each in a sentence. */
                said: string[];
            } | null;
            /** @description Whether its water is fit to drink; null where that is not judged. */
            safety: components["schemas"]["safety"] | null;
            /** @description Only where a scenario is asked for. Null: not known. */
            scenario?: {
                dryDays_per_year: number | null;
                finding: string;
                goodYears: number | null;
                judgedYears: number | null;
                longestRun_days: number | null;
                /** @description Smallest tank for the target, without the second source. */
                tankForTarget_L: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
            };
            /** @description One for each body of water; none where facts are missing. */
            series?: components["schemas"]["series"][];
            /** @description One for each settling tank that is judged. */
            settling: components["schemas"]["settling"][];
            siteClass: string | null;
            siteId: string;
            /** @description closed: a tank on a stand is not to be filled or handed over before it is signed for. No verdict. */
            standGate: {
                /** @enum {string} */
                gate: "notNeeded" | "closed" | "open";
                said: string;
            };
            /** @description One for each tank whose stand or ground is judged, the worst first. */
            stands: components["schemas"]["stand"][];
            stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            /** @description One for each body of water people draw from, the worst first; none where facts are missing: the blockers say which. */
            storages: components["schemas"]["storage"][];
            /** @description What it was judged by. */
            target: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            };
            /**
             * @description Whose target that is.
             * @enum {string}
             */
            targetFrom: "programme" | "class";
            /** @description Whether the treatment keeps up, one for each unit that is judged. */
            treatment: components["schemas"]["treatment"][];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description When the cartridges are due, one for each unit in use; null: not worked out. */
            wear: components["schemas"]["wear"][] | null;
            working: components["schemas"]["workingLine"][];
        };
        siteCup: {
            /**
             * @description The first reason for it.
             * @enum {string}
             */
            because: "found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown";
            /** @description Samples without E. coli in a row since hand-over. */
            clean_count: number;
            /** @description Units whose last test with air failed. */
            failedUnits: string[];
            /** @description The last sample of tap or container that counts; null where there is none. No band is told as low of water that must not be drunk. */
            last: {
                band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                count_per_100mL: number | null;
                /** @enum {string} */
                point: "tank" | "tap" | "container" | "secondSource";
                sign: ("less" | "equal" | "more") | null;
                /** @description A day, YYYY-MM-DD. */
                takenOn: string;
            } | null;
            /**
             * @description no: a sample after hand-over held E. coli, or treatment is known not to be enough. notShown: nothing proves it.
             * @enum {string}
             */
            mayDrink: "yes" | "notShown" | "no";
            /** @description Why a sample is to be taken: the last one failed, a unit failed its test with air, one cannot be used, none since hand-over was clean, the last clean one is too old, a set of cartridges is overdue. */
            needsTest: ("failed" | "unitFailed" | "unusable" | "none" | "tooOld" | "setOverdue")[];
            /** @description What makes no verdict and is told beside it: many risks found by the last walk, a set past its day. */
            notes: ("walkAtRisk" | "setOverdue")[];
            /** @description Why it may be said, the first told first. */
            reasons: ("found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown")[];
            /** @description When each set of cartridges is due, the soonest first: tenth, middle and ninetieth of a hundred futures. */
            sets: {
                /** @description A day, YYYY-MM-DD. */
                early: string;
                /** @description A day, YYYY-MM-DD. */
                late: string;
                /** @description A day, YYYY-MM-DD. */
                middle: string;
                serial: string;
            }[];
            /** @description Sets of cartridges whose day cannot be told. */
            setsUndated_count: number;
            target_DALY_per_person_per_year: number;
            /** @description Samples that cannot be used as they were written down. */
            unusable: {
                /** @description The row that is to be mended. */
                at: {
                    /** @description As a spreadsheet names it, such as D14; in workbooks. */
                    cell?: string;
                    column?: string;
                    /** @description A day, YYYY-MM-DD. */
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    /** @description Counted as a spreadsheet does: the first line is row 1. */
                    row?: number;
                    siteId?: string;
                };
                /**
                 * @description Its row could not be read; its day is still to come; what was found in it cannot be reckoned with.
                 * @enum {string}
                 */
                because: "unread" | "dayToCome" | "portions";
                /** @description Does what can be read of it say that E. coli were found? */
                hasGerms: boolean;
                testId: string;
            }[];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description Rows that could not be used and keep more from being said. */
            withheldBy: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            }[];
            /** @description The germ that does most harm; null where no risk could be worked. */
            worst: {
                DALY_per_person_per_year: number;
                DALYHigh_per_person_per_year: number;
                /** @enum {string} */
                pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                /** @description The second source among its waters; null: water of roofs alone. */
                secondSourceId: string | null;
                /** @description Days on which the second source is drunk; null where its water is taken as drunk every day. */
                sourceDays_per_year: number | null;
                /** @description What that second source is called. */
                sourceName: string | null;
            } | null;
        };
        siteCupInput: {
            /**
             * @description The first reason for it.
             * @enum {string}
             */
            because: "found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown";
            /** @description Samples without E. coli in a row since hand-over. */
            clean_count: number;
            /** @description Units whose last test with air failed. */
            failedUnits: string[];
            /** @description The last sample of tap or container that counts; null where there is none. No band is told as low of water that must not be drunk. */
            last: {
                band: ("low" | "intermediate" | "high" | "veryHigh") | null;
                count_per_100mL: number | null;
                /** @enum {string} */
                point: "tank" | "tap" | "container" | "secondSource";
                sign: ("less" | "equal" | "more") | null;
                /** @description A day, YYYY-MM-DD. */
                takenOn: string;
            } | null;
            /**
             * @description no: a sample after hand-over held E. coli, or treatment is known not to be enough. notShown: nothing proves it.
             * @enum {string}
             */
            mayDrink: "yes" | "notShown" | "no";
            /** @description Why a sample is to be taken: the last one failed, a unit failed its test with air, one cannot be used, none since hand-over was clean, the last clean one is too old, a set of cartridges is overdue. */
            needsTest: ("failed" | "unitFailed" | "unusable" | "none" | "tooOld" | "setOverdue")[];
            /** @description What makes no verdict and is told beside it: many risks found by the last walk, a set past its day. */
            notes: ("walkAtRisk" | "setOverdue")[];
            /** @description Why it may be said, the first told first. */
            reasons: ("found" | "unitFailed" | "overTarget" | "fails" | "withheld" | "sampleUnusable" | "noEvidence" | "rawUnknown" | "sourceRawUnknown" | "sourceOver" | "unknown" | "chlorineHigh" | "notInPlace" | "overAtWorst" | "skippingUnknown" | "daysOffUnknown" | "sampleTooOld" | "noSample" | "assumed" | "shown")[];
            /** @description When each set of cartridges is due, the soonest first: tenth, middle and ninetieth of a hundred futures. */
            sets: {
                /** @description A day, YYYY-MM-DD. */
                early: string;
                /** @description A day, YYYY-MM-DD. */
                late: string;
                /** @description A day, YYYY-MM-DD. */
                middle: string;
                serial: string;
            }[];
            /** @description Sets of cartridges whose day cannot be told. */
            setsUndated_count: number;
            target_DALY_per_person_per_year: number;
            /** @description Samples that cannot be used as they were written down. */
            unusable: {
                /** @description The row that is to be mended. */
                at: {
                    /** @description As a spreadsheet names it, such as D14; in workbooks. */
                    cell?: string;
                    column?: string;
                    /** @description A day, YYYY-MM-DD. */
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    /** @description Counted as a spreadsheet does: the first line is row 1. */
                    row?: number;
                    siteId?: string;
                };
                /**
                 * @description Its row could not be read; its day is still to come; what was found in it cannot be reckoned with.
                 * @enum {string}
                 */
                because: "unread" | "dayToCome" | "portions";
                /** @description Does what can be read of it say that E. coli were found? */
                hasGerms: boolean;
                testId: string;
            }[];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description Rows that could not be used and keep more from being said. */
            withheldBy: {
                /** @description As a spreadsheet names it, such as D14; in workbooks. */
                cell?: string;
                column?: string;
                /** @description A day, YYYY-MM-DD. */
                day?: string;
                file?: string;
                gaugeId?: string;
                /** @description Counted as a spreadsheet does: the first line is row 1. */
                row?: number;
                siteId?: string;
            }[];
            /** @description The germ that does most harm; null where no risk could be worked. */
            worst: {
                DALY_per_person_per_year: number;
                DALYHigh_per_person_per_year: number;
                /** @enum {string} */
                pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                /** @description The second source among its waters; null: water of roofs alone. */
                secondSourceId: string | null;
                /** @description Days on which the second source is drunk; null where its water is taken as drunk every day. */
                sourceDays_per_year: number | null;
                /** @description What that second source is called. */
                sourceName: string | null;
            } | null;
        };
        siteFacts: {
            /** @description The version these facts are of, and the design told elsewhere. */
            designVersion: number;
            /** @description The faults of the tables behind its doubts. */
            faults: {
                code: string;
                facts: {
                    [key: string]: components["schemas"]["figure"] | string | string[];
                };
                place: {
                    column?: string;
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    row?: components["schemas"]["figure"];
                    siteId?: string;
                };
                /** @enum {string} */
                severity: "blocker" | "warning" | "note";
            }[];
            /** @description Those its rain follows from: its own and its neighbours, or those within reach, or the nearest alone. */
            gauges: {
                file: string;
                gaugeId: string;
                latitude_deg: components["schemas"]["figure"] | null;
                longitude_deg: components["schemas"]["figure"] | null;
                name: string;
                normals: {
                    month: components["schemas"]["figure"];
                    rain_mm: components["schemas"]["figure"] | null;
                    source: string | null;
                    wetDays: components["schemas"]["figure"] | null;
                    yearFrom: components["schemas"]["figure"] | null;
                    yearTo: components["schemas"]["figure"] | null;
                }[];
                /** @description Null where only the place of the gauge counts. */
                readings: {
                    /** @description Where they are. */
                    address: string;
                    /** @description What the readings are called: others have another name. */
                    of: string;
                } | null;
                readingTime: string | null;
                stormCoefficients: {
                    eta: components["schemas"]["figure"];
                    kappa: components["schemas"]["figure"];
                    lambda: components["schemas"]["figure"];
                    leastPeriod_years: components["schemas"]["figure"] | null;
                    mostPeriod_years: components["schemas"]["figure"] | null;
                    source: string | null;
                    theta_h: components["schemas"]["figure"];
                } | null;
                storms: {
                    high_mm_per_h: components["schemas"]["figure"] | null;
                    intensity_mm_per_h: components["schemas"]["figure"];
                    low_mm_per_h: components["schemas"]["figure"] | null;
                    returnPeriod_years: components["schemas"]["figure"];
                    source: string | null;
                }[];
            }[];
            kit: {
                carriers: {
                    carrierId: string;
                    carriers_count: components["schemas"]["figure"];
                    freeboard_cm: components["schemas"]["figure"] | null;
                    freeboardEmpty_cm: components["schemas"]["figure"] | null;
                    leastFreeboard_cm: components["schemas"]["figure"] | null;
                    length_m: components["schemas"]["figure"] | null;
                    limit_kg: components["schemas"]["figure"] | null;
                    limit_L: components["schemas"]["figure"] | null;
                    limitSetBy: string | null;
                    limitSetOn: components["schemas"]["figure"] | null;
                    longest_m: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                    name: string;
                    stowage_fraction: components["schemas"]["figure"];
                }[];
                costs: {
                    amount: components["schemas"]["figure"];
                    costId: string;
                    currency: string;
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    high: components["schemas"]["figure"] | null;
                    life_years: components["schemas"]["figure"] | null;
                    low: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    per: "site" | "year" | "person" | "personYear";
                    priceDate: components["schemas"]["figure"];
                    siteId: string | null;
                    source: string | null;
                    what: string;
                }[];
                keptApart: {
                    otherPartId: string;
                    partId: string;
                }[];
                rates: {
                    currency: string;
                    day: components["schemas"]["figure"];
                    perUnit: components["schemas"]["figure"];
                    source: string | null;
                }[];
                redenominations: {
                    currency: string;
                    day: components["schemas"]["figure"];
                    factor: components["schemas"]["figure"];
                    newCurrency: string;
                    source: string | null;
                }[];
                rules: {
                    conditions: {
                        /** @enum {string} */
                        field: "siteClass" | "handPump" | "people" | "roofMaterial" | "gutterShape" | "gutterWidth_mm" | "downpipeBore_mm" | "tankVolume_L" | "tankPart" | "standHeight_m" | "pipeLeg" | "pipeBore_mm" | "unitPart";
                        /** @enum {string} */
                        test: "is" | "isNot" | "atLeast" | "atMost";
                        value: string;
                    }[];
                    /** @enum {string} */
                    countedBy: "site" | "person" | "household" | "roof" | "gutter" | "gutterMetre" | "gutterOutlet" | "gutterBend" | "gutterJoint" | "downpipe" | "downpipeMetre" | "diverter" | "tank" | "settlingTank" | "overflow" | "stand" | "standPad" | "pipe" | "pipeMetre" | "pipeJoint" | "elbow" | "tee" | "valve" | "meter" | "tap" | "unit" | "cartridgeSet" | "cartridge";
                    each_count: components["schemas"]["figure"];
                    leastSpare_count: components["schemas"]["figure"];
                    partId: string;
                    /** @enum {string} */
                    rounding: "up" | "nearest" | "none";
                    ruleId: string;
                    spare_fraction: components["schemas"]["figure"];
                }[];
            };
            parts: {
                baseWidth_mm: components["schemas"]["figure"] | null;
                bore_mm: components["schemas"]["figure"] | null;
                depth_mm: components["schemas"]["figure"] | null;
                kind: string;
                kit: {
                    bulk_L: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    countedIn: "piece" | "m" | "kg" | "L";
                    danger: ("chlorine" | "fuel") | null;
                    height_m: components["schemas"]["figure"] | null;
                    isFragile: boolean | null;
                    leadTime_days: components["schemas"]["figure"] | null;
                    life_years: components["schemas"]["figure"] | null;
                    packSize_count: components["schemas"]["figure"] | null;
                    picture: string | null;
                    pieces_count: components["schemas"]["figure"] | null;
                    stock_count: components["schemas"]["figure"] | null;
                    stockCountedOn: components["schemas"]["figure"] | null;
                    supplier: string | null;
                    width_m: components["schemas"]["figure"] | null;
                };
                length_m: components["schemas"]["figure"] | null;
                mass_kg: components["schemas"]["figure"] | null;
                name: string;
                partId: string;
                shape: ("halfRound" | "rectangular" | "trapezoidal" | "cutPipe") | null;
                topWidth_mm: components["schemas"]["figure"] | null;
                /** @description Null of all but treatment units. */
                unit: {
                    backwash_fraction: components["schemas"]["figure"] | null;
                    backwash_min_per_day: components["schemas"]["figure"] | null;
                    cartridges_count: components["schemas"]["figure"] | null;
                    highestPressure_kPa: components["schemas"]["figure"] | null;
                    highestTurbidity_NTU: components["schemas"]["figure"] | null;
                    lever_ratio: components["schemas"]["figure"] | null;
                    lifeLimit_years: components["schemas"]["figure"] | null;
                    lowestFlow_L_per_h: components["schemas"]["figure"] | null;
                    membraneArea_m2: components["schemas"]["figure"] | null;
                    permeability_L_per_m2_h_bar: components["schemas"]["figure"] | null;
                    pistonBore_mm: components["schemas"]["figure"] | null;
                    pistonStroke_mm: components["schemas"]["figure"] | null;
                    pore_nm: components["schemas"]["figure"] | null;
                    ratedFlow_L_per_h: components["schemas"]["figure"] | null;
                    ratedLitres_L: components["schemas"]["figure"] | null;
                    ratedPressure_kPa: components["schemas"]["figure"] | null;
                    ratedTurbidity_NTU: components["schemas"]["figure"] | null;
                    reductions: {
                        bacteria_log10: components["schemas"]["figure"] | null;
                        evidence: ("challengeTest" | "credited" | "none") | null;
                        protozoa_log10: components["schemas"]["figure"] | null;
                        source: string | null;
                        viruses_log10: components["schemas"]["figure"] | null;
                    };
                } | null;
                volume_L: components["schemas"]["figure"] | null;
            }[];
            prices: {
                amount: components["schemas"]["figure"];
                currency: string;
                partId: string;
                priceDate: components["schemas"]["figure"];
            }[];
            settings: {
                boiledWater_L_per_person_per_day: components["schemas"]["figure"] | null;
                boughtWater_amount_per_L: components["schemas"]["figure"] | null;
                boughtWater_L_per_person_per_day: components["schemas"]["figure"] | null;
                cartridgeFailures_per_year: components["schemas"]["figure"] | null;
                changeOver_h: components["schemas"]["figure"];
                closedRain_mm: components["schemas"]["figure"] | null;
                costYears: components["schemas"]["figure"];
                currency: string | null;
                cutWaste_mm: components["schemas"]["figure"];
                /** @enum {string} */
                dayOrder: "drawFirst" | "yas" | "ybs";
                daysOff_per_year: components["schemas"]["figure"] | null;
                designAfterHandOver_years: components["schemas"]["figure"];
                draws: components["schemas"]["figure"];
                firstFlush_mm: components["schemas"]["figure"];
                fiveMinutesOfDay_fraction: components["schemas"]["figure"] | null;
                fiveMinutesOfDaySource: string | null;
                flowReadingError_fraction: components["schemas"]["figure"];
                foulingSpread_fraction: components["schemas"]["figure"];
                fuel_amount_per_kg: components["schemas"]["figure"] | null;
                fuelHeat_MJ_per_kg: components["schemas"]["figure"] | null;
                fuelPrice_per_L: components["schemas"]["figure"] | null;
                futures: components["schemas"]["figure"];
                /** @enum {string} */
                gapFilling: "otherYears" | "normalRatio" | "inverseDistance";
                gaugeReach_km: components["schemas"]["figure"];
                growthFraction_per_year: components["schemas"]["figure"] | null;
                headMargin_m: components["schemas"]["figure"];
                healthTarget_DALY_per_person_per_year: components["schemas"]["figure"];
                inflation_fraction_per_year: components["schemas"]["figure"] | null;
                installHigh_days: components["schemas"]["figure"];
                installLikely_days: components["schemas"]["figure"];
                installLow_days: components["schemas"]["figure"];
                interest_fraction_per_year: components["schemas"]["figure"] | null;
                /** @enum {string} */
                judgeDrainage: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeHead: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeSafety: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeSettling: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeStand: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeTreatment: "whereMeasured" | "always" | "never";
                leak_fraction: components["schemas"]["figure"];
                learning_fraction: components["schemas"]["figure"];
                leastYears: components["schemas"]["figure"];
                litres_per_person_per_day: components["schemas"]["figure"];
                litresDrunk_L_per_person_per_day: components["schemas"]["figure"];
                litresDrunkHigh_L_per_person_per_day: components["schemas"]["figure"];
                madeYears: components["schemas"]["figure"];
                mainStore: string | null;
                missingDays_fraction: components["schemas"]["figure"];
                mustHold: boolean;
                oldRate_days: components["schemas"]["figure"];
                openChance_fraction: components["schemas"]["figure"];
                peakShare_fraction: components["schemas"]["figure"];
                people_per_household: components["schemas"]["figure"] | null;
                pipedScheme_amount_per_person: components["schemas"]["figure"] | null;
                pipedScheme_amount_per_person_per_year: components["schemas"]["figure"] | null;
                pipedScheme_years: components["schemas"]["figure"] | null;
                porterLoad_kg: components["schemas"]["figure"];
                priceChange_fraction_per_year: components["schemas"]["figure"] | null;
                programme: string;
                pumping_h_per_day: components["schemas"]["figure"];
                range_fraction: components["schemas"]["figure"];
                recontamination_fraction: components["schemas"]["figure"] | null;
                residualHead_m: components["schemas"]["figure"];
                riverEnds_h: components["schemas"]["figure"];
                rolloutHorizon_days: components["schemas"]["figure"];
                rolloutStart: components["schemas"]["figure"] | null;
                roofSolids_g_per_m2_per_year: components["schemas"]["figure"] | null;
                roofTurbidity_NTU: components["schemas"]["figure"] | null;
                roofTurbidityHigh_NTU: components["schemas"]["figure"] | null;
                sampleAge_days: components["schemas"]["figure"];
                seed: components["schemas"]["figure"];
                settledTarget_fraction: components["schemas"]["figure"];
                settledTurbidity_fraction: components["schemas"]["figure"];
                settlingGrain_um: components["schemas"]["figure"];
                settlingGrainDensity_kg_per_m3: components["schemas"]["figure"];
                skipping_fraction: components["schemas"]["figure"] | null;
                standMargin_fraction: components["schemas"]["figure"];
                stormMargin_fraction: components["schemas"]["figure"];
                stormReturnPeriod_years: components["schemas"]["figure"];
                stoveEfficiency_fraction: components["schemas"]["figure"] | null;
                susceptibleToRotavirus_fraction: components["schemas"]["figure"];
                tapFlow_L_per_min: components["schemas"]["figure"];
                target: {
                    daysMet_fraction: components["schemas"]["figure"];
                    goodYears_fraction: components["schemas"]["figure"];
                    longestDryRun_days: components["schemas"]["figure"];
                };
                treatmentMargin_fraction: components["schemas"]["figure"];
                unitHead_m: components["schemas"]["figure"] | null;
                waitLimit_min: components["schemas"]["figure"];
                waterTemperature_C: components["schemas"]["figure"];
                waterYearStartMonth: components["schemas"]["figure"] | null;
                /** @enum {string} */
                wetDayAmounts: "gamma" | "mixedExponential";
                /** @enum {string} */
                windExposure: "builtUp" | "openGround" | "openWater";
                windSpeed_m_per_s: components["schemas"]["figure"] | null;
                workingService_fraction: components["schemas"]["figure"] | null;
                workingServiceHigh_fraction: components["schemas"]["figure"] | null;
                workingServiceLow_fraction: components["schemas"]["figure"] | null;
            };
            /** @description Days are counted from 1 January 1970; null is "not known". */
            site: {
                demand: {
                    judged: boolean;
                    litres_per_person_per_day: components["schemas"]["figure"];
                    months?: components["schemas"]["figure"][];
                    purpose: string;
                }[];
                designYear: components["schemas"]["figure"] | null;
                doubts: {
                    column?: string;
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    row?: components["schemas"]["figure"];
                    siteId?: string;
                }[];
                /** @description What puts one station of it in doubt. */
                doubtsBeside: {
                    drainage: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                    head: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                    safety: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                    settling: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                    stand: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                    treatment: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figure"];
                        siteId?: string;
                    }[];
                };
                downpipes: {
                    bore_mm: components["schemas"]["figure"] | null;
                    downpipeId: string;
                    isBuilt?: boolean;
                    length_m: components["schemas"]["figure"] | null;
                    roofId: string;
                }[];
                gaugeId: string | null;
                growthFraction_per_year: components["schemas"]["figure"] | null;
                gutters: {
                    baseWidth_mm: components["schemas"]["figure"] | null;
                    bends_count: components["schemas"]["figure"] | null;
                    depth_mm: components["schemas"]["figure"] | null;
                    fall_mm_per_m: components["schemas"]["figure"] | null;
                    gutterId: string;
                    isBuilt?: boolean;
                    length_m: components["schemas"]["figure"] | null;
                    outlet_mm: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    outletGrate: "open" | "grated";
                    outlets_count: components["schemas"]["figure"] | null;
                    roofId: string;
                    runToOutlet_m: components["schemas"]["figure"] | null;
                    shape: ("halfRound" | "rectangular" | "trapezoidal" | "cutPipe") | null;
                    width_mm: components["schemas"]["figure"] | null;
                }[];
                handOverDay: components["schemas"]["figure"] | null;
                hasHandPump: boolean | null;
                households_count: components["schemas"]["figure"] | null;
                latitude_deg: components["schemas"]["figure"] | null;
                longitude_deg: components["schemas"]["figure"] | null;
                name: string;
                nearSecondSource: {
                    /** @enum {string} */
                    kind: "river" | "spring" | "well" | "pond" | "vendor";
                    months: components["schemas"]["figure"][];
                    name: string;
                    secondSourceId: string;
                    turbidity_NTU: components["schemas"]["figure"] | null;
                } | null;
                people: components["schemas"]["figure"] | null;
                peopleCountedOn: components["schemas"]["figure"] | null;
                pipes: {
                    bore_mm: components["schemas"]["figure"] | null;
                    elbows_count: components["schemas"]["figure"] | null;
                    isBuilt?: boolean;
                    /** @enum {string} */
                    leg: "tankToUnit" | "unitToTap";
                    length_m: components["schemas"]["figure"] | null;
                    material: ("plastic" | "steel" | "galvanised" | "castIron") | null;
                    meters_count: components["schemas"]["figure"] | null;
                    otherLoss_k: components["schemas"]["figure"] | null;
                    pipeId: string;
                    tankId: string | null;
                    tees_count: components["schemas"]["figure"] | null;
                    valves_count: components["schemas"]["figure"] | null;
                }[];
                presence: {
                    calendarId: string;
                    periods: {
                        from_dayOfYear: components["schemas"]["figure"];
                        presentFraction: components["schemas"]["figure"];
                        reason: string | null;
                        to_dayOfYear: components["schemas"]["figure"];
                    }[];
                } | null;
                rainFactor: components["schemas"]["figure"];
                ration: {
                    below_fraction: components["schemas"]["figure"] | null;
                    judged_fraction: components["schemas"]["figure"] | null;
                    other_fraction: components["schemas"]["figure"] | null;
                } | null;
                roofs: {
                    coating: ("none" | "forDrinkingWater" | "unknownPaint" | "bitumen") | null;
                    diverter: {
                        chamber_L: components["schemas"]["figure"] | null;
                        chamberBore_mm: components["schemas"]["figure"] | null;
                        /** @enum {string} */
                        drainHole: "open" | "blocked";
                        drainHole_mm: components["schemas"]["figure"] | null;
                        firstFlush_mm: components["schemas"]["figure"] | null;
                    } | null;
                    eaveHeight_m: components["schemas"]["figure"] | null;
                    form: ("gable" | "oneSlope" | "hip" | "flat") | null;
                    gutteredFraction: components["schemas"]["figure"] | null;
                    hasAsbestos: boolean | null;
                    hasLead: boolean | null;
                    isFragile: boolean | null;
                    isUnderTrees: boolean | null;
                    length_m: components["schemas"]["figure"] | null;
                    material: ("corrugatedMetal" | "tile" | "concrete" | "fibreCement" | "shingle" | "thatch") | null;
                    pitch_deg: components["schemas"]["figure"] | null;
                    roofId: string;
                    roofPlanArea_m2: components["schemas"]["figure"] | null;
                    runoffFraction: components["schemas"]["figure"] | null;
                    tankId: string | null;
                    valleys_count: components["schemas"]["figure"] | null;
                    wallAbove_m2: components["schemas"]["figure"] | null;
                    width_m: components["schemas"]["figure"] | null;
                }[];
                safety: {
                    altitude_m: components["schemas"]["figure"] | null;
                    barriers: {
                        barrierId: string;
                        /** @enum {string} */
                        kind: "firstFlush" | "settling" | "storageTime" | "filter" | "ultraviolet" | "boiling" | "other";
                        reductions: {
                            bacteria_log10: components["schemas"]["figure"] | null;
                            evidence: ("challengeTest" | "credited" | "none") | null;
                            protozoa_log10: components["schemas"]["figure"] | null;
                            source: string | null;
                            viruses_log10: components["schemas"]["figure"] | null;
                        };
                        used_fraction: components["schemas"]["figure"] | null;
                    }[];
                    chlorination: {
                        active_fraction: components["schemas"]["figure"] | null;
                        baffling_fraction: components["schemas"]["figure"] | null;
                        batch_L: components["schemas"]["figure"] | null;
                        contact_min: components["schemas"]["figure"] | null;
                        dose_mg_per_L: components["schemas"]["figure"] | null;
                        pH: components["schemas"]["figure"] | null;
                        product: ("bleach" | "calciumHypochlorite" | "chlorinatedLime" | "tablets" | "other") | null;
                        residual_mg_per_L: components["schemas"]["figure"] | null;
                        stock_g_per_L: components["schemas"]["figure"] | null;
                        waterTemperature_C: components["schemas"]["figure"] | null;
                    } | null;
                    daysOff_per_year: components["schemas"]["figure"] | null;
                    inspections: {
                        by: string | null;
                        inspectedOn: components["schemas"]["figure"];
                        questions_count: components["schemas"]["figure"];
                        risks_count: components["schemas"]["figure"];
                    }[];
                    rawWater: {
                        high_per_L: components["schemas"]["figure"] | null;
                        low_per_L: components["schemas"]["figure"] | null;
                        /** @enum {string} */
                        pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                        secondSourceId: string | null;
                        source: string | null;
                        typical_per_L: components["schemas"]["figure"];
                    }[];
                    skipping_fraction: components["schemas"]["figure"] | null;
                    tests: {
                        freeChlorine_mg_per_L: components["schemas"]["figure"] | null;
                        laboratory: string | null;
                        pH: components["schemas"]["figure"] | null;
                        /** @enum {string} */
                        point: "tank" | "tap" | "container" | "secondSource";
                        portions: {
                            colonies_count: components["schemas"]["figure"] | null;
                            /** @enum {string} */
                            kind: "tubes" | "plates";
                            portions_count: components["schemas"]["figure"];
                            positive_count: components["schemas"]["figure"] | null;
                            uncountable_count: components["schemas"]["figure"];
                            uncountableFrom_count: components["schemas"]["figure"] | null;
                            volume_mL: components["schemas"]["figure"];
                        }[];
                        takenOn: components["schemas"]["figure"];
                        testId: string;
                        turbidity_NTU: components["schemas"]["figure"] | null;
                        waterTemperature_C: components["schemas"]["figure"] | null;
                    }[];
                    unusableTests: {
                        at: {
                            column?: string;
                            day?: string;
                            file?: string;
                            gaugeId?: string;
                            row?: components["schemas"]["figure"];
                            siteId?: string;
                        };
                        /** @enum {string} */
                        because: "unread" | "dayToCome" | "portions";
                        point: ("tank" | "tap" | "container" | "secondSource") | null;
                        portions: {
                            colonies_count: components["schemas"]["figure"] | null;
                            /** @enum {string} */
                            kind: "tubes" | "plates";
                            portions_count: components["schemas"]["figure"];
                            positive_count: components["schemas"]["figure"] | null;
                            uncountable_count: components["schemas"]["figure"];
                            uncountableFrom_count: components["schemas"]["figure"] | null;
                            volume_mL: components["schemas"]["figure"];
                        }[];
                        testId: string;
                    }[];
                };
                secondSource: {
                    /** @enum {string} */
                    kind: "river" | "spring" | "well" | "pond" | "vendor";
                    months: components["schemas"]["figure"][];
                    name: string;
                    secondSourceId: string;
                    turbidity_NTU: components["schemas"]["figure"] | null;
                } | null;
                siteClass: string | null;
                siteId: string;
                tanks: {
                    baseWidth_m: components["schemas"]["figure"] | null;
                    cells_count: components["schemas"]["figure"] | null;
                    diameter_m: components["schemas"]["figure"] | null;
                    emptyMass_kg: components["schemas"]["figure"] | null;
                    groundClass: ("rock" | "softRock" | "denseGravel" | "looseGravel" | "denseSand" | "looseSand" | "silt" | "stiffClay" | "firmClay" | "softClay" | "softOrMadeGround") | null;
                    height_m: components["schemas"]["figure"] | null;
                    inletHeight_m: components["schemas"]["figure"] | null;
                    isBuilt?: boolean;
                    isFastened: boolean | null;
                    joinedTo: string | null;
                    nominal_L: components["schemas"]["figure"] | null;
                    outletHeight_m: components["schemas"]["figure"] | null;
                    overflowBore_mm: components["schemas"]["figure"] | null;
                    overflowHeight_m: components["schemas"]["figure"] | null;
                    overflows_count: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    overflowScreen: "open" | "screened";
                    pads_count: components["schemas"]["figure"] | null;
                    padSide_m: components["schemas"]["figure"] | null;
                    partId: string | null;
                    partMass_kg: components["schemas"]["figure"] | null;
                    partVolume_L: components["schemas"]["figure"] | null;
                    peopleFraction: components["schemas"]["figure"] | null;
                    /** @enum {string} */
                    role: "storage" | "settling";
                    signedBy: string | null;
                    signedOn: components["schemas"]["figure"] | null;
                    standHeight_m: components["schemas"]["figure"] | null;
                    standMass_kg: components["schemas"]["figure"] | null;
                    tankId: string;
                }[];
                tapHeight_m: components["schemas"]["figure"] | null;
                taps_count: components["schemas"]["figure"] | null;
                target: {
                    daysMet_fraction: components["schemas"]["figure"];
                    goodYears_fraction: components["schemas"]["figure"];
                    longestDryRun_days: components["schemas"]["figure"];
                } | null;
                treatment: {
                    cartridges: {
                        batch: string | null;
                        installedOn: components["schemas"]["figure"] | null;
                        partId: string | null;
                        reason: string | null;
                        removedOn: components["schemas"]["figure"] | null;
                        serial: string;
                        unitSerial: string | null;
                    }[];
                    flowReadings: {
                        flow_L_per_h: components["schemas"]["figure"];
                        passed_L: components["schemas"]["figure"] | null;
                        pressure_kPa: components["schemas"]["figure"] | null;
                        readOn: components["schemas"]["figure"];
                        unitSerial: string | null;
                        waterTemperature_C: components["schemas"]["figure"] | null;
                    }[];
                    pressureTests: {
                        airVolume_L: components["schemas"]["figure"] | null;
                        fall_kPa_per_min: components["schemas"]["figure"];
                        pressure_kPa: components["schemas"]["figure"];
                        testedOn: components["schemas"]["figure"];
                        unitSerial: string | null;
                    }[];
                    units: {
                        figures: {
                            backwash_fraction: components["schemas"]["figure"] | null;
                            backwash_min_per_day: components["schemas"]["figure"] | null;
                            cartridges_count: components["schemas"]["figure"] | null;
                            highestPressure_kPa: components["schemas"]["figure"] | null;
                            highestTurbidity_NTU: components["schemas"]["figure"] | null;
                            lever_ratio: components["schemas"]["figure"] | null;
                            lifeLimit_years: components["schemas"]["figure"] | null;
                            lowestFlow_L_per_h: components["schemas"]["figure"] | null;
                            membraneArea_m2: components["schemas"]["figure"] | null;
                            permeability_L_per_m2_h_bar: components["schemas"]["figure"] | null;
                            pistonBore_mm: components["schemas"]["figure"] | null;
                            pistonStroke_mm: components["schemas"]["figure"] | null;
                            pore_nm: components["schemas"]["figure"] | null;
                            ratedFlow_L_per_h: components["schemas"]["figure"] | null;
                            ratedLitres_L: components["schemas"]["figure"] | null;
                            ratedPressure_kPa: components["schemas"]["figure"] | null;
                            ratedTurbidity_NTU: components["schemas"]["figure"] | null;
                            reductions: {
                                bacteria_log10: components["schemas"]["figure"] | null;
                                evidence: ("challengeTest" | "credited" | "none") | null;
                                protozoa_log10: components["schemas"]["figure"] | null;
                                source: string | null;
                                viruses_log10: components["schemas"]["figure"] | null;
                            };
                        } | null;
                        installedOn: components["schemas"]["figure"] | null;
                        partId: string | null;
                        removedOn: components["schemas"]["figure"] | null;
                        serial: string;
                    }[];
                };
                unitHeight_m: components["schemas"]["figure"] | null;
                windExposure: ("builtUp" | "openGround" | "openWater") | null;
                windSpeed_m_per_s: components["schemas"]["figure"] | null;
            };
            /** @description The version of the programme now. */
            version: number;
            /** @description Of those, the ones that are to be made ready. */
            wantedGauges: string[];
        };
        siteFactsInput: {
            /** @description The version these facts are of, and the design told elsewhere. */
            designVersion: number;
            /** @description The faults of the tables behind its doubts. */
            faults: {
                code: string;
                facts: {
                    [key: string]: components["schemas"]["figureInput"] | string | string[];
                };
                place: {
                    column?: string;
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    row?: components["schemas"]["figureInput"];
                    siteId?: string;
                };
                /** @enum {string} */
                severity: "blocker" | "warning" | "note";
            }[];
            /** @description Those its rain follows from: its own and its neighbours, or those within reach, or the nearest alone. */
            gauges: {
                file: string;
                gaugeId: string;
                latitude_deg: components["schemas"]["figureInput"] | null;
                longitude_deg: components["schemas"]["figureInput"] | null;
                name: string;
                normals: {
                    month: components["schemas"]["figureInput"];
                    rain_mm: components["schemas"]["figureInput"] | null;
                    source: string | null;
                    wetDays: components["schemas"]["figureInput"] | null;
                    yearFrom: components["schemas"]["figureInput"] | null;
                    yearTo: components["schemas"]["figureInput"] | null;
                }[];
                /** @description Null where only the place of the gauge counts. */
                readings: {
                    /** @description Where they are. */
                    address: string;
                    /** @description What the readings are called: others have another name. */
                    of: string;
                } | null;
                readingTime: string | null;
                stormCoefficients: {
                    eta: components["schemas"]["figureInput"];
                    kappa: components["schemas"]["figureInput"];
                    lambda: components["schemas"]["figureInput"];
                    leastPeriod_years: components["schemas"]["figureInput"] | null;
                    mostPeriod_years: components["schemas"]["figureInput"] | null;
                    source: string | null;
                    theta_h: components["schemas"]["figureInput"];
                } | null;
                storms: {
                    high_mm_per_h: components["schemas"]["figureInput"] | null;
                    intensity_mm_per_h: components["schemas"]["figureInput"];
                    low_mm_per_h: components["schemas"]["figureInput"] | null;
                    returnPeriod_years: components["schemas"]["figureInput"];
                    source: string | null;
                }[];
            }[];
            kit: {
                carriers: {
                    carrierId: string;
                    carriers_count: components["schemas"]["figureInput"];
                    freeboard_cm: components["schemas"]["figureInput"] | null;
                    freeboardEmpty_cm: components["schemas"]["figureInput"] | null;
                    leastFreeboard_cm: components["schemas"]["figureInput"] | null;
                    length_m: components["schemas"]["figureInput"] | null;
                    limit_kg: components["schemas"]["figureInput"] | null;
                    limit_L: components["schemas"]["figureInput"] | null;
                    limitSetBy: string | null;
                    limitSetOn: components["schemas"]["figureInput"] | null;
                    longest_m: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                    name: string;
                    stowage_fraction: components["schemas"]["figureInput"];
                }[];
                costs: {
                    amount: components["schemas"]["figureInput"];
                    costId: string;
                    currency: string;
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    high: components["schemas"]["figureInput"] | null;
                    life_years: components["schemas"]["figureInput"] | null;
                    low: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    per: "site" | "year" | "person" | "personYear";
                    priceDate: components["schemas"]["figureInput"];
                    siteId: string | null;
                    source: string | null;
                    what: string;
                }[];
                keptApart: {
                    otherPartId: string;
                    partId: string;
                }[];
                rates: {
                    currency: string;
                    day: components["schemas"]["figureInput"];
                    perUnit: components["schemas"]["figureInput"];
                    source: string | null;
                }[];
                redenominations: {
                    currency: string;
                    day: components["schemas"]["figureInput"];
                    factor: components["schemas"]["figureInput"];
                    newCurrency: string;
                    source: string | null;
                }[];
                rules: {
                    conditions: {
                        /** @enum {string} */
                        field: "siteClass" | "handPump" | "people" | "roofMaterial" | "gutterShape" | "gutterWidth_mm" | "downpipeBore_mm" | "tankVolume_L" | "tankPart" | "standHeight_m" | "pipeLeg" | "pipeBore_mm" | "unitPart";
                        /** @enum {string} */
                        test: "is" | "isNot" | "atLeast" | "atMost";
                        value: string;
                    }[];
                    /** @enum {string} */
                    countedBy: "site" | "person" | "household" | "roof" | "gutter" | "gutterMetre" | "gutterOutlet" | "gutterBend" | "gutterJoint" | "downpipe" | "downpipeMetre" | "diverter" | "tank" | "settlingTank" | "overflow" | "stand" | "standPad" | "pipe" | "pipeMetre" | "pipeJoint" | "elbow" | "tee" | "valve" | "meter" | "tap" | "unit" | "cartridgeSet" | "cartridge";
                    each_count: components["schemas"]["figureInput"];
                    leastSpare_count: components["schemas"]["figureInput"];
                    partId: string;
                    /** @enum {string} */
                    rounding: "up" | "nearest" | "none";
                    ruleId: string;
                    spare_fraction: components["schemas"]["figureInput"];
                }[];
            };
            parts: {
                baseWidth_mm: components["schemas"]["figureInput"] | null;
                bore_mm: components["schemas"]["figureInput"] | null;
                depth_mm: components["schemas"]["figureInput"] | null;
                kind: string;
                kit: {
                    bulk_L: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    countedIn: "piece" | "m" | "kg" | "L";
                    danger: ("chlorine" | "fuel") | null;
                    height_m: components["schemas"]["figureInput"] | null;
                    isFragile: boolean | null;
                    leadTime_days: components["schemas"]["figureInput"] | null;
                    life_years: components["schemas"]["figureInput"] | null;
                    packSize_count: components["schemas"]["figureInput"] | null;
                    picture: string | null;
                    pieces_count: components["schemas"]["figureInput"] | null;
                    stock_count: components["schemas"]["figureInput"] | null;
                    stockCountedOn: components["schemas"]["figureInput"] | null;
                    supplier: string | null;
                    width_m: components["schemas"]["figureInput"] | null;
                };
                length_m: components["schemas"]["figureInput"] | null;
                mass_kg: components["schemas"]["figureInput"] | null;
                name: string;
                partId: string;
                shape: ("halfRound" | "rectangular" | "trapezoidal" | "cutPipe") | null;
                topWidth_mm: components["schemas"]["figureInput"] | null;
                /** @description Null of all but treatment units. */
                unit: {
                    backwash_fraction: components["schemas"]["figureInput"] | null;
                    backwash_min_per_day: components["schemas"]["figureInput"] | null;
                    cartridges_count: components["schemas"]["figureInput"] | null;
                    highestPressure_kPa: components["schemas"]["figureInput"] | null;
                    highestTurbidity_NTU: components["schemas"]["figureInput"] | null;
                    lever_ratio: components["schemas"]["figureInput"] | null;
                    lifeLimit_years: components["schemas"]["figureInput"] | null;
                    lowestFlow_L_per_h: components["schemas"]["figureInput"] | null;
                    membraneArea_m2: components["schemas"]["figureInput"] | null;
                    permeability_L_per_m2_h_bar: components["schemas"]["figureInput"] | null;
                    pistonBore_mm: components["schemas"]["figureInput"] | null;
                    pistonStroke_mm: components["schemas"]["figureInput"] | null;
                    pore_nm: components["schemas"]["figureInput"] | null;
                    ratedFlow_L_per_h: components["schemas"]["figureInput"] | null;
                    ratedLitres_L: components["schemas"]["figureInput"] | null;
                    ratedPressure_kPa: components["schemas"]["figureInput"] | null;
                    ratedTurbidity_NTU: components["schemas"]["figureInput"] | null;
                    reductions: {
                        bacteria_log10: components["schemas"]["figureInput"] | null;
                        evidence: ("challengeTest" | "credited" | "none") | null;
                        protozoa_log10: components["schemas"]["figureInput"] | null;
                        source: string | null;
                        viruses_log10: components["schemas"]["figureInput"] | null;
                    };
                } | null;
                volume_L: components["schemas"]["figureInput"] | null;
            }[];
            prices: {
                amount: components["schemas"]["figureInput"];
                currency: string;
                partId: string;
                priceDate: components["schemas"]["figureInput"];
            }[];
            settings: {
                boiledWater_L_per_person_per_day: components["schemas"]["figureInput"] | null;
                boughtWater_amount_per_L: components["schemas"]["figureInput"] | null;
                boughtWater_L_per_person_per_day: components["schemas"]["figureInput"] | null;
                cartridgeFailures_per_year: components["schemas"]["figureInput"] | null;
                changeOver_h: components["schemas"]["figureInput"];
                closedRain_mm: components["schemas"]["figureInput"] | null;
                costYears: components["schemas"]["figureInput"];
                currency: string | null;
                cutWaste_mm: components["schemas"]["figureInput"];
                /** @enum {string} */
                dayOrder: "drawFirst" | "yas" | "ybs";
                daysOff_per_year: components["schemas"]["figureInput"] | null;
                designAfterHandOver_years: components["schemas"]["figureInput"];
                draws: components["schemas"]["figureInput"];
                firstFlush_mm: components["schemas"]["figureInput"];
                fiveMinutesOfDay_fraction: components["schemas"]["figureInput"] | null;
                fiveMinutesOfDaySource: string | null;
                flowReadingError_fraction: components["schemas"]["figureInput"];
                foulingSpread_fraction: components["schemas"]["figureInput"];
                fuel_amount_per_kg: components["schemas"]["figureInput"] | null;
                fuelHeat_MJ_per_kg: components["schemas"]["figureInput"] | null;
                fuelPrice_per_L: components["schemas"]["figureInput"] | null;
                futures: components["schemas"]["figureInput"];
                /** @enum {string} */
                gapFilling: "otherYears" | "normalRatio" | "inverseDistance";
                gaugeReach_km: components["schemas"]["figureInput"];
                growthFraction_per_year: components["schemas"]["figureInput"] | null;
                headMargin_m: components["schemas"]["figureInput"];
                healthTarget_DALY_per_person_per_year: components["schemas"]["figureInput"];
                inflation_fraction_per_year: components["schemas"]["figureInput"] | null;
                installHigh_days: components["schemas"]["figureInput"];
                installLikely_days: components["schemas"]["figureInput"];
                installLow_days: components["schemas"]["figureInput"];
                interest_fraction_per_year: components["schemas"]["figureInput"] | null;
                /** @enum {string} */
                judgeDrainage: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeHead: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeSafety: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeSettling: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeStand: "whereMeasured" | "always" | "never";
                /** @enum {string} */
                judgeTreatment: "whereMeasured" | "always" | "never";
                leak_fraction: components["schemas"]["figureInput"];
                learning_fraction: components["schemas"]["figureInput"];
                leastYears: components["schemas"]["figureInput"];
                litres_per_person_per_day: components["schemas"]["figureInput"];
                litresDrunk_L_per_person_per_day: components["schemas"]["figureInput"];
                litresDrunkHigh_L_per_person_per_day: components["schemas"]["figureInput"];
                madeYears: components["schemas"]["figureInput"];
                mainStore: string | null;
                missingDays_fraction: components["schemas"]["figureInput"];
                mustHold: boolean;
                oldRate_days: components["schemas"]["figureInput"];
                openChance_fraction: components["schemas"]["figureInput"];
                peakShare_fraction: components["schemas"]["figureInput"];
                people_per_household: components["schemas"]["figureInput"] | null;
                pipedScheme_amount_per_person: components["schemas"]["figureInput"] | null;
                pipedScheme_amount_per_person_per_year: components["schemas"]["figureInput"] | null;
                pipedScheme_years: components["schemas"]["figureInput"] | null;
                porterLoad_kg: components["schemas"]["figureInput"];
                priceChange_fraction_per_year: components["schemas"]["figureInput"] | null;
                programme: string;
                pumping_h_per_day: components["schemas"]["figureInput"];
                range_fraction: components["schemas"]["figureInput"];
                recontamination_fraction: components["schemas"]["figureInput"] | null;
                residualHead_m: components["schemas"]["figureInput"];
                riverEnds_h: components["schemas"]["figureInput"];
                rolloutHorizon_days: components["schemas"]["figureInput"];
                rolloutStart: components["schemas"]["figureInput"] | null;
                roofSolids_g_per_m2_per_year: components["schemas"]["figureInput"] | null;
                roofTurbidity_NTU: components["schemas"]["figureInput"] | null;
                roofTurbidityHigh_NTU: components["schemas"]["figureInput"] | null;
                sampleAge_days: components["schemas"]["figureInput"];
                seed: components["schemas"]["figureInput"];
                settledTarget_fraction: components["schemas"]["figureInput"];
                settledTurbidity_fraction: components["schemas"]["figureInput"];
                settlingGrain_um: components["schemas"]["figureInput"];
                settlingGrainDensity_kg_per_m3: components["schemas"]["figureInput"];
                skipping_fraction: components["schemas"]["figureInput"] | null;
                standMargin_fraction: components["schemas"]["figureInput"];
                stormMargin_fraction: components["schemas"]["figureInput"];
                stormReturnPeriod_years: components["schemas"]["figureInput"];
                stoveEfficiency_fraction: components["schemas"]["figureInput"] | null;
                susceptibleToRotavirus_fraction: components["schemas"]["figureInput"];
                tapFlow_L_per_min: components["schemas"]["figureInput"];
                target: {
                    daysMet_fraction: components["schemas"]["figureInput"];
                    goodYears_fraction: components["schemas"]["figureInput"];
                    longestDryRun_days: components["schemas"]["figureInput"];
                };
                treatmentMargin_fraction: components["schemas"]["figureInput"];
                unitHead_m: components["schemas"]["figureInput"] | null;
                waitLimit_min: components["schemas"]["figureInput"];
                waterTemperature_C: components["schemas"]["figureInput"];
                waterYearStartMonth: components["schemas"]["figureInput"] | null;
                /** @enum {string} */
                wetDayAmounts: "gamma" | "mixedExponential";
                /** @enum {string} */
                windExposure: "builtUp" | "openGround" | "openWater";
                windSpeed_m_per_s: components["schemas"]["figureInput"] | null;
                workingService_fraction: components["schemas"]["figureInput"] | null;
                workingServiceHigh_fraction: components["schemas"]["figureInput"] | null;
                workingServiceLow_fraction: components["schemas"]["figureInput"] | null;
            };
            /** @description Days are counted from 1 January 1970; null is "not known". */
            site: {
                demand: {
                    judged: boolean;
                    litres_per_person_per_day: components["schemas"]["figureInput"];
                    months?: components["schemas"]["figureInput"][];
                    purpose: string;
                }[];
                designYear: components["schemas"]["figureInput"] | null;
                doubts: {
                    column?: string;
                    day?: string;
                    file?: string;
                    gaugeId?: string;
                    row?: components["schemas"]["figureInput"];
                    siteId?: string;
                }[];
                /** @description What puts one station of it in doubt. */
                doubtsBeside: {
                    drainage: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                    head: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                    safety: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                    settling: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                    stand: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                    treatment: {
                        column?: string;
                        day?: string;
                        file?: string;
                        gaugeId?: string;
                        row?: components["schemas"]["figureInput"];
                        siteId?: string;
                    }[];
                };
                downpipes: {
                    bore_mm: components["schemas"]["figureInput"] | null;
                    downpipeId: string;
                    isBuilt?: boolean;
                    length_m: components["schemas"]["figureInput"] | null;
                    roofId: string;
                }[];
                gaugeId: string | null;
                growthFraction_per_year: components["schemas"]["figureInput"] | null;
                gutters: {
                    baseWidth_mm: components["schemas"]["figureInput"] | null;
                    bends_count: components["schemas"]["figureInput"] | null;
                    depth_mm: components["schemas"]["figureInput"] | null;
                    fall_mm_per_m: components["schemas"]["figureInput"] | null;
                    gutterId: string;
                    isBuilt?: boolean;
                    length_m: components["schemas"]["figureInput"] | null;
                    outlet_mm: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    outletGrate: "open" | "grated";
                    outlets_count: components["schemas"]["figureInput"] | null;
                    roofId: string;
                    runToOutlet_m: components["schemas"]["figureInput"] | null;
                    shape: ("halfRound" | "rectangular" | "trapezoidal" | "cutPipe") | null;
                    width_mm: components["schemas"]["figureInput"] | null;
                }[];
                handOverDay: components["schemas"]["figureInput"] | null;
                hasHandPump: boolean | null;
                households_count: components["schemas"]["figureInput"] | null;
                latitude_deg: components["schemas"]["figureInput"] | null;
                longitude_deg: components["schemas"]["figureInput"] | null;
                name: string;
                nearSecondSource: {
                    /** @enum {string} */
                    kind: "river" | "spring" | "well" | "pond" | "vendor";
                    months: components["schemas"]["figureInput"][];
                    name: string;
                    secondSourceId: string;
                    turbidity_NTU: components["schemas"]["figureInput"] | null;
                } | null;
                people: components["schemas"]["figureInput"] | null;
                peopleCountedOn: components["schemas"]["figureInput"] | null;
                pipes: {
                    bore_mm: components["schemas"]["figureInput"] | null;
                    elbows_count: components["schemas"]["figureInput"] | null;
                    isBuilt?: boolean;
                    /** @enum {string} */
                    leg: "tankToUnit" | "unitToTap";
                    length_m: components["schemas"]["figureInput"] | null;
                    material: ("plastic" | "steel" | "galvanised" | "castIron") | null;
                    meters_count: components["schemas"]["figureInput"] | null;
                    otherLoss_k: components["schemas"]["figureInput"] | null;
                    pipeId: string;
                    tankId: string | null;
                    tees_count: components["schemas"]["figureInput"] | null;
                    valves_count: components["schemas"]["figureInput"] | null;
                }[];
                presence: {
                    calendarId: string;
                    periods: {
                        from_dayOfYear: components["schemas"]["figureInput"];
                        presentFraction: components["schemas"]["figureInput"];
                        reason: string | null;
                        to_dayOfYear: components["schemas"]["figureInput"];
                    }[];
                } | null;
                rainFactor: components["schemas"]["figureInput"];
                ration: {
                    below_fraction: components["schemas"]["figureInput"] | null;
                    judged_fraction: components["schemas"]["figureInput"] | null;
                    other_fraction: components["schemas"]["figureInput"] | null;
                } | null;
                roofs: {
                    coating: ("none" | "forDrinkingWater" | "unknownPaint" | "bitumen") | null;
                    diverter: {
                        chamber_L: components["schemas"]["figureInput"] | null;
                        chamberBore_mm: components["schemas"]["figureInput"] | null;
                        /** @enum {string} */
                        drainHole: "open" | "blocked";
                        drainHole_mm: components["schemas"]["figureInput"] | null;
                        firstFlush_mm: components["schemas"]["figureInput"] | null;
                    } | null;
                    eaveHeight_m: components["schemas"]["figureInput"] | null;
                    form: ("gable" | "oneSlope" | "hip" | "flat") | null;
                    gutteredFraction: components["schemas"]["figureInput"] | null;
                    hasAsbestos: boolean | null;
                    hasLead: boolean | null;
                    isFragile: boolean | null;
                    isUnderTrees: boolean | null;
                    length_m: components["schemas"]["figureInput"] | null;
                    material: ("corrugatedMetal" | "tile" | "concrete" | "fibreCement" | "shingle" | "thatch") | null;
                    pitch_deg: components["schemas"]["figureInput"] | null;
                    roofId: string;
                    roofPlanArea_m2: components["schemas"]["figureInput"] | null;
                    runoffFraction: components["schemas"]["figureInput"] | null;
                    tankId: string | null;
                    valleys_count: components["schemas"]["figureInput"] | null;
                    wallAbove_m2: components["schemas"]["figureInput"] | null;
                    width_m: components["schemas"]["figureInput"] | null;
                }[];
                safety: {
                    altitude_m: components["schemas"]["figureInput"] | null;
                    barriers: {
                        barrierId: string;
                        /** @enum {string} */
                        kind: "firstFlush" | "settling" | "storageTime" | "filter" | "ultraviolet" | "boiling" | "other";
                        reductions: {
                            bacteria_log10: components["schemas"]["figureInput"] | null;
                            evidence: ("challengeTest" | "credited" | "none") | null;
                            protozoa_log10: components["schemas"]["figureInput"] | null;
                            source: string | null;
                            viruses_log10: components["schemas"]["figureInput"] | null;
                        };
                        used_fraction: components["schemas"]["figureInput"] | null;
                    }[];
                    chlorination: {
                        active_fraction: components["schemas"]["figureInput"] | null;
                        baffling_fraction: components["schemas"]["figureInput"] | null;
                        batch_L: components["schemas"]["figureInput"] | null;
                        contact_min: components["schemas"]["figureInput"] | null;
                        dose_mg_per_L: components["schemas"]["figureInput"] | null;
                        pH: components["schemas"]["figureInput"] | null;
                        product: ("bleach" | "calciumHypochlorite" | "chlorinatedLime" | "tablets" | "other") | null;
                        residual_mg_per_L: components["schemas"]["figureInput"] | null;
                        stock_g_per_L: components["schemas"]["figureInput"] | null;
                        waterTemperature_C: components["schemas"]["figureInput"] | null;
                    } | null;
                    daysOff_per_year: components["schemas"]["figureInput"] | null;
                    inspections: {
                        by: string | null;
                        inspectedOn: components["schemas"]["figureInput"];
                        questions_count: components["schemas"]["figureInput"];
                        risks_count: components["schemas"]["figureInput"];
                    }[];
                    rawWater: {
                        high_per_L: components["schemas"]["figureInput"] | null;
                        low_per_L: components["schemas"]["figureInput"] | null;
                        /** @enum {string} */
                        pathogen: "campylobacter" | "rotavirus" | "cryptosporidium";
                        secondSourceId: string | null;
                        source: string | null;
                        typical_per_L: components["schemas"]["figureInput"];
                    }[];
                    skipping_fraction: components["schemas"]["figureInput"] | null;
                    tests: {
                        freeChlorine_mg_per_L: components["schemas"]["figureInput"] | null;
                        laboratory: string | null;
                        pH: components["schemas"]["figureInput"] | null;
                        /** @enum {string} */
                        point: "tank" | "tap" | "container" | "secondSource";
                        portions: {
                            colonies_count: components["schemas"]["figureInput"] | null;
                            /** @enum {string} */
                            kind: "tubes" | "plates";
                            portions_count: components["schemas"]["figureInput"];
                            positive_count: components["schemas"]["figureInput"] | null;
                            uncountable_count: components["schemas"]["figureInput"];
                            uncountableFrom_count: components["schemas"]["figureInput"] | null;
                            volume_mL: components["schemas"]["figureInput"];
                        }[];
                        takenOn: components["schemas"]["figureInput"];
                        testId: string;
                        turbidity_NTU: components["schemas"]["figureInput"] | null;
                        waterTemperature_C: components["schemas"]["figureInput"] | null;
                    }[];
                    unusableTests: {
                        at: {
                            column?: string;
                            day?: string;
                            file?: string;
                            gaugeId?: string;
                            row?: components["schemas"]["figureInput"];
                            siteId?: string;
                        };
                        /** @enum {string} */
                        because: "unread" | "dayToCome" | "portions";
                        point: ("tank" | "tap" | "container" | "secondSource") | null;
                        portions: {
                            colonies_count: components["schemas"]["figureInput"] | null;
                            /** @enum {string} */
                            kind: "tubes" | "plates";
                            portions_count: components["schemas"]["figureInput"];
                            positive_count: components["schemas"]["figureInput"] | null;
                            uncountable_count: components["schemas"]["figureInput"];
                            uncountableFrom_count: components["schemas"]["figureInput"] | null;
                            volume_mL: components["schemas"]["figureInput"];
                        }[];
                        testId: string;
                    }[];
                };
                secondSource: {
                    /** @enum {string} */
                    kind: "river" | "spring" | "well" | "pond" | "vendor";
                    months: components["schemas"]["figureInput"][];
                    name: string;
                    secondSourceId: string;
                    turbidity_NTU: components["schemas"]["figureInput"] | null;
                } | null;
                siteClass: string | null;
                siteId: string;
                tanks: {
                    baseWidth_m: components["schemas"]["figureInput"] | null;
                    cells_count: components["schemas"]["figureInput"] | null;
                    diameter_m: components["schemas"]["figureInput"] | null;
                    emptyMass_kg: components["schemas"]["figureInput"] | null;
                    groundClass: ("rock" | "softRock" | "denseGravel" | "looseGravel" | "denseSand" | "looseSand" | "silt" | "stiffClay" | "firmClay" | "softClay" | "softOrMadeGround") | null;
                    height_m: components["schemas"]["figureInput"] | null;
                    inletHeight_m: components["schemas"]["figureInput"] | null;
                    isBuilt?: boolean;
                    isFastened: boolean | null;
                    joinedTo: string | null;
                    nominal_L: components["schemas"]["figureInput"] | null;
                    outletHeight_m: components["schemas"]["figureInput"] | null;
                    overflowBore_mm: components["schemas"]["figureInput"] | null;
                    overflowHeight_m: components["schemas"]["figureInput"] | null;
                    overflows_count: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    overflowScreen: "open" | "screened";
                    pads_count: components["schemas"]["figureInput"] | null;
                    padSide_m: components["schemas"]["figureInput"] | null;
                    partId: string | null;
                    partMass_kg: components["schemas"]["figureInput"] | null;
                    partVolume_L: components["schemas"]["figureInput"] | null;
                    peopleFraction: components["schemas"]["figureInput"] | null;
                    /** @enum {string} */
                    role: "storage" | "settling";
                    signedBy: string | null;
                    signedOn: components["schemas"]["figureInput"] | null;
                    standHeight_m: components["schemas"]["figureInput"] | null;
                    standMass_kg: components["schemas"]["figureInput"] | null;
                    tankId: string;
                }[];
                tapHeight_m: components["schemas"]["figureInput"] | null;
                taps_count: components["schemas"]["figureInput"] | null;
                target: {
                    daysMet_fraction: components["schemas"]["figureInput"];
                    goodYears_fraction: components["schemas"]["figureInput"];
                    longestDryRun_days: components["schemas"]["figureInput"];
                } | null;
                treatment: {
                    cartridges: {
                        batch: string | null;
                        installedOn: components["schemas"]["figureInput"] | null;
                        partId: string | null;
                        reason: string | null;
                        removedOn: components["schemas"]["figureInput"] | null;
                        serial: string;
                        unitSerial: string | null;
                    }[];
                    flowReadings: {
                        flow_L_per_h: components["schemas"]["figureInput"];
                        passed_L: components["schemas"]["figureInput"] | null;
                        pressure_kPa: components["schemas"]["figureInput"] | null;
                        readOn: components["schemas"]["figureInput"];
                        unitSerial: string | null;
                        waterTemperature_C: components["schemas"]["figureInput"] | null;
                    }[];
                    pressureTests: {
                        airVolume_L: components["schemas"]["figureInput"] | null;
                        fall_kPa_per_min: components["schemas"]["figureInput"];
                        pressure_kPa: components["schemas"]["figureInput"];
                        testedOn: components["schemas"]["figureInput"];
                        unitSerial: string | null;
                    }[];
                    units: {
                        figures: {
                            backwash_fraction: components["schemas"]["figureInput"] | null;
                            backwash_min_per_day: components["schemas"]["figureInput"] | null;
                            cartridges_count: components["schemas"]["figureInput"] | null;
                            highestPressure_kPa: components["schemas"]["figureInput"] | null;
                            highestTurbidity_NTU: components["schemas"]["figureInput"] | null;
                            lever_ratio: components["schemas"]["figureInput"] | null;
                            lifeLimit_years: components["schemas"]["figureInput"] | null;
                            lowestFlow_L_per_h: components["schemas"]["figureInput"] | null;
                            membraneArea_m2: components["schemas"]["figureInput"] | null;
                            permeability_L_per_m2_h_bar: components["schemas"]["figureInput"] | null;
                            pistonBore_mm: components["schemas"]["figureInput"] | null;
                            pistonStroke_mm: components["schemas"]["figureInput"] | null;
                            pore_nm: components["schemas"]["figureInput"] | null;
                            ratedFlow_L_per_h: components["schemas"]["figureInput"] | null;
                            ratedLitres_L: components["schemas"]["figureInput"] | null;
                            ratedPressure_kPa: components["schemas"]["figureInput"] | null;
                            ratedTurbidity_NTU: components["schemas"]["figureInput"] | null;
                            reductions: {
                                bacteria_log10: components["schemas"]["figureInput"] | null;
                                evidence: ("challengeTest" | "credited" | "none") | null;
                                protozoa_log10: components["schemas"]["figureInput"] | null;
                                source: string | null;
                                viruses_log10: components["schemas"]["figureInput"] | null;
                            };
                        } | null;
                        installedOn: components["schemas"]["figureInput"] | null;
                        partId: string | null;
                        removedOn: components["schemas"]["figureInput"] | null;
                        serial: string;
                    }[];
                };
                unitHeight_m: components["schemas"]["figureInput"] | null;
                windExposure: ("builtUp" | "openGround" | "openWater") | null;
                windSpeed_m_per_s: components["schemas"]["figureInput"] | null;
            };
            /** @description The version of the programme now. */
            version: number;
            /** @description Of those, the ones that are to be made ready. */
            wantedGauges: string[];
        };
        siteInput: {
            /** @description Which cautions its work asks for. */
            cautions: {
                /** @enum {string} */
                caution: "height" | "fragileRoof" | "stand" | "lifting";
                said: string;
            }[];
            /** @description In the design year: those it is judged for. */
            design_people: number | null;
            /** @description Null where gutters and pipes are not judged. */
            drainage: components["schemas"]["drainageInput"] | null;
            /** @description The finding in a sentence or two. */
            finding: string;
            /** @description Of the tank that serves last; null where one never does. */
            firstService: {
                /** @description A day, YYYY-MM-DD. */
                firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                handOverDay: string;
                wait_days: number;
                /** @description The middle eight years in ten. */
                wait_days_range: {
                    high: number;
                    low: number;
                };
            } | null;
            gaugeId: string | null;
            /** @description The way to the taps, one for each body of water that is judged. */
            head: components["schemas"]["headInput"][];
            /** @description What is heaviest to carry; null where no part has a mass. */
            heaviestPiece: {
                /** @enum {string} */
                carriedBy: "one" | "two" | "more";
                /** @enum {string} */
                from: "site" | "catalogue";
                liftingIndex_factor: number;
                /** @description What one person may lift from the floor to a truck. */
                liftingLimit_kg: number;
                mass_kg: number;
                name: string;
                partId: string;
                said: string;
            } | null;
            name: string;
            /** @description As counted, or made from the households. */
            people: number | null;
            problems: components["schemas"]["problemInput"][];
            /** @description Null where the site is neither short nor tight. */
            remedies: {
                /** @description Stations that stay short, tight or unknown whatever is changed. */
                besides: ("roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup")[];
                /** @description The worst judged year, if it is left as it is. */
                leaveIt: {
                    dryDays: number;
                    longestRun_days: number;
                    /** @description Its first day; null: no day is dry, or the rain is made up. */
                    longestRunFrom: string | null;
                    /** @description The worst of so many judged years of made-up rain; null: measured rain. */
                    ofMadeYears: number | null;
                    shortfall_L: number;
                    /** @description Where it is told of some of the tanks; null: of all. */
                    tankIds: string[] | null;
                    waterYear: number;
                } | null;
                /** @description Why none makes it hold; null where one does. */
                notMended: ("assumed" | "growth" | "roofSize" | "madeRain" | "record" | "noTanks" | "tank" | "water" | "apart" | "drainage" | "head" | "settling" | "stand" | "treatment" | "safety" | "facts") | null;
                peopleCarried: {
                    carried_people: number;
                    others_people: number;
                    /**
                     * @description What the site is with so many.
                     * @enum {string}
                     */
                    verdict: "holds" | "tight";
                } | null;
                /** @description The first is the smallest change that mends it. */
                ranked: components["schemas"]["remedyInput"][];
                /** @description What has to be known of the stations left out, each in a sentence. */
                said: string[];
            } | null;
            /** @description Whether its water is fit to drink; null where that is not judged. */
            safety: components["schemas"]["safetyInput"] | null;
            /** @description Only where a scenario is asked for. Null: not known. */
            scenario?: {
                dryDays_per_year: number | null;
                finding: string;
                goodYears: number | null;
                judgedYears: number | null;
                longestRun_days: number | null;
                /** @description Smallest tank for the target, without the second source. */
                tankForTarget_L: number | null;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                verdict: "holds" | "tight" | "short" | "unknown";
            };
            /** @description One for each body of water; none where facts are missing. */
            series?: components["schemas"]["seriesInput"][];
            /** @description One for each settling tank that is judged. */
            settling: components["schemas"]["settlingInput"][];
            siteClass: string | null;
            siteId: string;
            /** @description closed: a tank on a stand is not to be filled or handed over before it is signed for. No verdict. */
            standGate: {
                /** @enum {string} */
                gate: "notNeeded" | "closed" | "open";
                said: string;
            };
            /** @description One for each tank whose stand or ground is judged, the worst first. */
            stands: components["schemas"]["standInput"][];
            stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            /** @description One for each body of water people draw from, the worst first; none where facts are missing: the blockers say which. */
            storages: components["schemas"]["storageInput"][];
            /** @description What it was judged by. */
            target: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            };
            /**
             * @description Whose target that is.
             * @enum {string}
             */
            targetFrom: "programme" | "class";
            /** @description Whether the treatment keeps up, one for each unit that is judged. */
            treatment: components["schemas"]["treatmentInput"][];
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description When the cartridges are due, one for each unit in use; null: not worked out. */
            wear: components["schemas"]["wearInput"][] | null;
            working: components["schemas"]["workingLineInput"][];
        };
        siteKit: {
            beside: {
                boiling: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
                boughtWater: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
                pipedScheme: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLine"][];
                };
            };
            carried: {
                cannotCarry: {
                    count: number;
                    each_count: number;
                    name: string;
                    over_kg: number | null;
                    over_L: number | null;
                    over_m: number | null;
                    partId: string;
                }[];
                carrierId: string;
                cautions: ("lifting" | "lifeVests" | "localSkipperDecides" | "freeboardMark" | "nobodyOnLoad" | "lashed" | "dangerApart")[];
                isLeast: boolean;
                leastLoads_count: number | null;
                /** @description Of a load of several pieces; null: nobody stated it, and there is no load. */
                limit_kg: number | null;
                loads: {
                    bulk_L: number | null;
                    /** @enum {string} */
                    carriedBy: "one" | "two" | "carrier";
                    isFragile: boolean;
                    longest_m: number | null;
                    mass_kg: number;
                    pieces: {
                        count: number;
                        each_count: number;
                        name: string;
                        partId: string;
                    }[];
                }[];
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
                noMass: {
                    count: number;
                    each_count: number;
                    name: string;
                    partId: string;
                }[];
                problems: components["schemas"]["problem"][];
            }[];
            carriers: {
                carrierId: string;
                freeboard_cm: number | null;
                freeboardEmpty_cm: number | null;
                leastFreeboard_cm: number | null;
                limit_kg: number | null;
                limitSetBy: string | null;
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            cost: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costProblems: components["schemas"]["problem"][];
            costWorking: components["schemas"]["workingLine"][];
            currency: string | null;
            designVersion: number | null;
            handOver: string | null;
            isBuilt: boolean;
            kitsIn: {
                carrierId: string;
                kits_count: number | null;
                limitedBy: ("mass" | "bulk" | "longest" | "keptApart") | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            lines: {
                countedBy: ("site" | "person" | "household" | "roof" | "gutter" | "gutterMetre" | "gutterOutlet" | "gutterBend" | "gutterJoint" | "downpipe" | "downpipeMetre" | "diverter" | "tank" | "settlingTank" | "overflow" | "stand" | "standPad" | "pipe" | "pipeMetre" | "pipeJoint" | "elbow" | "tee" | "valve" | "meter" | "tap" | "unit" | "cartridgeSet" | "cartridge")[];
                /** @enum {string} */
                countedIn: "piece" | "m" | "kg" | "L";
                cuts: {
                    bar_m: number | null;
                    bars: {
                        bars_count: number;
                        cuts: {
                            length_m: number;
                            runId: string;
                        }[];
                        offcut_m: number;
                    }[];
                    bars_count: number;
                    bound_count: number;
                    joints_count: number;
                } | null;
                /** @enum {string} */
                from: "rule" | "named";
                isAtLeast: boolean;
                kind: string;
                name: string;
                needed_count: number | null;
                partId: string;
                price: {
                    amount: number;
                    currency: string;
                } | null;
                ruleIds: string[];
                spare_count: number | null;
                total_count: number | null;
                working: components["schemas"]["workingLine"][];
            }[];
            mass_kg: number;
            name: string | null;
            noMass_count: number;
            people: number | null;
            pricesOn: string | null;
            problems: components["schemas"]["problem"][];
            siteId: string;
            /** @description Grows with every change. */
            version: number;
        };
        siteKitInput: {
            beside: {
                boiling: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
                boughtWater: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
                pipedScheme: {
                    missing: string[];
                    perPersonYear_amount: number | null;
                    working: components["schemas"]["workingLineInput"][];
                };
            };
            carried: {
                cannotCarry: {
                    count: number;
                    each_count: number;
                    name: string;
                    over_kg: number | null;
                    over_L: number | null;
                    over_m: number | null;
                    partId: string;
                }[];
                carrierId: string;
                cautions: ("lifting" | "lifeVests" | "localSkipperDecides" | "freeboardMark" | "nobodyOnLoad" | "lashed" | "dangerApart")[];
                isLeast: boolean;
                leastLoads_count: number | null;
                /** @description Of a load of several pieces; null: nobody stated it, and there is no load. */
                limit_kg: number | null;
                loads: {
                    bulk_L: number | null;
                    /** @enum {string} */
                    carriedBy: "one" | "two" | "carrier";
                    isFragile: boolean;
                    longest_m: number | null;
                    mass_kg: number;
                    pieces: {
                        count: number;
                        each_count: number;
                        name: string;
                        partId: string;
                    }[];
                }[];
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
                noMass: {
                    count: number;
                    each_count: number;
                    name: string;
                    partId: string;
                }[];
                problems: components["schemas"]["problemInput"][];
            }[];
            carriers: {
                carrierId: string;
                freeboard_cm: number | null;
                freeboardEmpty_cm: number | null;
                leastFreeboard_cm: number | null;
                limit_kg: number | null;
                limitSetBy: string | null;
                longest_m: number | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            cost: {
                currency: string;
                /** @description Prices are of this day. */
                day: string;
                design_people: number | null;
                heads: {
                    /** @enum {string} */
                    head: "capExHardware" | "capExSoftware" | "opEx" | "capManEx" | "directSupport" | "indirectSupport" | "costOfCapital";
                    known_amount: number;
                    least_amount: number;
                    most_amount: number;
                    perYear_amount: number | null;
                    reasons: string[];
                }[];
                /** @description Something is not known, so that every sum is at least so much. */
                isAtLeast: boolean;
                perDesignPerson_amount: number | null;
                /** @description For each person and year of working service. */
                perPersonYear_amount: number | null;
                perPersonYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                } | null;
                perYear_amount: number;
                perYearSpread_amount: {
                    p10: number;
                    p50: number;
                    p90: number;
                };
                presentValue_amount: number | null;
                /** @description With working service, in the mean of the years. */
                served_people: number | null;
                swings: {
                    high: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    inputId: string;
                    low: {
                        perPersonYear_amount: number | null;
                        perYear_amount: number;
                        served_people: number | null;
                    };
                    what: string | null;
                }[];
                total_amount: number;
                years_count: number;
            } | null;
            costProblems: components["schemas"]["problemInput"][];
            costWorking: components["schemas"]["workingLineInput"][];
            currency: string | null;
            designVersion: number | null;
            handOver: string | null;
            isBuilt: boolean;
            kitsIn: {
                carrierId: string;
                kits_count: number | null;
                limitedBy: ("mass" | "bulk" | "longest" | "keptApart") | null;
                /** @enum {string} */
                mode: "person" | "twoPeople" | "boat" | "truck" | "pallet" | "shippingContainer";
                name: string;
            }[];
            lines: {
                countedBy: ("site" | "person" | "household" | "roof" | "gutter" | "gutterMetre" | "gutterOutlet" | "gutterBend" | "gutterJoint" | "downpipe" | "downpipeMetre" | "diverter" | "tank" | "settlingTank" | "overflow" | "stand" | "standPad" | "pipe" | "pipeMetre" | "pipeJoint" | "elbow" | "tee" | "valve" | "meter" | "tap" | "unit" | "cartridgeSet" | "cartridge")[];
                /** @enum {string} */
                countedIn: "piece" | "m" | "kg" | "L";
                cuts: {
                    bar_m: number | null;
                    bars: {
                        bars_count: number;
                        cuts: {
                            length_m: number;
                            runId: string;
                        }[];
                        offcut_m: number;
                    }[];
                    bars_count: number;
                    bound_count: number;
                    joints_count: number;
                } | null;
                /** @enum {string} */
                from: "rule" | "named";
                isAtLeast: boolean;
                kind: string;
                name: string;
                needed_count: number | null;
                partId: string;
                price: {
                    amount: number;
                    currency: string;
                } | null;
                ruleIds: string[];
                spare_count: number | null;
                total_count: number | null;
                working: components["schemas"]["workingLineInput"][];
            }[];
            mass_kg: number;
            name: string | null;
            noMass_count: number;
            people: number | null;
            pricesOn: string | null;
            problems: components["schemas"]["problemInput"][];
            siteId: string;
            /** @description Grows with every change. */
            version: number;
        };
        siteShort: {
            /** @description The figure of the worst station, where that is not the tank and it is short or tight. */
            decides: {
                /** @enum {string} */
                figure: "gutter" | "outlet" | "downpipe" | "overflow" | "settledByDay" | "settledInStorm" | "bearing" | "wind" | "fastening" | "headLeft" | "pumpPower" | "hoursNeeded" | "hoursNeededWorn" | "lastWait" | "lastWaitWorn" | "germs" | "lostYears";
                /** @description The gutter, the downpipe, the tank, the unit, the sample or the germ. */
                id: string;
                /** @description What the part carries, the ground takes, or is wanted. */
                limit: number | null;
                range: {
                    high: number;
                    low: number;
                } | null;
                /** @enum {string} */
                station: "roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup";
                unit: string;
                value: number;
            } | null;
            /** @description In the design year: those it is judged for. */
            design_people: number | null;
            /** @description Null where the site has no verdict. */
            figures: {
                /** @description The assumption that keeps it from holding: the code of its problem. */
                cappedBy: string | null;
                /** @description Good years among as many coming years as were judged. */
                comingGood_years_range: {
                    high: number;
                    low: number;
                };
                /** @description To a tenth. */
                dryDays_per_year: number;
                /** @description To a tenth. */
                dryDays_per_year_range: {
                    high: number;
                    low: number;
                };
                /** @description What the share of days of the target comes to, to a tenth. */
                dryDaysAllowed_per_year: number;
                goodYears: number;
                goodYearsNeeded: number;
                /** @description Is the share of days of the target met? */
                isDaysMet: boolean;
                judgedYears: number;
                /** @description What keeps it short. */
                lacks: ("tank" | "water" | "ration") | null;
                longestRun_days: number | null;
                /** @description Bodies of water; the figures are of the one that is worst off. */
                storages_count: number;
                tankVolume_L: number;
            } | null;
            /** @description The finding in a sentence or two. */
            finding: string;
            /** @description Is it known how hard it may rain there? */
            hasStorm: boolean;
            /** @description Must its water not be drunk as it is? It is told before any other reason. */
            isNotToDrink: boolean;
            latitude_deg: number | null;
            longitude_deg: number | null;
            name: string;
            /** @description Why no change mends it, in words. */
            notMended: string | null;
            /** @description As counted, or made from the households. */
            people: number | null;
            /** @description The smallest change that mends it; null where none does or none is needed. */
            remedy: {
                /** @description The changes in words. */
                about: string;
                /** @description Of the parts alone; null where it is not known: noCost says why. */
                amount: number | null;
                currency: string | null;
                noCost: string | null;
                /** @description 0: what was promised is kept. */
                promiseCut_count: number;
                /** @description The changes, what it is then, and the cost, in a sentence. */
                sentence: string;
                /**
                 * @description What it is then.
                 * @enum {string}
                 */
                verdict: "holds" | "tight";
            } | null;
            siteClass: string | null;
            siteId: string;
            /**
             * @description Apart from the verdict. closed: not to be filled or handed over.
             * @enum {string}
             */
            standGate: "notNeeded" | "closed" | "open";
            stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            target: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            };
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description People times dry days a year: the order within a verdict. */
            weight: number;
            /** @description What keeps it, or its worst station, from a verdict, in words; null where nothing does. */
            withheldBy: string | null;
        };
        siteShortInput: {
            /** @description The figure of the worst station, where that is not the tank and it is short or tight. */
            decides: {
                /** @enum {string} */
                figure: "gutter" | "outlet" | "downpipe" | "overflow" | "settledByDay" | "settledInStorm" | "bearing" | "wind" | "fastening" | "headLeft" | "pumpPower" | "hoursNeeded" | "hoursNeededWorn" | "lastWait" | "lastWaitWorn" | "germs" | "lostYears";
                /** @description The gutter, the downpipe, the tank, the unit, the sample or the germ. */
                id: string;
                /** @description What the part carries, the ground takes, or is wanted. */
                limit: number | null;
                range: {
                    high: number;
                    low: number;
                } | null;
                /** @enum {string} */
                station: "roof" | "gutter" | "settling" | "storage" | "stand" | "treatmentUnit" | "tap" | "cup";
                unit: string;
                value: number;
            } | null;
            /** @description In the design year: those it is judged for. */
            design_people: number | null;
            /** @description Null where the site has no verdict. */
            figures: {
                /** @description The assumption that keeps it from holding: the code of its problem. */
                cappedBy: string | null;
                /** @description Good years among as many coming years as were judged. */
                comingGood_years_range: {
                    high: number;
                    low: number;
                };
                /** @description To a tenth. */
                dryDays_per_year: number;
                /** @description To a tenth. */
                dryDays_per_year_range: {
                    high: number;
                    low: number;
                };
                /** @description What the share of days of the target comes to, to a tenth. */
                dryDaysAllowed_per_year: number;
                goodYears: number;
                goodYearsNeeded: number;
                /** @description Is the share of days of the target met? */
                isDaysMet: boolean;
                judgedYears: number;
                /** @description What keeps it short. */
                lacks: ("tank" | "water" | "ration") | null;
                longestRun_days: number | null;
                /** @description Bodies of water; the figures are of the one that is worst off. */
                storages_count: number;
                tankVolume_L: number;
            } | null;
            /** @description The finding in a sentence or two. */
            finding: string;
            /** @description Is it known how hard it may rain there? */
            hasStorm: boolean;
            /** @description Must its water not be drunk as it is? It is told before any other reason. */
            isNotToDrink: boolean;
            latitude_deg: number | null;
            longitude_deg: number | null;
            name: string;
            /** @description Why no change mends it, in words. */
            notMended: string | null;
            /** @description As counted, or made from the households. */
            people: number | null;
            /** @description The smallest change that mends it; null where none does or none is needed. */
            remedy: {
                /** @description The changes in words. */
                about: string;
                /** @description Of the parts alone; null where it is not known: noCost says why. */
                amount: number | null;
                currency: string | null;
                noCost: string | null;
                /** @description 0: what was promised is kept. */
                promiseCut_count: number;
                /** @description The changes, what it is then, and the cost, in a sentence. */
                sentence: string;
                /**
                 * @description What it is then.
                 * @enum {string}
                 */
                verdict: "holds" | "tight";
            } | null;
            siteClass: string | null;
            siteId: string;
            /**
             * @description Apart from the verdict. closed: not to be filled or handed over.
             * @enum {string}
             */
            standGate: "notNeeded" | "closed" | "open";
            stations: {
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                cup: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                gutter: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                roof: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                settling: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                stand: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                storage: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                tap: "holds" | "tight" | "short" | "unknown" | "notJudged";
                /**
                 * @description A station not modelled yet is notJudged and does not count.
                 * @enum {string}
                 */
                treatmentUnit: "holds" | "tight" | "short" | "unknown" | "notJudged";
            };
            target: {
                daysMet_fraction: number;
                goodYears_fraction: number;
                longestDryRun_days: number;
            };
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            /** @description People times dry days a year: the order within a verdict. */
            weight: number;
            /** @description What keeps it, or its worst station, from a verdict, in words; null where nothing does. */
            withheldBy: string | null;
        };
        siteYears: {
            /** @description Dry days of each year; of several bodies of water the most. */
            dryDays: (number | null)[];
            /** @description The calendar year in which the first water year ends. */
            firstYear: number;
            /** @description Of made-up rain: its years are none of the calendar. */
            isMade: boolean;
            /** @description The longest dry run its target allows. */
            limit_days: number;
            /** @description The longest dry run reached within each year, days before it included; null where the year is not judged. Of several bodies of water the longest. */
            longestRun_days: (number | null)[];
        };
        siteYearsInput: {
            /** @description Dry days of each year; of several bodies of water the most. */
            dryDays: (number | null)[];
            /** @description The calendar year in which the first water year ends. */
            firstYear: number;
            /** @description Of made-up rain: its years are none of the calendar. */
            isMade: boolean;
            /** @description The longest dry run its target allows. */
            limit_days: number;
            /** @description The longest dry run reached within each year, days before it included; null where the year is not judged. Of several bodies of water the longest. */
            longestRun_days: (number | null)[];
        };
        /** @description Screening sums, no structural design: the caution `stand` is shown wherever they are. */
        stand: {
            bearing_kPa: number | null;
            /** @description The lowest of the listings for its class of ground. */
            bearingAllowed_kPa: number | null;
            bearingUse_factor: number | null;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description How many times the push of the wind could grow before it tips or slides; null: not known. */
            empty: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            };
            /** @description How many times the push of the wind could grow before it tips or slides; null: not known. */
            full: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            };
            /** @description What it fails by. */
            lacks: ("bearing" | "overturning" | "sliding" | "fastening")[];
            /** @description Water that would keep it standing; null: none would, or not known. */
            leastHeld_L: number | null;
            /** @description The empty tank alone on its stand; null on the ground. */
            loose: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            } | null;
            /** @description Tank and stand. */
            massEmpty_kg: number | null;
            massFull_kg: number | null;
            /** @description To its rim, or what is written on it where that is more. */
            mostHeld_L: number | null;
            said: string;
            standHeight_m: number | null;
            tankId: string;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            windForce_N: number | null;
            windSpeed_m_per_s: number | null;
        };
        /** @description Screening sums, no structural design: the caution `stand` is shown wherever they are. */
        standInput: {
            bearing_kPa: number | null;
            /** @description The lowest of the listings for its class of ground. */
            bearingAllowed_kPa: number | null;
            bearingUse_factor: number | null;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description How many times the push of the wind could grow before it tips or slides; null: not known. */
            empty: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            };
            /** @description How many times the push of the wind could grow before it tips or slides; null: not known. */
            full: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            };
            /** @description What it fails by. */
            lacks: ("bearing" | "overturning" | "sliding" | "fastening")[];
            /** @description Water that would keep it standing; null: none would, or not known. */
            leastHeld_L: number | null;
            /** @description The empty tank alone on its stand; null on the ground. */
            loose: {
                overturning_factor: number | null;
                sliding_factor: number | null;
            } | null;
            /** @description Tank and stand. */
            massEmpty_kg: number | null;
            massFull_kg: number | null;
            /** @description To its rim, or what is written on it where that is more. */
            mostHeld_L: number | null;
            said: string;
            standHeight_m: number | null;
            tankId: string;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            windForce_N: number | null;
            windSpeed_m_per_s: number | null;
        };
        storage: {
            /** @description Days on which judged litres are asked, in a mean judged year. */
            askedDays_per_year: number;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Smallest of sizes that meets the target, where no exact size is known; without the second source. */
            catalogueForTarget_L: number | null;
            /** @description Smallest of the catalogue that holds, where no exact size is known; without the second source. */
            catalogueToHold_L: number | null;
            /** @description Good years among as many coming years as were judged. */
            comingGood_years_range: {
                high: number;
                low: number;
            };
            daysMet_fraction: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            daysMet_fraction_range: {
                high: number;
                low: number;
            };
            dryDays_per_year: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            dryDays_per_year_range: {
                high: number;
                low: number;
            };
            /** @description Longest first, at most ten. */
            dryRuns: {
                days: number;
                /** @description A day, YYYY-MM-DD. */
                from: string;
                /** @description A day, YYYY-MM-DD. */
                to: string;
                waterYear: number;
            }[];
            firstService: {
                /** @description A day, YYYY-MM-DD. */
                firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                handOverDay: string;
                wait_days: number;
                /** @description The middle eight years in ten. */
                wait_days_range: {
                    high: number;
                    low: number;
                };
            } | null;
            goodYears: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            goodYears_fraction_range: {
                high: number;
                low: number;
            };
            goodYearsNeeded: number;
            inflow_L_per_year: number;
            /** @description This tank with nothing asked but the judged litres, where it is short. */
            judgedAlone: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            } | null;
            /** @description Mean over the days of the year. */
            judgedDemand_L_per_day: number;
            /** @description Of the day that asks for most. */
            judgedDemandHighest_L_per_day: number;
            judgedYears: number;
            /** @description What keeps it short, the second source left out; null where it meets the target. */
            lacks: ("tank" | "water" | "ration") | null;
            longestRun: {
                days: number;
                /** @description A day, YYYY-MM-DD. */
                from: string;
                /** @description A day, YYYY-MM-DD. */
                to: string;
                waterYear: number;
            } | null;
            /** @description Why no exact smallest tank is known: each size was run on its own. Null where every size is known. */
            noExactSize: ("order" | "ration") | null;
            /**
             * @description The order of each day.
             * @enum {string}
             */
            order: "drawFirst" | "yas" | "ybs";
            otherDemand_L_per_day: number;
            /** @description Days on which other purposes were short, in a mean year. */
            otherShortDays_per_year: number;
            /** @description Who draw from it. */
            people: number;
            /** @description What is given while less than the mark is in the tank; null: all that is asked. */
            ration: {
                below_fraction: number;
                judged_fraction: number;
                other_fraction: number;
            } | null;
            /** @description Days on which the ration was in force; those that cut the judged litres are dry days too. */
            rationedDays_per_year: number | null;
            secondSource: {
                aloneDryDays_per_year: number;
                aloneGoodYears: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                aloneVerdict: "holds" | "tight" | "short" | "unknown";
                /** @description The same of each judged year of the record. */
                days_by_year: number[];
                /** @description Days on which judged litres come from it; they are not dry. */
                days_per_year: number;
                given_L_per_year: number;
                /** @enum {string} */
                kind: "river" | "spring" | "well" | "pond" | "vendor";
                name: string;
                secondSourceId: string;
            } | null;
            /** @description Judged litres short in a mean year. */
            shortfall_L_per_year: number;
            /** @description The catalogue's tanks and this one, by size, without the second source. */
            sizes: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            }[];
            /** @description Smallest tank for the share of days, without the second source; null: no tank would do, or noExactSize. */
            tankForDays_L: number | null;
            /** @description Smallest tank for the dry runs, without the second source; null: no tank would do, or noExactSize. */
            tankForRuns_L: number | null;
            /** @description Smallest tank for both, without the second source; null: no tank would do, or noExactSize. */
            tankForTarget_L: number | null;
            /** @description A tank, or tanks joined at the foot. */
            tankIds: string[];
            /** @description Smallest tank that would hold, without the second source; null: this one does, or none would. */
            tankToHold_L: number | null;
            tankVolume_L: number;
            /** @description This tank with nothing rationed; null where nothing is. */
            unrationed: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            } | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            years: {
                dryDays: number;
                /** @description Days that were not measured. */
                filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                firstDay: string;
                judged: boolean;
                longestRun_days: number;
                /** @description The calendar year it ends in. */
                waterYear: number;
            }[];
            /** @description The generous end: rain is let in before people draw. */
            yieldBeforeSpill: {
                dryDays_per_year: number;
                goodYears: number;
            };
        };
        storageInput: {
            /** @description Days on which judged litres are asked, in a mean judged year. */
            askedDays_per_year: number;
            /** @description The assumption that keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description Smallest of sizes that meets the target, where no exact size is known; without the second source. */
            catalogueForTarget_L: number | null;
            /** @description Smallest of the catalogue that holds, where no exact size is known; without the second source. */
            catalogueToHold_L: number | null;
            /** @description Good years among as many coming years as were judged. */
            comingGood_years_range: {
                high: number;
                low: number;
            };
            daysMet_fraction: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            daysMet_fraction_range: {
                high: number;
                low: number;
            };
            dryDays_per_year: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            dryDays_per_year_range: {
                high: number;
                low: number;
            };
            /** @description Longest first, at most ten. */
            dryRuns: {
                days: number;
                /** @description A day, YYYY-MM-DD. */
                from: string;
                /** @description A day, YYYY-MM-DD. */
                to: string;
                waterYear: number;
            }[];
            firstService: {
                /** @description A day, YYYY-MM-DD. */
                firstServiceDay: string;
                /** @description A day, YYYY-MM-DD. */
                handOverDay: string;
                wait_days: number;
                /** @description The middle eight years in ten. */
                wait_days_range: {
                    high: number;
                    low: number;
                };
            } | null;
            goodYears: number;
            /** @description The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction. */
            goodYears_fraction_range: {
                high: number;
                low: number;
            };
            goodYearsNeeded: number;
            inflow_L_per_year: number;
            /** @description This tank with nothing asked but the judged litres, where it is short. */
            judgedAlone: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            } | null;
            /** @description Mean over the days of the year. */
            judgedDemand_L_per_day: number;
            /** @description Of the day that asks for most. */
            judgedDemandHighest_L_per_day: number;
            judgedYears: number;
            /** @description What keeps it short, the second source left out; null where it meets the target. */
            lacks: ("tank" | "water" | "ration") | null;
            longestRun: {
                days: number;
                /** @description A day, YYYY-MM-DD. */
                from: string;
                /** @description A day, YYYY-MM-DD. */
                to: string;
                waterYear: number;
            } | null;
            /** @description Why no exact smallest tank is known: each size was run on its own. Null where every size is known. */
            noExactSize: ("order" | "ration") | null;
            /**
             * @description The order of each day.
             * @enum {string}
             */
            order: "drawFirst" | "yas" | "ybs";
            otherDemand_L_per_day: number;
            /** @description Days on which other purposes were short, in a mean year. */
            otherShortDays_per_year: number;
            /** @description Who draw from it. */
            people: number;
            /** @description What is given while less than the mark is in the tank; null: all that is asked. */
            ration: {
                below_fraction: number;
                judged_fraction: number;
                other_fraction: number;
            } | null;
            /** @description Days on which the ration was in force; those that cut the judged litres are dry days too. */
            rationedDays_per_year: number | null;
            secondSource: {
                aloneDryDays_per_year: number;
                aloneGoodYears: number;
                /**
                 * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
                 * @enum {string}
                 */
                aloneVerdict: "holds" | "tight" | "short" | "unknown";
                /** @description The same of each judged year of the record. */
                days_by_year: number[];
                /** @description Days on which judged litres come from it; they are not dry. */
                days_per_year: number;
                given_L_per_year: number;
                /** @enum {string} */
                kind: "river" | "spring" | "well" | "pond" | "vendor";
                name: string;
                secondSourceId: string;
            } | null;
            /** @description Judged litres short in a mean year. */
            shortfall_L_per_year: number;
            /** @description The catalogue's tanks and this one, by size, without the second source. */
            sizes: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            }[];
            /** @description Smallest tank for the share of days, without the second source; null: no tank would do, or noExactSize. */
            tankForDays_L: number | null;
            /** @description Smallest tank for the dry runs, without the second source; null: no tank would do, or noExactSize. */
            tankForRuns_L: number | null;
            /** @description Smallest tank for both, without the second source; null: no tank would do, or noExactSize. */
            tankForTarget_L: number | null;
            /** @description A tank, or tanks joined at the foot. */
            tankIds: string[];
            /** @description Smallest tank that would hold, without the second source; null: this one does, or none would. */
            tankToHold_L: number | null;
            tankVolume_L: number;
            /** @description This tank with nothing rationed; null where nothing is. */
            unrationed: {
                dryDays_per_year: number;
                goodYears: number;
                meetsTarget: boolean;
                partId: string | null;
                tankVolume_L: number;
            } | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            years: {
                dryDays: number;
                /** @description Days that were not measured. */
                filledDays: number;
                /** @description A day, YYYY-MM-DD. */
                firstDay: string;
                judged: boolean;
                longestRun_days: number;
                /** @description The calendar year it ends in. */
                waterYear: number;
            }[];
            /** @description The generous end: rain is let in before people draw. */
            yieldBeforeSpill: {
                dryDays_per_year: number;
                goodYears: number;
            };
        };
        storm: {
            /** @description The assumption that keeps what is judged by it from holding. */
            cappedBy: string | null;
            /**
             * @description stated, by coefficients, from short intervals, or from the wettest days and a stated share of them.
             * @enum {string}
             */
            from: "stated" | "coefficients" | "shortRecord" | "dailyMaxima";
            /** @description The gauge it is of: another within reach where nothing is said of storms at this one. */
            gaugeId: string;
            intensity_mm_per_h: number;
            /** @description In mm/h. Null where none is stated: stormMargin_fraction stands for it. */
            intensity_range: {
                high: number;
                low: number;
            } | null;
            returnPeriod_years: number;
            said: string;
            /** @description Who says so; null where that is not said. */
            source: string | null;
            /** @description Years of maxima it was fitted to. */
            years_count: number | null;
        };
        stormInput: {
            /** @description The assumption that keeps what is judged by it from holding. */
            cappedBy: string | null;
            /**
             * @description stated, by coefficients, from short intervals, or from the wettest days and a stated share of them.
             * @enum {string}
             */
            from: "stated" | "coefficients" | "shortRecord" | "dailyMaxima";
            /** @description The gauge it is of: another within reach where nothing is said of storms at this one. */
            gaugeId: string;
            intensity_mm_per_h: number;
            /** @description In mm/h. Null where none is stated: stormMargin_fraction stands for it. */
            intensity_range: {
                high: number;
                low: number;
            } | null;
            returnPeriod_years: number;
            said: string;
            /** @description Who says so; null where that is not said. */
            source: string | null;
            /** @description Years of maxima it was fitted to. */
            years_count: number | null;
        };
        task: {
            begunAt: string;
            done_fraction: number;
            importId: string | null;
            /** @enum {string} */
            kind: "import" | "export" | "design" | "rollout";
            name: string | null;
            programmeId: string | null;
            /**
             * @description cutOff: it ran when the program ended, and nothing of it counts.
             * @enum {string}
             */
            state: "running" | "done" | "cancelled" | "failed" | "cutOff";
            taskId: string;
        };
        taskInput: {
            begunAt: string;
            done_fraction: number;
            importId: string | null;
            /** @enum {string} */
            kind: "import" | "export" | "design" | "rollout";
            name: string | null;
            programmeId: string | null;
            /**
             * @description cutOff: it ran when the program ended, and nothing of it counts.
             * @enum {string}
             */
            state: "running" | "done" | "cancelled" | "failed" | "cutOff";
            taskId: string;
        };
        treatment: {
            /** @description Its share, on the day that asks for most. */
            asked_L_per_day: number | null;
            backwash_min_per_day: number | null;
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description rated: at its rated pressure, because none is known. */
            drive: ("gravity" | "handPump" | "rated") | null;
            /** @description In a few sentences. Whether it keeps up, not whether its water is fit to drink. */
            finding: string;
            /** @description At that pressure and temperature, with a new set. */
            flowClean_L_per_h: number | null;
            /** @description By the last reading that can be used; as new where there is none. */
            flowNow_L_per_h: number | null;
            /** @description With a set that is due to be changed. */
            flowWorn_L_per_h: number | null;
            /** @description At the handle; null where the piston is not known. */
            handForce_N: number | null;
            /** @description As the set is now. */
            hoursNeeded_h: number | null;
            hoursNeededWorn_h: number | null;
            /** @description If people came one by one at random, as a check; null where the line has no end. */
            meanWait_min: number | null;
            partId: string | null;
            /** @description The line at the taps in the two hours that most people come in. */
            peaks: {
                asked_L: number;
                /** @description What the last in line waits, as the set is now; null where the line has no end that day. */
                lastWait_min: number | null;
                /** @description The same when the set is worn. */
                lastWaitWorn_min: number | null;
                /** @enum {string} */
                peak: "morning" | "evening";
                /** @description What unit and taps give in that hour, as the set is now. */
                possible_L: number;
            }[];
            /** @description Across its membranes. */
            pressure_kPa: number | null;
            pressureTest: {
                /** @description A faster fall no longer supports what is claimed of protozoa. */
                fallLimit_kPa_per_min: number | null;
                pressure_kPa: number;
                /** @description The smallest hole that lets air through at that pressure. */
                smallestSeen_um: number;
                /** @description Log reduction of what is larger than such a hole that the fall supports. */
                supports_log10: number | null;
                /** @description A day, YYYY-MM-DD. */
                testedOn: string;
            } | null;
            /** @description What the one who pumps gives; null where there is no hand pump. */
            pumpPower_W: number | null;
            /** @description Over that of a clean set; null where nothing was read. */
            resistanceNow_ratio: number | null;
            /** @description Null where a site that is to be judged has no unit. */
            serial: string | null;
            strokes_per_min: number | null;
            /** @description With what goes back through it to clean it. */
            treated_L_per_day: number | null;
            /** @description Head it takes at the flow of all its taps, clean. */
            unitHead_m: number | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            waterTemperature_C: number;
        };
        treatmentInput: {
            /** @description Its share, on the day that asks for most. */
            asked_L_per_day: number | null;
            backwash_min_per_day: number | null;
            /** @description What keeps it from holding: the code of its problem. */
            cappedBy: string | null;
            /** @description rated: at its rated pressure, because none is known. */
            drive: ("gravity" | "handPump" | "rated") | null;
            /** @description In a few sentences. Whether it keeps up, not whether its water is fit to drink. */
            finding: string;
            /** @description At that pressure and temperature, with a new set. */
            flowClean_L_per_h: number | null;
            /** @description By the last reading that can be used; as new where there is none. */
            flowNow_L_per_h: number | null;
            /** @description With a set that is due to be changed. */
            flowWorn_L_per_h: number | null;
            /** @description At the handle; null where the piston is not known. */
            handForce_N: number | null;
            /** @description As the set is now. */
            hoursNeeded_h: number | null;
            hoursNeededWorn_h: number | null;
            /** @description If people came one by one at random, as a check; null where the line has no end. */
            meanWait_min: number | null;
            partId: string | null;
            /** @description The line at the taps in the two hours that most people come in. */
            peaks: {
                asked_L: number;
                /** @description What the last in line waits, as the set is now; null where the line has no end that day. */
                lastWait_min: number | null;
                /** @description The same when the set is worn. */
                lastWaitWorn_min: number | null;
                /** @enum {string} */
                peak: "morning" | "evening";
                /** @description What unit and taps give in that hour, as the set is now. */
                possible_L: number;
            }[];
            /** @description Across its membranes. */
            pressure_kPa: number | null;
            pressureTest: {
                /** @description A faster fall no longer supports what is claimed of protozoa. */
                fallLimit_kPa_per_min: number | null;
                pressure_kPa: number;
                /** @description The smallest hole that lets air through at that pressure. */
                smallestSeen_um: number;
                /** @description Log reduction of what is larger than such a hole that the fall supports. */
                supports_log10: number | null;
                /** @description A day, YYYY-MM-DD. */
                testedOn: string;
            } | null;
            /** @description What the one who pumps gives; null where there is no hand pump. */
            pumpPower_W: number | null;
            /** @description Over that of a clean set; null where nothing was read. */
            resistanceNow_ratio: number | null;
            /** @description Null where a site that is to be judged has no unit. */
            serial: string | null;
            strokes_per_min: number | null;
            /** @description With what goes back through it to clean it. */
            treated_L_per_day: number | null;
            /** @description Head it takes at the flow of all its taps, clean. */
            unitHead_m: number | null;
            /**
             * @description holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.
             * @enum {string}
             */
            verdict: "holds" | "tight" | "short" | "unknown";
            waterTemperature_C: number;
        };
        wear: {
            /** @description Share of futures in which each comes first: rated litres, too little flow, age, failure at random. */
            endsBy_fraction: {
                age: number;
                failure: number;
                flow: number;
                litres: number;
            };
            /** @description When it is due: the tenth, the middle and the ninetieth of a hundred futures. */
            endsOn: {
                /** @description A day, YYYY-MM-DD. */
                p10: string;
                /** @description A day, YYYY-MM-DD. */
                p50: string;
                /** @description A day, YYYY-MM-DD. */
                p90: string;
            } | null;
            /** @description In a few sentences. */
            finding: string;
            /** @description How fast its flow falls beside what its rating says: 1 as rated. */
            fouling_ratio: {
                p10: number;
                p50: number;
                p90: number;
            };
            futures_count: number;
            /** @description Passed until then. */
            litres_L: {
                p10: number;
                p50: number;
                p90: number;
            } | null;
            partId: string | null;
            /** @description In the middle future, until the day it is asked on. */
            passedSoFar_L: number | null;
            readings_count: number;
            /** @description Of the unit. */
            serial: string;
            /** @description The day the set was new; null where not known. */
            setSince: string | null;
            /** @description Why no date is given: the code of its problem; null where one is. */
            unknownBy: string | null;
        };
        wearInput: {
            /** @description Share of futures in which each comes first: rated litres, too little flow, age, failure at random. */
            endsBy_fraction: {
                age: number;
                failure: number;
                flow: number;
                litres: number;
            };
            /** @description When it is due: the tenth, the middle and the ninetieth of a hundred futures. */
            endsOn: {
                /** @description A day, YYYY-MM-DD. */
                p10: string;
                /** @description A day, YYYY-MM-DD. */
                p50: string;
                /** @description A day, YYYY-MM-DD. */
                p90: string;
            } | null;
            /** @description In a few sentences. */
            finding: string;
            /** @description How fast its flow falls beside what its rating says: 1 as rated. */
            fouling_ratio: {
                p10: number;
                p50: number;
                p90: number;
            };
            futures_count: number;
            /** @description Passed until then. */
            litres_L: {
                p10: number;
                p50: number;
                p90: number;
            } | null;
            partId: string | null;
            /** @description In the middle future, until the day it is asked on. */
            passedSoFar_L: number | null;
            readings_count: number;
            /** @description Of the unit. */
            serial: string;
            /** @description The day the set was new; null where not known. */
            setSince: string | null;
            /** @description Why no date is given: the code of its problem; null where one is. */
            unknownBy: string | null;
        };
        workingLine: {
            code: string;
            /** @description In words. */
            formula: string;
            inputs: {
                /** @description Cells of the tables it is taken from; `said` where it was entered there. */
                from?: {
                    column: string;
                    key: string;
                    said?: string;
                    table: string;
                }[];
                label: string;
                name: string;
                /** @description A value that is a word, in words. */
                said?: string;
                unit: string;
                value: number | string;
            }[];
            label: string;
            /** @description A value that is a word, in words. */
            said?: string;
            /** @description `id, place` of docs/sources.json, or survey, settings, definition. */
            source: string;
            /** @description The source in words. */
            sourceSaid: string;
            /** @description Empty where the value has none. */
            unit: string;
            /** @description Null where no such figure exists. */
            value: number | string | {
                high: number;
                low: number;
            } | null;
        };
        workingLineInput: {
            code: string;
            /** @description In words. */
            formula: string;
            inputs: {
                /** @description Cells of the tables it is taken from; `said` where it was entered there. */
                from?: {
                    column: string;
                    key: string;
                    said?: string;
                    table: string;
                }[];
                label: string;
                name: string;
                /** @description A value that is a word, in words. */
                said?: string;
                unit: string;
                value: number | string;
            }[];
            label: string;
            /** @description A value that is a word, in words. */
            said?: string;
            /** @description `id, place` of docs/sources.json, or survey, settings, definition. */
            source: string;
            /** @description The source in words. */
            sourceSaid: string;
            /** @description Empty where the value has none. */
            unit: string;
            /** @description Null where no such figure exists. */
            value: number | string | {
                high: number;
                low: number;
            } | null;
        };
        years: {
            /** @description The version the years are of; null before the first design. */
            designVersion: number | null;
            sites: {
                area: string | null;
                /** @description The key of its row in the table of sites. */
                key: string;
                name: string;
                /** @description As counted, or made from the households. */
                people: number | null;
                siteId: string;
                /** @description Null where it is not worked out yet, or the row cannot be used. */
                verdict: ("holds" | "tight" | "short" | "unknown") | null;
                /** @description Null where it was not judged. */
                years: components["schemas"]["siteYears"] | null;
            }[];
            /** @description Grows with every change. */
            version: number;
        };
        yearsInput: {
            /** @description The version the years are of; null before the first design. */
            designVersion: number | null;
            sites: {
                area: string | null;
                /** @description The key of its row in the table of sites. */
                key: string;
                name: string;
                /** @description As counted, or made from the households. */
                people: number | null;
                siteId: string;
                /** @description Null where it is not worked out yet, or the row cannot be used. */
                verdict: ("holds" | "tight" | "short" | "unknown") | null;
                /** @description Null where it was not judged. */
                years: components["schemas"]["siteYearsInput"] | null;
            }[];
            /** @description Grows with every change. */
            version: number;
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
