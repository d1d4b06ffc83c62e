import { applyDecorators, HttpCode } from '@nestjs/common';
import { ApiOperation } from '@nestjs/swagger';
import { Needs } from '../access/access.decorators.js';
import { Answers } from '../edge/endpoint.js';
import { ShowsUnits } from '../edge/units.js';
import { StoresNothing } from '../idempotency/remembers.js';

interface Room {
  /** Unique name of the operation; the SDK's method is made from it. */
  readonly operationId: string;
  readonly summary: string;
  readonly description?: string;
  /** Name of the result type exported from the room's index. */
  readonly result: string;
  /** Numbers are answered with every digit: they were read and not worked out. */
  readonly isExact?: boolean;
}

/** What every stateless endpoint under /v1/estimating has in common: a computation for any key, nothing stored. */
export const RoomEndpoint = ({
  operationId,
  summary,
  description,
  result,
  isExact = false,
}: Room): MethodDecorator =>
  applyDecorators(
    HttpCode(200),
    Needs('calculate'),
    StoresNothing(),
    ShowsUnits({ isExact }),
    ApiOperation({ operationId, summary, ...(description === undefined ? {} : { description }) }),
    Answers(result),
  );
