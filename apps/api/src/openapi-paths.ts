import { Defect } from '#lib/kernel';
import { isRecord } from './edge/dto/field.js';
import { otherPathPattern, pathPatterns } from './edge/path.guard.js';

type Node = Record<string, unknown>;

/** What stands between the braces of a path, by the path up to there: its name among the shared parts, and what it says. */
const parts: Readonly<Record<string, readonly [name: string, description: string]>> = {
  '/v1/organisations/{id}': ['OrganisationId', 'Id of the organisation.'],
  '/v1/keys/{id}': ['KeyId', 'Id of the key; not the key itself.'],
  '/v1/publishable-keys/{id}': ['PublishableKeyId', 'Id of the publishable key; not the key itself.'],
  '/v1/webhook-endpoints/{id}': ['WebhookEndpointId', 'Id of the webhook endpoint.'],
  '/v1/webhook-endpoints/{id}/deliveries/{eventId}': ['EventId', 'Id of the event to deliver once more.'],
  '/v1/editions/{code}': ['EditionCode', 'Code of the edition.'],
  '/v1/price-lists/{code}': ['PriceListCode', 'Code of the price list in the edition.'],
  '/v1/price-lists/{code}/packs/{sku}': ['PackSku', 'Number that the supplier sells the pack under.'],
  '/v1/materials/{code}': ['MaterialCode', 'Code of the material.'],
  '/v1/labour-rates/{code}': ['LabourRatesCode', 'Code of the labour rates.'],
  '/v1/sources/{code}': ['SourceKey', 'Key of the source.'],
  '/v1/estimates/{id}': ['EstimateId', 'Id of the estimate, or of one of its revisions.'],
  '/v1/estimates/{id}/lines/{code}': [
    'LineCode',
    'Code of a line; `check:` and the code of a check; or `quantity:` and the code of a quantity.',
  ],
  '/v1/estimates/{id}/drawings/{name}': [
    'DrawingName',
    'Name of the drawing, as the list of drawings has it.',
  ],
  '/v1/estimates/{id}/shares/{keyId}': ['SharedKeyId', 'Id of the key of the chandler.'],
  '/v1/estimates/{id}/photographs/{number}': [
    'PhotographNumber',
    'Number that the photograph has in the report, from 1.',
  ],
  '/v1/operations/{id}': ['OperationId', 'Id of the operation, as Location gave it.'],
};

/** Describes every part of a path, by the pattern that it is looked at with before anything is asked about it. */
export function addPathParts(operation: Node, path: string): void {
  const stated = Array.isArray(operation.parameters) ? operation.parameters.filter(isRecord) : [];
  const named = [...path.matchAll(/\{(\w+)\}/g)].map(({ 1: name, index, 0: braced }) =>
    pathPart(name, path.slice(0, index + braced.length)),
  );
  operation.parameters = [...named, ...stated.filter((one) => one.in !== 'path')];
}

function pathPart(name: string, upTo: string): Node {
  if (!Object.hasOwn(parts, upTo)) throw new Defect(`Nobody says what ${upTo} ends with`);
  const [, description] = parts[upTo];
  return {
    name,
    in: 'path',
    required: true,
    description,
    schema: {
      type: 'string',
      ...lengths(name),
      pattern: pathPatterns[name] ?? otherPathPattern,
    },
  };
}

/** As the pattern has them, for readers who do not look into patterns. */
const lengths = (name: string) =>
  name === 'id' ? { minLength: 36, maxLength: 36 } : { minLength: 1, maxLength: name === 'name' ? 60 : 80 };

const names = new Map(Object.values(parts).map(([name, description]) => [description, name]));

/** What a part of a path is called among the shared parameters. */
export const nameOfPathPart = ({ description }: Node): string | undefined => names.get(String(description));
