import { Controller, Delete, Param } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { AnswersNothing } from '../edge/endpoint.js';
import { Database } from '../persistence/database.js';
import { EstimatesRepository } from './estimates.repository.js';
import { rootIdIn } from './estimates.service.js';

/** What an estimate knows of people, to be erased when somebody asks for it. */
@ApiTags('Estimates')
@Controller('v1/estimates/:id/parties')
export class PartiesController {
  constructor(private readonly database: Database) {}

  @Delete()
  @Needs('estimates:write')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'eraseParties',
    summary: 'Erase what an estimate and its revisions say of people',
    description:
      'Client, instructing party and surveyor, the vessel with its name and numbers, and the reference of the insurer go out of the records of every revision, and documents that were printed for later and bear them are thrown away. Figures and sums stay as they are, because none rests on these. Photographs are taken away one by one; what people wrote into titles, findings, notes, captions and reasons of revisions is not searched.',
  })
  async erase(@CallerParam() caller: Caller, @Param('id') id: string): Promise<void> {
    await this.database.inOrganisation(caller.organisationId, async (tx) => {
      const rootId = await rootIdIn(tx, id);
      await EstimatesRepository.in(tx).eraseParties(rootId);
      await AuditTrail.in(tx).add(caller, { action: 'removed', subject: 'parties', code: rootId });
    });
  }
}
