// Written by apps/api/schemas.mjs from the types of libs/; do not edit.
export const generatedSchemas: Readonly<Record<string, object>> = {
  "Area": {
    "type": "object",
    "description": "A region of the deck plane: its outer edge and what is left out of it.",
    "properties": {
      "outer": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Outer edge."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Edges of what is left out."
      }
    },
    "required": [
      "outer",
      "holes"
    ]
  },
  "AskingAssumption": {
    "type": "object",
    "description": "One default that an answer rests on, as a reader of the estimate sees it.",
    "properties": {
      "at": {
        "type": "string",
        "description": "JSON Pointer to the question nobody answered."
      },
      "meaning": {
        "type": "string",
        "description": "What was asked."
      },
      "value": {
        "type": "string",
        "description": "What was taken instead, as text."
      },
      "because": {
        "type": "string",
        "description": "Why that was taken."
      },
      "source": {
        "type": "string",
        "description": "What the default leans on."
      }
    },
    "required": [
      "at",
      "meaning",
      "value",
      "because",
      "source"
    ]
  },
  "Assumed": {
    "type": "object",
    "description": "Nobody said it; we took a default and say so. `at` is the field that would replace it.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "assumed"
        ],
        "description": "Says that the figure was assumed because nobody stated it."
      },
      "at": {
        "type": "string",
        "description": "JSON Pointer to the answer that would replace it."
      },
      "because": {
        "type": "string",
        "description": "Why this value and no other was taken."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Source that the assumption leans on."
      },
      "low": {
        "type": "number",
        "description": "Lowest value that would be as believable."
      },
      "high": {
        "type": "number",
        "description": "Highest value that would be as believable."
      }
    },
    "required": [
      "kind",
      "at",
      "because",
      "cite"
    ]
  },
  "AtExtent": {
    "type": "object",
    "description": "At so many times the recorded area, so many times the amount: planned again, not scaled.",
    "properties": {
      "extentFactor": {
        "type": "number",
        "description": "Extent found over extent recorded."
      },
      "amountFactor": {
        "type": "number",
        "description": "Amount then over amount now."
      }
    },
    "required": [
      "extentFactor",
      "amountFactor"
    ]
  },
  "AuditEntry": {
    "type": "object",
    "properties": {
      "subject": {
        "type": "string",
        "description": "What kind of thing, such as `key` or `edition`."
      },
      "code": {
        "type": "string",
        "description": "The id or code of the thing."
      },
      "at": {
        "type": "string",
        "description": "When it was done (RFC 3339)."
      },
      "action": {
        "type": "string",
        "description": "What was done to it, such as `created`, `changed` or `removed`."
      },
      "keyId": {
        "type": "string",
        "description": "Key that did it; absent where the service itself did."
      },
      "keyName": {
        "type": "string",
        "description": "Whose key it was, as the key is called."
      },
      "requestId": {
        "type": "string",
        "description": "Request that did it, as in its `X-Request-Id`."
      },
      "before": {
        "description": "The thing before the change; absent where it was new."
      },
      "after": {
        "description": "The thing after the change; absent where it was removed."
      }
    },
    "required": [
      "subject",
      "code",
      "at",
      "action"
    ]
  },
  "AuditPage": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AuditEntry"
        },
        "description": "What was done, newest first."
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` for what was done before; absent on the last page."
      }
    },
    "required": [
      "items"
    ]
  },
  "Basket": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency of every amount of the basket (ISO 4217)."
      },
      "priceList": {
        "type": "string",
        "description": "Code of the price list whose packs were chosen from."
      },
      "isInvented": {
        "type": "boolean",
        "description": "Whether the prices of the list are made up for demonstration."
      },
      "pricesIncludeTax": {
        "type": "boolean",
        "description": "Whether the prices of the list hold tax already."
      },
      "proof": {
        "oneOf": [
          {
            "$ref": "#/components/schemas/Proven"
          },
          {
            "$ref": "#/components/schemas/Gap"
          }
        ],
        "discriminator": {
          "propertyName": "kind",
          "mapping": {
            "proven": "#/components/schemas/Proven",
            "gap": "#/components/schemas/Gap"
          }
        },
        "description": "Whether no cheaper basket exists, or how far one could be."
      },
      "isComplete": {
        "type": "boolean",
        "description": "Whether every need is covered; `missing` lists those that are not."
      },
      "missing": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostingMissing"
        },
        "description": "Needs that no pack of the list covers."
      },
      "excluded": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Excluded"
        },
        "description": "Packs that were left out before the choice, each with the reason."
      },
      "byEstimate": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "estimate": {
              "type": "string",
              "description": "Estimate that bears the amount."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Its share of the order, by what it needs."
            }
          },
          "required": [
            "estimate",
            "amount"
          ]
        },
        "description": "What each estimate of a common order bears of the total."
      },
      "secondBest": {
        "$ref": "#/components/schemas/SecondBest",
        "description": "The next cheaper basket from other suppliers, where it was looked for."
      },
      "warnings": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the buyer should know before ordering."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Goods, cut fees, deliveries and surcharges of all orders together."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        },
        "description": "What is bought, a line for each kind of pack."
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        },
        "description": "The lines gathered into one order for each supplier."
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        },
        "description": "Needs that something other than what was planned covers."
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        },
        "description": "What remains of the bought packs when the job is done."
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        },
        "description": "Each need beside the packs that cover it."
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        },
        "description": "Resins beside the hardeners bought to cure them."
      }
    },
    "required": [
      "currency",
      "priceList",
      "isInvented",
      "pricesIncludeTax",
      "proof",
      "isComplete",
      "missing",
      "excluded",
      "byEstimate",
      "warnings",
      "total",
      "lines",
      "orders",
      "substitutions",
      "leftovers",
      "coverage",
      "matched"
    ]
  },
  "BasketLine": {
    "type": "object",
    "description": "So many packs of one kind from one supplier.",
    "properties": {
      "sku": {
        "type": "string",
        "description": "Supplier's number of the pack."
      },
      "name": {
        "type": "string",
        "description": "What the supplier calls the pack."
      },
      "supplier": {
        "type": "string",
        "description": "Code of the supplier who sells it."
      },
      "content": {
        "$ref": "#/components/schemas/MaterialVariant",
        "description": "The material in the pack, with the form it is sold in."
      },
      "packCount": {
        "type": "number",
        "description": "How many packs are bought."
      },
      "quantityPerPack": {
        "type": "number",
        "description": "What one pack holds, in `unit`."
      },
      "quantity": {
        "type": "number",
        "description": "What all packs of the line hold together."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the contents of a pack."
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price of one pack."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Packs times price."
      },
      "cutFee": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the supplier asks for cutting from the roll or sheet."
      },
      "cutCount": {
        "type": "number",
        "description": "Sheets that the shop cuts so that they travel as ordinary goods."
      },
      "massKg": {
        "type": "number",
        "description": "What the packs weigh for carriage."
      },
      "hazardous": {
        "type": "boolean",
        "description": "Whether the pack travels as dangerous goods."
      },
      "oversize": {
        "type": "boolean",
        "description": "Whether the pack is too large for ordinary parcels."
      },
      "shelfLifeMonths": {
        "type": "number",
        "description": "How long the unopened pack keeps."
      }
    },
    "required": [
      "sku",
      "name",
      "supplier",
      "content",
      "packCount",
      "quantityPerPack",
      "quantity",
      "unit",
      "unitPrice",
      "amount",
      "cutFee",
      "cutCount",
      "massKg",
      "hazardous",
      "oversize"
    ]
  },
  "BatchCard": {
    "type": "object",
    "properties": {
      "number": {
        "type": "number",
        "description": "Number on the card."
      },
      "step": {
        "type": "string",
        "description": "Step that the card is for."
      },
      "title": {
        "type": "string",
        "description": "Heading of the card."
      },
      "resinG": {
        "type": "number",
        "description": "Resin on the card."
      },
      "hardenerG": {
        "type": "number",
        "description": "Hardener on the card."
      },
      "fillerG": {
        "type": "number",
        "description": "Filler on the card."
      },
      "filler": {
        "type": "string",
        "description": "Name of the filler on the card."
      },
      "weigh": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "what": {
              "type": "string",
              "enum": [
                "filler",
                "hardener",
                "resin"
              ],
              "description": "Which component."
            },
            "name": {
              "type": "string",
              "description": "What stands on its can."
            },
            "addG": {
              "type": "number",
              "description": "Grams to add."
            },
            "scaleShowsG": {
              "type": "number",
              "description": "What the scale then shows, when it was zeroed with the empty pot."
            },
            "volumeMl": {
              "type": "number",
              "description": "The same by volume."
            }
          },
          "required": [
            "what",
            "name",
            "addG",
            "scaleShowsG",
            "volumeMl"
          ]
        },
        "description": "What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump."
      },
      "mixedMl": {
        "type": "number",
        "description": "Volume in the pot."
      },
      "covers": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the pot is enough for."
      },
      "useWithinMin": {
        "type": "number",
        "description": "Minutes until the pot must be empty."
      },
      "limitedBy": {
        "type": "string",
        "description": "What set the size of the pot."
      },
      "pumps": {
        "type": "string",
        "description": "Strokes of the pump, where one is used."
      }
    },
    "required": [
      "number",
      "step",
      "title",
      "resinG",
      "hardenerG",
      "fillerG",
      "weigh",
      "mixedMl",
      "covers",
      "useWithinMin",
      "limitedBy"
    ]
  },
  "BatchFinding": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "enum": [
          "deck-warmer-than-limit",
          "layer-heats",
          "piece-too-large",
          "pot-too-short",
          "small-pots"
        ],
        "description": "What was found about the mixing."
      },
      "severity": {
        "type": "string",
        "enum": [
          "note",
          "stop",
          "warn"
        ],
        "description": "Whether it stops the plan, warns, or is only worth knowing."
      },
      "text": {
        "type": "string",
        "description": "The finding in a sentence."
      },
      "facts": {
        "type": "object",
        "additionalProperties": {
          "oneOf": [
            {
              "type": "string"
            },
            {
              "type": "number"
            }
          ]
        },
        "description": "Numbers and words that the sentence is made of."
      }
    },
    "required": [
      "code",
      "severity",
      "text",
      "facts"
    ]
  },
  "BatchPlan": {
    "type": "object",
    "properties": {
      "resin": {
        "type": "object",
        "properties": {
          "code": {
            "type": "string",
            "description": "Code of the resin system in the catalogue."
          },
          "name": {
            "type": "string",
            "description": "Name of the resin system."
          },
          "hardener": {
            "type": "string",
            "description": "Code of the hardener that is mixed in."
          },
          "hardenerName": {
            "type": "string",
            "description": "Name of the hardener on the can."
          },
          "why": {
            "type": "string",
            "description": "Why this hardener suits the warmth of the work."
          }
        },
        "required": [
          "code",
          "name",
          "hardener",
          "hardenerName",
          "why"
        ],
        "description": "The system that is mixed, and why its hardener was chosen."
      },
      "considered": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HardenerVerdict"
        },
        "description": "Hardeners of the system, each with its verdict in this warmth."
      },
      "demand": {
        "$ref": "#/components/schemas/ResinDemand",
        "description": "What each step needs, with waste."
      },
      "batches": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlannedBatch"
        },
        "description": "Pots in the order they are mixed."
      },
      "potLife": {
        "type": "object",
        "properties": {
          "at100GMin": {
            "type": "number",
            "description": "Likely pot life of 100 g, in minutes."
          },
          "lowMin": {
            "type": "number",
            "description": "Shortest pot life to reckon with."
          },
          "highMin": {
            "type": "number",
            "description": "Longest pot life to hope for."
          },
          "temperatureC": {
            "type": "number",
            "description": "Warmth that the pot life holds for."
          }
        },
        "required": [
          "at100GMin",
          "lowMin",
          "highMin",
          "temperatureC"
        ],
        "description": "How long a pot of 100 g stays workable in the warmth of the work."
      },
      "adiabaticRiseK": {
        "type": "number",
        "description": "Rise of temperature if no heat left the pot at all."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BatchFinding"
        },
        "description": "What stops the mixing or deserves a warning."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "Figures of the plan that nobody stated."
      }
    },
    "required": [
      "resin",
      "considered",
      "demand",
      "batches",
      "potLife",
      "adiabaticRiseK",
      "findings",
      "assumptions"
    ]
  },
  "BibliographyEntry": {
    "type": "object",
    "properties": {
      "number": {
        "type": "number",
        "description": "Number that the text refers by."
      },
      "key": {
        "type": "string",
        "description": "Key of the source in the catalogue."
      },
      "title": {
        "type": "string",
        "description": "Title of the publication."
      },
      "body": {
        "type": "string",
        "description": "Who published it."
      },
      "year": {
        "type": "string",
        "description": "When it was published."
      },
      "readAs": {
        "type": "string",
        "enum": [
          "common-practice",
          "derived",
          "first-hand",
          "memory",
          "second-hand"
        ],
        "description": "How far the source itself was read."
      },
      "url": {
        "type": "string",
        "description": "Where it can be read, when freely."
      }
    },
    "required": [
      "number",
      "key",
      "title",
      "body",
      "year",
      "readAs"
    ]
  },
  "BondPressurePlan": {
    "type": "object",
    "properties": {
      "method": {
        "type": "string",
        "enum": [
          "battens",
          "jacks",
          "vacuum",
          "weights"
        ],
        "description": "Way of pressing that was chosen; absent when none will do."
      },
      "requiredKPa": {
        "type": "number",
        "description": "Pressure that the bond line needs."
      },
      "availableKPa": {
        "type": "number",
        "description": "Pressure that the chosen way gives."
      },
      "restsOn": {
        "type": "string",
        "description": "What carries the pressing force in the end."
      },
      "turns": {
        "type": "number",
        "description": "One after another, where a crew cannot press the whole opening at once."
      },
      "innerSkin": {
        "$ref": "#/components/schemas/InnerSkinCheck",
        "description": "Whether the inner skin bears the pressing."
      },
      "options": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressOption"
        },
        "description": "Every way of pressing, judged."
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressQuantity"
        },
        "description": "What the chosen way takes: bags, screws, battens."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressLine"
        },
        "description": "Where boards, battens or bows lie, from one corner of the area; none when no way will do."
      },
      "onPieceKgPerM2": {
        "type": "number",
        "description": "Weight on each square metre of a piece, or force under it; absent where nothing is laid on or jacked."
      },
      "recommendation": {
        "type": "string",
        "description": "What to do, in a sentence."
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Why ways of pressing are ruled out."
      },
      "ambientKPa": {
        "type": "number",
        "description": "Pressure of the air at the altitude of the work."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What was taken about the pressing that nobody stated."
      }
    },
    "required": [
      "method",
      "requiredKPa",
      "restsOn",
      "turns",
      "innerSkin",
      "options",
      "quantities",
      "lines",
      "recommendation",
      "refusals",
      "ambientKPa",
      "assumptions"
    ]
  },
  "BondPressureSection": {
    "type": "object",
    "properties": {
      "method": {
        "type": "string",
        "enum": [
          "battens",
          "jacks",
          "vacuum",
          "weights"
        ],
        "description": "Absent when no way to press can be recommended; the refusals say why."
      },
      "requiredKPa": {
        "type": "number",
        "description": "Pressure that the core needs while it beds."
      },
      "availableKPa": {
        "type": "number",
        "description": "Pressure that the planned way gives."
      },
      "restsOn": {
        "type": "string",
        "description": "What the pressing rests on."
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        },
        "description": "What the pressing takes."
      },
      "props": {
        "type": "object",
        "properties": {
          "needed": {
            "type": "boolean",
            "description": "Whether props go under the deck."
          },
          "spacingMm": {
            "type": "number",
            "description": "How far apart they may stand."
          },
          "spanMm": {
            "type": "number",
            "description": "How far the skin that stays reaches between supports without them; absent where it stands by itself."
          },
          "why": {
            "type": "string",
            "description": "Why they are needed or not."
          }
        },
        "required": [
          "needed",
          "why"
        ],
        "description": "Props under the deck."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressLine"
        },
        "description": "Boards on props, battens and bows, where they lie in the plane of the deck."
      },
      "pieces": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "label": {
              "type": "string",
              "description": "Piece that is pressed."
            },
            "massKg": {
              "type": "number",
              "description": "Weight laid on it, or force under it as a weight, counted up to whole kilograms; absent where battens or a bag press."
            },
            "jacks": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "number"
                },
                "minItems": 2,
                "maxItems": 2
              },
              "description": "Where a jack stands under the board that holds the piece; empty when it is pressed from above."
            }
          },
          "required": [
            "label",
            "jacks"
          ]
        },
        "description": "What goes on or under each piece, in the order of bedding."
      },
      "recommendation": {
        "type": "string",
        "description": "How to press, in a sentence."
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Ways of pressing that are ruled out, with why."
      }
    },
    "required": [
      "requiredKPa",
      "restsOn",
      "quantities",
      "props",
      "lines",
      "pieces",
      "recommendation",
      "refusals"
    ]
  },
  "BuiltCheck": {
    "type": "object",
    "description": "`isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's.",
    "properties": {
      "utilisation": {
        "type": "number",
        "description": "Demand over capacity of the deck as it was built."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "Verdict on the deck as it was built."
      },
      "isNoWorse": {
        "type": "boolean",
        "description": "Whether the repaired deck is no worse than that."
      }
    },
    "required": [
      "utilisation",
      "verdict",
      "isNoWorse"
    ]
  },
  "CalendarMilestone": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of what is reached."
      },
      "title": {
        "type": "string",
        "description": "Name of what is reached."
      },
      "at": {
        "type": "string",
        "description": "Planned moment (RFC 3339)."
      }
    },
    "required": [
      "code",
      "title",
      "at"
    ]
  },
  "CalendarSection": {
    "type": "object",
    "description": "Tasks, waits and days of the job.",
    "properties": {
      "startDate": {
        "type": "string",
        "description": "Absent when the record names no start: days are then counted from any Monday."
      },
      "timeZone": {
        "type": "string",
        "description": "Zone, or offset, that the moments are written in."
      },
      "workingDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days on which somebody works, as a spread."
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range",
        "description": "From the first day to the last, waits counted."
      },
      "planned": {
        "type": "object",
        "properties": {
          "workingDays": {
            "type": "number",
            "description": "Working days of the plan as drawn."
          },
          "calendarDays": {
            "type": "number",
            "description": "Calendar days of the plan as drawn."
          }
        },
        "required": [
          "workingDays",
          "calendarDays"
        ],
        "description": "Of the one walk that the tasks show, by mean hours and waits."
      },
      "tasks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CalendarTask"
        },
        "description": "Tasks in the order they start."
      },
      "criticalChain": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Tasks whose delay delays the end, by code."
      },
      "finish": {
        "type": "object",
        "properties": {
          "early": {
            "type": "string",
            "description": "End that one job in ten is done by (RFC 3339)."
          },
          "likely": {
            "type": "string",
            "description": "End that half of the jobs are done by (RFC 3339)."
          },
          "late": {
            "type": "string",
            "description": "End that nine jobs in ten are done by (RFC 3339)."
          }
        },
        "required": [
          "early",
          "likely",
          "late"
        ],
        "description": "When the job ends; absent when no start was stated."
      },
      "milestones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "description": "Code of the milestone."
            },
            "title": {
              "type": "string",
              "description": "What is reached then."
            },
            "at": {
              "type": "string",
              "description": "When it is reached (RFC 3339); absent when no start was stated."
            }
          },
          "required": [
            "code",
            "title"
          ]
        },
        "description": "Days worth announcing."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What to know about the calendar."
      }
    },
    "required": [
      "workingDays",
      "calendarDays",
      "planned",
      "tasks",
      "criticalChain",
      "milestones",
      "notes"
    ]
  },
  "CalendarTask": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the task."
      },
      "title": {
        "type": "string",
        "description": "What is done."
      },
      "gate": {
        "type": "string",
        "enum": [
          "coating",
          "dry-deck",
          "none",
          "resin"
        ],
        "description": "What it waits for in the weather."
      },
      "startDay": {
        "type": "number",
        "description": "When it starts, in days from the start of the job."
      },
      "endDay": {
        "type": "number",
        "description": "When its work ends, in days from the start of the job; its wait comes after."
      },
      "startAt": {
        "type": "string",
        "description": "When it starts (RFC 3339), where the job's start was stated."
      },
      "endAt": {
        "type": "string",
        "description": "When it ends (RFC 3339), where the job's start was stated."
      },
      "readyAt": {
        "type": "string",
        "description": "When its cure, drying or hold is over."
      },
      "labourH": {
        "type": "number",
        "description": "Mean hours of work, of all hands together."
      },
      "waitH": {
        "type": "number",
        "description": "Hours of waiting after the work."
      },
      "waitKind": {
        "type": "string",
        "enum": [
          "cure",
          "drying",
          "elapsed",
          "hold",
          "none"
        ],
        "description": "What is waited for."
      },
      "isCritical": {
        "type": "boolean",
        "description": "Whether its delay delays the end."
      },
      "isHoldPoint": {
        "type": "boolean",
        "description": "Whether work stops here until somebody has agreed."
      },
      "startsBecause": {
        "type": "string",
        "description": "What lets it start no earlier."
      },
      "after": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Tasks that must be done before it, by code."
      }
    },
    "required": [
      "code",
      "title",
      "gate",
      "startDay",
      "endDay",
      "labourH",
      "waitH",
      "waitKind",
      "isCritical",
      "isHoldPoint",
      "startsBecause",
      "after"
    ]
  },
  "CamberPlan": {
    "type": "object",
    "description": "How the core follows a cambered deck.",
    "properties": {
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Form of sheet that follows the camber."
      },
      "way": {
        "type": "string",
        "enum": [
          "bends",
          "lies",
          "scored",
          "shorter-pieces"
        ],
        "description": "How the core is brought to the curve."
      },
      "bentRadius": {
        "$ref": "#/components/schemas/Figure",
        "description": "Radius to which the pressure bends the thickest layer."
      },
      "gap": {
        "$ref": "#/components/schemas/Figure",
        "description": "Gap under a plain piece of the stated length."
      },
      "longestFlatPieceMm": {
        "type": "number",
        "description": "A plain piece no longer than this across the camber lies within the gap without bending."
      },
      "words": {
        "type": "string",
        "description": "What the crew does, in a sentence."
      },
      "figures": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "The bend, the spring-back and what they are compared with."
      }
    },
    "required": [
      "form",
      "way",
      "bentRadius",
      "gap",
      "longestFlatPieceMm",
      "words",
      "figures"
    ]
  },
  "CauseRecord": {
    "type": "object",
    "properties": {
      "cause": {
        "type": "string",
        "enum": [
          "construction",
          "impact",
          "leaking-fitting",
          "unknown"
        ]
      },
      "lengthMm": {
        "type": "number"
      },
      "causeClass": {
        "type": "string",
        "enum": [
          "maintenance",
          "pre-existing",
          "sudden"
        ]
      },
      "note": {
        "type": "string"
      },
      "leak": {
        "type": "string",
        "enum": [
          "chainplate",
          "crack",
          "fittings",
          "hatch",
          "hull-deck-joint",
          "not-known",
          "overlay-screws"
        ]
      }
    },
    "required": [
      "cause"
    ]
  },
  "Caution": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of this caution."
      },
      "severity": {
        "type": "string",
        "enum": [
          "caution",
          "danger",
          "warning"
        ],
        "description": "What may come of it: death, injury or damage."
      },
      "kind": {
        "type": "string",
        "enum": [
          "fire",
          "health",
          "site",
          "structure",
          "work"
        ],
        "description": "What sort of harm."
      },
      "text": {
        "type": "string",
        "description": "What to do or to leave."
      },
      "because": {
        "type": "string",
        "description": "The condition of this job that called it."
      },
      "protection": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What to wear or to set up."
      },
      "hazards": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "description": "Hazard statement (GHS)."
            },
            "text": {
              "type": "string",
              "description": "Wording of the statement."
            }
          },
          "required": [
            "code",
            "text"
          ]
        },
        "description": "GHS hazard statements of the materials concerned."
      },
      "decides": {
        "type": "string",
        "description": "Who decides, where it is not the crew."
      },
      "source": {
        "type": "string",
        "description": "Publication that the caution follows."
      }
    },
    "required": [
      "code",
      "severity",
      "kind",
      "text",
      "because",
      "protection",
      "hazards",
      "source"
    ]
  },
  "ChangeOrder": {
    "type": "object",
    "description": "A change order as text to be signed, in the parts that a letter has.",
    "properties": {
      "title": {
        "type": "string",
        "description": "Heading of the change order."
      },
      "reason": {
        "type": "string",
        "description": "Why the work changed, as stated with the revision."
      },
      "additions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        },
        "description": "Lines that came in or grew."
      },
      "deductions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        },
        "description": "Lines that went or shrank."
      },
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TotalChange"
        },
        "description": "From the lines to what is to be paid, before and after."
      },
      "sums": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "name": {
              "type": "string",
              "description": "What the sum is."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Its amount; a deduction is negative."
            }
          },
          "required": [
            "name",
            "amount"
          ]
        },
        "description": "The steps from the old total to the new one."
      },
      "byRates": {
        "$ref": "#/components/schemas/ReMeasured",
        "description": "Everything found since the first issue, by the rates agreed with it; absent where that was in another currency."
      },
      "statements": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Sentences that both parties sign."
      },
      "signatures": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Whose name, date and signature it needs."
      }
    },
    "required": [
      "title",
      "reason",
      "additions",
      "deductions",
      "steps",
      "sums",
      "statements",
      "signatures"
    ]
  },
  "ChangedPack": {
    "type": "object",
    "description": "A pack whose prices are other ones now.",
    "properties": {
      "sku": {
        "type": "string",
        "description": "Pack whose price changed."
      },
      "name": {
        "type": "string",
        "description": "Name of the pack."
      },
      "before": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Prices of one pack at each quantity break, in the order of the breaks, in the currency of the list."
      },
      "after": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "The same breaks afterwards."
      }
    },
    "required": [
      "sku",
      "name",
      "before",
      "after"
    ]
  },
  "Check": {
    "type": "object",
    "description": "A check that fails is a result. `utilisation` is demand over capacity.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the check."
      },
      "title": {
        "type": "string",
        "description": "Name of the check."
      },
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ],
        "description": "State of the deck that the check is about."
      },
      "demand": {
        "type": "number",
        "description": "What is required or acts."
      },
      "capacity": {
        "type": "number",
        "description": "What is there or allowed."
      },
      "unit": {
        "type": "string",
        "description": "Unit of what acts and what is there."
      },
      "utilisation": {
        "type": "number",
        "description": "What acts over what is allowed."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "What the check says."
      },
      "governs": {
        "type": "string",
        "description": "What decides the check."
      },
      "remedy": {
        "type": "string",
        "description": "What would let the check pass."
      },
      "source": {
        "type": "string",
        "description": "Publication that the check follows."
      },
      "reason": {
        "type": "string",
        "description": "Why the check has no figure."
      },
      "asBuilt": {
        "$ref": "#/components/schemas/BuiltCheck",
        "description": "Of the repaired panel: what the same check comes to on the deck as built."
      }
    },
    "required": [
      "code",
      "title",
      "unit",
      "verdict",
      "governs",
      "source"
    ]
  },
  "Cite": {
    "type": "object",
    "description": "Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`.",
    "properties": {
      "source": {
        "type": "string",
        "description": "Key of the source; `/v1/sources/{code}` names it in full."
      },
      "clause": {
        "type": "string",
        "description": "Clause, table, equation or page in the source."
      },
      "note": {
        "type": "string",
        "description": "Clause, table or page, or why the value stands without one."
      }
    },
    "required": [
      "source"
    ]
  },
  "ClientSecret": {
    "type": "object",
    "description": "Shown once: opens the estimate it came with.",
    "properties": {
      "clientSecret": {
        "type": "string",
        "description": "Bearer of this text may read the one estimate; shown once."
      },
      "clientSecretExpiresAt": {
        "type": "string",
        "description": "Until when the secret counts (RFC 3339)."
      }
    },
    "required": [
      "clientSecret",
      "clientSecretExpiresAt"
    ]
  },
  "ClosingCheck": {
    "type": "object",
    "properties": {
      "check": {
        "type": "string",
        "enum": [
          "bond-peel",
          "bond-shear",
          "flush",
          "taper-room"
        ],
        "description": "Which property of the joint was checked."
      },
      "title": {
        "type": "string",
        "description": "Name of the check on the joint."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the joint's demand and capacity."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "Whether the joint passes."
      },
      "demand": {
        "type": "number",
        "description": "What the joint must carry or keep to."
      },
      "capacity": {
        "type": "number",
        "description": "What the joint can carry or is allowed."
      },
      "utilisation": {
        "type": "number",
        "description": "Demand on the joint over its capacity."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Source of the joint's requirement."
      },
      "words": {
        "type": "string",
        "description": "The check in a sentence."
      }
    },
    "required": [
      "check",
      "title",
      "unit",
      "verdict",
      "cite"
    ]
  },
  "ClosingPlies": {
    "type": "object",
    "properties": {
      "taperWidthMm": {
        "$ref": "#/components/schemas/Figure",
        "description": "Width of the taper over the closing joint."
      },
      "grooveWidthMm": {
        "type": "number",
        "description": "Width of the open joint before it is closed."
      },
      "order": {
        "type": "string",
        "enum": [
          "largest-first",
          "smallest-first"
        ],
        "description": "Whether wide or narrow strips are laid first."
      },
      "consequences": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What this order of strips means."
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ClosingPly"
        },
        "description": "Strips over the joint, in the order they are laid."
      },
      "stages": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Stage"
        },
        "description": "Strips laid wet on wet together."
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Glass of all strips."
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin of all strips."
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ClosingCheck"
        },
        "description": "Whether the closed joint holds and lies flush."
      },
      "leastTaperRatio": {
        "type": "number",
        "description": "Least taper that the bond allows, where the joint's stress was given."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What was taken about the joint."
      }
    },
    "required": [
      "taperWidthMm",
      "grooveWidthMm",
      "order",
      "consequences",
      "plies",
      "stages",
      "glassKg",
      "resinKg",
      "checks",
      "assumptions"
    ]
  },
  "ClosingPly": {
    "type": "object",
    "properties": {
      "order": {
        "type": "number",
        "description": "Place of the strip, 1 the first laid."
      },
      "stage": {
        "type": "number",
        "description": "Stage that the strip is laid in."
      },
      "material": {
        "type": "string",
        "description": "Code of the strip's fabric."
      },
      "name": {
        "type": "string",
        "description": "Name of the strip's fabric."
      },
      "thicknessMm": {
        "type": "number",
        "description": "What the strip adds over the joint."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the strip."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Edge of the strip along the joint."
      },
      "areaM2": {
        "$ref": "#/components/schemas/Figure",
        "description": "Area of the strip."
      },
      "strips": {
        "type": "number",
        "description": "Pieces that the strip is cut in."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of the roll for strips."
      },
      "rollLengthM": {
        "type": "number",
        "description": "Length of roll for the strips."
      },
      "rollStrips": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RollStrip"
        },
        "description": "As they are cut from the roll."
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Glass in the strip."
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin that wets the strip."
      }
    },
    "required": [
      "order",
      "stage",
      "material",
      "name",
      "thicknessMm",
      "widthMm",
      "areaM2",
      "strips",
      "rollWidthMm",
      "rollLengthM",
      "rollStrips",
      "glassKg",
      "resinKg"
    ]
  },
  "ComparedEstimate": {
    "type": "object",
    "description": "One of two estimates that are compared.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the estimate that is compared."
      },
      "createdAt": {
        "type": "string",
        "description": "When it was made (RFC 3339)."
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark",
        "description": "Which revision of the job it is."
      },
      "edition": {
        "type": "string",
        "description": "Edition of the catalogue it was priced with."
      },
      "engineVersion": {
        "type": "string",
        "description": "Version of the program that made it."
      }
    },
    "required": [
      "id",
      "createdAt",
      "revision",
      "edition",
      "engineVersion"
    ]
  },
  "Comparison": {
    "type": "object",
    "description": "What changed from one estimate to another, line by line.",
    "properties": {
      "before": {
        "$ref": "#/components/schemas/ComparedEstimate",
        "description": "The earlier of the two."
      },
      "after": {
        "$ref": "#/components/schemas/ComparedEstimate",
        "description": "The later of the two."
      },
      "figures": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FigureChange"
        },
        "description": "Changed figures of the scope, such as the opened area."
      },
      "currency": {
        "type": "string",
        "description": "Currency of all differences (ISO 4217)."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        },
        "description": "Changed lines: by how much, because of how much more of it and because of its rate."
      },
      "totals": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TotalChange"
        },
        "description": "Changed sections, then every step from the sum of the lines to the sum with tax."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Later net sum less the earlier, without tax."
      },
      "shareOfBefore": {
        "type": "number",
        "description": "Of the amount without tax before; absent when that was nothing."
      }
    },
    "required": [
      "before",
      "after",
      "figures",
      "currency",
      "lines",
      "totals",
      "difference"
    ]
  },
  "Computed": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "computed"
        ],
        "description": "Says that a formula gave the figure."
      },
      "formula": {
        "type": "string",
        "description": "Id of the formula."
      },
      "title": {
        "type": "string",
        "description": "What the formula is called."
      },
      "symbol": {
        "type": "string",
        "description": "Letter that stands for the result in the source."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Where the formula is printed."
      },
      "inputs": {
        "type": "object",
        "additionalProperties": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "What went in, by symbol; each a figure with its own origin."
      }
    },
    "required": [
      "kind",
      "formula",
      "title",
      "symbol",
      "cite",
      "inputs"
    ]
  },
  "ConclusionSection": {
    "type": "object",
    "properties": {
      "verdict": {
        "type": "object",
        "properties": {
          "code": {
            "type": "string",
            "enum": [
              "cannot-be-carried-out",
              "deck-stays-closed",
              "not-established",
              "not-restored",
              "restored"
            ],
            "description": "Code of the verdict."
          },
          "sentence": {
            "type": "string",
            "description": "The verdict in a sentence."
          },
          "notes": {
            "type": "array",
            "items": {
              "type": "string"
            },
            "description": "Shortfalls, and remarks on how the deck was built."
          }
        },
        "required": [
          "code",
          "sentence",
          "notes"
        ],
        "description": "What is said of the repair."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/GradedFinding"
        },
        "description": "What was found, each graded by urgency."
      },
      "method": {
        "type": "object",
        "properties": {
          "sentences": {
            "type": "array",
            "items": {
              "type": "string"
            },
            "description": "The recommendation, sentence by sentence."
          },
          "runnerUp": {
            "type": "object",
            "properties": {
              "title": {
                "type": "string",
                "description": "Name of the method that comes next."
              },
              "because": {
                "type": "string",
                "description": "Why it is not the first."
              },
              "price": {
                "$ref": "#/components/schemas/MoneyJson",
                "description": "What it would cost; absent where it is not priced."
              }
            },
            "required": [
              "title",
              "because"
            ],
            "description": "The method that comes next."
          }
        },
        "required": [
          "sentences"
        ],
        "description": "What is recommended and why."
      },
      "reinspection": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ReinspectionPoint"
        },
        "description": "When to look again, and at what."
      }
    },
    "required": [
      "verdict",
      "findings",
      "method",
      "reinspection"
    ]
  },
  "Conditions": {
    "type": "object",
    "properties": {
      "shelter": {
        "type": "string",
        "enum": [
          "open",
          "shed",
          "tent"
        ]
      },
      "forecast": {
        "$ref": "#/components/schemas/Forecast"
      },
      "temperatureC": {
        "type": "number"
      },
      "relativeHumidityPercent": {
        "type": "number"
      },
      "warmth": {
        "$ref": "#/components/schemas/DeckWarmth"
      },
      "place": {
        "type": "string",
        "enum": [
          "afloat",
          "ashore-anyway",
          "ashore-for-this",
          "own-ground"
        ]
      },
      "altitudeM": {
        "type": "number"
      },
      "isAfloat": {
        "type": "boolean"
      },
      "daysAvailable": {
        "type": "number"
      },
      "isFreezeExpected": {
        "type": "boolean"
      }
    }
  },
  "ConstraintReport": {
    "type": "object",
    "properties": {
      "constraint": {
        "type": "string",
        "enum": [
          "flush-low",
          "flush-proud",
          "kinds",
          "order",
          "stiffness-across",
          "stiffness-along",
          "stiffness-shear",
          "strength-compression-across",
          "strength-compression-along",
          "strength-tension-across",
          "strength-tension-along"
        ],
        "description": "Constraint that stood in the way."
      },
      "metBy": {
        "type": "number",
        "description": "Stacks that meet it, whatever else they miss."
      },
      "bestRatio": {
        "type": "number",
        "description": "Best value over all stacks against what is needed; at least 1 where `metBy` is above 0."
      },
      "soleObstacleOf": {
        "type": "number",
        "description": "Stacks that meet everything but this one."
      },
      "nearestRatio": {
        "type": "number",
        "description": "Best ratio among those: how near the catalogue comes when all else is met."
      }
    },
    "required": [
      "constraint",
      "metBy",
      "bestRatio",
      "soleObstacleOf"
    ]
  },
  "CoreBill": {
    "type": "object",
    "description": "Pieces, sheets and what becomes of every square millimetre of them.",
    "properties": {
      "stack": {
        "$ref": "#/components/schemas/StackPlan",
        "description": "Layers of new core that fill the cavity."
      },
      "mosaic": {
        "$ref": "#/components/schemas/Mosaic",
        "description": "Pieces that the core is cut into."
      },
      "division": {
        "$ref": "#/components/schemas/DivisionByCost",
        "description": "How many pieces, and why so many."
      },
      "cuts": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CoreCut"
        },
        "description": "One for each thickness and form."
      },
      "kerfMm": {
        "type": "number",
        "description": "Width that the saw takes between pieces."
      },
      "sheetCount": {
        "type": "number",
        "description": "Sheets that must be bought."
      },
      "cost": {
        "type": "number",
        "description": "Price of the sheets, in the unit that prices were stated in."
      },
      "netArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Area of core that ends up in the deck."
      },
      "boughtArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Area of the sheets bought."
      },
      "wasteFraction": {
        "$ref": "#/components/schemas/Figure",
        "description": "Share of the bought area that goes to waste, 0 to 1; absent where no core is bought."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of the bought area that becomes pieces, 0 to 1; 0 where no core is bought."
      },
      "waste": {
        "$ref": "#/components/schemas/SheetUse",
        "description": "Where the bought area goes."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "What the bill takes that nobody stated."
      }
    },
    "required": [
      "stack",
      "mosaic",
      "division",
      "cuts",
      "kerfMm",
      "sheetCount",
      "cost",
      "netArea",
      "boughtArea",
      "utilisation",
      "waste",
      "assumptions"
    ]
  },
  "CoreCut": {
    "type": "object",
    "properties": {
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheets that are cut."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Whether these sheets are plain or scored."
      },
      "sheets": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CutCoreSheet"
        },
        "description": "Each sheet with the pieces on it."
      },
      "cost": {
        "type": "number",
        "description": "Price of these sheets."
      },
      "leastCost": {
        "type": "number",
        "description": "No layout of these pieces can cost less."
      },
      "use": {
        "$ref": "#/components/schemas/SheetUse",
        "description": "How much of the sheets becomes pieces."
      }
    },
    "required": [
      "thicknessMm",
      "form",
      "sheets",
      "cost",
      "leastCost",
      "use"
    ]
  },
  "CoreSection": {
    "type": "object",
    "properties": {
      "material": {
        "type": "string",
        "description": "Code of the new core."
      },
      "materialName": {
        "type": "string",
        "description": "Name of the new core."
      },
      "stack": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "layer": {
              "type": "string",
              "description": "What the layer is."
            },
            "thicknessMm": {
              "type": "number",
              "description": "How thick the layer is."
            }
          },
          "required": [
            "layer",
            "thicknessMm"
          ]
        },
        "description": "Layers of the new stack from below."
      },
      "cavityMm": {
        "type": "number",
        "description": "Height to fill between the skins."
      },
      "stackMm": {
        "type": "number",
        "description": "Height of the new stack."
      },
      "flushMm": {
        "type": "number",
        "description": "New stack less cavity; positive stands proud."
      },
      "netAreaM2": {
        "type": "number",
        "description": "Core in the deck."
      },
      "wasteAreaM2": {
        "type": "number",
        "description": "Bought core that goes to waste."
      },
      "purchaseAreaM2": {
        "type": "number",
        "description": "Core that is bought."
      },
      "wasteByCause": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "cause": {
              "type": "string",
              "description": "Why core goes to waste."
            },
            "areaM2": {
              "type": "number",
              "description": "How much goes to waste so."
            }
          },
          "required": [
            "cause",
            "areaM2"
          ]
        },
        "description": "Where the waste comes from."
      },
      "pieces": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateCorePiece"
        },
        "description": "Pieces in the order they are bedded."
      },
      "division": {
        "type": "string",
        "description": "Why it is so many pieces."
      },
      "solidFills": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CoreSolidFill"
        },
        "description": "Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid."
      },
      "solidAreaM2": {
        "type": "number",
        "description": "Area that is filled solid."
      },
      "solidVolumeL": {
        "type": "number",
        "description": "Solid filling."
      },
      "sheets": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CoreSheetLayout"
        },
        "description": "Sheets with the pieces cut from them."
      },
      "kerfMm": {
        "type": "number",
        "description": "Left between the pieces on a sheet for the blade."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of bought core that ends up in the deck."
      },
      "massChangeKg": {
        "type": "number",
        "description": "How much heavier the deck becomes; negative is lighter."
      },
      "waterLeavingKg": {
        "type": "number",
        "description": "Water that leaves with the wet core; absent when its moisture is unknown."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the crew should know about the core."
      }
    },
    "required": [
      "material",
      "materialName",
      "stack",
      "cavityMm",
      "stackMm",
      "flushMm",
      "netAreaM2",
      "wasteAreaM2",
      "purchaseAreaM2",
      "wasteByCause",
      "pieces",
      "division",
      "solidFills",
      "solidAreaM2",
      "solidVolumeL",
      "sheets",
      "kerfMm",
      "utilisation",
      "massChangeKg",
      "notes"
    ]
  },
  "CoreSheetLayout": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "Name of the sheet."
      },
      "lengthMm": {
        "type": "number",
        "description": "Length of the sheet."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the sheet."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheet."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain or scored sheet."
      },
      "isBought": {
        "type": "boolean",
        "description": "False for a piece that the customer has."
      },
      "utilisation": {
        "type": "number",
        "description": "How much of this sheet is used."
      },
      "placed": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "piece": {
              "type": "string",
              "description": "Label of the piece."
            },
            "outline": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "number"
                },
                "minItems": 2,
                "maxItems": 2
              },
              "description": "Where its edge lies on the sheet."
            },
            "holes": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "array",
                  "items": {
                    "type": "number"
                  },
                  "minItems": 2,
                  "maxItems": 2
                }
              },
              "description": "Where its holes lie on the sheet."
            },
            "turnDeg": {
              "type": "number",
              "description": "How far it is turned."
            },
            "cutOrder": {
              "type": "number",
              "description": "Place in the order of cutting."
            }
          },
          "required": [
            "piece",
            "outline",
            "holes",
            "turnDeg",
            "cutOrder"
          ]
        },
        "description": "Pieces on the sheet."
      },
      "offcutsKept": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Remainders worth keeping."
      }
    },
    "required": [
      "label",
      "lengthMm",
      "widthMm",
      "thicknessMm",
      "form",
      "isBought",
      "utilisation",
      "placed",
      "offcutsKept"
    ]
  },
  "CoreSolidFill": {
    "type": "object",
    "description": "Filled solid from skin to skin, before the core goes in.",
    "properties": {
      "opening": {
        "type": "string",
        "description": "Opening that the filling lies in."
      },
      "kind": {
        "type": "string",
        "enum": [
          "high-density-strip",
          "paste",
          "solid-laminate"
        ],
        "description": "Paste, laminate or a strip of dense core."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of it in the deck plane, points [xMm, yMm] in order."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Free places in the filling."
      },
      "areaM2": {
        "type": "number",
        "description": "Area under the filling."
      },
      "volumeL": {
        "type": "number",
        "description": "How much filling."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the filled strip."
      },
      "lifts": {
        "type": "number",
        "description": "As paste: how many lifts, for its heat."
      },
      "isUnderLip": {
        "type": "boolean",
        "description": "Whether the filling goes under skin that stays."
      }
    },
    "required": [
      "opening",
      "kind",
      "outline",
      "holes",
      "areaM2",
      "volumeL",
      "widthMm",
      "lifts",
      "isUnderLip"
    ]
  },
  "CoringCorePiece": {
    "type": "object",
    "description": "One labelled piece of new core, in deck coordinates.",
    "properties": {
      "label": {
        "type": "string",
        "description": "The opening's letter and the bedding order in it."
      },
      "opening": {
        "type": "string",
        "description": "Opening that the piece lies in."
      },
      "layer": {
        "type": "number",
        "description": "Layer of the stack that the piece belongs to; 1 lies on the inner skin."
      },
      "beddingOrder": {
        "type": "number",
        "description": "Place in the order of bedding over all openings, from 1."
      },
      "bay": {
        "type": "number",
        "description": "What is bedded in one go; counted from 1 in each layer of an opening."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the piece in the deck plane."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Openings within the piece, for what stays."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the piece without its holes."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheet the piece is cut from."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain or scored, as the piece is cut."
      },
      "grainDeg": {
        "type": "number",
        "description": "Only for core that has a grain in its plane."
      },
      "bleedHoles": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Where to drill holes that let air and resin out."
      },
      "bleedDiameterMm": {
        "type": "number",
        "description": "Drill for the bleed holes; absent when there are none."
      },
      "isUnderLip": {
        "type": "boolean",
        "description": "Whether the piece reaches under the sound skin that stays."
      },
      "entry": {
        "$ref": "#/components/schemas/Entry",
        "description": "How it gets in; absent when no way was found, and the plan says so."
      }
    },
    "required": [
      "label",
      "opening",
      "layer",
      "beddingOrder",
      "bay",
      "outline",
      "holes",
      "areaM2",
      "thicknessMm",
      "form",
      "bleedHoles",
      "isUnderLip"
    ]
  },
  "CostLine": {
    "type": "object",
    "description": "A priced line: its quantity, rate and rounded amount.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the priced line."
      },
      "section": {
        "type": "string",
        "enum": [
          "consumables",
          "disposal",
          "freight",
          "hire",
          "labour",
          "materials",
          "safety",
          "subcontract",
          "yard"
        ],
        "description": "Section that the line is summed in."
      },
      "title": {
        "type": "string",
        "description": "What the line pays for."
      },
      "stage": {
        "type": "string",
        "description": "Stage of the work the line belongs to."
      },
      "partOrLabour": {
        "type": "string",
        "enum": [
          "labour",
          "part"
        ],
        "description": "Whether the line is goods or work."
      },
      "causeClass": {
        "type": "string",
        "enum": [
          "maintenance",
          "pre-existing",
          "sudden"
        ],
        "description": "Who bears the cause of the line."
      },
      "scope": {
        "type": "string",
        "enum": [
          "in",
          "out"
        ],
        "description": "Whether the line counts, or only shows what would be extra."
      },
      "quantity": {
        "$ref": "#/components/schemas/LineQuantity",
        "description": "Quantity needed and quantity bought."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the line's quantity."
      },
      "unitRate": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price of one unit."
      },
      "isAverageRate": {
        "type": "boolean",
        "description": "True where packs were priced and the rate is their price over their content."
      },
      "packs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LinePack"
        },
        "description": "Packs that the line buys."
      },
      "goods": {
        "type": "object",
        "properties": {
          "billedBy": {
            "type": "string",
            "enum": [
              "use",
              "wear",
              "whole-packs"
            ],
            "description": "Whether whole packs or what is used is billed."
          },
          "bought": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "What the packs cost that the yard must buy."
          }
        },
        "required": [
          "billedBy",
          "bought"
        ],
        "description": "Of packs only: how they are charged, and without tax what buying them whole would come to."
      },
      "rateIncludesTax": {
        "type": "boolean",
        "description": "Whether the rate holds tax already."
      },
      "taxGroup": {
        "type": "string",
        "description": "Tax group of the line."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Rounded amount of the line."
      },
      "range": {
        "$ref": "#/components/schemas/CostingMoneyRange",
        "description": "Amount at the ends of its spread."
      },
      "spread": {
        "type": "object",
        "properties": {
          "low": {
            "type": "number",
            "description": "Low factor."
          },
          "high": {
            "type": "number",
            "description": "High factor."
          }
        },
        "required": [
          "low",
          "high"
        ],
        "description": "Ends of the spread as factors of the amount."
      },
      "atExtents": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AtExtent"
        },
        "description": "How the amount follows the extent that is found."
      },
      "depreciation": {
        "$ref": "#/components/schemas/LineDepreciation",
        "description": "Wear of the old part that the line replaces."
      },
      "note": {
        "type": "string",
        "description": "What to know about the line."
      },
      "why": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the quantity."
      }
    },
    "required": [
      "code",
      "section",
      "title",
      "partOrLabour",
      "causeClass",
      "scope",
      "quantity",
      "unit",
      "unitRate",
      "isAverageRate",
      "packs",
      "rateIncludesTax",
      "taxGroup",
      "amount",
      "range",
      "spread",
      "atExtents",
      "why"
    ]
  },
  "CostRisk": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency that the spread is in."
      },
      "samples": {
        "type": "number",
        "description": "Jobs that were drawn."
      },
      "seed": {
        "type": "number",
        "description": "Seed of the draw; the same seed gives the same cents."
      },
      "shape": {
        "type": "string",
        "enum": [
          "beta",
          "triangular"
        ],
        "description": "How each line was drawn between its ends."
      },
      "extent": {
        "$ref": "#/components/schemas/ThreePoint",
        "description": "Extent found over extent recorded, as three points."
      },
      "point": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price at the likely quantities."
      },
      "mean": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Mean of the drawn prices."
      },
      "deviation": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Standard deviation of the drawn prices."
      },
      "p10": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Drawn price that one in ten stays below."
      },
      "p50": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Drawn price that half stay below."
      },
      "p80": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Drawn price that eight in ten stay below."
      },
      "p90": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Drawn price that nine in ten stay below."
      },
      "p90StandardError": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "How uncertain that last price is from drawing."
      },
      "p90RelativeError": {
        "type": "number",
        "description": "The same as a share of the price."
      },
      "contingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "P80 minus the point, none when the point already covers it."
      },
      "shareAtPoint": {
        "type": "number",
        "description": "How likely the job costs no more than the point."
      },
      "drivers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Driver"
        },
        "description": "Lines and facts that move the price most."
      },
      "jointShare": {
        "type": "number",
        "description": "Of the variance, by drivers acting together."
      },
      "histogram": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HistogramBar"
        },
        "description": "Drawn prices in bars."
      },
      "information": {
        "$ref": "#/components/schemas/InformationValue",
        "description": "What opening up first would be worth."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Spreads that nobody stated."
      }
    },
    "required": [
      "currency",
      "samples",
      "seed",
      "shape",
      "extent",
      "point",
      "mean",
      "deviation",
      "p10",
      "p50",
      "p80",
      "p90",
      "p90StandardError",
      "p90RelativeError",
      "contingency",
      "shareAtPoint",
      "drivers",
      "jointShare",
      "histogram",
      "information",
      "assumptions"
    ]
  },
  "CostRollUp": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency of the whole roll-up (ISO 4217)."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostLine"
        },
        "description": "Priced lines in the order of their sections."
      },
      "outOfScope": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostLine"
        },
        "description": "Named and priced, not summed."
      },
      "sections": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SectionTotal"
        },
        "description": "Sum of each section."
      },
      "direct": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of all lines in scope."
      },
      "overhead": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Overhead on the direct cost."
      },
      "profit": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Profit on direct cost and overhead."
      },
      "provisional": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sums for work that is not yet known."
      },
      "contingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Reserve for what may be found."
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price before tax."
      },
      "taxes": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "description": "Code of the tax group."
            },
            "name": {
              "type": "string",
              "description": "Name of the tax."
            },
            "percent": {
              "type": "string",
              "description": "Rate in percent, as exact decimal text."
            },
            "taxable": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Amount that the tax is on."
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Tax on that amount."
            }
          },
          "required": [
            "code",
            "name",
            "percent",
            "taxable",
            "tax"
          ]
        },
        "description": "Each tax with what it is on."
      },
      "tax": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "All taxes together."
      },
      "gross": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price with tax."
      },
      "byCause": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Lines of this share."
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Overhead, profit and reserves of this share."
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share before tax."
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Tax on this share."
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share with tax."
            },
            "causeClass": {
              "type": "string",
              "enum": [
                "maintenance",
                "pre-existing",
                "sudden"
              ],
              "description": "Cause that the share is put down to."
            }
          },
          "required": [
            "direct",
            "loadings",
            "net",
            "tax",
            "gross",
            "causeClass"
          ]
        },
        "description": "The price parted by who bears its cause."
      },
      "byPartOrLabour": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Lines of this share."
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Overhead, profit and reserves of this share."
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share before tax."
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Tax on this share."
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share with tax."
            },
            "partOrLabour": {
              "type": "string",
              "enum": [
                "labour",
                "part"
              ],
              "description": "Whether the share is goods or work."
            }
          },
          "required": [
            "direct",
            "loadings",
            "net",
            "tax",
            "gross",
            "partOrLabour"
          ]
        },
        "description": "The price parted into goods and work."
      },
      "byCauseAndPart": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Lines of this share."
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Overhead, profit and reserves of this share."
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share before tax."
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Tax on this share."
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "This share with tax."
            },
            "causeClass": {
              "type": "string",
              "enum": [
                "maintenance",
                "pre-existing",
                "sudden"
              ],
              "description": "Cause of this cell of the table."
            },
            "partOrLabour": {
              "type": "string",
              "enum": [
                "labour",
                "part"
              ],
              "description": "Goods or work in this cell of the table."
            }
          },
          "required": [
            "direct",
            "loadings",
            "net",
            "tax",
            "gross",
            "causeClass",
            "partOrLabour"
          ]
        },
        "description": "Cause and part or labour crossed, as a claim splits them."
      },
      "depreciation": {
        "type": "object",
        "properties": {
          "parts": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Price of parts that wear counts on."
          },
          "depreciation": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Wear taken off."
          },
          "remaining": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Parts less wear."
          }
        },
        "required": [
          "parts",
          "depreciation",
          "remaining"
        ],
        "description": "Wear of old parts that new ones replace."
      },
      "terms": {
        "type": "object",
        "properties": {
          "overheadPercent": {
            "type": "string",
            "description": "Overhead in percent of direct cost."
          },
          "profitPercent": {
            "type": "string",
            "description": "Profit in percent of cost with overhead."
          },
          "contingencyPercent": {
            "type": "string",
            "description": "Reserve in percent; absent when it is worked out from the risk."
          },
          "rounding": {
            "type": "string",
            "enum": [
              "ceiling",
              "floor",
              "half-away-from-zero",
              "half-to-even"
            ],
            "description": "How amounts are rounded."
          }
        },
        "required": [
          "overheadPercent",
          "profitPercent",
          "rounding"
        ],
        "description": "Percentages and rounding that the price is made with."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Terms of the price that nobody stated."
      }
    },
    "required": [
      "currency",
      "lines",
      "outOfScope",
      "sections",
      "direct",
      "overhead",
      "profit",
      "provisional",
      "contingency",
      "net",
      "taxes",
      "tax",
      "gross",
      "byCause",
      "byPartOrLabour",
      "byCauseAndPart",
      "depreciation",
      "terms",
      "assumptions"
    ]
  },
  "CostSection": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the section."
      },
      "title": {
        "type": "string",
        "description": "Heading of the section."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of its lines."
      }
    },
    "required": [
      "code",
      "title",
      "amount"
    ]
  },
  "CostingMissing": {
    "type": "object",
    "properties": {
      "quantity": {
        "type": "number",
        "description": "How much is needed that nothing covers."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the uncovered quantity."
      },
      "needs": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Ids of the needs that stay open."
      },
      "reason": {
        "type": "string",
        "enum": [
          "all-excluded",
          "below-minimum-order",
          "no-hardener",
          "no-pack",
          "not-enough",
          "not-found-in-time",
          "other-unit"
        ],
        "description": "`no-hardener`: the resin is there and what cures it is not; `below-minimum-order`: what is in stock does not reach it."
      },
      "material": {
        "type": "string",
        "description": "Code of the material in the catalogue."
      },
      "part": {
        "type": "string",
        "description": "Code of a hardener, where the material is a resin system and its hardener is meant."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheet, for core."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain or scored, for core."
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the sheet that is meant."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the sheet that is meant."
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ],
        "description": "Size of the sheet, where it matters."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of the roll, for fabrics."
      }
    },
    "required": [
      "quantity",
      "unit",
      "needs",
      "reason",
      "material"
    ]
  },
  "CostingMoneyRange": {
    "type": "object",
    "properties": {
      "low": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount at the low end."
      },
      "likely": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Likely amount."
      },
      "high": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount at the high end."
      }
    },
    "required": [
      "low",
      "likely",
      "high"
    ]
  },
  "Coverage": {
    "type": "object",
    "description": "How one demand is met.",
    "properties": {
      "material": {
        "type": "string",
        "description": "Code of the material that is needed."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness that is needed, for core."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Whether plain or scored sheet is needed."
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the needed sheet."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the needed sheet."
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ],
        "description": "Size of sheet that is needed."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of roll that is needed."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the quantities covered."
      },
      "needs": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string",
              "description": "Id of one need."
            },
            "estimate": {
              "type": "string",
              "description": "Estimate that the need comes from, in a common order."
            },
            "requiredQuantity": {
              "type": "number",
              "description": "What this need asks for."
            }
          },
          "required": [
            "id",
            "requiredQuantity"
          ]
        },
        "description": "The needs that these packs serve together."
      },
      "required": {
        "type": "number",
        "description": "What the needs ask for in all."
      },
      "fromOnHand": {
        "type": "number",
        "description": "Part that comes from stock the caller has already."
      },
      "covered": {
        "type": "number",
        "description": "Part that bought packs and stock cover."
      },
      "short": {
        "type": "number",
        "description": "Part that stays uncovered; 0 when all is covered."
      },
      "part": {
        "type": "string",
        "description": "Code of a hardener, where the material is a resin system and its hardener is meant."
      }
    },
    "required": [
      "material",
      "unit",
      "needs",
      "required",
      "fromOnHand",
      "covered",
      "short"
    ]
  },
  "Craft": {
    "type": "object",
    "properties": {
      "craftType": {
        "type": "string",
        "enum": [
          "motor",
          "sail"
        ]
      },
      "lengthHullM": {
        "type": "number"
      },
      "lengthWaterlineM": {
        "type": "number"
      },
      "massLoadedKg": {
        "type": "number"
      },
      "designCategory": {
        "type": "string",
        "enum": [
          "A",
          "B",
          "C",
          "D"
        ]
      },
      "yearBuilt": {
        "type": "number"
      }
    }
  },
  "Crew": {
    "type": "object",
    "properties": {
      "skill": {
        "type": "string",
        "enum": [
          "owner",
          "professional"
        ]
      },
      "people": {
        "type": "number"
      },
      "hoursPerDay": {
        "type": "number"
      },
      "workingDays": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "fri",
            "mon",
            "sat",
            "sun",
            "thu",
            "tue",
            "wed"
          ]
        }
      },
      "startDate": {
        "type": "string"
      },
      "labour": {
        "type": "string",
        "enum": [
          "mixed",
          "owner",
          "yard"
        ]
      },
      "attendanceFraction": {
        "type": "number"
      }
    }
  },
  "CureAndWeather": {
    "type": "object",
    "properties": {
      "cure": {
        "$ref": "#/components/schemas/CurePlan",
        "description": "When each mix can be worked on."
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherPlan",
        "description": "When the weather lets each step be done."
      }
    },
    "required": [
      "cure",
      "weather"
    ]
  },
  "CureMilestones": {
    "type": "object",
    "properties": {
      "step": {
        "type": "string",
        "description": "Step whose mix cures."
      },
      "temperatureC": {
        "type": "number",
        "description": "Steady as stated, or the mean of the deck until full cure."
      },
      "basis": {
        "type": "string",
        "enum": [
          "forecast",
          "forecast-then-stated",
          "stated"
        ],
        "description": "Whether the warmth was stated, forecast, or first one and then the other."
      },
      "startAt": {
        "type": "string",
        "description": "When the last of the resin goes on; only where a forecast is followed."
      },
      "gelH": {
        "type": "number",
        "description": "Hours until it gels."
      },
      "releaseH": {
        "type": "number",
        "description": "Hours until the pressing may come off."
      },
      "sandableH": {
        "type": "number",
        "description": "Hours until it can be sanded."
      },
      "recoatShutsH": {
        "type": "number",
        "description": "Hours until a new layer needs sanding first."
      },
      "fullCureH": {
        "type": "number",
        "description": "Hours until it is fully hard."
      },
      "note": {
        "type": "string",
        "description": "What to heed while it cures."
      }
    },
    "required": [
      "step",
      "temperatureC",
      "basis"
    ]
  },
  "CurePlan": {
    "type": "object",
    "properties": {
      "step": {
        "type": "string",
        "description": "Step that the plan is for, when one was named."
      },
      "resin": {
        "type": "string",
        "description": "Code of the resin that cures."
      },
      "hardener": {
        "type": "string",
        "description": "Code of the hardener that cures it."
      },
      "referenceC": {
        "type": "number",
        "description": "Temperature that the data sheet's times hold for."
      },
      "activationEnergy": {
        "type": "object",
        "properties": {
          "likely": {
            "type": "number",
            "description": "Likely value, in kJ/mol."
          },
          "low": {
            "type": "number",
            "description": "Low end of the spread, in kJ/mol."
          },
          "high": {
            "type": "number",
            "description": "High end of the spread, in kJ/mol."
          },
          "basis": {
            "type": "string",
            "description": "What the value leans on."
          }
        },
        "required": [
          "likely",
          "low",
          "high",
          "basis"
        ],
        "description": "How strongly warmth hastens the cure."
      },
      "stopsBelowC": {
        "type": "number",
        "description": "Temperature below which this mix does not cure."
      },
      "deck": {
        "type": "object",
        "properties": {
          "meanC": {
            "type": "number",
            "description": "Mean temperature of the deck."
          },
          "coldestC": {
            "type": "number",
            "description": "Lowest temperature of the deck."
          },
          "warmestC": {
            "type": "number",
            "description": "Highest temperature of the deck."
          },
          "overH": {
            "type": "number",
            "description": "Hours that these three are taken over."
          }
        },
        "required": [
          "meanC",
          "coldestC",
          "warmestC",
          "overH"
        ],
        "description": "Warmth of the deck while it cures."
      },
      "stoppedH": {
        "type": "number",
        "description": "Hours, until full cure or the end, in which the deck is too cold and nothing counts."
      },
      "milestones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Milestone"
        },
        "description": "When the mix gels, can be sanded, is hard."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the crew should heed about the cure."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "Figures of the cure that nobody stated."
      }
    },
    "required": [
      "resin",
      "hardener",
      "referenceC",
      "activationEnergy",
      "stopsBelowC",
      "deck",
      "stoppedH",
      "milestones",
      "notes",
      "assumptions"
    ]
  },
  "CutChoice": {
    "type": "object",
    "description": "Where to cut, as one decision between opening now and coming back.",
    "properties": {
      "probability": {
        "type": "number",
        "description": "Core this likely to be bad, or more, is opened."
      },
      "chosenBy": {
        "type": "string",
        "enum": [
          "expected-hours",
          "record"
        ],
        "description": "Whether the record names the margin or the least expected work chose it."
      },
      "expectedLeftM2": {
        "type": "number",
        "description": "Bad core that this leaves, as the map expects it."
      },
      "openingHours": {
        "type": "number",
        "description": "Hours of the openings, and those of leaving what is left."
      },
      "leavingHours": {
        "type": "number",
        "description": "Hours expected for bad core left behind."
      },
      "hoursWithoutOpening": {
        "type": "number",
        "description": "What opening nothing would come to."
      }
    },
    "required": [
      "probability",
      "chosenBy",
      "expectedLeftM2",
      "openingHours",
      "leavingHours",
      "hoursWithoutOpening"
    ]
  },
  "CutCoreSheet": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "Name of the sheet on the cutting plan."
      },
      "isBought": {
        "type": "boolean",
        "description": "A sheet that is bought, or a piece that the customer has."
      },
      "lengthMm": {
        "type": "number",
        "description": "Length of the bought sheet."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the bought sheet."
      },
      "offcutsKept": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Offcut"
        },
        "description": "Rectangles no narrower than what is worth keeping."
      },
      "use": {
        "$ref": "#/components/schemas/SheetUse",
        "description": "Where the area of the sheet goes."
      },
      "stockId": {
        "type": "string",
        "description": "Which kind of stock the sheet is."
      },
      "number": {
        "type": "number",
        "description": "Which of the alike sheets, from 1."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the sheet."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Parts of the sheet that cannot be used."
      },
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        },
        "description": "Where each piece lies on the sheet."
      },
      "sheetAreaM2": {
        "type": "number",
        "description": "Area of the sheet."
      },
      "pieceAreaM2": {
        "type": "number",
        "description": "Area of the pieces cut from it."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of the sheet that becomes pieces."
      },
      "offcuts": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Offcut"
        },
        "description": "The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole."
      }
    },
    "required": [
      "label",
      "isBought",
      "lengthMm",
      "widthMm",
      "offcutsKept",
      "use",
      "stockId",
      "number",
      "outline",
      "holes",
      "placements",
      "sheetAreaM2",
      "pieceAreaM2",
      "utilisation",
      "offcuts"
    ]
  },
  "CutSheet": {
    "type": "object",
    "properties": {
      "stockId": {
        "type": "string",
        "description": "Which kind of stock the sheet is."
      },
      "number": {
        "type": "number",
        "description": "Which of the alike sheets, from 1."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the sheet."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Parts of the sheet that cannot be used."
      },
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        },
        "description": "Where each piece lies on the sheet."
      },
      "sheetAreaM2": {
        "type": "number",
        "description": "Area of the sheet."
      },
      "pieceAreaM2": {
        "type": "number",
        "description": "Area of the pieces cut from it."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of the sheet that becomes pieces."
      },
      "offcuts": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Offcut"
        },
        "description": "The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole."
      }
    },
    "required": [
      "stockId",
      "number",
      "outline",
      "holes",
      "placements",
      "sheetAreaM2",
      "pieceAreaM2",
      "utilisation",
      "offcuts"
    ]
  },
  "CuttingPlan": {
    "type": "object",
    "properties": {
      "onSheets": {
        "$ref": "#/components/schemas/SheetLayout",
        "description": "Layout on sheets, where sheets were asked for."
      },
      "onRoll": {
        "$ref": "#/components/schemas/StripLayout",
        "description": "Layout on a roll, where a roll was asked for."
      },
      "seed": {
        "type": "number",
        "description": "What the answer depends on besides the pieces and the stock; the same settings give the same answer."
      },
      "workUnits": {
        "type": "number",
        "description": "Work that the search was given; more may find a better layout."
      },
      "timeLimitS": {
        "type": "number",
        "description": "Seconds after which the search is ended, finished or not."
      }
    },
    "required": [
      "seed",
      "workUnits",
      "timeLimitS"
    ]
  },
  "Datum": {
    "type": "object",
    "description": "The edge of the panel that a tape is hooked to.",
    "properties": {
      "from": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Point that the tape is hooked on."
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Point that the tape is laid towards."
      },
      "lengthMm": {
        "type": "number",
        "description": "Length of the datum as a check."
      }
    },
    "required": [
      "from",
      "to",
      "lengthMm"
    ]
  },
  "DayRange": {
    "type": "object",
    "description": "Days as a spread: one job in ten, half, and nine in ten stay below.",
    "properties": {
      "p10": {
        "type": "number",
        "description": "Days that one job in ten stays below."
      },
      "p50": {
        "type": "number",
        "description": "Days that half of the jobs stay below."
      },
      "p90": {
        "type": "number",
        "description": "Days that nine jobs in ten stay below."
      }
    },
    "required": [
      "p10",
      "p50",
      "p90"
    ]
  },
  "DeckPhotograph": {
    "type": "object",
    "description": "A photograph of the deck, without its picture.",
    "properties": {
      "number": {
        "type": "number",
        "description": "Number that the photograph has on the plan and in the report, from 1."
      },
      "caption": {
        "type": "string",
        "description": "Words under the photograph in the report."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where it was taken, in the deck plane; absent when nobody said."
      },
      "directionDeg": {
        "type": "number",
        "description": "0 towards the bow, 90 to starboard."
      },
      "widthPx": {
        "type": "number",
        "description": "Width of the kept picture."
      },
      "heightPx": {
        "type": "number",
        "description": "Height of the kept picture."
      },
      "addedAt": {
        "type": "string",
        "description": "When the photograph was taken in (RFC 3339)."
      },
      "href": {
        "type": "string",
        "description": "Address of the picture."
      },
      "mediaType": {
        "type": "string",
        "enum": [
          "image/jpeg"
        ],
        "description": "Form in which the picture is kept."
      }
    },
    "required": [
      "number",
      "caption",
      "widthPx",
      "heightPx",
      "addedAt",
      "href",
      "mediaType"
    ]
  },
  "DeckWarmth": {
    "type": "object",
    "properties": {
      "sunK": {
        "type": "number"
      },
      "heaterK": {
        "type": "number"
      },
      "tentK": {
        "type": "number"
      },
      "isUnderSky": {
        "type": "boolean"
      }
    }
  },
  "DefectRecord": {
    "type": "object",
    "description": "What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,\nand the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.\n\nLengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.",
    "properties": {
      "panel": {
        "$ref": "#/components/schemas/PanelRecord"
      },
      "core": {
        "$ref": "#/components/schemas/OldCore"
      },
      "outerSkin": {
        "$ref": "#/components/schemas/SkinRecord"
      },
      "innerSkin": {
        "$ref": "#/components/schemas/SkinRecord"
      },
      "title": {
        "type": "string"
      },
      "crew": {
        "$ref": "#/components/schemas/Crew"
      },
      "evidence": {
        "type": "string",
        "enum": [
          "mapped-with-plugs",
          "opened-and-measured",
          "single-symptom",
          "sounded-and-metered"
        ]
      },
      "conditions": {
        "$ref": "#/components/schemas/Conditions"
      },
      "method": {
        "$ref": "#/components/schemas/MethodChoice"
      },
      "survey": {
        "$ref": "#/components/schemas/Survey"
      },
      "zones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ZoneRecord"
        }
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FittingRecord"
        }
      },
      "reference": {
        "type": "string"
      },
      "cause": {
        "$ref": "#/components/schemas/CauseRecord"
      },
      "pricing": {
        "$ref": "#/components/schemas/PricingChoice"
      },
      "soundedDeck": {
        "type": "string",
        "enum": [
          "part",
          "whole"
        ]
      },
      "locale": {
        "type": "string"
      },
      "craft": {
        "$ref": "#/components/schemas/Craft"
      },
      "vessel": {
        "$ref": "#/components/schemas/Vessel"
      },
      "inspection": {
        "$ref": "#/components/schemas/Inspection"
      },
      "parties": {
        "$ref": "#/components/schemas/Parties"
      },
      "occurrence": {
        "$ref": "#/components/schemas/Occurrence"
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StatedFinding"
        }
      }
    },
    "required": [
      "panel",
      "core",
      "outerSkin",
      "innerSkin"
    ]
  },
  "DepreciationTerms": {
    "type": "object",
    "description": "Wear of a part, for insurers who pay its worth and not its price.",
    "properties": {
      "ageYears": {
        "type": "number",
        "description": "Age of the old deck that new parts replace."
      },
      "lifeYears": {
        "type": "number",
        "description": "Straight-line life; the percentage is worked out from it when none is given."
      },
      "percent": {
        "type": "string",
        "description": "Exact decimal text, 0 to 100."
      }
    },
    "required": [
      "ageYears"
    ]
  },
  "DivisionByCost": {
    "type": "object",
    "description": "The division that was taken, the others looked at, and the reason in words.",
    "properties": {
      "options": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/DivisionOption"
        },
        "description": "Divisions that were compared."
      },
      "chosen": {
        "type": "number",
        "description": "Place of the cheapest in `options`."
      },
      "words": {
        "type": "string",
        "description": "Why it was chosen."
      }
    },
    "required": [
      "options",
      "chosen",
      "words"
    ]
  },
  "DivisionChoice": {
    "type": "object",
    "properties": {
      "largestPieceM2": {
        "type": "number",
        "description": "Area that no piece may exceed with this division."
      },
      "pieces": {
        "type": "number",
        "description": "Pieces of this division."
      },
      "workH": {
        "type": "number",
        "description": "Hours to cut, fit and bed the pieces of this division."
      },
      "airH": {
        "type": "number",
        "description": "Expected for air shut in under large pieces."
      }
    },
    "required": [
      "largestPieceM2",
      "pieces",
      "workH",
      "airH"
    ]
  },
  "DivisionOption": {
    "type": "object",
    "description": "One way to divide the core, with what its sheets cost and its hours.",
    "properties": {
      "pieces": {
        "type": "number",
        "description": "Pieces that this division has."
      },
      "sheetCost": {
        "type": "number",
        "description": "What the sheets for this division cost."
      },
      "hours": {
        "type": "number",
        "description": "To cut, fit and bed, and to mend hollows."
      }
    },
    "required": [
      "pieces",
      "sheetCost",
      "hours"
    ]
  },
  "DrawingList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "name": {
              "type": "string",
              "description": "Name of the drawing in its address."
            },
            "href": {
              "type": "string",
              "description": "Address of the drawing, in the form that Accept asks for."
            }
          },
          "required": [
            "name",
            "href"
          ]
        },
        "description": "Drawings of the estimate."
      }
    },
    "required": [
      "items"
    ]
  },
  "Driver": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of what moves the price."
      },
      "title": {
        "type": "string",
        "description": "Name of what moves the price."
      },
      "atP10": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Total with this driver at its P10 and P90 and everything else at its median."
      },
      "atP90": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price when this alone is at its high end."
      },
      "swing": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price from its low to its high end."
      },
      "varianceShare": {
        "type": "number",
        "description": "Of the variance, first order."
      }
    },
    "required": [
      "code",
      "title",
      "atP10",
      "atP90",
      "swing",
      "varianceShare"
    ]
  },
  "Edition": {
    "type": "object",
    "description": "One state of the catalogue: a draft, or published and never changed again.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the edition."
      },
      "state": {
        "type": "string",
        "enum": [
          "draft",
          "published",
          "scheduled"
        ],
        "description": "`scheduled`: published, and not yet in effect."
      },
      "isShipped": {
        "type": "boolean",
        "description": "True for the catalogue shipped with the program, which everybody reads and nobody changes."
      },
      "note": {
        "type": "string",
        "description": "What the edition was made for."
      },
      "createdAt": {
        "type": "string",
        "description": "When the draft was made (RFC 3339)."
      },
      "publishedAt": {
        "type": "string",
        "description": "When it took effect (RFC 3339); absent on a draft."
      },
      "effectiveAt": {
        "type": "string",
        "description": "RFC 3339 instant from which it counts; absent when that was its publication."
      },
      "contentHash": {
        "type": "string",
        "description": "SHA-256 of the content of a published edition."
      }
    },
    "required": [
      "code",
      "state",
      "isShipped",
      "note",
      "createdAt"
    ]
  },
  "EditionComparison": {
    "type": "object",
    "description": "What one edition holds otherwise than another.",
    "properties": {
      "before": {
        "type": "string",
        "description": "Code of the edition compared with."
      },
      "after": {
        "type": "string",
        "description": "Code of the edition that was asked about."
      },
      "isSame": {
        "type": "boolean",
        "description": "Whether the two hold the same."
      },
      "changes": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EntryChange"
        },
        "description": "Entries that differ."
      }
    },
    "required": [
      "before",
      "after",
      "isSame",
      "changes"
    ]
  },
  "EditionList": {
    "type": "object",
    "properties": {
      "current": {
        "type": "string",
        "description": "Code of the edition that estimates are made with now."
      },
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Edition"
        },
        "description": "Editions of the organisation, newest first."
      }
    },
    "required": [
      "current",
      "items"
    ]
  },
  "EditionNamed": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Edition that the event tells of."
      },
      "href": {
        "type": "string",
        "description": "Path of the edition."
      }
    },
    "required": [
      "code",
      "href"
    ]
  },
  "EditionPublished": {
    "type": "object",
    "description": "An edition of the catalogue was published: it is current, or will be from `effectiveAt`.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this publication, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the edition was published (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "edition.published"
        ],
        "description": "An edition of the catalogue took effect."
      },
      "data": {
        "$ref": "#/components/schemas/PublicationNamed",
        "description": "The edition and when it counts; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "EditionTrial": {
    "type": "object",
    "description": "What estimates that are kept would come to with an edition, beside what they come to with another. Nothing is stored.",
    "properties": {
      "edition": {
        "type": "string",
        "description": "Code of the edition that was tried."
      },
      "against": {
        "type": "string",
        "description": "Code of the edition it is compared with."
      },
      "engineVersion": {
        "type": "string",
        "description": "Version of the program that worked both out."
      },
      "sameCount": {
        "type": "number",
        "description": "Estimates that come to the same in every line and figure."
      },
      "estimates": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TriedEstimate"
        },
        "description": "Stored estimates, each as the draft would price it."
      },
      "totals": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TrialTotal"
        },
        "description": "Estimates that both editions could answer, summed for each currency."
      }
    },
    "required": [
      "edition",
      "against",
      "engineVersion",
      "sameCount",
      "estimates",
      "totals"
    ]
  },
  "EditionWithdrawn": {
    "type": "object",
    "description": "A publication was taken back before it counted.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this withdrawal, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the publication was taken back (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "edition.withdrawn"
        ],
        "description": "A publication was taken back."
      },
      "data": {
        "$ref": "#/components/schemas/EditionNamed",
        "description": "The edition that is a draft again; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "EngineeringConstants": {
    "type": "object",
    "description": "Moduli of a homogeneous plate that would answer the same.",
    "properties": {
      "youngAlongMPa": {
        "type": "number",
        "description": "Young's modulus fore and aft."
      },
      "youngAcrossMPa": {
        "type": "number",
        "description": "Young's modulus athwart."
      },
      "poissonAlong": {
        "type": "number",
        "description": "Poisson's ratio under load fore and aft."
      },
      "poissonAcross": {
        "type": "number",
        "description": "Poisson's ratio under load athwart."
      },
      "shearModulusMPa": {
        "type": "number",
        "description": "Shear modulus in the plane."
      },
      "shearCouplingAlong": {
        "type": "number",
        "description": "Shear strain per along (across) strain under a pull along (across): 0 for a balanced laminate."
      },
      "shearCouplingAcross": {
        "type": "number",
        "description": "Shear strain over strain under load athwart."
      }
    },
    "required": [
      "youngAlongMPa",
      "youngAcrossMPa",
      "poissonAlong",
      "poissonAcross",
      "shearModulusMPa",
      "shearCouplingAlong",
      "shearCouplingAcross"
    ]
  },
  "Entered": {
    "type": "object",
    "description": "Typed by the caller; `at` is the JSON Pointer of the field.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "entered"
        ],
        "description": "Says that somebody entered the figure."
      },
      "at": {
        "type": "string",
        "description": "JSON Pointer to the answer in the request."
      }
    },
    "required": [
      "kind",
      "at"
    ]
  },
  "Entry": {
    "type": "object",
    "description": "How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip.",
    "properties": {
      "way": {
        "type": "string",
        "enum": [
          "drops",
          "slides"
        ],
        "description": "Whether the piece drops in from above or is slid under the lip."
      },
      "path": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]."
      }
    },
    "required": [
      "way",
      "path"
    ]
  },
  "EntryChange": {
    "type": "object",
    "properties": {
      "subject": {
        "type": "string",
        "enum": [
          "labour_rates",
          "material",
          "price_list",
          "source"
        ],
        "description": "What kind of entry differs."
      },
      "code": {
        "type": "string",
        "description": "Code of the entry."
      },
      "change": {
        "type": "string",
        "enum": [
          "added",
          "changed",
          "removed"
        ],
        "description": "Whether the entry was added, removed or changed."
      },
      "fields": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EntryField"
        },
        "description": "The first 200 fields that differ, of an entry that is in both."
      },
      "fieldCount": {
        "type": "number",
        "description": "How many of its fields differ; `fields` may list fewer."
      }
    },
    "required": [
      "subject",
      "code",
      "change",
      "fields",
      "fieldCount"
    ]
  },
  "EntryField": {
    "type": "object",
    "properties": {
      "at": {
        "type": "string",
        "description": "JSON pointer below the entry; packs of a price list by their SKU."
      },
      "before": {
        "description": "Value before the change; absent where there was nothing."
      },
      "after": {
        "description": "Value after the change; absent where nothing is left."
      }
    },
    "required": [
      "at"
    ]
  },
  "Estimate": {
    "type": "object",
    "description": "The document a surveyor attaches: everything in JSON-safe values, SI units in the names.\nImmutable once made. `derivations` answers \"why?\" and is stored beside the document.",
    "properties": {
      "summary": {
        "$ref": "#/components/schemas/Summary",
        "description": "The figures that a reader asks for first."
      },
      "conclusion": {
        "$ref": "#/components/schemas/ConclusionSection",
        "description": "What it comes to in words: the page that is read first."
      },
      "bibliography": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BibliographyEntry"
        },
        "description": "Every source named in the document, by the key it is named with."
      },
      "title": {
        "type": "string",
        "description": "Title of the estimated job."
      },
      "reference": {
        "type": "string",
        "description": "Reference that the caller gave."
      },
      "methods": {
        "$ref": "#/components/schemas/MethodsSection",
        "description": "Every way to mend this deck, which one is planned, and why."
      },
      "scope": {
        "$ref": "#/components/schemas/Scope",
        "description": "What is opened, kept and left alone."
      },
      "core": {
        "$ref": "#/components/schemas/CoreSection",
        "description": "Absent where the method opens nothing; `leftOut` says why."
      },
      "laminate": {
        "$ref": "#/components/schemas/LaminateSection",
        "description": "New skin; absent where none is laid."
      },
      "panel": {
        "$ref": "#/components/schemas/PanelSection",
        "description": "Comparison with the deck before; absent where it could not be made."
      },
      "leftOut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LeftOutSection"
        },
        "description": "Sections that this method has no use for, each with the reason."
      },
      "hardware": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HardwareCard"
        },
        "description": "One card for each fitting that comes off."
      },
      "leak": {
        "$ref": "#/components/schemas/LeakSection",
        "description": "How the water came in, and whether this plan stops it."
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Check"
        },
        "description": "Every check of the repair in one list."
      },
      "process": {
        "$ref": "#/components/schemas/ProcessSection",
        "description": "Mixing, cure, pressing and calendar."
      },
      "sections": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostSection"
        },
        "description": "Sums of the parts of the price."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateLine"
        },
        "description": "Lines of the price."
      },
      "totals": {
        "$ref": "#/components/schemas/Totals",
        "description": "From the lines to the total."
      },
      "cautions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Caution"
        },
        "description": "What can hurt somebody."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateAssumption"
        },
        "description": "All that was taken because nobody stated it."
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the estimate does not say."
      },
      "provenance": {
        "$ref": "#/components/schemas/ProvenanceStamp",
        "description": "What the estimate was made with."
      }
    },
    "required": [
      "summary",
      "conclusion",
      "bibliography",
      "title",
      "methods",
      "scope",
      "leftOut",
      "hardware",
      "leak",
      "checks",
      "process",
      "sections",
      "lines",
      "totals",
      "cautions",
      "assumptions",
      "limits",
      "provenance"
    ]
  },
  "EstimateAssumption": {
    "type": "object",
    "properties": {
      "of": {
        "type": "string",
        "description": "`record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for."
      },
      "at": {
        "type": "string",
        "description": "JSON Pointer, in the record or in that endpoint's request, of the field that would replace the default."
      },
      "meaning": {
        "type": "string",
        "description": "What was not stated."
      },
      "value": {
        "type": "string",
        "description": "What the estimate takes, as text."
      },
      "because": {
        "type": "string",
        "description": "Why it takes that."
      },
      "source": {
        "type": "string",
        "description": "What it leans on."
      }
    },
    "required": [
      "of",
      "at",
      "meaning",
      "value",
      "because",
      "source"
    ]
  },
  "EstimateBasket": {
    "type": "object",
    "description": "A basket for stored estimates: priced in one edition of the catalogue, from today's stock, with what has changed since each was made.",
    "properties": {
      "pricedAt": {
        "type": "string",
        "description": "Edition whose prices it is made with."
      },
      "stockCountedAt": {
        "type": "string",
        "description": "RFC 3339 instant of the oldest count of stock in the list; absent when the stock of the edition counts."
      },
      "drift": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateDrift"
        },
        "description": "For every estimate that was made with another edition, in the currency of the list."
      },
      "currency": {
        "type": "string",
        "description": "Currency of every amount of the basket (ISO 4217)."
      },
      "priceList": {
        "type": "string",
        "description": "Code of the price list whose packs were chosen from."
      },
      "isInvented": {
        "type": "boolean",
        "description": "Whether the prices of the list are made up for demonstration."
      },
      "pricesIncludeTax": {
        "type": "boolean",
        "description": "Whether the prices of the list hold tax already."
      },
      "proof": {
        "oneOf": [
          {
            "$ref": "#/components/schemas/Proven"
          },
          {
            "$ref": "#/components/schemas/Gap"
          }
        ],
        "discriminator": {
          "propertyName": "kind",
          "mapping": {
            "proven": "#/components/schemas/Proven",
            "gap": "#/components/schemas/Gap"
          }
        },
        "description": "Whether no cheaper basket exists, or how far one could be."
      },
      "isComplete": {
        "type": "boolean",
        "description": "Whether every need is covered; `missing` lists those that are not."
      },
      "missing": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostingMissing"
        },
        "description": "Needs that no pack of the list covers."
      },
      "excluded": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Excluded"
        },
        "description": "Packs that were left out before the choice, each with the reason."
      },
      "byEstimate": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "estimate": {
              "type": "string",
              "description": "Estimate that bears the amount."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Its share of the order, by what it needs."
            }
          },
          "required": [
            "estimate",
            "amount"
          ]
        },
        "description": "What each estimate of a common order bears of the total."
      },
      "secondBest": {
        "$ref": "#/components/schemas/SecondBest",
        "description": "The next cheaper basket from other suppliers, where it was looked for."
      },
      "warnings": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the buyer should know before ordering."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Goods, cut fees, deliveries and surcharges of all orders together."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        },
        "description": "What is bought, a line for each kind of pack."
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        },
        "description": "The lines gathered into one order for each supplier."
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        },
        "description": "Needs that something other than what was planned covers."
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        },
        "description": "What remains of the bought packs when the job is done."
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        },
        "description": "Each need beside the packs that cover it."
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        },
        "description": "Resins beside the hardeners bought to cure them."
      }
    },
    "required": [
      "pricedAt",
      "drift",
      "currency",
      "priceList",
      "isInvented",
      "pricesIncludeTax",
      "proof",
      "isComplete",
      "missing",
      "excluded",
      "byEstimate",
      "warnings",
      "total",
      "lines",
      "orders",
      "substitutions",
      "leftovers",
      "coverage",
      "matched"
    ]
  },
  "EstimateCalendar": {
    "type": "object",
    "description": "The calendar of an estimate by itself.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Estimate whose calendar it is."
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark",
        "description": "Revision that the calendar belongs to."
      },
      "calendar": {
        "$ref": "#/components/schemas/CalendarSection",
        "description": "Tasks, waits and milestones."
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherSection",
        "description": "Windows of the weather for each step; absent without a forecast."
      },
      "day": {
        "type": "object",
        "properties": {
          "date": {
            "type": "string",
            "description": "Day that was asked about (ISO 8601)."
          },
          "items": {
            "type": "array",
            "items": {
              "$ref": "#/components/schemas/TodayItem"
            },
            "description": "What is done and waited for on that day."
          }
        },
        "required": [
          "date",
          "items"
        ],
        "description": "The work, the waits and the holds of the day that was asked for, or what comes next."
      }
    },
    "required": [
      "id",
      "revision",
      "calendar"
    ]
  },
  "EstimateCorePiece": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "Name written on the piece."
      },
      "beddingOrder": {
        "type": "number",
        "description": "Place in the order of bedding, from 1."
      },
      "opening": {
        "type": "string",
        "description": "Opening that it is bedded in."
      },
      "bay": {
        "type": "number",
        "description": "What is bedded in one go; counted from 1 in each layer of an opening."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of it in the deck plane, points [xMm, yMm] in order."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "What is cut out of the piece."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the piece."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Whether the piece is plain or scored."
      },
      "layer": {
        "type": "number",
        "description": "Layer of the stack that the piece belongs to; 1 lies on the inner skin."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the cut piece."
      },
      "isUnderLip": {
        "type": "boolean",
        "description": "Slid under the skin that stays; the others drop in."
      },
      "grainDeg": {
        "type": "number",
        "description": "Only for core that has a grain in its plane."
      },
      "bleedHoles": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Where the piece is drilled for air, [xMm, yMm]."
      }
    },
    "required": [
      "label",
      "beddingOrder",
      "opening",
      "bay",
      "outline",
      "holes",
      "thicknessMm",
      "form",
      "layer",
      "areaM2",
      "isUnderLip",
      "bleedHoles"
    ]
  },
  "EstimateCreated": {
    "type": "object",
    "description": "An estimate was made.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this making of an estimate, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the estimate was made (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "estimate.created"
        ],
        "description": "An estimate was made."
      },
      "data": {
        "$ref": "#/components/schemas/EstimateNamed",
        "description": "The estimate that was made; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "EstimateDrift": {
    "type": "object",
    "description": "How the prices of a list differ from those that an estimate was reckoned with.",
    "properties": {
      "estimate": {
        "type": "string",
        "description": "Estimate whose prices were compared."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineDrift"
        },
        "description": "Lines whose packs cost something else today."
      },
      "then": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Of the lines that can still be bought as they were reckoned."
      },
      "now": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What its packs cost today."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Today's price less the price then."
      },
      "gone": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Packs that are not on the list any more, each once."
      }
    },
    "required": [
      "estimate",
      "lines",
      "then",
      "now",
      "difference",
      "gone"
    ]
  },
  "EstimateFinding": {
    "type": "object",
    "description": "Something measured that does not fit, with its numbers.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Stable code of the finding."
      },
      "severity": {
        "type": "string",
        "enum": [
          "note",
          "stop",
          "warn"
        ],
        "description": "Whether it stops the repair, warns, or is only worth knowing."
      },
      "text": {
        "type": "string",
        "description": "The finding in a sentence for the reader."
      },
      "facts": {
        "type": "object",
        "additionalProperties": {
          "oneOf": [
            {
              "type": "string"
            },
            {
              "type": "number"
            }
          ]
        },
        "description": "Numbers and words that the finding names."
      }
    },
    "required": [
      "code",
      "severity",
      "text",
      "facts"
    ]
  },
  "EstimateLine": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the line; asked with it, the service derives the quantity."
      },
      "section": {
        "type": "string",
        "description": "Section that the line stands in."
      },
      "title": {
        "type": "string",
        "description": "What the line is for."
      },
      "kind": {
        "type": "string",
        "enum": [
          "charge",
          "consumable",
          "disposal",
          "hire",
          "labour",
          "material"
        ],
        "description": "What sort of cost it is."
      },
      "partOrLabour": {
        "type": "string",
        "enum": [
          "labour",
          "part"
        ],
        "description": "Goods or work."
      },
      "causeClass": {
        "type": "string",
        "enum": [
          "maintenance",
          "pre-existing",
          "sudden"
        ],
        "description": "Cause that the line is put down to."
      },
      "material": {
        "type": "string",
        "description": "Code of the material; absent for work."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the quantities."
      },
      "netQuantity": {
        "type": "number",
        "description": "Quantity in the finished repair."
      },
      "wasteQuantity": {
        "type": "number",
        "description": "Quantity lost on the way."
      },
      "purchaseQuantity": {
        "type": "number",
        "description": "Quantity that is bought or paid."
      },
      "range": {
        "type": "object",
        "properties": {
          "low": {
            "type": "number",
            "description": "Quantity at the low end."
          },
          "high": {
            "type": "number",
            "description": "Quantity at the high end."
          }
        },
        "required": [
          "low",
          "high"
        ],
        "description": "Least and most that may be needed, waste counted; absent for services."
      },
      "hours": {
        "type": "object",
        "properties": {
          "low": {
            "type": "number",
            "description": "Hours when all goes well."
          },
          "likely": {
            "type": "number",
            "description": "Hours that are most likely."
          },
          "mean": {
            "type": "number",
            "description": "Hours on average."
          },
          "high": {
            "type": "number",
            "description": "Hours when it goes badly."
          }
        },
        "required": [
          "low",
          "likely",
          "mean",
          "high"
        ],
        "description": "Of labour: least, most likely, mean and most; the mean is priced."
      },
      "pricedQuantity": {
        "type": "string",
        "description": "What was multiplied, as an exact decimal."
      },
      "packs": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "sku": {
              "type": "string",
              "description": "Number of the pack to buy."
            },
            "name": {
              "type": "string",
              "description": "Name of the pack to buy."
            },
            "supplier": {
              "type": "string",
              "description": "Who sells the pack."
            },
            "count": {
              "type": "number",
              "description": "Packs to buy."
            },
            "price": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Price of one of them."
            }
          },
          "required": [
            "sku",
            "name",
            "supplier",
            "count",
            "price"
          ]
        },
        "description": "Whole packs to be bought; empty for services. The amount is what is charged of their count times their price."
      },
      "goods": {
        "type": "object",
        "properties": {
          "billedBy": {
            "type": "string",
            "enum": [
              "use",
              "wear",
              "whole-packs"
            ],
            "description": "Whether the customer pays whole packs or what is used."
          },
          "bought": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "What the yard pays for the packs."
          }
        },
        "required": [
          "billedBy",
          "bought"
        ],
        "description": "Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to."
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price of a unit."
      },
      "isAveragePrice": {
        "type": "boolean",
        "description": "True where packs were priced and `unitPrice` is their price over their content."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Quantity times price, rounded once."
      },
      "amountRange": {
        "type": "object",
        "properties": {
          "low": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Amount with everything low."
          },
          "high": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Amount with everything high."
          }
        },
        "required": [
          "low",
          "high"
        ],
        "description": "Least and most of the amount at the recorded extent."
      },
      "depreciable": {
        "type": "boolean",
        "description": "Whether wear of the old part may be taken off."
      },
      "depreciation": {
        "$ref": "#/components/schemas/LineDepreciation",
        "description": "Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax."
      },
      "taxGroup": {
        "type": "string",
        "description": "Tax group that the line falls in."
      }
    },
    "required": [
      "code",
      "section",
      "title",
      "kind",
      "partOrLabour",
      "causeClass",
      "unit",
      "netQuantity",
      "wasteQuantity",
      "purchaseQuantity",
      "pricedQuantity",
      "packs",
      "unitPrice",
      "isAveragePrice",
      "amount",
      "amountRange",
      "depreciable",
      "taxGroup"
    ]
  },
  "EstimateMoneyRange": {
    "type": "object",
    "properties": {
      "p10": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount that one job in ten stays below."
      },
      "p50": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount that half of the jobs stay below."
      },
      "p80": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount that eight jobs in ten stay below."
      },
      "p90": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount that nine jobs in ten stay below."
      }
    },
    "required": [
      "p10",
      "p50",
      "p80",
      "p90"
    ]
  },
  "EstimateNamed": {
    "type": "object",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the estimate the event tells of."
      },
      "href": {
        "type": "string",
        "description": "Path of the estimate."
      },
      "reference": {
        "type": "string",
        "description": "The caller's own reference, when it gave one."
      },
      "edition": {
        "type": "string",
        "description": "Code of the edition it was made with."
      },
      "publishableKeyId": {
        "type": "string",
        "description": "Id of the publishable key of the page that made it; absent for estimates made with secret keys."
      }
    },
    "required": [
      "id",
      "href",
      "edition"
    ]
  },
  "EstimatePage": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateSummary"
        },
        "description": "Estimates, newest first."
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` for older estimates; absent on the last page."
      }
    },
    "required": [
      "items"
    ]
  },
  "EstimatePreview": {
    "type": "object",
    "description": "What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept.",
    "properties": {
      "title": {
        "type": "string",
        "description": "Title of the job previewed."
      },
      "summary": {
        "$ref": "#/components/schemas/PreviewSummary",
        "description": "The figures that can be had at once."
      },
      "zones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string",
              "description": "Id of the zone."
            },
            "outline": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "number"
                },
                "minItems": 2,
                "maxItems": 2
              },
              "description": "Edge of the zone."
            },
            "areaM2": {
              "type": "number",
              "description": "Area of the zone."
            },
            "condition": {
              "type": "string",
              "description": "What the core in the zone is like."
            }
          },
          "required": [
            "id",
            "outline",
            "areaM2",
            "condition"
          ]
        },
        "description": "Damaged zones as drawn or mapped."
      },
      "openings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PreviewedOpening"
        },
        "description": "Openings with their saw lines."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateFinding"
        },
        "description": "What the full estimate would stop at or warn of so far."
      },
      "panel": {
        "$ref": "#/components/schemas/PreviewPanel",
        "description": "How the repaired deck compares, as far as looked at."
      },
      "price": {
        "$ref": "#/components/schemas/PreviewPrice",
        "description": "What the job may cost, as a first range."
      },
      "leftOut": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "In words: what the estimate works out and this leaves out, or takes a shorter way to."
      }
    },
    "required": [
      "title",
      "summary",
      "zones",
      "openings",
      "findings",
      "panel",
      "price",
      "leftOut"
    ]
  },
  "EstimateRevised": {
    "type": "object",
    "description": "A revision of an estimate was made.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this revision, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the revision was made (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "estimate.revised"
        ],
        "description": "An estimate was revised."
      },
      "data": {
        "$ref": "#/components/schemas/RevisionNamed",
        "description": "The revision and what it revises; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "EstimateSummary": {
    "type": "object",
    "description": "An estimate in a list.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the estimate."
      },
      "createdAt": {
        "type": "string",
        "description": "When the estimate was made (RFC 3339)."
      },
      "title": {
        "type": "string",
        "description": "Title of the job."
      },
      "reference": {
        "type": "string",
        "description": "The caller's own word for the job."
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark",
        "description": "Which revision of the job the estimate is."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price with tax, at the likely quantities."
      },
      "totalP10": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price that one job in ten stays below."
      },
      "totalP90": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price that nine jobs in ten stay below."
      },
      "labourH": {
        "type": "number",
        "description": "Expected hours of work."
      },
      "verdict": {
        "type": "string",
        "description": "How the repair compares with the deck that it replaces."
      },
      "engineVersion": {
        "type": "string",
        "description": "Version of the program that estimated it."
      },
      "edition": {
        "type": "string",
        "description": "Edition of the catalogue that priced it."
      }
    },
    "required": [
      "id",
      "createdAt",
      "title",
      "revision",
      "total",
      "totalP10",
      "totalP90",
      "labourH",
      "verdict",
      "engineVersion",
      "edition"
    ]
  },
  "EventPage": {
    "type": "object",
    "description": "A page of what happened, oldest first.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "oneOf": [
            {
              "$ref": "#/components/schemas/EstimateCreated"
            },
            {
              "$ref": "#/components/schemas/EstimateRevised"
            },
            {
              "$ref": "#/components/schemas/EditionPublished"
            },
            {
              "$ref": "#/components/schemas/EditionWithdrawn"
            },
            {
              "$ref": "#/components/schemas/OperationDone"
            },
            {
              "$ref": "#/components/schemas/OrderMade"
            }
          ],
          "discriminator": {
            "propertyName": "type",
            "mapping": {
              "estimate.created": "#/components/schemas/EstimateCreated",
              "estimate.revised": "#/components/schemas/EstimateRevised",
              "edition.published": "#/components/schemas/EditionPublished",
              "edition.withdrawn": "#/components/schemas/EditionWithdrawn",
              "operation.done": "#/components/schemas/OperationDone",
              "order.made": "#/components/schemas/OrderMade"
            }
          }
        },
        "description": "Events in the order they happened."
      },
      "nextCursor": {
        "type": "string",
        "description": "Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new."
      }
    },
    "required": [
      "items"
    ]
  },
  "Excluded": {
    "type": "object",
    "description": "A pack that was not considered, and why.",
    "properties": {
      "sku": {
        "type": "string",
        "description": "Pack that was not considered."
      },
      "reason": {
        "type": "string",
        "enum": [
          "does-not-keep",
          "hazardous-by-air",
          "out-of-stock",
          "supplier-not-chosen"
        ],
        "description": "Why not: its supplier was not chosen, it would not keep until the work, or it may not go by air."
      }
    },
    "required": [
      "sku",
      "reason"
    ]
  },
  "Extent": {
    "type": "object",
    "description": "How far the damage goes, and how sure that is.",
    "properties": {
      "from": {
        "type": "string",
        "enum": [
          "drawn-zones",
          "readings"
        ],
        "description": "Whether readings or only drawn zones say where the core is bad."
      },
      "zones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ExtentZone"
        },
        "description": "Bad core to be opened, largest first; ready to be the zones of `planOpenings`."
      },
      "contours": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ProbabilityContour"
        },
        "description": "Edges within which the core is bad with a given chance."
      },
      "map": {
        "$ref": "#/components/schemas/ProbabilityMap",
        "description": "Chance of bad core at the middle of each cell of the panel; absent for drawn zones."
      },
      "cut": {
        "$ref": "#/components/schemas/CutChoice",
        "description": "How the cut was decided; absent for drawn zones."
      },
      "mappedAreaM2": {
        "type": "number",
        "description": "Area of the zones."
      },
      "mapSpreadM2": {
        "$ref": "#/components/schemas/Quantiles",
        "description": "Area of bad core as far as the readings leave it open; absent for drawn zones."
      },
      "damagedAreaM2": {
        "$ref": "#/components/schemas/Quantiles",
        "description": "Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone."
      },
      "growth": {
        "$ref": "#/components/schemas/Quantiles",
        "description": "`damagedAreaM2` over `mappedAreaM2`; absent when nothing is mapped."
      },
      "evidence": {
        "type": "object",
        "properties": {
          "grade": {
            "type": "string",
            "enum": [
              "mapped-with-plugs",
              "opened-and-measured",
              "single-symptom",
              "sounded-and-metered"
            ],
            "description": "Grade of the evidence."
          },
          "because": {
            "type": "string",
            "description": "Why it has this grade."
          },
          "multiplier": {
            "$ref": "#/components/schemas/ThreePoint",
            "description": "Growth at P10, P50 and P90."
          },
          "law": {
            "$ref": "#/components/schemas/GrowthLaw",
            "description": "How the found area grows over the recorded one at this grade."
          }
        },
        "required": [
          "grade",
          "because",
          "multiplier",
          "law"
        ],
        "description": "How good the evidence is, and what follows from that."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ExtentFinding"
        },
        "description": "What about the evidence deserves attention."
      },
      "nextReadings": {
        "$ref": "#/components/schemas/NextReadings",
        "description": "Where to tap or plug next, and whether it is worth it; absent for drawn zones, unless it is asked for."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "What was taken about readings and decay."
      },
      "figures": {
        "$ref": "#/components/schemas/ExtentFigures",
        "description": "Areas with their derivations."
      }
    },
    "required": [
      "from",
      "zones",
      "contours",
      "mappedAreaM2",
      "damagedAreaM2",
      "evidence",
      "findings",
      "assumptions",
      "figures"
    ]
  },
  "ExtentAndOpenings": {
    "type": "object",
    "properties": {
      "extent": {
        "$ref": "#/components/schemas/Extent",
        "description": "Where the core is likely bad."
      },
      "plan": {
        "$ref": "#/components/schemas/OpeningPlan",
        "description": "Absent when nothing on the panel is worth opening; a finding of the extent says so."
      }
    },
    "required": [
      "extent"
    ]
  },
  "ExtentFigures": {
    "type": "object",
    "properties": {
      "mappedArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Area within the chosen edge."
      },
      "likelyArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Bad area to be expected."
      }
    },
    "required": [
      "mappedArea",
      "likelyArea"
    ]
  },
  "ExtentFinding": {
    "type": "object",
    "description": "Something measured that does not fit or that must be known, with its numbers; never an exception.",
    "properties": {
      "code": {
        "type": "string",
        "enum": [
          "bad-reading-outside-zone",
          "corner-too-tight",
          "cut-crosses-support",
          "cut-on-support",
          "depth-margin-short",
          "depth-not-established",
          "depth-over-usual",
          "evidence-overstated",
          "fitting-on-cut",
          "growth-capped",
          "highly-loaded-fitting",
          "leak-elsewhere",
          "measured-overrules",
          "narrow-bridge",
          "no-plug-in-zone",
          "no-plug-outside-zone",
          "no-room-for-opening",
          "no-room-for-taper",
          "nothing-to-open",
          "piece-too-large",
          "plug-contradicts",
          "plugs-disagree",
          "readings-all-alike",
          "readings-contradict",
          "readings-enough",
          "readings-in-line",
          "readings-outside",
          "readings-sparse",
          "readings-unreliable",
          "readings-worth-taking",
          "skin-varies",
          "sound-reading-in-zone",
          "undercut-too-deep",
          "zone-clipped",
          "zones-smoothed"
        ],
        "description": "What was found about the extent."
      },
      "severity": {
        "type": "string",
        "enum": [
          "note",
          "stop",
          "warn"
        ],
        "description": "`stop`: do not cut before this is settled; `warn`: changes the work; `note`: good to know."
      },
      "text": {
        "type": "string",
        "description": "What was found, in a sentence."
      },
      "facts": {
        "type": "object",
        "additionalProperties": {
          "oneOf": [
            {
              "type": "string"
            },
            {
              "type": "number"
            }
          ]
        },
        "description": "Numbers that the finding about the extent names."
      }
    },
    "required": [
      "code",
      "severity",
      "text",
      "facts"
    ]
  },
  "ExtentZone": {
    "type": "object",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the damaged zone."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the damaged zone."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Sound islands within the zone."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the zone without its islands."
      },
      "boundary": {
        "type": "string",
        "enum": [
          "drawn",
          "mapped"
        ],
        "description": "Whether somebody drew the edge or the map gave it."
      }
    },
    "required": [
      "id",
      "outline",
      "holes",
      "areaM2",
      "boundary"
    ]
  },
  "Figure": {
    "type": "object",
    "description": "A number that can answer \"why?\": its value, its unit, and where it came from, down to the leaves.",
    "properties": {
      "value": {
        "type": "number",
        "description": "The number, in `unit`."
      },
      "unit": {
        "type": "string",
        "description": "Unit that the number is in; `1` for a share or ratio."
      },
      "meaning": {
        "type": "string",
        "description": "What the number is, in words."
      },
      "origin": {
        "oneOf": [
          {
            "$ref": "#/components/schemas/Entered"
          },
          {
            "$ref": "#/components/schemas/FromCatalogue"
          },
          {
            "$ref": "#/components/schemas/Assumed"
          },
          {
            "$ref": "#/components/schemas/Computed"
          }
        ],
        "discriminator": {
          "propertyName": "kind",
          "mapping": {
            "entered": "#/components/schemas/Entered",
            "catalogue": "#/components/schemas/FromCatalogue",
            "assumed": "#/components/schemas/Assumed",
            "computed": "#/components/schemas/Computed"
          }
        },
        "description": "Where it comes from: entered, catalogue, assumed or computed."
      }
    },
    "required": [
      "value",
      "unit",
      "meaning",
      "origin"
    ]
  },
  "FigureChange": {
    "type": "object",
    "description": "A figure of the summary that differs between two estimates.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Which figure of the summary changed."
      },
      "name": {
        "type": "string",
        "description": "Name of that figure."
      },
      "unit": {
        "type": "string",
        "description": "Unit of both values."
      },
      "before": {
        "type": "number",
        "description": "The figure in the earlier estimate."
      },
      "after": {
        "type": "number",
        "description": "The figure in the later estimate."
      }
    },
    "required": [
      "code",
      "name",
      "unit",
      "before",
      "after"
    ]
  },
  "FittingInScope": {
    "type": "object",
    "description": "What the job does to one fitting, and why it is in the scope.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the fitting."
      },
      "kind": {
        "type": "string",
        "enum": [
          "chainplate",
          "cleat",
          "fill",
          "hatch",
          "mast-step",
          "other",
          "pad-eye",
          "stanchion",
          "track",
          "vent",
          "winch",
          "windlass"
        ],
        "description": "Kind of fitting."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Middle of the fitting, [xMm, yMm]."
      },
      "holes": {
        "type": "number",
        "description": "Holes that the fitting has."
      },
      "where": {
        "type": "string",
        "enum": [
          "inside",
          "near"
        ],
        "description": "Whether it stands in an opening or beside one."
      },
      "opening": {
        "type": "string",
        "description": "Label of the nearest opening."
      },
      "distanceMm": {
        "type": "number",
        "description": "From the edge of its base to the opening; 0 inside."
      },
      "isHighlyLoaded": {
        "type": "boolean",
        "description": "Whether it carries loads that a crew depends on."
      },
      "work": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "insert",
            "plate",
            "pot",
            "re-bed",
            "refit",
            "remove"
          ]
        },
        "description": "What is done to it."
      },
      "because": {
        "type": "string",
        "description": "Why the work is needed."
      }
    },
    "required": [
      "id",
      "kind",
      "at",
      "holes",
      "where",
      "opening",
      "distanceMm",
      "isHighlyLoaded",
      "work",
      "because"
    ]
  },
  "FittingRecord": {
    "type": "object",
    "properties": {
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "kind": {
        "type": "string",
        "enum": [
          "chainplate",
          "cleat",
          "fill",
          "hatch",
          "mast-step",
          "other",
          "pad-eye",
          "stanchion",
          "track",
          "vent",
          "winch",
          "windlass"
        ]
      },
      "id": {
        "type": "string"
      },
      "holes": {
        "type": "number"
      },
      "holeDiameterMm": {
        "type": "number"
      },
      "baseMm": {
        "type": "number"
      },
      "isLeaking": {
        "type": "boolean"
      },
      "wetReachMm": {
        "type": "number"
      },
      "boltMm": {
        "type": "number"
      },
      "boltLengthMm": {
        "type": "number"
      },
      "plateMm": {
        "type": "number"
      },
      "plateThicknessMm": {
        "type": "number"
      },
      "insertMm": {
        "type": "number"
      },
      "offH": {
        "type": "number"
      },
      "onH": {
        "type": "number"
      }
    },
    "required": [
      "at",
      "kind",
      "id"
    ]
  },
  "FittingScope": {
    "type": "object",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the fitting in the record."
      },
      "kind": {
        "type": "string",
        "enum": [
          "chainplate",
          "cleat",
          "fill",
          "hatch",
          "mast-step",
          "other",
          "pad-eye",
          "stanchion",
          "track",
          "vent",
          "winch",
          "windlass"
        ],
        "description": "What the fitting is."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where its middle is, [xMm, yMm]."
      },
      "holes": {
        "type": "number",
        "description": "How many holes it has."
      },
      "where": {
        "type": "string",
        "enum": [
          "inside",
          "near"
        ],
        "description": "In an opening, or near one."
      },
      "work": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "insert",
            "plate",
            "pot",
            "re-bed",
            "refit",
            "remove"
          ]
        },
        "description": "What the crew does with it."
      },
      "isHighlyLoaded": {
        "type": "boolean",
        "description": "Whether lives or the rig hang on it."
      }
    },
    "required": [
      "id",
      "kind",
      "at",
      "holes",
      "where",
      "work",
      "isHighlyLoaded"
    ]
  },
  "Forecast": {
    "type": "object",
    "properties": {
      "hours": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ForecastHour"
        }
      },
      "timeZone": {
        "type": "string"
      }
    },
    "required": [
      "hours"
    ]
  },
  "ForecastHour": {
    "type": "object",
    "properties": {
      "at": {
        "type": "string"
      },
      "temperatureC": {
        "type": "number"
      },
      "relativeHumidityPercent": {
        "type": "number"
      },
      "windMPerS": {
        "type": "number"
      },
      "rainMm": {
        "type": "number"
      },
      "cloudPercent": {
        "type": "number"
      }
    },
    "required": [
      "at",
      "temperatureC",
      "relativeHumidityPercent"
    ]
  },
  "FromCatalogue": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "catalogue"
        ],
        "description": "Says that the figure stands in the catalogue."
      },
      "item": {
        "type": "string",
        "description": "Code of the material or list it belongs to."
      },
      "field": {
        "type": "string",
        "description": "Field of that item."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Where the catalogue has the value from."
      },
      "low": {
        "type": "number",
        "description": "Low end of the value's spread."
      },
      "high": {
        "type": "number",
        "description": "High end of the value's spread."
      }
    },
    "required": [
      "kind",
      "item",
      "field",
      "cite"
    ]
  },
  "Gap": {
    "type": "object",
    "description": "The search was ended before.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "gap"
        ],
        "description": "Says that a cheaper basket may exist."
      },
      "bound": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "No basket can cost less than this."
      },
      "gapFraction": {
        "type": "number",
        "description": "How far the basket may be above the cheapest, as a share of its price."
      }
    },
    "required": [
      "kind"
    ]
  },
  "GoodsSums": {
    "type": "object",
    "description": "Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs.",
    "properties": {
      "billing": {
        "type": "string",
        "enum": [
          "as-bought",
          "as-used"
        ],
        "description": "How goods are billed."
      },
      "billed": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the customer pays for goods."
      },
      "bought": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the yard pays for goods."
      },
      "basis": {
        "type": "string",
        "description": "Why the two differ."
      }
    },
    "required": [
      "billing",
      "billed",
      "bought",
      "basis"
    ]
  },
  "GradedFinding": {
    "type": "object",
    "properties": {
      "class": {
        "type": "string",
        "enum": [
          "before-use",
          "monitor",
          "next-opportunity"
        ],
        "description": "Class that the report gives the finding."
      },
      "classByService": {
        "type": "string",
        "enum": [
          "before-use",
          "monitor",
          "next-opportunity"
        ],
        "description": "Class that the rules would give it."
      },
      "classBecause": {
        "type": "string",
        "description": "Why the rules give this class."
      },
      "wording": {
        "$ref": "#/components/schemas/Worded",
        "description": "What was found."
      },
      "recommendation": {
        "$ref": "#/components/schemas/Worded",
        "description": "What to do about it."
      },
      "restriction": {
        "$ref": "#/components/schemas/Worded",
        "description": "What not to do until then."
      },
      "about": {
        "type": "string",
        "description": "A zone, a fitting, or the surveyor's own label."
      },
      "condition": {
        "type": "string",
        "description": "Condition of the core at the finding."
      },
      "areaM2": {
        "type": "number",
        "description": "Area that the finding is about."
      },
      "fromAftMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Distance of the finding from the aft edge of the panel, nearest and farthest."
      },
      "fittings": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string",
              "description": "Id of a fitting at the finding."
            },
            "kind": {
              "type": "string",
              "enum": [
                "chainplate",
                "cleat",
                "fill",
                "hatch",
                "mast-step",
                "other",
                "pad-eye",
                "stanchion",
                "track",
                "vent",
                "winch",
                "windlass"
              ],
              "description": "What fitting it is."
            },
            "isLeaking": {
              "type": "boolean",
              "description": "Whether water comes in at it."
            }
          },
          "required": [
            "id",
            "kind",
            "isLeaking"
          ]
        },
        "description": "Fittings at the finding."
      }
    },
    "required": [
      "class",
      "classByService",
      "classBecause",
      "wording",
      "recommendation",
      "restriction",
      "about",
      "condition",
      "areaM2",
      "fittings"
    ]
  },
  "GrowthLaw": {
    "type": "object",
    "description": "Found area over recorded area, as a distribution. With `falseAlarmShare` nearly nothing is found, evenly spread up to\n`falseAlarmUpTo`; else the factor is lognormal. Both are cut off at `most`, where the panel ends.",
    "properties": {
      "falseAlarmShare": {
        "type": "number",
        "description": "Share of jobs where less is found than was recorded."
      },
      "falseAlarmFrom": {
        "type": "number",
        "description": "Least ratio of found to recorded area in those jobs."
      },
      "falseAlarmUpTo": {
        "type": "number",
        "description": "Greatest ratio of found to recorded area in those jobs."
      },
      "median": {
        "type": "number",
        "description": "Median ratio in all other jobs."
      },
      "sigma": {
        "type": "number",
        "description": "Scatter of the logarithm of the ratio."
      },
      "sigmaBelow": {
        "type": "number",
        "description": "Deviation of the logarithm below the median, where it is another than above."
      },
      "most": {
        "type": "number",
        "description": "Greatest ratio that is reckoned with."
      },
      "pairs": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "An organisation's own found over recorded, rising; they weigh n/(n + 15)."
      }
    },
    "required": [
      "falseAlarmShare",
      "falseAlarmFrom",
      "falseAlarmUpTo",
      "median",
      "sigma",
      "most",
      "pairs"
    ]
  },
  "HardenerVerdict": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the hardener judged."
      },
      "name": {
        "type": "string",
        "description": "Name of the hardener judged."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "chosen",
          "refused",
          "workable"
        ],
        "description": "Whether it was chosen, would do, or is refused in this warmth."
      },
      "reasons": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What speaks for or against it."
      }
    },
    "required": [
      "code",
      "name",
      "verdict",
      "reasons"
    ]
  },
  "HardwareCard": {
    "type": "object",
    "description": "What one fitting takes, from the record where it says so and from its kind where it does not.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Fitting that the card is for."
      },
      "kind": {
        "type": "string",
        "description": "Kind of the fitting on the card."
      },
      "fasteners": {
        "type": "number",
        "description": "Fasteners of the fitting."
      },
      "fastenerMm": {
        "type": "number",
        "description": "Diameter of its fasteners."
      },
      "fastenerLengthMm": {
        "type": "number",
        "description": "Length that the fasteners need in the new deck."
      },
      "plugMm": {
        "type": "number",
        "description": "Diameter of the potted hole."
      },
      "plugMl": {
        "type": "number",
        "description": "Potting mix for all its holes."
      },
      "pours": {
        "type": "number",
        "description": "Pours that a hole is filled in."
      },
      "baseMm": {
        "type": "number",
        "description": "Size of its base on deck."
      },
      "insert": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the insert."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the insert."
          },
          "thicknessMm": {
            "type": "number",
            "description": "Thickness of the insert."
          },
          "material": {
            "type": "string",
            "description": "What the insert is made of."
          }
        },
        "required": [
          "lengthMm",
          "widthMm",
          "thicknessMm",
          "material"
        ],
        "description": "Solid insert under the fitting; absent when none is needed."
      },
      "plate": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the plate."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the plate."
          },
          "thicknessMm": {
            "type": "number",
            "description": "Thickness of the plate."
          },
          "material": {
            "type": "string",
            "description": "What the plate is made of."
          },
          "rule": {
            "type": "string",
            "description": "Rule that its size follows."
          }
        },
        "required": [
          "lengthMm",
          "widthMm",
          "thicknessMm",
          "material",
          "rule"
        ],
        "description": "Plate under the deck; absent when none is needed."
      },
      "sealant": {
        "type": "object",
        "properties": {
          "kind": {
            "type": "string",
            "description": "Kind of sealant."
          },
          "ml": {
            "type": "number",
            "description": "How much sealant."
          }
        },
        "required": [
          "kind",
          "ml"
        ],
        "description": "What it is bedded in."
      },
      "tightening": {
        "type": "string",
        "description": "How to tighten it."
      },
      "offH": {
        "$ref": "#/components/schemas/Range",
        "description": "Hours to take it off, as a spread."
      },
      "onH": {
        "$ref": "#/components/schemas/Range",
        "description": "Hours to set it again, as a spread."
      },
      "needsSecondPerson": {
        "type": "boolean",
        "description": "Whether somebody must help from below."
      },
      "referral": {
        "type": "string",
        "description": "Who else must look at it, and why."
      },
      "note": {
        "type": "string",
        "description": "What else to know about the fitting."
      },
      "assumed": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What was taken about the fitting."
      },
      "source": {
        "type": "string",
        "description": "Where the card's rules come from."
      }
    },
    "required": [
      "id",
      "kind",
      "fasteners",
      "fastenerMm",
      "fastenerLengthMm",
      "plugMm",
      "plugMl",
      "pours",
      "baseMm",
      "sealant",
      "tightening",
      "offH",
      "onH",
      "needsSecondPerson",
      "assumed",
      "source"
    ]
  },
  "HistogramBar": {
    "type": "object",
    "properties": {
      "from": {
        "type": "number",
        "description": "Low edge of the bar."
      },
      "to": {
        "type": "number",
        "description": "High edge of the bar."
      },
      "count": {
        "type": "number",
        "description": "Draws that fell in the bar."
      }
    },
    "required": [
      "from",
      "to",
      "count"
    ]
  },
  "History": {
    "type": "object",
    "description": "What was done to a thing, newest first.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HistoryEntry"
        },
        "description": "Changes, newest first."
      }
    },
    "required": [
      "items"
    ]
  },
  "HistoryEntry": {
    "type": "object",
    "properties": {
      "at": {
        "type": "string",
        "description": "When it was done (RFC 3339)."
      },
      "action": {
        "type": "string",
        "description": "What was done to it, such as `created`, `changed` or `removed`."
      },
      "keyId": {
        "type": "string",
        "description": "Key that did it; absent where the service itself did."
      },
      "keyName": {
        "type": "string",
        "description": "Whose key it was, as the key is called."
      },
      "requestId": {
        "type": "string",
        "description": "Request that did it, as in its `X-Request-Id`."
      },
      "before": {
        "description": "The thing before the change; absent where it was new."
      },
      "after": {
        "description": "The thing after the change; absent where it was removed."
      }
    },
    "required": [
      "at",
      "action"
    ]
  },
  "InformationValue": {
    "type": "object",
    "description": "What it is worth to open the deck and measure before the price is agreed.",
    "properties": {
      "reserveNow": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Money set aside above the mean so that it suffices in 8 of 10 cases, as things stand."
      },
      "reserveThen": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The same, on average, once the extent is known."
      },
      "reserveFreed": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What need not be set aside any more."
      },
      "stageZeroCost": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price of opening up and mapping; absent when it is not priced."
      },
      "decisionValue": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Expected gain from being able to say no: a repair that turns out dearer than it is worth is not done.\nPresent when the worth of the repair is known."
      },
      "decisionValueNet": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Gain from saying no, less the price of stage 0."
      },
      "shareAboveWorth": {
        "type": "number",
        "description": "How likely the repair turns out dearer than it is worth."
      }
    },
    "required": [
      "reserveNow",
      "reserveThen",
      "reserveFreed"
    ]
  },
  "InnerSkinCheck": {
    "type": "object",
    "properties": {
      "loadKPa": {
        "type": "number",
        "description": "Pressure and weight on the inner skin together."
      },
      "sagMm": {
        "type": "number",
        "description": "How far the inner skin sags under it."
      },
      "allowedSagMm": {
        "type": "number",
        "description": "Sag that still leaves a fair deck."
      },
      "stressMPa": {
        "type": "number",
        "description": "Bending stress in the inner skin."
      },
      "allowedStressMPa": {
        "type": "number",
        "description": "Stress that the inner skin may have."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "passes"
        ],
        "description": "Whether the inner skin bears the pressing without props."
      },
      "props": {
        "type": "object",
        "properties": {
          "needed": {
            "type": "boolean",
            "description": "Whether the inner skin must be propped."
          },
          "spacingMm": {
            "type": "number",
            "description": "Greatest distance between lines of props."
          },
          "spanMm": {
            "type": "number",
            "description": "Bay for which that was worked out; one as wide has at least one line."
          },
          "count": {
            "type": "number",
            "description": "Props in all."
          },
          "lines": {
            "type": "number",
            "description": "Lines that the props stand in."
          },
          "why": {
            "type": "string",
            "description": "Why props are or are not needed."
          }
        },
        "required": [
          "needed",
          "why"
        ],
        "description": "Props from below that the pressing needs."
      }
    },
    "required": [
      "loadKPa",
      "sagMm",
      "allowedSagMm",
      "stressMPa",
      "allowedStressMPa",
      "verdict",
      "props"
    ]
  },
  "Inspection": {
    "type": "object",
    "properties": {
      "conditions": {
        "type": "string"
      },
      "instruments": {
        "type": "string"
      },
      "place": {
        "type": "string"
      },
      "lies": {
        "type": "string",
        "enum": [
          "afloat",
          "ashore"
        ]
      },
      "on": {
        "type": "string"
      },
      "notInspected": {
        "type": "string"
      }
    }
  },
  "InsurerSplit": {
    "type": "object",
    "description": "Three sums with tax, and what of the first an insurer might pay.",
    "properties": {
      "attributable": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Part that the stated event caused."
      },
      "prior": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Part that was there before."
      },
      "improvement": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Part that makes the boat better than it was."
      },
      "wear": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Wear taken off."
      },
      "deductible": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Own share of the insured."
      },
      "payable": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What remains to be paid by the insurer."
      },
      "basis": {
        "type": "string",
        "description": "How the split was made."
      }
    },
    "required": [
      "attributable",
      "prior",
      "improvement",
      "wear",
      "deductible",
      "payable",
      "basis"
    ]
  },
  "JobCalendar": {
    "type": "object",
    "properties": {
      "iCalendar": {
        "type": "string",
        "description": "RFC 5545, when it was asked for."
      },
      "startDate": {
        "type": "string",
        "description": "Day that the plan starts on (ISO 8601)."
      },
      "timeZone": {
        "type": "string",
        "description": "IANA time zone of the plan's days."
      },
      "tasks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlannedTask"
        },
        "description": "Planned tasks in order of their start."
      },
      "criticalChain": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Codes of tasks that the end depends on."
      },
      "finish": {
        "type": "object",
        "properties": {
          "early": {
            "type": "string",
            "description": "Day that one simulated job in ten ends by."
          },
          "likely": {
            "type": "string",
            "description": "Day that half of the simulated jobs end by."
          },
          "late": {
            "type": "string",
            "description": "Day that nine simulated jobs in ten end by."
          }
        },
        "required": [
          "early",
          "likely",
          "late"
        ],
        "description": "When the job is done, as a spread."
      },
      "plannedFinish": {
        "type": "string",
        "description": "Of the one walk that the tasks show, by mean hours and waits, without chance."
      },
      "planned": {
        "type": "object",
        "properties": {
          "workingDays": {
            "type": "number",
            "description": "Days with work in the plan."
          },
          "calendarDays": {
            "type": "number",
            "description": "Days from first to last in the plan."
          }
        },
        "required": [
          "workingDays",
          "calendarDays"
        ],
        "description": "Length of the plan as drawn."
      },
      "calendarDays": {
        "$ref": "#/components/schemas/DayRange",
        "description": "Length of the job in days, as a spread."
      },
      "workingDays": {
        "$ref": "#/components/schemas/DayRange",
        "description": "Days on which the crew works."
      },
      "labourH": {
        "$ref": "#/components/schemas/ThreePoint",
        "description": "Hours of all tasks, as three points."
      },
      "milestones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CalendarMilestone"
        },
        "description": "Milestones of the plan."
      },
      "simulation": {
        "type": "object",
        "properties": {
          "seed": {
            "type": "number",
            "description": "Seed; the same seed gives the same spread."
          },
          "runs": {
            "type": "number",
            "description": "Jobs that were simulated."
          },
          "distribution": {
            "type": "string",
            "description": "How hours were drawn between their three points."
          }
        },
        "required": [
          "seed",
          "runs",
          "distribution"
        ],
        "description": "How the spread was found."
      },
      "today": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TodayItem"
        },
        "description": "What happens on the day asked about."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What was taken about crew and days."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the planner should know."
      }
    },
    "required": [
      "startDate",
      "timeZone",
      "tasks",
      "criticalChain",
      "finish",
      "plannedFinish",
      "planned",
      "calendarDays",
      "workingDays",
      "labourH",
      "milestones",
      "simulation",
      "assumptions",
      "notes"
    ]
  },
  "Join": {
    "type": "object",
    "description": "Why two openings became one, with the numbers that decided.",
    "properties": {
      "why": {
        "type": "string",
        "enum": [
          "bridge-too-narrow",
          "cheaper-together",
          "overlap"
        ],
        "description": "Why two openings became one."
      },
      "hoursTogether": {
        "type": "number",
        "description": "Work of one opening."
      },
      "hoursApart": {
        "type": "number",
        "description": "Work of two."
      },
      "bridgeMm": {
        "type": "number",
        "description": "Width of skin that would stay between them."
      },
      "neededBridgeMm": {
        "type": "number",
        "description": "Width that such a bridge needs."
      }
    },
    "required": [
      "why",
      "hoursTogether",
      "hoursApart",
      "bridgeMm",
      "neededBridgeMm"
    ]
  },
  "Key": {
    "type": "object",
    "description": "A key of an organisation, without its secret text.",
    "properties": {
      "prefix": {
        "type": "string",
        "description": "The first characters, by which a person recognises the key."
      },
      "roles": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "auditor",
            "catalogue-admin",
            "chandler",
            "integrator",
            "organisation-admin",
            "platform-operator",
            "surveyor"
          ]
        },
        "description": "What its holder may do; see the table of roles."
      },
      "scopes": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "audit:read",
            "calculate",
            "catalogue:read",
            "catalogue:write",
            "estimates:read",
            "estimates:write",
            "events:read",
            "letterhead:read",
            "orders:read",
            "pages:write",
            "prices:write",
            "webhooks:read",
            "webhooks:write"
          ]
        },
        "description": "What an integrator may do."
      },
      "renewsId": {
        "type": "string",
        "description": "The key in whose place this one was made."
      },
      "id": {
        "type": "string",
        "description": "Id of the key; not the key itself."
      },
      "organisationId": {
        "type": "string",
        "description": "Organisation the key belongs to."
      },
      "name": {
        "type": "string",
        "description": "What the key is used for; stands in histories."
      },
      "createdAt": {
        "type": "string",
        "description": "When the key was made (RFC 3339)."
      },
      "expiresAt": {
        "type": "string",
        "description": "From when on the key opens nothing; it never ends by itself when absent."
      },
      "lastUsedAt": {
        "type": "string",
        "description": "To the minute; absent for a key that was never used."
      },
      "revokedAt": {
        "type": "string",
        "description": "When it stopped counting (RFC 3339); absent while it counts."
      }
    },
    "required": [
      "prefix",
      "roles",
      "scopes",
      "id",
      "organisationId",
      "name",
      "createdAt"
    ]
  },
  "KeyList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Key"
        },
        "description": "Keys of the organisation, in the order they were made."
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` for more keys; absent on the last page."
      }
    },
    "required": [
      "items"
    ]
  },
  "LaidOutPly": {
    "type": "object",
    "properties": {
      "order": {
        "type": "number",
        "description": "In the order of laying, from 1."
      },
      "stage": {
        "type": "number",
        "description": "Stage that the ply is laid in."
      },
      "material": {
        "type": "string",
        "description": "Code of the fabric to cut."
      },
      "name": {
        "type": "string",
        "description": "Name of the fabric to cut."
      },
      "turnDeg": {
        "type": "number",
        "description": "How the fabric is turned when laid."
      },
      "thicknessMm": {
        "type": "number",
        "description": "What the ply adds to the skin."
      },
      "beyondOpeningMm": {
        "type": "number",
        "description": "How far its edge lies outside the opening."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Edge to cut the ply to."
      },
      "areaM2": {
        "$ref": "#/components/schemas/Figure",
        "description": "Area of the ply."
      },
      "pieces": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RollPiece"
        },
        "description": "Pieces of fabric that make the ply."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of the roll they are cut from."
      },
      "rollLengthM": {
        "type": "number",
        "description": "Length of roll that they take."
      },
      "overlapAreaM2": {
        "type": "number",
        "description": "Area that lies double where pieces meet."
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Glass in this ply."
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin that wets this ply."
      }
    },
    "required": [
      "order",
      "stage",
      "material",
      "name",
      "turnDeg",
      "thicknessMm",
      "beyondOpeningMm",
      "outline",
      "areaM2",
      "pieces",
      "rollWidthMm",
      "rollLengthM",
      "overlapAreaM2",
      "glassKg",
      "resinKg"
    ]
  },
  "LaminateMissing": {
    "type": "object",
    "properties": {
      "reports": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ConstraintReport"
        },
        "description": "Each constraint with what it costs."
      },
      "metByNone": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "flush-low",
            "flush-proud",
            "kinds",
            "order",
            "stiffness-across",
            "stiffness-along",
            "stiffness-shear",
            "strength-compression-across",
            "strength-compression-along",
            "strength-tension-across",
            "strength-tension-along"
          ]
        },
        "description": "Constraints that no stack meets, whatever else it misses."
      },
      "words": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "The lack in sentences."
      },
      "examined": {
        "type": "number",
        "description": "Schedules that were looked at."
      },
      "isComplete": {
        "type": "boolean",
        "description": "False when only a part of the stacks was looked at for this; that none will do is proven all the same."
      }
    },
    "required": [
      "reports",
      "metByNone",
      "words",
      "examined",
      "isComplete"
    ]
  },
  "LaminateSchedule": {
    "type": "object",
    "properties": {
      "search": {
        "$ref": "#/components/schemas/ScheduleSearch",
        "description": "The best skins, where a skin is laid anew."
      },
      "relaid": {
        "$ref": "#/components/schemas/RelaidPlies",
        "description": "The first of them laid out over the opening."
      },
      "rebedded": {
        "$ref": "#/components/schemas/ClosingPlies",
        "description": "The plies over the cut, where the lifted skin is bonded back."
      },
      "cautions": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Cautions for whoever lays the plies."
      }
    },
    "required": [
      "cautions"
    ]
  },
  "LaminateSection": {
    "type": "object",
    "properties": {
      "method": {
        "type": "string",
        "enum": [
          "re-bed",
          "relay"
        ],
        "description": "Old skin bedded again, or a new one laid."
      },
      "taperRatio": {
        "type": "number",
        "description": "Length of the taper over thickness of the skin."
      },
      "taperWidthMm": {
        "type": "number",
        "description": "Width that is ground."
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlyLine"
        },
        "description": "New plies, the first laid first."
      },
      "totalThicknessMm": {
        "type": "number",
        "description": "Thickness of the new skin."
      },
      "oldThicknessMm": {
        "type": "number",
        "description": "Thickness of the skin that it replaces."
      },
      "glassKg": {
        "type": "number",
        "description": "Glass to wet out."
      },
      "resinKg": {
        "type": "number",
        "description": "Resin to wet it with."
      },
      "alternatives": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "rank": {
              "type": "number",
              "description": "Place of the alternative, 1 the one planned."
            },
            "plies": {
              "type": "array",
              "items": {
                "type": "string"
              },
              "description": "Its plies by name."
            },
            "thicknessMm": {
              "type": "number",
              "description": "Its thickness."
            },
            "costPerM2": {
              "type": "string",
              "description": "Its price for a square metre, as text."
            },
            "reason": {
              "type": "string",
              "description": "Why it was not taken."
            }
          },
          "required": [
            "rank",
            "plies",
            "thicknessMm",
            "costPerM2",
            "reason"
          ]
        },
        "description": "Relaid: the best schedules with why the others lost. Re-bedded: empty."
      },
      "properties": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        },
        "description": "Stiffness and strength of the new skin."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What to heed when laminating."
      }
    },
    "required": [
      "method",
      "taperRatio",
      "taperWidthMm",
      "plies",
      "totalThicknessMm",
      "oldThicknessMm",
      "glassKg",
      "resinKg",
      "alternatives",
      "properties",
      "notes"
    ]
  },
  "LeakSection": {
    "type": "object",
    "properties": {
      "cause": {
        "type": "string",
        "description": "Code of the leak's cause."
      },
      "title": {
        "type": "string",
        "description": "Name of the leak's cause."
      },
      "remedy": {
        "type": "string",
        "description": "What stops the leak."
      },
      "verify": {
        "type": "string",
        "description": "What is measured again, and the value that passes."
      },
      "isRemedied": {
        "type": "boolean",
        "description": "Whether this work stops it."
      },
      "text": {
        "type": "string",
        "description": "The leak in a sentence."
      }
    },
    "required": [
      "cause",
      "title",
      "remedy",
      "verify",
      "isRemedied",
      "text"
    ]
  },
  "LeftOut": {
    "type": "object",
    "properties": {
      "material": {
        "type": "string",
        "description": "Code of the material left out."
      },
      "problems": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Problem"
        },
        "description": "What about its data kept it out."
      }
    },
    "required": [
      "material",
      "problems"
    ]
  },
  "LeftOutSection": {
    "type": "object",
    "properties": {
      "section": {
        "type": "string",
        "enum": [
          "bond-pressure",
          "core",
          "laminate",
          "panel"
        ],
        "description": "Section that the estimate has not."
      },
      "because": {
        "type": "string",
        "description": "Why it has not."
      }
    },
    "required": [
      "section",
      "because"
    ]
  },
  "Leftover": {
    "type": "object",
    "description": "What remains of a bought good when every need is met.",
    "properties": {
      "part": {
        "type": "string",
        "description": "Code of the hardener that remains, where the remainder is not the resin itself."
      },
      "quantity": {
        "type": "number",
        "description": "How much remains of the pack's contents."
      },
      "unit": {
        "type": "string",
        "description": "Unit of what remains."
      },
      "worth": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "At the least price of the goods bought."
      },
      "keepsMonths": {
        "type": "number",
        "description": "How long the remainder keeps when closed well."
      },
      "material": {
        "type": "string",
        "description": "Code of the material in the catalogue."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheet, for core."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain or scored, for core."
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the sheet that is meant."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the sheet that is meant."
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ],
        "description": "Size of the sheet, where it matters."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of the roll, for fabrics."
      }
    },
    "required": [
      "quantity",
      "unit",
      "worth",
      "material"
    ]
  },
  "LineChange": {
    "type": "object",
    "description": "A line that differs between two estimates.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Line of the estimate that changed."
      },
      "title": {
        "type": "string",
        "description": "What the line is for."
      },
      "change": {
        "type": "string",
        "enum": [
          "added",
          "changed",
          "removed",
          "same"
        ],
        "description": "Whether it was added, removed or changed."
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Its amount in the earlier estimate."
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Its amount in the later estimate."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Later amount less the earlier."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the line's quantities."
      },
      "quantityBefore": {
        "type": "string",
        "description": "Quantity in the earlier estimate, as decimal text."
      },
      "quantityAfter": {
        "type": "string",
        "description": "Quantity in the later estimate, as decimal text."
      },
      "becauseOfQuantity": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Of the difference, because there is more or less of it, at the old rate."
      },
      "becauseOfRate": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Of the difference, because it costs more or less."
      },
      "because": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "In words: what the caller said of it, else what the numbers say."
      }
    },
    "required": [
      "code",
      "title",
      "change",
      "before",
      "after",
      "difference",
      "unit",
      "quantityBefore",
      "quantityAfter",
      "becauseOfQuantity",
      "becauseOfRate",
      "because"
    ]
  },
  "LineDepreciation": {
    "type": "object",
    "description": "Wear of a part that is replaced, shown beside its amount.",
    "properties": {
      "ageYears": {
        "type": "number",
        "description": "Age of the part that is replaced."
      },
      "percent": {
        "type": "string",
        "description": "Wear in percent, as decimal text."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Wear in money."
      },
      "remaining": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Amount less wear."
      }
    },
    "required": [
      "ageYears",
      "percent",
      "amount",
      "remaining"
    ]
  },
  "LineDrift": {
    "type": "object",
    "description": "The packs of one line at the price of then and of now.",
    "properties": {
      "line": {
        "type": "string",
        "description": "Line of the estimate."
      },
      "title": {
        "type": "string",
        "description": "What the line buys."
      },
      "sku": {
        "type": "string",
        "description": "Pack whose price moved."
      },
      "packCount": {
        "type": "number",
        "description": "How many of the pack the line takes."
      },
      "then": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price of those packs when the estimate was made."
      },
      "now": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Absent where the pack is not on the list any more."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What they cost more today; absent when the pack is no longer sold."
      }
    },
    "required": [
      "line",
      "title",
      "sku",
      "packCount",
      "then"
    ]
  },
  "LinePack": {
    "type": "object",
    "description": "So many packs of one kind in a line.",
    "properties": {
      "sku": {
        "type": "string",
        "description": "Number of the pack bought."
      },
      "name": {
        "type": "string",
        "description": "Name of the pack bought."
      },
      "supplier": {
        "type": "string",
        "description": "Supplier of the pack bought."
      },
      "count": {
        "type": "number",
        "description": "How many of the pack are bought."
      },
      "price": {
        "type": "string",
        "description": "Exact decimal text for one pack."
      }
    },
    "required": [
      "sku",
      "name",
      "supplier",
      "count",
      "price"
    ]
  },
  "LineQuantity": {
    "type": "object",
    "properties": {
      "net": {
        "type": "number",
        "description": "Quantity that ends up in the repair."
      },
      "waste": {
        "type": "number",
        "description": "Wasted on top of the net quantity."
      },
      "required": {
        "type": "number",
        "description": "Quantity with waste."
      },
      "purchase": {
        "type": "number",
        "description": "Whole packs; absent for what is not bought in packs."
      },
      "charged": {
        "type": "string",
        "description": "What the rate was multiplied with, exactly."
      }
    },
    "required": [
      "net",
      "waste",
      "required",
      "charged"
    ]
  },
  "LoadResult": {
    "type": "object",
    "properties": {
      "key": {
        "type": "string",
        "description": "Name that responses and checks know the load by."
      },
      "code": {
        "type": "string",
        "description": "Kind of load."
      },
      "title": {
        "type": "string",
        "description": "Name of the load."
      },
      "pressureKPa": {
        "type": "number",
        "description": "Pressure of the load where it acts."
      }
    },
    "required": [
      "key",
      "code",
      "title",
      "pressureKPa"
    ]
  },
  "LogoLink": {
    "type": "object",
    "properties": {
      "href": {
        "type": "string",
        "description": "Address of the logo."
      },
      "mediaType": {
        "type": "string",
        "enum": [
          "image/png"
        ],
        "description": "Form that the logo is kept in."
      }
    },
    "required": [
      "href",
      "mediaType"
    ]
  },
  "LongOperation": {
    "type": "object",
    "description": "Work that goes on after its request was answered with 202.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the operation."
      },
      "status": {
        "type": "string",
        "enum": [
          "done",
          "failed",
          "running",
          "waiting"
        ],
        "description": "How far the operation has come."
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instants, as all others here."
      },
      "startedAt": {
        "type": "string",
        "description": "When work on it began (RFC 3339)."
      },
      "finishedAt": {
        "type": "string",
        "description": "When it ended (RFC 3339)."
      },
      "expiresAt": {
        "type": "string",
        "description": "When the operation and its result are removed."
      },
      "result": {
        "$ref": "#/components/schemas/OperationResult",
        "description": "When it is done: where the result is."
      },
      "problem": {
        "$ref": "#/components/schemas/OperationProblem",
        "description": "When it failed: why."
      }
    },
    "required": [
      "id",
      "status",
      "createdAt",
      "expiresAt"
    ]
  },
  "MarkedCorner": {
    "type": "object",
    "description": "A corner of the saw line as a person with a tape finds it.",
    "properties": {
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "The corner in the deck plane."
      },
      "alongMm": {
        "type": "number",
        "description": "Along the datum edge from its first end."
      },
      "offMm": {
        "type": "number",
        "description": "Square off the datum edge."
      },
      "fromStartMm": {
        "type": "number",
        "description": "Straight from each end of the datum edge: where the two tapes meet."
      },
      "fromEndMm": {
        "type": "number",
        "description": "Distance from the far end of the datum."
      },
      "radiusMm": {
        "type": "number",
        "description": "Radius cut at this corner; less than the rule's where the sides are too short."
      }
    },
    "required": [
      "at",
      "alongMm",
      "offMm",
      "fromStartMm",
      "fromEndMm",
      "radiusMm"
    ]
  },
  "MarkingOut": {
    "type": "object",
    "properties": {
      "datum": {
        "$ref": "#/components/schemas/Datum",
        "description": "Line that all dimensions are taken from."
      },
      "corners": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MarkedCorner"
        },
        "description": "Where each corner lies from the datum."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SawLine"
        },
        "description": "The saw lines between the corners."
      },
      "diagonalsMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Corner to opposite corner, to check that it is square; only for four corners."
      }
    },
    "required": [
      "datum",
      "corners",
      "lines"
    ]
  },
  "MatchedResin": {
    "type": "object",
    "description": "A resin and its hardeners, in amounts that belong together.",
    "properties": {
      "resin": {
        "type": "string",
        "description": "Code of the resin."
      },
      "resinKg": {
        "type": "number",
        "description": "Resin in the basket and on hand."
      },
      "hardeners": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "hardener": {
              "type": "string",
              "description": "Code of the hardener."
            },
            "boughtKg": {
              "type": "number",
              "description": "Hardener in the basket."
            },
            "curesKg": {
              "type": "number",
              "description": "Resin that this much hardener cures at the mixing ratio."
            }
          },
          "required": [
            "hardener",
            "boughtKg",
            "curesKg"
          ]
        },
        "description": "Hardeners that cure it, each with what it cures."
      }
    },
    "required": [
      "resin",
      "resinKg",
      "hardeners"
    ]
  },
  "MaterialVariant": {
    "type": "object",
    "description": "Which form of a material a need asks for; packs must agree in every field that is given.",
    "properties": {
      "material": {
        "type": "string",
        "description": "Code of the material in the catalogue."
      },
      "part": {
        "type": "string",
        "description": "Code of a hardener, where the material is a resin system and its hardener is meant."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the sheet, for core."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain or scored, for core."
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number",
            "description": "Length of the sheet that is meant."
          },
          "widthMm": {
            "type": "number",
            "description": "Width of the sheet that is meant."
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ],
        "description": "Size of the sheet, where it matters."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of the roll, for fabrics."
      }
    },
    "required": [
      "material"
    ]
  },
  "MeterReading": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "moisture"
        ],
        "description": "Says that a meter was held to the deck."
      },
      "value": {
        "type": "number",
        "description": "On the meter's own scale; judged against `dryReference`."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where it was taken, [xMm, yMm]."
      },
      "isUnreliable": {
        "type": "boolean",
        "description": "True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful."
      }
    },
    "required": [
      "kind",
      "value",
      "at"
    ]
  },
  "MethodChoice": {
    "type": "object",
    "properties": {
      "resin": {
        "type": "string"
      },
      "skin": {
        "type": "string",
        "enum": [
          "re-bed",
          "relay"
        ]
      },
      "access": {
        "type": "string",
        "enum": [
          "from-above",
          "from-below"
        ]
      },
      "press": {
        "type": "string",
        "enum": [
          "battens",
          "vacuum",
          "weights"
        ]
      },
      "finish": {
        "type": "string",
        "enum": [
          "panel",
          "patch",
          "whole-deck"
        ]
      },
      "topcoat": {
        "type": "string"
      },
      "core": {
        "type": "string"
      },
      "cutMarginMm": {
        "type": "number"
      },
      "flangeMm": {
        "type": "number"
      },
      "taperRatio": {
        "type": "number"
      },
      "rung": {
        "type": "string",
        "enum": [
          "above-new-skin",
          "above-old-skin",
          "close-leak",
          "dry-in-place",
          "edge-rail-off",
          "edge-rout-and-fill",
          "edge-wrap",
          "from-below",
          "inject",
          "ream-and-pot",
          "rebed",
          "solid-spot",
          "whole-panel"
        ]
      },
      "pumpResinMlPerStroke": {
        "type": "number"
      },
      "application": {
        "type": "string",
        "enum": [
          "brush-and-roller",
          "spray-elsewhere",
          "spray-in-booth"
        ]
      },
      "wholeDeckAreaM2": {
        "type": "number"
      },
      "soundCore": {
        "type": "string",
        "enum": [
          "comes-out",
          "stays"
        ]
      }
    }
  },
  "MethodLadder": {
    "type": "object",
    "description": "The ladder as judged on the place where the defect is largest.",
    "properties": {
      "recommended": {
        "$ref": "#/components/schemas/RungNamed",
        "description": "Gentlest rung that fits; absent when none does."
      },
      "runnerUp": {
        "$ref": "#/components/schemas/RungNamed",
        "description": "The next rung that fits."
      },
      "rungs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungSection"
        },
        "description": "All rungs, the gentlest first."
      },
      "places": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlaceSection"
        },
        "description": "What each place gets; the set-up of the job is counted once."
      }
    },
    "required": [
      "rungs",
      "places"
    ]
  },
  "MethodsSection": {
    "type": "object",
    "description": "The same with the rung that is planned.",
    "properties": {
      "planned": {
        "type": "object",
        "properties": {
          "rung": {
            "type": "string",
            "description": "Code of the rung."
          },
          "title": {
            "type": "string",
            "description": "Name of the rung."
          },
          "because": {
            "type": "string",
            "description": "Why the rung stands where it stands."
          },
          "isNamedInRecord": {
            "type": "boolean",
            "description": "Whether the record asked for it by name."
          }
        },
        "required": [
          "rung",
          "title",
          "because",
          "isNamedInRecord"
        ],
        "description": "Rung that the estimate plans."
      },
      "recommended": {
        "$ref": "#/components/schemas/RungNamed",
        "description": "Gentlest rung that fits; absent when none does."
      },
      "runnerUp": {
        "$ref": "#/components/schemas/RungNamed",
        "description": "The next rung that fits."
      },
      "rungs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungSection"
        },
        "description": "All rungs, the gentlest first."
      },
      "places": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlaceSection"
        },
        "description": "What each place gets; the set-up of the job is counted once."
      }
    },
    "required": [
      "planned",
      "rungs",
      "places"
    ]
  },
  "Milestone": {
    "type": "object",
    "description": "When something may be done: likely, with the band of the spec and of the temperature law.",
    "properties": {
      "code": {
        "type": "string",
        "enum": [
          "full",
          "gel",
          "recoat-shuts",
          "release",
          "sandable"
        ],
        "description": "Which milestone of the cure."
      },
      "title": {
        "type": "string",
        "description": "Name of the milestone."
      },
      "ageH": {
        "type": "number",
        "description": "Hours that it takes at the reference temperature."
      },
      "likelyH": {
        "type": "number",
        "description": "Hours from mixing as the deck is warm; absent when the cure stands still."
      },
      "earlyH": {
        "type": "number",
        "description": "Earliest hours to reckon with."
      },
      "lateH": {
        "type": "number",
        "description": "Latest hours to reckon with."
      },
      "at": {
        "type": "string",
        "description": "When it is likely reached (RFC 3339), where a start was stated."
      },
      "reason": {
        "type": "string",
        "description": "Why a figure is absent."
      }
    },
    "required": [
      "code",
      "title",
      "ageH"
    ]
  },
  "MoneyJson": {
    "type": "object",
    "description": "The form money takes in JSON.",
    "properties": {
      "amount": {
        "type": "string",
        "description": "Exact decimal text, such as `1234.50`."
      },
      "currency": {
        "type": "string",
        "description": "ISO 4217 code that the amount is in."
      }
    },
    "required": [
      "amount",
      "currency"
    ]
  },
  "Mosaic": {
    "type": "object",
    "description": "Core, joints and what is filled solid: together the cavities of the openings, layer by layer.",
    "properties": {
      "pieces": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CoringCorePiece"
        },
        "description": "The pieces, in the order they are bedded."
      },
      "solidFills": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SolidFill"
        },
        "description": "Places that take no core. Never under or over a piece."
      },
      "division": {
        "$ref": "#/components/schemas/MosaicDivision",
        "description": "How many pieces, and why so many."
      },
      "netAreaM2": {
        "type": "number",
        "description": "Area of all pieces."
      },
      "regionAreaM2": {
        "type": "number",
        "description": "Opening and undercut, each as often as there are layers."
      },
      "jointAreaM2": {
        "type": "number",
        "description": "Gaps between pieces and round them."
      },
      "solidAreaM2": {
        "type": "number",
        "description": "Filled solid, each place as often as it takes the place of a layer."
      },
      "solidVolumeL": {
        "type": "number",
        "description": "Volume that is filled solid in place of core."
      },
      "jointLengthM": {
        "type": "number",
        "description": "Length of all joints between pieces."
      },
      "jointOnSupportM": {
        "type": "number",
        "description": "Length of joint that runs along a support in spite of everything."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MosaicFinding"
        },
        "description": "What about the pieces deserves attention."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Limits of a piece that nobody stated."
      }
    },
    "required": [
      "pieces",
      "solidFills",
      "division",
      "netAreaM2",
      "regionAreaM2",
      "jointAreaM2",
      "solidAreaM2",
      "solidVolumeL",
      "jointLengthM",
      "jointOnSupportM",
      "findings",
      "assumptions"
    ]
  },
  "MosaicDivision": {
    "type": "object",
    "description": "How many pieces, and why so many.",
    "properties": {
      "largestPieceM2": {
        "type": "number",
        "description": "Limit of a piece bedded from above, of the choice that was taken."
      },
      "limitedBy": {
        "type": "string",
        "enum": [
          "bed",
          "camber",
          "lip",
          "nothing",
          "sheet"
        ],
        "description": "What keeps it from being fewer pieces."
      },
      "hours": {
        "type": "number",
        "description": "To cut, fit and bed, and to mend hollows."
      },
      "choices": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/DivisionChoice"
        },
        "description": "Divisions that were looked at, the largest pieces first."
      },
      "words": {
        "type": "string",
        "description": "Why the core is cut into this many pieces."
      }
    },
    "required": [
      "largestPieceM2",
      "limitedBy",
      "hours",
      "choices",
      "words"
    ]
  },
  "MosaicFinding": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "enum": [
          "cannot-be-slid-in",
          "filled-solid",
          "joint-on-support",
          "much-filled-solid",
          "order-not-proven"
        ],
        "description": "What was found about the pieces."
      },
      "opening": {
        "type": "string",
        "description": "The opening it is about; absent when it is about all of them."
      },
      "words": {
        "type": "string",
        "description": "The finding in a sentence."
      }
    },
    "required": [
      "code",
      "words"
    ]
  },
  "NamedValue": {
    "type": "object",
    "description": "A value with its name and unit.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the value."
      },
      "name": {
        "type": "string",
        "description": "Name of the value."
      },
      "value": {
        "type": "number",
        "description": "The value, in `unit`."
      },
      "unit": {
        "type": "string",
        "description": "Unit that the value is in."
      },
      "note": {
        "type": "string",
        "description": "What goes with the value."
      }
    },
    "required": [
      "code",
      "name",
      "value",
      "unit"
    ]
  },
  "NewKey": {
    "type": "object",
    "description": "The only answer that ever holds the key itself.",
    "properties": {
      "key": {
        "type": "string",
        "description": "The key itself; shown this once."
      },
      "prefix": {
        "type": "string",
        "description": "The first characters, by which a person recognises the key."
      },
      "roles": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "auditor",
            "catalogue-admin",
            "chandler",
            "integrator",
            "organisation-admin",
            "platform-operator",
            "surveyor"
          ]
        },
        "description": "What its holder may do; see the table of roles."
      },
      "scopes": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "audit:read",
            "calculate",
            "catalogue:read",
            "catalogue:write",
            "estimates:read",
            "estimates:write",
            "events:read",
            "letterhead:read",
            "orders:read",
            "pages:write",
            "prices:write",
            "webhooks:read",
            "webhooks:write"
          ]
        },
        "description": "What an integrator may do."
      },
      "renewsId": {
        "type": "string",
        "description": "The key in whose place this one was made."
      },
      "id": {
        "type": "string",
        "description": "Id of the key; not the key itself."
      },
      "organisationId": {
        "type": "string",
        "description": "Organisation the key belongs to."
      },
      "name": {
        "type": "string",
        "description": "What the key is used for; stands in histories."
      },
      "createdAt": {
        "type": "string",
        "description": "When the key was made (RFC 3339)."
      },
      "expiresAt": {
        "type": "string",
        "description": "From when on the key opens nothing; it never ends by itself when absent."
      },
      "lastUsedAt": {
        "type": "string",
        "description": "To the minute; absent for a key that was never used."
      },
      "revokedAt": {
        "type": "string",
        "description": "When it stopped counting (RFC 3339); absent while it counts."
      }
    },
    "required": [
      "key",
      "prefix",
      "roles",
      "scopes",
      "id",
      "organisationId",
      "name",
      "createdAt"
    ]
  },
  "NewOrganisation": {
    "type": "object",
    "description": "A new organisation with the key that runs it; from here on, nobody outside can make another.",
    "properties": {
      "adminKey": {
        "$ref": "#/components/schemas/NewKey",
        "description": "First key of the organisation; its text is shown this once."
      },
      "id": {
        "type": "string",
        "description": "Id of the organisation."
      },
      "name": {
        "type": "string",
        "description": "Name of the organisation, as its documents show it."
      },
      "createdAt": {
        "type": "string",
        "description": "When the organisation was made (RFC 3339)."
      }
    },
    "required": [
      "adminKey",
      "id",
      "name",
      "createdAt"
    ]
  },
  "NewWebhookEndpoint": {
    "type": "object",
    "description": "An endpoint with the secret that signs its events, shown in this answer only.",
    "properties": {
      "secret": {
        "type": "string",
        "description": "`whsec_` and base64 of 32 random bytes."
      },
      "id": {
        "type": "string",
        "description": "Id of the endpoint."
      },
      "url": {
        "type": "string",
        "description": "Where events are posted to."
      },
      "types": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "edition.published",
            "edition.withdrawn",
            "estimate.created",
            "estimate.revised",
            "operation.done",
            "order.made"
          ]
        },
        "description": "Events that the endpoint is told of."
      },
      "createdAt": {
        "type": "string",
        "description": "When the endpoint was made (RFC 3339)."
      },
      "disabledBecause": {
        "type": "string",
        "description": "Why nothing is delivered any more; absent while it is."
      }
    },
    "required": [
      "secret",
      "id",
      "url",
      "types",
      "createdAt"
    ]
  },
  "NextReading": {
    "type": "object",
    "description": "A reading worth taking next, and what it would be worth.",
    "properties": {
      "number": {
        "type": "number",
        "description": "As on the drawing."
      },
      "kind": {
        "type": "string",
        "enum": [
          "moisture",
          "plug",
          "sounding"
        ],
        "description": "What to do there: tap, hold a meter, or drill a plug."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where to take it, [xMm, yMm]."
      },
      "chance": {
        "type": "number",
        "description": "Chance of bad core there, as far as is known."
      },
      "minutes": {
        "type": "number",
        "description": "Time that it takes."
      },
      "worthH": {
        "type": "number",
        "description": "Its part of the hours saved by all of them, beyond the readings before it."
      }
    },
    "required": [
      "number",
      "kind",
      "at",
      "chance",
      "minutes",
      "worthH"
    ]
  },
  "NextReadings": {
    "type": "object",
    "description": "Where to tap or plug next, what that is worth, and when to stop.",
    "properties": {
      "readings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NextReading"
        },
        "description": "Readings to take next, the best first."
      },
      "minutes": {
        "type": "number",
        "description": "Working time of all of them."
      },
      "worthH": {
        "type": "number",
        "description": "Working hours that deciding after them is expected to save."
      },
      "isWorthIt": {
        "type": "boolean",
        "description": "Whether they save more than their own time."
      },
      "areaRangeM2": {
        "type": "object",
        "properties": {
          "now": {
            "type": "number",
            "description": "Spread of the bad area as it is known."
          },
          "after": {
            "type": "number",
            "description": "Spread expected when the readings are taken."
          }
        },
        "required": [
          "now",
          "after"
        ],
        "description": "Width of the range of bad core from P10 to P90: now, and as expected after these readings."
      },
      "advice": {
        "$ref": "#/components/schemas/ExtentFinding",
        "description": "Whether to go on or to stop, in words."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "What was taken about the value of a reading."
      }
    },
    "required": [
      "readings",
      "minutes",
      "worthH",
      "isWorthIt",
      "areaRangeM2",
      "advice",
      "assumptions"
    ]
  },
  "NextReadingsSection": {
    "type": "object",
    "description": "Its assumptions stand among those of the estimate.",
    "properties": {
      "advice": {
        "$ref": "#/components/schemas/EstimateFinding",
        "description": "Whether more readings would pay."
      },
      "readings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NextReading"
        },
        "description": "Readings to take next, the best first."
      },
      "minutes": {
        "type": "number",
        "description": "Working time of all of them."
      },
      "worthH": {
        "type": "number",
        "description": "Working hours that deciding after them is expected to save."
      },
      "isWorthIt": {
        "type": "boolean",
        "description": "Whether they save more than their own time."
      },
      "areaRangeM2": {
        "type": "object",
        "properties": {
          "now": {
            "type": "number",
            "description": "Spread of the bad area as it is known."
          },
          "after": {
            "type": "number",
            "description": "Spread expected when the readings are taken."
          }
        },
        "required": [
          "now",
          "after"
        ],
        "description": "Width of the range of bad core from P10 to P90: now, and as expected after these readings."
      }
    },
    "required": [
      "advice",
      "readings",
      "minutes",
      "worthH",
      "isWorthIt",
      "areaRangeM2"
    ]
  },
  "Occurrence": {
    "type": "object",
    "properties": {
      "on": {
        "type": "string"
      },
      "cause": {
        "type": "string"
      },
      "insurerReference": {
        "type": "string"
      }
    }
  },
  "Offcut": {
    "type": "object",
    "description": "A rectangle that is left whole on a sheet.",
    "properties": {
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the piece worth keeping."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the piece worth keeping."
      }
    },
    "required": [
      "outline",
      "areaM2"
    ]
  },
  "Offer": {
    "type": "object",
    "description": "In two stages: what is known at a firm price, what is not by rates.",
    "properties": {
      "stageZero": {
        "$ref": "#/components/schemas/StageZero",
        "description": "Opening and mapping, priced by itself."
      },
      "unitRates": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "enum": [
                "cut-m",
                "fitting-h",
                "hole",
                "opened-m2",
                "visit"
              ],
              "description": "Code of the rate."
            },
            "what": {
              "type": "string",
              "description": "What the rate is for."
            },
            "unit": {
              "type": "string",
              "description": "Unit that it is paid by."
            },
            "quantity": {
              "type": "number",
              "description": "Quantity of it that this estimate holds."
            },
            "rate": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Price for one unit."
            }
          },
          "required": [
            "code",
            "what",
            "unit",
            "quantity",
            "rate"
          ]
        },
        "description": "Without tax, overhead and profit inside."
      },
      "authorisation": {
        "type": "object",
        "properties": {
          "percent": {
            "type": "number",
            "description": "Percent above the price."
          },
          "labourH": {
            "type": "number",
            "description": "Hours above the planned ones."
          },
          "basis": {
            "type": "string",
            "description": "Why so much."
          }
        },
        "required": [
          "percent",
          "labourH",
          "basis"
        ],
        "description": "How far work may go on without asking."
      },
      "holdPoint": {
        "type": "string",
        "description": "Where work stops until the customer has agreed."
      }
    },
    "required": [
      "stageZero",
      "unitRates",
      "authorisation",
      "holdPoint"
    ]
  },
  "OldCore": {
    "type": "object",
    "properties": {
      "thicknessMm": {
        "type": "number"
      },
      "densityKgPerM3": {
        "type": "number"
      },
      "cavityMm": {
        "type": "number"
      },
      "coreType": {
        "type": "string",
        "enum": [
          "cross-linked-foam",
          "end-grain-balsa",
          "linear-foam",
          "marine-plywood",
          "san-foam"
        ]
      }
    },
    "required": [
      "thicknessMm"
    ]
  },
  "OldSkinReport": {
    "type": "object",
    "properties": {
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the old skin."
      },
      "alongNPerMm": {
        "type": "number",
        "description": "Stiffness of the old skin fore and aft."
      },
      "acrossNPerMm": {
        "type": "number",
        "description": "Stiffness of the old skin athwart."
      },
      "shearNPerMm": {
        "type": "number",
        "description": "Stiffness of the old skin in shear."
      },
      "strengthNPerMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "In the order tension along, compression along, tension across, compression across."
      },
      "isGuessed": {
        "type": "boolean",
        "description": "Whether its plies were guessed from the thickness."
      },
      "alongLowNPerMm": {
        "type": "number",
        "description": "Where guessed: stiffness along of the weakest and the strongest likely build."
      },
      "alongHighNPerMm": {
        "type": "number",
        "description": "Stiffness it might have if the guess is low."
      }
    },
    "required": [
      "thicknessMm",
      "alongNPerMm",
      "acrossNPerMm",
      "shearNPerMm",
      "strengthNPerMm",
      "isGuessed"
    ]
  },
  "OpenSkinAnswer": {
    "type": "object",
    "properties": {
      "clampSagMm": {
        "type": "number",
        "description": "With the pull of the skin between held edges, where the sag is large."
      },
      "clampStressMPa": {
        "type": "number",
        "description": "Stress in the inner skin where it is held."
      },
      "linearClampSagMm": {
        "type": "number",
        "description": "Sag under the pressing by plate bending alone, without the stretch of the skin."
      },
      "personSagMm": {
        "type": "number",
        "description": "Sag under one person."
      },
      "personStressMPa": {
        "type": "number",
        "description": "Plate bending alone: an upper bound where the sag is large."
      },
      "usableStressMPa": {
        "type": "number",
        "description": "Stress that the inner skin may take."
      },
      "isLargeDeflection": {
        "type": "boolean",
        "description": "Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges."
      },
      "propsNeeded": {
        "type": "boolean",
        "description": "Whether props are needed before somebody steps on it."
      },
      "propSpacingMm": {
        "type": "number",
        "description": "Spacing of props in both directions that keeps sag and stress within bounds under the clamp load."
      },
      "propSpacingForPersonMm": {
        "type": "number",
        "description": "The same for a person who kneels or steps on it; absent when no spacing between props makes that safe."
      },
      "advice": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "How to work on the open deck."
      }
    },
    "required": [
      "clampSagMm",
      "clampStressMPa",
      "linearClampSagMm",
      "personSagMm",
      "personStressMPa",
      "usableStressMPa",
      "isLargeDeflection",
      "propsNeeded",
      "propSpacingMm",
      "advice"
    ]
  },
  "Opening": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "Name of the opening on drawings."
      },
      "area": {
        "$ref": "#/components/schemas/Area",
        "description": "Edge of the opening."
      },
      "sawLine": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Corners of the saw line before rounding, measured from the datum corner of the panel."
      },
      "cornerRadiusMm": {
        "type": "number",
        "description": "Radius to round the corners to."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the opening."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of its saw cuts."
      },
      "cutDepthMm": {
        "type": "number",
        "description": "Absent when no depth is safe; a finding says why."
      },
      "undercut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        },
        "description": "Where core is taken from under the edge."
      },
      "undercutAreaM2": {
        "type": "number",
        "description": "How much core is taken from under the edge."
      },
      "coreStays": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        },
        "description": "Sound core in the opening that is left where it is."
      },
      "coreStaysAreaM2": {
        "type": "number",
        "description": "Sound core that stays in the opening."
      },
      "taperBand": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        },
        "description": "Where the old skin is ground."
      },
      "reason": {
        "type": "string",
        "description": "Why the opening has this form."
      }
    },
    "required": [
      "label",
      "area",
      "sawLine",
      "cornerRadiusMm",
      "areaM2",
      "cutLengthM",
      "undercut",
      "undercutAreaM2",
      "coreStays",
      "coreStaysAreaM2",
      "taperBand",
      "reason"
    ]
  },
  "OpeningPlan": {
    "type": "object",
    "description": "Where to saw, how deep, what to ream out, what stays, and what does not fit.",
    "properties": {
      "openings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlannedOpening"
        },
        "description": "From the largest to the smallest."
      },
      "panelAreaM2": {
        "type": "number",
        "description": "Area of the whole panel."
      },
      "openedAreaM2": {
        "type": "number",
        "description": "Area whose outer skin comes off."
      },
      "retained": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Skin that stays: with the openings it is the whole panel."
      },
      "retainedAreaM2": {
        "type": "number",
        "description": "Area of opened skin that is bedded again."
      },
      "undercutAreaM2": {
        "type": "number",
        "description": "Core taken out under skin that stays."
      },
      "taperBandAreaM2": {
        "type": "number",
        "description": "Area of old skin that is ground to a taper."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of the cuts to saw."
      },
      "splitLengthM": {
        "type": "number",
        "description": "Cuts across lifted skin, beside the cuts round the openings."
      },
      "cutDepthMm": {
        "type": "number",
        "description": "Absent when no depth is safe; a finding of severity `stop` says why."
      },
      "taperWidthMm": {
        "type": "number",
        "description": "Width of the ground taper."
      },
      "insetMm": {
        "type": "number",
        "description": "Distance kept from edges: the flange, or the taper where that is wider and there is room."
      },
      "unreached": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Bad core that no opening reaches."
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FittingInScope"
        },
        "description": "Fittings that the openings touch."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ExtentFinding"
        },
        "description": "What about the openings deserves attention."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Defaults that were used, each with its reason and source."
      },
      "figures": {
        "$ref": "#/components/schemas/PlanFigures",
        "description": "The plan's areas and lengths with their derivations."
      }
    },
    "required": [
      "openings",
      "panelAreaM2",
      "openedAreaM2",
      "retained",
      "retainedAreaM2",
      "undercutAreaM2",
      "taperBandAreaM2",
      "cutLengthM",
      "splitLengthM",
      "taperWidthMm",
      "insetMm",
      "unreached",
      "fittings",
      "findings",
      "assumptions",
      "figures"
    ]
  },
  "OperationDone": {
    "type": "object",
    "description": "An operation ended: with a result, or with a reason why there is none.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this ending of an operation, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the operation ended (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "operation.done"
        ],
        "description": "Work that was answered later has ended."
      },
      "data": {
        "$ref": "#/components/schemas/OperationNamed",
        "description": "The operation and how it ended; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "OperationNamed": {
    "type": "object",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the operation that ended."
      },
      "href": {
        "type": "string",
        "description": "Path of the operation."
      },
      "status": {
        "type": "string",
        "enum": [
          "done",
          "failed"
        ],
        "description": "How it ended."
      }
    },
    "required": [
      "id",
      "href",
      "status"
    ]
  },
  "OperationProblem": {
    "type": "object",
    "description": "The members of an RFC 9457 problem document that outlast the request.",
    "properties": {
      "type": {
        "type": "string",
        "description": "Address of a page that explains the kind of problem."
      },
      "title": {
        "type": "string",
        "description": "Kind of problem in words."
      },
      "status": {
        "type": "number",
        "description": "HTTP status that the request would have had."
      },
      "detail": {
        "type": "string",
        "description": "What went wrong this time."
      },
      "errors": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ShownProblem"
        },
        "description": "What must be put right, each with its place in the request that was accepted."
      },
      "errorCount": {
        "type": "number",
        "description": "How many faults were found, where the request was at fault."
      }
    },
    "required": [
      "type",
      "title",
      "status",
      "detail"
    ]
  },
  "OperationResult": {
    "type": "object",
    "properties": {
      "href": {
        "type": "string",
        "description": "Address of what was made."
      },
      "mediaType": {
        "type": "string",
        "description": "Media type of what was made."
      }
    },
    "required": [
      "href",
      "mediaType"
    ]
  },
  "OrderMade": {
    "type": "object",
    "description": "An order to a supplier was written.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the event of this order, the same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "When the order was written (RFC 3339)."
      },
      "type": {
        "type": "string",
        "enum": [
          "order.made"
        ],
        "description": "An order for a supplier was written."
      },
      "data": {
        "$ref": "#/components/schemas/OrderNamed",
        "description": "The order and its supplier; what it names is fetched from its address."
      }
    },
    "required": [
      "id",
      "timestamp",
      "type",
      "data"
    ]
  },
  "OrderNamed": {
    "type": "object",
    "properties": {
      "estimateIds": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Ids of the estimates that are ordered for."
      },
      "pricedAt": {
        "type": "string",
        "description": "Code of the edition whose prices the order has."
      },
      "supplier": {
        "type": "string",
        "description": "Code of the supplier, when the order names one."
      }
    },
    "required": [
      "estimateIds",
      "pricedAt"
    ]
  },
  "Organisation": {
    "type": "object",
    "description": "Who keys and estimates belong to.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the organisation."
      },
      "name": {
        "type": "string",
        "description": "Name of the organisation, as its documents show it."
      },
      "createdAt": {
        "type": "string",
        "description": "When the organisation was made (RFC 3339)."
      }
    },
    "required": [
      "id",
      "name",
      "createdAt"
    ]
  },
  "OrganisationLetterhead": {
    "type": "object",
    "description": "What stands at the head of reports, job packs and change orders.",
    "properties": {
      "name": {
        "type": "string",
        "description": "The name of the organisation."
      },
      "lines": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Address and contacts under the name, line by line."
      },
      "logoDescription": {
        "type": "string",
        "description": "Words for those who cannot see the logo."
      },
      "logo": {
        "$ref": "#/components/schemas/LogoLink",
        "description": "The logo; absent when none was set."
      }
    },
    "required": [
      "name",
      "lines"
    ]
  },
  "OrganisationList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Organisation"
        },
        "description": "All organisations, in the order they were made."
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` for more organisations; absent on the last page."
      }
    },
    "required": [
      "items"
    ]
  },
  "OverlayRecord": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "glued-planks",
          "screwed-planks",
          "synthetic"
        ]
      },
      "thicknessMm": {
        "type": "number"
      },
      "then": {
        "type": "string",
        "enum": [
          "back",
          "not-included",
          "paint",
          "stays"
        ]
      }
    },
    "required": [
      "kind",
      "thicknessMm"
    ]
  },
  "PanelAnswer": {
    "type": "object",
    "description": "The four states of one panel under the same loads. A comparison, never a design approval.",
    "properties": {
      "verdict": {
        "type": "string",
        "enum": [
          "not-restored",
          "restored"
        ],
        "description": "Whether the repair restores what the deck had."
      },
      "shortfalls": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Every ratio that is below 1 by more than hands repeat, worst first."
      },
      "withinHands": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What is short by less, in a sentence."
      },
      "states": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StateAnswer"
        },
        "description": "The deck in each state: as built, found, opened, repaired."
      },
      "ratios": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Ratio"
        },
        "description": "As built over repaired: at least 1 means that the repair gives back what there was."
      },
      "opened": {
        "$ref": "#/components/schemas/OpenSkinAnswer",
        "description": "What the open deck may carry meanwhile."
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCheckItem"
        },
        "description": "Checks of the fittings."
      },
      "loads": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LoadResult"
        },
        "description": "Loads that the states were compared under."
      },
      "cautions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCaution"
        },
        "description": "Cautions about standing and working on the deck."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "Figures of the comparison that nobody stated."
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the comparison does not say."
      },
      "truncation": {
        "type": "number",
        "description": "Greatest estimated relative error of the series and polynomials."
      },
      "explained": {
        "type": "object",
        "additionalProperties": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Derivations of the keys asked for in `explain`."
      }
    },
    "required": [
      "verdict",
      "shortfalls",
      "withinHands",
      "states",
      "ratios",
      "opened",
      "fittings",
      "loads",
      "cautions",
      "assumptions",
      "limits",
      "truncation"
    ]
  },
  "PanelCaution": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the caution."
      },
      "severity": {
        "type": "string",
        "enum": [
          "caution",
          "danger",
          "warning"
        ],
        "description": "How bad it can become."
      },
      "text": {
        "type": "string",
        "description": "What to beware of."
      },
      "because": {
        "type": "string",
        "description": "Which fact calls for the caution."
      },
      "source": {
        "type": "string",
        "description": "Where the caution comes from."
      }
    },
    "required": [
      "code",
      "severity",
      "text",
      "because",
      "source"
    ]
  },
  "PanelCheckItem": {
    "type": "object",
    "description": "A demand against a capacity. Failing is a result.",
    "properties": {
      "key": {
        "type": "string",
        "description": "Names this check among all, such as `repaired:person:core-shear`; its derivation has the same key."
      },
      "code": {
        "type": "string",
        "description": "Code of the panel's check."
      },
      "title": {
        "type": "string",
        "description": "Name of the panel's check."
      },
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ],
        "description": "State of the deck that is checked."
      },
      "load": {
        "type": "string",
        "description": "Load that it is checked under."
      },
      "fitting": {
        "type": "string",
        "description": "Fitting that it is checked at."
      },
      "demand": {
        "type": "number",
        "description": "What the panel must bear or keep to."
      },
      "capacity": {
        "type": "number",
        "description": "What the panel can bear or is allowed."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the panel's demand and capacity."
      },
      "utilisation": {
        "type": "number",
        "description": "Demand over capacity."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "Verdict of the panel's check."
      },
      "governs": {
        "type": "string",
        "description": "What in the panel decides."
      },
      "remedy": {
        "type": "string",
        "description": "What would make it pass."
      },
      "source": {
        "type": "string",
        "description": "Source of the panel's requirement."
      },
      "reason": {
        "type": "string",
        "description": "Why there is no figure, where there is none."
      },
      "asBuilt": {
        "$ref": "#/components/schemas/BuiltCheck",
        "description": "Of the repaired panel: what the same check comes to on the deck as built."
      }
    },
    "required": [
      "key",
      "code",
      "title",
      "unit",
      "verdict",
      "governs",
      "source"
    ]
  },
  "PanelRecord": {
    "type": "object",
    "properties": {
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        }
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        }
      },
      "supports": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupportLine"
        }
      },
      "name": {
        "type": "string"
      },
      "lining": {
        "type": "string",
        "enum": [
          "glued-vinyl",
          "moulded-liner",
          "none",
          "screwed-panels",
          "zipped-vinyl"
        ]
      },
      "edges": {
        "type": "string",
        "enum": [
          "clamped",
          "simply-supported"
        ]
      },
      "camberRadiusMm": {
        "type": "number"
      },
      "under": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "fuel-tank",
            "hoses",
            "insulation",
            "lining",
            "water-tank",
            "wiring"
          ]
        }
      },
      "accessBelow": {
        "type": "string",
        "enum": [
          "lined",
          "none",
          "open"
        ]
      },
      "isInnerSkinAirtight": {
        "type": "boolean"
      },
      "surface": {
        "type": "string",
        "enum": [
          "bonded-mat",
          "moulded-nonskid",
          "painted-nonskid",
          "planked",
          "smooth-paint"
        ]
      },
      "overlay": {
        "$ref": "#/components/schemas/OverlayRecord"
      },
      "outerSkinState": {
        "type": "string",
        "enum": [
          "cracked",
          "whole"
        ]
      },
      "workingHeightMm": {
        "type": "number"
      },
      "coreEndsMm": {
        "type": "number"
      }
    },
    "required": [
      "outline"
    ]
  },
  "PanelSection": {
    "type": "object",
    "description": "The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval.",
    "properties": {
      "verdict": {
        "type": "string",
        "enum": [
          "not-restored",
          "restored"
        ],
        "description": "Whether the deck is as good as it was."
      },
      "shortfalls": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "By more than a laminate is repeated by hand."
      },
      "withinHands": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What is short by less than that, in a sentence."
      },
      "sizeMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Length and width of the panel between supports."
      },
      "loads": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        },
        "description": "Loads that the deck is compared under."
      },
      "states": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelState"
        },
        "description": "The deck before, open and after."
      },
      "ratios": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        },
        "description": "Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored."
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the comparison leaves out."
      }
    },
    "required": [
      "verdict",
      "shortfalls",
      "withinHands",
      "sizeMm",
      "loads",
      "states",
      "ratios",
      "limits"
    ]
  },
  "PanelState": {
    "type": "object",
    "properties": {
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ],
        "description": "As built, as found, opened or repaired."
      },
      "bendingXNmm": {
        "type": "number",
        "description": "Bending stiffness of the deck fore and aft."
      },
      "bendingYNmm": {
        "type": "number",
        "description": "Bending stiffness of the deck athwart."
      },
      "shearNPerMm": {
        "type": "number",
        "description": "Shear stiffness of the deck."
      },
      "deflections": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "load": {
              "type": "string",
              "description": "Load under which the deck sags."
            },
            "deflectionMm": {
              "type": "number",
              "description": "Greatest sag under it."
            }
          },
          "required": [
            "load",
            "deflectionMm"
          ]
        },
        "description": "Only those that linear plate theory can stand for; `note` says which are left out."
      },
      "governs": {
        "type": "string",
        "description": "What is nearest to its limit in this state."
      },
      "utilisation": {
        "type": "number",
        "description": "How near: demand over capacity."
      },
      "note": {
        "type": "string",
        "description": "What to know about this state."
      }
    },
    "required": [
      "state",
      "bendingXNmm",
      "bendingYNmm",
      "shearNPerMm",
      "deflections"
    ]
  },
  "Parties": {
    "type": "object",
    "properties": {
      "client": {
        "type": "string"
      },
      "instructedBy": {
        "type": "string"
      },
      "surveyor": {
        "$ref": "#/components/schemas/Surveyor"
      }
    }
  },
  "PartsWear": {
    "type": "object",
    "properties": {
      "parts": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Parts that wear counts on."
      },
      "depreciation": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Wear of the parts they replace."
      },
      "remaining": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What is left of the price."
      }
    },
    "required": [
      "parts",
      "depreciation",
      "remaining"
    ]
  },
  "PhotographList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/DeckPhotograph"
        },
        "description": "Photographs of the estimate, by their number."
      }
    },
    "required": [
      "items"
    ]
  },
  "PlaceSection": {
    "type": "object",
    "description": "One place of the deck and the method that fits it.",
    "properties": {
      "place": {
        "type": "string",
        "description": "What is found at the place."
      },
      "badAreaM2": {
        "type": "number",
        "description": "Bad area to be expected there."
      },
      "rung": {
        "type": "string",
        "description": "Code of the rung."
      },
      "title": {
        "type": "string",
        "description": "Name of the rung."
      },
      "because": {
        "type": "string",
        "description": "Why the rung stands where it stands."
      }
    },
    "required": [
      "place",
      "badAreaM2",
      "rung",
      "title",
      "because"
    ]
  },
  "Placement": {
    "type": "object",
    "description": "One piece where it lies, in the coordinates of its sheet (mm).",
    "properties": {
      "pieceId": {
        "type": "string",
        "description": "Piece that is placed."
      },
      "copy": {
        "type": "number",
        "description": "Which of the alike pieces, from 1."
      },
      "turnDeg": {
        "type": "number",
        "description": "The drawing turned anticlockwise about its origin, then moved."
      },
      "moveMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "How far the turned piece is moved, [xMm, yMm]."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the piece where it lies."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Holes of the piece where they lie."
      },
      "cutOrder": {
        "type": "number",
        "description": "From 1: from the left edge, each before its right-hand neighbours."
      }
    },
    "required": [
      "pieceId",
      "copy",
      "turnDeg",
      "moveMm",
      "outline",
      "holes",
      "cutOrder"
    ]
  },
  "PlanFigures": {
    "type": "object",
    "properties": {
      "openedArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the opened area."
      },
      "retainedArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the skin bedded again."
      },
      "undercutArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the undercut area."
      },
      "taperBandArea": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the ground area."
      },
      "cutLength": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the length of cuts."
      },
      "splitLength": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the length of cuts between skin pieces."
      },
      "taperWidth": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the taper's width."
      },
      "cutDepth": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the saw's depth."
      }
    },
    "required": [
      "openedArea",
      "retainedArea",
      "undercutArea",
      "taperBandArea",
      "cutLength",
      "splitLength",
      "taperWidth"
    ]
  },
  "PlannedBatch": {
    "type": "object",
    "description": "Everything that stands on one card beside the pot.",
    "properties": {
      "number": {
        "type": "number",
        "description": "Number of the pot, from 1, in the order of mixing."
      },
      "stepIndex": {
        "type": "number",
        "description": "Step that the pot is for, by its place in the request."
      },
      "step": {
        "type": "string",
        "enum": [
          "bed-core",
          "bed-skin",
          "closing-plies",
          "core-kerfs",
          "cut-kerf",
          "fairing",
          "inject",
          "peel-ply",
          "potting",
          "prewet",
          "seal",
          "top-laminate",
          "undercut",
          "weave-fill"
        ],
        "description": "Kind of step that the pot is for."
      },
      "title": {
        "type": "string",
        "description": "Name of that step."
      },
      "resinG": {
        "type": "number",
        "description": "Resin in the pot."
      },
      "hardenerG": {
        "type": "number",
        "description": "Hardener in the pot."
      },
      "fillerG": {
        "type": "number",
        "description": "Filler in the pot."
      },
      "filler": {
        "type": "string",
        "description": "Code of the filler in the pot."
      },
      "mixedG": {
        "type": "number",
        "description": "Mass of resin and hardener mixed."
      },
      "mixedMl": {
        "type": "number",
        "description": "Volume of resin and hardener mixed."
      },
      "weigh": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Weighing"
        },
        "description": "What goes on the scale, in order."
      },
      "pumps": {
        "type": "string",
        "description": "The same in strokes of a metering pump, where its stroke was stated."
      },
      "covers": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Pieces or places that the pot is enough for."
      },
      "spreadMin": {
        "type": "number",
        "description": "Time that spreading the pot takes."
      },
      "useWithinMin": {
        "type": "number",
        "description": "Time from mixing within which the pot must be spread out."
      },
      "potLifeMin": {
        "type": "number",
        "description": "Time until the pot would gel, left in the cup."
      },
      "forgottenPotPeakC": {
        "type": "number",
        "description": "Temperature that a pot left standing may reach."
      },
      "limitedBy": {
        "type": "string",
        "enum": [
          "exotherm",
          "piece",
          "pot-life",
          "pot-size",
          "whole-step"
        ],
        "description": "What kept the pot from being larger."
      },
      "edgeOpenMin": {
        "type": "number",
        "description": "Longest time after which the next pot may meet this one's edge."
      }
    },
    "required": [
      "number",
      "stepIndex",
      "step",
      "title",
      "resinG",
      "hardenerG",
      "fillerG",
      "mixedG",
      "mixedMl",
      "weigh",
      "covers",
      "spreadMin",
      "useWithinMin",
      "potLifeMin",
      "forgottenPotPeakC",
      "limitedBy",
      "edgeOpenMin"
    ]
  },
  "PlannedOpening": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "A, B, C ... from the largest."
      },
      "zones": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Ids of the zones it opens."
      },
      "area": {
        "$ref": "#/components/schemas/Polygon",
        "description": "What is cut out, corners rounded."
      },
      "sawLine": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "The straight lines to mark, meeting in sharp corners."
      },
      "innerSawLines": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Cuts round what stays within the opening."
      },
      "cornerRadiusMm": {
        "type": "number",
        "description": "Radius that the corners are cut to."
      },
      "marking": {
        "$ref": "#/components/schemas/MarkingOut",
        "description": "How to mark the cuts out on deck with a tape."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of skin that the opening takes off."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of the opening's cuts."
      },
      "cutDepthMm": {
        "type": "number",
        "description": "Depth to set the saw to; absent when the skin is not known."
      },
      "undercut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Bad core under skin that stays."
      },
      "undercutAreaM2": {
        "type": "number",
        "description": "Core taken out from under the opening's edges."
      },
      "undercutReachMm": {
        "type": "number",
        "description": "Farthest reach under the edge."
      },
      "taperBand": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Old skin round the opening that is ground."
      },
      "taperBandAreaM2": {
        "type": "number",
        "description": "Area of that band."
      },
      "skinPieces": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "label": {
              "type": "string",
              "description": "Name of the piece of skin."
            },
            "area": {
              "type": "array",
              "items": {
                "$ref": "#/components/schemas/Polygon"
              },
              "description": "Edge of the piece of skin."
            },
            "areaM2": {
              "type": "number",
              "description": "Area of the piece of skin."
            }
          },
          "required": [
            "label",
            "area",
            "areaM2"
          ]
        },
        "description": "Pieces the skin comes off in."
      },
      "splits": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Cuts that part the skin into pieces, each from point to point."
      },
      "joins": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Join"
        },
        "description": "Openings that were made into this one, with the reason."
      },
      "form": {
        "type": "string",
        "enum": [
          "hull",
          "octagon",
          "outline",
          "rectangle"
        ],
        "description": "Form of the opening."
      },
      "reason": {
        "type": "string",
        "description": "Why this form was chosen."
      }
    },
    "required": [
      "label",
      "zones",
      "area",
      "sawLine",
      "innerSawLines",
      "cornerRadiusMm",
      "marking",
      "areaM2",
      "cutLengthM",
      "undercut",
      "undercutAreaM2",
      "undercutReachMm",
      "taperBand",
      "taperBandAreaM2",
      "skinPieces",
      "splits",
      "joins",
      "form",
      "reason"
    ]
  },
  "PlannedTask": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the planned task."
      },
      "operation": {
        "type": "string",
        "description": "Code of the operation it is a cycle of, or its own."
      },
      "title": {
        "type": "string",
        "description": "What the planned task does."
      },
      "phase": {
        "type": "string",
        "enum": [
          "bond",
          "close",
          "finish",
          "hand-over",
          "open",
          "prepare",
          "refit",
          "survey"
        ],
        "description": "Part of the job that the task belongs to."
      },
      "skill": {
        "type": "string",
        "enum": [
          "finisher",
          "general",
          "laminator",
          "rigger"
        ],
        "description": "Skill that the task needs."
      },
      "gate": {
        "type": "string",
        "enum": [
          "coating",
          "dry-deck",
          "none",
          "resin"
        ],
        "description": "What the weather must allow for the task."
      },
      "startAt": {
        "type": "string",
        "description": "Planned start (RFC 3339)."
      },
      "endAt": {
        "type": "string",
        "description": "Planned end (RFC 3339)."
      },
      "readyAt": {
        "type": "string",
        "description": "When its cure, drying or hold is over and successors may start."
      },
      "startDay": {
        "type": "number",
        "description": "Days since the start date began, local."
      },
      "endDay": {
        "type": "number",
        "description": "When the work of the task ends, in days from the start of the plan."
      },
      "labourH": {
        "type": "number",
        "description": "Mean hours of work in the task."
      },
      "hands": {
        "type": "number",
        "description": "How many work on it at once."
      },
      "waitH": {
        "type": "number",
        "description": "Wait that follows the task."
      },
      "waitKind": {
        "type": "string",
        "enum": [
          "cure",
          "drying",
          "elapsed",
          "hold",
          "none"
        ],
        "description": "Reason of that wait."
      },
      "isCritical": {
        "type": "boolean",
        "description": "On the chain that decides the finish, by mean values."
      },
      "criticality": {
        "type": "number",
        "description": "Share of the simulated calendars in which it decided the finish."
      },
      "startsBecause": {
        "type": "string",
        "description": "What holds the task back until its start."
      },
      "isHoldPoint": {
        "type": "boolean",
        "description": "Whether somebody must agree before work goes on."
      },
      "after": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Codes of the tasks it follows."
      }
    },
    "required": [
      "code",
      "operation",
      "title",
      "phase",
      "skill",
      "gate",
      "startAt",
      "endAt",
      "readyAt",
      "startDay",
      "endDay",
      "labourH",
      "hands",
      "waitH",
      "waitKind",
      "isCritical",
      "criticality",
      "startsBecause",
      "isHoldPoint",
      "after"
    ]
  },
  "Plug": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "plug"
        ],
        "description": "Says that a core plug was drilled."
      },
      "condition": {
        "type": "string",
        "enum": [
          "damp-sound",
          "debonded-dry",
          "dry-sound",
          "rotten",
          "wet-bonded"
        ],
        "description": "What the core in the plug was like."
      },
      "moisturePercent": {
        "type": "number",
        "description": "Moisture of the plug by mass of dry core."
      },
      "outerSkinMm": {
        "type": "number",
        "description": "Outer skin as measured on the plug."
      },
      "innerSkinMm": {
        "type": "number",
        "description": "Inner skin as measured on the plug."
      },
      "coreMm": {
        "type": "number",
        "description": "Core as measured on the plug."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where it was taken, [xMm, yMm]."
      },
      "isUnreliable": {
        "type": "boolean",
        "description": "True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful."
      }
    },
    "required": [
      "kind",
      "condition",
      "at"
    ]
  },
  "PlyLine": {
    "type": "object",
    "properties": {
      "order": {
        "type": "number",
        "description": "Place in the order of laying, from 1."
      },
      "material": {
        "type": "string",
        "description": "Code of the glass."
      },
      "materialName": {
        "type": "string",
        "description": "Name of the glass."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness when cured."
      },
      "areaM2": {
        "type": "number",
        "description": "Glass to cut, without waste."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        },
        "description": "Shape to cut."
      },
      "widthMm": {
        "type": "number",
        "description": "Width, where the ply is a strip."
      },
      "rollLengthM": {
        "type": "number",
        "description": "Length off the roll."
      },
      "rollWidthMm": {
        "type": "number",
        "description": "Width of that roll."
      },
      "glassKg": {
        "type": "number",
        "description": "Mass of the glass."
      },
      "resinKg": {
        "type": "number",
        "description": "Mass of resin that it takes."
      },
      "orientationDeg": {
        "type": "number",
        "description": "Direction of the warp against fore and aft."
      }
    },
    "required": [
      "order",
      "material",
      "materialName",
      "thicknessMm",
      "areaM2",
      "outline",
      "rollLengthM",
      "rollWidthMm",
      "glassKg",
      "resinKg",
      "orientationDeg"
    ]
  },
  "Polygon": {
    "type": "object",
    "description": "`outer` runs from x towards y (positive signed area); each hole runs the other way.",
    "properties": {
      "outer": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Outer ring, points in order."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "Rings that are left out."
      }
    },
    "required": [
      "outer",
      "holes"
    ]
  },
  "PressLine": {
    "type": "object",
    "description": "A length of timber under, on or over the area that is pressed, and the places along it.",
    "properties": {
      "what": {
        "type": "string",
        "enum": [
          "batten",
          "board",
          "bow"
        ],
        "description": "A board on props, a batten that is screwed down, or a bow that keeps the shape of the deck."
      },
      "from": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "One end of it: along the length of the area and across it, in mm."
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Its other end."
      },
      "points": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Where a prop stands under a board, or a screw goes through a batten."
      }
    },
    "required": [
      "what",
      "from",
      "to",
      "points"
    ]
  },
  "PressOption": {
    "type": "object",
    "description": "One way to press, with what it can do here and what speaks against it.",
    "properties": {
      "method": {
        "type": "string",
        "enum": [
          "battens",
          "jacks",
          "vacuum",
          "weights"
        ],
        "description": "The way of pressing judged."
      },
      "availableKPa": {
        "type": "number",
        "description": "Pressure that this way can give."
      },
      "utilisation": {
        "type": "number",
        "description": "Needed pressure over what this way gives; above 1 it is too weak."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "Whether this way will do."
      },
      "restsOn": {
        "type": "string",
        "description": "What carries the force of this way."
      },
      "onInnerSkinKPa": {
        "type": "number",
        "description": "Load that the inner skin must carry while it cures."
      },
      "skinSpanMm": {
        "type": "number",
        "description": "Span over which it carries that; the clear span where nothing else holds it."
      },
      "turns": {
        "type": "number",
        "description": "One after another, where a crew cannot press the whole opening at once."
      },
      "evenness": {
        "type": "string",
        "description": "How evenly it presses."
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressQuantity"
        },
        "description": "What this way would take."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressLine"
        },
        "description": "Where its timber lies, from one corner of the area."
      },
      "onPieceKgPerM2": {
        "type": "number",
        "description": "What lies on each square metre of a piece, or pushes against it."
      },
      "reasons": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What speaks for it or against it."
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Why it cannot be used here at all."
      }
    },
    "required": [
      "method",
      "verdict",
      "restsOn",
      "onInnerSkinKPa",
      "evenness",
      "quantities",
      "reasons",
      "refusals"
    ]
  },
  "PressQuantity": {
    "type": "object",
    "description": "Something that the pressing takes, counted or measured.",
    "properties": {
      "code": {
        "type": "string",
        "description": "What is counted for the pressing."
      },
      "name": {
        "type": "string",
        "description": "Name of what is counted."
      },
      "value": {
        "type": "number",
        "description": "How much of it."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the count or measure."
      },
      "note": {
        "type": "string",
        "description": "What to heed about it."
      }
    },
    "required": [
      "code",
      "name",
      "value",
      "unit"
    ]
  },
  "PreviewPanel": {
    "type": "object",
    "description": "Of the repaired panel beside the deck as built.",
    "properties": {
      "verdict": {
        "type": "string",
        "enum": [
          "cannot-be-carried-out",
          "deck-stays-closed",
          "not-established",
          "not-restored",
          "restored"
        ],
        "description": "How the repaired deck compares with the old one."
      },
      "sentence": {
        "type": "string",
        "description": "The comparison in a sentence."
      },
      "shortfalls": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Every measure of which the repair gives back less than there was, worst first."
      }
    },
    "required": [
      "verdict",
      "sentence",
      "shortfalls"
    ]
  },
  "PreviewPrice": {
    "type": "object",
    "properties": {
      "withoutContingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Base and what will probably be found besides, with tax; no contingency."
      },
      "range": {
        "$ref": "#/components/schemas/EstimateMoneyRange",
        "description": "With tax, as the extent and the rates may turn out."
      },
      "missing": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Needs that nothing on the price list covers, and that are not in the price."
      }
    },
    "required": [
      "withoutContingency",
      "range",
      "missing"
    ]
  },
  "PreviewSummary": {
    "type": "object",
    "properties": {
      "damagedAreaM2": {
        "$ref": "#/components/schemas/Range",
        "description": "Absent where the deck stays closed."
      },
      "openedAreaM2": {
        "type": "number",
        "description": "Skin that comes off, in all openings."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of all saw cuts."
      },
      "plyCount": {
        "type": "number",
        "description": "Plies of the new skin."
      },
      "mixedResinL": {
        "type": "number",
        "description": "Mixed resin with losses."
      },
      "labourLikelyH": {
        "type": "number",
        "description": "Sum of the labour lines: each at its likely hours."
      },
      "labourH": {
        "$ref": "#/components/schemas/Range",
        "description": "Hours of work, as a spread."
      },
      "workingDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days of work, as a spread."
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days from start to end, waits included, as a spread."
      }
    },
    "required": [
      "openedAreaM2",
      "cutLengthM",
      "plyCount",
      "mixedResinL",
      "labourLikelyH",
      "labourH",
      "workingDays",
      "calendarDays"
    ]
  },
  "PreviewedOpening": {
    "type": "object",
    "properties": {
      "label": {
        "type": "string",
        "description": "Name of the opening on drawings."
      },
      "reason": {
        "type": "string",
        "description": "Why the opening has this form."
      },
      "area": {
        "$ref": "#/components/schemas/Area",
        "description": "Edge of the opening."
      },
      "sawLine": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Corners of the saw line before rounding, measured from the datum corner of the panel."
      },
      "areaM2": {
        "type": "number",
        "description": "Area of the opening."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of its saw cuts."
      },
      "cutDepthMm": {
        "type": "number",
        "description": "Absent when no depth is safe; a finding says why."
      }
    },
    "required": [
      "label",
      "reason",
      "area",
      "sawLine",
      "areaM2",
      "cutLengthM"
    ]
  },
  "PriceChange": {
    "type": "object",
    "description": "What a percentage did to a price list of a draft.",
    "properties": {
      "priceList": {
        "type": "string",
        "description": "Code of the price list."
      },
      "edition": {
        "type": "string",
        "description": "Code of the draft."
      },
      "currency": {
        "type": "string",
        "description": "Currency of the changed prices."
      },
      "percent": {
        "type": "string",
        "description": "By how much they changed, as decimal text."
      },
      "chosenCount": {
        "type": "number",
        "description": "How many packs the choice met."
      },
      "changed": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ChangedPack"
        },
        "description": "Those of them whose prices differ now; a small percentage can be rounded away."
      }
    },
    "required": [
      "priceList",
      "edition",
      "currency",
      "percent",
      "chosenCount",
      "changed"
    ]
  },
  "PricedJob": {
    "type": "object",
    "properties": {
      "rollUp": {
        "$ref": "#/components/schemas/CostRollUp",
        "description": "Lines, loadings and taxes."
      },
      "risk": {
        "$ref": "#/components/schemas/CostRisk",
        "description": "Spread of the price; absent when it was not asked for."
      }
    },
    "required": [
      "rollUp"
    ]
  },
  "PricingChoice": {
    "type": "object",
    "properties": {
      "seed": {
        "type": "number"
      },
      "depreciation": {
        "$ref": "#/components/schemas/DepreciationTerms"
      },
      "samples": {
        "type": "number"
      },
      "contingencyPercent": {
        "type": "number"
      },
      "priceList": {
        "type": "string"
      },
      "labourRates": {
        "type": "string"
      },
      "goods": {
        "type": "string",
        "enum": [
          "as-bought",
          "as-used"
        ]
      },
      "authorisationPercent": {
        "type": "number"
      },
      "foundOverRecorded": {
        "type": "array",
        "items": {
          "type": "number"
        }
      },
      "deductible": {
        "type": "string"
      }
    }
  },
  "ProbabilityContour": {
    "type": "object",
    "properties": {
      "probability": {
        "type": "number",
        "description": "Chance of bad core along this edge."
      },
      "areas": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Where core is bad with at least this probability."
      },
      "areaM2": {
        "type": "number",
        "description": "Area within this edge."
      }
    },
    "required": [
      "probability",
      "areas",
      "areaM2"
    ]
  },
  "ProbabilityMap": {
    "type": "object",
    "properties": {
      "stepMm": {
        "type": "number",
        "description": "Distance between the places of the map."
      },
      "rangeMm": {
        "type": "number",
        "description": "Distance over which the readings suggest that the damage hangs together."
      },
      "hammer": {
        "type": "object",
        "properties": {
          "falseAlarmShare": {
            "type": "number",
            "description": "Share of sound places that sound dull."
          },
          "missedShare": {
            "type": "number",
            "description": "Share of bad places that ring clear."
          },
          "hangingTogether": {
            "type": "number",
            "description": "How likely it is that its errors hang together in patches."
          }
        },
        "required": [
          "falseAlarmShare",
          "missedShare",
          "hangingTogether"
        ],
        "description": "How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given."
      },
      "meter": {
        "type": "object",
        "properties": {
          "overSoundShare": {
            "type": "number",
            "description": "Mean reading over sound core, as a share of the meter's span."
          },
          "overBadShare": {
            "type": "number",
            "description": "Mean reading over bad core, as a share of the meter's span."
          },
          "sdShare": {
            "type": "number",
            "description": "Scatter of readings, as a share of the meter's span."
          }
        },
        "required": [
          "overSoundShare",
          "overBadShare",
          "sdShare"
        ],
        "description": "Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays."
      },
      "cells": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "at": {
              "type": "array",
              "items": {
                "type": "number"
              },
              "minItems": 2,
              "maxItems": 2,
              "description": "Middle of the cell, [xMm, yMm]."
            },
            "chance": {
              "type": "number",
              "description": "Chance that the core is bad there."
            }
          },
          "required": [
            "at",
            "chance"
          ]
        },
        "description": "Places with their chances."
      }
    },
    "required": [
      "stepMm",
      "rangeMm",
      "cells"
    ]
  },
  "Problem": {
    "type": "object",
    "description": "Something the caller can put right. Words are made from the code, in `problem-words.ts` only.",
    "properties": {
      "code": {
        "type": "string",
        "enum": [
          "breaks-out-of-order",
          "clock-change",
          "contradiction",
          "duplicate",
          "duplicate-name",
          "forecast-gap",
          "forecast-order",
          "hardener-without-resin",
          "malformed-json",
          "method-unfit",
          "missing",
          "network-cycle",
          "no-method-fits",
          "no-time-zone",
          "not-a-decimal",
          "not-a-flag",
          "not-a-list",
          "not-a-number",
          "not-a-point",
          "not-a-quantity",
          "not-an-object",
          "not-in-form",
          "not-one-of",
          "not-supported",
          "not-text",
          "nothing-left",
          "nothing-to-repair",
          "other-currency",
          "out-of-range",
          "outline-crosses-itself",
          "outline-without-area",
          "outside-panel",
          "reserved-name",
          "resin-too-cold",
          "text-length",
          "too-deep",
          "too-few",
          "too-large-for-stock",
          "too-many",
          "unit-mismatch",
          "unknown-code",
          "unknown-field",
          "unusable-text",
          "wrong-unit",
          "wrong-zone"
        ],
        "description": "Stable code of the problem."
      },
      "at": {
        "type": "string",
        "description": "JSON Pointer (RFC 6901) to the offending field; '' is the whole document."
      },
      "facts": {
        "type": "object",
        "additionalProperties": {
          "oneOf": [
            {
              "type": "boolean"
            },
            {
              "type": "string"
            },
            {
              "type": "number"
            }
          ]
        },
        "description": "What the sentence of the problem is made of."
      }
    },
    "required": [
      "code",
      "at",
      "facts"
    ]
  },
  "ProcessSection": {
    "type": "object",
    "properties": {
      "resin": {
        "type": "object",
        "properties": {
          "code": {
            "type": "string",
            "description": "Code of the planned resin."
          },
          "name": {
            "type": "string",
            "description": "Name of the planned resin."
          },
          "hardener": {
            "type": "string",
            "description": "Code of the planned hardener."
          },
          "hardenerName": {
            "type": "string",
            "description": "Name of the planned hardener."
          },
          "why": {
            "type": "string",
            "description": "Why they suit the work and its warmth."
          }
        },
        "required": [
          "code",
          "name",
          "hardener",
          "hardenerName",
          "why"
        ],
        "description": "Resin and hardener that the work is planned with."
      },
      "demands": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ResinStep"
        },
        "description": "Mix that each step takes."
      },
      "batches": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BatchCard"
        },
        "description": "A card for each pot."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateFinding"
        },
        "description": "What stands against these pots at this temperature with this crew."
      },
      "bondPressure": {
        "$ref": "#/components/schemas/BondPressureSection",
        "description": "Absent where nothing is bedded that would have to be pressed."
      },
      "cure": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CureMilestones"
        },
        "description": "When each mix can be worked on."
      },
      "gates": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "step": {
              "type": "string",
              "description": "Step that waits."
            },
            "requires": {
              "type": "array",
              "items": {
                "type": "string"
              },
              "description": "What it waits for, in words."
            }
          },
          "required": [
            "step",
            "requires"
          ]
        },
        "description": "What each step waits for."
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherSection",
        "description": "When each step may start; only with a forecast. Without one the gates say what to require."
      },
      "calendar": {
        "$ref": "#/components/schemas/CalendarSection",
        "description": "Tasks and days."
      }
    },
    "required": [
      "resin",
      "demands",
      "batches",
      "findings",
      "cure",
      "gates",
      "calendar"
    ]
  },
  "Proven": {
    "type": "object",
    "description": "The search went to its end.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "proven"
        ],
        "description": "Says that no cheaper basket exists."
      }
    },
    "required": [
      "kind"
    ]
  },
  "ProvenanceStamp": {
    "type": "object",
    "properties": {
      "engineVersion": {
        "type": "string",
        "description": "Version of the program."
      },
      "edition": {
        "type": "string",
        "description": "Code of the catalogue's edition."
      },
      "catalogueHash": {
        "type": "string",
        "description": "Hash of the edition's content."
      },
      "priceList": {
        "type": "string",
        "description": "Code of the price list that the lines were priced from."
      },
      "labourRates": {
        "type": "string",
        "description": "Code of the labour rates."
      }
    },
    "required": [
      "engineVersion",
      "edition",
      "catalogueHash",
      "priceList",
      "labourRates"
    ]
  },
  "ProvisionalSum": {
    "type": "object",
    "description": "A quantity that nobody has measured yet, with the price that the measured one will have.",
    "properties": {
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum that is set aside."
      },
      "quantity": {
        "type": "number",
        "description": "Quantity that it is enough for."
      },
      "unit": {
        "type": "string",
        "description": "Unit of that quantity."
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price at which it is measured later."
      },
      "basis": {
        "type": "string",
        "description": "Why the sum is set aside."
      }
    },
    "required": [
      "amount",
      "quantity",
      "unit",
      "unitPrice",
      "basis"
    ]
  },
  "PublicationNamed": {
    "type": "object",
    "properties": {
      "effectiveAt": {
        "type": "string",
        "description": "RFC 3339 instant from which it counts; absent when that is at once."
      },
      "code": {
        "type": "string",
        "description": "Edition that the event tells of."
      },
      "href": {
        "type": "string",
        "description": "Path of the edition."
      }
    },
    "required": [
      "code",
      "href"
    ]
  },
  "PublishableKey": {
    "type": "object",
    "description": "A key that stands in a page for everybody to read: it makes estimates and lists none.",
    "properties": {
      "key": {
        "type": "string",
        "description": "The key, which may stand in a page."
      },
      "origins": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Origins of the pages that may use it."
      },
      "perMinute": {
        "type": "number",
        "description": "Requests a minute of all visitors together."
      },
      "perMinutePerVisitor": {
        "type": "number",
        "description": "Requests a minute from one address."
      },
      "perDay": {
        "type": "number",
        "description": "Estimates a day, counted from midnight UTC."
      },
      "edition": {
        "type": "string",
        "description": "The edition it estimates with; whichever is current when absent."
      },
      "id": {
        "type": "string",
        "description": "Id of the key; not the key itself."
      },
      "organisationId": {
        "type": "string",
        "description": "Organisation the key belongs to."
      },
      "name": {
        "type": "string",
        "description": "What the key is used for; stands in histories."
      },
      "createdAt": {
        "type": "string",
        "description": "When the key was made (RFC 3339)."
      },
      "expiresAt": {
        "type": "string",
        "description": "From when on the key opens nothing; it never ends by itself when absent."
      },
      "lastUsedAt": {
        "type": "string",
        "description": "To the minute; absent for a key that was never used."
      },
      "revokedAt": {
        "type": "string",
        "description": "When it stopped counting (RFC 3339); absent while it counts."
      }
    },
    "required": [
      "key",
      "origins",
      "perMinute",
      "perMinutePerVisitor",
      "perDay",
      "id",
      "organisationId",
      "name",
      "createdAt"
    ]
  },
  "PublishableKeyList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PublishableKey"
        },
        "description": "Publishable keys of the organisation."
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` for more publishable keys; absent on the last page."
      }
    },
    "required": [
      "items"
    ]
  },
  "Quantiles": {
    "type": "object",
    "description": "Three points of an uncertain number.",
    "properties": {
      "p10": {
        "type": "number",
        "description": "Value that one case in ten stays below."
      },
      "p50": {
        "type": "number",
        "description": "Value that half of the cases stay below."
      },
      "p90": {
        "type": "number",
        "description": "Value that nine cases in ten stay below."
      }
    },
    "required": [
      "p10",
      "p50",
      "p90"
    ]
  },
  "QuantitiesRead": {
    "type": "object",
    "properties": {
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/QuantityRead"
        },
        "description": "The texts, in the order sent, each as it was understood."
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
        "type": "string",
        "description": "The text as sent."
      },
      "value": {
        "type": "number",
        "description": "In the SI unit beside it, rounded once from the exact fraction to the nearest double."
      },
      "unit": {
        "type": "string",
        "description": "Unit that was recognised."
      }
    },
    "required": [
      "text",
      "value",
      "unit"
    ]
  },
  "Range": {
    "type": "object",
    "description": "Three points of one uncertain number.",
    "properties": {
      "p10": {
        "type": "number",
        "description": "One job in ten comes to less."
      },
      "p50": {
        "type": "number",
        "description": "Half of the jobs come to less."
      },
      "p90": {
        "type": "number",
        "description": "Nine jobs in ten come to less."
      }
    },
    "required": [
      "p10",
      "p50",
      "p90"
    ]
  },
  "Ratio": {
    "type": "object",
    "properties": {
      "key": {
        "type": "string",
        "description": "Names check and load together."
      },
      "code": {
        "type": "string",
        "description": "Check that repaired and built deck share."
      },
      "title": {
        "type": "string",
        "description": "Name of what is compared."
      },
      "load": {
        "type": "string",
        "description": "Load that both are under."
      },
      "ratio": {
        "type": "number",
        "description": "Repaired over built; 1 is as good as it was."
      },
      "asBuiltUtilisation": {
        "type": "number",
        "description": "Share of what is allowed that the deck as built used, and that the repair uses."
      },
      "repairedUtilisation": {
        "type": "number",
        "description": "Demand over capacity of the repaired deck."
      }
    },
    "required": [
      "key",
      "code",
      "title",
      "ratio",
      "asBuiltUtilisation",
      "repairedUtilisation"
    ]
  },
  "ReMeasured": {
    "type": "object",
    "description": "What was found, charged or credited by the rates that were agreed with the price; without tax.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ReMeasuredItem"
        },
        "description": "What was measured anew, each at the agreed rate."
      },
      "measured": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the items."
      },
      "provisionalCredited": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The provisional sums of the agreed price: taken off, because what they stood for has been measured."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The items less the credit."
      },
      "authorisedH": {
        "type": "number",
        "description": "Hours that the customer authorised beforehand."
      },
      "expectedH": {
        "type": "number",
        "description": "Hours that the found extent now takes."
      },
      "isWithinAuthorisation": {
        "type": "boolean",
        "description": "Whether the expected hours stay within the authorised ones."
      }
    },
    "required": [
      "items",
      "measured",
      "provisionalCredited",
      "difference",
      "authorisedH",
      "expectedH",
      "isWithinAuthorisation"
    ]
  },
  "ReMeasuredItem": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Unit rate that was agreed."
      },
      "what": {
        "type": "string",
        "description": "What is measured."
      },
      "unit": {
        "type": "string",
        "description": "Unit that it is measured in."
      },
      "quantityAgreed": {
        "type": "string",
        "description": "Quantity of the offer, as decimal text."
      },
      "quantityFound": {
        "type": "string",
        "description": "Quantity found after opening, as decimal text."
      },
      "rate": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Agreed price of one unit."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What is more or less of it, at the agreed rate."
      }
    },
    "required": [
      "code",
      "what",
      "unit",
      "quantityAgreed",
      "quantityFound",
      "rate",
      "amount"
    ]
  },
  "ReinspectionPoint": {
    "type": "object",
    "properties": {
      "when": {
        "type": "string",
        "description": "At which point of the work."
      },
      "before": {
        "type": "string",
        "description": "What must not begin before."
      },
      "look": {
        "type": "string",
        "description": "What to look at or measure."
      },
      "accept": {
        "type": "string",
        "description": "What makes it good."
      },
      "by": {
        "type": "string",
        "description": "Who should look."
      },
      "source": {
        "type": "string",
        "description": "Source of the point."
      }
    },
    "required": [
      "when",
      "before",
      "look",
      "accept",
      "by",
      "source"
    ]
  },
  "RelaidPlies": {
    "type": "object",
    "properties": {
      "taperWidthMm": {
        "$ref": "#/components/schemas/Figure",
        "description": "Width of the taper that the new plies step up."
      },
      "taperAreaM2": {
        "type": "number",
        "description": "Area of the taper."
      },
      "order": {
        "type": "string",
        "enum": [
          "largest-first",
          "smallest-first"
        ],
        "description": "Whether the largest or the smallest ply is laid first."
      },
      "consequences": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What this order means for the work."
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LaidOutPly"
        },
        "description": "New plies in the order they are laid."
      },
      "stages": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Stage"
        },
        "description": "What is laid wet on wet before it must cool."
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Glass of all new plies."
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin of all new plies."
      },
      "largestPlyM2": {
        "type": "number",
        "description": "Area of the largest ply in one piece."
      },
      "room": {
        "$ref": "#/components/schemas/RoomCheck",
        "description": "Whether the taper stays on the panel."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What was taken about plies and rolls."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the laminator should heed."
      }
    },
    "required": [
      "taperWidthMm",
      "taperAreaM2",
      "order",
      "consequences",
      "plies",
      "stages",
      "glassKg",
      "resinKg",
      "largestPlyM2",
      "room",
      "assumptions",
      "notes"
    ]
  },
  "Replay": {
    "type": "object",
    "description": "The estimate computed again from its own record and edition.",
    "properties": {
      "isSame": {
        "type": "boolean",
        "description": "True when every digit of the document came out again."
      },
      "madeWith": {
        "type": "object",
        "properties": {
          "engineVersion": {
            "type": "string",
            "description": "Version of the program then."
          },
          "edition": {
            "type": "string",
            "description": "Edition of the catalogue then."
          },
          "catalogueHash": {
            "type": "string",
            "description": "Hash of that edition's content."
          }
        },
        "required": [
          "engineVersion",
          "edition",
          "catalogueHash"
        ],
        "description": "What the stored estimate was made with."
      },
      "engineVersionNow": {
        "type": "string",
        "description": "Version of the program that replayed it."
      },
      "isSameCatalogue": {
        "type": "boolean",
        "description": "False when the edition's content is no longer the one that was used."
      },
      "totalThen": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Total that was stored."
      },
      "totalNow": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Total that came out now."
      }
    },
    "required": [
      "isSame",
      "madeWith",
      "engineVersionNow",
      "isSameCatalogue",
      "totalThen",
      "totalNow"
    ]
  },
  "Requirement": {
    "type": "object",
    "properties": {
      "gate": {
        "type": "string",
        "enum": [
          "core-moisture",
          "dew-margin",
          "humidity",
          "rain",
          "too-cold",
          "too-warm",
          "wind"
        ],
        "description": "Which gate the requirement belongs to."
      },
      "text": {
        "type": "string",
        "description": "The requirement in words."
      },
      "limit": {
        "type": "number",
        "description": "Value that must be kept."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the limit."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Source of the limit."
      }
    },
    "required": [
      "gate",
      "text",
      "limit",
      "unit",
      "cite"
    ]
  },
  "ResinDemand": {
    "type": "object",
    "properties": {
      "resin": {
        "type": "string",
        "description": "Code of the resin demanded."
      },
      "hardener": {
        "type": "string",
        "description": "Code of the hardener demanded with it."
      },
      "partsByMass": {
        "type": "number",
        "description": "Grams of hardener to 100 g of resin."
      },
      "partsByVolume": {
        "type": "number",
        "description": "Millilitres of hardener to 100 ml of resin."
      },
      "mixedDensityGPerCm3": {
        "type": "number",
        "description": "Density of resin and hardener mixed, without filler."
      },
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StepDemand"
        },
        "description": "Demand of each step of the work, in its order."
      },
      "totals": {
        "type": "object",
        "properties": {
          "netL": {
            "type": "number",
            "description": "What ends up in the repair, without losses."
          },
          "wasteL": {
            "type": "number",
            "description": "What stays in pots, rollers and brushes."
          },
          "totalL": {
            "type": "number",
            "description": "What must be mixed in all."
          },
          "resinG": {
            "type": "number",
            "description": "Resin component of the whole demand."
          },
          "hardenerG": {
            "type": "number",
            "description": "Hardener component of the whole demand."
          },
          "fillers": {
            "type": "array",
            "items": {
              "type": "object",
              "properties": {
                "filler": {
                  "type": "string",
                  "description": "Code of the filler."
                },
                "massG": {
                  "type": "number",
                  "description": "Mass of the filler over all steps."
                }
              },
              "required": [
                "filler",
                "massG"
              ]
            },
            "description": "Fillers of all steps, each kind with its mass."
          }
        },
        "required": [
          "netL",
          "wasteL",
          "totalL",
          "resinG",
          "hardenerG",
          "fillers"
        ],
        "description": "Demand of all steps together."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "Rates and losses that nobody stated."
      }
    },
    "required": [
      "resin",
      "hardener",
      "partsByMass",
      "partsByVolume",
      "mixedDensityGPerCm3",
      "steps",
      "totals",
      "assumptions"
    ]
  },
  "ResinStep": {
    "type": "object",
    "properties": {
      "step": {
        "type": "string",
        "description": "Step that takes resin."
      },
      "title": {
        "type": "string",
        "description": "Name of the step that takes resin."
      },
      "netL": {
        "type": "number",
        "description": "What stays in the deck."
      },
      "wasteL": {
        "type": "number",
        "description": "What is lost at the step."
      },
      "totalL": {
        "type": "number",
        "description": "What is mixed for the step."
      },
      "totalKg": {
        "type": "number",
        "description": "Mass of all that is mixed for the step."
      },
      "fillerKg": {
        "type": "number",
        "description": "Filler stirred in at the step."
      },
      "filler": {
        "type": "string",
        "description": "Name of the filler at the step."
      }
    },
    "required": [
      "step",
      "title",
      "netL",
      "wasteL",
      "totalL",
      "totalKg"
    ]
  },
  "Response": {
    "type": "object",
    "properties": {
      "load": {
        "type": "string",
        "description": "Load that acts."
      },
      "working": {
        "type": "string",
        "enum": [
          "inner-skin-alone",
          "sandwich",
          "separate-skins"
        ],
        "description": "How deflection and moments were worked out."
      },
      "deflectionMm": {
        "type": "number",
        "description": "With the pull of a sagging skin between held edges, where the inner skin is alone and slack."
      },
      "linearDeflectionMm": {
        "type": "number",
        "description": "By plate bending alone."
      },
      "deflectionAt": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where the deck sags most, [xMm, yMm]."
      },
      "greatestMomentXN": {
        "type": "number",
        "description": "Greatest moment fore and aft, per mm of width."
      },
      "greatestMomentYN": {
        "type": "number",
        "description": "Greatest moment athwart, per mm of width."
      },
      "greatestShearNPerMm": {
        "type": "number",
        "description": "Greatest shear force, per mm of width."
      }
    },
    "required": [
      "load",
      "working",
      "deflectionMm",
      "linearDeflectionMm",
      "deflectionAt",
      "greatestMomentXN",
      "greatestMomentYN",
      "greatestShearNPerMm"
    ]
  },
  "RevisionList": {
    "type": "object",
    "description": "The revisions of one estimate, first to last.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateSummary"
        },
        "description": "Revisions of the job, the first one first."
      }
    },
    "required": [
      "items"
    ]
  },
  "RevisionMark": {
    "type": "object",
    "description": "Which revision of a job an estimate is, and why it was made.",
    "properties": {
      "rootId": {
        "type": "string",
        "description": "The first estimate of this line of revisions."
      },
      "number": {
        "type": "number",
        "description": "Number of the revision; 0 for the first estimate of the job."
      },
      "reason": {
        "type": "string",
        "description": "Why this revision was made; absent for the first estimate."
      }
    },
    "required": [
      "rootId",
      "number"
    ]
  },
  "RevisionNamed": {
    "type": "object",
    "properties": {
      "rootId": {
        "type": "string",
        "description": "Id of the first estimate of this line of revisions."
      },
      "revisionNumber": {
        "type": "number",
        "description": "1 for the first revision."
      },
      "id": {
        "type": "string",
        "description": "Id of the estimate the event tells of."
      },
      "href": {
        "type": "string",
        "description": "Path of the estimate."
      },
      "reference": {
        "type": "string",
        "description": "The caller's own reference, when it gave one."
      },
      "edition": {
        "type": "string",
        "description": "Code of the edition it was made with."
      },
      "publishableKeyId": {
        "type": "string",
        "description": "Id of the publishable key of the page that made it; absent for estimates made with secret keys."
      }
    },
    "required": [
      "rootId",
      "revisionNumber",
      "id",
      "href",
      "edition"
    ]
  },
  "RollPiece": {
    "type": "object",
    "properties": {
      "lengthMm": {
        "type": "number",
        "description": "Length of the piece along the roll."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the piece across the roll."
      },
      "usedWidthMm": {
        "type": "number",
        "description": "What it takes of the width of the roll."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Edge of the piece on deck."
      }
    },
    "required": [
      "lengthMm",
      "widthMm",
      "usedWidthMm",
      "outline"
    ]
  },
  "RollStrip": {
    "type": "object",
    "description": "A strip of cloth: along the roll and across it.",
    "properties": {
      "lengthMm": {
        "type": "number",
        "description": "Length of the cut strip."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the cut strip."
      }
    },
    "required": [
      "lengthMm",
      "widthMm"
    ]
  },
  "RoomCheck": {
    "type": "object",
    "properties": {
      "check": {
        "type": "string",
        "enum": [
          "taper-room"
        ],
        "description": "Checks whether there is room for the taper."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ],
        "description": "Whether there is room; not established where edges are unknown."
      },
      "outsideM2": {
        "type": "number",
        "description": "Taper that would lie off the panel."
      },
      "words": {
        "type": "string",
        "description": "The room in a sentence."
      }
    },
    "required": [
      "check",
      "verdict",
      "outsideM2",
      "words"
    ]
  },
  "RungNamed": {
    "type": "object",
    "description": "A method of repair and why it stands where it stands among the methods.",
    "properties": {
      "rung": {
        "type": "string",
        "description": "Code of the rung."
      },
      "title": {
        "type": "string",
        "description": "Name of the rung."
      },
      "because": {
        "type": "string",
        "description": "Why the rung stands where it stands."
      }
    },
    "required": [
      "rung",
      "title",
      "because"
    ]
  },
  "RungReason": {
    "type": "object",
    "description": "A condition that speaks for or against a method.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the condition."
      },
      "text": {
        "type": "string",
        "description": "The condition on this deck, in a sentence."
      },
      "value": {
        "type": "number",
        "description": "Measured or worked-out value."
      },
      "limit": {
        "type": "number",
        "description": "Value that the method allows."
      },
      "unit": {
        "type": "string",
        "description": "Unit of value and limit."
      },
      "source": {
        "type": "string",
        "description": "Source of the condition."
      },
      "wouldFit": {
        "type": "string",
        "description": "What would let the method fit."
      }
    },
    "required": [
      "code",
      "text",
      "source"
    ]
  },
  "RungSection": {
    "type": "object",
    "description": "One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone.",
    "properties": {
      "rung": {
        "type": "string",
        "description": "Code of the method."
      },
      "title": {
        "type": "string",
        "description": "Name of the method."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fit",
          "fit-with-conditions",
          "unfit"
        ],
        "description": "Whether the method fits this deck."
      },
      "deciding": {
        "$ref": "#/components/schemas/RungReason",
        "description": "Condition that decided."
      },
      "conditions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungReason"
        },
        "description": "All conditions that were looked at."
      },
      "leavesUndone": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the method does not put right."
      },
      "stages": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Work of the method, in order."
      },
      "isRough": {
        "type": "boolean",
        "description": "True where openings were taken as boxes round the places; the planned rung is worked out in full."
      },
      "notWorkedOut": {
        "type": "string",
        "description": "Why a rung that fits could not be worked out, where it could not."
      },
      "labourH": {
        "$ref": "#/components/schemas/Range",
        "description": "Absent for a rung that is refused: it is not priced."
      },
      "workingDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days of work that it takes, as a spread."
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days that it takes with all waits, as a spread."
      },
      "priceRange": {
        "$ref": "#/components/schemas/EstimateMoneyRange",
        "description": "What it costs, as a spread."
      }
    },
    "required": [
      "rung",
      "title",
      "verdict",
      "deciding",
      "conditions",
      "leavesUndone",
      "stages",
      "isRough"
    ]
  },
  "SawLine": {
    "type": "object",
    "properties": {
      "from": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Corner where the cut starts."
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Corner where the cut ends."
      },
      "straightMm": {
        "type": "number",
        "description": "Between the corner arcs: the straight run of the saw."
      }
    },
    "required": [
      "from",
      "to",
      "straightMm"
    ]
  },
  "Schedule": {
    "type": "object",
    "properties": {
      "rank": {
        "type": "number",
        "description": "Place among the schedules, 1 the best."
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SchedulePly"
        },
        "description": "Plies of the schedule, from the core outwards."
      },
      "thicknessMm": {
        "$ref": "#/components/schemas/Figure",
        "description": "Thickness of all plies."
      },
      "glassGPerM2": {
        "$ref": "#/components/schemas/Figure",
        "description": "Glass in a square metre."
      },
      "resinGPerM2": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin in a square metre."
      },
      "stiffnessAlongNPerMm": {
        "$ref": "#/components/schemas/Figure",
        "description": "Stiffness fore and aft."
      },
      "stiffnessAcrossNPerMm": {
        "$ref": "#/components/schemas/Figure",
        "description": "Stiffness athwart."
      },
      "proudMm": {
        "type": "number",
        "description": "How far the new skin ends above the old surface; negative lies below it."
      },
      "pricePerM2": {
        "type": "number",
        "description": "Price of a square metre in the list's currency; absent without prices."
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SkinCheck"
        },
        "description": "Every requirement with demand and capacity."
      },
      "governs": {
        "type": "string",
        "description": "Requirement that the schedule meets most narrowly."
      },
      "laminate": {
        "type": "object",
        "properties": {
          "aNPerMm": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "description": "Stretching stiffness A, row by row."
          },
          "bN": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "description": "Coupling stiffness B, row by row."
          },
          "dNmm": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "description": "Bending stiffness D, row by row."
          },
          "inPlane": {
            "type": "object",
            "properties": {
              "free": {
                "$ref": "#/components/schemas/EngineeringConstants",
                "description": "Constants when the laminate may curl."
              },
              "heldFlat": {
                "$ref": "#/components/schemas/EngineeringConstants",
                "description": "Constants when it is kept from curling."
              }
            },
            "required": [
              "free",
              "heldFlat"
            ],
            "description": "Engineering constants in the plane."
          },
          "flexural": {
            "$ref": "#/components/schemas/EngineeringConstants",
            "description": "Engineering constants in bending."
          }
        },
        "required": [
          "aNPerMm",
          "bN",
          "dNmm",
          "inPlane",
          "flexural"
        ],
        "description": "Stiffness of the plies by classical laminate theory."
      },
      "lost": {
        "type": "object",
        "properties": {
          "by": {
            "type": "string",
            "enum": [
              "mass",
              "nothing",
              "plies",
              "price"
            ],
            "description": "What this schedule lost by."
          },
          "difference": {
            "type": "number",
            "description": "By how much, in that measure."
          },
          "words": {
            "type": "string",
            "description": "Why it is not the first, in a sentence."
          }
        },
        "required": [
          "by",
          "difference",
          "words"
        ],
        "description": "Why it is not the first."
      }
    },
    "required": [
      "rank",
      "plies",
      "thicknessMm",
      "glassGPerM2",
      "resinGPerM2",
      "stiffnessAlongNPerMm",
      "stiffnessAcrossNPerMm",
      "proudMm",
      "checks",
      "governs",
      "laminate"
    ]
  },
  "SchedulePly": {
    "type": "object",
    "properties": {
      "material": {
        "type": "string",
        "description": "Code of the ply's fabric."
      },
      "name": {
        "type": "string",
        "description": "Name of the ply's fabric."
      },
      "turnDeg": {
        "type": "number",
        "description": "Turn of the fabric against fore and aft."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the cured ply."
      },
      "glassGPerM2": {
        "type": "number",
        "description": "Glass in the ply, per square metre."
      },
      "resinGPerM2": {
        "type": "number",
        "description": "Resin in the ply, per square metre."
      },
      "fibreMassFraction": {
        "type": "number",
        "description": "Mass of glass over mass of ply."
      }
    },
    "required": [
      "material",
      "name",
      "turnDeg",
      "thicknessMm",
      "glassGPerM2",
      "resinGPerM2",
      "fibreMassFraction"
    ]
  },
  "ScheduleSearch": {
    "type": "object",
    "properties": {
      "outcome": {
        "type": "string",
        "enum": [
          "cannot-be-done",
          "found"
        ],
        "description": "Whether any schedule meets every requirement."
      },
      "method": {
        "type": "string",
        "description": "Process that the plies are laid by."
      },
      "rankedBy": {
        "type": "string",
        "enum": [
          "mass",
          "price"
        ],
        "description": "What decides between schedules that pass."
      },
      "oldSkin": {
        "$ref": "#/components/schemas/OldSkinReport",
        "description": "The skin that the new one must match."
      },
      "best": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Schedule"
        },
        "description": "As many as were wanted or can be made, best first."
      },
      "effort": {
        "type": "object",
        "properties": {
          "space": {
            "type": "number",
            "description": "Every choice of up to the most plies from the options, order apart."
          },
          "examined": {
            "type": "number",
            "description": "Stacks looked at one by one."
          },
          "cut": {
            "type": "object",
            "properties": {
              "dearer": {
                "type": "number",
                "description": "Branches left because they cannot beat what was found."
              },
              "tooThick": {
                "type": "number",
                "description": "Branches left because the stack is too thick."
              },
              "outOfReach": {
                "type": "number",
                "description": "Branches left because what is missing cannot be made good."
              },
              "tooManyKinds": {
                "type": "number",
                "description": "Branches left because they use too many fabrics."
              }
            },
            "required": [
              "dearer",
              "tooThick",
              "outOfReach",
              "tooManyKinds"
            ],
            "description": "Branches cut off because nothing below them could be better, fit, or reach the target."
          },
          "isProvenBest": {
            "type": "boolean",
            "enum": [
              true
            ],
            "description": "No allowed schedule is better."
          }
        },
        "required": [
          "space",
          "examined",
          "cut",
          "isProvenBest"
        ],
        "description": "How much was searched, and that nothing better was left out."
      },
      "mostPlies": {
        "type": "number",
        "description": "As asked, or as many as have room for their steps in the taper."
      },
      "missing": {
        "$ref": "#/components/schemas/LaminateMissing",
        "description": "What no schedule could meet; only when none was found."
      },
      "leftOut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LeftOut"
        },
        "description": "Materials that could not be used, each with its problems."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What the search took that nobody stated."
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What the result does not cover."
      }
    },
    "required": [
      "outcome",
      "method",
      "rankedBy",
      "oldSkin",
      "best",
      "effort",
      "mostPlies",
      "leftOut",
      "assumptions",
      "limits"
    ]
  },
  "Scope": {
    "type": "object",
    "properties": {
      "panel": {
        "type": "object",
        "properties": {
          "name": {
            "type": "string",
            "description": "Name of the panel."
          },
          "outline": {
            "type": "array",
            "items": {
              "type": "array",
              "items": {
                "type": "number"
              },
              "minItems": 2,
              "maxItems": 2
            },
            "description": "Edge of the panel."
          },
          "holes": {
            "type": "array",
            "items": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "number"
                },
                "minItems": 2,
                "maxItems": 2
              }
            },
            "description": "Hatches and other openings of the panel."
          },
          "areaM2": {
            "type": "number",
            "description": "Area of the panel without its holes."
          }
        },
        "required": [
          "name",
          "outline",
          "holes",
          "areaM2"
        ],
        "description": "The panel that is repaired."
      },
      "evidence": {
        "type": "string",
        "enum": [
          "mapped-with-plugs",
          "opened-and-measured",
          "single-symptom",
          "sounded-and-metered"
        ],
        "description": "Grade of the evidence about the extent."
      },
      "damagedAreaM2": {
        "$ref": "#/components/schemas/Range",
        "description": "Bad area, as a spread."
      },
      "zones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string",
              "description": "Id of the zone."
            },
            "outline": {
              "type": "array",
              "items": {
                "type": "array",
                "items": {
                  "type": "number"
                },
                "minItems": 2,
                "maxItems": 2
              },
              "description": "Edge of the zone."
            },
            "areaM2": {
              "type": "number",
              "description": "Area of the zone."
            },
            "condition": {
              "type": "string",
              "description": "What the core in the zone is like."
            }
          },
          "required": [
            "id",
            "outline",
            "areaM2",
            "condition"
          ]
        },
        "description": "Damaged zones."
      },
      "contours": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "probability": {
              "type": "number",
              "description": "Chance of bad core at the edge of these areas."
            },
            "areas": {
              "type": "array",
              "items": {
                "$ref": "#/components/schemas/Area"
              },
              "description": "Areas with at least that chance."
            },
            "areaM2": {
              "type": "number",
              "description": "Sum of these areas."
            }
          },
          "required": [
            "probability",
            "areas",
            "areaM2"
          ]
        },
        "description": "Probability contours when the extent came from readings."
      },
      "nextReadings": {
        "$ref": "#/components/schemas/NextReadingsSection",
        "description": "Where to tap, meter or plug next, and whether that pays; when the extent came from readings."
      },
      "openings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Opening"
        },
        "description": "Openings in the skin."
      },
      "openedAreaM2": {
        "type": "number",
        "description": "Area of skin taken off."
      },
      "coreOutAreaM2": {
        "type": "number",
        "description": "Of the opening, where core comes out; and sound core that is left where it is."
      },
      "coreStaysAreaM2": {
        "type": "number",
        "description": "Opened area whose sound core stays."
      },
      "retainedAreaM2": {
        "type": "number",
        "description": "Skin that is bedded again."
      },
      "undercutAreaM2": {
        "type": "number",
        "description": "Core taken from under skin that stays."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Length of all cuts."
      },
      "taperBandM2": {
        "type": "number",
        "description": "Old skin ground to a taper."
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FittingScope"
        },
        "description": "Fittings that the work touches."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateFinding"
        },
        "description": "What about the scope deserves attention."
      },
      "method": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "choice": {
              "type": "string",
              "description": "What was chosen."
            },
            "value": {
              "type": "string",
              "description": "The choice, in words."
            },
            "reason": {
              "type": "string",
              "description": "Why the choice fell so."
            }
          },
          "required": [
            "choice",
            "value",
            "reason"
          ]
        },
        "description": "Choices that the scope rests on."
      },
      "included": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Work that the price holds."
      },
      "excluded": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Work that it does not hold."
      }
    },
    "required": [
      "panel",
      "evidence",
      "damagedAreaM2",
      "zones",
      "contours",
      "openings",
      "openedAreaM2",
      "coreOutAreaM2",
      "coreStaysAreaM2",
      "retainedAreaM2",
      "undercutAreaM2",
      "cutLengthM",
      "taperBandM2",
      "fittings",
      "findings",
      "method",
      "included",
      "excluded"
    ]
  },
  "SecondBest": {
    "type": "object",
    "description": "The cheapest order of another kind, to compare with.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "other-packs",
          "other-suppliers"
        ],
        "description": "What makes it another kind of order."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "How much dearer it is than the basket given."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Goods, cut fees, deliveries and surcharges of all orders together."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        },
        "description": "What is bought, a line for each kind of pack."
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        },
        "description": "The lines gathered into one order for each supplier."
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        },
        "description": "Needs that something other than what was planned covers."
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        },
        "description": "What remains of the bought packs when the job is done."
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        },
        "description": "Each need beside the packs that cover it."
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        },
        "description": "Resins beside the hardeners bought to cure them."
      }
    },
    "required": [
      "kind",
      "difference",
      "total",
      "lines",
      "orders",
      "substitutions",
      "leftovers",
      "coverage",
      "matched"
    ]
  },
  "SectionResult": {
    "type": "object",
    "properties": {
      "bendingXNmm": {
        "type": "number",
        "description": "Bending stiffness fore and aft, per mm of width."
      },
      "bendingYNmm": {
        "type": "number",
        "description": "Bending stiffness athwart, per mm of width."
      },
      "shearNPerMm": {
        "type": "number",
        "description": "Shear stiffness, per mm of width."
      },
      "membraneXNPerMm": {
        "type": "number",
        "description": "Stretching stiffness of both skins fore and aft."
      },
      "membraneYNPerMm": {
        "type": "number",
        "description": "Stretching stiffness of both skins athwart."
      },
      "leverMm": {
        "type": "number",
        "description": "Distance between the mid-planes of the skins."
      },
      "thinSkinError": {
        "type": "number",
        "description": "How far the thin-skin engineering form is from the exact section."
      },
      "isThinSkinFair": {
        "type": "boolean",
        "description": "Whether the skins are thin enough for the theory of thin skins."
      }
    },
    "required": [
      "bendingXNmm",
      "bendingYNmm",
      "shearNPerMm",
      "membraneXNPerMm",
      "membraneYNPerMm",
      "leverMm",
      "thinSkinError",
      "isThinSkinFair"
    ]
  },
  "SectionTotal": {
    "type": "object",
    "properties": {
      "section": {
        "type": "string",
        "enum": [
          "consumables",
          "disposal",
          "freight",
          "hire",
          "labour",
          "materials",
          "safety",
          "subcontract",
          "yard"
        ],
        "description": "Section that is summed."
      },
      "title": {
        "type": "string",
        "description": "Name of the section."
      },
      "lineCount": {
        "type": "number",
        "description": "Lines in the section."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the section."
      }
    },
    "required": [
      "section",
      "title",
      "lineCount",
      "amount"
    ]
  },
  "Share": {
    "type": "object",
    "properties": {
      "keyId": {
        "type": "string",
        "description": "The chandler's key."
      },
      "keyName": {
        "type": "string",
        "description": "Name of the key it is shared with."
      },
      "since": {
        "type": "string",
        "description": "Since when it is shared (RFC 3339)."
      }
    },
    "required": [
      "keyId",
      "keyName",
      "since"
    ]
  },
  "ShareList": {
    "type": "object",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Share"
        },
        "description": "Keys that the estimate is shared with."
      }
    },
    "required": [
      "items"
    ]
  },
  "SheetLayout": {
    "type": "object",
    "properties": {
      "sheets": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CutSheet"
        },
        "description": "Sheets with their pieces, in the order of cutting."
      },
      "cost": {
        "type": "number",
        "description": "Price of all sheets of the layout."
      },
      "sheetAreaM2": {
        "type": "number",
        "description": "Area of all sheets bought."
      },
      "pieceAreaM2": {
        "type": "number",
        "description": "Area of all pieces laid out."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of the sheets that becomes pieces."
      },
      "leastCost": {
        "type": "number",
        "description": "No layout can cost less: the cheapest stock per area, and the sheets that the pieces need at the least."
      },
      "workUnits": {
        "type": "number",
        "description": "Thousands of pairs looked at."
      },
      "gridStepMm": {
        "type": "number",
        "description": "Outlines are set on a grid of this step."
      }
    },
    "required": [
      "sheets",
      "cost",
      "sheetAreaM2",
      "pieceAreaM2",
      "utilisation",
      "leastCost",
      "workUnits",
      "gridStepMm"
    ]
  },
  "SheetUse": {
    "type": "object",
    "description": "Where bought core goes, in whole square millimetres: the parts add up to the sheet exactly.",
    "properties": {
      "sheetMm2": {
        "type": "number",
        "description": "Area of all sheets."
      },
      "piecesMm2": {
        "type": "number",
        "description": "Area of the pieces on them."
      },
      "kerfMm2": {
        "type": "number",
        "description": "Taken by the blade round the pieces."
      },
      "trimMm2": {
        "type": "number",
        "description": "Unused strip along the edges."
      },
      "roundingMm2": {
        "type": "number",
        "description": "Whole rectangles left because sheets come whole; some are worth keeping."
      },
      "scrapsMm2": {
        "type": "number",
        "description": "Odd bits between the pieces."
      }
    },
    "required": [
      "sheetMm2",
      "piecesMm2",
      "kerfMm2",
      "trimMm2",
      "roundingMm2",
      "scrapsMm2"
    ]
  },
  "ShownProblem": {
    "type": "object",
    "description": "One fault as a caller sees it.",
    "properties": {
      "pointer": {
        "type": "string",
        "description": "JSON Pointer to the field at fault."
      },
      "parameter": {
        "type": "string",
        "description": "Name of the query or path parameter at fault."
      },
      "header": {
        "type": "string",
        "description": "Name of the header at fault."
      },
      "row": {
        "type": "number",
        "description": "Of a sheet, as a spreadsheet counts them: the headings are row 1."
      },
      "column": {
        "type": "string",
        "description": "Heading of the column."
      },
      "code": {
        "type": "string",
        "description": "Code of the fault, stable over releases."
      },
      "title": {
        "type": "string",
        "description": "Kind of fault in words."
      },
      "detail": {
        "type": "string",
        "description": "What is wrong and what would be right."
      },
      "facts": {
        "type": "object",
        "additionalProperties": {
          "oneOf": [
            {
              "type": "boolean"
            },
            {
              "type": "string"
            },
            {
              "type": "number"
            }
          ]
        },
        "description": "Numbers and words of the detail."
      }
    },
    "required": [
      "code",
      "title",
      "detail",
      "facts"
    ]
  },
  "SkinCheck": {
    "type": "object",
    "properties": {
      "check": {
        "type": "string",
        "description": "Which requirement was checked."
      },
      "title": {
        "type": "string",
        "description": "Name of the requirement."
      },
      "unit": {
        "type": "string",
        "description": "Unit of demand and capacity."
      },
      "demand": {
        "type": "number",
        "description": "What is asked of the new skin."
      },
      "capacity": {
        "type": "number",
        "description": "What the new skin has."
      },
      "utilisation": {
        "type": "number",
        "description": "Demand over capacity; up to 1 it passes."
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "passes"
        ],
        "description": "Whether the skin meets it."
      },
      "cite": {
        "$ref": "#/components/schemas/Cite",
        "description": "Where the requirement is published."
      },
      "toPass": {
        "type": "string",
        "description": "What would let it pass."
      }
    },
    "required": [
      "check",
      "title",
      "unit",
      "demand",
      "capacity",
      "utilisation",
      "verdict",
      "cite"
    ]
  },
  "SkinRecord": {
    "type": "object",
    "properties": {
      "thicknessMm": {
        "type": "number"
      },
      "plies": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "material": {
              "type": "string"
            }
          },
          "required": [
            "material"
          ]
        }
      }
    },
    "required": [
      "thicknessMm"
    ]
  },
  "SolidFill": {
    "type": "object",
    "description": "What is too narrow or too far under the lip for core, and is filled solid from skin to skin instead.",
    "properties": {
      "opening": {
        "type": "string",
        "description": "Opening whose part is filled solid."
      },
      "kind": {
        "type": "string",
        "enum": [
          "high-density-strip",
          "paste",
          "solid-laminate"
        ],
        "description": "What fills it."
      },
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        },
        "description": "Edge of the filled part."
      },
      "holes": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "array",
            "items": {
              "type": "number"
            },
            "minItems": 2,
            "maxItems": 2
          }
        },
        "description": "What the filling leaves free."
      },
      "areaM2": {
        "type": "number",
        "description": "Area that is filled."
      },
      "depthMm": {
        "type": "number",
        "description": "Depth of the filling."
      },
      "volumeL": {
        "type": "number",
        "description": "Volume of the filling."
      },
      "widthMm": {
        "type": "number",
        "description": "Diameter of the largest circle that fits in."
      },
      "lifts": {
        "type": "number",
        "description": "As paste: more than half a litre a metre is filled in two lifts, for its heat."
      },
      "isUnderLip": {
        "type": "boolean",
        "description": "Whether it lies under the sound skin that stays."
      },
      "because": {
        "type": "string",
        "enum": [
          "asked",
          "narrow",
          "no-way-in",
          "shallow-lip"
        ],
        "description": "Why no core piece goes there."
      }
    },
    "required": [
      "opening",
      "kind",
      "outline",
      "holes",
      "areaM2",
      "depthMm",
      "volumeL",
      "widthMm",
      "lifts",
      "isUnderLip",
      "because"
    ]
  },
  "Sounding": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "sounding"
        ],
        "description": "Says that the deck was tapped."
      },
      "sound": {
        "type": "string",
        "enum": [
          "dull",
          "sharp",
          "void"
        ],
        "description": "How it sounded."
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "Where it was taken, [xMm, yMm]."
      },
      "isUnreliable": {
        "type": "boolean",
        "description": "True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful."
      }
    },
    "required": [
      "kind",
      "sound",
      "at"
    ]
  },
  "StackCheck": {
    "type": "object",
    "properties": {
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "holds"
        ],
        "description": "Whether the height of the stack holds."
      },
      "governs": {
        "type": "string",
        "enum": [
          "flush",
          "low",
          "proud"
        ],
        "description": "Whether the stack lies flush, stands proud or lies low."
      },
      "beyondMm": {
        "type": "number",
        "description": "How far beyond what is allowed; 0 when it holds."
      },
      "words": {
        "type": "string",
        "description": "The verdict in a sentence."
      },
      "nextBest": {
        "$ref": "#/components/schemas/StackChoice",
        "description": "The next choice of sheets, were this one not to be had."
      }
    },
    "required": [
      "verdict",
      "governs",
      "beyondMm",
      "words"
    ]
  },
  "StackChoice": {
    "type": "object",
    "description": "One way to fill the cavity from stock.",
    "properties": {
      "layersMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "Thickness of each layer, from the inner skin up."
      },
      "bondLineMm": {
        "type": "number",
        "description": "Bond line that this choice needs under each layer."
      },
      "heightMm": {
        "type": "number",
        "description": "Height that this choice comes to."
      },
      "flushMm": {
        "type": "number",
        "description": "Height less cavity: positive stands proud."
      },
      "fit": {
        "type": "string",
        "enum": [
          "flush",
          "low",
          "proud"
        ],
        "description": "How this choice lies to the old core."
      },
      "beyondMm": {
        "type": "number",
        "description": "How far beyond what is allowed; 0 when flush."
      },
      "words": {
        "type": "string",
        "description": "This choice in a sentence."
      }
    },
    "required": [
      "layersMm",
      "bondLineMm",
      "heightMm",
      "flushMm",
      "fit",
      "beyondMm",
      "words"
    ]
  },
  "StackLayer": {
    "type": "object",
    "properties": {
      "thicknessMm": {
        "type": "number",
        "description": "Thickness of the layer."
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ],
        "description": "Plain sheet, or scored to follow a curve."
      }
    },
    "required": [
      "thicknessMm",
      "form"
    ]
  },
  "StackPlan": {
    "type": "object",
    "description": "Which sheets fill the cavity, how the new skin then sits, and what the deck gains or loses in mass.",
    "properties": {
      "layers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StackLayer"
        },
        "description": "New layers from the inner skin up."
      },
      "joints": {
        "type": "string",
        "enum": [
          "single-layer",
          "staggered"
        ],
        "description": "Joints of one layer lie away from those of the other."
      },
      "bondLine": {
        "$ref": "#/components/schemas/Figure",
        "description": "Thickness of the bond line under each layer."
      },
      "wetLine": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin under plies laid wet on the core; 0 where the skin has a bed of its own."
      },
      "height": {
        "$ref": "#/components/schemas/Figure",
        "description": "Height of the new stack with its bond lines."
      },
      "flush": {
        "$ref": "#/components/schemas/Figure",
        "description": "Height of the new stack less the cavity: positive stands proud of the old deck, negative lies below it."
      },
      "check": {
        "$ref": "#/components/schemas/StackCheck",
        "description": "Whether the new stack comes out flush with the old core."
      },
      "choices": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StackChoice"
        },
        "description": "All choices from the material's list, best first."
      },
      "camber": {
        "$ref": "#/components/schemas/CamberPlan",
        "description": "How the layers follow the camber of the deck; absent on a flat one."
      },
      "kerfResin": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin that fills the cuts of a scored sheet."
      },
      "bondResin": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin that beds the layers."
      },
      "newCoreMass": {
        "$ref": "#/components/schemas/Figure",
        "description": "Mass of the new core with its bond lines."
      },
      "oldCoreMass": {
        "$ref": "#/components/schemas/Figure",
        "description": "Mass of the core that comes out, dry."
      },
      "massChange": {
        "$ref": "#/components/schemas/Figure",
        "description": "New core less old sound core, without resin."
      },
      "waterLeaving": {
        "$ref": "#/components/schemas/Figure",
        "description": "Only where somebody said how wet the old core is."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "What was taken about core and bond line."
      }
    },
    "required": [
      "layers",
      "joints",
      "bondLine",
      "wetLine",
      "height",
      "flush",
      "check",
      "choices",
      "bondResin",
      "newCoreMass",
      "oldCoreMass",
      "massChange",
      "assumptions"
    ]
  },
  "Stage": {
    "type": "object",
    "description": "A group of plies that may be laid wet on wet.",
    "properties": {
      "stage": {
        "type": "number",
        "description": "Number of the stage, from 1."
      },
      "plies": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "Places in the order of laying, from 1."
      },
      "thicknessMm": {
        "type": "number",
        "description": "Thickness laid in the stage."
      },
      "isOverLimit": {
        "type": "boolean",
        "description": "A single ply thicker than the limit cannot be divided."
      }
    },
    "required": [
      "stage",
      "plies",
      "thicknessMm",
      "isOverLimit"
    ]
  },
  "StageZero": {
    "type": "object",
    "description": "Everything up to the hold point, so that the rest can be priced on what is then known.",
    "properties": {
      "title": {
        "type": "string",
        "description": "Name of the stage."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Labour with its share of overhead and profit, before tax."
      },
      "labourH": {
        "type": "number",
        "description": "Hours of the stage."
      },
      "contingencyFreed": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What of the contingency need not be set aside any more, once the extent is known; without tax."
      },
      "lines": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Lines of the price that belong to it, by code."
      }
    },
    "required": [
      "title",
      "amount",
      "labourH",
      "contingencyFreed",
      "lines"
    ]
  },
  "StateAnswer": {
    "type": "object",
    "properties": {
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ],
        "description": "Which state of the deck."
      },
      "section": {
        "$ref": "#/components/schemas/SectionResult",
        "description": "Stiffness of a cut through the deck in this state."
      },
      "responses": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Response"
        },
        "description": "How the deck answers each load in this state."
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCheckItem"
        },
        "description": "Requirements in this state."
      },
      "governing": {
        "type": "object",
        "properties": {
          "code": {
            "type": "string",
            "description": "Check that is nearest to its limit."
          },
          "load": {
            "type": "string",
            "description": "Load under which it is."
          },
          "utilisation": {
            "type": "number",
            "description": "Demand over capacity of that check."
          }
        },
        "required": [
          "code",
          "utilisation"
        ],
        "description": "Greatest utilisation and where it is."
      }
    },
    "required": [
      "state",
      "section",
      "responses",
      "checks"
    ]
  },
  "StatedFinding": {
    "type": "object",
    "properties": {
      "about": {
        "type": "string"
      },
      "class": {
        "type": "string",
        "enum": [
          "before-use",
          "monitor",
          "next-opportunity"
        ]
      },
      "wording": {
        "type": "string"
      },
      "recommendation": {
        "type": "string"
      },
      "restriction": {
        "type": "string"
      }
    },
    "required": [
      "about"
    ]
  },
  "StepDemand": {
    "type": "object",
    "description": "What one step takes, waste apart; masses to a tenth of a gram, so that batches and bill can agree exactly.",
    "properties": {
      "index": {
        "type": "number",
        "description": "Place of the step in the request, from 0."
      },
      "step": {
        "type": "string",
        "enum": [
          "bed-core",
          "bed-skin",
          "closing-plies",
          "core-kerfs",
          "cut-kerf",
          "fairing",
          "inject",
          "peel-ply",
          "potting",
          "prewet",
          "seal",
          "top-laminate",
          "undercut",
          "weave-fill"
        ],
        "description": "Kind of step that uses resin."
      },
      "title": {
        "type": "string",
        "description": "Name of the step for the crew."
      },
      "units": {
        "type": "number",
        "description": "How many units of its driver the step has, such as square metres."
      },
      "netL": {
        "type": "number",
        "description": "Mix that stays in the work of this step."
      },
      "wasteL": {
        "type": "number",
        "description": "Mix that the step loses."
      },
      "totalL": {
        "type": "number",
        "description": "Mix that the step needs with its losses."
      },
      "resinG": {
        "type": "number",
        "description": "Resin to weigh for the step."
      },
      "hardenerG": {
        "type": "number",
        "description": "Hardener to weigh for the step."
      },
      "fillerG": {
        "type": "number",
        "description": "Filler to stir in for the step."
      },
      "filler": {
        "type": "string",
        "description": "Code of the filler that thickens the mix; absent for neat resin."
      },
      "fillerPartsPerHundred": {
        "type": "number",
        "description": "Filler to 100 parts of mixed resin, by mass."
      },
      "totalKg": {
        "type": "number",
        "description": "Mass of the step's mix, filler included."
      },
      "densityGPerCm3": {
        "type": "number",
        "description": "Density of the mix, filler included."
      },
      "why": {
        "type": "object",
        "properties": {
          "netL": {
            "$ref": "#/components/schemas/Figure",
            "description": "Derivation of the volume that stays in the work."
          },
          "mixedG": {
            "$ref": "#/components/schemas/Figure",
            "description": "Derivation of the mass that is mixed."
          }
        },
        "required": [
          "netL",
          "mixedG"
        ],
        "description": "How the quantities of the step were worked out."
      }
    },
    "required": [
      "index",
      "step",
      "title",
      "units",
      "netL",
      "wasteL",
      "totalL",
      "resinG",
      "hardenerG",
      "fillerG",
      "fillerPartsPerHundred",
      "totalKg",
      "densityGPerCm3",
      "why"
    ]
  },
  "StepWeather": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the step that waits for weather."
      },
      "title": {
        "type": "string",
        "description": "Name of that step."
      },
      "requires": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Requirement"
        },
        "description": "What the weather must be."
      },
      "windows": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WorkWindow"
        },
        "description": "When the step may start, best first."
      },
      "shutBy": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "gate": {
              "type": "string",
              "enum": [
                "core-moisture",
                "dew-margin",
                "humidity",
                "rain",
                "too-cold",
                "too-warm",
                "wind"
              ],
              "description": "Gate that keeps the step shut."
            },
            "hours": {
              "type": "number",
              "description": "Hours that this gate alone shuts."
            }
          },
          "required": [
            "gate",
            "hours"
          ]
        },
        "description": "Hours of the forecast in which the work may not be begun, by the gate that forbids it."
      },
      "note": {
        "type": "string",
        "description": "What to know when no window fits."
      }
    },
    "required": [
      "code",
      "title",
      "requires",
      "windows",
      "shutBy"
    ]
  },
  "StockCount": {
    "type": "object",
    "description": "How many packs of a SKU there are now.",
    "properties": {
      "sku": {
        "type": "string",
        "description": "Pack that was counted."
      },
      "packs": {
        "type": "number",
        "description": "Whole packs that could be sold when they were counted."
      },
      "countedAt": {
        "type": "string",
        "description": "RFC 3339 instant at which it was counted."
      }
    },
    "required": [
      "sku",
      "packs",
      "countedAt"
    ]
  },
  "StockList": {
    "type": "object",
    "description": "What was counted of a price list. Of packs that are not here, the stock of the edition counts.",
    "properties": {
      "priceList": {
        "type": "string",
        "description": "Code of the price list whose packs were counted."
      },
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StockCount"
        },
        "description": "Packs that were counted."
      }
    },
    "required": [
      "priceList",
      "items"
    ]
  },
  "StoredEstimate": {
    "type": "object",
    "description": "An estimate as it is kept: the document, and what the service adds to it. Never changed once made.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id that the estimate is kept under."
      },
      "createdAt": {
        "type": "string",
        "description": "When the estimate was kept (RFC 3339)."
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark",
        "description": "Its place among the revisions of the job."
      },
      "inputHash": {
        "type": "string",
        "description": "SHA-256 of the defect record, with its members in order."
      },
      "clientSecret": {
        "type": "string",
        "description": "Opens this estimate and its revisions; only in the answer to a publishable key, and kept by nobody else."
      },
      "clientSecretExpiresAt": {
        "type": "string",
        "description": "When that secret stops opening the estimate (RFC 3339)."
      },
      "estimate": {
        "$ref": "#/components/schemas/Estimate",
        "description": "The estimate with all its sections."
      }
    },
    "required": [
      "id",
      "createdAt",
      "revision",
      "inputHash",
      "estimate"
    ]
  },
  "StripLayout": {
    "type": "object",
    "description": "Pieces laid on a length of roll; x runs along the roll, y across it.",
    "properties": {
      "lengthMm": {
        "type": "number",
        "description": "Length to cut off the roll."
      },
      "widthMm": {
        "type": "number",
        "description": "Width of the roll."
      },
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        },
        "description": "Where each piece lies on the roll."
      },
      "pieceAreaM2": {
        "type": "number",
        "description": "Area of the pieces on the roll."
      },
      "stripAreaM2": {
        "type": "number",
        "description": "Area of roll used."
      },
      "utilisation": {
        "type": "number",
        "description": "Share of the roll that becomes pieces."
      },
      "leastLengthMm": {
        "type": "number",
        "description": "No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along."
      },
      "workUnits": {
        "type": "number",
        "description": "Thousands of pairs looked at."
      },
      "gridStepMm": {
        "type": "number",
        "description": "Step of the grid that pieces were moved on."
      }
    },
    "required": [
      "lengthMm",
      "widthMm",
      "placements",
      "pieceAreaM2",
      "stripAreaM2",
      "utilisation",
      "leastLengthMm",
      "workUnits",
      "gridStepMm"
    ]
  },
  "Substitution": {
    "type": "object",
    "description": "Material that is bought in place of the one planned.",
    "properties": {
      "insteadOf": {
        "$ref": "#/components/schemas/MaterialVariant",
        "description": "Material that was planned."
      },
      "use": {
        "$ref": "#/components/schemas/MaterialVariant",
        "description": "Material that is bought in its place."
      },
      "quantity": {
        "type": "number",
        "description": "How much of the planned material it stands for."
      },
      "unit": {
        "type": "string",
        "description": "Unit of the replaced quantity."
      },
      "penalty": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the search counted against the substitution; nobody pays it."
      },
      "reason": {
        "type": "string",
        "description": "Why the other material may stand in."
      }
    },
    "required": [
      "insteadOf",
      "use",
      "quantity",
      "unit",
      "penalty",
      "reason"
    ]
  },
  "Summary": {
    "type": "object",
    "properties": {
      "verdict": {
        "type": "string",
        "enum": [
          "cannot-be-carried-out",
          "deck-stays-closed",
          "not-established",
          "not-restored",
          "restored"
        ],
        "description": "What the conclusion says of the finished repair."
      },
      "openedAreaM2": {
        "type": "number",
        "description": "Skin taken off the deck."
      },
      "cutLengthM": {
        "type": "number",
        "description": "Sawing to do."
      },
      "coreSheets": {
        "type": "number",
        "description": "Sheets of core to buy."
      },
      "mixedResinL": {
        "type": "number",
        "description": "Resin to mix, losses included."
      },
      "labourLikelyH": {
        "type": "number",
        "description": "Sum of the most likely hours of each operation: seldom enough for all of them together."
      },
      "labourMeanH": {
        "type": "number",
        "description": "Sum of the labour lines: the recorded scope at mean hours."
      },
      "labourH": {
        "$ref": "#/components/schemas/Range",
        "description": "Of the whole job with what is found besides, from the same simulation as money and days."
      },
      "workingDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days with somebody at work, as a spread."
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range",
        "description": "Days that the boat lies, as a spread."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The price with tax: base and what will probably be found besides."
      },
      "totalRange": {
        "$ref": "#/components/schemas/EstimateMoneyRange",
        "description": "Spread of the total."
      },
      "totalWithContingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Beside the price, with tax."
      },
      "insurer": {
        "type": "object",
        "properties": {
          "attributable": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Part that the stated event caused."
          },
          "prior": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Part that was there before."
          },
          "improvement": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "Part that makes the boat better than it was."
          }
        },
        "required": [
          "attributable",
          "prior",
          "improvement"
        ],
        "description": "Total by what an insurer asks for."
      }
    },
    "required": [
      "verdict",
      "openedAreaM2",
      "cutLengthM",
      "coreSheets",
      "mixedResinL",
      "labourLikelyH",
      "labourMeanH",
      "labourH",
      "workingDays",
      "calendarDays",
      "total",
      "totalRange",
      "totalWithContingency",
      "insurer"
    ]
  },
  "SupplierOrder": {
    "type": "object",
    "description": "What is ordered from one supplier, with all that he charges.",
    "properties": {
      "supplier": {
        "type": "string",
        "description": "Code of the supplier the order goes to."
      },
      "name": {
        "type": "string",
        "description": "Name of the supplier on the order."
      },
      "goods": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Packs of the order at list price."
      },
      "cutFees": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Cutting on all lines of the order."
      },
      "delivery": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What carriage of the order costs."
      },
      "isDeliveryFree": {
        "type": "boolean",
        "description": "Whether the goods reach the sum from which delivery is free."
      },
      "hazardSurcharge": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the dangerous goods in the order add to carriage."
      },
      "hazardBoxes": {
        "type": "number",
        "description": "Boxes that the dangerous goods are packed in."
      },
      "oversizeFreight": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the packs too large for parcels add to carriage."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "All that this supplier is paid."
      },
      "massKg": {
        "type": "number",
        "description": "What the whole order weighs."
      },
      "toppedUpFor": {
        "type": "string",
        "enum": [
          "free-delivery",
          "minimum-order"
        ],
        "description": "Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more."
      }
    },
    "required": [
      "supplier",
      "name",
      "goods",
      "cutFees",
      "delivery",
      "isDeliveryFree",
      "hazardSurcharge",
      "hazardBoxes",
      "oversizeFreight",
      "total",
      "massKg"
    ]
  },
  "SupportLine": {
    "type": "object",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "beam",
          "bulkhead",
          "coaming",
          "hatch",
          "hull-joint",
          "other",
          "toe-rail"
        ]
      },
      "from": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      }
    },
    "required": [
      "kind",
      "from",
      "to"
    ]
  },
  "Survey": {
    "type": "object",
    "properties": {
      "readings": {
        "type": "array",
        "items": {
          "oneOf": [
            {
              "$ref": "#/components/schemas/Sounding"
            },
            {
              "$ref": "#/components/schemas/MeterReading"
            },
            {
              "$ref": "#/components/schemas/Plug"
            }
          ],
          "discriminator": {
            "propertyName": "kind",
            "mapping": {
              "sounding": "#/components/schemas/Sounding",
              "moisture": "#/components/schemas/MeterReading",
              "plug": "#/components/schemas/Plug"
            }
          }
        },
        "description": "What was heard, measured and seen on the deck."
      },
      "meter": {
        "type": "object",
        "properties": {
          "dryReference": {
            "type": "number",
            "description": "What the meter shows on sound, dry deck of this boat."
          },
          "wetReference": {
            "type": "number",
            "description": "What the meter shows where the deck is surely wet."
          }
        },
        "required": [
          "dryReference",
          "wetReference"
        ],
        "description": "Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core."
      }
    },
    "required": [
      "readings"
    ]
  },
  "Surveyor": {
    "type": "object",
    "properties": {
      "name": {
        "type": "string"
      },
      "firm": {
        "type": "string"
      },
      "qualification": {
        "type": "string"
      }
    }
  },
  "TakenSheet": {
    "type": "object",
    "description": "What a supplier's sheet did to a price list of a draft.",
    "properties": {
      "priceList": {
        "type": "string",
        "description": "Code of the price list."
      },
      "edition": {
        "type": "string",
        "description": "Code of the draft."
      },
      "changed": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "SKUs of packs that are otherwise now."
      },
      "sameCount": {
        "type": "number",
        "description": "Packs that the sheet names and that stay as they were."
      },
      "leftOut": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "SKUs of rows that are not in the list and were left out, as asked."
      }
    },
    "required": [
      "priceList",
      "edition",
      "changed",
      "sameCount",
      "leftOut"
    ]
  },
  "ThreePoint": {
    "type": "object",
    "description": "A quantity nobody knows exactly: least, most likely and most.",
    "properties": {
      "low": {
        "type": "number",
        "description": "Low end of the spread."
      },
      "likely": {
        "type": "number",
        "description": "Most likely value of the spread."
      },
      "high": {
        "type": "number",
        "description": "High end of the spread."
      }
    },
    "required": [
      "low",
      "likely",
      "high"
    ]
  },
  "TodayItem": {
    "type": "object",
    "description": "Something to do or to wait for on a day.",
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "hold",
          "next",
          "wait",
          "work"
        ],
        "description": "Work, a wait, a hold point, or what comes next."
      },
      "task": {
        "type": "string",
        "description": "Task that it belongs to, by code."
      },
      "text": {
        "type": "string",
        "description": "What to do or wait for, in a sentence."
      }
    },
    "required": [
      "kind",
      "task",
      "text"
    ]
  },
  "TotalChange": {
    "type": "object",
    "description": "A section of the sum, or a step from the sum of the lines to what is to be paid.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Which total changed."
      },
      "name": {
        "type": "string",
        "description": "Name of the total."
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The total in the earlier estimate."
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The total in the later estimate."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the total rose by; negative where it fell."
      }
    },
    "required": [
      "code",
      "name",
      "before",
      "after",
      "difference"
    ]
  },
  "Totals": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency of the estimate (ISO 4217)."
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the lines, before overhead, profit and tax."
      },
      "overhead": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Overhead in the total."
      },
      "profit": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Profit in the total."
      },
      "base": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Lines with overhead and profit: the recorded scope at mean hours, without tax."
      },
      "growth": {
        "$ref": "#/components/schemas/ProvisionalSum",
        "description": "What will probably be found besides, as a provisional quantity; without tax."
      },
      "newAreas": {
        "$ref": "#/components/schemas/ProvisionalSum",
        "description": "Separate areas elsewhere; without tax."
      },
      "contingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "P80 less the price, without tax; it stands beside the price and is no part of it."
      },
      "contingencyBasis": {
        "type": "string",
        "description": "How the reserve was worked out."
      },
      "contingencyByKind": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "kind": {
              "type": "string",
              "enum": [
                "extent",
                "new-areas",
                "price",
                "productivity",
                "waits"
              ],
              "description": "Kind of risk."
            },
            "name": {
              "type": "string",
              "description": "Name of the risk."
            },
            "share": {
              "type": "number",
              "description": "Its share of the reserve."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Its part of the reserve."
            }
          },
          "required": [
            "kind",
            "name",
            "share",
            "amount"
          ]
        },
        "description": "By kind of risk; the shares make the whole."
      },
      "betterEvidence": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "evidence": {
              "type": "string",
              "enum": [
                "mapped-with-plugs",
                "opened-and-measured",
                "single-symptom",
                "sounded-and-metered"
              ],
              "description": "A better grade of evidence."
            },
            "contingency": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Reserve at that grade."
            },
            "saves": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "What the reserve would shrink by."
            }
          },
          "required": [
            "evidence",
            "contingency",
            "saves"
          ]
        },
        "description": "What better evidence would leave of the contingency, and what it would take off it; without tax."
      },
      "taxes": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "description": "Tax group of the sum."
            },
            "name": {
              "type": "string",
              "description": "Name on the invoice."
            },
            "percent": {
              "type": "string",
              "description": "Rate in percent, as decimal text."
            },
            "base": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "Sum that the tax is reckoned on."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "The tax."
            }
          },
          "required": [
            "code",
            "name",
            "percent",
            "base",
            "amount"
          ]
        },
        "description": "Taxes in the price, each on its group of lines."
      },
      "tax": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the taxes."
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The price: base, growth and new areas, with tax. About as many jobs cost more as cost less."
      },
      "shareWithin": {
        "type": "number",
        "description": "Share of the simulated jobs that cost no more than `total`."
      },
      "totalWithContingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Price and contingency together, with tax."
      },
      "range": {
        "$ref": "#/components/schemas/EstimateMoneyRange",
        "description": "Of the whole job with tax: what the simulated jobs cost."
      },
      "byCause": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "causeClass": {
              "type": "string",
              "enum": [
                "maintenance",
                "pre-existing",
                "sudden"
              ],
              "description": "The cause."
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson",
              "description": "What is put down to it."
            }
          },
          "required": [
            "causeClass",
            "amount"
          ]
        },
        "description": "Price with tax, by the cause of the lines."
      },
      "parts": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Goods in the price, with their loadings and tax."
      },
      "labour": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Work in the price, with its loadings and tax."
      },
      "goods": {
        "$ref": "#/components/schemas/GoodsSums",
        "description": "What is billed for goods and what is bought."
      },
      "depreciation": {
        "$ref": "#/components/schemas/PartsWear",
        "description": "Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age."
      },
      "drivers": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "name": {
              "type": "string",
              "description": "What is uncertain."
            },
            "shareOfVariance": {
              "type": "number",
              "description": "Its share of the variance of the total."
            }
          },
          "required": [
            "name",
            "shareOfVariance"
          ]
        },
        "description": "Kinds of risk by what they add to the uncertainty of the price."
      },
      "insurer": {
        "$ref": "#/components/schemas/InsurerSplit",
        "description": "Total as an insurer reads it."
      },
      "ownWork": {
        "type": "object",
        "properties": {
          "labourH": {
            "type": "number",
            "description": "Hours that the owner works."
          },
          "aYardWouldAsk": {
            "$ref": "#/components/schemas/MoneyJson",
            "description": "What a yard would ask for these hours."
          },
          "basis": {
            "type": "string",
            "description": "How that was reckoned."
          }
        },
        "required": [
          "labourH",
          "aYardWouldAsk",
          "basis"
        ],
        "description": "Only where the owner works himself."
      },
      "offer": {
        "$ref": "#/components/schemas/Offer",
        "description": "What the customer is offered first."
      },
      "p90RelativeError": {
        "type": "number",
        "description": "Half of the points against the other half, P90 over P90."
      },
      "samples": {
        "type": "number",
        "description": "Jobs drawn for the spread."
      }
    },
    "required": [
      "currency",
      "net",
      "overhead",
      "profit",
      "base",
      "growth",
      "newAreas",
      "contingency",
      "contingencyBasis",
      "contingencyByKind",
      "betterEvidence",
      "taxes",
      "tax",
      "total",
      "shareWithin",
      "totalWithContingency",
      "range",
      "byCause",
      "parts",
      "labour",
      "goods",
      "drivers",
      "insurer",
      "offer",
      "p90RelativeError",
      "samples"
    ]
  },
  "TrialTotal": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency that these estimates are in."
      },
      "estimateCount": {
        "type": "number",
        "description": "Estimates that the sums are over."
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the stored totals."
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Sum of the totals with the draft."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What the draft adds to the sum."
      }
    },
    "required": [
      "currency",
      "estimateCount",
      "before",
      "after",
      "difference"
    ]
  },
  "TriedEstimate": {
    "type": "object",
    "description": "One estimate, worked out again with both editions from the record that it keeps.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Estimate that was tried."
      },
      "revisionNumber": {
        "type": "number",
        "description": "Revision of it that was tried."
      },
      "title": {
        "type": "string",
        "description": "Only for callers who may read estimates."
      },
      "reference": {
        "type": "string",
        "description": "Only for callers who may read estimates."
      },
      "keptNet": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Without tax, provisional sums included, as it is kept: made with its own edition and version of the program."
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Without tax, provisional sums included; absent where an edition could not answer."
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The same with the edition tried."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Total with the draft less the stored total; absent when it could not be made."
      },
      "shareOfBefore": {
        "type": "number",
        "description": "Of the amount before, such as 0.04 for 4 % more; absent when that was nothing."
      },
      "figures": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FigureChange"
        },
        "description": "Figures of the scope that differ, such as sheets of core."
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        },
        "description": "Lines that differ: by how much, because of how much more of it and because of its rate."
      },
      "refusedBecause": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Why an edition could not answer, one sentence for each thing."
      }
    },
    "required": [
      "id",
      "revisionNumber",
      "keptNet",
      "figures",
      "lines",
      "refusedBecause"
    ]
  },
  "VariantComparison": {
    "type": "object",
    "properties": {
      "currency": {
        "type": "string",
        "description": "Currency of all variants."
      },
      "compared": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "cost",
            "days",
            "labourH",
            "massKg",
            "p80",
            "spread",
            "utilisation"
          ]
        },
        "description": "Criteria that every variant has a value for, and that dominance is judged on."
      },
      "rows": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/VariantRow"
        },
        "description": "Variants, each with its figures."
      },
      "refused": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string",
              "description": "Variant that is refused."
            },
            "title": {
              "type": "string",
              "description": "Name of the refused variant."
            },
            "rule": {
              "type": "string",
              "description": "Rule that refuses it."
            },
            "why": {
              "type": "string",
              "description": "Why it refuses it here."
            }
          },
          "required": [
            "code",
            "title",
            "rule",
            "why"
          ]
        },
        "description": "Variants that cannot be done."
      }
    },
    "required": [
      "currency",
      "compared",
      "rows",
      "refused"
    ]
  },
  "VariantRow": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Code of the variant."
      },
      "title": {
        "type": "string",
        "description": "Name of the variant."
      },
      "values": {
        "$ref": "#/components/schemas/VariantValues",
        "description": "Figures that variants are compared by."
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Its price before tax."
      },
      "gross": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Its price with tax."
      },
      "failsCheck": {
        "type": "boolean",
        "description": "Whether a check fails with it."
      },
      "dominatedBy": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "Codes of variants that are as good in everything compared and better in something."
      },
      "bestIn": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "cost",
            "days",
            "labourH",
            "massKg",
            "p80",
            "spread",
            "utilisation"
          ]
        },
        "description": "In which of the criteria nothing is better."
      },
      "note": {
        "type": "string",
        "description": "What to know about the variant."
      }
    },
    "required": [
      "code",
      "title",
      "values",
      "net",
      "gross",
      "failsCheck",
      "dominatedBy",
      "bestIn"
    ]
  },
  "VariantValues": {
    "type": "object",
    "description": "What a variant comes to in each of the criteria; absent where it is not known.",
    "properties": {
      "cost": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Lines with overhead and profit, without tax."
      },
      "p80": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What four jobs in five stay below, without tax."
      },
      "labourH": {
        "type": "number",
        "description": "Hours that the variant takes."
      },
      "days": {
        "type": "number",
        "description": "Working days."
      },
      "massKg": {
        "type": "number",
        "description": "Mass that the variant adds; absent when unknown."
      },
      "utilisation": {
        "type": "number",
        "description": "Highest demand over capacity with the variant."
      },
      "spread": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "From P10 to P90."
      }
    },
    "required": [
      "cost",
      "labourH"
    ]
  },
  "Vessel": {
    "type": "object",
    "properties": {
      "name": {
        "type": "string"
      },
      "registration": {
        "type": "string"
      },
      "hullNumber": {
        "type": "string"
      },
      "builder": {
        "type": "string"
      },
      "model": {
        "type": "string"
      }
    }
  },
  "WeatherHour": {
    "type": "object",
    "properties": {
      "at": {
        "type": "string",
        "description": "Start of the hour (RFC 3339)."
      },
      "dewPointC": {
        "type": "number",
        "description": "Dew point of the air."
      },
      "deckC": {
        "type": "number",
        "description": "Temperature of the deck."
      },
      "dewMarginK": {
        "type": "number",
        "description": "Deck temperature less dew point; below the gate's limit the deck is wet."
      }
    },
    "required": [
      "at",
      "dewPointC",
      "deckC",
      "dewMarginK"
    ]
  },
  "WeatherPlan": {
    "type": "object",
    "properties": {
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StepWeather"
        },
        "description": "Each step with its gates and windows."
      },
      "hours": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WeatherHour"
        },
        "description": "The forecast, hour by hour, as the deck feels it."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        },
        "description": "What was taken about the weather."
      }
    },
    "required": [
      "steps",
      "hours",
      "assumptions"
    ]
  },
  "WeatherSection": {
    "type": "object",
    "description": "What the forecast opens and shuts.",
    "properties": {
      "fromAt": {
        "type": "string",
        "description": "Moments in the local time of the place."
      },
      "untilAt": {
        "type": "string",
        "description": "The end of the last hour of the forecast."
      },
      "timeZone": {
        "type": "string",
        "description": "IANA time zone that local times are read in."
      },
      "hours": {
        "type": "number",
        "description": "Hours that the forecast reaches."
      },
      "coldestDeckC": {
        "type": "number",
        "description": "Coldest that the deck becomes."
      },
      "warmestDeckC": {
        "type": "number",
        "description": "Warmest that the deck becomes."
      },
      "leastDewMarginK": {
        "type": "number",
        "description": "Closest that the deck comes to the dew point."
      },
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WeatherStepSection"
        },
        "description": "Steps that wait for weather, each with its windows."
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        },
        "description": "What to know about the forecast."
      }
    },
    "required": [
      "fromAt",
      "untilAt",
      "timeZone",
      "hours",
      "coldestDeckC",
      "warmestDeckC",
      "leastDewMarginK",
      "steps",
      "notes"
    ]
  },
  "WeatherStepSection": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string",
        "description": "Step of the calendar."
      },
      "title": {
        "type": "string",
        "description": "What the step is."
      },
      "gate": {
        "type": "string",
        "enum": [
          "coating",
          "dry-deck",
          "resin"
        ],
        "description": "Which gate the weather must open."
      },
      "earliestAt": {
        "type": "string",
        "description": "What comes before is done then, by likely values."
      },
      "plannedAt": {
        "type": "string",
        "description": "When the plan starts the step (RFC 3339)."
      },
      "plannedEndAt": {
        "type": "string",
        "description": "When the plan ends the step (RFC 3339)."
      },
      "neededH": {
        "type": "number",
        "description": "Crew hours that it takes."
      },
      "openH": {
        "type": "number",
        "description": "Working hours of the forecast from `earliestAt` in which an hour of it may be begun."
      },
      "windows": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WeatherWindow"
        },
        "description": "The best few, the longest first."
      },
      "windowCount": {
        "type": "number",
        "description": "How many windows the forecast holds for it."
      },
      "shutBy": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "gate": {
              "type": "string",
              "description": "Requirement that shuts the step."
            },
            "hours": {
              "type": "number",
              "description": "Hours of the forecast that it shuts."
            }
          },
          "required": [
            "gate",
            "hours"
          ]
        },
        "description": "Working hours that each condition takes away."
      }
    },
    "required": [
      "code",
      "title",
      "gate",
      "earliestAt",
      "plannedAt",
      "plannedEndAt",
      "neededH",
      "openH",
      "windows",
      "windowCount",
      "shutBy"
    ]
  },
  "WeatherWindow": {
    "type": "object",
    "properties": {
      "rank": {
        "type": "number",
        "description": "Place among the windows of the step, 1 the best."
      },
      "fromAt": {
        "type": "string",
        "description": "When the window opens (RFC 3339)."
      },
      "untilAt": {
        "type": "string",
        "description": "The end of the last hour in which it may be begun."
      },
      "hours": {
        "type": "number",
        "description": "How long the window stays open."
      },
      "leastDewMarginK": {
        "type": "number",
        "description": "How close the deck comes to the dew point within the window."
      },
      "meanDeckC": {
        "type": "number",
        "description": "How warm the deck is on average within the window."
      },
      "limitedBy": {
        "type": "string",
        "description": "Which requirement closes the window."
      }
    },
    "required": [
      "rank",
      "fromAt",
      "untilAt",
      "hours",
      "leastDewMarginK",
      "meanDeckC",
      "limitedBy"
    ]
  },
  "WebhookDelivery": {
    "type": "object",
    "description": "How far an event came on its way to an endpoint.",
    "properties": {
      "eventId": {
        "type": "string",
        "description": "Event that is delivered."
      },
      "type": {
        "type": "string",
        "enum": [
          "edition.published",
          "edition.withdrawn",
          "estimate.created",
          "estimate.revised",
          "operation.done",
          "order.made"
        ],
        "description": "Type of that event."
      },
      "status": {
        "type": "string",
        "enum": [
          "delivered",
          "failed",
          "waiting"
        ],
        "description": "How the delivery stands."
      },
      "attempts": {
        "type": "number",
        "description": "How often it was tried; there are ten attempts in three days."
      },
      "nextAttemptAt": {
        "type": "string",
        "description": "RFC 3339 instant of the next attempt; only while it waits."
      },
      "triedAt": {
        "type": "string",
        "description": "RFC 3339 instant of the last attempt; absent before the first."
      },
      "lastStatus": {
        "type": "number",
        "description": "HTTP status of the last attempt; absent when nothing was answered."
      },
      "lastFailure": {
        "type": "string",
        "description": "Why the last attempt failed, in a sentence."
      }
    },
    "required": [
      "eventId",
      "type",
      "status",
      "attempts"
    ]
  },
  "WebhookDeliveryList": {
    "type": "object",
    "description": "The last deliveries to an endpoint, newest event first.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WebhookDelivery"
        },
        "description": "Deliveries, newest first."
      }
    },
    "required": [
      "items"
    ]
  },
  "WebhookEndpoint": {
    "type": "object",
    "description": "Where an organisation wants to be told what happened.",
    "properties": {
      "id": {
        "type": "string",
        "description": "Id of the endpoint."
      },
      "url": {
        "type": "string",
        "description": "Where events are posted to."
      },
      "types": {
        "type": "array",
        "items": {
          "type": "string",
          "enum": [
            "edition.published",
            "edition.withdrawn",
            "estimate.created",
            "estimate.revised",
            "operation.done",
            "order.made"
          ]
        },
        "description": "Events that the endpoint is told of."
      },
      "createdAt": {
        "type": "string",
        "description": "When the endpoint was made (RFC 3339)."
      },
      "disabledBecause": {
        "type": "string",
        "description": "Why nothing is delivered any more; absent while it is."
      }
    },
    "required": [
      "id",
      "url",
      "types",
      "createdAt"
    ]
  },
  "WebhookEndpointList": {
    "type": "object",
    "description": "Endpoints of the organisation, oldest first.",
    "properties": {
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WebhookEndpoint"
        },
        "description": "Endpoints of the organisation."
      }
    },
    "required": [
      "items"
    ]
  },
  "Weighing": {
    "type": "object",
    "properties": {
      "what": {
        "type": "string",
        "enum": [
          "filler",
          "hardener",
          "resin"
        ],
        "description": "Component that is added."
      },
      "name": {
        "type": "string",
        "description": "Name of the component."
      },
      "addG": {
        "type": "number",
        "description": "How much of it to add."
      },
      "scaleShowsG": {
        "type": "number",
        "description": "What the scale shows after it, pot tared."
      },
      "volumeMl": {
        "type": "number",
        "description": "Volume of the part: by pump or measuring cup; loose volume for fillers."
      }
    },
    "required": [
      "what",
      "name",
      "addG",
      "scaleShowsG",
      "volumeMl"
    ]
  },
  "WhyAnswer": {
    "type": "object",
    "description": "Why a figure is what it is: the tree of formulas, inputs and sources below it.",
    "properties": {
      "code": {
        "type": "string",
        "description": "Line that was asked about."
      },
      "figure": {
        "$ref": "#/components/schemas/Figure",
        "description": "Derivation of the line's quantity, down to what was entered."
      }
    },
    "required": [
      "code",
      "figure"
    ]
  },
  "Worded": {
    "type": "object",
    "description": "Words that a surveyor may replace; what the service would say stays beside them.",
    "properties": {
      "text": {
        "type": "string",
        "description": "What is printed."
      },
      "byService": {
        "type": "string",
        "description": "The sentence that the rules give."
      },
      "isSurveyors": {
        "type": "boolean",
        "description": "Whether the surveyor's own words stand in its place."
      }
    },
    "required": [
      "text",
      "byService",
      "isSurveyors"
    ]
  },
  "WorkWindow": {
    "type": "object",
    "description": "Hours in which a step may start.",
    "properties": {
      "rank": {
        "type": "number",
        "description": "Place among the windows, 1 the best."
      },
      "fromAt": {
        "type": "string",
        "description": "Earliest start in the window (RFC 3339)."
      },
      "untilAt": {
        "type": "string",
        "description": "The end of its last hour."
      },
      "startHours": {
        "type": "number",
        "description": "Hours within which the step may start."
      },
      "leastDewMarginK": {
        "type": "number",
        "description": "Least distance of the deck from the dew point."
      },
      "meanDeckC": {
        "type": "number",
        "description": "Mean temperature of the deck in the window."
      },
      "limitedBy": {
        "type": "string",
        "enum": [
          "core-moisture",
          "dew-margin",
          "end-of-forecast",
          "end-of-work",
          "humidity",
          "rain",
          "too-cold",
          "too-warm",
          "wind"
        ],
        "description": "What ends the window."
      }
    },
    "required": [
      "rank",
      "fromAt",
      "untilAt",
      "startHours",
      "leastDewMarginK",
      "meanDeckC",
      "limitedBy"
    ]
  },
  "ZoneRecord": {
    "type": "object",
    "properties": {
      "outline": {
        "type": "array",
        "items": {
          "type": "array",
          "items": {
            "type": "number"
          },
          "minItems": 2,
          "maxItems": 2
        }
      },
      "id": {
        "type": "string"
      },
      "condition": {
        "type": "string",
        "enum": [
          "dry-debonded",
          "wet-bonded",
          "wet-rotten"
        ]
      }
    },
    "required": [
      "outline",
      "id"
    ]
  }
};
