import { Colors, DxfWriter, LWPolylineFlags, Units, point2d, point3d } from '@tarikjabiri/dxf';

/** Millimetres, x to the right, y up. */
export type DxfPoint = readonly [number, number];

/** What a line is for; each is a layer of that name. */
export type DxfPurpose =
  'sheet edge' | 'piece edge' | 'hole' | 'bleed hole' | 'label' | 'grain' | 'offcut kept';

const colours: Readonly<Record<DxfPurpose, number>> = {
  'sheet edge': Colors.Blue,
  'piece edge': Colors.White,
  'hole': Colors.Red,
  'bleed hole': Colors.Magenta,
  'label': Colors.Green,
  'grain': Colors.Cyan,
  'offcut kept': Colors.Yellow,
};

const purposes = ['sheet edge', 'piece edge', 'hole', 'bleed hole', 'label', 'grain', 'offcut kept'] as const;

export type DxfMark =
  | { readonly kind: 'outline'; readonly purpose: DxfPurpose; readonly corners: readonly DxfPoint[] }
  | { readonly kind: 'line'; readonly purpose: DxfPurpose; readonly from: DxfPoint; readonly to: DxfPoint }
  | {
      readonly kind: 'circle';
      readonly purpose: DxfPurpose;
      readonly centre: DxfPoint;
      readonly radiusMm: number;
    }
  | {
      readonly kind: 'text';
      readonly purpose: DxfPurpose;
      readonly at: DxfPoint;
      readonly heightMm: number;
      readonly text: string;
    };

/** The marks as an open drawing exchange file (ASCII), 1:1 in millimetres, outlines closed, a layer for each purpose. */
export function dxfText(marks: readonly DxfMark[]): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  writer.setVariable('$MEASUREMENT', { 70: METRIC });
  const { low, high } = extentsOf(marks);
  writer.setVariable('$EXTMIN', { 10: low[0], 20: low[1], 30: 0 });
  writer.setVariable('$EXTMAX', { 10: high[0], 20: high[1], 30: 0 });
  for (const purpose of purposes) writer.addLayer(purpose, colours[purpose], 'Continuous');
  for (const mark of marks) add(writer, mark);
  return writer.stringify();
}

/** The code of the format for metric drawings: a viewer then takes metric line types and hatches. */
const METRIC = 1;

/** Corners of the box round everything drawn, so that a viewer opens at it. */
function extentsOf(marks: readonly DxfMark[]): { readonly low: DxfPoint; readonly high: DxfPoint } {
  const points = marks.flatMap(pointsOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { low: [Math.min(...xs), Math.min(...ys)], high: [Math.max(...xs), Math.max(...ys)] };
}

function pointsOf(mark: DxfMark): readonly DxfPoint[] {
  switch (mark.kind) {
    case 'outline':
      return mark.corners;
    case 'line':
      return [mark.from, mark.to];
    case 'circle':
      return [
        [mark.centre[0] - mark.radiusMm, mark.centre[1] - mark.radiusMm],
        [mark.centre[0] + mark.radiusMm, mark.centre[1] + mark.radiusMm],
      ];
    case 'text':
      return [mark.at];
  }
}

function add(writer: DxfWriter, mark: DxfMark): void {
  const layerName = mark.purpose;
  switch (mark.kind) {
    case 'outline':
      writer.addLWPolyline(
        mark.corners.map(([x, y]) => ({ point: point2d(x, y) })),
        { flags: LWPolylineFlags.Closed, layerName },
      );
      return;
    case 'line':
      writer.addLine(at(mark.from), at(mark.to), { layerName });
      return;
    case 'circle':
      writer.addCircle(at(mark.centre), mark.radiusMm, { layerName });
      return;
    case 'text':
      writer.addText(at(mark.at), mark.heightMm, plain(mark.text), { layerName });
  }
}

const at = ([x, y]: DxfPoint) => point3d(x, y, 0);

/** A line of the file holds one value, so a label may not break it. */
const plain = (text: string): string => text.replace(/[\r\n\t]+/g, ' ');
