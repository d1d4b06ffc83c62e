import { shippedCatalogue } from '#lib/catalogue';
import { jobCalendar } from '#lib/calendar';
import { curePlan } from '#lib/cure';
import type { Outcome } from '#lib/kernel';
import { laminateSchedule } from '#lib/laminate';
import { panelAnswer } from '#lib/panel';
import { planBondPressure } from '#lib/press';
import { resinBatches } from '#lib/resin';
import { BondPressureRequestDto } from '../../../apps/api/src/estimating/bond-pressure/bond-pressure.dto.js';
import { CalendarRequestDto } from '../../../apps/api/src/estimating/calendar/calendar.dto.js';
import { CurePlanRequestDto } from '../../../apps/api/src/estimating/cure-plan/cure-plan.dto.js';
import { LaminateScheduleRequestDto } from '../../../apps/api/src/estimating/laminate-schedule/laminate-schedule.dto.js';
import { PanelCheckRequestDto } from '../../../apps/api/src/estimating/panel-check/panel-check.dto.js';
import { ResinBatchesRequestDto } from '../../../apps/api/src/estimating/resin-batches/resin-batches.dto.js';
import type { DtoClass } from '../../../apps/api/src/edge/dto/field.js';

/** An endpoint: who reads its body, and the room behind it. */
export interface Door {
  readonly path: string;
  readonly dto: DtoClass;
  /** A room trusts no caller: what it is given here has not passed the reader. */
  readonly room: (request: never) => Outcome<unknown> | Promise<Outcome<unknown>>;
  readonly request: object;
}

const rectangle = (length: number, width: number): readonly (readonly number[])[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];
const skin = {
  thicknessMm: 3,
  modulusXMPa: 12000,
  modulusYMPa: 11000,
  shearModulusMPa: 3000,
  poissonXY: 0.2,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
};
const sandwich = {
  outer: skin,
  inner: { ...skin, thicknessMm: 2 },
  core: {
    coreType: 'end-grain-balsa',
    thicknessMm: 12.7,
    shearModulusMPa: 129,
    shearStrengthMPa: 2.33,
    compressiveModulusMPa: 3255,
    compressiveStrengthMPa: 10.3,
  },
};
const hour = (at: string): object => ({ at, temperatureC: 18, relativeHumidityPercent: 60 });
const forecast = { hours: [hour('2026-05-04T06:00:00Z'), hour('2026-05-04T07:00:00Z')] };
const estimating = (name: string): string => `/v1/estimating/${name}`;

/**
 * Invented requests that each room answers. Openings, next readings, core bill, cutting plan, roll-up, basket and the
 * defect record are not among them yet: some of their texts, flags and counts are looked at by the reader alone.
 */
export const doors: readonly Door[] = [
  {
    path: estimating('panel-check'),
    dto: PanelCheckRequestDto,
    room: panelAnswer,
    request: { panel: { lengthXMm: 900, widthYMm: 600 }, asBuilt: sandwich, repaired: sandwich },
  },
  {
    path: estimating('laminate-schedule'),
    dto: LaminateScheduleRequestDto,
    room: (request) => laminateSchedule(request, shippedCatalogue),
    request: {
      resin: 'resin-epoxy-2to1',
      relaid: {
        oldSkin: { thicknessMm: 3 },
        fabrics: [{ material: 'reinforcement-woven-roving-600' }],
        limits: { mostPlies: 4 },
        layOut: { opening: rectangle(600, 400) },
      },
      rebedded: {
        skinThicknessMm: 2,
        opening: rectangle(600, 400),
        fillWith: 'reinforcement-tape-plain-300',
      },
    },
  },
  {
    path: estimating('resin-batches'),
    dto: ResinBatchesRequestDto,
    room: (request) => resinBatches(request, shippedCatalogue),
    request: {
      resin: 'resin-epoxy-5to1',
      temperatureC: 20,
      people: 2,
      steps: [{ step: 'bed-core', areaM2: 0.6, pieces: [{ label: 'A1', areaM2: 0.6 }] }],
    },
  },
  {
    path: estimating('bond-pressure'),
    dto: BondPressureRequestDto,
    room: planBondPressure,
    request: { areaM2: 0.8, lengthMm: 1000, widthMm: 800, innerSkin: { thicknessMm: 3, spanMm: 600 } },
  },
  {
    path: estimating('cure-plan'),
    dto: CurePlanRequestDto,
    room: (request) => curePlan(request, shippedCatalogue),
    request: { resin: 'resin-epoxy-5to1', hardener: 'medium', shelter: 'open', temperature: { forecast } },
  },
  {
    path: estimating('calendar'),
    dto: CalendarRequestDto,
    room: (request) => jobCalendar(request, shippedCatalogue),
    request: {
      startDate: '2026-05-04',
      resin: 'resin-epoxy-5to1',
      hardener: 'medium',
      crew: { people: 2 },
      runs: 100,
      drivers: { 'opened-m2': 1.2, 'cut-m': 4.4 },
      flags: {
        skin: 'relay',
        access: 'from-above',
        condition: 'wet-rotten',
        press: 'weights',
        shelter: 'tent',
        below: 'open',
        skill: 'professional',
        props: 'needed',
        finish: 'none',
        nonskid: 'no',
        berth: 'ashore',
        panel: 'flat',
      },
    },
  },
];
