import { settingOut } from '../../deck/setting-out.js';
import { dense, list, paragraph, task, untitled, type Block, type Section } from '../document.js';
import { damageFigure, openingPlanFigure, PLAN_WITH_LIST_MM } from '../figures.js';
import { panelOf } from '../inputs.js';
import { cornerTable, placeTable } from '../opening-sections.js';
import type { ReportRequest } from '../request.js';

/** The corners stand with the plan where they all find room, else each opening has a sheet of its own. */
export function markOutTasks(request: ReportRequest): readonly Section[] {
  const { jobPack } = request.reader.words;
  const { openings } = request.estimate.scope;
  if (openings.length === 0) return placeTasks(request);
  const count = openings.reduce((sum, { sawLine }) => sum + sawLine.length, 0);
  if (openings.length === 1 || count <= MOST_CORNERS_WITH_PLAN)
    return [
      task('mark-out', jobPack.markOut, [
        untitled(openingPlanFigure(request, PLAN_WITH_LIST_MM[request.paper])),
        ...openings.flatMap(({ label }) => corners(request, label)),
      ]),
    ];
  return [
    task('mark-out', jobPack.markOut, [untitled(openingPlanFigure(request))]),
    ...openings.map(({ label }, index) =>
      task(`mark-out-${index + 1}`, `${jobPack.markOut} ${label}`, corners(request, label)),
    ),
  ];
}

const MOST_CORNERS_WITH_PLAN = 10;

function corners(request: ReportRequest, label: string): readonly Block[] {
  const { way } = settingOut(panelOf(request).outer);
  return [
    dense(paragraph(request.reader.words.jobPack.markOutLead[way](label))),
    ...small(cornerTable(request, label)),
  ];
}

const small = (blocks: readonly Block[]): readonly Block[] =>
  blocks.map((block) => (block.kind === 'table' || block.kind === 'paragraph' ? dense(block) : block));

/** Nothing is cut out of the deck: where the fittings and the bad core are, what is done there, and what it leaves. */
function placeTasks(request: ReportRequest): readonly Section[] {
  const { estimate, reader } = request;
  const { jobPack } = reader.words;
  const { methods } = estimate;
  const planned = methods.rungs.find(({ rung }) => rung === methods.planned.rung);
  return [
    task('mark-out', jobPack.place, [
      untitled(damageFigure(request)),
      ...small(placeTable(request)),
      dense(paragraph(jobPack.placeLead(methods.planned.title, methods.planned.because))),
      ...(planned === undefined || planned.leavesUndone.length === 0
        ? []
        : [dense(list(planned.leavesUndone.map((what) => jobPack.leftUndone(what))))]),
    ]),
  ];
}
