# data.table on the same log: session table and trends. Usage: Rscript peer-datatable.R JOB LOG FOLDER
# JOB is "scores" or "both". Two threads, as the others have; "independent" is made a plain column first, so that every
# aggregate takes the grouped code. The pairs of Theil-Sen are made once for each length of series.
arguments <- commandArgs(TRUE)
suppressMessages(library(data.table))
setDTthreads(2)
log <- fread(arguments[2], select = c("student", "date", "measure", "trial", "value", "help"), nThread = 2, showProgress = FALSE)
setorder(log, student, measure, date, trial)
log[, independent := as.double(help == "independent")]
sessions <- log[, .(n = .N, mean = mean(value), median = median(value), last = last(value), sd = sd(value),
                    independent = mean(independent)), by = .(student, measure, date)]
fwrite(sessions, file.path(arguments[3], "scores.csv"), nThread = 2)
if (arguments[1] == "both") {
  sessions[, x := as.double(as.integer(as.Date(date)))]
  setorder(sessions, student, measure, x)
  pairs <- list()
  pairs_of <- function(n) {
    key <- as.character(n)
    if (is.null(pairs[[key]])) {
      first <- rep.int(seq_len(n - 1L), (n - 1L):1L)
      pairs[[key]] <<- list(first = first, second = sequence((n - 1L):1L) + first)
    }
    pairs[[key]]
  }
  trends <- sessions[, {
    dx <- x - mean(x)
    dy <- mean - mean(mean)
    slope <- sum(dx * dy) / sum(dx * dx)
    of <- pairs_of(.N)
    rise <- mean[of$second] - mean[of$first]
    .(n = .N, slope = slope, r2 = 1 - sum((dy - slope * dx)^2) / sum(dy * dy),
      robust = median(rise / (x[of$second] - x[of$first])), s = sum(sign(rise)))
  }, by = .(student, measure)]
  fwrite(trends, file.path(arguments[3], "trends.csv"), nThread = 2)
}
