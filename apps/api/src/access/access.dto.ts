import { SomeOf, Text } from '../edge/dto/index.js';
import { roles, type Role } from './roles.js';

const uuid = {
  pattern: /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/,
  words: 'the id of an organisation',
};

export class NewOrganisationDto {
  @Text({ atMost: 200 })
  readonly name!: string;
}

export class NewKeyDto {
  @Text({ atMost: 200, description: 'Whose key it is, or what for.' })
  readonly name!: string;

  @SomeOf(roles, { least: 1, most: roles.length })
  readonly roles!: readonly Role[];

  @Text({
    optional: true,
    atMost: 36,
    form: uuid,
    description: 'The organisation of the caller when absent.',
  })
  readonly organisationId?: string;
}

export class KeysQueryDto {
  @Text({
    optional: true,
    atMost: 36,
    form: uuid,
    description: 'The organisation of the caller when absent.',
  })
  readonly organisationId?: string;
}
