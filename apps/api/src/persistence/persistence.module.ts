import { Global, Module } from '@nestjs/common';
import { Database } from './database.js';
import { Seeding } from './seeding.js';

@Global()
@Module({ providers: [Database, Seeding], exports: [Database] })
export class PersistenceModule {}
