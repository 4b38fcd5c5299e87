"""Twenty made-up gate leaves, solved by forces and movements together; writes random-leaves.csv for RandomLeavesCheck.

Run once, by hand (numpy 1.24 and Python 3.11):

    python3 random_leaves.py > random-leaves.csv

This shares no formula with the engine. Nothing here is a stiffness: every member is a cantilever from its start whose
flexibility is found by integrating unit forces along it (Gauss, four points); rigid hinges and held directions are
exact constraints; the footing is a buried cantilever. Unknown are the end forces of all parts, the reactions and the
movement of all nodes; the equations are balance at the nodes and fit at the parts' ends.
"""
import random

import numpy as np

E = 29e6
G = E / 2.6
FREE = "free"


def r(value):
    return round(value, 4)


class Leaf:
    def __init__(self, seed):
        self.random = random.Random(seed)
        self.nodes, self.members, self.links, self.holds, self.loads, self.piers = [], [], [], [], [], []
        self.spreads = []

    def between(self, low, high):
        return r(self.random.uniform(low, high))

    def node(self, name, x, y, z):
        self.nodes.append((name, r(x), r(y), r(z)))
        return name

    def section(self):
        return tuple(self.between(low, high) for low, high in ((0.3, 1.8), (0.1, 1.5), (0.1, 1.5), (0.2, 2.5)))

    def member(self, name, start, end, orientation, section, released=""):
        self.members.append((name, start, end) + section + orientation + (released,))

    def build(self):
        width, low, high = self.between(36, 96), self.between(3, 12), self.between(50, 80)
        rise = self.between(-8, 8)
        gap, out = self.between(2, 4), self.between(-2, 2)
        pins = [r(low + self.between(4, 9)), r(high - self.between(4, 9))]
        if self.random.random() < 0.4:
            pins.insert(1, r((pins[0] + pins[1]) / 2 + self.between(-3, 3)))
        post, frame, light = self.section(), self.section(), self.section()
        below = "grade"
        self.node("grade", -gap, 0, 0)
        for i, z in enumerate(pins):
            top = self.node(f"post{i}", -gap, 0, z)
            self.member(f"post{i}", below, top, (1.0, 0.0, 0.0), post)
            below = top
        self.piers.append(("grade", self.between(20, 48), self.between(0.4, 3.0)))
        stile = [("corner", low)] + [(f"pin{i}", z) for i, z in enumerate(pins)] + [("top", high)]
        for name, z in stile:
            self.node(name, 0, out, z)
        for (a, _), (b, _) in zip(stile, stile[1:]):
            self.member(f"hinge stile {a}", a, b, (1.0, 0.0, 0.0), frame)
        self.node("latch low", width, out, low + rise)
        self.node("latch mid", width, out, (low + high) / 2 + rise)
        self.node("latch top", width, out, high + rise)
        self.member("latch stile 1", "latch low", "latch mid", (1.0, 0.0, 0.0), frame)
        self.member("latch stile 2", "latch mid", "latch top", (1.0, 0.0, 0.0), frame)
        self.member("bottom rail", "corner", "latch low", (0.0, 0.0, 1.0), frame)
        self.member("top rail", "top", "latch top", (0.0, 0.0, 1.0), frame)
        if self.random.random() < 0.7:
            self.member("brace", "corner", "latch top", (0.0, 1.0, 0.0), light, self.random.choice(("", "RY RZ")))
        if self.random.random() < 0.5:
            self.member("mid rail", "pin0", "latch mid", (0.0, 0.0, 1.0), light)
        for i, z in enumerate(pins):
            pin = (self.between(-1, 0), r(out + self.between(-1, 1)), z)
            give = self.random.choice((0, 1e-5))
            lift = 0 if i == 0 else FREE
            self.links.append((f"hinge{i}", f"post{i}", f"pin{i}") + pin + (give, give, lift, 0, 0, FREE))
        self.holds.append(("latch mid", "UY"))
        for name in ("latch low", "latch top", "corner", "pin0"):
            force = [self.between(-60, 60), self.between(-80, 80), self.between(-120, 0)]
            moment = [self.between(-300, 300) for _ in range(3)]
            self.loads.append((name, *force, *moment))
        for name in ("bottom rail", "top rail", "latch stile 2", "post0"):
            self.spreads.append((name, self.between(-1, 1), self.between(-3, 3), self.between(-2, 0)))
        return self

    def solve(self):
        at = {name: np.array(xyz) for name, *xyz in self.nodes}
        index = {name: i for i, (name, *_) in enumerate(self.nodes)}
        parts = []
        spread = {name: np.array(w) for name, *w in self.spreads}
        for name, start, end, area, iy, iz, j, ox, oy, oz, released in self.members:
            free = [("UX", "UY", "UZ", "RX", "RY", "RZ").index(word) for word in released.split()]
            parts.append(Part(index, start, end, at[start], at[end], at[start], at[end], np.array((ox, oy, oz)),
                              (area, iy, iz, j), spread.get(name, np.zeros(3)), free))
        for node, length, inertia in self.piers:
            base = at[node] - np.array((0, 0, length))
            parts.append(Part(index, None, node, base, at[node], base, at[node], np.array((1.0, 0, 0)),
                              (50.0, inertia, inertia, 2 * inertia), np.zeros(3), []))
        for _, start, end, px, py, pz, *give in self.links:
            pin = np.array((px, py, pz))
            part = Part(index, start, end, at[start], at[end], pin, pin, None, None, np.zeros(3),
                        [k for k in range(6) if give[k] == FREE])
            part.flexibility = np.diag([0.0 if value == FREE else value for value in give])
            parts.append(part)
        count, moves = 6 * len(parts), 6 * len(self.nodes)
        held = [6 * index[n] + ("UX", "UY", "UZ", "RX", "RY", "RZ").index(d) for n, d in self.holds]
        size = count + moves + len(held)
        matrix, right = np.zeros((size, size)), np.zeros(size)
        for p, part in enumerate(parts):
            rows = slice(6 * p, 6 * p + 6)
            fit = part.fit(moves)
            matrix[rows, rows] = part.flexibility
            matrix[rows, count:count + moves] = -fit
            matrix[count:count + moves, rows] = -fit.T
            right[rows] = -part.sagged
            for k in part.free:
                matrix[6 * p + k, :] = 0
                matrix[6 * p + k, 6 * p + k] = 1
                right[6 * p + k] = 0
            right[count:count + moves] -= part.at_start(moves)
        for k, direction in enumerate(held):
            matrix[count + moves + k, count + direction] = 1
            matrix[count + direction, count + moves + k] = 1
        for name, *six in self.loads:
            right[count + 6 * index[name]:count + 6 * index[name] + 6] -= six
        answer = np.linalg.solve(matrix, right)
        residual = np.abs(matrix @ answer - right).max()
        assert residual < 1e-6, residual
        return answer[count:count + moves].reshape(-1, 6)


