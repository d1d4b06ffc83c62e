import http from 'node:http';
import type { Socket } from 'node:net';
import { ExpressAdapter } from '@nestjs/platform-express';
import express from 'express';
import type { Configuration } from '../settings/configuration.js';
import { problemKinds, type ProblemKind } from './problems.js';

/** An adapter whose server gives up on slow and broken connections soon, and says so as a problem document. */
export class StrictAdapter extends ExpressAdapter {
  constructor(private readonly configuration: Configuration) {
    super(express());
  }

  override initHttpServer(): void {
    const { requestTimeoutMs } = this.configuration;
    this.httpServer = http.createServer(
      {
        connectionsCheckingInterval: 500,
        headersTimeout: Math.min(10_000, requestTimeoutMs),
        requestTimeout: requestTimeoutMs,
        keepAliveTimeout: 5000,
        maxHeaderSize: 16_384,
        requireHostHeader: true,
      },
      this.getInstance(),
    );
    this.httpServer.on('clientError', refuseConnection);
  }
}

const kindsByCode: Readonly<Record<string, ProblemKind>> = {
  HPE_HEADER_OVERFLOW: 'headers-too-large',
  ERR_HTTP_REQUEST_TIMEOUT: 'request-timeout',
};

function refuseConnection(fault: NodeJS.ErrnoException, socket: Socket): void {
  if (fault.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const kind = kindsByCode[fault.code ?? ''] ?? 'bad-request';
  const { status, title } = problemKinds[kind];
  const body = JSON.stringify({
    type: `/problems/${kind}`,
    title,
    status,
    detail: 'The bytes received are not an HTTP request that can be answered.',
  });
  socket.end(
    [
      `HTTP/1.1 ${status} ${http.STATUS_CODES[status] ?? ''}`,
      'Content-Type: application/problem+json',
      `Content-Length: ${Buffer.byteLength(body)}`,
      'Connection: close',
      '',
      body,
    ].join('\r\n'),
  );
}
