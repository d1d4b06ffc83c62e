import { Module } from '@nestjs/common';
import { ReportModule } from '../report/report.module.js';
import { LetterheadController } from './letterhead.controller.js';
import { LetterheadService } from './letterhead.service.js';

@Module({ imports: [ReportModule], controllers: [LetterheadController], providers: [LetterheadService] })
export class LetterheadModule {}
