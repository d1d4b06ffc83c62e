import { Body, Controller, Delete, Get, HttpCode, Param, Post, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, AnswersNothing, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { DeliveryWorker } from './delivery-worker.js';
import { deliveryView, endpointView } from './event-view.js';
import { NewWebhookEndpointDto, SecretRenewalDto } from './events.dto.js';
import { EventsService, type MadeEndpoint } from './events.service.js';
import type {
  NewWebhookEndpoint,
  WebhookDelivery,
  WebhookDeliveryList,
  WebhookEndpoint,
  WebhookEndpointList,
} from './service-event.js';

/** Where an organisation wants to be told what happened, and what came of telling it. */
@ApiTags('Events')
@Controller('v1/webhook-endpoints')
@Needs('webhooks:write')
export class WebhookEndpointsController {
  constructor(
    private readonly events: EventsService,
    private readonly worker: DeliveryWorker,
  ) {}

  @Get()
  @Needs('webhooks:read')
  @ApiOperation({
    operationId: 'listWebhookEndpoints',
    summary: 'Webhook endpoints of the organisation, oldest first',
    description: 'Addresses with the events that each is told of; secrets are not shown.',
  })
  @Answers('WebhookEndpointList')
  async list(@CallerParam() caller: Caller): Promise<WebhookEndpointList> {
    return { items: (await this.events.endpoints(caller)).map(endpointView) };
  }

  @Post()
  @ApiOperation({
    operationId: 'createWebhookEndpoint',
    summary: 'Have events posted to an address; its secret is shown in this answer only',
    description:
      'The address is reached over https and must not be a private one. Events are signed as Standard Webhooks says, with the secret of this answer.',
  })
  @Answers('NewWebhookEndpoint', { status: 201, headers: ['Location', 'ETag'] })
  @Refuses('conflict')
  async create(
    @CallerParam() caller: Caller,
    @Body() wanted: NewWebhookEndpointDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewWebhookEndpoint> {
    return shownOnce(await this.events.add(caller, wanted), response);
  }

  @Get(':id')
  @Needs('webhooks:read')
  @ApiOperation({
    operationId: 'getWebhookEndpoint',
    summary: 'A webhook endpoint, without its secret',
    description: 'Its address and the events that it is told of.',
  })
  @Answers('WebhookEndpoint', { headers: ['ETag'] })
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<WebhookEndpoint> {
    const row = await this.events.endpoint(caller, id);
    response.setHeader('ETag', tagOf(row.version));
    return endpointView(row);
  }

  @Delete(':id')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'deleteWebhookEndpoint',
    summary: 'Have no more events posted to an address',
    description: 'Deliveries that wait are dropped; the events stay in the feed.',
  })
  @ChangesVersion()
  async remove(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<void> {
    await this.events.remove(caller, id, (version) => {
      refuseUnlessMatch(request, version);
    });
  }

  @Post(':id/secret-renewal')
  @ApiOperation({
    operationId: 'renewWebhookSecret',
    summary: 'Give an endpoint a new secret; both sign for an overlap',
    description:
      'The new secret is shown once, in this answer. During the overlap each delivery carries two signatures, so that receivers can change without losing one.',
  })
  @Answers('NewWebhookEndpoint', { status: 201, headers: ['Location', 'ETag'] })
  async renew(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Body() { overlapHours }: SecretRenewalDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewWebhookEndpoint> {
    return shownOnce(await this.events.renewSecret(caller, id, overlapHours), response);
  }

  @Get(':id/deliveries')
  @Needs('webhooks:read')
  @ApiOperation({
    operationId: 'listWebhookDeliveries',
    summary: 'The last 200 deliveries to an endpoint, the newest event first',
    description: 'Says of each how many attempts were made, what came back and when the next one is due.',
  })
  @Answers('WebhookDeliveryList')
  async deliveries(@CallerParam() caller: Caller, @Param('id') id: string): Promise<WebhookDeliveryList> {
    return { items: (await this.events.deliveries(caller, id)).map(deliveryView) };
  }

  @Post(':id/deliveries/:eventId/repetition')
  @HttpCode(200)
  @ApiOperation({
    operationId: 'repeatWebhookDelivery',
    summary: 'Deliver an event once more, with all its attempts before it',
    description: 'For an endpoint that was away longer than three days, or lost what it had received.',
  })
  @Answers('WebhookDelivery')
  @Refuses('conflict')
  async repeat(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Param('eventId') eventId: string,
  ): Promise<WebhookDelivery> {
    const row = await this.events.repeat(caller, id, eventId);
    this.worker.wake();
    return deliveryView(row);
  }
}

function shownOnce({ row, secret }: MadeEndpoint, response: Response): NewWebhookEndpoint {
  response.setHeader('Location', `/v1/webhook-endpoints/${row.id}`);
  response.setHeader('ETag', tagOf(row.version));
  return { ...endpointView(row), secret };
}
