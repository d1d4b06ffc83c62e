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
    "current": "shipped-b783fe44",
    "items": [
     {
      "code": "shipped-b783fe44",
      "state": "published",
      "isShipped": true,
      "note": "Shipped with the program",
      "createdAt": "2027-03-03T08:00:00.000Z",
      "publishedAt": "2027-03-03T08:00:00.000Z",
      "contentHash": "b783fe445bac475d19636406afd730e484ac98955733801b1dcf95eee76bd09d"
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
    "before": "shipped-b783fe44",
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
       "amount": "3061.36",
       "currency": "USD"
      },
      "totalP90": {
       "amount": "4892.17",
       "currency": "USD"
      },
      "labourH": 31.72,
      "verdict": "restored",
      "engineVersion": "0.1.0",
      "edition": "shipped-b783fe44"
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
       "p10": 23.2,
       "p50": 31.72,
       "p90": 43.53
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.38,
       "p90": 11.17
      },
      "calendarDays": {
       "p10": 19.54,
       "p50": 24.18,
       "p90": 29.61
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3061.36",
        "currency": "USD"
       },
       "p50": {
        "amount": "3815.46",
        "currency": "USD"
       },
       "p80": {
        "amount": "4486.03",
        "currency": "USD"
       },
       "p90": {
        "amount": "4892.17",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4486.03",
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
        "reason": "the cheapest that restores the skin and every measure of the panel; flush-low governs"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 36215.56,
        "unit": "N/mm",
        "note": "old skin 32506 N/mm"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the method class-bv.",
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
        "p50": 10.38,
        "p90": 11.17
       },
       "calendarDays": {
        "p10": 19.54,
        "p50": 24.18,
        "p90": 29.61
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
        "The steps are set as if the crew came on every one of its working days.",
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
       "amount": "565.69",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.520258,
        "amount": {
         "amount": "294.31",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4486.03",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "436.04",
         "currency": "USD"
        },
        "saves": {
         "amount": "129.65",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3061.36",
        "currency": "USD"
       },
       "p50": {
        "amount": "3815.46",
        "currency": "USD"
       },
       "p80": {
        "amount": "4486.03",
        "currency": "USD"
       },
       "p90": {
        "amount": "4892.17",
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
         "amount": "146.71",
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
      "edition": "shipped-b783fe44",
      "catalogueHash": "b783fe445bac475d19636406afd730e484ac98955733801b1dcf95eee76bd09d",
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
         "amount": "4003.64",
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
    "pricedAt": "shipped-b783fe44",
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
      "p50": 10.38,
      "p90": 11.17
     },
     "calendarDays": {
      "p10": 19.54,
      "p50": 24.18,
      "p90": 29.61
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
      "The steps are set as if the crew came on every one of its working days.",
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
     "edition": "shipped-b783fe44",
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
     "edition": "shipped-b783fe44",
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
     "edition": "shipped-b783fe44",
     "catalogueHash": "b783fe445bac475d19636406afd730e484ac98955733801b1dcf95eee76bd09d"
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
       "amount": "3061.36",
       "currency": "USD"
      },
      "totalP90": {
       "amount": "4892.17",
       "currency": "USD"
      },
      "labourH": 31.72,
      "verdict": "restored",
      "engineVersion": "0.1.0",
      "edition": "shipped-b783fe44"
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
       "edition": "shipped-b783fe44"
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
   "basedOn": "shipped-b783fe44",
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
    "contentHash": "11ea7583c14554bcf91f36b33e50627376dc6aa42bd23e10a5bc8c1be92cffed"
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
    "contentHash": "7fa4f45c56338cfb8f5b08b836d1010b1c63d987b0eb90183f9852f68695f3a4"
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
    "against": "shipped-b783fe44",
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
       "p10": 23.2,
       "p50": 31.72,
       "p90": 43.53
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.38,
       "p90": 11.17
      },
      "calendarDays": {
       "p10": 19.54,
       "p50": 24.18,
       "p90": 29.61
      },
      "total": {
       "amount": "3915.36",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3061.36",
        "currency": "USD"
       },
       "p50": {
        "amount": "3815.46",
        "currency": "USD"
       },
       "p80": {
        "amount": "4486.03",
        "currency": "USD"
       },
       "p90": {
        "amount": "4892.17",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4486.03",
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
        "reason": "the cheapest that restores the skin and every measure of the panel; flush-low governs"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 36215.56,
        "unit": "N/mm",
        "note": "old skin 32506 N/mm"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the method class-bv.",
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
        "p50": 10.38,
        "p90": 11.17
       },
       "calendarDays": {
        "p10": 19.54,
        "p50": 24.18,
        "p90": 29.61
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
        "The steps are set as if the crew came on every one of its working days.",
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
       "amount": "565.69",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.520258,
        "amount": {
         "amount": "294.31",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4486.03",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "436.04",
         "currency": "USD"
        },
        "saves": {
         "amount": "129.65",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3061.36",
        "currency": "USD"
       },
       "p50": {
        "amount": "3815.46",
        "currency": "USD"
       },
       "p80": {
        "amount": "4486.03",
        "currency": "USD"
       },
       "p90": {
        "amount": "4892.17",
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
         "amount": "146.71",
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
      "edition": "shipped-b783fe44",
      "catalogueHash": "b783fe445bac475d19636406afd730e484ac98955733801b1dcf95eee76bd09d",
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
         "amount": "4003.64",
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
    "pricedAt": "shipped-b783fe44",
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
       "p10": 23.2,
       "p50": 31.72,
       "p90": 43.53
      },
      "workingDays": {
       "p10": 10,
       "p50": 10.38,
       "p90": 11.17
      },
      "calendarDays": {
       "p10": 19.54,
       "p50": 24.18,
       "p90": 29.61
      },
      "total": {
       "amount": "3923.65",
       "currency": "USD"
      },
      "totalRange": {
       "p10": {
        "amount": "3069.13",
        "currency": "USD"
       },
       "p50": {
        "amount": "3822.51",
        "currency": "USD"
       },
       "p80": {
        "amount": "4495.09",
        "currency": "USD"
       },
       "p90": {
        "amount": "4901.35",
        "currency": "USD"
       }
      },
      "totalWithContingency": {
       "amount": "4495.09",
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
        "reason": "the cheapest that restores the skin and every measure of the panel; flush-proud governs"
       }
      ],
      "properties": [
       {
        "code": "stiffness-along",
        "name": "Extensional stiffness along",
        "value": 43016.11,
        "unit": "N/mm",
        "note": "old skin 32506 N/mm"
       }
      ],
      "notes": [
       "Every schedule of the catalogue's fabrics was weighed, ranked by price; plies by the method class-bv.",
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
        "p50": 10.38,
        "p90": 11.17
       },
       "calendarDays": {
        "p10": 19.54,
        "p50": 24.18,
        "p90": 29.61
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
        "The steps are set as if the crew came on every one of its working days.",
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
       "amount": "566.40",
       "currency": "USD"
      },
      "contingencyBasis": "P80 of the cost less the price: four in five such jobs stay within both",
      "contingencyByKind": [
       {
        "kind": "productivity",
        "name": "Pace of the work",
        "share": 0.517491,
        "amount": {
         "amount": "293.11",
         "currency": "USD"
        }
       }
      ],
      "totalWithContingency": {
       "amount": "4495.09",
       "currency": "USD"
      },
      "betterEvidence": [
       {
        "evidence": "mapped-with-plugs",
        "contingency": {
         "amount": "435.81",
         "currency": "USD"
        },
        "saves": {
         "amount": "130.59",
         "currency": "USD"
        }
       }
      ],
      "range": {
       "p10": {
        "amount": "3069.13",
        "currency": "USD"
       },
       "p50": {
        "amount": "3822.51",
        "currency": "USD"
       },
       "p80": {
        "amount": "4495.09",
        "currency": "USD"
       },
       "p90": {
        "amount": "4901.35",
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
         "amount": "147.97",
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
      "edition": "shipped-b783fe44",
      "catalogueHash": "b783fe445bac475d19636406afd730e484ac98955733801b1dcf95eee76bd09d",
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
         "amount": "4011.13",
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
     "The steps are set as if the crew came on every one of its working days.",
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
       "inputs": {
        "coreMm": {
         "value": 12.7,
         "unit": "mm",
         "meaning": "new core, all layers",
         "origin": {
          "kind": "computed",
          "formula": "coring.choice",
          "title": "Layers from the material's list",
          "symbol": "t",
          "cite": {
           "source": "ARITHMETIC"
          },
          "inputs": {}
         }
        },
        "bondLineMm": {
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
          "inputs": {}
         }
        },
        "bondLineCount": {
         "value": 2,
         "unit": "1",
         "meaning": "bond lines of paste",
         "origin": {
          "kind": "computed",
          "formula": "coring.bond-count",
          "title": "Layers and one",
          "symbol": "n",
          "cite": {
           "source": "ARITHMETIC"
          },
          "inputs": {}
         }
        },
        "wetLineMm": {
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
        }
       }
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
       "inputs": {
        "stackMm": {
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
        "cavityMm": {
         "value": 13.7,
         "unit": "mm",
         "meaning": "height of the cavity",
         "origin": {
          "kind": "entered",
          "at": "/cavityMm"
         }
        }
       }
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
       "inputs": {
        "areaM2": {
         "value": 0.24,
         "unit": "m2",
         "meaning": "core to be laid",
         "origin": {
          "kind": "entered",
          "at": "/areaM2"
         }
        },
        "bondLineMm": {
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
          "inputs": {}
         }
        },
        "bondLineCount": {
         "value": 2,
         "unit": "1",
         "meaning": "bond lines of paste",
         "origin": {
          "kind": "computed",
          "formula": "coring.bond-count",
          "title": "Layers and one",
          "symbol": "n",
          "cite": {
           "source": "ARITHMETIC"
          },
          "inputs": {}
         }
        }
       }
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
       "inputs": {
        "areaM2": {
         "value": 0.24,
         "unit": "m2",
         "meaning": "core to be laid",
         "origin": {
          "kind": "entered",
          "at": "/areaM2"
         }
        },
        "thicknessMm": {
         "value": 12.7,
         "unit": "mm",
         "meaning": "new core",
         "origin": {
          "kind": "computed",
          "formula": "coring.choice",
          "title": "Layers from the material's list",
          "symbol": "t",
          "cite": {
           "source": "ARITHMETIC"
          },
          "inputs": {}
         }
        },
        "densityKgPerM3": {
         "value": 150,
         "unit": "kg/m3",
         "meaning": "density of the new core",
         "origin": {
          "kind": "catalogue",
          "item": "core-balsa-150",
          "field": "densityKgPerM3",
          "low": 120,
          "high": 180,
          "cite": {
           "source": "COMMON-PRACTICE",
           "note": "nominal grade; balsa varies sheet by sheet, about a fifth either way"
          }
         }
        }
       }
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
       "inputs": {
        "areaM2": {
         "value": 0.24,
         "unit": "m2",
         "meaning": "core to be laid",
         "origin": {
          "kind": "entered",
          "at": "/areaM2"
         }
        },
        "thicknessMm": {
         "value": 13.7,
         "unit": "mm",
         "meaning": "old core",
         "origin": {
          "kind": "entered",
          "at": "/cavityMm"
         }
        },
        "densityKgPerM3": {
         "value": 150,
         "unit": "kg/m3",
         "meaning": "density of the old core",
         "origin": {
          "kind": "assumed",
          "at": "/oldCore/densityKgPerM3",
          "because": "taken like the new core for want of anything better",
          "cite": {
           "source": "COMMON-PRACTICE",
           "note": "nominal grade; balsa varies sheet by sheet, about a fifth either way"
          },
          "low": 60,
          "high": 650
         }
        }
       }
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
       "inputs": {
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
        }
       }
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
      "inputs": {
       "kerfMm": {
        "value": 2,
        "unit": "mm",
        "meaning": "width that the blade takes",
        "origin": {
         "kind": "assumed",
         "at": "/kerfMm",
         "because": "a fine saw or a stout knife",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       },
       "edgeTrimMm": {
        "value": 0,
        "unit": "mm",
        "meaning": "strip along every edge of the stock that is not used",
        "origin": {
         "kind": "assumed",
         "at": "/edgeTrimMm",
         "because": "sheet edges are taken as sound",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       },
       "keepFromMm": {
        "value": 150,
        "unit": "mm",
        "meaning": "narrowest offcut worth keeping",
        "origin": {
         "kind": "assumed",
         "at": "/keepFromMm",
         "because": "it still holds a piece of the size bedded by hand",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       }
      }
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
      "inputs": {
       "kerfMm": {
        "value": 2,
        "unit": "mm",
        "meaning": "width that the blade takes",
        "origin": {
         "kind": "assumed",
         "at": "/kerfMm",
         "because": "a fine saw or a stout knife",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       },
       "edgeTrimMm": {
        "value": 0,
        "unit": "mm",
        "meaning": "strip along every edge of the stock that is not used",
        "origin": {
         "kind": "assumed",
         "at": "/edgeTrimMm",
         "because": "sheet edges are taken as sound",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       },
       "keepFromMm": {
        "value": 150,
        "unit": "mm",
        "meaning": "narrowest offcut worth keeping",
        "origin": {
         "kind": "assumed",
         "at": "/keepFromMm",
         "because": "it still holds a piece of the size bedded by hand",
         "cite": {
          "source": "COMMON-PRACTICE"
         }
        }
       }
      }
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
      "inputs": {
       "netM2": {
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
       "boughtM2": {
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
       }
      }
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
         "inputs": {
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
            "inputs": {}
           }
          }
         }
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
         "inputs": {
          "areaM2": {
           "value": 0.0257,
           "unit": "m2",
           "meaning": "area of closing ply 1 with overlaps twice",
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
          "arealMassGPerM2": {
           "value": 300,
           "unit": "g/m2",
           "meaning": "glass in Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide",
           "origin": {
            "kind": "catalogue",
            "item": "reinforcement-tape-plain-300",
            "field": "arealMassGPerM2",
            "cite": {
             "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %",
             "source": "COMMON-PRACTICE"
            },
            "low": 285,
            "high": 315
           }
          }
         }
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
         "inputs": {
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
          "fibreMassFraction": {
           "value": 0.5,
           "unit": "1",
           "meaning": "fibre mass fraction of Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide",
           "origin": {
            "kind": "entered",
            "at": "/plies/0/fibreMassFraction"
           }
          }
         }
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
       "inputs": {
        "ply1": {
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
        "ply2": {
         "value": 0.013,
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
        "ply3": {
         "value": 0.0182,
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
        "ply4": {
         "value": 0.0234,
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
        "ply5": {
         "value": 0.0286,
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
        "ply6": {
         "value": 0.0318,
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
        }
       }
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
       "inputs": {
        "ply1": {
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
        },
        "ply2": {
         "value": 0.013,
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
        },
        "ply3": {
         "value": 0.0182,
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
        },
        "ply4": {
         "value": 0.0234,
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
        },
        "ply5": {
         "value": 0.0286,
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
        },
        "ply6": {
         "value": 0.0318,
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
     "after": 0.031
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
      "afterM2": 0.031
     },
     "text": "Worth taking before the deck is cut: 7 taps, about 3.5 min in all. They are expected to save 0.36 h of work, and to narrow the range of bad core from 0.06 to 0.031 m2."
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "margin": {
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
         },
         "flange": {
          "value": 50,
          "unit": "mm",
          "meaning": "sound deck kept at every edge",
          "origin": {
           "kind": "assumed",
           "at": "/method/flangeMm",
           "because": "about 2 in of deck kept round a cut, so that the new laminate can tie in",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         },
         "cornerRadius": {
          "value": 40,
          "unit": "mm",
          "meaning": "radius of the corners of the cut",
          "origin": {
           "kind": "assumed",
           "at": "/rules/cornerRadiusMm",
           "because": "rounded corners of 25 to 50 mm do not start cracks",
           "cite": {
            "source": "FROM-MEMORY"
           }
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
         }
        }
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
        "inputs": {
         "ratio": {
          "value": 12,
          "unit": "1",
          "meaning": "taper ratio, length to one of thickness",
          "origin": {
           "kind": "assumed",
           "at": "/method/taperRatio",
           "because": "the usual figure for glass decks; in tests of 1:6, 1:12 and 1:20 the best of the three",
           "cite": {
            "source": "ROTHBARTH-PINTO-2019"
           }
          }
         },
         "thicknessMm": {
          "value": 3,
          "unit": "mm",
          "meaning": "thickness of the skin that stays",
          "origin": {
           "kind": "entered",
           "at": "/outerSkin/thicknessMm"
          }
         }
        }
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
        "inputs": {
         "skinMm": {
          "value": 3,
          "unit": "mm",
          "meaning": "thickness of the skin to be cut",
          "origin": {
           "kind": "entered",
           "at": "/outerSkin/thicknessMm"
          }
         },
         "marginMm": {
          "value": 2,
          "unit": "mm",
          "meaning": "depth of the saw past the skin",
          "origin": {
           "kind": "assumed",
           "at": "/rules/depthMarginMm",
           "because": "the saw is set to the measured skin and 1 to 3 mm",
           "cite": {
            "source": "COMMON-PRACTICE"
           }
          }
         }
        }
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
      "p10": 23.2,
      "p50": 31.72,
      "p90": 43.53
     },
     "workingDays": {
      "p10": 10,
      "p50": 10.38,
      "p90": 11.17
     },
     "calendarDays": {
      "p10": 19.54,
      "p50": 24.18,
      "p90": 29.61
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
       "amount": "3061.36",
       "currency": "USD"
      },
      "p50": {
       "amount": "3815.46",
       "currency": "USD"
      },
      "p80": {
       "amount": "4486.03",
       "currency": "USD"
      },
      "p90": {
       "amount": "4892.17",
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
          "inputs": {
           "volumeL": {
            "value": 0.9912,
            "unit": "l",
            "meaning": "volume with waste",
            "origin": {
             "kind": "computed",
             "formula": "arithmetic.sum",
             "title": "Net and waste",
             "symbol": "Σ",
             "cite": {
              "source": "ARITHMETIC"
             },
             "inputs": {}
            }
           },
           "thickenedDensity": {
            "value": 1.15679,
            "unit": "g/cm3",
            "meaning": "density of the thickened resin",
            "origin": {
             "kind": "computed",
             "formula": "process.thickened-density",
             "title": "Density of thickened resin",
             "symbol": "ρ_t",
             "cite": {
              "source": "MIX-BY-VOLUMES"
             },
             "inputs": {}
            }
           },
           "partsPerHundred": {
            "value": 5,
            "unit": "phr",
            "meaning": "parts of filler",
            "origin": {
             "kind": "catalogue",
             "item": "filler-fumed-silica",
             "field": "partsPerHundred",
             "low": 3,
             "cite": {
              "note": "adhesive consistency; an owner reports about 120 g to a litre for a stiff paste",
              "source": "FROM-MEMORY"
             },
             "high": 8
            }
           }
          }
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
        "amount": "4446.91",
        "currency": "USD"
       },
       "spread": {
        "amount": "1814.84",
        "currency": "USD"
       },
       "days": 24.18,
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
  "body": "cite.note,cite.source,code,name,region,charges.0.per,charges.0.code,charges.0.name,charges.0.price,charges.0.where,charges.1.per,charges.1.code,charges.1.name,charges.1.price,charges.1.where,charges.2.per,charges.2.code,charges.2.name,charges.2.when,charges.2.price,charges.2.where,charges.3.per,charges.3.code,charges.3.name,charges.3.when,charges.3.price,charges.3.where,charges.4.per,charges.4.code,charges.4.name,charges.4.when,charges.4.price,charges.5.per,charges.5.code,charges.5.name,charges.5.when,charges.5.price,charges.5.where,charges.6.per,charges.6.code,charges.6.name,charges.6.price,charges.6.where,charges.7.per,charges.7.code,charges.7.name,charges.7.when,charges.7.price,charges.8.per,charges.8.code,charges.8.name,charges.8.price,charges.9.per,charges.9.code,charges.9.name,charges.9.price,perHour.rigger,perHour.general,perHour.finisher,perHour.laminator,validTo,currency,invented,rateBasis,taxGroups.0.code,taxGroups.0.name,taxGroups.0.percent,taxGroups.1.code,taxGroups.1.name,taxGroups.1.percent,taxGroups.2.code,taxGroups.2.name,taxGroups.2.percent,validFrom,profitPercent,overheadPercent\r\n\"invented, of the size of posted yard rates\",TRADE-YARD-RATES,invented-dollar,Invented yard rates in US dollars,\"invented region, US dollar\",job,haul,\"Haul out, block and launch\",560.00,ashore-for-this,job,environment,Environmental fee,45.00,yard,day,lay-day-open,\"Lay day, hard standing\",open,32.00,ashore-for-this,day,lay-day-tent,\"Lay day, hard standing\",tent,32.00,ashore-for-this,job,tent,\"Hire of frame, film for the shrink cover\",tent,480.00,day,lay-day-shed,Day in the shed,shed,85.00,ashore-for-this,worked-day,power,Power and extraction,8.00,yard,day,heater,\"Heater of 2 to 3 kW: hire, and power day and night\",heated,26.00,opened-m2,waste,\"Waste laminate and core, disposal\",18.00,labour-h,small-tools,Wear of tools,1.50,92.00,68.00,88.00,95.00,2027-12-31,USD,true,posted,parts,Goods,7,labour,Services,0,zero,Not taxed,0,2026-01-01,0,0\r\n",
  "answers": {
   "200": {
    "imported": 3
   }
  }
 },
 "POST /v1/imports/materials": {
  "body": "code,kind,name,coats.low,coats.cite.source,coats.high,coats.value,coating,hazards.0,hazards.1,hazards.2,hazards.3,hazards.4,hazards.5,recoatH.low,recoatH.cite.note,recoatH.cite.source,recoatH.high,recoatH.value,isIsocyanate,densityKgPerL.low,densityKgPerL.cite.source,densityKgPerL.high,densityKgPerL.value,coverageM2PerL.low,coverageM2PerL.cite.source,coverageM2PerL.high,coverageM2PerL.value,lowestTemperatureC.low,lowestTemperatureC.cite.note,lowestTemperatureC.cite.source,lowestTemperatureC.high,lowestTemperatureC.value,highestRelativeHumidityPercent.low,highestRelativeHumidityPercent.cite.note,highestRelativeHumidityPercent.cite.source,highestRelativeHumidityPercent.high,highestRelativeHumidityPercent.value,coats.cite.note,coverageM2PerL.cite.note,recoatH.cite.clause,lowestTemperatureC.cite.clause,unit,usages.0.driver,usages.0.perDriver.low,usages.0.perDriver.cite.note,usages.0.perDriver.cite.source,usages.0.perDriver.high,usages.0.perDriver.value,when,servesJobs.low,servesJobs.cite.note,servesJobs.cite.source,servesJobs.high,servesJobs.value,usages,usages.1.driver,usages.1.perDriver.low,usages.1.perDriver.cite.note,usages.1.perDriver.cite.source,usages.1.perDriver.high,usages.1.perDriver.value,forms.0.form,forms.1.form,forms.1.scoreWidthMm,forms.1.scoreSpacingMm,forms.1.scoreDepthFraction,sheets.0.widthMm,sheets.0.lengthMm,sheets.1.widthMm,sheets.1.lengthMm,coreType,wetOutLPerM2.low,wetOutLPerM2.cite.note,wetOutLPerM2.cite.source,wetOutLPerM2.high,wetOutLPerM2.value,thicknessesMm.0,thicknessesMm.1,thicknessesMm.2,thicknessesMm.3,thicknessesMm.4,thicknessesMm.5,densityKgPerM3.low,densityKgPerM3.cite.note,densityKgPerM3.cite.source,densityKgPerM3.high,densityKgPerM3.value,largestPieceM2.low,largestPieceM2.cite.note,largestPieceM2.cite.source,largestPieceM2.high,largestPieceM2.value,allowedTurnsDeg,needsBleedHoles,shearModulusMPa.low,shearModulusMPa.cite.note,shearModulusMPa.cite.clause,shearModulusMPa.cite.source,shearModulusMPa.high,shearModulusMPa.value,shearStrengthMPa.low,shearStrengthMPa.cite.note,shearStrengthMPa.cite.clause,shearStrengthMPa.cite.source,shearStrengthMPa.high,shearStrengthMPa.value,inPlaneModulusMPa.low,inPlaneModulusMPa.cite.note,inPlaneModulusMPa.cite.source,inPlaneModulusMPa.high,inPlaneModulusMPa.value,compressiveModulusMPa.low,compressiveModulusMPa.cite.note,compressiveModulusMPa.cite.clause,compressiveModulusMPa.cite.source,compressiveModulusMPa.high,compressiveModulusMPa.value,compressiveStrengthMPa.low,compressiveStrengthMPa.cite.note,compressiveStrengthMPa.cite.clause,compressiveStrengthMPa.cite.source,compressiveStrengthMPa.high,compressiveStrengthMPa.value,inPlaneModulusMPa.cite.clause,sheets.2.widthMm,sheets.2.lengthMm,allowedTurnsDeg.0,allowedTurnsDeg.1,bolt.lengthMm,bolt.diameterMm,uses.0,uses.1,partsPerHundred.low,partsPerHundred.cite.source,partsPerHundred.high,partsPerHundred.value,bulkDensityGPerCm3.low,bulkDensityGPerCm3.cite.source,bulkDensityGPerCm3.high,bulkDensityGPerCm3.value,trueDensityGPerCm3.low,trueDensityGPerCm3.cite.note,trueDensityGPerCm3.cite.source,trueDensityGPerCm3.high,trueDensityGPerCm3.value,uses.2,hazards,partsPerHundred.cite.note,fibre,fabric,layers.0.layup,layers.0.angleDeg,layers.0.arealMassGPerM2,layers.1.layup,layers.1.angleDeg,layers.1.arealMassGPerM2,suitsResins.0,suitsResins.1,suitsResins.2,printThrough,rollLengthsM.0,rollLengthsM.1,rollWidthsMm.0,arealMassGPerM2.low,arealMassGPerM2.cite.note,arealMassGPerM2.cite.source,arealMassGPerM2.high,arealMassGPerM2.value,suitsAgainstCore,fibreMassFraction.low,fibreMassFraction.cite.note,fibreMassFraction.cite.clause,fibreMassFraction.cite.source,fibreMassFraction.high,fibreMassFraction.value,layers.2.layup,layers.2.angleDeg,layers.2.arealMassGPerM2,rollLengthsM.2,rollWidthsMm.1,rollWidthsMm.2,rollWidthsMm.3,chemistry,hardeners.0.code,hardeners.0.gelH.low,hardeners.0.gelH.cite.note,hardeners.0.gelH.cite.source,hardeners.0.gelH.high,hardeners.0.gelH.value,hardeners.0.name,hardeners.0.speed,hardeners.0.hazards.0,hardeners.0.hazards.1,hardeners.0.hazards.2,hardeners.0.hazards.3,hardeners.0.hazards.4,hardeners.0.hazards.5,hardeners.0.potLives.0.massG,hardeners.0.potLives.0.minutes.low,hardeners.0.potLives.0.minutes.cite.note,hardeners.0.potLives.0.minutes.cite.source,hardeners.0.potLives.0.minutes.high,hardeners.0.potLives.0.minutes.value,hardeners.0.potLives.0.temperatureC,hardeners.0.potLives.1.massG,hardeners.0.potLives.1.minutes.low,hardeners.0.potLives.1.minutes.cite.note,hardeners.0.potLives.1.minutes.cite.source,hardeners.0.potLives.1.minutes.high,hardeners.0.potLives.1.minutes.value,hardeners.0.potLives.1.temperatureC,hardeners.0.releaseH.low,hardeners.0.releaseH.cite.note,hardeners.0.releaseH.cite.source,hardeners.0.releaseH.high,hardeners.0.releaseH.value,hardeners.0.fullCureH.low,hardeners.0.fullCureH.cite.note,hardeners.0.fullCureH.cite.source,hardeners.0.fullCureH.high,hardeners.0.fullCureH.value,hardeners.0.sandableH.low,hardeners.0.sandableH.cite.note,hardeners.0.sandableH.cite.source,hardeners.0.sandableH.high,hardeners.0.sandableH.value,hardeners.0.partsByMass.low,hardeners.0.partsByMass.cite.note,hardeners.0.partsByMass.cite.source,hardeners.0.partsByMass.high,hardeners.0.partsByMass.value,hardeners.0.recoatShutsH.low,hardeners.0.recoatShutsH.cite.note,hardeners.0.recoatShutsH.cite.source,hardeners.0.recoatShutsH.high,hardeners.0.recoatShutsH.value,hardeners.0.partsByVolume.low,hardeners.0.partsByVolume.cite.note,hardeners.0.partsByVolume.cite.source,hardeners.0.partsByVolume.high,hardeners.0.partsByVolume.value,hardeners.0.densityGPerCm3.low,hardeners.0.densityGPerCm3.cite.note,hardeners.0.densityGPerCm3.cite.source,hardeners.0.densityGPerCm3.high,hardeners.0.densityGPerCm3.value,hardeners.0.lowestTemperatureC.low,hardeners.0.lowestTemperatureC.cite.note,hardeners.0.lowestTemperatureC.cite.source,hardeners.0.lowestTemperatureC.high,hardeners.0.lowestTemperatureC.value,hardeners.0.highestTemperatureC.low,hardeners.0.highestTemperatureC.cite.note,hardeners.0.highestTemperatureC.cite.source,hardeners.0.highestTemperatureC.high,hardeners.0.highestTemperatureC.value,hardeners.1.code,hardeners.1.gelH.low,hardeners.1.gelH.cite.note,hardeners.1.gelH.cite.source,hardeners.1.gelH.high,hardeners.1.gelH.value,hardeners.1.name,hardeners.1.speed,hardeners.1.hazards.0,hardeners.1.hazards.1,hardeners.1.hazards.2,hardeners.1.hazards.3,hardeners.1.hazards.4,hardeners.1.hazards.5,hardeners.1.potLives.0.massG,hardeners.1.potLives.0.minutes.low,hardeners.1.potLives.0.minutes.cite.note,hardeners.1.potLives.0.minutes.cite.source,hardeners.1.potLives.0.minutes.high,hardeners.1.potLives.0.minutes.value,hardeners.1.potLives.0.temperatureC,hardeners.1.potLives.1.massG,hardeners.1.potLives.1.minutes.low,hardeners.1.potLives.1.minutes.cite.note,hardeners.1.potLives.1.minutes.cite.source,hardeners.1.potLives.1.minutes.high,hardeners.1.potLives.1.minutes.value,hardeners.1.potLives.1.temperatureC,hardeners.1.releaseH.low,hardeners.1.releaseH.cite.note,hardeners.1.releaseH.cite.source,hardeners.1.releaseH.high,hardeners.1.releaseH.value,hardeners.1.fullCureH.low,hardeners.1.fullCureH.cite.note,hardeners.1.fullCureH.cite.source,hardeners.1.fullCureH.high,hardeners.1.fullCureH.value,hardeners.1.sandableH.low,hardeners.1.sandableH.cite.note,hardeners.1.sandableH.cite.source,hardeners.1.sandableH.high,hardeners.1.sandableH.value,hardeners.1.partsByMass.low,hardeners.1.partsByMass.cite.note,hardeners.1.partsByMass.cite.source,hardeners.1.partsByMass.high,hardeners.1.partsByMass.value,hardeners.1.recoatShutsH.low,hardeners.1.recoatShutsH.cite.note,hardeners.1.recoatShutsH.cite.source,hardeners.1.recoatShutsH.high,hardeners.1.recoatShutsH.value,hardeners.1.partsByVolume.low,hardeners.1.partsByVolume.cite.note,hardeners.1.partsByVolume.cite.source,hardeners.1.partsByVolume.high,hardeners.1.partsByVolume.value,hardeners.1.densityGPerCm3.low,hardeners.1.densityGPerCm3.cite.note,hardeners.1.densityGPerCm3.cite.source,hardeners.1.densityGPerCm3.high,hardeners.1.densityGPerCm3.value,hardeners.1.lowestTemperatureC.low,hardeners.1.lowestTemperatureC.cite.note,hardeners.1.lowestTemperatureC.cite.source,hardeners.1.lowestTemperatureC.high,hardeners.1.lowestTemperatureC.value,hardeners.1.highestTemperatureC.low,hardeners.1.highestTemperatureC.cite.note,hardeners.1.highestTemperatureC.cite.source,hardeners.1.highestTemperatureC.high,hardeners.1.highestTemperatureC.value,poissonRatio.low,poissonRatio.cite.note,poissonRatio.cite.source,poissonRatio.high,poissonRatio.value,densityGPerCm3.low,densityGPerCm3.cite.note,densityGPerCm3.cite.source,densityGPerCm3.high,densityGPerCm3.value,youngModulusMPa.low,youngModulusMPa.cite.note,youngModulusMPa.cite.source,youngModulusMPa.high,youngModulusMPa.value,specificHeatJPerGK.low,specificHeatJPerGK.cite.note,specificHeatJPerGK.cite.source,specificHeatJPerGK.high,specificHeatJPerGK.value,curedDensityGPerCm3.low,curedDensityGPerCm3.cite.note,curedDensityGPerCm3.cite.source,curedDensityGPerCm3.high,curedDensityGPerCm3.value,heatOfReactionJPerG.low,heatOfReactionJPerG.cite.note,heatOfReactionJPerG.cite.source,heatOfReactionJPerG.high,heatOfReactionJPerG.value,activationEnergyKJPerMol.low,activationEnergyKJPerMol.cite.note,activationEnergyKJPerMol.cite.source,activationEnergyKJPerMol.high,activationEnergyKJPerMol.value,hardeners.2.code,hardeners.2.gelH.low,hardeners.2.gelH.cite.note,hardeners.2.gelH.cite.source,hardeners.2.gelH.high,hardeners.2.gelH.value,hardeners.2.name,hardeners.2.speed,hardeners.2.hazards.0,hardeners.2.hazards.1,hardeners.2.hazards.2,hardeners.2.hazards.3,hardeners.2.hazards.4,hardeners.2.hazards.5,hardeners.2.potLives.0.massG,hardeners.2.potLives.0.minutes.low,hardeners.2.potLives.0.minutes.cite.note,hardeners.2.potLives.0.minutes.cite.source,hardeners.2.potLives.0.minutes.high,hardeners.2.potLives.0.minutes.value,hardeners.2.potLives.0.temperatureC,hardeners.2.potLives.1.massG,hardeners.2.potLives.1.minutes.low,hardeners.2.potLives.1.minutes.cite.note,hardeners.2.potLives.1.minutes.cite.source,hardeners.2.potLives.1.minutes.high,hardeners.2.potLives.1.minutes.value,hardeners.2.potLives.1.temperatureC,hardeners.2.releaseH.low,hardeners.2.releaseH.cite.note,hardeners.2.releaseH.cite.source,hardeners.2.releaseH.high,hardeners.2.releaseH.value,hardeners.2.fullCureH.low,hardeners.2.fullCureH.cite.note,hardeners.2.fullCureH.cite.source,hardeners.2.fullCureH.high,hardeners.2.fullCureH.value,hardeners.2.sandableH.low,hardeners.2.sandableH.cite.note,hardeners.2.sandableH.cite.source,hardeners.2.sandableH.high,hardeners.2.sandableH.value,hardeners.2.partsByMass.low,hardeners.2.partsByMass.cite.note,hardeners.2.partsByMass.cite.source,hardeners.2.partsByMass.high,hardeners.2.partsByMass.value,hardeners.2.recoatShutsH.low,hardeners.2.recoatShutsH.cite.note,hardeners.2.recoatShutsH.cite.source,hardeners.2.recoatShutsH.high,hardeners.2.recoatShutsH.value,hardeners.2.partsByVolume.low,hardeners.2.partsByVolume.cite.note,hardeners.2.partsByVolume.cite.source,hardeners.2.partsByVolume.high,hardeners.2.partsByVolume.value,hardeners.2.densityGPerCm3.low,hardeners.2.densityGPerCm3.cite.note,hardeners.2.densityGPerCm3.cite.source,hardeners.2.densityGPerCm3.high,hardeners.2.densityGPerCm3.value,hardeners.2.lowestTemperatureC.low,hardeners.2.lowestTemperatureC.cite.note,hardeners.2.lowestTemperatureC.cite.source,hardeners.2.lowestTemperatureC.high,hardeners.2.lowestTemperatureC.value,hardeners.2.highestTemperatureC.low,hardeners.2.highestTemperatureC.cite.note,hardeners.2.highestTemperatureC.cite.source,hardeners.2.highestTemperatureC.high,hardeners.2.highestTemperatureC.value,hardeners.3.code,hardeners.3.gelH.low,hardeners.3.gelH.cite.note,hardeners.3.gelH.cite.source,hardeners.3.gelH.high,hardeners.3.gelH.value,hardeners.3.name,hardeners.3.speed,hardeners.3.hazards.0,hardeners.3.hazards.1,hardeners.3.hazards.2,hardeners.3.hazards.3,hardeners.3.hazards.4,hardeners.3.hazards.5,hardeners.3.potLives.0.massG,hardeners.3.potLives.0.minutes.low,hardeners.3.potLives.0.minutes.cite.note,hardeners.3.potLives.0.minutes.cite.source,hardeners.3.potLives.0.minutes.high,hardeners.3.potLives.0.minutes.value,hardeners.3.potLives.0.temperatureC,hardeners.3.potLives.1.massG,hardeners.3.potLives.1.minutes.low,hardeners.3.potLives.1.minutes.cite.note,hardeners.3.potLives.1.minutes.cite.source,hardeners.3.potLives.1.minutes.high,hardeners.3.potLives.1.minutes.value,hardeners.3.potLives.1.temperatureC,hardeners.3.releaseH.low,hardeners.3.releaseH.cite.note,hardeners.3.releaseH.cite.source,hardeners.3.releaseH.high,hardeners.3.releaseH.value,hardeners.3.fullCureH.low,hardeners.3.fullCureH.cite.note,hardeners.3.fullCureH.cite.source,hardeners.3.fullCureH.high,hardeners.3.fullCureH.value,hardeners.3.sandableH.low,hardeners.3.sandableH.cite.note,hardeners.3.sandableH.cite.source,hardeners.3.sandableH.high,hardeners.3.sandableH.value,hardeners.3.partsByMass.low,hardeners.3.partsByMass.cite.note,hardeners.3.partsByMass.cite.source,hardeners.3.partsByMass.high,hardeners.3.partsByMass.value,hardeners.3.recoatShutsH.low,hardeners.3.recoatShutsH.cite.note,hardeners.3.recoatShutsH.cite.source,hardeners.3.recoatShutsH.high,hardeners.3.recoatShutsH.value,hardeners.3.partsByVolume.low,hardeners.3.partsByVolume.cite.note,hardeners.3.partsByVolume.cite.source,hardeners.3.partsByVolume.high,hardeners.3.partsByVolume.value,hardeners.3.densityGPerCm3.low,hardeners.3.densityGPerCm3.cite.note,hardeners.3.densityGPerCm3.cite.source,hardeners.3.densityGPerCm3.high,hardeners.3.densityGPerCm3.value,hardeners.3.lowestTemperatureC.low,hardeners.3.lowestTemperatureC.cite.note,hardeners.3.lowestTemperatureC.cite.source,hardeners.3.lowestTemperatureC.high,hardeners.3.lowestTemperatureC.value,hardeners.3.highestTemperatureC.low,hardeners.3.highestTemperatureC.cite.note,hardeners.3.highestTemperatureC.cite.source,hardeners.3.highestTemperatureC.high,hardeners.3.highestTemperatureC.value,hazards.6,hazards.7\r\ncoating-epoxy-primer,coating,\"High-build epoxy primer, two-part\",2,FROM-MEMORY,3,2,primer,H226,H315,H317,H319,H336,H411,6,an example primer at 12 to 14 h; after 24 h sand again,COMMON-PRACTICE,24,12,false,1.35,FROM-MEMORY,1.65,1.5,4,FROM-MEMORY,8,6,10,15 to 25 degC,MAKER-COATING-GATES,18,15,65,\"two-part epoxy primer, 15 to 25 degC\",MAKER-COATING-GATES,85,70,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,\r\n",
  "answers": {
   "200": {
    "imported": 121
   }
  }
 },
 "POST /v1/imports/price-lists": {
  "body": "code,name,packs.0.sku,packs.0.name,packs.0.massKg,packs.0.prices.0.price,packs.0.prices.0.fromPacks,packs.0.prices.1.price,packs.0.prices.1.fromPacks,packs.0.content.unit,packs.0.content.material,packs.0.content.quantity,packs.0.oversize,packs.0.supplier,packs.0.hazardous,packs.0.shelfLifeMonths,packs.1.sku,packs.1.name,packs.1.massKg,packs.1.prices.0.price,packs.1.prices.0.fromPacks,packs.1.prices.1.price,packs.1.prices.1.fromPacks,packs.1.content.unit,packs.1.content.material,packs.1.content.quantity,packs.1.oversize,packs.1.supplier,packs.1.hazardous,packs.1.shelfLifeMonths,packs.2.sku,packs.2.name,packs.2.massKg,packs.2.prices.0.price,packs.2.prices.0.fromPacks,packs.2.prices.1.price,packs.2.prices.1.fromPacks,packs.2.content.unit,packs.2.content.material,packs.2.content.quantity,packs.2.oversize,packs.2.supplier,packs.2.hazardous,packs.2.shelfLifeMonths,packs.3.sku,packs.3.name,packs.3.massKg,packs.3.prices.0.price,packs.3.prices.0.fromPacks,packs.3.prices.1.price,packs.3.prices.1.fromPacks,packs.3.content.unit,packs.3.content.material,packs.3.content.quantity,packs.3.oversize,packs.3.supplier,packs.3.hazardous,packs.3.shelfLifeMonths,packs.4.sku,packs.4.name,packs.4.massKg,packs.4.prices.0.price,packs.4.prices.0.fromPacks,packs.4.prices.1.price,packs.4.prices.1.fromPacks,packs.4.content.unit,packs.4.content.material,packs.4.content.quantity,packs.4.oversize,packs.4.supplier,packs.4.hazardous,packs.4.shelfLifeMonths,packs.5.sku,packs.5.name,packs.5.massKg,packs.5.prices.0.price,packs.5.prices.0.fromPacks,packs.5.prices.1.price,packs.5.prices.1.fromPacks,packs.5.content.unit,packs.5.content.material,packs.5.content.quantity,packs.5.oversize,packs.5.supplier,packs.5.hazardous,packs.5.shelfLifeMonths,packs.6.sku,packs.6.name,packs.6.massKg,packs.6.prices.0.price,packs.6.prices.0.fromPacks,packs.6.prices.1.price,packs.6.prices.1.fromPacks,packs.6.content.unit,packs.6.content.material,packs.6.content.quantity,packs.6.oversize,packs.6.supplier,packs.6.hazardous,packs.6.shelfLifeMonths,packs.7.sku,packs.7.name,packs.7.massKg,packs.7.prices.0.price,packs.7.prices.0.fromPacks,packs.7.prices.1.price,packs.7.prices.1.fromPacks,packs.7.content.unit,packs.7.content.material,packs.7.content.quantity,packs.7.oversize,packs.7.supplier,packs.7.hazardous,packs.7.shelfLifeMonths,packs.8.sku,packs.8.name,packs.8.massKg,packs.8.prices.0.price,packs.8.prices.0.fromPacks,packs.8.prices.1.price,packs.8.prices.1.fromPacks,packs.8.content.unit,packs.8.content.material,packs.8.content.quantity,packs.8.oversize,packs.8.supplier,packs.8.hazardous,packs.8.shelfLifeMonths,packs.9.sku,packs.9.name,packs.9.massKg,packs.9.prices.0.price,packs.9.prices.0.fromPacks,packs.9.prices.1.price,packs.9.prices.1.fromPacks,packs.9.content.unit,packs.9.content.material,packs.9.content.quantity,packs.9.oversize,packs.9.supplier,packs.9.hazardous,packs.9.shelfLifeMonths,packs.10.sku,packs.10.name,packs.10.massKg,packs.10.prices.0.price,packs.10.prices.0.fromPacks,packs.10.prices.1.price,packs.10.prices.1.fromPacks,packs.10.content.unit,packs.10.content.material,packs.10.content.quantity,packs.10.oversize,packs.10.supplier,packs.10.hazardous,packs.10.shelfLifeMonths,packs.11.sku,packs.11.name,packs.11.massKg,packs.11.prices.0.price,packs.11.prices.0.fromPacks,packs.11.prices.1.price,packs.11.prices.1.fromPacks,packs.11.content.unit,packs.11.content.material,packs.11.content.quantity,packs.11.oversize,packs.11.supplier,packs.11.hazardous,packs.11.shelfLifeMonths,packs.12.sku,packs.12.name,packs.12.massKg,packs.12.prices.0.price,packs.12.prices.0.fromPacks,packs.12.prices.1.price,packs.12.prices.1.fromPacks,packs.12.content.unit,packs.12.content.material,packs.12.content.quantity,packs.12.oversize,packs.12.supplier,packs.12.hazardous,packs.12.shelfLifeMonths,packs.13.sku,packs.13.name,packs.13.massKg,packs.13.prices.0.price,packs.13.prices.0.fromPacks,packs.13.prices.1.price,packs.13.prices.1.fromPacks,packs.13.content.unit,packs.13.content.material,packs.13.content.quantity,packs.13.oversize,packs.13.supplier,packs.13.hazardous,packs.13.shelfLifeMonths,packs.14.sku,packs.14.name,packs.14.massKg,packs.14.prices.0.price,packs.14.prices.0.fromPacks,packs.14.prices.1.price,packs.14.prices.1.fromPacks,packs.14.content.unit,packs.14.content.material,packs.14.content.quantity,packs.14.oversize,packs.14.supplier,packs.14.hazardous,packs.14.shelfLifeMonths,packs.15.sku,packs.15.name,packs.15.massKg,packs.15.prices.0.price,packs.15.prices.0.fromPacks,packs.15.prices.1.price,packs.15.prices.1.fromPacks,packs.15.content.unit,packs.15.content.material,packs.15.content.quantity,packs.15.oversize,packs.15.supplier,packs.15.hazardous,packs.15.shelfLifeMonths,packs.16.sku,packs.16.name,packs.16.massKg,packs.16.prices.0.price,packs.16.prices.0.fromPacks,packs.16.prices.1.price,packs.16.prices.1.fromPacks,packs.16.content.unit,packs.16.content.material,packs.16.content.quantity,packs.16.oversize,packs.16.supplier,packs.16.hazardous,packs.16.shelfLifeMonths,packs.17.sku,packs.17.name,packs.17.massKg,packs.17.prices.0.price,packs.17.prices.0.fromPacks,packs.17.prices.1.price,packs.17.prices.1.fromPacks,packs.17.content.unit,packs.17.content.material,packs.17.content.quantity,packs.17.oversize,packs.17.supplier,packs.17.hazardous,packs.17.shelfLifeMonths,packs.18.sku,packs.18.name,packs.18.massKg,packs.18.prices.0.price,packs.18.prices.0.fromPacks,packs.18.prices.1.price,packs.18.prices.1.fromPacks,packs.18.content.unit,packs.18.content.material,packs.18.content.quantity,packs.18.oversize,packs.18.supplier,packs.18.hazardous,packs.18.shelfLifeMonths,packs.19.sku,packs.19.name,packs.19.massKg,packs.19.prices.0.price,packs.19.prices.0.fromPacks,packs.19.prices.1.price,packs.19.prices.1.fromPacks,packs.19.content.unit,packs.19.content.material,packs.19.content.quantity,packs.19.oversize,packs.19.supplier,packs.19.hazardous,packs.19.shelfLifeMonths,packs.20.sku,packs.20.name,packs.20.massKg,packs.20.prices.0.price,packs.20.prices.0.fromPacks,packs.20.prices.1.price,packs.20.prices.1.fromPacks,packs.20.content.unit,packs.20.content.material,packs.20.content.quantity,packs.20.oversize,packs.20.supplier,packs.20.hazardous,packs.20.shelfLifeMonths,packs.21.sku,packs.21.name,packs.21.massKg,packs.21.prices.0.price,packs.21.prices.0.fromPacks,packs.21.prices.1.price,packs.21.prices.1.fromPacks,packs.21.content.unit,packs.21.content.material,packs.21.content.quantity,packs.21.oversize,packs.21.supplier,packs.21.hazardous,packs.21.shelfLifeMonths,packs.22.sku,packs.22.name,packs.22.massKg,packs.22.prices.0.price,packs.22.prices.0.fromPacks,packs.22.prices.1.price,packs.22.prices.1.fromPacks,packs.22.content.unit,packs.22.content.material,packs.22.content.quantity,packs.22.oversize,packs.22.supplier,packs.22.hazardous,packs.22.shelfLifeMonths,packs.23.sku,packs.23.name,packs.23.massKg,packs.23.prices.0.price,packs.23.prices.0.fromPacks,packs.23.prices.1.price,packs.23.prices.1.fromPacks,packs.23.content.unit,packs.23.content.material,packs.23.content.quantity,packs.23.oversize,packs.23.supplier,packs.23.hazardous,packs.23.shelfLifeMonths,packs.24.sku,packs.24.name,packs.24.massKg,packs.24.prices.0.price,packs.24.prices.0.fromPacks,packs.24.prices.1.price,packs.24.prices.1.fromPacks,packs.24.content.unit,packs.24.content.material,packs.24.content.quantity,packs.24.oversize,packs.24.supplier,packs.24.hazardous,packs.25.sku,packs.25.name,packs.25.massKg,packs.25.prices.0.price,packs.25.prices.0.fromPacks,packs.25.prices.1.price,packs.25.prices.1.fromPacks,packs.25.content.unit,packs.25.content.material,packs.25.content.quantity,packs.25.oversize,packs.25.supplier,packs.25.hazardous,packs.26.sku,packs.26.name,packs.26.massKg,packs.26.prices.0.price,packs.26.prices.0.fromPacks,packs.26.prices.1.price,packs.26.prices.1.fromPacks,packs.26.content.unit,packs.26.content.material,packs.26.content.quantity,packs.26.oversize,packs.26.supplier,packs.26.hazardous,packs.27.sku,packs.27.name,packs.27.massKg,packs.27.prices.0.price,packs.27.prices.0.fromPacks,packs.27.prices.1.price,packs.27.prices.1.fromPacks,packs.27.prices.2.price,packs.27.prices.2.fromPacks,packs.27.content.unit,packs.27.content.material,packs.27.content.quantity,packs.27.oversize,packs.27.supplier,packs.27.hazardous,packs.28.sku,packs.28.name,packs.28.massKg,packs.28.prices.0.price,packs.28.prices.0.fromPacks,packs.28.prices.1.price,packs.28.prices.1.fromPacks,packs.28.content.unit,packs.28.content.material,packs.28.content.quantity,packs.28.oversize,packs.28.supplier,packs.28.hazardous,packs.29.sku,packs.29.name,packs.29.massKg,packs.29.prices.0.price,packs.29.prices.0.fromPacks,packs.29.prices.1.price,packs.29.prices.1.fromPacks,packs.29.content.unit,packs.29.content.material,packs.29.content.quantity,packs.29.oversize,packs.29.supplier,packs.29.hazardous,packs.30.sku,packs.30.name,packs.30.massKg,packs.30.prices.0.price,packs.30.prices.0.fromPacks,packs.30.prices.1.price,packs.30.prices.1.fromPacks,packs.30.content.unit,packs.30.content.material,packs.30.content.quantity,packs.30.oversize,packs.30.supplier,packs.30.hazardous,packs.31.sku,packs.31.name,packs.31.massKg,packs.31.prices.0.price,packs.31.prices.0.fromPacks,packs.31.prices.1.price,packs.31.prices.1.fromPacks,packs.31.prices.2.price,packs.31.prices.2.fromPacks,packs.31.content.unit,packs.31.content.material,packs.31.content.quantity,packs.31.oversize,packs.31.supplier,packs.31.hazardous,packs.32.sku,packs.32.name,packs.32.massKg,packs.32.prices.0.price,packs.32.prices.0.fromPacks,packs.32.prices.1.price,packs.32.prices.1.fromPacks,packs.32.content.unit,packs.32.content.material,packs.32.content.quantity,packs.32.oversize,packs.32.supplier,packs.32.hazardous,packs.33.sku,packs.33.name,packs.33.massKg,packs.33.prices.0.price,packs.33.prices.0.fromPacks,packs.33.prices.1.price,packs.33.prices.1.fromPacks,packs.33.content.unit,packs.33.content.material,packs.33.content.quantity,packs.33.oversize,packs.33.supplier,packs.33.hazardous,packs.34.sku,packs.34.name,packs.34.massKg,packs.34.prices.0.price,packs.34.prices.0.fromPacks,packs.34.prices.1.price,packs.34.prices.1.fromPacks,packs.34.content.unit,packs.34.content.material,packs.34.content.quantity,packs.34.oversize,packs.34.supplier,packs.34.hazardous,packs.35.sku,packs.35.name,packs.35.massKg,packs.35.prices.0.price,packs.35.prices.0.fromPacks,packs.35.prices.1.price,packs.35.prices.1.fromPacks,packs.35.prices.2.price,packs.35.prices.2.fromPacks,packs.35.content.unit,packs.35.content.material,packs.35.content.quantity,packs.35.oversize,packs.35.supplier,packs.35.hazardous,packs.36.sku,packs.36.name,packs.36.massKg,packs.36.prices.0.price,packs.36.prices.0.fromPacks,packs.36.prices.1.price,packs.36.prices.1.fromPacks,packs.36.content.unit,packs.36.content.material,packs.36.content.quantity,packs.36.oversize,packs.36.supplier,packs.36.hazardous,packs.37.sku,packs.37.name,packs.37.massKg,packs.37.prices.0.price,packs.37.prices.0.fromPacks,packs.37.prices.1.price,packs.37.prices.1.fromPacks,packs.37.content.unit,packs.37.content.material,packs.37.content.quantity,packs.37.oversize,packs.37.supplier,packs.37.hazardous,packs.38.sku,packs.38.name,packs.38.massKg,packs.38.prices.0.price,packs.38.prices.0.fromPacks,packs.38.prices.1.price,packs.38.prices.1.fromPacks,packs.38.content.unit,packs.38.content.material,packs.38.content.quantity,packs.38.oversize,packs.38.supplier,packs.38.hazardous,packs.39.sku,packs.39.name,packs.39.massKg,packs.39.prices.0.price,packs.39.prices.0.fromPacks,packs.39.prices.1.price,packs.39.prices.1.fromPacks,packs.39.prices.2.price,packs.39.prices.2.fromPacks,packs.39.content.unit,packs.39.content.material,packs.39.content.quantity,packs.39.oversize,packs.39.supplier,packs.39.hazardous,packs.40.sku,packs.40.name,packs.40.massKg,packs.40.prices.0.price,packs.40.prices.0.fromPacks,packs.40.prices.1.price,packs.40.prices.1.fromPacks,packs.40.content.unit,packs.40.content.material,packs.40.content.quantity,packs.40.oversize,packs.40.supplier,packs.40.hazardous,packs.41.sku,packs.41.name,packs.41.massKg,packs.41.prices.0.price,packs.41.prices.0.fromPacks,packs.41.prices.1.price,packs.41.prices.1.fromPacks,packs.41.content.unit,packs.41.content.material,packs.41.content.quantity,packs.41.oversize,packs.41.supplier,packs.41.hazardous,packs.42.sku,packs.42.name,packs.42.massKg,packs.42.prices.0.price,packs.42.prices.0.fromPacks,packs.42.prices.1.price,packs.42.prices.1.fromPacks,packs.42.content.unit,packs.42.content.material,packs.42.content.quantity,packs.42.oversize,packs.42.supplier,packs.42.hazardous,packs.43.sku,packs.43.name,packs.43.massKg,packs.43.prices.0.price,packs.43.prices.0.fromPacks,packs.43.prices.1.price,packs.43.prices.1.fromPacks,packs.43.prices.2.price,packs.43.prices.2.fromPacks,packs.43.content.unit,packs.43.content.material,packs.43.content.quantity,packs.43.oversize,packs.43.supplier,packs.43.hazardous,packs.44.sku,packs.44.name,packs.44.massKg,packs.44.prices.0.price,packs.44.prices.0.fromPacks,packs.44.prices.1.price,packs.44.prices.1.fromPacks,packs.44.content.unit,packs.44.content.material,packs.44.content.quantity,packs.44.oversize,packs.44.supplier,packs.44.hazardous,packs.45.sku,packs.45.name,packs.45.massKg,packs.45.prices.0.price,packs.45.prices.0.fromPacks,packs.45.prices.1.price,packs.45.prices.1.fromPacks,packs.45.content.unit,packs.45.content.material,packs.45.content.quantity,packs.45.oversize,packs.45.supplier,packs.45.hazardous,packs.46.sku,packs.46.name,packs.46.massKg,packs.46.prices.0.price,packs.46.prices.0.fromPacks,packs.46.prices.1.price,packs.46.prices.1.fromPacks,packs.46.content.unit,packs.46.content.material,packs.46.content.quantity,packs.46.oversize,packs.46.supplier,packs.46.hazardous,packs.47.sku,packs.47.name,packs.47.massKg,packs.47.prices.0.price,packs.47.prices.0.fromPacks,packs.47.prices.1.price,packs.47.prices.1.fromPacks,packs.47.prices.2.price,packs.47.prices.2.fromPacks,packs.47.content.unit,packs.47.content.material,packs.47.content.quantity,packs.47.oversize,packs.47.supplier,packs.47.hazardous,packs.48.sku,packs.48.name,packs.48.massKg,packs.48.prices.0.price,packs.48.prices.0.fromPacks,packs.48.content.unit,packs.48.content.material,packs.48.content.quantity,packs.48.oversize,packs.48.supplier,packs.48.hazardous,packs.49.sku,packs.49.name,packs.49.massKg,packs.49.prices.0.price,packs.49.prices.0.fromPacks,packs.49.content.unit,packs.49.content.material,packs.49.content.quantity,packs.49.oversize,packs.49.supplier,packs.49.hazardous,packs.50.sku,packs.50.name,packs.50.massKg,packs.50.prices.0.price,packs.50.prices.0.fromPacks,packs.50.prices.1.price,packs.50.prices.1.fromPacks,packs.50.content.unit,packs.50.content.material,packs.50.content.quantity,packs.50.oversize,packs.50.supplier,packs.50.hazardous,packs.51.sku,packs.51.name,packs.51.massKg,packs.51.prices.0.price,packs.51.prices.0.fromPacks,packs.51.prices.1.price,packs.51.prices.1.fromPacks,packs.51.content.unit,packs.51.content.material,packs.51.content.quantity,packs.51.oversize,packs.51.supplier,packs.51.hazardous,packs.52.sku,packs.52.name,packs.52.massKg,packs.52.prices.0.price,packs.52.prices.0.fromPacks,packs.52.prices.1.price,packs.52.prices.1.fromPacks,packs.52.content.unit,packs.52.content.material,packs.52.content.quantity,packs.52.oversize,packs.52.supplier,packs.52.hazardous,packs.53.sku,packs.53.name,packs.53.massKg,packs.53.prices.0.price,packs.53.prices.0.fromPacks,packs.53.prices.1.price,packs.53.prices.1.fromPacks,packs.53.prices.2.price,packs.53.prices.2.fromPacks,packs.53.content.unit,packs.53.content.material,packs.53.content.quantity,packs.53.oversize,packs.53.supplier,packs.53.hazardous,packs.54.sku,packs.54.name,packs.54.massKg,packs.54.prices.0.price,packs.54.prices.0.fromPacks,packs.54.prices.1.price,packs.54.prices.1.fromPacks,packs.54.content.unit,packs.54.content.material,packs.54.content.quantity,packs.54.oversize,packs.54.supplier,packs.54.hazardous,packs.55.sku,packs.55.name,packs.55.massKg,packs.55.prices.0.price,packs.55.prices.0.fromPacks,packs.55.prices.1.price,packs.55.prices.1.fromPacks,packs.55.content.unit,packs.55.content.material,packs.55.content.quantity,packs.55.oversize,packs.55.supplier,packs.55.hazardous,packs.56.sku,packs.56.name,packs.56.massKg,packs.56.prices.0.price,packs.56.prices.0.fromPacks,packs.56.prices.1.price,packs.56.prices.1.fromPacks,packs.56.content.unit,packs.56.content.material,packs.56.content.quantity,packs.56.oversize,packs.56.supplier,packs.56.hazardous,packs.57.sku,packs.57.name,packs.57.massKg,packs.57.prices.0.price,packs.57.prices.0.fromPacks,packs.57.prices.1.price,packs.57.prices.1.fromPacks,packs.57.content.unit,packs.57.content.material,packs.57.content.quantity,packs.57.oversize,packs.57.supplier,packs.57.hazardous,packs.58.sku,packs.58.name,packs.58.massKg,packs.58.prices.0.price,packs.58.prices.0.fromPacks,packs.58.prices.1.price,packs.58.prices.1.fromPacks,packs.58.content.unit,packs.58.content.material,packs.58.content.quantity,packs.58.oversize,packs.58.supplier,packs.58.hazardous,packs.59.sku,packs.59.name,packs.59.massKg,packs.59.prices.0.price,packs.59.prices.0.fromPacks,packs.59.prices.1.price,packs.59.prices.1.fromPacks,packs.59.prices.2.price,packs.59.prices.2.fromPacks,packs.59.content.unit,packs.59.content.material,packs.59.content.quantity,packs.59.oversize,packs.59.supplier,packs.59.hazardous,packs.60.sku,packs.60.name,packs.60.massKg,packs.60.prices.0.price,packs.60.prices.0.fromPacks,packs.60.prices.1.price,packs.60.prices.1.fromPacks,packs.60.content.unit,packs.60.content.material,packs.60.content.quantity,packs.60.oversize,packs.60.supplier,packs.60.hazardous,packs.61.sku,packs.61.name,packs.61.massKg,packs.61.prices.0.price,packs.61.prices.0.fromPacks,packs.61.prices.1.price,packs.61.prices.1.fromPacks,packs.61.content.unit,packs.61.content.material,packs.61.content.quantity,packs.61.oversize,packs.61.supplier,packs.61.hazardous,packs.62.sku,packs.62.name,packs.62.massKg,packs.62.prices.0.price,packs.62.prices.0.fromPacks,packs.62.prices.1.price,packs.62.prices.1.fromPacks,packs.62.content.unit,packs.62.content.material,packs.62.content.quantity,packs.62.oversize,packs.62.supplier,packs.62.hazardous,packs.63.sku,packs.63.name,packs.63.massKg,packs.63.prices.0.price,packs.63.prices.0.fromPacks,packs.63.prices.1.price,packs.63.prices.1.fromPacks,packs.63.prices.2.price,packs.63.prices.2.fromPacks,packs.63.content.unit,packs.63.content.material,packs.63.content.quantity,packs.63.oversize,packs.63.supplier,packs.63.hazardous,packs.64.sku,packs.64.name,packs.64.massKg,packs.64.prices.0.price,packs.64.prices.0.fromPacks,packs.64.prices.1.price,packs.64.prices.1.fromPacks,packs.64.content.unit,packs.64.content.material,packs.64.content.quantity,packs.64.oversize,packs.64.supplier,packs.64.hazardous,packs.65.sku,packs.65.name,packs.65.massKg,packs.65.prices.0.price,packs.65.prices.0.fromPacks,packs.65.prices.1.price,packs.65.prices.1.fromPacks,packs.65.content.unit,packs.65.content.material,packs.65.content.quantity,packs.65.oversize,packs.65.supplier,packs.65.hazardous,packs.66.sku,packs.66.name,packs.66.massKg,packs.66.prices.0.price,packs.66.prices.0.fromPacks,packs.66.prices.1.price,packs.66.prices.1.fromPacks,packs.66.content.unit,packs.66.content.material,packs.66.content.quantity,packs.66.oversize,packs.66.supplier,packs.66.hazardous,packs.67.sku,packs.67.name,packs.67.massKg,packs.67.prices.0.price,packs.67.prices.0.fromPacks,packs.67.prices.1.price,packs.67.prices.1.fromPacks,packs.67.content.unit,packs.67.content.material,packs.67.content.quantity,packs.67.oversize,packs.67.supplier,packs.67.hazardous,packs.68.sku,packs.68.name,packs.68.massKg,packs.68.prices.0.price,packs.68.prices.0.fromPacks,packs.68.prices.1.price,packs.68.prices.1.fromPacks,packs.68.content.unit,packs.68.content.material,packs.68.content.quantity,packs.68.oversize,packs.68.supplier,packs.68.hazardous,packs.69.sku,packs.69.name,packs.69.massKg,packs.69.prices.0.price,packs.69.prices.0.fromPacks,packs.69.prices.1.price,packs.69.prices.1.fromPacks,packs.69.prices.2.price,packs.69.prices.2.fromPacks,packs.69.content.unit,packs.69.content.material,packs.69.content.quantity,packs.69.oversize,packs.69.supplier,packs.69.hazardous,packs.70.sku,packs.70.name,packs.70.massKg,packs.70.prices.0.price,packs.70.prices.0.fromPacks,packs.70.prices.1.price,packs.70.prices.1.fromPacks,packs.70.content.unit,packs.70.content.material,packs.70.content.quantity,packs.70.oversize,packs.70.supplier,packs.70.hazardous,packs.71.sku,packs.71.name,packs.71.massKg,packs.71.prices.0.price,packs.71.prices.0.fromPacks,packs.71.prices.1.price,packs.71.prices.1.fromPacks,packs.71.content.unit,packs.71.content.material,packs.71.content.quantity,packs.71.oversize,packs.71.supplier,packs.71.hazardous,packs.72.sku,packs.72.name,packs.72.massKg,packs.72.prices.0.price,packs.72.prices.0.fromPacks,packs.72.prices.1.price,packs.72.prices.1.fromPacks,packs.72.content.unit,packs.72.content.material,packs.72.content.quantity,packs.72.oversize,packs.72.supplier,packs.72.hazardous,packs.73.sku,packs.73.name,packs.73.massKg,packs.73.prices.0.price,packs.73.prices.0.fromPacks,packs.73.prices.1.price,packs.73.prices.1.fromPacks,packs.73.content.unit,packs.73.content.material,packs.73.content.quantity,packs.73.oversize,packs.73.supplier,packs.73.hazardous,packs.74.sku,packs.74.name,packs.74.massKg,packs.74.prices.0.price,packs.74.prices.0.fromPacks,packs.74.prices.1.price,packs.74.prices.1.fromPacks,packs.74.content.unit,packs.74.content.material,packs.74.content.quantity,packs.74.oversize,packs.74.supplier,packs.74.hazardous,packs.75.sku,packs.75.name,packs.75.massKg,packs.75.prices.0.price,packs.75.prices.0.fromPacks,packs.75.prices.1.price,packs.75.prices.1.fromPacks,packs.75.prices.2.price,packs.75.prices.2.fromPacks,packs.75.content.unit,packs.75.content.material,packs.75.content.quantity,packs.75.oversize,packs.75.supplier,packs.75.hazardous,packs.76.sku,packs.76.name,packs.76.massKg,packs.76.prices.0.price,packs.76.prices.0.fromPacks,packs.76.prices.1.price,packs.76.prices.1.fromPacks,packs.76.content.unit,packs.76.content.material,packs.76.content.quantity,packs.76.oversize,packs.76.supplier,packs.76.hazardous,packs.77.sku,packs.77.name,packs.77.massKg,packs.77.prices.0.price,packs.77.prices.0.fromPacks,packs.77.prices.1.price,packs.77.prices.1.fromPacks,packs.77.content.unit,packs.77.content.material,packs.77.content.quantity,packs.77.oversize,packs.77.supplier,packs.77.hazardous,packs.78.sku,packs.78.name,packs.78.massKg,packs.78.prices.0.price,packs.78.prices.0.fromPacks,packs.78.prices.1.price,packs.78.prices.1.fromPacks,packs.78.content.unit,packs.78.content.material,packs.78.content.quantity,packs.78.oversize,packs.78.supplier,packs.78.hazardous,packs.79.sku,packs.79.name,packs.79.massKg,packs.79.prices.0.price,packs.79.prices.0.fromPacks,packs.79.prices.1.price,packs.79.prices.1.fromPacks,packs.79.content.unit,packs.79.content.material,packs.79.content.quantity,packs.79.oversize,packs.79.supplier,packs.79.hazardous,packs.80.sku,packs.80.name,packs.80.massKg,packs.80.prices.0.price,packs.80.prices.0.fromPacks,packs.80.prices.1.price,packs.80.prices.1.fromPacks,packs.80.content.unit,packs.80.content.material,packs.80.content.quantity,packs.80.oversize,packs.80.supplier,packs.80.hazardous,packs.81.sku,packs.81.name,packs.81.massKg,packs.81.prices.0.price,packs.81.prices.0.fromPacks,packs.81.prices.1.price,packs.81.prices.1.fromPacks,packs.81.prices.2.price,packs.81.prices.2.fromPacks,packs.81.content.unit,packs.81.content.material,packs.81.content.quantity,packs.81.oversize,packs.81.supplier,packs.81.hazardous,packs.82.sku,packs.82.name,packs.82.massKg,packs.82.prices.0.price,packs.82.prices.0.fromPacks,packs.82.prices.1.price,packs.82.prices.1.fromPacks,packs.82.content.unit,packs.82.content.material,packs.82.content.quantity,packs.82.oversize,packs.82.supplier,packs.82.hazardous,packs.83.sku,packs.83.name,packs.83.massKg,packs.83.prices.0.price,packs.83.prices.0.fromPacks,packs.83.prices.1.price,packs.83.prices.1.fromPacks,packs.83.content.unit,packs.83.content.material,packs.83.content.quantity,packs.83.oversize,packs.83.supplier,packs.83.hazardous,packs.84.sku,packs.84.name,packs.84.massKg,packs.84.prices.0.price,packs.84.prices.0.fromPacks,packs.84.prices.1.price,packs.84.prices.1.fromPacks,packs.84.content.unit,packs.84.content.material,packs.84.content.quantity,packs.84.oversize,packs.84.supplier,packs.84.hazardous,packs.85.sku,packs.85.name,packs.85.massKg,packs.85.prices.0.price,packs.85.prices.0.fromPacks,packs.85.prices.1.price,packs.85.prices.1.fromPacks,packs.85.content.unit,packs.85.content.material,packs.85.content.quantity,packs.85.oversize,packs.85.supplier,packs.85.hazardous,packs.86.sku,packs.86.name,packs.86.massKg,packs.86.prices.0.price,packs.86.prices.0.fromPacks,packs.86.prices.1.price,packs.86.prices.1.fromPacks,packs.86.content.unit,packs.86.content.material,packs.86.content.quantity,packs.86.oversize,packs.86.supplier,packs.86.hazardous,packs.87.sku,packs.87.name,packs.87.massKg,packs.87.prices.0.price,packs.87.prices.0.fromPacks,packs.87.prices.1.price,packs.87.prices.1.fromPacks,packs.87.prices.2.price,packs.87.prices.2.fromPacks,packs.87.content.unit,packs.87.content.material,packs.87.content.quantity,packs.87.oversize,packs.87.supplier,packs.87.hazardous,packs.88.sku,packs.88.name,packs.88.massKg,packs.88.prices.0.price,packs.88.prices.0.fromPacks,packs.88.prices.1.price,packs.88.prices.1.fromPacks,packs.88.content.unit,packs.88.content.material,packs.88.content.quantity,packs.88.oversize,packs.88.supplier,packs.88.hazardous,packs.89.sku,packs.89.name,packs.89.massKg,packs.89.prices.0.price,packs.89.prices.0.fromPacks,packs.89.prices.1.price,packs.89.prices.1.fromPacks,packs.89.content.unit,packs.89.content.material,packs.89.content.quantity,packs.89.oversize,packs.89.supplier,packs.89.hazardous,packs.90.sku,packs.90.name,packs.90.massKg,packs.90.prices.0.price,packs.90.prices.0.fromPacks,packs.90.prices.1.price,packs.90.prices.1.fromPacks,packs.90.content.unit,packs.90.content.material,packs.90.content.quantity,packs.90.oversize,packs.90.supplier,packs.90.hazardous,packs.91.sku,packs.91.name,packs.91.massKg,packs.91.prices.0.price,packs.91.prices.0.fromPacks,packs.91.prices.1.price,packs.91.prices.1.fromPacks,packs.91.prices.2.price,packs.91.prices.2.fromPacks,packs.91.content.unit,packs.91.content.material,packs.91.content.quantity,packs.91.oversize,packs.91.supplier,packs.91.hazardous,packs.92.sku,packs.92.name,packs.92.massKg,packs.92.prices.0.price,packs.92.prices.0.fromPacks,packs.92.prices.1.price,packs.92.prices.1.fromPacks,packs.92.content.unit,packs.92.content.material,packs.92.content.quantity,packs.92.oversize,packs.92.supplier,packs.92.hazardous,packs.93.sku,packs.93.name,packs.93.massKg,packs.93.prices.0.price,packs.93.prices.0.fromPacks,packs.93.prices.1.price,packs.93.prices.1.fromPacks,packs.93.content.unit,packs.93.content.material,packs.93.content.quantity,packs.93.oversize,packs.93.supplier,packs.93.hazardous,packs.94.sku,packs.94.name,packs.94.massKg,packs.94.prices.0.price,packs.94.prices.0.fromPacks,packs.94.prices.1.price,packs.94.prices.1.fromPacks,packs.94.content.unit,packs.94.content.material,packs.94.content.quantity,packs.94.oversize,packs.94.supplier,packs.94.hazardous,packs.95.sku,packs.95.name,packs.95.massKg,packs.95.prices.0.price,packs.95.prices.0.fromPacks,packs.95.prices.1.price,packs.95.prices.1.fromPacks,packs.95.prices.2.price,packs.95.prices.2.fromPacks,packs.95.content.unit,packs.95.content.material,packs.95.content.quantity,packs.95.oversize,packs.95.supplier,packs.95.hazardous,packs.96.sku,packs.96.name,packs.96.massKg,packs.96.prices.0.price,packs.96.prices.0.fromPacks,packs.96.prices.1.price,packs.96.prices.1.fromPacks,packs.96.content.unit,packs.96.content.material,packs.96.content.quantity,packs.96.oversize,packs.96.supplier,packs.96.hazardous,packs.97.sku,packs.97.name,packs.97.massKg,packs.97.prices.0.price,packs.97.prices.0.fromPacks,packs.97.prices.1.price,packs.97.prices.1.fromPacks,packs.97.content.unit,packs.97.content.material,packs.97.content.quantity,packs.97.oversize,packs.97.supplier,packs.97.hazardous,packs.98.sku,packs.98.name,packs.98.massKg,packs.98.prices.0.price,packs.98.prices.0.fromPacks,packs.98.prices.1.price,packs.98.prices.1.fromPacks,packs.98.content.unit,packs.98.content.material,packs.98.content.quantity,packs.98.oversize,packs.98.supplier,packs.98.hazardous,packs.99.sku,packs.99.name,packs.99.massKg,packs.99.prices.0.price,packs.99.prices.0.fromPacks,packs.99.prices.1.price,packs.99.prices.1.fromPacks,packs.99.prices.2.price,packs.99.prices.2.fromPacks,packs.99.content.unit,packs.99.content.material,packs.99.content.quantity,packs.99.oversize,packs.99.supplier,packs.99.hazardous,packs.100.sku,packs.100.name,packs.100.massKg,packs.100.prices.0.price,packs.100.prices.0.fromPacks,packs.100.content.unit,packs.100.content.material,packs.100.content.quantity,packs.100.oversize,packs.100.supplier,packs.100.hazardous,packs.101.sku,packs.101.name,packs.101.massKg,packs.101.prices.0.price,packs.101.prices.0.fromPacks,packs.101.content.unit,packs.101.content.material,packs.101.content.quantity,packs.101.oversize,packs.101.supplier,packs.101.hazardous,packs.102.sku,packs.102.name,packs.102.massKg,packs.102.prices.0.price,packs.102.prices.0.fromPacks,packs.102.prices.1.price,packs.102.prices.1.fromPacks,packs.102.content.unit,packs.102.content.material,packs.102.content.quantity,packs.102.oversize,packs.102.supplier,packs.102.hazardous,packs.103.sku,packs.103.name,packs.103.massKg,packs.103.prices.0.price,packs.103.prices.0.fromPacks,packs.103.prices.1.price,packs.103.prices.1.fromPacks,packs.103.prices.2.price,packs.103.prices.2.fromPacks,packs.103.content.unit,packs.103.content.material,packs.103.content.quantity,packs.103.oversize,packs.103.supplier,packs.103.hazardous,packs.104.sku,packs.104.name,packs.104.massKg,packs.104.prices.0.price,packs.104.prices.0.fromPacks,packs.104.prices.1.price,packs.104.prices.1.fromPacks,packs.104.content.unit,packs.104.content.material,packs.104.content.quantity,packs.104.oversize,packs.104.supplier,packs.104.hazardous,packs.105.sku,packs.105.name,packs.105.massKg,packs.105.prices.0.price,packs.105.prices.0.fromPacks,packs.105.prices.1.price,packs.105.prices.1.fromPacks,packs.105.content.unit,packs.105.content.material,packs.105.content.quantity,packs.105.oversize,packs.105.supplier,packs.105.hazardous,packs.106.sku,packs.106.name,packs.106.massKg,packs.106.prices.0.price,packs.106.prices.0.fromPacks,packs.106.prices.1.price,packs.106.prices.1.fromPacks,packs.106.content.unit,packs.106.content.material,packs.106.content.quantity,packs.106.oversize,packs.106.supplier,packs.106.hazardous,packs.107.sku,packs.107.name,packs.107.massKg,packs.107.prices.0.price,packs.107.prices.0.fromPacks,packs.107.prices.1.price,packs.107.prices.1.fromPacks,packs.107.prices.2.price,packs.107.prices.2.fromPacks,packs.107.content.unit,packs.107.content.material,packs.107.content.quantity,packs.107.oversize,packs.107.supplier,packs.107.hazardous,packs.108.sku,packs.108.name,packs.108.massKg,packs.108.prices.0.price,packs.108.prices.0.fromPacks,packs.108.prices.1.price,packs.108.prices.1.fromPacks,packs.108.content.unit,packs.108.content.material,packs.108.content.quantity,packs.108.oversize,packs.108.supplier,packs.108.hazardous,packs.109.sku,packs.109.name,packs.109.massKg,packs.109.prices.0.price,packs.109.prices.0.fromPacks,packs.109.prices.1.price,packs.109.prices.1.fromPacks,packs.109.content.unit,packs.109.content.material,packs.109.content.quantity,packs.109.oversize,packs.109.supplier,packs.109.hazardous,packs.110.sku,packs.110.name,packs.110.massKg,packs.110.prices.0.price,packs.110.prices.0.fromPacks,packs.110.prices.1.price,packs.110.prices.1.fromPacks,packs.110.content.unit,packs.110.content.material,packs.110.content.quantity,packs.110.oversize,packs.110.supplier,packs.110.hazardous,packs.111.sku,packs.111.name,packs.111.massKg,packs.111.prices.0.price,packs.111.prices.0.fromPacks,packs.111.prices.1.price,packs.111.prices.1.fromPacks,packs.111.prices.2.price,packs.111.prices.2.fromPacks,packs.111.content.unit,packs.111.content.material,packs.111.content.quantity,packs.111.oversize,packs.111.supplier,packs.111.hazardous,packs.112.sku,packs.112.name,packs.112.massKg,packs.112.prices.0.price,packs.112.prices.0.fromPacks,packs.112.prices.1.price,packs.112.prices.1.fromPacks,packs.112.content.unit,packs.112.content.material,packs.112.content.quantity,packs.112.oversize,packs.112.supplier,packs.112.hazardous,packs.113.sku,packs.113.name,packs.113.massKg,packs.113.prices.0.price,packs.113.prices.0.fromPacks,packs.113.prices.1.price,packs.113.prices.1.fromPacks,packs.113.content.unit,packs.113.content.material,packs.113.content.quantity,packs.113.oversize,packs.113.supplier,packs.113.hazardous,packs.114.sku,packs.114.name,packs.114.massKg,packs.114.prices.0.price,packs.114.prices.0.fromPacks,packs.114.prices.1.price,packs.114.prices.1.fromPacks,packs.114.content.unit,packs.114.content.material,packs.114.content.quantity,packs.114.oversize,packs.114.supplier,packs.114.hazardous,packs.115.sku,packs.115.name,packs.115.massKg,packs.115.prices.0.price,packs.115.prices.0.fromPacks,packs.115.prices.1.price,packs.115.prices.1.fromPacks,packs.115.prices.2.price,packs.115.prices.2.fromPacks,packs.115.content.unit,packs.115.content.material,packs.115.content.quantity,packs.115.oversize,packs.115.supplier,packs.115.hazardous,packs.116.sku,packs.116.name,packs.116.massKg,packs.116.prices.0.price,packs.116.prices.0.fromPacks,packs.116.prices.1.price,packs.116.prices.1.fromPacks,packs.116.content.unit,packs.116.content.material,packs.116.content.quantity,packs.116.oversize,packs.116.supplier,packs.116.hazardous,packs.117.sku,packs.117.name,packs.117.massKg,packs.117.prices.0.price,packs.117.prices.0.fromPacks,packs.117.prices.1.price,packs.117.prices.1.fromPacks,packs.117.content.unit,packs.117.content.material,packs.117.content.quantity,packs.117.oversize,packs.117.supplier,packs.117.hazardous,packs.118.sku,packs.118.name,packs.118.massKg,packs.118.prices.0.price,packs.118.prices.0.fromPacks,packs.118.prices.1.price,packs.118.prices.1.fromPacks,packs.118.content.unit,packs.118.content.material,packs.118.content.quantity,packs.118.oversize,packs.118.supplier,packs.118.hazardous,packs.119.sku,packs.119.name,packs.119.massKg,packs.119.prices.0.price,packs.119.prices.0.fromPacks,packs.119.prices.1.price,packs.119.prices.1.fromPacks,packs.119.prices.2.price,packs.119.prices.2.fromPacks,packs.119.content.unit,packs.119.content.material,packs.119.content.quantity,packs.119.oversize,packs.119.supplier,packs.119.hazardous,packs.120.sku,packs.120.name,packs.120.massKg,packs.120.prices.0.price,packs.120.prices.0.fromPacks,packs.120.prices.1.price,packs.120.prices.1.fromPacks,packs.120.content.unit,packs.120.content.material,packs.120.content.quantity,packs.120.oversize,packs.120.supplier,packs.120.hazardous,packs.121.sku,packs.121.name,packs.121.massKg,packs.121.prices.0.price,packs.121.prices.0.fromPacks,packs.121.prices.1.price,packs.121.prices.1.fromPacks,packs.121.content.unit,packs.121.content.material,packs.121.content.quantity,packs.121.oversize,packs.121.supplier,packs.121.hazardous,packs.122.sku,packs.122.name,packs.122.massKg,packs.122.prices.0.price,packs.122.prices.0.fromPacks,packs.122.prices.1.price,packs.122.prices.1.fromPacks,packs.122.content.unit,packs.122.content.material,packs.122.content.quantity,packs.122.oversize,packs.122.supplier,packs.122.hazardous,packs.123.sku,packs.123.name,packs.123.massKg,packs.123.prices.0.price,packs.123.prices.0.fromPacks,packs.123.prices.1.price,packs.123.prices.1.fromPacks,packs.123.content.unit,packs.123.content.material,packs.123.content.quantity,packs.123.oversize,packs.123.supplier,packs.123.hazardous,packs.124.sku,packs.124.name,packs.124.massKg,packs.124.prices.0.price,packs.124.prices.0.fromPacks,packs.124.prices.1.price,packs.124.prices.1.fromPacks,packs.124.content.unit,packs.124.content.material,packs.124.content.quantity,packs.124.oversize,packs.124.supplier,packs.124.hazardous,packs.125.sku,packs.125.name,packs.125.massKg,packs.125.prices.0.price,packs.125.prices.0.fromPacks,packs.125.prices.1.price,packs.125.prices.1.fromPacks,packs.125.prices.2.price,packs.125.prices.2.fromPacks,packs.125.content.unit,packs.125.content.material,packs.125.content.quantity,packs.125.oversize,packs.125.supplier,packs.125.hazardous,packs.126.sku,packs.126.name,packs.126.massKg,packs.126.prices.0.price,packs.126.prices.0.fromPacks,packs.126.prices.1.price,packs.126.prices.1.fromPacks,packs.126.content.unit,packs.126.content.material,packs.126.content.quantity,packs.126.oversize,packs.126.supplier,packs.126.hazardous,packs.127.sku,packs.127.name,packs.127.massKg,packs.127.prices.0.price,packs.127.prices.0.fromPacks,packs.127.prices.1.price,packs.127.prices.1.fromPacks,packs.127.content.unit,packs.127.content.material,packs.127.content.quantity,packs.127.oversize,packs.127.supplier,packs.127.hazardous,packs.128.sku,packs.128.name,packs.128.massKg,packs.128.prices.0.price,packs.128.prices.0.fromPacks,packs.128.prices.1.price,packs.128.prices.1.fromPacks,packs.128.content.unit,packs.128.content.material,packs.128.content.quantity,packs.128.oversize,packs.128.supplier,packs.128.hazardous,packs.129.sku,packs.129.name,packs.129.massKg,packs.129.prices.0.price,packs.129.prices.0.fromPacks,packs.129.prices.1.price,packs.129.prices.1.fromPacks,packs.129.prices.2.price,packs.129.prices.2.fromPacks,packs.129.content.unit,packs.129.content.material,packs.129.content.quantity,packs.129.oversize,packs.129.supplier,packs.129.hazardous,packs.130.sku,packs.130.name,packs.130.massKg,packs.130.prices.0.price,packs.130.prices.0.fromPacks,packs.130.prices.1.price,packs.130.prices.1.fromPacks,packs.130.content.unit,packs.130.content.material,packs.130.content.quantity,packs.130.oversize,packs.130.supplier,packs.130.hazardous,packs.131.sku,packs.131.name,packs.131.massKg,packs.131.prices.0.price,packs.131.prices.0.fromPacks,packs.131.prices.1.price,packs.131.prices.1.fromPacks,packs.131.content.unit,packs.131.content.material,packs.131.content.quantity,packs.131.oversize,packs.131.supplier,packs.131.hazardous,packs.132.sku,packs.132.name,packs.132.massKg,packs.132.prices.0.price,packs.132.prices.0.fromPacks,packs.132.prices.1.price,packs.132.prices.1.fromPacks,packs.132.content.unit,packs.132.content.material,packs.132.content.quantity,packs.132.oversize,packs.132.supplier,packs.132.hazardous,packs.133.sku,packs.133.name,packs.133.massKg,packs.133.prices.0.price,packs.133.prices.0.fromPacks,packs.133.prices.1.price,packs.133.prices.1.fromPacks,packs.133.content.unit,packs.133.content.material,packs.133.content.quantity,packs.133.oversize,packs.133.supplier,packs.133.hazardous,packs.134.sku,packs.134.name,packs.134.massKg,packs.134.prices.0.price,packs.134.prices.0.fromPacks,packs.134.prices.1.price,packs.134.prices.1.fromPacks,packs.134.content.unit,packs.134.content.material,packs.134.content.quantity,packs.134.oversize,packs.134.supplier,packs.134.hazardous,packs.135.sku,packs.135.name,packs.135.massKg,packs.135.prices.0.price,packs.135.prices.0.fromPacks,packs.135.prices.1.price,packs.135.prices.1.fromPacks,packs.135.prices.2.price,packs.135.prices.2.fromPacks,packs.135.content.unit,packs.135.content.material,packs.135.content.quantity,packs.135.oversize,packs.135.supplier,packs.135.hazardous,packs.136.sku,packs.136.name,packs.136.massKg,packs.136.prices.0.price,packs.136.prices.0.fromPacks,packs.136.prices.1.price,packs.136.prices.1.fromPacks,packs.136.content.unit,packs.136.content.material,packs.136.content.quantity,packs.136.oversize,packs.136.supplier,packs.136.hazardous,packs.137.sku,packs.137.name,packs.137.massKg,packs.137.prices.0.price,packs.137.prices.0.fromPacks,packs.137.prices.1.price,packs.137.prices.1.fromPacks,packs.137.content.unit,packs.137.content.material,packs.137.content.quantity,packs.137.oversize,packs.137.supplier,packs.137.hazardous,packs.138.sku,packs.138.name,packs.138.massKg,packs.138.prices.0.price,packs.138.prices.0.fromPacks,packs.138.prices.1.price,packs.138.prices.1.fromPacks,packs.138.content.unit,packs.138.content.material,packs.138.content.quantity,packs.138.oversize,packs.138.supplier,packs.138.hazardous,packs.139.sku,packs.139.name,packs.139.massKg,packs.139.prices.0.price,packs.139.prices.0.fromPacks,packs.139.prices.1.price,packs.139.prices.1.fromPacks,packs.139.content.unit,packs.139.content.material,packs.139.content.quantity,packs.139.oversize,packs.139.supplier,packs.139.hazardous,packs.140.sku,packs.140.name,packs.140.massKg,packs.140.prices.0.price,packs.140.prices.0.fromPacks,packs.140.prices.1.price,packs.140.prices.1.fromPacks,packs.140.content.unit,packs.140.content.material,packs.140.content.quantity,packs.140.oversize,packs.140.supplier,packs.140.hazardous,packs.141.sku,packs.141.name,packs.141.massKg,packs.141.prices.0.price,packs.141.prices.0.fromPacks,packs.141.prices.1.price,packs.141.prices.1.fromPacks,packs.141.prices.2.price,packs.141.prices.2.fromPacks,packs.141.content.unit,packs.141.content.material,packs.141.content.quantity,packs.141.oversize,packs.141.supplier,packs.141.hazardous,packs.142.sku,packs.142.name,packs.142.massKg,packs.142.prices.0.price,packs.142.prices.0.fromPacks,packs.142.prices.1.price,packs.142.prices.1.fromPacks,packs.142.content.unit,packs.142.content.material,packs.142.content.quantity,packs.142.oversize,packs.142.supplier,packs.142.hazardous,packs.143.sku,packs.143.name,packs.143.massKg,packs.143.prices.0.price,packs.143.prices.0.fromPacks,packs.143.prices.1.price,packs.143.prices.1.fromPacks,packs.143.content.unit,packs.143.content.material,packs.143.content.quantity,packs.143.oversize,packs.143.supplier,packs.143.hazardous,packs.144.sku,packs.144.name,packs.144.massKg,packs.144.prices.0.price,packs.144.prices.0.fromPacks,packs.144.prices.1.price,packs.144.prices.1.fromPacks,packs.144.content.unit,packs.144.content.material,packs.144.content.quantity,packs.144.oversize,packs.144.supplier,packs.144.hazardous,packs.145.sku,packs.145.name,packs.145.massKg,packs.145.prices.0.price,packs.145.prices.0.fromPacks,packs.145.prices.1.price,packs.145.prices.1.fromPacks,packs.145.prices.2.price,packs.145.prices.2.fromPacks,packs.145.content.unit,packs.145.content.material,packs.145.content.quantity,packs.145.oversize,packs.145.supplier,packs.145.hazardous,packs.146.sku,packs.146.name,packs.146.massKg,packs.146.prices.0.price,packs.146.prices.0.fromPacks,packs.146.prices.1.price,packs.146.prices.1.fromPacks,packs.146.content.unit,packs.146.content.material,packs.146.content.quantity,packs.146.oversize,packs.146.supplier,packs.146.hazardous,packs.147.sku,packs.147.name,packs.147.massKg,packs.147.prices.0.price,packs.147.prices.0.fromPacks,packs.147.prices.1.price,packs.147.prices.1.fromPacks,packs.147.content.unit,packs.147.content.material,packs.147.content.quantity,packs.147.oversize,packs.147.supplier,packs.147.hazardous,packs.148.sku,packs.148.name,packs.148.massKg,packs.148.prices.0.price,packs.148.prices.0.fromPacks,packs.148.prices.1.price,packs.148.prices.1.fromPacks,packs.148.content.unit,packs.148.content.material,packs.148.content.quantity,packs.148.oversize,packs.148.supplier,packs.148.hazardous,packs.149.sku,packs.149.name,packs.149.massKg,packs.149.prices.0.price,packs.149.prices.0.fromPacks,packs.149.prices.1.price,packs.149.prices.1.fromPacks,packs.149.prices.2.price,packs.149.prices.2.fromPacks,packs.149.content.unit,packs.149.content.material,packs.149.content.quantity,packs.149.oversize,packs.149.supplier,packs.149.hazardous,packs.150.sku,packs.150.name,packs.150.massKg,packs.150.prices.0.price,packs.150.prices.0.fromPacks,packs.150.prices.1.price,packs.150.prices.1.fromPacks,packs.150.content.unit,packs.150.content.material,packs.150.content.quantity,packs.150.oversize,packs.150.supplier,packs.150.hazardous,packs.151.sku,packs.151.name,packs.151.massKg,packs.151.prices.0.price,packs.151.prices.0.fromPacks,packs.151.prices.1.price,packs.151.prices.1.fromPacks,packs.151.content.unit,packs.151.content.material,packs.151.content.quantity,packs.151.oversize,packs.151.supplier,packs.151.hazardous,packs.152.sku,packs.152.name,packs.152.massKg,packs.152.prices.0.price,packs.152.prices.0.fromPacks,packs.152.prices.1.price,packs.152.prices.1.fromPacks,packs.152.content.unit,packs.152.content.material,packs.152.content.quantity,packs.152.oversize,packs.152.supplier,packs.152.hazardous,packs.153.sku,packs.153.name,packs.153.massKg,packs.153.prices.0.price,packs.153.prices.0.fromPacks,packs.153.prices.1.price,packs.153.prices.1.fromPacks,packs.153.content.unit,packs.153.content.material,packs.153.content.quantity,packs.153.oversize,packs.153.supplier,packs.153.hazardous,packs.154.sku,packs.154.name,packs.154.massKg,packs.154.prices.0.price,packs.154.prices.0.fromPacks,packs.154.prices.1.price,packs.154.prices.1.fromPacks,packs.154.content.unit,packs.154.content.material,packs.154.content.quantity,packs.154.oversize,packs.154.supplier,packs.154.hazardous,packs.155.sku,packs.155.name,packs.155.massKg,packs.155.prices.0.price,packs.155.prices.0.fromPacks,packs.155.prices.1.price,packs.155.prices.1.fromPacks,packs.155.prices.2.price,packs.155.prices.2.fromPacks,packs.155.content.unit,packs.155.content.material,packs.155.content.quantity,packs.155.oversize,packs.155.supplier,packs.155.hazardous,packs.156.sku,packs.156.name,packs.156.massKg,packs.156.prices.0.price,packs.156.prices.0.fromPacks,packs.156.prices.1.price,packs.156.prices.1.fromPacks,packs.156.content.unit,packs.156.content.material,packs.156.content.quantity,packs.156.oversize,packs.156.supplier,packs.156.hazardous,packs.157.sku,packs.157.name,packs.157.massKg,packs.157.prices.0.price,packs.157.prices.0.fromPacks,packs.157.prices.1.price,packs.157.prices.1.fromPacks,packs.157.content.unit,packs.157.content.material,packs.157.content.quantity,packs.157.oversize,packs.157.supplier,packs.157.hazardous,packs.158.sku,packs.158.name,packs.158.massKg,packs.158.prices.0.price,packs.158.prices.0.fromPacks,packs.158.prices.1.price,packs.158.prices.1.fromPacks,packs.158.content.unit,packs.158.content.material,packs.158.content.quantity,packs.158.oversize,packs.158.supplier,packs.158.hazardous,packs.159.sku,packs.159.name,packs.159.massKg,packs.159.prices.0.price,packs.159.prices.0.fromPacks,packs.159.prices.1.price,packs.159.prices.1.fromPacks,packs.159.content.unit,packs.159.content.material,packs.159.content.quantity,packs.159.oversize,packs.159.supplier,packs.159.hazardous,packs.160.sku,packs.160.name,packs.160.massKg,packs.160.prices.0.price,packs.160.prices.0.fromPacks,packs.160.prices.1.price,packs.160.prices.1.fromPacks,packs.160.content.unit,packs.160.content.material,packs.160.content.quantity,packs.160.oversize,packs.160.supplier,packs.160.hazardous,packs.161.sku,packs.161.name,packs.161.massKg,packs.161.prices.0.price,packs.161.prices.0.fromPacks,packs.161.prices.1.price,packs.161.prices.1.fromPacks,packs.161.prices.2.price,packs.161.prices.2.fromPacks,packs.161.content.unit,packs.161.content.material,packs.161.content.quantity,packs.161.oversize,packs.161.supplier,packs.161.hazardous,packs.162.sku,packs.162.name,packs.162.massKg,packs.162.prices.0.price,packs.162.prices.0.fromPacks,packs.162.prices.1.price,packs.162.prices.1.fromPacks,packs.162.content.unit,packs.162.content.material,packs.162.content.quantity,packs.162.oversize,packs.162.supplier,packs.162.hazardous,packs.163.sku,packs.163.name,packs.163.massKg,packs.163.prices.0.price,packs.163.prices.0.fromPacks,packs.163.prices.1.price,packs.163.prices.1.fromPacks,packs.163.content.unit,packs.163.content.material,packs.163.content.quantity,packs.163.oversize,packs.163.supplier,packs.163.hazardous,packs.164.sku,packs.164.name,packs.164.massKg,packs.164.prices.0.price,packs.164.prices.0.fromPacks,packs.164.prices.1.price,packs.164.prices.1.fromPacks,packs.164.content.unit,packs.164.content.material,packs.164.content.quantity,packs.164.oversize,packs.164.supplier,packs.164.hazardous,packs.165.sku,packs.165.name,packs.165.massKg,packs.165.prices.0.price,packs.165.prices.0.fromPacks,packs.165.prices.1.price,packs.165.prices.1.fromPacks,packs.165.prices.2.price,packs.165.prices.2.fromPacks,packs.165.content.unit,packs.165.content.material,packs.165.content.quantity,packs.165.oversize,packs.165.supplier,packs.165.hazardous,packs.166.sku,packs.166.name,packs.166.massKg,packs.166.prices.0.price,packs.166.prices.0.fromPacks,packs.166.prices.1.price,packs.166.prices.1.fromPacks,packs.166.content.unit,packs.166.content.material,packs.166.content.quantity,packs.166.oversize,packs.166.supplier,packs.166.hazardous,packs.167.sku,packs.167.name,packs.167.massKg,packs.167.prices.0.price,packs.167.prices.0.fromPacks,packs.167.prices.1.price,packs.167.prices.1.fromPacks,packs.167.content.unit,packs.167.content.material,packs.167.content.quantity,packs.167.oversize,packs.167.supplier,packs.167.hazardous,packs.168.sku,packs.168.name,packs.168.massKg,packs.168.prices.0.price,packs.168.prices.0.fromPacks,packs.168.prices.1.price,packs.168.prices.1.fromPacks,packs.168.content.unit,packs.168.content.material,packs.168.content.quantity,packs.168.oversize,packs.168.supplier,packs.168.hazardous,packs.169.sku,packs.169.name,packs.169.massKg,packs.169.prices.0.price,packs.169.prices.0.fromPacks,packs.169.prices.1.price,packs.169.prices.1.fromPacks,packs.169.prices.2.price,packs.169.prices.2.fromPacks,packs.169.content.unit,packs.169.content.material,packs.169.content.quantity,packs.169.oversize,packs.169.supplier,packs.169.hazardous,packs.170.sku,packs.170.name,packs.170.massKg,packs.170.prices.0.price,packs.170.prices.0.fromPacks,packs.170.content.unit,packs.170.content.material,packs.170.content.quantity,packs.170.oversize,packs.170.supplier,packs.170.hazardous,packs.171.sku,packs.171.name,packs.171.massKg,packs.171.prices.0.price,packs.171.prices.0.fromPacks,packs.171.content.unit,packs.171.content.material,packs.171.content.quantity,packs.171.oversize,packs.171.supplier,packs.171.hazardous,packs.172.sku,packs.172.name,packs.172.massKg,packs.172.prices.0.price,packs.172.prices.0.fromPacks,packs.172.prices.1.price,packs.172.prices.1.fromPacks,packs.172.content.unit,packs.172.content.material,packs.172.content.quantity,packs.172.oversize,packs.172.supplier,packs.172.hazardous,packs.173.sku,packs.173.name,packs.173.massKg,packs.173.prices.0.price,packs.173.prices.0.fromPacks,packs.173.prices.1.price,packs.173.prices.1.fromPacks,packs.173.content.unit,packs.173.content.material,packs.173.content.quantity,packs.173.oversize,packs.173.supplier,packs.173.hazardous,packs.174.sku,packs.174.name,packs.174.massKg,packs.174.prices.0.price,packs.174.prices.0.fromPacks,packs.174.prices.1.price,packs.174.prices.1.fromPacks,packs.174.content.unit,packs.174.content.material,packs.174.content.quantity,packs.174.oversize,packs.174.supplier,packs.174.hazardous,packs.175.sku,packs.175.name,packs.175.massKg,packs.175.prices.0.price,packs.175.prices.0.fromPacks,packs.175.prices.1.price,packs.175.prices.1.fromPacks,packs.175.prices.2.price,packs.175.prices.2.fromPacks,packs.175.content.unit,packs.175.content.material,packs.175.content.quantity,packs.175.oversize,packs.175.supplier,packs.175.hazardous,packs.176.sku,packs.176.name,packs.176.massKg,packs.176.prices.0.price,packs.176.prices.0.fromPacks,packs.176.content.unit,packs.176.content.material,packs.176.content.quantity,packs.176.oversize,packs.176.supplier,packs.176.hazardous,packs.177.sku,packs.177.name,packs.177.massKg,packs.177.prices.0.price,packs.177.prices.0.fromPacks,packs.177.content.unit,packs.177.content.material,packs.177.content.quantity,packs.177.oversize,packs.177.supplier,packs.177.hazardous,packs.178.sku,packs.178.name,packs.178.massKg,packs.178.prices.0.price,packs.178.prices.0.fromPacks,packs.178.prices.1.price,packs.178.prices.1.fromPacks,packs.178.content.unit,packs.178.content.material,packs.178.content.quantity,packs.178.oversize,packs.178.supplier,packs.178.hazardous,packs.179.sku,packs.179.name,packs.179.massKg,packs.179.prices.0.price,packs.179.prices.0.fromPacks,packs.179.prices.1.price,packs.179.prices.1.fromPacks,packs.179.prices.2.price,packs.179.prices.2.fromPacks,packs.179.content.unit,packs.179.content.material,packs.179.content.quantity,packs.179.oversize,packs.179.supplier,packs.179.hazardous,packs.180.sku,packs.180.name,packs.180.massKg,packs.180.prices.0.price,packs.180.prices.0.fromPacks,packs.180.prices.1.price,packs.180.prices.1.fromPacks,packs.180.content.unit,packs.180.content.material,packs.180.content.quantity,packs.180.oversize,packs.180.supplier,packs.180.hazardous,packs.181.sku,packs.181.name,packs.181.massKg,packs.181.prices.0.price,packs.181.prices.0.fromPacks,packs.181.prices.1.price,packs.181.prices.1.fromPacks,packs.181.content.unit,packs.181.content.material,packs.181.content.quantity,packs.181.oversize,packs.181.supplier,packs.181.hazardous,packs.182.sku,packs.182.name,packs.182.massKg,packs.182.prices.0.price,packs.182.prices.0.fromPacks,packs.182.prices.1.price,packs.182.prices.1.fromPacks,packs.182.content.unit,packs.182.content.material,packs.182.content.quantity,packs.182.oversize,packs.182.supplier,packs.182.hazardous,packs.183.sku,packs.183.name,packs.183.massKg,packs.183.prices.0.price,packs.183.prices.0.fromPacks,packs.183.prices.1.price,packs.183.prices.1.fromPacks,packs.183.prices.2.price,packs.183.prices.2.fromPacks,packs.183.content.unit,packs.183.content.material,packs.183.content.quantity,packs.183.oversize,packs.183.supplier,packs.183.hazardous,packs.184.sku,packs.184.name,packs.184.massKg,packs.184.prices.0.price,packs.184.prices.0.fromPacks,packs.184.prices.1.price,packs.184.prices.1.fromPacks,packs.184.content.unit,packs.184.content.material,packs.184.content.quantity,packs.184.oversize,packs.184.supplier,packs.184.hazardous,packs.185.sku,packs.185.name,packs.185.massKg,packs.185.prices.0.price,packs.185.prices.0.fromPacks,packs.185.prices.1.price,packs.185.prices.1.fromPacks,packs.185.content.unit,packs.185.content.material,packs.185.content.quantity,packs.185.oversize,packs.185.supplier,packs.185.hazardous,packs.186.sku,packs.186.name,packs.186.massKg,packs.186.prices.0.price,packs.186.prices.0.fromPacks,packs.186.prices.1.price,packs.186.prices.1.fromPacks,packs.186.content.unit,packs.186.content.material,packs.186.content.quantity,packs.186.oversize,packs.186.supplier,packs.186.hazardous,packs.187.sku,packs.187.name,packs.187.massKg,packs.187.prices.0.price,packs.187.prices.0.fromPacks,packs.187.prices.1.price,packs.187.prices.1.fromPacks,packs.187.prices.2.price,packs.187.prices.2.fromPacks,packs.187.content.unit,packs.187.content.material,packs.187.content.quantity,packs.187.oversize,packs.187.supplier,packs.187.hazardous,packs.188.sku,packs.188.name,packs.188.massKg,packs.188.prices.0.price,packs.188.prices.0.fromPacks,packs.188.prices.1.price,packs.188.prices.1.fromPacks,packs.188.content.unit,packs.188.content.material,packs.188.content.quantity,packs.188.oversize,packs.188.supplier,packs.188.hazardous,packs.189.sku,packs.189.name,packs.189.massKg,packs.189.prices.0.price,packs.189.prices.0.fromPacks,packs.189.prices.1.price,packs.189.prices.1.fromPacks,packs.189.content.unit,packs.189.content.material,packs.189.content.quantity,packs.189.oversize,packs.189.supplier,packs.189.hazardous,packs.190.sku,packs.190.name,packs.190.massKg,packs.190.prices.0.price,packs.190.prices.0.fromPacks,packs.190.prices.1.price,packs.190.prices.1.fromPacks,packs.190.content.unit,packs.190.content.material,packs.190.content.quantity,packs.190.oversize,packs.190.supplier,packs.190.hazardous,packs.191.sku,packs.191.name,packs.191.massKg,packs.191.prices.0.price,packs.191.prices.0.fromPacks,packs.191.prices.1.price,packs.191.prices.1.fromPacks,packs.191.prices.2.price,packs.191.prices.2.fromPacks,packs.191.content.unit,packs.191.content.material,packs.191.content.quantity,packs.191.oversize,packs.191.supplier,packs.191.hazardous,packs.192.sku,packs.192.name,packs.192.massKg,packs.192.prices.0.price,packs.192.prices.0.fromPacks,packs.192.prices.1.price,packs.192.prices.1.fromPacks,packs.192.content.unit,packs.192.content.material,packs.192.content.quantity,packs.192.oversize,packs.192.supplier,packs.192.hazardous,packs.193.sku,packs.193.name,packs.193.massKg,packs.193.prices.0.price,packs.193.prices.0.fromPacks,packs.193.prices.1.price,packs.193.prices.1.fromPacks,packs.193.content.unit,packs.193.content.material,packs.193.content.quantity,packs.193.oversize,packs.193.supplier,packs.193.hazardous,packs.194.sku,packs.194.name,packs.194.massKg,packs.194.prices.0.price,packs.194.prices.0.fromPacks,packs.194.prices.1.price,packs.194.prices.1.fromPacks,packs.194.content.unit,packs.194.content.material,packs.194.content.quantity,packs.194.oversize,packs.194.supplier,packs.194.hazardous,packs.195.sku,packs.195.name,packs.195.massKg,packs.195.prices.0.price,packs.195.prices.0.fromPacks,packs.195.prices.1.price,packs.195.prices.1.fromPacks,packs.195.content.unit,packs.195.content.material,packs.195.content.quantity,packs.195.oversize,packs.195.supplier,packs.195.hazardous,packs.196.sku,packs.196.name,packs.196.massKg,packs.196.prices.0.price,packs.196.prices.0.fromPacks,packs.196.prices.1.price,packs.196.prices.1.fromPacks,packs.196.content.unit,packs.196.content.material,packs.196.content.quantity,packs.196.oversize,packs.196.supplier,packs.196.hazardous,packs.197.sku,packs.197.name,packs.197.massKg,packs.197.prices.0.price,packs.197.prices.0.fromPacks,packs.197.prices.1.price,packs.197.prices.1.fromPacks,packs.197.content.unit,packs.197.content.material,packs.197.content.quantity,packs.197.oversize,packs.197.supplier,packs.197.hazardous,packs.198.sku,packs.198.name,packs.198.massKg,packs.198.prices.0.price,packs.198.prices.0.fromPacks,packs.198.prices.1.price,packs.198.prices.1.fromPacks,packs.198.content.unit,packs.198.content.material,packs.198.content.quantity,packs.198.oversize,packs.198.supplier,packs.198.hazardous,packs.199.sku,packs.199.name,packs.199.massKg,packs.199.prices.0.price,packs.199.prices.0.fromPacks,packs.199.prices.1.price,packs.199.prices.1.fromPacks,packs.199.prices.2.price,packs.199.prices.2.fromPacks,packs.199.content.unit,packs.199.content.material,packs.199.content.quantity,packs.199.oversize,packs.199.supplier,packs.199.hazardous,packs.200.sku,packs.200.name,packs.200.massKg,packs.200.prices.0.price,packs.200.prices.0.fromPacks,packs.200.prices.1.price,packs.200.prices.1.fromPacks,packs.200.content.unit,packs.200.content.material,packs.200.content.quantity,packs.200.oversize,packs.200.supplier,packs.200.hazardous,packs.201.sku,packs.201.name,packs.201.massKg,packs.201.prices.0.price,packs.201.prices.0.fromPacks,packs.201.prices.1.price,packs.201.prices.1.fromPacks,packs.201.content.unit,packs.201.content.material,packs.201.content.quantity,packs.201.oversize,packs.201.supplier,packs.201.hazardous,packs.202.sku,packs.202.name,packs.202.massKg,packs.202.prices.0.price,packs.202.prices.0.fromPacks,packs.202.prices.1.price,packs.202.prices.1.fromPacks,packs.202.content.unit,packs.202.content.material,packs.202.content.quantity,packs.202.oversize,packs.202.supplier,packs.202.hazardous,packs.203.sku,packs.203.name,packs.203.massKg,packs.203.prices.0.price,packs.203.prices.0.fromPacks,packs.203.prices.1.price,packs.203.prices.1.fromPacks,packs.203.content.unit,packs.203.content.material,packs.203.content.quantity,packs.203.oversize,packs.203.supplier,packs.203.hazardous,packs.204.sku,packs.204.name,packs.204.massKg,packs.204.prices.0.price,packs.204.prices.0.fromPacks,packs.204.prices.1.price,packs.204.prices.1.fromPacks,packs.204.content.unit,packs.204.content.material,packs.204.content.quantity,packs.204.oversize,packs.204.supplier,packs.204.hazardous,packs.204.shelfLifeMonths,packs.205.sku,packs.205.name,packs.205.massKg,packs.205.prices.0.price,packs.205.prices.0.fromPacks,packs.205.prices.1.price,packs.205.prices.1.fromPacks,packs.205.content.unit,packs.205.content.material,packs.205.content.quantity,packs.205.oversize,packs.205.supplier,packs.205.hazardous,packs.205.shelfLifeMonths,packs.206.sku,packs.206.name,packs.206.massKg,packs.206.prices.0.price,packs.206.prices.0.fromPacks,packs.206.prices.1.price,packs.206.prices.1.fromPacks,packs.206.content.unit,packs.206.content.material,packs.206.content.quantity,packs.206.oversize,packs.206.supplier,packs.206.hazardous,packs.206.shelfLifeMonths,packs.207.sku,packs.207.name,packs.207.massKg,packs.207.prices.0.price,packs.207.prices.0.fromPacks,packs.207.prices.1.price,packs.207.prices.1.fromPacks,packs.207.content.unit,packs.207.content.material,packs.207.content.quantity,packs.207.oversize,packs.207.supplier,packs.207.hazardous,packs.207.shelfLifeMonths,packs.208.sku,packs.208.name,packs.208.massKg,packs.208.prices.0.price,packs.208.prices.0.fromPacks,packs.208.prices.1.price,packs.208.prices.1.fromPacks,packs.208.content.unit,packs.208.content.material,packs.208.content.quantity,packs.208.oversize,packs.208.supplier,packs.208.hazardous,packs.208.shelfLifeMonths,packs.209.sku,packs.209.name,packs.209.massKg,packs.209.prices.0.price,packs.209.prices.0.fromPacks,packs.209.prices.1.price,packs.209.prices.1.fromPacks,packs.209.content.unit,packs.209.content.material,packs.209.content.quantity,packs.209.oversize,packs.209.supplier,packs.209.hazardous,packs.209.shelfLifeMonths,packs.210.sku,packs.210.name,packs.210.massKg,packs.210.prices.0.price,packs.210.prices.0.fromPacks,packs.210.prices.1.price,packs.210.prices.1.fromPacks,packs.210.content.unit,packs.210.content.material,packs.210.content.quantity,packs.210.oversize,packs.210.supplier,packs.210.hazardous,packs.210.shelfLifeMonths,packs.211.sku,packs.211.name,packs.211.massKg,packs.211.prices.0.price,packs.211.prices.0.fromPacks,packs.211.prices.1.price,packs.211.prices.1.fromPacks,packs.211.content.unit,packs.211.content.material,packs.211.content.quantity,packs.211.oversize,packs.211.supplier,packs.211.hazardous,packs.211.shelfLifeMonths,packs.212.sku,packs.212.name,packs.212.massKg,packs.212.prices.0.price,packs.212.prices.0.fromPacks,packs.212.content.unit,packs.212.content.material,packs.212.content.quantity,packs.212.oversize,packs.212.supplier,packs.212.hazardous,packs.212.shelfLifeMonths,packs.213.sku,packs.213.name,packs.213.massKg,packs.213.prices.0.price,packs.213.prices.0.fromPacks,packs.213.content.unit,packs.213.content.material,packs.213.content.quantity,packs.213.oversize,packs.213.supplier,packs.213.hazardous,packs.213.shelfLifeMonths,packs.214.sku,packs.214.name,packs.214.massKg,packs.214.prices.0.price,packs.214.prices.0.fromPacks,packs.214.content.unit,packs.214.content.material,packs.214.content.quantity,packs.214.oversize,packs.214.supplier,packs.214.hazardous,packs.215.sku,packs.215.name,packs.215.massKg,packs.215.prices.0.price,packs.215.prices.0.fromPacks,packs.215.content.unit,packs.215.content.material,packs.215.content.quantity,packs.215.oversize,packs.215.supplier,packs.215.hazardous,packs.215.shelfLifeMonths,packs.216.sku,packs.216.name,packs.216.massKg,packs.216.prices.0.price,packs.216.prices.0.fromPacks,packs.216.content.unit,packs.216.content.material,packs.216.content.quantity,packs.216.oversize,packs.216.supplier,packs.216.hazardous,packs.216.shelfLifeMonths,packs.217.sku,packs.217.name,packs.217.massKg,packs.217.prices.0.price,packs.217.prices.0.fromPacks,packs.217.content.unit,packs.217.content.material,packs.217.content.quantity,packs.217.oversize,packs.217.supplier,packs.217.hazardous,packs.218.sku,packs.218.name,packs.218.massKg,packs.218.prices.0.price,packs.218.prices.0.fromPacks,packs.218.prices.1.price,packs.218.prices.1.fromPacks,packs.218.content.form,packs.218.content.unit,packs.218.content.sheet.widthMm,packs.218.content.sheet.lengthMm,packs.218.content.material,packs.218.content.quantity,packs.218.content.thicknessMm,packs.218.oversize,packs.218.supplier,packs.218.hazardous,packs.219.sku,packs.219.name,packs.219.massKg,packs.219.prices.0.price,packs.219.prices.0.fromPacks,packs.219.prices.1.price,packs.219.prices.1.fromPacks,packs.219.prices.2.price,packs.219.prices.2.fromPacks,packs.219.content.form,packs.219.content.unit,packs.219.content.sheet.widthMm,packs.219.content.sheet.lengthMm,packs.219.content.material,packs.219.content.quantity,packs.219.content.thicknessMm,packs.219.oversize,packs.219.supplier,packs.219.hazardous,packs.220.sku,packs.220.name,packs.220.cutFee,packs.220.massKg,packs.220.prices.0.price,packs.220.prices.0.fromPacks,packs.220.prices.1.price,packs.220.prices.1.fromPacks,packs.220.prices.2.price,packs.220.prices.2.fromPacks,packs.220.content.form,packs.220.content.unit,packs.220.content.sheet.widthMm,packs.220.content.sheet.lengthMm,packs.220.content.material,packs.220.content.quantity,packs.220.content.thicknessMm,packs.220.oversize,packs.220.supplier,packs.220.hazardous,packs.221.sku,packs.221.name,packs.221.cutFee,packs.221.massKg,packs.221.prices.0.price,packs.221.prices.0.fromPacks,packs.221.prices.1.price,packs.221.prices.1.fromPacks,packs.221.content.form,packs.221.content.unit,packs.221.content.sheet.widthMm,packs.221.content.sheet.lengthMm,packs.221.content.material,packs.221.content.quantity,packs.221.content.thicknessMm,packs.221.oversize,packs.221.supplier,packs.221.hazardous,packs.222.sku,packs.222.name,packs.222.massKg,packs.222.prices.0.price,packs.222.prices.0.fromPacks,packs.222.prices.1.price,packs.222.prices.1.fromPacks,packs.222.content.form,packs.222.content.unit,packs.222.content.sheet.widthMm,packs.222.content.sheet.lengthMm,packs.222.content.material,packs.222.content.quantity,packs.222.content.thicknessMm,packs.222.oversize,packs.222.supplier,packs.222.hazardous,packs.223.sku,packs.223.name,packs.223.cutFee,packs.223.massKg,packs.223.prices.0.price,packs.223.prices.0.fromPacks,packs.223.prices.1.price,packs.223.prices.1.fromPacks,packs.223.prices.2.price,packs.223.prices.2.fromPacks,packs.223.content.form,packs.223.content.unit,packs.223.content.sheet.widthMm,packs.223.content.sheet.lengthMm,packs.223.content.material,packs.223.content.quantity,packs.223.content.thicknessMm,packs.223.oversize,packs.223.supplier,packs.223.hazardous,packs.224.sku,packs.224.name,packs.224.cutFee,packs.224.massKg,packs.224.prices.0.price,packs.224.prices.0.fromPacks,packs.224.prices.1.price,packs.224.prices.1.fromPacks,packs.224.content.form,packs.224.content.unit,packs.224.content.sheet.widthMm,packs.224.content.sheet.lengthMm,packs.224.content.material,packs.224.content.quantity,packs.224.content.thicknessMm,packs.224.oversize,packs.224.supplier,packs.224.hazardous,packs.225.sku,packs.225.name,packs.225.massKg,packs.225.prices.0.price,packs.225.prices.0.fromPacks,packs.225.prices.1.price,packs.225.prices.1.fromPacks,packs.225.content.form,packs.225.content.unit,packs.225.content.sheet.widthMm,packs.225.content.sheet.lengthMm,packs.225.content.material,packs.225.content.quantity,packs.225.content.thicknessMm,packs.225.oversize,packs.225.supplier,packs.225.hazardous,packs.226.sku,packs.226.name,packs.226.massKg,packs.226.prices.0.price,packs.226.prices.0.fromPacks,packs.226.prices.1.price,packs.226.prices.1.fromPacks,packs.226.prices.2.price,packs.226.prices.2.fromPacks,packs.226.content.form,packs.226.content.unit,packs.226.content.sheet.widthMm,packs.226.content.sheet.lengthMm,packs.226.content.material,packs.226.content.quantity,packs.226.content.thicknessMm,packs.226.oversize,packs.226.supplier,packs.226.hazardous,packs.227.sku,packs.227.name,packs.227.cutFee,packs.227.massKg,packs.227.prices.0.price,packs.227.prices.0.fromPacks,packs.227.prices.1.price,packs.227.prices.1.fromPacks,packs.227.prices.2.price,packs.227.prices.2.fromPacks,packs.227.content.form,packs.227.content.unit,packs.227.content.sheet.widthMm,packs.227.content.sheet.lengthMm,packs.227.content.material,packs.227.content.quantity,packs.227.content.thicknessMm,packs.227.oversize,packs.227.supplier,packs.227.hazardous,packs.228.sku,packs.228.name,packs.228.cutFee,packs.228.massKg,packs.228.prices.0.price,packs.228.prices.0.fromPacks,packs.228.prices.1.price,packs.228.prices.1.fromPacks,packs.228.content.form,packs.228.content.unit,packs.228.content.sheet.widthMm,packs.228.content.sheet.lengthMm,packs.228.content.material,packs.228.content.quantity,packs.228.content.thicknessMm,packs.228.oversize,packs.228.supplier,packs.228.hazardous,packs.229.sku,packs.229.name,packs.229.massKg,packs.229.prices.0.price,packs.229.prices.0.fromPacks,packs.229.prices.1.price,packs.229.prices.1.fromPacks,packs.229.content.form,packs.229.content.unit,packs.229.content.sheet.widthMm,packs.229.content.sheet.lengthMm,packs.229.content.material,packs.229.content.quantity,packs.229.content.thicknessMm,packs.229.oversize,packs.229.supplier,packs.229.hazardous,packs.230.sku,packs.230.name,packs.230.cutFee,packs.230.massKg,packs.230.prices.0.price,packs.230.prices.0.fromPacks,packs.230.prices.1.price,packs.230.prices.1.fromPacks,packs.230.prices.2.price,packs.230.prices.2.fromPacks,packs.230.content.form,packs.230.content.unit,packs.230.content.sheet.widthMm,packs.230.content.sheet.lengthMm,packs.230.content.material,packs.230.content.quantity,packs.230.content.thicknessMm,packs.230.oversize,packs.230.supplier,packs.230.hazardous,packs.231.sku,packs.231.name,packs.231.cutFee,packs.231.massKg,packs.231.prices.0.price,packs.231.prices.0.fromPacks,packs.231.prices.1.price,packs.231.prices.1.fromPacks,packs.231.content.form,packs.231.content.unit,packs.231.content.sheet.widthMm,packs.231.content.sheet.lengthMm,packs.231.content.material,packs.231.content.quantity,packs.231.content.thicknessMm,packs.231.oversize,packs.231.supplier,packs.231.hazardous,packs.232.sku,packs.232.name,packs.232.massKg,packs.232.prices.0.price,packs.232.prices.0.fromPacks,packs.232.prices.1.price,packs.232.prices.1.fromPacks,packs.232.content.form,packs.232.content.unit,packs.232.content.sheet.widthMm,packs.232.content.sheet.lengthMm,packs.232.content.material,packs.232.content.quantity,packs.232.content.thicknessMm,packs.232.oversize,packs.232.supplier,packs.232.hazardous,packs.233.sku,packs.233.name,packs.233.massKg,packs.233.prices.0.price,packs.233.prices.0.fromPacks,packs.233.prices.1.price,packs.233.prices.1.fromPacks,packs.233.prices.2.price,packs.233.prices.2.fromPacks,packs.233.content.form,packs.233.content.unit,packs.233.content.sheet.widthMm,packs.233.content.sheet.lengthMm,packs.233.content.material,packs.233.content.quantity,packs.233.content.thicknessMm,packs.233.oversize,packs.233.supplier,packs.233.hazardous,packs.234.sku,packs.234.name,packs.234.cutFee,packs.234.massKg,packs.234.prices.0.price,packs.234.prices.0.fromPacks,packs.234.prices.1.price,packs.234.prices.1.fromPacks,packs.234.prices.2.price,packs.234.prices.2.fromPacks,packs.234.content.form,packs.234.content.unit,packs.234.content.sheet.widthMm,packs.234.content.sheet.lengthMm,packs.234.content.material,packs.234.content.quantity,packs.234.content.thicknessMm,packs.234.oversize,packs.234.supplier,packs.234.hazardous,packs.235.sku,packs.235.name,packs.235.cutFee,packs.235.massKg,packs.235.prices.0.price,packs.235.prices.0.fromPacks,packs.235.prices.1.price,packs.235.prices.1.fromPacks,packs.235.content.form,packs.235.content.unit,packs.235.content.sheet.widthMm,packs.235.content.sheet.lengthMm,packs.235.content.material,packs.235.content.quantity,packs.235.content.thicknessMm,packs.235.oversize,packs.235.supplier,packs.235.hazardous,packs.236.sku,packs.236.name,packs.236.massKg,packs.236.prices.0.price,packs.236.prices.0.fromPacks,packs.236.prices.1.price,packs.236.prices.1.fromPacks,packs.236.content.form,packs.236.content.unit,packs.236.content.sheet.widthMm,packs.236.content.sheet.lengthMm,packs.236.content.material,packs.236.content.quantity,packs.236.content.thicknessMm,packs.236.oversize,packs.236.supplier,packs.236.hazardous,packs.237.sku,packs.237.name,packs.237.cutFee,packs.237.massKg,packs.237.prices.0.price,packs.237.prices.0.fromPacks,packs.237.prices.1.price,packs.237.prices.1.fromPacks,packs.237.prices.2.price,packs.237.prices.2.fromPacks,packs.237.content.form,packs.237.content.unit,packs.237.content.sheet.widthMm,packs.237.content.sheet.lengthMm,packs.237.content.material,packs.237.content.quantity,packs.237.content.thicknessMm,packs.237.oversize,packs.237.supplier,packs.237.hazardous,packs.238.sku,packs.238.name,packs.238.cutFee,packs.238.massKg,packs.238.prices.0.price,packs.238.prices.0.fromPacks,packs.238.prices.1.price,packs.238.prices.1.fromPacks,packs.238.content.form,packs.238.content.unit,packs.238.content.sheet.widthMm,packs.238.content.sheet.lengthMm,packs.238.content.material,packs.238.content.quantity,packs.238.content.thicknessMm,packs.238.oversize,packs.238.supplier,packs.238.hazardous,packs.239.sku,packs.239.name,packs.239.massKg,packs.239.prices.0.price,packs.239.prices.0.fromPacks,packs.239.prices.1.price,packs.239.prices.1.fromPacks,packs.239.content.form,packs.239.content.unit,packs.239.content.sheet.widthMm,packs.239.content.sheet.lengthMm,packs.239.content.material,packs.239.content.quantity,packs.239.content.thicknessMm,packs.239.oversize,packs.239.supplier,packs.239.hazardous,packs.240.sku,packs.240.name,packs.240.massKg,packs.240.prices.0.price,packs.240.prices.0.fromPacks,packs.240.prices.1.price,packs.240.prices.1.fromPacks,packs.240.prices.2.price,packs.240.prices.2.fromPacks,packs.240.content.form,packs.240.content.unit,packs.240.content.sheet.widthMm,packs.240.content.sheet.lengthMm,packs.240.content.material,packs.240.content.quantity,packs.240.content.thicknessMm,packs.240.oversize,packs.240.supplier,packs.240.hazardous,packs.241.sku,packs.241.name,packs.241.cutFee,packs.241.massKg,packs.241.prices.0.price,packs.241.prices.0.fromPacks,packs.241.prices.1.price,packs.241.prices.1.fromPacks,packs.241.prices.2.price,packs.241.prices.2.fromPacks,packs.241.content.form,packs.241.content.unit,packs.241.content.sheet.widthMm,packs.241.content.sheet.lengthMm,packs.241.content.material,packs.241.content.quantity,packs.241.content.thicknessMm,packs.241.oversize,packs.241.supplier,packs.241.hazardous,packs.242.sku,packs.242.name,packs.242.cutFee,packs.242.massKg,packs.242.prices.0.price,packs.242.prices.0.fromPacks,packs.242.prices.1.price,packs.242.prices.1.fromPacks,packs.242.content.form,packs.242.content.unit,packs.242.content.sheet.widthMm,packs.242.content.sheet.lengthMm,packs.242.content.material,packs.242.content.quantity,packs.242.content.thicknessMm,packs.242.oversize,packs.242.supplier,packs.242.hazardous,packs.243.sku,packs.243.name,packs.243.massKg,packs.243.prices.0.price,packs.243.prices.0.fromPacks,packs.243.prices.1.price,packs.243.prices.1.fromPacks,packs.243.content.form,packs.243.content.unit,packs.243.content.sheet.widthMm,packs.243.content.sheet.lengthMm,packs.243.content.material,packs.243.content.quantity,packs.243.content.thicknessMm,packs.243.oversize,packs.243.supplier,packs.243.hazardous,packs.244.sku,packs.244.name,packs.244.cutFee,packs.244.massKg,packs.244.prices.0.price,packs.244.prices.0.fromPacks,packs.244.prices.1.price,packs.244.prices.1.fromPacks,packs.244.prices.2.price,packs.244.prices.2.fromPacks,packs.244.content.form,packs.244.content.unit,packs.244.content.sheet.widthMm,packs.244.content.sheet.lengthMm,packs.244.content.material,packs.244.content.quantity,packs.244.content.thicknessMm,packs.244.oversize,packs.244.supplier,packs.244.hazardous,packs.245.sku,packs.245.name,packs.245.cutFee,packs.245.massKg,packs.245.prices.0.price,packs.245.prices.0.fromPacks,packs.245.prices.1.price,packs.245.prices.1.fromPacks,packs.245.content.form,packs.245.content.unit,packs.245.content.sheet.widthMm,packs.245.content.sheet.lengthMm,packs.245.content.material,packs.245.content.quantity,packs.245.content.thicknessMm,packs.245.oversize,packs.245.supplier,packs.245.hazardous,packs.246.sku,packs.246.name,packs.246.stock,packs.246.massKg,packs.246.prices.0.price,packs.246.prices.0.fromPacks,packs.246.prices.1.price,packs.246.prices.1.fromPacks,packs.246.content.form,packs.246.content.unit,packs.246.content.sheet.widthMm,packs.246.content.sheet.lengthMm,packs.246.content.material,packs.246.content.quantity,packs.246.content.thicknessMm,packs.246.oversize,packs.246.supplier,packs.246.hazardous,packs.247.sku,packs.247.name,packs.247.massKg,packs.247.prices.0.price,packs.247.prices.0.fromPacks,packs.247.prices.1.price,packs.247.prices.1.fromPacks,packs.247.prices.2.price,packs.247.prices.2.fromPacks,packs.247.content.form,packs.247.content.unit,packs.247.content.sheet.widthMm,packs.247.content.sheet.lengthMm,packs.247.content.material,packs.247.content.quantity,packs.247.content.thicknessMm,packs.247.oversize,packs.247.supplier,packs.247.hazardous,packs.248.sku,packs.248.name,packs.248.cutFee,packs.248.massKg,packs.248.prices.0.price,packs.248.prices.0.fromPacks,packs.248.prices.1.price,packs.248.prices.1.fromPacks,packs.248.prices.2.price,packs.248.prices.2.fromPacks,packs.248.content.form,packs.248.content.unit,packs.248.content.sheet.widthMm,packs.248.content.sheet.lengthMm,packs.248.content.material,packs.248.content.quantity,packs.248.content.thicknessMm,packs.248.oversize,packs.248.supplier,packs.248.hazardous,packs.249.sku,packs.249.name,packs.249.cutFee,packs.249.massKg,packs.249.prices.0.price,packs.249.prices.0.fromPacks,packs.249.prices.1.price,packs.249.prices.1.fromPacks,packs.249.content.form,packs.249.content.unit,packs.249.content.sheet.widthMm,packs.249.content.sheet.lengthMm,packs.249.content.material,packs.249.content.quantity,packs.249.content.thicknessMm,packs.249.oversize,packs.249.supplier,packs.249.hazardous,packs.250.sku,packs.250.name,packs.250.stock,packs.250.massKg,packs.250.prices.0.price,packs.250.prices.0.fromPacks,packs.250.prices.1.price,packs.250.prices.1.fromPacks,packs.250.content.form,packs.250.content.unit,packs.250.content.sheet.widthMm,packs.250.content.sheet.lengthMm,packs.250.content.material,packs.250.content.quantity,packs.250.content.thicknessMm,packs.250.oversize,packs.250.supplier,packs.250.hazardous,packs.251.sku,packs.251.name,packs.251.cutFee,packs.251.massKg,packs.251.prices.0.price,packs.251.prices.0.fromPacks,packs.251.prices.1.price,packs.251.prices.1.fromPacks,packs.251.prices.2.price,packs.251.prices.2.fromPacks,packs.251.content.form,packs.251.content.unit,packs.251.content.sheet.widthMm,packs.251.content.sheet.lengthMm,packs.251.content.material,packs.251.content.quantity,packs.251.content.thicknessMm,packs.251.oversize,packs.251.supplier,packs.251.hazardous,packs.252.sku,packs.252.name,packs.252.cutFee,packs.252.massKg,packs.252.prices.0.price,packs.252.prices.0.fromPacks,packs.252.prices.1.price,packs.252.prices.1.fromPacks,packs.252.content.form,packs.252.content.unit,packs.252.content.sheet.widthMm,packs.252.content.sheet.lengthMm,packs.252.content.material,packs.252.content.quantity,packs.252.content.thicknessMm,packs.252.oversize,packs.252.supplier,packs.252.hazardous,packs.253.sku,packs.253.name,packs.253.stock,packs.253.massKg,packs.253.prices.0.price,packs.253.prices.0.fromPacks,packs.253.prices.1.price,packs.253.prices.1.fromPacks,packs.253.content.form,packs.253.content.unit,packs.253.content.sheet.widthMm,packs.253.content.sheet.lengthMm,packs.253.content.material,packs.253.content.quantity,packs.253.content.thicknessMm,packs.253.oversize,packs.253.supplier,packs.253.hazardous,packs.254.sku,packs.254.name,packs.254.massKg,packs.254.prices.0.price,packs.254.prices.0.fromPacks,packs.254.prices.1.price,packs.254.prices.1.fromPacks,packs.254.prices.2.price,packs.254.prices.2.fromPacks,packs.254.content.form,packs.254.content.unit,packs.254.content.sheet.widthMm,packs.254.content.sheet.lengthMm,packs.254.content.material,packs.254.content.quantity,packs.254.content.thicknessMm,packs.254.oversize,packs.254.supplier,packs.254.hazardous,packs.255.sku,packs.255.name,packs.255.cutFee,packs.255.massKg,packs.255.prices.0.price,packs.255.prices.0.fromPacks,packs.255.prices.1.price,packs.255.prices.1.fromPacks,packs.255.prices.2.price,packs.255.prices.2.fromPacks,packs.255.content.form,packs.255.content.unit,packs.255.content.sheet.widthMm,packs.255.content.sheet.lengthMm,packs.255.content.material,packs.255.content.quantity,packs.255.content.thicknessMm,packs.255.oversize,packs.255.supplier,packs.255.hazardous,packs.256.sku,packs.256.name,packs.256.cutFee,packs.256.massKg,packs.256.prices.0.price,packs.256.prices.0.fromPacks,packs.256.prices.1.price,packs.256.prices.1.fromPacks,packs.256.content.form,packs.256.content.unit,packs.256.content.sheet.widthMm,packs.256.content.sheet.lengthMm,packs.256.content.material,packs.256.content.quantity,packs.256.content.thicknessMm,packs.256.oversize,packs.256.supplier,packs.256.hazardous,packs.257.sku,packs.257.name,packs.257.stock,packs.257.massKg,packs.257.prices.0.price,packs.257.prices.0.fromPacks,packs.257.prices.1.price,packs.257.prices.1.fromPacks,packs.257.content.form,packs.257.content.unit,packs.257.content.sheet.widthMm,packs.257.content.sheet.lengthMm,packs.257.content.material,packs.257.content.quantity,packs.257.content.thicknessMm,packs.257.oversize,packs.257.supplier,packs.257.hazardous,packs.258.sku,packs.258.name,packs.258.cutFee,packs.258.massKg,packs.258.prices.0.price,packs.258.prices.0.fromPacks,packs.258.prices.1.price,packs.258.prices.1.fromPacks,packs.258.prices.2.price,packs.258.prices.2.fromPacks,packs.258.content.form,packs.258.content.unit,packs.258.content.sheet.widthMm,packs.258.content.sheet.lengthMm,packs.258.content.material,packs.258.content.quantity,packs.258.content.thicknessMm,packs.258.oversize,packs.258.supplier,packs.258.hazardous,packs.259.sku,packs.259.name,packs.259.cutFee,packs.259.massKg,packs.259.prices.0.price,packs.259.prices.0.fromPacks,packs.259.prices.1.price,packs.259.prices.1.fromPacks,packs.259.content.form,packs.259.content.unit,packs.259.content.sheet.widthMm,packs.259.content.sheet.lengthMm,packs.259.content.material,packs.259.content.quantity,packs.259.content.thicknessMm,packs.259.oversize,packs.259.supplier,packs.259.hazardous,packs.260.sku,packs.260.name,packs.260.massKg,packs.260.prices.0.price,packs.260.prices.0.fromPacks,packs.260.prices.1.price,packs.260.prices.1.fromPacks,packs.260.content.form,packs.260.content.unit,packs.260.content.sheet.widthMm,packs.260.content.sheet.lengthMm,packs.260.content.material,packs.260.content.quantity,packs.260.content.thicknessMm,packs.260.oversize,packs.260.supplier,packs.260.hazardous,packs.261.sku,packs.261.name,packs.261.massKg,packs.261.prices.0.price,packs.261.prices.0.fromPacks,packs.261.prices.1.price,packs.261.prices.1.fromPacks,packs.261.prices.2.price,packs.261.prices.2.fromPacks,packs.261.content.form,packs.261.content.unit,packs.261.content.sheet.widthMm,packs.261.content.sheet.lengthMm,packs.261.content.material,packs.261.content.quantity,packs.261.content.thicknessMm,packs.261.oversize,packs.261.supplier,packs.261.hazardous,packs.262.sku,packs.262.name,packs.262.cutFee,packs.262.massKg,packs.262.prices.0.price,packs.262.prices.0.fromPacks,packs.262.prices.1.price,packs.262.prices.1.fromPacks,packs.262.prices.2.price,packs.262.prices.2.fromPacks,packs.262.content.form,packs.262.content.unit,packs.262.content.sheet.widthMm,packs.262.content.sheet.lengthMm,packs.262.content.material,packs.262.content.quantity,packs.262.content.thicknessMm,packs.262.oversize,packs.262.supplier,packs.262.hazardous,packs.263.sku,packs.263.name,packs.263.cutFee,packs.263.massKg,packs.263.prices.0.price,packs.263.prices.0.fromPacks,packs.263.prices.1.price,packs.263.prices.1.fromPacks,packs.263.content.form,packs.263.content.unit,packs.263.content.sheet.widthMm,packs.263.content.sheet.lengthMm,packs.263.content.material,packs.263.content.quantity,packs.263.content.thicknessMm,packs.263.oversize,packs.263.supplier,packs.263.hazardous,packs.264.sku,packs.264.name,packs.264.massKg,packs.264.prices.0.price,packs.264.prices.0.fromPacks,packs.264.prices.1.price,packs.264.prices.1.fromPacks,packs.264.content.form,packs.264.content.unit,packs.264.content.sheet.widthMm,packs.264.content.sheet.lengthMm,packs.264.content.material,packs.264.content.quantity,packs.264.content.thicknessMm,packs.264.oversize,packs.264.supplier,packs.264.hazardous,packs.265.sku,packs.265.name,packs.265.cutFee,packs.265.massKg,packs.265.prices.0.price,packs.265.prices.0.fromPacks,packs.265.prices.1.price,packs.265.prices.1.fromPacks,packs.265.prices.2.price,packs.265.prices.2.fromPacks,packs.265.content.form,packs.265.content.unit,packs.265.content.sheet.widthMm,packs.265.content.sheet.lengthMm,packs.265.content.material,packs.265.content.quantity,packs.265.content.thicknessMm,packs.265.oversize,packs.265.supplier,packs.265.hazardous,packs.266.sku,packs.266.name,packs.266.cutFee,packs.266.massKg,packs.266.prices.0.price,packs.266.prices.0.fromPacks,packs.266.prices.1.price,packs.266.prices.1.fromPacks,packs.266.content.form,packs.266.content.unit,packs.266.content.sheet.widthMm,packs.266.content.sheet.lengthMm,packs.266.content.material,packs.266.content.quantity,packs.266.content.thicknessMm,packs.266.oversize,packs.266.supplier,packs.266.hazardous,packs.267.sku,packs.267.name,packs.267.massKg,packs.267.prices.0.price,packs.267.prices.0.fromPacks,packs.267.prices.1.price,packs.267.prices.1.fromPacks,packs.267.content.form,packs.267.content.unit,packs.267.content.sheet.widthMm,packs.267.content.sheet.lengthMm,packs.267.content.material,packs.267.content.quantity,packs.267.content.thicknessMm,packs.267.oversize,packs.267.supplier,packs.267.hazardous,packs.268.sku,packs.268.name,packs.268.massKg,packs.268.prices.0.price,packs.268.prices.0.fromPacks,packs.268.prices.1.price,packs.268.prices.1.fromPacks,packs.268.prices.2.price,packs.268.prices.2.fromPacks,packs.268.content.form,packs.268.content.unit,packs.268.content.sheet.widthMm,packs.268.content.sheet.lengthMm,packs.268.content.material,packs.268.content.quantity,packs.268.content.thicknessMm,packs.268.oversize,packs.268.supplier,packs.268.hazardous,packs.269.sku,packs.269.name,packs.269.cutFee,packs.269.massKg,packs.269.prices.0.price,packs.269.prices.0.fromPacks,packs.269.prices.1.price,packs.269.prices.1.fromPacks,packs.269.prices.2.price,packs.269.prices.2.fromPacks,packs.269.content.form,packs.269.content.unit,packs.269.content.sheet.widthMm,packs.269.content.sheet.lengthMm,packs.269.content.material,packs.269.content.quantity,packs.269.content.thicknessMm,packs.269.oversize,packs.269.supplier,packs.269.hazardous,packs.270.sku,packs.270.name,packs.270.cutFee,packs.270.massKg,packs.270.prices.0.price,packs.270.prices.0.fromPacks,packs.270.prices.1.price,packs.270.prices.1.fromPacks,packs.270.content.form,packs.270.content.unit,packs.270.content.sheet.widthMm,packs.270.content.sheet.lengthMm,packs.270.content.material,packs.270.content.quantity,packs.270.content.thicknessMm,packs.270.oversize,packs.270.supplier,packs.270.hazardous,packs.271.sku,packs.271.name,packs.271.massKg,packs.271.prices.0.price,packs.271.prices.0.fromPacks,packs.271.prices.1.price,packs.271.prices.1.fromPacks,packs.271.content.form,packs.271.content.unit,packs.271.content.sheet.widthMm,packs.271.content.sheet.lengthMm,packs.271.content.material,packs.271.content.quantity,packs.271.content.thicknessMm,packs.271.oversize,packs.271.supplier,packs.271.hazardous,packs.272.sku,packs.272.name,packs.272.cutFee,packs.272.massKg,packs.272.prices.0.price,packs.272.prices.0.fromPacks,packs.272.prices.1.price,packs.272.prices.1.fromPacks,packs.272.prices.2.price,packs.272.prices.2.fromPacks,packs.272.content.form,packs.272.content.unit,packs.272.content.sheet.widthMm,packs.272.content.sheet.lengthMm,packs.272.content.material,packs.272.content.quantity,packs.272.content.thicknessMm,packs.272.oversize,packs.272.supplier,packs.272.hazardous,packs.273.sku,packs.273.name,packs.273.cutFee,packs.273.massKg,packs.273.prices.0.price,packs.273.prices.0.fromPacks,packs.273.prices.1.price,packs.273.prices.1.fromPacks,packs.273.content.form,packs.273.content.unit,packs.273.content.sheet.widthMm,packs.273.content.sheet.lengthMm,packs.273.content.material,packs.273.content.quantity,packs.273.content.thicknessMm,packs.273.oversize,packs.273.supplier,packs.273.hazardous,packs.274.sku,packs.274.name,packs.274.massKg,packs.274.prices.0.price,packs.274.prices.0.fromPacks,packs.274.prices.1.price,packs.274.prices.1.fromPacks,packs.274.content.form,packs.274.content.unit,packs.274.content.sheet.widthMm,packs.274.content.sheet.lengthMm,packs.274.content.material,packs.274.content.quantity,packs.274.content.thicknessMm,packs.274.oversize,packs.274.supplier,packs.274.hazardous,packs.275.sku,packs.275.name,packs.275.massKg,packs.275.prices.0.price,packs.275.prices.0.fromPacks,packs.275.prices.1.price,packs.275.prices.1.fromPacks,packs.275.prices.2.price,packs.275.prices.2.fromPacks,packs.275.content.form,packs.275.content.unit,packs.275.content.sheet.widthMm,packs.275.content.sheet.lengthMm,packs.275.content.material,packs.275.content.quantity,packs.275.content.thicknessMm,packs.275.oversize,packs.275.supplier,packs.275.hazardous,packs.276.sku,packs.276.name,packs.276.cutFee,packs.276.massKg,packs.276.prices.0.price,packs.276.prices.0.fromPacks,packs.276.prices.1.price,packs.276.prices.1.fromPacks,packs.276.prices.2.price,packs.276.prices.2.fromPacks,packs.276.content.form,packs.276.content.unit,packs.276.content.sheet.widthMm,packs.276.content.sheet.lengthMm,packs.276.content.material,packs.276.content.quantity,packs.276.content.thicknessMm,packs.276.oversize,packs.276.supplier,packs.276.hazardous,packs.277.sku,packs.277.name,packs.277.cutFee,packs.277.massKg,packs.277.prices.0.price,packs.277.prices.0.fromPacks,packs.277.prices.1.price,packs.277.prices.1.fromPacks,packs.277.content.form,packs.277.content.unit,packs.277.content.sheet.widthMm,packs.277.content.sheet.lengthMm,packs.277.content.material,packs.277.content.quantity,packs.277.content.thicknessMm,packs.277.oversize,packs.277.supplier,packs.277.hazardous,packs.278.sku,packs.278.name,packs.278.massKg,packs.278.prices.0.price,packs.278.prices.0.fromPacks,packs.278.prices.1.price,packs.278.prices.1.fromPacks,packs.278.content.form,packs.278.content.unit,packs.278.content.sheet.widthMm,packs.278.content.sheet.lengthMm,packs.278.content.material,packs.278.content.quantity,packs.278.content.thicknessMm,packs.278.oversize,packs.278.supplier,packs.278.hazardous,packs.279.sku,packs.279.name,packs.279.cutFee,packs.279.massKg,packs.279.prices.0.price,packs.279.prices.0.fromPacks,packs.279.prices.1.price,packs.279.prices.1.fromPacks,packs.279.prices.2.price,packs.279.prices.2.fromPacks,packs.279.content.form,packs.279.content.unit,packs.279.content.sheet.widthMm,packs.279.content.sheet.lengthMm,packs.279.content.material,packs.279.content.quantity,packs.279.content.thicknessMm,packs.279.oversize,packs.279.supplier,packs.279.hazardous,packs.280.sku,packs.280.name,packs.280.cutFee,packs.280.massKg,packs.280.prices.0.price,packs.280.prices.0.fromPacks,packs.280.prices.1.price,packs.280.prices.1.fromPacks,packs.280.content.form,packs.280.content.unit,packs.280.content.sheet.widthMm,packs.280.content.sheet.lengthMm,packs.280.content.material,packs.280.content.quantity,packs.280.content.thicknessMm,packs.280.oversize,packs.280.supplier,packs.280.hazardous,packs.281.sku,packs.281.name,packs.281.massKg,packs.281.prices.0.price,packs.281.prices.0.fromPacks,packs.281.prices.1.price,packs.281.prices.1.fromPacks,packs.281.content.form,packs.281.content.unit,packs.281.content.sheet.widthMm,packs.281.content.sheet.lengthMm,packs.281.content.material,packs.281.content.quantity,packs.281.content.thicknessMm,packs.281.oversize,packs.281.supplier,packs.281.hazardous,packs.282.sku,packs.282.name,packs.282.massKg,packs.282.prices.0.price,packs.282.prices.0.fromPacks,packs.282.prices.1.price,packs.282.prices.1.fromPacks,packs.282.prices.2.price,packs.282.prices.2.fromPacks,packs.282.content.form,packs.282.content.unit,packs.282.content.sheet.widthMm,packs.282.content.sheet.lengthMm,packs.282.content.material,packs.282.content.quantity,packs.282.content.thicknessMm,packs.282.oversize,packs.282.supplier,packs.282.hazardous,packs.283.sku,packs.283.name,packs.283.cutFee,packs.283.massKg,packs.283.prices.0.price,packs.283.prices.0.fromPacks,packs.283.prices.1.price,packs.283.prices.1.fromPacks,packs.283.prices.2.price,packs.283.prices.2.fromPacks,packs.283.content.form,packs.283.content.unit,packs.283.content.sheet.widthMm,packs.283.content.sheet.lengthMm,packs.283.content.material,packs.283.content.quantity,packs.283.content.thicknessMm,packs.283.oversize,packs.283.supplier,packs.283.hazardous,packs.284.sku,packs.284.name,packs.284.cutFee,packs.284.massKg,packs.284.prices.0.price,packs.284.prices.0.fromPacks,packs.284.prices.1.price,packs.284.prices.1.fromPacks,packs.284.content.form,packs.284.content.unit,packs.284.content.sheet.widthMm,packs.284.content.sheet.lengthMm,packs.284.content.material,packs.284.content.quantity,packs.284.content.thicknessMm,packs.284.oversize,packs.284.supplier,packs.284.hazardous,packs.285.sku,packs.285.name,packs.285.massKg,packs.285.prices.0.price,packs.285.prices.0.fromPacks,packs.285.prices.1.price,packs.285.prices.1.fromPacks,packs.285.content.form,packs.285.content.unit,packs.285.content.sheet.widthMm,packs.285.content.sheet.lengthMm,packs.285.content.material,packs.285.content.quantity,packs.285.content.thicknessMm,packs.285.oversize,packs.285.supplier,packs.285.hazardous,packs.286.sku,packs.286.name,packs.286.cutFee,packs.286.massKg,packs.286.prices.0.price,packs.286.prices.0.fromPacks,packs.286.prices.1.price,packs.286.prices.1.fromPacks,packs.286.prices.2.price,packs.286.prices.2.fromPacks,packs.286.content.form,packs.286.content.unit,packs.286.content.sheet.widthMm,packs.286.content.sheet.lengthMm,packs.286.content.material,packs.286.content.quantity,packs.286.content.thicknessMm,packs.286.oversize,packs.286.supplier,packs.286.hazardous,packs.287.sku,packs.287.name,packs.287.cutFee,packs.287.massKg,packs.287.prices.0.price,packs.287.prices.0.fromPacks,packs.287.prices.1.price,packs.287.prices.1.fromPacks,packs.287.content.form,packs.287.content.unit,packs.287.content.sheet.widthMm,packs.287.content.sheet.lengthMm,packs.287.content.material,packs.287.content.quantity,packs.287.content.thicknessMm,packs.287.oversize,packs.287.supplier,packs.287.hazardous,packs.288.sku,packs.288.name,packs.288.stock,packs.288.massKg,packs.288.prices.0.price,packs.288.prices.0.fromPacks,packs.288.prices.1.price,packs.288.prices.1.fromPacks,packs.288.content.form,packs.288.content.unit,packs.288.content.sheet.widthMm,packs.288.content.sheet.lengthMm,packs.288.content.material,packs.288.content.quantity,packs.288.content.thicknessMm,packs.288.oversize,packs.288.supplier,packs.288.hazardous,packs.289.sku,packs.289.name,packs.289.massKg,packs.289.prices.0.price,packs.289.prices.0.fromPacks,packs.289.prices.1.price,packs.289.prices.1.fromPacks,packs.289.prices.2.price,packs.289.prices.2.fromPacks,packs.289.content.form,packs.289.content.unit,packs.289.content.sheet.widthMm,packs.289.content.sheet.lengthMm,packs.289.content.material,packs.289.content.quantity,packs.289.content.thicknessMm,packs.289.oversize,packs.289.supplier,packs.289.hazardous,packs.290.sku,packs.290.name,packs.290.cutFee,packs.290.massKg,packs.290.prices.0.price,packs.290.prices.0.fromPacks,packs.290.prices.1.price,packs.290.prices.1.fromPacks,packs.290.prices.2.price,packs.290.prices.2.fromPacks,packs.290.content.form,packs.290.content.unit,packs.290.content.sheet.widthMm,packs.290.content.sheet.lengthMm,packs.290.content.material,packs.290.content.quantity,packs.290.content.thicknessMm,packs.290.oversize,packs.290.supplier,packs.290.hazardous,packs.291.sku,packs.291.name,packs.291.cutFee,packs.291.massKg,packs.291.prices.0.price,packs.291.prices.0.fromPacks,packs.291.prices.1.price,packs.291.prices.1.fromPacks,packs.291.content.form,packs.291.content.unit,packs.291.content.sheet.widthMm,packs.291.content.sheet.lengthMm,packs.291.content.material,packs.291.content.quantity,packs.291.content.thicknessMm,packs.291.oversize,packs.291.supplier,packs.291.hazardous,packs.292.sku,packs.292.name,packs.292.stock,packs.292.massKg,packs.292.prices.0.price,packs.292.prices.0.fromPacks,packs.292.prices.1.price,packs.292.prices.1.fromPacks,packs.292.content.form,packs.292.content.unit,packs.292.content.sheet.widthMm,packs.292.content.sheet.lengthMm,packs.292.content.material,packs.292.content.quantity,packs.292.content.thicknessMm,packs.292.oversize,packs.292.supplier,packs.292.hazardous,packs.293.sku,packs.293.name,packs.293.cutFee,packs.293.massKg,packs.293.prices.0.price,packs.293.prices.0.fromPacks,packs.293.prices.1.price,packs.293.prices.1.fromPacks,packs.293.prices.2.price,packs.293.prices.2.fromPacks,packs.293.content.form,packs.293.content.unit,packs.293.content.sheet.widthMm,packs.293.content.sheet.lengthMm,packs.293.content.material,packs.293.content.quantity,packs.293.content.thicknessMm,packs.293.oversize,packs.293.supplier,packs.293.hazardous,packs.294.sku,packs.294.name,packs.294.cutFee,packs.294.massKg,packs.294.prices.0.price,packs.294.prices.0.fromPacks,packs.294.prices.1.price,packs.294.prices.1.fromPacks,packs.294.content.form,packs.294.content.unit,packs.294.content.sheet.widthMm,packs.294.content.sheet.lengthMm,packs.294.content.material,packs.294.content.quantity,packs.294.content.thicknessMm,packs.294.oversize,packs.294.supplier,packs.294.hazardous,packs.295.sku,packs.295.name,packs.295.stock,packs.295.massKg,packs.295.prices.0.price,packs.295.prices.0.fromPacks,packs.295.prices.1.price,packs.295.prices.1.fromPacks,packs.295.content.form,packs.295.content.unit,packs.295.content.sheet.widthMm,packs.295.content.sheet.lengthMm,packs.295.content.material,packs.295.content.quantity,packs.295.content.thicknessMm,packs.295.oversize,packs.295.supplier,packs.295.hazardous,packs.296.sku,packs.296.name,packs.296.massKg,packs.296.prices.0.price,packs.296.prices.0.fromPacks,packs.296.prices.1.price,packs.296.prices.1.fromPacks,packs.296.prices.2.price,packs.296.prices.2.fromPacks,packs.296.content.form,packs.296.content.unit,packs.296.content.sheet.widthMm,packs.296.content.sheet.lengthMm,packs.296.content.material,packs.296.content.quantity,packs.296.content.thicknessMm,packs.296.oversize,packs.296.supplier,packs.296.hazardous,packs.297.sku,packs.297.name,packs.297.cutFee,packs.297.massKg,packs.297.prices.0.price,packs.297.prices.0.fromPacks,packs.297.prices.1.price,packs.297.prices.1.fromPacks,packs.297.prices.2.price,packs.297.prices.2.fromPacks,packs.297.content.form,packs.297.content.unit,packs.297.content.sheet.widthMm,packs.297.content.sheet.lengthMm,packs.297.content.material,packs.297.content.quantity,packs.297.content.thicknessMm,packs.297.oversize,packs.297.supplier,packs.297.hazardous,packs.298.sku,packs.298.name,packs.298.cutFee,packs.298.massKg,packs.298.prices.0.price,packs.298.prices.0.fromPacks,packs.298.prices.1.price,packs.298.prices.1.fromPacks,packs.298.content.form,packs.298.content.unit,packs.298.content.sheet.widthMm,packs.298.content.sheet.lengthMm,packs.298.content.material,packs.298.content.quantity,packs.298.content.thicknessMm,packs.298.oversize,packs.298.supplier,packs.298.hazardous,packs.299.sku,packs.299.name,packs.299.stock,packs.299.massKg,packs.299.prices.0.price,packs.299.prices.0.fromPacks,packs.299.prices.1.price,packs.299.prices.1.fromPacks,packs.299.content.form,packs.299.content.unit,packs.299.content.sheet.widthMm,packs.299.content.sheet.lengthMm,packs.299.content.material,packs.299.content.quantity,packs.299.content.thicknessMm,packs.299.oversize,packs.299.supplier,packs.299.hazardous,packs.300.sku,packs.300.name,packs.300.cutFee,packs.300.massKg,packs.300.prices.0.price,packs.300.prices.0.fromPacks,packs.300.prices.1.price,packs.300.prices.1.fromPacks,packs.300.prices.2.price,packs.300.prices.2.fromPacks,packs.300.content.form,packs.300.content.unit,packs.300.content.sheet.widthMm,packs.300.content.sheet.lengthMm,packs.300.content.material,packs.300.content.quantity,packs.300.content.thicknessMm,packs.300.oversize,packs.300.supplier,packs.300.hazardous,packs.301.sku,packs.301.name,packs.301.cutFee,packs.301.massKg,packs.301.prices.0.price,packs.301.prices.0.fromPacks,packs.301.prices.1.price,packs.301.prices.1.fromPacks,packs.301.content.form,packs.301.content.unit,packs.301.content.sheet.widthMm,packs.301.content.sheet.lengthMm,packs.301.content.material,packs.301.content.quantity,packs.301.content.thicknessMm,packs.301.oversize,packs.301.supplier,packs.301.hazardous,packs.302.sku,packs.302.name,packs.302.massKg,packs.302.prices.0.price,packs.302.prices.0.fromPacks,packs.302.prices.1.price,packs.302.prices.1.fromPacks,packs.302.content.form,packs.302.content.unit,packs.302.content.sheet.widthMm,packs.302.content.sheet.lengthMm,packs.302.content.material,packs.302.content.quantity,packs.302.content.thicknessMm,packs.302.oversize,packs.302.supplier,packs.302.hazardous,packs.303.sku,packs.303.name,packs.303.massKg,packs.303.prices.0.price,packs.303.prices.0.fromPacks,packs.303.prices.1.price,packs.303.prices.1.fromPacks,packs.303.prices.2.price,packs.303.prices.2.fromPacks,packs.303.content.form,packs.303.content.unit,packs.303.content.sheet.widthMm,packs.303.content.sheet.lengthMm,packs.303.content.material,packs.303.content.quantity,packs.303.content.thicknessMm,packs.303.oversize,packs.303.supplier,packs.303.hazardous,packs.304.sku,packs.304.name,packs.304.cutFee,packs.304.massKg,packs.304.prices.0.price,packs.304.prices.0.fromPacks,packs.304.prices.1.price,packs.304.prices.1.fromPacks,packs.304.prices.2.price,packs.304.prices.2.fromPacks,packs.304.content.form,packs.304.content.unit,packs.304.content.sheet.widthMm,packs.304.content.sheet.lengthMm,packs.304.content.material,packs.304.content.quantity,packs.304.content.thicknessMm,packs.304.oversize,packs.304.supplier,packs.304.hazardous,packs.305.sku,packs.305.name,packs.305.cutFee,packs.305.massKg,packs.305.prices.0.price,packs.305.prices.0.fromPacks,packs.305.prices.1.price,packs.305.prices.1.fromPacks,packs.305.content.form,packs.305.content.unit,packs.305.content.sheet.widthMm,packs.305.content.sheet.lengthMm,packs.305.content.material,packs.305.content.quantity,packs.305.content.thicknessMm,packs.305.oversize,packs.305.supplier,packs.305.hazardous,packs.306.sku,packs.306.name,packs.306.massKg,packs.306.prices.0.price,packs.306.prices.0.fromPacks,packs.306.prices.1.price,packs.306.prices.1.fromPacks,packs.306.content.form,packs.306.content.unit,packs.306.content.sheet.widthMm,packs.306.content.sheet.lengthMm,packs.306.content.material,packs.306.content.quantity,packs.306.content.thicknessMm,packs.306.oversize,packs.306.supplier,packs.306.hazardous,packs.307.sku,packs.307.name,packs.307.cutFee,packs.307.massKg,packs.307.prices.0.price,packs.307.prices.0.fromPacks,packs.307.prices.1.price,packs.307.prices.1.fromPacks,packs.307.prices.2.price,packs.307.prices.2.fromPacks,packs.307.content.form,packs.307.content.unit,packs.307.content.sheet.widthMm,packs.307.content.sheet.lengthMm,packs.307.content.material,packs.307.content.quantity,packs.307.content.thicknessMm,packs.307.oversize,packs.307.supplier,packs.307.hazardous,packs.308.sku,packs.308.name,packs.308.cutFee,packs.308.massKg,packs.308.prices.0.price,packs.308.prices.0.fromPacks,packs.308.prices.1.price,packs.308.prices.1.fromPacks,packs.308.content.form,packs.308.content.unit,packs.308.content.sheet.widthMm,packs.308.content.sheet.lengthMm,packs.308.content.material,packs.308.content.quantity,packs.308.content.thicknessMm,packs.308.oversize,packs.308.supplier,packs.308.hazardous,packs.309.sku,packs.309.name,packs.309.massKg,packs.309.prices.0.price,packs.309.prices.0.fromPacks,packs.309.prices.1.price,packs.309.prices.1.fromPacks,packs.309.content.form,packs.309.content.unit,packs.309.content.sheet.widthMm,packs.309.content.sheet.lengthMm,packs.309.content.material,packs.309.content.quantity,packs.309.content.thicknessMm,packs.309.oversize,packs.309.supplier,packs.309.hazardous,packs.310.sku,packs.310.name,packs.310.massKg,packs.310.prices.0.price,packs.310.prices.0.fromPacks,packs.310.prices.1.price,packs.310.prices.1.fromPacks,packs.310.prices.2.price,packs.310.prices.2.fromPacks,packs.310.content.form,packs.310.content.unit,packs.310.content.sheet.widthMm,packs.310.content.sheet.lengthMm,packs.310.content.material,packs.310.content.quantity,packs.310.content.thicknessMm,packs.310.oversize,packs.310.supplier,packs.310.hazardous,packs.311.sku,packs.311.name,packs.311.cutFee,packs.311.massKg,packs.311.prices.0.price,packs.311.prices.0.fromPacks,packs.311.prices.1.price,packs.311.prices.1.fromPacks,packs.311.prices.2.price,packs.311.prices.2.fromPacks,packs.311.content.form,packs.311.content.unit,packs.311.content.sheet.widthMm,packs.311.content.sheet.lengthMm,packs.311.content.material,packs.311.content.quantity,packs.311.content.thicknessMm,packs.311.oversize,packs.311.supplier,packs.311.hazardous,packs.312.sku,packs.312.name,packs.312.cutFee,packs.312.massKg,packs.312.prices.0.price,packs.312.prices.0.fromPacks,packs.312.prices.1.price,packs.312.prices.1.fromPacks,packs.312.content.form,packs.312.content.unit,packs.312.content.sheet.widthMm,packs.312.content.sheet.lengthMm,packs.312.content.material,packs.312.content.quantity,packs.312.content.thicknessMm,packs.312.oversize,packs.312.supplier,packs.312.hazardous,packs.313.sku,packs.313.name,packs.313.massKg,packs.313.prices.0.price,packs.313.prices.0.fromPacks,packs.313.prices.1.price,packs.313.prices.1.fromPacks,packs.313.content.form,packs.313.content.unit,packs.313.content.sheet.widthMm,packs.313.content.sheet.lengthMm,packs.313.content.material,packs.313.content.quantity,packs.313.content.thicknessMm,packs.313.oversize,packs.313.supplier,packs.313.hazardous,packs.314.sku,packs.314.name,packs.314.cutFee,packs.314.massKg,packs.314.prices.0.price,packs.314.prices.0.fromPacks,packs.314.prices.1.price,packs.314.prices.1.fromPacks,packs.314.prices.2.price,packs.314.prices.2.fromPacks,packs.314.content.form,packs.314.content.unit,packs.314.content.sheet.widthMm,packs.314.content.sheet.lengthMm,packs.314.content.material,packs.314.content.quantity,packs.314.content.thicknessMm,packs.314.oversize,packs.314.supplier,packs.314.hazardous,packs.315.sku,packs.315.name,packs.315.cutFee,packs.315.massKg,packs.315.prices.0.price,packs.315.prices.0.fromPacks,packs.315.prices.1.price,packs.315.prices.1.fromPacks,packs.315.content.form,packs.315.content.unit,packs.315.content.sheet.widthMm,packs.315.content.sheet.lengthMm,packs.315.content.material,packs.315.content.quantity,packs.315.content.thicknessMm,packs.315.oversize,packs.315.supplier,packs.315.hazardous,packs.316.sku,packs.316.name,packs.316.massKg,packs.316.prices.0.price,packs.316.prices.0.fromPacks,packs.316.prices.1.price,packs.316.prices.1.fromPacks,packs.316.content.form,packs.316.content.unit,packs.316.content.sheet.widthMm,packs.316.content.sheet.lengthMm,packs.316.content.material,packs.316.content.quantity,packs.316.content.thicknessMm,packs.316.oversize,packs.316.supplier,packs.316.hazardous,packs.317.sku,packs.317.name,packs.317.massKg,packs.317.prices.0.price,packs.317.prices.0.fromPacks,packs.317.prices.1.price,packs.317.prices.1.fromPacks,packs.317.prices.2.price,packs.317.prices.2.fromPacks,packs.317.content.form,packs.317.content.unit,packs.317.content.sheet.widthMm,packs.317.content.sheet.lengthMm,packs.317.content.material,packs.317.content.quantity,packs.317.content.thicknessMm,packs.317.oversize,packs.317.supplier,packs.317.hazardous,packs.318.sku,packs.318.name,packs.318.cutFee,packs.318.massKg,packs.318.prices.0.price,packs.318.prices.0.fromPacks,packs.318.prices.1.price,packs.318.prices.1.fromPacks,packs.318.prices.2.price,packs.318.prices.2.fromPacks,packs.318.content.form,packs.318.content.unit,packs.318.content.sheet.widthMm,packs.318.content.sheet.lengthMm,packs.318.content.material,packs.318.content.quantity,packs.318.content.thicknessMm,packs.318.oversize,packs.318.supplier,packs.318.hazardous,packs.319.sku,packs.319.name,packs.319.cutFee,packs.319.massKg,packs.319.prices.0.price,packs.319.prices.0.fromPacks,packs.319.prices.1.price,packs.319.prices.1.fromPacks,packs.319.content.form,packs.319.content.unit,packs.319.content.sheet.widthMm,packs.319.content.sheet.lengthMm,packs.319.content.material,packs.319.content.quantity,packs.319.content.thicknessMm,packs.319.oversize,packs.319.supplier,packs.319.hazardous,packs.320.sku,packs.320.name,packs.320.massKg,packs.320.prices.0.price,packs.320.prices.0.fromPacks,packs.320.prices.1.price,packs.320.prices.1.fromPacks,packs.320.content.form,packs.320.content.unit,packs.320.content.sheet.widthMm,packs.320.content.sheet.lengthMm,packs.320.content.material,packs.320.content.quantity,packs.320.content.thicknessMm,packs.320.oversize,packs.320.supplier,packs.320.hazardous,packs.321.sku,packs.321.name,packs.321.cutFee,packs.321.massKg,packs.321.prices.0.price,packs.321.prices.0.fromPacks,packs.321.prices.1.price,packs.321.prices.1.fromPacks,packs.321.prices.2.price,packs.321.prices.2.fromPacks,packs.321.content.form,packs.321.content.unit,packs.321.content.sheet.widthMm,packs.321.content.sheet.lengthMm,packs.321.content.material,packs.321.content.quantity,packs.321.content.thicknessMm,packs.321.oversize,packs.321.supplier,packs.321.hazardous,packs.322.sku,packs.322.name,packs.322.cutFee,packs.322.massKg,packs.322.prices.0.price,packs.322.prices.0.fromPacks,packs.322.prices.1.price,packs.322.prices.1.fromPacks,packs.322.content.form,packs.322.content.unit,packs.322.content.sheet.widthMm,packs.322.content.sheet.lengthMm,packs.322.content.material,packs.322.content.quantity,packs.322.content.thicknessMm,packs.322.oversize,packs.322.supplier,packs.322.hazardous,packs.323.sku,packs.323.name,packs.323.massKg,packs.323.prices.0.price,packs.323.prices.0.fromPacks,packs.323.prices.1.price,packs.323.prices.1.fromPacks,packs.323.content.form,packs.323.content.unit,packs.323.content.sheet.widthMm,packs.323.content.sheet.lengthMm,packs.323.content.material,packs.323.content.quantity,packs.323.content.thicknessMm,packs.323.oversize,packs.323.supplier,packs.323.hazardous,packs.324.sku,packs.324.name,packs.324.massKg,packs.324.prices.0.price,packs.324.prices.0.fromPacks,packs.324.prices.1.price,packs.324.prices.1.fromPacks,packs.324.prices.2.price,packs.324.prices.2.fromPacks,packs.324.content.form,packs.324.content.unit,packs.324.content.sheet.widthMm,packs.324.content.sheet.lengthMm,packs.324.content.material,packs.324.content.quantity,packs.324.content.thicknessMm,packs.324.oversize,packs.324.supplier,packs.324.hazardous,packs.325.sku,packs.325.name,packs.325.cutFee,packs.325.massKg,packs.325.prices.0.price,packs.325.prices.0.fromPacks,packs.325.prices.1.price,packs.325.prices.1.fromPacks,packs.325.prices.2.price,packs.325.prices.2.fromPacks,packs.325.content.form,packs.325.content.unit,packs.325.content.sheet.widthMm,packs.325.content.sheet.lengthMm,packs.325.content.material,packs.325.content.quantity,packs.325.content.thicknessMm,packs.325.oversize,packs.325.supplier,packs.325.hazardous,packs.326.sku,packs.326.name,packs.326.cutFee,packs.326.massKg,packs.326.prices.0.price,packs.326.prices.0.fromPacks,packs.326.prices.1.price,packs.326.prices.1.fromPacks,packs.326.content.form,packs.326.content.unit,packs.326.content.sheet.widthMm,packs.326.content.sheet.lengthMm,packs.326.content.material,packs.326.content.quantity,packs.326.content.thicknessMm,packs.326.oversize,packs.326.supplier,packs.326.hazardous,packs.327.sku,packs.327.name,packs.327.massKg,packs.327.prices.0.price,packs.327.prices.0.fromPacks,packs.327.prices.1.price,packs.327.prices.1.fromPacks,packs.327.content.form,packs.327.content.unit,packs.327.content.sheet.widthMm,packs.327.content.sheet.lengthMm,packs.327.content.material,packs.327.content.quantity,packs.327.content.thicknessMm,packs.327.oversize,packs.327.supplier,packs.327.hazardous,packs.328.sku,packs.328.name,packs.328.cutFee,packs.328.massKg,packs.328.prices.0.price,packs.328.prices.0.fromPacks,packs.328.prices.1.price,packs.328.prices.1.fromPacks,packs.328.prices.2.price,packs.328.prices.2.fromPacks,packs.328.content.form,packs.328.content.unit,packs.328.content.sheet.widthMm,packs.328.content.sheet.lengthMm,packs.328.content.material,packs.328.content.quantity,packs.328.content.thicknessMm,packs.328.oversize,packs.328.supplier,packs.328.hazardous,packs.329.sku,packs.329.name,packs.329.cutFee,packs.329.massKg,packs.329.prices.0.price,packs.329.prices.0.fromPacks,packs.329.prices.1.price,packs.329.prices.1.fromPacks,packs.329.content.form,packs.329.content.unit,packs.329.content.sheet.widthMm,packs.329.content.sheet.lengthMm,packs.329.content.material,packs.329.content.quantity,packs.329.content.thicknessMm,packs.329.oversize,packs.329.supplier,packs.329.hazardous,packs.330.sku,packs.330.name,packs.330.stock,packs.330.massKg,packs.330.prices.0.price,packs.330.prices.0.fromPacks,packs.330.prices.1.price,packs.330.prices.1.fromPacks,packs.330.content.form,packs.330.content.unit,packs.330.content.sheet.widthMm,packs.330.content.sheet.lengthMm,packs.330.content.material,packs.330.content.quantity,packs.330.content.thicknessMm,packs.330.oversize,packs.330.supplier,packs.330.hazardous,packs.331.sku,packs.331.name,packs.331.massKg,packs.331.prices.0.price,packs.331.prices.0.fromPacks,packs.331.prices.1.price,packs.331.prices.1.fromPacks,packs.331.prices.2.price,packs.331.prices.2.fromPacks,packs.331.content.form,packs.331.content.unit,packs.331.content.sheet.widthMm,packs.331.content.sheet.lengthMm,packs.331.content.material,packs.331.content.quantity,packs.331.content.thicknessMm,packs.331.oversize,packs.331.supplier,packs.331.hazardous,packs.332.sku,packs.332.name,packs.332.cutFee,packs.332.massKg,packs.332.prices.0.price,packs.332.prices.0.fromPacks,packs.332.prices.1.price,packs.332.prices.1.fromPacks,packs.332.prices.2.price,packs.332.prices.2.fromPacks,packs.332.content.form,packs.332.content.unit,packs.332.content.sheet.widthMm,packs.332.content.sheet.lengthMm,packs.332.content.material,packs.332.content.quantity,packs.332.content.thicknessMm,packs.332.oversize,packs.332.supplier,packs.332.hazardous,packs.333.sku,packs.333.name,packs.333.cutFee,packs.333.massKg,packs.333.prices.0.price,packs.333.prices.0.fromPacks,packs.333.prices.1.price,packs.333.prices.1.fromPacks,packs.333.content.form,packs.333.content.unit,packs.333.content.sheet.widthMm,packs.333.content.sheet.lengthMm,packs.333.content.material,packs.333.content.quantity,packs.333.content.thicknessMm,packs.333.oversize,packs.333.supplier,packs.333.hazardous,packs.334.sku,packs.334.name,packs.334.stock,packs.334.massKg,packs.334.prices.0.price,packs.334.prices.0.fromPacks,packs.334.prices.1.price,packs.334.prices.1.fromPacks,packs.334.content.form,packs.334.content.unit,packs.334.content.sheet.widthMm,packs.334.content.sheet.lengthMm,packs.334.content.material,packs.334.content.quantity,packs.334.content.thicknessMm,packs.334.oversize,packs.334.supplier,packs.334.hazardous,packs.335.sku,packs.335.name,packs.335.cutFee,packs.335.massKg,packs.335.prices.0.price,packs.335.prices.0.fromPacks,packs.335.prices.1.price,packs.335.prices.1.fromPacks,packs.335.prices.2.price,packs.335.prices.2.fromPacks,packs.335.content.form,packs.335.content.unit,packs.335.content.sheet.widthMm,packs.335.content.sheet.lengthMm,packs.335.content.material,packs.335.content.quantity,packs.335.content.thicknessMm,packs.335.oversize,packs.335.supplier,packs.335.hazardous,packs.336.sku,packs.336.name,packs.336.cutFee,packs.336.massKg,packs.336.prices.0.price,packs.336.prices.0.fromPacks,packs.336.prices.1.price,packs.336.prices.1.fromPacks,packs.336.content.form,packs.336.content.unit,packs.336.content.sheet.widthMm,packs.336.content.sheet.lengthMm,packs.336.content.material,packs.336.content.quantity,packs.336.content.thicknessMm,packs.336.oversize,packs.336.supplier,packs.336.hazardous,packs.337.sku,packs.337.name,packs.337.stock,packs.337.massKg,packs.337.prices.0.price,packs.337.prices.0.fromPacks,packs.337.prices.1.price,packs.337.prices.1.fromPacks,packs.337.content.form,packs.337.content.unit,packs.337.content.sheet.widthMm,packs.337.content.sheet.lengthMm,packs.337.content.material,packs.337.content.quantity,packs.337.content.thicknessMm,packs.337.oversize,packs.337.supplier,packs.337.hazardous,packs.338.sku,packs.338.name,packs.338.massKg,packs.338.prices.0.price,packs.338.prices.0.fromPacks,packs.338.prices.1.price,packs.338.prices.1.fromPacks,packs.338.prices.2.price,packs.338.prices.2.fromPacks,packs.338.content.form,packs.338.content.unit,packs.338.content.sheet.widthMm,packs.338.content.sheet.lengthMm,packs.338.content.material,packs.338.content.quantity,packs.338.content.thicknessMm,packs.338.oversize,packs.338.supplier,packs.338.hazardous,packs.339.sku,packs.339.name,packs.339.cutFee,packs.339.massKg,packs.339.prices.0.price,packs.339.prices.0.fromPacks,packs.339.prices.1.price,packs.339.prices.1.fromPacks,packs.339.prices.2.price,packs.339.prices.2.fromPacks,packs.339.content.form,packs.339.content.unit,packs.339.content.sheet.widthMm,packs.339.content.sheet.lengthMm,packs.339.content.material,packs.339.content.quantity,packs.339.content.thicknessMm,packs.339.oversize,packs.339.supplier,packs.339.hazardous,packs.340.sku,packs.340.name,packs.340.cutFee,packs.340.massKg,packs.340.prices.0.price,packs.340.prices.0.fromPacks,packs.340.prices.1.price,packs.340.prices.1.fromPacks,packs.340.content.form,packs.340.content.unit,packs.340.content.sheet.widthMm,packs.340.content.sheet.lengthMm,packs.340.content.material,packs.340.content.quantity,packs.340.content.thicknessMm,packs.340.oversize,packs.340.supplier,packs.340.hazardous,packs.341.sku,packs.341.name,packs.341.stock,packs.341.massKg,packs.341.prices.0.price,packs.341.prices.0.fromPacks,packs.341.prices.1.price,packs.341.prices.1.fromPacks,packs.341.content.form,packs.341.content.unit,packs.341.content.sheet.widthMm,packs.341.content.sheet.lengthMm,packs.341.content.material,packs.341.content.quantity,packs.341.content.thicknessMm,packs.341.oversize,packs.341.supplier,packs.341.hazardous,packs.342.sku,packs.342.name,packs.342.cutFee,packs.342.massKg,packs.342.prices.0.price,packs.342.prices.0.fromPacks,packs.342.prices.1.price,packs.342.prices.1.fromPacks,packs.342.prices.2.price,packs.342.prices.2.fromPacks,packs.342.content.form,packs.342.content.unit,packs.342.content.sheet.widthMm,packs.342.content.sheet.lengthMm,packs.342.content.material,packs.342.content.quantity,packs.342.content.thicknessMm,packs.342.oversize,packs.342.supplier,packs.342.hazardous,packs.343.sku,packs.343.name,packs.343.cutFee,packs.343.massKg,packs.343.prices.0.price,packs.343.prices.0.fromPacks,packs.343.prices.1.price,packs.343.prices.1.fromPacks,packs.343.content.form,packs.343.content.unit,packs.343.content.sheet.widthMm,packs.343.content.sheet.lengthMm,packs.343.content.material,packs.343.content.quantity,packs.343.content.thicknessMm,packs.343.oversize,packs.343.supplier,packs.343.hazardous,packs.344.sku,packs.344.name,packs.344.massKg,packs.344.prices.0.price,packs.344.prices.0.fromPacks,packs.344.prices.1.price,packs.344.prices.1.fromPacks,packs.344.content.form,packs.344.content.unit,packs.344.content.sheet.widthMm,packs.344.content.sheet.lengthMm,packs.344.content.material,packs.344.content.quantity,packs.344.content.thicknessMm,packs.344.oversize,packs.344.supplier,packs.344.hazardous,packs.345.sku,packs.345.name,packs.345.massKg,packs.345.prices.0.price,packs.345.prices.0.fromPacks,packs.345.prices.1.price,packs.345.prices.1.fromPacks,packs.345.prices.2.price,packs.345.prices.2.fromPacks,packs.345.content.form,packs.345.content.unit,packs.345.content.sheet.widthMm,packs.345.content.sheet.lengthMm,packs.345.content.material,packs.345.content.quantity,packs.345.content.thicknessMm,packs.345.oversize,packs.345.supplier,packs.345.hazardous,packs.346.sku,packs.346.name,packs.346.cutFee,packs.346.massKg,packs.346.prices.0.price,packs.346.prices.0.fromPacks,packs.346.prices.1.price,packs.346.prices.1.fromPacks,packs.346.prices.2.price,packs.346.prices.2.fromPacks,packs.346.content.form,packs.346.content.unit,packs.346.content.sheet.widthMm,packs.346.content.sheet.lengthMm,packs.346.content.material,packs.346.content.quantity,packs.346.content.thicknessMm,packs.346.oversize,packs.346.supplier,packs.346.hazardous,packs.347.sku,packs.347.name,packs.347.cutFee,packs.347.massKg,packs.347.prices.0.price,packs.347.prices.0.fromPacks,packs.347.prices.1.price,packs.347.prices.1.fromPacks,packs.347.content.form,packs.347.content.unit,packs.347.content.sheet.widthMm,packs.347.content.sheet.lengthMm,packs.347.content.material,packs.347.content.quantity,packs.347.content.thicknessMm,packs.347.oversize,packs.347.supplier,packs.347.hazardous,packs.348.sku,packs.348.name,packs.348.massKg,packs.348.prices.0.price,packs.348.prices.0.fromPacks,packs.348.prices.1.price,packs.348.prices.1.fromPacks,packs.348.content.form,packs.348.content.unit,packs.348.content.sheet.widthMm,packs.348.content.sheet.lengthMm,packs.348.content.material,packs.348.content.quantity,packs.348.content.thicknessMm,packs.348.oversize,packs.348.supplier,packs.348.hazardous,packs.349.sku,packs.349.name,packs.349.massKg,packs.349.prices.0.price,packs.349.prices.0.fromPacks,packs.349.prices.1.price,packs.349.prices.1.fromPacks,packs.349.prices.2.price,packs.349.prices.2.fromPacks,packs.349.content.form,packs.349.content.unit,packs.349.content.sheet.widthMm,packs.349.content.sheet.lengthMm,packs.349.content.material,packs.349.content.quantity,packs.349.content.thicknessMm,packs.349.oversize,packs.349.supplier,packs.349.hazardous,packs.350.sku,packs.350.name,packs.350.cutFee,packs.350.massKg,packs.350.prices.0.price,packs.350.prices.0.fromPacks,packs.350.prices.1.price,packs.350.prices.1.fromPacks,packs.350.prices.2.price,packs.350.prices.2.fromPacks,packs.350.content.form,packs.350.content.unit,packs.350.content.sheet.widthMm,packs.350.content.sheet.lengthMm,packs.350.content.material,packs.350.content.quantity,packs.350.content.thicknessMm,packs.350.oversize,packs.350.supplier,packs.350.hazardous,packs.351.sku,packs.351.name,packs.351.cutFee,packs.351.massKg,packs.351.prices.0.price,packs.351.prices.0.fromPacks,packs.351.prices.1.price,packs.351.prices.1.fromPacks,packs.351.content.form,packs.351.content.unit,packs.351.content.sheet.widthMm,packs.351.content.sheet.lengthMm,packs.351.content.material,packs.351.content.quantity,packs.351.content.thicknessMm,packs.351.oversize,packs.351.supplier,packs.351.hazardous,packs.352.sku,packs.352.name,packs.352.massKg,packs.352.prices.0.price,packs.352.prices.0.fromPacks,packs.352.prices.1.price,packs.352.prices.1.fromPacks,packs.352.content.form,packs.352.content.unit,packs.352.content.sheet.widthMm,packs.352.content.sheet.lengthMm,packs.352.content.material,packs.352.content.quantity,packs.352.content.thicknessMm,packs.352.oversize,packs.352.supplier,packs.352.hazardous,packs.353.sku,packs.353.name,packs.353.massKg,packs.353.prices.0.price,packs.353.prices.0.fromPacks,packs.353.prices.1.price,packs.353.prices.1.fromPacks,packs.353.prices.2.price,packs.353.prices.2.fromPacks,packs.353.content.form,packs.353.content.unit,packs.353.content.sheet.widthMm,packs.353.content.sheet.lengthMm,packs.353.content.material,packs.353.content.quantity,packs.353.content.thicknessMm,packs.353.oversize,packs.353.supplier,packs.353.hazardous,packs.354.sku,packs.354.name,packs.354.cutFee,packs.354.massKg,packs.354.prices.0.price,packs.354.prices.0.fromPacks,packs.354.prices.1.price,packs.354.prices.1.fromPacks,packs.354.prices.2.price,packs.354.prices.2.fromPacks,packs.354.content.form,packs.354.content.unit,packs.354.content.sheet.widthMm,packs.354.content.sheet.lengthMm,packs.354.content.material,packs.354.content.quantity,packs.354.content.thicknessMm,packs.354.oversize,packs.354.supplier,packs.354.hazardous,packs.355.sku,packs.355.name,packs.355.cutFee,packs.355.massKg,packs.355.prices.0.price,packs.355.prices.0.fromPacks,packs.355.prices.1.price,packs.355.prices.1.fromPacks,packs.355.content.form,packs.355.content.unit,packs.355.content.sheet.widthMm,packs.355.content.sheet.lengthMm,packs.355.content.material,packs.355.content.quantity,packs.355.content.thicknessMm,packs.355.oversize,packs.355.supplier,packs.355.hazardous,packs.356.sku,packs.356.name,packs.356.massKg,packs.356.prices.0.price,packs.356.prices.0.fromPacks,packs.356.prices.1.price,packs.356.prices.1.fromPacks,packs.356.content.form,packs.356.content.unit,packs.356.content.sheet.widthMm,packs.356.content.sheet.lengthMm,packs.356.content.material,packs.356.content.quantity,packs.356.content.thicknessMm,packs.356.oversize,packs.356.supplier,packs.356.hazardous,packs.357.sku,packs.357.name,packs.357.massKg,packs.357.prices.0.price,packs.357.prices.0.fromPacks,packs.357.prices.1.price,packs.357.prices.1.fromPacks,packs.357.prices.2.price,packs.357.prices.2.fromPacks,packs.357.content.form,packs.357.content.unit,packs.357.content.sheet.widthMm,packs.357.content.sheet.lengthMm,packs.357.content.material,packs.357.content.quantity,packs.357.content.thicknessMm,packs.357.oversize,packs.357.supplier,packs.357.hazardous,packs.358.sku,packs.358.name,packs.358.cutFee,packs.358.massKg,packs.358.prices.0.price,packs.358.prices.0.fromPacks,packs.358.prices.1.price,packs.358.prices.1.fromPacks,packs.358.prices.2.price,packs.358.prices.2.fromPacks,packs.358.content.form,packs.358.content.unit,packs.358.content.sheet.widthMm,packs.358.content.sheet.lengthMm,packs.358.content.material,packs.358.content.quantity,packs.358.content.thicknessMm,packs.358.oversize,packs.358.supplier,packs.358.hazardous,packs.359.sku,packs.359.name,packs.359.cutFee,packs.359.massKg,packs.359.prices.0.price,packs.359.prices.0.fromPacks,packs.359.prices.1.price,packs.359.prices.1.fromPacks,packs.359.content.form,packs.359.content.unit,packs.359.content.sheet.widthMm,packs.359.content.sheet.lengthMm,packs.359.content.material,packs.359.content.quantity,packs.359.content.thicknessMm,packs.359.oversize,packs.359.supplier,packs.359.hazardous,packs.360.sku,packs.360.name,packs.360.stock,packs.360.massKg,packs.360.prices.0.price,packs.360.prices.0.fromPacks,packs.360.prices.1.price,packs.360.prices.1.fromPacks,packs.360.content.form,packs.360.content.unit,packs.360.content.sheet.widthMm,packs.360.content.sheet.lengthMm,packs.360.content.material,packs.360.content.quantity,packs.360.content.thicknessMm,packs.360.oversize,packs.360.supplier,packs.360.hazardous,packs.361.sku,packs.361.name,packs.361.massKg,packs.361.prices.0.price,packs.361.prices.0.fromPacks,packs.361.prices.1.price,packs.361.prices.1.fromPacks,packs.361.prices.2.price,packs.361.prices.2.fromPacks,packs.361.content.form,packs.361.content.unit,packs.361.content.sheet.widthMm,packs.361.content.sheet.lengthMm,packs.361.content.material,packs.361.content.quantity,packs.361.content.thicknessMm,packs.361.oversize,packs.361.supplier,packs.361.hazardous,packs.362.sku,packs.362.name,packs.362.cutFee,packs.362.massKg,packs.362.prices.0.price,packs.362.prices.0.fromPacks,packs.362.prices.1.price,packs.362.prices.1.fromPacks,packs.362.prices.2.price,packs.362.prices.2.fromPacks,packs.362.content.form,packs.362.content.unit,packs.362.content.sheet.widthMm,packs.362.content.sheet.lengthMm,packs.362.content.material,packs.362.content.quantity,packs.362.content.thicknessMm,packs.362.oversize,packs.362.supplier,packs.362.hazardous,packs.363.sku,packs.363.name,packs.363.cutFee,packs.363.massKg,packs.363.prices.0.price,packs.363.prices.0.fromPacks,packs.363.prices.1.price,packs.363.prices.1.fromPacks,packs.363.content.form,packs.363.content.unit,packs.363.content.sheet.widthMm,packs.363.content.sheet.lengthMm,packs.363.content.material,packs.363.content.quantity,packs.363.content.thicknessMm,packs.363.oversize,packs.363.supplier,packs.363.hazardous,packs.364.sku,packs.364.name,packs.364.stock,packs.364.massKg,packs.364.prices.0.price,packs.364.prices.0.fromPacks,packs.364.prices.1.price,packs.364.prices.1.fromPacks,packs.364.content.form,packs.364.content.unit,packs.364.content.sheet.widthMm,packs.364.content.sheet.lengthMm,packs.364.content.material,packs.364.content.quantity,packs.364.content.thicknessMm,packs.364.oversize,packs.364.supplier,packs.364.hazardous,packs.365.sku,packs.365.name,packs.365.massKg,packs.365.prices.0.price,packs.365.prices.0.fromPacks,packs.365.prices.1.price,packs.365.prices.1.fromPacks,packs.365.prices.2.price,packs.365.prices.2.fromPacks,packs.365.content.form,packs.365.content.unit,packs.365.content.sheet.widthMm,packs.365.content.sheet.lengthMm,packs.365.content.material,packs.365.content.quantity,packs.365.content.thicknessMm,packs.365.oversize,packs.365.supplier,packs.365.hazardous,packs.366.sku,packs.366.name,packs.366.cutFee,packs.366.massKg,packs.366.prices.0.price,packs.366.prices.0.fromPacks,packs.366.prices.1.price,packs.366.prices.1.fromPacks,packs.366.prices.2.price,packs.366.prices.2.fromPacks,packs.366.content.form,packs.366.content.unit,packs.366.content.sheet.widthMm,packs.366.content.sheet.lengthMm,packs.366.content.material,packs.366.content.quantity,packs.366.content.thicknessMm,packs.366.oversize,packs.366.supplier,packs.366.hazardous,packs.367.sku,packs.367.name,packs.367.cutFee,packs.367.massKg,packs.367.prices.0.price,packs.367.prices.0.fromPacks,packs.367.prices.1.price,packs.367.prices.1.fromPacks,packs.367.content.form,packs.367.content.unit,packs.367.content.sheet.widthMm,packs.367.content.sheet.lengthMm,packs.367.content.material,packs.367.content.quantity,packs.367.content.thicknessMm,packs.367.oversize,packs.367.supplier,packs.367.hazardous,packs.368.sku,packs.368.name,packs.368.massKg,packs.368.prices.0.price,packs.368.prices.0.fromPacks,packs.368.prices.1.price,packs.368.prices.1.fromPacks,packs.368.content.form,packs.368.content.unit,packs.368.content.sheet.widthMm,packs.368.content.sheet.lengthMm,packs.368.content.material,packs.368.content.quantity,packs.368.content.thicknessMm,packs.368.oversize,packs.368.supplier,packs.368.hazardous,packs.369.sku,packs.369.name,packs.369.massKg,packs.369.prices.0.price,packs.369.prices.0.fromPacks,packs.369.prices.1.price,packs.369.prices.1.fromPacks,packs.369.prices.2.price,packs.369.prices.2.fromPacks,packs.369.content.form,packs.369.content.unit,packs.369.content.sheet.widthMm,packs.369.content.sheet.lengthMm,packs.369.content.material,packs.369.content.quantity,packs.369.content.thicknessMm,packs.369.oversize,packs.369.supplier,packs.369.hazardous,packs.370.sku,packs.370.name,packs.370.cutFee,packs.370.massKg,packs.370.prices.0.price,packs.370.prices.0.fromPacks,packs.370.prices.1.price,packs.370.prices.1.fromPacks,packs.370.prices.2.price,packs.370.prices.2.fromPacks,packs.370.content.form,packs.370.content.unit,packs.370.content.sheet.widthMm,packs.370.content.sheet.lengthMm,packs.370.content.material,packs.370.content.quantity,packs.370.content.thicknessMm,packs.370.oversize,packs.370.supplier,packs.370.hazardous,packs.371.sku,packs.371.name,packs.371.cutFee,packs.371.massKg,packs.371.prices.0.price,packs.371.prices.0.fromPacks,packs.371.prices.1.price,packs.371.prices.1.fromPacks,packs.371.content.form,packs.371.content.unit,packs.371.content.sheet.widthMm,packs.371.content.sheet.lengthMm,packs.371.content.material,packs.371.content.quantity,packs.371.content.thicknessMm,packs.371.oversize,packs.371.supplier,packs.371.hazardous,packs.372.sku,packs.372.name,packs.372.massKg,packs.372.prices.0.price,packs.372.prices.0.fromPacks,packs.372.prices.1.price,packs.372.prices.1.fromPacks,packs.372.content.form,packs.372.content.unit,packs.372.content.sheet.widthMm,packs.372.content.sheet.lengthMm,packs.372.content.material,packs.372.content.quantity,packs.372.content.thicknessMm,packs.372.oversize,packs.372.supplier,packs.372.hazardous,packs.373.sku,packs.373.name,packs.373.cutFee,packs.373.massKg,packs.373.prices.0.price,packs.373.prices.0.fromPacks,packs.373.prices.1.price,packs.373.prices.1.fromPacks,packs.373.prices.2.price,packs.373.prices.2.fromPacks,packs.373.content.form,packs.373.content.unit,packs.373.content.sheet.widthMm,packs.373.content.sheet.lengthMm,packs.373.content.material,packs.373.content.quantity,packs.373.content.thicknessMm,packs.373.oversize,packs.373.supplier,packs.373.hazardous,packs.374.sku,packs.374.name,packs.374.cutFee,packs.374.massKg,packs.374.prices.0.price,packs.374.prices.0.fromPacks,packs.374.prices.1.price,packs.374.prices.1.fromPacks,packs.374.content.form,packs.374.content.unit,packs.374.content.sheet.widthMm,packs.374.content.sheet.lengthMm,packs.374.content.material,packs.374.content.quantity,packs.374.content.thicknessMm,packs.374.oversize,packs.374.supplier,packs.374.hazardous,packs.375.sku,packs.375.name,packs.375.massKg,packs.375.prices.0.price,packs.375.prices.0.fromPacks,packs.375.prices.1.price,packs.375.prices.1.fromPacks,packs.375.content.form,packs.375.content.unit,packs.375.content.sheet.widthMm,packs.375.content.sheet.lengthMm,packs.375.content.material,packs.375.content.quantity,packs.375.content.thicknessMm,packs.375.oversize,packs.375.supplier,packs.375.hazardous,packs.376.sku,packs.376.name,packs.376.massKg,packs.376.prices.0.price,packs.376.prices.0.fromPacks,packs.376.prices.1.price,packs.376.prices.1.fromPacks,packs.376.prices.2.price,packs.376.prices.2.fromPacks,packs.376.content.form,packs.376.content.unit,packs.376.content.sheet.widthMm,packs.376.content.sheet.lengthMm,packs.376.content.material,packs.376.content.quantity,packs.376.content.thicknessMm,packs.376.oversize,packs.376.supplier,packs.376.hazardous,packs.377.sku,packs.377.name,packs.377.cutFee,packs.377.massKg,packs.377.prices.0.price,packs.377.prices.0.fromPacks,packs.377.prices.1.price,packs.377.prices.1.fromPacks,packs.377.prices.2.price,packs.377.prices.2.fromPacks,packs.377.content.form,packs.377.content.unit,packs.377.content.sheet.widthMm,packs.377.content.sheet.lengthMm,packs.377.content.material,packs.377.content.quantity,packs.377.content.thicknessMm,packs.377.oversize,packs.377.supplier,packs.377.hazardous,packs.378.sku,packs.378.name,packs.378.cutFee,packs.378.massKg,packs.378.prices.0.price,packs.378.prices.0.fromPacks,packs.378.prices.1.price,packs.378.prices.1.fromPacks,packs.378.content.form,packs.378.content.unit,packs.378.content.sheet.widthMm,packs.378.content.sheet.lengthMm,packs.378.content.material,packs.378.content.quantity,packs.378.content.thicknessMm,packs.378.oversize,packs.378.supplier,packs.378.hazardous,packs.379.sku,packs.379.name,packs.379.massKg,packs.379.prices.0.price,packs.379.prices.0.fromPacks,packs.379.prices.1.price,packs.379.prices.1.fromPacks,packs.379.content.form,packs.379.content.unit,packs.379.content.sheet.widthMm,packs.379.content.sheet.lengthMm,packs.379.content.material,packs.379.content.quantity,packs.379.content.thicknessMm,packs.379.oversize,packs.379.supplier,packs.379.hazardous,packs.380.sku,packs.380.name,packs.380.cutFee,packs.380.massKg,packs.380.prices.0.price,packs.380.prices.0.fromPacks,packs.380.prices.1.price,packs.380.prices.1.fromPacks,packs.380.prices.2.price,packs.380.prices.2.fromPacks,packs.380.content.form,packs.380.content.unit,packs.380.content.sheet.widthMm,packs.380.content.sheet.lengthMm,packs.380.content.material,packs.380.content.quantity,packs.380.content.thicknessMm,packs.380.oversize,packs.380.supplier,packs.380.hazardous,packs.381.sku,packs.381.name,packs.381.cutFee,packs.381.massKg,packs.381.prices.0.price,packs.381.prices.0.fromPacks,packs.381.prices.1.price,packs.381.prices.1.fromPacks,packs.381.content.form,packs.381.content.unit,packs.381.content.sheet.widthMm,packs.381.content.sheet.lengthMm,packs.381.content.material,packs.381.content.quantity,packs.381.content.thicknessMm,packs.381.oversize,packs.381.supplier,packs.381.hazardous,packs.382.sku,packs.382.name,packs.382.massKg,packs.382.prices.0.price,packs.382.prices.0.fromPacks,packs.382.prices.1.price,packs.382.prices.1.fromPacks,packs.382.content.form,packs.382.content.unit,packs.382.content.sheet.widthMm,packs.382.content.sheet.lengthMm,packs.382.content.material,packs.382.content.quantity,packs.382.content.thicknessMm,packs.382.oversize,packs.382.supplier,packs.382.hazardous,packs.383.sku,packs.383.name,packs.383.massKg,packs.383.prices.0.price,packs.383.prices.0.fromPacks,packs.383.prices.1.price,packs.383.prices.1.fromPacks,packs.383.prices.2.price,packs.383.prices.2.fromPacks,packs.383.content.form,packs.383.content.unit,packs.383.content.sheet.widthMm,packs.383.content.sheet.lengthMm,packs.383.content.material,packs.383.content.quantity,packs.383.content.thicknessMm,packs.383.oversize,packs.383.supplier,packs.383.hazardous,packs.384.sku,packs.384.name,packs.384.cutFee,packs.384.massKg,packs.384.prices.0.price,packs.384.prices.0.fromPacks,packs.384.prices.1.price,packs.384.prices.1.fromPacks,packs.384.prices.2.price,packs.384.prices.2.fromPacks,packs.384.content.form,packs.384.content.unit,packs.384.content.sheet.widthMm,packs.384.content.sheet.lengthMm,packs.384.content.material,packs.384.content.quantity,packs.384.content.thicknessMm,packs.384.oversize,packs.384.supplier,packs.384.hazardous,packs.385.sku,packs.385.name,packs.385.cutFee,packs.385.massKg,packs.385.prices.0.price,packs.385.prices.0.fromPacks,packs.385.prices.1.price,packs.385.prices.1.fromPacks,packs.385.content.form,packs.385.content.unit,packs.385.content.sheet.widthMm,packs.385.content.sheet.lengthMm,packs.385.content.material,packs.385.content.quantity,packs.385.content.thicknessMm,packs.385.oversize,packs.385.supplier,packs.385.hazardous,packs.386.sku,packs.386.name,packs.386.massKg,packs.386.prices.0.price,packs.386.prices.0.fromPacks,packs.386.prices.1.price,packs.386.prices.1.fromPacks,packs.386.content.form,packs.386.content.unit,packs.386.content.sheet.widthMm,packs.386.content.sheet.lengthMm,packs.386.content.material,packs.386.content.quantity,packs.386.content.thicknessMm,packs.386.oversize,packs.386.supplier,packs.386.hazardous,packs.387.sku,packs.387.name,packs.387.cutFee,packs.387.massKg,packs.387.prices.0.price,packs.387.prices.0.fromPacks,packs.387.prices.1.price,packs.387.prices.1.fromPacks,packs.387.prices.2.price,packs.387.prices.2.fromPacks,packs.387.content.form,packs.387.content.unit,packs.387.content.sheet.widthMm,packs.387.content.sheet.lengthMm,packs.387.content.material,packs.387.content.quantity,packs.387.content.thicknessMm,packs.387.oversize,packs.387.supplier,packs.387.hazardous,packs.388.sku,packs.388.name,packs.388.cutFee,packs.388.massKg,packs.388.prices.0.price,packs.388.prices.0.fromPacks,packs.388.prices.1.price,packs.388.prices.1.fromPacks,packs.388.content.form,packs.388.content.unit,packs.388.content.sheet.widthMm,packs.388.content.sheet.lengthMm,packs.388.content.material,packs.388.content.quantity,packs.388.content.thicknessMm,packs.388.oversize,packs.388.supplier,packs.388.hazardous,packs.389.sku,packs.389.name,packs.389.massKg,packs.389.prices.0.price,packs.389.prices.0.fromPacks,packs.389.prices.1.price,packs.389.prices.1.fromPacks,packs.389.content.form,packs.389.content.unit,packs.389.content.sheet.widthMm,packs.389.content.sheet.lengthMm,packs.389.content.material,packs.389.content.quantity,packs.389.content.thicknessMm,packs.389.oversize,packs.389.supplier,packs.389.hazardous,packs.390.sku,packs.390.name,packs.390.massKg,packs.390.prices.0.price,packs.390.prices.0.fromPacks,packs.390.prices.1.price,packs.390.prices.1.fromPacks,packs.390.prices.2.price,packs.390.prices.2.fromPacks,packs.390.content.form,packs.390.content.unit,packs.390.content.sheet.widthMm,packs.390.content.sheet.lengthMm,packs.390.content.material,packs.390.content.quantity,packs.390.content.thicknessMm,packs.390.oversize,packs.390.supplier,packs.390.hazardous,packs.391.sku,packs.391.name,packs.391.cutFee,packs.391.massKg,packs.391.prices.0.price,packs.391.prices.0.fromPacks,packs.391.prices.1.price,packs.391.prices.1.fromPacks,packs.391.prices.2.price,packs.391.prices.2.fromPacks,packs.391.content.form,packs.391.content.unit,packs.391.content.sheet.widthMm,packs.391.content.sheet.lengthMm,packs.391.content.material,packs.391.content.quantity,packs.391.content.thicknessMm,packs.391.oversize,packs.391.supplier,packs.391.hazardous,packs.392.sku,packs.392.name,packs.392.cutFee,packs.392.massKg,packs.392.prices.0.price,packs.392.prices.0.fromPacks,packs.392.prices.1.price,packs.392.prices.1.fromPacks,packs.392.content.form,packs.392.content.unit,packs.392.content.sheet.widthMm,packs.392.content.sheet.lengthMm,packs.392.content.material,packs.392.content.quantity,packs.392.content.thicknessMm,packs.392.oversize,packs.392.supplier,packs.392.hazardous,packs.393.sku,packs.393.name,packs.393.massKg,packs.393.prices.0.price,packs.393.prices.0.fromPacks,packs.393.prices.1.price,packs.393.prices.1.fromPacks,packs.393.content.form,packs.393.content.unit,packs.393.content.sheet.widthMm,packs.393.content.sheet.lengthMm,packs.393.content.material,packs.393.content.quantity,packs.393.content.thicknessMm,packs.393.oversize,packs.393.supplier,packs.393.hazardous,packs.394.sku,packs.394.name,packs.394.cutFee,packs.394.massKg,packs.394.prices.0.price,packs.394.prices.0.fromPacks,packs.394.prices.1.price,packs.394.prices.1.fromPacks,packs.394.prices.2.price,packs.394.prices.2.fromPacks,packs.394.content.form,packs.394.content.unit,packs.394.content.sheet.widthMm,packs.394.content.sheet.lengthMm,packs.394.content.material,packs.394.content.quantity,packs.394.content.thicknessMm,packs.394.oversize,packs.394.supplier,packs.394.hazardous,packs.395.sku,packs.395.name,packs.395.cutFee,packs.395.massKg,packs.395.prices.0.price,packs.395.prices.0.fromPacks,packs.395.prices.1.price,packs.395.prices.1.fromPacks,packs.395.content.form,packs.395.content.unit,packs.395.content.sheet.widthMm,packs.395.content.sheet.lengthMm,packs.395.content.material,packs.395.content.quantity,packs.395.content.thicknessMm,packs.395.oversize,packs.395.supplier,packs.395.hazardous,packs.396.sku,packs.396.name,packs.396.stock,packs.396.massKg,packs.396.prices.0.price,packs.396.prices.0.fromPacks,packs.396.prices.1.price,packs.396.prices.1.fromPacks,packs.396.content.form,packs.396.content.unit,packs.396.content.sheet.widthMm,packs.396.content.sheet.lengthMm,packs.396.content.material,packs.396.content.quantity,packs.396.content.thicknessMm,packs.396.oversize,packs.396.supplier,packs.396.hazardous,packs.397.sku,packs.397.name,packs.397.massKg,packs.397.prices.0.price,packs.397.prices.0.fromPacks,packs.397.prices.1.price,packs.397.prices.1.fromPacks,packs.397.prices.2.price,packs.397.prices.2.fromPacks,packs.397.content.form,packs.397.content.unit,packs.397.content.sheet.widthMm,packs.397.content.sheet.lengthMm,packs.397.content.material,packs.397.content.quantity,packs.397.content.thicknessMm,packs.397.oversize,packs.397.supplier,packs.397.hazardous,packs.398.sku,packs.398.name,packs.398.cutFee,packs.398.massKg,packs.398.prices.0.price,packs.398.prices.0.fromPacks,packs.398.prices.1.price,packs.398.prices.1.fromPacks,packs.398.prices.2.price,packs.398.prices.2.fromPacks,packs.398.content.form,packs.398.content.unit,packs.398.content.sheet.widthMm,packs.398.content.sheet.lengthMm,packs.398.content.material,packs.398.content.quantity,packs.398.content.thicknessMm,packs.398.oversize,packs.398.supplier,packs.398.hazardous,packs.399.sku,packs.399.name,packs.399.cutFee,packs.399.massKg,packs.399.prices.0.price,packs.399.prices.0.fromPacks,packs.399.prices.1.price,packs.399.prices.1.fromPacks,packs.399.content.form,packs.399.content.unit,packs.399.content.sheet.widthMm,packs.399.content.sheet.lengthMm,packs.399.content.material,packs.399.content.quantity,packs.399.content.thicknessMm,packs.399.oversize,packs.399.supplier,packs.399.hazardous,packs.400.sku,packs.400.name,packs.400.stock,packs.400.massKg,packs.400.prices.0.price,packs.400.prices.0.fromPacks,packs.400.prices.1.price,packs.400.prices.1.fromPacks,packs.400.content.form,packs.400.content.unit,packs.400.content.sheet.widthMm,packs.400.content.sheet.lengthMm,packs.400.content.material,packs.400.content.quantity,packs.400.content.thicknessMm,packs.400.oversize,packs.400.supplier,packs.400.hazardous,packs.401.sku,packs.401.name,packs.401.cutFee,packs.401.massKg,packs.401.prices.0.price,packs.401.prices.0.fromPacks,packs.401.prices.1.price,packs.401.prices.1.fromPacks,packs.401.prices.2.price,packs.401.prices.2.fromPacks,packs.401.content.form,packs.401.content.unit,packs.401.content.sheet.widthMm,packs.401.content.sheet.lengthMm,packs.401.content.material,packs.401.content.quantity,packs.401.content.thicknessMm,packs.401.oversize,packs.401.supplier,packs.401.hazardous,packs.402.sku,packs.402.name,packs.402.cutFee,packs.402.massKg,packs.402.prices.0.price,packs.402.prices.0.fromPacks,packs.402.prices.1.price,packs.402.prices.1.fromPacks,packs.402.content.form,packs.402.content.unit,packs.402.content.sheet.widthMm,packs.402.content.sheet.lengthMm,packs.402.content.material,packs.402.content.quantity,packs.402.content.thicknessMm,packs.402.oversize,packs.402.supplier,packs.402.hazardous,packs.403.sku,packs.403.name,packs.403.stock,packs.403.massKg,packs.403.prices.0.price,packs.403.prices.0.fromPacks,packs.403.prices.1.price,packs.403.prices.1.fromPacks,packs.403.content.form,packs.403.content.unit,packs.403.content.sheet.widthMm,packs.403.content.sheet.lengthMm,packs.403.content.material,packs.403.content.quantity,packs.403.content.thicknessMm,packs.403.oversize,packs.403.supplier,packs.403.hazardous,packs.404.sku,packs.404.name,packs.404.massKg,packs.404.prices.0.price,packs.404.prices.0.fromPacks,packs.404.prices.1.price,packs.404.prices.1.fromPacks,packs.404.prices.2.price,packs.404.prices.2.fromPacks,packs.404.content.form,packs.404.content.unit,packs.404.content.sheet.widthMm,packs.404.content.sheet.lengthMm,packs.404.content.material,packs.404.content.quantity,packs.404.content.thicknessMm,packs.404.oversize,packs.404.supplier,packs.404.hazardous,packs.405.sku,packs.405.name,packs.405.cutFee,packs.405.massKg,packs.405.prices.0.price,packs.405.prices.0.fromPacks,packs.405.prices.1.price,packs.405.prices.1.fromPacks,packs.405.prices.2.price,packs.405.prices.2.fromPacks,packs.405.content.form,packs.405.content.unit,packs.405.content.sheet.widthMm,packs.405.content.sheet.lengthMm,packs.405.content.material,packs.405.content.quantity,packs.405.content.thicknessMm,packs.405.oversize,packs.405.supplier,packs.405.hazardous,packs.406.sku,packs.406.name,packs.406.cutFee,packs.406.massKg,packs.406.prices.0.price,packs.406.prices.0.fromPacks,packs.406.prices.1.price,packs.406.prices.1.fromPacks,packs.406.content.form,packs.406.content.unit,packs.406.content.sheet.widthMm,packs.406.content.sheet.lengthMm,packs.406.content.material,packs.406.content.quantity,packs.406.content.thicknessMm,packs.406.oversize,packs.406.supplier,packs.406.hazardous,packs.407.sku,packs.407.name,packs.407.stock,packs.407.massKg,packs.407.prices.0.price,packs.407.prices.0.fromPacks,packs.407.prices.1.price,packs.407.prices.1.fromPacks,packs.407.content.form,packs.407.content.unit,packs.407.content.sheet.widthMm,packs.407.content.sheet.lengthMm,packs.407.content.material,packs.407.content.quantity,packs.407.content.thicknessMm,packs.407.oversize,packs.407.supplier,packs.407.hazardous,packs.408.sku,packs.408.name,packs.408.cutFee,packs.408.massKg,packs.408.prices.0.price,packs.408.prices.0.fromPacks,packs.408.prices.1.price,packs.408.prices.1.fromPacks,packs.408.prices.2.price,packs.408.prices.2.fromPacks,packs.408.content.form,packs.408.content.unit,packs.408.content.sheet.widthMm,packs.408.content.sheet.lengthMm,packs.408.content.material,packs.408.content.quantity,packs.408.content.thicknessMm,packs.408.oversize,packs.408.supplier,packs.408.hazardous,packs.409.sku,packs.409.name,packs.409.cutFee,packs.409.massKg,packs.409.prices.0.price,packs.409.prices.0.fromPacks,packs.409.prices.1.price,packs.409.prices.1.fromPacks,packs.409.content.form,packs.409.content.unit,packs.409.content.sheet.widthMm,packs.409.content.sheet.lengthMm,packs.409.content.material,packs.409.content.quantity,packs.409.content.thicknessMm,packs.409.oversize,packs.409.supplier,packs.409.hazardous,packs.410.sku,packs.410.name,packs.410.massKg,packs.410.prices.0.price,packs.410.prices.0.fromPacks,packs.410.prices.1.price,packs.410.prices.1.fromPacks,packs.410.content.form,packs.410.content.unit,packs.410.content.sheet.widthMm,packs.410.content.sheet.lengthMm,packs.410.content.material,packs.410.content.quantity,packs.410.content.thicknessMm,packs.410.oversize,packs.410.supplier,packs.410.hazardous,packs.411.sku,packs.411.name,packs.411.massKg,packs.411.prices.0.price,packs.411.prices.0.fromPacks,packs.411.prices.1.price,packs.411.prices.1.fromPacks,packs.411.prices.2.price,packs.411.prices.2.fromPacks,packs.411.content.form,packs.411.content.unit,packs.411.content.sheet.widthMm,packs.411.content.sheet.lengthMm,packs.411.content.material,packs.411.content.quantity,packs.411.content.thicknessMm,packs.411.oversize,packs.411.supplier,packs.411.hazardous,packs.412.sku,packs.412.name,packs.412.cutFee,packs.412.massKg,packs.412.prices.0.price,packs.412.prices.0.fromPacks,packs.412.prices.1.price,packs.412.prices.1.fromPacks,packs.412.prices.2.price,packs.412.prices.2.fromPacks,packs.412.content.form,packs.412.content.unit,packs.412.content.sheet.widthMm,packs.412.content.sheet.lengthMm,packs.412.content.material,packs.412.content.quantity,packs.412.content.thicknessMm,packs.412.oversize,packs.412.supplier,packs.412.hazardous,packs.413.sku,packs.413.name,packs.413.cutFee,packs.413.massKg,packs.413.prices.0.price,packs.413.prices.0.fromPacks,packs.413.prices.1.price,packs.413.prices.1.fromPacks,packs.413.content.form,packs.413.content.unit,packs.413.content.sheet.widthMm,packs.413.content.sheet.lengthMm,packs.413.content.material,packs.413.content.quantity,packs.413.content.thicknessMm,packs.413.oversize,packs.413.supplier,packs.413.hazardous,packs.414.sku,packs.414.name,packs.414.massKg,packs.414.prices.0.price,packs.414.prices.0.fromPacks,packs.414.prices.1.price,packs.414.prices.1.fromPacks,packs.414.content.form,packs.414.content.unit,packs.414.content.sheet.widthMm,packs.414.content.sheet.lengthMm,packs.414.content.material,packs.414.content.quantity,packs.414.content.thicknessMm,packs.414.oversize,packs.414.supplier,packs.414.hazardous,packs.415.sku,packs.415.name,packs.415.cutFee,packs.415.massKg,packs.415.prices.0.price,packs.415.prices.0.fromPacks,packs.415.prices.1.price,packs.415.prices.1.fromPacks,packs.415.prices.2.price,packs.415.prices.2.fromPacks,packs.415.content.form,packs.415.content.unit,packs.415.content.sheet.widthMm,packs.415.content.sheet.lengthMm,packs.415.content.material,packs.415.content.quantity,packs.415.content.thicknessMm,packs.415.oversize,packs.415.supplier,packs.415.hazardous,packs.416.sku,packs.416.name,packs.416.cutFee,packs.416.massKg,packs.416.prices.0.price,packs.416.prices.0.fromPacks,packs.416.prices.1.price,packs.416.prices.1.fromPacks,packs.416.content.form,packs.416.content.unit,packs.416.content.sheet.widthMm,packs.416.content.sheet.lengthMm,packs.416.content.material,packs.416.content.quantity,packs.416.content.thicknessMm,packs.416.oversize,packs.416.supplier,packs.416.hazardous,packs.417.sku,packs.417.name,packs.417.massKg,packs.417.prices.0.price,packs.417.prices.0.fromPacks,packs.417.prices.1.price,packs.417.prices.1.fromPacks,packs.417.content.form,packs.417.content.unit,packs.417.content.sheet.widthMm,packs.417.content.sheet.lengthMm,packs.417.content.material,packs.417.content.quantity,packs.417.content.thicknessMm,packs.417.oversize,packs.417.supplier,packs.417.hazardous,packs.418.sku,packs.418.name,packs.418.massKg,packs.418.prices.0.price,packs.418.prices.0.fromPacks,packs.418.prices.1.price,packs.418.prices.1.fromPacks,packs.418.prices.2.price,packs.418.prices.2.fromPacks,packs.418.content.form,packs.418.content.unit,packs.418.content.sheet.widthMm,packs.418.content.sheet.lengthMm,packs.418.content.material,packs.418.content.quantity,packs.418.content.thicknessMm,packs.418.oversize,packs.418.supplier,packs.418.hazardous,packs.419.sku,packs.419.name,packs.419.cutFee,packs.419.massKg,packs.419.prices.0.price,packs.419.prices.0.fromPacks,packs.419.prices.1.price,packs.419.prices.1.fromPacks,packs.419.prices.2.price,packs.419.prices.2.fromPacks,packs.419.content.form,packs.419.content.unit,packs.419.content.sheet.widthMm,packs.419.content.sheet.lengthMm,packs.419.content.material,packs.419.content.quantity,packs.419.content.thicknessMm,packs.419.oversize,packs.419.supplier,packs.419.hazardous,packs.420.sku,packs.420.name,packs.420.cutFee,packs.420.massKg,packs.420.prices.0.price,packs.420.prices.0.fromPacks,packs.420.prices.1.price,packs.420.prices.1.fromPacks,packs.420.content.form,packs.420.content.unit,packs.420.content.sheet.widthMm,packs.420.content.sheet.lengthMm,packs.420.content.material,packs.420.content.quantity,packs.420.content.thicknessMm,packs.420.oversize,packs.420.supplier,packs.420.hazardous,packs.421.sku,packs.421.name,packs.421.massKg,packs.421.prices.0.price,packs.421.prices.0.fromPacks,packs.421.prices.1.price,packs.421.prices.1.fromPacks,packs.421.content.form,packs.421.content.unit,packs.421.content.sheet.widthMm,packs.421.content.sheet.lengthMm,packs.421.content.material,packs.421.content.quantity,packs.421.content.thicknessMm,packs.421.oversize,packs.421.supplier,packs.421.hazardous,packs.422.sku,packs.422.name,packs.422.cutFee,packs.422.massKg,packs.422.prices.0.price,packs.422.prices.0.fromPacks,packs.422.prices.1.price,packs.422.prices.1.fromPacks,packs.422.prices.2.price,packs.422.prices.2.fromPacks,packs.422.content.form,packs.422.content.unit,packs.422.content.sheet.widthMm,packs.422.content.sheet.lengthMm,packs.422.content.material,packs.422.content.quantity,packs.422.content.thicknessMm,packs.422.oversize,packs.422.supplier,packs.422.hazardous,packs.423.sku,packs.423.name,packs.423.cutFee,packs.423.massKg,packs.423.prices.0.price,packs.423.prices.0.fromPacks,packs.423.prices.1.price,packs.423.prices.1.fromPacks,packs.423.content.form,packs.423.content.unit,packs.423.content.sheet.widthMm,packs.423.content.sheet.lengthMm,packs.423.content.material,packs.423.content.quantity,packs.423.content.thicknessMm,packs.423.oversize,packs.423.supplier,packs.423.hazardous,packs.424.sku,packs.424.name,packs.424.massKg,packs.424.prices.0.price,packs.424.prices.0.fromPacks,packs.424.prices.1.price,packs.424.prices.1.fromPacks,packs.424.content.form,packs.424.content.unit,packs.424.content.sheet.widthMm,packs.424.content.sheet.lengthMm,packs.424.content.material,packs.424.content.quantity,packs.424.content.thicknessMm,packs.424.oversize,packs.424.supplier,packs.424.hazardous,packs.425.sku,packs.425.name,packs.425.massKg,packs.425.prices.0.price,packs.425.prices.0.fromPacks,packs.425.prices.1.price,packs.425.prices.1.fromPacks,packs.425.prices.2.price,packs.425.prices.2.fromPacks,packs.425.content.form,packs.425.content.unit,packs.425.content.sheet.widthMm,packs.425.content.sheet.lengthMm,packs.425.content.material,packs.425.content.quantity,packs.425.content.thicknessMm,packs.425.oversize,packs.425.supplier,packs.425.hazardous,packs.426.sku,packs.426.name,packs.426.cutFee,packs.426.massKg,packs.426.prices.0.price,packs.426.prices.0.fromPacks,packs.426.prices.1.price,packs.426.prices.1.fromPacks,packs.426.prices.2.price,packs.426.prices.2.fromPacks,packs.426.content.form,packs.426.content.unit,packs.426.content.sheet.widthMm,packs.426.content.sheet.lengthMm,packs.426.content.material,packs.426.content.quantity,packs.426.content.thicknessMm,packs.426.oversize,packs.426.supplier,packs.426.hazardous,packs.427.sku,packs.427.name,packs.427.cutFee,packs.427.massKg,packs.427.prices.0.price,packs.427.prices.0.fromPacks,packs.427.prices.1.price,packs.427.prices.1.fromPacks,packs.427.content.form,packs.427.content.unit,packs.427.content.sheet.widthMm,packs.427.content.sheet.lengthMm,packs.427.content.material,packs.427.content.quantity,packs.427.content.thicknessMm,packs.427.oversize,packs.427.supplier,packs.427.hazardous,packs.428.sku,packs.428.name,packs.428.massKg,packs.428.prices.0.price,packs.428.prices.0.fromPacks,packs.428.prices.1.price,packs.428.prices.1.fromPacks,packs.428.content.form,packs.428.content.unit,packs.428.content.sheet.widthMm,packs.428.content.sheet.lengthMm,packs.428.content.material,packs.428.content.quantity,packs.428.content.thicknessMm,packs.428.oversize,packs.428.supplier,packs.428.hazardous,packs.429.sku,packs.429.name,packs.429.cutFee,packs.429.massKg,packs.429.prices.0.price,packs.429.prices.0.fromPacks,packs.429.prices.1.price,packs.429.prices.1.fromPacks,packs.429.prices.2.price,packs.429.prices.2.fromPacks,packs.429.content.form,packs.429.content.unit,packs.429.content.sheet.widthMm,packs.429.content.sheet.lengthMm,packs.429.content.material,packs.429.content.quantity,packs.429.content.thicknessMm,packs.429.oversize,packs.429.supplier,packs.429.hazardous,packs.430.sku,packs.430.name,packs.430.cutFee,packs.430.massKg,packs.430.prices.0.price,packs.430.prices.0.fromPacks,packs.430.prices.1.price,packs.430.prices.1.fromPacks,packs.430.content.form,packs.430.content.unit,packs.430.content.sheet.widthMm,packs.430.content.sheet.lengthMm,packs.430.content.material,packs.430.content.quantity,packs.430.content.thicknessMm,packs.430.oversize,packs.430.supplier,packs.430.hazardous,packs.431.sku,packs.431.name,packs.431.massKg,packs.431.prices.0.price,packs.431.prices.0.fromPacks,packs.431.prices.1.price,packs.431.prices.1.fromPacks,packs.431.content.form,packs.431.content.unit,packs.431.content.sheet.widthMm,packs.431.content.sheet.lengthMm,packs.431.content.material,packs.431.content.quantity,packs.431.content.thicknessMm,packs.431.oversize,packs.431.supplier,packs.431.hazardous,packs.432.sku,packs.432.name,packs.432.massKg,packs.432.prices.0.price,packs.432.prices.0.fromPacks,packs.432.prices.1.price,packs.432.prices.1.fromPacks,packs.432.prices.2.price,packs.432.prices.2.fromPacks,packs.432.content.form,packs.432.content.unit,packs.432.content.sheet.widthMm,packs.432.content.sheet.lengthMm,packs.432.content.material,packs.432.content.quantity,packs.432.content.thicknessMm,packs.432.oversize,packs.432.supplier,packs.432.hazardous,packs.433.sku,packs.433.name,packs.433.cutFee,packs.433.massKg,packs.433.prices.0.price,packs.433.prices.0.fromPacks,packs.433.prices.1.price,packs.433.prices.1.fromPacks,packs.433.prices.2.price,packs.433.prices.2.fromPacks,packs.433.content.form,packs.433.content.unit,packs.433.content.sheet.widthMm,packs.433.content.sheet.lengthMm,packs.433.content.material,packs.433.content.quantity,packs.433.content.thicknessMm,packs.433.oversize,packs.433.supplier,packs.433.hazardous,packs.434.sku,packs.434.name,packs.434.cutFee,packs.434.massKg,packs.434.prices.0.price,packs.434.prices.0.fromPacks,packs.434.prices.1.price,packs.434.prices.1.fromPacks,packs.434.content.form,packs.434.content.unit,packs.434.content.sheet.widthMm,packs.434.content.sheet.lengthMm,packs.434.content.material,packs.434.content.quantity,packs.434.content.thicknessMm,packs.434.oversize,packs.434.supplier,packs.434.hazardous,packs.435.sku,packs.435.name,packs.435.massKg,packs.435.prices.0.price,packs.435.prices.0.fromPacks,packs.435.prices.1.price,packs.435.prices.1.fromPacks,packs.435.content.form,packs.435.content.unit,packs.435.content.sheet.widthMm,packs.435.content.sheet.lengthMm,packs.435.content.material,packs.435.content.quantity,packs.435.content.thicknessMm,packs.435.oversize,packs.435.supplier,packs.435.hazardous,packs.436.sku,packs.436.name,packs.436.cutFee,packs.436.massKg,packs.436.prices.0.price,packs.436.prices.0.fromPacks,packs.436.prices.1.price,packs.436.prices.1.fromPacks,packs.436.prices.2.price,packs.436.prices.2.fromPacks,packs.436.content.form,packs.436.content.unit,packs.436.content.sheet.widthMm,packs.436.content.sheet.lengthMm,packs.436.content.material,packs.436.content.quantity,packs.436.content.thicknessMm,packs.436.oversize,packs.436.supplier,packs.436.hazardous,packs.437.sku,packs.437.name,packs.437.cutFee,packs.437.massKg,packs.437.prices.0.price,packs.437.prices.0.fromPacks,packs.437.prices.1.price,packs.437.prices.1.fromPacks,packs.437.content.form,packs.437.content.unit,packs.437.content.sheet.widthMm,packs.437.content.sheet.lengthMm,packs.437.content.material,packs.437.content.quantity,packs.437.content.thicknessMm,packs.437.oversize,packs.437.supplier,packs.437.hazardous,packs.438.sku,packs.438.name,packs.438.stock,packs.438.massKg,packs.438.prices.0.price,packs.438.prices.0.fromPacks,packs.438.prices.1.price,packs.438.prices.1.fromPacks,packs.438.content.form,packs.438.content.unit,packs.438.content.sheet.widthMm,packs.438.content.sheet.lengthMm,packs.438.content.material,packs.438.content.quantity,packs.438.content.thicknessMm,packs.438.oversize,packs.438.supplier,packs.438.hazardous,packs.439.sku,packs.439.name,packs.439.massKg,packs.439.prices.0.price,packs.439.prices.0.fromPacks,packs.439.prices.1.price,packs.439.prices.1.fromPacks,packs.439.prices.2.price,packs.439.prices.2.fromPacks,packs.439.content.form,packs.439.content.unit,packs.439.content.sheet.widthMm,packs.439.content.sheet.lengthMm,packs.439.content.material,packs.439.content.quantity,packs.439.content.thicknessMm,packs.439.oversize,packs.439.supplier,packs.439.hazardous,packs.440.sku,packs.440.name,packs.440.cutFee,packs.440.massKg,packs.440.prices.0.price,packs.440.prices.0.fromPacks,packs.440.prices.1.price,packs.440.prices.1.fromPacks,packs.440.prices.2.price,packs.440.prices.2.fromPacks,packs.440.content.form,packs.440.content.unit,packs.440.content.sheet.widthMm,packs.440.content.sheet.lengthMm,packs.440.content.material,packs.440.content.quantity,packs.440.content.thicknessMm,packs.440.oversize,packs.440.supplier,packs.440.hazardous,packs.441.sku,packs.441.name,packs.441.cutFee,packs.441.massKg,packs.441.prices.0.price,packs.441.prices.0.fromPacks,packs.441.prices.1.price,packs.441.prices.1.fromPacks,packs.441.content.form,packs.441.content.unit,packs.441.content.sheet.widthMm,packs.441.content.sheet.lengthMm,packs.441.content.material,packs.441.content.quantity,packs.441.content.thicknessMm,packs.441.oversize,packs.441.supplier,packs.441.hazardous,packs.442.sku,packs.442.name,packs.442.stock,packs.442.massKg,packs.442.prices.0.price,packs.442.prices.0.fromPacks,packs.442.prices.1.price,packs.442.prices.1.fromPacks,packs.442.content.form,packs.442.content.unit,packs.442.content.sheet.widthMm,packs.442.content.sheet.lengthMm,packs.442.content.material,packs.442.content.quantity,packs.442.content.thicknessMm,packs.442.oversize,packs.442.supplier,packs.442.hazardous,packs.443.sku,packs.443.name,packs.443.cutFee,packs.443.massKg,packs.443.prices.0.price,packs.443.prices.0.fromPacks,packs.443.prices.1.price,packs.443.prices.1.fromPacks,packs.443.prices.2.price,packs.443.prices.2.fromPacks,packs.443.content.form,packs.443.content.unit,packs.443.content.sheet.widthMm,packs.443.content.sheet.lengthMm,packs.443.content.material,packs.443.content.quantity,packs.443.content.thicknessMm,packs.443.oversize,packs.443.supplier,packs.443.hazardous,packs.444.sku,packs.444.name,packs.444.cutFee,packs.444.massKg,packs.444.prices.0.price,packs.444.prices.0.fromPacks,packs.444.prices.1.price,packs.444.prices.1.fromPacks,packs.444.content.form,packs.444.content.unit,packs.444.content.sheet.widthMm,packs.444.content.sheet.lengthMm,packs.444.content.material,packs.444.content.quantity,packs.444.content.thicknessMm,packs.444.oversize,packs.444.supplier,packs.444.hazardous,packs.445.sku,packs.445.name,packs.445.stock,packs.445.massKg,packs.445.prices.0.price,packs.445.prices.0.fromPacks,packs.445.prices.1.price,packs.445.prices.1.fromPacks,packs.445.content.form,packs.445.content.unit,packs.445.content.sheet.widthMm,packs.445.content.sheet.lengthMm,packs.445.content.material,packs.445.content.quantity,packs.445.content.thicknessMm,packs.445.oversize,packs.445.supplier,packs.445.hazardous,packs.446.sku,packs.446.name,packs.446.massKg,packs.446.prices.0.price,packs.446.prices.0.fromPacks,packs.446.prices.1.price,packs.446.prices.1.fromPacks,packs.446.prices.2.price,packs.446.prices.2.fromPacks,packs.446.content.form,packs.446.content.unit,packs.446.content.sheet.widthMm,packs.446.content.sheet.lengthMm,packs.446.content.material,packs.446.content.quantity,packs.446.content.thicknessMm,packs.446.oversize,packs.446.supplier,packs.446.hazardous,packs.447.sku,packs.447.name,packs.447.cutFee,packs.447.massKg,packs.447.prices.0.price,packs.447.prices.0.fromPacks,packs.447.prices.1.price,packs.447.prices.1.fromPacks,packs.447.prices.2.price,packs.447.prices.2.fromPacks,packs.447.content.form,packs.447.content.unit,packs.447.content.sheet.widthMm,packs.447.content.sheet.lengthMm,packs.447.content.material,packs.447.content.quantity,packs.447.content.thicknessMm,packs.447.oversize,packs.447.supplier,packs.447.hazardous,packs.448.sku,packs.448.name,packs.448.cutFee,packs.448.massKg,packs.448.prices.0.price,packs.448.prices.0.fromPacks,packs.448.prices.1.price,packs.448.prices.1.fromPacks,packs.448.content.form,packs.448.content.unit,packs.448.content.sheet.widthMm,packs.448.content.sheet.lengthMm,packs.448.content.material,packs.448.content.quantity,packs.448.content.thicknessMm,packs.448.oversize,packs.448.supplier,packs.448.hazardous,packs.449.sku,packs.449.name,packs.449.stock,packs.449.massKg,packs.449.prices.0.price,packs.449.prices.0.fromPacks,packs.449.prices.1.price,packs.449.prices.1.fromPacks,packs.449.content.form,packs.449.content.unit,packs.449.content.sheet.widthMm,packs.449.content.sheet.lengthMm,packs.449.content.material,packs.449.content.quantity,packs.449.content.thicknessMm,packs.449.oversize,packs.449.supplier,packs.449.hazardous,packs.450.sku,packs.450.name,packs.450.cutFee,packs.450.massKg,packs.450.prices.0.price,packs.450.prices.0.fromPacks,packs.450.prices.1.price,packs.450.prices.1.fromPacks,packs.450.prices.2.price,packs.450.prices.2.fromPacks,packs.450.content.form,packs.450.content.unit,packs.450.content.sheet.widthMm,packs.450.content.sheet.lengthMm,packs.450.content.material,packs.450.content.quantity,packs.450.content.thicknessMm,packs.450.oversize,packs.450.supplier,packs.450.hazardous,packs.451.sku,packs.451.name,packs.451.cutFee,packs.451.massKg,packs.451.prices.0.price,packs.451.prices.0.fromPacks,packs.451.prices.1.price,packs.451.prices.1.fromPacks,packs.451.content.form,packs.451.content.unit,packs.451.content.sheet.widthMm,packs.451.content.sheet.lengthMm,packs.451.content.material,packs.451.content.quantity,packs.451.content.thicknessMm,packs.451.oversize,packs.451.supplier,packs.451.hazardous,packs.452.sku,packs.452.name,packs.452.cutFee,packs.452.massKg,packs.452.prices.0.price,packs.452.prices.0.fromPacks,packs.452.prices.1.price,packs.452.prices.1.fromPacks,packs.452.prices.2.price,packs.452.prices.2.fromPacks,packs.452.content.form,packs.452.content.unit,packs.452.content.sheet.widthMm,packs.452.content.sheet.lengthMm,packs.452.content.material,packs.452.content.quantity,packs.452.content.thicknessMm,packs.452.oversize,packs.452.supplier,packs.452.hazardous,packs.453.sku,packs.453.name,packs.453.cutFee,packs.453.massKg,packs.453.prices.0.price,packs.453.prices.0.fromPacks,packs.453.prices.1.price,packs.453.prices.1.fromPacks,packs.453.content.form,packs.453.content.unit,packs.453.content.sheet.widthMm,packs.453.content.sheet.lengthMm,packs.453.content.material,packs.453.content.quantity,packs.453.content.thicknessMm,packs.453.oversize,packs.453.supplier,packs.453.hazardous,packs.454.sku,packs.454.name,packs.454.cutFee,packs.454.massKg,packs.454.prices.0.price,packs.454.prices.0.fromPacks,packs.454.prices.1.price,packs.454.prices.1.fromPacks,packs.454.prices.2.price,packs.454.prices.2.fromPacks,packs.454.content.form,packs.454.content.unit,packs.454.content.sheet.widthMm,packs.454.content.sheet.lengthMm,packs.454.content.material,packs.454.content.quantity,packs.454.content.thicknessMm,packs.454.oversize,packs.454.supplier,packs.454.hazardous,packs.455.sku,packs.455.name,packs.455.cutFee,packs.455.massKg,packs.455.prices.0.price,packs.455.prices.0.fromPacks,packs.455.prices.1.price,packs.455.prices.1.fromPacks,packs.455.content.form,packs.455.content.unit,packs.455.content.sheet.widthMm,packs.455.content.sheet.lengthMm,packs.455.content.material,packs.455.content.quantity,packs.455.content.thicknessMm,packs.455.oversize,packs.455.supplier,packs.455.hazardous,packs.456.sku,packs.456.name,packs.456.cutFee,packs.456.massKg,packs.456.prices.0.price,packs.456.prices.0.fromPacks,packs.456.prices.1.price,packs.456.prices.1.fromPacks,packs.456.prices.2.price,packs.456.prices.2.fromPacks,packs.456.content.form,packs.456.content.unit,packs.456.content.sheet.widthMm,packs.456.content.sheet.lengthMm,packs.456.content.material,packs.456.content.quantity,packs.456.content.thicknessMm,packs.456.oversize,packs.456.supplier,packs.456.hazardous,packs.457.sku,packs.457.name,packs.457.cutFee,packs.457.massKg,packs.457.prices.0.price,packs.457.prices.0.fromPacks,packs.457.prices.1.price,packs.457.prices.1.fromPacks,packs.457.content.form,packs.457.content.unit,packs.457.content.sheet.widthMm,packs.457.content.sheet.lengthMm,packs.457.content.material,packs.457.content.quantity,packs.457.content.thicknessMm,packs.457.oversize,packs.457.supplier,packs.457.hazardous,packs.458.sku,packs.458.name,packs.458.cutFee,packs.458.massKg,packs.458.prices.0.price,packs.458.prices.0.fromPacks,packs.458.prices.1.price,packs.458.prices.1.fromPacks,packs.458.content.form,packs.458.content.unit,packs.458.content.sheet.widthMm,packs.458.content.sheet.lengthMm,packs.458.content.material,packs.458.content.quantity,packs.458.content.thicknessMm,packs.458.oversize,packs.458.supplier,packs.458.hazardous,packs.459.sku,packs.459.name,packs.459.cutFee,packs.459.massKg,packs.459.prices.0.price,packs.459.prices.0.fromPacks,packs.459.prices.1.price,packs.459.prices.1.fromPacks,packs.459.content.form,packs.459.content.unit,packs.459.content.sheet.widthMm,packs.459.content.sheet.lengthMm,packs.459.content.material,packs.459.content.quantity,packs.459.content.thicknessMm,packs.459.oversize,packs.459.supplier,packs.459.hazardous,packs.460.sku,packs.460.name,packs.460.cutFee,packs.460.massKg,packs.460.prices.0.price,packs.460.prices.0.fromPacks,packs.460.prices.1.price,packs.460.prices.1.fromPacks,packs.460.prices.2.price,packs.460.prices.2.fromPacks,packs.460.content.form,packs.460.content.unit,packs.460.content.sheet.widthMm,packs.460.content.sheet.lengthMm,packs.460.content.material,packs.460.content.quantity,packs.460.content.thicknessMm,packs.460.oversize,packs.460.supplier,packs.460.hazardous,packs.461.sku,packs.461.name,packs.461.cutFee,packs.461.massKg,packs.461.prices.0.price,packs.461.prices.0.fromPacks,packs.461.prices.1.price,packs.461.prices.1.fromPacks,packs.461.content.form,packs.461.content.unit,packs.461.content.sheet.widthMm,packs.461.content.sheet.lengthMm,packs.461.content.material,packs.461.content.quantity,packs.461.content.thicknessMm,packs.461.oversize,packs.461.supplier,packs.461.hazardous,packs.462.sku,packs.462.name,packs.462.cutFee,packs.462.massKg,packs.462.prices.0.price,packs.462.prices.0.fromPacks,packs.462.prices.1.price,packs.462.prices.1.fromPacks,packs.462.prices.2.price,packs.462.prices.2.fromPacks,packs.462.content.form,packs.462.content.unit,packs.462.content.sheet.widthMm,packs.462.content.sheet.lengthMm,packs.462.content.material,packs.462.content.quantity,packs.462.content.thicknessMm,packs.462.oversize,packs.462.supplier,packs.462.hazardous,packs.463.sku,packs.463.name,packs.463.cutFee,packs.463.massKg,packs.463.prices.0.price,packs.463.prices.0.fromPacks,packs.463.prices.1.price,packs.463.prices.1.fromPacks,packs.463.content.form,packs.463.content.unit,packs.463.content.sheet.widthMm,packs.463.content.sheet.lengthMm,packs.463.content.material,packs.463.content.quantity,packs.463.content.thicknessMm,packs.463.oversize,packs.463.supplier,packs.463.hazardous,packs.464.sku,packs.464.name,packs.464.cutFee,packs.464.massKg,packs.464.prices.0.price,packs.464.prices.0.fromPacks,packs.464.prices.1.price,packs.464.prices.1.fromPacks,packs.464.prices.2.price,packs.464.prices.2.fromPacks,packs.464.content.form,packs.464.content.unit,packs.464.content.sheet.widthMm,packs.464.content.sheet.lengthMm,packs.464.content.material,packs.464.content.quantity,packs.464.content.thicknessMm,packs.464.oversize,packs.464.supplier,packs.464.hazardous,packs.465.sku,packs.465.name,packs.465.cutFee,packs.465.massKg,packs.465.prices.0.price,packs.465.prices.0.fromPacks,packs.465.prices.1.price,packs.465.prices.1.fromPacks,packs.465.content.form,packs.465.content.unit,packs.465.content.sheet.widthMm,packs.465.content.sheet.lengthMm,packs.465.content.material,packs.465.content.quantity,packs.465.content.thicknessMm,packs.465.oversize,packs.465.supplier,packs.465.hazardous,packs.466.sku,packs.466.name,packs.466.cutFee,packs.466.massKg,packs.466.prices.0.price,packs.466.prices.0.fromPacks,packs.466.prices.1.price,packs.466.prices.1.fromPacks,packs.466.content.form,packs.466.content.unit,packs.466.content.sheet.widthMm,packs.466.content.sheet.lengthMm,packs.466.content.material,packs.466.content.quantity,packs.466.content.thicknessMm,packs.466.oversize,packs.466.supplier,packs.466.hazardous,packs.467.sku,packs.467.name,packs.467.cutFee,packs.467.massKg,packs.467.prices.0.price,packs.467.prices.0.fromPacks,packs.467.prices.1.price,packs.467.prices.1.fromPacks,packs.467.content.form,packs.467.content.unit,packs.467.content.sheet.widthMm,packs.467.content.sheet.lengthMm,packs.467.content.material,packs.467.content.quantity,packs.467.content.thicknessMm,packs.467.oversize,packs.467.supplier,packs.467.hazardous,packs.468.sku,packs.468.name,packs.468.cutFee,packs.468.massKg,packs.468.prices.0.price,packs.468.prices.0.fromPacks,packs.468.prices.1.price,packs.468.prices.1.fromPacks,packs.468.prices.2.price,packs.468.prices.2.fromPacks,packs.468.content.form,packs.468.content.unit,packs.468.content.sheet.widthMm,packs.468.content.sheet.lengthMm,packs.468.content.material,packs.468.content.quantity,packs.468.content.thicknessMm,packs.468.oversize,packs.468.supplier,packs.468.hazardous,packs.469.sku,packs.469.name,packs.469.cutFee,packs.469.massKg,packs.469.prices.0.price,packs.469.prices.0.fromPacks,packs.469.prices.1.price,packs.469.prices.1.fromPacks,packs.469.content.form,packs.469.content.unit,packs.469.content.sheet.widthMm,packs.469.content.sheet.lengthMm,packs.469.content.material,packs.469.content.quantity,packs.469.content.thicknessMm,packs.469.oversize,packs.469.supplier,packs.469.hazardous,packs.470.sku,packs.470.name,packs.470.cutFee,packs.470.massKg,packs.470.prices.0.price,packs.470.prices.0.fromPacks,packs.470.prices.1.price,packs.470.prices.1.fromPacks,packs.470.prices.2.price,packs.470.prices.2.fromPacks,packs.470.content.form,packs.470.content.unit,packs.470.content.sheet.widthMm,packs.470.content.sheet.lengthMm,packs.470.content.material,packs.470.content.quantity,packs.470.content.thicknessMm,packs.470.oversize,packs.470.supplier,packs.470.hazardous,packs.471.sku,packs.471.name,packs.471.cutFee,packs.471.massKg,packs.471.prices.0.price,packs.471.prices.0.fromPacks,packs.471.prices.1.price,packs.471.prices.1.fromPacks,packs.471.content.form,packs.471.content.unit,packs.471.content.sheet.widthMm,packs.471.content.sheet.lengthMm,packs.471.content.material,packs.471.content.quantity,packs.471.content.thicknessMm,packs.471.oversize,packs.471.supplier,packs.471.hazardous,packs.472.sku,packs.472.name,packs.472.cutFee,packs.472.massKg,packs.472.prices.0.price,packs.472.prices.0.fromPacks,packs.472.prices.1.price,packs.472.prices.1.fromPacks,packs.472.prices.2.price,packs.472.prices.2.fromPacks,packs.472.content.form,packs.472.content.unit,packs.472.content.sheet.widthMm,packs.472.content.sheet.lengthMm,packs.472.content.material,packs.472.content.quantity,packs.472.content.thicknessMm,packs.472.oversize,packs.472.supplier,packs.472.hazardous,packs.473.sku,packs.473.name,packs.473.cutFee,packs.473.massKg,packs.473.prices.0.price,packs.473.prices.0.fromPacks,packs.473.prices.1.price,packs.473.prices.1.fromPacks,packs.473.content.form,packs.473.content.unit,packs.473.content.sheet.widthMm,packs.473.content.sheet.lengthMm,packs.473.content.material,packs.473.content.quantity,packs.473.content.thicknessMm,packs.473.oversize,packs.473.supplier,packs.473.hazardous,packs.474.sku,packs.474.name,packs.474.cutFee,packs.474.massKg,packs.474.prices.0.price,packs.474.prices.0.fromPacks,packs.474.prices.1.price,packs.474.prices.1.fromPacks,packs.474.content.form,packs.474.content.unit,packs.474.content.sheet.widthMm,packs.474.content.sheet.lengthMm,packs.474.content.material,packs.474.content.quantity,packs.474.content.thicknessMm,packs.474.oversize,packs.474.supplier,packs.474.hazardous,packs.475.sku,packs.475.name,packs.475.cutFee,packs.475.massKg,packs.475.prices.0.price,packs.475.prices.0.fromPacks,packs.475.prices.1.price,packs.475.prices.1.fromPacks,packs.475.content.form,packs.475.content.unit,packs.475.content.sheet.widthMm,packs.475.content.sheet.lengthMm,packs.475.content.material,packs.475.content.quantity,packs.475.content.thicknessMm,packs.475.oversize,packs.475.supplier,packs.475.hazardous,packs.476.sku,packs.476.name,packs.476.cutFee,packs.476.massKg,packs.476.prices.0.price,packs.476.prices.0.fromPacks,packs.476.prices.1.price,packs.476.prices.1.fromPacks,packs.476.prices.2.price,packs.476.prices.2.fromPacks,packs.476.content.form,packs.476.content.unit,packs.476.content.sheet.widthMm,packs.476.content.sheet.lengthMm,packs.476.content.material,packs.476.content.quantity,packs.476.content.thicknessMm,packs.476.oversize,packs.476.supplier,packs.476.hazardous,packs.477.sku,packs.477.name,packs.477.cutFee,packs.477.massKg,packs.477.prices.0.price,packs.477.prices.0.fromPacks,packs.477.prices.1.price,packs.477.prices.1.fromPacks,packs.477.content.form,packs.477.content.unit,packs.477.content.sheet.widthMm,packs.477.content.sheet.lengthMm,packs.477.content.material,packs.477.content.quantity,packs.477.content.thicknessMm,packs.477.oversize,packs.477.supplier,packs.477.hazardous,packs.478.sku,packs.478.name,packs.478.cutFee,packs.478.massKg,packs.478.prices.0.price,packs.478.prices.0.fromPacks,packs.478.prices.1.price,packs.478.prices.1.fromPacks,packs.478.prices.2.price,packs.478.prices.2.fromPacks,packs.478.content.form,packs.478.content.unit,packs.478.content.sheet.widthMm,packs.478.content.sheet.lengthMm,packs.478.content.material,packs.478.content.quantity,packs.478.content.thicknessMm,packs.478.oversize,packs.478.supplier,packs.478.hazardous,packs.479.sku,packs.479.name,packs.479.cutFee,packs.479.massKg,packs.479.prices.0.price,packs.479.prices.0.fromPacks,packs.479.prices.1.price,packs.479.prices.1.fromPacks,packs.479.content.form,packs.479.content.unit,packs.479.content.sheet.widthMm,packs.479.content.sheet.lengthMm,packs.479.content.material,packs.479.content.quantity,packs.479.content.thicknessMm,packs.479.oversize,packs.479.supplier,packs.479.hazardous,packs.480.sku,packs.480.name,packs.480.cutFee,packs.480.massKg,packs.480.prices.0.price,packs.480.prices.0.fromPacks,packs.480.prices.1.price,packs.480.prices.1.fromPacks,packs.480.prices.2.price,packs.480.prices.2.fromPacks,packs.480.content.form,packs.480.content.unit,packs.480.content.sheet.widthMm,packs.480.content.sheet.lengthMm,packs.480.content.material,packs.480.content.quantity,packs.480.content.thicknessMm,packs.480.oversize,packs.480.supplier,packs.480.hazardous,packs.481.sku,packs.481.name,packs.481.cutFee,packs.481.massKg,packs.481.prices.0.price,packs.481.prices.0.fromPacks,packs.481.prices.1.price,packs.481.prices.1.fromPacks,packs.481.content.form,packs.481.content.unit,packs.481.content.sheet.widthMm,packs.481.content.sheet.lengthMm,packs.481.content.material,packs.481.content.quantity,packs.481.content.thicknessMm,packs.481.oversize,packs.481.supplier,packs.481.hazardous,packs.482.sku,packs.482.name,packs.482.cutFee,packs.482.massKg,packs.482.prices.0.price,packs.482.prices.0.fromPacks,packs.482.prices.1.price,packs.482.prices.1.fromPacks,packs.482.content.form,packs.482.content.unit,packs.482.content.sheet.widthMm,packs.482.content.sheet.lengthMm,packs.482.content.material,packs.482.content.quantity,packs.482.content.thicknessMm,packs.482.oversize,packs.482.supplier,packs.482.hazardous,packs.483.sku,packs.483.name,packs.483.cutFee,packs.483.massKg,packs.483.prices.0.price,packs.483.prices.0.fromPacks,packs.483.prices.1.price,packs.483.prices.1.fromPacks,packs.483.content.form,packs.483.content.unit,packs.483.content.sheet.widthMm,packs.483.content.sheet.lengthMm,packs.483.content.material,packs.483.content.quantity,packs.483.content.thicknessMm,packs.483.oversize,packs.483.supplier,packs.483.hazardous,packs.484.sku,packs.484.name,packs.484.cutFee,packs.484.massKg,packs.484.prices.0.price,packs.484.prices.0.fromPacks,packs.484.prices.1.price,packs.484.prices.1.fromPacks,packs.484.prices.2.price,packs.484.prices.2.fromPacks,packs.484.content.form,packs.484.content.unit,packs.484.content.sheet.widthMm,packs.484.content.sheet.lengthMm,packs.484.content.material,packs.484.content.quantity,packs.484.content.thicknessMm,packs.484.oversize,packs.484.supplier,packs.484.hazardous,packs.485.sku,packs.485.name,packs.485.cutFee,packs.485.massKg,packs.485.prices.0.price,packs.485.prices.0.fromPacks,packs.485.prices.1.price,packs.485.prices.1.fromPacks,packs.485.content.form,packs.485.content.unit,packs.485.content.sheet.widthMm,packs.485.content.sheet.lengthMm,packs.485.content.material,packs.485.content.quantity,packs.485.content.thicknessMm,packs.485.oversize,packs.485.supplier,packs.485.hazardous,packs.486.sku,packs.486.name,packs.486.cutFee,packs.486.massKg,packs.486.prices.0.price,packs.486.prices.0.fromPacks,packs.486.prices.1.price,packs.486.prices.1.fromPacks,packs.486.prices.2.price,packs.486.prices.2.fromPacks,packs.486.content.form,packs.486.content.unit,packs.486.content.sheet.widthMm,packs.486.content.sheet.lengthMm,packs.486.content.material,packs.486.content.quantity,packs.486.content.thicknessMm,packs.486.oversize,packs.486.supplier,packs.486.hazardous,packs.487.sku,packs.487.name,packs.487.cutFee,packs.487.massKg,packs.487.prices.0.price,packs.487.prices.0.fromPacks,packs.487.prices.1.price,packs.487.prices.1.fromPacks,packs.487.content.form,packs.487.content.unit,packs.487.content.sheet.widthMm,packs.487.content.sheet.lengthMm,packs.487.content.material,packs.487.content.quantity,packs.487.content.thicknessMm,packs.487.oversize,packs.487.supplier,packs.487.hazardous,packs.488.sku,packs.488.name,packs.488.cutFee,packs.488.massKg,packs.488.prices.0.price,packs.488.prices.0.fromPacks,packs.488.prices.1.price,packs.488.prices.1.fromPacks,packs.488.prices.2.price,packs.488.prices.2.fromPacks,packs.488.content.form,packs.488.content.unit,packs.488.content.sheet.widthMm,packs.488.content.sheet.lengthMm,packs.488.content.material,packs.488.content.quantity,packs.488.content.thicknessMm,packs.488.oversize,packs.488.supplier,packs.488.hazardous,packs.489.sku,packs.489.name,packs.489.cutFee,packs.489.massKg,packs.489.prices.0.price,packs.489.prices.0.fromPacks,packs.489.prices.1.price,packs.489.prices.1.fromPacks,packs.489.content.form,packs.489.content.unit,packs.489.content.sheet.widthMm,packs.489.content.sheet.lengthMm,packs.489.content.material,packs.489.content.quantity,packs.489.content.thicknessMm,packs.489.oversize,packs.489.supplier,packs.489.hazardous,packs.490.sku,packs.490.name,packs.490.cutFee,packs.490.massKg,packs.490.prices.0.price,packs.490.prices.0.fromPacks,packs.490.prices.1.price,packs.490.prices.1.fromPacks,packs.490.content.form,packs.490.content.unit,packs.490.content.sheet.widthMm,packs.490.content.sheet.lengthMm,packs.490.content.material,packs.490.content.quantity,packs.490.content.thicknessMm,packs.490.oversize,packs.490.supplier,packs.490.hazardous,packs.491.sku,packs.491.name,packs.491.cutFee,packs.491.massKg,packs.491.prices.0.price,packs.491.prices.0.fromPacks,packs.491.prices.1.price,packs.491.prices.1.fromPacks,packs.491.content.form,packs.491.content.unit,packs.491.content.sheet.widthMm,packs.491.content.sheet.lengthMm,packs.491.content.material,packs.491.content.quantity,packs.491.content.thicknessMm,packs.491.oversize,packs.491.supplier,packs.491.hazardous,packs.492.sku,packs.492.name,packs.492.cutFee,packs.492.massKg,packs.492.prices.0.price,packs.492.prices.0.fromPacks,packs.492.prices.1.price,packs.492.prices.1.fromPacks,packs.492.prices.2.price,packs.492.prices.2.fromPacks,packs.492.content.form,packs.492.content.unit,packs.492.content.sheet.widthMm,packs.492.content.sheet.lengthMm,packs.492.content.material,packs.492.content.quantity,packs.492.content.thicknessMm,packs.492.oversize,packs.492.supplier,packs.492.hazardous,packs.493.sku,packs.493.name,packs.493.cutFee,packs.493.massKg,packs.493.prices.0.price,packs.493.prices.0.fromPacks,packs.493.prices.1.price,packs.493.prices.1.fromPacks,packs.493.content.form,packs.493.content.unit,packs.493.content.sheet.widthMm,packs.493.content.sheet.lengthMm,packs.493.content.material,packs.493.content.quantity,packs.493.content.thicknessMm,packs.493.oversize,packs.493.supplier,packs.493.hazardous,packs.494.sku,packs.494.name,packs.494.cutFee,packs.494.massKg,packs.494.prices.0.price,packs.494.prices.0.fromPacks,packs.494.prices.1.price,packs.494.prices.1.fromPacks,packs.494.prices.2.price,packs.494.prices.2.fromPacks,packs.494.content.form,packs.494.content.unit,packs.494.content.sheet.widthMm,packs.494.content.sheet.lengthMm,packs.494.content.material,packs.494.content.quantity,packs.494.content.thicknessMm,packs.494.oversize,packs.494.supplier,packs.494.hazardous,packs.495.sku,packs.495.name,packs.495.cutFee,packs.495.massKg,packs.495.prices.0.price,packs.495.prices.0.fromPacks,packs.495.prices.1.price,packs.495.prices.1.fromPacks,packs.495.content.form,packs.495.content.unit,packs.495.content.sheet.widthMm,packs.495.content.sheet.lengthMm,packs.495.content.material,packs.495.content.quantity,packs.495.content.thicknessMm,packs.495.oversize,packs.495.supplier,packs.495.hazardous,packs.496.sku,packs.496.name,packs.496.cutFee,packs.496.massKg,packs.496.prices.0.price,packs.496.prices.0.fromPacks,packs.496.prices.1.price,packs.496.prices.1.fromPacks,packs.496.prices.2.price,packs.496.prices.2.fromPacks,packs.496.content.form,packs.496.content.unit,packs.496.content.sheet.widthMm,packs.496.content.sheet.lengthMm,packs.496.content.material,packs.496.content.quantity,packs.496.content.thicknessMm,packs.496.oversize,packs.496.supplier,packs.496.hazardous,packs.497.sku,packs.497.name,packs.497.cutFee,packs.497.massKg,packs.497.prices.0.price,packs.497.prices.0.fromPacks,packs.497.prices.1.price,packs.497.prices.1.fromPacks,packs.497.content.form,packs.497.content.unit,packs.497.content.sheet.widthMm,packs.497.content.sheet.lengthMm,packs.497.content.material,packs.497.content.quantity,packs.497.content.thicknessMm,packs.497.oversize,packs.497.supplier,packs.497.hazardous,packs.498.sku,packs.498.name,packs.498.cutFee,packs.498.massKg,packs.498.prices.0.price,packs.498.prices.0.fromPacks,packs.498.prices.1.price,packs.498.prices.1.fromPacks,packs.498.content.form,packs.498.content.unit,packs.498.content.sheet.widthMm,packs.498.content.sheet.lengthMm,packs.498.content.material,packs.498.content.quantity,packs.498.content.thicknessMm,packs.498.oversize,packs.498.supplier,packs.498.hazardous,packs.499.sku,packs.499.name,packs.499.cutFee,packs.499.massKg,packs.499.prices.0.price,packs.499.prices.0.fromPacks,packs.499.prices.1.price,packs.499.prices.1.fromPacks,packs.499.content.form,packs.499.content.unit,packs.499.content.sheet.widthMm,packs.499.content.sheet.lengthMm,packs.499.content.material,packs.499.content.quantity,packs.499.content.thicknessMm,packs.499.oversize,packs.499.supplier,packs.499.hazardous,packs.500.sku,packs.500.name,packs.500.cutFee,packs.500.massKg,packs.500.prices.0.price,packs.500.prices.0.fromPacks,packs.500.prices.1.price,packs.500.prices.1.fromPacks,packs.500.prices.2.price,packs.500.prices.2.fromPacks,packs.500.content.form,packs.500.content.unit,packs.500.content.sheet.widthMm,packs.500.content.sheet.lengthMm,packs.500.content.material,packs.500.content.quantity,packs.500.content.thicknessMm,packs.500.oversize,packs.500.supplier,packs.500.hazardous,packs.501.sku,packs.501.name,packs.501.cutFee,packs.501.massKg,packs.501.prices.0.price,packs.501.prices.0.fromPacks,packs.501.prices.1.price,packs.501.prices.1.fromPacks,packs.501.content.form,packs.501.content.unit,packs.501.content.sheet.widthMm,packs.501.content.sheet.lengthMm,packs.501.content.material,packs.501.content.quantity,packs.501.content.thicknessMm,packs.501.oversize,packs.501.supplier,packs.501.hazardous,packs.502.sku,packs.502.name,packs.502.cutFee,packs.502.massKg,packs.502.prices.0.price,packs.502.prices.0.fromPacks,packs.502.prices.1.price,packs.502.prices.1.fromPacks,packs.502.prices.2.price,packs.502.prices.2.fromPacks,packs.502.content.form,packs.502.content.unit,packs.502.content.sheet.widthMm,packs.502.content.sheet.lengthMm,packs.502.content.material,packs.502.content.quantity,packs.502.content.thicknessMm,packs.502.oversize,packs.502.supplier,packs.502.hazardous,packs.503.sku,packs.503.name,packs.503.cutFee,packs.503.massKg,packs.503.prices.0.price,packs.503.prices.0.fromPacks,packs.503.prices.1.price,packs.503.prices.1.fromPacks,packs.503.content.form,packs.503.content.unit,packs.503.content.sheet.widthMm,packs.503.content.sheet.lengthMm,packs.503.content.material,packs.503.content.quantity,packs.503.content.thicknessMm,packs.503.oversize,packs.503.supplier,packs.503.hazardous,packs.504.sku,packs.504.name,packs.504.cutFee,packs.504.massKg,packs.504.prices.0.price,packs.504.prices.0.fromPacks,packs.504.prices.1.price,packs.504.prices.1.fromPacks,packs.504.prices.2.price,packs.504.prices.2.fromPacks,packs.504.content.form,packs.504.content.unit,packs.504.content.sheet.widthMm,packs.504.content.sheet.lengthMm,packs.504.content.material,packs.504.content.quantity,packs.504.content.thicknessMm,packs.504.oversize,packs.504.supplier,packs.504.hazardous,packs.505.sku,packs.505.name,packs.505.cutFee,packs.505.massKg,packs.505.prices.0.price,packs.505.prices.0.fromPacks,packs.505.prices.1.price,packs.505.prices.1.fromPacks,packs.505.content.form,packs.505.content.unit,packs.505.content.sheet.widthMm,packs.505.content.sheet.lengthMm,packs.505.content.material,packs.505.content.quantity,packs.505.content.thicknessMm,packs.505.oversize,packs.505.supplier,packs.505.hazardous,packs.506.sku,packs.506.name,packs.506.cutFee,packs.506.massKg,packs.506.prices.0.price,packs.506.prices.0.fromPacks,packs.506.prices.1.price,packs.506.prices.1.fromPacks,packs.506.content.form,packs.506.content.unit,packs.506.content.sheet.widthMm,packs.506.content.sheet.lengthMm,packs.506.content.material,packs.506.content.quantity,packs.506.content.thicknessMm,packs.506.oversize,packs.506.supplier,packs.506.hazardous,packs.507.sku,packs.507.name,packs.507.cutFee,packs.507.massKg,packs.507.prices.0.price,packs.507.prices.0.fromPacks,packs.507.prices.1.price,packs.507.prices.1.fromPacks,packs.507.content.form,packs.507.content.unit,packs.507.content.sheet.widthMm,packs.507.content.sheet.lengthMm,packs.507.content.material,packs.507.content.quantity,packs.507.content.thicknessMm,packs.507.oversize,packs.507.supplier,packs.507.hazardous,packs.508.sku,packs.508.name,packs.508.cutFee,packs.508.massKg,packs.508.prices.0.price,packs.508.prices.0.fromPacks,packs.508.prices.1.price,packs.508.prices.1.fromPacks,packs.508.prices.2.price,packs.508.prices.2.fromPacks,packs.508.content.form,packs.508.content.unit,packs.508.content.sheet.widthMm,packs.508.content.sheet.lengthMm,packs.508.content.material,packs.508.content.quantity,packs.508.content.thicknessMm,packs.508.oversize,packs.508.supplier,packs.508.hazardous,packs.509.sku,packs.509.name,packs.509.cutFee,packs.509.massKg,packs.509.prices.0.price,packs.509.prices.0.fromPacks,packs.509.prices.1.price,packs.509.prices.1.fromPacks,packs.509.content.form,packs.509.content.unit,packs.509.content.sheet.widthMm,packs.509.content.sheet.lengthMm,packs.509.content.material,packs.509.content.quantity,packs.509.content.thicknessMm,packs.509.oversize,packs.509.supplier,packs.509.hazardous,packs.510.sku,packs.510.name,packs.510.cutFee,packs.510.massKg,packs.510.prices.0.price,packs.510.prices.0.fromPacks,packs.510.prices.1.price,packs.510.prices.1.fromPacks,packs.510.prices.2.price,packs.510.prices.2.fromPacks,packs.510.content.form,packs.510.content.unit,packs.510.content.sheet.widthMm,packs.510.content.sheet.lengthMm,packs.510.content.material,packs.510.content.quantity,packs.510.content.thicknessMm,packs.510.oversize,packs.510.supplier,packs.510.hazardous,packs.511.sku,packs.511.name,packs.511.cutFee,packs.511.massKg,packs.511.prices.0.price,packs.511.prices.0.fromPacks,packs.511.prices.1.price,packs.511.prices.1.fromPacks,packs.511.content.form,packs.511.content.unit,packs.511.content.sheet.widthMm,packs.511.content.sheet.lengthMm,packs.511.content.material,packs.511.content.quantity,packs.511.content.thicknessMm,packs.511.oversize,packs.511.supplier,packs.511.hazardous,packs.512.sku,packs.512.name,packs.512.cutFee,packs.512.massKg,packs.512.prices.0.price,packs.512.prices.0.fromPacks,packs.512.prices.1.price,packs.512.prices.1.fromPacks,packs.512.prices.2.price,packs.512.prices.2.fromPacks,packs.512.content.form,packs.512.content.unit,packs.512.content.sheet.widthMm,packs.512.content.sheet.lengthMm,packs.512.content.material,packs.512.content.quantity,packs.512.content.thicknessMm,packs.512.oversize,packs.512.supplier,packs.512.hazardous,packs.513.sku,packs.513.name,packs.513.cutFee,packs.513.massKg,packs.513.prices.0.price,packs.513.prices.0.fromPacks,packs.513.prices.1.price,packs.513.prices.1.fromPacks,packs.513.content.form,packs.513.content.unit,packs.513.content.sheet.widthMm,packs.513.content.sheet.lengthMm,packs.513.content.material,packs.513.content.quantity,packs.513.content.thicknessMm,packs.513.oversize,packs.513.supplier,packs.513.hazardous,packs.514.sku,packs.514.name,packs.514.cutFee,packs.514.massKg,packs.514.prices.0.price,packs.514.prices.0.fromPacks,packs.514.prices.1.price,packs.514.prices.1.fromPacks,packs.514.content.form,packs.514.content.unit,packs.514.content.sheet.widthMm,packs.514.content.sheet.lengthMm,packs.514.content.material,packs.514.content.quantity,packs.514.content.thicknessMm,packs.514.oversize,packs.514.supplier,packs.514.hazardous,packs.515.sku,packs.515.name,packs.515.cutFee,packs.515.massKg,packs.515.prices.0.price,packs.515.prices.0.fromPacks,packs.515.prices.1.price,packs.515.prices.1.fromPacks,packs.515.content.form,packs.515.content.unit,packs.515.content.sheet.widthMm,packs.515.content.sheet.lengthMm,packs.515.content.material,packs.515.content.quantity,packs.515.content.thicknessMm,packs.515.oversize,packs.515.supplier,packs.515.hazardous,packs.516.sku,packs.516.name,packs.516.cutFee,packs.516.massKg,packs.516.prices.0.price,packs.516.prices.0.fromPacks,packs.516.prices.1.price,packs.516.prices.1.fromPacks,packs.516.prices.2.price,packs.516.prices.2.fromPacks,packs.516.content.form,packs.516.content.unit,packs.516.content.sheet.widthMm,packs.516.content.sheet.lengthMm,packs.516.content.material,packs.516.content.quantity,packs.516.content.thicknessMm,packs.516.oversize,packs.516.supplier,packs.516.hazardous,packs.517.sku,packs.517.name,packs.517.cutFee,packs.517.massKg,packs.517.prices.0.price,packs.517.prices.0.fromPacks,packs.517.prices.1.price,packs.517.prices.1.fromPacks,packs.517.content.form,packs.517.content.unit,packs.517.content.sheet.widthMm,packs.517.content.sheet.lengthMm,packs.517.content.material,packs.517.content.quantity,packs.517.content.thicknessMm,packs.517.oversize,packs.517.supplier,packs.517.hazardous,packs.518.sku,packs.518.name,packs.518.cutFee,packs.518.massKg,packs.518.prices.0.price,packs.518.prices.0.fromPacks,packs.518.prices.1.price,packs.518.prices.1.fromPacks,packs.518.prices.2.price,packs.518.prices.2.fromPacks,packs.518.content.form,packs.518.content.unit,packs.518.content.sheet.widthMm,packs.518.content.sheet.lengthMm,packs.518.content.material,packs.518.content.quantity,packs.518.content.thicknessMm,packs.518.oversize,packs.518.supplier,packs.518.hazardous,packs.519.sku,packs.519.name,packs.519.cutFee,packs.519.massKg,packs.519.prices.0.price,packs.519.prices.0.fromPacks,packs.519.prices.1.price,packs.519.prices.1.fromPacks,packs.519.content.form,packs.519.content.unit,packs.519.content.sheet.widthMm,packs.519.content.sheet.lengthMm,packs.519.content.material,packs.519.content.quantity,packs.519.content.thicknessMm,packs.519.oversize,packs.519.supplier,packs.519.hazardous,packs.520.sku,packs.520.name,packs.520.cutFee,packs.520.massKg,packs.520.prices.0.price,packs.520.prices.0.fromPacks,packs.520.prices.1.price,packs.520.prices.1.fromPacks,packs.520.prices.2.price,packs.520.prices.2.fromPacks,packs.520.content.form,packs.520.content.unit,packs.520.content.sheet.widthMm,packs.520.content.sheet.lengthMm,packs.520.content.material,packs.520.content.quantity,packs.520.content.thicknessMm,packs.520.oversize,packs.520.supplier,packs.520.hazardous,packs.521.sku,packs.521.name,packs.521.cutFee,packs.521.massKg,packs.521.prices.0.price,packs.521.prices.0.fromPacks,packs.521.prices.1.price,packs.521.prices.1.fromPacks,packs.521.content.form,packs.521.content.unit,packs.521.content.sheet.widthMm,packs.521.content.sheet.lengthMm,packs.521.content.material,packs.521.content.quantity,packs.521.content.thicknessMm,packs.521.oversize,packs.521.supplier,packs.521.hazardous,packs.522.sku,packs.522.name,packs.522.cutFee,packs.522.massKg,packs.522.prices.0.price,packs.522.prices.0.fromPacks,packs.522.prices.1.price,packs.522.prices.1.fromPacks,packs.522.content.form,packs.522.content.unit,packs.522.content.sheet.widthMm,packs.522.content.sheet.lengthMm,packs.522.content.material,packs.522.content.quantity,packs.522.content.thicknessMm,packs.522.oversize,packs.522.supplier,packs.522.hazardous,packs.523.sku,packs.523.name,packs.523.cutFee,packs.523.massKg,packs.523.prices.0.price,packs.523.prices.0.fromPacks,packs.523.prices.1.price,packs.523.prices.1.fromPacks,packs.523.content.form,packs.523.content.unit,packs.523.content.sheet.widthMm,packs.523.content.sheet.lengthMm,packs.523.content.material,packs.523.content.quantity,packs.523.content.thicknessMm,packs.523.oversize,packs.523.supplier,packs.523.hazardous,packs.524.sku,packs.524.name,packs.524.cutFee,packs.524.massKg,packs.524.prices.0.price,packs.524.prices.0.fromPacks,packs.524.prices.1.price,packs.524.prices.1.fromPacks,packs.524.prices.2.price,packs.524.prices.2.fromPacks,packs.524.content.form,packs.524.content.unit,packs.524.content.sheet.widthMm,packs.524.content.sheet.lengthMm,packs.524.content.material,packs.524.content.quantity,packs.524.content.thicknessMm,packs.524.oversize,packs.524.supplier,packs.524.hazardous,packs.525.sku,packs.525.name,packs.525.cutFee,packs.525.massKg,packs.525.prices.0.price,packs.525.prices.0.fromPacks,packs.525.prices.1.price,packs.525.prices.1.fromPacks,packs.525.content.form,packs.525.content.unit,packs.525.content.sheet.widthMm,packs.525.content.sheet.lengthMm,packs.525.content.material,packs.525.content.quantity,packs.525.content.thicknessMm,packs.525.oversize,packs.525.supplier,packs.525.hazardous,packs.526.sku,packs.526.name,packs.526.cutFee,packs.526.massKg,packs.526.prices.0.price,packs.526.prices.0.fromPacks,packs.526.prices.1.price,packs.526.prices.1.fromPacks,packs.526.prices.2.price,packs.526.prices.2.fromPacks,packs.526.content.form,packs.526.content.unit,packs.526.content.sheet.widthMm,packs.526.content.sheet.lengthMm,packs.526.content.material,packs.526.content.quantity,packs.526.content.thicknessMm,packs.526.oversize,packs.526.supplier,packs.526.hazardous,packs.527.sku,packs.527.name,packs.527.cutFee,packs.527.massKg,packs.527.prices.0.price,packs.527.prices.0.fromPacks,packs.527.prices.1.price,packs.527.prices.1.fromPacks,packs.527.content.form,packs.527.content.unit,packs.527.content.sheet.widthMm,packs.527.content.sheet.lengthMm,packs.527.content.material,packs.527.content.quantity,packs.527.content.thicknessMm,packs.527.oversize,packs.527.supplier,packs.527.hazardous,packs.528.sku,packs.528.name,packs.528.cutFee,packs.528.massKg,packs.528.prices.0.price,packs.528.prices.0.fromPacks,packs.528.prices.1.price,packs.528.prices.1.fromPacks,packs.528.prices.2.price,packs.528.prices.2.fromPacks,packs.528.content.form,packs.528.content.unit,packs.528.content.sheet.widthMm,packs.528.content.sheet.lengthMm,packs.528.content.material,packs.528.content.quantity,packs.528.content.thicknessMm,packs.528.oversize,packs.528.supplier,packs.528.hazardous,packs.529.sku,packs.529.name,packs.529.cutFee,packs.529.massKg,packs.529.prices.0.price,packs.529.prices.0.fromPacks,packs.529.prices.1.price,packs.529.prices.1.fromPacks,packs.529.content.form,packs.529.content.unit,packs.529.content.sheet.widthMm,packs.529.content.sheet.lengthMm,packs.529.content.material,packs.529.content.quantity,packs.529.content.thicknessMm,packs.529.oversize,packs.529.supplier,packs.529.hazardous,packs.530.sku,packs.530.name,packs.530.cutFee,packs.530.massKg,packs.530.prices.0.price,packs.530.prices.0.fromPacks,packs.530.prices.1.price,packs.530.prices.1.fromPacks,packs.530.content.form,packs.530.content.unit,packs.530.content.sheet.widthMm,packs.530.content.sheet.lengthMm,packs.530.content.material,packs.530.content.quantity,packs.530.content.thicknessMm,packs.530.oversize,packs.530.supplier,packs.530.hazardous,packs.531.sku,packs.531.name,packs.531.cutFee,packs.531.massKg,packs.531.prices.0.price,packs.531.prices.0.fromPacks,packs.531.prices.1.price,packs.531.prices.1.fromPacks,packs.531.content.form,packs.531.content.unit,packs.531.content.sheet.widthMm,packs.531.content.sheet.lengthMm,packs.531.content.material,packs.531.content.quantity,packs.531.content.thicknessMm,packs.531.oversize,packs.531.supplier,packs.531.hazardous,packs.532.sku,packs.532.name,packs.532.cutFee,packs.532.massKg,packs.532.prices.0.price,packs.532.prices.0.fromPacks,packs.532.prices.1.price,packs.532.prices.1.fromPacks,packs.532.prices.2.price,packs.532.prices.2.fromPacks,packs.532.content.form,packs.532.content.unit,packs.532.content.sheet.widthMm,packs.532.content.sheet.lengthMm,packs.532.content.material,packs.532.content.quantity,packs.532.content.thicknessMm,packs.532.oversize,packs.532.supplier,packs.532.hazardous,packs.533.sku,packs.533.name,packs.533.cutFee,packs.533.massKg,packs.533.prices.0.price,packs.533.prices.0.fromPacks,packs.533.prices.1.price,packs.533.prices.1.fromPacks,packs.533.content.form,packs.533.content.unit,packs.533.content.sheet.widthMm,packs.533.content.sheet.lengthMm,packs.533.content.material,packs.533.content.quantity,packs.533.content.thicknessMm,packs.533.oversize,packs.533.supplier,packs.533.hazardous,packs.534.sku,packs.534.name,packs.534.cutFee,packs.534.massKg,packs.534.prices.0.price,packs.534.prices.0.fromPacks,packs.534.prices.1.price,packs.534.prices.1.fromPacks,packs.534.prices.2.price,packs.534.prices.2.fromPacks,packs.534.content.form,packs.534.content.unit,packs.534.content.sheet.widthMm,packs.534.content.sheet.lengthMm,packs.534.content.material,packs.534.content.quantity,packs.534.content.thicknessMm,packs.534.oversize,packs.534.supplier,packs.534.hazardous,packs.535.sku,packs.535.name,packs.535.cutFee,packs.535.massKg,packs.535.prices.0.price,packs.535.prices.0.fromPacks,packs.535.prices.1.price,packs.535.prices.1.fromPacks,packs.535.content.form,packs.535.content.unit,packs.535.content.sheet.widthMm,packs.535.content.sheet.lengthMm,packs.535.content.material,packs.535.content.quantity,packs.535.content.thicknessMm,packs.535.oversize,packs.535.supplier,packs.535.hazardous,packs.536.sku,packs.536.name,packs.536.cutFee,packs.536.massKg,packs.536.prices.0.price,packs.536.prices.0.fromPacks,packs.536.prices.1.price,packs.536.prices.1.fromPacks,packs.536.prices.2.price,packs.536.prices.2.fromPacks,packs.536.content.form,packs.536.content.unit,packs.536.content.sheet.widthMm,packs.536.content.sheet.lengthMm,packs.536.content.material,packs.536.content.quantity,packs.536.content.thicknessMm,packs.536.oversize,packs.536.supplier,packs.536.hazardous,packs.537.sku,packs.537.name,packs.537.cutFee,packs.537.massKg,packs.537.prices.0.price,packs.537.prices.0.fromPacks,packs.537.prices.1.price,packs.537.prices.1.fromPacks,packs.537.content.form,packs.537.content.unit,packs.537.content.sheet.widthMm,packs.537.content.sheet.lengthMm,packs.537.content.material,packs.537.content.quantity,packs.537.content.thicknessMm,packs.537.oversize,packs.537.supplier,packs.537.hazardous,packs.538.sku,packs.538.name,packs.538.cutFee,packs.538.massKg,packs.538.prices.0.price,packs.538.prices.0.fromPacks,packs.538.prices.1.price,packs.538.prices.1.fromPacks,packs.538.content.form,packs.538.content.unit,packs.538.content.sheet.widthMm,packs.538.content.sheet.lengthMm,packs.538.content.material,packs.538.content.quantity,packs.538.content.thicknessMm,packs.538.oversize,packs.538.supplier,packs.538.hazardous,packs.539.sku,packs.539.name,packs.539.cutFee,packs.539.massKg,packs.539.prices.0.price,packs.539.prices.0.fromPacks,packs.539.prices.1.price,packs.539.prices.1.fromPacks,packs.539.content.form,packs.539.content.unit,packs.539.content.sheet.widthMm,packs.539.content.sheet.lengthMm,packs.539.content.material,packs.539.content.quantity,packs.539.content.thicknessMm,packs.539.oversize,packs.539.supplier,packs.539.hazardous,packs.540.sku,packs.540.name,packs.540.cutFee,packs.540.massKg,packs.540.prices.0.price,packs.540.prices.0.fromPacks,packs.540.prices.1.price,packs.540.prices.1.fromPacks,packs.540.prices.2.price,packs.540.prices.2.fromPacks,packs.540.content.form,packs.540.content.unit,packs.540.content.sheet.widthMm,packs.540.content.sheet.lengthMm,packs.540.content.material,packs.540.content.quantity,packs.540.content.thicknessMm,packs.540.oversize,packs.540.supplier,packs.540.hazardous,packs.541.sku,packs.541.name,packs.541.cutFee,packs.541.massKg,packs.541.prices.0.price,packs.541.prices.0.fromPacks,packs.541.prices.1.price,packs.541.prices.1.fromPacks,packs.541.content.form,packs.541.content.unit,packs.541.content.sheet.widthMm,packs.541.content.sheet.lengthMm,packs.541.content.material,packs.541.content.quantity,packs.541.content.thicknessMm,packs.541.oversize,packs.541.supplier,packs.541.hazardous,packs.542.sku,packs.542.name,packs.542.cutFee,packs.542.massKg,packs.542.prices.0.price,packs.542.prices.0.fromPacks,packs.542.prices.1.price,packs.542.prices.1.fromPacks,packs.542.prices.2.price,packs.542.prices.2.fromPacks,packs.542.content.form,packs.542.content.unit,packs.542.content.sheet.widthMm,packs.542.content.sheet.lengthMm,packs.542.content.material,packs.542.content.quantity,packs.542.content.thicknessMm,packs.542.oversize,packs.542.supplier,packs.542.hazardous,packs.543.sku,packs.543.name,packs.543.cutFee,packs.543.massKg,packs.543.prices.0.price,packs.543.prices.0.fromPacks,packs.543.prices.1.price,packs.543.prices.1.fromPacks,packs.543.content.form,packs.543.content.unit,packs.543.content.sheet.widthMm,packs.543.content.sheet.lengthMm,packs.543.content.material,packs.543.content.quantity,packs.543.content.thicknessMm,packs.543.oversize,packs.543.supplier,packs.543.hazardous,packs.544.sku,packs.544.name,packs.544.cutFee,packs.544.massKg,packs.544.prices.0.price,packs.544.prices.0.fromPacks,packs.544.prices.1.price,packs.544.prices.1.fromPacks,packs.544.prices.2.price,packs.544.prices.2.fromPacks,packs.544.content.form,packs.544.content.unit,packs.544.content.sheet.widthMm,packs.544.content.sheet.lengthMm,packs.544.content.material,packs.544.content.quantity,packs.544.content.thicknessMm,packs.544.oversize,packs.544.supplier,packs.544.hazardous,packs.545.sku,packs.545.name,packs.545.cutFee,packs.545.massKg,packs.545.prices.0.price,packs.545.prices.0.fromPacks,packs.545.prices.1.price,packs.545.prices.1.fromPacks,packs.545.content.form,packs.545.content.unit,packs.545.content.sheet.widthMm,packs.545.content.sheet.lengthMm,packs.545.content.material,packs.545.content.quantity,packs.545.content.thicknessMm,packs.545.oversize,packs.545.supplier,packs.545.hazardous,packs.546.sku,packs.546.name,packs.546.cutFee,packs.546.massKg,packs.546.prices.0.price,packs.546.prices.0.fromPacks,packs.546.prices.1.price,packs.546.prices.1.fromPacks,packs.546.content.form,packs.546.content.unit,packs.546.content.sheet.widthMm,packs.546.content.sheet.lengthMm,packs.546.content.material,packs.546.content.quantity,packs.546.content.thicknessMm,packs.546.oversize,packs.546.supplier,packs.546.hazardous,packs.547.sku,packs.547.name,packs.547.cutFee,packs.547.massKg,packs.547.prices.0.price,packs.547.prices.0.fromPacks,packs.547.prices.1.price,packs.547.prices.1.fromPacks,packs.547.content.form,packs.547.content.unit,packs.547.content.sheet.widthMm,packs.547.content.sheet.lengthMm,packs.547.content.material,packs.547.content.quantity,packs.547.content.thicknessMm,packs.547.oversize,packs.547.supplier,packs.547.hazardous,packs.548.sku,packs.548.name,packs.548.massKg,packs.548.prices.0.price,packs.548.prices.0.fromPacks,packs.548.prices.1.price,packs.548.prices.1.fromPacks,packs.548.content.form,packs.548.content.unit,packs.548.content.sheet.widthMm,packs.548.content.sheet.lengthMm,packs.548.content.material,packs.548.content.quantity,packs.548.content.thicknessMm,packs.548.oversize,packs.548.supplier,packs.548.hazardous,packs.549.sku,packs.549.name,packs.549.massKg,packs.549.prices.0.price,packs.549.prices.0.fromPacks,packs.549.prices.1.price,packs.549.prices.1.fromPacks,packs.549.prices.2.price,packs.549.prices.2.fromPacks,packs.549.content.form,packs.549.content.unit,packs.549.content.sheet.widthMm,packs.549.content.sheet.lengthMm,packs.549.content.material,packs.549.content.quantity,packs.549.content.thicknessMm,packs.549.oversize,packs.549.supplier,packs.549.hazardous,packs.550.sku,packs.550.name,packs.550.cutFee,packs.550.massKg,packs.550.prices.0.price,packs.550.prices.0.fromPacks,packs.550.prices.1.price,packs.550.prices.1.fromPacks,packs.550.prices.2.price,packs.550.prices.2.fromPacks,packs.550.content.form,packs.550.content.unit,packs.550.content.sheet.widthMm,packs.550.content.sheet.lengthMm,packs.550.content.material,packs.550.content.quantity,packs.550.content.thicknessMm,packs.550.oversize,packs.550.supplier,packs.550.hazardous,packs.551.sku,packs.551.name,packs.551.cutFee,packs.551.massKg,packs.551.prices.0.price,packs.551.prices.0.fromPacks,packs.551.prices.1.price,packs.551.prices.1.fromPacks,packs.551.content.form,packs.551.content.unit,packs.551.content.sheet.widthMm,packs.551.content.sheet.lengthMm,packs.551.content.material,packs.551.content.quantity,packs.551.content.thicknessMm,packs.551.oversize,packs.551.supplier,packs.551.hazardous,packs.552.sku,packs.552.name,packs.552.massKg,packs.552.prices.0.price,packs.552.prices.0.fromPacks,packs.552.prices.1.price,packs.552.prices.1.fromPacks,packs.552.content.form,packs.552.content.unit,packs.552.content.sheet.widthMm,packs.552.content.sheet.lengthMm,packs.552.content.material,packs.552.content.quantity,packs.552.content.thicknessMm,packs.552.oversize,packs.552.supplier,packs.552.hazardous,packs.553.sku,packs.553.name,packs.553.cutFee,packs.553.massKg,packs.553.prices.0.price,packs.553.prices.0.fromPacks,packs.553.prices.1.price,packs.553.prices.1.fromPacks,packs.553.prices.2.price,packs.553.prices.2.fromPacks,packs.553.content.form,packs.553.content.unit,packs.553.content.sheet.widthMm,packs.553.content.sheet.lengthMm,packs.553.content.material,packs.553.content.quantity,packs.553.content.thicknessMm,packs.553.oversize,packs.553.supplier,packs.553.hazardous,packs.554.sku,packs.554.name,packs.554.cutFee,packs.554.massKg,packs.554.prices.0.price,packs.554.prices.0.fromPacks,packs.554.prices.1.price,packs.554.prices.1.fromPacks,packs.554.content.form,packs.554.content.unit,packs.554.content.sheet.widthMm,packs.554.content.sheet.lengthMm,packs.554.content.material,packs.554.content.quantity,packs.554.content.thicknessMm,packs.554.oversize,packs.554.supplier,packs.554.hazardous,packs.555.sku,packs.555.name,packs.555.massKg,packs.555.prices.0.price,packs.555.prices.0.fromPacks,packs.555.prices.1.price,packs.555.prices.1.fromPacks,packs.555.content.form,packs.555.content.unit,packs.555.content.sheet.widthMm,packs.555.content.sheet.lengthMm,packs.555.content.material,packs.555.content.quantity,packs.555.content.thicknessMm,packs.555.oversize,packs.555.supplier,packs.555.hazardous,packs.556.sku,packs.556.name,packs.556.massKg,packs.556.prices.0.price,packs.556.prices.0.fromPacks,packs.556.prices.1.price,packs.556.prices.1.fromPacks,packs.556.prices.2.price,packs.556.prices.2.fromPacks,packs.556.content.form,packs.556.content.unit,packs.556.content.sheet.widthMm,packs.556.content.sheet.lengthMm,packs.556.content.material,packs.556.content.quantity,packs.556.content.thicknessMm,packs.556.oversize,packs.556.supplier,packs.556.hazardous,packs.557.sku,packs.557.name,packs.557.cutFee,packs.557.massKg,packs.557.prices.0.price,packs.557.prices.0.fromPacks,packs.557.prices.1.price,packs.557.prices.1.fromPacks,packs.557.prices.2.price,packs.557.prices.2.fromPacks,packs.557.content.form,packs.557.content.unit,packs.557.content.sheet.widthMm,packs.557.content.sheet.lengthMm,packs.557.content.material,packs.557.content.quantity,packs.557.content.thicknessMm,packs.557.oversize,packs.557.supplier,packs.557.hazardous,packs.558.sku,packs.558.name,packs.558.cutFee,packs.558.massKg,packs.558.prices.0.price,packs.558.prices.0.fromPacks,packs.558.prices.1.price,packs.558.prices.1.fromPacks,packs.558.content.form,packs.558.content.unit,packs.558.content.sheet.widthMm,packs.558.content.sheet.lengthMm,packs.558.content.material,packs.558.content.quantity,packs.558.content.thicknessMm,packs.558.oversize,packs.558.supplier,packs.558.hazardous,packs.559.sku,packs.559.name,packs.559.massKg,packs.559.prices.0.price,packs.559.prices.0.fromPacks,packs.559.prices.1.price,packs.559.prices.1.fromPacks,packs.559.content.form,packs.559.content.unit,packs.559.content.sheet.widthMm,packs.559.content.sheet.lengthMm,packs.559.content.material,packs.559.content.quantity,packs.559.content.thicknessMm,packs.559.oversize,packs.559.supplier,packs.559.hazardous,packs.560.sku,packs.560.name,packs.560.cutFee,packs.560.massKg,packs.560.prices.0.price,packs.560.prices.0.fromPacks,packs.560.prices.1.price,packs.560.prices.1.fromPacks,packs.560.prices.2.price,packs.560.prices.2.fromPacks,packs.560.content.form,packs.560.content.unit,packs.560.content.sheet.widthMm,packs.560.content.sheet.lengthMm,packs.560.content.material,packs.560.content.quantity,packs.560.content.thicknessMm,packs.560.oversize,packs.560.supplier,packs.560.hazardous,packs.561.sku,packs.561.name,packs.561.cutFee,packs.561.massKg,packs.561.prices.0.price,packs.561.prices.0.fromPacks,packs.561.prices.1.price,packs.561.prices.1.fromPacks,packs.561.content.form,packs.561.content.unit,packs.561.content.sheet.widthMm,packs.561.content.sheet.lengthMm,packs.561.content.material,packs.561.content.quantity,packs.561.content.thicknessMm,packs.561.oversize,packs.561.supplier,packs.561.hazardous,packs.562.sku,packs.562.name,packs.562.massKg,packs.562.prices.0.price,packs.562.prices.0.fromPacks,packs.562.prices.1.price,packs.562.prices.1.fromPacks,packs.562.content.form,packs.562.content.unit,packs.562.content.sheet.widthMm,packs.562.content.sheet.lengthMm,packs.562.content.material,packs.562.content.quantity,packs.562.content.thicknessMm,packs.562.oversize,packs.562.supplier,packs.562.hazardous,packs.563.sku,packs.563.name,packs.563.massKg,packs.563.prices.0.price,packs.563.prices.0.fromPacks,packs.563.prices.1.price,packs.563.prices.1.fromPacks,packs.563.prices.2.price,packs.563.prices.2.fromPacks,packs.563.content.form,packs.563.content.unit,packs.563.content.sheet.widthMm,packs.563.content.sheet.lengthMm,packs.563.content.material,packs.563.content.quantity,packs.563.content.thicknessMm,packs.563.oversize,packs.563.supplier,packs.563.hazardous,packs.564.sku,packs.564.name,packs.564.cutFee,packs.564.massKg,packs.564.prices.0.price,packs.564.prices.0.fromPacks,packs.564.prices.1.price,packs.564.prices.1.fromPacks,packs.564.prices.2.price,packs.564.prices.2.fromPacks,packs.564.content.form,packs.564.content.unit,packs.564.content.sheet.widthMm,packs.564.content.sheet.lengthMm,packs.564.content.material,packs.564.content.quantity,packs.564.content.thicknessMm,packs.564.oversize,packs.564.supplier,packs.564.hazardous,packs.565.sku,packs.565.name,packs.565.cutFee,packs.565.massKg,packs.565.prices.0.price,packs.565.prices.0.fromPacks,packs.565.prices.1.price,packs.565.prices.1.fromPacks,packs.565.content.form,packs.565.content.unit,packs.565.content.sheet.widthMm,packs.565.content.sheet.lengthMm,packs.565.content.material,packs.565.content.quantity,packs.565.content.thicknessMm,packs.565.oversize,packs.565.supplier,packs.565.hazardous,packs.566.sku,packs.566.name,packs.566.massKg,packs.566.prices.0.price,packs.566.prices.0.fromPacks,packs.566.prices.1.price,packs.566.prices.1.fromPacks,packs.566.content.form,packs.566.content.unit,packs.566.content.sheet.widthMm,packs.566.content.sheet.lengthMm,packs.566.content.material,packs.566.content.quantity,packs.566.content.thicknessMm,packs.566.oversize,packs.566.supplier,packs.566.hazardous,packs.567.sku,packs.567.name,packs.567.cutFee,packs.567.massKg,packs.567.prices.0.price,packs.567.prices.0.fromPacks,packs.567.prices.1.price,packs.567.prices.1.fromPacks,packs.567.prices.2.price,packs.567.prices.2.fromPacks,packs.567.content.form,packs.567.content.unit,packs.567.content.sheet.widthMm,packs.567.content.sheet.lengthMm,packs.567.content.material,packs.567.content.quantity,packs.567.content.thicknessMm,packs.567.oversize,packs.567.supplier,packs.567.hazardous,packs.568.sku,packs.568.name,packs.568.cutFee,packs.568.massKg,packs.568.prices.0.price,packs.568.prices.0.fromPacks,packs.568.prices.1.price,packs.568.prices.1.fromPacks,packs.568.content.form,packs.568.content.unit,packs.568.content.sheet.widthMm,packs.568.content.sheet.lengthMm,packs.568.content.material,packs.568.content.quantity,packs.568.content.thicknessMm,packs.568.oversize,packs.568.supplier,packs.568.hazardous,packs.569.sku,packs.569.name,packs.569.massKg,packs.569.prices.0.price,packs.569.prices.0.fromPacks,packs.569.prices.1.price,packs.569.prices.1.fromPacks,packs.569.content.form,packs.569.content.unit,packs.569.content.sheet.widthMm,packs.569.content.sheet.lengthMm,packs.569.content.material,packs.569.content.quantity,packs.569.content.thicknessMm,packs.569.oversize,packs.569.supplier,packs.569.hazardous,packs.570.sku,packs.570.name,packs.570.massKg,packs.570.prices.0.price,packs.570.prices.0.fromPacks,packs.570.prices.1.price,packs.570.prices.1.fromPacks,packs.570.prices.2.price,packs.570.prices.2.fromPacks,packs.570.content.form,packs.570.content.unit,packs.570.content.sheet.widthMm,packs.570.content.sheet.lengthMm,packs.570.content.material,packs.570.content.quantity,packs.570.content.thicknessMm,packs.570.oversize,packs.570.supplier,packs.570.hazardous,packs.571.sku,packs.571.name,packs.571.cutFee,packs.571.massKg,packs.571.prices.0.price,packs.571.prices.0.fromPacks,packs.571.prices.1.price,packs.571.prices.1.fromPacks,packs.571.prices.2.price,packs.571.prices.2.fromPacks,packs.571.content.form,packs.571.content.unit,packs.571.content.sheet.widthMm,packs.571.content.sheet.lengthMm,packs.571.content.material,packs.571.content.quantity,packs.571.content.thicknessMm,packs.571.oversize,packs.571.supplier,packs.571.hazardous,packs.572.sku,packs.572.name,packs.572.cutFee,packs.572.massKg,packs.572.prices.0.price,packs.572.prices.0.fromPacks,packs.572.prices.1.price,packs.572.prices.1.fromPacks,packs.572.content.form,packs.572.content.unit,packs.572.content.sheet.widthMm,packs.572.content.sheet.lengthMm,packs.572.content.material,packs.572.content.quantity,packs.572.content.thicknessMm,packs.572.oversize,packs.572.supplier,packs.572.hazardous,packs.573.sku,packs.573.name,packs.573.massKg,packs.573.prices.0.price,packs.573.prices.0.fromPacks,packs.573.prices.1.price,packs.573.prices.1.fromPacks,packs.573.content.form,packs.573.content.unit,packs.573.content.sheet.widthMm,packs.573.content.sheet.lengthMm,packs.573.content.material,packs.573.content.quantity,packs.573.content.thicknessMm,packs.573.oversize,packs.573.supplier,packs.573.hazardous,packs.574.sku,packs.574.name,packs.574.cutFee,packs.574.massKg,packs.574.prices.0.price,packs.574.prices.0.fromPacks,packs.574.prices.1.price,packs.574.prices.1.fromPacks,packs.574.prices.2.price,packs.574.prices.2.fromPacks,packs.574.content.form,packs.574.content.unit,packs.574.content.sheet.widthMm,packs.574.content.sheet.lengthMm,packs.574.content.material,packs.574.content.quantity,packs.574.content.thicknessMm,packs.574.oversize,packs.574.supplier,packs.574.hazardous,packs.575.sku,packs.575.name,packs.575.cutFee,packs.575.massKg,packs.575.prices.0.price,packs.575.prices.0.fromPacks,packs.575.prices.1.price,packs.575.prices.1.fromPacks,packs.575.content.form,packs.575.content.unit,packs.575.content.sheet.widthMm,packs.575.content.sheet.lengthMm,packs.575.content.material,packs.575.content.quantity,packs.575.content.thicknessMm,packs.575.oversize,packs.575.supplier,packs.575.hazardous,packs.576.sku,packs.576.name,packs.576.stock,packs.576.massKg,packs.576.prices.0.price,packs.576.prices.0.fromPacks,packs.576.prices.1.price,packs.576.prices.1.fromPacks,packs.576.content.form,packs.576.content.unit,packs.576.content.sheet.widthMm,packs.576.content.sheet.lengthMm,packs.576.content.material,packs.576.content.quantity,packs.576.content.thicknessMm,packs.576.oversize,packs.576.supplier,packs.576.hazardous,packs.577.sku,packs.577.name,packs.577.massKg,packs.577.prices.0.price,packs.577.prices.0.fromPacks,packs.577.prices.1.price,packs.577.prices.1.fromPacks,packs.577.prices.2.price,packs.577.prices.2.fromPacks,packs.577.content.form,packs.577.content.unit,packs.577.content.sheet.widthMm,packs.577.content.sheet.lengthMm,packs.577.content.material,packs.577.content.quantity,packs.577.content.thicknessMm,packs.577.oversize,packs.577.supplier,packs.577.hazardous,packs.578.sku,packs.578.name,packs.578.cutFee,packs.578.massKg,packs.578.prices.0.price,packs.578.prices.0.fromPacks,packs.578.prices.1.price,packs.578.prices.1.fromPacks,packs.578.prices.2.price,packs.578.prices.2.fromPacks,packs.578.content.form,packs.578.content.unit,packs.578.content.sheet.widthMm,packs.578.content.sheet.lengthMm,packs.578.content.material,packs.578.content.quantity,packs.578.content.thicknessMm,packs.578.oversize,packs.578.supplier,packs.578.hazardous,packs.579.sku,packs.579.name,packs.579.cutFee,packs.579.massKg,packs.579.prices.0.price,packs.579.prices.0.fromPacks,packs.579.prices.1.price,packs.579.prices.1.fromPacks,packs.579.content.form,packs.579.content.unit,packs.579.content.sheet.widthMm,packs.579.content.sheet.lengthMm,packs.579.content.material,packs.579.content.quantity,packs.579.content.thicknessMm,packs.579.oversize,packs.579.supplier,packs.579.hazardous,packs.580.sku,packs.580.name,packs.580.stock,packs.580.massKg,packs.580.prices.0.price,packs.580.prices.0.fromPacks,packs.580.prices.1.price,packs.580.prices.1.fromPacks,packs.580.content.form,packs.580.content.unit,packs.580.content.sheet.widthMm,packs.580.content.sheet.lengthMm,packs.580.content.material,packs.580.content.quantity,packs.580.content.thicknessMm,packs.580.oversize,packs.580.supplier,packs.580.hazardous,packs.581.sku,packs.581.name,packs.581.cutFee,packs.581.massKg,packs.581.prices.0.price,packs.581.prices.0.fromPacks,packs.581.prices.1.price,packs.581.prices.1.fromPacks,packs.581.prices.2.price,packs.581.prices.2.fromPacks,packs.581.content.form,packs.581.content.unit,packs.581.content.sheet.widthMm,packs.581.content.sheet.lengthMm,packs.581.content.material,packs.581.content.quantity,packs.581.content.thicknessMm,packs.581.oversize,packs.581.supplier,packs.581.hazardous,packs.582.sku,packs.582.name,packs.582.cutFee,packs.582.massKg,packs.582.prices.0.price,packs.582.prices.0.fromPacks,packs.582.prices.1.price,packs.582.prices.1.fromPacks,packs.582.content.form,packs.582.content.unit,packs.582.content.sheet.widthMm,packs.582.content.sheet.lengthMm,packs.582.content.material,packs.582.content.quantity,packs.582.content.thicknessMm,packs.582.oversize,packs.582.supplier,packs.582.hazardous,packs.583.sku,packs.583.name,packs.583.stock,packs.583.massKg,packs.583.prices.0.price,packs.583.prices.0.fromPacks,packs.583.prices.1.price,packs.583.prices.1.fromPacks,packs.583.content.form,packs.583.content.unit,packs.583.content.sheet.widthMm,packs.583.content.sheet.lengthMm,packs.583.content.material,packs.583.content.quantity,packs.583.content.thicknessMm,packs.583.oversize,packs.583.supplier,packs.583.hazardous,packs.584.sku,packs.584.name,packs.584.massKg,packs.584.prices.0.price,packs.584.prices.0.fromPacks,packs.584.prices.1.price,packs.584.prices.1.fromPacks,packs.584.prices.2.price,packs.584.prices.2.fromPacks,packs.584.content.form,packs.584.content.unit,packs.584.content.sheet.widthMm,packs.584.content.sheet.lengthMm,packs.584.content.material,packs.584.content.quantity,packs.584.content.thicknessMm,packs.584.oversize,packs.584.supplier,packs.584.hazardous,packs.585.sku,packs.585.name,packs.585.cutFee,packs.585.massKg,packs.585.prices.0.price,packs.585.prices.0.fromPacks,packs.585.prices.1.price,packs.585.prices.1.fromPacks,packs.585.prices.2.price,packs.585.prices.2.fromPacks,packs.585.content.form,packs.585.content.unit,packs.585.content.sheet.widthMm,packs.585.content.sheet.lengthMm,packs.585.content.material,packs.585.content.quantity,packs.585.content.thicknessMm,packs.585.oversize,packs.585.supplier,packs.585.hazardous,packs.586.sku,packs.586.name,packs.586.cutFee,packs.586.massKg,packs.586.prices.0.price,packs.586.prices.0.fromPacks,packs.586.prices.1.price,packs.586.prices.1.fromPacks,packs.586.content.form,packs.586.content.unit,packs.586.content.sheet.widthMm,packs.586.content.sheet.lengthMm,packs.586.content.material,packs.586.content.quantity,packs.586.content.thicknessMm,packs.586.oversize,packs.586.supplier,packs.586.hazardous,packs.587.sku,packs.587.name,packs.587.stock,packs.587.massKg,packs.587.prices.0.price,packs.587.prices.0.fromPacks,packs.587.prices.1.price,packs.587.prices.1.fromPacks,packs.587.content.form,packs.587.content.unit,packs.587.content.sheet.widthMm,packs.587.content.sheet.lengthMm,packs.587.content.material,packs.587.content.quantity,packs.587.content.thicknessMm,packs.587.oversize,packs.587.supplier,packs.587.hazardous,packs.588.sku,packs.588.name,packs.588.cutFee,packs.588.massKg,packs.588.prices.0.price,packs.588.prices.0.fromPacks,packs.588.prices.1.price,packs.588.prices.1.fromPacks,packs.588.prices.2.price,packs.588.prices.2.fromPacks,packs.588.content.form,packs.588.content.unit,packs.588.content.sheet.widthMm,packs.588.content.sheet.lengthMm,packs.588.content.material,packs.588.content.quantity,packs.588.content.thicknessMm,packs.588.oversize,packs.588.supplier,packs.588.hazardous,packs.589.sku,packs.589.name,packs.589.cutFee,packs.589.massKg,packs.589.prices.0.price,packs.589.prices.0.fromPacks,packs.589.prices.1.price,packs.589.prices.1.fromPacks,packs.589.content.form,packs.589.content.unit,packs.589.content.sheet.widthMm,packs.589.content.sheet.lengthMm,packs.589.content.material,packs.589.content.quantity,packs.589.content.thicknessMm,packs.589.oversize,packs.589.supplier,packs.589.hazardous,packs.590.sku,packs.590.name,packs.590.massKg,packs.590.prices.0.price,packs.590.prices.0.fromPacks,packs.590.prices.1.price,packs.590.prices.1.fromPacks,packs.590.content.unit,packs.590.content.material,packs.590.content.quantity,packs.590.oversize,packs.590.supplier,packs.590.hazardous,packs.591.sku,packs.591.name,packs.591.massKg,packs.591.prices.0.price,packs.591.prices.0.fromPacks,packs.591.prices.1.price,packs.591.prices.1.fromPacks,packs.591.content.unit,packs.591.content.material,packs.591.content.quantity,packs.591.oversize,packs.591.supplier,packs.591.hazardous,packs.592.sku,packs.592.name,packs.592.massKg,packs.592.prices.0.price,packs.592.prices.0.fromPacks,packs.592.prices.1.price,packs.592.prices.1.fromPacks,packs.592.content.unit,packs.592.content.material,packs.592.content.quantity,packs.592.oversize,packs.592.supplier,packs.592.hazardous,packs.593.sku,packs.593.name,packs.593.massKg,packs.593.prices.0.price,packs.593.prices.0.fromPacks,packs.593.prices.1.price,packs.593.prices.1.fromPacks,packs.593.content.unit,packs.593.content.material,packs.593.content.quantity,packs.593.oversize,packs.593.supplier,packs.593.hazardous,packs.594.sku,packs.594.name,packs.594.massKg,packs.594.prices.0.price,packs.594.prices.0.fromPacks,packs.594.prices.1.price,packs.594.prices.1.fromPacks,packs.594.content.unit,packs.594.content.material,packs.594.content.quantity,packs.594.oversize,packs.594.supplier,packs.594.hazardous,packs.595.sku,packs.595.name,packs.595.massKg,packs.595.prices.0.price,packs.595.prices.0.fromPacks,packs.595.content.unit,packs.595.content.material,packs.595.content.quantity,packs.595.oversize,packs.595.supplier,packs.595.hazardous,packs.596.sku,packs.596.name,packs.596.massKg,packs.596.prices.0.price,packs.596.prices.0.fromPacks,packs.596.prices.1.price,packs.596.prices.1.fromPacks,packs.596.content.unit,packs.596.content.material,packs.596.content.quantity,packs.596.oversize,packs.596.supplier,packs.596.hazardous,packs.597.sku,packs.597.name,packs.597.massKg,packs.597.prices.0.price,packs.597.prices.0.fromPacks,packs.597.content.unit,packs.597.content.material,packs.597.content.quantity,packs.597.oversize,packs.597.supplier,packs.597.hazardous,packs.598.sku,packs.598.name,packs.598.massKg,packs.598.prices.0.price,packs.598.prices.0.fromPacks,packs.598.prices.1.price,packs.598.prices.1.fromPacks,packs.598.content.unit,packs.598.content.material,packs.598.content.quantity,packs.598.oversize,packs.598.supplier,packs.598.hazardous,packs.599.sku,packs.599.name,packs.599.massKg,packs.599.prices.0.price,packs.599.prices.0.fromPacks,packs.599.content.unit,packs.599.content.material,packs.599.content.quantity,packs.599.oversize,packs.599.supplier,packs.599.hazardous,packs.600.sku,packs.600.name,packs.600.massKg,packs.600.prices.0.price,packs.600.prices.0.fromPacks,packs.600.prices.1.price,packs.600.prices.1.fromPacks,packs.600.content.unit,packs.600.content.material,packs.600.content.quantity,packs.600.oversize,packs.600.supplier,packs.600.hazardous,packs.601.sku,packs.601.name,packs.601.massKg,packs.601.prices.0.price,packs.601.prices.0.fromPacks,packs.601.content.unit,packs.601.content.material,packs.601.content.quantity,packs.601.oversize,packs.601.supplier,packs.601.hazardous,packs.602.sku,packs.602.name,packs.602.massKg,packs.602.prices.0.price,packs.602.prices.0.fromPacks,packs.602.prices.1.price,packs.602.prices.1.fromPacks,packs.602.content.unit,packs.602.content.material,packs.602.content.quantity,packs.602.oversize,packs.602.supplier,packs.602.hazardous,packs.603.sku,packs.603.name,packs.603.massKg,packs.603.prices.0.price,packs.603.prices.0.fromPacks,packs.603.content.unit,packs.603.content.material,packs.603.content.quantity,packs.603.oversize,packs.603.supplier,packs.603.hazardous,packs.604.sku,packs.604.name,packs.604.massKg,packs.604.prices.0.price,packs.604.prices.0.fromPacks,packs.604.prices.1.price,packs.604.prices.1.fromPacks,packs.604.content.unit,packs.604.content.material,packs.604.content.quantity,packs.604.oversize,packs.604.supplier,packs.604.hazardous,packs.605.sku,packs.605.name,packs.605.massKg,packs.605.prices.0.price,packs.605.prices.0.fromPacks,packs.605.content.unit,packs.605.content.material,packs.605.content.quantity,packs.605.oversize,packs.605.supplier,packs.605.hazardous,packs.606.sku,packs.606.name,packs.606.massKg,packs.606.prices.0.price,packs.606.prices.0.fromPacks,packs.606.prices.1.price,packs.606.prices.1.fromPacks,packs.606.content.unit,packs.606.content.material,packs.606.content.quantity,packs.606.oversize,packs.606.supplier,packs.606.hazardous,packs.607.sku,packs.607.name,packs.607.massKg,packs.607.prices.0.price,packs.607.prices.0.fromPacks,packs.607.content.unit,packs.607.content.material,packs.607.content.quantity,packs.607.oversize,packs.607.supplier,packs.607.hazardous,packs.608.sku,packs.608.name,packs.608.massKg,packs.608.prices.0.price,packs.608.prices.0.fromPacks,packs.608.prices.1.price,packs.608.prices.1.fromPacks,packs.608.content.unit,packs.608.content.material,packs.608.content.quantity,packs.608.oversize,packs.608.supplier,packs.608.hazardous,packs.609.sku,packs.609.name,packs.609.massKg,packs.609.prices.0.price,packs.609.prices.0.fromPacks,packs.609.content.unit,packs.609.content.material,packs.609.content.quantity,packs.609.oversize,packs.609.supplier,packs.609.hazardous,packs.610.sku,packs.610.name,packs.610.massKg,packs.610.prices.0.price,packs.610.prices.0.fromPacks,packs.610.prices.1.price,packs.610.prices.1.fromPacks,packs.610.content.unit,packs.610.content.material,packs.610.content.quantity,packs.610.oversize,packs.610.supplier,packs.610.hazardous,packs.611.sku,packs.611.name,packs.611.massKg,packs.611.prices.0.price,packs.611.prices.0.fromPacks,packs.611.content.unit,packs.611.content.material,packs.611.content.quantity,packs.611.oversize,packs.611.supplier,packs.611.hazardous,packs.612.sku,packs.612.name,packs.612.massKg,packs.612.prices.0.price,packs.612.prices.0.fromPacks,packs.612.prices.1.price,packs.612.prices.1.fromPacks,packs.612.content.unit,packs.612.content.material,packs.612.content.quantity,packs.612.oversize,packs.612.supplier,packs.612.hazardous,packs.613.sku,packs.613.name,packs.613.massKg,packs.613.prices.0.price,packs.613.prices.0.fromPacks,packs.613.content.unit,packs.613.content.material,packs.613.content.quantity,packs.613.oversize,packs.613.supplier,packs.613.hazardous,packs.614.sku,packs.614.name,packs.614.massKg,packs.614.prices.0.price,packs.614.prices.0.fromPacks,packs.614.prices.1.price,packs.614.prices.1.fromPacks,packs.614.content.unit,packs.614.content.material,packs.614.content.quantity,packs.614.oversize,packs.614.supplier,packs.614.hazardous,packs.615.sku,packs.615.name,packs.615.massKg,packs.615.prices.0.price,packs.615.prices.0.fromPacks,packs.615.content.unit,packs.615.content.material,packs.615.content.quantity,packs.615.oversize,packs.615.supplier,packs.615.hazardous,packs.616.sku,packs.616.name,packs.616.massKg,packs.616.prices.0.price,packs.616.prices.0.fromPacks,packs.616.prices.1.price,packs.616.prices.1.fromPacks,packs.616.content.unit,packs.616.content.material,packs.616.content.quantity,packs.616.oversize,packs.616.supplier,packs.616.hazardous,packs.617.sku,packs.617.name,packs.617.massKg,packs.617.prices.0.price,packs.617.prices.0.fromPacks,packs.617.content.unit,packs.617.content.material,packs.617.content.quantity,packs.617.oversize,packs.617.supplier,packs.617.hazardous,packs.618.sku,packs.618.name,packs.618.massKg,packs.618.prices.0.price,packs.618.prices.0.fromPacks,packs.618.prices.1.price,packs.618.prices.1.fromPacks,packs.618.content.unit,packs.618.content.material,packs.618.content.quantity,packs.618.oversize,packs.618.supplier,packs.618.hazardous,packs.619.sku,packs.619.name,packs.619.massKg,packs.619.prices.0.price,packs.619.prices.0.fromPacks,packs.619.content.unit,packs.619.content.material,packs.619.content.quantity,packs.619.oversize,packs.619.supplier,packs.619.hazardous,packs.620.sku,packs.620.name,packs.620.massKg,packs.620.prices.0.price,packs.620.prices.0.fromPacks,packs.620.prices.1.price,packs.620.prices.1.fromPacks,packs.620.content.unit,packs.620.content.material,packs.620.content.quantity,packs.620.oversize,packs.620.supplier,packs.620.hazardous,packs.621.sku,packs.621.name,packs.621.massKg,packs.621.prices.0.price,packs.621.prices.0.fromPacks,packs.621.content.unit,packs.621.content.material,packs.621.content.quantity,packs.621.oversize,packs.621.supplier,packs.621.hazardous,packs.622.sku,packs.622.name,packs.622.massKg,packs.622.prices.0.price,packs.622.prices.0.fromPacks,packs.622.prices.1.price,packs.622.prices.1.fromPacks,packs.622.content.unit,packs.622.content.material,packs.622.content.quantity,packs.622.oversize,packs.622.supplier,packs.622.hazardous,packs.623.sku,packs.623.name,packs.623.massKg,packs.623.prices.0.price,packs.623.prices.0.fromPacks,packs.623.content.unit,packs.623.content.material,packs.623.content.quantity,packs.623.oversize,packs.623.supplier,packs.623.hazardous,packs.624.sku,packs.624.name,packs.624.massKg,packs.624.prices.0.price,packs.624.prices.0.fromPacks,packs.624.prices.1.price,packs.624.prices.1.fromPacks,packs.624.content.unit,packs.624.content.material,packs.624.content.quantity,packs.624.oversize,packs.624.supplier,packs.624.hazardous,packs.625.sku,packs.625.name,packs.625.massKg,packs.625.prices.0.price,packs.625.prices.0.fromPacks,packs.625.content.unit,packs.625.content.material,packs.625.content.quantity,packs.625.oversize,packs.625.supplier,packs.625.hazardous,packs.626.sku,packs.626.name,packs.626.massKg,packs.626.prices.0.price,packs.626.prices.0.fromPacks,packs.626.prices.1.price,packs.626.prices.1.fromPacks,packs.626.content.unit,packs.626.content.material,packs.626.content.quantity,packs.626.oversize,packs.626.supplier,packs.626.hazardous,packs.627.sku,packs.627.name,packs.627.massKg,packs.627.prices.0.price,packs.627.prices.0.fromPacks,packs.627.content.unit,packs.627.content.material,packs.627.content.quantity,packs.627.oversize,packs.627.supplier,packs.627.hazardous,packs.628.sku,packs.628.name,packs.628.massKg,packs.628.prices.0.price,packs.628.prices.0.fromPacks,packs.628.prices.1.price,packs.628.prices.1.fromPacks,packs.628.content.unit,packs.628.content.material,packs.628.content.quantity,packs.628.oversize,packs.628.supplier,packs.628.hazardous,packs.629.sku,packs.629.name,packs.629.massKg,packs.629.prices.0.price,packs.629.prices.0.fromPacks,packs.629.content.unit,packs.629.content.material,packs.629.content.quantity,packs.629.oversize,packs.629.supplier,packs.629.hazardous,packs.630.sku,packs.630.name,packs.630.massKg,packs.630.prices.0.price,packs.630.prices.0.fromPacks,packs.630.prices.1.price,packs.630.prices.1.fromPacks,packs.630.content.unit,packs.630.content.material,packs.630.content.quantity,packs.630.oversize,packs.630.supplier,packs.630.hazardous,packs.631.sku,packs.631.name,packs.631.massKg,packs.631.prices.0.price,packs.631.prices.0.fromPacks,packs.631.content.unit,packs.631.content.material,packs.631.content.quantity,packs.631.oversize,packs.631.supplier,packs.631.hazardous,packs.632.sku,packs.632.name,packs.632.massKg,packs.632.prices.0.price,packs.632.prices.0.fromPacks,packs.632.prices.1.price,packs.632.prices.1.fromPacks,packs.632.content.unit,packs.632.content.material,packs.632.content.quantity,packs.632.oversize,packs.632.supplier,packs.632.hazardous,packs.633.sku,packs.633.name,packs.633.massKg,packs.633.prices.0.price,packs.633.prices.0.fromPacks,packs.633.content.unit,packs.633.content.material,packs.633.content.quantity,packs.633.oversize,packs.633.supplier,packs.633.hazardous,packs.634.sku,packs.634.name,packs.634.massKg,packs.634.prices.0.price,packs.634.prices.0.fromPacks,packs.634.prices.1.price,packs.634.prices.1.fromPacks,packs.634.content.unit,packs.634.content.material,packs.634.content.quantity,packs.634.oversize,packs.634.supplier,packs.634.hazardous,packs.635.sku,packs.635.name,packs.635.massKg,packs.635.prices.0.price,packs.635.prices.0.fromPacks,packs.635.content.unit,packs.635.content.material,packs.635.content.quantity,packs.635.oversize,packs.635.supplier,packs.635.hazardous,packs.636.sku,packs.636.name,packs.636.massKg,packs.636.prices.0.price,packs.636.prices.0.fromPacks,packs.636.prices.1.price,packs.636.prices.1.fromPacks,packs.636.content.unit,packs.636.content.material,packs.636.content.quantity,packs.636.oversize,packs.636.supplier,packs.636.hazardous,packs.637.sku,packs.637.name,packs.637.massKg,packs.637.prices.0.price,packs.637.prices.0.fromPacks,packs.637.content.unit,packs.637.content.material,packs.637.content.quantity,packs.637.oversize,packs.637.supplier,packs.637.hazardous,packs.638.sku,packs.638.name,packs.638.massKg,packs.638.prices.0.price,packs.638.prices.0.fromPacks,packs.638.prices.1.price,packs.638.prices.1.fromPacks,packs.638.content.unit,packs.638.content.material,packs.638.content.quantity,packs.638.oversize,packs.638.supplier,packs.638.hazardous,packs.639.sku,packs.639.name,packs.639.massKg,packs.639.prices.0.price,packs.639.prices.0.fromPacks,packs.639.content.unit,packs.639.content.material,packs.639.content.quantity,packs.639.oversize,packs.639.supplier,packs.639.hazardous,packs.640.sku,packs.640.name,packs.640.massKg,packs.640.prices.0.price,packs.640.prices.0.fromPacks,packs.640.prices.1.price,packs.640.prices.1.fromPacks,packs.640.content.unit,packs.640.content.material,packs.640.content.quantity,packs.640.oversize,packs.640.supplier,packs.640.hazardous,packs.641.sku,packs.641.name,packs.641.massKg,packs.641.prices.0.price,packs.641.prices.0.fromPacks,packs.641.content.unit,packs.641.content.material,packs.641.content.quantity,packs.641.oversize,packs.641.supplier,packs.641.hazardous,packs.642.sku,packs.642.name,packs.642.massKg,packs.642.prices.0.price,packs.642.prices.0.fromPacks,packs.642.prices.1.price,packs.642.prices.1.fromPacks,packs.642.content.unit,packs.642.content.material,packs.642.content.quantity,packs.642.oversize,packs.642.supplier,packs.642.hazardous,packs.643.sku,packs.643.name,packs.643.massKg,packs.643.prices.0.price,packs.643.prices.0.fromPacks,packs.643.content.unit,packs.643.content.material,packs.643.content.quantity,packs.643.oversize,packs.643.supplier,packs.643.hazardous,packs.644.sku,packs.644.name,packs.644.massKg,packs.644.prices.0.price,packs.644.prices.0.fromPacks,packs.644.prices.1.price,packs.644.prices.1.fromPacks,packs.644.content.unit,packs.644.content.material,packs.644.content.quantity,packs.644.oversize,packs.644.supplier,packs.644.hazardous,packs.645.sku,packs.645.name,packs.645.massKg,packs.645.prices.0.price,packs.645.prices.0.fromPacks,packs.645.content.unit,packs.645.content.material,packs.645.content.quantity,packs.645.oversize,packs.645.supplier,packs.645.hazardous,packs.646.sku,packs.646.name,packs.646.massKg,packs.646.prices.0.price,packs.646.prices.0.fromPacks,packs.646.prices.1.price,packs.646.prices.1.fromPacks,packs.646.content.unit,packs.646.content.material,packs.646.content.quantity,packs.646.oversize,packs.646.supplier,packs.646.hazardous,packs.647.sku,packs.647.name,packs.647.massKg,packs.647.prices.0.price,packs.647.prices.0.fromPacks,packs.647.content.unit,packs.647.content.material,packs.647.content.quantity,packs.647.oversize,packs.647.supplier,packs.647.hazardous,packs.648.sku,packs.648.name,packs.648.massKg,packs.648.prices.0.price,packs.648.prices.0.fromPacks,packs.648.prices.1.price,packs.648.prices.1.fromPacks,packs.648.content.unit,packs.648.content.material,packs.648.content.quantity,packs.648.oversize,packs.648.supplier,packs.648.hazardous,packs.649.sku,packs.649.name,packs.649.massKg,packs.649.prices.0.price,packs.649.prices.0.fromPacks,packs.649.content.unit,packs.649.content.material,packs.649.content.quantity,packs.649.oversize,packs.649.supplier,packs.649.hazardous,packs.650.sku,packs.650.name,packs.650.massKg,packs.650.prices.0.price,packs.650.prices.0.fromPacks,packs.650.prices.1.price,packs.650.prices.1.fromPacks,packs.650.content.unit,packs.650.content.material,packs.650.content.quantity,packs.650.oversize,packs.650.supplier,packs.650.hazardous,packs.651.sku,packs.651.name,packs.651.massKg,packs.651.prices.0.price,packs.651.prices.0.fromPacks,packs.651.content.unit,packs.651.content.material,packs.651.content.quantity,packs.651.oversize,packs.651.supplier,packs.651.hazardous,packs.652.sku,packs.652.name,packs.652.massKg,packs.652.prices.0.price,packs.652.prices.0.fromPacks,packs.652.prices.1.price,packs.652.prices.1.fromPacks,packs.652.content.unit,packs.652.content.material,packs.652.content.quantity,packs.652.oversize,packs.652.supplier,packs.652.hazardous,packs.653.sku,packs.653.name,packs.653.massKg,packs.653.prices.0.price,packs.653.prices.0.fromPacks,packs.653.content.unit,packs.653.content.material,packs.653.content.quantity,packs.653.oversize,packs.653.supplier,packs.653.hazardous,packs.654.sku,packs.654.name,packs.654.massKg,packs.654.prices.0.price,packs.654.prices.0.fromPacks,packs.654.prices.1.price,packs.654.prices.1.fromPacks,packs.654.content.unit,packs.654.content.material,packs.654.content.quantity,packs.654.oversize,packs.654.supplier,packs.654.hazardous,packs.655.sku,packs.655.name,packs.655.massKg,packs.655.prices.0.price,packs.655.prices.0.fromPacks,packs.655.content.unit,packs.655.content.material,packs.655.content.quantity,packs.655.oversize,packs.655.supplier,packs.655.hazardous,packs.656.sku,packs.656.name,packs.656.massKg,packs.656.prices.0.price,packs.656.prices.0.fromPacks,packs.656.prices.1.price,packs.656.prices.1.fromPacks,packs.656.content.unit,packs.656.content.material,packs.656.content.quantity,packs.656.oversize,packs.656.supplier,packs.656.hazardous,packs.657.sku,packs.657.name,packs.657.massKg,packs.657.prices.0.price,packs.657.prices.0.fromPacks,packs.657.content.unit,packs.657.content.material,packs.657.content.quantity,packs.657.oversize,packs.657.supplier,packs.657.hazardous,packs.658.sku,packs.658.name,packs.658.massKg,packs.658.prices.0.price,packs.658.prices.0.fromPacks,packs.658.prices.1.price,packs.658.prices.1.fromPacks,packs.658.content.unit,packs.658.content.material,packs.658.content.quantity,packs.658.oversize,packs.658.supplier,packs.658.hazardous,packs.659.sku,packs.659.name,packs.659.massKg,packs.659.prices.0.price,packs.659.prices.0.fromPacks,packs.659.content.unit,packs.659.content.material,packs.659.content.quantity,packs.659.oversize,packs.659.supplier,packs.659.hazardous,packs.660.sku,packs.660.name,packs.660.massKg,packs.660.prices.0.price,packs.660.prices.0.fromPacks,packs.660.prices.1.price,packs.660.prices.1.fromPacks,packs.660.content.unit,packs.660.content.material,packs.660.content.quantity,packs.660.oversize,packs.660.supplier,packs.660.hazardous,packs.661.sku,packs.661.name,packs.661.massKg,packs.661.prices.0.price,packs.661.prices.0.fromPacks,packs.661.content.unit,packs.661.content.material,packs.661.content.quantity,packs.661.oversize,packs.661.supplier,packs.661.hazardous,packs.662.sku,packs.662.name,packs.662.massKg,packs.662.prices.0.price,packs.662.prices.0.fromPacks,packs.662.prices.1.price,packs.662.prices.1.fromPacks,packs.662.content.unit,packs.662.content.material,packs.662.content.quantity,packs.662.oversize,packs.662.supplier,packs.662.hazardous,packs.663.sku,packs.663.name,packs.663.massKg,packs.663.prices.0.price,packs.663.prices.0.fromPacks,packs.663.content.unit,packs.663.content.material,packs.663.content.quantity,packs.663.oversize,packs.663.supplier,packs.663.hazardous,packs.664.sku,packs.664.name,packs.664.massKg,packs.664.prices.0.price,packs.664.prices.0.fromPacks,packs.664.prices.1.price,packs.664.prices.1.fromPacks,packs.664.content.unit,packs.664.content.material,packs.664.content.quantity,packs.664.oversize,packs.664.supplier,packs.664.hazardous,packs.665.sku,packs.665.name,packs.665.massKg,packs.665.prices.0.price,packs.665.prices.0.fromPacks,packs.665.content.unit,packs.665.content.material,packs.665.content.quantity,packs.665.oversize,packs.665.supplier,packs.665.hazardous,packs.666.sku,packs.666.name,packs.666.massKg,packs.666.prices.0.price,packs.666.prices.0.fromPacks,packs.666.prices.1.price,packs.666.prices.1.fromPacks,packs.666.content.unit,packs.666.content.material,packs.666.content.quantity,packs.666.oversize,packs.666.supplier,packs.666.hazardous,packs.667.sku,packs.667.name,packs.667.massKg,packs.667.prices.0.price,packs.667.prices.0.fromPacks,packs.667.content.unit,packs.667.content.material,packs.667.content.quantity,packs.667.oversize,packs.667.supplier,packs.667.hazardous,packs.668.sku,packs.668.name,packs.668.massKg,packs.668.prices.0.price,packs.668.prices.0.fromPacks,packs.668.prices.1.price,packs.668.prices.1.fromPacks,packs.668.content.unit,packs.668.content.material,packs.668.content.quantity,packs.668.oversize,packs.668.supplier,packs.668.hazardous,packs.669.sku,packs.669.name,packs.669.massKg,packs.669.prices.0.price,packs.669.prices.0.fromPacks,packs.669.content.unit,packs.669.content.material,packs.669.content.quantity,packs.669.oversize,packs.669.supplier,packs.669.hazardous,packs.670.sku,packs.670.name,packs.670.massKg,packs.670.prices.0.price,packs.670.prices.0.fromPacks,packs.670.prices.1.price,packs.670.prices.1.fromPacks,packs.670.content.unit,packs.670.content.material,packs.670.content.quantity,packs.670.oversize,packs.670.supplier,packs.670.hazardous,packs.671.sku,packs.671.name,packs.671.massKg,packs.671.prices.0.price,packs.671.prices.0.fromPacks,packs.671.content.unit,packs.671.content.material,packs.671.content.quantity,packs.671.oversize,packs.671.supplier,packs.671.hazardous,packs.672.sku,packs.672.name,packs.672.massKg,packs.672.prices.0.price,packs.672.prices.0.fromPacks,packs.672.prices.1.price,packs.672.prices.1.fromPacks,packs.672.content.unit,packs.672.content.material,packs.672.content.quantity,packs.672.oversize,packs.672.supplier,packs.672.hazardous,packs.673.sku,packs.673.name,packs.673.massKg,packs.673.prices.0.price,packs.673.prices.0.fromPacks,packs.673.content.unit,packs.673.content.material,packs.673.content.quantity,packs.673.oversize,packs.673.supplier,packs.673.hazardous,packs.674.sku,packs.674.name,packs.674.massKg,packs.674.prices.0.price,packs.674.prices.0.fromPacks,packs.674.prices.1.price,packs.674.prices.1.fromPacks,packs.674.content.unit,packs.674.content.material,packs.674.content.quantity,packs.674.oversize,packs.674.supplier,packs.674.hazardous,packs.675.sku,packs.675.name,packs.675.massKg,packs.675.prices.0.price,packs.675.prices.0.fromPacks,packs.675.content.unit,packs.675.content.material,packs.675.content.quantity,packs.675.oversize,packs.675.supplier,packs.675.hazardous,packs.676.sku,packs.676.name,packs.676.massKg,packs.676.prices.0.price,packs.676.prices.0.fromPacks,packs.676.prices.1.price,packs.676.prices.1.fromPacks,packs.676.content.unit,packs.676.content.material,packs.676.content.quantity,packs.676.oversize,packs.676.supplier,packs.676.hazardous,packs.677.sku,packs.677.name,packs.677.massKg,packs.677.prices.0.price,packs.677.prices.0.fromPacks,packs.677.content.unit,packs.677.content.material,packs.677.content.quantity,packs.677.oversize,packs.677.supplier,packs.677.hazardous,packs.678.sku,packs.678.name,packs.678.massKg,packs.678.prices.0.price,packs.678.prices.0.fromPacks,packs.678.content.unit,packs.678.content.sheet.widthMm,packs.678.content.sheet.lengthMm,packs.678.content.material,packs.678.content.quantity,packs.678.content.thicknessMm,packs.678.oversize,packs.678.supplier,packs.678.hazardous,packs.679.sku,packs.679.name,packs.679.massKg,packs.679.prices.0.price,packs.679.prices.0.fromPacks,packs.679.content.unit,packs.679.content.sheet.widthMm,packs.679.content.sheet.lengthMm,packs.679.content.material,packs.679.content.quantity,packs.679.content.thicknessMm,packs.679.oversize,packs.679.supplier,packs.679.hazardous,packs.680.sku,packs.680.name,packs.680.massKg,packs.680.prices.0.price,packs.680.prices.0.fromPacks,packs.680.content.unit,packs.680.content.sheet.widthMm,packs.680.content.sheet.lengthMm,packs.680.content.material,packs.680.content.quantity,packs.680.content.thicknessMm,packs.680.oversize,packs.680.supplier,packs.680.hazardous,packs.681.sku,packs.681.name,packs.681.massKg,packs.681.prices.0.price,packs.681.prices.0.fromPacks,packs.681.content.unit,packs.681.content.sheet.widthMm,packs.681.content.sheet.lengthMm,packs.681.content.material,packs.681.content.quantity,packs.681.content.thicknessMm,packs.681.oversize,packs.681.supplier,packs.681.hazardous,packs.682.sku,packs.682.name,packs.682.massKg,packs.682.prices.0.price,packs.682.prices.0.fromPacks,packs.682.content.unit,packs.682.content.sheet.widthMm,packs.682.content.sheet.lengthMm,packs.682.content.material,packs.682.content.quantity,packs.682.content.thicknessMm,packs.682.oversize,packs.682.supplier,packs.682.hazardous,packs.683.sku,packs.683.name,packs.683.massKg,packs.683.prices.0.price,packs.683.prices.0.fromPacks,packs.683.content.unit,packs.683.content.sheet.widthMm,packs.683.content.sheet.lengthMm,packs.683.content.material,packs.683.content.quantity,packs.683.content.thicknessMm,packs.683.oversize,packs.683.supplier,packs.683.hazardous,packs.684.sku,packs.684.name,packs.684.massKg,packs.684.prices.0.price,packs.684.prices.0.fromPacks,packs.684.content.unit,packs.684.content.sheet.widthMm,packs.684.content.sheet.lengthMm,packs.684.content.material,packs.684.content.quantity,packs.684.content.thicknessMm,packs.684.oversize,packs.684.supplier,packs.684.hazardous,packs.685.sku,packs.685.name,packs.685.massKg,packs.685.prices.0.price,packs.685.prices.0.fromPacks,packs.685.content.unit,packs.685.content.sheet.widthMm,packs.685.content.sheet.lengthMm,packs.685.content.material,packs.685.content.quantity,packs.685.content.thicknessMm,packs.685.oversize,packs.685.supplier,packs.685.hazardous,packs.686.sku,packs.686.name,packs.686.massKg,packs.686.prices.0.price,packs.686.prices.0.fromPacks,packs.686.content.unit,packs.686.content.sheet.widthMm,packs.686.content.sheet.lengthMm,packs.686.content.material,packs.686.content.quantity,packs.686.content.thicknessMm,packs.686.oversize,packs.686.supplier,packs.686.hazardous,packs.687.sku,packs.687.name,packs.687.massKg,packs.687.prices.0.price,packs.687.prices.0.fromPacks,packs.687.content.unit,packs.687.content.sheet.widthMm,packs.687.content.sheet.lengthMm,packs.687.content.material,packs.687.content.quantity,packs.687.content.thicknessMm,packs.687.oversize,packs.687.supplier,packs.687.hazardous,packs.688.sku,packs.688.name,packs.688.massKg,packs.688.prices.0.price,packs.688.prices.0.fromPacks,packs.688.content.unit,packs.688.content.sheet.widthMm,packs.688.content.sheet.lengthMm,packs.688.content.material,packs.688.content.quantity,packs.688.content.thicknessMm,packs.688.oversize,packs.688.supplier,packs.688.hazardous,packs.689.sku,packs.689.name,packs.689.massKg,packs.689.prices.0.price,packs.689.prices.0.fromPacks,packs.689.content.unit,packs.689.content.sheet.widthMm,packs.689.content.sheet.lengthMm,packs.689.content.material,packs.689.content.quantity,packs.689.content.thicknessMm,packs.689.oversize,packs.689.supplier,packs.689.hazardous,packs.690.sku,packs.690.name,packs.690.massKg,packs.690.prices.0.price,packs.690.prices.0.fromPacks,packs.690.content.unit,packs.690.content.sheet.widthMm,packs.690.content.sheet.lengthMm,packs.690.content.material,packs.690.content.quantity,packs.690.content.thicknessMm,packs.690.oversize,packs.690.supplier,packs.690.hazardous,packs.691.sku,packs.691.name,packs.691.massKg,packs.691.prices.0.price,packs.691.prices.0.fromPacks,packs.691.content.unit,packs.691.content.sheet.widthMm,packs.691.content.sheet.lengthMm,packs.691.content.material,packs.691.content.quantity,packs.691.content.thicknessMm,packs.691.oversize,packs.691.supplier,packs.691.hazardous,packs.692.sku,packs.692.name,packs.692.massKg,packs.692.prices.0.price,packs.692.prices.0.fromPacks,packs.692.content.unit,packs.692.content.sheet.widthMm,packs.692.content.sheet.lengthMm,packs.692.content.material,packs.692.content.quantity,packs.692.content.thicknessMm,packs.692.oversize,packs.692.supplier,packs.692.hazardous,packs.693.sku,packs.693.name,packs.693.massKg,packs.693.prices.0.price,packs.693.prices.0.fromPacks,packs.693.content.unit,packs.693.content.sheet.widthMm,packs.693.content.sheet.lengthMm,packs.693.content.material,packs.693.content.quantity,packs.693.content.thicknessMm,packs.693.oversize,packs.693.supplier,packs.693.hazardous,packs.694.sku,packs.694.name,packs.694.massKg,packs.694.prices.0.price,packs.694.prices.0.fromPacks,packs.694.content.unit,packs.694.content.sheet.widthMm,packs.694.content.sheet.lengthMm,packs.694.content.material,packs.694.content.quantity,packs.694.content.thicknessMm,packs.694.oversize,packs.694.supplier,packs.694.hazardous,packs.695.sku,packs.695.name,packs.695.massKg,packs.695.prices.0.price,packs.695.prices.0.fromPacks,packs.695.content.unit,packs.695.content.sheet.widthMm,packs.695.content.sheet.lengthMm,packs.695.content.material,packs.695.content.quantity,packs.695.content.thicknessMm,packs.695.oversize,packs.695.supplier,packs.695.hazardous,packs.696.sku,packs.696.name,packs.696.massKg,packs.696.prices.0.price,packs.696.prices.0.fromPacks,packs.696.content.unit,packs.696.content.sheet.widthMm,packs.696.content.sheet.lengthMm,packs.696.content.material,packs.696.content.quantity,packs.696.content.thicknessMm,packs.696.oversize,packs.696.supplier,packs.696.hazardous,packs.697.sku,packs.697.name,packs.697.massKg,packs.697.prices.0.price,packs.697.prices.0.fromPacks,packs.697.content.unit,packs.697.content.sheet.widthMm,packs.697.content.sheet.lengthMm,packs.697.content.material,packs.697.content.quantity,packs.697.content.thicknessMm,packs.697.oversize,packs.697.supplier,packs.697.hazardous,packs.698.sku,packs.698.name,packs.698.massKg,packs.698.prices.0.price,packs.698.prices.0.fromPacks,packs.698.content.unit,packs.698.content.sheet.widthMm,packs.698.content.sheet.lengthMm,packs.698.content.material,packs.698.content.quantity,packs.698.content.thicknessMm,packs.698.oversize,packs.698.supplier,packs.698.hazardous,packs.699.sku,packs.699.name,packs.699.massKg,packs.699.prices.0.price,packs.699.prices.0.fromPacks,packs.699.content.unit,packs.699.content.sheet.widthMm,packs.699.content.sheet.lengthMm,packs.699.content.material,packs.699.content.quantity,packs.699.content.thicknessMm,packs.699.oversize,packs.699.supplier,packs.699.hazardous,packs.700.sku,packs.700.name,packs.700.massKg,packs.700.prices.0.price,packs.700.prices.0.fromPacks,packs.700.content.unit,packs.700.content.sheet.widthMm,packs.700.content.sheet.lengthMm,packs.700.content.material,packs.700.content.quantity,packs.700.content.thicknessMm,packs.700.oversize,packs.700.supplier,packs.700.hazardous,packs.701.sku,packs.701.name,packs.701.massKg,packs.701.prices.0.price,packs.701.prices.0.fromPacks,packs.701.content.unit,packs.701.content.sheet.widthMm,packs.701.content.sheet.lengthMm,packs.701.content.material,packs.701.content.quantity,packs.701.content.thicknessMm,packs.701.oversize,packs.701.supplier,packs.701.hazardous,packs.702.sku,packs.702.name,packs.702.massKg,packs.702.prices.0.price,packs.702.prices.0.fromPacks,packs.702.content.unit,packs.702.content.sheet.widthMm,packs.702.content.sheet.lengthMm,packs.702.content.material,packs.702.content.quantity,packs.702.content.thicknessMm,packs.702.oversize,packs.702.supplier,packs.702.hazardous,packs.703.sku,packs.703.name,packs.703.massKg,packs.703.prices.0.price,packs.703.prices.0.fromPacks,packs.703.content.unit,packs.703.content.material,packs.703.content.quantity,packs.703.oversize,packs.703.supplier,packs.703.hazardous,packs.704.sku,packs.704.name,packs.704.massKg,packs.704.prices.0.price,packs.704.prices.0.fromPacks,packs.704.content.unit,packs.704.content.material,packs.704.content.quantity,packs.704.oversize,packs.704.supplier,packs.704.hazardous,packs.705.sku,packs.705.name,packs.705.massKg,packs.705.prices.0.price,packs.705.prices.0.fromPacks,packs.705.content.unit,packs.705.content.material,packs.705.content.quantity,packs.705.oversize,packs.705.supplier,packs.705.hazardous,packs.706.sku,packs.706.name,packs.706.massKg,packs.706.prices.0.price,packs.706.prices.0.fromPacks,packs.706.content.unit,packs.706.content.material,packs.706.content.quantity,packs.706.oversize,packs.706.supplier,packs.706.hazardous,packs.707.sku,packs.707.name,packs.707.massKg,packs.707.prices.0.price,packs.707.prices.0.fromPacks,packs.707.prices.1.price,packs.707.prices.1.fromPacks,packs.707.content.unit,packs.707.content.material,packs.707.content.quantity,packs.707.oversize,packs.707.supplier,packs.707.hazardous,packs.708.sku,packs.708.name,packs.708.massKg,packs.708.prices.0.price,packs.708.prices.0.fromPacks,packs.708.prices.1.price,packs.708.prices.1.fromPacks,packs.708.content.unit,packs.708.content.material,packs.708.content.quantity,packs.708.oversize,packs.708.supplier,packs.708.hazardous,packs.709.sku,packs.709.name,packs.709.massKg,packs.709.prices.0.price,packs.709.prices.0.fromPacks,packs.709.prices.1.price,packs.709.prices.1.fromPacks,packs.709.content.unit,packs.709.content.material,packs.709.content.quantity,packs.709.oversize,packs.709.supplier,packs.709.hazardous,packs.710.sku,packs.710.name,packs.710.massKg,packs.710.prices.0.price,packs.710.prices.0.fromPacks,packs.710.prices.1.price,packs.710.prices.1.fromPacks,packs.710.content.unit,packs.710.content.material,packs.710.content.quantity,packs.710.oversize,packs.710.supplier,packs.710.hazardous,packs.711.sku,packs.711.name,packs.711.massKg,packs.711.prices.0.price,packs.711.prices.0.fromPacks,packs.711.prices.1.price,packs.711.prices.1.fromPacks,packs.711.prices.2.price,packs.711.prices.2.fromPacks,packs.711.content.unit,packs.711.content.material,packs.711.content.quantity,packs.711.oversize,packs.711.supplier,packs.711.hazardous,packs.712.sku,packs.712.name,packs.712.massKg,packs.712.prices.0.price,packs.712.prices.0.fromPacks,packs.712.prices.1.price,packs.712.prices.1.fromPacks,packs.712.content.unit,packs.712.content.material,packs.712.content.quantity,packs.712.oversize,packs.712.supplier,packs.712.hazardous,packs.713.sku,packs.713.name,packs.713.massKg,packs.713.prices.0.price,packs.713.prices.0.fromPacks,packs.713.prices.1.price,packs.713.prices.1.fromPacks,packs.713.content.unit,packs.713.content.material,packs.713.content.quantity,packs.713.oversize,packs.713.supplier,packs.713.hazardous,packs.714.sku,packs.714.name,packs.714.massKg,packs.714.prices.0.price,packs.714.prices.0.fromPacks,packs.714.prices.1.price,packs.714.prices.1.fromPacks,packs.714.content.unit,packs.714.content.material,packs.714.content.quantity,packs.714.oversize,packs.714.supplier,packs.714.hazardous,packs.715.sku,packs.715.name,packs.715.massKg,packs.715.prices.0.price,packs.715.prices.0.fromPacks,packs.715.prices.1.price,packs.715.prices.1.fromPacks,packs.715.content.unit,packs.715.content.material,packs.715.content.quantity,packs.715.oversize,packs.715.supplier,packs.715.hazardous,packs.716.sku,packs.716.name,packs.716.massKg,packs.716.prices.0.price,packs.716.prices.0.fromPacks,packs.716.prices.1.price,packs.716.prices.1.fromPacks,packs.716.prices.2.price,packs.716.prices.2.fromPacks,packs.716.content.unit,packs.716.content.material,packs.716.content.quantity,packs.716.oversize,packs.716.supplier,packs.716.hazardous,packs.717.sku,packs.717.name,packs.717.massKg,packs.717.prices.0.price,packs.717.prices.0.fromPacks,packs.717.prices.1.price,packs.717.prices.1.fromPacks,packs.717.content.unit,packs.717.content.material,packs.717.content.quantity,packs.717.oversize,packs.717.supplier,packs.717.hazardous,packs.718.sku,packs.718.name,packs.718.massKg,packs.718.prices.0.price,packs.718.prices.0.fromPacks,packs.718.prices.1.price,packs.718.prices.1.fromPacks,packs.718.content.unit,packs.718.content.material,packs.718.content.quantity,packs.718.oversize,packs.718.supplier,packs.718.hazardous,packs.719.sku,packs.719.name,packs.719.massKg,packs.719.prices.0.price,packs.719.prices.0.fromPacks,packs.719.prices.1.price,packs.719.prices.1.fromPacks,packs.719.content.unit,packs.719.content.material,packs.719.content.quantity,packs.719.oversize,packs.719.supplier,packs.719.hazardous,packs.720.sku,packs.720.name,packs.720.massKg,packs.720.prices.0.price,packs.720.prices.0.fromPacks,packs.720.prices.1.price,packs.720.prices.1.fromPacks,packs.720.content.unit,packs.720.content.material,packs.720.content.quantity,packs.720.oversize,packs.720.supplier,packs.720.hazardous,packs.721.sku,packs.721.name,packs.721.massKg,packs.721.prices.0.price,packs.721.prices.0.fromPacks,packs.721.prices.1.price,packs.721.prices.1.fromPacks,packs.721.prices.2.price,packs.721.prices.2.fromPacks,packs.721.content.unit,packs.721.content.material,packs.721.content.quantity,packs.721.oversize,packs.721.supplier,packs.721.hazardous,packs.722.sku,packs.722.name,packs.722.massKg,packs.722.prices.0.price,packs.722.prices.0.fromPacks,packs.722.prices.1.price,packs.722.prices.1.fromPacks,packs.722.content.unit,packs.722.content.material,packs.722.content.quantity,packs.722.oversize,packs.722.supplier,packs.722.hazardous,packs.723.sku,packs.723.name,packs.723.massKg,packs.723.prices.0.price,packs.723.prices.0.fromPacks,packs.723.prices.1.price,packs.723.prices.1.fromPacks,packs.723.content.unit,packs.723.content.material,packs.723.content.quantity,packs.723.oversize,packs.723.supplier,packs.723.hazardous,packs.724.sku,packs.724.name,packs.724.massKg,packs.724.prices.0.price,packs.724.prices.0.fromPacks,packs.724.prices.1.price,packs.724.prices.1.fromPacks,packs.724.content.unit,packs.724.content.material,packs.724.content.quantity,packs.724.oversize,packs.724.supplier,packs.724.hazardous,packs.725.sku,packs.725.name,packs.725.massKg,packs.725.prices.0.price,packs.725.prices.0.fromPacks,packs.725.prices.1.price,packs.725.prices.1.fromPacks,packs.725.content.unit,packs.725.content.material,packs.725.content.quantity,packs.725.oversize,packs.725.supplier,packs.725.hazardous,packs.726.sku,packs.726.name,packs.726.massKg,packs.726.prices.0.price,packs.726.prices.0.fromPacks,packs.726.prices.1.price,packs.726.prices.1.fromPacks,packs.726.prices.2.price,packs.726.prices.2.fromPacks,packs.726.content.unit,packs.726.content.material,packs.726.content.quantity,packs.726.oversize,packs.726.supplier,packs.726.hazardous,packs.727.sku,packs.727.name,packs.727.massKg,packs.727.prices.0.price,packs.727.prices.0.fromPacks,packs.727.prices.1.price,packs.727.prices.1.fromPacks,packs.727.content.unit,packs.727.content.material,packs.727.content.quantity,packs.727.oversize,packs.727.supplier,packs.727.hazardous,packs.728.sku,packs.728.name,packs.728.massKg,packs.728.prices.0.price,packs.728.prices.0.fromPacks,packs.728.prices.1.price,packs.728.prices.1.fromPacks,packs.728.content.unit,packs.728.content.material,packs.728.content.quantity,packs.728.oversize,packs.728.supplier,packs.728.hazardous,packs.729.sku,packs.729.name,packs.729.massKg,packs.729.prices.0.price,packs.729.prices.0.fromPacks,packs.729.prices.1.price,packs.729.prices.1.fromPacks,packs.729.content.unit,packs.729.content.material,packs.729.content.quantity,packs.729.oversize,packs.729.supplier,packs.729.hazardous,packs.730.sku,packs.730.name,packs.730.massKg,packs.730.prices.0.price,packs.730.prices.0.fromPacks,packs.730.prices.1.price,packs.730.prices.1.fromPacks,packs.730.content.unit,packs.730.content.material,packs.730.content.quantity,packs.730.oversize,packs.730.supplier,packs.730.hazardous,packs.731.sku,packs.731.name,packs.731.massKg,packs.731.prices.0.price,packs.731.prices.0.fromPacks,packs.731.prices.1.price,packs.731.prices.1.fromPacks,packs.731.prices.2.price,packs.731.prices.2.fromPacks,packs.731.content.unit,packs.731.content.material,packs.731.content.quantity,packs.731.oversize,packs.731.supplier,packs.731.hazardous,packs.732.sku,packs.732.name,packs.732.massKg,packs.732.prices.0.price,packs.732.prices.0.fromPacks,packs.732.prices.1.price,packs.732.prices.1.fromPacks,packs.732.content.unit,packs.732.content.material,packs.732.content.quantity,packs.732.oversize,packs.732.supplier,packs.732.hazardous,packs.733.sku,packs.733.name,packs.733.massKg,packs.733.prices.0.price,packs.733.prices.0.fromPacks,packs.733.prices.1.price,packs.733.prices.1.fromPacks,packs.733.content.unit,packs.733.content.material,packs.733.content.quantity,packs.733.oversize,packs.733.supplier,packs.733.hazardous,packs.734.sku,packs.734.name,packs.734.massKg,packs.734.prices.0.price,packs.734.prices.0.fromPacks,packs.734.prices.1.price,packs.734.prices.1.fromPacks,packs.734.content.unit,packs.734.content.material,packs.734.content.quantity,packs.734.oversize,packs.734.supplier,packs.734.hazardous,packs.735.sku,packs.735.name,packs.735.massKg,packs.735.prices.0.price,packs.735.prices.0.fromPacks,packs.735.prices.1.price,packs.735.prices.1.fromPacks,packs.735.content.unit,packs.735.content.material,packs.735.content.quantity,packs.735.oversize,packs.735.supplier,packs.735.hazardous,packs.736.sku,packs.736.name,packs.736.massKg,packs.736.prices.0.price,packs.736.prices.0.fromPacks,packs.736.prices.1.price,packs.736.prices.1.fromPacks,packs.736.prices.2.price,packs.736.prices.2.fromPacks,packs.736.content.unit,packs.736.content.material,packs.736.content.quantity,packs.736.oversize,packs.736.supplier,packs.736.hazardous,packs.737.sku,packs.737.name,packs.737.cutFee,packs.737.massKg,packs.737.prices.0.price,packs.737.prices.0.fromPacks,packs.737.content.unit,packs.737.content.material,packs.737.content.quantity,packs.737.content.rollWidthMm,packs.737.oversize,packs.737.supplier,packs.737.hazardous,packs.738.sku,packs.738.name,packs.738.cutFee,packs.738.massKg,packs.738.prices.0.price,packs.738.prices.0.fromPacks,packs.738.content.unit,packs.738.content.material,packs.738.content.quantity,packs.738.content.rollWidthMm,packs.738.oversize,packs.738.supplier,packs.738.hazardous,packs.739.sku,packs.739.name,packs.739.massKg,packs.739.prices.0.price,packs.739.prices.0.fromPacks,packs.739.prices.1.price,packs.739.prices.1.fromPacks,packs.739.prices.2.price,packs.739.prices.2.fromPacks,packs.739.content.unit,packs.739.content.material,packs.739.content.quantity,packs.739.content.rollWidthMm,packs.739.oversize,packs.739.supplier,packs.739.hazardous,packs.740.sku,packs.740.name,packs.740.massKg,packs.740.prices.0.price,packs.740.prices.0.fromPacks,packs.740.prices.1.price,packs.740.prices.1.fromPacks,packs.740.prices.2.price,packs.740.prices.2.fromPacks,packs.740.content.unit,packs.740.content.material,packs.740.content.quantity,packs.740.content.rollWidthMm,packs.740.oversize,packs.740.supplier,packs.740.hazardous,packs.741.sku,packs.741.name,packs.741.cutFee,packs.741.massKg,packs.741.prices.0.price,packs.741.prices.0.fromPacks,packs.741.content.unit,packs.741.content.material,packs.741.content.quantity,packs.741.content.rollWidthMm,packs.741.oversize,packs.741.supplier,packs.741.hazardous,packs.742.sku,packs.742.name,packs.742.cutFee,packs.742.massKg,packs.742.prices.0.price,packs.742.prices.0.fromPacks,packs.742.content.unit,packs.742.content.material,packs.742.content.quantity,packs.742.content.rollWidthMm,packs.742.oversize,packs.742.supplier,packs.742.hazardous,packs.743.sku,packs.743.name,packs.743.massKg,packs.743.prices.0.price,packs.743.prices.0.fromPacks,packs.743.prices.1.price,packs.743.prices.1.fromPacks,packs.743.prices.2.price,packs.743.prices.2.fromPacks,packs.743.content.unit,packs.743.content.material,packs.743.content.quantity,packs.743.content.rollWidthMm,packs.743.oversize,packs.743.supplier,packs.743.hazardous,packs.744.sku,packs.744.name,packs.744.massKg,packs.744.prices.0.price,packs.744.prices.0.fromPacks,packs.744.prices.1.price,packs.744.prices.1.fromPacks,packs.744.prices.2.price,packs.744.prices.2.fromPacks,packs.744.content.unit,packs.744.content.material,packs.744.content.quantity,packs.744.content.rollWidthMm,packs.744.oversize,packs.744.supplier,packs.744.hazardous,packs.745.sku,packs.745.name,packs.745.cutFee,packs.745.massKg,packs.745.prices.0.price,packs.745.prices.0.fromPacks,packs.745.content.unit,packs.745.content.material,packs.745.content.quantity,packs.745.content.rollWidthMm,packs.745.oversize,packs.745.supplier,packs.745.hazardous,packs.746.sku,packs.746.name,packs.746.cutFee,packs.746.massKg,packs.746.prices.0.price,packs.746.prices.0.fromPacks,packs.746.content.unit,packs.746.content.material,packs.746.content.quantity,packs.746.content.rollWidthMm,packs.746.oversize,packs.746.supplier,packs.746.hazardous,packs.747.sku,packs.747.name,packs.747.massKg,packs.747.prices.0.price,packs.747.prices.0.fromPacks,packs.747.prices.1.price,packs.747.prices.1.fromPacks,packs.747.prices.2.price,packs.747.prices.2.fromPacks,packs.747.content.unit,packs.747.content.material,packs.747.content.quantity,packs.747.content.rollWidthMm,packs.747.oversize,packs.747.supplier,packs.747.hazardous,packs.748.sku,packs.748.name,packs.748.massKg,packs.748.prices.0.price,packs.748.prices.0.fromPacks,packs.748.prices.1.price,packs.748.prices.1.fromPacks,packs.748.prices.2.price,packs.748.prices.2.fromPacks,packs.748.content.unit,packs.748.content.material,packs.748.content.quantity,packs.748.content.rollWidthMm,packs.748.oversize,packs.748.supplier,packs.748.hazardous,packs.749.sku,packs.749.name,packs.749.cutFee,packs.749.massKg,packs.749.prices.0.price,packs.749.prices.0.fromPacks,packs.749.content.unit,packs.749.content.material,packs.749.content.quantity,packs.749.content.rollWidthMm,packs.749.oversize,packs.749.supplier,packs.749.hazardous,packs.750.sku,packs.750.name,packs.750.cutFee,packs.750.massKg,packs.750.prices.0.price,packs.750.prices.0.fromPacks,packs.750.content.unit,packs.750.content.material,packs.750.content.quantity,packs.750.content.rollWidthMm,packs.750.oversize,packs.750.supplier,packs.750.hazardous,packs.751.sku,packs.751.name,packs.751.massKg,packs.751.prices.0.price,packs.751.prices.0.fromPacks,packs.751.prices.1.price,packs.751.prices.1.fromPacks,packs.751.prices.2.price,packs.751.prices.2.fromPacks,packs.751.content.unit,packs.751.content.material,packs.751.content.quantity,packs.751.content.rollWidthMm,packs.751.oversize,packs.751.supplier,packs.751.hazardous,packs.752.sku,packs.752.name,packs.752.massKg,packs.752.prices.0.price,packs.752.prices.0.fromPacks,packs.752.prices.1.price,packs.752.prices.1.fromPacks,packs.752.prices.2.price,packs.752.prices.2.fromPacks,packs.752.content.unit,packs.752.content.material,packs.752.content.quantity,packs.752.content.rollWidthMm,packs.752.oversize,packs.752.supplier,packs.752.hazardous,packs.753.sku,packs.753.name,packs.753.cutFee,packs.753.massKg,packs.753.prices.0.price,packs.753.prices.0.fromPacks,packs.753.content.unit,packs.753.content.material,packs.753.content.quantity,packs.753.content.rollWidthMm,packs.753.oversize,packs.753.supplier,packs.753.hazardous,packs.754.sku,packs.754.name,packs.754.cutFee,packs.754.massKg,packs.754.prices.0.price,packs.754.prices.0.fromPacks,packs.754.content.unit,packs.754.content.material,packs.754.content.quantity,packs.754.content.rollWidthMm,packs.754.oversize,packs.754.supplier,packs.754.hazardous,packs.755.sku,packs.755.name,packs.755.massKg,packs.755.prices.0.price,packs.755.prices.0.fromPacks,packs.755.prices.1.price,packs.755.prices.1.fromPacks,packs.755.prices.2.price,packs.755.prices.2.fromPacks,packs.755.content.unit,packs.755.content.material,packs.755.content.quantity,packs.755.content.rollWidthMm,packs.755.oversize,packs.755.supplier,packs.755.hazardous,packs.756.sku,packs.756.name,packs.756.massKg,packs.756.prices.0.price,packs.756.prices.0.fromPacks,packs.756.prices.1.price,packs.756.prices.1.fromPacks,packs.756.prices.2.price,packs.756.prices.2.fromPacks,packs.756.content.unit,packs.756.content.material,packs.756.content.quantity,packs.756.content.rollWidthMm,packs.756.oversize,packs.756.supplier,packs.756.hazardous,packs.757.sku,packs.757.name,packs.757.cutFee,packs.757.massKg,packs.757.prices.0.price,packs.757.prices.0.fromPacks,packs.757.content.unit,packs.757.content.material,packs.757.content.quantity,packs.757.content.rollWidthMm,packs.757.oversize,packs.757.supplier,packs.757.hazardous,packs.758.sku,packs.758.name,packs.758.cutFee,packs.758.massKg,packs.758.prices.0.price,packs.758.prices.0.fromPacks,packs.758.content.unit,packs.758.content.material,packs.758.content.quantity,packs.758.content.rollWidthMm,packs.758.oversize,packs.758.supplier,packs.758.hazardous,packs.759.sku,packs.759.name,packs.759.massKg,packs.759.prices.0.price,packs.759.prices.0.fromPacks,packs.759.prices.1.price,packs.759.prices.1.fromPacks,packs.759.prices.2.price,packs.759.prices.2.fromPacks,packs.759.content.unit,packs.759.content.material,packs.759.content.quantity,packs.759.content.rollWidthMm,packs.759.oversize,packs.759.supplier,packs.759.hazardous,packs.760.sku,packs.760.name,packs.760.massKg,packs.760.prices.0.price,packs.760.prices.0.fromPacks,packs.760.prices.1.price,packs.760.prices.1.fromPacks,packs.760.prices.2.price,packs.760.prices.2.fromPacks,packs.760.content.unit,packs.760.content.material,packs.760.content.quantity,packs.760.content.rollWidthMm,packs.760.oversize,packs.760.supplier,packs.760.hazardous,packs.761.sku,packs.761.name,packs.761.massKg,packs.761.prices.0.price,packs.761.prices.0.fromPacks,packs.761.prices.1.price,packs.761.prices.1.fromPacks,packs.761.prices.2.price,packs.761.prices.2.fromPacks,packs.761.content.unit,packs.761.content.material,packs.761.content.quantity,packs.761.content.rollWidthMm,packs.761.oversize,packs.761.supplier,packs.761.hazardous,packs.762.sku,packs.762.name,packs.762.cutFee,packs.762.massKg,packs.762.prices.0.price,packs.762.prices.0.fromPacks,packs.762.content.unit,packs.762.content.material,packs.762.content.quantity,packs.762.content.rollWidthMm,packs.762.oversize,packs.762.supplier,packs.762.hazardous,packs.763.sku,packs.763.name,packs.763.cutFee,packs.763.massKg,packs.763.prices.0.price,packs.763.prices.0.fromPacks,packs.763.content.unit,packs.763.content.material,packs.763.content.quantity,packs.763.content.rollWidthMm,packs.763.oversize,packs.763.supplier,packs.763.hazardous,packs.764.sku,packs.764.name,packs.764.massKg,packs.764.prices.0.price,packs.764.prices.0.fromPacks,packs.764.prices.1.price,packs.764.prices.1.fromPacks,packs.764.prices.2.price,packs.764.prices.2.fromPacks,packs.764.content.unit,packs.764.content.material,packs.764.content.quantity,packs.764.content.rollWidthMm,packs.764.oversize,packs.764.supplier,packs.764.hazardous,packs.765.sku,packs.765.name,packs.765.massKg,packs.765.prices.0.price,packs.765.prices.0.fromPacks,packs.765.prices.1.price,packs.765.prices.1.fromPacks,packs.765.prices.2.price,packs.765.prices.2.fromPacks,packs.765.content.unit,packs.765.content.material,packs.765.content.quantity,packs.765.content.rollWidthMm,packs.765.oversize,packs.765.supplier,packs.765.hazardous,packs.766.sku,packs.766.name,packs.766.massKg,packs.766.prices.0.price,packs.766.prices.0.fromPacks,packs.766.prices.1.price,packs.766.prices.1.fromPacks,packs.766.prices.2.price,packs.766.prices.2.fromPacks,packs.766.content.unit,packs.766.content.material,packs.766.content.quantity,packs.766.content.rollWidthMm,packs.766.oversize,packs.766.supplier,packs.766.hazardous,packs.767.sku,packs.767.name,packs.767.cutFee,packs.767.massKg,packs.767.prices.0.price,packs.767.prices.0.fromPacks,packs.767.content.unit,packs.767.content.material,packs.767.content.quantity,packs.767.content.rollWidthMm,packs.767.oversize,packs.767.supplier,packs.767.hazardous,packs.768.sku,packs.768.name,packs.768.cutFee,packs.768.massKg,packs.768.prices.0.price,packs.768.prices.0.fromPacks,packs.768.content.unit,packs.768.content.material,packs.768.content.quantity,packs.768.content.rollWidthMm,packs.768.oversize,packs.768.supplier,packs.768.hazardous,packs.769.sku,packs.769.name,packs.769.massKg,packs.769.prices.0.price,packs.769.prices.0.fromPacks,packs.769.prices.1.price,packs.769.prices.1.fromPacks,packs.769.prices.2.price,packs.769.prices.2.fromPacks,packs.769.content.unit,packs.769.content.material,packs.769.content.quantity,packs.769.content.rollWidthMm,packs.769.oversize,packs.769.supplier,packs.769.hazardous,packs.770.sku,packs.770.name,packs.770.massKg,packs.770.prices.0.price,packs.770.prices.0.fromPacks,packs.770.prices.1.price,packs.770.prices.1.fromPacks,packs.770.prices.2.price,packs.770.prices.2.fromPacks,packs.770.content.unit,packs.770.content.material,packs.770.content.quantity,packs.770.content.rollWidthMm,packs.770.oversize,packs.770.supplier,packs.770.hazardous,packs.771.sku,packs.771.name,packs.771.massKg,packs.771.prices.0.price,packs.771.prices.0.fromPacks,packs.771.prices.1.price,packs.771.prices.1.fromPacks,packs.771.prices.2.price,packs.771.prices.2.fromPacks,packs.771.content.unit,packs.771.content.material,packs.771.content.quantity,packs.771.content.rollWidthMm,packs.771.oversize,packs.771.supplier,packs.771.hazardous,packs.772.sku,packs.772.name,packs.772.cutFee,packs.772.massKg,packs.772.prices.0.price,packs.772.prices.0.fromPacks,packs.772.content.unit,packs.772.content.material,packs.772.content.quantity,packs.772.content.rollWidthMm,packs.772.oversize,packs.772.supplier,packs.772.hazardous,packs.773.sku,packs.773.name,packs.773.cutFee,packs.773.massKg,packs.773.prices.0.price,packs.773.prices.0.fromPacks,packs.773.content.unit,packs.773.content.material,packs.773.content.quantity,packs.773.content.rollWidthMm,packs.773.oversize,packs.773.supplier,packs.773.hazardous,packs.774.sku,packs.774.name,packs.774.massKg,packs.774.prices.0.price,packs.774.prices.0.fromPacks,packs.774.prices.1.price,packs.774.prices.1.fromPacks,packs.774.prices.2.price,packs.774.prices.2.fromPacks,packs.774.content.unit,packs.774.content.material,packs.774.content.quantity,packs.774.content.rollWidthMm,packs.774.oversize,packs.774.supplier,packs.774.hazardous,packs.775.sku,packs.775.name,packs.775.massKg,packs.775.prices.0.price,packs.775.prices.0.fromPacks,packs.775.prices.1.price,packs.775.prices.1.fromPacks,packs.775.prices.2.price,packs.775.prices.2.fromPacks,packs.775.content.unit,packs.775.content.material,packs.775.content.quantity,packs.775.content.rollWidthMm,packs.775.oversize,packs.775.supplier,packs.775.hazardous,packs.776.sku,packs.776.name,packs.776.massKg,packs.776.prices.0.price,packs.776.prices.0.fromPacks,packs.776.prices.1.price,packs.776.prices.1.fromPacks,packs.776.prices.2.price,packs.776.prices.2.fromPacks,packs.776.content.unit,packs.776.content.material,packs.776.content.quantity,packs.776.content.rollWidthMm,packs.776.oversize,packs.776.supplier,packs.776.hazardous,packs.777.sku,packs.777.name,packs.777.cutFee,packs.777.massKg,packs.777.prices.0.price,packs.777.prices.0.fromPacks,packs.777.content.unit,packs.777.content.material,packs.777.content.quantity,packs.777.content.rollWidthMm,packs.777.oversize,packs.777.supplier,packs.777.hazardous,packs.778.sku,packs.778.name,packs.778.cutFee,packs.778.massKg,packs.778.prices.0.price,packs.778.prices.0.fromPacks,packs.778.content.unit,packs.778.content.material,packs.778.content.quantity,packs.778.content.rollWidthMm,packs.778.oversize,packs.778.supplier,packs.778.hazardous,packs.779.sku,packs.779.name,packs.779.massKg,packs.779.prices.0.price,packs.779.prices.0.fromPacks,packs.779.prices.1.price,packs.779.prices.1.fromPacks,packs.779.prices.2.price,packs.779.prices.2.fromPacks,packs.779.content.unit,packs.779.content.material,packs.779.content.quantity,packs.779.content.rollWidthMm,packs.779.oversize,packs.779.supplier,packs.779.hazardous,packs.780.sku,packs.780.name,packs.780.massKg,packs.780.prices.0.price,packs.780.prices.0.fromPacks,packs.780.prices.1.price,packs.780.prices.1.fromPacks,packs.780.prices.2.price,packs.780.prices.2.fromPacks,packs.780.content.unit,packs.780.content.material,packs.780.content.quantity,packs.780.content.rollWidthMm,packs.780.oversize,packs.780.supplier,packs.780.hazardous,packs.781.sku,packs.781.name,packs.781.massKg,packs.781.prices.0.price,packs.781.prices.0.fromPacks,packs.781.prices.1.price,packs.781.prices.1.fromPacks,packs.781.prices.2.price,packs.781.prices.2.fromPacks,packs.781.content.unit,packs.781.content.material,packs.781.content.quantity,packs.781.content.rollWidthMm,packs.781.oversize,packs.781.supplier,packs.781.hazardous,packs.782.sku,packs.782.name,packs.782.cutFee,packs.782.massKg,packs.782.prices.0.price,packs.782.prices.0.fromPacks,packs.782.content.unit,packs.782.content.material,packs.782.content.quantity,packs.782.content.rollWidthMm,packs.782.oversize,packs.782.supplier,packs.782.hazardous,packs.783.sku,packs.783.name,packs.783.cutFee,packs.783.massKg,packs.783.prices.0.price,packs.783.prices.0.fromPacks,packs.783.content.unit,packs.783.content.material,packs.783.content.quantity,packs.783.content.rollWidthMm,packs.783.oversize,packs.783.supplier,packs.783.hazardous,packs.784.sku,packs.784.name,packs.784.massKg,packs.784.prices.0.price,packs.784.prices.0.fromPacks,packs.784.prices.1.price,packs.784.prices.1.fromPacks,packs.784.prices.2.price,packs.784.prices.2.fromPacks,packs.784.content.unit,packs.784.content.material,packs.784.content.quantity,packs.784.content.rollWidthMm,packs.784.oversize,packs.784.supplier,packs.784.hazardous,packs.785.sku,packs.785.name,packs.785.massKg,packs.785.prices.0.price,packs.785.prices.0.fromPacks,packs.785.prices.1.price,packs.785.prices.1.fromPacks,packs.785.prices.2.price,packs.785.prices.2.fromPacks,packs.785.content.unit,packs.785.content.material,packs.785.content.quantity,packs.785.content.rollWidthMm,packs.785.oversize,packs.785.supplier,packs.785.hazardous,packs.786.sku,packs.786.name,packs.786.massKg,packs.786.prices.0.price,packs.786.prices.0.fromPacks,packs.786.prices.1.price,packs.786.prices.1.fromPacks,packs.786.prices.2.price,packs.786.prices.2.fromPacks,packs.786.content.unit,packs.786.content.material,packs.786.content.quantity,packs.786.content.rollWidthMm,packs.786.oversize,packs.786.supplier,packs.786.hazardous,packs.787.sku,packs.787.name,packs.787.cutFee,packs.787.massKg,packs.787.prices.0.price,packs.787.prices.0.fromPacks,packs.787.content.unit,packs.787.content.material,packs.787.content.quantity,packs.787.content.rollWidthMm,packs.787.oversize,packs.787.supplier,packs.787.hazardous,packs.788.sku,packs.788.name,packs.788.cutFee,packs.788.massKg,packs.788.prices.0.price,packs.788.prices.0.fromPacks,packs.788.content.unit,packs.788.content.material,packs.788.content.quantity,packs.788.content.rollWidthMm,packs.788.oversize,packs.788.supplier,packs.788.hazardous,packs.789.sku,packs.789.name,packs.789.massKg,packs.789.prices.0.price,packs.789.prices.0.fromPacks,packs.789.prices.1.price,packs.789.prices.1.fromPacks,packs.789.prices.2.price,packs.789.prices.2.fromPacks,packs.789.content.unit,packs.789.content.material,packs.789.content.quantity,packs.789.content.rollWidthMm,packs.789.oversize,packs.789.supplier,packs.789.hazardous,packs.790.sku,packs.790.name,packs.790.massKg,packs.790.prices.0.price,packs.790.prices.0.fromPacks,packs.790.prices.1.price,packs.790.prices.1.fromPacks,packs.790.prices.2.price,packs.790.prices.2.fromPacks,packs.790.content.unit,packs.790.content.material,packs.790.content.quantity,packs.790.content.rollWidthMm,packs.790.oversize,packs.790.supplier,packs.790.hazardous,packs.791.sku,packs.791.name,packs.791.cutFee,packs.791.massKg,packs.791.prices.0.price,packs.791.prices.0.fromPacks,packs.791.content.unit,packs.791.content.material,packs.791.content.quantity,packs.791.content.rollWidthMm,packs.791.oversize,packs.791.supplier,packs.791.hazardous,packs.792.sku,packs.792.name,packs.792.cutFee,packs.792.massKg,packs.792.prices.0.price,packs.792.prices.0.fromPacks,packs.792.content.unit,packs.792.content.material,packs.792.content.quantity,packs.792.content.rollWidthMm,packs.792.oversize,packs.792.supplier,packs.792.hazardous,packs.793.sku,packs.793.name,packs.793.massKg,packs.793.prices.0.price,packs.793.prices.0.fromPacks,packs.793.prices.1.price,packs.793.prices.1.fromPacks,packs.793.prices.2.price,packs.793.prices.2.fromPacks,packs.793.content.unit,packs.793.content.material,packs.793.content.quantity,packs.793.content.rollWidthMm,packs.793.oversize,packs.793.supplier,packs.793.hazardous,packs.794.sku,packs.794.name,packs.794.massKg,packs.794.prices.0.price,packs.794.prices.0.fromPacks,packs.794.prices.1.price,packs.794.prices.1.fromPacks,packs.794.prices.2.price,packs.794.prices.2.fromPacks,packs.794.content.unit,packs.794.content.material,packs.794.content.quantity,packs.794.content.rollWidthMm,packs.794.oversize,packs.794.supplier,packs.794.hazardous,packs.795.sku,packs.795.name,packs.795.cutFee,packs.795.massKg,packs.795.prices.0.price,packs.795.prices.0.fromPacks,packs.795.content.unit,packs.795.content.material,packs.795.content.quantity,packs.795.content.rollWidthMm,packs.795.oversize,packs.795.supplier,packs.795.hazardous,packs.796.sku,packs.796.name,packs.796.cutFee,packs.796.massKg,packs.796.prices.0.price,packs.796.prices.0.fromPacks,packs.796.content.unit,packs.796.content.material,packs.796.content.quantity,packs.796.content.rollWidthMm,packs.796.oversize,packs.796.supplier,packs.796.hazardous,packs.797.sku,packs.797.name,packs.797.massKg,packs.797.prices.0.price,packs.797.prices.0.fromPacks,packs.797.prices.1.price,packs.797.prices.1.fromPacks,packs.797.prices.2.price,packs.797.prices.2.fromPacks,packs.797.content.unit,packs.797.content.material,packs.797.content.quantity,packs.797.content.rollWidthMm,packs.797.oversize,packs.797.supplier,packs.797.hazardous,packs.798.sku,packs.798.name,packs.798.massKg,packs.798.prices.0.price,packs.798.prices.0.fromPacks,packs.798.prices.1.price,packs.798.prices.1.fromPacks,packs.798.prices.2.price,packs.798.prices.2.fromPacks,packs.798.content.unit,packs.798.content.material,packs.798.content.quantity,packs.798.content.rollWidthMm,packs.798.oversize,packs.798.supplier,packs.798.hazardous,packs.799.sku,packs.799.name,packs.799.cutFee,packs.799.massKg,packs.799.prices.0.price,packs.799.prices.0.fromPacks,packs.799.content.unit,packs.799.content.material,packs.799.content.quantity,packs.799.content.rollWidthMm,packs.799.oversize,packs.799.supplier,packs.799.hazardous,packs.800.sku,packs.800.name,packs.800.cutFee,packs.800.massKg,packs.800.prices.0.price,packs.800.prices.0.fromPacks,packs.800.content.unit,packs.800.content.material,packs.800.content.quantity,packs.800.content.rollWidthMm,packs.800.oversize,packs.800.supplier,packs.800.hazardous,packs.801.sku,packs.801.name,packs.801.massKg,packs.801.prices.0.price,packs.801.prices.0.fromPacks,packs.801.prices.1.price,packs.801.prices.1.fromPacks,packs.801.prices.2.price,packs.801.prices.2.fromPacks,packs.801.content.unit,packs.801.content.material,packs.801.content.quantity,packs.801.content.rollWidthMm,packs.801.oversize,packs.801.supplier,packs.801.hazardous,packs.802.sku,packs.802.name,packs.802.massKg,packs.802.prices.0.price,packs.802.prices.0.fromPacks,packs.802.prices.1.price,packs.802.prices.1.fromPacks,packs.802.prices.2.price,packs.802.prices.2.fromPacks,packs.802.content.unit,packs.802.content.material,packs.802.content.quantity,packs.802.content.rollWidthMm,packs.802.oversize,packs.802.supplier,packs.802.hazardous,packs.803.sku,packs.803.name,packs.803.massKg,packs.803.prices.0.price,packs.803.prices.0.fromPacks,packs.803.prices.1.price,packs.803.prices.1.fromPacks,packs.803.content.unit,packs.803.content.material,packs.803.content.quantity,packs.803.content.rollWidthMm,packs.803.oversize,packs.803.supplier,packs.803.hazardous,packs.804.sku,packs.804.name,packs.804.massKg,packs.804.prices.0.price,packs.804.prices.0.fromPacks,packs.804.prices.1.price,packs.804.prices.1.fromPacks,packs.804.prices.2.price,packs.804.prices.2.fromPacks,packs.804.content.unit,packs.804.content.material,packs.804.content.quantity,packs.804.content.rollWidthMm,packs.804.oversize,packs.804.supplier,packs.804.hazardous,packs.805.sku,packs.805.name,packs.805.massKg,packs.805.prices.0.price,packs.805.prices.0.fromPacks,packs.805.prices.1.price,packs.805.prices.1.fromPacks,packs.805.content.unit,packs.805.content.material,packs.805.content.quantity,packs.805.content.rollWidthMm,packs.805.oversize,packs.805.supplier,packs.805.hazardous,packs.806.sku,packs.806.name,packs.806.massKg,packs.806.prices.0.price,packs.806.prices.0.fromPacks,packs.806.prices.1.price,packs.806.prices.1.fromPacks,packs.806.prices.2.price,packs.806.prices.2.fromPacks,packs.806.content.unit,packs.806.content.material,packs.806.content.quantity,packs.806.content.rollWidthMm,packs.806.oversize,packs.806.supplier,packs.806.hazardous,packs.807.sku,packs.807.name,packs.807.massKg,packs.807.prices.0.price,packs.807.prices.0.fromPacks,packs.807.prices.1.price,packs.807.prices.1.fromPacks,packs.807.content.unit,packs.807.content.material,packs.807.content.quantity,packs.807.content.rollWidthMm,packs.807.oversize,packs.807.supplier,packs.807.hazardous,packs.808.sku,packs.808.name,packs.808.massKg,packs.808.prices.0.price,packs.808.prices.0.fromPacks,packs.808.prices.1.price,packs.808.prices.1.fromPacks,packs.808.prices.2.price,packs.808.prices.2.fromPacks,packs.808.content.unit,packs.808.content.material,packs.808.content.quantity,packs.808.content.rollWidthMm,packs.808.oversize,packs.808.supplier,packs.808.hazardous,packs.809.sku,packs.809.name,packs.809.massKg,packs.809.prices.0.price,packs.809.prices.0.fromPacks,packs.809.prices.1.price,packs.809.prices.1.fromPacks,packs.809.content.unit,packs.809.content.material,packs.809.content.quantity,packs.809.content.rollWidthMm,packs.809.oversize,packs.809.supplier,packs.809.hazardous,packs.810.sku,packs.810.name,packs.810.massKg,packs.810.prices.0.price,packs.810.prices.0.fromPacks,packs.810.prices.1.price,packs.810.prices.1.fromPacks,packs.810.prices.2.price,packs.810.prices.2.fromPacks,packs.810.content.unit,packs.810.content.material,packs.810.content.quantity,packs.810.content.rollWidthMm,packs.810.oversize,packs.810.supplier,packs.810.hazardous,packs.811.sku,packs.811.name,packs.811.massKg,packs.811.prices.0.price,packs.811.prices.0.fromPacks,packs.811.prices.1.price,packs.811.prices.1.fromPacks,packs.811.content.unit,packs.811.content.material,packs.811.content.quantity,packs.811.content.rollWidthMm,packs.811.oversize,packs.811.supplier,packs.811.hazardous,packs.812.sku,packs.812.name,packs.812.massKg,packs.812.prices.0.price,packs.812.prices.0.fromPacks,packs.812.prices.1.price,packs.812.prices.1.fromPacks,packs.812.prices.2.price,packs.812.prices.2.fromPacks,packs.812.content.unit,packs.812.content.material,packs.812.content.quantity,packs.812.content.rollWidthMm,packs.812.oversize,packs.812.supplier,packs.812.hazardous,packs.813.sku,packs.813.name,packs.813.massKg,packs.813.prices.0.price,packs.813.prices.0.fromPacks,packs.813.prices.1.price,packs.813.prices.1.fromPacks,packs.813.content.unit,packs.813.content.material,packs.813.content.quantity,packs.813.content.rollWidthMm,packs.813.oversize,packs.813.supplier,packs.813.hazardous,packs.814.sku,packs.814.name,packs.814.massKg,packs.814.prices.0.price,packs.814.prices.0.fromPacks,packs.814.prices.1.price,packs.814.prices.1.fromPacks,packs.814.prices.2.price,packs.814.prices.2.fromPacks,packs.814.content.unit,packs.814.content.material,packs.814.content.quantity,packs.814.content.rollWidthMm,packs.814.oversize,packs.814.supplier,packs.814.hazardous,packs.815.sku,packs.815.name,packs.815.massKg,packs.815.prices.0.price,packs.815.prices.0.fromPacks,packs.815.prices.1.price,packs.815.prices.1.fromPacks,packs.815.content.unit,packs.815.content.material,packs.815.content.quantity,packs.815.content.rollWidthMm,packs.815.oversize,packs.815.supplier,packs.815.hazardous,packs.816.sku,packs.816.name,packs.816.massKg,packs.816.prices.0.price,packs.816.prices.0.fromPacks,packs.816.prices.1.price,packs.816.prices.1.fromPacks,packs.816.prices.2.price,packs.816.prices.2.fromPacks,packs.816.content.unit,packs.816.content.material,packs.816.content.quantity,packs.816.content.rollWidthMm,packs.816.oversize,packs.816.supplier,packs.816.hazardous,packs.817.sku,packs.817.name,packs.817.massKg,packs.817.prices.0.price,packs.817.prices.0.fromPacks,packs.817.prices.1.price,packs.817.prices.1.fromPacks,packs.817.content.unit,packs.817.content.material,packs.817.content.quantity,packs.817.content.rollWidthMm,packs.817.oversize,packs.817.supplier,packs.817.hazardous,packs.818.sku,packs.818.name,packs.818.massKg,packs.818.prices.0.price,packs.818.prices.0.fromPacks,packs.818.prices.1.price,packs.818.prices.1.fromPacks,packs.818.prices.2.price,packs.818.prices.2.fromPacks,packs.818.content.unit,packs.818.content.material,packs.818.content.quantity,packs.818.content.rollWidthMm,packs.818.oversize,packs.818.supplier,packs.818.hazardous,packs.819.sku,packs.819.name,packs.819.massKg,packs.819.prices.0.price,packs.819.prices.0.fromPacks,packs.819.prices.1.price,packs.819.prices.1.fromPacks,packs.819.content.unit,packs.819.content.material,packs.819.content.quantity,packs.819.content.rollWidthMm,packs.819.oversize,packs.819.supplier,packs.819.hazardous,packs.820.sku,packs.820.name,packs.820.massKg,packs.820.prices.0.price,packs.820.prices.0.fromPacks,packs.820.prices.1.price,packs.820.prices.1.fromPacks,packs.820.prices.2.price,packs.820.prices.2.fromPacks,packs.820.content.unit,packs.820.content.material,packs.820.content.quantity,packs.820.content.rollWidthMm,packs.820.oversize,packs.820.supplier,packs.820.hazardous,packs.821.sku,packs.821.name,packs.821.massKg,packs.821.prices.0.price,packs.821.prices.0.fromPacks,packs.821.prices.1.price,packs.821.prices.1.fromPacks,packs.821.content.unit,packs.821.content.material,packs.821.content.quantity,packs.821.content.rollWidthMm,packs.821.oversize,packs.821.supplier,packs.821.hazardous,packs.822.sku,packs.822.name,packs.822.massKg,packs.822.prices.0.price,packs.822.prices.0.fromPacks,packs.822.prices.1.price,packs.822.prices.1.fromPacks,packs.822.prices.2.price,packs.822.prices.2.fromPacks,packs.822.content.unit,packs.822.content.material,packs.822.content.quantity,packs.822.content.rollWidthMm,packs.822.oversize,packs.822.supplier,packs.822.hazardous,packs.823.sku,packs.823.name,packs.823.massKg,packs.823.prices.0.price,packs.823.prices.0.fromPacks,packs.823.prices.1.price,packs.823.prices.1.fromPacks,packs.823.content.unit,packs.823.content.material,packs.823.content.quantity,packs.823.content.rollWidthMm,packs.823.oversize,packs.823.supplier,packs.823.hazardous,packs.824.sku,packs.824.name,packs.824.massKg,packs.824.prices.0.price,packs.824.prices.0.fromPacks,packs.824.prices.1.price,packs.824.prices.1.fromPacks,packs.824.prices.2.price,packs.824.prices.2.fromPacks,packs.824.content.unit,packs.824.content.material,packs.824.content.quantity,packs.824.content.rollWidthMm,packs.824.oversize,packs.824.supplier,packs.824.hazardous,packs.825.sku,packs.825.name,packs.825.massKg,packs.825.prices.0.price,packs.825.prices.0.fromPacks,packs.825.prices.1.price,packs.825.prices.1.fromPacks,packs.825.content.unit,packs.825.content.material,packs.825.content.quantity,packs.825.content.rollWidthMm,packs.825.oversize,packs.825.supplier,packs.825.hazardous,packs.826.sku,packs.826.name,packs.826.massKg,packs.826.prices.0.price,packs.826.prices.0.fromPacks,packs.826.prices.1.price,packs.826.prices.1.fromPacks,packs.826.prices.2.price,packs.826.prices.2.fromPacks,packs.826.content.unit,packs.826.content.material,packs.826.content.quantity,packs.826.content.rollWidthMm,packs.826.oversize,packs.826.supplier,packs.826.hazardous,packs.827.sku,packs.827.name,packs.827.cutFee,packs.827.massKg,packs.827.prices.0.price,packs.827.prices.0.fromPacks,packs.827.content.unit,packs.827.content.material,packs.827.content.quantity,packs.827.content.rollWidthMm,packs.827.oversize,packs.827.supplier,packs.827.hazardous,packs.828.sku,packs.828.name,packs.828.cutFee,packs.828.massKg,packs.828.prices.0.price,packs.828.prices.0.fromPacks,packs.828.content.unit,packs.828.content.material,packs.828.content.quantity,packs.828.content.rollWidthMm,packs.828.oversize,packs.828.supplier,packs.828.hazardous,packs.829.sku,packs.829.name,packs.829.massKg,packs.829.prices.0.price,packs.829.prices.0.fromPacks,packs.829.prices.1.price,packs.829.prices.1.fromPacks,packs.829.prices.2.price,packs.829.prices.2.fromPacks,packs.829.content.unit,packs.829.content.material,packs.829.content.quantity,packs.829.content.rollWidthMm,packs.829.oversize,packs.829.supplier,packs.829.hazardous,packs.830.sku,packs.830.name,packs.830.cutFee,packs.830.massKg,packs.830.prices.0.price,packs.830.prices.0.fromPacks,packs.830.content.unit,packs.830.content.material,packs.830.content.quantity,packs.830.content.rollWidthMm,packs.830.oversize,packs.830.supplier,packs.830.hazardous,packs.831.sku,packs.831.name,packs.831.cutFee,packs.831.massKg,packs.831.prices.0.price,packs.831.prices.0.fromPacks,packs.831.content.unit,packs.831.content.material,packs.831.content.quantity,packs.831.content.rollWidthMm,packs.831.oversize,packs.831.supplier,packs.831.hazardous,packs.832.sku,packs.832.name,packs.832.massKg,packs.832.prices.0.price,packs.832.prices.0.fromPacks,packs.832.prices.1.price,packs.832.prices.1.fromPacks,packs.832.prices.2.price,packs.832.prices.2.fromPacks,packs.832.content.unit,packs.832.content.material,packs.832.content.quantity,packs.832.content.rollWidthMm,packs.832.oversize,packs.832.supplier,packs.832.hazardous,packs.833.sku,packs.833.name,packs.833.cutFee,packs.833.massKg,packs.833.prices.0.price,packs.833.prices.0.fromPacks,packs.833.content.unit,packs.833.content.material,packs.833.content.quantity,packs.833.content.rollWidthMm,packs.833.oversize,packs.833.supplier,packs.833.hazardous,packs.834.sku,packs.834.name,packs.834.cutFee,packs.834.massKg,packs.834.prices.0.price,packs.834.prices.0.fromPacks,packs.834.content.unit,packs.834.content.material,packs.834.content.quantity,packs.834.content.rollWidthMm,packs.834.oversize,packs.834.supplier,packs.834.hazardous,packs.835.sku,packs.835.name,packs.835.massKg,packs.835.prices.0.price,packs.835.prices.0.fromPacks,packs.835.prices.1.price,packs.835.prices.1.fromPacks,packs.835.prices.2.price,packs.835.prices.2.fromPacks,packs.835.content.unit,packs.835.content.material,packs.835.content.quantity,packs.835.content.rollWidthMm,packs.835.oversize,packs.835.supplier,packs.835.hazardous,packs.836.sku,packs.836.name,packs.836.cutFee,packs.836.massKg,packs.836.prices.0.price,packs.836.prices.0.fromPacks,packs.836.content.unit,packs.836.content.material,packs.836.content.quantity,packs.836.content.rollWidthMm,packs.836.oversize,packs.836.supplier,packs.836.hazardous,packs.837.sku,packs.837.name,packs.837.cutFee,packs.837.massKg,packs.837.prices.0.price,packs.837.prices.0.fromPacks,packs.837.content.unit,packs.837.content.material,packs.837.content.quantity,packs.837.content.rollWidthMm,packs.837.oversize,packs.837.supplier,packs.837.hazardous,packs.838.sku,packs.838.name,packs.838.massKg,packs.838.prices.0.price,packs.838.prices.0.fromPacks,packs.838.prices.1.price,packs.838.prices.1.fromPacks,packs.838.prices.2.price,packs.838.prices.2.fromPacks,packs.838.content.unit,packs.838.content.material,packs.838.content.quantity,packs.838.content.rollWidthMm,packs.838.oversize,packs.838.supplier,packs.838.hazardous,packs.839.sku,packs.839.name,packs.839.massKg,packs.839.prices.0.price,packs.839.prices.0.fromPacks,packs.839.prices.1.price,packs.839.prices.1.fromPacks,packs.839.prices.2.price,packs.839.prices.2.fromPacks,packs.839.content.unit,packs.839.content.material,packs.839.content.quantity,packs.839.content.rollWidthMm,packs.839.oversize,packs.839.supplier,packs.839.hazardous,packs.840.sku,packs.840.name,packs.840.cutFee,packs.840.massKg,packs.840.prices.0.price,packs.840.prices.0.fromPacks,packs.840.content.unit,packs.840.content.material,packs.840.content.quantity,packs.840.content.rollWidthMm,packs.840.oversize,packs.840.supplier,packs.840.hazardous,packs.841.sku,packs.841.name,packs.841.cutFee,packs.841.massKg,packs.841.prices.0.price,packs.841.prices.0.fromPacks,packs.841.content.unit,packs.841.content.material,packs.841.content.quantity,packs.841.content.rollWidthMm,packs.841.oversize,packs.841.supplier,packs.841.hazardous,packs.842.sku,packs.842.name,packs.842.massKg,packs.842.prices.0.price,packs.842.prices.0.fromPacks,packs.842.prices.1.price,packs.842.prices.1.fromPacks,packs.842.prices.2.price,packs.842.prices.2.fromPacks,packs.842.content.unit,packs.842.content.material,packs.842.content.quantity,packs.842.content.rollWidthMm,packs.842.oversize,packs.842.supplier,packs.842.hazardous,packs.843.sku,packs.843.name,packs.843.massKg,packs.843.prices.0.price,packs.843.prices.0.fromPacks,packs.843.prices.1.price,packs.843.prices.1.fromPacks,packs.843.prices.2.price,packs.843.prices.2.fromPacks,packs.843.content.unit,packs.843.content.material,packs.843.content.quantity,packs.843.content.rollWidthMm,packs.843.oversize,packs.843.supplier,packs.843.hazardous,packs.844.sku,packs.844.name,packs.844.cutFee,packs.844.massKg,packs.844.prices.0.price,packs.844.prices.0.fromPacks,packs.844.content.unit,packs.844.content.material,packs.844.content.quantity,packs.844.content.rollWidthMm,packs.844.oversize,packs.844.supplier,packs.844.hazardous,packs.845.sku,packs.845.name,packs.845.cutFee,packs.845.massKg,packs.845.prices.0.price,packs.845.prices.0.fromPacks,packs.845.content.unit,packs.845.content.material,packs.845.content.quantity,packs.845.content.rollWidthMm,packs.845.oversize,packs.845.supplier,packs.845.hazardous,packs.846.sku,packs.846.name,packs.846.massKg,packs.846.prices.0.price,packs.846.prices.0.fromPacks,packs.846.prices.1.price,packs.846.prices.1.fromPacks,packs.846.prices.2.price,packs.846.prices.2.fromPacks,packs.846.content.unit,packs.846.content.material,packs.846.content.quantity,packs.846.content.rollWidthMm,packs.846.oversize,packs.846.supplier,packs.846.hazardous,packs.847.sku,packs.847.name,packs.847.massKg,packs.847.prices.0.price,packs.847.prices.0.fromPacks,packs.847.prices.1.price,packs.847.prices.1.fromPacks,packs.847.prices.2.price,packs.847.prices.2.fromPacks,packs.847.content.unit,packs.847.content.material,packs.847.content.quantity,packs.847.content.rollWidthMm,packs.847.oversize,packs.847.supplier,packs.847.hazardous,packs.848.sku,packs.848.name,packs.848.cutFee,packs.848.massKg,packs.848.prices.0.price,packs.848.prices.0.fromPacks,packs.848.content.unit,packs.848.content.material,packs.848.content.quantity,packs.848.content.rollWidthMm,packs.848.oversize,packs.848.supplier,packs.848.hazardous,packs.849.sku,packs.849.name,packs.849.cutFee,packs.849.massKg,packs.849.prices.0.price,packs.849.prices.0.fromPacks,packs.849.content.unit,packs.849.content.material,packs.849.content.quantity,packs.849.content.rollWidthMm,packs.849.oversize,packs.849.supplier,packs.849.hazardous,packs.850.sku,packs.850.name,packs.850.massKg,packs.850.prices.0.price,packs.850.prices.0.fromPacks,packs.850.prices.1.price,packs.850.prices.1.fromPacks,packs.850.prices.2.price,packs.850.prices.2.fromPacks,packs.850.content.unit,packs.850.content.material,packs.850.content.quantity,packs.850.content.rollWidthMm,packs.850.oversize,packs.850.supplier,packs.850.hazardous,packs.851.sku,packs.851.name,packs.851.massKg,packs.851.prices.0.price,packs.851.prices.0.fromPacks,packs.851.prices.1.price,packs.851.prices.1.fromPacks,packs.851.prices.2.price,packs.851.prices.2.fromPacks,packs.851.content.unit,packs.851.content.material,packs.851.content.quantity,packs.851.content.rollWidthMm,packs.851.oversize,packs.851.supplier,packs.851.hazardous,packs.852.sku,packs.852.name,packs.852.massKg,packs.852.prices.0.price,packs.852.prices.0.fromPacks,packs.852.prices.1.price,packs.852.prices.1.fromPacks,packs.852.content.unit,packs.852.content.material,packs.852.content.quantity,packs.852.oversize,packs.852.supplier,packs.852.hazardous,packs.852.shelfLifeMonths,packs.853.sku,packs.853.name,packs.853.massKg,packs.853.prices.0.price,packs.853.prices.0.fromPacks,packs.853.prices.1.price,packs.853.prices.1.fromPacks,packs.853.content.unit,packs.853.content.material,packs.853.content.quantity,packs.853.oversize,packs.853.supplier,packs.853.hazardous,packs.853.shelfLifeMonths,packs.854.sku,packs.854.name,packs.854.massKg,packs.854.prices.0.price,packs.854.prices.0.fromPacks,packs.854.prices.1.price,packs.854.prices.1.fromPacks,packs.854.content.unit,packs.854.content.material,packs.854.content.quantity,packs.854.oversize,packs.854.supplier,packs.854.hazardous,packs.854.shelfLifeMonths,packs.855.sku,packs.855.name,packs.855.massKg,packs.855.prices.0.price,packs.855.prices.0.fromPacks,packs.855.prices.1.price,packs.855.prices.1.fromPacks,packs.855.content.unit,packs.855.content.material,packs.855.content.quantity,packs.855.oversize,packs.855.supplier,packs.855.hazardous,packs.855.shelfLifeMonths,packs.856.sku,packs.856.name,packs.856.massKg,packs.856.prices.0.price,packs.856.prices.0.fromPacks,packs.856.prices.1.price,packs.856.prices.1.fromPacks,packs.856.prices.2.price,packs.856.prices.2.fromPacks,packs.856.content.unit,packs.856.content.material,packs.856.content.quantity,packs.856.oversize,packs.856.supplier,packs.856.hazardous,packs.856.shelfLifeMonths,packs.857.sku,packs.857.name,packs.857.massKg,packs.857.prices.0.price,packs.857.prices.0.fromPacks,packs.857.content.unit,packs.857.content.material,packs.857.content.quantity,packs.857.oversize,packs.857.supplier,packs.857.hazardous,packs.857.shelfLifeMonths,packs.858.sku,packs.858.name,packs.858.massKg,packs.858.prices.0.price,packs.858.prices.0.fromPacks,packs.858.content.unit,packs.858.content.material,packs.858.content.quantity,packs.858.oversize,packs.858.supplier,packs.858.hazardous,packs.858.shelfLifeMonths,packs.859.sku,packs.859.name,packs.859.massKg,packs.859.prices.0.price,packs.859.prices.0.fromPacks,packs.859.prices.1.price,packs.859.prices.1.fromPacks,packs.859.content.part,packs.859.content.unit,packs.859.content.material,packs.859.content.quantity,packs.859.oversize,packs.859.supplier,packs.859.hazardous,packs.859.shelfLifeMonths,packs.860.sku,packs.860.name,packs.860.massKg,packs.860.prices.0.price,packs.860.prices.0.fromPacks,packs.860.prices.1.price,packs.860.prices.1.fromPacks,packs.860.content.part,packs.860.content.unit,packs.860.content.material,packs.860.content.quantity,packs.860.oversize,packs.860.supplier,packs.860.hazardous,packs.860.shelfLifeMonths,packs.861.sku,packs.861.name,packs.861.massKg,packs.861.prices.0.price,packs.861.prices.0.fromPacks,packs.861.prices.1.price,packs.861.prices.1.fromPacks,packs.861.content.part,packs.861.content.unit,packs.861.content.material,packs.861.content.quantity,packs.861.oversize,packs.861.supplier,packs.861.hazardous,packs.861.shelfLifeMonths,packs.862.sku,packs.862.name,packs.862.massKg,packs.862.prices.0.price,packs.862.prices.0.fromPacks,packs.862.prices.1.price,packs.862.prices.1.fromPacks,packs.862.content.part,packs.862.content.unit,packs.862.content.material,packs.862.content.quantity,packs.862.oversize,packs.862.supplier,packs.862.hazardous,packs.862.shelfLifeMonths,packs.863.sku,packs.863.name,packs.863.massKg,packs.863.prices.0.price,packs.863.prices.0.fromPacks,packs.863.prices.1.price,packs.863.prices.1.fromPacks,packs.863.prices.2.price,packs.863.prices.2.fromPacks,packs.863.content.part,packs.863.content.unit,packs.863.content.material,packs.863.content.quantity,packs.863.oversize,packs.863.supplier,packs.863.hazardous,packs.863.shelfLifeMonths,packs.864.sku,packs.864.name,packs.864.massKg,packs.864.prices.0.price,packs.864.prices.0.fromPacks,packs.864.content.part,packs.864.content.unit,packs.864.content.material,packs.864.content.quantity,packs.864.oversize,packs.864.supplier,packs.864.hazardous,packs.864.shelfLifeMonths,packs.865.sku,packs.865.name,packs.865.massKg,packs.865.prices.0.price,packs.865.prices.0.fromPacks,packs.865.content.part,packs.865.content.unit,packs.865.content.material,packs.865.content.quantity,packs.865.oversize,packs.865.supplier,packs.865.hazardous,packs.865.shelfLifeMonths,packs.866.sku,packs.866.name,packs.866.massKg,packs.866.prices.0.price,packs.866.prices.0.fromPacks,packs.866.prices.1.price,packs.866.prices.1.fromPacks,packs.866.content.part,packs.866.content.unit,packs.866.content.material,packs.866.content.quantity,packs.866.oversize,packs.866.supplier,packs.866.hazardous,packs.866.shelfLifeMonths,packs.867.sku,packs.867.name,packs.867.massKg,packs.867.prices.0.price,packs.867.prices.0.fromPacks,packs.867.prices.1.price,packs.867.prices.1.fromPacks,packs.867.content.part,packs.867.content.unit,packs.867.content.material,packs.867.content.quantity,packs.867.oversize,packs.867.supplier,packs.867.hazardous,packs.867.shelfLifeMonths,packs.868.sku,packs.868.name,packs.868.massKg,packs.868.prices.0.price,packs.868.prices.0.fromPacks,packs.868.prices.1.price,packs.868.prices.1.fromPacks,packs.868.content.part,packs.868.content.unit,packs.868.content.material,packs.868.content.quantity,packs.868.oversize,packs.868.supplier,packs.868.hazardous,packs.868.shelfLifeMonths,packs.869.sku,packs.869.name,packs.869.massKg,packs.869.prices.0.price,packs.869.prices.0.fromPacks,packs.869.prices.1.price,packs.869.prices.1.fromPacks,packs.869.content.part,packs.869.content.unit,packs.869.content.material,packs.869.content.quantity,packs.869.oversize,packs.869.supplier,packs.869.hazardous,packs.869.shelfLifeMonths,packs.870.sku,packs.870.name,packs.870.massKg,packs.870.prices.0.price,packs.870.prices.0.fromPacks,packs.870.prices.1.price,packs.870.prices.1.fromPacks,packs.870.prices.2.price,packs.870.prices.2.fromPacks,packs.870.content.part,packs.870.content.unit,packs.870.content.material,packs.870.content.quantity,packs.870.oversize,packs.870.supplier,packs.870.hazardous,packs.870.shelfLifeMonths,packs.871.sku,packs.871.name,packs.871.massKg,packs.871.prices.0.price,packs.871.prices.0.fromPacks,packs.871.content.part,packs.871.content.unit,packs.871.content.material,packs.871.content.quantity,packs.871.oversize,packs.871.supplier,packs.871.hazardous,packs.871.shelfLifeMonths,packs.872.sku,packs.872.name,packs.872.massKg,packs.872.prices.0.price,packs.872.prices.0.fromPacks,packs.872.content.part,packs.872.content.unit,packs.872.content.material,packs.872.content.quantity,packs.872.oversize,packs.872.supplier,packs.872.hazardous,packs.872.shelfLifeMonths,packs.873.sku,packs.873.name,packs.873.massKg,packs.873.prices.0.price,packs.873.prices.0.fromPacks,packs.873.prices.1.price,packs.873.prices.1.fromPacks,packs.873.content.unit,packs.873.content.material,packs.873.content.quantity,packs.873.oversize,packs.873.supplier,packs.873.hazardous,packs.873.shelfLifeMonths,packs.874.sku,packs.874.name,packs.874.massKg,packs.874.prices.0.price,packs.874.prices.0.fromPacks,packs.874.prices.1.price,packs.874.prices.1.fromPacks,packs.874.content.unit,packs.874.content.material,packs.874.content.quantity,packs.874.oversize,packs.874.supplier,packs.874.hazardous,packs.874.shelfLifeMonths,packs.875.sku,packs.875.name,packs.875.massKg,packs.875.prices.0.price,packs.875.prices.0.fromPacks,packs.875.prices.1.price,packs.875.prices.1.fromPacks,packs.875.content.unit,packs.875.content.material,packs.875.content.quantity,packs.875.oversize,packs.875.supplier,packs.875.hazardous,packs.875.shelfLifeMonths,packs.876.sku,packs.876.name,packs.876.massKg,packs.876.prices.0.price,packs.876.prices.0.fromPacks,packs.876.prices.1.price,packs.876.prices.1.fromPacks,packs.876.content.unit,packs.876.content.material,packs.876.content.quantity,packs.876.oversize,packs.876.supplier,packs.876.hazardous,packs.876.shelfLifeMonths,packs.877.sku,packs.877.name,packs.877.massKg,packs.877.prices.0.price,packs.877.prices.0.fromPacks,packs.877.prices.1.price,packs.877.prices.1.fromPacks,packs.877.prices.2.price,packs.877.prices.2.fromPacks,packs.877.content.unit,packs.877.content.material,packs.877.content.quantity,packs.877.oversize,packs.877.supplier,packs.877.hazardous,packs.877.shelfLifeMonths,packs.878.sku,packs.878.name,packs.878.massKg,packs.878.prices.0.price,packs.878.prices.0.fromPacks,packs.878.content.unit,packs.878.content.material,packs.878.content.quantity,packs.878.oversize,packs.878.supplier,packs.878.hazardous,packs.878.shelfLifeMonths,packs.879.sku,packs.879.name,packs.879.massKg,packs.879.prices.0.price,packs.879.prices.0.fromPacks,packs.879.content.unit,packs.879.content.material,packs.879.content.quantity,packs.879.oversize,packs.879.supplier,packs.879.hazardous,packs.879.shelfLifeMonths,packs.880.sku,packs.880.name,packs.880.massKg,packs.880.prices.0.price,packs.880.prices.0.fromPacks,packs.880.prices.1.price,packs.880.prices.1.fromPacks,packs.880.content.part,packs.880.content.unit,packs.880.content.material,packs.880.content.quantity,packs.880.oversize,packs.880.supplier,packs.880.hazardous,packs.880.shelfLifeMonths,packs.881.sku,packs.881.name,packs.881.massKg,packs.881.prices.0.price,packs.881.prices.0.fromPacks,packs.881.prices.1.price,packs.881.prices.1.fromPacks,packs.881.content.part,packs.881.content.unit,packs.881.content.material,packs.881.content.quantity,packs.881.oversize,packs.881.supplier,packs.881.hazardous,packs.881.shelfLifeMonths,packs.882.sku,packs.882.name,packs.882.massKg,packs.882.prices.0.price,packs.882.prices.0.fromPacks,packs.882.prices.1.price,packs.882.prices.1.fromPacks,packs.882.content.part,packs.882.content.unit,packs.882.content.material,packs.882.content.quantity,packs.882.oversize,packs.882.supplier,packs.882.hazardous,packs.882.shelfLifeMonths,packs.883.sku,packs.883.name,packs.883.massKg,packs.883.prices.0.price,packs.883.prices.0.fromPacks,packs.883.prices.1.price,packs.883.prices.1.fromPacks,packs.883.content.part,packs.883.content.unit,packs.883.content.material,packs.883.content.quantity,packs.883.oversize,packs.883.supplier,packs.883.hazardous,packs.883.shelfLifeMonths,packs.884.sku,packs.884.name,packs.884.massKg,packs.884.prices.0.price,packs.884.prices.0.fromPacks,packs.884.prices.1.price,packs.884.prices.1.fromPacks,packs.884.prices.2.price,packs.884.prices.2.fromPacks,packs.884.content.part,packs.884.content.unit,packs.884.content.material,packs.884.content.quantity,packs.884.oversize,packs.884.supplier,packs.884.hazardous,packs.884.shelfLifeMonths,packs.885.sku,packs.885.name,packs.885.massKg,packs.885.prices.0.price,packs.885.prices.0.fromPacks,packs.885.content.part,packs.885.content.unit,packs.885.content.material,packs.885.content.quantity,packs.885.oversize,packs.885.supplier,packs.885.hazardous,packs.885.shelfLifeMonths,packs.886.sku,packs.886.name,packs.886.massKg,packs.886.prices.0.price,packs.886.prices.0.fromPacks,packs.886.content.part,packs.886.content.unit,packs.886.content.material,packs.886.content.quantity,packs.886.oversize,packs.886.supplier,packs.886.hazardous,packs.886.shelfLifeMonths,packs.887.sku,packs.887.name,packs.887.massKg,packs.887.prices.0.price,packs.887.prices.0.fromPacks,packs.887.prices.1.price,packs.887.prices.1.fromPacks,packs.887.content.part,packs.887.content.unit,packs.887.content.material,packs.887.content.quantity,packs.887.oversize,packs.887.supplier,packs.887.hazardous,packs.887.shelfLifeMonths,packs.888.sku,packs.888.name,packs.888.massKg,packs.888.prices.0.price,packs.888.prices.0.fromPacks,packs.888.prices.1.price,packs.888.prices.1.fromPacks,packs.888.content.part,packs.888.content.unit,packs.888.content.material,packs.888.content.quantity,packs.888.oversize,packs.888.supplier,packs.888.hazardous,packs.888.shelfLifeMonths,packs.889.sku,packs.889.name,packs.889.massKg,packs.889.prices.0.price,packs.889.prices.0.fromPacks,packs.889.prices.1.price,packs.889.prices.1.fromPacks,packs.889.content.part,packs.889.content.unit,packs.889.content.material,packs.889.content.quantity,packs.889.oversize,packs.889.supplier,packs.889.hazardous,packs.889.shelfLifeMonths,packs.890.sku,packs.890.name,packs.890.massKg,packs.890.prices.0.price,packs.890.prices.0.fromPacks,packs.890.prices.1.price,packs.890.prices.1.fromPacks,packs.890.content.part,packs.890.content.unit,packs.890.content.material,packs.890.content.quantity,packs.890.oversize,packs.890.supplier,packs.890.hazardous,packs.890.shelfLifeMonths,packs.891.sku,packs.891.name,packs.891.massKg,packs.891.prices.0.price,packs.891.prices.0.fromPacks,packs.891.prices.1.price,packs.891.prices.1.fromPacks,packs.891.prices.2.price,packs.891.prices.2.fromPacks,packs.891.content.part,packs.891.content.unit,packs.891.content.material,packs.891.content.quantity,packs.891.oversize,packs.891.supplier,packs.891.hazardous,packs.891.shelfLifeMonths,packs.892.sku,packs.892.name,packs.892.massKg,packs.892.prices.0.price,packs.892.prices.0.fromPacks,packs.892.content.part,packs.892.content.unit,packs.892.content.material,packs.892.content.quantity,packs.892.oversize,packs.892.supplier,packs.892.hazardous,packs.892.shelfLifeMonths,packs.893.sku,packs.893.name,packs.893.massKg,packs.893.prices.0.price,packs.893.prices.0.fromPacks,packs.893.content.part,packs.893.content.unit,packs.893.content.material,packs.893.content.quantity,packs.893.oversize,packs.893.supplier,packs.893.hazardous,packs.893.shelfLifeMonths,packs.894.sku,packs.894.name,packs.894.massKg,packs.894.prices.0.price,packs.894.prices.0.fromPacks,packs.894.prices.1.price,packs.894.prices.1.fromPacks,packs.894.content.part,packs.894.content.unit,packs.894.content.material,packs.894.content.quantity,packs.894.oversize,packs.894.supplier,packs.894.hazardous,packs.894.shelfLifeMonths,packs.895.sku,packs.895.name,packs.895.massKg,packs.895.prices.0.price,packs.895.prices.0.fromPacks,packs.895.prices.1.price,packs.895.prices.1.fromPacks,packs.895.content.part,packs.895.content.unit,packs.895.content.material,packs.895.content.quantity,packs.895.oversize,packs.895.supplier,packs.895.hazardous,packs.895.shelfLifeMonths,packs.896.sku,packs.896.name,packs.896.massKg,packs.896.prices.0.price,packs.896.prices.0.fromPacks,packs.896.prices.1.price,packs.896.prices.1.fromPacks,packs.896.content.part,packs.896.content.unit,packs.896.content.material,packs.896.content.quantity,packs.896.oversize,packs.896.supplier,packs.896.hazardous,packs.896.shelfLifeMonths,packs.897.sku,packs.897.name,packs.897.massKg,packs.897.prices.0.price,packs.897.prices.0.fromPacks,packs.897.prices.1.price,packs.897.prices.1.fromPacks,packs.897.content.part,packs.897.content.unit,packs.897.content.material,packs.897.content.quantity,packs.897.oversize,packs.897.supplier,packs.897.hazardous,packs.897.shelfLifeMonths,packs.898.sku,packs.898.name,packs.898.massKg,packs.898.prices.0.price,packs.898.prices.0.fromPacks,packs.898.prices.1.price,packs.898.prices.1.fromPacks,packs.898.prices.2.price,packs.898.prices.2.fromPacks,packs.898.content.part,packs.898.content.unit,packs.898.content.material,packs.898.content.quantity,packs.898.oversize,packs.898.supplier,packs.898.hazardous,packs.898.shelfLifeMonths,packs.899.sku,packs.899.name,packs.899.massKg,packs.899.prices.0.price,packs.899.prices.0.fromPacks,packs.899.content.part,packs.899.content.unit,packs.899.content.material,packs.899.content.quantity,packs.899.oversize,packs.899.supplier,packs.899.hazardous,packs.899.shelfLifeMonths,packs.900.sku,packs.900.name,packs.900.massKg,packs.900.prices.0.price,packs.900.prices.0.fromPacks,packs.900.content.part,packs.900.content.unit,packs.900.content.material,packs.900.content.quantity,packs.900.oversize,packs.900.supplier,packs.900.hazardous,packs.900.shelfLifeMonths,packs.901.sku,packs.901.name,packs.901.massKg,packs.901.prices.0.price,packs.901.prices.0.fromPacks,packs.901.prices.1.price,packs.901.prices.1.fromPacks,packs.901.content.part,packs.901.content.unit,packs.901.content.material,packs.901.content.quantity,packs.901.oversize,packs.901.supplier,packs.901.hazardous,packs.901.shelfLifeMonths,packs.902.sku,packs.902.name,packs.902.massKg,packs.902.prices.0.price,packs.902.prices.0.fromPacks,packs.902.prices.1.price,packs.902.prices.1.fromPacks,packs.902.content.part,packs.902.content.unit,packs.902.content.material,packs.902.content.quantity,packs.902.oversize,packs.902.supplier,packs.902.hazardous,packs.902.shelfLifeMonths,packs.903.sku,packs.903.name,packs.903.massKg,packs.903.prices.0.price,packs.903.prices.0.fromPacks,packs.903.prices.1.price,packs.903.prices.1.fromPacks,packs.903.content.part,packs.903.content.unit,packs.903.content.material,packs.903.content.quantity,packs.903.oversize,packs.903.supplier,packs.903.hazardous,packs.903.shelfLifeMonths,packs.904.sku,packs.904.name,packs.904.massKg,packs.904.prices.0.price,packs.904.prices.0.fromPacks,packs.904.prices.1.price,packs.904.prices.1.fromPacks,packs.904.content.part,packs.904.content.unit,packs.904.content.material,packs.904.content.quantity,packs.904.oversize,packs.904.supplier,packs.904.hazardous,packs.904.shelfLifeMonths,packs.905.sku,packs.905.name,packs.905.massKg,packs.905.prices.0.price,packs.905.prices.0.fromPacks,packs.905.prices.1.price,packs.905.prices.1.fromPacks,packs.905.prices.2.price,packs.905.prices.2.fromPacks,packs.905.content.part,packs.905.content.unit,packs.905.content.material,packs.905.content.quantity,packs.905.oversize,packs.905.supplier,packs.905.hazardous,packs.905.shelfLifeMonths,packs.906.sku,packs.906.name,packs.906.massKg,packs.906.prices.0.price,packs.906.prices.0.fromPacks,packs.906.content.part,packs.906.content.unit,packs.906.content.material,packs.906.content.quantity,packs.906.oversize,packs.906.supplier,packs.906.hazardous,packs.906.shelfLifeMonths,packs.907.sku,packs.907.name,packs.907.massKg,packs.907.prices.0.price,packs.907.prices.0.fromPacks,packs.907.content.part,packs.907.content.unit,packs.907.content.material,packs.907.content.quantity,packs.907.oversize,packs.907.supplier,packs.907.hazardous,packs.907.shelfLifeMonths,packs.908.sku,packs.908.name,packs.908.massKg,packs.908.prices.0.price,packs.908.prices.0.fromPacks,packs.908.prices.1.price,packs.908.prices.1.fromPacks,packs.908.content.unit,packs.908.content.material,packs.908.content.quantity,packs.908.oversize,packs.908.supplier,packs.908.hazardous,packs.908.shelfLifeMonths,packs.909.sku,packs.909.name,packs.909.massKg,packs.909.prices.0.price,packs.909.prices.0.fromPacks,packs.909.prices.1.price,packs.909.prices.1.fromPacks,packs.909.content.unit,packs.909.content.material,packs.909.content.quantity,packs.909.oversize,packs.909.supplier,packs.909.hazardous,packs.909.shelfLifeMonths,packs.910.sku,packs.910.name,packs.910.massKg,packs.910.prices.0.price,packs.910.prices.0.fromPacks,packs.910.prices.1.price,packs.910.prices.1.fromPacks,packs.910.content.unit,packs.910.content.material,packs.910.content.quantity,packs.910.oversize,packs.910.supplier,packs.910.hazardous,packs.910.shelfLifeMonths,packs.911.sku,packs.911.name,packs.911.massKg,packs.911.prices.0.price,packs.911.prices.0.fromPacks,packs.911.prices.1.price,packs.911.prices.1.fromPacks,packs.911.content.unit,packs.911.content.material,packs.911.content.quantity,packs.911.oversize,packs.911.supplier,packs.911.hazardous,packs.911.shelfLifeMonths,packs.912.sku,packs.912.name,packs.912.massKg,packs.912.prices.0.price,packs.912.prices.0.fromPacks,packs.912.prices.1.price,packs.912.prices.1.fromPacks,packs.912.prices.2.price,packs.912.prices.2.fromPacks,packs.912.content.unit,packs.912.content.material,packs.912.content.quantity,packs.912.oversize,packs.912.supplier,packs.912.hazardous,packs.912.shelfLifeMonths,packs.913.sku,packs.913.name,packs.913.massKg,packs.913.prices.0.price,packs.913.prices.0.fromPacks,packs.913.content.unit,packs.913.content.material,packs.913.content.quantity,packs.913.oversize,packs.913.supplier,packs.913.hazardous,packs.913.shelfLifeMonths,packs.914.sku,packs.914.name,packs.914.massKg,packs.914.prices.0.price,packs.914.prices.0.fromPacks,packs.914.content.unit,packs.914.content.material,packs.914.content.quantity,packs.914.oversize,packs.914.supplier,packs.914.hazardous,packs.914.shelfLifeMonths,packs.915.sku,packs.915.name,packs.915.massKg,packs.915.prices.0.price,packs.915.prices.0.fromPacks,packs.915.prices.1.price,packs.915.prices.1.fromPacks,packs.915.content.part,packs.915.content.unit,packs.915.content.material,packs.915.content.quantity,packs.915.oversize,packs.915.supplier,packs.915.hazardous,packs.915.shelfLifeMonths,packs.916.sku,packs.916.name,packs.916.massKg,packs.916.prices.0.price,packs.916.prices.0.fromPacks,packs.916.prices.1.price,packs.916.prices.1.fromPacks,packs.916.content.part,packs.916.content.unit,packs.916.content.material,packs.916.content.quantity,packs.916.oversize,packs.916.supplier,packs.916.hazardous,packs.916.shelfLifeMonths,packs.917.sku,packs.917.name,packs.917.massKg,packs.917.prices.0.price,packs.917.prices.0.fromPacks,packs.917.prices.1.price,packs.917.prices.1.fromPacks,packs.917.content.part,packs.917.content.unit,packs.917.content.material,packs.917.content.quantity,packs.917.oversize,packs.917.supplier,packs.917.hazardous,packs.917.shelfLifeMonths,packs.918.sku,packs.918.name,packs.918.massKg,packs.918.prices.0.price,packs.918.prices.0.fromPacks,packs.918.prices.1.price,packs.918.prices.1.fromPacks,packs.918.content.part,packs.918.content.unit,packs.918.content.material,packs.918.content.quantity,packs.918.oversize,packs.918.supplier,packs.918.hazardous,packs.918.shelfLifeMonths,packs.919.sku,packs.919.name,packs.919.massKg,packs.919.prices.0.price,packs.919.prices.0.fromPacks,packs.919.prices.1.price,packs.919.prices.1.fromPacks,packs.919.prices.2.price,packs.919.prices.2.fromPacks,packs.919.content.part,packs.919.content.unit,packs.919.content.material,packs.919.content.quantity,packs.919.oversize,packs.919.supplier,packs.919.hazardous,packs.919.shelfLifeMonths,packs.920.sku,packs.920.name,packs.920.massKg,packs.920.prices.0.price,packs.920.prices.0.fromPacks,packs.920.content.part,packs.920.content.unit,packs.920.content.material,packs.920.content.quantity,packs.920.oversize,packs.920.supplier,packs.920.hazardous,packs.920.shelfLifeMonths,packs.921.sku,packs.921.name,packs.921.massKg,packs.921.prices.0.price,packs.921.prices.0.fromPacks,packs.921.content.part,packs.921.content.unit,packs.921.content.material,packs.921.content.quantity,packs.921.oversize,packs.921.supplier,packs.921.hazardous,packs.921.shelfLifeMonths,packs.922.sku,packs.922.name,packs.922.massKg,packs.922.prices.0.price,packs.922.prices.0.fromPacks,packs.922.prices.1.price,packs.922.prices.1.fromPacks,packs.922.content.part,packs.922.content.unit,packs.922.content.material,packs.922.content.quantity,packs.922.oversize,packs.922.supplier,packs.922.hazardous,packs.922.shelfLifeMonths,packs.923.sku,packs.923.name,packs.923.massKg,packs.923.prices.0.price,packs.923.prices.0.fromPacks,packs.923.prices.1.price,packs.923.prices.1.fromPacks,packs.923.content.part,packs.923.content.unit,packs.923.content.material,packs.923.content.quantity,packs.923.oversize,packs.923.supplier,packs.923.hazardous,packs.923.shelfLifeMonths,packs.924.sku,packs.924.name,packs.924.massKg,packs.924.prices.0.price,packs.924.prices.0.fromPacks,packs.924.prices.1.price,packs.924.prices.1.fromPacks,packs.924.content.part,packs.924.content.unit,packs.924.content.material,packs.924.content.quantity,packs.924.oversize,packs.924.supplier,packs.924.hazardous,packs.924.shelfLifeMonths,packs.925.sku,packs.925.name,packs.925.massKg,packs.925.prices.0.price,packs.925.prices.0.fromPacks,packs.925.prices.1.price,packs.925.prices.1.fromPacks,packs.925.content.part,packs.925.content.unit,packs.925.content.material,packs.925.content.quantity,packs.925.oversize,packs.925.supplier,packs.925.hazardous,packs.925.shelfLifeMonths,packs.926.sku,packs.926.name,packs.926.massKg,packs.926.prices.0.price,packs.926.prices.0.fromPacks,packs.926.prices.1.price,packs.926.prices.1.fromPacks,packs.926.prices.2.price,packs.926.prices.2.fromPacks,packs.926.content.part,packs.926.content.unit,packs.926.content.material,packs.926.content.quantity,packs.926.oversize,packs.926.supplier,packs.926.hazardous,packs.926.shelfLifeMonths,packs.927.sku,packs.927.name,packs.927.massKg,packs.927.prices.0.price,packs.927.prices.0.fromPacks,packs.927.content.part,packs.927.content.unit,packs.927.content.material,packs.927.content.quantity,packs.927.oversize,packs.927.supplier,packs.927.hazardous,packs.927.shelfLifeMonths,packs.928.sku,packs.928.name,packs.928.massKg,packs.928.prices.0.price,packs.928.prices.0.fromPacks,packs.928.content.part,packs.928.content.unit,packs.928.content.material,packs.928.content.quantity,packs.928.oversize,packs.928.supplier,packs.928.hazardous,packs.928.shelfLifeMonths,packs.929.sku,packs.929.name,packs.929.massKg,packs.929.prices.0.price,packs.929.prices.0.fromPacks,packs.929.prices.1.price,packs.929.prices.1.fromPacks,packs.929.content.part,packs.929.content.unit,packs.929.content.material,packs.929.content.quantity,packs.929.oversize,packs.929.supplier,packs.929.hazardous,packs.929.shelfLifeMonths,packs.930.sku,packs.930.name,packs.930.massKg,packs.930.prices.0.price,packs.930.prices.0.fromPacks,packs.930.prices.1.price,packs.930.prices.1.fromPacks,packs.930.content.part,packs.930.content.unit,packs.930.content.material,packs.930.content.quantity,packs.930.oversize,packs.930.supplier,packs.930.hazardous,packs.930.shelfLifeMonths,packs.931.sku,packs.931.name,packs.931.massKg,packs.931.prices.0.price,packs.931.prices.0.fromPacks,packs.931.prices.1.price,packs.931.prices.1.fromPacks,packs.931.content.part,packs.931.content.unit,packs.931.content.material,packs.931.content.quantity,packs.931.oversize,packs.931.supplier,packs.931.hazardous,packs.931.shelfLifeMonths,packs.932.sku,packs.932.name,packs.932.massKg,packs.932.prices.0.price,packs.932.prices.0.fromPacks,packs.932.prices.1.price,packs.932.prices.1.fromPacks,packs.932.content.part,packs.932.content.unit,packs.932.content.material,packs.932.content.quantity,packs.932.oversize,packs.932.supplier,packs.932.hazardous,packs.932.shelfLifeMonths,packs.933.sku,packs.933.name,packs.933.massKg,packs.933.prices.0.price,packs.933.prices.0.fromPacks,packs.933.prices.1.price,packs.933.prices.1.fromPacks,packs.933.prices.2.price,packs.933.prices.2.fromPacks,packs.933.content.part,packs.933.content.unit,packs.933.content.material,packs.933.content.quantity,packs.933.oversize,packs.933.supplier,packs.933.hazardous,packs.933.shelfLifeMonths,packs.934.sku,packs.934.name,packs.934.massKg,packs.934.prices.0.price,packs.934.prices.0.fromPacks,packs.934.content.part,packs.934.content.unit,packs.934.content.material,packs.934.content.quantity,packs.934.oversize,packs.934.supplier,packs.934.hazardous,packs.934.shelfLifeMonths,packs.935.sku,packs.935.name,packs.935.massKg,packs.935.prices.0.price,packs.935.prices.0.fromPacks,packs.935.content.part,packs.935.content.unit,packs.935.content.material,packs.935.content.quantity,packs.935.oversize,packs.935.supplier,packs.935.hazardous,packs.935.shelfLifeMonths,packs.936.sku,packs.936.name,packs.936.massKg,packs.936.prices.0.price,packs.936.prices.0.fromPacks,packs.936.prices.1.price,packs.936.prices.1.fromPacks,packs.936.content.unit,packs.936.content.material,packs.936.content.quantity,packs.936.oversize,packs.936.supplier,packs.936.hazardous,packs.936.shelfLifeMonths,packs.937.sku,packs.937.name,packs.937.massKg,packs.937.prices.0.price,packs.937.prices.0.fromPacks,packs.937.prices.1.price,packs.937.prices.1.fromPacks,packs.937.content.unit,packs.937.content.material,packs.937.content.quantity,packs.937.oversize,packs.937.supplier,packs.937.hazardous,packs.937.shelfLifeMonths,packs.938.sku,packs.938.name,packs.938.massKg,packs.938.prices.0.price,packs.938.prices.0.fromPacks,packs.938.prices.1.price,packs.938.prices.1.fromPacks,packs.938.content.unit,packs.938.content.material,packs.938.content.quantity,packs.938.oversize,packs.938.supplier,packs.938.hazardous,packs.938.shelfLifeMonths,packs.939.sku,packs.939.name,packs.939.massKg,packs.939.prices.0.price,packs.939.prices.0.fromPacks,packs.939.prices.1.price,packs.939.prices.1.fromPacks,packs.939.content.unit,packs.939.content.material,packs.939.content.quantity,packs.939.oversize,packs.939.supplier,packs.939.hazardous,packs.939.shelfLifeMonths,packs.940.sku,packs.940.name,packs.940.massKg,packs.940.prices.0.price,packs.940.prices.0.fromPacks,packs.940.prices.1.price,packs.940.prices.1.fromPacks,packs.940.prices.2.price,packs.940.prices.2.fromPacks,packs.940.content.unit,packs.940.content.material,packs.940.content.quantity,packs.940.oversize,packs.940.supplier,packs.940.hazardous,packs.940.shelfLifeMonths,packs.941.sku,packs.941.name,packs.941.massKg,packs.941.prices.0.price,packs.941.prices.0.fromPacks,packs.941.content.unit,packs.941.content.material,packs.941.content.quantity,packs.941.oversize,packs.941.supplier,packs.941.hazardous,packs.941.shelfLifeMonths,packs.942.sku,packs.942.name,packs.942.massKg,packs.942.prices.0.price,packs.942.prices.0.fromPacks,packs.942.content.unit,packs.942.content.material,packs.942.content.quantity,packs.942.oversize,packs.942.supplier,packs.942.hazardous,packs.942.shelfLifeMonths,packs.943.sku,packs.943.name,packs.943.massKg,packs.943.prices.0.price,packs.943.prices.0.fromPacks,packs.943.prices.1.price,packs.943.prices.1.fromPacks,packs.943.content.part,packs.943.content.unit,packs.943.content.material,packs.943.content.quantity,packs.943.oversize,packs.943.supplier,packs.943.hazardous,packs.943.shelfLifeMonths,packs.944.sku,packs.944.name,packs.944.massKg,packs.944.prices.0.price,packs.944.prices.0.fromPacks,packs.944.prices.1.price,packs.944.prices.1.fromPacks,packs.944.content.part,packs.944.content.unit,packs.944.content.material,packs.944.content.quantity,packs.944.oversize,packs.944.supplier,packs.944.hazardous,packs.944.shelfLifeMonths,packs.945.sku,packs.945.name,packs.945.massKg,packs.945.prices.0.price,packs.945.prices.0.fromPacks,packs.945.prices.1.price,packs.945.prices.1.fromPacks,packs.945.content.part,packs.945.content.unit,packs.945.content.material,packs.945.content.quantity,packs.945.oversize,packs.945.supplier,packs.945.hazardous,packs.945.shelfLifeMonths,packs.946.sku,packs.946.name,packs.946.massKg,packs.946.prices.0.price,packs.946.prices.0.fromPacks,packs.946.prices.1.price,packs.946.prices.1.fromPacks,packs.946.content.part,packs.946.content.unit,packs.946.content.material,packs.946.content.quantity,packs.946.oversize,packs.946.supplier,packs.946.hazardous,packs.946.shelfLifeMonths,packs.947.sku,packs.947.name,packs.947.massKg,packs.947.prices.0.price,packs.947.prices.0.fromPacks,packs.947.prices.1.price,packs.947.prices.1.fromPacks,packs.947.prices.2.price,packs.947.prices.2.fromPacks,packs.947.content.part,packs.947.content.unit,packs.947.content.material,packs.947.content.quantity,packs.947.oversize,packs.947.supplier,packs.947.hazardous,packs.947.shelfLifeMonths,packs.948.sku,packs.948.name,packs.948.massKg,packs.948.prices.0.price,packs.948.prices.0.fromPacks,packs.948.content.part,packs.948.content.unit,packs.948.content.material,packs.948.content.quantity,packs.948.oversize,packs.948.supplier,packs.948.hazardous,packs.948.shelfLifeMonths,packs.949.sku,packs.949.name,packs.949.massKg,packs.949.prices.0.price,packs.949.prices.0.fromPacks,packs.949.content.part,packs.949.content.unit,packs.949.content.material,packs.949.content.quantity,packs.949.oversize,packs.949.supplier,packs.949.hazardous,packs.949.shelfLifeMonths,packs.950.sku,packs.950.name,packs.950.massKg,packs.950.prices.0.price,packs.950.prices.0.fromPacks,packs.950.prices.1.price,packs.950.prices.1.fromPacks,packs.950.content.part,packs.950.content.unit,packs.950.content.material,packs.950.content.quantity,packs.950.oversize,packs.950.supplier,packs.950.hazardous,packs.950.shelfLifeMonths,packs.951.sku,packs.951.name,packs.951.massKg,packs.951.prices.0.price,packs.951.prices.0.fromPacks,packs.951.prices.1.price,packs.951.prices.1.fromPacks,packs.951.content.part,packs.951.content.unit,packs.951.content.material,packs.951.content.quantity,packs.951.oversize,packs.951.supplier,packs.951.hazardous,packs.951.shelfLifeMonths,packs.952.sku,packs.952.name,packs.952.massKg,packs.952.prices.0.price,packs.952.prices.0.fromPacks,packs.952.prices.1.price,packs.952.prices.1.fromPacks,packs.952.content.part,packs.952.content.unit,packs.952.content.material,packs.952.content.quantity,packs.952.oversize,packs.952.supplier,packs.952.hazardous,packs.952.shelfLifeMonths,packs.953.sku,packs.953.name,packs.953.massKg,packs.953.prices.0.price,packs.953.prices.0.fromPacks,packs.953.prices.1.price,packs.953.prices.1.fromPacks,packs.953.content.part,packs.953.content.unit,packs.953.content.material,packs.953.content.quantity,packs.953.oversize,packs.953.supplier,packs.953.hazardous,packs.953.shelfLifeMonths,packs.954.sku,packs.954.name,packs.954.massKg,packs.954.prices.0.price,packs.954.prices.0.fromPacks,packs.954.prices.1.price,packs.954.prices.1.fromPacks,packs.954.prices.2.price,packs.954.prices.2.fromPacks,packs.954.content.part,packs.954.content.unit,packs.954.content.material,packs.954.content.quantity,packs.954.oversize,packs.954.supplier,packs.954.hazardous,packs.954.shelfLifeMonths,packs.955.sku,packs.955.name,packs.955.massKg,packs.955.prices.0.price,packs.955.prices.0.fromPacks,packs.955.content.part,packs.955.content.unit,packs.955.content.material,packs.955.content.quantity,packs.955.oversize,packs.955.supplier,packs.955.hazardous,packs.955.shelfLifeMonths,packs.956.sku,packs.956.name,packs.956.massKg,packs.956.prices.0.price,packs.956.prices.0.fromPacks,packs.956.content.part,packs.956.content.unit,packs.956.content.material,packs.956.content.quantity,packs.956.oversize,packs.956.supplier,packs.956.hazardous,packs.956.shelfLifeMonths,packs.957.sku,packs.957.name,packs.957.massKg,packs.957.prices.0.price,packs.957.prices.0.fromPacks,packs.957.prices.1.price,packs.957.prices.1.fromPacks,packs.957.content.part,packs.957.content.unit,packs.957.content.material,packs.957.content.quantity,packs.957.oversize,packs.957.supplier,packs.957.hazardous,packs.957.shelfLifeMonths,packs.958.sku,packs.958.name,packs.958.massKg,packs.958.prices.0.price,packs.958.prices.0.fromPacks,packs.958.prices.1.price,packs.958.prices.1.fromPacks,packs.958.content.part,packs.958.content.unit,packs.958.content.material,packs.958.content.quantity,packs.958.oversize,packs.958.supplier,packs.958.hazardous,packs.958.shelfLifeMonths,packs.959.sku,packs.959.name,packs.959.massKg,packs.959.prices.0.price,packs.959.prices.0.fromPacks,packs.959.prices.1.price,packs.959.prices.1.fromPacks,packs.959.content.part,packs.959.content.unit,packs.959.content.material,packs.959.content.quantity,packs.959.oversize,packs.959.supplier,packs.959.hazardous,packs.959.shelfLifeMonths,packs.960.sku,packs.960.name,packs.960.massKg,packs.960.prices.0.price,packs.960.prices.0.fromPacks,packs.960.prices.1.price,packs.960.prices.1.fromPacks,packs.960.content.part,packs.960.content.unit,packs.960.content.material,packs.960.content.quantity,packs.960.oversize,packs.960.supplier,packs.960.hazardous,packs.960.shelfLifeMonths,packs.961.sku,packs.961.name,packs.961.massKg,packs.961.prices.0.price,packs.961.prices.0.fromPacks,packs.961.prices.1.price,packs.961.prices.1.fromPacks,packs.961.prices.2.price,packs.961.prices.2.fromPacks,packs.961.content.part,packs.961.content.unit,packs.961.content.material,packs.961.content.quantity,packs.961.oversize,packs.961.supplier,packs.961.hazardous,packs.961.shelfLifeMonths,packs.962.sku,packs.962.name,packs.962.massKg,packs.962.prices.0.price,packs.962.prices.0.fromPacks,packs.962.content.part,packs.962.content.unit,packs.962.content.material,packs.962.content.quantity,packs.962.oversize,packs.962.supplier,packs.962.hazardous,packs.962.shelfLifeMonths,packs.963.sku,packs.963.name,packs.963.massKg,packs.963.prices.0.price,packs.963.prices.0.fromPacks,packs.963.content.part,packs.963.content.unit,packs.963.content.material,packs.963.content.quantity,packs.963.oversize,packs.963.supplier,packs.963.hazardous,packs.963.shelfLifeMonths,packs.964.sku,packs.964.name,packs.964.massKg,packs.964.prices.0.price,packs.964.prices.0.fromPacks,packs.964.prices.1.price,packs.964.prices.1.fromPacks,packs.964.content.unit,packs.964.content.material,packs.964.content.quantity,packs.964.oversize,packs.964.supplier,packs.964.hazardous,packs.964.shelfLifeMonths,packs.965.sku,packs.965.name,packs.965.massKg,packs.965.prices.0.price,packs.965.prices.0.fromPacks,packs.965.prices.1.price,packs.965.prices.1.fromPacks,packs.965.content.unit,packs.965.content.material,packs.965.content.quantity,packs.965.oversize,packs.965.supplier,packs.965.hazardous,packs.965.shelfLifeMonths,packs.966.sku,packs.966.name,packs.966.massKg,packs.966.prices.0.price,packs.966.prices.0.fromPacks,packs.966.prices.1.price,packs.966.prices.1.fromPacks,packs.966.content.unit,packs.966.content.material,packs.966.content.quantity,packs.966.oversize,packs.966.supplier,packs.966.hazardous,packs.966.shelfLifeMonths,packs.967.sku,packs.967.name,packs.967.massKg,packs.967.prices.0.price,packs.967.prices.0.fromPacks,packs.967.prices.1.price,packs.967.prices.1.fromPacks,packs.967.content.unit,packs.967.content.material,packs.967.content.quantity,packs.967.oversize,packs.967.supplier,packs.967.hazardous,packs.967.shelfLifeMonths,packs.968.sku,packs.968.name,packs.968.massKg,packs.968.prices.0.price,packs.968.prices.0.fromPacks,packs.968.prices.1.price,packs.968.prices.1.fromPacks,packs.968.prices.2.price,packs.968.prices.2.fromPacks,packs.968.content.unit,packs.968.content.material,packs.968.content.quantity,packs.968.oversize,packs.968.supplier,packs.968.hazardous,packs.968.shelfLifeMonths,packs.969.sku,packs.969.name,packs.969.massKg,packs.969.prices.0.price,packs.969.prices.0.fromPacks,packs.969.content.unit,packs.969.content.material,packs.969.content.quantity,packs.969.oversize,packs.969.supplier,packs.969.hazardous,packs.969.shelfLifeMonths,packs.970.sku,packs.970.name,packs.970.massKg,packs.970.prices.0.price,packs.970.prices.0.fromPacks,packs.970.content.unit,packs.970.content.material,packs.970.content.quantity,packs.970.oversize,packs.970.supplier,packs.970.hazardous,packs.970.shelfLifeMonths,packs.971.sku,packs.971.name,packs.971.massKg,packs.971.prices.0.price,packs.971.prices.0.fromPacks,packs.971.prices.1.price,packs.971.prices.1.fromPacks,packs.971.content.part,packs.971.content.unit,packs.971.content.material,packs.971.content.quantity,packs.971.oversize,packs.971.supplier,packs.971.hazardous,packs.971.shelfLifeMonths,packs.972.sku,packs.972.name,packs.972.massKg,packs.972.prices.0.price,packs.972.prices.0.fromPacks,packs.972.prices.1.price,packs.972.prices.1.fromPacks,packs.972.content.part,packs.972.content.unit,packs.972.content.material,packs.972.content.quantity,packs.972.oversize,packs.972.supplier,packs.972.hazardous,packs.972.shelfLifeMonths,packs.973.sku,packs.973.name,packs.973.massKg,packs.973.prices.0.price,packs.973.prices.0.fromPacks,packs.973.prices.1.price,packs.973.prices.1.fromPacks,packs.973.content.part,packs.973.content.unit,packs.973.content.material,packs.973.content.quantity,packs.973.oversize,packs.973.supplier,packs.973.hazardous,packs.973.shelfLifeMonths,packs.974.sku,packs.974.name,packs.974.massKg,packs.974.prices.0.price,packs.974.prices.0.fromPacks,packs.974.prices.1.price,packs.974.prices.1.fromPacks,packs.974.content.part,packs.974.content.unit,packs.974.content.material,packs.974.content.quantity,packs.974.oversize,packs.974.supplier,packs.974.hazardous,packs.974.shelfLifeMonths,packs.975.sku,packs.975.name,packs.975.massKg,packs.975.prices.0.price,packs.975.prices.0.fromPacks,packs.975.prices.1.price,packs.975.prices.1.fromPacks,packs.975.prices.2.price,packs.975.prices.2.fromPacks,packs.975.content.part,packs.975.content.unit,packs.975.content.material,packs.975.content.quantity,packs.975.oversize,packs.975.supplier,packs.975.hazardous,packs.975.shelfLifeMonths,packs.976.sku,packs.976.name,packs.976.massKg,packs.976.prices.0.price,packs.976.prices.0.fromPacks,packs.976.prices.1.price,packs.976.prices.1.fromPacks,packs.976.content.part,packs.976.content.unit,packs.976.content.material,packs.976.content.quantity,packs.976.oversize,packs.976.supplier,packs.976.hazardous,packs.976.shelfLifeMonths,packs.977.sku,packs.977.name,packs.977.massKg,packs.977.prices.0.price,packs.977.prices.0.fromPacks,packs.977.prices.1.price,packs.977.prices.1.fromPacks,packs.977.content.part,packs.977.content.unit,packs.977.content.material,packs.977.content.quantity,packs.977.oversize,packs.977.supplier,packs.977.hazardous,packs.977.shelfLifeMonths,packs.978.sku,packs.978.name,packs.978.massKg,packs.978.prices.0.price,packs.978.prices.0.fromPacks,packs.978.prices.1.price,packs.978.prices.1.fromPacks,packs.978.content.part,packs.978.content.unit,packs.978.content.material,packs.978.content.quantity,packs.978.oversize,packs.978.supplier,packs.978.hazardous,packs.978.shelfLifeMonths,packs.979.sku,packs.979.name,packs.979.massKg,packs.979.prices.0.price,packs.979.prices.0.fromPacks,packs.979.prices.1.price,packs.979.prices.1.fromPacks,packs.979.content.part,packs.979.content.unit,packs.979.content.material,packs.979.content.quantity,packs.979.oversize,packs.979.supplier,packs.979.hazardous,packs.979.shelfLifeMonths,packs.980.sku,packs.980.name,packs.980.massKg,packs.980.prices.0.price,packs.980.prices.0.fromPacks,packs.980.prices.1.price,packs.980.prices.1.fromPacks,packs.980.content.part,packs.980.content.unit,packs.980.content.material,packs.980.content.quantity,packs.980.oversize,packs.980.supplier,packs.980.hazardous,packs.980.shelfLifeMonths,packs.981.sku,packs.981.name,packs.981.massKg,packs.981.prices.0.price,packs.981.prices.0.fromPacks,packs.981.prices.1.price,packs.981.prices.1.fromPacks,packs.981.prices.2.price,packs.981.prices.2.fromPacks,packs.981.content.part,packs.981.content.unit,packs.981.content.material,packs.981.content.quantity,packs.981.oversize,packs.981.supplier,packs.981.hazardous,packs.981.shelfLifeMonths,packs.982.sku,packs.982.name,packs.982.massKg,packs.982.prices.0.price,packs.982.prices.0.fromPacks,packs.982.prices.1.price,packs.982.prices.1.fromPacks,packs.982.content.part,packs.982.content.unit,packs.982.content.material,packs.982.content.quantity,packs.982.oversize,packs.982.supplier,packs.982.hazardous,packs.982.shelfLifeMonths,packs.983.sku,packs.983.name,packs.983.massKg,packs.983.prices.0.price,packs.983.prices.0.fromPacks,packs.983.prices.1.price,packs.983.prices.1.fromPacks,packs.983.content.part,packs.983.content.unit,packs.983.content.material,packs.983.content.quantity,packs.983.oversize,packs.983.supplier,packs.983.hazardous,packs.983.shelfLifeMonths,packs.984.sku,packs.984.name,packs.984.massKg,packs.984.prices.0.price,packs.984.prices.0.fromPacks,packs.984.prices.1.price,packs.984.prices.1.fromPacks,packs.984.content.part,packs.984.content.unit,packs.984.content.material,packs.984.content.quantity,packs.984.oversize,packs.984.supplier,packs.984.hazardous,packs.984.shelfLifeMonths,packs.985.sku,packs.985.name,packs.985.massKg,packs.985.prices.0.price,packs.985.prices.0.fromPacks,packs.985.prices.1.price,packs.985.prices.1.fromPacks,packs.985.content.part,packs.985.content.unit,packs.985.content.material,packs.985.content.quantity,packs.985.oversize,packs.985.supplier,packs.985.hazardous,packs.985.shelfLifeMonths,packs.986.sku,packs.986.name,packs.986.massKg,packs.986.prices.0.price,packs.986.prices.0.fromPacks,packs.986.prices.1.price,packs.986.prices.1.fromPacks,packs.986.content.part,packs.986.content.unit,packs.986.content.material,packs.986.content.quantity,packs.986.oversize,packs.986.supplier,packs.986.hazardous,packs.986.shelfLifeMonths,packs.987.sku,packs.987.name,packs.987.massKg,packs.987.prices.0.price,packs.987.prices.0.fromPacks,packs.987.prices.1.price,packs.987.prices.1.fromPacks,packs.987.prices.2.price,packs.987.prices.2.fromPacks,packs.987.content.part,packs.987.content.unit,packs.987.content.material,packs.987.content.quantity,packs.987.oversize,packs.987.supplier,packs.987.hazardous,packs.987.shelfLifeMonths,packs.988.sku,packs.988.name,packs.988.massKg,packs.988.prices.0.price,packs.988.prices.0.fromPacks,packs.988.prices.1.price,packs.988.prices.1.fromPacks,packs.988.content.part,packs.988.content.unit,packs.988.content.material,packs.988.content.quantity,packs.988.oversize,packs.988.supplier,packs.988.hazardous,packs.988.shelfLifeMonths,packs.989.sku,packs.989.name,packs.989.massKg,packs.989.prices.0.price,packs.989.prices.0.fromPacks,packs.989.prices.1.price,packs.989.prices.1.fromPacks,packs.989.content.unit,packs.989.content.material,packs.989.content.quantity,packs.989.oversize,packs.989.supplier,packs.989.hazardous,packs.989.shelfLifeMonths,packs.990.sku,packs.990.name,packs.990.massKg,packs.990.prices.0.price,packs.990.prices.0.fromPacks,packs.990.prices.1.price,packs.990.prices.1.fromPacks,packs.990.content.unit,packs.990.content.material,packs.990.content.quantity,packs.990.oversize,packs.990.supplier,packs.990.hazardous,packs.990.shelfLifeMonths,packs.991.sku,packs.991.name,packs.991.massKg,packs.991.prices.0.price,packs.991.prices.0.fromPacks,packs.991.prices.1.price,packs.991.prices.1.fromPacks,packs.991.content.unit,packs.991.content.material,packs.991.content.quantity,packs.991.oversize,packs.991.supplier,packs.991.hazardous,packs.991.shelfLifeMonths,packs.992.sku,packs.992.name,packs.992.massKg,packs.992.prices.0.price,packs.992.prices.0.fromPacks,packs.992.prices.1.price,packs.992.prices.1.fromPacks,packs.992.content.unit,packs.992.content.material,packs.992.content.quantity,packs.992.oversize,packs.992.supplier,packs.992.hazardous,packs.992.shelfLifeMonths,packs.993.sku,packs.993.name,packs.993.massKg,packs.993.prices.0.price,packs.993.prices.0.fromPacks,packs.993.prices.1.price,packs.993.prices.1.fromPacks,packs.993.prices.2.price,packs.993.prices.2.fromPacks,packs.993.content.unit,packs.993.content.material,packs.993.content.quantity,packs.993.oversize,packs.993.supplier,packs.993.hazardous,packs.993.shelfLifeMonths,packs.994.sku,packs.994.name,packs.994.massKg,packs.994.prices.0.price,packs.994.prices.0.fromPacks,packs.994.content.unit,packs.994.content.material,packs.994.content.quantity,packs.994.oversize,packs.994.supplier,packs.994.hazardous,packs.994.shelfLifeMonths,packs.995.sku,packs.995.name,packs.995.massKg,packs.995.prices.0.price,packs.995.prices.0.fromPacks,packs.995.content.unit,packs.995.content.material,packs.995.content.quantity,packs.995.oversize,packs.995.supplier,packs.995.hazardous,packs.995.shelfLifeMonths,packs.996.sku,packs.996.name,packs.996.massKg,packs.996.prices.0.price,packs.996.prices.0.fromPacks,packs.996.prices.1.price,packs.996.prices.1.fromPacks,packs.996.content.part,packs.996.content.unit,packs.996.content.material,packs.996.content.quantity,packs.996.oversize,packs.996.supplier,packs.996.hazardous,packs.996.shelfLifeMonths,packs.997.sku,packs.997.name,packs.997.massKg,packs.997.prices.0.price,packs.997.prices.0.fromPacks,packs.997.prices.1.price,packs.997.prices.1.fromPacks,packs.997.content.part,packs.997.content.unit,packs.997.content.material,packs.997.content.quantity,packs.997.oversize,packs.997.supplier,packs.997.hazardous,packs.997.shelfLifeMonths,packs.998.sku,packs.998.name,packs.998.massKg,packs.998.prices.0.price,packs.998.prices.0.fromPacks,packs.998.prices.1.price,packs.998.prices.1.fromPacks,packs.998.content.part,packs.998.content.unit,packs.998.content.material,packs.998.content.quantity,packs.998.oversize,packs.998.supplier,packs.998.hazardous,packs.998.shelfLifeMonths,packs.999.sku,packs.999.name,packs.999.massKg,packs.999.prices.0.price,packs.999.prices.0.fromPacks,packs.999.prices.1.price,packs.999.prices.1.fromPacks,packs.999.content.part,packs.999.content.unit,packs.999.content.material,packs.999.content.quantity,packs.999.oversize,packs.999.supplier,packs.999.hazardous,packs.999.shelfLifeMonths,packs.1000.sku,packs.1000.name,packs.1000.massKg,packs.1000.prices.0.price,packs.1000.prices.0.fromPacks,packs.1000.prices.1.price,packs.1000.prices.1.fromPacks,packs.1000.prices.2.price,packs.1000.prices.2.fromPacks,packs.1000.content.part,packs.1000.content.unit,packs.1000.content.material,packs.1000.content.quantity,packs.1000.oversize,packs.1000.supplier,packs.1000.hazardous,packs.1000.shelfLifeMonths,packs.1001.sku,packs.1001.name,packs.1001.massKg,packs.1001.prices.0.price,packs.1001.prices.0.fromPacks,packs.1001.prices.1.price,packs.1001.prices.1.fromPacks,packs.1001.content.part,packs.1001.content.unit,packs.1001.content.material,packs.1001.content.quantity,packs.1001.oversize,packs.1001.supplier,packs.1001.hazardous,packs.1001.shelfLifeMonths,packs.1002.sku,packs.1002.name,packs.1002.massKg,packs.1002.prices.0.price,packs.1002.prices.0.fromPacks,packs.1002.prices.1.price,packs.1002.prices.1.fromPacks,packs.1002.content.part,packs.1002.content.unit,packs.1002.content.material,packs.1002.content.quantity,packs.1002.oversize,packs.1002.supplier,packs.1002.hazardous,packs.1002.shelfLifeMonths,packs.1003.sku,packs.1003.name,packs.1003.massKg,packs.1003.prices.0.price,packs.1003.prices.0.fromPacks,packs.1003.prices.1.price,packs.1003.prices.1.fromPacks,packs.1003.content.part,packs.1003.content.unit,packs.1003.content.material,packs.1003.content.quantity,packs.1003.oversize,packs.1003.supplier,packs.1003.hazardous,packs.1003.shelfLifeMonths,packs.1004.sku,packs.1004.name,packs.1004.massKg,packs.1004.prices.0.price,packs.1004.prices.0.fromPacks,packs.1004.prices.1.price,packs.1004.prices.1.fromPacks,packs.1004.content.part,packs.1004.content.unit,packs.1004.content.material,packs.1004.content.quantity,packs.1004.oversize,packs.1004.supplier,packs.1004.hazardous,packs.1004.shelfLifeMonths,packs.1005.sku,packs.1005.name,packs.1005.massKg,packs.1005.prices.0.price,packs.1005.prices.0.fromPacks,packs.1005.prices.1.price,packs.1005.prices.1.fromPacks,packs.1005.content.part,packs.1005.content.unit,packs.1005.content.material,packs.1005.content.quantity,packs.1005.oversize,packs.1005.supplier,packs.1005.hazardous,packs.1005.shelfLifeMonths,packs.1006.sku,packs.1006.name,packs.1006.massKg,packs.1006.prices.0.price,packs.1006.prices.0.fromPacks,packs.1006.prices.1.price,packs.1006.prices.1.fromPacks,packs.1006.prices.2.price,packs.1006.prices.2.fromPacks,packs.1006.content.part,packs.1006.content.unit,packs.1006.content.material,packs.1006.content.quantity,packs.1006.oversize,packs.1006.supplier,packs.1006.hazardous,packs.1006.shelfLifeMonths,packs.1007.sku,packs.1007.name,packs.1007.massKg,packs.1007.prices.0.price,packs.1007.prices.0.fromPacks,packs.1007.prices.1.price,packs.1007.prices.1.fromPacks,packs.1007.content.part,packs.1007.content.unit,packs.1007.content.material,packs.1007.content.quantity,packs.1007.oversize,packs.1007.supplier,packs.1007.hazardous,packs.1007.shelfLifeMonths,packs.1008.sku,packs.1008.name,packs.1008.massKg,packs.1008.prices.0.price,packs.1008.prices.0.fromPacks,packs.1008.prices.1.price,packs.1008.prices.1.fromPacks,packs.1008.content.part,packs.1008.content.unit,packs.1008.content.material,packs.1008.content.quantity,packs.1008.oversize,packs.1008.supplier,packs.1008.hazardous,packs.1008.shelfLifeMonths,packs.1009.sku,packs.1009.name,packs.1009.massKg,packs.1009.prices.0.price,packs.1009.prices.0.fromPacks,packs.1009.prices.1.price,packs.1009.prices.1.fromPacks,packs.1009.content.part,packs.1009.content.unit,packs.1009.content.material,packs.1009.content.quantity,packs.1009.oversize,packs.1009.supplier,packs.1009.hazardous,packs.1009.shelfLifeMonths,packs.1010.sku,packs.1010.name,packs.1010.massKg,packs.1010.prices.0.price,packs.1010.prices.0.fromPacks,packs.1010.prices.1.price,packs.1010.prices.1.fromPacks,packs.1010.content.part,packs.1010.content.unit,packs.1010.content.material,packs.1010.content.quantity,packs.1010.oversize,packs.1010.supplier,packs.1010.hazardous,packs.1010.shelfLifeMonths,packs.1011.sku,packs.1011.name,packs.1011.massKg,packs.1011.prices.0.price,packs.1011.prices.0.fromPacks,packs.1011.prices.1.price,packs.1011.prices.1.fromPacks,packs.1011.content.part,packs.1011.content.unit,packs.1011.content.material,packs.1011.content.quantity,packs.1011.oversize,packs.1011.supplier,packs.1011.hazardous,packs.1011.shelfLifeMonths,packs.1012.sku,packs.1012.name,packs.1012.massKg,packs.1012.prices.0.price,packs.1012.prices.0.fromPacks,packs.1012.prices.1.price,packs.1012.prices.1.fromPacks,packs.1012.prices.2.price,packs.1012.prices.2.fromPacks,packs.1012.content.part,packs.1012.content.unit,packs.1012.content.material,packs.1012.content.quantity,packs.1012.oversize,packs.1012.supplier,packs.1012.hazardous,packs.1012.shelfLifeMonths,packs.1013.sku,packs.1013.name,packs.1013.massKg,packs.1013.prices.0.price,packs.1013.prices.0.fromPacks,packs.1013.prices.1.price,packs.1013.prices.1.fromPacks,packs.1013.content.part,packs.1013.content.unit,packs.1013.content.material,packs.1013.content.quantity,packs.1013.oversize,packs.1013.supplier,packs.1013.hazardous,packs.1013.shelfLifeMonths,packs.1014.sku,packs.1014.name,packs.1014.massKg,packs.1014.prices.0.price,packs.1014.prices.0.fromPacks,packs.1014.prices.1.price,packs.1014.prices.1.fromPacks,packs.1014.content.unit,packs.1014.content.material,packs.1014.content.quantity,packs.1014.oversize,packs.1014.supplier,packs.1014.hazardous,packs.1015.sku,packs.1015.name,packs.1015.massKg,packs.1015.prices.0.price,packs.1015.prices.0.fromPacks,packs.1015.prices.1.price,packs.1015.prices.1.fromPacks,packs.1015.content.unit,packs.1015.content.material,packs.1015.content.quantity,packs.1015.oversize,packs.1015.supplier,packs.1015.hazardous,packs.1016.sku,packs.1016.name,packs.1016.massKg,packs.1016.prices.0.price,packs.1016.prices.0.fromPacks,packs.1016.prices.1.price,packs.1016.prices.1.fromPacks,packs.1016.content.unit,packs.1016.content.material,packs.1016.content.quantity,packs.1016.oversize,packs.1016.supplier,packs.1016.hazardous,packs.1017.sku,packs.1017.name,packs.1017.massKg,packs.1017.prices.0.price,packs.1017.prices.0.fromPacks,packs.1017.prices.1.price,packs.1017.prices.1.fromPacks,packs.1017.content.unit,packs.1017.content.material,packs.1017.content.quantity,packs.1017.oversize,packs.1017.supplier,packs.1017.hazardous,packs.1018.sku,packs.1018.name,packs.1018.massKg,packs.1018.prices.0.price,packs.1018.prices.0.fromPacks,packs.1018.prices.1.price,packs.1018.prices.1.fromPacks,packs.1018.content.unit,packs.1018.content.material,packs.1018.content.quantity,packs.1018.oversize,packs.1018.supplier,packs.1018.hazardous,packs.1019.sku,packs.1019.name,packs.1019.massKg,packs.1019.prices.0.price,packs.1019.prices.0.fromPacks,packs.1019.prices.1.price,packs.1019.prices.1.fromPacks,packs.1019.content.unit,packs.1019.content.material,packs.1019.content.quantity,packs.1019.oversize,packs.1019.supplier,packs.1019.hazardous,packs.1020.sku,packs.1020.name,packs.1020.massKg,packs.1020.prices.0.price,packs.1020.prices.0.fromPacks,packs.1020.prices.1.price,packs.1020.prices.1.fromPacks,packs.1020.content.unit,packs.1020.content.material,packs.1020.content.quantity,packs.1020.oversize,packs.1020.supplier,packs.1020.hazardous,packs.1021.sku,packs.1021.name,packs.1021.massKg,packs.1021.prices.0.price,packs.1021.prices.0.fromPacks,packs.1021.prices.1.price,packs.1021.prices.1.fromPacks,packs.1021.content.unit,packs.1021.content.material,packs.1021.content.quantity,packs.1021.oversize,packs.1021.supplier,packs.1021.hazardous,packs.1022.sku,packs.1022.name,packs.1022.massKg,packs.1022.prices.0.price,packs.1022.prices.0.fromPacks,packs.1022.prices.1.price,packs.1022.prices.1.fromPacks,packs.1022.content.unit,packs.1022.content.material,packs.1022.content.quantity,packs.1022.oversize,packs.1022.supplier,packs.1022.hazardous,packs.1023.sku,packs.1023.name,packs.1023.massKg,packs.1023.prices.0.price,packs.1023.prices.0.fromPacks,packs.1023.prices.1.price,packs.1023.prices.1.fromPacks,packs.1023.content.unit,packs.1023.content.material,packs.1023.content.quantity,packs.1023.oversize,packs.1023.supplier,packs.1023.hazardous,packs.1024.sku,packs.1024.name,packs.1024.massKg,packs.1024.prices.0.price,packs.1024.prices.0.fromPacks,packs.1024.prices.1.price,packs.1024.prices.1.fromPacks,packs.1024.content.unit,packs.1024.content.material,packs.1024.content.quantity,packs.1024.oversize,packs.1024.supplier,packs.1024.hazardous,packs.1025.sku,packs.1025.name,packs.1025.massKg,packs.1025.prices.0.price,packs.1025.prices.0.fromPacks,packs.1025.prices.1.price,packs.1025.prices.1.fromPacks,packs.1025.content.unit,packs.1025.content.material,packs.1025.content.quantity,packs.1025.oversize,packs.1025.supplier,packs.1025.hazardous,packs.1026.sku,packs.1026.name,packs.1026.massKg,packs.1026.prices.0.price,packs.1026.prices.0.fromPacks,packs.1026.prices.1.price,packs.1026.prices.1.fromPacks,packs.1026.content.unit,packs.1026.content.material,packs.1026.content.quantity,packs.1026.oversize,packs.1026.supplier,packs.1026.hazardous,packs.1027.sku,packs.1027.name,packs.1027.massKg,packs.1027.prices.0.price,packs.1027.prices.0.fromPacks,packs.1027.prices.1.price,packs.1027.prices.1.fromPacks,packs.1027.content.unit,packs.1027.content.material,packs.1027.content.quantity,packs.1027.oversize,packs.1027.supplier,packs.1027.hazardous,packs.1028.sku,packs.1028.name,packs.1028.massKg,packs.1028.prices.0.price,packs.1028.prices.0.fromPacks,packs.1028.prices.1.price,packs.1028.prices.1.fromPacks,packs.1028.content.unit,packs.1028.content.material,packs.1028.content.quantity,packs.1028.oversize,packs.1028.supplier,packs.1028.hazardous,packs.1029.sku,packs.1029.name,packs.1029.massKg,packs.1029.prices.0.price,packs.1029.prices.0.fromPacks,packs.1029.prices.1.price,packs.1029.prices.1.fromPacks,packs.1029.content.unit,packs.1029.content.material,packs.1029.content.quantity,packs.1029.oversize,packs.1029.supplier,packs.1029.hazardous,packs.1030.sku,packs.1030.name,packs.1030.massKg,packs.1030.prices.0.price,packs.1030.prices.0.fromPacks,packs.1030.prices.1.price,packs.1030.prices.1.fromPacks,packs.1030.content.unit,packs.1030.content.material,packs.1030.content.quantity,packs.1030.oversize,packs.1030.supplier,packs.1030.hazardous,packs.1031.sku,packs.1031.name,packs.1031.massKg,packs.1031.prices.0.price,packs.1031.prices.0.fromPacks,packs.1031.prices.1.price,packs.1031.prices.1.fromPacks,packs.1031.content.unit,packs.1031.content.material,packs.1031.content.quantity,packs.1031.oversize,packs.1031.supplier,packs.1031.hazardous,packs.1032.sku,packs.1032.name,packs.1032.massKg,packs.1032.prices.0.price,packs.1032.prices.0.fromPacks,packs.1032.prices.1.price,packs.1032.prices.1.fromPacks,packs.1032.content.unit,packs.1032.content.material,packs.1032.content.quantity,packs.1032.oversize,packs.1032.supplier,packs.1032.hazardous,packs.1033.sku,packs.1033.name,packs.1033.massKg,packs.1033.prices.0.price,packs.1033.prices.0.fromPacks,packs.1033.prices.1.price,packs.1033.prices.1.fromPacks,packs.1033.content.unit,packs.1033.content.material,packs.1033.content.quantity,packs.1033.oversize,packs.1033.supplier,packs.1033.hazardous,packs.1034.sku,packs.1034.name,packs.1034.massKg,packs.1034.prices.0.price,packs.1034.prices.0.fromPacks,packs.1034.prices.1.price,packs.1034.prices.1.fromPacks,packs.1034.content.unit,packs.1034.content.material,packs.1034.content.quantity,packs.1034.oversize,packs.1034.supplier,packs.1034.hazardous,packs.1035.sku,packs.1035.name,packs.1035.massKg,packs.1035.prices.0.price,packs.1035.prices.0.fromPacks,packs.1035.prices.1.price,packs.1035.prices.1.fromPacks,packs.1035.content.unit,packs.1035.content.material,packs.1035.content.quantity,packs.1035.oversize,packs.1035.supplier,packs.1035.hazardous,packs.1036.sku,packs.1036.name,packs.1036.massKg,packs.1036.prices.0.price,packs.1036.prices.0.fromPacks,packs.1036.prices.1.price,packs.1036.prices.1.fromPacks,packs.1036.content.unit,packs.1036.content.material,packs.1036.content.quantity,packs.1036.oversize,packs.1036.supplier,packs.1036.hazardous,packs.1037.sku,packs.1037.name,packs.1037.massKg,packs.1037.prices.0.price,packs.1037.prices.0.fromPacks,packs.1037.prices.1.price,packs.1037.prices.1.fromPacks,packs.1037.content.unit,packs.1037.content.material,packs.1037.content.quantity,packs.1037.oversize,packs.1037.supplier,packs.1037.hazardous,packs.1038.sku,packs.1038.name,packs.1038.massKg,packs.1038.prices.0.price,packs.1038.prices.0.fromPacks,packs.1038.prices.1.price,packs.1038.prices.1.fromPacks,packs.1038.content.unit,packs.1038.content.material,packs.1038.content.quantity,packs.1038.oversize,packs.1038.supplier,packs.1038.hazardous,packs.1039.sku,packs.1039.name,packs.1039.massKg,packs.1039.prices.0.price,packs.1039.prices.0.fromPacks,packs.1039.prices.1.price,packs.1039.prices.1.fromPacks,packs.1039.content.unit,packs.1039.content.material,packs.1039.content.quantity,packs.1039.oversize,packs.1039.supplier,packs.1039.hazardous,packs.1040.sku,packs.1040.name,packs.1040.massKg,packs.1040.prices.0.price,packs.1040.prices.0.fromPacks,packs.1040.prices.1.price,packs.1040.prices.1.fromPacks,packs.1040.content.unit,packs.1040.content.material,packs.1040.content.quantity,packs.1040.oversize,packs.1040.supplier,packs.1040.hazardous,packs.1041.sku,packs.1041.name,packs.1041.massKg,packs.1041.prices.0.price,packs.1041.prices.0.fromPacks,packs.1041.prices.1.price,packs.1041.prices.1.fromPacks,packs.1041.content.unit,packs.1041.content.material,packs.1041.content.quantity,packs.1041.oversize,packs.1041.supplier,packs.1041.hazardous,packs.1042.sku,packs.1042.name,packs.1042.massKg,packs.1042.prices.0.price,packs.1042.prices.0.fromPacks,packs.1042.prices.1.price,packs.1042.prices.1.fromPacks,packs.1042.content.unit,packs.1042.content.material,packs.1042.content.quantity,packs.1042.oversize,packs.1042.supplier,packs.1042.hazardous,packs.1043.sku,packs.1043.name,packs.1043.massKg,packs.1043.prices.0.price,packs.1043.prices.0.fromPacks,packs.1043.prices.1.price,packs.1043.prices.1.fromPacks,packs.1043.content.unit,packs.1043.content.material,packs.1043.content.quantity,packs.1043.oversize,packs.1043.supplier,packs.1043.hazardous,packs.1044.sku,packs.1044.name,packs.1044.massKg,packs.1044.prices.0.price,packs.1044.prices.0.fromPacks,packs.1044.prices.1.price,packs.1044.prices.1.fromPacks,packs.1044.content.unit,packs.1044.content.material,packs.1044.content.quantity,packs.1044.oversize,packs.1044.supplier,packs.1044.hazardous,packs.1045.sku,packs.1045.name,packs.1045.massKg,packs.1045.prices.0.price,packs.1045.prices.0.fromPacks,packs.1045.prices.1.price,packs.1045.prices.1.fromPacks,packs.1045.content.unit,packs.1045.content.material,packs.1045.content.quantity,packs.1045.oversize,packs.1045.supplier,packs.1045.hazardous,packs.1046.sku,packs.1046.name,packs.1046.massKg,packs.1046.prices.0.price,packs.1046.prices.0.fromPacks,packs.1046.prices.1.price,packs.1046.prices.1.fromPacks,packs.1046.content.unit,packs.1046.content.material,packs.1046.content.quantity,packs.1046.oversize,packs.1046.supplier,packs.1046.hazardous,packs.1047.sku,packs.1047.name,packs.1047.massKg,packs.1047.prices.0.price,packs.1047.prices.0.fromPacks,packs.1047.prices.1.price,packs.1047.prices.1.fromPacks,packs.1047.content.unit,packs.1047.content.material,packs.1047.content.quantity,packs.1047.oversize,packs.1047.supplier,packs.1047.hazardous,packs.1048.sku,packs.1048.name,packs.1048.massKg,packs.1048.prices.0.price,packs.1048.prices.0.fromPacks,packs.1048.prices.1.price,packs.1048.prices.1.fromPacks,packs.1048.content.unit,packs.1048.content.material,packs.1048.content.quantity,packs.1048.oversize,packs.1048.supplier,packs.1048.hazardous,packs.1049.sku,packs.1049.name,packs.1049.massKg,packs.1049.prices.0.price,packs.1049.prices.0.fromPacks,packs.1049.prices.1.price,packs.1049.prices.1.fromPacks,packs.1049.content.unit,packs.1049.content.material,packs.1049.content.quantity,packs.1049.oversize,packs.1049.supplier,packs.1049.hazardous,validTo,currency,invented,suppliers.0.code,suppliers.0.name,suppliers.0.delivery,suppliers.0.minimumOrder,suppliers.0.hazardSurcharge,suppliers.0.oversizeFreight,suppliers.0.freeDeliveryFrom,suppliers.1.code,suppliers.1.name,suppliers.1.delivery,suppliers.1.minimumOrder,suppliers.1.hazardSurcharge,suppliers.1.oversizeFreight,suppliers.2.code,suppliers.2.name,suppliers.2.delivery,suppliers.2.minimumOrder,suppliers.2.hazardSurcharge,suppliers.2.oversizeFreight,suppliers.2.freeDeliveryFrom,validFrom,pricesIncludeTax,packs.976.prices.2.price,packs.976.prices.2.fromPacks,packs.982.prices.2.price,packs.982.prices.2.fromPacks,packs.988.prices.2.price,packs.988.prices.2.fromPacks,packs.989.content.part,packs.994.prices.1.price,packs.994.prices.1.fromPacks,packs.994.prices.2.price,packs.994.prices.2.fromPacks,packs.1002.prices.2.price,packs.1002.prices.2.fromPacks,packs.1008.prices.2.price,packs.1008.prices.2.fromPacks,packs.1014.prices.2.price,packs.1014.prices.2.fromPacks,packs.1014.content.part,packs.1014.shelfLifeMonths,packs.1015.content.part,packs.1015.shelfLifeMonths,packs.1050.sku,packs.1050.name,packs.1050.massKg,packs.1050.prices.0.price,packs.1050.prices.0.fromPacks,packs.1050.prices.1.price,packs.1050.prices.1.fromPacks,packs.1050.content.unit,packs.1050.content.material,packs.1050.content.quantity,packs.1050.oversize,packs.1050.supplier,packs.1050.hazardous,packs.1051.sku,packs.1051.name,packs.1051.massKg,packs.1051.prices.0.price,packs.1051.prices.0.fromPacks,packs.1051.prices.1.price,packs.1051.prices.1.fromPacks,packs.1051.content.unit,packs.1051.content.material,packs.1051.content.quantity,packs.1051.oversize,packs.1051.supplier,packs.1051.hazardous\r\ninvented-dollar,Invented prices in US dollars,A-epoxy-primer-946ml,\"High-build epoxy primer, two-part, 0.946 l\",1.619,35.70,1,33.60,6,l,coating-epoxy-primer,0.946,false,chandlery-a,true,24,B-epoxy-primer-946ml,\"High-build epoxy primer, two-part, 0.946 l\",1.619,35.30,1,33.20,6,l,coating-epoxy-primer,0.946,false,chandlery-b,true,24,A-epoxy-primer-3785ml,\"High-build epoxy primer, two-part, 3.785 l\",5.878,122.00,1,114.50,4,l,coating-epoxy-primer,3.785,false,chandlery-a,true,24,B-epoxy-primer-3785ml,\"High-build epoxy primer, two-part, 3.785 l\",5.878,119.50,1,112.50,4,l,coating-epoxy-primer,3.785,false,chandlery-b,true,24,A-fairing-compound-946ml,\"Epoxy fairing compound, two-part, 0.946 l\",0.909,31.80,1,29.90,6,l,coating-fairing-compound,0.946,false,chandlery-a,true,24,B-fairing-compound-946ml,\"Epoxy fairing compound, two-part, 0.946 l\",0.909,31.20,1,29.30,6,l,coating-fairing-compound,0.946,false,chandlery-b,true,24,A-fairing-compound-3785ml,\"Epoxy fairing compound, two-part, 3.785 l\",3.039,101.50,1,95.50,4,l,coating-fairing-compound,3.785,false,chandlery-a,true,24,B-fairing-compound-3785ml,\"Epoxy fairing compound, two-part, 3.785 l\",3.039,107.50,1,101.00,4,l,coating-fairing-compound,3.785,false,chandlery-b,true,24,A-nonskid-grit-paint-946ml,\"Topcoat over broadcast grit, one-part, 0.946 l\",1.241,42.80,1,40.20,4,l,coating-nonskid-grit-paint,0.946,false,chandlery-a,true,24,B-nonskid-grit-paint-946ml,\"Topcoat over broadcast grit, one-part, 0.946 l\",1.241,43.70,1,41.10,4,l,coating-nonskid-grit-paint,0.946,false,chandlery-b,true,24,A-nonskid-grit-paint-3785ml,\"Topcoat over broadcast grit, one-part, 3.785 l\",4.364,146.50,1,137.50,4,l,coating-nonskid-grit-paint,3.785,false,chandlery-a,true,24,B-nonskid-grit-paint-3785ml,\"Topcoat over broadcast grit, one-part, 3.785 l\",4.364,138.00,1,129.50,4,l,coating-nonskid-grit-paint,3.785,false,chandlery-b,true,24,A-nonskid-textured-946ml,\"Textured roll-on nonskid, 0.946 l\",1.524,26.40,1,24.80,6,l,coating-nonskid-textured,0.946,false,chandlery-a,true,24,B-nonskid-textured-946ml,\"Textured roll-on nonskid, 0.946 l\",1.524,25.90,1,24.30,6,l,coating-nonskid-textured,0.946,false,chandlery-b,true,24,A-nonskid-textured-3785ml,\"Textured roll-on nonskid, 3.785 l\",5.499,88.50,1,83.00,4,l,coating-nonskid-textured,3.785,false,chandlery-a,true,24,B-nonskid-textured-3785ml,\"Textured roll-on nonskid, 3.785 l\",5.499,94.00,1,88.50,4,l,coating-nonskid-textured,3.785,false,chandlery-b,true,24,A-topcoat-one-part-946ml,\"Topcoat enamel, one-part, 0.946 l\",1.241,37.80,1,35.50,6,l,coating-topcoat-one-part,0.946,false,chandlery-a,true,24,B-topcoat-one-part-946ml,\"Topcoat enamel, one-part, 0.946 l\",1.241,37.80,1,35.50,6,l,coating-topcoat-one-part,0.946,false,chandlery-b,true,24,A-topcoat-one-part-3785ml,\"Topcoat enamel, one-part, 3.785 l\",4.364,132.00,1,124.00,4,l,coating-topcoat-one-part,3.785,false,chandlery-a,true,24,B-topcoat-one-part-3785ml,\"Topcoat enamel, one-part, 3.785 l\",4.364,120.50,1,113.50,4,l,coating-topcoat-one-part,3.785,false,chandlery-b,true,24,A-topcoat-two-part-946ml,\"Polyurethane topcoat, two-part, 0.946 l\",1.335,54.70,1,51.40,4,l,coating-topcoat-two-part,0.946,false,chandlery-a,true,24,B-topcoat-two-part-946ml,\"Polyurethane topcoat, two-part, 0.946 l\",1.335,54.60,1,51.30,4,l,coating-topcoat-two-part,0.946,false,chandlery-b,true,24,A-topcoat-two-part-3785ml,\"Polyurethane topcoat, two-part, 3.785 l\",4.742,176.00,1,165.50,4,l,coating-topcoat-two-part,3.785,false,chandlery-a,true,24,B-topcoat-two-part-3785ml,\"Polyurethane topcoat, two-part, 3.785 l\",4.742,186.50,1,175.50,4,l,coating-topcoat-two-part,3.785,false,chandlery-b,true,24,A-acetone-1l,\"Acetone or epoxy solvent, 1 l\",0.8,7.20,1,6.75,6,l,consumable-acetone,1,false,chandlery-a,true,B-acetone-1l,\"Acetone or epoxy solvent, 1 l\",0.8,7.00,1,6.60,6,l,consumable-acetone,1,false,chandlery-b,true,B-acetone-5l,\"Acetone or epoxy solvent, 5 l\",4,31.80,1,29.90,6,l,consumable-acetone,5,false,chandlery-b,true,C-acetone-5l,\"Acetone or epoxy solvent, 5 l\",4,29.50,1,27.70,6,26.00,20,l,consumable-acetone,5,false,merchant-c,true,A-air-inhibitor-0_1l,\"Wax solution so that the last coat of polyester cures, 0.1 l\",0.09,2.65,1,2.50,6,l,consumable-air-inhibitor,0.1,false,chandlery-a,true,B-air-inhibitor-0_1l,\"Wax solution so that the last coat of polyester cures, 0.1 l\",0.09,2.70,1,2.55,6,l,consumable-air-inhibitor,0.1,false,chandlery-b,true,B-air-inhibitor-0_5l,\"Wax solution so that the last coat of polyester cures, 0.5 l\",0.45,10.95,1,10.30,6,l,consumable-air-inhibitor,0.5,false,chandlery-b,true,C-air-inhibitor-0_5l,\"Wax solution so that the last coat of polyester cures, 0.5 l\",0.45,10.35,1,9.75,6,9.10,20,l,consumable-air-inhibitor,0.5,false,merchant-c,true,A-bag-sealant-tape-15m,\"Vacuum bag sealant tape, 15 m\",0.75,9.35,1,8.80,6,m,consumable-bag-sealant-tape,15,false,chandlery-a,false,B-bag-sealant-tape-15m,\"Vacuum bag sealant tape, 15 m\",0.75,9.25,1,8.70,6,m,consumable-bag-sealant-tape,15,false,chandlery-b,false,B-bag-sealant-tape-60m,\"Vacuum bag sealant tape, 60 m\",3,31.30,1,29.40,6,m,consumable-bag-sealant-tape,60,false,chandlery-b,false,C-bag-sealant-tape-60m,\"Vacuum bag sealant tape, 60 m\",3,29.70,1,27.90,6,26.10,20,m,consumable-bag-sealant-tape,60,false,merchant-c,false,A-batten-2_4m,\"Batten, 20 x 45 mm softwood, 2.4 m\",1.08,4.25,1,4.00,6,m,consumable-batten,2.4,false,chandlery-a,false,B-batten-2_4m,\"Batten, 20 x 45 mm softwood, 2.4 m\",1.08,4.10,1,3.85,6,m,consumable-batten,2.4,false,chandlery-b,false,B-batten-24m,\"Batten, 20 x 45 mm softwood, 24 m\",10.8,33.40,1,31.40,6,m,consumable-batten,24,false,chandlery-b,false,C-batten-24m,\"Batten, 20 x 45 mm softwood, 24 m\",10.8,31.00,1,29.10,6,27.30,20,m,consumable-batten,24,false,merchant-c,false,A-board-strip-5each,\"Long-board strip, grit 60 to 80, pack of 5 each\",0.15,7.90,1,7.45,6,each,consumable-board-strip,5,false,chandlery-a,false,B-board-strip-5each,\"Long-board strip, grit 60 to 80, pack of 5 each\",0.15,7.90,1,7.45,6,each,consumable-board-strip,5,false,chandlery-b,false,B-board-strip-25each,\"Long-board strip, grit 60 to 80, pack of 25 each\",0.75,31.60,1,29.70,6,each,consumable-board-strip,25,false,chandlery-b,false,C-board-strip-25each,\"Long-board strip, grit 60 to 80, pack of 25 each\",0.75,29.90,1,28.10,6,26.30,20,each,consumable-board-strip,25,false,merchant-c,false,A-breather-5m2,\"Breather cloth, 5 m2\",0.75,13.65,1,12.85,6,m2,consumable-breather,5,false,chandlery-a,false,B-breather-5m2,\"Breather cloth, 5 m2\",0.75,12.10,1,11.35,6,m2,consumable-breather,5,false,chandlery-b,false,B-breather-25m2,\"Breather cloth, 25 m2\",3.75,54.00,1,50.80,4,m2,consumable-breather,25,false,chandlery-b,false,C-breather-25m2,\"Breather cloth, 25 m2\",3.75,47.60,1,44.70,4,41.90,12,m2,consumable-breather,25,false,merchant-c,false,A-chip-brush-1each,\"Throw-away brush, 50 mm, 1 each\",0.03,1.10,1,each,consumable-chip-brush,1,false,chandlery-a,false,B-chip-brush-1each,\"Throw-away brush, 50 mm, 1 each\",0.03,1.10,1,each,consumable-chip-brush,1,false,chandlery-b,false,A-chip-brush-12each,\"Throw-away brush, 50 mm, pack of 12 each\",0.36,9.90,1,9.30,6,each,consumable-chip-brush,12,false,chandlery-a,false,B-chip-brush-12each,\"Throw-away brush, 50 mm, pack of 12 each\",0.36,9.90,1,9.30,6,each,consumable-chip-brush,12,false,chandlery-b,false,B-chip-brush-36each,\"Throw-away brush, 50 mm, pack of 36 each\",1.08,26.10,1,24.50,6,each,consumable-chip-brush,36,false,chandlery-b,false,C-chip-brush-36each,\"Throw-away brush, 50 mm, pack of 36 each\",1.08,25.00,1,23.50,6,22.00,20,each,consumable-chip-brush,36,false,merchant-c,false,A-cutting-disc-1each,\"Carbide or diamond cutting disc, 75 to 115 mm, 1 each\",0.05,3.75,1,3.50,6,each,consumable-cutting-disc,1,false,chandlery-a,false,B-cutting-disc-1each,\"Carbide or diamond cutting disc, 75 to 115 mm, 1 each\",0.05,3.25,1,3.05,6,each,consumable-cutting-disc,1,false,chandlery-b,false,A-cutting-disc-5each,\"Carbide or diamond cutting disc, 75 to 115 mm, pack of 5 each\",0.25,14.75,1,13.85,6,each,consumable-cutting-disc,5,false,chandlery-a,false,B-cutting-disc-5each,\"Carbide or diamond cutting disc, 75 to 115 mm, pack of 5 each\",0.25,14.90,1,14.00,6,each,consumable-cutting-disc,5,false,chandlery-b,false,B-cutting-disc-25each,\"Carbide or diamond cutting disc, 75 to 115 mm, pack of 25 each\",1.25,67.00,1,63.00,4,each,consumable-cutting-disc,25,false,chandlery-b,false,C-cutting-disc-25each,\"Carbide or diamond cutting disc, 75 to 115 mm, pack of 25 each\",1.25,63.00,1,59.20,4,55.40,12,each,consumable-cutting-disc,25,false,merchant-c,false,A-fine-line-tape-1roll,\"Fine-line tape, 19 mm, 1 roll\",0.15,7.85,1,7.40,6,roll,consumable-fine-line-tape,1,false,chandlery-a,false,B-fine-line-tape-1roll,\"Fine-line tape, 19 mm, 1 roll\",0.15,7.75,1,7.30,6,roll,consumable-fine-line-tape,1,false,chandlery-b,false,B-fine-line-tape-6roll,\"Fine-line tape, 19 mm, pack of 6 roll\",0.9,35.50,1,33.40,6,roll,consumable-fine-line-tape,6,false,chandlery-b,false,C-fine-line-tape-6roll,\"Fine-line tape, 19 mm, pack of 6 roll\",0.9,33.60,1,31.60,6,29.60,20,roll,consumable-fine-line-tape,6,false,merchant-c,false,A-grinding-disc-36-5each,\"Grinding or flap disc, grit 36 to 40, pack of 5 each\",0.5,14.10,1,13.25,6,each,consumable-grinding-disc-36,5,false,chandlery-a,false,B-grinding-disc-36-5each,\"Grinding or flap disc, grit 36 to 40, pack of 5 each\",0.5,12.40,1,11.65,6,each,consumable-grinding-disc-36,5,false,chandlery-b,false,A-grinding-disc-36-10each,\"Grinding or flap disc, grit 36 to 40, pack of 10 each\",1,24.50,1,23.00,6,each,consumable-grinding-disc-36,10,false,chandlery-a,false,B-grinding-disc-36-10each,\"Grinding or flap disc, grit 36 to 40, pack of 10 each\",1,26.00,1,24.40,6,each,consumable-grinding-disc-36,10,false,chandlery-b,false,B-grinding-disc-36-25each,\"Grinding or flap disc, grit 36 to 40, pack of 25 each\",2.5,58.60,1,55.10,4,each,consumable-grinding-disc-36,25,false,chandlery-b,false,C-grinding-disc-36-25each,\"Grinding or flap disc, grit 36 to 40, pack of 25 each\",2.5,51.30,1,48.20,4,45.10,12,each,consumable-grinding-disc-36,25,false,merchant-c,false,A-laminating-roller-1each,\"Metal laminating roller, 1 each\",0.2,16.60,1,15.60,6,each,consumable-laminating-roller,1,false,chandlery-a,false,B-laminating-roller-1each,\"Metal laminating roller, 1 each\",0.2,15.50,1,14.55,6,each,consumable-laminating-roller,1,false,chandlery-b,false,A-masking-paper-20m,\"Masking paper or film, 300 mm, 20 m\",0.4,5.00,1,4.70,6,m,consumable-masking-paper,20,false,chandlery-a,false,B-masking-paper-20m,\"Masking paper or film, 300 mm, 20 m\",0.4,4.95,1,4.65,6,m,consumable-masking-paper,20,false,chandlery-b,false,B-masking-paper-50m,\"Masking paper or film, 300 mm, 50 m\",1,10.90,1,10.25,6,m,consumable-masking-paper,50,false,chandlery-b,false,C-masking-paper-50m,\"Masking paper or film, 300 mm, 50 m\",1,10.60,1,9.95,6,9.35,20,m,consumable-masking-paper,50,false,merchant-c,false,A-masking-tape-50-1roll,\"Masking tape, 25 to 50 mm, 1 roll\",0.25,4.50,1,4.25,6,roll,consumable-masking-tape-50,1,false,chandlery-a,false,B-masking-tape-50-1roll,\"Masking tape, 25 to 50 mm, 1 roll\",0.25,4.30,1,4.05,6,roll,consumable-masking-tape-50,1,false,chandlery-b,false,A-masking-tape-50-6roll,\"Masking tape, 25 to 50 mm, pack of 6 roll\",1.5,23.40,1,22.00,6,roll,consumable-masking-tape-50,6,false,chandlery-a,false,B-masking-tape-50-6roll,\"Masking tape, 25 to 50 mm, pack of 6 roll\",1.5,22.50,1,21.10,6,roll,consumable-masking-tape-50,6,false,chandlery-b,false,B-masking-tape-50-24roll,\"Masking tape, 25 to 50 mm, pack of 24 roll\",6,80.50,1,75.50,4,roll,consumable-masking-tape-50,24,false,chandlery-b,false,C-masking-tape-50-24roll,\"Masking tape, 25 to 50 mm, pack of 24 roll\",6,76.50,1,72.00,4,67.50,12,roll,consumable-masking-tape-50,24,false,merchant-c,false,A-mixing-pot-5each,\"Mixing pot, 0.5 to 1 l, pack of 5 each\",0.15,2.70,1,2.55,6,each,consumable-mixing-pot,5,false,chandlery-a,false,B-mixing-pot-5each,\"Mixing pot, 0.5 to 1 l, pack of 5 each\",0.15,2.65,1,2.50,6,each,consumable-mixing-pot,5,false,chandlery-b,false,A-mixing-pot-20each,\"Mixing pot, 0.5 to 1 l, pack of 20 each\",0.6,9.85,1,9.25,6,each,consumable-mixing-pot,20,false,chandlery-a,false,B-mixing-pot-20each,\"Mixing pot, 0.5 to 1 l, pack of 20 each\",0.6,8.65,1,8.15,6,each,consumable-mixing-pot,20,false,chandlery-b,false,B-mixing-pot-50each,\"Mixing pot, 0.5 to 1 l, pack of 50 each\",1.5,20.60,1,19.35,6,each,consumable-mixing-pot,50,false,chandlery-b,false,C-mixing-pot-50each,\"Mixing pot, 0.5 to 1 l, pack of 50 each\",1.5,19.65,1,18.45,6,17.30,20,each,consumable-mixing-pot,50,false,merchant-c,false,A-mixing-stick-20each,\"Mixing stick, pack of 20 each\",0.08,2.10,1,1.95,6,each,consumable-mixing-stick,20,false,chandlery-a,false,B-mixing-stick-20each,\"Mixing stick, pack of 20 each\",0.08,2.05,1,1.95,6,each,consumable-mixing-stick,20,false,chandlery-b,false,B-mixing-stick-100each,\"Mixing stick, pack of 100 each\",0.4,8.95,1,8.40,6,each,consumable-mixing-stick,100,false,chandlery-b,false,C-mixing-stick-100each,\"Mixing stick, pack of 100 each\",0.4,7.45,1,7.00,6,6.55,20,each,consumable-mixing-stick,100,false,merchant-c,false,A-nonskid-grit-0_25kg,\"Nonskid grit, graded, 0.25 kg\",0.25,2.40,1,2.25,6,kg,consumable-nonskid-grit,0.25,false,chandlery-a,false,B-nonskid-grit-0_25kg,\"Nonskid grit, graded, 0.25 kg\",0.25,2.35,1,2.20,6,kg,consumable-nonskid-grit,0.25,false,chandlery-b,false,B-nonskid-grit-1kg,\"Nonskid grit, graded, 1 kg\",1,8.20,1,7.70,6,kg,consumable-nonskid-grit,1,false,chandlery-b,false,C-nonskid-grit-1kg,\"Nonskid grit, graded, 1 kg\",1,7.55,1,7.10,6,6.65,20,kg,consumable-nonskid-grit,1,false,merchant-c,false,A-overhead-prop-1each,\"Prop and pad for overhead work, 1 each\",2.2,12.30,1,11.55,6,each,consumable-overhead-prop,1,false,chandlery-a,false,B-overhead-prop-1each,\"Prop and pad for overhead work, 1 each\",2.2,12.05,1,11.35,6,each,consumable-overhead-prop,1,false,chandlery-b,false,B-overhead-prop-4each,\"Prop and pad for overhead work, pack of 4 each\",8.8,39.70,1,37.30,6,each,consumable-overhead-prop,4,false,chandlery-b,false,C-overhead-prop-4each,\"Prop and pad for overhead work, pack of 4 each\",8.8,37.20,1,35.00,6,32.70,20,each,consumable-overhead-prop,4,false,merchant-c,false,A-paint-roller-1each,\"Foam paint roller, 100 mm, 1 each\",0.03,1.75,1,each,consumable-paint-roller,1,false,chandlery-a,false,B-paint-roller-1each,\"Foam paint roller, 100 mm, 1 each\",0.03,1.75,1,each,consumable-paint-roller,1,false,chandlery-b,false,B-paint-roller-10each,\"Foam paint roller, 100 mm, pack of 10 each\",0.3,14.00,1,13.15,6,each,consumable-paint-roller,10,false,chandlery-b,false,C-paint-roller-10each,\"Foam paint roller, 100 mm, pack of 10 each\",0.3,13.10,1,12.30,6,11.55,20,each,consumable-paint-roller,10,false,merchant-c,false,A-paint-thinner-0_5l,\"Thinner for the paint system, 0.5 l\",0.425,7.05,1,6.65,6,l,consumable-paint-thinner,0.5,false,chandlery-a,true,B-paint-thinner-0_5l,\"Thinner for the paint system, 0.5 l\",0.425,7.15,1,6.70,6,l,consumable-paint-thinner,0.5,false,chandlery-b,true,B-paint-thinner-2_5l,\"Thinner for the paint system, 2.5 l\",2.125,32.10,1,30.20,6,l,consumable-paint-thinner,2.5,false,chandlery-b,true,C-paint-thinner-2_5l,\"Thinner for the paint system, 2.5 l\",2.125,26.60,1,25.00,6,23.40,20,l,consumable-paint-thinner,2.5,false,merchant-c,true,A-paint-tray-1each,\"Paint tray with liners, 1 each\",0.1,2.55,1,2.40,6,each,consumable-paint-tray,1,false,chandlery-a,false,B-paint-tray-1each,\"Paint tray with liners, 1 each\",0.1,2.50,1,2.35,6,each,consumable-paint-tray,1,false,chandlery-b,false,B-paint-tray-10each,\"Paint tray with liners, pack of 10 each\",1,22.50,1,21.10,6,each,consumable-paint-tray,10,false,chandlery-b,false,C-paint-tray-10each,\"Paint tray with liners, pack of 10 each\",1,18.90,1,17.75,6,16.65,20,each,consumable-paint-tray,10,false,merchant-c,false,A-peel-ply-5m2,\"Peel ply, 5 m2\",0.45,19.40,1,18.25,6,m2,consumable-peel-ply,5,false,chandlery-a,false,B-peel-ply-5m2,\"Peel ply, 5 m2\",0.45,19.60,1,18.40,6,m2,consumable-peel-ply,5,false,chandlery-b,false,B-peel-ply-25m2,\"Peel ply, 25 m2\",2.25,76.50,1,72.00,4,m2,consumable-peel-ply,25,false,chandlery-b,false,C-peel-ply-25m2,\"Peel ply, 25 m2\",2.25,75.50,1,71.00,4,66.50,12,m2,consumable-peel-ply,25,false,merchant-c,false,A-perforated-film-5m2,\"Perforated release film, 5 m2\",0.15,11.40,1,10.70,6,m2,consumable-perforated-film,5,false,chandlery-a,false,B-perforated-film-5m2,\"Perforated release film, 5 m2\",0.15,11.20,1,10.55,6,m2,consumable-perforated-film,5,false,chandlery-b,false,B-perforated-film-25m2,\"Perforated release film, 25 m2\",0.75,51.30,1,48.20,4,m2,consumable-perforated-film,25,false,chandlery-b,false,C-perforated-film-25m2,\"Perforated release film, 25 m2\",0.75,48.50,1,45.60,4,42.70,12,m2,consumable-perforated-film,25,false,merchant-c,false,A-plastic-sheet-8m2,\"Plastic sheet for protection, 0.1 mm, 8 m2\",0.76,3.75,1,3.50,6,m2,consumable-plastic-sheet,8,false,chandlery-a,false,B-plastic-sheet-8m2,\"Plastic sheet for protection, 0.1 mm, 8 m2\",0.76,3.75,1,3.50,6,m2,consumable-plastic-sheet,8,false,chandlery-b,false,A-plastic-sheet-50m2,\"Plastic sheet for protection, 0.1 mm, 50 m2\",4.75,19.55,1,18.40,6,m2,consumable-plastic-sheet,50,false,chandlery-a,false,B-plastic-sheet-50m2,\"Plastic sheet for protection, 0.1 mm, 50 m2\",4.75,19.35,1,18.20,6,m2,consumable-plastic-sheet,50,false,chandlery-b,false,B-plastic-sheet-100m2,\"Plastic sheet for protection, 0.1 mm, 100 m2\",9.5,35.30,1,33.20,6,m2,consumable-plastic-sheet,100,false,chandlery-b,false,C-plastic-sheet-100m2,\"Plastic sheet for protection, 0.1 mm, 100 m2\",9.5,33.10,1,31.10,6,29.10,20,m2,consumable-plastic-sheet,100,false,merchant-c,false,A-prop-timber-2_4m,\"Prop and spreader timber, 45 x 70 mm, 2.4 m\",3.6,6.80,1,6.40,6,m,consumable-prop-timber,2.4,false,chandlery-a,false,B-prop-timber-2_4m,\"Prop and spreader timber, 45 x 70 mm, 2.4 m\",3.6,6.50,1,6.10,6,m,consumable-prop-timber,2.4,false,chandlery-b,false,B-prop-timber-24m,\"Prop and spreader timber, 45 x 70 mm, 24 m\",36,57.90,1,54.40,4,m,consumable-prop-timber,24,false,chandlery-b,false,C-prop-timber-24m,\"Prop and spreader timber, 45 x 70 mm, 24 m\",36,53.20,1,50.00,4,46.80,12,m,consumable-prop-timber,24,false,merchant-c,false,A-pump-set-1each,\"Calibrated pump set for resin and hardener, 1 each\",0.4,24.90,1,23.40,6,each,consumable-pump-set,1,false,chandlery-a,false,B-pump-set-1each,\"Calibrated pump set for resin and hardener, 1 each\",0.4,21.90,1,20.60,6,each,consumable-pump-set,1,false,chandlery-b,false,A-rags-1roll,\"Lint-free rags or paper towels, 1 roll\",0.8,8.30,1,7.80,6,roll,consumable-rags,1,false,chandlery-a,false,B-rags-1roll,\"Lint-free rags or paper towels, 1 roll\",0.8,8.05,1,7.55,6,roll,consumable-rags,1,false,chandlery-b,false,B-rags-6roll,\"Lint-free rags or paper towels, pack of 6 roll\",4.8,42.00,1,39.50,4,roll,consumable-rags,6,false,chandlery-b,false,C-rags-6roll,\"Lint-free rags or paper towels, pack of 6 roll\",4.8,39.00,1,36.70,6,34.30,20,roll,consumable-rags,6,false,merchant-c,false,A-release-film-5m2,\"Release film, or polythene with wax paper, 5 m2\",0.15,8.95,1,8.40,6,m2,consumable-release-film,5,false,chandlery-a,false,B-release-film-5m2,\"Release film, or polythene with wax paper, 5 m2\",0.15,8.60,1,8.10,6,m2,consumable-release-film,5,false,chandlery-b,false,A-release-film-25m2,\"Release film, or polythene with wax paper, 25 m2\",0.75,38.40,1,36.10,6,m2,consumable-release-film,25,false,chandlery-a,false,B-release-film-25m2,\"Release film, or polythene with wax paper, 25 m2\",0.75,38.30,1,36.00,6,m2,consumable-release-film,25,false,chandlery-b,false,B-release-film-50m2,\"Release film, or polythene with wax paper, 50 m2\",1.5,70.50,1,66.50,4,m2,consumable-release-film,50,false,chandlery-b,false,C-release-film-50m2,\"Release film, or polythene with wax paper, 50 m2\",1.5,69.00,1,65.00,4,60.50,12,m2,consumable-release-film,50,false,merchant-c,false,A-roller-cover-2each,\"Solvent-proof roller cover, 100 mm, pack of 2 each\",0.04,2.75,1,2.60,6,each,consumable-roller-cover,2,false,chandlery-a,false,B-roller-cover-2each,\"Solvent-proof roller cover, 100 mm, pack of 2 each\",0.04,2.70,1,2.55,6,each,consumable-roller-cover,2,false,chandlery-b,false,B-roller-cover-10each,\"Solvent-proof roller cover, 100 mm, pack of 10 each\",0.2,11.60,1,10.90,6,each,consumable-roller-cover,10,false,chandlery-b,false,C-roller-cover-10each,\"Solvent-proof roller cover, 100 mm, pack of 10 each\",0.2,10.90,1,10.25,6,9.60,20,each,consumable-roller-cover,10,false,merchant-c,false,A-sand-bag-1each,\"Sand bag, 20 kg, 1 each\",20,4.45,1,4.20,6,each,consumable-sand-bag,1,false,chandlery-a,false,B-sand-bag-1each,\"Sand bag, 20 kg, 1 each\",20,4.45,1,4.20,6,each,consumable-sand-bag,1,false,chandlery-b,false,B-sand-bag-10each,\"Sand bag, 20 kg, pack of 10 each\",200,38.60,1,36.30,6,each,consumable-sand-bag,10,false,chandlery-b,false,C-sand-bag-10each,\"Sand bag, 20 kg, pack of 10 each\",200,35.40,1,33.30,6,31.20,20,each,consumable-sand-bag,10,false,merchant-c,false,A-sanding-disc-120-5each,\"Sanding disc 150 mm, grit 120 to 220, pack of 5 each\",0.05,3.30,1,3.10,6,each,consumable-sanding-disc-120,5,false,chandlery-a,false,B-sanding-disc-120-5each,\"Sanding disc 150 mm, grit 120 to 220, pack of 5 each\",0.05,3.30,1,3.10,6,each,consumable-sanding-disc-120,5,false,chandlery-b,false,A-sanding-disc-120-25each,\"Sanding disc 150 mm, grit 120 to 220, pack of 25 each\",0.25,14.85,1,13.95,6,each,consumable-sanding-disc-120,25,false,chandlery-a,false,B-sanding-disc-120-25each,\"Sanding disc 150 mm, grit 120 to 220, pack of 25 each\",0.25,13.55,1,12.75,6,each,consumable-sanding-disc-120,25,false,chandlery-b,false,B-sanding-disc-120-50each,\"Sanding disc 150 mm, grit 120 to 220, pack of 50 each\",0.5,25.70,1,24.20,6,each,consumable-sanding-disc-120,50,false,chandlery-b,false,C-sanding-disc-120-50each,\"Sanding disc 150 mm, grit 120 to 220, pack of 50 each\",0.5,25.60,1,24.10,6,22.50,20,each,consumable-sanding-disc-120,50,false,merchant-c,false,A-sanding-disc-80-5each,\"Sanding disc 150 mm, grit 80, pack of 5 each\",0.06,3.35,1,3.15,6,each,consumable-sanding-disc-80,5,false,chandlery-a,false,B-sanding-disc-80-5each,\"Sanding disc 150 mm, grit 80, pack of 5 each\",0.06,3.25,1,3.05,6,each,consumable-sanding-disc-80,5,false,chandlery-b,false,A-sanding-disc-80-25each,\"Sanding disc 150 mm, grit 80, pack of 25 each\",0.3,14.25,1,13.40,6,each,consumable-sanding-disc-80,25,false,chandlery-a,false,B-sanding-disc-80-25each,\"Sanding disc 150 mm, grit 80, pack of 25 each\",0.3,14.30,1,13.45,6,each,consumable-sanding-disc-80,25,false,chandlery-b,false,B-sanding-disc-80-50each,\"Sanding disc 150 mm, grit 80, pack of 50 each\",0.6,27.10,1,25.50,6,each,consumable-sanding-disc-80,50,false,chandlery-b,false,C-sanding-disc-80-50each,\"Sanding disc 150 mm, grit 80, pack of 50 each\",0.6,25.90,1,24.30,6,22.80,20,each,consumable-sanding-disc-80,50,false,merchant-c,false,A-spreader-1each,\"Notched spreader or squeegee, 1 each\",0.05,2.95,1,2.75,6,each,consumable-spreader,1,false,chandlery-a,false,B-spreader-1each,\"Notched spreader or squeegee, 1 each\",0.05,3.00,1,2.80,6,each,consumable-spreader,1,false,chandlery-b,false,B-spreader-5each,\"Notched spreader or squeegee, pack of 5 each\",0.25,13.40,1,12.60,6,each,consumable-spreader,5,false,chandlery-b,false,C-spreader-5each,\"Notched spreader or squeegee, pack of 5 each\",0.25,12.80,1,12.05,6,11.25,20,each,consumable-spreader,5,false,merchant-c,false,A-stipple-roller-1each,\"Stipple roller for textured nonskid, 1 each\",0.04,5.05,1,4.75,6,each,consumable-stipple-roller,1,false,chandlery-a,false,B-stipple-roller-1each,\"Stipple roller for textured nonskid, 1 each\",0.04,4.95,1,4.65,6,each,consumable-stipple-roller,1,false,chandlery-b,false,B-stipple-roller-5each,\"Stipple roller for textured nonskid, pack of 5 each\",0.2,19.85,1,18.65,6,each,consumable-stipple-roller,5,false,chandlery-b,false,C-stipple-roller-5each,\"Stipple roller for textured nonskid, pack of 5 each\",0.2,18.80,1,17.65,6,16.55,20,each,consumable-stipple-roller,5,false,merchant-c,false,A-syringe-1each,\"Syringe or caulking tube, 1 each\",0.02,0.90,1,each,consumable-syringe,1,false,chandlery-a,false,B-syringe-1each,\"Syringe or caulking tube, 1 each\",0.02,0.95,1,each,consumable-syringe,1,false,chandlery-b,false,A-syringe-10each,\"Syringe or caulking tube, pack of 10 each\",0.2,7.95,1,7.45,6,each,consumable-syringe,10,false,chandlery-a,false,B-syringe-10each,\"Syringe or caulking tube, pack of 10 each\",0.2,7.95,1,7.45,6,each,consumable-syringe,10,false,chandlery-b,false,B-syringe-50each,\"Syringe or caulking tube, pack of 50 each\",1,30.50,1,28.70,6,each,consumable-syringe,50,false,chandlery-b,false,C-syringe-50each,\"Syringe or caulking tube, pack of 50 each\",1,29.20,1,27.40,6,25.70,20,each,consumable-syringe,50,false,merchant-c,false,A-tack-cloth-1each,\"Tack cloth, 1 each\",0.03,1.95,1,each,consumable-tack-cloth,1,false,chandlery-a,false,B-tack-cloth-1each,\"Tack cloth, 1 each\",0.03,1.90,1,each,consumable-tack-cloth,1,false,chandlery-b,false,B-tack-cloth-10each,\"Tack cloth, pack of 10 each\",0.3,14.85,1,13.95,6,each,consumable-tack-cloth,10,false,chandlery-b,false,C-tack-cloth-10each,\"Tack cloth, pack of 10 each\",0.3,14.20,1,13.35,6,12.50,20,each,consumable-tack-cloth,10,false,merchant-c,false,A-tipping-brush-1each,\"Tipping brush, 75 mm, 1 each\",0.08,11.30,1,10.60,6,each,consumable-tipping-brush,1,false,chandlery-a,false,B-tipping-brush-1each,\"Tipping brush, 75 mm, 1 each\",0.08,10.85,1,10.20,6,each,consumable-tipping-brush,1,false,chandlery-b,false,B-tipping-brush-3each,\"Tipping brush, 75 mm, pack of 3 each\",0.24,28.30,1,26.60,6,each,consumable-tipping-brush,3,false,chandlery-b,false,C-tipping-brush-3each,\"Tipping brush, 75 mm, pack of 3 each\",0.24,26.50,1,24.90,6,23.30,20,each,consumable-tipping-brush,3,false,merchant-c,false,A-vacuum-cleaner-bag-1each,\"Dust bag for an M-class extractor, 1 each\",0.1,5.40,1,5.10,6,each,consumable-vacuum-cleaner-bag,1,false,chandlery-a,false,B-vacuum-cleaner-bag-1each,\"Dust bag for an M-class extractor, 1 each\",0.1,4.85,1,4.55,6,each,consumable-vacuum-cleaner-bag,1,false,chandlery-b,false,B-vacuum-cleaner-bag-5each,\"Dust bag for an M-class extractor, pack of 5 each\",0.5,22.10,1,20.80,6,each,consumable-vacuum-cleaner-bag,5,false,chandlery-b,false,C-vacuum-cleaner-bag-5each,\"Dust bag for an M-class extractor, pack of 5 each\",0.5,18.85,1,17.70,6,16.60,20,each,consumable-vacuum-cleaner-bag,5,false,merchant-c,false,A-vacuum-film-10m2,\"Vacuum bag film, 10 m2\",0.6,20.60,1,19.35,6,m2,consumable-vacuum-film,10,false,chandlery-a,false,B-vacuum-film-10m2,\"Vacuum bag film, 10 m2\",0.6,20.20,1,19.00,6,m2,consumable-vacuum-film,10,false,chandlery-b,false,B-vacuum-film-50m2,\"Vacuum bag film, 50 m2\",3,94.50,1,89.00,4,m2,consumable-vacuum-film,50,false,chandlery-b,false,C-vacuum-film-50m2,\"Vacuum bag film, 50 m2\",3,78.00,1,73.50,4,68.50,12,m2,consumable-vacuum-film,50,false,merchant-c,false,A-vacuum-hose-1each,\"Vacuum hose and fittings, 1 each\",0.5,19.15,1,18.00,6,each,consumable-vacuum-hose,1,false,chandlery-a,false,B-vacuum-hose-1each,\"Vacuum hose and fittings, 1 each\",0.5,19.15,1,18.00,6,each,consumable-vacuum-hose,1,false,chandlery-b,false,A-waste-sack-5each,\"Waste sack, heavy, pack of 5 each\",0.25,4.35,1,4.10,6,each,consumable-waste-sack,5,false,chandlery-a,false,B-waste-sack-5each,\"Waste sack, heavy, pack of 5 each\",0.25,4.30,1,4.05,6,each,consumable-waste-sack,5,false,chandlery-b,false,A-waste-sack-20each,\"Waste sack, heavy, pack of 20 each\",1,14.40,1,13.55,6,each,consumable-waste-sack,20,false,chandlery-a,false,B-waste-sack-20each,\"Waste sack, heavy, pack of 20 each\",1,14.40,1,13.55,6,each,consumable-waste-sack,20,false,chandlery-b,false,B-waste-sack-100each,\"Waste sack, heavy, pack of 100 each\",5,58.50,1,55.00,4,each,consumable-waste-sack,100,false,chandlery-b,false,C-waste-sack-100each,\"Waste sack, heavy, pack of 100 each\",5,55.40,1,52.10,4,48.80,12,each,consumable-waste-sack,100,false,merchant-c,false,A-butyl-tape-5m,\"Butyl tape, 12 x 1.6 mm, roll of 5 m\",0.134,11.00,1,10.30,6,l,consumable-sealant-butyl-tape,0.096,false,chandlery-a,false,A-butyl-tape-15m,\"Butyl tape, 12 x 1.6 mm, roll of 15 m\",0.403,26.30,1,24.75,6,l,consumable-sealant-butyl-tape,0.288,false,chandlery-a,false,B-butyl-tape-5m,\"Butyl tape, 12 x 1.6 mm, roll of 5 m\",0.134,10.65,1,10.00,6,l,consumable-sealant-butyl-tape,0.096,false,chandlery-b,false,B-butyl-tape-15m,\"Butyl tape, 12 x 1.6 mm, roll of 15 m\",0.403,25.55,1,24.00,6,l,consumable-sealant-butyl-tape,0.288,false,chandlery-b,false,A-polysulphide-0.1l,\"Polysulphide sealant, cartridge 0.1 l\",0.13,9.95,1,9.35,6,l,consumable-sealant-polysulphide,0.1,false,chandlery-a,false,12,A-polysulphide-0.3l,\"Polysulphide sealant, cartridge 0.3 l\",0.39,24.65,1,23.15,6,l,consumable-sealant-polysulphide,0.3,false,chandlery-a,false,12,B-polysulphide-0.1l,\"Polysulphide sealant, cartridge 0.1 l\",0.13,9.65,1,9.10,6,l,consumable-sealant-polysulphide,0.1,false,chandlery-b,false,12,B-polysulphide-0.3l,\"Polysulphide sealant, cartridge 0.3 l\",0.39,23.90,1,22.45,6,l,consumable-sealant-polysulphide,0.3,false,chandlery-b,false,12,A-polyurethane-0.1l,\"Polyurethane sealant, cartridge 0.1 l\",0.13,9.95,1,9.35,6,l,consumable-sealant-polyurethane,0.1,false,chandlery-a,false,12,A-polyurethane-0.3l,\"Polyurethane sealant, cartridge 0.3 l\",0.39,19.60,1,18.40,6,l,consumable-sealant-polyurethane,0.3,false,chandlery-a,false,12,B-polyurethane-0.1l,\"Polyurethane sealant, cartridge 0.1 l\",0.13,9.65,1,9.10,6,l,consumable-sealant-polyurethane,0.1,false,chandlery-b,false,12,B-polyurethane-0.3l,\"Polyurethane sealant, cartridge 0.3 l\",0.39,19.00,1,17.85,6,l,consumable-sealant-polyurethane,0.3,false,chandlery-b,false,12,A-deck-caulk-0.31l,\"Deck caulk, black, cartridge 0.31 l\",0.42,17.35,1,l,consumable-deck-caulk,0.31,false,chandlery-a,false,12,A-deck-caulk-0.6l,\"Deck caulk, black, cartridge 0.6 l\",0.81,29.10,1,l,consumable-deck-caulk,0.6,false,chandlery-a,false,12,A-deck-plank-1m2,\"Deck planking, hardwood, 45 x 12 mm, bundle of 1 m2\",8.4,358.40,1,m2,consumable-deck-plank,1,true,chandlery-a,false,B-deck-caulk-0.31l,\"Deck caulk, black, cartridge 0.31 l\",0.42,16.85,1,l,consumable-deck-caulk,0.31,false,chandlery-b,false,12,B-deck-caulk-0.6l,\"Deck caulk, black, cartridge 0.6 l\",0.81,28.25,1,l,consumable-deck-caulk,0.6,false,chandlery-b,false,12,B-deck-plank-1m2,\"Deck planking, hardwood, 45 x 12 mm, bundle of 1 m2\",8.4,347.65,1,m2,consumable-deck-plank,1,true,chandlery-b,false,A-balsa-100-635-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 6.35 mm, plain, 1220 x 610 mm\",0.473,22.90,1,21.50,6,plain,m2,610,1220,core-balsa-100,0.7442,6.35,false,chandlery-a,false,C-balsa-100-635-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 6.35 mm, plain, 1220 x 610 mm\",0.473,20.40,1,19.20,6,17.95,20,plain,m2,610,1220,core-balsa-100,0.7442,6.35,false,merchant-c,false,C-balsa-100-635-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.89,70.50,1,66.50,4,62.00,12,plain,m2,1220,2440,core-balsa-100,2.9768,6.35,true,merchant-c,false,B-balsa-100-635-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.89,74.50,1,70.00,4,plain,m2,1220,2440,core-balsa-100,2.9768,6.35,true,chandlery-b,false,A-balsa-100-635-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 6.35 mm, scored, 1220 x 610 mm\",0.473,29.00,1,27.30,6,scored,m2,610,1220,core-balsa-100,0.7442,6.35,false,chandlery-a,false,C-balsa-100-635-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.89,88.50,1,83.00,4,78.00,12,scored,m2,1220,2440,core-balsa-100,2.9768,6.35,true,merchant-c,false,B-balsa-100-635-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.89,88.00,1,82.50,4,scored,m2,1220,2440,core-balsa-100,2.9768,6.35,true,chandlery-b,false,A-balsa-100-95-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 9.5 mm, plain, 1220 x 610 mm\",0.707,29.60,1,27.80,6,plain,m2,610,1220,core-balsa-100,0.7442,9.5,false,chandlery-a,false,C-balsa-100-95-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 9.5 mm, plain, 1220 x 610 mm\",0.707,25.80,1,24.30,6,22.70,20,plain,m2,610,1220,core-balsa-100,0.7442,9.5,false,merchant-c,false,C-balsa-100-95-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.828,92.50,1,87.00,4,81.50,12,plain,m2,1220,2440,core-balsa-100,2.9768,9.5,true,merchant-c,false,B-balsa-100-95-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.828,94.00,1,88.50,4,plain,m2,1220,2440,core-balsa-100,2.9768,9.5,true,chandlery-b,false,A-balsa-100-95-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 9.5 mm, scored, 1220 x 610 mm\",0.707,34.60,1,32.50,6,scored,m2,610,1220,core-balsa-100,0.7442,9.5,false,chandlery-a,false,C-balsa-100-95-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.828,113.00,1,106.00,4,99.50,12,scored,m2,1220,2440,core-balsa-100,2.9768,9.5,true,merchant-c,false,B-balsa-100-95-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.828,119.50,1,112.50,4,scored,m2,1220,2440,core-balsa-100,2.9768,9.5,true,chandlery-b,false,A-balsa-100-127-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 12.7 mm, plain, 1220 x 610 mm\",0.945,35.90,1,33.70,6,plain,m2,610,1220,core-balsa-100,0.7442,12.7,false,chandlery-a,false,C-balsa-100-127-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 12.7 mm, plain, 1220 x 610 mm\",0.945,31.90,1,30.00,6,28.10,20,plain,m2,610,1220,core-balsa-100,0.7442,12.7,false,merchant-c,false,C-balsa-100-127-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.781,109.00,1,102.50,4,96.00,12,plain,m2,1220,2440,core-balsa-100,2.9768,12.7,true,merchant-c,false,B-balsa-100-127-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.781,115.00,1,108.00,4,plain,m2,1220,2440,core-balsa-100,2.9768,12.7,true,chandlery-b,false,A-balsa-100-127-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 12.7 mm, scored, 1220 x 610 mm\",0.945,45.10,1,42.40,4,scored,m2,610,1220,core-balsa-100,0.7442,12.7,false,chandlery-a,false,C-balsa-100-127-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.781,144.00,1,135.50,4,126.50,12,scored,m2,1220,2440,core-balsa-100,2.9768,12.7,true,merchant-c,false,B-balsa-100-127-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.781,140.50,1,132.00,4,scored,m2,1220,2440,core-balsa-100,2.9768,12.7,true,chandlery-b,false,A-balsa-100-159-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 15.9 mm, plain, 1220 x 610 mm\",1.183,41.40,1,38.90,4,plain,m2,610,1220,core-balsa-100,0.7442,15.9,false,chandlery-a,false,C-balsa-100-159-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 15.9 mm, plain, 1220 x 610 mm\",1.183,36.90,1,34.70,6,32.50,20,plain,m2,610,1220,core-balsa-100,0.7442,15.9,false,merchant-c,false,C-balsa-100-159-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.733,142.00,1,133.50,4,125.00,12,plain,m2,1220,2440,core-balsa-100,2.9768,15.9,true,merchant-c,false,B-balsa-100-159-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.733,150.00,1,141.00,4,plain,m2,1220,2440,core-balsa-100,2.9768,15.9,true,chandlery-b,false,A-balsa-100-159-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 15.9 mm, scored, 1220 x 610 mm\",1.183,51.60,1,48.50,4,scored,m2,610,1220,core-balsa-100,0.7442,15.9,false,chandlery-a,false,C-balsa-100-159-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.733,173.50,1,163.00,4,152.50,12,scored,m2,1220,2440,core-balsa-100,2.9768,15.9,true,merchant-c,false,B-balsa-100-159-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.733,172.50,1,162.00,4,scored,m2,1220,2440,core-balsa-100,2.9768,15.9,true,chandlery-b,false,A-balsa-100-191-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 19.1 mm, plain, 1220 x 610 mm\",8,1.421,52.10,1,49.00,4,plain,m2,610,1220,core-balsa-100,0.7442,19.1,false,chandlery-a,false,C-balsa-100-191-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 19.1 mm, plain, 1220 x 610 mm\",1.421,46.40,1,43.60,4,40.80,12,plain,m2,610,1220,core-balsa-100,0.7442,19.1,false,merchant-c,false,C-balsa-100-191-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,5.686,160.00,1,150.50,4,141.00,12,plain,m2,1220,2440,core-balsa-100,2.9768,19.1,true,merchant-c,false,B-balsa-100-191-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,5.686,172.50,1,162.00,4,plain,m2,1220,2440,core-balsa-100,2.9768,19.1,true,chandlery-b,false,A-balsa-100-191-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 19.1 mm, scored, 1220 x 610 mm\",8,1.421,58.10,1,54.60,4,scored,m2,610,1220,core-balsa-100,0.7442,19.1,false,chandlery-a,false,C-balsa-100-191-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,5.686,203.00,1,191.00,4,178.50,12,scored,m2,1220,2440,core-balsa-100,2.9768,19.1,true,merchant-c,false,B-balsa-100-191-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,5.686,202.50,1,190.50,4,scored,m2,1220,2440,core-balsa-100,2.9768,19.1,true,chandlery-b,false,A-balsa-100-254-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 25.4 mm, plain, 1220 x 610 mm\",8,1.89,66.50,1,62.50,4,plain,m2,610,1220,core-balsa-100,0.7442,25.4,false,chandlery-a,false,C-balsa-100-254-plain-1220x610,\"End-grain balsa core, 100 kg/m3, 25.4 mm, plain, 1220 x 610 mm\",1.89,59.10,1,55.60,4,52.00,12,plain,m2,610,1220,core-balsa-100,0.7442,25.4,false,merchant-c,false,C-balsa-100-254-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,7.561,212.00,1,199.50,4,186.50,12,plain,m2,1220,2440,core-balsa-100,2.9768,25.4,true,merchant-c,false,B-balsa-100-254-plain-2440x1220,\"End-grain balsa core, 100 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,7.561,228.50,1,215.00,4,plain,m2,1220,2440,core-balsa-100,2.9768,25.4,true,chandlery-b,false,A-balsa-100-254-scored-1220x610,\"End-grain balsa core, 100 kg/m3, 25.4 mm, scored, 1220 x 610 mm\",8,1.89,77.00,1,72.50,4,scored,m2,610,1220,core-balsa-100,0.7442,25.4,false,chandlery-a,false,C-balsa-100-254-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,7.561,253.50,1,238.50,4,223.00,12,scored,m2,1220,2440,core-balsa-100,2.9768,25.4,true,merchant-c,false,B-balsa-100-254-scored-2440x1220,\"End-grain balsa core, 100 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,7.561,247.00,1,232.00,4,scored,m2,1220,2440,core-balsa-100,2.9768,25.4,true,chandlery-b,false,A-balsa-150-635-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 1220 x 610 mm\",0.709,24.80,1,23.30,6,plain,m2,610,1220,core-balsa-150,0.7442,6.35,false,chandlery-a,false,C-balsa-150-635-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 1220 x 610 mm\",0.709,22.10,1,20.80,6,19.45,20,plain,m2,610,1220,core-balsa-150,0.7442,6.35,false,merchant-c,false,C-balsa-150-635-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,2.835,76.00,1,71.50,4,67.00,12,plain,m2,1220,2440,core-balsa-150,2.9768,6.35,true,merchant-c,false,B-balsa-150-635-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,2.835,80.50,1,75.50,4,plain,m2,1220,2440,core-balsa-150,2.9768,6.35,true,chandlery-b,false,A-balsa-150-635-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 6.35 mm, scored, 1220 x 610 mm\",0.709,30.90,1,29.00,6,scored,m2,610,1220,core-balsa-150,0.7442,6.35,false,chandlery-a,false,C-balsa-150-635-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,2.835,98.50,1,92.50,4,86.50,12,scored,m2,1220,2440,core-balsa-150,2.9768,6.35,true,merchant-c,false,B-balsa-150-635-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,2.835,98.00,1,92.00,4,scored,m2,1220,2440,core-balsa-150,2.9768,6.35,true,chandlery-b,false,A-balsa-150-95-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 9.5 mm, plain, 1220 x 610 mm\",1.06,34.00,1,32.00,6,plain,m2,610,1220,core-balsa-150,0.7442,9.5,false,chandlery-a,false,C-balsa-150-95-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 9.5 mm, plain, 1220 x 610 mm\",1.06,29.70,1,27.90,6,26.10,20,plain,m2,610,1220,core-balsa-150,0.7442,9.5,false,merchant-c,false,C-balsa-150-95-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,4.242,100.50,1,94.50,4,88.50,12,plain,m2,1220,2440,core-balsa-150,2.9768,9.5,true,merchant-c,false,B-balsa-150-95-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,4.242,116.00,1,109.00,4,plain,m2,1220,2440,core-balsa-150,2.9768,9.5,true,chandlery-b,false,A-balsa-150-95-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 9.5 mm, scored, 1220 x 610 mm\",1.06,37.50,1,35.20,6,scored,m2,610,1220,core-balsa-150,0.7442,9.5,false,chandlery-a,false,C-balsa-150-95-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,4.242,122.50,1,115.00,4,108.00,12,scored,m2,1220,2440,core-balsa-150,2.9768,9.5,true,merchant-c,false,B-balsa-150-95-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,4.242,129.00,1,121.50,4,scored,m2,1220,2440,core-balsa-150,2.9768,9.5,true,chandlery-b,false,A-balsa-150-127-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm\",1.418,38.80,1,36.50,6,plain,m2,610,1220,core-balsa-150,0.7442,12.7,false,chandlery-a,false,C-balsa-150-127-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 1220 x 610 mm\",1.418,34.50,1,32.40,6,30.40,20,plain,m2,610,1220,core-balsa-150,0.7442,12.7,false,merchant-c,false,C-balsa-150-127-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,5.671,131.50,1,123.50,4,115.50,12,plain,m2,1220,2440,core-balsa-150,2.9768,12.7,true,merchant-c,false,B-balsa-150-127-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,5.671,142.00,1,133.50,4,plain,m2,1220,2440,core-balsa-150,2.9768,12.7,true,chandlery-b,false,A-balsa-150-127-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 12.7 mm, scored, 1220 x 610 mm\",1.418,47.80,1,44.90,4,scored,m2,610,1220,core-balsa-150,0.7442,12.7,false,chandlery-a,false,C-balsa-150-127-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,5.671,160.50,1,151.00,4,141.00,12,scored,m2,1220,2440,core-balsa-150,2.9768,12.7,true,merchant-c,false,B-balsa-150-127-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,5.671,160.00,1,150.50,4,scored,m2,1220,2440,core-balsa-150,2.9768,12.7,true,chandlery-b,false,A-balsa-150-159-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 15.9 mm, plain, 1220 x 610 mm\",1.775,45.70,1,43.00,4,plain,m2,610,1220,core-balsa-150,0.7442,15.9,false,chandlery-a,false,C-balsa-150-159-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 15.9 mm, plain, 1220 x 610 mm\",1.775,40.70,1,38.30,4,35.80,12,plain,m2,610,1220,core-balsa-150,0.7442,15.9,false,merchant-c,false,C-balsa-150-159-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,7.1,151.00,1,142.00,4,133.00,12,plain,m2,1220,2440,core-balsa-150,2.9768,15.9,true,merchant-c,false,B-balsa-150-159-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,7.1,162.50,1,153.00,4,plain,m2,1220,2440,core-balsa-150,2.9768,15.9,true,chandlery-b,false,A-balsa-150-159-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 15.9 mm, scored, 1220 x 610 mm\",1.775,62.50,1,58.80,4,scored,m2,610,1220,core-balsa-150,0.7442,15.9,false,chandlery-a,false,C-balsa-150-159-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,7.1,173.00,1,162.50,4,152.00,12,scored,m2,1220,2440,core-balsa-150,2.9768,15.9,true,merchant-c,false,B-balsa-150-159-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,7.1,192.50,1,181.00,4,scored,m2,1220,2440,core-balsa-150,2.9768,15.9,true,chandlery-b,false,A-balsa-150-191-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 19.1 mm, plain, 1220 x 610 mm\",8,2.132,56.40,1,53.00,4,plain,m2,610,1220,core-balsa-150,0.7442,19.1,false,chandlery-a,false,C-balsa-150-191-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 19.1 mm, plain, 1220 x 610 mm\",2.132,50.30,1,47.30,4,44.30,12,plain,m2,610,1220,core-balsa-150,0.7442,19.1,false,merchant-c,false,C-balsa-150-191-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,8.529,173.50,1,163.00,4,152.50,12,plain,m2,1220,2440,core-balsa-150,2.9768,19.1,true,merchant-c,false,B-balsa-150-191-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,8.529,183.00,1,172.00,4,plain,m2,1220,2440,core-balsa-150,2.9768,19.1,true,chandlery-b,false,A-balsa-150-191-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 19.1 mm, scored, 1220 x 610 mm\",8,2.132,71.50,1,67.00,4,scored,m2,610,1220,core-balsa-150,0.7442,19.1,false,chandlery-a,false,C-balsa-150-191-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,8.529,203.00,1,191.00,4,178.50,12,scored,m2,1220,2440,core-balsa-150,2.9768,19.1,true,merchant-c,false,B-balsa-150-191-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,8.529,225.50,1,212.00,4,scored,m2,1220,2440,core-balsa-150,2.9768,19.1,true,chandlery-b,false,A-balsa-150-254-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 25.4 mm, plain, 1220 x 610 mm\",8,2.835,72.00,1,67.50,4,plain,m2,610,1220,core-balsa-150,0.7442,25.4,false,chandlery-a,false,C-balsa-150-254-plain-1220x610,\"End-grain balsa core, 150 kg/m3, 25.4 mm, plain, 1220 x 610 mm\",2.835,64.00,1,60.00,4,56.30,12,plain,m2,610,1220,core-balsa-150,0.7442,25.4,false,merchant-c,false,C-balsa-150-254-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,11.342,229.50,1,215.50,4,202.00,12,plain,m2,1220,2440,core-balsa-150,2.9768,25.4,true,merchant-c,false,B-balsa-150-254-plain-2440x1220,\"End-grain balsa core, 150 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,11.342,247.50,1,232.50,4,plain,m2,1220,2440,core-balsa-150,2.9768,25.4,true,chandlery-b,false,A-balsa-150-254-scored-1220x610,\"End-grain balsa core, 150 kg/m3, 25.4 mm, scored, 1220 x 610 mm\",8,2.835,83.50,1,78.50,4,scored,m2,610,1220,core-balsa-150,0.7442,25.4,false,chandlery-a,false,C-balsa-150-254-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,11.342,283.00,1,266.00,4,249.00,12,scored,m2,1220,2440,core-balsa-150,2.9768,25.4,true,merchant-c,false,B-balsa-150-254-scored-2440x1220,\"End-grain balsa core, 150 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,11.342,281.50,1,264.50,4,scored,m2,1220,2440,core-balsa-150,2.9768,25.4,true,chandlery-b,false,A-cross-linked-foam-100-635-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.452,32.70,1,30.70,6,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,6.35,false,chandlery-a,false,C-cross-linked-foam-100-635-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.452,31.20,1,29.30,6,27.50,20,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,6.35,false,merchant-c,false,C-cross-linked-foam-100-635-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.89,106.50,1,100.00,4,93.50,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,6.35,true,merchant-c,false,B-cross-linked-foam-100-635-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.89,116.00,1,109.00,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,6.35,true,chandlery-b,false,A-cross-linked-foam-100-635-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, scored, 1220 x 584 mm\",0.452,39.90,1,37.50,6,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,6.35,false,chandlery-a,false,C-cross-linked-foam-100-635-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.89,130.00,1,122.00,4,114.50,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,6.35,true,merchant-c,false,B-cross-linked-foam-100-635-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.89,138.50,1,130.00,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,6.35,true,chandlery-b,false,A-cross-linked-foam-100-95-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.677,43.10,1,40.50,4,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,9.5,false,chandlery-a,false,C-cross-linked-foam-100-95-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.677,38.40,1,36.10,6,33.80,20,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,9.5,false,merchant-c,false,C-cross-linked-foam-100-95-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.828,146.00,1,137.00,4,128.50,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,9.5,true,merchant-c,false,B-cross-linked-foam-100-95-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.828,151.50,1,142.50,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,9.5,true,chandlery-b,false,A-cross-linked-foam-100-95-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, scored, 1220 x 584 mm\",0.677,55.20,1,51.90,4,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,9.5,false,chandlery-a,false,C-cross-linked-foam-100-95-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.828,171.00,1,160.50,4,150.50,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,9.5,true,merchant-c,false,B-cross-linked-foam-100-95-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.828,186.50,1,175.50,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,9.5,true,chandlery-b,false,A-cross-linked-foam-100-127-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.905,57.10,1,53.70,4,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,12.7,false,chandlery-a,false,C-cross-linked-foam-100-127-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.905,48.90,1,46.00,4,43.00,12,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,12.7,false,merchant-c,false,C-cross-linked-foam-100-127-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.781,188.00,1,176.50,4,165.50,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,12.7,true,merchant-c,false,B-cross-linked-foam-100-127-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.781,204.50,1,192.00,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,12.7,true,chandlery-b,false,A-cross-linked-foam-100-127-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, scored, 1220 x 584 mm\",0.905,69.00,1,65.00,4,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,12.7,false,chandlery-a,false,C-cross-linked-foam-100-127-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.781,212.00,1,199.50,4,186.50,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,12.7,true,merchant-c,false,B-cross-linked-foam-100-127-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.781,226.00,1,212.50,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,12.7,true,chandlery-b,false,A-cross-linked-foam-100-159-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",1.133,67.50,1,63.50,4,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,15.9,false,chandlery-a,false,C-cross-linked-foam-100-159-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",1.133,57.70,1,54.20,4,50.80,12,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,15.9,false,merchant-c,false,C-cross-linked-foam-100-159-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.733,215.50,1,202.50,4,189.50,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,15.9,true,merchant-c,false,B-cross-linked-foam-100-159-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.733,234.50,1,220.50,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,15.9,true,chandlery-b,false,A-cross-linked-foam-100-159-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, scored, 1220 x 584 mm\",1.133,80.50,1,75.50,4,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,15.9,false,chandlery-a,false,C-cross-linked-foam-100-159-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.733,255.00,1,239.50,4,224.50,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,15.9,true,merchant-c,false,B-cross-linked-foam-100-159-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.733,277.50,1,261.00,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,15.9,true,chandlery-b,false,A-cross-linked-foam-100-191-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",8,1.361,74.50,1,70.00,4,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,19.1,false,chandlery-a,false,C-cross-linked-foam-100-191-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",1.361,71.00,1,66.50,4,62.50,12,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,19.1,false,merchant-c,false,C-cross-linked-foam-100-191-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,5.686,242.50,1,228.00,4,213.50,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,19.1,true,merchant-c,false,B-cross-linked-foam-100-191-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,5.686,269.50,1,253.50,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,19.1,true,chandlery-b,false,A-cross-linked-foam-100-191-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, scored, 1220 x 584 mm\",8,1.361,91.00,1,85.50,4,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,19.1,false,chandlery-a,false,C-cross-linked-foam-100-191-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,5.686,299.00,1,281.00,4,263.00,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,19.1,true,merchant-c,false,B-cross-linked-foam-100-191-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,5.686,319.00,1,300.00,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,19.1,true,chandlery-b,false,A-cross-linked-foam-100-254-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",8,1.81,95.00,1,89.50,4,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,25.4,false,chandlery-a,false,C-cross-linked-foam-100-254-plain-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",1.81,90.50,1,85.00,4,79.50,12,plain,m2,584,1220,core-cross-linked-foam-100,0.7125,25.4,false,merchant-c,false,C-cross-linked-foam-100-254-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,7.561,321.50,1,302.00,4,283.00,12,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,25.4,true,merchant-c,false,B-cross-linked-foam-100-254-plain-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,7.561,356.50,1,335.00,4,plain,m2,1220,2440,core-cross-linked-foam-100,2.9768,25.4,true,chandlery-b,false,A-cross-linked-foam-100-254-scored-1220x584,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, scored, 1220 x 584 mm\",8,1.81,120.50,1,113.50,4,scored,m2,584,1220,core-cross-linked-foam-100,0.7125,25.4,false,chandlery-a,false,C-cross-linked-foam-100-254-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,7.561,373.00,1,350.50,4,328.00,12,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,25.4,true,merchant-c,false,B-cross-linked-foam-100-254-scored-2440x1220,\"Cross-linked structural foam core, 100 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,7.561,398.00,1,374.00,4,scored,m2,1220,2440,core-cross-linked-foam-100,2.9768,25.4,true,chandlery-b,false,A-cross-linked-foam-200-635-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 6.35 mm, plain, 1220 x 584 mm\",0.905,56.80,1,53.40,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,6.35,false,chandlery-a,false,C-cross-linked-foam-200-635-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 6.35 mm, plain, 1220 x 584 mm\",0.905,55.40,1,52.10,4,48.80,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,6.35,false,merchant-c,false,C-cross-linked-foam-200-635-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 6.35 mm, plain, 2440 x 1220 mm\",9.00,3.781,193.00,1,181.50,4,170.00,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,6.35,true,merchant-c,false,B-cross-linked-foam-200-635-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 6.35 mm, plain, 2440 x 1220 mm\",9.00,3.781,210.00,1,197.50,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,6.35,true,chandlery-b,false,A-cross-linked-foam-200-95-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 9.5 mm, plain, 1220 x 584 mm\",1.354,77.00,1,72.50,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,9.5,false,chandlery-a,false,C-cross-linked-foam-200-95-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 9.5 mm, plain, 1220 x 584 mm\",1.354,69.00,1,65.00,4,60.50,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,9.5,false,merchant-c,false,C-cross-linked-foam-200-95-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 9.5 mm, plain, 2440 x 1220 mm\",9.00,5.656,254.00,1,239.00,4,223.50,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,9.5,true,merchant-c,false,B-cross-linked-foam-200-95-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 9.5 mm, plain, 2440 x 1220 mm\",9.00,5.656,263.00,1,247.00,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,9.5,true,chandlery-b,false,A-cross-linked-foam-200-127-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 12.7 mm, plain, 1220 x 584 mm\",1.81,99.50,1,93.50,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,12.7,false,chandlery-a,false,C-cross-linked-foam-200-127-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 12.7 mm, plain, 1220 x 584 mm\",1.81,85.00,1,80.00,4,75.00,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,12.7,false,merchant-c,false,C-cross-linked-foam-200-127-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 12.7 mm, plain, 2440 x 1220 mm\",9.00,7.561,333.00,1,313.00,4,293.00,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,12.7,true,merchant-c,false,B-cross-linked-foam-200-127-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 12.7 mm, plain, 2440 x 1220 mm\",9.00,7.561,325.00,1,305.50,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,12.7,true,chandlery-b,false,A-cross-linked-foam-200-159-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 15.9 mm, plain, 1220 x 584 mm\",2.266,117.00,1,110.00,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,15.9,false,chandlery-a,false,C-cross-linked-foam-200-159-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 15.9 mm, plain, 1220 x 584 mm\",2.266,100.50,1,94.50,4,88.50,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,15.9,false,merchant-c,false,C-cross-linked-foam-200-159-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 15.9 mm, plain, 2440 x 1220 mm\",9.00,9.466,389.50,1,366.00,4,343.00,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,15.9,true,merchant-c,false,B-cross-linked-foam-200-159-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 15.9 mm, plain, 2440 x 1220 mm\",9.00,9.466,424.00,1,398.50,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,15.9,true,chandlery-b,false,A-cross-linked-foam-200-191-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 19.1 mm, plain, 1220 x 584 mm\",8,2.722,129.50,1,121.50,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,19.1,false,chandlery-a,false,C-cross-linked-foam-200-191-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 19.1 mm, plain, 1220 x 584 mm\",2.722,123.50,1,116.00,4,108.50,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,19.1,false,merchant-c,false,C-cross-linked-foam-200-191-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 19.1 mm, plain, 2440 x 1220 mm\",9.00,11.371,439.00,1,412.50,4,386.50,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,19.1,true,merchant-c,false,B-cross-linked-foam-200-191-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 19.1 mm, plain, 2440 x 1220 mm\",9.00,11.371,487.50,1,458.00,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,19.1,true,chandlery-b,false,A-cross-linked-foam-200-254-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 25.4 mm, plain, 1220 x 584 mm\",8,3.619,164.50,1,154.50,4,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,25.4,false,chandlery-a,false,C-cross-linked-foam-200-254-plain-1220x584,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 25.4 mm, plain, 1220 x 584 mm\",3.619,160.50,1,151.00,4,141.00,12,plain,m2,584,1220,core-cross-linked-foam-200,0.7125,25.4,false,merchant-c,false,C-cross-linked-foam-200-254-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 25.4 mm, plain, 2440 x 1220 mm\",9.00,15.122,581.00,1,546.00,4,511.50,12,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,25.4,true,merchant-c,false,B-cross-linked-foam-200-254-plain-2440x1220,\"Cross-linked structural foam core, 200 kg/m3, for inserts under fittings, 25.4 mm, plain, 2440 x 1220 mm\",9.00,15.122,566.50,1,532.50,4,plain,m2,1220,2440,core-cross-linked-foam-200,2.9768,25.4,true,chandlery-b,false,A-cross-linked-foam-80-635-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.362,31.10,1,29.20,6,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,6.35,false,chandlery-a,false,C-cross-linked-foam-80-635-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.362,27.70,1,26.00,6,24.40,20,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,6.35,false,merchant-c,false,C-cross-linked-foam-80-635-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.512,100.50,1,94.50,4,88.50,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,6.35,true,merchant-c,false,B-cross-linked-foam-80-635-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.512,104.00,1,98.00,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,6.35,true,chandlery-b,false,A-cross-linked-foam-80-635-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, scored, 1220 x 584 mm\",0.362,37.90,1,35.60,6,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,6.35,false,chandlery-a,false,C-cross-linked-foam-80-635-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.512,115.50,1,108.50,4,101.50,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,6.35,true,merchant-c,false,B-cross-linked-foam-80-635-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.512,125.50,1,118.00,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,6.35,true,chandlery-b,false,A-cross-linked-foam-80-95-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.541,38.20,1,35.90,6,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,9.5,false,chandlery-a,false,C-cross-linked-foam-80-95-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.541,33.00,1,31.00,6,29.00,20,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,9.5,false,merchant-c,false,C-cross-linked-foam-80-95-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.262,129.50,1,121.50,4,114.00,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,9.5,true,merchant-c,false,B-cross-linked-foam-80-95-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.262,131.50,1,123.50,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,9.5,true,chandlery-b,false,A-cross-linked-foam-80-95-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, scored, 1220 x 584 mm\",0.541,47.10,1,44.30,4,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,9.5,false,chandlery-a,false,C-cross-linked-foam-80-95-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.262,161.00,1,151.50,4,141.50,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,9.5,true,merchant-c,false,B-cross-linked-foam-80-95-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.262,167.00,1,157.00,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,9.5,true,chandlery-b,false,A-cross-linked-foam-80-127-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.724,48.70,1,45.80,4,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,12.7,false,chandlery-a,false,C-cross-linked-foam-80-127-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.724,43.40,1,40.80,4,38.20,12,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,12.7,false,merchant-c,false,C-cross-linked-foam-80-127-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.024,152.50,1,143.50,4,134.00,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,12.7,true,merchant-c,false,B-cross-linked-foam-80-127-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.024,161.00,1,151.50,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,12.7,true,chandlery-b,false,A-cross-linked-foam-80-127-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, scored, 1220 x 584 mm\",0.724,58.80,1,55.30,4,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,12.7,false,chandlery-a,false,C-cross-linked-foam-80-127-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.024,188.00,1,176.50,4,165.50,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,12.7,true,merchant-c,false,B-cross-linked-foam-80-127-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.024,204.50,1,192.00,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,12.7,true,chandlery-b,false,A-cross-linked-foam-80-159-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.906,56.30,1,52.90,4,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,15.9,false,chandlery-a,false,C-cross-linked-foam-80-159-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.906,50.20,1,47.20,4,44.20,12,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,15.9,false,merchant-c,false,C-cross-linked-foam-80-159-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,3.786,178.00,1,167.50,4,156.50,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,15.9,true,merchant-c,false,B-cross-linked-foam-80-159-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,3.786,210.00,1,197.50,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,15.9,true,chandlery-b,false,A-cross-linked-foam-80-159-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, scored, 1220 x 584 mm\",0.906,67.50,1,63.50,4,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,15.9,false,chandlery-a,false,C-cross-linked-foam-80-159-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,3.786,226.00,1,212.50,4,199.00,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,15.9,true,merchant-c,false,B-cross-linked-foam-80-159-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,3.786,251.00,1,236.00,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,15.9,true,chandlery-b,false,A-cross-linked-foam-80-191-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",8,1.089,70.50,1,66.50,4,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,19.1,false,chandlery-a,false,C-cross-linked-foam-80-191-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",1.089,63.00,1,59.20,4,55.40,12,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,19.1,false,merchant-c,false,C-cross-linked-foam-80-191-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.549,228.50,1,215.00,4,201.00,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,19.1,true,merchant-c,false,B-cross-linked-foam-80-191-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.549,236.50,1,222.50,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,19.1,true,chandlery-b,false,A-cross-linked-foam-80-191-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, scored, 1220 x 584 mm\",8,1.089,77.50,1,73.00,4,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,19.1,false,chandlery-a,false,C-cross-linked-foam-80-191-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.549,265.00,1,249.00,4,233.00,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,19.1,true,merchant-c,false,B-cross-linked-foam-80-191-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.549,288.50,1,271.00,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,19.1,true,chandlery-b,false,A-cross-linked-foam-80-254-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",8,1.448,90.00,1,84.50,4,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,25.4,false,chandlery-a,false,C-cross-linked-foam-80-254-plain-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",1.448,80.00,1,75.00,4,70.50,12,plain,m2,584,1220,core-cross-linked-foam-80,0.7125,25.4,false,merchant-c,false,C-cross-linked-foam-80-254-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.049,265.50,1,249.50,4,233.50,12,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,25.4,true,merchant-c,false,B-cross-linked-foam-80-254-plain-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.049,313.00,1,294.00,4,plain,m2,1220,2440,core-cross-linked-foam-80,2.9768,25.4,true,chandlery-b,false,A-cross-linked-foam-80-254-scored-1220x584,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, scored, 1220 x 584 mm\",8,1.448,102.50,1,96.50,4,scored,m2,584,1220,core-cross-linked-foam-80,0.7125,25.4,false,chandlery-a,false,C-cross-linked-foam-80-254-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.049,331.00,1,311.00,4,291.50,12,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,25.4,true,merchant-c,false,B-cross-linked-foam-80-254-scored-2440x1220,\"Cross-linked structural foam core, 80 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.049,360.00,1,338.50,4,scored,m2,1220,2440,core-cross-linked-foam-80,2.9768,25.4,true,chandlery-b,false,A-linear-foam-80-635-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.362,32.40,1,30.50,6,plain,m2,584,1220,core-linear-foam-80,0.7125,6.35,false,chandlery-a,false,C-linear-foam-80-635-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.362,28.00,1,26.30,6,24.60,20,plain,m2,584,1220,core-linear-foam-80,0.7125,6.35,false,merchant-c,false,C-linear-foam-80-635-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.512,102.50,1,96.50,4,90.00,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,6.35,true,merchant-c,false,B-linear-foam-80-635-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.512,107.00,1,100.50,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,6.35,true,chandlery-b,false,A-linear-foam-80-635-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, scored, 1220 x 584 mm\",0.362,38.70,1,36.40,6,scored,m2,584,1220,core-linear-foam-80,0.7125,6.35,false,chandlery-a,false,C-linear-foam-80-635-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.512,127.50,1,120.00,4,112.00,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,6.35,true,merchant-c,false,B-linear-foam-80-635-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.512,130.50,1,122.50,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,6.35,true,chandlery-b,false,A-linear-foam-80-95-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.541,43.90,1,41.30,4,plain,m2,584,1220,core-linear-foam-80,0.7125,9.5,false,chandlery-a,false,C-linear-foam-80-95-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.541,38.00,1,35.70,6,33.40,20,plain,m2,584,1220,core-linear-foam-80,0.7125,9.5,false,merchant-c,false,C-linear-foam-80-95-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.262,131.00,1,123.00,4,115.50,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,9.5,true,merchant-c,false,B-linear-foam-80-95-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.262,144.00,1,135.50,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,9.5,true,chandlery-b,false,A-linear-foam-80-95-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, scored, 1220 x 584 mm\",0.541,48.90,1,46.00,4,scored,m2,584,1220,core-linear-foam-80,0.7125,9.5,false,chandlery-a,false,C-linear-foam-80-95-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.262,164.50,1,154.50,4,145.00,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,9.5,true,merchant-c,false,B-linear-foam-80-95-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.262,172.00,1,161.50,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,9.5,true,chandlery-b,false,A-linear-foam-80-127-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.724,50.70,1,47.70,4,plain,m2,584,1220,core-linear-foam-80,0.7125,12.7,false,chandlery-a,false,C-linear-foam-80-127-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.724,49.80,1,46.80,4,43.80,12,plain,m2,584,1220,core-linear-foam-80,0.7125,12.7,false,merchant-c,false,C-linear-foam-80-127-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.024,180.50,1,169.50,4,159.00,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,12.7,true,merchant-c,false,B-linear-foam-80-127-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.024,185.50,1,174.50,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,12.7,true,chandlery-b,false,A-linear-foam-80-127-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, scored, 1220 x 584 mm\",0.724,59.90,1,56.30,4,scored,m2,584,1220,core-linear-foam-80,0.7125,12.7,false,chandlery-a,false,C-linear-foam-80-127-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.024,203.50,1,191.50,4,179.00,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,12.7,true,merchant-c,false,B-linear-foam-80-127-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.024,212.50,1,200.00,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,12.7,true,chandlery-b,false,A-linear-foam-80-159-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.906,59.80,1,56.20,4,plain,m2,584,1220,core-linear-foam-80,0.7125,15.9,false,chandlery-a,false,C-linear-foam-80-159-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.906,58.80,1,55.30,4,51.70,12,plain,m2,584,1220,core-linear-foam-80,0.7125,15.9,false,merchant-c,false,C-linear-foam-80-159-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,3.786,207.00,1,194.50,4,182.00,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,15.9,true,merchant-c,false,B-linear-foam-80-159-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,3.786,212.00,1,199.50,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,15.9,true,chandlery-b,false,A-linear-foam-80-159-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, scored, 1220 x 584 mm\",0.906,78.00,1,73.50,4,scored,m2,584,1220,core-linear-foam-80,0.7125,15.9,false,chandlery-a,false,C-linear-foam-80-159-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,3.786,250.00,1,235.00,4,220.00,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,15.9,true,merchant-c,false,B-linear-foam-80-159-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,3.786,261.50,1,246.00,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,15.9,true,chandlery-b,false,A-linear-foam-80-191-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",8,1.089,73.50,1,69.00,4,plain,m2,584,1220,core-linear-foam-80,0.7125,19.1,false,chandlery-a,false,C-linear-foam-80-191-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",1.089,63.50,1,59.70,4,55.90,12,plain,m2,584,1220,core-linear-foam-80,0.7125,19.1,false,merchant-c,false,C-linear-foam-80-191-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.549,238.00,1,223.50,4,209.50,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,19.1,true,merchant-c,false,B-linear-foam-80-191-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.549,243.50,1,229.00,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,19.1,true,chandlery-b,false,A-linear-foam-80-191-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, scored, 1220 x 584 mm\",8,1.089,90.00,1,84.50,4,scored,m2,584,1220,core-linear-foam-80,0.7125,19.1,false,chandlery-a,false,C-linear-foam-80-191-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.549,293.00,1,275.50,4,258.00,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,19.1,true,merchant-c,false,B-linear-foam-80-191-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.549,300.50,1,282.50,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,19.1,true,chandlery-b,false,A-linear-foam-80-254-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",8,1.448,94.00,1,88.50,4,plain,m2,584,1220,core-linear-foam-80,0.7125,25.4,false,chandlery-a,false,C-linear-foam-80-254-plain-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",1.448,81.00,1,76.00,4,71.50,12,plain,m2,584,1220,core-linear-foam-80,0.7125,25.4,false,merchant-c,false,C-linear-foam-80-254-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.049,314.50,1,295.50,4,277.00,12,plain,m2,1220,2440,core-linear-foam-80,2.9768,25.4,true,merchant-c,false,B-linear-foam-80-254-plain-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.049,323.00,1,303.50,4,plain,m2,1220,2440,core-linear-foam-80,2.9768,25.4,true,chandlery-b,false,A-linear-foam-80-254-scored-1220x584,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, scored, 1220 x 584 mm\",8,1.448,119.00,1,112.00,4,scored,m2,584,1220,core-linear-foam-80,0.7125,25.4,false,chandlery-a,false,C-linear-foam-80-254-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.049,365.50,1,343.50,4,321.50,12,scored,m2,1220,2440,core-linear-foam-80,2.9768,25.4,true,merchant-c,false,B-linear-foam-80-254-scored-2440x1220,\"Linear (non-cross-linked) foam core, 80 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.049,374.50,1,352.00,4,scored,m2,1220,2440,core-linear-foam-80,2.9768,25.4,true,chandlery-b,false,C-marine-plywood-450-6-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 2440 x 1220 mm\",9.00,8.037,47.20,1,44.40,4,41.50,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,6,true,merchant-c,false,B-marine-plywood-450-6-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 2440 x 1220 mm\",9.00,8.037,56.20,1,52.80,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,6,true,chandlery-b,false,C-marine-plywood-450-6-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 2500 x 1220 mm\",9.00,8.235,51.80,1,48.70,4,45.60,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,6,true,merchant-c,false,B-marine-plywood-450-6-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 2500 x 1220 mm\",9.00,8.235,54.20,1,50.90,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,6,true,chandlery-b,false,C-marine-plywood-450-6-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 3100 x 1530 mm\",9.00,12.806,78.50,1,74.00,4,69.00,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,6,true,merchant-c,false,B-marine-plywood-450-6-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 3100 x 1530 mm\",9.00,12.806,80.50,1,75.50,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,6,true,chandlery-b,false,B-marine-plywood-450-6-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 1220 x 1220 mm\",4.50,4.019,29.00,1,27.30,6,plain,m2,1220,1220,core-marine-plywood-450,1.4884,6,false,chandlery-b,false,B-marine-plywood-450-6-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 6 mm, plain, 1220 x 610 mm\",4.50,2.009,16.30,1,15.30,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,6,false,chandlery-b,false,C-marine-plywood-450-9-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 2440 x 1220 mm\",9.00,12.056,62.00,1,58.30,4,54.60,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,9,true,merchant-c,false,B-marine-plywood-450-9-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 2440 x 1220 mm\",9.00,12.056,74.00,1,69.50,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,9,true,chandlery-b,false,C-marine-plywood-450-9-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 2500 x 1220 mm\",9.00,12.352,68.00,1,64.00,4,59.80,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,9,true,merchant-c,false,B-marine-plywood-450-9-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 2500 x 1220 mm\",9.00,12.352,69.50,1,65.50,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,9,true,chandlery-b,false,C-marine-plywood-450-9-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 3100 x 1530 mm\",9.00,19.209,101.00,1,95.00,4,89.00,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,9,true,merchant-c,false,B-marine-plywood-450-9-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 3100 x 1530 mm\",9.00,19.209,106.00,1,99.50,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,9,true,chandlery-b,false,B-marine-plywood-450-9-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 1220 x 1220 mm\",4.50,6.028,38.00,1,35.70,6,plain,m2,1220,1220,core-marine-plywood-450,1.4884,9,false,chandlery-b,false,B-marine-plywood-450-9-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 9 mm, plain, 1220 x 610 mm\",4.50,3.014,20.60,1,19.35,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,9,false,chandlery-b,false,C-marine-plywood-450-12-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 2440 x 1220 mm\",9.00,16.075,79.50,1,74.50,4,70.00,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,12,true,merchant-c,false,B-marine-plywood-450-12-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 2440 x 1220 mm\",9.00,16.075,91.00,1,85.50,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,12,true,chandlery-b,false,C-marine-plywood-450-12-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 2500 x 1220 mm\",9.00,16.47,76.50,1,72.00,4,67.50,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,12,true,merchant-c,false,B-marine-plywood-450-12-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 2500 x 1220 mm\",9.00,16.47,86.00,1,81.00,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,12,true,chandlery-b,false,C-marine-plywood-450-12-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 3100 x 1530 mm\",9.00,25.612,113.50,1,106.50,4,100.00,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,12,true,merchant-c,false,B-marine-plywood-450-12-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 3100 x 1530 mm\",9.00,25.612,130.50,1,122.50,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,12,true,chandlery-b,false,B-marine-plywood-450-12-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 1220 x 1220 mm\",4.50,8.037,45.90,1,43.10,4,plain,m2,1220,1220,core-marine-plywood-450,1.4884,12,false,chandlery-b,false,B-marine-plywood-450-12-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 12 mm, plain, 1220 x 610 mm\",4.50,4.019,25.80,1,24.30,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,12,false,chandlery-b,false,C-marine-plywood-450-15-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 2440 x 1220 mm\",9.00,20.093,95.50,1,90.00,4,84.00,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,15,true,merchant-c,false,B-marine-plywood-450-15-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 2440 x 1220 mm\",9.00,20.093,107.00,1,100.50,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,15,true,chandlery-b,false,C-marine-plywood-450-15-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 2500 x 1220 mm\",9.00,20.587,102.00,1,96.00,4,90.00,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,15,true,merchant-c,false,B-marine-plywood-450-15-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 2500 x 1220 mm\",9.00,20.587,103.00,1,97.00,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,15,true,chandlery-b,false,C-marine-plywood-450-15-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 3100 x 1530 mm\",9.00,32.015,136.50,1,128.50,4,120.00,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,15,true,merchant-c,false,B-marine-plywood-450-15-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 3100 x 1530 mm\",9.00,32.015,156.00,1,146.50,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,15,true,chandlery-b,false,B-marine-plywood-450-15-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 1220 x 1220 mm\",4.50,10.047,55.10,1,51.80,4,plain,m2,1220,1220,core-marine-plywood-450,1.4884,15,false,chandlery-b,false,B-marine-plywood-450-15-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 15 mm, plain, 1220 x 610 mm\",4.50,5.023,29.80,1,28.00,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,15,false,chandlery-b,false,C-marine-plywood-450-16-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 2440 x 1220 mm\",9.00,21.433,99.50,1,93.50,4,87.50,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,16,true,merchant-c,false,B-marine-plywood-450-16-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 2440 x 1220 mm\",9.00,21.433,113.50,1,106.50,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,16,true,chandlery-b,false,C-marine-plywood-450-16-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 2500 x 1220 mm\",9.00,21.96,95.50,1,90.00,4,84.00,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,16,true,merchant-c,false,B-marine-plywood-450-16-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 2500 x 1220 mm\",9.00,21.96,107.00,1,100.50,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,16,true,chandlery-b,false,C-marine-plywood-450-16-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 3100 x 1530 mm\",9.00,34.15,145.00,1,136.50,4,127.50,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,16,true,merchant-c,false,B-marine-plywood-450-16-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 3100 x 1530 mm\",9.00,34.15,163.00,1,153.00,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,16,true,chandlery-b,false,B-marine-plywood-450-16-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 1220 x 1220 mm\",4.50,10.716,58.50,1,55.00,4,plain,m2,1220,1220,core-marine-plywood-450,1.4884,16,false,chandlery-b,false,B-marine-plywood-450-16-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 16 mm, plain, 1220 x 610 mm\",4.50,5.358,31.10,1,29.20,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,16,false,chandlery-b,false,C-marine-plywood-450-18-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 2440 x 1220 mm\",9.00,24.112,109.50,1,103.00,4,96.50,12,plain,m2,1220,2440,core-marine-plywood-450,2.9768,18,true,merchant-c,false,B-marine-plywood-450-18-plain-2440x1220,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 2440 x 1220 mm\",9.00,24.112,125.00,1,117.50,4,plain,m2,1220,2440,core-marine-plywood-450,2.9768,18,true,chandlery-b,false,C-marine-plywood-450-18-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 2500 x 1220 mm\",9.00,24.705,105.00,1,98.50,4,92.50,12,plain,m2,1220,2500,core-marine-plywood-450,3.05,18,true,merchant-c,false,B-marine-plywood-450-18-plain-2500x1220,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 2500 x 1220 mm\",9.00,24.705,120.50,1,113.50,4,plain,m2,1220,2500,core-marine-plywood-450,3.05,18,true,chandlery-b,false,C-marine-plywood-450-18-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 3100 x 1530 mm\",9.00,38.418,159.50,1,150.00,4,140.50,12,plain,m2,1530,3100,core-marine-plywood-450,4.743,18,true,merchant-c,false,B-marine-plywood-450-18-plain-3100x1530,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 3100 x 1530 mm\",9.00,38.418,179.00,1,168.50,4,plain,m2,1530,3100,core-marine-plywood-450,4.743,18,true,chandlery-b,false,B-marine-plywood-450-18-plain-1220x1220,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 1220 x 1220 mm\",4.50,12.056,64.50,1,60.50,4,plain,m2,1220,1220,core-marine-plywood-450,1.4884,18,false,chandlery-b,false,B-marine-plywood-450-18-plain-1220x610,\"Marine plywood, light grade, 450 kg/m3, 18 mm, plain, 1220 x 610 mm\",4.50,6.028,33.50,1,31.50,6,plain,m2,610,1220,core-marine-plywood-450,0.7442,18,false,chandlery-b,false,C-marine-plywood-550-6-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 2440 x 1220 mm\",9.00,9.823,64.50,1,60.50,4,56.80,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,6,true,merchant-c,false,B-marine-plywood-550-6-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 2440 x 1220 mm\",9.00,9.823,66.00,1,62.00,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,6,true,chandlery-b,false,C-marine-plywood-550-6-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 2500 x 1220 mm\",9.00,10.065,69.50,1,65.50,4,61.00,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,6,true,merchant-c,false,B-marine-plywood-550-6-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 2500 x 1220 mm\",9.00,10.065,72.50,1,68.00,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,6,true,chandlery-b,false,C-marine-plywood-550-6-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 3100 x 1530 mm\",9.00,15.652,105.50,1,99.00,4,93.00,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,6,true,merchant-c,false,B-marine-plywood-550-6-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 3100 x 1530 mm\",9.00,15.652,110.50,1,104.00,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,6,true,chandlery-b,false,B-marine-plywood-550-6-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 1220 x 1220 mm\",4.50,4.912,38.90,1,36.60,6,plain,m2,1220,1220,core-marine-plywood-550,1.4884,6,false,chandlery-b,false,B-marine-plywood-550-6-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 6 mm, plain, 1220 x 610 mm\",4.50,2.456,21.20,1,19.95,6,plain,m2,610,1220,core-marine-plywood-550,0.7442,6,false,chandlery-b,false,C-marine-plywood-550-9-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 2440 x 1220 mm\",9.00,14.735,83.50,1,78.50,4,73.50,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,9,true,merchant-c,false,B-marine-plywood-550-9-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 2440 x 1220 mm\",9.00,14.735,87.00,1,82.00,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,9,true,chandlery-b,false,C-marine-plywood-550-9-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 2500 x 1220 mm\",9.00,15.098,91.00,1,85.50,4,80.00,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,9,true,merchant-c,false,B-marine-plywood-550-9-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 2500 x 1220 mm\",9.00,15.098,95.50,1,90.00,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,9,true,chandlery-b,false,C-marine-plywood-550-9-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 3100 x 1530 mm\",9.00,23.478,135.50,1,127.50,4,119.00,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,9,true,merchant-c,false,B-marine-plywood-550-9-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 3100 x 1530 mm\",9.00,23.478,142.00,1,133.50,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,9,true,chandlery-b,false,B-marine-plywood-550-9-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 1220 x 1220 mm\",4.50,7.368,51.00,1,47.90,4,plain,m2,1220,1220,core-marine-plywood-550,1.4884,9,false,chandlery-b,false,B-marine-plywood-550-9-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 9 mm, plain, 1220 x 610 mm\",4.50,3.684,27.30,1,25.70,6,plain,m2,610,1220,core-marine-plywood-550,0.7442,9,false,chandlery-b,false,C-marine-plywood-550-12-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 2440 x 1220 mm\",9.00,19.647,103.50,1,97.50,4,91.00,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,12,true,merchant-c,false,B-marine-plywood-550-12-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 2440 x 1220 mm\",9.00,19.647,118.50,1,111.50,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,12,true,chandlery-b,false,C-marine-plywood-550-12-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 2500 x 1220 mm\",9.00,20.13,113.50,1,106.50,4,100.00,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,12,true,merchant-c,false,B-marine-plywood-550-12-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 2500 x 1220 mm\",9.00,20.13,111.50,1,105.00,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,12,true,chandlery-b,false,C-marine-plywood-550-12-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 3100 x 1530 mm\",9.00,31.304,168.50,1,158.50,4,148.50,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,12,true,merchant-c,false,B-marine-plywood-550-12-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 3100 x 1530 mm\",9.00,31.304,169.50,1,159.50,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,12,true,chandlery-b,false,B-marine-plywood-550-12-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 1220 x 1220 mm\",4.50,9.823,61.00,1,57.30,4,plain,m2,1220,1220,core-marine-plywood-550,1.4884,12,false,chandlery-b,false,B-marine-plywood-550-12-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 12 mm, plain, 1220 x 610 mm\",4.50,4.912,30.40,1,28.60,6,plain,m2,610,1220,core-marine-plywood-550,0.7442,12,false,chandlery-b,false,C-marine-plywood-550-15-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 2440 x 1220 mm\",9.00,24.559,124.00,1,116.50,4,109.00,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,15,true,merchant-c,false,B-marine-plywood-550-15-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 2440 x 1220 mm\",9.00,24.559,139.00,1,130.50,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,15,true,chandlery-b,false,C-marine-plywood-550-15-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 2500 x 1220 mm\",9.00,25.163,133.50,1,125.50,4,117.50,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,15,true,merchant-c,false,B-marine-plywood-550-15-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 2500 x 1220 mm\",9.00,25.163,134.00,1,126.00,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,15,true,chandlery-b,false,C-marine-plywood-550-15-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 3100 x 1530 mm\",9.00,39.13,177.50,1,167.00,4,156.00,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,15,true,merchant-c,false,B-marine-plywood-550-15-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 3100 x 1530 mm\",9.00,39.13,203.50,1,191.50,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,15,true,chandlery-b,false,B-marine-plywood-550-15-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 1220 x 1220 mm\",4.50,12.279,71.50,1,67.00,4,plain,m2,1220,1220,core-marine-plywood-550,1.4884,15,false,chandlery-b,false,B-marine-plywood-550-15-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 15 mm, plain, 1220 x 610 mm\",4.50,6.14,40.00,1,37.60,4,plain,m2,610,1220,core-marine-plywood-550,0.7442,15,false,chandlery-b,false,C-marine-plywood-550-16-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 2440 x 1220 mm\",9.00,26.196,129.50,1,121.50,4,114.00,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,16,true,merchant-c,false,B-marine-plywood-550-16-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 2440 x 1220 mm\",9.00,26.196,148.00,1,139.00,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,16,true,chandlery-b,false,C-marine-plywood-550-16-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 2500 x 1220 mm\",9.00,26.84,141.50,1,133.00,4,124.50,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,16,true,merchant-c,false,B-marine-plywood-550-16-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 2500 x 1220 mm\",9.00,26.84,142.50,1,134.00,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,16,true,chandlery-b,false,C-marine-plywood-550-16-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 3100 x 1530 mm\",9.00,41.738,189.00,1,177.50,4,166.50,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,16,true,merchant-c,false,B-marine-plywood-550-16-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 3100 x 1530 mm\",9.00,41.738,212.00,1,199.50,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,16,true,chandlery-b,false,B-marine-plywood-550-16-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 1220 x 1220 mm\",4.50,13.098,76.00,1,71.50,4,plain,m2,1220,1220,core-marine-plywood-550,1.4884,16,false,chandlery-b,false,B-marine-plywood-550-16-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 16 mm, plain, 1220 x 610 mm\",4.50,6.549,41.70,1,39.20,4,plain,m2,610,1220,core-marine-plywood-550,0.7442,16,false,chandlery-b,false,C-marine-plywood-550-18-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 2440 x 1220 mm\",9.00,29.47,142.50,1,134.00,4,125.50,12,plain,m2,1220,2440,core-marine-plywood-550,2.9768,18,true,merchant-c,false,B-marine-plywood-550-18-plain-2440x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 2440 x 1220 mm\",9.00,29.47,162.50,1,153.00,4,plain,m2,1220,2440,core-marine-plywood-550,2.9768,18,true,chandlery-b,false,C-marine-plywood-550-18-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 2500 x 1220 mm\",9.00,30.195,156.00,1,146.50,4,137.50,12,plain,m2,1220,2500,core-marine-plywood-550,3.05,18,true,merchant-c,false,B-marine-plywood-550-18-plain-2500x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 2500 x 1220 mm\",9.00,30.195,157.00,1,147.50,4,plain,m2,1220,2500,core-marine-plywood-550,3.05,18,true,chandlery-b,false,C-marine-plywood-550-18-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 3100 x 1530 mm\",9.00,46.956,207.50,1,195.00,4,182.50,12,plain,m2,1530,3100,core-marine-plywood-550,4.743,18,true,merchant-c,false,B-marine-plywood-550-18-plain-3100x1530,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 3100 x 1530 mm\",9.00,46.956,233.50,1,219.50,4,plain,m2,1530,3100,core-marine-plywood-550,4.743,18,true,chandlery-b,false,B-marine-plywood-550-18-plain-1220x1220,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 1220 x 1220 mm\",4.50,14.735,84.00,1,79.00,4,plain,m2,1220,1220,core-marine-plywood-550,1.4884,18,false,chandlery-b,false,B-marine-plywood-550-18-plain-1220x610,\"Marine plywood, tropical hardwood, 550 kg/m3, 18 mm, plain, 1220 x 610 mm\",4.50,7.368,44.90,1,42.20,4,plain,m2,610,1220,core-marine-plywood-550,0.7442,18,false,chandlery-b,false,A-san-foam-85-635-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.385,35.20,1,33.10,6,plain,m2,584,1220,core-san-foam-85,0.7125,6.35,false,chandlery-a,false,C-san-foam-85-635-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 6.35 mm, plain, 1220 x 584 mm\",0.385,29.90,1,28.10,6,26.30,20,plain,m2,584,1220,core-san-foam-85,0.7125,6.35,false,merchant-c,false,C-san-foam-85-635-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.607,112.50,1,106.00,4,99.00,12,plain,m2,1220,2440,core-san-foam-85,2.9768,6.35,true,merchant-c,false,B-san-foam-85-635-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 6.35 mm, plain, 2440 x 1220 mm\",9.00,1.607,123.50,1,116.00,4,plain,m2,1220,2440,core-san-foam-85,2.9768,6.35,true,chandlery-b,false,A-san-foam-85-635-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 6.35 mm, scored, 1220 x 584 mm\",0.385,42.10,1,39.60,4,scored,m2,584,1220,core-san-foam-85,0.7125,6.35,false,chandlery-a,false,C-san-foam-85-635-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.607,134.50,1,126.50,4,118.50,12,scored,m2,1220,2440,core-san-foam-85,2.9768,6.35,true,merchant-c,false,B-san-foam-85-635-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 6.35 mm, scored, 2440 x 1220 mm\",9.00,1.607,149.50,1,140.50,4,scored,m2,1220,2440,core-san-foam-85,2.9768,6.35,true,chandlery-b,false,A-san-foam-85-95-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.575,44.60,1,41.90,4,plain,m2,584,1220,core-san-foam-85,0.7125,9.5,false,chandlery-a,false,C-san-foam-85-95-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 9.5 mm, plain, 1220 x 584 mm\",0.575,40.90,1,38.40,4,36.00,12,plain,m2,584,1220,core-san-foam-85,0.7125,9.5,false,merchant-c,false,C-san-foam-85-95-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.404,137.00,1,129.00,4,120.50,12,plain,m2,1220,2440,core-san-foam-85,2.9768,9.5,true,merchant-c,false,B-san-foam-85-95-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 9.5 mm, plain, 2440 x 1220 mm\",9.00,2.404,152.00,1,143.00,4,plain,m2,1220,2440,core-san-foam-85,2.9768,9.5,true,chandlery-b,false,A-san-foam-85-95-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 9.5 mm, scored, 1220 x 584 mm\",0.575,53.40,1,50.20,4,scored,m2,584,1220,core-san-foam-85,0.7125,9.5,false,chandlery-a,false,C-san-foam-85-95-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.404,181.00,1,170.00,4,159.50,12,scored,m2,1220,2440,core-san-foam-85,2.9768,9.5,true,merchant-c,false,B-san-foam-85-95-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 9.5 mm, scored, 2440 x 1220 mm\",9.00,2.404,174.50,1,164.00,4,scored,m2,1220,2440,core-san-foam-85,2.9768,9.5,true,chandlery-b,false,A-san-foam-85-127-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.769,55.20,1,51.90,4,plain,m2,584,1220,core-san-foam-85,0.7125,12.7,false,chandlery-a,false,C-san-foam-85-127-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 12.7 mm, plain, 1220 x 584 mm\",0.769,45.80,1,43.10,4,40.30,12,plain,m2,584,1220,core-san-foam-85,0.7125,12.7,false,merchant-c,false,C-san-foam-85-127-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.213,174.50,1,164.00,4,153.50,12,plain,m2,1220,2440,core-san-foam-85,2.9768,12.7,true,merchant-c,false,B-san-foam-85-127-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 12.7 mm, plain, 2440 x 1220 mm\",9.00,3.213,192.00,1,180.50,4,plain,m2,1220,2440,core-san-foam-85,2.9768,12.7,true,chandlery-b,false,A-san-foam-85-127-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 12.7 mm, scored, 1220 x 584 mm\",0.769,65.50,1,61.50,4,scored,m2,584,1220,core-san-foam-85,0.7125,12.7,false,chandlery-a,false,C-san-foam-85-127-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.213,219.50,1,206.50,4,193.00,12,scored,m2,1220,2440,core-san-foam-85,2.9768,12.7,true,merchant-c,false,B-san-foam-85-127-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 12.7 mm, scored, 2440 x 1220 mm\",9.00,3.213,243.50,1,229.00,4,scored,m2,1220,2440,core-san-foam-85,2.9768,12.7,true,chandlery-b,false,A-san-foam-85-159-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.963,65.00,1,61.00,4,plain,m2,584,1220,core-san-foam-85,0.7125,15.9,false,chandlery-a,false,C-san-foam-85-159-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 15.9 mm, plain, 1220 x 584 mm\",0.963,54.00,1,50.80,4,47.50,12,plain,m2,584,1220,core-san-foam-85,0.7125,15.9,false,merchant-c,false,C-san-foam-85-159-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.023,200.00,1,188.00,4,176.00,12,plain,m2,1220,2440,core-san-foam-85,2.9768,15.9,true,merchant-c,false,B-san-foam-85-159-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 15.9 mm, plain, 2440 x 1220 mm\",9.00,4.023,220.00,1,207.00,4,plain,m2,1220,2440,core-san-foam-85,2.9768,15.9,true,chandlery-b,false,A-san-foam-85-159-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 15.9 mm, scored, 1220 x 584 mm\",0.963,75.00,1,70.50,4,scored,m2,584,1220,core-san-foam-85,0.7125,15.9,false,chandlery-a,false,C-san-foam-85-159-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.023,269.00,1,253.00,4,236.50,12,scored,m2,1220,2440,core-san-foam-85,2.9768,15.9,true,merchant-c,false,B-san-foam-85-159-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 15.9 mm, scored, 2440 x 1220 mm\",9.00,4.023,257.00,1,241.50,4,scored,m2,1220,2440,core-san-foam-85,2.9768,15.9,true,chandlery-b,false,A-san-foam-85-191-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",8,1.157,70.50,1,66.50,4,plain,m2,584,1220,core-san-foam-85,0.7125,19.1,false,chandlery-a,false,C-san-foam-85-191-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 19.1 mm, plain, 1220 x 584 mm\",1.157,66.50,1,62.50,4,58.50,12,plain,m2,584,1220,core-san-foam-85,0.7125,19.1,false,merchant-c,false,C-san-foam-85-191-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.833,229.50,1,215.50,4,202.00,12,plain,m2,1220,2440,core-san-foam-85,2.9768,19.1,true,merchant-c,false,B-san-foam-85-191-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 19.1 mm, plain, 2440 x 1220 mm\",9.00,4.833,252.50,1,237.50,4,plain,m2,1220,2440,core-san-foam-85,2.9768,19.1,true,chandlery-b,false,A-san-foam-85-191-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 19.1 mm, scored, 1220 x 584 mm\",8,1.157,86.00,1,81.00,4,scored,m2,584,1220,core-san-foam-85,0.7125,19.1,false,chandlery-a,false,C-san-foam-85-191-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.833,309.50,1,291.00,4,272.50,12,scored,m2,1220,2440,core-san-foam-85,2.9768,19.1,true,merchant-c,false,B-san-foam-85-191-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 19.1 mm, scored, 2440 x 1220 mm\",9.00,4.833,301.50,1,283.50,4,scored,m2,1220,2440,core-san-foam-85,2.9768,19.1,true,chandlery-b,false,A-san-foam-85-254-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",8,1.538,89.50,1,84.00,4,plain,m2,584,1220,core-san-foam-85,0.7125,25.4,false,chandlery-a,false,C-san-foam-85-254-plain-1220x584,\"SAN structural foam core, 85 kg/m3, 25.4 mm, plain, 1220 x 584 mm\",1.538,85.00,1,80.00,4,75.00,12,plain,m2,584,1220,core-san-foam-85,0.7125,25.4,false,merchant-c,false,C-san-foam-85-254-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.427,304.50,1,286.00,4,268.00,12,plain,m2,1220,2440,core-san-foam-85,2.9768,25.4,true,merchant-c,false,B-san-foam-85-254-plain-2440x1220,\"SAN structural foam core, 85 kg/m3, 25.4 mm, plain, 2440 x 1220 mm\",9.00,6.427,334.50,1,314.50,4,plain,m2,1220,2440,core-san-foam-85,2.9768,25.4,true,chandlery-b,false,A-san-foam-85-254-scored-1220x584,\"SAN structural foam core, 85 kg/m3, 25.4 mm, scored, 1220 x 584 mm\",8,1.538,114.00,1,107.00,4,scored,m2,584,1220,core-san-foam-85,0.7125,25.4,false,chandlery-a,false,C-san-foam-85-254-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.427,386.50,1,363.50,4,340.00,12,scored,m2,1220,2440,core-san-foam-85,2.9768,25.4,true,merchant-c,false,B-san-foam-85-254-scored-2440x1220,\"SAN structural foam core, 85 kg/m3, 25.4 mm, scored, 2440 x 1220 mm\",9.00,6.427,428.50,1,403.00,4,scored,m2,1220,2440,core-san-foam-85,2.9768,25.4,true,chandlery-b,false,A-temporary-screw-20each,\"Screw with washer, temporary, pack of 20 each\",0.16,3.15,1,2.95,6,each,fastener-temporary-screw,20,false,chandlery-a,false,B-temporary-screw-20each,\"Screw with washer, temporary, pack of 20 each\",0.16,3.15,1,2.95,6,each,fastener-temporary-screw,20,false,chandlery-b,false,B-temporary-screw-100each,\"Screw with washer, temporary, pack of 100 each\",0.8,12.35,1,11.60,6,each,fastener-temporary-screw,100,false,chandlery-b,false,A-temporary-screw-100each,\"Screw with washer, temporary, pack of 100 each\",0.8,13.30,1,12.50,6,each,fastener-temporary-screw,100,false,chandlery-a,false,A-bolt-m5x40-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 40 mm (No. 10), 1 each\",0.011,1.05,1,1.00,6,each,fastener-bolt-m5x40,1,false,chandlery-a,false,A-bolt-m5x40-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 40 mm (No. 10), pack of 10\",0.11,8.50,1,each,fastener-bolt-m5x40,10,false,chandlery-a,false,B-bolt-m5x40-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 40 mm (No. 10), 1 each\",0.011,1.05,1,0.95,6,each,fastener-bolt-m5x40,1,false,chandlery-b,false,B-bolt-m5x40-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 40 mm (No. 10), pack of 10\",0.11,8.25,1,each,fastener-bolt-m5x40,10,false,chandlery-b,false,A-bolt-m5x60-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 60 mm (No. 10), 1 each\",0.014,1.20,1,1.15,6,each,fastener-bolt-m5x60,1,false,chandlery-a,false,A-bolt-m5x60-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 60 mm (No. 10), pack of 10\",0.14,9.80,1,each,fastener-bolt-m5x60,10,false,chandlery-a,false,B-bolt-m5x60-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 60 mm (No. 10), 1 each\",0.014,1.20,1,1.10,6,each,fastener-bolt-m5x60,1,false,chandlery-b,false,B-bolt-m5x60-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 60 mm (No. 10), pack of 10\",0.14,9.50,1,each,fastener-bolt-m5x60,10,false,chandlery-b,false,A-bolt-m5x80-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 80 mm (No. 10), 1 each\",0.017,1.40,1,1.30,6,each,fastener-bolt-m5x80,1,false,chandlery-a,false,A-bolt-m5x80-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 80 mm (No. 10), pack of 10\",0.17,11.05,1,each,fastener-bolt-m5x80,10,false,chandlery-a,false,B-bolt-m5x80-1,\"Machine screw, nut and penny washer, stainless 316, M5 x 80 mm (No. 10), 1 each\",0.017,1.35,1,1.25,6,each,fastener-bolt-m5x80,1,false,chandlery-b,false,B-bolt-m5x80-10,\"Machine screw, nut and penny washer, stainless 316, M5 x 80 mm (No. 10), pack of 10\",0.17,10.75,1,each,fastener-bolt-m5x80,10,false,chandlery-b,false,A-bolt-m6x50-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 50 mm (1/4 in), 1 each\",0.018,1.40,1,1.30,6,each,fastener-bolt-m6x50,1,false,chandlery-a,false,A-bolt-m6x50-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 50 mm (1/4 in), pack of 10\",0.18,11.20,1,each,fastener-bolt-m6x50,10,false,chandlery-a,false,B-bolt-m6x50-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 50 mm (1/4 in), 1 each\",0.018,1.35,1,1.30,6,each,fastener-bolt-m6x50,1,false,chandlery-b,false,B-bolt-m6x50-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 50 mm (1/4 in), pack of 10\",0.18,10.85,1,each,fastener-bolt-m6x50,10,false,chandlery-b,false,A-bolt-m6x60-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 60 mm (1/4 in), 1 each\",0.02,1.50,1,1.40,6,each,fastener-bolt-m6x60,1,false,chandlery-a,false,A-bolt-m6x60-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 60 mm (1/4 in), pack of 10\",0.2,11.85,1,each,fastener-bolt-m6x60,10,false,chandlery-a,false,B-bolt-m6x60-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 60 mm (1/4 in), 1 each\",0.02,1.45,1,1.35,6,each,fastener-bolt-m6x60,1,false,chandlery-b,false,B-bolt-m6x60-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 60 mm (1/4 in), pack of 10\",0.2,11.50,1,each,fastener-bolt-m6x60,10,false,chandlery-b,false,A-bolt-m6x80-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 80 mm (1/4 in), 1 each\",0.025,1.65,1,1.55,6,each,fastener-bolt-m6x80,1,false,chandlery-a,false,A-bolt-m6x80-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 80 mm (1/4 in), pack of 10\",0.25,13.20,1,each,fastener-bolt-m6x80,10,false,chandlery-a,false,B-bolt-m6x80-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 80 mm (1/4 in), 1 each\",0.025,1.60,1,1.50,6,each,fastener-bolt-m6x80,1,false,chandlery-b,false,B-bolt-m6x80-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 80 mm (1/4 in), pack of 10\",0.25,12.80,1,each,fastener-bolt-m6x80,10,false,chandlery-b,false,A-bolt-m6x100-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 100 mm (1/4 in), 1 each\",0.029,1.80,1,1.70,6,each,fastener-bolt-m6x100,1,false,chandlery-a,false,A-bolt-m6x100-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 100 mm (1/4 in), pack of 10\",0.29,14.55,1,each,fastener-bolt-m6x100,10,false,chandlery-a,false,B-bolt-m6x100-1,\"Machine screw, nut and penny washer, stainless 316, M6 x 100 mm (1/4 in), 1 each\",0.029,1.75,1,1.65,6,each,fastener-bolt-m6x100,1,false,chandlery-b,false,B-bolt-m6x100-10,\"Machine screw, nut and penny washer, stainless 316, M6 x 100 mm (1/4 in), pack of 10\",0.29,14.10,1,each,fastener-bolt-m6x100,10,false,chandlery-b,false,A-bolt-m8x60-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 60 mm (5/16 in), 1 each\",0.037,2.35,1,2.20,6,each,fastener-bolt-m8x60,1,false,chandlery-a,false,A-bolt-m8x60-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 60 mm (5/16 in), pack of 10\",0.37,18.80,1,each,fastener-bolt-m8x60,10,false,chandlery-a,false,B-bolt-m8x60-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 60 mm (5/16 in), 1 each\",0.037,2.30,1,2.15,6,each,fastener-bolt-m8x60,1,false,chandlery-b,false,B-bolt-m8x60-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 60 mm (5/16 in), pack of 10\",0.37,18.25,1,each,fastener-bolt-m8x60,10,false,chandlery-b,false,A-bolt-m8x80-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 80 mm (5/16 in), 1 each\",0.044,2.60,1,2.45,6,each,fastener-bolt-m8x80,1,false,chandlery-a,false,A-bolt-m8x80-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 80 mm (5/16 in), pack of 10\",0.44,20.70,1,each,fastener-bolt-m8x80,10,false,chandlery-a,false,B-bolt-m8x80-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 80 mm (5/16 in), 1 each\",0.044,2.50,1,2.35,6,each,fastener-bolt-m8x80,1,false,chandlery-b,false,B-bolt-m8x80-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 80 mm (5/16 in), pack of 10\",0.44,20.10,1,each,fastener-bolt-m8x80,10,false,chandlery-b,false,A-bolt-m8x100-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 100 mm (5/16 in), 1 each\",0.052,2.80,1,2.65,6,each,fastener-bolt-m8x100,1,false,chandlery-a,false,A-bolt-m8x100-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 100 mm (5/16 in), pack of 10\",0.52,22.60,1,each,fastener-bolt-m8x100,10,false,chandlery-a,false,B-bolt-m8x100-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 100 mm (5/16 in), 1 each\",0.052,2.75,1,2.55,6,each,fastener-bolt-m8x100,1,false,chandlery-b,false,B-bolt-m8x100-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 100 mm (5/16 in), pack of 10\",0.52,21.90,1,each,fastener-bolt-m8x100,10,false,chandlery-b,false,A-bolt-m8x120-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 120 mm (5/16 in), 1 each\",0.06,3.05,1,2.85,6,each,fastener-bolt-m8x120,1,false,chandlery-a,false,A-bolt-m8x120-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 120 mm (5/16 in), pack of 10\",0.6,24.45,1,each,fastener-bolt-m8x120,10,false,chandlery-a,false,B-bolt-m8x120-1,\"Machine screw, nut and penny washer, stainless 316, M8 x 120 mm (5/16 in), 1 each\",0.06,2.95,1,2.80,6,each,fastener-bolt-m8x120,1,false,chandlery-b,false,B-bolt-m8x120-10,\"Machine screw, nut and penny washer, stainless 316, M8 x 120 mm (5/16 in), pack of 10\",0.6,23.75,1,each,fastener-bolt-m8x120,10,false,chandlery-b,false,A-bolt-m10x60-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 60 mm (3/8 in), 1 each\",0.059,4.05,1,3.80,6,each,fastener-bolt-m10x60,1,false,chandlery-a,false,A-bolt-m10x60-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 60 mm (3/8 in), pack of 10\",0.59,32.25,1,each,fastener-bolt-m10x60,10,false,chandlery-a,false,B-bolt-m10x60-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 60 mm (3/8 in), 1 each\",0.059,3.90,1,3.70,6,each,fastener-bolt-m10x60,1,false,chandlery-b,false,B-bolt-m10x60-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 60 mm (3/8 in), pack of 10\",0.59,31.30,1,each,fastener-bolt-m10x60,10,false,chandlery-b,false,A-bolt-m10x80-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 80 mm (3/8 in), 1 each\",0.071,4.45,1,4.15,6,each,fastener-bolt-m10x80,1,false,chandlery-a,false,A-bolt-m10x80-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 80 mm (3/8 in), pack of 10\",0.71,35.50,1,each,fastener-bolt-m10x80,10,false,chandlery-a,false,B-bolt-m10x80-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 80 mm (3/8 in), 1 each\",0.071,4.30,1,4.05,6,each,fastener-bolt-m10x80,1,false,chandlery-b,false,B-bolt-m10x80-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 80 mm (3/8 in), pack of 10\",0.71,34.40,1,each,fastener-bolt-m10x80,10,false,chandlery-b,false,A-bolt-m10x100-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 100 mm (3/8 in), 1 each\",0.084,4.85,1,4.55,6,each,fastener-bolt-m10x100,1,false,chandlery-a,false,A-bolt-m10x100-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 100 mm (3/8 in), pack of 10\",0.84,38.70,1,each,fastener-bolt-m10x100,10,false,chandlery-a,false,B-bolt-m10x100-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 100 mm (3/8 in), 1 each\",0.084,4.70,1,4.40,6,each,fastener-bolt-m10x100,1,false,chandlery-b,false,B-bolt-m10x100-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 100 mm (3/8 in), pack of 10\",0.84,37.55,1,each,fastener-bolt-m10x100,10,false,chandlery-b,false,A-bolt-m10x120-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 120 mm (3/8 in), 1 each\",0.096,5.25,1,4.95,6,each,fastener-bolt-m10x120,1,false,chandlery-a,false,A-bolt-m10x120-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 120 mm (3/8 in), pack of 10\",0.96,41.95,1,each,fastener-bolt-m10x120,10,false,chandlery-a,false,B-bolt-m10x120-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 120 mm (3/8 in), 1 each\",0.096,5.10,1,4.80,6,each,fastener-bolt-m10x120,1,false,chandlery-b,false,B-bolt-m10x120-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 120 mm (3/8 in), pack of 10\",0.96,40.65,1,each,fastener-bolt-m10x120,10,false,chandlery-b,false,A-bolt-m10x150-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 150 mm (3/8 in), 1 each\",0.115,5.85,1,5.50,6,each,fastener-bolt-m10x150,1,false,chandlery-a,false,A-bolt-m10x150-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 150 mm (3/8 in), pack of 10\",1.15,46.75,1,each,fastener-bolt-m10x150,10,false,chandlery-a,false,B-bolt-m10x150-1,\"Machine screw, nut and penny washer, stainless 316, M10 x 150 mm (3/8 in), 1 each\",0.115,5.65,1,5.35,6,each,fastener-bolt-m10x150,1,false,chandlery-b,false,B-bolt-m10x150-10,\"Machine screw, nut and penny washer, stainless 316, M10 x 150 mm (3/8 in), pack of 10\",1.15,45.35,1,each,fastener-bolt-m10x150,10,false,chandlery-b,false,A-bolt-m12x80-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 80 mm (1/2 in), 1 each\",0.105,6.25,1,5.90,6,each,fastener-bolt-m12x80,1,false,chandlery-a,false,A-bolt-m12x80-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 80 mm (1/2 in), pack of 10\",1.05,50.20,1,each,fastener-bolt-m12x80,10,false,chandlery-a,false,B-bolt-m12x80-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 80 mm (1/2 in), 1 each\",0.105,6.10,1,5.70,6,each,fastener-bolt-m12x80,1,false,chandlery-b,false,B-bolt-m12x80-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 80 mm (1/2 in), pack of 10\",1.05,48.65,1,each,fastener-bolt-m12x80,10,false,chandlery-b,false,A-bolt-m12x100-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 100 mm (1/2 in), 1 each\",0.123,6.75,1,6.35,6,each,fastener-bolt-m12x100,1,false,chandlery-a,false,A-bolt-m12x100-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 100 mm (1/2 in), pack of 10\",1.23,53.95,1,each,fastener-bolt-m12x100,10,false,chandlery-a,false,B-bolt-m12x100-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 100 mm (1/2 in), 1 each\",0.123,6.55,1,6.15,6,each,fastener-bolt-m12x100,1,false,chandlery-b,false,B-bolt-m12x100-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 100 mm (1/2 in), pack of 10\",1.23,52.30,1,each,fastener-bolt-m12x100,10,false,chandlery-b,false,A-bolt-m12x120-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 120 mm (1/2 in), 1 each\",0.141,7.20,1,6.80,6,each,fastener-bolt-m12x120,1,false,chandlery-a,false,A-bolt-m12x120-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 120 mm (1/2 in), pack of 10\",1.41,57.70,1,each,fastener-bolt-m12x120,10,false,chandlery-a,false,B-bolt-m12x120-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 120 mm (1/2 in), 1 each\",0.141,7.00,1,6.60,6,each,fastener-bolt-m12x120,1,false,chandlery-b,false,B-bolt-m12x120-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 120 mm (1/2 in), pack of 10\",1.41,55.95,1,each,fastener-bolt-m12x120,10,false,chandlery-b,false,A-bolt-m12x150-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 150 mm (1/2 in), 1 each\",0.168,7.90,1,7.45,6,each,fastener-bolt-m12x150,1,false,chandlery-a,false,A-bolt-m12x150-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 150 mm (1/2 in), pack of 10\",1.68,63.35,1,each,fastener-bolt-m12x150,10,false,chandlery-a,false,B-bolt-m12x150-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 150 mm (1/2 in), 1 each\",0.168,7.70,1,7.20,6,each,fastener-bolt-m12x150,1,false,chandlery-b,false,B-bolt-m12x150-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 150 mm (1/2 in), pack of 10\",1.68,61.45,1,each,fastener-bolt-m12x150,10,false,chandlery-b,false,A-bolt-m12x180-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 180 mm (1/2 in), 1 each\",0.195,8.60,1,8.10,6,each,fastener-bolt-m12x180,1,false,chandlery-a,false,A-bolt-m12x180-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 180 mm (1/2 in), pack of 10\",1.95,69.00,1,each,fastener-bolt-m12x180,10,false,chandlery-a,false,B-bolt-m12x180-1,\"Machine screw, nut and penny washer, stainless 316, M12 x 180 mm (1/2 in), 1 each\",0.195,8.35,1,7.85,6,each,fastener-bolt-m12x180,1,false,chandlery-b,false,B-bolt-m12x180-10,\"Machine screw, nut and penny washer, stainless 316, M12 x 180 mm (1/2 in), pack of 10\",1.95,66.90,1,each,fastener-bolt-m12x180,10,false,chandlery-b,false,A-laminate-board-3-300x600,\"Laminate board, glass and epoxy, 3 mm, 300 x 600 mm\",1.03,25.40,1,m2,300,600,fastener-laminate-board,0.18,3,false,chandlery-a,false,B-laminate-board-3-300x600,\"Laminate board, glass and epoxy, 3 mm, 300 x 600 mm\",1.03,25.80,1,m2,300,600,fastener-laminate-board,0.18,3,false,chandlery-b,false,A-laminate-board-3-600x600,\"Laminate board, glass and epoxy, 3 mm, 600 x 600 mm\",2.05,48.45,1,m2,600,600,fastener-laminate-board,0.36,3,false,chandlery-a,false,B-laminate-board-3-600x600,\"Laminate board, glass and epoxy, 3 mm, 600 x 600 mm\",2.05,48.45,1,m2,600,600,fastener-laminate-board,0.36,3,false,chandlery-b,false,B-laminate-board-3-600x1200,\"Laminate board, glass and epoxy, 3 mm, 600 x 1200 mm\",4.1,91.45,1,m2,600,1200,fastener-laminate-board,0.72,3,false,chandlery-b,false,A-laminate-board-6-300x600,\"Laminate board, glass and epoxy, 6 mm, 300 x 600 mm\",2.05,38.70,1,m2,300,600,fastener-laminate-board,0.18,6,false,chandlery-a,false,B-laminate-board-6-300x600,\"Laminate board, glass and epoxy, 6 mm, 300 x 600 mm\",2.05,39.10,1,m2,300,600,fastener-laminate-board,0.18,6,false,chandlery-b,false,A-laminate-board-6-600x600,\"Laminate board, glass and epoxy, 6 mm, 600 x 600 mm\",4.11,73.85,1,m2,600,600,fastener-laminate-board,0.36,6,false,chandlery-a,false,B-laminate-board-6-600x600,\"Laminate board, glass and epoxy, 6 mm, 600 x 600 mm\",4.11,73.85,1,m2,600,600,fastener-laminate-board,0.36,6,false,chandlery-b,false,B-laminate-board-6-600x1200,\"Laminate board, glass and epoxy, 6 mm, 600 x 1200 mm\",8.21,139.35,1,m2,600,1200,fastener-laminate-board,0.72,6,false,chandlery-b,false,A-laminate-board-10-300x600,\"Laminate board, glass and epoxy, 10 mm, 300 x 600 mm\",3.42,56.45,1,m2,300,600,fastener-laminate-board,0.18,10,false,chandlery-a,false,B-laminate-board-10-300x600,\"Laminate board, glass and epoxy, 10 mm, 300 x 600 mm\",3.42,56.85,1,m2,300,600,fastener-laminate-board,0.18,10,false,chandlery-b,false,A-laminate-board-10-600x600,\"Laminate board, glass and epoxy, 10 mm, 600 x 600 mm\",6.84,107.70,1,m2,600,600,fastener-laminate-board,0.36,10,false,chandlery-a,false,B-laminate-board-10-600x600,\"Laminate board, glass and epoxy, 10 mm, 600 x 600 mm\",6.84,107.70,1,m2,600,600,fastener-laminate-board,0.36,10,false,chandlery-b,false,B-laminate-board-10-600x1200,\"Laminate board, glass and epoxy, 10 mm, 600 x 1200 mm\",13.68,203.20,1,m2,600,1200,fastener-laminate-board,0.72,10,false,chandlery-b,false,A-laminate-board-12-300x600,\"Laminate board, glass and epoxy, 12 mm, 300 x 600 mm\",4.1,65.30,1,m2,300,600,fastener-laminate-board,0.18,12,false,chandlery-a,false,B-laminate-board-12-300x600,\"Laminate board, glass and epoxy, 12 mm, 300 x 600 mm\",4.1,65.70,1,m2,300,600,fastener-laminate-board,0.18,12,false,chandlery-b,false,A-laminate-board-12-600x600,\"Laminate board, glass and epoxy, 12 mm, 600 x 600 mm\",8.21,124.65,1,m2,600,600,fastener-laminate-board,0.36,12,false,chandlery-a,false,B-laminate-board-12-600x600,\"Laminate board, glass and epoxy, 12 mm, 600 x 600 mm\",8.21,124.65,1,m2,600,600,fastener-laminate-board,0.36,12,false,chandlery-b,false,B-laminate-board-12-600x1200,\"Laminate board, glass and epoxy, 12 mm, 600 x 1200 mm\",16.42,235.15,1,m2,600,1200,fastener-laminate-board,0.72,12,false,chandlery-b,false,A-laminate-board-18-300x600,\"Laminate board, glass and epoxy, 18 mm, 300 x 600 mm\",6.16,91.95,1,m2,300,600,fastener-laminate-board,0.18,18,false,chandlery-a,false,B-laminate-board-18-300x600,\"Laminate board, glass and epoxy, 18 mm, 300 x 600 mm\",6.16,92.35,1,m2,300,600,fastener-laminate-board,0.18,18,false,chandlery-b,false,A-laminate-board-18-600x600,\"Laminate board, glass and epoxy, 18 mm, 600 x 600 mm\",12.31,175.40,1,m2,600,600,fastener-laminate-board,0.36,18,false,chandlery-a,false,B-laminate-board-18-600x600,\"Laminate board, glass and epoxy, 18 mm, 600 x 600 mm\",12.31,175.40,1,m2,600,600,fastener-laminate-board,0.36,18,false,chandlery-b,false,B-laminate-board-18-600x1200,\"Laminate board, glass and epoxy, 18 mm, 600 x 1200 mm\",24.62,330.95,1,m2,600,1200,fastener-laminate-board,0.72,18,false,chandlery-b,false,A-deck-screw-25,\"Deck screw, stainless 316, and wooden plug, pack of 25\",0.15,15.70,1,each,fastener-deck-screw,25,false,chandlery-a,false,A-deck-screw-100,\"Deck screw, stainless 316, and wooden plug, pack of 100\",0.6,51.50,1,each,fastener-deck-screw,100,false,chandlery-a,false,B-deck-screw-25,\"Deck screw, stainless 316, and wooden plug, pack of 25\",0.15,15.20,1,each,fastener-deck-screw,25,false,chandlery-b,false,B-deck-screw-100,\"Deck screw, stainless 316, and wooden plug, pack of 100\",0.6,49.95,1,each,fastener-deck-screw,100,false,chandlery-b,false,A-chopped-glass-250g,\"Chopped glass fibre, 6 mm, 0.25 kg\",0.287,4.10,1,3.85,6,kg,filler-chopped-glass,0.25,false,chandlery-a,false,B-chopped-glass-250g,\"Chopped glass fibre, 6 mm, 0.25 kg\",0.287,3.65,1,3.45,6,kg,filler-chopped-glass,0.25,false,chandlery-b,false,A-chopped-glass-1000g,\"Chopped glass fibre, 6 mm, 1 kg\",1.15,11.65,1,10.95,6,kg,filler-chopped-glass,1,false,chandlery-a,false,B-chopped-glass-1000g,\"Chopped glass fibre, 6 mm, 1 kg\",1.15,11.40,1,10.70,6,kg,filler-chopped-glass,1,false,chandlery-b,false,C-chopped-glass-5000g,\"Chopped glass fibre, 6 mm, 5 kg\",5.75,40.70,1,38.30,4,35.80,12,kg,filler-chopped-glass,5,false,merchant-c,false,A-fumed-silica-100g,\"Fumed silica, 0.1 kg\",0.115,4.55,1,4.30,6,kg,filler-fumed-silica,0.1,false,chandlery-a,false,B-fumed-silica-100g,\"Fumed silica, 0.1 kg\",0.115,4.55,1,4.30,6,kg,filler-fumed-silica,0.1,false,chandlery-b,false,A-fumed-silica-500g,\"Fumed silica, 0.5 kg\",0.575,15.60,1,14.65,6,kg,filler-fumed-silica,0.5,false,chandlery-a,false,B-fumed-silica-500g,\"Fumed silica, 0.5 kg\",0.575,15.60,1,14.65,6,kg,filler-fumed-silica,0.5,false,chandlery-b,false,C-fumed-silica-2000g,\"Fumed silica, 2 kg\",2.3,47.50,1,44.60,4,41.80,12,kg,filler-fumed-silica,2,false,merchant-c,false,A-glass-spheres-100g,\"Hollow glass spheres, 0.1 kg\",0.115,3.65,1,3.45,6,kg,filler-glass-spheres,0.1,false,chandlery-a,false,B-glass-spheres-100g,\"Hollow glass spheres, 0.1 kg\",0.115,3.20,1,3.00,6,kg,filler-glass-spheres,0.1,false,chandlery-b,false,A-glass-spheres-500g,\"Hollow glass spheres, 0.5 kg\",0.575,12.70,1,11.95,6,kg,filler-glass-spheres,0.5,false,chandlery-a,false,B-glass-spheres-500g,\"Hollow glass spheres, 0.5 kg\",0.575,12.55,1,11.80,6,kg,filler-glass-spheres,0.5,false,chandlery-b,false,C-glass-spheres-2500g,\"Hollow glass spheres, 2.5 kg\",2.875,39.30,1,36.90,6,34.60,20,kg,filler-glass-spheres,2.5,false,merchant-c,false,A-milled-glass-250g,\"Milled glass fibre, 0.25 kg\",0.287,3.45,1,3.25,6,kg,filler-milled-glass,0.25,false,chandlery-a,false,B-milled-glass-250g,\"Milled glass fibre, 0.25 kg\",0.287,3.45,1,3.25,6,kg,filler-milled-glass,0.25,false,chandlery-b,false,A-milled-glass-1000g,\"Milled glass fibre, 1 kg\",1.15,10.40,1,9.80,6,kg,filler-milled-glass,1,false,chandlery-a,false,B-milled-glass-1000g,\"Milled glass fibre, 1 kg\",1.15,10.30,1,9.70,6,kg,filler-milled-glass,1,false,chandlery-b,false,C-milled-glass-5000g,\"Milled glass fibre, 5 kg\",5.75,32.60,1,30.60,6,28.70,20,kg,filler-milled-glass,5,false,merchant-c,false,A-phenolic-balloons-100g,\"Phenolic balloons, 0.1 kg\",0.115,4.15,1,3.90,6,kg,filler-phenolic-balloons,0.1,false,chandlery-a,false,B-phenolic-balloons-100g,\"Phenolic balloons, 0.1 kg\",0.115,4.15,1,3.90,6,kg,filler-phenolic-balloons,0.1,false,chandlery-b,false,A-phenolic-balloons-500g,\"Phenolic balloons, 0.5 kg\",0.575,16.20,1,15.25,6,kg,filler-phenolic-balloons,0.5,false,chandlery-a,false,B-phenolic-balloons-500g,\"Phenolic balloons, 0.5 kg\",0.575,14.20,1,13.35,6,kg,filler-phenolic-balloons,0.5,false,chandlery-b,false,C-phenolic-balloons-2500g,\"Phenolic balloons, 2.5 kg\",2.875,49.40,1,46.40,4,43.50,12,kg,filler-phenolic-balloons,2.5,false,merchant-c,false,A-wood-flour-250g,\"Wood or cellulose flour, 0.25 kg\",0.287,2.55,1,2.40,6,kg,filler-wood-flour,0.25,false,chandlery-a,false,B-wood-flour-250g,\"Wood or cellulose flour, 0.25 kg\",0.287,2.45,1,2.30,6,kg,filler-wood-flour,0.25,false,chandlery-b,false,A-wood-flour-1000g,\"Wood or cellulose flour, 1 kg\",1.15,7.95,1,7.45,6,kg,filler-wood-flour,1,false,chandlery-a,false,B-wood-flour-1000g,\"Wood or cellulose flour, 1 kg\",1.15,7.80,1,7.35,6,kg,filler-wood-flour,1,false,chandlery-b,false,C-wood-flour-5000g,\"Wood or cellulose flour, 5 kg\",5.75,23.90,1,22.50,6,21.00,20,kg,filler-wood-flour,5,false,merchant-c,false,A-biaxial-0-90-600-1270-1m,\"Stitched biaxial glass 0/90, 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,18.30,1,m2,reinforcement-biaxial-0-90-600,1.27,1270,false,chandlery-a,false,B-biaxial-0-90-600-1270-1m,\"Stitched biaxial glass 0/90, 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,16.40,1,m2,reinforcement-biaxial-0-90-600,1.27,1270,false,chandlery-b,false,C-biaxial-0-90-600-1270-25m,\"Stitched biaxial glass 0/90, 600 g/m2, 1270 mm wide, roll of 25 m\",19.05,291.00,1,273.50,4,256.00,12,m2,reinforcement-biaxial-0-90-600,31.75,1270,false,merchant-c,false,C-biaxial-0-90-600-1270-50m,\"Stitched biaxial glass 0/90, 600 g/m2, 1270 mm wide, roll of 50 m\",38.1,602.00,1,566.00,4,530.00,12,m2,reinforcement-biaxial-0-90-600,63.5,1270,false,merchant-c,false,A-biaxial-430-1270-1m,\"Stitched biaxial glass +45/-45, 430 g/m2, 1270 mm wide, by the metre\",2.50,0.546,12.35,1,m2,reinforcement-biaxial-430,1.27,1270,false,chandlery-a,false,B-biaxial-430-1270-1m,\"Stitched biaxial glass +45/-45, 430 g/m2, 1270 mm wide, by the metre\",2.50,0.546,12.10,1,m2,reinforcement-biaxial-430,1.27,1270,false,chandlery-b,false,C-biaxial-430-1270-25m,\"Stitched biaxial glass +45/-45, 430 g/m2, 1270 mm wide, roll of 25 m\",13.652,223.50,1,210.00,4,196.50,12,m2,reinforcement-biaxial-430,31.75,1270,false,merchant-c,false,C-biaxial-430-1270-50m,\"Stitched biaxial glass +45/-45, 430 g/m2, 1270 mm wide, roll of 50 m\",27.305,415.00,1,390.00,4,365.00,12,m2,reinforcement-biaxial-430,63.5,1270,false,merchant-c,false,A-biaxial-600-1270-1m,\"Stitched biaxial glass +45/-45, 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,17.40,1,m2,reinforcement-biaxial-600,1.27,1270,false,chandlery-a,false,B-biaxial-600-1270-1m,\"Stitched biaxial glass +45/-45, 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,16.70,1,m2,reinforcement-biaxial-600,1.27,1270,false,chandlery-b,false,C-biaxial-600-1270-25m,\"Stitched biaxial glass +45/-45, 600 g/m2, 1270 mm wide, roll of 25 m\",19.05,312.00,1,293.50,4,274.50,12,m2,reinforcement-biaxial-600,31.75,1270,false,merchant-c,false,C-biaxial-600-1270-50m,\"Stitched biaxial glass +45/-45, 600 g/m2, 1270 mm wide, roll of 50 m\",38.1,579.00,1,544.50,4,509.50,12,m2,reinforcement-biaxial-600,63.5,1270,false,merchant-c,false,A-biaxial-mat-655-1270-1m,\"Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2, 1270 mm wide, by the metre\",2.50,0.832,18.60,1,m2,reinforcement-biaxial-mat-655,1.27,1270,false,chandlery-a,false,B-biaxial-mat-655-1270-1m,\"Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2, 1270 mm wide, by the metre\",2.50,0.832,17.35,1,m2,reinforcement-biaxial-mat-655,1.27,1270,false,chandlery-b,false,C-biaxial-mat-655-1270-25m,\"Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2, 1270 mm wide, roll of 25 m\",20.796,296.00,1,278.00,4,260.50,12,m2,reinforcement-biaxial-mat-655,31.75,1270,false,merchant-c,false,C-biaxial-mat-655-1270-50m,\"Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2, 1270 mm wide, roll of 50 m\",41.593,548.50,1,515.50,4,482.50,12,m2,reinforcement-biaxial-mat-655,63.5,1270,false,merchant-c,false,A-biaxial-mat-835-1270-1m,\"Stitched biaxial +45/-45 610 g/m2 with stitched mat 225 g/m2, 1270 mm wide, by the metre\",2.50,1.06,23.70,1,m2,reinforcement-biaxial-mat-835,1.27,1270,false,chandlery-a,false,B-biaxial-mat-835-1270-1m,\"Stitched biaxial +45/-45 610 g/m2 with stitched mat 225 g/m2, 1270 mm wide, by the metre\",2.50,1.06,22.10,1,m2,reinforcement-biaxial-mat-835,1.27,1270,false,chandlery-b,false,C-biaxial-mat-835-1270-25m,\"Stitched biaxial +45/-45 610 g/m2 with stitched mat 225 g/m2, 1270 mm wide, roll of 25 m\",26.511,369.50,1,347.50,4,325.00,12,m2,reinforcement-biaxial-mat-835,31.75,1270,false,merchant-c,false,C-biaxial-mat-835-1270-50m,\"Stitched biaxial +45/-45 610 g/m2 with stitched mat 225 g/m2, 1270 mm wide, roll of 50 m\",53.023,780.50,1,733.50,4,687.00,12,m2,reinforcement-biaxial-mat-835,63.5,1270,false,merchant-c,false,A-cloth-200-970-1m,\"Plain-weave glass cloth 200 g/m2, 970 mm wide, by the metre\",2.50,0.194,6.55,1,m2,reinforcement-cloth-200,0.97,970,false,chandlery-a,false,B-cloth-200-970-1m,\"Plain-weave glass cloth 200 g/m2, 970 mm wide, by the metre\",2.50,0.194,6.30,1,m2,reinforcement-cloth-200,0.97,970,false,chandlery-b,false,C-cloth-200-970-25m,\"Plain-weave glass cloth 200 g/m2, 970 mm wide, roll of 25 m\",4.85,116.50,1,109.50,4,102.50,12,m2,reinforcement-cloth-200,24.25,970,false,merchant-c,false,C-cloth-200-970-50m,\"Plain-weave glass cloth 200 g/m2, 970 mm wide, roll of 50 m\",9.7,215.50,1,202.50,4,189.50,12,m2,reinforcement-cloth-200,48.5,970,false,merchant-c,false,C-cloth-200-970-100m,\"Plain-weave glass cloth 200 g/m2, 970 mm wide, roll of 100 m\",19.4,387.50,1,364.00,4,341.00,12,m2,reinforcement-cloth-200,97,970,false,merchant-c,false,A-cloth-200-1270-1m,\"Plain-weave glass cloth 200 g/m2, 1270 mm wide, by the metre\",2.50,0.254,8.15,1,m2,reinforcement-cloth-200,1.27,1270,false,chandlery-a,false,B-cloth-200-1270-1m,\"Plain-weave glass cloth 200 g/m2, 1270 mm wide, by the metre\",2.50,0.254,8.15,1,m2,reinforcement-cloth-200,1.27,1270,false,chandlery-b,false,C-cloth-200-1270-25m,\"Plain-weave glass cloth 200 g/m2, 1270 mm wide, roll of 25 m\",6.35,156.50,1,147.00,4,137.50,12,m2,reinforcement-cloth-200,31.75,1270,false,merchant-c,false,C-cloth-200-1270-50m,\"Plain-weave glass cloth 200 g/m2, 1270 mm wide, roll of 50 m\",12.7,290.50,1,273.00,4,255.50,12,m2,reinforcement-cloth-200,63.5,1270,false,merchant-c,false,C-cloth-200-1270-100m,\"Plain-weave glass cloth 200 g/m2, 1270 mm wide, roll of 100 m\",25.4,523.00,1,491.50,4,460.00,12,m2,reinforcement-cloth-200,127,1270,false,merchant-c,false,A-cloth-200-1520-1m,\"Plain-weave glass cloth 200 g/m2, 1520 mm wide, by the metre\",2.50,0.304,9.70,1,m2,reinforcement-cloth-200,1.52,1520,false,chandlery-a,false,B-cloth-200-1520-1m,\"Plain-weave glass cloth 200 g/m2, 1520 mm wide, by the metre\",2.50,0.304,9.70,1,m2,reinforcement-cloth-200,1.52,1520,false,chandlery-b,false,C-cloth-200-1520-25m,\"Plain-weave glass cloth 200 g/m2, 1520 mm wide, roll of 25 m\",7.6,174.00,1,163.50,4,153.00,12,m2,reinforcement-cloth-200,38,1520,false,merchant-c,false,C-cloth-200-1520-50m,\"Plain-weave glass cloth 200 g/m2, 1520 mm wide, roll of 50 m\",15.2,316.00,1,297.00,4,278.00,12,m2,reinforcement-cloth-200,76,1520,false,merchant-c,false,C-cloth-200-1520-100m,\"Plain-weave glass cloth 200 g/m2, 1520 mm wide, roll of 100 m\",30.4,611.00,1,574.50,4,537.50,12,m2,reinforcement-cloth-200,152,1520,false,merchant-c,false,A-cloth-335-970-1m,\"Plain-weave glass cloth 335 g/m2, 970 mm wide, by the metre\",2.50,0.325,10.75,1,m2,reinforcement-cloth-335,0.97,970,false,chandlery-a,false,B-cloth-335-970-1m,\"Plain-weave glass cloth 335 g/m2, 970 mm wide, by the metre\",2.50,0.325,10.55,1,m2,reinforcement-cloth-335,0.97,970,false,chandlery-b,false,C-cloth-335-970-25m,\"Plain-weave glass cloth 335 g/m2, 970 mm wide, roll of 25 m\",8.124,193.00,1,181.50,4,170.00,12,m2,reinforcement-cloth-335,24.25,970,false,merchant-c,false,C-cloth-335-970-50m,\"Plain-weave glass cloth 335 g/m2, 970 mm wide, roll of 50 m\",16.247,357.50,1,336.00,4,314.50,12,m2,reinforcement-cloth-335,48.5,970,false,merchant-c,false,C-cloth-335-970-100m,\"Plain-weave glass cloth 335 g/m2, 970 mm wide, roll of 100 m\",32.495,711.50,1,669.00,4,626.00,12,m2,reinforcement-cloth-335,97,970,false,merchant-c,false,A-cloth-335-1270-1m,\"Plain-weave glass cloth 335 g/m2, 1270 mm wide, by the metre\",2.50,0.425,13.50,1,m2,reinforcement-cloth-335,1.27,1270,false,chandlery-a,false,B-cloth-335-1270-1m,\"Plain-weave glass cloth 335 g/m2, 1270 mm wide, by the metre\",2.50,0.425,13.50,1,m2,reinforcement-cloth-335,1.27,1270,false,chandlery-b,false,C-cloth-335-1270-25m,\"Plain-weave glass cloth 335 g/m2, 1270 mm wide, roll of 25 m\",10.636,252.00,1,237.00,4,222.00,12,m2,reinforcement-cloth-335,31.75,1270,false,merchant-c,false,C-cloth-335-1270-50m,\"Plain-weave glass cloth 335 g/m2, 1270 mm wide, roll of 50 m\",21.273,467.50,1,439.50,4,411.50,12,m2,reinforcement-cloth-335,63.5,1270,false,merchant-c,false,C-cloth-335-1270-100m,\"Plain-weave glass cloth 335 g/m2, 1270 mm wide, roll of 100 m\",42.545,867.00,1,815.00,4,763.00,12,m2,reinforcement-cloth-335,127,1270,false,merchant-c,false,A-cloth-335-1520-1m,\"Plain-weave glass cloth 335 g/m2, 1520 mm wide, by the metre\",2.50,0.509,16.10,1,m2,reinforcement-cloth-335,1.52,1520,false,chandlery-a,false,B-cloth-335-1520-1m,\"Plain-weave glass cloth 335 g/m2, 1520 mm wide, by the metre\",2.50,0.509,16.10,1,m2,reinforcement-cloth-335,1.52,1520,false,chandlery-b,false,C-cloth-335-1520-25m,\"Plain-weave glass cloth 335 g/m2, 1520 mm wide, roll of 25 m\",12.73,274.00,1,257.50,4,241.00,12,m2,reinforcement-cloth-335,38,1520,false,merchant-c,false,C-cloth-335-1520-50m,\"Plain-weave glass cloth 335 g/m2, 1520 mm wide, roll of 50 m\",25.46,579.50,1,544.50,4,510.00,12,m2,reinforcement-cloth-335,76,1520,false,merchant-c,false,C-cloth-335-1520-100m,\"Plain-weave glass cloth 335 g/m2, 1520 mm wide, roll of 100 m\",50.92,991.50,1,932.00,4,872.50,12,m2,reinforcement-cloth-335,152,1520,false,merchant-c,false,A-mat-300-950-1m,\"Chopped strand mat 300 g/m2, binder-bound, 950 mm wide, by the metre\",2.50,0.285,2.60,1,m2,reinforcement-mat-300,0.95,950,false,chandlery-a,false,B-mat-300-950-1m,\"Chopped strand mat 300 g/m2, binder-bound, 950 mm wide, by the metre\",2.50,0.285,2.65,1,m2,reinforcement-mat-300,0.95,950,false,chandlery-b,false,C-mat-300-950-50m,\"Chopped strand mat 300 g/m2, binder-bound, 950 mm wide, roll of 50 m\",14.25,88.00,1,82.50,4,77.50,12,m2,reinforcement-mat-300,47.5,950,false,merchant-c,false,C-mat-300-950-100m,\"Chopped strand mat 300 g/m2, binder-bound, 950 mm wide, roll of 100 m\",28.5,166.00,1,156.00,4,146.00,12,m2,reinforcement-mat-300,95,950,false,merchant-c,false,A-mat-300-1250-1m,\"Chopped strand mat 300 g/m2, binder-bound, 1250 mm wide, by the metre\",2.50,0.375,3.55,1,m2,reinforcement-mat-300,1.25,1250,false,chandlery-a,false,B-mat-300-1250-1m,\"Chopped strand mat 300 g/m2, binder-bound, 1250 mm wide, by the metre\",2.50,0.375,3.40,1,m2,reinforcement-mat-300,1.25,1250,false,chandlery-b,false,C-mat-300-1250-50m,\"Chopped strand mat 300 g/m2, binder-bound, 1250 mm wide, roll of 50 m\",18.75,116.50,1,109.50,4,102.50,12,m2,reinforcement-mat-300,62.5,1250,false,merchant-c,false,C-mat-300-1250-100m,\"Chopped strand mat 300 g/m2, binder-bound, 1250 mm wide, roll of 100 m\",37.5,209.50,1,197.00,4,184.50,12,m2,reinforcement-mat-300,125,1250,false,merchant-c,false,A-mat-450-950-1m,\"Chopped strand mat 450 g/m2, binder-bound, 950 mm wide, by the metre\",2.50,0.427,3.90,1,m2,reinforcement-mat-450,0.95,950,false,chandlery-a,false,B-mat-450-950-1m,\"Chopped strand mat 450 g/m2, binder-bound, 950 mm wide, by the metre\",2.50,0.427,3.90,1,m2,reinforcement-mat-450,0.95,950,false,chandlery-b,false,C-mat-450-950-30m,\"Chopped strand mat 450 g/m2, binder-bound, 950 mm wide, roll of 30 m\",12.825,83.00,1,78.00,4,73.00,12,m2,reinforcement-mat-450,28.5,950,false,merchant-c,false,C-mat-450-950-60m,\"Chopped strand mat 450 g/m2, binder-bound, 950 mm wide, roll of 60 m\",25.65,152.50,1,143.50,4,134.00,12,m2,reinforcement-mat-450,57,950,false,merchant-c,false,A-mat-450-1250-1m,\"Chopped strand mat 450 g/m2, binder-bound, 1250 mm wide, by the metre\",2.50,0.562,5.15,1,m2,reinforcement-mat-450,1.25,1250,false,chandlery-a,false,B-mat-450-1250-1m,\"Chopped strand mat 450 g/m2, binder-bound, 1250 mm wide, by the metre\",2.50,0.562,4.95,1,m2,reinforcement-mat-450,1.25,1250,false,chandlery-b,false,C-mat-450-1250-30m,\"Chopped strand mat 450 g/m2, binder-bound, 1250 mm wide, roll of 30 m\",16.875,108.00,1,101.50,4,95.00,12,m2,reinforcement-mat-450,37.5,1250,false,merchant-c,false,C-mat-450-1250-60m,\"Chopped strand mat 450 g/m2, binder-bound, 1250 mm wide, roll of 60 m\",33.75,198.50,1,186.50,4,174.50,12,m2,reinforcement-mat-450,75,1250,false,merchant-c,false,A-tape-biaxial-600-100-10m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 100 mm wide, roll of 10 m\",0.6,24.80,1,23.30,6,m2,reinforcement-tape-biaxial-600,1,100,false,chandlery-a,false,C-tape-biaxial-600-100-10m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 100 mm wide, roll of 10 m\",0.6,21.70,1,20.40,6,19.10,20,m2,reinforcement-tape-biaxial-600,1,100,false,merchant-c,false,A-tape-biaxial-600-100-50m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 100 mm wide, roll of 50 m\",3,105.00,1,98.50,4,m2,reinforcement-tape-biaxial-600,5,100,false,chandlery-a,false,C-tape-biaxial-600-100-50m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 100 mm wide, roll of 50 m\",3,91.50,1,86.00,4,80.50,12,m2,reinforcement-tape-biaxial-600,5,100,false,merchant-c,false,A-tape-biaxial-600-150-10m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 150 mm wide, roll of 10 m\",0.9,35.00,1,32.90,6,m2,reinforcement-tape-biaxial-600,1.5,150,false,chandlery-a,false,C-tape-biaxial-600-150-10m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 150 mm wide, roll of 10 m\",0.9,30.60,1,28.80,6,26.90,20,m2,reinforcement-tape-biaxial-600,1.5,150,false,merchant-c,false,A-tape-biaxial-600-150-50m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 150 mm wide, roll of 50 m\",4.5,148.00,1,139.00,4,m2,reinforcement-tape-biaxial-600,7.5,150,false,chandlery-a,false,C-tape-biaxial-600-150-50m,\"Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide, 150 mm wide, roll of 50 m\",4.5,129.00,1,121.50,4,113.50,12,m2,reinforcement-tape-biaxial-600,7.5,150,false,merchant-c,false,A-tape-plain-300-50-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 50 mm wide, roll of 10 m\",0.15,6.05,1,5.70,6,m2,reinforcement-tape-plain-300,0.5,50,false,chandlery-a,false,C-tape-plain-300-50-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 50 mm wide, roll of 10 m\",0.15,5.35,1,5.05,6,4.70,20,m2,reinforcement-tape-plain-300,0.5,50,false,merchant-c,false,A-tape-plain-300-50-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 50 mm wide, roll of 50 m\",0.75,29.10,1,27.40,6,m2,reinforcement-tape-plain-300,2.5,50,false,chandlery-a,false,C-tape-plain-300-50-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 50 mm wide, roll of 50 m\",0.75,25.70,1,24.20,6,22.60,20,m2,reinforcement-tape-plain-300,2.5,50,false,merchant-c,false,A-tape-plain-300-75-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 75 mm wide, roll of 10 m\",0.225,9.60,1,9.00,6,m2,reinforcement-tape-plain-300,0.75,75,false,chandlery-a,false,C-tape-plain-300-75-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 75 mm wide, roll of 10 m\",0.225,8.50,1,8.00,6,7.50,20,m2,reinforcement-tape-plain-300,0.75,75,false,merchant-c,false,A-tape-plain-300-75-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 75 mm wide, roll of 50 m\",1.125,39.90,1,37.50,6,m2,reinforcement-tape-plain-300,3.75,75,false,chandlery-a,false,C-tape-plain-300-75-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 75 mm wide, roll of 50 m\",1.125,35.90,1,33.70,6,31.60,20,m2,reinforcement-tape-plain-300,3.75,75,false,merchant-c,false,A-tape-plain-300-100-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 100 mm wide, roll of 10 m\",0.3,11.60,1,10.90,6,m2,reinforcement-tape-plain-300,1,100,false,chandlery-a,false,C-tape-plain-300-100-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 100 mm wide, roll of 10 m\",0.3,11.05,1,10.40,6,9.70,20,m2,reinforcement-tape-plain-300,1,100,false,merchant-c,false,A-tape-plain-300-100-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 100 mm wide, roll of 50 m\",1.5,48.90,1,46.00,4,m2,reinforcement-tape-plain-300,5,100,false,chandlery-a,false,C-tape-plain-300-100-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 100 mm wide, roll of 50 m\",1.5,46.80,1,44.00,4,41.20,12,m2,reinforcement-tape-plain-300,5,100,false,merchant-c,false,A-tape-plain-300-150-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 150 mm wide, roll of 10 m\",0.45,16.30,1,15.30,6,m2,reinforcement-tape-plain-300,1.5,150,false,chandlery-a,false,C-tape-plain-300-150-10m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 150 mm wide, roll of 10 m\",0.45,15.60,1,14.65,6,13.75,20,m2,reinforcement-tape-plain-300,1.5,150,false,merchant-c,false,A-tape-plain-300-150-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 150 mm wide, roll of 50 m\",2.25,78.50,1,74.00,4,m2,reinforcement-tape-plain-300,7.5,150,false,chandlery-a,false,C-tape-plain-300-150-50m,\"Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide, 150 mm wide, roll of 50 m\",2.25,64.50,1,60.50,4,56.80,12,m2,reinforcement-tape-plain-300,7.5,150,false,merchant-c,false,A-unidirectional-300-300-1m,\"Stitched unidirectional glass 300 g/m2, 300 mm wide, by the metre\",2.50,0.09,2.70,1,m2,reinforcement-unidirectional-300,0.3,300,false,chandlery-a,false,B-unidirectional-300-300-1m,\"Stitched unidirectional glass 300 g/m2, 300 mm wide, by the metre\",2.50,0.09,2.55,1,m2,reinforcement-unidirectional-300,0.3,300,false,chandlery-b,false,C-unidirectional-300-300-50m,\"Stitched unidirectional glass 300 g/m2, 300 mm wide, roll of 50 m\",4.5,88.50,1,83.00,4,78.00,12,m2,reinforcement-unidirectional-300,15,300,false,merchant-c,false,A-unidirectional-300-500-1m,\"Stitched unidirectional glass 300 g/m2, 500 mm wide, by the metre\",2.50,0.15,4.05,1,m2,reinforcement-unidirectional-300,0.5,500,false,chandlery-a,false,B-unidirectional-300-500-1m,\"Stitched unidirectional glass 300 g/m2, 500 mm wide, by the metre\",2.50,0.15,4.35,1,m2,reinforcement-unidirectional-300,0.5,500,false,chandlery-b,false,C-unidirectional-300-500-50m,\"Stitched unidirectional glass 300 g/m2, 500 mm wide, roll of 50 m\",7.5,144.50,1,136.00,4,127.00,12,m2,reinforcement-unidirectional-300,25,500,false,merchant-c,false,A-unidirectional-300-1270-1m,\"Stitched unidirectional glass 300 g/m2, 1270 mm wide, by the metre\",2.50,0.381,9.55,1,m2,reinforcement-unidirectional-300,1.27,1270,false,chandlery-a,false,B-unidirectional-300-1270-1m,\"Stitched unidirectional glass 300 g/m2, 1270 mm wide, by the metre\",2.50,0.381,9.45,1,m2,reinforcement-unidirectional-300,1.27,1270,false,chandlery-b,false,C-unidirectional-300-1270-50m,\"Stitched unidirectional glass 300 g/m2, 1270 mm wide, roll of 50 m\",19.05,317.50,1,298.50,4,279.50,12,m2,reinforcement-unidirectional-300,63.5,1270,false,merchant-c,false,A-woven-roving-600-1000-1m,\"Woven roving 600 g/m2, 1000 mm wide, by the metre\",2.50,0.6,8.85,1,m2,reinforcement-woven-roving-600,1,1000,false,chandlery-a,false,B-woven-roving-600-1000-1m,\"Woven roving 600 g/m2, 1000 mm wide, by the metre\",2.50,0.6,9.05,1,m2,reinforcement-woven-roving-600,1,1000,false,chandlery-b,false,C-woven-roving-600-1000-40m,\"Woven roving 600 g/m2, 1000 mm wide, roll of 40 m\",24,254.50,1,239.00,4,224.00,12,m2,reinforcement-woven-roving-600,40,1000,false,merchant-c,false,C-woven-roving-600-1000-80m,\"Woven roving 600 g/m2, 1000 mm wide, roll of 80 m\",48,454.00,1,427.00,4,399.50,12,m2,reinforcement-woven-roving-600,80,1000,false,merchant-c,false,A-woven-roving-600-1270-1m,\"Woven roving 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,11.60,1,m2,reinforcement-woven-roving-600,1.27,1270,false,chandlery-a,false,B-woven-roving-600-1270-1m,\"Woven roving 600 g/m2, 1270 mm wide, by the metre\",2.50,0.762,10.40,1,m2,reinforcement-woven-roving-600,1.27,1270,false,chandlery-b,false,C-woven-roving-600-1270-40m,\"Woven roving 600 g/m2, 1270 mm wide, roll of 40 m\",30.48,290.00,1,272.50,4,255.00,12,m2,reinforcement-woven-roving-600,50.8,1270,false,merchant-c,false,C-woven-roving-600-1270-80m,\"Woven roving 600 g/m2, 1270 mm wide, roll of 80 m\",60.96,589.00,1,553.50,4,518.50,12,m2,reinforcement-woven-roving-600,101.6,1270,false,merchant-c,false,A-woven-roving-800-1000-1m,\"Woven roving 800 g/m2, 1000 mm wide, by the metre\",2.50,0.8,11.80,1,m2,reinforcement-woven-roving-800,1,1000,false,chandlery-a,false,B-woven-roving-800-1000-1m,\"Woven roving 800 g/m2, 1000 mm wide, by the metre\",2.50,0.8,12.05,1,m2,reinforcement-woven-roving-800,1,1000,false,chandlery-b,false,C-woven-roving-800-1000-30m,\"Woven roving 800 g/m2, 1000 mm wide, roll of 30 m\",24,258.00,1,242.50,4,227.00,12,m2,reinforcement-woven-roving-800,30,1000,false,merchant-c,false,C-woven-roving-800-1000-60m,\"Woven roving 800 g/m2, 1000 mm wide, roll of 60 m\",48,464.50,1,436.50,4,409.00,12,m2,reinforcement-woven-roving-800,60,1000,false,merchant-c,false,A-woven-roving-800-1270-1m,\"Woven roving 800 g/m2, 1270 mm wide, by the metre\",2.50,1.016,15.20,1,m2,reinforcement-woven-roving-800,1.27,1270,false,chandlery-a,false,B-woven-roving-800-1270-1m,\"Woven roving 800 g/m2, 1270 mm wide, by the metre\",2.50,1.016,15.45,1,m2,reinforcement-woven-roving-800,1.27,1270,false,chandlery-b,false,C-woven-roving-800-1270-30m,\"Woven roving 800 g/m2, 1270 mm wide, roll of 30 m\",30.48,293.50,1,276.00,4,258.50,12,m2,reinforcement-woven-roving-800,38.1,1270,false,merchant-c,false,C-woven-roving-800-1270-60m,\"Woven roving 800 g/m2, 1270 mm wide, roll of 60 m\",60.96,602.50,1,566.50,4,530.00,12,m2,reinforcement-woven-roving-800,76.2,1270,false,merchant-c,false,A-epoxy-100to22-resin-1usqt,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 1 US qt\",1.153,22.50,1,21.10,6,kg,resin-epoxy-100to22,1.088,false,chandlery-a,true,24,B-epoxy-100to22-resin-1usqt,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 1 US qt\",1.153,21.10,1,19.85,6,kg,resin-epoxy-100to22,1.088,false,chandlery-b,true,24,A-epoxy-100to22-resin-1usgal,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 1 US gal\",4.614,81.50,1,76.50,4,kg,resin-epoxy-100to22,4.353,false,chandlery-a,true,24,B-epoxy-100to22-resin-1usgal,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 1 US gal\",4.614,79.00,1,74.50,4,kg,resin-epoxy-100to22,4.353,false,chandlery-b,true,24,C-epoxy-100to22-resin-1usgal,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 1 US gal\",4.614,65.50,1,61.50,4,57.60,12,kg,resin-epoxy-100to22,4.353,false,merchant-c,true,24,A-epoxy-100to22-resin-5usgal,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 5 US gal\",23.072,333.00,1,kg,resin-epoxy-100to22,21.766,false,chandlery-a,true,24,C-epoxy-100to22-resin-5usgal,\"Laminating epoxy, 100:22 by volume (100:20 by weight), resin, 5 US gal\",23.072,305.50,1,kg,resin-epoxy-100to22,21.766,false,merchant-c,true,24,A-epoxy-100to22-medium-1usqt,\"Medium hardener, 100:22, for 1 US qt of resin, 0.25 kg\",0.275,7.30,1,6.85,6,medium,kg,resin-epoxy-100to22,0.25,false,chandlery-a,true,24,B-epoxy-100to22-medium-1usqt,\"Medium hardener, 100:22, for 1 US qt of resin, 0.25 kg\",0.275,7.05,1,6.65,6,medium,kg,resin-epoxy-100to22,0.25,false,chandlery-b,true,24,A-epoxy-100to22-medium-1usgal,\"Medium hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,22.50,1,21.10,6,medium,kg,resin-epoxy-100to22,0.9,false,chandlery-a,true,24,B-epoxy-100to22-medium-1usgal,\"Medium hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,20.10,1,18.90,6,medium,kg,resin-epoxy-100to22,0.9,false,chandlery-b,true,24,C-epoxy-100to22-medium-1usgal,\"Medium hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,19.25,1,18.10,6,16.95,20,medium,kg,resin-epoxy-100to22,0.9,false,merchant-c,true,24,A-epoxy-100to22-medium-5usgal,\"Medium hardener, 100:22, for 5 US gal of resin, 4.4 kg\",4.84,90.00,1,medium,kg,resin-epoxy-100to22,4.4,false,chandlery-a,true,24,C-epoxy-100to22-medium-5usgal,\"Medium hardener, 100:22, for 5 US gal of resin, 4.4 kg\",4.84,78.50,1,medium,kg,resin-epoxy-100to22,4.4,false,merchant-c,true,24,A-epoxy-100to22-slow-1usqt,\"Slow hardener, 100:22, for 1 US qt of resin, 0.25 kg\",0.275,7.15,1,6.70,6,slow,kg,resin-epoxy-100to22,0.25,false,chandlery-a,true,24,B-epoxy-100to22-slow-1usqt,\"Slow hardener, 100:22, for 1 US qt of resin, 0.25 kg\",0.275,6.40,1,6.00,6,slow,kg,resin-epoxy-100to22,0.25,false,chandlery-b,true,24,A-epoxy-100to22-slow-1usgal,\"Slow hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,22.30,1,21.00,6,slow,kg,resin-epoxy-100to22,0.9,false,chandlery-a,true,24,B-epoxy-100to22-slow-1usgal,\"Slow hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,21.00,1,19.75,6,slow,kg,resin-epoxy-100to22,0.9,false,chandlery-b,true,24,C-epoxy-100to22-slow-1usgal,\"Slow hardener, 100:22, for 1 US gal of resin, 0.9 kg\",0.99,18.85,1,17.70,6,16.60,20,slow,kg,resin-epoxy-100to22,0.9,false,merchant-c,true,24,A-epoxy-100to22-slow-5usgal,\"Slow hardener, 100:22, for 5 US gal of resin, 4.4 kg\",4.84,89.00,1,slow,kg,resin-epoxy-100to22,4.4,false,chandlery-a,true,24,C-epoxy-100to22-slow-5usgal,\"Slow hardener, 100:22, for 5 US gal of resin, 4.4 kg\",4.84,75.50,1,slow,kg,resin-epoxy-100to22,4.4,false,merchant-c,true,24,A-epoxy-2to1-resin-1usqt,\"Laminating epoxy, 2:1 by volume, resin, 1 US qt\",1.133,23.50,1,22.10,6,kg,resin-epoxy-2to1,1.069,false,chandlery-a,true,24,B-epoxy-2to1-resin-1usqt,\"Laminating epoxy, 2:1 by volume, resin, 1 US qt\",1.133,20.60,1,19.35,6,kg,resin-epoxy-2to1,1.069,false,chandlery-b,true,24,A-epoxy-2to1-resin-1usgal,\"Laminating epoxy, 2:1 by volume, resin, 1 US gal\",4.535,73.50,1,69.00,4,kg,resin-epoxy-2to1,4.278,false,chandlery-a,true,24,B-epoxy-2to1-resin-1usgal,\"Laminating epoxy, 2:1 by volume, resin, 1 US gal\",4.535,78.00,1,73.50,4,kg,resin-epoxy-2to1,4.278,false,chandlery-b,true,24,C-epoxy-2to1-resin-1usgal,\"Laminating epoxy, 2:1 by volume, resin, 1 US gal\",4.535,68.00,1,64.00,4,59.80,12,kg,resin-epoxy-2to1,4.278,false,merchant-c,true,24,A-epoxy-2to1-resin-5usgal,\"Laminating epoxy, 2:1 by volume, resin, 5 US gal\",22.671,305.50,1,kg,resin-epoxy-2to1,21.388,false,chandlery-a,true,24,C-epoxy-2to1-resin-5usgal,\"Laminating epoxy, 2:1 by volume, resin, 5 US gal\",22.671,278.00,1,kg,resin-epoxy-2to1,21.388,false,merchant-c,true,24,A-epoxy-2to1-fast-1usqt,\"Fast hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.60,1,11.85,6,fast,kg,resin-epoxy-2to1,0.5,false,chandlery-a,true,24,B-epoxy-2to1-fast-1usqt,\"Fast hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.35,1,11.60,6,fast,kg,resin-epoxy-2to1,0.5,false,chandlery-b,true,24,A-epoxy-2to1-fast-1usgal,\"Fast hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,39.20,1,36.80,6,fast,kg,resin-epoxy-2to1,1.9,false,chandlery-a,true,24,B-epoxy-2to1-fast-1usgal,\"Fast hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,39.20,1,36.80,6,fast,kg,resin-epoxy-2to1,1.9,false,chandlery-b,true,24,C-epoxy-2to1-fast-1usgal,\"Fast hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,36.80,1,34.60,6,32.40,20,fast,kg,resin-epoxy-2to1,1.9,false,merchant-c,true,24,A-epoxy-2to1-fast-5usgal,\"Fast hardener, 2:1, for 5 US gal of resin, 9.5 kg\",10.45,182.00,1,fast,kg,resin-epoxy-2to1,9.5,false,chandlery-a,true,24,C-epoxy-2to1-fast-5usgal,\"Fast hardener, 2:1, for 5 US gal of resin, 9.5 kg\",10.45,153.00,1,fast,kg,resin-epoxy-2to1,9.5,false,merchant-c,true,24,A-epoxy-2to1-medium-1usqt,\"Medium hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.25,1,11.50,6,medium,kg,resin-epoxy-2to1,0.5,false,chandlery-a,true,24,B-epoxy-2to1-medium-1usqt,\"Medium hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,13.00,1,12.20,6,medium,kg,resin-epoxy-2to1,0.5,false,chandlery-b,true,24,A-epoxy-2to1-medium-1usgal,\"Medium hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,39.60,1,37.20,6,medium,kg,resin-epoxy-2to1,1.9,false,chandlery-a,true,24,B-epoxy-2to1-medium-1usgal,\"Medium hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,40.50,1,38.10,4,medium,kg,resin-epoxy-2to1,1.9,false,chandlery-b,true,24,C-epoxy-2to1-medium-1usgal,\"Medium hardener, 2:1, for 1 US gal of resin, 1.9 kg\",2.09,38.70,1,36.40,6,34.10,20,medium,kg,resin-epoxy-2to1,1.9,false,merchant-c,true,24,A-epoxy-2to1-medium-5usgal,\"Medium hardener, 2:1, for 5 US gal of resin, 9.3 kg\",10.23,158.50,1,medium,kg,resin-epoxy-2to1,9.3,false,chandlery-a,true,24,C-epoxy-2to1-medium-5usgal,\"Medium hardener, 2:1, for 5 US gal of resin, 9.3 kg\",10.23,158.00,1,medium,kg,resin-epoxy-2to1,9.3,false,merchant-c,true,24,A-epoxy-2to1-slow-1usqt,\"Slow hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.25,1,11.50,6,slow,kg,resin-epoxy-2to1,0.5,false,chandlery-a,true,24,B-epoxy-2to1-slow-1usqt,\"Slow hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.00,1,11.30,6,slow,kg,resin-epoxy-2to1,0.5,false,chandlery-b,true,24,A-epoxy-2to1-slow-1usgal,\"Slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,38.30,1,36.00,6,slow,kg,resin-epoxy-2to1,1.85,false,chandlery-a,true,24,B-epoxy-2to1-slow-1usgal,\"Slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,38.30,1,36.00,6,slow,kg,resin-epoxy-2to1,1.85,false,chandlery-b,true,24,C-epoxy-2to1-slow-1usgal,\"Slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,36.70,1,34.50,6,32.30,20,slow,kg,resin-epoxy-2to1,1.85,false,merchant-c,true,24,A-epoxy-2to1-slow-5usgal,\"Slow hardener, 2:1, for 5 US gal of resin, 9.2 kg\",10.12,177.00,1,slow,kg,resin-epoxy-2to1,9.2,false,chandlery-a,true,24,C-epoxy-2to1-slow-5usgal,\"Slow hardener, 2:1, for 5 US gal of resin, 9.2 kg\",10.12,149.00,1,slow,kg,resin-epoxy-2to1,9.2,false,merchant-c,true,24,A-epoxy-2to1-extra-slow-1usqt,\"Extra slow hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.50,1,11.75,6,extra-slow,kg,resin-epoxy-2to1,0.5,false,chandlery-a,true,24,B-epoxy-2to1-extra-slow-1usqt,\"Extra slow hardener, 2:1, for 1 US qt of resin, 0.5 kg\",0.55,12.75,1,12.00,6,extra-slow,kg,resin-epoxy-2to1,0.5,false,chandlery-b,true,24,A-epoxy-2to1-extra-slow-1usgal,\"Extra slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,42.00,1,39.50,4,extra-slow,kg,resin-epoxy-2to1,1.85,false,chandlery-a,true,24,B-epoxy-2to1-extra-slow-1usgal,\"Extra slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,37.90,1,35.60,6,extra-slow,kg,resin-epoxy-2to1,1.85,false,chandlery-b,true,24,C-epoxy-2to1-extra-slow-1usgal,\"Extra slow hardener, 2:1, for 1 US gal of resin, 1.85 kg\",2.035,37.40,1,35.20,6,32.90,20,extra-slow,kg,resin-epoxy-2to1,1.85,false,merchant-c,true,24,A-epoxy-2to1-extra-slow-5usgal,\"Extra slow hardener, 2:1, for 5 US gal of resin, 9.1 kg\",10.01,172.00,1,extra-slow,kg,resin-epoxy-2to1,9.1,false,chandlery-a,true,24,C-epoxy-2to1-extra-slow-5usgal,\"Extra slow hardener, 2:1, for 5 US gal of resin, 9.1 kg\",10.01,153.50,1,extra-slow,kg,resin-epoxy-2to1,9.1,false,merchant-c,true,24,A-epoxy-3to1-resin-1usqt,\"Laminating epoxy, 3:1 by volume, resin, 1 US qt\",1.133,23.20,1,21.80,6,kg,resin-epoxy-3to1,1.069,false,chandlery-a,true,24,B-epoxy-3to1-resin-1usqt,\"Laminating epoxy, 3:1 by volume, resin, 1 US qt\",1.133,23.20,1,21.80,6,kg,resin-epoxy-3to1,1.069,false,chandlery-b,true,24,A-epoxy-3to1-resin-1usgal,\"Laminating epoxy, 3:1 by volume, resin, 1 US gal\",4.535,74.00,1,69.50,4,kg,resin-epoxy-3to1,4.278,false,chandlery-a,true,24,B-epoxy-3to1-resin-1usgal,\"Laminating epoxy, 3:1 by volume, resin, 1 US gal\",4.535,77.00,1,72.50,4,kg,resin-epoxy-3to1,4.278,false,chandlery-b,true,24,C-epoxy-3to1-resin-1usgal,\"Laminating epoxy, 3:1 by volume, resin, 1 US gal\",4.535,69.00,1,65.00,4,60.50,12,kg,resin-epoxy-3to1,4.278,false,merchant-c,true,24,A-epoxy-3to1-resin-5usgal,\"Laminating epoxy, 3:1 by volume, resin, 5 US gal\",22.671,302.50,1,kg,resin-epoxy-3to1,21.388,false,chandlery-a,true,24,C-epoxy-3to1-resin-5usgal,\"Laminating epoxy, 3:1 by volume, resin, 5 US gal\",22.671,281.00,1,kg,resin-epoxy-3to1,21.388,false,merchant-c,true,24,A-epoxy-3to1-fast-1usqt,\"Fast hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.70,1,9.10,6,fast,kg,resin-epoxy-3to1,0.35,false,chandlery-a,true,24,B-epoxy-3to1-fast-1usqt,\"Fast hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.30,1,8.75,6,fast,kg,resin-epoxy-3to1,0.35,false,chandlery-b,true,24,A-epoxy-3to1-fast-1usgal,\"Fast hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,31.70,1,29.80,6,fast,kg,resin-epoxy-3to1,1.3,false,chandlery-a,true,24,B-epoxy-3to1-fast-1usgal,\"Fast hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,27.80,1,26.10,6,fast,kg,resin-epoxy-3to1,1.3,false,chandlery-b,true,24,C-epoxy-3to1-fast-1usgal,\"Fast hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,26.60,1,25.00,6,23.40,20,fast,kg,resin-epoxy-3to1,1.3,false,merchant-c,true,24,A-epoxy-3to1-fast-5usgal,\"Fast hardener, 3:1, for 5 US gal of resin, 6.4 kg\",7.04,127.50,1,fast,kg,resin-epoxy-3to1,6.4,false,chandlery-a,true,24,C-epoxy-3to1-fast-5usgal,\"Fast hardener, 3:1, for 5 US gal of resin, 6.4 kg\",7.04,107.00,1,fast,kg,resin-epoxy-3to1,6.4,false,merchant-c,true,24,A-epoxy-3to1-medium-1usqt,\"Medium hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.05,1,8.50,6,medium,kg,resin-epoxy-3to1,0.35,false,chandlery-a,true,24,B-epoxy-3to1-medium-1usqt,\"Medium hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.40,1,8.85,6,medium,kg,resin-epoxy-3to1,0.35,false,chandlery-b,true,24,A-epoxy-3to1-medium-1usgal,\"Medium hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,29.30,1,27.50,6,medium,kg,resin-epoxy-3to1,1.3,false,chandlery-a,true,24,B-epoxy-3to1-medium-1usgal,\"Medium hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,29.80,1,28.00,6,medium,kg,resin-epoxy-3to1,1.3,false,chandlery-b,true,24,C-epoxy-3to1-medium-1usgal,\"Medium hardener, 3:1, for 1 US gal of resin, 1.3 kg\",1.43,28.50,1,26.80,6,25.10,20,medium,kg,resin-epoxy-3to1,1.3,false,merchant-c,true,24,A-epoxy-3to1-medium-5usgal,\"Medium hardener, 3:1, for 5 US gal of resin, 6.35 kg\",6.985,117.00,1,medium,kg,resin-epoxy-3to1,6.35,false,chandlery-a,true,24,C-epoxy-3to1-medium-5usgal,\"Medium hardener, 3:1, for 5 US gal of resin, 6.35 kg\",6.985,102.00,1,medium,kg,resin-epoxy-3to1,6.35,false,merchant-c,true,24,A-epoxy-3to1-slow-1usqt,\"Slow hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.40,1,8.85,6,slow,kg,resin-epoxy-3to1,0.35,false,chandlery-a,true,24,B-epoxy-3to1-slow-1usqt,\"Slow hardener, 3:1, for 1 US qt of resin, 0.35 kg\",0.385,9.05,1,8.50,6,slow,kg,resin-epoxy-3to1,0.35,false,chandlery-b,true,24,A-epoxy-3to1-slow-1usgal,\"Slow hardener, 3:1, for 1 US gal of resin, 1.25 kg\",1.375,30.60,1,28.80,6,slow,kg,resin-epoxy-3to1,1.25,false,chandlery-a,true,24,B-epoxy-3to1-slow-1usgal,\"Slow hardener, 3:1, for 1 US gal of resin, 1.25 kg\",1.375,26.90,1,25.30,6,slow,kg,resin-epoxy-3to1,1.25,false,chandlery-b,true,24,C-epoxy-3to1-slow-1usgal,\"Slow hardener, 3:1, for 1 US gal of resin, 1.25 kg\",1.375,25.70,1,24.20,6,22.60,20,slow,kg,resin-epoxy-3to1,1.25,false,merchant-c,true,24,A-epoxy-3to1-slow-5usgal,\"Slow hardener, 3:1, for 5 US gal of resin, 6.2 kg\",6.82,111.00,1,slow,kg,resin-epoxy-3to1,6.2,false,chandlery-a,true,24,C-epoxy-3to1-slow-5usgal,\"Slow hardener, 3:1, for 5 US gal of resin, 6.2 kg\",6.82,104.00,1,slow,kg,resin-epoxy-3to1,6.2,false,merchant-c,true,24,A-epoxy-5to1-resin-1usqt,\"Laminating epoxy, 5:1 by volume, resin, 1 US qt\",1.153,23.10,1,21.70,6,kg,resin-epoxy-5to1,1.088,false,chandlery-a,true,24,B-epoxy-5to1-resin-1usqt,\"Laminating epoxy, 5:1 by volume, resin, 1 US qt\",1.153,23.10,1,21.70,6,kg,resin-epoxy-5to1,1.088,false,chandlery-b,true,24,A-epoxy-5to1-resin-1usgal,\"Laminating epoxy, 5:1 by volume, resin, 1 US gal\",4.614,75.50,1,71.00,4,kg,resin-epoxy-5to1,4.353,false,chandlery-a,true,24,B-epoxy-5to1-resin-1usgal,\"Laminating epoxy, 5:1 by volume, resin, 1 US gal\",4.614,78.50,1,74.00,4,kg,resin-epoxy-5to1,4.353,false,chandlery-b,true,24,C-epoxy-5to1-resin-1usgal,\"Laminating epoxy, 5:1 by volume, resin, 1 US gal\",4.614,70.00,1,66.00,4,61.50,12,kg,resin-epoxy-5to1,4.353,false,merchant-c,true,24,A-epoxy-5to1-resin-5usgal,\"Laminating epoxy, 5:1 by volume, resin, 5 US gal\",23.072,307.00,1,kg,resin-epoxy-5to1,21.766,false,chandlery-a,true,24,C-epoxy-5to1-resin-5usgal,\"Laminating epoxy, 5:1 by volume, resin, 5 US gal\",23.072,285.00,1,kg,resin-epoxy-5to1,21.766,false,merchant-c,true,24,A-epoxy-5to1-fast-1usqt,\"Fast hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,5.50,1,5.15,6,fast,kg,resin-epoxy-5to1,0.2,false,chandlery-a,true,24,B-epoxy-5to1-fast-1usqt,\"Fast hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,5.30,1,5.00,6,fast,kg,resin-epoxy-5to1,0.2,false,chandlery-b,true,24,A-epoxy-5to1-fast-1usgal,\"Fast hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,20.30,1,19.10,6,fast,kg,resin-epoxy-5to1,0.8,false,chandlery-a,true,24,B-epoxy-5to1-fast-1usgal,\"Fast hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,17.75,1,16.70,6,fast,kg,resin-epoxy-5to1,0.8,false,chandlery-b,true,24,C-epoxy-5to1-fast-1usgal,\"Fast hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,17.00,1,16.00,6,14.95,20,fast,kg,resin-epoxy-5to1,0.8,false,merchant-c,true,24,A-epoxy-5to1-fast-5usgal,\"Fast hardener 5:1, for 5 US gal of resin, 3.9 kg\",4.29,81.00,1,fast,kg,resin-epoxy-5to1,3.9,false,chandlery-a,true,24,C-epoxy-5to1-fast-5usgal,\"Fast hardener 5:1, for 5 US gal of resin, 3.9 kg\",4.29,68.00,1,fast,kg,resin-epoxy-5to1,3.9,false,merchant-c,true,24,A-epoxy-5to1-medium-1usqt,\"Medium hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,5.50,1,5.15,6,medium,kg,resin-epoxy-5to1,0.2,false,chandlery-a,true,24,B-epoxy-5to1-medium-1usqt,\"Medium hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,5.75,1,5.40,6,medium,kg,resin-epoxy-5to1,0.2,false,chandlery-b,true,24,A-epoxy-5to1-medium-1usgal,\"Medium hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,20.30,1,19.10,6,medium,kg,resin-epoxy-5to1,0.8,false,chandlery-a,true,24,B-epoxy-5to1-medium-1usgal,\"Medium hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,18.15,1,17.05,6,medium,kg,resin-epoxy-5to1,0.8,false,chandlery-b,true,24,C-epoxy-5to1-medium-1usgal,\"Medium hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,17.70,1,16.65,6,15.60,20,medium,kg,resin-epoxy-5to1,0.8,false,merchant-c,true,24,A-epoxy-5to1-medium-5usgal,\"Medium hardener 5:1, for 5 US gal of resin, 3.9 kg\",4.29,81.00,1,medium,kg,resin-epoxy-5to1,3.9,false,chandlery-a,true,24,C-epoxy-5to1-medium-5usgal,\"Medium hardener 5:1, for 5 US gal of resin, 3.9 kg\",4.29,70.50,1,medium,kg,resin-epoxy-5to1,3.9,false,merchant-c,true,24,A-epoxy-5to1-slow-1usqt,\"Slow hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,6.10,1,5.75,6,slow,kg,resin-epoxy-5to1,0.2,false,chandlery-a,true,24,B-epoxy-5to1-slow-1usqt,\"Slow hardener 5:1, for 1 US qt of resin, 0.2 kg\",0.22,5.85,1,5.50,6,slow,kg,resin-epoxy-5to1,0.2,false,chandlery-b,true,24,A-epoxy-5to1-slow-1usgal,\"Slow hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,20.30,1,19.10,6,slow,kg,resin-epoxy-5to1,0.8,false,chandlery-a,true,24,B-epoxy-5to1-slow-1usgal,\"Slow hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,17.75,1,16.70,6,slow,kg,resin-epoxy-5to1,0.8,false,chandlery-b,true,24,C-epoxy-5to1-slow-1usgal,\"Slow hardener 5:1, for 1 US gal of resin, 0.8 kg\",0.88,17.00,1,16.00,6,14.95,20,slow,kg,resin-epoxy-5to1,0.8,false,merchant-c,true,24,A-epoxy-5to1-slow-5usgal,\"Slow hardener 5:1, for 5 US gal of resin, 3.8 kg\",4.18,80.50,1,slow,kg,resin-epoxy-5to1,3.8,false,chandlery-a,true,24,C-epoxy-5to1-slow-5usgal,\"Slow hardener 5:1, for 5 US gal of resin, 3.8 kg\",4.18,66.50,1,slow,kg,resin-epoxy-5to1,3.8,false,merchant-c,true,24,A-polyester-laminating-resin-1usqt,\"Laminating polyester, pre-accelerated, resin, 1 US qt\",1.103,7.45,1,7.00,6,kg,resin-polyester-laminating,1.041,false,chandlery-a,true,6,B-polyester-laminating-resin-1usqt,\"Laminating polyester, pre-accelerated, resin, 1 US qt\",1.103,7.00,1,6.60,6,kg,resin-polyester-laminating,1.041,false,chandlery-b,true,6,A-polyester-laminating-resin-1usgal,\"Laminating polyester, pre-accelerated, resin, 1 US gal\",4.414,25.40,1,23.90,6,kg,resin-polyester-laminating,4.164,false,chandlery-a,true,6,B-polyester-laminating-resin-1usgal,\"Laminating polyester, pre-accelerated, resin, 1 US gal\",4.414,24.20,1,22.70,6,kg,resin-polyester-laminating,4.164,false,chandlery-b,true,6,C-polyester-laminating-resin-1usgal,\"Laminating polyester, pre-accelerated, resin, 1 US gal\",4.414,22.00,1,20.70,6,19.35,20,kg,resin-polyester-laminating,4.164,false,merchant-c,true,6,A-polyester-laminating-resin-5usgal,\"Laminating polyester, pre-accelerated, resin, 5 US gal\",22.069,103.50,1,kg,resin-polyester-laminating,20.82,false,chandlery-a,true,6,C-polyester-laminating-resin-5usgal,\"Laminating polyester, pre-accelerated, resin, 5 US gal\",22.069,89.50,1,kg,resin-polyester-laminating,20.82,false,merchant-c,true,6,A-polyester-laminating-fast-50g,\"Ketone-peroxide catalyst at 2 %, 50 g\",0.06,2.45,1,2.30,6,fast,kg,resin-polyester-laminating,0.05,false,chandlery-a,true,12,B-polyester-laminating-fast-50g,\"Ketone-peroxide catalyst at 2 %, 50 g\",0.06,2.40,1,2.25,6,fast,kg,resin-polyester-laminating,0.05,false,chandlery-b,true,12,A-polyester-laminating-fast-100g,\"Ketone-peroxide catalyst at 2 %, 100 g\",0.12,4.20,1,3.95,6,fast,kg,resin-polyester-laminating,0.1,false,chandlery-a,true,12,B-polyester-laminating-fast-100g,\"Ketone-peroxide catalyst at 2 %, 100 g\",0.12,3.95,1,3.70,6,fast,kg,resin-polyester-laminating,0.1,false,chandlery-b,true,12,C-polyester-laminating-fast-500g,\"Ketone-peroxide catalyst at 2 %, 500 g\",0.6,15.60,1,14.65,6,13.75,20,fast,kg,resin-polyester-laminating,0.5,false,merchant-c,true,12,A-polyester-laminating-fast-500g,\"Ketone-peroxide catalyst at 2 %, 500 g\",0.6,18.75,1,17.60,6,fast,kg,resin-polyester-laminating,0.5,false,chandlery-a,true,12,A-polyester-laminating-medium-50g,\"Ketone-peroxide catalyst at 1.5 %, 50 g\",0.06,2.20,1,2.05,6,medium,kg,resin-polyester-laminating,0.05,false,chandlery-a,true,12,B-polyester-laminating-medium-50g,\"Ketone-peroxide catalyst at 1.5 %, 50 g\",0.06,2.40,1,2.25,6,medium,kg,resin-polyester-laminating,0.05,false,chandlery-b,true,12,A-polyester-laminating-medium-100g,\"Ketone-peroxide catalyst at 1.5 %, 100 g\",0.12,4.45,1,4.20,6,medium,kg,resin-polyester-laminating,0.1,false,chandlery-a,true,12,B-polyester-laminating-medium-100g,\"Ketone-peroxide catalyst at 1.5 %, 100 g\",0.12,4.30,1,4.05,6,medium,kg,resin-polyester-laminating,0.1,false,chandlery-b,true,12,C-polyester-laminating-medium-500g,\"Ketone-peroxide catalyst at 1.5 %, 500 g\",0.6,15.10,1,14.20,6,13.30,20,medium,kg,resin-polyester-laminating,0.5,false,merchant-c,true,12,A-polyester-laminating-medium-500g,\"Ketone-peroxide catalyst at 1.5 %, 500 g\",0.6,17.50,1,16.45,6,medium,kg,resin-polyester-laminating,0.5,false,chandlery-a,true,12,A-polyester-laminating-slow-50g,\"Ketone-peroxide catalyst at 1 %, 50 g\",0.06,2.20,1,2.05,6,slow,kg,resin-polyester-laminating,0.05,false,chandlery-a,true,12,B-polyester-laminating-slow-50g,\"Ketone-peroxide catalyst at 1 %, 50 g\",0.06,2.20,1,2.05,6,slow,kg,resin-polyester-laminating,0.05,false,chandlery-b,true,12,A-polyester-laminating-slow-100g,\"Ketone-peroxide catalyst at 1 %, 100 g\",0.12,4.30,1,4.05,6,slow,kg,resin-polyester-laminating,0.1,false,chandlery-a,true,12,B-polyester-laminating-slow-100g,\"Ketone-peroxide catalyst at 1 %, 100 g\",0.12,4.05,1,3.80,6,slow,kg,resin-polyester-laminating,0.1,false,chandlery-b,true,12,C-polyester-laminating-slow-500g,\"Ketone-peroxide catalyst at 1 %, 500 g\",0.6,16.20,1,15.25,6,14.25,20,slow,kg,resin-polyester-laminating,0.5,false,merchant-c,true,12,A-polyester-laminating-slow-500g,\"Ketone-peroxide catalyst at 1 %, 500 g\",0.6,16.75,1,15.75,6,slow,kg,resin-polyester-laminating,0.5,false,chandlery-a,true,12,A-vinylester-laminating-resin-1usqt,\"Laminating vinylester, pre-accelerated, resin, 1 US qt\",1.103,12.20,1,11.45,6,kg,resin-vinylester-laminating,1.041,false,chandlery-a,true,6,B-vinylester-laminating-resin-1usqt,\"Laminating vinylester, pre-accelerated, resin, 1 US qt\",1.103,11.60,1,10.90,6,kg,resin-vinylester-laminating,1.041,false,chandlery-b,true,6,A-vinylester-laminating-resin-1usgal,\"Laminating vinylester, pre-accelerated, resin, 1 US gal\",4.414,41.30,1,38.80,4,kg,resin-vinylester-laminating,4.164,false,chandlery-a,true,6,B-vinylester-laminating-resin-1usgal,\"Laminating vinylester, pre-accelerated, resin, 1 US gal\",4.414,42.00,1,39.50,4,kg,resin-vinylester-laminating,4.164,false,chandlery-b,true,6,C-vinylester-laminating-resin-1usgal,\"Laminating vinylester, pre-accelerated, resin, 1 US gal\",4.414,35.30,1,33.20,6,31.10,20,kg,resin-vinylester-laminating,4.164,false,merchant-c,true,6,A-vinylester-laminating-resin-5usgal,\"Laminating vinylester, pre-accelerated, resin, 5 US gal\",22.069,168.50,1,kg,resin-vinylester-laminating,20.82,false,chandlery-a,true,6,C-vinylester-laminating-resin-5usgal,\"Laminating vinylester, pre-accelerated, resin, 5 US gal\",22.069,147.00,1,kg,resin-vinylester-laminating,20.82,false,merchant-c,true,6,A-vinylester-laminating-fast-50g,\"Ketone-peroxide catalyst at 2 %, 50 g\",0.06,2.50,1,2.35,6,fast,kg,resin-vinylester-laminating,0.05,false,chandlery-a,true,12,B-vinylester-laminating-fast-50g,\"Ketone-peroxide catalyst at 2 %, 50 g\",0.06,2.35,1,2.20,6,fast,kg,resin-vinylester-laminating,0.05,false,chandlery-b,true,12,A-vinylester-laminating-fast-100g,\"Ketone-peroxide catalyst at 2 %, 100 g\",0.12,4.10,1,3.85,6,fast,kg,resin-vinylester-laminating,0.1,false,chandlery-a,true,12,B-vinylester-laminating-fast-100g,\"Ketone-peroxide catalyst at 2 %, 100 g\",0.12,4.45,1,4.20,6,fast,kg,resin-vinylester-laminating,0.1,false,chandlery-b,true,12,C-vinylester-laminating-fast-500g,\"Ketone-peroxide catalyst at 2 %, 500 g\",0.6,15.90,1,14.95,6,14.00,20,fast,kg,resin-vinylester-laminating,0.5,false,merchant-c,true,12,A-vinylester-laminating-fast-500g,\"Ketone-peroxide catalyst at 2 %, 500 g\",0.6,18.40,1,17.30,6,fast,kg,resin-vinylester-laminating,0.5,false,chandlery-a,true,12,A-vinylester-laminating-medium-50g,\"Ketone-peroxide catalyst at 1.5 %, 50 g\",0.06,2.35,1,2.20,6,medium,kg,resin-vinylester-laminating,0.05,false,chandlery-a,true,12,B-vinylester-laminating-medium-50g,\"Ketone-peroxide catalyst at 1.5 %, 50 g\",0.06,2.20,1,2.05,6,medium,kg,resin-vinylester-laminating,0.05,false,chandlery-b,true,12,A-vinylester-laminating-medium-100g,\"Ketone-peroxide catalyst at 1.5 %, 100 g\",0.12,4.55,1,4.30,6,medium,kg,resin-vinylester-laminating,0.1,false,chandlery-a,true,12,B-vinylester-laminating-medium-100g,\"Ketone-peroxide catalyst at 1.5 %, 100 g\",0.12,4.30,1,4.05,6,medium,kg,resin-vinylester-laminating,0.1,false,chandlery-b,true,12,C-vinylester-laminating-medium-500g,\"Ketone-peroxide catalyst at 1.5 %, 500 g\",0.6,15.40,1,14.50,6,13.55,20,medium,kg,resin-vinylester-laminating,0.5,false,merchant-c,true,12,A-vinylester-laminating-medium-500g,\"Ketone-peroxide catalyst at 1.5 %, 500 g\",0.6,17.85,1,16.80,6,medium,kg,resin-vinylester-laminating,0.5,false,chandlery-a,true,12,A-vinylester-laminating-slow-50g,\"Ketone-peroxide catalyst at 1 %, 50 g\",0.06,2.30,1,2.15,6,slow,kg,resin-vinylester-laminating,0.05,false,chandlery-a,true,12,B-vinylester-laminating-slow-50g,\"Ketone-peroxide catalyst at 1 %, 50 g\",0.06,2.40,1,2.25,6,slow,kg,resin-vinylester-laminating,0.05,false,chandlery-b,true,12,A-vinylester-laminating-slow-100g,\"Ketone-peroxide catalyst at 1 %, 100 g\",0.12,4.20,1,3.95,6,slow,kg,resin-vinylester-laminating,0.1,false,chandlery-a,true,12,B-vinylester-laminating-slow-100g,\"Ketone-peroxide catalyst at 1 %, 100 g\",0.12,4.00,1,3.75,6,slow,kg,resin-vinylester-laminating,0.1,false,chandlery-b,true,12,C-vinylester-laminating-slow-500g,\"Ketone-peroxide catalyst at 1 %, 500 g\",0.6,16.20,1,15.25,6,14.25,20,slow,kg,resin-vinylester-laminating,0.5,false,merchant-c,true,12,A-vinylester-laminating-slow-500g,\"Ketone-peroxide catalyst at 1 %, 500 g\",0.6,18.75,1,17.60,6,slow,kg,resin-vinylester-laminating,0.5,false,chandlery-a,true,12,A-coverall-1each,\"Coverall, disposable, 1 each\",0.2,6.75,1,6.35,6,each,safety-coverall,1,false,chandlery-a,false,B-coverall-1each,\"Coverall, disposable, 1 each\",0.2,6.75,1,6.35,6,each,safety-coverall,1,false,chandlery-b,false,A-coverall-10each,\"Coverall, disposable, pack of 10 each\",2,58.10,1,54.60,4,each,safety-coverall,10,false,chandlery-a,false,B-coverall-10each,\"Coverall, disposable, pack of 10 each\",2,55.80,1,52.50,4,each,safety-coverall,10,false,chandlery-b,false,B-coverall-25each,\"Coverall, disposable, pack of 25 each\",5,126.00,1,118.50,4,each,safety-coverall,25,false,chandlery-b,false,A-coverall-25each,\"Coverall, disposable, pack of 25 each\",5,131.00,1,123.00,4,each,safety-coverall,25,false,chandlery-a,false,A-dust-curtain-1each,\"Zip door and film for a dust curtain, 1 each\",1.2,31.40,1,29.50,6,each,safety-dust-curtain,1,false,chandlery-a,false,B-dust-curtain-1each,\"Zip door and film for a dust curtain, 1 each\",1.2,31.60,1,29.70,6,each,safety-dust-curtain,1,false,chandlery-b,false,A-eye-wash-1each,\"Eye wash bottle, 500 ml, 1 each\",0.6,10.60,1,9.95,6,each,safety-eye-wash,1,false,chandlery-a,false,B-eye-wash-1each,\"Eye wash bottle, 500 ml, 1 each\",0.6,9.30,1,8.75,6,each,safety-eye-wash,1,false,chandlery-b,false,A-filters-1pair,\"Filter pair, particles and organic vapour, 1 pair\",0.15,19.80,1,18.60,6,pair,safety-filters,1,false,chandlery-a,false,B-filters-1pair,\"Filter pair, particles and organic vapour, 1 pair\",0.15,17.90,1,16.85,6,pair,safety-filters,1,false,chandlery-b,false,B-filters-4pair,\"Filter pair, particles and organic vapour, pack of 4 pair\",0.6,67.00,1,63.00,4,pair,safety-filters,4,false,chandlery-b,false,A-filters-4pair,\"Filter pair, particles and organic vapour, pack of 4 pair\",0.6,65.00,1,61.00,4,pair,safety-filters,4,false,chandlery-a,false,A-gloves-25pair,\"Nitrile gloves, pack of 25 pair\",0.3,6.20,1,5.85,6,pair,safety-gloves,25,false,chandlery-a,false,B-gloves-25pair,\"Nitrile gloves, pack of 25 pair\",0.3,5.60,1,5.25,6,pair,safety-gloves,25,false,chandlery-b,false,A-gloves-50pair,\"Nitrile gloves, pack of 50 pair\",0.6,11.80,1,11.10,6,pair,safety-gloves,50,false,chandlery-a,false,B-gloves-50pair,\"Nitrile gloves, pack of 50 pair\",0.6,10.65,1,10.00,6,pair,safety-gloves,50,false,chandlery-b,false,B-gloves-500pair,\"Nitrile gloves, pack of 500 pair\",6,90.50,1,85.00,4,pair,safety-gloves,500,false,chandlery-b,false,A-gloves-500pair,\"Nitrile gloves, pack of 500 pair\",6,90.50,1,85.00,4,pair,safety-gloves,500,false,chandlery-a,false,A-goggles-1each,\"Goggles, 1 each\",0.1,9.90,1,9.30,6,each,safety-goggles,1,false,chandlery-a,false,B-goggles-1each,\"Goggles, 1 each\",0.1,9.15,1,8.60,6,each,safety-goggles,1,false,chandlery-b,false,B-goggles-10each,\"Goggles, pack of 10 each\",1,76.50,1,72.00,4,each,safety-goggles,10,false,chandlery-b,false,A-goggles-10each,\"Goggles, pack of 10 each\",1,76.50,1,72.00,4,each,safety-goggles,10,false,chandlery-a,false,A-half-mask-1each,\"Half mask respirator, 1 each\",0.2,26.00,1,24.40,6,each,safety-half-mask,1,false,chandlery-a,false,B-half-mask-1each,\"Half mask respirator, 1 each\",0.2,25.00,1,23.50,6,each,safety-half-mask,1,false,chandlery-b,false,A-hearing-protection-1pair,\"Ear defenders, 1 pair\",0.25,15.50,1,14.55,6,pair,safety-hearing-protection,1,false,chandlery-a,false,B-hearing-protection-1pair,\"Ear defenders, 1 pair\",0.25,15.80,1,14.85,6,pair,safety-hearing-protection,1,false,chandlery-b,false,A-skin-cleanser-0_25l,\"Resin-removing skin cleanser, 0.25 l\",0.25,3.00,1,2.80,6,l,safety-skin-cleanser,0.25,false,chandlery-a,false,B-skin-cleanser-0_25l,\"Resin-removing skin cleanser, 0.25 l\",0.25,2.95,1,2.75,6,l,safety-skin-cleanser,0.25,false,chandlery-b,false,A-skin-cleanser-1l,\"Resin-removing skin cleanser, 1 l\",1,10.35,1,9.75,6,l,safety-skin-cleanser,1,false,chandlery-a,false,B-skin-cleanser-1l,\"Resin-removing skin cleanser, 1 l\",1,10.15,1,9.55,6,l,safety-skin-cleanser,1,false,chandlery-b,false,B-skin-cleanser-5l,\"Resin-removing skin cleanser, 5 l\",5,47.00,1,44.20,4,l,safety-skin-cleanser,5,false,chandlery-b,false,A-skin-cleanser-5l,\"Resin-removing skin cleanser, 5 l\",5,48.00,1,45.10,4,l,safety-skin-cleanser,5,false,chandlery-a,false,A-waste-bin-1each,\"Metal bin with lid for curing waste resin, 1 each\",2,20.60,1,19.35,6,each,safety-waste-bin,1,false,chandlery-a,false,B-waste-bin-1each,\"Metal bin with lid for curing waste resin, 1 each\",2,19.80,1,18.60,6,each,safety-waste-bin,1,false,chandlery-b,false,2027-12-31,USD,true,chandlery-a,Invented chandlery A,10.65,0.00,13.45,42.60,280.00,chandlery-b,Invented chandlery B,8.40,22.40,16.80,50.40,merchant-c,Invented composites merchant C,31.40,168.00,20.20,61.50,1008.00,2026-01-01,false,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,\r\n",
  "answers": {
   "200": {
    "imported": 3
   }
  }
 },
 "POST /v1/imports/sources": {
  "body": "key,body,year,title,readAs,note,url\r\nABRAMOWITZ-STEGUN-1964,\"National Bureau of Standards, Applied Mathematics Series 55\",1964,\"Handbook of Mathematical Functions, tables 9.8 and 26.1, formulas 25.4.5 and 26.2.23\",memory,,\r\n",
  "answers": {
   "200": {
    "imported": 258
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
