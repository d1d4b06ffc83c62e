import type { Catalogue } from '#lib/catalogue';
import { andThen, success, type Outcome } from '#lib/kernel';
import type { MethodLadder } from '../document/estimate-document.js';
import type { DefectRecord } from '../job/defect-record.js';
import { jobOf } from '../job/job.js';
import { placeSection, rungNamed, rungSection } from '../sections/methods-section.js';
import { judgedLadder } from './method-ladder.js';
import { roughLadder } from './priced-ladder.js';

/**
 * Every way to mend this deck, judged and worked out in the rough, with nothing chosen: hours in person-hours, days, money
 * in the currency of the price list. Where no rung fits, none is recommended and each carries its reason; refuses what an
 * estimate refuses before its ladder.
 */
export const methodLadder = (record: DefectRecord, catalogue: Catalogue): Outcome<MethodLadder> =>
  andThen(jobOf(record, catalogue), (job) =>
    andThen(judgedLadder(job), ({ ladder, extent }) =>
      success({
        ...(ladder.recommended === undefined ? {} : { recommended: rungNamed(ladder.recommended) }),
        ...(ladder.runnerUp === undefined ? {} : { runnerUp: rungNamed(ladder.runnerUp) }),
        rungs: roughLadder(job, { ladder, extent }).map(rungSection),
        places: ladder.combination.map(placeSection),
      }),
    ),
  );
