import type { Hardener } from '#lib/catalogue';
import { equivalentAges } from '#lib/cure';
import { CURE_REFERENCE_C } from '#lib/cure';
import type { GateKind } from '#lib/work';
import { heldWarmthK } from '#lib/cure';
import { coatingLimits, resinLimits, type GateLimits } from '#lib/cure';
import { deckAt, skyOf, type Sky } from '#lib/cure';
import { openHours, warmthUnder } from '#lib/cure';
import type { CalendarRequest } from './calendar-request.js';
import { SLOT_H, workable, type SlotClock, type WorkableByGate } from './slots.js';

/** Everything that the weather and the clock decide, worked out once for all simulated calendars. */
export interface Setting {
  readonly clock: SlotClock;
  readonly workable: WorkableByGate;
  /** Age of resin at 25 degC if it had been mixed at the start, h, by slot. */
  readonly ages: Float64Array;
  readonly forecastEndSlot: number;
}

export function settingFor(
  request: CalendarRequest,
  hardener: Hardener,
  { clock, deckC }: { readonly clock: SlotClock; readonly deckC: number },
): Setting {
  const sky =
    request.forecast === undefined
      ? undefined
      : skyOf(request.forecast, warmthUnder(request.flags.shelter, request.warmth));
  const at = sky === undefined ? 0 : (sky.startMs - clock.startMs) / (SLOT_H * 3_600_000);
  const limits: Readonly<Record<GateKind, GateLimits>> = {
    'none': { kind: 'none' },
    'dry-deck': { kind: 'dry-deck' },
    'resin': resinLimits(request.resin, hardener.code),
    'coating': request.coating === undefined ? { kind: 'dry-deck' } : coatingLimits(request.coating),
  };
  const always = workable(clock.works);
  const slotsFor = (kind: GateKind) => {
    const open = slotsOpen({ request, clock, sky, at }, limits[kind]);
    return open === clock.works ? always : workable(open);
  };
  return {
    clock,
    workable: {
      'none': slotsFor('none'),
      'dry-deck': slotsFor('dry-deck'),
      'resin': slotsFor('resin'),
      'coating': slotsFor('coating'),
    },
    ages: agesFor({ request, clock, sky, at }, hardener, deckC),
    forecastEndSlot: sky === undefined ? 0 : at + sky.hours.length / SLOT_H,
  };
}

interface SkyOnClock {
  readonly request: CalendarRequest;
  readonly clock: SlotClock;
  readonly sky: Sky | undefined;
  /** Slot at which the forecast begins. */
  readonly at: number;
}

function slotsOpen({ request, clock, sky, at }: SkyOnClock, limits: GateLimits): Uint8Array {
  if (sky === undefined || limits.kind === 'none') return clock.works;
  const open = openHours(
    {
      shelter: request.flags.shelter,
      ...(request.coreMoisturePercent === undefined
        ? {}
        : { coreMoisturePercent: request.coreMoisturePercent }),
    },
    limits,
    sky,
  );
  return clock.works.map((works, slot) => {
    const hour = Math.floor((slot - at) * SLOT_H);
    return works === 1 && (hour < 0 || hour >= open.length || open[hour]) ? 1 : 0;
  });
}

function agesFor({ request, clock, sky, at }: SkyOnClock, hardener: Hardener, deckC: number): Float64Array {
  const elsewhereC = deckC + heldWarmthK(request.warmth);
  const temperaturesC = new Float64Array(clock.count).fill(elsewhereC);
  for (let slot = Math.max(0, Math.ceil(at)); sky !== undefined && slot < clock.count; slot += 1) {
    const deck = deckAt(sky, (slot - at) * SLOT_H);
    if (deck === undefined) break;
    temperaturesC[slot] = deck;
  }
  return equivalentAges(
    { stepH: SLOT_H, temperaturesC },
    {
      referenceC: CURE_REFERENCE_C,
      activationEnergyKJPerMol: request.resin.activationEnergyKJPerMol.value,
      stopsBelowC: hardener.lowestTemperatureC.value,
    },
  );
}

/** The slot at which resin mixed at `fromSlot` has the age; undefined beyond the horizon. */
export function slotOfAge(ages: Float64Array, fromSlot: number, ageH: number): number | undefined {
  const base = Math.floor(fromSlot);
  if (base + 1 >= ages.length) return undefined;
  const target = ages[base] + (fromSlot - base) * (ages[base + 1] - ages[base]) + ageH;
  if (ages[ages.length - 1] < target) return undefined;
  let [low, high] = [base, ages.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (ages[middle] < target) low = middle;
    else high = middle;
  }
  return low + (target - ages[low]) / (ages[high] - ages[low]);
}
