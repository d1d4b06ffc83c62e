import { askDay, askLabel, askList, askPart, askText, askWhich } from '#lib/asking';

/** Which vessel; every report names her, and nobody has to. */
export const vesselQuestions = {
  name: askText({ meaning: 'name of the vessel', atMost: 100, otherwise: 'unknown' }),
  registration: askText({ meaning: 'registration of the vessel', atMost: 60, otherwise: 'unknown' }),
  hullNumber: askText({
    meaning: 'hull identification number',
    note: 'As moulded or engraved on the hull.',
    atMost: 60,
    otherwise: 'unknown',
  }),
  builder: askText({ meaning: 'builder of the vessel', atMost: 100, otherwise: 'unknown' }),
  model: askText({ meaning: 'type or model of the vessel', atMost: 100, otherwise: 'unknown' }),
};

/** Where, when and with what the deck was looked at. */
export const inspectionQuestions = {
  place: askText({ meaning: 'place of the inspection', atMost: 200, otherwise: 'unknown' }),
  lies: askWhich({
    meaning: 'whether she lay afloat or ashore when inspected',
    choices: ['afloat', 'ashore'],
    otherwise: 'unknown',
  }),
  on: askDay({ meaning: 'day of the inspection', otherwise: 'unknown' }),
  conditions: askText({
    meaning: 'conditions of the inspection',
    note: 'Weather, light, what lay on deck: whatever bears on the readings.',
    atMost: 500,
    otherwise: 'unknown',
  }),
  instruments: askText({
    meaning: 'instruments of the inspection',
    note: 'Hammer, and kind and scale of the moisture meter.',
    atMost: 500,
    otherwise: 'unknown',
  }),
  notInspected: askText({
    meaning: 'what was not inspected, in the words of the surveyor',
    atMost: 1000,
    otherwise: 'unknown',
  }),
};

export const surveyorQuestions = {
  name: askText({ meaning: 'name of the surveyor', atMost: 120, otherwise: 'unknown' }),
  firm: askText({ meaning: 'firm of the surveyor', atMost: 120, otherwise: 'unknown' }),
  qualification: askText({ meaning: 'qualification of the surveyor', atMost: 200, otherwise: 'unknown' }),
};

/** For whom and by whom. Data about people: kept in the rows of the organisation, and erased on demand. */
export const partyQuestions = {
  client: askText({
    meaning: 'client',
    description: 'Who ordered the survey or the work.',
    atMost: 200,
    otherwise: 'unknown',
  }),
  instructedBy: askText({
    meaning: 'who gave the instruction',
    note: 'Owner, insurer or somebody else; where it is not the client.',
    atMost: 200,
    otherwise: 'unknown',
  }),
  surveyor: askPart({
    meaning: 'the surveyor',
    note: 'Whoever looked at the deck.',
    of: surveyorQuestions,
    otherwise: 'unknown',
  }),
};

/** What is said to have happened, for a claim. */
export const occurrenceQuestions = {
  on: askDay({ meaning: 'day of the event', otherwise: 'unknown' }),
  cause: askText({
    meaning: 'cause as the surveyor judges it',
    note: 'Of the damage, and whether it fits the event; never blame.',
    atMost: 2000,
    otherwise: 'unknown',
  }),
  insurerReference: askText({ meaning: 'reference of the insurer', atMost: 100, otherwise: 'unknown' }),
};

/** The classes of the surveying trade: before use, at the next opportunity, to be watched. */
export const findingClasses = ['before-use', 'next-opportunity', 'monitor'] as const;

/** The words of a surveyor in place of those of the service, which stay beside them. */
export const findingQuestions = {
  about: askLabel({
    meaning: 'what the finding is about',
    note: 'A zone or a fitting of the record, or any other label for a finding of its own.',
  }),
  class: askWhich({ meaning: 'class of the finding', choices: findingClasses, otherwise: 'unknown' }),
  wording: askText({ meaning: 'the finding in words', atMost: 2000, otherwise: 'unknown' }),
  recommendation: askText({ meaning: 'what is recommended', atMost: 2000, otherwise: 'unknown' }),
  restriction: askText({ meaning: 'restriction of use until then', atMost: 1000, otherwise: 'unknown' }),
};

/** Parts of the record that say who and what; not one of them bears on a figure. */
export const attendanceParts = {
  vessel: askPart({
    meaning: 'the vessel',
    note: 'By her name and numbers.',
    of: vesselQuestions,
    otherwise: 'unknown',
  }),
  inspection: askPart({
    meaning: 'the inspection',
    note: 'When, where and with what the deck was looked at.',
    of: inspectionQuestions,
    otherwise: 'unknown',
  }),
  parties: askPart({
    meaning: 'client and surveyor',
    note: 'Data about people; `DELETE /v1/estimates/{id}/parties` erases it.',
    of: partyQuestions,
    otherwise: 'unknown',
  }),
  occurrence: askPart({
    meaning: 'the event',
    note: 'What an insurer was told of.',
    of: occurrenceQuestions,
    otherwise: 'unknown',
  }),
  findings: askList({
    meaning: 'findings in the words of the surveyor',
    least: 0,
    most: 50,
    unlike: 'about',
    of: findingQuestions,
    otherwise: 'none',
  }),
};
