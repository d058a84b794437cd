// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/portable_math.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace bw {

namespace {
constexpr double kLn2High =
    0x1.62e42fee00000p-1; // its last bits are 0: times a small integer is exact
constexpr double kLn2Low = 0x1.a39ef35793c76p-33;

double powerOfTwo(int n) { // -1022 to 1023
    return std::bit_cast<double>(static_cast<std::uint64_t>(n + 1023) << 52);
}

// A rational function of degree 7 over 7, lowest power first.
struct Ratio {
    double above[8];
    double below[8];
    [[nodiscard]] double at(double x) const {
        double a = above[7], b = below[7];
        for (int i = 6; i >= 0; --i) {
            a = a * x + above[i];
            b = b * x + below[i];
        }
        return a / b;
    }
};

// Wichura MJ. Algorithm AS 241: the percentage points of the normal distribution. Applied
// Statistics 1988;37(3):477-484, routine PPND16: middle, tail and far tail.
constexpr Ratio kMiddle{{3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
                         1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
                         3.3430575583588128105e4, 2.5090809287301226727e3},
                        {1.0, 4.2313330701600911252e1, 6.8718700749205790830e2,
                         5.3941960214247511077e3, 2.1213794301586595867e4, 3.9307895800092710610e4,
                         2.8729085735721942674e4, 5.2264952788528545610e3}};
constexpr Ratio kTail{
    {1.42343711074968357734e0, 4.63033784615654529590e0, 5.76949722146069140550e0,
     3.64784832476320460504e0, 1.27045825245236838258e0, 2.41780725177450611770e-1,
     2.27238449892691845833e-2, 7.74545014278341407640e-4},
    {1.0, 2.05319162663775882187e0, 1.67638483018380384940e0, 6.89767334985100004550e-1,
     1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4,
     1.05075007164441684324e-9}};
constexpr Ratio kFarTail{
    {6.65790464350110377720e0, 5.46378491116411436990e0, 1.78482653991729133580e0,
     2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
     2.71155556874348757815e-5, 2.01033439929228813265e-7},
    {1.0, 5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
     7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7,
     2.04426310338993978564e-15}};
// 2^(j/16), each rounded to nearest.
constexpr double kSixteenths[16] = {
    0x1.0000000000000p+0, 0x1.0b5586cf9890fp+0, 0x1.172b83c7d517bp+0, 0x1.2387a6e756238p+0,
    0x1.306fe0a31b715p+0, 0x1.3dea64c123422p+0, 0x1.4bfdad5362a27p+0, 0x1.5ab07dd485429p+0,
    0x1.6a09e667f3bcdp+0, 0x1.7a11473eb0187p+0, 0x1.8ace5422aa0dbp+0, 0x1.9c49182a3f090p+0,
    0x1.ae89f995ad3adp+0, 0x1.c199bdd85529cp+0, 0x1.d5818dcfba487p+0, 0x1.ea4afa2a490dap+0};

// x = n ln 2 / 16 + r with |r| below 0.022; then Taylor's series, whose first term left out is
// below 2e-18.
inline double expOf(double x) {
    x = x < -700 ? -700 : x > 700 ? 700 : x;
    const double turns = x * 0x1.71547652b82fep+4; // 16 / ln 2
    const int n = static_cast<int>(turns + (turns < 0 ? -0.5 : 0.5));
    const double r = (x - n * (kLn2High / 16)) - n * (kLn2Low / 16);
    const double sum =
        1.0 +
        r * (1.0 +
             r * (0.5 + r * (1.0 / 6 + r * (1.0 / 24 + r * (1.0 / 120 +
                                                            r * (1.0 / 720 + r * (1.0 / 5040)))))));
    return sum * kSixteenths[n & 15] * powerOfTwo(n >> 4);
}

inline double middleQuantile(double p) {
    const double q = p - 0.5;
    return q * kMiddle.at(0.180625 - q * q);
}
bool isTail(double p) { return p < 0.075 || p > 0.925; }
double tailQuantile(double p) {
    const double r = std::sqrt(-portableLog(p < 0.5 ? p : 1 - p));
    const double z = r <= 5 ? kTail.at(r - 1.6) : kFarTail.at(r - 5);
    return p < 0.5 ? -z : z;
}
} // namespace

double portableExp(double x) { return expOf(x); }

double portableLog(double x) {
    const auto bits = std::bit_cast<std::uint64_t>(x);
    int exponent = static_cast<int>(bits >> 52) - 1023;
    double m = std::bit_cast<double>((bits & 0xFFFFFFFFFFFFFull) | std::uint64_t{1023} << 52);
    if (m > 1.4142135623730951) {
        m /= 2;
        ++exponent;
    }
    const double f = (m - 1) / (m + 1), s = f * f; // log m = 2 atanh f, |f| < 0.172
    double sum = 1.0 / 23;
    for (int odd = 21; odd >= 3; odd -= 2) sum = sum * s + 1.0 / odd;
    return exponent * kLn2High + (2 * f + (2 * f * s * sum + exponent * kLn2Low));
}

double normalQuantile(double p) { return isTail(p) ? tailQuantile(p) : middleQuantile(p); }

void portableExps(std::span<double> xs) {
    for (double& x : xs) x = expOf(x);
}

void normalQuantiles(std::span<double> ps) {
    constexpr std::size_t kAtOnce = 64;
    for (std::size_t from = 0; from < ps.size(); from += kAtOnce) {
        const auto part = ps.subspan(from, std::min(kAtOnce, ps.size() - from));
        std::array<double, kAtOnce> was;
        std::array<std::size_t, kAtOnce> tail;
        std::size_t tails = 0;
        for (std::size_t i = 0; i < part.size(); ++i) {
            was[i] = part[i];
            tail[tails] = i;
            tails += isTail(part[i]) ? 1 : 0;
            part[i] = middleQuantile(part[i]);
        }
        for (std::size_t t = 0; t < tails; ++t) part[tail[t]] = tailQuantile(was[tail[t]]);
    }
}

} // namespace bw
