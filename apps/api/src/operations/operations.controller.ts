import { Controller, Get, Param, Req } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { sendContent } from '../edge/content.js';
import { Answers, AnswersOnlyIn, headersOf, Refuses } from '../edge/endpoint.js';
import { HTML_TYPE, JSON_TYPE, PDF_TYPE, Produces } from '../edge/media.js';
import { HttpProblem } from '../edge/problems.js';
import { operationView, type OperationState } from './operation-view.js';
import { OperationsService } from './operations.service.js';

/** Seconds after which it is worth asking again. */
const ASK_AGAIN_S = '1';

@ApiTags('Operations')
@Controller('v1/operations')
@Needs('estimates:read')
@AlsoFor('holder')
export class OperationsController {
  constructor(private readonly operations: OperationsService) {}

  @Get(':id')
  @ApiOperation({
    operationId: 'getOperation',
    summary: 'How far an operation is; ask again after Retry-After',
    description:
      'Waiting, running, done or failed. One that is done leads to its result; one that failed says why, as the request itself would have been refused.',
  })
  @Answers('LongOperation', { headers: ['Retry-After'] })
  async one(@CallerParam() caller: Caller, @Param('id') id: string, @Req() request: Request): Promise<void> {
    const state = await this.operations.operation(caller, id);
    if (request.res !== undefined) sendState(request.res, state);
  }

  @Get(':id/result')
  @Produces(PDF_TYPE, HTML_TYPE, JSON_TYPE)
  @ApiOperation({
    operationId: 'getOperationResult',
    summary: 'The result of an operation that is done; 409 before',
    description:
      'A document comes with the bytes and the media type that the request would have answered at once; an estimate is led to by 303 and Location.',
  })
  @AnswersOnlyIn([PDF_TYPE, HTML_TYPE], ['ETag'])
  @ApiResponse({
    status: 303,
    description: 'What was made has a place of its own, at Location.',
    headers: headersOf(['Location']),
  })
  @Refuses('conflict')
  async result(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<void> {
    const result = await this.operations.result(caller, id);
    if ('href' in result) {
      request.res?.redirect(303, result.href);
      return;
    }
    if (request.accepts(result.mediaType) === false)
      throw new HttpProblem('not-acceptable', {
        detail: `The result is ${result.mediaType}; Accept does not name it.`,
      });
    sendContent(result, request);
  }
}

/** 202 with the operation to poll. */
export function sendAccepted(response: Response, state: OperationState, wasPreferred: boolean): void {
  response.status(202).setHeader('Location', `/v1/operations/${state.id}`);
  if (wasPreferred) response.setHeader('Preference-Applied', 'respond-async');
  sendState(response, state);
}

function sendState(response: Response, state: OperationState): void {
  if (state.status === 'waiting' || state.status === 'running')
    response.setHeader('Retry-After', ASK_AGAIN_S);
  response.type(JSON_TYPE).send(JSON.stringify(operationView(state)));
}
