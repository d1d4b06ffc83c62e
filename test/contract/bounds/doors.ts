import { shippedCatalogue } from '#lib/catalogue';
import { jobCalendar } from '#lib/calendar';
import { coreBillFrom } from '#lib/coring';
import { basketFrom, priceJob } from '#lib/costing';
import { curePlan } from '#lib/cure';
import { jobOf, nextReadingsFor, openingsFor } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { laminateSchedule } from '#lib/laminate';
import { cuttingPlan } from '#lib/nesting';
import { panelAnswer } from '#lib/panel';
import { planBondPressure } from '#lib/press';
import { resinBatches } from '#lib/resin';
import { BasketRequestDto } from '../../../apps/api/src/estimating/basket/basket.dto.js';
import { BondPressureRequestDto } from '../../../apps/api/src/estimating/bond-pressure/bond-pressure.dto.js';
import { CalendarRequestDto } from '../../../apps/api/src/estimating/calendar/calendar.dto.js';
import { CoreBillRequestDto } from '../../../apps/api/src/estimating/core-bill/core-bill.dto.js';
import { CostRollupRequestDto } from '../../../apps/api/src/estimating/cost-rollup/cost-rollup.dto.js';
import { CurePlanRequestDto } from '../../../apps/api/src/estimating/cure-plan/cure-plan.dto.js';
import { CuttingPlanRequestDto } from '../../../apps/api/src/estimating/cutting-plan/cutting-plan.dto.js';
import { LaminateScheduleRequestDto } from '../../../apps/api/src/estimating/laminate-schedule/laminate-schedule.dto.js';
import { NextReadingsRequestDto } from '../../../apps/api/src/estimating/next-readings/next-readings.dto.js';
import { OpeningsRequestDto } from '../../../apps/api/src/estimating/openings/openings.dto.js';
import { PanelCheckRequestDto } from '../../../apps/api/src/estimating/panel-check/panel-check.dto.js';
import { QuantitiesRequestDto } from '../../../apps/api/src/estimating/quantities/quantities.dto.js';
import { VariantsRequestDto } from '../../../apps/api/src/estimating/variants/variants.dto.js';
import {
  NewClientSessionDto,
  NewKeyDto,
  NewOrganisationDto,
  NewPublishableKeyDto,
  RenewalDto,
} from '../../../apps/api/src/access/access.dto.js';
import {
  NewEditionDto,
  PublicationDto,
  RestorationDto,
} from '../../../apps/api/src/catalogue/dto/editions.dto.js';
import { materialKinds } from '../../../apps/api/src/catalogue/dto/materials.dto.js';
import { SupplierSheetDto } from '../../../apps/api/src/catalogue/dto/sheet.dto.js';
import { CountedPacksDto, PackCountDto } from '../../../apps/api/src/catalogue/dto/stock.dto.js';
import {
  BasketChoicesDto,
  EditionTrialDto,
  RevisionRequestDto,
} from '../../../apps/api/src/estimates/dto/estimates.dto.js';
import {
  LabourRatesDto,
  PackDto,
  PriceChangeDto,
  PriceListDto,
} from '../../../apps/api/src/catalogue/dto/prices.dto.js';
import { SourceDto } from '../../../apps/api/src/catalogue/dto/source.dto.js';
import { NewWebhookEndpointDto, SecretRenewalDto } from '../../../apps/api/src/events/events.dto.js';
import { LetterheadDto } from '../../../apps/api/src/letterhead/letterhead.dto.js';
import { ResinBatchesRequestDto } from '../../../apps/api/src/estimating/resin-batches/resin-batches.dto.js';
import { DefectRecordDto } from '../../../apps/api/src/inputs/defect-record.dto.js';
import type { DtoClass } from '../../../apps/api/src/edge/dto/field.js';

/** An endpoint: who reads its body, and the room behind it. */
export interface Door extends Reader {
  /** A room trusts no caller: what it is given here has not passed the reader. */
  readonly room: (request: never) => Outcome<unknown> | Promise<Outcome<unknown>>;
}

/** An endpoint behind which no room asks again: keys, catalogue, letterhead. */
export interface Reader {
  readonly path: string;
  readonly method?: 'post' | 'put' | 'patch';
  /** Of a body that is of one of several kinds: the kind tried here. */
  readonly kind?: string;
  readonly dto: DtoClass;
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

const zone = {
  id: 'Z1',
  outline: [
    [700, 300],
    [1250, 300],
    [1250, 620],
    [700, 620],
  ],
};
const deck = {
  panel: { outline: rectangle(2000, 900) },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [zone],
};

/** Invented requests that each room answers. */
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
  { path: estimating('openings'), dto: OpeningsRequestDto, room: openingsFor, request: deck },
  {
    path: estimating('next-readings'),
    dto: NextReadingsRequestDto,
    room: nextReadingsFor,
    request: { panel: { outline: rectangle(300, 200) }, survey: { readings: [] }, map: { draws: 100 } },
  },
  {
    path: '/v1/estimates',
    dto: DefectRecordDto,
    room: (record) => jobOf(record, shippedCatalogue),
    request: deck,
  },
  {
    path: estimating('core-bill'),
    dto: CoreBillRequestDto,
    room: (request) => coreBillFrom(request, shippedCatalogue),
    request: {
      material: 'core-balsa-150',
      openings: [{ label: 'A', outline: rectangle(600, 400) }],
      cavityMm: 13.7,
      workUnits: 0,
    },
  },
  {
    path: estimating('cutting-plan'),
    dto: CuttingPlanRequestDto,
    room: cuttingPlan,
    request: {
      pieces: [{ id: 'A1', outline: rectangle(300, 200), turnsDeg: [0, 180] }],
      stock: [{ id: 'whole', outline: rectangle(1220, 610), cost: 40 }],
      kerfMm: 2,
      edgeTrimMm: 5,
      workUnits: 0,
    },
  },
  {
    path: estimating('cost-rollup'),
    dto: CostRollupRequestDto,
    room: priceJob,
    request: {
      currency: 'EUR',
      taxGroups: [{ code: 'standard', name: 'VAT', percent: '20' }],
      lines: [
        {
          code: 'saw',
          section: 'labour',
          title: 'Saw the deck open',
          partOrLabour: 'part',
          causeClass: 'sudden',
          netQuantity: 3,
          unit: 'h',
          unitRate: '60.00',
          taxGroup: 'standard',
        },
      ],
      risk: { evidence: 'mapped-with-plugs', samples: 100 },
    },
  },
  {
    path: estimating('basket'),
    dto: BasketRequestDto,
    room: (request) => basketFrom(request, shippedCatalogue),
    request: {
      priceList: shippedCatalogue.priceLists[0].code,
      needs: [{ id: 'core', material: 'core-balsa-150', requiredQuantity: 1.2, unit: 'm2' }],
    },
  },
];

