import type { SolidPart } from '../../print3d/display-set.ts';
import { bytesOf, zipFiles } from '../link/deflate.ts';
import { escapeXml } from '../svg/escape-xml.ts';

const CONTENT_TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
`;

const RELATIONS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
`;

/** Number of the list of colours among the resources; the parts follow. */
const COLOURS_ID = 1;

/**
 * The parts of a display set as the bytes of a 3MF file.
 *
 * @param title of the whole, for people.
 * @source 3MF Core Specification 1.4.0: units, meshes, base materials, build items.
 * @check tests/outside/print3d.test.ts reads it with an independent library
 */
export function write3mf(parts: readonly SolidPart[], title: string): Uint8Array {
  return zipFiles({
    '[Content_Types].xml': bytesOf(CONTENT_TYPES),
    '_rels/.rels': bytesOf(RELATIONS),
    '3D/3dmodel.model': bytesOf(modelText(parts, title)),
  });
}

function modelText(parts: readonly SolidPart[], title: string): string {
  const colours = [...new Set(parts.flatMap(({ colour, letterColour }) => [colour, letterColour]))];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${escapeXml(title)}</metadata>`,
    '<metadata name="Application">Sectionary</metadata>',
    '<resources>',
    `<basematerials id="${COLOURS_ID}">`,
    ...colours.map((colour) => `<base name="${colour}" displaycolor="${colour.toUpperCase()}"/>`),
    '</basematerials>',
    ...parts.flatMap((part, i) => objectLines(part, COLOURS_ID + 1 + i, colours)),
    '</resources>',
    '<build>',
    ...parts.map(({ place }, i) => {
      const at = place.map(numberText).join(' ');
      return `<item objectid="${COLOURS_ID + 1 + i}" transform="1 0 0 0 1 0 0 0 1 ${at}"/>`;
    }),
    '</build>',
    '</model>',
    '',
  ].join('\n');
}

function objectLines(part: SolidPart, id: number, colours: readonly string[]): string[] {
  const { name, colour, letterColour, positions: p, triangles: t, lettersFrom } = part;
  const own = `pid="${COLOURS_ID}" pindex="${colours.indexOf(colour)}"`;
  const raised = ` pid="${COLOURS_ID}" p1="${colours.indexOf(letterColour)}"`;
  const lines = [`<object id="${id}" type="model" name="${escapeXml(name)}" ${own}>`, '<mesh>', '<vertices>'];
  for (let i = 0; i < p.length; i += 3)
    lines.push(`<vertex x="${numberText(p[i])}" y="${numberText(p[i + 1])}" z="${numberText(p[i + 2])}"/>`);
  lines.push('</vertices>', '<triangles>');
  for (let i = 0; i < t.length; i += 3) {
    const colouring = i >= 3 * lettersFrom ? raised : '';
    lines.push(`<triangle v1="${t[i]}" v2="${t[i + 1]}" v3="${t[i + 2]}"${colouring}/>`);
  }
  lines.push('</triangles>', '</mesh>', '</object>');
  return lines;
}

/** Nine digits tell any two numbers of single precision apart. */
function numberText(value: number): string {
  return String(Number(value.toPrecision(9)));
}
