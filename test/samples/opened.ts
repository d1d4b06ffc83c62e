import type {
  BondPressureSection,
  CoreSection,
  Estimate,
  LaminateSection,
  PanelSection,
  ProcessSection,
} from '#lib/estimate';

/** An estimate of a deck that is opened, as tests take it to be; it throws where the method left the deck closed. */
export type Opened = Estimate & {
  readonly core: CoreSection;
  readonly laminate: LaminateSection;
  readonly panel: PanelSection;
  readonly process: ProcessSection & { readonly bondPressure: BondPressureSection };
};

export function opened(estimate: Estimate): Opened {
  const { core, laminate, panel, process } = estimate;
  const { bondPressure } = process;
  if (core === undefined || laminate === undefined || panel === undefined || bondPressure === undefined)
    throw new Error(`The deck stays closed: ${estimate.methods.planned.title}`);
  return { ...estimate, core, laminate, panel, process: { ...process, bondPressure } };
}
