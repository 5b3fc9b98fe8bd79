"""The same work in vectorised NumPy, asked for by commands/bench over standard input.

Each request is one line of JSON, then the numbers it announces as little-endian doubles; each answer is one line of JSON
with the best processor time in milliseconds and enough of the results to hold them against ours.
"""

import csv
import io
import json
import sys
import time

import numpy as np


def best_of(rounds, work):
    best = float("inf")
    result = None
    for _ in range(rounds):
        start = time.process_time()
        result = work()
        best = min(best, time.process_time() - start)
    return best * 1000, result


def q_and_slope(x, v, tau2):
    """Q(tau2) of every row, minus its slope, with the weighted mean and the sum of weights."""
    w = 1 / (v + tau2[:, None])
    sum_w = w.sum(axis=1)
    mean = (w * x).sum(axis=1) / sum_w
    wr = w * (x - mean[:, None])
    return (wr * (x - mean[:, None])).sum(axis=1), (wr * wr).sum(axis=1), mean, sum_w


def tau2_at(x, v, target):
    """tau2 >= 0 with Q(tau2) = target, all rows at once: Newton on 1/Q, as in generalised-q.ts; settled rows drop out."""
    tau2 = np.zeros(len(x))
    rows = np.arange(len(x))
    for _ in range(200):
        q, slope, _, _ = q_and_slope(x[rows], v[rows], tau2[rows])
        step = np.where(q > target, q * (q / target - 1) / slope, 0)
        tau2[rows] += step
        rows = rows[step > 4e-16 * tau2[rows]]
        if len(rows) == 0:
            break
    return tau2


def random_effects(x, u, t, chi2):
    """Paule-Mandel, Hartung-Knapp with the factor held at 1; with chi2 quantiles the Q-profile interval of tau2 as well."""
    v = u * u
    df = x.shape[1] - 1
    q0 = q_and_slope(x, v, np.zeros(len(x)))[0]
    tau2 = tau2_at(x, v, df)
    q, _, mean, sum_w = q_and_slope(x, v, tau2)
    se = 1 / np.sqrt(sum_w)
    half = t * se * np.sqrt(np.maximum(1, q / df))
    i2 = np.maximum(0, (q0 - df) / q0)
    ends = [tau2_at(x, v, target) for target in chi2]
    return mean, half, tau2, i2, ends


def answer_random_effects(request, numbers):
    sets, each = request["sets"], request["each"]
    x = numbers[: sets * each].reshape(sets, each)
    u = numbers[sets * each :].reshape(sets, each)
    plain, _ = best_of(request["rounds"], lambda: random_effects(x, u, request["t"], []))
    ms, (mean, half, tau2, _, _) = best_of(request["rounds"], lambda: random_effects(x, u, request["t"], request["chi2"]))
    return {"plain": plain, "ms": ms, "mean": mean.tolist(), "half": half.tolist(), "tau2": tau2.tolist()}


def product(draws, seed):
    """JCGM 101: draws of a product of four inputs, mean, sd, symmetric and shortest 95 % intervals."""
    rng = np.random.default_rng(seed)
    y = rng.normal(3, 0.1, draws) * rng.normal(2, 0.1, draws) * rng.uniform(1, 2, draws) * rng.lognormal(0, 0.1, draws)
    mean, sd = y.mean(), y.std(ddof=1)
    y.sort()
    q = round(0.95 * draws)
    r = (draws - q + 1) // 2
    start = np.argmin(y[q:] - y[:-q])
    return mean, sd, [y[r - 1], y[r + q - 1]], [y[start], y[start + q]]


def answer_monte_carlo(request, _):
    ms, (mean, sd, symmetric, shortest) = best_of(request["rounds"], lambda: product(request["draws"], request["seed"]))
    return {"ms": ms, "mean": mean, "sd": sd, "symmetric": symmetric, "shortest": shortest}


def answer_csv(request, numbers):
    """What Python's own csv module needs to split the same file, and no more than that."""
    text = numbers.tobytes()[: request["bytes"]].decode("utf-8")
    ms, rows = best_of(request["rounds"], lambda: sum(1 for _ in csv.reader(io.StringIO(text))))
    return {"ms": ms, "rows": rows}


answers = {"random-effects": answer_random_effects, "monte-carlo": answer_monte_carlo, "csv": answer_csv}

print(json.dumps({"numpy": np.__version__, "python": sys.version.split()[0]}), flush=True)
for line in sys.stdin.buffer:
    asked = json.loads(line)
    data = np.frombuffer(sys.stdin.buffer.read(8 * asked.get("doubles", 0)), dtype="<f8")
    print(json.dumps(answers[asked["task"]](asked, data)), flush=True)
