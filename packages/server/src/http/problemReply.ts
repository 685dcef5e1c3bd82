import type { Checked, Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { problemReport } from '@eavewell/report';
import type { FastifyError, FastifyReply } from 'fastify';
import { languageOf } from './spokenTo.ts';

/** The problems that are no fault of what was sent, by the status they have. */
const statuses: readonly (readonly [RegExp, number])[] = [
  [/^request\.refused$/, 403],
  [/^(request\.not_found|database\.programme_unknown|import\.gone|change\.row_gone)$/, 404],
  [
    /^(import\.(changed_since|reading|programme_there|nothing_to_undo)|request\.(called_off|not_judged_yet|search_runs|nothing_to_plan|other_state)|change\.|record\.name_taken|database\.programme_twice|map\.there)/,
    409,
  ],
  [/too_large$/, 413],
  [/^request\.wrong$/, 400],
  [/^request\.our_fault$/, 500],
  [/^database\.disk_full$/, 507],
  [/^database\./, 500],
];

function statusOf(problems: readonly Problem[]): number {
  const { code } = problems.find(({ severity }) => severity === 'blocker') ?? problems[0]!;
  return statuses.find(([form]) => form.test(code))?.[1] ?? 422;
}

/**
 * Answers with problems, as data and in words.
 *
 * @param reply - the answer
 * @param problems - what is wrong, at least one
 * @returns the answer, sent
 * @source rfc9457, sections 3.1 and 3.2
 */
export function sendProblems(reply: FastifyReply, problems: readonly Problem[]): FastifyReply {
  const language = languageOf(reply.request);
  const reports = problems.map((problem) => problemReport(problem, language));
  const first = reports[problems.findIndex(({ severity }) => severity === 'blocker')] ?? reports[0]!;
  const status = statusOf(problems);
  const body = {
    type: `urn:eavewell:problem:${first.code}`,
    title: first.what,
    status,
    detail: first.todo,
    problems: reports,
  };
  return reply.code(status).type('application/problem+json').send(JSON.stringify(body));
}

/** A request cannot be answered as it was asked, and why. The server answers with the problems. */
export class Refused extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map(({ code }) => code).join(', '));
    this.name = 'Refused';
    this.problems = problems;
  }
}

/** The value of what was checked; or its problems are the answer. */
export function orRefuse<T>(checked: Checked<T>): T {
  if (!checked.ok) throw new Refused(checked.problems);
  return checked.value;
}

/** What the machine may refuse while files pass through. */
const machineRefusals = [
  [/^(ENOSPC|EDQUOT|EFBIG)$/, 'database.disk_full'],
  [/^(EACCES|EPERM|EROFS)$/, 'database.no_permission'],
] as const;

/** What the server itself made of a request, as a problem. What is our own fault says nothing of its inside. */
export function problemOfError(
  error: Pick<FastifyError, 'code' | 'message' | 'statusCode' | 'validation'>,
  dataFolder: string,
  largest_bytes: number,
): Problem {
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE')
    return recordProblem('request.too_large', {}, { largest_MB: Math.floor(largest_bytes / 1e6) });
  const refusal = machineRefusals.find(([form]) => form.test(error.code));
  if (refusal) return recordProblem(refusal[1], {}, { value: dataFolder, reason: error.code });
  // The page went away while it sent: there is nobody to tell.
  if (/^(ERR_STREAM_PREMATURE_CLOSE|ECONNRESET|ABORT_ERR)$/.test(error.code)) {
    return recordProblem('request.wrong', {}, { value: error.message });
  }
  const status = error.statusCode ?? 500;
  if (status >= 500) return recordProblem('request.our_fault', {}, {});
  const at = error.validation?.map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`.trim()).join('; ');
  return recordProblem('request.wrong', {}, { value: at || error.message });
}
