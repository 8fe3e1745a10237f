"""Three-dimensional contact model of an arm pressed on a square taper, elastic or yielding: writes, runs and reads CalculiX.

One eighth of the joint, cut by the plane through the middle of a flat and by the plane through a corner. Structured
hexahedra C3D8I, geometrically non-linear, surface-to-surface penalty contact between the flats with Coulomb friction. The
travel is imposed on the outer face of the boss within 12 mm of the axis (a rigid washer without friction); the spindle is
held along the axis on its inner plane, 6 mm beyond the mouth. The arm may yield (von Mises, linear hardening); the spindle
is elastic. A last step takes the contact away and lets the bore spring back: what is left is the permanent opening.

Needs NumPy and CalculiX; see press.md for versions, mesh checks and how the reference rows were made.
Run: python3 tests/reference/taper/press.py WORKING_FOLDER CASES.json RESULTS.json
"""

import json
import os
import re
import subprocess
import sys
import time

import numpy as np

PENALTY, STICK = 2e6, 2e5
BASE = {
    "across": 12.6,  # mm across the flats at the spindle's end
    "corner": 8.25,  # radius of the turned corners, mm
    "angle": 2.0,  # face angle of the spindle, deg
    "bore_angle": None,  # face angle of the bore where it differs, deg
    "length": 14.0,  # engaged length at hand fit, mm
    "collar": 1.5,  # bore beyond the spindle's end, mm
    "boss": 34.0,  # boss diameter, mm
    "beyond": 6.0,  # spindle beyond the mouth, mm
    "fillet": 1.0,  # radius of the bore's corners, mm
    "friction": 0.1,
    "yield": None,  # yield strength, MPa; none: elastic
    "hardening": 700.0,  # MPa
    "arm": (70e3, 0.33),
    "spindle": (205e3, 0.29),
    "travel": 0.9,  # mm at the end of the press
    "steps": 8,
    "mesh": 1.0,
}
WASHER = 12.0


def graded(count, ratio):
    """Places from 0 to 1, the spacing at both ends `ratio` times that in the middle."""
    s = np.linspace(-1, 1, count + 1)
    weight = 1 + (ratio - 1) * ((s[1:] + s[:-1]) / 2) ** 2
    return np.concatenate([[0], np.cumsum(weight) / weight.sum()])


class Mesh:
    def __init__(self):
        self.nodes, self.elements = [], []

    def add(self, points):
        first = len(self.nodes)
        self.nodes.extend(map(tuple, points))
        return np.arange(first, len(self.nodes))


