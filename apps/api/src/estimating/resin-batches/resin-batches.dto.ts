import {
  stepCodes,
  type BeddedPiece,
  type PlyToWet,
  type ResinBatchesRequest,
  type ResinStepRequest,
  type StepCode,
} from '#lib/resin';
import {
  Area,
  ArealMass,
  Code,
  Label,
  Length,
  Num,
  OneOf,
  Parts,
  Temperature,
  Text,
  Texts,
  Whole,
} from '../../edge/dto/index.js';

export class BeddedPieceDto implements BeddedPiece {
  @Label({ description: 'Label on the piece and on the cut plan.', example: 'A1' })
  readonly label!: string;

  @Area({ above: 0, upTo: 1000 })
  readonly areaM2!: number;
}

export class PlyToWetDto implements PlyToWet {
  @Label({ optional: true })
  readonly label?: string;

  @Area({ from: 0, upTo: 1000 })
  readonly areaM2!: number;

  @ArealMass({ above: 0, upTo: 10_000, description: 'Dry fabric.' })
  readonly arealMassGPerM2!: number;

  @Num({ above: 0.1, below: 0.95, description: 'Fibre mass fraction of the laid ply.' })
  readonly fibreMassFraction!: number;
}

export class ResinStepDto implements ResinStepRequest {
  @OneOf(stepCodes, {
    description:
      'Each kind has its own basis: films and beds take areaM2, sections lengthM and heightMm, scores areaM2 with spacing, width and depth, plies plies, potting holes.',
  })
  readonly step!: StepCode;

  @Text({ optional: true, atMost: 120, description: 'Words for the card, where two steps are of one kind.' })
  readonly title?: string;

  @Area({ optional: true, from: 0, upTo: 1000 })
  readonly areaM2?: number;

  @Num({ optional: true, above: 0, upTo: 10, unit: 'l/m2' })
  readonly litresPerM2?: number;

  @Whole({ optional: true, from: 1, upTo: 20 })
  readonly coats?: number;

  @Length({
    optional: true,
    above: 0,
    upTo: 50,
    description: 'Mean thickness of a bed; of fairing, over all cycles.',
  })
  readonly thicknessMm?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 10_000,
    unit: 'm',
    description: 'Length of a section: the edge of an undercut, the saw cut.',
  })
  readonly lengthM?: number;

  @Length({ optional: true, above: 0, upTo: 500 })
  readonly widthMm?: number;

  @Length({ optional: true, above: 0, upTo: 200 })
  readonly heightMm?: number;

  @Length({ optional: true, above: 0, upTo: 500, description: 'Spacing of scores.' })
  readonly spacingMm?: number;

  @Length({ optional: true, above: 0, upTo: 200, description: 'Depth of scores, or of holes.' })
  readonly depthMm?: number;

  @Num({ optional: true, from: 0, upTo: 1, description: 'Share of the scores that fills; absent: 1.' })
  readonly openFraction?: number;

  @Parts(() => PlyToWetDto, { optional: true, least: 1, most: 200 })
  readonly plies?: readonly PlyToWetDto[];

  @Whole({ optional: true, from: 0, upTo: 100_000 })
  readonly holes?: number;

  @Length({
    optional: true,
    above: 0,
    upTo: 200,
    description: 'Diameter to which the core is emptied at a hole.',
  })
  readonly diameterMm?: number;

  @Text({ optional: true, atMost: 80, description: 'Code of a filler, or "none".' })
  readonly filler?: string;

  @Num({
    optional: true,
    from: 0,
    upTo: 300,
    description: 'Parts of filler to 100 parts of mixed resin, by mass.',
  })
  readonly fillerPartsPerHundred?: number;

  @Num({ optional: true, from: 0, upTo: 2, description: 'Waste as a share of net, for this step.' })
  readonly wasteFraction?: number;

  @Num({
    optional: true,
    above: 0,
    upTo: 600,
    unit: 'min',
    description: 'Minutes that one person takes for one unit of the step.',
  })
  readonly minutesPerUnit?: number;

  @Parts(() => BeddedPieceDto, {
    optional: true,
    least: 1,
    most: 500,
    description: 'Pieces in the order they are bedded; each goes to one pot.',
  })
  readonly pieces?: readonly BeddedPieceDto[];
}

/** Resin by step, in pots; materials by their codes. */
export class ResinBatchesRequestDto implements ResinBatchesRequest {
  @Code({ description: 'Code of the resin system.', example: 'resin-epoxy-5to1' })
  readonly resin!: string;

  @Code({ optional: true, description: 'Code of one of its hardeners; absent: chosen, with the reasons.' })
  readonly hardener?: string;

  @Texts({
    optional: true,
    least: 1,
    most: 20,
    each: { atMost: 80 },
    description: 'Codes of the fillers at hand; absent: every filler of the catalogue.',
  })
  readonly fillers?: readonly string[];

  @Parts(() => ResinStepDto, { least: 1, most: 200 })
  readonly steps!: readonly ResinStepDto[];

  @Temperature({ from: -20, upTo: 60, description: 'Air and resin where it is mixed.', example: 20 })
  readonly temperatureC!: number;

  @Temperature({ optional: true, from: -20, upTo: 90, description: 'The deck; absent: as the air.' })
  readonly deckTemperatureC?: number;

  @Whole({ from: 1, upTo: 50 })
  readonly people!: number;

  @Num({ optional: true, from: 0, upTo: 2, description: 'Waste as a share of net; absent: 0.18.' })
  readonly wasteFraction?: number;

  @Num({
    optional: true,
    from: 40,
    upTo: 6000,
    unit: 'g',
    description: 'Largest pot mixed at once; absent: 1000 g.',
  })
  readonly largestPotG?: number;

  @Num({
    optional: true,
    above: 0,
    upTo: 0.9,
    description: 'Share of the pot life within which a pot must be empty; absent: 0.5.',
  })
  readonly usableFraction?: number;

  @Num({
    optional: true,
    from: 1,
    upTo: 30,
    unit: 'min',
    description: 'To weigh and stir a pot; absent: 4 min.',
  })
  readonly mixingMinutes?: number;

  @Num({
    optional: true,
    above: 0,
    upTo: 500,
    unit: 'ml',
    description: 'Resin given by one stroke of a calibrated pump; with it the cards count strokes.',
  })
  readonly pumpResinMlPerStroke?: number;
}
