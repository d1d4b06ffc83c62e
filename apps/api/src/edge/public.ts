import { SetMetadata } from '@nestjs/common';

export const publicKey = 'kingplank:public';

/** Anybody may call, without a key. */
export const Public = (): ClassDecorator & MethodDecorator => SetMetadata(publicKey, true);
