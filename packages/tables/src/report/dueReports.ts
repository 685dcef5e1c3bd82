import { z } from 'zod';
import { day, problem } from './parts.ts';
import { safety } from './safety.ts';
import { wear } from './wear.ts';

/** Counts up when a reader written for the last form would no longer understand the document. */
export const wearSchemaVersion = 1;
/** The same of what `eavewell safety --json` writes. */
export const safetySchemaVersion = 1;

const version = z.string().describe('Version of the program.');
const siteId = z.string();
const name = z.string();
const note =
  'The unit is the last part of a name; a share ends in fraction and goes from 0 to 1; null is "not known", never 0.';

/** What `eavewell wear --json` writes. */
export const wearListReport = z
  .strictObject({
    eavewell: version,
    schema: z.literal(wearSchemaVersion),
    day: day.describe('It was asked on.'),
    sites: z
      .array(
        z.strictObject({
          siteId,
          name,
          wear: z.array(wear).describe('One for each unit in use.'),
          problems: z.array(problem),
        }),
      )
      .describe('Those with a unit in use, in the order of the table.'),
  })
  .describe(`What eavewell wear --json writes. ${note}`);

/** What `eavewell safety --json` writes. */
export const safetyListReport = z
  .strictObject({
    eavewell: version,
    schema: z.literal(safetySchemaVersion),
    day: day.describe('It was asked on.'),
    sites: z
      .array(z.strictObject({ siteId, name, safety, problems: z.array(problem) }))
      .describe(
        'Those whose safety is judged, the worst first. A site that is not here is not judged: that is no pass.',
      ),
  })
  .describe(`What eavewell safety --json writes. ${note}`);

export type WearListReport = z.infer<typeof wearListReport>;
export type SafetyListReport = z.infer<typeof safetyListReport>;

/**
 * The JSON Schema of the report of wear, as docs/wear.schema.json holds it.
 *
 * @returns JSON Schema, draft 2020-12 [text]
 * @definition ours
 */
export function wearSchemaText(): string {
  return schemaText('Eavewell wear', wearListReport);
}

/**
 * The JSON Schema of the report of safety, as docs/safety.schema.json holds it.
 *
 * @returns JSON Schema, draft 2020-12 [text]
 * @definition ours
 */
export function safetySchemaText(): string {
  return schemaText('Eavewell safety', safetyListReport);
}

function schemaText(title: string, report: z.ZodType): string {
  const schema = z.toJSONSchema(report, { target: 'draft-2020-12', io: 'output' });
  return `${JSON.stringify({ title, ...schema }, null, 2)}\n`;
}
