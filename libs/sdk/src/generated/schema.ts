/** Generated from test/contract/openapi.json by `npm run contract`; never edited by hand. */
export type paths = {
    readonly "/health/live": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Does the process answer?
         * @description For whoever restarts a process that hangs. Needs no key and asks nothing of the database.
         */
        readonly get: operations["isAlive"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/health/ready": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Can the service take work: is the database there, and is it not stopping?
         * @description For a balancer: 503 while the database is away or the service is stopping. Needs no key.
         */
        readonly get: operations["isReady"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/audit": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who did what in the organisation, newest first
         * @description Changes of keys, letterhead, webhooks, catalogue, stock, shares and photographs, with the key and the request that made them.
         */
        readonly get: operations["listAuditEntries"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/client-sessions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Open a session in which a page may make one estimate, under a reference that the shop fixes
         * @description For shops with a server: it asks with its secret key and hands `clientSecret` to the page of one customer. The page makes one estimate with it in time, and reads and revises that estimate for a day after.
         */
        readonly post: operations["openClientSession"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Editions of the catalogue, newest first, and the current one
         * @description Drafts, publications and what counts now. An estimate keeps the edition that it was made with.
         */
        readonly get: operations["listEditions"];
        readonly put?: never;
        /**
         * Make a draft by copying an edition
         * @description A draft holds a copy of everything in the edition it is based on, and can be changed until it is published. Without a base the current edition is copied.
         */
        readonly post: operations["createEdition"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * An edition
         * @description The ETag covers all that the edition holds, so that a publication can name what was reviewed.
         */
        readonly get: operations["getEdition"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Throw a draft away
         * @description Only a draft can be thrown away; what was published stays for the estimates made with it.
         */
        readonly delete: operations["deleteEdition"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}/comparison": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What an edition holds otherwise than another, entry by entry and field by field
         * @description For reading before publishing: added, removed and changed entries, with the value of each field before and after.
         */
        readonly get: operations["compareEditions"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who did what to an edition
         * @description Changes of the edition and of every entry in it, with the keys that made them.
         */
        readonly get: operations["getEditionHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}/publication": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Publish a draft: it becomes current, at once or from the time named, and is never changed again
         * @description With `effectiveAt` the edition is frozen now and counts from then on; until then the present edition stays current, and the publication can be taken back. Where several are scheduled, the one that came into effect last is current.
         */
        readonly post: operations["publishEdition"];
        /**
         * Take back a publication before it counts: the edition is a draft again
         * @description Only a publication whose time has not come. Once an edition counts, another is made current instead.
         */
        readonly delete: operations["withdrawEdition"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}/restoration": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Make what an earlier edition held current again, under a new code
         * @description The way back after a bad publication: one call, and the next estimate is priced as before.
         */
        readonly post: operations["restoreEdition"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/editions/{code}/trial": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Try an edition, such as a draft, on stored estimates; nothing is stored
         * @description Each estimate is worked out again from the record it keeps, with this edition and with the one compared with, by the same version of the program, so that only the catalogue makes the difference.
         */
        readonly post: operations["tryEdition"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * List estimates, newest first
         * @description Page by page with a cursor; each entry has the totals, and its address leads to the rest.
         */
        readonly get: operations["listEstimates"];
        readonly put?: never;
        /**
         * Make an estimate from a defect record and keep it
         * @description It comes later, as an operation that leads to it, with `Prefer: respond-async` and for records of more than 24 zones or 1000 readings. A page with a publishable key gets it at once.
         */
        readonly post: operations["createEstimate"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * An estimate, as JSON, or by Accept as a report (PDF, HTML), its lines (CSV) or a UBL 2.1 Quotation (XML)
         * @description In documents, `Accept-Language` decides how numbers and dates are written. PDF and HTML may come later: with `Prefer: respond-async`, for estimates of more than 500 lines or 24 zones, and while many documents are waiting.
         */
        readonly get: operations["getEstimate"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/basket": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The cheapest whole packs for an estimate, as JSON, CSV, or a UBL 2.1 Order to one supplier
         * @description With the choices that most people make; POST takes other ones.
         */
        readonly get: operations["getEstimateBasket"];
        readonly put?: never;
        /**
         * The cheapest whole packs for an estimate, or for several in one order, under the choices given, as JSON, CSV, or a UBL 2.1 Order to one supplier; nothing is stored
         * @description An Order that is written as XML is told as the event `order.made`.
         */
        readonly post: operations["fillEstimateBasket"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/calendar": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The calendar of an estimate with its weather, and what to do on a day; by Accept as iCalendar (RFC 5545)
         * @description As `text/calendar` the milestones, or with `events=all` the tasks as well, in UTC. The events of a revision carry the UIDs of the first estimate and a higher SEQUENCE, so that a diary moves them.
         */
        readonly get: operations["getEstimateCalendar"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/change-order": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What a revision adds and takes away, to be signed by yard and owner; as JSON, or by Accept as PDF or HTML
         * @description Additions and deductions against the revision before, re-measured at the agreed rates, with room for two signatures.
         */
        readonly get: operations["getChangeOrder"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/comparison": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What changed against the revision before, or another estimate, line by line, and because of what
         * @description Lines, totals and figures that differ, and the changed answers of the record that they follow from.
         */
        readonly get: operations["compareEstimates"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/drawings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Names of the drawings an estimate has
         * @description Which drawings there are depends on the job: no plan of core pieces without new core.
         */
        readonly get: operations["listDrawings"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/drawings/{name}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * A drawing as SVG or PDF; `templates` is a PDF of the core pieces at 1:1; `piece-plan` and `sheet-layout` also as DXF at 1:1, for a cutting machine
         * @description Every drawing has its scale and a bar to check a print by. A long one is answered 202 and fetched later.
         */
        readonly get: operations["getDrawing"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/lines/{code}/why": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Why a line, a check (check:<code>) or a quantity (quantity:<code>) is what it is
         * @description A tree from the figure down to what was entered, read from the catalogue or assumed, with formula and source at each step.
         */
        readonly get: operations["explainLine"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/parties": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        readonly post?: never;
        /**
         * Erase what an estimate and its revisions say of people
         * @description Client, instructing party and surveyor, the vessel with its name and numbers, and the reference of the insurer go out of the records of every revision, and documents that were printed for later and bear them are thrown away. Figures and sums stay as they are, because none rests on these. Photographs are taken away one by one; what people wrote into titles, findings, notes, captions and reasons of revisions is not searched.
         */
        readonly delete: operations["eraseParties"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/photographs": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Photographs of the deck of an estimate and of its revisions
         * @description In the order of their numbers, which the report prints them in.
         */
        readonly get: operations["listPhotographs"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/photographs/{number}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * A photograph as it is printed
         * @description Turned upright and without the place and the device that a camera writes into it.
         */
        readonly get: operations["getPhotograph"];
        /**
         * Add a photograph under a number, or put another in its place
         * @description A JPEG or PNG of at most 8000000 bytes and 12000 pixels a side, judged by its content; numbers are 1 to 24. It is drawn anew at the size it is printed: place, device, time and whatever else the file holds are not kept.
         */
        readonly put: operations["setPhotograph"];
        readonly post?: never;
        /**
         * Take a photograph away for good
         * @description Reports that are made from now on lack it; it cannot be had again.
         */
        readonly delete: operations["removePhotograph"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/record": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The defect record the estimate was made from
         * @description What was sent, for sending it again with something changed.
         */
        readonly get: operations["getEstimateRecord"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/replay": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Compute an estimate again from its record and edition, and say whether every digit came out again
         * @description The proof that an old figure can be had again: stored and new totals side by side, and whether every digit is the same.
         */
        readonly get: operations["replayEstimate"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/revisions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The revisions of an estimate, first to last
         * @description Each with its total and the reason why it was made.
         */
        readonly get: operations["listRevisions"];
        readonly put?: never;
        /**
         * Re-make an estimate after something became known, with the reason
         * @description The earlier revision stays as it was. Send the whole record as it is now known and say why; the change order says what that costs.
         */
        readonly post: operations["reviseEstimate"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/shares": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Chandlers that an estimate and its revisions are shared with
         * @description Each with the name of the key and since when it may read.
         */
        readonly get: operations["listShares"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimates/{id}/shares/{keyId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /**
         * Share an estimate and its revisions with the key of a chandler
         * @description The chandler may read the estimate and its revisions, order for them, and see no others.
         */
        readonly put: operations["shareEstimate"];
        readonly post?: never;
        /**
         * Take an estimate back from a chandler
         * @description From then on the chandler is answered as if there were no such estimate.
         */
        readonly delete: operations["unshareEstimate"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/basket": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * The cheapest whole packs that cover every need, proven, with what is left over
         * @description An integer programme over packs, price breaks, suppliers, delivery, minimum orders, hazard and oversize rules, with hardener for all the resin bought. What cannot be had is named; a second best of another kind stands beside it.
         */
        readonly post: operations["fillBasket"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/bond-pressure": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * What presses the bed down, what it rests on, and whether the inner skin bears it
         * @description Weights, battens with screws and a vacuum bag side by side: pressure needed and had, evenness, quantities, load on the inner skin and props; a recommendation with reasons, refusals with reasons. What no published table supports (screws in glass laminate) is said to be not established.
         */
        readonly post: operations["planBondPressure"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/calendar": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Which day what is done, what decides the finish, and how sure that is
         * @description The operations of the job in their order under crew, working hours, cures, drying, weather and the hold after opening; the chain that decides; early, likely and late finish from a seeded simulation of the spreads; milestones, iCalendar text (RFC 5545) and what to do today.
         */
        readonly post: operations["planCalendar"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/core-bill": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Which core fills the cavity, in which labelled pieces, from how many sheets
         * @description Stock thicknesses that end flush or just below; pieces that a person can bed and that slide under the lip, by bedding order; sheets cut for the least money, offcuts worth keeping, and waste by cause.
         */
        readonly post: operations["billCore"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/cost-rollup": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * From lines to totals, to the cent, and to a range with what drives it
         * @description Each line is multiplied exactly and rounded once; lines make sections, then overhead, profit, contingency and tax by group on net sums. Split by cause and by part or labour. With risk: P10, P50, P80 and P90 from hidden extent and unit-rate spreads, drivers, and what opening first is worth.
         */
        readonly post: operations["rollUpCost"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/cure-plan": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * When resin gels, may be let go, sanded and loaded on this deck, and when a step may start
         * @description Equivalent age over a steady, day-and-night or hourly temperature of the deck, with the band of the resin's own data; the hours of a forecast in which each step may start, ranked, with what limits them; without a forecast, what to wait for. A planning figure: the thumbnail and the maker's sheet decide.
         */
        readonly post: operations["planCure"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/cutting-plan": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Any pieces from any sheets, offcuts or a roll, for the least money and then the least material
         * @description Pieces of any outline, with holes, in the turns allowed, apart by the kerf and inside the trimmed edge; proven free of overlap by whole-number arithmetic. Runs beside the service for as long as the work budget and the time limit allow.
         */
        readonly post: operations["planCutting"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/ladder": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Every way to mend a deck: whether it fits, why, and what it would take
         * @description Takes what POST /v1/estimates takes and keeps nothing. Each rung is fit, fit with conditions or unfit, with the reason that decides and its number; what is not unfit has hours, days and a price worked out in the rough. Where no rung fits, none is recommended.
         */
        readonly post: operations["judgeLadder"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/laminate-schedule": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * How many plies of what give back the old skin, and how they are cut and laid
         * @description The best three skins from the fabrics at hand that restore stiffness, strength and the bending of the panel, proven best, with why the others lost; ply outlines, roll lengths, masses and stages; closing plies over the cut of a skin bonded back. A comparison, not a design approval.
         */
        readonly post: operations["scheduleLaminate"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/next-readings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Where to tap, meter or plug next, and when to stop
         * @description The places and kinds of reading that would save most hours of work for their minutes, best first and spread out, only where a reading can be taken; what the whole batch is expected to save and how far it narrows the range of bad core; and whether that is worth the time. An empty list of readings asks where to begin.
         */
        readonly post: operations["findNextReadings"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/openings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * From readings or drawn zones to the extent of bad core and the cut line
         * @description Readings become a chance of bad core over the panel, contours, and an area as a range; zones become straight cuts with flange, taper room, undercut, depth of cut, fittings in scope, and what does not fit.
         */
        readonly post: operations["planOpenings"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/panel-check": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Is the repaired panel as stiff and as strong as it was?
         * @description The panel as built, as found, opened and repaired under the same loads: deflection, skin stress, core shear, wrinkling, dents, fittings, the yardstick; each check with demand, capacity, what governs and what would make it pass. A comparison, not a design approval: highly loaded spots go to a naval architect or a qualified surveyor.
         */
        readonly post: operations["checkPanel"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/preview": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Openings, hours and price of a defect record while it is still being drawn
         * @description Takes what POST /v1/estimates takes and keeps nothing. Core is priced by area, the range of the price is worked out without simulation, and few schedules are tried; `leftOut` says what else only the estimate works out.
         */
        readonly post: operations["previewEstimate"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/quantities": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Read typed quantities exactly into SI numbers
         * @description For a form: shows the person how a text such as `5/8 in` was understood, before it is sent. Wrong texts are refused with what would be right.
         */
        readonly post: operations["readQuantities"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/resin-batches": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * How much resin each step takes, and in which pots, before it kicks
         * @description Resin, hardener and filler by weight and by volume for each step from its own basis, waste apart; a hardener chosen with reasons; a card for each pot with what to weigh in which order, for which pieces, and by when it must be empty. The pots add up to the demand to a tenth of a gram. The maker's own sheet comes first.
         */
        readonly post: operations["planResinBatches"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/estimating/variants": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Several ways of doing one job, on equal terms
         * @description Each variant is estimated in full with one seed and one edition, then weighed on cost, P80, hours, days, mass added, utilisation and spread. A variant that another beats in everything is marked; one that a rule refuses is listed with the rule.
         */
        readonly post: operations["compareVariants"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/events": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What happened, oldest first, from where the cursor stands
         * @description A feed for programs that cannot be called: keep `nextCursor` and ask again later. Events are kept for 30 days, and none is missed between two readings.
         */
        readonly get: operations["listEvents"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/keys": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Secret keys of the organisation, oldest first
         * @description Revoked keys stay in the list, so that histories can be read; texts of keys are never shown again.
         */
        readonly get: operations["listKeys"];
        readonly put?: never;
        /**
         * Make a key; its text is shown in this answer only
         * @description A key has roles, and an integrator's key has scopes; it can end by itself at `expiresAt`. Store the text at once: the service keeps only its hash.
         */
        readonly post: operations["createKey"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/keys/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * A key, without its text
         * @description What the key may do, when it ends and when it was last used.
         */
        readonly get: operations["getKey"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Revoke a key; other copies of the service refuse it within a second
         * @description The last admin's key of an organisation cannot be revoked, since nobody could make another.
         */
        readonly delete: operations["revokeKey"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/keys/{id}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who made, renewed and revoked a key
         * @description Entries name the key that did it and the request, as the audit of the organisation does.
         */
        readonly get: operations["getKeyHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/keys/{id}/renewal": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Make a key in the place of another, which ends after an overlap; the new text is shown once
         * @description The new key may do what the old one may. Both count during the overlap, so that programs can be changed one by one.
         */
        readonly post: operations["renewKey"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/labour-rates": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Entries of an edition (labour rates), as JSON or CSV
         * @description Every labour rates of the current edition, or of the one named; CSV has the columns that an import takes.
         */
        readonly get: operations["listAllLabourRates"];
        readonly put?: never;
        /**
         * Add an entry to a draft (labour rates)
         * @description A new labour rates; what it refers to must be in the draft, and a code that is taken is refused.
         */
        readonly post: operations["createLabourRates"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/labour-rates/{code}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * One entry (labour rates)
         * @description The labour rates as the current edition or the one named holds it, with the ETag that a change names.
         */
        readonly get: operations["getLabourRates"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Remove an entry from a draft (labour rates)
         * @description A labour rates that something else in the draft refers to stays, and the refusal says what.
         */
        readonly delete: operations["deleteLabourRates"];
        readonly options?: never;
        readonly head?: never;
        /**
         * Change an entry of a draft by merge patch (labour rates)
         * @description Fields named are replaced, null takes an optional one away, and the labour rates is then checked as a whole.
         */
        readonly patch: operations["updateLabourRates"];
        readonly trace?: never;
    };
    readonly "/v1/labour-rates/{code}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who changed what about an entry (labour rates)
         * @description Changes of the labour rates over all editions of the organisation, newest first.
         */
        readonly get: operations["getLabourRatesHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/labour-rates/import": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Add or replace entries of a draft from CSV, all or none (labour rates)
         * @description A row for each labour rates; one wrong row stops all, and every fault is named by row and column.
         */
        readonly post: operations["importAllLabourRates"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/letterhead": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What stands at the head of the documents of the own organisation
         * @description Name of the organisation, lines under it and the logo, as the head of reports shows them.
         */
        readonly get: operations["getLetterhead"];
        /**
         * Set the lines of the letterhead; the name is that of the organisation
         * @description The lines count for documents that are made from now on.
         */
        readonly put: operations["setLetterhead"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/letterhead/logo": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The logo as it is printed
         * @description A PNG, whatever form it was given in.
         */
        readonly get: operations["getLogo"];
        /**
         * Set the logo of the letterhead
         * @description A PNG or JPEG of at most 1000000 bytes and 5000 pixels a side, judged by its content. It is drawn anew at the size it is printed, so that nothing hidden in the file is kept. Drawings that can hold programs, such as SVG, are not taken.
         */
        readonly put: operations["setLogo"];
        readonly post?: never;
        /**
         * Take the logo off the letterhead
         * @description Documents that are made from now on have the name alone.
         */
        readonly delete: operations["removeLogo"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/materials": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Entries of an edition (material), as JSON or CSV
         * @description Every material of the current edition, or of the one named; CSV has the columns that an import takes.
         */
        readonly get: operations["listMaterials"];
        readonly put?: never;
        /**
         * Add an entry to a draft (material)
         * @description A new material; what it refers to must be in the draft, and a code that is taken is refused.
         */
        readonly post: operations["createMaterial"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/materials/{code}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * One entry (material)
         * @description The material as the current edition or the one named holds it, with the ETag that a change names.
         */
        readonly get: operations["getMaterial"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Remove an entry from a draft (material)
         * @description A material that something else in the draft refers to stays, and the refusal says what.
         */
        readonly delete: operations["deleteMaterial"];
        readonly options?: never;
        readonly head?: never;
        /**
         * Change an entry of a draft by merge patch (material)
         * @description Fields named are replaced, null takes an optional one away, and the material is then checked as a whole.
         */
        readonly patch: operations["updateMaterial"];
        readonly trace?: never;
    };
    readonly "/v1/materials/{code}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who changed what about an entry (material)
         * @description Changes of the material over all editions of the organisation, newest first.
         */
        readonly get: operations["getMaterialHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/materials/import": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Add or replace entries of a draft from CSV, all or none (material)
         * @description A row for each material; one wrong row stops all, and every fault is named by row and column.
         */
        readonly post: operations["importMaterials"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/operations/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * How far an operation is; ask again after Retry-After
         * @description Waiting, running, done or failed; done leads to its result, failed says why.
         */
        readonly get: operations["getOperation"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/operations/{id}/result": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The result of an operation that is done; 409 before
         * @description The same bytes and media type that the request would have answered at once.
         */
        readonly get: operations["getOperationResult"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/organisations": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * All organisations, oldest first
         * @description Only a platform-operator sees others than his own.
         */
        readonly get: operations["listOrganisations"];
        readonly put?: never;
        /**
         * Add an organisation, with the first key of its admin
         * @description The answer holds the key of its first admin, whose text is never shown again. With that key the organisation runs itself.
         */
        readonly post: operations["createOrganisation"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/organisations/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * An organisation: your own, or any for a platform-operator
         * @description An id of another organisation is answered as an unknown one.
         */
        readonly get: operations["getOrganisation"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        /**
         * Rename an organisation
         * @description The new name stands on documents that are made from now on; those made before keep theirs only as files.
         */
        readonly patch: operations["updateOrganisation"];
        readonly trace?: never;
    };
    readonly "/v1/price-lists": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Entries of an edition (price list), as JSON or CSV
         * @description Every price list of the current edition, or of the one named; CSV has the columns that an import takes.
         */
        readonly get: operations["listPriceLists"];
        readonly put?: never;
        /**
         * Add an entry to a draft (price list)
         * @description A new price list; what it refers to must be in the draft, and a code that is taken is refused.
         */
        readonly post: operations["createPriceList"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * One entry (price list)
         * @description The price list as the current edition or the one named holds it, with the ETag that a change names.
         */
        readonly get: operations["getPriceList"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Remove an entry from a draft (price list)
         * @description A price list that something else in the draft refers to stays, and the refusal says what.
         */
        readonly delete: operations["deletePriceList"];
        readonly options?: never;
        readonly head?: never;
        /**
         * Change an entry of a draft by merge patch (price list)
         * @description Fields named are replaced, null takes an optional one away, and the price list is then checked as a whole.
         */
        readonly patch: operations["updatePriceList"];
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who changed what about an entry (price list)
         * @description Changes of the price list over all editions of the organisation, newest first.
         */
        readonly get: operations["getPriceListHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/packs": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The packs of a price list, as JSON or CSV, one a row
         * @description By Accept as CSV with the columns that an import takes, so that a sheet can be changed and sent back.
         */
        readonly get: operations["listPacks"];
        /**
         * Replace all packs of a price list in a draft from CSV, one a row
         * @description All or none: one wrong row leaves the list as it was, and every fault is named by row and column.
         */
        readonly put: operations["replacePacks"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/packs/{sku}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * One pack of a price list
         * @description Its price, price breaks, mass and terms of carriage.
         */
        readonly get: operations["getPack"];
        /**
         * Put one pack into a price list of a draft, or in the place of another
         * @description The whole pack is replaced; what is not given is gone. A merge patch changes single fields.
         */
        readonly put: operations["putPack"];
        readonly post?: never;
        /**
         * Take one pack out of a price list of a draft
         * @description Estimates that bought it keep it; later ones choose another.
         */
        readonly delete: operations["deletePack"];
        readonly options?: never;
        readonly head?: never;
        /**
         * Change one pack of a price list of a draft by merge patch, such as its price
         * @description Null takes an optional field away; fields that are not named stay.
         */
        readonly patch: operations["updatePack"];
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/packs/{sku}/stock": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * How many packs of a SKU were counted, and when
         * @description The last count and its time; 404 when nobody counted.
         */
        readonly get: operations["getStock"];
        /**
         * State how many packs of a SKU there are now
         * @description It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.
         */
        readonly put: operations["setStock"];
        readonly post?: never;
        /**
         * Forget a count: the stock that the edition states counts again
         * @description Nothing else about the pack changes.
         */
        readonly delete: operations["forgetStock"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/price-changes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Raise or lower prices of a list of a draft by a percentage, each rounded once to a step
         * @description All packs of the list, or those of the suppliers, materials or SKUs named. The answer says of each what it cost before and costs now.
         */
        readonly post: operations["changePrices"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/sheets": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Take a supplier's sheet into a price list of a draft, by what its columns mean
         * @description Packs are matched by their SKU and changed in what the columns say of them: all of the sheet, or nothing and every fault with its row and column.
         */
        readonly post: operations["takeSheet"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/price-lists/{code}/stock": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * What was counted of the packs of a price list
         * @description Whole packs of each SKU, with the time of the count. They hold at once, whatever edition is current.
         */
        readonly get: operations["listStock"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        /**
         * State how many packs of several SKUs there are now
         * @description It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.
         */
        readonly patch: operations["countStock"];
        readonly trace?: never;
    };
    readonly "/v1/price-lists/import": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Add or replace entries of a draft from CSV, all or none (price list)
         * @description A row for each price list; one wrong row stops all, and every fault is named by row and column.
         */
        readonly post: operations["importPriceLists"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/publishable-keys": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Keys for pages, oldest first
         * @description Their texts are shown, since they stand in pages for everybody to read.
         */
        readonly get: operations["listPublishableKeys"];
        readonly put?: never;
        /**
         * Make a key for a page: it makes estimates from the origins named, and lists none
         * @description The key is no secret: it stands in the page. It may make an estimate (with an Idempotency-Key of 22 characters or more), preview one and read quantities, from pages of the origins named and within its limits. The answer to an estimate carries `clientSecret`, which opens that estimate for a day. `Origin` keeps other sites out, not scripts: the limits are what holds.
         */
        readonly post: operations["createPublishableKey"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/publishable-keys/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * A key for a page
         * @description Its origins, its limits and when it ends.
         */
        readonly get: operations["getPublishableKey"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Revoke a key for a page, and with it every secret that was given out for it
         * @description Pages that use it are refused from then on, and what their visitors made is kept.
         */
        readonly delete: operations["revokePublishableKey"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/sources": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Entries of an edition (source), as JSON or CSV
         * @description Every source of the current edition, or of the one named; CSV has the columns that an import takes.
         */
        readonly get: operations["listSources"];
        readonly put?: never;
        /**
         * Add an entry to a draft (source)
         * @description A new source; what it refers to must be in the draft, and a code that is taken is refused.
         */
        readonly post: operations["createSource"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/sources/{code}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * One entry (source)
         * @description The source as the current edition or the one named holds it, with the ETag that a change names.
         */
        readonly get: operations["getSource"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Remove an entry from a draft (source)
         * @description A source that something else in the draft refers to stays, and the refusal says what.
         */
        readonly delete: operations["deleteSource"];
        readonly options?: never;
        readonly head?: never;
        /**
         * Change an entry of a draft by merge patch (source)
         * @description Fields named are replaced, null takes an optional one away, and the source is then checked as a whole.
         */
        readonly patch: operations["updateSource"];
        readonly trace?: never;
    };
    readonly "/v1/sources/{code}/history": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Who changed what about an entry (source)
         * @description Changes of the source over all editions of the organisation, newest first.
         */
        readonly get: operations["getSourceHistory"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/sources/import": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Add or replace entries of a draft from CSV, all or none (source)
         * @description A row for each source; one wrong row stops all, and every fault is named by row and column.
         */
        readonly post: operations["importSources"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/webhook-endpoints": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * Webhook endpoints of the organisation, oldest first
         * @description Addresses with the events that each is told of; secrets are not shown.
         */
        readonly get: operations["listWebhookEndpoints"];
        readonly put?: never;
        /**
         * Have events posted to an address; its secret is shown in this answer only
         * @description The address is reached over https and must not be a private one. Events are signed as Standard Webhooks says, with the secret of this answer.
         */
        readonly post: operations["createWebhookEndpoint"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/webhook-endpoints/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * A webhook endpoint, without its secret
         * @description Its address and the events that it is told of.
         */
        readonly get: operations["getWebhookEndpoint"];
        readonly put?: never;
        readonly post?: never;
        /**
         * Have no more events posted to an address
         * @description Deliveries that wait are dropped; the events stay in the feed.
         */
        readonly delete: operations["deleteWebhookEndpoint"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/webhook-endpoints/{id}/deliveries": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /**
         * The last 200 deliveries to an endpoint, the newest event first
         * @description Says of each how many attempts were made, what came back and when the next one is due.
         */
        readonly get: operations["listWebhookDeliveries"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/webhook-endpoints/{id}/deliveries/{eventId}/repetition": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Deliver an event once more, with all its attempts before it
         * @description For an endpoint that was away longer than three days, or lost what it had received.
         */
        readonly post: operations["repeatWebhookDelivery"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/v1/webhook-endpoints/{id}/secret-renewal": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Give an endpoint a new secret; both sign for an overlap, and the new one is shown once
         * @description During the overlap each delivery carries two signatures, so that receivers can change without losing one.
         */
        readonly post: operations["renewWebhookSecret"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
};
export type webhooks = {
    readonly "edition.published": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for edition.published
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onEditionPublished"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "edition.withdrawn": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for edition.withdrawn
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onEditionWithdrawn"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "estimate.created": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for estimate.created
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onEstimateCreated"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "estimate.revised": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for estimate.revised
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onEstimateRevised"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "operation.done": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for operation.done
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onOperationDone"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "order.made": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /**
         * Posted to endpoints that asked for order.made
         * @description Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.
         */
        readonly post: operations["onOrderMade"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
};
export type components = {
    schemas: {
        readonly Area: {
            /** @description Edges of what is left out. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Outer edge. */
            readonly outer: readonly (readonly number[])[];
        };
        readonly AsFoundInput: {
            /** @description Share of the panel with bad core. Absent: 1 (the whole panel, the cautious case). */
            readonly degradedFraction?: number;
            /** @description What is left of the core modulus. Absent: 0.1 (wet and rotten core keeps a tenth at a guess). */
            readonly stiffnessFraction?: number;
            /** @description What is left of the core strength. Absent: 0.1 (wet and rotten core keeps a tenth at a guess). */
            readonly strengthFraction?: number;
        };
        /** @description One default that an answer rests on, as a reader of the estimate sees it. */
        readonly AskingAssumption: {
            /** @description JSON Pointer to the question nobody answered. */
            readonly at: string;
            /** @description Why that was taken. */
            readonly because: string;
            /** @description What was asked. */
            readonly meaning: string;
            /** @description What the default leans on. */
            readonly source: string;
            /** @description What was taken instead, as text. */
            readonly value: string;
        };
        /** @description Nobody said it; we took a default and say so. `at` is the field that would replace it. */
        readonly Assumed: {
            /** @description JSON Pointer to the answer that would replace it. */
            readonly at: string;
            /** @description Why this value and no other was taken. */
            readonly because: string;
            /** @description Source that the assumption leans on. */
            readonly cite: components["schemas"]["Cite"];
            /** @description Highest value that would be as believable. */
            readonly high?: number;
            /**
             * @description Says that the figure was assumed because nobody stated it. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "assumed";
            /** @description Lowest value that would be as believable. */
            readonly low?: number;
        };
        /** @description At so many times the recorded area, so many times the amount: planned again, not scaled. */
        readonly AtExtent: {
            /** @description Amount then over amount now. */
            readonly amountFactor: number;
            /** @description Extent found over extent recorded. */
            readonly extentFactor: number;
        };
        readonly AtExtentInput: {
            /** @description Amount there over the amount of the line. */
            readonly amountFactor: number;
            /** @description Found area over recorded area. */
            readonly extentFactor: number;
        };
        readonly AuditEntry: {
            /** @description What was done to it, such as `created`, `changed` or `removed`. */
            readonly action: string;
            /** @description The thing after the change; absent where it was removed. */
            readonly after?: unknown;
            /** @description When it was done (RFC 3339). */
            readonly at: string;
            /** @description The thing before the change; absent where it was new. */
            readonly before?: unknown;
            /** @description The id or code of the thing. */
            readonly code: string;
            /** @description Key that did it; absent where the service itself did. */
            readonly keyId?: string;
            /** @description Whose key it was, as the key is called. */
            readonly keyName?: string;
            /** @description Request that did it, as in its `X-Request-Id`. */
            readonly requestId?: string;
            /** @description What kind of thing, such as `key` or `edition`. */
            readonly subject: string;
        };
        readonly AuditPage: {
            /** @description What was done, newest first. */
            readonly items: readonly components["schemas"]["AuditEntry"][];
            /** @description Give it as `cursor` for what was done before; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly BackingPlateInput: {
            /** @description Length. */
            readonly lengthMm: number | string;
            /** @description Width of the plate under the fitting. */
            readonly widthMm: number | string;
        };
        readonly Basket: {
            /** @description What each estimate of a common order bears of the total. */
            readonly byEstimate: readonly {
                /** @description Its share of the order, by what it needs. */
                readonly amount: components["schemas"]["MoneyJson"];
                /** @description Estimate that bears the amount. */
                readonly estimate: string;
            }[];
            /** @description Each need beside the packs that cover it. */
            readonly coverage: readonly components["schemas"]["Coverage"][];
            /** @description Currency of every amount of the basket (ISO 4217). */
            readonly currency: string;
            /** @description Packs that were left out before the choice, each with the reason. */
            readonly excluded: readonly components["schemas"]["Excluded"][];
            /** @description Whether every need is covered; `missing` lists those that are not. */
            readonly isComplete: boolean;
            /** @description Whether the prices of the list are made up for demonstration. */
            readonly isInvented: boolean;
            /** @description What remains of the bought packs when the job is done. */
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            /** @description What is bought, a line for each kind of pack. */
            readonly lines: readonly components["schemas"]["BasketLine"][];
            /** @description Resins beside the hardeners bought to cure them. */
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            /** @description Needs that no pack of the list covers. */
            readonly missing: readonly components["schemas"]["CostingMissing"][];
            /** @description The lines gathered into one order for each supplier. */
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            /** @description Code of the price list whose packs were chosen from. */
            readonly priceList: string;
            /** @description Whether the prices of the list hold tax already. */
            readonly pricesIncludeTax: boolean;
            /** @description Whether no cheaper basket exists, or how far one could be. */
            readonly proof: components["schemas"]["Proven"] | components["schemas"]["Gap"];
            /** @description The next cheaper basket from other suppliers, where it was looked for. */
            readonly secondBest?: components["schemas"]["SecondBest"];
            /** @description Needs that something other than what was planned covers. */
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            /** @description Goods, cut fees, deliveries and surcharges of all orders together. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description What the buyer should know before ordering. */
            readonly warnings: readonly string[];
        };
        readonly BasketChoicesInput: {
            /** @description Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin. */
            readonly hardeners?: readonly components["schemas"]["HardenerChoiceInput"][];
            /** @description Left over from another job and still good. */
            readonly onHand?: readonly components["schemas"]["OnHandInput"][];
            /** @description How the order is put together. */
            readonly options?: components["schemas"]["BasketOptionsInput"];
            /** @description Edition of the catalogue whose prices and packs count, or `current`. Absent: the one that all the estimates were made with, or the current one where they differ. `drift` says line by line what has changed since. */
            readonly pricedAt?: string;
            /** @description Price list of the edition; the one the estimates were priced with when absent, which must then be the same for all. */
            readonly priceList?: string;
            /** @description What else would do. */
            readonly substitutes?: readonly components["schemas"]["SubstituteInput"][];
            /** @description As XML: the supplier whose order is meant, because an order has one seller; needed when there are several. The JSON form lists them in `orders`. */
            readonly supplier?: string;
            /** @description Ids of other estimates to buy for in the same order: needs are pooled before packs are chosen, and `byEstimate` says what each pays. */
            readonly together?: readonly string[];
        };
        /** @description So many packs of one kind from one supplier. */
        readonly BasketLine: {
            /** @description Packs times price. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description The material in the pack, with the form it is sold in. */
            readonly content: components["schemas"]["MaterialVariant"];
            /** @description Sheets that the shop cuts so that they travel as ordinary goods. */
            readonly cutCount: number;
            /** @description What the supplier asks for cutting from the roll or sheet. */
            readonly cutFee: components["schemas"]["MoneyJson"];
            /** @description Whether the pack travels as dangerous goods. */
            readonly hazardous: boolean;
            /** @description What the packs weigh for carriage. */
            readonly massKg: number;
            /** @description What the supplier calls the pack. */
            readonly name: string;
            /** @description Whether the pack is too large for ordinary parcels. */
            readonly oversize: boolean;
            /** @description How many packs are bought. */
            readonly packCount: number;
            /** @description What all packs of the line hold together. */
            readonly quantity: number;
            /** @description What one pack holds, in `unit`. */
            readonly quantityPerPack: number;
            /** @description How long the unopened pack keeps. */
            readonly shelfLifeMonths?: number;
            /** @description Supplier's number of the pack. */
            readonly sku: string;
            /** @description Code of the supplier who sells it. */
            readonly supplier: string;
            /** @description Unit of the contents of a pack. */
            readonly unit: string;
            /** @description Price of one pack. */
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description `quantity` and `massKg` of BasketLine in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What the packs weigh for carriage. */
                readonly massKg?: string;
                /** @description In US units: What all packs of the line hold together. */
                readonly quantity?: string;
            };
        };
        readonly BasketNeedInput: {
            /** @description Several estimates may be bought for in one order; each is told its share. */
            readonly estimate?: string;
            /**
             * @description Form of the sheet: plain, or scored so that it bends.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Name of the need, unique in its estimate. */
            readonly id: string;
            /** @description Code of a material of the catalogue. */
            readonly material: string;
            /** @description Hardener of a resin. */
            readonly part?: string;
            /** @description Quantity with waste. */
            readonly requiredQuantity: number;
            /** @description Width of the roll that the fabric comes on. */
            readonly rollWidthMm?: number | string;
            /** @description Size of the sheet. */
            readonly sheet?: components["schemas"]["SheetSizeInput"];
            /** @description Thickness of the material. */
            readonly thicknessMm?: number | string;
            /** @description What the need is called on the order. */
            readonly title?: string;
            /**
             * @description Unit of the required quantity.
             * @enum {string}
             */
            readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
        };
        readonly BasketOptionsInput: {
            /** @description Mass of a box of hazardous goods, each with its surcharge; absent: one surcharge to an order. */
            readonly hazardBoxKg?: number | string;
            /** @description Whole sheets may be cut by the shop, for its fee, so that they travel as ordinary goods. */
            readonly mayCutSheets?: boolean;
            /** @description Packs that would not keep this long are left out. */
            readonly monthsUntilUse?: number;
            /**
             * Format: date
             * @description The validity of the price list is checked against it.
             */
            readonly orderDate?: string;
            /** @description A second best order of another kind is looked for; absent: true. */
            readonly secondBest?: boolean;
            /** @description Suppliers of the list to order from; absent: all. */
            readonly suppliers?: readonly string[];
            /** @description For all searches of the order together; absent: 5. What is found by then is given, with its distance from the best that is possible. */
            readonly timeLimitS?: number;
            /**
             * @description By air nothing hazardous travels; who collects pays no freight. Absent: ground.
             * @enum {string}
             */
            readonly transport?: "ground" | "air" | "collect";
        };
        readonly BasketRequest: {
            /** @description Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin. */
            readonly hardeners?: readonly components["schemas"]["HardenerChoiceInput"][];
            /** @description What the order is for. */
            readonly needs: readonly components["schemas"]["BasketNeedInput"][];
            /** @description Left over from another job and still good. */
            readonly onHand?: readonly components["schemas"]["OnHandInput"][];
            /** @description How the order is put together. */
            readonly options?: components["schemas"]["BasketOptionsInput"];
            /** @description Code of a price list of the edition. */
            readonly priceList: string;
            /** @description What else would do. */
            readonly substitutes?: readonly components["schemas"]["SubstituteInput"][];
        };
        readonly BatchCard: {
            /** @description What the pot is enough for. */
            readonly covers: readonly string[];
            /** @description Name of the filler on the card. */
            readonly filler?: string;
            /** @description Filler on the card. */
            readonly fillerG: number;
            /** @description Hardener on the card. */
            readonly hardenerG: number;
            /** @description What set the size of the pot. */
            readonly limitedBy: string;
            /** @description Volume in the pot. */
            readonly mixedMl: number;
            /** @description Number on the card. */
            readonly number: number;
            /** @description Strokes of the pump, where one is used. */
            readonly pumps?: string;
            /** @description Resin on the card. */
            readonly resinG: number;
            /** @description Step that the card is for. */
            readonly step: string;
            /** @description Heading of the card. */
            readonly title: string;
            /** @description `resinG`, `hardenerG`, `fillerG` and `mixedMl` of BatchCard in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Filler on the card. */
                readonly fillerG?: string;
                /** @description In US units: Hardener on the card. */
                readonly hardenerG?: string;
                /** @description In US units: Volume in the pot. */
                readonly mixedMl?: string;
                /** @description In US units: Resin on the card. */
                readonly resinG?: string;
            };
            /** @description Minutes until the pot must be empty. */
            readonly useWithinMin: number;
            /** @description What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump. */
            readonly weigh: readonly {
                /** @description Grams to add. */
                readonly addG: number;
                /** @description What stands on its can. */
                readonly name: string;
                /** @description What the scale then shows, when it was zeroed with the empty pot. */
                readonly scaleShowsG: number;
                /** @description `addG`, `scaleShowsG` and `volumeMl` of BatchCard in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Grams to add. */
                    readonly addG?: string;
                    /** @description In US units: What the scale then shows, when it was zeroed with the empty pot. */
                    readonly scaleShowsG?: string;
                    /** @description In US units: The same by volume. */
                    readonly volumeMl?: string;
                };
                /** @description The same by volume. */
                readonly volumeMl: number;
                /**
                 * @description Which component.
                 * @enum {string}
                 */
                readonly what: "filler" | "hardener" | "resin";
            }[];
        };
        readonly BatchFinding: {
            /**
             * @description What was found about the mixing.
             * @enum {string}
             */
            readonly code: "deck-warmer-than-limit" | "layer-heats" | "piece-too-large" | "pot-too-short" | "small-pots";
            /** @description Numbers and words that the sentence is made of. */
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /**
             * @description Whether it stops the plan, warns, or is only worth knowing.
             * @enum {string}
             */
            readonly severity: "note" | "stop" | "warn";
            /** @description The finding in a sentence. */
            readonly text: string;
        };
        readonly BatchPlan: {
            /** @description Rise of temperature if no heat left the pot at all. */
            readonly adiabaticRiseK: number;
            /** @description Figures of the plan that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Pots in the order they are mixed. */
            readonly batches: readonly components["schemas"]["PlannedBatch"][];
            /** @description Hardeners of the system, each with its verdict in this warmth. */
            readonly considered: readonly components["schemas"]["HardenerVerdict"][];
            /** @description What each step needs, with waste. */
            readonly demand: components["schemas"]["ResinDemand"];
            /** @description What stops the mixing or deserves a warning. */
            readonly findings: readonly components["schemas"]["BatchFinding"][];
            /** @description How long a pot of 100 g stays workable in the warmth of the work. */
            readonly potLife: {
                /** @description Likely pot life of 100 g, in minutes. */
                readonly at100GMin: number;
                /** @description Longest pot life to hope for. */
                readonly highMin: number;
                /** @description Shortest pot life to reckon with. */
                readonly lowMin: number;
                /** @description Warmth that the pot life holds for. */
                readonly temperatureC: number;
                /** @description `temperatureC` of BatchPlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Warmth that the pot life holds for. */
                    readonly temperatureC?: string;
                };
            };
            /** @description The system that is mixed, and why its hardener was chosen. */
            readonly resin: {
                /** @description Code of the resin system in the catalogue. */
                readonly code: string;
                /** @description Code of the hardener that is mixed in. */
                readonly hardener: string;
                /** @description Name of the hardener on the can. */
                readonly hardenerName: string;
                /** @description Name of the resin system. */
                readonly name: string;
                /** @description Why this hardener suits the warmth of the work. */
                readonly why: string;
            };
        };
        readonly BattensInput: {
            /**
             * @description What the screws hold in, around the opening.
             * @enum {string}
             */
            readonly deckAround: "wood" | "laminate-only" | "none";
            /** @description Height of a batten. Absent: 20 mm (common timber). */
            readonly heightMm?: number | string;
            /** @description Whether the screws go through the piece into the inner skin, which then hangs on them; threadMm is its thickness. */
            readonly isIntoInnerSkin?: boolean;
            /** @description Modulus of a batten. Absent: 9000 MPa (softwood along the grain). */
            readonly modulusMPa?: number;
            /** @description Diameter of a screw. Absent: 4.2 mm (common screw). */
            readonly screwDiameterMm?: number | string;
            /** @description Spacing of screws along a batten. Absent: 150 mm (sag between screws grows with the fourth power of it). */
            readonly screwSpacingMm?: number | string;
            /** @description Spacing. */
            readonly spacingMm?: number | string;
            /** @description Thread in the deck. Absent: 10 mm (short of the inner skin). */
            readonly threadMm?: number | string;
            /** @description Width of a batten. Absent: 45 mm (common timber). */
            readonly widthMm?: number | string;
            /** @description Specific gravity of that wood, oven-dry. */
            readonly woodSpecificGravity?: number;
        };
        readonly BeddedPieceInput: {
            /** @description Area of the piece that is bedded. */
            readonly areaM2: number | string;
            /**
             * @description Label on the piece and on the cut plan.
             * @example A1
             */
            readonly label: string;
        };
        readonly BibliographyEntry: {
            /** @description Who published it. */
            readonly body: string;
            /** @description Key of the source in the catalogue. */
            readonly key: string;
            /** @description Number that the text refers by. */
            readonly number: number;
            /**
             * @description How far the source itself was read.
             * @enum {string}
             */
            readonly readAs: "common-practice" | "derived" | "first-hand" | "memory" | "second-hand";
            /** @description Title of the publication. */
            readonly title: string;
            /** @description Where it can be read, when freely. */
            readonly url?: string;
            /** @description When it was published. */
            readonly year: string;
        };
        readonly BoltSizeInput: {
            /** @description Diameter of the bolt. */
            readonly diameterMm: number;
            /** @description Length of the bolt under its head. */
            readonly lengthMm: number;
        };
        readonly BondPressurePlan: {
            /** @description Pressure of the air at the altitude of the work. */
            readonly ambientKPa: number;
            /** @description What was taken about the pressing that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Pressure that the chosen way gives. */
            readonly availableKPa?: number;
            /** @description Whether the inner skin bears the pressing. */
            readonly innerSkin: components["schemas"]["InnerSkinCheck"];
            /** @description Where boards, battens or bows lie, from one corner of the area; none when no way will do. */
            readonly lines: readonly components["schemas"]["PressLine"][];
            /**
             * @description Way of pressing that was chosen; absent when none will do.
             * @enum {string}
             */
            readonly method: "battens" | "jacks" | "vacuum" | "weights";
            /** @description Weight on each square metre of a piece, or force under it; absent where nothing is laid on or jacked. */
            readonly onPieceKgPerM2?: number;
            /** @description Every way of pressing, judged. */
            readonly options: readonly components["schemas"]["PressOption"][];
            /** @description What the chosen way takes: bags, screws, battens. */
            readonly quantities: readonly components["schemas"]["PressQuantity"][];
            /** @description What to do, in a sentence. */
            readonly recommendation: string;
            /** @description Why ways of pressing are ruled out. */
            readonly refusals: readonly string[];
            /** @description Pressure that the bond line needs. */
            readonly requiredKPa: number;
            /** @description What carries the pressing force in the end. */
            readonly restsOn: string;
            /** @description One after another, where a crew cannot press the whole opening at once. */
            readonly turns: number;
            /** @description `requiredKPa`, `availableKPa`, `onPieceKgPerM2` and `ambientKPa` of BondPressurePlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Pressure of the air at the altitude of the work. */
                readonly ambientKPa?: string;
                /** @description In US units: Pressure that the chosen way gives. */
                readonly availableKPa?: string;
                /** @description In US units: Weight on each square metre of a piece, or force under it; absent where nothing is laid on or jacked. */
                readonly onPieceKgPerM2?: string;
                /** @description In US units: Pressure that the bond line needs. */
                readonly requiredKPa?: string;
            };
        };
        readonly BondPressureRequest: {
            /** @description Altitude. Absent: 0 m (boats lie near the sea). */
            readonly altitudeM?: number;
            /**
             * @description Area of core that is pressed down.
             * @example 0.8
             */
            readonly areaM2: number | string;
            /** @description Battens. */
            readonly battens?: components["schemas"]["BattensInput"];
            /** @description Plain core that must be bent onto the camber. */
            readonly camber?: components["schemas"]["PressedCamberInput"];
            /** @description Whether anybody can set props from below; absent: yes. */
            readonly canPropFromBelow?: boolean;
            /** @description Core, bed and skin on the inner skin. Absent: 10 kg/m2 (new core 2, wet bed 2, skin 5 kg/m2). */
            readonly deadLoadKgPerM2?: number;
            /** @description Inner skin. */
            readonly innerSkin: components["schemas"]["PressedSkinInput"];
            /**
             * @description Length.
             * @example 1000
             */
            readonly lengthMm: number | string;
            /** @description Perimeter. */
            readonly perimeterM?: number;
            /**
             * @description What the crew would like best.
             * @enum {string}
             */
            readonly prefer?: "weights" | "battens" | "vacuum";
            /** @description Pressure that the bed needs. Absent: 1 kPa, or 0.5 where no prop can be set below. */
            readonly requiredKPa?: number;
            /** @description Slope. */
            readonly slopeDeg?: number;
            /** @description Vacuum. */
            readonly vacuum?: components["schemas"]["VacuumInput"];
            /** @description Weights. */
            readonly weights?: components["schemas"]["WeightsInput"];
            /**
             * @description Width of the bedded area athwart.
             * @example 800
             */
            readonly widthMm: number | string;
        };
        readonly BondPressureSection: {
            /** @description Pressure that the planned way gives. */
            readonly availableKPa?: number;
            /** @description Boards on props, battens and bows, where they lie in the plane of the deck. */
            readonly lines: readonly components["schemas"]["PressLine"][];
            /**
             * @description Absent when no way to press can be recommended; the refusals say why.
             * @enum {string}
             */
            readonly method?: "battens" | "jacks" | "vacuum" | "weights";
            /** @description What goes on or under each piece, in the order of bedding. */
            readonly pieces: readonly {
                /** @description Where a jack stands under the board that holds the piece; empty when it is pressed from above. */
                readonly jacks: readonly (readonly number[])[];
                /** @description Piece that is pressed. */
                readonly label: string;
                /** @description Weight laid on it, or force under it as a weight, counted up to whole kilograms; absent where battens or a bag press. */
                readonly massKg?: number;
                /** @description `massKg` of BondPressureSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Weight laid on it, or force under it as a weight, counted up to whole kilograms; absent where battens or a bag press. */
                    readonly massKg?: string;
                };
            }[];
            /** @description Props under the deck. */
            readonly props: {
                /** @description Whether props go under the deck. */
                readonly needed: boolean;
                /** @description How far apart they may stand. */
                readonly spacingMm?: number;
                /** @description `spacingMm` of BondPressureSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: How far apart they may stand. */
                    readonly spacingMm?: string;
                };
                /** @description Why they are needed or not. */
                readonly why: string;
            };
            /** @description What the pressing takes. */
            readonly quantities: readonly components["schemas"]["NamedValue"][];
            /** @description How to press, in a sentence. */
            readonly recommendation: string;
            /** @description Ways of pressing that are ruled out, with why. */
            readonly refusals: readonly string[];
            /** @description Pressure that the core needs while it beds. */
            readonly requiredKPa: number;
            /** @description What the pressing rests on. */
            readonly restsOn: string;
            /** @description `requiredKPa` and `availableKPa` of BondPressureSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Pressure that the planned way gives. */
                readonly availableKPa?: string;
                /** @description In US units: Pressure that the core needs while it beds. */
                readonly requiredKPa?: string;
            };
        };
        /** @description `isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's. */
        readonly BuiltCheck: {
            /** @description Whether the repaired deck is no worse than that. */
            readonly isNoWorse: boolean;
            /** @description Demand over capacity of the deck as it was built. */
            readonly utilisation: number;
            /**
             * @description Verdict on the deck as it was built.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        readonly CalendarCrewInput: {
            /** @description ISO dates without work. */
            readonly daysOff?: readonly string[];
            /** @description Hours that go into the job. Absent: 8 h (a yard's day). */
            readonly hoursPerDay?: number;
            /**
             * Format: int32
             * @description People at work.
             */
            readonly people: number;
            /** @description So long cures and coats are watched over; absent: the length of the working day. */
            readonly presentH?: number;
            /** @description Local hour at which the day begins. Absent: 8 h (a yard's day). */
            readonly startHour?: number;
            /** @description Working days. Absent: mon, tue, wed, thu, fri (a yard's week). */
            readonly workingDays?: readonly ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
        };
        readonly CalendarMilestone: {
            /** @description Planned moment (RFC 3339). */
            readonly at: string;
            /** @description Code of what is reached. */
            readonly code: string;
            /** @description Name of what is reached. */
            readonly title: string;
        };
        readonly CalendarRequest: {
            /** @description Code of the coating whose limits count for paint. */
            readonly coating?: string;
            /** @description Moisture of the core. */
            readonly coreMoisturePercent?: number;
            /** @description Crew. */
            readonly crew: components["schemas"]["CalendarCrewInput"];
            /** @description Operations of the caller. */
            readonly customOperations?: readonly components["schemas"]["CustomOperationInput"][];
            /** @description How often work is repeated that waits in between. */
            readonly cycles?: components["schemas"]["CyclesInput"];
            /** @description Temperature of the deck where no forecast reaches; never taken below what the hardener needs. Absent: 18 degC (nothing was said about the season). */
            readonly deckTemperatureC?: number | string;
            /** @description Amounts of the job. */
            readonly drivers: components["schemas"]["DriverAmountsInput"];
            /**
             * @description What dries under the lip. Absent: balsa (the usual core of a deck, and the one that dries slowest).
             * @enum {string}
             */
            readonly dryingCore?: "balsa" | "plywood" | "foam";
            /** @description Of the core that stays, at the edge: drying follows it. Absent: that of the core. */
            readonly edgeMoisturePercent?: number;
            /** @description Kind of the job. */
            readonly flags: components["schemas"]["OperationFlagsInput"];
            /** @description Forecast. */
            readonly forecast?: components["schemas"]["ForecastInput"];
            /**
             * @description Hardener.
             * @example medium
             */
            readonly hardener: string;
            /** @description Asks for the calendar as iCalendar text too. */
            readonly iCalendar?: components["schemas"]["ICalendarInput"];
            /** @description The deck is opened and measured: the hold for re-measuring waits for nobody. */
            readonly isExtentAgreed?: boolean;
            /**
             * @description Resin.
             * @example resin-epoxy-5to1
             */
            readonly resin: string;
            /**
             * Format: int32
             * @description Simulated calendars. Absent: 2000 (enough that the finish of nine in ten holds to a day).
             */
            readonly runs?: number;
            /**
             * Format: int64
             * @description Seed of the simulation. Absent: 20260504 (any seed gives the same spread to within the runs).
             */
            readonly seed?: number;
            /**
             * Format: date
             * @description Day on which work may start.
             */
            readonly startDate: string;
            /**
             * @description Zone of the place; absent: UTC.
             * @example Europe/Lisbon
             */
            readonly timeZone?: string;
            /**
             * Format: date
             * @description Day for which the work is listed.
             */
            readonly today?: string;
            /** @description Warmth of the deck above the air. */
            readonly warmth?: components["schemas"]["DeckWarmthInput"];
            /** @description Share of working days lost to weather beyond the forecast. Absent, by the shelter: open 0.25, tent 0.05, shed 0. */
            readonly weatherLossFraction?: number;
        };
        readonly CalendarSection: {
            /** @description From the first day to the last, waits counted. */
            readonly calendarDays: components["schemas"]["Range"];
            /** @description Tasks whose delay delays the end, by code. */
            readonly criticalChain: readonly string[];
            /** @description When the job ends; absent when no start was stated. */
            readonly finish?: {
                /** @description End that one job in ten is done by (RFC 3339). */
                readonly early: string;
                /** @description End that nine jobs in ten are done by (RFC 3339). */
                readonly late: string;
                /** @description End that half of the jobs are done by (RFC 3339). */
                readonly likely: string;
            };
            /** @description Days worth announcing. */
            readonly milestones: readonly {
                /** @description When it is reached (RFC 3339); absent when no start was stated. */
                readonly at?: string;
                /** @description Code of the milestone. */
                readonly code: string;
                /** @description What is reached then. */
                readonly title: string;
            }[];
            /** @description What to know about the calendar. */
            readonly notes: readonly string[];
            /** @description Of the one walk that the tasks show, by mean hours and waits. */
            readonly planned: {
                /** @description Calendar days of the plan as drawn. */
                readonly calendarDays: number;
                /** @description Working days of the plan as drawn. */
                readonly workingDays: number;
            };
            /** @description Absent when the record names no start: days are then counted from any Monday. */
            readonly startDate?: string;
            /** @description Tasks in the order they start. */
            readonly tasks: readonly components["schemas"]["CalendarTask"][];
            /** @description Zone, or offset, that the moments are written in. */
            readonly timeZone?: string;
            /** @description Days on which somebody works, as a spread. */
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly CalendarTask: {
            /** @description Tasks that must be done before it, by code. */
            readonly after: readonly string[];
            /** @description Code of the task. */
            readonly code: string;
            /** @description When it ends (RFC 3339), where the job's start was stated. */
            readonly endAt?: string;
            /** @description When its work ends, in days from the start of the job; its wait comes after. */
            readonly endDay: number;
            /**
             * @description What it waits for in the weather.
             * @enum {string}
             */
            readonly gate: "coating" | "dry-deck" | "none" | "resin";
            /** @description Whether its delay delays the end. */
            readonly isCritical: boolean;
            /** @description Whether work stops here until somebody has agreed. */
            readonly isHoldPoint: boolean;
            /** @description Mean hours of work, of all hands together. */
            readonly labourH: number;
            /** @description When its cure, drying or hold is over. */
            readonly readyAt?: string;
            /** @description When it starts (RFC 3339), where the job's start was stated. */
            readonly startAt?: string;
            /** @description When it starts, in days from the start of the job. */
            readonly startDay: number;
            /** @description What lets it start no earlier. */
            readonly startsBecause: string;
            /** @description What is done. */
            readonly title: string;
            /** @description Hours of waiting after the work. */
            readonly waitH: number;
            /**
             * @description What is waited for.
             * @enum {string}
             */
            readonly waitKind: "cure" | "drying" | "elapsed" | "hold" | "none";
        };
        readonly CamberInput: {
            /** @description Gap that the bed fills. Absent: 1.5 mm (the largest piece lies within 1 to 1.5 mm of the skin). */
            readonly mostGapMm?: number | string;
            /** @description Length of a piece across the camber; absent: the side of the largest piece. */
            readonly pieceLengthMm?: number | string;
            /** @description Pressure that holds the core down. Absent: 2 kPa (a 20 kg bag on 0.1 m2). */
            readonly pressureKPa?: number;
            /** @description Radius of the camber. */
            readonly radiusMm: number | string;
        };
        /** @description How the core follows a cambered deck. */
        readonly CamberPlan: {
            /** @description Radius to which the pressure bends the thickest layer. */
            readonly bentRadius: components["schemas"]["Figure"];
            /** @description The bend, the spring-back and what they are compared with. */
            readonly figures: readonly components["schemas"]["Figure"][];
            /**
             * @description Form of sheet that follows the camber.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description Gap under a plain piece of the stated length. */
            readonly gap: components["schemas"]["Figure"];
            /** @description A plain piece no longer than this across the camber lies within the gap without bending. */
            readonly longestFlatPieceMm: number;
            /** @description `longestFlatPieceMm` of CamberPlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: A plain piece no longer than this across the camber lies within the gap without bending. */
                readonly longestFlatPieceMm?: string;
            };
            /**
             * @description How the core is brought to the curve.
             * @enum {string}
             */
            readonly way: "bends" | "lies" | "scored" | "shorter-pieces";
            /** @description What the crew does, in a sentence. */
            readonly words: string;
        };
        readonly CauseInput: {
            /**
             * @description What let the water in.
             * @enum {string}
             */
            readonly cause: "leaking-fitting" | "impact" | "construction" | "unknown";
            /**
             * @description What the insurer will ask: sudden, already there, or upkeep.
             * @enum {string}
             */
            readonly causeClass?: "sudden" | "pre-existing" | "maintenance";
            /**
             * @description Where the water came in; its remedy becomes part of the plan.
             * @enum {string}
             */
            readonly leak?: "fittings" | "hull-deck-joint" | "hatch" | "overlay-screws" | "chainplate" | "crack" | "not-known";
            /** @description Length of the joint or crack that leaks. */
            readonly lengthMm?: number | string;
            /** @description Note on the cause. */
            readonly note?: string;
        };
        readonly CauseRecord: {
            /**
             * @description What let the water in.
             * @enum {string}
             */
            readonly cause: "construction" | "impact" | "leaking-fitting" | "unknown";
            /**
             * @description What the insurer will ask: sudden, already there, or upkeep.
             * @enum {string}
             */
            readonly causeClass?: "maintenance" | "pre-existing" | "sudden";
            /**
             * @description Where the water came in; its remedy becomes part of the plan.
             * @enum {string}
             */
            readonly leak?: "chainplate" | "crack" | "fittings" | "hatch" | "hull-deck-joint" | "not-known" | "overlay-screws";
            /** @description Length of the joint or crack that leaks. */
            readonly lengthMm?: number;
            /** @description Note on the cause. */
            readonly note?: string;
        };
        readonly Caution: {
            /** @description The condition of this job that called it. */
            readonly because: string;
            /** @description Code of this caution. */
            readonly code: string;
            /** @description Who decides, where it is not the crew. */
            readonly decides?: string;
            /** @description GHS hazard statements of the materials concerned. */
            readonly hazards: readonly {
                /** @description Hazard statement (GHS). */
                readonly code: string;
                /** @description Wording of the statement. */
                readonly text: string;
            }[];
            /**
             * @description What sort of harm.
             * @enum {string}
             */
            readonly kind: "fire" | "health" | "site" | "structure" | "work";
            /** @description What to wear or to set up. */
            readonly protection: readonly string[];
            /**
             * @description What may come of it: death, injury or damage.
             * @enum {string}
             */
            readonly severity: "caution" | "danger" | "warning";
            /** @description Publication that the caution follows. */
            readonly source: string;
            /** @description What to do or to leave. */
            readonly text: string;
        };
        /** @description A pack whose prices are other ones now. */
        readonly ChangedPack: {
            /** @description The same breaks afterwards. */
            readonly after: readonly string[];
            /** @description Prices of one pack at each quantity break, in the order of the breaks, in the currency of the list. */
            readonly before: readonly string[];
            /** @description Name of the pack. */
            readonly name: string;
            /** @description Pack whose price changed. */
            readonly sku: string;
        };
        /** @description A change order as text to be signed, in the parts that a letter has. */
        readonly ChangeOrder: {
            /** @description Lines that came in or grew. */
            readonly additions: readonly components["schemas"]["LineChange"][];
            /** @description Everything found since the first issue, by the rates agreed with it; absent where that was in another currency. */
            readonly byRates?: components["schemas"]["ReMeasured"];
            /** @description Lines that went or shrank. */
            readonly deductions: readonly components["schemas"]["LineChange"][];
            /** @description Why the work changed, as stated with the revision. */
            readonly reason: string;
            /** @description Whose name, date and signature it needs. */
            readonly signatures: readonly string[];
            /** @description Sentences that both parties sign. */
            readonly statements: readonly string[];
            /** @description From the lines to what is to be paid, before and after. */
            readonly steps: readonly components["schemas"]["TotalChange"][];
            /** @description The steps from the old total to the new one. */
            readonly sums: readonly {
                /** @description Its amount; a deduction is negative. */
                readonly amount: components["schemas"]["MoneyJson"];
                /** @description What the sum is. */
                readonly name: string;
            }[];
            /** @description Heading of the change order. */
            readonly title: string;
        };
        /** @description A check that fails is a result. `utilisation` is demand over capacity. */
        readonly Check: {
            /** @description Of the repaired panel: what the same check comes to on the deck as built. */
            readonly asBuilt?: components["schemas"]["BuiltCheck"];
            /** @description What is there or allowed. */
            readonly capacity?: number;
            /** @description Code of the check. */
            readonly code: string;
            /** @description What is required or acts. */
            readonly demand?: number;
            /** @description What decides the check. */
            readonly governs: string;
            /** @description Why the check has no figure. */
            readonly reason?: string;
            /** @description What would let the check pass. */
            readonly remedy?: string;
            /** @description Publication that the check follows. */
            readonly source: string;
            /**
             * @description State of the deck that the check is about.
             * @enum {string}
             */
            readonly state?: "as-built" | "as-found" | "opened" | "repaired";
            /** @description Name of the check. */
            readonly title: string;
            /** @description Unit of what acts and what is there. */
            readonly unit: string;
            /** @description `demand` and `capacity` of Check in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What is there or allowed. */
                readonly capacity?: string;
                /** @description In US units: What is required or acts. */
                readonly demand?: string;
            };
            /** @description What acts over what is allowed. */
            readonly utilisation?: number;
            /**
             * @description What the check says.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        /** @description Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`. */
        readonly Cite: {
            /** @description Clause, table, equation or page in the source. */
            readonly clause?: string;
            /** @description Clause, table or page, or why the value stands without one. */
            readonly note?: string;
            /** @description Key of the source; `/v1/sources/{code}` names it in full. */
            readonly source: string;
        };
        readonly CiteInput: {
            /** @description Clause, table, equation or page. */
            readonly clause?: string;
            /** @description Page or table, or why the value stands without a source. */
            readonly note?: string;
            /** @description Key of a source of the same edition. */
            readonly source: string;
        };
        readonly ClassDeckLoadInput: {
            /**
             * @description The pressure that a class rule puts on decks. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "class-deck";
            /** @description Your own name for the class load, as the answer shows it. */
            readonly name?: string;
        };
        /** @description Shown once: opens the estimate it came with. */
        readonly ClientSecret: {
            /** @description Bearer of this text may read the one estimate; shown once. */
            readonly clientSecret: string;
            /** @description Until when the secret counts (RFC 3339). */
            readonly clientSecretExpiresAt: string;
        };
        readonly ClosingCheck: {
            /** @description What the joint can carry or is allowed. */
            readonly capacity?: number;
            /**
             * @description Which property of the joint was checked.
             * @enum {string}
             */
            readonly check: "bond-peel" | "bond-shear" | "flush" | "taper-room";
            /** @description Source of the joint's requirement. */
            readonly cite: components["schemas"]["Cite"];
            /** @description What the joint must carry or keep to. */
            readonly demand?: number;
            /** @description Name of the check on the joint. */
            readonly title: string;
            /** @description Unit of the joint's demand and capacity. */
            readonly unit: string;
            /** @description `demand` and `capacity` of ClosingCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What the joint can carry or is allowed. */
                readonly capacity?: string;
                /** @description In US units: What the joint must carry or keep to. */
                readonly demand?: string;
            };
            /** @description Demand on the joint over its capacity. */
            readonly utilisation?: number;
            /**
             * @description Whether the joint passes.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
            /** @description The check in a sentence. */
            readonly words?: string;
        };
        readonly ClosingPlies: {
            /** @description What was taken about the joint. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Whether the closed joint holds and lies flush. */
            readonly checks: readonly components["schemas"]["ClosingCheck"][];
            /** @description What this order of strips means. */
            readonly consequences: readonly string[];
            /** @description Glass of all strips. */
            readonly glassKg: components["schemas"]["Figure"];
            /** @description Width of the open joint before it is closed. */
            readonly grooveWidthMm: number;
            /** @description Least taper that the bond allows, where the joint's stress was given. */
            readonly leastTaperRatio?: number;
            /**
             * @description Whether wide or narrow strips are laid first.
             * @enum {string}
             */
            readonly order: "largest-first" | "smallest-first";
            /** @description Strips over the joint, in the order they are laid. */
            readonly plies: readonly components["schemas"]["ClosingPly"][];
            /** @description Resin of all strips. */
            readonly resinKg: components["schemas"]["Figure"];
            /** @description Strips laid wet on wet together. */
            readonly stages: readonly components["schemas"]["Stage"][];
            /** @description Width of the taper over the closing joint. */
            readonly taperWidthMm: components["schemas"]["Figure"];
            /** @description `grooveWidthMm` of ClosingPlies in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width of the open joint before it is closed. */
                readonly grooveWidthMm?: string;
            };
        };
        readonly ClosingPly: {
            /** @description Area of the strip. */
            readonly areaM2: components["schemas"]["Figure"];
            /** @description Glass in the strip. */
            readonly glassKg: components["schemas"]["Figure"];
            /** @description Code of the strip's fabric. */
            readonly material: string;
            /** @description Name of the strip's fabric. */
            readonly name: string;
            /** @description Place of the strip, 1 the first laid. */
            readonly order: number;
            /** @description Edge of the strip along the joint. */
            readonly outline?: readonly components["schemas"]["Polygon"][];
            /** @description Resin that wets the strip. */
            readonly resinKg: components["schemas"]["Figure"];
            /** @description Length of roll for the strips. */
            readonly rollLengthM: number;
            /** @description As they are cut from the roll. */
            readonly rollStrips: readonly components["schemas"]["RollStrip"][];
            /** @description Width of the roll for strips. */
            readonly rollWidthMm: number;
            /** @description Stage that the strip is laid in. */
            readonly stage: number;
            /** @description Pieces that the strip is cut in. */
            readonly strips: number;
            /** @description What the strip adds over the joint. */
            readonly thicknessMm: number;
            /** @description `thicknessMm`, `widthMm`, `rollWidthMm` and `rollLengthM` of ClosingPly in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of roll for the strips. */
                readonly rollLengthM?: string;
                /** @description In US units: Width of the roll for strips. */
                readonly rollWidthMm?: string;
                /** @description In US units: What the strip adds over the joint. */
                readonly thicknessMm?: string;
                /** @description In US units: Width of the strip. */
                readonly widthMm?: string;
            };
            /** @description Width of the strip. */
            readonly widthMm: number;
        };
        readonly CoatingInput: {
            /**
             * @description What the coating is for.
             * @enum {string}
             */
            readonly coating: "fairing-compound" | "primer" | "topcoat" | "nonskid" | "gelcoat";
            /** @description Coats that make it complete. */
            readonly coats: components["schemas"]["DatumInput"];
            /** @description Stable code of the coating, unique in the edition. */
            readonly code: string;
            /** @description Area that a litre covers in one coat. */
            readonly coverageM2PerL: components["schemas"]["DatumInput"];
            /** @description Density as it is applied. */
            readonly densityKgPerL: components["schemas"]["DatumInput"];
            /** @description Hazard statements (GHS) of the coating, such as H226. */
            readonly hazards?: readonly string[];
            /** @description Dampest air that it may be applied in. */
            readonly highestRelativeHumidityPercent: components["schemas"]["DatumInput"];
            /** @description Whether it holds isocyanates, which need air-fed protection when sprayed. */
            readonly isIsocyanate: boolean;
            /**
             * @description Says that the material is a coating. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "coating";
            /** @description Coldest deck that it may be applied on. */
            readonly lowestTemperatureC: components["schemas"]["DatumInput"];
            /** @description Generic specification of the coating in trade words. */
            readonly name: string;
            /** @description Hours before the next coat may follow. */
            readonly recoatH: components["schemas"]["DatumInput"];
        };
        readonly CommonShareInput: {
            /** @description Share of the variance of rates that they have in common; absent: 0.5. */
            readonly labour?: number;
            /** @description Share of the variance of rates that they have in common; absent: 0.3. */
            readonly part?: number;
        };
        readonly ComparedEstimate: {
            /** @description When it was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Edition of the catalogue it was priced with. */
            readonly edition: string;
            /** @description Version of the program that made it. */
            readonly engineVersion: string;
            /** @description Id of the estimate that is compared. */
            readonly id: string;
            /** @description Which revision of the job it is. */
            readonly revision: components["schemas"]["RevisionMark"];
        };
        /** @description What changed from one estimate to another, line by line. */
        readonly Comparison: {
            /** @description The later of the two. */
            readonly after: components["schemas"]["ComparedEstimate"];
            /** @description The earlier of the two. */
            readonly before: components["schemas"]["ComparedEstimate"];
            /** @description Currency of all differences (ISO 4217). */
            readonly currency: string;
            /** @description Without tax. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Changed figures of the scope, such as the opened area. */
            readonly figures: readonly components["schemas"]["FigureChange"][];
            /** @description Changed lines: by how much, because of how much more of it and because of its rate. */
            readonly lines: readonly components["schemas"]["LineChange"][];
            /** @description Of the amount without tax before; absent when that was nothing. */
            readonly shareOfBefore?: number;
            /** @description Changed sections, then every step from the sum of the lines to the sum with tax. */
            readonly totals: readonly components["schemas"]["TotalChange"][];
        };
        readonly Computed: {
            /** @description Where the formula is printed. */
            readonly cite: components["schemas"]["Cite"];
            /** @description Id of the formula. */
            readonly formula: string;
            /** @description What went in, by symbol; each a figure with its own origin. */
            readonly inputs: {
                readonly [key: string]: components["schemas"]["Figure"];
            };
            /**
             * @description Says that a formula gave the figure. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "computed";
            /** @description Letter that stands for the result in the source. */
            readonly symbol: string;
            /** @description What the formula is called. */
            readonly title: string;
        };
        readonly ConclusionSection: {
            /** @description What was found, each graded by urgency. */
            readonly findings: readonly components["schemas"]["GradedFinding"][];
            /** @description What is recommended and why. */
            readonly method: {
                /** @description The method that comes next. */
                readonly runnerUp?: {
                    /** @description Why it is not the first. */
                    readonly because: string;
                    /** @description What it would cost; absent where it is not priced. */
                    readonly price?: components["schemas"]["MoneyJson"];
                    /** @description Name of the method that comes next. */
                    readonly title: string;
                };
                /** @description The recommendation, sentence by sentence. */
                readonly sentences: readonly string[];
            };
            /** @description When to look again, and at what. */
            readonly reinspection: readonly components["schemas"]["ReinspectionPoint"][];
            /** @description What is said of the repair. */
            readonly verdict: {
                /**
                 * @description Code of the verdict.
                 * @enum {string}
                 */
                readonly code: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
                /** @description Shortfalls, and remarks on how the deck was built. */
                readonly notes: readonly string[];
                /** @description The verdict in a sentence. */
                readonly sentence: string;
            };
        };
        readonly Conditions: {
            /** @description Altitude. Absent: 0 m (most decks are repaired at sea level). */
            readonly altitudeM?: number;
            /** @description Drying in place goes by it. */
            readonly daysAvailable?: number;
            /** @description With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere. */
            readonly forecast?: components["schemas"]["Forecast"];
            /** @description Whether the boat is afloat. */
            readonly isAfloat?: boolean;
            /** @description Whether frost is due before the core could be dry. */
            readonly isFreezeExpected?: boolean;
            /**
             * @description Decides haul-out and days in the yard: hauled for this job, ashore anyway, afloat, or on ground of the owner.
             * @enum {string}
             */
            readonly place?: "afloat" | "ashore-anyway" | "ashore-for-this" | "own-ground";
            /** @description Relative humidity of the air where the boat lies. */
            readonly relativeHumidityPercent?: number;
            /**
             * @description Shelter over the work. Absent: tent (an opened deck needs cover; a tent is the least that keeps rain and dew out).
             * @enum {string}
             */
            readonly shelter?: "open" | "shed" | "tent";
            /** @description Working temperature of the deck. */
            readonly temperatureC?: number;
            /** @description How much warmer the deck is than the forecast's air. */
            readonly warmth?: components["schemas"]["DeckWarmth"];
        };
        readonly ConditionsInput: {
            /** @description Altitude. Absent: 0 m (most decks are repaired at sea level). */
            readonly altitudeM?: number;
            /**
             * Format: int32
             * @description Drying in place goes by it.
             */
            readonly daysAvailable?: number;
            /** @description With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere. */
            readonly forecast?: components["schemas"]["ForecastInput"];
            /** @description Whether the boat is afloat. */
            readonly isAfloat?: boolean;
            /** @description Whether frost is due before the core could be dry. */
            readonly isFreezeExpected?: boolean;
            /**
             * @description Decides haul-out and days in the yard: hauled for this job, ashore anyway, afloat, or on ground of the owner.
             * @enum {string}
             */
            readonly place?: "afloat" | "ashore-for-this" | "ashore-anyway" | "own-ground";
            /** @description Relative humidity of the air where the boat lies. */
            readonly relativeHumidityPercent?: number;
            /**
             * @description Shelter over the work. Absent: tent (an opened deck needs cover; a tent is the least that keeps rain and dew out).
             * @enum {string}
             */
            readonly shelter?: "shed" | "tent" | "open";
            /** @description Working temperature of the deck. */
            readonly temperatureC?: number | string;
            /** @description How much warmer the deck is than the forecast's air. */
            readonly warmth?: components["schemas"]["DeckWarmthInput"];
        };
        readonly ConstraintReport: {
            /** @description Best value over all stacks against what is needed; at least 1 where `metBy` is above 0. */
            readonly bestRatio: number;
            /**
             * @description Constraint that stood in the way.
             * @enum {string}
             */
            readonly constraint: "flush-low" | "flush-proud" | "kinds" | "order" | "stiffness-across" | "stiffness-along" | "stiffness-shear" | "strength-compression-across" | "strength-compression-along" | "strength-tension-across" | "strength-tension-along";
            /** @description Stacks that meet it, whatever else they miss. */
            readonly metBy: number;
            /** @description Best ratio among those: how near the catalogue comes when all else is met. */
            readonly nearestRatio?: number;
            /** @description Stacks that meet everything but this one. */
            readonly soleObstacleOf: number;
        };
        readonly ConsumableInput: {
            /** @description Size of a screw that is bought by its diameter and length. */
            readonly bolt?: components["schemas"]["BoltSizeInput"];
            /** @description Stable code of the consumable, unique in the edition. */
            readonly code: string;
            /** @description Hazard statements (GHS) of the consumable, such as H226. */
            readonly hazards?: readonly string[];
            /**
             * @description Says that the material is used up by the work. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "consumable" | "safety" | "fastener";
            /** @description Generic specification of the consumable in trade words. */
            readonly name: string;
            /** @description Jobs that one of it serves; absent, it is used up or stays in the boat. */
            readonly servesJobs?: components["schemas"]["DatumInput"];
            /**
             * @description Unit that it is counted in.
             * @enum {string}
             */
            readonly unit: "each" | "pair" | "m" | "m2" | "l" | "kg" | "roll" | "pack";
            /** @description None for what is bought by a card of its own, as fastenings are. */
            readonly usages: readonly components["schemas"]["UsageInput"][];
            /**
             * @description When it belongs to a job at all; absent means always.
             * @enum {string}
             */
            readonly when?: "relay" | "re-bed" | "vacuum" | "battens" | "weights" | "epoxy" | "polyester" | "paint" | "nonskid" | "from-below";
        };
        /** @description Pieces, sheets and what becomes of every square millimetre of them. */
        readonly CoreBill: {
            /** @description What the bill takes that nobody stated. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Area of the sheets bought. */
            readonly boughtArea: components["schemas"]["Figure"];
            /** @description Price of the sheets, in the unit that prices were stated in. */
            readonly cost: number;
            /** @description One for each thickness and form. */
            readonly cuts: readonly components["schemas"]["CoreCut"][];
            /** @description How many pieces, and why so many. */
            readonly division: components["schemas"]["DivisionByCost"];
            /** @description Width that the saw takes between pieces. */
            readonly kerfMm: number;
            /** @description Pieces that the core is cut into. */
            readonly mosaic: components["schemas"]["Mosaic"];
            /** @description Area of core that ends up in the deck. */
            readonly netArea: components["schemas"]["Figure"];
            /** @description Sheets that must be bought. */
            readonly sheetCount: number;
            /** @description Layers of new core that fill the cavity. */
            readonly stack: components["schemas"]["StackPlan"];
            /** @description `kerfMm` of CoreBill in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width that the saw takes between pieces. */
                readonly kerfMm?: string;
            };
            /** @description 0 where no core is bought. */
            readonly utilisation: number;
            /** @description Where the bought area goes. */
            readonly waste: components["schemas"]["SheetUse"];
            /** @description Absent where no core is bought. */
            readonly wasteFraction?: components["schemas"]["Figure"];
        };
        readonly CoreBillRequest: {
            /** @description Camber of the deck; absent: it is flat. */
            readonly camber?: components["schemas"]["CamberInput"];
            /**
             * @description From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines.
             * @example 17.5
             */
            readonly cavityMm: number | string;
            /** @description Strip along every edge of the stock that is not used. Absent: 0 mm (sheet edges are taken as sound). */
            readonly edgeTrimMm?: number | string;
            /**
             * @description Plain, or scored so that it bends.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Direction of the grain on the deck, from forward to starboard. Absent: 0 degrees (grain runs fore and aft). */
            readonly grainDeg?: number;
            /** @description What an hour of work costs, in the currency of the sheets; absent: the sheets alone decide how the core is divided. */
            readonly hourCost?: number;
            /** @description Narrowest offcut worth keeping. Absent: 150 mm (it still holds a piece of the size bedded by hand). */
            readonly keepFromMm?: number | string;
            /** @description Width that the blade takes. Absent: 2 mm (a fine saw or a stout knife). */
            readonly kerfMm?: number | string;
            /**
             * @description Code of a core in the catalogue.
             * @example core-balsa-150
             */
            readonly material: string;
            /** @description How core is divided into pieces. */
            readonly mosaicRules?: components["schemas"]["MosaicRulesInput"];
            /** @description The customer's own pieces of the same core. */
            readonly offcuts?: readonly components["schemas"]["OwnOffcutInput"][];
            /** @description How heavy and how wet the old core is. */
            readonly oldCore?: components["schemas"]["OldCoreMassInput"];
            /** @description Openings to fill. */
            readonly openings: readonly components["schemas"]["DrawnOpeningInput"][];
            /**
             * Format: int64
             * @description The same seed gives the same layout. Absent: 1 (any seed will do, as long as it is the same).
             */
            readonly seed?: number;
            /** @description What can be bought; absent: the material's formats, the smallest area being the cheapest. */
            readonly sheets?: readonly components["schemas"]["SheetOnSaleInput"][];
            /**
             * @description What closes the openings: the old skin bedded again, or plies laid wet on the core. Absent: re-bed (the old skin goes back wherever it can).
             * @enum {string}
             */
            readonly skin?: "re-bed" | "relay";
            /** @description How thick the beds are and how the skin sits. */
            readonly stackRules?: components["schemas"]["StackRulesInput"];
            /** @description Lines the deck rests on; no joint runs along one. */
            readonly supports?: readonly components["schemas"]["CoreSupportInput"][];
            /** @description After this time the best layout so far is the answer. Absent: 20 s (nobody waits longer for a drawing). */
            readonly timeLimitS?: number;
            /** @description A thickness of the list that is insisted on. */
            readonly wantedMm?: number | string;
            /** @description Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000 (a good layout of a deck's worth of pieces takes a fraction of it). */
            readonly workUnits?: number;
        };
        readonly CoreCut: {
            /** @description Price of these sheets. */
            readonly cost: number;
            /**
             * @description Whether these sheets are plain or scored.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description No layout of these pieces can cost less. */
            readonly leastCost: number;
            /** @description Each sheet with the pieces on it. */
            readonly sheets: readonly components["schemas"]["CutCoreSheet"][];
            /** @description Thickness of the sheets that are cut. */
            readonly thicknessMm: number;
            /** @description `thicknessMm` of CoreCut in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Thickness of the sheets that are cut. */
                readonly thicknessMm?: string;
            };
            /** @description How much of the sheets becomes pieces. */
            readonly use: components["schemas"]["SheetUse"];
        };
        readonly CoreFormInput: {
            /**
             * @description Plain sheet, or scored so that it can bend.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description Depth of the cuts as a share of the thickness. */
            readonly scoreDepthFraction?: number;
            /** @description Distance between the cuts of a scored sheet. */
            readonly scoreSpacingMm?: number;
            /** @description Width of those cuts. */
            readonly scoreWidthMm?: number;
        };
        readonly CoreLayerInput: {
            /** @description Thickness of the core between the skins. */
            readonly thicknessMm: number | string;
            /** @description Modulus in the plane of the panel. */
            readonly youngMPa: number;
        };
        readonly CoreSection: {
            /** @description Height to fill between the skins. */
            readonly cavityMm: number;
            /** @description Why it is so many pieces. */
            readonly division: string;
            /** @description New stack less cavity; positive stands proud. */
            readonly flushMm: number;
            /** @description Left between the pieces on a sheet for the blade. */
            readonly kerfMm: number;
            /** @description How much heavier the deck becomes; negative is lighter. */
            readonly massChangeKg: number;
            /** @description Code of the new core. */
            readonly material: string;
            /** @description Name of the new core. */
            readonly materialName: string;
            /** @description Core in the deck. */
            readonly netAreaM2: number;
            /** @description What the crew should know about the core. */
            readonly notes: readonly string[];
            /** @description Pieces in the order they are bedded. */
            readonly pieces: readonly components["schemas"]["EstimateCorePiece"][];
            /** @description Core that is bought. */
            readonly purchaseAreaM2: number;
            /** @description Sheets with the pieces cut from them. */
            readonly sheets: readonly components["schemas"]["CoreSheetLayout"][];
            /** @description Area that is filled solid. */
            readonly solidAreaM2: number;
            /** @description Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid. */
            readonly solidFills: readonly components["schemas"]["CoreSolidFill"][];
            /** @description Solid filling. */
            readonly solidVolumeL: number;
            /** @description Layers of the new stack from below. */
            readonly stack: readonly {
                /** @description What the layer is. */
                readonly layer: string;
                /** @description How thick the layer is. */
                readonly thicknessMm: number;
                /** @description `thicknessMm` of CoreSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: How thick the layer is. */
                    readonly thicknessMm?: string;
                };
            }[];
            /** @description Height of the new stack. */
            readonly stackMm: number;
            /** @description `cavityMm`, `stackMm`, `flushMm` and 8 more of CoreSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Height to fill between the skins. */
                readonly cavityMm?: string;
                /** @description In US units: New stack less cavity; positive stands proud. */
                readonly flushMm?: string;
                /** @description In US units: Left between the pieces on a sheet for the blade. */
                readonly kerfMm?: string;
                /** @description In US units: How much heavier the deck becomes; negative is lighter. */
                readonly massChangeKg?: string;
                /** @description In US units: Core in the deck. */
                readonly netAreaM2?: string;
                /** @description In US units: Core that is bought. */
                readonly purchaseAreaM2?: string;
                /** @description In US units: Area that is filled solid. */
                readonly solidAreaM2?: string;
                /** @description In US units: Solid filling. */
                readonly solidVolumeL?: string;
                /** @description In US units: Height of the new stack. */
                readonly stackMm?: string;
                /** @description In US units: Bought core that goes to waste. */
                readonly wasteAreaM2?: string;
                /** @description In US units: Water that leaves with the wet core; absent when its moisture is unknown. */
                readonly waterLeavingKg?: string;
            };
            /** @description Share of bought core that ends up in the deck. */
            readonly utilisation: number;
            /** @description Bought core that goes to waste. */
            readonly wasteAreaM2: number;
            /** @description Where the waste comes from. */
            readonly wasteByCause: readonly {
                /** @description How much goes to waste so. */
                readonly areaM2: number;
                /** @description Why core goes to waste. */
                readonly cause: string;
                /** @description `areaM2` of CoreSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: How much goes to waste so. */
                    readonly areaM2?: string;
                };
            }[];
            /** @description Water that leaves with the wet core; absent when its moisture is unknown. */
            readonly waterLeavingKg?: number;
        };
        readonly CoreSheetInput: {
            /** @description Turns in degrees that keep the grain right; empty when any turn will do. */
            readonly allowedTurnsDeg: readonly number[];
            /** @description Stable code of the core sheet, unique in the edition. */
            readonly code: string;
            /** @description Compressive modulus through the thickness. */
            readonly compressiveModulusMPa: components["schemas"]["DatumInput"];
            /** @description Compressive strength through the thickness. */
            readonly compressiveStrengthMPa: components["schemas"]["DatumInput"];
            /**
             * @description What the core is made of.
             * @enum {string}
             */
            readonly coreType: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
            /** @description Density of the dry core. */
            readonly densityKgPerM3: components["schemas"]["DatumInput"];
            /** @description Forms that the sheets are sold in. */
            readonly forms: readonly components["schemas"]["CoreFormInput"][];
            /** @description Hazard statements (GHS) of the core sheet, such as H226. */
            readonly hazards?: readonly string[];
            /** @description Young's modulus in the plane of the sheet. */
            readonly inPlaneModulusMPa: components["schemas"]["DatumInput"];
            /**
             * @description Says that the material is a core sheet. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "core";
            /** @description Largest piece that can be bedded before the resin kicks. */
            readonly largestPieceM2: components["schemas"]["DatumInput"];
            /** @description Generic specification of the core sheet in trade words. */
            readonly name: string;
            /** @description Whether pieces are drilled so that air can leave under them. */
            readonly needsBleedHoles: boolean;
            /** @description Shear modulus through the thickness. */
            readonly shearModulusMPa: components["schemas"]["DatumInput"];
            /** @description Shear strength through the thickness. */
            readonly shearStrengthMPa: components["schemas"]["DatumInput"];
            /** @description Sizes that the sheets are sold in. */
            readonly sheets: readonly components["schemas"]["SheetFormatInput"][];
            /** @description Thicknesses that the core is sold in. */
            readonly thicknessesMm: readonly number[];
            /** @description Mixed resin that both faces take before bedding. */
            readonly wetOutLPerM2: components["schemas"]["DatumInput"];
        };
        readonly CoreSheetLayout: {
            /**
             * @description Plain or scored sheet.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description False for a piece that the customer has. */
            readonly isBought: boolean;
            /** @description Name of the sheet. */
            readonly label: string;
            /** @description Length of the sheet. */
            readonly lengthMm: number;
            /** @description Remainders worth keeping. */
            readonly offcutsKept: readonly (readonly (readonly number[])[])[];
            /** @description Pieces on the sheet. */
            readonly placed: readonly {
                /** @description Place in the order of cutting. */
                readonly cutOrder: number;
                /** @description Where its holes lie on the sheet. */
                readonly holes: readonly (readonly (readonly number[])[])[];
                /** @description Where its edge lies on the sheet. */
                readonly outline: readonly (readonly number[])[];
                /** @description Label of the piece. */
                readonly piece: string;
                /** @description How far it is turned. */
                readonly turnDeg: number;
            }[];
            /** @description Thickness of the sheet. */
            readonly thicknessMm: number;
            /** @description `lengthMm`, `widthMm` and `thicknessMm` of CoreSheetLayout in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of the sheet. */
                readonly lengthMm?: string;
                /** @description In US units: Thickness of the sheet. */
                readonly thicknessMm?: string;
                /** @description In US units: Width of the sheet. */
                readonly widthMm?: string;
            };
            /** @description How much of this sheet is used. */
            readonly utilisation: number;
            /** @description Width of the sheet. */
            readonly widthMm: number;
        };
        /** @description Filled solid from skin to skin, before the core goes in. */
        readonly CoreSolidFill: {
            /** @description Area under the filling. */
            readonly areaM2: number;
            /** @description Free places in the filling. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Whether the filling goes under skin that stays. */
            readonly isUnderLip: boolean;
            /**
             * @description Paste, laminate or a strip of dense core.
             * @enum {string}
             */
            readonly kind: "high-density-strip" | "paste" | "solid-laminate";
            /** @description As paste: how many lifts, for its heat. */
            readonly lifts: number;
            /** @description Opening that the filling lies in. */
            readonly opening: string;
            /** @description In deck coordinates. */
            readonly outline: readonly (readonly number[])[];
            /** @description `areaM2`, `volumeL` and `widthMm` of CoreSolidFill in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area under the filling. */
                readonly areaM2?: string;
                /** @description In US units: How much filling. */
                readonly volumeL?: string;
                /** @description In US units: Width of the filled strip. */
                readonly widthMm?: string;
            };
            /** @description How much filling. */
            readonly volumeL: number;
            /** @description Width of the filled strip. */
            readonly widthMm: number;
        };
        readonly CoreSupportInput: {
            /**
             * @description Where the support starts.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly from: readonly number[];
            /**
             * @description Where the support ends.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly to: readonly number[];
        };
        readonly CoreValuesInput: {
            /** @description Through the thickness. */
            readonly compressiveModulusMPa: number;
            /** @description Through the thickness. */
            readonly compressiveStrengthMPa: number;
            /**
             * @description Core type.
             * @enum {string}
             */
            readonly coreType: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
            /** @description Density. */
            readonly densityKgPerM3?: number;
            /** @description Absent: the core adds nothing in its plane. */
            readonly inPlaneModulusMPa?: number;
            /** @description Shear modulus. */
            readonly shearModulusMPa: number;
            /** @description Shear strength. */
            readonly shearStrengthMPa: number;
            /**
             * @description Thickness of the core with these values.
             * @example 1/2 in
             */
            readonly thicknessMm: number | string;
        };
        /** @description One labelled piece of new core, in deck coordinates. */
        readonly CoringCorePiece: {
            /** @description Area of the piece without its holes. */
            readonly areaM2: number;
            /** @description What is bedded in one go; counted from 1 in each layer of an opening. */
            readonly bay: number;
            /** @description Over all openings. */
            readonly beddingOrder: number;
            /** @description Drill for the bleed holes; absent when there are none. */
            readonly bleedDiameterMm?: number;
            /** @description Where to drill holes that let air and resin out. */
            readonly bleedHoles: readonly (readonly number[])[];
            /** @description How it gets in; absent when no way was found, and the plan says so. */
            readonly entry?: components["schemas"]["Entry"];
            /**
             * @description Plain or scored, as the piece is cut.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description Only for core that has a grain in its plane. */
            readonly grainDeg?: number;
            /** @description Openings within the piece, for what stays. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Whether the piece reaches under the sound skin that stays. */
            readonly isUnderLip: boolean;
            /** @description The opening's letter and the bedding order in it. */
            readonly label: string;
            /** @description 1 lies on the inner skin. */
            readonly layer: number;
            /** @description Opening that the piece lies in. */
            readonly opening: string;
            /** @description Edge of the piece in the deck plane. */
            readonly outline: readonly (readonly number[])[];
            /** @description Thickness of the sheet the piece is cut from. */
            readonly thicknessMm: number;
            /** @description `areaM2`, `thicknessMm` and `bleedDiameterMm` of CoringCorePiece in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the piece without its holes. */
                readonly areaM2?: string;
                /** @description In US units: Drill for the bleed holes; absent when there are none. */
                readonly bleedDiameterMm?: string;
                /** @description In US units: Thickness of the sheet the piece is cut from. */
                readonly thicknessMm?: string;
            };
        };
        readonly CostingMissing: {
            /**
             * @description Plain or scored, for core.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Code of the material in the catalogue. */
            readonly material: string;
            /** @description Ids of the needs that stay open. */
            readonly needs: readonly string[];
            /** @description Code of a hardener, where the material is a resin system and its hardener is meant. */
            readonly part?: string;
            /** @description How much is needed that nothing covers. */
            readonly quantity: number;
            /**
             * @description `no-hardener`: the resin is there and what cures it is not; `below-minimum-order`: what is in stock does not reach it.
             * @enum {string}
             */
            readonly reason: "all-excluded" | "below-minimum-order" | "no-hardener" | "no-pack" | "not-enough" | "not-found-in-time" | "other-unit";
            /** @description Width of the roll, for fabrics. */
            readonly rollWidthMm?: number;
            /** @description Size of the sheet, where it matters. */
            readonly sheet?: {
                /** @description Length of the sheet that is meant. */
                readonly lengthMm: number;
                /** @description `lengthMm` and `widthMm` of CostingMissing in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the sheet that is meant. */
                    readonly lengthMm?: string;
                    /** @description In US units: Width of the sheet that is meant. */
                    readonly widthMm?: string;
                };
                /** @description Width of the sheet that is meant. */
                readonly widthMm: number;
            };
            /** @description Thickness of the sheet, for core. */
            readonly thicknessMm?: number;
            /** @description Unit of the uncovered quantity. */
            readonly unit: string;
            /** @description `quantity`, `thicknessMm` and `rollWidthMm` of CostingMissing in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How much is needed that nothing covers. */
                readonly quantity?: string;
                /** @description In US units: Width of the roll, for fabrics. */
                readonly rollWidthMm?: string;
                /** @description In US units: Thickness of the sheet, for core. */
                readonly thicknessMm?: string;
            };
        };
        readonly CostingMoneyRange: {
            /** @description Amount at the high end. */
            readonly high: components["schemas"]["MoneyJson"];
            /** @description Likely amount. */
            readonly likely: components["schemas"]["MoneyJson"];
            /** @description Amount at the low end. */
            readonly low: components["schemas"]["MoneyJson"];
        };
        readonly CostLine: {
            /** @description Rounded amount of the line. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description How the amount follows the extent that is found. */
            readonly atExtents: readonly components["schemas"]["AtExtent"][];
            /**
             * @description Who bears the cause of the line.
             * @enum {string}
             */
            readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            /** @description Code of the priced line. */
            readonly code: string;
            /** @description Wear of the old part that the line replaces. */
            readonly depreciation?: components["schemas"]["LineDepreciation"];
            /** @description Of packs only: how they are charged, and without tax what buying them whole would come to. */
            readonly goods?: {
                /**
                 * @description Whether whole packs or what is used is billed.
                 * @enum {string}
                 */
                readonly billedBy: "use" | "wear" | "whole-packs";
                /** @description What the packs cost that the yard must buy. */
                readonly bought: components["schemas"]["MoneyJson"];
            };
            /** @description True where packs were priced and the rate is their price over their content. */
            readonly isAverageRate: boolean;
            /** @description What to know about the line. */
            readonly note?: string;
            /** @description Packs that the line buys. */
            readonly packs: readonly components["schemas"]["LinePack"][];
            /**
             * @description Whether the line is goods or work.
             * @enum {string}
             */
            readonly partOrLabour: "labour" | "part";
            /** @description Quantity needed and quantity bought. */
            readonly quantity: components["schemas"]["LineQuantity"];
            /** @description Amount at the ends of its spread. */
            readonly range: components["schemas"]["CostingMoneyRange"];
            /** @description Whether the rate holds tax already. */
            readonly rateIncludesTax: boolean;
            /**
             * @description Whether the line counts, or only shows what would be extra.
             * @enum {string}
             */
            readonly scope: "in" | "out";
            /**
             * @description Section that the line is summed in.
             * @enum {string}
             */
            readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
            /** @description Ends of the spread as factors of the amount. */
            readonly spread: {
                /** @description High factor. */
                readonly high: number;
                /** @description Low factor. */
                readonly low: number;
            };
            /** @description Stage of the work the line belongs to. */
            readonly stage?: string;
            /** @description Tax group of the line. */
            readonly taxGroup: string;
            /** @description What the line pays for. */
            readonly title: string;
            /** @description Unit of the line's quantity. */
            readonly unit: string;
            /** @description Price of one unit. */
            readonly unitRate: components["schemas"]["MoneyJson"];
            /** @description Derivation of the quantity. */
            readonly why: components["schemas"]["Figure"];
        };
        readonly CostLineInput: {
            /** @description What planning it again at other extents gave, the extents rising; straight between them and the recorded one. Absent: the same whatever is found. */
            readonly atExtents?: readonly components["schemas"]["AtExtentInput"][];
            /**
             * @description What an insurer asks: sudden, there before, or upkeep.
             * @enum {string}
             */
            readonly causeClass: "sudden" | "pre-existing" | "maintenance";
            /** @description Unique among the lines; a revision is compared by it. */
            readonly code: string;
            /** @description Wear of the part, shown beside the amount, which it does not change. */
            readonly depreciation?: components["schemas"]["DepreciationInput"];
            /** @description Quantity without waste, in the unit of the line. */
            readonly netQuantity: number;
            /** @description Note beside the line. */
            readonly note?: string;
            /** @description Packs that are bought, priced instead of a rate. */
            readonly packs?: readonly components["schemas"]["LinePackInput"][];
            /**
             * @description Only parts depreciate; hire, yard charges and disposal count as labour.
             * @enum {string}
             */
            readonly partOrLabour: "part" | "labour";
            /** @description Whole packs; charged instead of the required quantity. */
            readonly purchaseQuantity?: number;
            /** @description The rate holds the tax of its group; absent: false. */
            readonly rateIncludesTax?: boolean;
            /**
             * @description Out: listed so that nobody can say it was forgotten, not summed. Absent: in.
             * @enum {string}
             */
            readonly scope?: "in" | "out";
            /**
             * @description Where the line stands in the roll-up.
             * @enum {string}
             */
            readonly section: "labour" | "materials" | "consumables" | "safety" | "hire" | "yard" | "subcontract" | "disposal" | "freight";
            /** @description Least and most of the amount, as factors of it, at the extent recorded. */
            readonly spread?: components["schemas"]["LineSpreadInput"];
            /** @description Step of the job. */
            readonly stage?: string;
            /** @description Code of one of taxGroups. */
            readonly taxGroup: string;
            /** @description What the line says. */
            readonly title: string;
            /**
             * @description Unit of the quantities and of the rate.
             * @enum {string}
             */
            readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
            /** @description Exact price per unit; absent where packs are priced. */
            readonly unitRate?: string;
            /** @description Waste on top of the net quantity, as a fraction. */
            readonly wasteFraction?: number;
        };
        readonly CostRisk: {
            /** @description Spreads that nobody stated. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description P80 minus the point, none when the point already covers it. */
            readonly contingency: components["schemas"]["MoneyJson"];
            /** @description Currency that the spread is in. */
            readonly currency: string;
            /** @description Standard deviation of the drawn prices. */
            readonly deviation: components["schemas"]["MoneyJson"];
            /** @description Lines and facts that move the price most. */
            readonly drivers: readonly components["schemas"]["Driver"][];
            /** @description Extent found over extent recorded, as three points. */
            readonly extent: components["schemas"]["ThreePoint"];
            /** @description Drawn prices in bars. */
            readonly histogram: readonly components["schemas"]["HistogramBar"][];
            /** @description What opening up first would be worth. */
            readonly information: components["schemas"]["InformationValue"];
            /** @description Of the variance, by drivers acting together. */
            readonly jointShare: number;
            /** @description Mean of the drawn prices. */
            readonly mean: components["schemas"]["MoneyJson"];
            /** @description Drawn price that one in ten stays below. */
            readonly p10: components["schemas"]["MoneyJson"];
            /** @description Drawn price that half stay below. */
            readonly p50: components["schemas"]["MoneyJson"];
            /** @description Drawn price that eight in ten stay below. */
            readonly p80: components["schemas"]["MoneyJson"];
            /** @description Drawn price that nine in ten stay below. */
            readonly p90: components["schemas"]["MoneyJson"];
            /** @description The same as a share of the price. */
            readonly p90RelativeError: number;
            /** @description How uncertain that last price is from drawing. */
            readonly p90StandardError: components["schemas"]["MoneyJson"];
            /** @description Price at the likely quantities. */
            readonly point: components["schemas"]["MoneyJson"];
            /** @description Jobs that were drawn. */
            readonly samples: number;
            /** @description Seed of the draw; the same seed gives the same cents. */
            readonly seed: number;
            /**
             * @description How each line was drawn between its ends.
             * @enum {string}
             */
            readonly shape: "beta" | "triangular";
            /** @description How likely the job costs no more than the point. */
            readonly shareAtPoint: number;
        };
        readonly CostRollUp: {
            /** @description Terms of the price that nobody stated. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description The price parted by who bears its cause. */
            readonly byCause: readonly {
                /**
                 * @description Cause that the share is put down to.
                 * @enum {string}
                 */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
                /** @description Lines of this share. */
                readonly direct: components["schemas"]["MoneyJson"];
                /** @description This share with tax. */
                readonly gross: components["schemas"]["MoneyJson"];
                /** @description Overhead, profit and reserves of this share. */
                readonly loadings: components["schemas"]["MoneyJson"];
                /** @description This share before tax. */
                readonly net: components["schemas"]["MoneyJson"];
                /** @description Tax on this share. */
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            /** @description Cause and part or labour crossed, as a claim splits them. */
            readonly byCauseAndPart: readonly {
                /**
                 * @description Cause of this cell of the table.
                 * @enum {string}
                 */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
                /** @description Lines of this share. */
                readonly direct: components["schemas"]["MoneyJson"];
                /** @description This share with tax. */
                readonly gross: components["schemas"]["MoneyJson"];
                /** @description Overhead, profit and reserves of this share. */
                readonly loadings: components["schemas"]["MoneyJson"];
                /** @description This share before tax. */
                readonly net: components["schemas"]["MoneyJson"];
                /**
                 * @description Goods or work in this cell of the table.
                 * @enum {string}
                 */
                readonly partOrLabour: "labour" | "part";
                /** @description Tax on this share. */
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            /** @description The price parted into goods and work. */
            readonly byPartOrLabour: readonly {
                /** @description Lines of this share. */
                readonly direct: components["schemas"]["MoneyJson"];
                /** @description This share with tax. */
                readonly gross: components["schemas"]["MoneyJson"];
                /** @description Overhead, profit and reserves of this share. */
                readonly loadings: components["schemas"]["MoneyJson"];
                /** @description This share before tax. */
                readonly net: components["schemas"]["MoneyJson"];
                /**
                 * @description Whether the share is goods or work.
                 * @enum {string}
                 */
                readonly partOrLabour: "labour" | "part";
                /** @description Tax on this share. */
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            /** @description Reserve for what may be found. */
            readonly contingency: components["schemas"]["MoneyJson"];
            /** @description Currency of the whole roll-up (ISO 4217). */
            readonly currency: string;
            /** @description Wear of old parts that new ones replace. */
            readonly depreciation: {
                /** @description Wear taken off. */
                readonly depreciation: components["schemas"]["MoneyJson"];
                /** @description Price of parts that wear counts on. */
                readonly parts: components["schemas"]["MoneyJson"];
                /** @description Parts less wear. */
                readonly remaining: components["schemas"]["MoneyJson"];
            };
            /** @description Sum of all lines in scope. */
            readonly direct: components["schemas"]["MoneyJson"];
            /** @description Price with tax. */
            readonly gross: components["schemas"]["MoneyJson"];
            /** @description Priced lines in the order of their sections. */
            readonly lines: readonly components["schemas"]["CostLine"][];
            /** @description Price before tax. */
            readonly net: components["schemas"]["MoneyJson"];
            /** @description Named and priced, not summed. */
            readonly outOfScope: readonly components["schemas"]["CostLine"][];
            /** @description Overhead on the direct cost. */
            readonly overhead: components["schemas"]["MoneyJson"];
            /** @description Profit on direct cost and overhead. */
            readonly profit: components["schemas"]["MoneyJson"];
            /** @description Sums for work that is not yet known. */
            readonly provisional: components["schemas"]["MoneyJson"];
            /** @description Sum of each section. */
            readonly sections: readonly components["schemas"]["SectionTotal"][];
            /** @description All taxes together. */
            readonly tax: components["schemas"]["MoneyJson"];
            /** @description Each tax with what it is on. */
            readonly taxes: readonly {
                /** @description Code of the tax group. */
                readonly code: string;
                /** @description Name of the tax. */
                readonly name: string;
                /** @description Exact decimal text. */
                readonly percent: string;
                /** @description Tax on that amount. */
                readonly tax: components["schemas"]["MoneyJson"];
                /** @description Amount that the tax is on. */
                readonly taxable: components["schemas"]["MoneyJson"];
            }[];
            /** @description Percentages and rounding that the price is made with. */
            readonly terms: {
                /** @description Reserve in percent; absent when it is worked out from the risk. */
                readonly contingencyPercent?: string;
                /** @description Overhead in percent of direct cost. */
                readonly overheadPercent: string;
                /** @description Profit in percent of cost with overhead. */
                readonly profitPercent: string;
                /**
                 * @description How amounts are rounded.
                 * @enum {string}
                 */
                readonly rounding: "ceiling" | "floor" | "half-away-from-zero" | "half-to-even";
            };
        };
        readonly CostRollupRequest: {
            /** @description Contingency, as an amount. */
            readonly contingencyAmount?: string;
            /** @description Absent, with no contingencyAmount: P80 less the point where risk is asked for, else none. */
            readonly contingencyPercent?: string;
            /**
             * @description Every price is in it; nothing is converted. A code of ISO 4217.
             * @example EUR
             * @enum {string}
             */
            readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
            /** @description What the job holds. */
            readonly lines: readonly components["schemas"]["CostLineInput"][];
            /** @description Overhead, as a percentage of the sum of the lines. */
            readonly overheadPercent?: string;
            /** @description Profit, as a percentage of lines and overhead. */
            readonly profitPercent?: string;
            /** @description How the range is worked out. */
            readonly risk?: components["schemas"]["RiskTermsInput"];
            /**
             * @description How each amount is rounded; absent: half-away-from-zero.
             * @enum {string}
             */
            readonly rounding?: "half-away-from-zero" | "half-to-even" | "floor" | "ceiling";
            /** @description Taxes that lines may bear. */
            readonly taxGroups: readonly components["schemas"]["LineTaxGroupInput"][];
        };
        readonly CostSection: {
            /** @description Sum of its lines. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Code of the section. */
            readonly code: string;
            /** @description Heading of the section. */
            readonly title: string;
        };
        readonly CountedPackInput: {
            /**
             * Format: int32
             * @description Whole packs that can be sold now.
             */
            readonly packs: number;
            /** @description SKU of a pack of the list in the current edition. */
            readonly sku: string;
        };
        readonly CountedPacksInput: {
            /** @description Counts that take the place of earlier ones; what was counted of other packs stays. */
            readonly items: readonly components["schemas"]["CountedPackInput"][];
        };
        /** @description How one demand is met. */
        readonly Coverage: {
            /** @description Part that bought packs and stock cover. */
            readonly covered: number;
            /**
             * @description Whether plain or scored sheet is needed.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Part that comes from stock the caller has already. */
            readonly fromOnHand: number;
            /** @description Code of the material that is needed. */
            readonly material: string;
            /** @description The needs that these packs serve together. */
            readonly needs: readonly {
                /** @description Estimate that the need comes from, in a common order. */
                readonly estimate?: string;
                /** @description Id of one need. */
                readonly id: string;
                /** @description What this need asks for. */
                readonly requiredQuantity: number;
            }[];
            /** @description Code of a hardener, where the material is a resin system and its hardener is meant. */
            readonly part?: string;
            /** @description What the needs ask for in all. */
            readonly required: number;
            /** @description Width of roll that is needed. */
            readonly rollWidthMm?: number;
            /** @description Size of sheet that is needed. */
            readonly sheet?: {
                /** @description Length of the needed sheet. */
                readonly lengthMm: number;
                /** @description `lengthMm` and `widthMm` of Coverage in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the needed sheet. */
                    readonly lengthMm?: string;
                    /** @description In US units: Width of the needed sheet. */
                    readonly widthMm?: string;
                };
                /** @description Width of the needed sheet. */
                readonly widthMm: number;
            };
            /** @description Part that stays uncovered; 0 when all is covered. */
            readonly short: number;
            /** @description Thickness that is needed, for core. */
            readonly thicknessMm?: number;
            /** @description Unit of the quantities covered. */
            readonly unit: string;
            /** @description `thicknessMm`, `rollWidthMm`, `required` and 3 more of Coverage in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Part that bought packs and stock cover. */
                readonly covered?: string;
                /** @description In US units: Part that comes from stock the caller has already. */
                readonly fromOnHand?: string;
                /** @description In US units: What the needs ask for in all. */
                readonly required?: string;
                /** @description In US units: Width of roll that is needed. */
                readonly rollWidthMm?: string;
                /** @description In US units: Part that stays uncovered; 0 when all is covered. */
                readonly short?: string;
                /** @description In US units: Thickness that is needed, for core. */
                readonly thicknessMm?: string;
            };
        };
        readonly Craft: {
            /**
             * @description Kind of craft.
             * @enum {string}
             */
            readonly craftType?: "motor" | "sail";
            /**
             * @description Design category.
             * @enum {string}
             */
            readonly designCategory?: "A" | "B" | "C" | "D";
            /** @description Length of the hull. */
            readonly lengthHullM?: number;
            /** @description Length of the waterline. */
            readonly lengthWaterlineM?: number;
            /** @description Loaded mass. */
            readonly massLoadedKg?: number;
            /** @description Year of building. */
            readonly yearBuilt?: number;
        };
        readonly CraftForPanelInput: {
            /**
             * @description Craft type.
             * @enum {string}
             */
            readonly craftType: "sail" | "motor";
            /**
             * @description Design category.
             * @enum {string}
             */
            readonly designCategory: "A" | "B" | "C" | "D";
            /** @description Dynamic load factor. Absent: 3 (the least factor the yardstick allows). */
            readonly dynamicLoadFactor?: number;
            /** @description Length of the hull. */
            readonly lengthHullM?: number;
            /** @description Length of the waterline. */
            readonly lengthWaterlineM: number;
            /** @description Mass, loaded. */
            readonly massLoadedKg: number | string;
            /** @description Place of the panel from aft over the waterline; 1 is the most severe. Absent: 1 (the most severe place). */
            readonly shareOfWaterline?: number;
        };
        readonly CraftInput: {
            /**
             * @description Kind of craft.
             * @enum {string}
             */
            readonly craftType?: "sail" | "motor";
            /**
             * @description Design category.
             * @enum {string}
             */
            readonly designCategory?: "A" | "B" | "C" | "D";
            /** @description Length of the hull. */
            readonly lengthHullM?: number;
            /** @description Length of the waterline. */
            readonly lengthWaterlineM?: number;
            /** @description Loaded mass. */
            readonly massLoadedKg?: number | string;
            /**
             * Format: int32
             * @description Year of building.
             */
            readonly yearBuilt?: number;
        };
        readonly Crew: {
            /** @description The range of days counts the days on which it does not. Absent: 0.8 (judged: a shop of its own comes every day, a yard with other boats takes half as long again, and one owner told of nearly twice what he had planned; state 1 for a crew that does nothing else). */
            readonly attendanceFraction?: number;
            /** @description Hours in a day that go into the job, a head. Absent: 5.6 h (so much of a working day goes into one job on the boat: mean of 24 logged days). */
            readonly hoursPerDay?: number;
            /**
             * @description All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.
             * @enum {string}
             */
            readonly labour?: "mixed" | "owner" | "yard";
            /** @description People at work. Absent: 2 (bedding core and fastening through the deck take two). */
            readonly people?: number;
            /**
             * @description Who does the work. Absent: professional (the hours of the catalogue are for a skilled hand).
             * @enum {string}
             */
            readonly skill?: "owner" | "professional";
            /** @description The day on which work may start. */
            readonly startDate?: string;
            /** @description Working days. */
            readonly workingDays?: readonly ("fri" | "mon" | "sat" | "sun" | "thu" | "tue" | "wed")[];
        };
        readonly CrewInput: {
            /** @description The range of days counts the days on which it does not. Absent: 0.8 (judged: a shop of its own comes every day, a yard with other boats takes half as long again, and one owner told of nearly twice what he had planned; state 1 for a crew that does nothing else). */
            readonly attendanceFraction?: number;
            /** @description Hours in a day that go into the job, a head. Absent: 5.6 h (so much of a working day goes into one job on the boat: mean of 24 logged days). */
            readonly hoursPerDay?: number;
            /**
             * @description All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.
             * @enum {string}
             */
            readonly labour?: "yard" | "owner" | "mixed";
            /**
             * Format: int32
             * @description People at work. Absent: 2 (bedding core and fastening through the deck take two).
             */
            readonly people?: number;
            /**
             * @description Who does the work. Absent: professional (the hours of the catalogue are for a skilled hand).
             * @enum {string}
             */
            readonly skill?: "professional" | "owner";
            /**
             * Format: date
             * @description The day on which work may start.
             */
            readonly startDate?: string;
            /** @description Working days. */
            readonly workingDays?: readonly ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
        };
        readonly CriteriaInput: {
            /** @description Usable share of the compressive strength of a core. Absent: 0.5 (half, as for the other strengths; no published share was found). */
            readonly coreCrushShare?: number;
            /** @description Usable share of a core shear strength; absent: by kind of core. */
            readonly coreShearShare?: number;
            /** @description Usable share of a skin strength. Absent: 0.5 (the small-craft yardstick; class rules take 0.28 to 0.5). */
            readonly skinShare?: number;
            /** @description Short span over deflection. Absent: 100 (a class rule for sandwich decks; the small-craft yardstick stands for about 59). */
            readonly spanOverDeflection?: number;
        };
        readonly CureAndWeather: {
            /** @description When each mix can be worked on. */
            readonly cure: components["schemas"]["CurePlan"];
            /** @description When the weather lets each step be done. */
            readonly weather: components["schemas"]["WeatherPlan"];
        };
        readonly CureMilestones: {
            /**
             * @description Whether the warmth was stated, forecast, or first one and then the other.
             * @enum {string}
             */
            readonly basis: "forecast" | "forecast-then-stated" | "stated";
            /** @description Hours until it is fully hard. */
            readonly fullCureH?: number;
            /** @description Hours until it gels. */
            readonly gelH?: number;
            /** @description What to heed while it cures. */
            readonly note?: string;
            /** @description Hours until a new layer needs sanding first. */
            readonly recoatShutsH?: number;
            /** @description Hours until the pressing may come off. */
            readonly releaseH?: number;
            /** @description Hours until it can be sanded. */
            readonly sandableH?: number;
            /** @description When the last of the resin goes on; only where a forecast is followed. */
            readonly startAt?: string;
            /** @description Step whose mix cures. */
            readonly step: string;
            /** @description Steady as stated, or the mean of the deck until full cure. */
            readonly temperatureC: number;
            /** @description `temperatureC` of CureMilestones in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Steady as stated, or the mean of the deck until full cure. */
                readonly temperatureC?: string;
            };
        };
        readonly CurePlan: {
            /** @description How strongly warmth hastens the cure. */
            readonly activationEnergy: {
                /** @description What the value leans on. */
                readonly basis: string;
                /** @description High end of the spread, in kJ/mol. */
                readonly high: number;
                /** @description Likely value, in kJ/mol. */
                readonly likely: number;
                /** @description Low end of the spread, in kJ/mol. */
                readonly low: number;
            };
            /** @description Figures of the cure that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Warmth of the deck while it cures. */
            readonly deck: {
                /** @description Lowest temperature of the deck. */
                readonly coldestC: number;
                /** @description Mean temperature of the deck. */
                readonly meanC: number;
                /** @description Hours that these three are taken over. */
                readonly overH: number;
                /** @description `meanC`, `coldestC` and `warmestC` of CurePlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Lowest temperature of the deck. */
                    readonly coldestC?: string;
                    /** @description In US units: Mean temperature of the deck. */
                    readonly meanC?: string;
                    /** @description In US units: Highest temperature of the deck. */
                    readonly warmestC?: string;
                };
                /** @description Highest temperature of the deck. */
                readonly warmestC: number;
            };
            /** @description Code of the hardener that cures it. */
            readonly hardener: string;
            /** @description When the mix gels, can be sanded, is hard. */
            readonly milestones: readonly components["schemas"]["Milestone"][];
            /** @description What the crew should heed about the cure. */
            readonly notes: readonly string[];
            /** @description Temperature that the data sheet's times hold for. */
            readonly referenceC: number;
            /** @description Code of the resin that cures. */
            readonly resin: string;
            /** @description Step that the plan is for, when one was named. */
            readonly step?: string;
            /** @description Hours, until full cure or the end, in which the deck is too cold and nothing counts. */
            readonly stoppedH: number;
            /** @description Temperature below which this mix does not cure. */
            readonly stopsBelowC: number;
            /** @description `referenceC` and `stopsBelowC` of CurePlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Temperature that the data sheet's times hold for. */
                readonly referenceC?: string;
                /** @description In US units: Temperature below which this mix does not cure. */
                readonly stopsBelowC?: string;
            };
        };
        readonly CurePlanRequest: {
            /** @description Moisture of the core. */
            readonly coreMoisturePercent?: number;
            /**
             * @description Hardener.
             * @example medium
             */
            readonly hardener: string;
            /**
             * @description Resin.
             * @example resin-epoxy-5to1
             */
            readonly resin: string;
            /**
             * @description Shelter over the work.
             * @enum {string}
             */
            readonly shelter: "shed" | "tent" | "open";
            /** @description RFC 3339 with offset; each milestone then has its moment. */
            readonly startAt?: string;
            /** @description Hour of the day at which the resin is mixed, where no moment is given. Absent: 9 h (resin is mixed in the morning). */
            readonly startHour?: number;
            /** @description Step that is cured. */
            readonly step?: string;
            /** @description Steps that wait for weather; absent: bonding. */
            readonly steps?: readonly components["schemas"]["WeatherStepInput"][];
            /** @description Temperature. */
            readonly temperature: components["schemas"]["CureTemperatureInput"];
            /** @description Warmth of the deck above the air. */
            readonly warmth?: components["schemas"]["DeckWarmthInput"];
        };
        readonly CureTemperatureInput: {
            /** @description Deck by day. */
            readonly dayC?: number | string;
            /** @description Forecast. */
            readonly forecast?: components["schemas"]["ForecastInput"];
            /** @description Deck by night. */
            readonly nightC?: number | string;
            /** @description Steady; or dayC with nightC; or a forecast. */
            readonly temperatureC?: number | string;
        };
        readonly CustomOperationInput: {
            /** @description Codes of operations that come before it. */
            readonly after: readonly string[];
            /** @description Codes of operations that wait for it. */
            readonly before?: readonly string[];
            /**
             * @description Code of the operation.
             * @example deliver-core
             */
            readonly code: string;
            /**
             * @description Weather gate.
             * @enum {string}
             */
            readonly gate?: "none" | "dry-deck" | "resin" | "coating";
            /** @description Man-hours. */
            readonly hours: components["schemas"]["ThreePointInput"];
            /** @description Whether it is a hold point. */
            readonly isHoldPoint?: boolean;
            /** @description Title of the operation. */
            readonly title: string;
            /** @description Hours that pass before its successors may start. */
            readonly waitH?: components["schemas"]["ThreePointInput"];
        };
        /** @description Where to cut, as one decision between opening now and coming back. */
        readonly CutChoice: {
            /**
             * @description Whether the record names the margin or the least expected work chose it.
             * @enum {string}
             */
            readonly chosenBy: "expected-hours" | "record";
            /** @description Bad core that this leaves, as the map expects it. */
            readonly expectedLeftM2: number;
            /** @description What opening nothing would come to. */
            readonly hoursWithoutOpening: number;
            /** @description Hours expected for bad core left behind. */
            readonly leavingHours: number;
            /** @description Hours of the openings, and those of leaving what is left. */
            readonly openingHours: number;
            /** @description Core this likely to be bad, or more, is opened. */
            readonly probability: number;
            /** @description `expectedLeftM2` of CutChoice in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Bad core that this leaves, as the map expects it. */
                readonly expectedLeftM2?: string;
            };
        };
        readonly CutCoreSheet: {
            /** @description Parts of the sheet that cannot be used. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description A sheet that is bought, or a piece that the customer has. */
            readonly isBought: boolean;
            /** @description Name of the sheet on the cutting plan. */
            readonly label: string;
            /** @description Length of the bought sheet. */
            readonly lengthMm: number;
            /** @description Which of the alike sheets, from 1. */
            readonly number: number;
            /** @description The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
            readonly offcuts: readonly components["schemas"]["Offcut"][];
            /** @description Rectangles no narrower than what is worth keeping. */
            readonly offcutsKept: readonly components["schemas"]["Offcut"][];
            /** @description Edge of the sheet. */
            readonly outline: readonly (readonly number[])[];
            /** @description Area of the pieces cut from it. */
            readonly pieceAreaM2: number;
            /** @description Where each piece lies on the sheet. */
            readonly placements: readonly components["schemas"]["Placement"][];
            /** @description Area of the sheet. */
            readonly sheetAreaM2: number;
            /** @description Which kind of stock the sheet is. */
            readonly stockId: string;
            /** @description `lengthMm`, `widthMm`, `sheetAreaM2` and `pieceAreaM2` of CutCoreSheet in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of the bought sheet. */
                readonly lengthMm?: string;
                /** @description In US units: Area of the pieces cut from it. */
                readonly pieceAreaM2?: string;
                /** @description In US units: Area of the sheet. */
                readonly sheetAreaM2?: string;
                /** @description In US units: Width of the bought sheet. */
                readonly widthMm?: string;
            };
            /** @description Where the area of the sheet goes. */
            readonly use: components["schemas"]["SheetUse"];
            /** @description Share of the sheet that becomes pieces. */
            readonly utilisation: number;
            /** @description Width of the bought sheet. */
            readonly widthMm: number;
        };
        readonly CutSheet: {
            /** @description Parts of the sheet that cannot be used. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Which of the alike sheets, from 1. */
            readonly number: number;
            /** @description The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
            readonly offcuts: readonly components["schemas"]["Offcut"][];
            /** @description Edge of the sheet. */
            readonly outline: readonly (readonly number[])[];
            /** @description Area of the pieces cut from it. */
            readonly pieceAreaM2: number;
            /** @description Where each piece lies on the sheet. */
            readonly placements: readonly components["schemas"]["Placement"][];
            /** @description Area of the sheet. */
            readonly sheetAreaM2: number;
            /** @description Which kind of stock the sheet is. */
            readonly stockId: string;
            /** @description `sheetAreaM2` and `pieceAreaM2` of CutSheet in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the pieces cut from it. */
                readonly pieceAreaM2?: string;
                /** @description In US units: Area of the sheet. */
                readonly sheetAreaM2?: string;
            };
            /** @description Share of the sheet that becomes pieces. */
            readonly utilisation: number;
        };
        readonly CuttingPlan: {
            /** @description Layout on a roll, where a roll was asked for. */
            readonly onRoll?: components["schemas"]["StripLayout"];
            /** @description Layout on sheets, where sheets were asked for. */
            readonly onSheets?: components["schemas"]["SheetLayout"];
            /** @description What the answer depends on besides the pieces and the stock; the same settings give the same answer. */
            readonly seed: number;
            /** @description Seconds after which the search is ended, finished or not. */
            readonly timeLimitS: number;
            /** @description Work that the search was given; more may find a better layout. */
            readonly workUnits: number;
        };
        readonly CuttingPlanRequest: {
            /** @description Strip along every edge of the stock that is not used. */
            readonly edgeTrimMm: number | string;
            /** @description Width that the blade takes. */
            readonly kerfMm: number | string;
            /** @description What is to be cut. */
            readonly pieces: readonly components["schemas"]["NestPieceInput"][];
            /** @description A roll that plies come off: x runs along it. */
            readonly roll?: components["schemas"]["RollInput"];
            /**
             * Format: int64
             * @description The same seed gives the same layout. Absent: 1 (any seed will do, as long as it is the same).
             */
            readonly seed?: number;
            /** @description Sheets and offcuts; give these or a roll. */
            readonly stock?: readonly components["schemas"]["StockSheetInput"][];
            /** @description After this time the best layout so far is the answer. Absent: 20 s (nobody waits longer for a drawing). */
            readonly timeLimitS?: number;
            /** @description Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000 (a good layout of a deck's worth of pieces takes a fraction of it). */
            readonly workUnits?: number;
        };
        readonly CyclesInput: {
            /**
             * Format: int32
             * @description Each waits until the one before holds. Absent: 1 (core is bedded in one turn unless its plan says more).
             */
            readonly bedding?: number;
            /**
             * Format: int32
             * @description Cycles of fairing. Absent: 3 (the usual number).
             */
            readonly fair?: number;
            /**
             * Format: int32
             * @description Plies of one session are laid wet on wet. Absent: 1 (plies are laid in one session unless the laminate says more).
             */
            readonly laminating?: number;
            /**
             * Format: int32
             * @description Coats of primer. Absent: 2 (the usual number).
             */
            readonly prime?: number;
            /**
             * Format: int32
             * @description Coats of paint. Absent: 2 (the usual number).
             */
            readonly topcoat?: number;
        };
        /** @description The edge of the panel that a tape is hooked to. */
        readonly Datum: {
            /** @description Point that the tape is hooked on. */
            readonly from: readonly number[];
            /** @description Length of the datum as a check. */
            readonly lengthMm: number;
            /** @description Point that the tape is laid towards. */
            readonly to: readonly number[];
            /** @description `lengthMm` of Datum in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of the datum as a check. */
                readonly lengthMm?: string;
            };
        };
        readonly DatumInput: {
            /** @description Where the value is published. */
            readonly cite: components["schemas"]["CiteInput"];
            /** @description Greatest value seen. */
            readonly high?: number;
            /** @description Least value seen. */
            readonly low?: number;
            /** @description The value in the unit that its field names. */
            readonly value: number;
        };
        readonly DayRange: {
            /** @description Days that one job in ten stays below. */
            readonly p10: number;
            /** @description Days that half of the jobs stay below. */
            readonly p50: number;
            /** @description Days that nine jobs in ten stay below. */
            readonly p90: number;
        };
        /** @description A photograph of the deck, without its picture. */
        readonly DeckPhotograph: {
            /** @description When the photograph was taken in (RFC 3339). */
            readonly addedAt: string;
            /** @description Where it was taken, in the deck plane; absent when nobody said. */
            readonly at?: readonly number[];
            /** @description Words under the photograph in the report. */
            readonly caption: string;
            /** @description 0 towards the bow, 90 to starboard. */
            readonly directionDeg?: number;
            /** @description Height of the kept picture. */
            readonly heightPx: number;
            /** @description Address of the picture. */
            readonly href: string;
            /**
             * @description Form in which the picture is kept.
             * @enum {string}
             */
            readonly mediaType: "image/jpeg";
            /** @description As on the plan. */
            readonly number: number;
            /** @description Width of the kept picture. */
            readonly widthPx: number;
        };
        readonly DeckWarmth: {
            /** @description Lamp, blanket or heater. Absent: 0 K (no heater was named). */
            readonly heaterK?: number;
            /** @description Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent. */
            readonly isUnderSky?: boolean;
            /** @description How much the midday sun warms the deck above the air. Absent: 0 K (shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on). */
            readonly sunK?: number;
            /** @description A closed tent over the deck. Absent: 0 K (no tent was named). */
            readonly tentK?: number;
        };
        readonly DeckWarmthInput: {
            /** @description Lamp, blanket or heater. Absent: 0 K (no heater was named). */
            readonly heaterK?: number;
            /** @description Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent. */
            readonly isUnderSky?: boolean;
            /** @description How much the midday sun warms the deck above the air. Absent: 0 K (shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on). */
            readonly sunK?: number;
            /** @description A closed tent over the deck. Absent: 0 K (no tent was named). */
            readonly tentK?: number;
        };
        /**
         * @description What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,
         *     and the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
         *
         *     Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
         */
        readonly DefectRecord: {
            /** @description The cause. */
            readonly cause?: components["schemas"]["CauseRecord"];
            /** @description Conditions of work. */
            readonly conditions?: components["schemas"]["Conditions"];
            /** @description The old core. */
            readonly core: components["schemas"]["OldCore"];
            /** @description The craft. */
            readonly craft?: components["schemas"]["Craft"];
            /** @description The crew. */
            readonly crew?: components["schemas"]["Crew"];
            /**
             * @description How well the extent is known. Absent: sounded-and-metered (a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range).
             * @enum {string}
             */
            readonly evidence?: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
            /** @description Findings in the words of the surveyor. */
            readonly findings?: readonly components["schemas"]["StatedFinding"][];
            /** @description Fittings through the deck. */
            readonly fittings?: readonly components["schemas"]["FittingRecord"][];
            /** @description The inner skin. */
            readonly innerSkin: components["schemas"]["SkinRecord"];
            /** @description The inspection. */
            readonly inspection?: components["schemas"]["Inspection"];
            /** @description Language of documents. */
            readonly locale?: string;
            /** @description How it is repaired. */
            readonly method?: components["schemas"]["MethodChoice"];
            /** @description The event. */
            readonly occurrence?: components["schemas"]["Occurrence"];
            /** @description The outer skin. */
            readonly outerSkin: components["schemas"]["SkinRecord"];
            /** @description The panel of deck: its edge, what holds it and what lies under it. */
            readonly panel: components["schemas"]["PanelRecord"];
            /** @description Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
            readonly parties?: components["schemas"]["Parties"];
            /** @description Pricing. */
            readonly pricing?: components["schemas"]["PricingChoice"];
            /** @description The caller's own reference. */
            readonly reference?: string;
            /**
             * @description New areas turn up where nobody listened. Absent: part (only the panel in question is taken to have been sounded).
             * @enum {string}
             */
            readonly soundedDeck?: "part" | "whole";
            /** @description Readings of hammer, meter and plugs. */
            readonly survey?: components["schemas"]["Survey"];
            /** @description Title. */
            readonly title?: string;
            /** @description The vessel. */
            readonly vessel?: components["schemas"]["Vessel"];
            /** @description Zones of bad core. */
            readonly zones?: readonly components["schemas"]["ZoneRecord"][];
        };
        readonly DefectRecordInput: {
            /** @description The cause. */
            readonly cause?: components["schemas"]["CauseInput"];
            /** @description Conditions of work. */
            readonly conditions?: components["schemas"]["ConditionsInput"];
            /** @description The old core. */
            readonly core: components["schemas"]["OldCoreInput"];
            /** @description The craft. */
            readonly craft?: components["schemas"]["CraftInput"];
            /** @description The crew. */
            readonly crew?: components["schemas"]["CrewInput"];
            /**
             * @description How well the extent is known. Absent: sounded-and-metered (a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range).
             * @enum {string}
             */
            readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
            /** @description Findings in the words of the surveyor. */
            readonly findings?: readonly components["schemas"]["FindingInput"][];
            /** @description Fittings through the deck. */
            readonly fittings?: readonly components["schemas"]["FittingInput"][];
            /** @description The inner skin. */
            readonly innerSkin: components["schemas"]["SkinInput"];
            /** @description The inspection. */
            readonly inspection?: components["schemas"]["InspectionInput"];
            /** @description Language of documents. */
            readonly locale?: string;
            /** @description How it is repaired. */
            readonly method?: components["schemas"]["MethodInput"];
            /** @description The event. */
            readonly occurrence?: components["schemas"]["OccurrenceInput"];
            /** @description The outer skin. */
            readonly outerSkin: components["schemas"]["SkinInput"];
            /** @description The panel of deck: its edge, what holds it and what lies under it. */
            readonly panel: components["schemas"]["PanelInput"];
            /** @description Data about people; `DELETE /v1/estimates/{id}/parties` erases it. */
            readonly parties?: components["schemas"]["PartiesInput"];
            /** @description Pricing. */
            readonly pricing?: components["schemas"]["PricingInput"];
            /** @description The caller's own reference. */
            readonly reference?: string;
            /**
             * @description New areas turn up where nobody listened. Absent: part (only the panel in question is taken to have been sounded).
             * @enum {string}
             */
            readonly soundedDeck?: "whole" | "part";
            /** @description Readings of hammer, meter and plugs. */
            readonly survey?: components["schemas"]["SurveyInput"];
            /** @description Title. */
            readonly title?: string;
            /** @description The vessel. */
            readonly vessel?: components["schemas"]["VesselInput"];
            /** @description Zones of bad core. */
            readonly zones?: readonly components["schemas"]["ZoneInput"][];
        };
        readonly DepreciationInput: {
            /** @description Age of the part. */
            readonly ageYears: number;
            /** @description Straight-line life of the part, where no percentage is given. */
            readonly lifeYears?: number;
            /**
             * @description Percentage taken off the price of the part, 0 to 100.
             * @example 20
             */
            readonly percent?: string;
        };
        /** @description Wear of a part, for insurers who pay its worth and not its price. */
        readonly DepreciationTerms: {
            /** @description Age of the old deck that new parts replace. */
            readonly ageYears: number;
            /** @description Straight-line life; the percentage is worked out from it when none is given. */
            readonly lifeYears?: number;
            /** @description Exact decimal text, 0 to 100. */
            readonly percent?: string;
        };
        /** @description The division that was taken, the others looked at, and the reason in words. */
        readonly DivisionByCost: {
            /** @description Place of the cheapest in `options`. */
            readonly chosen: number;
            /** @description Divisions that were compared. */
            readonly options: readonly components["schemas"]["DivisionOption"][];
            /** @description Why it was chosen. */
            readonly words: string;
        };
        readonly DivisionChoice: {
            /** @description Expected for air shut in under large pieces. */
            readonly airH: number;
            /** @description Area that no piece may exceed with this division. */
            readonly largestPieceM2: number;
            /** @description Pieces of this division. */
            readonly pieces: number;
            /** @description `largestPieceM2` of DivisionChoice in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area that no piece may exceed with this division. */
                readonly largestPieceM2?: string;
            };
            /** @description To cut, fit and bed. */
            readonly workH: number;
        };
        /** @description One way to divide the core, with what its sheets cost and its hours. */
        readonly DivisionOption: {
            /** @description To cut, fit and bed, and to mend hollows. */
            readonly hours: number;
            /** @description Pieces that this division has. */
            readonly pieces: number;
            /** @description What the sheets for this division cost. */
            readonly sheetCost: number;
        };
        readonly DrawingList: {
            /** @description Drawings of the estimate. */
            readonly items: readonly {
                /** @description Address of the drawing, in the form that Accept asks for. */
                readonly href: string;
                /** @description Name of the drawing in its address. */
                readonly name: string;
            }[];
        };
        readonly DrawnOpeningInput: {
            /** @description The edge to which core is taken out, where it is not the same all round. */
            readonly cavity?: readonly (readonly number[])[];
            /**
             * @description A, B, C ...; labels of pieces begin with it.
             * @example A
             */
            readonly label: string;
            /** @description What is cut out of the skin. */
            readonly outline: readonly (readonly number[])[];
            /** @description How far core is taken out under the skin all round. Absent: 0 mm (core is taken out as far as the skin is cut). */
            readonly undercutMm?: number | string;
        };
        readonly Driver: {
            /** @description Total with this driver at its P10 and P90 and everything else at its median. */
            readonly atP10: components["schemas"]["MoneyJson"];
            /** @description Price when this alone is at its high end. */
            readonly atP90: components["schemas"]["MoneyJson"];
            /** @description Code of what moves the price. */
            readonly code: string;
            /** @description Price from its low to its high end. */
            readonly swing: components["schemas"]["MoneyJson"];
            /** @description Name of what moves the price. */
            readonly title: string;
            /** @description Of the variance, first order. */
            readonly varianceShare: number;
        };
        readonly DriverAmountsInput: {
            /** @description Absent: all that is opened. */
            readonly "bared-m2"?: number;
            /** @description Bows. */
            readonly bow?: number;
            /** @description Absent: all that is bared. */
            readonly "cored-m2"?: number;
            /** @description Covering bonded to the deck that comes off. */
            readonly "covering-m2"?: number;
            /** @description Crack that is ground out and closed. */
            readonly "crack-m"?: number;
            /** @description Length of cut. */
            readonly "cut-m"?: number;
            /** @description Days on the job. */
            readonly day?: number;
            /** @description Absent: all that is bared. */
            readonly "dried-m2"?: number;
            /** @description Holes drilled to dry the core. */
            readonly "dry-hole"?: number;
            /** @description Readings while the core dries. */
            readonly "dry-reading"?: number;
            /** @description Set-ups of drying. */
            readonly "dry-set-up"?: number;
            /** @description Ply area beyond two plies. */
            readonly "extra-ply-m2"?: number;
            /** @description Faired area times cycles. */
            readonly "faired-m2-cycle"?: number;
            /** @description Finished area. */
            readonly "finish-m2"?: number;
            /** @description Of the hours to set fittings again, those with somebody below. */
            readonly "fitting-helped-h"?: number;
            /** @description Hours of the cards of fittings to take them off. */
            readonly "fitting-off-h"?: number;
            /** @description Hours of the cards of fittings to set them again. */
            readonly "fitting-on-h"?: number;
            /** @description Core that still holds. */
            readonly "held-core-m2"?: number;
            /** @description Skin that still holds. */
            readonly "held-skin-m2"?: number;
            /** @description Holes through the deck. */
            readonly hole?: number;
            /** @description Absent: one where the skin is injected under, none elsewhere. */
            readonly "injected-place"?: number;
            /** @description Holes drilled to inject resin under the skin. */
            readonly "injection-hole"?: number;
            /** @description Inserts. */
            readonly insert?: number;
            /** @description One job unless it is given. */
            readonly job?: number;
            /** @description Joint of hull and deck that is closed. */
            readonly "joint-m"?: number;
            /** @description Sound core that stays in the opening. */
            readonly "kept-core-m2"?: number;
            /** @description Area of the new skin, two plies. */
            readonly "laminate-m2"?: number;
            /** @description Laminate that cures before the next plies are laid on it. */
            readonly "laminate-pause-m2"?: number;
            /** @description Frames whose bare core is dug back and sealed. */
            readonly "leak-frame"?: number;
            /** @description Searches for the way in of the water. */
            readonly "leak-hunt"?: number;
            /** @description Chainplate slots filled, to be cut anew. */
            readonly "leak-slot"?: number;
            /** @description Lining that is glued. */
            readonly "lining-glued-m2"?: number;
            /** @description Lining in panels. */
            readonly "lining-panel-m2"?: number;
            /** @description Lining that is zipped open. */
            readonly "lining-zipped-m2"?: number;
            /** @description Edge under which core is taken out. */
            readonly "lip-m"?: number;
            /** @description Rotten core. */
            readonly "loose-core-m2"?: number;
            /** @description Of the opening, skin that has let go; absent, with the other three: by the condition. */
            readonly "loose-skin-m2"?: number;
            /** @description Area of non-skid. */
            readonly "nonskid-m2"?: number;
            /** @description Where the old finish is sanded and skimmed; absent: all that is finished. */
            readonly "old-finish-m2"?: number;
            /** @description Opened area. */
            readonly "opened-m2"?: number;
            /** @description Glued planks that come off. */
            readonly "overlay-glued-m2"?: number;
            /** @description Planks that are laid again. */
            readonly "overlay-relay-m2"?: number;
            /** @description Screwed planks that come off. */
            readonly "overlay-screwed-m2"?: number;
            /** @description Backing plates. */
            readonly plate?: number;
            /** @description Primed area times coats. */
            readonly "primed-m2-coat"?: number;
            /** @description Length of rail. */
            readonly "rail-m"?: number;
            /** @description None where the core lies bare, as at a hatch whose frame is off. */
            readonly "slot-m"?: number;
            /** @description What is filled solid. */
            readonly "solid-l"?: number;
            /** @description Length of strip. */
            readonly "strip-m"?: number;
            /** @description Lining and supports below. */
            readonly "support-m2-below"?: number;
            /** @description Length of taper. */
            readonly "taper-m"?: number;
            /** @description Painted area times coats. */
            readonly "topcoat-m2-coat"?: number;
            /** @description Length of upstand. */
            readonly "upstand-m"?: number;
        };
        readonly EachEdgeInput: {
            /**
             * @description Edge at the far end of x.
             * @enum {string}
             */
            readonly xEnd: "simply-supported" | "clamped" | "free";
            /**
             * @description The edge at x = 0.
             * @enum {string}
             */
            readonly xStart: "simply-supported" | "clamped" | "free";
            /**
             * @description Edge at the far end of y.
             * @enum {string}
             */
            readonly yEnd: "simply-supported" | "clamped" | "free";
            /**
             * @description The edge at y = 0.
             * @enum {string}
             */
            readonly yStart: "simply-supported" | "clamped" | "free";
        };
        readonly Edition: {
            /** @description Code of the edition. */
            readonly code: string;
            /** @description SHA-256 of the content of a published edition. */
            readonly contentHash?: string;
            /** @description When the draft was made (RFC 3339). */
            readonly createdAt: string;
            /** @description RFC 3339 instant from which it counts; absent when that was its publication. */
            readonly effectiveAt?: string;
            /** @description True for the catalogue shipped with the program, which everybody reads and nobody changes. */
            readonly isShipped: boolean;
            /** @description What the edition was made for. */
            readonly note: string;
            /** @description When it took effect (RFC 3339); absent on a draft. */
            readonly publishedAt?: string;
            /**
             * @description `scheduled`: published, and not yet in effect.
             * @enum {string}
             */
            readonly state: "draft" | "published" | "scheduled";
        };
        /** @description What one edition holds otherwise than another. */
        readonly EditionComparison: {
            /** @description Code of the edition that was asked about. */
            readonly after: string;
            /** @description Code of the edition compared with. */
            readonly before: string;
            /** @description Entries that differ. */
            readonly changes: readonly components["schemas"]["EntryChange"][];
            /** @description Whether the two hold the same. */
            readonly isSame: boolean;
        };
        readonly EditionList: {
            /** @description Code of the edition that estimates are made with now. */
            readonly current: string;
            /** @description Editions of the organisation, newest first. */
            readonly items: readonly components["schemas"]["Edition"][];
        };
        readonly EditionNamed: {
            /** @description Edition that the event tells of. */
            readonly code: string;
            /** @description Path of the edition. */
            readonly href: string;
        };
        /** @description An edition of the catalogue was published: it is current, or will be from `effectiveAt`. */
        readonly EditionPublished: {
            /** @description The edition and when it counts; what it names is fetched from its address. */
            readonly data: components["schemas"]["PublicationNamed"];
            /** @description Id of the event of this publication, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the edition was published (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description An edition of the catalogue took effect. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "edition.published";
        };
        /** @description What estimates that are kept would come to with an edition, beside what they come to with another. Nothing is stored. */
        readonly EditionTrial: {
            /** @description Code of the edition it is compared with. */
            readonly against: string;
            /** @description Code of the edition that was tried. */
            readonly edition: string;
            /** @description Version of the program that worked both out. */
            readonly engineVersion: string;
            /** @description Stored estimates, each as the draft would price it. */
            readonly estimates: readonly components["schemas"]["TriedEstimate"][];
            /** @description Estimates that come to the same in every line and figure. */
            readonly sameCount: number;
            /** @description Estimates that both editions could answer, summed for each currency. */
            readonly totals: readonly components["schemas"]["TrialTotal"][];
        };
        readonly EditionTrialInput: {
            /** @description Edition to compare with; the current one when absent. */
            readonly against?: string;
            /** @description Ids of stored estimates to try the edition on; the newest ones when absent. */
            readonly estimates?: readonly string[];
            /**
             * Format: int32
             * @description How many of the newest estimates, each in its last revision; 10 when absent. Not together with `estimates`.
             */
            readonly newest?: number;
        };
        /** @description A publication was taken back before it counted. */
        readonly EditionWithdrawn: {
            /** @description The edition that is a draft again; what it names is fetched from its address. */
            readonly data: components["schemas"]["EditionNamed"];
            /** @description Id of the event of this withdrawal, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the publication was taken back (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description A publication was taken back. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "edition.withdrawn";
        };
        /** @description Moduli of a homogeneous plate that would answer the same. */
        readonly EngineeringConstants: {
            /** @description Poisson's ratio under load athwart. */
            readonly poissonAcross: number;
            /** @description Poisson's ratio under load fore and aft. */
            readonly poissonAlong: number;
            /** @description Shear strain over strain under load athwart. */
            readonly shearCouplingAcross: number;
            /** @description Shear strain per along (across) strain under a pull along (across): 0 for a balanced laminate. */
            readonly shearCouplingAlong: number;
            /** @description Shear modulus in the plane. */
            readonly shearModulusMPa: number;
            /** @description `youngAlongMPa`, `youngAcrossMPa` and `shearModulusMPa` of EngineeringConstants in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Shear modulus in the plane. */
                readonly shearModulusMPa?: string;
                /** @description In US units: Young's modulus athwart. */
                readonly youngAcrossMPa?: string;
                /** @description In US units: Young's modulus fore and aft. */
                readonly youngAlongMPa?: string;
            };
            /** @description Young's modulus athwart. */
            readonly youngAcrossMPa: number;
            /** @description Young's modulus fore and aft. */
            readonly youngAlongMPa: number;
        };
        /** @description Typed by the caller; `at` is the JSON Pointer of the field. */
        readonly Entered: {
            /** @description JSON Pointer to the answer in the request. */
            readonly at: string;
            /**
             * @description Says that somebody entered the figure. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "entered";
        };
        /** @description How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip. */
        readonly Entry: {
            /** @description Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]. */
            readonly path: readonly (readonly number[])[];
            /**
             * @description Whether the piece drops in from above or is slid under the lip.
             * @enum {string}
             */
            readonly way: "drops" | "slides";
        };
        readonly EntryChange: {
            /**
             * @description Whether the entry was added, removed or changed.
             * @enum {string}
             */
            readonly change: "added" | "changed" | "removed";
            /** @description Code of the entry. */
            readonly code: string;
            /** @description How many of its fields differ; `fields` may list fewer. */
            readonly fieldCount: number;
            /** @description The first 200 fields that differ, of an entry that is in both. */
            readonly fields: readonly components["schemas"]["EntryField"][];
            /**
             * @description What kind of entry differs.
             * @enum {string}
             */
            readonly subject: "labour_rates" | "material" | "price_list" | "source";
        };
        readonly EntryField: {
            /** @description Absent where nothing is left. */
            readonly after?: unknown;
            /** @description JSON pointer below the entry; packs of a price list by their SKU. */
            readonly at: string;
            /** @description Absent where there was nothing. */
            readonly before?: unknown;
        };
        /**
         * @description The document a surveyor attaches: everything in JSON-safe values, SI units in the names.
         *     Immutable once made. `derivations` answers "why?" and is stored beside the document.
         */
        readonly Estimate: {
            /** @description All that was taken because nobody stated it. */
            readonly assumptions: readonly components["schemas"]["EstimateAssumption"][];
            /** @description Every source named in the document, by the key it is named with. */
            readonly bibliography: readonly components["schemas"]["BibliographyEntry"][];
            /** @description What can hurt somebody. */
            readonly cautions: readonly components["schemas"]["Caution"][];
            /** @description Every check of the repair in one list. */
            readonly checks: readonly components["schemas"]["Check"][];
            /** @description What it comes to in words: the page that is read first. */
            readonly conclusion: components["schemas"]["ConclusionSection"];
            /** @description Absent where the method opens nothing; `leftOut` says why. */
            readonly core?: components["schemas"]["CoreSection"];
            /** @description One card for each fitting that comes off. */
            readonly hardware: readonly components["schemas"]["HardwareCard"][];
            /** @description New skin; absent where none is laid. */
            readonly laminate?: components["schemas"]["LaminateSection"];
            /** @description How the water came in, and whether this plan stops it. */
            readonly leak: components["schemas"]["LeakSection"];
            /** @description Sections that this method has no use for, each with the reason. */
            readonly leftOut: readonly components["schemas"]["LeftOutSection"][];
            /** @description What the estimate does not say. */
            readonly limits: readonly string[];
            /** @description Lines of the price. */
            readonly lines: readonly components["schemas"]["EstimateLine"][];
            /** @description Every way to mend this deck, which one is planned, and why. */
            readonly methods: components["schemas"]["MethodsSection"];
            /** @description Comparison with the deck before; absent where it could not be made. */
            readonly panel?: components["schemas"]["PanelSection"];
            /** @description Mixing, cure, pressing and calendar. */
            readonly process: components["schemas"]["ProcessSection"];
            /** @description What the estimate was made with. */
            readonly provenance: components["schemas"]["ProvenanceStamp"];
            /** @description Reference that the caller gave. */
            readonly reference?: string;
            /** @description What is opened, kept and left alone. */
            readonly scope: components["schemas"]["Scope"];
            /** @description Sums of the parts of the price. */
            readonly sections: readonly components["schemas"]["CostSection"][];
            /** @description The figures that a reader asks for first. */
            readonly summary: components["schemas"]["Summary"];
            /** @description Title of the estimated job. */
            readonly title: string;
            /** @description From the lines to the total. */
            readonly totals: components["schemas"]["Totals"];
        };
        readonly EstimateAssumption: {
            /** @description JSON Pointer, in the record or in that endpoint's request, of the field that would replace the default. */
            readonly at: string;
            /** @description Why it takes that. */
            readonly because: string;
            /** @description What was not stated. */
            readonly meaning: string;
            /** @description `record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for. */
            readonly of: string;
            /** @description What it leans on. */
            readonly source: string;
            /** @description What the estimate takes, as text. */
            readonly value: string;
        };
        /** @description A basket for stored estimates: priced in one edition of the catalogue, from today's stock, with what has changed since each was made. */
        readonly EstimateBasket: {
            /** @description What each estimate of a common order bears of the total. */
            readonly byEstimate: readonly {
                /** @description Its share of the order, by what it needs. */
                readonly amount: components["schemas"]["MoneyJson"];
                /** @description Estimate that bears the amount. */
                readonly estimate: string;
            }[];
            /** @description Each need beside the packs that cover it. */
            readonly coverage: readonly components["schemas"]["Coverage"][];
            /** @description Currency of every amount of the basket (ISO 4217). */
            readonly currency: string;
            /** @description For every estimate that was made with another edition, in the currency of the list. */
            readonly drift: readonly components["schemas"]["EstimateDrift"][];
            /** @description Packs that were left out before the choice, each with the reason. */
            readonly excluded: readonly components["schemas"]["Excluded"][];
            /** @description Whether every need is covered; `missing` lists those that are not. */
            readonly isComplete: boolean;
            /** @description Whether the prices of the list are made up for demonstration. */
            readonly isInvented: boolean;
            /** @description What remains of the bought packs when the job is done. */
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            /** @description What is bought, a line for each kind of pack. */
            readonly lines: readonly components["schemas"]["BasketLine"][];
            /** @description Resins beside the hardeners bought to cure them. */
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            /** @description Needs that no pack of the list covers. */
            readonly missing: readonly components["schemas"]["CostingMissing"][];
            /** @description The lines gathered into one order for each supplier. */
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            /** @description Edition whose prices it is made with. */
            readonly pricedAt: string;
            /** @description Code of the price list whose packs were chosen from. */
            readonly priceList: string;
            /** @description Whether the prices of the list hold tax already. */
            readonly pricesIncludeTax: boolean;
            /** @description Whether no cheaper basket exists, or how far one could be. */
            readonly proof: components["schemas"]["Proven"] | components["schemas"]["Gap"];
            /** @description The next cheaper basket from other suppliers, where it was looked for. */
            readonly secondBest?: components["schemas"]["SecondBest"];
            /** @description RFC 3339 instant of the oldest count of stock in the list; absent when the stock of the edition counts. */
            readonly stockCountedAt?: string;
            /** @description Needs that something other than what was planned covers. */
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            /** @description Goods, cut fees, deliveries and surcharges of all orders together. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description What the buyer should know before ordering. */
            readonly warnings: readonly string[];
        };
        /** @description The calendar of an estimate by itself. */
        readonly EstimateCalendar: {
            /** @description Tasks, waits and milestones. */
            readonly calendar: components["schemas"]["CalendarSection"];
            /** @description The work, the waits and the holds of the day that was asked for, or what comes next. */
            readonly day?: {
                /** @description Day that was asked about (ISO 8601). */
                readonly date: string;
                /** @description What is done and waited for on that day. */
                readonly items: readonly components["schemas"]["TodayItem"][];
            };
            /** @description Estimate whose calendar it is. */
            readonly id: string;
            /** @description Revision that the calendar belongs to. */
            readonly revision: components["schemas"]["RevisionMark"];
            /** @description Only with a forecast. */
            readonly weather?: components["schemas"]["WeatherSection"];
        };
        readonly EstimateCorePiece: {
            /** @description Area of the cut piece. */
            readonly areaM2: number;
            /** @description What is bedded in one go; counted from 1 in each layer of an opening. */
            readonly bay: number;
            /** @description Place in the order of bedding, from 1. */
            readonly beddingOrder: number;
            /** @description Where the piece is drilled for air, [xMm, yMm]. */
            readonly bleedHoles: readonly (readonly number[])[];
            /**
             * @description Whether the piece is plain or scored.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description Only for core that has a grain in its plane. */
            readonly grainDeg?: number;
            /** @description What is cut out of the piece. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Slid under the skin that stays; the others drop in. */
            readonly isUnderLip: boolean;
            /** @description Name written on the piece. */
            readonly label: string;
            /** @description 1 lies on the inner skin. */
            readonly layer: number;
            /** @description Opening that it is bedded in. */
            readonly opening: string;
            /** @description In deck coordinates. */
            readonly outline: readonly (readonly number[])[];
            /** @description Thickness of the piece. */
            readonly thicknessMm: number;
            /** @description `thicknessMm` and `areaM2` of EstimateCorePiece in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the cut piece. */
                readonly areaM2?: string;
                /** @description In US units: Thickness of the piece. */
                readonly thicknessMm?: string;
            };
        };
        /** @description An estimate was made. */
        readonly EstimateCreated: {
            /** @description The estimate that was made; what it names is fetched from its address. */
            readonly data: components["schemas"]["EstimateNamed"];
            /** @description Id of the event of this making of an estimate, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the estimate was made (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description An estimate was made. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "estimate.created";
        };
        /** @description How the prices of a list differ from those that an estimate was reckoned with. */
        readonly EstimateDrift: {
            /** @description Today's price less the price then. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Estimate whose prices were compared. */
            readonly estimate: string;
            /** @description Packs that are not on the list any more, each once. */
            readonly gone: readonly string[];
            /** @description Lines whose packs cost something else today. */
            readonly lines: readonly components["schemas"]["LineDrift"][];
            /** @description What its packs cost today. */
            readonly now: components["schemas"]["MoneyJson"];
            /** @description Of the lines that can still be bought as they were reckoned. */
            readonly then: components["schemas"]["MoneyJson"];
        };
        /** @description Something measured that does not fit, with its numbers. */
        readonly EstimateFinding: {
            /** @description Stable code of the finding. */
            readonly code: string;
            /** @description Numbers and words that the finding names. */
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /**
             * @description Whether it stops the repair, warns, or is only worth knowing.
             * @enum {string}
             */
            readonly severity: "note" | "stop" | "warn";
            /** @description The finding in a sentence for the reader. */
            readonly text: string;
        };
        readonly EstimateLine: {
            /** @description Quantity times price, rounded once. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Least and most of the amount at the recorded extent. */
            readonly amountRange: {
                /** @description Amount with everything high. */
                readonly high: components["schemas"]["MoneyJson"];
                /** @description Amount with everything low. */
                readonly low: components["schemas"]["MoneyJson"];
            };
            /**
             * @description Cause that the line is put down to.
             * @enum {string}
             */
            readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            /** @description Code of the line, which asks why. */
            readonly code: string;
            /** @description Whether wear of the old part may be taken off. */
            readonly depreciable: boolean;
            /** @description Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax. */
            readonly depreciation?: components["schemas"]["LineDepreciation"];
            /** @description Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
            readonly goods?: {
                /**
                 * @description Whether the customer pays whole packs or what is used.
                 * @enum {string}
                 */
                readonly billedBy: "use" | "wear" | "whole-packs";
                /** @description What the yard pays for the packs. */
                readonly bought: components["schemas"]["MoneyJson"];
            };
            /** @description Of labour: least, most likely, mean and most; the mean is priced. */
            readonly hours?: {
                /** @description Hours when it goes badly. */
                readonly high: number;
                /** @description Hours that are most likely. */
                readonly likely: number;
                /** @description Hours when all goes well. */
                readonly low: number;
                /** @description Hours on average. */
                readonly mean: number;
            };
            /** @description True where packs were priced and `unitPrice` is their price over their content. */
            readonly isAveragePrice: boolean;
            /**
             * @description What sort of cost it is.
             * @enum {string}
             */
            readonly kind: "charge" | "consumable" | "disposal" | "hire" | "labour" | "material";
            /** @description Code of the material; absent for work. */
            readonly material?: string;
            /** @description Quantity in the finished repair. */
            readonly netQuantity: number;
            /** @description Whole packs to be bought; empty for services. The amount is what is charged of their count times their price. */
            readonly packs: readonly {
                /** @description Packs to buy. */
                readonly count: number;
                /** @description Name of the pack to buy. */
                readonly name: string;
                /** @description Price of one of them. */
                readonly price: components["schemas"]["MoneyJson"];
                /** @description Number of the pack to buy. */
                readonly sku: string;
                /** @description Who sells the pack. */
                readonly supplier: string;
            }[];
            /**
             * @description Goods or work.
             * @enum {string}
             */
            readonly partOrLabour: "labour" | "part";
            /** @description What was multiplied, as an exact decimal. */
            readonly pricedQuantity: string;
            /** @description Quantity that is bought or paid. */
            readonly purchaseQuantity: number;
            /** @description Least and most that may be needed, waste counted; absent for services. */
            readonly range?: {
                /** @description Quantity at the high end. */
                readonly high: number;
                /** @description Quantity at the low end. */
                readonly low: number;
            };
            /** @description Section that the line stands in. */
            readonly section: string;
            /** @description Tax group that the line falls in. */
            readonly taxGroup: string;
            /** @description What the line is for. */
            readonly title: string;
            /** @description Unit of the quantities. */
            readonly unit: string;
            /** @description Price of a unit. */
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description `netQuantity`, `wasteQuantity` and `purchaseQuantity` of EstimateLine in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Quantity in the finished repair. */
                readonly netQuantity?: string;
                /** @description In US units: Quantity that is bought or paid. */
                readonly purchaseQuantity?: string;
                /** @description In US units: Quantity lost on the way. */
                readonly wasteQuantity?: string;
            };
            /** @description Quantity lost on the way. */
            readonly wasteQuantity: number;
        };
        readonly EstimateMoneyRange: {
            /** @description Amount that one job in ten stays below. */
            readonly p10: components["schemas"]["MoneyJson"];
            /** @description Amount that half of the jobs stay below. */
            readonly p50: components["schemas"]["MoneyJson"];
            /** @description Amount that eight jobs in ten stay below. */
            readonly p80: components["schemas"]["MoneyJson"];
            /** @description Amount that nine jobs in ten stay below. */
            readonly p90: components["schemas"]["MoneyJson"];
        };
        readonly EstimateNamed: {
            /** @description Code of the edition it was made with. */
            readonly edition: string;
            /** @description Path of the estimate. */
            readonly href: string;
            /** @description Id of the estimate the event tells of. */
            readonly id: string;
            /** @description Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
            readonly publishableKeyId?: string;
            /** @description The caller's own reference, when it gave one. */
            readonly reference?: string;
        };
        readonly EstimatePage: {
            /** @description Estimates, newest first. */
            readonly items: readonly components["schemas"]["EstimateSummary"][];
            /** @description Give it as `cursor` for older estimates; absent on the last page. */
            readonly nextCursor?: string;
        };
        /** @description What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept. */
        readonly EstimatePreview: {
            /** @description What the full estimate would stop at or warn of so far. */
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            /** @description In words: what the estimate works out and this leaves out, or takes a shorter way to. */
            readonly leftOut: readonly string[];
            /** @description Openings with their saw lines. */
            readonly openings: readonly components["schemas"]["PreviewedOpening"][];
            /** @description How the repaired deck compares, as far as looked at. */
            readonly panel: components["schemas"]["PreviewPanel"];
            /** @description What the job may cost, as a first range. */
            readonly price: components["schemas"]["PreviewPrice"];
            /** @description The figures that can be had at once. */
            readonly summary: components["schemas"]["PreviewSummary"];
            /** @description Title of the job previewed. */
            readonly title: string;
            /** @description Damaged zones as drawn or mapped. */
            readonly zones: readonly {
                /** @description Area of the zone. */
                readonly areaM2: number;
                /** @description What the core in the zone is like. */
                readonly condition: string;
                /** @description Id of the zone. */
                readonly id: string;
                /** @description Edge of the zone. */
                readonly outline: readonly (readonly number[])[];
                /** @description `areaM2` of EstimatePreview in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Area of the zone. */
                    readonly areaM2?: string;
                };
            }[];
        };
        /** @description A revision of an estimate was made. */
        readonly EstimateRevised: {
            /** @description The revision and what it revises; what it names is fetched from its address. */
            readonly data: components["schemas"]["RevisionNamed"];
            /** @description Id of the event of this revision, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the revision was made (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description An estimate was revised. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "estimate.revised";
        };
        /** @description An estimate in a list. */
        readonly EstimateSummary: {
            /** @description When the estimate was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Edition of the catalogue that priced it. */
            readonly edition: string;
            /** @description Version of the program that estimated it. */
            readonly engineVersion: string;
            /** @description Id of the estimate. */
            readonly id: string;
            /** @description Expected hours of work. */
            readonly labourH: number;
            /** @description The caller's own word for the job. */
            readonly reference?: string;
            /** @description Which revision of the job the estimate is. */
            readonly revision: components["schemas"]["RevisionMark"];
            /** @description Title of the job. */
            readonly title: string;
            /** @description Price with tax, at the likely quantities. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description Price that one job in ten stays below. */
            readonly totalP10: components["schemas"]["MoneyJson"];
            /** @description Price that nine jobs in ten stay below. */
            readonly totalP90: components["schemas"]["MoneyJson"];
            /** @description How the repair compares with the deck that it replaces. */
            readonly verdict: string;
        };
        /** @description A page of what happened, oldest first. */
        readonly EventPage: {
            /** @description Events in the order they happened. */
            readonly items: readonly (components["schemas"]["EstimateCreated"] | components["schemas"]["EstimateRevised"] | components["schemas"]["EditionPublished"] | components["schemas"]["EditionWithdrawn"] | components["schemas"]["OperationDone"] | components["schemas"]["OrderMade"])[];
            /** @description Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new. */
            readonly nextCursor?: string;
        };
        readonly Excluded: {
            /**
             * @description Why not: its supplier was not chosen, it would not keep until the work, or it may not go by air.
             * @enum {string}
             */
            readonly reason: "does-not-keep" | "hazardous-by-air" | "out-of-stock" | "supplier-not-chosen";
            /** @description Pack that was not considered. */
            readonly sku: string;
        };
        /** @description How far the damage goes, and how sure that is. */
        readonly Extent: {
            /** @description What was taken about readings and decay. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Edges within which the core is bad with a given chance. */
            readonly contours: readonly components["schemas"]["ProbabilityContour"][];
            /** @description How the cut was decided; absent for drawn zones. */
            readonly cut?: components["schemas"]["CutChoice"];
            /** @description Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone. */
            readonly damagedAreaM2: components["schemas"]["Quantiles"];
            /** @description How good the evidence is, and what follows from that. */
            readonly evidence: {
                /** @description Why it has this grade. */
                readonly because: string;
                /**
                 * @description Grade of the evidence.
                 * @enum {string}
                 */
                readonly grade: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
                /** @description How the found area grows over the recorded one at this grade. */
                readonly law: components["schemas"]["GrowthLaw"];
                /** @description Growth at P10, P50 and P90. */
                readonly multiplier: components["schemas"]["ThreePoint"];
            };
            /** @description Areas with their derivations. */
            readonly figures: components["schemas"]["ExtentFigures"];
            /** @description What about the evidence deserves attention. */
            readonly findings: readonly components["schemas"]["ExtentFinding"][];
            /**
             * @description Whether readings or only drawn zones say where the core is bad.
             * @enum {string}
             */
            readonly from: "drawn-zones" | "readings";
            /** @description `damagedAreaM2` over `mappedAreaM2`; absent when nothing is mapped. */
            readonly growth?: components["schemas"]["Quantiles"];
            /** @description Chance of bad core at the middle of each cell of the panel; absent for drawn zones. */
            readonly map?: components["schemas"]["ProbabilityMap"];
            /** @description Area of the zones. */
            readonly mappedAreaM2: number;
            /** @description Area of bad core as far as the readings leave it open; absent for drawn zones. */
            readonly mapSpreadM2?: components["schemas"]["Quantiles"];
            /** @description Where to tap or plug next, and whether it is worth it; absent for drawn zones, unless it is asked for. */
            readonly nextReadings?: components["schemas"]["NextReadings"];
            /** @description `mappedAreaM2`, `mapSpreadM2` and `damagedAreaM2` of Extent in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone. */
                readonly damagedAreaM2?: {
                    /** @description In US units: Value that one case in ten stays below. */
                    readonly p10: string;
                    /** @description In US units: Value that half of the cases stay below. */
                    readonly p50: string;
                    /** @description In US units: Value that nine cases in ten stay below. */
                    readonly p90: string;
                };
                /** @description In US units: Area of the zones. */
                readonly mappedAreaM2?: string;
                /** @description In US units: Area of bad core as far as the readings leave it open; absent for drawn zones. */
                readonly mapSpreadM2?: {
                    /** @description In US units: Value that one case in ten stays below. */
                    readonly p10: string;
                    /** @description In US units: Value that half of the cases stay below. */
                    readonly p50: string;
                    /** @description In US units: Value that nine cases in ten stay below. */
                    readonly p90: string;
                };
            };
            /** @description Bad core to be opened, largest first; ready to be the zones of `planOpenings`. */
            readonly zones: readonly components["schemas"]["ExtentZone"][];
        };
        readonly ExtentAndOpenings: {
            /** @description Where the core is likely bad. */
            readonly extent: components["schemas"]["Extent"];
            /** @description Absent when nothing on the panel is worth opening; a finding of the extent says so. */
            readonly plan?: components["schemas"]["OpeningPlan"];
        };
        readonly ExtentFactorInput: {
            /** @description Most that may be found, over what is recorded. */
            readonly high: number;
            /** @description What will likely be found, over what is recorded. */
            readonly likely: number;
            /** @description Least that may be found, over what is recorded. */
            readonly low: number;
        };
        readonly ExtentFigures: {
            /** @description Bad area to be expected. */
            readonly likelyArea: components["schemas"]["Figure"];
            /** @description Area within the chosen edge. */
            readonly mappedArea: components["schemas"]["Figure"];
        };
        /** @description Something measured that does not fit or that must be known, with its numbers; never an exception. */
        readonly ExtentFinding: {
            /**
             * @description What was found about the extent.
             * @enum {string}
             */
            readonly code: "bad-reading-outside-zone" | "corner-too-tight" | "cut-crosses-support" | "cut-on-support" | "depth-margin-short" | "depth-not-established" | "depth-over-usual" | "evidence-overstated" | "fitting-on-cut" | "growth-capped" | "highly-loaded-fitting" | "leak-elsewhere" | "measured-overrules" | "narrow-bridge" | "no-plug-in-zone" | "no-plug-outside-zone" | "no-room-for-opening" | "no-room-for-taper" | "nothing-to-open" | "piece-too-large" | "plug-contradicts" | "plugs-disagree" | "readings-all-alike" | "readings-contradict" | "readings-enough" | "readings-in-line" | "readings-outside" | "readings-sparse" | "readings-unreliable" | "readings-worth-taking" | "skin-varies" | "sound-reading-in-zone" | "undercut-too-deep" | "zone-clipped" | "zones-smoothed";
            /** @description Numbers that the finding about the extent names. */
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /**
             * @description `stop`: do not cut before this is settled; `warn`: changes the work; `note`: good to know.
             * @enum {string}
             */
            readonly severity: "note" | "stop" | "warn";
            /** @description What was found, in a sentence. */
            readonly text: string;
        };
        readonly ExtentZone: {
            /** @description Area of the zone without its islands. */
            readonly areaM2: number;
            /**
             * @description Whether somebody drew the edge or the map gave it.
             * @enum {string}
             */
            readonly boundary: "drawn" | "mapped";
            /** @description Sound islands within the zone. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Id of the damaged zone. */
            readonly id: string;
            /** @description Edge of the damaged zone. */
            readonly outline: readonly (readonly number[])[];
            /** @description `areaM2` of ExtentZone in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the zone without its islands. */
                readonly areaM2?: string;
            };
        };
        readonly FabricLayerInput: {
            /** @description Direction of its fibres against the roll. */
            readonly angleDeg: number;
            /** @description Glass in the layer, per square metre. */
            readonly arealMassGPerM2: number;
            /**
             * @description How the fibres of the layer lie.
             * @enum {string}
             */
            readonly layup: "mat" | "woven" | "unidirectional";
        };
        /** @description A number that can answer "why?": its value, its unit, and where it came from, down to the leaves. */
        readonly Figure: {
            /** @description What the number is, in words. */
            readonly meaning: string;
            /** @description Where it comes from: entered, catalogue, assumed or computed. */
            readonly origin: components["schemas"]["Entered"] | components["schemas"]["FromCatalogue"] | components["schemas"]["Assumed"] | components["schemas"]["Computed"];
            /** @description Unit that the number is in; `1` for a share or ratio. */
            readonly unit: string;
            /** @description `value` of Figure in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: The number, in `unit`. */
                readonly value?: string;
            };
            /** @description The number, in `unit`. */
            readonly value: number;
        };
        readonly FigureChange: {
            /** @description The figure in the later estimate. */
            readonly after: number;
            /** @description The figure in the earlier estimate. */
            readonly before: number;
            /** @description Which figure of the summary changed. */
            readonly code: string;
            /** @description Name of that figure. */
            readonly name: string;
            /** @description Unit of both values. */
            readonly unit: string;
            /** @description `before` and `after` of FigureChange in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: The figure in the later estimate. */
                readonly after?: string;
                /** @description In US units: The figure in the earlier estimate. */
                readonly before?: string;
            };
        };
        readonly FillerInput: {
            /** @description Density as it lies in the tub. */
            readonly bulkDensityGPerCm3: components["schemas"]["DatumInput"];
            /** @description Stable code of the filler, unique in the edition. */
            readonly code: string;
            /** @description Hazard statements (GHS) of the filler, such as H226. */
            readonly hazards?: readonly string[];
            /**
             * @description Says that the material is a filler. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "filler";
            /** @description Generic specification of the filler in trade words. */
            readonly name: string;
            /** @description Filler to 100 parts of mixed resin by mass, for its main use. */
            readonly partsPerHundred: components["schemas"]["DatumInput"];
            /** @description Density of the particles. */
            readonly trueDensityGPerCm3: components["schemas"]["DatumInput"];
            /** @description What mixes with it are good for. */
            readonly uses: readonly ("bedding" | "filleting" | "potting" | "fairing" | "thickening")[];
        };
        readonly FindingInput: {
            /** @description A zone or a fitting of the record, or any other label for a finding of its own. */
            readonly about: string;
            /**
             * @description Class of the finding.
             * @enum {string}
             */
            readonly class?: "before-use" | "next-opportunity" | "monitor";
            /** @description What is recommended. */
            readonly recommendation?: string;
            /** @description Restriction of use until then. */
            readonly restriction?: string;
            /** @description The finding in words. */
            readonly wording?: string;
        };
        readonly FittingInput: {
            /**
             * @description Where it stands.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /** @description Largest size of its base on deck. */
            readonly baseMm?: number | string;
            /** @description Length of its bolts. */
            readonly boltLengthMm?: number | string;
            /** @description Size of its bolts. */
            readonly boltMm?: number | string;
            /** @description Diameter of its holes. */
            readonly holeDiameterMm?: number | string;
            /**
             * Format: int32
             * @description Holes through the deck.
             */
            readonly holes?: number;
            /** @description Name of the fitting. */
            readonly id: string;
            /** @description Side of the solid that goes under it. */
            readonly insertMm?: number | string;
            /** @description Whether it leaks. */
            readonly isLeaking?: boolean;
            /**
             * @description Kind of fitting.
             * @enum {string}
             */
            readonly kind: "stanchion" | "cleat" | "winch" | "windlass" | "chainplate" | "mast-step" | "track" | "hatch" | "fill" | "vent" | "pad-eye" | "other";
            /** @description Of one pair of hands, by whoever knows how it sits; absent, those of its kind. */
            readonly offH?: number;
            /** @description Base cleaned, bedded and bolted; a second person comes on top. */
            readonly onH?: number;
            /** @description Side of its backing plate; not smaller than the base. */
            readonly plateMm?: number | string;
            /** @description Thickness of its backing plate. */
            readonly plateThicknessMm?: number | string;
            /** @description From the side of a hole to the first dry, clean core, as far as somebody dug. */
            readonly wetReachMm?: number | string;
        };
        /** @description What the job does to one fitting, and why it is in the scope. */
        readonly FittingInScope: {
            /** @description Middle of the fitting, [xMm, yMm]. */
            readonly at: readonly number[];
            /** @description Why the work is needed. */
            readonly because: string;
            /** @description From the edge of its base to the opening; 0 inside. */
            readonly distanceMm: number;
            /** @description Holes that the fitting has. */
            readonly holes: number;
            /** @description Id of the fitting. */
            readonly id: string;
            /** @description Whether it carries loads that a crew depends on. */
            readonly isHighlyLoaded: boolean;
            /**
             * @description Kind of fitting.
             * @enum {string}
             */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            /** @description Label of the nearest opening. */
            readonly opening: string;
            /** @description `distanceMm` of FittingInScope in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: From the edge of its base to the opening; 0 inside. */
                readonly distanceMm?: string;
            };
            /**
             * @description Whether it stands in an opening or beside one.
             * @enum {string}
             */
            readonly where: "inside" | "near";
            /** @description What is done to it. */
            readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
        };
        readonly FittingRecord: {
            /** @description Where it stands. */
            readonly at: readonly number[];
            /** @description Largest size of its base on deck. */
            readonly baseMm?: number;
            /** @description Length of its bolts. */
            readonly boltLengthMm?: number;
            /** @description Size of its bolts. */
            readonly boltMm?: number;
            /** @description Diameter of its holes. */
            readonly holeDiameterMm?: number;
            /** @description Holes through the deck. */
            readonly holes?: number;
            /** @description Name of the fitting. */
            readonly id: string;
            /** @description Side of the solid that goes under it. */
            readonly insertMm?: number;
            /** @description Whether it leaks. */
            readonly isLeaking?: boolean;
            /**
             * @description Kind of fitting.
             * @enum {string}
             */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            /** @description Of one pair of hands, by whoever knows how it sits; absent, those of its kind. */
            readonly offH?: number;
            /** @description Base cleaned, bedded and bolted; a second person comes on top. */
            readonly onH?: number;
            /** @description Side of its backing plate; not smaller than the base. */
            readonly plateMm?: number;
            /** @description Thickness of its backing plate. */
            readonly plateThicknessMm?: number;
            /** @description From the side of a hole to the first dry, clean core, as far as somebody dug. */
            readonly wetReachMm?: number;
        };
        readonly FittingScope: {
            /** @description Where its middle is, [xMm, yMm]. */
            readonly at: readonly number[];
            /** @description How many holes it has. */
            readonly holes: number;
            /** @description Id of the fitting in the record. */
            readonly id: string;
            /** @description Whether lives or the rig hang on it. */
            readonly isHighlyLoaded: boolean;
            /**
             * @description What the fitting is.
             * @enum {string}
             */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            /**
             * @description In an opening, or near one.
             * @enum {string}
             */
            readonly where: "inside" | "near";
            /** @description What the crew does with it. */
            readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
        };
        readonly FlushInput: {
            /** @description How far it may lie low. */
            readonly lowUpToMm: number | string;
            /** @description How far it may stand proud. */
            readonly proudUpToMm: number | string;
        };
        readonly Forecast: {
            /** @description Hour after hour, without a gap. */
            readonly hours: readonly components["schemas"]["ForecastHour"][];
            /** @description Zone of the place; with it every offset is checked. */
            readonly timeZone?: string;
        };
        readonly ForecastHour: {
            /** @description RFC 3339 with offset: the start of the hour. */
            readonly at: string;
            /** @description Share of the sky under cloud. Absent: 0 % (a clear sky is the coldest at night). */
            readonly cloudPercent?: number;
            /** @description Rain. */
            readonly rainMm?: number;
            /** @description Relative humidity of the air in this hour. */
            readonly relativeHumidityPercent: number;
            /** @description Temperature. */
            readonly temperatureC: number;
            /** @description Wind. */
            readonly windMPerS?: number;
        };
        readonly ForecastHourInput: {
            /**
             * @description RFC 3339 with offset: the start of the hour.
             * @example 2026-05-04T08:00:00+01:00
             */
            readonly at: string;
            /** @description Share of the sky under cloud. Absent: 0 % (a clear sky is the coldest at night). */
            readonly cloudPercent?: number;
            /** @description Rain. */
            readonly rainMm?: number | string;
            /** @description Relative humidity of the air in this hour. */
            readonly relativeHumidityPercent: number;
            /** @description Temperature. */
            readonly temperatureC: number | string;
            /** @description Wind. */
            readonly windMPerS?: number | string;
        };
        readonly ForecastInput: {
            /** @description Hour after hour, without a gap. */
            readonly hours: readonly components["schemas"]["ForecastHourInput"][];
            /**
             * @description Zone of the place; with it every offset is checked.
             * @example Europe/Lisbon
             */
            readonly timeZone?: string;
        };
        readonly FromCatalogue: {
            /** @description Where the catalogue has the value from. */
            readonly cite: components["schemas"]["Cite"];
            /** @description Field of that item. */
            readonly field: string;
            /** @description High end of the value's spread. */
            readonly high?: number;
            /** @description Code of the material or list it belongs to. */
            readonly item: string;
            /**
             * @description Says that the figure stands in the catalogue. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "catalogue";
            /** @description Low end of the value's spread. */
            readonly low?: number;
        };
        /** @description The search was ended before. */
        readonly Gap: {
            /** @description No basket can cost less than this. */
            readonly bound?: components["schemas"]["MoneyJson"];
            /** @description How far the basket may be above the cheapest, as a share of its price. */
            readonly gapFraction?: number;
            /**
             * @description Says that a cheaper basket may exist. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "gap";
        };
        /** @description Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs. */
        readonly GoodsSums: {
            /** @description Why the two differ. */
            readonly basis: string;
            /** @description What the customer pays for goods. */
            readonly billed: components["schemas"]["MoneyJson"];
            /**
             * @description How goods are billed.
             * @enum {string}
             */
            readonly billing: "as-bought" | "as-used";
            /** @description What the yard pays for goods. */
            readonly bought: components["schemas"]["MoneyJson"];
        };
        readonly GradedFinding: {
            /** @description A zone, a fitting, or the surveyor's own label. */
            readonly about: string;
            /** @description Area that the finding is about. */
            readonly areaM2: number;
            /**
             * @description Class that the report gives the finding.
             * @enum {string}
             */
            readonly class: "before-use" | "monitor" | "next-opportunity";
            /** @description Why the rules give this class. */
            readonly classBecause: string;
            /**
             * @description Class that the rules would give it.
             * @enum {string}
             */
            readonly classByService: "before-use" | "monitor" | "next-opportunity";
            /** @description Condition of the core at the finding. */
            readonly condition: string;
            /** @description Fittings at the finding. */
            readonly fittings: readonly {
                /** @description Id of a fitting at the finding. */
                readonly id: string;
                /** @description Whether water comes in at it. */
                readonly isLeaking: boolean;
                /**
                 * @description What fitting it is.
                 * @enum {string}
                 */
                readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            }[];
            /** @description From the aft edge of the panel. */
            readonly fromAftMm?: readonly number[];
            /** @description What to do about it. */
            readonly recommendation: components["schemas"]["Worded"];
            /** @description What not to do until then. */
            readonly restriction: components["schemas"]["Worded"];
            /** @description `areaM2` and `fromAftMm` of GradedFinding in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area that the finding is about. */
                readonly areaM2?: string;
                /** @description In US units: From the aft edge of the panel. */
                readonly fromAftMm?: readonly string[];
            };
            /** @description What was found. */
            readonly wording: components["schemas"]["Worded"];
        };
        /**
         * @description Found area over recorded area, as a distribution. With `falseAlarmShare` nearly nothing is found, evenly spread up to
         *     `falseAlarmUpTo`; else the factor is lognormal. Both are cut off at `most`, where the panel ends.
         */
        readonly GrowthLaw: {
            /** @description Least ratio of found to recorded area in those jobs. */
            readonly falseAlarmFrom: number;
            /** @description Share of jobs where less is found than was recorded. */
            readonly falseAlarmShare: number;
            /** @description Greatest ratio of found to recorded area in those jobs. */
            readonly falseAlarmUpTo: number;
            /** @description Median ratio in all other jobs. */
            readonly median: number;
            /** @description Greatest ratio that is reckoned with. */
            readonly most: number;
            /** @description An organisation's own found over recorded, rising; they weigh n/(n + 15). */
            readonly pairs: readonly number[];
            /** @description Scatter of the logarithm of the ratio. */
            readonly sigma: number;
            /** @description Deviation of the logarithm below the median, where it is another than above. */
            readonly sigmaBelow?: number;
        };
        readonly HardenerChoiceInput: {
            /** @description Hardener that cures it. */
            readonly hardener: string;
            /** @description Resin of the order. */
            readonly resin: string;
        };
        readonly HardenerInput: {
            /** @description Code of the hardener, unique in its system. */
            readonly code: string;
            /** @description Density of the liquid hardener. */
            readonly densityGPerCm3: components["schemas"]["DatumInput"];
            /** @description Hours at 25 degC to full hardness. */
            readonly fullCureH: components["schemas"]["DatumInput"];
            /** @description Hours at 25 degC until it gels. */
            readonly gelH: components["schemas"]["DatumInput"];
            /** @description Hazard statements of the hardener, such as H314. */
            readonly hazards?: readonly string[];
            /** @description Warmest deck that it can be worked on. */
            readonly highestTemperatureC: components["schemas"]["DatumInput"];
            /** @description Coldest deck that it cures on. */
            readonly lowestTemperatureC: components["schemas"]["DatumInput"];
            /** @description Name that the crew knows the hardener by. */
            readonly name: string;
            /** @description Hardener to 100 parts of resin by mass. */
            readonly partsByMass: components["schemas"]["DatumInput"];
            /** @description Hardener to 100 parts of resin by volume. */
            readonly partsByVolume: components["schemas"]["DatumInput"];
            /** @description Pot lives from the data sheet, each for a mass and a warmth. */
            readonly potLives: readonly components["schemas"]["PotLifeInput"][];
            /** @description Hours at 25 degC within which the next layer bonds without sanding. */
            readonly recoatShutsH: components["schemas"]["DatumInput"];
            /** @description Hours at 25 degC until clamps may come off. */
            readonly releaseH: components["schemas"]["DatumInput"];
            /** @description Hours at 25 degC until it sands well. */
            readonly sandableH: components["schemas"]["DatumInput"];
            /**
             * @description How fast it cures, against the others of the system.
             * @enum {string}
             */
            readonly speed: "fast" | "medium" | "slow" | "extra-slow";
        };
        readonly HardenerVerdict: {
            /** @description Code of the hardener judged. */
            readonly code: string;
            /** @description Name of the hardener judged. */
            readonly name: string;
            /** @description What speaks for or against it. */
            readonly reasons: readonly string[];
            /**
             * @description Whether it was chosen, would do, or is refused in this warmth.
             * @enum {string}
             */
            readonly verdict: "chosen" | "refused" | "workable";
        };
        /** @description What one fitting takes, from the record where it says so and from its kind where it does not. */
        readonly HardwareCard: {
            /** @description What was taken about the fitting. */
            readonly assumed: readonly string[];
            /** @description Size of its base on deck. */
            readonly baseMm: number;
            /** @description Length that the fasteners need in the new deck. */
            readonly fastenerLengthMm: number;
            /** @description Diameter of its fasteners. */
            readonly fastenerMm: number;
            /** @description Fasteners of the fitting. */
            readonly fasteners: number;
            /** @description Fitting that the card is for. */
            readonly id: string;
            /** @description Solid insert under the fitting; absent when none is needed. */
            readonly insert?: {
                /** @description Length of the insert. */
                readonly lengthMm: number;
                /** @description What the insert is made of. */
                readonly material: string;
                /** @description Thickness of the insert. */
                readonly thicknessMm: number;
                /** @description `lengthMm`, `widthMm` and `thicknessMm` of HardwareCard in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the insert. */
                    readonly lengthMm?: string;
                    /** @description In US units: Thickness of the insert. */
                    readonly thicknessMm?: string;
                    /** @description In US units: Width of the insert. */
                    readonly widthMm?: string;
                };
                /** @description Width of the insert. */
                readonly widthMm: number;
            };
            /** @description Kind of the fitting on the card. */
            readonly kind: string;
            /** @description Whether somebody must help from below. */
            readonly needsSecondPerson: boolean;
            /** @description What else to know about the fitting. */
            readonly note?: string;
            /** @description Hours to take it off, as a spread. */
            readonly offH: components["schemas"]["Range"];
            /** @description Hours to set it again, as a spread. */
            readonly onH: components["schemas"]["Range"];
            /** @description Plate under the deck; absent when none is needed. */
            readonly plate?: {
                /** @description Length of the plate. */
                readonly lengthMm: number;
                /** @description What the plate is made of. */
                readonly material: string;
                /** @description Rule that its size follows. */
                readonly rule: string;
                /** @description Thickness of the plate. */
                readonly thicknessMm: number;
                /** @description `lengthMm`, `widthMm` and `thicknessMm` of HardwareCard in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the plate. */
                    readonly lengthMm?: string;
                    /** @description In US units: Thickness of the plate. */
                    readonly thicknessMm?: string;
                    /** @description In US units: Width of the plate. */
                    readonly widthMm?: string;
                };
                /** @description Width of the plate. */
                readonly widthMm: number;
            };
            /** @description Potting mix for all its holes. */
            readonly plugMl: number;
            /** @description Diameter of the potted hole. */
            readonly plugMm: number;
            /** @description Pours that a hole is filled in. */
            readonly pours: number;
            /** @description Who else must look at it, and why. */
            readonly referral?: string;
            /** @description What it is bedded in. */
            readonly sealant: {
                /** @description Kind of sealant. */
                readonly kind: string;
                /** @description How much sealant. */
                readonly ml: number;
            };
            /** @description Where the card's rules come from. */
            readonly source: string;
            /** @description How to tighten it. */
            readonly tightening: string;
            /** @description `fastenerMm`, `fastenerLengthMm`, `plugMm` and 2 more of HardwareCard in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Size of its base on deck. */
                readonly baseMm?: string;
                /** @description In US units: Length that the fasteners need in the new deck. */
                readonly fastenerLengthMm?: string;
                /** @description In US units: Diameter of its fasteners. */
                readonly fastenerMm?: string;
                /** @description In US units: Potting mix for all its holes. */
                readonly plugMl?: string;
                /** @description In US units: Diameter of the potted hole. */
                readonly plugMm?: string;
            };
        };
        readonly HistogramBar: {
            /** @description Draws that fell in the bar. */
            readonly count: number;
            /** @description Low edge of the bar. */
            readonly from: number;
            /** @description High edge of the bar. */
            readonly to: number;
        };
        /** @description What was done to a thing, newest first. */
        readonly History: {
            /** @description Changes, newest first. */
            readonly items: readonly components["schemas"]["HistoryEntry"][];
        };
        readonly HistoryEntry: {
            /** @description What was done to it, such as `created`, `changed` or `removed`. */
            readonly action: string;
            /** @description The thing after the change; absent where it was removed. */
            readonly after?: unknown;
            /** @description When it was done (RFC 3339). */
            readonly at: string;
            /** @description The thing before the change; absent where it was new. */
            readonly before?: unknown;
            /** @description Key that did it; absent where the service itself did. */
            readonly keyId?: string;
            /** @description Whose key it was, as the key is called. */
            readonly keyName?: string;
            /** @description Request that did it, as in its `X-Request-Id`. */
            readonly requestId?: string;
        };
        readonly ICalendarInput: {
            /** @description RFC 3339: when this export is made. */
            readonly stampAt: string;
            /**
             * @description Domain part of every UID.
             * @example yard.example
             */
            readonly uidDomain: string;
            /** @description Begins every UID, such as the id of the estimate. */
            readonly uidPrefix: string;
            /** @description Every task as an event, besides the milestones. */
            readonly withTasks: boolean;
        };
        /** @description What it is worth to open the deck and measure before the price is agreed. */
        readonly InformationValue: {
            /**
             * @description Expected gain from being able to say no: a repair that turns out dearer than it is worth is not done.
             *     Present when the worth of the repair is known.
             */
            readonly decisionValue?: components["schemas"]["MoneyJson"];
            /** @description Gain from saying no, less the price of stage 0. */
            readonly decisionValueNet?: components["schemas"]["MoneyJson"];
            /** @description What need not be set aside any more. */
            readonly reserveFreed: components["schemas"]["MoneyJson"];
            /** @description Money set aside above the mean so that it suffices in 8 of 10 cases, as things stand. */
            readonly reserveNow: components["schemas"]["MoneyJson"];
            /** @description The same, on average, once the extent is known. */
            readonly reserveThen: components["schemas"]["MoneyJson"];
            /** @description How likely the repair turns out dearer than it is worth. */
            readonly shareAboveWorth?: number;
            /** @description Price of opening up and mapping; absent when it is not priced. */
            readonly stageZeroCost?: components["schemas"]["MoneyJson"];
        };
        readonly InnerSkinCheck: {
            /** @description Sag that still leaves a fair deck. */
            readonly allowedSagMm: number;
            /** @description Stress that the inner skin may have. */
            readonly allowedStressMPa: number;
            /** @description Pressure and weight on the inner skin together. */
            readonly loadKPa: number;
            /** @description Props from below that the pressing needs. */
            readonly props: {
                /** @description Props in all. */
                readonly count?: number;
                /** @description Lines that the props stand in. */
                readonly lines?: number;
                /** @description Whether the inner skin must be propped. */
                readonly needed: boolean;
                /** @description Greatest distance between lines of props. */
                readonly spacingMm?: number;
                /** @description Bay for which that was worked out; one as wide has at least one line. */
                readonly spanMm?: number;
                /** @description `spacingMm` and `spanMm` of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Greatest distance between lines of props. */
                    readonly spacingMm?: string;
                    /** @description In US units: Bay for which that was worked out; one as wide has at least one line. */
                    readonly spanMm?: string;
                };
                /** @description Why props are or are not needed. */
                readonly why: string;
            };
            /** @description How far the inner skin sags under it. */
            readonly sagMm: number;
            /** @description Bending stress in the inner skin. */
            readonly stressMPa: number;
            /** @description `loadKPa`, `sagMm`, `allowedSagMm` and 2 more of InnerSkinCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Sag that still leaves a fair deck. */
                readonly allowedSagMm?: string;
                /** @description In US units: Stress that the inner skin may have. */
                readonly allowedStressMPa?: string;
                /** @description In US units: Pressure and weight on the inner skin together. */
                readonly loadKPa?: string;
                /** @description In US units: How far the inner skin sags under it. */
                readonly sagMm?: string;
                /** @description In US units: Bending stress in the inner skin. */
                readonly stressMPa?: string;
            };
            /**
             * @description Whether the inner skin bears the pressing without props.
             * @enum {string}
             */
            readonly verdict: "fails" | "passes";
        };
        readonly Inspection: {
            /** @description Weather, light, what lay on deck: whatever bears on the readings. */
            readonly conditions?: string;
            /** @description Hammer, and kind and scale of the moisture meter. */
            readonly instruments?: string;
            /**
             * @description Whether she lay afloat or ashore when inspected.
             * @enum {string}
             */
            readonly lies?: "afloat" | "ashore";
            /** @description What was not inspected, in the words of the surveyor. */
            readonly notInspected?: string;
            /** @description Day of the inspection. */
            readonly on?: string;
            /** @description Place of the inspection. */
            readonly place?: string;
        };
        readonly InspectionInput: {
            /** @description Weather, light, what lay on deck: whatever bears on the readings. */
            readonly conditions?: string;
            /** @description Hammer, and kind and scale of the moisture meter. */
            readonly instruments?: string;
            /**
             * @description Whether she lay afloat or ashore when inspected.
             * @enum {string}
             */
            readonly lies?: "afloat" | "ashore";
            /** @description What was not inspected, in the words of the surveyor. */
            readonly notInspected?: string;
            /**
             * Format: date
             * @description Day of the inspection.
             */
            readonly on?: string;
            /** @description Place of the inspection. */
            readonly place?: string;
        };
        /** @description Three sums with tax, and what of the first an insurer might pay. */
        readonly InsurerSplit: {
            /** @description Part that the stated event caused. */
            readonly attributable: components["schemas"]["MoneyJson"];
            /** @description How the split was made. */
            readonly basis: string;
            /** @description Own share of the insured. */
            readonly deductible: components["schemas"]["MoneyJson"];
            /** @description Part that makes the boat better than it was. */
            readonly improvement: components["schemas"]["MoneyJson"];
            /** @description What remains to be paid by the insurer. */
            readonly payable: components["schemas"]["MoneyJson"];
            /** @description Part that was there before. */
            readonly prior: components["schemas"]["MoneyJson"];
            /** @description Wear taken off. */
            readonly wear: components["schemas"]["MoneyJson"];
        };
        readonly JobCalendar: {
            /** @description What was taken about crew and days. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Length of the job in days, as a spread. */
            readonly calendarDays: components["schemas"]["DayRange"];
            /** @description Codes of tasks that the end depends on. */
            readonly criticalChain: readonly string[];
            /** @description When the job is done, as a spread. */
            readonly finish: {
                /** @description Day that one simulated job in ten ends by. */
                readonly early: string;
                /** @description Day that nine simulated jobs in ten end by. */
                readonly late: string;
                /** @description Day that half of the simulated jobs end by. */
                readonly likely: string;
            };
            /** @description RFC 5545, when it was asked for. */
            readonly iCalendar?: string;
            /** @description Hours of all tasks, as three points. */
            readonly labourH: components["schemas"]["ThreePoint"];
            /** @description Milestones of the plan. */
            readonly milestones: readonly components["schemas"]["CalendarMilestone"][];
            /** @description What the planner should know. */
            readonly notes: readonly string[];
            /** @description Length of the plan as drawn. */
            readonly planned: {
                /** @description Days from first to last in the plan. */
                readonly calendarDays: number;
                /** @description Days with work in the plan. */
                readonly workingDays: number;
            };
            /** @description Of the one walk that the tasks show, by mean hours and waits, without chance. */
            readonly plannedFinish: string;
            /** @description How the spread was found. */
            readonly simulation: {
                /** @description How hours were drawn between their three points. */
                readonly distribution: string;
                /** @description Jobs that were simulated. */
                readonly runs: number;
                /** @description Seed; the same seed gives the same spread. */
                readonly seed: number;
            };
            /** @description Day that the plan starts on (ISO 8601). */
            readonly startDate: string;
            /** @description Planned tasks in order of their start. */
            readonly tasks: readonly components["schemas"]["PlannedTask"][];
            /** @description IANA time zone of the plan's days. */
            readonly timeZone: string;
            /** @description What happens on the day asked about. */
            readonly today?: readonly components["schemas"]["TodayItem"][];
            /** @description Days on which the crew works. */
            readonly workingDays: components["schemas"]["DayRange"];
        };
        /** @description Why two openings became one, with the numbers that decided. */
        readonly Join: {
            /** @description Width of skin that would stay between them. */
            readonly bridgeMm: number;
            /** @description Work of two. */
            readonly hoursApart: number;
            /** @description Work of one opening. */
            readonly hoursTogether: number;
            /** @description Width that such a bridge needs. */
            readonly neededBridgeMm: number;
            /** @description `bridgeMm` and `neededBridgeMm` of Join in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width of skin that would stay between them. */
                readonly bridgeMm?: string;
                /** @description In US units: Width that such a bridge needs. */
                readonly neededBridgeMm?: string;
            };
            /**
             * @description Why two openings became one.
             * @enum {string}
             */
            readonly why: "bridge-too-narrow" | "cheaper-together" | "overlap";
        };
        readonly JointInput: {
            /** @description Allowable peel of the bond. */
            readonly allowablePeelMPa?: number;
            /** @description Allowable shear of the bond. */
            readonly allowableShearMPa: number;
            /** @description Stress in the skin across the cut. */
            readonly stressMPa: number;
        };
        readonly Key: {
            /** @description When the key was made (RFC 3339). */
            readonly createdAt: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            /** @description Id of the key; not the key itself. */
            readonly id: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            /** @description What the key is used for; stands in histories. */
            readonly name: string;
            /** @description Organisation the key belongs to. */
            readonly organisationId: string;
            /** @description The first characters, by which a person recognises the key. */
            readonly prefix: string;
            /** @description The key in whose place this one was made. */
            readonly renewsId?: string;
            /** @description When it stopped counting (RFC 3339); absent while it counts. */
            readonly revokedAt?: string;
            /** @description What its holder may do; see the table of roles. */
            readonly roles: readonly ("auditor" | "catalogue-admin" | "chandler" | "integrator" | "organisation-admin" | "platform-operator" | "surveyor")[];
            /** @description What an integrator may do. */
            readonly scopes: readonly ("audit:read" | "calculate" | "catalogue:read" | "catalogue:write" | "estimates:read" | "estimates:write" | "events:read" | "letterhead:read" | "orders:read" | "pages:write" | "prices:write" | "webhooks:read" | "webhooks:write")[];
        };
        readonly KeyList: {
            /** @description Keys of the organisation, in the order they were made. */
            readonly items: readonly components["schemas"]["Key"][];
            /** @description Give it as `cursor` for more keys; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly KnownPlyInput: {
            /** @description Code of the fabric that the ply is of, in the catalogue. */
            readonly material: string;
        };
        readonly LabourRatesInput: {
            /** @description What the yard asks besides hours. */
            readonly charges: readonly components["schemas"]["YardChargeInput"][];
            /** @description Where the rates come from. */
            readonly cite?: components["schemas"]["CiteInput"];
            /** @description Code of the rates, unique in the edition. */
            readonly code: string;
            /**
             * @description Currency of all rates and charges (ISO 4217).
             * @enum {string}
             */
            readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
            /** @description True for rates of an invented scenario. */
            readonly invented: boolean;
            /** @description Name that estimates show the rates by. */
            readonly name: string;
            /** @description Overhead on the direct cost, as decimal text. */
            readonly overheadPercent: string;
            /** @description Price of an hour by skill. */
            readonly perHour: components["schemas"]["RatePerHourInput"];
            /** @description Profit on cost with overhead, as decimal text. */
            readonly profitPercent: string;
            /**
             * @description posted: what a yard charges, overhead and profit inside, so that both percentages are 0; wage: what it pays.
             * @enum {string}
             */
            readonly rateBasis: "posted" | "wage";
            /** @description Where the rates hold. */
            readonly region: string;
            /** @description Taxes that lines can fall under. */
            readonly taxGroups: readonly components["schemas"]["TaxGroupInput"][];
            /**
             * Format: date
             * @description First day that the rates hold (ISO 8601).
             */
            readonly validFrom: string;
            /**
             * Format: date
             * @description Last day that the rates hold (ISO 8601).
             */
            readonly validTo: string;
        };
        readonly LaidOutPly: {
            /** @description Area of the ply. */
            readonly areaM2: components["schemas"]["Figure"];
            /** @description How far its edge lies outside the opening. */
            readonly beyondOpeningMm: number;
            /** @description Glass in this ply. */
            readonly glassKg: components["schemas"]["Figure"];
            /** @description Code of the fabric to cut. */
            readonly material: string;
            /** @description Name of the fabric to cut. */
            readonly name: string;
            /** @description In the order of laying, from 1. */
            readonly order: number;
            /** @description Edge to cut the ply to. */
            readonly outline: readonly components["schemas"]["Polygon"][];
            /** @description Area that lies double where pieces meet. */
            readonly overlapAreaM2: number;
            /** @description Pieces of fabric that make the ply. */
            readonly pieces: readonly components["schemas"]["RollPiece"][];
            /** @description Resin that wets this ply. */
            readonly resinKg: components["schemas"]["Figure"];
            /** @description Length of roll that they take. */
            readonly rollLengthM: number;
            /** @description Width of the roll they are cut from. */
            readonly rollWidthMm: number;
            /** @description Stage that the ply is laid in. */
            readonly stage: number;
            /** @description What the ply adds to the skin. */
            readonly thicknessMm: number;
            /** @description How the fabric is turned when laid. */
            readonly turnDeg: number;
            /** @description `thicknessMm`, `beyondOpeningMm`, `rollWidthMm` and 2 more of LaidOutPly in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How far its edge lies outside the opening. */
                readonly beyondOpeningMm?: string;
                /** @description In US units: Area that lies double where pieces meet. */
                readonly overlapAreaM2?: string;
                /** @description In US units: Length of roll that they take. */
                readonly rollLengthM?: string;
                /** @description In US units: Width of the roll they are cut from. */
                readonly rollWidthMm?: string;
                /** @description In US units: What the ply adds to the skin. */
                readonly thicknessMm?: string;
            };
        };
        readonly LaminateMissing: {
            /** @description Schedules that were looked at. */
            readonly examined: number;
            /** @description False when only a part of the stacks was looked at for this; that none will do is proven all the same. */
            readonly isComplete: boolean;
            /** @description Constraints that no stack meets, whatever else it misses. */
            readonly metByNone: readonly ("flush-low" | "flush-proud" | "kinds" | "order" | "stiffness-across" | "stiffness-along" | "stiffness-shear" | "strength-compression-across" | "strength-compression-along" | "strength-tension-across" | "strength-tension-along")[];
            /** @description Each constraint with what it costs. */
            readonly reports: readonly components["schemas"]["ConstraintReport"][];
            /** @description The lack in sentences. */
            readonly words: readonly string[];
        };
        readonly LaminateSchedule: {
            /** @description Cautions for whoever lays the plies. */
            readonly cautions: readonly string[];
            /** @description The plies over the cut, where the lifted skin is bonded back. */
            readonly rebedded?: components["schemas"]["ClosingPlies"];
            /** @description The first of them laid out over the opening. */
            readonly relaid?: components["schemas"]["RelaidPlies"];
            /** @description The best skins, where a skin is laid anew. */
            readonly search?: components["schemas"]["ScheduleSearch"];
        };
        readonly LaminateScheduleRequest: {
            /**
             * @description Where ply properties are taken from. One method serves old and new skin alike. Absent: class-bv (it covers mat, woven and unidirectional in three resins, with strengths).
             * @enum {string}
             */
            readonly method?: "class-bv" | "small-craft-yardstick" | "class-gl" | "class-lr" | "micromechanics";
            /** @description Skin bonded back. */
            readonly rebedded?: components["schemas"]["RebeddedSkinInput"];
            /** @description Skin laid anew. */
            readonly relaid?: components["schemas"]["RelaidSkinInput"];
            /**
             * @description Code of the resin system that is laid.
             * @example resin-epoxy-2to1
             */
            readonly resin: string;
        };
        readonly LaminateSection: {
            /** @description Relaid: the best schedules with why the others lost. Re-bedded: empty. */
            readonly alternatives: readonly {
                /** @description Its price for a square metre, as text. */
                readonly costPerM2: string;
                /** @description Its plies by name. */
                readonly plies: readonly string[];
                /** @description Place of the alternative, 1 the one planned. */
                readonly rank: number;
                /** @description Why it was not taken. */
                readonly reason: string;
                /** @description Its thickness. */
                readonly thicknessMm: number;
                /** @description `thicknessMm` of LaminateSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Its thickness. */
                    readonly thicknessMm?: string;
                };
            }[];
            /** @description Glass to wet out. */
            readonly glassKg: number;
            /**
             * @description Old skin bedded again, or a new one laid.
             * @enum {string}
             */
            readonly method: "re-bed" | "relay";
            /** @description What to heed when laminating. */
            readonly notes: readonly string[];
            /** @description Thickness of the skin that it replaces. */
            readonly oldThicknessMm: number;
            /** @description New plies, the first laid first. */
            readonly plies: readonly components["schemas"]["PlyLine"][];
            /** @description Stiffness and strength of the new skin. */
            readonly properties: readonly components["schemas"]["NamedValue"][];
            /** @description Resin to wet it with. */
            readonly resinKg: number;
            /** @description Length of the taper over thickness of the skin. */
            readonly taperRatio: number;
            /** @description Width that is ground. */
            readonly taperWidthMm: number;
            /** @description Thickness of the new skin. */
            readonly totalThicknessMm: number;
            /** @description `taperWidthMm`, `totalThicknessMm`, `oldThicknessMm` and 2 more of LaminateSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Glass to wet out. */
                readonly glassKg?: string;
                /** @description In US units: Thickness of the skin that it replaces. */
                readonly oldThicknessMm?: string;
                /** @description In US units: Resin to wet it with. */
                readonly resinKg?: string;
                /** @description In US units: Width that is ground. */
                readonly taperWidthMm?: string;
                /** @description In US units: Thickness of the new skin. */
                readonly totalThicknessMm?: string;
            };
        };
        readonly LayOutInput: {
            /** @description Trimmed off each strip. Absent: 50 mm (an inch at either end). */
            readonly endAllowanceMm?: number | string;
            /** @description Where the old skin is cut away. */
            readonly opening: readonly (readonly number[])[];
            /**
             * @description Order of the plies. Absent: smallest-first (both orders are in use, and no published test decides between them for decks).
             * @enum {string}
             */
            readonly order?: "smallest-first" | "largest-first";
            /** @description Overlap of strips of one ply. Absent: 50 mm (edges of successive reinforcements stagger by 50 mm, and seams of the next ply keep away from them). */
            readonly overlapMm?: number | string;
            /** @description Sound skin that the taper may use. */
            readonly soundSkin?: readonly (readonly number[])[];
            /** @description Most laid wet on wet. Absent: 4 mm (solid hand lay-up of 4 to 6 mm in one go is where overheating is reported). */
            readonly wetLimitMm?: number | string;
        };
        readonly LeakSection: {
            /** @description Code of the leak's cause. */
            readonly cause: string;
            /** @description Whether this work stops it. */
            readonly isRemedied: boolean;
            /** @description What stops the leak. */
            readonly remedy: string;
            /** @description The leak in a sentence. */
            readonly text: string;
            /** @description Name of the leak's cause. */
            readonly title: string;
            /** @description What is measured again, and the value that passes. */
            readonly verify: string;
        };
        readonly LeftOut: {
            /** @description Code of the material left out. */
            readonly material: string;
            /** @description What about its data kept it out. */
            readonly problems: readonly components["schemas"]["Problem"][];
        };
        readonly LeftOutSection: {
            /** @description Why it has not. */
            readonly because: string;
            /**
             * @description Section that the estimate has not.
             * @enum {string}
             */
            readonly section: "bond-pressure" | "core" | "laminate" | "panel";
        };
        /** @description What remains of a bought good when every need is met. */
        readonly Leftover: {
            /**
             * @description Plain or scored, for core.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description How long the remainder keeps when closed well. */
            readonly keepsMonths?: number;
            /** @description Code of the material in the catalogue. */
            readonly material: string;
            /** @description Code of the hardener that remains, where the remainder is not the resin itself. */
            readonly part?: string;
            /** @description How much remains of the pack's contents. */
            readonly quantity: number;
            /** @description Width of the roll, for fabrics. */
            readonly rollWidthMm?: number;
            /** @description Size of the sheet, where it matters. */
            readonly sheet?: {
                /** @description Length of the sheet that is meant. */
                readonly lengthMm: number;
                /** @description `lengthMm` and `widthMm` of Leftover in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the sheet that is meant. */
                    readonly lengthMm?: string;
                    /** @description In US units: Width of the sheet that is meant. */
                    readonly widthMm?: string;
                };
                /** @description Width of the sheet that is meant. */
                readonly widthMm: number;
            };
            /** @description Thickness of the sheet, for core. */
            readonly thicknessMm?: number;
            /** @description Unit of what remains. */
            readonly unit: string;
            /** @description `quantity`, `thicknessMm` and `rollWidthMm` of Leftover in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How much remains of the pack's contents. */
                readonly quantity?: string;
                /** @description In US units: Width of the roll, for fabrics. */
                readonly rollWidthMm?: string;
                /** @description In US units: Thickness of the sheet, for core. */
                readonly thicknessMm?: string;
            };
            /** @description At the least price of the goods bought. */
            readonly worth: components["schemas"]["MoneyJson"];
        };
        readonly LetterheadInput: {
            /** @description Address and whatever else belongs below the name, line by line. */
            readonly lines: readonly string[];
            /** @description What the logo shows, for those who cannot see it; the name of the organisation when absent. */
            readonly logoDescription?: string;
        };
        readonly LineChange: {
            /** @description Its amount in the later estimate. */
            readonly after: components["schemas"]["MoneyJson"];
            /** @description In words: what the caller said of it, else what the numbers say. */
            readonly because: readonly string[];
            /** @description Of the difference, because there is more or less of it, at the old rate. */
            readonly becauseOfQuantity: components["schemas"]["MoneyJson"];
            /** @description Of the difference, because it costs more or less. */
            readonly becauseOfRate: components["schemas"]["MoneyJson"];
            /** @description Its amount in the earlier estimate. */
            readonly before: components["schemas"]["MoneyJson"];
            /**
             * @description Whether it was added, removed or changed.
             * @enum {string}
             */
            readonly change: "added" | "changed" | "removed" | "same";
            /** @description Line of the estimate that changed. */
            readonly code: string;
            /** @description Later amount less the earlier. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Quantity in the later estimate, as decimal text. */
            readonly quantityAfter: string;
            /** @description Quantity in the earlier estimate, as decimal text. */
            readonly quantityBefore: string;
            /** @description What the line is for. */
            readonly title: string;
            /** @description Unit of the line's quantities. */
            readonly unit: string;
        };
        readonly LineDepreciation: {
            /** @description Age of the part that is replaced. */
            readonly ageYears: number;
            /** @description Wear in money. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Wear in percent, as decimal text. */
            readonly percent: string;
            /** @description Amount less wear. */
            readonly remaining: components["schemas"]["MoneyJson"];
        };
        /** @description The packs of one line at the price of then and of now. */
        readonly LineDrift: {
            /** @description What they cost more today; absent when the pack is no longer sold. */
            readonly difference?: components["schemas"]["MoneyJson"];
            /** @description Line of the estimate. */
            readonly line: string;
            /** @description Absent where the pack is not on the list any more. */
            readonly now?: components["schemas"]["MoneyJson"];
            /** @description How many of the pack the line takes. */
            readonly packCount: number;
            /** @description Pack whose price moved. */
            readonly sku: string;
            /** @description Price of those packs when the estimate was made. */
            readonly then: components["schemas"]["MoneyJson"];
            /** @description What the line buys. */
            readonly title: string;
        };
        /** @description So many packs of one kind in a line. */
        readonly LinePack: {
            /** @description How many of the pack are bought. */
            readonly count: number;
            /** @description Name of the pack bought. */
            readonly name: string;
            /** @description Exact decimal text for one pack. */
            readonly price: string;
            /** @description Number of the pack bought. */
            readonly sku: string;
            /** @description Supplier of the pack bought. */
            readonly supplier: string;
        };
        readonly LinePackInput: {
            /**
             * Format: int32
             * @description Packs that are bought.
             */
            readonly count: number;
            /** @description Name of the pack. */
            readonly name: string;
            /** @description Price of one pack. */
            readonly price: string;
            /** @description Number of the pack at its supplier. */
            readonly sku: string;
            /** @description Supplier of the pack. */
            readonly supplier: string;
        };
        readonly LineQuantity: {
            /** @description What the rate was multiplied with, exactly. */
            readonly charged: string;
            /** @description Quantity that ends up in the repair. */
            readonly net: number;
            /** @description Whole packs; absent for what is not bought in packs. */
            readonly purchase?: number;
            /** @description Quantity with waste. */
            readonly required: number;
            /** @description Wasted on top of the net quantity. */
            readonly waste: number;
        };
        readonly LineSpreadInput: {
            /** @description Most amount as a multiple of the likely one. */
            readonly high: number;
            /** @description Least amount as a share of the likely one. */
            readonly low: number;
        };
        readonly LineTaxGroupInput: {
            /** @description Code of the tax group. */
            readonly code: string;
            /** @description Name of the tax, as it is printed. */
            readonly name: string;
            /**
             * @description Percentage of tax.
             * @example 20
             */
            readonly percent: string;
        };
        readonly LoadResult: {
            /** @description Kind of load. */
            readonly code: string;
            /** @description Name that responses and checks know the load by. */
            readonly key: string;
            /** @description Pressure of the load where it acts. */
            readonly pressureKPa: number;
            /** @description Name of the load. */
            readonly title: string;
            /** @description `pressureKPa` of LoadResult in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Pressure of the load where it acts. */
                readonly pressureKPa?: string;
            };
        };
        readonly LogoLink: {
            /** @description Address of the logo. */
            readonly href: string;
            /**
             * @description Form that the logo is kept in.
             * @enum {string}
             */
            readonly mediaType: "image/png";
        };
        /** @description Work that goes on after its request was answered with 202. */
        readonly LongOperation: {
            /** @description RFC 3339 instants, as all others here. */
            readonly createdAt: string;
            /** @description When the operation and its result are removed. */
            readonly expiresAt: string;
            /** @description When it ended (RFC 3339). */
            readonly finishedAt?: string;
            /** @description Id of the operation. */
            readonly id: string;
            /** @description When it failed: why. */
            readonly problem?: components["schemas"]["OperationProblem"];
            /** @description When it is done: where the result is. */
            readonly result?: components["schemas"]["OperationResult"];
            /** @description When work on it began (RFC 3339). */
            readonly startedAt?: string;
            /**
             * @description How far the operation has come.
             * @enum {string}
             */
            readonly status: "done" | "failed" | "running" | "waiting";
        };
        readonly MapSettingsInput: {
            /** @description Further contours of the map. Absent: 0.1, 0.5, 0.9 (hardly, as likely as not, nearly certain). */
            readonly contourProbabilities?: readonly number[];
            /** @description Core this likely to be bad, or more, lies inside the zones. Absent: chosen by expected hours. */
            readonly cutProbability?: number;
            /**
             * Format: int32
             * @description Draws behind the range of the area. Absent: 500 (enough for the range of an area).
             */
            readonly draws?: number;
            /** @description Hours that a square metre of bad core left under a closed deck costs in the end. Absent: 120 h/m2 (a second repair opens, cores and closes that square metre again with a cut of its own (about 25 h), the patch has grown by then (about double), and a deck set up and finished anew for it takes as much again). */
            readonly leaveCostHPerM2?: number;
            /**
             * Format: int64
             * @description The same seed gives the same range. Absent: 20011 (any seed will do, as long as it is the same).
             */
            readonly seed?: number;
            /** @description Share of such a panel that is bad before any reading. Absent: 0.25 (somebody had a reason to survey it, and most of a deck is sound). */
            readonly usualBadShare?: number;
        };
        /** @description A corner of the saw line as a person with a tape finds it. */
        readonly MarkedCorner: {
            /** @description Along the datum edge from its first end. */
            readonly alongMm: number;
            /** @description The corner in the deck plane. */
            readonly at: readonly number[];
            /** @description Distance from the far end of the datum. */
            readonly fromEndMm: number;
            /** @description Straight from each end of the datum edge: where the two tapes meet. */
            readonly fromStartMm: number;
            /** @description Square off the datum edge. */
            readonly offMm: number;
            /** @description Radius cut at this corner; less than the rule's where the sides are too short. */
            readonly radiusMm: number;
            /** @description `alongMm`, `offMm`, `fromStartMm` and 2 more of MarkedCorner in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Along the datum edge from its first end. */
                readonly alongMm?: string;
                /** @description In US units: Distance from the far end of the datum. */
                readonly fromEndMm?: string;
                /** @description In US units: Straight from each end of the datum edge: where the two tapes meet. */
                readonly fromStartMm?: string;
                /** @description In US units: Square off the datum edge. */
                readonly offMm?: string;
                /** @description In US units: Radius cut at this corner; less than the rule's where the sides are too short. */
                readonly radiusMm?: string;
            };
        };
        readonly MarkingOut: {
            /** @description Where each corner lies from the datum. */
            readonly corners: readonly components["schemas"]["MarkedCorner"][];
            /** @description Line that all dimensions are taken from. */
            readonly datum: components["schemas"]["Datum"];
            /** @description Corner to opposite corner, to check that it is square; only for four corners. */
            readonly diagonalsMm?: readonly number[];
            /** @description The saw lines between the corners. */
            readonly lines: readonly components["schemas"]["SawLine"][];
            /** @description `diagonalsMm` of MarkingOut in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Corner to opposite corner, to check that it is square; only for four corners. */
                readonly diagonalsMm?: readonly string[];
            };
        };
        readonly MatchedResin: {
            /** @description Hardeners that cure it, each with what it cures. */
            readonly hardeners: readonly {
                /** @description Hardener in the basket. */
                readonly boughtKg: number;
                /** @description Resin that this much hardener cures at the mixing ratio. */
                readonly curesKg: number;
                /** @description Code of the hardener. */
                readonly hardener: string;
                /** @description `boughtKg` and `curesKg` of MatchedResin in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Hardener in the basket. */
                    readonly boughtKg?: string;
                    /** @description In US units: Resin that this much hardener cures at the mixing ratio. */
                    readonly curesKg?: string;
                };
            }[];
            /** @description Code of the resin. */
            readonly resin: string;
            /** @description Resin in the basket and on hand. */
            readonly resinKg: number;
            /** @description `resinKg` of MatchedResin in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Resin in the basket and on hand. */
                readonly resinKg?: string;
            };
        };
        /** @description Which form of a material a need asks for; packs must agree in every field that is given. */
        readonly MaterialVariant: {
            /**
             * @description Plain or scored, for core.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Code of the material in the catalogue. */
            readonly material: string;
            /** @description Code of a hardener, where the material is a resin system and its hardener is meant. */
            readonly part?: string;
            /** @description Width of the roll, for fabrics. */
            readonly rollWidthMm?: number;
            /** @description Size of the sheet, where it matters. */
            readonly sheet?: {
                /** @description Length of the sheet that is meant. */
                readonly lengthMm: number;
                /** @description `lengthMm` and `widthMm` of MaterialVariant in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Length of the sheet that is meant. */
                    readonly lengthMm?: string;
                    /** @description In US units: Width of the sheet that is meant. */
                    readonly widthMm?: string;
                };
                /** @description Width of the sheet that is meant. */
                readonly widthMm: number;
            };
            /** @description Thickness of the sheet, for core. */
            readonly thicknessMm?: number;
            /** @description `thicknessMm` and `rollWidthMm` of MaterialVariant in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width of the roll, for fabrics. */
                readonly rollWidthMm?: string;
                /** @description In US units: Thickness of the sheet, for core. */
                readonly thicknessMm?: string;
            };
        };
        readonly MaterialVariantInput: {
            /**
             * @description Form of the sheet: plain, or scored so that it bends.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Code of a material of the catalogue. */
            readonly material: string;
            /** @description Hardener of a resin. */
            readonly part?: string;
            /** @description Width of the roll that the fabric comes on. */
            readonly rollWidthMm?: number | string;
            /** @description Size of the sheet. */
            readonly sheet?: components["schemas"]["SheetSizeInput"];
            /** @description Thickness of the material. */
            readonly thicknessMm?: number | string;
        };
        readonly MeterInput: {
            /** @description Reading on sound, dry deck of the same build. */
            readonly dryReference: number;
            /** @description Reading on soaked core. */
            readonly wetReference: number;
        };
        readonly MeterReading: {
            /** @description Where it was tapped, [xMm, yMm]. */
            readonly at: readonly number[];
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that a meter was held to the deck. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "moisture";
            /** @description On the meter's own scale; judged against `dryReference`. */
            readonly value: number;
        };
        readonly MeterReadingInput: {
            /**
             * @description Where it was taken.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /** @description Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that a meter was held to the place. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "moisture";
            /** @description Reading, on the scale of the meter itself. */
            readonly value: number;
        };
        readonly MethodChoice: {
            /**
             * @description Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
             * @enum {string}
             */
            readonly access?: "from-above" | "from-below";
            /**
             * @description How the topcoats go on. Absent: brush-and-roller (what a deck gets where no booth stands).
             * @enum {string}
             */
            readonly application?: "brush-and-roller" | "spray-elsewhere" | "spray-in-booth";
            /** @description Code of a core sheet in the catalogue. */
            readonly core?: string;
            /** @description Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
            readonly cutMarginMm?: number;
            /**
             * @description How far the finish goes. Absent: panel (a patch inside a panel shows; a panel ends at natural edges).
             * @enum {string}
             */
            readonly finish?: "panel" | "patch" | "whole-deck";
            /** @description Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
            readonly flangeMm?: number;
            /**
             * @description What presses the core down. Absent: weights (needs no fastening into the deck and no airtight inner skin).
             * @enum {string}
             */
            readonly press?: "battens" | "vacuum" | "weights";
            /** @description What one stroke of the resin pump gives; the batch cards then count strokes. */
            readonly pumpResinMlPerStroke?: number;
            /** @description Code of a resin system in the catalogue. */
            readonly resin?: string;
            /**
             * @description A rung of the ladder by name; without one the recommended rung is planned. One that does not fit is answered with the reason.
             * @enum {string}
             */
            readonly rung?: "above-new-skin" | "above-old-skin" | "dry-in-place" | "edge-rail-off" | "edge-rout-and-fill" | "edge-wrap" | "from-below" | "inject" | "ream-and-pot" | "rebed" | "solid-spot" | "whole-panel";
            /**
             * @description Bond the lifted skin back, or laminate a new one.
             * @enum {string}
             */
            readonly skin?: "re-bed" | "relay";
            /**
             * @description Core that zones, readings or a plug show to be sound is left and its face cleaned, or comes out with the rest.
             * @enum {string}
             */
            readonly soundCore?: "comes-out" | "stays";
            /** @description Taper ratio, length to one of thickness. */
            readonly taperRatio?: number;
            /** @description Code of a topcoat in the catalogue. */
            readonly topcoat?: string;
            /** @description Area of the whole deck. */
            readonly wholeDeckAreaM2?: number;
        };
        readonly MethodInput: {
            /**
             * @description Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
             * @enum {string}
             */
            readonly access?: "from-above" | "from-below";
            /**
             * @description How the topcoats go on. Absent: brush-and-roller (what a deck gets where no booth stands).
             * @enum {string}
             */
            readonly application?: "brush-and-roller" | "spray-in-booth" | "spray-elsewhere";
            /** @description Code of a core sheet in the catalogue. */
            readonly core?: string;
            /** @description Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
            readonly cutMarginMm?: number | string;
            /**
             * @description How far the finish goes. Absent: panel (a patch inside a panel shows; a panel ends at natural edges).
             * @enum {string}
             */
            readonly finish?: "patch" | "panel" | "whole-deck";
            /** @description Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
            readonly flangeMm?: number | string;
            /**
             * @description What presses the core down. Absent: weights (needs no fastening into the deck and no airtight inner skin).
             * @enum {string}
             */
            readonly press?: "weights" | "battens" | "vacuum";
            /** @description What one stroke of the resin pump gives; the batch cards then count strokes. */
            readonly pumpResinMlPerStroke?: number;
            /** @description Code of a resin system in the catalogue. */
            readonly resin?: string;
            /**
             * @description A rung of the ladder by name; without one the recommended rung is planned. One that does not fit is answered with the reason.
             * @enum {string}
             */
            readonly rung?: "rebed" | "ream-and-pot" | "dry-in-place" | "inject" | "above-old-skin" | "above-new-skin" | "from-below" | "edge-rout-and-fill" | "edge-wrap" | "edge-rail-off" | "whole-panel" | "solid-spot";
            /**
             * @description Bond the lifted skin back, or laminate a new one.
             * @enum {string}
             */
            readonly skin?: "re-bed" | "relay";
            /**
             * @description Core that zones, readings or a plug show to be sound is left and its face cleaned, or comes out with the rest.
             * @enum {string}
             */
            readonly soundCore?: "stays" | "comes-out";
            /** @description Taper ratio, length to one of thickness. */
            readonly taperRatio?: number;
            /** @description Code of a topcoat in the catalogue. */
            readonly topcoat?: string;
            /** @description Area of the whole deck. */
            readonly wholeDeckAreaM2?: number | string;
        };
        /** @description The ladder as judged on the place where the defect is largest. */
        readonly MethodLadder: {
            /** @description What each place gets; the set-up of the job is counted once. */
            readonly places: readonly components["schemas"]["PlaceSection"][];
            /** @description Gentlest rung that fits; absent when none does. */
            readonly recommended?: components["schemas"]["RungNamed"];
            /** @description All rungs, the gentlest first. */
            readonly rungs: readonly components["schemas"]["RungSection"][];
            /** @description The next rung that fits. */
            readonly runnerUp?: components["schemas"]["RungNamed"];
        };
        /** @description The same with the rung that is planned. */
        readonly MethodsSection: {
            /** @description What each place gets; the set-up of the job is counted once. */
            readonly places: readonly components["schemas"]["PlaceSection"][];
            /** @description Rung that the estimate plans. */
            readonly planned: {
                /** @description Why the rung stands where it stands. */
                readonly because: string;
                /** @description Whether the record asked for it by name. */
                readonly isNamedInRecord: boolean;
                /** @description Code of the rung. */
                readonly rung: string;
                /** @description Name of the rung. */
                readonly title: string;
            };
            /** @description Gentlest rung that fits; absent when none does. */
            readonly recommended?: components["schemas"]["RungNamed"];
            /** @description All rungs, the gentlest first. */
            readonly rungs: readonly components["schemas"]["RungSection"][];
            /** @description The next rung that fits. */
            readonly runnerUp?: components["schemas"]["RungNamed"];
        };
        /** @description When something may be done: likely, with the band of the spec and of the temperature law. */
        readonly Milestone: {
            /** @description Hours that it takes at the reference temperature. */
            readonly ageH: number;
            /** @description When it is likely reached (RFC 3339), where a start was stated. */
            readonly at?: string;
            /**
             * @description Which milestone of the cure.
             * @enum {string}
             */
            readonly code: "full" | "gel" | "recoat-shuts" | "release" | "sandable";
            /** @description Earliest hours to reckon with. */
            readonly earlyH?: number;
            /** @description Latest hours to reckon with. */
            readonly lateH?: number;
            /** @description Hours from mixing as the deck is warm; absent when the cure stands still. */
            readonly likelyH?: number;
            /** @description Why a figure is absent. */
            readonly reason?: string;
            /** @description Name of the milestone. */
            readonly title: string;
        };
        /** @description The form money takes in JSON. */
        readonly MoneyJson: {
            /** @description Exact decimal text, such as `1234.50`. */
            readonly amount: string;
            /** @description ISO 4217 code that the amount is in. */
            readonly currency: string;
        };
        /** @description Core, joints and what is filled solid: together the cavities of the openings, layer by layer. */
        readonly Mosaic: {
            /** @description Limits of a piece that nobody stated. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description How many pieces, and why so many. */
            readonly division: components["schemas"]["MosaicDivision"];
            /** @description What about the pieces deserves attention. */
            readonly findings: readonly components["schemas"]["MosaicFinding"][];
            /** @description Gaps between pieces and round them. */
            readonly jointAreaM2: number;
            /** @description Length of all joints between pieces. */
            readonly jointLengthM: number;
            /** @description Length of joint that runs along a support in spite of everything. */
            readonly jointOnSupportM: number;
            /** @description Area of all pieces. */
            readonly netAreaM2: number;
            /** @description The pieces, in the order they are bedded. */
            readonly pieces: readonly components["schemas"]["CoringCorePiece"][];
            /** @description Opening and undercut, each as often as there are layers. */
            readonly regionAreaM2: number;
            /** @description Filled solid, each place as often as it takes the place of a layer. */
            readonly solidAreaM2: number;
            /** @description Places that take no core. Never under or over a piece. */
            readonly solidFills: readonly components["schemas"]["SolidFill"][];
            /** @description Volume that is filled solid in place of core. */
            readonly solidVolumeL: number;
            /** @description `netAreaM2`, `regionAreaM2`, `jointAreaM2` and 4 more of Mosaic in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Gaps between pieces and round them. */
                readonly jointAreaM2?: string;
                /** @description In US units: Length of all joints between pieces. */
                readonly jointLengthM?: string;
                /** @description In US units: Length of joint that runs along a support in spite of everything. */
                readonly jointOnSupportM?: string;
                /** @description In US units: Area of all pieces. */
                readonly netAreaM2?: string;
                /** @description In US units: Opening and undercut, each as often as there are layers. */
                readonly regionAreaM2?: string;
                /** @description In US units: Filled solid, each place as often as it takes the place of a layer. */
                readonly solidAreaM2?: string;
                /** @description In US units: Volume that is filled solid in place of core. */
                readonly solidVolumeL?: string;
            };
        };
        /** @description How many pieces, and why so many. */
        readonly MosaicDivision: {
            /** @description Largest pieces first. */
            readonly choices: readonly components["schemas"]["DivisionChoice"][];
            /** @description To cut, fit and bed, and to mend hollows. */
            readonly hours: number;
            /** @description Limit of a piece bedded from above, of the choice that was taken. */
            readonly largestPieceM2: number;
            /**
             * @description What keeps it from being fewer pieces.
             * @enum {string}
             */
            readonly limitedBy: "bed" | "camber" | "lip" | "nothing" | "sheet";
            /** @description `largestPieceM2` of MosaicDivision in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Limit of a piece bedded from above, of the choice that was taken. */
                readonly largestPieceM2?: string;
            };
            /** @description Why the core is cut into this many pieces. */
            readonly words: string;
        };
        readonly MosaicFinding: {
            /**
             * @description What was found about the pieces.
             * @enum {string}
             */
            readonly code: "cannot-be-slid-in" | "filled-solid" | "joint-on-support" | "much-filled-solid" | "order-not-proven";
            /** @description The opening it is about; absent when it is about all of them. */
            readonly opening?: string;
            /** @description It in a sentence. */
            readonly words: string;
        };
        readonly MosaicRulesInput: {
            /** @description Core bedded in one go. Absent: 1 m2 (the bed must still be soft when the last piece of it is pressed). */
            readonly bayM2?: number | string;
            /** @description Diameter of bleed holes. Absent: 4 mm (air under unscored core gets out). */
            readonly bleedDiameterMm?: number | string;
            /** @description Spacing of bleed holes. Absent: 100 mm (air under unscored core gets out). */
            readonly bleedSpacingMm?: number | string;
            /** @description Largest piece slid under a lip. Absent: 0.046 m2 (about half a square foot is slid and turned by hand without scraping its bed off). */
            readonly handPieceM2?: number | string;
            /** @description Gap at each joint. Absent: 2 mm (room for the bedding to rise between pieces). */
            readonly jointGapMm?: number | string;
            /** @description Largest piece bedded from above; absent: the material's own figure. */
            readonly largestPieceM2?: number | string;
            /** @description Narrowest piece slid under a lip. Absent: 100 mm (fingers must hold it in the opening while it goes under). */
            readonly leastLipPieceMm?: number | string;
            /** @description Smallest piece. Absent: 25 cm2 (smaller bits are quicker filled than cut). */
            readonly leastPieceCm2?: number;
            /** @description Narrowest slot that takes core. Absent: 75 mm (paste, solid laminate or a strip of high density fills a narrower one). */
            readonly leastSlotMm?: number | string;
            /** @description Deepest undercut that is filled rather than cored. Absent: 75 mm (the reach of hooked tools: filler goes under the lip first, the core in the field after it). */
            readonly lipFillMm?: number | string;
            /** @description Narrowest piece. Absent: 40 mm (a narrower one cannot be held, coated and bedded; it is filled instead). */
            readonly narrowestMm?: number | string;
            /** @description Distance between joints of neighbouring rows. Absent: 100 mm (joints that line up make a hinge). */
            readonly staggerMm?: number | string;
            /** @description Distance of joints from a support. Absent: 15 mm (the core carries its shear there). */
            readonly supportClearanceMm?: number | string;
        };
        readonly NamedFabricInput: {
            /** @description Fibre mass fraction. */
            readonly fibreMassFraction?: number;
            /**
             * @description Code of a reinforcement in the catalogue.
             * @example reinforcement-woven-roving-600
             */
            readonly material: string;
            /** @description Fabric with its resin per m2 of ply, in one currency for all: it ranks and is never billed. Give it for every fabric or for none. */
            readonly pricePerM2?: number;
            /** @description Roll directions it may be laid in, degrees from forward; absent: 0, and 0 and 90 for unidirectional. */
            readonly turnsDeg?: readonly number[];
        };
        readonly NamedPlyInput: {
            /** @description Fibre mass fraction; absent: hand lay-up by the catalogue. */
            readonly fibreMassFraction?: number;
            /**
             * @description Code of a reinforcement in the catalogue.
             * @example reinforcement-cloth-335
             */
            readonly material: string;
            /** @description Roll direction from forward; absent: 0. */
            readonly turnDeg?: number;
        };
        readonly NamedValue: {
            /** @description Code of the value. */
            readonly code: string;
            /** @description Name of the value. */
            readonly name: string;
            /** @description What goes with the value. */
            readonly note?: string;
            /** @description Unit that the value is in. */
            readonly unit: string;
            /** @description `value` of NamedValue in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: The value, in `unit`. */
                readonly value?: string;
            };
            /** @description The value, in `unit`. */
            readonly value: number;
        };
        readonly NestPieceInput: {
            /**
             * Format: int32
             * @description How many alike. Absent: 1 (a piece is one unless more are asked for).
             */
            readonly count?: number;
            /** @description Holes in the piece; other pieces may be cut from them. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Name of the piece, unique in the request. */
            readonly id: string;
            /** @description The edge of the piece. */
            readonly outline: readonly (readonly number[])[];
            /** @description Turns in degrees that keep the grain right, such as [0, 180]; an empty list means any turn. */
            readonly turnsDeg: readonly number[];
        };
        readonly NewClientSessionInput: {
            /**
             * Format: int32
             * @description How long the estimate may be waited for; 15 when absent.
             */
            readonly minutes?: number;
            /** @description The reference that the estimate will carry. */
            readonly reference?: string;
        };
        readonly NewEditionInput: {
            /** @description Code of the edition to start from; the current one when absent. */
            readonly basedOn?: string;
            /** @description A name for the edition, such as spring-2027. */
            readonly code: string;
            /** @description What the draft is for. */
            readonly note?: string;
        };
        /** @description The only answer that ever holds the key itself. */
        readonly NewKey: {
            /** @description When the key was made (RFC 3339). */
            readonly createdAt: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            /** @description Id of the key; not the key itself. */
            readonly id: string;
            /** @description The key itself; shown this once. */
            readonly key: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            /** @description What the key is used for; stands in histories. */
            readonly name: string;
            /** @description Organisation the key belongs to. */
            readonly organisationId: string;
            /** @description The first characters, by which a person recognises the key. */
            readonly prefix: string;
            /** @description The key in whose place this one was made. */
            readonly renewsId?: string;
            /** @description When it stopped counting (RFC 3339); absent while it counts. */
            readonly revokedAt?: string;
            /** @description What its holder may do; see the table of roles. */
            readonly roles: readonly ("auditor" | "catalogue-admin" | "chandler" | "integrator" | "organisation-admin" | "platform-operator" | "surveyor")[];
            /** @description What an integrator may do. */
            readonly scopes: readonly ("audit:read" | "calculate" | "catalogue:read" | "catalogue:write" | "estimates:read" | "estimates:write" | "events:read" | "letterhead:read" | "orders:read" | "pages:write" | "prices:write" | "webhooks:read" | "webhooks:write")[];
        };
        readonly NewKeyInput: {
            /**
             * Format: date-time
             * @description When the key ends by itself; never when absent.
             */
            readonly expiresAt?: string;
            /** @description Whose key it is, or what for; shown with everything that is done with it. */
            readonly name: string;
            /** @description What the key is for; a platform-operator alone gives the role platform-operator. */
            readonly roles: readonly ("surveyor" | "chandler" | "integrator" | "auditor" | "catalogue-admin" | "organisation-admin" | "platform-operator")[];
            /** @description What an integrator may do: required for that role, and of no use to another. */
            readonly scopes?: readonly ("calculate" | "estimates:read" | "estimates:write" | "orders:read" | "catalogue:read" | "prices:write" | "catalogue:write" | "letterhead:read" | "pages:write" | "audit:read" | "events:read" | "webhooks:read" | "webhooks:write")[];
        };
        /** @description A new organisation with the key that runs it; from here on, nobody outside can make another. */
        readonly NewOrganisation: {
            /** @description First key of the organisation; its text is shown this once. */
            readonly adminKey: components["schemas"]["NewKey"];
            /** @description When the organisation was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Id of the organisation. */
            readonly id: string;
            /** @description Name of the organisation, as its documents show it. */
            readonly name: string;
        };
        readonly NewOrganisationInput: {
            /** @description As it stands at the head of documents. */
            readonly name: string;
        };
        readonly NewPublishableKeyInput: {
            /** @description A published edition, in effect, to estimate with; whichever is current when absent. */
            readonly edition?: string;
            /**
             * Format: date-time
             * @description When the key ends by itself; never when absent.
             */
            readonly expiresAt?: string;
            /** @description Which page it is for. */
            readonly name: string;
            /** @description Origins of the pages that may use the key, exactly as a browser sends them. */
            readonly origins: readonly string[];
            /**
             * Format: int32
             * @description Estimates a day, counted from midnight UTC.
             */
            readonly perDay: number;
            /**
             * Format: int32
             * @description Requests a minute of all visitors together.
             */
            readonly perMinute: number;
            /**
             * Format: int32
             * @description Requests a minute from one address.
             */
            readonly perMinutePerVisitor: number;
        };
        /** @description An endpoint with the secret that signs its events, shown in this answer only. */
        readonly NewWebhookEndpoint: {
            /** @description When the endpoint was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Why nothing is delivered any more; absent while it is. */
            readonly disabledBecause?: string;
            /** @description Id of the endpoint. */
            readonly id: string;
            /** @description `whsec_` and base64 of 32 random bytes. */
            readonly secret: string;
            /** @description Events that the endpoint is told of. */
            readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
            /** @description Where events are posted to. */
            readonly url: string;
        };
        readonly NewWebhookEndpointInput: {
            /** @description What the endpoint is told of. */
            readonly types: readonly ("estimate.created" | "estimate.revised" | "edition.published" | "edition.withdrawn" | "operation.done" | "order.made")[];
            /**
             * @description Where events are posted: https, on a public address, without a port.
             * @example https://shop.example/kingplank-events
             */
            readonly url: string;
        };
        readonly NextAskedInput: {
            /**
             * Format: int32
             * @description Most readings named at once. Absent: 10 (about as many as are taken before the map is looked at again).
             */
            readonly count?: number;
            /** @description Absent: taps; the meter where its readings on dry and on soaked deck are stated; plugs once there are eight symptoms. */
            readonly kinds?: readonly ("sounding" | "moisture" | "plug")[];
            /** @description Time of a meter reading: deck wiped dry, meter held still, written down. Absent: 1 min (the deck is wiped and the meter is tried in two directions). */
            readonly meterMinutes?: number;
            /** @description Time there is for readings. */
            readonly minutes?: number;
            /** @description Time of a plug: drilled, looked at, photographed, closed and made good. Absent: 30 min (the hole is closed the same day, and made good where the deck is not opened later). */
            readonly plugMinutes?: number;
            /** @description Time of a tap: measured in, sounded, written down. Absent: 0.5 min (two a minute once a grid is chalked). */
            readonly tapMinutes?: number;
            /** @description Outlines of deck that nobody can get at, as under a raft or a chest. */
            readonly unreachable?: readonly (readonly (readonly number[])[])[];
        };
        readonly NextReading: {
            /** @description Where to take it, [xMm, yMm]. */
            readonly at: readonly number[];
            /** @description Chance of bad core there, as far as is known. */
            readonly chance: number;
            /**
             * @description What to do there: tap, hold a meter, or drill a plug.
             * @enum {string}
             */
            readonly kind: "moisture" | "plug" | "sounding";
            /** @description Time that it takes. */
            readonly minutes: number;
            /** @description As on the drawing. */
            readonly number: number;
            /** @description Its part of the hours saved by all of them, beyond the readings before it. */
            readonly worthH: number;
        };
        /** @description Where to tap or plug next, what that is worth, and when to stop. */
        readonly NextReadings: {
            /** @description Whether to go on or to stop, in words. */
            readonly advice: components["schemas"]["ExtentFinding"];
            /** @description Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
            readonly areaRangeM2: {
                /** @description Spread expected when the readings are taken. */
                readonly after: number;
                /** @description Spread of the bad area as it is known. */
                readonly now: number;
            };
            /** @description What was taken about the value of a reading. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Whether they save more than their own time. */
            readonly isWorthIt: boolean;
            /** @description Working time of all of them. */
            readonly minutes: number;
            /** @description Best first. */
            readonly readings: readonly components["schemas"]["NextReading"][];
            /** @description `areaRangeM2` of NextReadings in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
                readonly areaRangeM2?: {
                    /** @description In US units: Spread expected when the readings are taken. */
                    readonly after: string;
                    /** @description In US units: Spread of the bad area as it is known. */
                    readonly now: string;
                };
            };
            /** @description Working hours that deciding after them is expected to save. */
            readonly worthH: number;
        };
        readonly NextReadingsRequest: {
            /** @description Fittings through the deck, which openings keep clear of or take in. */
            readonly fittings?: readonly components["schemas"]["FittingInput"][];
            /** @description How readings become a map. */
            readonly map?: components["schemas"]["MapSettingsInput"];
            /** @description How the deck is opened. */
            readonly method?: components["schemas"]["OpeningMethodInput"];
            /** @description How the next readings may be taken. */
            readonly next?: components["schemas"]["NextAskedInput"];
            /** @description The outer skin, where its thickness is known. */
            readonly outerSkin?: components["schemas"]["SkinInput"];
            /** @description The panel that readings are taken on. */
            readonly panel: components["schemas"]["PanelInput"];
            /** @description Rules of the trade. */
            readonly rules?: components["schemas"]["OpeningRulesInput"];
            /** @description Readings so far; none yet is an answer too. */
            readonly survey: components["schemas"]["SurveySoFarInput"];
            /** @description What is opened as things stand; absent: what the map would open. */
            readonly zones?: readonly components["schemas"]["OpeningZoneInput"][];
        };
        /** @description Its assumptions stand among those of the estimate. */
        readonly NextReadingsSection: {
            /** @description Whether more readings would pay. */
            readonly advice: components["schemas"]["EstimateFinding"];
            /** @description Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
            readonly areaRangeM2: {
                /** @description Spread expected when the readings are taken. */
                readonly after: number;
                /** @description Spread of the bad area as it is known. */
                readonly now: number;
            };
            /** @description Whether they save more than their own time. */
            readonly isWorthIt: boolean;
            /** @description Working time of all of them. */
            readonly minutes: number;
            /** @description Best first. */
            readonly readings: readonly components["schemas"]["NextReading"][];
            /** @description `areaRangeM2` of NextReadingsSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
                readonly areaRangeM2?: {
                    /** @description In US units: Spread expected when the readings are taken. */
                    readonly after: string;
                    /** @description In US units: Spread of the bad area as it is known. */
                    readonly now: string;
                };
            };
            /** @description Working hours that deciding after them is expected to save. */
            readonly worthH: number;
        };
        readonly Occurrence: {
            /** @description Of the damage, and whether it fits the event; never blame. */
            readonly cause?: string;
            /** @description Reference of the insurer. */
            readonly insurerReference?: string;
            /** @description Day of the event. */
            readonly on?: string;
        };
        readonly OccurrenceInput: {
            /** @description Of the damage, and whether it fits the event; never blame. */
            readonly cause?: string;
            /** @description Reference of the insurer. */
            readonly insurerReference?: string;
            /**
             * Format: date
             * @description Day of the event.
             */
            readonly on?: string;
        };
        /** @description A rectangle that is left whole on a sheet. */
        readonly Offcut: {
            /** @description Area of the piece worth keeping. */
            readonly areaM2: number;
            /** @description Edge of the piece worth keeping. */
            readonly outline: readonly (readonly number[])[];
            /** @description `areaM2` of Offcut in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the piece worth keeping. */
                readonly areaM2?: string;
            };
        };
        /** @description In two stages: what is known at a firm price, what is not by rates. */
        readonly Offer: {
            /** @description How far work may go on without asking. */
            readonly authorisation: {
                /** @description Why so much. */
                readonly basis: string;
                /** @description Hours above the planned ones. */
                readonly labourH: number;
                /** @description Percent above the price. */
                readonly percent: number;
            };
            /** @description Where work stops until the customer has agreed. */
            readonly holdPoint: string;
            /** @description Opening and mapping, priced by itself. */
            readonly stageZero: components["schemas"]["StageZero"];
            /** @description Without tax, overhead and profit inside. */
            readonly unitRates: readonly {
                /**
                 * @description Code of the rate.
                 * @enum {string}
                 */
                readonly code: "cut-m" | "fitting-h" | "hole" | "opened-m2" | "visit";
                /** @description In this estimate. */
                readonly quantity: number;
                /** @description Price for one unit. */
                readonly rate: components["schemas"]["MoneyJson"];
                /** @description Unit that it is paid by. */
                readonly unit: string;
                /** @description `quantity` of Offer in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: In this estimate. */
                    readonly quantity?: string;
                };
                /** @description What the rate is for. */
                readonly what: string;
            }[];
        };
        readonly OldCore: {
            /** @description From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines. */
            readonly cavityMm?: number;
            /**
             * @description Kind of the old core. Absent: end-grain-balsa (the commonest deck core; a plug would tell).
             * @enum {string}
             */
            readonly coreType?: "cross-linked-foam" | "end-grain-balsa" | "linear-foam" | "marine-plywood" | "san-foam";
            /** @description Density of the old core. */
            readonly densityKgPerM3?: number;
            /** @description Thickness of the core: mm, or text with a unit. */
            readonly thicknessMm: number;
        };
        readonly OldCoreInput: {
            /** @description From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines. */
            readonly cavityMm?: number | string;
            /**
             * @description Kind of the old core. Absent: end-grain-balsa (the commonest deck core; a plug would tell).
             * @enum {string}
             */
            readonly coreType?: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
            /** @description Density of the old core. */
            readonly densityKgPerM3?: number;
            /**
             * @description Thickness of the core: mm, or text with a unit.
             * @example 1/2 in
             */
            readonly thicknessMm: number | string;
        };
        readonly OldCoreMassInput: {
            /** @description Density of the old core; absent: that of the new one. */
            readonly densityKgPerM3?: number;
            /** @description Water in the old core, parts of its dry mass: 1.5 is wetter than its own weight. */
            readonly moistureFraction?: number;
        };
        readonly OldSkinInput: {
            /** @description Its plies from the core outwards; absent: guessed from the thickness, with the spread stated. */
            readonly plies?: readonly components["schemas"]["NamedPlyInput"][];
            /** @description Code of its resin. Absent: polyester (nearly all moulded decks are). */
            readonly resin?: string;
            /**
             * @description Measured thickness.
             * @example 3
             */
            readonly thicknessMm: number | string;
        };
        readonly OldSkinReport: {
            /** @description Stiffness of the old skin athwart. */
            readonly acrossNPerMm: number;
            /** @description Stiffness it might have if the guess is low. */
            readonly alongHighNPerMm?: number;
            /** @description Where guessed: stiffness along of the weakest and the strongest likely build. */
            readonly alongLowNPerMm?: number;
            /** @description Stiffness of the old skin fore and aft. */
            readonly alongNPerMm: number;
            /** @description Whether its plies were guessed from the thickness. */
            readonly isGuessed: boolean;
            /** @description Stiffness of the old skin in shear. */
            readonly shearNPerMm: number;
            /** @description In the order tension along, compression along, tension across, compression across. */
            readonly strengthNPerMm: readonly number[];
            /** @description Thickness of the old skin. */
            readonly thicknessMm: number;
            /** @description `thicknessMm`, `alongNPerMm`, `acrossNPerMm` and 4 more of OldSkinReport in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Stiffness of the old skin athwart. */
                readonly acrossNPerMm?: string;
                /** @description In US units: Stiffness it might have if the guess is low. */
                readonly alongHighNPerMm?: string;
                /** @description In US units: Where guessed: stiffness along of the weakest and the strongest likely build. */
                readonly alongLowNPerMm?: string;
                /** @description In US units: Stiffness of the old skin fore and aft. */
                readonly alongNPerMm?: string;
                /** @description In US units: Stiffness of the old skin in shear. */
                readonly shearNPerMm?: string;
                /** @description In US units: In the order tension along, compression along, tension across, compression across. */
                readonly strengthNPerMm?: readonly string[];
                /** @description In US units: Thickness of the old skin. */
                readonly thicknessMm?: string;
            };
        };
        readonly OnHandInput: {
            /**
             * @description Form of the sheet: plain, or scored so that it bends.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Code of a material of the catalogue. */
            readonly material: string;
            /** @description Months for which it keeps. */
            readonly monthsLeft?: number;
            /** @description Hardener of a resin. */
            readonly part?: string;
            /** @description Quantity left over and still good. */
            readonly quantity: number;
            /** @description Width of the roll that the fabric comes on. */
            readonly rollWidthMm?: number | string;
            /** @description Size of the sheet. */
            readonly sheet?: components["schemas"]["SheetSizeInput"];
            /** @description Thickness of the material. */
            readonly thicknessMm?: number | string;
            /**
             * @description Unit of the quantity on hand.
             * @enum {string}
             */
            readonly unit: "kg" | "g" | "l" | "m" | "m2" | "mm" | "h" | "day" | "each" | "pair" | "roll" | "pack" | "sheet" | "job";
        };
        readonly OpenedPanelInput: {
            /** @description Sag the new core may keep. Absent: 1 mm (a sag the fairing hides). */
            readonly allowedSagMm?: number | string;
            /** @description Pressure on the new core. Absent: 1 kPa (a flexible skin and a thin bed close under 0.5 to 1 kPa, 50 to 100 kg/m2; more sags the skin below). */
            readonly clampPressureKPa?: number;
            /**
             * @description Edges of the opened inner skin. Absent: simply-supported (the cautious case for its sag).
             * @enum {string}
             */
            readonly edges?: "simply-supported" | "clamped";
            /** @description The opening; absent: the whole panel. */
            readonly lengthXMm?: number | string;
            /** @description Width athwartships. */
            readonly widthYMm?: number | string;
        };
        readonly Opening: {
            /** @description Edge of the opening. */
            readonly area: components["schemas"]["Area"];
            /** @description Area of the opening. */
            readonly areaM2: number;
            /** @description Sound core in the opening that is left where it is. */
            readonly coreStays: readonly components["schemas"]["Area"][];
            /** @description Sound core that stays in the opening. */
            readonly coreStaysAreaM2: number;
            /** @description Radius to round the corners to. */
            readonly cornerRadiusMm: number;
            /** @description Absent when no depth is safe; a finding says why. */
            readonly cutDepthMm?: number;
            /** @description Length of its saw cuts. */
            readonly cutLengthM: number;
            /** @description Name of the opening on drawings. */
            readonly label: string;
            /** @description Why the opening has this form. */
            readonly reason: string;
            /** @description Corners of the saw line before rounding, measured from the datum corner of the panel. */
            readonly sawLine: readonly (readonly number[])[];
            /** @description Where the old skin is ground. */
            readonly taperBand: readonly components["schemas"]["Area"][];
            /** @description Where core is taken from under the edge. */
            readonly undercut: readonly components["schemas"]["Area"][];
            /** @description How much core is taken from under the edge. */
            readonly undercutAreaM2: number;
            /** @description `cornerRadiusMm`, `areaM2`, `cutLengthM` and 3 more of Opening in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the opening. */
                readonly areaM2?: string;
                /** @description In US units: Sound core that stays in the opening. */
                readonly coreStaysAreaM2?: string;
                /** @description In US units: Radius to round the corners to. */
                readonly cornerRadiusMm?: string;
                /** @description In US units: Absent when no depth is safe; a finding says why. */
                readonly cutDepthMm?: string;
                /** @description In US units: Length of its saw cuts. */
                readonly cutLengthM?: string;
                /** @description In US units: How much core is taken from under the edge. */
                readonly undercutAreaM2?: string;
            };
        };
        readonly OpeningMethodInput: {
            /**
             * @description Side from which the deck is opened. Absent: from-above (most decks are opened from above: the work is face down and the resin stays where it is put).
             * @enum {string}
             */
            readonly access?: "from-above" | "from-below";
            /** @description Margin of the cut beyond the bad core. Absent: 75 mm (a few inches past the sound boundary, 50 to 100 mm). */
            readonly cutMarginMm?: number | string;
            /** @description Sound deck kept at every edge. Absent: 50 mm (about 2 in of deck kept round a cut, so that the new laminate can tie in). */
            readonly flangeMm?: number | string;
            /**
             * @description Bond the lifted skin back, or laminate a new one. Absent: relay (a new laminate gives the soundest skin).
             * @enum {string}
             */
            readonly skin?: "re-bed" | "relay";
            /** @description Taper ratio, length to one of thickness. Absent: 12 (the usual figure for glass decks; in tests of 1:6, 1:12 and 1:20 the best of the three). */
            readonly taperRatio?: number;
        };
        /** @description Where to saw, how deep, what to ream out, what stays, and what does not fit. */
        readonly OpeningPlan: {
            /** @description Defaults that were used, each with its reason and source. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Absent when no depth is safe; a finding of severity `stop` says why. */
            readonly cutDepthMm?: number;
            /** @description Length of the cuts to saw. */
            readonly cutLengthM: number;
            /** @description The plan's areas and lengths with their derivations. */
            readonly figures: components["schemas"]["PlanFigures"];
            /** @description What about the openings deserves attention. */
            readonly findings: readonly components["schemas"]["ExtentFinding"][];
            /** @description Fittings that the openings touch. */
            readonly fittings: readonly components["schemas"]["FittingInScope"][];
            /** @description Distance kept from edges: the flange, or the taper where that is wider and there is room. */
            readonly insetMm: number;
            /** @description Area whose outer skin comes off. */
            readonly openedAreaM2: number;
            /** @description From the largest to the smallest. */
            readonly openings: readonly components["schemas"]["PlannedOpening"][];
            /** @description Area of the whole panel. */
            readonly panelAreaM2: number;
            /** @description Skin that stays: with the openings it is the whole panel. */
            readonly retained: readonly components["schemas"]["Polygon"][];
            /** @description Area of opened skin that is bedded again. */
            readonly retainedAreaM2: number;
            /** @description Cuts across lifted skin, beside the cuts round the openings. */
            readonly splitLengthM: number;
            /** @description Area of old skin that is ground to a taper. */
            readonly taperBandAreaM2: number;
            /** @description Width of the ground taper. */
            readonly taperWidthMm: number;
            /** @description Core taken out under skin that stays. */
            readonly undercutAreaM2: number;
            /** @description Bad core that no opening reaches. */
            readonly unreached: readonly components["schemas"]["Polygon"][];
            /** @description `panelAreaM2`, `openedAreaM2`, `retainedAreaM2` and 7 more of OpeningPlan in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Absent when no depth is safe; a finding of severity `stop` says why. */
                readonly cutDepthMm?: string;
                /** @description In US units: Length of the cuts to saw. */
                readonly cutLengthM?: string;
                /** @description In US units: Distance kept from edges: the flange, or the taper where that is wider and there is room. */
                readonly insetMm?: string;
                /** @description In US units: Area whose outer skin comes off. */
                readonly openedAreaM2?: string;
                /** @description In US units: Area of the whole panel. */
                readonly panelAreaM2?: string;
                /** @description In US units: Area of opened skin that is bedded again. */
                readonly retainedAreaM2?: string;
                /** @description In US units: Cuts across lifted skin, beside the cuts round the openings. */
                readonly splitLengthM?: string;
                /** @description In US units: Area of old skin that is ground to a taper. */
                readonly taperBandAreaM2?: string;
                /** @description In US units: Width of the ground taper. */
                readonly taperWidthMm?: string;
                /** @description In US units: Core taken out under skin that stays. */
                readonly undercutAreaM2?: string;
            };
        };
        readonly OpeningRulesInput: {
            /** @description Largest skin piece that can be bedded before the resin gels. */
            readonly bondableAreaM2?: number | string;
            /** @description Longest skin piece that can be bedded before the resin gels. */
            readonly bondableLengthMm?: number | string;
            /** @description Labour for each corner of the cut. Absent: 0.05 h (drill or grind the round, set the saw in again). */
            readonly cornerH?: number;
            /** @description Radius of the corners of the cut. Absent: 40 mm (rounded corners of 25 to 50 mm do not start cracks). */
            readonly cornerRadiusMm?: number | string;
            /** @description Labour for a metre of cut: mark, saw, ream, taper, close. Absent: 1.45 h/m (cut 0.3, ream 0.3, taper 0.35, close the seam 0.5). */
            readonly cutHPerM?: number;
            /** @description Depth of the saw past the skin. Absent: 2 mm (the saw is set to the measured skin and 1 to 3 mm). */
            readonly depthMarginMm?: number | string;
            /** @description Distance within which fittings belong to the job. Absent: 300 mm (a fitting within about a foot of soft core is a likely cause and is re-bedded with it). */
            readonly fittingReachMm?: number | string;
            /** @description Core left above the inner skin by the saw. Absent: 5 mm (the saw stops well short of the skin behind the core). */
            readonly innerSkinClearanceMm?: number | string;
            /** @description Labour for a square metre of sound deck opened with the rest. Absent: 16 h/m2 (lift 4, core out 6, grind 1, fit core 1.3, bed 1.5, new skin 1.8; finishing is by the panel). */
            readonly openedHPerM2?: number;
            /** @description Labour for each opening whatever its size. Absent: 1 h (marking out, test holes, moving props and covers). */
            readonly openingH?: number;
            /** @description Distance of a cut from a support it runs along. Absent: 100 mm (joints do not lie over a bulkhead edge, and joints of skin and core are staggered by 100 mm or more). */
            readonly supportClearanceMm?: number | string;
            /** @description Reach of reaming under skin that stays. Absent: 75 mm (core is reamed out 25 to 75 mm under the sound lip with hooked tools). */
            readonly undercutReachMm?: number | string;
        };
        readonly OpeningsRequest: {
            /** @description The old core. */
            readonly core: components["schemas"]["OldCoreInput"];
            /**
             * @description How the extent was found; readings can lower it, never raise it.
             * @enum {string}
             */
            readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
            /** @description Fittings through the deck, which openings keep clear of or take in. */
            readonly fittings?: readonly components["schemas"]["FittingInput"][];
            /** @description The inner skin. */
            readonly innerSkin: components["schemas"]["SkinInput"];
            /** @description How readings become a map. */
            readonly map?: components["schemas"]["MapSettingsInput"];
            /** @description How the deck is opened. */
            readonly method?: components["schemas"]["OpeningMethodInput"];
            /** @description The outer skin. */
            readonly outerSkin: components["schemas"]["SkinInput"];
            /** @description The panel of deck: its edge, what holds it and what lies under it. */
            readonly panel: components["schemas"]["PanelInput"];
            /** @description Rules of the trade. */
            readonly rules?: components["schemas"]["OpeningRulesInput"];
            /** @description Readings of hammer, meter and plugs. */
            readonly survey?: components["schemas"]["SurveyInput"];
            /** @description Bad core as somebody drew it; absent: mapped from the readings. */
            readonly zones?: readonly components["schemas"]["OpeningZoneInput"][];
        };
        readonly OpeningZoneInput: {
            /**
             * @description Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
             * @enum {string}
             */
            readonly condition?: "wet-rotten" | "wet-bonded" | "dry-debonded";
            /** @description Sound core inside the zone. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Name of the zone. */
            readonly id: string;
            /** @description The region of bad core. */
            readonly outline: readonly (readonly number[])[];
        };
        readonly OpenSkinAnswer: {
            /** @description How to work on the open deck. */
            readonly advice: readonly string[];
            /** @description With the pull of the skin between held edges, where the sag is large. */
            readonly clampSagMm: number;
            /** @description Stress in the inner skin where it is held. */
            readonly clampStressMPa: number;
            /** @description Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges. */
            readonly isLargeDeflection: boolean;
            /** @description Plate bending alone. */
            readonly linearClampSagMm: number;
            /** @description Sag under one person. */
            readonly personSagMm: number;
            /** @description Plate bending alone: an upper bound where the sag is large. */
            readonly personStressMPa: number;
            /** @description Whether props are needed before somebody steps on it. */
            readonly propsNeeded: boolean;
            /** @description The same for a person who kneels or steps on it; absent when no spacing between props makes that safe. */
            readonly propSpacingForPersonMm?: number;
            /** @description Spacing of props in both directions that keeps sag and stress within bounds under the clamp load. */
            readonly propSpacingMm: number;
            /** @description `clampSagMm`, `clampStressMPa`, `linearClampSagMm` and 5 more of OpenSkinAnswer in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: With the pull of the skin between held edges, where the sag is large. */
                readonly clampSagMm?: string;
                /** @description In US units: Stress in the inner skin where it is held. */
                readonly clampStressMPa?: string;
                /** @description In US units: Plate bending alone. */
                readonly linearClampSagMm?: string;
                /** @description In US units: Sag under one person. */
                readonly personSagMm?: string;
                /** @description In US units: Plate bending alone: an upper bound where the sag is large. */
                readonly personStressMPa?: string;
                /** @description In US units: The same for a person who kneels or steps on it; absent when no spacing between props makes that safe. */
                readonly propSpacingForPersonMm?: string;
                /** @description In US units: Spacing of props in both directions that keeps sag and stress within bounds under the clamp load. */
                readonly propSpacingMm?: string;
                /** @description In US units: Stress that the inner skin may take. */
                readonly usableStressMPa?: string;
            };
            /** @description Stress that the inner skin may take. */
            readonly usableStressMPa: number;
        };
        /** @description An operation ended: with a result, or with a reason why there is none. */
        readonly OperationDone: {
            /** @description The operation and how it ended; what it names is fetched from its address. */
            readonly data: components["schemas"]["OperationNamed"];
            /** @description Id of the event of this ending of an operation, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the operation ended (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description Work that was answered later has ended. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "operation.done";
        };
        readonly OperationFlagsInput: {
            /**
             * @description Side of the work.
             * @enum {string}
             */
            readonly access: "from-above" | "from-below";
            /**
             * @description What lies below the deck.
             * @enum {string}
             */
            readonly below: "open" | "lined" | "none";
            /**
             * @description Where the boat lies.
             * @enum {string}
             */
            readonly berth: "ashore" | "afloat";
            /**
             * @description State of the core.
             * @enum {string}
             */
            readonly condition: "wet-rotten" | "wet-bonded" | "dry-debonded";
            /**
             * @description Finish of the deck.
             * @enum {string}
             */
            readonly finish: "painted" | "none";
            /**
             * @description Whether there is non-skid.
             * @enum {string}
             */
            readonly nonskid: "yes" | "no";
            /**
             * @description Whether the panel is cambered.
             * @enum {string}
             */
            readonly panel: "flat" | "cambered";
            /**
             * @description What presses the bed.
             * @enum {string}
             */
            readonly press: "weights" | "battens" | "vacuum";
            /**
             * @description Whether props are needed.
             * @enum {string}
             */
            readonly props: "needed" | "not-needed";
            /**
             * @description Shelter over the work.
             * @enum {string}
             */
            readonly shelter: "shed" | "tent" | "open";
            /**
             * @description Who does the work.
             * @enum {string}
             */
            readonly skill: "professional" | "owner";
            /**
             * @description What becomes of the skin.
             * @enum {string}
             */
            readonly skin: "re-bed" | "relay" | "inject" | "closed";
        };
        readonly OperationNamed: {
            /** @description Path of the operation. */
            readonly href: string;
            /** @description Id of the operation that ended. */
            readonly id: string;
            /**
             * @description How it ended.
             * @enum {string}
             */
            readonly status: "done" | "failed";
        };
        /** @description The members of an RFC 9457 problem document that outlast the request. */
        readonly OperationProblem: {
            /** @description What went wrong this time. */
            readonly detail: string;
            /** @description How many faults were found, where the request was at fault. */
            readonly errorCount?: number;
            /** @description What must be put right, each with its place in the request that was accepted. */
            readonly errors?: readonly components["schemas"]["ShownProblem"][];
            /** @description HTTP status that the request would have had. */
            readonly status: number;
            /** @description Kind of problem in words. */
            readonly title: string;
            /** @description Address of a page that explains the kind of problem. */
            readonly type: string;
        };
        readonly OperationResult: {
            /** @description Address of what was made. */
            readonly href: string;
            /** @description Media type of what was made. */
            readonly mediaType: string;
        };
        /** @description An order to a supplier was written. */
        readonly OrderMade: {
            /** @description The order and its supplier; what it names is fetched from its address. */
            readonly data: components["schemas"]["OrderNamed"];
            /** @description Id of the event of this order, the same at each attempt to deliver it. */
            readonly id: string;
            /** @description When the order was written (RFC 3339). */
            readonly timestamp: string;
            /**
             * @description An order for a supplier was written. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly type: "order.made";
        };
        readonly OrderNamed: {
            /** @description Ids of the estimates that are ordered for. */
            readonly estimateIds: readonly string[];
            /** @description Code of the edition whose prices the order has. */
            readonly pricedAt: string;
            /** @description Code of the supplier, when the order names one. */
            readonly supplier?: string;
        };
        readonly Organisation: {
            /** @description When the organisation was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Id of the organisation. */
            readonly id: string;
            /** @description Name of the organisation, as its documents show it. */
            readonly name: string;
        };
        /** @description What stands at the head of reports, job packs and change orders. */
        readonly OrganisationLetterhead: {
            /** @description Address and contacts under the name, line by line. */
            readonly lines: readonly string[];
            /** @description The logo; absent when none was set. */
            readonly logo?: components["schemas"]["LogoLink"];
            /** @description Words for those who cannot see the logo. */
            readonly logoDescription?: string;
            /** @description The name of the organisation. */
            readonly name: string;
        };
        readonly OrganisationList: {
            /** @description All organisations, in the order they were made. */
            readonly items: readonly components["schemas"]["Organisation"][];
            /** @description Give it as `cursor` for more organisations; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly OtherSkinInput: {
            /** @description Stiffness across. */
            readonly acrossNPerMm: number;
            /** @description Extensional stiffness along (modulus times thickness). */
            readonly alongNPerMm: number;
            /** @description Thickness of the skin on the other side of the core. */
            readonly thicknessMm: number | string;
        };
        readonly OverlayInput: {
            /**
             * @description Kind of overlay.
             * @enum {string}
             */
            readonly kind: "screwed-planks" | "glued-planks" | "synthetic";
            /**
             * @description Laid again, replaced by paint, left to others by the wish of the customer, or not touched at all: then the deck is mended from below alone. Absent: paint (most decks that lose their planks are painted).
             * @enum {string}
             */
            readonly then?: "back" | "paint" | "not-included" | "stays";
            /** @description Screws, caulk and the step that is left follow from it. */
            readonly thicknessMm: number | string;
        };
        readonly OverlayRecord: {
            /**
             * @description Kind of overlay.
             * @enum {string}
             */
            readonly kind: "glued-planks" | "screwed-planks" | "synthetic";
            /**
             * @description Laid again, replaced by paint, left to others by the wish of the customer, or not touched at all: then the deck is mended from below alone. Absent: paint (most decks that lose their planks are painted).
             * @enum {string}
             */
            readonly then?: "back" | "not-included" | "paint" | "stays";
            /** @description Screws, caulk and the step that is left follow from it. */
            readonly thicknessMm: number;
        };
        readonly OwnOffcutInput: {
            /**
             * @description Plain, or scored so that it bends. Absent: plain (most offcuts are).
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Bad spots and cut-outs of the offcut. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Name of the offcut, unique in the request. */
            readonly id: string;
            /** @description The edge of the offcut as it is. */
            readonly outline: readonly (readonly number[])[];
            /** @description Thickness of the offcut. */
            readonly thicknessMm: number | string;
        };
        readonly PackContentInput: {
            /**
             * @description Whether the sheet in the pack is plain or scored.
             * @enum {string}
             */
            readonly form?: "plain" | "scored";
            /** @description Code of a material of the same edition. */
            readonly material: string;
            /** @description Code of a hardener, when the pack holds one. */
            readonly part?: string;
            /** @description How much the pack holds, in its unit. */
            readonly quantity: number;
            /** @description Width of the roll in the pack. */
            readonly rollWidthMm?: number;
            /** @description Size of the sheet in the pack. */
            readonly sheet?: components["schemas"]["SheetFormatInput"];
            /** @description Thickness of the sheet in the pack. */
            readonly thicknessMm?: number;
            /**
             * @description Unit of what the pack holds.
             * @enum {string}
             */
            readonly unit: "kg" | "l" | "m2" | "m" | "each" | "pair" | "roll" | "pack";
        };
        readonly PackCountInput: {
            /**
             * Format: int32
             * @description Whole packs that can be sold now.
             */
            readonly packs: number;
        };
        readonly PackInput: {
            /** @description Which material, how much and in which form. */
            readonly content: components["schemas"]["PackContentInput"];
            /** @description Extra charge when a part of the pack is cut off. */
            readonly cutFee?: string;
            /** @description Whether it is sent as dangerous goods. */
            readonly hazardous: boolean;
            /** @description Mass of the full pack, for carriage. */
            readonly massKg: number;
            /** @description Name that the supplier sells the pack under. */
            readonly name: string;
            /** @description Whether it is too large for parcels. */
            readonly oversize: boolean;
            /** @description The first is for one pack; ascending. */
            readonly prices: readonly components["schemas"]["PriceBreakInput"][];
            /** @description How long the closed pack keeps. */
            readonly shelfLifeMonths?: number;
            /** @description Number that the supplier sells the pack under. */
            readonly sku: string;
            /**
             * Format: int32
             * @description Packs there are; absent when nobody counts.
             */
            readonly stock?: number;
            /** @description Code of a supplier of the same list. */
            readonly supplier: string;
        };
        /** @description The four states of one panel under the same loads. A comparison, never a design approval. */
        readonly PanelAnswer: {
            /** @description Figures of the comparison that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Cautions about standing and working on the deck. */
            readonly cautions: readonly components["schemas"]["PanelCaution"][];
            /** @description Derivations of the keys asked for in `explain`. */
            readonly explained?: {
                readonly [key: string]: components["schemas"]["Figure"];
            };
            /** @description Checks of the fittings. */
            readonly fittings: readonly components["schemas"]["PanelCheckItem"][];
            /** @description What the comparison does not say. */
            readonly limits: readonly string[];
            /** @description Loads that the states were compared under. */
            readonly loads: readonly components["schemas"]["LoadResult"][];
            /** @description What the open deck may carry meanwhile. */
            readonly opened: components["schemas"]["OpenSkinAnswer"];
            /** @description As built over repaired: at least 1 means that the repair gives back what there was. */
            readonly ratios: readonly components["schemas"]["Ratio"][];
            /** @description Every ratio that is below 1 by more than hands repeat, worst first. */
            readonly shortfalls: readonly string[];
            /** @description The deck in each state: as built, found, opened, repaired. */
            readonly states: readonly components["schemas"]["StateAnswer"][];
            /** @description Greatest estimated relative error of the series and polynomials. */
            readonly truncation: number;
            /**
             * @description Whether the repair restores what the deck had.
             * @enum {string}
             */
            readonly verdict: "not-restored" | "restored";
            /** @description What is short by less, in a sentence. */
            readonly withinHands: readonly string[];
        };
        readonly PanelBelowInput: {
            /** @description The core as it was. */
            readonly core: components["schemas"]["CoreLayerInput"];
            /** @description The core that goes in; absent: as the old. */
            readonly newCore?: components["schemas"]["CoreLayerInput"];
            /** @description The skin that stays. */
            readonly otherSkin: components["schemas"]["OtherSkinInput"];
        };
        readonly PanelCaution: {
            /** @description Which fact calls for the caution. */
            readonly because: string;
            /** @description Code of the caution. */
            readonly code: string;
            /**
             * @description How bad it can become.
             * @enum {string}
             */
            readonly severity: "caution" | "danger" | "warning";
            /** @description Where the caution comes from. */
            readonly source: string;
            /** @description What to beware of. */
            readonly text: string;
        };
        /** @description A demand against a capacity. Failing is a result. */
        readonly PanelCheckItem: {
            /** @description Of the repaired panel: what the same check comes to on the deck as built. */
            readonly asBuilt?: components["schemas"]["BuiltCheck"];
            /** @description What the panel can bear or is allowed. */
            readonly capacity?: number;
            /** @description Code of the panel's check. */
            readonly code: string;
            /** @description What the panel must bear or keep to. */
            readonly demand?: number;
            /** @description Fitting that it is checked at. */
            readonly fitting?: string;
            /** @description What in the panel decides. */
            readonly governs: string;
            /** @description Names this check among all, such as `repaired:person:core-shear`; its derivation has the same key. */
            readonly key: string;
            /** @description Load that it is checked under. */
            readonly load?: string;
            /** @description Why there is no figure, where there is none. */
            readonly reason?: string;
            /** @description What would make it pass. */
            readonly remedy?: string;
            /** @description Source of the panel's requirement. */
            readonly source: string;
            /**
             * @description State of the deck that is checked.
             * @enum {string}
             */
            readonly state?: "as-built" | "as-found" | "opened" | "repaired";
            /** @description Name of the panel's check. */
            readonly title: string;
            /** @description Unit of the panel's demand and capacity. */
            readonly unit: string;
            /** @description `demand` and `capacity` of PanelCheckItem in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What the panel can bear or is allowed. */
                readonly capacity?: string;
                /** @description In US units: What the panel must bear or keep to. */
                readonly demand?: string;
            };
            /** @description Demand over capacity. */
            readonly utilisation?: number;
            /**
             * @description Verdict of the panel's check.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        readonly PanelCheckRequest: {
            /** @description Panel as it was built. */
            readonly asBuilt: components["schemas"]["SandwichValuesInput"];
            /** @description What rot and water left of the core. */
            readonly asFound?: components["schemas"]["AsFoundInput"];
            /** @description Craft. */
            readonly craft?: components["schemas"]["CraftForPanelInput"];
            /** @description Criteria. */
            readonly criteria?: components["schemas"]["CriteriaInput"];
            /** @description Measured total of the deck, to catch a skin that cannot be. */
            readonly deckThicknessMm?: number | string;
            /** @description Keys of checks, ratios and loads to explain down to their inputs, such as repaired:person:core-shear. */
            readonly explain?: readonly string[];
            /** @description Fittings. */
            readonly fittings?: readonly components["schemas"]["PanelFittingInput"][];
            /** @description Absent: the yardstick pressure when the craft is known, else that of a class rule; and a person on one foot. */
            readonly loads?: readonly (components["schemas"]["PressureLoadInput"] | components["schemas"]["PatchLoadInput"] | components["schemas"]["PersonLoadInput"] | components["schemas"]["ClassDeckLoadInput"] | components["schemas"]["YardstickLoadInput"])[];
            /** @description The inner skin alone while the core is out. */
            readonly opened?: components["schemas"]["OpenedPanelInput"];
            /** @description Panel. */
            readonly panel: components["schemas"]["PanelSizeInput"];
            /** @description Panel as it is repaired. */
            readonly repaired: components["schemas"]["SandwichValuesInput"];
        };
        readonly PanelFittingInput: {
            /** @description Backing plate. */
            readonly backingPlate?: components["schemas"]["BackingPlateInput"];
            /**
             * @description Diameter of a bolt.
             * @example 5/16 in
             */
            readonly boltMm: number | string;
            /**
             * Format: int32
             * @description Number of bolts.
             */
            readonly bolts: number;
            /** @description Clamp force of one bolt. */
            readonly clampForceN?: number;
            /** @description Name of the fitting. */
            readonly id: string;
            /**
             * @description Kind of fitting, which says what it has to hold.
             * @enum {string}
             */
            readonly kind: "stanchion" | "cleat" | "winch" | "windlass" | "chainplate" | "mast-step" | "track" | "hatch" | "fill" | "vent" | "pad-eye" | "other";
            /** @description Diameter of the hole potted with thickened resin. */
            readonly pottedMm?: number | string;
            /** @description Compressive strength of the thickened resin. Absent: 60 MPa (thickened epoxy, fully cured). */
            readonly pottedStrengthMPa?: number;
            /** @description Pull away from the deck. */
            readonly pullN?: number;
            /** @description Load along the deck. */
            readonly shearN?: number;
            /** @description Tightening torque, when the clamp force is not known. */
            readonly torqueNm?: number;
            /** @description Diameter of a washer. */
            readonly washerMm?: number | string;
        };
        readonly PanelInput: {
            /**
             * @description Access from below. Absent: lined (most decks have a lining that comes down before work and goes back after it).
             * @enum {string}
             */
            readonly accessBelow?: "open" | "lined" | "none";
            /** @description Radius of the camber; absent means flat. */
            readonly camberRadiusMm?: number | string;
            /** @description From the edge inwards; 0 where the core runs right out. */
            readonly coreEndsMm?: number | string;
            /**
             * @description How the panel is held at its edges. Absent: simply-supported (gives the larger deflection, so the comparison errs on the safe side).
             * @enum {string}
             */
            readonly edges?: "simply-supported" | "clamped";
            /** @description Hatches and other openings in the deck. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Shown by a drop test with every hole sealed from below; a vacuum bag needs it. */
            readonly isInnerSkinAirtight?: boolean;
            /**
             * @description A bonded moulded liner is no way through.
             * @enum {string}
             */
            readonly lining?: "none" | "zipped-vinyl" | "screwed-panels" | "glued-vinyl" | "moulded-liner";
            /** @description Name of the panel. */
            readonly name?: string;
            /**
             * @description Whether the outer skin is whole, or cracked or crazed.
             * @enum {string}
             */
            readonly outerSkinState?: "whole" | "cracked";
            /**
             * @description The edge of the panel, from support to support.
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
            /** @description What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
            readonly overlay?: components["schemas"]["OverlayInput"];
            /** @description Lines the deck rests on: no joint of core or skin over them.. */
            readonly supports?: readonly components["schemas"]["SupportLineInput"][];
            /**
             * @description Surface of the deck. Absent: painted-nonskid (the usual surface of an older deck).
             * @enum {string}
             */
            readonly surface?: "smooth-paint" | "painted-nonskid" | "moulded-nonskid" | "planked" | "bonded-mat";
            /** @description What lies below: each brings its caution and its checks. */
            readonly under?: readonly ("wiring" | "fuel-tank" | "water-tank" | "hoses" | "lining" | "insulation")[];
            /** @description Height clear for a person to work overhead. */
            readonly workingHeightMm?: number | string;
        };
        readonly PanelRecord: {
            /**
             * @description Access from below. Absent: lined (most decks have a lining that comes down before work and goes back after it).
             * @enum {string}
             */
            readonly accessBelow?: "lined" | "none" | "open";
            /** @description Radius of the camber; absent means flat. */
            readonly camberRadiusMm?: number;
            /** @description From the edge inwards; 0 where the core runs right out. */
            readonly coreEndsMm?: number;
            /**
             * @description How the panel is held at its edges. Absent: simply-supported (gives the larger deflection, so the comparison errs on the safe side).
             * @enum {string}
             */
            readonly edges?: "clamped" | "simply-supported";
            /** @description Hatches and other openings in the deck. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Shown by a drop test with every hole sealed from below; a vacuum bag needs it. */
            readonly isInnerSkinAirtight?: boolean;
            /**
             * @description A bonded moulded liner is no way through.
             * @enum {string}
             */
            readonly lining?: "glued-vinyl" | "moulded-liner" | "none" | "screwed-panels" | "zipped-vinyl";
            /** @description Name of the panel. */
            readonly name?: string;
            /**
             * @description Whether the outer skin is whole, or cracked or crazed.
             * @enum {string}
             */
            readonly outerSkinState?: "cracked" | "whole";
            /** @description The edge of the panel, from support to support. */
            readonly outline: readonly (readonly number[])[];
            /** @description What lies on the deck and must come off before the skin is cut; asked for where the surface is planked. */
            readonly overlay?: components["schemas"]["OverlayRecord"];
            /** @description Lines the deck rests on: no joint of core or skin over them.. */
            readonly supports?: readonly components["schemas"]["SupportLine"][];
            /**
             * @description Surface of the deck. Absent: painted-nonskid (the usual surface of an older deck).
             * @enum {string}
             */
            readonly surface?: "bonded-mat" | "moulded-nonskid" | "painted-nonskid" | "planked" | "smooth-paint";
            /** @description What lies below: each brings its caution and its checks. */
            readonly under?: readonly ("fuel-tank" | "hoses" | "insulation" | "lining" | "water-tank" | "wiring")[];
            /** @description Height clear for a person to work overhead. */
            readonly workingHeightMm?: number;
        };
        /** @description The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval. */
        readonly PanelSection: {
            /** @description What the comparison leaves out. */
            readonly limits: readonly string[];
            /** @description Loads that the deck is compared under. */
            readonly loads: readonly components["schemas"]["NamedValue"][];
            /** @description Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored. */
            readonly ratios: readonly components["schemas"]["NamedValue"][];
            /** @description By more than a laminate is repeated by hand. */
            readonly shortfalls: readonly string[];
            /** @description Length and width of the panel between supports. */
            readonly sizeMm: readonly number[];
            /** @description The deck before, open and after. */
            readonly states: readonly components["schemas"]["PanelState"][];
            /** @description `sizeMm` of PanelSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length and width of the panel between supports. */
                readonly sizeMm?: readonly string[];
            };
            /**
             * @description Whether the deck is as good as it was.
             * @enum {string}
             */
            readonly verdict: "not-restored" | "restored";
            /** @description What is short by less than that, in a sentence. */
            readonly withinHands: readonly string[];
        };
        readonly PanelSizeInput: {
            /** @description Each edge by itself, instead of edges. */
            readonly eachEdge?: components["schemas"]["EachEdgeInput"];
            /**
             * @description All four edges alike. Absent: simply-supported (the cautious case for deflection and for the middle of the panel).
             * @enum {string}
             */
            readonly edges?: "simply-supported" | "clamped" | "free";
            /**
             * @description Fore and aft, between supports.
             * @example 900
             */
            readonly lengthXMm: number | string;
            /**
             * @description Athwartships, between supports.
             * @example 600
             */
            readonly widthYMm: number | string;
        };
        readonly PanelState: {
            /** @description Bending stiffness of the deck fore and aft. */
            readonly bendingXNmm: number;
            /** @description Bending stiffness of the deck athwart. */
            readonly bendingYNmm: number;
            /** @description Only those that linear plate theory can stand for; `note` says which are left out. */
            readonly deflections: readonly {
                /** @description Greatest sag under it. */
                readonly deflectionMm: number;
                /** @description Load under which the deck sags. */
                readonly load: string;
                /** @description `deflectionMm` of PanelState in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Greatest sag under it. */
                    readonly deflectionMm?: string;
                };
            }[];
            /** @description What is nearest to its limit in this state. */
            readonly governs?: string;
            /** @description What to know about this state. */
            readonly note?: string;
            /** @description Shear stiffness of the deck. */
            readonly shearNPerMm: number;
            /**
             * @description As built, as found, opened or repaired.
             * @enum {string}
             */
            readonly state: "as-built" | "as-found" | "opened" | "repaired";
            /** @description `bendingXNmm`, `bendingYNmm` and `shearNPerMm` of PanelState in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Bending stiffness of the deck fore and aft. */
                readonly bendingXNmm?: string;
                /** @description In US units: Bending stiffness of the deck athwart. */
                readonly bendingYNmm?: string;
                /** @description In US units: Shear stiffness of the deck. */
                readonly shearNPerMm?: string;
            };
            /** @description How near: demand over capacity. */
            readonly utilisation?: number;
        };
        readonly Parties: {
            /** @description Client. */
            readonly client?: string;
            /** @description Owner, insurer or somebody else; where it is not the client. */
            readonly instructedBy?: string;
            /** @description The surveyor. */
            readonly surveyor?: components["schemas"]["Surveyor"];
        };
        readonly PartiesInput: {
            /** @description Client. */
            readonly client?: string;
            /** @description Owner, insurer or somebody else; where it is not the client. */
            readonly instructedBy?: string;
            /** @description The surveyor. */
            readonly surveyor?: components["schemas"]["SurveyorInput"];
        };
        readonly PartsWear: {
            /** @description Wear of the parts they replace. */
            readonly depreciation: components["schemas"]["MoneyJson"];
            /** @description Parts that wear counts on. */
            readonly parts: components["schemas"]["MoneyJson"];
            /** @description What is left of the price. */
            readonly remaining: components["schemas"]["MoneyJson"];
        };
        readonly PatchLoadInput: {
            /** @description Force. */
            readonly forceN: number;
            /**
             * @description A pressure on a patch of the panel. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "patch";
            /** @description Length fore and aft. */
            readonly lengthXMm: number | string;
            /** @description Your own name for the patch, as the answer shows it. */
            readonly name?: string;
            /** @description Width athwartships. */
            readonly widthYMm: number | string;
            /** @description Middle of the patch. */
            readonly xMm: number | string;
            /** @description Place athwartships. */
            readonly yMm: number | string;
        };
        readonly PersonLoadInput: {
            /** @description One person on one foot. Absent: 1000 N (one person landing on one foot; codes give 75 to 82.5 kg a person, 736 to 809 N standing). */
            readonly forceN?: number;
            /** @description Radius of a heel. Absent: 30 mm (heel of 30 mm radius). */
            readonly heelRadiusMm?: number | string;
            /**
             * @description People who stand on the panel. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "person";
            /** @description Your own name for the people, as the answer shows it. */
            readonly name?: string;
            /** @description Absent: the middle of the panel. */
            readonly xMm?: number | string;
            /** @description Place athwartships. */
            readonly yMm?: number | string;
        };
        readonly PhotographList: {
            /** @description By number. */
            readonly items: readonly components["schemas"]["DeckPhotograph"][];
        };
        /** @description One piece where it lies, in the coordinates of its sheet (mm). */
        readonly Placement: {
            /** @description Which of the alike pieces, from 1. */
            readonly copy: number;
            /** @description From 1: from the left edge, each before its right-hand neighbours. */
            readonly cutOrder: number;
            /** @description Holes of the piece where they lie. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description How far the turned piece is moved, [xMm, yMm]. */
            readonly moveMm: readonly number[];
            /** @description Edge of the piece where it lies. */
            readonly outline: readonly (readonly number[])[];
            /** @description Piece that is placed. */
            readonly pieceId: string;
            /** @description The drawing turned anticlockwise about its origin, then moved. */
            readonly turnDeg: number;
            /** @description `moveMm` of Placement in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How far the turned piece is moved, [xMm, yMm]. */
                readonly moveMm?: readonly string[];
            };
        };
        readonly PlaceSection: {
            /** @description Bad area to be expected there. */
            readonly badAreaM2: number;
            /** @description Why the rung stands where it stands. */
            readonly because: string;
            /** @description What is found at the place. */
            readonly place: string;
            /** @description Code of the rung. */
            readonly rung: string;
            /** @description Name of the rung. */
            readonly title: string;
            /** @description `badAreaM2` of PlaceSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Bad area to be expected there. */
                readonly badAreaM2?: string;
            };
        };
        readonly PlanFigures: {
            /** @description Derivation of the saw's depth. */
            readonly cutDepth?: components["schemas"]["Figure"];
            /** @description Derivation of the length of cuts. */
            readonly cutLength: components["schemas"]["Figure"];
            /** @description Derivation of the opened area. */
            readonly openedArea: components["schemas"]["Figure"];
            /** @description Derivation of the skin bedded again. */
            readonly retainedArea: components["schemas"]["Figure"];
            /** @description Derivation of the length of cuts between skin pieces. */
            readonly splitLength: components["schemas"]["Figure"];
            /** @description Derivation of the ground area. */
            readonly taperBandArea: components["schemas"]["Figure"];
            /** @description Derivation of the taper's width. */
            readonly taperWidth: components["schemas"]["Figure"];
            /** @description Derivation of the undercut area. */
            readonly undercutArea: components["schemas"]["Figure"];
        };
        /** @description Everything that stands on one card beside the pot. */
        readonly PlannedBatch: {
            /** @description Pieces or places that the pot is enough for. */
            readonly covers: readonly string[];
            /** @description Longest time after which the next pot may meet this one's edge. */
            readonly edgeOpenMin: number;
            /** @description Code of the filler in the pot. */
            readonly filler?: string;
            /** @description Filler in the pot. */
            readonly fillerG: number;
            /** @description Temperature that a pot left standing may reach. */
            readonly forgottenPotPeakC: number;
            /** @description Hardener in the pot. */
            readonly hardenerG: number;
            /**
             * @description What kept the pot from being larger.
             * @enum {string}
             */
            readonly limitedBy: "exotherm" | "piece" | "pot-life" | "pot-size" | "whole-step";
            /** @description Mass of resin and hardener mixed. */
            readonly mixedG: number;
            /** @description Volume of resin and hardener mixed. */
            readonly mixedMl: number;
            /** @description Number of the pot, from 1, in the order of mixing. */
            readonly number: number;
            /** @description Time until the pot would gel, left in the cup. */
            readonly potLifeMin: number;
            /** @description The same in strokes of a metering pump, where its stroke was stated. */
            readonly pumps?: string;
            /** @description Resin in the pot. */
            readonly resinG: number;
            /** @description Time that spreading the pot takes. */
            readonly spreadMin: number;
            /**
             * @description Kind of step that the pot is for.
             * @enum {string}
             */
            readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
            /** @description Step that the pot is for, by its place in the request. */
            readonly stepIndex: number;
            /** @description Name of that step. */
            readonly title: string;
            /** @description `resinG`, `hardenerG`, `fillerG` and 3 more of PlannedBatch in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Filler in the pot. */
                readonly fillerG?: string;
                /** @description In US units: Temperature that a pot left standing may reach. */
                readonly forgottenPotPeakC?: string;
                /** @description In US units: Hardener in the pot. */
                readonly hardenerG?: string;
                /** @description In US units: Mass of resin and hardener mixed. */
                readonly mixedG?: string;
                /** @description In US units: Volume of resin and hardener mixed. */
                readonly mixedMl?: string;
                /** @description In US units: Resin in the pot. */
                readonly resinG?: string;
            };
            /** @description Time from mixing within which the pot must be spread out. */
            readonly useWithinMin: number;
            /** @description What goes on the scale, in order. */
            readonly weigh: readonly components["schemas"]["Weighing"][];
        };
        readonly PlannedOpening: {
            /** @description What is cut out, corners rounded. */
            readonly area: components["schemas"]["Polygon"];
            /** @description Area of skin that the opening takes off. */
            readonly areaM2: number;
            /** @description Radius that the corners are cut to. */
            readonly cornerRadiusMm: number;
            /** @description Depth to set the saw to; absent when the skin is not known. */
            readonly cutDepthMm?: number;
            /** @description Length of the opening's cuts. */
            readonly cutLengthM: number;
            /**
             * @description Form of the opening.
             * @enum {string}
             */
            readonly form: "hull" | "octagon" | "outline" | "rectangle";
            /** @description Cuts round what stays within the opening. */
            readonly innerSawLines: readonly (readonly (readonly number[])[])[];
            /** @description Openings that were made into this one, with the reason. */
            readonly joins: readonly components["schemas"]["Join"][];
            /** @description A, B, C ... from the largest. */
            readonly label: string;
            /** @description How to mark the cuts out on deck with a tape. */
            readonly marking: components["schemas"]["MarkingOut"];
            /** @description Why this form was chosen. */
            readonly reason: string;
            /** @description The straight lines to mark, meeting in sharp corners. */
            readonly sawLine: readonly (readonly number[])[];
            /** @description Pieces the skin comes off in. */
            readonly skinPieces: readonly {
                /** @description Edge of the piece of skin. */
                readonly area: readonly components["schemas"]["Polygon"][];
                /** @description Area of the piece of skin. */
                readonly areaM2: number;
                /** @description Name of the piece of skin. */
                readonly label: string;
                /** @description `areaM2` of PlannedOpening in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Area of the piece of skin. */
                    readonly areaM2?: string;
                };
            }[];
            /** @description Cuts that part the skin into pieces, each from point to point. */
            readonly splits: readonly (readonly (readonly number[])[])[];
            /** @description Old skin round the opening that is ground. */
            readonly taperBand: readonly components["schemas"]["Polygon"][];
            /** @description Area of that band. */
            readonly taperBandAreaM2: number;
            /** @description Bad core under skin that stays. */
            readonly undercut: readonly components["schemas"]["Polygon"][];
            /** @description Core taken out from under the opening's edges. */
            readonly undercutAreaM2: number;
            /** @description Farthest reach under the edge. */
            readonly undercutReachMm: number;
            /** @description `cornerRadiusMm`, `areaM2`, `cutLengthM` and 4 more of PlannedOpening in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of skin that the opening takes off. */
                readonly areaM2?: string;
                /** @description In US units: Radius that the corners are cut to. */
                readonly cornerRadiusMm?: string;
                /** @description In US units: Depth to set the saw to; absent when the skin is not known. */
                readonly cutDepthMm?: string;
                /** @description In US units: Length of the opening's cuts. */
                readonly cutLengthM?: string;
                /** @description In US units: Area of that band. */
                readonly taperBandAreaM2?: string;
                /** @description In US units: Core taken out from under the opening's edges. */
                readonly undercutAreaM2?: string;
                /** @description In US units: Farthest reach under the edge. */
                readonly undercutReachMm?: string;
            };
            /** @description Ids of the zones it opens. */
            readonly zones: readonly string[];
        };
        readonly PlannedTask: {
            /** @description Codes of the tasks it follows. */
            readonly after: readonly string[];
            /** @description Code of the planned task. */
            readonly code: string;
            /** @description Share of the simulated calendars in which it decided the finish. */
            readonly criticality: number;
            /** @description Planned end (RFC 3339). */
            readonly endAt: string;
            /** @description When the work of the task ends, in days from the start of the plan. */
            readonly endDay: number;
            /**
             * @description What the weather must allow for the task.
             * @enum {string}
             */
            readonly gate: "coating" | "dry-deck" | "none" | "resin";
            /** @description How many work on it at once. */
            readonly hands: number;
            /** @description On the chain that decides the finish, by mean values. */
            readonly isCritical: boolean;
            /** @description Whether somebody must agree before work goes on. */
            readonly isHoldPoint: boolean;
            /** @description Mean hours of work in the task. */
            readonly labourH: number;
            /** @description Code of the operation it is a cycle of, or its own. */
            readonly operation: string;
            /**
             * @description Part of the job that the task belongs to.
             * @enum {string}
             */
            readonly phase: "bond" | "close" | "finish" | "hand-over" | "open" | "prepare" | "refit" | "survey";
            /** @description When its cure, drying or hold is over and successors may start. */
            readonly readyAt: string;
            /**
             * @description Skill that the task needs.
             * @enum {string}
             */
            readonly skill: "finisher" | "general" | "laminator" | "rigger";
            /** @description Planned start (RFC 3339). */
            readonly startAt: string;
            /** @description Days since the start date began, local. */
            readonly startDay: number;
            /** @description What holds the task back until its start. */
            readonly startsBecause: string;
            /** @description What the planned task does. */
            readonly title: string;
            /** @description Wait that follows the task. */
            readonly waitH: number;
            /**
             * @description Reason of that wait.
             * @enum {string}
             */
            readonly waitKind: "cure" | "drying" | "elapsed" | "hold" | "none";
        };
        readonly Plug: {
            /** @description Where it was tapped, [xMm, yMm]. */
            readonly at: readonly number[];
            /**
             * @description What the core in the plug was like.
             * @enum {string}
             */
            readonly condition: "damp-sound" | "debonded-dry" | "dry-sound" | "rotten" | "wet-bonded";
            /** @description Core as measured on the plug. */
            readonly coreMm?: number;
            /** @description Inner skin as measured on the plug. */
            readonly innerSkinMm?: number;
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that a core plug was drilled. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "plug";
            /** @description Moisture of the plug by mass of dry core. */
            readonly moisturePercent?: number;
            /** @description Outer skin as measured on the plug. */
            readonly outerSkinMm?: number;
        };
        readonly PlugInput: {
            /**
             * @description Where it was taken.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /**
             * @description What the plug showed.
             * @enum {string}
             */
            readonly condition: "dry-sound" | "damp-sound" | "wet-bonded" | "rotten" | "debonded-dry";
            /**
             * @description Thickness of the core: mm, or text with a unit.
             * @example 1/2 in
             */
            readonly coreMm?: number | string;
            /**
             * @description Thickness of the skin: mm, or text with a unit.
             * @example 1/8 in
             */
            readonly innerSkinMm?: number | string;
            /** @description Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that a plug was drilled at the place. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "plug";
            /** @description Moisture of the core in the plug, parts of its dry mass. */
            readonly moisturePercent?: number;
            /**
             * @description Thickness of the skin: mm, or text with a unit.
             * @example 1/8 in
             */
            readonly outerSkinMm?: number | string;
        };
        readonly PlyLine: {
            /** @description Glass to cut, without waste. */
            readonly areaM2: number;
            /** @description Mass of the glass. */
            readonly glassKg: number;
            /** @description Code of the glass. */
            readonly material: string;
            /** @description Name of the glass. */
            readonly materialName: string;
            /** @description Place in the order of laying, from 1. */
            readonly order: number;
            /** @description Direction of the warp against fore and aft. */
            readonly orientationDeg: number;
            /** @description Shape to cut. */
            readonly outline: readonly components["schemas"]["Area"][];
            /** @description Mass of resin that it takes. */
            readonly resinKg: number;
            /** @description Length off the roll. */
            readonly rollLengthM: number;
            /** @description Width of that roll. */
            readonly rollWidthMm: number;
            /** @description Thickness when cured. */
            readonly thicknessMm: number;
            /** @description `thicknessMm`, `areaM2`, `widthMm` and 4 more of PlyLine in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Glass to cut, without waste. */
                readonly areaM2?: string;
                /** @description In US units: Mass of the glass. */
                readonly glassKg?: string;
                /** @description In US units: Mass of resin that it takes. */
                readonly resinKg?: string;
                /** @description In US units: Length off the roll. */
                readonly rollLengthM?: string;
                /** @description In US units: Width of that roll. */
                readonly rollWidthMm?: string;
                /** @description In US units: Thickness when cured. */
                readonly thicknessMm?: string;
                /** @description In US units: Width, where the ply is a strip. */
                readonly widthMm?: string;
            };
            /** @description Width, where the ply is a strip. */
            readonly widthMm?: number;
        };
        readonly PlyToWetInput: {
            /** @description Dry fabric. */
            readonly arealMassGPerM2: number | string;
            /** @description Area of the ply that is wetted out. */
            readonly areaM2: number | string;
            /** @description Fibre mass fraction of the laid ply. */
            readonly fibreMassFraction: number;
            /** @description Label of the piece. */
            readonly label?: string;
        };
        /** @description `outer` runs from x towards y (positive signed area); each hole runs the other way. */
        readonly Polygon: {
            /** @description Rings that are left out. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Outer ring, points in order. */
            readonly outer: readonly (readonly number[])[];
        };
        readonly PotLifeInput: {
            /** @description Mass in the pot. */
            readonly massG: number;
            /** @description Minutes that this pot stays workable. */
            readonly minutes: components["schemas"]["DatumInput"];
            /** @description Warmth at which it was mixed. */
            readonly temperatureC: number;
        };
        readonly PressedCamberInput: {
            /** @description Modulus. */
            readonly modulusMPa: number;
            /** @description Piece length. */
            readonly pieceLengthMm: number | string;
            /** @description Radius. */
            readonly radiusMm: number | string;
            /** @description Thickness of the core that is pressed to the curve. */
            readonly thicknessMm: number | string;
        };
        readonly PressedSkinInput: {
            /** @description Proven by a drop test; absent: not known, which refuses a bag. */
            readonly isAirtight?: boolean;
            /** @description Modulus of the inner skin. Absent: 9000 MPa (hand-laid mat and woven glass). */
            readonly modulusMPa?: number;
            /**
             * @description Clear distance between the supports that are there.
             * @example 600
             */
            readonly spanMm: number | string;
            /** @description Bending strength of the inner skin. Absent: 140 MPa (hand-laid mat and woven glass, sound). */
            readonly strengthMPa?: number;
            /**
             * @description The skin that stays.
             * @example 3
             */
            readonly thicknessMm: number | string;
        };
        /** @description A length of timber under, on or over the area that is pressed, and the places along it. */
        readonly PressLine: {
            /** @description One end of it: along the length of the area and across it, in mm. */
            readonly from: readonly number[];
            /** @description Where a prop stands under a board, or a screw goes through a batten. */
            readonly points: readonly (readonly number[])[];
            /** @description Its other end. */
            readonly to: readonly number[];
            /**
             * @description A board on props, a batten that is screwed down, or a bow that keeps the shape of the deck.
             * @enum {string}
             */
            readonly what: "batten" | "board" | "bow";
        };
        /** @description One way to press, with what it can do here and what speaks against it. */
        readonly PressOption: {
            /** @description Pressure that this way can give. */
            readonly availableKPa?: number;
            /** @description How evenly it presses. */
            readonly evenness: string;
            /** @description Where its timber lies, from one corner of the area. */
            readonly lines?: readonly components["schemas"]["PressLine"][];
            /**
             * @description The way of pressing judged.
             * @enum {string}
             */
            readonly method: "battens" | "jacks" | "vacuum" | "weights";
            /** @description Load that the inner skin must carry while it cures. */
            readonly onInnerSkinKPa: number;
            /** @description What lies on each square metre of a piece, or pushes against it. */
            readonly onPieceKgPerM2?: number;
            /** @description What this way would take. */
            readonly quantities: readonly components["schemas"]["PressQuantity"][];
            /** @description What speaks for it or against it. */
            readonly reasons: readonly string[];
            /** @description Why it cannot be used here at all. */
            readonly refusals: readonly string[];
            /** @description What carries the force of this way. */
            readonly restsOn: string;
            /** @description Span over which it carries that; the clear span where nothing else holds it. */
            readonly skinSpanMm?: number;
            /** @description One after another, where a crew cannot press the whole opening at once. */
            readonly turns?: number;
            /** @description `availableKPa`, `onInnerSkinKPa`, `skinSpanMm` and `onPieceKgPerM2` of PressOption in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Pressure that this way can give. */
                readonly availableKPa?: string;
                /** @description In US units: Load that the inner skin must carry while it cures. */
                readonly onInnerSkinKPa?: string;
                /** @description In US units: What lies on each square metre of a piece, or pushes against it. */
                readonly onPieceKgPerM2?: string;
                /** @description In US units: Span over which it carries that; the clear span where nothing else holds it. */
                readonly skinSpanMm?: string;
            };
            /** @description Needed pressure over what this way gives; above 1 it is too weak. */
            readonly utilisation?: number;
            /**
             * @description Whether this way will do.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        readonly PressQuantity: {
            /** @description What is counted for the pressing. */
            readonly code: string;
            /** @description Name of what is counted. */
            readonly name: string;
            /** @description What to heed about it. */
            readonly note?: string;
            /** @description Unit of the count or measure. */
            readonly unit: string;
            /** @description `value` of PressQuantity in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How much of it. */
                readonly value?: string;
            };
            /** @description How much of it. */
            readonly value: number;
        };
        readonly PressureLoadInput: {
            /**
             * @description A pressure over the whole panel. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "pressure";
            /** @description Your own name for the pressure, as the answer shows it. */
            readonly name?: string;
            /** @description Pressure. */
            readonly pressureKPa: number;
        };
        readonly PreviewedOpening: {
            /** @description Edge of the opening. */
            readonly area: components["schemas"]["Area"];
            /** @description Area of the opening. */
            readonly areaM2: number;
            /** @description Absent when no depth is safe; a finding says why. */
            readonly cutDepthMm?: number;
            /** @description Length of its saw cuts. */
            readonly cutLengthM: number;
            /** @description Name of the opening on drawings. */
            readonly label: string;
            /** @description Why the opening has this form. */
            readonly reason: string;
            /** @description Corners of the saw line before rounding, measured from the datum corner of the panel. */
            readonly sawLine: readonly (readonly number[])[];
            /** @description `areaM2`, `cutLengthM` and `cutDepthMm` of PreviewedOpening in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the opening. */
                readonly areaM2?: string;
                /** @description In US units: Absent when no depth is safe; a finding says why. */
                readonly cutDepthMm?: string;
                /** @description In US units: Length of its saw cuts. */
                readonly cutLengthM?: string;
            };
        };
        /** @description Of the repaired panel beside the deck as built. */
        readonly PreviewPanel: {
            /** @description The comparison in a sentence. */
            readonly sentence: string;
            /** @description Every measure of which the repair gives back less than there was, worst first. */
            readonly shortfalls: readonly string[];
            /**
             * @description How the repaired deck compares with the old one.
             * @enum {string}
             */
            readonly verdict: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
        };
        readonly PreviewPrice: {
            /** @description Needs that nothing on the price list covers, and that are not in the price. */
            readonly missing: readonly string[];
            /** @description With tax, as the extent and the rates may turn out. */
            readonly range: components["schemas"]["EstimateMoneyRange"];
            /** @description Base and what will probably be found besides, with tax; no contingency. */
            readonly withoutContingency: components["schemas"]["MoneyJson"];
        };
        readonly PreviewSummary: {
            /** @description Days from start to end, waits included, as a spread. */
            readonly calendarDays: components["schemas"]["Range"];
            /** @description Length of all saw cuts. */
            readonly cutLengthM: number;
            /** @description Absent where the deck stays closed. */
            readonly damagedAreaM2?: components["schemas"]["Range"];
            /** @description Hours of work, as a spread. */
            readonly labourH: components["schemas"]["Range"];
            /** @description Sum of the labour lines: each at its likely hours. */
            readonly labourLikelyH: number;
            /** @description Mixed resin with losses. */
            readonly mixedResinL: number;
            /** @description Skin that comes off, in all openings. */
            readonly openedAreaM2: number;
            /** @description Plies of the new skin. */
            readonly plyCount: number;
            /** @description `damagedAreaM2`, `openedAreaM2`, `cutLengthM` and `mixedResinL` of PreviewSummary in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of all saw cuts. */
                readonly cutLengthM?: string;
                /** @description In US units: Absent where the deck stays closed. */
                readonly damagedAreaM2?: {
                    /** @description In US units: One job in ten comes to less. */
                    readonly p10: string;
                    /** @description In US units: Half of the jobs come to less. */
                    readonly p50: string;
                    /** @description In US units: Nine jobs in ten come to less. */
                    readonly p90: string;
                };
                /** @description In US units: Mixed resin with losses. */
                readonly mixedResinL?: string;
                /** @description In US units: Skin that comes off, in all openings. */
                readonly openedAreaM2?: string;
            };
            /** @description Days of work, as a spread. */
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly PriceBreakInput: {
            /**
             * Format: int32
             * @description Packs from which the price holds.
             */
            readonly fromPacks: number;
            /** @description Price of one pack from then on. */
            readonly price: string;
        };
        /** @description What a percentage did to a price list of a draft. */
        readonly PriceChange: {
            /** @description Those of them whose prices differ now; a small percentage can be rounded away. */
            readonly changed: readonly components["schemas"]["ChangedPack"][];
            /** @description How many packs the choice met. */
            readonly chosenCount: number;
            /** @description Currency of the changed prices. */
            readonly currency: string;
            /** @description Code of the draft. */
            readonly edition: string;
            /** @description By how much they changed, as decimal text. */
            readonly percent: string;
            /** @description Code of the price list. */
            readonly priceList: string;
        };
        readonly PriceChangeInput: {
            /** @description Only packs that hold these materials, by code. */
            readonly materials?: readonly string[];
            /**
             * @description How far prices rise, or fall with a minus sign before it.
             * @example 4.5
             */
            readonly percent: string;
            /**
             * @description The step that new prices are rounded to; the minor unit of the currency when absent.
             * @example 0.05
             */
            readonly roundTo?: string;
            /** @description Only these packs, by SKU. */
            readonly skus?: readonly string[];
            /** @description Only packs of these suppliers, by code. */
            readonly suppliers?: readonly string[];
        };
        readonly PricedJob: {
            /** @description Spread of the price; absent when it was not asked for. */
            readonly risk?: components["schemas"]["CostRisk"];
            /** @description Lines, loadings and taxes. */
            readonly rollUp: components["schemas"]["CostRollUp"];
        };
        readonly PriceListInput: {
            /** @description Code of the list, unique in the edition. */
            readonly code: string;
            /**
             * @description Currency of all prices in the list (ISO 4217).
             * @enum {string}
             */
            readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
            /** @description True for prices of an invented scenario. */
            readonly invented: boolean;
            /** @description Name that estimates show the list by. */
            readonly name: string;
            /** @description What can be bought, one entry a pack. */
            readonly packs: readonly components["schemas"]["PackInput"][];
            /** @description Whether the prices hold tax already. */
            readonly pricesIncludeTax: boolean;
            /** @description Who sells, and on which terms. */
            readonly suppliers: readonly components["schemas"]["SupplierInput"][];
            /**
             * Format: date
             * @description First day that the prices hold (ISO 8601).
             */
            readonly validFrom: string;
            /**
             * Format: date
             * @description Last day that the prices hold (ISO 8601).
             */
            readonly validTo: string;
        };
        readonly PricingChoice: {
            /** @description Hours above those expected that need a new word of the owner. Absent: 15 % (yards ask again when the time changes by more than that). */
            readonly authorisationPercent?: number;
            /** @description Absent: P80 less what is expected. */
            readonly contingencyPercent?: number;
            /** @description Exact decimal text in the currency of the price list. */
            readonly deductible?: string;
            /** @description Wear of the parts that are replaced; shown beside the price, which it does not change. */
            readonly depreciation?: components["schemas"]["DepreciationTerms"];
            /** @description They take over from the judged growth as they come: n of them weigh n/(n + 15). */
            readonly foundOverRecorded?: readonly number[];
            /**
             * @description As used: what the job takes of each pack, the part of an opened one that will be past its date, and the wear of gear. As bought: whole packs and all gear. The basket is of whole packs either way.
             * @enum {string}
             */
            readonly goods?: "as-bought" | "as-used";
            /** @description Labour rates. */
            readonly labourRates?: string;
            /** @description Price list. */
            readonly priceList?: string;
            /** @description Number of draws of older records, of no effect now: the figures are integrated over a fixed lattice. */
            readonly samples?: number;
            /** @description Seed of older records, of no effect now: the figures are integrated over a fixed lattice. */
            readonly seed?: number;
        };
        readonly PricingInput: {
            /** @description Hours above those expected that need a new word of the owner. Absent: 15 % (yards ask again when the time changes by more than that). */
            readonly authorisationPercent?: number;
            /** @description Absent: P80 less what is expected. */
            readonly contingencyPercent?: number;
            /** @description Exact decimal text in the currency of the price list. */
            readonly deductible?: string;
            /** @description Wear of the parts that are replaced; shown beside the price, which it does not change. */
            readonly depreciation?: components["schemas"]["DepreciationInput"];
            /** @description They take over from the judged growth as they come: n of them weigh n/(n + 15). */
            readonly foundOverRecorded?: readonly number[];
            /**
             * @description As used: what the job takes of each pack, the part of an opened one that will be past its date, and the wear of gear. As bought: whole packs and all gear. The basket is of whole packs either way.
             * @enum {string}
             */
            readonly goods?: "as-used" | "as-bought";
            /** @description Labour rates. */
            readonly labourRates?: string;
            /** @description Price list. */
            readonly priceList?: string;
            /**
             * Format: int32
             * @description Number of draws of older records, of no effect now: the figures are integrated over a fixed lattice.
             */
            readonly samples?: number;
            /**
             * Format: int64
             * @description Seed of older records, of no effect now: the figures are integrated over a fixed lattice.
             */
            readonly seed?: number;
        };
        readonly ProbabilityContour: {
            /** @description Area within this edge. */
            readonly areaM2: number;
            /** @description Where core is bad with at least this probability. */
            readonly areas: readonly components["schemas"]["Polygon"][];
            /** @description Chance of bad core along this edge. */
            readonly probability: number;
            /** @description `areaM2` of ProbabilityContour in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area within this edge. */
                readonly areaM2?: string;
            };
        };
        readonly ProbabilityMap: {
            /** @description Places with their chances. */
            readonly cells: readonly {
                /** @description Middle of the cell, [xMm, yMm]. */
                readonly at: readonly number[];
                /** @description Chance that the core is bad there. */
                readonly chance: number;
            }[];
            /** @description How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
            readonly hammer?: {
                /** @description Share of sound places that sound dull. */
                readonly falseAlarmShare: number;
                /** @description How likely it is that its errors hang together in patches. */
                readonly hangingTogether: number;
                /** @description Share of bad places that ring clear. */
                readonly missedShare: number;
            };
            /** @description Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays. */
            readonly meter?: {
                /** @description Mean reading over bad core, as a share of the meter's span. */
                readonly overBadShare: number;
                /** @description Mean reading over sound core, as a share of the meter's span. */
                readonly overSoundShare: number;
                /** @description Scatter of readings, as a share of the meter's span. */
                readonly sdShare: number;
            };
            /** @description Distance over which the readings suggest that the damage hangs together. */
            readonly rangeMm: number;
            /** @description Distance between the places of the map. */
            readonly stepMm: number;
            /** @description `stepMm` and `rangeMm` of ProbabilityMap in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Distance over which the readings suggest that the damage hangs together. */
                readonly rangeMm?: string;
                /** @description In US units: Distance between the places of the map. */
                readonly stepMm?: string;
            };
        };
        /** @description Something the caller can put right. Words are made from the code, in `problem-words.ts` only. */
        readonly Problem: {
            /** @description JSON Pointer (RFC 6901) to the offending field; '' is the whole document. */
            readonly at: string;
            /**
             * @description Stable code of the problem.
             * @enum {string}
             */
            readonly code: "breaks-out-of-order" | "clock-change" | "contradiction" | "duplicate" | "duplicate-name" | "forecast-gap" | "forecast-order" | "hardener-without-resin" | "malformed-json" | "method-unfit" | "missing" | "network-cycle" | "no-method-fits" | "no-time-zone" | "not-a-decimal" | "not-a-flag" | "not-a-list" | "not-a-number" | "not-a-point" | "not-a-quantity" | "not-an-object" | "not-in-form" | "not-one-of" | "not-supported" | "not-text" | "nothing-left" | "nothing-to-repair" | "other-currency" | "out-of-range" | "outline-crosses-itself" | "outline-without-area" | "outside-panel" | "reserved-name" | "resin-too-cold" | "text-length" | "too-deep" | "too-few" | "too-large-for-stock" | "too-many" | "unit-mismatch" | "unknown-code" | "unknown-field" | "unusable-text" | "wrong-unit" | "wrong-zone";
            /** @description What the sentence of the problem is made of. */
            readonly facts: {
                readonly [key: string]: boolean | string | number;
            };
        };
        /** @description RFC 9457 problem document; names all faults at once. */
        readonly ProblemDocument: {
            /** @description What was refused this time, and why. */
            readonly detail: string;
            /**
             * Format: int32
             * @description How many faults there are in all; errors shows the first 100.
             */
            readonly errorCount?: number;
            /** @description All that is wrong with the request, each with its place. */
            readonly errors?: readonly components["schemas"]["ProblemEntry"][];
            /**
             * Format: uri-reference
             * @description Path that was asked.
             */
            readonly instance?: string;
            /** @description Names the request in the logs; say it when you ask for help. */
            readonly requestId: string;
            /**
             * Format: int32
             * @description HTTP status of the refusal.
             */
            readonly status: number;
            /** @description The kind of refusal, in words. */
            readonly title: string;
            /**
             * Format: uri-reference
             * @description Address of a page that explains this kind of refusal.
             * @enum {string}
             */
            readonly type: "/problems/bad-request" | "/problems/unauthenticated" | "/problems/forbidden" | "/problems/not-found" | "/problems/method-not-allowed" | "/problems/not-acceptable" | "/problems/request-timeout" | "/problems/conflict" | "/problems/precondition-failed" | "/problems/content-too-large" | "/problems/unsupported-media-type" | "/problems/unprocessable" | "/problems/precondition-required" | "/problems/too-many-requests" | "/problems/headers-too-large" | "/problems/internal" | "/problems/unavailable";
        };
        /** @description One thing that is wrong, with its place in the request. */
        readonly ProblemEntry: {
            /** @description Stable; see /problems. */
            readonly code: string;
            /** @description Heading of the column of a sheet. */
            readonly column?: string;
            /** @description What is wrong, and what would be right. */
            readonly detail: string;
            /** @description Numbers and words of the detail, by name. */
            readonly facts: {
                readonly [key: string]: string | number | boolean;
            };
            /** @description Name of the header field. */
            readonly header?: string;
            /** @description Name of the query or path parameter. */
            readonly parameter?: string;
            /**
             * Format: json-pointer
             * @description RFC 6901 pointer into the request body; empty for the whole body.
             */
            readonly pointer?: string;
            /**
             * Format: int32
             * @description Row of a sheet, as a spreadsheet counts them: the headings are row 1. Empty lines do not count.
             */
            readonly row?: number;
            /** @description The kind of fault, in words. */
            readonly title: string;
        };
        readonly ProcessSection: {
            /** @description A card for each pot. */
            readonly batches: readonly components["schemas"]["BatchCard"][];
            /** @description Absent where nothing is bedded that would have to be pressed. */
            readonly bondPressure?: components["schemas"]["BondPressureSection"];
            /** @description Tasks and days. */
            readonly calendar: components["schemas"]["CalendarSection"];
            /** @description When each mix can be worked on. */
            readonly cure: readonly components["schemas"]["CureMilestones"][];
            /** @description Mix that each step takes. */
            readonly demands: readonly components["schemas"]["ResinStep"][];
            /** @description What stands against these pots at this temperature with this crew. */
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            /** @description What each step waits for. */
            readonly gates: readonly {
                /** @description What it waits for, in words. */
                readonly requires: readonly string[];
                /** @description Step that waits. */
                readonly step: string;
            }[];
            /** @description Resin and hardener that the work is planned with. */
            readonly resin: {
                /** @description Code of the planned resin. */
                readonly code: string;
                /** @description Code of the planned hardener. */
                readonly hardener: string;
                /** @description Name of the planned hardener. */
                readonly hardenerName: string;
                /** @description Name of the planned resin. */
                readonly name: string;
                /** @description Why they suit the work and its warmth. */
                readonly why: string;
            };
            /** @description When each step may start; only with a forecast. Without one the gates say what to require. */
            readonly weather?: components["schemas"]["WeatherSection"];
        };
        /** @description The search went to its end. */
        readonly Proven: {
            /**
             * @description Says that no cheaper basket exists. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "proven";
        };
        readonly ProvenanceStamp: {
            /** @description Hash of the edition's content. */
            readonly catalogueHash: string;
            /** @description Code of the catalogue's edition. */
            readonly edition: string;
            /** @description Version of the program. */
            readonly engineVersion: string;
            /** @description Code of the labour rates. */
            readonly labourRates: string;
            /** @description Code of the price list that the lines were priced from. */
            readonly priceList: string;
        };
        /** @description A quantity that nobody has measured yet, with the price that the measured one will have. */
        readonly ProvisionalSum: {
            /** @description Sum that is set aside. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Why the sum is set aside. */
            readonly basis: string;
            /** @description Quantity that it is enough for. */
            readonly quantity: number;
            /** @description Unit of that quantity. */
            readonly unit: string;
            /** @description Price at which it is measured later. */
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description `quantity` of ProvisionalSum in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Quantity that it is enough for. */
                readonly quantity?: string;
            };
        };
        readonly PublicationInput: {
            /**
             * Format: date-time
             * @description From when it counts; at once when absent. Until then the present edition stays current.
             */
            readonly effectiveAt?: string;
        };
        readonly PublicationNamed: {
            /** @description Edition that the event tells of. */
            readonly code: string;
            /** @description RFC 3339 instant from which it counts; absent when that is at once. */
            readonly effectiveAt?: string;
            /** @description Path of the edition. */
            readonly href: string;
        };
        /** @description A key that stands in a page for everybody to read: it makes estimates and lists none. */
        readonly PublishableKey: {
            /** @description When the key was made (RFC 3339). */
            readonly createdAt: string;
            /** @description The edition it estimates with; whichever is current when absent. */
            readonly edition?: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            /** @description Id of the key; not the key itself. */
            readonly id: string;
            /** @description The key, which may stand in a page. */
            readonly key: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            /** @description What the key is used for; stands in histories. */
            readonly name: string;
            /** @description Organisation the key belongs to. */
            readonly organisationId: string;
            /** @description Origins of the pages that may use it. */
            readonly origins: readonly string[];
            /** @description Estimates a day, counted from midnight UTC. */
            readonly perDay: number;
            /** @description Requests a minute of all visitors together. */
            readonly perMinute: number;
            /** @description Requests a minute from one address. */
            readonly perMinutePerVisitor: number;
            /** @description When it stopped counting (RFC 3339); absent while it counts. */
            readonly revokedAt?: string;
        };
        readonly PublishableKeyList: {
            /** @description Publishable keys of the organisation. */
            readonly items: readonly components["schemas"]["PublishableKey"][];
            /** @description Give it as `cursor` for more publishable keys; absent on the last page. */
            readonly nextCursor?: string;
        };
        /** @description Three points of an uncertain number. */
        readonly Quantiles: {
            /** @description Value that one case in ten stays below. */
            readonly p10: number;
            /** @description Value that half of the cases stay below. */
            readonly p50: number;
            /** @description Value that nine cases in ten stay below. */
            readonly p90: number;
        };
        readonly QuantitiesRead: {
            /** @description The texts, in the order sent, each as it was understood. */
            readonly quantities: readonly components["schemas"]["QuantityRead"][];
        };
        readonly QuantitiesRequest: {
            /** @description Texts to read, each with the unit that is wanted. */
            readonly quantities: readonly components["schemas"]["TypedQuantityInput"][];
        };
        readonly QuantityRead: {
            /** @description The text as sent. */
            readonly text: string;
            /** @description Unit that was recognised. */
            readonly unit: string;
            /** @description `value` of QuantityRead in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
                readonly value?: string;
            };
            /** @description In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
            readonly value: number;
        };
        /** @description Three points of one uncertain number. */
        readonly Range: {
            /** @description One job in ten comes to less. */
            readonly p10: number;
            /** @description Half of the jobs come to less. */
            readonly p50: number;
            /** @description Nine jobs in ten come to less. */
            readonly p90: number;
        };
        readonly RatePerHourInput: {
            /** @description Rate of whoever fairs and paints. */
            readonly finisher: string;
            /** @description Rate of general labour. */
            readonly general: string;
            /** @description Rate of whoever laminates. */
            readonly laminator: string;
            /** @description Rate of whoever takes rig and fittings off. */
            readonly rigger: string;
        };
        readonly Ratio: {
            /** @description Share of what is allowed that the deck as built used, and that the repair uses. */
            readonly asBuiltUtilisation: number;
            /** @description Check that repaired and built deck share. */
            readonly code: string;
            /** @description Names check and load together. */
            readonly key: string;
            /** @description Load that both are under. */
            readonly load?: string;
            /** @description Repaired over built; 1 is as good as it was. */
            readonly ratio: number;
            /** @description Demand over capacity of the repaired deck. */
            readonly repairedUtilisation: number;
            /** @description Name of what is compared. */
            readonly title: string;
        };
        readonly RebeddedSkinInput: {
            /** @description Length of the cut, where no outline is given. */
            readonly cutLengthMm?: number | string;
            /** @description Instead of plies: one fabric, laid as often as fills the groove. */
            readonly fillWith?: string;
            /** @description Joint. */
            readonly joint?: components["schemas"]["JointInput"];
            /** @description Width of the cut. Absent: 4 mm (a circular saw with a glass-cutting blade). */
            readonly kerfMm?: number | string;
            /** @description Longest strip. Absent: 2000 mm (as long as two people lay wet before it kicks). */
            readonly longestStripMm?: number | string;
            /** @description The opening whose edge is the cut. */
            readonly opening?: readonly (readonly number[])[];
            /**
             * @description Order of the plies. Absent: smallest-first (both orders are in use, and no published test decides between them for decks).
             * @enum {string}
             */
            readonly order?: "smallest-first" | "largest-first";
            /** @description Overlap of strips of one ply. Absent: 50 mm (edges of successive reinforcements stagger by 50 mm, and seams of the next ply keep away from them). */
            readonly overlapMm?: number | string;
            /** @description Plies over the cut from the core outwards. */
            readonly plies?: readonly components["schemas"]["NamedPlyInput"][];
            /** @description Clear width from the cut to the nearest edge or fitting. */
            readonly roomMm?: number | string;
            /**
             * @description Skin thickness.
             * @example 2
             */
            readonly skinThicknessMm: number | string;
            /** @description Absent: 12, and on thin skins as much as makes it 20 mm wide. */
            readonly taperRatio?: number;
            /** @description Most laid wet on wet. Absent: 4 mm (solid hand lay-up of 4 to 6 mm in one go is where overheating is reported). */
            readonly wetLimitMm?: number | string;
        };
        readonly ReinforcementInput: {
            /** @description Mass of the dry fabric. */
            readonly arealMassGPerM2: components["schemas"]["DatumInput"];
            /** @description Stable code of the fabric, unique in the edition. */
            readonly code: string;
            /**
             * @description How the fabric is made.
             * @enum {string}
             */
            readonly fabric: "mat" | "cloth" | "woven-roving" | "biaxial" | "biaxial-mat" | "unidirectional" | "tape";
            /**
             * @description What its fibres are.
             * @enum {string}
             */
            readonly fibre: "e-glass";
            /** @description Glass over laminate by mass, as it is usually wetted out by hand. */
            readonly fibreMassFraction: components["schemas"]["DatumInput"];
            /** @description Hazard statements (GHS) of the fabric, such as H226. */
            readonly hazards?: readonly string[];
            /**
             * @description Says that the material is a fabric. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "reinforcement";
            /** @description Bottom first. */
            readonly layers: readonly components["schemas"]["FabricLayerInput"][];
            /** @description Generic specification of the fabric in trade words. */
            readonly name: string;
            /** @description 0 not at all, 3 strongly. */
            readonly printThrough: number;
            /** @description Lengths that its rolls are sold in. */
            readonly rollLengthsM: readonly number[];
            /** @description Widths that its rolls are sold in. */
            readonly rollWidthsMm: readonly number[];
            /** @description Whether it may lie next to the core. */
            readonly suitsAgainstCore: boolean;
            /** @description Chemistries that wet it out. */
            readonly suitsResins: readonly ("epoxy" | "polyester" | "vinylester")[];
        };
        readonly ReinspectionPoint: {
            /** @description What makes it good. */
            readonly accept: string;
            /** @description What must not begin before. */
            readonly before: string;
            /** @description Who should look. */
            readonly by: string;
            /** @description What to look at or measure. */
            readonly look: string;
            /** @description Source of the point. */
            readonly source: string;
            /** @description At which point of the work. */
            readonly when: string;
        };
        readonly RelaidPlies: {
            /** @description What was taken about plies and rolls. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description What this order means for the work. */
            readonly consequences: readonly string[];
            /** @description Glass of all new plies. */
            readonly glassKg: components["schemas"]["Figure"];
            /** @description Area of the largest ply in one piece. */
            readonly largestPlyM2: number;
            /** @description What the laminator should heed. */
            readonly notes: readonly string[];
            /**
             * @description Whether the largest or the smallest ply is laid first.
             * @enum {string}
             */
            readonly order: "largest-first" | "smallest-first";
            /** @description New plies in the order they are laid. */
            readonly plies: readonly components["schemas"]["LaidOutPly"][];
            /** @description Resin of all new plies. */
            readonly resinKg: components["schemas"]["Figure"];
            /** @description Whether the taper stays on the panel. */
            readonly room: components["schemas"]["RoomCheck"];
            /** @description What is laid wet on wet before it must cool. */
            readonly stages: readonly components["schemas"]["Stage"][];
            /** @description Area of the taper. */
            readonly taperAreaM2: number;
            /** @description Width of the taper that the new plies step up. */
            readonly taperWidthMm: components["schemas"]["Figure"];
            /** @description `taperAreaM2` and `largestPlyM2` of RelaidPlies in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area of the largest ply in one piece. */
                readonly largestPlyM2?: string;
                /** @description In US units: Area of the taper. */
                readonly taperAreaM2?: string;
            };
        };
        readonly RelaidSkinInput: {
            /** @description Fabrics at hand; absent: every reinforcement of the catalogue. */
            readonly fabrics?: readonly components["schemas"]["NamedFabricInput"][];
            /** @description Absent: 0.5 mm proud to 1 mm low (what is faired without a visible hump, and what fairing fills). */
            readonly flush?: components["schemas"]["FlushInput"];
            /** @description With it, the best skin is laid out over the opening. */
            readonly layOut?: components["schemas"]["LayOutInput"];
            /** @description Limits of the schedule. */
            readonly limits?: components["schemas"]["ScheduleLimitsInput"];
            /** @description Old skin. */
            readonly oldSkin: components["schemas"]["OldSkinInput"];
            /** @description With it, the bending of the panel is restored too. */
            readonly panel?: components["schemas"]["PanelBelowInput"];
            /**
             * @description Which build of a guessed old skin is restored; absent: likely.
             * @enum {string}
             */
            readonly restore?: "likely" | "strongest";
            /** @description Restore shear stiffness in the plane too; absent: false. */
            readonly restoreShear?: boolean;
        };
        /** @description What was found, charged or credited by the rates that were agreed with the price; without tax. */
        readonly ReMeasured: {
            /** @description Hours that the customer authorised beforehand. */
            readonly authorisedH: number;
            /** @description The items less the credit. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Hours that the found extent now takes. */
            readonly expectedH: number;
            /** @description Whether the expected hours stay within the authorised ones. */
            readonly isWithinAuthorisation: boolean;
            /** @description What was measured anew, each at the agreed rate. */
            readonly items: readonly components["schemas"]["ReMeasuredItem"][];
            /** @description Sum of the items. */
            readonly measured: components["schemas"]["MoneyJson"];
            /** @description The provisional sums of the agreed price: taken off, because what they stood for has been measured. */
            readonly provisionalCredited: components["schemas"]["MoneyJson"];
        };
        readonly ReMeasuredItem: {
            /** @description What is more or less of it, at the agreed rate. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Unit rate that was agreed. */
            readonly code: string;
            /** @description Quantity of the offer, as decimal text. */
            readonly quantityAgreed: string;
            /** @description Quantity found after opening, as decimal text. */
            readonly quantityFound: string;
            /** @description Agreed price of one unit. */
            readonly rate: components["schemas"]["MoneyJson"];
            /** @description Unit that it is measured in. */
            readonly unit: string;
            /** @description What is measured. */
            readonly what: string;
        };
        readonly RenewalInput: {
            /**
             * Format: int32
             * @description Hours for which the old key still opens what it opened, so that programs can change over.
             */
            readonly overlapHours: number;
        };
        /** @description The estimate computed again from its own record and edition. */
        readonly Replay: {
            /** @description Version of the program that replayed it. */
            readonly engineVersionNow: string;
            /** @description True when every digit of the document came out again. */
            readonly isSame: boolean;
            /** @description False when the edition's content is no longer the one that was used. */
            readonly isSameCatalogue: boolean;
            /** @description What the stored estimate was made with. */
            readonly madeWith: {
                /** @description Hash of that edition's content. */
                readonly catalogueHash: string;
                /** @description Edition of the catalogue then. */
                readonly edition: string;
                /** @description Version of the program then. */
                readonly engineVersion: string;
            };
            /** @description Total that came out now. */
            readonly totalNow: components["schemas"]["MoneyJson"];
            /** @description Total that was stored. */
            readonly totalThen: components["schemas"]["MoneyJson"];
        };
        readonly Requirement: {
            /** @description Source of the limit. */
            readonly cite: components["schemas"]["Cite"];
            /**
             * @description Which gate the requirement belongs to.
             * @enum {string}
             */
            readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
            /** @description Value that must be kept. */
            readonly limit: number;
            /** @description The requirement in words. */
            readonly text: string;
            /** @description Unit of the limit. */
            readonly unit: string;
            /** @description `limit` of Requirement in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Value that must be kept. */
                readonly limit?: string;
            };
        };
        readonly ResinBatchesRequest: {
            /** @description The deck; absent: as the air. */
            readonly deckTemperatureC?: number | string;
            /** @description Codes of the fillers at hand; absent: every filler of the catalogue. */
            readonly fillers?: readonly string[];
            /** @description Code of one of its hardeners; absent: chosen, with the reasons. */
            readonly hardener?: string;
            /** @description Largest pot mixed at once. Absent: 1000 g (pots of half a litre to a litre). */
            readonly largestPotG?: number;
            /** @description Weighing and stirring a pot. Absent: 4 min (two minutes of stirring with scraping, and the weighing). */
            readonly mixingMinutes?: number;
            /**
             * Format: int32
             * @description People.
             */
            readonly people: number;
            /** @description Resin given by one stroke of a calibrated pump; with it the cards count strokes. */
            readonly pumpResinMlPerStroke?: number;
            /**
             * @description Code of the resin system.
             * @example resin-epoxy-5to1
             */
            readonly resin: string;
            /** @description Steps that take resin. */
            readonly steps: readonly components["schemas"]["ResinStepInput"][];
            /**
             * @description Air and resin where it is mixed.
             * @example 20
             */
            readonly temperatureC: number | string;
            /** @description Share of the pot life within which a pot must be empty. Absent: 0.5 (small enough to bed inside half the pot life). */
            readonly usableFraction?: number;
            /** @description Waste as a share of net. Absent: 0.18 (between the 15 and 20 % that suppliers print; spread from trade logs). */
            readonly wasteFraction?: number;
        };
        readonly ResinDemand: {
            /** @description Rates and losses that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description Code of the hardener demanded with it. */
            readonly hardener: string;
            /** @description Density of resin and hardener mixed, without filler. */
            readonly mixedDensityGPerCm3: number;
            /** @description Grams of hardener to 100 g of resin. */
            readonly partsByMass: number;
            /** @description Millilitres of hardener to 100 ml of resin. */
            readonly partsByVolume: number;
            /** @description Code of the resin demanded. */
            readonly resin: string;
            /** @description Demand of each step of the work, in its order. */
            readonly steps: readonly components["schemas"]["StepDemand"][];
            /** @description Demand of all steps together. */
            readonly totals: {
                /** @description Fillers of all steps, each kind with its mass. */
                readonly fillers: readonly {
                    /** @description Code of the filler. */
                    readonly filler: string;
                    /** @description Mass of the filler over all steps. */
                    readonly massG: number;
                    /** @description `massG` of ResinDemand in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                    readonly us?: {
                        /** @description In US units: Mass of the filler over all steps. */
                        readonly massG?: string;
                    };
                }[];
                /** @description Hardener component of the whole demand. */
                readonly hardenerG: number;
                /** @description What ends up in the repair, without losses. */
                readonly netL: number;
                /** @description Resin component of the whole demand. */
                readonly resinG: number;
                /** @description What must be mixed in all. */
                readonly totalL: number;
                /** @description `netL`, `wasteL`, `totalL` and 2 more of ResinDemand in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Hardener component of the whole demand. */
                    readonly hardenerG?: string;
                    /** @description In US units: What ends up in the repair, without losses. */
                    readonly netL?: string;
                    /** @description In US units: Resin component of the whole demand. */
                    readonly resinG?: string;
                    /** @description In US units: What must be mixed in all. */
                    readonly totalL?: string;
                    /** @description In US units: What stays in pots, rollers and brushes. */
                    readonly wasteL?: string;
                };
                /** @description What stays in pots, rollers and brushes. */
                readonly wasteL: number;
            };
            /** @description `mixedDensityGPerCm3` of ResinDemand in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Density of resin and hardener mixed, without filler. */
                readonly mixedDensityGPerCm3?: string;
            };
        };
        readonly ResinStep: {
            /** @description Name of the filler at the step. */
            readonly filler?: string;
            /** @description Filler stirred in at the step. */
            readonly fillerKg?: number;
            /** @description What stays in the deck. */
            readonly netL: number;
            /** @description Step that takes resin. */
            readonly step: string;
            /** @description Name of the step that takes resin. */
            readonly title: string;
            /** @description Mass of all that is mixed for the step. */
            readonly totalKg: number;
            /** @description What is mixed for the step. */
            readonly totalL: number;
            /** @description `netL`, `wasteL`, `totalL` and 2 more of ResinStep in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Filler stirred in at the step. */
                readonly fillerKg?: string;
                /** @description In US units: What stays in the deck. */
                readonly netL?: string;
                /** @description In US units: Mass of all that is mixed for the step. */
                readonly totalKg?: string;
                /** @description In US units: What is mixed for the step. */
                readonly totalL?: string;
                /** @description In US units: What is lost at the step. */
                readonly wasteL?: string;
            };
            /** @description What is lost at the step. */
            readonly wasteL: number;
        };
        readonly ResinStepInput: {
            /** @description Area that the step covers. */
            readonly areaM2?: number | string;
            /**
             * Format: int32
             * @description Number of coats.
             */
            readonly coats?: number;
            /** @description Depth of scores, or of holes. */
            readonly depthMm?: number | string;
            /** @description Diameter to which the core is emptied at a hole. */
            readonly diameterMm?: number | string;
            /** @description Code of a filler, or "none". */
            readonly filler?: string;
            /** @description Parts of filler to 100 parts of mixed resin, by mass. */
            readonly fillerPartsPerHundred?: number;
            /** @description Height. */
            readonly heightMm?: number | string;
            /**
             * Format: int32
             * @description Number of holes.
             */
            readonly holes?: number;
            /** @description Length of a section: the edge of an undercut, the saw cut. */
            readonly lengthM?: number;
            /** @description Resin to the area. */
            readonly litresPerM2?: number;
            /** @description Minutes that one person takes for one unit of the step. */
            readonly minutesPerUnit?: number;
            /** @description Share of the scores that fills. Absent: 1 (scores pressed full from both sides). */
            readonly openFraction?: number;
            /** @description Pieces in the order they are bedded; each goes to one pot. */
            readonly pieces?: readonly components["schemas"]["BeddedPieceInput"][];
            /** @description Plies. */
            readonly plies?: readonly components["schemas"]["PlyToWetInput"][];
            /** @description Spacing of scores. */
            readonly spacingMm?: number | string;
            /**
             * @description Each kind has its own basis: films and beds take areaM2, sections lengthM and heightMm, scores areaM2 with spacing, width and depth, plies plies, potting holes.
             * @enum {string}
             */
            readonly step: "seal" | "undercut" | "bed-core" | "prewet" | "core-kerfs" | "bed-skin" | "cut-kerf" | "closing-plies" | "top-laminate" | "weave-fill" | "peel-ply" | "potting" | "inject" | "fairing";
            /** @description Mean thickness of a bed; of fairing, over all cycles. */
            readonly thicknessMm?: number | string;
            /** @description Words for the card, where two steps are of one kind. */
            readonly title?: string;
            /** @description Waste as a share of net, for this step. */
            readonly wasteFraction?: number;
            /** @description Width of the section: of the saw cut, of a fillet. */
            readonly widthMm?: number | string;
        };
        readonly ResinSystemInput: {
            /** @description How strongly warmth hastens its cure. */
            readonly activationEnergyKJPerMol: components["schemas"]["DatumInput"];
            /**
             * @description Family that the resin belongs to.
             * @enum {string}
             */
            readonly chemistry: "epoxy" | "polyester" | "vinylester";
            /** @description Stable code of the resin, unique in the edition. */
            readonly code: string;
            /** @description Density of the cured mix. */
            readonly curedDensityGPerCm3: components["schemas"]["DatumInput"];
            /** @description Density of the liquid resin. */
            readonly densityGPerCm3: components["schemas"]["DatumInput"];
            /** @description Hardeners that cure it. */
            readonly hardeners: readonly components["schemas"]["HardenerInput"][];
            /** @description Hazard statements (GHS) of the resin, such as H226. */
            readonly hazards?: readonly string[];
            /** @description Heat that a gram of the mix gives off. */
            readonly heatOfReactionJPerG: components["schemas"]["DatumInput"];
            /**
             * @description Says that the material is a resin system. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "resin";
            /** @description Generic specification of the resin in trade words. */
            readonly name: string;
            /** @description Poisson's ratio of the cured mix. */
            readonly poissonRatio: components["schemas"]["DatumInput"];
            /** @description Heat that a gram of the mix takes up for a kelvin. */
            readonly specificHeatJPerGK: components["schemas"]["DatumInput"];
            /** @description Young's modulus of the cured mix. */
            readonly youngModulusMPa: components["schemas"]["DatumInput"];
        };
        readonly Response: {
            /** @description Where the deck sags most, [xMm, yMm]. */
            readonly deflectionAt: readonly number[];
            /** @description With the pull of a sagging skin between held edges, where the inner skin is alone and slack. */
            readonly deflectionMm: number;
            /** @description Greatest moment fore and aft, per mm of width. */
            readonly greatestMomentXN: number;
            /** @description Greatest moment athwart, per mm of width. */
            readonly greatestMomentYN: number;
            /** @description Greatest shear force, per mm of width. */
            readonly greatestShearNPerMm: number;
            /** @description By plate bending alone. */
            readonly linearDeflectionMm: number;
            /** @description Load that acts. */
            readonly load: string;
            /** @description `deflectionMm`, `linearDeflectionMm`, `greatestMomentXN` and 2 more of Response in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: With the pull of a sagging skin between held edges, where the inner skin is alone and slack. */
                readonly deflectionMm?: string;
                /** @description In US units: Greatest moment fore and aft, per mm of width. */
                readonly greatestMomentXN?: string;
                /** @description In US units: Greatest moment athwart, per mm of width. */
                readonly greatestMomentYN?: string;
                /** @description In US units: Greatest shear force, per mm of width. */
                readonly greatestShearNPerMm?: string;
                /** @description In US units: By plate bending alone. */
                readonly linearDeflectionMm?: string;
            };
            /**
             * @description How deflection and moments were worked out.
             * @enum {string}
             */
            readonly working: "inner-skin-alone" | "sandwich" | "separate-skins";
        };
        readonly RestorationInput: {
            /** @description A name for the edition that holds it again, such as autumn-2027-again. */
            readonly code: string;
            /** @description Why. */
            readonly note?: string;
        };
        /** @description The revisions of one estimate, first to last. */
        readonly RevisionList: {
            /** @description Revisions of the job, the first one first. */
            readonly items: readonly components["schemas"]["EstimateSummary"][];
        };
        readonly RevisionMark: {
            /** @description 0 for the first. */
            readonly number: number;
            /** @description Why this revision was made; absent for the first estimate. */
            readonly reason?: string;
            /** @description The first estimate of this line of revisions. */
            readonly rootId: string;
        };
        readonly RevisionNamed: {
            /** @description Code of the edition it was made with. */
            readonly edition: string;
            /** @description Path of the estimate. */
            readonly href: string;
            /** @description Id of the estimate the event tells of. */
            readonly id: string;
            /** @description Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
            readonly publishableKeyId?: string;
            /** @description The caller's own reference, when it gave one. */
            readonly reference?: string;
            /** @description 1 for the first revision. */
            readonly revisionNumber: number;
            /** @description Id of the first estimate of this line of revisions. */
            readonly rootId: string;
        };
        readonly RevisionRequest: {
            /** @description What became known or was decided since the last revision. */
            readonly reason: string;
            /** @description The whole defect record as it is known now. */
            readonly record: components["schemas"]["DefectRecordInput"];
        };
        readonly RiskTermsInput: {
            /** @description Share of the variance of rates that labour, or parts, have in common. */
            readonly commonShare?: components["schemas"]["CommonShareInput"];
            /**
             * @description How the extent was found; decides how far it may grow.
             * @enum {string}
             */
            readonly evidence?: "opened-and-measured" | "mapped-with-plugs" | "sounded-and-metered" | "single-symptom";
            /** @description The growth itself, instead of the evidence. */
            readonly extentFactor?: components["schemas"]["ExtentFactorInput"];
            /** @description Correlation of unit rates with the extent; absent: 0.3. */
            readonly extentToRate?: number;
            /**
             * Format: int32
             * @description A multiple of ten; absent: 10000.
             */
            readonly samples?: number;
            /**
             * Format: int64
             * @description The same seed gives the same range; absent: 1.
             */
            readonly seed?: number;
            /**
             * @description How three points are read as a distribution; absent: triangular.
             * @enum {string}
             */
            readonly shape?: "triangular" | "beta";
            /** @description Price of opening and mapping before the rest is agreed. */
            readonly stageZeroCost?: string;
            /** @description What the repair is worth to the owner. */
            readonly worthOfRepair?: string;
        };
        readonly RollInput: {
            /** @description Longest length that can be had. */
            readonly longestMm?: number | string;
            /** @description Width of the roll that pieces are cut from. */
            readonly widthMm: number | string;
        };
        readonly RollPiece: {
            /** @description Length of the piece along the roll. */
            readonly lengthMm: number;
            /** @description Edge of the piece on deck. */
            readonly outline: readonly components["schemas"]["Polygon"][];
            /** @description `lengthMm`, `widthMm` and `usedWidthMm` of RollPiece in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of the piece along the roll. */
                readonly lengthMm?: string;
                /** @description In US units: What it takes of the width of the roll. */
                readonly usedWidthMm?: string;
                /** @description In US units: Width of the piece across the roll. */
                readonly widthMm?: string;
            };
            /** @description What it takes of the width of the roll. */
            readonly usedWidthMm: number;
            /** @description Width of the piece across the roll. */
            readonly widthMm: number;
        };
        /** @description A strip of cloth: along the roll and across it. */
        readonly RollStrip: {
            /** @description Length of the cut strip. */
            readonly lengthMm: number;
            /** @description `lengthMm` and `widthMm` of RollStrip in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Length of the cut strip. */
                readonly lengthMm?: string;
                /** @description In US units: Width of the cut strip. */
                readonly widthMm?: string;
            };
            /** @description Width of the cut strip. */
            readonly widthMm: number;
        };
        readonly RoomCheck: {
            /**
             * @description Checks whether there is room for the taper.
             * @enum {string}
             */
            readonly check: "taper-room";
            /** @description Taper that would lie off the panel. */
            readonly outsideM2: number;
            /** @description `outsideM2` of RoomCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Taper that would lie off the panel. */
                readonly outsideM2?: string;
            };
            /**
             * @description Whether there is room; not established where edges are unknown.
             * @enum {string}
             */
            readonly verdict: "fails" | "not-established" | "passes";
            /** @description The room in a sentence. */
            readonly words: string;
        };
        readonly RungNamed: {
            /** @description Why the rung stands where it stands. */
            readonly because: string;
            /** @description Code of the rung. */
            readonly rung: string;
            /** @description Name of the rung. */
            readonly title: string;
        };
        readonly RungReason: {
            /** @description Code of the condition. */
            readonly code: string;
            /** @description Value that the method allows. */
            readonly limit?: number;
            /** @description Source of the condition. */
            readonly source: string;
            /** @description The condition on this deck, in a sentence. */
            readonly text: string;
            /** @description Unit of value and limit. */
            readonly unit?: string;
            /** @description `value` and `limit` of RungReason in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Value that the method allows. */
                readonly limit?: string;
                /** @description In US units: Measured or worked-out value. */
                readonly value?: string;
            };
            /** @description Measured or worked-out value. */
            readonly value?: number;
            /** @description What would let the method fit. */
            readonly wouldFit?: string;
        };
        /** @description One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone. */
        readonly RungSection: {
            /** @description Days that it takes with all waits, as a spread. */
            readonly calendarDays?: components["schemas"]["Range"];
            /** @description All conditions that were looked at. */
            readonly conditions: readonly components["schemas"]["RungReason"][];
            /** @description Condition that decided. */
            readonly deciding: components["schemas"]["RungReason"];
            /** @description True where openings were taken as boxes round the places; the planned rung is worked out in full. */
            readonly isRough: boolean;
            /** @description Absent for a rung that is refused: it is not priced. */
            readonly labourH?: components["schemas"]["Range"];
            /** @description What the method does not put right. */
            readonly leavesUndone: readonly string[];
            /** @description Why a rung that fits could not be worked out, where it could not. */
            readonly notWorkedOut?: string;
            /** @description What it costs, as a spread. */
            readonly priceRange?: components["schemas"]["EstimateMoneyRange"];
            /** @description Code of the method. */
            readonly rung: string;
            /** @description Work of the method, in order. */
            readonly stages: readonly string[];
            /** @description Name of the method. */
            readonly title: string;
            /**
             * @description Whether the method fits this deck.
             * @enum {string}
             */
            readonly verdict: "fit" | "fit-with-conditions" | "unfit";
            /** @description Days of work that it takes, as a spread. */
            readonly workingDays?: components["schemas"]["Range"];
        };
        readonly SandwichValuesInput: {
            /** @description Core. */
            readonly core: components["schemas"]["CoreValuesInput"];
            /** @description Inner skin. */
            readonly inner: components["schemas"]["SkinValuesInput"];
            /** @description Outer skin. */
            readonly outer: components["schemas"]["SkinValuesInput"];
        };
        readonly SawLine: {
            /** @description Corner where the cut starts. */
            readonly from: readonly number[];
            /** @description Between the corner arcs: the straight run of the saw. */
            readonly straightMm: number;
            /** @description Corner where the cut ends. */
            readonly to: readonly number[];
            /** @description `straightMm` of SawLine in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Between the corner arcs: the straight run of the saw. */
                readonly straightMm?: string;
            };
        };
        readonly Schedule: {
            /** @description Every requirement with demand and capacity. */
            readonly checks: readonly components["schemas"]["SkinCheck"][];
            /** @description Glass in a square metre. */
            readonly glassGPerM2: components["schemas"]["Figure"];
            /** @description Requirement that the schedule meets most narrowly. */
            readonly governs: string;
            /** @description Stiffness of the plies by classical laminate theory. */
            readonly laminate: {
                /** @description Stretching stiffness A, row by row. */
                readonly aNPerMm: readonly number[];
                /** @description Coupling stiffness B, row by row. */
                readonly bN: readonly number[];
                /** @description Bending stiffness D, row by row. */
                readonly dNmm: readonly number[];
                /** @description Engineering constants in bending. */
                readonly flexural: components["schemas"]["EngineeringConstants"];
                /** @description Engineering constants in the plane. */
                readonly inPlane: {
                    /** @description Constants when the laminate may curl. */
                    readonly free: components["schemas"]["EngineeringConstants"];
                    /** @description Constants when it is kept from curling. */
                    readonly heldFlat: components["schemas"]["EngineeringConstants"];
                };
                /** @description `aNPerMm`, `bN` and `dNmm` of Schedule in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Stretching stiffness A, row by row. */
                    readonly aNPerMm?: readonly string[];
                    /** @description In US units: Coupling stiffness B, row by row. */
                    readonly bN?: readonly string[];
                    /** @description In US units: Bending stiffness D, row by row. */
                    readonly dNmm?: readonly string[];
                };
            };
            /** @description Why it is not the first. */
            readonly lost?: {
                /**
                 * @description What this schedule lost by.
                 * @enum {string}
                 */
                readonly by: "mass" | "nothing" | "plies" | "price";
                /** @description By how much, in that measure. */
                readonly difference: number;
                /** @description Why it is not the first, in a sentence. */
                readonly words: string;
            };
            /** @description From the core outwards. */
            readonly plies: readonly components["schemas"]["SchedulePly"][];
            /** @description Price of a square metre in the list's currency; absent without prices. */
            readonly pricePerM2?: number;
            /** @description Above the old surface when positive. */
            readonly proudMm: number;
            /** @description Place among the schedules, 1 the best. */
            readonly rank: number;
            /** @description Resin in a square metre. */
            readonly resinGPerM2: components["schemas"]["Figure"];
            /** @description Stiffness athwart. */
            readonly stiffnessAcrossNPerMm: components["schemas"]["Figure"];
            /** @description Stiffness fore and aft. */
            readonly stiffnessAlongNPerMm: components["schemas"]["Figure"];
            /** @description Thickness of all plies. */
            readonly thicknessMm: components["schemas"]["Figure"];
            /** @description `proudMm` of Schedule in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Above the old surface when positive. */
                readonly proudMm?: string;
            };
        };
        readonly ScheduleLimitsInput: {
            /**
             * Format: int32
             * @description Most kinds of fabric in one skin. Absent: 3 (fewer rolls, fewer mistakes).
             */
            readonly mostKinds?: number;
            /**
             * Format: int32
             * @description Most plies.
             */
            readonly mostPlies?: number;
            /** @description Smallest step between ply edges, on average. Absent: 5 mm (smaller steps cannot be laid true by hand). */
            readonly smallestStepMm?: number | string;
            /** @description Taper width over skin thickness; absent: 12, and on thin skins as much as makes it 20 mm wide. */
            readonly taperRatio?: number;
            /** @description How much the outer ply may print through, 0 to 3. Absent: 1 (the pattern of roving shows through gloss paint). */
            readonly worstPrintThrough?: number;
        };
        readonly SchedulePly: {
            /** @description Mass of glass over mass of ply. */
            readonly fibreMassFraction: number;
            /** @description Glass in the ply, per square metre. */
            readonly glassGPerM2: number;
            /** @description Code of the ply's fabric. */
            readonly material: string;
            /** @description Name of the ply's fabric. */
            readonly name: string;
            /** @description Resin in the ply, per square metre. */
            readonly resinGPerM2: number;
            /** @description Thickness of the cured ply. */
            readonly thicknessMm: number;
            /** @description Turn of the fabric against fore and aft. */
            readonly turnDeg: number;
            /** @description `thicknessMm`, `glassGPerM2` and `resinGPerM2` of SchedulePly in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Glass in the ply, per square metre. */
                readonly glassGPerM2?: string;
                /** @description In US units: Resin in the ply, per square metre. */
                readonly resinGPerM2?: string;
                /** @description In US units: Thickness of the cured ply. */
                readonly thicknessMm?: string;
            };
        };
        readonly ScheduleSearch: {
            /** @description What the search took that nobody stated. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description As many as were wanted or can be made, best first. */
            readonly best: readonly components["schemas"]["Schedule"][];
            /** @description How much was searched, and that nothing better was left out. */
            readonly effort: {
                /** @description Branches cut off because nothing below them could be better, fit, or reach the target. */
                readonly cut: {
                    /** @description Branches left because they cannot beat what was found. */
                    readonly dearer: number;
                    /** @description Branches left because what is missing cannot be made good. */
                    readonly outOfReach: number;
                    /** @description Branches left because they use too many fabrics. */
                    readonly tooManyKinds: number;
                    /** @description Branches left because the stack is too thick. */
                    readonly tooThick: number;
                };
                /** @description Stacks looked at one by one. */
                readonly examined: number;
                /**
                 * @description No allowed schedule is better.
                 * @enum {boolean}
                 */
                readonly isProvenBest: true;
                /** @description Every choice of up to the most plies from the options, order apart. */
                readonly space: number;
            };
            /** @description Materials that could not be used, each with its problems. */
            readonly leftOut: readonly components["schemas"]["LeftOut"][];
            /** @description What the result does not cover. */
            readonly limits: readonly string[];
            /** @description Process that the plies are laid by. */
            readonly method: string;
            /** @description What no schedule could meet; only when none was found. */
            readonly missing?: components["schemas"]["LaminateMissing"];
            /** @description As asked, or as many as have room for their steps in the taper. */
            readonly mostPlies: number;
            /** @description The skin that the new one must match. */
            readonly oldSkin: components["schemas"]["OldSkinReport"];
            /**
             * @description Whether any schedule meets every requirement.
             * @enum {string}
             */
            readonly outcome: "cannot-be-done" | "found";
            /**
             * @description What decides between schedules that pass.
             * @enum {string}
             */
            readonly rankedBy: "mass" | "price";
        };
        readonly Scope: {
            /** @description Probability contours when the extent came from readings. */
            readonly contours: readonly {
                /** @description Sum of these areas. */
                readonly areaM2: number;
                /** @description Areas with at least that chance. */
                readonly areas: readonly components["schemas"]["Area"][];
                /** @description Chance of bad core at the edge of these areas. */
                readonly probability: number;
                /** @description `areaM2` of Scope in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Sum of these areas. */
                    readonly areaM2?: string;
                };
            }[];
            /** @description Of the opening, where core comes out; and sound core that is left where it is. */
            readonly coreOutAreaM2: number;
            /** @description Opened area whose sound core stays. */
            readonly coreStaysAreaM2: number;
            /** @description Length of all cuts. */
            readonly cutLengthM: number;
            /** @description Bad area, as a spread. */
            readonly damagedAreaM2: components["schemas"]["Range"];
            /**
             * @description Grade of the evidence about the extent.
             * @enum {string}
             */
            readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
            /** @description Work that it does not hold. */
            readonly excluded: readonly string[];
            /** @description What about the scope deserves attention. */
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            /** @description Fittings that the work touches. */
            readonly fittings: readonly components["schemas"]["FittingScope"][];
            /** @description Work that the price holds. */
            readonly included: readonly string[];
            /** @description Choices that the scope rests on. */
            readonly method: readonly {
                /** @description What was chosen. */
                readonly choice: string;
                /** @description Why the choice fell so. */
                readonly reason: string;
                /** @description The choice, in words. */
                readonly value: string;
            }[];
            /** @description Where to tap, meter or plug next, and whether that pays; when the extent came from readings. */
            readonly nextReadings?: components["schemas"]["NextReadingsSection"];
            /** @description Area of skin taken off. */
            readonly openedAreaM2: number;
            /** @description Openings in the skin. */
            readonly openings: readonly components["schemas"]["Opening"][];
            /** @description The panel that is repaired. */
            readonly panel: {
                /** @description Area of the panel without its holes. */
                readonly areaM2: number;
                /** @description Hatches and other openings of the panel. */
                readonly holes: readonly (readonly (readonly number[])[])[];
                /** @description Name of the panel. */
                readonly name: string;
                /** @description Edge of the panel. */
                readonly outline: readonly (readonly number[])[];
                /** @description `areaM2` of Scope in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Area of the panel without its holes. */
                    readonly areaM2?: string;
                };
            };
            /** @description Skin that is bedded again. */
            readonly retainedAreaM2: number;
            /** @description Old skin ground to a taper. */
            readonly taperBandM2: number;
            /** @description Core taken from under skin that stays. */
            readonly undercutAreaM2: number;
            /** @description `damagedAreaM2`, `openedAreaM2`, `coreOutAreaM2` and 5 more of Scope in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Of the opening, where core comes out; and sound core that is left where it is. */
                readonly coreOutAreaM2?: string;
                /** @description In US units: Opened area whose sound core stays. */
                readonly coreStaysAreaM2?: string;
                /** @description In US units: Length of all cuts. */
                readonly cutLengthM?: string;
                /** @description In US units: Bad area, as a spread. */
                readonly damagedAreaM2?: {
                    /** @description In US units: One job in ten comes to less. */
                    readonly p10: string;
                    /** @description In US units: Half of the jobs come to less. */
                    readonly p50: string;
                    /** @description In US units: Nine jobs in ten come to less. */
                    readonly p90: string;
                };
                /** @description In US units: Area of skin taken off. */
                readonly openedAreaM2?: string;
                /** @description In US units: Skin that is bedded again. */
                readonly retainedAreaM2?: string;
                /** @description In US units: Old skin ground to a taper. */
                readonly taperBandM2?: string;
                /** @description In US units: Core taken from under skin that stays. */
                readonly undercutAreaM2?: string;
            };
            /** @description Damaged zones. */
            readonly zones: readonly {
                /** @description Area of the zone. */
                readonly areaM2: number;
                /** @description What the core in the zone is like. */
                readonly condition: string;
                /** @description Id of the zone. */
                readonly id: string;
                /** @description Edge of the zone. */
                readonly outline: readonly (readonly number[])[];
                /** @description `areaM2` of Scope in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    /** @description In US units: Area of the zone. */
                    readonly areaM2?: string;
                };
            }[];
        };
        readonly SecondBest: {
            /** @description Each need beside the packs that cover it. */
            readonly coverage: readonly components["schemas"]["Coverage"][];
            /** @description How much dearer it is than the basket given. */
            readonly difference: components["schemas"]["MoneyJson"];
            /**
             * @description What makes it another kind of order.
             * @enum {string}
             */
            readonly kind: "other-packs" | "other-suppliers";
            /** @description What remains of the bought packs when the job is done. */
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            /** @description What is bought, a line for each kind of pack. */
            readonly lines: readonly components["schemas"]["BasketLine"][];
            /** @description Resins beside the hardeners bought to cure them. */
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            /** @description The lines gathered into one order for each supplier. */
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            /** @description Needs that something other than what was planned covers. */
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            /** @description Goods, cut fees, deliveries and surcharges of all orders together. */
            readonly total: components["schemas"]["MoneyJson"];
        };
        readonly SecretRenewalInput: {
            /**
             * Format: int32
             * @description Hours for which events are signed with the old secret as well, so that receivers can change over.
             */
            readonly overlapHours: number;
        };
        readonly SectionResult: {
            /** @description Bending stiffness fore and aft, per mm of width. */
            readonly bendingXNmm: number;
            /** @description Bending stiffness athwart, per mm of width. */
            readonly bendingYNmm: number;
            /** @description Whether the skins are thin enough for the theory of thin skins. */
            readonly isThinSkinFair: boolean;
            /** @description Distance between the mid-planes of the skins. */
            readonly leverMm: number;
            /** @description Stretching stiffness of both skins fore and aft. */
            readonly membraneXNPerMm: number;
            /** @description Stretching stiffness of both skins athwart. */
            readonly membraneYNPerMm: number;
            /** @description Shear stiffness, per mm of width. */
            readonly shearNPerMm: number;
            /** @description How far the thin-skin engineering form is from the exact section. */
            readonly thinSkinError: number;
            /** @description `bendingXNmm`, `bendingYNmm`, `shearNPerMm` and 3 more of SectionResult in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Bending stiffness fore and aft, per mm of width. */
                readonly bendingXNmm?: string;
                /** @description In US units: Bending stiffness athwart, per mm of width. */
                readonly bendingYNmm?: string;
                /** @description In US units: Distance between the mid-planes of the skins. */
                readonly leverMm?: string;
                /** @description In US units: Stretching stiffness of both skins fore and aft. */
                readonly membraneXNPerMm?: string;
                /** @description In US units: Stretching stiffness of both skins athwart. */
                readonly membraneYNPerMm?: string;
                /** @description In US units: Shear stiffness, per mm of width. */
                readonly shearNPerMm?: string;
            };
        };
        readonly SectionTotal: {
            /** @description Sum of the section. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Lines in the section. */
            readonly lineCount: number;
            /**
             * @description Section that is summed.
             * @enum {string}
             */
            readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
            /** @description Name of the section. */
            readonly title: string;
        };
        readonly Share: {
            /** @description The chandler's key. */
            readonly keyId: string;
            /** @description Name of the key it is shared with. */
            readonly keyName: string;
            /** @description Since when it is shared (RFC 3339). */
            readonly since: string;
        };
        readonly ShareList: {
            /** @description Keys that the estimate is shared with. */
            readonly items: readonly components["schemas"]["Share"][];
        };
        readonly SheetColumnInput: {
            /** @description What stands above the column. */
            readonly heading: string;
            /**
             * @description What it says of a pack; `price` is that of one pack.
             * @enum {string}
             */
            readonly means: "sku" | "name" | "supplier" | "price" | "stock" | "massKg";
        };
        readonly SheetFormatInput: {
            /** @description Length of a sheet. */
            readonly lengthMm: number;
            /** @description Width of a sheet. */
            readonly widthMm: number;
        };
        readonly SheetLayout: {
            /** @description Price of all sheets of the layout. */
            readonly cost: number;
            /** @description Outlines are set on a grid of this step. */
            readonly gridStepMm: number;
            /** @description No layout can cost less: the cheapest stock per area, and the sheets that the pieces need at the least. */
            readonly leastCost: number;
            /** @description Area of all pieces laid out. */
            readonly pieceAreaM2: number;
            /** @description Area of all sheets bought. */
            readonly sheetAreaM2: number;
            /** @description Sheets with their pieces, in the order of cutting. */
            readonly sheets: readonly components["schemas"]["CutSheet"][];
            /** @description `sheetAreaM2`, `pieceAreaM2` and `gridStepMm` of SheetLayout in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Outlines are set on a grid of this step. */
                readonly gridStepMm?: string;
                /** @description In US units: Area of all pieces laid out. */
                readonly pieceAreaM2?: string;
                /** @description In US units: Area of all sheets bought. */
                readonly sheetAreaM2?: string;
            };
            /** @description Share of the sheets that becomes pieces. */
            readonly utilisation: number;
            /** @description Thousands of pairs looked at. */
            readonly workUnits: number;
        };
        readonly SheetOnSaleInput: {
            /**
             * Format: int32
             * @description How many there are.
             */
            readonly available?: number;
            /** @description With the fee for cutting a half or quarter sheet; costs are only compared. */
            readonly cost: number;
            /** @description Length of the sheet. */
            readonly lengthMm: number | string;
            /** @description Width of the sheet. */
            readonly widthMm: number | string;
        };
        readonly SheetSizeInput: {
            /** @description Length of the sheet. */
            readonly lengthMm: number | string;
            /** @description Width of the sheet. */
            readonly widthMm: number | string;
        };
        /** @description Where bought core goes, in whole square millimetres: the parts add up to the sheet exactly. */
        readonly SheetUse: {
            /** @description Taken by the blade round the pieces. */
            readonly kerfMm2: number;
            /** @description Area of the pieces on them. */
            readonly piecesMm2: number;
            /** @description Whole rectangles left because sheets come whole; some are worth keeping. */
            readonly roundingMm2: number;
            /** @description Odd bits between the pieces. */
            readonly scrapsMm2: number;
            /** @description Area of all sheets. */
            readonly sheetMm2: number;
            /** @description Unused strip along the edges. */
            readonly trimMm2: number;
            /** @description `sheetMm2`, `piecesMm2`, `kerfMm2` and 3 more of SheetUse in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Taken by the blade round the pieces. */
                readonly kerfMm2?: string;
                /** @description In US units: Area of the pieces on them. */
                readonly piecesMm2?: string;
                /** @description In US units: Whole rectangles left because sheets come whole; some are worth keeping. */
                readonly roundingMm2?: string;
                /** @description In US units: Odd bits between the pieces. */
                readonly scrapsMm2?: string;
                /** @description In US units: Area of all sheets. */
                readonly sheetMm2?: string;
                /** @description In US units: Unused strip along the edges. */
                readonly trimMm2?: string;
            };
        };
        /** @description One fault as a caller sees it. */
        readonly ShownProblem: {
            /** @description Code of the fault, stable over releases. */
            readonly code: string;
            /** @description Heading of the column. */
            readonly column?: string;
            /** @description What is wrong and what would be right. */
            readonly detail: string;
            /** @description Numbers and words of the detail. */
            readonly facts: {
                readonly [key: string]: boolean | string | number;
            };
            /** @description Name of the header at fault. */
            readonly header?: string;
            /** @description Name of the query or path parameter at fault. */
            readonly parameter?: string;
            /** @description JSON Pointer to the field at fault. */
            readonly pointer?: string;
            /** @description Of a sheet, as a spreadsheet counts them: the headings are row 1. */
            readonly row?: number;
            /** @description Kind of fault in words. */
            readonly title: string;
        };
        readonly SkinCheck: {
            /** @description What the new skin has. */
            readonly capacity: number;
            /** @description Which requirement was checked. */
            readonly check: string;
            /** @description Where the requirement is published. */
            readonly cite: components["schemas"]["Cite"];
            /** @description What is asked of the new skin. */
            readonly demand: number;
            /** @description Name of the requirement. */
            readonly title: string;
            /** @description What would let it pass. */
            readonly toPass?: string;
            /** @description Unit of demand and capacity. */
            readonly unit: string;
            /** @description `demand` and `capacity` of SkinCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What the new skin has. */
                readonly capacity?: string;
                /** @description In US units: What is asked of the new skin. */
                readonly demand?: string;
            };
            /** @description Demand over capacity; up to 1 it passes. */
            readonly utilisation: number;
            /**
             * @description Whether the skin meets it.
             * @enum {string}
             */
            readonly verdict: "fails" | "passes";
        };
        readonly SkinInput: {
            /** @description Known plies, from the face of the skin inwards. */
            readonly plies?: readonly components["schemas"]["KnownPlyInput"][];
            /**
             * @description Thickness of the outer skin: mm, or text with a unit.
             * @example 1/8 in
             */
            readonly thicknessMm: number | string;
        };
        readonly SkinRecord: {
            /** @description Known plies, from the face of the skin inwards. */
            readonly plies?: readonly {
                /** @description Code of the fabric that the ply is of, in the catalogue. */
                readonly material: string;
            }[];
            /** @description Thickness of the outer skin: mm, or text with a unit. */
            readonly thicknessMm: number;
        };
        readonly SkinValuesInput: {
            /** @description Ultimate; along x, or in both directions. */
            readonly compressiveStrengthMPa: number;
            /** @description Compressive strength along y. */
            readonly compressiveStrengthYMPa?: number;
            /** @description For the least fibre mass of the yardstick. */
            readonly dryFibreKgPerM2?: number;
            /** @description Membrane modulus along x. */
            readonly modulusXMPa: number;
            /** @description Membrane modulus along y. */
            readonly modulusYMPa: number;
            /** @description Strain across y over strain along x under a pull along x. */
            readonly poissonXY: number;
            /** @description Shear modulus. */
            readonly shearModulusMPa: number;
            /** @description Ultimate; along x, or in both directions. */
            readonly tensileStrengthMPa: number;
            /** @description Tensile strength along y. */
            readonly tensileStrengthYMPa?: number;
            /**
             * @description Thickness of the skin with these values.
             * @example 3
             */
            readonly thicknessMm: number | string;
        };
        /** @description What is too narrow or too far under the lip for core, and is filled solid from skin to skin instead. */
        readonly SolidFill: {
            /** @description Area that is filled. */
            readonly areaM2: number;
            /**
             * @description Why no core piece goes there.
             * @enum {string}
             */
            readonly because: "asked" | "narrow" | "no-way-in" | "shallow-lip";
            /** @description Depth of the filling. */
            readonly depthMm: number;
            /** @description What the filling leaves free. */
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Whether it lies under the sound skin that stays. */
            readonly isUnderLip: boolean;
            /**
             * @description What fills it.
             * @enum {string}
             */
            readonly kind: "high-density-strip" | "paste" | "solid-laminate";
            /** @description As paste: more than half a litre a metre is filled in two lifts, for its heat. */
            readonly lifts: number;
            /** @description Opening whose part is filled solid. */
            readonly opening: string;
            /** @description Edge of the filled part. */
            readonly outline: readonly (readonly number[])[];
            /** @description `areaM2`, `depthMm`, `volumeL` and `widthMm` of SolidFill in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Area that is filled. */
                readonly areaM2?: string;
                /** @description In US units: Depth of the filling. */
                readonly depthMm?: string;
                /** @description In US units: Volume of the filling. */
                readonly volumeL?: string;
                /** @description In US units: Diameter of the largest circle that fits in. */
                readonly widthMm?: string;
            };
            /** @description Volume of the filling. */
            readonly volumeL: number;
            /** @description Diameter of the largest circle that fits in. */
            readonly widthMm: number;
        };
        readonly Sounding: {
            /** @description Where it was tapped, [xMm, yMm]. */
            readonly at: readonly number[];
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that the deck was tapped. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "sounding";
            /**
             * @description How it sounded.
             * @enum {string}
             */
            readonly sound: "dull" | "sharp" | "void";
        };
        readonly SoundingInput: {
            /**
             * @description Where it was taken.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /** @description Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description Says that the place was tapped. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "sounding";
            /**
             * @description Sound of the hammer.
             * @enum {string}
             */
            readonly sound: "sharp" | "dull" | "void";
        };
        readonly SourceInput: {
            /** @description Who published it. */
            readonly body: string;
            /** @description Key that cites name the source by. */
            readonly key: string;
            /** @description What to know about the source. */
            readonly note?: string;
            /**
             * @description In which form it was read.
             * @enum {string}
             */
            readonly readAs: "first-hand" | "second-hand" | "memory" | "derived" | "common-practice";
            /** @description Title of what was published. */
            readonly title: string;
            /** @description Where it can be read, if freely. */
            readonly url?: string;
            /** @description Year or edition of the publication. */
            readonly year: string;
        };
        readonly StackCheck: {
            /** @description How far beyond what is allowed; 0 when it holds. */
            readonly beyondMm: number;
            /**
             * @description Whether the stack lies flush, stands proud or lies low.
             * @enum {string}
             */
            readonly governs: "flush" | "low" | "proud";
            /** @description The next choice of sheets, were this one not to be had. */
            readonly nextBest?: components["schemas"]["StackChoice"];
            /** @description `beyondMm` of StackCheck in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How far beyond what is allowed; 0 when it holds. */
                readonly beyondMm?: string;
            };
            /**
             * @description Whether the height of the stack holds.
             * @enum {string}
             */
            readonly verdict: "fails" | "holds";
            /** @description The verdict in a sentence. */
            readonly words: string;
        };
        /** @description One way to fill the cavity from stock. */
        readonly StackChoice: {
            /** @description How far beyond what is allowed; 0 when flush. */
            readonly beyondMm: number;
            /** @description Bond line that this choice needs under each layer. */
            readonly bondLineMm: number;
            /**
             * @description How this choice lies to the old core.
             * @enum {string}
             */
            readonly fit: "flush" | "low" | "proud";
            /** @description Height less cavity: positive stands proud. */
            readonly flushMm: number;
            /** @description Height that this choice comes to. */
            readonly heightMm: number;
            /** @description From the inner skin up. */
            readonly layersMm: readonly number[];
            /** @description `layersMm`, `bondLineMm`, `heightMm` and 2 more of StackChoice in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How far beyond what is allowed; 0 when flush. */
                readonly beyondMm?: string;
                /** @description In US units: Bond line that this choice needs under each layer. */
                readonly bondLineMm?: string;
                /** @description In US units: Height less cavity: positive stands proud. */
                readonly flushMm?: string;
                /** @description In US units: Height that this choice comes to. */
                readonly heightMm?: string;
                /** @description In US units: From the inner skin up. */
                readonly layersMm?: readonly string[];
            };
            /** @description This choice in a sentence. */
            readonly words: string;
        };
        readonly StackLayer: {
            /**
             * @description Plain sheet, or scored to follow a curve.
             * @enum {string}
             */
            readonly form: "plain" | "scored";
            /** @description Thickness of the layer. */
            readonly thicknessMm: number;
            /** @description `thicknessMm` of StackLayer in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Thickness of the layer. */
                readonly thicknessMm?: string;
            };
        };
        /** @description Which sheets fill the cavity, how the new skin then sits, and what the deck gains or loses in mass. */
        readonly StackPlan: {
            /** @description What was taken about core and bond line. */
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Thickness of the bond line under each layer. */
            readonly bondLine: components["schemas"]["Figure"];
            /** @description Resin that beds the layers. */
            readonly bondResin: components["schemas"]["Figure"];
            /** @description How the layers follow the camber of the deck; absent on a flat one. */
            readonly camber?: components["schemas"]["CamberPlan"];
            /** @description Whether the new stack comes out flush with the old core. */
            readonly check: components["schemas"]["StackCheck"];
            /** @description All choices from the material's list, best first. */
            readonly choices: readonly components["schemas"]["StackChoice"][];
            /** @description Positive stands proud. */
            readonly flush: components["schemas"]["Figure"];
            /** @description Height of the new stack with its bond lines. */
            readonly height: components["schemas"]["Figure"];
            /**
             * @description Joints of one layer lie away from those of the other.
             * @enum {string}
             */
            readonly joints: "single-layer" | "staggered";
            /** @description Resin that fills the cuts of a scored sheet. */
            readonly kerfResin?: components["schemas"]["Figure"];
            /** @description New layers from the inner skin up. */
            readonly layers: readonly components["schemas"]["StackLayer"][];
            /** @description New core less old sound core, without resin. */
            readonly massChange: components["schemas"]["Figure"];
            /** @description Mass of the new core with its bond lines. */
            readonly newCoreMass: components["schemas"]["Figure"];
            /** @description Mass of the core that comes out, dry. */
            readonly oldCoreMass: components["schemas"]["Figure"];
            /** @description Only where somebody said how wet the old core is. */
            readonly waterLeaving?: components["schemas"]["Figure"];
            /** @description Resin under plies laid wet on the core; 0 where the skin has a bed of its own. */
            readonly wetLine: components["schemas"]["Figure"];
        };
        readonly StackRulesInput: {
            /** @description A bond line as a notched spreader leaves it. Absent: 0.89 mm (what a 1/4 in notch leaves). */
            readonly bondLineMm?: number | string;
            /** @description Highest the skin may sit. Absent: 0 mm (a proud skin cannot be faired away). */
            readonly highestFlushMm?: number | string;
            /** @description The thinnest that still fills, pressed hard. Absent: 0.25 mm (a tight bed on balsa, pressed). */
            readonly leastBondLineMm?: number | string;
            /** @description Lowest the skin may sit. Absent: -1 mm (a millimetre low is faired). */
            readonly lowestFlushMm?: number | string;
            /** @description The thickest bed of filled resin. Absent: 3 mm (a paste bed of 1 to 3 mm). */
            readonly mostBondLineMm?: number | string;
            /** @description Resin under plies laid wet on the core. Absent: 0.1 mm (the first ply lies on the core in its own resin; there is no bed of paste). */
            readonly wetLineMm?: number | string;
        };
        /** @description A group of plies that may be laid wet on wet. */
        readonly Stage: {
            /** @description A single ply thicker than the limit cannot be divided. */
            readonly isOverLimit: boolean;
            /** @description Places in the order of laying, from 1. */
            readonly plies: readonly number[];
            /** @description Number of the stage, from 1. */
            readonly stage: number;
            /** @description Thickness laid in the stage. */
            readonly thicknessMm: number;
            /** @description `thicknessMm` of Stage in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Thickness laid in the stage. */
                readonly thicknessMm?: string;
            };
        };
        /** @description Everything up to the hold point, so that the rest can be priced on what is then known. */
        readonly StageZero: {
            /** @description Labour with its share of overhead and profit, before tax. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description What of the contingency need not be set aside any more, once the extent is known; without tax. */
            readonly contingencyFreed: components["schemas"]["MoneyJson"];
            /** @description Hours of the stage. */
            readonly labourH: number;
            /** @description Lines of the price that belong to it, by code. */
            readonly lines: readonly string[];
            /** @description Name of the stage. */
            readonly title: string;
        };
        readonly StateAnswer: {
            /** @description Requirements in this state. */
            readonly checks: readonly components["schemas"]["PanelCheckItem"][];
            /** @description Greatest utilisation and where it is. */
            readonly governing?: {
                /** @description Check that is nearest to its limit. */
                readonly code: string;
                /** @description Load under which it is. */
                readonly load?: string;
                /** @description Demand over capacity of that check. */
                readonly utilisation: number;
            };
            /** @description How the deck answers each load in this state. */
            readonly responses: readonly components["schemas"]["Response"][];
            /** @description Stiffness of a cut through the deck in this state. */
            readonly section: components["schemas"]["SectionResult"];
            /**
             * @description Which state of the deck.
             * @enum {string}
             */
            readonly state: "as-built" | "as-found" | "opened" | "repaired";
        };
        readonly StatedFinding: {
            /** @description A zone or a fitting of the record, or any other label for a finding of its own. */
            readonly about: string;
            /**
             * @description Class of the finding.
             * @enum {string}
             */
            readonly class?: "before-use" | "monitor" | "next-opportunity";
            /** @description What is recommended. */
            readonly recommendation?: string;
            /** @description Restriction of use until then. */
            readonly restriction?: string;
            /** @description The finding in words. */
            readonly wording?: string;
        };
        /** @description What one step takes, waste apart; masses to a tenth of a gram, so that batches and bill can agree exactly. */
        readonly StepDemand: {
            /** @description Density of the mix, filler included. */
            readonly densityGPerCm3: number;
            /** @description Code of the filler that thickens the mix; absent for neat resin. */
            readonly filler?: string;
            /** @description Filler to stir in for the step. */
            readonly fillerG: number;
            /** @description Filler to 100 parts of mixed resin, by mass. */
            readonly fillerPartsPerHundred: number;
            /** @description Hardener to weigh for the step. */
            readonly hardenerG: number;
            /** @description Place of the step in the request, from 0. */
            readonly index: number;
            /** @description Mix that stays in the work of this step. */
            readonly netL: number;
            /** @description Resin to weigh for the step. */
            readonly resinG: number;
            /**
             * @description Kind of step that uses resin.
             * @enum {string}
             */
            readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
            /** @description Name of the step for the crew. */
            readonly title: string;
            /** @description Mass of the step's mix, filler included. */
            readonly totalKg: number;
            /** @description Mix that the step needs with its losses. */
            readonly totalL: number;
            /** @description How many units of its driver the step has, such as square metres. */
            readonly units: number;
            /** @description `netL`, `wasteL`, `totalL` and 5 more of StepDemand in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Density of the mix, filler included. */
                readonly densityGPerCm3?: string;
                /** @description In US units: Filler to stir in for the step. */
                readonly fillerG?: string;
                /** @description In US units: Hardener to weigh for the step. */
                readonly hardenerG?: string;
                /** @description In US units: Mix that stays in the work of this step. */
                readonly netL?: string;
                /** @description In US units: Resin to weigh for the step. */
                readonly resinG?: string;
                /** @description In US units: Mass of the step's mix, filler included. */
                readonly totalKg?: string;
                /** @description In US units: Mix that the step needs with its losses. */
                readonly totalL?: string;
                /** @description In US units: Mix that the step loses. */
                readonly wasteL?: string;
            };
            /** @description Mix that the step loses. */
            readonly wasteL: number;
            /** @description How the quantities of the step were worked out. */
            readonly why: {
                /** @description Derivation of the mass that is mixed. */
                readonly mixedG: components["schemas"]["Figure"];
                /** @description Derivation of the volume that stays in the work. */
                readonly netL: components["schemas"]["Figure"];
            };
        };
        readonly StepWeather: {
            /** @description Code of the step that waits for weather. */
            readonly code: string;
            /** @description What to know when no window fits. */
            readonly note?: string;
            /** @description What the weather must be. */
            readonly requires: readonly components["schemas"]["Requirement"][];
            /** @description Hours of the forecast in which the work may not be begun, by the gate that forbids it. */
            readonly shutBy: readonly {
                /**
                 * @description Gate that keeps the step shut.
                 * @enum {string}
                 */
                readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
                /** @description Hours that this gate alone shuts. */
                readonly hours: number;
            }[];
            /** @description Name of that step. */
            readonly title: string;
            /** @description When the step may start, best first. */
            readonly windows: readonly components["schemas"]["WorkWindow"][];
        };
        /** @description How many packs of a SKU there are now. */
        readonly StockCount: {
            /** @description RFC 3339 instant at which it was counted. */
            readonly countedAt: string;
            /** @description Whole packs. */
            readonly packs: number;
            /** @description Pack that was counted. */
            readonly sku: string;
        };
        /** @description What was counted of a price list. Of packs that are not here, the stock of the edition counts. */
        readonly StockList: {
            /** @description Packs that were counted. */
            readonly items: readonly components["schemas"]["StockCount"][];
            /** @description Code of the price list whose packs were counted. */
            readonly priceList: string;
        };
        readonly StockSheetInput: {
            /**
             * Format: int32
             * @description How many there are; absent: as many as it takes. Needed for a sheet that costs nothing.
             */
            readonly available?: number;
            /** @description Cost in any one currency; costs are only compared. */
            readonly cost: number;
            /** @description Bad spots and cut-outs. */
            readonly holes?: readonly (readonly (readonly number[])[])[];
            /** @description Name of the sheet, unique in the request. */
            readonly id: string;
            /** @description A whole, half or quarter sheet, or an offcut as it is. */
            readonly outline: readonly (readonly number[])[];
        };
        /** @description An estimate as it is kept: the document, and what the service adds to it. Never changed once made. */
        readonly StoredEstimate: {
            /** @description Opens this estimate and its revisions; only in the answer to a publishable key, and kept by nobody else. */
            readonly clientSecret?: string;
            /** @description When that secret stops opening the estimate (RFC 3339). */
            readonly clientSecretExpiresAt?: string;
            /** @description When the estimate was kept (RFC 3339). */
            readonly createdAt: string;
            /** @description The estimate with all its sections. */
            readonly estimate: components["schemas"]["Estimate"];
            /** @description Id that the estimate is kept under. */
            readonly id: string;
            /** @description SHA-256 of the defect record, with its members in order. */
            readonly inputHash: string;
            /** @description Its place among the revisions of the job. */
            readonly revision: components["schemas"]["RevisionMark"];
        };
        /** @description Pieces laid on a length of roll; x runs along the roll, y across it. */
        readonly StripLayout: {
            /** @description Step of the grid that pieces were moved on. */
            readonly gridStepMm: number;
            /** @description No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along. */
            readonly leastLengthMm: number;
            /** @description Length to cut off the roll. */
            readonly lengthMm: number;
            /** @description Area of the pieces on the roll. */
            readonly pieceAreaM2: number;
            /** @description Where each piece lies on the roll. */
            readonly placements: readonly components["schemas"]["Placement"][];
            /** @description Area of roll used. */
            readonly stripAreaM2: number;
            /** @description `lengthMm`, `widthMm`, `pieceAreaM2` and 3 more of StripLayout in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Step of the grid that pieces were moved on. */
                readonly gridStepMm?: string;
                /** @description In US units: No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along. */
                readonly leastLengthMm?: string;
                /** @description In US units: Length to cut off the roll. */
                readonly lengthMm?: string;
                /** @description In US units: Area of the pieces on the roll. */
                readonly pieceAreaM2?: string;
                /** @description In US units: Area of roll used. */
                readonly stripAreaM2?: string;
                /** @description In US units: Width of the roll. */
                readonly widthMm?: string;
            };
            /** @description Share of the roll that becomes pieces. */
            readonly utilisation: number;
            /** @description Width of the roll. */
            readonly widthMm: number;
            /** @description Thousands of pairs looked at. */
            readonly workUnits: number;
        };
        readonly SubstituteInput: {
            /** @description What is asked for. */
            readonly insteadOf: components["schemas"]["MaterialVariantInput"];
            /** @description What the trouble is worth for each unit replaced; steers the choice and is not paid. */
            readonly penaltyPerUnit: string;
            /** @description Units of the substitute that do the work of one unit. */
            readonly ratio: number;
            /** @description Why it would do. */
            readonly reason: string;
            /** @description What would do as well. */
            readonly use: components["schemas"]["MaterialVariantInput"];
        };
        readonly Substitution: {
            /** @description Material that was planned. */
            readonly insteadOf: components["schemas"]["MaterialVariant"];
            /** @description What the search counted against the substitution; nobody pays it. */
            readonly penalty: components["schemas"]["MoneyJson"];
            /** @description How much of the planned material it stands for. */
            readonly quantity: number;
            /** @description Why the other material may stand in. */
            readonly reason: string;
            /** @description Unit of the replaced quantity. */
            readonly unit: string;
            /** @description `quantity` of Substitution in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How much of the planned material it stands for. */
                readonly quantity?: string;
            };
            /** @description Material that is bought in its place. */
            readonly use: components["schemas"]["MaterialVariant"];
        };
        readonly Summary: {
            /** @description Days that the boat lies, as a spread. */
            readonly calendarDays: components["schemas"]["Range"];
            /** @description Sheets of core to buy. */
            readonly coreSheets: number;
            /** @description Sawing to do. */
            readonly cutLengthM: number;
            /** @description Total by what an insurer asks for. */
            readonly insurer: {
                /** @description Part that the stated event caused. */
                readonly attributable: components["schemas"]["MoneyJson"];
                /** @description Part that makes the boat better than it was. */
                readonly improvement: components["schemas"]["MoneyJson"];
                /** @description Part that was there before. */
                readonly prior: components["schemas"]["MoneyJson"];
            };
            /** @description Of the whole job with what is found besides, from the same simulation as money and days. */
            readonly labourH: components["schemas"]["Range"];
            /** @description Sum of the most likely hours of each operation: seldom enough for all of them together. */
            readonly labourLikelyH: number;
            /** @description Sum of the labour lines: the recorded scope at mean hours. */
            readonly labourMeanH: number;
            /** @description Resin to mix, losses included. */
            readonly mixedResinL: number;
            /** @description Skin taken off the deck. */
            readonly openedAreaM2: number;
            /** @description The price with tax: base and what will probably be found besides. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description Spread of the total. */
            readonly totalRange: components["schemas"]["EstimateMoneyRange"];
            /** @description Beside the price, with tax. */
            readonly totalWithContingency: components["schemas"]["MoneyJson"];
            /** @description `openedAreaM2`, `cutLengthM` and `mixedResinL` of Summary in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Sawing to do. */
                readonly cutLengthM?: string;
                /** @description In US units: Resin to mix, losses included. */
                readonly mixedResinL?: string;
                /** @description In US units: Skin taken off the deck. */
                readonly openedAreaM2?: string;
            };
            /**
             * @description What the conclusion says of the finished repair.
             * @enum {string}
             */
            readonly verdict: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
            /** @description Days with somebody at work, as a spread. */
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly SupplierInput: {
            /** @description Code of the supplier, unique in the list. */
            readonly code: string;
            /** @description Price of one delivery. */
            readonly delivery: string;
            /** @description Sum from which delivery is free. */
            readonly freeDeliveryFrom?: string;
            /** @description What a box of dangerous goods adds to it. */
            readonly hazardSurcharge: string;
            /** @description Least sum that the supplier delivers for. */
            readonly minimumOrder: string;
            /** @description Name that orders are addressed to. */
            readonly name: string;
            /** @description What goods too large for parcels add to it. */
            readonly oversizeFreight: string;
        };
        readonly SupplierOrder: {
            /** @description Cutting on all lines of the order. */
            readonly cutFees: components["schemas"]["MoneyJson"];
            /** @description What carriage of the order costs. */
            readonly delivery: components["schemas"]["MoneyJson"];
            /** @description Packs of the order at list price. */
            readonly goods: components["schemas"]["MoneyJson"];
            /** @description Boxes that the dangerous goods are packed in. */
            readonly hazardBoxes: number;
            /** @description What the dangerous goods in the order add to carriage. */
            readonly hazardSurcharge: components["schemas"]["MoneyJson"];
            /** @description Whether the goods reach the sum from which delivery is free. */
            readonly isDeliveryFree: boolean;
            /** @description What the whole order weighs. */
            readonly massKg: number;
            /** @description Name of the supplier on the order. */
            readonly name: string;
            /** @description What the packs too large for parcels add to carriage. */
            readonly oversizeFreight: components["schemas"]["MoneyJson"];
            /** @description Code of the supplier the order goes to. */
            readonly supplier: string;
            /**
             * @description Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more.
             * @enum {string}
             */
            readonly toppedUpFor?: "free-delivery" | "minimum-order";
            /** @description All that this supplier is paid. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description `massKg` of SupplierOrder in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: What the whole order weighs. */
                readonly massKg?: string;
            };
        };
        readonly SupplierSheetInput: {
            /**
             * @description What becomes of the prices from more packs on, where a price is taken.
             * @enum {string}
             */
            readonly breaks: "keep" | "drop";
            /** @description The cells, headings first: parted by tabs, semicolons or commas, whichever the headings have most of, and quoted as RFC 4180 says. */
            readonly cells: string;
            /** @description What the columns mean; columns that are not named here are left out. */
            readonly columns: readonly components["schemas"]["SheetColumnInput"][];
            /**
             * @description What parts the decimals in the numbers of the sheet.
             * @enum {string}
             */
            readonly decimalMark: "." | ",";
            /**
             * @description What becomes of rows whose SKU is not in the list.
             * @enum {string}
             */
            readonly unknownSkus: "refuse" | "leave-out";
        };
        readonly SupportLine: {
            /** @description Where it starts. */
            readonly from: readonly number[];
            /**
             * @description What it is.
             * @enum {string}
             */
            readonly kind: "beam" | "bulkhead" | "coaming" | "hatch" | "hull-joint" | "other" | "toe-rail";
            /** @description Where it ends. */
            readonly to: readonly number[];
        };
        readonly SupportLineInput: {
            /**
             * @description Where it starts.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly from: readonly number[];
            /**
             * @description What it is.
             * @enum {string}
             */
            readonly kind: "hull-joint" | "coaming" | "hatch" | "toe-rail" | "bulkhead" | "beam" | "other";
            /**
             * @description Where it ends.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly to: readonly number[];
        };
        readonly Survey: {
            /** @description Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core. */
            readonly meter?: {
                /** @description What the meter shows on sound, dry deck of this boat. */
                readonly dryReference: number;
                /** @description What the meter shows where the deck is surely wet. */
                readonly wetReference: number;
            };
            /** @description What was heard, measured and seen on the deck. */
            readonly readings: readonly (components["schemas"]["Sounding"] | components["schemas"]["MeterReading"] | components["schemas"]["Plug"])[];
        };
        readonly SurveyInput: {
            /** @description What the meter says of sound and of soaked deck; needed beside its readings. */
            readonly meter?: components["schemas"]["MeterInput"];
            /** @description Soundings, meter readings and plugs, in any order. */
            readonly readings: readonly (components["schemas"]["SoundingInput"] | components["schemas"]["MeterReadingInput"] | components["schemas"]["PlugInput"])[];
        };
        readonly Surveyor: {
            /** @description Firm of the surveyor. */
            readonly firm?: string;
            /** @description Name of the surveyor. */
            readonly name?: string;
            /** @description Qualification of the surveyor. */
            readonly qualification?: string;
        };
        readonly SurveyorInput: {
            /** @description Firm of the surveyor. */
            readonly firm?: string;
            /** @description Name of the surveyor. */
            readonly name?: string;
            /** @description Qualification of the surveyor. */
            readonly qualification?: string;
        };
        readonly SurveySoFarInput: {
            /** @description What the meter says of sound and of soaked deck; needed beside its readings. */
            readonly meter?: components["schemas"]["MeterInput"];
            /** @description Soundings, meter readings and plugs, in any order. */
            readonly readings: readonly (components["schemas"]["SoundingInput"] | components["schemas"]["MeterReadingInput"] | components["schemas"]["PlugInput"])[];
        };
        /** @description What a supplier's sheet did to a price list of a draft. */
        readonly TakenSheet: {
            /** @description SKUs of packs that are otherwise now. */
            readonly changed: readonly string[];
            /** @description Code of the draft. */
            readonly edition: string;
            /** @description SKUs of rows that are not in the list and were left out, as asked. */
            readonly leftOut: readonly string[];
            /** @description Code of the price list. */
            readonly priceList: string;
            /** @description Packs that the sheet names and that stay as they were. */
            readonly sameCount: number;
        };
        readonly TaxGroupInput: {
            /** @description Code that lines name the tax by. */
            readonly code: string;
            /** @description Name of the tax on an invoice. */
            readonly name: string;
            /** @description Rate of the tax in percent, as decimal text. */
            readonly percent: string;
        };
        /** @description A quantity nobody knows exactly: least, most likely and most. */
        readonly ThreePoint: {
            /** @description High end of the spread. */
            readonly high: number;
            /** @description Most likely value of the spread. */
            readonly likely: number;
            /** @description Low end of the spread. */
            readonly low: number;
        };
        readonly ThreePointInput: {
            /** @description Most. */
            readonly high: number;
            /** @description Likely. */
            readonly likely: number;
            /** @description Least. */
            readonly low: number;
        };
        readonly TodayItem: {
            /**
             * @description Work, a wait, a hold point, or what comes next.
             * @enum {string}
             */
            readonly kind: "hold" | "next" | "wait" | "work";
            /** @description Task that it belongs to, by code. */
            readonly task: string;
            /** @description What to do or wait for, in a sentence. */
            readonly text: string;
        };
        /** @description A section of the sum, or a step from the sum of the lines to what is to be paid. */
        readonly TotalChange: {
            /** @description The total in the later estimate. */
            readonly after: components["schemas"]["MoneyJson"];
            /** @description The total in the earlier estimate. */
            readonly before: components["schemas"]["MoneyJson"];
            /** @description Which total changed. */
            readonly code: string;
            /** @description What the total rose by; negative where it fell. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Name of the total. */
            readonly name: string;
        };
        readonly Totals: {
            /** @description Lines with overhead and profit: the recorded scope at mean hours, without tax. */
            readonly base: components["schemas"]["MoneyJson"];
            /** @description What better evidence would leave of the contingency, and what it would take off it; without tax. */
            readonly betterEvidence: readonly {
                /** @description Reserve at that grade. */
                readonly contingency: components["schemas"]["MoneyJson"];
                /**
                 * @description A better grade of evidence.
                 * @enum {string}
                 */
                readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
                /** @description What the reserve would shrink by. */
                readonly saves: components["schemas"]["MoneyJson"];
            }[];
            /** @description Price with tax, by the cause of the lines. */
            readonly byCause: readonly {
                /** @description What is put down to it. */
                readonly amount: components["schemas"]["MoneyJson"];
                /**
                 * @description The cause.
                 * @enum {string}
                 */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            }[];
            /** @description P80 less the price, without tax; it stands beside the price and is no part of it. */
            readonly contingency: components["schemas"]["MoneyJson"];
            /** @description How the reserve was worked out. */
            readonly contingencyBasis: string;
            /** @description By kind of risk; the shares make the whole. */
            readonly contingencyByKind: readonly {
                /** @description Its part of the reserve. */
                readonly amount: components["schemas"]["MoneyJson"];
                /**
                 * @description Kind of risk.
                 * @enum {string}
                 */
                readonly kind: "extent" | "new-areas" | "price" | "productivity" | "waits";
                /** @description Name of the risk. */
                readonly name: string;
                /** @description Its share of the reserve. */
                readonly share: number;
            }[];
            /** @description Currency of the estimate (ISO 4217). */
            readonly currency: string;
            /** @description Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
            readonly depreciation?: components["schemas"]["PartsWear"];
            /** @description Kinds of risk by what they add to the uncertainty of the price. */
            readonly drivers: readonly {
                /** @description What is uncertain. */
                readonly name: string;
                /** @description Its share of the variance of the total. */
                readonly shareOfVariance: number;
            }[];
            /** @description What is billed for goods and what is bought. */
            readonly goods: components["schemas"]["GoodsSums"];
            /** @description What will probably be found besides, as a provisional quantity; without tax. */
            readonly growth: components["schemas"]["ProvisionalSum"];
            /** @description Total as an insurer reads it. */
            readonly insurer: components["schemas"]["InsurerSplit"];
            /** @description Work in the price, with its loadings and tax. */
            readonly labour: components["schemas"]["MoneyJson"];
            /** @description Sum of the lines, before overhead, profit and tax. */
            readonly net: components["schemas"]["MoneyJson"];
            /** @description Separate areas elsewhere; without tax. */
            readonly newAreas: components["schemas"]["ProvisionalSum"];
            /** @description What the customer is offered first. */
            readonly offer: components["schemas"]["Offer"];
            /** @description Overhead in the total. */
            readonly overhead: components["schemas"]["MoneyJson"];
            /** @description Only where the owner works himself. */
            readonly ownWork?: {
                /** @description What a yard would ask for these hours. */
                readonly aYardWouldAsk: components["schemas"]["MoneyJson"];
                /** @description How that was reckoned. */
                readonly basis: string;
                /** @description Hours that the owner works. */
                readonly labourH: number;
            };
            /** @description Half of the points against the other half, P90 over P90. */
            readonly p90RelativeError: number;
            /** @description Goods in the price, with their loadings and tax. */
            readonly parts: components["schemas"]["MoneyJson"];
            /** @description Profit in the total. */
            readonly profit: components["schemas"]["MoneyJson"];
            /** @description Of the whole job with tax: what the simulated jobs cost. */
            readonly range: components["schemas"]["EstimateMoneyRange"];
            /** @description Jobs drawn for the spread. */
            readonly samples: number;
            /** @description Share of the simulated jobs that cost no more than `total`. */
            readonly shareWithin: number;
            /** @description Sum of the taxes. */
            readonly tax: components["schemas"]["MoneyJson"];
            /** @description Taxes in the price, each on its group of lines. */
            readonly taxes: readonly {
                /** @description The tax. */
                readonly amount: components["schemas"]["MoneyJson"];
                /** @description Sum that the tax is reckoned on. */
                readonly base: components["schemas"]["MoneyJson"];
                /** @description Tax group of the sum. */
                readonly code: string;
                /** @description Name on the invoice. */
                readonly name: string;
                /** @description Rate in percent, as decimal text. */
                readonly percent: string;
            }[];
            /** @description The price: base, growth and new areas, with tax. About as many jobs cost more as cost less. */
            readonly total: components["schemas"]["MoneyJson"];
            /** @description Price and contingency together, with tax. */
            readonly totalWithContingency: components["schemas"]["MoneyJson"];
        };
        readonly TrialTotal: {
            /** @description Sum of the totals with the draft. */
            readonly after: components["schemas"]["MoneyJson"];
            /** @description Sum of the stored totals. */
            readonly before: components["schemas"]["MoneyJson"];
            /** @description Currency that these estimates are in. */
            readonly currency: string;
            /** @description What the draft adds to the sum. */
            readonly difference: components["schemas"]["MoneyJson"];
            /** @description Estimates that the sums are over. */
            readonly estimateCount: number;
        };
        /** @description One estimate, worked out again with both editions from the record that it keeps. */
        readonly TriedEstimate: {
            /** @description The same with the edition tried. */
            readonly after?: components["schemas"]["MoneyJson"];
            /** @description Without tax, provisional sums included; absent where an edition could not answer. */
            readonly before?: components["schemas"]["MoneyJson"];
            /** @description Total with the draft less the stored total; absent when it could not be made. */
            readonly difference?: components["schemas"]["MoneyJson"];
            /** @description Figures of the scope that differ, such as sheets of core. */
            readonly figures: readonly components["schemas"]["FigureChange"][];
            /** @description Estimate that was tried. */
            readonly id: string;
            /** @description Without tax, provisional sums included, as it is kept: made with its own edition and version of the program. */
            readonly keptNet: components["schemas"]["MoneyJson"];
            /** @description Lines that differ: by how much, because of how much more of it and because of its rate. */
            readonly lines: readonly components["schemas"]["LineChange"][];
            /** @description Only for callers who may read estimates. */
            readonly reference?: string;
            /** @description Why an edition could not answer, one sentence for each thing. */
            readonly refusedBecause: readonly string[];
            /** @description Revision of it that was tried. */
            readonly revisionNumber: number;
            /** @description Of the amount before, such as 0.04 for 4 % more; absent when that was nothing. */
            readonly shareOfBefore?: number;
            /** @description Only for callers who may read estimates. */
            readonly title?: string;
        };
        readonly TypedQuantityInput: {
            /**
             * @description What the text measures.
             * @enum {string}
             */
            readonly dimension: "length" | "area" | "mass" | "temperature" | "areal mass" | "volume" | "speed";
            /**
             * @description A number with its unit.
             * @example 5/8 in
             */
            readonly text: string;
        };
        readonly UsageInput: {
            /**
             * @description What the use is counted by.
             * @enum {string}
             */
            readonly driver: "job" | "opened-m2" | "cut-m" | "taper-m" | "laminate-m2" | "laminate-session-m2" | "faired-m2" | "finish-m2" | "hole" | "fitting" | "labour-h" | "mixed-l" | "bag-perimeter-m" | "person" | "prop" | "prop-board-m" | "press-bag" | "batten-m" | "batten-screw";
            /** @description How much is used for one of those. */
            readonly perDriver: components["schemas"]["DatumInput"];
        };
        readonly VacuumInput: {
            /** @description Bag volume. */
            readonly bagVolumeL?: number;
            /** @description Loss of vacuum in a drop test with the pump shut off. */
            readonly dropKPa?: number;
            /** @description Drop minutes. */
            readonly dropMinutes?: number;
            /** @description Share of the air that the pump takes away. Absent: 0.75 (22 inHg of 30 is what repair manuals ask at least). */
            readonly fraction?: number;
            /** @description Free flow of the pump. Absent: 50 l/min (small workshop pump). */
            readonly pumpLPerMin?: number;
        };
        readonly VariantAskedInput: {
            /**
             * @description Names the variant in the answer.
             * @example relay-vacuum
             */
            readonly code: string;
            /** @description What is otherwise than the record's own conditions say. */
            readonly conditions?: components["schemas"]["ConditionsInput"];
            /** @description Fill the gap under a sound skin through drilled holes; refused, with the rule, wherever that is not trusted. */
            readonly inject?: boolean;
            /** @description What is done otherwise than the record's own method says. */
            readonly method?: components["schemas"]["MethodInput"];
            /** @description Absent: the code. */
            readonly title?: string;
        };
        readonly VariantComparison: {
            /** @description Criteria that every variant has a value for, and that dominance is judged on. */
            readonly compared: readonly ("cost" | "days" | "labourH" | "massKg" | "p80" | "spread" | "utilisation")[];
            /** @description Currency of all variants. */
            readonly currency: string;
            /** @description Variants that cannot be done. */
            readonly refused: readonly {
                /** @description Variant that is refused. */
                readonly code: string;
                /** @description Rule that refuses it. */
                readonly rule: string;
                /** @description Name of the refused variant. */
                readonly title: string;
                /** @description Why it refuses it here. */
                readonly why: string;
            }[];
            /** @description Variants, each with its figures. */
            readonly rows: readonly components["schemas"]["VariantRow"][];
        };
        readonly VariantRow: {
            /** @description In which of the criteria nothing is better. */
            readonly bestIn: readonly ("cost" | "days" | "labourH" | "massKg" | "p80" | "spread" | "utilisation")[];
            /** @description Code of the variant. */
            readonly code: string;
            /** @description Codes of variants that are as good in everything compared and better in something. */
            readonly dominatedBy: readonly string[];
            /** @description Whether a check fails with it. */
            readonly failsCheck: boolean;
            /** @description Its price with tax. */
            readonly gross: components["schemas"]["MoneyJson"];
            /** @description Its price before tax. */
            readonly net: components["schemas"]["MoneyJson"];
            /** @description What to know about the variant. */
            readonly note?: string;
            /** @description Name of the variant. */
            readonly title: string;
            /** @description Figures that variants are compared by. */
            readonly values: components["schemas"]["VariantValues"];
        };
        readonly VariantsRequest: {
            /** @description Defect record that all variants share. */
            readonly record: components["schemas"]["DefectRecordInput"];
            /** @description An entry with nothing but a code is the record as it stands. */
            readonly variants: readonly components["schemas"]["VariantAskedInput"][];
        };
        /** @description What a variant comes to in each of the criteria; absent where it is not known. */
        readonly VariantValues: {
            /** @description Lines with overhead and profit, without tax. */
            readonly cost: components["schemas"]["MoneyJson"];
            /** @description Working days. */
            readonly days?: number;
            /** @description Hours that the variant takes. */
            readonly labourH: number;
            /** @description Mass that the variant adds; absent when unknown. */
            readonly massKg?: number;
            /** @description What four jobs in five stay below, without tax. */
            readonly p80?: components["schemas"]["MoneyJson"];
            /** @description From P10 to P90. */
            readonly spread?: components["schemas"]["MoneyJson"];
            /** @description `massKg` of VariantValues in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Mass that the variant adds; absent when unknown. */
                readonly massKg?: string;
            };
            /** @description Highest demand over capacity with the variant. */
            readonly utilisation?: number;
        };
        readonly Vessel: {
            /** @description Builder of the vessel. */
            readonly builder?: string;
            /** @description As moulded or engraved on the hull. */
            readonly hullNumber?: string;
            /** @description Type or model of the vessel. */
            readonly model?: string;
            /** @description Name of the vessel. */
            readonly name?: string;
            /** @description Registration of the vessel. */
            readonly registration?: string;
        };
        readonly VesselInput: {
            /** @description Builder of the vessel. */
            readonly builder?: string;
            /** @description As moulded or engraved on the hull. */
            readonly hullNumber?: string;
            /** @description Type or model of the vessel. */
            readonly model?: string;
            /** @description Name of the vessel. */
            readonly name?: string;
            /** @description Registration of the vessel. */
            readonly registration?: string;
        };
        readonly WeatherHour: {
            /** @description Start of the hour (RFC 3339). */
            readonly at: string;
            /** @description Temperature of the deck. */
            readonly deckC: number;
            /** @description Deck temperature less dew point; below the gate's limit the deck is wet. */
            readonly dewMarginK: number;
            /** @description Dew point of the air. */
            readonly dewPointC: number;
            /** @description `dewPointC` and `deckC` of WeatherHour in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Temperature of the deck. */
                readonly deckC?: string;
                /** @description In US units: Dew point of the air. */
                readonly dewPointC?: string;
            };
        };
        readonly WeatherPlan: {
            /** @description What was taken about the weather. */
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            /** @description The forecast, hour by hour, as the deck feels it. */
            readonly hours: readonly components["schemas"]["WeatherHour"][];
            /** @description Each step with its gates and windows. */
            readonly steps: readonly components["schemas"]["StepWeather"][];
        };
        /** @description What the forecast opens and shuts. */
        readonly WeatherSection: {
            /** @description Coldest that the deck becomes. */
            readonly coldestDeckC: number;
            /** @description Moments in the local time of the place. */
            readonly fromAt: string;
            /** @description Hours that the forecast reaches. */
            readonly hours: number;
            /** @description Closest that the deck comes to the dew point. */
            readonly leastDewMarginK: number;
            /** @description What to know about the forecast. */
            readonly notes: readonly string[];
            /** @description Steps that wait for weather, each with its windows. */
            readonly steps: readonly components["schemas"]["WeatherStepSection"][];
            /** @description IANA time zone that local times are read in. */
            readonly timeZone: string;
            /** @description The end of the last hour of the forecast. */
            readonly untilAt: string;
            /** @description `coldestDeckC` and `warmestDeckC` of WeatherSection in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Coldest that the deck becomes. */
                readonly coldestDeckC?: string;
                /** @description In US units: Warmest that the deck becomes. */
                readonly warmestDeckC?: string;
            };
            /** @description Warmest that the deck becomes. */
            readonly warmestDeckC: number;
        };
        readonly WeatherStepInput: {
            /** @description For a coat: code of the coating, whose limits then count. */
            readonly coating?: string;
            /**
             * @description A name for the step.
             * @example bed-core
             */
            readonly code: string;
            /** @description RFC 3339: what comes before is done then, and no earlier hour counts. */
            readonly earliestAt?: string;
            /**
             * @description What it waits for.
             * @enum {string}
             */
            readonly gate: "none" | "dry-deck" | "resin" | "coating";
            /** @description Title of the step. */
            readonly title: string;
            /** @description Hours after the work until rain and dew no longer hurt; absent: the gel of the resin, or four hours for a coat. */
            readonly untilSafeH?: number;
            /** @description Hours of work. */
            readonly workH: number;
        };
        readonly WeatherStepSection: {
            /** @description Step of the calendar. */
            readonly code: string;
            /** @description What comes before is done then, by likely values. */
            readonly earliestAt: string;
            /**
             * @description Which gate the weather must open.
             * @enum {string}
             */
            readonly gate: "coating" | "dry-deck" | "resin";
            /** @description Crew hours that it takes. */
            readonly neededH: number;
            /** @description Working hours of the forecast from `earliestAt` in which an hour of it may be begun. */
            readonly openH: number;
            /** @description When the plan starts the step (RFC 3339). */
            readonly plannedAt: string;
            /** @description When the plan ends the step (RFC 3339). */
            readonly plannedEndAt: string;
            /** @description Working hours that each condition takes away. */
            readonly shutBy: readonly {
                /** @description Requirement that shuts the step. */
                readonly gate: string;
                /** @description Hours of the forecast that it shuts. */
                readonly hours: number;
            }[];
            /** @description What the step is. */
            readonly title: string;
            /** @description How many windows the forecast holds for it. */
            readonly windowCount: number;
            /** @description The best few, the longest first. */
            readonly windows: readonly components["schemas"]["WeatherWindow"][];
        };
        readonly WeatherWindow: {
            /** @description When the window opens (RFC 3339). */
            readonly fromAt: string;
            /** @description How long the window stays open. */
            readonly hours: number;
            /** @description How close the deck comes to the dew point within the window. */
            readonly leastDewMarginK: number;
            /** @description Which requirement closes the window. */
            readonly limitedBy: string;
            /** @description How warm the deck is on average within the window. */
            readonly meanDeckC: number;
            /** @description Place among the windows of the step, 1 the best. */
            readonly rank: number;
            /** @description The end of the last hour in which it may be begun. */
            readonly untilAt: string;
            /** @description `meanDeckC` of WeatherWindow in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How warm the deck is on average within the window. */
                readonly meanDeckC?: string;
            };
        };
        /** @description How far an event came on its way to an endpoint. */
        readonly WebhookDelivery: {
            /** @description How often it was tried; there are ten attempts in three days. */
            readonly attempts: number;
            /** @description Event that is delivered. */
            readonly eventId: string;
            /** @description Why the last attempt failed, in a sentence. */
            readonly lastFailure?: string;
            /** @description HTTP status of the last attempt; absent when nothing was answered. */
            readonly lastStatus?: number;
            /** @description RFC 3339 instant of the next attempt; only while it waits. */
            readonly nextAttemptAt?: string;
            /**
             * @description How the delivery stands.
             * @enum {string}
             */
            readonly status: "delivered" | "failed" | "waiting";
            /** @description RFC 3339 instant of the last attempt; absent before the first. */
            readonly triedAt?: string;
            /**
             * @description Type of that event.
             * @enum {string}
             */
            readonly type: "edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made";
        };
        /** @description The last deliveries to an endpoint, newest event first. */
        readonly WebhookDeliveryList: {
            /** @description Deliveries, newest first. */
            readonly items: readonly components["schemas"]["WebhookDelivery"][];
        };
        /** @description Where an organisation wants to be told what happened. */
        readonly WebhookEndpoint: {
            /** @description When the endpoint was made (RFC 3339). */
            readonly createdAt: string;
            /** @description Why nothing is delivered any more; absent while it is. */
            readonly disabledBecause?: string;
            /** @description Id of the endpoint. */
            readonly id: string;
            /** @description Events that the endpoint is told of. */
            readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
            /** @description Where events are posted to. */
            readonly url: string;
        };
        /** @description Endpoints of the organisation, oldest first. */
        readonly WebhookEndpointList: {
            /** @description Endpoints of the organisation. */
            readonly items: readonly components["schemas"]["WebhookEndpoint"][];
        };
        readonly Weighing: {
            /** @description How much of it to add. */
            readonly addG: number;
            /** @description Name of the component. */
            readonly name: string;
            /** @description What the scale shows after it, pot tared. */
            readonly scaleShowsG: number;
            /** @description `addG`, `scaleShowsG` and `volumeMl` of Weighing in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: How much of it to add. */
                readonly addG?: string;
                /** @description In US units: What the scale shows after it, pot tared. */
                readonly scaleShowsG?: string;
                /** @description In US units: Volume of the part: by pump or measuring cup; loose volume for fillers. */
                readonly volumeMl?: string;
            };
            /** @description Volume of the part: by pump or measuring cup; loose volume for fillers. */
            readonly volumeMl: number;
            /**
             * @description Component that is added.
             * @enum {string}
             */
            readonly what: "filler" | "hardener" | "resin";
        };
        readonly WeightsInput: {
            /** @description At hand. */
            readonly availableKg?: number | string;
            /** @description One weight. Absent: 20 kg (a sand bag that one person lifts). */
            readonly bagKg?: number | string;
        };
        /** @description Why a figure is what it is: the tree of formulas, inputs and sources below it. */
        readonly WhyAnswer: {
            /** @description Line that was asked about. */
            readonly code: string;
            /** @description Derivation of the line's quantity, down to what was entered. */
            readonly figure: components["schemas"]["Figure"];
        };
        /** @description Words that a surveyor may replace; what the service would say stays beside them. */
        readonly Worded: {
            /** @description The sentence that the rules give. */
            readonly byService: string;
            /** @description Whether the surveyor's own words stand in its place. */
            readonly isSurveyors: boolean;
            /** @description What is printed. */
            readonly text: string;
        };
        /** @description Hours in which a step may start. */
        readonly WorkWindow: {
            /** @description Earliest start in the window (RFC 3339). */
            readonly fromAt: string;
            /** @description Least distance of the deck from the dew point. */
            readonly leastDewMarginK: number;
            /**
             * @description What ends the window.
             * @enum {string}
             */
            readonly limitedBy: "core-moisture" | "dew-margin" | "end-of-forecast" | "end-of-work" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
            /** @description Mean temperature of the deck in the window. */
            readonly meanDeckC: number;
            /** @description Place among the windows, 1 the best. */
            readonly rank: number;
            /** @description Hours within which the step may start. */
            readonly startHours: number;
            /** @description The end of its last hour. */
            readonly untilAt: string;
            /** @description `meanDeckC` of WorkWindow in US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                /** @description In US units: Mean temperature of the deck in the window. */
                readonly meanDeckC?: string;
            };
        };
        readonly YardChargeInput: {
            /** @description Code that estimates name the charge by. */
            readonly code: string;
            /** @description What the yard charges for. */
            readonly name: string;
            /**
             * @description day: on the calendar; worked-day: one on which somebody works.
             * @enum {string}
             */
            readonly per: "job" | "day" | "worked-day" | "labour-h" | "opened-m2";
            /** @description Price of it. */
            readonly price: string;
            /**
             * @description By the shelter, or only while a heater warms the deck; always when absent.
             * @enum {string}
             */
            readonly when?: "shed" | "tent" | "open" | "heated";
            /**
             * @description Only where the boat was hauled for this job, or only in a yard; everywhere when absent.
             * @enum {string}
             */
            readonly where?: "ashore-for-this" | "yard";
        };
        readonly YardstickLoadInput: {
            /**
             * @description A plain load that every deck is compared under. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "yardstick";
            /** @description Your own name for the plain load, as the answer shows it. */
            readonly name?: string;
        };
        readonly ZoneInput: {
            /**
             * @description Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
             * @enum {string}
             */
            readonly condition?: "wet-rotten" | "wet-bonded" | "dry-debonded";
            /** @description Name of the zone. */
            readonly id: string;
            /** @description The region of bad core. */
            readonly outline: readonly (readonly number[])[];
        };
        readonly ZoneRecord: {
            /**
             * @description Condition of the core. Absent: wet-rotten (the commonest state of a core that has gone soft; a plug shows the real one).
             * @enum {string}
             */
            readonly condition?: "dry-debonded" | "wet-bonded" | "wet-rotten";
            /** @description Name of the zone. */
            readonly id: string;
            /** @description The region of bad core. */
            readonly outline: readonly (readonly number[])[];
        };
    };
    responses: {
        /** @description The request could not be read. */
        readonly BadRequest: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The request conflicts with the present state. */
        readonly Conflict: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The request is too large. */
        readonly ContentTooLarge: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The key may not do this. */
        readonly Forbidden: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The service failed. */
        readonly Internal: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description No acceptable form of the answer exists. */
        readonly NotAcceptable: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description There is no such thing here. */
        readonly NotFound: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The resource was changed in the meantime. */
        readonly PreconditionFailed: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description State which version is to be changed. */
        readonly PreconditionRequired: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The request took too long to arrive. */
        readonly RequestTimeout: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description Too many requests. */
        readonly TooManyRequests: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly "Retry-After": components["headers"]["RetryAfter"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description A valid key is needed. */
        readonly Unauthenticated: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The service cannot answer now. */
        readonly Unavailable: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly "Retry-After": components["headers"]["RetryAfter"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The request was understood but cannot be answered. */
        readonly Unprocessable: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
        /** @description The content type cannot be read. */
        readonly UnsupportedMediaType: {
            headers: {
                readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                readonly RateLimit: components["headers"]["RateLimit"];
                readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                readonly Traceparent: components["headers"]["Traceparent"];
                readonly "X-Request-Id": components["headers"]["RequestId"];
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/problem+json": components["schemas"]["ProblemDocument"];
            };
        };
    };
    parameters: {
        /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
        readonly AcceptUnits: "si" | "us";
        /** @description `nextCursor` of the page before. */
        readonly Cursor: string;
        /** @description Code of a draft. */
        readonly Edition: string;
        /** @description Code of the edition. */
        readonly EditionCode: string;
        /** @description Id of the estimate, or of one of its revisions. */
        readonly EstimateId: string;
        /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
        readonly IdempotencyKey: string;
        /** @description ETag of the version that is to be changed. */
        readonly IfMatch: string;
        /** @description Id of the key; not the key itself. */
        readonly KeyId: string;
        /** @description Only those in this currency. */
        readonly Kind: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
        /** @description Code of the labour rates. */
        readonly LabourRatesCode: string;
        /** @description Entries on a page. */
        readonly Limit: number;
        /** @description Code of the material. */
        readonly MaterialCode: string;
        /** @description Id of the operation, as Location gave it. */
        readonly OperationId: string;
        /** @description Id of the organisation. */
        readonly OrganisationId: string;
        /** @description Number that the supplier sells the pack under. */
        readonly PackSku: string;
        /** @description Paper that a PDF is set for. */
        readonly Paper: "a4" | "letter";
        /** @description Number that the photograph has in the report, from 1. */
        readonly PhotographNumber: string;
        /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the document. */
        readonly Prefer: string;
        /** @description Code of the price list in the edition. */
        readonly PriceListCode: string;
        /** @description Id of the publishable key; not the key itself. */
        readonly PublishableKeyId: string;
        /** @description Id of the key of the chandler. */
        readonly SharedKeyId: string;
        /** @description Key of the source. */
        readonly SourceKey: string;
        /** @description Id of the webhook endpoint. */
        readonly WebhookEndpointId: string;
    };
    requestBodies: never;
    headers: {
        /** @description The origin of the page that asked, where it is allowed to. */
        readonly AccessControlAllowOrigin: string;
        /** @description The version of the resource. */
        readonly ETag: string;
        /** @description true when the answer is that of an earlier request with the same key. */
        readonly IdempotencyReplayed: string;
        /** @description Where the new resource is. */
        readonly Location: string;
        /** @description RFC 7240: respond-async when it was preferred and done. */
        readonly PreferenceApplied: string;
        /** @description What is left of the limits of key and organisation, and in how many seconds they are whole again (IETF draft). */
        readonly RateLimit: string;
        /** @description The limits themselves (IETF draft). */
        readonly RateLimitPolicy: string;
        /** @description Identifies the request in logs; sent back as given when the caller sets it. */
        readonly RequestId: string;
        /** @description Seconds to wait before trying again. */
        readonly RetryAfter: number;
        /** @description W3C Trace Context: the span in which the request was answered. */
        readonly Traceparent: string;
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
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * @description That the process answers.
                         * @enum {string}
                         */
                        readonly status: "alive";
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly isReady: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * @description That work can be taken.
                         * @enum {string}
                         */
                        readonly status: "ready";
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listAuditEntries: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page before. */
                readonly cursor?: components["parameters"]["Cursor"];
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
                /** @description Only what was done to this kind of thing, such as key or edition. */
                readonly subject?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["AuditPage"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly openClientSession: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewClientSessionInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ClientSecret"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listEditions: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EditionList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewEditionInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Edition"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Edition"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deleteEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly compareEditions: {
        readonly parameters: {
            readonly query: {
                /** @description Code of the edition to compare with, as the state before. */
                readonly with: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EditionComparison"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEditionHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly publishEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: {
            readonly content: {
                readonly "application/json": components["schemas"]["PublicationInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Edition"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly withdrawEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Edition"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly restoreEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["RestorationInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Edition"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly tryEdition: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Code of the edition. */
                readonly code: components["parameters"]["EditionCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EditionTrialInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EditionTrial"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listEstimates: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page before. */
                readonly cursor?: components["parameters"]["Cursor"];
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
                /** @description Only estimates with this reference of the caller's. */
                readonly reference?: string;
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    /** @description RFC 8288: rel="next" leads to the next page. */
                    readonly Link?: string;
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EstimatePage"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: string;
                /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the estimate. */
                readonly Prefer?: string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["DefectRecordInput"];
            };
        };
        readonly responses: {
            /** @description The stored estimate. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StoredEstimate"];
                };
            };
            /** @description The estimate is being made; the operation at Location says when it is ready. */
            readonly 202: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LongOperation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEstimate: {
        readonly parameters: {
            readonly query?: {
                /** @description The annexes of the report by name: none, all, or some of scope, core, structure, process, prices, assumptions, cautions, reproduction with commas between. */
                readonly annexes?: string;
                /** @description As XML: whom the quotation is for. */
                readonly customer?: string;
                /** @description Which document, as PDF or HTML: for the owner and the insurer, or for the people doing the work. */
                readonly document?: "report" | "job-pack";
                /** @description Paper that a PDF is set for. */
                readonly paper?: components["parameters"]["Paper"];
                /** @description What the report is for; decides its title and which annexes follow the body. Absent: the condition of the deck. */
                readonly purpose?: "condition" | "damage" | "quotation" | "works";
                /** @description As XML: the last day on which the quotation holds. */
                readonly validUntil?: string;
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
                /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the document. */
                readonly Prefer?: components["parameters"]["Prefer"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StoredEstimate"];
                    readonly "application/pdf": string;
                    readonly "application/xml": string;
                    readonly "text/csv": string;
                    readonly "text/html": string;
                };
            };
            /** @description The document is being made; the operation at Location says when it is ready. */
            readonly 202: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LongOperation"];
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEstimateBasket: {
        readonly parameters: {
            readonly query?: {
                /** @description Edition of the catalogue whose prices and packs count, or `current`. Absent: the one that all the estimates were made with, or the current one where they differ. `drift` says line by line what has changed since. */
                readonly pricedAt?: string;
                /** @description As XML: the supplier whose order is meant, because an order has one seller; needed when there are several. The JSON form lists them in `orders`. */
                readonly supplier?: string;
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EstimateBasket"];
                    readonly "application/xml": string;
                    readonly "text/csv": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly fillEstimateBasket: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["BasketChoicesInput"];
            };
        };
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EstimateBasket"];
                    readonly "application/xml": string;
                    readonly "text/csv": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEstimateCalendar: {
        readonly parameters: {
            readonly query?: {
                /** @description As iCalendar: the milestones, or every task as well. Absent: the milestones. */
                readonly events?: "milestones" | "all";
                /** @description The day whose work, waits and holds are listed; by the calendar of the place. */
                readonly on?: string;
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EstimateCalendar"];
                    readonly "text/calendar": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getChangeOrder: {
        readonly parameters: {
            readonly query?: {
                /** @description Paper that a PDF is set for. */
                readonly paper?: components["parameters"]["Paper"];
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ChangeOrder"];
                    readonly "application/pdf": string;
                    readonly "text/html": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly compareEstimates: {
        readonly parameters: {
            readonly query?: {
                /** @description Id of the estimate to compare with; the revision before this one when absent. */
                readonly with?: string;
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Comparison"];
                    readonly "text/csv": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listDrawings: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DrawingList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getDrawing: {
        readonly parameters: {
            readonly query?: {
                /** @description Paper that a PDF is set for. */
                readonly paper?: components["parameters"]["Paper"];
                /** @description Shape of the sheet; `phone` is narrow with larger words. Landscape when absent. */
                readonly shape?: "landscape" | "portrait" | "phone";
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
                /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the document. */
                readonly Prefer?: components["parameters"]["Prefer"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Name of the drawing, as the list of drawings has it. */
                readonly name: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/pdf": string;
                    readonly "image/svg+xml": string;
                    readonly "image/vnd.dxf": string;
                };
            };
            /** @description The document is being made; the operation at Location says when it is ready. */
            readonly 202: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LongOperation"];
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly explainLine: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                /** @description Code of a line; `check:` and the code of a check; or `quantity:` and the code of a quantity. */
                readonly code: string;
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WhyAnswer"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly eraseParties: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listPhotographs: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PhotographList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getPhotograph: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Number that the photograph has in the report, from 1. */
                readonly number: components["parameters"]["PhotographNumber"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "image/jpeg": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly setPhotograph: {
        readonly parameters: {
            readonly query: {
                /** @description Where on the deck it was taken, `xMm,yMm` in the coordinates of the record; drawn on the plan with its number. */
                readonly at?: string;
                /** @description What the photograph shows. */
                readonly caption: string;
                /** @description Which way it looks, in degrees: 0 towards the bow, 90 to starboard. Only together with `at`. */
                readonly directionDeg?: string;
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Number that the photograph has in the report, from 1. */
                readonly number: components["parameters"]["PhotographNumber"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "image/jpeg": string;
                readonly "image/png": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DeckPhotograph"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly removePhotograph: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Number that the photograph has in the report, from 1. */
                readonly number: components["parameters"]["PhotographNumber"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getEstimateRecord: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DefectRecord"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly replayEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Replay"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listRevisions: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RevisionList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly reviseEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: string;
                /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the revision. */
                readonly Prefer?: string;
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["RevisionRequest"];
            };
        };
        readonly responses: {
            /** @description The new revision. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StoredEstimate"];
                };
            };
            /** @description The revision is being made; the operation at Location says when it is ready. */
            readonly 202: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LongOperation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listShares: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ShareList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly shareEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Id of the key of the chandler. */
                readonly keyId: components["parameters"]["SharedKeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly unshareEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the estimate, or of one of its revisions. */
                readonly id: components["parameters"]["EstimateId"];
                /** @description Id of the key of the chandler. */
                readonly keyId: components["parameters"]["SharedKeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly fillBasket: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["BasketRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Basket"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planBondPressure: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["BondPressureRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["BondPressurePlan"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planCalendar: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CalendarRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["JobCalendar"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly billCore: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CoreBillRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CoreBill"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly rollUpCost: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CostRollupRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PricedJob"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planCure: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CurePlanRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CureAndWeather"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planCutting: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CuttingPlanRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CuttingPlan"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly judgeLadder: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["DefectRecordInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["MethodLadder"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly scheduleLaminate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["LaminateScheduleRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LaminateSchedule"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly findNextReadings: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NextReadingsRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NextReadings"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planOpenings: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["OpeningsRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ExtentAndOpenings"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly checkPanel: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PanelCheckRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PanelAnswer"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly previewEstimate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["DefectRecordInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EstimatePreview"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly readQuantities: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["QuantitiesRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["QuantitiesRead"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly planResinBatches: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ResinBatchesRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["BatchPlan"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly compareVariants: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["VariantsRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VariantComparison"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listEvents: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page read before; the oldest events that are kept when absent. */
                readonly cursor?: string;
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
                /** @description Only events of these types, with commas between. */
                readonly types?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["EventPage"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listKeys: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page before. */
                readonly cursor?: components["parameters"]["Cursor"];
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["KeyList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewKeyInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NewKey"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the key; not the key itself. */
                readonly id: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Key"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly revokeKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Id of the key; not the key itself. */
                readonly id: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getKeyHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the key; not the key itself. */
                readonly id: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly renewKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the key; not the key itself. */
                readonly id: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["RenewalInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NewKey"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listAllLabourRates: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
                /** @description Only those in this currency. */
                readonly kind?: components["parameters"]["Kind"];
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Edition that holds each labour rates listed. */
                        readonly edition: string;
                        /** @description Each labour rates. */
                        readonly items: readonly components["schemas"]["LabourRatesInput"][];
                    };
                    readonly "text/csv": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createLabourRates: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["LabourRatesInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LabourRatesInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getLabourRates: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the labour rates. */
                readonly code: components["parameters"]["LabourRatesCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LabourRatesInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deleteLabourRates: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the labour rates. */
                readonly code: components["parameters"]["LabourRatesCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updateLabourRates: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the labour rates. */
                readonly code: components["parameters"]["LabourRatesCode"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": Record<string, never>;
                readonly "application/merge-patch+json": Record<string, never>;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LabourRatesInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getLabourRatesHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the labour rates. */
                readonly code: components["parameters"]["LabourRatesCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly importAllLabourRates: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "text/csv": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * Format: int32
                         * @description Rows that were taken, each a labour rates.
                         */
                        readonly imported: number;
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getLetterhead: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["OrganisationLetterhead"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly setLetterhead: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["LetterheadInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["OrganisationLetterhead"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getLogo: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "image/png": string;
                };
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly setLogo: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "image/jpeg": string;
                readonly "image/png": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["OrganisationLetterhead"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly removeLogo: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listMaterials: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
                /** @description Only materials of this kind. */
                readonly kind?: "core" | "reinforcement" | "resin" | "filler" | "coating" | "consumable" | "safety" | "fastener";
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Edition that holds each material listed. */
                        readonly edition: string;
                        /** @description Each material. */
                        readonly items: readonly (components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"])[];
                    };
                    readonly "text/csv": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createMaterial: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getMaterial: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the material. */
                readonly code: components["parameters"]["MaterialCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deleteMaterial: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the material. */
                readonly code: components["parameters"]["MaterialCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updateMaterial: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the material. */
                readonly code: components["parameters"]["MaterialCode"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": Record<string, never>;
                readonly "application/merge-patch+json": Record<string, never>;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CoreSheetInput"] | components["schemas"]["ReinforcementInput"] | components["schemas"]["ResinSystemInput"] | components["schemas"]["FillerInput"] | components["schemas"]["CoatingInput"] | components["schemas"]["ConsumableInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getMaterialHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the material. */
                readonly code: components["parameters"]["MaterialCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly importMaterials: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "text/csv": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * Format: int32
                         * @description Rows that were taken, each a material.
                         */
                        readonly imported: number;
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getOperation: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the operation, as Location gave it. */
                readonly id: components["parameters"]["OperationId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LongOperation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getOperationResult: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the operation, as Location gave it. */
                readonly id: components["parameters"]["OperationId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/pdf": string;
                    readonly "text/html": string;
                };
            };
            /** @description What was made has a place of its own, at Location. */
            readonly 303: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listOrganisations: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page before. */
                readonly cursor?: components["parameters"]["Cursor"];
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["OrganisationList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createOrganisation: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewOrganisationInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NewOrganisation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getOrganisation: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the organisation. */
                readonly id: components["parameters"]["OrganisationId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Organisation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updateOrganisation: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Id of the organisation. */
                readonly id: components["parameters"]["OrganisationId"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": {
                    /** @description As it stands at the head of documents. */
                    readonly name?: string;
                };
                readonly "application/merge-patch+json": {
                    /** @description As it stands at the head of documents. */
                    readonly name?: string;
                };
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Organisation"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listPriceLists: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
                /** @description Only those in this currency. */
                readonly kind?: components["parameters"]["Kind"];
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Edition that holds each price list listed. */
                        readonly edition: string;
                        /** @description Each price list. */
                        readonly items: readonly components["schemas"]["PriceListInput"][];
                    };
                    readonly "text/csv": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createPriceList: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PriceListInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PriceListInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getPriceList: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PriceListInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deletePriceList: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updatePriceList: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": Record<string, never>;
                readonly "application/merge-patch+json": Record<string, never>;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PriceListInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getPriceListHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listPacks: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Packs of the list, one entry for each. */
                        readonly packs: readonly components["schemas"]["PackInput"][];
                    };
                    readonly "text/csv": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly replacePacks: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "text/csv": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Packs of the list, one entry for each. */
                        readonly packs: readonly components["schemas"]["PackInput"][];
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getPack: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PackInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly putPack: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PackInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PackInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deletePack: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updatePack: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch of the pack. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": Record<string, never>;
                readonly "application/merge-patch+json": Record<string, never>;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PackInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockCount"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly setStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PackCountInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockCount"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly forgetStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
                /** @description Number that the supplier sells the pack under. */
                readonly sku: components["parameters"]["PackSku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly changePrices: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PriceChangeInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PriceChange"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly takeSheet: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SupplierSheetInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["TakenSheet"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly countStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Code of the price list in the edition. */
                readonly code: components["parameters"]["PriceListCode"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CountedPacksInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly importPriceLists: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "text/csv": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * Format: int32
                         * @description Rows that were taken, each a price list.
                         */
                        readonly imported: number;
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listPublishableKeys: {
        readonly parameters: {
            readonly query?: {
                /** @description `nextCursor` of the page before. */
                readonly cursor?: components["parameters"]["Cursor"];
                /** @description Entries on a page. */
                readonly limit?: components["parameters"]["Limit"];
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PublishableKeyList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createPublishableKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewPublishableKeyInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PublishableKey"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getPublishableKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the publishable key; not the key itself. */
                readonly id: components["parameters"]["PublishableKeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PublishableKey"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly revokePublishableKey: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Id of the publishable key; not the key itself. */
                readonly id: components["parameters"]["PublishableKeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listSources: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
                /** @description Only sources read in this way. */
                readonly kind?: "first-hand" | "second-hand" | "memory" | "derived" | "common-practice";
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @description Edition that holds each source listed. */
                        readonly edition: string;
                        /** @description Each source. */
                        readonly items: readonly components["schemas"]["SourceInput"][];
                    };
                    readonly "text/csv": string;
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createSource: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SourceInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["SourceInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getSource: {
        readonly parameters: {
            readonly query?: {
                /** @description Code of an edition; the current one when absent. Changes need the code of a draft. */
                readonly edition?: string;
            };
            readonly header?: never;
            readonly path: {
                /** @description Key of the source. */
                readonly code: components["parameters"]["SourceKey"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["SourceInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deleteSource: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Key of the source. */
                readonly code: components["parameters"]["SourceKey"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly updateSource: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Key of the source. */
                readonly code: components["parameters"]["SourceKey"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": Record<string, never>;
                readonly "application/merge-patch+json": Record<string, never>;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["SourceInput"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getSourceHistory: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Key of the source. */
                readonly code: components["parameters"]["SourceKey"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["History"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly importSources: {
        readonly parameters: {
            readonly query: {
                /** @description Code of a draft. */
                readonly edition: components["parameters"]["Edition"];
            };
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "text/csv": string;
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /**
                         * Format: int32
                         * @description Rows that were taken, each a source.
                         */
                        readonly imported: number;
                    };
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listWebhookEndpoints: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WebhookEndpointList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly createWebhookEndpoint: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewWebhookEndpointInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NewWebhookEndpoint"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly getWebhookEndpoint: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the webhook endpoint. */
                readonly id: components["parameters"]["WebhookEndpointId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WebhookEndpoint"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly deleteWebhookEndpoint: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description ETag of the version that is to be changed. */
                readonly "If-Match": components["parameters"]["IfMatch"];
            };
            readonly path: {
                /** @description Id of the webhook endpoint. */
                readonly id: components["parameters"]["WebhookEndpointId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 412: components["responses"]["PreconditionFailed"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 428: components["responses"]["PreconditionRequired"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly listWebhookDeliveries: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                /** @description Id of the webhook endpoint. */
                readonly id: components["parameters"]["WebhookEndpointId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WebhookDeliveryList"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly repeatWebhookDelivery: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the event to deliver once more. */
                readonly eventId: string;
                /** @description Id of the webhook endpoint. */
                readonly id: components["parameters"]["WebhookEndpointId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WebhookDelivery"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 409: components["responses"]["Conflict"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly renewWebhookSecret: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: {
                /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
                readonly "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            readonly path: {
                /** @description Id of the webhook endpoint. */
                readonly id: components["parameters"]["WebhookEndpointId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SecretRenewalInput"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 201: {
                headers: {
                    readonly "Access-Control-Allow-Origin": components["headers"]["AccessControlAllowOrigin"];
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
                    readonly RateLimit: components["headers"]["RateLimit"];
                    readonly "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    readonly Traceparent: components["headers"]["Traceparent"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["NewWebhookEndpoint"];
                };
            };
            readonly 400: components["responses"]["BadRequest"];
            readonly 401: components["responses"]["Unauthenticated"];
            readonly 403: components["responses"]["Forbidden"];
            readonly 404: components["responses"]["NotFound"];
            readonly 406: components["responses"]["NotAcceptable"];
            readonly 408: components["responses"]["RequestTimeout"];
            readonly 409: components["responses"]["Conflict"];
            readonly 413: components["responses"]["ContentTooLarge"];
            readonly 415: components["responses"]["UnsupportedMediaType"];
            readonly 422: components["responses"]["Unprocessable"];
            readonly 429: components["responses"]["TooManyRequests"];
            readonly 500: components["responses"]["Internal"];
            readonly 503: components["responses"]["Unavailable"];
        };
    };
    readonly onEditionPublished: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EditionPublished"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    readonly onEditionWithdrawn: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EditionWithdrawn"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    readonly onEstimateCreated: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EstimateCreated"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    readonly onEstimateRevised: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EstimateRevised"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    readonly onOperationDone: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["OperationDone"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    readonly onOrderMade: {
        readonly parameters: {
            readonly query?: never;
            readonly header: {
                /** @description Id of the event, the same at each attempt. */
                readonly "webhook-id": string;
                /** @description `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced. */
                readonly "webhook-signature": string;
                /** @description When this attempt was signed, in Unix seconds. */
                readonly "webhook-timestamp": string;
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["OrderMade"];
            };
        };
        readonly responses: {
            /** @description Received. Anything else is tried again, ten times within three days; 410 ends it. */
            readonly "2XX": {
                headers: {
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
}