def solid(case):
    """Nodes and elements of one eighth: the mesh, the nodes by name, the elements of each part, their faces in contact."""
    m = case["mesh"]
    tangent = np.tan(np.radians(case["angle"]))
    bore_tangent = np.tan(np.radians(case["bore_angle"] or case["angle"]))
    length, collar, fillet, corner = case["length"], case["collar"], case["fillet"], case["corner"]
    half = lambda z: case["across"] / 2 + z * tangent
    # First contact: at the mouth when the spindle is the steeper, at the spindle's end when the bore is.
    touch = length if bore_tangent < tangent else 0.0
    bore_half = lambda z: half(touch) + (z - touch) * bore_tangent
    flat_count, fillet_count, radial_count = round(12 * m), max(2, round(3 * m)), round(9 * m)
    along = graded(round(0.72 * length * m), 0.4) * length
    mesh = Mesh()

    # Arm: rows from the bore (flat, then fillet) out to the boss.
    collar_planes = -np.linspace(collar, 0, max(1, round(2 * m)) + 1)[:-1] if collar > 0 else np.array([])
    planes = np.concatenate([collar_planes, along])
    share = np.linspace(0, 1, flat_count + 1) ** 0.85
    arm = np.zeros((len(planes), radial_count + 1, flat_count + fillet_count + 1), int)
    for k, z in enumerate(planes):
        h = bore_half(z)
        turn = np.radians(np.linspace(0, 45, fillet_count + 1))[1:]
        x = np.concatenate([np.full(flat_count + 1, h), h - fillet + fillet * np.cos(turn)])
        y = np.concatenate([share * (h - fillet), h - fillet + fillet * np.sin(turn)])
        inner = np.arctan2(y, x)
        outer = 0.6 * inner + 0.4 * np.linspace(0, np.pi / 4, len(x))
        for r in range(radial_count + 1):
            t = (r / radial_count) ** 1.7
            xo, yo = case["boss"] / 2 * np.cos(outer), case["boss"] / 2 * np.sin(outer)
            arm[k, r] = mesh.add(np.stack([x + t * (xo - x), y + t * (yo - y), np.full(len(x), z)], 1))
    arm_elements, arm_faces = [], []
    for k in range(len(planes) - 1):
        for r in range(radial_count):
            for c in range(flat_count + fillet_count):
                corners = [(k, r, c), (k, r + 1, c), (k, r + 1, c + 1), (k, r, c + 1)]
                low = [arm[i] for i in corners]
                high = [arm[i + 1, j, l] for i, j, l in corners]
                mesh.elements.append(low + high)
                arm_elements.append(len(mesh.elements))
                # Face S6 joins the nodes 4, 1, 5, 8: the side towards the bore.
                if r == 0 and c < flat_count:
                    arm_faces.append(len(mesh.elements))

    # Spindle: a square core at the axis and rows out to the surface (flat, then turned corner).
    n = max(4, round(5 * m))
    ring_count = max(3, round(4 * m))
    flat_part = 2 * n - max(2, round(2 * m))
    planes_s = np.concatenate([along, length + case["beyond"] * np.linspace(0, 1, round(4 * m) + 1)[1:]])
    core = np.zeros((len(planes_s), n + 1, n + 1), int)
    ring = np.zeros((len(planes_s), ring_count + 1, 2 * n + 1), int)
    for k, z in enumerate(planes_s):
        h = half(z)
        edge = np.sqrt(corner**2 - h**2)
        a, c, b = np.array([0.45 * h, 0]), np.array([0.45 * h, 0.22 * h]), np.array([0.36 * h, 0.36 * h])
        points = [
            (1 - u) * (1 - v) * np.zeros(2) + u * (1 - v) * a + u * v * c + (1 - u) * v * b
            for u in np.linspace(0, 1, n + 1)
            for v in np.linspace(0, 1, n + 1)
        ]
        core[k] = mesh.add([(x, y, z) for x, y in points]).reshape(n + 1, n + 1)
        ring[k, 0, : n + 1] = core[k, n, :]
        ring[k, 0, n:] = core[k, ::-1, n]
        y = np.linspace(0, 1, flat_part + 1) ** 0.9 * edge
        turn = np.linspace(np.arctan2(edge, h), np.pi / 4, 2 * n - flat_part + 1)[1:]
        surface = np.concatenate(
            [np.stack([np.full(flat_part + 1, h), y], 1), corner * np.stack([np.cos(turn), np.sin(turn)], 1)]
        )
        inner = np.array([mesh.nodes[i][:2] for i in ring[k, 0]])
        for r in range(1, ring_count + 1):
            t = 1 - (1 - r / ring_count) ** 1.2
            flatwise = inner + t * (surface - inner)
            ring[k, r] = mesh.add([(x, yy, z) for x, yy in flatwise])
    spindle_elements, spindle_faces = [], []
    for k in range(len(planes_s) - 1):
        for i in range(n):
            for j in range(n):
                square = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)]
                mesh.elements.append([core[k][s] for s in square] + [core[k + 1][s] for s in square])
                spindle_elements.append(len(mesh.elements))
        for r in range(ring_count):
            for c in range(2 * n):
                square = [(r, c), (r + 1, c), (r + 1, c + 1), (r, c + 1)]
                mesh.elements.append([ring[k][s] for s in square] + [ring[k + 1][s] for s in square])
                spindle_elements.append(len(mesh.elements))
                # Face S4 joins the nodes 2, 3, 7, 6: the side away from the axis.
                if r == ring_count - 1 and c < flat_part:
                    spindle_faces.append(len(mesh.elements))

    middle = int(np.argmin(abs(planes - length / 2)))
    nodes = {
        "outboard": arm[0].ravel(),
        "outside": arm[:, -1],
        "held": np.concatenate([ring[-1].ravel(), core[-1].ravel()]),
        "middle flat": arm[middle, 0, : flat_count + 1],
        "bore": arm[:, 0, : flat_count + 1],
        "bore flat": arm[len(collar_planes) :, 0, : flat_count + 1],
    }
    return mesh, nodes, (arm_elements, arm_faces), (spindle_elements, spindle_faces)


