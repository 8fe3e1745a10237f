"""Axisymmetric ring: how much bore beyond the expanded length stiffens it.

Bilinear quadrilaterals with incompatible modes; the bore is expanded evenly over the engaged length, the collar beyond it is
free, as are both end faces. Prints the ratio of the mean pressure to that of the ring without a collar, for the file
collar-help.ref.json. Needs NumPy and SciPy; run: python3 tests/reference/taper/collar.py
"""

import numpy as np
import scipy.sparse as sparse
from scipy.sparse.linalg import spsolve

E, NU, RADIUS, LENGTH, STEP, ACROSS = 70e3, 0.33, 13.09 / 2, 14.0, 0.25, 40
GAUSS = (-1 / np.sqrt(3), 1 / np.sqrt(3))
ELASTICITY = E / ((1 + NU) * (1 - 2 * NU)) * np.array(
    [[1 - NU, NU, NU, 0], [NU, 1 - NU, NU, 0], [NU, NU, 1 - NU, 0], [0, 0, 0, (1 - 2 * NU) / 2]]
)


def element(corners):
    stiffness = np.zeros((12, 12))
    for a in GAUSS:
        for b in GAUSS:
            shape = 0.25 * np.array([(1 - a) * (1 - b), (1 + a) * (1 - b), (1 + a) * (1 + b), (1 - a) * (1 + b)])
            slope = 0.25 * np.array([[-(1 - b), 1 - b, 1 + b, -(1 + b)], [-(1 - a), -(1 + a), 1 + a, 1 - a]])
            jacobian = slope @ corners
            slope = np.linalg.solve(jacobian, slope)
            modes = np.linalg.solve(jacobian, np.array([[-2 * a, 0], [0, -2 * b]]))
            radius = shape @ corners[:, 0]
            strain = np.zeros((4, 12))
            for k in range(6):
                gradient = slope[:, k] if k < 4 else modes[:, k - 4]
                strain[0, 2 * k] = gradient[0]
                strain[2, 2 * k + 1] = gradient[1]
                strain[3, 2 * k : 2 * k + 2] = gradient[1], gradient[0]
                if k < 4:
                    strain[1, 2 * k] = shape[k] / radius
            stiffness += strain.T @ ELASTICITY @ strain * radius * np.linalg.det(jacobian)
    inner = np.linalg.solve(stiffness[8:, 8:], stiffness[8:, :8])
    return stiffness[:8, :8] - stiffness[:8, 8:] @ inner


def mean_pressure(outer, collar):
    r = RADIUS + (outer - RADIUS) * np.linspace(0, 1, ACROSS + 1) ** 1.3
    z = np.arange(-round(collar / STEP), round(LENGTH / STEP) + 1) * STEP
    rows, along = len(r), len(z)
    index = lambda i, j: i * along + j
    entries = ([], [], [])
    for i in range(rows - 1):
        for j in range(along - 1):
            nodes = [index(i, j), index(i + 1, j), index(i + 1, j + 1), index(i, j + 1)]
            own = element(np.array([[r[i], z[j]], [r[i + 1], z[j]], [r[i + 1], z[j + 1]], [r[i], z[j + 1]]]))
            places = [place for node in nodes for place in (2 * node, 2 * node + 1)]
            for m, row in enumerate(places):
                for n, column in enumerate(places):
                    for store, value in zip(entries, (row, column, own[m, n])):
                        store.append(value)
    size = 2 * rows * along
    stiffness = sparse.csr_matrix((entries[2], entries[:2]), shape=(size, size))
    bore = [2 * index(0, j) for j in range(along) if z[j] > -1e-9]
    held = np.array(bore + [2 * index(rows - 1, along - 1) + 1])
    given = np.array([1.0] * len(bore) + [0.0])
    free = np.setdiff1d(np.arange(size), held)
    shift = np.zeros(size)
    shift[held] = given
    shift[free] = spsolve(stiffness[free][:, free], -stiffness[free][:, held] @ given)
    return (stiffness @ shift)[bore].sum() / (RADIUS * LENGTH)


for diameter in (30, 34, 44):
    plain = mean_pressure(diameter / 2, 0)
    square = (diameter / 2 / RADIUS) ** 2
    exact = E / RADIUS / ((square + 1) / (square - 1) + NU)
    print(f"boss {diameter}: without collar {plain / exact:.5f} of the closed form")
    for collar in (0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10):
        print(f"  collar {collar}: {mean_pressure(diameter / 2, collar) / plain:.4f}")
