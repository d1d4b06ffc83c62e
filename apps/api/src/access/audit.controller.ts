import { Controller, Get, Query } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { AuditTrail } from '../audit/audit-trail.js';
import { auditEntryOf, type AuditPage } from '../audit/history.js';
import { Text } from '../edge/dto/index.js';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { Answers } from '../edge/endpoint.js';
import { idOfCursor, pageOf } from '../persistence/cursor.js';
import { Database } from '../persistence/database.js';
import { CallerParam, Needs } from './access.decorators.js';
import { PageQueryDto } from './access.dto.js';
import type { Caller } from './roles.js';

export class AuditQueryDto extends PageQueryDto {
  @Text({
    optional: true,
    atMost: 40,
    description: 'Only what was done to this kind of thing, such as key or edition.',
  })
  readonly subject?: string;
}

/** Who did what in an organisation. */
@ApiTags('Access')
@Controller('v1/audit')
@Needs('audit:read')
export class AuditController {
  constructor(private readonly database: Database) {}

  @Get()
  @ApiOperation({
    operationId: 'listAuditEntries',
    summary: 'Who did what in the organisation, newest first',
    description:
      'Changes of keys, letterhead, webhooks, catalogue, stock, shares and photographs, with the key and the request that made them.',
  })
  @Answers('AuditPage')
  async list(
    @CallerParam() { organisationId }: Caller,
    @Query() { limit = USUAL_ON_PAGE, cursor, subject }: AuditQueryDto,
  ): Promise<AuditPage> {
    const beforeId = idOfCursor(cursor);
    const rows = await this.database.inOrganisation(organisationId, (tx) =>
      AuditTrail.in(tx).page({ limit: limit + 1, beforeId, subject }),
    );
    return pageOf(rows, limit, auditEntryOf);
  }
}
