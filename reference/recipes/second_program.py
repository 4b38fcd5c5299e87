"""A second program for whole jobs: reads job files, writes second-program.csv for SecondProgramCheck.

Run by hand (numpy 1.24 and Python 3.11) from this folder:

    python3 second_program.py ../src/test/resources/plumbleaf/reference/whole > second-program.csv

It was written from the conventions and the published formulas alone and shares no line and no method with the engine where there
was a choice: the ground is cut into triangles by trying all of them, the swing is sampled and refined, the leaf is a frame of short
beams with the loads lumped at their joints, depths are found by bisection, posts are placed by trying every pattern.
Catalogue rows (sections, hinges, latches, styles) are repeated below from the catalogue. What no convention fixes is taken from the
engine and marked TAKEN: the knots of a racked top, and that a fence less than half an inch higher up than asked counts as asked.
"""
import csv
import itertools
import json
import math
import os
import re
import sys

import numpy as np

E, G = 29e6, 11.2e6
# id: outside size or diameter, Fy ksi, lb/ft, area, I, S, Z, J
SECTIONS = {
    "F1083-REG-2": (2.375, 30, 3.66, 1.075, 0.6657, 0.5606, 0.7609, 1.331),
    "F1083-REG-2.5": (2.875, 30, 5.80, 1.704, 1.53, 1.064, 1.452, 3.059),
    "F1083-REG-3.5": (4.0, 30, 9.12, 2.68, 4.788, 2.394, 3.223, 9.575),
    "TUBE-2x2x0.083": (2.0, 36, 2.11, 0.6187, 0.3734, 0.3734, 0.4403, 0.5971),
    "TUBE-1.5x1.5x0.12": (1.5, 36, 2.13, 0.6253, 0.1923, 0.2563, 0.3167, 0.3244),
}
HINGES = {"HINGE-ADJ-0.625": dict(slack=0.03125, k=60000.0, lb=2.5, pin=0.375, side=1.5)}
LATCHES = {"LATCH-THUMB": dict(lb=1.2)}
STYLES = {"wood-side-by-side": dict(board=(5.5, 0.625), rail=(3.5, 1.5), g=0.36, gap=0.125, gaps=(0.0625, 0.25), rip=2.5)}
SAND = {"loose": 8.1, "medium": 24.3, "dense": 64.8}
CLAY = {"soft": 500.0, "firm": 1000.0, "stiff": 2000.0}
LATERAL = {3: 200.0, 4: 150.0, 5: 100.0}
EXPOSURE = {"B": (7.0, 1200.0), "C": (9.5, 900.0), "D": (11.5, 700.0)}
CF_AB = {  # s/h: Cf at B/s 2, 4, 5, 10, 20, 30, 45 (ASCE 7-16 Figure 29.3-1)
    1.0: (1.40, 1.35, 1.35, 1.30, 1.30, 1.30, 1.30), 0.9: (1.50, 1.45, 1.45, 1.40, 1.40, 1.40, 1.40),
}
CF_BS = (2, 4, 5, 10, 20, 30, 45)
CF_C = {  # B/s: strips of length s from the windward end, the last to 10 s
    2: (2.25, 1.50), 3: (2.60, 1.70, 1.15), 4: (2.90, 1.90, 1.30, 1.10), 5: (3.10, 2.00, 1.45, 1.05), 6: (3.30, 2.15, 1.55, 1.05),
    7: (3.40, 2.25, 1.65, 1.05), 8: (3.55, 2.30, 1.70, 1.05), 9: (3.65, 2.35, 1.75, 1.00), 10: (3.75, 2.45, 1.85, 0.95),
}
OMEGA = 1.67


def length(text):
    """Inches of a length text: feet and inches, in, ft, mm, cm, m."""
    text = text.strip()
    metric = re.fullmatch(r"(-?[\d.]+)\s*(mm|cm|m)", text)
    if metric:
        return float(metric[1]) * {"mm": 1, "cm": 10, "m": 1000}[metric[2]] / 25.4
    sign = -1 if text.startswith("-") else 1
    text = text.lstrip("-")
    feet = 0.0
    if "'" in text:
        head, text = text.split("'", 1)
        feet = float(head)
    text = text.replace('"', "").strip()
    inches = 0.0
    for part in re.split(r"[\s-]+", text):
        if "/" in part:
            a, b = part.split("/")
            inches += float(a) / float(b)
        elif part:
            inches += float(part)
    return sign * (12 * feet + inches)


def unit(text):
    return float(re.match(r"-?[\d.]+", text)[0])


