import { longestTimeLimitS, usualTimeLimitS } from '#lib/nesting';
import type {
  CamberRequest,
  CoreBillByCode,
  DrawnOpening,
  MosaicRules,
  OldCoreRequest,
  OwnOffcut,
  SheetOnSale,
  StackRules,
} from '#lib/coring';
import {
  Code,
  Label,
  Length,
  Num,
  OneOf,
  Outline,
  Outlines,
  Part,
  Parts,
  Point,
  Text,
  Whole,
} from '../../edge/dto/index.js';

type Corners = DrawnOpening['outline'];
type Place = Corners[number];

export class DrawnOpeningDto implements DrawnOpening {
  @Label({ description: 'A, B, C ...; labels of pieces begin with it.', example: 'A' })
  readonly label!: string;

  @Outline({ description: 'What is cut out of the skin.' })
  readonly outline!: Corners;

  @Length({
    optional: true,
    from: 0,
    upTo: 500,
    description: 'How far core is taken out under the skin all round; absent: 0.',
  })
  readonly undercutMm?: number;

  @Outline({
    optional: true,
    description: 'The edge to which core is taken out, where it is not the same all round.',
  })
  readonly cavity?: Corners;
}

export class SupportLineDto {
  @Point()
  readonly from!: Place;

  @Point()
  readonly to!: Place;
}

export class CamberDto implements CamberRequest {
  @Length({ from: 50, upTo: 1_000_000 })
  readonly radiusMm!: number;

  @Length({
    optional: true,
    from: 10,
    upTo: 5000,
    description: 'Length of a piece across the camber; absent: the side of the largest piece.',
  })
  readonly pieceLengthMm?: number;

  @Num({
    optional: true,
    from: 0.01,
    upTo: 101,
    unit: 'kPa',
    description: 'What holds it down; absent: 2, a 20 kg bag on 0.1 m2.',
  })
  readonly pressureKPa?: number;

  @Length({ optional: true, from: 0.05, upTo: 20, description: 'Gap that the bed fills; absent: 1.5 mm.' })
  readonly mostGapMm?: number;
}

export class OldCoreMassDto implements OldCoreRequest {
  @Num({ optional: true, from: 20, upTo: 1500, unit: 'kg/m3' })
  readonly densityKgPerM3?: number;

  @Num({ optional: true, from: 0, upTo: 8, description: 'Water in it, parts of its dry mass.' })
  readonly moistureFraction?: number;
}

export class StackRulesDto implements StackRules {
  @Length({ optional: true, from: 0, upTo: 10 })
  readonly bondLineMm?: number;

  @Length({ optional: true, from: 0, upTo: 3, description: 'Resin under plies laid wet on the core.' })
  readonly wetLineMm?: number;

  @Length({ optional: true, from: 0, upTo: 10 })
  readonly leastBondLineMm?: number;

  @Length({ optional: true, from: 0, upTo: 10 })
  readonly mostBondLineMm?: number;

  @Length({ optional: true, from: -20, upTo: 0 })
  readonly lowestFlushMm?: number;

  @Length({ optional: true, from: 0, upTo: 20 })
  readonly highestFlushMm?: number;
}

export class MosaicRulesDto implements MosaicRules {
  @Num({
    optional: true,
    from: 0.0025,
    upTo: 4,
    unit: 'm2',
    description: 'Largest piece that is slid under a lip; absent: 0.046.',
  })
  readonly handPieceM2?: number;

  @Num({
    optional: true,
    from: 0.0025,
    upTo: 4,
    unit: 'm2',
    description: "Largest piece bedded from above; absent: the material's own figure.",
  })
  readonly largestPieceM2?: number;

  @Num({
    optional: true,
    from: 0.05,
    upTo: 20,
    unit: 'm2',
    description: 'Core bedded in one go, before the bed stiffens; absent: 1.',
  })
  readonly bayM2?: number;

  @Length({ optional: true, from: 0, upTo: 10 })
  readonly jointGapMm?: number;

  @Length({ optional: true, from: 0, upTo: 500 })
  readonly staggerMm?: number;

  @Length({ optional: true, from: 5, upTo: 300, description: 'Narrowest piece; absent: 40 mm.' })
  readonly narrowestMm?: number;

  @Length({
    optional: true,
    from: 5,
    upTo: 500,
    description: 'Narrowest piece slid under a lip; absent: 100 mm.',
  })
  readonly leastLipPieceMm?: number;

  @Num({ optional: true, from: 1, upTo: 400, unit: 'cm2', description: 'Smallest piece; absent: 25.' })
  readonly leastPieceCm2?: number;

  @Length({
    optional: true,
    from: 5,
    upTo: 300,
    description: 'A slot narrower than this is filled solid; absent: 75 mm.',
  })
  readonly leastSlotMm?: number;

  @Length({
    optional: true,
    from: 0,
    upTo: 500,
    description: 'An undercut no deeper than this is filled solid; absent: 75 mm.',
  })
  readonly lipFillMm?: number;

