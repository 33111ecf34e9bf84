# Mixed models: lme4 where it can, and from first principles with dense matrices, so that two computations agree before one is
# stored. Writes or compares mixed-models.csv: fit, what, factor, index, value.

first.principles <- function(y, X, Z, theta, w = rep(1, length(y))) {
  q <- sapply(Z, ncol); Zall <- do.call(cbind, Z); t <- rep(theta, q)
  V <- diag(1 / w) + Zall %*% (t^2 * t(Zall)); n <- length(y); p <- ncol(X)
  Vi <- solve(V); XVX <- t(X) %*% Vi %*% X; beta <- solve(XVX, t(X) %*% Vi %*% y); r <- y - X %*% beta
  s2 <- drop(t(r) %*% Vi %*% r) / (n - p)
  list(beta = drop(beta), s2 = s2, b = drop(t^2 * (t(Zall) %*% Vi %*% r)),
    criterion = as.numeric(determinant(V)$modulus + determinant(XVX)$modulus) + (n - p) * (1 + log(2 * pi * s2)),
    XVX = XVX, Vi = Vi, Z = Zall, t = t, q = q)
}
best.ratios <- function(y, X, Z, w = rep(1, length(y)), start) {
  f <- function(par) first.principles(y, X, Z, abs(par), w)$criterion
  for (i in 1:3) start <- abs(nlminb(start, f, control = list(rel.tol = 1e-15, x.tol = 1e-12))$par)
  start
}
indicator <- function(level, levels = max(level) + 1) sapply(0:(levels - 1), function(l) as.numeric(level == l))
zero <- function(f) as.integer(f) - 1L

rows <- list()
put <- function(fit, what, factor, values)
  rows[[length(rows) + 1]] <<- data.frame(fit = fit, what = what, factor = factor, index = seq_along(values) - 1, value = as.numeric(values))

store <- function(name, y, X, Z, w = rep(1, length(y)), lmer.fit = NULL, theta = NULL) {
  if (is.null(theta)) {
    start <- if (is.null(lmer.fit)) rep(0.5, length(Z)) else pmax(1e-3, lmer.fit@theta[match(names(Z), names(lmer.fit@flist))])
    theta <- best.ratios(y, X, Z, w, start)
    theta[theta < 1e-5] <- 0
  }
  m <- first.principles(y, X, Z, theta, w)
  if (!is.null(lmer.fit)) {
    same(paste(name, "criterion, lme4 and first principles"), REMLcrit(lmer.fit), m$criterion, 1e-9)
    same(paste(name, "fixed effects, lme4"), fixef(lmer.fit), m$beta, 1e-5)
    same(paste(name, "their errors, lme4"), sqrt(diag(as.matrix(vcov(lmer.fit)))), sqrt(m$s2 * diag(solve(m$XVX))), 1e-5)
    vc <- sapply(names(Z), function(f) as.numeric(VarCorr(lmer.fit)[[f]]))
    same(paste(name, "variances, lme4"), vc, theta^2 * m$s2, 1e-4)
  }
  put(name, "criterion", 0, m$criterion); put(name, "fixed", 0, m$beta)
  put(name, "error", 0, sqrt(m$s2 * diag(solve(m$XVX)))); put(name, "residual", 0, m$s2)
  put(name, "variance", 0, theta^2 * m$s2)
  # Errors of prediction: G - G Z' P Z G, with P the projection that takes fixed effects out; conditional ones with V inverse alone.
  G <- m$t^2; P <- m$Vi - m$Vi %*% X %*% solve(m$XVX, t(X) %*% m$Vi)
  gone <- pmax(0, m$s2 * (G - G^2 * diag(t(m$Z) %*% P %*% m$Z)))
  known <- pmax(0, m$s2 * (G - G^2 * diag(t(m$Z) %*% m$Vi %*% m$Z)))
  of <- rep(seq_along(Z), m$q)
  for (f in seq_along(Z)) {
    put(name, "effect", f - 1, m$b[of == f]); put(name, "effectError", f - 1, sqrt(gone[of == f]))
    put(name, "conditional", f - 1, sqrt(known[of == f]))
  }
  if (!is.null(lmer.fit)) {
    re <- ranef(lmer.fit, condVar = TRUE)
    for (f in seq_along(Z)) {
      blup <- re[[names(Z)[f]]]
      same(paste(name, "effects of", names(Z)[f], "lme4"), blup[, 1], m$b[of == f], 1e-4)
      same(paste(name, "their deviations, lme4"), sqrt(attr(blup, "postVar")[1, 1, ]), sqrt(known[of == f]), 1e-4)
    }
  }
  # Standard error of predicting the first row's expectation, all of its effects known only by their estimates.
  L <- c(X[1, ], m$Z[1, ])
  keep <- c(rep(TRUE, ncol(X)), m$t > 0)
  C <- rbind(cbind(t(X) %*% (w * X), t(X) %*% (w * m$Z)), cbind(t(m$Z) %*% (w * X), t(m$Z) %*% (w * m$Z) + diag(1 / pmax(G, 1e-300))))
  put(name, "predictError", 0, sqrt(m$s2 * drop(t(L[keep]) %*% solve(C[keep, keep]) %*% L[keep])))
  invisible(theta)
}
tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12), check.conv.singular = "ignore")

