import type { RolloutSheet } from '@eavewell/tables';
import { type KeyboardEvent, type RefObject, useEffect, useEffectEvent, useRef, useState } from 'react';
import { useWho } from '../../../api/useWho.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { Who, whoId } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { SavedLine } from '../../../offline/SavedLine.tsx';
import { UnsaidTrips } from '../plans/UnsaidTrips.tsx';
import type { Hand } from './hand.ts';
import { Mend } from './Mend.tsx';
import { becomesWords, cannotWords, heldWords, nearestWords, placeWords } from './moveWords.ts';
import { type Place, type Step, stepped } from './places.ts';
import { type HandOver, tripsTouched } from './useHand.ts';
import { useNews } from './useNews.ts';

type Full = Exclude<Hand, { readonly phase: 'empty' }>;

interface Of {
  readonly sheet: RolloutSheet;
  readonly over: HandOver;
}

/** How often and how many times the focus is taken until it stays [ms, count]. Ours. */
const [focusTry_ms, focusTries_most] = [40, 15] as const;

const stepOfKey: Readonly<Record<string, Step>> = {
  ArrowLeft: 'earlier',
  ArrowRight: 'later',
  ArrowUp: 'crewAbove',
  ArrowDown: 'crewBelow',
  PageUp: 'earlierFar',
  PageDown: 'laterFar',
};

/** What is in hand, what would become of it, and presses and keys that move it; and what came of it last. */
// long: what is said, what has the focus, and what is shown
export function HandPanel({
  programmeId,
  sheet,
  over,
  isPulled,
}: Of & { readonly programmeId: string; readonly isPulled: boolean }) {
  const { say } = useLanguage();
  const { hand } = over;
  const news = useNews(programmeId, sheet.version, hand);
  const said = useSaid(sheet, over, news);
  const panel = useRef<HTMLElement>(null);
  const back = useRef<HTMLElement | null>(null);
  const isFull = hand.phase !== 'empty';
  const isKeys = isFull && !isPulled;
  const onFull = useEffectEvent((isNow: boolean) => {
    if (isNow) {
      back.current = document.activeElement instanceof HTMLElement ? document.activeElement : null;
      return focusWhenFree(panel);
    }
    if (panel.current?.contains(document.activeElement) || document.activeElement === document.body)
      goBack(back.current);
    return undefined;
  });
  useEffect(() => onFull(isKeys), [isKeys]);
  const isTold = !isFull && hand.told !== null;
  return (
    <>
      <p role="status" className="said-only">
        {said}
      </p>
      {isKeys || isTold ? (
        <section
          ref={panel}
          className="by-hand-panel on-screen"
          tabIndex={-1}
          aria-label={say('rolloutByHand.name')}
          onKeyDown={isFull ? keysOf(sheet, over) : undefined}
        >
          {isFull ? (
            <InHand {...{ programmeId, sheet, over, hand, news }} />
          ) : (
            <Told {...{ programmeId, sheet, over }} />
          )}
        </section>
      ) : null}
    </>
  );
}

/** What was opened to take it up is closed first, and gives the focus back where it came from: then it is taken, and kept. */
function focusWhenFree(panel: RefObject<HTMLElement | null>): () => void {
  let [kept, tries] = [0, 0];
  const timer = setInterval(() => {
    kept = panel.current?.contains(document.activeElement) ? kept + 1 : 0;
    if (kept > 1 || ++tries > focusTries_most) clearInterval(timer);
    else if (kept === 0) panel.current?.focus({ preventScroll: true });
  }, focusTry_ms);
  return () => clearInterval(timer);
}

/** Back to what it was taken up from, or to the trip the keyboard was at. */
function goBack(to: HTMLElement | null): void {
  const trip = document.querySelector<HTMLElement>('[data-trip][tabindex="0"]');
  (to?.isConnected && to !== document.body ? to : trip)?.focus({ preventScroll: true });
}

/** What is spoken: where it is, then what would become of it. */
function useSaid(sheet: RolloutSheet, { hand }: HandOver, news: readonly string[]): string {
  const language = useLanguage();
  const { say } = language;
  if (hand.phase === 'empty') return hand.told === null ? '' : toldWords(sheet, hand, language).join(' ');
  const where = say('rolloutByHand.in_hand', {
    what: heldWords(sheet, hand.held, language),
    where: placeWords(sheet, hand.held, hand.at, language),
  }).concat(hand.isAnew ? ` ${[...news, say('rolloutByHand.tried_anew')].join(' ')}` : '');
  if (hand.cannot !== null) return `${where} ${cannotWords(sheet, hand.held, hand.cannot, hand.at, language)}`;
  return hand.answer === null ? where : `${where} ${becomesWords(sheet, hand.held, hand.answer, language).join(' ')}`;
}

type Language = ReturnType<typeof useLanguage>;

function toldWords(
  sheet: RolloutSheet,
  hand: Hand & { readonly phase: 'empty' },
  language: Language,
): readonly string[] {
  const { told } = hand;
  const { say } = language;
  if (told === null) return [];
  if (told.kind === 'laid')
    return [say('rolloutByHand.laid'), ...becomesWords(sheet, told.laid.held, told.laid.answer, language)];
  const why = told.why === null ? [] : [cannotWords(sheet, told.held, told.why, null, language)];
  if (told.kind === 'cannotTake') return why;
  return [...why, say('rolloutByHand.stays', { what: heldWords(sheet, told.held, language) })];
}