const [priceList] = shippedCatalogue.priceLists;
const [labourRates] = shippedCatalogue.labourRates;

/** The shipped catalogue stands in for what an admin would send. */
export const readers: readonly Reader[] = [
  {
    path: estimating('quantities'),
    dto: QuantitiesRequestDto,
    request: { quantities: [{ dimension: 'length', text: '5/8 in' }] },
  },
  {
    path: estimating('variants'),
    dto: VariantsRequestDto,
    request: { record: deck, variants: [{ code: 'new-skin', method: { skin: 'relay' } }] },
  },
  {
    path: '/v1/price-lists',
    dto: PriceListDto,
    request: { ...priceList, packs: priceList.packs.slice(0, 1) },
  },
  { path: '/v1/price-lists/{code}/packs/{sku}', method: 'put', dto: PackDto, request: priceList.packs[0] },
  { path: '/v1/price-lists/{code}/price-changes', dto: PriceChangeDto, request: { percent: '5' } },
  { path: '/v1/labour-rates', dto: LabourRatesDto, request: labourRates },
  { path: '/v1/sources', dto: SourceDto, request: shippedCatalogue.sources[0] },
  { path: '/v1/editions', dto: NewEditionDto, request: { code: 'spring-2027' } },
  { path: '/v1/keys', dto: NewKeyDto, request: { name: 'shop', roles: ['chandler'] } },
  {
    path: '/v1/publishable-keys',
    dto: NewPublishableKeyDto,
    request: {
      name: 'shop page',
      origins: ['https://shop.example'],
      perMinute: 60,
      perMinutePerVisitor: 20,
      perDay: 1000,
    },
  },
  {
    path: '/v1/webhook-endpoints',
    dto: NewWebhookEndpointDto,
    request: { url: 'https://shop.example/events', types: ['order.made'] },
  },
  {
    path: '/v1/webhook-endpoints/{id}/secret-renewal',
    dto: SecretRenewalDto,
    request: { overlapHours: 24 },
  },
  { path: '/v1/keys/{id}/renewal', dto: RenewalDto, request: { overlapHours: 24 } },
  { path: '/v1/organisations', dto: NewOrganisationDto, request: { name: 'An invented yard' } },
  { path: '/v1/client-sessions', dto: NewClientSessionDto, request: { reference: 'A-1' } },
  {
    path: '/v1/editions/{code}/publication',
    dto: PublicationDto,
    request: { effectiveAt: '2027-03-04T08:00:00Z' },
  },
  { path: '/v1/editions/{code}/restoration', dto: RestorationDto, request: { code: 'spring-again' } },
  { path: '/v1/editions/{code}/trial', dto: EditionTrialDto, request: { newest: 5 } },
  {
    path: '/v1/price-lists/{code}/sheets',
    dto: SupplierSheetDto,
    request: {
      cells: 'Item;Price\nA-1;12,50',
      columns: [
        { heading: 'Item', means: 'sku' },
        { heading: 'Price', means: 'price' },
      ],
      decimalMark: ',',
      breaks: 'keep',
      unknownSkus: 'refuse',
    },
  },
  {
    path: '/v1/price-lists/{code}/stock',
    method: 'patch',
    dto: CountedPacksDto,
    request: { items: [{ sku: 'A-1', packs: 3 }] },
  },
  {
    path: '/v1/price-lists/{code}/packs/{sku}/stock',
    method: 'put',
    dto: PackCountDto,
    request: { packs: 3 },
  },
  { path: '/v1/estimates/{id}/basket', dto: BasketChoicesDto, request: {} },
  {
    path: '/v1/estimates/{id}/revisions',
    dto: RevisionRequestDto,
    request: { reason: 'The deck was opened.', record: deck },
  },
  ...Object.entries(materialKinds).map(([kind, dto]) => ({
    path: '/v1/materials',
    kind,
    dto,
    request: shippedCatalogue.materials.find((one) => one.kind === kind) ?? {},
  })),
  { path: '/v1/letterhead', method: 'put', dto: LetterheadDto, request: { lines: ['An invented yard'] } },
];
