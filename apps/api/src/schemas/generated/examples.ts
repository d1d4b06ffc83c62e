// Recorded by test/contract/examples.spec.ts from a real run; do not edit.
import type { RecordedExamples } from '../recorded-examples.js';

export const recordedExamples: RecordedExamples = {
 "DELETE /v1/editions/{code}/publication": {
  "answers": {
   "200": {
    "code": "spring-2027",
    "state": "draft",
    "isShipped": false,
    "note": "Invented prices of a new season",
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "GET /health/live": {
  "answers": {
   "200": {
    "status": "alive"
   }
  }
 },
 "GET /health/ready": {
  "answers": {
   "200": {
    "status": "ready"
   }
  }
 },
 "GET /v1/audit": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000007",
      "after": {
       "expiresAt": "2027-03-04T08:00:00.000Z",
       "renewedBy": "01900000-0000-7000-8000-000000000006"
      },
      "subject": "key",
      "code": "01900000-0000-7000-8000-000000000004"
     }
    ]
   }
  }
 },
 "GET /v1/editions": {
  "answers": {
   "200": {
    "current": "shipped-663f56dd",
    "items": [
     {
      "code": "shipped-663f56dd",
      "state": "published",
      "isShipped": true,
      "note": "Shipped with the program",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "publishedAt": "2027-03-03T08:00:00.000Z",
      "contentHash": "663f56dd31a2e9211b367b575086c842c51e4de0423da049b47d33b9e35db513"
     }
    ]
   }
  }
 },
 "GET /v1/editions/{code}": {
  "answers": {
   "200": {
    "code": "spring-2027",
    "state": "draft",
    "isShipped": false,
    "note": "Invented prices of a new season",
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "GET /v1/editions/{code}/comparison": {
  "answers": {
   "200": {
    "before": "shipped-663f56dd",
    "after": "spring-2027",
    "isSame": false,
    "changes": [
     {
      "subject": "material",
      "code": "invented-copy",
      "change": "added",
      "fields": [],
      "fieldCount": 0
     }
    ]
   }
  }
 },
 "GET /v1/editions/{code}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "withdrawn",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000023",
      "before": {
       "effectiveAt": "2027-03-04T08:00:00.000Z"
      }
     }
    ]
   }
  }
 },
 "GET /v1/estimates": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000013",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "title": "Deck repair",
      "revision": {
       "rootId": "01900000-0000-7000-8000-000000000013",
       "number": 0
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalP10": {
       "amount": "3058.45",
       "currency": "USD"
      },
      "totalP90": {
       "amount": "4896.65",
       "currency": "USD"
      },
      "labourH": 31.7,
      "verdict": "restored",
      "engineVersion": "0.1.0",
      "edition": "shipped-663f56dd"
     }
    ]
   }
  }
 },
 "GET /v1/estimates/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000014",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "revision": {
     "rootId": "01900000-0000-7000-8000-000000000014",
     "number": 0
    },
    "inputHash": "5c96b807159772a74dffccfd9c60f9dbb23f05d7da97784f5e9aec3b4677f41b",
    "estimate": {
     "title": "Deck repair",
     "summary": {
      "openedAreaM2": 0.3276,
      "cutLengthM": 2.2712,
      "coreSheets": 1,
      "mixedResinL": 1.8053,
      "labourLikelyH": 26.23,
      "labourMeanH": 29.49,
      "labourH": {
       "p10": 23.22,
       "p50": 31.7,
       "p90": 43.6
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.33,
       "p90": 11
      },
      "calendarDays": {
       "p10": 19.53,
       "p50": 24.19,
       "p90": 29.54
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3058.45",
        "currency": "USD"
       },
       "p50": {
        "amount": "3813.14",
        "currency": "USD"
       },
       "p80": {
        "amount": "4490.21",
        "currency": "USD"
       },
       "p90": {
        "amount": "4896.65",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4490.21",
       "currency": "USD"
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3915.36",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       }
      },
      "verdict": "restored"
     },
     "methods": {
      "recommended": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
      },
      "runnerUp": {
       "rung": "above-old-skin",
       "title": "From above, the old skin bonded back",
       "because": "look for cracks and crazing first: a cracked skin is replaced"
      },
      "planned": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway",
       "isNamedInRecord": false
      },
      "rungs": [
       {
        "rung": "close-leak",
        "title": "Stop the leak alone",
        "verdict": "unfit",
        "deciding": {
         "code": "more-than-a-leak",
         "text": "what is to be mended here is more than the way in of the water: that is stopped beside the repair",
         "source": "COMMON-PRACTICE",
         "wouldFit": "a crack, an open joint, a hatch or a chainplate that leaks over dry, sound core"
        },
        "conditions": [],
        "leavesUndone": [
         "the place is faired, not painted: a painted or moulded deck is touched up beside it",
         "core farther away was not seen: sound it again after a season"
        ],
        "stages": [
         "clean to sound laminate",
         "grind or dig back",
         "close or seal"
        ],
        "isRough": true
       }
      ],
      "places": [
       {
        "place": "Z1",
        "badAreaM2": 0.176,
        "rung": "above-new-skin",
        "title": "From above, a new skin",
        "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
       }
      ]
     },
     "scope": {
      "panel": {
       "name": "Panel",
       "outline": [
        [
         0,
         0
        ],
        [
         2000,
         0
        ],
        [
         2000,
         900
        ]
       ],
       "holes": [],
       "areaM2": 1.8
      },
      "evidence": "sounded-and-metered",
      "damagedAreaM2": {
       "p10": 0.1143,
       "p50": 0.206,
       "p90": 0.3396
      },
      "zones": [
       {
        "id": "Z1",
        "outline": [
         [
          700,
          300
         ],
         [
          1250,
          300
         ],
         [
          1250,
          620
         ]
        ],
        "condition": "wet-rotten",
        "areaM2": 0.176
       }
      ],
      "contours": [],
      "openings": [
       {
        "label": "A",
        "area": {
         "outer": [
          [
           625,
           265
          ],
          [
           625.193,
           261.079
          ],
          [
           625.769,
           257.196
          ]
         ],
         "holes": []
        },
        "sawLine": [
         [
          625,
          225
         ],
         [
          1325,
          225
         ],
         [
          1325,
          695
         ]
        ],
        "cornerRadiusMm": 40,
        "areaM2": 0.3276,
        "cutLengthM": 2.2712,
        "cutDepthMm": 5,
        "undercut": [],
        "undercutAreaM2": 0,
        "coreStays": [
         {
          "outer": [
           [
            625,
            265
           ],
           [
            625.193,
            261.079
           ],
           [
            625.769,
            257.196
           ]
          ],
          "holes": [
           [
            [
             675,
             299.999
            ],
            [
             675,
             619.999
            ],
            [
             676.68,
             629.01
            ]
           ]
          ]
         }
        ],
        "coreStaysAreaM2": 0.1062,
        "taperBand": [
         {
          "outer": [
           [
            589,
            265
           ],
           [
            589.044,
            263.23
           ],
           [
            589.237,
            259.309
           ]
          ],
          "holes": [
           [
            [
             625,
             265
            ],
            [
             625,
             655
            ],
            [
             625.193,
             658.921
            ]
           ]
          ]
         }
        ],
        "reason": "a rectangle takes in zone Z1 at the least labour (9.7 h for 2.27 m of cut and 0.33 m2)"
       }
      ],
      "openedAreaM2": 0.3276,
      "coreOutAreaM2": 0.2214,
      "coreStaysAreaM2": 0.1062,
      "retainedAreaM2": 1.4724,
      "undercutAreaM2": 0,
      "cutLengthM": 2.2712,
      "taperBandM2": 0.0858,
      "fittings": [],
      "findings": [],
      "method": [
       {
        "choice": "Skin",
        "value": "relay",
        "reason": "it goes with the way that is planned: From above, a new skin"
       }
      ],
      "included": [
       "opening, removal of bad core, drying, new core, bonding and closing of the openings listed",
       "lining below the openings out and back",
       "finish of the panel"
      ],
      "excluded": [
       "damage found outside the openings listed",
       "structure under the deck, tanks, wiring beyond isolation",
       "mast out, rigging, sea trial"
      ]
     },
     "core": {
      "material": "core-balsa-150",
      "materialName": "End-grain balsa core, 150 kg/m3",
      "stack": [
       {
        "layer": "bond line 1",
        "thicknessMm": 0.89
       }
      ],
      "cavityMm": 13.7,
      "stackMm": 13.69,
      "flushMm": -0.01,
      "netAreaM2": 0.2195,
      "wasteAreaM2": 0.5247,
      "purchaseAreaM2": 0.7442,
      "wasteByCause": [
       {
        "cause": "kerf",
        "areaM2": 0.00201
       }
      ],
      "pieces": [
       {
        "label": "A1",
        "beddingOrder": 1,
        "opening": "A",
        "bay": 1,
        "outline": [
         [
          677.919,
          290.644
         ],
         [
          683.313,
          282.776
         ],
         [
          691.363,
          277.627
         ]
        ],
        "holes": [],
        "thicknessMm": 12.7,
        "areaM2": 0.2195,
        "isUnderLip": false,
        "bleedHoles": [
         [
          775,
          360
         ],
         [
          775,
          460
         ],
         [
          775,
          560
         ]
        ],
        "form": "plain",
        "layer": 1
       }
      ],
      "division": "1 piece of at most 0.45 m2: each place in one piece",
      "solidFills": [],
      "solidAreaM2": 0,
      "solidVolumeL": 0,
      "sheets": [
       {
        "label": "1",
        "lengthMm": 1220,
        "widthMm": 610,
        "thicknessMm": 12.7,
        "form": "plain",
        "isBought": true,
        "utilisation": 0.294974,
        "placed": [
         {
          "piece": "A1",
          "outline": [
           [
            1.92,
            14.645
           ],
           [
            7.314,
            6.777
           ],
           [
            15.364,
            1.628
           ]
          ],
          "holes": [],
          "turnDeg": 0,
          "cutOrder": 1
         }
        ],
        "offcutsKept": [
         [
          [
           600.001,
           0
          ],
          [
           1220,
           0
          ],
          [
           1220,
           610
          ]
         ],
         [
          [
           0,
           370.001
          ],
          [
           598.001,
           370.001
          ],
          [
           598.001,
           610
          ]
         ]
        ]
       }
      ],
      "kerfMm": 2,
      "utilisation": 0.294973,
      "massChangeKg": -0.0332,
      "notes": [
       "12.7 mm core on bond lines of 0.89 mm lies flush"
      ]
     },
     "laminate": {
      "method": "relay",
      "taperRatio": 12,
      "taperWidthMm": 36,
      "plies": [
       {
        "order": 1,
        "material": "reinforcement-biaxial-mat-655",
        "materialName": "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
        "thicknessMm": 1.05,
        "areaM2": 0.3567,
        "outline": [
         {
          "outer": [
           [
            612.431,
            265
           ],
           [
            612.446,
            264.382
           ],
           [
            612.639,
            260.461
           ]
          ],
          "holes": []
         }
        ],
        "rollLengthM": 0.7751,
        "rollWidthMm": 1270,
        "glassKg": 0.2336,
        "resinKg": 0.3534,
        "orientationDeg": 0
       }
      ],
      "totalThicknessMm": 3.07,
      "oldThicknessMm": 3,
      "glassKg": 0.8784,
      "resinKg": 1.0371,
      "alternatives": [
       {
        "rank": 2,
        "plies": [
         "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
         "Woven roving 600 g/m2",
         "Woven roving 600 g/m2"
        ],
        "thicknessMm": 3.07,
        "costPerM2": "64.71 USD/m2",
        "reason": "the cheapest that restores the skin and every measure of the panel; nearest to its limit: surface not below the limit"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 36215.56,
        "unit": "N/mm",
        "note": "old skin 32500 kN/m"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the rules of a classification society.",
       "each ply lands on the taper at its own depth, so it carries on the old ply that it replaces",
       "the last ply covers all the others and the whole taper: sanding it flush thins the longest one"
      ]
     },
     "panel": {
      "verdict": "restored",
      "shortfalls": [],
      "withinHands": [],
      "sizeMm": [
       2000,
       900
      ],
      "loads": [
       {
        "code": "class-deck",
        "name": "Weather deck pressure of a class rule",
        "value": 7,
        "unit": "kPa"
       }
      ],
      "states": [
       {
        "state": "as-built",
        "bendingXNmm": 3196744.26,
        "bendingYNmm": 3196744.26,
        "shearNPerMm": 2346.78,
        "deflections": [
         {
          "load": "class-deck",
          "deflectionMm": 17.18
         }
        ],
        "governs": "deflection, deck load of a class rule",
        "utilisation": 1.9089
       }
      ],
      "ratios": [
       {
        "code": "outer-skin-class-deck",
        "name": "Stress in the outer skin, deck load of a class rule",
        "value": 1.38884,
        "unit": "1"
       }
      ],
      "limits": [
       "The panel is a flat rectangle on four edges that do not sink; camber, hatches and uneven supports are left out.",
       "Small deflections and elastic layers; fatigue, impact, moisture, heat and buckling of the whole panel under in-plane load are left out.",
       "Stresses are direct stresses in x and y; twisting at the corners is left out."
      ]
     },
     "leftOut": [],
     "hardware": [],
     "leak": {
      "cause": "not-known",
      "title": "Not known",
      "remedy": "hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew",
      "verify": "the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing",
      "isRemedied": false,
      "text": "The way in of the water is not stopped in this plan, and the repair will not last until it is: hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing."
     },
     "checks": [
      {
       "code": "core-flush",
       "title": "New core and bond lines in the cavity",
       "state": "repaired",
       "unit": "mm",
       "demand": -0.01,
       "verdict": "passes",
       "governs": "12.7 mm core on bond lines of 0.89 mm lies flush",
       "source": "DECK-REPAIR-PRACTICE",
       "remedy": "6.35 + 6.35 mm core on bond lines of 0.45 mm lies flush"
      }
     ],
     "process": {
      "resin": {
       "code": "resin-epoxy-100to22",
       "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
       "hardener": "medium",
       "hardenerName": "Medium hardener, 100:22",
       "why": "The quickest that leaves time at 20 degC: Medium hardener, 100:22: 100 g last 27 min, 7 pots in all, a spread edge stays open for 57 min."
      },
      "demands": [
       {
        "step": "seal",
        "title": "Seal the inner skin",
        "netL": 0.0554,
        "wasteL": 0.00996,
        "totalL": 0.0653,
        "totalKg": 0.0739
       }
      ],
      "batches": [
       {
        "number": 1,
        "step": "seal",
        "title": "Seal the inner skin",
        "resinG": 61.6,
        "hardenerG": 12.3,
        "fillerG": 0,
        "weigh": [
         {
          "what": "resin",
          "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
          "addG": 61.6,
          "scaleShowsG": 61.6,
          "volumeMl": 53.57
         }
        ],
        "mixedMl": 65.34,
        "covers": [
         "Seal the inner skin"
        ],
        "useWithinMin": 14.242,
        "limitedBy": "whole-step"
       }
      ],
      "findings": [],
      "gates": [
       {
        "step": "Bonding and laminating",
        "requires": [
         "surface at least 3 K above the dew point, from the start until gel",
         "relative humidity at most 85 %",
         "deck at least 10 degC until gel"
        ]
       }
      ],
      "bondPressure": {
       "method": "weights",
       "requiredKPa": 1,
       "availableKPa": 1.19733,
       "restsOn": "the inner skin alone, which carries every kilogram to its supports",
       "quantities": [
        {
         "code": "weights",
         "name": "weights",
         "value": 34,
         "unit": "kg"
        }
       ],
       "props": {
        "needed": true,
        "why": "alone the skin would sag more than 25 mm between supports 470 mm apart and cure so; 2.0 mm is allowed. Prop a board, shaped to the camber, before anything is cut",
        "spacingMm": 200,
        "spanMm": 470
       },
       "lines": [
        {
         "what": "board",
         "from": [
          625,
          381.667
         ],
         "to": [
          1325,
          381.667
         ],
         "points": [
          [
           800,
           381.667
          ],
          [
           1150,
           381.667
          ]
         ]
        }
       ],
       "pieces": [
        {
         "label": "A1",
         "massKg": 23,
         "jacks": []
        }
       ],
       "recommendation": "Press with weights: 1.0 kPa on 0.33 m2 is 34 kg, 2 bags; nothing is screwed into the deck. It rests on the inner skin alone, which carries every kilogram to its supports.",
       "refusals": [
        "vacuum: it is not known whether the inner skin is airtight: seal every hole from below and prove it by a drop test first"
       ]
      },
      "cure": [
       {
        "step": "every bonding and laminating step",
        "temperatureC": 20,
        "basis": "stated",
        "gelH": 1.9,
        "releaseH": 9.49,
        "sandableH": 14.6,
        "recoatShutsH": 6.57,
        "fullCureH": 210.24,
        "note": "Wash off the amine blush with water and abrade before anything else goes on. Press with a thumbnail before you trust a clock: the milestone is reached when the resin says so."
       }
      ],
      "calendar": {
       "workingDays": {
        "p10": 10,
        "p50": 10.33,
        "p90": 11
       },
       "calendarDays": {
        "p10": 19.53,
        "p50": 24.19,
        "p90": 29.54
       },
       "planned": {
        "workingDays": 10,
        "calendarDays": 16.4
       },
       "criticalChain": [
        "inspect-map",
        "isolate-services",
        "lining-out"
       ],
       "tasks": [
        {
         "code": "inspect-map",
         "title": "Inspect, sound, take plugs, map and photograph",
         "gate": "none",
         "startDay": 0.333333,
         "endDay": 0.366628,
         "labourH": 1.1,
         "waitH": 0,
         "waitKind": "none",
         "isCritical": true,
         "isHoldPoint": false,
         "startsBecause": "nothing comes before it",
         "after": []
        }
       ],
       "milestones": [
        {
         "code": "first-cut",
         "title": "First cut"
        }
       ],
       "notes": [
        "Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.",
        "The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.",
        "Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure."
       ]
      }
     },
     "sections": [
      {
       "code": "labour",
       "title": "Labour",
       "amount": {
        "amount": "2449.82",
        "currency": "USD"
       }
      }
     ],
     "lines": [
      {
       "code": "labour-inspect-map",
       "section": "labour",
       "title": "Inspect, sound, take plugs, map and photograph (laminator)",
       "kind": "labour",
       "partOrLabour": "labour",
       "causeClass": "pre-existing",
       "unit": "h",
       "netQuantity": 1.1,
       "wasteQuantity": 0,
       "purchaseQuantity": 1.1,
       "pricedQuantity": "1.10",
       "packs": [],
       "unitPrice": {
        "amount": "95.00",
        "currency": "USD"
       },
       "isAveragePrice": false,
       "amount": {
        "amount": "104.50",
        "currency": "USD"
       },
       "amountRange": {
        "low": {
         "amount": "62.70",
         "currency": "USD"
        },
        "high": {
         "amount": "156.75",
         "currency": "USD"
        }
       },
       "depreciable": false,
       "taxGroup": "labour",
       "hours": {
        "low": 0.66,
        "likely": 0.99,
        "high": 1.65,
        "mean": 1.1
       }
      }
     ],
     "totals": {
      "currency": "USD",
      "net": {
       "amount": "3551.17",
       "currency": "USD"
      },
      "overhead": {
       "amount": "0.00",
       "currency": "USD"
      },
      "profit": {
       "amount": "0.00",
       "currency": "USD"
      },
      "base": {
       "amount": "3551.17",
       "currency": "USD"
      },
      "growth": {
       "amount": {
        "amount": "147.64",
        "currency": "USD"
       },
       "quantity": 0.0527,
       "unit": "m2",
       "unitPrice": {
        "amount": "2803.84",
        "currency": "USD"
       },
       "basis": "Opening that will probably be found besides; measured again at the hold and paid by what is found."
      },
      "newAreas": {
       "amount": {
        "amount": "182.41",
        "currency": "USD"
       },
       "quantity": 0.3,
       "unit": "each",
       "unitPrice": {
        "amount": "608.04",
        "currency": "USD"
       },
       "basis": "Separate areas of about 0.15 m2 that nobody recorded, only this part of the deck sounded; paid by the number found."
      },
      "taxes": [
       {
        "code": "parts",
        "name": "Goods",
        "percent": "7",
        "base": {
         "amount": "487.68",
         "currency": "USD"
        },
        "amount": {
         "amount": "34.14",
         "currency": "USD"
        }
       }
      ],
      "tax": {
       "amount": "34.14",
       "currency": "USD"
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "shareWithin": 0.552231,
      "contingency": {
       "amount": "569.84",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.520258,
        "amount": {
         "amount": "296.46",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4490.21",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "436.45",
         "currency": "USD"
        },
        "saves": {
         "amount": "133.39",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3058.45",
        "currency": "USD"
       },
       "p50": {
        "amount": "3813.14",
        "currency": "USD"
       },
       "p80": {
        "amount": "4490.21",
        "currency": "USD"
       },
       "p90": {
        "amount": "4896.65",
        "currency": "USD"
       }
      },
      "byCause": [
       {
        "causeClass": "pre-existing",
        "amount": {
         "amount": "3915.36",
         "currency": "USD"
        }
       }
      ],
      "parts": {
       "amount": "521.82",
       "currency": "USD"
      },
      "labour": {
       "amount": "3393.54",
       "currency": "USD"
      },
      "goods": {
       "billing": "as-used",
       "billed": {
        "amount": "435.46",
        "currency": "USD"
       },
       "bought": {
        "amount": "848.20",
        "currency": "USD"
       },
       "basis": "Charged as used: what the job takes of each pack, of an opened one the part that will be past its date, all of the paint in the colour of this boat, and one job of the wear of gear. Whoever buys for this job alone pays for whole packs."
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3915.36",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       },
       "wear": {
        "amount": "0.00",
        "currency": "USD"
       },
       "deductible": {
        "amount": "0.00",
        "currency": "USD"
       },
       "payable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "basis": "Attributable: what happened at once, by the cause stated in the record. Prior: what was there before, and upkeep that was owed. Improvement: finish beyond the damaged panel. Wear is taken off parts and never off labour, then the deductible. Lives are judged; the policy decides."
      },
      "drivers": [
       {
        "name": "Pace of the work",
        "shareOfVariance": 0.520258
       }
      ],
      "offer": {
       "stageZero": {
        "title": "Stage 0, at a firm price: open and map, up to the hold",
        "amount": {
         "amount": "606.15",
         "currency": "USD"
        },
        "labourH": 7.68,
        "contingencyFreed": {
         "amount": "150.19",
         "currency": "USD"
        },
        "lines": [
         "labour-inspect-map",
         "labour-isolate-services",
         "labour-lining-out"
        ]
       },
       "unitRates": [
        {
         "code": "opened-m2",
         "what": "Deck opened, core replaced, closed and faired, goods counted",
         "unit": "m2",
         "quantity": 0.3276,
         "rate": {
          "amount": "1847.78",
          "currency": "USD"
         }
        }
       ],
       "authorisation": {
        "percent": 15,
        "labourH": 37.67,
        "basis": "No hour above these, 15 % more than expected, is worked before the owner has agreed in writing."
       },
       "holdPoint": "Work stops when the core is out: opening, cut and fittings are measured again, and the difference is charged or credited by the rates below."
      },
      "p90RelativeError": 0.00279954,
      "samples": 2039
     },
     "cautions": [
      {
       "code": "under-unknown",
       "severity": "danger",
       "kind": "site",
       "text": "Nobody has said what lies under this deck. Wiring, tanks and hoses are found first, by opening the lining or drilling and looking, and only then is it cut.",
       "because": "what lies under the deck is not stated",
       "protection": [
        "look before cutting"
       ],
       "hazards": [],
       "source": "COMMON-PRACTICE"
      }
     ],
     "assumptions": [
      {
       "of": "record",
       "at": "/panel/edges",
       "meaning": "how the panel is held at its edges",
       "value": "simply-supported",
       "because": "gives the larger deflection, so the comparison errs on the safe side",
       "source": "COMMON-PRACTICE"
      }
     ],
     "limits": [
      "The inside of the deck was not seen: the extent is judged from above, and may grow when the deck is opened.",
      "No core sample is recorded: take one in each zone before the deck is cut.",
      "Structure below, tanks, wiring and linings were not inspected."
     ],
     "provenance": {
      "engineVersion": "0.1.0",
      "edition": "shipped-663f56dd",
      "catalogueHash": "663f56dd31a2e9211b367b575086c842c51e4de0423da049b47d33b9e35db513",
      "priceList": "invented-dollar",
      "labourRates": "invented-dollar"
     },
     "conclusion": {
      "verdict": {
       "code": "restored",
       "sentence": "Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.",
       "notes": [
        "A deck designed today to the yardsticks named in the annex would be stiffer (deflection, deck load of a class rule). That is a remark on its design, and no fault of the deck or of the repair."
       ]
      },
      "findings": [
       {
        "about": "Z1",
        "condition": "wet-rotten",
        "areaM2": 0.176,
        "fromAftMm": [
         700,
         1250
        ],
        "fittings": [],
        "class": "next-opportunity",
        "classByService": "next-opportunity",
        "classBecause": "it grows for as long as water comes in and people walk on it",
        "wording": {
         "text": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "byService": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "isSurveyors": false
        },
        "recommendation": {
         "text": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "byService": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "isSurveyors": false
        },
        "restriction": {
         "text": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "byService": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "isSurveyors": false
        }
       }
      ],
      "method": {
       "sentences": [
        "From above, a new skin: 0.33 m2 is opened, bad core comes out, new core (end-grain balsa core, 150 kg/m3) is bedded over a propped inner skin, and a new skin of 4 plies is laid, tapered 12:1 into the old one.",
        "No fitting has to come off.",
        "The way in of the water is not stopped by this plan: not known; hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew."
       ],
       "runnerUp": {
        "title": "From above, the old skin bonded back",
        "because": "look for cracks and crazing first: a cracked skin is replaced",
        "price": {
         "amount": "3945.21",
         "currency": "USD"
        }
       }
      },
      "reinspection": [
       {
        "when": "core out",
        "before": "anything is closed (hold point)",
        "look": "extent, and the core all round the edge of the opening",
        "accept": "pale, hard and bonded all round; core and edges at most 12 % moisture, two equal readings a few days apart",
        "by": "surveyor, with the owner’s consent to what is found",
        "source": "COMMON-PRACTICE"
       }
      ]
     },
     "bibliography": [
      {
       "number": 1,
       "key": "COMMON-PRACTICE",
       "title": "Common practice, no published source",
       "body": "the trade",
       "year": "n.d.",
       "readAs": "common-practice"
      }
     ]
    }
   },
   "202": {
    "id": "01900000-0000-7000-8000-000000000015",
    "status": "waiting",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "expiresAt": "2027-03-04T08:00:00.000Z"
   }
  }
 },
 "GET /v1/estimates/{id}/basket": {
  "answers": {
   "200": {
    "total": {
     "amount": "858.65",
     "currency": "USD"
    },
    "lines": [
     {
      "sku": "A-balsa-150-127-plain-1220x610",
      "name": "End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm",
      "supplier": "chandlery-a",
      "content": {
       "form": "plain",
       "sheet": {
        "widthMm": 610,
        "lengthMm": 1220
       },
       "material": "core-balsa-150",
       "thicknessMm": 12.7
      },
      "packCount": 1,
      "quantityPerPack": 0.7442,
      "quantity": 0.7442,
      "unit": "m2",
      "unitPrice": {
       "amount": "38.80",
       "currency": "USD"
      },
      "amount": {
       "amount": "38.80",
       "currency": "USD"
      },
      "cutFee": {
       "amount": "0.00",
       "currency": "USD"
      },
      "cutCount": 0,
      "massKg": 1.418,
      "hazardous": false,
      "oversize": false
     }
    ],
    "orders": [
     {
      "supplier": "chandlery-a",
      "name": "Invented chandlery A",
      "goods": {
       "amount": "282.50",
       "currency": "USD"
      },
      "cutFees": {
       "amount": "2.50",
       "currency": "USD"
      },
      "delivery": {
       "amount": "0.00",
       "currency": "USD"
      },
      "isDeliveryFree": true,
      "hazardSurcharge": {
       "amount": "0.00",
       "currency": "USD"
      },
      "hazardBoxes": 0,
      "oversizeFreight": {
       "amount": "0.00",
       "currency": "USD"
      },
      "total": {
       "amount": "285.00",
       "currency": "USD"
      },
      "massKg": 48.263
     }
    ],
    "substitutions": [],
    "leftovers": [
     {
      "material": "reinforcement-biaxial-mat-655",
      "rollWidthMm": 1270,
      "quantity": 0.2855,
      "unit": "m2",
      "worth": {
       "amount": "3.90",
       "currency": "USD"
      }
     }
    ],
    "coverage": [
     {
      "material": "core-balsa-150",
      "thicknessMm": 12.7,
      "form": "plain",
      "sheet": {
       "widthMm": 610,
       "lengthMm": 1220
      },
      "unit": "m2",
      "required": 0.7442,
      "fromOnHand": 0,
      "covered": 0.7442,
      "short": 0,
      "needs": [
       {
        "id": "material-core-plain-12.7-1220x610",
        "requiredQuantity": 0.7442
       }
      ]
     }
    ],
    "matched": [
     {
      "resin": "resin-epoxy-100to22",
      "resinKg": 2.176,
      "hardeners": [
       {
        "hardener": "medium",
        "boughtKg": 0.5,
        "curesKg": 2.5
       }
      ]
     }
    ],
    "currency": "USD",
    "priceList": "invented-dollar",
    "isInvented": true,
    "pricesIncludeTax": false,
    "proof": {
     "kind": "proven"
    },
    "isComplete": true,
    "missing": [],
    "excluded": [],
    "byEstimate": [
     {
      "estimate": "",
      "amount": {
       "amount": "858.65",
       "currency": "USD"
      }
     }
    ],
    "secondBest": {
     "total": {
      "amount": "869.15",
      "currency": "USD"
     },
     "lines": [
      {
       "sku": "A-balsa-150-127-plain-1220x610",
       "name": "End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm",
       "supplier": "chandlery-a",
       "content": {
        "form": "plain",
        "sheet": {
         "widthMm": 610,
         "lengthMm": 1220
        },
        "material": "core-balsa-150",
        "thicknessMm": 12.7
       },
       "packCount": 1,
       "quantityPerPack": 0.7442,
       "quantity": 0.7442,
       "unit": "m2",
       "unitPrice": {
        "amount": "38.80",
        "currency": "USD"
       },
       "amount": {
        "amount": "38.80",
        "currency": "USD"
       },
       "cutFee": {
        "amount": "0.00",
        "currency": "USD"
       },
       "cutCount": 0,
       "massKg": 1.418,
       "hazardous": false,
       "oversize": false
      }
     ],
     "orders": [
      {
       "supplier": "chandlery-a",
       "name": "Invented chandlery A",
       "goods": {
        "amount": "848.20",
        "currency": "USD"
       },
       "cutFees": {
        "amount": "7.50",
        "currency": "USD"
       },
       "delivery": {
        "amount": "0.00",
        "currency": "USD"
       },
       "isDeliveryFree": true,
       "hazardSurcharge": {
        "amount": "13.45",
        "currency": "USD"
       },
       "hazardBoxes": 1,
       "oversizeFreight": {
        "amount": "0.00",
        "currency": "USD"
       },
       "total": {
        "amount": "869.15",
        "currency": "USD"
       },
       "massKg": 81.551
      }
     ],
     "substitutions": [],
     "leftovers": [
      {
       "material": "reinforcement-biaxial-mat-655",
       "rollWidthMm": 1270,
       "quantity": 0.2855,
       "unit": "m2",
       "worth": {
        "amount": "4.18",
        "currency": "USD"
       }
      }
     ],
     "coverage": [
      {
       "material": "core-balsa-150",
       "thicknessMm": 12.7,
       "form": "plain",
       "sheet": {
        "widthMm": 610,
        "lengthMm": 1220
       },
       "unit": "m2",
       "required": 0.7442,
       "fromOnHand": 0,
       "covered": 0.7442,
       "short": 0,
       "needs": [
        {
         "id": "material-core-plain-12.7-1220x610",
         "requiredQuantity": 0.7442
        }
       ]
      }
     ],
     "matched": [
      {
       "resin": "resin-epoxy-100to22",
       "resinKg": 2.176,
       "hardeners": [
        {
         "hardener": "medium",
         "boughtKg": 0.5,
         "curesKg": 2.5
        }
       ]
      }
     ],
     "difference": {
      "amount": "10.50",
      "currency": "USD"
     },
     "kind": "other-suppliers"
    },
    "warnings": [
     "the prices are invented: use them to try the calculation, not to buy"
    ],
    "pricedAt": "shipped-663f56dd",
    "drift": []
   }
  }
 },
 "GET /v1/estimates/{id}/calendar": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000014",
    "revision": {
     "rootId": "01900000-0000-7000-8000-000000000014",
     "number": 0
    },
    "calendar": {
     "workingDays": {
      "p10": 10,
      "p50": 10.33,
      "p90": 11
     },
     "calendarDays": {
      "p10": 19.53,
      "p50": 24.19,
      "p90": 29.54
     },
     "planned": {
      "workingDays": 10,
      "calendarDays": 16.4
     },
     "criticalChain": [
      "inspect-map",
      "isolate-services",
      "lining-out"
     ],
     "tasks": [
      {
       "code": "inspect-map",
       "title": "Inspect, sound, take plugs, map and photograph",
       "gate": "none",
       "startDay": 0.333333,
       "endDay": 0.366628,
       "labourH": 1.1,
       "waitH": 0,
       "waitKind": "none",
       "isCritical": true,
       "isHoldPoint": false,
       "startsBecause": "nothing comes before it",
       "after": []
      }
     ],
     "milestones": [
      {
       "code": "first-cut",
       "title": "First cut"
      }
     ],
     "notes": [
      "Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.",
      "The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.",
      "Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure."
     ]
    }
   }
  }
 },
 "GET /v1/estimates/{id}/change-order": {
  "answers": {
   "200": {
    "title": "Change order 1 to Deck repair, 2026-11-30",
    "reason": "Wet core reached farther than the readings said",
    "additions": [
     {
      "code": "material-core-plain-15.9-1220x610",
      "title": "End-grain balsa core, 150 kg/m3, 15.9 mm",
      "change": "added",
      "before": {
       "amount": "0.00",
       "currency": "USD"
      },
      "after": {
       "amount": "22.85",
       "currency": "USD"
      },
      "difference": {
       "amount": "22.85",
       "currency": "USD"
      },
      "unit": "m2",
      "quantityBefore": "0",
      "quantityAfter": "0.372",
      "becauseOfQuantity": {
       "amount": "22.85",
       "currency": "USD"
      },
      "becauseOfRate": {
       "amount": "0.00",
       "currency": "USD"
      },
      "because": [
       "not in the revision before",
       "Wet core reached farther than the readings said"
      ]
     }
    ],
    "deductions": [
     {
      "code": "material-core-plain-12.7-1220x610",
      "title": "End-grain balsa core, 150 kg/m3, 12.7 mm",
      "change": "removed",
      "before": {
       "amount": "19.40",
       "currency": "USD"
      },
      "after": {
       "amount": "0.00",
       "currency": "USD"
      },
      "difference": {
       "amount": "-19.40",
       "currency": "USD"
      },
      "unit": "m2",
      "quantityBefore": "0.372",
      "quantityAfter": "0",
      "becauseOfQuantity": {
       "amount": "-19.40",
       "currency": "USD"
      },
      "becauseOfRate": {
       "amount": "0.00",
       "currency": "USD"
      },
      "because": [
       "no longer needed",
       "Wet core reached farther than the readings said"
      ]
     }
    ],
    "steps": [
     {
      "code": "direct",
      "name": "Sum of lines",
      "before": {
       "amount": "3551.17",
       "currency": "USD"
      },
      "after": {
       "amount": "3557.03",
       "currency": "USD"
      },
      "difference": {
       "amount": "5.86",
       "currency": "USD"
      }
     }
    ],
    "sums": [
     {
      "name": "Sum agreed first, without tax",
      "amount": {
       "amount": "3881.22",
       "currency": "USD"
      }
     }
    ],
    "byRates": {
     "items": [],
     "measured": {
      "amount": "0.00",
      "currency": "USD"
     },
     "provisionalCredited": {
      "amount": "-330.05",
      "currency": "USD"
     },
     "difference": {
      "amount": "-330.05",
      "currency": "USD"
     },
     "authorisedH": 37.67,
     "expectedH": 29.49,
     "isWithinAuthorisation": true
    },
    "statements": [
     "Everything not named here stays as agreed.",
     "The date of completion stays as agreed."
    ],
    "signatures": [
     "For the yard",
     "For the owner"
    ]
   }
  }
 },
 "GET /v1/estimates/{id}/comparison": {
  "answers": {
   "200": {
    "before": {
     "id": "01900000-0000-7000-8000-000000000014",
     "createdAt": "2027-03-03T08:00:00.000Z",
     "revision": {
      "rootId": "01900000-0000-7000-8000-000000000014",
      "number": 0
     },
     "edition": "shipped-663f56dd",
     "engineVersion": "0.1.0"
    },
    "after": {
     "id": "01900000-0000-7000-8000-000000000016",
     "createdAt": "2027-03-03T08:00:00.000Z",
     "revision": {
      "rootId": "01900000-0000-7000-8000-000000000014",
      "number": 1,
      "reason": "Wet core reached farther than the readings said"
     },
     "edition": "shipped-663f56dd",
     "engineVersion": "0.1.0"
    },
    "figures": [
     {
      "code": "mixedResinL",
      "name": "Mixed resin",
      "unit": "l",
      "before": 1.8053,
      "after": 1.9006
     }
    ],
    "currency": "USD",
    "difference": {
     "amount": "7.83",
     "currency": "USD"
    },
    "shareOfBefore": 0.00201741,
    "lines": [
     {
      "code": "material-core-plain-15.9-1220x610",
      "title": "End-grain balsa core, 150 kg/m3, 15.9 mm",
      "change": "added",
      "before": {
       "amount": "0.00",
       "currency": "USD"
      },
      "after": {
       "amount": "22.85",
       "currency": "USD"
      },
      "difference": {
       "amount": "22.85",
       "currency": "USD"
      },
      "unit": "m2",
      "quantityBefore": "0",
      "quantityAfter": "0.372",
      "becauseOfQuantity": {
       "amount": "22.85",
       "currency": "USD"
      },
      "becauseOfRate": {
       "amount": "0.00",
       "currency": "USD"
      },
      "because": [
       "not in the revision before",
       "Wet core reached farther than the readings said"
      ]
     }
    ],
    "totals": [
     {
      "code": "materials",
      "name": "Materials",
      "before": {
       "amount": "260.14",
       "currency": "USD"
      },
      "after": {
       "amount": "265.94",
       "currency": "USD"
      },
      "difference": {
       "amount": "5.80",
       "currency": "USD"
      }
     }
    ]
   }
  }
 },
 "GET /v1/estimates/{id}/drawings": {
  "answers": {
   "200": {
    "items": [
     {
      "name": "defect-map",
      "href": "/v1/estimates/01900000-0000-7000-8000-000000000014/drawings/defect-map"
     }
    ]
   }
  }
 },
 "GET /v1/estimates/{id}/drawings/{name}": {
  "answers": {}
 },
 "GET /v1/estimates/{id}/lines/{code}/why": {
  "answers": {
   "200": {
    "code": "labour-cut-skin",
    "figure": {
     "value": 60.8,
     "unit": "USD",
     "meaning": "Mark and cut the skin (laminator), amount without tax",
     "origin": {
      "kind": "computed",
      "formula": "costing.line-amount",
      "title": "Quantity times rate, rounded once, half-away-from-zero",
      "symbol": "A",
      "cite": {
       "source": "ARITHMETIC",
       "note": "quantity fixed once, multiplied exactly, rounded once to the minor unit"
      },
      "inputs": {
       "quantity": {
        "value": 0.64,
        "unit": "h",
        "meaning": "quantity at pricing precision",
        "origin": {
         "kind": "computed",
         "formula": "costing.pricing-quantity",
         "title": "Quantity fixed to 2 decimals, half-away-from-zero",
         "symbol": "q",
         "cite": {
          "source": "ARITHMETIC",
          "note": "quantity fixed once, multiplied exactly, rounded once to the minor unit"
         },
         "inputs": {}
        }
       },
       "unitRate": {
        "value": 95,
        "unit": "USD/h",
        "meaning": "unit rate",
        "origin": {
         "kind": "catalogue",
         "item": "labour-cut-skin",
         "field": "unitRate",
         "cite": {
          "source": "TRADE-YARD-RATES",
          "note": "invented, of the size of posted yard rates"
         }
        }
       }
      }
     }
    }
   }
  }
 },
 "GET /v1/estimates/{id}/photographs": {
  "answers": {
   "200": {
    "items": [
     {
      "number": 1,
      "caption": "Plug beside the stanchion",
      "widthPx": 300,
      "heightPx": 200,
      "addedAt": "2027-03-03T08:00:00.000Z",
      "href": "/v1/estimates/01900000-0000-7000-8000-000000000014/photographs/1",
      "mediaType": "image/jpeg"
     }
    ]
   }
  }
 },
 "GET /v1/estimates/{id}/record": {
  "answers": {
   "200": {
    "core": {
     "thicknessMm": 12.7
    },
    "panel": {
     "outline": [
      [
       0,
       0
      ],
      [
       2000,
       0
      ],
      [
       2000,
       900
      ]
     ]
    },
    "zones": [
     {
      "id": "Z1",
      "outline": [
       [
        700,
        300
       ],
       [
        1250,
        300
       ],
       [
        1250,
        620
       ]
      ]
     }
    ],
    "innerSkin": {
     "thicknessMm": 2
    },
    "outerSkin": {
     "thicknessMm": 3
    }
   }
  }
 },
 "GET /v1/estimates/{id}/replay": {
  "answers": {
   "200": {
    "isSame": true,
    "madeWith": {
     "engineVersion": "0.1.0",
     "edition": "shipped-663f56dd",
     "catalogueHash": "663f56dd31a2e9211b367b575086c842c51e4de0423da049b47d33b9e35db513"
    },
    "engineVersionNow": "0.1.0",
    "isSameCatalogue": true,
    "totalThen": {
     "amount": "3915.36",
     "currency": "USD"
    },
    "totalNow": {
     "amount": "3915.36",
     "currency": "USD"
    }
   }
  }
 },
 "GET /v1/estimates/{id}/revisions": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000014",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "title": "Deck repair",
      "revision": {
       "rootId": "01900000-0000-7000-8000-000000000014",
       "number": 0
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalP10": {
       "amount": "3058.45",
       "currency": "USD"
      },
      "totalP90": {
       "amount": "4896.65",
       "currency": "USD"
      },
      "labourH": 31.7,
      "verdict": "restored",
      "engineVersion": "0.1.0",
      "edition": "shipped-663f56dd"
     }
    ]
   }
  }
 },
 "GET /v1/estimates/{id}/shares": {
  "answers": {
   "200": {
    "items": [
     {
      "keyId": "01900000-0000-7000-8000-000000000018",
      "keyName": "Invented chandlery",
      "since": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "GET /v1/events": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000012",
      "type": "estimate.created",
      "timestamp": "2027-03-03T08:00:00.000Z",
      "data": {
       "id": "01900000-0000-7000-8000-000000000010",
       "href": "/v1/estimates/01900000-0000-7000-8000-000000000010",
       "edition": "shipped-663f56dd"
      }
     }
    ],
    "nextCursor": "100"
   }
  }
 },
 "GET /v1/keys": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000005",
      "organisationId": "01900000-0000-7000-8000-000000000003",
      "name": "First key",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "lastUsedAt": "2027-03-03T08:00:00.000Z",
      "prefix": "kp_exampl",
      "roles": [
       "surveyor",
       "chandler",
       "integrator"
      ],
      "scopes": [
       "calculate",
       "estimates:read",
       "estimates:write"
      ]
     }
    ]
   }
  }
 },
 "GET /v1/keys/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000004",
    "organisationId": "01900000-0000-7000-8000-000000000003",
    "name": "Invented survey office",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "prefix": "kp_exampl",
    "roles": [
     "surveyor"
    ],
    "scopes": []
   }
  }
 },
 "GET /v1/keys/{id}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000007",
      "after": {
       "expiresAt": "2027-03-04T08:00:00.000Z",
       "renewedBy": "01900000-0000-7000-8000-000000000006"
      }
     }
    ]
   }
  }
 },
 "GET /v1/labour-rates": {
  "answers": {
   "200": {
    "edition": "spring-2027",
    "items": [
     {
      "cite": {
       "note": "invented, of the size of posted yard rates",
       "source": "TRADE-YARD-RATES"
      },
      "code": "invented-dollar",
      "name": "Invented yard rates in US dollars",
      "region": "invented region, US dollar",
      "charges": [
       {
        "per": "job",
        "code": "haul",
        "name": "Haul out, block and launch",
        "price": "560.00",
        "where": "ashore-for-this"
       }
      ],
      "perHour": {
       "rigger": "92.00",
       "general": "68.00",
       "finisher": "88.00",
       "laminator": "95.00"
      },
      "validTo": "2027-12-31",
      "currency": "USD",
      "invented": true,
      "rateBasis": "posted",
      "taxGroups": [
       {
        "code": "parts",
        "name": "Goods",
        "percent": "7"
       }
      ],
      "validFrom": "2026-01-01",
      "profitPercent": "0",
      "overheadPercent": "0"
     }
    ]
   }
  }
 },
 "GET /v1/labour-rates/{code}": {
  "answers": {
   "200": {
    "cite": {
     "note": "invented, of the size of posted yard rates",
     "source": "TRADE-YARD-RATES"
    },
    "code": "invented-dollar",
    "name": "Invented yard rates in US dollars",
    "region": "invented region, US dollar",
    "charges": [
     {
      "per": "job",
      "code": "haul",
      "name": "Haul out, block and launch",
      "price": "560.00",
      "where": "ashore-for-this"
     }
    ],
    "perHour": {
     "rigger": "92.00",
     "general": "68.00",
     "finisher": "88.00",
     "laminator": "95.00"
    },
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "rateBasis": "posted",
    "taxGroups": [
     {
      "code": "parts",
      "name": "Goods",
      "percent": "7"
     }
    ],
    "validFrom": "2026-01-01",
    "profitPercent": "0",
    "overheadPercent": "0"
   }
  }
 },
 "GET /v1/labour-rates/{code}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000021",
      "before": {
       "cite": {
        "note": "invented, of the size of posted yard rates",
        "source": "TRADE-YARD-RATES"
       },
       "code": "invented-copy",
       "name": "Invented yard rates in US dollars",
       "region": "invented region, US dollar",
       "charges": [
        {
         "per": "job",
         "code": "haul",
         "name": "Haul out, block and launch",
         "price": "560.00",
         "where": "ashore-for-this"
        }
       ],
       "perHour": {
        "rigger": "92.00",
        "general": "68.00",
        "finisher": "88.00",
        "laminator": "95.00"
       },
       "validTo": "2027-12-31",
       "currency": "USD",
       "invented": true,
       "rateBasis": "posted",
       "taxGroups": [
        {
         "code": "parts",
         "name": "Goods",
         "percent": "7"
        }
       ],
       "validFrom": "2026-01-01",
       "profitPercent": "0",
       "overheadPercent": "0"
      },
      "after": {
       "cite": {
        "note": "invented, of the size of posted yard rates",
        "source": "TRADE-YARD-RATES"
       },
       "code": "invented-copy",
       "name": "Invented yard rates in US dollars, renamed",
       "region": "invented region, US dollar",
       "charges": [
        {
         "per": "job",
         "code": "haul",
         "name": "Haul out, block and launch",
         "price": "560.00",
         "where": "ashore-for-this"
        }
       ],
       "perHour": {
        "rigger": "92.00",
        "general": "68.00",
        "finisher": "88.00",
        "laminator": "95.00"
       },
       "validTo": "2027-12-31",
       "currency": "USD",
       "invented": true,
       "rateBasis": "posted",
       "taxGroups": [
        {
         "code": "parts",
         "name": "Goods",
         "percent": "7"
        }
       ],
       "validFrom": "2026-01-01",
       "profitPercent": "0",
       "overheadPercent": "0"
      }
     }
    ]
   }
  }
 },
 "GET /v1/letterhead": {
  "answers": {
   "200": {
    "name": "First organisation",
    "lines": [
     "Quay 1, Invented Harbour"
    ],
    "logoDescription": "A lighthouse on a rock",
    "logo": {
     "href": "/v1/letterhead/logo",
     "mediaType": "image/png"
    }
   }
  }
 },
 "GET /v1/materials": {
  "answers": {
   "200": {
    "edition": "spring-2027",
    "items": [
     {
      "code": "coating-epoxy-primer",
      "kind": "coating",
      "name": "High-build epoxy primer, two-part",
      "coats": {
       "low": 2,
       "cite": {
        "source": "FROM-MEMORY"
       },
       "high": 3,
       "value": 2
      },
      "coating": "primer",
      "hazards": [
       "H226",
       "H315",
       "H317"
      ],
      "recoatH": {
       "low": 6,
       "cite": {
        "note": "an example primer at 12 to 14 h; after 24 h sand again",
        "source": "COMMON-PRACTICE"
       },
       "high": 24,
       "value": 12
      },
      "isIsocyanate": false,
      "densityKgPerL": {
       "low": 1.35,
       "cite": {
        "source": "FROM-MEMORY"
       },
       "high": 1.65,
       "value": 1.5
      },
      "coverageM2PerL": {
       "low": 4,
       "cite": {
        "source": "FROM-MEMORY"
       },
       "high": 8,
       "value": 6
      },
      "lowestTemperatureC": {
       "low": 10,
       "cite": {
        "note": "15 to 25 degC",
        "source": "MAKER-COATING-GATES"
       },
       "high": 18,
       "value": 15
      },
      "highestRelativeHumidityPercent": {
       "low": 65,
       "cite": {
        "note": "two-part epoxy primer, 15 to 25 degC",
        "source": "MAKER-COATING-GATES"
       },
       "high": 85,
       "value": 70
      }
     }
    ]
   }
  }
 },
 "GET /v1/materials/{code}": {
  "answers": {
   "200": {
    "code": "coating-epoxy-primer",
    "kind": "coating",
    "name": "High-build epoxy primer, two-part",
    "coats": {
     "low": 2,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 3,
     "value": 2
    },
    "coating": "primer",
    "hazards": [
     "H226",
     "H315",
     "H317"
    ],
    "recoatH": {
     "low": 6,
     "cite": {
      "note": "an example primer at 12 to 14 h; after 24 h sand again",
      "source": "COMMON-PRACTICE"
     },
     "high": 24,
     "value": 12
    },
    "isIsocyanate": false,
    "densityKgPerL": {
     "low": 1.35,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 1.65,
     "value": 1.5
    },
    "coverageM2PerL": {
     "low": 4,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 8,
     "value": 6
    },
    "lowestTemperatureC": {
     "low": 10,
     "cite": {
      "note": "15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 18,
     "value": 15
    },
    "highestRelativeHumidityPercent": {
     "low": 65,
     "cite": {
      "note": "two-part epoxy primer, 15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 85,
     "value": 70
    }
   }
  }
 },
 "GET /v1/materials/{code}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000019",
      "before": {
       "code": "invented-copy",
       "kind": "coating",
       "name": "High-build epoxy primer, two-part",
       "coats": {
        "low": 2,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 3,
        "value": 2
       },
       "coating": "primer",
       "hazards": [
        "H226",
        "H315",
        "H317"
       ],
       "recoatH": {
        "low": 6,
        "cite": {
         "note": "an example primer at 12 to 14 h; after 24 h sand again",
         "source": "COMMON-PRACTICE"
        },
        "high": 24,
        "value": 12
       },
       "isIsocyanate": false,
       "densityKgPerL": {
        "low": 1.35,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 1.65,
        "value": 1.5
       },
       "coverageM2PerL": {
        "low": 4,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 8,
        "value": 6
       },
       "lowestTemperatureC": {
        "low": 10,
        "cite": {
         "note": "15 to 25 degC",
         "source": "MAKER-COATING-GATES"
        },
        "high": 18,
        "value": 15
       },
       "highestRelativeHumidityPercent": {
        "low": 65,
        "cite": {
         "note": "two-part epoxy primer, 15 to 25 degC",
         "source": "MAKER-COATING-GATES"
        },
        "high": 85,
        "value": 70
       }
      },
      "after": {
       "code": "invented-copy",
       "kind": "coating",
       "name": "High-build epoxy primer, two-part, renamed",
       "coats": {
        "low": 2,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 3,
        "value": 2
       },
       "coating": "primer",
       "hazards": [
        "H226",
        "H315",
        "H317"
       ],
       "recoatH": {
        "low": 6,
        "cite": {
         "note": "an example primer at 12 to 14 h; after 24 h sand again",
         "source": "COMMON-PRACTICE"
        },
        "high": 24,
        "value": 12
       },
       "isIsocyanate": false,
       "densityKgPerL": {
        "low": 1.35,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 1.65,
        "value": 1.5
       },
       "coverageM2PerL": {
        "low": 4,
        "cite": {
         "source": "FROM-MEMORY"
        },
        "high": 8,
        "value": 6
       },
       "lowestTemperatureC": {
        "low": 10,
        "cite": {
         "note": "15 to 25 degC",
         "source": "MAKER-COATING-GATES"
        },
        "high": 18,
        "value": 15
       },
       "highestRelativeHumidityPercent": {
        "low": 65,
        "cite": {
         "note": "two-part epoxy primer, 15 to 25 degC",
         "source": "MAKER-COATING-GATES"
        },
        "high": 85,
        "value": 70
       }
      }
     }
    ]
   }
  }
 },
 "GET /v1/operations/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000011",
    "status": "done",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "startedAt": "2027-03-03T08:00:00.000Z",
    "finishedAt": "2027-03-03T08:00:00.000Z",
    "expiresAt": "2027-03-04T08:00:00.000Z",
    "result": {
     "href": "/v1/estimates/01900000-0000-7000-8000-000000000013",
     "mediaType": "application/json"
    }
   }
  }
 },
 "GET /v1/organisations": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000003",
      "name": "First organisation",
      "createdAt": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "GET /v1/organisations/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000001",
    "name": "Invented Boatyard",
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "GET /v1/price-lists": {
  "answers": {
   "200": {
    "edition": "spring-2027",
    "items": [
     {
      "code": "invented-dollar",
      "name": "Invented prices in US dollars",
      "packs": [
       {
        "sku": "A-epoxy-primer-946ml",
        "name": "High-build epoxy primer, two-part, 0.946 l",
        "massKg": 1.619,
        "prices": [
         {
          "price": "35.70",
          "fromPacks": 1
         }
        ],
        "content": {
         "unit": "l",
         "material": "coating-epoxy-primer",
         "quantity": 0.946
        },
        "oversize": false,
        "supplier": "chandlery-a",
        "hazardous": true,
        "shelfLifeMonths": 24
       }
      ],
      "validTo": "2027-12-31",
      "currency": "USD",
      "invented": true,
      "suppliers": [
       {
        "code": "chandlery-a",
        "name": "Invented chandlery A",
        "delivery": "10.65",
        "minimumOrder": "0.00",
        "hazardSurcharge": "13.45",
        "oversizeFreight": "42.60",
        "freeDeliveryFrom": "280.00"
       }
      ],
      "validFrom": "2026-01-01",
      "pricesIncludeTax": false
     }
    ]
   }
  }
 },
 "GET /v1/price-lists/{code}": {
  "answers": {
   "200": {
    "code": "invented-dollar",
    "name": "Invented prices in US dollars",
    "packs": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "massKg": 1.619,
      "prices": [
       {
        "price": "35.70",
        "fromPacks": 1
       }
      ],
      "content": {
       "unit": "l",
       "material": "coating-epoxy-primer",
       "quantity": 0.946
      },
      "oversize": false,
      "supplier": "chandlery-a",
      "hazardous": true,
      "shelfLifeMonths": 24
     }
    ],
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "suppliers": [
     {
      "code": "chandlery-a",
      "name": "Invented chandlery A",
      "delivery": "10.65",
      "minimumOrder": "0.00",
      "hazardSurcharge": "13.45",
      "oversizeFreight": "42.60",
      "freeDeliveryFrom": "280.00"
     }
    ],
    "validFrom": "2026-01-01",
    "pricesIncludeTax": false
   }
  }
 },
 "GET /v1/price-lists/{code}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000020",
      "before": {
       "code": "invented-copy",
       "name": "Invented prices in US dollars",
       "packs": [
        {
         "sku": "A-epoxy-primer-946ml",
         "name": "High-build epoxy primer, two-part, 0.946 l",
         "massKg": 1.619,
         "prices": [
          {
           "price": "35.70",
           "fromPacks": 1
          }
         ],
         "content": {
          "unit": "l",
          "material": "coating-epoxy-primer",
          "quantity": 0.946
         },
         "oversize": false,
         "supplier": "chandlery-a",
         "hazardous": true,
         "shelfLifeMonths": 24
        }
       ],
       "validTo": "2027-12-31",
       "currency": "USD",
       "invented": true,
       "suppliers": [
        {
         "code": "chandlery-a",
         "name": "Invented chandlery A",
         "delivery": "10.65",
         "minimumOrder": "0.00",
         "hazardSurcharge": "13.45",
         "oversizeFreight": "42.60",
         "freeDeliveryFrom": "280.00"
        }
       ],
       "validFrom": "2026-01-01",
       "pricesIncludeTax": false
      },
      "after": {
       "code": "invented-copy",
       "name": "Invented prices in US dollars, renamed",
       "packs": [
        {
         "sku": "A-epoxy-primer-946ml",
         "name": "High-build epoxy primer, two-part, 0.946 l",
         "massKg": 1.619,
         "prices": [
          {
           "price": "35.70",
           "fromPacks": 1
          }
         ],
         "content": {
          "unit": "l",
          "material": "coating-epoxy-primer",
          "quantity": 0.946
         },
         "oversize": false,
         "supplier": "chandlery-a",
         "hazardous": true,
         "shelfLifeMonths": 24
        }
       ],
       "validTo": "2027-12-31",
       "currency": "USD",
       "invented": true,
       "suppliers": [
        {
         "code": "chandlery-a",
         "name": "Invented chandlery A",
         "delivery": "10.65",
         "minimumOrder": "0.00",
         "hazardSurcharge": "13.45",
         "oversizeFreight": "42.60",
         "freeDeliveryFrom": "280.00"
        }
       ],
       "validFrom": "2026-01-01",
       "pricesIncludeTax": false
      }
     }
    ]
   }
  }
 },
 "GET /v1/price-lists/{code}/packs": {
  "answers": {
   "200": {
    "packs": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "massKg": 1.619,
      "prices": [
       {
        "price": "35.70",
        "fromPacks": 1
       }
      ],
      "content": {
       "unit": "l",
       "material": "coating-epoxy-primer",
       "quantity": 0.946
      },
      "oversize": false,
      "supplier": "chandlery-a",
      "hazardous": true,
      "shelfLifeMonths": 24
     }
    ]
   }
  }
 },
 "GET /v1/price-lists/{code}/packs/{sku}": {
  "answers": {
   "200": {
    "sku": "A-epoxy-primer-946ml",
    "name": "High-build epoxy primer, two-part, 0.946 l",
    "massKg": 1.619,
    "prices": [
     {
      "price": "35.70",
      "fromPacks": 1
     }
    ],
    "content": {
     "unit": "l",
     "material": "coating-epoxy-primer",
     "quantity": 0.946
    },
    "oversize": false,
    "supplier": "chandlery-a",
    "hazardous": true,
    "shelfLifeMonths": 24
   }
  }
 },
 "GET /v1/price-lists/{code}/packs/{sku}/stock": {
  "answers": {
   "200": {
    "sku": "A-epoxy-primer-946ml",
    "packs": 11,
    "countedAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "GET /v1/price-lists/{code}/stock": {
  "answers": {
   "200": {
    "priceList": "invented-dollar",
    "items": [
     {
      "sku": "A-epoxy-primer-946ml",
      "packs": 12,
      "countedAt": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "GET /v1/publishable-keys": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000008",
      "organisationId": "01900000-0000-7000-8000-000000000003",
      "name": "Invented shop form",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "key": "kp_pub_exampleexampleexampleexampleexampleexamplee",
      "perDay": 200,
      "origins": [
       "https://shop.example"
      ],
      "perMinute": 60,
      "perMinutePerVisitor": 10
     }
    ]
   }
  }
 },
 "GET /v1/publishable-keys/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000008",
    "organisationId": "01900000-0000-7000-8000-000000000003",
    "name": "Invented shop form",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "key": "kp_pub_exampleexampleexampleexampleexampleexamplee",
    "perDay": 200,
    "origins": [
     "https://shop.example"
    ],
    "perMinute": 60,
    "perMinutePerVisitor": 10
   }
  }
 },
 "GET /v1/sources": {
  "answers": {
   "200": {
    "edition": "spring-2027",
    "items": [
     {
      "key": "ABRAMOWITZ-STEGUN-1964",
      "body": "National Bureau of Standards, Applied Mathematics Series 55",
      "year": "1964",
      "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
      "readAs": "memory"
     }
    ]
   }
  }
 },
 "GET /v1/sources/{code}": {
  "answers": {
   "200": {
    "key": "ABRAMOWITZ-STEGUN-1964",
    "body": "National Bureau of Standards, Applied Mathematics Series 55",
    "year": "1964",
    "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
    "readAs": "memory"
   }
  }
 },
 "GET /v1/sources/{code}/history": {
  "answers": {
   "200": {
    "items": [
     {
      "at": "2027-03-03T08:00:00.000Z",
      "action": "changed",
      "keyId": "01900000-0000-7000-8000-000000000005",
      "keyName": "First key",
      "requestId": "01900000-0000-7000-8000-000000000022",
      "before": {
       "key": "INVENTED-COPY",
       "body": "National Bureau of Standards, Applied Mathematics Series 55",
       "year": "1964",
       "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
       "readAs": "memory"
      },
      "after": {
       "key": "INVENTED-COPY",
       "body": "National Bureau of Standards, Applied Mathematics Series 55",
       "note": "Read once more",
       "year": "1964",
       "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
       "readAs": "memory"
      }
     }
    ]
   }
  }
 },
 "GET /v1/webhook-endpoints": {
  "answers": {
   "200": {
    "items": [
     {
      "id": "01900000-0000-7000-8000-000000000009",
      "url": "https://shop.example/kingplank-events",
      "types": [
       "estimate.created"
      ],
      "createdAt": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "GET /v1/webhook-endpoints/{id}": {
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000009",
    "url": "https://shop.example/kingplank-events",
    "types": [
     "estimate.created"
    ],
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "GET /v1/webhook-endpoints/{id}/deliveries": {
  "answers": {
   "200": {
    "items": [
     {
      "eventId": "01900000-0000-7000-8000-000000000012",
      "type": "estimate.created",
      "status": "waiting",
      "attempts": 0,
      "nextAttemptAt": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "PATCH /v1/labour-rates/{code}": {
  "body": {
   "name": "Invented yard rates in US dollars, renamed"
  },
  "answers": {
   "200": {
    "cite": {
     "note": "invented, of the size of posted yard rates",
     "source": "TRADE-YARD-RATES"
    },
    "code": "invented-copy",
    "name": "Invented yard rates in US dollars, renamed",
    "region": "invented region, US dollar",
    "charges": [
     {
      "per": "job",
      "code": "haul",
      "name": "Haul out, block and launch",
      "price": "560.00",
      "where": "ashore-for-this"
     }
    ],
    "perHour": {
     "rigger": "92.00",
     "general": "68.00",
     "finisher": "88.00",
     "laminator": "95.00"
    },
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "rateBasis": "posted",
    "taxGroups": [
     {
      "code": "parts",
      "name": "Goods",
      "percent": "7"
     }
    ],
    "validFrom": "2026-01-01",
    "profitPercent": "0",
    "overheadPercent": "0"
   }
  }
 },
 "PATCH /v1/materials/{code}": {
  "body": {
   "name": "High-build epoxy primer, two-part, renamed"
  },
  "answers": {
   "200": {
    "code": "invented-copy",
    "kind": "coating",
    "name": "High-build epoxy primer, two-part, renamed",
    "coats": {
     "low": 2,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 3,
     "value": 2
    },
    "coating": "primer",
    "hazards": [
     "H226",
     "H315",
     "H317"
    ],
    "recoatH": {
     "low": 6,
     "cite": {
      "note": "an example primer at 12 to 14 h; after 24 h sand again",
      "source": "COMMON-PRACTICE"
     },
     "high": 24,
     "value": 12
    },
    "isIsocyanate": false,
    "densityKgPerL": {
     "low": 1.35,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 1.65,
     "value": 1.5
    },
    "coverageM2PerL": {
     "low": 4,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 8,
     "value": 6
    },
    "lowestTemperatureC": {
     "low": 10,
     "cite": {
      "note": "15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 18,
     "value": 15
    },
    "highestRelativeHumidityPercent": {
     "low": 65,
     "cite": {
      "note": "two-part epoxy primer, 15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 85,
     "value": 70
    }
   }
  }
 },
 "PATCH /v1/organisations/{id}": {
  "body": {
   "name": "Invented Boatyard East"
  },
  "answers": {
   "200": {
    "id": "01900000-0000-7000-8000-000000000001",
    "name": "Invented Boatyard East",
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "PATCH /v1/price-lists/{code}": {
  "body": {
   "name": "Invented prices in US dollars, renamed"
  },
  "answers": {
   "200": {
    "code": "invented-copy",
    "name": "Invented prices in US dollars, renamed",
    "packs": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "massKg": 1.619,
      "prices": [
       {
        "price": "35.70",
        "fromPacks": 1
       }
      ],
      "content": {
       "unit": "l",
       "material": "coating-epoxy-primer",
       "quantity": 0.946
      },
      "oversize": false,
      "supplier": "chandlery-a",
      "hazardous": true,
      "shelfLifeMonths": 24
     }
    ],
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "suppliers": [
     {
      "code": "chandlery-a",
      "name": "Invented chandlery A",
      "delivery": "10.65",
      "minimumOrder": "0.00",
      "hazardSurcharge": "13.45",
      "oversizeFreight": "42.60",
      "freeDeliveryFrom": "280.00"
     }
    ],
    "validFrom": "2026-01-01",
    "pricesIncludeTax": false
   }
  }
 },
 "PATCH /v1/price-lists/{code}/packs/{sku}": {
  "body": {
   "prices": [
    {
     "fromPacks": 1,
     "price": "99.90"
    }
   ]
  },
  "answers": {
   "200": {
    "sku": "A-epoxy-primer-946ml",
    "name": "High-build epoxy primer, two-part, 0.946 l",
    "massKg": 1.619,
    "prices": [
     {
      "price": "99.90",
      "fromPacks": 1
     }
    ],
    "content": {
     "unit": "l",
     "material": "coating-epoxy-primer",
     "quantity": 0.946
    },
    "oversize": false,
    "supplier": "chandlery-a",
    "hazardous": true,
    "shelfLifeMonths": 24
   }
  }
 },
 "PATCH /v1/price-lists/{code}/stock": {
  "body": {
   "items": [
    {
     "sku": "A-epoxy-primer-946ml",
     "packs": 12
    }
   ]
  },
  "answers": {
   "200": {
    "priceList": "invented-dollar",
    "items": [
     {
      "sku": "A-epoxy-primer-946ml",
      "packs": 12,
      "countedAt": "2027-03-03T08:00:00.000Z"
     }
    ]
   }
  }
 },
 "PATCH /v1/sources/{code}": {
  "body": {
   "note": "Read once more"
  },
  "answers": {
   "200": {
    "key": "INVENTED-COPY",
    "body": "National Bureau of Standards, Applied Mathematics Series 55",
    "note": "Read once more",
    "year": "1964",
    "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
    "readAs": "memory"
   }
  }
 },
 "POST /v1/client-sessions": {
  "body": {
   "reference": "order-7",
   "minutes": 15
  },
  "answers": {
   "201": {
    "clientSecret": "kp_es_exampleexampleexampleexampleexampleexamplee",
    "clientSecretExpiresAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "POST /v1/editions": {
  "body": {
   "code": "spring-2027",
   "basedOn": "shipped-663f56dd",
   "note": "Invented prices of a new season"
  },
  "answers": {
   "201": {
    "code": "spring-2027",
    "state": "draft",
    "isShipped": false,
    "note": "Invented prices of a new season",
    "createdAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "POST /v1/editions/{code}/publication": {
  "body": {
   "effectiveAt": "2027-03-04T08:00:00.000Z"
  },
  "answers": {
   "200": {
    "code": "spring-2027",
    "state": "scheduled",
    "isShipped": false,
    "note": "Invented prices of a new season",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "publishedAt": "2027-03-03T08:00:00.000Z",
    "effectiveAt": "2027-03-04T08:00:00.000Z",
    "contentHash": "267ac0c8b7e9ce929a2c9b5cb372ad220f115d4ca05ef5d8e9f890e777259b7e"
   }
  }
 },
 "POST /v1/editions/{code}/restoration": {
  "body": {
   "code": "winter-2026-again",
   "note": "As before"
  },
  "answers": {
   "201": {
    "code": "winter-2026-again",
    "state": "published",
    "isShipped": false,
    "note": "As before",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "publishedAt": "2027-03-03T08:00:00.000Z",
    "contentHash": "05c0a45115c98675eb8bfc3c453a8e36f82e0631a85c0d6bb64724db44b56452"
   }
  }
 },
 "POST /v1/editions/{code}/trial": {
  "body": {
   "estimates": [
    "01900000-0000-7000-8000-000000000014"
   ]
  },
  "answers": {
   "200": {
    "edition": "spring-2027",
    "against": "shipped-663f56dd",
    "engineVersion": "0.1.0",
    "sameCount": 0,
    "estimates": [
     {
      "id": "01900000-0000-7000-8000-000000000014",
      "revisionNumber": 0,
      "title": "Deck repair",
      "keptNet": {
       "amount": "3881.22",
       "currency": "USD"
      },
      "figures": [],
      "lines": [
       {
        "code": "material-fabric-reinforcement-biaxial-mat-655-1270",
        "title": "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
        "change": "changed",
        "before": {
         "amount": "14.42",
         "currency": "USD"
        },
        "after": {
         "amount": "13.45",
         "currency": "USD"
        },
        "difference": {
         "amount": "-0.97",
         "currency": "USD"
        },
        "unit": "m2",
        "quantityBefore": "0.984",
        "quantityAfter": "0.984",
        "becauseOfQuantity": {
         "amount": "0.00",
         "currency": "USD"
        },
        "becauseOfRate": {
         "amount": "-0.97",
         "currency": "USD"
        },
        "because": [
         "rate 14.6457 to 13.6614 USD/m2"
        ]
       }
      ],
      "before": {
       "amount": "3881.22",
       "currency": "USD"
      },
      "after": {
       "amount": "3883.85",
       "currency": "USD"
      },
      "difference": {
       "amount": "2.63",
       "currency": "USD"
      },
      "shareOfBefore": 0.000677622,
      "refusedBecause": []
     }
    ],
    "totals": [
     {
      "currency": "USD",
      "estimateCount": 1,
      "before": {
       "amount": "3881.22",
       "currency": "USD"
      },
      "after": {
       "amount": "3883.85",
       "currency": "USD"
      },
      "difference": {
       "amount": "2.63",
       "currency": "USD"
      }
     }
    ]
   }
  }
 },
 "POST /v1/estimates": {
  "body": {
   "panel": {
    "outline": [
     [
      0,
      0
     ],
     [
      2000,
      0
     ],
     [
      2000,
      900
     ],
     [
      0,
      900
     ]
    ]
   },
   "outerSkin": {
    "thicknessMm": 3
   },
   "innerSkin": {
    "thicknessMm": 2
   },
   "core": {
    "thicknessMm": "1/2 in"
   },
   "zones": [
    {
     "id": "Z1",
     "outline": [
      [
       700,
       300
      ],
      [
       1250,
       300
      ],
      [
       1250,
       620
      ],
      [
       700,
       620
      ]
     ]
    }
   ]
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000010",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "revision": {
     "rootId": "01900000-0000-7000-8000-000000000010",
     "number": 0
    },
    "inputHash": "5c96b807159772a74dffccfd9c60f9dbb23f05d7da97784f5e9aec3b4677f41b",
    "estimate": {
     "title": "Deck repair",
     "summary": {
      "openedAreaM2": 0.3276,
      "cutLengthM": 2.2712,
      "coreSheets": 1,
      "mixedResinL": 1.8053,
      "labourLikelyH": 26.23,
      "labourMeanH": 29.49,
      "labourH": {
       "p10": 23.22,
       "p50": 31.7,
       "p90": 43.6
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.33,
       "p90": 11
      },
      "calendarDays": {
       "p10": 19.53,
       "p50": 24.19,
       "p90": 29.54
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3058.45",
        "currency": "USD"
       },
       "p50": {
        "amount": "3813.14",
        "currency": "USD"
       },
       "p80": {
        "amount": "4490.21",
        "currency": "USD"
       },
       "p90": {
        "amount": "4896.65",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4490.21",
       "currency": "USD"
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3915.36",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       }
      },
      "verdict": "restored"
     },
     "methods": {
      "recommended": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
      },
      "runnerUp": {
       "rung": "above-old-skin",
       "title": "From above, the old skin bonded back",
       "because": "look for cracks and crazing first: a cracked skin is replaced"
      },
      "planned": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway",
       "isNamedInRecord": false
      },
      "rungs": [
       {
        "rung": "close-leak",
        "title": "Stop the leak alone",
        "verdict": "unfit",
        "deciding": {
         "code": "more-than-a-leak",
         "text": "what is to be mended here is more than the way in of the water: that is stopped beside the repair",
         "source": "COMMON-PRACTICE",
         "wouldFit": "a crack, an open joint, a hatch or a chainplate that leaks over dry, sound core"
        },
        "conditions": [],
        "leavesUndone": [
         "the place is faired, not painted: a painted or moulded deck is touched up beside it",
         "core farther away was not seen: sound it again after a season"
        ],
        "stages": [
         "clean to sound laminate",
         "grind or dig back",
         "close or seal"
        ],
        "isRough": true
       }
      ],
      "places": [
       {
        "place": "Z1",
        "badAreaM2": 0.176,
        "rung": "above-new-skin",
        "title": "From above, a new skin",
        "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
       }
      ]
     },
     "scope": {
      "panel": {
       "name": "Panel",
       "outline": [
        [
         0,
         0
        ],
        [
         2000,
         0
        ],
        [
         2000,
         900
        ]
       ],
       "holes": [],
       "areaM2": 1.8
      },
      "evidence": "sounded-and-metered",
      "damagedAreaM2": {
       "p10": 0.1143,
       "p50": 0.206,
       "p90": 0.3396
      },
      "zones": [
       {
        "id": "Z1",
        "outline": [
         [
          700,
          300
         ],
         [
          1250,
          300
         ],
         [
          1250,
          620
         ]
        ],
        "condition": "wet-rotten",
        "areaM2": 0.176
       }
      ],
      "contours": [],
      "openings": [
       {
        "label": "A",
        "area": {
         "outer": [
          [
           625,
           265
          ],
          [
           625.193,
           261.079
          ],
          [
           625.769,
           257.196
          ]
         ],
         "holes": []
        },
        "sawLine": [
         [
          625,
          225
         ],
         [
          1325,
          225
         ],
         [
          1325,
          695
         ]
        ],
        "cornerRadiusMm": 40,
        "areaM2": 0.3276,
        "cutLengthM": 2.2712,
        "cutDepthMm": 5,
        "undercut": [],
        "undercutAreaM2": 0,
        "coreStays": [
         {
          "outer": [
           [
            625,
            265
           ],
           [
            625.193,
            261.079
           ],
           [
            625.769,
            257.196
           ]
          ],
          "holes": [
           [
            [
             675,
             299.999
            ],
            [
             675,
             619.999
            ],
            [
             676.68,
             629.01
            ]
           ]
          ]
         }
        ],
        "coreStaysAreaM2": 0.1062,
        "taperBand": [
         {
          "outer": [
           [
            589,
            265
           ],
           [
            589.044,
            263.23
           ],
           [
            589.237,
            259.309
           ]
          ],
          "holes": [
           [
            [
             625,
             265
            ],
            [
             625,
             655
            ],
            [
             625.193,
             658.921
            ]
           ]
          ]
         }
        ],
        "reason": "a rectangle takes in zone Z1 at the least labour (9.7 h for 2.27 m of cut and 0.33 m2)"
       }
      ],
      "openedAreaM2": 0.3276,
      "coreOutAreaM2": 0.2214,
      "coreStaysAreaM2": 0.1062,
      "retainedAreaM2": 1.4724,
      "undercutAreaM2": 0,
      "cutLengthM": 2.2712,
      "taperBandM2": 0.0858,
      "fittings": [],
      "findings": [],
      "method": [
       {
        "choice": "Skin",
        "value": "relay",
        "reason": "it goes with the way that is planned: From above, a new skin"
       }
      ],
      "included": [
       "opening, removal of bad core, drying, new core, bonding and closing of the openings listed",
       "lining below the openings out and back",
       "finish of the panel"
      ],
      "excluded": [
       "damage found outside the openings listed",
       "structure under the deck, tanks, wiring beyond isolation",
       "mast out, rigging, sea trial"
      ]
     },
     "core": {
      "material": "core-balsa-150",
      "materialName": "End-grain balsa core, 150 kg/m3",
      "stack": [
       {
        "layer": "bond line 1",
        "thicknessMm": 0.89
       }
      ],
      "cavityMm": 13.7,
      "stackMm": 13.69,
      "flushMm": -0.01,
      "netAreaM2": 0.2195,
      "wasteAreaM2": 0.5247,
      "purchaseAreaM2": 0.7442,
      "wasteByCause": [
       {
        "cause": "kerf",
        "areaM2": 0.00201
       }
      ],
      "pieces": [
       {
        "label": "A1",
        "beddingOrder": 1,
        "opening": "A",
        "bay": 1,
        "outline": [
         [
          677.919,
          290.644
         ],
         [
          683.313,
          282.776
         ],
         [
          691.363,
          277.627
         ]
        ],
        "holes": [],
        "thicknessMm": 12.7,
        "areaM2": 0.2195,
        "isUnderLip": false,
        "bleedHoles": [
         [
          775,
          360
         ],
         [
          775,
          460
         ],
         [
          775,
          560
         ]
        ],
        "form": "plain",
        "layer": 1
       }
      ],
      "division": "1 piece of at most 0.45 m2: each place in one piece",
      "solidFills": [],
      "solidAreaM2": 0,
      "solidVolumeL": 0,
      "sheets": [
       {
        "label": "1",
        "lengthMm": 1220,
        "widthMm": 610,
        "thicknessMm": 12.7,
        "form": "plain",
        "isBought": true,
        "utilisation": 0.294974,
        "placed": [
         {
          "piece": "A1",
          "outline": [
           [
            1.92,
            14.645
           ],
           [
            7.314,
            6.777
           ],
           [
            15.364,
            1.628
           ]
          ],
          "holes": [],
          "turnDeg": 0,
          "cutOrder": 1
         }
        ],
        "offcutsKept": [
         [
          [
           600.001,
           0
          ],
          [
           1220,
           0
          ],
          [
           1220,
           610
          ]
         ],
         [
          [
           0,
           370.001
          ],
          [
           598.001,
           370.001
          ],
          [
           598.001,
           610
          ]
         ]
        ]
       }
      ],
      "kerfMm": 2,
      "utilisation": 0.294973,
      "massChangeKg": -0.0332,
      "notes": [
       "12.7 mm core on bond lines of 0.89 mm lies flush"
      ]
     },
     "laminate": {
      "method": "relay",
      "taperRatio": 12,
      "taperWidthMm": 36,
      "plies": [
       {
        "order": 1,
        "material": "reinforcement-biaxial-mat-655",
        "materialName": "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
        "thicknessMm": 1.05,
        "areaM2": 0.3567,
        "outline": [
         {
          "outer": [
           [
            612.431,
            265
           ],
           [
            612.446,
            264.382
           ],
           [
            612.639,
            260.461
           ]
          ],
          "holes": []
         }
        ],
        "rollLengthM": 0.7751,
        "rollWidthMm": 1270,
        "glassKg": 0.2336,
        "resinKg": 0.3534,
        "orientationDeg": 0
       }
      ],
      "totalThicknessMm": 3.07,
      "oldThicknessMm": 3,
      "glassKg": 0.8784,
      "resinKg": 1.0371,
      "alternatives": [
       {
        "rank": 2,
        "plies": [
         "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
         "Woven roving 600 g/m2",
         "Woven roving 600 g/m2"
        ],
        "thicknessMm": 3.07,
        "costPerM2": "64.71 USD/m2",
        "reason": "the cheapest that restores the skin and every measure of the panel; nearest to its limit: surface not below the limit"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 36215.56,
        "unit": "N/mm",
        "note": "old skin 32500 kN/m"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the rules of a classification society.",
       "each ply lands on the taper at its own depth, so it carries on the old ply that it replaces",
       "the last ply covers all the others and the whole taper: sanding it flush thins the longest one"
      ]
     },
     "panel": {
      "verdict": "restored",
      "shortfalls": [],
      "withinHands": [],
      "sizeMm": [
       2000,
       900
      ],
      "loads": [
       {
        "code": "class-deck",
        "name": "Weather deck pressure of a class rule",
        "value": 7,
        "unit": "kPa"
       }
      ],
      "states": [
       {
        "state": "as-built",
        "bendingXNmm": 3196744.26,
        "bendingYNmm": 3196744.26,
        "shearNPerMm": 2346.78,
        "deflections": [
         {
          "load": "class-deck",
          "deflectionMm": 17.18
         }
        ],
        "governs": "deflection, deck load of a class rule",
        "utilisation": 1.9089
       }
      ],
      "ratios": [
       {
        "code": "outer-skin-class-deck",
        "name": "Stress in the outer skin, deck load of a class rule",
        "value": 1.38884,
        "unit": "1"
       }
      ],
      "limits": [
       "The panel is a flat rectangle on four edges that do not sink; camber, hatches and uneven supports are left out.",
       "Small deflections and elastic layers; fatigue, impact, moisture, heat and buckling of the whole panel under in-plane load are left out.",
       "Stresses are direct stresses in x and y; twisting at the corners is left out."
      ]
     },
     "leftOut": [],
     "hardware": [],
     "leak": {
      "cause": "not-known",
      "title": "Not known",
      "remedy": "hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew",
      "verify": "the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing",
      "isRemedied": false,
      "text": "The way in of the water is not stopped in this plan, and the repair will not last until it is: hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing."
     },
     "checks": [
      {
       "code": "core-flush",
       "title": "New core and bond lines in the cavity",
       "state": "repaired",
       "unit": "mm",
       "demand": -0.01,
       "verdict": "passes",
       "governs": "12.7 mm core on bond lines of 0.89 mm lies flush",
       "source": "DECK-REPAIR-PRACTICE",
       "remedy": "6.35 + 6.35 mm core on bond lines of 0.45 mm lies flush"
      }
     ],
     "process": {
      "resin": {
       "code": "resin-epoxy-100to22",
       "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
       "hardener": "medium",
       "hardenerName": "Medium hardener, 100:22",
       "why": "The quickest that leaves time at 20 degC: Medium hardener, 100:22: 100 g last 27 min, 7 pots in all, a spread edge stays open for 57 min."
      },
      "demands": [
       {
        "step": "seal",
        "title": "Seal the inner skin",
        "netL": 0.0554,
        "wasteL": 0.00996,
        "totalL": 0.0653,
        "totalKg": 0.0739
       }
      ],
      "batches": [
       {
        "number": 1,
        "step": "seal",
        "title": "Seal the inner skin",
        "resinG": 61.6,
        "hardenerG": 12.3,
        "fillerG": 0,
        "weigh": [
         {
          "what": "resin",
          "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
          "addG": 61.6,
          "scaleShowsG": 61.6,
          "volumeMl": 53.57
         }
        ],
        "mixedMl": 65.34,
        "covers": [
         "Seal the inner skin"
        ],
        "useWithinMin": 14.242,
        "limitedBy": "whole-step"
       }
      ],
      "findings": [],
      "gates": [
       {
        "step": "Bonding and laminating",
        "requires": [
         "surface at least 3 K above the dew point, from the start until gel",
         "relative humidity at most 85 %",
         "deck at least 10 degC until gel"
        ]
       }
      ],
      "bondPressure": {
       "method": "weights",
       "requiredKPa": 1,
       "availableKPa": 1.19733,
       "restsOn": "the inner skin alone, which carries every kilogram to its supports",
       "quantities": [
        {
         "code": "weights",
         "name": "weights",
         "value": 34,
         "unit": "kg"
        }
       ],
       "props": {
        "needed": true,
        "why": "alone the skin would sag more than 25 mm between supports 470 mm apart and cure so; 2.0 mm is allowed. Prop a board, shaped to the camber, before anything is cut",
        "spacingMm": 200,
        "spanMm": 470
       },
       "lines": [
        {
         "what": "board",
         "from": [
          625,
          381.667
         ],
         "to": [
          1325,
          381.667
         ],
         "points": [
          [
           800,
           381.667
          ],
          [
           1150,
           381.667
          ]
         ]
        }
       ],
       "pieces": [
        {
         "label": "A1",
         "massKg": 23,
         "jacks": []
        }
       ],
       "recommendation": "Press with weights: 1.0 kPa on 0.33 m2 is 34 kg, 2 bags; nothing is screwed into the deck. It rests on the inner skin alone, which carries every kilogram to its supports.",
       "refusals": [
        "vacuum: it is not known whether the inner skin is airtight: seal every hole from below and prove it by a drop test first"
       ]
      },
      "cure": [
       {
        "step": "every bonding and laminating step",
        "temperatureC": 20,
        "basis": "stated",
        "gelH": 1.9,
        "releaseH": 9.49,
        "sandableH": 14.6,
        "recoatShutsH": 6.57,
        "fullCureH": 210.24,
        "note": "Wash off the amine blush with water and abrade before anything else goes on. Press with a thumbnail before you trust a clock: the milestone is reached when the resin says so."
       }
      ],
      "calendar": {
       "workingDays": {
        "p10": 10,
        "p50": 10.33,
        "p90": 11
       },
       "calendarDays": {
        "p10": 19.53,
        "p50": 24.19,
        "p90": 29.54
       },
       "planned": {
        "workingDays": 10,
        "calendarDays": 16.4
       },
       "criticalChain": [
        "inspect-map",
        "isolate-services",
        "lining-out"
       ],
       "tasks": [
        {
         "code": "inspect-map",
         "title": "Inspect, sound, take plugs, map and photograph",
         "gate": "none",
         "startDay": 0.333333,
         "endDay": 0.366628,
         "labourH": 1.1,
         "waitH": 0,
         "waitKind": "none",
         "isCritical": true,
         "isHoldPoint": false,
         "startsBecause": "nothing comes before it",
         "after": []
        }
       ],
       "milestones": [
        {
         "code": "first-cut",
         "title": "First cut"
        }
       ],
       "notes": [
        "Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.",
        "The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.",
        "Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure."
       ]
      }
     },
     "sections": [
      {
       "code": "labour",
       "title": "Labour",
       "amount": {
        "amount": "2449.82",
        "currency": "USD"
       }
      }
     ],
     "lines": [
      {
       "code": "labour-inspect-map",
       "section": "labour",
       "title": "Inspect, sound, take plugs, map and photograph (laminator)",
       "kind": "labour",
       "partOrLabour": "labour",
       "causeClass": "pre-existing",
       "unit": "h",
       "netQuantity": 1.1,
       "wasteQuantity": 0,
       "purchaseQuantity": 1.1,
       "pricedQuantity": "1.10",
       "packs": [],
       "unitPrice": {
        "amount": "95.00",
        "currency": "USD"
       },
       "isAveragePrice": false,
       "amount": {
        "amount": "104.50",
        "currency": "USD"
       },
       "amountRange": {
        "low": {
         "amount": "62.70",
         "currency": "USD"
        },
        "high": {
         "amount": "156.75",
         "currency": "USD"
        }
       },
       "depreciable": false,
       "taxGroup": "labour",
       "hours": {
        "low": 0.66,
        "likely": 0.99,
        "high": 1.65,
        "mean": 1.1
       }
      }
     ],
     "totals": {
      "currency": "USD",
      "net": {
       "amount": "3551.17",
       "currency": "USD"
      },
      "overhead": {
       "amount": "0.00",
       "currency": "USD"
      },
      "profit": {
       "amount": "0.00",
       "currency": "USD"
      },
      "base": {
       "amount": "3551.17",
       "currency": "USD"
      },
      "growth": {
       "amount": {
        "amount": "147.64",
        "currency": "USD"
       },
       "quantity": 0.0527,
       "unit": "m2",
       "unitPrice": {
        "amount": "2803.84",
        "currency": "USD"
       },
       "basis": "Opening that will probably be found besides; measured again at the hold and paid by what is found."
      },
      "newAreas": {
       "amount": {
        "amount": "182.41",
        "currency": "USD"
       },
       "quantity": 0.3,
       "unit": "each",
       "unitPrice": {
        "amount": "608.04",
        "currency": "USD"
       },
       "basis": "Separate areas of about 0.15 m2 that nobody recorded, only this part of the deck sounded; paid by the number found."
      },
      "taxes": [
       {
        "code": "parts",
        "name": "Goods",
        "percent": "7",
        "base": {
         "amount": "487.68",
         "currency": "USD"
        },
        "amount": {
         "amount": "34.14",
         "currency": "USD"
        }
       }
      ],
      "tax": {
       "amount": "34.14",
       "currency": "USD"
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "shareWithin": 0.552231,
      "contingency": {
       "amount": "569.84",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.520258,
        "amount": {
         "amount": "296.46",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4490.21",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "436.45",
         "currency": "USD"
        },
        "saves": {
         "amount": "133.39",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3058.45",
        "currency": "USD"
       },
       "p50": {
        "amount": "3813.14",
        "currency": "USD"
       },
       "p80": {
        "amount": "4490.21",
        "currency": "USD"
       },
       "p90": {
        "amount": "4896.65",
        "currency": "USD"
       }
      },
      "byCause": [
       {
        "causeClass": "pre-existing",
        "amount": {
         "amount": "3915.36",
         "currency": "USD"
        }
       }
      ],
      "parts": {
       "amount": "521.82",
       "currency": "USD"
      },
      "labour": {
       "amount": "3393.54",
       "currency": "USD"
      },
      "goods": {
       "billing": "as-used",
       "billed": {
        "amount": "435.46",
        "currency": "USD"
       },
       "bought": {
        "amount": "848.20",
        "currency": "USD"
       },
       "basis": "Charged as used: what the job takes of each pack, of an opened one the part that will be past its date, all of the paint in the colour of this boat, and one job of the wear of gear. Whoever buys for this job alone pays for whole packs."
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3915.36",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       },
       "wear": {
        "amount": "0.00",
        "currency": "USD"
       },
       "deductible": {
        "amount": "0.00",
        "currency": "USD"
       },
       "payable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "basis": "Attributable: what happened at once, by the cause stated in the record. Prior: what was there before, and upkeep that was owed. Improvement: finish beyond the damaged panel. Wear is taken off parts and never off labour, then the deductible. Lives are judged; the policy decides."
      },
      "drivers": [
       {
        "name": "Pace of the work",
        "shareOfVariance": 0.520258
       }
      ],
      "offer": {
       "stageZero": {
        "title": "Stage 0, at a firm price: open and map, up to the hold",
        "amount": {
         "amount": "606.15",
         "currency": "USD"
        },
        "labourH": 7.68,
        "contingencyFreed": {
         "amount": "150.19",
         "currency": "USD"
        },
        "lines": [
         "labour-inspect-map",
         "labour-isolate-services",
         "labour-lining-out"
        ]
       },
       "unitRates": [
        {
         "code": "opened-m2",
         "what": "Deck opened, core replaced, closed and faired, goods counted",
         "unit": "m2",
         "quantity": 0.3276,
         "rate": {
          "amount": "1847.78",
          "currency": "USD"
         }
        }
       ],
       "authorisation": {
        "percent": 15,
        "labourH": 37.67,
        "basis": "No hour above these, 15 % more than expected, is worked before the owner has agreed in writing."
       },
       "holdPoint": "Work stops when the core is out: opening, cut and fittings are measured again, and the difference is charged or credited by the rates below."
      },
      "p90RelativeError": 0.00279954,
      "samples": 2039
     },
     "cautions": [
      {
       "code": "under-unknown",
       "severity": "danger",
       "kind": "site",
       "text": "Nobody has said what lies under this deck. Wiring, tanks and hoses are found first, by opening the lining or drilling and looking, and only then is it cut.",
       "because": "what lies under the deck is not stated",
       "protection": [
        "look before cutting"
       ],
       "hazards": [],
       "source": "COMMON-PRACTICE"
      }
     ],
     "assumptions": [
      {
       "of": "record",
       "at": "/panel/edges",
       "meaning": "how the panel is held at its edges",
       "value": "simply-supported",
       "because": "gives the larger deflection, so the comparison errs on the safe side",
       "source": "COMMON-PRACTICE"
      }
     ],
     "limits": [
      "The inside of the deck was not seen: the extent is judged from above, and may grow when the deck is opened.",
      "No core sample is recorded: take one in each zone before the deck is cut.",
      "Structure below, tanks, wiring and linings were not inspected."
     ],
     "provenance": {
      "engineVersion": "0.1.0",
      "edition": "shipped-663f56dd",
      "catalogueHash": "663f56dd31a2e9211b367b575086c842c51e4de0423da049b47d33b9e35db513",
      "priceList": "invented-dollar",
      "labourRates": "invented-dollar"
     },
     "conclusion": {
      "verdict": {
       "code": "restored",
       "sentence": "Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.",
       "notes": [
        "A deck designed today to the yardsticks named in the annex would be stiffer (deflection, deck load of a class rule). That is a remark on its design, and no fault of the deck or of the repair."
       ]
      },
      "findings": [
       {
        "about": "Z1",
        "condition": "wet-rotten",
        "areaM2": 0.176,
        "fromAftMm": [
         700,
         1250
        ],
        "fittings": [],
        "class": "next-opportunity",
        "classByService": "next-opportunity",
        "classBecause": "it grows for as long as water comes in and people walk on it",
        "wording": {
         "text": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "byService": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "isSurveyors": false
        },
        "recommendation": {
         "text": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "byService": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "isSurveyors": false
        },
        "restriction": {
         "text": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "byService": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "isSurveyors": false
        }
       }
      ],
      "method": {
       "sentences": [
        "From above, a new skin: 0.33 m2 is opened, bad core comes out, new core (end-grain balsa core, 150 kg/m3) is bedded over a propped inner skin, and a new skin of 4 plies is laid, tapered 12:1 into the old one.",
        "No fitting has to come off.",
        "The way in of the water is not stopped by this plan: not known; hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew."
       ],
       "runnerUp": {
        "title": "From above, the old skin bonded back",
        "because": "look for cracks and crazing first: a cracked skin is replaced",
        "price": {
         "amount": "3945.21",
         "currency": "USD"
        }
       }
      },
      "reinspection": [
       {
        "when": "core out",
        "before": "anything is closed (hold point)",
        "look": "extent, and the core all round the edge of the opening",
        "accept": "pale, hard and bonded all round; core and edges at most 12 % moisture, two equal readings a few days apart",
        "by": "surveyor, with the owner’s consent to what is found",
        "source": "COMMON-PRACTICE"
       }
      ]
     },
     "bibliography": [
      {
       "number": 1,
       "key": "COMMON-PRACTICE",
       "title": "Common practice, no published source",
       "body": "the trade",
       "year": "n.d.",
       "readAs": "common-practice"
      }
     ]
    }
   },
   "202": {
    "id": "01900000-0000-7000-8000-000000000011",
    "status": "waiting",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "expiresAt": "2027-03-04T08:00:00.000Z"
   }
  }
 },
 "POST /v1/estimates/{id}/basket": {
  "body": {
   "pricedAt": "current"
  },
  "answers": {
   "200": {
    "total": {
     "amount": "858.65",
     "currency": "USD"
    },
    "lines": [
     {
      "sku": "A-balsa-150-127-plain-1220x610",
      "name": "End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm",
      "supplier": "chandlery-a",
      "content": {
       "form": "plain",
       "sheet": {
        "widthMm": 610,
        "lengthMm": 1220
       },
       "material": "core-balsa-150",
       "thicknessMm": 12.7
      },
      "packCount": 1,
      "quantityPerPack": 0.7442,
      "quantity": 0.7442,
      "unit": "m2",
      "unitPrice": {
       "amount": "38.80",
       "currency": "USD"
      },
      "amount": {
       "amount": "38.80",
       "currency": "USD"
      },
      "cutFee": {
       "amount": "0.00",
       "currency": "USD"
      },
      "cutCount": 0,
      "massKg": 1.418,
      "hazardous": false,
      "oversize": false
     }
    ],
    "orders": [
     {
      "supplier": "chandlery-a",
      "name": "Invented chandlery A",
      "goods": {
       "amount": "282.50",
       "currency": "USD"
      },
      "cutFees": {
       "amount": "2.50",
       "currency": "USD"
      },
      "delivery": {
       "amount": "0.00",
       "currency": "USD"
      },
      "isDeliveryFree": true,
      "hazardSurcharge": {
       "amount": "0.00",
       "currency": "USD"
      },
      "hazardBoxes": 0,
      "oversizeFreight": {
       "amount": "0.00",
       "currency": "USD"
      },
      "total": {
       "amount": "285.00",
       "currency": "USD"
      },
      "massKg": 48.263
     }
    ],
    "substitutions": [],
    "leftovers": [
     {
      "material": "reinforcement-biaxial-mat-655",
      "rollWidthMm": 1270,
      "quantity": 0.2855,
      "unit": "m2",
      "worth": {
       "amount": "3.90",
       "currency": "USD"
      }
     }
    ],
    "coverage": [
     {
      "material": "core-balsa-150",
      "thicknessMm": 12.7,
      "form": "plain",
      "sheet": {
       "widthMm": 610,
       "lengthMm": 1220
      },
      "unit": "m2",
      "required": 0.7442,
      "fromOnHand": 0,
      "covered": 0.7442,
      "short": 0,
      "needs": [
       {
        "id": "material-core-plain-12.7-1220x610",
        "requiredQuantity": 0.7442
       }
      ]
     }
    ],
    "matched": [
     {
      "resin": "resin-epoxy-100to22",
      "resinKg": 2.176,
      "hardeners": [
       {
        "hardener": "medium",
        "boughtKg": 0.5,
        "curesKg": 2.5
       }
      ]
     }
    ],
    "currency": "USD",
    "priceList": "invented-dollar",
    "isInvented": true,
    "pricesIncludeTax": false,
    "proof": {
     "kind": "proven"
    },
    "isComplete": true,
    "missing": [],
    "excluded": [],
    "byEstimate": [
     {
      "estimate": "",
      "amount": {
       "amount": "858.65",
       "currency": "USD"
      }
     }
    ],
    "secondBest": {
     "total": {
      "amount": "869.15",
      "currency": "USD"
     },
     "lines": [
      {
       "sku": "A-balsa-150-127-plain-1220x610",
       "name": "End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm",
       "supplier": "chandlery-a",
       "content": {
        "form": "plain",
        "sheet": {
         "widthMm": 610,
         "lengthMm": 1220
        },
        "material": "core-balsa-150",
        "thicknessMm": 12.7
       },
       "packCount": 1,
       "quantityPerPack": 0.7442,
       "quantity": 0.7442,
       "unit": "m2",
       "unitPrice": {
        "amount": "38.80",
        "currency": "USD"
       },
       "amount": {
        "amount": "38.80",
        "currency": "USD"
       },
       "cutFee": {
        "amount": "0.00",
        "currency": "USD"
       },
       "cutCount": 0,
       "massKg": 1.418,
       "hazardous": false,
       "oversize": false
      }
     ],
     "orders": [
      {
       "supplier": "chandlery-a",
       "name": "Invented chandlery A",
       "goods": {
        "amount": "848.20",
        "currency": "USD"
       },
       "cutFees": {
        "amount": "7.50",
        "currency": "USD"
       },
       "delivery": {
        "amount": "0.00",
        "currency": "USD"
       },
       "isDeliveryFree": true,
       "hazardSurcharge": {
        "amount": "13.45",
        "currency": "USD"
       },
       "hazardBoxes": 1,
       "oversizeFreight": {
        "amount": "0.00",
        "currency": "USD"
       },
       "total": {
        "amount": "869.15",
        "currency": "USD"
       },
       "massKg": 81.551
      }
     ],
     "substitutions": [],
     "leftovers": [
      {
       "material": "reinforcement-biaxial-mat-655",
       "rollWidthMm": 1270,
       "quantity": 0.2855,
       "unit": "m2",
       "worth": {
        "amount": "4.18",
        "currency": "USD"
       }
      }
     ],
     "coverage": [
      {
       "material": "core-balsa-150",
       "thicknessMm": 12.7,
       "form": "plain",
       "sheet": {
        "widthMm": 610,
        "lengthMm": 1220
       },
       "unit": "m2",
       "required": 0.7442,
       "fromOnHand": 0,
       "covered": 0.7442,
       "short": 0,
       "needs": [
        {
         "id": "material-core-plain-12.7-1220x610",
         "requiredQuantity": 0.7442
        }
       ]
      }
     ],
     "matched": [
      {
       "resin": "resin-epoxy-100to22",
       "resinKg": 2.176,
       "hardeners": [
        {
         "hardener": "medium",
         "boughtKg": 0.5,
         "curesKg": 2.5
        }
       ]
      }
     ],
     "difference": {
      "amount": "10.50",
      "currency": "USD"
     },
     "kind": "other-suppliers"
    },
    "warnings": [
     "the prices are invented: use them to try the calculation, not to buy"
    ],
    "pricedAt": "shipped-663f56dd",
    "drift": []
   }
  }
 },
 "POST /v1/estimates/{id}/revisions": {
  "body": {
   "reason": "Wet core reached farther than the readings said",
   "record": {
    "panel": {
     "outline": [
      [
       0,
       0
      ],
      [
       2000,
       0
      ],
      [
       2000,
       900
      ],
      [
       0,
       900
      ]
     ]
    },
    "outerSkin": {
     "thicknessMm": 3
    },
    "innerSkin": {
     "thicknessMm": 2
    },
    "core": {
     "thicknessMm": 16
    },
    "zones": [
     {
      "id": "Z1",
      "outline": [
       [
        700,
        300
       ],
       [
        1250,
        300
       ],
       [
        1250,
        620
       ],
       [
        700,
        620
       ]
      ]
     }
    ]
   }
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000016",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "revision": {
     "rootId": "01900000-0000-7000-8000-000000000014",
     "number": 1,
     "reason": "Wet core reached farther than the readings said"
    },
    "inputHash": "a26efb369e3d0f4b55cd93085508b750e4d736d9d4092c823388dc61f0f39f83",
    "estimate": {
     "title": "Deck repair",
     "summary": {
      "openedAreaM2": 0.3276,
      "cutLengthM": 2.2712,
      "coreSheets": 1,
      "mixedResinL": 1.9006,
      "labourLikelyH": 26.23,
      "labourMeanH": 29.49,
      "labourH": {
       "p10": 23.22,
       "p50": 31.7,
       "p90": 43.6
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.33,
       "p90": 11
      },
      "calendarDays": {
       "p10": 19.53,
       "p50": 24.19,
       "p90": 29.54
      },
      "total": {
       "amount": "3923.65",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3064.42",
        "currency": "USD"
       },
       "p50": {
        "amount": "3821.07",
        "currency": "USD"
       },
       "p80": {
        "amount": "4499.56",
        "currency": "USD"
       },
       "p90": {
        "amount": "4907.28",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4499.56",
       "currency": "USD"
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3923.65",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       }
      },
      "verdict": "restored"
     },
     "methods": {
      "recommended": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
      },
      "runnerUp": {
       "rung": "above-old-skin",
       "title": "From above, the old skin bonded back",
       "because": "look for cracks and crazing first: a cracked skin is replaced"
      },
      "planned": {
       "rung": "above-new-skin",
       "title": "From above, a new skin",
       "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway",
       "isNamedInRecord": false
      },
      "rungs": [
       {
        "rung": "close-leak",
        "title": "Stop the leak alone",
        "verdict": "unfit",
        "deciding": {
         "code": "more-than-a-leak",
         "text": "what is to be mended here is more than the way in of the water: that is stopped beside the repair",
         "source": "COMMON-PRACTICE",
         "wouldFit": "a crack, an open joint, a hatch or a chainplate that leaks over dry, sound core"
        },
        "conditions": [],
        "leavesUndone": [
         "the place is faired, not painted: a painted or moulded deck is touched up beside it",
         "core farther away was not seen: sound it again after a season"
        ],
        "stages": [
         "clean to sound laminate",
         "grind or dig back",
         "close or seal"
        ],
        "isRough": true
       }
      ],
      "places": [
       {
        "place": "Z1",
        "badAreaM2": 0.176,
        "rung": "above-new-skin",
        "title": "From above, a new skin",
        "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
       }
      ]
     },
     "scope": {
      "panel": {
       "name": "Panel",
       "outline": [
        [
         0,
         0
        ],
        [
         2000,
         0
        ],
        [
         2000,
         900
        ]
       ],
       "holes": [],
       "areaM2": 1.8
      },
      "evidence": "sounded-and-metered",
      "damagedAreaM2": {
       "p10": 0.1143,
       "p50": 0.206,
       "p90": 0.3396
      },
      "zones": [
       {
        "id": "Z1",
        "outline": [
         [
          700,
          300
         ],
         [
          1250,
          300
         ],
         [
          1250,
          620
         ]
        ],
        "condition": "wet-rotten",
        "areaM2": 0.176
       }
      ],
      "contours": [],
      "openings": [
       {
        "label": "A",
        "area": {
         "outer": [
          [
           625,
           265
          ],
          [
           625.193,
           261.079
          ],
          [
           625.769,
           257.196
          ]
         ],
         "holes": []
        },
        "sawLine": [
         [
          625,
          225
         ],
         [
          1325,
          225
         ],
         [
          1325,
          695
         ]
        ],
        "cornerRadiusMm": 40,
        "areaM2": 0.3276,
        "cutLengthM": 2.2712,
        "cutDepthMm": 5,
        "undercut": [],
        "undercutAreaM2": 0,
        "coreStays": [
         {
          "outer": [
           [
            625,
            265
           ],
           [
            625.193,
            261.079
           ],
           [
            625.769,
            257.196
           ]
          ],
          "holes": [
           [
            [
             675,
             299.999
            ],
            [
             675,
             619.999
            ],
            [
             676.68,
             629.01
            ]
           ]
          ]
         }
        ],
        "coreStaysAreaM2": 0.1062,
        "taperBand": [
         {
          "outer": [
           [
            589,
            265
           ],
           [
            589.044,
            263.23
           ],
           [
            589.237,
            259.309
           ]
          ],
          "holes": [
           [
            [
             625,
             265
            ],
            [
             625,
             655
            ],
            [
             625.193,
             658.921
            ]
           ]
          ]
         }
        ],
        "reason": "a rectangle takes in zone Z1 at the least labour (9.7 h for 2.27 m of cut and 0.33 m2)"
       }
      ],
      "openedAreaM2": 0.3276,
      "coreOutAreaM2": 0.2214,
      "coreStaysAreaM2": 0.1062,
      "retainedAreaM2": 1.4724,
      "undercutAreaM2": 0,
      "cutLengthM": 2.2712,
      "taperBandM2": 0.0858,
      "fittings": [],
      "findings": [],
      "method": [
       {
        "choice": "Skin",
        "value": "relay",
        "reason": "it goes with the way that is planned: From above, a new skin"
       }
      ],
      "included": [
       "opening, removal of bad core, drying, new core, bonding and closing of the openings listed",
       "lining below the openings out and back",
       "finish of the panel"
      ],
      "excluded": [
       "damage found outside the openings listed",
       "structure under the deck, tanks, wiring beyond isolation",
       "mast out, rigging, sea trial"
      ]
     },
     "core": {
      "material": "core-balsa-150",
      "materialName": "End-grain balsa core, 150 kg/m3",
      "stack": [
       {
        "layer": "bond line 1",
        "thicknessMm": 0.89
       }
      ],
      "cavityMm": 17,
      "stackMm": 16.89,
      "flushMm": -0.11,
      "netAreaM2": 0.2195,
      "wasteAreaM2": 0.5247,
      "purchaseAreaM2": 0.7442,
      "wasteByCause": [
       {
        "cause": "kerf",
        "areaM2": 0.00201
       }
      ],
      "pieces": [
       {
        "label": "A1",
        "beddingOrder": 1,
        "opening": "A",
        "bay": 1,
        "outline": [
         [
          677.919,
          290.644
         ],
         [
          683.313,
          282.776
         ],
         [
          691.363,
          277.627
         ]
        ],
        "holes": [],
        "thicknessMm": 15.9,
        "areaM2": 0.2195,
        "isUnderLip": false,
        "bleedHoles": [
         [
          775,
          360
         ],
         [
          775,
          460
         ],
         [
          775,
          560
         ]
        ],
        "form": "plain",
        "layer": 1
       }
      ],
      "division": "1 piece of at most 0.45 m2: each place in one piece",
      "solidFills": [],
      "solidAreaM2": 0,
      "solidVolumeL": 0,
      "sheets": [
       {
        "label": "1",
        "lengthMm": 1220,
        "widthMm": 610,
        "thicknessMm": 15.9,
        "form": "plain",
        "isBought": true,
        "utilisation": 0.294974,
        "placed": [
         {
          "piece": "A1",
          "outline": [
           [
            1.92,
            14.645
           ],
           [
            7.314,
            6.777
           ],
           [
            15.364,
            1.628
           ]
          ],
          "holes": [],
          "turnDeg": 0,
          "cutOrder": 1
         }
        ],
        "offcutsKept": [
         [
          [
           600.001,
           0
          ],
          [
           1220,
           0
          ],
          [
           1220,
           610
          ]
         ],
         [
          [
           0,
           370.001
          ],
          [
           598.001,
           370.001
          ],
          [
           598.001,
           610
          ]
         ]
        ]
       }
      ],
      "kerfMm": 2,
      "utilisation": 0.294973,
      "massChangeKg": -0.0365,
      "notes": [
       "15.9 mm core on bond lines of 0.89 mm lies 0.1 mm below flush"
      ]
     },
     "laminate": {
      "method": "relay",
      "taperRatio": 12,
      "taperWidthMm": 36,
      "plies": [
       {
        "order": 1,
        "material": "reinforcement-biaxial-mat-655",
        "materialName": "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
        "thicknessMm": 1.05,
        "areaM2": 0.3567,
        "outline": [
         {
          "outer": [
           [
            612.431,
            265
           ],
           [
            612.446,
            264.382
           ],
           [
            612.639,
            260.461
           ]
          ],
          "holes": []
         }
        ],
        "rollLengthM": 0.7751,
        "rollWidthMm": 1270,
        "glassKg": 0.2336,
        "resinKg": 0.3534,
        "orientationDeg": 0
       }
      ],
      "totalThicknessMm": 3.29,
      "oldThicknessMm": 3,
      "glassKg": 0.9554,
      "resinKg": 1.1284,
      "alternatives": [
       {
        "rank": 18,
        "plies": [
         "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
         "Woven roving 800 g/m2",
         "Woven roving 800 g/m2"
        ],
        "thicknessMm": 3.29,
        "costPerM2": "69.08 USD/m2",
        "reason": "the cheapest that restores the skin and every measure of the panel; nearest to its limit: surface not above the limit"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 43016.11,
        "unit": "N/mm",
        "note": "old skin 32500 kN/m"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the rules of a classification society.",
       "each ply lands on the taper at its own depth, so it carries on the old ply that it replaces",
       "the last ply covers all the others and the whole taper: sanding it flush thins the longest one"
      ]
     },
     "panel": {
      "verdict": "restored",
      "shortfalls": [],
      "withinHands": [],
      "sizeMm": [
       2000,
       900
      ],
      "loads": [
       {
        "code": "class-deck",
        "name": "Weather deck pressure of a class rule",
        "value": 7,
        "unit": "kPa"
       }
      ],
      "states": [
       {
        "state": "as-built",
        "bendingXNmm": 4730279.51,
        "bendingYNmm": 4730279.51,
        "shearNPerMm": 2759.39,
        "deflections": [
         {
          "load": "class-deck",
          "deflectionMm": 11.66
         }
        ],
        "governs": "deflection, deck load of a class rule",
        "utilisation": 1.29533
       }
      ],
      "ratios": [
       {
        "code": "outer-skin-class-deck",
        "name": "Stress in the outer skin, deck load of a class rule",
        "value": 1.57386,
        "unit": "1"
       }
      ],
      "limits": [
       "The panel is a flat rectangle on four edges that do not sink; camber, hatches and uneven supports are left out.",
       "Small deflections and elastic layers; fatigue, impact, moisture, heat and buckling of the whole panel under in-plane load are left out.",
       "Stresses are direct stresses in x and y; twisting at the corners is left out."
      ]
     },
     "leftOut": [],
     "hardware": [],
     "leak": {
      "cause": "not-known",
      "title": "Not known",
      "remedy": "hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew",
      "verify": "the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing",
      "isRemedied": false,
      "text": "The way in of the water is not stopped in this plan, and the repair will not last until it is: hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing."
     },
     "checks": [
      {
       "code": "core-flush",
       "title": "New core and bond lines in the cavity",
       "state": "repaired",
       "unit": "mm",
       "demand": -0.11,
       "verdict": "passes",
       "governs": "15.9 mm core on bond lines of 0.89 mm lies 0.1 mm below flush",
       "source": "DECK-REPAIR-PRACTICE",
       "remedy": "9.5 + 6.35 mm core on bond lines of 0.53 mm lies flush"
      }
     ],
     "process": {
      "resin": {
       "code": "resin-epoxy-100to22",
       "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
       "hardener": "medium",
       "hardenerName": "Medium hardener, 100:22",
       "why": "The quickest that leaves time at 20 degC: Medium hardener, 100:22: 100 g last 27 min, 7 pots in all, a spread edge stays open for 57 min."
      },
      "demands": [
       {
        "step": "seal",
        "title": "Seal the inner skin",
        "netL": 0.0554,
        "wasteL": 0.00996,
        "totalL": 0.0653,
        "totalKg": 0.0739
       }
      ],
      "batches": [
       {
        "number": 1,
        "step": "seal",
        "title": "Seal the inner skin",
        "resinG": 61.6,
        "hardenerG": 12.3,
        "fillerG": 0,
        "weigh": [
         {
          "what": "resin",
          "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
          "addG": 61.6,
          "scaleShowsG": 61.6,
          "volumeMl": 53.57
         }
        ],
        "mixedMl": 65.34,
        "covers": [
         "Seal the inner skin"
        ],
        "useWithinMin": 14.242,
        "limitedBy": "whole-step"
       }
      ],
      "findings": [],
      "gates": [
       {
        "step": "Bonding and laminating",
        "requires": [
         "surface at least 3 K above the dew point, from the start until gel",
         "relative humidity at most 85 %",
         "deck at least 10 degC until gel"
        ]
       }
      ],
      "bondPressure": {
       "method": "weights",
       "requiredKPa": 1,
       "availableKPa": 1.19733,
       "restsOn": "the inner skin alone, which carries every kilogram to its supports",
       "quantities": [
        {
         "code": "weights",
         "name": "weights",
         "value": 34,
         "unit": "kg"
        }
       ],
       "props": {
        "needed": true,
        "why": "alone the skin would sag more than 25 mm between supports 470 mm apart and cure so; 2.0 mm is allowed. Prop a board, shaped to the camber, before anything is cut",
        "spacingMm": 200,
        "spanMm": 470
       },
       "lines": [
        {
         "what": "board",
         "from": [
          625,
          381.667
         ],
         "to": [
          1325,
          381.667
         ],
         "points": [
          [
           800,
           381.667
          ],
          [
           1150,
           381.667
          ]
         ]
        }
       ],
       "pieces": [
        {
         "label": "A1",
         "massKg": 23,
         "jacks": []
        }
       ],
       "recommendation": "Press with weights: 1.0 kPa on 0.33 m2 is 34 kg, 2 bags; nothing is screwed into the deck. It rests on the inner skin alone, which carries every kilogram to its supports.",
       "refusals": [
        "vacuum: it is not known whether the inner skin is airtight: seal every hole from below and prove it by a drop test first"
       ]
      },
      "cure": [
       {
        "step": "every bonding and laminating step",
        "temperatureC": 20,
        "basis": "stated",
        "gelH": 1.9,
        "releaseH": 9.49,
        "sandableH": 14.6,
        "recoatShutsH": 6.57,
        "fullCureH": 210.24,
        "note": "Wash off the amine blush with water and abrade before anything else goes on. Press with a thumbnail before you trust a clock: the milestone is reached when the resin says so."
       }
      ],
      "calendar": {
       "workingDays": {
        "p10": 10,
        "p50": 10.33,
        "p90": 11
       },
       "calendarDays": {
        "p10": 19.53,
        "p50": 24.19,
        "p90": 29.54
       },
       "planned": {
        "workingDays": 10,
        "calendarDays": 16.4
       },
       "criticalChain": [
        "inspect-map",
        "isolate-services",
        "lining-out"
       ],
       "tasks": [
        {
         "code": "inspect-map",
         "title": "Inspect, sound, take plugs, map and photograph",
         "gate": "none",
         "startDay": 0.333333,
         "endDay": 0.366628,
         "labourH": 1.1,
         "waitH": 0,
         "waitKind": "none",
         "isCritical": true,
         "isHoldPoint": false,
         "startsBecause": "nothing comes before it",
         "after": []
        }
       ],
       "milestones": [
        {
         "code": "first-cut",
         "title": "First cut"
        }
       ],
       "notes": [
        "Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.",
        "The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.",
        "Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure."
       ]
      }
     },
     "sections": [
      {
       "code": "labour",
       "title": "Labour",
       "amount": {
        "amount": "2449.82",
        "currency": "USD"
       }
      }
     ],
     "lines": [
      {
       "code": "labour-inspect-map",
       "section": "labour",
       "title": "Inspect, sound, take plugs, map and photograph (laminator)",
       "kind": "labour",
       "partOrLabour": "labour",
       "causeClass": "pre-existing",
       "unit": "h",
       "netQuantity": 1.1,
       "wasteQuantity": 0,
       "purchaseQuantity": 1.1,
       "pricedQuantity": "1.10",
       "packs": [],
       "unitPrice": {
        "amount": "95.00",
        "currency": "USD"
       },
       "isAveragePrice": false,
       "amount": {
        "amount": "104.50",
        "currency": "USD"
       },
       "amountRange": {
        "low": {
         "amount": "62.70",
         "currency": "USD"
        },
        "high": {
         "amount": "156.75",
         "currency": "USD"
        }
       },
       "depreciable": false,
       "taxGroup": "labour",
       "hours": {
        "low": 0.66,
        "likely": 0.99,
        "high": 1.65,
        "mean": 1.1
       }
      }
     ],
     "totals": {
      "currency": "USD",
      "net": {
       "amount": "3557.03",
       "currency": "USD"
      },
      "overhead": {
       "amount": "0.00",
       "currency": "USD"
      },
      "profit": {
       "amount": "0.00",
       "currency": "USD"
      },
      "base": {
       "amount": "3557.03",
       "currency": "USD"
      },
      "growth": {
       "amount": {
        "amount": "148.75",
        "currency": "USD"
       },
       "quantity": 0.0527,
       "unit": "m2",
       "unitPrice": {
        "amount": "2824.98",
        "currency": "USD"
       },
       "basis": "Opening that will probably be found besides; measured again at the hold and paid by what is found."
      },
      "newAreas": {
       "amount": {
        "amount": "183.27",
        "currency": "USD"
       },
       "quantity": 0.3,
       "unit": "each",
       "unitPrice": {
        "amount": "610.91",
        "currency": "USD"
       },
       "basis": "Separate areas of about 0.15 m2 that nobody recorded, only this part of the deck sounded; paid by the number found."
      },
      "taxes": [
       {
        "code": "parts",
        "name": "Goods",
        "percent": "7",
        "base": {
         "amount": "494.27",
         "currency": "USD"
        },
        "amount": {
         "amount": "34.60",
         "currency": "USD"
        }
       }
      ],
      "tax": {
       "amount": "34.60",
       "currency": "USD"
      },
      "total": {
       "amount": "3923.65",
       "currency": "USD"
      },
      "shareWithin": 0.552231,
      "contingency": {
       "amount": "570.83",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.517491,
        "amount": {
         "amount": "295.40",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4499.56",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "436.47",
         "currency": "USD"
        },
        "saves": {
         "amount": "134.36",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3064.42",
        "currency": "USD"
       },
       "p50": {
        "amount": "3821.07",
        "currency": "USD"
       },
       "p80": {
        "amount": "4499.56",
        "currency": "USD"
       },
       "p90": {
        "amount": "4907.28",
        "currency": "USD"
       }
      },
      "byCause": [
       {
        "causeClass": "pre-existing",
        "amount": {
         "amount": "3923.65",
         "currency": "USD"
        }
       }
      ],
      "parts": {
       "amount": "528.87",
       "currency": "USD"
      },
      "labour": {
       "amount": "3394.78",
       "currency": "USD"
      },
      "goods": {
       "billing": "as-used",
       "billed": {
        "amount": "441.26",
        "currency": "USD"
       },
       "bought": {
        "amount": "855.20",
        "currency": "USD"
       },
       "basis": "Charged as used: what the job takes of each pack, of an opened one the part that will be past its date, all of the paint in the colour of this boat, and one job of the wear of gear. Whoever buys for this job alone pays for whole packs."
      },
      "insurer": {
       "attributable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "prior": {
        "amount": "3923.65",
        "currency": "USD"
       },
       "improvement": {
        "amount": "0.00",
        "currency": "USD"
       },
       "wear": {
        "amount": "0.00",
        "currency": "USD"
       },
       "deductible": {
        "amount": "0.00",
        "currency": "USD"
       },
       "payable": {
        "amount": "0.00",
        "currency": "USD"
       },
       "basis": "Attributable: what happened at once, by the cause stated in the record. Prior: what was there before, and upkeep that was owed. Improvement: finish beyond the damaged panel. Wear is taken off parts and never off labour, then the deductible. Lives are judged; the policy decides."
      },
      "drivers": [
       {
        "name": "Pace of the work",
        "shareOfVariance": 0.517491
       }
      ],
      "offer": {
       "stageZero": {
        "title": "Stage 0, at a firm price: open and map, up to the hold",
        "amount": {
         "amount": "606.15",
         "currency": "USD"
        },
        "labourH": 7.68,
        "contingencyFreed": {
         "amount": "151.15",
         "currency": "USD"
        },
        "lines": [
         "labour-inspect-map",
         "labour-isolate-services",
         "labour-lining-out"
        ]
       },
       "unitRates": [
        {
         "code": "opened-m2",
         "what": "Deck opened, core replaced, closed and faired, goods counted",
         "unit": "m2",
         "quantity": 0.3276,
         "rate": {
          "amount": "1866.91",
          "currency": "USD"
         }
        }
       ],
       "authorisation": {
        "percent": 15,
        "labourH": 37.67,
        "basis": "No hour above these, 15 % more than expected, is worked before the owner has agreed in writing."
       },
       "holdPoint": "Work stops when the core is out: opening, cut and fittings are measured again, and the difference is charged or credited by the rates below."
      },
      "p90RelativeError": 0.00269588,
      "samples": 2039
     },
     "cautions": [
      {
       "code": "under-unknown",
       "severity": "danger",
       "kind": "site",
       "text": "Nobody has said what lies under this deck. Wiring, tanks and hoses are found first, by opening the lining or drilling and looking, and only then is it cut.",
       "because": "what lies under the deck is not stated",
       "protection": [
        "look before cutting"
       ],
       "hazards": [],
       "source": "COMMON-PRACTICE"
      }
     ],
     "assumptions": [
      {
       "of": "record",
       "at": "/panel/edges",
       "meaning": "how the panel is held at its edges",
       "value": "simply-supported",
       "because": "gives the larger deflection, so the comparison errs on the safe side",
       "source": "COMMON-PRACTICE"
      }
     ],
     "limits": [
      "The inside of the deck was not seen: the extent is judged from above, and may grow when the deck is opened.",
      "No core sample is recorded: take one in each zone before the deck is cut.",
      "Structure below, tanks, wiring and linings were not inspected."
     ],
     "provenance": {
      "engineVersion": "0.1.0",
      "edition": "shipped-663f56dd",
      "catalogueHash": "663f56dd31a2e9211b367b575086c842c51e4de0423da049b47d33b9e35db513",
      "priceList": "invented-dollar",
      "labourRates": "invented-dollar"
     },
     "conclusion": {
      "verdict": {
       "code": "restored",
       "sentence": "Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.",
       "notes": [
        "A deck designed today to the yardsticks named in the annex would be stiffer (deflection, deck load of a class rule). That is a remark on its design, and no fault of the deck or of the repair."
       ]
      },
      "findings": [
       {
        "about": "Z1",
        "condition": "wet-rotten",
        "areaM2": 0.176,
        "fromAftMm": [
         700,
         1250
        ],
        "fittings": [],
        "class": "next-opportunity",
        "classByService": "next-opportunity",
        "classBecause": "it grows for as long as water comes in and people walk on it",
        "wording": {
         "text": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "byService": "Z1, Panel, 700 to 1250 mm forward of its aft edge: the core is wet and rotten over 0.18 m2. It was sounded with a hammer and measured with a moisture meter. No core was seen.",
         "isSurveyors": false
        },
        "recommendation": {
         "text": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "byService": "Repair it (from above, a new skin) at the next opportunity, before another season. Verify by the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing.",
         "isSurveyors": false
        },
        "restriction": {
         "text": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "byService": "Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.",
         "isSurveyors": false
        }
       }
      ],
      "method": {
       "sentences": [
        "From above, a new skin: 0.33 m2 is opened, bad core comes out, new core (end-grain balsa core, 150 kg/m3) is bedded over a propped inner skin, and a new skin of 4 plies is laid, tapered 12:1 into the old one.",
        "No fitting has to come off.",
        "The way in of the water is not stopped by this plan: not known; hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew."
       ],
       "runnerUp": {
        "title": "From above, the old skin bonded back",
        "because": "look for cracks and crazing first: a cracked skin is replaced",
        "price": {
         "amount": "3950.29",
         "currency": "USD"
        }
       }
      },
      "reinspection": [
       {
        "when": "core out",
        "before": "anything is closed (hold point)",
        "look": "extent, and the core all round the edge of the opening",
        "accept": "pale, hard and bonded all round; core and edges at most 12 % moisture, two equal readings a few days apart",
        "by": "surveyor, with the owner’s consent to what is found",
        "source": "COMMON-PRACTICE"
       }
      ]
     },
     "bibliography": [
      {
       "number": 1,
       "key": "COMMON-PRACTICE",
       "title": "Common practice, no published source",
       "body": "the trade",
       "year": "n.d.",
       "readAs": "common-practice"
      }
     ]
    }
   },
   "202": {
    "id": "01900000-0000-7000-8000-000000000017",
    "status": "waiting",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "expiresAt": "2027-03-04T08:00:00.000Z"
   }
  }
 },
 "POST /v1/estimating/basket": {
  "body": {
   "priceList": "invented-dollar",
   "needs": [
    {
     "id": "core",
     "material": "core-balsa-150",
     "requiredQuantity": 1.2,
     "unit": "m2"
    }
   ]
  },
  "answers": {
   "200": {
    "total": {
     "amount": "60.25",
     "currency": "USD"
    },
    "lines": [
     {
      "sku": "A-balsa-150-635-plain-1220x610",
      "name": "End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 1220 x 610 mm",
      "supplier": "chandlery-a",
      "content": {
       "form": "plain",
       "sheet": {
        "widthMm": 610,
        "lengthMm": 1220
       },
       "material": "core-balsa-150",
       "thicknessMm": 6.35
      },
      "packCount": 2,
      "quantityPerPack": 0.7442,
      "quantity": 1.4884,
      "unit": "m2",
      "unitPrice": {
       "amount": "24.80",
       "currency": "USD"
      },
      "amount": {
       "amount": "49.60",
       "currency": "USD"
      },
      "cutFee": {
       "amount": "0.00",
       "currency": "USD"
      },
      "cutCount": 0,
      "massKg": 1.418,
      "hazardous": false,
      "oversize": false
     }
    ],
    "orders": [
     {
      "supplier": "chandlery-a",
      "name": "Invented chandlery A",
      "goods": {
       "amount": "49.60",
       "currency": "USD"
      },
      "cutFees": {
       "amount": "0.00",
       "currency": "USD"
      },
      "delivery": {
       "amount": "10.65",
       "currency": "USD"
      },
      "isDeliveryFree": false,
      "hazardSurcharge": {
       "amount": "0.00",
       "currency": "USD"
      },
      "hazardBoxes": 0,
      "oversizeFreight": {
       "amount": "0.00",
       "currency": "USD"
      },
      "total": {
       "amount": "60.25",
       "currency": "USD"
      },
      "massKg": 1.418
     }
    ],
    "substitutions": [],
    "leftovers": [
     {
      "material": "core-balsa-150",
      "thicknessMm": 6.35,
      "form": "plain",
      "sheet": {
       "widthMm": 610,
       "lengthMm": 1220
      },
      "quantity": 0.2884,
      "unit": "m2",
      "worth": {
       "amount": "9.61",
       "currency": "USD"
      }
     }
    ],
    "coverage": [
     {
      "material": "core-balsa-150",
      "unit": "m2",
      "required": 1.2,
      "fromOnHand": 0,
      "covered": 1.2,
      "short": 0,
      "needs": [
       {
        "id": "core",
        "requiredQuantity": 1.2
       }
      ]
     }
    ],
    "matched": [],
    "currency": "USD",
    "priceList": "invented-dollar",
    "isInvented": true,
    "pricesIncludeTax": false,
    "proof": {
     "kind": "proven"
    },
    "isComplete": true,
    "missing": [],
    "excluded": [],
    "byEstimate": [
     {
      "estimate": "",
      "amount": {
       "amount": "60.25",
       "currency": "USD"
      }
     }
    ],
    "secondBest": {
     "total": {
      "amount": "139.30",
      "currency": "USD"
     },
     "lines": [
      {
       "sku": "B-balsa-150-635-plain-2440x1220",
       "name": "End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 2440 x 1220 mm",
       "supplier": "chandlery-b",
       "content": {
        "form": "plain",
        "sheet": {
         "widthMm": 1220,
         "lengthMm": 2440
        },
        "material": "core-balsa-150",
        "thicknessMm": 6.35
       },
       "packCount": 1,
       "quantityPerPack": 2.9768,
       "quantity": 2.9768,
       "unit": "m2",
       "unitPrice": {
        "amount": "80.50",
        "currency": "USD"
       },
       "amount": {
        "amount": "80.50",
        "currency": "USD"
       },
       "cutFee": {
        "amount": "0.00",
        "currency": "USD"
       },
       "cutCount": 0,
       "massKg": 2.835,
       "hazardous": false,
       "oversize": true
      }
     ],
     "orders": [
      {
       "supplier": "chandlery-b",
       "name": "Invented chandlery B",
       "goods": {
        "amount": "80.50",
        "currency": "USD"
       },
       "cutFees": {
        "amount": "0.00",
        "currency": "USD"
       },
       "delivery": {
        "amount": "8.40",
        "currency": "USD"
       },
       "isDeliveryFree": false,
       "hazardSurcharge": {
        "amount": "0.00",
        "currency": "USD"
       },
       "hazardBoxes": 0,
       "oversizeFreight": {
        "amount": "50.40",
        "currency": "USD"
       },
       "total": {
        "amount": "139.30",
        "currency": "USD"
       },
       "massKg": 2.835
      }
     ],
     "substitutions": [],
     "leftovers": [
      {
       "material": "core-balsa-150",
       "thicknessMm": 6.35,
       "form": "plain",
       "sheet": {
        "widthMm": 1220,
        "lengthMm": 2440
       },
       "quantity": 1.7768,
       "unit": "m2",
       "worth": {
        "amount": "48.05",
        "currency": "USD"
       }
      }
     ],
     "coverage": [
      {
       "material": "core-balsa-150",
       "unit": "m2",
       "required": 1.2,
       "fromOnHand": 0,
       "covered": 1.2,
       "short": 0,
       "needs": [
        {
         "id": "core",
         "requiredQuantity": 1.2
        }
       ]
      }
     ],
     "matched": [],
     "difference": {
      "amount": "79.05",
      "currency": "USD"
     },
     "kind": "other-suppliers"
    },
    "warnings": [
     "the prices are invented: use them to try the calculation, not to buy"
    ]
   }
  }
 },
 "POST /v1/estimating/bond-pressure": {
  "body": {
   "areaM2": 0.8,
   "lengthMm": 1000,
   "widthMm": 800,
   "innerSkin": {
    "thicknessMm": 3,
    "spanMm": 600
   }
  },
  "answers": {
   "200": {
    "method": "weights",
    "requiredKPa": 1,
    "availableKPa": 1.22583,
    "restsOn": "the inner skin alone, which carries every kilogram to its supports",
    "turns": 1,
    "innerSkin": {
     "loadKPa": 1.3239,
     "sagMm": 110.32,
     "allowedSagMm": 2,
     "stressMPa": 39.7169,
     "allowedStressMPa": 46.6667,
     "verdict": "fails",
     "props": {
      "needed": true,
      "spacingMm": 270,
      "spanMm": 600,
      "lines": 2,
      "count": 6,
      "why": "alone the skin would sag more than 25 mm between supports 600 mm apart and cure so; 2.0 mm is allowed. Prop a board, shaped to the camber, before anything is cut"
     }
    },
    "options": [
     {
      "method": "weights",
      "availableKPa": 1.22583,
      "utilisation": 0.815773,
      "verdict": "passes",
      "restsOn": "the inner skin alone, which carries every kilogram to its supports",
      "onInnerSkinKPa": 1.3239,
      "evenness": "even where the bags touch; bags of sand follow the camber, blocks do not; bridge the gaps with a caul",
      "quantities": [
       {
        "code": "weights",
        "name": "weights",
        "value": 82,
        "unit": "kg"
       }
      ],
      "onPieceKgPerM2": 101.972,
      "reasons": [
       "1.0 kPa on 0.80 m2 is 82 kg, 5 bags; nothing is screwed into the deck"
      ],
      "refusals": []
     }
    ],
    "quantities": [
     {
      "code": "weights",
      "name": "weights",
      "value": 82,
      "unit": "kg"
     }
    ],
    "lines": [
     {
      "what": "board",
      "from": [
       0,
       200
      ],
      "to": [
       1000,
       200
      ],
      "points": [
       [
        166.667,
        200
       ],
       [
        500,
        200
       ],
       [
        833.333,
        200
       ]
      ]
     }
    ],
    "onPieceKgPerM2": 101.972,
    "recommendation": "Press with weights: 1.0 kPa on 0.80 m2 is 82 kg, 5 bags; nothing is screwed into the deck. It rests on the inner skin alone, which carries every kilogram to its supports.",
    "refusals": [
     "battens: it is not stated what the screws would hold in: say whether it is wood or laminate, and how thick",
     "vacuum: it is not known whether the inner skin is airtight: seal every hole from below and prove it by a drop test first"
    ],
    "ambientKPa": 101.325,
    "assumptions": [
     {
      "at": "/requiredKPa",
      "meaning": "pressure that the bed needs",
      "value": "1 kPa",
      "because": "a flexible skin and a thin bed close under 0.5 to 1 kPa, 50 to 100 kg/m2; more sags the skin below",
      "source": "FROM-MEMORY"
     }
    ]
   }
  }
 },
 "POST /v1/estimating/calendar": {
  "body": {
   "startDate": "2026-05-04",
   "resin": "resin-epoxy-5to1",
   "hardener": "medium",
   "crew": {
    "people": 2
   },
   "runs": 100,
   "drivers": {
    "opened-m2": 1.2,
    "cut-m": 4.4
   },
   "flags": {
    "skin": "relay",
    "access": "from-above",
    "condition": "wet-rotten",
    "press": "weights",
    "shelter": "tent",
    "below": "open",
    "skill": "professional",
    "props": "needed",
    "finish": "none",
    "nonskid": "no",
    "berth": "ashore",
    "panel": "flat"
   }
  },
  "answers": {
   "200": {
    "startDate": "2026-05-04",
    "timeZone": "UTC",
    "tasks": [
     {
      "code": "inspect-map",
      "operation": "inspect-map",
      "title": "Inspect, sound, take plugs, map and photograph",
      "phase": "survey",
      "skill": "laminator",
      "gate": "none",
      "startAt": "2026-05-04T08:00:00Z",
      "endAt": "2026-05-04T09:00:00Z",
      "readyAt": "2026-05-04T09:00:00Z",
      "startDay": 0.333333,
      "endDay": 0.37508,
      "labourH": 2,
      "hands": 2,
      "waitH": 0,
      "waitKind": "none",
      "isCritical": true,
      "criticality": 1,
      "startsBecause": "nothing comes before it",
      "isHoldPoint": false,
      "after": []
     }
    ],
    "criticalChain": [
     "inspect-map",
     "isolate-services",
     "tent"
    ],
    "finish": {
     "early": "2026-05-08T09:29:00Z",
     "likely": "2026-05-12T09:17:00Z",
     "late": "2026-05-12T10:10:00Z"
    },
    "plannedFinish": "2026-05-12T09:41:00Z",
    "calendarDays": {
     "p10": 4.4,
     "p50": 8.39,
     "p90": 8.42
    },
    "planned": {
     "workingDays": 4,
     "calendarDays": 8.4
    },
    "workingDays": {
     "p10": 3,
     "p50": 4,
     "p90": 5
    },
    "labourH": {
     "low": 13.97,
     "likely": 23.31,
     "high": 41.6
    },
    "milestones": [
     {
      "code": "first-cut",
      "title": "First cut",
      "at": "2026-05-04T14:08:00Z"
     }
    ],
    "simulation": {
     "seed": 20260504,
     "runs": 100,
     "distribution": "triangular over low, likely and high; half of each spread common to the job"
    },
    "assumptions": [
     {
      "at": "/crew/hoursPerDay",
      "meaning": "length of the working day",
      "value": "8 h",
      "because": "a yard's day",
      "source": "COMMON-PRACTICE"
     }
    ],
    "notes": [
     "Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.",
     "The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.",
     "Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure."
    ]
   }
  }
 },
 "POST /v1/estimating/core-bill": {
  "body": {
   "material": "core-balsa-150",
   "openings": [
    {
     "label": "A",
     "outline": [
      [
       0,
       0
      ],
      [
       600,
       0
      ],
      [
       600,
       400
      ],
      [
       0,
       400
      ]
     ]
    }
   ],
   "cavityMm": 13.7,
   "workUnits": 0
  },
  "answers": {
   "200": {
    "stack": {
     "layers": [
      {
       "thicknessMm": 12.7,
       "form": "plain"
      }
     ],
     "joints": "single-layer",
     "bondLine": {
      "value": 0.5,
      "unit": "mm",
      "meaning": "bond line, each",
      "origin": {
       "kind": "computed",
       "formula": "coring.bond-line",
       "title": "Nearest to the usual that brings the skin flush",
       "symbol": "b",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {
        "bondLineMm": {
         "value": 0.89,
         "unit": "mm",
         "meaning": "usual bond line",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/bondLineMm",
          "low": 0.25,
          "high": 2.2,
          "because": "what a 1/4 in notch leaves",
          "cite": {
           "source": "MAKER-NOTCH",
           "note": "1/4 in notch, 0.89 l/m2"
          }
         }
        },
        "leastBondLineMm": {
         "value": 0.25,
         "unit": "mm",
         "meaning": "thinnest bond line",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/leastBondLineMm",
          "low": 0.2,
          "high": 0.64,
          "because": "a tight bed on balsa, pressed",
          "cite": {
           "source": "FROM-MEMORY",
           "note": "a maker's calculator: 0.25 to 0.64 mm on balsa, 0.2 to 0.5 mm on foam, each side"
          }
         }
        },
        "mostBondLineMm": {
         "value": 3,
         "unit": "mm",
         "meaning": "thickest bond line",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/mostBondLineMm",
          "low": 1,
          "high": 3,
          "because": "a paste bed of 1 to 3 mm",
          "cite": {
           "source": "COMMON-PRACTICE"
          }
         }
        },
        "wetLineMm": {
         "value": 0.1,
         "unit": "mm",
         "meaning": "resin under plies laid wet on the core",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/wetLineMm",
          "low": 0,
          "high": 0.2,
          "because": "the first ply lies on the core in its own resin; there is no bed of paste",
          "cite": {
           "source": "FROM-MEMORY",
           "note": "0 to 0.2 mm"
          }
         }
        },
        "lowestFlushMm": {
         "value": -1,
         "unit": "mm",
         "meaning": "lowest the skin may sit",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/lowestFlushMm",
          "because": "a millimetre low is faired",
          "cite": {
           "source": "COMMON-PRACTICE"
          }
         }
        },
        "highestFlushMm": {
         "value": 0,
         "unit": "mm",
         "meaning": "highest the skin may sit",
         "origin": {
          "kind": "assumed",
          "at": "/stackRules/highestFlushMm",
          "because": "a proud skin cannot be faired away",
          "cite": {
           "source": "DECK-REPAIR-PRACTICE"
          }
         }
        }
       }
      }
     },
     "wetLine": {
      "value": 0,
      "unit": "mm",
      "meaning": "no plies laid wet on the core",
      "origin": {
       "kind": "computed",
       "formula": "coring.no-wet-line",
       "title": "The skin has a bed of its own",
       "symbol": "w",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "height": {
      "value": 13.7,
      "unit": "mm",
      "meaning": "height of the stack",
      "origin": {
       "kind": "computed",
       "formula": "coring.stack-height",
       "title": "Height of new core with its bond lines",
       "symbol": "H",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "flush": {
      "value": 0,
      "unit": "mm",
      "meaning": "how far the new skin sits above the old",
      "origin": {
       "kind": "computed",
       "formula": "coring.flush",
       "title": "Stack against cavity; positive stands proud",
       "symbol": "f",
       "cite": {
        "source": "DECK-REPAIR-PRACTICE",
        "note": "core and glue lines must not be higher than the old core, or the skin sits high"
       },
       "inputs": {}
      }
     },
     "check": {
      "verdict": "holds",
      "governs": "flush",
      "beyondMm": 0,
      "words": "12.7 mm core on bond lines of 0.5 mm lies flush",
      "nextBest": {
       "layersMm": [
        9.5
       ],
       "bondLineMm": 1.6,
       "heightMm": 12.7,
       "flushMm": -1,
       "fit": "flush",
       "beyondMm": 0,
       "words": "9.5 mm core on bond lines of 1.6 mm lies 1 mm below flush"
      }
     },
     "choices": [
      {
       "layersMm": [
        12.7
       ],
       "bondLineMm": 0.5,
       "heightMm": 13.7,
       "flushMm": 0,
       "fit": "flush",
       "beyondMm": 0,
       "words": "12.7 mm core on bond lines of 0.5 mm lies flush"
      }
     ],
     "bondResin": {
      "value": 0.24,
      "unit": "l",
      "meaning": "filled resin",
      "origin": {
       "kind": "computed",
       "formula": "coring.bond-volume",
       "title": "Filled resin in the bond lines",
       "symbol": "V",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "newCoreMass": {
      "value": 0.4572,
      "unit": "kg",
      "meaning": "mass",
      "origin": {
       "kind": "computed",
       "formula": "coring.core-mass",
       "title": "Mass of core",
       "symbol": "m",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "oldCoreMass": {
      "value": 0.4932,
      "unit": "kg",
      "meaning": "mass",
      "origin": {
       "kind": "computed",
       "formula": "coring.core-mass",
       "title": "Mass of core",
       "symbol": "m",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "massChange": {
      "value": -0.036,
      "unit": "kg",
      "meaning": "mass that the deck gains in core",
      "origin": {
       "kind": "computed",
       "formula": "coring.mass-change",
       "title": "New core less old core",
       "symbol": "Δm",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "assumptions": [
      {
       "value": 0.89,
       "unit": "mm",
       "meaning": "usual bond line",
       "origin": {
        "kind": "assumed",
        "at": "/stackRules/bondLineMm",
        "low": 0.25,
        "high": 2.2,
        "because": "what a 1/4 in notch leaves",
        "cite": {
         "source": "MAKER-NOTCH",
         "note": "1/4 in notch, 0.89 l/m2"
        }
       }
      }
     ]
    },
    "mosaic": {
     "pieces": [
      {
       "label": "A1",
       "opening": "A",
       "layer": 1,
       "beddingOrder": 1,
       "bay": 1,
       "outline": [
        [
         1,
         1
        ],
        [
         599,
         1
        ],
        [
         599,
         399
        ]
       ],
       "holes": [],
       "areaM2": 0.238,
       "thicknessMm": 12.7,
       "form": "plain",
       "bleedHoles": [
        [
         100,
         100
        ],
        [
         100,
         200
        ],
        [
         100,
         300
        ]
       ],
       "bleedDiameterMm": 4,
       "isUnderLip": false,
       "entry": {
        "way": "drops",
        "path": [
         [
          0,
          0
         ]
        ]
       }
      }
     ],
     "solidFills": [],
     "division": {
      "largestPieceM2": 0.45,
      "limitedBy": "nothing",
      "hours": 0.319,
      "choices": [
       {
        "largestPieceM2": 0.45,
        "pieces": 1,
        "workH": 0.29,
        "airH": 0.0294
       }
      ],
      "words": "1 piece of at most 0.45 m2: each place in one piece"
     },
     "netAreaM2": 0.238,
     "regionAreaM2": 0.24,
     "jointAreaM2": 0.002,
     "solidAreaM2": 0,
     "solidVolumeL": 0,
     "jointLengthM": 0,
     "buttLengthM": 0,
     "jointOnSupportM": 0,
     "findings": [],
     "assumptions": [
      {
       "value": 0.046,
       "unit": "m2",
       "meaning": "largest piece slid under a lip",
       "origin": {
        "kind": "assumed",
        "at": "/mosaicRules/handPieceM2",
        "because": "about half a square foot is slid and turned by hand without scraping its bed off",
        "cite": {
         "source": "COMMON-PRACTICE"
        }
       }
      }
     ]
    },
    "division": {
     "options": [
      {
       "pieces": 1,
       "sheetCost": 744200,
       "hours": 0.319
      }
     ],
     "chosen": 0,
     "words": "1 piece of at most 0.45 m2: each place in one piece"
    },
    "cuts": [
     {
      "thicknessMm": 12.7,
      "form": "plain",
      "sheets": [
       {
        "stockId": "1220 x 610",
        "number": 1,
        "outline": [
         [
          0,
          0
         ],
         [
          1220,
          0
         ],
         [
          1220,
          610
         ]
        ],
        "holes": [],
        "placements": [
         {
          "pieceId": "A1",
          "copy": 1,
          "turnDeg": 0,
          "moveMm": [
           -1,
           -1
          ],
          "outline": [
           [
            0,
            0
           ],
           [
            598,
            0
           ],
           [
            598,
            398
           ]
          ],
          "holes": [],
          "cutOrder": 1
         }
        ],
        "sheetAreaM2": 0.7442,
        "pieceAreaM2": 0.238,
        "utilisation": 0.319812,
        "offcuts": [
         {
          "outline": [
           [
            600,
            0
           ],
           [
            1220,
            0
           ],
           [
            1220,
            610
           ]
          ],
          "areaM2": 0.3782
         }
        ],
        "label": "1",
        "isBought": true,
        "lengthMm": 1220,
        "widthMm": 610,
        "offcutsKept": [
         {
          "outline": [
           [
            600,
            0
           ],
           [
            1220,
            0
           ],
           [
            1220,
            610
           ]
          ],
          "areaM2": 0.3782
         }
        ],
        "use": {
         "sheetMm2": 744200,
         "piecesMm2": 238004,
         "kerfMm2": 1996,
         "trimMm2": 0,
         "roundingMm2": 503780,
         "scrapsMm2": 420
        }
       }
      ],
      "cost": 744200,
      "leastCost": 744200,
      "use": {
       "sheetMm2": 744200,
       "piecesMm2": 238004,
       "kerfMm2": 1996,
       "trimMm2": 0,
       "roundingMm2": 503780,
       "scrapsMm2": 420
      }
     }
    ],
    "kerfMm": 2,
    "sheetCount": 1,
    "cost": 744200,
    "netArea": {
     "value": 0.238,
     "unit": "m2",
     "meaning": "core pieces",
     "origin": {
      "kind": "computed",
      "formula": "coring.layout",
      "title": "Area of outlines",
      "symbol": "A",
      "cite": {
       "source": "ARITHMETIC"
      },
      "inputs": {}
     }
    },
    "boughtArea": {
     "value": 0.7442,
     "unit": "m2",
     "meaning": "sheets and offcuts cut",
     "origin": {
      "kind": "computed",
      "formula": "coring.layout",
      "title": "Area of outlines",
      "symbol": "A",
      "cite": {
       "source": "ARITHMETIC"
      },
      "inputs": {}
     }
    },
    "wasteFraction": {
     "value": 0.680188,
     "unit": "1",
     "meaning": "waste share",
     "origin": {
      "kind": "computed",
      "formula": "coring.waste-share",
      "title": "Share of bought sheet that does not end up in the deck",
      "symbol": "w",
      "cite": {
       "source": "ARITHMETIC"
      },
      "inputs": {}
     }
    },
    "utilisation": 0.319812,
    "waste": {
     "sheetMm2": 744200,
     "piecesMm2": 238004,
     "kerfMm2": 1996,
     "trimMm2": 0,
     "roundingMm2": 503780,
     "scrapsMm2": 420
    },
    "assumptions": [
     {
      "value": 0.89,
      "unit": "mm",
      "meaning": "usual bond line",
      "origin": {
       "kind": "assumed",
       "at": "/stackRules/bondLineMm",
       "low": 0.25,
       "high": 2.2,
       "because": "what a 1/4 in notch leaves",
       "cite": {
        "source": "MAKER-NOTCH",
        "note": "1/4 in notch, 0.89 l/m2"
       }
      }
     }
    ]
   }
  }
 },
 "POST /v1/estimating/cost-rollup": {
  "body": {
   "currency": "EUR",
   "taxGroups": [
    {
     "code": "standard",
     "name": "VAT",
     "percent": "20"
    }
   ],
   "lines": [
    {
     "code": "saw",
     "section": "labour",
     "title": "Saw the deck open",
     "partOrLabour": "part",
     "causeClass": "sudden",
     "netQuantity": 3,
     "unit": "h",
     "unitRate": "60.00",
     "taxGroup": "standard"
    }
   ],
   "risk": {
    "evidence": "mapped-with-plugs",
    "samples": 100
   }
  },
  "answers": {
   "200": {
    "rollUp": {
     "currency": "EUR",
     "lines": [
      {
       "code": "saw",
       "section": "labour",
       "title": "Saw the deck open",
       "partOrLabour": "part",
       "causeClass": "sudden",
       "scope": "in",
       "unit": "h",
       "rateIncludesTax": false,
       "taxGroup": "standard",
       "spread": {
        "low": 1,
        "high": 1
       },
       "atExtents": [],
       "quantity": {
        "net": 3,
        "waste": 0,
        "required": 3,
        "charged": "3.00"
       },
       "unitRate": {
        "amount": "60.00",
        "currency": "EUR"
       },
       "isAverageRate": false,
       "packs": [],
       "amount": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "range": {
        "low": {
         "amount": "180.00",
         "currency": "EUR"
        },
        "likely": {
         "amount": "180.00",
         "currency": "EUR"
        },
        "high": {
         "amount": "180.00",
         "currency": "EUR"
        }
       },
       "why": {
        "value": 180,
        "unit": "EUR",
        "meaning": "Saw the deck open, amount without tax",
        "origin": {
         "kind": "computed",
         "formula": "costing.line-amount",
         "title": "Quantity times rate, rounded once, half-away-from-zero",
         "symbol": "A",
         "cite": {
          "source": "ARITHMETIC",
          "note": "quantity fixed once, multiplied exactly, rounded once to the minor unit"
         },
         "inputs": {
          "quantity": {
           "value": 3,
           "unit": "h",
           "meaning": "quantity at pricing precision",
           "origin": {
            "kind": "computed",
            "formula": "costing.pricing-quantity",
            "title": "Quantity fixed to 2 decimals, half-away-from-zero",
            "symbol": "q",
            "cite": {
             "source": "ARITHMETIC",
             "note": "quantity fixed once, multiplied exactly, rounded once to the minor unit"
            },
            "inputs": {}
           }
          },
          "unitRate": {
           "value": 60,
           "unit": "EUR/h",
           "meaning": "unit rate",
           "origin": {
            "kind": "entered",
            "at": "/lines/0/unitRate"
           }
          }
         }
        }
       }
      }
     ],
     "outOfScope": [],
     "sections": [
      {
       "section": "labour",
       "title": "Labour",
       "lineCount": 1,
       "amount": {
        "amount": "180.00",
        "currency": "EUR"
       }
      }
     ],
     "direct": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "overhead": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "profit": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "provisional": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "contingency": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "net": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "tax": {
      "amount": "36.00",
      "currency": "EUR"
     },
     "gross": {
      "amount": "216.00",
      "currency": "EUR"
     },
     "taxes": [
      {
       "code": "standard",
       "name": "VAT",
       "percent": "20",
       "taxable": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "tax": {
        "amount": "36.00",
        "currency": "EUR"
       }
      }
     ],
     "byCause": [
      {
       "causeClass": "sudden",
       "direct": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "loadings": {
        "amount": "0.00",
        "currency": "EUR"
       },
       "net": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "tax": {
        "amount": "36.00",
        "currency": "EUR"
       },
       "gross": {
        "amount": "216.00",
        "currency": "EUR"
       }
      }
     ],
     "byPartOrLabour": [
      {
       "partOrLabour": "part",
       "direct": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "loadings": {
        "amount": "0.00",
        "currency": "EUR"
       },
       "net": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "tax": {
        "amount": "36.00",
        "currency": "EUR"
       },
       "gross": {
        "amount": "216.00",
        "currency": "EUR"
       }
      }
     ],
     "byCauseAndPart": [
      {
       "causeClass": "sudden",
       "partOrLabour": "part",
       "direct": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "loadings": {
        "amount": "0.00",
        "currency": "EUR"
       },
       "net": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "tax": {
        "amount": "36.00",
        "currency": "EUR"
       },
       "gross": {
        "amount": "216.00",
        "currency": "EUR"
       }
      }
     ],
     "depreciation": {
      "parts": {
       "amount": "180.00",
       "currency": "EUR"
      },
      "depreciation": {
       "amount": "0.00",
       "currency": "EUR"
      },
      "remaining": {
       "amount": "180.00",
       "currency": "EUR"
      }
     },
     "terms": {
      "overheadPercent": "0",
      "profitPercent": "0",
      "rounding": "half-away-from-zero"
     },
     "assumptions": []
    },
    "risk": {
     "currency": "EUR",
     "samples": 100,
     "seed": 1,
     "shape": "triangular",
     "extent": {
      "low": 0.812597,
      "likely": 1.05,
      "high": 1.35676
     },
     "point": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "mean": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "deviation": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "p10": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "p50": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "p80": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "p90": {
      "amount": "180.00",
      "currency": "EUR"
     },
     "p90StandardError": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "p90RelativeError": 0,
     "contingency": {
      "amount": "0.00",
      "currency": "EUR"
     },
     "shareAtPoint": 1,
     "drivers": [
      {
       "code": "extent",
       "title": "Hidden extent",
       "atP10": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "atP90": {
        "amount": "180.00",
        "currency": "EUR"
       },
       "swing": {
        "amount": "0.00",
        "currency": "EUR"
       },
       "varianceShare": 0
      }
     ],
     "jointShare": 0,
     "histogram": [
      {
       "from": 180,
       "to": 180,
       "count": 100
      }
     ],
     "information": {
      "reserveNow": {
       "amount": "0.00",
       "currency": "EUR"
      },
      "reserveThen": {
       "amount": "0.00",
       "currency": "EUR"
      },
      "reserveFreed": {
       "amount": "0.00",
       "currency": "EUR"
      }
     },
     "assumptions": [
      {
       "value": 1.05,
       "unit": "1",
       "meaning": "extent factor",
       "origin": {
        "kind": "assumed",
        "at": "/extent",
        "because": "evidence grade mapped-with-plugs",
        "cite": {
         "source": "TRADE-EXTENT-JUDGEMENT",
         "note": "judgement, anchored to repairs whose first and last extent were told and to growth of other repair trades; no frequency statistic of decks exists"
        },
        "low": 0.812597,
        "high": 1.35676
       }
      }
     ]
    }
   }
  }
 },
 "POST /v1/estimating/cure-plan": {
  "body": {
   "resin": "resin-epoxy-5to1",
   "hardener": "medium",
   "shelter": "open",
   "temperature": {
    "forecast": {
     "hours": [
      {
       "at": "2026-05-04T06:00:00Z",
       "temperatureC": 18,
       "relativeHumidityPercent": 60
      },
      {
       "at": "2026-05-04T07:00:00Z",
       "temperatureC": 18,
       "relativeHumidityPercent": 60
      }
     ]
    }
   }
  },
  "answers": {
   "200": {
    "cure": {
     "resin": "resin-epoxy-5to1",
     "hardener": "medium",
     "referenceC": 25,
     "activationEnergy": {
      "likely": 55,
      "low": 45,
      "high": 65,
      "basis": "activation energy of the resin with its band; the hours are the hardener's own at 25 degC"
     },
     "stopsBelowC": 8,
     "deck": {
      "meanC": 18,
      "coldestC": 18,
      "warmestC": 18,
      "overH": 1
     },
     "stoppedH": 0,
     "milestones": [
      {
       "code": "gel",
       "title": "Gelled: leave it alone",
       "ageH": 1,
       "reason": "the forecast ends after 1 h with 58 % of the cure done"
      }
     ],
     "notes": [
      "Wash off the amine blush with water and abrade before anything else goes on.",
      "Press with a thumbnail before you trust a clock: the milestone is reached when the resin says so."
     ],
     "assumptions": [
      {
       "at": "/warmth/sunK",
       "meaning": "how much the sun warms the deck above the air",
       "value": "0 K",
       "because": "shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on",
       "source": "COMMON-PRACTICE"
      }
     ]
    },
    "weather": {
     "steps": [
      {
       "code": "bond",
       "title": "Bond or laminate",
       "requires": [
        {
         "gate": "dew-margin",
         "text": "surface at least 3 K above the dew point, from the start until gel",
         "limit": 3,
         "unit": "K",
         "cite": {
          "source": "ISO-8502-4"
         }
        }
       ],
       "windows": [],
       "shutBy": [
        {
         "gate": "dew-margin",
         "hours": 1
        }
       ]
      }
     ],
     "hours": [
      {
       "at": "2026-05-04T06:00:00Z",
       "dewPointC": 10.11,
       "deckC": 10.17,
       "dewMarginK": 0.059752
      }
     ],
     "assumptions": [
      {
       "at": "/warmth/sunK",
       "meaning": "how much the sun warms the deck above the air",
       "value": "0 K",
       "because": "shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on",
       "source": "COMMON-PRACTICE"
      }
     ]
    }
   }
  }
 },
 "POST /v1/estimating/cutting-plan": {
  "body": {
   "pieces": [
    {
     "id": "A1",
     "outline": [
      [
       0,
       0
      ],
      [
       300,
       0
      ],
      [
       300,
       200
      ],
      [
       0,
       200
      ]
     ],
     "turnsDeg": [
      0,
      180
     ]
    }
   ],
   "stock": [
    {
     "id": "whole",
     "outline": [
      [
       0,
       0
      ],
      [
       1220,
       0
      ],
      [
       1220,
       610
      ],
      [
       0,
       610
      ]
     ],
     "cost": 40
    }
   ],
   "kerfMm": 2,
   "edgeTrimMm": 5,
   "workUnits": 0
  },
  "answers": {
   "200": {
    "onSheets": {
     "sheets": [
      {
       "stockId": "whole",
       "number": 1,
       "outline": [
        [
         0,
         0
        ],
        [
         1220,
         0
        ],
        [
         1220,
         610
        ]
       ],
       "holes": [],
       "placements": [
        {
         "pieceId": "A1",
         "copy": 1,
         "turnDeg": 0,
         "moveMm": [
          5,
          5
         ],
         "outline": [
          [
           5,
           5
          ],
          [
           305,
           5
          ],
          [
           305,
           205
          ]
         ],
         "holes": [],
         "cutOrder": 1
        }
       ],
       "sheetAreaM2": 0.7442,
       "pieceAreaM2": 0.06,
       "utilisation": 0.0806235,
       "offcuts": [
        {
         "outline": [
          [
           307,
           0
          ],
          [
           1220,
           0
          ],
          [
           1220,
           610
          ]
         ],
         "areaM2": 0.5569
        }
       ]
      }
     ],
     "cost": 40,
     "sheetAreaM2": 0.7442,
     "pieceAreaM2": 0.06,
     "utilisation": 0.0806235,
     "leastCost": 40,
     "workUnits": 0,
     "gridStepMm": 0.0001
    },
    "seed": 1,
    "workUnits": 0,
    "timeLimitS": 20
   }
  }
 },
 "POST /v1/estimating/ladder": {
  "body": {
   "panel": {
    "outline": [
     [
      0,
      0
     ],
     [
      2000,
      0
     ],
     [
      2000,
      900
     ],
     [
      0,
      900
     ]
    ]
   },
   "outerSkin": {
    "thicknessMm": 3
   },
   "innerSkin": {
    "thicknessMm": 2
   },
   "core": {
    "thicknessMm": "1/2 in"
   },
   "zones": [
    {
     "id": "Z1",
     "outline": [
      [
       700,
       300
      ],
      [
       1250,
       300
      ],
      [
       1250,
       620
      ],
      [
       700,
       620
      ]
     ]
    }
   ]
  },
  "answers": {
   "200": {
    "recommended": {
     "rung": "above-new-skin",
     "title": "From above, a new skin",
     "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
    },
    "runnerUp": {
     "rung": "above-old-skin",
     "title": "From above, the old skin bonded back",
     "because": "look for cracks and crazing first: a cracked skin is replaced"
    },
    "rungs": [
     {
      "rung": "close-leak",
      "title": "Stop the leak alone",
      "verdict": "unfit",
      "deciding": {
       "code": "more-than-a-leak",
       "text": "what is to be mended here is more than the way in of the water: that is stopped beside the repair",
       "source": "COMMON-PRACTICE",
       "wouldFit": "a crack, an open joint, a hatch or a chainplate that leaks over dry, sound core"
      },
      "conditions": [],
      "leavesUndone": [
       "the place is faired, not painted: a painted or moulded deck is touched up beside it",
       "core farther away was not seen: sound it again after a season"
      ],
      "stages": [
       "clean to sound laminate",
       "grind or dig back",
       "close or seal"
      ],
      "isRough": true
     }
    ],
    "places": [
     {
      "place": "Z1",
      "badAreaM2": 0.176,
      "rung": "above-new-skin",
      "title": "From above, a new skin",
      "because": "0.18 m2 is opened from above and laminated anew, the soundest skin where the deck is painted anyway"
     }
    ]
   }
  }
 },
 "POST /v1/estimating/laminate-schedule": {
  "body": {
   "resin": "resin-epoxy-2to1",
   "relaid": {
    "oldSkin": {
     "thicknessMm": 3
    },
    "fabrics": [
     {
      "material": "reinforcement-woven-roving-600"
     }
    ],
    "limits": {
     "mostPlies": 4
    },
    "layOut": {
     "opening": [
      [
       0,
       0
      ],
      [
       600,
       0
      ],
      [
       600,
       400
      ],
      [
       0,
       400
      ]
     ]
    }
   },
   "rebedded": {
    "skinThicknessMm": 2,
    "opening": [
     [
      0,
      0
     ],
     [
      600,
      0
     ],
     [
      600,
      400
     ],
     [
      0,
      400
     ]
    ],
    "fillWith": "reinforcement-tape-plain-300"
   }
  },
  "answers": {
   "200": {
    "search": {
     "outcome": "cannot-be-done",
     "method": "class-bv",
     "rankedBy": "mass",
     "oldSkin": {
      "thicknessMm": 3,
      "alongNPerMm": 32506.24,
      "acrossNPerMm": 32506.24,
      "shearNPerMm": 8461.81,
      "strengthNPerMm": [
       195.037,
       195.037,
       195.037
      ],
      "isGuessed": true,
      "alongLowNPerMm": 24948.79,
      "alongHighNPerMm": 36714.77
     },
     "best": [],
     "effort": {
      "space": 4,
      "examined": 4,
      "cut": {
       "dearer": 0,
       "tooThick": 0,
       "outOfReach": 0,
       "tooManyKinds": 0
      },
      "isProvenBest": true
     },
     "mostPlies": 4,
     "missing": {
      "reports": [
       {
        "constraint": "flush-proud",
        "metBy": 4,
        "bestRatio": 4.64522,
        "soleObstacleOf": 0
       }
      ],
      "metByNone": [],
      "examined": 4,
      "isComplete": true,
      "words": [
       "2 stacks meet every measure of the skin, but none in an order with a fabric that suits the core first, one that prints little last, and the panel's bending restored: offer a fabric that suits the core, or one that prints less, or a thicker core"
      ]
     },
     "leftOut": [],
     "assumptions": [
      {
       "at": "/method",
       "meaning": "method for the properties of plies",
       "value": "the BV set",
       "because": "it covers mat, woven and unidirectional in three resins, with strengths",
       "source": "BV-NR546-2022"
      }
     ],
     "limits": [
      "a comparison of the new skin with the old by one named method, not a design approval",
      "skins at a mast step, chainplate, windlass, winch, cleat or keel structure go to a naval architect or qualified surveyor",
      "the bending of the panel was not compared: its core and other skin were not given"
     ]
    },
    "rebedded": {
     "taperWidthMm": {
      "value": 24,
      "unit": "mm",
      "meaning": "width of the taper on one side",
      "origin": {
       "kind": "computed",
       "formula": "laminate.taper-width",
       "title": "Width of a taper from its ratio",
       "symbol": "L",
       "cite": {
        "source": "REPAIR-MAGAZINE-12TO1",
        "note": "12:1 at least, and as thick as the laminate"
       },
       "inputs": {
        "thicknessMm": {
         "value": 2,
         "unit": "mm",
         "meaning": "thickness of the skin",
         "origin": {
          "kind": "entered",
          "at": "/skinThicknessMm"
         }
        },
        "taperRatio": {
         "value": 12,
         "unit": "1",
         "meaning": "taper ratio",
         "origin": {
          "kind": "assumed",
          "at": "/taperRatio",
          "because": "1:12 was the best of 1:6, 1:12 and 1:20; trade guidance asks for 12:1 at least",
          "cite": {
           "source": "ROTHBARTH-PINTO-2019"
          }
         }
        }
       }
      }
     },
     "grooveWidthMm": 52,
     "order": "smallest-first",
     "consequences": [
      "each ply lands on the taper at its own depth, so it carries on the old ply that it replaces",
      "the last ply covers all the others and the whole taper: sanding it flush thins the longest one",
      "small plies at the bottom are easy to wet, but their edges leave small resin-filled steps under the next ply"
     ],
     "plies": [
      {
       "order": 1,
       "stage": 1,
       "material": "reinforcement-tape-plain-300",
       "name": "Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide",
       "thicknessMm": 0.357,
       "widthMm": 12.56,
       "outline": [
        {
         "outer": [
          [
           -6.281,
           0
          ],
          [
           -6.241,
           -0.707
          ],
          [
           -6.121,
           -1.406
          ]
         ],
         "holes": [
          [
           [
            6.281,
            6.281
           ],
           [
            6.281,
            393.719
           ],
           [
            593.719,
            393.719
           ]
          ]
         ]
        }
       ],
       "areaM2": {
        "value": 0.0251,
        "unit": "m2",
        "meaning": "area of closing ply 1",
        "origin": {
         "kind": "computed",
         "formula": "geometry.area",
         "title": "Area of an outline",
         "symbol": "A",
         "cite": {
          "source": "ARITHMETIC",
          "clause": "offset and area of a polygon"
         },
         "inputs": {}
        }
       },
       "strips": 1,
       "rollWidthMm": 50,
       "rollLengthM": 2.05,
       "rollStrips": [
        {
         "lengthMm": 2050,
         "widthMm": 12.56
        }
       ],
       "glassKg": {
        "value": 0.00772,
        "unit": "kg",
        "meaning": "dry glass in the ply",
        "origin": {
         "kind": "computed",
         "formula": "laminate.glass-mass",
         "title": "Glass in a ply",
         "symbol": "mg",
         "cite": {
          "source": "ARITHMETIC"
         },
         "inputs": {}
        }
       },
       "resinKg": {
        "value": 0.00772,
        "unit": "kg",
        "meaning": "mixed resin in the ply, no waste",
        "origin": {
         "kind": "computed",
         "formula": "laminate.resin-mass",
         "title": "Resin in a ply from its glass",
         "symbol": "mr",
         "cite": {
          "source": "ARITHMETIC",
          "clause": "mass balance"
         },
         "inputs": {}
        }
       }
      }
     ],
     "stages": [
      {
       "stage": 1,
       "plies": [
        1,
        2,
        3
       ],
       "thicknessMm": 2.14,
       "isOverLimit": false
      }
     ],
     "glassKg": {
      "value": 0.1228,
      "unit": "kg",
      "meaning": "glass in the closing plies",
      "origin": {
       "kind": "computed",
       "formula": "arithmetic.sum",
       "title": "Sum of parts",
       "symbol": "Σ",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "resinKg": {
      "value": 0.1228,
      "unit": "kg",
      "meaning": "resin in the closing plies, no waste",
      "origin": {
       "kind": "computed",
       "formula": "arithmetic.sum",
       "title": "Sum of parts",
       "symbol": "Σ",
       "cite": {
        "source": "ARITHMETIC"
       },
       "inputs": {}
      }
     },
     "checks": [
      {
       "check": "taper-room",
       "title": "Room for the taper beside the cut",
       "unit": "mm",
       "demand": 24,
       "cite": {
        "source": "COMMON-PRACTICE"
       },
       "verdict": "not-established",
       "words": "the clear width beside the cut was not given"
      }
     ],
     "assumptions": [
      {
       "at": "/taperRatio",
       "meaning": "taper round the edge",
       "value": "12:1",
       "because": "1:12 was the best of 1:6, 1:12 and 1:20; trade guidance asks for 12:1 at least",
       "source": "ROTHBARTH-PINTO-2019"
      }
     ]
    },
    "cautions": [
     "glass dust and uncured resin: gloves, eye protection, a mask for dust and vapour; local rules decide",
     "laminate laid too thick in one go overheats: keep to the stages",
     "a comparison, not a design approval: highly loaded fittings go to a naval architect or qualified surveyor"
    ]
   }
  }
 },
 "POST /v1/estimating/next-readings": {
  "body": {
   "panel": {
    "outline": [
     [
      0,
      0
     ],
     [
      300,
      0
     ],
     [
      300,
      200
     ],
     [
      0,
      200
     ]
    ]
   },
   "survey": {
    "readings": []
   },
   "map": {
    "draws": 100
   }
  },
  "answers": {
   "200": {
    "readings": [
     {
      "number": 1,
      "kind": "sounding",
      "at": [
       158,
       93
      ],
      "chance": 0.25,
      "minutes": 0.5,
      "worthH": 0.081
     }
    ],
    "minutes": 3.5,
    "worthH": 0.36,
    "areaRangeM2": {
     "now": 0.06,
     "after": 0.038
    },
    "isWorthIt": true,
    "advice": {
     "code": "readings-worth-taking",
     "severity": "note",
     "facts": {
      "count": 7,
      "kinds": "7 taps",
      "minutes": 3.5,
      "worthH": 0.36,
      "nowM2": 0.06,
      "afterM2": 0.038
     },
     "text": "Worth taking before the deck is cut: 7 taps, about 3.5 min in all. They are expected to save 0.36 h of work, and to narrow the range of bad core from 0.06 to 0.038 m2."
    },
    "assumptions": [
     {
      "value": 0.5,
      "unit": "min",
      "meaning": "time of a tap: measured in, sounded, written down",
      "origin": {
       "kind": "assumed",
       "at": "/next/tapMinutes",
       "low": 0.2,
       "high": 1,
       "because": "two a minute once a grid is chalked",
       "cite": {
        "source": "COMMON-PRACTICE"
       }
      }
     }
    ]
   }
  }
 },
 "POST /v1/estimating/openings": {
  "body": {
   "panel": {
    "outline": [
     [
      0,
      0
     ],
     [
      2000,
      0
     ],
     [
      2000,
      900
     ],
     [
      0,
      900
     ]
    ]
   },
   "outerSkin": {
    "thicknessMm": 3
   },
   "innerSkin": {
    "thicknessMm": 2
   },
   "core": {
    "thicknessMm": 12.7
   },
   "zones": [
    {
     "id": "Z1",
     "outline": [
      [
       700,
       300
      ],
      [
       1250,
       300
      ],
      [
       1250,
       620
      ],
      [
       700,
       620
      ]
     ]
    }
   ]
  },
  "answers": {
   "200": {
    "extent": {
     "from": "drawn-zones",
     "zones": [
      {
       "id": "Z1",
       "outline": [
        [
         700,
         300
        ],
        [
         1250,
         300
        ],
        [
         1250,
         620
        ]
       ],
       "holes": [],
       "areaM2": 0.176,
       "boundary": "drawn"
      }
     ],
     "contours": [],
     "mappedAreaM2": 0.176,
     "damagedAreaM2": {
      "p10": 0.1143,
      "p50": 0.206,
      "p90": 0.3396
     },
     "growth": {
      "p10": 0.649377,
      "p50": 1.17027,
      "p90": 1.92948
     },
     "evidence": {
      "grade": "sounded-and-metered",
      "because": "a drawn boundary is taken to have been sounded and metered",
      "multiplier": {
       "low": 0.648415,
       "likely": 1.17027,
       "high": 1.93117
      },
      "law": {
       "falseAlarmShare": 0.05,
       "falseAlarmFrom": 0.1,
       "falseAlarmUpTo": 0.6,
       "median": 1.2,
       "sigma": 0.38,
       "most": 10.2273,
       "pairs": []
      }
     },
     "findings": [],
     "figures": {
      "mappedArea": {
       "value": 0.176,
       "unit": "m2",
       "meaning": "bad core as drawn",
       "origin": {
        "kind": "entered",
        "at": "/zones"
       }
      },
      "likelyArea": {
       "value": 0.206,
       "unit": "m2",
       "meaning": "bad core once the deck is open",
       "origin": {
        "kind": "computed",
        "formula": "extent.grown-area",
        "title": "Bad core once the deck is open",
        "symbol": "Ak",
        "cite": {
         "source": "TRADE-EXTENT-JUDGEMENT",
         "note": "judgement, anchored to repairs whose first and last extent were told and to growth of other repair trades; no frequency statistic of decks exists"
        },
        "inputs": {
         "mappedM2": {
          "value": 0.176,
          "unit": "m2",
          "meaning": "bad core as drawn",
          "origin": {
           "kind": "entered",
           "at": "/zones"
          }
         },
         "multiplier": {
          "value": 1.17027,
          "unit": "1",
          "meaning": "middle growth of the extent, evidence sounded-and-metered",
          "origin": {
           "kind": "assumed",
           "at": "/evidence",
           "because": "a drawn boundary is taken to have been sounded and metered",
           "cite": {
            "source": "TRADE-EXTENT-JUDGEMENT",
            "note": "judgement, anchored to repairs whose first and last extent were told and to growth of other repair trades; no frequency statistic of decks exists"
           },
           "low": 0.648415,
           "high": 1.93117
          }
         }
        }
       }
      }
     },
     "assumptions": [
      {
       "value": 1.17027,
       "unit": "1",
       "meaning": "middle growth of the extent, evidence sounded-and-metered",
       "origin": {
        "kind": "assumed",
        "at": "/evidence",
        "because": "a drawn boundary is taken to have been sounded and metered",
        "cite": {
         "source": "TRADE-EXTENT-JUDGEMENT",
         "note": "judgement, anchored to repairs whose first and last extent were told and to growth of other repair trades; no frequency statistic of decks exists"
        },
        "low": 0.648415,
        "high": 1.93117
       }
      }
     ]
    },
    "plan": {
     "openings": [
      {
       "label": "A",
       "zones": [
        "Z1"
       ],
       "area": {
        "outer": [
         [
          625,
          265
         ],
         [
          625.193,
          261.079
         ],
         [
          625.769,
          257.196
         ]
        ],
        "holes": []
       },
       "sawLine": [
        [
         625,
         225
        ],
        [
         1325,
         225
        ],
        [
         1325,
         695
        ]
       ],
       "innerSawLines": [],
       "cornerRadiusMm": 40,
       "marking": {
        "datum": {
         "from": [
          0,
          900
         ],
         "to": [
          2000,
          900
         ],
         "lengthMm": 2000
        },
        "corners": [
         {
          "at": [
           625,
           225
          ],
          "radiusMm": 40,
          "alongMm": 625,
          "offMm": 675,
          "fromStartMm": 919.92,
          "fromEndMm": 1531.75
         }
        ],
        "lines": [
         {
          "from": [
           665,
           225
          ],
          "to": [
           1285,
           225
          ],
          "straightMm": 620
         }
        ],
        "diagonalsMm": [
         843.15,
         843.15
        ]
       },
       "areaM2": 0.3276,
       "cutLengthM": 2.2712,
       "cutDepthMm": 5,
       "undercut": [],
       "undercutAreaM2": 0,
       "undercutReachMm": 0,
       "taperBand": [
        {
         "outer": [
          [
           589,
           265
          ],
          [
           589.044,
           263.23
          ],
          [
           589.237,
           259.309
          ]
         ],
         "holes": [
          [
           [
            625,
            265
           ],
           [
            625,
            655
           ],
           [
            625.193,
            658.921
           ]
          ]
         ]
        }
       ],
       "taperBandAreaM2": 0.0858,
       "skinPieces": [
        {
         "label": "A",
         "area": [
          {
           "outer": [
            [
             625,
             265
            ],
            [
             625.193,
             261.079
            ],
            [
             625.769,
             257.196
            ]
           ],
           "holes": []
          }
         ],
         "areaM2": 0.3276
        }
       ],
       "splits": [],
       "joins": [],
       "form": "rectangle",
       "reason": "a rectangle takes in zone Z1 at the least labour (9.7 h for 2.27 m of cut and 0.33 m2)"
      }
     ],
     "retained": [
      {
       "outer": [
        [
         0,
         0
        ],
        [
         2000,
         0
        ],
        [
         2000,
         900
        ]
       ],
       "holes": [
        [
         [
          625,
          265
         ],
         [
          625,
          655
         ],
         [
          625.193,
          658.921
         ]
        ]
       ]
      }
     ],
     "insetMm": 50,
     "unreached": [],
     "panelAreaM2": 1.8,
     "openedAreaM2": 0.3276,
     "retainedAreaM2": 1.4724,
     "undercutAreaM2": 0,
     "taperBandAreaM2": 0.0858,
     "cutLengthM": 2.2712,
     "splitLengthM": 0,
     "taperWidthMm": 36,
     "cutDepthMm": 5,
     "fittings": [],
     "findings": [],
     "figures": {
      "openedArea": {
       "value": 0.3276,
       "unit": "m2",
       "meaning": "skin cut out",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "A",
        "formula": "extent.opened-area",
        "title": "skin cut out",
        "inputs": {}
       }
      },
      "retainedArea": {
       "value": 1.4724,
       "unit": "m2",
       "meaning": "skin that stays",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "A",
        "formula": "extent.retained-area",
        "title": "skin that stays",
        "inputs": {}
       }
      },
      "undercutArea": {
       "value": 0,
       "unit": "m2",
       "meaning": "core taken out under skin that stays",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "A",
        "formula": "extent.undercut-area",
        "title": "core taken out under skin that stays",
        "inputs": {}
       }
      },
      "taperBandArea": {
       "value": 0.0858,
       "unit": "m2",
       "meaning": "skin ground to a taper",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "A",
        "formula": "extent.taper-area",
        "title": "skin ground to a taper",
        "inputs": {}
       }
      },
      "cutLength": {
       "value": 2.2712,
       "unit": "m",
       "meaning": "length of all cuts round the openings",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "L",
        "formula": "extent.cut-length",
        "title": "length of all cuts round the openings",
        "inputs": {}
       }
      },
      "splitLength": {
       "value": 0,
       "unit": "m",
       "meaning": "length of cuts across lifted skin",
       "origin": {
        "kind": "computed",
        "cite": {
         "source": "VATTI-1992"
        },
        "symbol": "L",
        "formula": "extent.split-length",
        "title": "length of cuts across lifted skin",
        "inputs": {}
       }
      },
      "taperWidth": {
       "value": 36,
       "unit": "mm",
       "meaning": "width of the taper",
       "origin": {
        "kind": "computed",
        "formula": "extent.taper-width",
        "title": "Width of the taper beside the cut",
        "symbol": "w",
        "cite": {
         "source": "COMMON-PRACTICE",
         "clause": "ratio times thickness"
        },
        "inputs": {}
       }
      },
      "cutDepth": {
       "value": 5,
       "unit": "mm",
       "meaning": "depth of cut",
       "origin": {
        "kind": "computed",
        "formula": "extent.cut-depth",
        "title": "Depth of the saw",
        "symbol": "s",
        "cite": {
         "source": "COMMON-PRACTICE",
         "clause": "the saw is set to the measured skin and a little more"
        },
        "inputs": {}
       }
      }
     },
     "assumptions": [
      {
       "value": 75,
       "unit": "mm",
       "meaning": "margin of the cut beyond the bad core",
       "origin": {
        "kind": "assumed",
        "at": "/method/cutMarginMm",
        "because": "a few inches past the sound boundary, 50 to 100 mm",
        "cite": {
         "source": "COMMON-PRACTICE"
        }
       }
      }
     ]
    }
   }
  }
 },
 "POST /v1/estimating/panel-check": {
  "body": {
   "panel": {
    "lengthXMm": 900,
    "widthYMm": 600
   },
   "asBuilt": {
    "outer": {
     "thicknessMm": 3,
     "modulusXMPa": 12000,
     "modulusYMPa": 11000,
     "shearModulusMPa": 3000,
     "poissonXY": 0.2,
     "tensileStrengthMPa": 150,
     "compressiveStrengthMPa": 130
    },
    "inner": {
     "thicknessMm": 2,
     "modulusXMPa": 12000,
     "modulusYMPa": 11000,
     "shearModulusMPa": 3000,
     "poissonXY": 0.2,
     "tensileStrengthMPa": 150,
     "compressiveStrengthMPa": 130
    },
    "core": {
     "coreType": "end-grain-balsa",
     "thicknessMm": 12.7,
     "shearModulusMPa": 129,
     "shearStrengthMPa": 2.33,
     "compressiveModulusMPa": 3255,
     "compressiveStrengthMPa": 10.3
    }
   },
   "repaired": {
    "outer": {
     "thicknessMm": 3,
     "modulusXMPa": 12000,
     "modulusYMPa": 11000,
     "shearModulusMPa": 3000,
     "poissonXY": 0.2,
     "tensileStrengthMPa": 150,
     "compressiveStrengthMPa": 130
    },
    "inner": {
     "thicknessMm": 2,
     "modulusXMPa": 12000,
     "modulusYMPa": 11000,
     "shearModulusMPa": 3000,
     "poissonXY": 0.2,
     "tensileStrengthMPa": 150,
     "compressiveStrengthMPa": 130
    },
    "core": {
     "coreType": "end-grain-balsa",
     "thicknessMm": 12.7,
     "shearModulusMPa": 129,
     "shearStrengthMPa": 2.33,
     "compressiveModulusMPa": 3255,
     "compressiveStrengthMPa": 10.3
    }
   }
  },
  "answers": {
   "200": {
    "verdict": "restored",
    "shortfalls": [],
    "withinHands": [],
    "states": [
     {
      "state": "as-built",
      "section": {
       "bendingXNmm": 3489940.48,
       "bendingYNmm": 3199112.11,
       "shearNPerMm": 2346.78,
       "membraneXNPerMm": 60000,
       "membraneYNPerMm": 55000,
       "leverMm": 15.2,
       "thinSkinError": -0.0104105,
       "isThinSkinFair": false
      },
      "responses": [
       {
        "load": "class-deck",
        "working": "sandwich",
        "linearDeflectionMm": 2.57,
        "deflectionMm": 2.57,
        "deflectionAt": [
         450,
         300
        ],
        "greatestMomentXN": 129.665,
        "greatestMomentYN": 222.942,
        "greatestShearNPerMm": 1.84031
       }
      ],
      "checks": [
       {
        "key": "as-built:class-deck:outer-skin",
        "code": "outer-skin",
        "title": "Stress in the outer skin",
        "state": "as-built",
        "load": "class-deck",
        "demand": 6.03181,
        "capacity": 65,
        "unit": "MPa",
        "utilisation": 0.0927971,
        "verdict": "passes",
        "governs": "compression along y under the middle of the load",
        "source": "ISO-12215-5-2008"
       }
      ],
      "governing": {
       "code": "deflection",
       "utilisation": 0.428555,
       "load": "class-deck"
      }
     }
    ],
    "ratios": [
     {
      "key": "ratio:class-deck:outer-skin",
      "code": "outer-skin",
      "title": "Stress in the outer skin",
      "ratio": 1,
      "asBuiltUtilisation": 0.0927971,
      "repairedUtilisation": 0.0927971,
      "load": "class-deck"
     }
    ],
    "opened": {
     "clampSagMm": 7.21,
     "clampStressMPa": 5.54045,
     "linearClampSagMm": 147.88,
     "personSagMm": 12.77,
     "personStressMPa": 499.746,
     "usableStressMPa": 65,
     "propsNeeded": true,
     "isLargeDeflection": true,
     "propSpacingMm": 155.5,
     "advice": [
      "Prop the inner skin from below before the deck is opened; the new core would keep the sag.",
      "Nobody stands or kneels on the inner skin: work from planks that rest on the deck around.",
      "The sag is large for so thin a skin: it hangs like a sheet and pulls the edges of the opening inwards; the sag is an estimate, the stress under a foot an upper bound."
     ]
    },
    "fittings": [],
    "loads": [
     {
      "key": "load:class-deck",
      "code": "class-deck",
      "title": "Weather deck pressure of a class rule",
      "pressureKPa": 7
     }
    ],
    "cautions": [
     {
      "code": "comparison-only",
      "severity": "caution",
      "text": "This compares a repair with the deck it replaces. It is no design approval and no statement that a standard is met; local rules and licensed or qualified people decide.",
      "because": "yardsticks were read second-hand and material values are defaults",
      "source": "COMMON-PRACTICE"
     }
    ],
    "assumptions": [
     {
      "at": "/panel/edges",
      "meaning": "edges of the panel",
      "value": "simply-supported",
      "because": "the cautious case for deflection and for the middle of the panel",
      "source": "COMMON-PRACTICE"
     }
    ],
    "limits": [
     "The panel is a flat rectangle on four edges that do not sink; camber, hatches and uneven supports are left out.",
     "Small deflections and elastic layers; fatigue, impact, moisture, heat and buckling of the whole panel under in-plane load are left out.",
     "Stresses are direct stresses in x and y; twisting at the corners is left out."
    ],
    "truncation": 3.45174e-7
   }
  }
 },
 "POST /v1/estimating/preview": {
  "body": {
   "panel": {
    "outline": [
     [
      0,
      0
     ],
     [
      2000,
      0
     ],
     [
      2000,
      900
     ],
     [
      0,
      900
     ]
    ]
   },
   "outerSkin": {
    "thicknessMm": 3
   },
   "innerSkin": {
    "thicknessMm": 2
   },
   "core": {
    "thicknessMm": "1/2 in"
   },
   "zones": [
    {
     "id": "Z1",
     "outline": [
      [
       700,
       300
      ],
      [
       1250,
       300
      ],
      [
       1250,
       620
      ],
      [
       700,
       620
      ]
     ]
    }
   ]
  },
  "answers": {
   "200": {
    "title": "Deck repair",
    "summary": {
     "damagedAreaM2": {
      "p10": 0.1143,
      "p50": 0.206,
      "p90": 0.3396
     },
     "openedAreaM2": 0.3276,
     "cutLengthM": 2.2712,
     "plyCount": 4,
     "mixedResinL": 1.8053,
     "labourLikelyH": 26.23,
     "labourH": {
      "p10": 23.22,
      "p50": 31.7,
      "p90": 43.6
     },
     "workingDays": {
      "p10": 10,
      "p50": 10.33,
      "p90": 11
     },
     "calendarDays": {
      "p10": 19.53,
      "p50": 24.19,
      "p90": 29.54
     }
    },
    "zones": [
     {
      "id": "Z1",
      "outline": [
       [
        700,
        300
       ],
       [
        1250,
        300
       ],
       [
        1250,
        620
       ]
      ],
      "condition": "wet-rotten",
      "areaM2": 0.176
     }
    ],
    "openings": [
     {
      "label": "A",
      "area": {
       "outer": [
        [
         625,
         265
        ],
        [
         625.193,
         261.079
        ],
        [
         625.769,
         257.196
        ]
       ],
       "holes": []
      },
      "sawLine": [
       [
        625,
        225
       ],
       [
        1325,
        225
       ],
       [
        1325,
        695
       ]
      ],
      "areaM2": 0.3276,
      "cutLengthM": 2.2712,
      "cutDepthMm": 5,
      "reason": "a rectangle takes in zone Z1 at the least labour (9.7 h for 2.27 m of cut and 0.33 m2)"
     }
    ],
    "findings": [],
    "panel": {
     "verdict": "restored",
     "sentence": "Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.",
     "shortfalls": []
    },
    "price": {
     "withoutContingency": {
      "amount": "3915.36",
      "currency": "USD"
     },
     "range": {
      "p10": {
       "amount": "3058.45",
       "currency": "USD"
      },
      "p50": {
       "amount": "3813.14",
       "currency": "USD"
      },
      "p80": {
       "amount": "4490.21",
       "currency": "USD"
      },
      "p90": {
       "amount": "4896.65",
       "currency": "USD"
      }
     },
     "missing": []
    },
    "leftOut": [
     "Core is priced by area at four fifths of each sheet: its pieces, their order and the sheets are laid out in the estimate.",
     "Of the schedules that restore the skin the three cheapest are tried on the panel; the estimate tries up to forty.",
     "The panel is compared as built and repaired; as found, opened, fittings and every check stand in the estimate."
    ]
   }
  }
 },
 "POST /v1/estimating/quantities": {
  "body": {
   "quantities": [
    {
     "dimension": "length",
     "text": "5/8 in"
    }
   ]
  },
  "answers": {
   "200": {
    "quantities": [
     {
      "text": "5/8 in",
      "value": 15.875,
      "unit": "mm"
     }
    ]
   }
  }
 },
 "POST /v1/estimating/resin-batches": {
  "body": {
   "resin": "resin-epoxy-5to1",
   "temperatureC": 20,
   "people": 2,
   "steps": [
    {
     "step": "bed-core",
     "areaM2": 0.6,
     "pieces": [
      {
       "label": "A1",
       "areaM2": 0.6
      }
     ]
    }
   ]
  },
  "answers": {
   "200": {
    "resin": {
     "code": "resin-epoxy-5to1",
     "name": "Laminating epoxy, 5:1 by volume",
     "hardener": "fast",
     "hardenerName": "Fast hardener, 5:1",
     "why": "The quickest that leaves time at 20 degC: Fast hardener, 5:1: 100 g last 15 min, 6 pots in all, a spread edge stays open for 31 min."
    },
    "considered": [
     {
      "code": "fast",
      "name": "Fast hardener, 5:1",
      "verdict": "chosen",
      "reasons": [
       "Fast hardener, 5:1: 100 g last 15 min, 6 pots in all, a spread edge stays open for 31 min"
      ]
     }
    ],
    "demand": {
     "resin": "resin-epoxy-5to1",
     "hardener": "fast",
     "partsByMass": 17.913,
     "partsByVolume": 20,
     "mixedDensityGPerCm3": 1.13,
     "steps": [
      {
       "index": 0,
       "step": "bed-core",
       "title": "Bed the core",
       "units": 0.6,
       "netL": 0.84,
       "wasteL": 0.1512,
       "totalL": 0.9912,
       "resinG": 926.1,
       "hardenerG": 165.9,
       "fillerG": 54.6,
       "filler": "filler-fumed-silica",
       "fillerPartsPerHundred": 5,
       "totalKg": 1.1466,
       "densityGPerCm3": 1.15679,
       "why": {
        "netL": {
         "value": 0.84,
         "unit": "l",
         "meaning": "net volume",
         "origin": {
          "kind": "computed",
          "formula": "process.bed-volume",
          "title": "Resin in a bed of stated thickness",
          "symbol": "V",
          "cite": {
           "source": "MAKER-NOTCH",
           "note": "a 1/4 in notch leaves 0.89 mm, 0.89 l/m2"
          },
          "inputs": {
           "areaM2": {
            "value": 0.6,
            "unit": "m2",
            "meaning": "area",
            "origin": {
             "kind": "entered",
             "at": "/steps/0/areaM2"
            }
           },
           "thicknessMm": {
            "value": 1.4,
            "unit": "mm",
            "meaning": "amount for \"Bed the core\"",
            "origin": {
             "kind": "assumed",
             "at": "/steps/0/thicknessMm",
             "low": 0.9,
             "high": 2.2,
             "because": "a 1/4 in notch leaves 0.89 mm, the rest fills an uneven skin",
             "cite": {
              "source": "MAKER-NOTCH"
             }
            }
           }
          }
         }
        },
        "mixedG": {
         "value": 1092.01,
         "unit": "g",
         "meaning": "mixed resin without filler",
         "origin": {
          "kind": "computed",
          "formula": "process.mixed-resin-in-volume",
          "title": "Mixed resin in a volume of thickened resin",
          "symbol": "m",
          "cite": {
           "source": "MIX-BY-VOLUMES"
          },
          "inputs": {}
         }
        }
       }
      }
     ],
     "totals": {
      "netL": 0.84,
      "wasteL": 0.1512,
      "totalL": 0.9912,
      "resinG": 926.1,
      "hardenerG": 165.9,
      "fillers": [
       {
        "filler": "filler-fumed-silica",
        "massG": 54.6
       }
      ]
     },
     "assumptions": [
      {
       "at": "/steps/0/thicknessMm",
       "meaning": "amount for \"Bed the core\"",
       "value": "1.4 mm",
       "because": "a 1/4 in notch leaves 0.89 mm, the rest fills an uneven skin",
       "source": "MAKER-NOTCH"
      }
     ]
    },
    "batches": [
     {
      "number": 1,
      "stepIndex": 0,
      "step": "bed-core",
      "title": "Bed the core",
      "resinG": 154.4,
      "hardenerG": 27.7,
      "fillerG": 9.1,
      "filler": "filler-fumed-silica",
      "mixedG": 191.2,
      "mixedMl": 165.28,
      "weigh": [
       {
        "what": "resin",
        "name": "Laminating epoxy, 5:1 by volume",
        "addG": 154.4,
        "scaleShowsG": 154.4,
        "volumeMl": 134.26
       }
      ],
      "covers": [
       "A1 (1 of 6)"
      ],
      "spreadMin": 1.25065,
      "useWithinMin": 7.38661,
      "potLifeMin": 14.7732,
      "forgottenPotPeakC": 246.57,
      "limitedBy": "pot-life",
      "edgeOpenMin": 30.6595
     }
    ],
    "potLife": {
     "at100GMin": 15.1151,
     "lowMin": 11.3723,
     "highMin": 19.6496,
     "temperatureC": 20
    },
    "adiabaticRiseK": 236.842,
    "findings": [],
    "assumptions": [
     {
      "at": "/steps/0/thicknessMm",
      "meaning": "amount for \"Bed the core\"",
      "value": "1.4 mm",
      "because": "a 1/4 in notch leaves 0.89 mm, the rest fills an uneven skin",
      "source": "MAKER-NOTCH"
     }
    ]
   }
  }
 },
 "POST /v1/estimating/variants": {
  "body": {
   "record": {
    "panel": {
     "outline": [
      [
       0,
       0
      ],
      [
       2000,
       0
      ],
      [
       2000,
       900
      ],
      [
       0,
       900
      ]
     ]
    },
    "outerSkin": {
     "thicknessMm": 3
    },
    "innerSkin": {
     "thicknessMm": 2
    },
    "core": {
     "thicknessMm": "1/2 in"
    },
    "zones": [
     {
      "id": "Z1",
      "outline": [
       [
        700,
        300
       ],
       [
        1250,
        300
       ],
       [
        1250,
        620
       ],
       [
        700,
        620
       ]
      ]
     }
    ]
   },
   "variants": [
    {
     "code": "relay",
     "method": {
      "skin": "relay"
     }
    },
    {
     "code": "re-bed",
     "method": {
      "skin": "re-bed"
     }
    }
   ]
  },
  "answers": {
   "200": {
    "currency": "USD",
    "compared": [
     "cost",
     "p80",
     "labourH"
    ],
    "rows": [
     {
      "code": "relay",
      "title": "relay",
      "values": {
       "cost": {
        "amount": "3551.17",
        "currency": "USD"
       },
       "labourH": 29.51,
       "p80": {
        "amount": "4451.06",
        "currency": "USD"
       },
       "spread": {
        "amount": "1822.17",
        "currency": "USD"
       },
       "days": 24.19,
       "massKg": 2.584,
       "utilisation": 1.77217
      },
      "net": {
       "amount": "3881.22",
       "currency": "USD"
      },
      "gross": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "failsCheck": true,
      "dominatedBy": [],
      "bestIn": [
       "cost",
       "p80",
       "labourH"
      ]
     }
    ],
    "refused": []
   }
  }
 },
 "POST /v1/imports/labour-rates": {
  "body": "cite.note,cite.source,code,name,region,charges.0.per,charges.0.code,charges.0.name,charges.0.price,charges.0.where,charges.1.per,charges.1.code,charges.1.name,charges.1.price,charges.1.where,charges.2.per,charges.2.code,charges.2.name,charges.2.when,charges.2.price,charges.2.where,charges.3.per,charges.3.code,charges.3.name,charges.3.when,charges.3.price,charges.3.where,charges.4.per,charges.4.code,charges.4.name,charges.4.when,charges.4.price,charges.5.per,charges.5.code,charges.5.name,charges.5.when,charges.5.price,charges.5.where,charges.6.per,charges.6.code,charges.6.name,charges.6.price,charges.6.where,charges.7.per,charges.7.code,charges.7.name,charges.7.when,charges.7.price,charges.8.per,charges.8.code,charges.8.name,charges.8.when,charges.8.price,charges.9.per,charges.9.code,charges.9.name,charges.9.price,charges.10.per,charges.10.code,charges.10.name,charges.10.price,perHour.rigger,perHour.general,perHour.finisher,perHour.laminator,validTo,currency,invented,rateBasis,taxGroups.0.code,taxGroups.0.name,taxGroups.0.percent,taxGroups.1.code,taxGroups.1.name,taxGroups.1.percent,taxGroups.2.code,taxGroups.2.name,taxGroups.2.percent,validFrom,profitPercent,overheadPercent\n\"invented, of the size of posted yard rates\",TRADE-YARD-RATES,invented-copy,\"Invented yard rates in US dollars, renamed\",\"invented region, US dollar\",job,haul,\"Haul out, block and launch\",560.00,ashore-for-this,job,environment,Environmental fee,45.00,yard,day,lay-day-open,\"Lay day, hard standing\",open,32.00,ashore-for-this,day,lay-day-tent,\"Lay day, hard standing\",tent,32.00,ashore-for-this,job,tent,\"Hire of frame, film for the shrink cover\",tent,480.00,day,lay-day-shed,Day in the shed,shed,85.00,ashore-for-this,worked-day,power,Power and extraction,8.00,yard,day,heater,\"Heater of 2 to 3 kW: hire, and power day and night\",heated,26.00,job,shade,Hire of a shade cloth with its poles,shaded,50.00,opened-m2,waste,\"Waste laminate and core, disposal\",18.00,labour-h,small-tools,Wear of tools,1.50,92.00,68.00,88.00,95.00,2027-12-31,USD,true,posted,parts,Goods,7,labour,Services,0,zero,Not taxed,0,2026-01-01,0,0\n",
  "answers": {
   "200": {
    "imported": 1
   }
  }
 },
 "POST /v1/imports/materials": {
  "body": "code,kind,name,coats.low,coats.cite.source,coats.high,coats.value,coating,hazards.0,hazards.1,hazards.2,hazards.3,hazards.4,hazards.5,recoatH.low,recoatH.cite.note,recoatH.cite.source,recoatH.high,recoatH.value,isIsocyanate,densityKgPerL.low,densityKgPerL.cite.source,densityKgPerL.high,densityKgPerL.value,coverageM2PerL.low,coverageM2PerL.cite.source,coverageM2PerL.high,coverageM2PerL.value,lowestTemperatureC.low,lowestTemperatureC.cite.note,lowestTemperatureC.cite.source,lowestTemperatureC.high,lowestTemperatureC.value,highestRelativeHumidityPercent.low,highestRelativeHumidityPercent.cite.note,highestRelativeHumidityPercent.cite.source,highestRelativeHumidityPercent.high,highestRelativeHumidityPercent.value\ninvented-copy,coating,\"High-build epoxy primer, two-part, renamed\",2,FROM-MEMORY,3,2,primer,H226,H315,H317,H319,H336,H411,6,an example primer at 12 to 14 h; after 24 h sand again,COMMON-PRACTICE,24,12,false,1.35,FROM-MEMORY,1.65,1.5,4,FROM-MEMORY,8,6,10,15 to 25 degC,MAKER-COATING-GATES,18,15,65,\"two-part epoxy primer, 15 to 25 degC\",MAKER-COATING-GATES,85,70\n",
  "answers": {
   "200": {
    "imported": 1
   }
  }
 },
 "POST /v1/imports/price-lists": {
  "body": "code,name,packs.0.sku,packs.0.name,packs.0.massKg,packs.0.prices.0.price,packs.0.prices.0.fromPacks,packs.0.prices.1.price,packs.0.prices.1.fromPacks,packs.0.content.unit,packs.0.content.material,packs.0.content.quantity,packs.0.oversize,packs.0.supplier,packs.0.hazardous,packs.0.shelfLifeMonths,validTo,currency,invented,suppliers.0.code,suppliers.0.name,suppliers.0.delivery,suppliers.0.minimumOrder,suppliers.0.hazardSurcharge,suppliers.0.oversizeFreight,suppliers.0.freeDeliveryFrom,suppliers.1.code,suppliers.1.name,suppliers.1.delivery,suppliers.1.minimumOrder,suppliers.1.hazardSurcharge,suppliers.1.oversizeFreight,suppliers.2.code,suppliers.2.name,suppliers.2.delivery,suppliers.2.minimumOrder,suppliers.2.hazardSurcharge,suppliers.2.oversizeFreight,suppliers.2.freeDeliveryFrom,validFrom,pricesIncludeTax\ninvented-copy,\"Invented prices in US dollars, renamed\",A-epoxy-primer-946ml,\"High-build epoxy primer, two-part, 0.946 l\",1.619,35.70,1,33.60,6,l,coating-epoxy-primer,0.946,false,chandlery-a,true,24,2027-12-31,USD,true,chandlery-a,Invented chandlery A,10.65,0.00,13.45,42.60,280.00,chandlery-b,Invented chandlery B,8.40,22.40,16.80,50.40,merchant-c,Invented composites merchant C,31.40,168.00,20.20,61.50,1008.00,2026-01-01,false\n",
  "answers": {
   "200": {
    "imported": 1
   }
  }
 },
 "POST /v1/imports/sources": {
  "body": "key,body,year,title,readAs,note\nINVENTED-COPY,\"National Bureau of Standards, Applied Mathematics Series 55\",1964,\"Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23\",memory,Read once more\n",
  "answers": {
   "200": {
    "imported": 1
   }
  }
 },
 "POST /v1/keys": {
  "body": {
   "name": "Invented survey office",
   "roles": [
    "surveyor"
   ]
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000004",
    "organisationId": "01900000-0000-7000-8000-000000000003",
    "name": "Invented survey office",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "prefix": "kp_exampl",
    "roles": [
     "surveyor"
    ],
    "scopes": [],
    "key": "kp_exampleexampleexampleexampleexampleexamplee"
   }
  }
 },
 "POST /v1/keys/{id}/renewal": {
  "body": {
   "overlapHours": 24
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000006",
    "organisationId": "01900000-0000-7000-8000-000000000003",
    "name": "Invented survey office",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "prefix": "kp_exampl",
    "roles": [
     "surveyor"
    ],
    "scopes": [],
    "renewsId": "01900000-0000-7000-8000-000000000004",
    "key": "kp_exampleexampleexampleexampleexampleexamplee"
   }
  }
 },
 "POST /v1/labour-rates": {
  "body": {
   "cite": {
    "note": "invented, of the size of posted yard rates",
    "source": "TRADE-YARD-RATES"
   },
   "code": "invented-copy",
   "name": "Invented yard rates in US dollars",
   "region": "invented region, US dollar",
   "charges": [
    {
     "per": "job",
     "code": "haul",
     "name": "Haul out, block and launch",
     "price": "560.00",
     "where": "ashore-for-this"
    },
    {
     "per": "job",
     "code": "environment",
     "name": "Environmental fee",
     "price": "45.00",
     "where": "yard"
    },
    {
     "per": "day",
     "code": "lay-day-open",
     "name": "Lay day, hard standing",
     "when": "open",
     "price": "32.00",
     "where": "ashore-for-this"
    },
    {
     "per": "day",
     "code": "lay-day-tent",
     "name": "Lay day, hard standing",
     "when": "tent",
     "price": "32.00",
     "where": "ashore-for-this"
    },
    {
     "per": "job",
     "code": "tent",
     "name": "Hire of frame, film for the shrink cover",
     "when": "tent",
     "price": "480.00"
    },
    {
     "per": "day",
     "code": "lay-day-shed",
     "name": "Day in the shed",
     "when": "shed",
     "price": "85.00",
     "where": "ashore-for-this"
    },
    {
     "per": "worked-day",
     "code": "power",
     "name": "Power and extraction",
     "price": "8.00",
     "where": "yard"
    },
    {
     "per": "day",
     "code": "heater",
     "name": "Heater of 2 to 3 kW: hire, and power day and night",
     "when": "heated",
     "price": "26.00"
    },
    {
     "per": "job",
     "code": "shade",
     "name": "Hire of a shade cloth with its poles",
     "when": "shaded",
     "price": "50.00"
    },
    {
     "per": "opened-m2",
     "code": "waste",
     "name": "Waste laminate and core, disposal",
     "price": "18.00"
    },
    {
     "per": "labour-h",
     "code": "small-tools",
     "name": "Wear of tools",
     "price": "1.50"
    }
   ],
   "perHour": {
    "rigger": "92.00",
    "general": "68.00",
    "finisher": "88.00",
    "laminator": "95.00"
   },
   "validTo": "2027-12-31",
   "currency": "USD",
   "invented": true,
   "rateBasis": "posted",
   "taxGroups": [
    {
     "code": "parts",
     "name": "Goods",
     "percent": "7"
    },
    {
     "code": "labour",
     "name": "Services",
     "percent": "0"
    },
    {
     "code": "zero",
     "name": "Not taxed",
     "percent": "0"
    }
   ],
   "validFrom": "2026-01-01",
   "profitPercent": "0",
   "overheadPercent": "0"
  },
  "answers": {
   "201": {
    "cite": {
     "note": "invented, of the size of posted yard rates",
     "source": "TRADE-YARD-RATES"
    },
    "code": "invented-copy",
    "name": "Invented yard rates in US dollars",
    "region": "invented region, US dollar",
    "charges": [
     {
      "per": "job",
      "code": "haul",
      "name": "Haul out, block and launch",
      "price": "560.00",
      "where": "ashore-for-this"
     }
    ],
    "perHour": {
     "rigger": "92.00",
     "general": "68.00",
     "finisher": "88.00",
     "laminator": "95.00"
    },
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "rateBasis": "posted",
    "taxGroups": [
     {
      "code": "parts",
      "name": "Goods",
      "percent": "7"
     }
    ],
    "validFrom": "2026-01-01",
    "profitPercent": "0",
    "overheadPercent": "0"
   }
  }
 },
 "POST /v1/materials": {
  "body": {
   "code": "invented-copy",
   "kind": "coating",
   "name": "High-build epoxy primer, two-part",
   "coats": {
    "low": 2,
    "cite": {
     "source": "FROM-MEMORY"
    },
    "high": 3,
    "value": 2
   },
   "coating": "primer",
   "hazards": [
    "H226",
    "H315",
    "H317",
    "H319",
    "H336",
    "H411"
   ],
   "recoatH": {
    "low": 6,
    "cite": {
     "note": "an example primer at 12 to 14 h; after 24 h sand again",
     "source": "COMMON-PRACTICE"
    },
    "high": 24,
    "value": 12
   },
   "isIsocyanate": false,
   "densityKgPerL": {
    "low": 1.35,
    "cite": {
     "source": "FROM-MEMORY"
    },
    "high": 1.65,
    "value": 1.5
   },
   "coverageM2PerL": {
    "low": 4,
    "cite": {
     "source": "FROM-MEMORY"
    },
    "high": 8,
    "value": 6
   },
   "lowestTemperatureC": {
    "low": 10,
    "cite": {
     "note": "15 to 25 degC",
     "source": "MAKER-COATING-GATES"
    },
    "high": 18,
    "value": 15
   },
   "highestRelativeHumidityPercent": {
    "low": 65,
    "cite": {
     "note": "two-part epoxy primer, 15 to 25 degC",
     "source": "MAKER-COATING-GATES"
    },
    "high": 85,
    "value": 70
   }
  },
  "answers": {
   "201": {
    "code": "invented-copy",
    "kind": "coating",
    "name": "High-build epoxy primer, two-part",
    "coats": {
     "low": 2,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 3,
     "value": 2
    },
    "coating": "primer",
    "hazards": [
     "H226",
     "H315",
     "H317"
    ],
    "recoatH": {
     "low": 6,
     "cite": {
      "note": "an example primer at 12 to 14 h; after 24 h sand again",
      "source": "COMMON-PRACTICE"
     },
     "high": 24,
     "value": 12
    },
    "isIsocyanate": false,
    "densityKgPerL": {
     "low": 1.35,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 1.65,
     "value": 1.5
    },
    "coverageM2PerL": {
     "low": 4,
     "cite": {
      "source": "FROM-MEMORY"
     },
     "high": 8,
     "value": 6
    },
    "lowestTemperatureC": {
     "low": 10,
     "cite": {
      "note": "15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 18,
     "value": 15
    },
    "highestRelativeHumidityPercent": {
     "low": 65,
     "cite": {
      "note": "two-part epoxy primer, 15 to 25 degC",
      "source": "MAKER-COATING-GATES"
     },
     "high": 85,
     "value": 70
    }
   }
  }
 },
 "POST /v1/organisations": {
  "body": {
   "name": "Invented Boatyard"
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000001",
    "name": "Invented Boatyard",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "adminKey": {
     "id": "01900000-0000-7000-8000-000000000002",
     "organisationId": "01900000-0000-7000-8000-000000000001",
     "name": "First key",
     "createdAt": "2027-03-03T08:00:00.000Z",
     "prefix": "kp_exampl",
     "roles": [
      "organisation-admin"
     ],
     "scopes": [],
     "key": "kp_exampleexampleexampleexampleexampleexamplee"
    }
   }
  }
 },
 "POST /v1/price-lists": {
  "body": {
   "code": "invented-copy",
   "name": "Invented prices in US dollars",
   "packs": [
    {
     "sku": "A-epoxy-primer-946ml",
     "name": "High-build epoxy primer, two-part, 0.946 l",
     "massKg": 1.619,
     "prices": [
      {
       "price": "35.70",
       "fromPacks": 1
      },
      {
       "price": "33.60",
       "fromPacks": 6
      }
     ],
     "content": {
      "unit": "l",
      "material": "coating-epoxy-primer",
      "quantity": 0.946
     },
     "oversize": false,
     "supplier": "chandlery-a",
     "hazardous": true,
     "shelfLifeMonths": 24
    }
   ],
   "validTo": "2027-12-31",
   "currency": "USD",
   "invented": true,
   "suppliers": [
    {
     "code": "chandlery-a",
     "name": "Invented chandlery A",
     "delivery": "10.65",
     "minimumOrder": "0.00",
     "hazardSurcharge": "13.45",
     "oversizeFreight": "42.60",
     "freeDeliveryFrom": "280.00"
    },
    {
     "code": "chandlery-b",
     "name": "Invented chandlery B",
     "delivery": "8.40",
     "minimumOrder": "22.40",
     "hazardSurcharge": "16.80",
     "oversizeFreight": "50.40"
    },
    {
     "code": "merchant-c",
     "name": "Invented composites merchant C",
     "delivery": "31.40",
     "minimumOrder": "168.00",
     "hazardSurcharge": "20.20",
     "oversizeFreight": "61.50",
     "freeDeliveryFrom": "1008.00"
    }
   ],
   "validFrom": "2026-01-01",
   "pricesIncludeTax": false
  },
  "answers": {
   "201": {
    "code": "invented-copy",
    "name": "Invented prices in US dollars",
    "packs": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "massKg": 1.619,
      "prices": [
       {
        "price": "35.70",
        "fromPacks": 1
       }
      ],
      "content": {
       "unit": "l",
       "material": "coating-epoxy-primer",
       "quantity": 0.946
      },
      "oversize": false,
      "supplier": "chandlery-a",
      "hazardous": true,
      "shelfLifeMonths": 24
     }
    ],
    "validTo": "2027-12-31",
    "currency": "USD",
    "invented": true,
    "suppliers": [
     {
      "code": "chandlery-a",
      "name": "Invented chandlery A",
      "delivery": "10.65",
      "minimumOrder": "0.00",
      "hazardSurcharge": "13.45",
      "oversizeFreight": "42.60",
      "freeDeliveryFrom": "280.00"
     }
    ],
    "validFrom": "2026-01-01",
    "pricesIncludeTax": false
   }
  }
 },
 "POST /v1/price-lists/{code}/price-changes": {
  "body": {
   "percent": "4.5",
   "skus": [
    "A-epoxy-primer-946ml"
   ]
  },
  "answers": {
   "200": {
    "priceList": "invented-dollar",
    "edition": "spring-2027",
    "currency": "USD",
    "percent": "4.5",
    "chosenCount": 1,
    "changed": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "before": [
       "99.90"
      ],
      "after": [
       "104.40"
      ]
     }
    ]
   }
  }
 },
 "POST /v1/price-lists/{code}/sheets": {
  "body": {
   "cells": "Article\tNet price\nA-epoxy-primer-946ml\t101.50",
   "columns": [
    {
     "heading": "Article",
     "means": "sku"
    },
    {
     "heading": "Net price",
     "means": "price"
    }
   ],
   "decimalMark": ".",
   "breaks": "keep",
   "unknownSkus": "refuse"
  },
  "answers": {
   "200": {
    "priceList": "invented-dollar",
    "edition": "spring-2027",
    "changed": [
     "A-epoxy-primer-946ml"
    ],
    "sameCount": 0,
    "leftOut": []
   }
  }
 },
 "POST /v1/publishable-keys": {
  "body": {
   "name": "Invented shop form",
   "origins": [
    "https://shop.example"
   ],
   "perMinute": 60,
   "perMinutePerVisitor": 10,
   "perDay": 200
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000008",
    "organisationId": "01900000-0000-7000-8000-000000000003",
    "name": "Invented shop form",
    "createdAt": "2027-03-03T08:00:00.000Z",
    "key": "kp_pub_exampleexampleexampleexampleexampleexamplee",
    "perDay": 200,
    "origins": [
     "https://shop.example"
    ],
    "perMinute": 60,
    "perMinutePerVisitor": 10
   }
  }
 },
 "POST /v1/sources": {
  "body": {
   "key": "INVENTED-COPY",
   "body": "National Bureau of Standards, Applied Mathematics Series 55",
   "year": "1964",
   "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
   "readAs": "memory"
  },
  "answers": {
   "201": {
    "key": "INVENTED-COPY",
    "body": "National Bureau of Standards, Applied Mathematics Series 55",
    "year": "1964",
    "title": "Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23",
    "readAs": "memory"
   }
  }
 },
 "POST /v1/webhook-endpoints": {
  "body": {
   "url": "https://shop.example/kingplank-events",
   "types": [
    "estimate.created"
   ]
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000009",
    "url": "https://shop.example/kingplank-events",
    "types": [
     "estimate.created"
    ],
    "createdAt": "2027-03-03T08:00:00.000Z",
    "secret": "whsec_ZXhhbXBsZWV4YW1wbGVleGFtcGxlZXhh"
   }
  }
 },
 "POST /v1/webhook-endpoints/{id}/deliveries/{eventId}/repetition": {
  "answers": {
   "200": {
    "eventId": "01900000-0000-7000-8000-000000000012",
    "type": "estimate.created",
    "status": "waiting",
    "attempts": 0,
    "nextAttemptAt": "2027-03-03T08:00:00.000Z"
   }
  }
 },
 "POST /v1/webhook-endpoints/{id}/secret-renewal": {
  "body": {
   "overlapHours": 24
  },
  "answers": {
   "201": {
    "id": "01900000-0000-7000-8000-000000000009",
    "url": "https://shop.example/kingplank-events",
    "types": [
     "estimate.created"
    ],
    "createdAt": "2027-03-03T08:00:00.000Z",
    "secret": "whsec_ZXhhbXBsZWV4YW1wbGVleGFtcGxlZXhh"
   }
  }
 },
 "PUT /v1/estimates/{id}/photographs/{number}": {
  "answers": {
   "200": {
    "number": 1,
    "caption": "Plug beside the stanchion",
    "widthPx": 300,
    "heightPx": 200,
    "addedAt": "2027-03-03T08:00:00.000Z",
    "href": "/v1/estimates/01900000-0000-7000-8000-000000000014/photographs/1",
    "mediaType": "image/jpeg"
   }
  }
 },
 "PUT /v1/estimates/{id}/shares/{keyId}": {
  "answers": {}
 },
 "PUT /v1/letterhead": {
  "body": {
   "lines": [
    "Quay 1, Invented Harbour"
   ],
   "logoDescription": "A lighthouse on a rock"
  },
  "answers": {
   "200": {
    "name": "First organisation",
    "lines": [
     "Quay 1, Invented Harbour"
    ],
    "logoDescription": "A lighthouse on a rock"
   }
  }
 },
 "PUT /v1/letterhead/logo": {
  "answers": {
   "200": {
    "name": "First organisation",
    "lines": [
     "Quay 1, Invented Harbour"
    ],
    "logoDescription": "A lighthouse on a rock",
    "logo": {
     "href": "/v1/letterhead/logo",
     "mediaType": "image/png"
    }
   }
  }
 },
 "PUT /v1/price-lists/{code}/packs": {
  "body": "sku,name,massKg,prices.0.price,prices.0.fromPacks,content.unit,content.material,content.quantity,oversize,supplier,hazardous,shelfLifeMonths,prices.1.price,prices.1.fromPacks,prices.2.price,prices.2.fromPacks,content.form,content.sheet.widthMm,content.sheet.lengthMm,content.thicknessMm,cutFee,stock,content.rollWidthMm,content.part\r\nA-epoxy-primer-946ml,\"High-build epoxy primer, two-part, 0.946 l\",1.619,101.50,1,l,coating-epoxy-primer,0.946,false,chandlery-a,true,24,,,,,,,,,,,,\r\n",
  "answers": {
   "200": {
    "packs": [
     {
      "sku": "A-epoxy-primer-946ml",
      "name": "High-build epoxy primer, two-part, 0.946 l",
      "massKg": 1.619,
      "prices": [
       {
        "price": "101.50",
        "fromPacks": 1
       }
      ],
      "content": {
       "unit": "l",
       "material": "coating-epoxy-primer",
       "quantity": 0.946
      },
      "oversize": false,
      "supplier": "chandlery-a",
      "hazardous": true,
      "shelfLifeMonths": 24
     }
    ]
   }
  }
 },
 "PUT /v1/price-lists/{code}/packs/{sku}": {
  "body": {
   "sku": "A-epoxy-primer-946ml",
   "name": "High-build epoxy primer, two-part, 0.946 l",
   "massKg": 1.619,
   "prices": [
    {
     "price": "35.70",
     "fromPacks": 1
    },
    {
     "price": "33.60",
     "fromPacks": 6
    }
   ],
   "content": {
    "unit": "l",
    "material": "coating-epoxy-primer",
    "quantity": 0.946
   },
   "oversize": false,
   "supplier": "chandlery-a",
   "hazardous": true,
   "shelfLifeMonths": 24
  },
  "answers": {
   "200": {
    "sku": "A-epoxy-primer-946ml",
    "name": "High-build epoxy primer, two-part, 0.946 l",
    "massKg": 1.619,
    "prices": [
     {
      "price": "35.70",
      "fromPacks": 1
     }
    ],
    "content": {
     "unit": "l",
     "material": "coating-epoxy-primer",
     "quantity": 0.946
    },
    "oversize": false,
    "supplier": "chandlery-a",
    "hazardous": true,
    "shelfLifeMonths": 24
   }
  }
 },
 "PUT /v1/price-lists/{code}/packs/{sku}/stock": {
  "body": {
   "packs": 11
  },
  "answers": {
   "200": {
    "sku": "A-epoxy-primer-946ml",
    "packs": 11,
    "countedAt": "2027-03-03T08:00:00.000Z"
   }
  }
 }
};
