import { applyDecorators, HttpCode } from '@nestjs/common';
import { ApiOperation, ApiResponse } from '@nestjs/swagger';
import { ForRoles } from '../access/access.decorators.js';
import { schemaNames } from '../schemas/schema-names.js';

type InlineSchema = Readonly<Record<string, unknown>>;

/** Documents a 200 answer by a schema given in place. */
export const Shown = (schema: InlineSchema, status = 200): MethodDecorator =>
  ApiResponse({ status, description: 'The answer.', schema });

/**
 * Documents an answer by the name of a type exported from `libs/`; its schema is generated from the type itself
 * (`npm run gen`), so that the document cannot say something else than the code.
 */
export const Answers = (type: string, { status = 200, description = 'The answer.' } = {}): MethodDecorator => {
  schemaNames.add(type);
  return ApiResponse({ status, description, schema: { $ref: `#/components/schemas/${type}` } });
};

interface Room {
  /** Unique name of the operation; the SDK's method is made from it. */
  readonly operationId: string;
  readonly summary: string;
  readonly description?: string;
  /** Name of the result type exported from the room's index. */
  readonly result: string;
}

/** What every stateless endpoint under /v1/estimating has in common: a computation for any key, nothing stored. */
export const RoomEndpoint = ({ operationId, summary, description, result }: Room): MethodDecorator =>
  applyDecorators(
    HttpCode(200),
    ForRoles(),
    ApiOperation({ operationId, summary, ...(description === undefined ? {} : { description }) }),
    Answers(result),
  );
