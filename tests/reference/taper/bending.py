"""Force off the axis on a pressed square taper: the bending moment at which the edge at the mouth unloads, by CalculiX.

The mesh of press.py, mirrored to a half of the joint, cut by the plane of axis and force. The arm is pressed on by imposed
travel; then the displacement of the washer gives way to its own reaction forces, so that the bolt force is held from there
on; then a force across the axis and the moment of its lever are put on the outside of the boss and grow in even steps. The
spindle is held at its inner plane. The pressure is the stress in the elements along the bore, scaled to the contact force.

Needs NumPy and CalculiX; see press.md. Run: python3 tests/reference/taper/bending.py WORKING_FOLDER CASES.json RESULTS.json
"""

import json
import os
import re
import subprocess
import sys
import time

import numpy as np
import press

BASE = {
    **press.BASE,
    "beyond": 12.0,  # mm of spindle beyond the mouth
    "orientation": "flat",  # the force points to a flat or to a corner
    "lever": 80.0,  # from the plane of the force to the middle of the seat at hand fit, mm
    "force": 1650.0,  # N at the end of the last step
    "loadSteps": 5,
}


def run_solver(folder, name, text):
    with open(os.path.join(folder, name + ".inp"), "w") as handle:
        handle.write(text)
    with open(os.path.join(folder, name + ".log"), "w") as log:
        subprocess.run(
            ["nice", "-n", "10", "ccx", "-i", name],
            cwd=folder,
            stdout=log,
            stderr=log,
            env={**os.environ, "OMP_NUM_THREADS": "1"},
            check=False,
        )


def pressed(case, folder):
    """Reaction forces of the washer's nodes at the end of the press, by node of one eighth."""
    text, _ = press.deck({**case, "yield": None})
    text = text.replace("*NODE PRINT, NSET=WASHER, TOTALS=ONLY\nRF", "*NODE PRINT, NSET=WASHER\nRF")
    name = case["name"] + "_press"
    run_solver(folder, name, text)
    with open(os.path.join(folder, name + ".dat")) as handle:
        parts = re.split(r"\n\s*\n", "\n" + handle.read())
    last = [body for head, body in zip(parts, parts[1:]) if head.strip().startswith("forces")][-1]
    rows = [line.split() for line in last.splitlines() if line.strip()]
    return {int(row[0]) - 1: float(row[3]) for row in rows}


