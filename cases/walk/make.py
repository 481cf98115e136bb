"""Makes spots.csv and expected.csv: sites with palms at fixed random places, and the shortest walk that a general
constraint solver finds.

    python3 -m venv somewhere && somewhere/bin/pip install ortools==9.15.6755
    somewhere/bin/python make.py [seconds per case, 240 if not said]

The model (CP-SAT): one circuit over the palms and one more node that stands for the gate and for the end. An arc runs
only within a class of health or from a class to the next one that has palms, so every circuit keeps the classes in
order. An arc from the gate costs the way from there (nothing where there is no gate), an arc to the end costs nothing.
Lengths are great-circle distances on a sphere of 6,371.0088 km, in whole millimetres. `bound_m` is what the solver
proved no walk to be shorter than; with the status OPTIMAL it is the walk itself.
"""

import csv
import math
import random
import sys
import time

import ortools
from ortools.sat.python import cp_model

RADIUS_M = 6_371_008.8
CLASSES = ["healthy", "unknown", "suspect", "confirmed"]
LAT, LON = 27.0, -82.0  # a corner in the open sea; east and north of it in metres below


def place(east, north):
    lat = LAT + math.degrees(north / RADIUS_M)
    lon = LON + math.degrees(east / (RADIUS_M * math.cos(math.radians(LAT))))
    return round(lat, 7), round(lon, 7)


def metres(a, b):
    (lat1, lon1), (lat2, lon2) = [(math.radians(x), math.radians(y)) for x, y in (a, b)]
    h = math.sin((lat2 - lat1) / 2) ** 2
    h += math.cos(lat1) * math.cos(lat2) * math.sin((lon2 - lon1) / 2) ** 2
    return 2 * RADIUS_M * math.atan2(math.sqrt(h), math.sqrt(1 - h))


def anywhere(rng, n):
    return [place(rng.uniform(0, 220), rng.uniform(0, 160)) for _ in range(n)]


def groups(rng, n):
    middles = [(rng.uniform(20, 300), rng.uniform(20, 200)) for _ in range(8)]
    out = []
    for k in range(n):
        x, y = middles[k % len(middles)]
        out.append(place(rng.gauss(x, 9), rng.gauss(y, 9)))
    return out


def avenues(rng, n):
    out = []
    for k in range(n):
        street, tree = divmod(k, 20)
        side = tree % 2
        out.append(place(8 * (tree // 2) + rng.gauss(0, 0.4), 45 * street + 7 * side + rng.gauss(0, 0.4)))
    rng.shuffle(out)
    return out


def health(rng, n, shares):
    words = [word for word, share in zip(CLASSES, shares) for _ in range(share)]
    assert len(words) == n
    rng.shuffle(words)
    return words


def cases():
    rng = random.Random(20261127)
    one = [100, 0, 0, 0]
    yield "open", None, anywhere(rng, 100), health(rng, 100, one)
    yield "gate", place(-5, 80), anywhere(rng, 100), health(rng, 100, one)
    yield "groups", place(0, 0), groups(rng, 100), health(rng, 100, one)
    yield "avenues", place(-10, -5), avenues(rng, 100), health(rng, 100, one)
    yield "few-ill", place(110, -8), anywhere(rng, 100), health(rng, 100, [82, 8, 7, 3])
    yield "many-ill", None, groups(rng, 100), health(rng, 100, [40, 30, 20, 10])
    yield "half-unknown", place(60, 170), anywhere(rng, 100), health(rng, 100, [50, 50, 0, 0])
    yield "avenues-ill", place(90, 210), avenues(rng, 100), health(rng, 100, [70, 0, 25, 5])
    for k in range(8):
        shares = [[12, 0, 0, 0], [6, 0, 4, 2], [5, 3, 2, 2], [0, 7, 5, 0]][k % 4]
        gate = place(rng.uniform(0, 220), rng.uniform(0, 160)) if k < 4 else None
        yield f"twelve-{k + 1}", gate, anywhere(rng, 12), health(rng, 12, shares)


def solve(gate, spots, words, seconds):
    n = len(spots)
    there = [c for c in CLASSES if c in words]
    rank = [there.index(w) for w in words]
    model = cp_model.CpModel()
    arcs, cost = [], []

    def arc(a, b, length):
        lit = model.new_bool_var(f"{a}_{b}")
        arcs.append((a, b, lit))
        cost.append((round(length * 1000), lit))

    for i in range(n):
        if rank[i] == 0:
            arc(n, i, metres(gate, spots[i]) if gate else 0.0)
        if rank[i] == len(there) - 1:
            arc(i, n, 0.0)
        for j in range(n):
            if i != j and rank[j] in (rank[i], rank[i] + 1):
                arc(i, j, metres(spots[i], spots[j]))
    model.add_circuit(arcs)
    model.minimize(sum(c * lit for c, lit in cost))
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = seconds
    solver.parameters.num_workers = 8
    solver.parameters.linearization_level = 2
    status = solver.solve(model)
    return solver.objective_value / 1000, solver.best_objective_bound / 1000, solver.status_name(status)


def main():
    seconds = float(sys.argv[1]) if len(sys.argv) > 1 else 240.0
    source = f"CP-SAT of ortools {ortools.__version__}, model of make.py, {seconds:.0f} s a case at most"
    with open("spots.csv", "w", newline="") as f, open("expected.csv", "w", newline="") as g:
        spots_out, expected_out = csv.writer(f, lineterminator="\n"), csv.writer(g, lineterminator="\n")
        spots_out.writerow(["case", "what", "lat", "lon"])
        expected_out.writerow(["case", "palms", "metres", "bound_m", "status", "source"])
        for name, gate, spots, words in cases():
            if gate:
                spots_out.writerow([name, "gate", *gate])
            for at, word in zip(spots, words):
                spots_out.writerow([name, word, *at])
            f.flush()
            start = time.time()
            found, bound, status = solve(gate, spots, words, seconds)
            print(name, found, bound, status, f"{time.time() - start:.1f} s", flush=True)
            expected_out.writerow([name, len(spots), f"{found:.3f}", f"{bound:.3f}", status, source])
            g.flush()


main()
