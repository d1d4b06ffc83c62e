// Written by apps/api/schemas.mjs from the types of libs/; do not edit.
export const generatedSchemas: Readonly<Record<string, object>> = {
  "Area": {
    "type": "object",
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
        "type": "string"
      },
      "meaning": {
        "type": "string"
      },
      "value": {
        "type": "string"
      },
      "because": {
        "type": "string"
      },
      "source": {
        "type": "string"
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
        ]
      },
      "at": {
        "type": "string"
      },
      "because": {
        "type": "string"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      },
      "low": {
        "type": "number"
      },
      "high": {
        "type": "number"
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
        "type": "number"
      },
      "amountFactor": {
        "type": "number"
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
        "description": "RFC 3339 instant."
      },
      "action": {
        "type": "string"
      },
      "keyId": {
        "type": "string"
      },
      "keyName": {
        "type": "string",
        "description": "Whose key it was, as the key is called."
      },
      "requestId": {
        "type": "string"
      },
      "before": {},
      "after": {}
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
        }
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` to read on; absent on the last page."
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
        "type": "string"
      },
      "priceList": {
        "type": "string"
      },
      "isInvented": {
        "type": "boolean"
      },
      "pricesIncludeTax": {
        "type": "boolean"
      },
      "proof": {
        "oneOf": [
          {
            "type": "object",
            "properties": {
              "kind": {
                "type": "string",
                "enum": [
                  "proven"
                ]
              }
            },
            "required": [
              "kind"
            ]
          },
          {
            "type": "object",
            "properties": {
              "kind": {
                "type": "string",
                "enum": [
                  "gap"
                ]
              },
              "bound": {
                "$ref": "#/components/schemas/MoneyJson"
              },
              "gapFraction": {
                "type": "number"
              }
            },
            "required": [
              "kind"
            ]
          }
        ]
      },
      "isComplete": {
        "type": "boolean"
      },
      "missing": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostingMissing"
        }
      },
      "excluded": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Excluded"
        }
      },
      "byEstimate": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "estimate": {
              "type": "string"
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "estimate",
            "amount"
          ]
        }
      },
      "secondBest": {
        "$ref": "#/components/schemas/SecondBest"
      },
      "warnings": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        }
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        }
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        }
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        }
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        }
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        }
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
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "supplier": {
        "type": "string"
      },
      "content": {
        "$ref": "#/components/schemas/MaterialVariant"
      },
      "packCount": {
        "type": "number"
      },
      "quantityPerPack": {
        "type": "number"
      },
      "quantity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Packs times price."
      },
      "cutFee": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "cutCount": {
        "type": "number",
        "description": "Sheets that the shop cuts so that they travel as ordinary goods."
      },
      "massKg": {
        "type": "number"
      },
      "hazardous": {
        "type": "boolean"
      },
      "oversize": {
        "type": "boolean"
      },
      "shelfLifeMonths": {
        "type": "number"
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
        "type": "number"
      },
      "step": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "resinG": {
        "type": "number"
      },
      "hardenerG": {
        "type": "number"
      },
      "fillerG": {
        "type": "number"
      },
      "filler": {
        "type": "string"
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
              ]
            },
            "name": {
              "type": "string"
            },
            "addG": {
              "type": "number"
            },
            "scaleShowsG": {
              "type": "number"
            },
            "volumeMl": {
              "type": "number"
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
        "type": "number"
      },
      "covers": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "useWithinMin": {
        "type": "number"
      },
      "limitedBy": {
        "type": "string"
      },
      "pumps": {
        "type": "string"
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
        ]
      },
      "severity": {
        "type": "string",
        "enum": [
          "note",
          "stop",
          "warn"
        ]
      },
      "text": {
        "type": "string"
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
        }
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
            "type": "string"
          },
          "name": {
            "type": "string"
          },
          "hardener": {
            "type": "string"
          },
          "hardenerName": {
            "type": "string"
          },
          "why": {
            "type": "string"
          }
        },
        "required": [
          "code",
          "name",
          "hardener",
          "hardenerName",
          "why"
        ]
      },
      "considered": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HardenerVerdict"
        }
      },
      "demand": {
        "$ref": "#/components/schemas/ResinDemand"
      },
      "batches": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlannedBatch"
        }
      },
      "potLife": {
        "type": "object",
        "properties": {
          "at100GMin": {
            "type": "number"
          },
          "lowMin": {
            "type": "number"
          },
          "highMin": {
            "type": "number"
          },
          "temperatureC": {
            "type": "number"
          }
        },
        "required": [
          "at100GMin",
          "lowMin",
          "highMin",
          "temperatureC"
        ]
      },
      "adiabaticRiseK": {
        "type": "number"
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BatchFinding"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
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
        "type": "number"
      },
      "key": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "body": {
        "type": "string"
      },
      "year": {
        "type": "string"
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
        "type": "string"
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
        ]
      },
      "requiredKPa": {
        "type": "number"
      },
      "availableKPa": {
        "type": "number"
      },
      "restsOn": {
        "type": "string"
      },
      "turns": {
        "type": "number",
        "description": "One after another, where a crew cannot press the whole opening at once."
      },
      "innerSkin": {
        "$ref": "#/components/schemas/InnerSkinCheck"
      },
      "options": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressOption"
        }
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressQuantity"
        }
      },
      "recommendation": {
        "type": "string"
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "ambientKPa": {
        "type": "number"
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
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
        "type": "number"
      },
      "availableKPa": {
        "type": "number"
      },
      "restsOn": {
        "type": "string"
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        }
      },
      "props": {
        "type": "object",
        "properties": {
          "needed": {
            "type": "boolean"
          },
          "spacingMm": {
            "type": "number"
          },
          "why": {
            "type": "string"
          }
        },
        "required": [
          "needed",
          "why"
        ]
      },
      "recommendation": {
        "type": "string"
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        }
      }
    },
    "required": [
      "requiredKPa",
      "restsOn",
      "quantities",
      "props",
      "recommendation",
      "refusals"
    ]
  },
  "BuiltCheck": {
    "type": "object",
    "description": "`isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's.",
    "properties": {
      "utilisation": {
        "type": "number"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ]
      },
      "isNoWorse": {
        "type": "boolean"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "at": {
        "type": "string"
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
        "$ref": "#/components/schemas/Range"
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range",
        "description": "From the first day to the last, waits counted."
      },
      "planned": {
        "type": "object",
        "properties": {
          "workingDays": {
            "type": "number"
          },
          "calendarDays": {
            "type": "number"
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
        }
      },
      "criticalChain": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "finish": {
        "type": "object",
        "properties": {
          "early": {
            "type": "string"
          },
          "likely": {
            "type": "string"
          },
          "late": {
            "type": "string"
          }
        },
        "required": [
          "early",
          "likely",
          "late"
        ]
      },
      "milestones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string"
            },
            "title": {
              "type": "string"
            },
            "at": {
              "type": "string"
            }
          },
          "required": [
            "code",
            "title"
          ]
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
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
        "type": "number"
      },
      "endDay": {
        "type": "number"
      },
      "startAt": {
        "type": "string"
      },
      "endAt": {
        "type": "string"
      },
      "readyAt": {
        "type": "string",
        "description": "When its cure, drying or hold is over."
      },
      "labourH": {
        "type": "number"
      },
      "waitH": {
        "type": "number"
      },
      "waitKind": {
        "type": "string",
        "enum": [
          "cure",
          "drying",
          "elapsed",
          "hold",
          "none"
        ]
      },
      "isCritical": {
        "type": "boolean"
      },
      "isHoldPoint": {
        "type": "boolean"
      },
      "startsBecause": {
        "type": "string"
      },
      "after": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        ]
      },
      "way": {
        "type": "string",
        "enum": [
          "bends",
          "lies",
          "scored",
          "shorter-pieces"
        ]
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
        "type": "string"
      },
      "figures": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
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
        "type": "string"
      },
      "severity": {
        "type": "string",
        "enum": [
          "caution",
          "danger",
          "warning"
        ]
      },
      "kind": {
        "type": "string",
        "enum": [
          "fire",
          "health",
          "site",
          "structure",
          "work"
        ]
      },
      "text": {
        "type": "string"
      },
      "because": {
        "type": "string",
        "description": "The condition of this job that called it."
      },
      "protection": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "hazards": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string"
            },
            "text": {
              "type": "string"
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
        "type": "string"
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
        "type": "string"
      },
      "reason": {
        "type": "string"
      },
      "additions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        }
      },
      "deductions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineChange"
        }
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
              "type": "string"
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "name",
            "amount"
          ]
        }
      },
      "byRates": {
        "$ref": "#/components/schemas/ReMeasured",
        "description": "Everything found since the first issue, by the rates agreed with it; absent where that was in another currency."
      },
      "statements": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "name": {
        "type": "string"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ]
      },
      "demand": {
        "type": "number"
      },
      "capacity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "utilisation": {
        "type": "number"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ]
      },
      "governs": {
        "type": "string"
      },
      "remedy": {
        "type": "string"
      },
      "source": {
        "type": "string"
      },
      "reason": {
        "type": "string"
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
        "type": "string"
      },
      "clause": {
        "type": "string",
        "description": "Clause, table, equation or page in the source."
      },
      "note": {
        "type": "string"
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
        "type": "string"
      },
      "clientSecretExpiresAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        ]
      },
      "title": {
        "type": "string"
      },
      "unit": {
        "type": "string"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ]
      },
      "demand": {
        "type": "number"
      },
      "capacity": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      },
      "words": {
        "type": "string"
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
        "$ref": "#/components/schemas/Figure"
      },
      "grooveWidthMm": {
        "type": "number"
      },
      "order": {
        "type": "string",
        "enum": [
          "largest-first",
          "smallest-first"
        ]
      },
      "consequences": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ClosingPly"
        }
      },
      "stages": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Stage"
        }
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ClosingCheck"
        }
      },
      "leastTaperRatio": {
        "type": "number",
        "description": "Least taper that the bond allows, where the joint's stress was given."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LaminateAssumption"
        }
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
        "type": "number"
      },
      "stage": {
        "type": "number"
      },
      "material": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "thicknessMm": {
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        }
      },
      "areaM2": {
        "$ref": "#/components/schemas/Figure"
      },
      "strips": {
        "type": "number"
      },
      "rollWidthMm": {
        "type": "number"
      },
      "rollLengthM": {
        "type": "number"
      },
      "rollStrips": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RollStrip"
        },
        "description": "As they are cut from the roll."
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure"
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
    "properties": {
      "id": {
        "type": "string"
      },
      "createdAt": {
        "type": "string"
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark"
      },
      "edition": {
        "type": "string"
      },
      "engineVersion": {
        "type": "string"
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
        "$ref": "#/components/schemas/ComparedEstimate"
      },
      "after": {
        "$ref": "#/components/schemas/ComparedEstimate"
      },
      "figures": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FigureChange"
        },
        "description": "Changed figures of the scope, such as the opened area."
      },
      "currency": {
        "type": "string"
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
        "description": "Without tax."
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
        ]
      },
      "formula": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "symbol": {
        "type": "string"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      },
      "inputs": {
        "type": "object",
        "additionalProperties": {
          "$ref": "#/components/schemas/Figure"
        }
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
            ]
          },
          "sentence": {
            "type": "string"
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
        ]
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/GradedFinding"
        }
      },
      "method": {
        "type": "object",
        "properties": {
          "sentences": {
            "type": "array",
            "items": {
              "type": "string"
            }
          },
          "runnerUp": {
            "type": "object",
            "properties": {
              "title": {
                "type": "string"
              },
              "because": {
                "type": "string"
              },
              "price": {
                "$ref": "#/components/schemas/MoneyJson"
              }
            },
            "required": [
              "title",
              "because"
            ]
          }
        },
        "required": [
          "sentences"
        ]
      },
      "reinspection": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ReinspectionPoint"
        }
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
        ]
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
        "$ref": "#/components/schemas/StackPlan"
      },
      "mosaic": {
        "$ref": "#/components/schemas/Mosaic"
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
        "type": "number"
      },
      "sheetCount": {
        "type": "number"
      },
      "cost": {
        "type": "number"
      },
      "netArea": {
        "$ref": "#/components/schemas/Figure"
      },
      "boughtArea": {
        "$ref": "#/components/schemas/Figure"
      },
      "wasteFraction": {
        "$ref": "#/components/schemas/Figure",
        "description": "Absent where no core is bought."
      },
      "utilisation": {
        "type": "number",
        "description": "0 where no core is bought."
      },
      "waste": {
        "$ref": "#/components/schemas/SheetUse"
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
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
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "sheets": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CutCoreSheet"
        }
      },
      "cost": {
        "type": "number"
      },
      "leastCost": {
        "type": "number"
      },
      "use": {
        "$ref": "#/components/schemas/SheetUse"
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
        "type": "string"
      },
      "materialName": {
        "type": "string"
      },
      "stack": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "layer": {
              "type": "string"
            },
            "thicknessMm": {
              "type": "number"
            }
          },
          "required": [
            "layer",
            "thicknessMm"
          ]
        }
      },
      "cavityMm": {
        "type": "number"
      },
      "stackMm": {
        "type": "number"
      },
      "flushMm": {
        "type": "number"
      },
      "netAreaM2": {
        "type": "number"
      },
      "wasteAreaM2": {
        "type": "number"
      },
      "purchaseAreaM2": {
        "type": "number"
      },
      "wasteByCause": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "cause": {
              "type": "string"
            },
            "areaM2": {
              "type": "number"
            }
          },
          "required": [
            "cause",
            "areaM2"
          ]
        }
      },
      "pieces": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateCorePiece"
        }
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
        "type": "number"
      },
      "solidVolumeL": {
        "type": "number"
      },
      "sheets": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CoreSheetLayout"
        }
      },
      "kerfMm": {
        "type": "number",
        "description": "Left between the pieces on a sheet for the blade."
      },
      "utilisation": {
        "type": "number"
      },
      "massChangeKg": {
        "type": "number"
      },
      "waterLeavingKg": {
        "type": "number"
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "lengthMm": {
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "isBought": {
        "type": "boolean",
        "description": "False for a piece that the customer has."
      },
      "utilisation": {
        "type": "number"
      },
      "placed": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "piece": {
              "type": "string"
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
            "turnDeg": {
              "type": "number"
            },
            "cutOrder": {
              "type": "number"
            }
          },
          "required": [
            "piece",
            "outline",
            "holes",
            "turnDeg",
            "cutOrder"
          ]
        }
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
        }
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
        "type": "string"
      },
      "kind": {
        "type": "string",
        "enum": [
          "high-density-strip",
          "paste",
          "solid-laminate"
        ]
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
        "description": "In deck coordinates."
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
      "areaM2": {
        "type": "number"
      },
      "volumeL": {
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "lifts": {
        "type": "number",
        "description": "As paste: how many lifts, for its heat."
      },
      "isUnderLip": {
        "type": "boolean"
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
        "type": "string"
      },
      "layer": {
        "type": "number",
        "description": "1 lies on the inner skin."
      },
      "beddingOrder": {
        "type": "number",
        "description": "Over all openings."
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
      "areaM2": {
        "type": "number"
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
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
        }
      },
      "bleedDiameterMm": {
        "type": "number"
      },
      "isUnderLip": {
        "type": "boolean"
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
    "properties": {
      "code": {
        "type": "string"
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
        ]
      },
      "title": {
        "type": "string"
      },
      "stage": {
        "type": "string"
      },
      "partOrLabour": {
        "type": "string",
        "enum": [
          "labour",
          "part"
        ]
      },
      "causeClass": {
        "type": "string",
        "enum": [
          "maintenance",
          "pre-existing",
          "sudden"
        ]
      },
      "scope": {
        "type": "string",
        "enum": [
          "in",
          "out"
        ]
      },
      "quantity": {
        "$ref": "#/components/schemas/LineQuantity"
      },
      "unit": {
        "type": "string"
      },
      "unitRate": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "isAverageRate": {
        "type": "boolean",
        "description": "True where packs were priced and the rate is their price over their content."
      },
      "packs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LinePack"
        }
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
            ]
          },
          "bought": {
            "$ref": "#/components/schemas/MoneyJson"
          }
        },
        "required": [
          "billedBy",
          "bought"
        ],
        "description": "Of packs only: how they are charged, and without tax what buying them whole would come to."
      },
      "rateIncludesTax": {
        "type": "boolean"
      },
      "taxGroup": {
        "type": "string"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "range": {
        "$ref": "#/components/schemas/CostingMoneyRange"
      },
      "spread": {
        "type": "object",
        "properties": {
          "low": {
            "type": "number"
          },
          "high": {
            "type": "number"
          }
        },
        "required": [
          "low",
          "high"
        ]
      },
      "atExtents": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AtExtent"
        }
      },
      "depreciation": {
        "$ref": "#/components/schemas/LineDepreciation"
      },
      "note": {
        "type": "string"
      },
      "why": {
        "$ref": "#/components/schemas/Figure"
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
        "type": "string"
      },
      "samples": {
        "type": "number"
      },
      "seed": {
        "type": "number"
      },
      "shape": {
        "type": "string",
        "enum": [
          "beta",
          "triangular"
        ]
      },
      "extent": {
        "$ref": "#/components/schemas/ThreePoint"
      },
      "point": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "mean": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "deviation": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p10": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p50": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p80": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p90": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p90StandardError": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p90RelativeError": {
        "type": "number"
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
        }
      },
      "jointShare": {
        "type": "number",
        "description": "Of the variance, by drivers acting together."
      },
      "histogram": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/HistogramBar"
        }
      },
      "information": {
        "$ref": "#/components/schemas/InformationValue"
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
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
        "type": "string"
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostLine"
        }
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
        }
      },
      "direct": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "overhead": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "profit": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "provisional": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "contingency": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "taxes": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string"
            },
            "name": {
              "type": "string"
            },
            "percent": {
              "type": "string",
              "description": "Exact decimal text."
            },
            "taxable": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "code",
            "name",
            "percent",
            "taxable",
            "tax"
          ]
        }
      },
      "tax": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "gross": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "byCause": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "causeClass": {
              "type": "string",
              "enum": [
                "maintenance",
                "pre-existing",
                "sudden"
              ]
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
        }
      },
      "byPartOrLabour": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "partOrLabour": {
              "type": "string",
              "enum": [
                "labour",
                "part"
              ]
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
        }
      },
      "byCauseAndPart": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "direct": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "loadings": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "net": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "tax": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "gross": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "causeClass": {
              "type": "string",
              "enum": [
                "maintenance",
                "pre-existing",
                "sudden"
              ]
            },
            "partOrLabour": {
              "type": "string",
              "enum": [
                "labour",
                "part"
              ]
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
            "$ref": "#/components/schemas/MoneyJson"
          },
          "depreciation": {
            "$ref": "#/components/schemas/MoneyJson"
          },
          "remaining": {
            "$ref": "#/components/schemas/MoneyJson"
          }
        },
        "required": [
          "parts",
          "depreciation",
          "remaining"
        ]
      },
      "terms": {
        "type": "object",
        "properties": {
          "overheadPercent": {
            "type": "string"
          },
          "profitPercent": {
            "type": "string"
          },
          "contingencyPercent": {
            "type": "string"
          },
          "rounding": {
            "type": "string",
            "enum": [
              "ceiling",
              "floor",
              "half-away-from-zero",
              "half-to-even"
            ]
          }
        },
        "required": [
          "overheadPercent",
          "profitPercent",
          "rounding"
        ]
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "needs": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "part": {
        "type": "string",
        "description": "Hardener code of a resin system."
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ]
      },
      "rollWidthMm": {
        "type": "number"
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "likely": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "high": {
        "$ref": "#/components/schemas/MoneyJson"
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
      "unit": {
        "type": "string"
      },
      "needs": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string"
            },
            "estimate": {
              "type": "string"
            },
            "requiredQuantity": {
              "type": "number"
            }
          },
          "required": [
            "id",
            "requiredQuantity"
          ]
        }
      },
      "required": {
        "type": "number"
      },
      "fromOnHand": {
        "type": "number"
      },
      "covered": {
        "type": "number"
      },
      "short": {
        "type": "number"
      },
      "material": {
        "type": "string"
      },
      "part": {
        "type": "string",
        "description": "Hardener code of a resin system."
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ]
      },
      "rollWidthMm": {
        "type": "number"
      }
    },
    "required": [
      "unit",
      "needs",
      "required",
      "fromOnHand",
      "covered",
      "short",
      "material"
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
      }
    }
  },
  "CureAndWeather": {
    "type": "object",
    "properties": {
      "cure": {
        "$ref": "#/components/schemas/CurePlan"
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherPlan"
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
        "type": "string"
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
        ]
      },
      "startAt": {
        "type": "string",
        "description": "When the last of the resin goes on; only where a forecast is followed."
      },
      "gelH": {
        "type": "number"
      },
      "releaseH": {
        "type": "number"
      },
      "sandableH": {
        "type": "number"
      },
      "recoatShutsH": {
        "type": "number"
      },
      "fullCureH": {
        "type": "number"
      },
      "note": {
        "type": "string"
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
        "type": "string"
      },
      "resin": {
        "type": "string"
      },
      "hardener": {
        "type": "string"
      },
      "referenceC": {
        "type": "number"
      },
      "activationEnergy": {
        "type": "object",
        "properties": {
          "likely": {
            "type": "number"
          },
          "low": {
            "type": "number"
          },
          "high": {
            "type": "number"
          },
          "basis": {
            "type": "string"
          }
        },
        "required": [
          "likely",
          "low",
          "high",
          "basis"
        ]
      },
      "stopsBelowC": {
        "type": "number"
      },
      "deck": {
        "type": "object",
        "properties": {
          "meanC": {
            "type": "number"
          },
          "coldestC": {
            "type": "number"
          },
          "warmestC": {
            "type": "number"
          },
          "overH": {
            "type": "number"
          }
        },
        "required": [
          "meanC",
          "coldestC",
          "warmestC",
          "overH"
        ]
      },
      "stoppedH": {
        "type": "number",
        "description": "Hours, until full cure or the end, in which the deck is too cold and nothing counts."
      },
      "milestones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Milestone"
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
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
        ]
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
        "type": "number"
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
        "type": "string"
      },
      "isBought": {
        "type": "boolean",
        "description": "A sheet that is bought, or a piece that the customer has."
      },
      "lengthMm": {
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "offcutsKept": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Offcut"
        },
        "description": "Rectangles no narrower than what is worth keeping."
      },
      "use": {
        "$ref": "#/components/schemas/SheetUse"
      },
      "stockId": {
        "type": "string"
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
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        }
      },
      "sheetAreaM2": {
        "type": "number"
      },
      "pieceAreaM2": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
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
        "type": "string"
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
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        }
      },
      "sheetAreaM2": {
        "type": "number"
      },
      "pieceAreaM2": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
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
        "$ref": "#/components/schemas/SheetLayout"
      },
      "onRoll": {
        "$ref": "#/components/schemas/StripLayout"
      },
      "seed": {
        "type": "number",
        "description": "What the answer depends on besides the pieces and the stock; the same settings give the same answer."
      },
      "workUnits": {
        "type": "number"
      },
      "timeLimitS": {
        "type": "number"
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
        "maxItems": 2
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "lengthMm": {
        "type": "number"
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
    "properties": {
      "p10": {
        "type": "number"
      },
      "p50": {
        "type": "number"
      },
      "p90": {
        "type": "number"
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
        "description": "As on the plan."
      },
      "caption": {
        "type": "string"
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
        "type": "number"
      },
      "heightPx": {
        "type": "number"
      },
      "addedAt": {
        "type": "string",
        "description": "RFC 3339 instant."
      },
      "href": {
        "type": "string"
      },
      "mediaType": {
        "type": "string",
        "enum": [
          "image/jpeg"
        ]
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
        "type": "number"
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
        }
      },
      "chosen": {
        "type": "number"
      },
      "words": {
        "type": "string"
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
        "type": "number"
      },
      "pieces": {
        "type": "number"
      },
      "workH": {
        "type": "number",
        "description": "To cut, fit and bed."
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
        "type": "number"
      },
      "sheetCost": {
        "type": "number"
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
              "type": "string"
            },
            "href": {
              "type": "string"
            }
          },
          "required": [
            "name",
            "href"
          ]
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "atP10": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Total with this driver at its P10 and P90 and everything else at its median."
      },
      "atP90": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "swing": {
        "$ref": "#/components/schemas/MoneyJson"
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
    "properties": {
      "code": {
        "type": "string"
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
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
      },
      "publishedAt": {
        "type": "string"
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
        "type": "string"
      },
      "after": {
        "type": "string"
      },
      "isSame": {
        "type": "boolean"
      },
      "changes": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EntryChange"
        }
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
        }
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
        "type": "string"
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
      "type": {
        "type": "string",
        "enum": [
          "edition.published"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/PublicationNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
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
        }
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
      "type": {
        "type": "string",
        "enum": [
          "edition.withdrawn"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/EditionNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
    ]
  },
  "EngineeringConstants": {
    "type": "object",
    "description": "Moduli of a homogeneous plate that would answer the same.",
    "properties": {
      "youngAlongMPa": {
        "type": "number"
      },
      "youngAcrossMPa": {
        "type": "number"
      },
      "poissonAlong": {
        "type": "number"
      },
      "poissonAcross": {
        "type": "number"
      },
      "shearModulusMPa": {
        "type": "number"
      },
      "shearCouplingAlong": {
        "type": "number",
        "description": "Shear strain per along (across) strain under a pull along (across): 0 for a balanced laminate."
      },
      "shearCouplingAcross": {
        "type": "number"
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
        ]
      },
      "at": {
        "type": "string"
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
        ]
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
        ]
      },
      "code": {
        "type": "string"
      },
      "change": {
        "type": "string",
        "enum": [
          "added",
          "changed",
          "removed"
        ]
      },
      "fields": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EntryField"
        },
        "description": "The first 200 fields that differ, of an entry that is in both."
      },
      "fieldCount": {
        "type": "number"
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
        "description": "Absent where there was nothing."
      },
      "after": {
        "description": "Absent where nothing is left."
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
        "$ref": "#/components/schemas/Summary"
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
        "type": "string"
      },
      "reference": {
        "type": "string"
      },
      "methods": {
        "$ref": "#/components/schemas/MethodsSection",
        "description": "Every way to mend this deck, which one is planned, and why."
      },
      "scope": {
        "$ref": "#/components/schemas/Scope"
      },
      "core": {
        "$ref": "#/components/schemas/CoreSection",
        "description": "Absent where the method opens nothing; `leftOut` says why."
      },
      "laminate": {
        "$ref": "#/components/schemas/LaminateSection"
      },
      "panel": {
        "$ref": "#/components/schemas/PanelSection"
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
        }
      },
      "process": {
        "$ref": "#/components/schemas/ProcessSection"
      },
      "sections": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostSection"
        }
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateLine"
        }
      },
      "totals": {
        "$ref": "#/components/schemas/Totals"
      },
      "cautions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Caution"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateAssumption"
        }
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "provenance": {
        "$ref": "#/components/schemas/ProvenanceStamp"
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
        "type": "string"
      },
      "value": {
        "type": "string"
      },
      "because": {
        "type": "string"
      },
      "source": {
        "type": "string"
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
        "type": "string"
      },
      "priceList": {
        "type": "string"
      },
      "isInvented": {
        "type": "boolean"
      },
      "pricesIncludeTax": {
        "type": "boolean"
      },
      "proof": {
        "oneOf": [
          {
            "type": "object",
            "properties": {
              "kind": {
                "type": "string",
                "enum": [
                  "proven"
                ]
              }
            },
            "required": [
              "kind"
            ]
          },
          {
            "type": "object",
            "properties": {
              "kind": {
                "type": "string",
                "enum": [
                  "gap"
                ]
              },
              "bound": {
                "$ref": "#/components/schemas/MoneyJson"
              },
              "gapFraction": {
                "type": "number"
              }
            },
            "required": [
              "kind"
            ]
          }
        ]
      },
      "isComplete": {
        "type": "boolean"
      },
      "missing": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CostingMissing"
        }
      },
      "excluded": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Excluded"
        }
      },
      "byEstimate": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "estimate": {
              "type": "string"
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "estimate",
            "amount"
          ]
        }
      },
      "secondBest": {
        "$ref": "#/components/schemas/SecondBest"
      },
      "warnings": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        }
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        }
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        }
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        }
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        }
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        }
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
        "type": "string"
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark"
      },
      "calendar": {
        "$ref": "#/components/schemas/CalendarSection"
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherSection",
        "description": "Only with a forecast."
      },
      "day": {
        "type": "object",
        "properties": {
          "date": {
            "type": "string"
          },
          "items": {
            "type": "array",
            "items": {
              "$ref": "#/components/schemas/TodayItem"
            }
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
        "type": "string"
      },
      "beddingOrder": {
        "type": "number"
      },
      "opening": {
        "type": "string"
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
        "description": "In deck coordinates."
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
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "layer": {
        "type": "number",
        "description": "1 lies on the inner skin."
      },
      "areaM2": {
        "type": "number"
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
        }
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
      "type": {
        "type": "string",
        "enum": [
          "estimate.created"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/EstimateNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
    ]
  },
  "EstimateDrift": {
    "type": "object",
    "description": "How the prices of a list differ from those that an estimate was reckoned with.",
    "properties": {
      "estimate": {
        "type": "string"
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LineDrift"
        }
      },
      "then": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Of the lines that can still be bought as they were reckoned."
      },
      "now": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "severity": {
        "type": "string",
        "enum": [
          "note",
          "stop",
          "warn"
        ]
      },
      "text": {
        "type": "string"
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
        }
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
        "type": "string"
      },
      "section": {
        "type": "string"
      },
      "title": {
        "type": "string"
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
        ]
      },
      "partOrLabour": {
        "type": "string",
        "enum": [
          "labour",
          "part"
        ]
      },
      "causeClass": {
        "type": "string",
        "enum": [
          "maintenance",
          "pre-existing",
          "sudden"
        ]
      },
      "material": {
        "type": "string"
      },
      "unit": {
        "type": "string"
      },
      "netQuantity": {
        "type": "number"
      },
      "wasteQuantity": {
        "type": "number"
      },
      "purchaseQuantity": {
        "type": "number"
      },
      "range": {
        "type": "object",
        "properties": {
          "low": {
            "type": "number"
          },
          "high": {
            "type": "number"
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
            "type": "number"
          },
          "likely": {
            "type": "number"
          },
          "mean": {
            "type": "number"
          },
          "high": {
            "type": "number"
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
              "type": "string"
            },
            "name": {
              "type": "string"
            },
            "supplier": {
              "type": "string"
            },
            "count": {
              "type": "number"
            },
            "price": {
              "$ref": "#/components/schemas/MoneyJson"
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
            ]
          },
          "bought": {
            "$ref": "#/components/schemas/MoneyJson"
          }
        },
        "required": [
          "billedBy",
          "bought"
        ],
        "description": "Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to."
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "isAveragePrice": {
        "type": "boolean",
        "description": "True where packs were priced and `unitPrice` is their price over their content."
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "amountRange": {
        "type": "object",
        "properties": {
          "low": {
            "$ref": "#/components/schemas/MoneyJson"
          },
          "high": {
            "$ref": "#/components/schemas/MoneyJson"
          }
        },
        "required": [
          "low",
          "high"
        ],
        "description": "Least and most of the amount at the recorded extent."
      },
      "depreciable": {
        "type": "boolean"
      },
      "depreciation": {
        "$ref": "#/components/schemas/LineDepreciation",
        "description": "Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax."
      },
      "taxGroup": {
        "type": "string"
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p50": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p80": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "p90": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
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
        }
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` to read on; absent on the last page."
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
        "type": "string"
      },
      "summary": {
        "$ref": "#/components/schemas/PreviewSummary"
      },
      "zones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string"
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
              }
            },
            "areaM2": {
              "type": "number"
            },
            "condition": {
              "type": "string"
            }
          },
          "required": [
            "id",
            "outline",
            "areaM2",
            "condition"
          ]
        }
      },
      "openings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PreviewedOpening"
        }
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateFinding"
        }
      },
      "panel": {
        "$ref": "#/components/schemas/PreviewPanel"
      },
      "price": {
        "$ref": "#/components/schemas/PreviewPrice"
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
      "type": {
        "type": "string",
        "enum": [
          "estimate.revised"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/RevisionNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
    ]
  },
  "EstimateSummary": {
    "type": "object",
    "description": "An estimate in a list.",
    "properties": {
      "id": {
        "type": "string"
      },
      "createdAt": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "reference": {
        "type": "string"
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark"
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "totalP10": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "totalP90": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "labourH": {
        "type": "number"
      },
      "verdict": {
        "type": "string"
      },
      "engineVersion": {
        "type": "string"
      },
      "edition": {
        "type": "string"
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
          ]
        }
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
    "properties": {
      "sku": {
        "type": "string"
      },
      "reason": {
        "type": "string",
        "enum": [
          "does-not-keep",
          "hazardous-by-air",
          "out-of-stock",
          "supplier-not-chosen"
        ]
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
        ]
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
        }
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
            ]
          },
          "because": {
            "type": "string"
          },
          "multiplier": {
            "$ref": "#/components/schemas/ThreePoint",
            "description": "Growth at P10, P50 and P90."
          },
          "law": {
            "$ref": "#/components/schemas/GrowthLaw"
          }
        },
        "required": [
          "grade",
          "because",
          "multiplier",
          "law"
        ]
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ExtentFinding"
        }
      },
      "nextReadings": {
        "$ref": "#/components/schemas/NextReadings",
        "description": "Where to tap or plug next, and whether it is worth it; absent for drawn zones, unless it is asked for."
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
      },
      "figures": {
        "$ref": "#/components/schemas/ExtentFigures"
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
        "$ref": "#/components/schemas/Extent"
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
        "$ref": "#/components/schemas/Figure"
      },
      "likelyArea": {
        "$ref": "#/components/schemas/Figure"
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
        ]
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
        "type": "string"
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
        }
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
        "type": "string"
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
      "areaM2": {
        "type": "number"
      },
      "boundary": {
        "type": "string",
        "enum": [
          "drawn",
          "mapped"
        ]
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
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "meaning": {
        "type": "string"
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
        ]
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
    "properties": {
      "code": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "unit": {
        "type": "string"
      },
      "before": {
        "type": "number"
      },
      "after": {
        "type": "number"
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
        "type": "string"
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
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "holes": {
        "type": "number"
      },
      "where": {
        "type": "string",
        "enum": [
          "inside",
          "near"
        ]
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
        "type": "boolean"
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
        }
      },
      "because": {
        "type": "string"
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
        "type": "string"
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
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "holes": {
        "type": "number"
      },
      "where": {
        "type": "string",
        "enum": [
          "inside",
          "near"
        ]
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
        }
      },
      "isHighlyLoaded": {
        "type": "boolean"
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
        ]
      },
      "item": {
        "type": "string"
      },
      "field": {
        "type": "string"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      },
      "low": {
        "type": "number"
      },
      "high": {
        "type": "number"
      }
    },
    "required": [
      "kind",
      "item",
      "field",
      "cite"
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
        ]
      },
      "billed": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "bought": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "basis": {
        "type": "string"
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
        ]
      },
      "classByService": {
        "type": "string",
        "enum": [
          "before-use",
          "monitor",
          "next-opportunity"
        ]
      },
      "classBecause": {
        "type": "string"
      },
      "wording": {
        "$ref": "#/components/schemas/Worded"
      },
      "recommendation": {
        "$ref": "#/components/schemas/Worded"
      },
      "restriction": {
        "$ref": "#/components/schemas/Worded"
      },
      "about": {
        "type": "string",
        "description": "A zone, a fitting, or the surveyor's own label."
      },
      "condition": {
        "type": "string"
      },
      "areaM2": {
        "type": "number"
      },
      "fromAftMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2,
        "description": "From the aft edge of the panel."
      },
      "fittings": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string"
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
            "isLeaking": {
              "type": "boolean"
            }
          },
          "required": [
            "id",
            "kind",
            "isLeaking"
          ]
        }
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
        "type": "number"
      },
      "falseAlarmFrom": {
        "type": "number"
      },
      "falseAlarmUpTo": {
        "type": "number"
      },
      "median": {
        "type": "number"
      },
      "sigma": {
        "type": "number"
      },
      "sigmaBelow": {
        "type": "number",
        "description": "Deviation of the logarithm below the median, where it is another than above."
      },
      "most": {
        "type": "number"
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
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "chosen",
          "refused",
          "workable"
        ]
      },
      "reasons": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "kind": {
        "type": "string"
      },
      "fasteners": {
        "type": "number"
      },
      "fastenerMm": {
        "type": "number"
      },
      "fastenerLengthMm": {
        "type": "number"
      },
      "plugMm": {
        "type": "number"
      },
      "plugMl": {
        "type": "number"
      },
      "pours": {
        "type": "number"
      },
      "baseMm": {
        "type": "number"
      },
      "insert": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          },
          "thicknessMm": {
            "type": "number"
          },
          "material": {
            "type": "string"
          }
        },
        "required": [
          "lengthMm",
          "widthMm",
          "thicknessMm",
          "material"
        ]
      },
      "plate": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          },
          "thicknessMm": {
            "type": "number"
          },
          "material": {
            "type": "string"
          },
          "rule": {
            "type": "string"
          }
        },
        "required": [
          "lengthMm",
          "widthMm",
          "thicknessMm",
          "material",
          "rule"
        ]
      },
      "sealant": {
        "type": "object",
        "properties": {
          "kind": {
            "type": "string"
          },
          "ml": {
            "type": "number"
          }
        },
        "required": [
          "kind",
          "ml"
        ]
      },
      "tightening": {
        "type": "string"
      },
      "offH": {
        "$ref": "#/components/schemas/Range"
      },
      "onH": {
        "$ref": "#/components/schemas/Range"
      },
      "needsSecondPerson": {
        "type": "boolean"
      },
      "referral": {
        "type": "string"
      },
      "note": {
        "type": "string"
      },
      "assumed": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "source": {
        "type": "string"
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
        "type": "number"
      },
      "to": {
        "type": "number"
      },
      "count": {
        "type": "number"
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
        }
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
        "description": "RFC 3339 instant."
      },
      "action": {
        "type": "string"
      },
      "keyId": {
        "type": "string"
      },
      "keyName": {
        "type": "string",
        "description": "Whose key it was, as the key is called."
      },
      "requestId": {
        "type": "string"
      },
      "before": {},
      "after": {}
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
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "number"
      },
      "sagMm": {
        "type": "number"
      },
      "allowedSagMm": {
        "type": "number"
      },
      "stressMPa": {
        "type": "number"
      },
      "allowedStressMPa": {
        "type": "number"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "passes"
        ]
      },
      "props": {
        "type": "object",
        "properties": {
          "needed": {
            "type": "boolean"
          },
          "spacingMm": {
            "type": "number"
          },
          "count": {
            "type": "number"
          },
          "lines": {
            "type": "number"
          },
          "why": {
            "type": "string"
          }
        },
        "required": [
          "needed",
          "why"
        ]
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "prior": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "improvement": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "wear": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "deductible": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "payable": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "basis": {
        "type": "string"
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
        "type": "string"
      },
      "timeZone": {
        "type": "string"
      },
      "tasks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlannedTask"
        }
      },
      "criticalChain": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "finish": {
        "type": "object",
        "properties": {
          "early": {
            "type": "string"
          },
          "likely": {
            "type": "string"
          },
          "late": {
            "type": "string"
          }
        },
        "required": [
          "early",
          "likely",
          "late"
        ]
      },
      "plannedFinish": {
        "type": "string",
        "description": "Of the one walk that the tasks show, by mean hours and waits, without chance."
      },
      "planned": {
        "type": "object",
        "properties": {
          "workingDays": {
            "type": "number"
          },
          "calendarDays": {
            "type": "number"
          }
        },
        "required": [
          "workingDays",
          "calendarDays"
        ]
      },
      "calendarDays": {
        "$ref": "#/components/schemas/DayRange"
      },
      "workingDays": {
        "$ref": "#/components/schemas/DayRange",
        "description": "Days on which the crew works."
      },
      "labourH": {
        "$ref": "#/components/schemas/ThreePoint"
      },
      "milestones": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/CalendarMilestone"
        }
      },
      "simulation": {
        "type": "object",
        "properties": {
          "seed": {
            "type": "number"
          },
          "runs": {
            "type": "number"
          },
          "distribution": {
            "type": "string"
          }
        },
        "required": [
          "seed",
          "runs",
          "distribution"
        ]
      },
      "today": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/TodayItem"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        ]
      },
      "hoursTogether": {
        "type": "number"
      },
      "hoursApart": {
        "type": "number"
      },
      "bridgeMm": {
        "type": "number"
      },
      "neededBridgeMm": {
        "type": "number"
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
        }
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
        "type": "string"
      },
      "organisationId": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        "type": "string"
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
        }
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` to read on; absent on the last page."
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
        "type": "number"
      },
      "material": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "turnDeg": {
        "type": "number"
      },
      "thicknessMm": {
        "type": "number"
      },
      "beyondOpeningMm": {
        "type": "number",
        "description": "How far its edge lies outside the opening."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        }
      },
      "areaM2": {
        "$ref": "#/components/schemas/Figure"
      },
      "pieces": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RollPiece"
        }
      },
      "rollWidthMm": {
        "type": "number"
      },
      "rollLengthM": {
        "type": "number"
      },
      "overlapAreaM2": {
        "type": "number"
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure"
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
  "LaminateAssumption": {
    "type": "object",
    "description": "A default that was taken because the request did not say.",
    "properties": {
      "at": {
        "type": "string",
        "description": "JSON Pointer of the field that would replace it."
      },
      "meaning": {
        "type": "string"
      },
      "value": {
        "type": "string",
        "description": "What was taken, as a person reads it."
      },
      "because": {
        "type": "string"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      }
    },
    "required": [
      "at",
      "meaning",
      "value",
      "because",
      "cite"
    ]
  },
  "LaminateMissing": {
    "type": "object",
    "properties": {
      "reports": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ConstraintReport"
        }
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
        }
      },
      "examined": {
        "type": "number"
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
        }
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
        ]
      },
      "taperRatio": {
        "type": "number"
      },
      "taperWidthMm": {
        "type": "number"
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PlyLine"
        }
      },
      "totalThicknessMm": {
        "type": "number"
      },
      "oldThicknessMm": {
        "type": "number"
      },
      "glassKg": {
        "type": "number"
      },
      "resinKg": {
        "type": "number"
      },
      "alternatives": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "rank": {
              "type": "number"
            },
            "plies": {
              "type": "array",
              "items": {
                "type": "string"
              }
            },
            "thicknessMm": {
              "type": "number"
            },
            "costPerM2": {
              "type": "string"
            },
            "reason": {
              "type": "string"
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
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "remedy": {
        "type": "string"
      },
      "verify": {
        "type": "string",
        "description": "What is measured again, and the value that passes."
      },
      "isRemedied": {
        "type": "boolean"
      },
      "text": {
        "type": "string"
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
        "type": "string"
      },
      "problems": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Problem"
        }
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
        ]
      },
      "because": {
        "type": "string"
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
      "quantity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "worth": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "At the least price of the goods bought."
      },
      "keepsMonths": {
        "type": "number"
      },
      "material": {
        "type": "string"
      },
      "part": {
        "type": "string",
        "description": "Hardener code of a resin system."
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ]
      },
      "rollWidthMm": {
        "type": "number"
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
    "properties": {
      "code": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "change": {
        "type": "string",
        "enum": [
          "added",
          "changed",
          "removed",
          "same"
        ]
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "unit": {
        "type": "string"
      },
      "quantityBefore": {
        "type": "string"
      },
      "quantityAfter": {
        "type": "string"
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
    "properties": {
      "ageYears": {
        "type": "number"
      },
      "percent": {
        "type": "string"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "remaining": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "sku": {
        "type": "string"
      },
      "packCount": {
        "type": "number"
      },
      "then": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "now": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Absent where the pack is not on the list any more."
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "supplier": {
        "type": "string"
      },
      "count": {
        "type": "number"
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
        "type": "number"
      },
      "waste": {
        "type": "number",
        "description": "Wasted on top of the net quantity."
      },
      "required": {
        "type": "number"
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
        "type": "string"
      },
      "code": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "pressureKPa": {
        "type": "number"
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
        "type": "string"
      },
      "mediaType": {
        "type": "string",
        "enum": [
          "image/png"
        ]
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
        "type": "string"
      },
      "status": {
        "type": "string",
        "enum": [
          "done",
          "failed",
          "running",
          "waiting"
        ]
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instants, as all others here."
      },
      "startedAt": {
        "type": "string"
      },
      "finishedAt": {
        "type": "string"
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
        "maxItems": 2
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
        "type": "number"
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
        "$ref": "#/components/schemas/Datum"
      },
      "corners": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MarkedCorner"
        }
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SawLine"
        }
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
    "properties": {
      "resin": {
        "type": "string"
      },
      "resinKg": {
        "type": "number"
      },
      "hardeners": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "hardener": {
              "type": "string"
            },
            "boughtKg": {
              "type": "number"
            },
            "curesKg": {
              "type": "number"
            }
          },
          "required": [
            "hardener",
            "boughtKg",
            "curesKg"
          ]
        }
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
        "type": "string"
      },
      "part": {
        "type": "string",
        "description": "Hardener code of a resin system."
      },
      "thicknessMm": {
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
      },
      "sheet": {
        "type": "object",
        "properties": {
          "lengthMm": {
            "type": "number"
          },
          "widthMm": {
            "type": "number"
          }
        },
        "required": [
          "lengthMm",
          "widthMm"
        ]
      },
      "rollWidthMm": {
        "type": "number"
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
        ]
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
        "maxItems": 2
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
        "$ref": "#/components/schemas/RungNamed"
      },
      "runnerUp": {
        "$ref": "#/components/schemas/RungNamed"
      },
      "rungs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungSection"
        }
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
            "type": "string"
          },
          "title": {
            "type": "string"
          },
          "because": {
            "type": "string"
          },
          "isNamedInRecord": {
            "type": "boolean"
          }
        },
        "required": [
          "rung",
          "title",
          "because",
          "isNamedInRecord"
        ]
      },
      "recommended": {
        "$ref": "#/components/schemas/RungNamed"
      },
      "runnerUp": {
        "$ref": "#/components/schemas/RungNamed"
      },
      "rungs": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungSection"
        }
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
        ]
      },
      "title": {
        "type": "string"
      },
      "ageH": {
        "type": "number"
      },
      "likelyH": {
        "type": "number"
      },
      "earlyH": {
        "type": "number"
      },
      "lateH": {
        "type": "number"
      },
      "at": {
        "type": "string"
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
        "type": "string"
      },
      "currency": {
        "type": "string"
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
        }
      },
      "solidFills": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SolidFill"
        },
        "description": "Places that take no core. Never under or over a piece."
      },
      "division": {
        "$ref": "#/components/schemas/MosaicDivision"
      },
      "netAreaM2": {
        "type": "number"
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
        "type": "number"
      },
      "jointLengthM": {
        "type": "number"
      },
      "jointOnSupportM": {
        "type": "number",
        "description": "Length of joint that runs along a support in spite of everything."
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MosaicFinding"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        }
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
        "description": "Largest pieces first."
      },
      "words": {
        "type": "string"
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
        ]
      },
      "opening": {
        "type": "string",
        "description": "The opening it is about; absent when it is about all of them."
      },
      "words": {
        "type": "string"
      }
    },
    "required": [
      "code",
      "words"
    ]
  },
  "NamedValue": {
    "type": "object",
    "properties": {
      "code": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "value": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "note": {
        "type": "string"
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
        "type": "string"
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
        }
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
        "type": "string"
      },
      "organisationId": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        "type": "string"
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
        "$ref": "#/components/schemas/NewKey"
      },
      "id": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        "type": "string"
      },
      "url": {
        "type": "string"
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
        }
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        ]
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
      },
      "chance": {
        "type": "number",
        "description": "Chance of bad core there, as far as is known."
      },
      "minutes": {
        "type": "number"
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
        "description": "Best first."
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
            "type": "number"
          },
          "after": {
            "type": "number"
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
        }
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
        "$ref": "#/components/schemas/EstimateFinding"
      },
      "readings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NextReading"
        },
        "description": "Best first."
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
            "type": "number"
          },
          "after": {
            "type": "number"
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
        }
      },
      "areaM2": {
        "type": "number"
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
        "$ref": "#/components/schemas/StageZero"
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
                "fitting-large",
                "fitting-small",
                "hole",
                "opened-m2",
                "visit"
              ]
            },
            "what": {
              "type": "string"
            },
            "unit": {
              "type": "string"
            },
            "quantity": {
              "type": "number",
              "description": "In this estimate."
            },
            "rate": {
              "$ref": "#/components/schemas/MoneyJson"
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
            "type": "number"
          },
          "labourH": {
            "type": "number"
          },
          "basis": {
            "type": "string"
          }
        },
        "required": [
          "percent",
          "labourH",
          "basis"
        ]
      },
      "holdPoint": {
        "type": "string"
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
        "type": "number"
      },
      "alongNPerMm": {
        "type": "number"
      },
      "acrossNPerMm": {
        "type": "number"
      },
      "shearNPerMm": {
        "type": "number"
      },
      "strengthNPerMm": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "In the order tension along, compression along, tension across, compression across."
      },
      "isGuessed": {
        "type": "boolean"
      },
      "alongLowNPerMm": {
        "type": "number",
        "description": "Where guessed: stiffness along of the weakest and the strongest likely build."
      },
      "alongHighNPerMm": {
        "type": "number"
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
        "type": "number"
      },
      "linearClampSagMm": {
        "type": "number",
        "description": "Plate bending alone."
      },
      "personSagMm": {
        "type": "number"
      },
      "personStressMPa": {
        "type": "number",
        "description": "Plate bending alone: an upper bound where the sag is large."
      },
      "usableStressMPa": {
        "type": "number"
      },
      "isLargeDeflection": {
        "type": "boolean",
        "description": "Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges."
      },
      "propsNeeded": {
        "type": "boolean"
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
        }
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
        "type": "string"
      },
      "area": {
        "$ref": "#/components/schemas/Area"
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
        "type": "number"
      },
      "areaM2": {
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
      },
      "cutDepthMm": {
        "type": "number",
        "description": "Absent when no depth is safe; a finding says why."
      },
      "undercut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        }
      },
      "undercutAreaM2": {
        "type": "number"
      },
      "coreStays": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        },
        "description": "Sound core in the opening that is left where it is."
      },
      "coreStaysAreaM2": {
        "type": "number"
      },
      "taperBand": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        }
      },
      "reason": {
        "type": "string"
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
        "type": "number"
      },
      "openedAreaM2": {
        "type": "number"
      },
      "retained": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Skin that stays: with the openings it is the whole panel."
      },
      "retainedAreaM2": {
        "type": "number"
      },
      "undercutAreaM2": {
        "type": "number"
      },
      "taperBandAreaM2": {
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
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
        "type": "number"
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
        }
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ExtentFinding"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Figure"
        },
        "description": "Defaults that were used, each with its reason and source."
      },
      "figures": {
        "$ref": "#/components/schemas/PlanFigures"
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
      "type": {
        "type": "string",
        "enum": [
          "operation.done"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/OperationNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
    ]
  },
  "OperationNamed": {
    "type": "object",
    "properties": {
      "id": {
        "type": "string"
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
        ]
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "status": {
        "type": "number"
      },
      "detail": {
        "type": "string"
      },
      "errors": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ShownProblem"
        },
        "description": "What must be put right, each with its place in the request that was accepted."
      },
      "errorCount": {
        "type": "number"
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
        "type": "string"
      },
      "mediaType": {
        "type": "string"
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
      "type": {
        "type": "string",
        "enum": [
          "order.made"
        ]
      },
      "data": {
        "$ref": "#/components/schemas/OrderNamed",
        "description": "Thin: what it names is fetched from its address."
      },
      "id": {
        "type": "string",
        "description": "The same at each attempt to deliver it."
      },
      "timestamp": {
        "type": "string",
        "description": "RFC 3339 instant at which it happened."
      }
    },
    "required": [
      "type",
      "data",
      "id",
      "timestamp"
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
    "properties": {
      "id": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        }
      },
      "logoDescription": {
        "type": "string"
      },
      "logo": {
        "$ref": "#/components/schemas/LogoLink"
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
        }
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` to read on; absent on the last page."
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
        ]
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
        }
      },
      "ratios": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Ratio"
        },
        "description": "As built over repaired: at least 1 means that the repair gives back what there was."
      },
      "opened": {
        "$ref": "#/components/schemas/OpenSkinAnswer"
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCheckItem"
        }
      },
      "loads": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LoadResult"
        }
      },
      "cautions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCaution"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "severity": {
        "type": "string",
        "enum": [
          "caution",
          "danger",
          "warning"
        ]
      },
      "text": {
        "type": "string"
      },
      "because": {
        "type": "string"
      },
      "source": {
        "type": "string"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "state": {
        "type": "string",
        "enum": [
          "as-built",
          "as-found",
          "opened",
          "repaired"
        ]
      },
      "load": {
        "type": "string"
      },
      "fitting": {
        "type": "string"
      },
      "demand": {
        "type": "number"
      },
      "capacity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
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
        ]
      },
      "governs": {
        "type": "string"
      },
      "remedy": {
        "type": "string",
        "description": "What would make it pass."
      },
      "source": {
        "type": "string"
      },
      "reason": {
        "type": "string"
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
        ]
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
        "maxItems": 2
      },
      "loads": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/NamedValue"
        }
      },
      "states": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelState"
        }
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
        }
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
        ]
      },
      "bendingXNmm": {
        "type": "number"
      },
      "bendingYNmm": {
        "type": "number"
      },
      "shearNPerMm": {
        "type": "number"
      },
      "deflections": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "load": {
              "type": "string"
            },
            "deflectionMm": {
              "type": "number"
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
        "type": "string"
      },
      "utilisation": {
        "type": "number"
      },
      "note": {
        "type": "string"
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "depreciation": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "remaining": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "description": "By number."
      }
    },
    "required": [
      "items"
    ]
  },
  "PlaceSection": {
    "type": "object",
    "properties": {
      "place": {
        "type": "string"
      },
      "badAreaM2": {
        "type": "number"
      },
      "rung": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "because": {
        "type": "string"
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
        "type": "string"
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
        "maxItems": 2
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
        "$ref": "#/components/schemas/Figure"
      },
      "retainedArea": {
        "$ref": "#/components/schemas/Figure"
      },
      "undercutArea": {
        "$ref": "#/components/schemas/Figure"
      },
      "taperBandArea": {
        "$ref": "#/components/schemas/Figure"
      },
      "cutLength": {
        "$ref": "#/components/schemas/Figure"
      },
      "splitLength": {
        "$ref": "#/components/schemas/Figure"
      },
      "taperWidth": {
        "$ref": "#/components/schemas/Figure"
      },
      "cutDepth": {
        "$ref": "#/components/schemas/Figure"
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
        "type": "number"
      },
      "stepIndex": {
        "type": "number"
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
        ]
      },
      "title": {
        "type": "string"
      },
      "resinG": {
        "type": "number"
      },
      "hardenerG": {
        "type": "number"
      },
      "fillerG": {
        "type": "number"
      },
      "filler": {
        "type": "string"
      },
      "mixedG": {
        "type": "number"
      },
      "mixedMl": {
        "type": "number"
      },
      "weigh": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Weighing"
        }
      },
      "pumps": {
        "type": "string"
      },
      "covers": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "spreadMin": {
        "type": "number"
      },
      "useWithinMin": {
        "type": "number"
      },
      "potLifeMin": {
        "type": "number"
      },
      "forgottenPotPeakC": {
        "type": "number"
      },
      "limitedBy": {
        "type": "string",
        "enum": [
          "exotherm",
          "piece",
          "pot-life",
          "pot-size",
          "whole-step"
        ]
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
        }
      },
      "cornerRadiusMm": {
        "type": "number"
      },
      "marking": {
        "$ref": "#/components/schemas/MarkingOut"
      },
      "areaM2": {
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
      },
      "cutDepthMm": {
        "type": "number"
      },
      "undercut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Bad core under skin that stays."
      },
      "undercutAreaM2": {
        "type": "number"
      },
      "undercutReachMm": {
        "type": "number"
      },
      "taperBand": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        }
      },
      "taperBandAreaM2": {
        "type": "number"
      },
      "skinPieces": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "label": {
              "type": "string"
            },
            "area": {
              "type": "array",
              "items": {
                "$ref": "#/components/schemas/Polygon"
              }
            },
            "areaM2": {
              "type": "number"
            }
          },
          "required": [
            "label",
            "area",
            "areaM2"
          ]
        }
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
        }
      },
      "joins": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Join"
        }
      },
      "form": {
        "type": "string",
        "enum": [
          "hull",
          "octagon",
          "outline",
          "rectangle"
        ]
      },
      "reason": {
        "type": "string"
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
        "type": "string"
      },
      "operation": {
        "type": "string",
        "description": "Code of the operation it is a cycle of, or its own."
      },
      "title": {
        "type": "string"
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
        ]
      },
      "skill": {
        "type": "string",
        "enum": [
          "finisher",
          "general",
          "laminator",
          "rigger"
        ]
      },
      "gate": {
        "type": "string",
        "enum": [
          "coating",
          "dry-deck",
          "none",
          "resin"
        ]
      },
      "startAt": {
        "type": "string"
      },
      "endAt": {
        "type": "string"
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
        "type": "number"
      },
      "labourH": {
        "type": "number"
      },
      "hands": {
        "type": "number",
        "description": "How many work on it at once."
      },
      "waitH": {
        "type": "number"
      },
      "waitKind": {
        "type": "string",
        "enum": [
          "cure",
          "drying",
          "elapsed",
          "hold",
          "none"
        ]
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
        "type": "string"
      },
      "isHoldPoint": {
        "type": "boolean"
      },
      "after": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        ]
      },
      "condition": {
        "type": "string",
        "enum": [
          "damp-sound",
          "debonded-dry",
          "dry-sound",
          "rotten",
          "wet-bonded"
        ]
      },
      "moisturePercent": {
        "type": "number"
      },
      "outerSkinMm": {
        "type": "number"
      },
      "innerSkinMm": {
        "type": "number"
      },
      "coreMm": {
        "type": "number"
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
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
        "type": "number"
      },
      "material": {
        "type": "string"
      },
      "materialName": {
        "type": "string"
      },
      "thicknessMm": {
        "type": "number"
      },
      "areaM2": {
        "type": "number"
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Area"
        }
      },
      "widthMm": {
        "type": "number"
      },
      "rollLengthM": {
        "type": "number"
      },
      "rollWidthMm": {
        "type": "number"
      },
      "glassKg": {
        "type": "number"
      },
      "resinKg": {
        "type": "number"
      },
      "orientationDeg": {
        "type": "number"
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
      }
    },
    "required": [
      "outer",
      "holes"
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
        ]
      },
      "availableKPa": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ]
      },
      "restsOn": {
        "type": "string"
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
        "type": "string"
      },
      "quantities": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PressQuantity"
        }
      },
      "reasons": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "refusals": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
    "properties": {
      "code": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "value": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "note": {
        "type": "string"
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
        ]
      },
      "sentence": {
        "type": "string"
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
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
      },
      "plyCount": {
        "type": "number"
      },
      "mixedResinL": {
        "type": "number"
      },
      "labourLikelyH": {
        "type": "number",
        "description": "Sum of the labour lines: each at its likely hours."
      },
      "labourH": {
        "$ref": "#/components/schemas/Range"
      },
      "workingDays": {
        "$ref": "#/components/schemas/Range"
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range"
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
        "type": "string"
      },
      "reason": {
        "type": "string"
      },
      "area": {
        "$ref": "#/components/schemas/Area"
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
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
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
        "type": "string"
      },
      "percent": {
        "type": "string"
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
        "$ref": "#/components/schemas/CostRollUp"
      },
      "risk": {
        "$ref": "#/components/schemas/CostRisk"
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
        "type": "number"
      },
      "areas": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        },
        "description": "Where core is bad with at least this probability."
      },
      "areaM2": {
        "type": "number"
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
        "type": "number"
      },
      "rangeMm": {
        "type": "number",
        "description": "Distance over which the readings suggest that the damage hangs together."
      },
      "hammer": {
        "type": "object",
        "properties": {
          "falseAlarmShare": {
            "type": "number"
          },
          "missedShare": {
            "type": "number"
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
            "type": "number"
          },
          "overBadShare": {
            "type": "number"
          },
          "sdShare": {
            "type": "number"
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
              "maxItems": 2
            },
            "chance": {
              "type": "number"
            }
          },
          "required": [
            "at",
            "chance"
          ]
        }
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
        ]
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
        }
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
            "type": "string"
          },
          "name": {
            "type": "string"
          },
          "hardener": {
            "type": "string"
          },
          "hardenerName": {
            "type": "string"
          },
          "why": {
            "type": "string"
          }
        },
        "required": [
          "code",
          "name",
          "hardener",
          "hardenerName",
          "why"
        ]
      },
      "demands": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/ResinStep"
        }
      },
      "batches": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BatchCard"
        }
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
        }
      },
      "gates": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "step": {
              "type": "string"
            },
            "requires": {
              "type": "array",
              "items": {
                "type": "string"
              }
            }
          },
          "required": [
            "step",
            "requires"
          ]
        }
      },
      "weather": {
        "$ref": "#/components/schemas/WeatherSection",
        "description": "When each step may start; only with a forecast. Without one the gates say what to require."
      },
      "calendar": {
        "$ref": "#/components/schemas/CalendarSection"
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
  "ProvenanceStamp": {
    "type": "object",
    "properties": {
      "engineVersion": {
        "type": "string"
      },
      "edition": {
        "type": "string"
      },
      "catalogueHash": {
        "type": "string"
      },
      "priceList": {
        "type": "string"
      },
      "labourRates": {
        "type": "string"
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "quantity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "unitPrice": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "basis": {
        "type": "string"
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
        "type": "string"
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
        "type": "string"
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
        "type": "string"
      },
      "organisationId": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        "type": "string"
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
        }
      },
      "nextCursor": {
        "type": "string",
        "description": "Give it as `cursor` to read on; absent on the last page."
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
        "type": "number"
      },
      "p50": {
        "type": "number"
      },
      "p90": {
        "type": "number"
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
  },
  "Range": {
    "type": "object",
    "description": "Three points of one uncertain number.",
    "properties": {
      "p10": {
        "type": "number"
      },
      "p50": {
        "type": "number"
      },
      "p90": {
        "type": "number"
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
        "type": "string"
      },
      "code": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "load": {
        "type": "string"
      },
      "ratio": {
        "type": "number"
      },
      "asBuiltUtilisation": {
        "type": "number",
        "description": "Share of what is allowed that the deck as built used, and that the repair uses."
      },
      "repairedUtilisation": {
        "type": "number"
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
        }
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
        "type": "number"
      },
      "expectedH": {
        "type": "number"
      },
      "isWithinAuthorisation": {
        "type": "boolean"
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
        "type": "string"
      },
      "what": {
        "type": "string"
      },
      "unit": {
        "type": "string"
      },
      "quantityAgreed": {
        "type": "string"
      },
      "quantityFound": {
        "type": "string"
      },
      "rate": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "before": {
        "type": "string"
      },
      "look": {
        "type": "string"
      },
      "accept": {
        "type": "string"
      },
      "by": {
        "type": "string"
      },
      "source": {
        "type": "string"
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
        "$ref": "#/components/schemas/Figure"
      },
      "taperAreaM2": {
        "type": "number"
      },
      "order": {
        "type": "string",
        "enum": [
          "largest-first",
          "smallest-first"
        ]
      },
      "consequences": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LaidOutPly"
        }
      },
      "stages": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Stage"
        }
      },
      "glassKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "resinKg": {
        "$ref": "#/components/schemas/Figure"
      },
      "largestPlyM2": {
        "type": "number"
      },
      "room": {
        "$ref": "#/components/schemas/RoomCheck"
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LaminateAssumption"
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
            "type": "string"
          },
          "edition": {
            "type": "string"
          },
          "catalogueHash": {
            "type": "string"
          }
        },
        "required": [
          "engineVersion",
          "edition",
          "catalogueHash"
        ]
      },
      "engineVersionNow": {
        "type": "string"
      },
      "isSameCatalogue": {
        "type": "boolean",
        "description": "False when the edition's content is no longer the one that was used."
      },
      "totalThen": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "totalNow": {
        "$ref": "#/components/schemas/MoneyJson"
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
        ]
      },
      "text": {
        "type": "string"
      },
      "limit": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
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
        "type": "string"
      },
      "hardener": {
        "type": "string"
      },
      "partsByMass": {
        "type": "number"
      },
      "partsByVolume": {
        "type": "number"
      },
      "mixedDensityGPerCm3": {
        "type": "number"
      },
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StepDemand"
        }
      },
      "totals": {
        "type": "object",
        "properties": {
          "netL": {
            "type": "number"
          },
          "wasteL": {
            "type": "number"
          },
          "totalL": {
            "type": "number"
          },
          "resinG": {
            "type": "number"
          },
          "hardenerG": {
            "type": "number"
          },
          "fillers": {
            "type": "array",
            "items": {
              "type": "object",
              "properties": {
                "filler": {
                  "type": "string"
                },
                "massG": {
                  "type": "number"
                }
              },
              "required": [
                "filler",
                "massG"
              ]
            }
          }
        },
        "required": [
          "netL",
          "wasteL",
          "totalL",
          "resinG",
          "hardenerG",
          "fillers"
        ]
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "netL": {
        "type": "number"
      },
      "wasteL": {
        "type": "number"
      },
      "totalL": {
        "type": "number"
      },
      "totalKg": {
        "type": "number"
      },
      "fillerKg": {
        "type": "number"
      },
      "filler": {
        "type": "string"
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
        "type": "string"
      },
      "working": {
        "type": "string",
        "enum": [
          "inner-skin-alone",
          "sandwich",
          "separate-skins"
        ]
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
        "maxItems": 2
      },
      "greatestMomentXN": {
        "type": "number"
      },
      "greatestMomentYN": {
        "type": "number"
      },
      "greatestShearNPerMm": {
        "type": "number"
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
        }
      }
    },
    "required": [
      "items"
    ]
  },
  "RevisionMark": {
    "type": "object",
    "properties": {
      "rootId": {
        "type": "string",
        "description": "The first estimate of this line of revisions."
      },
      "number": {
        "type": "number",
        "description": "0 for the first."
      },
      "reason": {
        "type": "string"
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
        "type": "string"
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
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "usedWidthMm": {
        "type": "number",
        "description": "What it takes of the width of the roll."
      },
      "outline": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Polygon"
        }
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
        "type": "number"
      },
      "widthMm": {
        "type": "number"
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
        ]
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "not-established",
          "passes"
        ]
      },
      "outsideM2": {
        "type": "number"
      },
      "words": {
        "type": "string"
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
    "properties": {
      "rung": {
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "because": {
        "type": "string"
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
    "properties": {
      "code": {
        "type": "string"
      },
      "text": {
        "type": "string"
      },
      "value": {
        "type": "number"
      },
      "limit": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "source": {
        "type": "string"
      },
      "wouldFit": {
        "type": "string"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fit",
          "fit-with-conditions",
          "unfit"
        ]
      },
      "deciding": {
        "$ref": "#/components/schemas/RungReason"
      },
      "conditions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/RungReason"
        }
      },
      "leavesUndone": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "stages": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "$ref": "#/components/schemas/Range"
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range"
      },
      "priceRange": {
        "$ref": "#/components/schemas/EstimateMoneyRange"
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
        "maxItems": 2
      },
      "to": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
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
        "type": "number"
      },
      "plies": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SchedulePly"
        },
        "description": "From the core outwards."
      },
      "thicknessMm": {
        "$ref": "#/components/schemas/Figure"
      },
      "glassGPerM2": {
        "$ref": "#/components/schemas/Figure"
      },
      "resinGPerM2": {
        "$ref": "#/components/schemas/Figure"
      },
      "stiffnessAlongNPerMm": {
        "$ref": "#/components/schemas/Figure"
      },
      "stiffnessAcrossNPerMm": {
        "$ref": "#/components/schemas/Figure"
      },
      "proudMm": {
        "type": "number",
        "description": "Above the old surface when positive."
      },
      "pricePerM2": {
        "type": "number"
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SkinCheck"
        }
      },
      "governs": {
        "type": "string"
      },
      "laminate": {
        "type": "object",
        "properties": {
          "aNPerMm": {
            "type": "array",
            "items": {
              "type": "number"
            }
          },
          "bN": {
            "type": "array",
            "items": {
              "type": "number"
            }
          },
          "dNmm": {
            "type": "array",
            "items": {
              "type": "number"
            }
          },
          "inPlane": {
            "type": "object",
            "properties": {
              "free": {
                "$ref": "#/components/schemas/EngineeringConstants"
              },
              "heldFlat": {
                "$ref": "#/components/schemas/EngineeringConstants"
              }
            },
            "required": [
              "free",
              "heldFlat"
            ]
          },
          "flexural": {
            "$ref": "#/components/schemas/EngineeringConstants"
          }
        },
        "required": [
          "aNPerMm",
          "bN",
          "dNmm",
          "inPlane",
          "flexural"
        ]
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
            ]
          },
          "difference": {
            "type": "number"
          },
          "words": {
            "type": "string"
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
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "turnDeg": {
        "type": "number"
      },
      "thicknessMm": {
        "type": "number"
      },
      "glassGPerM2": {
        "type": "number"
      },
      "resinGPerM2": {
        "type": "number"
      },
      "fibreMassFraction": {
        "type": "number"
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
        ]
      },
      "method": {
        "type": "string"
      },
      "rankedBy": {
        "type": "string",
        "enum": [
          "mass",
          "price"
        ]
      },
      "oldSkin": {
        "$ref": "#/components/schemas/OldSkinReport"
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
                "type": "number"
              },
              "tooThick": {
                "type": "number"
              },
              "outOfReach": {
                "type": "number"
              },
              "tooManyKinds": {
                "type": "number"
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
            ]
          }
        },
        "required": [
          "space",
          "examined",
          "cut",
          "isProvenBest"
        ]
      },
      "mostPlies": {
        "type": "number",
        "description": "As asked, or as many as have room for their steps in the taper."
      },
      "missing": {
        "$ref": "#/components/schemas/LaminateMissing"
      },
      "leftOut": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LeftOut"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/LaminateAssumption"
        }
      },
      "limits": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
            "type": "string"
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
          "areaM2": {
            "type": "number"
          }
        },
        "required": [
          "name",
          "outline",
          "holes",
          "areaM2"
        ]
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
      "damagedAreaM2": {
        "$ref": "#/components/schemas/Range"
      },
      "zones": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {
              "type": "string"
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
              }
            },
            "areaM2": {
              "type": "number"
            },
            "condition": {
              "type": "string"
            }
          },
          "required": [
            "id",
            "outline",
            "areaM2",
            "condition"
          ]
        }
      },
      "contours": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "probability": {
              "type": "number"
            },
            "areas": {
              "type": "array",
              "items": {
                "$ref": "#/components/schemas/Area"
              }
            },
            "areaM2": {
              "type": "number"
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
        }
      },
      "openedAreaM2": {
        "type": "number"
      },
      "coreOutAreaM2": {
        "type": "number",
        "description": "Of the opening, where core comes out; and sound core that is left where it is."
      },
      "coreStaysAreaM2": {
        "type": "number"
      },
      "retainedAreaM2": {
        "type": "number"
      },
      "undercutAreaM2": {
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
      },
      "taperBandM2": {
        "type": "number"
      },
      "fittings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/FittingScope"
        }
      },
      "findings": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/EstimateFinding"
        }
      },
      "method": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "choice": {
              "type": "string"
            },
            "value": {
              "type": "string"
            },
            "reason": {
              "type": "string"
            }
          },
          "required": [
            "choice",
            "value",
            "reason"
          ]
        }
      },
      "included": {
        "type": "array",
        "items": {
          "type": "string"
        }
      },
      "excluded": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "$ref": "#/components/schemas/MoneyJson"
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "lines": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/BasketLine"
        }
      },
      "orders": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/SupplierOrder"
        }
      },
      "substitutions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Substitution"
        }
      },
      "leftovers": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Leftover"
        }
      },
      "coverage": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Coverage"
        }
      },
      "matched": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/MatchedResin"
        }
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
        "type": "number"
      },
      "bendingYNmm": {
        "type": "number"
      },
      "shearNPerMm": {
        "type": "number"
      },
      "membraneXNPerMm": {
        "type": "number"
      },
      "membraneYNPerMm": {
        "type": "number"
      },
      "leverMm": {
        "type": "number"
      },
      "thinSkinError": {
        "type": "number",
        "description": "How far the thin-skin engineering form is from the exact section."
      },
      "isThinSkinFair": {
        "type": "boolean"
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
        ]
      },
      "title": {
        "type": "string"
      },
      "lineCount": {
        "type": "number"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "since": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        }
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
        }
      },
      "cost": {
        "type": "number"
      },
      "sheetAreaM2": {
        "type": "number"
      },
      "pieceAreaM2": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
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
        "type": "number"
      },
      "piecesMm2": {
        "type": "number"
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
        "type": "string"
      },
      "parameter": {
        "type": "string"
      },
      "header": {
        "type": "string"
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "detail": {
        "type": "string"
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
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "unit": {
        "type": "string"
      },
      "demand": {
        "type": "number"
      },
      "capacity": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
      },
      "verdict": {
        "type": "string",
        "enum": [
          "fails",
          "passes"
        ]
      },
      "cite": {
        "$ref": "#/components/schemas/Cite"
      },
      "toPass": {
        "type": "string"
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
        "type": "string"
      },
      "kind": {
        "type": "string",
        "enum": [
          "high-density-strip",
          "paste",
          "solid-laminate"
        ]
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
      "areaM2": {
        "type": "number"
      },
      "depthMm": {
        "type": "number"
      },
      "volumeL": {
        "type": "number"
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
        "type": "boolean"
      },
      "because": {
        "type": "string",
        "enum": [
          "asked",
          "narrow",
          "no-way-in",
          "shallow-lip"
        ]
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
        ]
      },
      "sound": {
        "type": "string",
        "enum": [
          "dull",
          "sharp",
          "void"
        ]
      },
      "at": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "minItems": 2,
        "maxItems": 2
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
        ]
      },
      "governs": {
        "type": "string",
        "enum": [
          "flush",
          "low",
          "proud"
        ]
      },
      "beyondMm": {
        "type": "number",
        "description": "How far beyond what is allowed; 0 when it holds."
      },
      "words": {
        "type": "string"
      },
      "nextBest": {
        "$ref": "#/components/schemas/StackChoice"
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
        "description": "From the inner skin up."
      },
      "bondLineMm": {
        "type": "number"
      },
      "heightMm": {
        "type": "number"
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
        ]
      },
      "beyondMm": {
        "type": "number",
        "description": "How far beyond what is allowed; 0 when flush."
      },
      "words": {
        "type": "string"
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
        "type": "number"
      },
      "form": {
        "type": "string",
        "enum": [
          "plain",
          "scored"
        ]
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
        }
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
        "$ref": "#/components/schemas/Figure"
      },
      "wetLine": {
        "$ref": "#/components/schemas/Figure",
        "description": "Resin under plies laid wet on the core; 0 where the skin has a bed of its own."
      },
      "height": {
        "$ref": "#/components/schemas/Figure"
      },
      "flush": {
        "$ref": "#/components/schemas/Figure",
        "description": "Positive stands proud."
      },
      "check": {
        "$ref": "#/components/schemas/StackCheck"
      },
      "choices": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StackChoice"
        },
        "description": "All choices from the material's list, best first."
      },
      "camber": {
        "$ref": "#/components/schemas/CamberPlan"
      },
      "kerfResin": {
        "$ref": "#/components/schemas/Figure"
      },
      "bondResin": {
        "$ref": "#/components/schemas/Figure"
      },
      "newCoreMass": {
        "$ref": "#/components/schemas/Figure"
      },
      "oldCoreMass": {
        "$ref": "#/components/schemas/Figure"
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
        }
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
        "type": "number"
      },
      "plies": {
        "type": "array",
        "items": {
          "type": "number"
        },
        "description": "Places in the order of laying, from 1."
      },
      "thicknessMm": {
        "type": "number"
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
        "type": "string"
      },
      "amount": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Labour with its share of overhead and profit, before tax."
      },
      "labourH": {
        "type": "number"
      },
      "contingencyFreed": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "What of the contingency need not be set aside any more, once the extent is known; without tax."
      },
      "lines": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        ]
      },
      "section": {
        "$ref": "#/components/schemas/SectionResult"
      },
      "responses": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Response"
        }
      },
      "checks": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/PanelCheckItem"
        }
      },
      "governing": {
        "type": "object",
        "properties": {
          "code": {
            "type": "string"
          },
          "load": {
            "type": "string"
          },
          "utilisation": {
            "type": "number"
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
        "type": "number"
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
        ]
      },
      "title": {
        "type": "string"
      },
      "units": {
        "type": "number"
      },
      "netL": {
        "type": "number"
      },
      "wasteL": {
        "type": "number"
      },
      "totalL": {
        "type": "number"
      },
      "resinG": {
        "type": "number"
      },
      "hardenerG": {
        "type": "number"
      },
      "fillerG": {
        "type": "number"
      },
      "filler": {
        "type": "string"
      },
      "fillerPartsPerHundred": {
        "type": "number"
      },
      "totalKg": {
        "type": "number"
      },
      "densityGPerCm3": {
        "type": "number"
      },
      "why": {
        "type": "object",
        "properties": {
          "netL": {
            "$ref": "#/components/schemas/Figure"
          },
          "mixedG": {
            "$ref": "#/components/schemas/Figure"
          }
        },
        "required": [
          "netL",
          "mixedG"
        ]
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "requires": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Requirement"
        }
      },
      "windows": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WorkWindow"
        }
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
              ]
            },
            "hours": {
              "type": "number"
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
        "type": "string"
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
        "type": "string"
      },
      "packs": {
        "type": "number",
        "description": "Whole packs."
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
        "description": "Code of the price list."
      },
      "items": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/StockCount"
        }
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
        "type": "string"
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
      },
      "revision": {
        "$ref": "#/components/schemas/RevisionMark"
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
        "description": "RFC 3339 instant."
      },
      "estimate": {
        "$ref": "#/components/schemas/Estimate"
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
        "type": "number"
      },
      "widthMm": {
        "type": "number"
      },
      "placements": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/Placement"
        }
      },
      "pieceAreaM2": {
        "type": "number"
      },
      "stripAreaM2": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
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
        "type": "number"
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
    "properties": {
      "insteadOf": {
        "$ref": "#/components/schemas/MaterialVariant"
      },
      "use": {
        "$ref": "#/components/schemas/MaterialVariant"
      },
      "quantity": {
        "type": "number"
      },
      "unit": {
        "type": "string"
      },
      "penalty": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "reason": {
        "type": "string"
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
        "type": "number"
      },
      "cutLengthM": {
        "type": "number"
      },
      "coreSheets": {
        "type": "number"
      },
      "mixedResinL": {
        "type": "number"
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
        "$ref": "#/components/schemas/Range"
      },
      "calendarDays": {
        "$ref": "#/components/schemas/Range"
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "The price with tax: base and what will probably be found besides."
      },
      "totalRange": {
        "$ref": "#/components/schemas/EstimateMoneyRange"
      },
      "totalWithContingency": {
        "$ref": "#/components/schemas/MoneyJson",
        "description": "Beside the price, with tax."
      },
      "insurer": {
        "type": "object",
        "properties": {
          "attributable": {
            "$ref": "#/components/schemas/MoneyJson"
          },
          "prior": {
            "$ref": "#/components/schemas/MoneyJson"
          },
          "improvement": {
            "$ref": "#/components/schemas/MoneyJson"
          }
        },
        "required": [
          "attributable",
          "prior",
          "improvement"
        ]
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
    "properties": {
      "supplier": {
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "goods": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "cutFees": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "delivery": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "isDeliveryFree": {
        "type": "boolean"
      },
      "hazardSurcharge": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "hazardBoxes": {
        "type": "number"
      },
      "oversizeFreight": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "total": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "massKg": {
        "type": "number"
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
          ]
        }
      },
      "meter": {
        "type": "object",
        "properties": {
          "dryReference": {
            "type": "number"
          },
          "wetReference": {
            "type": "number"
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
        "type": "number"
      },
      "likely": {
        "type": "number"
      },
      "high": {
        "type": "number"
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
    "properties": {
      "kind": {
        "type": "string",
        "enum": [
          "hold",
          "next",
          "wait",
          "work"
        ]
      },
      "task": {
        "type": "string"
      },
      "text": {
        "type": "string"
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
        "type": "string"
      },
      "name": {
        "type": "string"
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "overhead": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "profit": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
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
              ]
            },
            "name": {
              "type": "string"
            },
            "share": {
              "type": "number"
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
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
              ]
            },
            "contingency": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "saves": {
              "$ref": "#/components/schemas/MoneyJson"
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
              "type": "string"
            },
            "name": {
              "type": "string"
            },
            "percent": {
              "type": "string"
            },
            "base": {
              "$ref": "#/components/schemas/MoneyJson"
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "code",
            "name",
            "percent",
            "base",
            "amount"
          ]
        }
      },
      "tax": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "$ref": "#/components/schemas/MoneyJson"
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
              ]
            },
            "amount": {
              "$ref": "#/components/schemas/MoneyJson"
            }
          },
          "required": [
            "causeClass",
            "amount"
          ]
        }
      },
      "parts": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "labour": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "goods": {
        "$ref": "#/components/schemas/GoodsSums"
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
              "type": "string"
            },
            "shareOfVariance": {
              "type": "number"
            }
          },
          "required": [
            "name",
            "shareOfVariance"
          ]
        }
      },
      "insurer": {
        "$ref": "#/components/schemas/InsurerSplit"
      },
      "ownWork": {
        "type": "object",
        "properties": {
          "labourH": {
            "type": "number"
          },
          "aYardWouldAsk": {
            "$ref": "#/components/schemas/MoneyJson"
          },
          "basis": {
            "type": "string"
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
        "$ref": "#/components/schemas/Offer"
      },
      "p90RelativeError": {
        "type": "number",
        "description": "Half of the points against the other half, P90 over P90."
      },
      "samples": {
        "type": "number"
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
        "type": "string"
      },
      "estimateCount": {
        "type": "number"
      },
      "before": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "after": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "difference": {
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
      },
      "revisionNumber": {
        "type": "number"
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
        "$ref": "#/components/schemas/MoneyJson"
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
        "type": "string"
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
        }
      },
      "refused": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "code": {
              "type": "string"
            },
            "title": {
              "type": "string"
            },
            "rule": {
              "type": "string"
            },
            "why": {
              "type": "string"
            }
          },
          "required": [
            "code",
            "title",
            "rule",
            "why"
          ]
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "values": {
        "$ref": "#/components/schemas/VariantValues"
      },
      "net": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "gross": {
        "$ref": "#/components/schemas/MoneyJson"
      },
      "failsCheck": {
        "type": "boolean"
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
        "type": "string"
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
        "type": "number"
      },
      "days": {
        "type": "number",
        "description": "Working days."
      },
      "massKg": {
        "type": "number"
      },
      "utilisation": {
        "type": "number"
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
        "type": "string"
      },
      "dewPointC": {
        "type": "number"
      },
      "deckC": {
        "type": "number"
      },
      "dewMarginK": {
        "type": "number"
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
        }
      },
      "hours": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WeatherHour"
        }
      },
      "assumptions": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/AskingAssumption"
        }
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
        "type": "string"
      },
      "hours": {
        "type": "number"
      },
      "coldestDeckC": {
        "type": "number"
      },
      "warmestDeckC": {
        "type": "number"
      },
      "leastDewMarginK": {
        "type": "number"
      },
      "steps": {
        "type": "array",
        "items": {
          "$ref": "#/components/schemas/WeatherStepSection"
        }
      },
      "notes": {
        "type": "array",
        "items": {
          "type": "string"
        }
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
        "type": "string"
      },
      "title": {
        "type": "string"
      },
      "gate": {
        "type": "string",
        "enum": [
          "coating",
          "dry-deck",
          "resin"
        ]
      },
      "earliestAt": {
        "type": "string",
        "description": "What comes before is done then, by likely values."
      },
      "plannedAt": {
        "type": "string"
      },
      "plannedEndAt": {
        "type": "string"
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
        "type": "number"
      },
      "shutBy": {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "gate": {
              "type": "string"
            },
            "hours": {
              "type": "number"
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
        "type": "number"
      },
      "fromAt": {
        "type": "string"
      },
      "untilAt": {
        "type": "string",
        "description": "The end of the last hour in which it may be begun."
      },
      "hours": {
        "type": "number"
      },
      "leastDewMarginK": {
        "type": "number"
      },
      "meanDeckC": {
        "type": "number"
      },
      "limitedBy": {
        "type": "string"
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
        "type": "string"
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
        ]
      },
      "status": {
        "type": "string",
        "enum": [
          "delivered",
          "failed",
          "waiting"
        ]
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
        }
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
        "type": "string"
      },
      "url": {
        "type": "string"
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
        }
      },
      "createdAt": {
        "type": "string",
        "description": "RFC 3339 instant."
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
        }
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
        ]
      },
      "name": {
        "type": "string"
      },
      "addG": {
        "type": "number"
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
        "type": "string"
      },
      "figure": {
        "$ref": "#/components/schemas/Figure"
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
        "type": "string"
      },
      "isSurveyors": {
        "type": "boolean"
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
        "type": "number"
      },
      "fromAt": {
        "type": "string"
      },
      "untilAt": {
        "type": "string",
        "description": "The end of its last hour."
      },
      "startHours": {
        "type": "number"
      },
      "leastDewMarginK": {
        "type": "number"
      },
      "meanDeckC": {
        "type": "number"
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
        ]
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
