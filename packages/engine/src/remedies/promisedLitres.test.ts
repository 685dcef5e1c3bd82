import { expect, it } from 'vitest';
import { litreSteps, promisedLess } from './promisedLitres.ts';

const drinking = { purpose: 'drinking', litres_per_person_per_day: 3, judged: true };
const cooking = { purpose: 'cooking', litres_per_person_per_day: 4.5, judged: true };
const washing = { purpose: 'washing', litres_per_person_per_day: 5, judged: false };

it('drops the other purposes before it cuts the judged ones, and stops at 2.5 L', () => {
  const steps = litreSteps([drinking, washing, cooking]);
  expect(steps.map((step) => [step.judged_L_per_person_per_day, step.isJudgedCut])).toEqual([
    [7.5, false],
    [6, true],
    [5, true],
    [4, true],
    [3, true],
    [2.5, true],
  ]);
  expect(litreSteps([{ ...drinking, litres_per_person_per_day: 2.5 }])).toEqual([]);
  expect(litreSteps([{ ...drinking, litres_per_person_per_day: 2 }])).toEqual([]);
});

it('shares what is left among the judged purposes as before', () => {
  const [, , , four] = litreSteps([drinking, washing, cooking]);
  expect(promisedLess([drinking, washing, cooking], four!)).toEqual([
    { ...drinking, litres_per_person_per_day: 1.6 },
    { ...cooking, litres_per_person_per_day: 2.4 },
  ]);
  const [dropped] = litreSteps([drinking, washing]);
  expect(promisedLess([drinking, washing], dropped!)).toEqual([drinking]);
});

it('cuts a site whose purposes have months by the month that asks for most, and no month under 2.5 L', () => {
  const summer = { ...cooking, litres_per_person_per_day: 5, months: [1, 2] };
  // 8 L in two months and 3 L in ten: at 6.67 L the ten would have 2.5 L left.
  expect(litreSteps([drinking, summer]).map((step) => step.judged_L_per_person_per_day)).toEqual([7.5]);
  // 5 L and 3 L in months of their own are never 8 L a person.
  const winter = { ...drinking, months: [6] };
  expect(litreSteps([winter, summer]).map((step) => step.judged_L_per_person_per_day)).toEqual([]);
  expect(litreSteps([{ ...winter, litres_per_person_per_day: 5 }, summer])[0]!.judged_L_per_person_per_day).toBe(4);
  expect(
    promisedLess([drinking, summer], { kind: 'litres', judged_L_per_person_per_day: 4, isJudgedCut: true }),
  ).toEqual([
    { ...drinking, litres_per_person_per_day: 1.5 },
    { ...summer, litres_per_person_per_day: 2.5 },
  ]);
});
