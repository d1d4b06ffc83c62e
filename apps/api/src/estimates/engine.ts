import { Inject, Injectable, type OnModuleInit } from '@nestjs/common';
import { shippedCatalogue, type Catalogue } from '#lib/catalogue';
import type { DefectRecord } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { answer } from '../edge/problems.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { DefectRecordDto } from '../inputs/defect-record.dto.js';
import { leastRecord } from '../inputs/least-record.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { engineVersion } from '../settings/engine-version.js';
import { stocked } from '../estimating/stocked.js';
import type { Customer } from '../workbench/job.js';
import { Workbench } from '../workbench/workbench.js';
import { estimateJob } from './estimate.job.js';
import type { SummaryRow } from './estimate.mapper.js';
import type { WrittenEstimate } from './estimating.js';

/** What an estimate is computed from, beside the catalogue. */
interface Asked extends Customer {
  readonly record: DefectRecord;
  readonly isDerived: boolean;
}

/** Estimates with the edition they are to be made with. */
@Injectable()
export class Engine implements OnModuleInit {
  constructor(
    private readonly catalogues: CurrentCatalogue,
    private readonly workbench: Workbench,
    @Inject(configurationToken) private readonly configuration: Configuration,
  ) {}

  onModuleInit(): void {
    const record = checkedAs(DefectRecordDto, leastRecord);
    this.workbench.rehearse(
      estimateJob,
      { record, engineVersion, isDerived: true },
      stocked(shippedCatalogue),
    );
  }

  /** An estimate with the edition named, or the organisation's current one. @throws {HttpProblem} unprocessable, with every problem */
  async estimate(
    record: DefectRecord,
    { organisationId, signal }: Customer,
    edition: string | undefined,
  ): Promise<WrittenEstimate> {
    const isDerived = this.configuration.keepDerivations;
    return this.estimateWith(
      { record, organisationId, isDerived, ...(signal === undefined ? {} : { signal }) },
      await this.catalogues.named(organisationId, edition),
    );
  }

  /** The answer to the least record, with the catalogue that comes with the program. */
  async example(): Promise<string> {
    const record = checkedAs(DefectRecordDto, leastRecord);
    const asked = { record, organisationId: 'the guide', isDerived: false };
    return (await this.estimateWith(asked, shippedCatalogue)).resultJson;
  }

  /** What an estimate would be with a catalogue that need not be published; nothing is kept of it. */
  tried(
    record: DefectRecord,
    organisationId: string,
    catalogue: Catalogue,
  ): Promise<Outcome<WrittenEstimate>> {
    return this.outcomeWith({ record, organisationId, isDerived: false }, catalogue, engineVersion);
  }

  /** The same estimate once more: with the edition and under the version name that it was made with. */
  async again(
    record: DefectRecord,
    organisationId: string,
    { edition, engineVersion: version }: Pick<SummaryRow, 'edition' | 'engineVersion'>,
  ): Promise<{ readonly made: WrittenEstimate; readonly catalogueHash: string }> {
    const catalogue = await this.catalogues.edition(organisationId, edition);
    const made = await this.estimateWith({ record, organisationId, isDerived: true }, catalogue, version);
    return { made, catalogueHash: catalogue.hash };
  }

  private async estimateWith(
    asked: Asked,
    catalogue: Catalogue,
    version = engineVersion,
  ): Promise<WrittenEstimate> {
    return answer(await this.outcomeWith(asked, catalogue, version));
  }

  private outcomeWith(
    { record, isDerived, ...customer }: Asked,
    catalogue: Catalogue,
    version: string,
  ): Promise<Outcome<WrittenEstimate>> {
    return this.workbench.do(
      estimateJob,
      { record, engineVersion: version, isDerived },
      customer,
      stocked(catalogue),
    );
  }
}
