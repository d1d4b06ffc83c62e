import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue, type Catalogue } from '#lib/catalogue';
import { detailOf, type Outcome } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { Estimate, EstimateWithWhy } from './document/estimate-document.js';
import type { DefectRecord, MethodChoice } from './job/defect-record.js';
import { estimate } from './estimate.js';

const deck = aRecord({
  panel: { ...aRecord().panel, surface: 'smooth-paint' },
  evidence: 'opened-and-measured',
  conditions: { temperatureC: 21, shelter: 'shed' },
  crew: { startDate: '2027-05-03' },
});
const outcomeOf = (
  method: MethodChoice,
  { record = deck, catalogue = shippedCatalogue }: { record?: DefectRecord; catalogue?: Catalogue } = {},
): Outcome<EstimateWithWhy> => estimate({ ...record, method }, catalogue, 'test');
function made(method: MethodChoice, record: DefectRecord = deck): Estimate {
  const outcome = outcomeOf(method, { record });
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
}
const polyester = 'resin-polyester-laminating';
const codesOf = ({ lines }: Estimate, beginning: string): readonly string[] =>
  lines
    .flatMap(({ code }) => (code.startsWith(beginning) ? [code.slice(beginning.length)] : []))
    .filter((code) => /coating|gelcoat|paint|wet-paper|buffing|inhibitor/.test(code))
    .sort();
const materialsOf = (made: Estimate): readonly string[] => codesOf(made, 'material-');
const worked = (made: Estimate): readonly string[] => made.process.calendar.tasks.map(({ code }) => code);
const cautioned = (made: Estimate): readonly string[] => made.cautions.map(({ code }) => code);
const taskOf = ({ process }: Estimate, code: string) => {
  const found = process.calendar.tasks.find((task) => task.code === code);
  if (found === undefined) throw new Error(`no task ${code}`);
  return found;
};

const painted = made({ finish: 'patch', resin: polyester });
const onPolyester = made({ finish: 'patch', finishIn: 'gelcoat', resin: polyester });
const onEpoxy = made({ finish: 'patch', finishIn: 'gelcoat' });
const gelcoatGoods = [
  'coating-gelcoat',
  'consumable-air-inhibitor',
  'consumable-buffing-compound',
  'consumable-buffing-pad',
  'consumable-gelcoat-hardener',
  'consumable-gelcoat-tint',
  'consumable-wet-paper',
];

describe('a deck finished in gelcoat', () => {
  test('over polyester buys neither primer, paint, thinner nor epoxy filler: resin is thickened for fairing', () => {
    expect(materialsOf(onPolyester)).toEqual(gelcoatGoods);
    expect(materialsOf(painted)).toEqual(
      expect.arrayContaining([
        'coating-epoxy-primer',
        'coating-fairing-compound',
        'consumable-paint-thinner',
      ]),
    );
    expect(onPolyester.process.demands.map(({ step }) => step)).toContain('fairing');
    expect(painted.process.demands.map(({ step }) => step)).not.toContain('fairing');
  });

  test('is tinted, keyed, laid in two coats and buffed where the other is primed and painted', () => {
    const finish = ['match-gelcoat', 'key-for-gelcoat', 'gelcoat-1', 'gelcoat', 'buff-gelcoat'];
    expect(worked(onPolyester)).toEqual(expect.arrayContaining(finish));
    for (const code of ['prime', 'topcoat', 'skim-fair', 'stand-before-paint', 'stand-before-gelcoat'])
      expect(worked(onPolyester)).not.toContain(code);
    for (const code of finish) expect(worked(painted)).not.toContain(code);
    expect(onPolyester.scope.included).toContain('finish of the patch in gelcoat');
  });

  // By hand: two coats of 2 m2 at 3.3 m2/l are 2 x 2 / 3.3.
  test('takes 0.61 l of gelcoat a square metre, and is buffed wherever it is smooth', () => {
    const whole = made({ finish: 'panel', finishIn: 'gelcoat', resin: polyester });
    const line = whole.lines.find(({ material }) => material === 'coating-gelcoat');
    expect(line?.netQuantity).toBeCloseTo((2 * 2) / 3.3, 2);
    const buffed = whole.lines.find(({ code }) => code === 'labour-buff-gelcoat');
    // The mean of 0.9, 1.6 and 2.8 h is 1.767 h a square metre.
    expect(buffed?.hours?.mean).toBeCloseTo(2 * 1.767, 2);
  });

  test('in nonskid keeps its grit and its masking, without another paint for it', () => {
    const nonskid = made(
      { finish: 'patch', finishIn: 'gelcoat', resin: polyester },
      { ...deck, panel: { ...deck.panel, surface: 'moulded-nonskid' } },
    );
    expect(worked(nonskid)).toContain('nonskid');
    expect(nonskid.lines.map(({ code }) => code)).toContain('material-consumable-nonskid-grit');
    expect(materialsOf(nonskid)).toEqual(gelcoatGoods);
    expect(taskOf(nonskid, 'buff-gelcoat').labourH).toBeLessThan(
      taskOf(onPolyester, 'buff-gelcoat').labourH / 3,
    );
  });
});

describe('gelcoat over epoxy', () => {
  // The source: about two weeks at room temperature; the deck is at 21 degC, for which they are printed.
  test('waits about two weeks that polyester does not', () => {
    const { waitH } = taskOf(onEpoxy, 'stand-before-gelcoat');
    expect(waitH / 24).toBeGreaterThan(12);
    expect(waitH / 24).toBeLessThan(17);
    expect(onEpoxy.summary.calendarDays.p50 - onPolyester.summary.calendarDays.p50).toBeGreaterThan(9);
  });

  test('is faired in epoxy, and is warned of with paint as the way out', () => {
    expect(materialsOf(onEpoxy)).toEqual(['coating-fairing-compound', ...gelcoatGoods]);
    expect(cautioned(onEpoxy)).toContain('gelcoat-on-epoxy');
    expect(cautioned(onPolyester)).not.toContain('gelcoat-on-epoxy');
  });

  test('brings peroxide and styrene into a job of epoxy, named by what holds them', () => {
    expect(cautioned(made({ finish: 'patch' }))).not.toContain('peroxide');
    const [peroxide, styrene] = ['peroxide', 'styrene'].map((code) =>
      onEpoxy.cautions.find((caution) => caution.code === code),
    );
    expect(peroxide?.because).toContain('gelcoat');
    expect(peroxide?.hazards.map(({ code }) => code)).toContain('H242');
    expect(styrene?.because).toContain('gelcoat');
  });
});

describe('a record that cannot be finished so', () => {
  test('names a topcoat as well: refused with both fields', () => {
    const outcome = outcomeOf({ finishIn: 'gelcoat', topcoat: 'coating-topcoat-one-part' });
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at, facts }) => [code, at, facts.other])).toEqual([
      ['contradiction', '/method/topcoat', '/method/finishIn'],
    ]);
  });

  test('asks for it in an edition that sells none', () => {
    const bare: Catalogue = {
      ...shippedCatalogue,
      materials: shippedCatalogue.materials.filter(({ code }) => code !== 'coating-gelcoat'),
    };
    const outcome = outcomeOf({ finishIn: 'gelcoat' }, { catalogue: bare });
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at])).toEqual([
      ['unknown-code', '/method/finishIn'],
    ]);
  });

  test('is opened from below: the deck keeps its finish, and nothing of it is bought', () => {
    const below = made({ access: 'from-below', finishIn: 'gelcoat' });
    expect(materialsOf(below).filter((code) => code.includes('gelcoat'))).toEqual([]);
    expect(cautioned(below)).not.toContain('styrene');
  });
});
