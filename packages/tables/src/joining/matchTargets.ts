import type { GeoPosition } from '@eavewell/engine';
import { changes, folded } from '../reading/nearest.ts';
import type { MapPoint } from './mapThings.ts';

/** The tables whose rows have a position. */
export type PositionTable = 'sites' | 'gauges' | 'places';

/** A row whose position a map may say. */
export interface PositionTarget {
  readonly table: PositionTable;
  readonly id: string;
  readonly name: string;
  readonly row: number;
  /** Null where either cell is empty or could not be used. */
  readonly position: GeoPosition | null;
}

/** By what a point was found to be a row. */
export type MatchedBy = 'id' | 'name' | 'likely';

/** The rows a point may be: one, or several that nobody can tell apart. */
export interface TargetsFound {
  readonly by: MatchedBy;
  readonly targets: readonly PositionTarget[];
  /** A row that its name says while its id says the other. */
  readonly against: PositionTarget | null;
}

const plainName = (name: string) => name.normalize('NFC').replace(/\s+/g, ' ').trim();
const digits = (name: string) => name.replace(/\D+/g, ' ').trim();

/** For how many points a name that is nearly theirs is sought, so that a map of another country does not take minutes. Ours. */
const mostSought = 2000;
/** Names shorter than this are not matched by nearness, and no more letters may differ: one in four, three at most. Ours. */
const [shortestNear, mostChanges] = [4, 3] as const;

function listed(map: Map<string, PositionTarget[]>, key: string, target: PositionTarget): void {
  const known = map.get(key);
  if (known) known.push(target);
  else map.set(key, [target]);
}

/** Finds the rows of the tables by id, by name, or by a name that is nearly theirs. */
export class TargetFinder {
  private readonly byId = new Map<string, PositionTarget[]>();
  private readonly byName = new Map<string, PositionTarget[]>();
  private sought = 0;
  private readonly near: readonly { readonly target: PositionTarget; readonly key: string; readonly digits: string }[];

  constructor(targets: readonly PositionTarget[]) {
    for (const target of targets) {
      listed(this.byId, target.id, target);
      listed(this.byName, plainName(target.name), target);
    }
    this.near = targets.map((target) => ({ target, key: folded(target.name), digits: digits(target.name) }));
  }

  /** Only the rows of the kind the file says the point is, where it says one of ours. */
  private ofKind(targets: readonly PositionTarget[], kind: string | null): readonly PositionTarget[] {
    const table = kind === 'site' ? 'sites' : kind === 'gauge' ? 'gauges' : null;
    const narrowed = targets.filter((target) => target.table === table);
    return narrowed.length > 0 ? narrowed : targets;
  }

  /** The rows whose names differ least, capitals, marks and spaces aside; the digits in them must be the same. */
  private nearly(name: string): readonly PositionTarget[] {
    const sought = folded(name);
    if (sought.length < shortestNear || this.sought++ >= mostSought) return [];
    const own = digits(name);
    let least = Math.min(mostChanges, Math.floor(sought.length / 4));
    let best: PositionTarget[] = [];
    for (const { target, key, digits: others } of this.near) {
      if (others !== own || key.length < shortestNear) continue;
      const distance = changes(sought, key, least);
      if (distance > least) continue;
      if (distance < least) best = [];
      least = distance;
      best.push(target);
    }
    return best;
  }

  find(point: Pick<MapPoint, 'ids' | 'name' | 'kind' | 'comment'>): TargetsFound | null {
    const { ids, name, kind, comment } = point;
    const named = name === null ? [] : this.ofKind(this.byName.get(plainName(name)) ?? [], kind);
    const words = [...ids, name, comment].filter((word) => typeof word === 'string');
    const byIds = new Set(words.flatMap((word) => this.ofKind(this.byId.get(word) ?? [], kind)));
    if (byIds.size > 0) {
      const targets = [...byIds];
      const against = named.length === 1 && !byIds.has(named[0]!) ? named[0]! : null;
      return { by: 'id', targets, against };
    }
    if (named.length > 0) return { by: 'name', targets: named, against: null };
    const near = name === null ? [] : this.ofKind(this.nearly(name), kind);
    return near.length > 0 ? { by: 'likely', targets: near, against: null } : null;
  }
}
