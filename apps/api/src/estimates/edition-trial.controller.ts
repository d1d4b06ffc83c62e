import { Body, Controller, HttpCode, Param, Post } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Catalogue } from '#lib/catalogue';
import { pricedDocumentOf } from '#lib/estimate';
import { problem } from '#lib/kernel';
import { CallerParam, Needs } from '../access/access.decorators.js';
import { may, type Caller } from '../access/roles.js';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { Answers, Refuses } from '../edge/endpoint.js';
import { HttpProblem, summaryOf } from '../edge/problems.js';
import { ShowsUnits } from '../edge/units.js';
import { StoresNothing } from '../idempotency/remembers.js';
import { engineVersion } from '../settings/engine-version.js';
import { EditionTrialDto, USUALLY_TRIED } from './dto/estimates.dto.js';
import {
  documentIn,
  isSame,
  triedEstimate,
  trialTotals,
  type EditionTrial,
  type TriedEstimate,
} from './edition-trial.js';
import { Engine } from './engine.js';
import type { RecordedRow } from './estimates.repository.js';
import { EstimatesService } from './estimates.service.js';

interface Pair {
  readonly before: Catalogue;
  readonly after: Catalogue;
}

/** What an edition would do to estimates that are kept, before it is published. */
@ApiTags('Catalogue')
@Controller('v1/editions/:code/trial')
export class EditionTrialController {
  constructor(
    private readonly catalogues: CurrentCatalogue,
    private readonly engine: Engine,
    private readonly estimates: EstimatesService,
  ) {}

  @Post()
  @HttpCode(200)
  @Needs('prices:write')
  @StoresNothing()
  @ShowsUnits()
  @ApiOperation({
    operationId: 'tryEdition',
    summary: 'Try an edition, such as a draft, on stored estimates; nothing is stored',
    description:
      'Takes ids of stored estimates, or how many of the newest. Each is worked out again from the record it keeps, with this edition and with the one compared with, by the same version of the program, so that only the catalogue makes the difference.',
  })
  @Answers('EditionTrial')
  @Refuses('unprocessable')
  async trial(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Body() { estimates, newest, against }: EditionTrialDto,
  ): Promise<EditionTrial> {
    if (estimates !== undefined && newest !== undefined) throw oneOrTheOther();
    const { organisationId } = caller;
    const after = await this.catalogues.tried(organisationId, code);
    const before = await this.catalogues.named(organisationId, against);
    const rows = await this.estimates.samples(
      caller,
      estimates,
      estimates?.length ?? newest ?? USUALLY_TRIED,
    );
    const tried: TriedEstimate[] = [];
    for (const row of rows) tried.push(await this.tried(caller, row, { before, after }));
    return {
      edition: code,
      against: before.edition,
      engineVersion,
      sameCount: tried.filter(isSame).length,
      estimates: tried,
      totals: trialTotals(tried),
    };
  }

  private async tried(caller: Caller, row: RecordedRow, { before, after }: Pair): Promise<TriedEstimate> {
    const [then, now] = await Promise.all(
      [before, after].map(async (catalogue) =>
        documentIn(await this.engine.tried(row.input, caller.organisationId, catalogue)),
      ),
    );
    const named = may(caller, 'estimates:read')
      ? { title: row.title, ...(row.reference === null ? {} : { reference: row.reference }) }
      : {};
    const keptNet = pricedDocumentOf(row.result).net;
    return triedEstimate({ id: row.id, revisionNumber: row.revisionNumber, ...named, keptNet }, then, now);
  }
}

const oneOrTheOther = (): HttpProblem => {
  const problems = [
    problem('contradiction', '/newest', {
      other: 'estimates',
      why: 'name the estimates, or say how many of the newest',
    }),
  ];
  return new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
};
