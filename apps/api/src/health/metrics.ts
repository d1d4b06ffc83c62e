import { Injectable } from '@nestjs/common';
import { collectDefaultMetrics, Counter, Histogram, Registry } from 'prom-client';

interface Observation {
  readonly method: string;
  readonly route: string;
  readonly status: number;
  readonly seconds: number;
}

/** Measurements in the Prometheus text format, one registry for each service so that tests do not share it. */
@Injectable()
export class Metrics {
  private readonly registry = new Registry();
  private readonly durations = new Histogram({
    name: 'http_request_duration_seconds',
    help: 'Time from the first byte of a request to the end of its answer.',
    labelNames: ['method', 'route', 'status'],
    buckets: [0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10],
    registers: [this.registry],
  });
  private readonly estimates = new Counter({
    name: 'estimates_made_total',
    help: 'Estimates computed and stored.',
    registers: [this.registry],
  });

  constructor() {
    collectDefaultMetrics({ register: this.registry });
  }

  observe({ method, route, status, seconds }: Observation): void {
    this.durations.observe(
      { method: knownMethods.has(method) ? method : 'OTHER', route, status: String(status) },
      seconds,
    );
  }

  estimateMade(): void {
    this.estimates.inc();
  }

  text(): Promise<string> {
    return this.registry.metrics();
  }
}

const knownMethods = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']);
