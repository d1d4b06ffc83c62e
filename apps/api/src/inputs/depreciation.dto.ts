import { depreciationQuestions } from '#lib/costing';
import { answering } from '../edge/dto/index.js';

export class DepreciationDto extends answering(depreciationQuestions) {}
