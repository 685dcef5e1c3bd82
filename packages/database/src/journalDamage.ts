/** Sizes of the head of a journal and of the head of each of its frames [byte]. */
const [headSize, frameHeadSize] = [32, 24] as const;

/** What a disk writes wholly or not at all [byte]; common practice, no source. */
const sector = 512;

/** What a journal begins with; the last bit says how its numbers are added up. */
const magic = 0x377f0682;

/** Pages of a journal whose head cannot be read are looked for at the size of this program's files [byte]. */
const usualPage = 4096;

/** The two running sums over pairs of numbers, as the journal has them. */
function summed([a, b]: readonly [number, number], bytes: Buffer, isBig: boolean): [number, number] {
  let [first, second] = [a, b];
  for (let at = 0; at < bytes.length; at += 8) {
    const [x, y] = isBig
      ? [bytes.readUInt32BE(at), bytes.readUInt32BE(at + 4)]
      : [bytes.readUInt32LE(at), bytes.readUInt32LE(at + 4)];
    first = (first + x + second) >>> 0;
    second = (second + y + first) >>> 0;
  }
  return [first, second];
}

interface Frame {
  /** Do its head's size and salts stand in one sector, so that they were written together? */
  readonly isHeadWhole: boolean;
  readonly page: number;
  /** Pages of the file once the transaction that ends here counts; 0 within one. */
  readonly filePages: number;
  readonly salts: string;
  readonly sums: readonly [number, number];
  readonly head: Buffer;
  readonly content: Buffer;
}

function framesOf(journal: Buffer, pageSize: number): readonly Frame[] {
  const frames: Frame[] = [];
  for (let at = headSize; at + frameHeadSize + pageSize <= journal.length; at += frameHeadSize + pageSize) {
    frames.push({
      isHeadWhole: Math.floor((at + 4) / sector) === Math.floor((at + 15) / sector),
      page: journal.readUInt32BE(at),
      filePages: journal.readUInt32BE(at + 4),
      salts: journal.toString('hex', at + 8, at + 16),
      sums: [journal.readUInt32BE(at + 16), journal.readUInt32BE(at + 20)],
      head: journal.subarray(at, at + 8),
      content: journal.subarray(at + frameHeadSize, at + frameHeadSize + pageSize),
    });
  }
  return frames;
}

const isSame = (a: readonly [number, number], b: readonly [number, number]) => a[0] === b[0] && a[1] === b[1];
const ends = ({ filePages }: Frame) => filePages > 0;

/** Does the file hold everything that frames of one round brought? Then nothing rests on them. */
function isInFile(frames: readonly Frame[], file: Buffer): boolean {
  const last = frames.findLastIndex(ends);
  const { filePages = 0 } = frames[last] ?? {};
  const pages = new Map(frames.slice(0, last + 1).map(({ page, content }) => [page, content]));
  return [...pages].every(([page, content]) => {
    const at = (page - 1) * content.length;
    return page > filePages || file.subarray(at, at + content.length).equals(content);
  });
}

/**
 * Was a journal damaged, so that changes which were on the disk would be passed over in silence? Every change is on the disk before
 * the next begins, so after a power cut only the last one in the journal can be incomplete. Where more than one ends at or behind the
 * first frame that does not add up, it was no power cut. A head that cannot be read is harmless where the file holds all that follows it.
 *
 * @param journal - the bytes of the journal [byte]
 * @param file - the bytes of the file it belongs to [byte]
 * @returns whether changes would be lost that had counted
 * @source sqlite-fileformat, section 4, the write-ahead log
 */
export function isJournalDamaged(journal: Buffer, file: Buffer): boolean {
  if (journal.length < headSize) return false;
  const kind = journal.readUInt32BE(0);
  const isBig = (kind & 1) === 1;
  const sums: readonly [number, number] = [journal.readUInt32BE(24), journal.readUInt32BE(28)];
  const isHeadSound = (kind & ~1) >>> 0 === magic && isSame(summed([0, 0], journal.subarray(0, 24), isBig), sums);
  if (!isHeadSound) {
    const frames = framesOf(journal, usualPage);
    const [first] = frames;
    const last = frames.findIndex(({ salts }) => salts !== first!.salts);
    return !isInFile(last < 0 ? frames : frames.slice(0, last), file);
  }
  const salts = journal.toString('hex', 16, 24);
  const frames = framesOf(journal, journal.readUInt32BE(8));
  // Each frame is added up behind the one before it, as that one says it came out.
  const before = (at: number) => frames[at - 1]?.sums ?? sums;
  const addsUp = (frame: Frame, at: number) =>
    isSame(summed(summed(before(at), frame.head, isBig), frame.content, isBig), frame.sums);
  const broken = frames.findIndex((frame, at) => frame.salts !== salts || !addsUp(frame, at));
  if (broken < 0) return false;
  // One that adds up behind another of this round is of it too, whatever became of its salts. Of one that does not, half the head may
  // be of an older round where it stands across two sectors.
  let isOfRound = true;
  let ended = 0;
  for (let at = broken; at < frames.length; at++) {
    const frame = frames[at]!;
    const isSure: boolean = isOfRound && addsUp(frame, at);
    isOfRound = isSure || frame.salts === salts;
    if (ends(frame) && (isSure || (isOfRound && frame.isHeadWhole))) ended++;
  }
  return ended > 1;
}
