/** What went wrong in a thread, as it travels to who asked. */
export interface FaultSaid {
  readonly message: string;
  readonly stack: string;
  readonly code?: string;
}

/** The system's own word for what it refused travels too: a full disk is nobody's mistake. */
export function faultSaid(error: unknown): FaultSaid {
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  const { code } = error as { readonly code?: unknown };
  return { message, stack: stack ?? '', ...(typeof code === 'string' ? { code } : {}) };
}
