import type { Catalogue } from '../catalogue.js';

/** Generated from libs/catalogue/data by `npm run gen`; never edited by hand. */
export const shippedCatalogue: Catalogue = {
 "edition": "shipped-f022f811",
 "hash": "f022f811e4aef082bba8cb2cda02c2ae686af9eb02ca0ce3d0581e834969fbe4",
 "materials": [
  {
   "kind": "coating",
   "code": "coating-epoxy-primer",
   "name": "High-build epoxy primer, two-part",
   "hazards": [
    "H226",
    "H315",
    "H317",
    "H319",
    "H336",
    "H411"
   ],
   "coating": "primer",
   "densityKgPerL": {
    "value": 1.5,
    "low": 1.35,
    "high": 1.65,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 6,
    "low": 4,
    "high": 8,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coats": {
    "value": 2,
    "low": 2,
    "high": 3,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "recoatH": {
    "value": 12,
    "low": 6,
    "high": 24,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "an example primer at 12 to 14 h; after 24 h sand again"
    }
   },
   "lowestTemperatureC": {
    "value": 15,
    "low": 10,
    "high": 18,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "15 to 25 degC"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 70,
    "low": 65,
    "high": 85,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "two-part epoxy primer, 15 to 25 degC"
    }
   },
   "isIsocyanate": false
  },
  {
   "kind": "coating",
   "code": "coating-fairing-compound",
   "name": "Epoxy fairing compound, two-part",
   "hazards": [
    "H315",
    "H317",
    "H319",
    "H411"
   ],
   "coating": "fairing-compound",
   "densityKgPerL": {
    "value": 0.75,
    "low": 0.65,
    "high": 0.9,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 1,
    "low": 0.5,
    "high": 1.5,
    "cite": {
     "source": "ARITHMETIC",
     "note": "1 l/m2 is 1 mm average thickness"
    }
   },
   "coats": {
    "value": 3,
    "low": 3,
    "high": 6,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "three to four and more cycles seen, one a day"
    }
   },
   "recoatH": {
    "value": 12,
    "low": 8,
    "high": 24,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "lowestTemperatureC": {
    "value": 10,
    "low": 5,
    "high": 15,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 80,
    "low": 70,
    "high": 85,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "isIsocyanate": false
  },
  {
   "kind": "coating",
   "code": "coating-nonskid-grit-paint",
   "name": "Topcoat over broadcast grit, one-part",
   "hazards": [
    "H226",
    "H336",
    "EUH066"
   ],
   "coating": "nonskid",
   "densityKgPerL": {
    "value": 1.1,
    "low": 1,
    "high": 1.25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 2.5,
    "low": 2,
    "high": 4,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "an owner found 2.5 m2/l where the label said 9.8"
    }
   },
   "coats": {
    "value": 3,
    "low": 2,
    "high": 3,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "grit in one coat, two over it"
    }
   },
   "recoatH": {
    "value": 16,
    "low": 12,
    "high": 24,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "lowestTemperatureC": {
    "value": 5,
    "low": 5,
    "high": 10,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "one-part topcoats, 5 to 30 degC"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 85,
    "low": 80,
    "high": 85,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "one-part primers and topcoats"
    }
   },
   "isIsocyanate": false
  },
  {
   "kind": "coating",
   "code": "coating-nonskid-textured",
   "name": "Textured roll-on nonskid",
   "hazards": [
    "H226",
    "H336"
   ],
   "coating": "nonskid",
   "densityKgPerL": {
    "value": 1.4,
    "low": 1.2,
    "high": 1.6,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 0.92,
    "low": 0.8,
    "high": 1.8,
    "cite": {
     "source": "TB-43-0144",
     "clause": "App. D, D-8 f(2)(b)",
     "note": "0.86 to 0.98 m2/l for a rollable epoxy nonskid"
    }
   },
   "coats": {
    "value": 1,
    "low": 1,
    "high": 2,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "recoatH": {
    "value": 24,
    "low": 12,
    "high": 48,
    "cite": {
     "source": "TB-43-0144",
     "clause": "App. D",
     "note": "hard dry 24 h at 21 degC"
    }
   },
   "lowestTemperatureC": {
    "value": 5,
    "low": 4,
    "high": 10,
    "cite": {
     "source": "TB-43-0144",
     "clause": "D-8",
     "note": "deck 4 to 49 degC"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 85,
    "low": 80,
    "high": 85,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "one-part primers and topcoats"
    }
   },
   "isIsocyanate": false
  },
  {
   "kind": "coating",
   "code": "coating-topcoat-one-part",
   "name": "Topcoat enamel, one-part",
   "hazards": [
    "H226",
    "H336",
    "EUH066"
   ],
   "coating": "topcoat",
   "densityKgPerL": {
    "value": 1.1,
    "low": 1,
    "high": 1.25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 8.8,
    "low": 7.9,
    "high": 9.8,
    "cite": {
     "source": "MAKER-COVERAGE",
     "note": "80 to 100 sq ft to a quart"
    }
   },
   "coats": {
    "value": 2,
    "low": 2,
    "high": 3,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "recoatH": {
    "value": 16,
    "low": 12,
    "high": 24,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "lowestTemperatureC": {
    "value": 5,
    "low": 5,
    "high": 10,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "5 to 30 degC"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 85,
    "low": 80,
    "high": 85,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "one-part primers and topcoats"
    }
   },
   "isIsocyanate": false
  },
  {
   "kind": "coating",
   "code": "coating-topcoat-two-part",
   "name": "Polyurethane topcoat, two-part",
   "hazards": [
    "H226",
    "H317",
    "H332",
    "H334",
    "H335",
    "H336"
   ],
   "coating": "topcoat",
   "densityKgPerL": {
    "value": 1.2,
    "low": 1.1,
    "high": 1.35,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "coverageM2PerL": {
    "value": 8.8,
    "low": 7.9,
    "high": 9.8,
    "cite": {
     "source": "MAKER-COVERAGE",
     "note": "80 to 100 sq ft to a quart"
    }
   },
   "coats": {
    "value": 2,
    "low": 2,
    "high": 3,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "recoatH": {
    "value": 16,
    "low": 12,
    "high": 24,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "lowestTemperatureC": {
    "value": 12,
    "low": 10,
    "high": 15,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "12 to 25 degC"
    }
   },
   "highestRelativeHumidityPercent": {
    "value": 70,
    "low": 65,
    "high": 85,
    "cite": {
     "source": "MAKER-COATING-GATES",
     "note": "two-part polyurethane topcoat, 12 to 25 degC"
    }
   },
   "isIsocyanate": true
  },
  {
   "kind": "core",
   "code": "core-balsa-100",
   "name": "End-grain balsa core, 100 kg/m3",
   "hazards": [
    "wood-dust"
   ],
   "coreType": "end-grain-balsa",
   "densityKgPerM3": {
    "value": 100,
    "low": 80,
    "high": 120,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal grade; balsa varies sheet by sheet, about a fifth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 1.44,
    "low": 1.15,
    "high": 1.8,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class table interpolated 1.16"
    }
   },
   "shearModulusMPa": {
    "value": 85.4,
    "low": 80,
    "high": 112,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows"
    }
   },
   "compressiveStrengthMPa": {
    "value": 5.2,
    "low": 4.2,
    "high": 6.7,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; sheet at 94 kg/m3: 6.3"
    }
   },
   "compressiveModulusMPa": {
    "value": 1720,
    "low": 1720,
    "high": 2301,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class table interpolated 2301"
    }
   },
   "inPlaneModulusMPa": {
    "value": 52,
    "low": 26,
    "high": 79,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain: 0.03 of the modulus along it (0.015 tangential to 0.046 radial)"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 610
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 25,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.5,
    "low": 0.3,
    "high": 0.8,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of end-grain balsa, litres of mixed resin per m2; makers' pages say only that even sealed balsa takes significant resin"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-balsa-150",
   "name": "End-grain balsa core, 150 kg/m3",
   "hazards": [
    "wood-dust"
   ],
   "coreType": "end-grain-balsa",
   "densityKgPerM3": {
    "value": 150,
    "low": 120,
    "high": 180,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal grade; balsa varies sheet by sheet, about a fifth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 2.33,
    "low": 1.8,
    "high": 3,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class tables 1.8 at 150 and 2.1 at 144, one sheet 3.0 at 153"
    }
   },
   "shearModulusMPa": {
    "value": 129,
    "low": 128,
    "high": 160,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class table interpolated 159"
    }
   },
   "compressiveStrengthMPa": {
    "value": 10.3,
    "low": 8.2,
    "high": 12.9,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; sheet at 153 kg/m3: 12.9"
    }
   },
   "compressiveModulusMPa": {
    "value": 3255,
    "low": 3255,
    "high": 4317,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows"
    }
   },
   "inPlaneModulusMPa": {
    "value": 98,
    "low": 49,
    "high": 150,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain: 0.03 of the modulus along it (0.015 tangential to 0.046 radial)"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 610
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 25,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.5,
    "low": 0.3,
    "high": 0.8,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of end-grain balsa, litres of mixed resin per m2; makers' pages say only that even sealed balsa takes significant resin"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-cross-linked-foam-100",
   "name": "Cross-linked structural foam core, 100 kg/m3",
   "hazards": [
    "foam-dust"
   ],
   "coreType": "cross-linked-foam",
   "densityKgPerM3": {
    "value": 100,
    "low": 90,
    "high": 115,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal density; makers allow about a tenth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 1.12,
    "low": 1.12,
    "high": 1.5,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 1.41, class guide 1.4 to 1.5"
    }
   },
   "shearModulusMPa": {
    "value": 30.5,
    "low": 30.5,
    "high": 35,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; table D.2 prints 31, type II 32"
    }
   },
   "compressiveStrengthMPa": {
    "value": 1.32,
    "low": 1.32,
    "high": 2,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 1.81"
    }
   },
   "compressiveModulusMPa": {
    "value": 90,
    "low": 90,
    "high": 135,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 102"
    }
   },
   "inPlaneModulusMPa": {
    "value": 90,
    "low": 90,
    "high": 135,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "closed-cell foam taken as the same in every direction"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 584
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 30,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.15,
    "low": 0.1,
    "high": 0.3,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of closed-cell foam"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-cross-linked-foam-200",
   "name": "Cross-linked structural foam core, 200 kg/m3, for inserts under fittings",
   "hazards": [
    "foam-dust"
   ],
   "coreType": "cross-linked-foam",
   "densityKgPerM3": {
    "value": 200,
    "low": 180,
    "high": 230,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal density; makers allow about a tenth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 2.82,
    "low": 2.82,
    "high": 3.5,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 3.11"
    }
   },
   "shearModulusMPa": {
    "value": 67.1,
    "low": 65,
    "high": 85,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 65"
    }
   },
   "compressiveStrengthMPa": {
    "value": 3.7,
    "low": 3.7,
    "high": 5.4,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 4.31"
    }
   },
   "compressiveModulusMPa": {
    "value": 246,
    "low": 222,
    "high": 310,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 222"
    }
   },
   "inPlaneModulusMPa": {
    "value": 246,
    "low": 222,
    "high": 310,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "closed-cell foam taken as the same in every direction"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 584
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.15,
    "low": 0.1,
    "high": 0.3,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of closed-cell foam"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-cross-linked-foam-80",
   "name": "Cross-linked structural foam core, 80 kg/m3",
   "hazards": [
    "foam-dust"
   ],
   "coreType": "cross-linked-foam",
   "densityKgPerM3": {
    "value": 80,
    "low": 72,
    "high": 92,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal density; makers allow about a tenth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 0.83,
    "low": 0.83,
    "high": 1.2,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 1.07, class guide 1.0 to 1.2, sheet 1.15 (minimum 0.95)"
    }
   },
   "shearModulusMPa": {
    "value": 23.7,
    "low": 19,
    "high": 27,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; sheet 27 (minimum 23); one sheet 19 by one test method and 22 by another"
    }
   },
   "compressiveStrengthMPa": {
    "value": 0.946,
    "low": 0.946,
    "high": 1.4,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 1.31, sheet minimum 1.15"
    }
   },
   "compressiveModulusMPa": {
    "value": 65.1,
    "low": 65.1,
    "high": 90,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; type II 78"
    }
   },
   "inPlaneModulusMPa": {
    "value": 65.1,
    "low": 65.1,
    "high": 90,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1, type I",
     "note": "closed-cell foam taken as the same in every direction"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 584
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 30,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.15,
    "low": 0.1,
    "high": 0.3,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of closed-cell foam"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-linear-foam-80",
   "name": "Linear (non-cross-linked) foam core, 80 kg/m3",
   "hazards": [
    "foam-dust"
   ],
   "coreType": "linear-foam",
   "densityKgPerM3": {
    "value": 80,
    "low": 72,
    "high": 92,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal density; makers allow about a tenth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 0.79,
    "low": 0.79,
    "high": 1.2,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class tables 0.8 and 1.2"
    }
   },
   "shearModulusMPa": {
    "value": 17.9,
    "low": 17.9,
    "high": 20,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class table 18"
    }
   },
   "compressiveStrengthMPa": {
    "value": 0.72,
    "low": 0.72,
    "high": 0.95,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows"
    }
   },
   "compressiveModulusMPa": {
    "value": 48.2,
    "low": 48.2,
    "high": 56,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; class table 49"
    }
   },
   "inPlaneModulusMPa": {
    "value": 48.2,
    "low": 48.2,
    "high": 56,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "closed-cell foam taken as the same in every direction"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 584
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 30,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.15,
    "low": 0.1,
    "high": 0.3,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of closed-cell foam"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-marine-plywood-450",
   "name": "Marine plywood, light grade, 450 kg/m3",
   "hazards": [
    "wood-dust"
   ],
   "coreType": "marine-plywood",
   "densityKgPerM3": {
    "value": 450,
    "low": 400,
    "high": 500,
    "cite": {
     "source": "MARINE-PLY-MASS-TABLE",
     "note": "2.7 kg/m2 at 6 mm, 5.4 at 12 mm, 8.1 at 18 mm"
    }
   },
   "shearStrengthMPa": {
    "value": 1.5,
    "low": 1,
    "high": 2,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "planar (rolling) shear between the skins, not panel shear; about a fifth of the shear along the grain"
    }
   },
   "shearModulusMPa": {
    "value": 90,
    "low": 65,
    "high": 130,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "planar (rolling) shear: plies along and across in series, about 600 and 60 MPa"
    }
   },
   "compressiveStrengthMPa": {
    "value": 3.5,
    "low": 2.5,
    "high": 4.5,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain, at the proportional limit"
    }
   },
   "compressiveModulusMPa": {
    "value": 550,
    "low": 350,
    "high": 750,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain, about a fifteenth of the modulus along it"
    }
   },
   "inPlaneModulusMPa": {
    "value": 3700,
    "low": 2940,
    "high": 4460,
    "cite": {
     "source": "ISO-12215-5-2004-DRAFT",
     "clause": "annex E, table E.2",
     "note": "mean of the flexural moduli along and across the face grain for 7 plies; the spread is across and along"
    }
   },
   "thicknessesMm": [
    6,
    9,
    12,
    15,
    16,
    18
   ],
   "sheets": [
    {
     "lengthMm": 2440,
     "widthMm": 1220
    },
    {
     "lengthMm": 2500,
     "widthMm": 1220
    },
    {
     "lengthMm": 3100,
     "widthMm": 1530
    }
   ],
   "forms": [
    {
     "form": "plain"
    }
   ],
   "allowedTurnsDeg": [
    0,
    180
   ],
   "largestPieceM2": {
    "value": 0.36,
    "low": 0.09,
    "high": 0.6,
    "cite": {
     "source": "DECK-REPAIR-PRACTICE",
     "note": "builders used squares of 100 to 150 mm; a stiff sheet without kerfs follows camber only in small pieces"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.25,
    "low": 0.15,
    "high": 0.4,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of plywood primed with unthickened resin"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-marine-plywood-550",
   "name": "Marine plywood, tropical hardwood, 550 kg/m3",
   "hazards": [
    "wood-dust"
   ],
   "coreType": "marine-plywood",
   "densityKgPerM3": {
    "value": 550,
    "low": 500,
    "high": 600,
    "cite": {
     "source": "BS-1088-2003",
     "note": "standard grade is above 500 kg/m3"
    }
   },
   "shearStrengthMPa": {
    "value": 1.8,
    "low": 1.2,
    "high": 2.5,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "planar (rolling) shear between the skins, not panel shear; about a fifth of the shear along the grain"
    }
   },
   "shearModulusMPa": {
    "value": 110,
    "low": 80,
    "high": 160,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "planar (rolling) shear: plies along and across in series, about 600 and 60 MPa"
    }
   },
   "compressiveStrengthMPa": {
    "value": 4.5,
    "low": 3,
    "high": 6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain, at the proportional limit"
    }
   },
   "compressiveModulusMPa": {
    "value": 700,
    "low": 400,
    "high": 900,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "across the grain, about a fifteenth of the modulus along it"
    }
   },
   "inPlaneModulusMPa": {
    "value": 4300,
    "low": 3410,
    "high": 5190,
    "cite": {
     "source": "ISO-12215-5-2004-DRAFT",
     "clause": "annex E, table E.2",
     "note": "mean of the flexural moduli along and across the face grain for 7 plies; the spread is across and along"
    }
   },
   "thicknessesMm": [
    6,
    9,
    12,
    15,
    16,
    18
   ],
   "sheets": [
    {
     "lengthMm": 2440,
     "widthMm": 1220
    },
    {
     "lengthMm": 2500,
     "widthMm": 1220
    },
    {
     "lengthMm": 3100,
     "widthMm": 1530
    }
   ],
   "forms": [
    {
     "form": "plain"
    }
   ],
   "allowedTurnsDeg": [
    0,
    180
   ],
   "largestPieceM2": {
    "value": 0.36,
    "low": 0.09,
    "high": 0.6,
    "cite": {
     "source": "DECK-REPAIR-PRACTICE",
     "note": "builders used squares of 100 to 150 mm; a stiff sheet without kerfs follows camber only in small pieces"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.25,
    "low": 0.15,
    "high": 0.4,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of plywood primed with unthickened resin"
    }
   }
  },
  {
   "kind": "core",
   "code": "core-san-foam-85",
   "name": "SAN structural foam core, 85 kg/m3",
   "hazards": [
    "foam-dust"
   ],
   "coreType": "san-foam",
   "densityKgPerM3": {
    "value": 85,
    "low": 76,
    "high": 98,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal density; makers allow about a tenth either way"
    }
   },
   "shearStrengthMPa": {
    "value": 0.688,
    "low": 0.688,
    "high": 1.15,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; sheet 1.15"
    }
   },
   "shearModulusMPa": {
    "value": 19.1,
    "low": 19.1,
    "high": 34,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; sheet 34, and 17 per cent apart between two revisions of one sheet"
    }
   },
   "compressiveStrengthMPa": {
    "value": 0.783,
    "low": 0.783,
    "high": 1,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows"
    }
   },
   "compressiveModulusMPa": {
    "value": 57.1,
    "low": 57.1,
    "high": 77,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "default of the standard for this density; spread is the range of class tables and makers' sheets at like density, of which the highest are averages, not minima, recalled from memory where no figure follows; a sheet's tensile modulus moved 36 per cent between revisions"
    }
   },
   "inPlaneModulusMPa": {
    "value": 57.1,
    "low": 57.1,
    "high": 77,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "table D.1",
     "note": "closed-cell foam taken as the same in every direction"
    }
   },
   "thicknessesMm": [
    6.35,
    9.5,
    12.7,
    15.9,
    19.1,
    25.4
   ],
   "sheets": [
    {
     "lengthMm": 1220,
     "widthMm": 584
    },
    {
     "lengthMm": 2440,
     "widthMm": 1220
    }
   ],
   "forms": [
    {
     "form": "plain"
    },
    {
     "form": "scored",
     "scoreSpacingMm": 30,
     "scoreWidthMm": 1,
     "scoreDepthFraction": 0.6
    }
   ],
   "allowedTurnsDeg": [],
   "largestPieceM2": {
    "value": 0.45,
    "low": 0.3,
    "high": 0.6,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "largest piece one person beds within half a pot life; 0.3 to 0.6 m2 by hand"
    }
   },
   "needsBleedHoles": true,
   "wetOutLPerM2": {
    "value": 0.15,
    "low": 0.1,
    "high": 0.3,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "both faces of closed-cell foam"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-chopped-glass",
   "name": "Chopped glass fibre, 6 mm",
   "hazards": [
    "H315"
   ],
   "trueDensityGPerCm3": {
    "value": 2.56,
    "low": 2.54,
    "high": 2.6,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "E-glass 2.54 to 2.57"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.25,
    "low": 0.15,
    "high": 0.4,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "potting",
    "filleting"
   ],
   "partsPerHundred": {
    "value": 10,
    "low": 5,
    "high": 20,
    "cite": {
     "source": "FROM-MEMORY"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-fumed-silica",
   "name": "Fumed silica",
   "hazards": [],
   "trueDensityGPerCm3": {
    "value": 2.2,
    "low": 2.1,
    "high": 2.3,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.05,
    "low": 0.04,
    "high": 0.06,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "bedding",
    "potting",
    "thickening"
   ],
   "partsPerHundred": {
    "value": 5,
    "low": 3,
    "high": 8,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "adhesive consistency; an owner reports about 120 g to a litre for a stiff paste"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-glass-spheres",
   "name": "Hollow glass spheres",
   "hazards": [],
   "trueDensityGPerCm3": {
    "value": 0.19,
    "low": 0.14,
    "high": 0.48,
    "cite": {
     "source": "SUPPLIER-SPHERES",
     "note": "one grade 0.19 g/cm3, 75 um"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.12,
    "low": 0.1,
    "high": 0.25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "fairing"
   ],
   "partsPerHundred": {
    "value": 20,
    "low": 10,
    "high": 30,
    "cite": {
     "source": "FROM-MEMORY"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-milled-glass",
   "name": "Milled glass fibre",
   "hazards": [
    "H315"
   ],
   "trueDensityGPerCm3": {
    "value": 2.56,
    "low": 2.54,
    "high": 2.6,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "E-glass 2.54 to 2.57"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.6,
    "low": 0.4,
    "high": 0.8,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "potting",
    "bedding"
   ],
   "partsPerHundred": {
    "value": 30,
    "low": 15,
    "high": 60,
    "cite": {
     "source": "FROM-MEMORY"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-phenolic-balloons",
   "name": "Phenolic balloons",
   "hazards": [],
   "trueDensityGPerCm3": {
    "value": 0.23,
    "low": 0.21,
    "high": 0.25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.1,
    "low": 0.08,
    "high": 0.12,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "fairing"
   ],
   "partsPerHundred": {
    "value": 18,
    "low": 10,
    "high": 25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   }
  },
  {
   "kind": "filler",
   "code": "filler-wood-flour",
   "name": "Wood or cellulose flour",
   "hazards": [],
   "trueDensityGPerCm3": {
    "value": 1.5,
    "low": 1.45,
    "high": 1.54,
    "cite": {
     "source": "FPL-GTR-282-CH4",
     "note": "cell wall 1.54 g/cm3"
    }
   },
   "bulkDensityGPerCm3": {
    "value": 0.2,
    "low": 0.15,
    "high": 0.25,
    "cite": {
     "source": "FROM-MEMORY"
    }
   },
   "uses": [
    "filleting",
    "bedding",
    "potting"
   ],
   "partsPerHundred": {
    "value": 20,
    "low": 10,
    "high": 30,
    "cite": {
     "source": "FROM-MEMORY"
    }
   }
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-biaxial-0-90-600",
   "name": "Stitched biaxial glass 0/90, 600 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "biaxial",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 600,
    "low": 570,
    "high": 630,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "unidirectional",
     "angleDeg": 0,
     "arealMassGPerM2": 300
    },
    {
     "layup": "unidirectional",
     "angleDeg": 90,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.38,
    "high": 0.6,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "multiaxial: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1270
   ],
   "rollLengthsM": [
    25,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 2,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-biaxial-430",
   "name": "Stitched biaxial glass +45/-45, 430 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "biaxial",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 430,
    "low": 408,
    "high": 452,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "unidirectional",
     "angleDeg": 45,
     "arealMassGPerM2": 215
    },
    {
     "layup": "unidirectional",
     "angleDeg": -45,
     "arealMassGPerM2": 215
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.38,
    "high": 0.6,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "multiaxial: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1270
   ],
   "rollLengthsM": [
    25,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 1,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-biaxial-600",
   "name": "Stitched biaxial glass +45/-45, 600 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "biaxial",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 600,
    "low": 570,
    "high": 630,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "unidirectional",
     "angleDeg": 45,
     "arealMassGPerM2": 300
    },
    {
     "layup": "unidirectional",
     "angleDeg": -45,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.38,
    "high": 0.6,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "multiaxial: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1270
   ],
   "rollLengthsM": [
    25,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 2,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-biaxial-mat-655",
   "name": "Stitched biaxial +45/-45 430 g/m2 with stitched mat 225 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "biaxial-mat",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 655,
    "low": 622,
    "high": 688,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "mat",
     "angleDeg": 0,
     "arealMassGPerM2": 225
    },
    {
     "layup": "unidirectional",
     "angleDeg": 45,
     "arealMassGPerM2": 215
    },
    {
     "layup": "unidirectional",
     "angleDeg": -45,
     "arealMassGPerM2": 215
    }
   ],
   "fibreMassFraction": {
    "value": 0.398,
    "low": 0.312,
    "high": 0.484,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "roving with mat, mat share of the glass 0.34: 0.46 - 0.18 R by hand; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1270
   ],
   "rollLengthsM": [
    25,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 1,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-biaxial-mat-835",
   "name": "Stitched biaxial +45/-45 610 g/m2 with stitched mat 225 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "biaxial-mat",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 835,
    "low": 793,
    "high": 877,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "mat",
     "angleDeg": 0,
     "arealMassGPerM2": 225
    },
    {
     "layup": "unidirectional",
     "angleDeg": 45,
     "arealMassGPerM2": 305
    },
    {
     "layup": "unidirectional",
     "angleDeg": -45,
     "arealMassGPerM2": 305
    }
   ],
   "fibreMassFraction": {
    "value": 0.411,
    "low": 0.32,
    "high": 0.501,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "roving with mat, mat share of the glass 0.27: 0.46 - 0.18 R by hand; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1270
   ],
   "rollLengthsM": [
    25,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 2,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-cloth-200",
   "name": "Plain-weave glass cloth 200 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "cloth",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 200,
    "low": 190,
    "high": 210,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "woven",
     "angleDeg": 0,
     "arealMassGPerM2": 200
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.4,
    "high": 0.58,
    "cite": {
     "source": "FAA-AC-43-13-1B-LAMINATE",
     "clause": "p. 3-3",
     "note": "resin mass equal to cloth mass; low is the least a class society takes in woven structural laminate (40 %), high the vacuum bag value for woven glass of the small-craft yardstick"
    }
   },
   "rollWidthsMm": [
    970,
    1270,
    1520
   ],
   "rollLengthsM": [
    25,
    50,
    100
   ],
   "suitsAgainstCore": true,
   "printThrough": 1,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-cloth-335",
   "name": "Plain-weave glass cloth 335 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "cloth",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 335,
    "low": 318,
    "high": 352,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "woven",
     "angleDeg": 0,
     "arealMassGPerM2": 335
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.4,
    "high": 0.58,
    "cite": {
     "source": "FAA-AC-43-13-1B-LAMINATE",
     "clause": "p. 3-3",
     "note": "resin mass equal to cloth mass; low is the least a class society takes in woven structural laminate (40 %), high the vacuum bag value for woven glass of the small-craft yardstick"
    }
   },
   "rollWidthsMm": [
    970,
    1270,
    1520
   ],
   "rollLengthsM": [
    25,
    50,
    100
   ],
   "suitsAgainstCore": true,
   "printThrough": 1,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-mat-300",
   "name": "Chopped strand mat 300 g/m2, binder-bound",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "mat",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 300,
    "low": 270,
    "high": 330,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "mat",
     "angleDeg": 0,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.3,
    "low": 0.25,
    "high": 0.36,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "chopped strand mat: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    950,
    1250
   ],
   "rollLengthsM": [
    50,
    100
   ],
   "suitsAgainstCore": true,
   "printThrough": 0,
   "suitsResins": [
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-mat-450",
   "name": "Chopped strand mat 450 g/m2, binder-bound",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "mat",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 450,
    "low": 405,
    "high": 495,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "mat",
     "angleDeg": 0,
     "arealMassGPerM2": 450
    }
   ],
   "fibreMassFraction": {
    "value": 0.3,
    "low": 0.25,
    "high": 0.36,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "chopped strand mat: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    950,
    1250
   ],
   "rollLengthsM": [
    30,
    60
   ],
   "suitsAgainstCore": true,
   "printThrough": 0,
   "suitsResins": [
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-tape-biaxial-600",
   "name": "Stitched biaxial +45/-45 glass tape 600 g/m2, 100 and 150 mm wide",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "tape",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 600,
    "low": 570,
    "high": 630,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "unidirectional",
     "angleDeg": 45,
     "arealMassGPerM2": 300
    },
    {
     "layup": "unidirectional",
     "angleDeg": -45,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.38,
    "high": 0.6,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "multiaxial: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    100,
    150
   ],
   "rollLengthsM": [
    10,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 2,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-tape-plain-300",
   "name": "Plain-weave glass tape with selvedge 300 g/m2, 50 to 150 mm wide",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "tape",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 300,
    "low": 285,
    "high": 315,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "woven",
     "angleDeg": 0,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.5,
    "low": 0.4,
    "high": 0.58,
    "cite": {
     "source": "FAA-AC-43-13-1B-LAMINATE",
     "clause": "p. 3-3",
     "note": "resin mass equal to cloth mass; low is the least a class society takes in woven structural laminate (40 %), high the vacuum bag value for woven glass of the small-craft yardstick"
    }
   },
   "rollWidthsMm": [
    50,
    75,
    100,
    150
   ],
   "rollLengthsM": [
    10,
    50
   ],
   "suitsAgainstCore": true,
   "printThrough": 1,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-unidirectional-300",
   "name": "Stitched unidirectional glass 300 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "unidirectional",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 300,
    "low": 285,
    "high": 315,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "unidirectional",
     "angleDeg": 0,
     "arealMassGPerM2": 300
    }
   ],
   "fibreMassFraction": {
    "value": 0.55,
    "low": 0.41,
    "high": 0.66,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "unidirectional: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    300,
    500,
    1270
   ],
   "rollLengthsM": [
    50
   ],
   "suitsAgainstCore": false,
   "printThrough": 2,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-woven-roving-600",
   "name": "Woven roving 600 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "woven-roving",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 600,
    "low": 570,
    "high": 630,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "woven",
     "angleDeg": 0,
     "arealMassGPerM2": 600
    }
   ],
   "fibreMassFraction": {
    "value": 0.48,
    "low": 0.36,
    "high": 0.58,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "woven roving: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1000,
    1270
   ],
   "rollLengthsM": [
    40,
    80
   ],
   "suitsAgainstCore": false,
   "printThrough": 3,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "reinforcement",
   "code": "reinforcement-woven-roving-800",
   "name": "Woven roving 800 g/m2",
   "hazards": [
    "glass-dust",
    "skin-irritant"
   ],
   "fabric": "woven-roving",
   "fibre": "e-glass",
   "arealMassGPerM2": {
    "value": 800,
    "low": 760,
    "high": 840,
    "cite": {
     "source": "COMMON-PRACTICE",
     "note": "nominal areal mass of the trade; woven and stitched goods vary about 5 %, mat about 10 %"
    }
   },
   "layers": [
    {
     "layup": "woven",
     "angleDeg": 0,
     "arealMassGPerM2": 800
    }
   ],
   "fibreMassFraction": {
    "value": 0.48,
    "low": 0.36,
    "high": 0.58,
    "cite": {
     "source": "ISO-12215-5-2008",
     "clause": "Annex C table C.2",
     "note": "woven roving: hand lay-up, simple shape; low is the complex shape, high the vacuum bag"
    }
   },
   "rollWidthsMm": [
    1000,
    1270
   ],
   "rollLengthsM": [
    30,
    60
   ],
   "suitsAgainstCore": false,
   "printThrough": 3,
   "suitsResins": [
    "epoxy",
    "polyester",
    "vinylester"
   ]
  },
  {
   "kind": "resin",
   "code": "resin-epoxy-100to22",
   "name": "Laminating epoxy, 100:22 by volume (100:20 by weight)",
   "chemistry": "epoxy",
   "hazards": [
    "H315",
    "H317",
    "H319",
    "H411"
   ],
   "densityGPerCm3": {
    "value": 1.15,
    "low": 1.12,
    "high": 1.18,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "typical of data sheets for this class of hardener"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.18,
    "low": 1.15,
    "high": 1.22,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cured laminating epoxy"
    }
   },
   "youngModulusMPa": {
    "value": 3200,
    "low": 3000,
    "high": 3600,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "epoxy 3.1 to 3.6 GPa in two class societies, read through open pages"
    }
   },
   "poissonRatio": {
    "value": 0.37,
    "low": 0.35,
    "high": 0.39,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "0.35 to 0.39"
    }
   },
   "heatOfReactionJPerG": {
    "value": 450,
    "low": 356,
    "high": 497,
    "cite": {
     "source": "EPOXY-AMINE-HEAT",
     "note": "356 and 473.6 J/g read for two systems; 497 J/g derived from about 105 kJ per mol of epoxide"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.26,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid to gelled epoxy; 1.26 J/gK belongs to a prepreg"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 55,
    "low": 45,
    "high": 65,
    "cite": {
     "source": "EPOXY-AMINE-KINETICS",
     "note": "55 to 60 for the primary-amine step; band 45 to 65 from the papers read"
    }
   },
   "hardeners": [
    {
     "code": "medium",
     "name": "Medium hardener, 100:22",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 1.045,
      "low": 1,
      "high": 1.08,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 20,
      "low": 19.6,
      "high": 20.4,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 22,
      "low": 21.56,
      "high": 22.44,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 38,
        "low": 28.5,
        "high": 49.4,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 20,
        "low": 15,
        "high": 26,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 10,
      "low": 8,
      "high": 13,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 28,
      "low": 25,
      "high": 31,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1.3,
      "low": 0.98,
      "high": 1.76,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 6.5,
      "low": 4.88,
      "high": 9.1,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 10,
      "low": 7.5,
      "high": 15,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 4.5,
      "low": 3.15,
      "high": 5.85,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 144,
      "low": 86.4,
      "high": 216,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "slow",
     "name": "Slow hardener, 100:22",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 1.045,
      "low": 1,
      "high": 1.08,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 20,
      "low": 19.6,
      "high": 20.4,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 22,
      "low": 21.56,
      "high": 22.44,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 70,
        "low": 52.5,
        "high": 91,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 35,
        "low": 26.2,
        "high": 45.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 13,
      "low": 11,
      "high": 16,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 2.2,
      "low": 1.65,
      "high": 2.97,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 10,
      "low": 7.5,
      "high": 14,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 16,
      "low": 12,
      "high": 24,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 7,
      "low": 4.9,
      "high": 9.1,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 168,
      "low": 100.8,
      "high": 252,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    }
   ]
  },
  {
   "kind": "resin",
   "code": "resin-epoxy-2to1",
   "name": "Laminating epoxy, 2:1 by volume",
   "chemistry": "epoxy",
   "hazards": [
    "H315",
    "H317",
    "H319",
    "H411"
   ],
   "densityGPerCm3": {
    "value": 1.13,
    "low": 1.1,
    "high": 1.16,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "typical of data sheets for this class of hardener"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.18,
    "low": 1.15,
    "high": 1.22,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cured laminating epoxy"
    }
   },
   "youngModulusMPa": {
    "value": 3200,
    "low": 3000,
    "high": 3600,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "epoxy 3.1 to 3.6 GPa in two class societies, read through open pages"
    }
   },
   "poissonRatio": {
    "value": 0.37,
    "low": 0.35,
    "high": 0.39,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "0.35 to 0.39"
    }
   },
   "heatOfReactionJPerG": {
    "value": 450,
    "low": 356,
    "high": 497,
    "cite": {
     "source": "EPOXY-AMINE-HEAT",
     "note": "356 and 473.6 J/g read for two systems; 497 J/g derived from about 105 kJ per mol of epoxide"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.26,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid to gelled epoxy; 1.26 J/gK belongs to a prepreg"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 55,
    "low": 45,
    "high": 65,
    "cite": {
     "source": "EPOXY-AMINE-KINETICS",
     "note": "55 to 60 for the primary-amine step; band 45 to 65 from the papers read"
    }
   },
   "hardeners": [
    {
     "code": "fast",
     "name": "Fast hardener, 2:1",
     "speed": "fast",
     "densityGPerCm3": {
      "value": 1,
      "low": 0.96,
      "high": 1.04,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 44.248,
      "low": 43.363,
      "high": 45.133,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 50,
      "low": 49,
      "high": 51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 31,
        "low": 23.2,
        "high": 40.3,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 15,
        "low": 11.2,
        "high": 19.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 5,
      "low": 3,
      "high": 8,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 25,
      "low": 22,
      "high": 28,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1,
      "low": 0.75,
      "high": 1.35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 5,
      "low": 3.75,
      "high": 7,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 8,
      "low": 6,
      "high": 12,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 3.5,
      "low": 2.45,
      "high": 4.55,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 120,
      "low": 72,
      "high": 180,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "medium",
     "name": "Medium hardener, 2:1",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 0.98,
      "low": 0.94,
      "high": 1.02,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 43.363,
      "low": 42.496,
      "high": 44.23,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 50,
      "low": 49,
      "high": 51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 52,
        "low": 39,
        "high": 67.6,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 26,
        "low": 19.5,
        "high": 33.8,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 10,
      "low": 8,
      "high": 13,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 30,
      "low": 27,
      "high": 33,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1.8,
      "low": 1.35,
      "high": 2.43,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 8,
      "low": 6,
      "high": 11.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 13,
      "low": 9.75,
      "high": 19.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 6,
      "low": 4.2,
      "high": 7.8,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 144,
      "low": 86.4,
      "high": 216,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "slow",
     "name": "Slow hardener, 2:1",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 0.97,
      "low": 0.93,
      "high": 1.01,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 42.92,
      "low": 42.062,
      "high": 43.778,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 50,
      "low": 49,
      "high": 51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 92,
        "low": 69,
        "high": 119.6,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 45,
        "low": 33.8,
        "high": 58.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 35,
      "low": 32,
      "high": 38,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 3,
      "low": 2.25,
      "high": 4.05,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 13,
      "low": 9.75,
      "high": 18.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 22,
      "low": 16.5,
      "high": 33,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 9,
      "low": 6.3,
      "high": 11.7,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 168,
      "low": 100.8,
      "high": 252,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "extra-slow",
     "name": "Extra slow hardener, 2:1",
     "speed": "extra-slow",
     "densityGPerCm3": {
      "value": 0.96,
      "low": 0.92,
      "high": 1,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 42.478,
      "low": 41.628,
      "high": 43.328,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 50,
      "low": 49,
      "high": 51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 20,
       "minutes": {
        "value": 105,
        "low": 78.8,
        "high": 136.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 30,
       "minutes": {
        "value": 52,
        "low": 39,
        "high": 67.6,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 20,
      "low": 18,
      "high": 23,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 40,
      "low": 37,
      "high": 43,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 5,
      "low": 3.75,
      "high": 6.75,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 20,
      "low": 15,
      "high": 28,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 34,
      "low": 25.5,
      "high": 51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 14,
      "low": 9.8,
      "high": 18.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 240,
      "low": 144,
      "high": 360,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    }
   ]
  },
  {
   "kind": "resin",
   "code": "resin-epoxy-3to1",
   "name": "Laminating epoxy, 3:1 by volume",
   "chemistry": "epoxy",
   "hazards": [
    "H315",
    "H317",
    "H319",
    "H411"
   ],
   "densityGPerCm3": {
    "value": 1.13,
    "low": 1.1,
    "high": 1.16,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "typical of data sheets for this class of hardener"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.18,
    "low": 1.15,
    "high": 1.22,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cured laminating epoxy"
    }
   },
   "youngModulusMPa": {
    "value": 3200,
    "low": 3000,
    "high": 3600,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "epoxy 3.1 to 3.6 GPa in two class societies, read through open pages"
    }
   },
   "poissonRatio": {
    "value": 0.37,
    "low": 0.35,
    "high": 0.39,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "0.35 to 0.39"
    }
   },
   "heatOfReactionJPerG": {
    "value": 450,
    "low": 356,
    "high": 497,
    "cite": {
     "source": "EPOXY-AMINE-HEAT",
     "note": "356 and 473.6 J/g read for two systems; 497 J/g derived from about 105 kJ per mol of epoxide"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.26,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid to gelled epoxy; 1.26 J/gK belongs to a prepreg"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 55,
    "low": 45,
    "high": 65,
    "cite": {
     "source": "EPOXY-AMINE-KINETICS",
     "note": "55 to 60 for the primary-amine step; band 45 to 65 from the papers read"
    }
   },
   "hardeners": [
    {
     "code": "fast",
     "name": "Fast hardener, 3:1",
     "speed": "fast",
     "densityGPerCm3": {
      "value": 1.01,
      "low": 0.97,
      "high": 1.05,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 29.793,
      "low": 29.197,
      "high": 30.389,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 33.333,
      "low": 32.666,
      "high": 34,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 28,
        "low": 21,
        "high": 36.4,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 14,
        "low": 10.5,
        "high": 18.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 7,
      "low": 5,
      "high": 10,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 26,
      "low": 23,
      "high": 29,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1,
      "low": 0.75,
      "high": 1.35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 5,
      "low": 3.75,
      "high": 7,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 8,
      "low": 6,
      "high": 12,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 3,
      "low": 2.1,
      "high": 3.9,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 120,
      "low": 72,
      "high": 180,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "medium",
     "name": "Medium hardener, 3:1",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 1,
      "low": 0.96,
      "high": 1.04,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 29.498,
      "low": 28.908,
      "high": 30.088,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 33.333,
      "low": 32.666,
      "high": 34,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 48,
        "low": 36,
        "high": 62.4,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 24,
        "low": 18,
        "high": 31.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 10,
      "low": 8,
      "high": 13,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 30,
      "low": 27,
      "high": 33,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1.6,
      "low": 1.2,
      "high": 2.16,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 7.5,
      "low": 5.62,
      "high": 10.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 12,
      "low": 9,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 5,
      "low": 3.5,
      "high": 6.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 144,
      "low": 86.4,
      "high": 216,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "slow",
     "name": "Slow hardener, 3:1",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 0.98,
      "low": 0.94,
      "high": 1.02,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 28.908,
      "low": 28.33,
      "high": 29.486,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 33.333,
      "low": 32.666,
      "high": 34,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 82,
        "low": 61.5,
        "high": 106.6,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 40,
        "low": 30,
        "high": 52,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 35,
      "low": 32,
      "high": 38,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 2.8,
      "low": 2.1,
      "high": 3.78,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 12,
      "low": 9,
      "high": 16.8,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 20,
      "low": 15,
      "high": 30,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 8,
      "low": 5.6,
      "high": 10.4,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 168,
      "low": 100.8,
      "high": 252,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    }
   ]
  },
  {
   "kind": "resin",
   "code": "resin-epoxy-5to1",
   "name": "Laminating epoxy, 5:1 by volume",
   "chemistry": "epoxy",
   "hazards": [
    "H315",
    "H317",
    "H319",
    "H411"
   ],
   "densityGPerCm3": {
    "value": 1.15,
    "low": 1.12,
    "high": 1.18,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "typical of data sheets for this class of hardener"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.18,
    "low": 1.15,
    "high": 1.22,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cured laminating epoxy"
    }
   },
   "youngModulusMPa": {
    "value": 3200,
    "low": 3000,
    "high": 3600,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "epoxy 3.1 to 3.6 GPa in two class societies, read through open pages"
    }
   },
   "poissonRatio": {
    "value": 0.37,
    "low": 0.35,
    "high": 0.39,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "0.35 to 0.39"
    }
   },
   "heatOfReactionJPerG": {
    "value": 450,
    "low": 356,
    "high": 497,
    "cite": {
     "source": "EPOXY-AMINE-HEAT",
     "note": "356 and 473.6 J/g read for two systems; 497 J/g derived from about 105 kJ per mol of epoxide"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.26,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid to gelled epoxy; 1.26 J/gK belongs to a prepreg"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 55,
    "low": 45,
    "high": 65,
    "cite": {
     "source": "EPOXY-AMINE-KINETICS",
     "note": "55 to 60 for the primary-amine step; band 45 to 65 from the papers read"
    }
   },
   "hardeners": [
    {
     "code": "fast",
     "name": "Fast hardener, 5:1",
     "speed": "fast",
     "densityGPerCm3": {
      "value": 1.03,
      "low": 0.99,
      "high": 1.07,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 17.913,
      "low": 17.555,
      "high": 18.271,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 20,
      "low": 19.6,
      "high": 20.4,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 21,
        "low": 15.8,
        "high": 27.3,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 11,
        "low": 8.2,
        "high": 14.3,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 5,
      "low": 3,
      "high": 8,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 25,
      "low": 22,
      "high": 28,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.7,
      "low": 0.52,
      "high": 0.94,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 4,
      "low": 3,
      "high": 5.6,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 6,
      "low": 4.5,
      "high": 9,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 2.5,
      "low": 1.75,
      "high": 3.25,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 96,
      "low": 57.6,
      "high": 144,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "medium",
     "name": "Medium hardener, 5:1",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 1.02,
      "low": 0.98,
      "high": 1.06,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 17.739,
      "low": 17.384,
      "high": 18.094,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 20,
      "low": 19.6,
      "high": 20.4,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 33,
        "low": 24.8,
        "high": 42.9,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 17,
        "low": 12.8,
        "high": 22.1,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 8,
      "low": 6,
      "high": 11,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 28,
      "low": 25,
      "high": 31,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1,
      "low": 0.75,
      "high": 1.35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 5.5,
      "low": 4.12,
      "high": 7.7,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 9,
      "low": 6.75,
      "high": 13.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 3.5,
      "low": 2.45,
      "high": 4.55,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 120,
      "low": 72,
      "high": 180,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    },
    {
     "code": "slow",
     "name": "Slow hardener, 5:1",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 1,
      "low": 0.96,
      "high": 1.04,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 17.391,
      "low": 17.043,
      "high": 17.739,
      "cite": {
       "source": "ARITHMETIC",
       "note": "volume ratio times the ratio of densities"
      }
     },
     "partsByVolume": {
      "value": 20,
      "low": 19.6,
      "high": 20.4,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 50,
        "low": 37.5,
        "high": 65,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 25,
        "low": 18.8,
        "high": 32.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 13,
      "low": 11,
      "high": 16,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 1.5,
      "low": 1.12,
      "high": 2.03,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 8,
      "low": 6,
      "high": 11.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 13,
      "low": 9.75,
      "high": 19.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 5,
      "low": 3.5,
      "high": 6.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 168,
      "low": 100.8,
      "high": 252,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H302",
      "H312",
      "H314",
      "H317",
      "H318",
      "H412"
     ]
    }
   ]
  },
  {
   "kind": "resin",
   "code": "resin-polyester-laminating",
   "name": "Laminating polyester, pre-accelerated",
   "chemistry": "polyester",
   "hazards": [
    "H226",
    "H304",
    "H315",
    "H319",
    "H332",
    "H361d",
    "H372",
    "H412"
   ],
   "densityGPerCm3": {
    "value": 1.1,
    "low": 1.08,
    "high": 1.13,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "styrenated liquid resin"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.2,
    "low": 1.18,
    "high": 1.23,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "1.2"
    }
   },
   "youngModulusMPa": {
    "value": 3300,
    "low": 3000,
    "high": 3550,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "3.0 to 3.55 GPa"
    }
   },
   "poissonRatio": {
    "value": 0.35,
    "low": 0.316,
    "high": 0.38,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "0.316 to 0.38"
    }
   },
   "heatOfReactionJPerG": {
    "value": 330,
    "low": 250,
    "high": 400,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "styrenated polyester"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.5,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid polyester"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 60,
    "low": 50,
    "high": 80,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "peroxide-started cure with cobalt; no cited set for this class"
    }
   },
   "hardeners": [
    {
     "code": "fast",
     "name": "Ketone-peroxide catalyst at 2 %",
     "speed": "fast",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 2,
      "low": 1.8,
      "high": 2.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 1.947,
      "low": 1.752,
      "high": 2.142,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 27,
        "low": 20.2,
        "high": 35.1,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 14,
        "low": 10.5,
        "high": 18.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 12,
      "low": 10,
      "high": 15,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 26,
      "low": 23,
      "high": 29,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.38,
      "low": 0.29,
      "high": 0.51,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 1.88,
      "low": 1.41,
      "high": 2.63,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 4.5,
      "low": 3.38,
      "high": 6.75,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 18,
      "low": 12.6,
      "high": 23.4,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 72,
      "low": 43.2,
      "high": 108,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    },
    {
     "code": "medium",
     "name": "Ketone-peroxide catalyst at 1.5 %",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 1.5,
      "low": 1.35,
      "high": 1.65,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 1.46,
      "low": 1.314,
      "high": 1.606,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 36,
        "low": 27,
        "high": 46.8,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 18,
        "low": 13.5,
        "high": 23.4,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.5,
      "low": 0.38,
      "high": 0.68,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 2.5,
      "low": 1.88,
      "high": 3.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 6,
      "low": 4.5,
      "high": 9,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 24,
      "low": 16.8,
      "high": 31.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 96,
      "low": 57.6,
      "high": 144,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    },
    {
     "code": "slow",
     "name": "Ketone-peroxide catalyst at 1 %",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 1,
      "low": 0.9,
      "high": 1.1,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 0.973,
      "low": 0.876,
      "high": 1.07,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 54,
        "low": 40.5,
        "high": 70.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 27,
        "low": 20.2,
        "high": 35.1,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.75,
      "low": 0.56,
      "high": 1.01,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 3.75,
      "low": 2.81,
      "high": 5.25,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 9,
      "low": 6.75,
      "high": 13.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 36,
      "low": 25.2,
      "high": 46.8,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 144,
      "low": 86.4,
      "high": 216,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    }
   ]
  },
  {
   "kind": "resin",
   "code": "resin-vinylester-laminating",
   "name": "Laminating vinylester, pre-accelerated",
   "chemistry": "vinylester",
   "hazards": [
    "H226",
    "H315",
    "H317",
    "H319",
    "H332",
    "H361d",
    "H372",
    "H412"
   ],
   "densityGPerCm3": {
    "value": 1.1,
    "low": 1.08,
    "high": 1.13,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "styrenated liquid resin"
    }
   },
   "curedDensityGPerCm3": {
    "value": 1.2,
    "low": 1.18,
    "high": 1.23,
    "cite": {
     "source": "CLASS-RESIN-CONSTANTS",
     "note": "1.2"
    }
   },
   "youngModulusMPa": {
    "value": 3300,
    "low": 3000,
    "high": 3500,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cast vinylester"
    }
   },
   "poissonRatio": {
    "value": 0.35,
    "low": 0.33,
    "high": 0.38,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "cast vinylester"
    }
   },
   "heatOfReactionJPerG": {
    "value": 350,
    "low": 280,
    "high": 430,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "styrenated vinylester"
    }
   },
   "specificHeatJPerGK": {
    "value": 1.9,
    "low": 1.5,
    "high": 2.1,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "liquid polyester"
    }
   },
   "activationEnergyKJPerMol": {
    "value": 60,
    "low": 50,
    "high": 80,
    "cite": {
     "source": "FROM-MEMORY",
     "note": "peroxide-started cure with cobalt; no cited set for this class"
    }
   },
   "hardeners": [
    {
     "code": "fast",
     "name": "Ketone-peroxide catalyst at 2 %",
     "speed": "fast",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 2,
      "low": 1.8,
      "high": 2.2,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 1.947,
      "low": 1.752,
      "high": 2.142,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 34,
        "low": 25.5,
        "high": 44.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 17,
        "low": 12.8,
        "high": 22.1,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 12,
      "low": 10,
      "high": 15,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 26,
      "low": 23,
      "high": 29,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.47,
      "low": 0.35,
      "high": 0.63,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 2.34,
      "low": 1.75,
      "high": 3.28,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 5.62,
      "low": 4.21,
      "high": 8.43,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 22.5,
      "low": 15.75,
      "high": 29.25,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 72,
      "low": 43.2,
      "high": 108,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    },
    {
     "code": "medium",
     "name": "Ketone-peroxide catalyst at 1.5 %",
     "speed": "medium",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 1.5,
      "low": 1.35,
      "high": 1.65,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 1.46,
      "low": 1.314,
      "high": 1.606,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 45,
        "low": 33.8,
        "high": 58.5,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 22,
        "low": 16.5,
        "high": 28.6,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.62,
      "low": 0.46,
      "high": 0.84,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 3.12,
      "low": 2.34,
      "high": 4.37,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 7.5,
      "low": 5.62,
      "high": 11.25,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 30,
      "low": 21,
      "high": 39,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 96,
      "low": 57.6,
      "high": 144,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    },
    {
     "code": "slow",
     "name": "Ketone-peroxide catalyst at 1 %",
     "speed": "slow",
     "densityGPerCm3": {
      "value": 1.13,
      "low": 1.09,
      "high": 1.17,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "typical of data sheets for this class of hardener"
      }
     },
     "partsByMass": {
      "value": 1,
      "low": 0.9,
      "high": 1.1,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "catalyst at 1 to 2 % of the resin by mass is the usual range"
      }
     },
     "partsByVolume": {
      "value": 0.973,
      "low": 0.876,
      "high": 1.07,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "ratio of the family; the pack and its pumps decide"
      }
     },
     "potLives": [
      {
       "massG": 100,
       "temperatureC": 15,
       "minutes": {
        "value": 68,
        "low": 51,
        "high": 88.4,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      },
      {
       "massG": 100,
       "temperatureC": 25,
       "minutes": {
        "value": 34,
        "low": 25.5,
        "high": 44.2,
        "cite": {
         "source": "FROM-MEMORY",
         "note": "100 g in a cup, typical of data sheets for this class"
        }
       }
      }
     ],
     "lowestTemperatureC": {
      "value": 15,
      "low": 13,
      "high": 18,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "lowest temperature stated for this class"
      }
     },
     "highestTemperatureC": {
      "value": 32,
      "low": 29,
      "high": 35,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "warm end of the usual working range"
      }
     },
     "gelH": {
      "value": 0.94,
      "low": 0.7,
      "high": 1.27,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "releaseH": {
      "value": 4.69,
      "low": 3.52,
      "high": 6.57,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "sandableH": {
      "value": 11.25,
      "low": 8.44,
      "high": 16.88,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "recoatShutsH": {
      "value": 45,
      "low": 31.5,
      "high": 58.5,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "fullCureH": {
      "value": 144,
      "low": 86.4,
      "high": 216,
      "cite": {
       "source": "FROM-MEMORY",
       "note": "thin film at 25 degC, typical of data sheets for this class"
      }
     },
     "hazards": [
      "H242",
      "H302",
      "H314",
      "H332"
     ]
    }
   ]
  }
 ],
 "priceLists": [],
 "labourRates": [],
 "sources": [
  {
   "key": "ABS-ORY-1994",
   "title": "Guide for Building and Classing Offshore Racing Yachts",
   "body": "American Bureau of Shipping",
   "year": "1994",
   "readAs": "second-hand",
   "note": "tables of core shear strength and design shares"
  },
  {
   "key": "ABS-YACHTS-2021",
   "title": "Guide for Building and Classing Yachts, part 3",
   "body": "American Bureau of Shipping",
   "year": "2021",
   "readAs": "second-hand",
   "note": "written for large yachts; use on small craft is an extrapolation"
  },
  {
   "key": "ALDUCHOV-ESKRIDGE-1996",
   "title": "Improved Magnus form approximation of saturation vapor pressure, J. Appl. Meteor. 35:601-609",
   "body": "O. A. Alduchov and R. E. Eskridge",
   "year": "1996",
   "readAs": "second-hand"
  },
  {
   "key": "AMPP-41205-190",
   "title": "Amine blush (paper 41205-190)",
   "body": "D. O'Malley, Simser and Pravlik",
   "year": "2005",
   "readAs": "second-hand"
  },
  {
   "key": "ANDREW-1979",
   "title": "Another efficient algorithm for convex hulls in two dimensions",
   "body": "A. M. Andrew, Information Processing Letters 9(5), 216-219",
   "year": "1979",
   "readAs": "memory"
  },
  {
   "key": "ARITHMETIC",
   "title": "Arithmetic",
   "body": "this project",
   "year": "2026",
   "readAs": "derived"
  },
  {
   "key": "ARRHENIUS",
   "title": "Ratio of reaction rates at two temperatures",
   "body": "definition",
   "year": "n.d.",
   "readAs": "derived"
  },
  {
   "key": "ASHRAE-HOF-2017",
   "title": "Handbook of Fundamentals, chapter 1: tables 1 and 3, example 1",
   "body": "ASHRAE",
   "year": "2017",
   "readAs": "second-hand",
   "note": "values quoted in the tests of an open psychrometric library; the handbook was not opened"
  },
  {
   "key": "ASTM-C1074",
   "title": "Estimating concrete strength by the maturity method",
   "body": "ASTM",
   "year": "n.d.",
   "readAs": "memory"
  },
  {
   "key": "ASTM-C393",
   "title": "Core shear properties of sandwich constructions by beam flexure",
   "body": "ASTM International",
   "year": "n.d.",
   "readAs": "memory",
   "note": "formulas from memory, proven equal to equilibrium"
  },
  {
   "key": "AZMET-DEWPOINT",
   "title": "Computation of dew point",
   "body": "University of Arizona, AZMET",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://cales.arizona.edu/azmet/dewpoint.html"
  },
  {
   "key": "AZZI-TSAI-1965",
   "title": "Anisotropic strength of composites, Experimental Mechanics 5",
   "body": "V. D. Azzi, S. W. Tsai",
   "year": "1965",
   "readAs": "memory",
   "note": "the criterion called Tsai-Hill"
  },
  {
   "key": "BALSA-MOISTURE-PACKED",
   "title": "Small-craft draft standard: moisture of balsa as packed, 3.3.2.1",
   "body": "Nippon Foundation library",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "BORREGA-GIBSON-2015",
   "title": "Mechanics of balsa (Ochroma pyramidale) wood",
   "body": "M. Borrega, L. J. Gibson, Mechanics of Materials 84",
   "year": "2015",
   "readAs": "first-hand",
   "note": "abstract read: elastic modulus and strength rise linearly with density from 60 to 380 kg/m3"
  },
  {
   "key": "BS-1088-2003",
   "title": "Marine plywood, part 1: requirements (summary)",
   "body": "British Standards Institution; trade summary",
   "year": "2003",
   "readAs": "first-hand",
   "note": "a trade summary was read; superseded in 2018"
  },
  {
   "key": "BV-NR546-2018",
   "title": "NR546 Hull in Composite Materials and Plywood, section 8",
   "body": "Bureau Veritas",
   "year": "2018",
   "readAs": "second-hand",
   "note": "plywood"
  },
  {
   "key": "BV-NR546-2022",
   "title": "NR546 Hull in Composite Materials and Plywood",
   "body": "Bureau Veritas",
   "year": "2022",
   "readAs": "second-hand",
   "note": "section 4, core tables, read through an open transcription"
  },
  {
   "key": "CIVIL-BEAM-TABLE",
   "title": "Civil engineering formulas, beam table case 5",
   "body": "university library copy",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://digilib.universitaspertamina.ac.id/ebook/Civil%20Engineering%20Formulas/files/basic-html/page56.html"
  },
  {
   "key": "CLASS-RESIN-CONSTANTS",
   "title": "Constants of resins and E-glass in class rules",
   "body": "two class societies",
   "year": "n.d.",
   "readAs": "second-hand",
   "note": "read through open pages"
  },
  {
   "key": "COATINGS-TRADE-NOTES",
   "title": "Theoretical and practical coverage, worked examples",
   "body": "coatings trade blog and reference page",
   "year": "2022",
   "readAs": "first-hand"
  },
  {
   "key": "COMMON-PRACTICE",
   "title": "Common practice, no published source",
   "body": "the trade",
   "year": "n.d.",
   "readAs": "common-practice"
  },
  {
   "key": "CORE-DATA-SHEETS",
   "title": "Makers' core data sheets as gathered in an open survey",
   "body": "core makers, generic",
   "year": "2026",
   "readAs": "second-hand",
   "note": "headline values are averages, not minima; test methods differ"
  },
  {
   "key": "CURE-APP-NOTE",
   "title": "Curing kinetics of an epoxy adhesive, times to 95 % cure",
   "body": "instrument maker's application note",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "DECK-REPAIR-PRACTICE",
   "title": "Deck repair practice: reported piece sizes, resin use and sheets",
   "body": "repair logs and shop pages, gathered",
   "year": "2026",
   "readAs": "common-practice",
   "note": "single reports, not measurements"
  },
  {
   "key": "DEWPOINT-CHART-DEGF",
   "title": "Dew point chart in degF with the 5 degF rule",
   "body": "author unnamed",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "DEWPOINT-SOLVED-86009",
   "title": "Solved problem on absolute humidity and dew point",
   "body": "homework answer site",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "DEWPOINT-TABLE-MAKER",
   "title": "Paint maker's information sheet, dew point table",
   "body": "a maker of marine paint",
   "year": "2013",
   "readAs": "first-hand"
  },
  {
   "key": "DOUGLAS-PEUCKER-1973",
   "title": "Algorithms for the reduction of the number of points required to represent a digitized line or its caricature",
   "body": "D. H. Douglas and T. K. Peucker, Cartographica 10(2), 112-122",
   "year": "1973",
   "readAs": "memory"
  },
  {
   "key": "EMC-ENCYCLOPAEDIA",
   "title": "Equilibrium moisture content, degF form, worked example",
   "body": "encyclopaedia extract",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "EPOXY-AMINE-HEAT",
   "title": "Heats of reaction of epoxies: 356 J/g (ambient-cure abstract) and 473.6 J/g (prepreg)",
   "body": "several authors",
   "year": "1982",
   "readAs": "second-hand"
  },
  {
   "key": "EPOXY-AMINE-KINETICS",
   "title": "Activation energies of epoxy with amines: Thermochimica Acta 447(2):167-177 and others",
   "body": "several authors",
   "year": "2006",
   "readAs": "second-hand",
   "note": "read as abstracts: 55 to 60, 58.6, 61.4, 63.6 kJ/mol"
  },
  {
   "key": "EUCLID",
   "title": "Closed forms of elementary plane geometry (areas and perimeters of regular polygons, circles and their parallel curves)",
   "body": "textbook mathematics",
   "year": "n.d.",
   "readAs": "derived"
  },
  {
   "key": "FAA-AC-43-13-1B-LAMINATE",
   "title": "AC 43.13-1B Acceptable Methods, Techniques and Practices, pp. 1-26 and 3-3 (laminate repair)",
   "body": "US Federal Aviation Administration",
   "year": "1998",
   "readAs": "first-hand"
  },
  {
   "key": "FAA-AC-43-13-1B-PATCH",
   "title": "Acceptable methods, techniques and practices, para 3-4: bonded patch under a heat blanket",
   "body": "FAA",
   "year": "1998",
   "readAs": "first-hand"
  },
  {
   "key": "FAA-H-8083-31-COMPOSITE",
   "title": "Aviation Maintenance Technician Handbook, Airframe, FAA-H-8083-31, composite repair",
   "body": "US Federal Aviation Administration",
   "year": "2012",
   "readAs": "first-hand",
   "note": "read in a reproduction of the text"
  },
  {
   "key": "FIB-MC-2010",
   "title": "Model code: temperature-adjusted age (also EN 1992-1-1 annex B)",
   "body": "fib",
   "year": "2010",
   "readAs": "second-hand",
   "url": "https://github.com/fib-international/structuralcodes",
   "note": "formula read in the federation's open library"
  },
  {
   "key": "FPL-GTR-282-CH4",
   "title": "Wood handbook, chapter 4: moisture relations",
   "body": "USDA Forest Products Laboratory",
   "year": "2021",
   "readAs": "second-hand",
   "url": "https://research.fs.usda.gov/download/treesearch/62243.pdf",
   "note": "equation 4-5, table 4-2 and equations 4-3 and 4-4 read through transcriptions"
  },
  {
   "key": "FPL-GTR-282-CH8",
   "title": "Wood handbook, chapter 8: fastenings",
   "body": "USDA Forest Products Laboratory",
   "year": "2021",
   "readAs": "second-hand",
   "note": "equations 8-10 and 8-14 read through calculator pages that quote them"
  },
  {
   "key": "FROM-MEMORY",
   "title": "From memory, no source opened",
   "body": "this project",
   "year": "2026",
   "readAs": "memory"
  },
  {
   "key": "GHS",
   "title": "Globally harmonised system of classification and labelling of chemicals",
   "body": "United Nations",
   "year": "n.d.",
   "readAs": "memory",
   "note": "meaning of the H-codes, and the classes of styrene, ketone peroxide, acetone and isocyanates"
  },
  {
   "key": "GL-HSC-2012",
   "title": "Rules for High Speed Craft, C3.5 deck pressure",
   "body": "Germanischer Lloyd; hand calculation by R. Sevalho",
   "year": "2012",
   "readAs": "second-hand",
   "note": "published hand calculation"
  },
  {
   "key": "GL-HSC-2012-LAMINATES",
   "title": "Rules for High Speed Craft, C3.8.2 lamina and laminate, with hand calculations published beside an open transcription",
   "body": "Germanischer Lloyd (rule); R. Sevalho (hand calculations)",
   "year": "2012",
   "readAs": "second-hand",
   "note": "the rule was read through the transcription; the hand calculations were read as published numbers"
  },
  {
   "key": "GLIDER-REPAIR-MANUALS",
   "title": "Repair manuals of two glass-fibre aircraft, laminate scarf",
   "body": "makers of aircraft",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "excerpts"
  },
  {
   "key": "HALPIN-TSAI-1976",
   "title": "The Halpin-Tsai equations: a review, Polymer Engineering and Science 16",
   "body": "J. C. Halpin, J. L. Kardos",
   "year": "1976",
   "readAs": "memory"
  },
  {
   "key": "HARDENER-SAWDUST",
   "title": "Resin maker's note: amine hardener on sawdust may self-ignite; do not bin hot pots",
   "body": "a maker of epoxy",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "HOFFMAN-1967",
   "title": "The brittle strength of orthotropic materials, J. Composite Materials 1",
   "body": "O. Hoffman",
   "year": "1967",
   "readAs": "memory"
  },
  {
   "key": "HSE-GLOVES",
   "title": "Dermatitis, stage 4: gloves",
   "body": "Health and Safety Executive",
   "year": "2010",
   "readAs": "first-hand"
  },
  {
   "key": "HSE-ISOCYANATE",
   "title": "Isocyanate paint spraying",
   "body": "Health and Safety Executive",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://hse.gov.uk/asthma/vehicle.htm",
   "note": "written for motor-vehicle repair"
  },
  {
   "key": "HSE-RR79",
   "title": "Research report 79: skin sensitisation",
   "body": "Health and Safety Executive",
   "year": "2003",
   "readAs": "second-hand"
  },
  {
   "key": "HUMIDITY-TABLE",
   "title": "Table of absolute humidity and dew point",
   "body": "uploader unnamed",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "HYER-1998",
   "title": "Stress Analysis of Fiber-Reinforced Composite Materials, pp. 89-90 (constituents), and engineering constants computed from them in a public test to 1 %",
   "body": "M. W. Hyer; R. F. Smith",
   "year": "1998",
   "readAs": "second-hand",
   "note": "constituent data of the book through a test; laminate constants first-hand in that test"
  },
  {
   "key": "IANA-TZ",
   "title": "Time zone database as carried by the run time",
   "body": "IANA",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://www.iana.org/time-zones"
  },
  {
   "key": "ICAO-7488",
   "title": "Manual of the ICAO standard atmosphere",
   "body": "ICAO",
   "year": "1993",
   "readAs": "second-hand",
   "url": "http://crnslab.org/util/atmo.php",
   "note": "constants read in a laboratory note that quotes the manual"
  },
  {
   "key": "IMCA-EPOXY",
   "title": "Lessons learned: epoxy overheating",
   "body": "International Marine Contractors Association",
   "year": "n.d.",
   "readAs": "second-hand",
   "url": "https://safety4sea.com/lessons-learned-epoxy-overheating"
  },
  {
   "key": "INJECTION-LIMITS",
   "title": "Test magazine articles on injected repairs: area, and wood moisture 12 % for epoxy",
   "body": "a test magazine",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "ISO-12215-5-1999-DRAFT",
   "title": "ISO/DIS 12215-5, draft reproduced in a public library of boat building texts",
   "body": "ISO TC 188; Nippon Foundation",
   "year": "1999",
   "readAs": "first-hand",
   "url": "https://nippon.zaidan.info/seikabutsu/1999/00215/contents/",
   "note": "pages 024, 031, 032, 034, 053 read; tables that are images were not readable"
  },
  {
   "key": "ISO-12215-5-2004-DRAFT",
   "title": "ISO/DIS 12215-5.3, validation draft of 18 December 2004",
   "body": "ISO TC 188 WG 18, published by the National Marine Manufacturers Association",
   "year": "2004",
   "readAs": "second-hand",
   "note": "Annex E (plywood) and pressure factors"
  },
  {
   "key": "ISO-12215-5-2008",
   "title": "Small craft: hull construction and scantlings, part 5: design pressures, stresses and scantlings",
   "body": "ISO TC 188",
   "year": "2008",
   "readAs": "second-hand",
   "note": "formulas and values read through open transcriptions; the printed standard was not opened, and a later edition (2019) exists whose numbers were not readable"
  },
  {
   "key": "ISO-8502-4",
   "title": "Preparation of steel substrates: guidance on the probability of condensation",
   "body": "ISO",
   "year": "2017",
   "readAs": "second-hand",
   "note": "scope read at a national standards catalogue; the 3 K margin read in secondary pages, the clause was not opened"
  },
  {
   "key": "JONES-1999",
   "title": "Mechanics of Composite Materials, 2nd edition, chapters 2 to 4",
   "body": "R. M. Jones",
   "year": "1999",
   "readAs": "memory",
   "note": "the standard equations of lamination theory, written from memory and checked by the published examples of this room"
  },
  {
   "key": "KELLEY-WALKER-1959",
   "title": "Critical-path planning and scheduling",
   "body": "J. E. Kelley and M. R. Walker",
   "year": "1959",
   "readAs": "memory"
  },
  {
   "key": "LAMINATE-BY-HAND",
   "title": "Hand calculations of the laminate room, every step in a comment",
   "body": "this project",
   "year": "2026",
   "readAs": "derived"
  },
  {
   "key": "LAMINATE-TEST-0-45-90",
   "title": "Expected stiffness of an unsymmetric [0/45/90] laminate in a public test",
   "body": "an open research code on composite plates",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "a second set of values in the same test is marked unfinished by its author and is not used"
  },
  {
   "key": "LEE-LOOS-SPRINGER-1982",
   "title": "Heat of reaction, degree of cure and viscosity of a prepreg resin, J. Composite Materials 16:510",
   "body": "W. I. Lee, A. C. Loos and G. S. Springer",
   "year": "1982",
   "readAs": "second-hand",
   "note": "constants read in an open finite-element example; the paper was not opened"
  },
  {
   "key": "LIGHT-AIRCRAFT-LAYUP",
   "title": "Light-aircraft maintenance manual 51-00-00, wet lay-up ratios",
   "body": "an aircraft maker",
   "year": "2013",
   "readAs": "first-hand"
  },
  {
   "key": "LR-GUIDANCE-2013",
   "title": "Guidance Notes for Calculation Procedures for Composite Construction",
   "body": "Lloyd's Register",
   "year": "2013",
   "readAs": "first-hand",
   "note": "chapter 4, worked calculations"
  },
  {
   "key": "LR-SSC-2020",
   "title": "Rules and Regulations for the Classification of Special Service Craft",
   "body": "Lloyd's Register",
   "year": "2020",
   "readAs": "second-hand",
   "note": "part 8 chapter 3"
  },
  {
   "key": "LR-SSC-2022",
   "title": "Rules for special service craft, part 8 chapter 2, 4.2.4 and 4.2.6",
   "body": "Lloyd's Register",
   "year": "2022",
   "readAs": "first-hand",
   "url": "https://imorules.com/SSC_PT8_CH2_4.html"
  },
  {
   "key": "MAKER-COATING-GATES",
   "title": "Paint makers' technical notes, application temperature and humidity",
   "body": "makers of marine paint",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-COVERAGE",
   "title": "Paint supplier's help desk, topside paint coverage",
   "body": "a supplier",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-DROP-TEST",
   "title": "Resin supplier's note on the vacuum drop test",
   "body": "a supplier",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-EPOXY-ESTIMATE",
   "title": "Resin maker's magazine: estimating epoxy amounts",
   "body": "a maker of epoxy",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-FABRICATING-BASICS",
   "title": "Composite fabricating basics: resin demand from fibre fraction",
   "body": "a supplier",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-HALVING",
   "title": "Resin makers' notes: each 10 K halves the gel time",
   "body": "makers of epoxy",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-NOTCH",
   "title": "Resin maker's magazine: use with notched spreaders",
   "body": "a maker of epoxy",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-PLY-THICKNESS",
   "title": "Resin maker's technical note, ply thickness of hand-laid glass fabrics",
   "body": "a maker of epoxy",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "excerpt; the fibre fraction behind each thickness is not stated"
  },
  {
   "key": "MAKER-RATIO-SHEET",
   "title": "Resin maker's data sheet: ratios by weight and by volume",
   "body": "a maker of epoxy",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-SPREADING-RATE",
   "title": "Paint makers' technical notes, spreading rate tables and examples",
   "body": "makers of marine paint",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MAKER-WASTE",
   "title": "Resin suppliers' notes: 15 to 20 % waste, resin to glass by kind of fabric",
   "body": "suppliers",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MALCOLM-1959",
   "title": "Application of a technique for research and development program evaluation, Operations Research 7(5):646-669",
   "body": "D. G. Malcolm, J. H. Roseboom, C. E. Clark and W. Fazar",
   "year": "1959",
   "readAs": "memory",
   "note": "three-point mean (a + 4m + b)/6"
  },
  {
   "key": "MALLICK-2008",
   "title": "Fiber-Reinforced Composites: Materials, Manufacturing, and Design, 3rd edition, worked examples of chapter 3",
   "body": "P. K. Mallick",
   "year": "2008",
   "readAs": "second-hand",
   "note": "the examples as solved in a university course; the book was not opened"
  },
  {
   "key": "MARINE-PLY-MASS-TABLE",
   "title": "Plywood supplier's table of thickness and mass",
   "body": "a plywood supplier",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "MARINE-PREP-BOOK",
   "title": "Surface preparing and painting",
   "body": "marine reference pages",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "states the 3 K margin, 85 % humidity and the 5 degC limit of epoxy without a source of its own"
  },
  {
   "key": "METEO-LIBRARY-TESTS",
   "title": "Tests of an open solar and weather library: relative humidity from dew point, pressure from altitude",
   "body": "its contributors",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "computed by that library from the same formula: guards against coding errors only"
  },
  {
   "key": "MIL-HDBK-17-2F",
   "title": "Polymer Matrix Composites: Materials Properties, table A1.1 (E-glass fabric with epoxy)",
   "body": "US Department of Defense",
   "year": "2002",
   "readAs": "second-hand"
  },
  {
   "key": "MIL-HDBK-17-3E",
   "title": "Polymer Matrix Composites: Materials Usage, Design and Analysis, normalisation to fibre volume",
   "body": "US Department of Defense",
   "year": "1997",
   "readAs": "second-hand"
  },
  {
   "key": "MIT-CORE-NOTE",
   "title": "Foam and core properties note",
   "body": "M. Drela, Massachusetts Institute of Technology",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "excerpt read"
  },
  {
   "key": "MIX-BY-VOLUMES",
   "title": "Density of a mixture from masses and true densities",
   "body": "definition",
   "year": "n.d.",
   "readAs": "derived"
  },
  {
   "key": "MOISTURE-FORUM-EXAMPLE",
   "title": "Worked moisture-content example",
   "body": "UK woodworking forum",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "NDS-2015",
   "title": "National Design Specification for Wood Construction, table 12.2A",
   "body": "American Wood Council",
   "year": "2015",
   "readAs": "second-hand",
   "note": "read from a scanned permit page"
  },
  {
   "key": "NETTLES-1994",
   "title": "Basic Mechanics of Laminated Composite Plates, NASA Reference Publication 1351",
   "body": "A. T. Nettles, NASA Marshall Space Flight Center",
   "year": "1994",
   "readAs": "second-hand",
   "url": "https://ntrs.nasa.gov/citations/19950009349",
   "note": "values quoted with example and page by a test; the report calculates by hand with rounded strains"
  },
  {
   "key": "NIOSH-PEL88-MEKP",
   "title": "Ketone peroxide: comments on the 1988 limits",
   "body": "NIOSH",
   "year": "1988",
   "readAs": "first-hand",
   "url": "https://www.cdc.gov/niosh/pel88/1338-23.html"
  },
  {
   "key": "NIOSH-POCKET-GUIDE",
   "title": "Pocket guide to chemical hazards",
   "body": "NIOSH",
   "year": "2005",
   "readAs": "second-hand"
  },
  {
   "key": "NURSE-SAUL",
   "title": "Maturity as temperature times time, worked example",
   "body": "concrete reference pages",
   "year": "n.d.",
   "readAs": "second-hand"
  },
  {
   "key": "OSHA-LEAD",
   "title": "Lead in construction advisor",
   "body": "US Department of Labor",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "OSHA-LIMITS",
   "title": "Occupational exposure limits and sampling information",
   "body": "OSHA",
   "year": "2008",
   "readAs": "first-hand"
  },
  {
   "key": "PANEL-DERIVED",
   "title": "Statics and closed forms derived for this project",
   "body": "this project",
   "year": "2026",
   "readAs": "derived",
   "note": "each derivation stands beside its use"
  },
  {
   "key": "PEEL-PLY-2020",
   "title": "Peel ply resin absorption: a data point",
   "body": "a practitioner",
   "year": "2020",
   "readAs": "first-hand"
  },
  {
   "key": "PERSON-MASS-CODES",
   "title": "Masses of a person in national and small-craft codes",
   "body": "UK workboat code, NSCV, ISO plate; open survey",
   "year": "2026",
   "readAs": "second-hand"
  },
  {
   "key": "PLATE-TABLE-PAGE",
   "title": "Rectangular plate, simply supported, uniform load: coefficients C1 to C5",
   "body": "engineering reference page",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "a page of tabulated coefficients"
  },
  {
   "key": "PLYWOOD-WET-FACTORS",
   "title": "Panel Design Specification wet service factors, as quoted in an open survey",
   "body": "APA, The Engineered Wood Association",
   "year": "2026",
   "readAs": "second-hand"
  },
  {
   "key": "PRACTICAL-ACTION-FIBREGLASS",
   "title": "Fibreglass boats, technical brief",
   "body": "Practical Action",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "lay-up section, read as an excerpt"
  },
  {
   "key": "REPAIR-MAGAZINE-12TO1",
   "title": "Trade magazine article on errors in fibreglass laminate repair",
   "body": "a resin maker's magazine",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "excerpt; asks for 12:1 at least and a repair as thick as the laminate"
  },
  {
   "key": "RFC-5545",
   "title": "Internet calendaring and scheduling core object specification",
   "body": "IETF",
   "year": "2009",
   "readAs": "first-hand",
   "url": "https://www.rfc-editor.org/rfc/rfc5545"
  },
  {
   "key": "ROARK-2002",
   "title": "Roark's Formulas for Stress and Strain, 7th edition, table 11.4",
   "body": "W. C. Young, R. G. Budynas",
   "year": "2002",
   "readAs": "first-hand",
   "note": "an extract was read"
  },
  {
   "key": "ROTHBARTH-PINTO-2019",
   "title": "Paper on scarf-repaired glass-fibre marine laminates: tests of 1:6, 1:12 and 1:20",
   "body": "Rothbarth, Pinto; CENTEC, Lisbon",
   "year": "2019",
   "readAs": "first-hand",
   "note": "excerpt; the exact title was not kept"
  },
  {
   "key": "SADMAN-2025",
   "title": "Effects of lamina stacking sequence and areal weight on S-glass/polyester composites, computed strains and stresses",
   "body": "S. Sadman, M. Ahmed, R. Hossain, Ahsanullah University of Science and Technology",
   "year": "2025",
   "readAs": "first-hand",
   "note": "thesis data; the load is far beyond any real one, so this checks arithmetic only"
  },
  {
   "key": "SDS-EPOXY",
   "title": "Safety data sheets: liquid bisphenol-A epoxy resin and amine hardener",
   "body": "several makers",
   "year": "2015",
   "readAs": "first-hand"
  },
  {
   "key": "SHOELACE",
   "title": "Surveyor's area formula (C. F. Gauss), as given in standard handbooks of plane geometry",
   "body": "textbook mathematics",
   "year": "1795",
   "readAs": "memory"
  },
  {
   "key": "SONNTAG-1994",
   "title": "Saturation vapour pressure over water, full form",
   "body": "D. Sonntag, as quoted in a university function library",
   "year": "1994",
   "readAs": "second-hand",
   "url": "https://arts.mi.uni-hamburg.de/svn/rt/atmlab/branches/atmlab-2.4/h2o/thermodynamics/e_eq_water.m"
  },
  {
   "key": "STD-ATM-REFERENCE-PAGES",
   "title": "Standard atmosphere against altitude, imperial tables",
   "body": "engineering reference sites",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "STEINER-1840",
   "title": "On parallel surfaces: area of the parallel body of a convex figure, A + L d + pi d2",
   "body": "J. Steiner, Royal Prussian Academy of Sciences",
   "year": "1840",
   "readAs": "memory"
  },
  {
   "key": "SUPPLIER-SPHERES",
   "title": "Data sheet of hollow glass spheres",
   "body": "a supplier",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "TB-43-0144",
   "title": "Painting of vessels, appendix D (rollable nonskid)",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://boatmanuals.tpub.com/TB-43-0144/TB-43-01440095.htm"
  },
  {
   "key": "THROUGHPUT-NIST",
   "title": "Throughput conversion with NIST coefficients",
   "body": "reference site quoting NIST",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "TIMOSHENKO-PLATES-1959",
   "title": "Theory of Plates and Shells, 2nd edition",
   "body": "S. Timoshenko, S. Woinowsky-Krieger",
   "year": "1959",
   "readAs": "second-hand",
   "note": "table 8 and the clamped plate as quoted in open benchmark pages; entries marked memory were not read"
  },
  {
   "key": "TM-1-1500-204-23-1",
   "title": "General aircraft maintenance: epoxy abrasion coat",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://aviationmiscmanuals.tpub.com/TM-1-1500-204-23-1/css/TM-1-1500-204-23-1_182.htm"
  },
  {
   "key": "TM-1-1500-204-23-11",
   "title": "General aircraft maintenance: advanced composite material",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://aviationmaintenance.tpub.com/TM-1-1500-204-23-11/TM-1-1500-204-23-1100172.html"
  },
  {
   "key": "TM-1-1500-204-23-11-SCARF",
   "title": "General aircraft maintenance: ply steps and alignment of composite repairs",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "note": "HTML copy"
  },
  {
   "key": "TM-10-8110-201",
   "title": "Fuel and water storage tanks: two-part elastomer, para 5-14",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://waterstorage.tpub.com/TM-10-8110-201-14P/css/TM-10-8110-201-14P_104.htm"
  },
  {
   "key": "TM-43-0139",
   "title": "Painting instructions for army materiel",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://automotiveaccessories.tpub.com/TM-43-0139/css/TM-43-0139_43.htm"
  },
  {
   "key": "TM-55-1905-223-SDC",
   "title": "Landing craft: ship damage control, para 8-18 and 8-24",
   "body": "US Army",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://boatmanuals.tpub.com/TM-55-1905-223-SDC/TM-55-1905-223-SDC0123.htm"
  },
  {
   "key": "TRADE-CALENDARS",
   "title": "Days actually taken: professional and owner logs",
   "body": "logs of the trade",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "TSAI-WU-1971",
   "title": "A general theory of strength for anisotropic materials, J. Composite Materials 5",
   "body": "S. W. Tsai, E. M. Wu",
   "year": "1971",
   "readAs": "memory"
  },
  {
   "key": "TUE-4MM00-2023",
   "title": "Composite and Lightweight Materials (4MM00), lamination example 4 and failure example 1",
   "body": "Eindhoven University of Technology, J. Remmers",
   "year": "2023",
   "readAs": "first-hand",
   "note": "the numbers belong to 0.25 mm plies and a transverse fibre modulus of 22 GPa, while the text of the exercise says 0.3 mm and 20 GPa"
  },
  {
   "key": "UDEL-EPOXY-SMOKE",
   "title": "Epoxy smoke incident",
   "body": "University of Delaware, environmental health and safety",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "http://www1.udel.edu/ehs/research/chemical/epoxy-smoke.html"
  },
  {
   "key": "UFC-3-190-06",
   "title": "Protective coatings and paints (MIL-HDBK-1110), para 9.6.6",
   "body": "US Department of Defense",
   "year": "2004",
   "readAs": "first-hand",
   "url": "https://ufgscriteria.tpub.com/3_190_06/3_190_060170.htm"
  },
  {
   "key": "US-STD-ATM-1976",
   "title": "U.S. Standard Atmosphere",
   "body": "NOAA, NASA, USAF",
   "year": "1976",
   "readAs": "second-hand",
   "note": "table values quoted in the tests of open libraries"
  },
  {
   "key": "USL-5G-2008",
   "title": "USL Code section 5G, design loading",
   "body": "Australian Maritime Safety Authority",
   "year": "2008",
   "readAs": "second-hand",
   "url": "https://www.amsa.gov.au/sites/default/files/2023-11/usl_code_5g_2008.pdf"
  },
  {
   "key": "USN-COMPOSITE-TRAINING",
   "title": "Aviation training manual, composite repair page 14-6",
   "body": "US Navy",
   "year": "n.d.",
   "readAs": "first-hand",
   "url": "https://www.tpub.com/air/14-6.htm"
  },
  {
   "key": "VACUUM-GUIDE",
   "title": "Evacuation time and pump sizing",
   "body": "vacuum reference site",
   "year": "n.d.",
   "readAs": "first-hand"
  },
  {
   "key": "VACUUM-PRACTITIONERS",
   "title": "Vacuum over a panel: worked loads on practitioners' pages",
   "body": "practitioners",
   "year": "2007",
   "readAs": "first-hand"
  },
  {
   "key": "WEAVER-2006",
   "title": "Ensure proper coating performance",
   "body": "R. E. F. Weaver, citing the SSPC",
   "year": "2006",
   "readAs": "first-hand",
   "url": "https://www.plantservices.com/articles/2006/310/"
  },
  {
   "key": "WMO-8",
   "title": "Guide to Instruments and Methods of Observation (No. 8), saturation vapour pressure",
   "body": "World Meteorological Organization",
   "year": "2008",
   "readAs": "second-hand",
   "note": "coefficients read in documentation that quotes p. 1.4-29"
  },
  {
   "key": "WOOD-HANDBOOK-2010",
   "title": "Wood Handbook: Wood as an Engineering Material, FPL-GTR-190",
   "body": "US Forest Products Laboratory",
   "year": "2010",
   "readAs": "first-hand",
   "url": "https://www.fpl.fs.usda.gov/documnts/fplgtr/fpl_gtr190.pdf",
   "note": "table 9-1 and table 5-5 read"
  },
  {
   "key": "YARD-POUND-1959",
   "title": "International yard and pound agreement",
   "body": "national standards laboratories of six countries",
   "year": "1959",
   "readAs": "memory",
   "note": "exact definitions of the inch and the pound"
  },
  {
   "key": "ZENKERT-1995",
   "title": "An Introduction to Sandwich Structures",
   "body": "D. Zenkert, KTH",
   "year": "1995",
   "readAs": "second-hand",
   "url": "https://www.diva-portal.org/smash/get/diva2:1366182/FULLTEXT01.pdf"
  }
 ]
};
