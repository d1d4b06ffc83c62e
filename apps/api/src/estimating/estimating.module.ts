import { Module } from '@nestjs/common';
import { BasketController } from './basket/basket.controller.js';
import { BondPressureController } from './bond-pressure/bond-pressure.controller.js';
import { CalendarController } from './calendar/calendar.controller.js';
import { CoreBillController } from './core-bill/core-bill.controller.js';
import { CostRollupController } from './cost-rollup/cost-rollup.controller.js';
import { CurePlanController } from './cure-plan/cure-plan.controller.js';
import { CuttingPlanController } from './cutting-plan/cutting-plan.controller.js';
import { LadderController } from './ladder/ladder.controller.js';
import { LaminateScheduleController } from './laminate-schedule/laminate-schedule.controller.js';
import { NextReadingsController } from './next-readings/next-readings.controller.js';
import { OpeningsController } from './openings/openings.controller.js';
import { PanelCheckController } from './panel-check/panel-check.controller.js';
import { PreviewController } from './preview/preview.controller.js';
import { QuantitiesController } from './quantities/quantities.controller.js';
import { ResinBatchesController } from './resin-batches/resin-batches.controller.js';
import { VariantsController } from './variants/variants.controller.js';

/**
 * The rooms one by one, stateless. To add one, copy the folder `quantities`:
 *
 * 1. `<name>/<name>.dto.ts`: the room's request as a class, each field with ONE decorator of `../../edge/dto/index.js`
 *    (`@Length({ above: 0, upTo: 200 })` takes a number in mm or text such as "5/8 in"; the room receives mm);
 * 2. `<name>/<name>.controller.ts`: `@Post('<name>') @RoomEndpoint({ operationId, summary, result: 'ResultType' })`
 *    and `return answer(roomFunction(request))`; nothing is decided there. `ResultType` is the name of the exported
 *    result type of the room: `npm run gen` makes its schema from the type;
 * 3. one line in `controllers` below;
 * 4. `test/e2e/estimating-<name>.spec.ts`: the example, a wrong one, through HTTP (copy estimating-quantities.spec.ts).
 */
@Module({
  controllers: [
    BasketController,
    BondPressureController,
    CalendarController,
    CoreBillController,
    CostRollupController,
    CurePlanController,
    CuttingPlanController,
    LadderController,
    LaminateScheduleController,
    NextReadingsController,
    OpeningsController,
    PanelCheckController,
    PreviewController,
    QuantitiesController,
    ResinBatchesController,
    VariantsController,
  ],
})
export class EstimatingModule {}
