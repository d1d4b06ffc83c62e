import { Controller, Delete, Get, Param, Put } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { Answers, AnswersNothing, Refuses } from '../edge/endpoint.js';
import { HttpProblem, notFound, notInForm } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isId } from '../persistence/ids.js';
import { rootIdIn } from './estimates.service.js';
import { SharesRepository } from './shares.repository.js';

export interface Share {
  /** The chandler's key. */
  readonly keyId: string;
  /** Name of the key it is shared with. */
  readonly keyName: string;
  /** Since when it is shared (RFC 3339). */
  readonly since: string;
}

export interface ShareList {
  /** Keys that the estimate is shared with. */
  readonly items: readonly Share[];
}

/** A chandler sees no estimate but those shared with its key. */
@ApiTags('Estimates')
@Controller('v1/estimates/:id/shares')
@Needs('estimates:share')
export class SharesController {
  constructor(private readonly database: Database) {}

  @Get()
  @ApiOperation({
    operationId: 'listShares',
    summary: 'Chandlers that an estimate and its revisions are shared with',
    description: 'Each with the name of the key and since when it may read.',
  })
  @Answers('ShareList')
  list(@CallerParam() caller: Caller, @Param('id') id: string): Promise<ShareList> {
    return this.about(caller, id, async (shares, rootId) => ({
      items: (await shares.of(rootId)).map(({ keyId, keyName, createdAt }) => ({
        keyId,
        keyName,
        since: createdAt.toISOString(),
      })),
    }));
  }

  @Put(':keyId')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'shareEstimate',
    summary: 'Share an estimate and its revisions with the key of a chandler',
    description: 'The chandler may read the estimate and its revisions, order for them, and see no others.',
  })
  @Refuses('unprocessable')
  async share(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Param('keyId') keyId: string,
  ): Promise<void> {
    await this.about(caller, id, async (shares, rootId, tx) => {
      if (!isId(keyId) || !(await shares.isChandlersKey(keyId))) throw noChandler(keyId);
      await shares.add(rootId, keyId);
      await AuditTrail.in(tx).add(caller, {
        action: 'created',
        subject: 'share',
        code: rootId,
        after: { keyId },
      });
    });
  }

  @Delete(':keyId')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'unshareEstimate',
    summary: 'Take an estimate back from a chandler',
    description: 'From then on the chandler is answered as if there were no such estimate.',
  })
  async unshare(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Param('keyId') keyId: string,
  ): Promise<void> {
    await this.about(caller, id, async (shares, rootId, tx) => {
      if (!isId(keyId)) throw notFound(`The key ${JSON.stringify(keyId.slice(0, 60))}`);
      await shares.remove(rootId, keyId);
      await AuditTrail.in(tx).add(caller, {
        action: 'removed',
        subject: 'share',
        code: rootId,
        before: { keyId },
      });
    });
  }

  private about<T>(
    { organisationId }: Caller,
    id: string,
    work: (shares: SharesRepository, rootId: string, tx: Transaction) => Promise<T>,
  ): Promise<T> {
    return this.database.inOrganisation(organisationId, async (tx) =>
      work(SharesRepository.in(tx), await rootIdIn(tx, id), tx),
    );
  }
}

const noChandler = (keyId: string): HttpProblem =>
  new HttpProblem('unprocessable', {
    detail: 'An estimate is shared with a key of a chandler.',
    problems: [
      notInForm(
        { parameter: 'keyId' },
        keyId,
        'the id of a key in force of your organisation with the role chandler',
      ),
    ],
  });
