import { Controller, Get, Res } from '@nestjs/common';
import { ApiExcludeEndpoint, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Public } from '../edge/public.js';
import { Shown } from '../edge/endpoint.js';
import { Produces } from '../edge/media.js';
import { unavailable } from '../edge/problems.js';
import { Metrics } from '../edge/metrics.js';
import { Readiness } from '../edge/readiness.js';

@ApiTags('Service')
@Controller()
@Public()
export class HealthController {
  constructor(
    private readonly readiness: Readiness,
    private readonly metrics: Metrics,
  ) {}

  @Get('health/live')
  @ApiOperation({
    operationId: 'isAlive',
    summary: 'Whether the process answers',
    description: 'For whoever restarts a process that hangs. Needs no key and asks nothing of the database.',
  })
  @Shown({
    type: 'object',
    properties: { status: { type: 'string', enum: ['alive'], description: 'That the process answers.' } },
    required: ['status'],
  })
  live(): { readonly status: 'alive' } {
    return { status: 'alive' };
  }

  @Get('health/ready')
  @ApiOperation({
    operationId: 'isReady',
    summary: 'Whether the service can take work',
    description: 'For a balancer: 503 while the database is away or the service is stopping. Needs no key.',
  })
  @Shown({
    type: 'object',
    properties: { status: { type: 'string', enum: ['ready'], description: 'That work can be taken.' } },
    required: ['status'],
  })
  async ready(): Promise<{ readonly status: 'ready' }> {
    const obstacle = await this.readiness.obstacle();
    if (obstacle !== undefined) throw unavailable(obstacle);
    return { status: 'ready' };
  }

  @Get('metrics')
  @Produces('text/plain')
  @ApiExcludeEndpoint()
  async measurements(@Res() response: Response): Promise<void> {
    response.type('text/plain; version=0.0.4; charset=utf-8').send(await this.metrics.text());
  }
}
