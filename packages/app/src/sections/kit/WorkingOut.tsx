import { type ReactNode, Suspense } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Says what is being done while kits are worked out, which takes a while the first time. */
export function WorkingOut({ children }: { readonly children: ReactNode }) {
  const { say } = useLanguage();
  return (
    <Suspense
      fallback={
        <p role="status" className="kit-being-worked-out">
          {say('kit.working_out')}
        </p>
      }
    >
      {children}
    </Suspense>
  );
}
