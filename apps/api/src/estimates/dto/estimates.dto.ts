import { annexNames, purposes, type Purpose } from '#lib/drawings';
import type { BasketChoices } from '../estimate-basket.js';
import {
  BasketOptionsDto,
  HardenerChoiceDto,
  OnHandDto,
  SubstituteDto,
} from '../../estimating/basket/basket.dto.js';
import { orderQuestions } from '#lib/costing';
import { CalendarDate, Code, OneOf, Part, Text, Texts, Whole, answering } from '../../edge/dto/index.js';
import { PageSize } from '../../edge/dto/query.js';
import { DefectRecordDto } from '../../inputs/defect-record.dto.js';

export class RevisionRequestDto {
  @Text({ atMost: 1000, description: 'What became known or was decided since the last revision.' })
  readonly reason!: string;

  @Part(() => DefectRecordDto, { description: 'The whole defect record as it is known now.' })
  readonly record!: DefectRecordDto;
}

export class EstimatesQueryDto {
  @PageSize()
  readonly limit?: number;

  @Text({
    optional: true,
    atMost: 100,
    description: '`nextCursor` of the page before; absent for the first page.',
  })
  readonly cursor?: string;

  @Text({ optional: true, atMost: 100, description: "Only estimates with this reference of the caller's." })
  readonly reference?: string;
}

/** More would keep the threads busy for longer than a request may take. */
const MOST_TRIED = 20;
export const USUALLY_TRIED = 10;

export class EditionTrialDto {
  @Texts({
    optional: true,
    least: 1,
    most: MOST_TRIED,
    each: { atMost: 36 },
    description: 'Ids of stored estimates to try the edition on; the newest ones when absent.',
  })
  readonly estimates?: readonly string[];

  @Whole({
    optional: true,
    from: 1,
    upTo: MOST_TRIED,
    description: `How many of the newest estimates, each in its last revision; ${USUALLY_TRIED} when absent. Not together with \`estimates\`.`,
  })
  readonly newest?: number;

  @Code({ optional: true, description: 'Edition to compare with; the current one when absent.' })
  readonly against?: string;
}

export class ComparisonQueryDto {
  @Text({
    optional: true,
    atMost: 36,
    description: 'Id of the estimate to compare with; the revision before this one when absent.',
  })
  readonly with?: string;
}

export class FormQueryDto {
  @OneOf(['report', 'job-pack'], {
    optional: true,
    description:
      'Which document, as PDF or HTML: for the owner and the insurer, or for the people doing the work.',
  })
  readonly document?: 'report' | 'job-pack';

  @OneOf(['a4', 'letter'], { optional: true, description: 'Paper that a PDF is set for.' })
  readonly paper?: 'a4' | 'letter';

  @OneOf(purposes, {
    optional: true,
    description:
      'What the report is for; decides its title and which annexes follow the body. Absent: the condition of the deck.',
  })
  readonly purpose?: Purpose;

  @Text({
    optional: true,
    atMost: 100,
    form: {
      pattern: new RegExp(`^(?:none|all|(?:${annexNames.join('|')})(?:,(?:${annexNames.join('|')}))*)$`),
      words: `none, all, or some of ${annexNames.join(', ')} with commas between`,
    },
    description: `The annexes of the report by name: none, all, or some of ${annexNames.join(', ')} with commas between.`,
  })
  readonly annexes?: string;

  @Text({ optional: true, atMost: 200, description: 'As XML: whom the quotation is for.' })
  readonly customer?: string;

  @CalendarDate({ optional: true, description: 'As XML: the last day on which the quotation holds.' })
  readonly validUntil?: string;
}

export class ChangeOrderQueryDto {
  @OneOf(['a4', 'letter'], { optional: true, description: 'Paper that a PDF is set for.' })
  readonly paper?: 'a4' | 'letter';
}

export class CalendarQueryDto {
  @CalendarDate({
    optional: true,
    description: 'The day whose work, waits and holds are listed; by the calendar of the place.',
  })
  readonly on?: string;

  @OneOf(['milestones', 'all'], {
    optional: true,
    description: 'As iCalendar: the milestones, or every task as well. Absent: the milestones.',
  })
  readonly events?: 'milestones' | 'all';
}

export class DrawingQueryDto {
  @OneOf(['landscape', 'portrait', 'phone'], {
    optional: true,
    description: 'Shape of the sheet; `phone` is narrow with larger words. Landscape when absent.',
  })
  readonly shape?: 'landscape' | 'portrait' | 'phone';

  @OneOf(['a4', 'letter'], { optional: true, description: 'Paper that a PDF is set for.' })
  readonly paper?: 'a4' | 'letter';
}

const pricedAtMeaning =
  'Code of the edition whose prices and packs count (a code, not a time), or `current`. Absent: the one that all the estimates were made with, or the current one where they differ. `drift` says line by line what has changed since.';

const supplierMeaning =
  'As XML: the supplier whose order is meant, because an order has one seller; needed when there are several. The JSON form lists them in `orders`.';

export class BasketChoicesDto
  extends answering(orderQuestions, {
    hardeners: () => HardenerChoiceDto,
    substitutes: () => SubstituteDto,
    onHand: () => OnHandDto,
    options: () => BasketOptionsDto,
  })
  implements BasketChoices
{
  @Code({
    optional: true,
    description:
      'Price list of the edition; the one the estimates were priced with when absent, which must then be the same for all.',
  })
  readonly priceList?: string;

  @Code({ optional: true, description: pricedAtMeaning })
  readonly pricedAt?: string;

  @Code({ optional: true, description: supplierMeaning })
  readonly supplier?: string;

  @Texts({
    optional: true,
    most: 20,
    each: { atMost: 36 },
    description:
      'Ids of other estimates to buy for in the same order: needs are pooled before packs are chosen, and `byEstimate` says what each pays.',
  })
  readonly together?: readonly string[];
}

export class OrderQueryDto {
  @Code({ optional: true, description: supplierMeaning })
  readonly supplier?: string;

  @Code({ optional: true, description: pricedAtMeaning })
  readonly pricedAt?: string;
}
