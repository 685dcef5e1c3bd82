/** How a command ends: done; at least one blocker; wrong use; our own fault. */
export const exitCodes = { done: 0, blocker: 1, wrongUse: 2, ourFault: 70 } as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** The command was used wrongly: its message goes to the person, the exit code is 2. */
export class WrongUse extends Error {}
