import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** The way to the kit of the site, how it is carried and what the site costs. */
export function KitAndCost({ programmeId, siteId }: { readonly programmeId: string; readonly siteId: string }) {
  const { say } = useLanguage();
  return (
    <section className="kit-and-cost on-screen" aria-labelledby="kit-and-cost-head">
      <h2 id="kit-and-cost-head">{say('site.kit_cost')}</h2>
      <p className="to-safety">
        <Link to="/p/$programmeId/sites/$siteId/kit" params={{ programmeId, siteId }}>
          {say('kit.site_link')}
        </Link>
      </p>
    </section>
  );
}
