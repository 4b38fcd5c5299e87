"""Thirty random leaves of every kind of frame: drop, weight, long points and slack rods by a second program. Writes leaf-kinds.csv for LeafKindsCheck.

Run by hand (numpy 1.24 and Python 3.11) from this folder:

    python3 leaf_kinds.py > ../src/test/resources/plumbleaf/reference/sag/leaf-kinds.csv

Written from the conventions alone: a plane frame on centrelines, hung on two hinges that give sideways and a post that does not give. Long points come from the
corners of each piece's outline, not from its saw angles. Rods are bars with a length of their own; which of them pull is found by trying every set and
keeping the one in which every bar left pulls and every bar taken out would hang loose.
"""
import itertools
import math
import random

import numpy as np

E = 29e6
# id: depth, width, lb/ft, area, Ix, Iy (catalogue rows; Ix bends in the depth)
TUBES = {
    "TUBE-1.5x1.5x0.12": (1.5, 1.5, 2.13, 0.6253, 0.1923, 0.1923),
    "TUBE-2x2x0.083": (2.0, 2.0, 2.11, 0.6187, 0.3734, 0.3734),
    "TUBE-3x2x0.12": None,
    "TUBE-2x1x0.083": None,
    "LIGHT-1.900x0.083": None,
    "F1083-REG-1.25": (1.66, 1.66, 2.27, 0.6685, 0.1947, 0.1947),
}
HINGE_K = 60000.0
PIN = 0.375
STEEL = 490 / 1728.0


def catalogue():
    path = "../../jobfile/src/main/resources/plumbleaf/jobfile/catalogue/sections.csv"
    import csv
    rows = csv.DictReader(line for line in open(path) if not line.startswith("#"))
    for row in rows:
        if row["id"] in TUBES:
            TUBES[row["id"]] = tuple(float(row[k]) for k in
                                     ("depth_in", "width_in", "weight_lb_per_ft", "area_in2", "ix_in4", "iy_in4"))


