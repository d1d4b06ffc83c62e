import { Module } from '@nestjs/common';
import { DeliveryWorker } from './delivery-worker.js';
import { EventsController } from './events.controller.js';
import { EventsService } from './events.service.js';
import { SecretSeal } from './secret-seal.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { WebhookEndpointsController } from './webhook-endpoints.controller.js';

const sealing = {
  provide: SecretSeal,
  useFactory: ({ webhookSecretsKeys }: Configuration): SecretSeal => new SecretSeal(webhookSecretsKeys),
  inject: [configurationToken],
};

/** What happened, as others are told of it. Whoever does something worth telling calls `tell` in its own transaction. */
@Module({
  controllers: [EventsController, WebhookEndpointsController],
  providers: [EventsService, DeliveryWorker, sealing],
})
export class EventsModule {}
