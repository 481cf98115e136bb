#!/usr/bin/env python3
"""The planner of day rounds beside a general solver, on the same benchmarks for the same seconds on two cores.

    cargo build --release -p spearleaf-rounds --examples
    python3 -m venv VENV && VENV/bin/pip install --only-binary :all: pyvrp
    VENV/bin/python crates/rounds/benches/beside.py EXAMPLE-PROGRAM [--seconds 30] [--seed 1] [--only NAME ...] [--csv FILE]

Both get two processes or threads and the better of their plans counts. Instances and best known values are those of
cases/vrptw. VENV lies outside the repository.
"""

import argparse
import csv
import json
import multiprocessing
import pathlib
import subprocess
import time

CASES = pathlib.Path(__file__).resolve().parents[3] / "cases" / "vrptw"


def theirs(work):
    path, seconds, seed = work
    import pyvrp
    import pyvrp.stop

    data = pyvrp.read(path, round_func="dimacs")
    result = pyvrp.solve(data, stop=pyvrp.stop.MaxRuntime(seconds), seed=seed, display=False)
    return (result.cost(), len(result.best.routes())) if result.is_feasible() else (float("inf"), 0)


def main():
    args = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    args.add_argument("program", help="the built example `vrptw`")
    args.add_argument("--seconds", type=float, default=30)
    args.add_argument("--seed", type=int, default=1)
    args.add_argument("--only", nargs="*")
    args.add_argument("--csv", help="also write the table there")
    args = args.parse_args()

    with open(CASES / "best-known.csv") as table:
        rows = [r for r in csv.DictReader(table) if not args.only or r["name"] in args.only]
    head = ["name", "best known", "ours", "routes", "gap %", "general solver", "routes", "gap %"]
    lines = []
    print(" | ".join(head), flush=True)
    for row in rows:
        path, known = CASES / f"{row['name']}.vrp", int(row["cost_tenths"])
        out = subprocess.run(
            [args.program, path, str(args.seconds), str(args.seed), "--json"], capture_output=True, text=True, check=True
        )
        ours = json.loads(out.stdout)
        assert ours["unplaced"] == 0, ours
        time.sleep(1)
        with multiprocessing.Pool(2) as pool:
            runs = [(path, args.seconds, args.seed * 1000 + k) for k in range(2)]
            their_cost, their_routes = min(pool.map(theirs, runs))
        gap = lambda cost: f"{100 * (cost / known - 1):.2f}"
        line = [row["name"], known, ours["cost"], ours["routes"], gap(ours["cost"]), their_cost, their_routes, gap(their_cost)]
        lines.append(line)
        print(" | ".join(map(str, line)), flush=True)
    if args.csv:
        with open(args.csv, "w", newline="") as out:
            csv.writer(out).writerows([head, *lines])


if __name__ == "__main__":
    main()
