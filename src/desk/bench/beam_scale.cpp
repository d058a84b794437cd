// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/beam_scale.hpp"

#include "blockwright/rules/house_limits.hpp"
#include "desk/bench/findings_words.hpp"
#include "desk/frame/theme.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("Beam", text); }

LimitValue band(const Gym& gym, const char* key) {
    return limitHere(gym.settings, *houseLimit(key));
}

QString ratioText(const Ratio& ratio) {
    const auto value = ratio.value();
    return value ? figureText(*value, "") : QStringLiteral("–");
}

QString bandText(const LimitValue& band) {
    return figureText(band.lo, "") + QChar(0x2013) + figureText(band.hi, "");
}

// As the rules say it: a look for the month, a note for the window.
QString sign(const BeamWeighing& w, Level level) {
    return w.within() ? QString() : levelShape(level) + QLatin1Char(' ');
}

QString within(const BeamWeighing& w) {
    return w.within() ? tr("within its band") : tr("outside its band");
}
} // namespace

bool BeamWeighing::within() const {
    const auto value = ratio.value();
    if (!value) return ratio.over <= 0;
    return *value >= band.lo && *value <= band.hi;
}

double BeamWeighing::tiltOf(double ratio) {
    constexpr double kWhole = 2.5;
    if (ratio <= 0) return -1;
    return std::clamp(std::log(ratio) / std::log(kWhole), -1.0, 1.0);
}

double BeamWeighing::tilt() const {
    const auto value = ratio.value();
    if (!value) return ratio.over > 0 ? 1 : 0;
    return tiltOf(*value);
}

QString BeamScale::monthText() const {
    return sign(month, Level::Look) +
           tr("month %1 in %2").arg(ratioText(month.ratio), bandText(month.band));
}

QString BeamScale::windowText() const {
    if (windowMonths < 2) return tr("no months before");
    return sign(window, Level::Note) + tr("%1 months %2 in %3")
                                           .arg(windowMonths)
                                           .arg(ratioText(window.ratio), bandText(window.band));
}

QString BeamScale::spoken() const {
    const QString both = tr("%1 %2 sets, %3 %4 sets");
    QString text = tr("This month: ") +
                   both.arg(left, setsText(month.ratio.over), right, setsText(month.ratio.under)) +
                   tr("; ratio %1, band %2: %3. ")
                       .arg(ratioText(month.ratio), bandText(month.band), within(month));
    if (windowMonths < 2) return text + tr("There are no months before.");
    return text + tr("Over %1 months: ").arg(windowMonths) +
           both.arg(left, setsText(window.ratio.over), right, setsText(window.ratio.under)) +
           tr("; ratio %1, band %2: %3.")
               .arg(ratioText(window.ratio), bandText(window.band), within(window));
}

std::vector<BeamScale> beamScales(const Gym& gym, const Block& block, const Balances& b) {
    const auto months = static_cast<int>(windowOf(gym, block).size());
    return {{tr("push"),
             tr("pull"),
             {Pattern::HorizontalPush, Pattern::VerticalPush},
             {Pattern::HorizontalPull, Pattern::VerticalPull},
             {b.block.pushPull(), band(gym, "push-pull.block")},
             {b.window.pushPull(), band(gym, "push-pull.window")},
             months},
            {tr("knee"),
             tr("hip"),
             {Pattern::Squat, Pattern::Lunge},
             {Pattern::Hinge},
             {b.block.kneeHip(), band(gym, "knee-hip.block")},
             {b.window.kneeHip(), band(gym, "knee-hip.window")},
             months}};
}

QString setsText(double sets) { return QString::number(sets, 'f', 1); }

} // namespace bw
