import { createHash, randomBytes } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { dayOnClock } from '@eavewell/engine';
import type { Keeping } from '@eavewell/work';
import type { OpenProgramme } from '../openProgramme.ts';
import { programBuild } from '../programBuild.ts';
import type { Programmes } from '../programmes.ts';
import type { RolloutAt } from './heldRollout.ts';
import type { SheetAsked } from './rolloutAsks.ts';

/** The rollouts of programmes: a thread that stays holds the one asked for last, and answers what is asked of it. */
export class Rollouts {
  /** Called as a rollout is made ready. */
  onMaking: (programmeId: string, done_fraction: number) => void = () => undefined;

  constructor(
    private readonly programmes: Programmes,
    private readonly keeping: Keeping,
  ) {}

  /** The page of a plan, as JSON. */
  sheet(programme: OpenProgramme, asked: Omit<SheetAsked, 'at'>): Promise<string> {
    return this.ask(programme, 'sheet', asked);
  }

  /** One trip in full, as JSON; or what there is none of. */
  trip(
    programme: OpenProgramme,
    asked: { readonly planId: string | null; readonly tripId: string; readonly language: string },
  ): Promise<{ readonly text: string } | 'plan' | 'trip'> {
    return this.ask(programme, 'trip', asked);
  }

  close(): Promise<void> {
    return this.keeping.close();
  }

  private async ask<T>(programme: OpenProgramme, name: string, asked: object): Promise<T> {
    const passing = await this.programmes.passingFolder('designs');
    try {
      const at = await this.stateOf(programme, passing);
      const { programmeId } = programme.entry;
      return await this.keeping.ask<T>(
        name,
        { ...asked, at },
        {
          onReport: (done_fraction) => this.onMaking(programmeId, done_fraction),
        },
      ).result;
    } finally {
      await rm(passing, { recursive: true, force: true });
    }
  }

  private async stateOf({ entry, version }: OpenProgramme, passing: string): Promise<RolloutAt> {
    const { programmeId } = entry;
    const [today, build] = [dayOnClock(new Date()), await programBuild()];
    const stamp = createHash('sha256')
      .update(JSON.stringify([programmeId, version, today, build]))
      .digest('hex');
    return {
      ...{ dataFolder: this.programmes.folder, programmeId, version, today, build, stamp: stamp.slice(0, 20) },
      passing: join(passing, randomBytes(4).toString('hex')),
      designs: this.programmes.derivedFolder(join('designs', programmeId)),
    };
  }
}