function keysOf(sheet: RolloutSheet, { hand, moveTo, letGo, putBack }: HandOver) {
  return (event: KeyboardEvent<HTMLElement>) => {
    if (hand.phase === 'empty' || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target instanceof HTMLInputElement) return;
    const step = stepOfKey[event.key];
    const isOnPress = event.target instanceof HTMLButtonElement;
    if (step !== undefined) moveTo(stepped(sheet, hand.held, hand.at, step));
    else if (event.key === 'Escape') putBack();
    else if (event.key === 'Delete' && hand.held.kind === 'site') moveTo({ kind: 'tray' });
    else if (event.key === 'Enter' && !isOnPress && document.getElementById(whoId) === null) letGo();
    else return;
    event.preventDefault();
  };
}

function InHand({
  programmeId,
  sheet,
  over,
  hand,
  news,
}: Of & { readonly programmeId: string; readonly hand: Full; readonly news: readonly string[] }) {
  const language = useLanguage();
  const { say } = language;
  const who = useWho();
  const { held, at, answer, cannot, nearest, phase, isAnew } = hand;
  const where = placeWords(sheet, held, at, language);
  const touched = tripsTouched(sheet, { held, at });
  return (
    <>
      <p>
        <b>{say('rolloutByHand.in_hand', { what: heldWords(sheet, held, language), where })}</b>
      </p>
      {isAnew ? <p>{[...news, say('rolloutByHand.tried_anew')].join(' ')}</p> : null}
      {cannot === null ? null : <p className="w-short">{cannotWords(sheet, held, cannot, at, language)}</p>}
      {answer !== null ? (
        <p>{becomesWords(sheet, held, answer, language).join(' ')}</p>
      ) : cannot === null && where !== say('rolloutByHand.at_home') ? (
        <p>{say('rolloutByHand.working_out')}</p>
      ) : null}
      {phase === 'refused' && cannot !== null && cannot.why !== 'noAnswer' && cannot.why !== 'gone' ? (
        <Nearest {...{ sheet, over, hand, nearest }} />
      ) : null}
      <UnsaidTrips {...{ programmeId, sheet }} mayChange={(tripId) => touched.has(tripId)} />
      {who === '' ? <Who /> : null}
      <NotSaved outcome={over.outcome} />
      <Presses {...{ sheet, over, hand }} isOff={phase === 'laying'} canLay={who !== ''} />
      <p className="small">{say('rolloutByHand.keys')}</p>
    </>
  );
}

/** The nearest place that can be, to be taken by one press. */
function Nearest({ sheet, over, hand, nearest }: Of & { readonly hand: Full; readonly nearest: Full['nearest'] }) {
  const language = useLanguage();
  const said = nearestWords(nearest, language);
  const place = nearest?.place ?? null;
  if (place === null) return <p>{said}</p>;
  const take = () => {
    over.moveTo(place);
    over.letGo();
  };
  return (
    <p>
      <button type="button" className="button main" onClick={take}>
        {language.say('rolloutByHand.nearest', { where: placeWords(sheet, hand.held, place, language) })}
      </button>
    </p>
  );
}

function Presses({
  sheet,
  over,
  hand,
  isOff,
  canLay,
}: Of & { readonly hand: Full; readonly isOff: boolean; readonly canLay: boolean }) {
  const { say } = useLanguage();
  const [isNameWanted, setNameWanted] = useState(false);
  const { held, at } = hand;
  const isSite = held.kind === 'site';
  const press = (key: Parameters<typeof say>[0], to: () => void) => (
    <button key={key} type="button" className="button plain" disabled={isOff} onClick={to}>
      {say(key)}
    </button>
  );
  const go = (step: Step) => () => over.moveTo(stepped(sheet, held, at, step));
  const put = (place: Place) => () => over.moveTo(place);
  const lay = () => {
    if (canLay) return over.letGo();
    setNameWanted(true);
    document.getElementById(whoId)?.focus();
  };
  return (
    <>
      <p className="by-hand-presses">
        {press(isSite ? 'rolloutByHand.earlier_trip' : 'rolloutByHand.earlier_week', go('earlierFar'))}
        {press('rolloutByHand.earlier', go('earlier'))}
        {press('rolloutByHand.later', go('later'))}
        {press(isSite ? 'rolloutByHand.later_trip' : 'rolloutByHand.later_week', go('laterFar'))}
        {press('rolloutByHand.crew_above', go('crewAbove'))}
        {press('rolloutByHand.crew_below', go('crewBelow'))}
        {isSite ? press('rolloutByHand.to_tray', put({ kind: 'tray' })) : null}
      </p>
      <p className="by-hand-presses">
        <button type="button" className="button main" disabled={isOff} onClick={lay}>
          {say('rolloutByHand.lay_down')}
        </button>
        <button type="button" className="button" disabled={isOff} onClick={over.putBack}>
          {say('rolloutByHand.put_back')}
        </button>
        {isNameWanted && !canLay ? <span className="field-wanting">{say('forms.name_needed')}</span> : null}
      </p>
    </>
  );
}

/** What came of it, and what may be done next. */
function Told({ programmeId, sheet, over }: Of & { readonly programmeId: string }) {
  const language = useLanguage();
  const { hand } = over;
  if (hand.phase !== 'empty' || hand.told === null) return null;
  const { told } = hand;
  return (
    <>
      <p>{toldWords(sheet, hand, language).join(' ')}</p>
      {told.kind === 'laid' ? <SavedLine programmeId={programmeId} /> : null}
      {told.kind === 'laid' ? <Mend {...{ programmeId, sheet }} laid={told.laid} /> : null}
      <p>
        <button type="button" className="button plain" onClick={over.heard}>
          {language.say('rolloutBands.close')}
        </button>
      </p>
    </>
  );
}
