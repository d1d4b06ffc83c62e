import { Module } from '@nestjs/common';
import { ReportService } from './report.service.js';

/** Turns estimates into documents; stores nothing and knows no HTTP. */
@Module({ providers: [ReportService], exports: [ReportService] })
export class ReportModule {}
