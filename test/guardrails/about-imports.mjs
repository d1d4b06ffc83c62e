/**
 * A rule about each place that a file imports from, by any of the four ways to import.
 * @param {Record<string, string>} messages
 * @param {(file: string, specifier: string) => { messageId: string, data?: Record<string, any> } | undefined} faultOf
 * @returns {import('eslint').Rule.RuleModule}
 */
export const aboutImports = (messages, faultOf) => ({
  meta: { type: 'problem', schema: [], messages },
  create(context) {
    /** @param {import('estree').Node & { source?: import('estree').Node | null }} node */
    const look = (node) => {
      if (node.source?.type !== 'Literal' || typeof node.source.value !== 'string') return;
      const fault = faultOf(context.filename.replaceAll('\\', '/'), node.source.value);
      if (fault !== undefined) context.report({ node, ...fault });
    };
    return {
      ImportDeclaration: look,
      ImportExpression: look,
      ExportNamedDeclaration: look,
      ExportAllDeclaration: look,
    };
  },
});
