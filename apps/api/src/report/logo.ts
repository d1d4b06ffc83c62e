import type { Logo } from '#lib/drawings';
import { problem, refusal, unlessProblems, type Outcome, type Problem } from '#lib/kernel';

/** Enough for a sharp letterhead at 300 dots an inch, and no more. */
const MOST_BYTES = 300_000;
const MOST_PIXELS_A_SIDE = 2400;

interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/**
 * A letterhead logo from what was uploaded: judged by its own bytes, never by the name or type that came with it.
 * Whether it can really be decoded shows only when the page is set: see `ReportService.logo`.
 */
export function logoFrom(bytes: Uint8Array): Outcome<Logo> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const type = typeOf(buffer);
  if (type === undefined) return refusal(problem('not-one-of', '/logo', { value: 'neither', choices: 'PNG, JPEG' }));
  const size = type === 'image/png' ? pngSize(buffer) : jpegSize(buffer);
  const problems: readonly Problem[] = [
    ...(bytes.length > MOST_BYTES ? [problem('out-of-range', '/logo', { value: `${bytes.length} bytes`, range: `at most ${MOST_BYTES} bytes` })] : []),
    ...(size === undefined ? [undecodable] : sizeFaults(size)),
  ];
  return unlessProblems(problems, () => ({ type, base64: buffer.toString('base64') }));
}

export const undecodable: Problem = problem('not-supported', '/logo', { why: 'the picture is damaged; save it anew as PNG or JPEG' });

const sizeFaults = ({ width, height }: PictureSize): readonly Problem[] => (width < 1 || height < 1 || Math.max(width, height) > MOST_PIXELS_A_SIDE
  ? [problem('out-of-range', '/logo', { value: `${width} by ${height} pixels`, range: `1 to ${MOST_PIXELS_A_SIDE} pixels a side` })] : []);

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

function typeOf(bytes: Buffer): Logo['type'] | undefined {
  if (bytes.length > 8 && bytes.subarray(0, 8).equals(PNG_SIGNATURE)) return 'image/png';
  if (bytes.length > 4 && bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'image/jpeg';
  return undefined;
}

/** The first chunk of a PNG holds its size. */
const pngSize = (bytes: Buffer): PictureSize | undefined =>
  (bytes.length < 33 || bytes.toString('latin1', 12, 16) !== 'IHDR' ? undefined : { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) });

/** Walks the segments of a JPEG to its frame header. */
function jpegSize(bytes: Buffer): PictureSize | undefined {
  let at = 2;
  while (at + 9 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1];
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { height: bytes.readUInt16BE(at + 5), width: bytes.readUInt16BE(at + 7) };
    at += 2 + bytes.readUInt16BE(at + 2);
  }
  return undefined;
}

