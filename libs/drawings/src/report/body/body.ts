import type { Section } from '../document.js';
import type { ReportRequest } from '../request.js';
import { limitSection, reinspectionSection, signatureSections } from './closing.js';
import { findingSection, summarySection } from './findings.js';
import { vesselSection } from './identity.js';
import { repairSection, sumSection } from './repair.js';

/** The two pages that an owner, an insurer and a judge read, in the order in which they ask. */
export const bodyOf = (request: ReportRequest): readonly Section[] => [
  summarySection(request),
  vesselSection(request),
  findingSection(request),
  repairSection(request),
  sumSection(request),
  limitSection(request),
  reinspectionSection(request),
  ...signatureSections(request),
];
