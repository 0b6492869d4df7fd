"""Says as JSON what trimesh, and for 3MF the XML itself, find in files of solids given as words."""

import json
import sys
import zipfile

import numpy
import trimesh
from lxml import etree
from shapely.geometry import LineString, Polygon
from shapely.ops import linemerge

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"


def edge_uses(mesh):
    """How often each edge is used: the smallest and the greatest count, both ways round taken as one."""
    _, counts = numpy.unique(mesh.edges_sorted, axis=0, return_counts=True)
    return [int(counts.min()), int(counts.max())]


def cut_at(mesh, height):
    """What a cut square to z lays open, by shapely: lines of trimesh joined to rings, each a hole in the one round it."""
    lines = trimesh.intersections.mesh_plane(mesh, plane_normal=[0, 0, 1], plane_origin=[0, 0, height])
    merged = linemerge([LineString(line) for line in lines[:, :, :2].round(7) if (line[0] != line[1]).any()])
    rings = merged.geoms if hasattr(merged, "geoms") else [merged]
    cut = Polygon()
    for ring in rings:
        cut = cut.symmetric_difference(Polygon(ring))
    return cut


def mesh_facts(name, mesh, heights):
    return {
        "name": name,
        "watertight": bool(mesh.is_watertight),
        "oriented": bool(mesh.is_winding_consistent),
        "volume": float(mesh.volume),
        "bounds": mesh.bounds.tolist(),
        "edgeUses": edge_uses(mesh),
        "euler": int(mesh.euler_number),
        "bodies": len(trimesh.graph.connected_components(mesh.face_adjacency, min_len=1, engine="networkx")),
        "triangles": int(len(mesh.faces)),
        "degenerate": int((~mesh.nondegenerate_faces()).sum()),
        "areas": [float(cut_at(mesh, height).area) for height in heights],
    }


def xml_facts(file):
    """What stands in the model part: unit, the colours, and each object with its colours and its place."""
    with zipfile.ZipFile(file) as archive:
        root = etree.fromstring(archive.read("3D/3dmodel.model"))
        files = archive.namelist()
    colours = {
        group.get("id"): [base.get("displaycolor") for base in group.iter(CORE + "base")]
        for group in root.iter(CORE + "basematerials")
    }
    places = {item.get("objectid"): item.get("transform") for item in root.iter(CORE + "item")}
    objects = []
    for item in root.iter(CORE + "object"):
        triangles = list(item.iter(CORE + "triangle"))
        raised = [t for t in triangles if t.get("p1") is not None]
        objects.append(
            {
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
        )
    titles = [data.text for data in root.iter(CORE + "metadata") if data.get("name") == "Title"]
    return {"unit": root.get("unit"), "tag": root.tag, "files": files, "objects": objects, "titles": titles}


def read(file, heights):
    loaded = trimesh.load(file)
    if isinstance(loaded, trimesh.Trimesh):
        return {"meshes": [mesh_facts(None, loaded, heights)], "xml": None, "units": loaded.units}
    meshes = [mesh_facts(name, mesh, heights) for name, mesh in loaded.geometry.items()]
    return {"meshes": meshes, "xml": xml_facts(file), "units": loaded.units, "bounds": loaded.bounds.tolist()}


def common_areas(question):
    """For each coupon, moved by its pose, the area it shares with the block and with the opening in one cut."""
    block = trimesh.load(question["block"])
    answers = []
    for pair in question["pairs"]:
        coupon = trimesh.load(pair["coupon"])
        coupon.apply_transform(numpy.array(pair["pose"]).reshape(4, 4).T)
        plug, blade = (cut_at(mesh, pair["height"]) for mesh in (block, coupon))
        answers.append({"shared": float(plug.intersection(blade).area), "blade": float(blade.area)})
    return answers


question = json.load(sys.stdin)
if "pairs" in question:
    print(json.dumps(common_areas(question)))
else:
    print(json.dumps([read(file, question["heights"]) for file in question["files"]]))
