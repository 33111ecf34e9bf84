#!/usr/bin/env python3
"""Measures whole processes on invented shops: the launcher's nights beside what an analyst would write by hand.

    measure.py --folder DIR [--sizes 1200,12000,220000,4000000] [--years N] [--repeats 5]
               [--yardsticks DIR] [--archive FILE] [--table]

Yardsticks are peer_pandas.py, peer_datatable.R and peer_duckdb.mjs, as far as they stand in their folder (for the last with
what npm installs beside it); each is called with a shop and a folder to write into. One that can't run here is told of and
left out.

Shops, single results (results.jsonl, one line a process) and the table stand in DIR. What is already in results.jsonl is not
measured again: stopped, the same command goes on where it was; another --repeats adds to what is there; another build's
results count only for the yardsticks. Programs take turns within each repetition, so that a busy minute hits all of
them. Shops of other years belong in a folder of their own. Memory is the largest resident set of the process.
"""
import argparse
import hashlib
import json
import math
import os
import shutil
import statistics
import subprocess
import sys
import tarfile
import time
from pathlib import Path

HERE = Path(__file__).resolve().parent
AS_OF = "2026-10-31"
ONCE = 1_000_000  # tickets from which one run is enough, with Java's heap bounded
PEERS_UP_TO = 220_000
CHECKED = 220_000
PEERS = {
    "pandas": ["/usr/bin/python3", "peer_pandas.py"],
    "pandas, full": ["/usr/bin/python3", "peer_pandas.py", "--boot", "2000", "--pictures"],
    "data.table": ["Rscript", "peer_datatable.R"],
    "DuckDB": ["node", "peer_duckdb.mjs"],
}