def joint(case):
    """Mirrors one eighth: nodes, elements, faces by part, flat and row along the axis, and where each node went."""
    mesh, names, *parts = press.solid(case)
    xyz = np.array(mesh.nodes)
    first = 1 if case["orientation"] == "corner" else 0
    sectors = range(first, first + 4)
    nodes, place, elements = [], {}, []
    faces = {}
    where = {k: {} for k in sectors}
    for k in sectors:
        turned = xyz.copy()
        if k % 2:
            turned[:, [0, 1]] = turned[:, [1, 0]]
        angle = np.pi / 2 * (k // 2) - (np.pi / 4 if case["orientation"] == "corner" else 0)
        c, s = np.cos(angle), np.sin(angle)
        turned[:, :2] = turned[:, :2] @ np.array([[c, s], [-s, c]])
        for part, (members, contact) in zip(("ARM", "SPINDLE"), parts):
            a_row = len(names["middle flat"]) - 1 if part == "ARM" else len(contact)
            row_of = {e: place_in // a_row for place_in, e in enumerate(contact)}
            for e in members:
                ids = []
                for i in mesh.elements[e - 1]:
                    key = (part, *np.round(turned[i] + 0.0, 6) + 0.0)
                    if key not in place:
                        place[key] = len(nodes)
                        nodes.append(turned[i])
                    where[k][i] = place[key]
                    ids.append(place[key])
                # A mirrored element lists its nodes the other way round; faces 6 and 4 become 3 and 5.
                if k % 2:
                    ids = [ids[j] for j in (0, 3, 2, 1, 4, 7, 6, 5)]
                elements.append((part, ids))
                if e in row_of:
                    face = {("ARM", 0): 6, ("ARM", 1): 3, ("SPINDLE", 0): 4, ("SPINDLE", 1): 5}[part, k % 2]
                    faces.setdefault((part, (k + 1) // 2 % 4, row_of[e]), []).append((len(elements), face))
    return np.array(nodes), elements, faces, where, names


def deck(case, reaction):
    """The input file of a case, as text, the number of its nodes, and what the results are read with."""
    nodes, elements, faces, where, names = joint(case)
    share = {}  # force on each node of the washer: half of what two eighths give it, where they meet
    for k in where:
        for i, force in reaction.items():
            share[where[k][i]] = share.get(where[k][i], 0) + force
    # Weight of the nodes on the outside of the boss: a quarter of each quadrangle around them.
    weight = {}
    outside = names["outside"]
    for k in where:
        for a in range(outside.shape[0] - 1):
            for b in range(outside.shape[1] - 1):
                quad = [where[k][outside[i, j]] for i, j in ((a, b), (a + 1, b), (a + 1, b + 1), (a, b + 1))]
                p = nodes[quad]
                area = np.linalg.norm(np.cross(p[2] - p[0], p[3] - p[1])) / 2
                for i in quad:
                    weight[i] = weight.get(i, 0) + area / 4
    ids = np.array(sorted(weight))
    w = np.array([weight[i] for i in ids])
    x, _, z = nodes[ids].T
    force = case["force"] / 2
    middle = case["length"] / 2
    fx = force * w / w.sum()
    # Moment about the middle of the seat, from a force across at z = middle - lever: M_y = (z_F - middle) F = -lever F.
    # What the forces across make by themselves is taken off; the rest is axial forces that grow with x.
    wanted = -case["lever"] * force
    own = np.sum((z - middle) * fx)
    fz = -(wanted - own) * w * x / np.sum(w * x * x)
    held = {where[k][i] for k in where for i in names["held"]}
    on_plane = [i for i in range(len(nodes)) if abs(nodes[i, 1]) < 1e-7]
    lines = ["*NODE, NSET=ALL"]
    lines += [f"{i + 1}, {p[0]:.9g}, {p[1]:.9g}, {p[2]:.9g}" for i, p in enumerate(nodes)]
    for name in ("ARM", "SPINDLE"):
        lines.append(f"*ELEMENT, TYPE=C3D8I, ELSET={name}")
        lines += [f"{e + 1}, " + ", ".join(str(i + 1) for i in ids_) for e, (p, ids_) in enumerate(elements) if p == name]
    for name, members in (("WASHER", share), ("HELD", held), ("PLANE", on_plane)):
        lines.append(f"*NSET, NSET={name}")
        lines += [f"{i + 1}," for i in sorted(members)]
    flats = sorted({f for _, f, _ in faces})
    for name, surface in (("ARM", "BORE"), ("SPINDLE", "FLAT")):
        for f in flats:
            lines.append(f"*SURFACE, NAME={surface}{f}, TYPE=ELEMENT")
            lines += [f"{e}, S{s}" for key in sorted(faces) if key[:2] == (name, f) for e, s in faces[key]]
    pairs = [(f"BORE{f}", f"FLAT{f}") for f in flats]
    for name, (modulus, poisson) in (("ALLOY", case["arm"]), ("STEEL", case["spindle"])):
        lines += [f"*MATERIAL, NAME={name}", "*ELASTIC", f"{modulus}, {poisson}"]
    lines += ["*SOLID SECTION, ELSET=ARM, MATERIAL=ALLOY", "*SOLID SECTION, ELSET=SPINDLE, MATERIAL=STEEL"]
    lines += ["*SURFACE INTERACTION, NAME=GREASE", "*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR", f"{press.PENALTY}"]
    if case["friction"] > 0:
        lines += ["*FRICTION", f"{case['friction']}, {press.STICK}"]
    for bore, flat in pairs:
        lines += ["*CONTACT PAIR, INTERACTION=GREASE, TYPE=SURFACE TO SURFACE", f"{bore}, {flat}"]
    fixed = ["HELD, 1, 3", "PLANE, 2, 2"]
    printed = []
    for bore, flat in pairs:
        printed += [f"*CONTACT PRINT, SLAVE={bore}, MASTER={flat}", "CF"]
    # Stress of the elements along the bore: a tenth of a millimetre under the surface it is the pressure.
    lines += ["*ELSET, ELSET=LAYER"] + [f"{e}," for key in sorted(faces) if key[0] == "ARM" for e, _ in faces[key]]
    printed += ["*EL PRINT, ELSET=LAYER", "S"]
    largest = 1 / case["steps"]
    lines += ["*STEP, NLGEOM, INC=400", "*STATIC", f"{largest}, 1.0, 1e-5, {largest}"]
    lines += ["*BOUNDARY"] + fixed + [f"WASHER, 3, 3, {case['travel']}"]
    lines += ["*NODE PRINT, NSET=WASHER, TOTALS=ONLY", "RF"] + printed + ["*END STEP"]
    lines += ["*STEP, NLGEOM, INC=400", "*STATIC", "1.0, 1.0, 1e-5, 1.0"]
    lines += ["*BOUNDARY, OP=NEW"] + fixed
    lines += ["*CLOAD"] + [f"{i + 1}, 3, {v:.9g}" for i, v in sorted(share.items())]
    lines += printed + ["*END STEP"]
    lines += ["*STEP, NLGEOM, INC=400", "*STATIC", f"{1 / case['loadSteps']}, 1.0, 1e-5, {1 / case['loadSteps']}"]
    lines += ["*CLOAD"]
    for i, a, c in zip(ids, fx, fz):
        lines += [f"{i + 1}, 1, {a:.9g}", f"{i + 1}, 3, {c:.9g}"]
    lines += printed + ["*END STEP"]
    planes = np.unique(np.round(nodes[[where[k][i] for k in where for i in names["bore"][:, 0]], 2], 6))
    return "\n".join(lines) + "\n", len(nodes), {"axialForceN": 2 * sum(share.values()), "planesMm": planes.tolist()}


def read(case, path, faces, nodes, elements):
    """By time: of each flat the normal force, and by rows along the axis the force that the stress under the bore gives."""
    angle = {f: np.pi / 2 * f - (np.pi / 4 if case["orientation"] == "corner" else 0) for f in range(4)}
    where = {}
    for (part, flat, row), members in faces.items():
        for e, face in members if part == "ARM" else []:
            p = nodes[[elements[e - 1][1][i] for i in {6: (3, 0, 4, 7), 3: (0, 1, 5, 4)}[face]]]
            where[e] = (flat, row, np.linalg.norm(np.cross(p[2] - p[0], p[3] - p[1])) / 2)
    count = 1 + max(row for _, row, _ in where.values())
    found = {}
    with open(path) as handle:
        text = handle.read()
    for head, body in press.blocks("\n" + text):
        if head.startswith("statistics for slave set BORE"):
            flat, at = int(head.split("BORE")[1][0]), float(head.split()[-1])
            entry = found.setdefault(at, {}).setdefault(flat, {"rowsN": [0.0] * count})
        elif head.startswith("area,"):
            entry["areaMm2"], entry["normalForceN"] = body[0][0], -body[0][1]
    for block in re.findall(r"stresses \(elem, integ.pnt.,sxx,syy,szz,sxy,sxz,syz\) for set LAYER and time\s+(\S+)\s*\n\s*\n((?:\s+\d+\s+\d+\s.*\n)+)", text):
        at = float(block[0])
        for line in block[1].splitlines():
            v = line.split()
            flat, row, area = where[int(v[0])]
            c, s = np.cos(angle[flat]), np.sin(angle[flat])
            sxx, syy, _, sxy = map(float, v[2:6])
            found[at][flat]["rowsN"][row] -= (sxx * c * c + syy * s * s + 2 * sxy * c * s) * area / 8
    return [{"time": at, "flats": flats} for at, flats in sorted(found.items())]


def run(case, folder):
    case = {**BASE, **case}
    reaction = pressed(case, folder)
    text, count, more = deck(case, reaction)
    begun = time.time()
    run_solver(folder, case["name"], text)
    seconds = round(time.time() - begun)
    nodes, elements, faces, *_ = joint(case)
    rows = read(case, os.path.join(folder, case["name"] + ".dat"), faces, nodes, elements)
    entry = {"name": case["name"], "case": case, "nodes": count, "seconds": seconds, **more, "rows": rows}
    return {**entry, "unloadsAtNm": unloading(entry)}


def unloading(entry):
    """Bending moment at which the mean pressure at the edge at the mouth, drawn on from the last two rows, reaches 0."""
    case, planes = entry["case"], np.array(entry["planesMm"])
    middles, heights = (planes[1:] + planes[:-1]) / 2, np.diff(planes)
    found = []
    for flat in entry["rows"][-1]["flats"]:
        before = None
        for row in entry["rows"]:
            if row["time"] < 2:
                continue
            moment = case["force"] * case["lever"] / 1000 * (row["time"] - 2)
            of_flat = row["flats"][flat]
            line = np.array(of_flat["rowsN"]) / sum(of_flat["rowsN"]) * of_flat["normalForceN"] / heights
            edge = line[-1] + (line[-1] - line[-2]) / (middles[-1] - middles[-2]) * (planes[-1] - middles[-1])
            if before and before[1] > 0 >= edge:
                found.append(before[0] + (moment - before[0]) * before[1] / (before[1] - edge))
            before = (moment, edge)
    return min(found, default=None)


if __name__ == "__main__":
    folder, cases, results = sys.argv[1:4]
    found = json.load(open(results)) if os.path.exists(results) else []
    for wanted in json.load(open(cases)):
        if any(entry["name"] == wanted["name"] for entry in found):
            continue
        entry = run(wanted, folder)
        found.append(entry)
        with open(results, "w") as handle:
            json.dump(found, handle, indent=1)
        print(*(entry[key] for key in ("name", "nodes", "seconds", "axialForceN", "unloadsAtNm")), flush=True)
