/** Generated from test/contract/openapi.json by `npm run contract`; never edited by hand. */
export type paths = {
    readonly "/health/live": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Does the process answer? */
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
        /** Can the service take work: is the database there, and is it not stopping? */
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
        /** Who did what in the organisation, newest first */
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
        /** Editions of the catalogue, newest first, and the current one */
        readonly get: operations["listEditions"];
        readonly put?: never;
        /** Make a draft by copying an edition */
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
        /** An edition */
        readonly get: operations["getEdition"];
        readonly put?: never;
        readonly post?: never;
        /** Throw a draft away */
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
        /** What an edition holds otherwise than another, entry by entry and field by field */
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
        /** Who did what to an edition */
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
        /** Take back a publication before it counts: the edition is a draft again */
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
        /** Make what an earlier edition held current again, under a new code */
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
        /** List estimates, newest first */
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
        /** The cheapest whole packs for an estimate, as JSON, CSV, or a UBL 2.1 Order to one supplier */
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
        /** What a revision adds and takes away, to be signed by yard and owner; as JSON, or by Accept as PDF or HTML */
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
        /** What changed against the revision before, or another estimate, line by line, and because of what */
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
        /** Names of the drawings an estimate has */
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
        /** A drawing as SVG or PDF; `templates` is a PDF of the core pieces at 1:1; `piece-plan` and `sheet-layout` also as DXF at 1:1, for a cutting machine */
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
        /** Why a line, a check (check:<code>) or a quantity (quantity:<code>) is what it is */
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
        /** Photographs of the deck of an estimate and of its revisions */
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
        /** A photograph as it is printed */
        readonly get: operations["getPhotograph"];
        /**
         * Add a photograph under a number, or put another in its place
         * @description A JPEG or PNG of at most 8000000 bytes and 12000 pixels a side, judged by its content; numbers are 1 to 24. It is drawn anew at the size it is printed: place, device, time and whatever else the file holds are not kept.
         */
        readonly put: operations["setPhotograph"];
        readonly post?: never;
        /** Take a photograph away for good */
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
        /** The defect record the estimate was made from */
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
        /** Compute an estimate again from its record and edition, and say whether every digit came out again */
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
        /** The revisions of an estimate, first to last */
        readonly get: operations["listRevisions"];
        readonly put?: never;
        /** Re-make an estimate after something became known, with the reason */
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
        /** Chandlers that an estimate and its revisions are shared with */
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
        /** Share an estimate and its revisions with the key of a chandler */
        readonly put: operations["shareEstimate"];
        readonly post?: never;
        /** Take an estimate back from a chandler */
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
        /** Read typed quantities exactly into SI numbers */
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
        /** Secret keys of the organisation, oldest first */
        readonly get: operations["listKeys"];
        readonly put?: never;
        /** Make a key; its text is shown in this answer only */
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
        /** A key, without its text */
        readonly get: operations["getKey"];
        readonly put?: never;
        readonly post?: never;
        /** Revoke a key; other copies of the service refuse it within a second */
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
        /** Who made, renewed and revoked a key */
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
        /** Make a key in the place of another, which ends after an overlap; the new text is shown once */
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
        /** Entries of an edition (labour rates), as JSON or CSV */
        readonly get: operations["listAllLabourRates"];
        readonly put?: never;
        /** Add an entry to a draft (labour rates) */
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
        /** One entry (labour rates) */
        readonly get: operations["getLabourRates"];
        readonly put?: never;
        readonly post?: never;
        /** Remove an entry from a draft (labour rates) */
        readonly delete: operations["deleteLabourRates"];
        readonly options?: never;
        readonly head?: never;
        /** Change an entry of a draft by merge patch (labour rates) */
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
        /** Who changed what about an entry (labour rates) */
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
        /** Add or replace entries of a draft from CSV, all or none (labour rates) */
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
        /** What stands at the head of the documents of the own organisation */
        readonly get: operations["getLetterhead"];
        /** Set the lines of the letterhead; the name is that of the organisation */
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
        /** The logo as it is printed */
        readonly get: operations["getLogo"];
        /**
         * Set the logo of the letterhead
         * @description A PNG or JPEG of at most 1000000 bytes and 5000 pixels a side, judged by its content. It is drawn anew at the size it is printed, so that nothing hidden in the file is kept. Drawings that can hold programs, such as SVG, are not taken.
         */
        readonly put: operations["setLogo"];
        readonly post?: never;
        /** Take the logo off the letterhead */
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
        /** Entries of an edition (material), as JSON or CSV */
        readonly get: operations["listMaterials"];
        readonly put?: never;
        /** Add an entry to a draft (material) */
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
        /** One entry (material) */
        readonly get: operations["getMaterial"];
        readonly put?: never;
        readonly post?: never;
        /** Remove an entry from a draft (material) */
        readonly delete: operations["deleteMaterial"];
        readonly options?: never;
        readonly head?: never;
        /** Change an entry of a draft by merge patch (material) */
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
        /** Who changed what about an entry (material) */
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
        /** Add or replace entries of a draft from CSV, all or none (material) */
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
        /** How far an operation is; ask again after Retry-After */
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
        /** The result of an operation that is done; 409 before */
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
        /** All organisations, oldest first */
        readonly get: operations["listOrganisations"];
        readonly put?: never;
        /** Add an organisation, with the first key of its admin */
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
        /** An organisation: your own, or any for a platform-operator */
        readonly get: operations["getOrganisation"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        /** Rename an organisation */
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
        /** Entries of an edition (price list), as JSON or CSV */
        readonly get: operations["listPriceLists"];
        readonly put?: never;
        /** Add an entry to a draft (price list) */
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
        /** One entry (price list) */
        readonly get: operations["getPriceList"];
        readonly put?: never;
        readonly post?: never;
        /** Remove an entry from a draft (price list) */
        readonly delete: operations["deletePriceList"];
        readonly options?: never;
        readonly head?: never;
        /** Change an entry of a draft by merge patch (price list) */
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
        /** Who changed what about an entry (price list) */
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
        /** The packs of a price list, as JSON or CSV, one a row */
        readonly get: operations["listPacks"];
        /** Replace all packs of a price list in a draft from CSV, one a row */
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
        /** One pack of a price list */
        readonly get: operations["getPack"];
        /** Put one pack into a price list of a draft, or in the place of another */
        readonly put: operations["putPack"];
        readonly post?: never;
        /** Take one pack out of a price list of a draft */
        readonly delete: operations["deletePack"];
        readonly options?: never;
        readonly head?: never;
        /** Change one pack of a price list of a draft by merge patch, such as its price */
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
        /** How many packs of a SKU were counted, and when */
        readonly get: operations["getStock"];
        /**
         * State how many packs of a SKU there are now
         * @description It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.
         */
        readonly put: operations["setStock"];
        readonly post?: never;
        /** Forget a count: the stock that the edition states counts again */
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
        /** Raise or lower prices of a list of a draft by a percentage, each rounded once to a step */
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
        /** What was counted of the packs of a price list */
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
        /** Add or replace entries of a draft from CSV, all or none (price list) */
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
        /** Keys for pages, oldest first */
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
        /** A key for a page */
        readonly get: operations["getPublishableKey"];
        readonly put?: never;
        readonly post?: never;
        /** Revoke a key for a page, and with it every secret that was given out for it */
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
        /** Entries of an edition (source), as JSON or CSV */
        readonly get: operations["listSources"];
        readonly put?: never;
        /** Add an entry to a draft (source) */
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
        /** One entry (source) */
        readonly get: operations["getSource"];
        readonly put?: never;
        readonly post?: never;
        /** Remove an entry from a draft (source) */
        readonly delete: operations["deleteSource"];
        readonly options?: never;
        readonly head?: never;
        /** Change an entry of a draft by merge patch (source) */
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
        /** Who changed what about an entry (source) */
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
        /** Add or replace entries of a draft from CSV, all or none (source) */
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
        /** Webhook endpoints of the organisation, oldest first */
        readonly get: operations["listWebhookEndpoints"];
        readonly put?: never;
        /** Have events posted to an address; its secret is shown in this answer only */
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
        /** A webhook endpoint, without its secret */
        readonly get: operations["getWebhookEndpoint"];
        readonly put?: never;
        readonly post?: never;
        /** Have no more events posted to an address */
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
        /** The last 200 deliveries to an endpoint, the newest event first */
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
        /** Deliver an event once more, with all its attempts before it */
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
        /** Give an endpoint a new secret; both sign for an overlap, and the new one is shown once */
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
            readonly holes: readonly (readonly (readonly number[])[])[];
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
            readonly at: string;
            readonly because: string;
            readonly meaning: string;
            readonly source: string;
            readonly value: string;
        };
        /** @description Nobody said it; we took a default and say so. `at` is the field that would replace it. */
        readonly Assumed: {
            readonly at: string;
            readonly because: string;
            readonly cite: components["schemas"]["Cite"];
            readonly high?: number;
            /** @enum {string} */
            readonly kind: "assumed";
            readonly low?: number;
        };
        /** @description At so many times the recorded area, so many times the amount: planned again, not scaled. */
        readonly AtExtent: {
            readonly amountFactor: number;
            readonly extentFactor: number;
        };
        readonly AtExtentInput: {
            /** @description Amount there over the amount of the line. */
            readonly amountFactor: number;
            /** @description Found area over recorded area. */
            readonly extentFactor: number;
        };
        readonly AuditEntry: {
            readonly action: string;
            readonly after?: unknown;
            /** @description RFC 3339 instant. */
            readonly at: string;
            readonly before?: unknown;
            /** @description The id or code of the thing. */
            readonly code: string;
            readonly keyId?: string;
            /** @description Whose key it was, as the key is called. */
            readonly keyName?: string;
            readonly requestId?: string;
            /** @description What kind of thing, such as `key` or `edition`. */
            readonly subject: string;
        };
        readonly AuditPage: {
            readonly items: readonly components["schemas"]["AuditEntry"][];
            /** @description Give it as `cursor` to read on; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly BackingPlateInput: {
            /** @description Length. */
            readonly lengthMm: number | string;
            /** @description Width. */
            readonly widthMm: number | string;
        };
        readonly Basket: {
            readonly byEstimate: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                readonly estimate: string;
            }[];
            readonly coverage: readonly components["schemas"]["Coverage"][];
            readonly currency: string;
            readonly excluded: readonly components["schemas"]["Excluded"][];
            readonly isComplete: boolean;
            readonly isInvented: boolean;
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            readonly lines: readonly components["schemas"]["BasketLine"][];
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            readonly missing: readonly components["schemas"]["CostingMissing"][];
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            readonly priceList: string;
            readonly pricesIncludeTax: boolean;
            readonly proof: {
                /** @enum {string} */
                readonly kind: "proven";
            } | {
                readonly bound?: components["schemas"]["MoneyJson"];
                readonly gapFraction?: number;
                /** @enum {string} */
                readonly kind: "gap";
            };
            readonly secondBest?: components["schemas"]["SecondBest"];
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            readonly total: components["schemas"]["MoneyJson"];
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
            readonly content: components["schemas"]["MaterialVariant"];
            /** @description Sheets that the shop cuts so that they travel as ordinary goods. */
            readonly cutCount: number;
            readonly cutFee: components["schemas"]["MoneyJson"];
            readonly hazardous: boolean;
            readonly massKg: number;
            readonly name: string;
            readonly oversize: boolean;
            readonly packCount: number;
            readonly quantity: number;
            readonly quantityPerPack: number;
            readonly shelfLifeMonths?: number;
            readonly sku: string;
            readonly supplier: string;
            readonly unit: string;
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly massKg?: string;
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
            /** @description Width of the roll. */
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
            readonly covers: readonly string[];
            readonly filler?: string;
            readonly fillerG: number;
            readonly hardenerG: number;
            readonly limitedBy: string;
            readonly mixedMl: number;
            readonly number: number;
            readonly pumps?: string;
            readonly resinG: number;
            readonly step: string;
            readonly title: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly fillerG?: string;
                readonly hardenerG?: string;
                readonly mixedMl?: string;
                readonly resinG?: string;
            };
            readonly useWithinMin: number;
            /** @description What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump. */
            readonly weigh: readonly {
                readonly addG: number;
                readonly name: string;
                readonly scaleShowsG: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly addG?: string;
                    readonly scaleShowsG?: string;
                    readonly volumeMl?: string;
                };
                readonly volumeMl: number;
                /** @enum {string} */
                readonly what: "filler" | "hardener" | "resin";
            }[];
        };
        readonly BatchFinding: {
            /** @enum {string} */
            readonly code: "deck-warmer-than-limit" | "layer-heats" | "piece-too-large" | "pot-too-short" | "small-pots";
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /** @enum {string} */
            readonly severity: "note" | "stop" | "warn";
            readonly text: string;
        };
        readonly BatchPlan: {
            readonly adiabaticRiseK: number;
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly batches: readonly components["schemas"]["PlannedBatch"][];
            readonly considered: readonly components["schemas"]["HardenerVerdict"][];
            readonly demand: components["schemas"]["ResinDemand"];
            readonly findings: readonly components["schemas"]["BatchFinding"][];
            readonly potLife: {
                readonly at100GMin: number;
                readonly highMin: number;
                readonly lowMin: number;
                readonly temperatureC: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly temperatureC?: string;
                };
            };
            readonly resin: {
                readonly code: string;
                readonly hardener: string;
                readonly hardenerName: string;
                readonly name: string;
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
            /** @description Area. */
            readonly areaM2: number | string;
            /**
             * @description Label on the piece and on the cut plan.
             * @example A1
             */
            readonly label: string;
        };
        readonly BibliographyEntry: {
            readonly body: string;
            readonly key: string;
            readonly number: number;
            /**
             * @description How far the source itself was read.
             * @enum {string}
             */
            readonly readAs: "common-practice" | "derived" | "first-hand" | "memory" | "second-hand";
            readonly title: string;
            readonly url?: string;
            readonly year: string;
        };
        readonly BoltSizeInput: {
            readonly diameterMm: number;
            readonly lengthMm: number;
        };
        readonly BondPressurePlan: {
            readonly ambientKPa: number;
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly availableKPa?: number;
            readonly innerSkin: components["schemas"]["InnerSkinCheck"];
            /** @enum {string} */
            readonly method: "battens" | "jacks" | "vacuum" | "weights";
            readonly options: readonly components["schemas"]["PressOption"][];
            readonly quantities: readonly components["schemas"]["PressQuantity"][];
            readonly recommendation: string;
            readonly refusals: readonly string[];
            readonly requiredKPa: number;
            readonly restsOn: string;
            /** @description One after another, where a crew cannot press the whole opening at once. */
            readonly turns: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly ambientKPa?: string;
                readonly availableKPa?: string;
                readonly requiredKPa?: string;
            };
        };
        readonly BondPressureRequest: {
            /** @description Altitude. Absent: 0 m (boats lie near the sea). */
            readonly altitudeM?: number;
            /**
             * @description Area.
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
             * @description Width.
             * @example 800
             */
            readonly widthMm: number | string;
        };
        readonly BondPressureSection: {
            readonly availableKPa?: number;
            /**
             * @description Absent when no way to press can be recommended; the refusals say why.
             * @enum {string}
             */
            readonly method?: "battens" | "jacks" | "vacuum" | "weights";
            readonly props: {
                readonly needed: boolean;
                readonly spacingMm?: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly spacingMm?: string;
                };
                readonly why: string;
            };
            readonly quantities: readonly components["schemas"]["NamedValue"][];
            readonly recommendation: string;
            readonly refusals: readonly string[];
            readonly requiredKPa: number;
            readonly restsOn: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly availableKPa?: string;
                readonly requiredKPa?: string;
            };
        };
        /** @description `isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's. */
        readonly BuiltCheck: {
            readonly isNoWorse: boolean;
            readonly utilisation: number;
            /** @enum {string} */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        readonly CalendarCrewInput: {
            /** @description ISO dates without work. */
            readonly daysOff?: readonly string[];
            /** @description Absent: 8. */
            readonly hoursPerDay?: number;
            /** @description People at work. */
            readonly people: number;
            /** @description Local hour at which the day begins; absent: 8. */
            readonly startHour?: number;
            /** @description Absent: Monday to Friday. */
            readonly workingDays?: readonly ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
        };
        readonly CalendarMilestone: {
            readonly at: string;
            readonly code: string;
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
            /** @description Deck where no forecast reaches; absent: 18 degC. */
            readonly deckTemperatureC?: number | string;
            /** @description Amounts of the job. */
            readonly drivers: components["schemas"]["DriverAmountsInput"];
            /**
             * @description What dries under the lip; absent: balsa.
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
            /**
             * @description Resin.
             * @example resin-epoxy-5to1
             */
            readonly resin: string;
            /** @description Simulated calendars; absent: 2000. */
            readonly runs?: number;
            /** @description Seed of the simulation. */
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
            /** @description Share of working days lost to weather beyond the forecast. */
            readonly weatherLossFraction?: number;
        };
        readonly CalendarSection: {
            /** @description From the first day to the last, waits counted. */
            readonly calendarDays: components["schemas"]["Range"];
            readonly criticalChain: readonly string[];
            readonly finish?: {
                readonly early: string;
                readonly late: string;
                readonly likely: string;
            };
            readonly milestones: readonly {
                readonly at?: string;
                readonly code: string;
                readonly title: string;
            }[];
            readonly notes: readonly string[];
            /** @description Of the one walk that the tasks show, by mean hours and waits. */
            readonly planned: {
                readonly calendarDays: number;
                readonly workingDays: number;
            };
            /** @description Absent when the record names no start: days are then counted from any Monday. */
            readonly startDate?: string;
            readonly tasks: readonly components["schemas"]["CalendarTask"][];
            /** @description Zone, or offset, that the moments are written in. */
            readonly timeZone?: string;
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly CalendarTask: {
            readonly after: readonly string[];
            readonly code: string;
            readonly endAt?: string;
            readonly endDay: number;
            /**
             * @description What it waits for in the weather.
             * @enum {string}
             */
            readonly gate: "coating" | "dry-deck" | "none" | "resin";
            readonly isCritical: boolean;
            readonly isHoldPoint: boolean;
            readonly labourH: number;
            /** @description When its cure, drying or hold is over. */
            readonly readyAt?: string;
            readonly startAt?: string;
            readonly startDay: number;
            readonly startsBecause: string;
            readonly title: string;
            readonly waitH: number;
            /** @enum {string} */
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
            readonly figures: readonly components["schemas"]["Figure"][];
            /** @enum {string} */
            readonly form: "plain" | "scored";
            /** @description Gap under a plain piece of the stated length. */
            readonly gap: components["schemas"]["Figure"];
            /** @description A plain piece no longer than this across the camber lies within the gap without bending. */
            readonly longestFlatPieceMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly longestFlatPieceMm?: string;
            };
            /** @enum {string} */
            readonly way: "bends" | "lies" | "scored" | "shorter-pieces";
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
            /** @enum {string} */
            readonly cause: "construction" | "impact" | "leaking-fitting" | "unknown";
            /** @enum {string} */
            readonly causeClass?: "maintenance" | "pre-existing" | "sudden";
            /** @enum {string} */
            readonly leak?: "chainplate" | "crack" | "fittings" | "hatch" | "hull-deck-joint" | "not-known" | "overlay-screws";
            readonly lengthMm?: number;
            readonly note?: string;
        };
        readonly Caution: {
            /** @description The condition of this job that called it. */
            readonly because: string;
            readonly code: string;
            /** @description Who decides, where it is not the crew. */
            readonly decides?: string;
            /** @description GHS hazard statements of the materials concerned. */
            readonly hazards: readonly {
                readonly code: string;
                readonly text: string;
            }[];
            /** @enum {string} */
            readonly kind: "fire" | "health" | "site" | "structure" | "work";
            readonly protection: readonly string[];
            /** @enum {string} */
            readonly severity: "caution" | "danger" | "warning";
            readonly source: string;
            readonly text: string;
        };
        /** @description A pack whose prices are other ones now. */
        readonly ChangedPack: {
            /** @description The same breaks afterwards. */
            readonly after: readonly string[];
            /** @description Prices of one pack at each quantity break, in the order of the breaks, in the currency of the list. */
            readonly before: readonly string[];
            readonly name: string;
            readonly sku: string;
        };
        /** @description A change order as text to be signed, in the parts that a letter has. */
        readonly ChangeOrder: {
            readonly additions: readonly components["schemas"]["LineChange"][];
            /** @description Everything found since the first issue, by the rates agreed with it; absent where that was in another currency. */
            readonly byRates?: components["schemas"]["ReMeasured"];
            readonly deductions: readonly components["schemas"]["LineChange"][];
            readonly reason: string;
            /** @description Whose name, date and signature it needs. */
            readonly signatures: readonly string[];
            readonly statements: readonly string[];
            /** @description From the lines to what is to be paid, before and after. */
            readonly steps: readonly components["schemas"]["TotalChange"][];
            readonly sums: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                readonly name: string;
            }[];
            readonly title: string;
        };
        /** @description A check that fails is a result. `utilisation` is demand over capacity. */
        readonly Check: {
            /** @description Of the repaired panel: what the same check comes to on the deck as built. */
            readonly asBuilt?: components["schemas"]["BuiltCheck"];
            readonly capacity?: number;
            readonly code: string;
            readonly demand?: number;
            readonly governs: string;
            readonly reason?: string;
            readonly remedy?: string;
            readonly source: string;
            /** @enum {string} */
            readonly state?: "as-built" | "as-found" | "opened" | "repaired";
            readonly title: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly capacity?: string;
                readonly demand?: string;
            };
            readonly utilisation?: number;
            /** @enum {string} */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        /** @description Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`. */
        readonly Cite: {
            /** @description Clause, table, equation or page in the source. */
            readonly clause?: string;
            readonly note?: string;
            readonly source: string;
        };
        readonly CiteInput: {
            /** @description Clause, table, equation or page. */
            readonly clause?: string;
            readonly note?: string;
            /** @description Key of a source of the same edition. */
            readonly source: string;
        };
        readonly ClassDeckLoadInput: {
            /**
             * @description Kind. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "class-deck";
            /** @description Name of the load. */
            readonly name?: string;
        };
        /** @description Shown once: opens the estimate it came with. */
        readonly ClientSecret: {
            readonly clientSecret: string;
            /** @description RFC 3339 instant. */
            readonly clientSecretExpiresAt: string;
        };
        readonly ClosingCheck: {
            readonly capacity?: number;
            /** @enum {string} */
            readonly check: "bond-peel" | "bond-shear" | "flush" | "taper-room";
            readonly cite: components["schemas"]["Cite"];
            readonly demand?: number;
            readonly title: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly capacity?: string;
                readonly demand?: string;
            };
            readonly utilisation?: number;
            /** @enum {string} */
            readonly verdict: "fails" | "not-established" | "passes";
            readonly words?: string;
        };
        readonly ClosingPlies: {
            readonly assumptions: readonly components["schemas"]["LaminateAssumption"][];
            readonly checks: readonly components["schemas"]["ClosingCheck"][];
            readonly consequences: readonly string[];
            readonly glassKg: components["schemas"]["Figure"];
            readonly grooveWidthMm: number;
            /** @description Least taper that the bond allows, where the joint's stress was given. */
            readonly leastTaperRatio?: number;
            /** @enum {string} */
            readonly order: "largest-first" | "smallest-first";
            readonly plies: readonly components["schemas"]["ClosingPly"][];
            readonly resinKg: components["schemas"]["Figure"];
            readonly stages: readonly components["schemas"]["Stage"][];
            readonly taperWidthMm: components["schemas"]["Figure"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly grooveWidthMm?: string;
            };
        };
        readonly ClosingPly: {
            readonly areaM2: components["schemas"]["Figure"];
            readonly glassKg: components["schemas"]["Figure"];
            readonly material: string;
            readonly name: string;
            readonly order: number;
            readonly outline?: readonly components["schemas"]["Polygon"][];
            readonly resinKg: components["schemas"]["Figure"];
            readonly rollLengthM: number;
            /** @description As they are cut from the roll. */
            readonly rollStrips: readonly components["schemas"]["RollStrip"][];
            readonly rollWidthMm: number;
            readonly stage: number;
            readonly strips: number;
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly rollLengthM?: string;
                readonly rollWidthMm?: string;
                readonly thicknessMm?: string;
                readonly widthMm?: string;
            };
            readonly widthMm: number;
        };
        readonly CoatingInput: {
            /** @enum {string} */
            readonly coating: "fairing-compound" | "primer" | "topcoat" | "nonskid" | "gelcoat";
            readonly coats: components["schemas"]["DatumInput"];
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            readonly coverageM2PerL: components["schemas"]["DatumInput"];
            readonly densityKgPerL: components["schemas"]["DatumInput"];
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            readonly highestRelativeHumidityPercent: components["schemas"]["DatumInput"];
            readonly isIsocyanate: boolean;
            /** @enum {string} */
            readonly kind: "coating";
            readonly lowestTemperatureC: components["schemas"]["DatumInput"];
            /** @description Generic specification in trade words. */
            readonly name: string;
            readonly recoatH: components["schemas"]["DatumInput"];
        };
        readonly CommonShareInput: {
            /** @description Share of the variance of rates that they have in common; absent: 0.5. */
            readonly labour?: number;
            /** @description Share of the variance of rates that they have in common; absent: 0.3. */
            readonly part?: number;
        };
        readonly ComparedEstimate: {
            readonly createdAt: string;
            readonly edition: string;
            readonly engineVersion: string;
            readonly id: string;
            readonly revision: components["schemas"]["RevisionMark"];
        };
        /** @description What changed from one estimate to another, line by line. */
        readonly Comparison: {
            readonly after: components["schemas"]["ComparedEstimate"];
            readonly before: components["schemas"]["ComparedEstimate"];
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
            readonly cite: components["schemas"]["Cite"];
            readonly formula: string;
            readonly inputs: {
                readonly [key: string]: components["schemas"]["Figure"];
            };
            /** @enum {string} */
            readonly kind: "computed";
            readonly symbol: string;
            readonly title: string;
        };
        readonly ConclusionSection: {
            readonly findings: readonly components["schemas"]["GradedFinding"][];
            readonly method: {
                readonly runnerUp?: {
                    readonly because: string;
                    readonly price?: components["schemas"]["MoneyJson"];
                    readonly title: string;
                };
                readonly sentences: readonly string[];
            };
            readonly reinspection: readonly components["schemas"]["ReinspectionPoint"][];
            readonly verdict: {
                /** @enum {string} */
                readonly code: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
                /** @description Shortfalls, and remarks on how the deck was built. */
                readonly notes: readonly string[];
                readonly sentence: string;
            };
        };
        readonly Conditions: {
            readonly altitudeM?: number;
            readonly daysAvailable?: number;
            readonly forecast?: components["schemas"]["Forecast"];
            readonly isAfloat?: boolean;
            readonly isFreezeExpected?: boolean;
            /** @enum {string} */
            readonly place?: "afloat" | "ashore-anyway" | "ashore-for-this" | "own-ground";
            readonly relativeHumidityPercent?: number;
            /** @enum {string} */
            readonly shelter?: "open" | "shed" | "tent";
            readonly temperatureC?: number;
            readonly warmth?: components["schemas"]["DeckWarmth"];
        };
        readonly ConditionsInput: {
            /** @description Altitude. Absent: 0 m (most decks are repaired at sea level). */
            readonly altitudeM?: number;
            /** @description Drying in place goes by it. */
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
            /** @description Relative humidity. */
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
            /** @enum {string} */
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
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            /** @enum {string} */
            readonly kind: "consumable" | "safety" | "fastener";
            /** @description Generic specification in trade words. */
            readonly name: string;
            /** @description Jobs that one of it serves; absent, it is used up or stays in the boat. */
            readonly servesJobs?: components["schemas"]["DatumInput"];
            /** @enum {string} */
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
            readonly assumptions: readonly components["schemas"]["Figure"][];
            readonly boughtArea: components["schemas"]["Figure"];
            readonly cost: number;
            /** @description One for each thickness and form. */
            readonly cuts: readonly components["schemas"]["CoreCut"][];
            /** @description How many pieces, and why so many. */
            readonly division: components["schemas"]["DivisionByCost"];
            readonly kerfMm: number;
            readonly mosaic: components["schemas"]["Mosaic"];
            readonly netArea: components["schemas"]["Figure"];
            readonly sheetCount: number;
            readonly stack: components["schemas"]["StackPlan"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly kerfMm?: string;
            };
            /** @description 0 where no core is bought. */
            readonly utilisation: number;
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
            /** @description Direction of the grain on the deck, from forward to starboard; absent: 0. */
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
            /** @description The same seed gives the same layout; absent: 1. */
            readonly seed?: number;
            /** @description What can be bought; absent: the material's formats, the smallest area being the cheapest. */
            readonly sheets?: readonly components["schemas"]["SheetOnSaleInput"][];
            /**
             * @description What closes the openings: the old skin bedded again (absent), or plies laid wet on the core.
             * @enum {string}
             */
            readonly skin?: "re-bed" | "relay";
            /** @description How thick the beds are and how the skin sits. */
            readonly stackRules?: components["schemas"]["StackRulesInput"];
            /** @description Lines the deck rests on; no joint runs along one. */
            readonly supports?: readonly components["schemas"]["CoreSupportInput"][];
            /** @description After this time the best layout so far is the answer; absent: 20. */
            readonly timeLimitS?: number;
            /** @description A thickness of the list that is insisted on. */
            readonly wantedMm?: number | string;
            /** @description Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000. */
            readonly workUnits?: number;
        };
        readonly CoreCut: {
            readonly cost: number;
            /** @enum {string} */
            readonly form: "plain" | "scored";
            readonly leastCost: number;
            readonly sheets: readonly components["schemas"]["CutCoreSheet"][];
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly thicknessMm?: string;
            };
            readonly use: components["schemas"]["SheetUse"];
        };
        readonly CoreFormInput: {
            /** @enum {string} */
            readonly form: "plain" | "scored";
            readonly scoreDepthFraction?: number;
            readonly scoreSpacingMm?: number;
            readonly scoreWidthMm?: number;
        };
        readonly CoreLayerInput: {
            /** @description Thickness. */
            readonly thicknessMm: number | string;
            /** @description Modulus in the plane of the panel. */
            readonly youngMPa: number;
        };
        readonly CoreSection: {
            readonly cavityMm: number;
            /** @description Why it is so many pieces. */
            readonly division: string;
            readonly flushMm: number;
            /** @description Left between the pieces on a sheet for the blade. */
            readonly kerfMm: number;
            readonly massChangeKg: number;
            readonly material: string;
            readonly materialName: string;
            readonly netAreaM2: number;
            readonly notes: readonly string[];
            readonly pieces: readonly components["schemas"]["EstimateCorePiece"][];
            readonly purchaseAreaM2: number;
            readonly sheets: readonly components["schemas"]["CoreSheetLayout"][];
            readonly solidAreaM2: number;
            /** @description Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid. */
            readonly solidFills: readonly components["schemas"]["CoreSolidFill"][];
            readonly solidVolumeL: number;
            readonly stack: readonly {
                readonly layer: string;
                readonly thicknessMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly thicknessMm?: string;
                };
            }[];
            readonly stackMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly cavityMm?: string;
                readonly flushMm?: string;
                readonly kerfMm?: string;
                readonly massChangeKg?: string;
                readonly netAreaM2?: string;
                readonly purchaseAreaM2?: string;
                readonly solidAreaM2?: string;
                readonly solidVolumeL?: string;
                readonly stackMm?: string;
                readonly wasteAreaM2?: string;
                readonly waterLeavingKg?: string;
            };
            readonly utilisation: number;
            readonly wasteAreaM2: number;
            readonly wasteByCause: readonly {
                readonly areaM2: number;
                readonly cause: string;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            }[];
            readonly waterLeavingKg?: number;
        };
        readonly CoreSheetInput: {
            /** @description Turns in degrees that keep the grain right; empty when any turn will do. */
            readonly allowedTurnsDeg: readonly number[];
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            readonly compressiveModulusMPa: components["schemas"]["DatumInput"];
            readonly compressiveStrengthMPa: components["schemas"]["DatumInput"];
            /** @enum {string} */
            readonly coreType: "end-grain-balsa" | "cross-linked-foam" | "san-foam" | "linear-foam" | "marine-plywood";
            readonly densityKgPerM3: components["schemas"]["DatumInput"];
            readonly forms: readonly components["schemas"]["CoreFormInput"][];
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            readonly inPlaneModulusMPa: components["schemas"]["DatumInput"];
            /** @enum {string} */
            readonly kind: "core";
            readonly largestPieceM2: components["schemas"]["DatumInput"];
            /** @description Generic specification in trade words. */
            readonly name: string;
            readonly needsBleedHoles: boolean;
            readonly shearModulusMPa: components["schemas"]["DatumInput"];
            readonly shearStrengthMPa: components["schemas"]["DatumInput"];
            readonly sheets: readonly components["schemas"]["SheetFormatInput"][];
            readonly thicknessesMm: readonly number[];
            readonly wetOutLPerM2: components["schemas"]["DatumInput"];
        };
        readonly CoreSheetLayout: {
            /** @enum {string} */
            readonly form: "plain" | "scored";
            /** @description False for a piece that the customer has. */
            readonly isBought: boolean;
            readonly label: string;
            readonly lengthMm: number;
            readonly offcutsKept: readonly (readonly (readonly number[])[])[];
            readonly placed: readonly {
                readonly cutOrder: number;
                readonly holes: readonly (readonly (readonly number[])[])[];
                readonly outline: readonly (readonly number[])[];
                readonly piece: string;
                readonly turnDeg: number;
            }[];
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly lengthMm?: string;
                readonly thicknessMm?: string;
                readonly widthMm?: string;
            };
            readonly utilisation: number;
            readonly widthMm: number;
        };
        /** @description Filled solid from skin to skin, before the core goes in. */
        readonly CoreSolidFill: {
            readonly areaM2: number;
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly isUnderLip: boolean;
            /** @enum {string} */
            readonly kind: "high-density-strip" | "paste" | "solid-laminate";
            /** @description As paste: how many lifts, for its heat. */
            readonly lifts: number;
            readonly opening: string;
            /** @description In deck coordinates. */
            readonly outline: readonly (readonly number[])[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly volumeL?: string;
                readonly widthMm?: string;
            };
            readonly volumeL: number;
            readonly widthMm: number;
        };
        readonly CoreSupportInput: {
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly from: readonly number[];
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
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
             * @description Thickness.
             * @example 1/2 in
             */
            readonly thicknessMm: number | string;
        };
        /** @description One labelled piece of new core, in deck coordinates. */
        readonly CoringCorePiece: {
            readonly areaM2: number;
            /** @description What is bedded in one go; counted from 1 in each layer of an opening. */
            readonly bay: number;
            /** @description Over all openings. */
            readonly beddingOrder: number;
            readonly bleedDiameterMm?: number;
            readonly bleedHoles: readonly (readonly number[])[];
            /** @description How it gets in; absent when no way was found, and the plan says so. */
            readonly entry?: components["schemas"]["Entry"];
            /** @enum {string} */
            readonly form: "plain" | "scored";
            /** @description Only for core that has a grain in its plane. */
            readonly grainDeg?: number;
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly isUnderLip: boolean;
            /** @description The opening's letter and the bedding order in it. */
            readonly label: string;
            /** @description 1 lies on the inner skin. */
            readonly layer: number;
            readonly opening: string;
            readonly outline: readonly (readonly number[])[];
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly bleedDiameterMm?: string;
                readonly thicknessMm?: string;
            };
        };
        readonly CostingMissing: {
            /** @enum {string} */
            readonly form?: "plain" | "scored";
            readonly material: string;
            readonly needs: readonly string[];
            /** @description Hardener code of a resin system. */
            readonly part?: string;
            readonly quantity: number;
            /**
             * @description `no-hardener`: the resin is there and what cures it is not; `below-minimum-order`: what is in stock does not reach it.
             * @enum {string}
             */
            readonly reason: "all-excluded" | "below-minimum-order" | "no-hardener" | "no-pack" | "not-enough" | "not-found-in-time" | "other-unit";
            readonly rollWidthMm?: number;
            readonly sheet?: {
                readonly lengthMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly thicknessMm?: number;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly quantity?: string;
                readonly rollWidthMm?: string;
                readonly thicknessMm?: string;
            };
        };
        readonly CostingMoneyRange: {
            readonly high: components["schemas"]["MoneyJson"];
            readonly likely: components["schemas"]["MoneyJson"];
            readonly low: components["schemas"]["MoneyJson"];
        };
        readonly CostLine: {
            readonly amount: components["schemas"]["MoneyJson"];
            readonly atExtents: readonly components["schemas"]["AtExtent"][];
            /** @enum {string} */
            readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            readonly code: string;
            readonly depreciation?: components["schemas"]["LineDepreciation"];
            /** @description Of packs only: how they are charged, and without tax what buying them whole would come to. */
            readonly goods?: {
                /** @enum {string} */
                readonly billedBy: "use" | "wear" | "whole-packs";
                readonly bought: components["schemas"]["MoneyJson"];
            };
            /** @description True where packs were priced and the rate is their price over their content. */
            readonly isAverageRate: boolean;
            readonly note?: string;
            readonly packs: readonly components["schemas"]["LinePack"][];
            /** @enum {string} */
            readonly partOrLabour: "labour" | "part";
            readonly quantity: components["schemas"]["LineQuantity"];
            readonly range: components["schemas"]["CostingMoneyRange"];
            readonly rateIncludesTax: boolean;
            /** @enum {string} */
            readonly scope: "in" | "out";
            /** @enum {string} */
            readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
            readonly spread: {
                readonly high: number;
                readonly low: number;
            };
            readonly stage?: string;
            readonly taxGroup: string;
            readonly title: string;
            readonly unit: string;
            readonly unitRate: components["schemas"]["MoneyJson"];
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
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description P80 minus the point, none when the point already covers it. */
            readonly contingency: components["schemas"]["MoneyJson"];
            readonly currency: string;
            readonly deviation: components["schemas"]["MoneyJson"];
            readonly drivers: readonly components["schemas"]["Driver"][];
            readonly extent: components["schemas"]["ThreePoint"];
            readonly histogram: readonly components["schemas"]["HistogramBar"][];
            readonly information: components["schemas"]["InformationValue"];
            /** @description Of the variance, by drivers acting together. */
            readonly jointShare: number;
            readonly mean: components["schemas"]["MoneyJson"];
            readonly p10: components["schemas"]["MoneyJson"];
            readonly p50: components["schemas"]["MoneyJson"];
            readonly p80: components["schemas"]["MoneyJson"];
            readonly p90: components["schemas"]["MoneyJson"];
            readonly p90RelativeError: number;
            readonly p90StandardError: components["schemas"]["MoneyJson"];
            readonly point: components["schemas"]["MoneyJson"];
            readonly samples: number;
            readonly seed: number;
            /** @enum {string} */
            readonly shape: "beta" | "triangular";
            /** @description How likely the job costs no more than the point. */
            readonly shareAtPoint: number;
        };
        readonly CostRollUp: {
            readonly assumptions: readonly components["schemas"]["Figure"][];
            readonly byCause: readonly {
                /** @enum {string} */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
                readonly direct: components["schemas"]["MoneyJson"];
                readonly gross: components["schemas"]["MoneyJson"];
                readonly loadings: components["schemas"]["MoneyJson"];
                readonly net: components["schemas"]["MoneyJson"];
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            /** @description Cause and part or labour crossed, as a claim splits them. */
            readonly byCauseAndPart: readonly {
                /** @enum {string} */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
                readonly direct: components["schemas"]["MoneyJson"];
                readonly gross: components["schemas"]["MoneyJson"];
                readonly loadings: components["schemas"]["MoneyJson"];
                readonly net: components["schemas"]["MoneyJson"];
                /** @enum {string} */
                readonly partOrLabour: "labour" | "part";
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            readonly byPartOrLabour: readonly {
                readonly direct: components["schemas"]["MoneyJson"];
                readonly gross: components["schemas"]["MoneyJson"];
                readonly loadings: components["schemas"]["MoneyJson"];
                readonly net: components["schemas"]["MoneyJson"];
                /** @enum {string} */
                readonly partOrLabour: "labour" | "part";
                readonly tax: components["schemas"]["MoneyJson"];
            }[];
            readonly contingency: components["schemas"]["MoneyJson"];
            readonly currency: string;
            readonly depreciation: {
                readonly depreciation: components["schemas"]["MoneyJson"];
                readonly parts: components["schemas"]["MoneyJson"];
                readonly remaining: components["schemas"]["MoneyJson"];
            };
            readonly direct: components["schemas"]["MoneyJson"];
            readonly gross: components["schemas"]["MoneyJson"];
            readonly lines: readonly components["schemas"]["CostLine"][];
            readonly net: components["schemas"]["MoneyJson"];
            /** @description Named and priced, not summed. */
            readonly outOfScope: readonly components["schemas"]["CostLine"][];
            readonly overhead: components["schemas"]["MoneyJson"];
            readonly profit: components["schemas"]["MoneyJson"];
            readonly provisional: components["schemas"]["MoneyJson"];
            readonly sections: readonly components["schemas"]["SectionTotal"][];
            readonly tax: components["schemas"]["MoneyJson"];
            readonly taxes: readonly {
                readonly code: string;
                readonly name: string;
                /** @description Exact decimal text. */
                readonly percent: string;
                readonly tax: components["schemas"]["MoneyJson"];
                readonly taxable: components["schemas"]["MoneyJson"];
            }[];
            readonly terms: {
                readonly contingencyPercent?: string;
                readonly overheadPercent: string;
                readonly profitPercent: string;
                /** @enum {string} */
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
            readonly amount: components["schemas"]["MoneyJson"];
            readonly code: string;
            readonly title: string;
        };
        readonly CountedPackInput: {
            /** @description Whole packs that can be sold now. */
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
            readonly covered: number;
            /** @enum {string} */
            readonly form?: "plain" | "scored";
            readonly fromOnHand: number;
            readonly material: string;
            readonly needs: readonly {
                readonly estimate?: string;
                readonly id: string;
                readonly requiredQuantity: number;
            }[];
            /** @description Hardener code of a resin system. */
            readonly part?: string;
            readonly required: number;
            readonly rollWidthMm?: number;
            readonly sheet?: {
                readonly lengthMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly short: number;
            readonly thicknessMm?: number;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly covered?: string;
                readonly fromOnHand?: string;
                readonly required?: string;
                readonly rollWidthMm?: string;
                readonly short?: string;
                readonly thicknessMm?: string;
            };
        };
        readonly Craft: {
            /** @enum {string} */
            readonly craftType?: "motor" | "sail";
            /** @enum {string} */
            readonly designCategory?: "A" | "B" | "C" | "D";
            readonly lengthHullM?: number;
            readonly lengthWaterlineM?: number;
            readonly massLoadedKg?: number;
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
            /** @description Year of building. */
            readonly yearBuilt?: number;
        };
        readonly Crew: {
            readonly hoursPerDay?: number;
            /** @enum {string} */
            readonly labour?: "mixed" | "owner" | "yard";
            readonly people?: number;
            /** @enum {string} */
            readonly skill?: "owner" | "professional";
            readonly startDate?: string;
            readonly workingDays?: readonly ("fri" | "mon" | "sat" | "sun" | "thu" | "tue" | "wed")[];
        };
        readonly CrewInput: {
            /** @description Hours in a day that go into the job, a head. Absent: 5.6 h (so much of a working day goes into one job on the boat: mean of 24 logged days). */
            readonly hoursPerDay?: number;
            /**
             * @description All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.
             * @enum {string}
             */
            readonly labour?: "yard" | "owner" | "mixed";
            /** @description People at work. Absent: 2 (bedding core and fastening through the deck take two). */
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
            readonly cure: components["schemas"]["CurePlan"];
            readonly weather: components["schemas"]["WeatherPlan"];
        };
        readonly CureMilestones: {
            /** @enum {string} */
            readonly basis: "forecast" | "forecast-then-stated" | "stated";
            readonly fullCureH?: number;
            readonly gelH?: number;
            readonly note?: string;
            readonly recoatShutsH?: number;
            readonly releaseH?: number;
            readonly sandableH?: number;
            /** @description When the last of the resin goes on; only where a forecast is followed. */
            readonly startAt?: string;
            readonly step: string;
            /** @description Steady as stated, or the mean of the deck until full cure. */
            readonly temperatureC: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly temperatureC?: string;
            };
        };
        readonly CurePlan: {
            readonly activationEnergy: {
                readonly basis: string;
                readonly high: number;
                readonly likely: number;
                readonly low: number;
            };
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly deck: {
                readonly coldestC: number;
                readonly meanC: number;
                readonly overH: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly coldestC?: string;
                    readonly meanC?: string;
                    readonly warmestC?: string;
                };
                readonly warmestC: number;
            };
            readonly hardener: string;
            readonly milestones: readonly components["schemas"]["Milestone"][];
            readonly notes: readonly string[];
            readonly referenceC: number;
            readonly resin: string;
            readonly step?: string;
            /** @description Hours, until full cure or the end, in which the deck is too cold and nothing counts. */
            readonly stoppedH: number;
            readonly stopsBelowC: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly referenceC?: string;
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
            /** @description Hour of the day at which the resin is mixed, where no moment is given; absent: 9. */
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
            /** @enum {string} */
            readonly chosenBy: "expected-hours" | "record";
            /** @description Bad core that this leaves, as the map expects it. */
            readonly expectedLeftM2: number;
            /** @description What opening nothing would come to. */
            readonly hoursWithoutOpening: number;
            readonly leavingHours: number;
            /** @description Hours of the openings, and those of leaving what is left. */
            readonly openingHours: number;
            /** @description Core this likely to be bad, or more, is opened. */
            readonly probability: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly expectedLeftM2?: string;
            };
        };
        readonly CutCoreSheet: {
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description A sheet that is bought, or a piece that the customer has. */
            readonly isBought: boolean;
            readonly label: string;
            readonly lengthMm: number;
            /** @description Which of the alike sheets, from 1. */
            readonly number: number;
            /** @description The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
            readonly offcuts: readonly components["schemas"]["Offcut"][];
            /** @description Rectangles no narrower than what is worth keeping. */
            readonly offcutsKept: readonly components["schemas"]["Offcut"][];
            readonly outline: readonly (readonly number[])[];
            readonly pieceAreaM2: number;
            readonly placements: readonly components["schemas"]["Placement"][];
            readonly sheetAreaM2: number;
            readonly stockId: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly lengthMm?: string;
                readonly pieceAreaM2?: string;
                readonly sheetAreaM2?: string;
                readonly widthMm?: string;
            };
            readonly use: components["schemas"]["SheetUse"];
            readonly utilisation: number;
            readonly widthMm: number;
        };
        readonly CutSheet: {
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Which of the alike sheets, from 1. */
            readonly number: number;
            /** @description The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
            readonly offcuts: readonly components["schemas"]["Offcut"][];
            readonly outline: readonly (readonly number[])[];
            readonly pieceAreaM2: number;
            readonly placements: readonly components["schemas"]["Placement"][];
            readonly sheetAreaM2: number;
            readonly stockId: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly pieceAreaM2?: string;
                readonly sheetAreaM2?: string;
            };
            readonly utilisation: number;
        };
        readonly CuttingPlan: {
            readonly onRoll?: components["schemas"]["StripLayout"];
            readonly onSheets?: components["schemas"]["SheetLayout"];
            /** @description What the answer depends on besides the pieces and the stock; the same settings give the same answer. */
            readonly seed: number;
            readonly timeLimitS: number;
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
            /** @description The same seed gives the same layout; absent: 1. */
            readonly seed?: number;
            /** @description Sheets and offcuts; give these or a roll. */
            readonly stock?: readonly components["schemas"]["StockSheetInput"][];
            /** @description After this time the best layout so far is the answer; absent: 20. */
            readonly timeLimitS?: number;
            /** @description Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: 4000. */
            readonly workUnits?: number;
        };
        readonly CyclesInput: {
            /** @description Each waits until the one before holds. Absent: 1. */
            readonly bedding?: number;
            /** @description Absent: 3. */
            readonly fair?: number;
            /** @description Plies of one session are laid wet on wet. Absent: 1. */
            readonly laminating?: number;
            /** @description Absent: 2. */
            readonly prime?: number;
            /** @description Absent: 2. */
            readonly topcoat?: number;
        };
        /** @description The edge of the panel that a tape is hooked to. */
        readonly Datum: {
            readonly from: readonly number[];
            readonly lengthMm: number;
            readonly to: readonly number[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly lengthMm?: string;
            };
        };
        readonly DatumInput: {
            readonly cite: components["schemas"]["CiteInput"];
            /** @description Greatest value seen. */
            readonly high?: number;
            /** @description Least value seen. */
            readonly low?: number;
            readonly value: number;
        };
        readonly DayRange: {
            readonly p10: number;
            readonly p50: number;
            readonly p90: number;
        };
        /** @description A photograph of the deck, without its picture. */
        readonly DeckPhotograph: {
            /** @description RFC 3339 instant. */
            readonly addedAt: string;
            /** @description Where it was taken, in the deck plane; absent when nobody said. */
            readonly at?: readonly number[];
            readonly caption: string;
            /** @description 0 towards the bow, 90 to starboard. */
            readonly directionDeg?: number;
            readonly heightPx: number;
            readonly href: string;
            /** @enum {string} */
            readonly mediaType: "image/jpeg";
            /** @description As on the plan. */
            readonly number: number;
            readonly widthPx: number;
        };
        readonly DeckWarmth: {
            readonly heaterK?: number;
            readonly isUnderSky?: boolean;
            readonly sunK?: number;
            readonly tentK?: number;
        };
        readonly DeckWarmthInput: {
            /** @description Lamp, blanket or heater. */
            readonly heaterK?: number;
            /** @description Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent. */
            readonly isUnderSky?: boolean;
            /** @description How much the midday sun warms the deck above the air; absent: nothing is counted on. */
            readonly sunK?: number;
            /** @description A closed tent over the deck. */
            readonly tentK?: number;
        };
        /**
         * @description What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,
         *     and the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
         *
         *     Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
         */
        readonly DefectRecord: {
            readonly cause?: components["schemas"]["CauseRecord"];
            readonly conditions?: components["schemas"]["Conditions"];
            readonly core: components["schemas"]["OldCore"];
            readonly craft?: components["schemas"]["Craft"];
            readonly crew?: components["schemas"]["Crew"];
            /** @enum {string} */
            readonly evidence?: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
            readonly findings?: readonly components["schemas"]["StatedFinding"][];
            readonly fittings?: readonly components["schemas"]["FittingRecord"][];
            readonly innerSkin: components["schemas"]["SkinRecord"];
            readonly inspection?: components["schemas"]["Inspection"];
            readonly locale?: string;
            readonly method?: components["schemas"]["MethodChoice"];
            readonly occurrence?: components["schemas"]["Occurrence"];
            readonly outerSkin: components["schemas"]["SkinRecord"];
            readonly panel: components["schemas"]["PanelRecord"];
            readonly parties?: components["schemas"]["Parties"];
            readonly pricing?: components["schemas"]["PricingChoice"];
            readonly reference?: string;
            /** @enum {string} */
            readonly soundedDeck?: "part" | "whole";
            readonly survey?: components["schemas"]["Survey"];
            readonly title?: string;
            readonly vessel?: components["schemas"]["Vessel"];
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
            /** @description The panel of deck. */
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
            readonly ageYears: number;
            /** @description Straight-line life; the percentage is worked out from it when none is given. */
            readonly lifeYears?: number;
            /** @description Exact decimal text, 0 to 100. */
            readonly percent?: string;
        };
        /** @description The division that was taken, the others looked at, and the reason in words. */
        readonly DivisionByCost: {
            readonly chosen: number;
            readonly options: readonly components["schemas"]["DivisionOption"][];
            readonly words: string;
        };
        readonly DivisionChoice: {
            /** @description Expected for air shut in under large pieces. */
            readonly airH: number;
            readonly largestPieceM2: number;
            readonly pieces: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly largestPieceM2?: string;
            };
            /** @description To cut, fit and bed. */
            readonly workH: number;
        };
        /** @description One way to divide the core, with what its sheets cost and its hours. */
        readonly DivisionOption: {
            /** @description To cut, fit and bed, and to mend hollows. */
            readonly hours: number;
            readonly pieces: number;
            readonly sheetCost: number;
        };
        readonly DrawingList: {
            readonly items: readonly {
                readonly href: string;
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
            /** @description How far core is taken out under the skin all round; absent: 0. */
            readonly undercutMm?: number | string;
        };
        readonly Driver: {
            /** @description Total with this driver at its P10 and P90 and everything else at its median. */
            readonly atP10: components["schemas"]["MoneyJson"];
            readonly atP90: components["schemas"]["MoneyJson"];
            readonly code: string;
            readonly swing: components["schemas"]["MoneyJson"];
            readonly title: string;
            /** @description Of the variance, first order. */
            readonly varianceShare: number;
        };
        readonly DriverAmountsInput: {
            /** @description Absent: all that is opened. */
            readonly "bared-m2"?: number;
            /** @description Holes of fittings that are bedded again. */
            readonly "bedded-hole"?: number;
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
            /** @description Winches, windlass and track. */
            readonly "fitting-large"?: number;
            /** @description Four-bolt fittings. */
            readonly "fitting-small"?: number;
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
            /** @description Frames off, their core sealed, bedded anew. */
            readonly "leak-frame"?: number;
            /** @description Searches for the way in of the water. */
            readonly "leak-hunt"?: number;
            /** @description Chainplate slots filled and cut anew. */
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
            readonly code: string;
            /** @description SHA-256 of the content of a published edition. */
            readonly contentHash?: string;
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description RFC 3339 instant from which it counts; absent when that was its publication. */
            readonly effectiveAt?: string;
            /** @description True for the catalogue shipped with the program, which everybody reads and nobody changes. */
            readonly isShipped: boolean;
            readonly note: string;
            readonly publishedAt?: string;
            /**
             * @description `scheduled`: published, and not yet in effect.
             * @enum {string}
             */
            readonly state: "draft" | "published" | "scheduled";
        };
        /** @description What one edition holds otherwise than another. */
        readonly EditionComparison: {
            readonly after: string;
            readonly before: string;
            readonly changes: readonly components["schemas"]["EntryChange"][];
            readonly isSame: boolean;
        };
        readonly EditionList: {
            /** @description Code of the edition that estimates are made with now. */
            readonly current: string;
            readonly items: readonly components["schemas"]["Edition"][];
        };
        readonly EditionNamed: {
            readonly code: string;
            /** @description Path of the edition. */
            readonly href: string;
        };
        /** @description An edition of the catalogue was published: it is current, or will be from `effectiveAt`. */
        readonly EditionPublished: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["PublicationNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
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
            /** @description How many of the newest estimates, each in its last revision; 10 when absent. Not together with `estimates`. */
            readonly newest?: number;
        };
        /** @description A publication was taken back before it counted. */
        readonly EditionWithdrawn: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["EditionNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
            readonly type: "edition.withdrawn";
        };
        /** @description Moduli of a homogeneous plate that would answer the same. */
        readonly EngineeringConstants: {
            readonly poissonAcross: number;
            readonly poissonAlong: number;
            readonly shearCouplingAcross: number;
            /** @description Shear strain per along (across) strain under a pull along (across): 0 for a balanced laminate. */
            readonly shearCouplingAlong: number;
            readonly shearModulusMPa: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly shearModulusMPa?: string;
                readonly youngAcrossMPa?: string;
                readonly youngAlongMPa?: string;
            };
            readonly youngAcrossMPa: number;
            readonly youngAlongMPa: number;
        };
        /** @description Typed by the caller; `at` is the JSON Pointer of the field. */
        readonly Entered: {
            readonly at: string;
            /** @enum {string} */
            readonly kind: "entered";
        };
        /** @description How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip. */
        readonly Entry: {
            /** @description Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]. */
            readonly path: readonly (readonly number[])[];
            /** @enum {string} */
            readonly way: "drops" | "slides";
        };
        readonly EntryChange: {
            /** @enum {string} */
            readonly change: "added" | "changed" | "removed";
            readonly code: string;
            readonly fieldCount: number;
            /** @description The first 200 fields that differ, of an entry that is in both. */
            readonly fields: readonly components["schemas"]["EntryField"][];
            /** @enum {string} */
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
            readonly assumptions: readonly components["schemas"]["EstimateAssumption"][];
            /** @description Every source named in the document, by the key it is named with. */
            readonly bibliography: readonly components["schemas"]["BibliographyEntry"][];
            readonly cautions: readonly components["schemas"]["Caution"][];
            readonly checks: readonly components["schemas"]["Check"][];
            /** @description What it comes to in words: the page that is read first. */
            readonly conclusion: components["schemas"]["ConclusionSection"];
            /** @description Absent where the method opens nothing; `leftOut` says why. */
            readonly core?: components["schemas"]["CoreSection"];
            /** @description One card for each fitting that comes off. */
            readonly hardware: readonly components["schemas"]["HardwareCard"][];
            readonly laminate?: components["schemas"]["LaminateSection"];
            /** @description How the water came in, and whether this plan stops it. */
            readonly leak: components["schemas"]["LeakSection"];
            /** @description Sections that this method has no use for, each with the reason. */
            readonly leftOut: readonly components["schemas"]["LeftOutSection"][];
            readonly limits: readonly string[];
            readonly lines: readonly components["schemas"]["EstimateLine"][];
            /** @description Every way to mend this deck, which one is planned, and why. */
            readonly methods: components["schemas"]["MethodsSection"];
            readonly panel?: components["schemas"]["PanelSection"];
            readonly process: components["schemas"]["ProcessSection"];
            readonly provenance: components["schemas"]["ProvenanceStamp"];
            readonly reference?: string;
            readonly scope: components["schemas"]["Scope"];
            readonly sections: readonly components["schemas"]["CostSection"][];
            readonly summary: components["schemas"]["Summary"];
            readonly title: string;
            readonly totals: components["schemas"]["Totals"];
        };
        readonly EstimateAssumption: {
            /** @description JSON Pointer, in the record or in that endpoint's request, of the field that would replace the default. */
            readonly at: string;
            readonly because: string;
            readonly meaning: string;
            /** @description `record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for. */
            readonly of: string;
            readonly source: string;
            readonly value: string;
        };
        /** @description A basket for stored estimates: priced in one edition of the catalogue, from today's stock, with what has changed since each was made. */
        readonly EstimateBasket: {
            readonly byEstimate: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                readonly estimate: string;
            }[];
            readonly coverage: readonly components["schemas"]["Coverage"][];
            readonly currency: string;
            /** @description For every estimate that was made with another edition, in the currency of the list. */
            readonly drift: readonly components["schemas"]["EstimateDrift"][];
            readonly excluded: readonly components["schemas"]["Excluded"][];
            readonly isComplete: boolean;
            readonly isInvented: boolean;
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            readonly lines: readonly components["schemas"]["BasketLine"][];
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            readonly missing: readonly components["schemas"]["CostingMissing"][];
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            /** @description Edition whose prices it is made with. */
            readonly pricedAt: string;
            readonly priceList: string;
            readonly pricesIncludeTax: boolean;
            readonly proof: {
                /** @enum {string} */
                readonly kind: "proven";
            } | {
                readonly bound?: components["schemas"]["MoneyJson"];
                readonly gapFraction?: number;
                /** @enum {string} */
                readonly kind: "gap";
            };
            readonly secondBest?: components["schemas"]["SecondBest"];
            /** @description RFC 3339 instant of the oldest count of stock in the list; absent when the stock of the edition counts. */
            readonly stockCountedAt?: string;
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            readonly total: components["schemas"]["MoneyJson"];
            readonly warnings: readonly string[];
        };
        /** @description The calendar of an estimate by itself. */
        readonly EstimateCalendar: {
            readonly calendar: components["schemas"]["CalendarSection"];
            /** @description The work, the waits and the holds of the day that was asked for, or what comes next. */
            readonly day?: {
                readonly date: string;
                readonly items: readonly components["schemas"]["TodayItem"][];
            };
            readonly id: string;
            readonly revision: components["schemas"]["RevisionMark"];
            /** @description Only with a forecast. */
            readonly weather?: components["schemas"]["WeatherSection"];
        };
        readonly EstimateCorePiece: {
            readonly areaM2: number;
            /** @description What is bedded in one go; counted from 1 in each layer of an opening. */
            readonly bay: number;
            readonly beddingOrder: number;
            readonly bleedHoles: readonly (readonly number[])[];
            /** @enum {string} */
            readonly form: "plain" | "scored";
            /** @description Only for core that has a grain in its plane. */
            readonly grainDeg?: number;
            readonly holes: readonly (readonly (readonly number[])[])[];
            /** @description Slid under the skin that stays; the others drop in. */
            readonly isUnderLip: boolean;
            readonly label: string;
            /** @description 1 lies on the inner skin. */
            readonly layer: number;
            readonly opening: string;
            /** @description In deck coordinates. */
            readonly outline: readonly (readonly number[])[];
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly thicknessMm?: string;
            };
        };
        /** @description An estimate was made. */
        readonly EstimateCreated: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["EstimateNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
            readonly type: "estimate.created";
        };
        /** @description How the prices of a list differ from those that an estimate was reckoned with. */
        readonly EstimateDrift: {
            readonly difference: components["schemas"]["MoneyJson"];
            readonly estimate: string;
            /** @description Packs that are not on the list any more, each once. */
            readonly gone: readonly string[];
            readonly lines: readonly components["schemas"]["LineDrift"][];
            readonly now: components["schemas"]["MoneyJson"];
            /** @description Of the lines that can still be bought as they were reckoned. */
            readonly then: components["schemas"]["MoneyJson"];
        };
        /** @description Something measured that does not fit, with its numbers. */
        readonly EstimateFinding: {
            readonly code: string;
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /** @enum {string} */
            readonly severity: "note" | "stop" | "warn";
            readonly text: string;
        };
        readonly EstimateLine: {
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description Least and most of the amount at the recorded extent. */
            readonly amountRange: {
                readonly high: components["schemas"]["MoneyJson"];
                readonly low: components["schemas"]["MoneyJson"];
            };
            /** @enum {string} */
            readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            readonly code: string;
            readonly depreciable: boolean;
            /** @description Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax. */
            readonly depreciation?: components["schemas"]["LineDepreciation"];
            /** @description Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
            readonly goods?: {
                /** @enum {string} */
                readonly billedBy: "use" | "wear" | "whole-packs";
                readonly bought: components["schemas"]["MoneyJson"];
            };
            /** @description Of labour: least, most likely, mean and most; the mean is priced. */
            readonly hours?: {
                readonly high: number;
                readonly likely: number;
                readonly low: number;
                readonly mean: number;
            };
            /** @description True where packs were priced and `unitPrice` is their price over their content. */
            readonly isAveragePrice: boolean;
            /** @enum {string} */
            readonly kind: "charge" | "consumable" | "disposal" | "hire" | "labour" | "material";
            readonly material?: string;
            readonly netQuantity: number;
            /** @description Whole packs to be bought; empty for services. The amount is what is charged of their count times their price. */
            readonly packs: readonly {
                readonly count: number;
                readonly name: string;
                readonly price: components["schemas"]["MoneyJson"];
                readonly sku: string;
                readonly supplier: string;
            }[];
            /** @enum {string} */
            readonly partOrLabour: "labour" | "part";
            /** @description What was multiplied, as an exact decimal. */
            readonly pricedQuantity: string;
            readonly purchaseQuantity: number;
            /** @description Least and most that may be needed, waste counted; absent for services. */
            readonly range?: {
                readonly high: number;
                readonly low: number;
            };
            readonly section: string;
            readonly taxGroup: string;
            readonly title: string;
            readonly unit: string;
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly netQuantity?: string;
                readonly purchaseQuantity?: string;
                readonly wasteQuantity?: string;
            };
            readonly wasteQuantity: number;
        };
        readonly EstimateMoneyRange: {
            readonly p10: components["schemas"]["MoneyJson"];
            readonly p50: components["schemas"]["MoneyJson"];
            readonly p80: components["schemas"]["MoneyJson"];
            readonly p90: components["schemas"]["MoneyJson"];
        };
        readonly EstimateNamed: {
            /** @description Code of the edition it was made with. */
            readonly edition: string;
            /** @description Path of the estimate. */
            readonly href: string;
            readonly id: string;
            /** @description Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
            readonly publishableKeyId?: string;
            /** @description The caller's own reference, when it gave one. */
            readonly reference?: string;
        };
        readonly EstimatePage: {
            readonly items: readonly components["schemas"]["EstimateSummary"][];
            /** @description Give it as `cursor` to read on; absent on the last page. */
            readonly nextCursor?: string;
        };
        /** @description What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept. */
        readonly EstimatePreview: {
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            /** @description In words: what the estimate works out and this leaves out, or takes a shorter way to. */
            readonly leftOut: readonly string[];
            readonly openings: readonly components["schemas"]["PreviewedOpening"][];
            readonly panel: components["schemas"]["PreviewPanel"];
            readonly price: components["schemas"]["PreviewPrice"];
            readonly summary: components["schemas"]["PreviewSummary"];
            readonly title: string;
            readonly zones: readonly {
                readonly areaM2: number;
                readonly condition: string;
                readonly id: string;
                readonly outline: readonly (readonly number[])[];
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            }[];
        };
        /** @description A revision of an estimate was made. */
        readonly EstimateRevised: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["RevisionNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
            readonly type: "estimate.revised";
        };
        /** @description An estimate in a list. */
        readonly EstimateSummary: {
            readonly createdAt: string;
            readonly edition: string;
            readonly engineVersion: string;
            readonly id: string;
            readonly labourH: number;
            readonly reference?: string;
            readonly revision: components["schemas"]["RevisionMark"];
            readonly title: string;
            readonly total: components["schemas"]["MoneyJson"];
            readonly totalP10: components["schemas"]["MoneyJson"];
            readonly totalP90: components["schemas"]["MoneyJson"];
            readonly verdict: string;
        };
        /** @description A page of what happened, oldest first. */
        readonly EventPage: {
            readonly items: readonly (components["schemas"]["EstimateCreated"] | components["schemas"]["EstimateRevised"] | components["schemas"]["EditionPublished"] | components["schemas"]["EditionWithdrawn"] | components["schemas"]["OperationDone"] | components["schemas"]["OrderMade"])[];
            /** @description Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new. */
            readonly nextCursor?: string;
        };
        readonly Excluded: {
            /** @enum {string} */
            readonly reason: "does-not-keep" | "hazardous-by-air" | "out-of-stock" | "supplier-not-chosen";
            readonly sku: string;
        };
        /** @description How far the damage goes, and how sure that is. */
        readonly Extent: {
            readonly assumptions: readonly components["schemas"]["Figure"][];
            readonly contours: readonly components["schemas"]["ProbabilityContour"][];
            /** @description How the cut was decided; absent for drawn zones. */
            readonly cut?: components["schemas"]["CutChoice"];
            /** @description Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone. */
            readonly damagedAreaM2: components["schemas"]["Quantiles"];
            readonly evidence: {
                readonly because: string;
                /** @enum {string} */
                readonly grade: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
                readonly law: components["schemas"]["GrowthLaw"];
                /** @description Growth at P10, P50 and P90. */
                readonly multiplier: components["schemas"]["ThreePoint"];
            };
            readonly figures: components["schemas"]["ExtentFigures"];
            readonly findings: readonly components["schemas"]["ExtentFinding"][];
            /** @enum {string} */
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
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly damagedAreaM2?: {
                    readonly p10: string;
                    readonly p50: string;
                    readonly p90: string;
                };
                readonly mappedAreaM2?: string;
                readonly mapSpreadM2?: {
                    readonly p10: string;
                    readonly p50: string;
                    readonly p90: string;
                };
            };
            /** @description Bad core to be opened, largest first; ready to be the zones of `planOpenings`. */
            readonly zones: readonly components["schemas"]["ExtentZone"][];
        };
        readonly ExtentAndOpenings: {
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
            readonly likelyArea: components["schemas"]["Figure"];
            readonly mappedArea: components["schemas"]["Figure"];
        };
        /** @description Something measured that does not fit or that must be known, with its numbers; never an exception. */
        readonly ExtentFinding: {
            /** @enum {string} */
            readonly code: "bad-reading-outside-zone" | "corner-too-tight" | "cut-crosses-support" | "cut-on-support" | "depth-margin-short" | "depth-not-established" | "depth-over-usual" | "evidence-overstated" | "fitting-on-cut" | "growth-capped" | "highly-loaded-fitting" | "leak-elsewhere" | "measured-overrules" | "narrow-bridge" | "no-plug-in-zone" | "no-plug-outside-zone" | "no-room-for-opening" | "no-room-for-taper" | "nothing-to-open" | "piece-too-large" | "plug-contradicts" | "plugs-disagree" | "readings-all-alike" | "readings-contradict" | "readings-enough" | "readings-in-line" | "readings-outside" | "readings-sparse" | "readings-unreliable" | "readings-worth-taking" | "skin-varies" | "sound-reading-in-zone" | "undercut-too-deep" | "zone-clipped" | "zones-smoothed";
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /**
             * @description `stop`: do not cut before this is settled; `warn`: changes the work; `note`: good to know.
             * @enum {string}
             */
            readonly severity: "note" | "stop" | "warn";
            readonly text: string;
        };
        readonly ExtentZone: {
            readonly areaM2: number;
            /** @enum {string} */
            readonly boundary: "drawn" | "mapped";
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly id: string;
            readonly outline: readonly (readonly number[])[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
            };
        };
        readonly FabricLayerInput: {
            readonly angleDeg: number;
            readonly arealMassGPerM2: number;
            /** @enum {string} */
            readonly layup: "mat" | "woven" | "unidirectional";
        };
        /** @description A number that can answer "why?": its value, its unit, and where it came from, down to the leaves. */
        readonly Figure: {
            readonly meaning: string;
            readonly origin: components["schemas"]["Entered"] | components["schemas"]["FromCatalogue"] | components["schemas"]["Assumed"] | components["schemas"]["Computed"];
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly value?: string;
            };
            readonly value: number;
        };
        readonly FigureChange: {
            readonly after: number;
            readonly before: number;
            readonly code: string;
            readonly name: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly after?: string;
                readonly before?: string;
            };
        };
        readonly FillerInput: {
            readonly bulkDensityGPerCm3: components["schemas"]["DatumInput"];
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            /** @enum {string} */
            readonly kind: "filler";
            /** @description Generic specification in trade words. */
            readonly name: string;
            readonly partsPerHundred: components["schemas"]["DatumInput"];
            readonly trueDensityGPerCm3: components["schemas"]["DatumInput"];
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
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
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
            /** @description Holes through the deck. */
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
            /** @description Side of its backing plate; not smaller than the base. */
            readonly plateMm?: number | string;
            /** @description Thickness of its backing plate. */
            readonly plateThicknessMm?: number | string;
            /** @description From the side of a hole to the first dry, clean core, as far as somebody dug. */
            readonly wetReachMm?: number | string;
        };
        /** @description What the job does to one fitting, and why it is in the scope. */
        readonly FittingInScope: {
            readonly at: readonly number[];
            readonly because: string;
            /** @description From the edge of its base to the opening; 0 inside. */
            readonly distanceMm: number;
            readonly holes: number;
            readonly id: string;
            readonly isHighlyLoaded: boolean;
            /** @enum {string} */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            /** @description Label of the nearest opening. */
            readonly opening: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly distanceMm?: string;
            };
            /** @enum {string} */
            readonly where: "inside" | "near";
            readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
        };
        readonly FittingRecord: {
            readonly at: readonly number[];
            readonly baseMm?: number;
            readonly boltLengthMm?: number;
            readonly boltMm?: number;
            readonly holeDiameterMm?: number;
            readonly holes?: number;
            readonly id: string;
            readonly insertMm?: number;
            readonly isLeaking?: boolean;
            /** @enum {string} */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            readonly plateMm?: number;
            readonly plateThicknessMm?: number;
            readonly wetReachMm?: number;
        };
        readonly FittingScope: {
            readonly at: readonly number[];
            readonly holes: number;
            readonly id: string;
            readonly isHighlyLoaded: boolean;
            /** @enum {string} */
            readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            /** @enum {string} */
            readonly where: "inside" | "near";
            readonly work: readonly ("insert" | "plate" | "pot" | "re-bed" | "refit" | "remove")[];
        };
        readonly FlushInput: {
            /** @description How far it may lie low. */
            readonly lowUpToMm: number | string;
            /** @description How far it may stand proud. */
            readonly proudUpToMm: number | string;
        };
        readonly Forecast: {
            readonly hours: readonly components["schemas"]["ForecastHour"][];
            readonly timeZone?: string;
        };
        readonly ForecastHour: {
            readonly at: string;
            readonly cloudPercent?: number;
            readonly rainMm?: number;
            readonly relativeHumidityPercent: number;
            readonly temperatureC: number;
            readonly windMPerS?: number;
        };
        readonly ForecastHourInput: {
            /**
             * @description RFC 3339 with offset: the start of the hour.
             * @example 2026-05-04T08:00:00+01:00
             */
            readonly at: string;
            /** @description Share of the sky under cloud; absent: a clear sky, which is the coldest at night. */
            readonly cloudPercent?: number;
            /** @description Rain. */
            readonly rainMm?: number | string;
            /** @description Relative humidity. */
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
            readonly cite: components["schemas"]["Cite"];
            readonly field: string;
            readonly high?: number;
            readonly item: string;
            /** @enum {string} */
            readonly kind: "catalogue";
            readonly low?: number;
        };
        /** @description Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs. */
        readonly GoodsSums: {
            readonly basis: string;
            readonly billed: components["schemas"]["MoneyJson"];
            /** @enum {string} */
            readonly billing: "as-bought" | "as-used";
            readonly bought: components["schemas"]["MoneyJson"];
        };
        readonly GradedFinding: {
            /** @description A zone, a fitting, or the surveyor's own label. */
            readonly about: string;
            readonly areaM2: number;
            /** @enum {string} */
            readonly class: "before-use" | "monitor" | "next-opportunity";
            readonly classBecause: string;
            /** @enum {string} */
            readonly classByService: "before-use" | "monitor" | "next-opportunity";
            readonly condition: string;
            readonly fittings: readonly {
                readonly id: string;
                readonly isLeaking: boolean;
                /** @enum {string} */
                readonly kind: "chainplate" | "cleat" | "fill" | "hatch" | "mast-step" | "other" | "pad-eye" | "stanchion" | "track" | "vent" | "winch" | "windlass";
            }[];
            /** @description From the aft edge of the panel. */
            readonly fromAftMm?: readonly number[];
            readonly recommendation: components["schemas"]["Worded"];
            readonly restriction: components["schemas"]["Worded"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly fromAftMm?: readonly string[];
            };
            readonly wording: components["schemas"]["Worded"];
        };
        /**
         * @description Found area over recorded area, as a distribution. With `falseAlarmShare` nearly nothing is found, evenly spread up to
         *     `falseAlarmUpTo`; else the factor is lognormal. Both are cut off at `most`, where the panel ends.
         */
        readonly GrowthLaw: {
            readonly falseAlarmFrom: number;
            readonly falseAlarmShare: number;
            readonly falseAlarmUpTo: number;
            readonly median: number;
            readonly most: number;
            /** @description An organisation's own found over recorded, rising; they weigh n/(n + 15). */
            readonly pairs: readonly number[];
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
            readonly code: string;
            readonly densityGPerCm3: components["schemas"]["DatumInput"];
            readonly fullCureH: components["schemas"]["DatumInput"];
            readonly gelH: components["schemas"]["DatumInput"];
            readonly hazards?: readonly string[];
            readonly highestTemperatureC: components["schemas"]["DatumInput"];
            readonly lowestTemperatureC: components["schemas"]["DatumInput"];
            readonly name: string;
            readonly partsByMass: components["schemas"]["DatumInput"];
            readonly partsByVolume: components["schemas"]["DatumInput"];
            readonly potLives: readonly components["schemas"]["PotLifeInput"][];
            readonly recoatShutsH: components["schemas"]["DatumInput"];
            readonly releaseH: components["schemas"]["DatumInput"];
            readonly sandableH: components["schemas"]["DatumInput"];
            /** @enum {string} */
            readonly speed: "fast" | "medium" | "slow" | "extra-slow";
        };
        readonly HardenerVerdict: {
            readonly code: string;
            readonly name: string;
            readonly reasons: readonly string[];
            /** @enum {string} */
            readonly verdict: "chosen" | "refused" | "workable";
        };
        /** @description What one fitting takes, from the record where it says so and from its kind where it does not. */
        readonly HardwareCard: {
            readonly assumed: readonly string[];
            readonly baseMm: number;
            readonly fastenerLengthMm: number;
            readonly fastenerMm: number;
            readonly fasteners: number;
            readonly id: string;
            readonly insert?: {
                readonly lengthMm: number;
                readonly material: string;
                readonly thicknessMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly thicknessMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly kind: string;
            readonly needsSecondPerson: boolean;
            readonly note?: string;
            readonly offH: components["schemas"]["Range"];
            readonly onH: components["schemas"]["Range"];
            readonly plate?: {
                readonly lengthMm: number;
                readonly material: string;
                readonly rule: string;
                readonly thicknessMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly thicknessMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly plugMl: number;
            readonly plugMm: number;
            readonly pours: number;
            readonly referral?: string;
            readonly sealant: {
                readonly kind: string;
                readonly ml: number;
            };
            readonly source: string;
            readonly tightening: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly baseMm?: string;
                readonly fastenerLengthMm?: string;
                readonly fastenerMm?: string;
                readonly plugMl?: string;
                readonly plugMm?: string;
            };
        };
        readonly HistogramBar: {
            readonly count: number;
            readonly from: number;
            readonly to: number;
        };
        /** @description What was done to a thing, newest first. */
        readonly History: {
            readonly items: readonly components["schemas"]["HistoryEntry"][];
        };
        readonly HistoryEntry: {
            readonly action: string;
            readonly after?: unknown;
            /** @description RFC 3339 instant. */
            readonly at: string;
            readonly before?: unknown;
            readonly keyId?: string;
            /** @description Whose key it was, as the key is called. */
            readonly keyName?: string;
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
            readonly stageZeroCost?: components["schemas"]["MoneyJson"];
        };
        readonly InnerSkinCheck: {
            readonly allowedSagMm: number;
            readonly allowedStressMPa: number;
            readonly loadKPa: number;
            readonly props: {
                readonly count?: number;
                readonly lines?: number;
                readonly needed: boolean;
                readonly spacingMm?: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly spacingMm?: string;
                };
                readonly why: string;
            };
            readonly sagMm: number;
            readonly stressMPa: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly allowedSagMm?: string;
                readonly allowedStressMPa?: string;
                readonly loadKPa?: string;
                readonly sagMm?: string;
                readonly stressMPa?: string;
            };
            /** @enum {string} */
            readonly verdict: "fails" | "passes";
        };
        readonly Inspection: {
            readonly conditions?: string;
            readonly instruments?: string;
            /** @enum {string} */
            readonly lies?: "afloat" | "ashore";
            readonly notInspected?: string;
            readonly on?: string;
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
            readonly attributable: components["schemas"]["MoneyJson"];
            readonly basis: string;
            readonly deductible: components["schemas"]["MoneyJson"];
            readonly improvement: components["schemas"]["MoneyJson"];
            readonly payable: components["schemas"]["MoneyJson"];
            readonly prior: components["schemas"]["MoneyJson"];
            readonly wear: components["schemas"]["MoneyJson"];
        };
        readonly JobCalendar: {
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly calendarDays: components["schemas"]["DayRange"];
            readonly criticalChain: readonly string[];
            readonly finish: {
                readonly early: string;
                readonly late: string;
                readonly likely: string;
            };
            /** @description RFC 5545, when it was asked for. */
            readonly iCalendar?: string;
            readonly labourH: components["schemas"]["ThreePoint"];
            readonly milestones: readonly components["schemas"]["CalendarMilestone"][];
            readonly notes: readonly string[];
            readonly planned: {
                readonly calendarDays: number;
                readonly workingDays: number;
            };
            /** @description Of the one walk that the tasks show, by mean hours and waits, without chance. */
            readonly plannedFinish: string;
            readonly simulation: {
                readonly distribution: string;
                readonly runs: number;
                readonly seed: number;
            };
            readonly startDate: string;
            readonly tasks: readonly components["schemas"]["PlannedTask"][];
            readonly timeZone: string;
            readonly today?: readonly components["schemas"]["TodayItem"][];
            /** @description Days on which the crew works. */
            readonly workingDays: components["schemas"]["DayRange"];
        };
        /** @description Why two openings became one, with the numbers that decided. */
        readonly Join: {
            readonly bridgeMm: number;
            readonly hoursApart: number;
            readonly hoursTogether: number;
            readonly neededBridgeMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly bridgeMm?: string;
                readonly neededBridgeMm?: string;
            };
            /** @enum {string} */
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
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            readonly id: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            readonly name: string;
            readonly organisationId: string;
            /** @description The first characters, by which a person recognises the key. */
            readonly prefix: string;
            /** @description The key in whose place this one was made. */
            readonly renewsId?: string;
            readonly revokedAt?: string;
            readonly roles: readonly ("auditor" | "catalogue-admin" | "chandler" | "integrator" | "organisation-admin" | "platform-operator" | "surveyor")[];
            /** @description What an integrator may do. */
            readonly scopes: readonly ("audit:read" | "calculate" | "catalogue:read" | "catalogue:write" | "estimates:read" | "estimates:write" | "events:read" | "letterhead:read" | "orders:read" | "pages:write" | "prices:write" | "webhooks:read" | "webhooks:write")[];
        };
        readonly KeyList: {
            readonly items: readonly components["schemas"]["Key"][];
            /** @description Give it as `cursor` to read on; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly KnownPlyInput: {
            /** @description Code of a reinforcement in the catalogue. */
            readonly material: string;
        };
        readonly LabourRatesInput: {
            readonly charges: readonly components["schemas"]["YardChargeInput"][];
            readonly cite?: components["schemas"]["CiteInput"];
            readonly code: string;
            /** @enum {string} */
            readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
            /** @description True for rates of an invented scenario. */
            readonly invented: boolean;
            readonly name: string;
            readonly overheadPercent: string;
            readonly perHour: components["schemas"]["RatePerHourInput"];
            readonly profitPercent: string;
            /**
             * @description posted: what a yard charges, overhead and profit inside, so that both percentages are 0; wage: what it pays.
             * @enum {string}
             */
            readonly rateBasis: "posted" | "wage";
            readonly region: string;
            readonly taxGroups: readonly components["schemas"]["TaxGroupInput"][];
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo: string;
        };
        readonly LaidOutPly: {
            readonly areaM2: components["schemas"]["Figure"];
            /** @description How far its edge lies outside the opening. */
            readonly beyondOpeningMm: number;
            readonly glassKg: components["schemas"]["Figure"];
            readonly material: string;
            readonly name: string;
            /** @description In the order of laying, from 1. */
            readonly order: number;
            readonly outline: readonly components["schemas"]["Polygon"][];
            readonly overlapAreaM2: number;
            readonly pieces: readonly components["schemas"]["RollPiece"][];
            readonly resinKg: components["schemas"]["Figure"];
            readonly rollLengthM: number;
            readonly rollWidthMm: number;
            readonly stage: number;
            readonly thicknessMm: number;
            readonly turnDeg: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly beyondOpeningMm?: string;
                readonly overlapAreaM2?: string;
                readonly rollLengthM?: string;
                readonly rollWidthMm?: string;
                readonly thicknessMm?: string;
            };
        };
        /** @description A default that was taken because the request did not say. */
        readonly LaminateAssumption: {
            /** @description JSON Pointer of the field that would replace it. */
            readonly at: string;
            readonly because: string;
            readonly cite: components["schemas"]["Cite"];
            readonly meaning: string;
            /** @description What was taken, as a person reads it. */
            readonly value: string;
        };
        readonly LaminateMissing: {
            readonly examined: number;
            /** @description False when only a part of the stacks was looked at for this; that none will do is proven all the same. */
            readonly isComplete: boolean;
            /** @description Constraints that no stack meets, whatever else it misses. */
            readonly metByNone: readonly ("flush-low" | "flush-proud" | "kinds" | "order" | "stiffness-across" | "stiffness-along" | "stiffness-shear" | "strength-compression-across" | "strength-compression-along" | "strength-tension-across" | "strength-tension-along")[];
            readonly reports: readonly components["schemas"]["ConstraintReport"][];
            readonly words: readonly string[];
        };
        readonly LaminateSchedule: {
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
                readonly costPerM2: string;
                readonly plies: readonly string[];
                readonly rank: number;
                readonly reason: string;
                readonly thicknessMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly thicknessMm?: string;
                };
            }[];
            readonly glassKg: number;
            /** @enum {string} */
            readonly method: "re-bed" | "relay";
            readonly notes: readonly string[];
            readonly oldThicknessMm: number;
            readonly plies: readonly components["schemas"]["PlyLine"][];
            readonly properties: readonly components["schemas"]["NamedValue"][];
            readonly resinKg: number;
            readonly taperRatio: number;
            readonly taperWidthMm: number;
            readonly totalThicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly glassKg?: string;
                readonly oldThicknessMm?: string;
                readonly resinKg?: string;
                readonly taperWidthMm?: string;
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
            readonly cause: string;
            readonly isRemedied: boolean;
            readonly remedy: string;
            readonly text: string;
            readonly title: string;
            /** @description What is measured again, and the value that passes. */
            readonly verify: string;
        };
        readonly LeftOut: {
            readonly material: string;
            readonly problems: readonly components["schemas"]["Problem"][];
        };
        readonly LeftOutSection: {
            readonly because: string;
            /** @enum {string} */
            readonly section: "bond-pressure" | "core" | "laminate" | "panel";
        };
        /** @description What remains of a bought good when every need is met. */
        readonly Leftover: {
            /** @enum {string} */
            readonly form?: "plain" | "scored";
            readonly keepsMonths?: number;
            readonly material: string;
            /** @description Hardener code of a resin system. */
            readonly part?: string;
            readonly quantity: number;
            readonly rollWidthMm?: number;
            readonly sheet?: {
                readonly lengthMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly thicknessMm?: number;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly quantity?: string;
                readonly rollWidthMm?: string;
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
            readonly after: components["schemas"]["MoneyJson"];
            /** @description In words: what the caller said of it, else what the numbers say. */
            readonly because: readonly string[];
            /** @description Of the difference, because there is more or less of it, at the old rate. */
            readonly becauseOfQuantity: components["schemas"]["MoneyJson"];
            /** @description Of the difference, because it costs more or less. */
            readonly becauseOfRate: components["schemas"]["MoneyJson"];
            readonly before: components["schemas"]["MoneyJson"];
            /** @enum {string} */
            readonly change: "added" | "changed" | "removed" | "same";
            readonly code: string;
            readonly difference: components["schemas"]["MoneyJson"];
            readonly quantityAfter: string;
            readonly quantityBefore: string;
            readonly title: string;
            readonly unit: string;
        };
        readonly LineDepreciation: {
            readonly ageYears: number;
            readonly amount: components["schemas"]["MoneyJson"];
            readonly percent: string;
            readonly remaining: components["schemas"]["MoneyJson"];
        };
        /** @description The packs of one line at the price of then and of now. */
        readonly LineDrift: {
            readonly difference?: components["schemas"]["MoneyJson"];
            readonly line: string;
            /** @description Absent where the pack is not on the list any more. */
            readonly now?: components["schemas"]["MoneyJson"];
            readonly packCount: number;
            readonly sku: string;
            readonly then: components["schemas"]["MoneyJson"];
            readonly title: string;
        };
        /** @description So many packs of one kind in a line. */
        readonly LinePack: {
            readonly count: number;
            readonly name: string;
            /** @description Exact decimal text for one pack. */
            readonly price: string;
            readonly sku: string;
            readonly supplier: string;
        };
        readonly LinePackInput: {
            /** @description Packs that are bought. */
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
            readonly net: number;
            /** @description Whole packs; absent for what is not bought in packs. */
            readonly purchase?: number;
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
            readonly code: string;
            readonly key: string;
            readonly pressureKPa: number;
            readonly title: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly pressureKPa?: string;
            };
        };
        readonly LogoLink: {
            readonly href: string;
            /** @enum {string} */
            readonly mediaType: "image/png";
        };
        /** @description Work that goes on after its request was answered with 202. */
        readonly LongOperation: {
            /** @description RFC 3339 instants, as all others here. */
            readonly createdAt: string;
            /** @description When the operation and its result are removed. */
            readonly expiresAt: string;
            readonly finishedAt?: string;
            readonly id: string;
            /** @description When it failed: why. */
            readonly problem?: components["schemas"]["OperationProblem"];
            /** @description When it is done: where the result is. */
            readonly result?: components["schemas"]["OperationResult"];
            readonly startedAt?: string;
            /** @enum {string} */
            readonly status: "done" | "failed" | "running" | "waiting";
        };
        readonly MapSettingsInput: {
            /** @description Further contours; absent: 0.1, 0.5 and 0.9. */
            readonly contourProbabilities?: readonly number[];
            /** @description Core this likely to be bad, or more, lies inside the zones; absent: chosen by expected hours. */
            readonly cutProbability?: number;
            /** @description Draws behind the range of the area. */
            readonly draws?: number;
            /** @description The hours that a square metre of bad core left under a closed deck costs in the end; absent: 120 (a second repair opens, cores and closes that square metre again with a cut of its own (about 25 h), the patch has grown by then (about double), and a deck set up and finished anew for it takes as much again). */
            readonly leaveCostHPerM2?: number;
            /** @description The same seed gives the same range. */
            readonly seed?: number;
            /** @description Share of such a panel that is bad before any reading; absent: 0.25. */
            readonly usualBadShare?: number;
        };
        /** @description A corner of the saw line as a person with a tape finds it. */
        readonly MarkedCorner: {
            /** @description Along the datum edge from its first end. */
            readonly alongMm: number;
            readonly at: readonly number[];
            readonly fromEndMm: number;
            /** @description Straight from each end of the datum edge: where the two tapes meet. */
            readonly fromStartMm: number;
            /** @description Square off the datum edge. */
            readonly offMm: number;
            /** @description Radius cut at this corner; less than the rule's where the sides are too short. */
            readonly radiusMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly alongMm?: string;
                readonly fromEndMm?: string;
                readonly fromStartMm?: string;
                readonly offMm?: string;
                readonly radiusMm?: string;
            };
        };
        readonly MarkingOut: {
            readonly corners: readonly components["schemas"]["MarkedCorner"][];
            readonly datum: components["schemas"]["Datum"];
            /** @description Corner to opposite corner, to check that it is square; only for four corners. */
            readonly diagonalsMm?: readonly number[];
            readonly lines: readonly components["schemas"]["SawLine"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly diagonalsMm?: readonly string[];
            };
        };
        readonly MatchedResin: {
            readonly hardeners: readonly {
                readonly boughtKg: number;
                readonly curesKg: number;
                readonly hardener: string;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly boughtKg?: string;
                    readonly curesKg?: string;
                };
            }[];
            readonly resin: string;
            readonly resinKg: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly resinKg?: string;
            };
        };
        /** @description Which form of a material a need asks for; packs must agree in every field that is given. */
        readonly MaterialVariant: {
            /** @enum {string} */
            readonly form?: "plain" | "scored";
            readonly material: string;
            /** @description Hardener code of a resin system. */
            readonly part?: string;
            readonly rollWidthMm?: number;
            readonly sheet?: {
                readonly lengthMm: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly lengthMm?: string;
                    readonly widthMm?: string;
                };
                readonly widthMm: number;
            };
            readonly thicknessMm?: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly rollWidthMm?: string;
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
            /** @description Width of the roll. */
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
            readonly at: readonly number[];
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /** @enum {string} */
            readonly kind: "moisture";
            /** @description On the meter's own scale; judged against `dryReference`. */
            readonly value: number;
        };
        readonly MeterReadingInput: {
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /** @description Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            readonly kind: "moisture";
            /** @description Reading, on the scale of the meter itself. */
            readonly value: number;
        };
        readonly MethodChoice: {
            /** @enum {string} */
            readonly access?: "from-above" | "from-below";
            /** @enum {string} */
            readonly application?: "brush-and-roller" | "spray-elsewhere" | "spray-in-booth";
            readonly core?: string;
            readonly cutMarginMm?: number;
            /** @enum {string} */
            readonly finish?: "panel" | "patch" | "whole-deck";
            readonly flangeMm?: number;
            /** @enum {string} */
            readonly press?: "battens" | "vacuum" | "weights";
            readonly pumpResinMlPerStroke?: number;
            readonly resin?: string;
            /** @enum {string} */
            readonly rung?: "above-new-skin" | "above-old-skin" | "dry-in-place" | "edge-rail-off" | "edge-rout-and-fill" | "edge-wrap" | "from-below" | "inject" | "ream-and-pot" | "rebed" | "solid-spot" | "whole-panel";
            /** @enum {string} */
            readonly skin?: "re-bed" | "relay";
            /** @enum {string} */
            readonly soundCore?: "comes-out" | "stays";
            readonly taperRatio?: number;
            readonly topcoat?: string;
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
            readonly recommended?: components["schemas"]["RungNamed"];
            readonly rungs: readonly components["schemas"]["RungSection"][];
            readonly runnerUp?: components["schemas"]["RungNamed"];
        };
        /** @description The same with the rung that is planned. */
        readonly MethodsSection: {
            /** @description What each place gets; the set-up of the job is counted once. */
            readonly places: readonly components["schemas"]["PlaceSection"][];
            readonly planned: {
                readonly because: string;
                readonly isNamedInRecord: boolean;
                readonly rung: string;
                readonly title: string;
            };
            readonly recommended?: components["schemas"]["RungNamed"];
            readonly rungs: readonly components["schemas"]["RungSection"][];
            readonly runnerUp?: components["schemas"]["RungNamed"];
        };
        /** @description When something may be done: likely, with the band of the spec and of the temperature law. */
        readonly Milestone: {
            readonly ageH: number;
            readonly at?: string;
            /** @enum {string} */
            readonly code: "full" | "gel" | "recoat-shuts" | "release" | "sandable";
            readonly earlyH?: number;
            readonly lateH?: number;
            readonly likelyH?: number;
            /** @description Why a figure is absent. */
            readonly reason?: string;
            readonly title: string;
        };
        /** @description The form money takes in JSON. */
        readonly MoneyJson: {
            readonly amount: string;
            readonly currency: string;
        };
        /** @description Core, joints and what is filled solid: together the cavities of the openings, layer by layer. */
        readonly Mosaic: {
            readonly assumptions: readonly components["schemas"]["Figure"][];
            readonly division: components["schemas"]["MosaicDivision"];
            readonly findings: readonly components["schemas"]["MosaicFinding"][];
            /** @description Gaps between pieces and round them. */
            readonly jointAreaM2: number;
            readonly jointLengthM: number;
            /** @description Length of joint that runs along a support in spite of everything. */
            readonly jointOnSupportM: number;
            readonly netAreaM2: number;
            readonly pieces: readonly components["schemas"]["CoringCorePiece"][];
            /** @description Opening and undercut, each as often as there are layers. */
            readonly regionAreaM2: number;
            /** @description Filled solid, each place as often as it takes the place of a layer. */
            readonly solidAreaM2: number;
            /** @description Places that take no core. Never under or over a piece. */
            readonly solidFills: readonly components["schemas"]["SolidFill"][];
            readonly solidVolumeL: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly jointAreaM2?: string;
                readonly jointLengthM?: string;
                readonly jointOnSupportM?: string;
                readonly netAreaM2?: string;
                readonly regionAreaM2?: string;
                readonly solidAreaM2?: string;
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
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly largestPieceM2?: string;
            };
            readonly words: string;
        };
        readonly MosaicFinding: {
            /** @enum {string} */
            readonly code: "cannot-be-slid-in" | "filled-solid" | "joint-on-support" | "much-filled-solid" | "order-not-proven";
            /** @description The opening it is about; absent when it is about all of them. */
            readonly opening?: string;
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
            readonly code: string;
            readonly name: string;
            readonly note?: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly value?: string;
            };
            readonly value: number;
        };
        readonly NestPieceInput: {
            /** @description How many alike; absent: 1. */
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
            /** @description How long the estimate may be waited for; 15 when absent. */
            readonly minutes?: number;
            /** @description The reference that the estimate will carry. */
            readonly reference?: string;
        };
        readonly NewEditionInput: {
            /** @description Code of the edition to start from; the current one when absent. */
            readonly basedOn?: string;
            /** @description A name for the edition, such as spring-2027. */
            readonly code: string;
            readonly note?: string;
        };
        /** @description The only answer that ever holds the key itself. */
        readonly NewKey: {
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            readonly id: string;
            readonly key: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            readonly name: string;
            readonly organisationId: string;
            /** @description The first characters, by which a person recognises the key. */
            readonly prefix: string;
            /** @description The key in whose place this one was made. */
            readonly renewsId?: string;
            readonly revokedAt?: string;
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
            readonly adminKey: components["schemas"]["NewKey"];
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            readonly id: string;
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
            /** @description Estimates a day, counted from midnight UTC. */
            readonly perDay: number;
            /** @description Requests a minute of all visitors together. */
            readonly perMinute: number;
            /** @description Requests a minute from one address. */
            readonly perMinutePerVisitor: number;
        };
        /** @description An endpoint with the secret that signs its events, shown in this answer only. */
        readonly NewWebhookEndpoint: {
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description Why nothing is delivered any more; absent while it is. */
            readonly disabledBecause?: string;
            readonly id: string;
            /** @description `whsec_` and base64 of 32 random bytes. */
            readonly secret: string;
            readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
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
            /** @description Most readings named at once. Absent: 10 (about as many as are taken before the map is looked at again). */
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
            readonly at: readonly number[];
            /** @description Chance of bad core there, as far as is known. */
            readonly chance: number;
            /** @enum {string} */
            readonly kind: "moisture" | "plug" | "sounding";
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
                readonly after: number;
                readonly now: number;
            };
            readonly assumptions: readonly components["schemas"]["Figure"][];
            /** @description Whether they save more than their own time. */
            readonly isWorthIt: boolean;
            /** @description Working time of all of them. */
            readonly minutes: number;
            /** @description Best first. */
            readonly readings: readonly components["schemas"]["NextReading"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaRangeM2?: {
                    readonly after: string;
                    readonly now: string;
                };
            };
            /** @description Working hours that deciding after them is expected to save. */
            readonly worthH: number;
        };
        readonly NextReadingsRequest: {
            /** @description Fittings through the deck. */
            readonly fittings?: readonly components["schemas"]["FittingInput"][];
            /** @description How readings become a map. */
            readonly map?: components["schemas"]["MapSettingsInput"];
            /** @description How the deck is opened. */
            readonly method?: components["schemas"]["OpeningMethodInput"];
            /** @description How the next readings may be taken. */
            readonly next?: components["schemas"]["NextAskedInput"];
            /** @description The outer skin. */
            readonly outerSkin?: components["schemas"]["SkinInput"];
            /** @description The panel of deck. */
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
            readonly advice: components["schemas"]["EstimateFinding"];
            /** @description Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
            readonly areaRangeM2: {
                readonly after: number;
                readonly now: number;
            };
            /** @description Whether they save more than their own time. */
            readonly isWorthIt: boolean;
            /** @description Working time of all of them. */
            readonly minutes: number;
            /** @description Best first. */
            readonly readings: readonly components["schemas"]["NextReading"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaRangeM2?: {
                    readonly after: string;
                    readonly now: string;
                };
            };
            /** @description Working hours that deciding after them is expected to save. */
            readonly worthH: number;
        };
        readonly Occurrence: {
            readonly cause?: string;
            readonly insurerReference?: string;
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
            readonly areaM2: number;
            readonly outline: readonly (readonly number[])[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
            };
        };
        /** @description In two stages: what is known at a firm price, what is not by rates. */
        readonly Offer: {
            readonly authorisation: {
                readonly basis: string;
                readonly labourH: number;
                readonly percent: number;
            };
            readonly holdPoint: string;
            readonly stageZero: components["schemas"]["StageZero"];
            /** @description Without tax, overhead and profit inside. */
            readonly unitRates: readonly {
                /** @enum {string} */
                readonly code: "cut-m" | "fitting-large" | "fitting-small" | "hole" | "opened-m2" | "visit";
                /** @description In this estimate. */
                readonly quantity: number;
                readonly rate: components["schemas"]["MoneyJson"];
                readonly unit: string;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly quantity?: string;
                };
                readonly what: string;
            }[];
        };
        readonly OldCore: {
            readonly cavityMm?: number;
            /** @enum {string} */
            readonly coreType?: "cross-linked-foam" | "end-grain-balsa" | "linear-foam" | "marine-plywood" | "san-foam";
            readonly densityKgPerM3?: number;
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
            /** @description Code of its resin; absent: polyester. */
            readonly resin?: string;
            /**
             * @description Measured thickness.
             * @example 3
             */
            readonly thicknessMm: number | string;
        };
        readonly OldSkinReport: {
            readonly acrossNPerMm: number;
            readonly alongHighNPerMm?: number;
            /** @description Where guessed: stiffness along of the weakest and the strongest likely build. */
            readonly alongLowNPerMm?: number;
            readonly alongNPerMm: number;
            readonly isGuessed: boolean;
            readonly shearNPerMm: number;
            /** @description In the order tension along, compression along, tension across, compression across. */
            readonly strengthNPerMm: readonly number[];
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly acrossNPerMm?: string;
                readonly alongHighNPerMm?: string;
                readonly alongLowNPerMm?: string;
                readonly alongNPerMm?: string;
                readonly shearNPerMm?: string;
                readonly strengthNPerMm?: readonly string[];
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
            /** @description Width of the roll. */
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
            readonly area: components["schemas"]["Area"];
            readonly areaM2: number;
            /** @description Sound core in the opening that is left where it is. */
            readonly coreStays: readonly components["schemas"]["Area"][];
            readonly coreStaysAreaM2: number;
            readonly cornerRadiusMm: number;
            /** @description Absent when no depth is safe; a finding says why. */
            readonly cutDepthMm?: number;
            readonly cutLengthM: number;
            readonly label: string;
            readonly reason: string;
            /** @description Corners of the saw line before rounding, measured from the datum corner of the panel. */
            readonly sawLine: readonly (readonly number[])[];
            readonly taperBand: readonly components["schemas"]["Area"][];
            readonly undercut: readonly components["schemas"]["Area"][];
            readonly undercutAreaM2: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly coreStaysAreaM2?: string;
                readonly cornerRadiusMm?: string;
                readonly cutDepthMm?: string;
                readonly cutLengthM?: string;
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
            readonly cutLengthM: number;
            readonly figures: components["schemas"]["PlanFigures"];
            readonly findings: readonly components["schemas"]["ExtentFinding"][];
            readonly fittings: readonly components["schemas"]["FittingInScope"][];
            /** @description Distance kept from edges: the flange, or the taper where that is wider and there is room. */
            readonly insetMm: number;
            readonly openedAreaM2: number;
            /** @description From the largest to the smallest. */
            readonly openings: readonly components["schemas"]["PlannedOpening"][];
            readonly panelAreaM2: number;
            /** @description Skin that stays: with the openings it is the whole panel. */
            readonly retained: readonly components["schemas"]["Polygon"][];
            readonly retainedAreaM2: number;
            /** @description Cuts across lifted skin, beside the cuts round the openings. */
            readonly splitLengthM: number;
            readonly taperBandAreaM2: number;
            readonly taperWidthMm: number;
            readonly undercutAreaM2: number;
            /** @description Bad core that no opening reaches. */
            readonly unreached: readonly components["schemas"]["Polygon"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly cutDepthMm?: string;
                readonly cutLengthM?: string;
                readonly insetMm?: string;
                readonly openedAreaM2?: string;
                readonly panelAreaM2?: string;
                readonly retainedAreaM2?: string;
                readonly splitLengthM?: string;
                readonly taperBandAreaM2?: string;
                readonly taperWidthMm?: string;
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
            /** @description Core left above the inner skin by the saw. Absent: 5 mm (the saw stops well short of the inner skin). */
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
            /** @description Fittings through the deck. */
            readonly fittings?: readonly components["schemas"]["FittingInput"][];
            /** @description The inner skin. */
            readonly innerSkin: components["schemas"]["SkinInput"];
            /** @description How readings become a map. */
            readonly map?: components["schemas"]["MapSettingsInput"];
            /** @description How the deck is opened. */
            readonly method?: components["schemas"]["OpeningMethodInput"];
            /** @description The outer skin. */
            readonly outerSkin: components["schemas"]["SkinInput"];
            /** @description The panel of deck. */
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
            readonly advice: readonly string[];
            /** @description With the pull of the skin between held edges, where the sag is large. */
            readonly clampSagMm: number;
            readonly clampStressMPa: number;
            /** @description Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges. */
            readonly isLargeDeflection: boolean;
            /** @description Plate bending alone. */
            readonly linearClampSagMm: number;
            readonly personSagMm: number;
            /** @description Plate bending alone: an upper bound where the sag is large. */
            readonly personStressMPa: number;
            readonly propsNeeded: boolean;
            /** @description The same for a person who kneels or steps on it; absent when no spacing between props makes that safe. */
            readonly propSpacingForPersonMm?: number;
            /** @description Spacing of props in both directions that keeps sag and stress within bounds under the clamp load. */
            readonly propSpacingMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly clampSagMm?: string;
                readonly clampStressMPa?: string;
                readonly linearClampSagMm?: string;
                readonly personSagMm?: string;
                readonly personStressMPa?: string;
                readonly propSpacingForPersonMm?: string;
                readonly propSpacingMm?: string;
                readonly usableStressMPa?: string;
            };
            readonly usableStressMPa: number;
        };
        /** @description An operation ended: with a result, or with a reason why there is none. */
        readonly OperationDone: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["OperationNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
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
            readonly id: string;
            /** @enum {string} */
            readonly status: "done" | "failed";
        };
        /** @description The members of an RFC 9457 problem document that outlast the request. */
        readonly OperationProblem: {
            readonly detail: string;
            readonly errorCount?: number;
            /** @description What must be put right, each with its place in the request that was accepted. */
            readonly errors?: readonly components["schemas"]["ShownProblem"][];
            readonly status: number;
            readonly title: string;
            readonly type: string;
        };
        readonly OperationResult: {
            readonly href: string;
            readonly mediaType: string;
        };
        /** @description An order to a supplier was written. */
        readonly OrderMade: {
            /** @description Thin: what it names is fetched from its address. */
            readonly data: components["schemas"]["OrderNamed"];
            /** @description The same at each attempt to deliver it. */
            readonly id: string;
            /** @description RFC 3339 instant at which it happened. */
            readonly timestamp: string;
            /** @enum {string} */
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
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            readonly id: string;
            readonly name: string;
        };
        /** @description What stands at the head of reports, job packs and change orders. */
        readonly OrganisationLetterhead: {
            readonly lines: readonly string[];
            readonly logo?: components["schemas"]["LogoLink"];
            readonly logoDescription?: string;
            /** @description The name of the organisation. */
            readonly name: string;
        };
        readonly OrganisationList: {
            readonly items: readonly components["schemas"]["Organisation"][];
            /** @description Give it as `cursor` to read on; absent on the last page. */
            readonly nextCursor?: string;
        };
        readonly OtherSkinInput: {
            /** @description Stiffness across. */
            readonly acrossNPerMm: number;
            /** @description Extensional stiffness along (modulus times thickness). */
            readonly alongNPerMm: number;
            /** @description Thickness. */
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
            /** @enum {string} */
            readonly kind: "glued-planks" | "screwed-planks" | "synthetic";
            /** @enum {string} */
            readonly then?: "back" | "not-included" | "paint" | "stays";
            readonly thicknessMm: number;
        };
        readonly OwnOffcutInput: {
            /**
             * @description Plain, or scored so that it bends; absent: plain.
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
            /** @enum {string} */
            readonly form?: "plain" | "scored";
            /** @description Code of a material of the same edition. */
            readonly material: string;
            /** @description Code of a hardener, when the pack holds one. */
            readonly part?: string;
            readonly quantity: number;
            readonly rollWidthMm?: number;
            readonly sheet?: components["schemas"]["SheetFormatInput"];
            readonly thicknessMm?: number;
            /** @enum {string} */
            readonly unit: "kg" | "l" | "m2" | "m" | "each" | "pair" | "roll" | "pack";
        };
        readonly PackCountInput: {
            /** @description Whole packs that can be sold now. */
            readonly packs: number;
        };
        readonly PackInput: {
            readonly content: components["schemas"]["PackContentInput"];
            readonly cutFee?: string;
            readonly hazardous: boolean;
            readonly massKg: number;
            readonly name: string;
            readonly oversize: boolean;
            /** @description The first is for one pack; ascending. */
            readonly prices: readonly components["schemas"]["PriceBreakInput"][];
            readonly shelfLifeMonths?: number;
            readonly sku: string;
            readonly stock?: number;
            readonly supplier: string;
        };
        /** @description The four states of one panel under the same loads. A comparison, never a design approval. */
        readonly PanelAnswer: {
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly cautions: readonly components["schemas"]["PanelCaution"][];
            /** @description Derivations of the keys asked for in `explain`. */
            readonly explained?: {
                readonly [key: string]: components["schemas"]["Figure"];
            };
            readonly fittings: readonly components["schemas"]["PanelCheckItem"][];
            readonly limits: readonly string[];
            readonly loads: readonly components["schemas"]["LoadResult"][];
            readonly opened: components["schemas"]["OpenSkinAnswer"];
            /** @description As built over repaired: at least 1 means that the repair gives back what there was. */
            readonly ratios: readonly components["schemas"]["Ratio"][];
            /** @description Every ratio that is below 1 by more than hands repeat, worst first. */
            readonly shortfalls: readonly string[];
            readonly states: readonly components["schemas"]["StateAnswer"][];
            /** @description Greatest estimated relative error of the series and polynomials. */
            readonly truncation: number;
            /** @enum {string} */
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
            readonly because: string;
            readonly code: string;
            /** @enum {string} */
            readonly severity: "caution" | "danger" | "warning";
            readonly source: string;
            readonly text: string;
        };
        /** @description A demand against a capacity. Failing is a result. */
        readonly PanelCheckItem: {
            /** @description Of the repaired panel: what the same check comes to on the deck as built. */
            readonly asBuilt?: components["schemas"]["BuiltCheck"];
            readonly capacity?: number;
            readonly code: string;
            readonly demand?: number;
            readonly fitting?: string;
            readonly governs: string;
            /** @description Names this check among all, such as `repaired:person:core-shear`; its derivation has the same key. */
            readonly key: string;
            readonly load?: string;
            readonly reason?: string;
            /** @description What would make it pass. */
            readonly remedy?: string;
            readonly source: string;
            /** @enum {string} */
            readonly state?: "as-built" | "as-found" | "opened" | "repaired";
            readonly title: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly capacity?: string;
                readonly demand?: string;
            };
            /** @description Demand over capacity. */
            readonly utilisation?: number;
            /** @enum {string} */
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
            /** @description Number of bolts. */
            readonly bolts: number;
            /** @description Clamp force of one bolt. */
            readonly clampForceN?: number;
            /** @description Name of the fitting. */
            readonly id: string;
            /**
             * @description Kind.
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
            /** @enum {string} */
            readonly accessBelow?: "lined" | "none" | "open";
            readonly camberRadiusMm?: number;
            readonly coreEndsMm?: number;
            /** @enum {string} */
            readonly edges?: "clamped" | "simply-supported";
            readonly holes?: readonly (readonly (readonly number[])[])[];
            readonly isInnerSkinAirtight?: boolean;
            /** @enum {string} */
            readonly lining?: "glued-vinyl" | "moulded-liner" | "none" | "screwed-panels" | "zipped-vinyl";
            readonly name?: string;
            /** @enum {string} */
            readonly outerSkinState?: "cracked" | "whole";
            readonly outline: readonly (readonly number[])[];
            readonly overlay?: components["schemas"]["OverlayRecord"];
            readonly supports?: readonly components["schemas"]["SupportLine"][];
            /** @enum {string} */
            readonly surface?: "bonded-mat" | "moulded-nonskid" | "painted-nonskid" | "planked" | "smooth-paint";
            readonly under?: readonly ("fuel-tank" | "hoses" | "insulation" | "lining" | "water-tank" | "wiring")[];
            readonly workingHeightMm?: number;
        };
        /** @description The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval. */
        readonly PanelSection: {
            readonly limits: readonly string[];
            readonly loads: readonly components["schemas"]["NamedValue"][];
            /** @description Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored. */
            readonly ratios: readonly components["schemas"]["NamedValue"][];
            /** @description By more than a laminate is repeated by hand. */
            readonly shortfalls: readonly string[];
            readonly sizeMm: readonly number[];
            readonly states: readonly components["schemas"]["PanelState"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly sizeMm?: readonly string[];
            };
            /** @enum {string} */
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
            readonly bendingXNmm: number;
            readonly bendingYNmm: number;
            /** @description Only those that linear plate theory can stand for; `note` says which are left out. */
            readonly deflections: readonly {
                readonly deflectionMm: number;
                readonly load: string;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly deflectionMm?: string;
                };
            }[];
            readonly governs?: string;
            readonly note?: string;
            readonly shearNPerMm: number;
            /** @enum {string} */
            readonly state: "as-built" | "as-found" | "opened" | "repaired";
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly bendingXNmm?: string;
                readonly bendingYNmm?: string;
                readonly shearNPerMm?: string;
            };
            readonly utilisation?: number;
        };
        readonly Parties: {
            readonly client?: string;
            readonly instructedBy?: string;
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
            readonly depreciation: components["schemas"]["MoneyJson"];
            readonly parts: components["schemas"]["MoneyJson"];
            readonly remaining: components["schemas"]["MoneyJson"];
        };
        readonly PatchLoadInput: {
            /** @description Force. */
            readonly forceN: number;
            /**
             * @description Kind. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "patch";
            /** @description Length fore and aft. */
            readonly lengthXMm: number | string;
            /** @description Name of the load. */
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
             * @description Kind. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "person";
            /** @description Name of the load. */
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
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly moveMm: readonly number[];
            readonly outline: readonly (readonly number[])[];
            readonly pieceId: string;
            /** @description The drawing turned anticlockwise about its origin, then moved. */
            readonly turnDeg: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly moveMm?: readonly string[];
            };
        };
        readonly PlaceSection: {
            readonly badAreaM2: number;
            readonly because: string;
            readonly place: string;
            readonly rung: string;
            readonly title: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly badAreaM2?: string;
            };
        };
        readonly PlanFigures: {
            readonly cutDepth?: components["schemas"]["Figure"];
            readonly cutLength: components["schemas"]["Figure"];
            readonly openedArea: components["schemas"]["Figure"];
            readonly retainedArea: components["schemas"]["Figure"];
            readonly splitLength: components["schemas"]["Figure"];
            readonly taperBandArea: components["schemas"]["Figure"];
            readonly taperWidth: components["schemas"]["Figure"];
            readonly undercutArea: components["schemas"]["Figure"];
        };
        /** @description Everything that stands on one card beside the pot. */
        readonly PlannedBatch: {
            readonly covers: readonly string[];
            /** @description Longest time after which the next pot may meet this one's edge. */
            readonly edgeOpenMin: number;
            readonly filler?: string;
            readonly fillerG: number;
            readonly forgottenPotPeakC: number;
            readonly hardenerG: number;
            /** @enum {string} */
            readonly limitedBy: "exotherm" | "piece" | "pot-life" | "pot-size" | "whole-step";
            readonly mixedG: number;
            readonly mixedMl: number;
            readonly number: number;
            readonly potLifeMin: number;
            readonly pumps?: string;
            readonly resinG: number;
            readonly spreadMin: number;
            /** @enum {string} */
            readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
            readonly stepIndex: number;
            readonly title: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly fillerG?: string;
                readonly forgottenPotPeakC?: string;
                readonly hardenerG?: string;
                readonly mixedG?: string;
                readonly mixedMl?: string;
                readonly resinG?: string;
            };
            readonly useWithinMin: number;
            readonly weigh: readonly components["schemas"]["Weighing"][];
        };
        readonly PlannedOpening: {
            /** @description What is cut out, corners rounded. */
            readonly area: components["schemas"]["Polygon"];
            readonly areaM2: number;
            readonly cornerRadiusMm: number;
            readonly cutDepthMm?: number;
            readonly cutLengthM: number;
            /** @enum {string} */
            readonly form: "hull" | "octagon" | "outline" | "rectangle";
            readonly innerSawLines: readonly (readonly (readonly number[])[])[];
            readonly joins: readonly components["schemas"]["Join"][];
            /** @description A, B, C ... from the largest. */
            readonly label: string;
            readonly marking: components["schemas"]["MarkingOut"];
            readonly reason: string;
            /** @description The straight lines to mark, meeting in sharp corners. */
            readonly sawLine: readonly (readonly number[])[];
            readonly skinPieces: readonly {
                readonly area: readonly components["schemas"]["Polygon"][];
                readonly areaM2: number;
                readonly label: string;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            }[];
            readonly splits: readonly (readonly (readonly number[])[])[];
            readonly taperBand: readonly components["schemas"]["Polygon"][];
            readonly taperBandAreaM2: number;
            /** @description Bad core under skin that stays. */
            readonly undercut: readonly components["schemas"]["Polygon"][];
            readonly undercutAreaM2: number;
            readonly undercutReachMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly cornerRadiusMm?: string;
                readonly cutDepthMm?: string;
                readonly cutLengthM?: string;
                readonly taperBandAreaM2?: string;
                readonly undercutAreaM2?: string;
                readonly undercutReachMm?: string;
            };
            /** @description Ids of the zones it opens. */
            readonly zones: readonly string[];
        };
        readonly PlannedTask: {
            readonly after: readonly string[];
            readonly code: string;
            /** @description Share of the simulated calendars in which it decided the finish. */
            readonly criticality: number;
            readonly endAt: string;
            readonly endDay: number;
            /** @enum {string} */
            readonly gate: "coating" | "dry-deck" | "none" | "resin";
            /** @description How many work on it at once. */
            readonly hands: number;
            /** @description On the chain that decides the finish, by mean values. */
            readonly isCritical: boolean;
            readonly isHoldPoint: boolean;
            readonly labourH: number;
            /** @description Code of the operation it is a cycle of, or its own. */
            readonly operation: string;
            /** @enum {string} */
            readonly phase: "bond" | "close" | "finish" | "hand-over" | "open" | "prepare" | "refit" | "survey";
            /** @description When its cure, drying or hold is over and successors may start. */
            readonly readyAt: string;
            /** @enum {string} */
            readonly skill: "finisher" | "general" | "laminator" | "rigger";
            readonly startAt: string;
            /** @description Days since the start date began, local. */
            readonly startDay: number;
            readonly startsBecause: string;
            readonly title: string;
            readonly waitH: number;
            /** @enum {string} */
            readonly waitKind: "cure" | "drying" | "elapsed" | "hold" | "none";
        };
        readonly Plug: {
            readonly at: readonly number[];
            /** @enum {string} */
            readonly condition: "damp-sound" | "debonded-dry" | "dry-sound" | "rotten" | "wet-bonded";
            readonly coreMm?: number;
            readonly innerSkinMm?: number;
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /** @enum {string} */
            readonly kind: "plug";
            readonly moisturePercent?: number;
            readonly outerSkinMm?: number;
        };
        readonly PlugInput: {
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
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
             * @description discriminator enum property added by openapi-typescript
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
            readonly areaM2: number;
            readonly glassKg: number;
            readonly material: string;
            readonly materialName: string;
            readonly order: number;
            readonly orientationDeg: number;
            readonly outline: readonly components["schemas"]["Area"][];
            readonly resinKg: number;
            readonly rollLengthM: number;
            readonly rollWidthMm: number;
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly glassKg?: string;
                readonly resinKg?: string;
                readonly rollLengthM?: string;
                readonly rollWidthMm?: string;
                readonly thicknessMm?: string;
                readonly widthMm?: string;
            };
            readonly widthMm?: number;
        };
        readonly PlyToWetInput: {
            /** @description Dry fabric. */
            readonly arealMassGPerM2: number | string;
            /** @description Area. */
            readonly areaM2: number | string;
            /** @description Fibre mass fraction of the laid ply. */
            readonly fibreMassFraction: number;
            /** @description Label of the piece. */
            readonly label?: string;
        };
        /** @description `outer` runs from x towards y (positive signed area); each hole runs the other way. */
        readonly Polygon: {
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly outer: readonly (readonly number[])[];
        };
        readonly PotLifeInput: {
            readonly massG: number;
            readonly minutes: components["schemas"]["DatumInput"];
            readonly temperatureC: number;
        };
        readonly PressedCamberInput: {
            /** @description Modulus. */
            readonly modulusMPa: number;
            /** @description Piece length. */
            readonly pieceLengthMm: number | string;
            /** @description Radius. */
            readonly radiusMm: number | string;
            /** @description Thickness. */
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
        /** @description One way to press, with what it can do here and what speaks against it. */
        readonly PressOption: {
            readonly availableKPa?: number;
            readonly evenness: string;
            /** @enum {string} */
            readonly method: "battens" | "jacks" | "vacuum" | "weights";
            /** @description Load that the inner skin must carry while it cures. */
            readonly onInnerSkinKPa: number;
            readonly quantities: readonly components["schemas"]["PressQuantity"][];
            readonly reasons: readonly string[];
            readonly refusals: readonly string[];
            readonly restsOn: string;
            /** @description Span over which it carries that; the clear span where nothing else holds it. */
            readonly skinSpanMm?: number;
            /** @description One after another, where a crew cannot press the whole opening at once. */
            readonly turns?: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly availableKPa?: string;
                readonly onInnerSkinKPa?: string;
                readonly skinSpanMm?: string;
            };
            readonly utilisation?: number;
            /** @enum {string} */
            readonly verdict: "fails" | "not-established" | "passes";
        };
        readonly PressQuantity: {
            readonly code: string;
            readonly name: string;
            readonly note?: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly value?: string;
            };
            readonly value: number;
        };
        readonly PressureLoadInput: {
            /**
             * @description Kind. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "pressure";
            /** @description Name of the load. */
            readonly name?: string;
            /** @description Pressure. */
            readonly pressureKPa: number;
        };
        readonly PreviewedOpening: {
            readonly area: components["schemas"]["Area"];
            readonly areaM2: number;
            /** @description Absent when no depth is safe; a finding says why. */
            readonly cutDepthMm?: number;
            readonly cutLengthM: number;
            readonly label: string;
            readonly reason: string;
            /** @description Corners of the saw line before rounding, measured from the datum corner of the panel. */
            readonly sawLine: readonly (readonly number[])[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly cutDepthMm?: string;
                readonly cutLengthM?: string;
            };
        };
        /** @description Of the repaired panel beside the deck as built. */
        readonly PreviewPanel: {
            readonly sentence: string;
            /** @description Every measure of which the repair gives back less than there was, worst first. */
            readonly shortfalls: readonly string[];
            /** @enum {string} */
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
            readonly calendarDays: components["schemas"]["Range"];
            readonly cutLengthM: number;
            /** @description Absent where the deck stays closed. */
            readonly damagedAreaM2?: components["schemas"]["Range"];
            readonly labourH: components["schemas"]["Range"];
            /** @description Sum of the labour lines: each at its likely hours. */
            readonly labourLikelyH: number;
            readonly mixedResinL: number;
            readonly openedAreaM2: number;
            readonly plyCount: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly cutLengthM?: string;
                readonly damagedAreaM2?: {
                    readonly p10: string;
                    readonly p50: string;
                    readonly p90: string;
                };
                readonly mixedResinL?: string;
                readonly openedAreaM2?: string;
            };
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly PriceBreakInput: {
            readonly fromPacks: number;
            readonly price: string;
        };
        /** @description What a percentage did to a price list of a draft. */
        readonly PriceChange: {
            /** @description Those of them whose prices differ now; a small percentage can be rounded away. */
            readonly changed: readonly components["schemas"]["ChangedPack"][];
            /** @description How many packs the choice met. */
            readonly chosenCount: number;
            readonly currency: string;
            /** @description Code of the draft. */
            readonly edition: string;
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
            readonly risk?: components["schemas"]["CostRisk"];
            readonly rollUp: components["schemas"]["CostRollUp"];
        };
        readonly PriceListInput: {
            readonly code: string;
            /** @enum {string} */
            readonly currency: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
            /** @description True for prices of an invented scenario. */
            readonly invented: boolean;
            readonly name: string;
            readonly packs: readonly components["schemas"]["PackInput"][];
            readonly pricesIncludeTax: boolean;
            readonly suppliers: readonly components["schemas"]["SupplierInput"][];
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo: string;
        };
        readonly PricingChoice: {
            readonly authorisationPercent?: number;
            readonly contingencyPercent?: number;
            readonly deductible?: string;
            readonly depreciation?: components["schemas"]["DepreciationTerms"];
            readonly foundOverRecorded?: readonly number[];
            /** @enum {string} */
            readonly goods?: "as-bought" | "as-used";
            readonly labourRates?: string;
            readonly priceList?: string;
            readonly samples?: number;
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
            /** @description Of no effect: the figures are integrated over a fixed lattice. */
            readonly samples?: number;
            /** @description Of no effect: the figures are integrated over a fixed lattice. */
            readonly seed?: number;
        };
        readonly ProbabilityContour: {
            readonly areaM2: number;
            /** @description Where core is bad with at least this probability. */
            readonly areas: readonly components["schemas"]["Polygon"][];
            readonly probability: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
            };
        };
        readonly ProbabilityMap: {
            readonly cells: readonly {
                readonly at: readonly number[];
                readonly chance: number;
            }[];
            /** @description How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
            readonly hammer?: {
                readonly falseAlarmShare: number;
                /** @description How likely it is that its errors hang together in patches. */
                readonly hangingTogether: number;
                readonly missedShare: number;
            };
            /** @description Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays. */
            readonly meter?: {
                readonly overBadShare: number;
                readonly overSoundShare: number;
                readonly sdShare: number;
            };
            /** @description Distance over which the readings suggest that the damage hangs together. */
            readonly rangeMm: number;
            readonly stepMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly rangeMm?: string;
                readonly stepMm?: string;
            };
        };
        /** @description Something the caller can put right. Words are made from the code, in `problem-words.ts` only. */
        readonly Problem: {
            /** @description JSON Pointer (RFC 6901) to the offending field; '' is the whole document. */
            readonly at: string;
            /** @enum {string} */
            readonly code: "breaks-out-of-order" | "clock-change" | "contradiction" | "duplicate" | "duplicate-name" | "forecast-gap" | "forecast-order" | "hardener-without-resin" | "malformed-json" | "method-unfit" | "missing" | "network-cycle" | "no-method-fits" | "no-time-zone" | "not-a-decimal" | "not-a-flag" | "not-a-list" | "not-a-number" | "not-a-point" | "not-a-quantity" | "not-an-object" | "not-in-form" | "not-one-of" | "not-supported" | "not-text" | "nothing-left" | "nothing-to-repair" | "other-currency" | "out-of-range" | "outline-crosses-itself" | "outline-without-area" | "outside-panel" | "reserved-name" | "resin-too-cold" | "text-length" | "too-deep" | "too-few" | "too-large-for-stock" | "too-many" | "unit-mismatch" | "unknown-code" | "unknown-field" | "unusable-text" | "wrong-unit" | "wrong-zone";
            readonly facts: {
                readonly [key: string]: boolean | string | number;
            };
        };
        /** @description RFC 9457 problem document; names all faults at once. */
        readonly ProblemDocument: {
            readonly detail: string;
            /** @description How many faults there are in all; errors shows the first 100. */
            readonly errorCount?: number;
            readonly errors?: readonly components["schemas"]["ProblemEntry"][];
            /** Format: uri-reference */
            readonly instance?: string;
            readonly requestId: string;
            readonly status: number;
            readonly title: string;
            /**
             * Format: uri-reference
             * @enum {string}
             */
            readonly type: "/problems/bad-request" | "/problems/unauthenticated" | "/problems/forbidden" | "/problems/not-found" | "/problems/method-not-allowed" | "/problems/not-acceptable" | "/problems/request-timeout" | "/problems/conflict" | "/problems/precondition-failed" | "/problems/content-too-large" | "/problems/unsupported-media-type" | "/problems/unprocessable" | "/problems/precondition-required" | "/problems/too-many-requests" | "/problems/headers-too-large" | "/problems/internal" | "/problems/unavailable";
        };
        readonly ProblemEntry: {
            /** @description Stable; see /problems. */
            readonly code: string;
            /** @description Heading of the column of a sheet. */
            readonly column?: string;
            /** @description What is wrong, and what would be right. */
            readonly detail: string;
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
            /** @description Row of a sheet, as a spreadsheet counts them: the headings are row 1. Empty lines do not count. */
            readonly row?: number;
            readonly title: string;
        };
        readonly ProcessSection: {
            readonly batches: readonly components["schemas"]["BatchCard"][];
            /** @description Absent where nothing is bedded that would have to be pressed. */
            readonly bondPressure?: components["schemas"]["BondPressureSection"];
            readonly calendar: components["schemas"]["CalendarSection"];
            readonly cure: readonly components["schemas"]["CureMilestones"][];
            readonly demands: readonly components["schemas"]["ResinStep"][];
            /** @description What stands against these pots at this temperature with this crew. */
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            readonly gates: readonly {
                readonly requires: readonly string[];
                readonly step: string;
            }[];
            readonly resin: {
                readonly code: string;
                readonly hardener: string;
                readonly hardenerName: string;
                readonly name: string;
                readonly why: string;
            };
            /** @description When each step may start; only with a forecast. Without one the gates say what to require. */
            readonly weather?: components["schemas"]["WeatherSection"];
        };
        readonly ProvenanceStamp: {
            readonly catalogueHash: string;
            readonly edition: string;
            readonly engineVersion: string;
            readonly labourRates: string;
            readonly priceList: string;
        };
        /** @description A quantity that nobody has measured yet, with the price that the measured one will have. */
        readonly ProvisionalSum: {
            readonly amount: components["schemas"]["MoneyJson"];
            readonly basis: string;
            readonly quantity: number;
            readonly unit: string;
            readonly unitPrice: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
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
            readonly code: string;
            /** @description RFC 3339 instant from which it counts; absent when that is at once. */
            readonly effectiveAt?: string;
            /** @description Path of the edition. */
            readonly href: string;
        };
        /** @description A key that stands in a page for everybody to read: it makes estimates and lists none. */
        readonly PublishableKey: {
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description The edition it estimates with; whichever is current when absent. */
            readonly edition?: string;
            /** @description From when on the key opens nothing; it never ends by itself when absent. */
            readonly expiresAt?: string;
            readonly id: string;
            readonly key: string;
            /** @description To the minute; absent for a key that was never used. */
            readonly lastUsedAt?: string;
            readonly name: string;
            readonly organisationId: string;
            /** @description Origins of the pages that may use it. */
            readonly origins: readonly string[];
            /** @description Estimates a day, counted from midnight UTC. */
            readonly perDay: number;
            /** @description Requests a minute of all visitors together. */
            readonly perMinute: number;
            /** @description Requests a minute from one address. */
            readonly perMinutePerVisitor: number;
            readonly revokedAt?: string;
        };
        readonly PublishableKeyList: {
            readonly items: readonly components["schemas"]["PublishableKey"][];
            /** @description Give it as `cursor` to read on; absent on the last page. */
            readonly nextCursor?: string;
        };
        /** @description Three points of an uncertain number. */
        readonly Quantiles: {
            readonly p10: number;
            readonly p50: number;
            readonly p90: number;
        };
        readonly QuantitiesRead: {
            readonly quantities: readonly components["schemas"]["QuantityRead"][];
        };
        readonly QuantitiesRequest: {
            readonly quantities: readonly components["schemas"]["TypedQuantityInput"][];
        };
        readonly QuantityRead: {
            readonly text: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly value?: string;
            };
            /** @description In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
            readonly value: number;
        };
        /** @description Three points of one uncertain number. */
        readonly Range: {
            readonly p10: number;
            readonly p50: number;
            readonly p90: number;
        };
        readonly RatePerHourInput: {
            readonly finisher: string;
            readonly general: string;
            readonly laminator: string;
            readonly rigger: string;
        };
        readonly Ratio: {
            /** @description Share of what is allowed that the deck as built used, and that the repair uses. */
            readonly asBuiltUtilisation: number;
            readonly code: string;
            readonly key: string;
            readonly load?: string;
            readonly ratio: number;
            readonly repairedUtilisation: number;
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
            readonly arealMassGPerM2: components["schemas"]["DatumInput"];
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            /** @enum {string} */
            readonly fabric: "mat" | "cloth" | "woven-roving" | "biaxial" | "biaxial-mat" | "unidirectional" | "tape";
            /** @enum {string} */
            readonly fibre: "e-glass";
            readonly fibreMassFraction: components["schemas"]["DatumInput"];
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            /** @enum {string} */
            readonly kind: "reinforcement";
            /** @description Bottom first. */
            readonly layers: readonly components["schemas"]["FabricLayerInput"][];
            /** @description Generic specification in trade words. */
            readonly name: string;
            /** @description 0 not at all, 3 strongly. */
            readonly printThrough: number;
            readonly rollLengthsM: readonly number[];
            readonly rollWidthsMm: readonly number[];
            readonly suitsAgainstCore: boolean;
            readonly suitsResins: readonly ("epoxy" | "polyester" | "vinylester")[];
        };
        readonly ReinspectionPoint: {
            readonly accept: string;
            readonly before: string;
            readonly by: string;
            readonly look: string;
            readonly source: string;
            readonly when: string;
        };
        readonly RelaidPlies: {
            readonly assumptions: readonly components["schemas"]["LaminateAssumption"][];
            readonly consequences: readonly string[];
            readonly glassKg: components["schemas"]["Figure"];
            readonly largestPlyM2: number;
            readonly notes: readonly string[];
            /** @enum {string} */
            readonly order: "largest-first" | "smallest-first";
            readonly plies: readonly components["schemas"]["LaidOutPly"][];
            readonly resinKg: components["schemas"]["Figure"];
            readonly room: components["schemas"]["RoomCheck"];
            readonly stages: readonly components["schemas"]["Stage"][];
            readonly taperAreaM2: number;
            readonly taperWidthMm: components["schemas"]["Figure"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly largestPlyM2?: string;
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
            readonly authorisedH: number;
            /** @description The items less the credit. */
            readonly difference: components["schemas"]["MoneyJson"];
            readonly expectedH: number;
            readonly isWithinAuthorisation: boolean;
            readonly items: readonly components["schemas"]["ReMeasuredItem"][];
            /** @description Sum of the items. */
            readonly measured: components["schemas"]["MoneyJson"];
            /** @description The provisional sums of the agreed price: taken off, because what they stood for has been measured. */
            readonly provisionalCredited: components["schemas"]["MoneyJson"];
        };
        readonly ReMeasuredItem: {
            /** @description What is more or less of it, at the agreed rate. */
            readonly amount: components["schemas"]["MoneyJson"];
            readonly code: string;
            readonly quantityAgreed: string;
            readonly quantityFound: string;
            readonly rate: components["schemas"]["MoneyJson"];
            readonly unit: string;
            readonly what: string;
        };
        readonly RenewalInput: {
            /** @description Hours for which the old key still opens what it opened, so that programs can change over. */
            readonly overlapHours: number;
        };
        /** @description The estimate computed again from its own record and edition. */
        readonly Replay: {
            readonly engineVersionNow: string;
            /** @description True when every digit of the document came out again. */
            readonly isSame: boolean;
            /** @description False when the edition's content is no longer the one that was used. */
            readonly isSameCatalogue: boolean;
            readonly madeWith: {
                readonly catalogueHash: string;
                readonly edition: string;
                readonly engineVersion: string;
            };
            readonly totalNow: components["schemas"]["MoneyJson"];
            readonly totalThen: components["schemas"]["MoneyJson"];
        };
        readonly Requirement: {
            readonly cite: components["schemas"]["Cite"];
            /** @enum {string} */
            readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
            readonly limit: number;
            readonly text: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
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
            /** @description People. */
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
            /** @description Waste as a share of net; absent: 0.18. */
            readonly wasteFraction?: number;
        };
        readonly ResinDemand: {
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly hardener: string;
            readonly mixedDensityGPerCm3: number;
            readonly partsByMass: number;
            readonly partsByVolume: number;
            readonly resin: string;
            readonly steps: readonly components["schemas"]["StepDemand"][];
            readonly totals: {
                readonly fillers: readonly {
                    readonly filler: string;
                    readonly massG: number;
                    /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                    readonly us?: {
                        readonly massG?: string;
                    };
                }[];
                readonly hardenerG: number;
                readonly netL: number;
                readonly resinG: number;
                readonly totalL: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly hardenerG?: string;
                    readonly netL?: string;
                    readonly resinG?: string;
                    readonly totalL?: string;
                    readonly wasteL?: string;
                };
                readonly wasteL: number;
            };
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly mixedDensityGPerCm3?: string;
            };
        };
        readonly ResinStep: {
            readonly filler?: string;
            readonly fillerKg?: number;
            readonly netL: number;
            readonly step: string;
            readonly title: string;
            readonly totalKg: number;
            readonly totalL: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly fillerKg?: string;
                readonly netL?: string;
                readonly totalKg?: string;
                readonly totalL?: string;
                readonly wasteL?: string;
            };
            readonly wasteL: number;
        };
        readonly ResinStepInput: {
            /** @description Area. */
            readonly areaM2?: number | string;
            /** @description Number of coats. */
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
            /** @description Number of holes. */
            readonly holes?: number;
            /** @description Length of a section: the edge of an undercut, the saw cut. */
            readonly lengthM?: number;
            /** @description Resin to the area. */
            readonly litresPerM2?: number;
            /** @description Minutes that one person takes for one unit of the step. */
            readonly minutesPerUnit?: number;
            /** @description Share of the scores that fills; absent: 1. */
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
            /** @description Width. */
            readonly widthMm?: number | string;
        };
        readonly ResinSystemInput: {
            readonly activationEnergyKJPerMol: components["schemas"]["DatumInput"];
            /** @enum {string} */
            readonly chemistry: "epoxy" | "polyester" | "vinylester";
            /** @description Stable code, unique in the edition. */
            readonly code: string;
            readonly curedDensityGPerCm3: components["schemas"]["DatumInput"];
            readonly densityGPerCm3: components["schemas"]["DatumInput"];
            readonly hardeners: readonly components["schemas"]["HardenerInput"][];
            /** @description Hazard statements (GHS), such as H226. */
            readonly hazards?: readonly string[];
            readonly heatOfReactionJPerG: components["schemas"]["DatumInput"];
            /** @enum {string} */
            readonly kind: "resin";
            /** @description Generic specification in trade words. */
            readonly name: string;
            readonly poissonRatio: components["schemas"]["DatumInput"];
            readonly specificHeatJPerGK: components["schemas"]["DatumInput"];
            readonly youngModulusMPa: components["schemas"]["DatumInput"];
        };
        readonly Response: {
            readonly deflectionAt: readonly number[];
            /** @description With the pull of a sagging skin between held edges, where the inner skin is alone and slack. */
            readonly deflectionMm: number;
            readonly greatestMomentXN: number;
            readonly greatestMomentYN: number;
            readonly greatestShearNPerMm: number;
            /** @description By plate bending alone. */
            readonly linearDeflectionMm: number;
            readonly load: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly deflectionMm?: string;
                readonly greatestMomentXN?: string;
                readonly greatestMomentYN?: string;
                readonly greatestShearNPerMm?: string;
                readonly linearDeflectionMm?: string;
            };
            /** @enum {string} */
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
            readonly items: readonly components["schemas"]["EstimateSummary"][];
        };
        readonly RevisionMark: {
            /** @description 0 for the first. */
            readonly number: number;
            readonly reason?: string;
            /** @description The first estimate of this line of revisions. */
            readonly rootId: string;
        };
        readonly RevisionNamed: {
            /** @description Code of the edition it was made with. */
            readonly edition: string;
            /** @description Path of the estimate. */
            readonly href: string;
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
            /** @description A multiple of ten; absent: 10000. */
            readonly samples?: number;
            /** @description The same seed gives the same range; absent: 1. */
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
            /** @description Width of the roll. */
            readonly widthMm: number | string;
        };
        readonly RollPiece: {
            readonly lengthMm: number;
            readonly outline: readonly components["schemas"]["Polygon"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly lengthMm?: string;
                readonly usedWidthMm?: string;
                readonly widthMm?: string;
            };
            /** @description What it takes of the width of the roll. */
            readonly usedWidthMm: number;
            readonly widthMm: number;
        };
        /** @description A strip of cloth: along the roll and across it. */
        readonly RollStrip: {
            readonly lengthMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly lengthMm?: string;
                readonly widthMm?: string;
            };
            readonly widthMm: number;
        };
        readonly RoomCheck: {
            /** @enum {string} */
            readonly check: "taper-room";
            readonly outsideM2: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly outsideM2?: string;
            };
            /** @enum {string} */
            readonly verdict: "fails" | "not-established" | "passes";
            readonly words: string;
        };
        readonly RungNamed: {
            readonly because: string;
            readonly rung: string;
            readonly title: string;
        };
        readonly RungReason: {
            readonly code: string;
            readonly limit?: number;
            readonly source: string;
            readonly text: string;
            readonly unit?: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly limit?: string;
                readonly value?: string;
            };
            readonly value?: number;
            readonly wouldFit?: string;
        };
        /** @description One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone. */
        readonly RungSection: {
            readonly calendarDays?: components["schemas"]["Range"];
            readonly conditions: readonly components["schemas"]["RungReason"][];
            readonly deciding: components["schemas"]["RungReason"];
            /** @description True where openings were taken as boxes round the places; the planned rung is worked out in full. */
            readonly isRough: boolean;
            /** @description Absent for a rung that is refused: it is not priced. */
            readonly labourH?: components["schemas"]["Range"];
            readonly leavesUndone: readonly string[];
            /** @description Why a rung that fits could not be worked out, where it could not. */
            readonly notWorkedOut?: string;
            readonly priceRange?: components["schemas"]["EstimateMoneyRange"];
            readonly rung: string;
            readonly stages: readonly string[];
            readonly title: string;
            /** @enum {string} */
            readonly verdict: "fit" | "fit-with-conditions" | "unfit";
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
            readonly from: readonly number[];
            /** @description Between the corner arcs: the straight run of the saw. */
            readonly straightMm: number;
            readonly to: readonly number[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly straightMm?: string;
            };
        };
        readonly Schedule: {
            readonly checks: readonly components["schemas"]["SkinCheck"][];
            readonly glassGPerM2: components["schemas"]["Figure"];
            readonly governs: string;
            readonly laminate: {
                readonly aNPerMm: readonly number[];
                readonly bN: readonly number[];
                readonly dNmm: readonly number[];
                readonly flexural: components["schemas"]["EngineeringConstants"];
                readonly inPlane: {
                    readonly free: components["schemas"]["EngineeringConstants"];
                    readonly heldFlat: components["schemas"]["EngineeringConstants"];
                };
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly aNPerMm?: readonly string[];
                    readonly bN?: readonly string[];
                    readonly dNmm?: readonly string[];
                };
            };
            /** @description Why it is not the first. */
            readonly lost?: {
                /** @enum {string} */
                readonly by: "mass" | "nothing" | "plies" | "price";
                readonly difference: number;
                readonly words: string;
            };
            /** @description From the core outwards. */
            readonly plies: readonly components["schemas"]["SchedulePly"][];
            readonly pricePerM2?: number;
            /** @description Above the old surface when positive. */
            readonly proudMm: number;
            readonly rank: number;
            readonly resinGPerM2: components["schemas"]["Figure"];
            readonly stiffnessAcrossNPerMm: components["schemas"]["Figure"];
            readonly stiffnessAlongNPerMm: components["schemas"]["Figure"];
            readonly thicknessMm: components["schemas"]["Figure"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly proudMm?: string;
            };
        };
        readonly ScheduleLimitsInput: {
            /** @description Most kinds of fabric in one skin. Absent: 3 (fewer rolls, fewer mistakes). */
            readonly mostKinds?: number;
            /** @description Most plies. */
            readonly mostPlies?: number;
            /** @description Smallest step between ply edges, on average. Absent: 5 mm (smaller steps cannot be laid true by hand). */
            readonly smallestStepMm?: number | string;
            /** @description Taper width over skin thickness; absent: 12, and on thin skins as much as makes it 20 mm wide. */
            readonly taperRatio?: number;
            /** @description How much the outer ply may print through, 0 to 3. Absent: 1 (the pattern of roving shows through gloss paint). */
            readonly worstPrintThrough?: number;
        };
        readonly SchedulePly: {
            readonly fibreMassFraction: number;
            readonly glassGPerM2: number;
            readonly material: string;
            readonly name: string;
            readonly resinGPerM2: number;
            readonly thicknessMm: number;
            readonly turnDeg: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly glassGPerM2?: string;
                readonly resinGPerM2?: string;
                readonly thicknessMm?: string;
            };
        };
        readonly ScheduleSearch: {
            readonly assumptions: readonly components["schemas"]["LaminateAssumption"][];
            /** @description As many as were wanted or can be made, best first. */
            readonly best: readonly components["schemas"]["Schedule"][];
            readonly effort: {
                /** @description Branches cut off because nothing below them could be better, fit, or reach the target. */
                readonly cut: {
                    readonly dearer: number;
                    readonly outOfReach: number;
                    readonly tooManyKinds: number;
                    readonly tooThick: number;
                };
                /** @description Stacks looked at one by one. */
                readonly examined: number;
                /** @enum {boolean} */
                readonly isProvenBest: true;
                /** @description Every choice of up to the most plies from the options, order apart. */
                readonly space: number;
            };
            readonly leftOut: readonly components["schemas"]["LeftOut"][];
            readonly limits: readonly string[];
            readonly method: string;
            readonly missing?: components["schemas"]["LaminateMissing"];
            /** @description As asked, or as many as have room for their steps in the taper. */
            readonly mostPlies: number;
            readonly oldSkin: components["schemas"]["OldSkinReport"];
            /** @enum {string} */
            readonly outcome: "cannot-be-done" | "found";
            /** @enum {string} */
            readonly rankedBy: "mass" | "price";
        };
        readonly Scope: {
            /** @description Probability contours when the extent came from readings. */
            readonly contours: readonly {
                readonly areaM2: number;
                readonly areas: readonly components["schemas"]["Area"][];
                readonly probability: number;
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            }[];
            /** @description Of the opening, where core comes out; and sound core that is left where it is. */
            readonly coreOutAreaM2: number;
            readonly coreStaysAreaM2: number;
            readonly cutLengthM: number;
            readonly damagedAreaM2: components["schemas"]["Range"];
            /** @enum {string} */
            readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
            readonly excluded: readonly string[];
            readonly findings: readonly components["schemas"]["EstimateFinding"][];
            readonly fittings: readonly components["schemas"]["FittingScope"][];
            readonly included: readonly string[];
            readonly method: readonly {
                readonly choice: string;
                readonly reason: string;
                readonly value: string;
            }[];
            /** @description Where to tap, meter or plug next, and whether that pays; when the extent came from readings. */
            readonly nextReadings?: components["schemas"]["NextReadingsSection"];
            readonly openedAreaM2: number;
            readonly openings: readonly components["schemas"]["Opening"][];
            readonly panel: {
                readonly areaM2: number;
                readonly holes: readonly (readonly (readonly number[])[])[];
                readonly name: string;
                readonly outline: readonly (readonly number[])[];
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            };
            readonly retainedAreaM2: number;
            readonly taperBandM2: number;
            readonly undercutAreaM2: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly coreOutAreaM2?: string;
                readonly coreStaysAreaM2?: string;
                readonly cutLengthM?: string;
                readonly damagedAreaM2?: {
                    readonly p10: string;
                    readonly p50: string;
                    readonly p90: string;
                };
                readonly openedAreaM2?: string;
                readonly retainedAreaM2?: string;
                readonly taperBandM2?: string;
                readonly undercutAreaM2?: string;
            };
            readonly zones: readonly {
                readonly areaM2: number;
                readonly condition: string;
                readonly id: string;
                readonly outline: readonly (readonly number[])[];
                /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
                readonly us?: {
                    readonly areaM2?: string;
                };
            }[];
        };
        readonly SecondBest: {
            readonly coverage: readonly components["schemas"]["Coverage"][];
            readonly difference: components["schemas"]["MoneyJson"];
            /**
             * @description What makes it another kind of order.
             * @enum {string}
             */
            readonly kind: "other-packs" | "other-suppliers";
            readonly leftovers: readonly components["schemas"]["Leftover"][];
            readonly lines: readonly components["schemas"]["BasketLine"][];
            readonly matched: readonly components["schemas"]["MatchedResin"][];
            readonly orders: readonly components["schemas"]["SupplierOrder"][];
            readonly substitutions: readonly components["schemas"]["Substitution"][];
            readonly total: components["schemas"]["MoneyJson"];
        };
        readonly SecretRenewalInput: {
            /** @description Hours for which events are signed with the old secret as well, so that receivers can change over. */
            readonly overlapHours: number;
        };
        readonly SectionResult: {
            readonly bendingXNmm: number;
            readonly bendingYNmm: number;
            readonly isThinSkinFair: boolean;
            readonly leverMm: number;
            readonly membraneXNPerMm: number;
            readonly membraneYNPerMm: number;
            readonly shearNPerMm: number;
            /** @description How far the thin-skin engineering form is from the exact section. */
            readonly thinSkinError: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly bendingXNmm?: string;
                readonly bendingYNmm?: string;
                readonly leverMm?: string;
                readonly membraneXNPerMm?: string;
                readonly membraneYNPerMm?: string;
                readonly shearNPerMm?: string;
            };
        };
        readonly SectionTotal: {
            readonly amount: components["schemas"]["MoneyJson"];
            readonly lineCount: number;
            /** @enum {string} */
            readonly section: "consumables" | "disposal" | "freight" | "hire" | "labour" | "materials" | "safety" | "subcontract" | "yard";
            readonly title: string;
        };
        readonly Share: {
            /** @description The chandler's key. */
            readonly keyId: string;
            readonly keyName: string;
            /** @description RFC 3339 instant. */
            readonly since: string;
        };
        readonly ShareList: {
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
            readonly lengthMm: number;
            readonly widthMm: number;
        };
        readonly SheetLayout: {
            readonly cost: number;
            /** @description Outlines are set on a grid of this step. */
            readonly gridStepMm: number;
            /** @description No layout can cost less: the cheapest stock per area, and the sheets that the pieces need at the least. */
            readonly leastCost: number;
            readonly pieceAreaM2: number;
            readonly sheetAreaM2: number;
            readonly sheets: readonly components["schemas"]["CutSheet"][];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly gridStepMm?: string;
                readonly pieceAreaM2?: string;
                readonly sheetAreaM2?: string;
            };
            readonly utilisation: number;
            /** @description Thousands of pairs looked at. */
            readonly workUnits: number;
        };
        readonly SheetOnSaleInput: {
            /** @description How many there are. */
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
            readonly piecesMm2: number;
            /** @description Whole rectangles left because sheets come whole; some are worth keeping. */
            readonly roundingMm2: number;
            /** @description Odd bits between the pieces. */
            readonly scrapsMm2: number;
            readonly sheetMm2: number;
            /** @description Unused strip along the edges. */
            readonly trimMm2: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly kerfMm2?: string;
                readonly piecesMm2?: string;
                readonly roundingMm2?: string;
                readonly scrapsMm2?: string;
                readonly sheetMm2?: string;
                readonly trimMm2?: string;
            };
        };
        /** @description One fault as a caller sees it. */
        readonly ShownProblem: {
            readonly code: string;
            /** @description Heading of the column. */
            readonly column?: string;
            readonly detail: string;
            readonly facts: {
                readonly [key: string]: boolean | string | number;
            };
            readonly header?: string;
            readonly parameter?: string;
            readonly pointer?: string;
            /** @description Of a sheet, as a spreadsheet counts them: the headings are row 1. */
            readonly row?: number;
            readonly title: string;
        };
        readonly SkinCheck: {
            readonly capacity: number;
            readonly check: string;
            readonly cite: components["schemas"]["Cite"];
            readonly demand: number;
            readonly title: string;
            readonly toPass?: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly capacity?: string;
                readonly demand?: string;
            };
            readonly utilisation: number;
            /** @enum {string} */
            readonly verdict: "fails" | "passes";
        };
        readonly SkinInput: {
            /** @description Known plies, from the face of the skin inwards. */
            readonly plies?: readonly components["schemas"]["KnownPlyInput"][];
            /**
             * @description Thickness of the skin: mm, or text with a unit.
             * @example 1/8 in
             */
            readonly thicknessMm: number | string;
        };
        readonly SkinRecord: {
            readonly plies?: readonly {
                readonly material: string;
            }[];
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
             * @description Thickness.
             * @example 3
             */
            readonly thicknessMm: number | string;
        };
        /** @description What is too narrow or too far under the lip for core, and is filled solid from skin to skin instead. */
        readonly SolidFill: {
            readonly areaM2: number;
            /** @enum {string} */
            readonly because: "asked" | "narrow" | "no-way-in" | "shallow-lip";
            readonly depthMm: number;
            readonly holes: readonly (readonly (readonly number[])[])[];
            readonly isUnderLip: boolean;
            /** @enum {string} */
            readonly kind: "high-density-strip" | "paste" | "solid-laminate";
            /** @description As paste: more than half a litre a metre is filled in two lifts, for its heat. */
            readonly lifts: number;
            readonly opening: string;
            readonly outline: readonly (readonly number[])[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly areaM2?: string;
                readonly depthMm?: string;
                readonly volumeL?: string;
                readonly widthMm?: string;
            };
            readonly volumeL: number;
            /** @description Diameter of the largest circle that fits in. */
            readonly widthMm: number;
        };
        readonly Sounding: {
            readonly at: readonly number[];
            /** @description True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /** @enum {string} */
            readonly kind: "sounding";
            /** @enum {string} */
            readonly sound: "dull" | "sharp" | "void";
        };
        readonly SoundingInput: {
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
             * @example [
             *       400,
             *       300
             *     ]
             */
            readonly at: readonly number[];
            /** @description Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
            readonly isUnreliable?: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
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
            readonly key: string;
            readonly note?: string;
            /** @enum {string} */
            readonly readAs: "first-hand" | "second-hand" | "memory" | "derived" | "common-practice";
            readonly title: string;
            readonly url?: string;
            readonly year: string;
        };
        readonly StackCheck: {
            /** @description How far beyond what is allowed; 0 when it holds. */
            readonly beyondMm: number;
            /** @enum {string} */
            readonly governs: "flush" | "low" | "proud";
            readonly nextBest?: components["schemas"]["StackChoice"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly beyondMm?: string;
            };
            /** @enum {string} */
            readonly verdict: "fails" | "holds";
            readonly words: string;
        };
        /** @description One way to fill the cavity from stock. */
        readonly StackChoice: {
            /** @description How far beyond what is allowed; 0 when flush. */
            readonly beyondMm: number;
            readonly bondLineMm: number;
            /** @enum {string} */
            readonly fit: "flush" | "low" | "proud";
            /** @description Height less cavity: positive stands proud. */
            readonly flushMm: number;
            readonly heightMm: number;
            /** @description From the inner skin up. */
            readonly layersMm: readonly number[];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly beyondMm?: string;
                readonly bondLineMm?: string;
                readonly flushMm?: string;
                readonly heightMm?: string;
                readonly layersMm?: readonly string[];
            };
            readonly words: string;
        };
        readonly StackLayer: {
            /** @enum {string} */
            readonly form: "plain" | "scored";
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly thicknessMm?: string;
            };
        };
        /** @description Which sheets fill the cavity, how the new skin then sits, and what the deck gains or loses in mass. */
        readonly StackPlan: {
            readonly assumptions: readonly components["schemas"]["Figure"][];
            readonly bondLine: components["schemas"]["Figure"];
            readonly bondResin: components["schemas"]["Figure"];
            readonly camber?: components["schemas"]["CamberPlan"];
            readonly check: components["schemas"]["StackCheck"];
            /** @description All choices from the material's list, best first. */
            readonly choices: readonly components["schemas"]["StackChoice"][];
            /** @description Positive stands proud. */
            readonly flush: components["schemas"]["Figure"];
            readonly height: components["schemas"]["Figure"];
            /**
             * @description Joints of one layer lie away from those of the other.
             * @enum {string}
             */
            readonly joints: "single-layer" | "staggered";
            readonly kerfResin?: components["schemas"]["Figure"];
            readonly layers: readonly components["schemas"]["StackLayer"][];
            /** @description New core less old sound core, without resin. */
            readonly massChange: components["schemas"]["Figure"];
            readonly newCoreMass: components["schemas"]["Figure"];
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
            readonly stage: number;
            readonly thicknessMm: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly thicknessMm?: string;
            };
        };
        /** @description Everything up to the hold point, so that the rest can be priced on what is then known. */
        readonly StageZero: {
            /** @description Labour with its share of overhead and profit, before tax. */
            readonly amount: components["schemas"]["MoneyJson"];
            /** @description What of the contingency need not be set aside any more, once the extent is known; without tax. */
            readonly contingencyFreed: components["schemas"]["MoneyJson"];
            readonly labourH: number;
            readonly lines: readonly string[];
            readonly title: string;
        };
        readonly StateAnswer: {
            readonly checks: readonly components["schemas"]["PanelCheckItem"][];
            /** @description Greatest utilisation and where it is. */
            readonly governing?: {
                readonly code: string;
                readonly load?: string;
                readonly utilisation: number;
            };
            readonly responses: readonly components["schemas"]["Response"][];
            readonly section: components["schemas"]["SectionResult"];
            /** @enum {string} */
            readonly state: "as-built" | "as-found" | "opened" | "repaired";
        };
        readonly StatedFinding: {
            readonly about: string;
            /** @enum {string} */
            readonly class?: "before-use" | "monitor" | "next-opportunity";
            readonly recommendation?: string;
            readonly restriction?: string;
            readonly wording?: string;
        };
        /** @description What one step takes, waste apart; masses to a tenth of a gram, so that batches and bill can agree exactly. */
        readonly StepDemand: {
            readonly densityGPerCm3: number;
            readonly filler?: string;
            readonly fillerG: number;
            readonly fillerPartsPerHundred: number;
            readonly hardenerG: number;
            readonly index: number;
            readonly netL: number;
            readonly resinG: number;
            /** @enum {string} */
            readonly step: "bed-core" | "bed-skin" | "closing-plies" | "core-kerfs" | "cut-kerf" | "fairing" | "inject" | "peel-ply" | "potting" | "prewet" | "seal" | "top-laminate" | "undercut" | "weave-fill";
            readonly title: string;
            readonly totalKg: number;
            readonly totalL: number;
            readonly units: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly densityGPerCm3?: string;
                readonly fillerG?: string;
                readonly hardenerG?: string;
                readonly netL?: string;
                readonly resinG?: string;
                readonly totalKg?: string;
                readonly totalL?: string;
                readonly wasteL?: string;
            };
            readonly wasteL: number;
            readonly why: {
                readonly mixedG: components["schemas"]["Figure"];
                readonly netL: components["schemas"]["Figure"];
            };
        };
        readonly StepWeather: {
            readonly code: string;
            readonly note?: string;
            readonly requires: readonly components["schemas"]["Requirement"][];
            /** @description Hours of the forecast in which the work may not be begun, by the gate that forbids it. */
            readonly shutBy: readonly {
                /** @enum {string} */
                readonly gate: "core-moisture" | "dew-margin" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
                readonly hours: number;
            }[];
            readonly title: string;
            readonly windows: readonly components["schemas"]["WorkWindow"][];
        };
        /** @description How many packs of a SKU there are now. */
        readonly StockCount: {
            /** @description RFC 3339 instant at which it was counted. */
            readonly countedAt: string;
            /** @description Whole packs. */
            readonly packs: number;
            readonly sku: string;
        };
        /** @description What was counted of a price list. Of packs that are not here, the stock of the edition counts. */
        readonly StockList: {
            readonly items: readonly components["schemas"]["StockCount"][];
            /** @description Code of the price list. */
            readonly priceList: string;
        };
        readonly StockSheetInput: {
            /** @description How many there are; absent: as many as it takes. Needed for a sheet that costs nothing. */
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
            /** @description RFC 3339 instant. */
            readonly clientSecretExpiresAt?: string;
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            readonly estimate: components["schemas"]["Estimate"];
            readonly id: string;
            /** @description SHA-256 of the defect record, with its members in order. */
            readonly inputHash: string;
            readonly revision: components["schemas"]["RevisionMark"];
        };
        /** @description Pieces laid on a length of roll; x runs along the roll, y across it. */
        readonly StripLayout: {
            readonly gridStepMm: number;
            /** @description No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along. */
            readonly leastLengthMm: number;
            readonly lengthMm: number;
            readonly pieceAreaM2: number;
            readonly placements: readonly components["schemas"]["Placement"][];
            readonly stripAreaM2: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly gridStepMm?: string;
                readonly leastLengthMm?: string;
                readonly lengthMm?: string;
                readonly pieceAreaM2?: string;
                readonly stripAreaM2?: string;
                readonly widthMm?: string;
            };
            readonly utilisation: number;
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
            readonly insteadOf: components["schemas"]["MaterialVariant"];
            readonly penalty: components["schemas"]["MoneyJson"];
            readonly quantity: number;
            readonly reason: string;
            readonly unit: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly quantity?: string;
            };
            readonly use: components["schemas"]["MaterialVariant"];
        };
        readonly Summary: {
            readonly calendarDays: components["schemas"]["Range"];
            readonly coreSheets: number;
            readonly cutLengthM: number;
            readonly insurer: {
                readonly attributable: components["schemas"]["MoneyJson"];
                readonly improvement: components["schemas"]["MoneyJson"];
                readonly prior: components["schemas"]["MoneyJson"];
            };
            /** @description Of the whole job with what is found besides, from the same simulation as money and days. */
            readonly labourH: components["schemas"]["Range"];
            /** @description Sum of the most likely hours of each operation: seldom enough for all of them together. */
            readonly labourLikelyH: number;
            /** @description Sum of the labour lines: the recorded scope at mean hours. */
            readonly labourMeanH: number;
            readonly mixedResinL: number;
            readonly openedAreaM2: number;
            /** @description The price with tax: base and what will probably be found besides. */
            readonly total: components["schemas"]["MoneyJson"];
            readonly totalRange: components["schemas"]["EstimateMoneyRange"];
            /** @description Beside the price, with tax. */
            readonly totalWithContingency: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly cutLengthM?: string;
                readonly mixedResinL?: string;
                readonly openedAreaM2?: string;
            };
            /**
             * @description What the conclusion says of the finished repair.
             * @enum {string}
             */
            readonly verdict: "cannot-be-carried-out" | "deck-stays-closed" | "not-established" | "not-restored" | "restored";
            readonly workingDays: components["schemas"]["Range"];
        };
        readonly SupplierInput: {
            readonly code: string;
            readonly delivery: string;
            readonly freeDeliveryFrom?: string;
            readonly hazardSurcharge: string;
            readonly minimumOrder: string;
            readonly name: string;
            readonly oversizeFreight: string;
        };
        readonly SupplierOrder: {
            readonly cutFees: components["schemas"]["MoneyJson"];
            readonly delivery: components["schemas"]["MoneyJson"];
            readonly goods: components["schemas"]["MoneyJson"];
            readonly hazardBoxes: number;
            readonly hazardSurcharge: components["schemas"]["MoneyJson"];
            readonly isDeliveryFree: boolean;
            readonly massKg: number;
            readonly name: string;
            readonly oversizeFreight: components["schemas"]["MoneyJson"];
            readonly supplier: string;
            /**
             * @description Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more.
             * @enum {string}
             */
            readonly toppedUpFor?: "free-delivery" | "minimum-order";
            readonly total: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
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
            readonly from: readonly number[];
            /** @enum {string} */
            readonly kind: "beam" | "bulkhead" | "coaming" | "hatch" | "hull-joint" | "other" | "toe-rail";
            readonly to: readonly number[];
        };
        readonly SupportLineInput: {
            /**
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
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
             * @description [xMm, yMm]: x forward, y to starboard, in the deck plane.
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
                readonly dryReference: number;
                readonly wetReference: number;
            };
            readonly readings: readonly (components["schemas"]["Sounding"] | components["schemas"]["MeterReading"] | components["schemas"]["Plug"])[];
        };
        readonly SurveyInput: {
            /** @description What the meter says of sound and of soaked deck; needed beside its readings. */
            readonly meter?: components["schemas"]["MeterInput"];
            /** @description Soundings, meter readings and plugs, in any order. */
            readonly readings: readonly (components["schemas"]["SoundingInput"] | components["schemas"]["MeterReadingInput"] | components["schemas"]["PlugInput"])[];
        };
        readonly Surveyor: {
            readonly firm?: string;
            readonly name?: string;
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
            readonly code: string;
            readonly name: string;
            readonly percent: string;
        };
        /** @description A quantity nobody knows exactly: least, most likely and most. */
        readonly ThreePoint: {
            readonly high: number;
            readonly likely: number;
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
            /** @enum {string} */
            readonly kind: "hold" | "next" | "wait" | "work";
            readonly task: string;
            readonly text: string;
        };
        /** @description A section of the sum, or a step from the sum of the lines to what is to be paid. */
        readonly TotalChange: {
            readonly after: components["schemas"]["MoneyJson"];
            readonly before: components["schemas"]["MoneyJson"];
            readonly code: string;
            readonly difference: components["schemas"]["MoneyJson"];
            readonly name: string;
        };
        readonly Totals: {
            /** @description Lines with overhead and profit: the recorded scope at mean hours, without tax. */
            readonly base: components["schemas"]["MoneyJson"];
            /** @description What better evidence would leave of the contingency, and what it would take off it; without tax. */
            readonly betterEvidence: readonly {
                readonly contingency: components["schemas"]["MoneyJson"];
                /** @enum {string} */
                readonly evidence: "mapped-with-plugs" | "opened-and-measured" | "single-symptom" | "sounded-and-metered";
                readonly saves: components["schemas"]["MoneyJson"];
            }[];
            readonly byCause: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                /** @enum {string} */
                readonly causeClass: "maintenance" | "pre-existing" | "sudden";
            }[];
            /** @description P80 less the price, without tax; it stands beside the price and is no part of it. */
            readonly contingency: components["schemas"]["MoneyJson"];
            readonly contingencyBasis: string;
            /** @description By kind of risk; the shares make the whole. */
            readonly contingencyByKind: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                /** @enum {string} */
                readonly kind: "extent" | "new-areas" | "price" | "productivity" | "waits";
                readonly name: string;
                readonly share: number;
            }[];
            readonly currency: string;
            /** @description Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
            readonly depreciation?: components["schemas"]["PartsWear"];
            readonly drivers: readonly {
                readonly name: string;
                readonly shareOfVariance: number;
            }[];
            readonly goods: components["schemas"]["GoodsSums"];
            /** @description What will probably be found besides, as a provisional quantity; without tax. */
            readonly growth: components["schemas"]["ProvisionalSum"];
            readonly insurer: components["schemas"]["InsurerSplit"];
            readonly labour: components["schemas"]["MoneyJson"];
            readonly net: components["schemas"]["MoneyJson"];
            /** @description Separate areas elsewhere; without tax. */
            readonly newAreas: components["schemas"]["ProvisionalSum"];
            readonly offer: components["schemas"]["Offer"];
            readonly overhead: components["schemas"]["MoneyJson"];
            /** @description Only where the owner works himself. */
            readonly ownWork?: {
                readonly aYardWouldAsk: components["schemas"]["MoneyJson"];
                readonly basis: string;
                readonly labourH: number;
            };
            /** @description Half of the points against the other half, P90 over P90. */
            readonly p90RelativeError: number;
            readonly parts: components["schemas"]["MoneyJson"];
            readonly profit: components["schemas"]["MoneyJson"];
            /** @description Of the whole job with tax: what the simulated jobs cost. */
            readonly range: components["schemas"]["EstimateMoneyRange"];
            readonly samples: number;
            /** @description Share of the simulated jobs that cost no more than `total`. */
            readonly shareWithin: number;
            readonly tax: components["schemas"]["MoneyJson"];
            readonly taxes: readonly {
                readonly amount: components["schemas"]["MoneyJson"];
                readonly base: components["schemas"]["MoneyJson"];
                readonly code: string;
                readonly name: string;
                readonly percent: string;
            }[];
            /** @description The price: base, growth and new areas, with tax. About as many jobs cost more as cost less. */
            readonly total: components["schemas"]["MoneyJson"];
            readonly totalWithContingency: components["schemas"]["MoneyJson"];
        };
        readonly TrialTotal: {
            readonly after: components["schemas"]["MoneyJson"];
            readonly before: components["schemas"]["MoneyJson"];
            readonly currency: string;
            readonly difference: components["schemas"]["MoneyJson"];
            readonly estimateCount: number;
        };
        /** @description One estimate, worked out again with both editions from the record that it keeps. */
        readonly TriedEstimate: {
            /** @description The same with the edition tried. */
            readonly after?: components["schemas"]["MoneyJson"];
            /** @description Without tax, provisional sums included; absent where an edition could not answer. */
            readonly before?: components["schemas"]["MoneyJson"];
            readonly difference?: components["schemas"]["MoneyJson"];
            /** @description Figures of the scope that differ, such as sheets of core. */
            readonly figures: readonly components["schemas"]["FigureChange"][];
            readonly id: string;
            /** @description Without tax, provisional sums included, as it is kept: made with its own edition and version of the program. */
            readonly keptNet: components["schemas"]["MoneyJson"];
            /** @description Lines that differ: by how much, because of how much more of it and because of its rate. */
            readonly lines: readonly components["schemas"]["LineChange"][];
            /** @description Only for callers who may read estimates. */
            readonly reference?: string;
            /** @description Why an edition could not answer, one sentence for each thing. */
            readonly refusedBecause: readonly string[];
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
            /** @enum {string} */
            readonly driver: "job" | "opened-m2" | "cut-m" | "taper-m" | "laminate-m2" | "laminate-session-m2" | "faired-m2" | "finish-m2" | "hole" | "fitting" | "labour-h" | "mixed-l" | "bag-perimeter-m" | "person" | "prop" | "prop-board-m" | "press-bag" | "batten-m" | "batten-screw";
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
            readonly currency: string;
            readonly refused: readonly {
                readonly code: string;
                readonly rule: string;
                readonly title: string;
                readonly why: string;
            }[];
            readonly rows: readonly components["schemas"]["VariantRow"][];
        };
        readonly VariantRow: {
            /** @description In which of the criteria nothing is better. */
            readonly bestIn: readonly ("cost" | "days" | "labourH" | "massKg" | "p80" | "spread" | "utilisation")[];
            readonly code: string;
            /** @description Codes of variants that are as good in everything compared and better in something. */
            readonly dominatedBy: readonly string[];
            readonly failsCheck: boolean;
            readonly gross: components["schemas"]["MoneyJson"];
            readonly net: components["schemas"]["MoneyJson"];
            readonly note?: string;
            readonly title: string;
            readonly values: components["schemas"]["VariantValues"];
        };
        readonly VariantsRequest: {
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
            readonly labourH: number;
            readonly massKg?: number;
            /** @description What four jobs in five stay below, without tax. */
            readonly p80?: components["schemas"]["MoneyJson"];
            /** @description From P10 to P90. */
            readonly spread?: components["schemas"]["MoneyJson"];
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly massKg?: string;
            };
            readonly utilisation?: number;
        };
        readonly Vessel: {
            readonly builder?: string;
            readonly hullNumber?: string;
            readonly model?: string;
            readonly name?: string;
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
            readonly at: string;
            readonly deckC: number;
            readonly dewMarginK: number;
            readonly dewPointC: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly deckC?: string;
                readonly dewPointC?: string;
            };
        };
        readonly WeatherPlan: {
            readonly assumptions: readonly components["schemas"]["AskingAssumption"][];
            readonly hours: readonly components["schemas"]["WeatherHour"][];
            readonly steps: readonly components["schemas"]["StepWeather"][];
        };
        /** @description What the forecast opens and shuts. */
        readonly WeatherSection: {
            readonly coldestDeckC: number;
            /** @description Moments in the local time of the place. */
            readonly fromAt: string;
            readonly hours: number;
            readonly leastDewMarginK: number;
            readonly notes: readonly string[];
            readonly steps: readonly components["schemas"]["WeatherStepSection"][];
            readonly timeZone: string;
            /** @description The end of the last hour of the forecast. */
            readonly untilAt: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly coldestDeckC?: string;
                readonly warmestDeckC?: string;
            };
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
            readonly code: string;
            /** @description What comes before is done then, by likely values. */
            readonly earliestAt: string;
            /** @enum {string} */
            readonly gate: "coating" | "dry-deck" | "resin";
            /** @description Crew hours that it takes. */
            readonly neededH: number;
            /** @description Working hours of the forecast from `earliestAt` in which an hour of it may be begun. */
            readonly openH: number;
            readonly plannedAt: string;
            readonly plannedEndAt: string;
            /** @description Working hours that each condition takes away. */
            readonly shutBy: readonly {
                readonly gate: string;
                readonly hours: number;
            }[];
            readonly title: string;
            readonly windowCount: number;
            /** @description The best few, the longest first. */
            readonly windows: readonly components["schemas"]["WeatherWindow"][];
        };
        readonly WeatherWindow: {
            readonly fromAt: string;
            readonly hours: number;
            readonly leastDewMarginK: number;
            readonly limitedBy: string;
            readonly meanDeckC: number;
            readonly rank: number;
            /** @description The end of the last hour in which it may be begun. */
            readonly untilAt: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly meanDeckC?: string;
            };
        };
        /** @description How far an event came on its way to an endpoint. */
        readonly WebhookDelivery: {
            /** @description How often it was tried; there are ten attempts in three days. */
            readonly attempts: number;
            readonly eventId: string;
            /** @description Why the last attempt failed, in a sentence. */
            readonly lastFailure?: string;
            /** @description HTTP status of the last attempt; absent when nothing was answered. */
            readonly lastStatus?: number;
            /** @description RFC 3339 instant of the next attempt; only while it waits. */
            readonly nextAttemptAt?: string;
            /** @enum {string} */
            readonly status: "delivered" | "failed" | "waiting";
            /** @description RFC 3339 instant of the last attempt; absent before the first. */
            readonly triedAt?: string;
            /** @enum {string} */
            readonly type: "edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made";
        };
        /** @description The last deliveries to an endpoint, newest event first. */
        readonly WebhookDeliveryList: {
            readonly items: readonly components["schemas"]["WebhookDelivery"][];
        };
        /** @description Where an organisation wants to be told what happened. */
        readonly WebhookEndpoint: {
            /** @description RFC 3339 instant. */
            readonly createdAt: string;
            /** @description Why nothing is delivered any more; absent while it is. */
            readonly disabledBecause?: string;
            readonly id: string;
            readonly types: readonly ("edition.published" | "edition.withdrawn" | "estimate.created" | "estimate.revised" | "operation.done" | "order.made")[];
            readonly url: string;
        };
        /** @description Endpoints of the organisation, oldest first. */
        readonly WebhookEndpointList: {
            readonly items: readonly components["schemas"]["WebhookEndpoint"][];
        };
        readonly Weighing: {
            readonly addG: number;
            readonly name: string;
            /** @description What the scale shows after it, pot tared. */
            readonly scaleShowsG: number;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly addG?: string;
                readonly scaleShowsG?: string;
                readonly volumeMl?: string;
            };
            /** @description Volume of the part: by pump or measuring cup; loose volume for fillers. */
            readonly volumeMl: number;
            /** @enum {string} */
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
            readonly code: string;
            readonly figure: components["schemas"]["Figure"];
        };
        /** @description Words that a surveyor may replace; what the service would say stays beside them. */
        readonly Worded: {
            readonly byService: string;
            readonly isSurveyors: boolean;
            /** @description What is printed. */
            readonly text: string;
        };
        /** @description Hours in which a step may start. */
        readonly WorkWindow: {
            readonly fromAt: string;
            readonly leastDewMarginK: number;
            /** @enum {string} */
            readonly limitedBy: "core-moisture" | "dew-margin" | "end-of-forecast" | "end-of-work" | "humidity" | "rain" | "too-cold" | "too-warm" | "wind";
            readonly meanDeckC: number;
            readonly rank: number;
            readonly startHours: number;
            /** @description The end of its last hour. */
            readonly untilAt: string;
            /** @description In US customary units, when `Accept-Units: us` was sent; ≈ marks a rounded text. */
            readonly us?: {
                readonly meanDeckC?: string;
            };
        };
        readonly YardChargeInput: {
            readonly code: string;
            readonly name: string;
            /**
             * @description day: on the calendar; worked-day: one on which somebody works.
             * @enum {string}
             */
            readonly per: "job" | "day" | "worked-day" | "labour-h" | "opened-m2";
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
             * @description Kind. (enum property replaced by openapi-typescript)
             * @enum {string}
             */
            readonly kind: "yardstick";
            /** @description Name of the load. */
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
            /** @enum {string} */
            readonly condition?: "dry-debonded" | "wet-bonded" | "wet-rotten";
            readonly id: string;
            readonly outline: readonly (readonly number[])[];
        };
    };
    responses: {
        /** @description The request could not be read. */
        readonly BadRequest: {
            headers: {
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
                readonly "Retry-After": components["headers"]["RetryAfter"];
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
                readonly "Retry-After": components["headers"]["RetryAfter"];
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
        readonly Code: string;
        /** @description `nextCursor` of the page before. */
        readonly Cursor: string;
        /** @description Code of a draft. */
        readonly Edition: string;
        readonly Id: string;
        /** @description Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it. */
        readonly IdempotencyKey: string;
        /** @description ETag of the version that is to be changed. */
        readonly IfMatch: string;
        readonly KeyId: string;
        /** @description Only those in this currency. */
        readonly Kind: "AUD" | "BHD" | "BRL" | "CAD" | "CHF" | "CLF" | "CLP" | "CNY" | "CZK" | "DKK" | "EUR" | "GBP" | "HKD" | "HRK" | "HUF" | "IDR" | "ILS" | "INR" | "ISK" | "JOD" | "JPY" | "KRW" | "KWD" | "MXN" | "MYR" | "NOK" | "NZD" | "OMR" | "PHP" | "PLN" | "RON" | "RUB" | "SAR" | "SEK" | "SGD" | "THB" | "TND" | "TRY" | "TWD" | "UAH" | "USD" | "UYW" | "VND" | "ZAR";
        /** @description Entries on a page. */
        readonly Limit: number;
        readonly Paper: "a4" | "letter";
        /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the document. */
        readonly Prefer: string;
        readonly Sku: string;
    };
    requestBodies: never;
    headers: {
        /** @description The version of the resource. */
        readonly ETag: string;
        /** @description true when the answer is that of an earlier request with the same key. */
        readonly IdempotencyReplayed: string;
        /** @description Where the new resource is. */
        readonly Location: string;
        /** @description RFC 7240: respond-async when it was preferred and done. */
        readonly PreferenceApplied: string;
        /** @description Identifies the request in logs; sent back as given when the caller sets it. */
        readonly RequestId: string;
        /** @description Seconds to wait before trying again. */
        readonly RetryAfter: number;
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @enum {string} */
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @enum {string} */
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
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
                    /** @description RFC 8288: rel="next" leads to the next page. */
                    readonly Link?: string;
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
                /**
                 * @example {
                 *       "panel": {
                 *         "outline": [
                 *           [
                 *             0,
                 *             0
                 *           ],
                 *           [
                 *             2000,
                 *             0
                 *           ],
                 *           [
                 *             2000,
                 *             900
                 *           ],
                 *           [
                 *             0,
                 *             900
                 *           ]
                 *         ]
                 *       },
                 *       "outerSkin": {
                 *         "thicknessMm": 3
                 *       },
                 *       "innerSkin": {
                 *         "thicknessMm": 2
                 *       },
                 *       "core": {
                 *         "thicknessMm": "1/2 in"
                 *       },
                 *       "zones": [
                 *         {
                 *           "id": "Z1",
                 *           "outline": [
                 *             [
                 *               700,
                 *               300
                 *             ],
                 *             [
                 *               1250,
                 *               300
                 *             ],
                 *             [
                 *               1250,
                 *               620
                 *             ],
                 *             [
                 *               700,
                 *               620
                 *             ]
                 *           ]
                 *         }
                 *       ]
                 *     }
                 */
                readonly "application/json": components["schemas"]["DefectRecordInput"];
            };
        };
        readonly responses: {
            /** @description The stored estimate. */
            readonly 201: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly paper?: components["parameters"]["Paper"];
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
            };
            readonly path: {
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly paper?: components["parameters"]["Paper"];
                readonly shape?: "landscape" | "portrait" | "phone";
            };
            readonly header?: {
                /** @description `us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them. */
                readonly "Accept-Units"?: components["parameters"]["AcceptUnits"];
                /** @description `respond-async` (RFC 7240): answer 202 with an operation to poll instead of waiting for the document. */
                readonly Prefer?: components["parameters"]["Prefer"];
            };
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
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
                readonly code: components["parameters"]["Code"];
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                    readonly Location: components["headers"]["Location"];
                    readonly "Preference-Applied": components["headers"]["PreferenceApplied"];
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
                readonly keyId: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
                readonly keyId: components["parameters"]["KeyId"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                /**
                 * @example {
                 *       "record": {
                 *         "panel": {
                 *           "outline": [
                 *             [
                 *               0,
                 *               0
                 *             ],
                 *             [
                 *               2000,
                 *               0
                 *             ],
                 *             [
                 *               2000,
                 *               900
                 *             ],
                 *             [
                 *               0,
                 *               900
                 *             ]
                 *           ]
                 *         },
                 *         "outerSkin": {
                 *           "thicknessMm": 3
                 *         },
                 *         "innerSkin": {
                 *           "thicknessMm": 2
                 *         },
                 *         "core": {
                 *           "thicknessMm": "1/2 in"
                 *         },
                 *         "zones": [
                 *           {
                 *             "id": "Z1",
                 *             "outline": [
                 *               [
                 *                 700,
                 *                 300
                 *               ],
                 *               [
                 *                 1250,
                 *                 300
                 *               ],
                 *               [
                 *                 1250,
                 *                 620
                 *               ],
                 *               [
                 *                 700,
                 *                 620
                 *               ]
                 *             ]
                 *           }
                 *         ]
                 *       },
                 *       "variants": [
                 *         {
                 *           "code": "relay",
                 *           "method": {
                 *             "skin": "relay"
                 *           }
                 *         },
                 *         {
                 *           "code": "re-bed",
                 *           "method": {
                 *             "skin": "re-bed"
                 *           }
                 *         }
                 *       ]
                 *     }
                 */
                readonly "application/json": components["schemas"]["VariantsRequest"];
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly id: components["parameters"]["Id"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly edition: string;
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                    readonly ETag: components["headers"]["ETag"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly ETag: components["headers"]["ETag"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly edition: string;
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    /** @description Seconds to wait before asking again. */
                    readonly "Retry-After"?: string;
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer, in the form agreed by Accept. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                    readonly Location: components["headers"]["Location"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content?: never;
            };
            /** @description The caller has this version already. */
            readonly 304: {
                headers: {
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        /** @description RFC 7396 merge patch. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": {
                    readonly name?: string;
                };
                readonly "application/merge-patch+json": {
                    readonly name?: string;
                };
            };
        };
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly edition: string;
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
                readonly sku: components["parameters"]["Sku"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly code: components["parameters"]["Code"];
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly edition: string;
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly code: components["parameters"]["Code"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly "X-Request-Id": components["headers"]["RequestId"];
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly ETag: components["headers"]["ETag"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Done. */
            readonly 204: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
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
                readonly eventId: string;
                readonly id: components["parameters"]["Id"];
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The answer. */
            readonly 200: {
                headers: {
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
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
                readonly id: components["parameters"]["Id"];
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
                    readonly ETag: components["headers"]["ETag"];
                    readonly "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    readonly Location: components["headers"]["Location"];
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
