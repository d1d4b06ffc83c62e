import sharp from 'sharp';

/** Where the eye no longer tells a print from its original. From memory. */
const JPEG_QUALITY = 82;

/** How a picture is kept: no larger than this, in this form. */
export interface KeptAs {
  readonly width: number;
  readonly height: number;
  readonly type: 'image/png' | 'image/jpeg';
}

// One picture at a time, nothing kept, and no decoder but the two that are needed: a press is there to set documents.
sharp.cache(false);
sharp.concurrency(1);
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({ operation: ['VipsForeignLoadPngBuffer', 'VipsForeignLoadJpegBuffer'] });

export interface Redrawn {
  readonly bytes: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * A picture drawn anew: decoded, turned as its camera meant, brought to the size it is kept at, and encoded without
 * anything else that the file held: no place, no device, no time. Undefined when it cannot be decoded to its last byte.
 */
export async function redrawn(
  uploaded: Uint8Array,
  mostPixels: number,
  { width, height, type }: KeptAs,
): Promise<Redrawn | undefined> {
  try {
    const sized = sharp(uploaded, { limitInputPixels: mostPixels, failOn: 'warning', autoOrient: true })
      .resize({ width, height, fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb');
    const encoded =
      type === 'image/png'
        ? sized.png({ compressionLevel: 9, effort: 10 })
        : sized.flatten({ background: '#fff' }).jpeg({ quality: JPEG_QUALITY, mozjpeg: false });
    const { data, info } = await encoded.toBuffer({ resolveWithObject: true });
    return { bytes: data, widthPx: info.width, heightPx: info.height };
  } catch {
    return undefined;
  }
}
