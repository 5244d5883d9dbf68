# pandas on the same log: session table and trends, as a script would do it. Usage: python3 peer-pandas.py JOB LOG FOLDER
# JOB is "scores" or "both". The trends go series by series through NumPy.
import os
import sys

import numpy as np
import pandas as pd

job, log, folder = sys.argv[1:4]
tries = pd.read_csv(log, usecols=["student", "date", "measure", "trial", "value", "help"])
tries["independent"] = tries["help"] == "independent"
tries = tries.sort_values(["student", "measure", "date", "trial"])
sessions = (
    tries.groupby(["student", "measure", "date"], sort=True)
    .agg(n=("value", "size"), mean=("value", "mean"), median=("value", "median"), last=("value", "last"),
         sd=("value", "std"), independent=("independent", "mean"))
    .reset_index()
)
sessions.to_csv(os.path.join(folder, "scores.csv"), index=False)
if job == "both":
    sessions["x"] = (pd.to_datetime(sessions["date"]) - pd.Timestamp("1970-01-01")).dt.days.astype(float)
    pairs = {}
    rows = []
    for key, series in sessions.groupby(["student", "measure"], sort=False):
        x, y = series["x"].to_numpy(), series["mean"].to_numpy()
        dx, dy = x - x.mean(), y - y.mean()
        slope = (dx @ dy) / (dx @ dx)
        if len(x) not in pairs:
            pairs[len(x)] = np.triu_indices(len(x), 1)
        first, second = pairs[len(x)]
        rise = y[second] - y[first]
        left = dy - slope * dx
        rows.append(key + (len(x), slope, 1 - left @ left / (dy @ dy), np.median(rise / (x[second] - x[first])), np.sign(rise).sum()))
    trends = pd.DataFrame(rows, columns=["student", "measure", "n", "slope", "r2", "robust", "s"])
    trends.to_csv(os.path.join(folder, "trends.csv"), index=False)
