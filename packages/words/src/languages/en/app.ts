// long: made by "npm run generate" from packages/words/languages/en.json; change that file, not this one.
export const language = {
  "code": "en",
  "name": "English",
  "direction": "ltr",
  "forms": "en-GB"
} as const;
export const missing = [] as const;
export const app = {
  "again": "Try again",
  "name": "Eavewell",
  "no_such_page": "There is no such page",
  "not_reached": "Eavewell on this computer does not answer. What you see is as it was last read.",
  "our_fault": "Something in the program went wrong, and it is our fault, not yours. Nothing that was saved is lost. ({message})",
  "refused": "Eavewell was started again since this page was opened. Open the address it shows where it was started.",
  "saved_here": "All saved on this computer",
  "sections": "Sections",
  "sites": "Sites",
  "skip": "Skip to the page",
  "to_start": "To the start",
  "trouble": "This page could not be shown",
  "unreachable": "Eavewell on this computer does not answer. Start it again, then press Try again."
} as const;
export const numbers = {
  "between": "{from} to {to}",
  "likely": "likely {range}",
  "likelyNextYears": "{coming, plural, one {likely {range} of the next year} other {likely {range} of the next #}}",
  "madeUpYear": "{day} of made-up year {year}",
  "money": "{amount} {currency}",
  "none": "none",
  "notKnown": "not known",
  "ofYears": "{good} of {all, plural, one {# year} other {# years}}",
  "percent": "{amount} %",
  "rangeOfYears": "{range} of {coming}",
  "shareNotKnown": "a share not known",
  "under": "under {amount}",
  "unknownWay": "an unknown way"
} as const;
export const programmes = {
  "title": "{count, plural, =0 {No programme yet} one {# programme on this computer} other {# programmes on this computer}}"
} as const;
export const sites = {
  "title": "{count, plural, =0 {No site yet} one {# site} other {# sites}}"
} as const;
export const stations = {
  "gutter": "gutter",
  "roof": "roof",
  "storage": "tank",
  "tap": "tap",
  "unit": "treatment unit"
} as const;
export const units = {
  "L": "{amount} L",
  "L_per_day": "{amount} L a day",
  "L_per_person_per_day": "{amount} L a person a day",
  "L_per_year": "{amount} L a year",
  "day": "{amount} {count, plural, one {day} other {days}}",
  "day_per_year": "{amount} {count, plural, one {day a year} other {days a year}}",
  "draw": "{amount} {count, plural, one {draw} other {draws}}",
  "dryDay_per_year": "{amount} {count, plural, one {dry day a year} other {dry days a year}}",
  "household": "{amount} {count, plural, one {household} other {households}}",
  "km": "{amount} km",
  "m": "{amount} m",
  "m2": "{amount} m²",
  "mm": "{amount} mm",
  "mm_per_year": "{amount} mm a year",
  "person": "{amount} {count, plural, one {person} other {people}}",
  "year": "{amount} {count, plural, one {year} other {years}}"
} as const;
export const verdicts = {
  "holds": "holds",
  "notJudged": "not judged",
  "short": "short",
  "tight": "tight",
  "unknown": "unknown"
} as const;
