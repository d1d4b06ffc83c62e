/** The value of the control that an event comes from. */
export function valueOf({ target }: Event): string {
  const isControl =
    target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement;
  return isControl ? target.value : '';
}

/** The texts of the form that was sent, by the names of its controls. */
export function formTexts(event: Event): Readonly<Record<string, string>> {
  event.preventDefault();
  const { currentTarget } = event;
  if (!(currentTarget instanceof HTMLFormElement)) return {};
  return Object.fromEntries([...new FormData(currentTarget)].map(([name, value]) => [name, String(value)]));
}