def years(tickets):
    """Returns how many years a shop of this size looks back on; 40 is the most the sample takes."""
    return min(40, max(4, tickets // 600))


def machine():
    """Returns the cores and the Java that everything runs on, in words."""
    models = [line.split(":")[1].strip() for line in open("/proc/cpuinfo") if line.startswith("model name")]
    java = Path(os.environ["JAVA_HOME"]) / "bin/java" if "JAVA_HOME" in os.environ else "java"
    told = subprocess.run([java, "-version"], capture_output=True, text=True).stderr.splitlines()
    return f"{len(os.sched_getaffinity(0))} cores ({models[0] if models else os.uname().machine}), {told[1] if len(told) > 1 else told}"


def run(command, environment=None, log=None):
    """Runs a process to its end; returns seconds of wall clock and of processor, and peak resident megabytes."""
    with open(log or os.devnull, "wb") as said:
        began = time.perf_counter()
        process = subprocess.Popen(command, stdout=said, stderr=said, env={**os.environ, **(environment or {})})
        _, status, usage = os.wait4(process.pid, 0)
        seconds = time.perf_counter() - began
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"{' '.join(map(str, command))} ended with {process.returncode}; see {log}")
    return {"seconds": seconds, "cpu": usage.ru_utime + usage.ru_stime, "megabytes": usage.ru_maxrss / 1024}


class Bench:
    def __init__(self, options):
        self.folder = Path(options.folder).resolve()
        self.repeats = options.repeats
        self.years = options.years
        self.yardsticks = Path(options.yardsticks).resolve()
        self.folder.mkdir(parents=True, exist_ok=True)
        self.build = hashlib.sha256(Path(options.archive).read_bytes()).hexdigest()[:12]
        self.launcher = self.unpacked(Path(options.archive))
        self.file = self.folder / "results.jsonl"
        self.environment = {"BENCHTRUE_CACHE": str(self.folder / "cache")}
        lines = self.file.read_text().splitlines() if self.file.exists() else []
        self.results = [json.loads(line) for line in lines]

    def unpacked(self, archive):
        """Installs a build as its reader would: unpacked into a folder of its own, here named by the archive's digest."""
        home = self.folder / f"installed-{self.build}"
        if not home.exists():
            partial = self.folder / "installed.partial"
            shutil.rmtree(partial, ignore_errors=True)
            shutil.rmtree(self.folder / "cache", ignore_errors=True)
            with tarfile.open(archive) as tar:
                tar.extractall(partial)
            next(partial.iterdir()).rename(home)
            partial.rmdir()
        return home / "bin/benchtrue"

    def of(self, tickets, program):
        """Returns the results of a program, those of this build only unless it is a yardstick."""
        return [r for r in self.results if r["tickets"] == tickets and r["program"] == program
                and (r["build"] == self.build or program in PEERS)]

    def shop(self, tickets):
        """Writes the shop where it is missing, whole or not at all; returns its folder."""
        shop = self.folder / f"shop-{tickets}"
        if not shop.exists():
            partial = self.folder / f"shop-{tickets}.partial"
            shutil.rmtree(partial, ignore_errors=True)
            size = f"{partial.resolve()} --clean --tickets {tickets} --years {self.years or years(tickets)}"
            run(["mvn", "-B", "-ntp", "-q", "-f", HERE.parents[2] / "pom.xml", "-Psample", "process-test-classes", f"-Dshop={size}"],
                self.environment, self.folder / "sample.log")
            partial.rename(shop)
        return shop

    def programs(self, tickets):
        """Returns each program's command on a shop, and how often it is run."""
        shop = self.shop(tickets)
        repeats = self.repeats if tickets < ONCE else 1
        night = [self.launcher, "nightly", "--shop", shop, "--as-of", AS_OF, "--quiet"]
        check = [self.launcher, "check", "--shop", shop, "--as-of", AS_OF, "--quiet"]
        programs = {"nightly": (night, repeats)}
        if tickets <= PEERS_UP_TO:
            programs = {**{peer: (self.peer(peer, shop), repeats) for peer in self.peers}, **programs}
        if tickets == CHECKED:
            programs["check"] = (check, repeats)
        return shop, programs

    def peer(self, name, shop):
        """Returns the command of a yardstick."""
        program, script, *more = PEERS[name]
        return [program, self.yardsticks / script, shop, self.folder / "peer", *more]

    def runnable(self, shop):
        """Returns the yardsticks that end well on a shop, and says why the others are left out."""
        found = []
        for name in PEERS:
            command = list(map(str, self.peer(name, shop)))
            missing = next((part for part in command[:2] if not shutil.which(part) and not Path(part).exists()), None)
            tried = None if missing else subprocess.run(command, capture_output=True, text=True)
            if tried and tried.returncode == 0:
                found.append(name)
            else:
                said = (tried.stderr.strip().splitlines() or [f"ended with {tried.returncode}"]) if tried else [f"no {missing}"]
                why = next((line for line in said if "Error" in line), said[-1])
                print(f"{name} is left out: {why}", file=sys.stderr)
        return found

    def measure(self, tickets, program, command, shop):
        shutil.rmtree(shop / "out", ignore_errors=True)
        shutil.rmtree(self.folder / "peer", ignore_errors=True)
        java = {"BENCHTRUE_OPTS": "-Xmx6g"} if tickets >= ONCE else {}
        load = os.getloadavg()[0]
        result = {"tickets": tickets, "program": program, "load_before": load,
                  **run(command, {**self.environment, **java}, self.folder / "last.log")}
        timings = shop / "out/.last/timings.json"
        if program == "nightly":
            result["stages"] = json.loads(timings.read_text())["seconds_a_stage"]
        self.note(result)

    def note(self, result):
        result["build"] = self.build
        self.results.append(result)
        with open(self.file, "a") as file:
            file.write(json.dumps(result) + "\n")
        print(f"{result['tickets']:>9,} tickets  {result['program']:<15}{result['seconds']:8.2f} s"
              f"{result['cpu']:8.2f} s of processor{result['megabytes']:8.0f} MB", file=sys.stderr, flush=True)

    def warm(self):
        """Leaves the launcher's archive of classes, as an installation's first night does, and tries the yardsticks."""
        shop = self.shop(1200)
        self.peers = self.runnable(shop)
        if not list((self.folder / "cache").glob("start-*.jsa")):
            run([self.launcher, "nightly", "--shop", shop, "--as-of", AS_OF, "--quiet"], self.environment,
                self.folder / "last.log")

    def all(self, sizes):
        self.warm()
        for _ in range(len(self.of(0, "--help")), 2 * self.repeats):
            self.note({"tickets": 0, "program": "--help", **run([self.launcher, "--help"], self.environment)})
        for tickets in sizes:
            shop, programs = self.programs(tickets)
            for repetition in range(self.repeats):
                for program, (command, repeats) in programs.items():
                    if len(self.of(tickets, program)) <= repetition < repeats:
                        self.measure(tickets, program, command, shop)

    def rows(self, tickets):
        """Returns how many rows all exports of a shop have, and how many its time log."""
        counts = {file.stem: sum(block.count(b"\n") for block in iter(lambda f=open(file, "rb"): f.read(1 << 20), b"")) - 1
                  for file in sorted((self.folder / f"shop-{tickets}/exports").glob("*.csv"))}
        return sum(counts.values()), counts["time-log"]

    def table(self):
        """Prints medians, ratios, growth from size to size and the stages; Markdown."""
        median = lambda tickets, program, what: statistics.median(r[what] for r in self.of(tickets, program))
        print(f"Middle of the runs, on {machine()}.\n")
        sizes = sorted({r["tickets"] for r in self.results if r["program"] == "nightly" and r["build"] == self.build})
        print("| tickets | time entries | program | runs | seconds | processor s | peak MB | µs a row | growth |")
        print("| --: | --: | --- | --: | --: | --: | --: | --: | --: |")
        before = {}
        for tickets in sizes:
            rows, entries = self.rows(tickets)
            for program in (*PEERS, "nightly", "check"):
                if not self.of(tickets, program):
                    continue
                seconds = median(tickets, program, "seconds")
                growth = "" if program not in before else \
                    f"{math.log(seconds / before[program][1]) / math.log(rows / before[program][0]):.2f}"
                before[program] = (rows, seconds)
                print(f"| {tickets:,} | {entries:,} | {program} | {len(self.of(tickets, program))} | {seconds:.2f} | "
                      f"{median(tickets, program, 'cpu'):.2f} | {median(tickets, program, 'megabytes'):,.0f} | "
                      f"{seconds / rows * 1e6:.1f} | {growth} |")
        if self.of(0, "--help"):
            print(f"| | | --help | {len(self.of(0, '--help'))} | {median(0, '--help', 'seconds'):.2f} | "
                  f"{median(0, '--help', 'cpu'):.2f} | {median(0, '--help', 'megabytes'):,.0f} | | |")
        print("\nGrowth is the exponent of rows from the size before. A night's time by that of each yardstick:\n")
        for tickets in sizes:
            for program in PEERS:
                if self.of(tickets, program):
                    ratio = median(tickets, "nightly", "seconds") / median(tickets, program, "seconds")
                    print(f"- {tickets:,} tickets, {program}: {ratio:.2f}")
        print("\n| stage, seconds | " + " | ".join(f"{tickets:,}" for tickets in sizes) + " |")
        print("| --- |" + " --: |" * len(sizes))
        nights = {tickets: self.of(tickets, "nightly") for tickets in sizes}
        for stage in nights[sizes[0]][0]["stages"] if sizes else []:
            cells = [f"{statistics.median(r['stages'].get(stage, math.nan) for r in nights[t]):.2f}" for t in sizes]
            print(f"| {stage} | " + " | ".join(cells) + " |")


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--folder", required=True, help="where shops and results stand; needs 6 GB for the largest")
    options.add_argument("--sizes", default="1200,12000,220000,4000000", help="tickets, separated by commas")
    options.add_argument("--years", type=int, help="that every shop looks back on; from 4 to 40 by its size where not given")
    options.add_argument("--repeats", type=int, default=5, help=f"runs of each; one from {ONCE:,} tickets on")
    options.add_argument("--yardsticks", default=HERE, help="the folder that they stand in; this script's where not given")
    archives = sorted((HERE.parents[1] / "target").glob("benchtrue-*.tar.gz"))
    options.add_argument("--archive", default=archives[-1] if archives else None, required=not archives,
                         help="the installation archive to measure; the build's where not given")
    options.add_argument("--table", action="store_true", help="only print the table of what is there")
    options = options.parse_args()
    bench = Bench(options)
    if not options.table:
        bench.all([int(size) for size in options.sizes.split(",")])
    bench.table()


if __name__ == "__main__":
    main()
