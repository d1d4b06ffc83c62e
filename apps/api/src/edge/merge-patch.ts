import { isRecord } from './dto/field.js';

/**
 * RFC 7396: members of the patch replace those of the target, null removes. The result is checked like a new document,
 * so a null on a required member is refused as missing.
 */
export function mergePatched(target: unknown, patch: unknown): unknown {
  if (!isRecord(patch)) return patch;
  const result: Record<string, unknown> = isRecord(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) Reflect.deleteProperty(result, key);
    else result[key] = mergePatched(result[key], value);
  }
  return result;
}
