export const generatedSchemas = {} as const;
