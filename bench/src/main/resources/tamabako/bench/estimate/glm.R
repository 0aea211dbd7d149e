# Processor seconds of glm.fit, one line each time, then the coefficients.
arguments <- commandArgs(TRUE)
features <- as.integer(arguments[2])
size <- file.info(arguments[1])$size / 8
all <- matrix(readBin(arguments[1], "double", size, endian = "little"), ncol = features + 1, byrow = TRUE)
x <- all[, 1:features]
y <- all[, features + 1]
for (time in seq_len(as.integer(arguments[3]))) {
  took <- system.time(fit <- glm.fit(x, y, family = binomial()))
  cat(sprintf("%.4f\n", took[["user.self"]] + took[["sys.self"]]))
}
cat(sprintf("%.17g\n", fit$coefficients), sep = "")
