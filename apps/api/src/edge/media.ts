import { applyDecorators, SetMetadata, type CustomDecorator } from '@nestjs/common';
import { ApiConsumes } from '@nestjs/swagger';

export const JSON_TYPE = 'application/json';
export const MERGE_PATCH_TYPE = 'application/merge-patch+json';
export const CSV_TYPE = 'text/csv';
export const CALENDAR_TYPE = 'text/calendar';

export const HTML_TYPE = 'text/html';
export const PDF_TYPE = 'application/pdf';
export const XML_TYPE = 'application/xml';
export const SVG_TYPE = 'image/svg+xml';
export const DXF_TYPE = 'image/vnd.dxf';
export const PNG_TYPE = 'image/png';
export const JPEG_TYPE = 'image/jpeg';

export const producesKey = 'kingplank:produces';
export const consumesKey = 'kingplank:consumes';
export const mostBytesKey = 'kingplank:most-bytes';

/** Media types an answer can have; JSON when nothing is said. The first that `Accept` allows is taken, so the most useful stands first. */
export const Produces = (...types: readonly string[]): CustomDecorator => SetMetadata(producesKey, types);

/** Media types a request body may have; JSON when nothing is said. */
export const Consumes = (...types: readonly string[]): MethodDecorator & ClassDecorator =>
  applyDecorators(SetMetadata(consumesKey, types), ApiConsumes(...types));

/** How many bytes a request body may have, where that is more than usual. */
export const MostBytes = (bytes: number): CustomDecorator => SetMetadata(mostBytesKey, bytes);
