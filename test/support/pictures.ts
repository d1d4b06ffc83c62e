import { crc32, deflateSync } from 'node:zlib';

/** Pictures written by hand, byte by byte, so that a test knows what is in them. */
export const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

export const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A grey PNG that says it has this size; `rows` are what is really in it, and `between` what stands before them. */
export function png(
  width: number,
  height: number,
  { rows = height, between = [] }: { readonly rows?: number; readonly between?: readonly Buffer[] } = {},
): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 0, 0, 0, 0], 8);
  const grey = Buffer.alloc((width + 1) * rows, 0x90).map((value, index) =>
    index % (width + 1) === 0 ? 0 : value,
  );
  return Buffer.concat([
    PNG_SIGNATURE,
    chunk('IHDR', head),
    ...between,
    chunk('IDAT', deflateSync(grey)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Width and height as the header of a PNG has them. */
export const sizeOfPng = (picture: Uint8Array): readonly [number, number] => {
  const bytes = Buffer.from(picture);
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
};

/** The names of the chunks of a PNG, in order. */
export function chunksOf(picture: Uint8Array): readonly string[] {
  const bytes = Buffer.from(picture);
  const names: string[] = [];
  for (let at = PNG_SIGNATURE.length; at < bytes.length; at += 12 + bytes.readUInt32BE(at))
    names.push(bytes.toString('latin1', at + 4, at + 8));
  return names;
}

/** Eight by eight grey points as another program compressed them. */
export const greyJpeg = Buffer.from(
  '' +
    '/9j/4AAQSkZJRgABAQEASABIAAD/2wBDABQODxIPDRQSEBIXFRQYHjIhHhwcHj0sLiQySUBMS0dARkVQWnNiUFVtVkVGZIhlbXd7gYKBTmCNl4x9lnN+gXz/wAALCAAIAAgBAREA/8QAHwAAAQUBAQ' +
    'EBAQEAAAAAAAAAAAECAwQFBgcICQoL/8QAtRAAAgEDAwIEAwUFBAQAAAF9AQIDAAQRBRIhMUEGE1FhByJxFDKBkaEII0KxwRVS0fAkM2JyggkKFhcYGRolJicoKSo0NTY3ODk6Q0RFRkdISUpTVFVW' +
    'V1hZWmNkZWZnaGlqc3R1dnd4eXqDhIWGh4iJipKTlJWWl5iZmqKjpKWmp6ipqrKztLW2t7i5usLDxMXGx8jJytLT1NXW19jZ2uHi4+Tl5ufo6erx8vP09fb3+Pn6/9oACAEBAAA/ACv/2Q==',
  'base64',
);
