import { Module } from '@nestjs/common';
import { DocumentsService } from './documents.service.js';

/** Turns estimates into documents; stores nothing and knows no HTTP. */
@Module({ providers: [DocumentsService], exports: [DocumentsService] })
export class DocumentsModule {}
