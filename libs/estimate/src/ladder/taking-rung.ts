import { assumptionOf, type Answer } from '#lib/asking';
import { usualTaper } from '#lib/laminate';
import type { JudgedRung } from '#lib/methods';
import { assumed } from '#lib/provenance';
import { fraction, mm } from '#lib/units';
import type { Job } from '../job/job.js';
import { methodQuestions } from '../job/questions/method.js';

type MethodAnswers = Job['answers']['method'];

/** The job as the rung does it: which skin is cut and what becomes of it, with the rung's own reason where nobody said so. */
export function takingRung(job: Job, rung: JudgedRung): Job {
  const taken = takenBy(job, rung);
  return {
    ...job,
    fill: rung.method.fill,
    answers: { ...job.answers, method: { ...job.answers.method, ...taken } },
    assumptions: [
      ...job.assumptions.filter(({ at }) => !replaced.includes(at)),
      ...assumptionOf(taken.access, methodQuestions.access.meaning),
      ...assumptionOf(taken.skin, methodQuestions.skin.meaning),
    ],
  };
}

const replaced: readonly string[] = ['/method/access', '/method/skin'];

function takenBy(
  { record, answers }: Job,
  { method, deciding }: JudgedRung,
): Pick<MethodAnswers, 'access' | 'skin' | 'taperRatio' | 'flangeMm'> {
  const access = method.cutSide === 'inner' ? 'from-below' : 'from-above';
  const skin = method.skin === 'bonded-back' ? 're-bed' : 'relay';
  const because = `it goes with the way that is planned: ${method.title}`;
  const byRung = <T>(value: T, at: string): Answer<T> => ({ value, at, because, assumedFrom: deciding.cite });
  return {
    access: record.method?.access === access ? answers.method.access : byRung(access, '/method/access'),
    skin: record.method?.skin === skin ? answers.method.skin : byRung(skin, '/method/skin'),
    taperRatio:
      record.method?.taperRatio === undefined ? taperFor(answers, access) : answers.method.taperRatio,
    flangeMm:
      method.isToTheEdge && record.method?.flangeMm === undefined ? noFlange : answers.method.flangeMm,
  };
}

function taperFor(
  { innerSkin, outerSkin }: Job['answers'],
  access: 'from-above' | 'from-below',
): MethodAnswers['taperRatio'] {
  const worked = access === 'from-below' ? innerSkin : outerSkin;
  const { value, because, cite } = usualTaper(worked.thicknessMm.value);
  return assumed('1', fraction(value), methodQuestions.taperRatio.meaning, {
    at: '/method/taperRatio',
    because,
    cite,
  });
}

/** Where plies turn up or the rail is off, no flange of old deck is left to land on. */
const noFlange: MethodAnswers['flangeMm'] = assumed('mm', mm(0), methodQuestions.flangeMm.meaning, {
  at: '/method/flangeMm',
  because: 'the repair runs to the edge: plies turn up the side, or the rail is off',
  cite: { source: 'METHODS-EDGES' },
});
