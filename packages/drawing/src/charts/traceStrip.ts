import { calendarDay } from '@eavewell/engine';
import type { Ground, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import type { Lettering } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { doubtSpans, type RecordInput, yearOf } from './record.ts';
import { monthStarts, shareOf, yearStarts, yearStep } from './scales.ts';
import { across, down, fill, pen, rect, stroke } from './strokes.ts';
import type { Strip, TraceFrame, TraceWords } from './traceFrame.ts';

/** Water, frame, ticks and words of one strip; the dry runs are drawn by themselves. */
export function drawStrip(
  strip: Strip,
  frame: TraceFrame,
  input: RecordInput,
  words: TraceWords,
  lettering: Lettering,
): readonly Shape[] {
  const { left, pxPerDay } = frame;
  const right = left + (strip.to - strip.from) * pxPerDay;
  const { top, base } = strip;
  const scale = [
    stroke(across(left, top, right), pen('thin', 'mark')),
    stroke(across(left, base, right), pen('edge', 'ink')),
  ];
  letterScale(strip, frame, input, words, lettering);
  return [
    ...drawTicks(strip, frame, input, words, lettering),
    ...drawRain(strip, frame, input, words, lettering),
    ...drawDoubt(strip, frame, input, words, lettering),
    ...drawWater(strip, frame, input, words, lettering),
    ...scale,
  ];
}

function letterScale(
  { top, base, index }: Strip,
  { left, isNarrow, width }: TraceFrame,
  { tankVolume_L }: RecordInput,
  words: TraceWords,
  lettering: Lettering,
): void {
  const volume = words.litres(tankVolume_L);
  if (isNarrow) {
    if (index === 0) lettering.set({ text: volume, ink: 'second' }, { x: width - 1, y: top - 4, anchor: 'end' });
  } else {
    lettering.set({ text: volume, ink: 'second' }, { x: left - 6, y: top + 5, anchor: 'end' });
    lettering.set({ text: words.empty, ink: 'second' }, { x: left - 6, y: base + 5, anchor: 'end' });
  }
}

/** The water in stretches of judged and other years. */
function drawWater(strip: Strip, frame: TraceFrame, input: RecordInput, words: TraceWords, lettering: Lettering) {
  const shapes: Shape[] = [];
  for (let day = strip.from; day < strip.to; ) {
    const year = yearOf(input.years, day);
    const isJudged = year?.judged ?? false;
    let to = day;
    while (to < strip.to && (yearOf(input.years, to)?.judged ?? false) === isJudged)
      to = Math.min(strip.to, Math.max(to + 1, yearOf(input.years, to)?.to ?? to + 1));
    shapes.push(...waterOf(strip, frame, input, day, to, isJudged));
    if (!isJudged) {
      const x = frame.left + ((day + to) / 2 - strip.from) * frame.pxPerDay;
      const middle = { x, y: (strip.top + strip.base) / 2 + 5, anchor: 'middle' as const };
      const outside = { x: frame.width - 1, y: middle.y, anchor: 'end' as const };
      lettering.set(
        { text: words.notJudged, ink: 'second' },
        [middle, { ...middle, x: frame.left + 3, anchor: 'start' }, outside],
        {
          hasHalo: true,
        },
      );
    }
    day = to;
  }
  return shapes;
}

const judgedGrounds: readonly [Ground, Ground] = ['water', 'level4'];
const otherGrounds: readonly [Ground, Ground] = ['low', 'level1'];

/** Pale up to the lowest level of each px's days, and the darker blue from there to the highest. */
function waterOf(strip: Strip, frame: TraceFrame, input: RecordInput, from: number, to: number, isJudged: boolean) {
  const { left, pxPerDay } = frame;
  const { content_L } = input.series;
  const { base, top } = strip;
  const levelY = (content: number) => base - shareOf(content, input.tankVolume_L) * (base - top);
  const startX = left + (from - strip.from) * pxPerDay;
  const perStep = pxPerDay >= 1 ? 1 : 1 / pxPerDay;
  const steps = Math.ceil((to - from) / perStep - 1e-9);
  const endX = left + (to - strip.from) * pxPerDay;
  const under = [`M${px(startX)} ${px(base)}`];
  const over: string[] = [];
  const back: string[] = [];
  for (let step = 0; step < steps; step++) {
    const first = from + Math.floor(step * perStep);
    const last = Math.min(to, Math.max(first + 1, from + Math.ceil((step + 1) * perStep - 1e-9)));
    let [low, high] = [content_L[first]!, content_L[first]!];
    for (let day = first + 1; day < last; day++) {
      const content = content_L[day]!;
      if (content < low) low = content;
      else if (content > high) high = content;
    }
    const x = px(Math.min(endX, startX + (step + 1) * perStep * pxPerDay));
    const [lowY, highY] = [px(levelY(low)), px(levelY(high))];
    under.push(`V${lowY}H${x}`);
    over.push(`V${highY}H${x}`);
    back.push(`H${x}V${lowY}`);
  }
  const [pale, deep] = isJudged ? judgedGrounds : otherGrounds;
  const shapes: Shape[] = [fill(`${under.join('')}V${px(base)}Z`, pale)];
  if (perStep > 1)
    shapes.push(fill(`M${px(startX)} ${px(base)}${over.join('')}${back.reverse().join('')}H${px(startX)}Z`, deep));
  const outline = pen('hair', isJudged ? 'waterline' : 'mark');
  shapes.push(stroke(`M${px(startX)} ${under.slice(1).join('').slice(1)}`, outline));
  return shapes;
}

/** Years, or months where the days are drawn one by one: letters above, short lines below the base. */
function drawTicks(strip: Strip, frame: TraceFrame, { series }: RecordInput, words: TraceWords, lettering: Lettering) {
  const { left, pxPerDay, isDaily } = frame;
  if (strip.to === strip.from) return [];
  const [firstDay, lastDay] = [series.firstDay + strip.from, series.firstDay + strip.to - 1];
  const xOf = (day: number) => left + (day - firstDay) * pxPerDay;
  const y = strip.y + 13;
  if (isDaily) {
    const starts = monthStarts(firstDay, lastDay);
    const named = starts[0]?.day === firstDay ? starts : [{ ...calendarDay(firstDay), day: firstDay }, ...starts];
    named.forEach(({ month, year, day }, index) => {
      lettering.set(
        { text: words.month(month, index === 0 || month === 1 ? year : null), ink: 'second' },
        { x: xOf(day) + 3, y },
      );
    });
    return starts.map(({ day }) => stroke(down(xOf(day), strip.y + 4, strip.bottom), pen('hair', 'rule')));
  }
  const starts = yearStarts(firstDay, lastDay);
  const step = yearStep(365.25 * pxPerDay, letterWidth_px(words.year(starts[0]?.year ?? 2000)) + 14);
  const shown = starts.filter(({ year }) => year % step === 0);
  for (const { year, day } of shown) lettering.set({ text: words.year(year), ink: 'second' }, { x: xOf(day) + 3, y });
  return [stroke(shown.map(({ day }) => down(xOf(day), strip.base, strip.bottom)).join(''), pen('hair', 'rule'))];
}

/** Rain of each day hangs from a line of its own, above the water and apart from it. */
function drawRain(strip: Strip, frame: TraceFrame, { series }: RecordInput, words: TraceWords, lettering: Lettering) {
  if (!frame.isDaily || strip.to === strip.from) return [];
  const { left, pxPerDay, rainHeight } = frame;
  const top = strip.top - rainHeight + 4;
  const most_mm = series.rain_mm.subarray(strip.from, strip.to).reduce((most, rain) => Math.max(most, rain), 0);
  const bars: string[] = [];
  const thick = Math.max(0.6, pxPerDay - 0.6);
  for (let day = strip.from; day < strip.to; day++) {
    const deep = shareOf(series.rain_mm[day]!, most_mm) * (rainHeight - 14);
    if (deep > 0) bars.push(rect(left + (day - strip.from) * pxPerDay, top, thick, Math.max(0.5, deep)));
  }
  const right = left + (strip.to - strip.from) * pxPerDay;
  const y = top + rainHeight - 16;
  const spots = [
    { x: right - 2, y, anchor: 'end' as const },
    { x: left + 2, y },
    { x: (left + right) / 2, y, anchor: 'middle' as const },
  ];
  lettering.set({ text: words.rain(most_mm), ink: 'second' }, spots, { hasHalo: true });
  return [fill(bars.join('') || 'M0 0', 'waterline'), stroke(across(left, top, right), pen('hair', 'mark'))];
}

const doubtHeight_px = 6;

/** Days that were not measured: a hatched strip above the water, each kind with its word once. */
function drawDoubt(strip: Strip, frame: TraceFrame, { series }: RecordInput, words: TraceWords, lettering: Lettering) {
  if (!frame.hasDoubt) return [];
  const { left, pxPerDay } = frame;
  const y = strip.top - frame.rainHeight - (frame.isNarrow && strip.index === 0 ? 19 : 4) - doubtHeight_px;
  const spans = doubtSpans(series.state, strip.from, strip.to);
  const box = (from: number, to: number) => ({
    x: left + (from - strip.from) * pxPerDay,
    y,
    width: Math.max(1, (to - from) * pxPerDay),
    height: doubtHeight_px,
  });
  for (const { from, to } of spans) lettering.keepOff(box(from, to));
  for (const { kind, from, to } of [...spans].sort((a, b) => b.to - b.from - (a.to - a.from))) {
    if (frame.told.has(kind)) continue;
    const { x, width } = box(from, to);
    const spots = [
      { x: x + width + 4, y: y + 8 },
      { x: x - 4, y: y + 8, anchor: 'end' as const },
      { x: x + 2, y: y - 2 },
    ];
    if (lettering.set({ text: words[kind], ink: 'second' }, spots)) frame.told.add(kind);
  }
  const paths = spans.map(({ from, to }) => {
    const own = box(from, to);
    return rect(own.x, own.y, own.width, own.height);
  });
  return paths.length === 0 ? [] : [fill(paths.join(''), 'doubt', pen('hair', 'mark'))];
}
