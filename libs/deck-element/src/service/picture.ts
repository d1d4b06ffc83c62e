/** The service prints no more of a side than this. */
const MOST_PX = 1400;
const QUALITY = 0.85;

/**
 * A picture upright and at the size it is printed, drawn anew: what a camera writes beside it (place, device, time) never
 * leaves the device, and a yard's connection carries a tenth of the file. Undefined for what this browser cannot decode.
 */
export async function pictureOf(file: Blob): Promise<Blob | undefined> {
  const bitmap = await decoded(file);
  if (bitmap === undefined) return undefined;
  const scale = Math.min(1, MOST_PX / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const jpeg = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, 'image/jpeg', QUALITY);
  });
  return jpeg ?? undefined;
}

async function decoded(file: Blob): Promise<ImageBitmap | undefined> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return undefined;
  }
}
