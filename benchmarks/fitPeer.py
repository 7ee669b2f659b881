"""Times scipy on the campaign of sixty patches: both optima and the posterior, with the analytic slopes and with 2-point differences.

Called by fitSixtyPatches.ts: python3 fitPeer.py RUNNERS FITS; prints one line of JSON.
"""

import json
import sys
import time

runners, fits = sys.argv[1:]
sys.path.insert(0, runners)
sys.dont_write_bytecode = True

from learn_model import Lay, rescaled  # noqa: E402

given = next(case["in"] for case in json.load(open(fits, encoding="utf-8"))["cases"] if case["name"] == "sixty patches")


def run(jac, tolerance):
    lay = Lay(given)
    _, _, last, z, _, _ = rescaled(lay, lambda problem, start: problem.solve(start, tolerance, jac).x)
    last.posterior(z)
    return last.F(z), z.tolist()


def median(jac, tolerance, runs):
    run(jac, tolerance)
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        objective, z = run(jac, tolerance)
        times.append((time.perf_counter() - start) * 1000)
    return {"medianMs": sorted(times)[runs // 2], "objective": objective, "z": z}


print(json.dumps({"analytic": median("analytic", 1e-12, 15), "differences": median("2-point", 1e-12, 5)}))