class Job:
    def __init__(self, data):
        self.data = data
        self.run = data["runs"][0]
        self.gate = data["gates"][0]
        self.build = data["builds"]["G1"]
        self.fence = data["builds"]["R1"]
        self.out = []
        self.legs = [length(leg["length"]) for leg in self.run["legs"]]
        self.shots()

    def put(self, name, value):
        self.out.append((name, value))

    # ---- ground
    def at(self, station, left):
        """Plan point of a station, so far inside (left of the walk): first leg east, second north."""
        if station <= self.legs[0]:
            return np.array([station, left])
        return np.array([self.legs[0] - left, station - self.legs[0]])

    def shots(self):
        ground = self.data["ground"]
        elevation, plan, station, hi = {}, {}, {}, {}
        setups = {s["id"]: s for s in ground["setups"]}
        todo = list(ground["shots"])
        while todo:
            for shot in list(todo):
                if "elevation" in shot:
                    z = length(shot["elevation"])
                elif "after" in shot:
                    if shot["after"] not in elevation:
                        continue
                    z = elevation[shot["after"]] + (length(shot["rises"]) if "rises" in shot else -length(shot["falls"]))
                else:
                    setup = setups[shot["setup"]]
                    base = length(ground["benchmark"]["elevation"]) if setup["on"] == "benchmark" else elevation.get(setup["on"])
                    if base is None:
                        continue
                    z = base + length(setup["backsight"]) - length(shot["rod"])
                elevation[shot["id"]] = z
                if "east" in shot:
                    plan[shot["id"]] = np.array([length(shot["east"]), length(shot["north"])])
                else:
                    s = station[shot["after"]] + length(shot["over"]) if "after" in shot else length(shot["station"])
                    off = length(shot["in"]) if "in" in shot else -length(shot["out"]) if "out" in shot else 0.0
                    station[shot["id"]] = s
                    plan[shot["id"]] = self.at(s, off)
                    if abs(off) > 3:
                        del station[shot["id"]]
                todo.remove(shot)
        self.z, self.plan, self.on_run = elevation, plan, station
        order = sorted(station, key=station.get)
        self.profile_ids = order
        self.profile = (np.array([station[i] for i in order]), np.array([elevation[i] for i in order]))
        for shot in ground["shots"]:
            self.put("shot.%s.elevationIn" % shot["id"], elevation[shot["id"]])

    def grade(self, station):
        return float(np.interp(station, *self.profile))

    # ---- posts
    def posts(self):
        face, opening = length(self.gate["station"]), length(self.gate["opening"])
        wide = {k: SECTIONS[self.build[k]][0] for k in ("hingePost", "latchPost")}
        left_is_hinge = self.gate["hinge"] == "left"
        first = wide["hingePost" if left_is_hinge else "latchPost"]
        second = wide["latchPost" if left_is_hinge else "hingePost"]
        own = SECTIONS[self.fence["post"]][0]
        total = sum(self.legs)
        fixed = [(0.0, "end"), (face - first / 2, "gate"), (face + opening + second / 2, "gate"), (self.legs[0], "corner"),
                 (total - own / 2, "wall")]
        hole = length(self.fence["hole"]) / 2
        closed = [(length(d["from"]) - hole, length(d["to"]) + hole) for d in self.run.get("noDig", [])]
        for line in self.data["existing"]["lines"]:
            mid, tol = length(line["station"]), length(line["tolerance"])
            closed.append((mid - tol - hole, mid + tol + hole))
        stations = [(0.0, "end")]
        for (a, ra), (b, rb) in zip(fixed, fixed[1:]):
            if not (ra == "gate" and rb == "gate"):
                stations += [(s, "line") for s in self.spaced(a, b, closed)]
            stations.append((b, rb))
        self.post = [dict(id="P%d" % (i + 1), s=s, role=role) for i, (s, role) in enumerate(stations)]
        for p in self.post:
            self.put("post.%s.stationIn" % p["id"], p["s"])
            self.put("post.%s.gradeElevationIn" % p["id"], self.grade(p["s"]))

    def spaced(self, a, b, closed):
        """Fewest bays, least largest bay, then least squares, by trying which posts stand on which edge of a closed stretch."""
        most = length(self.run["maxBay"])
        edges = sorted(e for c in closed for e in c if a < e < b)
        for n in range(1, 60):
            if (b - a) / n > most:
                continue
            best = None
            for k in range(0, min(len(edges), n - 1) + 1):
                for pinned in itertools.combinations(edges, k):
                    knots = [a, *pinned, b]
                    for split in itertools.product(range(1, n + 1), repeat=k + 1):
                        if sum(split) != n:
                            continue
                        s = [a]
                        for (lo, hi), m in zip(zip(knots, knots[1:]), split):
                            s += [lo + (hi - lo) * i / m for i in range(1, m + 1)]
                        if any(c[0] + 1e-9 < x < c[1] - 1e-9 for x in s[1:-1] for c in closed):
                            continue
                        bays = np.diff(s)
                        slopes = np.hypot(bays, np.diff([self.grade(x) for x in s]))
                        if slopes.max() > most + 1e-9:
                            continue
                        score = (round(bays.max(), 6), float(((bays - (b - a) / n) ** 2).sum()))
                        if best is None or score < best[0]:
                            best = (score, s)
            if best:
                return best[1][1:-1]
        raise ValueError("no layout")

    def bays(self, knots):
        """Rail of each bay, and how high its boards begin over the ground at its posts: knots are the elevations of the top there, TAKEN."""
        asked, boards = length(self.run["bottomGap"]), length(self.run["infill"])
        between = [(a, b) for a, b in zip(self.post, self.post[1:]) if (a["role"], b["role"]) != ("gate", "gate")]
        for (first, second), (level, rise, top) in zip(between, knots.values()):
            for post, z, side in ((first, top, "after"), (second, top + rise, "before")):
                stands = z - boards - self.grade(post["s"])
                post[side] = stands if stands > asked + 0.5 else asked
        for i, (bay, (level, rise, _)) in enumerate(knots.items()):
            pct = 100 * rise / level
            self.put("bay.%s.gradePct" % bay, pct)
            self.put("bay.%s.railCutLengthIn" % bay, math.hypot(level, rise))
            self.put("bay.%s.railEndDeg" % bay, math.degrees(math.atan(abs(rise) / level)))

    # ---- leaf
    def leaf(self, taken):
        spec, gate = self.gate["leaf"], self.gate
        hinge = HINGES[gate["hinges"]["model"]]
        clear = length(gate["opening"])
        gap_h, gap_l = length(spec["hingeGap"]), length(spec["latchGap"])
        self.pin_off = hinge["pin"]
        face = length(gate["station"])
        low_is_hinge = gate["hinge"] == "left"
        self.dir = 1 if low_is_hinge else -1
        hinge_face = face if low_is_hinge else face + clear
        latch_face = face + clear if low_is_hinge else face
        self.pin_s = hinge_face + self.dir * self.pin_off
        self.way = 1 if gate["swing"] == "in" else -1
        self.pin_e = hinge["side"]  # off the leaf's plane, to the swing side
        self.pin_n = -self.way * self.pin_e  # the same, + outside
        self.pin = self.at(self.pin_s, self.way * self.pin_e)
        self.pin_z = self.grade(self.pin_s)  # on the fence line, beside the pin
        m = (self.grade(latch_face) - self.grade(hinge_face)) / clear if spec["shape"] == "raked" else 0.0
        r0 = gap_h - self.pin_off
        r1 = r0 + clear - gap_h - gap_l
        z0, tall = length(spec["bottomGap"]), length(spec["infill"])
        self.m, self.r0, self.r1, self.z0, self.tall = m, r0, r1, z0, tall
        self.bottom = lambda r: z0 + m * r
        self.put("leaf.widthIn", r1 - r0)
        for i, (r, z) in enumerate([(r0, z0 + m * r0), (r1, z0 + m * r1), (r1, z0 + m * r1 + tall), (r0, z0 + m * r0 + tall)]):
            self.put("leaf.corner%d.rIn" % i, r)
            self.put("leaf.corner%d.zIn" % i, z)
        size, _, per_ft, *_ = SECTIONS[self.build["frame"]]
        c = math.hypot(1, m)
        a, b = r0 + size / 2, r1 - size / 2
        up = size / 2 * c  # from an edge to a rail's centreline, plumb
        bottom = lambda r: self.bottom(r) + up
        top = lambda r: self.bottom(r) + tall - up
        mids = int(spec.get("midRails", 1))
        rails = [bottom] + [(lambda k: lambda r: bottom(r) + (top(r) - bottom(r)) * k / (mids + 1))(k) for k in range(1, mids + 1)] + [top]
        self.rails, self.a, self.b, self.size = rails, a, b, size
        stile = tall - 2 * up
        wide = b - a
        corner = ((a + size / 2, bottom(a + size / 2) + up), (b - size / 2, rails[1](b - size / 2) - up))
        self.brace = corner
        pieces = [("m1", stile), ("m2", stile), ("m3", wide * c)] + [("m%d" % (3 + k), (wide - size) * c) for k in range(1, mids + 1)]
        pieces += [("m%d" % (4 + mids), wide * c), ("m%d" % (5 + mids), math.dist(*corner))]
        self.lb = {}
        for name, cut in pieces:
            self.put("leaf.G1a.%s.cutLengthIn" % name, cut)
            self.put("leaf.G1a.%s.weightLb" % name, cut * per_ft / 12)
            self.lb[name] = cut * per_ft / 12
        mid = lambda f: f((a + b) / 2)
        places = {"m1": (a, bottom(a) + stile / 2), "m2": (b, bottom(b) + stile / 2), "m3": ((a + b) / 2, mid(bottom)),
                  "m%d" % (4 + mids): ((a + b) / 2, mid(top)),
                  "m%d" % (5 + mids): ((corner[0][0] + corner[1][0]) / 2, (corner[0][1] + corner[1][1]) / 2)}
        for k in range(1, mids + 1):
            places["m%d" % (3 + k)] = ((a + b) / 2, mid(rails[k]))
        style = STYLES[self.run["style"]]
        pcf = lambda mc: 62.4 * style["g"] / (1 + style["g"] * 0.009 * mc) * (1 + mc / 100)
        width = r1 - r0
        widths = self.pickets(width, style)
        nailers = (len(rails)) * width * c * style["rail"][0] * style["rail"][1] / 1728
        boards = sum(widths) * tall * style["board"][1] / 1728
        pins = self.pins()
        bits = 3 * len(rails) * math.pi / 4 * 0.375**2 * (size + style["rail"][1] + 0.5) * 490 / 1728 * 4 / 3
        lumps = []  # weight, r, n, z
        for name, lb in self.lb.items():
            lumps.append((lb, places[name][0], 0.0, places[name][1]))
        half = (r0 + r1) / 2
        front = size / 2
        out = 1 if self.run.get("finishedFace", "out") == "out" else -1
        middle = self.bottom(half) + tall / 2
        for rail in rails:
            lumps.append((nailers * pcf(28) / len(rails), half, out * (front + style["rail"][1] / 2), rail(half)))
        lumps.append((boards * pcf(28), half, out * (front + style["rail"][1] + style["board"][1] / 2), middle))
        for z in pins:
            lumps.append((hinge["lb"], 0.0, 0.0, z))
        latch_z = length(gate["latch"]["height"]) + self.grade(latch_face) - self.pin_z
        lumps.append((LATCHES[gate["latch"]["model"]]["lb"], r1, 0.0, latch_z))
        bits_n = out * (front + style["rail"][1] / 2) / 2
        lumps.append((bits, half, bits_n, middle))
        lumps = np.array(lumps)
        self.weight = lumps[:, 0].sum()
        self.cg = (lumps[:, 0:1] * lumps[:, 1:]).sum(axis=0) / self.weight
        self.nailer_lb, self.board_lb, self.bits = nailers * pcf(28), boards * pcf(28), bits
        self.wood_n = out * (front + style["rail"][1] / 2), out * (front + style["rail"][1] + style["board"][1] / 2)
        self.latch_z, self.bits_n = latch_z, bits_n
        self.put("leaf.weightLb", self.weight)
        self.put("leaf.weightDryLb", self.weight - (nailers + boards) * (pcf(28) - pcf(9)))
        for axis, value in zip("rnz", self.cg):
            self.put("leaf.centreOfGravity.%sIn" % axis, value)

    def pickets(self, width, style):
        board = style["board"][0]
        for n in range(int((width + style["gaps"][1]) // (board + style["gaps"][1])), int(width // board) + 2):
            if n > 1:
                gap = (width - n * board) / (n - 1)
                if style["gaps"][0] <= gap <= style["gaps"][1]:
                    return [board] * n
        n = int(math.ceil((width + style["gap"]) / (board + style["gap"])))
        rip = (width - (n - 2) * board - (n - 1) * style["gap"]) / 2
        return [rip] + [board] * (n - 2) + [rip]

    def pins(self):
        h = self.gate["hinges"]
        low = self.bottom(self.r0) + length(h["fromBottom"])
        high = self.bottom(self.r0) + self.tall - length(h["fromTop"])
        n = int(h.get("count", 2))
        return [low + (high - low) * i / (n - 1) for i in range(n)]

    # ---- swing
    def triangles(self):
        pin = self.pin
        reach = 2 * self.r1
        ids = [i for i in self.plan if np.hypot(*(self.plan[i] - pin)) <= reach + 1e-9]
        run = [i for i in self.profile_ids if i in ids]
        p = {i: self.plan[i] for i in ids}
        height = dict(self.z)
        for k, side in (("S9001", -1), ("S9002", 1)):  # where the profile leaves the circle
            s = self.pin_s + side * math.sqrt(reach**2 - self.pin_e**2)
            if self.profile[0][0] < s < self.legs[0] and s < self.profile[0][-1]:
                p[k], height[k] = self.at(s, 0), self.grade(s)
                ids.append(k)
                run = [k] + run if side < 0 else run + [k]
        chain = list(zip(run, run[1:]))
        cross = lambda o, u, v: (u[0] - o[0]) * (v[1] - o[1]) - (u[1] - o[1]) * (v[0] - o[0])

        def meets(s, t, u, v):
            d1, d2, d3, d4 = cross(s, t, u), cross(s, t, v), cross(u, v, s), cross(u, v, t)
            return d1 * d2 < -1e-9 and d3 * d4 < -1e-9

        found, ties = [], []
        for tri in itertools.combinations(ids, 3):
            x, y, w = (p[i] for i in tri)
            area = cross(x, y, w)
            if abs(area) < 1e-6:
                continue
            if area < 0:
                y, w = w, y
            if any(meets(p[e], p[f], p[c], p[d]) for e, f in itertools.combinations(tri, 2) for c, d in chain):
                continue
            inside = lambda q: min(cross(x, y, q), cross(y, w, q), cross(w, x, q)) > 1e-9
            if any(inside(p[i]) for i in ids if i not in tri):
                continue
            on_edge = any(abs(cross(p[e], p[f], p[i])) < 1e-9 and np.dot(p[i] - p[e], p[i] - p[f]) < 0
                          for e, f in itertools.combinations(tri, 2) for i in ids if i not in tri)
            if on_edge:
                continue
            centre = (x + y + w) / 3
            bad = tie = False
            for i in ids:
                if i in tri:
                    continue
                rows = [[*(k - p[i]), np.dot(k - p[i], k - p[i])] for k in (x, y, w)]
                det = np.linalg.det(np.array(rows)) / max(1.0, area) ** 2
                if any(meets(p[i], centre, p[c], p[d]) for c, d in chain):
                    continue
                if det > 1e-9:
                    bad = True
                elif det > -1e-9:
                    tie = True
            if not bad:
                (ties if tie else found).append(tri)
        if ties:
            number = lambda i: int(re.sub(r"\D", "", i))
            ties.sort(key=lambda t: (min(map(number, t)), sorted(map(number, t))))

            def apart(t, u):
                """Whether two triangles share no interior: some edge line of one keeps the other beyond it."""
                for s, o in ((t, u), (u, t)):
                    for e, f in itertools.combinations(s, 2):
                        k = next(i for i in s if i not in (e, f))
                        side = np.sign(cross(p[e], p[f], p[k]))
                        if all(side * cross(p[e], p[f], p[i]) <= 1e-9 for i in o):
                            return True
                return False

            for t in ties:
                if all(apart(t, u) for u in found):
                    found.append(t)
        planes = []
        for tri in found:
            m = np.array([[*p[i], 1] for i in tri])
            planes.append((np.array([p[i] for i in tri]), np.linalg.solve(m, [height[i] for i in tri])))
        self.tris = planes

    def ground(self, q):
        best = None
        for corners, plane in self.tris:
            e = [(corners[(i + 1) % 3] - corners[i], q - corners[i]) for i in range(3)]
            c = [u[0] * v[1] - u[1] * v[0] for u, v in e]
            if all(v >= -1e-7 for v in c) or all(v <= 1e-7 for v in c):
                far = 0.0
            else:
                far = min(np.hypot(*(v - u * min(1, max(0, np.dot(u, v) / np.dot(u, u))))) for u, v in e)
            if best is None or far < best[0]:
                best = (far, float(plane @ [*q, 1]))
                if far == 0.0:
                    break
        return best[1]

    def along_ray(self, q, way):
        """Least clearance over the leaf's bottom edge at an angle: ends, and where the edge passes over a side of a triangle."""
        u = np.array([self.dir * math.cos(q), way * math.sin(q)])
        v = np.array([-self.dir * math.sin(q), way * math.cos(q)])
        pin = self.pin - self.pin_e * v  # where the leaf's plane passes the pin
        rs = {self.r0, self.r1}
        for corners, _ in self.tris:
            for i in range(3):
                s, t = corners[i], corners[(i + 1) % 3]
                m = np.array([u, s - t]).T
                if abs(np.linalg.det(m)) < 1e-12:
                    continue
                r, k = np.linalg.solve(m, s - pin)
                if -1e-9 <= k <= 1 + 1e-9 and self.r0 < r < self.r1:
                    rs.add(float(r))
        self.ray = [(self.pin_z + self.bottom(r) - self.ground(pin + r * u), r) for r in rs]
        return min(self.ray)

    def swing(self):
        name = "swing.%s-%s." % (self.gate["hinge"], self.gate["swing"])
        self.triangles()
        way = self.way
        opens = math.radians(unit(self.gate["opens"]))
        qs = np.linspace(0, math.pi, 361)
        c = [self.along_ray(q, way)[0] for q in qs]
        inside = [(v, q) for v, q in zip(c, qs) if q <= opens + 1e-9]
        _, near = min(inside)
        lo, hi = max(0, near - qs[1]), min(opens, near + qs[1])
        for _ in range(60):
            x, y = lo + (hi - lo) * 0.382, lo + (hi - lo) * 0.618
            if self.along_ray(x, way)[0] <= self.along_ray(y, way)[0]:
                hi = y
            else:
                lo = x
        q = min([lo, hi, near, 0.0, opens], key=lambda k: self.along_ray(k, way)[0])
        least, r = self.along_ray(q, way)
        self.put(name + "minClearanceIn", least)
        if len([v for v in inside if v[0] < least + 1e-4]) <= 2:
            if all(abs(s - r) < 0.01 for c0, s in self.ray if c0 < least + 1e-4):  # not level with the ground over a stretch
                self.put(name + "atRadiusIn", r)
            self.put(name + "atAngleDeg", math.degrees(q))
        end = math.pi
        for i in range(len(qs)):
            if c[i] < 0:
                lo, hi = qs[i - 1], qs[i]
                for _ in range(60):
                    mid = (lo + hi) / 2
                    if self.along_ray(mid, way)[0] < 0:
                        hi = mid
                    else:
                        lo = mid
                end = lo
                break
        self.put(name + "maxAngleDeg", math.degrees(end))

    # ---- frame: leaf, hinges, post, footing
    def soil(self, which):
        soil = self.data["site"]["soil"]
        table = SAND if soil["kind"] == "sand" else CLAY
        names = list(table)
        i = names.index(soil["state"])
        if which == "likely":
            value = table[names[i]]
        elif which == "soft":
            value = table[names[i - 1]] if i else table[names[0]] / 2
        else:
            value = table[names[i + 1]] if i < 2 else table[names[2]] * 2
        loose = length(soil.get("looseTop", '0"'))
        deep = length(self.build["depth"]) - loose
        if soil["kind"] == "sand":
            return value * np.array([[deep**2 / 2, -deep**3 / 3], [-deep**3 / 3, deep**4 / 4]])
        return 67 * value / 144 * np.array([[deep, -deep**2 / 2], [-deep**2 / 2, deep**3 / 3]])

    def frame(self, which="likely", person=0.0):
        hinge = HINGES[self.gate["hinges"]["model"]]
        tube, post = SECTIONS[self.build["frame"]], SECTIONS[self.build["hingePost"]]
        axis = -(post[0] / 2 + self.pin_off)
        nodes, loads = [], {}
        parts = []  # (i, j, section or None for rigid, group)

        def node(r, z, new=False):
            if not new:
                for i, (x, y) in enumerate(nodes):
                    if abs(x - r) < 1e-6 and abs(y - z) < 1e-6:
                        return i
            nodes.append((r, z))
            return len(nodes) - 1

        def push(i, down, n=0.0):
            f = loads.setdefault(i, np.zeros(6))
            f[2] -= down
            f[3] -= down * n  # a weight forward of the plane turns the leaf's foot in: moment about r

        def line(points, section, group, per_in=0.0, extra=(), steps=8):
            """A straight member through points, cut into short beams, its weight lumped at their ends."""
            cut = [points[0]]
            for p, q in zip(points, points[1:]):
                cut += [tuple(np.array(p) + (np.array(q) - p) * k / steps) for k in range(1, steps + 1)]
            at = [node(*p) for p in cut]
            for i, j in zip(at, at[1:]):
                parts.append((i, j, section, group))
                long = math.dist(nodes[i], nodes[j])
                for per, n in [(per_in, 0.0), *extra]:
                    push(i, per * long / 2, n)
                    push(j, per * long / 2, n)
            return at

        a, b, rails = self.a, self.b, self.rails
        pins = self.pins()
        per_ft = tube[2] / 12
        mids = rails[1:-1]
        hang = sorted({rails[0](a), rails[-1](a), *pins, *(m(a) for m in mids)})
        # weights are cut lengths; the model's centrelines differ a little, so spread the true weight
        share = lambda name, model: self.lb[name] / model
        line([(a, z) for z in hang], tube, "leaf", share("m1", hang[-1] - hang[0]))
        far = sorted({rails[0](b), rails[-1](b), *(m(b) for m in mids)} | {self.latch_z})
        line([(b, z) for z in far], tube, "leaf", share("m2", far[-1] - far[0]))
        c = math.hypot(1, self.m)
        wide = (b - a) * c
        for k, rail in enumerate(rails):
            name = "m%d" % (3 + k)
            extra = [(self.nailer_lb / len(rails) / wide, self.wood_n[0]), (self.board_lb / len(rails) / wide, self.wood_n[1]),
                     (self.bits / len(rails) / wide, self.bits_n)]
            line([(a, rail(a)), (b, rail(b))], tube, "leaf", share(name, wide), extra, 16)
        # brace, joint to joint
        name = "m%d" % (5 + len(mids))
        ends = [(a, rails[0](a)), (b, rails[1](b))]
        line(ends, tube, "leaf", share(name, math.dist(*ends)), (), 8)
        # free corner and latch edge on rigid arms
        corner = node(self.r1, self.bottom(self.r1), True)
        parts.append((node(b, rails[0](b)), corner, None, "leaf"))
        edge = node(self.r1, self.latch_z, True)
        parts.append((node(b, self.latch_z), edge, None, "leaf"))
        push(edge, LATCHES[self.gate["latch"]["model"]]["lb"])
        high = node(self.r1, rails[-1](b), True)
        parts.append((node(b, rails[-1](b)), high, None, "leaf"))
        push(high, person)
        posts = line([(axis, 0.0), *[(axis, z) for z in pins]], post, "post")
        links = []
        weight_on = int(self.gate["hinges"].get("weightOn", 1)) - 1
        for k, z in enumerate(pins):
            on_leaf, on_post = node(0.0, z, True), node(0.0, z, True)
            parts.append((node(a, z), on_leaf, None, "leaf"))
            parts.append((node(axis, z), on_post, None, "post"))
            push(on_leaf, hinge["lb"])
            links.append((on_leaf, on_post, k == weight_on))
        n = 6 * len(nodes)
        big = np.zeros((n, n))
        pieces = []

        def add(dofs, k, group):
            big[np.ix_(dofs, dofs)] += k
            pieces.append((dofs, k, group))

        for i, j, section, group in parts:
            add([*range(6 * i, 6 * i + 6), *range(6 * j, 6 * j + 6)], self.beam(nodes[i], nodes[j], section), group)
        for i, j, holds in links:
            at_pin = np.zeros((3, 12))  # give between the two halves of the hinge at its pin, which stands off by pin_n
            for first, sign in ((0, 1), (6, -1)):
                at_pin[:, first:first + 3] = sign * np.eye(3)
                at_pin[0, first + 5] = -sign * self.pin_n
                at_pin[2, first + 3] = sign * self.pin_n
            stiff = np.diag([hinge["k"], hinge["k"], 1e9 if holds else 0.0])
            add([*range(6 * i, 6 * i + 6), *range(6 * j, 6 * j + 6)], at_pin.T @ stiff @ at_pin, "hinge")
        foot = 6 * posts[0]
        soil = self.soil(which)
        # u along r with the turn about n (+ about n lowers +r: x = z ny): a foot leaning to +r has the turn ry > 0
        flip = np.array([[1, 0], [0, 1]])
        add([foot, foot + 4], flip @ soil @ flip, "footing")
        flip = np.diag([1, -1])
        add([foot + 1, foot + 3], flip @ soil @ flip, "footing")
        for d in (2, 5):
            big[foot + d, foot + d] += 1e10
        f = np.zeros(n)
        for i, load in loads.items():
            f[6 * i:6 * i + 6] += load
        v = np.zeros(n)
        v[6 * corner + 2] = -1
        u, w = np.linalg.solve(big, np.array([f, v]).T).T
        causes = {}
        for dofs, k, group in pieces:
            causes[group] = causes.get(group, 0.0) + float(w[dofs] @ k @ u[dofs])
        forces = []
        for i, j, holds in links:
            off = lambda d: u[6 * d:6 * d + 3] + np.cross(u[6 * d + 3:6 * d + 6], [0.0, self.pin_n, 0.0])
            give = off(i) - off(j)
            forces.append((hinge["k"] * give[0], hinge["k"] * give[1], -(1e9 if holds else 0.0) * give[2]))
        return causes, float(v @ u), forces

    @staticmethod
    def beam(p, q, section):
        """12 x 12 stiffness of a beam in the r, n, z axes, lying in the plane n = 0."""
        dx, dz = q[0] - p[0], q[1] - p[1]
        long = math.hypot(dx, dz)
        area, inertia, polar = (section[3], section[4], section[7]) if section else (200.0, 2000.0, 2000.0)
        ei, ea, gj = E * inertia, E * area, G * polar
        k = np.zeros((12, 12))
        for s, value in ((0, ea / long), (3, gj / long)):
            k[s, s] = k[s + 6, s + 6] = value
            k[s, s + 6] = k[s + 6, s] = -value
        for d, t, sign in ((1, 5, 1), (2, 4, -1)):
            a, b, c, e = 12 * ei / long**3, 6 * ei / long**2, 4 * ei / long, 2 * ei / long
            rows = [d, t, d + 6, t + 6]
            k[np.ix_(rows, rows)] += np.array([[a, sign * b, -a, sign * b], [sign * b, c, -sign * b, e],
                                               [-a, -sign * b, a, -sign * b], [sign * b, e, -sign * b, c]])
        x = np.array([dx, 0, dz]) / long
        y = np.array([0.0, 1.0, 0.0])
        turn = np.array([x, y, np.cross(x, y)])
        t = np.kron(np.eye(4), turn)
        return t.T @ k @ t

    def sag(self):
        pins = self.pins()
        hinge = HINGES[self.gate["hinges"]["model"]]
        slack = hinge["slack"] * 2 * self.r1 / (pins[-1] - pins[0])
        causes, total, forces = self.frame()
        self.put("sag.totalIn", total + slack)
        self.put("sag.leafIn", causes["leaf"])
        self.put("sag.hingeFlexIn", causes["hinge"])
        self.put("sag.hingeSlackIn", slack)
        self.put("sag.postIn", causes["post"])
        self.put("sag.footingIn", causes["footing"])
        for which in ("soft", "likely", "stiff"):
            self.put("sag.%sIn" % which, self.frame(which)[1] + slack)
        person = unit(self.gate["loads"]["person"])
        arm = SECTIONS[self.build["hingePost"]][0] / 2 + self.pin_off
        for case, live in (("D", 0.0), ("D+L", person)):
            _, _, forces = self.frame("likely", live)
            for k, (h, n, down) in enumerate(forces):
                self.put("hinge%d.%s.none.horizontalLb" % (k + 1, case), h)
                self.put("hinge%d.%s.none.acrossLb" % (k + 1, case), n)
                self.put("hinge%d.%s.none.verticalLb" % (k + 1, case), down)
            self.put("hingePost.%s.none.momentAlongLbIn" % case, self.weight * (self.cg[0] + arm) + live * (self.r1 + arm))
            self.put("hingePost.%s.none.momentAcrossLbIn" % case, self.weight * self.cg[1])

    # ---- wind on the fence
    def q(self):
        site = self.data["site"]["wind"]
        alpha, zg = EXPOSURE[site["exposure"]]
        return 0.00256 * 2.01 * (15 / zg) ** (2 / alpha) * 0.85 * unit(site["speed"]) ** 2

    def cases(self, long, surface, top, around):
        """Cases A and C of a straight piece with a return corner at its far end (0: free): lists of (from, to, psf), strength level."""
        ratio, bs = surface / top, long / surface
        cf = [np.interp(bs, CF_BS, CF_AB[y]) for y in (0.9, 1.0)]
        found = [[(0.0, long, self.q() * 0.85 * float(np.interp(ratio, [0.9, 1.0], cf)))]]
        if bs >= 2:
            low = min(10, int(math.floor(bs)))
            up, t = min(10, low + 1), bs - math.floor(bs)
            strips = []
            for k in range(max(len(CF_C[low]), len(CF_C[up]))):
                both = [CF_C[row][k] for row in (low, up) if k < len(CF_C[row])]
                strips.append((1 - t) * both[0] + t * both[-1])
            less = 1.8 - ratio if ratio > 0.8 else 1.0
            for corner in (False, True):
                case = []
                for k, c in enumerate(strips):
                    a, b = k * surface, long if k == len(strips) - 1 else min(long, (k + 1) * surface)
                    if corner:
                        a, b = long - b, long - a
                        if k == 0 and bs >= 5 and around / surface >= 0.3:
                            c *= np.interp(around / surface, [0.3, 1, 2], [0.9, 0.75, 0.6])
                    case.append((a, b, self.q() * 0.85 * c * less))
                found.append(case)
        raised = []
        for case in found:
            mean = sum((b - a) * p for a, b, p in case) / long
            raised.append([(a, b, p * max(1.0, 16 / mean)) for a, b, p in case])
        return raised

    def upon(self, pieces, states):
        """Force and its height over the ground, ASD, on pieces (from, to, gap): of one gap they are one stretch, of two each counts with its worst."""
        surface = length(self.run["infill"])
        if len({gap for _, _, gap in pieces}) == 1:
            pieces = [(pieces[0][0], pieces[-1][1], pieces[0][2])]
        force = moment = 0.0
        for lo, hi, gap in pieces:
            top, most = surface + gap, 0.0
            for start, end, turn in states:
                for case in self.cases(end - start, surface, top, turn):
                    most = max(most, sum(max(0.0, min(hi, start + b) - max(lo, start + a)) * psf for a, b, psf in case))
            force += 0.6 * most * surface / 144
            moment += 0.6 * most * surface / 144 * (gap + surface / 2 + (0.05 * top if surface >= top else 0.0))
        return force, moment / force

    def wind(self):
        leg, around = self.legs[0], self.legs[1]
        face, clear = length(self.gate["station"]), length(self.gate["opening"])
        states = [(0.0, leg, around), (0.0, face, 0.0), (face + clear, leg, around)]
        for i, p in enumerate(self.post[:-1]):
            if p["role"] not in ("end", "line") or p["s"] > leg:
                continue
            before = [] if i == 0 else [((self.post[i - 1]["s"] + p["s"]) / 2, p["s"], p["before"])]
            force, arm = self.upon(before + [(p["s"], (self.post[i + 1]["s"] + p["s"]) / 2, p["after"])], states)
            for way, sign in (("wind-in", -1), ("wind-out", 1)):
                at = "post.%s.D+0.6W.fence.%s." % (p["id"], way)
                self.put(at + "acrossLb", sign * force)
                self.put(at + "momentAcrossLbIn", sign * force * arm)
            p["force"], p["arm"] = force, arm

    def shut_leaf(self):
        """Wind on the closed leaf: the stretch's pressure over its face, carried by two hinges and the latch, which statics alone shares out."""
        surface, gap = length(self.run["infill"]), length(self.run["bottomGap"])
        top, leg = surface + gap, self.legs[0]
        face, clear = length(self.gate["station"]), length(self.gate["opening"])
        mid = self.pin_s + self.dir * (self.r0 + self.r1) / 2
        ends = (mid - (self.r1 - self.r0) / 2, mid + (self.r1 - self.r0) / 2)
        share = lambda case, start, lo, hi: sum(max(0.0, min(hi, start + b) - max(lo, start + a)) * psf for a, b, psf in case)
        most = max(share(case, 0.0, *ends) for case in self.cases(leg, surface, top, self.legs[1]))
        force = 0.6 * most * self.tall / 144
        r, z = (self.r0 + self.r1) / 2, gap + surface / 2 + self.m * (self.r0 + self.r1) / 2
        if self.m == 0:
            z = gap + surface / 2
        latch = force * r / self.b
        low, high = self.pins()[0], self.pins()[-1]
        upper = (force * z - latch * self.latch_z - (force - latch) * low) / (high - low)
        lower = force - latch - upper
        half = {}
        states = [(0.0, leg, self.legs[1]), (0.0, face, 0.0), (face + clear, leg, self.legs[1])]
        for i, p in enumerate(self.post):
            if p["role"] != "gate":
                continue
            first = p["s"] < face
            lo, hi = ((self.post[i - 1]["s"] + p["s"]) / 2, p["s"]) if first else (p["s"], (self.post[i + 1]["s"] + p["s"]) / 2)
            half[first == (self.dir == 1)] = (*self.upon([(lo, hi, p["before" if first else "after"])], states), p)
        fence, arm, _ = half[True]
        dead = self.weight * self.cg[1]
        turned = self.weight * (self.cg[1] - self.pin_n)
        for way, sign in (("wind-in", -1), ("wind-out", 1)):
            if len(self.pins()) == 2:
                self.put("hinge1.D+0.6W.%s.acrossLb" % way, sign * lower - turned / (high - low))
                self.put("hinge2.D+0.6W.%s.acrossLb" % way, sign * upper + turned / (high - low))
            self.put("hingePost.D+0.6W.%s.acrossLb" % way, sign * (lower + upper + fence))
            if len(self.pins()) == 2:
                self.put("hingePost.D+0.6W.%s.momentAcrossLbIn" % way, sign * (lower * low + upper * high + fence * arm) + dead)
            fence2, arm2, post = half[False]
            up = self.latch_z + self.pin_z - self.grade(post["s"])
            self.put("latchPost.D+0.6W.%s.acrossLb" % way, sign * (latch + fence2))
            moment = latch * up + fence2 * arm2
            self.put("latchPost.D+0.6W.%s.momentAcrossLbIn" % way, sign * moment)
        loose = length(self.data["site"]["soil"].get("looseTop", '0"'))
        push = latch + fence2
        deep = self.pole(push, (moment / push + loose) / 12, LATERAL[self.data["site"]["soil"]["class"]], length(self.build["hole"]) / 12)
        self.put("post.%s.depth.lateralIn" % post["id"], 12 * deep + loose)

    @staticmethod
    def pole(p, h, s, b):
        """Nonconstrained pole, ft (IBC 1807.3.2.1), by bisection."""
        need = lambda d: 0.5 * (2.34 * p / (s * min(d, 12) / 3 * b)) * (1 + math.sqrt(1 + 4.36 * h / (2.34 * p / (s * min(d, 12) / 3 * b))))
        lo, hi = 0.01, 60.0
        for _ in range(200):
            mid = (lo + hi) / 2
            if need(mid) > mid:
                lo = mid
            else:
                hi = mid
        return hi

    def footings(self):
        soil = self.data["site"]["soil"]
        loose = length(soil.get("looseTop", '0"'))
        s = LATERAL[soil["class"]]
        dia, deep = length(self.fence["hole"]), length(self.fence["depth"])
        area = math.pi / 4 * SECTIONS[self.fence["post"]][0] ** 2
        for p in self.post:
            if p["role"] == "wall":
                continue  # anchored along the wall, nothing is dug
            if p["role"] == "gate":
                d, t = length(self.build["hole"]), length(self.build["depth"])
                first = p["s"] < length(self.gate["station"])
                which = "hingePost" if first == (self.gate["hinge"] == "left") else "latchPost"
                o = math.pi / 4 * SECTIONS[self.build[which]][0] ** 2
            else:
                d, t, o = dia, deep, area
            self.put("post.%s.concreteFt3" % p["id"], (math.pi / 4 * d**2 - o) * t / 1728)
            if "force" in p:
                self.put("post.%s.depth.lateralIn" % p["id"], 12 * self.pole(p["force"], (p["arm"] + loose) / 12, 2 * s, dia / 12) + loose)
                zx, fy = SECTIONS[self.fence["post"]][6], SECTIONS[self.fence["post"]][1]
                self.put("post.%s.bending" % p["id"], p["force"] * p["arm"] / (fy * 1000 * zx / OMEGA) + self.pressed(p) / 2)

    def pressed(self, post):
        """Share of the compression a line post may carry (AISC 360 E3, K = 2.1) that half of each bay and its own weight take."""
        style, (_, fy, per_ft, area, inertia, *_) = STYLES[self.run["style"]], SECTIONS[self.fence["post"]]
        stand = length(self.run["infill"]) + length(self.run["bottomGap"])
        half = sum(abs(q["s"] - post["s"]) / 2 for q in self.post if abs(int(q["id"][1:]) - int(post["id"][1:])) == 1)
        boards = half / (style["board"][0] + style["gap"]) * style["board"][0] * style["board"][1] * length(self.run["infill"])
        rails = 3 * half * style["rail"][0] * style["rail"][1]
        pcf = 62.4 * style["g"] / (1 + style["g"] * 0.009 * 28) * 1.28
        weight = (boards + rails) / 1728 * pcf + per_ft * stand / 12
        fe = math.pi**2 * E / (2.1 * stand / math.sqrt(inertia / area)) ** 2
        fcr = 0.658 ** (fy * 1000 / fe) * fy * 1000 if fy * 1000 / fe <= 2.25 else 0.877 * fe
        return weight / (fcr * area / OMEGA)

    def all(self, taken):
        self.posts()
        self.bays(taken["knots"])
        self.leaf(taken)
        self.swing()
        self.sag()
        self.wind()
        self.shut_leaf()
        self.footings()
        return self.out


def main(folder):
    with open(os.path.join(folder, "taken.csv")) as rows:
        taken = list(csv.reader(row for row in rows if not row.startswith("#")))
    print("# Whole jobs by a second program; recipe in reference/recipes/second_program.py. Units are in the names.")
    print("job,name,value")
    for name in sorted(n for n in os.listdir(folder) if n.endswith(".json")):
        with open(os.path.join(folder, name)) as text:
            job = Job(json.load(text))
        knots = {row[1]: tuple(map(float, row[2:5])) for row in taken if row[0] == name}
        for key, value in job.all(dict(knots=knots)):
            print("%s,%s,%.9g" % (name, key, value))


if __name__ == "__main__":
    main(sys.argv[1])