  @Length({ optional: true, from: 0, upTo: 200 })
  readonly supportClearanceMm?: number;

  @Length({ optional: true, from: 20, upTo: 500 })
  readonly bleedSpacingMm?: number;

  @Length({ optional: true, from: 1, upTo: 12 })
  readonly bleedDiameterMm?: number;
}

export class SheetOnSaleDto implements SheetOnSale {
  @Length({ above: 0, upTo: 10_000 })
  readonly lengthMm!: number;

  @Length({ above: 0, upTo: 10_000 })
  readonly widthMm!: number;

  @Num({
    above: 0,
    upTo: 1e9,
    description: 'With the fee for cutting a half or quarter sheet; costs are only compared.',
  })
  readonly cost!: number;

  @Whole({ optional: true, from: 1, upTo: 1500 })
  readonly available?: number;
}

export class OwnOffcutDto implements OwnOffcut {
  @Text({ atMost: 60 })
  readonly id!: string;

  @Outline()
  readonly outline!: Corners;

  @Outlines({ optional: true, most: 20 })
  readonly holes?: readonly Corners[];

  @Length({ above: 0, upTo: 200 })
  readonly thicknessMm!: number;

  @OneOf(['plain', 'scored'], { optional: true, description: 'Absent: plain.' })
  readonly form?: 'plain' | 'scored';
}

/** Openings and a core material; from there to labelled pieces and sheets. */
export class CoreBillRequestDto implements CoreBillByCode {
  @Code({ description: 'Code of a core in the catalogue.', example: 'core-balsa-150' })
  readonly material!: string;

  @Parts(() => DrawnOpeningDto, { least: 1, most: 30 })
  readonly openings!: readonly DrawnOpeningDto[];

  @Length({
    from: 2,
    upTo: 150,
    description: 'From the inner skin to the underside of the outer skin.',
    example: 17.5,
  })
  readonly cavityMm!: number;

  @Parts(() => SupportLineDto, {
    optional: true,
    most: 100,
    description: 'Lines the deck rests on; no joint runs along one.',
  })
  readonly supports?: readonly SupportLineDto[];

  @Length({
    optional: true,
    above: 0,
    upTo: 150,
    description: 'A thickness of the list that is insisted on.',
  })
  readonly wantedMm?: number;

  @OneOf(['plain', 'scored'], { optional: true })
  readonly form?: 'plain' | 'scored';

  @OneOf(['re-bed', 'relay'], {
    optional: true,
    description:
      'What closes the openings: the old skin bedded again (absent), or plies laid wet on the core.',
  })
  readonly skin?: 're-bed' | 'relay';

  @Part(() => CamberDto, { optional: true, description: 'Absent: the deck is flat.' })
  readonly camber?: CamberDto;

  @Part(() => OldCoreMassDto, { optional: true })
  readonly oldCore?: OldCoreMassDto;

  @Num({
    optional: true,
    from: -360,
    upTo: 360,
    unit: 'degrees',
    description: 'Direction of the grain on the deck, from forward to starboard; absent: 0.',
  })
  readonly grainDeg?: number;

  @Part(() => StackRulesDto, { optional: true })
  readonly stackRules?: StackRulesDto;

  @Part(() => MosaicRulesDto, { optional: true })
  readonly mosaicRules?: MosaicRulesDto;

  @Parts(() => SheetOnSaleDto, {
    optional: true,
    least: 1,
    most: 20,
    description: "What can be bought; absent: the material's formats, the smallest area being the cheapest.",
  })
  readonly sheets?: readonly SheetOnSaleDto[];

  @Parts(() => OwnOffcutDto, { optional: true, most: 20 })
  readonly offcuts?: readonly OwnOffcutDto[];

  @Length({ optional: true, from: 0, upTo: 50, description: 'Width that the blade takes; absent: 2 mm.' })
  readonly kerfMm?: number;

  @Length({
    optional: true,
    from: 0,
    upTo: 500,
    description: 'Strip along sheet edges that is not used; absent: 0.',
  })
  readonly edgeTrimMm?: number;

  @Length({
    optional: true,
    from: 10,
    upTo: 2000,
    description: 'Narrowest offcut worth keeping; absent: 150 mm.',
  })
  readonly keepFromMm?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 1e6,
    description:
      'What an hour of work costs, in the currency of the sheets; absent: the sheets alone decide how the core is divided.',
  })
  readonly hourCost?: number;

  @Whole({ optional: true, from: 0, upTo: 4_294_967_295 })
  readonly seed?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 1e6,
    description: 'Thousands of pairs of pieces looked at for each thickness; absent: 4000.',
  })
  readonly workUnits?: number;

  @Num({
    optional: true,
    from: 0.05,
    upTo: longestTimeLimitS,
    unit: 's',
    description: `After this time the best layout so far is the answer; absent: ${usualTimeLimitS}.`,
  })
  readonly timeLimitS?: number;
}
