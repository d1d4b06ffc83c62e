import { problem, type Problem } from '#lib/kernel';

/** How large an uploaded picture may be. A small file can hold a picture that fills the memory: four bytes a pixel. */
export interface PictureLimits {
  readonly mostBytes: number;
  readonly mostPixelsASide: number;
  readonly mostPixels: number;
}

interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** What is wrong with an uploaded picture, as far as it shows without decoding: judged by its own bytes, never by the name or type that came with it. */
export function uploadFaults(bytes: Uint8Array, limits: PictureLimits): readonly Problem[] {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (isHeif(buffer)) return [heif];
  const type = typeOf(buffer);
  if (type === undefined)
    return [problem('not-one-of', '', { value: 'neither by its content', choices: 'a PNG or JPEG picture' })];
  const size = type === 'png' ? pngSize(buffer) : jpegSize(buffer);
  return [
    ...(bytes.length > limits.mostBytes
      ? [
          problem('out-of-range', '', {
            value: `${bytes.length} bytes`,
            range: `at most ${limits.mostBytes} bytes`,
          }),
        ]
      : []),
    ...(size === undefined ? [undecodable] : sizeFaults(size, limits)),
  ];
}

export const undecodable: Problem = problem('not-supported', '', {
  why: 'the picture is damaged or cut short; save it anew as PNG or JPEG',
});

/** What many telephones write; the decoders at hand have no codec for it. */
const heif: Problem = problem('not-supported', '', {
  why: 'a HEIC or HEIF picture cannot be decoded here; PNG and JPEG are taken: export it as JPEG, or set the camera to write JPEG',
});

const sizeFaults = (
  { width, height }: PictureSize,
  { mostPixelsASide, mostPixels }: PictureLimits,
): readonly Problem[] => {
  const isUsual =
    width >= 1 && height >= 1 && Math.max(width, height) <= mostPixelsASide && width * height <= mostPixels;
  return isUsual
    ? []
    : [
        problem('out-of-range', '', {
          value: `${width} by ${height} pixels`,
          range: `1 to ${mostPixelsASide} pixels a side and ${mostPixels} pixels in all`,
        }),
      ];
};

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

function typeOf(bytes: Buffer): 'png' | 'jpeg' | undefined {
  if (bytes.length > 8 && bytes.subarray(0, 8).equals(PNG_SIGNATURE)) return 'png';
  if (bytes.length > 4 && bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  return undefined;
}

/** Brands of still pictures in an ISO base media file: ISO/IEC 23008-12, from memory. */
const HEIF_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

/** Such a file begins with a box `ftyp`, and in it the brand that it is written to. */
const isHeif = (bytes: Buffer): boolean =>
  bytes.length >= 12 &&
  bytes.toString('latin1', 4, 8) === 'ftyp' &&
  HEIF_BRANDS.includes(bytes.toString('latin1', 8, 12));

/** The first chunk of a PNG holds its size. */
const pngSize = (bytes: Buffer): PictureSize | undefined =>
  bytes.length < 33 || bytes.toString('latin1', 12, 16) !== 'IHDR'
    ? undefined
    : { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };

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
