#!/usr/bin/env python3
"""A long run of the pooled forecast's model by another way and in another language: random-walk Metropolis steps over the
seven values that the caseload has in common, a grid of 61 day-to-day spreads a series, all four curves summed at every
step. It holds none of the code of the project; the model is written from its description in DEVELOPERS.md, decision 25.

    scripts/long-run.py make  > core/src/test/resources/reference/forecast/caseload.csv
    scripts/long-run.py run core/src/test/resources/reference/forecast/caseload.csv \\
        > core/src/test/resources/reference/forecast/caseload.expected.csv

Needs Python 3 with NumPy and SciPy; 4 chains of 12,000 steps take a few minutes. The build never runs it.
"""
import csv
import sys

import numpy as np
from scipy.special import logsumexp, ndtr

BASELINE, WAY, DUE = 2000.0, 1000.0, 252
CENTRE = np.array([0, np.log(0.15), 0.7, np.log(0.5), np.log(0.4), np.log(0.3)])
SPREAD = np.array([0.2, 0.7, 0.6, 0.5, 1, 0.6])
CURVES = [(0.0, 0.70), (1.0, 0.12), (2.0, 0.10), (3.5, 0.08)]
ODD, ODD_SPREAD = 0.08, 0.5
GRID = np.linspace(np.log(0.02), np.log(3), 61)
CHAINS, STEPS, BURN, THIN = 4, 12_000, 2_000, 2


def make():
    """Twelve goals up to day 126: ways N(0.75, 0.5), one that starts far from its baseline, carry-over 0.3 a week."""
    random = np.random.default_rng(20260907)
    rows = []
    for series in range(12):
        level = 0.6 if series == 11 else random.normal(0, 0.15)
        way = 0.0 if series == 11 else random.normal(0.75, 0.5)
        noise = np.exp(random.normal(np.log(0.3), 0.3))
        days = sorted(set(7 * w + int(random.integers(0, 3)) for w in range(1, 18) if random.random() < 0.75))
        carried, before = 0.0, None
        for day in days[: 5 if series % 4 == 0 else None]:
            r = 0.0 if before is None else 0.3 ** ((day - before) / 7)
            carried = r * carried + np.sqrt(1 - r * r) * noise * random.normal()
            before = day
            rows.append((series + 1, day, BASELINE + WAY * (level + way * day / DUE + carried)))
    print("series,day,value")
    for series, day, value in rows:
        print(f"{series},{day},{value:.0f}")


def height(bend, time):
    return time if bend == 0 else np.expm1(-bend * time) / np.expm1(-bend)


