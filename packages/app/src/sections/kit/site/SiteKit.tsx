import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches } from '../../../look/PictureView.tsx';
import { CostPictures } from '../CostPictures.tsx';
import { KitProblems } from '../KitProblems.tsx';
import { siteKitQuery } from '../kitQuery.ts';
import { siteSentence } from '../kitWords.ts';
import { RuleLinks } from '../RuleLinks.tsx';
import { WorkingOut } from '../WorkingOut.tsx';
import { Cuts } from './Cuts.tsx';
import { Loads } from './Loads.tsx';
import { PartLines } from './PartLines.tsx';
import '../../site/site.css';
import '../kit.css';

/** The kit of one site: how it is carried, what is in it, how bars are cut, what the site costs. */
export function SiteKit() {
  return (
    <WorkingOut>
      <KitFound />
    </WorkingOut>
  );
}

function KitFound() {
  const language = useLanguage();
  const { say, numbers } = language;
  const { programmeId, siteId } = useParams({ from: '/p/$programmeId/sites/$siteId/kit' });
  const { data: site } = useSuspenseQuery(siteKitQuery(programmeId, siteId));
  const name = site.name ?? siteId;
  return (
    <article className="site-kit">
      <PictureHatches />
      <nav className="among on-screen" aria-label={say('kit.section')}>
        <Link to="/p/$programmeId/kit" params={{ programmeId }}>
          <span aria-hidden="true">‹ </span>
          {say('kit.back')}
        </Link>
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }}>
          {say('safety.to_site')}
        </Link>
      </nav>
      <h1>{say('kit.site_title', { name })}</h1>
      <p className="facts-line">
        {[siteId, site.people === null ? say('sites.no_people') : numbers.people(site.people)].join(', ')}
      </p>
      <p className="sentence">{siteSentence(site, language)}</p>
      <Papers programmeId={programmeId} siteId={siteId} />
      <KitProblems problems={site.problems} />
      {site.lines.length === 0 ? null : (
        <>
          <Loads site={site} />
          <PartLines site={site} />
          <Cuts site={site} />
        </>
      )}
      <section className="kit-cost" aria-labelledby="kit-cost">
        <h2 id="kit-cost">{say('kit.whole_life')}</h2>
        {site.designVersion === null ? <p className="small">{say('kit.wear_not_yet')}</p> : null}
        <CostPictures cost={site.cost} beside={site.beside} />
      </section>
      <RuleLinks programmeId={programmeId} />
    </article>
  );
}

/** What is printed for the site, and what goes into a spreadsheet. */
function Papers({ programmeId, siteId }: { readonly programmeId: string; readonly siteId: string }) {
  const { say, code } = useLanguage();
  const of = `/api/programmes/${encodeURIComponent(programmeId)}/sites/${encodeURIComponent(siteId)}`;
  return (
    <p className="papers on-screen">
      <a className="button main" href={`${of}/pack.pdf?language=${code}`} download={`${siteId}.pdf`}>
        {say('kit.pack')}
      </a>{' '}
      <a
        className="button"
        href={`/api/programmes/${encodeURIComponent(programmeId)}/kit.xlsx?sites=${encodeURIComponent(siteId)}`}
        download={`${siteId}-kit.xlsx`}
      >
        {say('kit.sheet')}
      </a>
    </p>
  );
}