class Part:
    """A cantilever from `a`, tied rigidly to its start node, to `b`, tied rigidly to its end node; or springs at a point."""

    def __init__(self, index, start, end, start_at, end_at, a, b, orientation, section, perinch, free):
        self.index, self.start, self.end, self.free = index, start, end, free
        self.start_at, self.end_at, self.b = start_at, end_at, b
        self.sagged = np.zeros(6)
        self.load = np.zeros(6)
        if section is None:
            self.axes = np.eye(3)
            return
        length = np.linalg.norm(b - a)
        x = (b - a) / length
        y = orientation - x * (x @ orientation)
        y /= np.linalg.norm(y)
        self.axes = np.array((x, y, np.cross(x, y)))
        area, iy, iz, j = section
        soft = np.diag((1 / (E * area), 0, 0, 1 / (G * j), 1 / (E * iy), 1 / (E * iz)))
        w = self.axes @ perinch
        self.flexibility = np.zeros((6, 6))
        for point, weight in zip(*np.polynomial.legendre.leggauss(4)):
            s = length * (1 + point) / 2
            unit = self.inside(length - s)
            own = np.concatenate((w * (length - s), np.cross(((length - s) / 2, 0, 0), w * (length - s))))
            self.flexibility += length / 2 * weight * unit.T @ soft @ unit
            self.sagged += length / 2 * weight * unit.T @ soft @ own
        force = perinch * length
        self.load = np.concatenate((force, np.cross((a + b) / 2 - start_at, force)))

    @staticmethod
    def inside(beyond):
        """Forces at a section from the six forces at the end, which lies `beyond` further on."""
        unit = np.eye(6)
        unit[4, 2] = -beyond
        unit[5, 1] = beyond
        return unit

    def fit(self, moves):
        """Movement of the end less what the start carries it along, in the part's axes."""
        fit = np.zeros((6, moves))
        for node, place, sign in ((self.end, self.end_at, 1.0), (self.start, self.start_at, -1.0)):
            if node is None:
                continue
            arm = self.b - place
            turned = np.array(((0, arm[2], -arm[1]), (-arm[2], 0, arm[0]), (arm[1], -arm[0], 0)))
            base = 6 * self.index[node]
            fit[0:3, base:base + 3] += sign * self.axes
            fit[0:3, base + 3:base + 6] += sign * self.axes @ turned
            fit[3:6, base + 3:base + 6] += sign * self.axes
        return fit

    def at_start(self, moves):
        sum_ = np.zeros(moves)
        if self.start is not None:
            base = 6 * self.index[self.start]
            sum_[base:base + 6] = self.load
        return sum_


def main():
    print("# Twenty made-up leaves on a post and a footing, solved by forces and movements together; recipe: random_leaves.py.")
    print("# inch, pound, radian; E 29e6 psi, G = E / 2.6; all numbers invented. Rows:")
    print("# node,id,x,y,z | member,id,start,end,A,Iy,Iz,J,orientation,released at end | pier,node,length,I | "
          "link,id,from,to,at,give of six | hold,node,direction | load,node,six | spread,member,per inch | "
          "moved,node,six (the answer)")
    for seed in range(1, 21):
        leaf = Leaf(seed).build()
        answer = leaf.solve()
        for kind, rows in (("node", leaf.nodes), ("member", leaf.members), ("pier", leaf.piers), ("link", leaf.links),
                           ("hold", leaf.holds), ("load", leaf.loads), ("spread", leaf.spreads)):
            for row in rows:
                print(seed, kind, *row, sep=",")
        for (name, *_), six in zip(leaf.nodes, answer):
            print(seed, "moved", name, *(f"{value:.9e}" for value in six), sep=",")


if __name__ == "__main__":
    main()
