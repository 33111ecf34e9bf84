#!/usr/bin/env Rscript
# Recomputes, with R alone, what the tests of benchtrue.statistics compare against. Run from anywhere:
#
#   Rscript pipeline/src/test/r/recompute.R           compares with what is stored; fails on any difference
#   Rscript pipeline/src/test/r/recompute.R --write   writes mixed-models.csv anew
#
# Needs R >= 4.2 with lme4 and survival; boot, MASS and metafor where present. The tests themselves need no R.
suppressPackageStartupMessages({library(lme4); library(survival)})
options(digits = 15)

here <- dirname(normalizePath(sub("^--file=", "", grep("^--file=", commandArgs(FALSE), value = TRUE))))
data <- function(name) read.csv(file.path(here, "../resources/statistics", name), stringsAsFactors = TRUE)
failures <- 0
same <- function(label, computed, stored, tolerance = 1e-9) {
  off <- max(abs(as.numeric(computed) - stored) / pmax(1e-3, abs(stored)))
  good <- is.finite(off) && length(computed) == length(stored) && off <= tolerance
  if (!good) failures <<- failures + 1
  cat(sprintf("%-4s %-52s %.1e\n", if (good) "ok" else "DIFF", label, off))
}
source(file.path(here, "small-methods.R"), local = TRUE)
source(file.path(here, "mixed-models.R"), local = TRUE)
cat(if (failures == 0) "everything agrees\n" else paste(failures, "differences\n"))
quit(status = min(1, failures))
