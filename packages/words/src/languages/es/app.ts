// long: made by "npm run generate" from packages/words/languages/es.json; change that file, not this one.
export const language = {
  "code": "es",
  "name": "español",
  "direction": "ltr",
  "forms": "es",
  "groups": "space"
} as const;
export const missing = [] as const;
export const app = {
  "again": "Intentar de nuevo",
  "name": "Eavewell",
  "no_such_page": "Esta página no existe",
  "not_reached": "Eavewell no responde en esta computadora. Lo que ve es lo último que se leyó.",
  "our_fault": "Algo falló en el programa y es culpa nuestra, no suya. No se perdió nada de lo guardado. ({message})",
  "refused": "Eavewell se inició otra vez después de abrir esta página. Abra la dirección que muestra donde se inició.",
  "saved_here": "Todo guardado en esta computadora",
  "sections": "Secciones",
  "sites": "Sitios",
  "skip": "Ir a la página",
  "to_start": "Al inicio",
  "trouble": "No se pudo mostrar esta página",
  "unreachable": "Eavewell no responde en esta computadora. Inícielo de nuevo y luego pulse Intentar de nuevo."
} as const;
export const numbers = {
  "between": "{from} a {to}",
  "likely": "probable: {range}",
  "likelyNextYears": "{coming, plural, one {probable: {range} del año próximo} other {probable: {range} de los próximos #}}",
  "madeUpYear": "{day} del año generado {year}",
  "money": "{amount} {currency}",
  "none": "ninguno",
  "notKnown": "no se sabe",
  "ofYears": "{good} de {all, plural, one {# año} other {# años}}",
  "percent": "{amount} %",
  "rangeOfYears": "{range} de {coming}",
  "shareNotKnown": "una parte que no se sabe",
  "under": "menos de {amount}",
  "unknownWay": "una distancia que no se sabe"
} as const;
export const programmes = {
  "title": "{count, plural, =0 {Todavía no hay programas} one {# programa en esta computadora} other {# programas en esta computadora}}"
} as const;
export const sites = {
  "title": "{count, plural, =0 {Todavía no hay sitios} one {# sitio} other {# sitios}}"
} as const;
export const stations = {
  "gutter": "canaleta",
  "roof": "techo",
  "storage": "tanque",
  "tap": "grifo",
  "unit": "unidad de tratamiento"
} as const;
export const units = {
  "L": "{amount} L",
  "L_per_day": "{amount} L al día",
  "L_per_person_per_day": "{amount} L por persona al día",
  "L_per_year": "{amount} L al año",
  "day": "{amount} {count, plural, one {día} other {días}}",
  "day_per_year": "{amount} {count, plural, one {día al año} other {días al año}}",
  "draw": "{amount} {count, plural, one {sorteo} other {sorteos}}",
  "dryDay_per_year": "{amount} {count, plural, one {día seco al año} other {días secos al año}}",
  "household": "{amount} {count, plural, one {hogar} other {hogares}}",
  "km": "{amount} km",
  "m": "{amount} m",
  "m2": "{amount} m²",
  "mm": "{amount} mm",
  "mm_per_year": "{amount} mm al año",
  "person": "{amount} {count, plural, one {persona} other {personas}}",
  "year": "{amount} {count, plural, one {año} other {años}}"
} as const;
export const verdicts = {
  "holds": "alcanza",
  "notJudged": "no se juzga",
  "short": "corto",
  "tight": "justo",
  "unknown": "sin datos"
} as const;
