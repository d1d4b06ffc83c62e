import { Module, type DynamicModule } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_PIPE } from '@nestjs/core';
import { AccessModule } from './access/access.module.js';
import { entities, seeds } from './features.js';
import { entitiesToken } from './persistence/database.js';
import { seedsToken } from './persistence/seeding.js';
import { Clock } from './settings/clock.js';
import { configurationToken, type Configuration } from './settings/configuration.js';
import { CatalogueModule } from './catalogue/catalogue.module.js';
import { EstimatesModule } from './estimates/estimates.module.js';
import { EstimatingModule } from './estimating/estimating.module.js';
import { EventsModule } from './events/events.module.js';
import { HealthController } from './health/health.controller.js';
import { Metrics } from './edge/metrics.js';
import { Readiness } from './edge/readiness.js';
import { DtoPipe } from './edge/dto.pipe.js';
import { Log } from './edge/log.js';
import { MediaGuard } from './edge/media.guard.js';
import { ProblemFilter } from './edge/problem-filter.js';
import { ProblemsController } from './edge/problems.controller.js';
import { PathGuard } from './edge/path.guard.js';
import { QueryGuard } from './edge/query.guard.js';
import { LetterheadModule } from './letterhead/letterhead.module.js';
import { WorkbenchModule } from './workbench/workbench.module.js';
import { PersistenceModule } from './persistence/persistence.module.js';

@Module({})
export class AppModule {
  static with(configuration: Configuration, log: Log): DynamicModule {
    return {
      module: AppModule,
      global: true,
      // The access guard comes before the media guard: bodies of strangers are not read.
      imports: [
        PersistenceModule,
        WorkbenchModule,
        AccessModule,
        EventsModule,
        LetterheadModule,
        CatalogueModule,
        EstimatesModule,
        EstimatingModule,
      ],
      controllers: [HealthController, ProblemsController],
      providers: [
        { provide: configurationToken, useValue: configuration },
        { provide: Log, useValue: log },
        Clock,
        Readiness,
        Metrics,
        { provide: entitiesToken, useValue: entities },
        { provide: seedsToken, useValue: seeds },
        { provide: APP_GUARD, useClass: PathGuard },
        { provide: APP_GUARD, useClass: QueryGuard },
        { provide: APP_GUARD, useClass: MediaGuard },
        { provide: APP_PIPE, useClass: DtoPipe },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
      exports: [configurationToken, Log, Clock, Readiness, Metrics, entitiesToken, seedsToken],
    };
  }
}