def deck(case):
    """The input file of a case, as text, and the number of its nodes."""
    mesh, nodes, (arm_elements, arm_faces), (spindle_elements, spindle_faces) = solid(case)
    xyz = np.array(mesh.nodes)
    used = np.unique(np.array(mesh.elements))
    on_axis = [i for i in used if np.hypot(*xyz[i, :2]) < 1e-9]
    on_middle = [i for i in used if abs(xyz[i, 1]) < 1e-9 and i not in on_axis]
    on_corner = [i for i in used if abs(xyz[i, 0] - xyz[i, 1]) < 1e-7 and i not in on_axis]
    washer = [i for i in nodes["outboard"] if np.hypot(*xyz[i, :2]) < WASHER]
    lines = ["*NODE, NSET=ALL"]
    lines += [f"{i + 1}, {xyz[i, 0]:.9g}, {xyz[i, 1]:.9g}, {xyz[i, 2]:.9g}" for i in used]
    for name, members in (("ARM", arm_elements), ("SPINDLE", spindle_elements)):
        lines.append(f"*ELEMENT, TYPE=C3D8I, ELSET={name}")
        lines += [f"{e}, " + ", ".join(str(i + 1) for i in mesh.elements[e - 1]) for e in members]
    for name, members in (
        ("AXIS", on_axis),
        ("MIDDLE", on_middle),
        ("WASHER", washer),
        ("HELD", nodes["held"]),
        ("MIDFLAT", nodes["middle flat"]),
        ("BOREFLAT", nodes["bore flat"].ravel()),
    ):
        lines.append(f"*NSET, NSET={name}")
        lines += [f"{i + 1}," for i in sorted(set(members))]
    for i in on_corner:
        lines += ["*EQUATION", "2", f"{i + 1}, 1, 1.0, {i + 1}, 2, -1.0"]
    lines += ["*SURFACE, NAME=BORE, TYPE=ELEMENT"] + [f"{e}, S6" for e in arm_faces]
    lines += ["*SURFACE, NAME=FLAT, TYPE=ELEMENT"] + [f"{e}, S4" for e in spindle_faces]
    modulus, poisson = case["arm"]
    lines += ["*MATERIAL, NAME=ALLOY", "*ELASTIC", f"{modulus}, {poisson}"]
    if case["yield"]:
        lines += ["*PLASTIC", f"{case['yield']}, 0.0", f"{case['yield'] + case['hardening']}, 1.0"]
    lines += ["*MATERIAL, NAME=STEEL", "*ELASTIC", "{}, {}".format(*case["spindle"])]
    lines += ["*SOLID SECTION, ELSET=ARM, MATERIAL=ALLOY", "*SOLID SECTION, ELSET=SPINDLE, MATERIAL=STEEL"]
    lines += ["*SURFACE INTERACTION, NAME=GREASE", "*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR", f"{PENALTY}"]
    if case["friction"] > 0:
        lines += ["*FRICTION", f"{case['friction']}, {STICK}"]
    lines += ["*CONTACT PAIR, INTERACTION=GREASE, TYPE=SURFACE TO SURFACE", "BORE, FLAT"]
    lines += ["*BOUNDARY", "AXIS, 1, 2", "MIDDLE, 2, 2", "HELD, 3, 3"]
    largest = 1 / case["steps"]
    lines += ["*STEP, NLGEOM, INC=400", "*STATIC", f"{min(0.05 / case['travel'], largest)}, 1.0, 1e-5, {largest}"]
    lines += ["*BOUNDARY", f"WASHER, 3, 3, {case['travel']}"]
    lines += ["*NODE PRINT, NSET=WASHER, TOTALS=ONLY", "RF"]
    lines += ["*CONTACT PRINT, SLAVE=BORE, MASTER=FLAT", "CF", "*END STEP"]
    if case["yield"]:
        lines += ["*STEP, NLGEOM, INC=400", "*STATIC", "1.0, 1.0, 1e-5, 1.0"]
        lines += ["*MODEL CHANGE, TYPE=CONTACT PAIR, REMOVE", "BORE, FLAT"]
        lines += ["*NODE PRINT, NSET=MIDFLAT", "U", "*NODE PRINT, NSET=BOREFLAT", "U", "*END STEP"]
    return "\n".join(lines) + "\n", len(used)


NUMBER = r"[-+]?\d+\.\d+E[-+]\d+"


def blocks(text):
    """Parts of the printed output: heading, time, numbers by line."""
    parts = re.split(r"\n\s*\n", text)
    for head, body in zip(parts, parts[1:]):
        yield head.strip(), [[float(v) for v in re.findall(NUMBER, line)] for line in body.splitlines()]


def run(case, folder):
    case = {**BASE, **case}
    text, count = deck(case)
    name = os.path.join(folder, case["name"])
    with open(name + ".inp", "w") as handle:
        handle.write(text)
    begun = time.time()
    with open(name + ".log", "w") as log:
        subprocess.run(
            ["nice", "-n", "10", "ccx", "-i", os.path.basename(name)],
            cwd=folder,
            stdout=log,
            stderr=log,
            env={**os.environ, "OMP_NUM_THREADS": "1"},
            check=False,
        )
    return {**read(case, name + ".dat"), "nodes": count, "seconds": round(time.time() - begun)}


def read(case, path):
    forces, normals, rest = [], [], {}
    with open(path) as handle:
        text = handle.read()
    for head, body in blocks("\n" + text):
        if head.startswith("total force") and "WASHER" in head:
            forces.append((float(head.split()[-1]), 8 * body[0][2]))
        elif head.startswith("area,") and len(body[0]) > 1:  # no contact is left in the last step
            normals.append(-2 * body[0][1])
        elif head.startswith("displacements"):
            rest["MIDFLAT" if "MIDFLAT" in head else "BOREFLAT"] = [line for line in body if line]
    rows = [
        {"travelMm": at * case["travel"], "axialForceN": force, "normalForceN": normal}
        for (at, force), normal in zip(forces, normals)
    ]
    result = {"name": case["name"], "case": {k: v for k, v in case.items() if k != "name"}, "rows": rows}
    for name, lines in rest.items():
        result["open" + name] = 2 * float(np.mean([line[-3] for line in lines]))
    return result


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
        last = entry["rows"][-1] if entry["rows"] else {}
        print(wanted["name"], entry["nodes"], entry["seconds"], "s", last, flush=True)