class Leaf:
    def __init__(self, p):
        self.p = p
        d, w, lb, area, ix, iy = TUBES[p["tube"]]
        if p["flat"]:
            d, w, ix, iy = w, d, iy, ix
        self.d, self.lb, self.area, self.i = d, lb / 12, area, ix
        self.r0, self.r1 = PIN, PIN + p["width"]
        self.a, self.b = self.r0 + d / 2, self.r1 - d / 2  # stile axes
        cb, ct = math.hypot(1, p["bottom"]), math.hypot(1, p["top"])
        self.low = lambda r: p["gap"] + p["bottom"] * r
        self.high = lambda r: p["gap"] + p["height"] + p["top"] * r
        axis_low = lambda r: self.low(r) + d / 2 * cb
        axis_high = lambda r: self.high(r) - d / 2 * ct
        self.rails = [axis_low]
        shares = [(k + 1) / (p["mid"] + 1) for k in range(p["mid"])]
        if p["midAt"]:
            shares = [(self.low(self.r0) + z - axis_low(self.r0)) / (axis_high(self.r0) - axis_low(self.r0)) for z in p["midAt"]]
        for s in shares:
            self.rails.append(lambda r, s=s: axis_low(r) + s * (axis_high(r) - axis_low(r)))
        self.rails.append(axis_high)
        self.pieces()
        self.frame()

    def slope(self, k):
        return (self.rails[k](self.b) - self.rails[k](self.a)) / (self.b - self.a)

    def over(self, k, r, side):
        return self.rails[k](r) + side * self.d / 2 * math.hypot(1, self.slope(k))

    # ---- what the saw cuts
    def pieces(self):
        p, d = self.p, self.d
        ia, ib = self.r0 + d, self.r1 - d
        n = len(self.rails)
        self.long, self.cut = [], []
        for r, e, f in ((self.a, self.r0, ia), (self.b, ib, self.r1)):
            outer = e if r == self.a else f
            if p["joint"] == "mitered":
                self.cut.append(self.rails[-1](r) - self.rails[0](r))
                self.long.append(self.high(outer) - self.low(outer))
            elif p["joint"] == "butted-rails-through":
                tops = [self.over(n - 1, x, -1) for x in (e, f)]
                feet = [self.over(0, x, 1) for x in (e, f)]
                self.cut.append(self.over(n - 1, r, -1) - self.over(0, r, 1))
                self.long.append(self.tip(max(tops) - min(feet), (p["bottom"], p["top"]), r))
            else:
                tops, feet = [self.high(x) for x in (e, f)], [self.low(x) for x in (e, f)]
                self.cut.append(self.high(r) - self.low(r))
                self.long.append(max(tops) - min(feet))
        for k in range(n):
            s = self.slope(k)
            edge = k in (0, n - 1)
            if p["joint"] == "mitered" and edge:
                self.cut.append((self.b - self.a) * math.hypot(1, s))
                self.long.append((self.r1 - self.r0) * math.hypot(1, s))
            elif p["joint"] == "butted-rails-through" and edge:
                self.cut.append((self.r1 - self.r0) * math.hypot(1, s))
                self.long.append((self.r1 - self.r0) * math.hypot(1, s) + d * abs(s))
            else:
                self.cut.append((ib - ia) * math.hypot(1, s))
                self.long.append(self.cut[-1] + d * (math.hypot(1, s) if self.coped() else abs(s)))
        self.braces = []  # (corner stile, rail) pairs
        b = p["bracing"]
        inner = lambda stile, k, side: (ia if stile == 0 else ib, self.over(k, ia if stile == 0 else ib, side))
        length = lambda u, v: math.dist(u, v)
        if b in ("one", "x") or (b == "two" and n > 2):
            for k in range(2 if b == "two" else 1):
                self.cut.append(length(inner(0, k, 1), inner(1, k + 1, -1)))
                self.braces.append(((0, k), (1, k + 1)))
        if b == "x":
            u, v = inner(0, 1, -1), inner(1, 0, 1)
            o, q = inner(0, 0, 1), inner(1, 1, -1)
            m = np.array([[q[0] - o[0], u[0] - v[0]], [q[1] - o[1], u[1] - v[1]]])
            t = np.linalg.solve(m, [u[0] - o[0], u[1] - o[1]])
            centre = (o[0] + t[0] * (q[0] - o[0]), o[1] + t[0] * (q[1] - o[1]))
            gamma = math.atan2(q[1] - o[1], q[0] - o[0]) - math.atan2(v[1] - u[1], v[0] - u[0])
            back = d / 2 / math.sin(gamma)
            self.cut += [length(u, centre) - back, length(centre, v) - back]
        if b == "two" and n == 2:
            middle = (self.over(0, ib, 1) + self.over(1, ib, -1)) / 2
            self.feet = []
            for k, side in ((0, -1), (1, 1)):
                c = inner(0, k, 1 if k == 0 else -1)
                z = middle
                for _ in range(60):
                    z = middle + side * d / 2 * math.hypot(1, (z - c[1]) / (ib - c[0]))
                self.feet.append(z)
                self.cut.append(length(c, (ib, z)))
        self.rod_lb = 0.0
        if b.startswith("rod"):
            self.rod_area = math.pi / 4 * p["rod"] ** 2
            ways = {"rod": [0], "rod-low": [1], "rod-both": [0, 1]}[b]
            for way in ways:
                u, v = (inner(0, n - 1, -1), inner(1, 0, 1)) if way == 0 else (inner(0, 0, 1), inner(1, n - 1, -1))
                self.rod_lb = self.rod_area * STEEL
                self.cut.append(length(u, v) - 3.0)
                self.braces.append(((0, n - 1), (1, 0)) if way == 0 else ((0, 0), (1, n - 1)))

    def coped(self):
        return self.p["tube"].startswith(("LIGHT", "F1083")) and self.p["joint"] != "bracketed"

    def tip(self, plain, slopes, r):
        """A coped stile between through rails: its ears reach to the rails' axes."""
        if not self.coped():
            return plain
        return self.cut[-1] + sum(self.d / 2 * math.hypot(1, s) for s in slopes)

    # ---- the frame
    def frame(self):
        p = self.p
        n = len(self.rails)
        self.xy, self.elements, self.ends = [], [], {}
        node = lambda r, z: self.xy.append((r, z)) or len(self.xy) - 1
        corner = {(s, k): node(self.a if s == 0 else self.b, self.rails[k](self.a if s == 0 else self.b)) for s in (0, 1) for k in range(n)}
        bolted = p["joint"] == "bracketed"
        self.springs = []

        def end(at):
            """The node of a member's end: the stile's own, or one of its own that turns in a bracket."""
            if not bolted:
                return at
            own = node(*self.xy[at])
            self.springs.append((at, own))
            return own

        lows = self.low(self.r0) + 6, self.high(self.r0) - 6
        self.pins = [node(self.a, z) for z in lows]
        hinge_line = sorted([corner[0, k] for k in range(n)] + self.pins, key=lambda i: self.xy[i][1])
        latch_line = [corner[1, k] for k in range(n)]
        kay = []
        if p["bracing"] == "two" and n == 2:
            kay = [node(self.b, z) for z in self.feet]
            latch_line = sorted(latch_line + kay, key=lambda i: self.xy[i][1])
        self.chains = []
        chain = lambda line, cut: self.chains.append((line, self.lb * cut))
        chain(hinge_line, self.cut[0])
        chain(latch_line, self.cut[1])
        self.rail_chains = []
        for k in range(n):
            line = [end(corner[0, k]), end(corner[1, k])]
            chain(line, self.cut[2 + k])
            self.rail_chains.append(line)
        cuts = iter(self.cut[2 + n:])
        b = p["bracing"]
        if b == "x":
            o, q, u, v = corner[0, 0], corner[1, 1], corner[0, 1], corner[1, 0]
            P = [np.array(self.xy[i]) for i in (o, q, u, v)]
            t = np.linalg.solve(np.array([P[1] - P[0], P[2] - P[3]]).T, P[2] - P[0])
            middle = node(*(P[0] + t[0] * (P[1] - P[0])))
            chain([end(o), middle, end(q)], next(cuts))
            chain([end(u), end(middle)], next(cuts))
            chain([end(middle), end(v)], next(cuts))
        elif kay:
            for k in (0, 1):
                chain([end(corner[0, k]), end(kay[k])], next(cuts))
        elif not b.startswith("rod"):
            for s, e in self.braces:
                chain([end(corner[s]), end(corner[e])], next(cuts))
        self.rods = [(corner[s], corner[e]) for s, e in self.braces] if b.startswith("rod") else []
        self.rod_cuts = self.cut[len(self.cut) - len(self.rods):]
        self.corner_node = corner[1, 0]

    def stiffness(self, rods):
        size = 3 * len(self.xy)
        K = np.zeros((size, size))
        f = np.zeros(size)
        for line, weight in self.chains:
            whole = sum(math.dist(self.xy[i], self.xy[j]) for i, j in zip(line, line[1:]))
            for i, j in zip(line, line[1:]):
                (x0, z0), (x1, z1) = self.xy[i], self.xy[j]
                L = math.dist(self.xy[i], self.xy[j])
                c, s = (x1 - x0) / L, (z1 - z0) / L
                ea, ei = E * self.area / L, E * self.i
                k = np.zeros((6, 6))
                k[0, 0] = k[3, 3] = ea
                k[0, 3] = k[3, 0] = -ea
                bend = ei / L**3 * np.array([[12, 6 * L, -12, 6 * L], [6 * L, 4 * L * L, -6 * L, 2 * L * L],
                                             [-12, -6 * L, 12, -6 * L], [6 * L, 2 * L * L, -6 * L, 4 * L * L]])
                k[np.ix_([1, 2, 4, 5], [1, 2, 4, 5])] += bend
                R = np.zeros((6, 6))
                R[:3, :3] = R[3:, 3:] = [[c, s, 0], [-s, c, 0], [0, 0, 1]]
                dofs = [3 * i, 3 * i + 1, 3 * i + 2, 3 * j, 3 * j + 1, 3 * j + 2]
                K[np.ix_(dofs, dofs)] += R.T @ k @ R
                q = weight / whole
                along, across = -q * s, -q * c
                own = np.array([along * L / 2, across * L / 2, across * L * L / 12, along * L / 2, across * L / 2, -across * L * L / 12])
                f[dofs] += R.T @ own
        share = self.p["fill"] / len(self.rails)
        for line in self.rail_chains:
            i, j = line
            (x0, z0), (x1, z1) = self.xy[i], self.xy[j]
            q = share / (self.r1 - self.r0)
            span = x1 - x0
            f[3 * i + 1] -= q * span / 2
            f[3 * j + 1] -= q * span / 2
            f[3 * i + 2] -= q * span**2 / 12
            f[3 * j + 2] += q * span**2 / 12
            beyond = x0 - self.r0
            f[3 * i + 1] -= q * beyond
            f[3 * i + 2] += q * beyond**2 / 2
            beyond = self.r1 - x1
            f[3 * j + 1] -= q * beyond
            f[3 * j + 2] -= q * beyond**2 / 2
        for (i, j), cut in zip(self.rods, self.rod_cuts):
            for k in (i, j):
                f[3 * k + 1] -= self.rod_lb * cut / 2
        stiff = 1e9
        for at, own in self.springs:
            for d in (0, 1):
                self.link(K, 3 * at + d, 3 * own + d, stiff)
            self.link(K, 3 * at + 2, 3 * own + 2, self.p["bracket"])
        for i in self.pins:
            K[3 * i, 3 * i] += HINGE_K
        i = self.pins[0]  # carries the weight at r = 0, an arm of -a from the stile
        arm = np.array([1.0, -self.a])
        K[np.ix_([3 * i + 1, 3 * i + 2], [3 * i + 1, 3 * i + 2])] += stiff * np.outer(arm, arm)
        for i, j in rods:
            v = self.pull_vector(i, j)
            L = math.dist(self.xy[i], self.xy[j])
            K += E * self.rod_area / L * np.outer(v, v)
        return K, f

    @staticmethod
    def link(K, a, b, k):
        K[a, a] += k
        K[b, b] += k
        K[a, b] -= k
        K[b, a] -= k

    def pull_vector(self, i, j):
        """How much longer the line between two nodes grows."""
        v = np.zeros(3 * len(self.xy))
        (x0, z0), (x1, z1) = self.xy[i], self.xy[j]
        L = math.dist(self.xy[i], self.xy[j])
        v[3 * i:3 * i + 2] = [-(x1 - x0) / L, -(z1 - z0) / L]
        v[3 * j:3 * j + 2] = [(x1 - x0) / L, (z1 - z0) / L]
        return v

    def drop(self):
        """Fall of the free lower latch corner from the trued leaf, and the rods that hang loose."""
        bare, f = self.stiffness([])
        probe = np.zeros(len(f))
        k = self.corner_node
        probe[3 * k + 1] = -1
        probe[3 * k + 2] = -(self.r1 - self.xy[k][0])
        if not self.rods:
            return probe @ np.linalg.solve(bare, f), []
        pulls = [self.pull_vector(i, j) for i, j in self.rods]
        ks = [E * self.rod_area / math.dist(self.xy[i], self.xy[j]) for i, j in self.rods]
        P = self.p["pretension"]
        bench = np.linalg.solve(bare, sum(-P * v for v in pulls))  # every rod pulls with P
        short = [P / k - v @ bench for k, v in zip(ks, pulls)]  # how much too short each rod was made
        for loose in itertools.chain.from_iterable(itertools.combinations(range(len(pulls)), m) for m in range(len(pulls) + 1)):
            K, g = bare.copy(), f.copy()
            for m, (k, v) in enumerate(zip(ks, pulls)):
                if m not in loose:
                    K += k * np.outer(v, v)
                    g = g - k * short[m] * v
            u = np.linalg.solve(K, g)
            force = [k * (v @ u + s) for k, v, s in zip(ks, pulls, short)]
            if all((force[m] < 0) == (m in loose) for m in range(len(pulls))):
                return probe @ (u - bench), list(loose)
        raise ValueError("no set of rods holds")

    def weight(self):
        tubes = sum(self.cut[:len(self.cut) - len(self.rods)]) * self.lb
        return tubes + self.rod_lb * sum(self.rod_cuts)


