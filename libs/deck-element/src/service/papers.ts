import type { Kingplank } from 'kingplank-sdk';
import type { Document } from '../view/sheet.js';

/** A paper as a file to keep. */
export interface Paper {
  readonly blob: Blob;
  readonly name: string;
}

/** A document of an estimate, as the service sets it. */
export async function paperOf(
  client: Kingplank,
  id: string,
  document: Exclude<Document, 'basket'>,
): Promise<Paper> {
  const short = id.slice(0, 8);
  switch (document) {
    case 'report':
      return await client.estimates.pdf(id);
    case 'job-pack':
      return await client.estimates.pdf(id, { document: 'job-pack' });
    case 'templates':
      return await client.estimates.templates(id);
    case 'lines':
      return {
        blob: new Blob([await client.estimates.csv(id)], { type: 'text/csv' }),
        name: `lines-${short}.csv`,
      };
    case 'quotation':
      return xml(await client.estimates.quotation(id), `quotation-${short}.xml`);
  }
}

/** The order form for one supplier. */
export const orderOf = async (client: Kingplank, id: string, supplier: string): Promise<Paper> =>
  xml(await client.estimates.order(id, { supplier }), `order-${supplier}-${id.slice(0, 8)}.xml`);

const xml = (text: string, name: string): Paper => ({
  blob: new Blob([text], { type: 'application/xml' }),
  name,
});

/** Hands a paper to the browser to keep. */
export function keep({ blob, name }: Paper): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}
