import { Injectable } from '@nestjs/common';
import { Defect } from '#lib/kernel';
import type { Catalogue } from '#lib/catalogue';
import { notFound } from '../edge/problems.js';
import { Database } from '../persistence/database.js';
import { Clock } from '../settings/clock.js';
import { catalogueFrom } from './catalogue-document.js';
import type { EditionRow } from './catalogue.entities.js';
import { refuseUnlessWhole } from './consistency.js';
import { EditionsRepository } from './editions.repository.js';
import { StockRepository } from './stock.repository.js';
import { withStock, type StockedCatalogue } from './stocked-catalogue.js';

interface Remembered {
  readonly editionId: string;
  readonly until: number;
}

/** How long another copy's publication may go unnoticed; an estimate names the edition it used either way. */
const REMEMBERED_MS = 1000;
const MOST_EDITIONS = 20;

/** The edition an organisation's estimates are made with. Published editions never change, so they are kept in memory. */
@Injectable()
export class CurrentCatalogue {
  private readonly current = new Map<string, Remembered>();
  private readonly editions = new Map<string, Catalogue>();

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  named(organisationId: string, edition: string | undefined): Promise<Catalogue> {
    return edition === undefined ? this.of(organisationId) : this.edition(organisationId, edition);
  }

  async of(organisationId: string): Promise<Catalogue> {
    const known = this.current.get(organisationId);
    const remembered = known === undefined ? undefined : this.editions.get(known.editionId);
    if (known !== undefined && remembered !== undefined && known.until > this.clock.now().getTime())
      return remembered;
    return this.load(organisationId);
  }

  /** An edition by its code, such as the one an estimate was made with. */
  async edition(organisationId: string, code: string): Promise<Catalogue> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      const edition = await EditionsRepository.in(tx).find(code);
      if (edition === null) throw notFound(`The edition ${code}`);
      const known =
        this.kept(edition) ?? catalogueFrom(edition, await EditionsRepository.in(tx).contentOf(edition.id));
      if (edition.state === 'published') this.remember(edition.id, known);
      return known;
    });
  }

  /** Any edition, a draft among them, as estimates would take it. @throws {HttpProblem} not-found, unprocessable */
  async tried(organisationId: string, code: string): Promise<Catalogue> {
    const catalogue = await this.edition(organisationId, code);
    refuseUnlessWhole(catalogue);
    return catalogue;
  }

  /** A catalogue for an order that is made now: one of its lists with today's stock. */
  async stocked(organisationId: string, catalogue: Catalogue, priceList: string): Promise<StockedCatalogue> {
    const counts = await this.database.inOrganisation(organisationId, (tx) =>
      StockRepository.in(tx, priceList).list(),
    );
    return withStock(catalogue, priceList, counts);
  }

  /** After a publication in this copy of the service. */
  forget(organisationId: string): void {
    this.current.delete(organisationId);
  }

  private async load(organisationId: string): Promise<Catalogue> {
    const [editionId, catalogue] = await this.database.inOrganisation(organisationId, async (tx) => {
      const editions = EditionsRepository.in(tx);
      const edition = await editions.findCurrent(this.clock.now());
      if (edition === null) throw new Defect('No edition of the catalogue is published');
      const known = this.kept(edition);
      return [edition.id, known ?? catalogueFrom(edition, await editions.contentOf(edition.id))] as const;
    });
    this.remember(editionId, catalogue);
    this.current.set(organisationId, { editionId, until: this.clock.now().getTime() + REMEMBERED_MS });
    return catalogue;
  }

  /** A publication that was taken back may be followed by another of the same edition with other content. */
  private kept({ id, contentHash }: EditionRow): Catalogue | undefined {
    const known = this.editions.get(id);
    return known?.hash === contentHash ? known : undefined;
  }

  private remember(editionId: string, catalogue: Catalogue): void {
    if (this.editions.size >= MOST_EDITIONS) this.editions.clear();
    this.editions.set(editionId, catalogue);
  }
}
