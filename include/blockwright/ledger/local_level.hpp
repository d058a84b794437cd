// SPDX-License-Identifier: GPL-3.0-or-later
// A level that drifts and is seen through noise (the local level model): y = level + noise, and the
// level moves by a random walk. The filter is exact for known variances, and starts without any
// opinion: Durbin J, Koopman SJ. Time Series Analysis by State Space Methods, 2nd ed., Oxford
// 2012, ch. 2.
#pragma once

namespace bw {

class LocalLevel {
public:
    // Knows nothing yet.
    LocalLevel() = default;
    // Knows something before the first look.
    LocalLevel(double mean, double variance) : started_(true), mean_(mean), variance_(variance) {}

    [[nodiscard]] bool started() const { return started_; }
    [[nodiscard]] double mean() const { return mean_; }         // only when started
    [[nodiscard]] double variance() const { return variance_; } // of the level
    // Of all that was seen but what started it.
    [[nodiscard]] double logLikelihood() const { return logLikelihood_; }

    // Time passes in which the level may have moved with this variance.
    void drift(double variance) { variance_ += variance; }
    // y is seen with noise of this variance, above 0. Looks at the same moment may come in any
    // order.
    void see(double y, double noise);

private:
    bool started_ = false;
    double mean_ = 0, variance_ = 0, logLikelihood_ = 0;
};

} // namespace bw
