import type { CalendarTask } from '#lib/estimate';
import type { ReportRequest } from '../request.js';

/** Steps by the beginning of their code, or the first that stands behind a gate, or simply the first of the job. */
type FirstNeeded = readonly string[] | 'resin' | 'coating' | 'first';

const cutting = ['cut-skin', 'strip-cut', 'spot-dig', 'overlay-off', 'drill-injection', 'joint-grind'];
const plies = ['tape-core-joints', 'laminate', 'strip-close', 'joint-tape', 'wrap-upstand', 'grind-inner'];
const bolting = ['refit', 'spot-bed', 'frame-bed'];
const pressing = ['bed-core', 'fill-solid', 'strip-fill'];

/** What of the stores a step is the first to ask for, by the beginning of the line's code; common practice, no published source. */
const firstNeeded: readonly (readonly [string, FirstNeeded])[] = [
  ['core-', ['fit-core']],
  ['fabric-', plies],
  ['resin', 'resin'],
  ['hardener', 'resin'],
  ['filler-', 'resin'],
  ['coating-fairing', ['fair', 'skim-fair', 'strip-close', 'spot-redrill']],
  ['coating-nonskid', ['nonskid']],
  ['coating-epoxy-primer', ['prime']],
  ['coating-gelcoat', ['match-gelcoat', 'gelcoat']],
  ['coating-', ['topcoat']],
  ['hardware-board', ['make-plates', 'set-inserts', 'spot-bed']],
  ['hardware-', bolting],
  ['leak-', ['frame-bed', 'joint-', 'slot', 'leak-', ...bolting]],
  ['overlay-', ['overlay-back']],
  ['consumable-acetone', ['taper', 'grind-inner', 'joint-grind', 'overlay-scrape', 'spot-clean']],
  ['consumable-board-strip', ['fair', 'skim-fair']],
  ['consumable-cutting-disc', cutting],
  ['consumable-grinding-disc', ['grind-inner', 'taper', 'joint-grind', ...cutting]],
  ['consumable-laminating-roller', plies],
  ['consumable-peel-ply', plies],
  ['consumable-air-inhibitor', [...plies, 'gelcoat']],
  ['consumable-gelcoat-', ['match-gelcoat', 'gelcoat']],
  ['consumable-wet-paper', ['buff-gelcoat']],
  ['consumable-buffing-', ['buff-gelcoat']],
  ['consumable-plastic-sheet', ['protect', 'spot-protect']],
  ['consumable-prop-timber', ['prop', 'deck-bows']],
  ['consumable-overhead-prop', pressing],
  ['consumable-release-film', pressing],
  ['consumable-sand-bag', pressing],
  ['consumable-batten', pressing],
  ['consumable-perforated-film', pressing],
  ['consumable-breather', pressing],
  ['consumable-vacuum-film', pressing],
  ['consumable-vacuum-hose', pressing],
  ['consumable-bag-sealant', pressing],
  ['fastener-temporary-screw', pressing],
  ['consumable-nonskid', ['nonskid']],
  ['consumable-stipple', ['nonskid']],
  ['consumable-fine-line', ['mask', 'nonskid']],
  ['consumable-masking-paper', ['mask', 'protect']],
  ['consumable-paint-', 'coating'],
  ['consumable-tack-cloth', 'coating'],
  ['consumable-tipping', 'coating'],
  ['consumable-sanding-disc-120', ['sand-old-finish', 'prime', 'key-for-gelcoat']],
  ['consumable-sanding-disc', ['check-bond', 'fair', 'sand-old-finish']],
  ['consumable-vacuum-cleaner', cutting],
  ['consumable-waste-sack', ['core-out', ...cutting]],
  ['consumable-masking-tape', ['protect', 'spot-protect']],
  ['consumable-', 'resin'],
  ['safety-dust-curtain', ['protect', 'spot-protect']],
  ['safety-eye-wash', 'resin'],
  ['safety-skin', 'resin'],
  ['safety-waste-bin', 'resin'],
  ['safety-', 'first'],
];

/** Of the yard's charges, those that stand on the deck when their step begins. */
const firstHired: readonly (readonly [string, FirstNeeded])[] = [
  ['yard-tent', ['tent']],
  ['yard-shade', 'first'],
  ['yard-heater', ['dry', 'stand-before-paint', 'stand-before-gelcoat']],
  ['yard-power', 'first'],
];

export interface AtHand {
  readonly kind: 'goods' | 'tools' | 'hired';
  readonly said: string;
  /** Code of the task that is the first to need it. */
  readonly from: string;
}

/** What must be at hand: each thing once, at the first step that needs it. Packs and their number stand in the pick list. */
export function atHand(request: ReportRequest): readonly AtHand[] {
  const { estimate, reader } = request;
  const { tasks } = estimate.process.calendar;
  const from = (need: FirstNeeded | undefined): string => (firstTask(need, tasks) ?? tasks.at(0))?.code ?? '';
  const called = calledOnDeck(estimate.lines.flatMap(({ packs }) => packs.map(({ name }) => name)));
  const goods = estimate.lines.flatMap(({ code, packs }) => {
    const need = needOf(code.replace(/^material-/, ''), firstNeeded);
    return packs.map(({ name }): AtHand => ({ kind: 'goods', said: called(name), from: from(need) }));
  });
  const hired = estimate.lines.flatMap(({ code, title }): readonly AtHand[] => {
    const need = needOf(code, firstHired);
    return need === undefined ? [] : [{ kind: 'hired', said: title, from: from(need) }];
  });
  const tools = [...firstUses(tasks, reader.words.jobPack.tools)].map(([said, code]): AtHand => ({
    kind: 'tools',
    said,
    from: code,
  }));
  return [...goods, ...tools, ...hired];
}

const needOf = (code: string, needs: readonly (readonly [string, FirstNeeded])[]): FirstNeeded | undefined =>
  needs.find(([begins]) => code.startsWith(begins))?.[1];

function firstTask(need: FirstNeeded | undefined, tasks: readonly CalendarTask[]): CalendarTask | undefined {
  if (need === undefined || need === 'first') return tasks.at(0);
  if (need === 'resin' || need === 'coating') return tasks.find(({ gate }) => gate === need);
  return tasks.find(({ code }) => need.some((begins) => code.startsWith(begins)));
}

/** The name without its sizes, and with the first of them where other goods are called alike. */
function calledOnDeck(names: readonly string[]): (name: string) => string {
  const goods = [...new Set(names)];
  return (name) => {
    const [called, size] = name.split(', ');
    const isAlone = goods.every((other) => other === name || !other.startsWith(`${called}, `));
    return isAlone || size === undefined ? called : `${called}, ${size}`;
  };
}

/** Each tool once, with the code of the step that first needs it, in the order of the steps. */
function firstUses(
  tasks: readonly CalendarTask[],
  tools: Readonly<Record<string, string>>,
): ReadonlyMap<string, string> {
  const uses = tasks.flatMap(({ code }) =>
    Object.entries(tools)
      .filter(([step]) => code.startsWith(step))
      .flatMap(([, named]) => named.split('; ').map((tool) => [tool, code] as const)),
  );
  const first = new Map<string, string>();
  for (const [tool, code] of uses) if (!first.has(tool)) first.set(tool, code);
  return first;
}
