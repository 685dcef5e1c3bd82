/** The steps of a working of room cost, in their order. */
export const costWorkings = [
  'cost.realInterest',
  'cost.capitalRecovery',
  'cost.head',
  'cost.costOfCapital',
  'cost.perYear',
  'cost.peopleYears',
  'cost.perPersonYear',
  'cost.perDesignPerson',
  'cost.boughtWater',
  'cost.boilingFuel',
  'cost.boiling',
  'cost.pipedScheme',
] as const;
