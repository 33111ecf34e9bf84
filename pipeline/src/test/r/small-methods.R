# The small methods: every number computed with R that stands in a test.

h <- c(2.1, 3.4, 2.8, 5.0, 4.2, 3.9, 2.6, 7.5, 3.1, 4.4)
ni <- c(95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682)
chem <- c(2.2, 2.2, 2.4, 2.4, 2.5, 2.7, 2.8, 2.9, 3.03, 3.03, 3.1, 3.37, 3.4, 3.4, 3.4, 3.5, 3.6, 3.7, 3.7, 3.7, 3.7, 3.77, 5.28, 28.95)

# Moments and quantiles.
for (name in c("lew", "lottery")) {
  x <- data(paste0("nist-", name, ".csv"))[, 1]
  same(paste("NIST", name), c(mean(x), sd(x)),
    if (name == "lew") c(-177.435, 277.332168044316) else c(518.958715596330, 291.699727470969), 1e-12)
}
same("bench hours sd", sd(h), 1.54704018478)
same("bench hours, nine quantiles at 0.9", sapply(1:9, function(t) quantile(h, .9, type = t)),
  c(5, 6.25, 5, 5, 6.25, 7.25, 5.25, 6.583333, 6.5), 1e-7)
same("1 to 4, nine quantiles at 0.3", sapply(1:9, function(t) quantile(1:4, .3, type = t)),
  c(2, 2, 1, 1.2, 1.7, 1.5, 1.9, 1.63333, 1.65), 5e-6)
same("resistivity quartiles, type 7", quantile(ni, c(.25, .5, .75), type = 7), c(95.116250, 95.157900, 95.181325))
same("median deviations", c(mad(h, constant = 1), mad(h), mad(ni, constant = 1), mad(chem)), c(0.8, 1.18608, 0.0369, 0.526323), 1e-6)

# Distributions and tests.
same("normal and t", c(qnorm(c(.975, .95, .75)), qt(c(.95, .975), 9), pt(-4.062127683, 9)),
  c(1.95996398454, 1.64485362695, 0.674489750196, 1.83311293266, 2.2621571628, 0.0014164450995))
x <- c(1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30); y <- c(0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29)
t1 <- t.test(log(x / y), alternative = "greater"); t2 <- t.test(log(x / y), alternative = "greater", mu = log(1.1))
same("Hollander and Wolfe", c(t1$estimate, t1$statistic, t1$p.value, exp(t1$conf.int[1]), t2$p.value),
  c(0.318083391792, 2.43987184431, 0.0202863086806, 1.07859166077, 0.0629330666103))
g <- with(sleep, t.test(extra[group == 2], extra[group == 1], paired = TRUE))
same("sleep", c(g$statistic, g$p.value / 2, g$conf.int), c(4.062127683, 0.0014164451, 0.700114236723, 2.459885763277))
same("hazard", exp(dnorm(c(5, 35), log = TRUE) - pnorm(c(5, 35), lower.tail = FALSE, log.p = TRUE)), c(5.186503967125842, 35.02852497059605))
same("log tail", pnorm(c(-1, 35, 60), lower.tail = FALSE, log.p = TRUE), c(-0.1727537790234499, -616.9751012619225, -1805.013560680567))
bh <- c(0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1)
same("Benjamini and Hochberg", p.adjust(bh, "BH"), c(0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.063857143, 0.063857143, 0.0645,
  0.0765, 0.486, 0.581181818, 0.714875, 0.753230769, 0.813214286, 1), 1e-8)
same("Clopper and Pearson", c(binom.test(6, 10)$conf.int, binom.test(8, 10)$conf.int, binom.test(2, 10)$conf.int, binom.test(0, 10)$conf.int),
  c(0.262378077, 0.878447742, 0.443904538, 0.974789274, 0.025210727, 0.556095462, 0, 0.30849710781876), 1e-7)

# Jackknife and bootstrap.
acceleration <- function(x, f) { l <- sapply(seq_along(x), function(i) f(x[-i])); d <- mean(l) - l; sum(d^3) / 6 / sum(d^2)^1.5 }
sixteen <- c(10, 12, 12.5, 12.5, 13.9, 15, 21, 22, 23, 34, 50, 81, 89, 121, 134, 213)
air <- c(3, 5, 7, 18, 43, 85, 91, 98, 100, 130, 230, 487)
spatial <- c(48, 36, 20, 29, 42, 42, 20, 42, 22, 41, 45, 14, 6, 0, 33, 28, 34, 4, 32, 24, 47, 41, 24, 26, 30, 41)
a <- acceleration(air, mean)
same("accelerations", c(acceleration(sixteen, mean), a, acceleration(spatial, function(x) mean((x - mean(x))^2))),
  c(0.0615288696126, 0.0937980738839, 0.0612401198))
same("BCa levels", pnorm(0.0955 + (0.0955 + qnorm(c(.025, .975))) / (1 - a * (0.0955 + qnorm(c(.025, .975))))), c(0.067923570403, 0.995877974486))

# Regression.
l <- summary(lm(log(volume) ~ log(girth), data("trees.csv")))
same("trees", c(coef(l)[, 1:2], l$sigma), c(-2.35332494044, 2.19996993209, 0.23066284156, 0.0898345534228, 0.114957819774))

# Jobs still on the bench.
s <- summary(survfit(Surv(time, status) ~ x, aml)); m <- s$strata == levels(s$strata)[1]
same("aml maintained", c(s$surv[m], s$std.err[m]), c(0.909090909, 0.818181818, 0.715909091, 0.613636364, 0.490909091, 0.368181818,
  0.184090909, 0.086678417, 0.116291300, 0.139664971, 0.152632331, 0.164193267, 0.162668886, 0.153492746), 1e-7)
same("aml nonmaintained", c(s$surv[!m][-9], s$std.err[!m][-9]), c(0.833333333, 0.666666667, 0.583333333, 0.486111111, 0.388888889, 0.291666667,
  0.194444444, 0.097222222, 0.107582871, 0.136082763, 0.142318761, 0.148130063, 0.146986184, 0.138715169, 0.121874505, 0.091866365), 1e-7)
first <- subset(aml, x == "Maintained"); second <- subset(aml, x != "Maintained")
mean.of <- function(d) summary(survfit(Surv(time, status) ~ 1, d), rmean = max(d$time))$table[c("rmean", "se(rmean)")]
same("restricted means", c(mean.of(first), mean.of(second)), c(52.6454545455, 19.82860279556, 22.7083333333, 4.18094198103))
k <- survfit(Surv(time, status) ~ 1, first, conf.type = "log-log"); k <- summary(k, times = 31)
same("log-log interval", c(k$lower, k$upper), c(0.167330909777, 0.753399790371))
k <- survfit(Surv(c(9, 1, 1, 6, 6, 8, 10), c(1, 1, 0, 1, 1, 0, 0)) ~ 1)
same("quantiles on flat parts", quantile(k, 1 - c(13/14, 6/7, 2/3, 1/2, 9/35), conf.int = FALSE), c(1, 3.5, 6, 9, 9.5))

# Charts.
x <- c(52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1)
same("NIST EWMA", Reduce(function(e, v) .3 * v + .7 * e, x, 50), 51.988243, 1e-8)
same("its limits", c(50 + 3 * 2.0539 * sqrt(.3 / 1.7 * (1 - .7^(2 * c(1, 5)))), 50 + 3 * 2.0539 * sqrt(.3 / 1.7)), c(51.848510, 52.551611, 52.5884317381), 1e-7)
