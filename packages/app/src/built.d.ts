/** The form of the server's answers these pages were built for; vite.config.ts puts it in. */
declare const ANSWERS_FORM: string;