def main():
    catalogue()
    random.seed(20271128)
    kinds = ["none", "one", "two", "x", "rod", "rod-low", "rod-both"]
    joints = ["mitered", "butted", "butted-rails-through", "coped", "bracketed"]
    print("# Thirty random leaves by reference/recipes/leaf_kinds.py, seed 20271128. Inches, pounds, lb-in a radian.")
    print("leaf,tube,flat,joint,bracing,rod,pretension,bracket,width,height,gap,bottom,top,mid,midAt,fill,drop,slack,frame,longPoints")
    for n in range(30):
        tube = list(TUBES)[n % len(TUBES)]
        joint = joints[(n // 2) % len(joints)]
        round_tube = tube.startswith(("LIGHT", "F1083"))
        if round_tube and joint in ("butted", "bracketed"):
            joint = "coped"
        if not round_tube and joint == "coped":
            joint = "butted"
        bracing = kinds[n % len(kinds)]
        if joint == "bracketed" and bracing == "none":
            bracing = "rod"
        shape = n % 3
        bottom = 0.0 if shape == 0 else round(random.uniform(-0.12, 0.12), 3)
        top = bottom if shape != 2 else round(bottom + random.uniform(-0.05, 0.05), 3)
        mid = random.choice([0, 1, 2])
        height = round(random.uniform(44, 74), 2)
        p = dict(tube=tube, flat=int(tube in ("TUBE-3x2x0.12", "TUBE-2x1x0.083") and n % 2), joint=joint, bracing=bracing,
                 rod=random.choice([0.3125, 0.375, 0.5]), pretension=random.choice([40.0, 100.0, 250.0]), bracket=random.choice([2e4, 6e4, 2e5]),
                 width=round(random.uniform(34, 72), 2), height=height, gap=3.0, bottom=bottom, top=top, mid=mid,
                 midAt=[round(height * s, 2) for s in ([0.6] if mid == 1 else [0.3, 0.7])] if mid and n % 2 else [],
                 fill=round(random.uniform(20, 160), 1))
        leaf = Leaf(p)
        drop, slack = leaf.drop()
        cells = [n + 1, tube, p["flat"], joint, bracing, p["rod"], p["pretension"], p["bracket"], p["width"], height, 3.0, bottom, top, mid,
                 " ".join(map(str, p["midAt"])), p["fill"], "%.9g" % drop, " ".join(str(s + 1) for s in slack), "%.9g" % leaf.weight(),
                 " ".join("%.9g" % v for v in leaf.long)]
        print(",".join(map(str, cells)))


main()
