import { css } from 'lit';

/** A drawing office: paper and ink by day, a blueprint by night; lines instead of boxes, a title block instead of cards. */
export const styles = css`
  :host {
    color-scheme: light dark;
    --paper: light-dark(#faf8f2, #0d2238);
    --sheet: light-dark(#fffefb, #11304d);
    --ink: light-dark(#17222e, #e8f0f8);
    --soft: light-dark(#4c5a68, #b4c6d8);
    --rule: light-dark(#b9b6a8, #3f6385);
    --field: light-dark(#6f7a85, #7f9db9);
    --bad: light-dark(#a3311c, #ffb09a);
    --saw: light-dark(#0f5c8c, #8fd3ff);
    --good: light-dark(#1d6238, #9fe0b4);
    --marked: light-dark(#f3e6c4, #24496c);
    display: block;
    background: var(--paper);
    color: var(--ink);
    font:
      15px/1.45 'Arimo',
      'Liberation Sans',
      Arial,
      'Noto Sans Arabic',
      sans-serif;
    container-type: inline-size;
  }
  :host([hidden]) {
    display: none;
  }
  :host([theme='light']) {
    color-scheme: light;
  }
  :host([theme='dark']) {
    color-scheme: dark;
  }
  * {
    box-sizing: border-box;
  }

  .desk {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
  }
  .board {
    display: grid;
    grid-template-rows: auto 1fr auto;
    min-width: 0;
    border: 1px solid var(--ink);
    outline: 1px solid var(--rule);
    outline-offset: -5px;
    background: var(--sheet);
  }
  .plan {
    position: relative;
    height: 44vh;
    min-height: 250px;
    max-height: 420px;
  }
  svg {
    display: block;
    width: 100%;
    height: 100%;
    touch-action: none;
    cursor: crosshair;
    user-select: none;
  }
  svg:focus-visible {
    outline: 3px solid var(--saw);
    outline-offset: -6px;
  }

  .bar {
    display: flex;
    flex-wrap: wrap;
    gap: 2px;
    padding: 8px 8px 0;
  }
  .bar button {
    min-width: 44px;
    padding: 6px 8px;
    border-color: transparent;
  }
  .block {
    display: grid;
    grid-template-columns: repeat(6, minmax(0, 1fr));
    border-top: 1.5px solid var(--ink);
    margin: 0 5px 5px;
  }
  .cell {
    min-width: 0;
    padding: 4px 8px 6px;
    border-inline-end: 1px solid var(--ink);
    min-height: 56px;
  }
  .cell:last-child {
    border-inline-end: 0;
  }
  .cell-name {
    display: block;
    font-size: 11px;
    letter-spacing: 0.06em;
    text-transform: uppercase;
    color: var(--soft);
  }
  .cell-value {
    display: block;
    font-weight: 700;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .cell-range {
    display: block;
    font-size: 13px;
    min-height: 19px;
    font-variant-numeric: tabular-nums;
  }
  .cell.wide {
    display: none;
  }
  .cell.small {
    display: none;
  }
  .cell.price {
    grid-column: span 2;
  }
  .cell.price .cell-value {
    font-size: 19px;
  }
  .cell.verdict {
    grid-column: span 2;
  }
  .block[aria-busy='true'] .cell-value,
  .block[aria-busy='true'] .cell-range {
    color: var(--soft);
  }

  .side {
    min-width: 0;
    padding: 0 2px;
  }
  .tabs {
    display: grid;
    grid-template-columns: repeat(4, 1fr);
    margin: 10px 0 6px;
    border-bottom: 1.5px solid var(--ink);
    position: sticky;
    top: 0;
    background: var(--paper);
    z-index: 1;
  }
  .tabs button {
    border: 0;
    border-bottom: 4px solid transparent;
    background: none;
    text-transform: uppercase;
    letter-spacing: 0.06em;
    font-size: 14px;
  }
  .tabs button[aria-selected='true'] {
    border-bottom-color: var(--ink);
    font-weight: 700;
  }
  .message {
    min-height: 22px;
    margin: 2px 4px;
    color: var(--bad);
  }

  fieldset {
    border: 0;
    border-top: 1px solid var(--rule);
    margin: 0 0 10px;
    padding: 6px 0 4px;
    min-width: 0;
  }
  legend {
    padding-inline: 0 10px;
    font-size: 12px;
    letter-spacing: 0.08em;
    text-transform: uppercase;
    color: var(--soft);
  }
  details {
    border-top: 1px solid var(--rule);
    padding: 8px 4px;
  }
  summary {
    cursor: pointer;
    min-height: 32px;
    font-weight: 700;
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 8px 12px;
    align-items: end;
  }
  .field {
    display: block;
    min-width: 0;
  }
  .field > span {
    display: block;
    font-size: 13px;
    color: var(--soft);
  }
  .field.short {
    display: inline-block;
    width: 96px;
  }
  input,
  select,
  textarea {
    font: inherit;
    width: 100%;
    min-height: 40px;
    padding: 6px 8px;
    color: inherit;
    background: var(--sheet);
    border: 0;
    border-bottom: 1.5px solid var(--field);
    border-radius: 0;
  }
  input[type='checkbox'] {
    width: 22px;
    min-height: 22px;
    accent-color: var(--ink);
  }
  textarea {
    border: 1px solid var(--field);
    font-family: ui-monospace, 'Liberation Mono', monospace;
  }
  input[aria-invalid='true'] {
    border-bottom-color: var(--bad);
    border-bottom-width: 3px;
  }
  .check {
    display: inline-flex;
    gap: 6px;
    align-items: center;
    min-height: 40px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
    margin: 6px 0;
  }
  button {
    font: inherit;
    min-height: 40px;
    padding: 6px 12px;
    color: inherit;
    background: var(--sheet);
    border: 1px solid var(--field);
    border-radius: 0;
    cursor: pointer;
  }
  button:disabled {
    color: var(--soft);
    border-style: dashed;
    cursor: default;
  }
  button[aria-pressed='true'] {
    background: var(--ink);
    color: var(--sheet);
    border-color: var(--ink);
  }
  button.main {
    background: var(--ink);
    color: var(--sheet);
    border-color: var(--ink);
    font-weight: 700;
  }
  button.main:disabled {
    background: none;
    color: var(--soft);
    border-color: var(--field);
    font-weight: 400;
  }
  :is(button, input, select, textarea, summary, a, [tabindex]):focus-visible {
    outline: 3px solid var(--saw);
    outline-offset: 2px;
  }
  .sounds {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
  }
  .sound {
    min-height: 60px;
    font-size: 17px;
  }
  kbd {
    font: inherit;
    font-size: 12px;
    border: 1px solid var(--field);
    padding: 0 4px;
  }
  .drawn {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  .drawn li {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
    align-items: end;
    padding: 4px 0;
    border-bottom: 1px dotted var(--rule);
  }
  .drawn .remove {
    margin-inline-start: auto;
    min-width: 40px;
  }
  .help {
    color: var(--soft);
    margin: 4px 0;
  }
  .fault {
    color: var(--bad);
    margin: 2px 0;
    font-size: 14px;
  }
  .waiting {
    background: var(--marked);
    padding: 8px;
  }
  .caution {
    color: var(--soft);
    border-top: 1px solid var(--rule);
    padding-top: 8px;
  }
  .figures {
    display: grid;
    grid-template-columns: max-content 1fr;
    gap: 2px 14px;
    margin: 4px 0;
    font-variant-numeric: tabular-nums;
  }
  .figures dt {
    color: var(--soft);
  }
  .figures dd {
    margin: 0;
    text-align: end;
  }
  .figures .total {
    font-size: 20px;
    font-weight: 700;
  }
  .ladder {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .ladder li {
    border-bottom: 1px dotted var(--rule);
    padding: 4px 0;
  }
  .ladder p {
    margin: 0;
    color: var(--soft);
  }
  .ladder em {
    display: inline-block;
    font-style: normal;
    font-size: 13px;
    border: 1px solid var(--field);
    padding: 0 5px;
  }
  .ladder .mark {
    background: var(--ink);
    color: var(--sheet);
  }
  .taken-list {
    margin: 6px 0 0;
    padding-inline-start: 2.4em;
    font-variant-numeric: tabular-nums;
  }
  .taken-list li {
    margin: 2px 0;
  }
  .ladder .unfit strong {
    font-weight: 400;
  }
  .rung-price {
    display: block;
  }
  .spread {
    display: block;
    width: 100%;
    height: 12px;
    margin: 4px 0 2px;
  }
  .desk[dir='rtl'] .spread {
    transform: scaleX(-1);
  }
  .spread line {
    stroke: var(--rule);
    vector-effect: non-scaling-stroke;
  }
  .spread rect {
    fill: var(--soft);
  }
  .spread .middle {
    fill: var(--saw);
  }
  .photograph circle {
    fill: var(--marked);
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .photograph path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .photographs {
    list-style: none;
    margin: 6px 0 0;
    padding: 0;
  }
  .photographs li {
    display: grid;
    grid-template-columns: 72px minmax(0, 1fr);
    gap: 4px 10px;
    align-items: center;
    padding: 4px 0;
    border-bottom: 1px dotted var(--rule);
  }
  .photographs img {
    width: 72px;
    height: 54px;
    object-fit: cover;
    border: 1px solid var(--rule);
  }
  .photographs button,
  .photographs .fault {
    grid-column: 1 / -1;
    justify-self: start;
  }
  .asked circle {
    fill: var(--sheet);
    stroke: var(--saw);
    stroke-width: 1.5;
  }
  .asked-number {
    fill: var(--ink);
    font-size: 12px;
    text-anchor: middle;
  }
  .bars {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  .bars li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 90px 48px;
    gap: 8px;
    align-items: center;
  }
  meter {
    width: 100%;
    height: 12px;
    border: 1px solid var(--field);
    background: none;
  }
  meter::-webkit-meter-bar {
    height: 10px;
    border: 0;
    border-radius: 0;
    background: none;
  }
  meter::-webkit-meter-optimum-value {
    background: var(--soft);
  }
  meter::-moz-meter-bar {
    background: var(--soft);
  }
  table {
    border-collapse: collapse;
    width: 100%;
    font-variant-numeric: tabular-nums;
  }
  th,
  td {
    text-align: start;
    padding: 4px 6px;
    border-bottom: 1px solid var(--rule);
    vertical-align: top;
  }
  .number {
    text-align: end;
    white-space: nowrap;
  }
  .scroll {
    overflow-x: auto;
  }
  .drawing {
    width: 100%;
    background: #fff;
    border: 1px solid var(--rule);
  }
  a {
    color: var(--saw);
  }

  .panel {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2.5;
  }
  .hole {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .cross {
    stroke: var(--ink);
    stroke-width: 0.7;
  }
  .support {
    stroke: var(--soft);
    stroke-width: 2;
    stroke-dasharray: 7 4;
  }
  .centreline {
    stroke: var(--rule);
    stroke-width: 1;
    stroke-dasharray: 18 4 3 4;
  }
  .hatch {
    stroke: var(--bad);
    stroke-width: 1.2;
  }
  .zone {
    stroke: var(--bad);
    stroke-width: 1.8;
  }
  .saw {
    fill: none;
    stroke: var(--saw);
    stroke-width: 1.8;
    stroke-dasharray: 12 3 2 3;
  }
  .fitting circle {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.4;
  }
  .fitting path {
    stroke: var(--ink);
    stroke-width: 1;
    fill: none;
  }
  .leaking circle {
    stroke: var(--bad);
    stroke-width: 2.6;
  }
  .reading circle {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.4;
  }
  .reading path,
  .void circle {
    fill: var(--ink);
  }
  .plug rect {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 1.6;
  }
  .plug circle {
    fill: var(--ink);
  }
  .rotten rect,
  .wet-bonded rect {
    stroke: var(--bad);
  }
  text {
    fill: var(--ink);
    font-size: 12px;
    paint-order: stroke;
    stroke: var(--sheet);
    stroke-width: 3px;
  }
  .zone-name {
    font-weight: 700;
    text-anchor: middle;
    dominant-baseline: middle;
  }
  .meter {
    text-anchor: middle;
    font-size: 11px;
  }
  .size {
    text-anchor: middle;
  }
  .size.end {
    text-anchor: end;
  }
  .dimension path,
  .bow path {
    fill: none;
    stroke: var(--soft);
    stroke-width: 1;
  }
  .dimension .tick {
    stroke-width: 1.8;
  }
  .pen {
    fill: none;
    stroke: var(--bad);
    stroke-width: 2;
  }
  .pen-start {
    fill: var(--sheet);
    stroke: var(--bad);
    stroke-width: 2;
  }
  .handle {
    fill: var(--sheet);
    stroke: var(--saw);
    stroke-width: 2;
  }
  .chosen {
    fill: none;
    stroke: var(--saw);
    stroke-width: 2;
  }
  .next {
    fill: none;
    stroke: var(--saw);
    stroke-width: 3;
    animation: breathe 1.6s ease-in-out infinite;
  }
  .cursor {
    stroke: var(--saw);
    stroke-width: 1.5;
  }
  @keyframes breathe {
    50% {
      stroke-width: 6;
    }
  }
  @media (prefers-reduced-motion: reduce) {
    .next {
      animation: none;
    }
  }

  @container (min-width: 900px) {
    .desk {
      grid-template-columns: minmax(0, 1fr) 400px;
      gap: 16px;
    }
    .plan {
      height: auto;
      min-height: 480px;
      max-height: none;
    }
    .board {
      position: sticky;
      top: 8px;
      height: min(78vh, 760px);
    }
    .block {
      grid-template-columns: minmax(0, 2fr) minmax(150px, 1.6fr) 84px 84px minmax(0, 1.5fr) 60px;
    }
    .cell.wide,
    .cell.small {
      display: block;
    }
    .cell.price,
    .cell.verdict {
      grid-column: auto;
    }
  }
  @media print {
    .side,
    .bar {
      display: none;
    }
  }
`;
