import type { CostRollUp } from '#lib/costing';
import { addMoney, exactMoney, money, moneyIn, moneyJson, proportionOf, type Money } from '#lib/money';
import { commercialRounding } from '#lib/costing';
import type { Totals } from '../document/estimate-document.js';
import { causeOf } from '../stages/pricing-stage.js';
import { PARTS, type CostContext } from '../stages/cost-context.js';

/** Attributable, prior and improvement as three sums with tax; wear comes off the parts, and the deductible last. */
export function insurerOf(context: CostContext, rollUp: CostRollUp): Totals['insurer'] {
  const { job } = context;
  const currency = exactMoney(rollUp.gross).currency;
  const none = money(0n, currency);
  const of = (causeClass: string): Money => {
    const found = rollUp.byCause.find((one) => one.causeClass === causeClass);
    return found === undefined ? none : exactMoney(found.gross);
  };
  const cause = causeOf(job.record.cause?.causeClass);
  const better = bettermentOf(context, rollUp);
  const less = (whole: Money, isIts: boolean): Money =>
    money(whole.minor - (isIts ? better.minor : 0n), currency);
  const attributable = less(of('sudden'), cause === 'sudden');
  const prior = less(addMoney(of('pre-existing'), of('maintenance')), cause !== 'sudden');
  const improvement = better;
  const wear = cause === 'sudden' ? exactMoney(rollUp.depreciation.depreciation) : none;
  const stated = job.record.pricing?.deductible;
  const deductible = stated === undefined ? none : moneyIn(stated, currency);
  const left = attributable.minor - wear.minor - deductible.minor;
  return {
    attributable: moneyJson(attributable),
    prior: moneyJson(prior),
    improvement: moneyJson(improvement),
    wear: moneyJson(wear),
    deductible: moneyJson(deductible),
    payable: moneyJson(money(left < 0n ? 0n : left, currency)),
    basis:
      'Attributable: what happened at once, by the cause stated in the record. Prior: what was there before, and upkeep that was owed. Improvement: finish beyond the damaged panel. Wear is taken off parts and never off labour, then the deductible. Lives are judged; the policy decides.',
  };
}

/** The finish of the whole deck beyond the panel makes the boat better than she was. */
function bettermentOf({ job, planned }: CostContext, rollUp: CostRollUp): Money {
  const { currency } = exactMoney(rollUp.gross);
  const whole = job.record.method?.wholeDeckAreaM2;
  if (job.answers.method.finish.value !== 'whole-deck' || whole === undefined) return money(0n, currency);
  const finished = rollUp.lines
    .filter(({ stage }) => stage === 'finish')
    .reduce((sum, { amount }) => sum + exactMoney(amount).minor, 0n);
  const panelM2 = planned[0].panelM2;
  const beyond = BigInt(Math.round(Math.max(0, 1 - panelM2 / whole) * PARTS));
  const netBeyond = (finished * beyond) / BigInt(PARTS);
  const direct = exactMoney(rollUp.direct).minor;
  return direct === 0n
    ? money(0n, currency)
    : proportionOf(exactMoney(rollUp.gross), netBeyond, direct, commercialRounding);
}
