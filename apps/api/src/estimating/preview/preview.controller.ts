import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { EstimatePreview } from '#lib/estimate';
import { AlsoFor, CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { answer } from '../../edge/problems.js';
import { DefectRecordDto } from '../../inputs/defect-record.dto.js';
import { Workbench } from '../../workbench/workbench.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { stocked } from '../stocked.js';
import { previewJob } from './preview.job.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class PreviewController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  @Post('preview')
  @AlsoFor('publishable')
  @RoomEndpoint({
    operationId: 'previewEstimate',
    summary: 'Openings, hours and price of a defect record while it is still being drawn',
    description:
      'Takes what POST /v1/estimates takes and keeps nothing. Core is priced by area, the range of the price is worked out without simulation, and few schedules are tried; `leftOut` says what else only the estimate works out.',
    result: 'EstimatePreview',
  })
  async preview(
    @CallerParam() { organisationId, page }: Caller,
    @Body() record: DefectRecordDto,
  ): Promise<EstimatePreview> {
    const catalogue = await this.catalogue.named(organisationId, page?.edition);
    return answer(await this.workbench.do(previewJob, record, { organisationId }, stocked(catalogue)));
  }
}
