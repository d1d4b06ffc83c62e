import { drynessFormulas } from './drying.js';
import { edgeFormulas } from './edges.js';
import { hardwareFormulas } from './hardware/formulas.js';
import { holeFormulas } from './holes.js';
import { overlayFormulas } from './overlay.js';

export const formulas = [
  ...holeFormulas,
  ...hardwareFormulas,
  ...edgeFormulas,
  ...overlayFormulas,
  ...drynessFormulas,
];
