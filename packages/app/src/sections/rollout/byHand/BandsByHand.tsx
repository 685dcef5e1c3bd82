import type { RolloutSheet, SheetCrew, SheetTrip } from '@eavewell/tables';
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Bands } from '../bands/Bands.tsx';
import type { ByHandOnBands } from '../bands/CrewsBand.tsx';
import type { HullBox, HullsLaid } from '../bands/hulls.ts';
import { HandPanel } from './HandPanel.tsx';
import { becomesWords, cannotWords, placeWords } from './moveWords.ts';
import { Proposed } from './Proposed.tsx';
import type { Held } from './places.ts';
import { heldAt } from './pointerPlace.ts';
import { TakeUp } from './TakeUp.tsx';
import { Tray } from './Tray.tsx';
import { type OnScreen, useDrag } from './useDrag.ts';
import { type HandOver, useHand } from './useHand.ts';
import './byHand.css';

/** The bands of the plan, with what moves its sites and trips by hand: pointer, finger and keys. */
// long: what the hand, the bands and the panel have to do with each other
export function BandsByHand({ sheet, programmeId }: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const over = useHand(programmeId, sheet);
  const { hand } = over;
  const laid = useRef<HullsLaid | null>(null);
  const layer = useRef<HTMLDivElement>(null);
  const drag = useDrag(sheet, laid, layer, {
    takeUp: (held) => over.takeUp(held, 'pointer'),
    ...{ moveTo: over.moveTo, letGo: over.letGo, putBack: over.putBack },
  });
  const take = (held: Held) => over.takeUp(held, 'keys');
  const byHand: ByHandOnBands = {
    layer: (now) => {
      laid.current = now;
      return (
        <div ref={layer} className="by-hand-layer">
          <Shown sheet={sheet} laid={now} over={over} onPull={drag.begin} />
        </div>
      );
    },
    inTrip: (trip: SheetTrip, _crew: SheetCrew, close) => (
      <TakeUp
        {...{ programmeId, sheet, trip }}
        onTake={(held) => {
          close();
          take(held);
        }}
      />
    ),
    onPointerDown: (event, at, now) => {
      const box = layer.current?.getBoundingClientRect();
      if (box === undefined || sheet.planId === null || hand.phase === 'laying') return;
      const held = heldAt(now, at, event.clientY - box.top, event.shiftKey);
      if (held === null) return;
      drag.begin(event, held, event.clientX - box.left - now.hullOf.get(at.tripId!)!.x, false);
    },
    onKeyDown: (event: KeyboardEvent<HTMLElement>, hull: HullBox) => {
      if (event.key !== ' ' || event.ctrlKey || event.metaKey || event.altKey || sheet.planId === null) return;
      event.preventDefault();
      take({ kind: 'trip', tripId: hull.tripId });
    },
  };
  return (
    <>
      <Bands sheet={sheet} programmeId={programmeId} byHand={byHand} />
      <Tray sheet={sheet} onTake={take} onPull={drag.begin} />
      {drag.at === null ? null : <BesideHand at={drag.at} sheet={sheet} over={over} />}
      <HandPanel {...{ programmeId, sheet, over }} isPulled={drag.at !== null} />
    </>
  );
}

/** What is drawn over the hulls: what would be, or what was just laid down and is not on the sheet yet. */
function Shown({
  sheet,
  laid,
  over: { hand },
  onPull,
}: {
  readonly sheet: RolloutSheet;
  readonly laid: HullsLaid;
  readonly over: HandOver;
  readonly onPull: ReturnType<typeof useDrag>['begin'];
}) {
  if (hand.phase === 'empty') return null;
  const { held, answer } = hand;
  const onPointerDown = (event: PointerEvent<HTMLElement>) => onPull(event, held, 0, true);
  return (
    <Proposed
      {...{ sheet, laid, held }}
      crews={answer?.crews ?? nothing}
      onPointerDown={hand.phase === 'laying' ? undefined : onPointerDown}
    />
  );
}

const nothing: readonly never[] = [];

/** The sentence beside the hand while it pulls. */
function BesideHand({
  at,
  sheet,
  over,
}: {
  readonly at: OnScreen;
  readonly sheet: RolloutSheet;
  readonly over: HandOver;
}) {
  const language = useLanguage();
  const { hand } = over;
  if (hand.phase === 'empty') return null;
  const { held, answer, cannot } = hand;
  const isLeft = at.x > window.innerWidth / 2;
  const isUp = at.y > window.innerHeight / 2;
  const style = {
    [isLeft ? 'right' : 'left']: isLeft ? window.innerWidth - at.x + 16 : at.x + 16,
    [isUp ? 'bottom' : 'top']: isUp ? window.innerHeight - at.y + 24 : at.y + 24,
  };
  return (
    <div className="by-hand-beside" aria-hidden="true" style={style}>
      <p>
        <b>{placeWords(sheet, held, hand.at, language)}</b>
      </p>
      {cannot === null ? null : <p className="w-short">{cannotWords(sheet, held, cannot, hand.at, language)}</p>}
      {answer === null ? null : <p>{becomesWords(sheet, held, answer, language).join(' ')}</p>}
    </div>
  );
}
