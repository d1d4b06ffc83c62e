/**
 * The only place where problems become words. `{field}` is the pointed-to field; other names in braces are facts.
 * Every detail says what is wrong and what would be right.
 */
export const problemWords = {
  'out-of-range': {
    title: 'A value is outside its range',
    detail: '{field} is {value}; it must be {range}.',
  },
  'not-a-number': {
    title: 'A number was expected',
    detail: '{field} must be a finite number{hint}; it is {value}.',
  },
  'not-a-quantity': {
    title: 'A quantity could not be read',
    detail:
      '{field} must be a number in {unit} or text with a unit such as "{example}"; it is {value}: {why}.',
  },
  'wrong-unit': {
    title: 'The unit does not fit the field',
    detail: '{field} is given in {given}, which is not a unit of {dimension}; use one of {accepted}.',
  },
  'not-one-of': {
    title: 'A value is not among the choices',
    detail: '{field} is {value}{nearest}; it must be one of {choices}.',
  },
  'missing': {
    title: 'A required value is missing',
    detail: '{field} is required: {expected}.',
  },
  'unknown-field': {
    title: 'A field is not known',
    detail: '{field} is not a field of this request{hint}; remove it or correct its name.',
  },
  'unknown-code': {
    title: 'A code is not in the catalogue',
    detail:
      '{field} is {value}, which is not a {kind} in this edition of the catalogue{nearest}; known: {known}.',
  },
  'duplicate': {
    title: 'Two entries share a name',
    detail: '{field} repeats {value}; each must be unique.',
  },
  'too-many': {
    title: 'There are too many entries',
    detail: '{field} is a list of {count}; it may hold {most} or fewer.',
  },
  'too-few': {
    title: 'There are too few entries',
    detail: '{field} is a list of {count}; it must hold {least} or more.',
  },
  'method-unfit': {
    title: 'The method named does not fit this deck',
    detail: '{method}: {reason}. Instead, {instead}.',
  },
  'no-method-fits': {
    title: 'No method fits this deck',
    detail: '{method} does not fit: {reason}. What would have to change: {wouldFit}.',
  },
  'nothing-to-repair': {
    title: 'Nothing here is to be repaired',
    detail:
      'No bad core and no leaking fitting follows from the record: draw a zone, add readings, or say which fitting leaks.',
  },
  'outline-crosses-itself': {
    title: 'An outline crosses itself',
    detail: '{field} crosses itself near ({xMm}, {yMm}) mm; list its corners in order round the edge.',
  },
  'outline-without-area': {
    title: 'An outline encloses no area',
    detail: '{field} encloses no area{hint}; give at least three corners that are not in one line.',
  },
  'outside-panel': {
    title: 'A shape lies outside the panel',
    detail:
      '{field} lies {outsideM2} m2 outside the panel; keep it within the panel outline or correct the panel.',
  },
  'contradiction': {
    title: 'Two values contradict each other',
    detail: '{field} contradicts {other}: {why}.',
  },
  'not-supported': {
    title: 'The request cannot be answered',
    detail: '{field}: {why}.',
  },
  'malformed-json': {
    title: 'The text is not JSON',
    detail: '{field} cannot be read as JSON: {why}.',
  },
  'duplicate-name': {
    title: 'A name is given twice in one object',
    detail: '{field} stands twice in the same object; keep one of them.',
  },
  'reserved-name': {
    title: 'A name is reserved',
    detail: '{field} uses the name {name}, which no request may use; remove it.',
  },
  'unusable-text': {
    title: 'A text holds a character that cannot be kept',
    detail: '{field} holds {what}; remove it.',
  },
  'too-deep': {
    title: 'The request is nested too deeply',
    detail: '{field} is nested deeper than {most} levels; no request needs that.',
  },
  'not-text': {
    title: 'A text was expected',
    detail: '{field} must be {expected}; it is {value}.',
  },
  'text-length': {
    title: 'A text is too short or too long',
    detail: '{field} is text of length {count}; it must have {range}.',
  },
  'not-in-form': {
    title: 'A text is not in the expected form',
    detail: '{field} is {value}; it must be {form}.',
  },
  'not-a-list': {
    title: 'A list was expected',
    detail: '{field} must be a list of {of}; it is {value}.',
  },
  'not-an-object': {
    title: 'An object was expected',
    detail: '{field} must be an object; it is {value}.',
  },
  'not-a-flag': {
    title: 'true or false was expected',
    detail: '{field} must be true or false; it is {value}.',
  },
  'not-a-point': {
    title: 'A point was expected',
    detail:
      '{field} must be a point [xMm, yMm] of two finite numbers within {mostMm} mm of the datum; it is {value}.',
  },
  'not-a-decimal': {
    title: 'An exact decimal was expected',
    detail:
      '{field} is {value}; it must be a plain decimal such as "12.50", with at most {most} digits after the point.',
  },
  'other-currency': {
    title: 'A price list is in another currency',
    detail:
      '{field} is in {value}, the request is in {currency}; nothing is converted, so choose a list in {currency}.',
  },
  'breaks-out-of-order': {
    title: 'Price breaks are out of order',
    detail: '{field}: the quantities of price breaks must start at 1 and rise; they are {value}.',
  },
  'hardener-without-resin': {
    title: 'A hardener fits no resin of the order',
    detail: '{field} is {value}, which is not a hardener of {resin}; known: {known}.',
  },
  'unit-mismatch': {
    title: 'A pack is counted in another unit than the need',
    detail: '{field} is counted in {given}; {expected} was expected.',
  },
  'nothing-left': {
    title: 'The holes leave nothing of the panel',
    detail: '{field} leaves nothing of the panel; draw the holes smaller or the outline larger.',
  },
  'resin-too-cold': {
    title: 'The resin would not cure',
    detail:
      '{field} is {value} degC; {resin} needs at least {lowest} degC: wait, heat the deck, or take {instead}.',
  },
  'forecast-gap': {
    title: 'The forecast has a gap',
    detail:
      '{field} comes {hours} h after the hour before it; hours must follow each other by {expected} h, without a gap.',
  },
  'forecast-order': {
    title: 'The forecast is out of order',
    detail: '{field} is {value}, which is not after {before}; list the hours in order of time.',
  },
  'no-time-zone': {
    title: 'An instant has no zone',
    detail: '{field} is {value}; write it with its offset from UTC, such as 2026-04-11T08:00:00+02:00.',
  },
  'wrong-zone': {
    title: 'An instant is not in the stated zone',
    detail: '{field} has the offset {given}; {zone} stands at {expected} then.',
  },
  'clock-change': {
    title: 'The clocks change inside a cure',
    detail:
      '{field}: the clocks in {zone} change at {value}; give the hours with their UTC offsets so that none is counted twice or lost.',
  },
  'network-cycle': {
    title: 'Operations wait for each other in a circle',
    detail: '{field} closes a circle: {circle}; take one of these precedences out.',
  },
  'too-large-for-stock': {
    title: 'A piece is larger than the stock',
    detail:
      '{field}: piece {piece} is {size}; the room on the stock is {room} inside its trimmed edge, in the turns allowed. To make it fit, {offer}.',
  },
} as const satisfies Readonly<Record<string, { readonly title: string; readonly detail: string }>>;
