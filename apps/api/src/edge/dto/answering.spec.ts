import { describe, expect, test } from '@jest/globals';
import { ask, askByKind, askList, askPart, askText, practice } from '#lib/asking';
import { answering } from './answering.js';
import { filled, problemsOf, withFields } from './field.js';
import { OneOf, Part } from './plain-fields.js';

const boltQuestions = {
  diameterMm: ask({ unit: 'mm', meaning: 'diameter of the bolt', range: { from: 3, upTo: 30 } }),
};
const plateQuestions = {
  name: askText({ meaning: 'name of the plate', atMost: 20 }),
  thicknessMm: ask({
    unit: 'mm',
    meaning: 'thickness of the plate',
    range: { from: 1, upTo: 20 },
    otherwise: practice(5, 'a plate of 5 mm lies flat'),
  }),
  bolts: askList({ meaning: 'bolts', least: 1, most: 4, of: boltQuestions }),
  first: askPart({ meaning: 'the first bolt', of: boltQuestions, otherwise: 'unknown' }),
};

const kindQuestions = {
  fixings: askByKind<object>({
    meaning: 'fixings',
    by: 'kind',
    kinds: { bolt: boltQuestions },
    least: 0,
    most: 2,
  }),
};

class BoltDto extends answering(boltQuestions) {}
class PlateDto extends answering(plateQuestions, { bolts: () => BoltDto, first: () => BoltDto }) {}

const faultsOf = (raw: object): readonly string[] => {
  const dto = filled(PlateDto, raw);
  return typeof dto === 'object' && dto !== null
    ? problemsOf(dto).map(({ code, at }) => `${code} ${at}`)
    : ['not an object'];
};

describe('a class that answers a set of questions', () => {
  test('reads every one of them, in the units that a person types', () => {
    const dto = filled(PlateDto, { name: 'A', thicknessMm: '1/4 in', bolts: [{ diameterMm: 8 }] });
    expect(dto).toBeInstanceOf(PlateDto);
    expect(dto).toMatchObject({ name: 'A', thicknessMm: 6.35, bolts: [{ diameterMm: 8 }] });
    expect(Reflect.get(Object(dto), 'bolts')[0]).toBeInstanceOf(BoltDto);
  });

  test('asks for what has no default and for nothing else', () => {
    expect(withFields(PlateDto)).toBe(' with name, bolts');
  });

  test('refuses what the questions refuse, at its place, in every part, and what nobody asked', () => {
    expect(
      faultsOf({ name: '', thicknessMm: 50, bolts: [{ diameterMm: 2 }], first: {}, second: 1 }).toSorted(),
    ).toEqual([
      'missing /first/diameterMm',
      'out-of-range /bolts/0/diameterMm',
      'out-of-range /thicknessMm',
      'text-length /name',
      'unknown-field /second',
    ]);
  });

  test('is not made while a question with parts has no class, or one class for several kinds', () => {
    expect(() => answering(plateQuestions)).toThrow('bolts" has parts of its own: name their class');
    expect(() => answering(kindQuestions, { fixings: () => BoltDto })).toThrow('a class for each');
  });

  test('takes objects of several kinds by the class of each, and a form of its own by its field', () => {
    class KindOfBoltDto extends answering(boltQuestions) {
      @OneOf(['bolt'], {})
      readonly kind!: 'bolt';
    }
    const questions = {
      ...kindQuestions,
      spare: askPart({ meaning: 'a spare bolt', of: boltQuestions, otherwise: 'unknown' }),
    };
    class FixingsDto extends answering(
      questions,
      { fixings: () => ({ bolt: KindOfBoltDto }) },
      { spare: (said) => Part(() => BoltDto, said) },
    ) {}
    const dto = filled(FixingsDto, { fixings: [{ kind: 'bolt', diameterMm: 6 }], spare: { diameterMm: 40 } });
    expect(Reflect.get(Object(dto), 'fixings')[0]).toBeInstanceOf(KindOfBoltDto);
    expect(problemsOf(Object(dto)).map(({ at }) => at)).toEqual(['/spare/diameterMm']);
  });
});
