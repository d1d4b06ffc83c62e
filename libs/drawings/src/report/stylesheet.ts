/** The look of the page: ink on paper, one column, large enough on a phone, and the order of the PDF when printed. */
export const stylesheet = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { font: 100%/1.45 Arimo, "Liberation Sans", Arial, Helvetica, sans-serif; color: #111; background: #fff; -webkit-text-size-adjust: 100%; }
body { max-width: 60rem; margin: 0 auto; padding: 1rem; overflow-wrap: anywhere; }
header { border-bottom: 3px solid #111; margin-bottom: 1rem; }
.letterhead { display: flex; flex-wrap: wrap; gap: 0 1rem; align-items: center; margin: 0 0 1rem; color: #333; }
.letterhead img { max-height: 4rem; max-width: 12rem; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0; }
h2 { font-size: 1.3rem; border-bottom: 1px solid #111; margin: 2.2rem 0 .8rem; padding-bottom: .2rem; }
h3 { font-size: 1.08rem; margin: 1.6rem 0 .6rem; }
.subtitle { margin: .2rem 0 1rem; }
details > summary { cursor: pointer; list-style-position: outside; }
details > summary > h2 { display: inline-block; width: calc(100% - 1.2rem); margin: 1.2rem 0 .6rem; }
.body h2, #summary { font-size: 1.1rem; margin: 1rem 0 .5rem; }
nav ol { columns: 16rem; padding-left: 1.4rem; margin: 0; }
nav a { color: #003a70; display: inline-block; padding: .25rem 0; }
dl { margin: 0 0 1rem; }
dl div { display: grid; grid-template-columns: minmax(9rem, 2fr) 3fr; gap: .2rem 1rem; padding: .3rem 0; border-bottom: 1px solid #ccc; }
dt { color: #333; }
dd { margin: 0; font-weight: 700; }
.scroll { overflow-x: auto; margin: 0 0 1.2rem; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; font-variant-numeric: tabular-nums; overflow-wrap: break-word; }
caption { text-align: left; font-weight: 700; padding: .2rem 0 .4rem; }
caption.silent { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
th, td { text-align: left; vertical-align: top; padding: .35rem .6rem .35rem 0; border-bottom: 1px solid #ccc; }
th { border-bottom: 2px solid #111; vertical-align: bottom; }
.end { text-align: right; }
.wide { min-width: 8.5rem; }
td.end { white-space: nowrap; }
td small { display: block; color: #444; font-size: .85em; white-space: normal; }
tr.total td { font-weight: 700; border-top: 2px solid #111; }
tr.fails td, tr.hold td { font-weight: 700; background: #ececec; }
figure { margin: 0 0 1.4rem; border: 1px solid #bbb; padding: .4rem; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { font-weight: 700; padding-top: .4rem; }
.narrow { display: none; }
.cards { display: grid; grid-template-columns: 1fr 1fr; gap: 1rem; }
.callout { border-left: .5rem solid #111; padding: .5rem .8rem; margin: 0 0 .8rem; background: #f4f4f4; }
.callout p { margin: 0; }
.callout.warning { border-left-style: double; }
.callout.caution, .callout.note { border-left-style: dotted; }
.small { font-size: .88rem; color: #444; }
.signature dd { border-bottom: 1px solid #111; min-height: 2.4rem; }
footer { border-top: 1px solid #111; margin-top: 2rem; color: #333; font-size: .88rem; }
.photograph img { display: block; max-width: 100%; max-height: 88mm; }
@media (max-width: 40rem) {
  body { padding: .7rem; }
  details > summary { list-style-position: inside; }
  html { font-size: 90%; }
  header { margin-bottom: .4rem; }
  h1 { font-size: 1.15rem; }
  .subtitle { margin: .1rem 0 .4rem; font-size: .9rem; }
  .letterhead { margin: 0 0 .3rem; font-size: .8rem; }
  .body h2, #summary { font-size: 1rem; margin: .5rem 0 .3rem; }
  dl { margin: 0 0 .5rem; }
  dl div { grid-template-columns: minmax(5.5rem, 1fr) 3fr; padding: .15rem 0; gap: 0 .6rem; }
  dl.signature div { grid-template-columns: 1fr; }
  .signature dd { min-height: 1.6rem; }
  p, ul { margin: .3rem 0; }
  ul { padding-left: 1.1rem; }
  .broad { display: none; }
  .cards { display: block; }
  .narrow { display: block; }
  .scroll { overflow-x: visible; }
  table, tbody, tr, td { display: block; width: auto; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  tr { border-bottom: 1px solid #999; padding: .25rem 0; }
  td, td.end { border: 0; padding: .05rem 0; text-align: left; white-space: normal; display: grid; grid-template-columns: 5.5rem 1fr; column-gap: .6rem; min-width: 0; }
  td > small { grid-column: 2; }
  td::before { content: attr(data-of); color: #333; }
}
@media print {
  @page { margin: 17mm; }
  html { font-size: 9.5pt; }
  body { max-width: none; padding: 0; }
  body.a4 { width: 176mm; }
  nav, details.annex { display: none; }
  details > summary { list-style: none; }
  h2, h3, caption { break-after: avoid; }
  tr, figure, .callout, dl div,   thead { display: table-header-group; }
  .scroll { overflow: visible; }
  .task, .template { break-before: page; }
  .broad { display: block; }
  .narrow { display: none; }
  figure { border: 0; padding: 0; }
}
`;
