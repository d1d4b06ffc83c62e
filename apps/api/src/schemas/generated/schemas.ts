// Written by apps/api/schemas.mjs from the types of libs/; do not edit.
export const generatedSchemas: Readonly<Record<string, object>> = {
  "QuantitiesRead": {
    "type": "object",
    "properties": {
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/QuantityRead"
        }
      }
    },
    "required": [
      "quantities"
    ]
  },
  "QuantityRead": {
    "type": "object",
    "properties": {
      "text": {
        "type": "string"
      },
      "value": {
        "type": "number",
        "description": "In the SI unit beside it, rounded once from the exact fraction to the nearest double."
      },
      "unit": {
        "type": "string"
      }
    },
    "required": [
      "text",
      "value",
      "unit"
    ]
  }
};
