import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { DefectRecord } from '#lib/estimate';
import type { Caller } from '../access/roles.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { JSON_TYPE } from '../edge/media.js';
import { DefectRecordDto } from '../inputs/defect-record.dto.js';
import { OperationWorker } from '../operations/operation-worker.js';
import { sendAccepted } from '../operations/operations.controller.js';
import type { MadeElsewhere } from '../operations/outcome.js';
import { OperationsService } from '../operations/operations.service.js';
import { prefersAsync } from '../operations/prefer.js';
import { newId } from '../persistence/ids.js';
import { EstimateTaskDto } from './dto/estimate-task.dto.js';
import { EstimatesService, type EstimateOrder } from './estimates.service.js';
import { sendMade } from './made-answer.js';

/** Names the tasks among all operations. */
const KIND = 'estimate';

/** Beyond these an estimate can take seconds rather than a moment. */
export const PROMPT_RECORD = { zones: 24, readings: 1000 } as const;

/** Makes estimates: at once, or as an operation when the caller prefers it or the record is large. */
@Injectable()
export class EstimateOrders {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly operations: OperationsService,
    worker: OperationWorker,
  ) {
    worker.handle(KIND, (organisationId, task, signal) =>
      this.madeLater(organisationId, checkedAs(EstimateTaskDto, task), signal),
    );
  }

  async send(order: EstimateOrder, request: Request): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    response.vary('Prefer');
    const isPreferred = prefersAsync(request);
    if (!mayComeLater(order) || !(isPreferred || isLarge(order.record))) {
      sendMade(await this.estimates.make(order), request);
      return;
    }
    const earlier = await this.estimates.madeBefore(order);
    if (earlier === undefined)
      sendAccepted(response, await this.operations.accept(order.caller, KIND, taskOf(order)), isPreferred);
    else sendMade(earlier, request);
  }

  private async madeLater(
    organisationId: string,
    task: EstimateTaskDto,
    signal: AbortSignal,
  ): Promise<MadeElsewhere> {
    const { row } = await this.estimates.make(orderIn(organisationId, task), signal);
    return { href: `/v1/estimates/${row.id}`, mediaType: JSON_TYPE };
  }
}

/** A page is given a secret with its estimate, which no operation keeps. */
const mayComeLater = ({ caller }: EstimateOrder): boolean => caller.kind === 'secret';

const isLarge = ({ zones = [], survey }: DefectRecord): boolean =>
  zones.length > PROMPT_RECORD.zones || (survey?.readings.length ?? 0) > PROMPT_RECORD.readings;

const taskOf = ({ caller, record, idempotencyKey, revises }: EstimateOrder): EstimateTaskDto => ({
  recordJson: JSON.stringify(record),
  keyId: caller.keyId,
  keyName: caller.keyName,
  idempotencyKey: idempotencyKey ?? newId(),
  ...revises,
});

function orderIn(organisationId: string, task: EstimateTaskDto): EstimateOrder {
  const { recordJson, keyId, keyName, idempotencyKey, estimateId, reason } = task;
  const caller: Caller = { organisationId, keyId, keyName, roles: [], scopes: [], kind: 'secret' };
  const order = { caller, record: checkedAs(DefectRecordDto, JSON.parse(recordJson)), idempotencyKey };
  return estimateId === undefined || reason === undefined
    ? order
    : { ...order, revises: { estimateId, reason } };
}
