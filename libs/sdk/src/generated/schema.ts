/** Generated from test/contract/openapi.json by `npm run contract`; never edited by hand. */
export type paths = {
  readonly "/health/live": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Does the process answer?
     * For whoever restarts a process that hangs. Needs no key and asks nothing of the database.
     */
    readonly get: operations["isAlive"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/health/ready": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Can the service take work: is the database there, and is it not stopping?
     * For a balancer: 503 while the database is away or the service is stopping. Needs no key.
     */
    readonly get: operations["isReady"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/audit": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who did what in the organisation, newest first
     * Changes of keys, letterhead, webhooks, catalogue, stock, shares and photographs, with the key and the request that made them.
     */
    readonly get: operations["listAuditEntries"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/client-sessions": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Open a session in which a page may make one estimate
     * The reference of the estimate is fixed by the shop. For shops with a server: it asks with its secret key and hands `clientSecret` to the page of one customer. The page makes one estimate with it in time, and reads and revises that estimate for a day after.
     */
    readonly post: operations["openClientSession"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/editions": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Editions of the catalogue, newest first, and the current one
     * Drafts, publications and what counts now. An estimate keeps the edition that it was made with.
     */
    readonly get: operations["listEditions"];
    readonly put?: never;
    /**
     * Make a draft by copying an edition
     * A draft holds a copy of everything in the edition it is based on, and can be changed until it is published. Without a base the current edition is copied.
     */
    readonly post: operations["createEdition"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * An edition
     * The ETag covers all that the edition holds, so that a publication can name what was reviewed.
     */
    readonly get: operations["getEdition"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Throw a draft away
     * Only a draft can be thrown away; what was published stays for the estimates made with it.
     */
    readonly delete: operations["deleteEdition"];
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}/comparison": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What an edition holds otherwise than another, entry by entry and field by field
     * For reading before publishing: added, removed and changed entries, with the value of each field before and after.
     */
    readonly get: operations["compareEditions"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who did what to an edition
     * Changes of the edition and of every entry in it, with the keys that made them.
     */
    readonly get: operations["getEditionHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}/publication": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Publish a draft: it becomes current, now or later, and stays as it is
     * With `effectiveAt` the edition is frozen now and counts from then on; until then the present edition stays current, and the publication can be taken back. Where several are scheduled, the one that came into effect last is current.
     */
    readonly post: operations["publishEdition"];
    /**
     * Take back a publication before it counts: the edition is a draft again
     * Only a publication whose time has not come. Once an edition counts, another is made current instead.
     */
    readonly delete: operations["withdrawEdition"];
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}/restoration": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Make what an earlier edition held current again, under a new code
     * The way back after a bad publication: one call, and the next estimate is priced as before.
     */
    readonly post: operations["restoreEdition"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/editions/{code}/trial": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Try an edition, such as a draft, on stored estimates; nothing is stored
     * Each estimate is worked out again from the record it keeps, with this edition and with the one compared with, by the same version of the program, so that only the catalogue makes the difference.
     */
    readonly post: operations["tryEdition"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * List estimates, newest first
     * Page by page with a cursor; each entry has the totals, and its address leads to the rest.
     */
    readonly get: operations["listEstimates"];
    readonly put?: never;
    /**
     * Make an estimate from a defect record and keep it
     * It comes later, as an operation that leads to it, with `Prefer: respond-async` and for records of more than 24 zones or 1000 readings. A page with a publishable key gets it at once.
     */
    readonly post: operations["createEstimate"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * An estimate: data, report, lines or quotation
     * By `Accept`: JSON, a report (PDF, HTML), the lines (CSV) or a UBL 2.1 Quotation (XML). In documents, `Accept-Language` decides how numbers and dates are written. PDF and HTML may come later: with `Prefer: respond-async`, for estimates of more than 500 lines or 24 zones, and while many documents are waiting.
     */
    readonly get: operations["getEstimate"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/basket": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The cheapest whole packs for an estimate
     * By `Accept`: JSON, CSV, or a UBL 2.1 Order to one supplier. With the choices that most people make; POST takes other ones.
     */
    readonly get: operations["getEstimateBasket"];
    readonly put?: never;
    /**
     * The cheapest whole packs for one estimate or several, under choices
     * By `Accept`: JSON, CSV, or a UBL 2.1 Order to one supplier. Nothing is stored. An Order that is written as XML is told as the event `order.made`.
     */
    readonly post: operations["fillEstimateBasket"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/calendar": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The calendar of an estimate with its weather, and what to do on a day
     * By `Accept`: JSON or iCalendar (RFC 5545). As `text/calendar` the milestones, or with `events=all` the tasks as well, in UTC. The events of a revision carry the UIDs of the first estimate and a higher SEQUENCE, so that a diary moves them.
     */
    readonly get: operations["getEstimateCalendar"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/change-order": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What a revision adds and takes away, for yard and owner to sign
     * By `Accept`: JSON, PDF or HTML. Additions and deductions against the revision before, re-measured at the agreed rates, with room for two signatures.
     */
    readonly get: operations["getChangeOrder"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/comparison": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What changed against the revision before, or another estimate, and why
     * Lines, totals and figures that differ, and the changed answers of the record that they follow from.
     */
    readonly get: operations["compareEstimates"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/drawings": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Names of the drawings an estimate has
     * Which drawings there are depends on the job: no plan of core pieces without new core.
     */
    readonly get: operations["listDrawings"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/drawings/{name}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * A drawing as SVG, PDF or DXF
     * By `Accept`: SVG or PDF; `templates` is a PDF of the core pieces at 1:1; `piece-plan` and `sheet-layout` come as DXF at 1:1 too, for a cutting machine. Every drawing has its scale and a bar to check a print by. A long one is answered 202 and fetched later.
     */
    readonly get: operations["getDrawing"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/lines/{code}/why": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Why a line, a check (check:<code>) or a quantity (quantity:<code>) is what it is
     * A tree from the figure down to what was entered, read from the catalogue or assumed, with formula and source at each step.
     */
    readonly get: operations["explainLine"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/parties": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    readonly post?: never;
    /**
     * Erase what an estimate and its revisions say of people
     * Client, instructing party and surveyor, the vessel with its name and numbers, and the reference of the insurer go out of the records of every revision, and documents that were printed for later and bear them are thrown away. Figures and sums stay as they are, because none rests on these. Photographs are taken away one by one; what people wrote into titles, findings, notes, captions and reasons of revisions is not searched.
     */
    readonly delete: operations["eraseParties"];
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/photographs": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Photographs of the deck of an estimate and of its revisions
     * In the order of their numbers, which the report prints them in.
     */
    readonly get: operations["listPhotographs"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/photographs/{number}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * A photograph as it is printed
     * Turned upright and without the place and the device that a camera writes into it.
     */
    readonly get: operations["getPhotograph"];
    /**
     * Add a photograph under a number, or put another in its place
     * A JPEG or PNG of at most 8000000 bytes and 12000 pixels a side, judged by its content; numbers are 1 to 24. It is drawn anew at the size it is printed: place, device, time and whatever else the file holds are not kept.
     */
    readonly put: operations["setPhotograph"];
    readonly post?: never;
    /**
     * Take a photograph away for good
     * Reports that are made from now on lack it; it cannot be had again.
     */
    readonly delete: operations["removePhotograph"];
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/record": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The defect record the estimate was made from
     * What was sent, for sending it again with something changed.
     */
    readonly get: operations["getEstimateRecord"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/replay": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Compute an estimate again from its record and its edition
     * The proof that an old figure can be had again: stored and new totals side by side, and whether every digit is the same.
     */
    readonly get: operations["replayEstimate"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/revisions": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The revisions of an estimate, first to last
     * Each with its total and the reason why it was made.
     */
    readonly get: operations["listRevisions"];
    readonly put?: never;
    /**
     * Re-make an estimate after something became known, with the reason
     * The earlier revision stays as it was. Send the whole record as it is now known and say why; the change order says what that costs.
     */
    readonly post: operations["reviseEstimate"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/shares": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Chandlers that an estimate and its revisions are shared with
     * Each with the name of the key and since when it may read.
     */
    readonly get: operations["listShares"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimates/{id}/shares/{keyId}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    /**
     * Share an estimate and its revisions with the key of a chandler
     * The chandler may read the estimate and its revisions, order for them, and see no others.
     */
    readonly put: operations["shareEstimate"];
    readonly post?: never;
    /**
     * Take an estimate back from a chandler
     * From then on the chandler is answered as if there were no such estimate.
     */
    readonly delete: operations["unshareEstimate"];
    readonly patch?: never;
  };
  readonly "/v1/estimating/basket": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * The cheapest whole packs that cover every need, proven, with what is left over
     * An integer programme over packs, price breaks, suppliers, delivery, minimum orders, hazard and oversize rules, with hardener for all the resin bought. What cannot be had is named; a second best of another kind stands beside it.
     */
    readonly post: operations["fillBasket"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/bond-pressure": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * What presses the bed down, what it rests on, and whether the inner skin bears it
     * Weights, battens with screws and a vacuum bag side by side: pressure needed and had, evenness, quantities, load on the inner skin and props; a recommendation with reasons, refusals with reasons. What no published table supports (screws in glass laminate) is said to be not established.
     */
    readonly post: operations["planBondPressure"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/calendar": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Which day what is done, what decides the finish, and how sure that is
     * The operations of the job in their order under crew, working hours, cures, drying, weather and the hold after opening; the chain that decides; early, likely and late finish from a seeded simulation of the spreads; milestones, iCalendar text (RFC 5545) and what to do today.
     */
    readonly post: operations["planCalendar"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/core-bill": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Which core fills the cavity, in which labelled pieces, from how many sheets
     * Stock thicknesses that end flush or just below; pieces that a person can bed and that slide under the lip, by bedding order; sheets cut for the least money, offcuts worth keeping, and waste by cause.
     */
    readonly post: operations["billCore"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/cost-rollup": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * From lines to totals, to the cent, and to a range with what drives it
     * Each line is multiplied exactly and rounded once; lines make sections, then overhead, profit, contingency and tax by group on net sums. Split by cause and by part or labour. With risk: P10, P50, P80 and P90 from hidden extent and unit-rate spreads, drivers, and what opening first is worth.
     */
    readonly post: operations["rollUpCost"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/cure-plan": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * When resin gels and may be let go, sanded and loaded; when a step may start
     * Equivalent age over a steady, day-and-night or hourly temperature of the deck, with the band of the resin's own data; the hours of a forecast in which each step may start, ranked, with what limits them; without a forecast, what to wait for. A planning figure: the thumbnail and the maker's sheet decide.
     */
    readonly post: operations["planCure"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/cutting-plan": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Any pieces from any sheets, offcuts or a roll, for the least money
     * Of two layouts that cost the same, the one with less material is taken. Pieces of any outline, with holes, in the turns allowed, apart by the kerf and inside the trimmed edge; proven free of overlap by whole-number arithmetic. Runs beside the service for as long as the work budget and the time limit allow.
     */
    readonly post: operations["planCutting"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/ladder": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Every way to mend a deck: whether it fits, why, and what it would take
     * Takes what POST /v1/estimates takes and keeps nothing. Each rung is fit, fit with conditions or unfit, with the reason that decides and its number; what is not unfit has hours, days and a price worked out in the rough. Where no rung fits, none is recommended.
     */
    readonly post: operations["judgeLadder"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/laminate-schedule": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * How many plies of what give back the old skin, and how they are cut and laid
     * The best three skins from the fabrics at hand that restore stiffness, strength and the bending of the panel, proven best, with why the others lost; ply outlines, roll lengths, masses and stages; closing plies over the cut of a skin bonded back. A comparison, not a design approval.
     */
    readonly post: operations["scheduleLaminate"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/next-readings": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Where to tap, meter or plug next, and when to stop
     * The places and kinds of reading that would save most hours of work for their minutes, best first and spread out, only where a reading can be taken; what the whole batch is expected to save and how far it narrows the range of bad core; and whether that is worth the time. An empty list of readings asks where to begin.
     */
    readonly post: operations["findNextReadings"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/openings": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * From readings or drawn zones to the extent of bad core and the cut line
     * Readings become a chance of bad core over the panel, contours, and an area as a range; zones become straight cuts with flange, taper room, undercut, depth of cut, fittings in scope, and what does not fit.
     */
    readonly post: operations["planOpenings"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/panel-check": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Is the repaired panel as stiff and as strong as it was?
     * The panel as built, as found, opened and repaired under the same loads: deflection, skin stress, core shear, wrinkling, dents, fittings, the yardstick; each check with demand, capacity, what governs and what would make it pass. A comparison, not a design approval: highly loaded spots go to a naval architect or a qualified surveyor.
     */
    readonly post: operations["checkPanel"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/preview": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Openings, hours and price of a defect record while it is still being drawn
     * Takes what POST /v1/estimates takes and keeps nothing. Core is priced by area, the range of the price is worked out without simulation, and few schedules are tried; `leftOut` says what else only the estimate works out.
     */
    readonly post: operations["previewEstimate"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/quantities": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Read typed quantities exactly into SI numbers
     * For a form: shows the person how a text such as `5/8 in` was understood, before it is sent. Wrong texts are refused with what would be right.
     */
    readonly post: operations["readQuantities"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/resin-batches": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * How much resin each step takes, and in which pots, before it kicks
     * Resin, hardener and filler by weight and by volume for each step from its own basis, waste apart; a hardener chosen with reasons; a card for each pot with what to weigh in which order, for which pieces, and by when it must be empty. The pots add up to the demand to a tenth of a gram. The maker's own sheet comes first.
     */
    readonly post: operations["planResinBatches"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/estimating/variants": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Several ways of doing one job, on equal terms
     * Each variant is estimated in full with one seed and one edition, then weighed on cost, P80, hours, days, mass added, utilisation and spread. A variant that another beats in everything is marked; one that a rule refuses is listed with the rule.
     */
    readonly post: operations["compareVariants"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/events": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What happened, oldest first, from where the cursor stands
     * A feed for programs that cannot be called: keep `nextCursor` and ask again later. Events are kept for 30 days, and none is missed between two readings.
     */
    readonly get: operations["listEvents"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/imports/labour-rates": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Add or replace entries of a draft from CSV, all or none (labour rates)
     * A row for each labour rates; one wrong row stops all, and every fault is named by row and column.
     */
    readonly post: operations["importAllLabourRates"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/imports/materials": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Add or replace entries of a draft from CSV, all or none (material)
     * A row for each material; one wrong row stops all, and every fault is named by row and column.
     */
    readonly post: operations["importMaterials"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/imports/price-lists": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Add or replace entries of a draft from CSV, all or none (price list)
     * A row for each price list; one wrong row stops all, and every fault is named by row and column.
     */
    readonly post: operations["importPriceLists"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/imports/sources": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Add or replace entries of a draft from CSV, all or none (source)
     * A row for each source; one wrong row stops all, and every fault is named by row and column.
     */
    readonly post: operations["importSources"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/keys": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Secret keys of the organisation, oldest first
     * Revoked keys stay in the list, so that histories can be read; texts of keys are never shown again.
     */
    readonly get: operations["listKeys"];
    readonly put?: never;
    /**
     * Make a key; its text is shown in this answer only
     * A key has roles, and an integrator's key has scopes; it can end by itself at `expiresAt`. Store the text at once: the service keeps only its hash.
     */
    readonly post: operations["createKey"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/keys/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * A key, without its text
     * What the key may do, when it ends and when it was last used.
     */
    readonly get: operations["getKey"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Revoke a key; other copies of the service refuse it within a second
     * The last admin's key of an organisation cannot be revoked, since nobody could make another.
     */
    readonly delete: operations["revokeKey"];
    readonly patch?: never;
  };
  readonly "/v1/keys/{id}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who made, renewed and revoked a key
     * Entries name the key that did it and the request, as the audit of the organisation does.
     */
    readonly get: operations["getKeyHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/keys/{id}/renewal": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Make a key in the place of another, which ends after an overlap
     * The new key is shown once, in this answer. The new key may do what the old one may. Both count during the overlap, so that programs can be changed one by one.
     */
    readonly post: operations["renewKey"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/labour-rates": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Entries of an edition (labour rates), as JSON or CSV
     * Every labour rates of the current edition, or of the one named; CSV has the columns that an import takes.
     */
    readonly get: operations["listAllLabourRates"];
    readonly put?: never;
    /**
     * Add an entry to a draft (labour rates)
     * A new labour rates; what it refers to must be in the draft, and a code that is taken is refused.
     */
    readonly post: operations["createLabourRates"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/labour-rates/{code}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * One entry (labour rates)
     * The labour rates as the current edition or the one named holds it, with the ETag that a change names.
     */
    readonly get: operations["getLabourRates"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Remove an entry from a draft (labour rates)
     * A labour rates that something else in the draft refers to stays, and the refusal says what.
     */
    readonly delete: operations["deleteLabourRates"];
    /**
     * Change an entry of a draft by merge patch (labour rates)
     * Fields named are replaced, null takes an optional one away, and the labour rates is then checked as a whole.
     */
    readonly patch: operations["updateLabourRates"];
  };
  readonly "/v1/labour-rates/{code}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who changed what about an entry (labour rates)
     * Changes of the labour rates over all editions of the organisation, newest first.
     */
    readonly get: operations["getLabourRatesHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/letterhead": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What stands at the head of the documents of the own organisation
     * Name of the organisation, lines under it and the logo, as the head of reports shows them.
     */
    readonly get: operations["getLetterhead"];
    /**
     * Set the lines of the letterhead; the name is that of the organisation
     * The lines count for documents that are made from now on.
     */
    readonly put: operations["setLetterhead"];
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/letterhead/logo": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The logo as it is printed
     * A PNG, whatever form it was given in.
     */
    readonly get: operations["getLogo"];
    /**
     * Set the logo of the letterhead
     * A PNG or JPEG of at most 1000000 bytes and 5000 pixels a side, judged by its content. It is drawn anew at the size it is printed, so that nothing hidden in the file is kept. Drawings that can hold programs, such as SVG, are not taken.
     */
    readonly put: operations["setLogo"];
    readonly post?: never;
    /**
     * Take the logo off the letterhead
     * Documents that are made from now on have the name alone.
     */
    readonly delete: operations["removeLogo"];
    readonly patch?: never;
  };
  readonly "/v1/materials": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Entries of an edition (material), as JSON or CSV
     * Every material of the current edition, or of the one named; CSV has the columns that an import takes.
     */
    readonly get: operations["listMaterials"];
    readonly put?: never;
    /**
     * Add an entry to a draft (material)
     * A new material; what it refers to must be in the draft, and a code that is taken is refused.
     */
    readonly post: operations["createMaterial"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/materials/{code}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * One entry (material)
     * The material as the current edition or the one named holds it, with the ETag that a change names.
     */
    readonly get: operations["getMaterial"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Remove an entry from a draft (material)
     * A material that something else in the draft refers to stays, and the refusal says what.
     */
    readonly delete: operations["deleteMaterial"];
    /**
     * Change an entry of a draft by merge patch (material)
     * Fields named are replaced, null takes an optional one away, and the material is then checked as a whole.
     */
    readonly patch: operations["updateMaterial"];
  };
  readonly "/v1/materials/{code}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who changed what about an entry (material)
     * Changes of the material over all editions of the organisation, newest first.
     */
    readonly get: operations["getMaterialHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/operations/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * How far an operation is; ask again after Retry-After
     * Waiting, running, done or failed; done leads to its result, failed says why.
     */
    readonly get: operations["getOperation"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/operations/{id}/result": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The result of an operation that is done; 409 before
     * The same bytes and media type that the request would have answered at once.
     */
    readonly get: operations["getOperationResult"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/organisations": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * All organisations, oldest first
     * Only a platform-operator sees others than his own.
     */
    readonly get: operations["listOrganisations"];
    readonly put?: never;
    /**
     * Add an organisation, with the first key of its admin
     * The answer holds the key of its first admin, whose text is never shown again. With that key the organisation runs itself.
     */
    readonly post: operations["createOrganisation"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/organisations/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * An organisation: your own, or any for a platform-operator
     * An id of another organisation is answered as an unknown one.
     */
    readonly get: operations["getOrganisation"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    /**
     * Rename an organisation
     * The new name stands on documents that are made from now on; those made before keep theirs only as files.
     */
    readonly patch: operations["updateOrganisation"];
  };
  readonly "/v1/price-lists": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Entries of an edition (price list), as JSON or CSV
     * Every price list of the current edition, or of the one named; CSV has the columns that an import takes.
     */
    readonly get: operations["listPriceLists"];
    readonly put?: never;
    /**
     * Add an entry to a draft (price list)
     * A new price list; what it refers to must be in the draft, and a code that is taken is refused.
     */
    readonly post: operations["createPriceList"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * One entry (price list)
     * The price list as the current edition or the one named holds it, with the ETag that a change names.
     */
    readonly get: operations["getPriceList"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Remove an entry from a draft (price list)
     * A price list that something else in the draft refers to stays, and the refusal says what.
     */
    readonly delete: operations["deletePriceList"];
    /**
     * Change an entry of a draft by merge patch (price list)
     * Fields named are replaced, null takes an optional one away, and the price list is then checked as a whole.
     */
    readonly patch: operations["updatePriceList"];
  };
  readonly "/v1/price-lists/{code}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who changed what about an entry (price list)
     * Changes of the price list over all editions of the organisation, newest first.
     */
    readonly get: operations["getPriceListHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}/packs": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The packs of a price list, as JSON or CSV, one a row
     * By Accept as CSV with the columns that an import takes, so that a sheet can be changed and sent back.
     */
    readonly get: operations["listPacks"];
    /**
     * Replace all packs of a price list in a draft from CSV, one a row
     * All or none: one wrong row leaves the list as it was, and every fault is named by row and column.
     */
    readonly put: operations["replacePacks"];
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}/packs/{sku}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * One pack of a price list
     * Its price, price breaks, mass and terms of carriage.
     */
    readonly get: operations["getPack"];
    /**
     * Put one pack into a price list of a draft, or in the place of another
     * The whole pack is replaced; what is not given is gone. A merge patch changes single fields.
     */
    readonly put: operations["putPack"];
    readonly post?: never;
    /**
     * Take one pack out of a price list of a draft
     * Estimates that bought it keep it; later ones choose another.
     */
    readonly delete: operations["deletePack"];
    /**
     * Change one pack of a price list of a draft by merge patch, such as its price
     * Null takes an optional field away; fields that are not named stay.
     */
    readonly patch: operations["updatePack"];
  };
  readonly "/v1/price-lists/{code}/packs/{sku}/stock": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * How many packs of a SKU were counted, and when
     * The last count and its time; 404 when nobody counted.
     */
    readonly get: operations["getStock"];
    /**
     * State how many packs of a SKU there are now
     * It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.
     */
    readonly put: operations["setStock"];
    readonly post?: never;
    /**
     * Forget a count: the stock that the edition states counts again
     * Nothing else about the pack changes.
     */
    readonly delete: operations["forgetStock"];
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}/price-changes": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Raise or lower prices of a list of a draft by a percentage
     * Each new price is rounded once, to the step named. All packs of the list, or those of the suppliers, materials or SKUs named. The answer says of each what it cost before and costs now.
     */
    readonly post: operations["changePrices"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}/sheets": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Take a supplier's sheet into a price list of a draft, by what its columns mean
     * Packs are matched by their SKU and changed in what the columns say of them: all of the sheet, or nothing and every fault with its row and column.
     */
    readonly post: operations["takeSheet"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/price-lists/{code}/stock": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * What was counted of the packs of a price list
     * Whole packs of each SKU, with the time of the count. They hold at once, whatever edition is current.
     */
    readonly get: operations["listStock"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    /**
     * State how many packs of several SKUs there are now
     * It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.
     */
    readonly patch: operations["countStock"];
  };
  readonly "/v1/publishable-keys": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Keys for pages, oldest first
     * Their texts are shown, since they stand in pages for everybody to read.
     */
    readonly get: operations["listPublishableKeys"];
    readonly put?: never;
    /**
     * Make a key for a page: it makes estimates from the origins named, and lists none
     * The key is no secret: it stands in the page. It may make an estimate (with an Idempotency-Key of 22 characters or more), preview one and read quantities, from pages of the origins named and within its limits. The answer to an estimate carries `clientSecret`, which opens that estimate for a day. `Origin` keeps other sites out, not scripts: the limits are what holds.
     */
    readonly post: operations["createPublishableKey"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/publishable-keys/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * A key for a page
     * Its origins, its limits and when it ends.
     */
    readonly get: operations["getPublishableKey"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Revoke a key for a page, and with it every secret that was given out for it
     * Pages that use it are refused from then on, and what their visitors made is kept.
     */
    readonly delete: operations["revokePublishableKey"];
    readonly patch?: never;
  };
  readonly "/v1/sources": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Entries of an edition (source), as JSON or CSV
     * Every source of the current edition, or of the one named; CSV has the columns that an import takes.
     */
    readonly get: operations["listSources"];
    readonly put?: never;
    /**
     * Add an entry to a draft (source)
     * A new source; what it refers to must be in the draft, and a code that is taken is refused.
     */
    readonly post: operations["createSource"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/sources/{code}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * One entry (source)
     * The source as the current edition or the one named holds it, with the ETag that a change names.
     */
    readonly get: operations["getSource"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Remove an entry from a draft (source)
     * A source that something else in the draft refers to stays, and the refusal says what.
     */
    readonly delete: operations["deleteSource"];
    /**
     * Change an entry of a draft by merge patch (source)
     * Fields named are replaced, null takes an optional one away, and the source is then checked as a whole.
     */
    readonly patch: operations["updateSource"];
  };
  readonly "/v1/sources/{code}/history": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Who changed what about an entry (source)
     * Changes of the source over all editions of the organisation, newest first.
     */
    readonly get: operations["getSourceHistory"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/webhook-endpoints": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * Webhook endpoints of the organisation, oldest first
     * Addresses with the events that each is told of; secrets are not shown.
     */
    readonly get: operations["listWebhookEndpoints"];
    readonly put?: never;
    /**
     * Have events posted to an address; its secret is shown in this answer only
     * The address is reached over https and must not be a private one. Events are signed as Standard Webhooks says, with the secret of this answer.
     */
    readonly post: operations["createWebhookEndpoint"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/webhook-endpoints/{id}": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * A webhook endpoint, without its secret
     * Its address and the events that it is told of.
     */
    readonly get: operations["getWebhookEndpoint"];
    readonly put?: never;
    readonly post?: never;
    /**
     * Have no more events posted to an address
     * Deliveries that wait are dropped; the events stay in the feed.
     */
    readonly delete: operations["deleteWebhookEndpoint"];
    readonly patch?: never;
  };
  readonly "/v1/webhook-endpoints/{id}/deliveries": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    /**
     * The last 200 deliveries to an endpoint, the newest event first
     * Says of each how many attempts were made, what came back and when the next one is due.
     */
    readonly get: operations["listWebhookDeliveries"];
    readonly put?: never;
    readonly post?: never;
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/webhook-endpoints/{id}/deliveries/{eventId}/repetition": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Deliver an event once more, with all its attempts before it
     * For an endpoint that was away longer than three days, or lost what it had received.
     */
    readonly post: operations["repeatWebhookDelivery"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "/v1/webhook-endpoints/{id}/secret-renewal": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Give an endpoint a new secret; both sign for an overlap
     * The new secret is shown once, in this answer. During the overlap each delivery carries two signatures, so that receivers can change without losing one.
     */
    readonly post: operations["renewWebhookSecret"];
    readonly delete?: never;
    readonly patch?: never;
  };
};
export type webhooks = {
  readonly "edition.published": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for edition.published
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onEditionPublished"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "edition.withdrawn": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for edition.withdrawn
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onEditionWithdrawn"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "estimate.created": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for estimate.created
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onEstimateCreated"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "estimate.revised": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for estimate.revised
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onEstimateRevised"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "operation.done": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for operation.done
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onOperationDone"];
    readonly delete?: never;
    readonly patch?: never;
  };
  readonly "order.made": {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly get?: never;
    readonly put?: never;
    /**
     * Posted to endpoints that asked for order.made
     * Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
     */
    readonly post: operations["onOrderMade"];
    readonly delete?: never;
    readonly patch?: never;
  };
};
export type components = {
  schemas: {
    /** A region of the deck plane: its outer edge and what is left out of it. */
    readonly Area: {
      /** Edges of what is left out. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Outer edge. */
      readonly outer: readonly (readonly number[])[];
    };
    /**
     * A number in m2, or text with its unit: m2, mm2, cm2, in2, ft2, yd2. Limits that stand beside a reference to this are in m2.
     * @example 22 ft2
     */
    readonly AreaInput: number | string;
    /**
     * A number in g/m2, or text with its unit: g/m2, gsm, kg/m2, oz/yd2, oz/ft2, lb/ft2. Limits that stand beside a reference to this are in g/m2.
     * @example 18 oz/yd2
     */
    readonly ArealMassInput: number | string;
    /** What rot and water left of the core. */
    readonly AsFoundInput: {
      /** Share of the panel with bad core. Absent: 1 (the whole panel, the cautious case). */
      readonly degradedFraction?: number;
      /** What is left of the core modulus. Absent: 0.1 (wet and rotten core keeps a tenth at a guess). */
      readonly stiffnessFraction?: number;
      /** What is left of the core strength. Absent: 0.1 (wet and rotten core keeps a tenth at a guess). */
      readonly strengthFraction?: number;
    };
    /** One default that an answer rests on, as a reader of the estimate sees it. */
    readonly AskingAssumption: {
      /** JSON Pointer to the question nobody answered. */
      readonly at: components["schemas"]["Text"];
      /** Why that was taken. */
      readonly because: components["schemas"]["Text"];
      /** What was asked. */
      readonly meaning: components["schemas"]["Text"];
      /** What the default leans on. */
      readonly source: components["schemas"]["Text"];
      /** What was taken instead, as text. */
      readonly value: components["schemas"]["Text"];
    };
    /** Nobody said it; we took a default and say so. `at` is the field that would replace it. */
    readonly Assumed: {
      /** JSON Pointer to the answer that would replace it. */
      readonly at: components["schemas"]["Text"];
      /** Why this value and no other was taken. */
      readonly because: components["schemas"]["Text"];
      /** Source that the assumption leans on. */
      readonly cite: components["schemas"]["Cite"];
      /** Highest value that would be as believable. */
      readonly high?: number;
      /**
       * Says that the figure was assumed because nobody stated it. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "assumed";
      /** Lowest value that would be as believable. */
      readonly low?: number;
    };
    /** At so many times the recorded area, so many times the amount: planned again, not scaled. */
    readonly AtExtent: {
      /** Amount then over amount now. */
      readonly amountFactor: number;
      /** Extent found over extent recorded. */
      readonly extentFactor: number;
    };
    readonly AtExtentInput: {
      /** Amount there over the amount of the line. */
      readonly amountFactor: number;
      /** Found area over recorded area. */
      readonly extentFactor: number;
    };
    readonly AuditEntry: {
      /** What was done to it, such as `created`, `changed` or `removed`. */
      readonly action: components["schemas"]["Text"];
      /** The thing after the change; absent where it was removed. */
      readonly after?: unknown;
      /** When it was done (RFC 3339). */
      readonly at: components["schemas"]["Instant"];
      /** The thing before the change; absent where it was new. */
      readonly before?: unknown;
      /** The id or code of the thing. */
      readonly code: components["schemas"]["Text"];
      /** Key that did it; absent where the service itself did. */
      readonly keyId?: components["schemas"]["Id"];
      /** Whose key it was, as the key is called. */
      readonly keyName?: components["schemas"]["Text"];
      /** Request that did it, as in its `X-Request-Id`. */
      readonly requestId?: components["schemas"]["Text"];
      /** What kind of thing, such as `key` or `edition`. */
      readonly subject: components["schemas"]["Text"];
    };
    readonly AuditPage: {
      /** What was done, newest first. */
      readonly items: readonly components["schemas"]["AuditEntry"][];
      /** Give it as `cursor` for what was done before; absent on the last page. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    /** Backing plate. */
    readonly BackingPlateInput: {
      /** Length of the plate under the fitting. */
      readonly lengthMm: components["schemas"]["LengthInput"];
      /** Width of the plate under the fitting. */
      readonly widthMm: components["schemas"]["LengthInput"];
    };
    readonly Basket: {
      /** What each estimate of a common order bears of the total. */
      readonly byEstimate: readonly components["schemas"]["BasketByEstimate"][];
      /** Each need beside the packs that cover it. */
      readonly coverage: readonly components["schemas"]["Coverage"][];
      /** Currency of every amount of the basket (ISO 4217). */
      readonly currency: components["schemas"]["Currency"];
      /** Packs that were left out before the choice, each with the reason. */
      readonly excluded: readonly components["schemas"]["Excluded"][];
      /** Whether every need is covered; `missing` lists those that are not. */
      readonly isComplete: boolean;
      /** Whether the prices of the list are made up for demonstration. */
      readonly isInvented: boolean;
      /** What remains of the bought packs when the job is done. */
      readonly leftovers: readonly components["schemas"]["Leftover"][];
      /** What is bought, a line for each kind of pack. */
      readonly lines: readonly components["schemas"]["BasketLine"][];
      /** Resins beside the hardeners bought to cure them. */
      readonly matched: readonly components["schemas"]["MatchedResin"][];
      /** Needs that no pack of the list covers. */
      readonly missing: readonly components["schemas"]["CostingMissing"][];
      /** The lines gathered into one order for each supplier. */
      readonly orders: readonly components["schemas"]["SupplierOrder"][];
      /** Code of the price list whose packs were chosen from. */
      readonly priceList: components["schemas"]["Text"];
      /** Whether the prices of the list hold tax already. */
      readonly pricesIncludeTax: boolean;
      /** Whether no cheaper basket exists, or how far one could be. */
      readonly proof: components["schemas"]["BasketProof"];
      /** The next cheaper basket from other suppliers, where it was looked for. */
      readonly secondBest?: components["schemas"]["SecondBest"];
      /** Needs that something other than what was planned covers. */
      readonly substitutions: readonly components["schemas"]["Substitution"][];
      /** Goods, cut fees, deliveries and surcharges of all orders together. */
      readonly total: components["schemas"]["MoneyJson"];
      /** What the buyer should know before ordering. */
      readonly warnings: readonly components["schemas"]["Text"][];
    };
    readonly BasketByEstimate: {
      /** Its share of the order, by what it needs. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Estimate that bears the amount. */
      readonly estimate: components["schemas"]["Text"];
    };
    readonly BasketChoicesInput: {
      /** Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin. */
      readonly hardeners?: readonly components["schemas"]["HardenerChoiceInput"][];
      /** Left over from another job and still good. */
      readonly onHand?: readonly components["schemas"]["OnHandInput"][];
      /** How the order is put together. */
      readonly options?: components["schemas"]["BasketOptionsInput"];
      /** Edition of the catalogue whose prices and packs count, or `current`. Absent: the one that all the estimates were made with, or the current one where they differ. `drift` says line by line what has changed since. */
      readonly pricedAt?: string;
      /** Price list of the edition; the one the estimates were priced with when absent, which must then be the same for all. */
      readonly priceList?: string;
      /** What else would do. */
      readonly substitutes?: readonly components["schemas"]["SubstituteInput"][];
      /** As XML: the supplier whose order is meant, because an order has one seller; needed when there are several. The JSON form lists them in `orders`. */
      readonly supplier?: string;
      /** Ids of other estimates to buy for in the same order: needs are pooled before packs are chosen, and `byEstimate` says what each pays. */
      readonly together?: readonly string[];
    };
    /** So many packs of one kind from one supplier. */
    readonly BasketLine: {
      /** Packs times price. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** The material in the pack, with the form it is sold in. */
      readonly content: components["schemas"]["MaterialVariant"];
      /**
       * Format: int32
       * Sheets that the shop cuts so that they travel as ordinary goods.
       */
      readonly cutCount: number;
      /** What the supplier asks for cutting from the roll or sheet. */
      readonly cutFee: components["schemas"]["MoneyJson"];
      /** Whether the pack travels as dangerous goods. */
      readonly hazardous: boolean;
      /** What the packs weigh for carriage. */
      readonly massKg: number;
      /** What the supplier calls the pack. */
      readonly name: components["schemas"]["Text"];
      /** Whether the pack is too large for ordinary parcels. */
      readonly oversize: boolean;
      /**
       * Format: int32
       * How many packs are bought.
       */
      readonly packCount: number;
      /** What all packs of the line hold together. */
      readonly quantity: number;
      /** What one pack holds, in `unit`. */
      readonly quantityPerPack: number;
      /** How long the unopened pack keeps. */
      readonly shelfLifeMonths?: number;
      /** Supplier's number of the pack. */
      readonly sku: components["schemas"]["Text"];
      /** Code of the supplier who sells it. */
      readonly supplier: components["schemas"]["Text"];
      /** Unit of the contents of a pack. */
      readonly unit: components["schemas"]["Text"];
      /** Price of one pack. */
      readonly unitPrice: components["schemas"]["MoneyJson"];
      /** Fields of BasketLine in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BasketLineUs"];
    };
    /** Fields of BasketLine in US customary units, when `Accept-Units: us` was sent. */
    readonly BasketLineUs: {
      readonly massKg?: components["schemas"]["UsText"];
      readonly quantity?: components["schemas"]["UsText"];
    };
    readonly BasketNeedInput: {
      /** Several estimates may be bought for in one order; each is told its share. */
      readonly estimate?: string;
      /**
       * Form of the sheet: plain, or scored so that it bends.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Name of the need, unique in its estimate. */
      readonly id: string;
      /** Code of a material of the catalogue. */
      readonly material: string;
      /** Hardener of a resin. */
      readonly part?: string;
      /** Quantity with waste. */
      readonly requiredQuantity: number;
      /** Width of the roll that the fabric comes on. */
      readonly rollWidthMm?: components["schemas"]["LengthInput"];
      /** Size of the sheet. */
      readonly sheet?: components["schemas"]["SheetSizeInput"];
      /** Thickness of the material. */
      readonly thicknessMm?: components["schemas"]["LengthInput"];
      /** What the need is called on the order. */
      readonly title?: string;
      /**
       * Unit of the required quantity.
       * @enum {string}
       */
      readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
    };
    /** How an order is put together: from whom, how carried, and what may be cut. */
    readonly BasketOptionsInput: {
      /** Mass of a box of hazardous goods, each with its surcharge; absent: one surcharge to an order. */
      readonly hazardBoxKg?: components["schemas"]["MassInput"];
      /** Whole sheets may be cut by the shop, for its fee, so that they travel as ordinary goods. */
      readonly mayCutSheets?: boolean;
      /** Packs that would not keep this long are left out. */
      readonly monthsUntilUse?: number;
      /**
       * Format: date
       * The validity of the price list is checked against it.
       */
      readonly orderDate?: string;
      /** A second best order of another kind is looked for; absent: true. */
      readonly secondBest?: boolean;
      /** Suppliers of the list to order from; absent: all. */
      readonly suppliers?: readonly string[];
      /** For all searches of the order together; absent: 5. What is found by then is given, with its distance from the best that is possible. */
      readonly timeLimitS?: number;
      /**
       * By air nothing hazardous travels; who collects pays no freight. Absent: ground.
       * @enum {string}
       */
      readonly transport?: "ground" | "air" | "collect";
    };
    /** Whether no cheaper basket exists, or how far one could be. */
    readonly BasketProof: components["schemas"]["Proven"] | components["schemas"]["Gap"];
    readonly BasketRequest: {
      /** Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin. */
      readonly hardeners?: readonly components["schemas"]["HardenerChoiceInput"][];
      /** What the order is for. */
      readonly needs: readonly components["schemas"]["BasketNeedInput"][];
      /** Left over from another job and still good. */
      readonly onHand?: readonly components["schemas"]["OnHandInput"][];
      /** How the order is put together. */
      readonly options?: components["schemas"]["BasketOptionsInput"];
      /** Code of a price list of the edition. */
      readonly priceList: string;
      /** What else would do. */
      readonly substitutes?: readonly components["schemas"]["SubstituteInput"][];
    };
    readonly BatchCard: {
      /** What the pot is enough for. */
      readonly covers: readonly components["schemas"]["Text"][];
      /** Name of the filler on the card. */
      readonly filler?: components["schemas"]["Text"];
      /** Filler on the card. */
      readonly fillerG: number;
      /** Hardener on the card. */
      readonly hardenerG: number;
      /** What set the size of the pot. */
      readonly limitedBy: components["schemas"]["Text"];
      /** Volume in the pot. */
      readonly mixedMl: number;
      /** Number on the card. */
      readonly number: number;
      /** Strokes of the pump, where one is used. */
      readonly pumps?: components["schemas"]["Text"];
      /** Resin on the card. */
      readonly resinG: number;
      /** Step that the card is for. */
      readonly step: components["schemas"]["Text"];
      /** Heading of the card. */
      readonly title: components["schemas"]["Text"];
      /** Fields of BatchCard in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BatchCardUs"];
      /** Minutes until the pot must be empty. */
      readonly useWithinMin: number;
      /** What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump. */
      readonly weigh: readonly components["schemas"]["BatchCardWeigh"][];
    };
    /** Fields of BatchCard in US customary units, when `Accept-Units: us` was sent. */
    readonly BatchCardUs: {
      readonly fillerG?: components["schemas"]["UsText"];
      readonly hardenerG?: components["schemas"]["UsText"];
      readonly mixedMl?: components["schemas"]["UsText"];
      readonly resinG?: components["schemas"]["UsText"];
    };
    readonly BatchCardWeigh: {
      /** Grams to add. */
      readonly addG: number;
      /** What stands on its can. */
      readonly name: components["schemas"]["Text"];
      /** What the scale then shows, when it was zeroed with the empty pot. */
      readonly scaleShowsG: number;
      /** Fields of BatchCard in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BatchCardWeighUs"];
      /** The same by volume. */
      readonly volumeMl: number;
      /**
       * Which component.
       * @enum {string}
       */
      readonly what: "filler" | "hardener" | "resin";
    };
    /** Fields of BatchCard in US customary units, when `Accept-Units: us` was sent. */
    readonly BatchCardWeighUs: {
      readonly addG?: components["schemas"]["UsText"];
      readonly scaleShowsG?: components["schemas"]["UsText"];
      readonly volumeMl?: components["schemas"]["UsText"];
    };
    readonly BatchFinding: {
      /**
       * What was found about the mixing.
       * @enum {string}
       */
      readonly code: "deck-warmer-than-limit" | "layer-heats" | "piece-too-large" | "pot-too-short" | "small-pots";
      /** Numbers and words that the sentence is made of. */
      readonly facts: {
        readonly [key: string]: string | number;
      };
      /**
       * Whether it stops the plan, warns, or is only worth knowing.
       * @enum {string}
       */
      readonly severity: "note" | "stop" | "warn";
      /** The finding in a sentence. */
      readonly text: components["schemas"]["Text"];
    };
    readonly BatchPlan: {
      /** Rise of temperature if no heat left the pot at all. */
      readonly adiabaticRiseK: number;
      /** Figures of the plan that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Pots in the order they are mixed. */
      readonly batches: readonly components["schemas"]["PlannedBatch"][];
      /** Hardeners of the system, each with its verdict in this warmth. */
      readonly considered: readonly components["schemas"]["HardenerVerdict"][];
      /** What each step needs, with waste. */
      readonly demand: components["schemas"]["ResinDemand"];
      /** What stops the mixing or deserves a warning. */
      readonly findings: readonly components["schemas"]["BatchFinding"][];
      /** How long a pot of 100 g stays workable in the warmth of the work. */
      readonly potLife: components["schemas"]["BatchPlanPotLife"];
      /** The system that is mixed, and why its hardener was chosen. */
      readonly resin: components["schemas"]["BatchPlanResin"];
    };
    /** How long a pot of 100 g stays workable in the warmth of the work. */
    readonly BatchPlanPotLife: {
      /** Likely pot life of 100 g, in minutes. */
      readonly at100GMin: number;
      /** Longest pot life to hope for. */
      readonly highMin: number;
      /** Shortest pot life to reckon with. */
      readonly lowMin: number;
      /** Warmth that the pot life holds for. */
      readonly temperatureC: number;
      /** Fields of BatchPlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BatchPlanPotLifeUs"];
    };
    /** Fields of BatchPlan in US customary units, when `Accept-Units: us` was sent. */
    readonly BatchPlanPotLifeUs: {
      readonly temperatureC?: components["schemas"]["UsText"];
    };
    /** The system that is mixed, and why its hardener was chosen. */
    readonly BatchPlanResin: {
      /** Code of the resin system in the catalogue. */
      readonly code: components["schemas"]["Text"];
      /** Code of the hardener that is mixed in. */
      readonly hardener: components["schemas"]["Text"];
      /** Name of the hardener on the can. */
      readonly hardenerName: components["schemas"]["Text"];
      /** Name of the resin system. */
      readonly name: components["schemas"]["Text"];
      /** Why this hardener suits the warmth of the work. */
      readonly why: components["schemas"]["Text"];
    };
    /** Battens. */
    readonly BattensInput: {
      /**
       * What the screws hold in, around the opening.
       * @enum {string}
       */
      readonly deckAround: "wood" | "laminate-only" | "none";
      /** Height of a batten. Absent: 20 mm (common timber). */
      readonly heightMm?: components["schemas"]["LengthInput"];
      /** Whether the screws go through the piece into the inner skin, which then hangs on them; threadMm is its thickness. */
      readonly isIntoInnerSkin?: boolean;
      /** Modulus of a batten. Absent: 9000 MPa (softwood along the grain). */
      readonly modulusMPa?: number;
      /** Diameter of a screw. Absent: 4.2 mm (common screw). */
      readonly screwDiameterMm?: components["schemas"]["LengthInput"];
      /** Spacing of screws along a batten. Absent: 150 mm (sag between screws grows with the fourth power of it). */
      readonly screwSpacingMm?: components["schemas"]["LengthInput"];
      /** Distance from the middle of one to the middle of the next. */
      readonly spacingMm?: components["schemas"]["LengthInput"];
      /** Thread in the deck. Absent: 10 mm (short of the inner skin). */
      readonly threadMm?: components["schemas"]["LengthInput"];
      /** Width of a batten. Absent: 45 mm (common timber). */
      readonly widthMm?: components["schemas"]["LengthInput"];
      /** Specific gravity of that wood, oven-dry. */
      readonly woodSpecificGravity?: number;
    };
    readonly BeddedPieceInput: {
      /** Area of the piece that is bedded. */
      readonly areaM2: components["schemas"]["AreaInput"];
      /**
       * Label on the piece and on the cut plan.
       * @example A1
       */
      readonly label: string;
    };
    readonly BibliographyEntry: {
      /** Who published it. */
      readonly body: components["schemas"]["Text"];
      /** Key of the source in the catalogue. */
      readonly key: components["schemas"]["Text"];
      /** Number that the text refers by. */
      readonly number: number;
      /**
       * How far the source itself was read.
       * @enum {string}
       */
      readonly readAs: "common-practice" | "derived" | "first-hand" | "memory" | "second-hand";
      /** Title of the publication. */
      readonly title: components["schemas"]["Text"];
      /** Where it can be read, when freely. */
      readonly url?: components["schemas"]["Text"];
      /** When it was published. */
      readonly year: components["schemas"]["Text"];
    };
    /** Size of a screw that is bought by its diameter and length. */
    readonly BoltSizeInput: {
      /** Diameter of the bolt. */
      readonly diameterMm: number;
      /** Length of the bolt under its head. */
      readonly lengthMm: number;
    };
    readonly BondPressurePlan: {
      /** Pressure of the air at the altitude of the work. */
      readonly ambientKPa: number;
      /** What was taken about the pressing that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Pressure that the chosen way gives. */
      readonly availableKPa?: number;
      /** Whether the inner skin bears the pressing. */
      readonly innerSkin: components["schemas"]["InnerSkinCheck"];
      /** Where boards, battens or bows lie, from one corner of the area; none when no way will do. */
      readonly lines: readonly components["schemas"]["PressLine"][];
      /**
       * Way of pressing that was chosen; absent when none will do.
       * @enum {string}
       */
      readonly method: "battens" | "jacks" | "vacuum" | "weights";
      /** Weight on each square metre of a piece, or force under it; absent where nothing is laid on or jacked. */
      readonly onPieceKgPerM2?: number;
      /** Every way of pressing, judged. */
      readonly options: readonly components["schemas"]["PressOption"][];
      /** What the chosen way takes: bags, screws, battens. */
      readonly quantities: readonly components["schemas"]["PressQuantity"][];
      /** What to do, in a sentence. */
      readonly recommendation: components["schemas"]["Text"];
      /** Why ways of pressing are ruled out. */
      readonly refusals: readonly components["schemas"]["Text"][];
      /** Pressure that the bond line needs. */
      readonly requiredKPa: number;
      /** What carries the pressing force in the end. */
      readonly restsOn: components["schemas"]["Text"];
      /** One after another, where a crew cannot press the whole opening at once. */
      readonly turns: number;
      /** Fields of BondPressurePlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BondPressurePlanUs"];
    };
    /** Fields of BondPressurePlan in US customary units, when `Accept-Units: us` was sent. */
    readonly BondPressurePlanUs: {
      readonly ambientKPa?: components["schemas"]["UsText"];
      readonly availableKPa?: components["schemas"]["UsText"];
      readonly onPieceKgPerM2?: components["schemas"]["UsText"];
      readonly requiredKPa?: components["schemas"]["UsText"];
    };
    readonly BondPressureRequest: {
      /** Altitude. Absent: 0 m (boats lie near the sea). */
      readonly altitudeM?: number;
      /**
       * Area of core that is pressed down.
       * @example 0.8
       */
      readonly areaM2: components["schemas"]["AreaInput"];
      /** Battens. */
      readonly battens?: components["schemas"]["BattensInput"];
      /** Plain core that must be bent onto the camber. */
      readonly camber?: components["schemas"]["PressedCamberInput"];
      /** Whether anybody can set props from below; absent: yes. */
      readonly canPropFromBelow?: boolean;
      /** Core, bed and skin on the inner skin. Absent: 10 kg/m2 (new core 2, wet bed 2, skin 5 kg/m2). */
      readonly deadLoadKgPerM2?: number;
      /** Inner skin. */
      readonly innerSkin: components["schemas"]["PressedSkinInput"];
      /**
       * Length of the bedded area, fore and aft.
       * @example 1000
       */
      readonly lengthMm: components["schemas"]["LengthInput"];
      /** Edge of the bedded area all round, along which a bag is sealed. */
      readonly perimeterM?: number;
      /**
       * What the crew would like best.
       * @enum {string}
       */
      readonly prefer?: "weights" | "battens" | "vacuum";
      /** Pressure that the bed needs. Absent: 1 kPa, or 0.5 where no prop can be set below. */
      readonly requiredKPa?: number;
      /** Slope of the deck where it is bedded; weights slide on a steep one. */
      readonly slopeDeg?: number;
      /** Vacuum. */
      readonly vacuum?: components["schemas"]["VacuumInput"];
      /** Weights. */
      readonly weights?: components["schemas"]["WeightsInput"];
      /**
       * Width of the bedded area athwart.
       * @example 800
       */
      readonly widthMm: components["schemas"]["LengthInput"];
    };
    /** Absent where nothing is bedded that would have to be pressed. */
    readonly BondPressureSection: {
      /** Pressure that the planned way gives. */
      readonly availableKPa?: number;
      /** Boards on props, battens and bows, where they lie in the plane of the deck. */
      readonly lines: readonly components["schemas"]["PressLine"][];
      /**
       * Absent when no way to press can be recommended; the refusals say why.
       * @enum {string}
       */
      readonly method?: "battens" | "jacks" | "vacuum" | "weights";
      /** What goes on or under each piece, in the order of bedding. */
      readonly pieces: readonly components["schemas"]["BondPressureSectionPieces"][];
      /** Props under the deck. */
      readonly props: components["schemas"]["BondPressureSectionProps"];
      /** What the pressing takes. */
      readonly quantities: readonly components["schemas"]["NamedValue"][];
      /** How to press, in a sentence. */
      readonly recommendation: components["schemas"]["Text"];
      /** Ways of pressing that are ruled out, with why. */
      readonly refusals: readonly components["schemas"]["Text"][];
      /** Pressure that the core needs while it beds. */
      readonly requiredKPa: number;
      /** What the pressing rests on. */
      readonly restsOn: components["schemas"]["Text"];
      /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BondPressureSectionUs"];
    };
    readonly BondPressureSectionPieces: {
      /** Where a jack stands under the board that holds the piece; empty when it is pressed from above. */
      readonly jacks: readonly (readonly number[])[];
      /** Piece that is pressed. */
      readonly label: components["schemas"]["Text"];
      /** Weight laid on it, or force under it as a weight, counted up to whole kilograms; absent where battens or a bag press. */
      readonly massKg?: number;
      /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BondPressureSectionPiecesUs"];
    };
    /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
    readonly BondPressureSectionPiecesUs: {
      readonly massKg?: components["schemas"]["UsText"];
    };
    /** Props under the deck. */
    readonly BondPressureSectionProps: {
      /** Whether props go under the deck. */
      readonly needed: boolean;
      /** How far apart they may stand. */
      readonly spacingMm?: number;
      /** How far the skin that stays reaches between supports without them; absent where it stands by itself. */
      readonly spanMm?: number;
      /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["BondPressureSectionPropsUs"];
      /** Why they are needed or not. */
      readonly why: components["schemas"]["Text"];
    };
    /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
    readonly BondPressureSectionPropsUs: {
      readonly spacingMm?: components["schemas"]["UsText"];
      readonly spanMm?: components["schemas"]["UsText"];
    };
    /** Fields of BondPressureSection in US customary units, when `Accept-Units: us` was sent. */
    readonly BondPressureSectionUs: {
      readonly availableKPa?: components["schemas"]["UsText"];
      readonly requiredKPa?: components["schemas"]["UsText"];
    };
    /** `isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's. */
    readonly BuiltCheck: {
      /** Whether the repaired deck is no worse than that. */
      readonly isNoWorse: boolean;
      /** Demand over capacity of the deck as it was built. */
      readonly utilisation: number;
      /**
       * Verdict on the deck as it was built.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
    };
    /** Crew. */
    readonly CalendarCrewInput: {
      /** ISO dates without work. */
      readonly daysOff?: readonly string[];
      /** Hours that go into the job. Absent: 8 h (a yard's day). */
      readonly hoursPerDay?: number;
      /**
       * Format: int32
       * People at work.
       */
      readonly people: number;
      /** So long cures and coats are watched over; absent: the length of the working day. */
      readonly presentH?: number;
      /** Local hour at which the day begins. Absent: 8 h (a yard's day). */
      readonly startHour?: number;
      /** Days of the week on which the crew works. Absent: mon, tue, wed, thu, fri (a yard's week). */
      readonly workingDays?: readonly ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
    };
    readonly CalendarMilestone: {
      /** Planned moment (RFC 3339). */
      readonly at: components["schemas"]["Instant"];
      /** Code of what is reached. */
      readonly code: components["schemas"]["Text"];
      /** Name of what is reached. */
      readonly title: components["schemas"]["Text"];
    };
    readonly CalendarRequest: {
      /** Code of the coating whose limits count for paint. */
      readonly coating?: string;
      /** Moisture of the core. */
      readonly coreMoisturePercent?: number;
      /** Crew. */
      readonly crew: components["schemas"]["CalendarCrewInput"];
      /** Operations of the caller. */
      readonly customOperations?: readonly components["schemas"]["CustomOperationInput"][];
      /** How often work is repeated that waits in between. */
      readonly cycles?: components["schemas"]["CyclesInput"];
      /** Temperature of the deck where no forecast reaches; never taken below what the hardener needs. Absent: 18 degC (nothing was said about the season). */
      readonly deckTemperatureC?: components["schemas"]["TemperatureInput"];
      /** Amounts of the job. */
      readonly drivers: components["schemas"]["DriverAmountsInput"];
      /**
       * What dries under the lip. Absent: balsa (the usual core of a deck, and the one that dries slowest).
       * @enum {string}
       */
      readonly dryingCore?: "balsa" | "plywood" | "foam";
      /** Of the core that stays, at the edge: drying follows it. Absent: that of the core. */
      readonly edgeMoisturePercent?: number;
      /** Kind of the job. */
      readonly flags: components["schemas"]["OperationFlagsInput"];
      /** Weather of the place hour by hour; it says when the weather lets work be done. */
      readonly forecast?: components["schemas"]["ForecastInput"];
      /**
       * Code of the hardener that is mixed in; it sets how fast all cures.
       * @example medium
       */
      readonly hardener: string;
      /** Asks for the calendar as iCalendar text too. */
      readonly iCalendar?: components["schemas"]["ICalendarInput"];
      /** The deck is opened and measured: the hold for re-measuring waits for nobody. */
      readonly isExtentAgreed?: boolean;
      /**
       * Code of the resin system of the catalogue that is used.
       * @example resin-epoxy-5to1
       */
      readonly resin: string;
      /**
       * Format: int32
       * Simulated calendars. Absent: 2000 (enough that the finish of nine in ten holds to a day).
       */
      readonly runs?: number;
      /**
       * Format: int64
       * Seed of the simulation. Absent: 20260504 (any seed gives the same spread to within the runs).
       */
      readonly seed?: number;
      /**
       * Format: date
       * Day on which work may start.
       */
      readonly startDate: string;
      /**
       * Zone of the place; absent: UTC.
       * @example Europe/Lisbon
       */
      readonly timeZone?: string;
      /**
       * Format: date
       * Day for which the work is listed.
       */
      readonly today?: string;
      /** Warmth of the deck above the air. */
      readonly warmth?: components["schemas"]["DeckWarmthInput"];
      /** Share of working days lost to weather beyond the forecast. Absent, by the shelter: open 0.25, tent 0.05, shed 0. */
      readonly weatherLossFraction?: number;
    };
    /** Tasks, waits and days of the job. */
    readonly CalendarSection: {
      /** From the first day to the last, waits counted. */
      readonly calendarDays: components["schemas"]["Range"];
      /** Tasks whose delay delays the end, by code. */
      readonly criticalChain: readonly components["schemas"]["Text"][];
      /** When the job ends; absent when no start was stated. */
      readonly finish?: components["schemas"]["CalendarSectionFinish"];
      /** Days worth announcing. */
      readonly milestones: readonly components["schemas"]["CalendarSectionMilestones"][];
      /** What to know about the calendar. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Of the one walk that the tasks show, by mean hours and waits. */
      readonly planned: components["schemas"]["CalendarSectionPlanned"];
      /** Absent when the record names no start: days are then counted from any Monday. */
      readonly startDate?: components["schemas"]["Text"];
      /** Tasks in the order they start. */
      readonly tasks: readonly components["schemas"]["CalendarTask"][];
      /** Zone, or offset, that the moments are written in. */
      readonly timeZone?: components["schemas"]["Text"];
      /** Days on which somebody works, as a spread. */
      readonly workingDays: components["schemas"]["Range"];
    };
    /** When the job ends; absent when no start was stated. */
    readonly CalendarSectionFinish: {
      /** End that one job in ten is done by (RFC 3339). */
      readonly early: components["schemas"]["Instant"];
      /** End that nine jobs in ten are done by (RFC 3339). */
      readonly late: components["schemas"]["Instant"];
      /** End that half of the jobs are done by (RFC 3339). */
      readonly likely: components["schemas"]["Instant"];
    };
    readonly CalendarSectionMilestones: {
      /** When it is reached (RFC 3339); absent when no start was stated. */
      readonly at?: components["schemas"]["Instant"];
      /** Code of the milestone. */
      readonly code: components["schemas"]["Text"];
      /** What is reached then. */
      readonly title: components["schemas"]["Text"];
    };
    /** Of the one walk that the tasks show, by mean hours and waits. */
    readonly CalendarSectionPlanned: {
      /** Calendar days of the plan as drawn. */
      readonly calendarDays: number;
      /** Working days of the plan as drawn. */
      readonly workingDays: number;
    };
    readonly CalendarTask: {
      /** Tasks that must be done before it, by code. */
      readonly after: readonly components["schemas"]["Text"][];
      /** Code of the task. */
      readonly code: components["schemas"]["Text"];
      /** When it ends (RFC 3339), where the job's start was stated. */
      readonly endAt?: components["schemas"]["Instant"];
      /** When its work ends, in days from the start of the job; its wait comes after. */
      readonly endDay: number;
      /**
       * What it waits for in the weather.
       * @enum {string}
       */
      readonly gate: "coating" | "dry-deck" | "none" | "resin";
      /** Whether its delay delays the end. */
      readonly isCritical: boolean;
      /** Whether work stops here until somebody has agreed. */
      readonly isHoldPoint: boolean;
      /** Mean hours of work, of all hands together. */
      readonly labourH: number;
      /** When its cure, drying or hold is over. */
      readonly readyAt?: components["schemas"]["Text"];
      /** When it starts (RFC 3339), where the job's start was stated. */
      readonly startAt?: components["schemas"]["Instant"];
      /** When it starts, in days from the start of the job. */
      readonly startDay: number;
      /** What lets it start no earlier. */
      readonly startsBecause: components["schemas"]["Text"];
      /** What is done. */
      readonly title: components["schemas"]["Text"];
      /** Hours of waiting after the work. */
      readonly waitH: number;
      /**
       * What is waited for.
       * @enum {string}
       */
      readonly waitKind: "cure" | "drying" | "elapsed" | "hold" | "none";
    };
    /** RFC 5545 calendar. */
    readonly CalendarText: string;
    /** Camber of the deck; absent: it is flat. */
    readonly CamberInput: {
      /** Gap that the bed fills. Absent: 1.5 mm (the largest piece lies within 1 to 1.5 mm of the skin). */
      readonly mostGapMm?: components["schemas"]["LengthInput"];
      /** Length of a piece across the camber; absent: the side of the largest piece. */
      readonly pieceLengthMm?: components["schemas"]["LengthInput"];
      /** Pressure that holds the core down. Absent: 2 kPa (a 20 kg bag on 0.1 m2). */
      readonly pressureKPa?: number;
      /** Radius of the camber. */
      readonly radiusMm: components["schemas"]["LengthInput"];
    };
    /** How the core follows a cambered deck. */
    readonly CamberPlan: {
      /** Radius to which the pressure bends the thickest layer. */
      readonly bentRadius: components["schemas"]["Figure"];
      /** The bend, the spring-back and what they are compared with. */
      readonly figures: readonly components["schemas"]["Figure"][];
      /**
       * Form of sheet that follows the camber.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** Gap under a plain piece of the stated length. */
      readonly gap: components["schemas"]["Figure"];
      /** A plain piece no longer than this across the camber lies within the gap without bending. */
      readonly longestFlatPieceMm: number;
      /** Fields of CamberPlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CamberPlanUs"];
      /**
       * How the core is brought to the curve.
       * @enum {string}
       */
      readonly way: "bends" | "lies" | "scored" | "shorter-pieces";
      /** What the crew does, in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    /** Fields of CamberPlan in US customary units, when `Accept-Units: us` was sent. */
    readonly CamberPlanUs: {
      readonly longestFlatPieceMm?: components["schemas"]["UsText"];
    };
    /** The cause. */
    readonly CauseInput: {
      /**
       * What let the water in.
       * @enum {string}
       */
      readonly cause: "leaking-fitting" | "impact" | "construction" | "unknown";
      /**
       * What the insurer will ask: sudden, already there, or upkeep.
       * @enum {string}
       */
      readonly causeClass?: "sudden" | "pre-existing" | "maintenance";
      /**
       * Where the water came in; its remedy becomes part of the plan.
       * @enum {string}
       */
      readonly leak?: "fittings" | "hull-deck-joint" | "hatch" | "overlay-screws" | "chainplate" | "crack" | "not-known";
      /** Length of the joint or crack that leaks. */
      readonly lengthMm?: components["schemas"]["LengthInput"];
      /** Note on the cause. */
      readonly note?: string;
    };
    /** The cause. */
    readonly CauseRecord: {
      /**
       * What let the water in.
       * @enum {string}
       */
      readonly cause: "construction" | "impact" | "leaking-fitting" | "unknown";
      /**
       * What the insurer will ask: sudden, already there, or upkeep.
       * @enum {string}
       */
      readonly causeClass?: "maintenance" | "pre-existing" | "sudden";
      /**
       * Where the water came in; its remedy becomes part of the plan.
       * @enum {string}
       */
      readonly leak?: "chainplate" | "crack" | "fittings" | "hatch" | "hull-deck-joint" | "not-known" | "overlay-screws";
      /** Length of the joint or crack that leaks. */
      readonly lengthMm?: number;
      /** Note on the cause. */
      readonly note?: components["schemas"]["Text"];
    };
    readonly Caution: {
      /** The condition of this job that called it. */
      readonly because: components["schemas"]["Text"];
      /** Code of this caution. */
      readonly code: components["schemas"]["Text"];
      /** Who decides, where it is not the crew. */
      readonly decides?: components["schemas"]["Text"];
      /** GHS hazard statements of the materials concerned. */
      readonly hazards: readonly components["schemas"]["CautionHazards"][];
      /**
       * What sort of harm.
       * @enum {string}
       */
      readonly kind: "fire" | "health" | "site" | "structure" | "work";
      /** What to wear or to set up. */
      readonly protection: readonly components["schemas"]["Text"][];
      /**
       * What may come of it: death, injury or damage.
       * @enum {string}
       */
      readonly severity: "caution" | "danger" | "warning";
      /** Publication that the caution follows. */
      readonly source: components["schemas"]["Text"];
      /** What to do or to leave. */
      readonly text: components["schemas"]["Text"];
    };
    readonly CautionHazards: {
      /** Hazard statement (GHS). */
      readonly code: components["schemas"]["Text"];
      /** Wording of the statement. */
      readonly text: components["schemas"]["Text"];
    };
    /** A pack whose prices are other ones now. */
    readonly ChangedPack: {
      /** The same breaks afterwards. */
      readonly after: readonly components["schemas"]["Text"][];
      /** Prices of one pack at each quantity break, in the order of the breaks, in the currency of the list. */
      readonly before: readonly components["schemas"]["Text"][];
      /** Name of the pack. */
      readonly name: components["schemas"]["Text"];
      /** Pack whose price changed. */
      readonly sku: components["schemas"]["Text"];
    };
    /** A change order as text to be signed, in the parts that a letter has. */
    readonly ChangeOrder: {
      /** Lines that came in or grew. */
      readonly additions: readonly components["schemas"]["LineChange"][];
      /** Everything found since the first issue, by the rates agreed with it; absent where that was in another currency. */
      readonly byRates?: components["schemas"]["ReMeasured"];
      /** Lines that went or shrank. */
      readonly deductions: readonly components["schemas"]["LineChange"][];
      /** Why the work changed, as stated with the revision. */
      readonly reason: components["schemas"]["Text"];
      /** Whose name, date and signature it needs. */
      readonly signatures: readonly components["schemas"]["Text"][];
      /** Sentences that both parties sign. */
      readonly statements: readonly components["schemas"]["Text"][];
      /** From the lines to what is to be paid, before and after. */
      readonly steps: readonly components["schemas"]["TotalChange"][];
      /** The steps from the old total to the new one. */
      readonly sums: readonly components["schemas"]["ChangeOrderSums"][];
      /** Heading of the change order. */
      readonly title: components["schemas"]["Text"];
    };
    readonly ChangeOrderSums: {
      /** Its amount; a deduction is negative. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** What the sum is. */
      readonly name: components["schemas"]["Text"];
    };
    /** A check that fails is a result. `utilisation` is demand over capacity. */
    readonly Check: {
      /** Of the repaired panel: what the same check comes to on the deck as built. */
      readonly asBuilt?: components["schemas"]["BuiltCheck"];
      /** What is there or allowed. */
      readonly capacity?: number;
      /** Code of the check. */
      readonly code: components["schemas"]["Text"];
      /** What is required or acts. */
      readonly demand?: number;
      /** What decides the check. */
      readonly governs: components["schemas"]["Text"];
      /** Why the check has no figure. */
      readonly reason?: components["schemas"]["Text"];
      /** What would let the check pass. */
      readonly remedy?: components["schemas"]["Text"];
      /** Publication that the check follows. */
      readonly source: components["schemas"]["Text"];
      /**
       * State of the deck that the check is about.
       * @enum {string}
       */
      readonly state?: "as-built" | "as-found" | "opened" | "repaired";
      /** Name of the check. */
      readonly title: components["schemas"]["Text"];
      /** Unit of what acts and what is there. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Check in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CheckUs"];
      /** What acts over what is allowed. */
      readonly utilisation?: number;
      /**
       * What the check says.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
    };
    /** Fields of Check in US customary units, when `Accept-Units: us` was sent. */
    readonly CheckUs: {
      readonly capacity?: components["schemas"]["UsText"];
      readonly demand?: components["schemas"]["UsText"];
    };
    /** Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`. */
    readonly Cite: {
      /** Clause, table, equation or page in the source. */
      readonly clause?: components["schemas"]["Text"];
      /** Clause, table or page, or why the value stands without one. */
      readonly note?: components["schemas"]["Text"];
      /** Key of the source; `/v1/sources/{code}` names it in full. */
      readonly source: components["schemas"]["Text"];
    };
    /** Where a value is printed: a source of the edition and the place in it. */
    readonly CiteInput: {
      /** Clause, table, equation or page. */
      readonly clause?: string;
      /** Page or table, or why the value stands without a source. */
      readonly note?: string;
      /** Key of a source of the same edition. */
      readonly source: string;
    };
    readonly ClassDeckLoadInput: {
      /**
       * The pressure that a class rule puts on decks. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "class-deck";
      /** Your own name for the class load, as the answer shows it. */
      readonly name?: string;
    };
    /** Shown once: opens the estimate it came with. */
    readonly ClientSecret: {
      /** Bearer of this text may read the one estimate; shown once. */
      readonly clientSecret: components["schemas"]["Text"];
      /** Until when the secret counts (RFC 3339). */
      readonly clientSecretExpiresAt: components["schemas"]["Instant"];
    };
    readonly ClosingCheck: {
      /** What the joint can carry or is allowed. */
      readonly capacity?: number;
      /**
       * Which property of the joint was checked.
       * @enum {string}
       */
      readonly check: "bond-peel" | "bond-shear" | "flush" | "taper-room";
      /** Source of the joint's requirement. */
      readonly cite: components["schemas"]["Cite"];
      /** What the joint must carry or keep to. */
      readonly demand?: number;
      /** Name of the check on the joint. */
      readonly title: components["schemas"]["Text"];
      /** Unit of the joint's demand and capacity. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of ClosingCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ClosingCheckUs"];
      /** Demand on the joint over its capacity. */
      readonly utilisation?: number;
      /**
       * Whether the joint passes.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
      /** The check in a sentence. */
      readonly words?: components["schemas"]["Text"];
    };
    /** Fields of ClosingCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly ClosingCheckUs: {
      readonly capacity?: components["schemas"]["UsText"];
      readonly demand?: components["schemas"]["UsText"];
    };
    /** The plies over the cut, where the lifted skin is bonded back. */
    readonly ClosingPlies: {
      /** What was taken about the joint. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Whether the closed joint holds and lies flush. */
      readonly checks: readonly components["schemas"]["ClosingCheck"][];
      /** What this order of strips means. */
      readonly consequences: readonly components["schemas"]["Text"][];
      /** Glass of all strips. */
      readonly glassKg: components["schemas"]["Figure"];
      /** Width of the open joint before it is closed. */
      readonly grooveWidthMm: number;
      /** Least taper that the bond allows, where the joint's stress was given. */
      readonly leastTaperRatio?: number;
      /**
       * Whether wide or narrow strips are laid first.
       * @enum {string}
       */
      readonly order: "largest-first" | "smallest-first";
      /** Strips over the joint, in the order they are laid. */
      readonly plies: readonly components["schemas"]["ClosingPly"][];
      /** Resin of all strips. */
      readonly resinKg: components["schemas"]["Figure"];
      /** Strips laid wet on wet together. */
      readonly stages: readonly components["schemas"]["Stage"][];
      /** Width of the taper over the closing joint. */
      readonly taperWidthMm: components["schemas"]["Figure"];
      /** Fields of ClosingPlies in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ClosingPliesUs"];
    };
    /** Fields of ClosingPlies in US customary units, when `Accept-Units: us` was sent. */
    readonly ClosingPliesUs: {
      readonly grooveWidthMm?: components["schemas"]["UsText"];
    };
    readonly ClosingPly: {
      /** Area of the strip. */
      readonly areaM2: components["schemas"]["Figure"];
      /** Glass in the strip. */
      readonly glassKg: components["schemas"]["Figure"];
      /** Code of the strip's fabric. */
      readonly material: components["schemas"]["Text"];
      /** Name of the strip's fabric. */
      readonly name: components["schemas"]["Text"];
      /** Place of the strip, 1 the first laid. */
      readonly order: number;
      /** Edge of the strip along the joint. */
      readonly outline?: readonly components["schemas"]["Polygon"][];
      /** Resin that wets the strip. */
      readonly resinKg: components["schemas"]["Figure"];
      /** Length of roll for the strips. */
      readonly rollLengthM: number;
      /** As they are cut from the roll. */
      readonly rollStrips: readonly components["schemas"]["RollStrip"][];
      /** Width of the roll for strips. */
      readonly rollWidthMm: number;
      /** Stage that the strip is laid in. */
      readonly stage: number;
      /** Pieces that the strip is cut in. */
      readonly strips: number;
      /** What the strip adds over the joint. */
      readonly thicknessMm: number;
      /** Fields of ClosingPly in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ClosingPlyUs"];
      /** Width of the strip. */
      readonly widthMm: number;
    };
    /** Fields of ClosingPly in US customary units, when `Accept-Units: us` was sent. */
    readonly ClosingPlyUs: {
      readonly rollLengthM?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    readonly CoatingInput: {
      /**
       * What the coating is for.
       * @enum {string}
       */
      readonly coating: "fairing-compound" | "primer" | "topcoat" | "nonskid" | "gelcoat";
      /** Coats that make it complete. */
      readonly coats: components["schemas"]["DatumInput"];
      /** Stable code of the coating, unique in the edition. */
      readonly code: string;
      /** Area that a litre covers in one coat. */
      readonly coverageM2PerL: components["schemas"]["DatumInput"];
      /** Density as it is applied. */
      readonly densityKgPerL: components["schemas"]["DatumInput"];
      /** Hazard statements (GHS) of the coating, such as H226. */
      readonly hazards?: readonly string[];
      /** Dampest air that it may be applied in. */
      readonly highestRelativeHumidityPercent: components["schemas"]["DatumInput"];
      /** Whether it holds isocyanates, which need air-fed protection when sprayed. */
      readonly isIsocyanate: boolean;
      /**
       * Says that the material is a coating. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "coating";
      /** Coldest deck that it may be applied on. */
      readonly lowestTemperatureC: components["schemas"]["DatumInput"];
      /** Generic specification of the coating in trade words. */
      readonly name: string;
      /** Hours before the next coat may follow. */
      readonly recoatH: components["schemas"]["DatumInput"];
    };
    /** Share of the variance of rates that labour, or parts, have in common. */
    readonly CommonShareInput: {
      /** Share of the variance of rates that they have in common; absent: 0.5. */
      readonly labour?: number;
      /** Share of the variance of rates that they have in common; absent: 0.3. */
      readonly part?: number;
    };
    /** One of two estimates that are compared. */
    readonly ComparedEstimate: {
      /** When it was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Edition of the catalogue it was priced with. */
      readonly edition: components["schemas"]["Text"];
      /** Version of the program that made it. */
      readonly engineVersion: components["schemas"]["Text"];
      /** Id of the estimate that is compared. */
      readonly id: components["schemas"]["Id"];
      /** Which revision of the job it is. */
      readonly revision: components["schemas"]["RevisionMark"];
    };
    /** What changed from one estimate to another, line by line. */
    readonly Comparison: {
      /** The later of the two. */
      readonly after: components["schemas"]["ComparedEstimate"];
      /** The earlier of the two. */
      readonly before: components["schemas"]["ComparedEstimate"];
      /** Currency of all differences (ISO 4217). */
      readonly currency: components["schemas"]["Currency"];
      /** Later net sum less the earlier, without tax. */
      readonly difference: components["schemas"]["MoneyJson"];
      /** Changed figures of the scope, such as the opened area. */
      readonly figures: readonly components["schemas"]["FigureChange"][];
      /** Changed lines: by how much, because of how much more of it and because of its rate. */
      readonly lines: readonly components["schemas"]["LineChange"][];
      /** Of the amount without tax before; absent when that was nothing. */
      readonly shareOfBefore?: number;
      /** Changed sections, then every step from the sum of the lines to the sum with tax. */
      readonly totals: readonly components["schemas"]["TotalChange"][];
    };
    readonly Computed: {
      /** Where the formula is printed. */
      readonly cite: components["schemas"]["Cite"];
      /** Id of the formula. */
      readonly formula: components["schemas"]["Text"];
      /** What went in, by symbol; each a figure with its own origin. */
      readonly inputs: {
        readonly [key: string]: components["schemas"]["Figure"];
      };
      /**
       * Says that a formula gave the figure. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "computed";
      /** Letter that stands for the result in the source. */
      readonly symbol: components["schemas"]["Text"];
      /** What the formula is called. */
      readonly title: components["schemas"]["Text"];
    };
    /** What it comes to in words: the page that is read first. */
    readonly ConclusionSection: {
      /** What was found, each graded by urgency. */
      readonly findings: readonly components["schemas"]["GradedFinding"][];
      /** What is recommended and why. */
      readonly method: components["schemas"]["ConclusionSectionMethod"];
      /** When to look again, and at what. */
      readonly reinspection: readonly components["schemas"]["ReinspectionPoint"][];
      /** What is said of the repair. */
      readonly verdict: components["schemas"]["ConclusionSectionVerdict"];
    };
    /** What is recommended and why. */
    readonly ConclusionSectionMethod: {
      /** The method that comes next. */
      readonly runnerUp?: components["schemas"]["ConclusionSectionMethodRunnerUp"];
      /** The recommendation, sentence by sentence. */
      readonly sentences: readonly components["schemas"]["Text"][];
    };
    /** The method that comes next. */
    readonly ConclusionSectionMethodRunnerUp: {
      /** Why it is not the first. */
      readonly because: components["schemas"]["Text"];
      /** What it would cost; absent where it is not priced. */
      readonly price?: components["schemas"]["MoneyJson"];
      /** Name of the method that comes next. */
      readonly title: components["schemas"]["Text"];
    };
    /** What is said of the repair. */
    readonly ConclusionSectionVerdict: {
      /**
       * Code of the verdict.
       * @enum {string}
       */
      readonly code: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
      /** Shortfalls, and remarks on how the deck was built. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** The verdict in a sentence. */
      readonly sentence: components["schemas"]["Text"];
    };
    /** Where the work is done, and in what air. */
    readonly Conditions: {
      /** Altitude. Absent: 0 m (most decks are repaired at sea level). */
      readonly altitudeM?: number;
      /** Drying in place goes by it. */
      readonly daysAvailable?: number;
      /** With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere. */
      readonly forecast?: components["schemas"]["Forecast"];
      /** Whether the boat is afloat. */
      readonly isAfloat?: boolean;
      /** Whether frost is due before the core could be dry. */
      readonly isFreezeExpected?: boolean;
      /**
       * Decides haul-out and days in the yard: hauled for this job, ashore anyway, afloat, or on ground of the owner.
       * @enum {string}
       */
      readonly place?: "afloat" | "ashore-anyway" | "ashore-for-this" | "own-ground";
      /** Relative humidity of the air where the boat lies. */
      readonly relativeHumidityPercent?: number;
      /**
       * Shelter over the work. Absent: tent (an opened deck needs cover; a tent is the least that keeps rain and dew out).
       * @enum {string}
       */
      readonly shelter?: "open" | "shed" | "tent";
      /** Working temperature of the deck. */
      readonly temperatureC?: number;
      /** How much warmer the deck is than the forecast's air. */
      readonly warmth?: components["schemas"]["DeckWarmth"];
    };
    /** Where and in what air the work is done. */
    readonly ConditionsInput: {
      /** Altitude. Absent: 0 m (most decks are repaired at sea level). */
      readonly altitudeM?: number;
      /**
       * Format: int32
       * Drying in place goes by it.
       */
      readonly daysAvailable?: number;
      /** With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere. */
      readonly forecast?: components["schemas"]["ForecastInput"];
      /** Whether the boat is afloat. */
      readonly isAfloat?: boolean;
      /** Whether frost is due before the core could be dry. */
      readonly isFreezeExpected?: boolean;
      /**
       * Decides haul-out and days in the yard: hauled for this job, ashore anyway, afloat, or on ground of the owner.
       * @enum {string}
       */
      readonly place?: "afloat" | "ashore-for-this" | "ashore-anyway" | "own-ground";
      /** Relative humidity of the air where the boat lies. */
      readonly relativeHumidityPercent?: number;
      /**
       * Shelter over the work. Absent: tent (an opened deck needs cover; a tent is the least that keeps rain and dew out).
       * @enum {string}
       */
      readonly shelter?: "shed" | "tent" | "open";
      /** Working temperature of the deck. */
      readonly temperatureC?: components["schemas"]["TemperatureInput"];
      /** How much warmer the deck is than the forecast's air. */
      readonly warmth?: components["schemas"]["DeckWarmthInput"];
    };
    readonly ConstraintReport: {
      /** Best value over all stacks against what is needed; at least 1 where `metBy` is above 0. */
      readonly bestRatio: number;
      /**
       * Constraint that stood in the way.
       * @enum {string}
       */
      readonly constraint: "flush-low" | "flush-proud" | "kinds" | "order" | "stiffness-across" | "stiffness-along" | "stiffness-shear" | "strength-compression-across" | "strength-compression-along" | "strength-tension-across" | "strength-tension-along";
      /** Stacks that meet it, whatever else they miss. */
      readonly metBy: number;
      /** Best ratio among those: how near the catalogue comes when all else is met. */
      readonly nearestRatio?: number;
      /** Stacks that meet everything but this one. */
      readonly soleObstacleOf: number;
    };
    readonly ConsumableInput: {
      /** Size of a screw that is bought by its diameter and length. */
      readonly bolt?: components["schemas"]["BoltSizeInput"];
      /** Stable code of the consumable, unique in the edition. */
      readonly code: string;
      /** Hazard statements (GHS) of the consumable, such as H226. */
      readonly hazards?: readonly string[];
      /**
       * Says that the material is used up by the work. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "consumable" | "safety" | "fastener";
      /** Generic specification of the consumable in trade words. */
      readonly name: string;
      /** Jobs that one of it serves; absent, it is used up or stays in the boat. */
      readonly servesJobs?: components["schemas"]["DatumInput"];
      /**
       * Unit that it is counted in.
       * @enum {string}
       */
      readonly unit: "each" | "pair" | "m" | "m2" | "l" | "kg" | "roll" | "pack";
      /** None for what is bought by a card of its own, as fastenings are. */
      readonly usages: readonly components["schemas"]["UsageInput"][];
      /**
       * When it belongs to a job at all; absent means always.
       * @enum {string}
       */
      readonly when?: "relay" | "re-bed" | "vacuum" | "battens" | "weights" | "epoxy" | "polyester" | "paint" | "nonskid" | "from-below";
    };
    /** Pieces, sheets and what becomes of every square millimetre of them. */
    readonly CoreBill: {
      /** What the bill takes that nobody stated. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** Area of the sheets bought. */
      readonly boughtArea: components["schemas"]["Figure"];
      /** Price of the sheets, in the unit that prices were stated in. */
      readonly cost: number;
      /** One for each thickness and form. */
      readonly cuts: readonly components["schemas"]["CoreCut"][];
      /** How many pieces, and why so many. */
      readonly division: components["schemas"]["DivisionByCost"];
      /** Width that the saw takes between pieces. */
      readonly kerfMm: number;
      /** Pieces that the core is cut into. */
      readonly mosaic: components["schemas"]["Mosaic"];
      /** Area of core that ends up in the deck. */
      readonly netArea: components["schemas"]["Figure"];
      /**
       * Format: int32
       * Sheets that must be bought.
       */
      readonly sheetCount: number;
      /** Layers of new core that fill the cavity. */
      readonly stack: components["schemas"]["StackPlan"];
      /** Fields of CoreBill in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreBillUs"];
      /** Share of the bought area that becomes pieces, 0 to 1; 0 where no core is bought. */
      readonly utilisation: number;
      /** Where the bought area goes. */
      readonly waste: components["schemas"]["SheetUse"];
      /** Share of the bought area that goes to waste, 0 to 1; absent where no core is bought. */
      readonly wasteFraction?: components["schemas"]["Figure"];
    };
    readonly CoreBillRequest: {
      /** Camber of the deck; absent: it is flat. */
      readonly camber?: components["schemas"]["CamberInput"];
      /**
       * From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines.
       * @example 17.5
       */
      readonly cavityMm: components["schemas"]["LengthInput"];
      /** Strip along every edge of the stock that is not used. Absent: 0 mm (sheet edges are taken as sound). */
      readonly edgeTrimMm?: components["schemas"]["LengthInput"];
      /**
       * Plain, or scored so that it bends.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Direction of the grain on the deck, from forward to starboard. Absent: 0 degrees (grain runs fore and aft). */
      readonly grainDeg?: number;
      /** What an hour of work costs, in the currency of the sheets; absent: the sheets alone decide how the core is divided. */
      readonly hourCost?: number;
      /** Narrowest offcut worth keeping. Absent: 150 mm (it still holds a piece of the size bedded by hand). */
      readonly keepFromMm?: components["schemas"]["LengthInput"];
      /** Width that the blade takes. Absent: 2 mm (a fine saw or a stout knife). */
      readonly kerfMm?: components["schemas"]["LengthInput"];
      /**
       * Code of a core in the catalogue.
       * @example core-balsa-150
       */
      readonly material: string;
      /** How core is divided into pieces. */
      readonly mosaicRules?: components["schemas"]["MosaicRulesInput"];
      /** The customer's own pieces of the same core. */
      readonly offcuts?: readonly components["schemas"]["OwnOffcutInput"][];
      /** How heavy and how wet the old core is. */
      readonly oldCore?: components["schemas"]["OldCoreMassInput"];
      /** Openings to fill. */
      readonly openings: readonly components["schemas"]["DrawnOpeningInput"][];
      /**
       * Format: int64
       * The same seed gives the same layout. Absent: 1 (any seed will do, as long as it is the same).
       */
      readonly seed?: number;
      /** What can be bought; absent: the material's formats, the smallest area being the cheapest. */
      readonly sheets?: readonly components["schemas"]["SheetOnSaleInput"][];
      /**
       * What closes the openings: the old skin bedded again, or plies laid wet on the core. Absent: re-bed (the old skin goes back wherever it can).
       * @enum {string}
       */
      readonly skin?: "re-bed" | "relay";
      /** How thick the beds are and how the skin sits. */
      readonly stackRules?: components["schemas"]["StackRulesInput"];
      /** Lines the deck rests on; no joint runs along one. */
      readonly supports?: readonly components["schemas"]["CoreSupportInput"][];
      /** After this time the best layout so far is the answer. Absent: 20 s (nobody waits longer for a drawing). */
      readonly timeLimitS?: number;
      /** A thickness of the list that is insisted on. */
      readonly wantedMm?: components["schemas"]["LengthInput"];
      /** Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000 (a good layout of a deck's worth of pieces takes a fraction of it). */
      readonly workUnits?: number;
    };
    /** Fields of CoreBill in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreBillUs: {
      readonly kerfMm?: components["schemas"]["UsText"];
    };
    readonly CoreCut: {
      /** Price of these sheets. */
      readonly cost: number;
      /**
       * Whether these sheets are plain or scored.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** No layout of these pieces can cost less. */
      readonly leastCost: number;
      /** Each sheet with the pieces on it. */
      readonly sheets: readonly components["schemas"]["CutCoreSheet"][];
      /** Thickness of the sheets that are cut. */
      readonly thicknessMm: number;
      /** Fields of CoreCut in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreCutUs"];
      /** How much of the sheets becomes pieces. */
      readonly use: components["schemas"]["SheetUse"];
    };
    /** Fields of CoreCut in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreCutUs: {
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    readonly CoreFormInput: {
      /**
       * Plain sheet, or scored so that it can bend.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** Depth of the cuts as a share of the thickness. */
      readonly scoreDepthFraction?: number;
      /** Distance between the cuts of a scored sheet. */
      readonly scoreSpacingMm?: number;
      /** Width of those cuts. */
      readonly scoreWidthMm?: number;
    };
    /** A core by its thickness and its modulus in the plane of the panel. */
    readonly CoreLayerInput: {
      /** Thickness of the core between the skins. */
      readonly thicknessMm: components["schemas"]["LengthInput"];
      /** Modulus in the plane of the panel. */
      readonly youngMPa: number;
    };
    /** Absent where the method opens nothing; `leftOut` says why. */
    readonly CoreSection: {
      /** Height to fill between the skins. */
      readonly cavityMm: number;
      /** Why it is so many pieces. */
      readonly division: components["schemas"]["Text"];
      /** New stack less cavity; positive stands proud. */
      readonly flushMm: number;
      /** Left between the pieces on a sheet for the blade. */
      readonly kerfMm: number;
      /** How much heavier the deck becomes; negative is lighter. */
      readonly massChangeKg: number;
      /** Code of the new core. */
      readonly material: components["schemas"]["Text"];
      /** Name of the new core. */
      readonly materialName: components["schemas"]["Text"];
      /** Core in the deck. */
      readonly netAreaM2: number;
      /** What the crew should know about the core. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Pieces in the order they are bedded. */
      readonly pieces: readonly components["schemas"]["EstimateCorePiece"][];
      /** Core that is bought. */
      readonly purchaseAreaM2: number;
      /** Sheets with the pieces cut from them. */
      readonly sheets: readonly components["schemas"]["CoreSheetLayout"][];
      /** Area that is filled solid. */
      readonly solidAreaM2: number;
      /** Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid. */
      readonly solidFills: readonly components["schemas"]["CoreSolidFill"][];
      /** Solid filling. */
      readonly solidVolumeL: number;
      /** Layers of the new stack from below. */
      readonly stack: readonly components["schemas"]["CoreSectionStack"][];
      /** Height of the new stack. */
      readonly stackMm: number;
      /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreSectionUs"];
      /** Share of bought core that ends up in the deck. */
      readonly utilisation: number;
      /** Bought core that goes to waste. */
      readonly wasteAreaM2: number;
      /** Where the waste comes from. */
      readonly wasteByCause: readonly components["schemas"]["CoreSectionWasteByCause"][];
      /** Water that leaves with the wet core; absent when its moisture is unknown. */
      readonly waterLeavingKg?: number;
    };
    readonly CoreSectionStack: {
      /** What the layer is. */
      readonly layer: components["schemas"]["Text"];
      /** How thick the layer is. */
      readonly thicknessMm: number;
      /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreSectionStackUs"];
    };
    /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreSectionStackUs: {
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreSectionUs: {
      readonly cavityMm?: components["schemas"]["UsText"];
      readonly flushMm?: components["schemas"]["UsText"];
      readonly kerfMm?: components["schemas"]["UsText"];
      readonly massChangeKg?: components["schemas"]["UsText"];
      readonly netAreaM2?: components["schemas"]["UsText"];
      readonly purchaseAreaM2?: components["schemas"]["UsText"];
      readonly solidAreaM2?: components["schemas"]["UsText"];
      readonly solidVolumeL?: components["schemas"]["UsText"];
      readonly stackMm?: components["schemas"]["UsText"];
      readonly wasteAreaM2?: components["schemas"]["UsText"];
      readonly waterLeavingKg?: components["schemas"]["UsText"];
    };
    readonly CoreSectionWasteByCause: {
      /** How much goes to waste so. */
      readonly areaM2: number;
      /** Why core goes to waste. */
      readonly cause: components["schemas"]["Text"];
      /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreSectionWasteByCauseUs"];
    };
    /** Fields of CoreSection in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreSectionWasteByCauseUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    readonly CoreSheetInput: {
      /** Turns in degrees that keep the grain right; empty when any turn will do. */
      readonly allowedTurnsDeg: readonly number[];
      /** Stable code of the core sheet, unique in the edition. */
      readonly code: string;
      /** Compressive modulus through the thickness. */
      readonly compressiveModulusMPa: components["schemas"]["DatumInput"];
      /** Compressive strength through the thickness. */
      readonly compressiveStrengthMPa: components["schemas"]["DatumInput"];
      /**
       * What the core is made of.
       * @enum {string}
       */
      readonly coreType: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
      /** Density of the dry core. */
      readonly densityKgPerM3: components["schemas"]["DatumInput"];
      /** Forms that the sheets are sold in. */
      readonly forms: readonly components["schemas"]["CoreFormInput"][];
      /** Hazard statements (GHS) of the core sheet, such as H226. */
      readonly hazards?: readonly string[];
      /** Young's modulus in the plane of the sheet. */
      readonly inPlaneModulusMPa: components["schemas"]["DatumInput"];
      /**
       * Says that the material is a core sheet. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "core";
      /** Largest piece that can be bedded before the resin kicks. */
      readonly largestPieceM2: components["schemas"]["DatumInput"];
      /** Generic specification of the core sheet in trade words. */
      readonly name: string;
      /** Whether pieces are drilled so that air can leave under them. */
      readonly needsBleedHoles: boolean;
      /** Shear modulus through the thickness. */
      readonly shearModulusMPa: components["schemas"]["DatumInput"];
      /** Shear strength through the thickness. */
      readonly shearStrengthMPa: components["schemas"]["DatumInput"];
      /** Sizes that the sheets are sold in. */
      readonly sheets: readonly components["schemas"]["SheetFormatInput"][];
      /** Thicknesses that the core is sold in. */
      readonly thicknessesMm: readonly number[];
      /** Mixed resin that both faces take before bedding. */
      readonly wetOutLPerM2: components["schemas"]["DatumInput"];
    };
    readonly CoreSheetLayout: {
      /**
       * Plain or scored sheet.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** False for a piece that the customer has. */
      readonly isBought: boolean;
      /** Name of the sheet. */
      readonly label: components["schemas"]["Text"];
      /** Length of the sheet. */
      readonly lengthMm: number;
      /** Remainders worth keeping. */
      readonly offcutsKept: readonly (readonly (readonly number[])[])[];
      /** Pieces on the sheet. */
      readonly placed: readonly components["schemas"]["CoreSheetLayoutPlaced"][];
      /** Thickness of the sheet. */
      readonly thicknessMm: number;
      /** Fields of CoreSheetLayout in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreSheetLayoutUs"];
      /** How much of this sheet is used. */
      readonly utilisation: number;
      /** Width of the sheet. */
      readonly widthMm: number;
    };
    readonly CoreSheetLayoutPlaced: {
      /** Place in the order of cutting. */
      readonly cutOrder: number;
      /** Where its holes lie on the sheet. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Where its edge lies on the sheet. */
      readonly outline: readonly (readonly number[])[];
      /** Label of the piece. */
      readonly piece: components["schemas"]["Text"];
      /** How far it is turned. */
      readonly turnDeg: number;
    };
    /** Fields of CoreSheetLayout in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreSheetLayoutUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Filled solid from skin to skin, before the core goes in. */
    readonly CoreSolidFill: {
      /** Area under the filling. */
      readonly areaM2: number;
      /** Free places in the filling. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Whether the filling goes under skin that stays. */
      readonly isUnderLip: boolean;
      /**
       * Paste, laminate or a strip of dense core.
       * @enum {string}
       */
      readonly kind: "high-density-strip" | "paste" | "solid-laminate";
      /** As paste: how many lifts, for its heat. */
      readonly lifts: number;
      /** Opening that the filling lies in. */
      readonly opening: components["schemas"]["Text"];
      /** Edge of it in the deck plane, points [xMm, yMm] in order. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of CoreSolidFill in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoreSolidFillUs"];
      /** How much filling. */
      readonly volumeL: number;
      /** Width of the filled strip. */
      readonly widthMm: number;
    };
    /** Fields of CoreSolidFill in US customary units, when `Accept-Units: us` was sent. */
    readonly CoreSolidFillUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly volumeL?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    readonly CoreSupportInput: {
      /**
       * Where the support starts.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly from: readonly number[];
      /**
       * Where the support ends.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly to: readonly number[];
    };
    /** Core. */
    readonly CoreValuesInput: {
      /** Through the thickness. */
      readonly compressiveModulusMPa: number;
      /** Through the thickness. */
      readonly compressiveStrengthMPa: number;
      /**
       * What the core is made of; what is known of its strength goes by that.
       * @enum {string}
       */
      readonly coreType: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
      /** Density. */
      readonly densityKgPerM3?: number;
      /** Absent: the core adds nothing in its plane. */
      readonly inPlaneModulusMPa?: number;
      /** Shear modulus. */
      readonly shearModulusMPa: number;
      /** Shear strength. */
      readonly shearStrengthMPa: number;
      /**
       * Thickness of the core with these values.
       * @example 1/2 in
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** One labelled piece of new core, in deck coordinates. */
    readonly CoringCorePiece: {
      /** Area of the piece without its holes. */
      readonly areaM2: number;
      /** What is bedded in one go; counted from 1 in each layer of an opening. */
      readonly bay: number;
      /** Place in the order of bedding over all openings, from 1. */
      readonly beddingOrder: number;
      /** Drill for the bleed holes; absent when there are none. */
      readonly bleedDiameterMm?: number;
      /** Where to drill holes that let air and resin out. */
      readonly bleedHoles: readonly (readonly number[])[];
      /** How it gets in; absent when no way was found, and the plan says so. */
      readonly entry?: components["schemas"]["Entry"];
      /**
       * Plain or scored, as the piece is cut.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** Only for core that has a grain in its plane. */
      readonly grainDeg?: number;
      /** Openings within the piece, for what stays. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Whether the piece reaches under the sound skin that stays. */
      readonly isUnderLip: boolean;
      /** The opening's letter and the bedding order in it. */
      readonly label: components["schemas"]["Text"];
      /** Layer of the stack that the piece belongs to; 1 lies on the inner skin. */
      readonly layer: number;
      /** Opening that the piece lies in. */
      readonly opening: components["schemas"]["Text"];
      /** Edge of the piece in the deck plane. */
      readonly outline: readonly (readonly number[])[];
      /** Thickness of the sheet the piece is cut from. */
      readonly thicknessMm: number;
      /** Fields of CoringCorePiece in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoringCorePieceUs"];
    };
    /** Fields of CoringCorePiece in US customary units, when `Accept-Units: us` was sent. */
    readonly CoringCorePieceUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly bleedDiameterMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    readonly CostingMissing: {
      /**
       * Plain or scored, for core.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Code of the material in the catalogue. */
      readonly material: components["schemas"]["Text"];
      /** Ids of the needs that stay open. */
      readonly needs: readonly components["schemas"]["Text"][];
      /** Code of a hardener, where the material is a resin system and its hardener is meant. */
      readonly part?: components["schemas"]["Text"];
      /** How much is needed that nothing covers. */
      readonly quantity: number;
      /**
       * `no-hardener`: the resin is there and what cures it is not; `below-minimum-order`: what is in stock does not reach it.
       * @enum {string}
       */
      readonly reason: "all-excluded" | "below-minimum-order" | "no-hardener" | "no-pack" | "not-enough" | "not-found-in-time" | "other-unit";
      /** Width of the roll, for fabrics. */
      readonly rollWidthMm?: number;
      /** Size of the sheet, where it matters. */
      readonly sheet?: components["schemas"]["CostingMissingSheet"];
      /** Thickness of the sheet, for core. */
      readonly thicknessMm?: number;
      /** Unit of the uncovered quantity. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of CostingMissing in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CostingMissingUs"];
    };
    /** Size of the sheet, where it matters. */
    readonly CostingMissingSheet: {
      /** Length of the sheet that is meant. */
      readonly lengthMm: number;
      /** Fields of CostingMissing in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CostingMissingSheetUs"];
      /** Width of the sheet that is meant. */
      readonly widthMm: number;
    };
    /** Fields of CostingMissing in US customary units, when `Accept-Units: us` was sent. */
    readonly CostingMissingSheetUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Fields of CostingMissing in US customary units, when `Accept-Units: us` was sent. */
    readonly CostingMissingUs: {
      readonly quantity?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Amount at the ends of its spread. */
    readonly CostingMoneyRange: {
      /** Amount at the high end. */
      readonly high: components["schemas"]["MoneyJson"];
      /** Likely amount. */
      readonly likely: components["schemas"]["MoneyJson"];
      /** Amount at the low end. */
      readonly low: components["schemas"]["MoneyJson"];
    };
    /** A priced line: its quantity, rate and rounded amount. */
    readonly CostLine: {
      /** Rounded amount of the line. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** How the amount follows the extent that is found. */
      readonly atExtents: readonly components["schemas"]["AtExtent"][];
      /**
       * Who bears the cause of the line.
       * @enum {string}
       */
      readonly causeClass: "maintenance" | "pre-existing" | "sudden";
      /** Code of the priced line. */
      readonly code: components["schemas"]["Text"];
      /** Wear of the old part that the line replaces. */
      readonly depreciation?: components["schemas"]["LineDepreciation"];
      /** Of packs only: how they are charged, and without tax what buying them whole would come to. */
      readonly goods?: components["schemas"]["CostLineGoods"];
      /** True where packs were priced and the rate is their price over their content. */
      readonly isAverageRate: boolean;
      /** What to know about the line. */
      readonly note?: components["schemas"]["Text"];
      /** Packs that the line buys. */
      readonly packs: readonly components["schemas"]["LinePack"][];
      /**
       * Whether the line is goods or work.
       * @enum {string}
       */
      readonly partOrLabour: "labour" | "part";
      /** Quantity needed and quantity bought. */
      readonly quantity: components["schemas"]["LineQuantity"];
      /** Amount at the ends of its spread. */
      readonly range: components["schemas"]["CostingMoneyRange"];
      /** Whether the rate holds tax already. */
      readonly rateIncludesTax: boolean;
      /**
       * Whether the line counts, or only shows what would be extra.
       * @enum {string}
       */
      readonly scope: "in" | "out";
      /**
       * Section that the line is summed in.
       * @enum {string}
       */
      readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
      /** Ends of the spread as factors of the amount. */
      readonly spread: components["schemas"]["CostLineSpread"];
      /** Stage of the work the line belongs to. */
      readonly stage?: components["schemas"]["Text"];
      /** Tax group of the line. */
      readonly taxGroup: components["schemas"]["Text"];
      /** What the line pays for. */
      readonly title: components["schemas"]["Text"];
      /** Unit of the line's quantity. */
      readonly unit: components["schemas"]["Text"];
      /** Price of one unit. */
      readonly unitRate: components["schemas"]["MoneyJson"];
      /** Derivation of the quantity. */
      readonly why: components["schemas"]["Figure"];
    };
    /** Of packs only: how they are charged, and without tax what buying them whole would come to. */
    readonly CostLineGoods: {
      /**
       * Whether whole packs or what is used is billed.
       * @enum {string}
       */
      readonly billedBy: "use" | "wear" | "whole-packs";
      /** What the packs cost that the yard must buy. */
      readonly bought: components["schemas"]["MoneyJson"];
    };
    readonly CostLineInput: {
      /** What planning it again at other extents gave, the extents rising; straight between them and the recorded one. Absent: the same whatever is found. */
      readonly atExtents?: readonly components["schemas"]["AtExtentInput"][];
      /**
       * What an insurer asks: sudden, there before, or upkeep.
       * @enum {string}
       */
      readonly causeClass: "sudden" | "pre-existing" | "maintenance";
      /** Unique among the lines; a revision is compared by it. */
      readonly code: string;
      /** Wear of the part, shown beside the amount, which it does not change. */
      readonly depreciation?: components["schemas"]["DepreciationInput"];
      /** Quantity without waste, in the unit of the line. */
      readonly netQuantity: number;
      /** Note beside the line. */
      readonly note?: string;
      /** Packs that are bought, priced instead of a rate. */
      readonly packs?: readonly components["schemas"]["LinePackInput"][];
      /**
       * Only parts depreciate; hire, yard charges and disposal count as labour.
       * @enum {string}
       */
      readonly partOrLabour: "part" | "labour";
      /** Whole packs; charged instead of the required quantity. */
      readonly purchaseQuantity?: number;
      /** The rate holds the tax of its group; absent: false. */
      readonly rateIncludesTax?: boolean;
      /**
       * Out: listed so that nobody can say it was forgotten, not summed. Absent: in.
       * @enum {string}
       */
      readonly scope?: "in" | "out";
      /**
       * Where the line stands in the roll-up.
       * @enum {string}
       */
      readonly section: "labour" | "materials" | "consumables" | "safety" | "hire" | "yard" | "subcontract" | "disposal" | "freight";
      /** Least and most of the amount, as factors of it, at the extent recorded. */
      readonly spread?: components["schemas"]["LineSpreadInput"];
      /** Step of the job. */
      readonly stage?: string;
      /** Code of one of taxGroups. */
      readonly taxGroup: string;
      /** What the line says. */
      readonly title: string;
      /**
       * Unit of the quantities and of the rate.
       * @enum {string}
       */
      readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
      /** Exact price per unit; absent where packs are priced. */
      readonly unitRate?: string;
      /** Waste on top of the net quantity, as a fraction. */
      readonly wasteFraction?: number;
    };
    /** Ends of the spread as factors of the amount. */
    readonly CostLineSpread: {
      /** High factor. */
      readonly high: number;
      /** Low factor. */
      readonly low: number;
    };
    /** Spread of the price; absent when it was not asked for. */
    readonly CostRisk: {
      /** Spreads that nobody stated. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** P80 minus the point, none when the point already covers it. */
      readonly contingency: components["schemas"]["MoneyJson"];
      /** Currency that the spread is in. */
      readonly currency: components["schemas"]["Currency"];
      /** Standard deviation of the drawn prices. */
      readonly deviation: components["schemas"]["MoneyJson"];
      /** Lines and facts that move the price most. */
      readonly drivers: readonly components["schemas"]["Driver"][];
      /** Extent found over extent recorded, as three points. */
      readonly extent: components["schemas"]["ThreePoint"];
      /** Drawn prices in bars. */
      readonly histogram: readonly components["schemas"]["HistogramBar"][];
      /** What opening up first would be worth. */
      readonly information: components["schemas"]["InformationValue"];
      /** Of the variance, by drivers acting together. */
      readonly jointShare: number;
      /** Mean of the drawn prices. */
      readonly mean: components["schemas"]["MoneyJson"];
      /** Drawn price that one in ten stays below. */
      readonly p10: components["schemas"]["MoneyJson"];
      /** Drawn price that half stay below. */
      readonly p50: components["schemas"]["MoneyJson"];
      /** Drawn price that eight in ten stay below. */
      readonly p80: components["schemas"]["MoneyJson"];
      /** Drawn price that nine in ten stay below. */
      readonly p90: components["schemas"]["MoneyJson"];
      /** The same as a share of the price. */
      readonly p90RelativeError: number;
      /** How uncertain that last price is from drawing. */
      readonly p90StandardError: components["schemas"]["MoneyJson"];
      /** Price at the likely quantities. */
      readonly point: components["schemas"]["MoneyJson"];
      /** Jobs that were drawn. */
      readonly samples: number;
      /** Seed of the draw; the same seed gives the same cents. */
      readonly seed: number;
      /**
       * How each line was drawn between its ends.
       * @enum {string}
       */
      readonly shape: "beta" | "triangular";
      /** How likely the job costs no more than the point. */
      readonly shareAtPoint: number;
    };
    /** Lines, loadings and taxes. */
    readonly CostRollUp: {
      /** Terms of the price that nobody stated. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** The price parted by who bears its cause. */
      readonly byCause: readonly components["schemas"]["CostRollUpByCause"][];
      /** Cause and part or labour crossed, as a claim splits them. */
      readonly byCauseAndPart: readonly components["schemas"]["CostRollUpByCauseAndPart"][];
      /** The price parted into goods and work. */
      readonly byPartOrLabour: readonly components["schemas"]["CostRollUpByPartOrLabour"][];
      /** Reserve for what may be found. */
      readonly contingency: components["schemas"]["MoneyJson"];
      /** Currency of the whole roll-up (ISO 4217). */
      readonly currency: components["schemas"]["Currency"];
      /** Wear of old parts that new ones replace. */
      readonly depreciation: components["schemas"]["CostRollUpDepreciation"];
      /** Sum of all lines in scope. */
      readonly direct: components["schemas"]["MoneyJson"];
      /** Price with tax. */
      readonly gross: components["schemas"]["MoneyJson"];
      /** Priced lines in the order of their sections. */
      readonly lines: readonly components["schemas"]["CostLine"][];
      /** Price before tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /** Named and priced, not summed. */
      readonly outOfScope: readonly components["schemas"]["CostLine"][];
      /** Overhead on the direct cost. */
      readonly overhead: components["schemas"]["MoneyJson"];
      /** Profit on direct cost and overhead. */
      readonly profit: components["schemas"]["MoneyJson"];
      /** Sums for work that is not yet known. */
      readonly provisional: components["schemas"]["MoneyJson"];
      /** Sum of each section. */
      readonly sections: readonly components["schemas"]["SectionTotal"][];
      /** All taxes together. */
      readonly tax: components["schemas"]["MoneyJson"];
      /** Each tax with what it is on. */
      readonly taxes: readonly components["schemas"]["CostRollUpTaxes"][];
      /** Percentages and rounding that the price is made with. */
      readonly terms: components["schemas"]["CostRollUpTerms"];
    };
    readonly CostRollUpByCause: {
      /**
       * Cause that the share is put down to.
       * @enum {string}
       */
      readonly causeClass: "maintenance" | "pre-existing" | "sudden";
      /** Lines of this share. */
      readonly direct: components["schemas"]["MoneyJson"];
      /** This share with tax. */
      readonly gross: components["schemas"]["MoneyJson"];
      /** Overhead, profit and reserves of this share. */
      readonly loadings: components["schemas"]["MoneyJson"];
      /** This share before tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /** Tax on this share. */
      readonly tax: components["schemas"]["MoneyJson"];
    };
    readonly CostRollUpByCauseAndPart: {
      /**
       * Cause of this cell of the table.
       * @enum {string}
       */
      readonly causeClass: "maintenance" | "pre-existing" | "sudden";
      /** Lines of this share. */
      readonly direct: components["schemas"]["MoneyJson"];
      /** This share with tax. */
      readonly gross: components["schemas"]["MoneyJson"];
      /** Overhead, profit and reserves of this share. */
      readonly loadings: components["schemas"]["MoneyJson"];
      /** This share before tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /**
       * Goods or work in this cell of the table.
       * @enum {string}
       */
      readonly partOrLabour: "labour" | "part";
      /** Tax on this share. */
      readonly tax: components["schemas"]["MoneyJson"];
    };
    readonly CostRollUpByPartOrLabour: {
      /** Lines of this share. */
      readonly direct: components["schemas"]["MoneyJson"];
      /** This share with tax. */
      readonly gross: components["schemas"]["MoneyJson"];
      /** Overhead, profit and reserves of this share. */
      readonly loadings: components["schemas"]["MoneyJson"];
      /** This share before tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /**
       * Whether the share is goods or work.
       * @enum {string}
       */
      readonly partOrLabour: "labour" | "part";
      /** Tax on this share. */
      readonly tax: components["schemas"]["MoneyJson"];
    };
    /** Wear of old parts that new ones replace. */
    readonly CostRollUpDepreciation: {
      /** Wear taken off. */
      readonly depreciation: components["schemas"]["MoneyJson"];
      /** Price of parts that wear counts on. */
      readonly parts: components["schemas"]["MoneyJson"];
      /** Parts less wear. */
      readonly remaining: components["schemas"]["MoneyJson"];
    };
    readonly CostRollupRequest: {
      /** Contingency, as an amount. */
      readonly contingencyAmount?: string;
      /** Absent, with no contingencyAmount: P80 less the point where risk is asked for, else none. */
      readonly contingencyPercent?: string;
      /**
       * Every price is in it; nothing is converted. A code of ISO 4217.
       * @example EUR
       * @enum {string}
       */
      readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
      /** What the job holds. */
      readonly lines: readonly components["schemas"]["CostLineInput"][];
      /** Overhead, as a percentage of the sum of the lines. */
      readonly overheadPercent?: string;
      /** Profit, as a percentage of lines and overhead. */
      readonly profitPercent?: string;
      /** How the range is worked out. */
      readonly risk?: components["schemas"]["RiskTermsInput"];
      /**
       * How each amount is rounded; absent: half-away-from-zero.
       * @enum {string}
       */
      readonly rounding?: "half-away-from-zero" | "half-to-even" | "floor" | "ceiling";
      /** Taxes that lines may bear. */
      readonly taxGroups: readonly components["schemas"]["LineTaxGroupInput"][];
    };
    readonly CostRollUpTaxes: {
      /** Code of the tax group. */
      readonly code: components["schemas"]["Text"];
      /** Name of the tax. */
      readonly name: components["schemas"]["Text"];
      /** Rate in percent, as exact decimal text. */
      readonly percent: components["schemas"]["Decimal"];
      /** Tax on that amount. */
      readonly tax: components["schemas"]["MoneyJson"];
      /** Amount that the tax is on. */
      readonly taxable: components["schemas"]["MoneyJson"];
    };
    /** Percentages and rounding that the price is made with. */
    readonly CostRollUpTerms: {
      /** Reserve in percent; absent when it is worked out from the risk. */
      readonly contingencyPercent?: components["schemas"]["Text"];
      /** Overhead in percent of direct cost. */
      readonly overheadPercent: components["schemas"]["Text"];
      /** Profit in percent of cost with overhead. */
      readonly profitPercent: components["schemas"]["Text"];
      /**
       * How amounts are rounded.
       * @enum {string}
       */
      readonly rounding: "ceiling" | "floor" | "half-away-from-zero" | "half-to-even";
    };
    readonly CostSection: {
      /** Sum of its lines. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Code of the section. */
      readonly code: components["schemas"]["Text"];
      /** Heading of the section. */
      readonly title: components["schemas"]["Text"];
    };
    readonly CountedPackInput: {
      /**
       * Format: int32
       * Whole packs that can be sold now.
       */
      readonly packs: number;
      /** SKU of a pack of the list in the current edition. */
      readonly sku: string;
    };
    readonly CountedPacksInput: {
      /** Counts that take the place of earlier ones; what was counted of other packs stays. */
      readonly items: readonly components["schemas"]["CountedPackInput"][];
    };
    /** How one demand is met. */
    readonly Coverage: {
      /** Part that bought packs and stock cover. */
      readonly covered: number;
      /**
       * Whether plain or scored sheet is needed.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Part that comes from stock the caller has already. */
      readonly fromOnHand: number;
      /** Code of the material that is needed. */
      readonly material: components["schemas"]["Text"];
      /** The needs that these packs serve together. */
      readonly needs: readonly components["schemas"]["CoverageNeeds"][];
      /** Code of a hardener, where the material is a resin system and its hardener is meant. */
      readonly part?: components["schemas"]["Text"];
      /** What the needs ask for in all. */
      readonly required: number;
      /** Width of roll that is needed. */
      readonly rollWidthMm?: number;
      /** Size of sheet that is needed. */
      readonly sheet?: components["schemas"]["CoverageSheet"];
      /** Part that stays uncovered; 0 when all is covered. */
      readonly short: number;
      /** Thickness that is needed, for core. */
      readonly thicknessMm?: number;
      /** Unit of the quantities covered. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Coverage in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoverageUs"];
    };
    readonly CoverageNeeds: {
      /** Estimate that the need comes from, in a common order. */
      readonly estimate?: components["schemas"]["Text"];
      /** Id of one need. */
      readonly id: components["schemas"]["Text"];
      /** What this need asks for. */
      readonly requiredQuantity: number;
    };
    /** Size of sheet that is needed. */
    readonly CoverageSheet: {
      /** Length of the needed sheet. */
      readonly lengthMm: number;
      /** Fields of Coverage in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CoverageSheetUs"];
      /** Width of the needed sheet. */
      readonly widthMm: number;
    };
    /** Fields of Coverage in US customary units, when `Accept-Units: us` was sent. */
    readonly CoverageSheetUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Fields of Coverage in US customary units, when `Accept-Units: us` was sent. */
    readonly CoverageUs: {
      readonly covered?: components["schemas"]["UsText"];
      readonly fromOnHand?: components["schemas"]["UsText"];
      readonly required?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly short?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** The craft. */
    readonly Craft: {
      /**
       * Whether she sails or is driven by motor; the pressure of the yardstick differs.
       * @enum {string}
       */
      readonly craftType?: "motor" | "sail";
      /**
       * Design category of the craft, from A (ocean) to D (sheltered waters).
       * @enum {string}
       */
      readonly designCategory?: "A" | "B" | "C" | "D";
      /** Length of the hull. */
      readonly lengthHullM?: number;
      /** Length of the waterline. */
      readonly lengthWaterlineM?: number;
      /** Loaded mass. */
      readonly massLoadedKg?: number;
      /** Year of building. */
      readonly yearBuilt?: number;
    };
    /** Craft. */
    readonly CraftForPanelInput: {
      /**
       * Whether she sails or is driven by motor; the pressure of the yardstick differs.
       * @enum {string}
       */
      readonly craftType: "sail" | "motor";
      /**
       * Design category of the craft, from A (ocean) to D (sheltered waters).
       * @enum {string}
       */
      readonly designCategory: "A" | "B" | "C" | "D";
      /** Dynamic load factor. Absent: 3 (the least factor the yardstick allows). */
      readonly dynamicLoadFactor?: number;
      /** Length of the hull. */
      readonly lengthHullM?: number;
      /** Length of the waterline. */
      readonly lengthWaterlineM: number;
      /** Mass of the craft with crew, stores and full tanks. */
      readonly massLoadedKg: components["schemas"]["MassInput"];
      /** Place of the panel from aft over the waterline; 1 is the most severe. Absent: 1 (the most severe place). */
      readonly shareOfWaterline?: number;
    };
    /** The craft. */
    readonly CraftInput: {
      /**
       * Whether she sails or is driven by motor; the pressure of the yardstick differs.
       * @enum {string}
       */
      readonly craftType?: "sail" | "motor";
      /**
       * Design category of the craft, from A (ocean) to D (sheltered waters).
       * @enum {string}
       */
      readonly designCategory?: "A" | "B" | "C" | "D";
      /** Length of the hull. */
      readonly lengthHullM?: number;
      /** Length of the waterline. */
      readonly lengthWaterlineM?: number;
      /** Loaded mass. */
      readonly massLoadedKg?: components["schemas"]["MassInput"];
      /**
       * Format: int32
       * Year of building.
       */
      readonly yearBuilt?: number;
    };
    /** The crew. */
    readonly Crew: {
      /** The range of days counts the days on which it does not. Absent: 0.8 (judged: a shop of its own comes every day, a yard with other boats takes half as long again, and one owner told of nearly twice what he had planned; state 1 for a crew that does nothing else). */
      readonly attendanceFraction?: number;
      /** Hours in a day that go into the job, a head. Absent: 5.6 h (so much of a working day goes into one job on the boat: mean of 24 logged days). */
      readonly hoursPerDay?: number;
      /**
       * All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.
       * @enum {string}
       */
      readonly labour?: "mixed" | "owner" | "yard";
      /** People at work. Absent: 2 (bedding core and fastening through the deck take two). */
      readonly people?: number;
      /**
       * Who does the work. Absent: professional (the hours of the catalogue are for a skilled hand).
       * @enum {string}
       */
      readonly skill?: "owner" | "professional";
      /** The day on which work may start. */
      readonly startDate?: components["schemas"]["Text"];
      /** Days of the week on which the crew works. */
      readonly workingDays?: readonly ("fri" | "mon" | "sat" | "sun" | "thu" | "tue" | "wed")[];
    };
    /** The crew. */
    readonly CrewInput: {
      /** The range of days counts the days on which it does not. Absent: 0.8 (judged: a shop of its own comes every day, a yard with other boats takes half as long again, and one owner told of nearly twice what he had planned; state 1 for a crew that does nothing else). */
      readonly attendanceFraction?: number;
      /** Hours in a day that go into the job, a head. Absent: 5.6 h (so much of a working day goes into one job on the boat: mean of 24 logged days). */
      readonly hoursPerDay?: number;
      /**
       * All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.
       * @enum {string}
       */
      readonly labour?: "yard" | "owner" | "mixed";
      /**
       * Format: int32
       * People at work. Absent: 2 (bedding core and fastening through the deck take two).
       */
      readonly people?: number;
      /**
       * Who does the work. Absent: professional (the hours of the catalogue are for a skilled hand).
       * @enum {string}
       */
      readonly skill?: "professional" | "owner";
      /**
       * Format: date
       * The day on which work may start.
       */
      readonly startDate?: string;
      /** Days of the week on which the crew works. */
      readonly workingDays?: readonly ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
    };
    /** Criteria. */
    readonly CriteriaInput: {
      /** Usable share of the compressive strength of a core. Absent: 0.5 (half, as for the other strengths; no published share was found). */
      readonly coreCrushShare?: number;
      /** Usable share of a core shear strength; absent: by kind of core. */
      readonly coreShearShare?: number;
      /** Usable share of a skin strength. Absent: 0.5 (the small-craft yardstick; class rules take 0.28 to 0.5). */
      readonly skinShare?: number;
      /** Short span over deflection. Absent: 100 (a class rule for sandwich decks; the small-craft yardstick stands for about 59). */
      readonly spanOverDeflection?: number;
    };
    /** RFC 4180 rows under one row of headings. */
    readonly CsvText: string;
    readonly CureAndWeather: {
      /** When each mix can be worked on. */
      readonly cure: components["schemas"]["CurePlan"];
      /** When the weather lets each step be done. */
      readonly weather: components["schemas"]["WeatherPlan"];
    };
    readonly CureMilestones: {
      /**
       * Whether the warmth was stated, forecast, or first one and then the other.
       * @enum {string}
       */
      readonly basis: "forecast" | "forecast-then-stated" | "stated";
      /** Hours until it is fully hard. */
      readonly fullCureH?: number;
      /** Hours until it gels. */
      readonly gelH?: number;
      /** What to heed while it cures. */
      readonly note?: components["schemas"]["Text"];
      /** Hours until a new layer needs sanding first. */
      readonly recoatShutsH?: number;
      /** Hours until the pressing may come off. */
      readonly releaseH?: number;
      /** Hours until it can be sanded. */
      readonly sandableH?: number;
      /** When the last of the resin goes on; only where a forecast is followed. */
      readonly startAt?: components["schemas"]["Text"];
      /** Step whose mix cures. */
      readonly step: components["schemas"]["Text"];
      /** Steady as stated, or the mean of the deck until full cure. */
      readonly temperatureC: number;
      /** Fields of CureMilestones in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CureMilestonesUs"];
    };
    /** Fields of CureMilestones in US customary units, when `Accept-Units: us` was sent. */
    readonly CureMilestonesUs: {
      readonly temperatureC?: components["schemas"]["UsText"];
    };
    /** When each mix can be worked on. */
    readonly CurePlan: {
      /** How strongly warmth hastens the cure. */
      readonly activationEnergy: components["schemas"]["CurePlanActivationEnergy"];
      /** Figures of the cure that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Warmth of the deck while it cures. */
      readonly deck: components["schemas"]["CurePlanDeck"];
      /** Code of the hardener that cures it. */
      readonly hardener: components["schemas"]["Text"];
      /** When the mix gels, can be sanded, is hard. */
      readonly milestones: readonly components["schemas"]["Milestone"][];
      /** What the crew should heed about the cure. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Temperature that the data sheet's times hold for. */
      readonly referenceC: number;
      /** Code of the resin that cures. */
      readonly resin: components["schemas"]["Text"];
      /** Step that the plan is for, when one was named. */
      readonly step?: components["schemas"]["Text"];
      /** Hours, until full cure or the end, in which the deck is too cold and nothing counts. */
      readonly stoppedH: number;
      /** Temperature below which this mix does not cure. */
      readonly stopsBelowC: number;
      /** Fields of CurePlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CurePlanUs"];
    };
    /** How strongly warmth hastens the cure. */
    readonly CurePlanActivationEnergy: {
      /** What the value leans on. */
      readonly basis: components["schemas"]["Text"];
      /** High end of the spread, in kJ/mol. */
      readonly high: number;
      /** Likely value, in kJ/mol. */
      readonly likely: number;
      /** Low end of the spread, in kJ/mol. */
      readonly low: number;
    };
    /** Warmth of the deck while it cures. */
    readonly CurePlanDeck: {
      /** Lowest temperature of the deck. */
      readonly coldestC: number;
      /** Mean temperature of the deck. */
      readonly meanC: number;
      /** Hours that these three are taken over. */
      readonly overH: number;
      /** Fields of CurePlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CurePlanDeckUs"];
      /** Highest temperature of the deck. */
      readonly warmestC: number;
    };
    /** Fields of CurePlan in US customary units, when `Accept-Units: us` was sent. */
    readonly CurePlanDeckUs: {
      readonly coldestC?: components["schemas"]["UsText"];
      readonly meanC?: components["schemas"]["UsText"];
      readonly warmestC?: components["schemas"]["UsText"];
    };
    readonly CurePlanRequest: {
      /** Moisture of the core. */
      readonly coreMoisturePercent?: number;
      /**
       * Code of the hardener that is mixed in; it sets how fast all cures.
       * @example medium
       */
      readonly hardener: string;
      /**
       * Code of the resin system of the catalogue that is used.
       * @example resin-epoxy-5to1
       */
      readonly resin: string;
      /**
       * Shelter over the work.
       * @enum {string}
       */
      readonly shelter: "shed" | "tent" | "open";
      /** RFC 3339 with offset; each milestone then has its moment. */
      readonly startAt?: string;
      /** Hour of the day at which the resin is mixed, where no moment is given. Absent: 9 h (resin is mixed in the morning). */
      readonly startHour?: number;
      /** Step that is cured. */
      readonly step?: string;
      /** Steps that wait for weather; absent: bonding. */
      readonly steps?: readonly components["schemas"]["WeatherStepInput"][];
      /** Temperature. */
      readonly temperature: components["schemas"]["CureTemperatureInput"];
      /** Warmth of the deck above the air. */
      readonly warmth?: components["schemas"]["DeckWarmthInput"];
    };
    /** Fields of CurePlan in US customary units, when `Accept-Units: us` was sent. */
    readonly CurePlanUs: {
      readonly referenceC?: components["schemas"]["UsText"];
      readonly stopsBelowC?: components["schemas"]["UsText"];
    };
    /** Temperature. */
    readonly CureTemperatureInput: {
      /** Temperature of the deck by day, where it swings between day and night. */
      readonly dayC?: components["schemas"]["TemperatureInput"];
      /** Weather of the place hour by hour; it says when the weather lets work be done. */
      readonly forecast?: components["schemas"]["ForecastInput"];
      /** Temperature of the deck by night, where it swings between day and night. */
      readonly nightC?: components["schemas"]["TemperatureInput"];
      /** Steady; or dayC with nightC; or a forecast. */
      readonly temperatureC?: components["schemas"]["TemperatureInput"];
    };
    /** ISO 4217 code of a currency. */
    readonly Currency: string;
    readonly CustomOperationInput: {
      /** Codes of operations that come before it. */
      readonly after: readonly string[];
      /** Codes of operations that wait for it. */
      readonly before?: readonly string[];
      /**
       * Code of the operation.
       * @example deliver-core
       */
      readonly code: string;
      /**
       * What the weather must be for the operation.
       * @enum {string}
       */
      readonly gate?: "none" | "dry-deck" | "resin" | "coating";
      /** Man-hours. */
      readonly hours: components["schemas"]["ThreePointInput"];
      /** Whether it is a hold point. */
      readonly isHoldPoint?: boolean;
      /** Title of the operation. */
      readonly title: string;
      /** Hours that pass before its successors may start. */
      readonly waitH?: components["schemas"]["ThreePointInput"];
    };
    /** Where to cut, as one decision between opening now and coming back. */
    readonly CutChoice: {
      /**
       * Whether the record names the margin or the least expected work chose it.
       * @enum {string}
       */
      readonly chosenBy: "expected-hours" | "record";
      /** Bad core that this leaves, as the map expects it. */
      readonly expectedLeftM2: number;
      /** What opening nothing would come to. */
      readonly hoursWithoutOpening: number;
      /** Hours expected for bad core left behind. */
      readonly leavingHours: number;
      /** Hours of the openings, and those of leaving what is left. */
      readonly openingHours: number;
      /** Core this likely to be bad, or more, is opened. */
      readonly probability: number;
      /** Fields of CutChoice in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CutChoiceUs"];
    };
    /** Fields of CutChoice in US customary units, when `Accept-Units: us` was sent. */
    readonly CutChoiceUs: {
      readonly expectedLeftM2?: components["schemas"]["UsText"];
    };
    readonly CutCoreSheet: {
      /** Parts of the sheet that cannot be used. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** A sheet that is bought, or a piece that the customer has. */
      readonly isBought: boolean;
      /** Name of the sheet on the cutting plan. */
      readonly label: components["schemas"]["Text"];
      /** Length of the bought sheet. */
      readonly lengthMm: number;
      /** Which of the alike sheets, from 1. */
      readonly number: number;
      /** The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
      readonly offcuts: readonly components["schemas"]["Offcut"][];
      /** Rectangles no narrower than what is worth keeping. */
      readonly offcutsKept: readonly components["schemas"]["Offcut"][];
      /** Edge of the sheet. */
      readonly outline: readonly (readonly number[])[];
      /** Area of the pieces cut from it. */
      readonly pieceAreaM2: number;
      /** Where each piece lies on the sheet. */
      readonly placements: readonly components["schemas"]["Placement"][];
      /** Area of the sheet. */
      readonly sheetAreaM2: number;
      /** Which kind of stock the sheet is. */
      readonly stockId: components["schemas"]["Text"];
      /** Fields of CutCoreSheet in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CutCoreSheetUs"];
      /** Where the area of the sheet goes. */
      readonly use: components["schemas"]["SheetUse"];
      /** Share of the sheet that becomes pieces. */
      readonly utilisation: number;
      /** Width of the bought sheet. */
      readonly widthMm: number;
    };
    /** Fields of CutCoreSheet in US customary units, when `Accept-Units: us` was sent. */
    readonly CutCoreSheetUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly pieceAreaM2?: components["schemas"]["UsText"];
      readonly sheetAreaM2?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    readonly CutSheet: {
      /** Parts of the sheet that cannot be used. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Which of the alike sheets, from 1. */
      readonly number: number;
      /** The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
      readonly offcuts: readonly components["schemas"]["Offcut"][];
      /** Edge of the sheet. */
      readonly outline: readonly (readonly number[])[];
      /** Area of the pieces cut from it. */
      readonly pieceAreaM2: number;
      /** Where each piece lies on the sheet. */
      readonly placements: readonly components["schemas"]["Placement"][];
      /** Area of the sheet. */
      readonly sheetAreaM2: number;
      /** Which kind of stock the sheet is. */
      readonly stockId: components["schemas"]["Text"];
      /** Fields of CutSheet in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["CutSheetUs"];
      /** Share of the sheet that becomes pieces. */
      readonly utilisation: number;
    };
    /** Fields of CutSheet in US customary units, when `Accept-Units: us` was sent. */
    readonly CutSheetUs: {
      readonly pieceAreaM2?: components["schemas"]["UsText"];
      readonly sheetAreaM2?: components["schemas"]["UsText"];
    };
    readonly CuttingPlan: {
      /** Layout on a roll, where a roll was asked for. */
      readonly onRoll?: components["schemas"]["StripLayout"];
      /** Layout on sheets, where sheets were asked for. */
      readonly onSheets?: components["schemas"]["SheetLayout"];
      /** What the answer depends on besides the pieces and the stock; the same settings give the same answer. */
      readonly seed: number;
      /** Seconds after which the search is ended, finished or not. */
      readonly timeLimitS: number;
      /** Work that the search was given; more may find a better layout. */
      readonly workUnits: number;
    };
    readonly CuttingPlanRequest: {
      /** Strip along every edge of the stock that is not used. */
      readonly edgeTrimMm: components["schemas"]["LengthInput"];
      /** Width that the blade takes. */
      readonly kerfMm: components["schemas"]["LengthInput"];
      /** What is to be cut. */
      readonly pieces: readonly components["schemas"]["NestPieceInput"][];
      /** A roll that plies come off: x runs along it. */
      readonly roll?: components["schemas"]["RollInput"];
      /**
       * Format: int64
       * The same seed gives the same layout. Absent: 1 (any seed will do, as long as it is the same).
       */
      readonly seed?: number;
      /** Sheets and offcuts; give these or a roll. */
      readonly stock?: readonly components["schemas"]["StockSheetInput"][];
      /** After this time the best layout so far is the answer. Absent: 20 s (nobody waits longer for a drawing). */
      readonly timeLimitS?: number;
      /** Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000 (a good layout of a deck's worth of pieces takes a fraction of it). */
      readonly workUnits?: number;
    };
    /** How often work is repeated that waits in between. */
    readonly CyclesInput: {
      /**
       * Format: int32
       * Each waits until the one before holds. Absent: 1 (core is bedded in one turn unless its plan says more).
       */
      readonly bedding?: number;
      /**
       * Format: int32
       * Cycles of fairing. Absent: 3 (the usual number).
       */
      readonly fair?: number;
      /**
       * Format: int32
       * Plies of one session are laid wet on wet. Absent: 1 (plies are laid in one session unless the laminate says more).
       */
      readonly laminating?: number;
      /**
       * Format: int32
       * Coats of primer. Absent: 2 (the usual number).
       */
      readonly prime?: number;
      /**
       * Format: int32
       * Coats of paint. Absent: 2 (the usual number).
       */
      readonly topcoat?: number;
    };
    /** The edge of the panel that a tape is hooked to. */
    readonly Datum: {
      /** Point that the tape is hooked on. */
      readonly from: readonly number[];
      /** Length of the datum as a check. */
      readonly lengthMm: number;
      /** Point that the tape is laid towards. */
      readonly to: readonly number[];
      /** Fields of Datum in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["DatumUs"];
    };
    /** A value of the catalogue with its spread and where it is published. */
    readonly DatumInput: {
      /** Where the value is published. */
      readonly cite: components["schemas"]["CiteInput"];
      /** Greatest value seen. */
      readonly high?: number;
      /** Least value seen. */
      readonly low?: number;
      /** The value in the unit that its field names. */
      readonly value: number;
    };
    /** Fields of Datum in US customary units, when `Accept-Units: us` was sent. */
    readonly DatumUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
    };
    /** Days as a spread: one job in ten, half, and nine in ten stay below. */
    readonly DayRange: {
      /** Days that one job in ten stays below. */
      readonly p10: number;
      /** Days that half of the jobs stay below. */
      readonly p50: number;
      /** Days that nine jobs in ten stay below. */
      readonly p90: number;
    };
    /** Exact decimal text, with a point where it has a fraction. */
    readonly Decimal: string;
    /** A photograph of the deck, without its picture. */
    readonly DeckPhotograph: {
      /** When the photograph was taken in (RFC 3339). */
      readonly addedAt: components["schemas"]["Instant"];
      /** Where it was taken, in the deck plane; absent when nobody said. */
      readonly at?: readonly number[];
      /** Words under the photograph in the report. */
      readonly caption: components["schemas"]["Text"];
      /** 0 towards the bow, 90 to starboard. */
      readonly directionDeg?: number;
      /** Height of the kept picture. */
      readonly heightPx: number;
      /** Address of the picture. */
      readonly href: components["schemas"]["Text"];
      /**
       * Form in which the picture is kept.
       * @enum {string}
       */
      readonly mediaType: "image/jpeg";
      /** Number that the photograph has on the plan and in the report, from 1. */
      readonly number: number;
      /** Width of the kept picture. */
      readonly widthPx: number;
    };
    /** How much warmer the deck is than the forecast's air. */
    readonly DeckWarmth: {
      /** Lamp, blanket or heater. Absent: 0 K (no heater was named). */
      readonly heaterK?: number;
      /** Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent. */
      readonly isUnderSky?: boolean;
      /** How much the midday sun warms the deck above the air. Absent: 0 K (shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on). */
      readonly sunK?: number;
      /** A closed tent over the deck. Absent: 0 K (no tent was named). */
      readonly tentK?: number;
    };
    /** By how much sun, heater and tent keep the deck above the temperature of the air. */
    readonly DeckWarmthInput: {
      /** Lamp, blanket or heater. Absent: 0 K (no heater was named). */
      readonly heaterK?: number;
      /** Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent. */
      readonly isUnderSky?: boolean;
      /** How much the midday sun warms the deck above the air. Absent: 0 K (shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on). */
      readonly sunK?: number;
      /** A closed tent over the deck. Absent: 0 K (no tent was named). */
      readonly tentK?: number;
    };
    /**
     * What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,
     *     and the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
     *
     *     Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
     */
    readonly DefectRecord: {
      /** The cause. */
      readonly cause?: components["schemas"]["CauseRecord"];
      /** Where the work is done, and in what air. */
      readonly conditions?: components["schemas"]["Conditions"];
      /** The old core between the skins, as it was built. */
      readonly core: components["schemas"]["OldCore"];
      /** The craft. */
      readonly craft?: components["schemas"]["Craft"];
      /** The crew. */
      readonly crew?: components["schemas"]["Crew"];
      /**
       * How well the extent is known. Absent: sounded-and-metered (a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range).
       * @enum {string}
       */
      readonly evidence?: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
      /** Findings in the words of the surveyor. */
      readonly findings?: readonly components["schemas"]["StatedFinding"][];
      /** Fittings through the deck. */
      readonly fittings?: readonly components["schemas"]["FittingRecord"][];
      /** The skin below the core, as it was found. */
      readonly innerSkin: components["schemas"]["SkinRecord"];
      /** The inspection. */
      readonly inspection?: components["schemas"]["Inspection"];
      /** Language that numbers and dates of documents are written in. */
      readonly locale?: components["schemas"]["Text"];
      /** How it is repaired. */
      readonly method?: components["schemas"]["MethodChoice"];
      /** The event. */
      readonly occurrence?: components["schemas"]["Occurrence"];
      /** The skin that is walked on, as it was found. */
      readonly outerSkin: components["schemas"]["SkinRecord"];
      /** The panel of deck: its edge, what holds it and what lies under it. */
      readonly panel: components["schemas"]["PanelRecord"];
      /** Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
      readonly parties?: components["schemas"]["Parties"];
      /** Pricing. */
      readonly pricing?: components["schemas"]["PricingChoice"];
      /** The caller's own reference. */
      readonly reference?: components["schemas"]["Text"];
      /**
       * New areas turn up where nobody listened. Absent: part (only the panel in question is taken to have been sounded).
       * @enum {string}
       */
      readonly soundedDeck?: "part" | "whole";
      /** Readings of hammer, meter and plugs. */
      readonly survey?: components["schemas"]["Survey"];
      /** What the job is called on documents. */
      readonly title?: components["schemas"]["Text"];
      /** The vessel. */
      readonly vessel?: components["schemas"]["Vessel"];
      /** Zones of bad core. */
      readonly zones?: readonly components["schemas"]["ZoneRecord"][];
    };
    /** All that is known of a deck and its repair: what was found, how it is built, who works and at what prices. */
    readonly DefectRecordInput: {
      /** The cause. */
      readonly cause?: components["schemas"]["CauseInput"];
      /** Where the work is done, and in what air. */
      readonly conditions?: components["schemas"]["ConditionsInput"];
      /** The old core between the skins, as it was built. */
      readonly core: components["schemas"]["OldCoreInput"];
      /** The craft. */
      readonly craft?: components["schemas"]["CraftInput"];
      /** The crew. */
      readonly crew?: components["schemas"]["CrewInput"];
      /**
       * How well the extent is known. Absent: sounded-and-metered (a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range).
       * @enum {string}
       */
      readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
      /** Findings in the words of the surveyor. */
      readonly findings?: readonly components["schemas"]["FindingInput"][];
      /** Fittings through the deck. */
      readonly fittings?: readonly components["schemas"]["FittingInput"][];
      /** The skin below the core, as it was found. */
      readonly innerSkin: components["schemas"]["SkinInput"];
      /** The inspection. */
      readonly inspection?: components["schemas"]["InspectionInput"];
      /** Language that numbers and dates of documents are written in. */
      readonly locale?: string;
      /** How it is repaired. */
      readonly method?: components["schemas"]["MethodInput"];
      /** The event. */
      readonly occurrence?: components["schemas"]["OccurrenceInput"];
      /** The skin that is walked on, as it was found. */
      readonly outerSkin: components["schemas"]["SkinInput"];
      /** The panel of deck: its edge, what holds it and what lies under it. */
      readonly panel: components["schemas"]["PanelInput"];
      /** Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
      readonly parties?: components["schemas"]["PartiesInput"];
      /** Pricing. */
      readonly pricing?: components["schemas"]["PricingInput"];
      /** The caller's own reference. */
      readonly reference?: string;
      /**
       * New areas turn up where nobody listened. Absent: part (only the panel in question is taken to have been sounded).
       * @enum {string}
       */
      readonly soundedDeck?: "whole" | "part";
      /** Readings of hammer, meter and plugs. */
      readonly survey?: components["schemas"]["SurveyInput"];
      /** What the job is called on documents. */
      readonly title?: string;
      /** The vessel. */
      readonly vessel?: components["schemas"]["VesselInput"];
      /** Zones of bad core. */
      readonly zones?: readonly components["schemas"]["ZoneInput"][];
    };
    /** Wear of a part: its age over its life, or a percentage. */
    readonly DepreciationInput: {
      /** Age of the part. */
      readonly ageYears: number;
      /** Straight-line life of the part, where no percentage is given. */
      readonly lifeYears?: number;
      /**
       * Percentage taken off the price of the part, 0 to 100.
       * @example 20
       */
      readonly percent?: string;
    };
    /** Wear of a part, for insurers who pay its worth and not its price. */
    readonly DepreciationTerms: {
      /** Age of the old deck that new parts replace. */
      readonly ageYears: number;
      /** Straight-line life; the percentage is worked out from it when none is given. */
      readonly lifeYears?: number;
      /** Exact decimal text, 0 to 100. */
      readonly percent?: components["schemas"]["Decimal"];
    };
    /** The division that was taken, the others looked at, and the reason in words. */
    readonly DivisionByCost: {
      /** Place of the cheapest in `options`. */
      readonly chosen: number;
      /** Divisions that were compared. */
      readonly options: readonly components["schemas"]["DivisionOption"][];
      /** Why it was chosen. */
      readonly words: components["schemas"]["Text"];
    };
    readonly DivisionChoice: {
      /** Expected for air shut in under large pieces. */
      readonly airH: number;
      /** Area that no piece may exceed with this division. */
      readonly largestPieceM2: number;
      /** Pieces of this division. */
      readonly pieces: number;
      /** Fields of DivisionChoice in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["DivisionChoiceUs"];
      /** Hours to cut, fit and bed the pieces of this division. */
      readonly workH: number;
    };
    /** Fields of DivisionChoice in US customary units, when `Accept-Units: us` was sent. */
    readonly DivisionChoiceUs: {
      readonly largestPieceM2?: components["schemas"]["UsText"];
    };
    /** One way to divide the core, with what its sheets cost and its hours. */
    readonly DivisionOption: {
      /** To cut, fit and bed, and to mend hollows. */
      readonly hours: number;
      /** Pieces that this division has. */
      readonly pieces: number;
      /** What the sheets for this division cost. */
      readonly sheetCost: number;
    };
    readonly DrawingList: {
      /** Drawings of the estimate. */
      readonly items: readonly components["schemas"]["DrawingListItems"][];
    };
    readonly DrawingListItems: {
      /** Address of the drawing, in the form that Accept asks for. */
      readonly href: components["schemas"]["Text"];
      /** Name of the drawing in its address. */
      readonly name: components["schemas"]["Text"];
    };
    readonly DrawnOpeningInput: {
      /** The edge to which core is taken out, where it is not the same all round. */
      readonly cavity?: readonly (readonly number[])[];
      /**
       * A, B, C ...; labels of pieces begin with it.
       * @example A
       */
      readonly label: string;
      /** What is cut out of the skin. */
      readonly outline: readonly (readonly number[])[];
      /** How far core is taken out under the skin all round. Absent: 0 mm (core is taken out as far as the skin is cut). */
      readonly undercutMm?: components["schemas"]["LengthInput"];
    };
    readonly Driver: {
      /** Total with this driver at its P10 and P90 and everything else at its median. */
      readonly atP10: components["schemas"]["MoneyJson"];
      /** Price when this alone is at its high end. */
      readonly atP90: components["schemas"]["MoneyJson"];
      /** Code of what moves the price. */
      readonly code: components["schemas"]["Text"];
      /** Price from its low to its high end. */
      readonly swing: components["schemas"]["MoneyJson"];
      /** Name of what moves the price. */
      readonly title: components["schemas"]["Text"];
      /** Of the variance, first order. */
      readonly varianceShare: number;
    };
    /** Amounts of the job. */
    readonly DriverAmountsInput: {
      /** Absent: all that is opened. */
      readonly "bared-m2"?: number;
      /** Bows. */
      readonly bow?: number;
      /** Joints of plywood core that are grooved, filled and taped. */
      readonly "core-joint-m"?: number;
      /** Absent: all that is bared. */
      readonly "cored-m2"?: number;
      /** Covering bonded to the deck that comes off. */
      readonly "covering-m2"?: number;
      /** Crack that is ground out and closed. */
      readonly "crack-m"?: number;
      /** Length of cut. */
      readonly "cut-m"?: number;
      /** Days on the job. */
      readonly day?: number;
      /** Absent: all that is bared. */
      readonly "dried-m2"?: number;
      /** Holes drilled to dry the core. */
      readonly "dry-hole"?: number;
      /** Readings while the core dries. */
      readonly "dry-reading"?: number;
      /** Set-ups of drying. */
      readonly "dry-set-up"?: number;
      /** Ply area beyond two plies. */
      readonly "extra-ply-m2"?: number;
      /** Faired area times cycles. */
      readonly "faired-m2-cycle"?: number;
      /** Finished area. */
      readonly "finish-m2"?: number;
      /** Of the hours to set fittings again, those with somebody below. */
      readonly "fitting-helped-h"?: number;
      /** Hours of the cards of fittings to take them off. */
      readonly "fitting-off-h"?: number;
      /** Hours of the cards of fittings to set them again. */
      readonly "fitting-on-h"?: number;
      /** Core that still holds. */
      readonly "held-core-m2"?: number;
      /** Skin that still holds. */
      readonly "held-skin-m2"?: number;
      /** Holes through the deck. */
      readonly hole?: number;
      /** Absent: one where the skin is injected under, none elsewhere. */
      readonly "injected-place"?: number;
      /** Holes drilled to inject resin under the skin. */
      readonly "injection-hole"?: number;
      /** Inserts. */
      readonly insert?: number;
      /** One job unless it is given. */
      readonly job?: number;
      /** Joint of hull and deck that is closed. */
      readonly "joint-m"?: number;
      /** Sound core that stays in the opening. */
      readonly "kept-core-m2"?: number;
      /** Area of the new skin, two plies. */
      readonly "laminate-m2"?: number;
      /** Laminate that cures before the next plies are laid on it. */
      readonly "laminate-pause-m2"?: number;
      /** Frames whose bare core is dug back and sealed. */
      readonly "leak-frame"?: number;
      /** Searches for the way in of the water. */
      readonly "leak-hunt"?: number;
      /** Chainplate slots filled, to be cut anew. */
      readonly "leak-slot"?: number;
      /** Lining that is glued. */
      readonly "lining-glued-m2"?: number;
      /** Lining in panels. */
      readonly "lining-panel-m2"?: number;
      /** Lining that is zipped open. */
      readonly "lining-zipped-m2"?: number;
      /** Edge under which core is taken out. */
      readonly "lip-m"?: number;
      /** Rotten core. */
      readonly "loose-core-m2"?: number;
      /** Of the opening, skin that has let go; absent, with the other three: by the condition. */
      readonly "loose-skin-m2"?: number;
      /** Area of non-skid. */
      readonly "nonskid-m2"?: number;
      /** Where the old finish is sanded and skimmed; absent: all that is finished. */
      readonly "old-finish-m2"?: number;
      /** Opened area. */
      readonly "opened-m2"?: number;
      /** Glued planks that come off. */
      readonly "overlay-glued-m2"?: number;
      /** Planks that are laid again. */
      readonly "overlay-relay-m2"?: number;
      /** Screwed planks that come off. */
      readonly "overlay-screwed-m2"?: number;
      /** Backing plates. */
      readonly plate?: number;
      /** Primed area times coats. */
      readonly "primed-m2-coat"?: number;
      /** Length of rail. */
      readonly "rail-m"?: number;
      /** None where the core lies bare, as at a hatch whose frame is off. */
      readonly "slot-m"?: number;
      /** What is filled solid. */
      readonly "solid-l"?: number;
      /** Length of strip. */
      readonly "strip-m"?: number;
      /** Lining and supports below. */
      readonly "support-m2-below"?: number;
      /** Length of taper. */
      readonly "taper-m"?: number;
      /** Painted area times coats. */
      readonly "topcoat-m2-coat"?: number;
      /** Length of upstand. */
      readonly "upstand-m"?: number;
    };
    /**
     * Format: binary
     * ASCII DXF in mm, one layer for each kind of line.
     */
    readonly DxfFile: string;
    /** Each edge by itself, instead of edges. */
    readonly EachEdgeInput: {
      /**
       * Edge at the far end of x.
       * @enum {string}
       */
      readonly xEnd: "simply-supported" | "clamped" | "free";
      /**
       * The edge at x = 0.
       * @enum {string}
       */
      readonly xStart: "simply-supported" | "clamped" | "free";
      /**
       * Edge at the far end of y.
       * @enum {string}
       */
      readonly yEnd: "simply-supported" | "clamped" | "free";
      /**
       * The edge at y = 0.
       * @enum {string}
       */
      readonly yStart: "simply-supported" | "clamped" | "free";
    };
    /** One state of the catalogue: a draft, or published and never changed again. */
    readonly Edition: {
      /** Code of the edition. */
      readonly code: components["schemas"]["Text"];
      /** SHA-256 of the content of a published edition. */
      readonly contentHash?: components["schemas"]["Text"];
      /** When the draft was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** RFC 3339 instant from which it counts; absent when that was its publication. */
      readonly effectiveAt?: components["schemas"]["Instant"];
      /** True for the catalogue shipped with the program, which everybody reads and nobody changes. */
      readonly isShipped: boolean;
      /** What the edition was made for. */
      readonly note: components["schemas"]["Text"];
      /** When it took effect (RFC 3339); absent on a draft. */
      readonly publishedAt?: components["schemas"]["Instant"];
      /**
       * `scheduled`: published, and not yet in effect.
       * @enum {string}
       */
      readonly state: "draft" | "published" | "scheduled";
    };
    /** What one edition holds otherwise than another. */
    readonly EditionComparison: {
      /** Code of the edition that was asked about. */
      readonly after: components["schemas"]["Text"];
      /** Code of the edition compared with. */
      readonly before: components["schemas"]["Text"];
      /** Entries that differ. */
      readonly changes: readonly components["schemas"]["EntryChange"][];
      /** Whether the two hold the same. */
      readonly isSame: boolean;
    };
    readonly EditionList: {
      /** Code of the edition that estimates are made with now. */
      readonly current: components["schemas"]["Text"];
      /** Editions of the organisation, newest first. */
      readonly items: readonly components["schemas"]["Edition"][];
    };
    /** The edition that is a draft again; what it names is fetched from its address. */
    readonly EditionNamed: {
      /** Edition that the event tells of. */
      readonly code: components["schemas"]["Text"];
      /** Path of the edition. */
      readonly href: components["schemas"]["Text"];
    };
    /** An edition of the catalogue was published: it is current, or will be from `effectiveAt`. */
    readonly EditionPublished: {
      /** The edition and when it counts; what it names is fetched from its address. */
      readonly data: components["schemas"]["PublicationNamed"];
      /** Id of the event of this publication, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the edition was published (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * An edition of the catalogue took effect. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "edition.published";
    };
    /** What estimates that are kept would come to with an edition, beside what they come to with another. Nothing is stored. */
    readonly EditionTrial: {
      /** Code of the edition it is compared with. */
      readonly against: components["schemas"]["Text"];
      /** Code of the edition that was tried. */
      readonly edition: components["schemas"]["Text"];
      /** Version of the program that worked both out. */
      readonly engineVersion: components["schemas"]["Text"];
      /** Stored estimates, each as the draft would price it. */
      readonly estimates: readonly components["schemas"]["TriedEstimate"][];
      /**
       * Format: int32
       * Estimates that come to the same in every line and figure.
       */
      readonly sameCount: number;
      /** Estimates that both editions could answer, summed for each currency. */
      readonly totals: readonly components["schemas"]["TrialTotal"][];
    };
    readonly EditionTrialInput: {
      /** Edition to compare with; the current one when absent. */
      readonly against?: string;
      /** Ids of stored estimates to try the edition on; the newest ones when absent. */
      readonly estimates?: readonly string[];
      /**
       * Format: int32
       * How many of the newest estimates, each in its last revision; 10 when absent. Not together with `estimates`.
       */
      readonly newest?: number;
    };
    /** A publication was taken back before it counted. */
    readonly EditionWithdrawn: {
      /** The edition that is a draft again; what it names is fetched from its address. */
      readonly data: components["schemas"]["EditionNamed"];
      /** Id of the event of this withdrawal, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the publication was taken back (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * A publication was taken back. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "edition.withdrawn";
    };
    /** Moduli of a homogeneous plate that would answer the same. */
    readonly EngineeringConstants: {
      /** Poisson's ratio under load athwart. */
      readonly poissonAcross: number;
      /** Poisson's ratio under load fore and aft. */
      readonly poissonAlong: number;
      /** Shear strain over strain under load athwart. */
      readonly shearCouplingAcross: number;
      /** Shear strain per along (across) strain under a pull along (across): 0 for a balanced laminate. */
      readonly shearCouplingAlong: number;
      /** Shear modulus in the plane. */
      readonly shearModulusMPa: number;
      /** Fields of EngineeringConstants in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["EngineeringConstantsUs"];
      /** Young's modulus athwart. */
      readonly youngAcrossMPa: number;
      /** Young's modulus fore and aft. */
      readonly youngAlongMPa: number;
    };
    /** Fields of EngineeringConstants in US customary units, when `Accept-Units: us` was sent. */
    readonly EngineeringConstantsUs: {
      readonly shearModulusMPa?: components["schemas"]["UsText"];
      readonly youngAcrossMPa?: components["schemas"]["UsText"];
      readonly youngAlongMPa?: components["schemas"]["UsText"];
    };
    /** Typed by the caller; `at` is the JSON Pointer of the field. */
    readonly Entered: {
      /** JSON Pointer to the answer in the request. */
      readonly at: components["schemas"]["Text"];
      /**
       * Says that somebody entered the figure. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "entered";
    };
    /** How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip. */
    readonly Entry: {
      /** Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]. */
      readonly path: readonly (readonly number[])[];
      /**
       * Whether the piece drops in from above or is slid under the lip.
       * @enum {string}
       */
      readonly way: "drops" | "slides";
    };
    readonly EntryChange: {
      /**
       * Whether the entry was added, removed or changed.
       * @enum {string}
       */
      readonly change: "added" | "changed" | "removed";
      /** Code of the entry. */
      readonly code: components["schemas"]["Text"];
      /**
       * Format: int32
       * How many of its fields differ; `fields` may list fewer.
       */
      readonly fieldCount: number;
      /** The first 200 fields that differ, of an entry that is in both. */
      readonly fields: readonly components["schemas"]["EntryField"][];
      /**
       * What kind of entry differs.
       * @enum {string}
       */
      readonly subject: "labour_rates" | "material" | "price_list" | "source";
    };
    readonly EntryField: {
      /** Value after the change; absent where nothing is left. */
      readonly after?: unknown;
      /** JSON pointer below the entry; packs of a price list by their SKU. */
      readonly at: components["schemas"]["Text"];
      /** Value before the change; absent where there was nothing. */
      readonly before?: unknown;
    };
    /**
     * The document a surveyor attaches: everything in JSON-safe values, SI units in the names.
     *     Immutable once made. `derivations` answers "why?" and is stored beside the document.
     */
    readonly Estimate: {
      /** All that was taken because nobody stated it. */
      readonly assumptions: readonly components["schemas"]["EstimateAssumption"][];
      /** Every source named in the document, by the key it is named with. */
      readonly bibliography: readonly components["schemas"]["BibliographyEntry"][];
      /** What can hurt somebody. */
      readonly cautions: readonly components["schemas"]["Caution"][];
      /** Every check of the repair in one list. */
      readonly checks: readonly components["schemas"]["Check"][];
      /** What it comes to in words: the page that is read first. */
      readonly conclusion: components["schemas"]["ConclusionSection"];
      /** Absent where the method opens nothing; `leftOut` says why. */
      readonly core?: components["schemas"]["CoreSection"];
      /** One card for each fitting that comes off. */
      readonly hardware: readonly components["schemas"]["HardwareCard"][];
      /** New skin; absent where none is laid. */
      readonly laminate?: components["schemas"]["LaminateSection"];
      /** How the water came in, and whether this plan stops it. */
      readonly leak: components["schemas"]["LeakSection"];
      /** Sections that this method has no use for, each with the reason. */
      readonly leftOut: readonly components["schemas"]["LeftOutSection"][];
      /** What the estimate does not say. */
      readonly limits: readonly components["schemas"]["Text"][];
      /** Lines of the price. */
      readonly lines: readonly components["schemas"]["EstimateLine"][];
      /** Every way to mend this deck, which one is planned, and why. */
      readonly methods: components["schemas"]["MethodsSection"];
      /** Comparison with the deck before; absent where it could not be made. */
      readonly panel?: components["schemas"]["PanelSection"];
      /** Mixing, cure, pressing and calendar. */
      readonly process: components["schemas"]["ProcessSection"];
      /** What the estimate was made with. */
      readonly provenance: components["schemas"]["ProvenanceStamp"];
      /** Reference that the caller gave. */
      readonly reference?: components["schemas"]["Text"];
      /** What is opened, kept and left alone. */
      readonly scope: components["schemas"]["Scope"];
      /** Sums of the parts of the price. */
      readonly sections: readonly components["schemas"]["CostSection"][];
      /** The figures that a reader asks for first. */
      readonly summary: components["schemas"]["Summary"];
      /** Title of the estimated job. */
      readonly title: components["schemas"]["Text"];
      /** From the lines to the total. */
      readonly totals: components["schemas"]["Totals"];
    };
    readonly EstimateAssumption: {
      /** JSON Pointer, in the record or in that endpoint's request, of the field that would replace the default. */
      readonly at: components["schemas"]["Text"];
      /** Why it takes that. */
      readonly because: components["schemas"]["Text"];
      /** What was not stated. */
      readonly meaning: components["schemas"]["Text"];
      /** `record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for. */
      readonly of: components["schemas"]["Text"];
      /** What it leans on. */
      readonly source: components["schemas"]["Text"];
      /** What the estimate takes, as text. */
      readonly value: components["schemas"]["Text"];
    };
    /** A basket for stored estimates: priced in one edition of the catalogue, from today's stock, with what has changed since each was made. */
    readonly EstimateBasket: {
      /** What each estimate of a common order bears of the total. */
      readonly byEstimate: readonly components["schemas"]["BasketByEstimate"][];
      /** Each need beside the packs that cover it. */
      readonly coverage: readonly components["schemas"]["Coverage"][];
      /** Currency of every amount of the basket (ISO 4217). */
      readonly currency: components["schemas"]["Currency"];
      /** For every estimate that was made with another edition, in the currency of the list. */
      readonly drift: readonly components["schemas"]["EstimateDrift"][];
      /** Packs that were left out before the choice, each with the reason. */
      readonly excluded: readonly components["schemas"]["Excluded"][];
      /** Whether every need is covered; `missing` lists those that are not. */
      readonly isComplete: boolean;
      /** Whether the prices of the list are made up for demonstration. */
      readonly isInvented: boolean;
      /** What remains of the bought packs when the job is done. */
      readonly leftovers: readonly components["schemas"]["Leftover"][];
      /** What is bought, a line for each kind of pack. */
      readonly lines: readonly components["schemas"]["BasketLine"][];
      /** Resins beside the hardeners bought to cure them. */
      readonly matched: readonly components["schemas"]["MatchedResin"][];
      /** Needs that no pack of the list covers. */
      readonly missing: readonly components["schemas"]["CostingMissing"][];
      /** The lines gathered into one order for each supplier. */
      readonly orders: readonly components["schemas"]["SupplierOrder"][];
      /** Edition whose prices it is made with. */
      readonly pricedAt: components["schemas"]["Text"];
      /** Code of the price list whose packs were chosen from. */
      readonly priceList: components["schemas"]["Text"];
      /** Whether the prices of the list hold tax already. */
      readonly pricesIncludeTax: boolean;
      /** Whether no cheaper basket exists, or how far one could be. */
      readonly proof: components["schemas"]["BasketProof"];
      /** The next cheaper basket from other suppliers, where it was looked for. */
      readonly secondBest?: components["schemas"]["SecondBest"];
      /** RFC 3339 instant of the oldest count of stock in the list; absent when the stock of the edition counts. */
      readonly stockCountedAt?: components["schemas"]["Instant"];
      /** Needs that something other than what was planned covers. */
      readonly substitutions: readonly components["schemas"]["Substitution"][];
      /** Goods, cut fees, deliveries and surcharges of all orders together. */
      readonly total: components["schemas"]["MoneyJson"];
      /** What the buyer should know before ordering. */
      readonly warnings: readonly components["schemas"]["Text"][];
    };
    /** The calendar of an estimate by itself. */
    readonly EstimateCalendar: {
      /** Tasks, waits and milestones. */
      readonly calendar: components["schemas"]["CalendarSection"];
      /** The work, the waits and the holds of the day that was asked for, or what comes next. */
      readonly day?: components["schemas"]["EstimateCalendarDay"];
      /** Estimate whose calendar it is. */
      readonly id: components["schemas"]["Text"];
      /** Revision that the calendar belongs to. */
      readonly revision: components["schemas"]["RevisionMark"];
      /** Windows of the weather for each step; absent without a forecast. */
      readonly weather?: components["schemas"]["WeatherSection"];
    };
    /** The work, the waits and the holds of the day that was asked for, or what comes next. */
    readonly EstimateCalendarDay: {
      /** Day that was asked about (ISO 8601). */
      readonly date: components["schemas"]["Text"];
      /** What is done and waited for on that day. */
      readonly items: readonly components["schemas"]["TodayItem"][];
    };
    readonly EstimateCorePiece: {
      /** Area of the cut piece. */
      readonly areaM2: number;
      /** What is bedded in one go; counted from 1 in each layer of an opening. */
      readonly bay: number;
      /** Place in the order of bedding, from 1. */
      readonly beddingOrder: number;
      /** Where the piece is drilled for air, [xMm, yMm]. */
      readonly bleedHoles: readonly (readonly number[])[];
      /**
       * Whether the piece is plain or scored.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** Only for core that has a grain in its plane. */
      readonly grainDeg?: number;
      /** What is cut out of the piece. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Slid under the skin that stays; the others drop in. */
      readonly isUnderLip: boolean;
      /** Name written on the piece. */
      readonly label: components["schemas"]["Text"];
      /** Layer of the stack that the piece belongs to; 1 lies on the inner skin. */
      readonly layer: number;
      /** Opening that it is bedded in. */
      readonly opening: components["schemas"]["Text"];
      /** Edge of it in the deck plane, points [xMm, yMm] in order. */
      readonly outline: readonly (readonly number[])[];
      /** Thickness of the piece. */
      readonly thicknessMm: number;
      /** Fields of EstimateCorePiece in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["EstimateCorePieceUs"];
    };
    /** Fields of EstimateCorePiece in US customary units, when `Accept-Units: us` was sent. */
    readonly EstimateCorePieceUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** An estimate was made. */
    readonly EstimateCreated: {
      /** The estimate that was made; what it names is fetched from its address. */
      readonly data: components["schemas"]["EstimateNamed"];
      /** Id of the event of this making of an estimate, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the estimate was made (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * An estimate was made. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "estimate.created";
    };
    /** How the prices of a list differ from those that an estimate was reckoned with. */
    readonly EstimateDrift: {
      /** Today's price less the price then. */
      readonly difference: components["schemas"]["MoneyJson"];
      /** Estimate whose prices were compared. */
      readonly estimate: components["schemas"]["Text"];
      /** Packs that are not on the list any more, each once. */
      readonly gone: readonly components["schemas"]["Text"][];
      /** Lines whose packs cost something else today. */
      readonly lines: readonly components["schemas"]["LineDrift"][];
      /** What its packs cost today. */
      readonly now: components["schemas"]["MoneyJson"];
      /** Of the lines that can still be bought as they were reckoned. */
      readonly then: components["schemas"]["MoneyJson"];
    };
    /** Something measured that does not fit, with its numbers. */
    readonly EstimateFinding: {
      /** Stable code of the finding. */
      readonly code: components["schemas"]["Text"];
      /** Numbers and words that the finding names. */
      readonly facts: {
        readonly [key: string]: string | number;
      };
      /**
       * Whether it stops the repair, warns, or is only worth knowing.
       * @enum {string}
       */
      readonly severity: "note" | "stop" | "warn";
      /** The finding in a sentence for the reader. */
      readonly text: components["schemas"]["Text"];
    };
    readonly EstimateLine: {
      /** Quantity times price, rounded once. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Least and most of the amount at the recorded extent. */
      readonly amountRange: components["schemas"]["EstimateLineAmountRange"];
      /**
       * Cause that the line is put down to.
       * @enum {string}
       */
      readonly causeClass: "maintenance" | "pre-existing" | "sudden";
      /** Code of the line; asked with it, the service derives the quantity. */
      readonly code: components["schemas"]["Text"];
      /** Whether wear of the old part may be taken off. */
      readonly depreciable: boolean;
      /** Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax. */
      readonly depreciation?: components["schemas"]["LineDepreciation"];
      /** Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
      readonly goods?: components["schemas"]["EstimateLineGoods"];
      /** Of labour: least, most likely, mean and most; the mean is priced. */
      readonly hours?: components["schemas"]["EstimateLineHours"];
      /** True where packs were priced and `unitPrice` is their price over their content. */
      readonly isAveragePrice: boolean;
      /**
       * What sort of cost it is.
       * @enum {string}
       */
      readonly kind: "charge" | "consumable" | "disposal" | "hire" | "labour" | "material";
      /** Code of the material; absent for work. */
      readonly material?: components["schemas"]["Text"];
      /** Quantity in the finished repair. */
      readonly netQuantity: number;
      /** Whole packs to be bought; empty for services. The amount is what is charged of their count times their price. */
      readonly packs: readonly components["schemas"]["EstimateLinePacks"][];
      /**
       * Goods or work.
       * @enum {string}
       */
      readonly partOrLabour: "labour" | "part";
      /** What was multiplied, as an exact decimal. */
      readonly pricedQuantity: components["schemas"]["Decimal"];
      /** Quantity that is bought or paid. */
      readonly purchaseQuantity: number;
      /** Least and most that may be needed, waste counted; absent for services. */
      readonly range?: components["schemas"]["EstimateLineRange"];
      /** Section that the line stands in. */
      readonly section: components["schemas"]["Text"];
      /** Tax group that the line falls in. */
      readonly taxGroup: components["schemas"]["Text"];
      /** What the line is for. */
      readonly title: components["schemas"]["Text"];
      /** Unit of the quantities. */
      readonly unit: components["schemas"]["Text"];
      /** Price of a unit. */
      readonly unitPrice: components["schemas"]["MoneyJson"];
      /** Fields of EstimateLine in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["EstimateLineUs"];
      /** Quantity lost on the way. */
      readonly wasteQuantity: number;
    };
    /** Least and most of the amount at the recorded extent. */
    readonly EstimateLineAmountRange: {
      /** Amount with everything high. */
      readonly high: components["schemas"]["MoneyJson"];
      /** Amount with everything low. */
      readonly low: components["schemas"]["MoneyJson"];
    };
    /** Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
    readonly EstimateLineGoods: {
      /**
       * Whether the customer pays whole packs or what is used.
       * @enum {string}
       */
      readonly billedBy: "use" | "wear" | "whole-packs";
      /** What the yard pays for the packs. */
      readonly bought: components["schemas"]["MoneyJson"];
    };
    /** Of labour: least, most likely, mean and most; the mean is priced. */
    readonly EstimateLineHours: {
      /** Hours when it goes badly. */
      readonly high: number;
      /** Hours that are most likely. */
      readonly likely: number;
      /** Hours when all goes well. */
      readonly low: number;
      /** Hours on average. */
      readonly mean: number;
    };
    readonly EstimateLinePacks: {
      /**
       * Format: int32
       * Packs to buy.
       */
      readonly count: number;
      /** Name of the pack to buy. */
      readonly name: components["schemas"]["Text"];
      /** Price of one of them. */
      readonly price: components["schemas"]["MoneyJson"];
      /** Number of the pack to buy. */
      readonly sku: components["schemas"]["Text"];
      /** Who sells the pack. */
      readonly supplier: components["schemas"]["Text"];
    };
    /** Least and most that may be needed, waste counted; absent for services. */
    readonly EstimateLineRange: {
      /** Quantity at the high end. */
      readonly high: number;
      /** Quantity at the low end. */
      readonly low: number;
    };
    /** Fields of EstimateLine in US customary units, when `Accept-Units: us` was sent. */
    readonly EstimateLineUs: {
      readonly netQuantity?: components["schemas"]["UsText"];
      readonly purchaseQuantity?: components["schemas"]["UsText"];
      readonly wasteQuantity?: components["schemas"]["UsText"];
    };
    readonly EstimateMoneyRange: {
      /** Amount that one job in ten stays below. */
      readonly p10: components["schemas"]["MoneyJson"];
      /** Amount that half of the jobs stay below. */
      readonly p50: components["schemas"]["MoneyJson"];
      /** Amount that eight jobs in ten stay below. */
      readonly p80: components["schemas"]["MoneyJson"];
      /** Amount that nine jobs in ten stay below. */
      readonly p90: components["schemas"]["MoneyJson"];
    };
    /** The estimate that was made; what it names is fetched from its address. */
    readonly EstimateNamed: {
      /** Code of the edition it was made with. */
      readonly edition: components["schemas"]["Text"];
      /** Path of the estimate. */
      readonly href: components["schemas"]["Text"];
      /** Id of the estimate the event tells of. */
      readonly id: components["schemas"]["Id"];
      /** Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
      readonly publishableKeyId?: components["schemas"]["Id"];
      /** The caller's own reference, when it gave one. */
      readonly reference?: components["schemas"]["Text"];
    };
    readonly EstimatePage: {
      /** Estimates, newest first. */
      readonly items: readonly components["schemas"]["EstimateSummary"][];
      /** Give it as `cursor` for older estimates; absent on the last page. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    /** What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept. */
    readonly EstimatePreview: {
      /** What the full estimate would stop at or warn of so far. */
      readonly findings: readonly components["schemas"]["EstimateFinding"][];
      /** In words: what the estimate works out and this leaves out, or takes a shorter way to. */
      readonly leftOut: readonly components["schemas"]["Text"][];
      /** Openings with their saw lines. */
      readonly openings: readonly components["schemas"]["PreviewedOpening"][];
      /** How the repaired deck compares, as far as looked at. */
      readonly panel: components["schemas"]["PreviewPanel"];
      /** What the job may cost, as a first range. */
      readonly price: components["schemas"]["PreviewPrice"];
      /** The figures that can be had at once. */
      readonly summary: components["schemas"]["PreviewSummary"];
      /** Title of the job previewed. */
      readonly title: components["schemas"]["Text"];
      /** Damaged zones as drawn or mapped. */
      readonly zones: readonly components["schemas"]["EstimatePreviewZones"][];
    };
    readonly EstimatePreviewZones: {
      /** Area of the zone. */
      readonly areaM2: number;
      /** What the core in the zone is like. */
      readonly condition: components["schemas"]["Text"];
      /** Id of the zone. */
      readonly id: components["schemas"]["Text"];
      /** Edge of the zone. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of EstimatePreview in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["EstimatePreviewZonesUs"];
    };
    /** Fields of EstimatePreview in US customary units, when `Accept-Units: us` was sent. */
    readonly EstimatePreviewZonesUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    /** A revision of an estimate was made. */
    readonly EstimateRevised: {
      /** The revision and what it revises; what it names is fetched from its address. */
      readonly data: components["schemas"]["RevisionNamed"];
      /** Id of the event of this revision, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the revision was made (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * An estimate was revised. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "estimate.revised";
    };
    /** An estimate in a list. */
    readonly EstimateSummary: {
      /** When the estimate was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Edition of the catalogue that priced it. */
      readonly edition: components["schemas"]["Text"];
      /** Version of the program that estimated it. */
      readonly engineVersion: components["schemas"]["Text"];
      /** Id of the estimate. */
      readonly id: components["schemas"]["Id"];
      /** Expected hours of work. */
      readonly labourH: number;
      /** The caller's own word for the job. */
      readonly reference?: components["schemas"]["Text"];
      /** Which revision of the job the estimate is. */
      readonly revision: components["schemas"]["RevisionMark"];
      /** Title of the job. */
      readonly title: components["schemas"]["Text"];
      /** Price with tax, at the likely quantities. */
      readonly total: components["schemas"]["MoneyJson"];
      /** Price that one job in ten stays below. */
      readonly totalP10: components["schemas"]["MoneyJson"];
      /** Price that nine jobs in ten stay below. */
      readonly totalP90: components["schemas"]["MoneyJson"];
      /** How the repair compares with the deck that it replaces. */
      readonly verdict: components["schemas"]["Text"];
    };
    /** A page of what happened, oldest first. */
    readonly EventPage: {
      /** Events in the order they happened. */
      readonly items: readonly components["schemas"]["EventPageItems"][];
      /** Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    readonly EventPageItems: components["schemas"]["EstimateCreated"] | components["schemas"]["EstimateRevised"] | components["schemas"]["EditionPublished"] | components["schemas"]["EditionWithdrawn"] | components["schemas"]["OperationDone"] | components["schemas"]["OrderMade"];
    /** A pack that was not considered, and why. */
    readonly Excluded: {
      /**
       * Why not: its supplier was not chosen, it would not keep until the work, or it may not go by air.
       * @enum {string}
       */
      readonly reason: "does-not-keep" | "hazardous-by-air" | "out-of-stock" | "supplier-not-chosen";
      /** Pack that was not considered. */
      readonly sku: components["schemas"]["Text"];
    };
    /** How far the damage goes, and how sure that is. */
    readonly Extent: {
      /** What was taken about readings and decay. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** Edges within which the core is bad with a given chance. */
      readonly contours: readonly components["schemas"]["ProbabilityContour"][];
      /** How the cut was decided; absent for drawn zones. */
      readonly cut?: components["schemas"]["CutChoice"];
      /** Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone. */
      readonly damagedAreaM2: components["schemas"]["Quantiles"];
      /** How good the evidence is, and what follows from that. */
      readonly evidence: components["schemas"]["ExtentEvidence"];
      /** Areas with their derivations. */
      readonly figures: components["schemas"]["ExtentFigures"];
      /** What about the evidence deserves attention. */
      readonly findings: readonly components["schemas"]["ExtentFinding"][];
      /**
       * Whether readings or only drawn zones say where the core is bad.
       * @enum {string}
       */
      readonly from: "drawn-zones" | "readings";
      /** `damagedAreaM2` over `mappedAreaM2`; absent when nothing is mapped. */
      readonly growth?: components["schemas"]["Quantiles"];
      /** Chance of bad core at the middle of each cell of the panel; absent for drawn zones. */
      readonly map?: components["schemas"]["ProbabilityMap"];
      /** Area of the zones. */
      readonly mappedAreaM2: number;
      /** Area of bad core as far as the readings leave it open; absent for drawn zones. */
      readonly mapSpreadM2?: components["schemas"]["Quantiles"];
      /** Where to tap or plug next, and whether it is worth it; absent for drawn zones, unless it is asked for. */
      readonly nextReadings?: components["schemas"]["NextReadings"];
      /** Fields of Extent in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ExtentUs"];
      /** Bad core to be opened, largest first; ready to be the zones of `planOpenings`. */
      readonly zones: readonly components["schemas"]["ExtentZone"][];
    };
    readonly ExtentAndOpenings: {
      /** Where the core is likely bad. */
      readonly extent: components["schemas"]["Extent"];
      /** Absent when nothing on the panel is worth opening; a finding of the extent says so. */
      readonly plan?: components["schemas"]["OpeningPlan"];
    };
    /** How good the evidence is, and what follows from that. */
    readonly ExtentEvidence: {
      /** Why it has this grade. */
      readonly because: components["schemas"]["Text"];
      /**
       * Grade of the evidence.
       * @enum {string}
       */
      readonly grade: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
      /** How the found area grows over the recorded one at this grade. */
      readonly law: components["schemas"]["GrowthLaw"];
      /** Growth at P10, P50 and P90. */
      readonly multiplier: components["schemas"]["ThreePoint"];
    };
    /** The growth itself, instead of the evidence. */
    readonly ExtentFactorInput: {
      /** Most that may be found, over what is recorded. */
      readonly high: number;
      /** What will likely be found, over what is recorded. */
      readonly likely: number;
      /** Least that may be found, over what is recorded. */
      readonly low: number;
    };
    /** Areas with their derivations. */
    readonly ExtentFigures: {
      /** Bad area to be expected. */
      readonly likelyArea: components["schemas"]["Figure"];
      /** Area within the chosen edge. */
      readonly mappedArea: components["schemas"]["Figure"];
    };
    /** Something measured that does not fit or that must be known, with its numbers; never an exception. */
    readonly ExtentFinding: {
      /**
       * What was found about the extent.
       * @enum {string}
       */
      readonly code: "bad-reading-outside-zone" | "corner-too-tight" | "cut-crosses-support" | "cut-on-support" | "depth-margin-short" | "depth-not-established" | "depth-over-usual" | "evidence-overstated" | "fitting-on-cut" | "growth-capped" | "highly-loaded-fitting" | "leak-elsewhere" | "measured-overrules" | "narrow-bridge" | "no-plug-in-zone" | "no-plug-outside-zone" | "no-room-for-opening" | "no-room-for-taper" | "nothing-to-open" | "piece-too-large" | "plug-contradicts" | "plugs-disagree" | "readings-all-alike" | "readings-contradict" | "readings-enough" | "readings-in-line" | "readings-outside" | "readings-sparse" | "readings-unreliable" | "readings-worth-taking" | "skin-varies" | "sound-reading-in-zone" | "undercut-too-deep" | "zone-clipped" | "zones-smoothed";
      /** Numbers that the finding about the extent names. */
      readonly facts: {
        readonly [key: string]: string | number;
      };
      /**
       * `stop`: do not cut before this is settled; `warn`: changes the work; `note`: good to know.
       * @enum {string}
       */
      readonly severity: "note" | "stop" | "warn";
      /** What was found, in a sentence. */
      readonly text: components["schemas"]["Text"];
    };
    /** Fields of Extent in US customary units, when `Accept-Units: us` was sent. */
    readonly ExtentUs: {
      /** `damagedAreaM2` in US customary units. */
      readonly damagedAreaM2?: components["schemas"]["ExtentUsDamagedAreaM2"];
      readonly mappedAreaM2?: components["schemas"]["UsText"];
      /** `mapSpreadM2` in US customary units. */
      readonly mapSpreadM2?: components["schemas"]["ExtentUsMapSpreadM2"];
    };
    /** `damagedAreaM2` in US customary units. */
    readonly ExtentUsDamagedAreaM2: {
      readonly p10: components["schemas"]["UsText"];
      readonly p50: components["schemas"]["UsText"];
      readonly p90: components["schemas"]["UsText"];
    };
    /** `mapSpreadM2` in US customary units. */
    readonly ExtentUsMapSpreadM2: {
      readonly p10: components["schemas"]["UsText"];
      readonly p50: components["schemas"]["UsText"];
      readonly p90: components["schemas"]["UsText"];
    };
    readonly ExtentZone: {
      /** Area of the zone without its islands. */
      readonly areaM2: number;
      /**
       * Whether somebody drew the edge or the map gave it.
       * @enum {string}
       */
      readonly boundary: "drawn" | "mapped";
      /** Sound islands within the zone. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Id of the damaged zone. */
      readonly id: components["schemas"]["Text"];
      /** Edge of the damaged zone. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of ExtentZone in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ExtentZoneUs"];
    };
    /** Fields of ExtentZone in US customary units, when `Accept-Units: us` was sent. */
    readonly ExtentZoneUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    readonly FabricLayerInput: {
      /** Direction of its fibres against the roll. */
      readonly angleDeg: number;
      /** Glass in the layer, per square metre. */
      readonly arealMassGPerM2: number;
      /**
       * How the fibres of the layer lie.
       * @enum {string}
       */
      readonly layup: "mat" | "woven" | "unidirectional";
    };
    /** A number that can answer "why?": its value, its unit, and where it came from, down to the leaves. */
    readonly Figure: {
      /** What the number is, in words. */
      readonly meaning: components["schemas"]["Text"];
      /** Where it comes from: entered, catalogue, assumed or computed. */
      readonly origin: components["schemas"]["FigureOrigin"];
      /** Unit that the number is in; `1` for a share or ratio. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Figure in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["FigureUs"];
      /** The number, in `unit`. */
      readonly value: number;
    };
    /** A figure of the summary that differs between two estimates. */
    readonly FigureChange: {
      /** The figure in the later estimate. */
      readonly after: number;
      /** The figure in the earlier estimate. */
      readonly before: number;
      /** Which figure of the summary changed. */
      readonly code: components["schemas"]["Text"];
      /** Name of that figure. */
      readonly name: components["schemas"]["Text"];
      /** Unit of both values. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of FigureChange in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["FigureChangeUs"];
    };
    /** Fields of FigureChange in US customary units, when `Accept-Units: us` was sent. */
    readonly FigureChangeUs: {
      readonly after?: components["schemas"]["UsText"];
      readonly before?: components["schemas"]["UsText"];
    };
    /** Where it comes from: entered, catalogue, assumed or computed. */
    readonly FigureOrigin: components["schemas"]["Entered"] | components["schemas"]["FromCatalogue"] | components["schemas"]["Assumed"] | components["schemas"]["Computed"];
    /** Fields of Figure in US customary units, when `Accept-Units: us` was sent. */
    readonly FigureUs: {
      readonly value?: components["schemas"]["UsText"];
    };
    readonly FillerInput: {
      /** Density as it lies in the tub. */
      readonly bulkDensityGPerCm3: components["schemas"]["DatumInput"];
      /** Stable code of the filler, unique in the edition. */
      readonly code: string;
      /** Hazard statements (GHS) of the filler, such as H226. */
      readonly hazards?: readonly string[];
      /**
       * Says that the material is a filler. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "filler";
      /** Generic specification of the filler in trade words. */
      readonly name: string;
      /** Filler to 100 parts of mixed resin by mass, for its main use. */
      readonly partsPerHundred: components["schemas"]["DatumInput"];
      /** Density of the particles. */
      readonly trueDensityGPerCm3: components["schemas"]["DatumInput"];
      /** What mixes with it are good for. */
      readonly uses: readonly ("bedding" | "filleting" | "potting" | "fairing" | "thickening")[];
    };
    readonly FindingInput: {
      /** A zone or a fitting of the record, or any other label for a finding of its own. */
      readonly about: string;
      /**
       * Class of the finding.
       * @enum {string}
       */
      readonly class?: "before-use" | "next-opportunity" | "monitor";
      /** What is recommended. */
      readonly recommendation?: string;
      /** Restriction of use until then. */
      readonly restriction?: string;
      /** The finding in words. */
      readonly wording?: string;
    };
    /** A fitting bolted through the deck. */
    readonly FittingInput: {
      /**
       * Where it stands.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly at: readonly number[];
      /** Largest size of its base on deck. */
      readonly baseMm?: components["schemas"]["LengthInput"];
      /** Length of its bolts. */
      readonly boltLengthMm?: components["schemas"]["LengthInput"];
      /** Size of its bolts. */
      readonly boltMm?: components["schemas"]["LengthInput"];
      /** Diameter of its holes. */
      readonly holeDiameterMm?: components["schemas"]["LengthInput"];
      /**
       * Format: int32
       * Holes through the deck.
       */
      readonly holes?: number;
      /** Name of the fitting. */
      readonly id: string;
      /** Side of the solid that goes under it. */
      readonly insertMm?: components["schemas"]["LengthInput"];
      /** Whether water comes in at the fitting. */
      readonly isLeaking?: boolean;
      /**
       * What the fitting is, such as a cleat or the base of a stanchion.
       * @enum {string}
       */
      readonly kind: "stanchion" | "cleat" | "winch" | "windlass" | "chainplate" | "mast-step" | "track" | "hatch" | "fill" | "vent" | "pad-eye" | "other";
      /** Of one pair of hands, by whoever knows how it sits; absent, those of its kind. */
      readonly offH?: number;
      /** Base cleaned, bedded and bolted; a second person comes on top. */
      readonly onH?: number;
      /** Side of its backing plate; not smaller than the base. */
      readonly plateMm?: components["schemas"]["LengthInput"];
      /** Thickness of its backing plate. */
      readonly plateThicknessMm?: components["schemas"]["LengthInput"];
      /** From the side of a hole to the first dry, clean core, as far as somebody dug. */
      readonly wetReachMm?: components["schemas"]["LengthInput"];
    };
    /** What the job does to one fitting, and why it is in the scope. */
    readonly FittingInScope: {
      /** Middle of the fitting, [xMm, yMm]. */
      readonly at: readonly number[];
      /** Why the work is needed. */
      readonly because: components["schemas"]["Text"];
      /** From the edge of its base to the opening; 0 inside. */
      readonly distanceMm: number;
      /** Holes that the fitting has. */
      readonly holes: number;
      /** Id of the fitting. */
      readonly id: components["schemas"]["Text"];
      /** Whether it carries loads that a crew depends on. */
      readonly isHighlyLoaded: boolean;
      /**
       * Kind of fitting.
       * @enum {string}
       */
      readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
      /** Label of the nearest opening. */
      readonly opening: components["schemas"]["Text"];
      /** Fields of FittingInScope in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["FittingInScopeUs"];
      /**
       * Whether it stands in an opening or beside one.
       * @enum {string}
       */
      readonly where: "inside" | "near";
      /** What is done to it. */
      readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
    };
    /** Fields of FittingInScope in US customary units, when `Accept-Units: us` was sent. */
    readonly FittingInScopeUs: {
      readonly distanceMm?: components["schemas"]["UsText"];
    };
    readonly FittingRecord: {
      /** Where it stands. */
      readonly at: readonly number[];
      /** Largest size of its base on deck. */
      readonly baseMm?: number;
      /** Length of its bolts. */
      readonly boltLengthMm?: number;
      /** Size of its bolts. */
      readonly boltMm?: number;
      /** Diameter of its holes. */
      readonly holeDiameterMm?: number;
      /** Holes through the deck. */
      readonly holes?: number;
      /** Name of the fitting. */
      readonly id: components["schemas"]["Text"];
      /** Side of the solid that goes under it. */
      readonly insertMm?: number;
      /** Whether water comes in at the fitting. */
      readonly isLeaking?: boolean;
      /**
       * What the fitting is, such as a cleat or the base of a stanchion.
       * @enum {string}
       */
      readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
      /** Of one pair of hands, by whoever knows how it sits; absent, those of its kind. */
      readonly offH?: number;
      /** Base cleaned, bedded and bolted; a second person comes on top. */
      readonly onH?: number;
      /** Side of its backing plate; not smaller than the base. */
      readonly plateMm?: number;
      /** Thickness of its backing plate. */
      readonly plateThicknessMm?: number;
      /** From the side of a hole to the first dry, clean core, as far as somebody dug. */
      readonly wetReachMm?: number;
    };
    readonly FittingScope: {
      /** Where its middle is, [xMm, yMm]. */
      readonly at: readonly number[];
      /** How many holes it has. */
      readonly holes: number;
      /** Id of the fitting in the record. */
      readonly id: components["schemas"]["Text"];
      /** Whether lives or the rig hang on it. */
      readonly isHighlyLoaded: boolean;
      /**
       * What the fitting is.
       * @enum {string}
       */
      readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
      /**
       * In an opening, or near one.
       * @enum {string}
       */
      readonly where: "inside" | "near";
      /** What the crew does with it. */
      readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
    };
    /** Absent: 0.5 mm proud to 1 mm low (what is faired without a visible hump, and what fairing fills). */
    readonly FlushInput: {
      /** How far it may lie low. */
      readonly lowUpToMm: components["schemas"]["LengthInput"];
      /** How far it may stand proud. */
      readonly proudUpToMm: components["schemas"]["LengthInput"];
    };
    /** With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere. */
    readonly Forecast: {
      /** Hour after hour, without a gap. */
      readonly hours: readonly components["schemas"]["ForecastHour"][];
      /** Zone of the place; with it every offset is checked. */
      readonly timeZone?: components["schemas"]["Text"];
    };
    readonly ForecastHour: {
      /** RFC 3339 with offset: the start of the hour. */
      readonly at: components["schemas"]["Instant"];
      /** Share of the sky under cloud. Absent: 0 % (a clear sky is the coldest at night). */
      readonly cloudPercent?: number;
      /** Rain that falls in that hour. */
      readonly rainMm?: number;
      /** Relative humidity of the air in this hour. */
      readonly relativeHumidityPercent: number;
      /** Temperature of the air in that hour. */
      readonly temperatureC: number;
      /** Mean wind in that hour. */
      readonly windMPerS?: number;
    };
    readonly ForecastHourInput: {
      /**
       * RFC 3339 with offset: the start of the hour.
       * @example 2026-05-04T08:00:00+01:00
       */
      readonly at: string;
      /** Share of the sky under cloud. Absent: 0 % (a clear sky is the coldest at night). */
      readonly cloudPercent?: number;
      /** Rain that falls in that hour. */
      readonly rainMm?: components["schemas"]["LengthInput"];
      /** Relative humidity of the air in this hour. */
      readonly relativeHumidityPercent: number;
      /** Temperature of the air in that hour. */
      readonly temperatureC: components["schemas"]["TemperatureInput"];
      /** Mean wind in that hour. */
      readonly windMPerS?: components["schemas"]["SpeedInput"];
    };
    /** Weather of the place, hour by hour. */
    readonly ForecastInput: {
      /** Hour after hour, without a gap. */
      readonly hours: readonly components["schemas"]["ForecastHourInput"][];
      /**
       * Zone of the place; with it every offset is checked.
       * @example Europe/Lisbon
       */
      readonly timeZone?: string;
    };
    readonly FromCatalogue: {
      /** Where the catalogue has the value from. */
      readonly cite: components["schemas"]["Cite"];
      /** Field of that item. */
      readonly field: components["schemas"]["Text"];
      /** High end of the value's spread. */
      readonly high?: number;
      /** Code of the material or list it belongs to. */
      readonly item: components["schemas"]["Text"];
      /**
       * Says that the figure stands in the catalogue. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "catalogue";
      /** Low end of the value's spread. */
      readonly low?: number;
    };
    /** The search was ended before. */
    readonly Gap: {
      /** No basket can cost less than this. */
      readonly bound?: components["schemas"]["MoneyJson"];
      /** How far the basket may be above the cheapest, as a share of its price. */
      readonly gapFraction?: number;
      /**
       * Says that a cheaper basket may exist. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "gap";
    };
    /** Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs. */
    readonly GoodsSums: {
      /** Why the two differ. */
      readonly basis: components["schemas"]["Text"];
      /** What the customer pays for goods. */
      readonly billed: components["schemas"]["MoneyJson"];
      /**
       * How goods are billed.
       * @enum {string}
       */
      readonly billing: "as-bought" | "as-used";
      /** What the yard pays for goods. */
      readonly bought: components["schemas"]["MoneyJson"];
    };
    readonly GradedFinding: {
      /** A zone, a fitting, or the surveyor's own label. */
      readonly about: components["schemas"]["Text"];
      /** Area that the finding is about. */
      readonly areaM2: number;
      /**
       * Class that the report gives the finding.
       * @enum {string}
       */
      readonly class: "before-use" | "monitor" | "next-opportunity";
      /** Why the rules give this class. */
      readonly classBecause: components["schemas"]["Text"];
      /**
       * Class that the rules would give it.
       * @enum {string}
       */
      readonly classByService: "before-use" | "monitor" | "next-opportunity";
      /** Condition of the core at the finding. */
      readonly condition: components["schemas"]["Text"];
      /** Fittings at the finding. */
      readonly fittings: readonly components["schemas"]["GradedFindingFittings"][];
      /** Distance of the finding from the aft edge of the panel, nearest and farthest. */
      readonly fromAftMm?: readonly number[];
      /** What to do about it. */
      readonly recommendation: components["schemas"]["Worded"];
      /** What not to do until then. */
      readonly restriction: components["schemas"]["Worded"];
      /** Fields of GradedFinding in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["GradedFindingUs"];
      /** What was found. */
      readonly wording: components["schemas"]["Worded"];
    };
    readonly GradedFindingFittings: {
      /** Id of a fitting at the finding. */
      readonly id: components["schemas"]["Text"];
      /** Whether water comes in at it. */
      readonly isLeaking: boolean;
      /**
       * What fitting it is.
       * @enum {string}
       */
      readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
    };
    /** Fields of GradedFinding in US customary units, when `Accept-Units: us` was sent. */
    readonly GradedFindingUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      /** `fromAftMm` in US customary units. */
      readonly fromAftMm?: readonly components["schemas"]["UsText"][];
    };
    /**
     * Found area over recorded area, as a distribution. With `falseAlarmShare` nearly nothing is found, evenly spread up to
     *     `falseAlarmUpTo`; else the factor is lognormal. Both are cut off at `most`, where the panel ends.
     */
    readonly GrowthLaw: {
      /** Least ratio of found to recorded area in those jobs. */
      readonly falseAlarmFrom: number;
      /** Share of jobs where less is found than was recorded. */
      readonly falseAlarmShare: number;
      /** Greatest ratio of found to recorded area in those jobs. */
      readonly falseAlarmUpTo: number;
      /** Median ratio in all other jobs. */
      readonly median: number;
      /** Greatest ratio that is reckoned with. */
      readonly most: number;
      /** An organisation's own found over recorded, rising; they weigh n/(n + 15). */
      readonly pairs: readonly number[];
      /** Scatter of the logarithm of the ratio. */
      readonly sigma: number;
      /** Deviation of the logarithm below the median, where it is another than above. */
      readonly sigmaBelow?: number;
    };
    /** The hardener that is to be bought with a resin. */
    readonly HardenerChoiceInput: {
      /** Hardener that cures it. */
      readonly hardener: string;
      /** Resin of the order. */
      readonly resin: string;
    };
    readonly HardenerInput: {
      /** Code of the hardener, unique in its system. */
      readonly code: string;
      /** Density of the liquid hardener. */
      readonly densityGPerCm3: components["schemas"]["DatumInput"];
      /** Hours at 25 degC to full hardness. */
      readonly fullCureH: components["schemas"]["DatumInput"];
      /** Hours at 25 degC until it gels. */
      readonly gelH: components["schemas"]["DatumInput"];
      /** Hazard statements of the hardener, such as H314. */
      readonly hazards?: readonly string[];
      /** Warmest deck that it can be worked on. */
      readonly highestTemperatureC: components["schemas"]["DatumInput"];
      /** Coldest deck that it cures on. */
      readonly lowestTemperatureC: components["schemas"]["DatumInput"];
      /** Name that the crew knows the hardener by. */
      readonly name: string;
      /** Hardener to 100 parts of resin by mass. */
      readonly partsByMass: components["schemas"]["DatumInput"];
      /** Hardener to 100 parts of resin by volume. */
      readonly partsByVolume: components["schemas"]["DatumInput"];
      /** Pot lives from the data sheet, each for a mass and a warmth. */
      readonly potLives: readonly components["schemas"]["PotLifeInput"][];
      /** Hours at 25 degC within which the next layer bonds without sanding. */
      readonly recoatShutsH: components["schemas"]["DatumInput"];
      /** Hours at 25 degC until clamps may come off. */
      readonly releaseH: components["schemas"]["DatumInput"];
      /** Hours at 25 degC until it sands well. */
      readonly sandableH: components["schemas"]["DatumInput"];
      /**
       * How fast it cures, against the others of the system.
       * @enum {string}
       */
      readonly speed: "fast" | "medium" | "slow" | "extra-slow";
    };
    readonly HardenerVerdict: {
      /** Code of the hardener judged. */
      readonly code: components["schemas"]["Text"];
      /** Name of the hardener judged. */
      readonly name: components["schemas"]["Text"];
      /** What speaks for or against it. */
      readonly reasons: readonly components["schemas"]["Text"][];
      /**
       * Whether it was chosen, would do, or is refused in this warmth.
       * @enum {string}
       */
      readonly verdict: "chosen" | "refused" | "workable";
    };
    /** What one fitting takes, from the record where it says so and from its kind where it does not. */
    readonly HardwareCard: {
      /** What was taken about the fitting. */
      readonly assumed: readonly components["schemas"]["Text"][];
      /** Size of its base on deck. */
      readonly baseMm: number;
      /** Length that the fasteners need in the new deck. */
      readonly fastenerLengthMm: number;
      /** Diameter of its fasteners. */
      readonly fastenerMm: number;
      /** Fasteners of the fitting. */
      readonly fasteners: number;
      /** Fitting that the card is for. */
      readonly id: components["schemas"]["Text"];
      /** Solid insert under the fitting; absent when none is needed. */
      readonly insert?: components["schemas"]["HardwareCardInsert"];
      /** Kind of the fitting on the card. */
      readonly kind: components["schemas"]["Text"];
      /** Whether somebody must help from below. */
      readonly needsSecondPerson: boolean;
      /** What else to know about the fitting. */
      readonly note?: components["schemas"]["Text"];
      /** Hours to take it off, as a spread. */
      readonly offH: components["schemas"]["Range"];
      /** Hours to set it again, as a spread. */
      readonly onH: components["schemas"]["Range"];
      /** Plate under the deck; absent when none is needed. */
      readonly plate?: components["schemas"]["HardwareCardPlate"];
      /** Potting mix for all its holes. */
      readonly plugMl: number;
      /** Diameter of the potted hole. */
      readonly plugMm: number;
      /** Pours that a hole is filled in. */
      readonly pours: number;
      /** Who else must look at it, and why. */
      readonly referral?: components["schemas"]["Text"];
      /** What it is bedded in. */
      readonly sealant: components["schemas"]["HardwareCardSealant"];
      /** Where the card's rules come from. */
      readonly source: components["schemas"]["Text"];
      /** How to tighten it. */
      readonly tightening: components["schemas"]["Text"];
      /** Fields of HardwareCard in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["HardwareCardUs"];
    };
    /** Solid insert under the fitting; absent when none is needed. */
    readonly HardwareCardInsert: {
      /** Length of the insert. */
      readonly lengthMm: number;
      /** What the insert is made of. */
      readonly material: components["schemas"]["Text"];
      /** Thickness of the insert. */
      readonly thicknessMm: number;
      /** Fields of HardwareCard in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["HardwareCardInsertUs"];
      /** Width of the insert. */
      readonly widthMm: number;
    };
    /** Fields of HardwareCard in US customary units, when `Accept-Units: us` was sent. */
    readonly HardwareCardInsertUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Plate under the deck; absent when none is needed. */
    readonly HardwareCardPlate: {
      /** Length of the plate. */
      readonly lengthMm: number;
      /** What the plate is made of. */
      readonly material: components["schemas"]["Text"];
      /** Rule that its size follows. */
      readonly rule: components["schemas"]["Text"];
      /** Thickness of the plate. */
      readonly thicknessMm: number;
      /** Fields of HardwareCard in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["HardwareCardInsertUs"];
      /** Width of the plate. */
      readonly widthMm: number;
    };
    /** What it is bedded in. */
    readonly HardwareCardSealant: {
      /** Kind of sealant. */
      readonly kind: components["schemas"]["Text"];
      /** How much sealant. */
      readonly ml: number;
    };
    /** Fields of HardwareCard in US customary units, when `Accept-Units: us` was sent. */
    readonly HardwareCardUs: {
      readonly baseMm?: components["schemas"]["UsText"];
      readonly fastenerLengthMm?: components["schemas"]["UsText"];
      readonly fastenerMm?: components["schemas"]["UsText"];
      readonly plugMl?: components["schemas"]["UsText"];
      readonly plugMm?: components["schemas"]["UsText"];
    };
    readonly HistogramBar: {
      /**
       * Format: int32
       * Draws that fell in the bar.
       */
      readonly count: number;
      /** Low edge of the bar. */
      readonly from: number;
      /** High edge of the bar. */
      readonly to: number;
    };
    /** What was done to a thing, newest first. */
    readonly History: {
      /** Changes, newest first. */
      readonly items: readonly components["schemas"]["HistoryEntry"][];
    };
    readonly HistoryEntry: {
      /** What was done to it, such as `created`, `changed` or `removed`. */
      readonly action: components["schemas"]["Text"];
      /** The thing after the change; absent where it was removed. */
      readonly after?: unknown;
      /** When it was done (RFC 3339). */
      readonly at: components["schemas"]["Instant"];
      /** The thing before the change; absent where it was new. */
      readonly before?: unknown;
      /** Key that did it; absent where the service itself did. */
      readonly keyId?: components["schemas"]["Id"];
      /** Whose key it was, as the key is called. */
      readonly keyName?: components["schemas"]["Text"];
      /** Request that did it, as in its `X-Request-Id`. */
      readonly requestId?: components["schemas"]["Text"];
    };
    /** A page that needs nothing else to be read. */
    readonly HtmlText: string;
    /** Asks for the calendar as iCalendar text too. */
    readonly ICalendarInput: {
      /** RFC 3339: when this export is made. */
      readonly stampAt: string;
      /**
       * Domain part of every UID.
       * @example yard.example
       */
      readonly uidDomain: string;
      /** Begins every UID, such as the id of the estimate. */
      readonly uidPrefix: string;
      /** Every task as an event, besides the milestones. */
      readonly withTasks: boolean;
    };
    /**
     * Format: uuid
     * Id that the service gave (UUID).
     */
    readonly Id: string;
    readonly ImportAllLabourRatesAnswer: {
      /**
       * Format: int32
       * Rows of labour rates that were taken.
       */
      readonly imported: number;
    };
    readonly ImportMaterialsAnswer: {
      /**
       * Format: int32
       * Rows of materials that were taken.
       */
      readonly imported: number;
    };
    readonly ImportPriceListsAnswer: {
      /**
       * Format: int32
       * Rows of price lists that were taken.
       */
      readonly imported: number;
    };
    readonly ImportSourcesAnswer: {
      /**
       * Format: int32
       * Rows of sources that were taken.
       */
      readonly imported: number;
    };
    /** What it is worth to open the deck and measure before the price is agreed. */
    readonly InformationValue: {
      /**
       * Expected gain from being able to say no: a repair that turns out dearer than it is worth is not done.
       *     Present when the worth of the repair is known.
       */
      readonly decisionValue?: components["schemas"]["MoneyJson"];
      /** Gain from saying no, less the price of stage 0. */
      readonly decisionValueNet?: components["schemas"]["MoneyJson"];
      /** What need not be set aside any more. */
      readonly reserveFreed: components["schemas"]["MoneyJson"];
      /** Money set aside above the mean so that it suffices in 8 of 10 cases, as things stand. */
      readonly reserveNow: components["schemas"]["MoneyJson"];
      /** The same, on average, once the extent is known. */
      readonly reserveThen: components["schemas"]["MoneyJson"];
      /** How likely the repair turns out dearer than it is worth. */
      readonly shareAboveWorth?: number;
      /** Price of opening up and mapping; absent when it is not priced. */
      readonly stageZeroCost?: components["schemas"]["MoneyJson"];
    };
    /** Whether the inner skin bears the pressing. */
    readonly InnerSkinCheck: {
      /** Sag that still leaves a fair deck. */
      readonly allowedSagMm: number;
      /** Stress that the inner skin may have. */
      readonly allowedStressMPa: number;
      /** Pressure and weight on the inner skin together. */
      readonly loadKPa: number;
      /** Props from below that the pressing needs. */
      readonly props: components["schemas"]["InnerSkinCheckProps"];
      /** How far the inner skin sags under it. */
      readonly sagMm: number;
      /** Bending stress in the inner skin. */
      readonly stressMPa: number;
      /** Fields of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["InnerSkinCheckUs"];
      /**
       * Whether the inner skin bears the pressing without props.
       * @enum {string}
       */
      readonly verdict: "fails" | "passes";
    };
    /** Props from below that the pressing needs. */
    readonly InnerSkinCheckProps: {
      /**
       * Format: int32
       * Props in all.
       */
      readonly count?: number;
      /** Lines that the props stand in. */
      readonly lines?: number;
      /** Whether the inner skin must be propped. */
      readonly needed: boolean;
      /** Greatest distance between lines of props. */
      readonly spacingMm?: number;
      /** Bay for which that was worked out; one as wide has at least one line. */
      readonly spanMm?: number;
      /** Fields of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["InnerSkinCheckPropsUs"];
      /** Why props are or are not needed. */
      readonly why: components["schemas"]["Text"];
    };
    /** Fields of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly InnerSkinCheckPropsUs: {
      readonly spacingMm?: components["schemas"]["UsText"];
      readonly spanMm?: components["schemas"]["UsText"];
    };
    /** Fields of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly InnerSkinCheckUs: {
      readonly allowedSagMm?: components["schemas"]["UsText"];
      readonly allowedStressMPa?: components["schemas"]["UsText"];
      readonly loadKPa?: components["schemas"]["UsText"];
      readonly sagMm?: components["schemas"]["UsText"];
      readonly stressMPa?: components["schemas"]["UsText"];
    };
    /** The inspection. */
    readonly Inspection: {
      /** Weather, light, what lay on deck: whatever bears on the readings. */
      readonly conditions?: components["schemas"]["Text"];
      /** Hammer, and kind and scale of the moisture meter. */
      readonly instruments?: components["schemas"]["Text"];
      /**
       * Whether she lay afloat or ashore when inspected.
       * @enum {string}
       */
      readonly lies?: "afloat" | "ashore";
      /** What was not inspected, in the words of the surveyor. */
      readonly notInspected?: components["schemas"]["Text"];
      /** Day of the inspection. */
      readonly on?: components["schemas"]["Text"];
      /** Place of the inspection. */
      readonly place?: components["schemas"]["Text"];
    };
    /** The inspection. */
    readonly InspectionInput: {
      /** Weather, light, what lay on deck: whatever bears on the readings. */
      readonly conditions?: string;
      /** Hammer, and kind and scale of the moisture meter. */
      readonly instruments?: string;
      /**
       * Whether she lay afloat or ashore when inspected.
       * @enum {string}
       */
      readonly lies?: "afloat" | "ashore";
      /** What was not inspected, in the words of the surveyor. */
      readonly notInspected?: string;
      /**
       * Format: date
       * Day of the inspection.
       */
      readonly on?: string;
      /** Place of the inspection. */
      readonly place?: string;
    };
    /**
     * Format: date-time
     * RFC 3339 instant, with its offset from UTC.
     */
    readonly Instant: string;
    /** Three sums with tax, and what of the first an insurer might pay. */
    readonly InsurerSplit: {
      /** Part that the stated event caused. */
      readonly attributable: components["schemas"]["MoneyJson"];
      /** How the split was made. */
      readonly basis: components["schemas"]["Text"];
      /** Own share of the insured. */
      readonly deductible: components["schemas"]["MoneyJson"];
      /** Part that makes the boat better than it was. */
      readonly improvement: components["schemas"]["MoneyJson"];
      /** What remains to be paid by the insurer. */
      readonly payable: components["schemas"]["MoneyJson"];
      /** Part that was there before. */
      readonly prior: components["schemas"]["MoneyJson"];
      /** Wear taken off. */
      readonly wear: components["schemas"]["MoneyJson"];
    };
    readonly IsAliveAnswer: {
      /**
       * That the process answers.
       * @enum {string}
       */
      readonly status: "alive";
    };
    readonly IsReadyAnswer: {
      /**
       * That work can be taken.
       * @enum {string}
       */
      readonly status: "ready";
    };
    readonly JobCalendar: {
      /** What was taken about crew and days. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Length of the job in days, as a spread. */
      readonly calendarDays: components["schemas"]["DayRange"];
      /** Codes of tasks that the end depends on. */
      readonly criticalChain: readonly components["schemas"]["Text"][];
      /** When the job is done, as a spread. */
      readonly finish: components["schemas"]["JobCalendarFinish"];
      /** RFC 5545, when it was asked for. */
      readonly iCalendar?: components["schemas"]["Text"];
      /** Hours of all tasks, as three points. */
      readonly labourH: components["schemas"]["ThreePoint"];
      /** Milestones of the plan. */
      readonly milestones: readonly components["schemas"]["CalendarMilestone"][];
      /** What the planner should know. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Length of the plan as drawn. */
      readonly planned: components["schemas"]["JobCalendarPlanned"];
      /** Of the one walk that the tasks show, by mean hours and waits, without chance. */
      readonly plannedFinish: components["schemas"]["Text"];
      /** How the spread was found. */
      readonly simulation: components["schemas"]["JobCalendarSimulation"];
      /** Day that the plan starts on (ISO 8601). */
      readonly startDate: components["schemas"]["Text"];
      /** Planned tasks in order of their start. */
      readonly tasks: readonly components["schemas"]["PlannedTask"][];
      /** IANA time zone of the plan's days. */
      readonly timeZone: components["schemas"]["Text"];
      /** What happens on the day asked about. */
      readonly today?: readonly components["schemas"]["TodayItem"][];
      /** Days on which the crew works. */
      readonly workingDays: components["schemas"]["DayRange"];
    };
    /** When the job is done, as a spread. */
    readonly JobCalendarFinish: {
      /** Day that one simulated job in ten ends by. */
      readonly early: components["schemas"]["Text"];
      /** Day that nine simulated jobs in ten end by. */
      readonly late: components["schemas"]["Text"];
      /** Day that half of the simulated jobs end by. */
      readonly likely: components["schemas"]["Text"];
    };
    /** Length of the plan as drawn. */
    readonly JobCalendarPlanned: {
      /** Days from first to last in the plan. */
      readonly calendarDays: number;
      /** Days with work in the plan. */
      readonly workingDays: number;
    };
    /** How the spread was found. */
    readonly JobCalendarSimulation: {
      /** How hours were drawn between their three points. */
      readonly distribution: components["schemas"]["Text"];
      /** Jobs that were simulated. */
      readonly runs: number;
      /** Seed; the same seed gives the same spread. */
      readonly seed: number;
    };
    /** Why two openings became one, with the numbers that decided. */
    readonly Join: {
      /** Width of skin that would stay between them. */
      readonly bridgeMm: number;
      /** Work of two. */
      readonly hoursApart: number;
      /** Work of one opening. */
      readonly hoursTogether: number;
      /** Width that such a bridge needs. */
      readonly neededBridgeMm: number;
      /** Fields of Join in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["JoinUs"];
      /**
       * Why two openings became one.
       * @enum {string}
       */
      readonly why: "bridge-too-narrow" | "cheaper-together" | "overlap";
    };
    /** Joint. */
    readonly JointInput: {
      /** Allowable peel of the bond. */
      readonly allowablePeelMPa?: number;
      /** Allowable shear of the bond. */
      readonly allowableShearMPa: number;
      /** Stress in the skin across the cut. */
      readonly stressMPa: number;
    };
    /** Fields of Join in US customary units, when `Accept-Units: us` was sent. */
    readonly JoinUs: {
      readonly bridgeMm?: components["schemas"]["UsText"];
      readonly neededBridgeMm?: components["schemas"]["UsText"];
    };
    /**
     * Format: binary
     * JPEG picture.
     */
    readonly JpegFile: string;
    /** A key of an organisation, without its secret text. */
    readonly Key: {
      /** When the key was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** From when on the key opens nothing; it never ends by itself when absent. */
      readonly expiresAt?: components["schemas"]["Instant"];
      /** Id of the key; not the key itself. */
      readonly id: components["schemas"]["Id"];
      /** To the minute; absent for a key that was never used. */
      readonly lastUsedAt?: components["schemas"]["Text"];
      /** What the key is used for; stands in histories. */
      readonly name: components["schemas"]["Text"];
      /** Organisation the key belongs to. */
      readonly organisationId: components["schemas"]["Id"];
      /** The first characters, by which a person recognises the key. */
      readonly prefix: components["schemas"]["Text"];
      /** The key in whose place this one was made. */
      readonly renewsId?: components["schemas"]["Id"];
      /** When it stopped counting (RFC 3339); absent while it counts. */
      readonly revokedAt?: components["schemas"]["Instant"];
      /** What its holder may do; see the table of roles. */
      readonly roles: readonly ("auditor" | "catalogue-admin" | "chandler" | "integrator" | "organisation-admin" | "platform-operator" | "surveyor")[];
      /** What an integrator may do. */
      readonly scopes: readonly ("audit:read" | "calculate" | "catalogue:read" | "catalogue:write" | "estimates:read" | "estimates:write" | "events:read" | "letterhead:read" | "orders:read" | "pages:write" | "prices:write" | "webhooks:read" | "webhooks:write")[];
    };
    readonly KeyList: {
      /** Keys of the organisation, in the order they were made. */
      readonly items: readonly components["schemas"]["Key"][];
      /** Give it as `cursor` for more keys; absent on the last page. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    readonly KnownPlyInput: {
      /** Code of the fabric that the ply is of, in the catalogue. */
      readonly material: string;
    };
    /** Prices of an hour, charges, loadings and taxes of a yard. */
    readonly LabourRatesInput: {
      /** What the yard asks besides hours. */
      readonly charges: readonly components["schemas"]["YardChargeInput"][];
      /** Where the rates come from. */
      readonly cite?: components["schemas"]["CiteInput"];
      /** Code of the rates, unique in the edition. */
      readonly code: string;
      /**
       * Currency of all rates and charges (ISO 4217).
       * @enum {string}
       */
      readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
      /** True for rates of an invented scenario. */
      readonly invented: boolean;
      /** Name that estimates show the rates by. */
      readonly name: string;
      /** Overhead on the direct cost, as decimal text. */
      readonly overheadPercent: string;
      /** Price of an hour by skill. */
      readonly perHour: components["schemas"]["RatePerHourInput"];
      /** Profit on cost with overhead, as decimal text. */
      readonly profitPercent: string;
      /**
       * posted: what a yard charges, overhead and profit inside, so that both percentages are 0; wage: what it pays.
       * @enum {string}
       */
      readonly rateBasis: "posted" | "wage";
      /** Where the rates hold. */
      readonly region: string;
      /** Taxes that lines can fall under. */
      readonly taxGroups: readonly components["schemas"]["TaxGroupInput"][];
      /**
       * Format: date
       * First day that the rates hold (ISO 8601).
       */
      readonly validFrom: string;
      /**
       * Format: date
       * Last day that the rates hold (ISO 8601).
       */
      readonly validTo: string;
    };
    readonly LaidOutPly: {
      /** Area of the ply. */
      readonly areaM2: components["schemas"]["Figure"];
      /** How far its edge lies outside the opening. */
      readonly beyondOpeningMm: number;
      /** Glass in this ply. */
      readonly glassKg: components["schemas"]["Figure"];
      /** Code of the fabric to cut. */
      readonly material: components["schemas"]["Text"];
      /** Name of the fabric to cut. */
      readonly name: components["schemas"]["Text"];
      /** In the order of laying, from 1. */
      readonly order: number;
      /** Edge to cut the ply to. */
      readonly outline: readonly components["schemas"]["Polygon"][];
      /** Area that lies double where pieces meet. */
      readonly overlapAreaM2: number;
      /** Pieces of fabric that make the ply. */
      readonly pieces: readonly components["schemas"]["RollPiece"][];
      /** Resin that wets this ply. */
      readonly resinKg: components["schemas"]["Figure"];
      /** Length of roll that they take. */
      readonly rollLengthM: number;
      /** Width of the roll they are cut from. */
      readonly rollWidthMm: number;
      /** Stage that the ply is laid in. */
      readonly stage: number;
      /** What the ply adds to the skin. */
      readonly thicknessMm: number;
      /** How the fabric is turned when laid. */
      readonly turnDeg: number;
      /** Fields of LaidOutPly in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LaidOutPlyUs"];
    };
    /** Fields of LaidOutPly in US customary units, when `Accept-Units: us` was sent. */
    readonly LaidOutPlyUs: {
      readonly beyondOpeningMm?: components["schemas"]["UsText"];
      readonly overlapAreaM2?: components["schemas"]["UsText"];
      readonly rollLengthM?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** What no schedule could meet; only when none was found. */
    readonly LaminateMissing: {
      /** Schedules that were looked at. */
      readonly examined: number;
      /** False when only a part of the stacks was looked at for this; that none will do is proven all the same. */
      readonly isComplete: boolean;
      /** Constraints that no stack meets, whatever else it misses. */
      readonly metByNone: readonly ("flush-low" | "flush-proud" | "kinds" | "order" | "stiffness-across" | "stiffness-along" | "stiffness-shear" | "strength-compression-across" | "strength-compression-along" | "strength-tension-across" | "strength-tension-along")[];
      /** Each constraint with what it costs. */
      readonly reports: readonly components["schemas"]["ConstraintReport"][];
      /** The lack in sentences. */
      readonly words: readonly components["schemas"]["Text"][];
    };
    readonly LaminateSchedule: {
      /** Cautions for whoever lays the plies. */
      readonly cautions: readonly components["schemas"]["Text"][];
      /** The plies over the cut, where the lifted skin is bonded back. */
      readonly rebedded?: components["schemas"]["ClosingPlies"];
      /** The first of them laid out over the opening. */
      readonly relaid?: components["schemas"]["RelaidPlies"];
      /** The best skins, where a skin is laid anew. */
      readonly search?: components["schemas"]["ScheduleSearch"];
    };
    readonly LaminateScheduleRequest: {
      /**
       * Where ply properties are taken from. One method serves old and new skin alike. Absent: class-bv (it covers mat, woven and unidirectional in three resins, with strengths).
       * @enum {string}
       */
      readonly method?: "class-bv" | "small-craft-yardstick" | "class-gl" | "class-lr" | "micromechanics";
      /** Skin bonded back. */
      readonly rebedded?: components["schemas"]["RebeddedSkinInput"];
      /** Skin laid anew. */
      readonly relaid?: components["schemas"]["RelaidSkinInput"];
      /**
       * Code of the resin system that is laid.
       * @example resin-epoxy-2to1
       */
      readonly resin: string;
    };
    /** New skin; absent where none is laid. */
    readonly LaminateSection: {
      /** Relaid: the best schedules with why the others lost. Re-bedded: empty. */
      readonly alternatives: readonly components["schemas"]["LaminateSectionAlternatives"][];
      /** Glass to wet out. */
      readonly glassKg: number;
      /**
       * Old skin bedded again, or a new one laid.
       * @enum {string}
       */
      readonly method: "re-bed" | "relay";
      /** What to heed when laminating. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Thickness of the skin that it replaces. */
      readonly oldThicknessMm: number;
      /** New plies, the first laid first. */
      readonly plies: readonly components["schemas"]["PlyLine"][];
      /** Stiffness and strength of the new skin. */
      readonly properties: readonly components["schemas"]["NamedValue"][];
      /** Resin to wet it with. */
      readonly resinKg: number;
      /** Length of the taper over thickness of the skin. */
      readonly taperRatio: number;
      /** Width that is ground. */
      readonly taperWidthMm: number;
      /** Thickness of the new skin. */
      readonly totalThicknessMm: number;
      /** Fields of LaminateSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LaminateSectionUs"];
    };
    readonly LaminateSectionAlternatives: {
      /** Its price for a square metre, as text. */
      readonly costPerM2: components["schemas"]["Text"];
      /** Its plies by name. */
      readonly plies: readonly components["schemas"]["Text"][];
      /** Place of the alternative, 1 the one planned. */
      readonly rank: number;
      /** Why it was not taken. */
      readonly reason: components["schemas"]["Text"];
      /** Its thickness. */
      readonly thicknessMm: number;
      /** Fields of LaminateSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LaminateSectionAlternativesUs"];
    };
    /** Fields of LaminateSection in US customary units, when `Accept-Units: us` was sent. */
    readonly LaminateSectionAlternativesUs: {
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Fields of LaminateSection in US customary units, when `Accept-Units: us` was sent. */
    readonly LaminateSectionUs: {
      readonly glassKg?: components["schemas"]["UsText"];
      readonly oldThicknessMm?: components["schemas"]["UsText"];
      readonly resinKg?: components["schemas"]["UsText"];
      readonly taperWidthMm?: components["schemas"]["UsText"];
      readonly totalThicknessMm?: components["schemas"]["UsText"];
    };
    /** With it, the best skin is laid out over the opening. */
    readonly LayOutInput: {
      /** Trimmed off each strip. Absent: 50 mm (an inch at either end). */
      readonly endAllowanceMm?: components["schemas"]["LengthInput"];
      /** Where the old skin is cut away. */
      readonly opening: readonly (readonly number[])[];
      /**
       * Order of the plies. Absent: smallest-first (both orders are in use, and no published test decides between them for decks).
       * @enum {string}
       */
      readonly order?: "smallest-first" | "largest-first";
      /** Overlap of strips of one ply. Absent: 50 mm (edges of successive reinforcements stagger by 50 mm, and seams of the next ply keep away from them). */
      readonly overlapMm?: components["schemas"]["LengthInput"];
      /** Sound skin that the taper may use. */
      readonly soundSkin?: readonly (readonly number[])[];
      /** Most laid wet on wet. Absent: 4 mm (solid hand lay-up of 4 to 6 mm in one go is where overheating is reported). */
      readonly wetLimitMm?: components["schemas"]["LengthInput"];
    };
    /** How the water came in, and whether this plan stops it. */
    readonly LeakSection: {
      /** Code of the leak's cause. */
      readonly cause: components["schemas"]["Text"];
      /** Whether this work stops it. */
      readonly isRemedied: boolean;
      /** What stops the leak. */
      readonly remedy: components["schemas"]["Text"];
      /** The leak in a sentence. */
      readonly text: components["schemas"]["Text"];
      /** Name of the leak's cause. */
      readonly title: components["schemas"]["Text"];
      /** What is measured again, and the value that passes. */
      readonly verify: components["schemas"]["Text"];
    };
    readonly LeftOut: {
      /** Code of the material left out. */
      readonly material: components["schemas"]["Text"];
      /** What about its data kept it out. */
      readonly problems: readonly components["schemas"]["Problem"][];
    };
    readonly LeftOutSection: {
      /** Why it has not. */
      readonly because: components["schemas"]["Text"];
      /**
       * Section that the estimate has not.
       * @enum {string}
       */
      readonly section: "bond-pressure" | "core" | "laminate" | "panel";
    };
    /** What remains of a bought good when every need is met. */
    readonly Leftover: {
      /**
       * Plain or scored, for core.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** How long the remainder keeps when closed well. */
      readonly keepsMonths?: number;
      /** Code of the material in the catalogue. */
      readonly material: components["schemas"]["Text"];
      /** Code of the hardener that remains, where the remainder is not the resin itself. */
      readonly part?: components["schemas"]["Text"];
      /** How much remains of the pack's contents. */
      readonly quantity: number;
      /** Width of the roll, for fabrics. */
      readonly rollWidthMm?: number;
      /** Size of the sheet, where it matters. */
      readonly sheet?: components["schemas"]["LeftoverSheet"];
      /** Thickness of the sheet, for core. */
      readonly thicknessMm?: number;
      /** Unit of what remains. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Leftover in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LeftoverUs"];
      /** At the least price of the goods bought. */
      readonly worth: components["schemas"]["MoneyJson"];
    };
    /** Size of the sheet, where it matters. */
    readonly LeftoverSheet: {
      /** Length of the sheet that is meant. */
      readonly lengthMm: number;
      /** Fields of Leftover in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LeftoverSheetUs"];
      /** Width of the sheet that is meant. */
      readonly widthMm: number;
    };
    /** Fields of Leftover in US customary units, when `Accept-Units: us` was sent. */
    readonly LeftoverSheetUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Fields of Leftover in US customary units, when `Accept-Units: us` was sent. */
    readonly LeftoverUs: {
      readonly quantity?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /**
     * A number in mm, or text with its unit: mm, cm, m, um, mil, in, inch, ", ft, ', yd. Limits that stand beside a reference to this are in mm.
     * @example 5/8 in
     */
    readonly LengthInput: number | string;
    readonly LetterheadInput: {
      /** Address and whatever else belongs below the name, line by line. */
      readonly lines: readonly string[];
      /** What the logo shows, for those who cannot see it; the name of the organisation when absent. */
      readonly logoDescription?: string;
    };
    /** A line that differs between two estimates. */
    readonly LineChange: {
      /** Its amount in the later estimate. */
      readonly after: components["schemas"]["MoneyJson"];
      /** In words: what the caller said of it, else what the numbers say. */
      readonly because: readonly components["schemas"]["Text"][];
      /** Of the difference, because there is more or less of it, at the old rate. */
      readonly becauseOfQuantity: components["schemas"]["MoneyJson"];
      /** Of the difference, because it costs more or less. */
      readonly becauseOfRate: components["schemas"]["MoneyJson"];
      /** Its amount in the earlier estimate. */
      readonly before: components["schemas"]["MoneyJson"];
      /**
       * Whether it was added, removed or changed.
       * @enum {string}
       */
      readonly change: "added" | "changed" | "removed" | "same";
      /** Line of the estimate that changed. */
      readonly code: components["schemas"]["Text"];
      /** Later amount less the earlier. */
      readonly difference: components["schemas"]["MoneyJson"];
      /** Quantity in the later estimate, as decimal text. */
      readonly quantityAfter: components["schemas"]["Decimal"];
      /** Quantity in the earlier estimate, as decimal text. */
      readonly quantityBefore: components["schemas"]["Decimal"];
      /** What the line is for. */
      readonly title: components["schemas"]["Text"];
      /** Unit of the line's quantities. */
      readonly unit: components["schemas"]["Text"];
    };
    /** Wear of a part that is replaced, shown beside its amount. */
    readonly LineDepreciation: {
      /** Age of the part that is replaced. */
      readonly ageYears: number;
      /** Wear in money. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Wear in percent, as decimal text. */
      readonly percent: components["schemas"]["Decimal"];
      /** Amount less wear. */
      readonly remaining: components["schemas"]["MoneyJson"];
    };
    /** The packs of one line at the price of then and of now. */
    readonly LineDrift: {
      /** What they cost more today; absent when the pack is no longer sold. */
      readonly difference?: components["schemas"]["MoneyJson"];
      /** Line of the estimate. */
      readonly line: components["schemas"]["Text"];
      /** Absent where the pack is not on the list any more. */
      readonly now?: components["schemas"]["MoneyJson"];
      /**
       * Format: int32
       * How many of the pack the line takes.
       */
      readonly packCount: number;
      /** Pack whose price moved. */
      readonly sku: components["schemas"]["Text"];
      /** Price of those packs when the estimate was made. */
      readonly then: components["schemas"]["MoneyJson"];
      /** What the line buys. */
      readonly title: components["schemas"]["Text"];
    };
    /** So many packs of one kind in a line. */
    readonly LinePack: {
      /**
       * Format: int32
       * How many of the pack are bought.
       */
      readonly count: number;
      /** Name of the pack bought. */
      readonly name: components["schemas"]["Text"];
      /** Exact decimal text for one pack. */
      readonly price: components["schemas"]["Decimal"];
      /** Number of the pack bought. */
      readonly sku: components["schemas"]["Text"];
      /** Supplier of the pack bought. */
      readonly supplier: components["schemas"]["Text"];
    };
    readonly LinePackInput: {
      /**
       * Format: int32
       * Packs that are bought.
       */
      readonly count: number;
      /** Name of the pack. */
      readonly name: string;
      /** Price of one pack. */
      readonly price: string;
      /** Number of the pack at its supplier. */
      readonly sku: string;
      /** Supplier of the pack. */
      readonly supplier: string;
    };
    /** Quantity needed and quantity bought. */
    readonly LineQuantity: {
      /** What the rate was multiplied with, exactly. */
      readonly charged: components["schemas"]["Text"];
      /** Quantity that ends up in the repair. */
      readonly net: number;
      /** Whole packs; absent for what is not bought in packs. */
      readonly purchase?: number;
      /** Quantity with waste. */
      readonly required: number;
      /** Wasted on top of the net quantity. */
      readonly waste: number;
    };
    /** Least and most of the amount, as factors of it, at the extent recorded. */
    readonly LineSpreadInput: {
      /** Most amount as a multiple of the likely one. */
      readonly high: number;
      /** Least amount as a share of the likely one. */
      readonly low: number;
    };
    readonly LineTaxGroupInput: {
      /** Code of the tax group. */
      readonly code: string;
      /** Name of the tax, as it is printed. */
      readonly name: string;
      /**
       * Percentage of tax.
       * @example 20
       */
      readonly percent: string;
    };
    readonly ListAllLabourRatesAnswer: {
      /** Code of the edition that holds these labour rates. */
      readonly edition: components["schemas"]["Text"];
      /** All labour rates of the edition that were asked for, by code. */
      readonly items: readonly components["schemas"]["LabourRatesInput"][];
    };
    readonly ListMaterialsAnswer: {
      /** Code of the edition that holds these materials. */
      readonly edition: components["schemas"]["Text"];
      /** All materials of the edition that were asked for, by code. */
      readonly items: readonly components["schemas"]["Material"][];
    };
    readonly ListPacksAnswer: {
      /** Packs of the list, one entry for each. */
      readonly packs: readonly components["schemas"]["PackInput"][];
    };
    readonly ListPriceListsAnswer: {
      /** Code of the edition that holds these price lists. */
      readonly edition: components["schemas"]["Text"];
      /** All price lists of the edition that were asked for, by code. */
      readonly items: readonly components["schemas"]["PriceListInput"][];
    };
    readonly ListSourcesAnswer: {
      /** Code of the edition that holds these sources. */
      readonly edition: components["schemas"]["Text"];
      /** All sources of the edition that were asked for, by code. */
      readonly items: readonly components["schemas"]["SourceInput"][];
    };
    readonly LoadResult: {
      /** Kind of load. */
      readonly code: components["schemas"]["Text"];
      /** Name that responses and checks know the load by. */
      readonly key: components["schemas"]["Text"];
      /** Pressure of the load where it acts. */
      readonly pressureKPa: number;
      /** Name of the load. */
      readonly title: components["schemas"]["Text"];
      /** Fields of LoadResult in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["LoadResultUs"];
    };
    /** Fields of LoadResult in US customary units, when `Accept-Units: us` was sent. */
    readonly LoadResultUs: {
      readonly pressureKPa?: components["schemas"]["UsText"];
    };
    /** The logo; absent when none was set. */
    readonly LogoLink: {
      /** Address of the logo. */
      readonly href: components["schemas"]["Text"];
      /**
       * Form that the logo is kept in.
       * @enum {string}
       */
      readonly mediaType: "image/png";
    };
    /** Work that goes on after its request was answered with 202. */
    readonly LongOperation: {
      /** RFC 3339 instants, as all others here. */
      readonly createdAt: components["schemas"]["Instant"];
      /** When the operation and its result are removed. */
      readonly expiresAt: components["schemas"]["Instant"];
      /** When it ended (RFC 3339). */
      readonly finishedAt?: components["schemas"]["Instant"];
      /** Id of the operation. */
      readonly id: components["schemas"]["Id"];
      /** When it failed: why. */
      readonly problem?: components["schemas"]["OperationProblem"];
      /** When it is done: where the result is. */
      readonly result?: components["schemas"]["OperationResult"];
      /** When work on it began (RFC 3339). */
      readonly startedAt?: components["schemas"]["Instant"];
      /**
       * How far the operation has come.
       * @enum {string}
       */
      readonly status: "done" | "failed" | "running" | "waiting";
    };
    /** How readings become a map of where the core is likely bad. */
    readonly MapSettingsInput: {
      /** Further contours of the map. Absent: 0.1, 0.5, 0.9 (hardly, as likely as not, nearly certain). */
      readonly contourProbabilities?: readonly number[];
      /** Core this likely to be bad, or more, lies inside the zones. Absent: chosen by expected hours. */
      readonly cutProbability?: number;
      /**
       * Format: int32
       * Draws behind the range of the area. Absent: 500 (enough for the range of an area).
       */
      readonly draws?: number;
      /** Hours that a square metre of bad core left under a closed deck costs in the end. Absent: 120 h/m2 (a second repair opens, cores and closes that square metre again with a cut of its own (about 25 h), the patch has grown by then (about double), and a deck set up and finished anew for it takes as much again). */
      readonly leaveCostHPerM2?: number;
      /**
       * Format: int64
       * The same seed gives the same range. Absent: 20011 (any seed will do, as long as it is the same).
       */
      readonly seed?: number;
      /** Share of such a panel that is bad before any reading. Absent: 0.25 (somebody had a reason to survey it, and most of a deck is sound). */
      readonly usualBadShare?: number;
    };
    /** A corner of the saw line as a person with a tape finds it. */
    readonly MarkedCorner: {
      /** Along the datum edge from its first end. */
      readonly alongMm: number;
      /** The corner in the deck plane. */
      readonly at: readonly number[];
      /** Distance from the far end of the datum. */
      readonly fromEndMm: number;
      /** Straight from each end of the datum edge: where the two tapes meet. */
      readonly fromStartMm: number;
      /** Square off the datum edge. */
      readonly offMm: number;
      /** Radius cut at this corner; less than the rule's where the sides are too short. */
      readonly radiusMm: number;
      /** Fields of MarkedCorner in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MarkedCornerUs"];
    };
    /** Fields of MarkedCorner in US customary units, when `Accept-Units: us` was sent. */
    readonly MarkedCornerUs: {
      readonly alongMm?: components["schemas"]["UsText"];
      readonly fromEndMm?: components["schemas"]["UsText"];
      readonly fromStartMm?: components["schemas"]["UsText"];
      readonly offMm?: components["schemas"]["UsText"];
      readonly radiusMm?: components["schemas"]["UsText"];
    };
    /** How to mark the cuts out on deck with a tape. */
    readonly MarkingOut: {
      /** Where each corner lies from the datum. */
      readonly corners: readonly components["schemas"]["MarkedCorner"][];
      /** Line that all dimensions are taken from. */
      readonly datum: components["schemas"]["Datum"];
      /** Corner to opposite corner, to check that it is square; only for four corners. */
      readonly diagonalsMm?: readonly number[];
      /** The saw lines between the corners. */
      readonly lines: readonly components["schemas"]["SawLine"][];
      /** Fields of MarkingOut in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MarkingOutUs"];
    };
    /** Fields of MarkingOut in US customary units, when `Accept-Units: us` was sent. */
    readonly MarkingOutUs: {
      /** `diagonalsMm` in US customary units. */
      readonly diagonalsMm?: readonly components["schemas"]["UsText"][];
    };
    /**
     * A number in kg, or text with its unit: kg, g, t, lb, oz. Limits that stand beside a reference to this are in kg.
     * @example 40 lb
     */
    readonly MassInput: number | string;
    /** A resin and its hardeners, in amounts that belong together. */
    readonly MatchedResin: {
      /** Hardeners that cure it, each with what it cures. */
      readonly hardeners: readonly components["schemas"]["MatchedResinHardeners"][];
      /** Code of the resin. */
      readonly resin: components["schemas"]["Text"];
      /** Resin in the basket and on hand. */
      readonly resinKg: number;
      /** Fields of MatchedResin in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MatchedResinUs"];
    };
    readonly MatchedResinHardeners: {
      /** Hardener in the basket. */
      readonly boughtKg: number;
      /** Resin that this much hardener cures at the mixing ratio. */
      readonly curesKg: number;
      /** Code of the hardener. */
      readonly hardener: components["schemas"]["Text"];
      /** Fields of MatchedResin in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MatchedResinHardenersUs"];
    };
    /** Fields of MatchedResin in US customary units, when `Accept-Units: us` was sent. */
    readonly MatchedResinHardenersUs: {
      readonly boughtKg?: components["schemas"]["UsText"];
      readonly curesKg?: components["schemas"]["UsText"];
    };
    /** Fields of MatchedResin in US customary units, when `Accept-Units: us` was sent. */
    readonly MatchedResinUs: {
      readonly resinKg?: components["schemas"]["UsText"];
    };
    readonly Material: components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"];
    /** Which form of a material a need asks for; packs must agree in every field that is given. */
    readonly MaterialVariant: {
      /**
       * Plain or scored, for core.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Code of the material in the catalogue. */
      readonly material: components["schemas"]["Text"];
      /** Code of a hardener, where the material is a resin system and its hardener is meant. */
      readonly part?: components["schemas"]["Text"];
      /** Width of the roll, for fabrics. */
      readonly rollWidthMm?: number;
      /** Size of the sheet, where it matters. */
      readonly sheet?: components["schemas"]["MaterialVariantSheet"];
      /** Thickness of the sheet, for core. */
      readonly thicknessMm?: number;
      /** Fields of MaterialVariant in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MaterialVariantUs"];
    };
    /** A material in the thickness, form and size that is meant. */
    readonly MaterialVariantInput: {
      /**
       * Form of the sheet: plain, or scored so that it bends.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Code of a material of the catalogue. */
      readonly material: string;
      /** Hardener of a resin. */
      readonly part?: string;
      /** Width of the roll that the fabric comes on. */
      readonly rollWidthMm?: components["schemas"]["LengthInput"];
      /** Size of the sheet. */
      readonly sheet?: components["schemas"]["SheetSizeInput"];
      /** Thickness of the material. */
      readonly thicknessMm?: components["schemas"]["LengthInput"];
    };
    /** Size of the sheet, where it matters. */
    readonly MaterialVariantSheet: {
      /** Length of the sheet that is meant. */
      readonly lengthMm: number;
      /** Fields of MaterialVariant in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MaterialVariantSheetUs"];
      /** Width of the sheet that is meant. */
      readonly widthMm: number;
    };
    /** Fields of MaterialVariant in US customary units, when `Accept-Units: us` was sent. */
    readonly MaterialVariantSheetUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Fields of MaterialVariant in US customary units, when `Accept-Units: us` was sent. */
    readonly MaterialVariantUs: {
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** RFC 7396 merge patch: what is named is replaced, null takes an optional member away. */
    readonly MergePatch: {
      readonly [key: string]: string | number | boolean | readonly unknown[] | Record<string, never> | null;
    };
    /** What the moisture meter shows on dry and on soaked core. */
    readonly MeterInput: {
      /** Reading on sound, dry deck of the same build. */
      readonly dryReference: number;
      /** Reading on soaked core. */
      readonly wetReference: number;
    };
    readonly MeterReading: {
      /** Where it was taken, [xMm, yMm]. */
      readonly at: readonly number[];
      /** True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that a meter was held to the deck. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "moisture";
      /** On the meter's own scale; judged against `dryReference`. */
      readonly value: number;
    };
    readonly MeterReadingInput: {
      /**
       * Where it was taken.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly at: readonly number[];
      /** Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that a meter was held to the place. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "moisture";
      /** Reading, on the scale of the meter itself. */
      readonly value: number;
    };
    /** How it is repaired. */
    readonly MethodChoice: {
      /**
       * Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
       * @enum {string}
       */
      readonly access?: "from-above" | "from-below";
      /**
       * How the topcoats go on. Absent: brush-and-roller (what a deck gets where no booth stands).
       * @enum {string}
       */
      readonly application?: "brush-and-roller" | "spray-elsewhere" | "spray-in-booth";
      /** Code of a core sheet in the catalogue. */
      readonly core?: components["schemas"]["Text"];
      /** Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
      readonly cutMarginMm?: number;
      /**
       * How far the finish goes. Absent: panel (a patch inside a panel shows; a panel ends at natural edges).
       * @enum {string}
       */
      readonly finish?: "panel" | "patch" | "whole-deck";
      /** Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
      readonly flangeMm?: number;
      /**
       * What presses the core down. Absent: weights (needs no fastening into the deck and no airtight inner skin).
       * @enum {string}
       */
      readonly press?: "battens" | "vacuum" | "weights";
      /** What one stroke of the resin pump gives; the batch cards then count strokes. */
      readonly pumpResinMlPerStroke?: number;
      /** Code of a resin system in the catalogue. */
      readonly resin?: components["schemas"]["Text"];
      /**
       * A rung of the ladder by name; without one the recommended rung is planned. One that does not fit is answered with the reason.
       * @enum {string}
       */
      readonly rung?: "above-new-skin" | "above-old-skin" | "close-leak" | "dry-in-place" | "edge-rail-off" | "edge-rout-and-fill" | "edge-wrap" | "from-below" | "inject" | "ream-and-pot" | "rebed" | "solid-spot" | "whole-panel";
      /**
       * Bond the lifted skin back, or laminate a new one.
       * @enum {string}
       */
      readonly skin?: "re-bed" | "relay";
      /**
       * Core that zones, readings or a plug show to be sound is left and its face cleaned, or comes out with the rest.
       * @enum {string}
       */
      readonly soundCore?: "comes-out" | "stays";
      /** Taper ratio, length to one of thickness. */
      readonly taperRatio?: number;
      /** Code of a topcoat in the catalogue. */
      readonly topcoat?: components["schemas"]["Text"];
      /** Area of the whole deck. */
      readonly wholeDeckAreaM2?: number;
    };
    /** How the deck is repaired; what is left out is chosen by the condition of the deck. */
    readonly MethodInput: {
      /**
       * Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
       * @enum {string}
       */
      readonly access?: "from-above" | "from-below";
      /**
       * How the topcoats go on. Absent: brush-and-roller (what a deck gets where no booth stands).
       * @enum {string}
       */
      readonly application?: "brush-and-roller" | "spray-in-booth" | "spray-elsewhere";
      /** Code of a core sheet in the catalogue. */
      readonly core?: string;
      /** Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
      readonly cutMarginMm?: components["schemas"]["LengthInput"];
      /**
       * How far the finish goes. Absent: panel (a patch inside a panel shows; a panel ends at natural edges).
       * @enum {string}
       */
      readonly finish?: "patch" | "panel" | "whole-deck";
      /** Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
      readonly flangeMm?: components["schemas"]["LengthInput"];
      /**
       * What presses the core down. Absent: weights (needs no fastening into the deck and no airtight inner skin).
       * @enum {string}
       */
      readonly press?: "weights" | "battens" | "vacuum";
      /** What one stroke of the resin pump gives; the batch cards then count strokes. */
      readonly pumpResinMlPerStroke?: number;
      /** Code of a resin system in the catalogue. */
      readonly resin?: string;
      /**
       * A rung of the ladder by name; without one the recommended rung is planned. One that does not fit is answered with the reason.
       * @enum {string}
       */
      readonly rung?: "close-leak" | "rebed" | "ream-and-pot" | "dry-in-place" | "inject" | "above-old-skin" | "above-new-skin" | "from-below" | "edge-rout-and-fill" | "edge-wrap" | "edge-rail-off" | "whole-panel" | "solid-spot";
      /**
       * Bond the lifted skin back, or laminate a new one.
       * @enum {string}
       */
      readonly skin?: "re-bed" | "relay";
      /**
       * Core that zones, readings or a plug show to be sound is left and its face cleaned, or comes out with the rest.
       * @enum {string}
       */
      readonly soundCore?: "stays" | "comes-out";
      /** Taper ratio, length to one of thickness. */
      readonly taperRatio?: number;
      /** Code of a topcoat in the catalogue. */
      readonly topcoat?: string;
      /** Area of the whole deck. */
      readonly wholeDeckAreaM2?: components["schemas"]["AreaInput"];
    };
    /** The ladder as judged on the place where the defect is largest. */
    readonly MethodLadder: {
      /** What each place gets; the set-up of the job is counted once. */
      readonly places: readonly components["schemas"]["PlaceSection"][];
      /** Gentlest rung that fits; absent when none does. */
      readonly recommended?: components["schemas"]["RungNamed"];
      /** All rungs, the gentlest first. */
      readonly rungs: readonly components["schemas"]["RungSection"][];
      /** The next rung that fits. */
      readonly runnerUp?: components["schemas"]["RungNamed"];
    };
    /** The same with the rung that is planned. */
    readonly MethodsSection: {
      /** What each place gets; the set-up of the job is counted once. */
      readonly places: readonly components["schemas"]["PlaceSection"][];
      /** Rung that the estimate plans. */
      readonly planned: components["schemas"]["MethodsSectionPlanned"];
      /** Gentlest rung that fits; absent when none does. */
      readonly recommended?: components["schemas"]["RungNamed"];
      /** All rungs, the gentlest first. */
      readonly rungs: readonly components["schemas"]["RungSection"][];
      /** The next rung that fits. */
      readonly runnerUp?: components["schemas"]["RungNamed"];
    };
    /** Rung that the estimate plans. */
    readonly MethodsSectionPlanned: {
      /** Why the rung stands where it stands. */
      readonly because: components["schemas"]["Text"];
      /** Whether the record asked for it by name. */
      readonly isNamedInRecord: boolean;
      /** Code of the rung. */
      readonly rung: components["schemas"]["Text"];
      /** Name of the rung. */
      readonly title: components["schemas"]["Text"];
    };
    /** When something may be done: likely, with the band of the spec and of the temperature law. */
    readonly Milestone: {
      /** Hours that it takes at the reference temperature. */
      readonly ageH: number;
      /** When it is likely reached (RFC 3339), where a start was stated. */
      readonly at?: components["schemas"]["Instant"];
      /**
       * Which milestone of the cure.
       * @enum {string}
       */
      readonly code: "full" | "gel" | "recoat-shuts" | "release" | "sandable";
      /** Earliest hours to reckon with. */
      readonly earlyH?: number;
      /** Latest hours to reckon with. */
      readonly lateH?: number;
      /** Hours from mixing as the deck is warm; absent when the cure stands still. */
      readonly likelyH?: number;
      /** Why a figure is absent. */
      readonly reason?: components["schemas"]["Text"];
      /** Name of the milestone. */
      readonly title: components["schemas"]["Text"];
    };
    /** The form money takes in JSON. */
    readonly MoneyJson: {
      /** Exact decimal text, such as `1234.50`. */
      readonly amount: components["schemas"]["Decimal"];
      /** ISO 4217 code that the amount is in. */
      readonly currency: components["schemas"]["Currency"];
    };
    /** Core, joints and what is filled solid: together the cavities of the openings, layer by layer. */
    readonly Mosaic: {
      /** Limits of a piece that nobody stated. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** How many pieces, and why so many. */
      readonly division: components["schemas"]["MosaicDivision"];
      /** What about the pieces deserves attention. */
      readonly findings: readonly components["schemas"]["MosaicFinding"][];
      /** Gaps between pieces and round them. */
      readonly jointAreaM2: number;
      /** Length of all joints between pieces. */
      readonly jointLengthM: number;
      /** Length of joint that runs along a support in spite of everything. */
      readonly jointOnSupportM: number;
      /** Area of all pieces. */
      readonly netAreaM2: number;
      /** The pieces, in the order they are bedded. */
      readonly pieces: readonly components["schemas"]["CoringCorePiece"][];
      /** Opening and undercut, each as often as there are layers. */
      readonly regionAreaM2: number;
      /** Filled solid, each place as often as it takes the place of a layer. */
      readonly solidAreaM2: number;
      /** Places that take no core. Never under or over a piece. */
      readonly solidFills: readonly components["schemas"]["SolidFill"][];
      /** Volume that is filled solid in place of core. */
      readonly solidVolumeL: number;
      /** Fields of Mosaic in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MosaicUs"];
    };
    /** How many pieces, and why so many. */
    readonly MosaicDivision: {
      /** Divisions that were looked at, the largest pieces first. */
      readonly choices: readonly components["schemas"]["DivisionChoice"][];
      /** To cut, fit and bed, and to mend hollows. */
      readonly hours: number;
      /** Limit of a piece bedded from above, of the choice that was taken. */
      readonly largestPieceM2: number;
      /**
       * What keeps it from being fewer pieces.
       * @enum {string}
       */
      readonly limitedBy: "bed" | "camber" | "lip" | "nothing" | "sheet";
      /** Fields of MosaicDivision in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["MosaicDivisionUs"];
      /** Why the core is cut into this many pieces. */
      readonly words: components["schemas"]["Text"];
    };
    /** Fields of MosaicDivision in US customary units, when `Accept-Units: us` was sent. */
    readonly MosaicDivisionUs: {
      readonly largestPieceM2?: components["schemas"]["UsText"];
    };
    readonly MosaicFinding: {
      /**
       * What was found about the pieces.
       * @enum {string}
       */
      readonly code: "cannot-be-slid-in" | "filled-solid" | "joint-on-support" | "much-filled-solid" | "order-not-proven";
      /** The opening it is about; absent when it is about all of them. */
      readonly opening?: components["schemas"]["Text"];
      /** The finding in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    /** How core is divided into pieces. */
    readonly MosaicRulesInput: {
      /** Core bedded in one go. Absent: 1 m2 (the bed must still be soft when the last piece of it is pressed). */
      readonly bayM2?: components["schemas"]["AreaInput"];
      /** Diameter of bleed holes. Absent: 4 mm (air under unscored core gets out). */
      readonly bleedDiameterMm?: components["schemas"]["LengthInput"];
      /** Spacing of bleed holes. Absent: 100 mm (air under unscored core gets out). */
      readonly bleedSpacingMm?: components["schemas"]["LengthInput"];
      /** Largest piece slid under a lip. Absent: 0.046 m2 (about half a square foot is slid and turned by hand without scraping its bed off). */
      readonly handPieceM2?: components["schemas"]["AreaInput"];
      /** Gap at each joint. Absent: 2 mm (room for the bedding to rise between pieces). */
      readonly jointGapMm?: components["schemas"]["LengthInput"];
      /** Largest piece bedded from above; absent: the material's own figure. */
      readonly largestPieceM2?: components["schemas"]["AreaInput"];
      /** Narrowest piece slid under a lip. Absent: 100 mm (fingers must hold it in the opening while it goes under). */
      readonly leastLipPieceMm?: components["schemas"]["LengthInput"];
      /** Smallest piece. Absent: 25 cm2 (smaller bits are quicker filled than cut). */
      readonly leastPieceCm2?: number;
      /** Narrowest slot that takes core. Absent: 75 mm (paste, solid laminate or a strip of high density fills a narrower one). */
      readonly leastSlotMm?: components["schemas"]["LengthInput"];
      /** Deepest undercut that is filled rather than cored. Absent: 75 mm (the reach of hooked tools: filler goes under the lip first, the core in the field after it). */
      readonly lipFillMm?: components["schemas"]["LengthInput"];
      /** Narrowest piece. Absent: 40 mm (a narrower one cannot be held, coated and bedded; it is filled instead). */
      readonly narrowestMm?: components["schemas"]["LengthInput"];
      /** Distance between joints of neighbouring rows. Absent: 100 mm (joints that line up make a hinge). */
      readonly staggerMm?: components["schemas"]["LengthInput"];
      /** Distance of joints from a support. Absent: 15 mm (the core carries its shear there). */
      readonly supportClearanceMm?: components["schemas"]["LengthInput"];
    };
    /** Fields of Mosaic in US customary units, when `Accept-Units: us` was sent. */
    readonly MosaicUs: {
      readonly jointAreaM2?: components["schemas"]["UsText"];
      readonly jointLengthM?: components["schemas"]["UsText"];
      readonly jointOnSupportM?: components["schemas"]["UsText"];
      readonly netAreaM2?: components["schemas"]["UsText"];
      readonly regionAreaM2?: components["schemas"]["UsText"];
      readonly solidAreaM2?: components["schemas"]["UsText"];
      readonly solidVolumeL?: components["schemas"]["UsText"];
    };
    readonly NamedFabricInput: {
      /** Fibre mass fraction. */
      readonly fibreMassFraction?: number;
      /**
       * Code of a reinforcement in the catalogue.
       * @example reinforcement-woven-roving-600
       */
      readonly material: string;
      /** Fabric with its resin per m2 of ply, in one currency for all: it ranks and is never billed. Give it for every fabric or for none. */
      readonly pricePerM2?: number;
      /** Roll directions it may be laid in, degrees from forward; absent: 0, and 0 and 90 for unidirectional. */
      readonly turnsDeg?: readonly number[];
    };
    /** A ply of a fabric of the catalogue. */
    readonly NamedPlyInput: {
      /** Fibre mass fraction; absent: hand lay-up by the catalogue. */
      readonly fibreMassFraction?: number;
      /**
       * Code of a reinforcement in the catalogue.
       * @example reinforcement-cloth-335
       */
      readonly material: string;
      /** Roll direction from forward; absent: 0. */
      readonly turnDeg?: number;
    };
    /** A value with its name and unit. */
    readonly NamedValue: {
      /** Code of the value. */
      readonly code: components["schemas"]["Text"];
      /** Name of the value. */
      readonly name: components["schemas"]["Text"];
      /** What goes with the value. */
      readonly note?: components["schemas"]["Text"];
      /** Unit that the value is in. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of NamedValue in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["NamedValueUs"];
      /** The value, in `unit`. */
      readonly value: number;
    };
    /** Fields of NamedValue in US customary units, when `Accept-Units: us` was sent. */
    readonly NamedValueUs: {
      readonly value?: components["schemas"]["UsText"];
    };
    readonly NestPieceInput: {
      /**
       * Format: int32
       * How many alike. Absent: 1 (a piece is one unless more are asked for).
       */
      readonly count?: number;
      /** Holes in the piece; other pieces may be cut from them. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Name of the piece, unique in the request. */
      readonly id: string;
      /** The edge of the piece. */
      readonly outline: readonly (readonly number[])[];
      /** Turns in degrees that keep the grain right, such as [0, 180]; an empty list means any turn. */
      readonly turnsDeg: readonly number[];
    };
    readonly NewClientSessionInput: {
      /**
       * Format: int32
       * How long the estimate may be waited for; 15 when absent.
       */
      readonly minutes?: number;
      /** The reference that the estimate will carry. */
      readonly reference?: string;
    };
    readonly NewEditionInput: {
      /** Code of the edition to start from; the current one when absent. */
      readonly basedOn?: string;
      /** A name for the edition, such as spring-2027. */
      readonly code: string;
      /** What the draft is for. */
      readonly note?: string;
    };
    /** The only answer that ever holds the key itself. */
    readonly NewKey: {
      /** When the key was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** From when on the key opens nothing; it never ends by itself when absent. */
      readonly expiresAt?: components["schemas"]["Instant"];
      /** Id of the key; not the key itself. */
      readonly id: components["schemas"]["Id"];
      /** The key itself; shown this once. */
      readonly key: components["schemas"]["Text"];
      /** To the minute; absent for a key that was never used. */
      readonly lastUsedAt?: components["schemas"]["Text"];
      /** What the key is used for; stands in histories. */
      readonly name: components["schemas"]["Text"];
      /** Organisation the key belongs to. */
      readonly organisationId: components["schemas"]["Id"];
      /** The first characters, by which a person recognises the key. */
      readonly prefix: components["schemas"]["Text"];
      /** The key in whose place this one was made. */
      readonly renewsId?: components["schemas"]["Id"];
      /** When it stopped counting (RFC 3339); absent while it counts. */
      readonly revokedAt?: components["schemas"]["Instant"];
      /** What its holder may do; see the table of roles. */
      readonly roles: readonly ("auditor" | "catalogue-admin" | "chandler" | "integrator" | "organisation-admin" | "platform-operator" | "surveyor")[];
      /** What an integrator may do. */
      readonly scopes: readonly ("audit:read" | "calculate" | "catalogue:read" | "catalogue:write" | "estimates:read" | "estimates:write" | "events:read" | "letterhead:read" | "orders:read" | "pages:write" | "prices:write" | "webhooks:read" | "webhooks:write")[];
    };
    readonly NewKeyInput: {
      /**
       * Format: date-time
       * When the key ends by itself; never when absent.
       */
      readonly expiresAt?: string;
      /** Whose key it is, or what for; shown with everything that is done with it. */
      readonly name: string;
      /** What the key is for; a platform-operator alone gives the role platform-operator. */
      readonly roles: readonly ("surveyor" | "chandler" | "integrator" | "auditor" | "catalogue-admin" | "organisation-admin" | "platform-operator")[];
      /** What an integrator may do: required for that role, and of no use to another. */
      readonly scopes?: readonly ("calculate" | "estimates:read" | "estimates:write" | "orders:read" | "catalogue:read" | "prices:write" | "catalogue:write" | "letterhead:read" | "pages:write" | "audit:read" | "events:read" | "webhooks:read" | "webhooks:write")[];
    };
    /** A new organisation with the key that runs it; from here on, nobody outside can make another. */
    readonly NewOrganisation: {
      /** First key of the organisation; its text is shown this once. */
      readonly adminKey: components["schemas"]["NewKey"];
      /** When the organisation was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Id of the organisation. */
      readonly id: components["schemas"]["Id"];
      /** Name of the organisation, as its documents show it. */
      readonly name: components["schemas"]["Text"];
    };
    readonly NewOrganisationInput: {
      /** As it stands at the head of documents. */
      readonly name: string;
    };
    readonly NewPublishableKeyInput: {
      /** A published edition, in effect, to estimate with; whichever is current when absent. */
      readonly edition?: string;
      /**
       * Format: date-time
       * When the key ends by itself; never when absent.
       */
      readonly expiresAt?: string;
      /** Which page it is for. */
      readonly name: string;
      /** Origins of the pages that may use the key, exactly as a browser sends them. */
      readonly origins: readonly string[];
      /**
       * Format: int32
       * Estimates a day, counted from midnight UTC.
       */
      readonly perDay: number;
      /**
       * Format: int32
       * Requests a minute of all visitors together.
       */
      readonly perMinute: number;
      /**
       * Format: int32
       * Requests a minute from one address.
       */
      readonly perMinutePerVisitor: number;
    };
    /** An endpoint with the secret that signs its events, shown in this answer only. */
    readonly NewWebhookEndpoint: {
      /** When the endpoint was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Why nothing is delivered any more; absent while it is. */
      readonly disabledBecause?: components["schemas"]["Text"];
      /** Id of the endpoint. */
      readonly id: components["schemas"]["Id"];
      /** `whsec_` and base64 of 32 random bytes. */
      readonly secret: components["schemas"]["Text"];
      /** Events that the endpoint is told of. */
      readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
      /** Where events are posted to. */
      readonly url: components["schemas"]["Text"];
    };
    readonly NewWebhookEndpointInput: {
      /** What the endpoint is told of. */
      readonly types: readonly ("estimate.created" | "estimate.revised" | "edition.published" | "edition.withdrawn" | "operation.done" | "order.made")[];
      /**
       * Where events are posted: https, on a public address, without a port.
       * @example https://shop.example/kingplank-events
       */
      readonly url: string;
    };
    /** How the next readings may be taken. */
    readonly NextAskedInput: {
      /**
       * Format: int32
       * Most readings named at once. Absent: 10 (about as many as are taken before the map is looked at again).
       */
      readonly count?: number;
      /** Absent: taps; the meter where its readings on dry and on soaked deck are stated; plugs once there are eight symptoms. */
      readonly kinds?: readonly ("sounding" | "moisture" | "plug")[];
      /** Time of a meter reading: deck wiped dry, meter held still, written down. Absent: 1 min (the deck is wiped and the meter is tried in two directions). */
      readonly meterMinutes?: number;
      /** Time there is for readings. */
      readonly minutes?: number;
      /** Time of a plug: drilled, looked at, photographed, closed and made good. Absent: 30 min (the hole is closed the same day, and made good where the deck is not opened later). */
      readonly plugMinutes?: number;
      /** Time of a tap: measured in, sounded, written down. Absent: 0.5 min (two a minute once a grid is chalked). */
      readonly tapMinutes?: number;
      /** Outlines of deck that nobody can get at, as under a raft or a chest. */
      readonly unreachable?: readonly (readonly (readonly number[])[])[];
    };
    /** A reading worth taking next, and what it would be worth. */
    readonly NextReading: {
      /** Where to take it, [xMm, yMm]. */
      readonly at: readonly number[];
      /** Chance of bad core there, as far as is known. */
      readonly chance: number;
      /**
       * What to do there: tap, hold a meter, or drill a plug.
       * @enum {string}
       */
      readonly kind: "moisture" | "plug" | "sounding";
      /** Time that it takes. */
      readonly minutes: number;
      /** As on the drawing. */
      readonly number: number;
      /** Its part of the hours saved by all of them, beyond the readings before it. */
      readonly worthH: number;
    };
    /** Where to tap or plug next, what that is worth, and when to stop. */
    readonly NextReadings: {
      /** Whether to go on or to stop, in words. */
      readonly advice: components["schemas"]["ExtentFinding"];
      /** Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
      readonly areaRangeM2: components["schemas"]["NextReadingsAreaRangeM2"];
      /** What was taken about the value of a reading. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** Whether they save more than their own time. */
      readonly isWorthIt: boolean;
      /** Working time of all of them. */
      readonly minutes: number;
      /** Readings to take next, the best first. */
      readonly readings: readonly components["schemas"]["NextReading"][];
      /** Fields of NextReadings in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["NextReadingsUs"];
      /** Working hours that deciding after them is expected to save. */
      readonly worthH: number;
    };
    /** Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
    readonly NextReadingsAreaRangeM2: {
      /** Spread expected when the readings are taken. */
      readonly after: number;
      /** Spread of the bad area as it is known. */
      readonly now: number;
    };
    readonly NextReadingsRequest: {
      /** Fittings through the deck, which openings keep clear of or take in. */
      readonly fittings?: readonly components["schemas"]["FittingInput"][];
      /** How readings become a map. */
      readonly map?: components["schemas"]["MapSettingsInput"];
      /** How the deck is opened. */
      readonly method?: components["schemas"]["OpeningMethodInput"];
      /** How the next readings may be taken. */
      readonly next?: components["schemas"]["NextAskedInput"];
      /** The outer skin, where its thickness is known. */
      readonly outerSkin?: components["schemas"]["SkinInput"];
      /** The panel that readings are taken on. */
      readonly panel: components["schemas"]["PanelInput"];
      /** Rules of the trade. */
      readonly rules?: components["schemas"]["OpeningRulesInput"];
      /** Readings so far; none yet is an answer too. */
      readonly survey: components["schemas"]["SurveySoFarInput"];
      /** What is opened as things stand; absent: what the map would open. */
      readonly zones?: readonly components["schemas"]["OpeningZoneInput"][];
    };
    /** Its assumptions stand among those of the estimate. */
    readonly NextReadingsSection: {
      /** Whether more readings would pay. */
      readonly advice: components["schemas"]["EstimateFinding"];
      /** Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
      readonly areaRangeM2: components["schemas"]["NextReadingsAreaRangeM2"];
      /** Whether they save more than their own time. */
      readonly isWorthIt: boolean;
      /** Working time of all of them. */
      readonly minutes: number;
      /** Readings to take next, the best first. */
      readonly readings: readonly components["schemas"]["NextReading"][];
      /** Fields of NextReadingsSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["NextReadingsSectionUs"];
      /** Working hours that deciding after them is expected to save. */
      readonly worthH: number;
    };
    /** Fields of NextReadingsSection in US customary units, when `Accept-Units: us` was sent. */
    readonly NextReadingsSectionUs: {
      /** `areaRangeM2` in US customary units. */
      readonly areaRangeM2?: components["schemas"]["NextReadingsUsAreaRangeM2"];
    };
    /** Fields of NextReadings in US customary units, when `Accept-Units: us` was sent. */
    readonly NextReadingsUs: {
      /** `areaRangeM2` in US customary units. */
      readonly areaRangeM2?: components["schemas"]["NextReadingsUsAreaRangeM2"];
    };
    /** `areaRangeM2` in US customary units. */
    readonly NextReadingsUsAreaRangeM2: {
      readonly after: components["schemas"]["UsText"];
      readonly now: components["schemas"]["UsText"];
    };
    /** The event. */
    readonly Occurrence: {
      /** Of the damage, and whether it fits the event; never blame. */
      readonly cause?: components["schemas"]["Text"];
      /** Reference of the insurer. */
      readonly insurerReference?: components["schemas"]["Text"];
      /** Day of the event. */
      readonly on?: components["schemas"]["Text"];
    };
    /** The event. */
    readonly OccurrenceInput: {
      /** Of the damage, and whether it fits the event; never blame. */
      readonly cause?: string;
      /** Reference of the insurer. */
      readonly insurerReference?: string;
      /**
       * Format: date
       * Day of the event.
       */
      readonly on?: string;
    };
    /** A rectangle that is left whole on a sheet. */
    readonly Offcut: {
      /** Area of the piece worth keeping. */
      readonly areaM2: number;
      /** Edge of the piece worth keeping. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of Offcut in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OffcutUs"];
    };
    /** Fields of Offcut in US customary units, when `Accept-Units: us` was sent. */
    readonly OffcutUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    /** In two stages: what is known at a firm price, what is not by rates. */
    readonly Offer: {
      /** How far work may go on without asking. */
      readonly authorisation: components["schemas"]["OfferAuthorisation"];
      /** Where work stops until the customer has agreed. */
      readonly holdPoint: components["schemas"]["Text"];
      /** Opening and mapping, priced by itself. */
      readonly stageZero: components["schemas"]["StageZero"];
      /** Without tax, overhead and profit inside. */
      readonly unitRates: readonly components["schemas"]["OfferUnitRates"][];
    };
    /** How far work may go on without asking. */
    readonly OfferAuthorisation: {
      /** Why so much. */
      readonly basis: components["schemas"]["Text"];
      /** Hours above the planned ones. */
      readonly labourH: number;
      /** Percent above the price. */
      readonly percent: number;
    };
    readonly OfferUnitRates: {
      /**
       * Code of the rate.
       * @enum {string}
       */
      readonly code: "cut-m" | "fitting-h" | "hole" | "opened-m2" | "visit";
      /** Quantity of it that this estimate holds. */
      readonly quantity: number;
      /** Price for one unit. */
      readonly rate: components["schemas"]["MoneyJson"];
      /** Unit that it is paid by. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Offer in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OfferUnitRatesUs"];
      /** What the rate is for. */
      readonly what: components["schemas"]["Text"];
    };
    /** Fields of Offer in US customary units, when `Accept-Units: us` was sent. */
    readonly OfferUnitRatesUs: {
      readonly quantity?: components["schemas"]["UsText"];
    };
    /** The old core between the skins, as it was built. */
    readonly OldCore: {
      /** From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines. */
      readonly cavityMm?: number;
      /**
       * Kind of the old core. Absent: end-grain-balsa (the commonest deck core; a plug would tell).
       * @enum {string}
       */
      readonly coreType?: "cross-linked-foam" | "end-grain-balsa" | "linear-foam" | "marine-plywood" | "san-foam";
      /** Density of the old core. */
      readonly densityKgPerM3?: number;
      /** Thickness of the core: mm, or text with a unit. */
      readonly thicknessMm: number;
    };
    /** The core that is in the deck. */
    readonly OldCoreInput: {
      /** From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines. */
      readonly cavityMm?: components["schemas"]["LengthInput"];
      /**
       * Kind of the old core. Absent: end-grain-balsa (the commonest deck core; a plug would tell).
       * @enum {string}
       */
      readonly coreType?: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
      /** Density of the old core. */
      readonly densityKgPerM3?: number;
      /**
       * Thickness of the core: mm, or text with a unit.
       * @example 1/2 in
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** How heavy and how wet the old core is. */
    readonly OldCoreMassInput: {
      /** Density of the old core; absent: that of the new one. */
      readonly densityKgPerM3?: number;
      /** Water in the old core, parts of its dry mass: 1.5 is wetter than its own weight. */
      readonly moistureFraction?: number;
    };
    /** Old skin. */
    readonly OldSkinInput: {
      /** Its plies from the core outwards; absent: guessed from the thickness, with the spread stated. */
      readonly plies?: readonly components["schemas"]["NamedPlyInput"][];
      /** Code of its resin. Absent: polyester (nearly all moulded decks are). */
      readonly resin?: string;
      /**
       * Measured thickness.
       * @example 3
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** The skin that the new one must match. */
    readonly OldSkinReport: {
      /** Stiffness of the old skin athwart. */
      readonly acrossNPerMm: number;
      /** Stiffness it might have if the guess is low. */
      readonly alongHighNPerMm?: number;
      /** Where guessed: stiffness along of the weakest and the strongest likely build. */
      readonly alongLowNPerMm?: number;
      /** Stiffness of the old skin fore and aft. */
      readonly alongNPerMm: number;
      /** Whether its plies were guessed from the thickness. */
      readonly isGuessed: boolean;
      /** Stiffness of the old skin in shear. */
      readonly shearNPerMm: number;
      /** In the order tension along, compression along, tension across, compression across. */
      readonly strengthNPerMm: readonly number[];
      /** Thickness of the old skin. */
      readonly thicknessMm: number;
      /** Fields of OldSkinReport in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OldSkinReportUs"];
    };
    /** Fields of OldSkinReport in US customary units, when `Accept-Units: us` was sent. */
    readonly OldSkinReportUs: {
      readonly acrossNPerMm?: components["schemas"]["UsText"];
      readonly alongHighNPerMm?: components["schemas"]["UsText"];
      readonly alongLowNPerMm?: components["schemas"]["UsText"];
      readonly alongNPerMm?: components["schemas"]["UsText"];
      readonly shearNPerMm?: components["schemas"]["UsText"];
      /** `strengthNPerMm` in US customary units. */
      readonly strengthNPerMm?: readonly components["schemas"]["UsText"][];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Material that is there already and is not bought again. */
    readonly OnHandInput: {
      /**
       * Form of the sheet: plain, or scored so that it bends.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Code of a material of the catalogue. */
      readonly material: string;
      /** Months for which it keeps. */
      readonly monthsLeft?: number;
      /** Hardener of a resin. */
      readonly part?: string;
      /** Quantity left over and still good. */
      readonly quantity: number;
      /** Width of the roll that the fabric comes on. */
      readonly rollWidthMm?: components["schemas"]["LengthInput"];
      /** Size of the sheet. */
      readonly sheet?: components["schemas"]["SheetSizeInput"];
      /** Thickness of the material. */
      readonly thicknessMm?: components["schemas"]["LengthInput"];
      /**
       * Unit of the quantity on hand.
       * @enum {string}
       */
      readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
    };
    /** The inner skin alone while the core is out. */
    readonly OpenedPanelInput: {
      /** Sag the new core may keep. Absent: 1 mm (a sag the fairing hides). */
      readonly allowedSagMm?: components["schemas"]["LengthInput"];
      /** Pressure on the new core. Absent: 1 kPa (a flexible skin and a thin bed close under 0.5 to 1 kPa, 50 to 100 kg/m2; more sags the skin below). */
      readonly clampPressureKPa?: number;
      /**
       * Edges of the opened inner skin. Absent: simply-supported (the cautious case for its sag).
       * @enum {string}
       */
      readonly edges?: "simply-supported" | "clamped";
      /** The opening; absent: the whole panel. */
      readonly lengthXMm?: components["schemas"]["LengthInput"];
      /** Width athwartships. */
      readonly widthYMm?: components["schemas"]["LengthInput"];
    };
    readonly Opening: {
      /** Edge of the opening. */
      readonly area: components["schemas"]["Area"];
      /** Area of the opening. */
      readonly areaM2: number;
      /** Sound core in the opening that is left where it is. */
      readonly coreStays: readonly components["schemas"]["Area"][];
      /** Sound core that stays in the opening. */
      readonly coreStaysAreaM2: number;
      /** Radius to round the corners to. */
      readonly cornerRadiusMm: number;
      /** Absent when no depth is safe; a finding says why. */
      readonly cutDepthMm?: number;
      /** Length of its saw cuts. */
      readonly cutLengthM: number;
      /** Name of the opening on drawings. */
      readonly label: components["schemas"]["Text"];
      /** Why the opening has this form. */
      readonly reason: components["schemas"]["Text"];
      /** Corners of the saw line before rounding, measured from the datum corner of the panel. */
      readonly sawLine: readonly (readonly number[])[];
      /** Where the old skin is ground. */
      readonly taperBand: readonly components["schemas"]["Area"][];
      /** Where core is taken from under the edge. */
      readonly undercut: readonly components["schemas"]["Area"][];
      /** How much core is taken from under the edge. */
      readonly undercutAreaM2: number;
      /** Fields of Opening in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OpeningUs"];
    };
    /** How the deck is opened. */
    readonly OpeningMethodInput: {
      /**
       * Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
       * @enum {string}
       */
      readonly access?: "from-above" | "from-below";
      /** Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
      readonly cutMarginMm?: components["schemas"]["LengthInput"];
      /** Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
      readonly flangeMm?: components["schemas"]["LengthInput"];
      /**
       * Bond the lifted skin back, or laminate a new one. Absent: relay (a new laminate gives the soundest skin).
       * @enum {string}
       */
      readonly skin?: "re-bed" | "relay";
      /** Taper ratio, length to one of thickness. Absent: 12 (the usual figure for glass decks; in tests of 1:6, 1:12 and 1:20 the best of the three). */
      readonly taperRatio?: number;
    };
    /** Where to saw, how deep, what to ream out, what stays, and what does not fit. */
    readonly OpeningPlan: {
      /** Defaults that were used, each with its reason and source. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** Absent when no depth is safe; a finding of severity `stop` says why. */
      readonly cutDepthMm?: number;
      /** Length of the cuts to saw. */
      readonly cutLengthM: number;
      /** The plan's areas and lengths with their derivations. */
      readonly figures: components["schemas"]["PlanFigures"];
      /** What about the openings deserves attention. */
      readonly findings: readonly components["schemas"]["ExtentFinding"][];
      /** Fittings that the openings touch. */
      readonly fittings: readonly components["schemas"]["FittingInScope"][];
      /** Distance kept from edges: the flange, or the taper where that is wider and there is room. */
      readonly insetMm: number;
      /** Area whose outer skin comes off. */
      readonly openedAreaM2: number;
      /** From the largest to the smallest. */
      readonly openings: readonly components["schemas"]["PlannedOpening"][];
      /** Area of the whole panel. */
      readonly panelAreaM2: number;
      /** Skin that stays: with the openings it is the whole panel. */
      readonly retained: readonly components["schemas"]["Polygon"][];
      /** Area of opened skin that is bedded again. */
      readonly retainedAreaM2: number;
      /** Cuts across lifted skin, beside the cuts round the openings. */
      readonly splitLengthM: number;
      /** Area of old skin that is ground to a taper. */
      readonly taperBandAreaM2: number;
      /** Width of the ground taper. */
      readonly taperWidthMm: number;
      /** Core taken out under skin that stays. */
      readonly undercutAreaM2: number;
      /** Bad core that no opening reaches. */
      readonly unreached: readonly components["schemas"]["Polygon"][];
      /** Fields of OpeningPlan in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OpeningPlanUs"];
    };
    /** Fields of OpeningPlan in US customary units, when `Accept-Units: us` was sent. */
    readonly OpeningPlanUs: {
      readonly cutDepthMm?: components["schemas"]["UsText"];
      readonly cutLengthM?: components["schemas"]["UsText"];
      readonly insetMm?: components["schemas"]["UsText"];
      readonly openedAreaM2?: components["schemas"]["UsText"];
      readonly panelAreaM2?: components["schemas"]["UsText"];
      readonly retainedAreaM2?: components["schemas"]["UsText"];
      readonly splitLengthM?: components["schemas"]["UsText"];
      readonly taperBandAreaM2?: components["schemas"]["UsText"];
      readonly taperWidthMm?: components["schemas"]["UsText"];
      readonly undercutAreaM2?: components["schemas"]["UsText"];
    };
    /** Distances and least sizes that openings keep to. */
    readonly OpeningRulesInput: {
      /** Largest skin piece that can be bedded before the resin gels. */
      readonly bondableAreaM2?: components["schemas"]["AreaInput"];
      /** Longest skin piece that can be bedded before the resin gels. */
      readonly bondableLengthMm?: components["schemas"]["LengthInput"];
      /** Labour for each corner of the cut. Absent: 0.05 h (drill or grind the round, set the saw in again). */
      readonly cornerH?: number;
      /** Radius of the corners of the cut. Absent: 40 mm (rounded corners of 25 to 50 mm do not start cracks). */
      readonly cornerRadiusMm?: components["schemas"]["LengthInput"];
      /** Labour for a metre of cut: mark, saw, ream, taper, close. Absent: 1.45 h/m (cut 0.3, ream 0.3, taper 0.35, close the seam 0.5). */
      readonly cutHPerM?: number;
      /** Depth of the saw past the skin. Absent: 2 mm (the saw is set to the measured skin and 1 to 3 mm). */
      readonly depthMarginMm?: components["schemas"]["LengthInput"];
      /** Distance within which fittings belong to the job. Absent: 300 mm (a fitting within about a foot of soft core is a likely cause and is re-bedded with it). */
      readonly fittingReachMm?: components["schemas"]["LengthInput"];
      /** Core left above the inner skin by the saw. Absent: 5 mm (the saw stops well short of the skin behind the core). */
      readonly innerSkinClearanceMm?: components["schemas"]["LengthInput"];
      /** Labour for a square metre of sound deck opened with the rest. Absent: 16 h/m2 (lift 4, core out 6, grind 1, fit core 1.3, bed 1.5, new skin 1.8; finishing is by the panel). */
      readonly openedHPerM2?: number;
      /** Labour for each opening whatever its size. Absent: 1 h (marking out, test holes, moving props and covers). */
      readonly openingH?: number;
      /** Distance of a cut from a support it runs along. Absent: 100 mm (joints do not lie over a bulkhead edge, and joints of skin and core are staggered by 100 mm or more). */
      readonly supportClearanceMm?: components["schemas"]["LengthInput"];
      /** Reach of reaming under skin that stays. Absent: 75 mm (core is reamed out 25 to 75 mm under the sound lip with hooked tools). */
      readonly undercutReachMm?: components["schemas"]["LengthInput"];
    };
    readonly OpeningsRequest: {
      /** The old core between the skins, as it was built. */
      readonly core: components["schemas"]["OldCoreInput"];
      /**
       * How the extent was found; readings can lower it, never raise it.
       * @enum {string}
       */
      readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
      /** Fittings through the deck, which openings keep clear of or take in. */
      readonly fittings?: readonly components["schemas"]["FittingInput"][];
      /** The skin below the core, as it was found. */
      readonly innerSkin: components["schemas"]["SkinInput"];
      /** How readings become a map. */
      readonly map?: components["schemas"]["MapSettingsInput"];
      /** How the deck is opened. */
      readonly method?: components["schemas"]["OpeningMethodInput"];
      /** The skin that is walked on, as it was found. */
      readonly outerSkin: components["schemas"]["SkinInput"];
      /** The panel of deck: its edge, what holds it and what lies under it. */
      readonly panel: components["schemas"]["PanelInput"];
      /** Rules of the trade. */
      readonly rules?: components["schemas"]["OpeningRulesInput"];
      /** Readings of hammer, meter and plugs. */
      readonly survey?: components["schemas"]["SurveyInput"];
      /** Bad core as somebody drew it; absent: mapped from the readings. */
      readonly zones?: readonly components["schemas"]["OpeningZoneInput"][];
    };
    /** Fields of Opening in US customary units, when `Accept-Units: us` was sent. */
    readonly OpeningUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly coreStaysAreaM2?: components["schemas"]["UsText"];
      readonly cornerRadiusMm?: components["schemas"]["UsText"];
      readonly cutDepthMm?: components["schemas"]["UsText"];
      readonly cutLengthM?: components["schemas"]["UsText"];
      readonly undercutAreaM2?: components["schemas"]["UsText"];
    };
    /** A region of bad core. */
    readonly OpeningZoneInput: {
      /**
       * Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
       * @enum {string}
       */
      readonly condition?: "wet-rotten" | "wet-bonded" | "dry-debonded";
      /** Sound core inside the zone. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Name of the zone. */
      readonly id: string;
      /** The region of bad core. */
      readonly outline: readonly (readonly number[])[];
    };
    /** What the open deck may carry meanwhile. */
    readonly OpenSkinAnswer: {
      /** How to work on the open deck. */
      readonly advice: readonly components["schemas"]["Text"][];
      /** With the pull of the skin between held edges, where the sag is large. */
      readonly clampSagMm: number;
      /** Stress in the inner skin where it is held. */
      readonly clampStressMPa: number;
      /** Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges. */
      readonly isLargeDeflection: boolean;
      /** Sag under the pressing by plate bending alone, without the stretch of the skin. */
      readonly linearClampSagMm: number;
      /** Sag under one person. */
      readonly personSagMm: number;
      /** Plate bending alone: an upper bound where the sag is large. */
      readonly personStressMPa: number;
      /** Whether props are needed before somebody steps on it. */
      readonly propsNeeded: boolean;
      /** The same for a person who kneels or steps on it; absent when no spacing between props makes that safe. */
      readonly propSpacingForPersonMm?: number;
      /** Spacing of props in both directions that keeps sag and stress within bounds under the clamp load. */
      readonly propSpacingMm: number;
      /** Fields of OpenSkinAnswer in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["OpenSkinAnswerUs"];
      /** Stress that the inner skin may take. */
      readonly usableStressMPa: number;
    };
    /** Fields of OpenSkinAnswer in US customary units, when `Accept-Units: us` was sent. */
    readonly OpenSkinAnswerUs: {
      readonly clampSagMm?: components["schemas"]["UsText"];
      readonly clampStressMPa?: components["schemas"]["UsText"];
      readonly linearClampSagMm?: components["schemas"]["UsText"];
      readonly personSagMm?: components["schemas"]["UsText"];
      readonly personStressMPa?: components["schemas"]["UsText"];
      readonly propSpacingForPersonMm?: components["schemas"]["UsText"];
      readonly propSpacingMm?: components["schemas"]["UsText"];
      readonly usableStressMPa?: components["schemas"]["UsText"];
    };
    /** An operation ended: with a result, or with a reason why there is none. */
    readonly OperationDone: {
      /** The operation and how it ended; what it names is fetched from its address. */
      readonly data: components["schemas"]["OperationNamed"];
      /** Id of the event of this ending of an operation, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the operation ended (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * Work that was answered later has ended. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "operation.done";
    };
    /** Kind of the job. */
    readonly OperationFlagsInput: {
      /**
       * Side of the work.
       * @enum {string}
       */
      readonly access: "from-above" | "from-below";
      /**
       * What lies below the deck.
       * @enum {string}
       */
      readonly below: "open" | "lined" | "none";
      /**
       * Where the boat lies.
       * @enum {string}
       */
      readonly berth: "ashore" | "afloat";
      /**
       * State of the core.
       * @enum {string}
       */
      readonly condition: "wet-rotten" | "wet-bonded" | "dry-debonded";
      /**
       * Finish of the deck.
       * @enum {string}
       */
      readonly finish: "painted" | "none";
      /**
       * Whether there is non-skid.
       * @enum {string}
       */
      readonly nonskid: "yes" | "no";
      /**
       * Whether the panel is cambered.
       * @enum {string}
       */
      readonly panel: "flat" | "cambered";
      /**
       * What presses the bed.
       * @enum {string}
       */
      readonly press: "weights" | "battens" | "vacuum";
      /**
       * Whether props are needed.
       * @enum {string}
       */
      readonly props: "needed" | "not-needed";
      /**
       * Shelter over the work.
       * @enum {string}
       */
      readonly shelter: "shed" | "tent" | "open";
      /**
       * Who does the work.
       * @enum {string}
       */
      readonly skill: "professional" | "owner";
      /**
       * What becomes of the skin.
       * @enum {string}
       */
      readonly skin: "re-bed" | "relay" | "inject" | "closed";
    };
    /** The operation and how it ended; what it names is fetched from its address. */
    readonly OperationNamed: {
      /** Path of the operation. */
      readonly href: components["schemas"]["Text"];
      /** Id of the operation that ended. */
      readonly id: components["schemas"]["Id"];
      /**
       * How it ended.
       * @enum {string}
       */
      readonly status: "done" | "failed";
    };
    /** The members of an RFC 9457 problem document that outlast the request. */
    readonly OperationProblem: {
      /** What went wrong this time. */
      readonly detail: components["schemas"]["Text"];
      /**
       * Format: int32
       * How many faults were found, where the request was at fault.
       */
      readonly errorCount?: number;
      /** What must be put right, each with its place in the request that was accepted. */
      readonly errors?: readonly components["schemas"]["ShownProblem"][];
      /** HTTP status that the request would have had. */
      readonly status: number;
      /** Kind of problem in words. */
      readonly title: components["schemas"]["Text"];
      /** Address of a page that explains the kind of problem. */
      readonly type: components["schemas"]["Text"];
    };
    /** When it is done: where the result is. */
    readonly OperationResult: {
      /** Address of what was made. */
      readonly href: components["schemas"]["Text"];
      /** Media type of what was made. */
      readonly mediaType: components["schemas"]["Text"];
    };
    /** An order to a supplier was written. */
    readonly OrderMade: {
      /** The order and its supplier; what it names is fetched from its address. */
      readonly data: components["schemas"]["OrderNamed"];
      /** Id of the event of this order, the same at each attempt to deliver it. */
      readonly id: components["schemas"]["Id"];
      /** When the order was written (RFC 3339). */
      readonly timestamp: components["schemas"]["Instant"];
      /**
       * An order for a supplier was written. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly type: "order.made";
    };
    /** The order and its supplier; what it names is fetched from its address. */
    readonly OrderNamed: {
      /** Ids of the estimates that are ordered for. */
      readonly estimateIds: readonly components["schemas"]["Text"][];
      /** Code of the edition whose prices the order has. */
      readonly pricedAt: components["schemas"]["Text"];
      /** Code of the supplier, when the order names one. */
      readonly supplier?: components["schemas"]["Text"];
    };
    /** Who keys and estimates belong to. */
    readonly Organisation: {
      /** When the organisation was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Id of the organisation. */
      readonly id: components["schemas"]["Id"];
      /** Name of the organisation, as its documents show it. */
      readonly name: components["schemas"]["Text"];
    };
    /** What stands at the head of reports, job packs and change orders. */
    readonly OrganisationLetterhead: {
      /** Address and contacts under the name, line by line. */
      readonly lines: readonly components["schemas"]["Text"][];
      /** The logo; absent when none was set. */
      readonly logo?: components["schemas"]["LogoLink"];
      /** Words for those who cannot see the logo. */
      readonly logoDescription?: components["schemas"]["Text"];
      /** The name of the organisation. */
      readonly name: components["schemas"]["Text"];
    };
    readonly OrganisationList: {
      /** All organisations, in the order they were made. */
      readonly items: readonly components["schemas"]["Organisation"][];
      /** Give it as `cursor` for more organisations; absent on the last page. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    /** The skin that stays. */
    readonly OtherSkinInput: {
      /** Membrane stiffness of the skin that stays, athwart. */
      readonly acrossNPerMm: number;
      /** Extensional stiffness along (modulus times thickness). */
      readonly alongNPerMm: number;
      /** Thickness of the skin on the other side of the core. */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
    readonly OverlayInput: {
      /**
       * What lies on the deck and must come off first.
       * @enum {string}
       */
      readonly kind: "screwed-planks" | "glued-planks" | "synthetic";
      /**
       * Laid again, replaced by paint, left to others by the wish of the customer, or not touched at all: then the deck is mended from below alone. Absent: paint (most decks that lose their planks are painted).
       * @enum {string}
       */
      readonly then?: "back" | "paint" | "not-included" | "stays";
      /** Screws, caulk and the step that is left follow from it. */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
    readonly OverlayRecord: {
      /**
       * What lies on the deck and must come off first.
       * @enum {string}
       */
      readonly kind: "glued-planks" | "screwed-planks" | "synthetic";
      /**
       * Laid again, replaced by paint, left to others by the wish of the customer, or not touched at all: then the deck is mended from below alone. Absent: paint (most decks that lose their planks are painted).
       * @enum {string}
       */
      readonly then?: "back" | "not-included" | "paint" | "stays";
      /** Screws, caulk and the step that is left follow from it. */
      readonly thicknessMm: number;
    };
    readonly OwnOffcutInput: {
      /**
       * Plain, or scored so that it bends. Absent: plain (most offcuts are).
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Bad spots and cut-outs of the offcut. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Name of the offcut, unique in the request. */
      readonly id: string;
      /** The edge of the offcut as it is. */
      readonly outline: readonly (readonly number[])[];
      /** Thickness of the offcut. */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** Which material, how much and in which form. */
    readonly PackContentInput: {
      /**
       * Whether the sheet in the pack is plain or scored.
       * @enum {string}
       */
      readonly form?: "plain" | "scored";
      /** Code of a material of the same edition. */
      readonly material: string;
      /** Code of a hardener, when the pack holds one. */
      readonly part?: string;
      /** How much the pack holds, in its unit. */
      readonly quantity: number;
      /** Width of the roll in the pack. */
      readonly rollWidthMm?: number;
      /** Size of the sheet in the pack. */
      readonly sheet?: components["schemas"]["SheetFormatInput"];
      /** Thickness of the sheet in the pack. */
      readonly thicknessMm?: number;
      /**
       * Unit of what the pack holds.
       * @enum {string}
       */
      readonly unit: "kg" | "l" | "m2" | "m" | "each" | "pair" | "roll" | "pack";
    };
    readonly PackCountInput: {
      /**
       * Format: int32
       * Whole packs that can be sold now.
       */
      readonly packs: number;
    };
    /** A pack as a supplier sells it: what is in it, and its price from one pack upwards. */
    readonly PackInput: {
      /** Which material, how much and in which form. */
      readonly content: components["schemas"]["PackContentInput"];
      /** Extra charge when a part of the pack is cut off. */
      readonly cutFee?: string;
      /** Whether it is sent as dangerous goods. */
      readonly hazardous: boolean;
      /** Mass of the full pack, for carriage. */
      readonly massKg: number;
      /** Name that the supplier sells the pack under. */
      readonly name: string;
      /** Whether it is too large for parcels. */
      readonly oversize: boolean;
      /** The first is for one pack; ascending. */
      readonly prices: readonly components["schemas"]["PriceBreakInput"][];
      /** How long the closed pack keeps. */
      readonly shelfLifeMonths?: number;
      /** Number that the supplier sells the pack under. */
      readonly sku: string;
      /**
       * Format: int32
       * Packs there are; absent when nobody counts.
       */
      readonly stock?: number;
      /** Code of a supplier of the same list. */
      readonly supplier: string;
    };
    /** The four states of one panel under the same loads. A comparison, never a design approval. */
    readonly PanelAnswer: {
      /** Figures of the comparison that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Cautions about standing and working on the deck. */
      readonly cautions: readonly components["schemas"]["PanelCaution"][];
      /** Derivations of the keys asked for in `explain`. */
      readonly explained?: {
        readonly [key: string]: components["schemas"]["Figure"];
      };
      /** Checks of the fittings. */
      readonly fittings: readonly components["schemas"]["PanelCheckItem"][];
      /** What the comparison does not say. */
      readonly limits: readonly components["schemas"]["Text"][];
      /** Loads that the states were compared under. */
      readonly loads: readonly components["schemas"]["LoadResult"][];
      /** What the open deck may carry meanwhile. */
      readonly opened: components["schemas"]["OpenSkinAnswer"];
      /** As built over repaired: at least 1 means that the repair gives back what there was. */
      readonly ratios: readonly components["schemas"]["Ratio"][];
      /** Every ratio that is below 1 by more than hands repeat, worst first. */
      readonly shortfalls: readonly components["schemas"]["Text"][];
      /** The deck in each state: as built, found, opened, repaired. */
      readonly states: readonly components["schemas"]["StateAnswer"][];
      /** Greatest estimated relative error of the series and polynomials. */
      readonly truncation: number;
      /**
       * Whether the repair restores what the deck had.
       * @enum {string}
       */
      readonly verdict: "not-restored" | "restored";
      /** What is short by less, in a sentence. */
      readonly withinHands: readonly components["schemas"]["Text"][];
    };
    /** With it, the bending of the panel is restored too. */
    readonly PanelBelowInput: {
      /** The core as it was. */
      readonly core: components["schemas"]["CoreLayerInput"];
      /** The core that goes in; absent: as the old. */
      readonly newCore?: components["schemas"]["CoreLayerInput"];
      /** The skin that stays. */
      readonly otherSkin: components["schemas"]["OtherSkinInput"];
    };
    readonly PanelCaution: {
      /** Which fact calls for the caution. */
      readonly because: components["schemas"]["Text"];
      /** Code of the caution. */
      readonly code: components["schemas"]["Text"];
      /**
       * How bad it can become.
       * @enum {string}
       */
      readonly severity: "caution" | "danger" | "warning";
      /** Where the caution comes from. */
      readonly source: components["schemas"]["Text"];
      /** What to beware of. */
      readonly text: components["schemas"]["Text"];
    };
    /** A demand against a capacity. Failing is a result. */
    readonly PanelCheckItem: {
      /** Of the repaired panel: what the same check comes to on the deck as built. */
      readonly asBuilt?: components["schemas"]["BuiltCheck"];
      /** What the panel can bear or is allowed. */
      readonly capacity?: number;
      /** Code of the panel's check. */
      readonly code: components["schemas"]["Text"];
      /** What the panel must bear or keep to. */
      readonly demand?: number;
      /** Fitting that it is checked at. */
      readonly fitting?: components["schemas"]["Text"];
      /** What in the panel decides. */
      readonly governs: components["schemas"]["Text"];
      /** Names this check among all, such as `repaired:person:core-shear`; its derivation has the same key. */
      readonly key: components["schemas"]["Text"];
      /** Load that it is checked under. */
      readonly load?: components["schemas"]["Text"];
      /** Why there is no figure, where there is none. */
      readonly reason?: components["schemas"]["Text"];
      /** What would make it pass. */
      readonly remedy?: components["schemas"]["Text"];
      /** Source of the panel's requirement. */
      readonly source: components["schemas"]["Text"];
      /**
       * State of the deck that is checked.
       * @enum {string}
       */
      readonly state?: "as-built" | "as-found" | "opened" | "repaired";
      /** Name of the panel's check. */
      readonly title: components["schemas"]["Text"];
      /** Unit of the panel's demand and capacity. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of PanelCheckItem in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PanelCheckItemUs"];
      /** Demand over capacity. */
      readonly utilisation?: number;
      /**
       * Verdict of the panel's check.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
    };
    /** Fields of PanelCheckItem in US customary units, when `Accept-Units: us` was sent. */
    readonly PanelCheckItemUs: {
      readonly capacity?: components["schemas"]["UsText"];
      readonly demand?: components["schemas"]["UsText"];
    };
    readonly PanelCheckRequest: {
      /** Panel as it was built. */
      readonly asBuilt: components["schemas"]["SandwichValuesInput"];
      /** What rot and water left of the core. */
      readonly asFound?: components["schemas"]["AsFoundInput"];
      /** Craft. */
      readonly craft?: components["schemas"]["CraftForPanelInput"];
      /** Criteria. */
      readonly criteria?: components["schemas"]["CriteriaInput"];
      /** Measured total of the deck, to catch a skin that cannot be. */
      readonly deckThicknessMm?: components["schemas"]["LengthInput"];
      /** Keys of checks, ratios and loads to explain down to their inputs, such as repaired:person:core-shear. */
      readonly explain?: readonly string[];
      /** Fittings bolted through the panel, each with what pulls on it. */
      readonly fittings?: readonly components["schemas"]["PanelFittingInput"][];
      /** Absent: the yardstick pressure when the craft is known, else that of a class rule; and a person on one foot. */
      readonly loads?: readonly components["schemas"]["PanelCheckRequestLoads"][];
      /** The inner skin alone while the core is out. */
      readonly opened?: components["schemas"]["OpenedPanelInput"];
      /** Panel. */
      readonly panel: components["schemas"]["PanelSizeInput"];
      /** Panel as it is repaired. */
      readonly repaired: components["schemas"]["SandwichValuesInput"];
    };
    readonly PanelCheckRequestLoads: components["schemas"]["PressureLoadInput"] | components["schemas"]["PatchLoadInput"] | components["schemas"]["PersonLoadInput"] | components["schemas"]["ClassDeckLoadInput"] | components["schemas"]["YardstickLoadInput"];
    readonly PanelFittingInput: {
      /** Backing plate. */
      readonly backingPlate?: components["schemas"]["BackingPlateInput"];
      /**
       * Diameter of a bolt.
       * @example 5/16 in
       */
      readonly boltMm: components["schemas"]["LengthInput"];
      /**
       * Format: int32
       * Number of bolts.
       */
      readonly bolts: number;
      /** Clamp force of one bolt. */
      readonly clampForceN?: number;
      /** Name of the fitting. */
      readonly id: string;
      /**
       * Kind of fitting, which says what it has to hold.
       * @enum {string}
       */
      readonly kind: "stanchion" | "cleat" | "winch" | "windlass" | "chainplate" | "mast-step" | "track" | "hatch" | "fill" | "vent" | "pad-eye" | "other";
      /** Diameter of the hole potted with thickened resin. */
      readonly pottedMm?: components["schemas"]["LengthInput"];
      /** Compressive strength of the thickened resin. Absent: 60 MPa (thickened epoxy, fully cured). */
      readonly pottedStrengthMPa?: number;
      /** Pull away from the deck. */
      readonly pullN?: number;
      /** Load along the deck. */
      readonly shearN?: number;
      /** Tightening torque, when the clamp force is not known. */
      readonly torqueNm?: number;
      /** Diameter of a washer. */
      readonly washerMm?: components["schemas"]["LengthInput"];
    };
    /** The panel of deck that the repair lies in: its edge, what bears it, and what lies on and below it. */
    readonly PanelInput: {
      /**
       * Access from below. Absent: lined (most decks have a lining that comes down before work and goes back after it).
       * @enum {string}
       */
      readonly accessBelow?: "open" | "lined" | "none";
      /** Radius of the camber; absent means flat. */
      readonly camberRadiusMm?: components["schemas"]["LengthInput"];
      /** From the edge inwards; 0 where the core runs right out. */
      readonly coreEndsMm?: components["schemas"]["LengthInput"];
      /**
       * How the panel is held at its edges. Absent: simply-supported (gives the larger deflection, so the comparison errs on the safe side).
       * @enum {string}
       */
      readonly edges?: "simply-supported" | "clamped";
      /** Hatches and other openings in the deck. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Shown by a drop test with every hole sealed from below; a vacuum bag needs it. */
      readonly isInnerSkinAirtight?: boolean;
      /**
       * A bonded moulded liner is no way through.
       * @enum {string}
       */
      readonly lining?: "none" | "zipped-vinyl" | "screwed-panels" | "glued-vinyl" | "moulded-liner";
      /** Name of the panel. */
      readonly name?: string;
      /**
       * Whether the outer skin is whole, or cracked or crazed.
       * @enum {string}
       */
      readonly outerSkinState?: "whole" | "cracked";
      /**
       * The edge of the panel, from support to support.
       * @example [
       *       [
       *         0,
       *         0
       *       ],
       *       [
       *         1600,
       *         0
       *       ],
       *       [
       *         1600,
       *         1200
       *       ],
       *       [
       *         0,
       *         1200
       *       ]
       *     ]
       */
      readonly outline: readonly (readonly number[])[];
      /** What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
      readonly overlay?: components["schemas"]["OverlayInput"];
      /** Lines the deck rests on: no joint of core or skin over them.. */
      readonly supports?: readonly components["schemas"]["SupportLineInput"][];
      /**
       * Surface of the deck. Absent: painted-nonskid (the usual surface of an older deck).
       * @enum {string}
       */
      readonly surface?: "smooth-paint" | "painted-nonskid" | "moulded-nonskid" | "planked" | "bonded-mat";
      /** What lies below: each brings its caution and its checks. */
      readonly under?: readonly ("wiring" | "fuel-tank" | "water-tank" | "hoses" | "lining" | "insulation")[];
      /** Height clear for a person to work overhead. */
      readonly workingHeightMm?: components["schemas"]["LengthInput"];
    };
    /** The panel of deck: its edge, what holds it and what lies under it. */
    readonly PanelRecord: {
      /**
       * Access from below. Absent: lined (most decks have a lining that comes down before work and goes back after it).
       * @enum {string}
       */
      readonly accessBelow?: "lined" | "none" | "open";
      /** Radius of the camber; absent means flat. */
      readonly camberRadiusMm?: number;
      /** From the edge inwards; 0 where the core runs right out. */
      readonly coreEndsMm?: number;
      /**
       * How the panel is held at its edges. Absent: simply-supported (gives the larger deflection, so the comparison errs on the safe side).
       * @enum {string}
       */
      readonly edges?: "clamped" | "simply-supported";
      /** Hatches and other openings in the deck. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Shown by a drop test with every hole sealed from below; a vacuum bag needs it. */
      readonly isInnerSkinAirtight?: boolean;
      /**
       * A bonded moulded liner is no way through.
       * @enum {string}
       */
      readonly lining?: "glued-vinyl" | "moulded-liner" | "none" | "screwed-panels" | "zipped-vinyl";
      /** Name of the panel. */
      readonly name?: components["schemas"]["Text"];
      /**
       * Whether the outer skin is whole, or cracked or crazed.
       * @enum {string}
       */
      readonly outerSkinState?: "cracked" | "whole";
      /** The edge of the panel, from support to support. */
      readonly outline: readonly (readonly number[])[];
      /** What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
      readonly overlay?: components["schemas"]["OverlayRecord"];
      /** Lines the deck rests on: no joint of core or skin over them.. */
      readonly supports?: readonly components["schemas"]["SupportLine"][];
      /**
       * Surface of the deck. Absent: painted-nonskid (the usual surface of an older deck).
       * @enum {string}
       */
      readonly surface?: "bonded-mat" | "moulded-nonskid" | "painted-nonskid" | "planked" | "smooth-paint";
      /** What lies below: each brings its caution and its checks. */
      readonly under?: readonly ("fuel-tank" | "hoses" | "insulation" | "lining" | "water-tank" | "wiring")[];
      /** Height clear for a person to work overhead. */
      readonly workingHeightMm?: number;
    };
    /** The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval. */
    readonly PanelSection: {
      /** What the comparison leaves out. */
      readonly limits: readonly components["schemas"]["Text"][];
      /** Loads that the deck is compared under. */
      readonly loads: readonly components["schemas"]["NamedValue"][];
      /** Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored. */
      readonly ratios: readonly components["schemas"]["NamedValue"][];
      /** By more than a laminate is repeated by hand. */
      readonly shortfalls: readonly components["schemas"]["Text"][];
      /** Length and width of the panel between supports. */
      readonly sizeMm: readonly number[];
      /** The deck before, open and after. */
      readonly states: readonly components["schemas"]["PanelState"][];
      /** Fields of PanelSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PanelSectionUs"];
      /**
       * Whether the deck is as good as it was.
       * @enum {string}
       */
      readonly verdict: "not-restored" | "restored";
      /** What is short by less than that, in a sentence. */
      readonly withinHands: readonly components["schemas"]["Text"][];
    };
    /** Fields of PanelSection in US customary units, when `Accept-Units: us` was sent. */
    readonly PanelSectionUs: {
      /** `sizeMm` in US customary units. */
      readonly sizeMm?: readonly components["schemas"]["UsText"][];
    };
    /** Panel. */
    readonly PanelSizeInput: {
      /** Each edge by itself, instead of edges. */
      readonly eachEdge?: components["schemas"]["EachEdgeInput"];
      /**
       * All four edges alike. Absent: simply-supported (the cautious case for deflection and for the middle of the panel).
       * @enum {string}
       */
      readonly edges?: "simply-supported" | "clamped" | "free";
      /**
       * Fore and aft, between supports.
       * @example 900
       */
      readonly lengthXMm: components["schemas"]["LengthInput"];
      /**
       * Athwartships, between supports.
       * @example 600
       */
      readonly widthYMm: components["schemas"]["LengthInput"];
    };
    readonly PanelState: {
      /** Bending stiffness of the deck fore and aft. */
      readonly bendingXNmm: number;
      /** Bending stiffness of the deck athwart. */
      readonly bendingYNmm: number;
      /** Only those that linear plate theory can stand for; `note` says which are left out. */
      readonly deflections: readonly components["schemas"]["PanelStateDeflections"][];
      /** What is nearest to its limit in this state. */
      readonly governs?: components["schemas"]["Text"];
      /** What to know about this state. */
      readonly note?: components["schemas"]["Text"];
      /** Shear stiffness of the deck. */
      readonly shearNPerMm: number;
      /**
       * As built, as found, opened or repaired.
       * @enum {string}
       */
      readonly state: "as-built" | "as-found" | "opened" | "repaired";
      /** Fields of PanelState in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PanelStateUs"];
      /** How near: demand over capacity. */
      readonly utilisation?: number;
    };
    readonly PanelStateDeflections: {
      /** Greatest sag under it. */
      readonly deflectionMm: number;
      /** Load under which the deck sags. */
      readonly load: components["schemas"]["Text"];
      /** Fields of PanelState in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PanelStateDeflectionsUs"];
    };
    /** Fields of PanelState in US customary units, when `Accept-Units: us` was sent. */
    readonly PanelStateDeflectionsUs: {
      readonly deflectionMm?: components["schemas"]["UsText"];
    };
    /** Fields of PanelState in US customary units, when `Accept-Units: us` was sent. */
    readonly PanelStateUs: {
      readonly bendingXNmm?: components["schemas"]["UsText"];
      readonly bendingYNmm?: components["schemas"]["UsText"];
      readonly shearNPerMm?: components["schemas"]["UsText"];
    };
    /** Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
    readonly Parties: {
      /** Who ordered the survey or the work. */
      readonly client?: components["schemas"]["Text"];
      /** Owner, insurer or somebody else; where it is not the client. */
      readonly instructedBy?: components["schemas"]["Text"];
      /** The surveyor. */
      readonly surveyor?: components["schemas"]["Surveyor"];
    };
    /** Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
    readonly PartiesInput: {
      /** Who ordered the survey or the work. */
      readonly client?: string;
      /** Owner, insurer or somebody else; where it is not the client. */
      readonly instructedBy?: string;
      /** The surveyor. */
      readonly surveyor?: components["schemas"]["SurveyorInput"];
    };
    /** Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
    readonly PartsWear: {
      /** Wear of the parts they replace. */
      readonly depreciation: components["schemas"]["MoneyJson"];
      /** Parts that wear counts on. */
      readonly parts: components["schemas"]["MoneyJson"];
      /** What is left of the price. */
      readonly remaining: components["schemas"]["MoneyJson"];
    };
    readonly PatchLoadInput: {
      /** Force on the whole patch, downwards. */
      readonly forceN: number;
      /**
       * A pressure on a patch of the panel. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "patch";
      /** Length fore and aft. */
      readonly lengthXMm: components["schemas"]["LengthInput"];
      /** Your own name for the patch, as the answer shows it. */
      readonly name?: string;
      /** Width athwartships. */
      readonly widthYMm: components["schemas"]["LengthInput"];
      /** Middle of the patch. */
      readonly xMm: components["schemas"]["LengthInput"];
      /** Place of its middle athwartships, positive to starboard; absent: the middle of the panel. */
      readonly yMm: components["schemas"]["LengthInput"];
    };
    /**
     * Format: binary
     * PDF/A, ready to print.
     */
    readonly PdfFile: string;
    readonly PersonLoadInput: {
      /** One person on one foot. Absent: 1000 N (one person landing on one foot; codes give 75 to 82.5 kg a person, 736 to 809 N standing). */
      readonly forceN?: number;
      /** Radius of a heel. Absent: 30 mm (heel of 30 mm radius). */
      readonly heelRadiusMm?: components["schemas"]["LengthInput"];
      /**
       * People who stand on the panel. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "person";
      /** Your own name for the people, as the answer shows it. */
      readonly name?: string;
      /** Absent: the middle of the panel. */
      readonly xMm?: components["schemas"]["LengthInput"];
      /** Place of its middle athwartships, positive to starboard; absent: the middle of the panel. */
      readonly yMm?: components["schemas"]["LengthInput"];
    };
    readonly PhotographList: {
      /** Photographs of the estimate, by their number. */
      readonly items: readonly components["schemas"]["DeckPhotograph"][];
    };
    /** One piece where it lies, in the coordinates of its sheet (mm). */
    readonly Placement: {
      /** Which of the alike pieces, from 1. */
      readonly copy: number;
      /** From 1: from the left edge, each before its right-hand neighbours. */
      readonly cutOrder: number;
      /** Holes of the piece where they lie. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** How far the turned piece is moved, [xMm, yMm]. */
      readonly moveMm: readonly number[];
      /** Edge of the piece where it lies. */
      readonly outline: readonly (readonly number[])[];
      /** Piece that is placed. */
      readonly pieceId: components["schemas"]["Text"];
      /** The drawing turned anticlockwise about its origin, then moved. */
      readonly turnDeg: number;
      /** Fields of Placement in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlacementUs"];
    };
    /** Fields of Placement in US customary units, when `Accept-Units: us` was sent. */
    readonly PlacementUs: {
      /** `moveMm` in US customary units. */
      readonly moveMm?: readonly components["schemas"]["UsText"][];
    };
    /** One place of the deck and the method that fits it. */
    readonly PlaceSection: {
      /** Bad area to be expected there. */
      readonly badAreaM2: number;
      /** Why the rung stands where it stands. */
      readonly because: components["schemas"]["Text"];
      /** What is found at the place. */
      readonly place: components["schemas"]["Text"];
      /** Code of the rung. */
      readonly rung: components["schemas"]["Text"];
      /** Name of the rung. */
      readonly title: components["schemas"]["Text"];
      /** Fields of PlaceSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlaceSectionUs"];
    };
    /** Fields of PlaceSection in US customary units, when `Accept-Units: us` was sent. */
    readonly PlaceSectionUs: {
      readonly badAreaM2?: components["schemas"]["UsText"];
    };
    /** The plan's areas and lengths with their derivations. */
    readonly PlanFigures: {
      /** Derivation of the saw's depth. */
      readonly cutDepth?: components["schemas"]["Figure"];
      /** Derivation of the length of cuts. */
      readonly cutLength: components["schemas"]["Figure"];
      /** Derivation of the opened area. */
      readonly openedArea: components["schemas"]["Figure"];
      /** Derivation of the skin bedded again. */
      readonly retainedArea: components["schemas"]["Figure"];
      /** Derivation of the length of cuts between skin pieces. */
      readonly splitLength: components["schemas"]["Figure"];
      /** Derivation of the ground area. */
      readonly taperBandArea: components["schemas"]["Figure"];
      /** Derivation of the taper's width. */
      readonly taperWidth: components["schemas"]["Figure"];
      /** Derivation of the undercut area. */
      readonly undercutArea: components["schemas"]["Figure"];
    };
    /** Everything that stands on one card beside the pot. */
    readonly PlannedBatch: {
      /** Pieces or places that the pot is enough for. */
      readonly covers: readonly components["schemas"]["Text"][];
      /** Longest time after which the next pot may meet this one's edge. */
      readonly edgeOpenMin: number;
      /** Code of the filler in the pot. */
      readonly filler?: components["schemas"]["Text"];
      /** Filler in the pot. */
      readonly fillerG: number;
      /** Temperature that a pot left standing may reach. */
      readonly forgottenPotPeakC: number;
      /** Hardener in the pot. */
      readonly hardenerG: number;
      /**
       * What kept the pot from being larger.
       * @enum {string}
       */
      readonly limitedBy: "exotherm" | "piece" | "pot-life" | "pot-size" | "whole-step";
      /** Mass of resin and hardener mixed. */
      readonly mixedG: number;
      /** Volume of resin and hardener mixed. */
      readonly mixedMl: number;
      /** Number of the pot, from 1, in the order of mixing. */
      readonly number: number;
      /** Time until the pot would gel, left in the cup. */
      readonly potLifeMin: number;
      /** The same in strokes of a metering pump, where its stroke was stated. */
      readonly pumps?: components["schemas"]["Text"];
      /** Resin in the pot. */
      readonly resinG: number;
      /** Time that spreading the pot takes. */
      readonly spreadMin: number;
      /**
       * Kind of step that the pot is for.
       * @enum {string}
       */
      readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
      /** Step that the pot is for, by its place in the request. */
      readonly stepIndex: number;
      /** Name of that step. */
      readonly title: components["schemas"]["Text"];
      /** Fields of PlannedBatch in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlannedBatchUs"];
      /** Time from mixing within which the pot must be spread out. */
      readonly useWithinMin: number;
      /** What goes on the scale, in order. */
      readonly weigh: readonly components["schemas"]["Weighing"][];
    };
    /** Fields of PlannedBatch in US customary units, when `Accept-Units: us` was sent. */
    readonly PlannedBatchUs: {
      readonly fillerG?: components["schemas"]["UsText"];
      readonly forgottenPotPeakC?: components["schemas"]["UsText"];
      readonly hardenerG?: components["schemas"]["UsText"];
      readonly mixedG?: components["schemas"]["UsText"];
      readonly mixedMl?: components["schemas"]["UsText"];
      readonly resinG?: components["schemas"]["UsText"];
    };
    readonly PlannedOpening: {
      /** What is cut out, corners rounded. */
      readonly area: components["schemas"]["Polygon"];
      /** Area of skin that the opening takes off. */
      readonly areaM2: number;
      /** Radius that the corners are cut to. */
      readonly cornerRadiusMm: number;
      /** Depth to set the saw to; absent when the skin is not known. */
      readonly cutDepthMm?: number;
      /** Length of the opening's cuts. */
      readonly cutLengthM: number;
      /**
       * Form of the opening.
       * @enum {string}
       */
      readonly form: "hull" | "octagon" | "outline" | "rectangle";
      /** Cuts round what stays within the opening. */
      readonly innerSawLines: readonly (readonly (readonly number[])[])[];
      /** Openings that were made into this one, with the reason. */
      readonly joins: readonly components["schemas"]["Join"][];
      /** A, B, C ... from the largest. */
      readonly label: components["schemas"]["Text"];
      /** How to mark the cuts out on deck with a tape. */
      readonly marking: components["schemas"]["MarkingOut"];
      /** Why this form was chosen. */
      readonly reason: components["schemas"]["Text"];
      /** The straight lines to mark, meeting in sharp corners. */
      readonly sawLine: readonly (readonly number[])[];
      /** Pieces the skin comes off in. */
      readonly skinPieces: readonly components["schemas"]["PlannedOpeningSkinPieces"][];
      /** Cuts that part the skin into pieces, each from point to point. */
      readonly splits: readonly (readonly (readonly number[])[])[];
      /** Old skin round the opening that is ground. */
      readonly taperBand: readonly components["schemas"]["Polygon"][];
      /** Area of that band. */
      readonly taperBandAreaM2: number;
      /** Bad core under skin that stays. */
      readonly undercut: readonly components["schemas"]["Polygon"][];
      /** Core taken out from under the opening's edges. */
      readonly undercutAreaM2: number;
      /** Farthest reach under the edge. */
      readonly undercutReachMm: number;
      /** Fields of PlannedOpening in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlannedOpeningUs"];
      /** Ids of the zones it opens. */
      readonly zones: readonly components["schemas"]["Text"][];
    };
    readonly PlannedOpeningSkinPieces: {
      /** Edge of the piece of skin. */
      readonly area: readonly components["schemas"]["Polygon"][];
      /** Area of the piece of skin. */
      readonly areaM2: number;
      /** Name of the piece of skin. */
      readonly label: components["schemas"]["Text"];
      /** Fields of PlannedOpening in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlannedOpeningSkinPiecesUs"];
    };
    /** Fields of PlannedOpening in US customary units, when `Accept-Units: us` was sent. */
    readonly PlannedOpeningSkinPiecesUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    /** Fields of PlannedOpening in US customary units, when `Accept-Units: us` was sent. */
    readonly PlannedOpeningUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly cornerRadiusMm?: components["schemas"]["UsText"];
      readonly cutDepthMm?: components["schemas"]["UsText"];
      readonly cutLengthM?: components["schemas"]["UsText"];
      readonly taperBandAreaM2?: components["schemas"]["UsText"];
      readonly undercutAreaM2?: components["schemas"]["UsText"];
      readonly undercutReachMm?: components["schemas"]["UsText"];
    };
    readonly PlannedTask: {
      /** Codes of the tasks it follows. */
      readonly after: readonly components["schemas"]["Text"][];
      /** Code of the planned task. */
      readonly code: components["schemas"]["Text"];
      /** Share of the simulated calendars in which it decided the finish. */
      readonly criticality: number;
      /** Planned end (RFC 3339). */
      readonly endAt: components["schemas"]["Instant"];
      /** When the work of the task ends, in days from the start of the plan. */
      readonly endDay: number;
      /**
       * What the weather must allow for the task.
       * @enum {string}
       */
      readonly gate: "coating" | "dry-deck" | "none" | "resin";
      /** How many work on it at once. */
      readonly hands: number;
      /** On the chain that decides the finish, by mean values. */
      readonly isCritical: boolean;
      /** Whether somebody must agree before work goes on. */
      readonly isHoldPoint: boolean;
      /** Mean hours of work in the task. */
      readonly labourH: number;
      /** Code of the operation it is a cycle of, or its own. */
      readonly operation: components["schemas"]["Text"];
      /**
       * Part of the job that the task belongs to.
       * @enum {string}
       */
      readonly phase: "bond" | "close" | "finish" | "hand-over" | "open" | "prepare" | "refit" | "survey";
      /** When its cure, drying or hold is over and successors may start. */
      readonly readyAt: components["schemas"]["Text"];
      /**
       * Skill that the task needs.
       * @enum {string}
       */
      readonly skill: "finisher" | "general" | "laminator" | "rigger";
      /** Planned start (RFC 3339). */
      readonly startAt: components["schemas"]["Instant"];
      /** Days since the start date began, local. */
      readonly startDay: number;
      /** What holds the task back until its start. */
      readonly startsBecause: components["schemas"]["Text"];
      /** What the planned task does. */
      readonly title: components["schemas"]["Text"];
      /** Wait that follows the task. */
      readonly waitH: number;
      /**
       * Reason of that wait.
       * @enum {string}
       */
      readonly waitKind: "cure" | "drying" | "elapsed" | "hold" | "none";
    };
    readonly Plug: {
      /** Where it was taken, [xMm, yMm]. */
      readonly at: readonly number[];
      /**
       * What the core in the plug was like.
       * @enum {string}
       */
      readonly condition: "damp-sound" | "debonded-dry" | "dry-sound" | "rotten" | "wet-bonded";
      /** Core as measured on the plug. */
      readonly coreMm?: number;
      /** Inner skin as measured on the plug. */
      readonly innerSkinMm?: number;
      /** True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that a core plug was drilled. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "plug";
      /** Moisture of the plug by mass of dry core. */
      readonly moisturePercent?: number;
      /** Outer skin as measured on the plug. */
      readonly outerSkinMm?: number;
    };
    readonly PlugInput: {
      /**
       * Where it was taken.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly at: readonly number[];
      /**
       * What the plug showed.
       * @enum {string}
       */
      readonly condition: "dry-sound" | "damp-sound" | "wet-bonded" | "rotten" | "debonded-dry";
      /**
       * Thickness of the core: mm, or text with a unit.
       * @example 1/2 in
       */
      readonly coreMm?: components["schemas"]["LengthInput"];
      /**
       * Thickness of the skin: mm, or text with a unit.
       * @example 1/8 in
       */
      readonly innerSkinMm?: components["schemas"]["LengthInput"];
      /** Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that a plug was drilled at the place. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "plug";
      /** Moisture of the core in the plug, parts of its dry mass. */
      readonly moisturePercent?: number;
      /**
       * Thickness of the skin: mm, or text with a unit.
       * @example 1/8 in
       */
      readonly outerSkinMm?: components["schemas"]["LengthInput"];
    };
    readonly PlyLine: {
      /** Glass to cut, without waste. */
      readonly areaM2: number;
      /** Mass of the glass. */
      readonly glassKg: number;
      /** Code of the glass. */
      readonly material: components["schemas"]["Text"];
      /** Name of the glass. */
      readonly materialName: components["schemas"]["Text"];
      /** Place in the order of laying, from 1. */
      readonly order: number;
      /** Direction of the warp against fore and aft. */
      readonly orientationDeg: number;
      /** Shape to cut. */
      readonly outline: readonly components["schemas"]["Area"][];
      /** Mass of resin that it takes. */
      readonly resinKg: number;
      /** Length off the roll. */
      readonly rollLengthM: number;
      /** Width of that roll. */
      readonly rollWidthMm: number;
      /** Thickness when cured. */
      readonly thicknessMm: number;
      /** Fields of PlyLine in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PlyLineUs"];
      /** Width, where the ply is a strip. */
      readonly widthMm?: number;
    };
    /** Fields of PlyLine in US customary units, when `Accept-Units: us` was sent. */
    readonly PlyLineUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly glassKg?: components["schemas"]["UsText"];
      readonly resinKg?: components["schemas"]["UsText"];
      readonly rollLengthM?: components["schemas"]["UsText"];
      readonly rollWidthMm?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    readonly PlyToWetInput: {
      /** Dry fabric. */
      readonly arealMassGPerM2: components["schemas"]["ArealMassInput"];
      /** Area of the ply that is wetted out. */
      readonly areaM2: components["schemas"]["AreaInput"];
      /** Fibre mass fraction of the laid ply. */
      readonly fibreMassFraction: number;
      /** Label of the piece. */
      readonly label?: string;
    };
    /**
     * Format: binary
     * PNG picture.
     */
    readonly PngFile: string;
    /** `outer` runs from x towards y (positive signed area); each hole runs the other way. */
    readonly Polygon: {
      /** Rings that are left out. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Outer ring, points in order. */
      readonly outer: readonly (readonly number[])[];
    };
    readonly PotLifeInput: {
      /** Mass in the pot. */
      readonly massG: number;
      /** Minutes that this pot stays workable. */
      readonly minutes: components["schemas"]["DatumInput"];
      /** Warmth at which it was mixed. */
      readonly temperatureC: number;
    };
    /** Plain core that must be bent onto the camber. */
    readonly PressedCamberInput: {
      /** Young's modulus of the core as it bends. */
      readonly modulusMPa: number;
      /** Length of a piece along the curve. */
      readonly pieceLengthMm: components["schemas"]["LengthInput"];
      /** Radius of the curve that the core is pressed to. */
      readonly radiusMm: components["schemas"]["LengthInput"];
      /** Thickness of the core that is pressed to the curve. */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** Inner skin. */
    readonly PressedSkinInput: {
      /** Proven by a drop test; absent: not known, which refuses a bag. */
      readonly isAirtight?: boolean;
      /** Modulus of the inner skin. Absent: 9000 MPa (hand-laid mat and woven glass). */
      readonly modulusMPa?: number;
      /**
       * Clear distance between the supports that are there.
       * @example 600
       */
      readonly spanMm: components["schemas"]["LengthInput"];
      /** Bending strength of the inner skin. Absent: 140 MPa (hand-laid mat and woven glass, sound). */
      readonly strengthMPa?: number;
      /**
       * The skin that stays.
       * @example 3
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** A length of timber under, on or over the area that is pressed, and the places along it. */
    readonly PressLine: {
      /** One end of it: along the length of the area and across it, in mm. */
      readonly from: readonly number[];
      /** Where a prop stands under a board, or a screw goes through a batten. */
      readonly points: readonly (readonly number[])[];
      /** Its other end. */
      readonly to: readonly number[];
      /**
       * A board on props, a batten that is screwed down, or a bow that keeps the shape of the deck.
       * @enum {string}
       */
      readonly what: "batten" | "board" | "bow";
    };
    /** One way to press, with what it can do here and what speaks against it. */
    readonly PressOption: {
      /** Pressure that this way can give. */
      readonly availableKPa?: number;
      /** How evenly it presses. */
      readonly evenness: components["schemas"]["Text"];
      /** Where its timber lies, from one corner of the area. */
      readonly lines?: readonly components["schemas"]["PressLine"][];
      /**
       * The way of pressing judged.
       * @enum {string}
       */
      readonly method: "battens" | "jacks" | "vacuum" | "weights";
      /** Load that the inner skin must carry while it cures. */
      readonly onInnerSkinKPa: number;
      /** What lies on each square metre of a piece, or pushes against it. */
      readonly onPieceKgPerM2?: number;
      /** What this way would take. */
      readonly quantities: readonly components["schemas"]["PressQuantity"][];
      /** What speaks for it or against it. */
      readonly reasons: readonly components["schemas"]["Text"][];
      /** Why it cannot be used here at all. */
      readonly refusals: readonly components["schemas"]["Text"][];
      /** What carries the force of this way. */
      readonly restsOn: components["schemas"]["Text"];
      /** Span over which it carries that; the clear span where nothing else holds it. */
      readonly skinSpanMm?: number;
      /** One after another, where a crew cannot press the whole opening at once. */
      readonly turns?: number;
      /** Fields of PressOption in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PressOptionUs"];
      /** Needed pressure over what this way gives; above 1 it is too weak. */
      readonly utilisation?: number;
      /**
       * Whether this way will do.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
    };
    /** Fields of PressOption in US customary units, when `Accept-Units: us` was sent. */
    readonly PressOptionUs: {
      readonly availableKPa?: components["schemas"]["UsText"];
      readonly onInnerSkinKPa?: components["schemas"]["UsText"];
      readonly onPieceKgPerM2?: components["schemas"]["UsText"];
      readonly skinSpanMm?: components["schemas"]["UsText"];
    };
    /** Something that the pressing takes, counted or measured. */
    readonly PressQuantity: {
      /** What is counted for the pressing. */
      readonly code: components["schemas"]["Text"];
      /** Name of what is counted. */
      readonly name: components["schemas"]["Text"];
      /** What to heed about it. */
      readonly note?: components["schemas"]["Text"];
      /** Unit of the count or measure. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of PressQuantity in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PressQuantityUs"];
      /** How much of it. */
      readonly value: number;
    };
    /** Fields of PressQuantity in US customary units, when `Accept-Units: us` was sent. */
    readonly PressQuantityUs: {
      readonly value?: components["schemas"]["UsText"];
    };
    readonly PressureLoadInput: {
      /**
       * A pressure over the whole panel. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "pressure";
      /** Your own name for the pressure, as the answer shows it. */
      readonly name?: string;
      /** Pressure over the whole panel, downwards. */
      readonly pressureKPa: number;
    };
    readonly PreviewedOpening: {
      /** Edge of the opening. */
      readonly area: components["schemas"]["Area"];
      /** Area of the opening. */
      readonly areaM2: number;
      /** Absent when no depth is safe; a finding says why. */
      readonly cutDepthMm?: number;
      /** Length of its saw cuts. */
      readonly cutLengthM: number;
      /** Name of the opening on drawings. */
      readonly label: components["schemas"]["Text"];
      /** Why the opening has this form. */
      readonly reason: components["schemas"]["Text"];
      /** Corners of the saw line before rounding, measured from the datum corner of the panel. */
      readonly sawLine: readonly (readonly number[])[];
      /** Fields of PreviewedOpening in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PreviewedOpeningUs"];
    };
    /** Fields of PreviewedOpening in US customary units, when `Accept-Units: us` was sent. */
    readonly PreviewedOpeningUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly cutDepthMm?: components["schemas"]["UsText"];
      readonly cutLengthM?: components["schemas"]["UsText"];
    };
    /** Of the repaired panel beside the deck as built. */
    readonly PreviewPanel: {
      /** The comparison in a sentence. */
      readonly sentence: components["schemas"]["Text"];
      /** Every measure of which the repair gives back less than there was, worst first. */
      readonly shortfalls: readonly components["schemas"]["Text"][];
      /**
       * How the repaired deck compares with the old one.
       * @enum {string}
       */
      readonly verdict: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
    };
    /** What the job may cost, as a first range. */
    readonly PreviewPrice: {
      /** Needs that nothing on the price list covers, and that are not in the price. */
      readonly missing: readonly components["schemas"]["Text"][];
      /** With tax, as the extent and the rates may turn out. */
      readonly range: components["schemas"]["EstimateMoneyRange"];
      /** Base and what will probably be found besides, with tax; no contingency. */
      readonly withoutContingency: components["schemas"]["MoneyJson"];
    };
    /** The figures that can be had at once. */
    readonly PreviewSummary: {
      /** Days from start to end, waits included, as a spread. */
      readonly calendarDays: components["schemas"]["Range"];
      /** Length of all saw cuts. */
      readonly cutLengthM: number;
      /** Absent where the deck stays closed. */
      readonly damagedAreaM2?: components["schemas"]["Range"];
      /** Hours of work, as a spread. */
      readonly labourH: components["schemas"]["Range"];
      /** Sum of the labour lines: each at its likely hours. */
      readonly labourLikelyH: number;
      /** Mixed resin with losses. */
      readonly mixedResinL: number;
      /** Skin that comes off, in all openings. */
      readonly openedAreaM2: number;
      /**
       * Format: int32
       * Plies of the new skin.
       */
      readonly plyCount: number;
      /** Fields of PreviewSummary in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["PreviewSummaryUs"];
      /** Days of work, as a spread. */
      readonly workingDays: components["schemas"]["Range"];
    };
    /** Fields of PreviewSummary in US customary units, when `Accept-Units: us` was sent. */
    readonly PreviewSummaryUs: {
      readonly cutLengthM?: components["schemas"]["UsText"];
      /** `damagedAreaM2` in US customary units. */
      readonly damagedAreaM2?: components["schemas"]["ExtentUsDamagedAreaM2"];
      readonly mixedResinL?: components["schemas"]["UsText"];
      readonly openedAreaM2?: components["schemas"]["UsText"];
    };
    readonly PriceBreakInput: {
      /**
       * Format: int32
       * Packs from which the price holds.
       */
      readonly fromPacks: number;
      /** Price of one pack from then on. */
      readonly price: string;
    };
    /** What a percentage did to a price list of a draft. */
    readonly PriceChange: {
      /** Those of them whose prices differ now; a small percentage can be rounded away. */
      readonly changed: readonly components["schemas"]["ChangedPack"][];
      /**
       * Format: int32
       * How many packs the choice met.
       */
      readonly chosenCount: number;
      /** Currency of the changed prices. */
      readonly currency: components["schemas"]["Currency"];
      /** Code of the draft. */
      readonly edition: components["schemas"]["Text"];
      /** By how much they changed, as decimal text. */
      readonly percent: components["schemas"]["Decimal"];
      /** Code of the price list. */
      readonly priceList: components["schemas"]["Text"];
    };
    readonly PriceChangeInput: {
      /** Only packs that hold these materials, by code. */
      readonly materials?: readonly string[];
      /**
       * How far prices rise, or fall with a minus sign before it.
       * @example 4.5
       */
      readonly percent: string;
      /**
       * The step that new prices are rounded to; the minor unit of the currency when absent.
       * @example 0.05
       */
      readonly roundTo?: string;
      /** Only these packs, by SKU. */
      readonly skus?: readonly string[];
      /** Only packs of these suppliers, by code. */
      readonly suppliers?: readonly string[];
    };
    readonly PricedJob: {
      /** Spread of the price; absent when it was not asked for. */
      readonly risk?: components["schemas"]["CostRisk"];
      /** Lines, loadings and taxes. */
      readonly rollUp: components["schemas"]["CostRollUp"];
    };
    /** Packs and terms of suppliers in one currency, for a stated time. */
    readonly PriceListInput: {
      /** Code of the list, unique in the edition. */
      readonly code: string;
      /**
       * Currency of all prices in the list (ISO 4217).
       * @enum {string}
       */
      readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
      /** True for prices of an invented scenario. */
      readonly invented: boolean;
      /** Name that estimates show the list by. */
      readonly name: string;
      /** What can be bought, one entry a pack. */
      readonly packs: readonly components["schemas"]["PackInput"][];
      /** Whether the prices hold tax already. */
      readonly pricesIncludeTax: boolean;
      /** Who sells, and on which terms. */
      readonly suppliers: readonly components["schemas"]["SupplierInput"][];
      /**
       * Format: date
       * First day that the prices hold (ISO 8601).
       */
      readonly validFrom: string;
      /**
       * Format: date
       * Last day that the prices hold (ISO 8601).
       */
      readonly validTo: string;
    };
    /** Pricing. */
    readonly PricingChoice: {
      /** Hours above those expected that need a new word of the owner. Absent: 15 % (yards ask again when the time changes by more than that). */
      readonly authorisationPercent?: number;
      /** Absent: P80 less what is expected. */
      readonly contingencyPercent?: number;
      /** Exact decimal text in the currency of the price list. */
      readonly deductible?: components["schemas"]["Decimal"];
      /** Wear of the parts that are replaced; shown beside the price, which it does not change. */
      readonly depreciation?: components["schemas"]["DepreciationTerms"];
      /** They take over from the judged growth as they come: n of them weigh n/(n + 15). */
      readonly foundOverRecorded?: readonly number[];
      /**
       * As used: what the job takes of each pack, the part of an opened one that will be past its date, and the wear of gear. As bought: whole packs and all gear. The basket is of whole packs either way.
       * @enum {string}
       */
      readonly goods?: "as-bought" | "as-used";
      /** Code of the labour rates that hours are priced with. */
      readonly labourRates?: components["schemas"]["Text"];
      /** Code of the price list that goods are priced from. */
      readonly priceList?: components["schemas"]["Text"];
      /** Number of draws of older records, of no effect now: the figures are integrated over a fixed lattice. */
      readonly samples?: number;
      /** Seed of older records, of no effect now: the figures are integrated over a fixed lattice. */
      readonly seed?: number;
    };
    /** Pricing. */
    readonly PricingInput: {
      /** Hours above those expected that need a new word of the owner. Absent: 15 % (yards ask again when the time changes by more than that). */
      readonly authorisationPercent?: number;
      /** Absent: P80 less what is expected. */
      readonly contingencyPercent?: number;
      /** Exact decimal text in the currency of the price list. */
      readonly deductible?: string;
      /** Wear of the parts that are replaced; shown beside the price, which it does not change. */
      readonly depreciation?: components["schemas"]["DepreciationInput"];
      /** They take over from the judged growth as they come: n of them weigh n/(n + 15). */
      readonly foundOverRecorded?: readonly number[];
      /**
       * As used: what the job takes of each pack, the part of an opened one that will be past its date, and the wear of gear. As bought: whole packs and all gear. The basket is of whole packs either way.
       * @enum {string}
       */
      readonly goods?: "as-used" | "as-bought";
      /** Code of the labour rates that hours are priced with. */
      readonly labourRates?: string;
      /** Code of the price list that goods are priced from. */
      readonly priceList?: string;
      /**
       * Format: int32
       * Number of draws of older records, of no effect now: the figures are integrated over a fixed lattice.
       */
      readonly samples?: number;
      /**
       * Format: int64
       * Seed of older records, of no effect now: the figures are integrated over a fixed lattice.
       */
      readonly seed?: number;
    };
    readonly ProbabilityContour: {
      /** Area within this edge. */
      readonly areaM2: number;
      /** Where core is bad with at least this probability. */
      readonly areas: readonly components["schemas"]["Polygon"][];
      /** Chance of bad core along this edge. */
      readonly probability: number;
      /** Fields of ProbabilityContour in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ProbabilityContourUs"];
    };
    /** Fields of ProbabilityContour in US customary units, when `Accept-Units: us` was sent. */
    readonly ProbabilityContourUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    /** Chance of bad core at the middle of each cell of the panel; absent for drawn zones. */
    readonly ProbabilityMap: {
      /** Places with their chances. */
      readonly cells: readonly components["schemas"]["ProbabilityMapCells"][];
      /** How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
      readonly hammer?: components["schemas"]["ProbabilityMapHammer"];
      /** Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays. */
      readonly meter?: components["schemas"]["ProbabilityMapMeter"];
      /** Distance over which the readings suggest that the damage hangs together. */
      readonly rangeMm: number;
      /** Distance between the places of the map. */
      readonly stepMm: number;
      /** Fields of ProbabilityMap in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ProbabilityMapUs"];
    };
    readonly ProbabilityMapCells: {
      /** Middle of the cell, [xMm, yMm]. */
      readonly at: readonly number[];
      /** Chance that the core is bad there. */
      readonly chance: number;
    };
    /** How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
    readonly ProbabilityMapHammer: {
      /** Share of sound places that sound dull. */
      readonly falseAlarmShare: number;
      /** How likely it is that its errors hang together in patches. */
      readonly hangingTogether: number;
      /** Share of bad places that ring clear. */
      readonly missedShare: number;
    };
    /** Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays. */
    readonly ProbabilityMapMeter: {
      /** Mean reading over bad core, as a share of the meter's span. */
      readonly overBadShare: number;
      /** Mean reading over sound core, as a share of the meter's span. */
      readonly overSoundShare: number;
      /** Scatter of readings, as a share of the meter's span. */
      readonly sdShare: number;
    };
    /** Fields of ProbabilityMap in US customary units, when `Accept-Units: us` was sent. */
    readonly ProbabilityMapUs: {
      readonly rangeMm?: components["schemas"]["UsText"];
      readonly stepMm?: components["schemas"]["UsText"];
    };
    /** Something the caller can put right. Words are made from the code, in `problem-words.ts` only. */
    readonly Problem: {
      /** JSON Pointer (RFC 6901) to the offending field; '' is the whole document. */
      readonly at: components["schemas"]["Text"];
      /**
       * Stable code of the problem.
       * @enum {string}
       */
      readonly code: "breaks-out-of-order" | "clock-change" | "contradiction" | "duplicate" | "duplicate-name" | "forecast-gap" | "forecast-order" | "hardener-without-resin" | "malformed-json" | "method-unfit" | "missing" | "network-cycle" | "no-method-fits" | "no-time-zone" | "not-a-decimal" | "not-a-flag" | "not-a-list" | "not-a-number" | "not-a-point" | "not-a-quantity" | "not-an-object" | "not-in-form" | "not-one-of" | "not-supported" | "not-text" | "nothing-left" | "nothing-to-repair" | "other-currency" | "out-of-range" | "outline-crosses-itself" | "outline-without-area" | "outside-panel" | "reserved-name" | "resin-too-cold" | "text-length" | "too-deep" | "too-few" | "too-large-for-stock" | "too-many" | "unit-mismatch" | "unknown-code" | "unknown-field" | "unusable-text" | "wrong-unit" | "wrong-zone";
      /** What the sentence of the problem is made of. */
      readonly facts: {
        readonly [key: string]: boolean | string | number;
      };
    };
    /** RFC 9457 problem document; names all faults at once. */
    readonly ProblemDocument: {
      /** What was refused this time, and why. */
      readonly detail: components["schemas"]["Text"];
      /**
       * Format: int32
       * How many faults there are in all; errors shows the first 100.
       */
      readonly errorCount?: number;
      /** All that is wrong with the request, each with its place. */
      readonly errors?: readonly components["schemas"]["ProblemEntry"][];
      /**
       * Format: uri-reference
       * Path that was asked.
       */
      readonly instance?: string;
      /** Names the request in the logs; say it when you ask for help. */
      readonly requestId: components["schemas"]["Text"];
      /**
       * Format: int32
       * HTTP status of the refusal.
       */
      readonly status: number;
      /** The kind of refusal, in words. */
      readonly title: components["schemas"]["Text"];
      /**
       * Format: uri-reference
       * Address of a page that explains this kind of refusal.
       * @enum {string}
       */
      readonly type: "/problems/bad-request" | "/problems/unauthenticated" | "/problems/forbidden" | "/problems/not-found" | "/problems/method-not-allowed" | "/problems/not-acceptable" | "/problems/request-timeout" | "/problems/conflict" | "/problems/precondition-failed" | "/problems/content-too-large" | "/problems/unsupported-media-type" | "/problems/unprocessable" | "/problems/precondition-required" | "/problems/too-many-requests" | "/problems/headers-too-large" | "/problems/internal" | "/problems/unavailable";
    };
    /** One thing that is wrong, with its place in the request. */
    readonly ProblemEntry: {
      /** Stable; see /problems. */
      readonly code: components["schemas"]["Text"];
      /** Heading of the column of a sheet. */
      readonly column?: components["schemas"]["Text"];
      /** What is wrong, and what would be right. */
      readonly detail: components["schemas"]["Text"];
      /** Numbers and words of the detail, by name. */
      readonly facts: {
        readonly [key: string]: string | number | boolean;
      };
      /** Name of the header field. */
      readonly header?: components["schemas"]["Text"];
      /** Name of the query or path parameter. */
      readonly parameter?: components["schemas"]["Text"];
      /**
       * Format: json-pointer
       * RFC 6901 pointer into the request body; empty for the whole body.
       */
      readonly pointer?: string;
      /**
       * Format: int32
       * Row of a sheet, as a spreadsheet counts them: the headings are row 1. Empty lines do not count.
       */
      readonly row?: number;
      /** The kind of fault, in words. */
      readonly title: components["schemas"]["Text"];
    };
    /** Mixing, cure, pressing and calendar. */
    readonly ProcessSection: {
      /** A card for each pot. */
      readonly batches: readonly components["schemas"]["BatchCard"][];
      /** Absent where nothing is bedded that would have to be pressed. */
      readonly bondPressure?: components["schemas"]["BondPressureSection"];
      /** Tasks and days. */
      readonly calendar: components["schemas"]["CalendarSection"];
      /** When each mix can be worked on. */
      readonly cure: readonly components["schemas"]["CureMilestones"][];
      /** Mix that each step takes. */
      readonly demands: readonly components["schemas"]["ResinStep"][];
      /** What stands against these pots at this temperature with this crew. */
      readonly findings: readonly components["schemas"]["EstimateFinding"][];
      /** What each step waits for. */
      readonly gates: readonly components["schemas"]["ProcessSectionGates"][];
      /** Resin and hardener that the work is planned with. */
      readonly resin: components["schemas"]["ProcessSectionResin"];
      /** When each step may start; only with a forecast. Without one the gates say what to require. */
      readonly weather?: components["schemas"]["WeatherSection"];
    };
    readonly ProcessSectionGates: {
      /** What it waits for, in words. */
      readonly requires: readonly components["schemas"]["Text"][];
      /** Step that waits. */
      readonly step: components["schemas"]["Text"];
    };
    /** Resin and hardener that the work is planned with. */
    readonly ProcessSectionResin: {
      /** Code of the planned resin. */
      readonly code: components["schemas"]["Text"];
      /** Code of the planned hardener. */
      readonly hardener: components["schemas"]["Text"];
      /** Name of the planned hardener. */
      readonly hardenerName: components["schemas"]["Text"];
      /** Name of the planned resin. */
      readonly name: components["schemas"]["Text"];
      /** Why they suit the work and its warmth. */
      readonly why: components["schemas"]["Text"];
    };
    /** The search went to its end. */
    readonly Proven: {
      /**
       * Says that no cheaper basket exists. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "proven";
    };
    /** What the estimate was made with. */
    readonly ProvenanceStamp: {
      /** Hash of the edition's content. */
      readonly catalogueHash: components["schemas"]["Text"];
      /** Code of the catalogue's edition. */
      readonly edition: components["schemas"]["Text"];
      /** Version of the program. */
      readonly engineVersion: components["schemas"]["Text"];
      /** Code of the labour rates. */
      readonly labourRates: components["schemas"]["Text"];
      /** Code of the price list that the lines were priced from. */
      readonly priceList: components["schemas"]["Text"];
    };
    /** A quantity that nobody has measured yet, with the price that the measured one will have. */
    readonly ProvisionalSum: {
      /** Sum that is set aside. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Why the sum is set aside. */
      readonly basis: components["schemas"]["Text"];
      /** Quantity that it is enough for. */
      readonly quantity: number;
      /** Unit of that quantity. */
      readonly unit: components["schemas"]["Text"];
      /** Price at which it is measured later. */
      readonly unitPrice: components["schemas"]["MoneyJson"];
      /** Fields of ProvisionalSum in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ProvisionalSumUs"];
    };
    /** Fields of ProvisionalSum in US customary units, when `Accept-Units: us` was sent. */
    readonly ProvisionalSumUs: {
      readonly quantity?: components["schemas"]["UsText"];
    };
    readonly PublicationInput: {
      /**
       * Format: date-time
       * From when it counts; at once when absent. Until then the present edition stays current.
       */
      readonly effectiveAt?: string;
    };
    /** The edition and when it counts; what it names is fetched from its address. */
    readonly PublicationNamed: {
      /** Edition that the event tells of. */
      readonly code: components["schemas"]["Text"];
      /** RFC 3339 instant from which it counts; absent when that is at once. */
      readonly effectiveAt?: components["schemas"]["Instant"];
      /** Path of the edition. */
      readonly href: components["schemas"]["Text"];
    };
    /** A key that stands in a page for everybody to read: it makes estimates and lists none. */
    readonly PublishableKey: {
      /** When the key was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** The edition it estimates with; whichever is current when absent. */
      readonly edition?: components["schemas"]["Text"];
      /** From when on the key opens nothing; it never ends by itself when absent. */
      readonly expiresAt?: components["schemas"]["Instant"];
      /** Id of the key; not the key itself. */
      readonly id: components["schemas"]["Id"];
      /** The key, which may stand in a page. */
      readonly key: components["schemas"]["Text"];
      /** To the minute; absent for a key that was never used. */
      readonly lastUsedAt?: components["schemas"]["Text"];
      /** What the key is used for; stands in histories. */
      readonly name: components["schemas"]["Text"];
      /** Organisation the key belongs to. */
      readonly organisationId: components["schemas"]["Id"];
      /** Origins of the pages that may use it. */
      readonly origins: readonly components["schemas"]["Text"][];
      /** Estimates a day, counted from midnight UTC. */
      readonly perDay: number;
      /** Requests a minute of all visitors together. */
      readonly perMinute: number;
      /** Requests a minute from one address. */
      readonly perMinutePerVisitor: number;
      /** When it stopped counting (RFC 3339); absent while it counts. */
      readonly revokedAt?: components["schemas"]["Instant"];
    };
    readonly PublishableKeyList: {
      /** Publishable keys of the organisation. */
      readonly items: readonly components["schemas"]["PublishableKey"][];
      /** Give it as `cursor` for more publishable keys; absent on the last page. */
      readonly nextCursor?: components["schemas"]["Text"];
    };
    /** Three points of an uncertain number. */
    readonly Quantiles: {
      /** Value that one case in ten stays below. */
      readonly p10: number;
      /** Value that half of the cases stay below. */
      readonly p50: number;
      /** Value that nine cases in ten stay below. */
      readonly p90: number;
    };
    readonly QuantitiesRead: {
      /** The texts, in the order sent, each as it was understood. */
      readonly quantities: readonly components["schemas"]["QuantityRead"][];
    };
    readonly QuantitiesRequest: {
      /** Texts to read, each with the unit that is wanted. */
      readonly quantities: readonly components["schemas"]["TypedQuantityInput"][];
    };
    readonly QuantityRead: {
      /** The text as sent. */
      readonly text: components["schemas"]["Text"];
      /** Unit that was recognised. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of QuantityRead in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["QuantityReadUs"];
      /** In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
      readonly value: number;
    };
    /** Fields of QuantityRead in US customary units, when `Accept-Units: us` was sent. */
    readonly QuantityReadUs: {
      readonly value?: components["schemas"]["UsText"];
    };
    /** Three points of one uncertain number. */
    readonly Range: {
      /** One job in ten comes to less. */
      readonly p10: number;
      /** Half of the jobs come to less. */
      readonly p50: number;
      /** Nine jobs in ten come to less. */
      readonly p90: number;
    };
    /** Price of an hour by skill. */
    readonly RatePerHourInput: {
      /** Rate of whoever fairs and paints. */
      readonly finisher: string;
      /** Rate of general labour. */
      readonly general: string;
      /** Rate of whoever laminates. */
      readonly laminator: string;
      /** Rate of whoever takes rig and fittings off. */
      readonly rigger: string;
    };
    readonly Ratio: {
      /** Share of what is allowed that the deck as built used, and that the repair uses. */
      readonly asBuiltUtilisation: number;
      /** Check that repaired and built deck share. */
      readonly code: components["schemas"]["Text"];
      /** Names check and load together. */
      readonly key: components["schemas"]["Text"];
      /** Load that both are under. */
      readonly load?: components["schemas"]["Text"];
      /** Repaired over built; 1 is as good as it was. */
      readonly ratio: number;
      /** Demand over capacity of the repaired deck. */
      readonly repairedUtilisation: number;
      /** Name of what is compared. */
      readonly title: components["schemas"]["Text"];
    };
    /** Skin bonded back. */
    readonly RebeddedSkinInput: {
      /** Length of the cut, where no outline is given. */
      readonly cutLengthMm?: components["schemas"]["LengthInput"];
      /** Instead of plies: one fabric, laid as often as fills the groove. */
      readonly fillWith?: string;
      /** Joint. */
      readonly joint?: components["schemas"]["JointInput"];
      /** Width of the cut. Absent: 4 mm (a circular saw with a glass-cutting blade). */
      readonly kerfMm?: components["schemas"]["LengthInput"];
      /** Longest strip. Absent: 2000 mm (as long as two people lay wet before it kicks). */
      readonly longestStripMm?: components["schemas"]["LengthInput"];
      /** The opening whose edge is the cut. */
      readonly opening?: readonly (readonly number[])[];
      /**
       * Order of the plies. Absent: smallest-first (both orders are in use, and no published test decides between them for decks).
       * @enum {string}
       */
      readonly order?: "smallest-first" | "largest-first";
      /** Overlap of strips of one ply. Absent: 50 mm (edges of successive reinforcements stagger by 50 mm, and seams of the next ply keep away from them). */
      readonly overlapMm?: components["schemas"]["LengthInput"];
      /** Plies over the cut from the core outwards. */
      readonly plies?: readonly components["schemas"]["NamedPlyInput"][];
      /** Clear width from the cut to the nearest edge or fitting. */
      readonly roomMm?: components["schemas"]["LengthInput"];
      /**
       * Thickness of the skin that is bonded back.
       * @example 2
       */
      readonly skinThicknessMm: components["schemas"]["LengthInput"];
      /** Absent: 12, and on thin skins as much as makes it 20 mm wide. */
      readonly taperRatio?: number;
      /** Most laid wet on wet. Absent: 4 mm (solid hand lay-up of 4 to 6 mm in one go is where overheating is reported). */
      readonly wetLimitMm?: components["schemas"]["LengthInput"];
    };
    readonly ReinforcementInput: {
      /** Mass of the dry fabric. */
      readonly arealMassGPerM2: components["schemas"]["DatumInput"];
      /** Stable code of the fabric, unique in the edition. */
      readonly code: string;
      /**
       * How the fabric is made.
       * @enum {string}
       */
      readonly fabric: "mat" | "cloth" | "woven-roving" | "biaxial" | "biaxial-mat" | "unidirectional" | "tape";
      /**
       * What its fibres are.
       * @enum {string}
       */
      readonly fibre: "e-glass";
      /** Glass over laminate by mass, as it is usually wetted out by hand. */
      readonly fibreMassFraction: components["schemas"]["DatumInput"];
      /** Hazard statements (GHS) of the fabric, such as H226. */
      readonly hazards?: readonly string[];
      /**
       * Says that the material is a fabric. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "reinforcement";
      /** Bottom first. */
      readonly layers: readonly components["schemas"]["FabricLayerInput"][];
      /** Generic specification of the fabric in trade words. */
      readonly name: string;
      /** 0 not at all, 3 strongly. */
      readonly printThrough: number;
      /** Lengths that its rolls are sold in. */
      readonly rollLengthsM: readonly number[];
      /** Widths that its rolls are sold in. */
      readonly rollWidthsMm: readonly number[];
      /** Whether it may lie next to the core. */
      readonly suitsAgainstCore: boolean;
      /** Chemistries that wet it out. */
      readonly suitsResins: readonly ("epoxy" | "polyester" | "vinylester")[];
    };
    readonly ReinspectionPoint: {
      /** What makes it good. */
      readonly accept: components["schemas"]["Text"];
      /** What must not begin before. */
      readonly before: components["schemas"]["Text"];
      /** Who should look. */
      readonly by: components["schemas"]["Text"];
      /** What to look at or measure. */
      readonly look: components["schemas"]["Text"];
      /** Source of the point. */
      readonly source: components["schemas"]["Text"];
      /** At which point of the work. */
      readonly when: components["schemas"]["Text"];
    };
    /** The first of them laid out over the opening. */
    readonly RelaidPlies: {
      /** What was taken about plies and rolls. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** What this order means for the work. */
      readonly consequences: readonly components["schemas"]["Text"][];
      /** Glass of all new plies. */
      readonly glassKg: components["schemas"]["Figure"];
      /** Area of the largest ply in one piece. */
      readonly largestPlyM2: number;
      /** What the laminator should heed. */
      readonly notes: readonly components["schemas"]["Text"][];
      /**
       * Whether the largest or the smallest ply is laid first.
       * @enum {string}
       */
      readonly order: "largest-first" | "smallest-first";
      /** New plies in the order they are laid. */
      readonly plies: readonly components["schemas"]["LaidOutPly"][];
      /** Resin of all new plies. */
      readonly resinKg: components["schemas"]["Figure"];
      /** Whether the taper stays on the panel. */
      readonly room: components["schemas"]["RoomCheck"];
      /** What is laid wet on wet before it must cool. */
      readonly stages: readonly components["schemas"]["Stage"][];
      /** Area of the taper. */
      readonly taperAreaM2: number;
      /** Width of the taper that the new plies step up. */
      readonly taperWidthMm: components["schemas"]["Figure"];
      /** Fields of RelaidPlies in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RelaidPliesUs"];
    };
    /** Fields of RelaidPlies in US customary units, when `Accept-Units: us` was sent. */
    readonly RelaidPliesUs: {
      readonly largestPlyM2?: components["schemas"]["UsText"];
      readonly taperAreaM2?: components["schemas"]["UsText"];
    };
    /** Skin laid anew. */
    readonly RelaidSkinInput: {
      /** Fabrics at hand; absent: every reinforcement of the catalogue. */
      readonly fabrics?: readonly components["schemas"]["NamedFabricInput"][];
      /** Absent: 0.5 mm proud to 1 mm low (what is faired without a visible hump, and what fairing fills). */
      readonly flush?: components["schemas"]["FlushInput"];
      /** With it, the best skin is laid out over the opening. */
      readonly layOut?: components["schemas"]["LayOutInput"];
      /** Limits of the schedule. */
      readonly limits?: components["schemas"]["ScheduleLimitsInput"];
      /** Old skin. */
      readonly oldSkin: components["schemas"]["OldSkinInput"];
      /** With it, the bending of the panel is restored too. */
      readonly panel?: components["schemas"]["PanelBelowInput"];
      /**
       * Which build of a guessed old skin is restored; absent: likely.
       * @enum {string}
       */
      readonly restore?: "likely" | "strongest";
      /** Restore shear stiffness in the plane too; absent: false. */
      readonly restoreShear?: boolean;
    };
    /** What was found, charged or credited by the rates that were agreed with the price; without tax. */
    readonly ReMeasured: {
      /** Hours that the customer authorised beforehand. */
      readonly authorisedH: number;
      /** The items less the credit. */
      readonly difference: components["schemas"]["MoneyJson"];
      /** Hours that the found extent now takes. */
      readonly expectedH: number;
      /** Whether the expected hours stay within the authorised ones. */
      readonly isWithinAuthorisation: boolean;
      /** What was measured anew, each at the agreed rate. */
      readonly items: readonly components["schemas"]["ReMeasuredItem"][];
      /** Sum of the items. */
      readonly measured: components["schemas"]["MoneyJson"];
      /** The provisional sums of the agreed price: taken off, because what they stood for has been measured. */
      readonly provisionalCredited: components["schemas"]["MoneyJson"];
    };
    readonly ReMeasuredItem: {
      /** What is more or less of it, at the agreed rate. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Unit rate that was agreed. */
      readonly code: components["schemas"]["Text"];
      /** Quantity of the offer, as decimal text. */
      readonly quantityAgreed: components["schemas"]["Decimal"];
      /** Quantity found after opening, as decimal text. */
      readonly quantityFound: components["schemas"]["Decimal"];
      /** Agreed price of one unit. */
      readonly rate: components["schemas"]["MoneyJson"];
      /** Unit that it is measured in. */
      readonly unit: components["schemas"]["Text"];
      /** What is measured. */
      readonly what: components["schemas"]["Text"];
    };
    readonly RenewalInput: {
      /**
       * Format: int32
       * Hours for which the old key still opens what it opened, so that programs can change over.
       */
      readonly overlapHours: number;
    };
    /** The estimate computed again from its own record and edition. */
    readonly Replay: {
      /** Version of the program that replayed it. */
      readonly engineVersionNow: components["schemas"]["Text"];
      /** True when every digit of the document came out again. */
      readonly isSame: boolean;
      /** False when the edition's content is no longer the one that was used. */
      readonly isSameCatalogue: boolean;
      /** What the stored estimate was made with. */
      readonly madeWith: components["schemas"]["ReplayMadeWith"];
      /** Total that came out now. */
      readonly totalNow: components["schemas"]["MoneyJson"];
      /** Total that was stored. */
      readonly totalThen: components["schemas"]["MoneyJson"];
    };
    /** What the stored estimate was made with. */
    readonly ReplayMadeWith: {
      /** Hash of that edition's content. */
      readonly catalogueHash: components["schemas"]["Text"];
      /** Edition of the catalogue then. */
      readonly edition: components["schemas"]["Text"];
      /** Version of the program then. */
      readonly engineVersion: components["schemas"]["Text"];
    };
    readonly Requirement: {
      /** Source of the limit. */
      readonly cite: components["schemas"]["Cite"];
      /**
       * Which gate the requirement belongs to.
       * @enum {string}
       */
      readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
      /** Value that must be kept. */
      readonly limit: number;
      /** The requirement in words. */
      readonly text: components["schemas"]["Text"];
      /** Unit of the limit. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Requirement in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RequirementUs"];
    };
    /** Fields of Requirement in US customary units, when `Accept-Units: us` was sent. */
    readonly RequirementUs: {
      readonly limit?: components["schemas"]["UsText"];
    };
    readonly ResinBatchesRequest: {
      /** The deck; absent: as the air. */
      readonly deckTemperatureC?: components["schemas"]["TemperatureInput"];
      /** Codes of the fillers at hand; absent: every filler of the catalogue. */
      readonly fillers?: readonly string[];
      /** Code of one of its hardeners; absent: chosen, with the reasons. */
      readonly hardener?: string;
      /** Largest pot mixed at once. Absent: 1000 g (pots of half a litre to a litre). */
      readonly largestPotG?: number;
      /** Weighing and stirring a pot. Absent: 4 min (two minutes of stirring with scraping, and the weighing). */
      readonly mixingMinutes?: number;
      /**
       * Format: int32
       * People who mix and spread at the same time.
       */
      readonly people: number;
      /** Resin given by one stroke of a calibrated pump; with it the cards count strokes. */
      readonly pumpResinMlPerStroke?: number;
      /**
       * Code of the resin system.
       * @example resin-epoxy-5to1
       */
      readonly resin: string;
      /** Steps that take resin. */
      readonly steps: readonly components["schemas"]["ResinStepInput"][];
      /**
       * Air and resin where it is mixed.
       * @example 20
       */
      readonly temperatureC: components["schemas"]["TemperatureInput"];
      /** Share of the pot life within which a pot must be empty. Absent: 0.5 (small enough to bed inside half the pot life). */
      readonly usableFraction?: number;
      /** Waste as a share of net. Absent: 0.18 (between the 15 and 20 % that suppliers print; spread from trade logs). */
      readonly wasteFraction?: number;
    };
    /** What each step needs, with waste. */
    readonly ResinDemand: {
      /** Rates and losses that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** Code of the hardener demanded with it. */
      readonly hardener: components["schemas"]["Text"];
      /** Density of resin and hardener mixed, without filler. */
      readonly mixedDensityGPerCm3: number;
      /** Grams of hardener to 100 g of resin. */
      readonly partsByMass: number;
      /** Millilitres of hardener to 100 ml of resin. */
      readonly partsByVolume: number;
      /** Code of the resin demanded. */
      readonly resin: components["schemas"]["Text"];
      /** Demand of each step of the work, in its order. */
      readonly steps: readonly components["schemas"]["StepDemand"][];
      /** Demand of all steps together. */
      readonly totals: components["schemas"]["ResinDemandTotals"];
      /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ResinDemandUs"];
    };
    /** Demand of all steps together. */
    readonly ResinDemandTotals: {
      /** Fillers of all steps, each kind with its mass. */
      readonly fillers: readonly components["schemas"]["ResinDemandTotalsFillers"][];
      /** Hardener component of the whole demand. */
      readonly hardenerG: number;
      /** What ends up in the repair, without losses. */
      readonly netL: number;
      /** Resin component of the whole demand. */
      readonly resinG: number;
      /** What must be mixed in all. */
      readonly totalL: number;
      /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ResinDemandTotalsUs"];
      /** What stays in pots, rollers and brushes. */
      readonly wasteL: number;
    };
    readonly ResinDemandTotalsFillers: {
      /** Code of the filler. */
      readonly filler: components["schemas"]["Text"];
      /** Mass of the filler over all steps. */
      readonly massG: number;
      /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ResinDemandTotalsFillersUs"];
    };
    /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
    readonly ResinDemandTotalsFillersUs: {
      readonly massG?: components["schemas"]["UsText"];
    };
    /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
    readonly ResinDemandTotalsUs: {
      readonly hardenerG?: components["schemas"]["UsText"];
      readonly netL?: components["schemas"]["UsText"];
      readonly resinG?: components["schemas"]["UsText"];
      readonly totalL?: components["schemas"]["UsText"];
      readonly wasteL?: components["schemas"]["UsText"];
    };
    /** Fields of ResinDemand in US customary units, when `Accept-Units: us` was sent. */
    readonly ResinDemandUs: {
      readonly mixedDensityGPerCm3?: components["schemas"]["UsText"];
    };
    readonly ResinStep: {
      /** Name of the filler at the step. */
      readonly filler?: components["schemas"]["Text"];
      /** Filler stirred in at the step. */
      readonly fillerKg?: number;
      /** What stays in the deck. */
      readonly netL: number;
      /** Step that takes resin. */
      readonly step: components["schemas"]["Text"];
      /** Name of the step that takes resin. */
      readonly title: components["schemas"]["Text"];
      /** Mass of all that is mixed for the step. */
      readonly totalKg: number;
      /** What is mixed for the step. */
      readonly totalL: number;
      /** Fields of ResinStep in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ResinStepUs"];
      /** What is lost at the step. */
      readonly wasteL: number;
    };
    readonly ResinStepInput: {
      /** Area that the step covers. */
      readonly areaM2?: components["schemas"]["AreaInput"];
      /**
       * Format: int32
       * Number of coats.
       */
      readonly coats?: number;
      /** Depth of scores, or of holes. */
      readonly depthMm?: components["schemas"]["LengthInput"];
      /** Diameter to which the core is emptied at a hole. */
      readonly diameterMm?: components["schemas"]["LengthInput"];
      /** Code of a filler, or "none". */
      readonly filler?: string;
      /** Parts of filler to 100 parts of mixed resin, by mass. */
      readonly fillerPartsPerHundred?: number;
      /** Height. */
      readonly heightMm?: components["schemas"]["LengthInput"];
      /**
       * Format: int32
       * Number of holes.
       */
      readonly holes?: number;
      /** Length of a section: the edge of an undercut, the saw cut. */
      readonly lengthM?: number;
      /** Resin to the area. */
      readonly litresPerM2?: number;
      /** Minutes that one person takes for one unit of the step. */
      readonly minutesPerUnit?: number;
      /** Share of the scores that fills. Absent: 1 (scores pressed full from both sides). */
      readonly openFraction?: number;
      /** Pieces in the order they are bedded; each goes to one pot. */
      readonly pieces?: readonly components["schemas"]["BeddedPieceInput"][];
      /** Plies that the step wets out. */
      readonly plies?: readonly components["schemas"]["PlyToWetInput"][];
      /** Spacing of scores. */
      readonly spacingMm?: components["schemas"]["LengthInput"];
      /**
       * Each kind has its own basis: films and beds take areaM2, sections lengthM and heightMm, scores areaM2 with spacing, width and depth, plies plies, potting holes.
       * @enum {string}
       */
      readonly step: "seal" | "undercut" | "bed-core" | "prewet" | "core-kerfs" | "bed-skin" | "cut-kerf" | "closing-plies" | "top-laminate" | "weave-fill" | "peel-ply" | "potting" | "inject" | "fairing";
      /** Mean thickness of a bed; of fairing, over all cycles. */
      readonly thicknessMm?: components["schemas"]["LengthInput"];
      /** Words for the card, where two steps are of one kind. */
      readonly title?: string;
      /** Waste as a share of net, for this step. */
      readonly wasteFraction?: number;
      /** Width of the section: of the saw cut, of a fillet. */
      readonly widthMm?: components["schemas"]["LengthInput"];
    };
    /** Fields of ResinStep in US customary units, when `Accept-Units: us` was sent. */
    readonly ResinStepUs: {
      readonly fillerKg?: components["schemas"]["UsText"];
      readonly netL?: components["schemas"]["UsText"];
      readonly totalKg?: components["schemas"]["UsText"];
      readonly totalL?: components["schemas"]["UsText"];
      readonly wasteL?: components["schemas"]["UsText"];
    };
    readonly ResinSystemInput: {
      /** How strongly warmth hastens its cure. */
      readonly activationEnergyKJPerMol: components["schemas"]["DatumInput"];
      /**
       * Family that the resin belongs to.
       * @enum {string}
       */
      readonly chemistry: "epoxy" | "polyester" | "vinylester";
      /** Stable code of the resin, unique in the edition. */
      readonly code: string;
      /** Density of the cured mix. */
      readonly curedDensityGPerCm3: components["schemas"]["DatumInput"];
      /** Density of the liquid resin. */
      readonly densityGPerCm3: components["schemas"]["DatumInput"];
      /** Hardeners that cure it. */
      readonly hardeners: readonly components["schemas"]["HardenerInput"][];
      /** Hazard statements (GHS) of the resin, such as H226. */
      readonly hazards?: readonly string[];
      /** Heat that a gram of the mix gives off. */
      readonly heatOfReactionJPerG: components["schemas"]["DatumInput"];
      /**
       * Says that the material is a resin system. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "resin";
      /** Generic specification of the resin in trade words. */
      readonly name: string;
      /** Poisson's ratio of the cured mix. */
      readonly poissonRatio: components["schemas"]["DatumInput"];
      /** Heat that a gram of the mix takes up for a kelvin. */
      readonly specificHeatJPerGK: components["schemas"]["DatumInput"];
      /** Young's modulus of the cured mix. */
      readonly youngModulusMPa: components["schemas"]["DatumInput"];
    };
    readonly Response: {
      /** Where the deck sags most, [xMm, yMm]. */
      readonly deflectionAt: readonly number[];
      /** With the pull of a sagging skin between held edges, where the inner skin is alone and slack. */
      readonly deflectionMm: number;
      /** Greatest moment fore and aft, per mm of width. */
      readonly greatestMomentXN: number;
      /** Greatest moment athwart, per mm of width. */
      readonly greatestMomentYN: number;
      /** Greatest shear force, per mm of width. */
      readonly greatestShearNPerMm: number;
      /** By plate bending alone. */
      readonly linearDeflectionMm: number;
      /** Load that acts. */
      readonly load: components["schemas"]["Text"];
      /** Fields of Response in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ResponseUs"];
      /**
       * How deflection and moments were worked out.
       * @enum {string}
       */
      readonly working: "inner-skin-alone" | "sandwich" | "separate-skins";
    };
    /** Fields of Response in US customary units, when `Accept-Units: us` was sent. */
    readonly ResponseUs: {
      readonly deflectionMm?: components["schemas"]["UsText"];
      readonly greatestMomentXN?: components["schemas"]["UsText"];
      readonly greatestMomentYN?: components["schemas"]["UsText"];
      readonly greatestShearNPerMm?: components["schemas"]["UsText"];
      readonly linearDeflectionMm?: components["schemas"]["UsText"];
    };
    readonly RestorationInput: {
      /** A name for the edition that holds it again, such as autumn-2027-again. */
      readonly code: string;
      /** Why. */
      readonly note?: string;
    };
    /** The revisions of one estimate, first to last. */
    readonly RevisionList: {
      /** Revisions of the job, the first one first. */
      readonly items: readonly components["schemas"]["EstimateSummary"][];
    };
    /** Which revision of a job an estimate is, and why it was made. */
    readonly RevisionMark: {
      /** Number of the revision; 0 for the first estimate of the job. */
      readonly number: number;
      /** Why this revision was made; absent for the first estimate. */
      readonly reason?: components["schemas"]["Text"];
      /** The first estimate of this line of revisions. */
      readonly rootId: components["schemas"]["Id"];
    };
    /** The revision and what it revises; what it names is fetched from its address. */
    readonly RevisionNamed: {
      /** Code of the edition it was made with. */
      readonly edition: components["schemas"]["Text"];
      /** Path of the estimate. */
      readonly href: components["schemas"]["Text"];
      /** Id of the estimate the event tells of. */
      readonly id: components["schemas"]["Id"];
      /** Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
      readonly publishableKeyId?: components["schemas"]["Id"];
      /** The caller's own reference, when it gave one. */
      readonly reference?: components["schemas"]["Text"];
      /** 1 for the first revision. */
      readonly revisionNumber: number;
      /** Id of the first estimate of this line of revisions. */
      readonly rootId: components["schemas"]["Id"];
    };
    readonly RevisionRequest: {
      /** What became known or was decided since the last revision. */
      readonly reason: string;
      /** The whole defect record as it is known now. */
      readonly record: components["schemas"]["DefectRecordInput"];
    };
    /** How the range is worked out. */
    readonly RiskTermsInput: {
      /** Share of the variance of rates that labour, or parts, have in common. */
      readonly commonShare?: components["schemas"]["CommonShareInput"];
      /**
       * How the extent was found; decides how far it may grow.
       * @enum {string}
       */
      readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
      /** The growth itself, instead of the evidence. */
      readonly extentFactor?: components["schemas"]["ExtentFactorInput"];
      /** Correlation of unit rates with the extent; absent: 0.3. */
      readonly extentToRate?: number;
      /**
       * Format: int32
       * A multiple of ten; absent: 10000.
       */
      readonly samples?: number;
      /**
       * Format: int64
       * The same seed gives the same range; absent: 1.
       */
      readonly seed?: number;
      /**
       * How three points are read as a distribution; absent: triangular.
       * @enum {string}
       */
      readonly shape?: "triangular" | "beta";
      /** Price of opening and mapping before the rest is agreed. */
      readonly stageZeroCost?: string;
      /** What the repair is worth to the owner. */
      readonly worthOfRepair?: string;
    };
    /** A roll that plies come off: x runs along it. */
    readonly RollInput: {
      /** Longest length that can be had. */
      readonly longestMm?: components["schemas"]["LengthInput"];
      /** Width of the roll that pieces are cut from. */
      readonly widthMm: components["schemas"]["LengthInput"];
    };
    readonly RollPiece: {
      /** Length of the piece along the roll. */
      readonly lengthMm: number;
      /** Edge of the piece on deck. */
      readonly outline: readonly components["schemas"]["Polygon"][];
      /** Fields of RollPiece in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RollPieceUs"];
      /** What it takes of the width of the roll. */
      readonly usedWidthMm: number;
      /** Width of the piece across the roll. */
      readonly widthMm: number;
    };
    /** Fields of RollPiece in US customary units, when `Accept-Units: us` was sent. */
    readonly RollPieceUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly usedWidthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** A strip of cloth: along the roll and across it. */
    readonly RollStrip: {
      /** Length of the cut strip. */
      readonly lengthMm: number;
      /** Fields of RollStrip in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RollStripUs"];
      /** Width of the cut strip. */
      readonly widthMm: number;
    };
    /** Fields of RollStrip in US customary units, when `Accept-Units: us` was sent. */
    readonly RollStripUs: {
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** Whether the taper stays on the panel. */
    readonly RoomCheck: {
      /**
       * Checks whether there is room for the taper.
       * @enum {string}
       */
      readonly check: "taper-room";
      /** Taper that would lie off the panel. */
      readonly outsideM2: number;
      /** Fields of RoomCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RoomCheckUs"];
      /**
       * Whether there is room; not established where edges are unknown.
       * @enum {string}
       */
      readonly verdict: "fails" | "not-established" | "passes";
      /** The room in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    /** Fields of RoomCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly RoomCheckUs: {
      readonly outsideM2?: components["schemas"]["UsText"];
    };
    /** A method of repair and why it stands where it stands among the methods. */
    readonly RungNamed: {
      /** Why the rung stands where it stands. */
      readonly because: components["schemas"]["Text"];
      /** Code of the rung. */
      readonly rung: components["schemas"]["Text"];
      /** Name of the rung. */
      readonly title: components["schemas"]["Text"];
    };
    /** A condition that speaks for or against a method. */
    readonly RungReason: {
      /** Code of the condition. */
      readonly code: components["schemas"]["Text"];
      /** Value that the method allows. */
      readonly limit?: number;
      /** Source of the condition. */
      readonly source: components["schemas"]["Text"];
      /** The condition on this deck, in a sentence. */
      readonly text: components["schemas"]["Text"];
      /** Unit of value and limit. */
      readonly unit?: components["schemas"]["Text"];
      /** Fields of RungReason in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["RungReasonUs"];
      /** Measured or worked-out value. */
      readonly value?: number;
      /** What would let the method fit. */
      readonly wouldFit?: components["schemas"]["Text"];
    };
    /** Fields of RungReason in US customary units, when `Accept-Units: us` was sent. */
    readonly RungReasonUs: {
      readonly limit?: components["schemas"]["UsText"];
      readonly value?: components["schemas"]["UsText"];
    };
    /** One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone. */
    readonly RungSection: {
      /** Days that it takes with all waits, as a spread. */
      readonly calendarDays?: components["schemas"]["Range"];
      /** All conditions that were looked at. */
      readonly conditions: readonly components["schemas"]["RungReason"][];
      /** Condition that decided. */
      readonly deciding: components["schemas"]["RungReason"];
      /** True where openings were taken as boxes round the places; the planned rung is worked out in full. */
      readonly isRough: boolean;
      /** Absent for a rung that is refused: it is not priced. */
      readonly labourH?: components["schemas"]["Range"];
      /** What the method does not put right. */
      readonly leavesUndone: readonly components["schemas"]["Text"][];
      /** Why a rung that fits could not be worked out, where it could not. */
      readonly notWorkedOut?: components["schemas"]["Text"];
      /** What it costs, as a spread. */
      readonly priceRange?: components["schemas"]["EstimateMoneyRange"];
      /** Code of the method. */
      readonly rung: components["schemas"]["Text"];
      /** Work of the method, in order. */
      readonly stages: readonly components["schemas"]["Text"][];
      /** Name of the method. */
      readonly title: components["schemas"]["Text"];
      /**
       * Whether the method fits this deck.
       * @enum {string}
       */
      readonly verdict: "fit" | "fit-with-conditions" | "unfit";
      /** Days of work that it takes, as a spread. */
      readonly workingDays?: components["schemas"]["Range"];
    };
    /** Two skins and a core, by the values that a panel is worked out with. */
    readonly SandwichValuesInput: {
      /** Core. */
      readonly core: components["schemas"]["CoreValuesInput"];
      /** Inner skin, as it carries load. */
      readonly inner: components["schemas"]["SkinValuesInput"];
      /** Outer skin, as it carries load. */
      readonly outer: components["schemas"]["SkinValuesInput"];
    };
    readonly SawLine: {
      /** Corner where the cut starts. */
      readonly from: readonly number[];
      /** Between the corner arcs: the straight run of the saw. */
      readonly straightMm: number;
      /** Corner where the cut ends. */
      readonly to: readonly number[];
      /** Fields of SawLine in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SawLineUs"];
    };
    /** Fields of SawLine in US customary units, when `Accept-Units: us` was sent. */
    readonly SawLineUs: {
      readonly straightMm?: components["schemas"]["UsText"];
    };
    readonly Schedule: {
      /** Every requirement with demand and capacity. */
      readonly checks: readonly components["schemas"]["SkinCheck"][];
      /** Glass in a square metre. */
      readonly glassGPerM2: components["schemas"]["Figure"];
      /** Requirement that the schedule meets most narrowly. */
      readonly governs: components["schemas"]["Text"];
      /** Stiffness of the plies by classical laminate theory. */
      readonly laminate: components["schemas"]["ScheduleLaminate"];
      /** Why it is not the first. */
      readonly lost?: components["schemas"]["ScheduleLost"];
      /** Plies of the schedule, from the core outwards. */
      readonly plies: readonly components["schemas"]["SchedulePly"][];
      /** Price of a square metre in the list's currency; absent without prices. */
      readonly pricePerM2?: number;
      /** How far the new skin ends above the old surface; negative lies below it. */
      readonly proudMm: number;
      /** Place among the schedules, 1 the best. */
      readonly rank: number;
      /** Resin in a square metre. */
      readonly resinGPerM2: components["schemas"]["Figure"];
      /** Stiffness athwart. */
      readonly stiffnessAcrossNPerMm: components["schemas"]["Figure"];
      /** Stiffness fore and aft. */
      readonly stiffnessAlongNPerMm: components["schemas"]["Figure"];
      /** Thickness of all plies. */
      readonly thicknessMm: components["schemas"]["Figure"];
      /** Fields of Schedule in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScheduleUs"];
    };
    /** Stiffness of the plies by classical laminate theory. */
    readonly ScheduleLaminate: {
      /** Stretching stiffness A, row by row. */
      readonly aNPerMm: readonly number[];
      /** Coupling stiffness B, row by row. */
      readonly bN: readonly number[];
      /** Bending stiffness D, row by row. */
      readonly dNmm: readonly number[];
      /** Engineering constants in bending. */
      readonly flexural: components["schemas"]["EngineeringConstants"];
      /** Engineering constants in the plane. */
      readonly inPlane: components["schemas"]["ScheduleLaminateInPlane"];
      /** Fields of Schedule in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScheduleLaminateUs"];
    };
    /** Engineering constants in the plane. */
    readonly ScheduleLaminateInPlane: {
      /** Constants when the laminate may curl. */
      readonly free: components["schemas"]["EngineeringConstants"];
      /** Constants when it is kept from curling. */
      readonly heldFlat: components["schemas"]["EngineeringConstants"];
    };
    /** Fields of Schedule in US customary units, when `Accept-Units: us` was sent. */
    readonly ScheduleLaminateUs: {
      /** `aNPerMm` in US customary units. */
      readonly aNPerMm?: readonly components["schemas"]["UsText"][];
      /** `bN` in US customary units. */
      readonly bN?: readonly components["schemas"]["UsText"][];
      /** `dNmm` in US customary units. */
      readonly dNmm?: readonly components["schemas"]["UsText"][];
    };
    /** Limits of the schedule. */
    readonly ScheduleLimitsInput: {
      /**
       * Format: int32
       * Most kinds of fabric in one skin. Absent: 3 (fewer rolls, fewer mistakes).
       */
      readonly mostKinds?: number;
      /**
       * Format: int32
       * Most plies that a schedule may have.
       */
      readonly mostPlies?: number;
      /** Smallest step between ply edges, on average. Absent: 5 mm (smaller steps cannot be laid true by hand). */
      readonly smallestStepMm?: components["schemas"]["LengthInput"];
      /** Taper width over skin thickness; absent: 12, and on thin skins as much as makes it 20 mm wide. */
      readonly taperRatio?: number;
      /** How much the outer ply may print through, 0 to 3. Absent: 1 (the pattern of roving shows through gloss paint). */
      readonly worstPrintThrough?: number;
    };
    /** Why it is not the first. */
    readonly ScheduleLost: {
      /**
       * What this schedule lost by.
       * @enum {string}
       */
      readonly by: "mass" | "nothing" | "plies" | "price";
      /** By how much, in that measure. */
      readonly difference: number;
      /** Why it is not the first, in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    readonly SchedulePly: {
      /** Mass of glass over mass of ply. */
      readonly fibreMassFraction: number;
      /** Glass in the ply, per square metre. */
      readonly glassGPerM2: number;
      /** Code of the ply's fabric. */
      readonly material: components["schemas"]["Text"];
      /** Name of the ply's fabric. */
      readonly name: components["schemas"]["Text"];
      /** Resin in the ply, per square metre. */
      readonly resinGPerM2: number;
      /** Thickness of the cured ply. */
      readonly thicknessMm: number;
      /** Turn of the fabric against fore and aft. */
      readonly turnDeg: number;
      /** Fields of SchedulePly in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SchedulePlyUs"];
    };
    /** Fields of SchedulePly in US customary units, when `Accept-Units: us` was sent. */
    readonly SchedulePlyUs: {
      readonly glassGPerM2?: components["schemas"]["UsText"];
      readonly resinGPerM2?: components["schemas"]["UsText"];
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** The best skins, where a skin is laid anew. */
    readonly ScheduleSearch: {
      /** What the search took that nobody stated. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** As many as were wanted or can be made, best first. */
      readonly best: readonly components["schemas"]["Schedule"][];
      /** How much was searched, and that nothing better was left out. */
      readonly effort: components["schemas"]["ScheduleSearchEffort"];
      /** Materials that could not be used, each with its problems. */
      readonly leftOut: readonly components["schemas"]["LeftOut"][];
      /** What the result does not cover. */
      readonly limits: readonly components["schemas"]["Text"][];
      /** Process that the plies are laid by. */
      readonly method: components["schemas"]["Text"];
      /** What no schedule could meet; only when none was found. */
      readonly missing?: components["schemas"]["LaminateMissing"];
      /** As asked, or as many as have room for their steps in the taper. */
      readonly mostPlies: number;
      /** The skin that the new one must match. */
      readonly oldSkin: components["schemas"]["OldSkinReport"];
      /**
       * Whether any schedule meets every requirement.
       * @enum {string}
       */
      readonly outcome: "cannot-be-done" | "found";
      /**
       * What decides between schedules that pass.
       * @enum {string}
       */
      readonly rankedBy: "mass" | "price";
    };
    /** How much was searched, and that nothing better was left out. */
    readonly ScheduleSearchEffort: {
      /** Branches cut off because nothing below them could be better, fit, or reach the target. */
      readonly cut: components["schemas"]["ScheduleSearchEffortCut"];
      /** Stacks looked at one by one. */
      readonly examined: number;
      /**
       * No allowed schedule is better.
       * @enum {boolean}
       */
      readonly isProvenBest: true;
      /** Every choice of up to the most plies from the options, order apart. */
      readonly space: number;
    };
    /** Branches cut off because nothing below them could be better, fit, or reach the target. */
    readonly ScheduleSearchEffortCut: {
      /** Branches left because they cannot beat what was found. */
      readonly dearer: number;
      /** Branches left because what is missing cannot be made good. */
      readonly outOfReach: number;
      /** Branches left because they use too many fabrics. */
      readonly tooManyKinds: number;
      /** Branches left because the stack is too thick. */
      readonly tooThick: number;
    };
    /** Fields of Schedule in US customary units, when `Accept-Units: us` was sent. */
    readonly ScheduleUs: {
      readonly proudMm?: components["schemas"]["UsText"];
    };
    /** What is opened, kept and left alone. */
    readonly Scope: {
      /** Probability contours when the extent came from readings. */
      readonly contours: readonly components["schemas"]["ScopeContours"][];
      /** Of the opening, where core comes out; and sound core that is left where it is. */
      readonly coreOutAreaM2: number;
      /** Opened area whose sound core stays. */
      readonly coreStaysAreaM2: number;
      /** Length of all cuts. */
      readonly cutLengthM: number;
      /** Bad area, as a spread. */
      readonly damagedAreaM2: components["schemas"]["Range"];
      /**
       * Grade of the evidence about the extent.
       * @enum {string}
       */
      readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
      /** Work that it does not hold. */
      readonly excluded: readonly components["schemas"]["Text"][];
      /** What about the scope deserves attention. */
      readonly findings: readonly components["schemas"]["EstimateFinding"][];
      /** Fittings that the work touches. */
      readonly fittings: readonly components["schemas"]["FittingScope"][];
      /** Work that the price holds. */
      readonly included: readonly components["schemas"]["Text"][];
      /** Choices that the scope rests on. */
      readonly method: readonly components["schemas"]["ScopeMethod"][];
      /** Where to tap, meter or plug next, and whether that pays; when the extent came from readings. */
      readonly nextReadings?: components["schemas"]["NextReadingsSection"];
      /** Area of skin taken off. */
      readonly openedAreaM2: number;
      /** Openings in the skin. */
      readonly openings: readonly components["schemas"]["Opening"][];
      /** The panel that is repaired. */
      readonly panel: components["schemas"]["ScopePanel"];
      /** Skin that is bedded again. */
      readonly retainedAreaM2: number;
      /** Old skin ground to a taper. */
      readonly taperBandM2: number;
      /** Core taken from under skin that stays. */
      readonly undercutAreaM2: number;
      /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScopeUs"];
      /** Damaged zones. */
      readonly zones: readonly components["schemas"]["ScopeZones"][];
    };
    readonly ScopeContours: {
      /** Sum of these areas. */
      readonly areaM2: number;
      /** Areas with at least that chance. */
      readonly areas: readonly components["schemas"]["Area"][];
      /** Chance of bad core at the edge of these areas. */
      readonly probability: number;
      /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScopePanelUs"];
    };
    readonly ScopeMethod: {
      /** What was chosen. */
      readonly choice: components["schemas"]["Text"];
      /** Why the choice fell so. */
      readonly reason: components["schemas"]["Text"];
      /** The choice, in words. */
      readonly value: components["schemas"]["Text"];
    };
    /** The panel that is repaired. */
    readonly ScopePanel: {
      /** Area of the panel without its holes. */
      readonly areaM2: number;
      /** Hatches and other openings of the panel. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Name of the panel. */
      readonly name: components["schemas"]["Text"];
      /** Edge of the panel. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScopePanelUs"];
    };
    /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
    readonly ScopePanelUs: {
      readonly areaM2?: components["schemas"]["UsText"];
    };
    /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
    readonly ScopeUs: {
      readonly coreOutAreaM2?: components["schemas"]["UsText"];
      readonly coreStaysAreaM2?: components["schemas"]["UsText"];
      readonly cutLengthM?: components["schemas"]["UsText"];
      /** `damagedAreaM2` in US customary units. */
      readonly damagedAreaM2?: components["schemas"]["ExtentUsDamagedAreaM2"];
      readonly openedAreaM2?: components["schemas"]["UsText"];
      readonly retainedAreaM2?: components["schemas"]["UsText"];
      readonly taperBandM2?: components["schemas"]["UsText"];
      readonly undercutAreaM2?: components["schemas"]["UsText"];
    };
    readonly ScopeZones: {
      /** Area of the zone. */
      readonly areaM2: number;
      /** What the core in the zone is like. */
      readonly condition: components["schemas"]["Text"];
      /** Id of the zone. */
      readonly id: components["schemas"]["Text"];
      /** Edge of the zone. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of Scope in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["ScopePanelUs"];
    };
    /** The cheapest order of another kind, to compare with. */
    readonly SecondBest: {
      /** Each need beside the packs that cover it. */
      readonly coverage: readonly components["schemas"]["Coverage"][];
      /** How much dearer it is than the basket given. */
      readonly difference: components["schemas"]["MoneyJson"];
      /**
       * What makes it another kind of order.
       * @enum {string}
       */
      readonly kind: "other-packs" | "other-suppliers";
      /** What remains of the bought packs when the job is done. */
      readonly leftovers: readonly components["schemas"]["Leftover"][];
      /** What is bought, a line for each kind of pack. */
      readonly lines: readonly components["schemas"]["BasketLine"][];
      /** Resins beside the hardeners bought to cure them. */
      readonly matched: readonly components["schemas"]["MatchedResin"][];
      /** The lines gathered into one order for each supplier. */
      readonly orders: readonly components["schemas"]["SupplierOrder"][];
      /** Needs that something other than what was planned covers. */
      readonly substitutions: readonly components["schemas"]["Substitution"][];
      /** Goods, cut fees, deliveries and surcharges of all orders together. */
      readonly total: components["schemas"]["MoneyJson"];
    };
    readonly SecretRenewalInput: {
      /**
       * Format: int32
       * Hours for which events are signed with the old secret as well, so that receivers can change over.
       */
      readonly overlapHours: number;
    };
    /** Stiffness of a cut through the deck in this state. */
    readonly SectionResult: {
      /** Bending stiffness fore and aft, per mm of width. */
      readonly bendingXNmm: number;
      /** Bending stiffness athwart, per mm of width. */
      readonly bendingYNmm: number;
      /** Whether the skins are thin enough for the theory of thin skins. */
      readonly isThinSkinFair: boolean;
      /** Distance between the mid-planes of the skins. */
      readonly leverMm: number;
      /** Stretching stiffness of both skins fore and aft. */
      readonly membraneXNPerMm: number;
      /** Stretching stiffness of both skins athwart. */
      readonly membraneYNPerMm: number;
      /** Shear stiffness, per mm of width. */
      readonly shearNPerMm: number;
      /** How far the thin-skin engineering form is from the exact section. */
      readonly thinSkinError: number;
      /** Fields of SectionResult in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SectionResultUs"];
    };
    /** Fields of SectionResult in US customary units, when `Accept-Units: us` was sent. */
    readonly SectionResultUs: {
      readonly bendingXNmm?: components["schemas"]["UsText"];
      readonly bendingYNmm?: components["schemas"]["UsText"];
      readonly leverMm?: components["schemas"]["UsText"];
      readonly membraneXNPerMm?: components["schemas"]["UsText"];
      readonly membraneYNPerMm?: components["schemas"]["UsText"];
      readonly shearNPerMm?: components["schemas"]["UsText"];
    };
    readonly SectionTotal: {
      /** Sum of the section. */
      readonly amount: components["schemas"]["MoneyJson"];
      /**
       * Format: int32
       * Lines in the section.
       */
      readonly lineCount: number;
      /**
       * Section that is summed.
       * @enum {string}
       */
      readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
      /** Name of the section. */
      readonly title: components["schemas"]["Text"];
    };
    readonly Share: {
      /** The chandler's key. */
      readonly keyId: components["schemas"]["Id"];
      /** Name of the key it is shared with. */
      readonly keyName: components["schemas"]["Text"];
      /** Since when it is shared (RFC 3339). */
      readonly since: components["schemas"]["Instant"];
    };
    readonly ShareList: {
      /** Keys that the estimate is shared with. */
      readonly items: readonly components["schemas"]["Share"][];
    };
    readonly SheetColumnInput: {
      /** What stands above the column. */
      readonly heading: string;
      /**
       * What it says of a pack; `price` is that of one pack.
       * @enum {string}
       */
      readonly means: "sku" | "name" | "supplier" | "price" | "stock" | "massKg";
    };
    /** Length and width of a sheet. */
    readonly SheetFormatInput: {
      /** Length of a sheet. */
      readonly lengthMm: number;
      /** Width of a sheet. */
      readonly widthMm: number;
    };
    /** Layout on sheets, where sheets were asked for. */
    readonly SheetLayout: {
      /** Price of all sheets of the layout. */
      readonly cost: number;
      /** Outlines are set on a grid of this step. */
      readonly gridStepMm: number;
      /** No layout can cost less: the cheapest stock per area, and the sheets that the pieces need at the least. */
      readonly leastCost: number;
      /** Area of all pieces laid out. */
      readonly pieceAreaM2: number;
      /** Area of all sheets bought. */
      readonly sheetAreaM2: number;
      /** Sheets with their pieces, in the order of cutting. */
      readonly sheets: readonly components["schemas"]["CutSheet"][];
      /** Fields of SheetLayout in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SheetLayoutUs"];
      /** Share of the sheets that becomes pieces. */
      readonly utilisation: number;
      /** Thousands of pairs looked at. */
      readonly workUnits: number;
    };
    /** Fields of SheetLayout in US customary units, when `Accept-Units: us` was sent. */
    readonly SheetLayoutUs: {
      readonly gridStepMm?: components["schemas"]["UsText"];
      readonly pieceAreaM2?: components["schemas"]["UsText"];
      readonly sheetAreaM2?: components["schemas"]["UsText"];
    };
    readonly SheetOnSaleInput: {
      /**
       * Format: int32
       * How many there are.
       */
      readonly available?: number;
      /** With the fee for cutting a half or quarter sheet; costs are only compared. */
      readonly cost: number;
      /** Length of the sheet. */
      readonly lengthMm: components["schemas"]["LengthInput"];
      /** Width of the sheet. */
      readonly widthMm: components["schemas"]["LengthInput"];
    };
    /** Length and width of a sheet that is asked for or at hand. */
    readonly SheetSizeInput: {
      /** Length of the sheet. */
      readonly lengthMm: components["schemas"]["LengthInput"];
      /** Width of the sheet. */
      readonly widthMm: components["schemas"]["LengthInput"];
    };
    /** Where bought core goes, in whole square millimetres: the parts add up to the sheet exactly. */
    readonly SheetUse: {
      /** Taken by the blade round the pieces. */
      readonly kerfMm2: number;
      /** Area of the pieces on them. */
      readonly piecesMm2: number;
      /** Whole rectangles left because sheets come whole; some are worth keeping. */
      readonly roundingMm2: number;
      /** Odd bits between the pieces. */
      readonly scrapsMm2: number;
      /** Area of all sheets. */
      readonly sheetMm2: number;
      /** Unused strip along the edges. */
      readonly trimMm2: number;
      /** Fields of SheetUse in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SheetUseUs"];
    };
    /** Fields of SheetUse in US customary units, when `Accept-Units: us` was sent. */
    readonly SheetUseUs: {
      readonly kerfMm2?: components["schemas"]["UsText"];
      readonly piecesMm2?: components["schemas"]["UsText"];
      readonly roundingMm2?: components["schemas"]["UsText"];
      readonly scrapsMm2?: components["schemas"]["UsText"];
      readonly sheetMm2?: components["schemas"]["UsText"];
      readonly trimMm2?: components["schemas"]["UsText"];
    };
    /** One fault as a caller sees it. */
    readonly ShownProblem: {
      /** Code of the fault, stable over releases. */
      readonly code: components["schemas"]["Text"];
      /** Heading of the column. */
      readonly column?: components["schemas"]["Text"];
      /** What is wrong and what would be right. */
      readonly detail: components["schemas"]["Text"];
      /** Numbers and words of the detail. */
      readonly facts: {
        readonly [key: string]: boolean | string | number;
      };
      /** Name of the header at fault. */
      readonly header?: components["schemas"]["Text"];
      /** Name of the query or path parameter at fault. */
      readonly parameter?: components["schemas"]["Text"];
      /** JSON Pointer to the field at fault. */
      readonly pointer?: components["schemas"]["Text"];
      /** Of a sheet, as a spreadsheet counts them: the headings are row 1. */
      readonly row?: number;
      /** Kind of fault in words. */
      readonly title: components["schemas"]["Text"];
    };
    readonly SkinCheck: {
      /** What the new skin has. */
      readonly capacity: number;
      /** Which requirement was checked. */
      readonly check: components["schemas"]["Text"];
      /** Where the requirement is published. */
      readonly cite: components["schemas"]["Cite"];
      /** What is asked of the new skin. */
      readonly demand: number;
      /** Name of the requirement. */
      readonly title: components["schemas"]["Text"];
      /** What would let it pass. */
      readonly toPass?: components["schemas"]["Text"];
      /** Unit of demand and capacity. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of SkinCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SkinCheckUs"];
      /** Demand over capacity; up to 1 it passes. */
      readonly utilisation: number;
      /**
       * Whether the skin meets it.
       * @enum {string}
       */
      readonly verdict: "fails" | "passes";
    };
    /** Fields of SkinCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly SkinCheckUs: {
      readonly capacity?: components["schemas"]["UsText"];
      readonly demand?: components["schemas"]["UsText"];
    };
    /** A skin by its thickness, and by its plies where they are known. */
    readonly SkinInput: {
      /** Known plies, from the face of the skin inwards. */
      readonly plies?: readonly components["schemas"]["KnownPlyInput"][];
      /**
       * Thickness of the outer skin: mm, or text with a unit.
       * @example 1/8 in
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    readonly SkinRecord: {
      /** Known plies, from the face of the skin inwards. */
      readonly plies?: readonly components["schemas"]["SkinRecordPlies"][];
      /** Thickness of the outer skin: mm, or text with a unit. */
      readonly thicknessMm: number;
    };
    readonly SkinRecordPlies: {
      /** Code of the fabric that the ply is of, in the catalogue. */
      readonly material: components["schemas"]["Text"];
    };
    /** A skin by thickness, moduli and strengths. */
    readonly SkinValuesInput: {
      /** Ultimate; along x, or in both directions. */
      readonly compressiveStrengthMPa: number;
      /** Compressive strength along y. */
      readonly compressiveStrengthYMPa?: number;
      /** For the least fibre mass of the yardstick. */
      readonly dryFibreKgPerM2?: number;
      /** Membrane modulus along x. */
      readonly modulusXMPa: number;
      /** Membrane modulus along y. */
      readonly modulusYMPa: number;
      /** Strain across y over strain along x under a pull along x. */
      readonly poissonXY: number;
      /** Shear modulus. */
      readonly shearModulusMPa: number;
      /** Ultimate; along x, or in both directions. */
      readonly tensileStrengthMPa: number;
      /** Tensile strength along y. */
      readonly tensileStrengthYMPa?: number;
      /**
       * Thickness of the skin with these values.
       * @example 3
       */
      readonly thicknessMm: components["schemas"]["LengthInput"];
    };
    /** What is too narrow or too far under the lip for core, and is filled solid from skin to skin instead. */
    readonly SolidFill: {
      /** Area that is filled. */
      readonly areaM2: number;
      /**
       * Why no core piece goes there.
       * @enum {string}
       */
      readonly because: "asked" | "narrow" | "no-way-in" | "shallow-lip";
      /** Depth of the filling. */
      readonly depthMm: number;
      /** What the filling leaves free. */
      readonly holes: readonly (readonly (readonly number[])[])[];
      /** Whether it lies under the sound skin that stays. */
      readonly isUnderLip: boolean;
      /**
       * What fills it.
       * @enum {string}
       */
      readonly kind: "high-density-strip" | "paste" | "solid-laminate";
      /** As paste: more than half a litre a metre is filled in two lifts, for its heat. */
      readonly lifts: number;
      /** Opening whose part is filled solid. */
      readonly opening: components["schemas"]["Text"];
      /** Edge of the filled part. */
      readonly outline: readonly (readonly number[])[];
      /** Fields of SolidFill in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SolidFillUs"];
      /** Volume of the filling. */
      readonly volumeL: number;
      /** Diameter of the largest circle that fits in. */
      readonly widthMm: number;
    };
    /** Fields of SolidFill in US customary units, when `Accept-Units: us` was sent. */
    readonly SolidFillUs: {
      readonly areaM2?: components["schemas"]["UsText"];
      readonly depthMm?: components["schemas"]["UsText"];
      readonly volumeL?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    readonly Sounding: {
      /** Where it was taken, [xMm, yMm]. */
      readonly at: readonly number[];
      /** True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that the deck was tapped. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "sounding";
      /**
       * How it sounded.
       * @enum {string}
       */
      readonly sound: "dull" | "sharp" | "void";
    };
    readonly SoundingInput: {
      /**
       * Where it was taken.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly at: readonly number[];
      /** Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
      readonly isUnreliable?: boolean;
      /**
       * Says that the place was tapped. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "sounding";
      /**
       * Sound of the hammer.
       * @enum {string}
       */
      readonly sound: "sharp" | "dull" | "void";
    };
    /** A publication that values are cited from, and how far it was read. */
    readonly SourceInput: {
      /** Who published it. */
      readonly body: string;
      /** Key that cites name the source by. */
      readonly key: string;
      /** What to know about the source. */
      readonly note?: string;
      /**
       * In which form it was read.
       * @enum {string}
       */
      readonly readAs: "first-hand" | "second-hand" | "memory" | "derived" | "common-practice";
      /** Title of what was published. */
      readonly title: string;
      /** Where it can be read, if freely. */
      readonly url?: string;
      /** Year or edition of the publication. */
      readonly year: string;
    };
    /**
     * A number in m/s, or text with its unit: m/s, km/h, kn, mph. Limits that stand beside a reference to this are in m/s.
     * @example 12 kn
     */
    readonly SpeedInput: number | string;
    /** Whether the new stack comes out flush with the old core. */
    readonly StackCheck: {
      /** How far beyond what is allowed; 0 when it holds. */
      readonly beyondMm: number;
      /**
       * Whether the stack lies flush, stands proud or lies low.
       * @enum {string}
       */
      readonly governs: "flush" | "low" | "proud";
      /** The next choice of sheets, were this one not to be had. */
      readonly nextBest?: components["schemas"]["StackChoice"];
      /** Fields of StackCheck in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StackCheckUs"];
      /**
       * Whether the height of the stack holds.
       * @enum {string}
       */
      readonly verdict: "fails" | "holds";
      /** The verdict in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    /** Fields of StackCheck in US customary units, when `Accept-Units: us` was sent. */
    readonly StackCheckUs: {
      readonly beyondMm?: components["schemas"]["UsText"];
    };
    /** One way to fill the cavity from stock. */
    readonly StackChoice: {
      /** How far beyond what is allowed; 0 when flush. */
      readonly beyondMm: number;
      /** Bond line that this choice needs under each layer. */
      readonly bondLineMm: number;
      /**
       * How this choice lies to the old core.
       * @enum {string}
       */
      readonly fit: "flush" | "low" | "proud";
      /** Height less cavity: positive stands proud. */
      readonly flushMm: number;
      /** Height that this choice comes to. */
      readonly heightMm: number;
      /** Thickness of each layer, from the inner skin up. */
      readonly layersMm: readonly number[];
      /** Fields of StackChoice in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StackChoiceUs"];
      /** This choice in a sentence. */
      readonly words: components["schemas"]["Text"];
    };
    /** Fields of StackChoice in US customary units, when `Accept-Units: us` was sent. */
    readonly StackChoiceUs: {
      readonly beyondMm?: components["schemas"]["UsText"];
      readonly bondLineMm?: components["schemas"]["UsText"];
      readonly flushMm?: components["schemas"]["UsText"];
      readonly heightMm?: components["schemas"]["UsText"];
      /** `layersMm` in US customary units. */
      readonly layersMm?: readonly components["schemas"]["UsText"][];
    };
    readonly StackLayer: {
      /**
       * Plain sheet, or scored to follow a curve.
       * @enum {string}
       */
      readonly form: "plain" | "scored";
      /** Thickness of the layer. */
      readonly thicknessMm: number;
      /** Fields of StackLayer in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StackLayerUs"];
    };
    /** Fields of StackLayer in US customary units, when `Accept-Units: us` was sent. */
    readonly StackLayerUs: {
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Which sheets fill the cavity, how the new skin then sits, and what the deck gains or loses in mass. */
    readonly StackPlan: {
      /** What was taken about core and bond line. */
      readonly assumptions: readonly components["schemas"]["Figure"][];
      /** Thickness of the bond line under each layer. */
      readonly bondLine: components["schemas"]["Figure"];
      /** Resin that beds the layers. */
      readonly bondResin: components["schemas"]["Figure"];
      /** How the layers follow the camber of the deck; absent on a flat one. */
      readonly camber?: components["schemas"]["CamberPlan"];
      /** Whether the new stack comes out flush with the old core. */
      readonly check: components["schemas"]["StackCheck"];
      /** All choices from the material's list, best first. */
      readonly choices: readonly components["schemas"]["StackChoice"][];
      /** Height of the new stack less the cavity: positive stands proud of the old deck, negative lies below it. */
      readonly flush: components["schemas"]["Figure"];
      /** Height of the new stack with its bond lines. */
      readonly height: components["schemas"]["Figure"];
      /**
       * Joints of one layer lie away from those of the other.
       * @enum {string}
       */
      readonly joints: "single-layer" | "staggered";
      /** Resin that fills the cuts of a scored sheet. */
      readonly kerfResin?: components["schemas"]["Figure"];
      /** New layers from the inner skin up. */
      readonly layers: readonly components["schemas"]["StackLayer"][];
      /** New core less old sound core, without resin. */
      readonly massChange: components["schemas"]["Figure"];
      /** Mass of the new core with its bond lines. */
      readonly newCoreMass: components["schemas"]["Figure"];
      /** Mass of the core that comes out, dry. */
      readonly oldCoreMass: components["schemas"]["Figure"];
      /** Only where somebody said how wet the old core is. */
      readonly waterLeaving?: components["schemas"]["Figure"];
      /** Resin under plies laid wet on the core; 0 where the skin has a bed of its own. */
      readonly wetLine: components["schemas"]["Figure"];
    };
    /** How thick the beds are and how the skin sits. */
    readonly StackRulesInput: {
      /** A bond line as a notched spreader leaves it. Absent: 0.89 mm (what a 1/4 in notch leaves). */
      readonly bondLineMm?: components["schemas"]["LengthInput"];
      /** Highest the skin may sit. Absent: 0 mm (a proud skin cannot be faired away). */
      readonly highestFlushMm?: components["schemas"]["LengthInput"];
      /** The thinnest that still fills, pressed hard. Absent: 0.25 mm (a tight bed on balsa, pressed). */
      readonly leastBondLineMm?: components["schemas"]["LengthInput"];
      /** Lowest the skin may sit. Absent: -1 mm (a millimetre low is faired). */
      readonly lowestFlushMm?: components["schemas"]["LengthInput"];
      /** The thickest bed of filled resin. Absent: 3 mm (a paste bed of 1 to 3 mm). */
      readonly mostBondLineMm?: components["schemas"]["LengthInput"];
      /** Resin under plies laid wet on the core. Absent: 0.1 mm (the first ply lies on the core in its own resin; there is no bed of paste). */
      readonly wetLineMm?: components["schemas"]["LengthInput"];
    };
    /** A group of plies that may be laid wet on wet. */
    readonly Stage: {
      /** A single ply thicker than the limit cannot be divided. */
      readonly isOverLimit: boolean;
      /** Places in the order of laying, from 1. */
      readonly plies: readonly number[];
      /** Number of the stage, from 1. */
      readonly stage: number;
      /** Thickness laid in the stage. */
      readonly thicknessMm: number;
      /** Fields of Stage in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StageUs"];
    };
    /** Fields of Stage in US customary units, when `Accept-Units: us` was sent. */
    readonly StageUs: {
      readonly thicknessMm?: components["schemas"]["UsText"];
    };
    /** Everything up to the hold point, so that the rest can be priced on what is then known. */
    readonly StageZero: {
      /** Labour with its share of overhead and profit, before tax. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** What of the contingency need not be set aside any more, once the extent is known; without tax. */
      readonly contingencyFreed: components["schemas"]["MoneyJson"];
      /** Hours of the stage. */
      readonly labourH: number;
      /** Lines of the price that belong to it, by code. */
      readonly lines: readonly components["schemas"]["Text"][];
      /** Name of the stage. */
      readonly title: components["schemas"]["Text"];
    };
    readonly StateAnswer: {
      /** Requirements in this state. */
      readonly checks: readonly components["schemas"]["PanelCheckItem"][];
      /** Greatest utilisation and where it is. */
      readonly governing?: components["schemas"]["StateAnswerGoverning"];
      /** How the deck answers each load in this state. */
      readonly responses: readonly components["schemas"]["Response"][];
      /** Stiffness of a cut through the deck in this state. */
      readonly section: components["schemas"]["SectionResult"];
      /**
       * Which state of the deck.
       * @enum {string}
       */
      readonly state: "as-built" | "as-found" | "opened" | "repaired";
    };
    /** Greatest utilisation and where it is. */
    readonly StateAnswerGoverning: {
      /** Check that is nearest to its limit. */
      readonly code: components["schemas"]["Text"];
      /** Load under which it is. */
      readonly load?: components["schemas"]["Text"];
      /** Demand over capacity of that check. */
      readonly utilisation: number;
    };
    readonly StatedFinding: {
      /** A zone or a fitting of the record, or any other label for a finding of its own. */
      readonly about: components["schemas"]["Text"];
      /**
       * Class of the finding.
       * @enum {string}
       */
      readonly class?: "before-use" | "monitor" | "next-opportunity";
      /** What is recommended. */
      readonly recommendation?: components["schemas"]["Text"];
      /** Restriction of use until then. */
      readonly restriction?: components["schemas"]["Text"];
      /** The finding in words. */
      readonly wording?: components["schemas"]["Text"];
    };
    /** What one step takes, waste apart; masses to a tenth of a gram, so that batches and bill can agree exactly. */
    readonly StepDemand: {
      /** Density of the mix, filler included. */
      readonly densityGPerCm3: number;
      /** Code of the filler that thickens the mix; absent for neat resin. */
      readonly filler?: components["schemas"]["Text"];
      /** Filler to stir in for the step. */
      readonly fillerG: number;
      /** Filler to 100 parts of mixed resin, by mass. */
      readonly fillerPartsPerHundred: number;
      /** Hardener to weigh for the step. */
      readonly hardenerG: number;
      /** Place of the step in the request, from 0. */
      readonly index: number;
      /** Mix that stays in the work of this step. */
      readonly netL: number;
      /** Resin to weigh for the step. */
      readonly resinG: number;
      /**
       * Kind of step that uses resin.
       * @enum {string}
       */
      readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
      /** Name of the step for the crew. */
      readonly title: components["schemas"]["Text"];
      /** Mass of the step's mix, filler included. */
      readonly totalKg: number;
      /** Mix that the step needs with its losses. */
      readonly totalL: number;
      /** How many units of its driver the step has, such as square metres. */
      readonly units: number;
      /** Fields of StepDemand in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StepDemandUs"];
      /** Mix that the step loses. */
      readonly wasteL: number;
      /** How the quantities of the step were worked out. */
      readonly why: components["schemas"]["StepDemandWhy"];
    };
    /** Fields of StepDemand in US customary units, when `Accept-Units: us` was sent. */
    readonly StepDemandUs: {
      readonly densityGPerCm3?: components["schemas"]["UsText"];
      readonly fillerG?: components["schemas"]["UsText"];
      readonly hardenerG?: components["schemas"]["UsText"];
      readonly netL?: components["schemas"]["UsText"];
      readonly resinG?: components["schemas"]["UsText"];
      readonly totalKg?: components["schemas"]["UsText"];
      readonly totalL?: components["schemas"]["UsText"];
      readonly wasteL?: components["schemas"]["UsText"];
    };
    /** How the quantities of the step were worked out. */
    readonly StepDemandWhy: {
      /** Derivation of the mass that is mixed. */
      readonly mixedG: components["schemas"]["Figure"];
      /** Derivation of the volume that stays in the work. */
      readonly netL: components["schemas"]["Figure"];
    };
    readonly StepWeather: {
      /** Code of the step that waits for weather. */
      readonly code: components["schemas"]["Text"];
      /** What to know when no window fits. */
      readonly note?: components["schemas"]["Text"];
      /** What the weather must be. */
      readonly requires: readonly components["schemas"]["Requirement"][];
      /** Hours of the forecast in which the work may not be begun, by the gate that forbids it. */
      readonly shutBy: readonly components["schemas"]["StepWeatherShutBy"][];
      /** Name of that step. */
      readonly title: components["schemas"]["Text"];
      /** When the step may start, best first. */
      readonly windows: readonly components["schemas"]["WorkWindow"][];
    };
    readonly StepWeatherShutBy: {
      /**
       * Gate that keeps the step shut.
       * @enum {string}
       */
      readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
      /** Hours that this gate alone shuts. */
      readonly hours: number;
    };
    /** How many packs of a SKU there are now. */
    readonly StockCount: {
      /** RFC 3339 instant at which it was counted. */
      readonly countedAt: components["schemas"]["Instant"];
      /** Whole packs that could be sold when they were counted. */
      readonly packs: number;
      /** Pack that was counted. */
      readonly sku: components["schemas"]["Text"];
    };
    /** What was counted of a price list. Of packs that are not here, the stock of the edition counts. */
    readonly StockList: {
      /** Packs that were counted. */
      readonly items: readonly components["schemas"]["StockCount"][];
      /** Code of the price list whose packs were counted. */
      readonly priceList: components["schemas"]["Text"];
    };
    readonly StockSheetInput: {
      /**
       * Format: int32
       * How many there are; absent: as many as it takes. Needed for a sheet that costs nothing.
       */
      readonly available?: number;
      /** Cost in any one currency; costs are only compared. */
      readonly cost: number;
      /** Bad spots and cut-outs. */
      readonly holes?: readonly (readonly (readonly number[])[])[];
      /** Name of the sheet, unique in the request. */
      readonly id: string;
      /** A whole, half or quarter sheet, or an offcut as it is. */
      readonly outline: readonly (readonly number[])[];
    };
    /** An estimate as it is kept: the document, and what the service adds to it. Never changed once made. */
    readonly StoredEstimate: {
      /** Opens this estimate and its revisions; only in the answer to a publishable key, and kept by nobody else. */
      readonly clientSecret?: components["schemas"]["Text"];
      /** When that secret stops opening the estimate (RFC 3339). */
      readonly clientSecretExpiresAt?: components["schemas"]["Instant"];
      /** When the estimate was kept (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** The estimate with all its sections. */
      readonly estimate: components["schemas"]["Estimate"];
      /** Id that the estimate is kept under. */
      readonly id: components["schemas"]["Text"];
      /** SHA-256 of the defect record, with its members in order. */
      readonly inputHash: components["schemas"]["Text"];
      /** Its place among the revisions of the job. */
      readonly revision: components["schemas"]["RevisionMark"];
    };
    /** Pieces laid on a length of roll; x runs along the roll, y across it. */
    readonly StripLayout: {
      /** Step of the grid that pieces were moved on. */
      readonly gridStepMm: number;
      /** No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along. */
      readonly leastLengthMm: number;
      /** Length to cut off the roll. */
      readonly lengthMm: number;
      /** Area of the pieces on the roll. */
      readonly pieceAreaM2: number;
      /** Where each piece lies on the roll. */
      readonly placements: readonly components["schemas"]["Placement"][];
      /** Area of roll used. */
      readonly stripAreaM2: number;
      /** Fields of StripLayout in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["StripLayoutUs"];
      /** Share of the roll that becomes pieces. */
      readonly utilisation: number;
      /** Width of the roll. */
      readonly widthMm: number;
      /** Thousands of pairs looked at. */
      readonly workUnits: number;
    };
    /** Fields of StripLayout in US customary units, when `Accept-Units: us` was sent. */
    readonly StripLayoutUs: {
      readonly gridStepMm?: components["schemas"]["UsText"];
      readonly leastLengthMm?: components["schemas"]["UsText"];
      readonly lengthMm?: components["schemas"]["UsText"];
      readonly pieceAreaM2?: components["schemas"]["UsText"];
      readonly stripAreaM2?: components["schemas"]["UsText"];
      readonly widthMm?: components["schemas"]["UsText"];
    };
    /** A material that would do instead of another, at a ratio and a penalty. */
    readonly SubstituteInput: {
      /** What is asked for. */
      readonly insteadOf: components["schemas"]["MaterialVariantInput"];
      /** What the trouble is worth for each unit replaced; steers the choice and is not paid. */
      readonly penaltyPerUnit: string;
      /** Units of the substitute that do the work of one unit. */
      readonly ratio: number;
      /** Why it would do. */
      readonly reason: string;
      /** What would do as well. */
      readonly use: components["schemas"]["MaterialVariantInput"];
    };
    /** Material that is bought in place of the one planned. */
    readonly Substitution: {
      /** Material that was planned. */
      readonly insteadOf: components["schemas"]["MaterialVariant"];
      /** What the search counted against the substitution; nobody pays it. */
      readonly penalty: components["schemas"]["MoneyJson"];
      /** How much of the planned material it stands for. */
      readonly quantity: number;
      /** Why the other material may stand in. */
      readonly reason: components["schemas"]["Text"];
      /** Unit of the replaced quantity. */
      readonly unit: components["schemas"]["Text"];
      /** Fields of Substitution in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SubstitutionUs"];
      /** Material that is bought in its place. */
      readonly use: components["schemas"]["MaterialVariant"];
    };
    /** Fields of Substitution in US customary units, when `Accept-Units: us` was sent. */
    readonly SubstitutionUs: {
      readonly quantity?: components["schemas"]["UsText"];
    };
    /** The figures that a reader asks for first. */
    readonly Summary: {
      /** Days that the boat lies, as a spread. */
      readonly calendarDays: components["schemas"]["Range"];
      /** Sheets of core to buy. */
      readonly coreSheets: number;
      /** Sawing to do. */
      readonly cutLengthM: number;
      /** Total by what an insurer asks for. */
      readonly insurer: components["schemas"]["SummaryInsurer"];
      /** Of the whole job with what is found besides, from the same simulation as money and days. */
      readonly labourH: components["schemas"]["Range"];
      /** Sum of the most likely hours of each operation: seldom enough for all of them together. */
      readonly labourLikelyH: number;
      /** Sum of the labour lines: the recorded scope at mean hours. */
      readonly labourMeanH: number;
      /** Resin to mix, losses included. */
      readonly mixedResinL: number;
      /** Skin taken off the deck. */
      readonly openedAreaM2: number;
      /** The price with tax: base and what will probably be found besides. */
      readonly total: components["schemas"]["MoneyJson"];
      /** Spread of the total. */
      readonly totalRange: components["schemas"]["EstimateMoneyRange"];
      /** Beside the price, with tax. */
      readonly totalWithContingency: components["schemas"]["MoneyJson"];
      /** Fields of Summary in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SummaryUs"];
      /**
       * What the conclusion says of the finished repair.
       * @enum {string}
       */
      readonly verdict: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
      /** Days with somebody at work, as a spread. */
      readonly workingDays: components["schemas"]["Range"];
    };
    /** Total by what an insurer asks for. */
    readonly SummaryInsurer: {
      /** Part that the stated event caused. */
      readonly attributable: components["schemas"]["MoneyJson"];
      /** Part that makes the boat better than it was. */
      readonly improvement: components["schemas"]["MoneyJson"];
      /** Part that was there before. */
      readonly prior: components["schemas"]["MoneyJson"];
    };
    /** Fields of Summary in US customary units, when `Accept-Units: us` was sent. */
    readonly SummaryUs: {
      readonly cutLengthM?: components["schemas"]["UsText"];
      readonly mixedResinL?: components["schemas"]["UsText"];
      readonly openedAreaM2?: components["schemas"]["UsText"];
    };
    readonly SupplierInput: {
      /** Code of the supplier, unique in the list. */
      readonly code: string;
      /** Price of one delivery. */
      readonly delivery: string;
      /** Sum from which delivery is free. */
      readonly freeDeliveryFrom?: string;
      /** What a box of dangerous goods adds to it. */
      readonly hazardSurcharge: string;
      /** Least sum that the supplier delivers for. */
      readonly minimumOrder: string;
      /** Name that orders are addressed to. */
      readonly name: string;
      /** What goods too large for parcels add to it. */
      readonly oversizeFreight: string;
    };
    /** What is ordered from one supplier, with all that he charges. */
    readonly SupplierOrder: {
      /** Cutting on all lines of the order. */
      readonly cutFees: components["schemas"]["MoneyJson"];
      /** What carriage of the order costs. */
      readonly delivery: components["schemas"]["MoneyJson"];
      /** Packs of the order at list price. */
      readonly goods: components["schemas"]["MoneyJson"];
      /** Boxes that the dangerous goods are packed in. */
      readonly hazardBoxes: number;
      /** What the dangerous goods in the order add to carriage. */
      readonly hazardSurcharge: components["schemas"]["MoneyJson"];
      /** Whether the goods reach the sum from which delivery is free. */
      readonly isDeliveryFree: boolean;
      /** What the whole order weighs. */
      readonly massKg: number;
      /** Name of the supplier on the order. */
      readonly name: components["schemas"]["Text"];
      /** What the packs too large for parcels add to carriage. */
      readonly oversizeFreight: components["schemas"]["MoneyJson"];
      /** Code of the supplier the order goes to. */
      readonly supplier: components["schemas"]["Text"];
      /**
       * Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more.
       * @enum {string}
       */
      readonly toppedUpFor?: "free-delivery" | "minimum-order";
      /** All that this supplier is paid. */
      readonly total: components["schemas"]["MoneyJson"];
      /** Fields of SupplierOrder in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["SupplierOrderUs"];
    };
    /** Fields of SupplierOrder in US customary units, when `Accept-Units: us` was sent. */
    readonly SupplierOrderUs: {
      readonly massKg?: components["schemas"]["UsText"];
    };
    readonly SupplierSheetInput: {
      /**
       * What becomes of the prices from more packs on, where a price is taken.
       * @enum {string}
       */
      readonly breaks: "keep" | "drop";
      /** The cells, headings first: parted by tabs, semicolons or commas, whichever the headings have most of, and quoted as RFC 4180 says. */
      readonly cells: string;
      /** What the columns mean; columns that are not named here are left out. */
      readonly columns: readonly components["schemas"]["SheetColumnInput"][];
      /**
       * What parts the decimals in the numbers of the sheet.
       * @enum {string}
       */
      readonly decimalMark: "." | ",";
      /**
       * What becomes of rows whose SKU is not in the list.
       * @enum {string}
       */
      readonly unknownSkus: "refuse" | "leave-out";
    };
    readonly SupportLine: {
      /** Where it starts. */
      readonly from: readonly number[];
      /**
       * What bears the panel along the line.
       * @enum {string}
       */
      readonly kind: "beam" | "bulkhead" | "coaming" | "hatch" | "hull-joint" | "other" | "toe-rail";
      /** Where it ends. */
      readonly to: readonly number[];
    };
    readonly SupportLineInput: {
      /**
       * Where it starts.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly from: readonly number[];
      /**
       * What bears the panel along the line.
       * @enum {string}
       */
      readonly kind: "hull-joint" | "coaming" | "hatch" | "toe-rail" | "bulkhead" | "beam" | "other";
      /**
       * Where it ends.
       * @example [
       *       400,
       *       300
       *     ]
       */
      readonly to: readonly number[];
    };
    /** Readings of hammer, meter and plugs. */
    readonly Survey: {
      /** Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core. */
      readonly meter?: components["schemas"]["SurveyMeter"];
      /** What was heard, measured and seen on the deck. */
      readonly readings: readonly components["schemas"]["SurveyReadings"][];
    };
    /** What hammer, moisture meter and plugs showed, place by place. */
    readonly SurveyInput: {
      /** What the meter says of sound and of soaked deck; needed beside its readings. */
      readonly meter?: components["schemas"]["MeterInput"];
      /** Soundings, meter readings and plugs, in any order. */
      readonly readings: readonly components["schemas"]["SurveyInputReadings"][];
    };
    readonly SurveyInputReadings: components["schemas"]["SoundingInput"] | components["schemas"]["MeterReadingInput"] | components["schemas"]["PlugInput"];
    /** Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core. */
    readonly SurveyMeter: {
      /** What the meter shows on sound, dry deck of this boat. */
      readonly dryReference: number;
      /** What the meter shows where the deck is surely wet. */
      readonly wetReference: number;
    };
    /** The surveyor. */
    readonly Surveyor: {
      /** Firm of the surveyor. */
      readonly firm?: components["schemas"]["Text"];
      /** Name of the surveyor. */
      readonly name?: components["schemas"]["Text"];
      /** Qualification of the surveyor. */
      readonly qualification?: components["schemas"]["Text"];
    };
    /** The surveyor. */
    readonly SurveyorInput: {
      /** Firm of the surveyor. */
      readonly firm?: string;
      /** Name of the surveyor. */
      readonly name?: string;
      /** Qualification of the surveyor. */
      readonly qualification?: string;
    };
    readonly SurveyReadings: components["schemas"]["Sounding"] | components["schemas"]["MeterReading"] | components["schemas"]["Plug"];
    /** Readings so far; none yet is an answer too. */
    readonly SurveySoFarInput: {
      /** What the meter says of sound and of soaked deck; needed beside its readings. */
      readonly meter?: components["schemas"]["MeterInput"];
      /** Soundings, meter readings and plugs, in any order. */
      readonly readings: readonly components["schemas"]["SurveyInputReadings"][];
    };
    /** SVG 1.1, to scale. */
    readonly SvgText: string;
    /** What a supplier's sheet did to a price list of a draft. */
    readonly TakenSheet: {
      /** SKUs of packs that are otherwise now. */
      readonly changed: readonly components["schemas"]["Text"][];
      /** Code of the draft. */
      readonly edition: components["schemas"]["Text"];
      /** SKUs of rows that are not in the list and were left out, as asked. */
      readonly leftOut: readonly components["schemas"]["Text"][];
      /** Code of the price list. */
      readonly priceList: components["schemas"]["Text"];
      /**
       * Format: int32
       * Packs that the sheet names and that stay as they were.
       */
      readonly sameCount: number;
    };
    readonly TaxGroupInput: {
      /** Code that lines name the tax by. */
      readonly code: string;
      /** Name of the tax on an invoice. */
      readonly name: string;
      /** Rate of the tax in percent, as decimal text. */
      readonly percent: string;
    };
    /**
     * A number in degC, or text with its unit: degC, °C, K, degF, °F. Limits that stand beside a reference to this are in degC.
     * @example 65 degF
     */
    readonly TemperatureInput: number | string;
    /** Words or a name, without control characters other than tab and line break. */
    readonly Text: string;
    /** A quantity nobody knows exactly: least, most likely and most. */
    readonly ThreePoint: {
      /** High end of the spread. */
      readonly high: number;
      /** Most likely value of the spread. */
      readonly likely: number;
      /** Low end of the spread. */
      readonly low: number;
    };
    /** A value as least, likely and most. */
    readonly ThreePointInput: {
      /** Most that it may come to. */
      readonly high: number;
      /** What it most likely comes to. */
      readonly likely: number;
      /** Least that it may come to. */
      readonly low: number;
    };
    /** Something to do or to wait for on a day. */
    readonly TodayItem: {
      /**
       * Work, a wait, a hold point, or what comes next.
       * @enum {string}
       */
      readonly kind: "hold" | "next" | "wait" | "work";
      /** Task that it belongs to, by code. */
      readonly task: components["schemas"]["Text"];
      /** What to do or wait for, in a sentence. */
      readonly text: components["schemas"]["Text"];
    };
    /** A section of the sum, or a step from the sum of the lines to what is to be paid. */
    readonly TotalChange: {
      /** The total in the later estimate. */
      readonly after: components["schemas"]["MoneyJson"];
      /** The total in the earlier estimate. */
      readonly before: components["schemas"]["MoneyJson"];
      /** Which total changed. */
      readonly code: components["schemas"]["Text"];
      /** What the total rose by; negative where it fell. */
      readonly difference: components["schemas"]["MoneyJson"];
      /** Name of the total. */
      readonly name: components["schemas"]["Text"];
    };
    /** From the lines to the total. */
    readonly Totals: {
      /** Lines with overhead and profit: the recorded scope at mean hours, without tax. */
      readonly base: components["schemas"]["MoneyJson"];
      /** What better evidence would leave of the contingency, and what it would take off it; without tax. */
      readonly betterEvidence: readonly components["schemas"]["TotalsBetterEvidence"][];
      /** Price with tax, by the cause of the lines. */
      readonly byCause: readonly components["schemas"]["TotalsByCause"][];
      /** P80 less the price, without tax; it stands beside the price and is no part of it. */
      readonly contingency: components["schemas"]["MoneyJson"];
      /** How the reserve was worked out. */
      readonly contingencyBasis: components["schemas"]["Text"];
      /** By kind of risk; the shares make the whole. */
      readonly contingencyByKind: readonly components["schemas"]["TotalsContingencyByKind"][];
      /** Currency of the estimate (ISO 4217). */
      readonly currency: components["schemas"]["Currency"];
      /** Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
      readonly depreciation?: components["schemas"]["PartsWear"];
      /** Kinds of risk by what they add to the uncertainty of the price. */
      readonly drivers: readonly components["schemas"]["TotalsDrivers"][];
      /** What is billed for goods and what is bought. */
      readonly goods: components["schemas"]["GoodsSums"];
      /** What will probably be found besides, as a provisional quantity; without tax. */
      readonly growth: components["schemas"]["ProvisionalSum"];
      /** Total as an insurer reads it. */
      readonly insurer: components["schemas"]["InsurerSplit"];
      /** Work in the price, with its loadings and tax. */
      readonly labour: components["schemas"]["MoneyJson"];
      /** Sum of the lines, before overhead, profit and tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /** Separate areas elsewhere; without tax. */
      readonly newAreas: components["schemas"]["ProvisionalSum"];
      /** What the customer is offered first. */
      readonly offer: components["schemas"]["Offer"];
      /** Overhead in the total. */
      readonly overhead: components["schemas"]["MoneyJson"];
      /** Only where the owner works himself. */
      readonly ownWork?: components["schemas"]["TotalsOwnWork"];
      /** Half of the points against the other half, P90 over P90. */
      readonly p90RelativeError: number;
      /** Goods in the price, with their loadings and tax. */
      readonly parts: components["schemas"]["MoneyJson"];
      /** Profit in the total. */
      readonly profit: components["schemas"]["MoneyJson"];
      /** Of the whole job with tax: what the simulated jobs cost. */
      readonly range: components["schemas"]["EstimateMoneyRange"];
      /** Jobs drawn for the spread. */
      readonly samples: number;
      /** Share of the simulated jobs that cost no more than `total`. */
      readonly shareWithin: number;
      /** Sum of the taxes. */
      readonly tax: components["schemas"]["MoneyJson"];
      /** Taxes in the price, each on its group of lines. */
      readonly taxes: readonly components["schemas"]["TotalsTaxes"][];
      /** The price: base, growth and new areas, with tax. About as many jobs cost more as cost less. */
      readonly total: components["schemas"]["MoneyJson"];
      /** Price and contingency together, with tax. */
      readonly totalWithContingency: components["schemas"]["MoneyJson"];
    };
    readonly TotalsBetterEvidence: {
      /** Reserve at that grade. */
      readonly contingency: components["schemas"]["MoneyJson"];
      /**
       * A better grade of evidence.
       * @enum {string}
       */
      readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
      /** What the reserve would shrink by. */
      readonly saves: components["schemas"]["MoneyJson"];
    };
    readonly TotalsByCause: {
      /** What is put down to it. */
      readonly amount: components["schemas"]["MoneyJson"];
      /**
       * The cause.
       * @enum {string}
       */
      readonly causeClass: "maintenance" | "pre-existing" | "sudden";
    };
    readonly TotalsContingencyByKind: {
      /** Its part of the reserve. */
      readonly amount: components["schemas"]["MoneyJson"];
      /**
       * Kind of risk.
       * @enum {string}
       */
      readonly kind: "extent" | "new-areas" | "price" | "productivity" | "waits";
      /** Name of the risk. */
      readonly name: components["schemas"]["Text"];
      /** Its share of the reserve. */
      readonly share: number;
    };
    readonly TotalsDrivers: {
      /** What is uncertain. */
      readonly name: components["schemas"]["Text"];
      /** Its share of the variance of the total. */
      readonly shareOfVariance: number;
    };
    /** Only where the owner works himself. */
    readonly TotalsOwnWork: {
      /** What a yard would ask for these hours. */
      readonly aYardWouldAsk: components["schemas"]["MoneyJson"];
      /** How that was reckoned. */
      readonly basis: components["schemas"]["Text"];
      /** Hours that the owner works. */
      readonly labourH: number;
    };
    readonly TotalsTaxes: {
      /** The tax. */
      readonly amount: components["schemas"]["MoneyJson"];
      /** Sum that the tax is reckoned on. */
      readonly base: components["schemas"]["MoneyJson"];
      /** Tax group of the sum. */
      readonly code: components["schemas"]["Text"];
      /** Name on the invoice. */
      readonly name: components["schemas"]["Text"];
      /** Rate in percent, as decimal text. */
      readonly percent: components["schemas"]["Decimal"];
    };
    readonly TrialTotal: {
      /** Sum of the totals with the draft. */
      readonly after: components["schemas"]["MoneyJson"];
      /** Sum of the stored totals. */
      readonly before: components["schemas"]["MoneyJson"];
      /** Currency that these estimates are in. */
      readonly currency: components["schemas"]["Currency"];
      /** What the draft adds to the sum. */
      readonly difference: components["schemas"]["MoneyJson"];
      /**
       * Format: int32
       * Estimates that the sums are over.
       */
      readonly estimateCount: number;
    };
    /** One estimate, worked out again with both editions from the record that it keeps. */
    readonly TriedEstimate: {
      /** The same with the edition tried. */
      readonly after?: components["schemas"]["MoneyJson"];
      /** Without tax, provisional sums included; absent where an edition could not answer. */
      readonly before?: components["schemas"]["MoneyJson"];
      /** Total with the draft less the stored total; absent when it could not be made. */
      readonly difference?: components["schemas"]["MoneyJson"];
      /** Figures of the scope that differ, such as sheets of core. */
      readonly figures: readonly components["schemas"]["FigureChange"][];
      /** Estimate that was tried. */
      readonly id: components["schemas"]["Text"];
      /** Without tax, provisional sums included, as it is kept: made with its own edition and version of the program. */
      readonly keptNet: components["schemas"]["MoneyJson"];
      /** Lines that differ: by how much, because of how much more of it and because of its rate. */
      readonly lines: readonly components["schemas"]["LineChange"][];
      /** Only for callers who may read estimates. */
      readonly reference?: components["schemas"]["Text"];
      /** Why an edition could not answer, one sentence for each thing. */
      readonly refusedBecause: readonly components["schemas"]["Text"][];
      /** Revision of it that was tried. */
      readonly revisionNumber: number;
      /** Of the amount before, such as 0.04 for 4 % more; absent when that was nothing. */
      readonly shareOfBefore?: number;
      /** Only for callers who may read estimates. */
      readonly title?: components["schemas"]["Text"];
    };
    readonly TypedQuantityInput: {
      /**
       * What the text measures.
       * @enum {string}
       */
      readonly dimension: "length" | "area" | "mass" | "temperature" | "areal mass" | "volume" | "speed";
      /**
       * A number with its unit.
       * @example 5/8 in
       */
      readonly text: string;
    };
    readonly UpdateOrganisationBody: {
      /** As it stands at the head of documents. */
      readonly name?: string;
    };
    readonly UsageInput: {
      /**
       * What the use is counted by.
       * @enum {string}
       */
      readonly driver: "job" | "opened-m2" | "cut-m" | "taper-m" | "laminate-m2" | "laminate-session-m2" | "faired-m2" | "finish-m2" | "hole" | "fitting" | "labour-h" | "mixed-l" | "bag-perimeter-m" | "person" | "prop" | "prop-board-m" | "press-bag" | "batten-m" | "batten-screw";
      /** How much is used for one of those. */
      readonly perDriver: components["schemas"]["DatumInput"];
    };
    /** The field of the same name beside `us`, in US customary units; ≈ marks a rounded text. */
    readonly UsText: string;
    /** Vacuum. */
    readonly VacuumInput: {
      /** Air in bag and hoses before it is pumped out. */
      readonly bagVolumeL?: number;
      /** Loss of vacuum in a drop test with the pump shut off. */
      readonly dropKPa?: number;
      /** Minutes over which the gauge was watched with the pump shut off. */
      readonly dropMinutes?: number;
      /** Share of the air that the pump takes away. Absent: 0.75 (22 inHg of 30 is what repair manuals ask at least). */
      readonly fraction?: number;
      /** Free flow of the pump. Absent: 50 l/min (small workshop pump). */
      readonly pumpLPerMin?: number;
    };
    readonly VariantAskedInput: {
      /**
       * Names the variant in the answer.
       * @example relay-vacuum
       */
      readonly code: string;
      /** What is otherwise than the record's own conditions say. */
      readonly conditions?: components["schemas"]["ConditionsInput"];
      /** Fill the gap under a sound skin through drilled holes; refused, with the rule, wherever that is not trusted. */
      readonly inject?: boolean;
      /** What is done otherwise than the record's own method says. */
      readonly method?: components["schemas"]["MethodInput"];
      /** Absent: the code. */
      readonly title?: string;
    };
    readonly VariantComparison: {
      /** Criteria that every variant has a value for, and that dominance is judged on. */
      readonly compared: readonly ("cost" | "days" | "labourH" | "massKg" | "p80" | "spread" | "utilisation")[];
      /** Currency of all variants. */
      readonly currency: components["schemas"]["Currency"];
      /** Variants that cannot be done. */
      readonly refused: readonly components["schemas"]["VariantComparisonRefused"][];
      /** Variants, each with its figures. */
      readonly rows: readonly components["schemas"]["VariantRow"][];
    };
    readonly VariantComparisonRefused: {
      /** Variant that is refused. */
      readonly code: components["schemas"]["Text"];
      /** Rule that refuses it. */
      readonly rule: components["schemas"]["Text"];
      /** Name of the refused variant. */
      readonly title: components["schemas"]["Text"];
      /** Why it refuses it here. */
      readonly why: components["schemas"]["Text"];
    };
    readonly VariantRow: {
      /** In which of the criteria nothing is better. */
      readonly bestIn: readonly ("cost" | "days" | "labourH" | "massKg" | "p80" | "spread" | "utilisation")[];
      /** Code of the variant. */
      readonly code: components["schemas"]["Text"];
      /** Codes of variants that are as good in everything compared and better in something. */
      readonly dominatedBy: readonly components["schemas"]["Text"][];
      /** Whether a check fails with it. */
      readonly failsCheck: boolean;
      /** Its price with tax. */
      readonly gross: components["schemas"]["MoneyJson"];
      /** Its price before tax. */
      readonly net: components["schemas"]["MoneyJson"];
      /** What to know about the variant. */
      readonly note?: components["schemas"]["Text"];
      /** Name of the variant. */
      readonly title: components["schemas"]["Text"];
      /** Figures that variants are compared by. */
      readonly values: components["schemas"]["VariantValues"];
    };
    readonly VariantsRequest: {
      /** Defect record that all variants share. */
      readonly record: components["schemas"]["DefectRecordInput"];
      /** An entry with nothing but a code is the record as it stands. */
      readonly variants: readonly components["schemas"]["VariantAskedInput"][];
    };
    /** What a variant comes to in each of the criteria; absent where it is not known. */
    readonly VariantValues: {
      /** Lines with overhead and profit, without tax. */
      readonly cost: components["schemas"]["MoneyJson"];
      /** Working days. */
      readonly days?: number;
      /** Hours that the variant takes. */
      readonly labourH: number;
      /** Mass that the variant adds; absent when unknown. */
      readonly massKg?: number;
      /** What four jobs in five stay below, without tax. */
      readonly p80?: components["schemas"]["MoneyJson"];
      /** From P10 to P90. */
      readonly spread?: components["schemas"]["MoneyJson"];
      /** Fields of VariantValues in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["VariantValuesUs"];
      /** Highest demand over capacity with the variant. */
      readonly utilisation?: number;
    };
    /** Fields of VariantValues in US customary units, when `Accept-Units: us` was sent. */
    readonly VariantValuesUs: {
      readonly massKg?: components["schemas"]["UsText"];
    };
    /** The vessel. */
    readonly Vessel: {
      /** Builder of the vessel. */
      readonly builder?: components["schemas"]["Text"];
      /** As moulded or engraved on the hull. */
      readonly hullNumber?: components["schemas"]["Text"];
      /** Type or model of the vessel. */
      readonly model?: components["schemas"]["Text"];
      /** Name of the vessel. */
      readonly name?: components["schemas"]["Text"];
      /** Registration of the vessel. */
      readonly registration?: components["schemas"]["Text"];
    };
    /** The vessel. */
    readonly VesselInput: {
      /** Builder of the vessel. */
      readonly builder?: string;
      /** As moulded or engraved on the hull. */
      readonly hullNumber?: string;
      /** Type or model of the vessel. */
      readonly model?: string;
      /** Name of the vessel. */
      readonly name?: string;
      /** Registration of the vessel. */
      readonly registration?: string;
    };
    readonly WeatherHour: {
      /** Start of the hour (RFC 3339). */
      readonly at: components["schemas"]["Instant"];
      /** Temperature of the deck. */
      readonly deckC: number;
      /** Deck temperature less dew point; below the gate's limit the deck is wet. */
      readonly dewMarginK: number;
      /** Dew point of the air. */
      readonly dewPointC: number;
      /** Fields of WeatherHour in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["WeatherHourUs"];
    };
    /** Fields of WeatherHour in US customary units, when `Accept-Units: us` was sent. */
    readonly WeatherHourUs: {
      readonly deckC?: components["schemas"]["UsText"];
      readonly dewPointC?: components["schemas"]["UsText"];
    };
    /** When the weather lets each step be done. */
    readonly WeatherPlan: {
      /** What was taken about the weather. */
      readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
      /** The forecast, hour by hour, as the deck feels it. */
      readonly hours: readonly components["schemas"]["WeatherHour"][];
      /** Each step with its gates and windows. */
      readonly steps: readonly components["schemas"]["StepWeather"][];
    };
    /** What the forecast opens and shuts. */
    readonly WeatherSection: {
      /** Coldest that the deck becomes. */
      readonly coldestDeckC: number;
      /** Moments in the local time of the place. */
      readonly fromAt: components["schemas"]["Text"];
      /** Hours that the forecast reaches. */
      readonly hours: number;
      /** Closest that the deck comes to the dew point. */
      readonly leastDewMarginK: number;
      /** What to know about the forecast. */
      readonly notes: readonly components["schemas"]["Text"][];
      /** Steps that wait for weather, each with its windows. */
      readonly steps: readonly components["schemas"]["WeatherStepSection"][];
      /** IANA time zone that local times are read in. */
      readonly timeZone: components["schemas"]["Text"];
      /** The end of the last hour of the forecast. */
      readonly untilAt: components["schemas"]["Text"];
      /** Fields of WeatherSection in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["WeatherSectionUs"];
      /** Warmest that the deck becomes. */
      readonly warmestDeckC: number;
    };
    /** Fields of WeatherSection in US customary units, when `Accept-Units: us` was sent. */
    readonly WeatherSectionUs: {
      readonly coldestDeckC?: components["schemas"]["UsText"];
      readonly warmestDeckC?: components["schemas"]["UsText"];
    };
    readonly WeatherStepInput: {
      /** For a coat: code of the coating, whose limits then count. */
      readonly coating?: string;
      /**
       * A name for the step.
       * @example bed-core
       */
      readonly code: string;
      /** RFC 3339: what comes before is done then, and no earlier hour counts. */
      readonly earliestAt?: string;
      /**
       * What it waits for.
       * @enum {string}
       */
      readonly gate: "none" | "dry-deck" | "resin" | "coating";
      /** Title of the step. */
      readonly title: string;
      /** Hours after the work until rain and dew no longer hurt; absent: the gel of the resin, or four hours for a coat. */
      readonly untilSafeH?: number;
      /** Hours of work. */
      readonly workH: number;
    };
    readonly WeatherStepSection: {
      /** Step of the calendar. */
      readonly code: components["schemas"]["Text"];
      /** What comes before is done then, by likely values. */
      readonly earliestAt: components["schemas"]["Text"];
      /**
       * Which gate the weather must open.
       * @enum {string}
       */
      readonly gate: "coating" | "dry-deck" | "resin";
      /** Crew hours that it takes. */
      readonly neededH: number;
      /** Working hours of the forecast from `earliestAt` in which an hour of it may be begun. */
      readonly openH: number;
      /** When the plan starts the step (RFC 3339). */
      readonly plannedAt: components["schemas"]["Instant"];
      /** When the plan ends the step (RFC 3339). */
      readonly plannedEndAt: components["schemas"]["Instant"];
      /** Working hours that each condition takes away. */
      readonly shutBy: readonly components["schemas"]["WeatherStepSectionShutBy"][];
      /** What the step is. */
      readonly title: components["schemas"]["Text"];
      /**
       * Format: int32
       * How many windows the forecast holds for it.
       */
      readonly windowCount: number;
      /** The best few, the longest first. */
      readonly windows: readonly components["schemas"]["WeatherWindow"][];
    };
    readonly WeatherStepSectionShutBy: {
      /** Requirement that shuts the step. */
      readonly gate: components["schemas"]["Text"];
      /** Hours of the forecast that it shuts. */
      readonly hours: number;
    };
    readonly WeatherWindow: {
      /** When the window opens (RFC 3339). */
      readonly fromAt: components["schemas"]["Instant"];
      /** How long the window stays open. */
      readonly hours: number;
      /** How close the deck comes to the dew point within the window. */
      readonly leastDewMarginK: number;
      /** Which requirement closes the window. */
      readonly limitedBy: components["schemas"]["Text"];
      /** How warm the deck is on average within the window. */
      readonly meanDeckC: number;
      /** Place among the windows of the step, 1 the best. */
      readonly rank: number;
      /** The end of the last hour in which it may be begun. */
      readonly untilAt: components["schemas"]["Text"];
      /** Fields of WeatherWindow in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["WeatherWindowUs"];
    };
    /** Fields of WeatherWindow in US customary units, when `Accept-Units: us` was sent. */
    readonly WeatherWindowUs: {
      readonly meanDeckC?: components["schemas"]["UsText"];
    };
    /** How far an event came on its way to an endpoint. */
    readonly WebhookDelivery: {
      /** How often it was tried; there are ten attempts in three days. */
      readonly attempts: number;
      /** Event that is delivered. */
      readonly eventId: components["schemas"]["Id"];
      /** Why the last attempt failed, in a sentence. */
      readonly lastFailure?: components["schemas"]["Text"];
      /** HTTP status of the last attempt; absent when nothing was answered. */
      readonly lastStatus?: number;
      /** RFC 3339 instant of the next attempt; only while it waits. */
      readonly nextAttemptAt?: components["schemas"]["Instant"];
      /**
       * How the delivery stands.
       * @enum {string}
       */
      readonly status: "delivered" | "failed" | "waiting";
      /** RFC 3339 instant of the last attempt; absent before the first. */
      readonly triedAt?: components["schemas"]["Instant"];
      /**
       * Type of that event.
       * @enum {string}
       */
      readonly type: "edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made";
    };
    /** The last deliveries to an endpoint, newest event first. */
    readonly WebhookDeliveryList: {
      /** Deliveries, newest first. */
      readonly items: readonly components["schemas"]["WebhookDelivery"][];
    };
    /** Where an organisation wants to be told what happened. */
    readonly WebhookEndpoint: {
      /** When the endpoint was made (RFC 3339). */
      readonly createdAt: components["schemas"]["Instant"];
      /** Why nothing is delivered any more; absent while it is. */
      readonly disabledBecause?: components["schemas"]["Text"];
      /** Id of the endpoint. */
      readonly id: components["schemas"]["Id"];
      /** Events that the endpoint is told of. */
      readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
      /** Where events are posted to. */
      readonly url: components["schemas"]["Text"];
    };
    /** Endpoints of the organisation, oldest first. */
    readonly WebhookEndpointList: {
      /** Endpoints of the organisation. */
      readonly items: readonly components["schemas"]["WebhookEndpoint"][];
    };
    readonly Weighing: {
      /** How much of it to add. */
      readonly addG: number;
      /** Name of the component. */
      readonly name: components["schemas"]["Text"];
      /** What the scale shows after it, pot tared. */
      readonly scaleShowsG: number;
      /** Fields of Weighing in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["WeighingUs"];
      /** Volume of the part: by pump or measuring cup; loose volume for fillers. */
      readonly volumeMl: number;
      /**
       * Component that is added.
       * @enum {string}
       */
      readonly what: "filler" | "hardener" | "resin";
    };
    /** Fields of Weighing in US customary units, when `Accept-Units: us` was sent. */
    readonly WeighingUs: {
      readonly addG?: components["schemas"]["UsText"];
      readonly scaleShowsG?: components["schemas"]["UsText"];
      readonly volumeMl?: components["schemas"]["UsText"];
    };
    /** Weights. */
    readonly WeightsInput: {
      /** At hand. */
      readonly availableKg?: components["schemas"]["MassInput"];
      /** One weight. Absent: 20 kg (a sand bag that one person lifts). */
      readonly bagKg?: components["schemas"]["MassInput"];
    };
    /** Why a figure is what it is: the tree of formulas, inputs and sources below it. */
    readonly WhyAnswer: {
      /** Line that was asked about. */
      readonly code: components["schemas"]["Text"];
      /** Derivation of the line's quantity, down to what was entered. */
      readonly figure: components["schemas"]["Figure"];
    };
    /** Words that a surveyor may replace; what the service would say stays beside them. */
    readonly Worded: {
      /** The sentence that the rules give. */
      readonly byService: components["schemas"]["Text"];
      /** Whether the surveyor's own words stand in its place. */
      readonly isSurveyors: boolean;
      /** What is printed. */
      readonly text: components["schemas"]["Text"];
    };
    /** Hours in which a step may start. */
    readonly WorkWindow: {
      /** Earliest start in the window (RFC 3339). */
      readonly fromAt: components["schemas"]["Instant"];
      /** Least distance of the deck from the dew point. */
      readonly leastDewMarginK: number;
      /**
       * What ends the window.
       * @enum {string}
       */
      readonly limitedBy: "core-moisture" | "dew-margin" | "end-of-forecast" | "end-of-work" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
      /** Mean temperature of the deck in the window. */
      readonly meanDeckC: number;
      /** Place among the windows, 1 the best. */
      readonly rank: number;
      /** Hours within which the step may start. */
      readonly startHours: number;
      /** The end of its last hour. */
      readonly untilAt: components["schemas"]["Text"];
      /** Fields of WorkWindow in US customary units, when `Accept-Units: us` was sent. */
      readonly us?: components["schemas"]["WorkWindowUs"];
    };
    /** Fields of WorkWindow in US customary units, when `Accept-Units: us` was sent. */
    readonly WorkWindowUs: {
      readonly meanDeckC?: components["schemas"]["UsText"];
    };
    /** XML 1.0 in UTF-8. */
    readonly XmlText: string;
    readonly YardChargeInput: {
      /** Code that estimates name the charge by. */
      readonly code: string;
      /** What the yard charges for. */
      readonly name: string;
      /**
       * day: on the calendar; worked-day: one on which somebody works.
       * @enum {string}
       */
      readonly per: "job" | "day" | "worked-day" | "labour-h" | "opened-m2";
      /** Price of it. */
      readonly price: string;
      /**
       * By the shelter, or only while a heater warms the deck; always when absent.
       * @enum {string}
       */
      readonly when?: "shed" | "tent" | "open" | "heated";
      /**
       * Only where the boat was hauled for this job, or only in a yard; everywhere when absent.
       * @enum {string}
       */
      readonly where?: "ashore-for-this" | "yard";
    };
    readonly YardstickLoadInput: {
      /**
       * A plain load that every deck is compared under. (enum property replaced by openapi-typescript)
       * @enum {string}
       */
      readonly kind: "yardstick";
      /** Your own name for the plain load, as the answer shows it. */
      readonly name?: string;
    };
    readonly ZoneInput: {
      /**
       * Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
       * @enum {string}
       */
      readonly condition?: "wet-rotten" | "wet-bonded" | "dry-debonded";
      /** Name of the zone. */
      readonly id: string;
      /** The region of bad core. */
      readonly outline: readonly (readonly number[])[];
    };
    readonly ZoneRecord: {
      /**
       * Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
       * @enum {string}
       */
      readonly condition?: "dry-debonded" | "wet-bonded" | "wet-rotten";
      /** Name of the zone. */
      readonly id: components["schemas"]["Text"];
      /** The region of bad core. */
      readonly outline: readonly (readonly number[])[];
    };
  };
  responses: {
    /** The request could not be read. */
    readonly BadRequest: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** The request conflicts with the present state. */
    readonly Conflict: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** The key may not do this. */
    readonly Forbidden: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** The service failed. */
    readonly Internal: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** There is no such thing here. */
    readonly NotFound: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** The resource was changed in the meantime. */
    readonly PreconditionFailed: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** State which version is to be changed. */
    readonly PreconditionRequired: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** Refused before the operation was looked at: 406 (no acceptable form of the answer exists), 408 (the request took too long to arrive), 413 (the request is too large), 415 (the content type cannot be read), 431 (the header fields are too large), 503 (the service cannot answer now). */
    readonly Refused: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** Too many requests. */
    readonly TooManyRequests: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** A valid key is needed. */
    readonly Unauthenticated: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
    /** The request was understood but cannot be answered. */
    readonly Unprocessable: {
      content: {
        readonly "application/problem+json": components["schemas"]["ProblemDocument"];
      };
    };
  };
  parameters: {
    readonly AcceptUnits: "si" | "us";
    /** `nextCursor` of the page before. */
    readonly Cursor: string;
    /** Code of a draft. */
    readonly Edition: string;
    /** Code of the edition. */
    readonly EditionCode: string;
    /** Id of the estimate, or of one of its revisions. */
    readonly EstimateId: string;
    readonly IdempotencyKey: string;
    readonly IfMatch: string;
    /** Id of the key; not the key itself. */
    readonly KeyId: string;
    /** Only those in this currency. */
    readonly Kind: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
    /** Code of the labour rates. */
    readonly LabourRatesCode: string;
    /** Entries on a page. */
    readonly Limit: number;
    /** Code of the material. */
    readonly MaterialCode: string;
    /** Id of the operation, as Location gave it. */
    readonly OperationId: string;
    /** Id of the organisation. */
    readonly OrganisationId: string;
    /** Number that the supplier sells the pack under. */
    readonly PackSku: string;
    /** Paper that a PDF is set for. */
    readonly Paper: "a4" | "letter";
    /** Number that the photograph has in the report, from 1. */
    readonly PhotographNumber: string;
    readonly Prefer: string;
    /** Code of the price list in the edition. */
    readonly PriceListCode: string;
    /** Id of the publishable key; not the key itself. */
    readonly PublishableKeyId: string;
    /** Id of the key of the chandler. */
    readonly SharedKeyId: string;
    /** Key of the source. */
    readonly SourceKey: string;
    /** Id of the webhook endpoint. */
    readonly WebhookEndpointId: string;
  };
  requestBodies: never;
  headers: {
    /** The origin of the page that asked, where it is allowed to. */
    readonly "Access-Control-Allow-Origin": string;
    /** The version of the resource. */
    readonly ETag: string;
    /** true when the answer is that of an earlier request with the same key. */
    readonly "Idempotency-Replayed": "true";
    /** Where the new resource is. */
    readonly Location: string;
    /** RFC 7240: respond-async when it was preferred and done. */
    readonly "Preference-Applied": "respond-async";
    /** What is left of the limits of key and organisation, and in how many seconds they are whole again (IETF draft). */
    readonly RateLimit: string;
    /** The limits themselves (IETF draft). */
    readonly "RateLimit-Policy": string;
    /** Seconds to wait before trying again. */
    readonly "Retry-After": number;
    /** W3C Trace Context: the span in which the request was answered. */
    readonly Traceparent: string;
    /** Identifies the request in logs; sent back as given when the caller sets it. */
    readonly "X-Request-Id": string;
  };
  pathItems: never;
};
export type $defs = Record<string, never>;
export interface operations {
  readonly isAlive: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["IsAliveAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly isReady: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["IsReadyAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listAuditEntries: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page before. */
        readonly cursor?: components["parameters"]["Cursor"];
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
        /** Only what was done to this kind of thing, such as key or edition. */
        readonly subject?: string;
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["AuditPage"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly openClientSession: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewClientSessionInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["ClientSecret"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listEditions: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EditionList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewEditionInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["Edition"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Edition"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deleteEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly compareEditions: {
    readonly parameters: {
      readonly query: {
        /** Code of the edition to compare with, as the state before. */
        readonly with: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EditionComparison"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEditionHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly publishEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: {
      readonly content: {
        readonly "application/json": components["schemas"]["PublicationInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Edition"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly withdrawEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Edition"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly restoreEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["RestorationInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["Edition"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly tryEdition: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Code of the edition. */
        readonly code: components["parameters"]["EditionCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["EditionTrialInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EditionTrial"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listEstimates: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page before. */
        readonly cursor?: components["parameters"]["Cursor"];
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
        /** Only estimates with this reference of the caller's. */
        readonly reference?: string;
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EstimatePage"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
        readonly "Idempotency-Key"?: string;
        readonly Prefer?: string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["DefectRecordInput"];
      };
    };
    readonly responses: {
      /** The stored estimate. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["StoredEstimate"];
        };
      };
      /** The estimate is being made; the operation at Location says when it is ready. */
      readonly 202: {
        content: {
          readonly "application/json": components["schemas"]["LongOperation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEstimate: {
    readonly parameters: {
      readonly query?: {
        /** The annexes of the report by name: none, all, or some of scope, core, structure, process, prices, assumptions, cautions, reproduction with commas between. */
        readonly annexes?: string;
        /** As XML: whom the quotation is for. */
        readonly customer?: string;
        /** Which document, as PDF or HTML: for the owner and the insurer, or for the people doing the work. */
        readonly document?: "report" | "job-pack";
        /** Paper that a PDF is set for. */
        readonly paper?: components["parameters"]["Paper"];
        /** What the report is for; decides its title and which annexes follow the body. Absent: the condition of the deck. */
        readonly purpose?: "condition" | "damage" | "quotation" | "works";
        /** As XML: the last day on which the quotation holds. */
        readonly validUntil?: string;
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
        readonly Prefer?: components["parameters"]["Prefer"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["StoredEstimate"];
          readonly "application/pdf": components["schemas"]["PdfFile"];
          readonly "application/xml": components["schemas"]["XmlText"];
          readonly "text/csv": components["schemas"]["CsvText"];
          readonly "text/html": components["schemas"]["HtmlText"];
        };
      };
      /** The document is being made; the operation at Location says when it is ready. */
      readonly 202: {
        content: {
          readonly "application/json": components["schemas"]["LongOperation"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEstimateBasket: {
    readonly parameters: {
      readonly query?: {
        /** Edition of the catalogue whose prices and packs count, or `current`. Absent: the one that all the estimates were made with, or the current one where they differ. `drift` says line by line what has changed since. */
        readonly pricedAt?: string;
        /** As XML: the supplier whose order is meant, because an order has one seller; needed when there are several. The JSON form lists them in `orders`. */
        readonly supplier?: string;
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EstimateBasket"];
          readonly "application/xml": components["schemas"]["XmlText"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly fillEstimateBasket: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["BasketChoicesInput"];
      };
    };
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EstimateBasket"];
          readonly "application/xml": components["schemas"]["XmlText"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEstimateCalendar: {
    readonly parameters: {
      readonly query?: {
        /** As iCalendar: the milestones, or every task as well. Absent: the milestones. */
        readonly events?: "milestones" | "all";
        /** The day whose work, waits and holds are listed; by the calendar of the place. */
        readonly on?: string;
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EstimateCalendar"];
          readonly "text/calendar": components["schemas"]["CalendarText"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getChangeOrder: {
    readonly parameters: {
      readonly query?: {
        /** Paper that a PDF is set for. */
        readonly paper?: components["parameters"]["Paper"];
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ChangeOrder"];
          readonly "application/pdf": components["schemas"]["PdfFile"];
          readonly "text/html": components["schemas"]["HtmlText"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly compareEstimates: {
    readonly parameters: {
      readonly query?: {
        /** Id of the estimate to compare with; the revision before this one when absent. */
        readonly with?: string;
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Comparison"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listDrawings: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["DrawingList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getDrawing: {
    readonly parameters: {
      readonly query?: {
        /** Paper that a PDF is set for. */
        readonly paper?: components["parameters"]["Paper"];
        /** Shape of the sheet; `phone` is narrow with larger words. Landscape when absent. */
        readonly shape?: "landscape" | "portrait" | "phone";
      };
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
        readonly Prefer?: components["parameters"]["Prefer"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Name of the drawing, as the list of drawings has it. */
        readonly name: string;
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/pdf": components["schemas"]["PdfFile"];
          readonly "image/svg+xml": components["schemas"]["SvgText"];
          readonly "image/vnd.dxf": components["schemas"]["DxfFile"];
        };
      };
      /** The document is being made; the operation at Location says when it is ready. */
      readonly 202: {
        content: {
          readonly "application/json": components["schemas"]["LongOperation"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly explainLine: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path: {
        /** Code of a line; `check:` and the code of a check; or `quantity:` and the code of a quantity. */
        readonly code: string;
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["WhyAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly eraseParties: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listPhotographs: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PhotographList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getPhotograph: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Number that the photograph has in the report, from 1. */
        readonly number: components["parameters"]["PhotographNumber"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "image/jpeg": components["schemas"]["JpegFile"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly setPhotograph: {
    readonly parameters: {
      readonly query: {
        /** Where on the deck it was taken, `xMm,yMm` in the coordinates of the record; drawn on the plan with its number. */
        readonly at?: string;
        /** What the photograph shows. */
        readonly caption: string;
        /** Which way it looks, in degrees: 0 towards the bow, 90 to starboard. Only together with `at`. */
        readonly directionDeg?: string;
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Number that the photograph has in the report, from 1. */
        readonly number: components["parameters"]["PhotographNumber"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "image/jpeg": string;
        readonly "image/png": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["DeckPhotograph"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly removePhotograph: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Number that the photograph has in the report, from 1. */
        readonly number: components["parameters"]["PhotographNumber"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getEstimateRecord: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["DefectRecord"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly replayEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Replay"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listRevisions: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["RevisionList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly reviseEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
        readonly "Idempotency-Key"?: string;
        readonly Prefer?: string;
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["RevisionRequest"];
      };
    };
    readonly responses: {
      /** The new revision. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["StoredEstimate"];
        };
      };
      /** The revision is being made; the operation at Location says when it is ready. */
      readonly 202: {
        content: {
          readonly "application/json": components["schemas"]["LongOperation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listShares: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ShareList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly shareEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Id of the key of the chandler. */
        readonly keyId: components["parameters"]["SharedKeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly unshareEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the estimate, or of one of its revisions. */
        readonly id: components["parameters"]["EstimateId"];
        /** Id of the key of the chandler. */
        readonly keyId: components["parameters"]["SharedKeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly fillBasket: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["BasketRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Basket"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planBondPressure: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["BondPressureRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["BondPressurePlan"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planCalendar: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CalendarRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["JobCalendar"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly billCore: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CoreBillRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["CoreBill"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly rollUpCost: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CostRollupRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PricedJob"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planCure: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CurePlanRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["CureAndWeather"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planCutting: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CuttingPlanRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["CuttingPlan"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly judgeLadder: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["DefectRecordInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["MethodLadder"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly scheduleLaminate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["LaminateScheduleRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["LaminateSchedule"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly findNextReadings: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NextReadingsRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["NextReadings"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planOpenings: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["OpeningsRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ExtentAndOpenings"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly checkPanel: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["PanelCheckRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PanelAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly previewEstimate: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["DefectRecordInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EstimatePreview"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly readQuantities: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["QuantitiesRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["QuantitiesRead"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly planResinBatches: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["ResinBatchesRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["BatchPlan"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly compareVariants: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["VariantsRequest"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["VariantComparison"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listEvents: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page read before; the oldest events that are kept when absent. */
        readonly cursor?: string;
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
        /** Only events of these types, with commas between. */
        readonly types?: string;
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["EventPage"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly importAllLabourRates: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "text/csv": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ImportAllLabourRatesAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly importMaterials: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "text/csv": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ImportMaterialsAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly importPriceLists: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "text/csv": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ImportPriceListsAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly importSources: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "text/csv": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ImportSourcesAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listKeys: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page before. */
        readonly cursor?: components["parameters"]["Cursor"];
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["KeyList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewKeyInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["NewKey"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the key; not the key itself. */
        readonly id: components["parameters"]["KeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Key"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly revokeKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Id of the key; not the key itself. */
        readonly id: components["parameters"]["KeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getKeyHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the key; not the key itself. */
        readonly id: components["parameters"]["KeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly renewKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the key; not the key itself. */
        readonly id: components["parameters"]["KeyId"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["RenewalInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["NewKey"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listAllLabourRates: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
        /** Only those in this currency. */
        readonly kind?: components["parameters"]["Kind"];
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListAllLabourRatesAnswer"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createLabourRates: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["LabourRatesInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["LabourRatesInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getLabourRates: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the labour rates. */
        readonly code: components["parameters"]["LabourRatesCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["LabourRatesInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deleteLabourRates: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the labour rates. */
        readonly code: components["parameters"]["LabourRatesCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updateLabourRates: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the labour rates. */
        readonly code: components["parameters"]["LabourRatesCode"];
      };
    };
    /** RFC 7396 merge patch. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["MergePatch"];
        readonly "application/merge-patch+json": components["schemas"]["MergePatch"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["LabourRatesInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getLabourRatesHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the labour rates. */
        readonly code: components["parameters"]["LabourRatesCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getLetterhead: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["OrganisationLetterhead"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly setLetterhead: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["LetterheadInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["OrganisationLetterhead"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getLogo: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "image/png": components["schemas"]["PngFile"];
        };
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly setLogo: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "image/jpeg": string;
        readonly "image/png": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["OrganisationLetterhead"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly removeLogo: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listMaterials: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
        /** Only materials of this kind. */
        readonly kind?: "core" | "reinforcement" | "resin" | "filler" | "coating" | "consumable" | "safety" | "fastener";
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListMaterialsAnswer"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createMaterial: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["Material"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["Material"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getMaterial: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the material. */
        readonly code: components["parameters"]["MaterialCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Material"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deleteMaterial: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the material. */
        readonly code: components["parameters"]["MaterialCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updateMaterial: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the material. */
        readonly code: components["parameters"]["MaterialCode"];
      };
    };
    /** RFC 7396 merge patch. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["MergePatch"];
        readonly "application/merge-patch+json": components["schemas"]["MergePatch"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Material"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getMaterialHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the material. */
        readonly code: components["parameters"]["MaterialCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getOperation: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the operation, as Location gave it. */
        readonly id: components["parameters"]["OperationId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["LongOperation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getOperationResult: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the operation, as Location gave it. */
        readonly id: components["parameters"]["OperationId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer, in the form agreed by Accept. */
      readonly 200: {
        content: {
          readonly "application/pdf": components["schemas"]["PdfFile"];
          readonly "text/html": components["schemas"]["HtmlText"];
        };
      };
      /** What was made has a place of its own, at Location. */
      readonly 303: {
        content?: never;
      };
      /** The caller has this version already. */
      readonly 304: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listOrganisations: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page before. */
        readonly cursor?: components["parameters"]["Cursor"];
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["OrganisationList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createOrganisation: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewOrganisationInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["NewOrganisation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getOrganisation: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the organisation. */
        readonly id: components["parameters"]["OrganisationId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Organisation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updateOrganisation: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Id of the organisation. */
        readonly id: components["parameters"]["OrganisationId"];
      };
    };
    /** RFC 7396 merge patch. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["UpdateOrganisationBody"];
        readonly "application/merge-patch+json": components["schemas"]["UpdateOrganisationBody"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["Organisation"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listPriceLists: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
        /** Only those in this currency. */
        readonly kind?: components["parameters"]["Kind"];
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListPriceListsAnswer"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createPriceList: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["PriceListInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["PriceListInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getPriceList: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PriceListInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deletePriceList: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updatePriceList: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    /** RFC 7396 merge patch. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["MergePatch"];
        readonly "application/merge-patch+json": components["schemas"]["MergePatch"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PriceListInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getPriceListHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listPacks: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListPacksAnswer"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly replacePacks: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "text/csv": string;
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListPacksAnswer"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getPack: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PackInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly putPack: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["PackInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PackInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deletePack: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updatePack: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    /** RFC 7396 merge patch of the pack. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["MergePatch"];
        readonly "application/merge-patch+json": components["schemas"]["MergePatch"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PackInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getStock: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["StockCount"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly setStock: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["PackCountInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["StockCount"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly forgetStock: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
        /** Number that the supplier sells the pack under. */
        readonly sku: components["parameters"]["PackSku"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly changePrices: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["PriceChangeInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PriceChange"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly takeSheet: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["SupplierSheetInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["TakenSheet"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listStock: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["StockList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly countStock: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Code of the price list in the edition. */
        readonly code: components["parameters"]["PriceListCode"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["CountedPacksInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["StockList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listPublishableKeys: {
    readonly parameters: {
      readonly query?: {
        /** `nextCursor` of the page before. */
        readonly cursor?: components["parameters"]["Cursor"];
        /** Entries on a page. */
        readonly limit?: components["parameters"]["Limit"];
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PublishableKeyList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createPublishableKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewPublishableKeyInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["PublishableKey"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getPublishableKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the publishable key; not the key itself. */
        readonly id: components["parameters"]["PublishableKeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["PublishableKey"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly revokePublishableKey: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Id of the publishable key; not the key itself. */
        readonly id: components["parameters"]["PublishableKeyId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listSources: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
        /** Only sources read in this way. */
        readonly kind?: "first-hand" | "second-hand" | "memory" | "derived" | "common-practice";
      };
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["ListSourcesAnswer"];
          readonly "text/csv": components["schemas"]["CsvText"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createSource: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["SourceInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["SourceInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getSource: {
    readonly parameters: {
      readonly query?: {
        /** Code of an edition; the current one when absent. Changes need the code of a draft. */
        readonly edition?: string;
      };
      readonly header?: never;
      readonly path: {
        /** Key of the source. */
        readonly code: components["parameters"]["SourceKey"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["SourceInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deleteSource: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Key of the source. */
        readonly code: components["parameters"]["SourceKey"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly updateSource: {
    readonly parameters: {
      readonly query: {
        /** Code of a draft. */
        readonly edition: components["parameters"]["Edition"];
      };
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Key of the source. */
        readonly code: components["parameters"]["SourceKey"];
      };
    };
    /** RFC 7396 merge patch. */
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["MergePatch"];
        readonly "application/merge-patch+json": components["schemas"]["MergePatch"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["SourceInput"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getSourceHistory: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Key of the source. */
        readonly code: components["parameters"]["SourceKey"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["History"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listWebhookEndpoints: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path?: never;
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["WebhookEndpointList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly createWebhookEndpoint: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["NewWebhookEndpointInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["NewWebhookEndpoint"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly getWebhookEndpoint: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the webhook endpoint. */
        readonly id: components["parameters"]["WebhookEndpointId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["WebhookEndpoint"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly deleteWebhookEndpoint: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
        readonly "If-Match": components["parameters"]["IfMatch"];
      };
      readonly path: {
        /** Id of the webhook endpoint. */
        readonly id: components["parameters"]["WebhookEndpointId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** Done. */
      readonly 204: {
        content?: never;
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 412: components["responses"]["PreconditionFailed"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 428: components["responses"]["PreconditionRequired"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly listWebhookDeliveries: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: never;
      readonly path: {
        /** Id of the webhook endpoint. */
        readonly id: components["parameters"]["WebhookEndpointId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["WebhookDeliveryList"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly repeatWebhookDelivery: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the event to deliver once more. */
        readonly eventId: string;
        /** Id of the webhook endpoint. */
        readonly id: components["parameters"]["WebhookEndpointId"];
      };
    };
    readonly requestBody?: never;
    readonly responses: {
      /** The answer. */
      readonly 200: {
        content: {
          readonly "application/json": components["schemas"]["WebhookDelivery"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly renewWebhookSecret: {
    readonly parameters: {
      readonly query?: never;
      readonly header?: {
        readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
      };
      readonly path: {
        /** Id of the webhook endpoint. */
        readonly id: components["parameters"]["WebhookEndpointId"];
      };
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["SecretRenewalInput"];
      };
    };
    readonly responses: {
      /** The answer. */
      readonly 201: {
        content: {
          readonly "application/json": components["schemas"]["NewWebhookEndpoint"];
        };
      };
      readonly 400: components["responses"]["BadRequest"];
      readonly 401: components["responses"]["Unauthenticated"];
      readonly 403: components["responses"]["Forbidden"];
      readonly 404: components["responses"]["NotFound"];
      readonly 409: components["responses"]["Conflict"];
      readonly 422: components["responses"]["Unprocessable"];
      readonly 429: components["responses"]["TooManyRequests"];
      readonly 500: components["responses"]["Internal"];
      readonly default: components["responses"]["Refused"];
    };
  };
  readonly onEditionPublished: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["EditionPublished"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
  readonly onEditionWithdrawn: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["EditionWithdrawn"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
  readonly onEstimateCreated: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["EstimateCreated"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
  readonly onEstimateRevised: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["EstimateRevised"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
  readonly onOperationDone: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["OperationDone"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
  readonly onOrderMade: {
    readonly parameters: {
      readonly query?: never;
      readonly header: {
        readonly "webhook-id": string;
        readonly "webhook-signature": string;
        readonly "webhook-timestamp": string;
      };
      readonly path?: never;
    };
    readonly requestBody: {
      readonly content: {
        readonly "application/json": components["schemas"]["OrderMade"];
      };
    };
    readonly responses: {
      /** Received. Anything else is tried again, ten times within three days; 410 ends it. */
      readonly "2XX": {
        content?: never;
      };
    };
  };
}
