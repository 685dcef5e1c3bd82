import type { Picture } from '@eavewell/drawing';
import type { Station, StationVerdict } from '@eavewell/engine';

/** A stretch of the way in. Null: not known. */
export interface WayLeg {
  readonly mode: 'road' | 'river' | 'foot';
  /** Where it begins and ends, by name. */
  readonly from: string;
  readonly to: string;
  readonly length_km: number | null;
  /** Usual time, and within which it lies on eight days in ten. */
  readonly time_h: number | null;
  readonly range_h: { readonly low: number; readonly high: number } | null;
  /** `three rapids`, `open until about 27 July`; null: nothing. */
  readonly note: string | null;
}

/** A drawing to scale: 1 to so many. */
export interface ScaledPicture {
  readonly picture: Pick<Picture, 'width' | 'height' | 'shapes' | 'isCutOut'>;
  readonly oneTo: number | null;
}

/** One station: what was found and what is done about it on this trip. Texts are sentences or parts of them in the language of the pack. */
export interface PackStation {
  readonly station: Station;
  readonly verdict: StationVerdict;
  /** `dry 21.7 d a year, target at most 18`. */
  readonly figure: string | null;
  readonly reason: string | null;
  readonly toDo: string | null;
}

/** A part in a load. */
export interface PackItem {
  readonly partId: string;
  readonly what: string;
  /** `110 mm, 6.0 m`. */
  readonly size: string | null;
  readonly count: number;
  /** Of all of them together; null: not known. */
  readonly weight_kg: number | null;
  /** How many people lift one; null: not known. */
  readonly hands_count: number | null;
}

/** What one carrier takes in one go. */
export interface PackLoad {
  readonly loadId: string;
  /** `boat Tern`, `two people`. */
  readonly carrier: string;
  readonly weight_kg: number | null;
  readonly limit_kg: number | null;
  readonly longest_m: number | null;
  readonly items: readonly PackItem[];
  /** Said over its list: chlorine apart from fuel, freeboard. */
  readonly cautions: readonly string[];
}

/** A step, with the cautions that apply where the hand is. */
export interface PackStep {
  readonly said: string;
  readonly cautions: readonly string[];
}

/** What is to be tested; nulls are lines to write on. */
export interface PackTests {
  /** At the taps, of the unit when new, as designed. */
  readonly flow_L_per_h: number | null;
  readonly taps_count: number | null;
  /** The test with air: its pressure, the highest the catalogue gives the unit, and the most it may fall. */
  readonly air_kPa: number | null;
  readonly airMost_kPa: number | null;
  readonly airFall_kPa_per_min: number | null;
  readonly units: readonly string[];
  readonly samplePlaces: readonly string[];
  /** Free chlorine that must be left at the tap [mg/L], from what to what. */
  readonly residual_mg_per_L: { readonly least: number; readonly most: number } | null;
  readonly hasChlorine: boolean;
}

/** A picture of the caretaker's sheet, and the word beside it. */
export interface CaretakerPicture {
  readonly picture: Pick<Picture, 'width' | 'height' | 'shapes'>;
  readonly title: string;
}

/** Everything a site pack says. A plain value: nothing of it is worked out on the page. */
export interface SitePackContent {
  readonly programme: string;
  readonly siteId: string;
  readonly name: string;
  readonly people: number | null;
  readonly caretaker: string | null;
  readonly trip: { readonly tripId: string; readonly crew: string; readonly from: string; readonly to: string } | null;
  /** The finding in a sentence or two, as the report has it. */
  readonly finding: string;
  readonly way: readonly WayLeg[];
  readonly section: (ScaledPicture & { readonly measuredOn: string | null; readonly measuredBy: string | null }) | null;
  readonly stations: readonly PackStation[];
  /** What is built, larger; null where nothing is. */
  readonly detail: (ScaledPicture & { readonly title: string }) | null;
  readonly beforeAnything: readonly string[];
  /** Framed on the first page. */
  readonly cautions: readonly string[];
  readonly loads: readonly PackLoad[];
  readonly steps: readonly PackStep[];
  readonly tests: PackTests;
  readonly pictures: readonly CaretakerPicture[];
}

/** When it is printed: given, so that the same pack is the same file. */
export interface SitePackOptions {
  /** `2026-06-09` and `17:20`. */
  readonly printedOn: string;
  readonly printedAt: string | null;
  /** Pages at most; tables are shortened to hold it, cautions never. */
  readonly mostPages?: number;
}
