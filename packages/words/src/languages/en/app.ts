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
export const map = {
  "all": "Show all",
  "and_more": "{count, plural, one {and # more} other {and # more}}",
  "away": "({amount} km away)",
  "choose": "Press a mark or a speck to see which site it is.",
  "far": "{count, plural, one {# site lies far from all others and is not in this picture; its position may be wrong} other {# sites lie far from all others and are not in this picture; their positions may be wrong}}",
  "farther": "Farther",
  "find": "Find on the map",
  "find_none": "No site has this name or id.",
  "find_open": "Show names",
  "keys": "Arrow keys move the map. Plus and minus bring it nearer or farther, 0 shows all. Page Down and Page Up go from site to site, those that need you first; Enter chooses.",
  "kilometres": "{amount} km",
  "line_foot": "Dots in a row: footpath.",
  "line_holds": "Specks: sites that hold.",
  "line_landing": "Bar: landing.",
  "line_other": "Broken line: a way of unknown kind.",
  "line_place": "Open square: another place.",
  "line_river": "Blue line: river.",
  "line_road": "Double line: road.",
  "line_store": "Square: store.",
  "metres": "{amount} m",
  "nearer": "Nearer",
  "none_placed": "No site has a position yet, so there is no map. Give sites their latitude and longitude, or take in a map file with their positions.",
  "north": "N",
  "north_up": "North is up",
  "outline": "Coasts and borders: Natural Earth 4.1.0 at 1:50,000,000, so they are rough. Borders are as Natural Earth has them; they say nothing about whose land it is.",
  "outline_failed": "Coasts and borders could not be read, so they are not drawn. Everything else is.",
  "outline_none": "Natural Earth 4.1.0 at 1:50,000,000 has no coast and no border here, so the map draws your own ways and places alone.",
  "outline_reading": "Coasts and borders are being read.",
  "picture": "{count, plural, one {Map of # site} other {Map of # sites}}",
  "title": "Map of the sites",
  "told": "{name}: {verdict, select, holds {holds} tight {tight} short {short} unknown {unknown} other {not judged yet}}. {place} of {count}.",
  "under": "{count, plural, one {# site that needs you lies so close to a worse one that it is a coloured dot.} other {# sites that need you lie so close to worse ones that they are coloured dots.}} Bring the map nearer to part them.",
  "verdict": "{verdict, select, holds {holds} tight {tight} short {short} unknown {unknown} other {not judged yet}}",
  "ways_without": "{count, plural, one {# way has no line and is not drawn.} other {# ways have no line and are not drawn.}}",
  "without": "{count, plural, one {# site has no position and is not on the map} other {# sites have no position and are not on the map}}"
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
  "under": "under {amount}"
} as const;
export const programmes = {
  "title": "{count, plural, =0 {No programme yet} one {# programme on this computer} other {# programmes on this computer}}"
} as const;
export const sites = {
  "title": "{count, plural, =0 {No site yet} one {# site} other {# sites}}"
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
  "m": "{amount} m",
  "m2": "{amount} m²",
  "mm": "{amount} mm",
  "mm_per_year": "{amount} mm a year",
  "person": "{amount} {count, plural, one {person} other {people}}",
  "year": "{amount} {count, plural, one {year} other {years}}"
} as const;
