"""Reduces relations with networkx and prints what it finds as JSON: one object for each relation on standard input.

networkx (A. Hagberg, D. Schult, P. Swart and contributors, BSD-3-Clause) shares nothing with the code under test.
The input is a list of {"size": n, "arrows": [[from, to], ...]}.
"""

import json
import sys

import networkx as nx


def reduced(relation):
    graph = nx.DiGraph()
    graph.add_nodes_from(range(relation["size"]))
    graph.add_edges_from(map(tuple, relation["arrows"]))
    if not nx.is_directed_acyclic_graph(graph):
        return {"circle": True}
    heights = [0] * relation["size"]
    for height, generation in enumerate(nx.topological_generations(graph)):
        for node in generation:
            heights[node] = height
    return {
        "circle": False,
        "reduction": sorted(map(list, nx.transitive_reduction(graph).edges)),
        "closure": sorted(map(list, nx.transitive_closure(graph).edges)),
        "heights": heights,
    }


json.dump([reduced(relation) for relation in json.load(sys.stdin)], sys.stdout)
