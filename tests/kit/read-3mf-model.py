"""Says as JSON what stands in the model part of a 3MF file: unit, title, and each object with its colours and its place."""

import json
import sys
import zipfile
from xml.etree import ElementTree

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"


def object_facts(item, colours, places):
    triangles = list(item.iter(CORE + "triangle"))
    raised = [t for t in triangles if t.get("p1") is not None]
    return {
        "id": item.get("id"),
        "type": item.get("type"),
        "name": item.get("name"),
        "colour": colours[item.get("pid")][int(item.get("pindex"))],
        "letterColours": sorted({colours[t.get("pid")][int(t.get("p1"))] for t in raised}),
        "raised": len(raised),
        "triangles": len(triangles),
        "vertices": len(list(item.iter(CORE + "vertex"))),
        "transform": places.get(item.get("id")),
    }


with zipfile.ZipFile(sys.argv[1]) as archive:
    broken = archive.testzip()
    if broken:
        raise SystemExit(f"checksum of {broken} is wrong")
    root = ElementTree.fromstring(archive.read("3D/3dmodel.model"))
    files = archive.namelist()
colours = {
    group.get("id"): [base.get("displaycolor") for base in group.iter(CORE + "base")]
    for group in root.iter(CORE + "basematerials")
}
places = {item.get("objectid"): item.get("transform") for item in root.iter(CORE + "item")}
objects = [object_facts(item, colours, places) for item in root.iter(CORE + "object")]
titles = [data.text for data in root.iter(CORE + "metadata") if data.get("name") == "Title"]
print(json.dumps({"unit": root.get("unit"), "tag": root.tag, "files": files, "objects": objects, "titles": titles}))
