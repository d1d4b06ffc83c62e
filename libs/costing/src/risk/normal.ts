/** What the papers on sampling call a score and a share. */
export { normalCdf as normalShare, normalQuantile as normalScore } from '#lib/kernel';
