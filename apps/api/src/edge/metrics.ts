import { Injectable } from '@nestjs/common';
import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from 'prom-client';

interface Observation {
  readonly method: string;
  readonly route: string;
  readonly status: number;
  readonly seconds: number;
}

/** One value of a gauge, with what tells it from its siblings. */
export interface Reading {
  readonly labels: Readonly<Record<string, string>>;
  readonly value: number;
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

  constructor() {
    collectDefaultMetrics({ register: this.registry });
  }

  observe({ method, route, status, seconds }: Observation): void {
    this.durations.observe(
      { method: knownMethods.has(method) ? method : 'OTHER', route, status: String(status) },
      seconds,
    );
  }

  /** A count that a feature keeps; it says what it counts. */
  counter(name: string, help: string): Counter {
    return new Counter({ name, help, registers: [this.registry] });
  }

  /** A value that a feature is asked for whenever somebody looks. */
  gauge(name: string, help: string, read: () => readonly Reading[]): void {
    const labelNames = Object.keys(read()[0]?.labels ?? {});
    new Gauge({
      name,
      help,
      labelNames,
      registers: [this.registry],
      collect() {
        this.reset();
        for (const { labels, value } of read()) this.set(labels, value);
      },
    });
  }

  text(): Promise<string> {
    return this.registry.metrics();
  }
}

const knownMethods = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']);
