import { andThen, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { readPoint, type Region } from '#lib/geometry';
import { problemsOf, readPanel, readZones, type ZonesRead } from '../panel-reading.js';
import { fittingKinds } from './fittings.js';
import type { FittingOnDeck, OpeningRequest } from './request.js';
import { ruleProblems } from './rules.js';
import {
  coreThicknessAsked,
  fittingBaseAsked,
  fittingHolesAsked,
  optionalFaults,
  skinThicknessAsked,
  within,
} from '#lib/asking';

export interface ReadRequest extends ZonesRead {
  readonly panel: Region;
}

const MOST_FITTINGS = 200;

/** Everything wrong with the request at once, or the panel and zones as regions. */
export function readOpeningRequest(request: OpeningRequest): Outcome<ReadRequest> {
  const panel = readPanel(request.panel, '/panel');
  const zones = andThen(panel, (region) => readZones(request.zones, region, '/zones'));
  const problems = [
    ...problemsOf(panel),
    ...(panel.ok ? problemsOf(zones) : []),
    ...thicknessProblems(request),
    ...ruleProblems(request),
    ...fittingProblems(request.fittings ?? []),
  ];
  if (problems.length > 0 || !panel.ok || !zones.ok) return refusal(...problems);
  return success({ panel: panel.value, ...zones.value });
}

const thicknessProblems = ({ outerSkin, innerSkin, core }: OpeningRequest): readonly Problem[] => [
  ...optionalFaults('/outerSkin/thicknessMm', outerSkin.thicknessMm, within(skinThicknessAsked)),
  ...optionalFaults('/innerSkin/thicknessMm', innerSkin.thicknessMm, within(skinThicknessAsked)),
  ...optionalFaults('/core/thicknessMm', core.thicknessMm, within(coreThicknessAsked)),
];

function fittingProblems(fittings: readonly FittingOnDeck[]): readonly Problem[] {
  if (fittings.length > MOST_FITTINGS)
    return [problem('too-many', '/fittings', { count: fittings.length, most: MOST_FITTINGS })];
  return fittings.flatMap(({ id, kind, at, holes, baseMm }, index) => {
    const here = pointer('/fittings', index);
    return [
      ...(fittings.findIndex((other) => other.id === id) < index
        ? [problem('duplicate', `${here}/id`, { value: id })]
        : []),
      ...(fittingKinds.includes(kind)
        ? []
        : [problem('not-one-of', `${here}/kind`, { value: kind, choices: fittingKinds.join(', ') })]),
      ...problemsOf(readPoint(at, `${here}/at`)),
      ...optionalFaults(`${here}/holes`, holes, within(fittingHolesAsked)),
      ...optionalFaults(`${here}/baseMm`, baseMm, within(fittingBaseAsked)),
    ];
  });
}
