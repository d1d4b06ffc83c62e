import { Module } from '@nestjs/common';
import { DeliveryWorker } from './delivery-worker.js';
import { EventsController } from './events.controller.js';
import { EventsService } from './events.service.js';
import { WebhookEndpointsController } from './webhook-endpoints.controller.js';

/** What happened, as others are told of it. Whoever does something worth telling calls `tell` in its own transaction. */
@Module({
  controllers: [EventsController, WebhookEndpointsController],
  providers: [EventsService, DeliveryWorker],
})
export class EventsModule {}
