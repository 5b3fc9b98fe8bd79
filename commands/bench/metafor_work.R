# The same estimator in R's metafor, one set at a time as its users call it. Reads the values of every set, then the
# uncertainties, one set a line; prints the version, the processor seconds taken, and the means. Ends with status 3 without metafor.
if (!suppressWarnings(suppressPackageStartupMessages(requireNamespace("metafor", quietly = TRUE)))) quit(status = 3)
lines <- readLines(file("stdin"))
rows <- do.call(rbind, lapply(strsplit(lines, " "), as.numeric))
n <- nrow(rows) / 2
x <- rows[1:n, , drop = FALSE]
u <- rows[(n + 1):(2 * n), , drop = FALSE]
means <- numeric(n)
largest <- 1e8 # of tau2: the values are not standardised
seconds <- system.time(for (i in 1:n) {
  fit <- metafor::rma.uni(yi = x[i, ], sei = u[i, ], method = "PM", test = "adhoc", control = list(maxiter = 1000, tau2.max = largest))
  means[i] <- fit$beta[1]
  stats::confint(fit, control = list(tau2.max = largest))
})[["user.self"]]
cat(as.character(utils::packageVersion("metafor")), seconds, format(means, digits = 15), sep = "\n")