class Model:
    def __init__(self, path):
        by = {}
        with open(path) as lines:
            for row in csv.DictReader(lines):
                by.setdefault(int(row["series"]), []).append((int(row["day"]), float(row["value"])))
        self.series = []
        for points in by.values():
            days = np.array([day for day, _ in points])
            bent = [height(bend, days / DUE) for bend, _ in CURVES]
            scaled = np.array([(value - BASELINE) / WAY for _, value in points])
            self.series.append((days, np.column_stack([np.ones(len(days)), *bent, scaled])))

    def values(self, z):
        x = CENTRE + SPREAD * z[:6]
        return x[0], np.exp(x[1]), x[2], np.exp(x[3]), x[4], np.exp(x[5]), 0.7 * ndtr(z[6]) ** 2

    def parts(self, z):
        """For every curve, series, kind (usual, odd) and spread: log weight; mean and variance of the line at the due date."""
        level_mean, level_sd, way_mean, way_sd, noise_mean, noise_sd, carry = self.values(z)
        grams, sizes, determinants = [], [], []
        for days, columns in self.series:
            r = carry ** (np.diff(days) / 7)
            new = 1 - r * r
            white = np.concatenate([columns[:1], (columns[1:] - r[:, None] * columns[:-1]) / np.sqrt(new)[:, None]])
            grams.append(white.T @ white)
            sizes.append(len(columns))
            determinants.append(np.log(new).sum())
        gram = np.array(grams)
        curves = range(1, 1 + len(CURVES))
        shape = (len(CURVES), len(grams), 1, 1)
        aa = np.broadcast_to(gram[:, 0, 0], (len(CURVES), len(grams))).reshape(shape)
        ab = np.array([gram[:, 0, c] for c in curves]).reshape(shape)
        bb = np.array([gram[:, c, c] for c in curves]).reshape(shape)
        ay = np.broadcast_to(gram[:, 0, -1], (len(CURVES), len(grams))).reshape(shape)
        by = np.array([gram[:, c, -1] for c in curves]).reshape(shape)
        yy = np.broadcast_to(gram[:, -1, -1], (len(CURVES), len(grams))).reshape(shape)
        ae = ay - level_mean * aa - way_mean * ab
        be = by - level_mean * ab - way_mean * bb
        ee = yy - level_mean * (ay + ae) - way_mean * (by + be)
        sizes = np.array(sizes).reshape(1, -1, 1, 1)
        determinants = np.array(determinants).reshape(1, -1, 1, 1)
        share = np.array([1 - ODD, ODD]).reshape(1, 1, 2, 1)
        variance = np.array([level_sd**2, level_sd**2 + ODD_SPREAD**2]).reshape(1, 1, 2, 1)
        s2 = np.exp(2 * GRID)
        believed = -0.5 * ((GRID - noise_mean) / noise_sd) ** 2 - np.log(noise_sd * np.sqrt(2 * np.pi))
        p = 1 / variance + aa / s2
        q = ab / s2
        w = 1 / way_sd**2 + bb / s2
        det = p * w - q * q
        u, v = ae / s2, be / s2
        a, b = (w * u - q * v) / det, (p * v - q * u) / det
        logs = (np.log(share) + believed + np.log(GRID[1] - GRID[0])
                - 0.5 * (sizes * (np.log(2 * np.pi) + 2 * GRID) + determinants
                         + np.log(det * variance * way_sd**2) + ee / s2 - u * a - v * b))
        return logs, level_mean + a + way_mean + b, (w + p - 2 * q) / det

    def log_density(self, z):
        parts = self.parts(z)
        curves = np.log([w for _, w in CURVES]) + logsumexp(parts[0], axis=(2, 3)).sum(axis=1)
        return logsumexp(curves) - 0.5 * z @ z, curves, parts


def run(path):
    model = Model(path)
    n = len(model.series)
    chance, draws, by_chain = np.zeros(n), [], []
    for chain in range(CHAINS):
        random = np.random.default_rng(100 + chain)
        z = 0.5 * random.normal(size=7)
        here = model.log_density(z)
        root, seen, taken, own = 0.4 * np.eye(7), [], 0, np.zeros(n)
        for step in range(STEPS):
            if step in (400, 800, 1400, BURN):
                root = 2.38 / np.sqrt(7) * np.linalg.cholesky(np.cov(np.array(seen[len(seen) // 3:]).T) + 1e-4 * np.eye(7))
            other = z + root @ random.normal(size=7)
            there = model.log_density(other)
            if np.log(random.random()) < there[0] - here[0]:
                z, here = other, there
            seen.append(z)
            if step >= BURN and step % THIN == 0:
                curve = np.exp(here[1] - logsumexp(here[1]))
                logs, means, variances = here[2]
                shares = np.exp(logs - logsumexp(logs, axis=(2, 3), keepdims=True)) * curve[:, None, None, None]
                own += (shares * ndtr((means - 1) / np.sqrt(variances))).sum(axis=(0, 2, 3))
                flat = shares.transpose(1, 0, 2, 3).reshape(n, -1)
                pick = (flat.cumsum(axis=1) < random.random(n)[:, None] * flat.sum(axis=1)[:, None]).sum(axis=1)
                m = means.transpose(1, 0, 2, 3).reshape(n, -1)[np.arange(n), pick]
                v = variances.transpose(1, 0, 2, 3).reshape(n, -1)[np.arange(n), pick]
                draws.append(m + np.sqrt(v) * random.normal(size=n))
                taken += 1
        by_chain.append(own / taken)
    chance = np.mean(by_chain, axis=0)
    quantiles = BASELINE + WAY * np.quantile(np.array(draws), [0.1, 0.5, 0.9], axis=0)
    print("series,chance_line,chance_error,low80,middle,high80")
    for i in range(n):
        error = np.std([c[i] for c in by_chain], ddof=1) / np.sqrt(CHAINS)
        print(f"{i + 1},{chance[i]:.4f},{error:.4f}," + ",".join(f"{q:.0f}" for q in quantiles[:, i]))


if sys.argv[1:2] == ["make"]:
    make()
elif sys.argv[1:2] == ["run"]:
    run(sys.argv[2])
else:
    print(__doc__)
