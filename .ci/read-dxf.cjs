// Reads a DXF with dxf-parser (found through NODE_PATH) and prints each layer that carries entities with its extents along x in mm:
// what a CAD program would see, by a reader that shares no code with our writer.
const { readFileSync } = require('node:fs');
const reader = require('dxf-parser');
const DxfParser = reader.DxfParser ?? reader.default ?? reader;

const drawing = new DxfParser().parseSync(readFileSync(process.argv[2], 'latin1'));
const declared = Object.keys(drawing.tables.layer.layers);
const extents = new Map();
for (const entity of drawing.entities) {
  if (!declared.includes(entity.layer)) throw new Error(`layer ${entity.layer} is used but not declared`);
  const xs = (entity.vertices ?? [entity.startPoint]).map(point => point.x);
  const [min, max] = extents.get(entity.layer) ?? [Infinity, -Infinity];
  extents.set(entity.layer, [Math.min(min, ...xs), Math.max(max, ...xs)]);
}
for (const [layer, [min, max]] of extents) console.log(layer, min, max);
