#!/usr/bin/python3
"""The yardstick: what an analyst would write by hand in pandas. Reads and checks the exports, splits hours over lines (fixed
point iteration on load factors, vectorised), costs, groups, bootstraps (--boot N resamples over tickets, the split estimated
again each time), writes lines.csv, findings.csv, a workbook and (--pictures) one picture over all and one a repair type.

   peer_pandas.py SHOP OUT [--boot N] [--pictures]     Debian: python3-pandas python3-xlsxwriter python3-scipy python3-matplotlib"""
import sys, os, numpy as np, pandas as pd, time
shop, out = sys.argv[1:3]; boot = int(sys.argv[sys.argv.index("--boot") + 1]) if "--boot" in sys.argv else 0
os.makedirs(out, exist_ok=True); E = shop + "/exports/"; T0 = time.time()
tk = pd.read_csv(E + "tickets.csv", parse_dates=["opened", "promised", "closed"])
ql = pd.read_csv(E + "quoted-lines.csv", parse_dates=["quoted_on"]); tl = pd.read_csv(E + "time-log.csv", parse_dates=["work_date"])
pu = pd.read_csv(E + "parts-usage.csv", parse_dates=["used_on"]); te = pd.read_csv(E + "technicians.csv").drop_duplicates("technician", keep="last"); ov = pd.read_csv(E + "overheads.csv")
pb = pd.concat(pd.read_csv(os.path.join(shop, "price-book", f)) for f in os.listdir(shop + "/price-book"))
for d, k in ((tk, ["ticket"]), (ql, ["ticket", "line"]), (tl, ["entry"]), (pu, ["use"])): d.drop_duplicates(k, keep="last", inplace=True)
bad = ~tl.ticket.isin(tk.ticket) | (tl.hours <= 0) | (tl.hours > 24) | ~tl.technician.isin(te.technician); tl = tl[~bad]
day = tl.groupby(["technician", "work_date"]).hours.transform("sum")
ql = ql[ql.outcome.fillna("accepted") == "accepted"].merge(pb, on="repair_type").merge(tk, on="ticket").reset_index(drop=True)
lab = tl[tl.line.notna()].groupby(["ticket", "line"]).hours.sum().rename("lab").reset_index(); un = tl[tl.line.isna()].groupby("ticket").hours.sum().rename("un")
ql = ql.merge(lab, on=["ticket", "line"], how="left").merge(un, left_on="ticket", right_index=True, how="left").fillna({"lab": 0, "un": 0})
closed = (ql.status == "closed").to_numpy(); K, types = pd.factorize(ql.repair_type); G, _ = pd.factorize(ql.ticket)
q = ql.quoted_hours.to_numpy(float); L = ql.lab.to_numpy(); U = ql.un.to_numpy(); nG = G.max() + 1; nK = len(types)
def split(r, w=None, iters=60):
    for _ in range(iters):
        m = np.maximum(r[K] * q - L, .05 * r[K] * q); h = L + U * m / np.bincount(G, m, nG)[G]
        ww = closed if w is None else closed * w[G]; n = (np.bincount(K, h * ww, nK) + 5 * 1.15) / (np.bincount(K, q * ww, nK) + 5)
        if np.abs(n - r).max() < 1e-5: break
        r = n
    return r, h
r, h = split(np.full(nK, 1.15)); ql["hours"] = h
tw = tl.merge(te[["technician", "hourly_wage"]], on="technician"); tw["cost"] = tw.hours * tw.hourly_wage * 1.3; wt = tw.groupby("ticket").agg(cost=("cost", "sum"), hh=("hours", "sum"))
ql = ql.merge(wt, left_on="ticket", right_index=True, how="left"); ql["labour_cost"] = ql.cost / ql.hh * ql.hours; ql["parts_cost"] = ql.merge((pu.quantity * pu.unit_cost).groupby([pu.ticket, pu.line]).sum().rename("pc").reset_index(), on=["ticket", "line"], how="left").pc
orate = ov.amount.sum() / tl.hours.sum(); ql["overhead"] = ql.hours * orate; ql["margin"] = ql.quoted_labour - ql.labour_cost.fillna(0) - ql.overhead
f = ql[closed].groupby("repair_type").agg(lines=("hours", "size"), q=("quoted_hours", "sum"), h=("hours", "sum"), margin=("margin", "sum")); f["load"] = f.h / f.q
if boot:
    rng = np.random.default_rng(1); B = np.array([split(r, rng.poisson(1, nG).astype(float), 20)[0] for _ in range(boot)]); f["lo"], f["hi"] = np.nan, np.nan
    lo, hi = np.quantile(B, [.05, .95], axis=0); f.loc[types, "lo"] = lo; f.loc[types, "hi"] = hi
ql.to_csv(out + "/lines.csv", index=False); f.to_csv(out + "/findings.csv")
with pd.ExcelWriter(out + "/review.xlsx", engine="xlsxwriter") as x: f.to_excel(x, sheet_name="findings"); ql.head(50000).drop(columns=[c for c in ql if str(ql[c].dtype).startswith("datetime")]).to_excel(x, sheet_name="lines", index=False)
if "--pictures" in sys.argv:
    import matplotlib; matplotlib.use("Agg"); import matplotlib.pyplot as plt
    fig, ax = plt.subplots(figsize=(9, 5)); ax.barh(f.index, f.load); fig.savefig(out + "/load.png", dpi=100); plt.close(fig)
    for k, g in ql[closed].groupby("repair_type"):
        g = g.head(5000); fig, ax = plt.subplots(figsize=(9, 5)); ax.plot(g.closed, g.hours, "."); ax.plot(g.closed, g.quoted_hours); ax.set_title(k); ax.set_ylabel("bench hours"); fig.savefig(out + "/" + k + ".png", dpi=100); plt.close(fig)
print("rows", len(tl), "seconds %.2f" % (time.time() - T0))
