#!/usr/bin/env python3
"""Makes solver-instances.csv: seeded cutting tasks and their least cost by a general whole-number solver (CBC, and GLPK where it ends in twenty seconds).

Recipe: python3 cutting_by_general_solver.py OUT.csv, with cbc and glpsol on the path. Every pattern that fits is listed and the solver chooses among them; only
tasks that both solvers, or CBC alone, prove within twenty seconds are kept. Lengths are in sixteenths of an inch, prices in cents.
"""
import random
import re
import subprocess
import sys
import tempfile

KERF, TRIM = 2, 8


def patterns(sizes, demand, room):
    found = []

    def fill(i, left, counts):
        if i == len(sizes):
            if any(counts):
                found.append(tuple(counts))
            return
        most = min(demand[i], left // (sizes[i] + KERF))
        for times in range(most if i == len(sizes) - 1 else 0, most + 1):
            fill(i + 1, left - times * (sizes[i] + KERF), counts + [times])

    fill(0, room, [])
    return found


def solve(sizes, demand, bars, which):
    names, cost, rows, limits = [], [], [[] for _ in sizes], []
    for k, (length, price, most) in enumerate(bars):
        mine = []
        for p in patterns(sizes, demand, length - TRIM - KERF + KERF):
            names.append("x%d" % len(names))
            cost.append("%d %s" % (price, names[-1]))
            mine.append(names[-1])
            for i, count in enumerate(p):
                if count:
                    rows[i].append("%d %s" % (count, names[-1]))
        if most:
            limits.append(" + ".join(mine) + " <= %d" % most)
    if len(names) > 4000:
        return None
    wrap = lambda text: re.sub(r"((?:[^+]*\+){12})", r"\1\n", text)
    text = "Minimize\n obj: " + wrap(" + ".join(cost)) + "\nSubject To\n"
    for i, row in enumerate(rows):
        text += " d%d: " % i + wrap(" + ".join(row)) + " >= %d\n" % demand[i]
    for i, row in enumerate(limits):
        text += " s%d: " % i + wrap(row) + "\n"
    text += "General\n " + "\n ".join(names) + "\nEnd\n"
    with tempfile.NamedTemporaryFile("w", suffix=".lp") as file:
        file.write(text)
        file.flush()
        if which == "cbc":
            out = subprocess.run(["cbc", file.name, "sec", "20", "solve"], capture_output=True, text=True).stdout
            if "Optimal solution found" not in out:
                return None
            return round(float(re.search(r"Objective value:\s+([\d.]+)", out).group(1)))
        out = subprocess.run(["glpsol", "--lp", file.name, "--tmlim", "20", "-o", "/dev/stdout"], capture_output=True, text=True).stdout
        if "INTEGER OPTIMAL" not in out:
            return None
        return round(float(re.search(r"Objective:\s+obj = ([\d.e+]+)", out).group(1)))


def main(out):
    lines = []
    for seed in range(1, 301):
        rng = random.Random(seed)
        kinds = rng.randint(1, 3)
        bars = []
        for feet in rng.sample([8, 10, 12, 16, 20, 21, 24], kinds):
            most = rng.choice([0, 0, 0, rng.randint(1, 4)])
            bars.append((feet * 192, feet * 190 + rng.randint(0, 400), most))
        longest = max(b[0] for b in bars)
        if all(b[2] for b in bars):
            bars[0] = (bars[0][0], bars[0][1], 0)
        whole = max(b[0] for b in bars if not b[2])
        sizes = sorted(rng.sample(range(whole // 8, whole * 3 // 5), rng.randint(3, 8)), reverse=True)
        demand = [rng.randint(1, 9) for _ in sizes]
        cbc = solve(sizes, demand, bars, "cbc")
        if cbc is None:
            continue
        glpk = solve(sizes, demand, bars, "glpk") if seed % 2 == 0 else None
        assert glpk in (None, cbc), (seed, cbc, glpk)
        by = "CBC and GLPK" if glpk else "CBC"
        lines.append("s%d,%s,%s,%d,%s" % (
            seed,
            " ".join("%d:%d:%d" % b for b in bars),
            " ".join("%d:%d" % p for p in zip(sizes, demand)),
            cbc,
            by))
        print(lines[-1], flush=True)
    with open(out, "w") as file:
        file.write("# Cutting tasks and their least cost by a general solver, made by recipes/cutting_by_general_solver.py. A second method, not a publication.\n")
        file.write("# Lengths in sixteenths of an inch, prices in cents. kerf 2, end trim 8. bars are length:price:most (0 for as many as wanted), pieces length:count.\n")
        file.write("name,bars,pieces,cents,source\n")
        file.write("\n".join(lines) + "\n")


main(sys.argv[1])
