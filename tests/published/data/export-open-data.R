# Writes the three open data sets of this folder, and prints the reference values that README.md quotes.
#   Rscript tests/published/data/export-open-data.R [FOLDER]
# Needs R with the packages sp and MASS (Debian: r-base-core, r-cran-sp, r-cran-mass).
folder <- commandArgs(trailingOnly = TRUE)
folder <- if (length(folder) > 0) folder[1] else "tests/published/data"
library(MASS)
data(meuse, package = "sp")
put <- function(frame, name) {
  write.csv(frame, file.path(folder, name), row.names = FALSE, quote = FALSE, eol = "\n", na = "", fileEncoding = "UTF-8")
}
put(meuse, "meuse.csv")
put(data.frame(copper = MASS::chem), "chem.csv")
put(data.frame(nickel = MASS::abbey), "abbey.csv")

# MASS::hubers stops after 30 steps whether or not it has converged (cadmium and copper have not); this is the same function
# with that number raised, nothing else changed.
converged <- eval(parse(text = sub("1:30", "1:10000", deparse(MASS::hubers), fixed = TRUE)), asNamespace("MASS"))

say <- function(name, x) {
  h <- huber(x)                                  # MASS: Huber's location with the MAD as scale, k = 1.5
  p2 <- converged(x, tol = 1e-14)                # MASS: Huber's proposal 2, k = 1.5
  cat(sprintf("%s n=%d mean=%.15g sd=%.15g se=%.15g t=%.15g median=%.15g mad=%.15g huber=%.15g hubers=%.15g,%.15g\n",
    name, length(x), mean(x), sd(x), sd(x) / sqrt(length(x)), qt(0.975, length(x) - 1), median(x), mad(x),
    h$mu, p2$mu, p2$s))
}
for (metal in c("cadmium", "copper", "lead", "zinc")) say(paste0("meuse$", metal), meuse[[metal]])
say("chem", MASS::chem)
say("abbey", MASS::abbey)
cat(R.version.string, " sp", as.character(packageVersion("sp")), " MASS", as.character(packageVersion("MASS")), "\n")
