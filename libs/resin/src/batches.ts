import { lazily, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { computeChecked } from '#lib/provenance';
import { adiabaticRise } from '#lib/cure';
import {
  answeredIn,
  assumedIn,
  assumptionFrom,
  catalogueIn,
  faultsIn,
  type ProcessAssumption,
} from '#lib/asking';
import { cardsOf } from './batch-cards.js';
import {
  batchQuestions,
  type BatchFinding,
  type BatchPlan,
  type BatchRequest,
  type PlannedBatch,
  type StepPots,
} from './batch-request.js';
import {
  chooseHardener,
  largestPieceOf,
  pieceMinutes,
  strengthsOf,
  tryHardener,
  verdictsOn,
  type HardenerTrial,
} from './hardener-choice.js';
import { potLifeBand } from './pot-life.js';
import { demandContradictions } from './resin-demand.js';
import { stepDefinitions } from './step-definitions.js';

/** Resin by step, the hardener with reasons, and a card for each pot; the pots add up to the demand exactly. */
export function planBatches(request: BatchRequest): Outcome<BatchPlan> {
  const problems = batchFaults(request);
  if (problems.length > 0) return refusal(...problems);
  const named = request.resin.hardeners.filter(
    ({ code }) => request.hardener === undefined || code === request.hardener,
  );
  const trials = named.flatMap((hardener) => tryHardener(request, hardener) ?? []);
  const chosen = chooseHardener(trials);
  return success(planWith(request, trials, chosen));
}

function planWith(request: BatchRequest, trials: readonly HardenerTrial[], chosen: HardenerTrial): BatchPlan {
  const { resin } = request;
  const { hardener, clock, demand, edgeOpenMin, pots } = chosen;
  const context = { request, resin, hardener, clock, edgeOpenMin };
  const band = potLifeBand(resin, hardener, request.temperatureC);
  const cards = lazily(() => numbered(pots.flatMap((step) => cardsOf(step, context))));
  const findings = lazily(() => findingsOn(request, chosen));
  return {
    resin: {
      code: resin.code,
      name: resin.name,
      hardener: hardener.code,
      hardenerName: hardener.name,
      why: whyChosen(request, chosen),
    },
    considered: verdictsOn(trials, chosen),
    demand,
    // Whoever wants the demand alone is spared the cards of its pots.
    get batches() {
      return cards();
    },
    potLife: {
      at100GMin: clock.at100G.value,
      lowMin: band.low,
      highMin: band.high,
      temperatureC: request.temperatureC,
    },
    adiabaticRiseK: riseOf(request),
    get findings() {
      return findings();
    },
    assumptions: [...demand.assumptions, ...crewAssumptions(request)],
  };
}

const numbered = (cards: readonly PlannedBatch[]): readonly PlannedBatch[] =>
  cards.map((card, index) => ({ ...card, number: index + 1 }));

/** A tenth of a degree is more than a thermometer on a deck tells. */
const plain = (temperatureC: number): number => Number(temperatureC.toFixed(1));

function whyChosen(request: BatchRequest, chosen: HardenerTrial): string {
  if (chosen.objections.length > 0)
    return `The least unfit at ${plain(request.temperatureC)} degC, not a good one: ${chosen.objections.join('; ')}.`;
  return request.hardener === undefined
    ? `The quickest that leaves time at ${plain(request.temperatureC)} degC: ${strengthsOf(chosen)}.`
    : `Chosen by the caller. ${strengthsOf(chosen)}.`;
}

const riseOf = ({ resin }: BatchRequest): number =>
  computeChecked(adiabaticRise, {
    heatJPerG: catalogueIn('J/g', resin.heatOfReactionJPerG, 'heat of reaction', {
      item: resin.code,
      field: 'heatOfReactionJPerG',
    }),
    specificHeatJPerGK: catalogueIn('J/gK', resin.specificHeatJPerGK, 'specific heat', {
      item: resin.code,
      field: 'specificHeatJPerGK',
    }),
  }).value;

/** A layer hotter than this where it lies should go on in stages. From memory. */
const HOT_LAYER_C = 80;

function findingsOn(request: BatchRequest, chosen: HardenerTrial): readonly BatchFinding[] {
  return [
    ...chosen.pots.flatMap((pots) => [
      ...pieceFindings(request, chosen, pots),
      ...potFindings(pots),
      ...layerFindings(request, chosen, pots),
    ]),
    ...chosen.objections
      .filter((text) => text.includes('degC;'))
      .map((text): BatchFinding => ({
        code: 'deck-warmer-than-limit',
        severity: 'warn',
        text,
        facts: { temperatureC: request.temperatureC },
      })),
  ];
}

function pieceFindings(
  request: BatchRequest,
  { edgeOpenMin }: HardenerTrial,
  pots: StepPots,
): readonly BatchFinding[] {
  const worst = largestPieceOf(request, pots.demand.index, pots.totalG);
  if (worst === undefined || pots.totalG === 0) return [];
  const minutes = pieceMinutes(request, worst.massG, pots);
  if (minutes <= edgeOpenMin) return [];
  const fitsM2 = (worst.areaM2 * edgeOpenMin) / minutes;
  return [
    {
      code: 'piece-too-large',
      severity: 'stop',
      text: `${pots.demand.title}: ${worst.label} would gel at its first edge before its last is down; cut it to ${fitsM2.toFixed(2)} m2, add hands, or take a slower hardener.`,
      facts: { piece: worst.label, areaM2: worst.areaM2, fitsM2, minutes, edgeOpenMin },
    },
  ];
}

function potFindings({ demand, totalG, largestG }: StepPots): readonly BatchFinding[] {
  const needed = Math.min(totalG, 40);
  if (totalG === 0 || largestG >= needed) return [];
  return [
    {
      code: 'pot-too-short',
      severity: 'stop',
      text: `${demand.title}: even a small pot kicks before it is spread; cool the resin, add hands, or take a slower hardener.`,
      facts: { largestG, neededG: needed },
    },
  ];
}

function layerFindings(
  request: BatchRequest,
  { clock }: HardenerTrial,
  { demand, totalG }: StepPots,
): readonly BatchFinding[] {
  const layerMm =
    request.steps[demand.index].step === 'potting'
      ? stepDefinitions.potting.layerMm
      : stepDefinitions[demand.step].layerMm;
  if (totalG === 0 || layerMm < 5) return [];
  const peakC = clock.layerPeakC(layerMm);
  if (peakC <= HOT_LAYER_C) return [];
  return [
    {
      code: 'layer-heats',
      severity: 'warn',
      text: `${demand.title}: about ${layerMm} mm in one go can heat itself; fill in two goes, the second after the first has cooled, or take a slower hardener. Filler and the deck around take some of the heat.`,
      facts: { layerMm, modelPeakC: peakC },
    },
  ];
}

const ofTheCrew = ['usableFraction', 'mixingMinutes', 'largestPotG'] as const;

function crewAssumptions(request: BatchRequest): readonly ProcessAssumption[] {
  const crew = ofTheCrew.flatMap((field) =>
    assumptionFrom(answeredIn<string>(batchQuestions[field], request[field], `/${field}`)),
  );
  const paces = request.steps.flatMap((step, index) =>
    step.minutesPerUnit !== undefined
      ? []
      : assumptionFrom(
          assumedIn(
            'min',
            stepDefinitions[step.step].minutesPerUnit,
            `minutes for one unit of "${step.title ?? stepDefinitions[step.step].title}", one person`,
            `/steps/${index}/minutesPerUnit`,
          ),
        ),
  );
  return [...crew, ...paces];
}

function batchFaults(request: BatchRequest): readonly Problem[] {
  const hardener = request.hardener ?? request.resin.hardeners[0]?.code ?? '';
  const found = [...faultsIn(request, batchQuestions), ...demandContradictions({ ...request, hardener })];
  return found.length > 0 ? found : coldFaults(request);
}

/** Below the limit of every hardener that may be used, nothing here can be planned. */
function coldFaults(request: BatchRequest): readonly Problem[] {
  const usable = request.resin.hardeners.filter(
    ({ code }) => request.hardener === undefined || code === request.hardener,
  );
  const lowestC = Math.min(...usable.map(({ lowestTemperatureC }) => lowestTemperatureC.value));
  const [at, coldC] =
    request.deckTemperatureC !== undefined && request.deckTemperatureC < request.temperatureC
      ? ['/deckTemperatureC', request.deckTemperatureC]
      : ['/temperatureC', request.temperatureC];
  return coldC >= Number(lowestC)
    ? []
    : [
        problem('resin-too-cold', String(at), {
          value: Number(coldC),
          resin: request.resin.name,
          lowest: lowestC,
          instead: 'a hardener made for the cold',
        }),
      ];
}
