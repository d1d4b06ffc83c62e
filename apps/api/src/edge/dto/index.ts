export { answering } from './answering.js';
export { Field, type Check, type DtoClass, type Said } from './field.js';
export {
  CalendarDate,
  Code,
  DecimalText,
  Flag,
  Nums,
  OneOf,
  Part,
  Parts,
  PartsByKind,
  SomeOf,
  Text,
  Texts,
  usualText,
} from './plain-fields.js';
export { Instant } from './instant.js';
export { Outline, Outlines, Point, Points } from './points.js';
export { Area, ArealMass, Length, Mass, Num, Speed, Temperature, Whole, type Range } from './quantities.js';
