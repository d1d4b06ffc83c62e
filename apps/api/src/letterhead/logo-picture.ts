import sharp from 'sharp';

/** The letterhead leaves 50 by 14 mm; at 600 dots an inch nobody sees a dot. */
const PRINTED = { width: 1181, height: 331 } as const;

// One picture at a time, nothing kept, and no decoder but the two that are needed: a press is there to set documents.
sharp.cache(false);
sharp.concurrency(1);
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({ operation: ['VipsForeignLoadPngBuffer', 'VipsForeignLoadJpegBuffer'] });

/**
 * A picture drawn anew: decoded, turned as its camera meant, brought to the size it is printed at, and encoded as PNG
 * without anything else that the file held. Undefined when it cannot be decoded to its last byte.
 */
export async function redrawn(uploaded: Uint8Array, mostPixels: number): Promise<Uint8Array | undefined> {
  try {
    return await sharp(uploaded, { limitInputPixels: mostPixels, failOn: 'warning', autoOrient: true })
      .resize({ ...PRINTED, fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb')
      .png({ compressionLevel: 9, effort: 10 })
      .toBuffer();
  } catch {
    return undefined;
  }
}
