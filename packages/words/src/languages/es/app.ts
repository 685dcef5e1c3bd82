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
export const map = {
  "all": "Ver todo",
  "and_more": "{count, plural, one {y # más} other {y # más}}",
  "away": "(a {amount} km)",
  "choose": "Pulse una marca o un punto para ver qué sitio es.",
  "far": "{count, plural, one {# sitio está lejos de todos los demás y no sale en esta imagen; su posición puede estar mal} other {# sitios están lejos de todos los demás y no salen en esta imagen; sus posiciones pueden estar mal}}",
  "farther": "Alejar",
  "find": "Buscar en el mapa",
  "find_none": "Ningún sitio tiene este nombre o código.",
  "find_open": "Mostrar nombres",
  "keys": "Las flechas mueven el mapa. Más y menos lo acercan o lo alejan, 0 lo muestra entero. Av Pág y Re Pág pasan de un sitio a otro, primero los que le necesitan; Intro elige.",
  "kilometres": "{amount} km",
  "line_foot": "Puntos en fila: sendero.",
  "line_holds": "Puntos: sitios que cumplen.",
  "line_landing": "Barra: embarcadero.",
  "line_other": "Línea cortada: vía de clase desconocida.",
  "line_place": "Cuadrado abierto: otro lugar.",
  "line_river": "Línea azul: río.",
  "line_road": "Línea doble: camino.",
  "line_store": "Cuadrado: almacén.",
  "metres": "{amount} m",
  "nearer": "Acercar",
  "none_placed": "Ningún sitio tiene posición todavía, así que no hay mapa. Dé a los sitios su latitud y longitud, o cargue un archivo de mapa con sus posiciones.",
  "north": "N",
  "north_up": "El norte está arriba",
  "outline": "Costas y fronteras: Natural Earth 4.1.0 a escala 1:50 000 000, por eso son aproximadas. Las fronteras son las que da Natural Earth; no dicen de quién es la tierra.",
  "outline_failed": "No se pudieron leer las costas y fronteras, así que no se dibujan. Todo lo demás sí.",
  "outline_none": "Natural Earth 4.1.0 a escala 1:50 000 000 no tiene aquí costa ni frontera, así que el mapa dibuja solo sus propias vías y lugares.",
  "outline_reading": "Se están leyendo las costas y fronteras.",
  "picture": "{count, plural, one {Mapa de # sitio} other {Mapa de # sitios}}",
  "title": "Mapa de los sitios",
  "told": "{name}: {verdict, select, holds {cumple} tight {justo} short {no alcanza} unknown {desconocido} other {sin juzgar todavía}}. {place} de {count}.",
  "under": "{count, plural, one {# sitio que le necesita está tan cerca de otro peor que es un punto de color.} other {# sitios que le necesitan están tan cerca de otros peores que son puntos de color.}} Acerque el mapa para separarlos.",
  "verdict": "{verdict, select, holds {cumple} tight {justo} short {no alcanza} unknown {desconocido} other {sin juzgar todavía}}",
  "ways_without": "{count, plural, one {# vía no tiene línea y no se dibuja.} other {# vías no tienen línea y no se dibujan.}}",
  "without": "{count, plural, one {# sitio no tiene posición y no está en el mapa} other {# sitios no tienen posición y no están en el mapa}}"
} as const;
export const numbers = {
  "between": "{from} a {to}",
  "likely": "probable: {range}",
  "likelyNextYears": "{coming, plural, one {probable: {range} del año próximo} other {probable: {range} de los próximos #}}",
  "madeUpYear": "{day} del año inventado {year}",
  "money": "{amount} {currency}",
  "none": "ninguno",
  "notKnown": "no se sabe",
  "ofYears": "{good} de {all, plural, one {# año} other {# años}}",
  "percent": "{amount} %",
  "rangeOfYears": "{range} de {coming}",
  "shareNotKnown": "una parte que no se sabe",
  "under": "menos de {amount}"
} as const;
export const programmes = {
  "title": "{count, plural, =0 {Todavía no hay programas} one {# programa en esta computadora} other {# programas en esta computadora}}"
} as const;
export const sites = {
  "title": "{count, plural, =0 {Todavía no hay sitios} one {# sitio} other {# sitios}}"
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
  "m": "{amount} m",
  "m2": "{amount} m²",
  "mm": "{amount} mm",
  "mm_per_year": "{amount} mm al año",
  "person": "{amount} {count, plural, one {persona} other {personas}}",
  "year": "{amount} {count, plural, one {año} other {años}}"
} as const;
