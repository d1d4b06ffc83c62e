/** Types of `libs/` that some answer is documented by; filled by decorators as controllers are loaded. */
export const schemaNames = new Set<string>();
