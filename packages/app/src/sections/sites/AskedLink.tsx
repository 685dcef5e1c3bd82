import { defaultStringifySearch, useNavigate } from '@tanstack/react-router';
import type { MouseEvent, ReactNode } from 'react';
import type { Asked } from './asked.ts';

/** Does a press mean this page? One that is to open elsewhere is the browser's. */
export const isPlainPress = ({ button, metaKey, altKey, ctrlKey, shiftKey }: MouseEvent): boolean =>
  button === 0 && !(metaKey || altKey || ctrlKey || shiftKey);

/**
 * The way to the same list, asked for otherwise. It is a plain link: those of the router each reckon anew where they lead whenever the
 * address changes, which here is at each press.
 */
export function AskedLink({
  programmeId,
  asked,
  isCurrent,
  isFromTop = false,
  className,
  children,
}: {
  readonly programmeId: string;
  readonly asked: Asked;
  /** Is it what is shown now? Not given where it is no choice that stays. */
  readonly isCurrent?: boolean;
  /** Does the page begin at its top again? */
  readonly isFromTop?: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const navigate = useNavigate({ from: '/p/$programmeId/sites' });
  const go = (event: MouseEvent) => {
    if (!isPlainPress(event)) return;
    event.preventDefault();
    void navigate({ to: '.', search: asked, resetScroll: isFromTop });
  };
  return (
    <a
      href={`/p/${encodeURIComponent(programmeId)}/sites${defaultStringifySearch(asked)}`}
      className={className}
      aria-current={isCurrent}
      onClick={go}
    >
      {children}
    </a>
  );
}
