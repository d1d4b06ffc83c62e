import type { Catalogue } from '../catalogue.js';

/** Generated from libs/catalogue/data by `npm run gen`; never edited by hand. */
export const shippedCatalogue: Catalogue = {
 "edition": "shipped-d6d4fad2",
 "hash": "d6d4fad27d4ed92702a206cd02cda62ca2ea2bfec4a28ba9f7f728073353bfdc",
 "materials": [],
 "priceLists": [],
 "labourRates": [],
 "sources": [
  {
   "key": "ARITHMETIC",
   "title": "Arithmetic",
   "body": "this project",
   "year": "2026",
   "readAs": "derived"
  },
  {
   "key": "COMMON-PRACTICE",
   "title": "Common practice, no published source",
   "body": "the trade",
   "year": "n.d.",
   "readAs": "common-practice"
  },
  {
   "key": "FROM-MEMORY",
   "title": "From memory, no source opened",
   "body": "this project",
   "year": "2026",
   "readAs": "memory"
  },
  {
   "key": "YARD-POUND-1959",
   "title": "International yard and pound agreement",
   "body": "national standards laboratories of six countries",
   "year": "1959",
   "readAs": "memory",
   "note": "exact definitions of the inch and the pound"
  }
 ]
};