d <- data("penicillin.csv")
f <- lmer(diameter ~ 1 + (1 | plate) + (1 | sample), d, control = tight)
store("penicillin", d$diameter, cbind(rep(1, nrow(d))), list(plate = indicator(zero(d$plate)), sample = indicator(zero(d$sample))), lmer.fit = f)
same("penicillin, published deviations", c(0.8467, 1.9316, 0.5499), as.data.frame(VarCorr(f))$sdcor, 1e-4)

d <- data("pastes.csv")
f <- lmer(strength ~ 1 + (1 | batch) + (1 | sample), d, control = tight)
store("pastes", d$strength, cbind(rep(1, nrow(d))), list(batch = indicator(zero(d$batch)), sample = indicator(zero(d$sample))), lmer.fit = f)

for (name in c("dyestuff", "dyestuff2")) {
  d <- data(paste0(name, ".csv"))
  f <- lmer(yield ~ 1 + (1 | batch), d, control = tight)
  store(name, d$yield, cbind(rep(1, nrow(d))), list(batch = indicator(zero(d$batch))), lmer.fit = f)
}

d <- data("crossed-constructed.csv")
X <- cbind(1, d$vintage); d[c("type", "tech", "writer")] <- lapply(d[c("type", "tech", "writer")], function(v) v - min(v))
Z <- list(type = indicator(d$type), tech = indicator(d$tech), writer = indicator(d$writer))
f <- lmer(y ~ 1 + vintage + (1 | type) + (1 | tech) + (1 | writer), d, control = tight)
store("crossed", d$y, X, Z, lmer.fit = f)

w <- 0.5 + (seq_len(nrow(d)) - 1) %% 4 / 2
f <- lmer(y ~ 1 + vintage + (1 | type) + (1 | tech) + (1 | writer), d, weights = w, control = tight)
store("crossed-weighted", d$y, X, Z, w, lmer.fit = f)

# Every third row has no technician on record; first principles only, since lme4 drops such rows.
tech <- ifelse((seq_len(nrow(d)) - 1) %% 3 == 0, -1, d$tech)
store("crossed-absent", d$y, X, list(type = Z$type, tech = indicator(tech, 7), writer = Z$writer))

# A grouping that has nothing to do with y.
Z0 <- list(type = Z$type, weekday = indicator((seq_len(nrow(d)) - 1) %% 5))
d$weekday <- factor((seq_len(nrow(d)) - 1) %% 5)
f <- lmer(y ~ 1 + vintage + (1 | type) + (1 | weekday), d, control = tight)
store("crossed-nothing", d$y, X, Z0, lmer.fit = f)

# One row in twenty takes 1.5 longer on the log scale; Huber weights at the plain fit's ratios.
y <- d$y + ifelse((seq_len(nrow(d)) - 1) %% 20 == 7, 1.5, 0)
theta <- store("crossed-wild", y, X, Z)
w <- rep(1, length(y))
for (i in 1:200) {
  m <- first.principles(y, X, Z, theta, w)
  e <- drop(y - X %*% m$beta - m$Z %*% m$b); s <- 1.4826 * median(abs(e))
  w <- pmin(1, 1.345 * s / abs(e))
}
put("crossed-robust", "fixed", 0, m$beta)
of <- rep(1:3, m$q)
for (f in 1:3) put("crossed-robust", "effect", f - 1, m$b[of == f])
put("crossed-robust", "downWeighted", 0, sum(w < 1))

new <- do.call(rbind, rows)
file <- file.path(here, "../resources/statistics/mixed-models.csv")
if ("--write" %in% commandArgs(TRUE)) {
  write.csv(transform(new, value = sprintf("%.12g", value)), file, row.names = FALSE, quote = FALSE)
} else {
  old <- read.csv(file)
  same("mixed-models.csv", new$value, old$value, 2e-5)
}
