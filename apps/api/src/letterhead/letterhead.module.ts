import { Module } from '@nestjs/common';
import { DocumentsModule } from '../documents/documents.module.js';
import { LetterheadController } from './letterhead.controller.js';
import { LetterheadService } from './letterhead.service.js';

@Module({ imports: [DocumentsModule], controllers: [LetterheadController], providers: [LetterheadService] })
export class LetterheadModule {}
