"""Solves a frame with numpy (LAPACK): reads words from the standard input, writes one line a case and node and the median time of a solve."""
import sys
import time

import numpy as np

nodes, members, fixed, cases = {}, [], [], {}
for line in sys.stdin:
    word = line.split()
    if word[0] == "node":
        nodes[word[1]] = (6 * len(nodes), np.array([float(w) for w in word[2:5]]))
    elif word[0] == "member":
        members.append((word[1], word[2], [float(w) for w in word[3:9]], np.array([float(w) for w in word[9:12]])))
    elif word[0] == "fix":
        fixed.append((word[1], int(word[2])))
    elif word[0] == "load":
        cases.setdefault(word[1], []).append((word[2], [float(w) for w in word[3:6]]))


def stiffness(length, e, g, area, iy, iz, j):
    k = np.zeros((12, 12))

    def both(a, b, value):
        k[a, b] = value
        k[b, a] = value

    for at, value in ((0, e * area / length), (3, g * j / length)):
        both(at, at, value)
        both(at + 6, at + 6, value)
        both(at, at + 6, -value)
    for shift, turn, sign, i in ((1, 5, 1, iz), (2, 4, -1, iy)):
        for a in (shift, shift + 6):
            both(a, a, 12 * e * i / length**3)
        both(shift, shift + 6, -12 * e * i / length**3)
        for a in (turn, turn + 6):
            both(a, a, 4 * e * i / length)
            both(shift, a, sign * 6 * e * i / length**2)
            both(shift + 6, a, -sign * 6 * e * i / length**2)
        both(turn, turn + 6, 2 * e * i / length)
    return k


def solve():
    size = 6 * len(nodes)
    whole = np.zeros((size, size))
    for start, end, section, up in members:
        first, p = nodes[start]
        second, q = nodes[end]
        length = np.linalg.norm(q - p)
        x = (q - p) / length
        z = np.cross(x, up)
        z /= np.linalg.norm(z)
        turned = np.kron(np.eye(4), np.array([x, np.cross(z, x), z]))
        places = np.r_[first : first + 6, second : second + 6]
        whole[np.ix_(places, places)] += turned.T @ stiffness(length, *section) @ turned
    held = {nodes[node][0] + dof for node, dof in fixed}
    free = [i for i in range(size) if i not in held]
    loads = np.zeros((size, len(cases)))
    for at, forces in enumerate(cases.values()):
        for node, force in forces:
            loads[nodes[node][0] : nodes[node][0] + 3, at] += force
    moved = np.zeros((size, len(cases)))
    moved[free] = np.linalg.solve(whole[np.ix_(free, free)], loads[free])
    return moved


times = []
for _ in range(60):
    start = time.perf_counter()
    moved = solve()
    times.append(time.perf_counter() - start)
for at, case in enumerate(cases):
    for node, (first, _) in nodes.items():
        print("moved", case, node, *("%.17g" % v for v in moved[first : first + 3, at]))
print("seconds", sorted(times[10:])[25])
print("version", np.__version__)
