"""Rigid square on even springs over its four flats: at which load an edge of a flat carries nothing.

Independent of the closed forms: the pressure of many small patches is summed in space, with the slant of the flats, for all
six motions of the square at once; friction and ends are left out, as in the closed forms. Prints the rows of
load-edges.ref.json (torque and bending moment alone) and load-edges-shear.ref.json (with the pedal force itself, which also
pushes the square across). Needs NumPy; run: python3 tests/reference/taper/loads.py
"""

import json

import numpy as np

PATCHES = 60


def unloading(case, shear):
    """The factor of the load at which the first point of a flat is left without pressure."""
    a = np.radians(case["faceAngleDeg"])
    length = case["engagedLengthMm"]
    half = 12.6 / 2 + length / 2 * np.tan(a)
    width = 2 * np.sqrt(8.25**2 - half**2)
    normal_force = case["axialForceN"] / (4 * (np.sin(a) + case["friction"] * np.cos(a)))
    pressure = normal_force / (width * length)

    def flat(turn, across, along):
        # Normals of the spindle's flats point outwards and, as the square grows with z, back towards its end.
        c, s = np.cos(turn), np.sin(turn)
        place = np.array([half + along * np.tan(a), across, along])
        normal = np.array([np.cos(a), 0, -np.sin(a)])
        spin = np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])
        place, normal = spin @ place, spin @ normal
        return np.concatenate([normal, np.cross(place, normal)])

    middles = (np.arange(PATCHES) + 0.5) / PATCHES - 0.5
    turns = np.arange(4) * np.pi / 2
    stiffness = np.zeros((6, 6))
    for turn in turns:
        for across in middles * width:
            for along in middles * length:
                row = flat(turn, across, along)
                stiffness += np.outer(row, row) * width * length / PATCHES**2
    # The arm lies at crankAngleDeg to the horizontal, the force is vertical; the square stands flat or corner to the arm.
    to_flat = np.radians(90 - case["crankAngleDeg"]) - (np.pi / 4 if case["squareOrientation"] == "corner-in-line" else 0)
    across = np.array([np.cos(to_flat), np.sin(to_flat), 0])
    force = case["pedalForceN"]
    bending = force * (case["overhangMm"] + case["faceToSeatMm"])
    torque = force * case["crankLengthMm"] * abs(np.cos(np.radians(case["crankAngleDeg"])))

    def margin(with_torque, with_bending):
        load = np.zeros(6)
        if with_bending:
            load[3:] += np.cross([0, 0, 1], across) * bending
            if shear:
                load[:3] += across * force
        if with_torque:
            load[5] += torque
        motion = np.linalg.lstsq(stiffness, load, rcond=1e-9)[0]
        change = [
            flat(turn, x * width / 2, z * length / 2) @ motion for turn in turns for x in (-1, 1) for z in (-1, 1)
        ]
        worst = max(map(abs, change))
        return pressure / worst if worst > 1e-12 * pressure else None

    alone = [m for m in (margin(True, False), margin(False, True)) if m is not None]
    return {"left": margin(True, True), "right": min(alone)}


CASES = [
    {"case": "torque alone", "overhangMm": 0, "faceToSeatMm": 0, "crankAngleDeg": 0, "squareOrientation": "flat-in-line"},
    {"case": "bending across a flat", "crankAngleDeg": 90, "squareOrientation": "flat-in-line"},
    {"case": "bending along the diagonal", "crankAngleDeg": 90, "squareOrientation": "corner-in-line"},
    {"case": "riding, flat in line", "crankAngleDeg": 0, "squareOrientation": "flat-in-line"},
    {"case": "riding, corner in line", "crankAngleDeg": 0, "squareOrientation": "corner-in-line"},
    {"case": "test angle, flat in line", "pedalForceN": 1300, "crankAngleDeg": 45, "squareOrientation": "flat-in-line"},
    {"case": "test angle, corner in line", "pedalForceN": 1300, "crankAngleDeg": 45, "squareOrientation": "corner-in-line"},
    {"case": "short, steep and slick", "engagedLengthMm": 10, "faceAngleDeg": 3, "friction": 0.05, "crankAngleDeg": 20, "squareOrientation": "corner-in-line"},
    {"case": "long, arm raised", "engagedLengthMm": 18, "crankAngleDeg": -30, "squareOrientation": "flat-in-line"},
]
BASE = {"engagedLengthMm": 14, "faceAngleDeg": 2, "axialForceN": 12000, "friction": 0.1, "pedalForceN": 700,
        "crankLengthMm": 170, "overhangMm": 65, "faceToSeatMm": 15}

if __name__ == "__main__":
    for shear in (False, True):
        rows = []
        for given in CASES:
            case = {**BASE, **given}
            found = unloading(case, shear)
            rows.append({"case": case.pop("case"), **case, **{k: round(v, 5) for k, v in found.items()}})
        print(json.dumps(rows, indent=2))
